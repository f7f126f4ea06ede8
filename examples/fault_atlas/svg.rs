//! A drawing as SVG: lines, boxes, marks and words.

use std::fmt::Write;

/// The fonts of all words. Every machine has one of them, and all have about the same width.
const FONT: &str = "Helvetica, Arial, 'Liberation Sans', sans-serif";

/// A drawing of some size, in points.
pub(crate) struct Svg {
    body: String,
    width: f64,
    height: f64,
}

/// The alignment of a word.
#[derive(Clone, Copy)]
pub(crate) enum Held {
    Left,
    Middle,
    Right,
}

/// How a word looks.
#[derive(Clone, Copy)]
pub(crate) struct Letters {
    pub(crate) size: f64,
    pub(crate) held: Held,
    pub(crate) shade: &'static str,
    pub(crate) bold: bool,
}

impl Letters {
    pub(crate) const fn of(size: f64) -> Self {
        Self {
            size,
            held: Held::Left,
            shade: BLACK,
            bold: false,
        }
    }

    pub(crate) const fn held(self, held: Held) -> Self {
        Self { held, ..self }
    }

    pub(crate) const fn grey(self) -> Self {
        Self { shade: GREY, ..self }
    }

    pub(crate) const fn bold(self) -> Self {
        Self { bold: true, ..self }
    }
}

pub(crate) const BLACK: &str = "#111111";
pub(crate) const GREY: &str = "#555555";

impl Svg {
    pub(crate) fn new(width: f64, height: f64) -> Self {
        let mut svg = Self {
            body: String::new(),
            width,
            height,
        };
        svg.filled([0.0, 0.0], [width, height], "#ffffff");
        svg
    }

    fn put(&mut self, element: std::fmt::Arguments<'_>) {
        let _ = writeln!(self.body, "{element}"); // writing into a String does not fail
    }

    pub(crate) fn filled(&mut self, [x, y]: [f64; 2], [width, height]: [f64; 2], shade: &str) {
        self.put(format_args!(
            r#"<rect x="{x:.2}" y="{y:.2}" width="{width:.2}" height="{height:.2}" fill="{shade}"/>"#
        ));
    }

    pub(crate) fn line(&mut self, [x1, y1]: [f64; 2], [x2, y2]: [f64; 2], width: f64, shade: &str) {
        self.put(format_args!(
            r#"<line x1="{x1:.2}" y1="{y1:.2}" x2="{x2:.2}" y2="{y2:.2}" stroke="{shade}" stroke-width="{width}"/>"#
        ));
    }

    /// Lines through all these points.
    pub(crate) fn path(&mut self, points: &[[f64; 2]], width: f64) {
        let points: Vec<String> = points.iter().map(|[x, y]| format!("{x:.2},{y:.2}")).collect();
        self.put(format_args!(
            r#"<polyline points="{}" fill="none" stroke="{BLACK}" stroke-width="{width}"/>"#,
            points.join(" ")
        ));
    }

    /// A closed figure, filled or not.
    pub(crate) fn closed(&mut self, points: &[[f64; 2]], fill: &str) {
        let points: Vec<String> = points.iter().map(|[x, y]| format!("{x:.2},{y:.2}")).collect();
        self.put(format_args!(
            r#"<polygon points="{}" fill="{fill}" stroke="{BLACK}" stroke-width="0.8"/>"#,
            points.join(" ")
        ));
    }

    pub(crate) fn circle(&mut self, [x, y]: [f64; 2], radius: f64, fill: &str) {
        self.put(format_args!(
            r#"<circle cx="{x:.2}" cy="{y:.2}" r="{radius:.2}" fill="{fill}" stroke="{BLACK}" stroke-width="0.8"/>"#
        ));
    }

    pub(crate) fn words(&mut self, [x, y]: [f64; 2], letters: Letters, text: &str) {
        let anchor = match letters.held {
            Held::Left => "start",
            Held::Middle => "middle",
            Held::Right => "end",
        };
        let weight = if letters.bold { r#" font-weight="bold""# } else { "" };
        let text = text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;");
        let Letters { size, shade, .. } = letters;
        self.put(format_args!(
            r#"<text x="{x:.2}" y="{y:.2}" font-size="{size}" text-anchor="{anchor}" fill="{shade}"{weight}>{text}</text>"#
        ));
    }

    pub(crate) fn finished(self) -> String {
        let Self { body, width, height } = self;
        format!(
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width:.0}\" \
             height=\"{height:.0}\" viewBox=\"0 0 {width:.0} {height:.0}\" font-family=\"{FONT}\">\n{body}</svg>\n"
        )
    }
}
