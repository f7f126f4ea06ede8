//! The atlas: how far each fault moves the features of a system, from each source.

use super::atlas_table::ATLAS;
use super::rows::{FaultRows, Page, ShiftRow};
use crate::circuit::FeatureVector;
use crate::expected::Source;
use crate::names::{Compressor, Expansion, Refrigerant};
use crate::numerics::multivariate_t::{DIMENSIONS, Symmetric, Vector};
use crate::vehicle::System;

/// The part of the atlas that applies to a system.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Pages {
    carbon_dioxide: bool,
    expansion: Expansion,
    group: usize,
}

impl Pages {
    pub(super) fn of(system: &System) -> Self {
        Self {
            carbon_dioxide: system.refrigerant == Refrigerant::R744,
            expansion: system.expansion,
            group: match system.compressor {
                Compressor::FixedClutch => 0,
                Compressor::VariableInternal | Compressor::VariableExternal => 1,
                Compressor::Electric => 2,
            },
        }
    }

    /// The faults of a source's page.
    pub(super) fn of_source(self, source: Source) -> &'static [FaultRows] {
        let on_page = |page: &&Page| {
            page.source == source && page.expansion == self.expansion && page.carbon_dioxide == self.carbon_dioxide
        };
        ATLAS.iter().find(on_page).map_or(&[], |page| page.faults)
    }

    /// The severities of a fault in this group of compressors.
    pub(super) fn severities(self, rows: &'static FaultRows) -> &'static [ShiftRow] {
        rows.rows[self.group]
    }
}

/// The only row of a hypothesis that shifts no feature.
pub(super) static STILL: [ShiftRow; 1] = [ShiftRow {
    severe: false,
    weight: 1.0,
    severity: [0.0; 3],
    shift: [[0; 4]; DIMENSIONS],
}];

/// The mean of a system that shows the ambient: zero, as features count from there.
pub(super) static AMBIENT: Vector = [0.0; DIMENSIONS];

/// The largest number of rows, severities times forms, of a fault in one source.
pub(super) const MOST_ROWS: usize = 12;

/// Standard deviations of the figures under an unlisted cause, K (cycles in their logarithm): low side, high side, vent,
/// superheat, subcooling, discharge superheat, cycles. Source: engineering judgement: about the physical range of each.
const FAR: [f64; 7] = [18.0, 20.0, 14.0, 14.0, 12.0, 20.0, 1.0];

/// What an unlisted cause adds to the scale matrix of a sound system.
pub(super) static ANYTHING: Symmetric = {
    use FeatureVector as F;
    const LINES: [&[usize]; 7] = [
        &[F::LOW_SIDE, F::SUCTION_LINE],
        &[F::HIGH_SIDE, F::LIQUID_LINE, F::CONDENSER_OUTLET, F::DISCHARGE_LINE],
        &[F::VENT],
        &[F::SUCTION_LINE],
        &[F::LIQUID_LINE, F::CONDENSER_OUTLET],
        &[F::DISCHARGE_LINE],
        &[F::CLUTCH_CYCLES],
    ];
    let mut matrix = Symmetric::ZERO;
    let mut figure = 0;
    while figure < LINES.len() {
        let (moved, mut i) = (LINES[figure], 0);
        while i < moved.len() {
            let mut j = 0;
            while j < moved.len() {
                if moved[j] <= moved[i] {
                    *matrix.at_mut(moved[i], moved[j]) += FAR[figure] * FAR[figure];
                }
                j += 1;
            }
            i += 1;
        }
        figure += 1;
    }
    // Condenser outlet and liquid line differ by a standard deviation of 2 K.
    *matrix.at_mut(F::CONDENSER_OUTLET, F::CONDENSER_OUTLET) += 4.0;
    matrix
};

#[cfg(test)]
mod tests {
    use super::*;

    /// The terms of a likelihood are taken in this order, and at most so many.
    #[test]
    fn mild_rows_stand_before_severe_ones() {
        for rows in ATLAS.iter().flat_map(|page| page.faults).flat_map(|rows| rows.rows) {
            assert!(rows.is_sorted_by_key(|row| row.severe) && rows.len() <= MOST_ROWS);
        }
    }
}
