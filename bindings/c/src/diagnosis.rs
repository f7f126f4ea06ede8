//! Diagnosis, plan, proof and simulation
//!
//! Text on both sides, for every language that can pass a string. The readings are those of a readings file, as JSON or
//! as TOML of the same shape: "system", "conditions", "readings", "observations". A quantity is text with its unit, and
//! a pressure says its datum:
//!
//!     const char *readings =
//!         "{\"system\": {\"refrigerant\": \"R-134a\", \"expansion\": \"txv\", \"compressor\": \"fixed-clutch\"},"
//!         " \"conditions\": {\"ambient\": \"74 degF\", \"altitude\": \"1600 m\"},"
//!         " \"readings\": {\"low_side\": \"37 psig\", \"high_side\": \"172 psig\", \"vent\": \"40 degF\"}}";
//!     char *answer = malloc(COLDLOOP_ANSWER_MAX);
//!     uint32_t status = coldloop_diagnose(readings, answer, COLDLOOP_ANSWER_MAX, NULL, NULL);
//!
//! "settings" may say how to judge: "priors" of the faults, thresholds, "prices", the chances of "looks", and the
//! "counts" of confirmed cases. What was done to the vehicle since may be added to them: "pressure_test",
//! "evacuation", "hold", "charge", "pull_down" and "after", the conditions and readings after the repair.
//!
//! Input that cannot be read is refused: the status says why, and the answer is {"refused": {"key": ..., "value": ...,
//! "message": ..., "mistakes": [...]}}. The message has a line for every mistake, up to a dozen, which says what to write
//! instead; "mistakes" has the same one by one, each with "key", "value", "line", "column" and "message". Status, key and
//! value are those of the first mistake.
//!
//! The functions here write text as snprintf does. At most `capacity` bytes go to the buffer, the zero byte
//! included, and `length` (may be NULL) receives the length of the whole text without it: when `length` is not less than
//! `capacity` the text was cut, after a whole character. COLDLOOP_ANSWER_MAX bytes take every answer in one call; keep
//! such a buffer and use it again. A second call with a larger buffer, or a first one with NULL to ask for the length,
//! works the answer out once more. NULL_POINTER, NOT_UTF8 and INTERNAL leave the text empty.

use crate::boundary::{Failure, Page, member, page};
use crate::error::ColdloopError;
use crate::memory::text;
use coldloop::diagnosis::Settings;
use coldloop::evaluate::{Priors, evaluate};
use coldloop::intake::{self, Refusal, Visit};
use coldloop::vehicle::simulate;
use coldloop::{Error, Fault, Picture, Quantity, report};
use core::ffi::c_char;

/// Bytes that hold any answer of a function which writes text, the zero byte included. Only a refusal may be longer, where a
/// key of the readings is very long.
pub const COLDLOOP_ANSWER_MAX: usize = 262_144;

/// Bytes of stack that coldloop_diagnose, coldloop_report, coldloop_page_html, coldloop_plan and coldloop_prove take at most, on a 64-bit machine; a
/// test measures them.
pub const COLDLOOP_STACK_MAX: usize = 65_536;

/// Diagnoses a vehicle from its readings.
///
/// The answer is one JSON object: "verdict", "faults" with their odds and reasons, "expected", "derived", "next_checks",
/// "cautions", "quality"; and "proof", as coldloop_prove gives it, where something was done since.
///
/// Errors: every kind that a readings file can be refused for, and those of the text above.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_diagnose(
    readings: *const c_char,
    answer: *mut c_char,
    capacity: usize,
    length: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let page = Page::new(answer, capacity, length);
    told(readings, page, error, |readings| report::visit_json(&*visit(readings)?))
}

/// The same diagnosis as a page for people, in the units in which the readings were written: what it is, what to do first with
/// its cautions, the readings beside what is normal, why, and what limits the result. "language" in the "settings" of the
/// readings chooses English ("en") or Spanish ("es"), "details": true all figures, limits and cautions in full; a refusal is JSON as above. Errors as coldloop_diagnose.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_report(
    readings: *const c_char,
    report: *mut c_char,
    capacity: usize,
    length: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let page = Page::new(report, capacity, length);
    told(readings, page, error, |readings| {
        report::visit_text(&*visit(readings)?, report::Units::as_written(readings))
    })
}

/// The same as a page to look at: one self-contained HTML document with its drawings as SVG, without script, which is read on a
/// phone and prints on one sheet; a refusal is JSON as above. Errors as coldloop_diagnose.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_page_html(
    readings: *const c_char,
    page: *mut c_char,
    capacity: usize,
    length: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let page = Page::new(page, capacity, length);
    told(readings, page, error, |readings| {
        report::html(&*visit(readings)?, report::Units::as_written(readings))
    })
}

