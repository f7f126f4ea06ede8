//! `tables/atlas/not-driven.csv`: what a running vehicle reads whose compressor is not driven, counted from the ambient.

use super::{FaultRows, Row};
use crate::features::{FEATURES, NAMES};
use crate::linear::Matrix;
use coldloop::Fault;
use std::fs;
use std::path::Path;

const TABLE: &str = "tables/atlas/not-driven.csv";

/// Mean and scale matrix of the features.
pub(super) struct NotDriven {
    mean: [f64; FEATURES],
    scale: Matrix<FEATURES>,
}

impl NotDriven {
    pub(super) fn read(root: &Path) -> Result<Self, String> {
        let text = fs::read_to_string(root.join(TABLE)).map_err(|e| format!("{TABLE}: {e}"))?;
        let mut lines = text.lines().filter(|line| !line.starts_with('#'));
        if lines.next() != Some("feature,mean,shared,own") {
            return Err(format!("{TABLE}: other columns than feature, mean, shared and own"));
        }
        let mut rows = Vec::new();
        for line in lines {
            let cells: Vec<&str> = line.split(',').collect();
            let [name, numbers @ ..] = &cells[..] else {
                return Err(format!("{TABLE}: {line}"));
            };
            if NAMES.get(rows.len()) != Some(name) {
                return Err(format!("{TABLE}: {name} stands in the wrong place"));
            }
            let numbers: Result<Vec<f64>, _> = numbers.iter().map(|number| number.parse()).collect();
            let numbers = numbers.map_err(|e| format!("{TABLE}: {line}: {e}"))?;
            rows.push(<[f64; 3]>::try_from(numbers).map_err(|_| format!("{TABLE}: {line}"))?);
        }
        let rows = <[[f64; 3]; FEATURES]>::try_from(rows).map_err(|_| format!("{TABLE}: too few features"))?;
        Ok(Self {
            mean: rows.map(|[mean, _, _]| mean),
            scale: std::array::from_fn(|i| {
                std::array::from_fn(|j| {
                    let own = if i == j { rows[i][2] * rows[i][2] } else { 0.0 };
                    rows[i][1] * rows[j][1] + own
                })
            }),
        })
    }

    /// Whether it speaks of a fault: R-744 has no saturation at most ambients, and keeps the rows of its source.
    pub(super) fn speaks_of(of: &FaultRows) -> bool {
        of.fault == Fault::ClutchNotEngaged && !of.carbon_dioxide
    }

    /// One row for each group of compressors, in place of those of the source.
    pub(super) fn in_place_of(&self, of: &FaultRows) -> FaultRows {
        let mut rows: Vec<Row> = Vec::new();
        for row in &of.rows {
            if rows.iter().all(|other| other.group != row.group) {
                rows.push(Row {
                    cause: String::new(),
                    weight: 1.0,
                    severity: [0.0, 1.0, 1.0],
                    shift: self.mean.map(|mean| [mean, 0.0, 0.0, 0.0]),
                    ..row.clone()
                });
            }
        }
        FaultRows {
            scales: [self.scale; 2],
            rows,
            ..of.clone()
        }
    }
}
