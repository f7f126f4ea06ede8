//! The page as HTML: text and drawings on one sheet, in one column on a phone and in black on paper.

use super::lines::{Lines, Piece, capital, uncapital};
use super::page::Page;
use super::svg::{Escaped, drawn, wording};
use super::text::Writer;
use super::texts::{Sentence, Short, Text};
use super::units::Units;
use super::words::Wording;
use super::{language::step_says, proof_text};
use crate::intake::{Refusal, Visit};
use crate::names::{Caution, Picture};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::fmt::{self, Write};

/// The style sheet of the page. It has no `<` and no `&`, so that the page is also XML.
const STYLE: &str = include_str!("page.css");

/// The page of a visit as one self-contained HTML document, without scripts or external files.
///
/// It fits a phone and a desktop, and prints on one sheet of A4 or Letter in black. It is also well-formed XML, in the language
/// of the settings of the visit.
///
/// Errors: a [`Refusal`] for what cannot be diagnosed or judged.
///
/// ```
/// use coldloop::{intake, report};
/// let visit = intake::visit_from_toml(include_str!("../../examples/readings/low-charge.toml"))?;
/// let page = report::html(&visit, report::Units::Metric)?;
/// assert!(page.starts_with("<!DOCTYPE html>") && page.contains("<svg"));
/// assert!(!page.contains("<script"));
/// # Ok::<(), intake::Refusal>(())
/// ```
pub fn html(visit: &Visit, units: Units) -> Result<String, Refusal> {
    let page = Page::of_visit(visit)?;
    let sheet = Sheet::new(visit, &page, wording(visit, units));
    let mut out = String::new();
    let _ = write!(
        out,
        "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"{}\">\n<head>\n<meta charset=\"utf-8\"/>\n\
         <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<title>{}</title>\n<style>{STYLE}</style>\n\
         </head>\n<body>\n",
        sheet.wording.language.id(),
        Escaped(&capital(&sheet.writer().headline())),
    ); // writing into a String does not fail
    let _ = sheet.article(&mut out);
    out.push_str("</body>\n</html>\n");
    Ok(out)
}

/// The same as a part of another page, such as a notebook: the style sheet and the article, without a document around them.
///
/// Errors: as [`html`].
///
/// ```
/// use coldloop::{intake, report};
/// let visit = intake::visit_from_toml(include_str!("../../examples/readings/overcharge.toml"))?;
/// let part = report::html_part(&visit, report::Units::Metric)?;
/// assert!(part.starts_with("<style>") && part.ends_with("</article>\n"));
/// # Ok::<(), intake::Refusal>(())
/// ```
pub fn html_part(visit: &Visit, units: Units) -> Result<String, Refusal> {
    let page = Page::of_visit(visit)?;
    let sheet = Sheet::new(visit, &page, wording(visit, units));
    let mut out = format!("<style>{STYLE}</style>\n");
    let _ = sheet.article(&mut out); // as above
    Ok(out)
}

/// The contents of a page: its values and its drawings.
struct Sheet<'a> {
    page: &'a Page,
    wording: Wording,
    /// Each as an element of the page; where it cannot be drawn, the reason.
    drawings: Vec<(Picture, String)>,
}

impl<'a> Sheet<'a> {
    fn new(visit: &Visit, page: &'a Page, wording: Wording) -> Self {
        let drawings = Picture::ALL.into_iter().filter_map(|picture| {
            let element = match drawn(visit, page, picture, wording) {
                Ok(svg) => format!("<figure>{}</figure>\n", svg?),
                Err(refusal) => {
                    let reason = format!("{refusal}");
                    let says = wording.filled(Text::NotDrawn, &[("reason", &reason)]);
                    format!("<p>{}</p>\n", Escaped(&says))
                }
            };
            Some((picture, element))
        });
        Self {
            page,
            wording,
            drawings: drawings.collect(),
        }
    }