/// One drawing of that page, a coldloop_picture, as an SVG document by itself: the readings in their ranges, the odds, the plan, the
/// cycle, or a curve over time. The text is empty, and the status OK, where the readings have nothing to draw of it; a
/// refusal is JSON as above. Errors as coldloop_diagnose; UNKNOWN_NAME for a number that is no coldloop_picture.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_picture_svg(
    readings: *const c_char,
    picture: u32,
    svg: *mut c_char,
    capacity: usize,
    length: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    page(Page::new(svg, capacity, length), error, || {
        let (readings, picture) = (text(readings)?, member(picture, Picture::from_code)?);
        let drawn = || report::svg(&*visit(&readings)?, picture, report::Units::as_written(&readings));
        Ok(drawn().map(Option::unwrap_or_default).map_err(refused))
    })
}

/// What to do next, three steps deep: the checks worth their cost and the repairs that they lead to, by the readings that
/// coldloop_diagnose takes. Times are those of work, in minutes.
///
/// The answer is one JSON object: "expected_minutes", "without_checks_minutes", "steps", each step with its cautions, its
/// cost and its "branches", one for every result.
///
/// Errors: as coldloop_diagnose.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_plan(
    readings: *const c_char,
    plan: *mut c_char,
    capacity: usize,
    length: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let page = Page::new(plan, capacity, length);
    told(readings, page, error, |readings| {
        let visit = visit(readings)?;
        Ok(report::plan_json(&*visit.plan()?, &visit.case.system))
    })
}

/// What was done to a vehicle, judged: whether it was dry, tight and rightly charged, and whether it cools now, by the
/// readings that coldloop_diagnose takes:
///
///     {"system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
///      "conditions": {"ambient": "20 °C", "altitude": "1600 m"},
///      "evacuation": {"reached": "420 micron", "coldest": "18 °C"},
///      "hold": {"samples": [{"after": "0 min", "pressure": "420 micron"}, {"after": "20 min", "pressure": "450 micron"}]}}
///
/// The answer is one JSON object: "pressure_test", "evacuation", "hold", "charge", "pull_down", "repair", each with its
/// "finding", what that "says" and its figures in plain SI; null for what was not done or cannot be judged. "closing" is the
/// judgement from all of them together, with the "weakest" of them. "refused" tells what cannot be judged, and why: a bad entry refuses
/// only its own table, and is an error where nothing is left to judge.
///
/// Errors: as coldloop_diagnose.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_prove(
    readings: *const c_char,
    proof: *mut c_char,
    capacity: usize,
    length: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let page = Page::new(proof, capacity, length);
    told(readings, page, error, |readings| {
        let visit = visit(readings)?;
        Ok(report::proof_json(&visit.prove()?, visit.settings.language))
    })
}

/// What a vehicle would read: the steady state of the whole system in its conditions, with its faults.
///
/// "system" and "conditions" are those of a readings file; "vehicle" may name the class ("small-car", "car", "large-car",
/// "van", "bus"; a car where it is left out) and "faults" gives each fault its severity, a wrong refrigerant its name or
/// also how much of the charge it is, as "30 % R-22":
///
///     {"vehicle": {"class": "van"},
///      "system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "variable-internal"},
///      "conditions": {"ambient": "30 °C", "altitude": "1600 m"},
///      "faults": {"undercharge": "40 %"}}
///
/// The answer is one JSON object: "readings", "swing", "looks", "states", "figures", "solver", in plain SI.
///
/// Errors: as coldloop_diagnose; NOT_AVAILABLE for a fault that the system cannot have; NO_CONVERGENCE.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_simulate(
    trial: *const c_char,
    answer: *mut c_char,
    capacity: usize,
    length: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let page = Page::new(answer, capacity, length);
    told(trial, page, error, |trial| {
        let trial = intake::trial_from_text(trial)?;
        let simulation = simulate(&trial.vehicle, &trial.conditions, &trial.faults)?;
        Ok(report::simulation_json(&simulation, trial.conditions.surroundings))
    })
}

/// What a program has to know to ask the right questions about a system: the "system" of a readings file, whose other tables
/// are ignored.
///
/// The answer is one JSON object: "faults" that the system can have (what each "says", the "measure" of its severity, its
/// "prior", its "repair" with cost and cautions), "checks" that exist for it (with cost, cautions and the "questions" that
/// they answer) and "observations", the entries of that table of a readings file.
///
/// Errors: as coldloop_diagnose.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_catalogue(
    readings: *const c_char,
    catalogue: *mut c_char,
    capacity: usize,
    length: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let page = Page::new(catalogue, capacity, length);
    told(readings, page, error, |readings| {
        Ok(report::catalogue_json(&intake::system_from_text(readings)?))
    })
}

