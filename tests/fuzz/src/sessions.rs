//! Any text as a stored session, and any steps after it: what is refused changes nothing, what is undone leads back to the same bits,
//! and what is stored is read again to the same bits.

use coldloop::circuit::{Gauge, Measured, Reading, Readings};
use coldloop::intake::{self, Refusal, SessionFile};
use coldloop::session::{Done, Session, Undone};
use coldloop::units::{AbsolutePressure, Frequency, GaugePressure, Surroundings, kelvins, kelvins_difference};
use coldloop::{Check, Error, Fault, Observation, ReadingKind, ResultKind};

/// Between the text of the session and the steps after it.
const APART: u8 = 0x1f;

/// Panics where a session breaks a promise. The steps follow the text, four bytes each.
pub fn holds(input: &[u8]) {
    let end = input.iter().position(|byte| *byte == APART).unwrap_or(input.len());
    let (text, steps) = (&input[..end], input.get(end + 1..).unwrap_or_default());
    let Ok(text) = core::str::from_utf8(text) else {
        return;
    };
    let mut file = match intake::session_from_text(text) {
        Ok(file) => file,
        Err(refusal) => return refused(&refusal),
    };
    stored(&file);
    for step in steps.chunks_exact(4).take(48) {
        let [kind, code, low, high] = *step else { continue };
        stepped(&mut file.session, [kind, code, low, high]);
    }
    file.set_meta("note", text);
    stored(&file);
}

/// One step, which is refused, or undone and done again.
fn stepped(session: &mut Session, step: [u8; 4]) {
    let before = session.clone();
    let Some(done) = act(session, step) else { return };
    if done.is_err() {
        assert_eq!(*session, before, "a refusal changes nothing");
        return;
    }
    let after = session.clone();
    assert!(matches!(session.undo(), Undone::Step(_)));
    // A step that was forgotten for a new one does not come back.
    if before.undoable() < Session::UNDOABLE {
        assert_eq!(*session, before);
    } else {
        assert_eq!((session.case(), session.settings()), (before.case(), before.settings()));
        assert!(session.done().eq(before.done().skip(1)));
    }
    *session = after;
}

/// What the bytes say; `None` for what is no step.
fn act(session: &mut Session, [kind, code, low, high]: [u8; 4]) -> Option<Result<(), Error>> {
    let pick = usize::from(code);
    let fault = Fault::ALL[pick % Fault::ALL.len()];
    let observation = |pick: usize| Observation::ALL[pick % Observation::ALL.len()];
    let measured = measured(kind, low, high);
    let reading = ReadingKind::ALL[pick % ReadingKind::ALL.len()];
    Some(match kind % 10 {
        0..=2 => session.add_reading(reading, measured),
        3 => session.add_observation(observation(pick), low % 2 == 0),
        4 => {
            let question = (high != 0).then(|| observation(usize::from(high)));
            let result = ResultKind::ALL[usize::from(low) % ResultKind::ALL.len()];
            session.add_outcome(Check::ALL[pick % Check::ALL.len()], result, question)
        }
        5 => session.add_repair(fault),
        6 => session.add_vain_repair(fault),
        7 => {
            let readings = Readings::default().with(reading, measured).ok()?;
            session.add_log(&readings, &session.case().observations)
        }
        8 => {
            let mut conditions = session.case().conditions;
            conditions.ambient = kelvins(figure(kind, low, high, 400.0));
            conditions.surroundings = Surroundings::at_altitude(40.0 * f64::from(code)).ok()?;
            session.set_conditions(conditions)
        }
        _ => {
            let steps: Vec<Done> = session.done().collect();
            let told = session.answer();
            assert_eq!(session.done().collect::<Vec<_>>(), steps, "a question is no step");
            if let (Ok(told), Ok(plan)) = (told, session.plan()) {
                assert_eq!(told.next_step, plan.steps.first().map(|step| step.action));
                // Asked again, it holds the step that it told.
                let again = session.answer().map(|again| again.next_step);
                assert_eq!(again, Ok(told.next_step));
            }
            return None;
        }
    })
}

/// Any bits, or a share of what is sensible.
fn figure(kind: u8, low: u8, high: u8, sensible: f64) -> f64 {
    let bits = u16::from_le_bytes([low, high]);
    match kind {
        200.. => f64::from_bits(u64::from(bits) << 48),
        _ => sensible * f64::from(bits) / f64::from(u16::MAX),
    }
}

fn measured(kind: u8, low: u8, high: u8) -> Measured {
    let with = |sensible| figure(kind, low, high, sensible);
    match kind / 10 % 4 {
        0 => Reading::pressure(GaugePressure::from_pa(with(2e6)), Gauge::DIGITAL).into(),
        1 => Reading::pressure(AbsolutePressure::from_pa(with(2e6)), Gauge::DIGITAL).into(),
        2 => Reading::within(kelvins(with(400.0)), kelvins_difference(1.0)).into(),
        _ => Reading::within(Frequency::from_hz(with(0.3)), Frequency::from_hz(0.01)).into(),
    }
}

/// It is stored and read again, with the same bits in all that it answers and in all that can be undone.
fn stored(file: &SessionFile) {
    let (Ok(toml), Ok(json)) = (intake::session_to_toml(file), intake::session_to_json(file)) else {
        unreachable!("what came from a file can be written");
    };
    for (text, again) in [
        (&toml, intake::session_from_toml(&toml)),
        (&json, intake::session_from_json(&json)),
    ] {
        let mut again = again.unwrap_or_else(|refusal| panic!("{refusal}\n{text}"));
        assert_eq!(again.as_ref(), file, "{text}");
        assert_eq!(intake::session_to_toml(&again).as_ref(), Ok(&toml));
        let mut session = file.session.clone();
        assert_eq!(
            format!("{:?}", again.session.answer()),
            format!("{:?}", session.answer()),
            "{text}"
        );
        while let Undone::Step(done) = session.undo() {
            assert_eq!(again.session.undo(), Undone::Step(done));
            assert_eq!(again.session, session, "{text}");
        }
        assert_eq!(again.session.undo(), session.undo());
    }
    if let Err(refusal) = file.visit() {
        refused(&refusal);
    }
}

/// A refusal names what is wrong.
fn refused(refusal: &Refusal) {
    let told = refusal.to_string();
    assert!(!told.is_empty() && refusal.mistakes().count() <= 13, "{told}");
}
