//! What the library knows of faults, to look at: a page for each kind of system, as SVG, and the same rows as a table.
//!
//! ```text
//! cargo run --release --example fault_atlas
//! cargo run --release --example fault_atlas -- R-1234yf orifice-tube electric
//! ```
//!
//! The first draws a page for every family of refrigerants, expansion device and group of compressors into target/fault_atlas/;
//! the second draws the page of one system. Rows are faults and columns figures; a page shows by how much, according to each source, each fault
//! moves each figure, from mild to severe, with the spread of vehicles, beside the band of sound systems and the measured changes
//! of `tables/evidence/effects.csv`. The weather is that of [`day`].

mod drawing;
mod measured;
mod rows;
mod svg;
mod table;

use coldloop::expected::SoundModel;
use coldloop::units::{RelativeHumidity, RotationalSpeed, Speed, Surroundings, TimeSpan, celsius};
use coldloop::vehicle::{Conditions, System};
use coldloop::{AirSource, Compressor, Expansion, Refrigerant};
use rows::Page;
use std::error::Error;
use std::path::Path;

/// The weather of all pages: a warm day in the yard of a municipal garage at 1,600 m, the engine at test speed.
fn day(system: &System) -> Result<Conditions, coldloop::Error> {
    Ok(Conditions {
        relative_humidity: Some(RelativeHumidity::from_fraction(0.4)),
        engine_speed: Some(RotationalSpeed::from_hz(25.0)).filter(|_| system.compressor != Compressor::Electric),
        air_source: Some(AirSource::Fresh),
        blower: Some(1.0),
        vehicle_speed: Some(Speed::from_m_s(0.0)),
        running_for: Some(TimeSpan::from_seconds(900.0)),
        ..Conditions::new(celsius(30.0), Surroundings::at_altitude(1_600.0)?)
    })
}

fn main() -> Result<(), Box<dyn Error>> {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let systems = match words.as_slice() {
        [] => kinds(),
        [refrigerant, expansion, compressor] => vec![System::new(
            Refrigerant::from_id(refrigerant).ok_or_else(|| format!("{refrigerant}: no such refrigerant"))?,
            Expansion::from_id(expansion).ok_or_else(|| format!("{expansion}: no such expansion device"))?,
            Compressor::from_id(compressor).ok_or_else(|| format!("{compressor}: no such compressor"))?,
        )],
        _ => return Err("usage: fault_atlas [REFRIGERANT EXPANSION COMPRESSOR]".into()),
    };
    let folder = Path::new("target/fault_atlas");
    std::fs::create_dir_all(folder)?;
    let facts = measured::facts(&Path::new(env!("CARGO_MANIFEST_DIR")).join("tables/evidence/effects.csv"))?;
    for system in systems {
        let page = Page::of(&system, &day(&system)?)?;
        print!("{}", table::text(&page));
        let path = folder.join(format!("{}.svg", page.name()));
        std::fs::write(&path, drawing::svg(&page, &facts))?;
        println!("drawn in {}\n", path.display());
    }
    Ok(())
}

/// A system for each page of the atlas: R-134a represents all refrigerants but R-744, and internal control both kinds of
/// variable compressor, because the shifts are the same.
fn kinds() -> Vec<System> {
    let mut kinds = Vec::new();
    for refrigerant in [Refrigerant::R134a, Refrigerant::R744] {
        for expansion in Expansion::ALL {
            for compressor in [
                Compressor::FixedClutch,
                Compressor::VariableInternal,
                Compressor::Electric,
            ] {
                kinds.push(System::new(refrigerant, expansion, compressor));
            }
        }
    }
    kinds.retain(SoundModel::speaks_of);
    kinds
}