/// Counts one confirmed case: `counts` is the TOML text of the cases so far (empty for none) and `learned` receives that
/// text with one case more, to be kept and given back as the "counts" of the "settings".
///
/// `readings` are those of the case, of which the system and the observations before the repair count; `cause` is the
/// coldloop_fault that the repair confirmed, or 0 for a cause that is not in the list.
///
/// Errors: as coldloop_diagnose; UNKNOWN_NAME for a number that is neither 0 nor a coldloop_fault.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_record(
    counts: *const c_char,
    readings: *const c_char,
    cause: u32,
    learned: *mut c_char,
    capacity: usize,
    length: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let out = Page::new(learned, capacity, length);
    page(out, error, || {
        let (counts, readings) = (text(counts)?, text(readings)?);
        let cause = match cause {
            0 => None,
            code => Some(member(code, Fault::from_code).map_err(Failure::Library)?),
        };
        Ok(recorded(&counts, &readings, cause).map_err(refused))
    })
}

/// Counts confirmed cases, as coldloop_record does one: `cases` are lines as coldloop_evaluate takes them. A case with several
/// causes is skipped.
///
/// Errors: as coldloop_diagnose, for the first line that cannot be read; nothing is counted then.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_learn(
    counts: *const c_char,
    cases: *const c_char,
    learned: *mut c_char,
    capacity: usize,
    length: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let out = Page::new(learned, capacity, length);
    page(out, error, || {
        let (counts, cases) = (text(counts)?, text(cases)?);
        let learned = intake::counts_from_toml(&counts).and_then(|counts| intake::counts_from_cases(&counts, &cases));
        Ok(learned.map(|counts| intake::counts_to_toml(&counts)).map_err(refused))
    })
}

/// How good the answers are: judges confirmed cases and counts how often the answer was right.
///
/// `cases` has a JSON object on each line: "case" (readings as coldloop_diagnose takes them, as JSON), "truth" (what was found:
/// [{"fault": "undercharge", "severity": 0.3}], the severity where it is known; "no-fault" for a sound vehicle,
/// "none-of-these" for a cause that is not in the list), and where wanted "id", "significant" (false for a fault that
/// nobody would have noticed) and "group" (make, shop, mechanic: cases that are alike).
///
/// `settings` say how to judge, as the JSON of the "settings" of readings, and replace those in the cases; empty
/// for the usual ones. With `priors_told` 1 the prior of each cause is its share of the cases, with 0 the priors are those of the
/// settings.
///
/// The answer is one JSON object: "cases", "refused" (lines that cannot be read or judged), "groups", the figures, each
/// with its "value", its 95 % interval from "low" to "high" (a bootstrap over groups, or over cases where there are none) and
/// the "cases" over which it is taken; "reliability", ten bins; and "refusals", the first dozen. The figures: "first_right",
/// "in_first_three", "sound_led" and "sound_named" (sound vehicles of which a fault leads, or is named), "named_right",
/// "named_wrong", "missed", "not_told" and "list_holds" (significant faults), "sure_right" (odds of 0.8 and more),
/// "log_loss", "calibration_error".
///
/// Errors: as coldloop_diagnose, for the settings; OUT_OF_RANGE for `priors_told` other than 0 and 1; MISSING where the priors are
/// to come from the cases and no case can be read. A line that cannot be read is no error.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_evaluate(
    cases: *const c_char,
    settings: *const c_char,
    priors_told: u32,
    answer: *mut c_char,
    capacity: usize,
    length: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let out = Page::new(answer, capacity, length);
    page(out, error, || {
        let (cases, settings) = (text(cases)?, text(settings)?);
        let priors = match priors_told {
            0 => Priors::Given,
            1 => Priors::Told,
            other => return Err(Error::out_of_range(Quantity::Rows, f64::from(other), 0.0, 1.0).into()),
        };
        Ok(evaluated(&cases, &settings, priors).map_err(refused))
    })
}

fn evaluated(cases: &str, settings: &str, priors: Priors) -> Result<String, Refusal> {
    let settings = match settings.trim().is_empty() {
        true => Settings::default(),
        false => intake::settings_from_json(settings)?,
    };
    Ok(report::evaluation_json(&evaluate(cases, &settings, priors)?))
}

