//! A bus cools poorly: what to do first, and what to do after each result.
//!
//! ```text
//! cargo run --release --example plan
//! ```
//!
//! The garage is invented: municipal vehicles at 1,600 m. Costs are the library's defaults in minutes of work, parts
//! as labour time; a shop's own go into [`Settings`].

use coldloop::circuit::{Gauge, Reading, Readings};
use coldloop::diagnosis::{Action, Case, Plan, Settings, check_cautions, judge, repair_cautions};
use coldloop::report::{Finding, step_says};
use coldloop::units::{GaugePressure, Surroundings, celsius};
use coldloop::vehicle::{Conditions, System};
use coldloop::{Caution, Compressor, Expansion, Language, Refrigerant, ResultKind, Thermometer};

fn main() -> Result<(), coldloop::Error> {
    // The bus: an expansion valve and a compressor with a clutch.
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    let conditions = Conditions::new(celsius(27.0), Surroundings::at_altitude(1_600.0)?);
    let readings = Readings {
        low_side: Some(Reading::pressure(GaugePressure::from_bar(4.1), Gauge::LOW_SIDE)),
        high_side: Some(Reading::pressure(GaugePressure::from_bar(9.3), Gauge::HIGH_SIDE)),
        vent: Some(Reading::temperature(celsius(18.0), Thermometer::PocketDigital)),
        ..Readings::default()
    };
    let settings = Settings::default();
    let judgement = judge(&Case::new(system, conditions, readings), &settings)?;
    let diagnosis = judgement.diagnosis(&settings)?;
    println!("Bus 2, 27 °C in the yard: low side 4.1 bar gauge, high side 9.3 bar gauge, vent 18 °C.");
    println!("\nWhat could be the cause:");
    for ranked in diagnosis.faults.iter().take(4) {
        println!("  {:3.0} %  {}", 100.0 * ranked.probability, ranked.fault.description());
    }
    let plan = judgement.plan(&settings);
    println!(
        "\nThe plan: {:.0} min of work on average until it is repaired, parts as labour time; without checks {:.0} min.",
        plan.expected_minutes, plan.without_checks_minutes
    );
    let mut cautions: Vec<Caution> = diagnosis.cautions.to_vec();
    follow(&plan, 0, 1, &system, &mut cautions);
    println!("\nBefore you start:");
    for caution in cautions {
        println!("  - {}", caution.description());
    }
    Ok(())
}

/// Prints a step and those that follow from its results, and collects their cautions.
fn follow(plan: &Plan, at: usize, depth: usize, system: &System, cautions: &mut Vec<Caution>) {
    let Some(step) = plan.steps.get(at) else { return };
    let says = step_says(step.action, system, Language::English);
    let asked = match step.action {
        Action::Check(check) => check_cautions(check, system).to_vec(),
        Action::Repair(fault) => repair_cautions(fault, system).to_vec(),
        Action::HandOver => Vec::new(),
        _ => Vec::new(),
    };
    for caution in &asked {
        if !cautions.contains(caution) {
            cautions.push(*caution);
        }
    }
    let indent = "    ".repeat(depth);
    println!("{indent}{says} ({:.0} min)", step.minutes + step.parts_in_minutes);
    for branch in &step.branches {
        let found = Finding::of(step.action, branch.result, branch.observation).says(Language::English);
        if matches!((step.action, branch.result), (Action::Repair(_), ResultKind::Yes)) {
            println!("{indent}- {found} ({:.0} %)", 100.0 * branch.probability);
            continue;
        }
        println!(
            "{indent}- {found} ({:.0} %): then most likely, {:.0} %: {}",
            100.0 * branch.probability,
            100.0 * branch.leading_probability,
            branch.leading.description()
        );
        if let Some(next) = branch.next {
            follow(plan, next, depth + 1, system, cautions);
        }
    }
}
