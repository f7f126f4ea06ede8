//! The unknowns of the balance of the circuit.

/// How many unknowns the balance has.
pub(in crate::vehicle) const UNKNOWNS: usize = 7;

/// A value for each unknown, or for each balance, in the order of [`Unknown`].
pub(in crate::vehicle) type Vector = [f64; UNKNOWNS];

/// The places of the unknowns in a [`Vector`], and of the balance that each of them closes.
pub(in crate::vehicle) struct Unknown;

impl Unknown {
    pub(in crate::vehicle) const LN_SUCTION_PA: usize = 0;
    pub(in crate::vehicle) const LN_DISCHARGE_PA: usize = 1;
    pub(in crate::vehicle) const SUCTION: usize = 2;
    pub(in crate::vehicle) const DEMAND: usize = 3;
    pub(in crate::vehicle) const INTAKE_K: usize = 4;
    pub(in crate::vehicle) const INTAKE_HUMIDITY: usize = 5;
    pub(in crate::vehicle) const LN_REAR: usize = 6;

    /// Whether the balance of the upper half of the circuit depends on it.
    pub(in crate::vehicle) const fn reaches_the_upper_half(place: usize) -> bool {
        matches!(
            place,
            Self::LN_SUCTION_PA | Self::LN_DISCHARGE_PA | Self::SUCTION | Self::DEMAND
        )
    }
}

/// The unknowns of the balance.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Point {
    /// Logarithm of the pressure at the compressor inlet, Pa.
    pub ln_suction_pa: f64,
    /// Logarithm of the pressure at the compressor outlet, Pa.
    pub ln_discharge_pa: f64,
    /// State at the compressor inlet, see `WorkingFluid::at_coordinate`.
    pub suction: f64,
    /// Part of stroke, running time or speed that is in use.
    pub demand: f64,
    /// Air before the evaporator: temperature, K.
    pub intake_k: f64,
    /// Air before the evaporator: humidity ratio.
    pub intake_humidity: f64,
    /// Logarithm of the part of the flow that a second evaporator takes.
    pub ln_rear: f64,
}

impl Point {
    /// The unknowns in the order of [`Unknown`].
    pub(in crate::vehicle) const fn values(&self) -> Vector {
        [
            self.ln_suction_pa,
            self.ln_discharge_pa,
            self.suction,
            self.demand,
            self.intake_k,
            self.intake_humidity,
            self.ln_rear,
        ]
    }

    pub(in crate::vehicle) const fn of(values: Vector) -> Self {
        let [
            ln_suction_pa,
            ln_discharge_pa,
            suction,
            demand,
            intake_k,
            intake_humidity,
            ln_rear,
        ] = values;
        Self {
            ln_suction_pa,
            ln_discharge_pa,
            suction,
            demand,
            intake_k,
            intake_humidity,
            ln_rear,
        }
    }
}
