//! A reader of JSON as RFC 8259 has it: no more and no less. The usual library for it, with the hash tables and the
//! writing of numbers that it brings, was 50 kB of the C library.

use super::refusal::{Refusal, Refused};
use super::value::Value;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

/// How deep tables and lists may stand in each other; a readings file needs five.
const DEEPEST: usize = 100;

/// The value that a text holds.
pub(super) fn value(text: &str) -> Result<Value, Refused> {
    let mut reader = Reader { text, at: 0 };
    let value = reader.value(0)?;
    match reader.next() {
        None => Ok(value),
        Some(_) => Err(reader.refuse("nothing may follow")),
    }
}

struct Reader<'a> {
    text: &'a str,
    /// How many bytes are read.
    at: usize,
}

impl<'a> Reader<'a> {
    #[cold]
    #[inline(never)]
    fn refuse(&self, advice: &str) -> Refused {
        let read = self.text.get(..self.at).unwrap_or_default();
        let line = read.matches('\n').count() + 1;
        let column = read.chars().rev().take_while(|character| *character != '\n').count() + 1;
        Refusal::syntax(&format!("line {line}, column {column} of the JSON: {advice}"))
    }

    fn rest(&self) -> &'a str {
        self.text.get(self.at..).unwrap_or_default()
    }

    /// The next byte that is no space; it is not taken.
    fn next(&mut self) -> Option<u8> {
        let rest = self.rest();
        self.at += rest.len() - rest.trim_start_matches([' ', '\t', '\n', '\r']).len();
        self.rest().bytes().next()
    }

    /// Takes `token` where it stands next.
    fn take(&mut self, token: &str) -> bool {
        let taken = self.rest().starts_with(token);
        self.at += if taken { token.len() } else { 0 };
        taken
    }

    fn value(&mut self, depth: usize) -> Result<Value, Refused> {
        if depth > DEEPEST {
            return Err(self.refuse("lists and tables stand too deep in each other"));
        }
        Ok(match self.next() {
            Some(b'{') => {
                let mut entries = Vec::new();
                self.each(b'}', |reader| {
                    let key = match reader.next() {
                        Some(b'"') => reader.string()?,
                        Some(_) | None => return Err(reader.refuse("a key in quotes is missing")),
                    };
                    if reader.next() != Some(b':') {
                        return Err(reader.refuse("a colon is missing"));
                    }
                    reader.at += 1;
                    entries.push((key, reader.value(depth + 1)?));
                    Ok(())
                })?;
                Value::Table(entries)
            }
            Some(b'[') => {
                let mut items = Vec::new();
                self.each(b']', |reader| {
                    items.push(reader.value(depth + 1)?);
                    Ok(())
                })?;
                Value::List(items)
            }
            Some(b'"') => Value::Text(self.string()?),
            Some(b'-' | b'0'..=b'9') => self.number()?,
            Some(_) if self.take("true") => Value::Bool(true),
            Some(_) if self.take("false") => Value::Bool(false),
            Some(_) if self.take("null") => Value::Null,
            Some(_) | None => return Err(self.refuse("a value is missing")),
        })
    }

    /// Reads what stands between commas up to the closing bracket; the opening one stands next.
    fn each(&mut self, closing: u8, mut read: impl FnMut(&mut Self) -> Result<(), Refused>) -> Result<(), Refused> {
        self.at += 1;
        if self.next() != Some(closing) {
            loop {
                read(self)?;
                match self.next() {
                    Some(b',') => self.at += 1,
                    Some(byte) if byte == closing => break,
                    Some(_) | None => return Err(self.refuse("a comma or the closing bracket is missing")),
                }
            }
        }
        self.at += 1;
        Ok(())
    }

    fn number(&mut self) -> Result<Value, Refused> {
        let start = self.at;
        self.take("-");
        let whole = self.digits();
        let stray = whole.len() > 1 && whole.starts_with('0');
        let fraction = !self.take(".") || !self.digits().is_empty();
        let mut exponent = true;
        if self.take("e") || self.take("E") {
            let _ = self.take("+") || self.take("-");
            exponent = !self.digits().is_empty();
        }
        if whole.is_empty() || stray || !fraction || !exponent {
            return Err(self.refuse("this is no number"));
        }
        Ok(Value::Number(self.text.get(start..self.at).unwrap_or_default().into()))
    }

    fn digits(&mut self) -> &'a str {
        let rest = self.rest();
        let count = rest.bytes().take_while(u8::is_ascii_digit).count();
        self.at += count;
        rest.get(..count).unwrap_or_default()
    }

    /// A text in quotes, of which the first stands next.
    fn string(&mut self) -> Result<String, Refused> {
        self.at += 1;
        let mut string = String::new();
        loop {
            let rest = self.rest();
            let plain = rest
                .find(|c| matches!(c, '"' | '\\' | '\u{0}'..='\u{1f}'))
                .unwrap_or(rest.len());
            string.push_str(rest.get(..plain).unwrap_or_default());
            self.at += plain;
            if self.take("\"") {
                return Ok(string);
            }
            if !self.take("\\") {
                return Err(self.refuse("the closing quotes are missing"));
            }
            string.push(self.escaped()?);
        }
    }

    /// What a backslash stands before.
    fn escaped(&mut self) -> Result<char, Refused> {
        const SIMPLE: [(&str, char); 8] = [
            ("\"", '"'),
            ("\\", '\\'),
            ("/", '/'),
            ("b", '\u{8}'),
            ("f", '\u{c}'),
            ("n", '\n'),
            ("r", '\r'),
            ("t", '\t'),
        ];
        if let Some((_, character)) = SIMPLE.iter().find(|(letter, _)| self.take(letter)) {
            return Ok(*character);
        }
        let mut code = self.hexadecimal()?;
        if (0xd800..0xdc00).contains(&code) && self.rest().starts_with("\\u") {
            self.at += 1;
            let low = self.hexadecimal()?;
            if (0xdc00..0xe000).contains(&low) {
                code = 0x1_0000 + ((code - 0xd800) << 10) + (low - 0xdc00);
            }
        }
        char::from_u32(code).ok_or_else(|| self.refuse("half a surrogate pair"))
    }

    /// `u` and four hexadecimal digits.
    fn hexadecimal(&mut self) -> Result<u32, Refused> {
        let digits = self.rest().strip_prefix('u').and_then(|rest| rest.get(..4));
        let all = digits.filter(|digits| digits.bytes().all(|digit| digit.is_ascii_hexdigit()));
        let code = all.and_then(|digits| u32::from_str_radix(digits, 16).ok());
        self.at += if code.is_some() { 5 } else { 0 };
        code.ok_or_else(|| self.refuse("no such escape"))
    }
}

