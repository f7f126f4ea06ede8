//! The doors in Rust, and what is given to each.

use crate::draw::Random;
use coldloop::circuit::{Gauge, Measured, Reading, Readings};
use coldloop::diagnosis::{Case, Settings, diagnose, judge_states, log_cases};
use coldloop::intake::{self, LogColumns};
use coldloop::log::{Instruments, Recorder};
use coldloop::units::{Frequency, GaugePressure, RotationalSpeed, Surroundings, kelvins, kelvins_difference};
use coldloop::vehicle::{Conditions, System};
use coldloop::{Compressor, Expansion, Observation, ReadingKind, Reference, Refrigerant, report, saturation};

/// Sound texts, from which hostile ones are made.
const READINGS: [&str; 4] = [
    include_str!("../../../examples/readings/repaired-van.toml"),
    include_str!("../../../examples/readings/low-charge.toml"),
    include_str!("../../../examples/readings/bus-slow-leak.toml"),
    include_str!("../../fuzz/corpus/readings/case.json"),
];
const LOGS: [&str; 3] = [
    include_str!("../../fuzz/corpus/logs/cycling.csv"),
    include_str!("../../fuzz/corpus/logs/steady.csv"),
    include_str!("../../../examples/logs/worn-compressor.csv"),
];

/// A door of the library.
#[derive(Clone, Copy)]
pub(crate) enum Door {
    ReadingsText,
    SessionFile,
    LogFile,
    CaseValues,
    PropertyValues,
}

/// What a door is given.
pub(crate) enum Given {
    Text(String),
    Case(Box<Case>),
    State(Refrigerant, [f64; 3]),
}

impl Given {
    /// Size of a text.
    pub(crate) fn bytes(&self) -> usize {
        match self {
            Self::Text(text) => text.len(),
            Self::Case(_) | Self::State(..) => 0,
        }
    }
}

impl Door {
    pub(crate) const ALL: [Self; 5] = [
        Self::ReadingsText,
        Self::SessionFile,
        Self::LogFile,
        Self::CaseValues,
        Self::PropertyValues,
    ];

    pub(crate) const fn name(self) -> &'static str {
        match self {
            Self::ReadingsText => "Rust, readings file: read, judged, answer and page",
            Self::SessionFile => "Rust, session file: read, answered, undone, stored",
            Self::LogFile => "Rust, log in CSV: recorded and judged",
            Self::CaseValues => "Rust, readings as values: judged",
            Self::PropertyValues => "Rust, numbers: a state from three pairs",
        }
    }

    /// Rough cost of an input relative to the cheapest one; the number of inputs is divided by it.
    pub(crate) const fn relative_cost(self) -> u64 {
        match self {
            Self::PropertyValues => 1,
            Self::ReadingsText | Self::SessionFile | Self::LogFile | Self::CaseValues => 10,
        }
    }

    pub(crate) fn drawn(self, random: &mut Random) -> Given {
        match self {
            Self::ReadingsText | Self::SessionFile => Given::Text(random.text(&READINGS)),
            Self::LogFile => Given::Text(random.text(&LOGS)),
            Self::CaseValues => Given::Case(Box::new(case(random))),
            Self::PropertyValues => {
                let refrigerant = random.pick(&Refrigerant::ALL);
                let numbers = [
                    random.number(150.0, 480.0),
                    random.number(1e3, 1e7),
                    random.number(0.0, 6e5),
                ];
                Given::State(refrigerant, numbers)
            }
        }
    }

    /// Whether there was an answer, and no refusal.
    pub(crate) fn takes(self, given: &Given) -> bool {
        match given {
            Given::Text(text) => match self {
                Self::SessionFile => session(text),
                Self::LogFile => log(text).is_some(),
                Self::ReadingsText | Self::CaseValues | Self::PropertyValues => readings(text),
            },
            Given::Case(case) => diagnose(case, &Settings::default()).is_ok(),
            Given::State(refrigerant, numbers) => states(*refrigerant, *numbers),
        }
    }
}

fn readings(text: &str) -> bool {
    let Ok(visit) = intake::visit_from_text(text) else {
        return false;
    };
    report::visit_json(&*visit).is_ok() && report::html(&*visit, report::Units::Metric).is_ok()
}

fn session(text: &str) -> bool {
    let Ok(mut file) = intake::session_from_text(text) else {
        return false;
    };
    let answered = file.session.answer().is_ok();
    file.session.undo();
    intake::session_to_toml(&file).is_ok() && answered
}

fn log(text: &str) -> Option<()> {
    let mut rows = text.lines().map(|line| line.split(','));
    let columns = LogColumns::from_header(rows.next()?).ok()?;
    let mut recorder = Recorder::new(columns.datum());
    for row in rows {
        recorder.push(&columns.sample(row).ok()?);
    }
    let known = intake::case_from_toml(READINGS[1]).ok()?;
    let summary = recorder.summary();
    let cases: Vec<Case> = log_cases(&known, &summary, &Instruments::default()).collect();
    judge_states(&cases, &Settings::default()).ok().map(drop)
}

