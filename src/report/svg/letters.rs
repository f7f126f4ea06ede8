//! The width of a text.

use super::draw::LETTERS;
use alloc::string::String;
use alloc::vec::Vec;

/// Upper bound of the width of a letter, as a multiple of the font size. Source: the widths of DejaVu Sans, the widest of the
/// usual fonts, from memory, rounded up; `tests/browser` measures the texts.
fn letter_width(letter: char) -> f64 {
    match letter {
        'i' | 'j' | 'l' | 'í' | '.' | ',' | ':' | ';' | '\'' | '|' | '!' | ' ' | 'I' => 0.34,
        'f' | 't' | 'r' | '(' | ')' | '/' | '-' => 0.42,
        'm' | 'w' | 'M' | 'W' | '%' | '@' => 1.0,
        letter if letter.is_uppercase() => 0.78,
        _ => 0.64,
    }
}

/// Upper bound of the width of a text in the usual letters, px.
pub(super) fn text_width(text: &str) -> f64 {
    LETTERS * text.chars().map(letter_width).sum::<f64>()
}

/// The text in lines no wider than this, px; a word that is wider has a line of its own.
pub(super) fn wrapped(text: &str, width: f64) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    // A no-break space is part of a word.
    for word in text.split([' ', '\n']).filter(|word| !word.is_empty()) {
        match lines.last_mut() {
            Some(line) if text_width(line) + text_width(" ") + text_width(word) <= width => {
                line.push(' ');
                line.push_str(word);
            }
            Some(_) | None => lines.push(word.into()),
        }
    }
    lines
}
