//! How often is the diagnosis right? Vehicles with known faults, which no fit has seen, are read and judged.
//!
//! `cargo run --release --example evaluate_diagnosis` draws 300 vehicles of each of the eight kinds from the population
//! of the fit (with other seeds) and 300 from a shifted one: parts of other sizes and efficiencies, other set points,
//! another climate, and instruments and people that err in other ways. `-- 2000` draws more; `-- 600 FOLDER` also writes
//! the cases, and 60,000 vehicles to learn from, as CSV for `examples/evaluate_diagnosis/classifier.py`, which judges the same cases
//! with a random forest. `-- R-152a 400` judges vehicles with another refrigerant than those of the fit.
//!
//! The five rates are those of Yuill & Braun 2012 (Purdue, paper 1307). A fault is significant when it costs 5 % of the
//! capacity, 10 % of the coefficient of performance, or 1.5 K at the vent; only those count below "significant".
//! In "even" mixes all faults are equally frequent and a sixth of the vehicles is sound, and the priors say so;
//! "usual" mixes weigh the same cases by the default priors.

mod cases;
#[allow(dead_code)] // the fit of the atlas, which shares it, needs more of it
mod draws;
mod tally;

use cases::{ALL_LINES, Judged, answer, drawn, settings, weight, write};
use coldloop::{Fault, Refrigerant};
use draws::{Lines, World};
use std::error::Error;
use std::path::Path;
use tally::{Standing, Tally};

/// A classifier learns from this many vehicles of each kind, or from this multiple of those that are judged, whichever is less.
const LEARNT: usize = 7_500;
const LEARNT_TO_JUDGED: usize = 20;

fn main() -> Result<(), Box<dyn Error>> {
    let mut arguments = std::env::args().skip(1).peekable();
    let mut worlds = vec![
        (World::Own, "own", 171),
        (World::OtherMakes, "other makes", 176),
        (World::Shifted, "shifted", 172),
    ];
    // A number is a count, although the names of some refrigerants may be written as numbers.
    let named = arguments.peek().filter(|word| word.parse::<usize>().is_err());
    if let Some(refrigerant) = named.and_then(|word| Refrigerant::from_id(word)) {
        arguments.next();
        worlds = vec![(World::With(refrigerant), refrigerant.id(), 175)];
    }
    let count: usize = arguments.next().map_or(Ok(300), |text| text.parse())?;
    let folder = arguments.next();
    for (world, name, seed) in worlds {
        let cases = drawn(world, seed, count)?;
        if let Some(folder) = &folder {
            write(&Path::new(folder).join(format!("{name}.csv")), &cases)?;
        }
        println!("{name} population, {} vehicles", cases.len());
        println!(
            "  {:<26} {:>6} {:>6} {:>6} {:>6} {:>7} {:>7} {:>7} {:>6} {:>6} {:>6} {:>6}",
            "", "false", "", "", "mis-", "list", "list", "no", "", "", "log", ""
        );
        println!(
            "  {:<26} {:>6} {:>6} {:>6} {:>6} {:>7} {:>7} {:>7} {:>6} {:>6} {:>6} {:>6}",
            "", "alarm", "named", "missed", "named", "with", "without", "answer", "first", "three", "loss", "ECE"
        );
        for (at, lines) in ALL_LINES.into_iter().enumerate() {
            for usual in [false, true] {
                let mut tally = Tally::default();
                for case in &cases {
                    let settings = settings(case, usual);
                    let answer = answer(case, at, &settings)?;
                    tally.add(case, weight(case, usual), Standing::of(answer.as_ref()));
                }
                tally.print(&format!("{} lines, {}", words(lines), mix(usual)));
            }
        }
        // No chart of pressures is known of R-744.
        let charted = world != World::With(Refrigerant::R744);
        for usual in [false, true].into_iter().filter(|_| charted) {
            let mut chart = Tally::default();
            for case in &cases {
                chart.add(case, weight(case, usual), Standing::chart(case));
            }
            chart.print(&format!("static chart, {}", mix(usual)));
        }
        by_fault(&cases)?;
    }
    if let Some(folder) = &folder {
        let learnt = LEARNT.min(LEARNT_TO_JUDGED * count);
        write(&Path::new(folder).join("learn.csv"), &drawn(World::Own, 73, learnt)?)?;
    }
    Ok(())
}

fn words(lines: Lines) -> &'static str {
    match lines {
        Lines::All => "all",
        Lines::Some => "some",
        Lines::None => "no",
    }
}

fn mix(usual: bool) -> &'static str {
    if usual { "usual mix" } else { "even mix" }
}

/// First names right per fault and third of severity, all lines, even mix; and what the wrong ones are taken for.
fn by_fault(cases: &[Judged]) -> Result<(), Box<dyn Error>> {
    println!(
        "  first name right, % of significant cases by third of severity; most often taken for (all lines, even mix)"
    );
    for fault in Fault::ALL {
        let mut thirds = [[0.0; 2]; 3];
        let mut taken = vec![0usize; Fault::ALL.len()];
        for case in cases
            .iter()
            .filter(|case| case.draw.fault.fault == fault && case.significant)
        {
            let answer = answer(case, 0, &settings(case, false))?;
            let most = if fault == Fault::Overcharge { 0.5 } else { 0.95 };
            let third = &mut thirds[((3.0 * case.draw.fault.severity / most) as usize).min(2)];
            third[0] += 1.0;
            let Some(first) = answer
                .as_ref()
                .and_then(|answer| answer.faults.first())
                .map(|f| f.fault)
            else {
                continue;
            };
            if first == fault {
                third[1] += 1.0;
            } else {
                taken[Fault::ALL.iter().position(|f| *f == first).unwrap_or(0)] += 1;
            }
        }
        let wrong: usize = taken.iter().sum();
        let most = (0..taken.len()).max_by_key(|at| taken[*at]);
        if let (Some(most), true) = (most, thirds.iter().any(|third| third[0] > 0.0)) {
            let cells: Vec<String> = thirds
                .iter()
                .map(|[all, right]| {
                    if *all > 0.0 {
                        format!("{:>4.0} of {all:<4.0}", 100.0 * right / all)
                    } else {
                        format!("{:>12}", "-")
                    }
                })
                .collect();
            let share = (100 * taken[most]).checked_div(wrong).unwrap_or(0);
            println!(
                "    {:<30} {}  {} ({share} % of the wrong)",
                fault.id(),
                cells.join("  "),
                Fault::ALL[most].id()
            );
        }
    }
    Ok(())
}
