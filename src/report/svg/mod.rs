//! Drawings of a visit, each a self-contained SVG in black and grey.

mod axis;
mod bars;
mod curves;
mod cycle;
mod draw;
mod letters;
mod scale;
mod tree;

pub(super) use draw::Escaped;

use super::page::Page;
use super::units::Units;
use super::words::Wording;
use crate::intake::{Refusal, Visit};
use crate::names::Picture;
use alloc::string::String;

/// A drawing of a visit as one SVG element, 360 px wide, for a file of its own or for a page.
///
/// `None` where the visit has nothing to draw: no reading with a normal range, nothing to do, no pressures on both sides of a
/// running system, no pull-down, held vacuum or pressure test. It has the colour of the text around it, and the language of
/// the settings of the visit.
///
/// Errors: a [`Refusal`] for what cannot be diagnosed or judged; for the cycle also where the equation of the refrigerant has
/// no state for a reading.
///
/// ```
/// use coldloop::{Picture, intake, report};
/// let units = report::Units::Metric;
/// let visit = intake::visit_from_toml(include_str!("../../../examples/readings/low-charge.toml"))?;
/// let svg = report::svg(&visit, Picture::Cycle, units)?.expect("both pressures were read");
/// assert!(svg.starts_with("<svg xmlns=") && svg.contains("enthalpy, kJ/kg"));
/// assert!(report::svg(&visit, Picture::Hold, units)?.is_none()); // no vacuum was held
/// # Ok::<(), intake::Refusal>(())
/// ```
pub fn svg(visit: &Visit, picture: Picture, units: Units) -> Result<Option<String>, Refusal> {
    drawn(visit, &Page::of_visit(visit)?, picture, wording(visit, units))
}

/// The wording of the page of a visit, with all details.
pub(super) const fn wording(visit: &Visit, units: Units) -> Wording {
    Wording {
        units,
        language: visit.settings.language,
        details: true,
    }
}

/// The same where the page of the visit is known.
pub(super) fn drawn(visit: &Visit, page: &Page, picture: Picture, wording: Wording) -> Result<Option<String>, Refusal> {
    let proof = page.proof.as_ref();
    Ok(match picture {
        Picture::Readings => bars::readings(page, wording),
        Picture::Odds => bars::odds(page, wording),
        Picture::Plan => tree::plan(page, wording),
        Picture::Cycle => cycle::cycle(&visit.case, page, wording)?,
        Picture::PullDown => proof
            .and_then(|proof| proof.pull_down.as_ref())
            .and_then(|judged| curves::pull_down(visit, judged, wording)),
        Picture::Hold => proof
            .and_then(|proof| proof.hold.as_ref())
            .zip(visit.hold())
            .and_then(|(judged, hold)| curves::hold(&hold, judged, wording)),
        Picture::PressureTest => proof
            .and_then(|proof| proof.pressure_test.as_ref())
            .zip(visit.pressure_test.as_ref())
            .and_then(|(judged, test)| curves::pressure_test(test, judged, wording)),
    })
}
