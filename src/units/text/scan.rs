//! Splits text into a number and a unit.

use crate::error::Error;
use crate::names::{ErrorKind, Quantity};

/// Longest unit, normalised; a longer one is unknown.
const LONGEST: usize = 32;

/// A unit as written, in lower case and without spaces, dots, brackets, hyphens and degree signs.
pub(super) struct Unit {
    bytes: [u8; LONGEST],
    length: usize,
}

impl Unit {
    /// `None` when a character belongs to no unit, a hyphen does not join two characters, or the unit is `mPa`.
    ///
    /// Case does not matter elsewhere, but `mPa` is a millipascal and may have been meant as a megapascal.
    fn of(text: &str) -> Option<Self> {
        if text.chars().filter(|c| c.is_alphanumeric()).take(3).eq("mPa".chars()) {
            return None;
        }
        let mut joins = false;
        let mut unit = Self {
            bytes: [0; LONGEST],
            length: 0,
        };
        for c in text.chars() {
            let plain = match c {
                '-' | '\u{2212}' if joins || unit.is_empty() => return None,
                '-' | '\u{2212}' => {
                    joins = true;
                    continue;
                }
                '.' if unit.is_empty() => return None,
                '.' | '(' | ')' | '[' | ']' | '^' | '°' | 'º' | '˚' => continue,
                _ if c.is_whitespace() => continue,
                'µ' | 'μ' => 'u',
                '²' => '2',
                '℃' => 'c',
                '℉' => 'f',
                '″' | '”' => '"',
                '′' | '’' => '\'',
                '⁻' => continue,
                '¹' => '1',
                _ => c.to_ascii_lowercase(),
            };
            let byte = u8::try_from(plain).ok().filter(u8::is_ascii)?;
            *unit.bytes.get_mut(unit.length)? = byte;
            unit.length += 1;
            joins = false;
        }
        (!joins).then_some(unit)
    }

    fn text(&self) -> &[u8] {
        self.bytes.get(..self.length).unwrap_or(&[])
    }

    pub(super) fn is_empty(&self) -> bool {
        self.length == 0
    }

    pub(super) fn is(&self, spelling: &str) -> bool {
        self.text() == spelling.as_bytes()
    }

    /// What follows `spelling`, or `None` when the unit does not start with it.
    pub(super) fn after(&self, spelling: &str) -> Option<&[u8]> {
        self.text().strip_prefix(spelling.as_bytes())
    }
}

/// The number, the unit, and the unit as it was written; an absent unit is empty.
///
/// Errors: `NotANumber`, `NotFinite`, `DecimalComma`; `UnknownUnit` when a character belongs to no unit.
pub(super) fn scan(text: &str, quantity: Quantity) -> Result<(f64, Unit, &str), Error> {
    let text = text.trim();
    let (negative, unsigned) = match text.strip_prefix(['-', '\u{2212}', '\u{2013}']) {
        Some(rest) => (true, rest.trim_start()),
        None => (false, text.strip_prefix('+').unwrap_or(text)),
    };
    let (digits, rest) = unsigned.split_at(number_length(unsigned));
    if rest.starts_with(',') {
        return Err(Error::of(ErrorKind::DecimalComma, quantity));
    }
    let magnitude: f64 = digits.parse().map_err(|_| Error::of(ErrorKind::NotANumber, quantity))?;
    if !magnitude.is_finite() {
        return Err(Error::not_finite(quantity, magnitude));
    }
    let unit = Unit::of(rest).ok_or(Error::of(ErrorKind::UnknownUnit, quantity))?;
    Ok((if negative { -magnitude } else { magnitude }, unit, rest.trim()))
}

/// Length in bytes of digits, a point, digits, and an exponent if one is complete.
fn number_length(text: &str) -> usize {
    let bytes = text.as_bytes();
    let digits_from = |from: usize| bytes.iter().skip(from).take_while(|b| b.is_ascii_digit()).count();
    let mut length = digits_from(0);
    if bytes.get(length) == Some(&b'.') {
        length += 1 + digits_from(length + 1);
    }
    if matches!(bytes.get(length), Some(b'e' | b'E')) {
        let sign = usize::from(matches!(bytes.get(length + 1), Some(b'+' | b'-')));
        let exponent = digits_from(length + 1 + sign);
        if exponent > 0 {
            length += 1 + sign + exponent;
        }
    }
    length
}
