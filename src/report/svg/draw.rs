//! A drawing as SVG: lines, boxes, marks and text, in black and grey, so that it can be printed without colour.
//!
//! The elements are written here because the SVG crates need `std`, which texts and answers do not need.

use super::letters::{text_width, wrapped};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::fmt::{self, Write};

/// Width of every drawing, px: that of a phone held upright, so that text is not scaled there.
pub(super) const WIDTH: f64 = 360.0;
/// Height of the usual letters, px.
pub(super) const LETTERS: f64 = 11.0;
/// Distance between two lines of text, px.
pub(super) const LINE: f64 = 14.0;
/// Distance between two strokes of a hatching, px.
const HATCH: f64 = 5.0;

/// The point of a text that is at its position.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Anchor {
    Start,
    Middle,
    End,
}

/// How a stroke is drawn.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Stroke {
    /// A thin line: axes and frames.
    Thin,
    /// A strong line: what was measured.
    Strong,
    /// A strong dashed line: what was not measured.
    Dashed,
}

/// How an area is filled.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Fill {
    Blank,
    Hatched,
    Full,
}

/// The shape of a mark.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Mark {
    Dot,
    Ring,
    Square,
    Diamond,
    Blank,
}

/// A drawing of the usual width.
pub(super) struct Drawing {
    body: String,
}

impl Drawing {
    pub(super) const fn new() -> Self {
        Self { body: String::new() }
    }

