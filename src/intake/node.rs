//! A parsed text of either kind, every value with its place.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::ops::Range;

/// How deep tables and lists may lie in each other; a readings file needs six.
pub(super) const DEEPEST: usize = 16;

#[cold]
pub(super) fn too_deep_says() -> String {
    format!("tables and lists lie in each other more than {DEEPEST} deep")
}

/// A value and the bytes of the text that say it.
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

/// A number: the nearest double, and the same as a count where it is written as a whole one.
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
    /// The value as it was written; nothing for a table that stands under a header of its own.
    pub(super) fn written<'t>(&self, text: &'t str) -> &'t str {
        let header = match &self.content {
            Content::Table(_) => !text
                .get(self.span.clone())
                .is_some_and(|written| written.starts_with('{')),
            // The header of the first table stands for a list of such.
            Content::List(items) => items.first().is_some_and(|item| item.span == self.span),
            Content::Null | Content::YesOrNo(_) | Content::Number(_) | Content::Text(_) => false,
        };
        match header {
            true => "",
            false => text.get(self.span.clone()).unwrap_or(""),
        }
    }
}
