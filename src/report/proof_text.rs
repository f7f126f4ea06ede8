//! What was done to a vehicle and what it shows, as text.

use super::lines::{Lines, uncapital};
use super::page::Scale;
use super::texts::{Named, Sentence, Text};
use super::words::Wording;
use crate::intake::Judgements;
use crate::names::{ChargeFinding, ClosingFinding, ProofKind};
use crate::proof::{HoldJudgement, Leak, Proof, Vacuum};
use crate::units::{GaugePressure, MassFlow, difference_in_kelvins};
use crate::vehicle::Conditions;
use alloc::format;
use alloc::string::{String, ToString};

/// The finding of all proofs together; `None` where the headline, the finding of the repair, says the same.
pub(super) fn closing(all: &Judgements, wording: Wording) -> Option<String> {
    let finding = all.closing.as_ref()?.finding;
    let is_headline = all.repair.is_some() && finding == ClosingFinding::Proven;
    (!is_headline).then(|| finding.sentence(wording.language).into())
}

/// The finding of the weakest proof, where something is not proven.
pub(super) fn weakest(all: &Judgements, wording: Wording) -> Option<String> {
    let closing = all.closing.as_ref()?;
    if all.repair.is_some() && closing.finding == ClosingFinding::Proven {
        return None;
    }
    finding(all, closing.weakest?, wording)
}

/// The finding of one of the proofs.
fn finding(all: &Judgements, kind: ProofKind, wording: Wording) -> Option<String> {
    let language = wording.language;
    let (name, says) = match kind {
        ProofKind::PressureTest => (
            Text::TestPressure,
            all.pressure_test.as_ref()?.finding.sentence(language),
        ),
        ProofKind::Evacuation => (Text::Evacuation, all.evacuation.as_ref()?.finding.sentence(language)),
        ProofKind::Hold => (Text::HeldVacuum, all.hold.as_ref()?.finding.sentence(language)),
        ProofKind::Charge => (Text::ChargeNow, all.charge.as_ref()?.now?.sentence(language)),
        ProofKind::PullDown => (Text::PullDown, all.pull_down.as_ref()?.finding.sentence(language)),
        ProofKind::LeakSearch => (Text::LeakSearch, leak_search(all.leak_found?, wording)),
        ProofKind::Repair => return None, // it is the headline
    };
    Some(format!("{}: {says}", wording.text(name)))
}

/// What dye, a detector or trace gas showed.
fn leak_search(found: bool, wording: Wording) -> &'static str {
    wording.text(if found { Text::LeakFound } else { Text::NoLeakFound })
}

/// Writes one sentence for each proof.
///
/// With details the figures follow; without them, what is below the headline is not repeated.
pub(super) fn write(out: &mut Lines, all: &Judgements, conditions: &Conditions, wording: Wording) {
    let details = wording.details;
    let told = weakest(all, wording).filter(|_| !details);
    let headed = &mut false;
    let mut tell = |out: &mut Lines, name: Text, says: &str| {
        let line = format!("{}: {says}", wording.text(name));
        if told.as_ref() == Some(&line) {
            return;
        }
        if !core::mem::replace(headed, true) {
            out.gap();
            out.heading(wording.text(Text::Proof));
        }
        out.wrapped("  ", &line);
    };
    if let Some(test) = &all.pressure_test {
        tell(out, Text::TestPressure, test.finding.sentence(wording.language));
        if details {
            test_figures(out, test, conditions, wording);
        }
    }
    if let Some(vacuum) = &all.evacuation {
        tell(out, Text::Evacuation, vacuum.finding.sentence(wording.language));
        if details {
            vacuum_figures(out, vacuum, wording);
        }
    }
    if let Some(hold) = &all.hold {
        tell(out, Text::HeldVacuum, hold.finding.sentence(wording.language));
        if details {
            hold_figures(out, hold, wording);
        }
    }
    if let Some(balance) = &all.charge {
        for (name, mass, finding) in [
            (Text::ChargeFound, balance.charge_found, balance.found),
            (Text::ChargeNow, balance.charge_now, balance.now),
        ] {
            if let Some(mass) = mass {
                let says = finding.map_or(wording.text(Text::NoLabel), |finding: ChargeFinding| {
                    finding.sentence(wording.language)
                });
                let mass = mass.si();
                let [grams, spread] =
                    [mass.value, 2.0 * mass.standard_uncertainty].map(|kg| format!("{:.0}", 1e3 * kg));
                let mass = wording.filled(Text::Grams, &[("mass", &grams), ("spread", &spread)]);
                tell(out, name, &format!("{mass}. {says}"));
            }
        }
    }
    if let Some(fall) = &all.pull_down {
        tell(out, Text::PullDown, fall.finding.sentence(wording.language));
    }
    if let Some(found) = all.leak_found {
        tell(out, Text::LeakSearch, leak_search(found, wording));
    }
    // Without details, the page begins with this finding.
    if let Some(proof) = all.repair.as_ref().filter(|_| details) {
        tell(out, Text::AfterRepair, proof.finding.sentence(wording.language));
        repair_figures(out, proof, wording);
    }
    for mistake in &all.refused {
        tell(out, Text::NotJudged, &mistake.to_string());
    }
    // Without a weakest proof it is below the headline already.
    let is_told = weakest(all, wording).is_none();
    if let Some(closing) = all.closing.as_ref().filter(|_| details || !is_told) {
        let mut says = closing.finding.sentence(wording.language).to_string();
        if let Some(weakest) = closing.weakest.filter(|_| details) {
            let proof = uncapital(weakest.sentence(wording.language));
            says = says + " " + &wording.filled(Text::Weakest, &[("proof", &proof)]);
        }
        tell(out, Text::AllTogether, &says);
    }
}