    /// The drawing as one element, for a file of its own or for a page; `title` is for screen readers.
    pub(super) fn finish(self, title: &str, height: f64) -> String {
        format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {WIDTH} {height:.0}\" width=\"{WIDTH}\" height=\"{height:.0}\" \
             role=\"img\" font-family=\"Helvetica, Arial, 'Liberation Sans', sans-serif\" font-size=\"{LETTERS}\" \
             fill=\"currentColor\" stroke=\"none\">\n<title>{}</title>\n{}</svg>",
            Escaped(title),
            self.body
        )
    }

    fn put(&mut self, element: fmt::Arguments<'_>) {
        let _ = writeln!(self.body, "{element}"); // writing into a String does not fail
    }

    pub(super) fn text(&mut self, at: [f64; 2], anchor: Anchor, text: &str) {
        self.write(at, anchor, "", text);
    }

    pub(super) fn bold(&mut self, at: [f64; 2], anchor: Anchor, text: &str) {
        self.write(at, anchor, " font-weight=\"bold\"", text);
    }

    fn write(&mut self, [x, y]: [f64; 2], anchor: Anchor, look: &str, text: &str) {
        let held = match anchor {
            Anchor::Start => "",
            Anchor::Middle => " text-anchor=\"middle\"",
            Anchor::End => " text-anchor=\"end\"",
        };
        self.put(format_args!(
            "<text x=\"{x:.1}\" y=\"{y:.1}\"{held}{look}>{}</text>",
            Escaped(text)
        ));
    }

    /// A text centred as near to `x` as it fits into the drawing.
    pub(super) fn near(&mut self, [x, y]: [f64; 2], text: &str) {
        let half = text_width(text) / 2.0;
        let x = f64::min(f64::max(x, half), WIDTH - half);
        self.text([x, y], Anchor::Middle, text);
    }

    /// Lines of text wrapped to the drawing; returns the position below them.
    pub(super) fn lines(&mut self, [x, y]: [f64; 2], text: &str) -> f64 {
        let mut y = y;
        for line in wrapped(text, WIDTH - x) {
            self.text([x, y], Anchor::Start, &line);
            y += LINE;
        }
        y
    }

    pub(super) fn line(&mut self, from: [f64; 2], to: [f64; 2], stroke: Stroke) {
        self.path(&[from, to], stroke);
    }

    /// Lines through all these points.
    pub(super) fn path(&mut self, points: &[[f64; 2]], stroke: Stroke) {
        let look = match stroke {
            Stroke::Thin => "stroke-width=\"0.8\" stroke-opacity=\"0.7\"",
            Stroke::Strong => "stroke-width=\"1.8\"",
            Stroke::Dashed => "stroke-width=\"1.8\" stroke-dasharray=\"5 4\"",
        };
        let points: Vec<String> = points.iter().map(|[x, y]| format!("{x:.1},{y:.1}")).collect();
        self.put(format_args!(
            "<polyline points=\"{}\" fill=\"none\" stroke=\"currentColor\" {look}/>",
            points.join(" ")
        ));
    }

    /// A box with its frame.
    pub(super) fn area(&mut self, [x, y]: [f64; 2], [width, height]: [f64; 2], fill: Fill) {
        let look = match fill {
            Fill::Blank | Fill::Hatched => "fill=\"none\"",
            Fill::Full => "",
        };
        self.put(format_args!(
            "<rect x=\"{x:.1}\" y=\"{y:.1}\" width=\"{width:.1}\" height=\"{height:.1}\" {look} stroke=\"currentColor\" stroke-width=\"0.8\"/>"
        ));
        if fill == Fill::Hatched {
            self.hatch([x, y], [width, height]);
        }
    }

    /// Strokes from the lower left to the upper right of a box, each cut off at its sides.
    fn hatch(&mut self, [x, y]: [f64; 2], [width, height]: [f64; 2]) {
        let mut path = String::new();
        let mut at = HATCH - height;
        while at < width {
            let (from, to) = (f64::max(at, 0.0), f64::min(at + height, width));
            let (low, high) = (y + height - (from - at), y + height - (to - at));
            let _ = write!(path, "M{:.1} {low:.1}L{:.1} {high:.1}", x + from, x + to); // a String takes all
            at += HATCH;
        }
        if !path.is_empty() {
            self.put(format_args!(
                "<path d=\"{path}\" fill=\"none\" stroke=\"currentColor\" stroke-width=\"0.8\"/>"
            ));
        }
    }

    pub(super) fn mark(&mut self, [x, y]: [f64; 2], mark: Mark) {
        let (shape, full) = match mark {
            Mark::Dot => (format!("<circle cx=\"{x:.1}\" cy=\"{y:.1}\" r=\"4\""), true),
            Mark::Ring => (format!("<circle cx=\"{x:.1}\" cy=\"{y:.1}\" r=\"4\""), false),
            Mark::Square => (square([x, y]), true),
            Mark::Blank => (square([x, y]), false),
            Mark::Diamond => {
                let (left, right, up, down) = (x - 5.0, x + 5.0, y - 6.0, y + 6.0);
                let corners = format!("{left:.1},{y:.1} {x:.1},{up:.1} {right:.1},{y:.1} {x:.1},{down:.1}");
                (format!("<polygon points=\"{corners}\""), true)
            }
        };
        let look = if full { "" } else { " fill=\"none\"" };
        self.put(format_args!(
            "{shape}{look} stroke=\"currentColor\" stroke-width=\"1.2\"/>"
        ));
    }
}

fn square([x, y]: [f64; 2]) -> String {
    format!(
        "<rect x=\"{:.1}\" y=\"{:.1}\" width=\"7\" height=\"7\"",
        x - 3.5,
        y - 3.5
    )
}

/// A text with the special characters of XML escaped, and without control characters, which XML does not allow.
pub(in crate::report) struct Escaped<'a>(pub(in crate::report) &'a str);

impl fmt::Display for Escaped<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for letter in self.0.chars() {
            match letter {
                '&' => f.write_str("&amp;")?,
                '<' => f.write_str("&lt;")?,
                '>' => f.write_str("&gt;")?,
                '"' => f.write_str("&quot;")?,
                '\n' | '\t' => f.write_str(" ")?,
                letter if letter.is_control() || matches!(letter, '\u{fffe}' | '\u{ffff}') => {}
                letter => f.write_char(letter)?,
            }
        }
        Ok(())
    }
}
