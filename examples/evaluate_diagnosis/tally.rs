//! Counts over the answers: how often they are right, and how far their odds are off.

use crate::cases::Judged;
use crate::draws::KINDS;
use coldloop::circuit::Reading;
use coldloop::diagnosis::Diagnosis;
use coldloop::units::{Pressure, in_kelvins};
use coldloop::{Fault, VerdictKind};

/// What an answer says of the faults.
pub(crate) struct Standing {
    /// Faults with their probabilities, the likeliest first.
    pub(crate) ranked: Vec<(Fault, f64)>,
    pub(crate) kind: VerdictKind,
    pub(crate) listed: Vec<Fault>,
}

impl Standing {
    pub(crate) fn of(answer: Option<&Diagnosis>) -> Self {
        let Some(answer) = answer else {
            return Self {
                ranked: Vec::new(),
                kind: VerdictKind::NotEnoughEvidence,
                listed: Vec::new(),
            };
        };
        Self {
            ranked: answer.faults.iter().map(|f| (f.fault, f.probability)).collect(),
            kind: answer.verdict.kind,
            listed: answer.verdict.faults.to_vec(),
        }
    }

    /// A chart of pressures by ambient with fixed limits: high side by US Army TM 5-3805-291-23-1, table 1, low side 25
    /// to 45 psig; which fault their combination points to is common practice, no source.
    pub(crate) fn chart(case: &Judged) -> Self {
        let psig = |reading: Option<Reading<Pressure>>| {
            let place = case.conditions.surroundings;
            reading.map_or(f64::NAN, |r| r.value.absolute(place).gauge(place).psig())
        };
        let readings = &case.readings[0];
        let (low, high) = (psig(readings.low_side), psig(readings.high_side));
        let ambient_f = (in_kelvins(case.conditions.ambient) - 273.15) * 1.8 + 32.0;
        let along = ((ambient_f - 70.0) / 40.0).clamp(-0.2, 1.0);
        let (least, most) = (120.0 + 90.0 * along, 190.0 + 110.0 * along);
        let valve = case.kind < KINDS / 2;
        let side = |value: f64, least: f64, most: f64| i8::from(value > most) - i8::from(value < least);
        let named = match (side(low, 25.0, 45.0), side(high, least, most)) {
            (0, 0) => Fault::NoFault,
            (-1, -1) => Fault::Undercharge,
            (1, -1) => Fault::WornCompressor,
            (1, 1) => Fault::Overcharge,
            (0, 1) => Fault::CondenserAirflowLoss,
            (-1, 1) => Fault::HighSideRestriction,
            (-1, _) if valve => Fault::ExpansionValveStuckClosed,
            (-1, _) => Fault::OrificeRestricted,
            (1, _) if valve => Fault::ExpansionValveStuckOpen,
            _ => Fault::Undercharge,
        };
        let sound = named == Fault::NoFault;
        Self {
            ranked: vec![(named, 1.0)],
            kind: if sound {
                VerdictKind::Healthy
            } else {
                VerdictKind::NamedFault
            },
            listed: if sound { Vec::new() } else { vec![named] },
        }
    }
}

/// Sums of weights.
#[derive(Default)]
pub(crate) struct Tally {
    sound: f64,
    alarms: f64,
    significant: f64,
    named: f64,
    missed: f64,
    misnamed: f64,
    list_with: f64,
    list_without: f64,
    no_answer: f64,
    first: f64,
    three: f64,
    all: f64,
    loss: f64,
    /// Weight, probability said, weight right.
    bins: [[f64; 3]; 10],
}

impl Tally {
    pub(crate) fn add(&mut self, case: &Judged, weight: f64, said: Standing) {
        let fault = case.draw.fault.fault;
        let (first, p) = said.ranked.first().map_or((None, 0.0), |(first, p)| (Some(*first), *p));
        self.all += weight;
        let given = said.ranked.iter().find(|(f, _)| *f == fault).map_or(0.0, |(_, p)| *p);
        self.loss -= weight * given.max(1e-6).ln();
        let bin = &mut self.bins[((10.0 * p) as usize).min(9)];
        bin[0] += weight;
        bin[1] += weight * p;
        bin[2] += weight * f64::from(u8::from(first == Some(fault)));
        let listed = said.listed.contains(&fault);
        if fault == Fault::NoFault {
            self.sound += weight;
            let alarm = match said.kind {
                VerdictKind::NamedFault => true,
                VerdictKind::CannotTell => !listed,
                VerdictKind::Healthy | VerdictKind::NothingFits | VerdictKind::NotEnoughEvidence => false,
                _ => unreachable!("a new member of the vocabulary"),
            };
            self.alarms += weight * f64::from(u8::from(alarm));
        } else if case.significant {
            self.significant += weight;
            let slot = match said.kind {
                VerdictKind::NamedFault if listed => &mut self.named,
                VerdictKind::NamedFault => &mut self.misnamed,
                VerdictKind::CannotTell if listed => &mut self.list_with,
                VerdictKind::CannotTell => &mut self.list_without,
                VerdictKind::Healthy => &mut self.missed,
                VerdictKind::NothingFits | VerdictKind::NotEnoughEvidence => &mut self.no_answer,
                _ => unreachable!("a new member of the vocabulary"),
            };
            *slot += weight;
            self.first += weight * f64::from(u8::from(first == Some(fault)));
            let three = said.ranked.iter().take(3).any(|(f, _)| *f == fault);
            self.three += weight * f64::from(u8::from(three));
        }
    }

    pub(crate) fn print(&self, name: &str) {
        let percent = |part: f64, whole: f64| 100.0 * part / whole.max(1e-9);
        let of = |part: f64| percent(part, self.significant);
        let error: f64 = self.bins.iter().map(|[_, said, right]| (said - right).abs()).sum();
        println!(
            "  {name:<26} {:>6.1} {:>6.1} {:>6.1} {:>6.1} {:>7.1} {:>7.1} {:>7.1} {:>6.1} {:>6.1} {:>6.3} {:>6.3}",
            percent(self.alarms, self.sound),
            of(self.named),
            of(self.missed),
            of(self.misnamed),
            of(self.list_with),
            of(self.list_without),
            of(self.no_answer),
            of(self.first),
            of(self.three),
            self.loss / self.all,
            error / self.all
        );
    }
}
