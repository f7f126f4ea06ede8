//! The answer as text that a technician reads in half a minute.

use super::page::{PageReading, Scale};
use super::plan;
use super::proof;
use super::rows::rows;
use super::units::Units;
use super::words::{self, feature_name, per_cent, result, says, severity, spoken, strength};
use crate::circuit::Estimate;
use crate::diagnosis::{Case, Contribution, Diagnosis, Plan, RankedCheck, Reasons, TwoFaults};
use crate::intake::Judgements;
use crate::names::{Caution, Fault, QualityNote, Standing, VerdictKind};
use crate::numerics::put_in_order;
use crate::saturation::pseudo_critical;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::fmt::{self, Write};

/// From these odds on a sound system needs no word about slight faults, and two faults at once are the verdict.
const LIKELIER_THAN_NOT: f64 = 0.5;

/// The answer as text: what was measured against what was expected, derived figures, verdict with odds and reasons,
/// next check, cautions.
///
/// ```
/// use coldloop::{diagnosis::{Settings, judge}, intake, report};
/// let file = include_str!("../../examples/readings/low-charge.toml");
/// let case = intake::case_from_toml(file)?;
/// let settings = Settings::default();
/// let judgement = judge(&case, &settings)?;
/// let units = report::Units::as_written(file);
/// let text = report::text(&case, &judgement.diagnosis(&settings)?, &judgement.reasons(&settings), units);
/// assert!(text.contains("undercharge"));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn text(case: &Case, diagnosis: &Diagnosis, reasons: &Reasons<'_>, units: Units) -> String {
    Report {
        case,
        diagnosis,
        reasons,
        units,
        plan: None,
        proof: None,
    }
    .text()
}

pub(super) struct Report<'a> {
    pub(super) case: &'a Case,
    pub(super) diagnosis: &'a Diagnosis,
    pub(super) reasons: &'a Reasons<'a>,
    pub(super) units: Units,
    /// Stands in the place of the next checks.
    pub(super) plan: Option<&'a Plan>,
    pub(super) proof: Option<&'a Judgements>,
}

