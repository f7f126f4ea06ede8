//! Lines of a page of text, wrapped to the width of the page.

use alloc::string::String;
use alloc::vec::Vec;

/// Columns of a page.
pub(super) const WIDTH: usize = 80;

/// A piece of a page.
pub(super) enum Piece {
    /// A heading.
    Heading(String),
    /// Text that is wrapped; its first line begins with `first` and the others with as many spaces.
    Wrapped { first: &'static str, text: String },
    /// A line as it is.
    Line(String),
    /// An empty line.
    Gap,
}

/// A page that is being written.
#[derive(Default)]
pub(super) struct Lines {
    pieces: Vec<Piece>,
}

impl Lines {
    /// Text that is wrapped at spaces, but not at those of [`whole`].
    ///
    /// Its first line begins with `first` and the others with as many spaces.
    pub(super) fn wrapped(&mut self, first: &'static str, text: &str) {
        let text = text.into();
        self.pieces.push(Piece::Wrapped { first, text });
    }

    /// A heading.
    pub(super) fn heading(&mut self, text: &str) {
        self.pieces.push(Piece::Heading(text.into()));
    }

    /// A line as it is.
    pub(super) fn line(&mut self, line: &str) {
        self.pieces.push(Piece::Line(line.into()));
    }

    /// An empty line, unless there is one already.
    pub(super) fn gap(&mut self) {
        self.pieces.push(Piece::Gap);
    }

    pub(super) fn pieces(&self) -> &[Piece] {
        &self.pieces
    }

    pub(super) fn into_text(self) -> String {
        let mut text = String::new();
        for piece in self.pieces {
            match piece {
                Piece::Heading(heading) => wrap(&mut text, "", &heading.to_uppercase()),
                Piece::Wrapped { first, text: wrapped } => wrap(&mut text, first, &wrapped),
                Piece::Line(line) => end(&mut text, &line),
                Piece::Gap if !text.is_empty() && !text.ends_with("\n\n") => text.push('\n'),
                Piece::Gap => {}
            }
        }
        text
    }
}

fn wrap(out: &mut String, first: &str, text: &str) {
    let indent = first.chars().count();
    let mut line = String::from(first);
    let mut column = indent;
    let mut is_empty = true;
    for word in text.split([' ', '\n']).filter(|word| !word.is_empty()) {
        let length = word.chars().count();
        if !is_empty && column + 1 + length > WIDTH {
            end(out, &line);
            line.clear();
            line.extend(core::iter::repeat_n(' ', indent));
            column = indent;
            is_empty = true;
        }
        if !is_empty {
            line.push(' ');
            column += 1;
        }
        line.push_str(word);
        column += length;
        is_empty = false;
    }
    end(out, &line);
}

fn end(out: &mut String, line: &str) {
    let letters = line.trim_end().chars();
    out.extend(letters.map(|letter| if letter == WHOLE { ' ' } else { letter }));
    out.push('\n');
}

/// The space that does not wrap.
const WHOLE: char = '\u{a0}';

/// A text that stays on one line.
pub(super) fn whole(text: &str) -> String {
    text.chars()
        .map(|letter| if letter == ' ' { WHOLE } else { letter })
        .collect()
}

/// A sentence without its capital letter, to follow a colon.
pub(super) fn uncapital(text: &str) -> String {
    let mut letters = text.chars();
    match letters.next() {
        Some(first) => first.to_lowercase().chain(letters).collect(),
        None => String::new(),
    }
}

/// A text with a capital letter at its beginning.
pub(super) fn capital(text: &str) -> String {
    let mut letters = text.chars();
    match letters.next() {
        Some(first) => first.to_uppercase().chain(letters).collect(),
        None => String::new(),
    }
}
