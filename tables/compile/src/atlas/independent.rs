//! The faults of the independent simulator, from `tables/atlas/independent-simulator.csv`.

use super::group::Group;
use super::{FaultRows, Row, WEIGHTS};
use crate::features::{CYCLES, FEATURES};
use crate::moments::Table;
use coldloop::{Expansion, Fault};

/// Its rows; it has no clutch cycles, which are taken from `ours`.
pub(super) fn rows(table: &Table, ours: &[FaultRows]) -> Result<Vec<FaultRows>, String> {
    let mut faults = Vec::new();
    for expansion in Expansion::ALL {
        for fault in Fault::ALL {
            let shifts = table.shifts(expansion, fault);
            if shifts.is_empty() {
                continue;
            }
            let own = ours
                .iter()
                .find(|of| !of.carbon_dioxide && of.expansion == expansion && of.fault == fault);
            let mut scales = table.scales(expansion, fault)?;
            for (severe, scale) in scales.iter_mut().enumerate() {
                scale[CYCLES] = [0.0; FEATURES];
                scale[CYCLES][CYCLES] = own.map_or(1.0, |own| own.scales[severe][CYCLES][CYCLES]);
            }
            let mut bins: Vec<[f64; 3]> = Vec::new();
            for shift in &shifts {
                if !bins.contains(&shift.severity) && shift.group == "all" {
                    bins.push(shift.severity);
                }
            }
            let mut rows = Vec::new();
            for group in Group::ALL {
                for (bin, severity) in bins.iter().enumerate() {
                    let of_bin = |name: &str| {
                        let ends = |s: &[f64; 3]| (s[0], s[2]);
                        shifts
                            .iter()
                            .find(|s| s.group == name && ends(&s.severity) == ends(severity))
                    };
                    let found = of_bin(group.id())
                        .or(of_bin("all"))
                        .ok_or("a bin without all compressors")?;
                    let mut shift = found.shift;
                    if let Some(own) = own.filter(|_| group == Group::FixedClutch) {
                        shift[CYCLES] = nearest(own, group, (bin as f64 + 0.5) / bins.len() as f64);
                    }
                    rows.push(Row {
                        group,
                        cause: String::new(),
                        weight: weight(bin, bins.len()),
                        severity: found.severity,
                        cases: found.cases,
                        shift,
                    });
                }
            }
            faults.push(FaultRows {
                source: "independent-simulator",
                carbon_dioxide: false,
                expansion,
                fault,
                scales,
                rows,
                drawn: [0.0; FEATURES],
            });
        }
    }
    Ok(faults)
}

/// The weight of one of so many bins of equal numbers of cases.
fn weight(bin: usize, of: usize) -> f64 {
    let [mild, middle, severe] = WEIGHTS;
    match (of, bin) {
        (1, _) => 1.0,
        (2, 0) => mild + 0.5 * middle,
        (2, _) => severe + 0.5 * middle,
        _ => WEIGHTS[bin.min(2)],
    }
}

/// The shift of the cycles in the row of a group that stands at this part of the way from mild to severe.
fn nearest(own: &FaultRows, group: Group, part: f64) -> [f64; 4] {
    let rows: Vec<&Row> = own.rows.iter().filter(|row| row.group == group).collect();
    let most = rows.iter().map(|row| row.severity[2]).fold(0.0, f64::max);
    let holds = |row: &&&Row| row.severity[0] <= part * most && part * most <= row.severity[2];
    let mut sum = [0.0; 4];
    let mut weight = 0.0;
    for row in rows.iter().filter(holds) {
        weight += row.weight;
        for (sum, value) in sum.iter_mut().zip(row.shift[CYCLES]) {
            *sum += row.weight * value;
        }
    }
    if weight > 0.0 {
        sum.map(|sum| sum / weight)
    } else {
        [0.0; 4]
    }
}