impl Report<'_> {
    pub(super) fn text(&self) -> String {
        let mut out = String::new();
        // Writing into a String does not fail.
        let _ = self.write(&mut out);
        out
    }

    fn write(&self, out: &mut String) -> fmt::Result {
        self.stop(out)?;
        self.heading(out)?;
        self.readings(out)?;
        self.figures(out)?;
        self.verdict(out)?;
        self.why(out)?;
        match self.plan {
            Some(plan) => plan::write(out, plan, &self.case.system)?,
            None => self.checks(out)?,
        }
        if let Some(proof) = self.proof {
            proof::write(out, proof, self.case, self.units)?;
        }
        let to_prove = self.proof.is_none_or(|proof| proof.repair.is_none());
        if self.plan.is_some() && to_prove {
            let [first, second] = proof::STRONG;
            writeln!(out, "\nAFTER THE REPAIR\n  {first}\n  {second}")?;
        }
        self.notes(out)
    }

    /// Why the compressor must stand still, before all else.
    fn stop(&self, out: &mut String) -> fmt::Result {
        let Some(stop) = &self.diagnosis.stop else {
            return Ok(());
        };
        writeln!(out, "{}", stop.reason.description())?;
        if let Some(high) = &stop.high_side {
            let [read, limit] = [high.read_pa, high.stop_pa].map(|pa| self.units.with_unit(Scale::PaGauge, pa));
            let of = if high.of_vehicle {
                "95 % of the vehicle's cut-out"
            } else {
                "the limit for this refrigerant"
            };
            writeln!(out, "  High side {read}; {of} is {limit}.")?;
        }
        writeln!(out)
    }

    fn heading(&self, out: &mut String) -> fmt::Result {
        let Case { system, conditions, .. } = self.case;
        let ambient = self
            .units
            .with_unit(Scale::Kelvin, crate::units::in_kelvins(conditions.ambient));
        write!(
            out,
            "{}, {}, {} compressor; ambient {ambient}",
            system.refrigerant,
            spoken(system.expansion.id()),
            spoken(system.compressor.id())
        )?;
        if let Some(humidity) = conditions.relative_humidity {
            write!(out, ", {:.0} % humidity", 100.0 * humidity)?;
        }
        let air_pa = conditions.surroundings.pressure().pa();
        writeln!(out, ", air {:.1} kPa", air_pa / 1e3)
    }

    fn readings(&self, out: &mut String) -> fmt::Result {
        let rows = rows(self.case, self.diagnosis);
        if rows.is_empty() {
            return Ok(());
        }
        writeln!(out, "\n{:24}{:>14}   {:>24}", "", "measured", "a sound system here")?;
        for row in &rows {
            self.reading(out, row)?;
        }
        match self.diagnosis.basis {
            Some(basis) => writeln!(out, "  Bands: {}", basis.description()),
            None => Ok(()),
        }
    }

    fn reading(&self, out: &mut String, row: &PageReading) -> fmt::Result {
        let value = |si| self.units.value(row.scale, si);
        let measured = row.measured.map_or("-".into(), value);
        let band = format!(
            "{} to {}, usually {}",
            value(row.band_95.0),
            value(row.band_95.1),
            value(row.median)
        );
        let standing = row.standing.map_or("", Standing::id);
        let name = format!("{}, {}", spoken(row.feature.id()), self.units.unit(row.scale));
        let line = format!("{name:30}{measured:>8}   {band:>24}   {standing}");
        writeln!(out, "{}", line.trim_end())
    }

    fn figures(&self, out: &mut String) -> fmt::Result {
        let derived = &self.diagnosis.derived;
        let point = |estimate: Option<Estimate>| self.estimate(Scale::Kelvin, estimate);
        let difference = |estimate: Option<Estimate>| self.estimate(Scale::Difference, estimate);
        let high_pa = derived.high_side_pa.map_or(0.0, |estimate| estimate.value);
        let beyond = pseudo_critical::slope_k_pa(self.case.system.refrigerant, high_pa).is_some();
        let (high, above) = if beyond {
            ("pseudo-critical at", "pseudo-critical above ambient")
        } else {
            ("condensing at", "condensing above ambient")
        };
        let figures = [
            ("evaporating at", point(derived.low_dew_k)),
            (high, point(derived.high_dew_k)),
            (above, difference(derived.condensing_above_ambient_k)),
            ("superheat", difference(derived.superheat_k)),
            ("subcooling", difference(derived.subcooling_k)),
            (
                "pressure ratio",
                derived
                    .pressure_ratio
                    .map(|e| format!("{:.1} ± {:.1}", e.value, 2.0 * e.standard_uncertainty)),
            ),
        ];
        let known: Vec<String> = figures
            .into_iter()
            .filter_map(|(name, value)| Some(format!("{name} {}", value?)))
            .collect();
        if known.is_empty() {
            return Ok(());
        }
        writeln!(out, "\nFrom the readings (± covers 95 %)")?;
        known
            .chunks(2)
            .try_for_each(|pair| writeln!(out, "  {}", pair.join(";  ")))
    }

    fn estimate(&self, scale: Scale, estimate: Option<Estimate>) -> Option<String> {
        let estimate = estimate?;
        let spread = self.units.value(Scale::Difference, 2.0 * estimate.standard_uncertainty);
        Some(format!(
            "{} ± {spread} {}",
            self.units.value(scale, estimate.value),
            self.units.unit(scale)
        ))
    }

    fn verdict(&self, out: &mut String) -> fmt::Result {
        let Diagnosis { verdict, .. } = self.diagnosis;
        write!(out, "\nVERDICT  ")?;
        match verdict.kind {
            VerdictKind::Healthy => {
                let none = self.diagnosis.probability_of(&[Fault::NoFault]);
                writeln!(out, "sound ({})", per_cent(none))?;
                if none < LIKELIER_THAN_NOT {
                    writeln!(out, "  No fault stands out; a slight one would read the same.")?;
                }
            }
            VerdictKind::CannotTell if self.two_at_once().is_some() => {
                let names = verdict
                    .faults
                    .iter()
                    .map(|fault| spoken(fault.id()))
                    .collect::<Vec<_>>();
                let odds = self.two_at_once().map_or(0.0, |two| two.probability);
                writeln!(
                    out,
                    "two faults at once, both {} ({})",
                    names.join(" and "),
                    per_cent(odds)
                )?;
            }
            VerdictKind::NamedFault | VerdictKind::CannotTell => {
                let names = verdict
                    .faults
                    .iter()
                    .map(|fault| spoken(fault.id()))
                    .collect::<Vec<_>>();
                let lead = if verdict.kind == VerdictKind::CannotTell {
                    "these readings cannot tell: "
                } else {
                    ""
                };
                let odds = per_cent(self.diagnosis.probability_of(&verdict.faults));
                writeln!(out, "{lead}{} ({odds})", names.join(" or "))?;
            }
            VerdictKind::NothingFits | VerdictKind::NotEnoughEvidence => {
                let note = QualityNote::BandsOnly;
                let why = if self.diagnosis.quality.contains(&note) {
                    note.description()
                } else {
                    verdict.kind.description()
                };
                writeln!(out, "{}: {why}", spoken(verdict.kind.id()))?;
            }
        }
        if let Some(finding) = self.diagnosis.rest {
            writeln!(out, "  {}", finding.description())?;
        }
        if let Some(resting) = &self.diagnosis.resting {
            writeln!(out, "    {}", words::resting(resting, self.units))?;
        }
        if let Some((mix_up, probability)) = self.diagnosis.mix_up {
            writeln!(
                out,
                "  The instruments may mislead ({}): {}",
                per_cent(probability),
                mix_up.description()
            )?;
        }
        self.odds(out)
    }

    /// The pair that the verdict tells, where it tells one.
    fn two_at_once(&self) -> Option<TwoFaults> {
        let told = &self.diagnosis.verdict.faults;
        self.diagnosis
            .two_faults
            .filter(|two| two.probability > LIKELIER_THAN_NOT && told[..] == two.faults)
    }

    fn odds(&self, out: &mut String) -> fmt::Result {
        let likely = self
            .diagnosis
            .faults
            .iter()
            .filter(|ranked| ranked.probability >= 0.02)
            .take(5);
        for ranked in likely {
            let line = format!(
                "  {:>9}  {:30}{}",
                per_cent(ranked.probability),
                spoken(ranked.fault.id()),
                severity(ranked.fault, ranked.severity)
            );
            writeln!(out, "{}", line.trim_end())?;
        }
        if let Some(two) = self.diagnosis.two_faults {
            let [a, b] = two.faults.map(|fault| spoken(fault.id()));
            writeln!(
                out,
                "  {:>9}  both {a} and {b}, if pairs are weighed too",
                per_cent(two.probability)
            )?;
        }
        if self.diagnosis.none_of_these >= 0.02 {
            writeln!(out, "  {:>9}  none of these", per_cent(self.diagnosis.none_of_these))?;
        }
        Ok(())
    }

    fn why(&self, out: &mut String) -> fmt::Result {
        let Some(first) = self.diagnosis.faults.first() else {
            return Ok(());
        };
        let because = self.reasons.because(first.fault, first.rival);
        let mut weighty: Vec<&Contribution> = because.iter().filter(|c| libm::fabs(c.log_odds) >= 0.18).collect();
        put_in_order(&mut weighty, |a, b| libm::fabs(a.log_odds) > libm::fabs(b.log_odds));
        if weighty.is_empty() {
            return Ok(());
        }
        writeln!(
            out,
            "\nWhy {} rather than {}",
            spoken(first.fault.id()),
            spoken(first.rival.id())
        )?;
        for contribution in weighty.into_iter().take(5) {
            let side = if contribution.log_odds > 0.0 {
                "for it"
            } else {
                "against it"
            };
            let says = says(contribution, self.diagnosis, self.case);
            writeln!(
                out,
                "  {:8} {side:10}  {}",
                strength(contribution.log_odds).id(),
                says.trim_end()
            )?;
        }
        Ok(())
    }

    fn checks(&self, out: &mut String) -> fmt::Result {
        let mut checks = self.diagnosis.next_checks.iter();
        let Some(first) = checks.next() else {
            return self.step(out);
        };
        writeln!(out, "\nNEXT CHECK")?;
        self.check(out, first)?;
        for then in first.outcomes.iter() {
            let probability = per_cent(then.leading_probability);
            let result = result(then.result, then.observation, first.outcomes.len());
            writeln!(out, "    {result:>6}: {} ({probability})", spoken(then.leading.id()))?;
        }
        checks.take(2).try_for_each(|check| self.check(out, check))
    }

    /// What to do where no check is worth its time.
    fn step(&self, out: &mut String) -> fmt::Result {
        match self.diagnosis.next_step {
            Some(step) => writeln!(out, "\nNEXT STEP\n  {}", plan::says(step, &self.case.system)),
            None => Ok(()),
        }
    }

    fn check(&self, out: &mut String, ranked: &RankedCheck) -> fmt::Result {
        writeln!(
            out,
            "  {} ({:.0} min)",
            ranked.check.description().trim_end_matches('.'),
            ranked.minutes
        )
    }

    fn notes(&self, out: &mut String) -> fmt::Result {
        if !self.diagnosis.quality.is_empty() {
            writeln!(out, "\nLess certain because")?;
            for note in &self.diagnosis.quality {
                match self.diagnosis.out_of_line {
                    Some(feature) if *note == QualityNote::ReadingOutOfLine => {
                        let figure = feature_name(feature);
                        writeln!(
                            out,
                            "  The {figure} fits the leading explanation badly: measure it again."
                        )?;
                    }
                    _ => writeln!(out, "  {}", note.description())?,
                }
            }
        }
        writeln!(out, "\nTAKE CARE")?;
        self.cautions()
            .iter()
            .try_for_each(|caution| writeln!(out, "  {}", caution.description()))
    }

    /// Those of the diagnosis, then those of the steps that are told and of what was done.
    fn cautions(&self) -> Vec<Caution> {
        let mut cautions = self.diagnosis.cautions.to_vec();
        let steps = self
            .plan
            .map(|plan| plan::cautions(plan, &self.case.system))
            .unwrap_or_default();
        let pressed = self
            .proof
            .and_then(|proof| proof.pressure_test.as_ref())
            .map(proof::test_cautions);
        for caution in steps.into_iter().chain(pressed.into_iter().flatten()) {
            if !cautions.contains(&caution) {
                cautions.push(caution);
            }
        }
        // The local rules are the last word.
        put_in_order(&mut cautions, |a, b| {
            *a != Caution::LocalRules && *b == Caution::LocalRules
        });
        cautions
    }
}