    /// The writer of the sentences.
    const fn writer(&self) -> Writer<'a> {
        Writer {
            page: self.page,
            wording: self.wording,
        }
    }

    fn article(&self, out: &mut String) -> fmt::Result {
        writeln!(
            out,
            "<article class=\"coldloop\" lang=\"{}\">",
            self.wording.language.id()
        )?;
        self.head(out)?;
        self.to_do(out)?;
        self.readings(out)?;
        self.told(out, Writer::why)?;
        self.told(out, Writer::limits)?;
        if let Some(proof) = &self.page.proof {
            let mut lines = Lines::default();
            proof_text::write(&mut lines, proof, &self.page.conditions, self.wording);
            pieces(out, lines.pieces())?;
            for picture in [Picture::PressureTest, Picture::Hold, Picture::PullDown] {
                self.drawing(out, picture)?;
            }
        }
        let mut lines = Lines::default();
        self.writer().to_prove(&mut lines);
        if !lines.pieces().is_empty() {
            out.write_str("<section>\n")?;
            element(out, "h2", self.text(Text::ToProve))?;
            pieces(out, lines.pieces())?;
            out.write_str("</section>\n")?;
        }
        self.other_cautions(out)?;
        out.write_str("</article>\n")
    }

    fn text(&self, text: Text) -> &'static str {
        self.wording.text(text)
    }

    fn drawing(&self, out: &mut String, picture: Picture) -> fmt::Result {
        let drawing = self.drawings.iter().find(|(drawn, _)| *drawn == picture);
        out.write_str(drawing.map_or("", |(_, element)| element))
    }

    /// A part that the text page also has, as a section.
    fn told(&self, out: &mut String, write: fn(&Writer<'a>, &mut Lines)) -> fmt::Result {
        let mut lines = Lines::default();
        write(&self.writer(), &mut lines);
        if lines.pieces().is_empty() {
            return Ok(());
        }
        out.write_str("<section>\n")?;
        pieces(out, lines.pieces())?;
        out.write_str("</section>\n")
    }

    /// The stop, system and conditions, the result and the other explanations.
    fn head(&self, out: &mut String) -> fmt::Result {
        let mut lines = Lines::default();
        self.writer().stop(&mut lines);
        if lines.pieces().iter().any(|piece| !matches!(piece, Piece::Gap)) {
            out.write_str("<section class=\"care\">\n")?;
            pieces(out, lines.pieces())?;
            out.write_str("</section>\n")?;
        }
        self.told(out, Writer::heading)?;
        out.write_str("<section>\n")?;
        let mut lines = Lines::default();
        self.writer().result(&mut lines, true);
        if let Some((Piece::Heading(first) | Piece::Wrapped { text: first, .. }, others)) = lines.pieces().split_first()
        {
            element(out, "h1", &capital(first))?;
            pieces(out, others)?;
        }
        self.drawing(out, Picture::Odds)?;
        out.write_str("</section>\n")
    }

    /// The first step below its cautions, and its outcomes; where there is no step, the cautions alone.
    fn to_do(&self, out: &mut String) -> fmt::Result {
        out.write_str("<section>\n")?;
        let Some(first) = self.page.first() else {
            let says = self.writer().charge_first();
            if says.is_some() {
                element(out, "h2", self.text(Text::DoFirst))?;
            }
            self.care(out, self.writer().first_cautions(false))?;
            if let Some(says) = says {
                writeln!(out, "<p class=\"step\">{}</p>", Escaped(says))?;
            }
            return out.write_str("</section>\n");
        };
        element(out, "h2", self.text(Text::DoFirst))?;
        self.care(out, self.writer().first_cautions(false))?;
        let says = step_says(first.action, &self.page.system, self.wording.language);
        let says = format!("{} ({})", says.trim_end_matches('.'), self.wording.cost(first));
        writeln!(out, "<p class=\"step\">{}</p>\n</section>", Escaped(&says))?;
        let mut lines = Lines::default();
        self.writer().after_first(&mut lines);
        if first.outcomes.is_empty() && lines.pieces().is_empty() {
            return Ok(());
        }
        out.write_str("<section>\n")?;
        element(out, "h2", self.text(Text::WhatThen))?;
        self.drawing(out, Picture::Plan)?;
        pieces(out, lines.pieces())?;
        out.write_str("</section>\n")
    }

    /// Cautions in a few words each, in a frame.
    fn care(&self, out: &mut String, cautions: &[Caution]) -> fmt::Result {
        if cautions.is_empty() {
            return Ok(());
        }
        out.write_str("<div class=\"care\">\n")?;
        element(out, "strong", self.text(Text::TakeCare))?;
        list(out, cautions.iter().map(|caution| caution.short(self.wording.language)))?;
        out.write_str("</div>\n")
    }

    /// The readings with their normal ranges, the derived figures, and the cycle.
    fn readings(&self, out: &mut String) -> fmt::Result {
        if !self.page.readings.is_empty() {
            out.write_str("<section>\n")?;
            element(out, "h2", self.text(self.writer().readings_text()))?;
            self.drawing(out, Picture::Readings)?;
            if let Some(basis) = self.page.basis {
                let basis = uncapital(basis.sentence(self.wording.language));
                let says = self.wording.filled(Text::Basis, &[("basis", &basis)]);
                writeln!(out, "<p class=\"more\">{}</p>", Escaped(&says))?;
            }
            out.write_str("</section>\n")?;
        }
        self.told(out, Writer::figures)?;
        self.drawing(out, Picture::Cycle)
    }

    /// The cautions that belong to no step above, folded.
    fn other_cautions(&self, out: &mut String) -> fmt::Result {
        let writer = self.writer();
        let told = writer.first_cautions(false);
        let others = || self.page.cautions.iter().filter(|caution| !told.contains(caution));
        if others().next().is_none() {
            return Ok(());
        }
        let title = Escaped(self.text(Text::OtherCautions));
        writeln!(out, "<details>\n<summary>{title}</summary>")?;
        list(out, others().map(|caution| caution.sentence(self.wording.language)))?;
        // What is folded on a screen is printed in a few words each.
        writeln!(out, "</details>\n<section class=\"paper\">\n<h2>{title}</h2>")?;
        let short = others().map(|caution| caution.short(self.wording.language));
        list(out, short)?;
        out.write_str("</section>\n")
    }
}

/// The pieces of a text as elements; deeper indentation becomes smaller letters.
fn pieces(out: &mut String, pieces: &[Piece]) -> fmt::Result {
    pieces.iter().try_for_each(|piece| match piece {
        Piece::Heading(text) => element(out, "h2", text),
        Piece::Wrapped { first, text } if first.len() > 2 => {
            writeln!(out, "<p class=\"more\">{}</p>", Escaped(text))
        }
        Piece::Wrapped { text, .. } | Piece::Line(text) => element(out, "p", text),
        Piece::Gap => Ok(()),
    })
}

/// An element with a text in it.
fn element(out: &mut String, name: &str, text: &str) -> fmt::Result {
    writeln!(out, "<{name}>{}</{name}>", Escaped(text))
}

fn list(out: &mut String, items: impl Iterator<Item = &'static str>) -> fmt::Result {
    out.write_str("<ul>\n")?;
    for item in items {
        element(out, "li", item)?;
    }
    out.write_str("</ul>\n")
}
