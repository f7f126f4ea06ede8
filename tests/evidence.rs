//! Weighing, pressure test, evacuation and leak search count in the diagnosis and in the proof of the repair, so that the answer never
//! contradicts them.

#![allow(clippy::unwrap_used)] // tests fail by panicking

use coldloop::intake::{self, Judgements, Visit};
use coldloop::{
    ChargeFinding, ClosingFinding, Fault, HoldFinding, LeakFinding, Observation, ProofKind, PullDownFinding,
    RepairFinding, VerdictKind,
};

/// A sound van at 30 °C: low side, high side, vent.
const SOUND: [&str; 3] = ["215 kPa gauge", "1450 kPa gauge", "7 °C"];
/// What it reads on a day 2 K cooler.
const SOUND_AFTER: [&str; 3] = ["210 kPa gauge", "1350 kPa gauge", "7 °C"];
/// Short of refrigerant, as far as three readings tell.
const SHORT: [&str; 3] = ["120 kPa gauge", "1100 kPa gauge", "16 °C"];

/// A test pressure of two hours that stayed, and a vacuum that was held.
const TIGHT: &str = r#"
[pressure_test]
gas = "nitrogen"
start = "10 bar gauge"
start_temperature = "24 °C"
end = "10 bar gauge"
end_temperature = "24 °C"
held = "120 min"
repeatability = "1 kPa"
volume = "2.4 L"
allowed = "2 kg/year"
[evacuation]
reached = "420 micron"
[hold]
samples = [
  { after = "0 min", pressure = "420 micron" },
  { after = "5 min", pressure = "424 micron" },
  { after = "10 min", pressure = "427 micron" },
  { after = "20 min", pressure = "429 micron" },
]
[pull_down]
samples = [
  { after = "1 min", vent = "22 °C" },
  { after = "3 min", vent = "13 °C" },
  { after = "6 min", vent = "9 °C" },
  { after = "12 min", vent = "7 °C" },
]
"#;
/// The charge of the label weighed in.
const FILLED: &str = "[charge]\ntolerance = \"50 g\"\ncharged = \"650 g\"\n";

/// A van of the garage with 650 g of R-134a, and what was done to it.
fn came_in([low_side, high_side, vent]: [&str; 3], done: &str) -> String {
    format!(
        r#"
[system]
refrigerant = "R-134a"
expansion = "txv"
compressor = "fixed-clutch"
nominal_charge = "650 g"
[conditions]
ambient = "30 °C"
humidity = "40 %"
altitude = "1600 m"
engine_speed = "1500 rpm"
air_source = "recirculated"
running = "12 min"
[readings]
low_side = "{low_side}"
high_side = "{high_side}"
vent = "{vent}"
{done}"#
    )
}

/// The same with readings after the repair.
fn repaired(before: [&str; 3], done: &str, [low_side, high_side, vent]: [&str; 3], seen: &str) -> Judgements {
    let text = came_in(before, done);
    let after = format!(
        r#"
[after.conditions]
ambient = "28 °C"
humidity = "40 %"
altitude = "1600 m"
engine_speed = "1500 rpm"
air_source = "recirculated"
running = "12 min"
[after.readings]
low_side = "{low_side}"
high_side = "{high_side}"
vent = "{vent}"
[after.observations]
{seen}
"#
    );
    visit(&(text + &after)).prove().unwrap()
}

fn visit(text: &str) -> Box<Visit> {
    intake::visit_from_toml(text).unwrap()
}

fn finding(all: &Judgements) -> RepairFinding {
    all.repair.as_ref().unwrap().finding
}

