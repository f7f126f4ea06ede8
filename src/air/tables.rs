//! Coefficients of moist air.
//!
//! Generated from tables/air.toml by tables/compile; edit the table, not this file.

use super::water::{Enhancement, Saturation};

pub(super) const SATURATION_ICE: Saturation = Saturation {
    a: [
        -5674.5359,
        6.3925247,
        -0.009677843,
        6.2215701e-7,
        2.0747825e-9,
        -9.484024e-13,
    ],
    b: 4.1635019,
};
pub(super) const SATURATION_WATER: Saturation = Saturation {
    a: [-5800.2206, 1.3914993, -0.048640239, 4.1764768e-5, -1.4452093e-8, 0.0],
    b: 6.5459673,
};
pub(super) const ENHANCEMENT_ICE: Enhancement = Enhancement {
    alpha: [-0.06019057, 0.0007398406, -3.0897838e-6, 4.3669918e-9],
    beta: [-94.868712, 0.72392075, -0.0021963437, 2.4668279e-6],
};
pub(super) const ENHANCEMENT_WATER: Enhancement = Enhancement {
    alpha: [-0.16302041, 0.001807157, -6.7703064e-6, 8.5813609e-9],
    beta: [-59.890467, 0.34378043, -0.00077326396, 6.3405286e-7],
};
