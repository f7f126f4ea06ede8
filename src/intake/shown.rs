//! Shortens what was written, to repeat it in a message.

use alloc::string::String;

/// How many characters of what was written a message repeats.
const LONGEST: usize = 80;

/// The text on one line, shortened to 80 characters, the ellipsis included.
pub(super) fn shown(text: &str) -> String {
    // The eighty-first character shows that the text is longer; the rest is not read.
    let mut line = String::new();
    for (count, c) in text.chars().enumerate() {
        if count == LONGEST {
            line.pop();
            line.push('…');
            break;
        }
        line.push(if c.is_control() { ' ' } else { c });
    }
    line
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_long_text_is_cut_after_a_whole_character() {
        for c in ["a", "é", "☃", "𝄞"] {
            assert_eq!(shown(&c.repeat(80)), c.repeat(80));
            assert_eq!(shown(&c.repeat(81)), c.repeat(79) + "…");
            assert_eq!(shown(&c.repeat(100_000)).chars().count(), 80);
        }
        assert_eq!(shown("a\n\tb\0"), "a  b ");
    }
}