/// With 300 of 650 g recovered undercharge is part of the verdict and has a probability above 0.7, whatever the readings are.
#[test]
fn half_a_charge_recovered_is_an_undercharge() {
    let mut raised = 0;
    for (read, unweighed) in [
        (["150 kPa gauge", "1150 kPa gauge", "12 °C"], 0.3..0.8),
        (SOUND, 0.1..0.4),
        (["260 kPa gauge", "1100 kPa gauge", "14 °C"], 0.1..0.4),
        (["300 kPa gauge", "1900 kPa gauge", "14 °C"], 0.02..0.2),
        (["320 kPa gauge", "950 kPa gauge", "18 °C"], 0.05..0.3),
        (["400 kPa gauge", "800 kPa gauge", "22 °C"], 0.01..0.1),
        (["200 kPa gauge", "2100 kPa gauge", "12 °C"], 0.03..0.3),
    ] {
        let before = visit(&came_in(read, "")).diagnose().unwrap();
        let weighed = visit(&came_in(read, "[charge]\nrecovered = \"300 g\"\n"));
        let answer = weighed.diagnose().unwrap();
        let odds = |of: &coldloop::diagnosis::Diagnosis| of.probability_of(&[Fault::Undercharge]);
        assert!(unweighed.contains(&odds(&before)), "{read:?}: {}", odds(&before));
        assert!(odds(&answer) > 0.7, "{read:?}: {}", odds(&answer));
        assert!(answer.verdict.faults.contains(&Fault::Undercharge), "{read:?}");
        assert_eq!(
            weighed.prove().unwrap().charge.unwrap().found,
            Some(ChargeFinding::Under)
        );
        raised += usize::from(odds(&answer) > 0.85);
    }
    assert!(raised >= 6, "{raised}");
}

/// The mass that was in the circuit is near the label, 657 ± 40 g: less than the tenth is missing from which on it is a fault.
#[test]
fn a_charge_near_the_label_speaks_against_an_undercharge() {
    let odds = |done: &str| {
        let answer = visit(&came_in(SHORT, done)).diagnose().unwrap();
        answer.probability_of(&[Fault::Undercharge])
    };
    let (unweighed, weighed) = (odds(""), odds("[charge]\nrecovered = \"640 g\"\n"));
    assert!(unweighed > 0.7 && weighed < 0.4, "{unweighed} {weighed}");
    // With 590 g recovered and the rest left behind a tenth may be missing or not, so that the question stays open.
    let open = visit(&came_in(SHORT, "[charge]\nrecovered = \"590 g\"\n"));
    let answer = |question| open.case.observations.answer(question);
    assert_eq!(answer(Observation::RecoveredBelowLabel), None);
    assert_eq!(answer(Observation::RecoveredAboveLabel), Some(false));
    assert!(odds("[charge]\nrecovered = \"590 g\"\n") >= unweighed);
}

/// A charge that is surely off the label is never told together with "sound".
#[test]
fn a_charge_surely_off_the_label_is_never_called_sound() {
    let sound = visit(&came_in(SOUND, "")).diagnose().unwrap();
    assert_eq!(sound.verdict.kind, VerdictKind::Healthy);
    for recovered in ["500 g", "300 g", "820 g"] {
        let weighed = visit(&came_in(SOUND, &format!("[charge]\nrecovered = \"{recovered}\"\n")));
        let kind = weighed.diagnose().unwrap().verdict.kind;
        assert_ne!(kind, VerdictKind::Healthy, "{recovered}");
    }
    // Nor after the repair, whatever was wrong before.
    for (charged, is) in [("500 g", ChargeFinding::Under), ("820 g", ChargeFinding::Over)] {
        for before in [SOUND, SHORT] {
            let done = format!("[charge]\ncharged = \"{charged}\"\n");
            let all = repaired(before, &done, SOUND_AFTER, "");
            assert_eq!(all.charge.unwrap().now, Some(is));
            let told = finding(&all);
            assert!(
                !matches!(told, RepairFinding::Proven | RepairFinding::SoundBefore),
                "{charged}: {told}"
            );
            let closing = all.closing.unwrap();
            assert_eq!(
                (closing.finding, closing.weakest),
                (ClosingFinding::Fails, Some(ProofKind::Charge))
            );
        }
    }
}

