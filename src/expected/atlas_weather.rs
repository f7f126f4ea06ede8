//! Weather and driving as the tables of the atlas count them: those who fit the tables and those who read them ask here.

use crate::units::STANDARD_PRESSURE_PA;
use libm::log;

/// The conditions of a case in the terms of `tables/atlas/README.md`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AtlasWeather {
    /// Ambient temperature, K.
    pub ambient_k: f64,
    /// Barometric pressure, Pa.
    pub air_pa: f64,
    /// Water in the outdoor air, kg per kg of dry air.
    pub humidity_ratio: f64,
    /// Logarithm of the engine speed over 1,500 rpm; zero where a motor drives the compressor.
    pub ln_speed: f64,
    /// 0 for fresh air, 1 for recirculated.
    pub recirculated: f64,
    /// Blower setting, 1 for the highest.
    pub blower: f64,
}

impl AtlasWeather {
    /// How many terms the shift of a fault has.
    pub const MOVES: usize = 4;
    /// How many terms the sound mean of the independent simulator has, those of one kind of system apart.
    pub const TERMS: usize = 16;

    /// What the shift of a fault is linear in: 1, a = (ambient - 303.15 K) / 10 K, w = (humidity ratio - 0.012) / 0.010 and
    /// s = ln(engine speed / 1,500 rpm).
    pub const fn moves(&self) -> [f64; Self::MOVES] {
        [
            1.0,
            (self.ambient_k - 303.15) / 10.0,
            (self.humidity_ratio - 0.012) / 0.010,
            self.ln_speed,
        ]
    }

    /// What the sound mean of the independent simulator is linear in: the above, recirculated air r, blower b below the highest
    /// setting, p = ln(barometric pressure / 101,325 Pa), and products of two of them.
    pub fn terms(&self) -> [f64; Self::TERMS] {
        let [_, a, w, s] = self.moves();
        let (r, b) = (self.recirculated, self.blower - 1.0);
        let p = log(self.air_pa / STANDARD_PRESSURE_PA);
        [
            1.0,
            a,
            w,
            s,
            r,
            b,
            p,
            a * a,
            a * w,
            w * w,
            a * s,
            s * s,
            a * r,
            w * r,
            a * b,
            w * b,
        ]
    }
}
