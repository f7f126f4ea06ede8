//! TOML to nodes.

use super::mistakes::{Mistakes, Refused};
use super::node::{Content, DEEPEST, Named, Node, Number, too_deep_says};
use super::refusal::Mistake;
use crate::error::Error;
use crate::names::{ErrorKind, Quantity};
use alloc::borrow::Cow;
use alloc::string::ToString;
use toml::Spanned;
use toml::de::{DeTable, DeValue};
use toml_parser::Source;
use toml_parser::lexer::TokenKind;

/// Up to this size, in bytes, all mistakes of syntax are listed; in a longer text, which a program wrote, only the first,
/// since the search would keep all of them in memory.
const RECOVERED: usize = 65_536;

/// The table that the text holds.
///
/// Errors: a mistake of syntax, with its position; all of them where the text is short.
pub(super) fn node<'t>(text: &'t str, mistakes: &Mistakes) -> Result<Node<'t>, Refused> {
    if let Some(offset) = too_deep(text) {
        return Err(syntax(mistakes, text, offset, &too_deep_says()));
    }
    match DeTable::parse(text) {
        Ok(table) => Ok(Node {
            span: 0..text.len(),
            content: table_of(table.into_inner()),
        }),
        Err(first) => {
            let all = match text.len() > RECOVERED {
                true => alloc::vec![first],
                false => DeTable::parse_recoverable(text).1,
            };
            let mut refused = None;
            for error in all {
                let offset = error.span().map_or(0, |span| span.start);
                refused = Some(syntax(mistakes, text, offset, error.message()));
            }
            Err(refused.unwrap_or_else(|| syntax(mistakes, text, 0, "this is not TOML")))
        }
    }
}

fn syntax(mistakes: &Mistakes, text: &str, offset: usize, message: &str) -> Refused {
    let error = Error::of(ErrorKind::Syntax, Quantity::Name);
    mistakes.record(offset, error, || Mistake::syntax(message).at(text, offset))
}

/// Offset at which the text first nests too deep; checked before the parser, which is recursive.
fn too_deep(text: &str) -> Option<usize> {
    // The dots in the entry at each depth of brackets; dotted keys nest too.
    let mut dots = [0_usize; DEEPEST + 1];
    let mut brackets = 0_usize;
    for token in Source::new(text).lex() {
        match token.kind() {
            TokenKind::LeftSquareBracket | TokenKind::LeftCurlyBracket => {
                brackets += 1;
                dots[brackets] = 0;
            }
            TokenKind::RightSquareBracket | TokenKind::RightCurlyBracket => brackets = brackets.saturating_sub(1),
            TokenKind::Dot => dots[brackets] += 1,
            TokenKind::Comma | TokenKind::Newline => dots[brackets] = 0,
            TokenKind::Equals
            | TokenKind::Whitespace
            | TokenKind::Comment
            | TokenKind::LiteralString
            | TokenKind::BasicString
            | TokenKind::MlLiteralString
            | TokenKind::MlBasicString
            | TokenKind::Atom
            | TokenKind::Eof => {}
        }
        if brackets + dots.iter().take(brackets + 1).sum::<usize>() >= DEEPEST {
            return Some(token.span().start());
        }
    }
    None
}

fn table_of(table: DeTable<'_>) -> Content<'_> {
    let entries = table.into_iter().map(|(key, value)| Named {
        at: key.span().start,
        key: key.into_inner(),
        node: node_of(value),
    });
    Content::Table(entries.collect())
}

fn node_of(value: Spanned<DeValue<'_>>) -> Node<'_> {
    let span = value.span();
    let content = match value.into_inner() {
        DeValue::String(written) => Content::Text(written),
        DeValue::Integer(digits) => Content::Number(whole(digits.as_str(), digits.radix())),
        DeValue::Float(digits) => Content::Number(Number {
            // Rust parses floats as TOML writes them: digits, inf and nan.
            value: digits.as_str().parse().unwrap_or(f64::NAN),
            count: None,
        }),
        DeValue::Boolean(answer) => Content::YesOrNo(answer),
        DeValue::Datetime(time) => Content::Text(Cow::Owned(time.to_string())),
        DeValue::Array(items) => Content::List(items.into_iter().map(node_of).collect()),
        DeValue::Table(table) => table_of(table),
    };
    Node { span, content }
}

/// A whole number; one of more than 64 bits is the nearest double, as in JSON, and NaN where it is not decimal.
fn whole(digits: &str, radix: u32) -> Number {
    match i64::from_str_radix(digits, radix) {
        Ok(number) => Number {
            value: number as f64,
            count: u64::try_from(number).ok(),
        },
        Err(_) if radix == 10 => Number {
            value: digits.parse().unwrap_or(f64::NAN),
            count: None,
        },
        Err(_) => Number {
            value: f64::NAN,
            count: None,
        },
    }
}