/// A leak, whether by a vacuum that rises or found otherwise, is never told together with "proven".
#[test]
fn a_leak_that_was_found_leaves_no_repair_proven() {
    let done = format!("{TIGHT}{FILLED}");
    let all = repaired(SHORT, &done, SOUND_AFTER, "");
    assert_eq!(finding(&all), RepairFinding::Proven);
    let rises = done.replace("424 micron", "2600 micron");
    let rises = rises
        .replace("427 micron", "4750 micron")
        .replace("429 micron", "9000 micron");
    let leaks = repaired(SHORT, &rises, SOUND_AFTER, "");
    assert_eq!(leaks.hold.unwrap().finding, HoldFinding::Leak);
    let lost = done.replace("end = \"10 bar gauge\"", "end = \"8 bar gauge\"");
    let loses = repaired(SHORT, &lost, SOUND_AFTER, "");
    assert_eq!(loses.pressure_test.as_ref().unwrap().finding, LeakFinding::Leaks);
    let warm = done.replace("vent = \"9 °C\"", "vent = \"20 °C\"");
    let stalls = repaired(
        SHORT,
        &warm.replace("vent = \"7 °C\"", "vent = \"20 °C\""),
        SOUND_AFTER,
        "",
    );
    assert_ne!(stalls.pull_down.unwrap().finding, PullDownFinding::Reached);
    let searched = |seen: &str| (repaired(SHORT, &done, SOUND_AFTER, seen), ProofKind::LeakSearch);
    for (all, weakest) in [
        (leaks, ProofKind::Hold),
        (loses, ProofKind::PressureTest),
        (stalls, ProofKind::PullDown),
        searched("dye_glows = true"),
        searched("detector_alarms = true"),
        searched("trace_gas_escapes = true\ndetector_alarms = false"),
    ] {
        let closing = all.closing.unwrap();
        assert_eq!(
            (closing.finding, closing.weakest),
            (ClosingFinding::Fails, Some(weakest))
        );
        assert_ne!(finding(&all), RepairFinding::Proven, "{weakest}");
    }
    // A search that finds nothing leaves it proven.
    let (all, _) = searched("trace_gas_escapes = false");
    assert_eq!((finding(&all), all.leak_found), (RepairFinding::Proven, Some(false)));
}

/// Three readings leave a leak repair at "better"; the label's charge weighed in, a tight test and a held vacuum prove it. They hardly
/// raise the odds of another repair.
#[test]
fn weighed_and_tight_proves_a_leak_repair_and_no_compressor() {
    let set_right = |before: [&str; 3], done: &str| {
        let all = repaired(before, done, SOUND_AFTER, "");
        let repair = all.repair.unwrap();
        (repair.finding, repair.fault, repair.set_right)
    };
    let (alone, fault, odds) = set_right(SHORT, "");
    assert_eq!((alone, fault), (RepairFinding::Better, Fault::Undercharge));
    let (lifted, _, all) = set_right(SHORT, &format!("{TIGHT}{FILLED}"));
    assert_eq!(lifted, RepairFinding::Proven);
    let (_, _, tight) = set_right(SHORT, TIGHT);
    let (_, _, filled) = set_right(SHORT, FILLED);
    assert!(
        odds + 0.05 < tight && odds + 0.1 < filled && filled < all && tight < all,
        "{odds} {tight} {filled} {all}"
    );
    let lift = all - odds;
    // A compressor that no longer pumps, by both pressures, and whose charge was as the label says: less than a quarter of that.
    let worn = ["400 kPa gauge", "800 kPa gauge", "22 °C"];
    let right = "[charge]\nrecovered = \"640 g\"\n";
    let (_, fault, odds) = set_right(worn, right);
    assert_eq!(fault, Fault::WornCompressor);
    let (_, _, all) = set_right(worn, &format!("{TIGHT}{right}charged = \"650 g\"\n"));
    assert!(all - odds < 0.25 * lift, "{odds} {all} {lift}");
}

/// A leak raises the odds of an undercharge before and after; that none is found after says nothing of before.
#[test]
fn a_leak_test_counts_at_the_time_that_it_tells_about() {
    let lost = TIGHT.replace("end = \"10 bar gauge\"", "end = \"8 bar gauge\"");
    let of = |done: &str| {
        let visit = visit(&came_in(SHORT, done));
        let held = visit.case.observations.answer(Observation::TestPressureHolds);
        (held, visit.diagnose().unwrap().probability_of(&[Fault::Undercharge]))
    };
    let (unknown, leaks, tight) = (of(""), of(&lost), of(TIGHT));
    assert_eq!((unknown.0, leaks.0, tight.0), (None, Some(false), None));
    assert!(leaks.1 > unknown.1 && tight.1 == unknown.1);
    // Each of them can also be given by hand, as any other answer.
    for (question, yes) in [
        ("dye_glows", 1.0),
        ("detector_alarms", 1.0),
        ("trace_gas_escapes", 1.0),
        ("test_pressure_holds", -1.0),
        ("vacuum_holds", -1.0),
    ] {
        let [no, told] = ["false", "true"].map(|answer| of(&format!("[observations]\n{question} = {answer}\n")).1);
        assert!(
            yes * (told - unknown.1) > 0.0 && yes * (unknown.1 - no) > 0.0,
            "{question}"
        );
    }
}
