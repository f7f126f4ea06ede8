//! The functions of the module, by number.

use coldloop::intake::{self, Refusal, Visit};
use coldloop::units::{AbsolutePressure, in_kelvins, kelvins};
use coldloop::{Error, Picture, Refrigerant, report, vehicle};

use super::session;

/// Two texts in; the answer, or a refusal as JSON.
type Function = fn(&str, &str) -> Result<String, String>;

/// Their place in this list is their number in `package/coldloop.js`; `names` lists them, so that the package can compare the two.
pub(crate) const FUNCTIONS: [(&str, Function); 22] = [
    ("names", names),
    ("version", |_, _| Ok(env!("CARGO_PKG_VERSION").into())),
    ("diagnose", |readings, settings| {
        told(|| report::visit_json(&*visit(readings, settings)?))
    }),
    ("report", |readings, settings| {
        told(|| report::visit_text(&*visit(readings, settings)?, report::Units::as_written(readings)))
    }),
    ("plan", |readings, settings| {
        told(|| {
            let visit = visit(readings, settings)?;
            Ok(report::plan_json(&*visit.plan()?, &visit.case.system))
        })
    }),
    ("prove", |readings, settings| {
        told(|| {
            let visit = visit(readings, settings)?;
            Ok(report::proof_json(&visit.prove()?, visit.settings.language))
        })
    }),
    ("catalogue", |readings, _| {
        told(|| Ok(report::catalogue_json(&intake::system_from_text(readings)?)))
    }),
    ("page", |readings, settings| {
        told(|| report::html(&*visit(readings, settings)?, report::Units::as_written(readings)))
    }),
    ("picture", |readings, picture| told(|| drawn(readings, picture))),
    ("sessionStart", |readings, _| told(|| session::started(readings))),
    ("sessionAdd", |stored, given| told(|| session::added(stored, given))),
    ("sessionOutcome", |stored, outcome| {
        told(|| session::came_out(stored, outcome))
    }),
    ("sessionRepair", |stored, fault| {
        told(|| session::repaired(stored, fault))
    }),
    ("sessionUndo", |stored, _| told(|| session::undone(stored))),
    ("sessionNext", |stored, language| {
        told(|| session::next(stored, language))
    }),
    ("sessionAnswer", |stored, _| told(|| session::answer(stored))),
    ("sessionPage", |stored, wording| told(|| session::page(stored, wording))),
    ("simulate", |trial, _| told(|| simulated(trial))),
    ("bubblePressure", |name, kelvin| {
        number(name, kelvin, |it, t_k| Ok(it.bubble_pressure(kelvins(t_k))?.pa()))
    }),
    ("dewPressure", |name, kelvin| {
        number(name, kelvin, |it, t_k| Ok(it.dew_pressure(kelvins(t_k))?.pa()))
    }),
    ("bubbleTemperature", |name, pa| {
        number(name, pa, |it, p_pa| {
            Ok(in_kelvins(it.bubble_temperature(AbsolutePressure::from_pa(p_pa))?))
        })
    }),
    ("dewTemperature", |name, pa| {
        number(name, pa, |it, p_pa| {
            Ok(in_kelvins(it.dew_temperature(AbsolutePressure::from_pa(p_pa))?))
        })
    }),
];

fn names(_: &str, _: &str) -> Result<String, String> {
    Ok(FUNCTIONS.map(|(name, _)| name).join(" "))
}

fn told(body: impl Fn() -> Result<String, Refusal>) -> Result<String, String> {
    body().map_err(|refusal| report::refusal_json(&refusal))
}

/// The visit of a readings file; settings that are given replace its own.
fn visit(readings: &str, settings: &str) -> Result<Box<Visit>, Refusal> {
    let mut visit = intake::visit_from_text(readings)?;
    if !settings.is_empty() {
        visit.settings = intake::settings_from_json(settings)?;
    }
    Ok(visit)
}

/// A drawing by its id, which settings may follow after a space; an empty text where there is nothing to draw.
fn drawn(readings: &str, picture: &str) -> Result<String, Refusal> {
    let (picture, settings) = picture.split_once(' ').unwrap_or((picture, ""));
    let picture = session::known(picture, Picture::from_id)?;
    let svg = report::svg(
        &*visit(readings, settings)?,
        picture,
        report::Units::as_written(readings),
    )?;
    Ok(svg.unwrap_or_default())
}

fn simulated(trial: &str) -> Result<String, Refusal> {
    let trial = intake::trial_from_text(trial)?;
    let simulation = vehicle::simulate(&trial.vehicle, &trial.conditions, &trial.faults)?;
    Ok(report::simulation_json(&simulation, trial.conditions.surroundings))
}

/// A figure of a refrigerant, as the shortest text that reads back to the same bits.
fn number(name: &str, si: &str, figure: fn(Refrigerant, f64) -> Result<f64, Error>) -> Result<String, String> {
    told(|| {
        let refrigerant = session::known(name, Refrigerant::from_id)?;
        let si = si.parse().unwrap_or(f64::NAN);
        Ok(figure(refrigerant, si)?.to_string())
    })
}
