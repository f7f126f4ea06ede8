//! `tables/atlas/independent-simulator.csv`, read again: its seven readings in the places of the eight features.

use super::conditions::names;
use super::shifts::MOVES;
use super::{FOLDER, NAMES};
use crate::features::{self, FEATURES};
use crate::linear::Matrix;
use coldloop::{Expansion, Fault};
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

/// One row group of shifts.
#[derive(Clone)]
pub(crate) struct Shift {
    pub(crate) group: String,
    /// Least, mean and most.
    pub(crate) severity: [f64; 3],
    pub(crate) cases: usize,
    pub(crate) shift: [[f64; MOVES]; FEATURES],
}

/// The table.
pub(crate) struct Table {
    sound: Vec<(Expansion, String, [f64; FEATURES])>,
    /// By expansion device, fault and part.
    covariances: BTreeMap<(u32, u32, String), Matrix<FEATURES>>,
    shifts: Vec<(Expansion, Fault, Shift)>,
}

impl Table {
    /// Reads it.
    pub(crate) fn read(root: &Path) -> Result<Self, String> {
        let path = format!("{FOLDER}/independent-simulator.csv");
        let text = fs::read_to_string(root.join(&path)).map_err(|e| format!("{path}: {e}"))?;
        let mut table = Self {
            sound: Vec::new(),
            covariances: BTreeMap::new(),
            shifts: Vec::new(),
        };
        for line in text.lines().filter(|line| !line.starts_with('#')).skip(1) {
            table.row(line).map_err(|e| format!("{path}: {e}: {line}"))?;
        }
        Ok(table)
    }

    /// The coefficients of the sound mean, by the name of their term.
    pub(crate) fn sound(&self, expansion: Expansion) -> impl Iterator<Item = (&String, &[f64; FEATURES])> {
        let own = self.sound.iter().filter(move |(of, ..)| *of == expansion);
        own.map(|(_, name, row)| (name, row))
    }

    /// Between `makes`, or between `vehicles`.
    pub(crate) fn covariance(&self, expansion: Expansion, part: &str) -> Result<Matrix<FEATURES>, String> {
        self.part(expansion, Fault::NoFault, part)
    }

    /// Round the shifts of a fault, and round the severe ones.
    pub(crate) fn scales(&self, expansion: Expansion, fault: Fault) -> Result<[Matrix<FEATURES>; 2], String> {
        let all = self.part(expansion, fault, "covariance")?;
        Ok([all, self.part(expansion, fault, "covariance_severe").unwrap_or(all)])
    }

    fn part(&self, expansion: Expansion, fault: Fault, part: &str) -> Result<Matrix<FEATURES>, String> {
        let found = self
            .covariances
            .get(&(expansion.code(), fault.code(), part.to_string()));
        found
            .copied()
            .ok_or(format!("{FOLDER}: no {part} of {expansion} {fault}"))
    }

    /// The shifts of every fault that has some with this expansion device.
    pub(crate) fn shifts(&self, expansion: Expansion, fault: Fault) -> Vec<&Shift> {
        let own = self
            .shifts
            .iter()
            .filter(|(of, what, _)| *of == expansion && *what == fault);
        own.map(|(_, _, shift)| shift).collect()
    }

    fn row(&mut self, line: &str) -> Result<(), String> {
        let fields: Vec<&str> = line.split(',').collect();
        let [
            _,
            expansion,
            group,
            fault,
            low,
            high,
            mean,
            part,
            term,
            cases,
            _,
            values @ ..,
        ] = fields.as_slice()
        else {
            return Err("too few columns".to_string());
        };
        if *expansion == "all" {
            return Ok(());
        }
        let expansion = Expansion::from_id(expansion).ok_or("no expansion device")?;
        let fault = Fault::from_id(fault).ok_or("no fault")?;
        let mut row = [0.0; FEATURES];
        for (name, value) in NAMES.iter().zip(values).filter(|(_, value)| !value.is_empty()) {
            row[place(name)?] = float(value)?;
        }
        match *part {
            "sound" => self.sound.push((expansion, (*term).to_string(), row)),
            "makes" | "vehicles" | "covariance" | "covariance_severe" => {
                let key = (expansion.code(), fault.code(), (*part).to_string());
                let matrix = self.covariances.entry(key).or_insert([[0.0; FEATURES]; FEATURES]);
                let i = place(term)?;
                for (j, value) in row.into_iter().enumerate().filter(|(_, value)| *value != 0.0) {
                    matrix[i][j] = value;
                    matrix[j][i] = value;
                }
            }
            "shift" => {
                let at = names()
                    .iter()
                    .position(|(name, _)| name == term)
                    .filter(|at| *at < MOVES);
                let at = at.ok_or("no term")?;
                if at == 0 {
                    let shift = Shift {
                        group: (*group).to_string(),
                        severity: [float(low)?, float(mean)?, float(high)?],
                        cases: cases.parse().map_err(|_| format!("{cases} is no count"))?,
                        shift: [[0.0; MOVES]; FEATURES],
                    };
                    self.shifts.push((expansion, fault, shift));
                }
                let (.., own) = self.shifts.last_mut().ok_or("no shift")?;
                for (own, value) in own.shift.iter_mut().zip(row) {
                    own[at] = value;
                }
            }
            "read" => {}
            _ => return Err(format!("{part} is no part")),
        }
        Ok(())
    }
}

/// The place of a reading among the features.
fn place(name: &str) -> Result<usize, String> {
    let place = features::NAMES.iter().position(|feature| *feature == name);
    place.ok_or(format!("{name} is no feature"))
}

fn float(digits: &str) -> Result<f64, String> {
    digits.parse().map_err(|_| format!("{digits} is no number"))
}
