//! Published bands and effects beside two models: vehicles of this library, and an independent simulator.
//!
//! `cargo run --release --example evidence` prints three tables, a line for each published fact of `tables/evidence` for which a
//! model has a value: sound systems, systems with a fault, and measured changes. `-- 200` draws 200 vehicles for each kind of system
//! instead of 40. This library's vehicles are given by the median and the range from 10 to 90 %; the independent simulator
//! (`tables/atlas`) by the same of its t distribution, or by its mean change.
//!
//! What a source does not state is taken as: fresh air, 50 % humidity, highest blower, standing, 1,500 rpm (800 at idle), at
//! sea level; a valve and an orifice tube, a fixed and a variable compressor in equal parts. A fault whose size is not stated is
//! one that has gone far, as fault tables print it: drawn evenly between 0.5 and 0.95 (overcharge 0.25 to 0.5), and for the
//! independent simulator its most severe rows. Recirculated air with doors open is air of the weather. Where a source
//! reads the low side just before the clutch disengages, so do our vehicles; the moments of the independent simulator are of means.

mod atlas;
mod fact;
mod ours;

use atlas::Atlas;
use coldloop::Fault;
use fact::{Fact, Figure};
use std::error::Error;
use std::path::Path;

fn main() -> Result<(), Box<dyn Error>> {
    let count = std::env::args().nth(1).map_or(Ok(40), |text| text.parse())?;
    let tables = Path::new(env!("CARGO_MANIFEST_DIR")).join("tables");
    let levels = fact::levels(&tables.join("evidence/readings.csv"))?;
    let changes = fact::changes(&tables.join("evidence/effects.csv"))?;
    let atlas = Atlas::read(&tables.join("atlas"))?;
    let (sound, faulty): (Vec<Fact>, Vec<Fact>) = levels.into_iter().partition(|fact| fact.fault == Fault::NoFault);
    for (title, facts) in [
        ("Sound systems", sound),
        ("Systems with a fault", faulty),
        ("Changes", changes),
    ] {
        println!(
            "\n{title}\n{:34} {:9} {:>16} {:>24} {:>24}",
            "fact", "unit", "published", "this library", "independent"
        );
        let mut met = [[0; 2]; 2];
        for fact in &facts {
            let answers = [ours::figure(fact, count)?, atlas.figure(fact)?];
            for (met, answer) in met.iter_mut().zip(&answers) {
                if let Some(agrees) = answer.and_then(|figure| fact.agrees(&figure)) {
                    met[0] += usize::from(agrees);
                    met[1] += 1;
                }
            }
            let name = format!("{} {}", fact.id, fact.reading.id());
            let [ours, theirs] = answers.map(text);
            println!(
                "{name:34} {:9} {:>16} {ours:>24} {theirs:>24}",
                fact.unit,
                fact.printed()
            );
        }
        let [ours, theirs] = met.map(|[agree, all]| format!("{agree} of {all}"));
        println!("The printed range meets the part between 10 and 90 % in {ours} and {theirs} facts.");
    }
    Ok(())
}

fn text(figure: Option<Figure>) -> String {
    figure.map_or("-".into(), |f| match f.part {
        Some([low, high]) => format!("{:.1} ({:.1} to {:.1})", f.median, low, high),
        None => format!("{:.1}", f.median),
    })
}
