//! Lines of a page of text, none of them wider than the page.

use alloc::string::String;

/// Columns of a page.
pub(super) const WIDTH: usize = 80;

/// A page that is being written.
#[derive(Default)]
pub(super) struct Lines {
    text: String,
}

impl Lines {
    /// A line of text, wrapped at spaces but not at those of [`whole`]; its first line begins with `first` and the others with as many spaces.
    pub(super) fn wrapped(&mut self, first: &str, text: &str) {
        let indent = first.chars().count();
        let mut line = String::from(first);
        let mut column = indent;
        let mut is_empty = true;
        for word in text.split([' ', '\n']).filter(|word| !word.is_empty()) {
            let length = word.chars().count();
            if !is_empty && column + 1 + length > WIDTH {
                self.line(&line);
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
        self.line(&line);
    }

    /// A heading.
    pub(super) fn heading(&mut self, text: &str) {
        self.wrapped("", &text.to_uppercase());
    }

    /// A line as it is.
    pub(super) fn line(&mut self, line: &str) {
        self.text.extend(
            line.trim_end()
                .chars()
                .map(|letter| if letter == WHOLE { ' ' } else { letter }),
        );
        self.text.push('\n');
    }

    /// An empty line, unless one is there.
    pub(super) fn gap(&mut self) {
        if !self.text.is_empty() && !self.text.ends_with("\n\n") {
            self.text.push('\n');
        }
    }

    pub(super) fn into_text(self) -> String {
        self.text
    }
}

/// The space at which no line is wrapped.
const WHOLE: char = '\u{a0}';

/// A text that stays on one line.
pub(super) fn whole(text: &str) -> String {
    text.chars()
        .map(|letter| if letter == ' ' { WHOLE } else { letter })
        .collect()
}

/// A text with a capital letter at its beginning.
pub(super) fn capital(text: &str) -> String {
    let mut letters = text.chars();
    match letters.next() {
        Some(first) => first.to_uppercase().chain(letters).collect(),
        None => String::new(),
    }
}