fn vacuum_figures(out: &mut Lines, vacuum: &Vacuum, wording: Wording) {
    let [reached, water] = [vacuum.reached, vacuum.water].map(|pressure| format!("{:.0}", pressure.value.microns()));
    out.wrapped(
        "    ",
        &wording.filled(Text::Reached, &[("reached", &reached), ("water", &water)]),
    );
    if let Some(off) = vacuum.zero_off {
        let [deepest, off] = [vacuum.deepest, GaugePressure::from_pa(-off.pa())]
            .map(|pressure| format!("{:.1}", pressure.inhg_vacuum()));
        out.wrapped(
            "    ",
            &wording.filled(Text::ZeroOff, &[("deepest", &deepest), ("off", &off)]),
        );
    }
}

fn hold_figures(out: &mut Lines, hold: &HoldJudgement, wording: Wording) {
    let rise = format!("{:+.0}", hold.rise.value.microns());
    let spread = format!("{:.0}", 2.0 * hold.rise.standard_uncertainty.microns());
    let minutes = format!("{:.0}", hold.held.minutes());
    let words = [("rise", rise.as_str()), ("spread", &spread), ("minutes", &minutes)];
    let mut line = wording.filled(Text::Rise, &words);
    if let Some(late) = hold.late {
        let rise = format!("{:+.1}", late.value.microns_per_minute());
        let spread = format!("{:.1}", 2.0 * late.standard_uncertainty.microns_per_minute());
        line = line + ", " + &wording.filled(Text::LateRise, &[("rise", &rise), ("spread", &spread)]);
    }
    out.wrapped("    ", &line);
}

/// The final pressure of a tight circuit, the loss in the refrigerant of the vehicle, and the least loss that would show.
fn test_figures(out: &mut Lines, test: &Leak, conditions: &Conditions, wording: Wording) {
    let air_pa = conditions.surroundings.pressure().pa();
    let tight = wording.with_unit(Scale::PaGauge, test.tight_end.pa() - air_pa);
    out.wrapped("    ", &wording.filled(Text::TightEnd, &[("value", &tight)]));
    let ends = |text: Text, low: f64, high: f64| {
        let [low, high] = [low, high].map(two_digits);
        wording.filled(text, &[("low", &low), ("high", &high)])
    };
    let grams_a_year = |text: Text, (low, high): (MassFlow, MassFlow)| ends(text, low.g_per_year(), high.g_per_year());
    if let Some(loss) = test.refrigerant {
        let mut line = grams_a_year(Text::Loses, loss);
        if let Some((low, high)) = test.empty {
            line = line + "; " + &ends(Text::EmptyIn, 12.0 * low.years(), 12.0 * high.years());
        }
        out.wrapped("    ", &line);
    }
    let mut line = match (test.least_seen_refrigerant, test.least_seen) {
        (Some(least), _) => grams_a_year(Text::LeastSeenYear, least),
        (None, Some(least)) => {
            let value = format!("{:.2}", 3.6e6 * least.kg_s());
            wording.filled(Text::LeastSeenHour, &[("value", &value)])
        }
        (None, None) => return,
    };
    for (needed, text) in [
        (test.needed, Text::HoldForAllowed),
        (test.needed_for_a_year, Text::HoldForYear),
    ] {
        if let Some(needed) = needed {
            let hours = two_digits(needed.hours());
            line = line + "; " + &wording.filled(text, &[("hours", &hours)]);
        }
    }
    out.wrapped("    ", &line);
}

fn repair_figures(out: &mut Lines, proof: &Proof, wording: Wording) {
    let words = [
        ("odds", wording.per_cent(proof.sound)),
        ("fault", proof.fault.name(wording.language).into()),
        ("still", wording.per_cent(proof.same_fault)),
    ];
    let words = words.each_ref().map(|(name, word)| (*name, word.as_str()));
    out.wrapped("    ", &wording.filled(Text::NowNormal, &words));
    if let Some(gained_k) = proof.vent_gained.map(difference_in_kelvins) {
        let value = wording.with_unit(Scale::Difference, libm::fabs(gained_k));
        let text = match gained_k >= 0.0 {
            true => Text::VentColder,
            false => Text::VentWarmer,
        };
        out.wrapped("    ", &wording.filled(text, &[("value", &value)]));
    }
}

/// A number to two significant digits; below one, to two decimals.
fn two_digits(x: f64) -> String {
    match x {
        x if x < 1.0 => format!("{x:.2}"),
        x if x < 10.0 => format!("{x:.1}"),
        x if x < 100.0 => format!("{x:.0}"),
        x => {
            let step = libm::pow(10.0, libm::floor(libm::log10(x)) - 1.0);
            format!("{:.0}", step * libm::round(x / step))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// What a leak loses is known within a factor: further digits would promise more.
    #[test]
    fn a_loss_has_two_digits() {
        let told = [0.034, 3.44, 34.4, 344.0, 3_460.0].map(two_digits);
        assert_eq!(told, ["0.03", "3.4", "34", "340", "3500"]);
    }
}