fn recorded(counts: &str, readings: &str, cause: Option<Fault>) -> Result<String, Refusal> {
    let mut counts = intake::counts_from_toml(counts)?;
    let case = visit(readings)?.case;
    counts.record_in(&case.system, cause, &case.observations);
    Ok(intake::counts_to_toml(&counts))
}

fn visit(readings: &str) -> Result<Box<Visit>, Refusal> {
    intake::visit_from_text(readings)
}

/// Runs `body` on a text from C and writes what it tells, or the refusal.
fn told(
    given: *const c_char,
    out: Page,
    error: *mut ColdloopError,
    body: impl FnOnce(&str) -> Result<String, Refusal>,
) -> u32 {
    page(out, error, || Ok(body(&text(given)?).map_err(refused)))
}

pub(crate) fn refused(refusal: Refusal) -> (Error, String) {
    (refusal.error(), report::refusal_json(&refusal))
}

#[cfg(not(miri))]
#[cfg(test)]
mod tests {
    use super::*;
    use crate::refrigerant::coldloop_refrigerant_sources;
    use coldloop::{Compressor, Expansion, Observation, Refrigerant};
    use core::ptr::null_mut;
    use std::ffi::CString;

    /// Digits of the longest number that is written, -2.2250738585072014e-308.
    const DIGITS: usize = 24;

    /// The answer of a function, for which the call gives the buffer.
    fn answered(call: impl Fn(*mut c_char, usize, *mut usize) -> u32) -> String {
        let (mut answer, mut length) = (vec![0_u8; COLDLOOP_ANSWER_MAX], 0);
        assert_eq!(call(answer.as_mut_ptr().cast(), answer.len(), &raw mut length), 0);
        answer.truncate(length);
        String::from_utf8(answer).unwrap()
    }

    /// How long a JSON text would be if every number in it were as long as can be.
    fn at_most(json: &str) -> usize {
        let (mut in_text, mut escaped, mut number, mut length) = (false, false, 0, json.len());
        for letter in json.chars() {
            let of_number = !in_text && matches!(letter, '0'..='9' | '.' | '-' | '+' | 'e');
            // The e of true and false is no number; it makes the bound larger.
            if !of_number && number > 0 {
                length += DIGITS.saturating_sub(number);
            }
            number = if of_number { number + 1 } else { 0 };
            in_text ^= letter == '"' && !escaped;
            escaped = letter == '\\' && !escaped;
        }
        length
    }

    /// Every kind of system with everything read and every question answered with yes, so that every fault has as many
    /// reasons as there can be; then everything else that is told.
    #[test]
    fn no_answer_is_longer_than_is_said() {
        let mut longest = 0;
        let yes: String = Observation::ALL
            .iter()
            .map(|seen| format!("{} = true\n", seen.id()))
            .collect();
        let proof = include_str!("../../../examples/readings/repaired-van.toml");
        let tables = ["[pressure_test]", "[evacuation]", "[hold]", "[charge]", "[[pull_down]]"];
        let done = tables.iter().filter_map(|table| proof.find(table)).min();
        let done = done.map_or("", |at| &proof[at..]);
        for (expansion, compressor) in Expansion::ALL
            .iter()
            .flat_map(|e| Compressor::ALL.map(|c| (e.id(), c.id())))
        {
            let text = format!(
                "[system]\nrefrigerant = 'R-134a'\nexpansion = '{expansion}'\ncompressor = '{compressor}'\n\
                 [conditions]\nambient = '30 °C'\naltitude = '1600 m'\nhumidity = '40 %'\n\
                 [readings]\nlow_side = '70 psig'\nhigh_side = '325 psig'\nvent = '63 °F'\nsuction_line = '70 °F'\n\
                 liquid_line = '95 °F'\ndischarge_line = '190 °F'\n[observations]\n{yes}{done}"
            );
            let text = CString::new(text).unwrap();
            for call in [
                coldloop_diagnose,
                coldloop_report,
                coldloop_page_html,
                coldloop_plan,
                coldloop_prove,
                coldloop_catalogue,
            ] {
                let told = answered(|to, room, length| call(text.as_ptr(), to, room, length, null_mut()));
                longest = longest.max(at_most(&told));
            }
        }
        for refrigerant in Refrigerant::ALL {
            let code = refrigerant.code();
            let told = answered(|to, room, length| coldloop_refrigerant_sources(code, to, room, length, null_mut()));
            longest = longest.max(at_most(&told));
        }
        println!("{longest} bytes at most");
        assert!(
            longest > COLDLOOP_ANSWER_MAX / 3,
            "more than is needed by far: {longest}"
        );
        assert!(longest < COLDLOOP_ANSWER_MAX, "{longest}");
    }
}