fn states(refrigerant: Refrigerant, [t_k, p_pa, h_j_kg]: [f64; 3]) -> bool {
    let (line, by) = (saturation::line_of(refrigerant), Reference::Iir);
    let found = [
        line.state_tp(t_k, p_pa, by).is_ok(),
        line.state_ph(p_pa, h_j_kg, by).is_ok(),
        line.state_hs(h_j_kg, 4.0 * t_k, by).is_ok(),
    ];
    found.contains(&true)
}

/// Readings, conditions and system of any kind.
fn case(random: &mut Random) -> Case {
    let system = System::new(
        random.pick(&[
            Refrigerant::R134a,
            Refrigerant::R1234yf,
            Refrigerant::R744,
            Refrigerant::R152a,
        ]),
        random.pick(&Expansion::ALL),
        random.pick(&Compressor::ALL),
    );
    let air = Surroundings::at_altitude(random.number(0.0, 4_000.0)).unwrap_or(Surroundings::SEA_LEVEL);
    let mut conditions = Conditions::new(kelvins(random.number(283.0, 318.0)), air);
    if random.one_in(2) {
        conditions.engine_speed = Some(RotationalSpeed::from_hz(random.number(8.0, 60.0)));
    }
    let mut case = Case::new(system, conditions, Readings::default());
    for kind in ReadingKind::ALL {
        if random.one_in(2) {
            let pa = GaugePressure::from_pa(random.number(0.0, 2e6));
            let within = random.number(0.1, 5.0);
            let measured: [Measured; 3] = [
                Reading::pressure(pa, Gauge::DIGITAL).into(),
                Reading::within(kelvins(random.number(270.0, 360.0)), kelvins_difference(within)).into(),
                Reading::within(Frequency::from_hz(random.number(0.0, 0.3)), Frequency::from_hz(within)).into(),
            ];
            for measured in measured {
                if let Ok(readings) = case.readings.with(kind, measured) {
                    case.readings = readings;
                }
            }
        }
    }
    for observation in Observation::ALL {
        if random.one_in(6) {
            case.observations = case.observations.with(observation, random.one_in(2));
        }
    }
    case
}

/// A text of about 4 MB, the largest that is read.
pub(crate) struct Large(String, fn(&str) -> bool);

const MOST: usize = 4_000_000;

impl Large {
    pub(crate) fn all() -> Vec<Self> {
        fn filled(start: &str, entry: impl Fn(usize) -> String, end: &str) -> String {
            let mut text = start.to_owned();
            for n in 0.. {
                let entry = entry(n);
                if text.len() + entry.len() + end.len() > MOST {
                    break;
                }
                text += &entry;
            }
            text + end
        }
        let van = "[system]\nrefrigerant = 'R-134a'\nexpansion = 'txv'\ncompressor = 'fixed-clutch'\n";
        let texts = [
            filled("", |n| format!("x{n}=1\n"), ""),
            filled("", |n| format!("[x{n}]\n"), ""),
            filled("", |_| "[[undo]]\n".into(), ""),
            filled("x=[", |_| "[],".into(), "]"),
            filled("x=[", |_| "{},".into(), "]"),
            filled("", |n| format!("a.b.c.d{n}=1\n"), ""),
            filled("{", |n| format!("\"x{n}\":1,"), "\"y\":1}"),
            filled("{", |_| "\"x\":1,".into(), "\"x\":1}"),
            filled("{\"x\":[", |_| "[],".into(), "1]}"),
            filled("{\"x\":[", |_| "0,".into(), "1]}"),
            filled("", |_| "[".into(), ""),
            filled("", |_| "\"".into(), ""),
            filled("{\"a\":\"", |_| "\\\\".into(), ""),
            filled(van, |_| "#".into(), ""),
            filled(van, |_| "\n".into(), ""),
            filled("[meta]\n", |n| format!("x{n}=1\n"), ""),
            filled("[hold]\nsamples=[", |_| "{after='1 s'},".into(), "]"),
            filled("[readings]\nvent='", |_| "9".into(), " K'"),
        ];
        let doors: [fn(&str) -> bool; 3] = [
            |text| intake::visit_from_text(text).is_err(),
            |text| intake::session_from_text(text).is_err(),
            |text| intake::trial_from_text(text).is_err(),
        ];
        let mut all: Vec<Self> = Vec::new();
        for text in texts {
            all.extend(doors.map(|door| Self(text.clone(), door)));
        }
        all.push(Self(filled("time [s]", |_| ",vent [".into(), ""), header));
        all.push(Self(filled("time [s],vent [°C]\n", |_| "9".into(), ""), short_log));
        all.push(Self(filled("", |n| format!("x{n},"), ""), header));
        all
    }

    pub(crate) fn bytes(&self) -> usize {
        self.0.len()
    }

    /// Whether it is refused, as all of them are.
    pub(crate) fn refused(&self) -> bool {
        (self.1)(&self.0)
    }
}

fn header(text: &str) -> bool {
    LogColumns::from_header(text.split(',')).is_err()
}

/// A log whose one row has a cell of four million digits, and that is too short to be judged.
fn short_log(text: &str) -> bool {
    log(text).is_none()
}