#[cfg(test)]
mod tests {
    use super::super::value::quote;
    use super::value;
    use alloc::string::{String, ToString};
    use proptest::prelude::*;

    /// Whether another reader of JSON makes the same of it.
    fn agrees(text: &str) -> bool {
        match (value(text), serde_json::from_str::<serde_json::Value>(text)) {
            (Ok(read), Ok(other)) => {
                let again = serde_json::from_str::<serde_json::Value>(&read.to_string());
                again.is_ok_and(|again| again == other)
            }
            (Err(_), Err(_)) => true,
            (Ok(_), Err(_)) | (Err(_), Ok(_)) => false,
        }
    }

    #[test]
    fn what_is_json_and_what_is_not() {
        for text in [
            "",
            " ",
            "nul",
            "null",
            "nulls",
            "true false",
            "tru",
            "-",
            "-0",
            "00",
            "01",
            "1.",
            ".5",
            "1.5e",
            "1e+",
            "1e+05",
            "-1.5E-7",
            "+1",
            "0x1",
            "NaN",
            "1e999",
            "[]",
            "[1,]",
            "[,]",
            "[1 2]",
            "[",
            "{",
            "{}",
            "{,}",
            "{\"a\"}",
            "{\"a\":}",
            "{\"a\":1,}",
            "{a:1}",
            "{\"a\":1 \"b\":2}",
            "{\"a\":{\"b\":[1,{\"c\":null}]}}",
            "\"",
            "\"\\",
            "\"\\x\"",
            "\"\\u12\"",
            "\"\\u+123\"",
            "\"\\u00e9\\/\\b\\f\\n\\r\\t\\\\\\\"\"",
            "\"\\ud83d\\ude00\"",
            "\"\\ud83d\"",
            "\"\\ude00\"",
            "\"\\ud83d\\u0041\"",
            "\"\\ud83dx\"",
            "\"a\tb\"",
            "\"a\nb\"",
            "\"°\"",
            "\u{feff}1",
            "\u{a0}1",
            "\t\r\n 1 \t",
            "1\u{b}",
            "// 1\n1",
            "'a'",
            "12345678901234567890123456789",
        ] {
            assert!(agrees(text), "{text}");
        }
        let deep = |depth: usize| "[".repeat(depth) + &"]".repeat(depth);
        assert!(value(&deep(100)).is_ok() && value(&deep(102)).is_err() && value(&deep(1_000_000)).is_err());
    }

    #[test]
    fn a_refusal_names_the_place() {
        let refusal = value("{\n  \"a\": \"°\" 1\n}").map_or_else(|refused| refused.advice, |_| String::new());
        assert_eq!(
            refusal,
            "line 2, column 12 of the JSON: a comma or the closing bracket is missing"
        );
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(20_000))]

        #[test]
        fn any_text_of_json_signs_reads_as_elsewhere(text in r#"[\[\]{},:"\\u0-9a-fE+. tn-]{0,14}"#) {
            prop_assert!(agrees(&text), "{}", text);
        }

        #[test]
        fn any_text_comes_back(text in any::<String>()) {
            let mut quoted = String::new();
            quote(&text, &mut quoted);
            prop_assert!(agrees(&quoted), "{}", quoted);
            prop_assert_eq!(value(&quoted).ok(), Some(super::Value::Text(text)));
        }
    }
}
