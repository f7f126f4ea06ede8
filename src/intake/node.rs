//! A parsed text, TOML or JSON, in which every value has its position.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::ops::Range;

/// How deep tables and lists may be nested; a readings file needs six levels.
pub(super) const DEEPEST: usize = 16;

#[cold]
pub(super) fn too_deep_says() -> String {
    format!("tables and lists are nested more than {DEEPEST} deep")
}

/// A value and its bytes in the text.
#[derive(Debug)]
pub(super) struct Node<'t> {
    pub(super) span: Range<usize>,
    pub(super) content: Content<'t>,
}

#[derive(Debug)]
pub(super) enum Content<'t> {
    Null,
    YesOrNo(bool),
    Number(Number),
    Text(Cow<'t, str>),
    List(Vec<Node<'t>>),
    Table(Vec<Named<'t>>),
}

/// A number: the nearest double, and the count where it is written as a whole number.
#[derive(Clone, Copy, Debug)]
pub(super) struct Number {
    pub(super) value: f64,
    pub(super) count: Option<u64>,
}

/// An entry of a table.
#[derive(Debug)]
pub(super) struct Named<'t> {
    /// Offset of the key in the text.
    pub(super) at: usize,
    pub(super) key: Cow<'t, str>,
    pub(super) node: Node<'t>,
}

impl Node<'_> {
    /// The value as it was written; empty for a table under a header of its own.
    pub(super) fn written<'t>(&self, text: &'t str) -> &'t str {
        let header = match &self.content {
            Content::Table(_) => !text
                .get(self.span.clone())
                .is_some_and(|written| written.starts_with('{')),
            // A list of tables with headers has the span of its first table.
            Content::List(items) => items.first().is_some_and(|item| item.span == self.span),
            Content::Null | Content::YesOrNo(_) | Content::Number(_) | Content::Text(_) => false,
        };
        match header {
            true => "",
            false => text.get(self.span.clone()).unwrap_or(""),
        }
    }
}
