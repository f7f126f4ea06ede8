//! A mixture in the circuit: a blend, or a charge of two refrigerants.
//!
//! Its bubble and dew lines and its superheated vapour as Chebyshev polynomials, over a coordinate of pressure in which they
//! are smooth up to near the critical point, and for the vapour also over a coordinate of superheat. A state then costs less
//! than one of a pure refrigerant, whatever the number of components. Within 0.0003 K, 0.2 kJ/kg and 0.2 % of density of the
//! mixture model; a unit test in `made` checks that.
//!
//! Between the lines temperature is linear in enthalpy from bubble to dew (R-407C is within 0.1 K of that, R-134a with R-290
//! within 0.8 K), and what is called quality here is the share of the enthalpy of evaporation. Compressed liquid is taken as
//! saturated at its temperature, as for pure refrigerants.

use super::equilibrium::{Saturation, State};
use crate::error::Error;
use crate::names::{ErrorKind, Quantity};
use crate::numerics::sqrt;

/// Nodes over pressure and over superheat.
pub(in crate::vehicle) const ROWS: usize = 15;
pub(in crate::vehicle) const COLUMNS: usize = 9;
/// What the lines give, see [`Saturation`]: each of the two its temperature, enthalpy, entropy, logarithm of density.
pub(in crate::vehicle) const LINES: usize = 8;
/// What the vapour gives at each node of superheat: enthalpy, entropy, logarithm of density.
pub(in crate::vehicle) const FIGURES: usize = 3 * COLUMNS;

/// Weight of the root in the coordinate of pressure: `ln p - STRETCH sqrt(1 - p / turn)`.
const STRETCH: f64 = 2.1;
/// The superheat up to which the vapour is fitted, K; beyond it the specific heat is taken constant.
pub(in crate::vehicle) const HOTTEST_K: f64 = 120.0;
/// Parameter of the coordinate of superheat: half of its nodes lie below `CLOSE / (1 + 2 CLOSE)` of the range, 19 %.
const CLOSE: f64 = 0.3;
/// Steps that Newton's method may take; four are usual.
const MOST_STEPS: usize = 40;

const BUBBLE_K: usize = 0;
const LIQUID_J_KG: usize = 1;
const LIQUID_LN_RHO: usize = 3;
const DEW_K: usize = 4;

/// A mixture of fixed composition.
#[derive(Clone, Debug)]
pub(in crate::vehicle) struct Mixed {
    /// Critical temperature (K) and pressure (Pa), or estimates of them.
    pub critical: (f64, f64),
    /// Condensing and boiling conductance per those of R-134a.
    pub ratios: (f64, f64),
    /// The pressures between which it is modelled, Pa.
    pub pressures: (f64, f64),
    /// The pressure at which the root in the coordinate vanishes, Pa.
    pub turn_pa: f64,
    /// Coefficients of the lines.
    pub lines: [[f64; LINES]; ROWS],
    /// Coefficients of the vapour.
    pub vapour: [[f64; FIGURES]; ROWS],
}

/// The vapour at one pressure.
struct Isobar {
    dew_k: f64,
    /// Coefficients over superheat of enthalpy, entropy and logarithm of density.
    over: [[f64; 3]; COLUMNS],
}

impl Mixed {
    /// The coordinate of a pressure before it is scaled, and its slope over the logarithm of pressure.
    fn stretched(&self, p_pa: f64) -> (f64, f64) {
        let root = sqrt((1.0 - p_pa / self.turn_pa).max(1e-6));
        let slope = 1.0 + 0.5 * STRETCH * p_pa / self.turn_pa / root;
        (libm::log(p_pa) - STRETCH * root, slope)
    }

    /// The coordinate of a pressure, -1 at the lowest and 1 at the highest, and its slope over the logarithm of pressure.
    fn coordinate(&self, p_pa: f64) -> (f64, f64) {
        let (low, high) = (self.stretched(self.pressures.0).0, self.stretched(self.pressures.1).0);
        let (here, slope) = self.stretched(p_pa.clamp(self.pressures.0, self.pressures.1));
        let scale = 2.0 / (high - low);
        ((here - low) * scale - 1.0, slope * scale)
    }

    /// The pressure of a coordinate, Pa, by Newton's method in the logarithm, in which the coordinate is convex.
    pub(in crate::vehicle) fn pressure_pa(&self, y: f64) -> f64 {
        let mut ln_pa = libm::log(self.pressures.1);
        for _ in 0..MOST_STEPS {
            let (at, slope) = self.coordinate(libm::exp(ln_pa));
            let step = (at - y) / slope;
            ln_pa -= step;
            if libm::fabs(step) < 1e-9 {
                break;
            }
        }
        libm::exp(ln_pa).clamp(self.pressures.0, self.pressures.1)
    }

    /// One of the lines at a coordinate of pressure, and its slope.
    fn line(&self, which: usize, y: f64) -> (f64, f64) {
        let (mut b, mut c, mut db, mut dc) = (0.0, 0.0, 0.0, 0.0);
        for row in self.lines[1..].iter().rev() {
            (db, dc) = (2.0 * b + 2.0 * y * db - dc, db);
            (b, c) = (row[which] + 2.0 * y * b - c, b);
        }
        (self.lines[0][which] + y * b - c, b + y * db - dc)
    }

    /// The coordinate at which a rising line has a value, from the coordinate `from` on; the end beyond the ends.
    fn where_line(&self, which: usize, value: f64, from: f64) -> f64 {
        let mut y = from;
        for _ in 0..MOST_STEPS {
            let (at, slope) = self.line(which, y);
            let next = (y - (at - value) / slope).clamp(-1.0, 1.0);
            let step = libm::fabs(next - y);
            y = next;
            if step < 1e-8 {
                break;
            }
        }
        y
    }

    fn isobar(&self, saturation: &Saturation) -> Isobar {
        let found = series(&self.vapour, self.coordinate(saturation.p_pa).0);
        Isobar {
            dew_k: saturation.dew_k,
            over: core::array::from_fn(|k| [found[k], found[COLUMNS + k], found[2 * COLUMNS + k]]),
        }
    }

    /// Equilibrium at a pressure.
    ///
    /// Errors: `OutOfRange` outside the pressures.
    pub(in crate::vehicle) fn saturation(&self, p_pa: f64) -> Result<Saturation, Error> {
        let (low, high) = self.pressures;
        if !(low * (1.0 - 1e-9)..=high * (1.0 + 1e-9)).contains(&p_pa) {
            return Err(crate::range::Range::new(Quantity::AbsolutePressure, low, high)
                .check(p_pa)
                .err()
                .unwrap_or(Error::of(ErrorKind::NotAvailable, Quantity::AbsolutePressure)));
        }
        let [
            bubble_k,
            liquid_h,
            liquid_s,
            liquid_ln,
            dew_k,
            vapour_h,
            vapour_s,
            vapour_ln,
        ] = series(&self.lines, self.coordinate(p_pa).0);
        Ok(Saturation {
            p_pa,
            bubble_k,
            dew_k,
            liquid_j_kg: liquid_h,
            vapour_j_kg: vapour_h,
            liquid_j_kg_k: liquid_s,
            vapour_j_kg_k: vapour_s,
            liquid_kg_m3: libm::exp(liquid_ln),
            vapour_kg_m3: libm::exp(vapour_ln),
        })
    }

    /// Dew temperature at a pressure, K.
    pub(in crate::vehicle) fn dew_k(&self, p_pa: f64) -> f64 {
        self.line(DEW_K, self.coordinate(p_pa).0).0
    }

    /// Bubble temperature at a pressure, K.
    pub(in crate::vehicle) fn bubble_k(&self, p_pa: f64) -> f64 {
        self.line(BUBBLE_K, self.coordinate(p_pa).0).0
    }

    /// Dew pressure at a temperature, Pa; that of the end of the line beyond its ends.
    pub(in crate::vehicle) fn dew_pa(&self, t_k: f64) -> f64 {
        self.pressure_pa(self.where_line(DEW_K, t_k, 0.0))
    }

    /// Bubble pressure at a temperature, Pa; that of the end of the line beyond its ends.
    pub(in crate::vehicle) fn bubble_pa(&self, t_k: f64) -> f64 {
        self.pressure_pa(self.where_line(BUBBLE_K, t_k, 0.0))
    }

    /// The temperature at which boiling liquid has the enthalpy `h_j_kg`, below that of `saturation`, K.
    pub(in crate::vehicle) fn liquid_k(&self, saturation: &Saturation, h_j_kg: f64) -> f64 {
        let top = self.coordinate(saturation.p_pa).0;
        let y = self.where_line(LIQUID_J_KG, h_j_kg, top).min(top);
        self.line(BUBBLE_K, y).0
    }

    /// Enthalpy and density of liquid at `t_k` under the pressure of `saturation`.
    pub(in crate::vehicle) fn subcooled(&self, saturation: &Saturation, t_k: f64) -> (f64, f64) {
        let top = self.coordinate(saturation.p_pa).0;
        let y = self.where_line(BUBBLE_K, t_k, top).min(top);
        (self.line(LIQUID_J_KG, y).0, libm::exp(self.line(LIQUID_LN_RHO, y).0))
    }

    /// Specific heat of liquid along the bubble line at `saturation`, J/(kg K).
    pub(in crate::vehicle) fn liquid_cp_j_kg_k(&self, saturation: &Saturation) -> f64 {
        let y = self.coordinate(saturation.p_pa).0;
        self.line(LIQUID_J_KG, y).1 / self.line(BUBBLE_K, y).1
    }

    /// Specific heat of saturated vapour, J/(kg K).
    pub(in crate::vehicle) fn dew_cp_j_kg_k(&self, saturation: &Saturation) -> f64 {
        self.isobar(saturation).at(0.0).cp_j_kg_k
    }

    /// The state at the suction coordinate `x`, as for a pure refrigerant.
    pub(in crate::vehicle) fn at_coordinate(&self, saturation: &Saturation, x: f64) -> State {
        if x < 0.0 {
            self.mixed(saturation, 1.0 + x)
        } else {
            self.isobar(saturation).at(200.0 * x)
        }
    }

    /// The state at the pressure of `saturation` and an entropy.
    ///
    /// Errors: `NoConvergence`.
    pub(in crate::vehicle) fn at_entropy(&self, saturation: &Saturation, s_j_kg_k: f64) -> Result<State, Error> {
        let over = s_j_kg_k - saturation.vapour_j_kg_k;
        if over < 0.0 {
            return Ok(self.mixed(saturation, saturation.share_at_entropy(s_j_kg_k)));
        }
        let read = |state: &State, slopes: [f64; 3]| (state.s_j_kg_k - s_j_kg_k, slopes[1]);
        self.isobar(saturation).find(over * saturation.dew_k / 1_000.0, read)
    }

    /// The state at the pressure of `saturation` and an enthalpy.
    ///
    /// Errors: `NoConvergence`.
    pub(in crate::vehicle) fn at_enthalpy(&self, saturation: &Saturation, h_j_kg: f64) -> Result<State, Error> {
        if h_j_kg < saturation.liquid_j_kg {
            let top = self.coordinate(saturation.p_pa).0;
            let y = self.where_line(LIQUID_J_KG, h_j_kg, top).min(top);
            let line = series(&self.lines, y);
            return Ok(State {
                t_k: line[BUBBLE_K],
                h_j_kg,
                s_j_kg_k: line[2],
                rho_kg_m3: libm::exp(line[LIQUID_LN_RHO]),
                cp_j_kg_k: f64::NAN,
                quality: 0.0,
            });
        }
        if h_j_kg < saturation.vapour_j_kg {
            let share = (h_j_kg - saturation.liquid_j_kg) / saturation.latent_j_kg();
            return Ok(self.mixed(saturation, share));
        }
        let read = |state: &State, slopes: [f64; 3]| (state.h_j_kg - h_j_kg, slopes[0]);
        self.isobar(saturation)
            .find((h_j_kg - saturation.vapour_j_kg) / 1_000.0, read)
    }

    /// Two-phase at a share of the enthalpy of evaporation.
    fn mixed(&self, saturation: &Saturation, share: f64) -> State {
        let between = |liquid: f64, vapour: f64| liquid + share * (vapour - liquid);
        State {
            t_k: between(saturation.bubble_k, saturation.dew_k),
            h_j_kg: between(saturation.liquid_j_kg, saturation.vapour_j_kg),
            s_j_kg_k: saturation.entropy_at_share(share),
            rho_kg_m3: 1.0 / between(1.0 / saturation.liquid_kg_m3, 1.0 / saturation.vapour_kg_m3),
            cp_j_kg_k: self.dew_cp_j_kg_k(saturation),
            quality: share,
        }
    }
}

impl Isobar {
    /// The vapour at a superheat.
    fn at(&self, superheat_k: f64) -> State {
        self.with_slopes(superheat_k).0
    }

    /// The vapour at a superheat, and the slopes over it of enthalpy, entropy and logarithm of density.
    fn with_slopes(&self, superheat_k: f64) -> (State, [f64; 3]) {
        let over_k = (superheat_k - HOTTEST_K).max(0.0);
        let u = (superheat_k - over_k) / HOTTEST_K;
        let z = 2.0 * (1.0 + CLOSE) * u / (u + CLOSE) - 1.0;
        let z_per_k = 2.0 * (1.0 + CLOSE) * CLOSE / ((u + CLOSE) * (u + CLOSE) * HOTTEST_K);
        let (mut b, mut c, mut db, mut dc) = ([0.0; 3], [0.0; 3], [0.0; 3], [0.0; 3]);
        for row in self.over[1..].iter().rev() {
            for j in 0..3 {
                (db[j], dc[j]) = (2.0 * b[j] + 2.0 * z * db[j] - dc[j], db[j]);
                (b[j], c[j]) = (row[j] + 2.0 * z * b[j] - c[j], b[j]);
            }
        }
        let value: [f64; 3] = core::array::from_fn(|j| self.over[0][j] + z * b[j] - c[j]);
        let slope: [f64; 3] = core::array::from_fn(|j| (b[j] + z * db[j] - dc[j]) * z_per_k);
        let t_k = self.dew_k + superheat_k;
        let cp_j_kg_k = slope[0];
        let mut state = State {
            t_k,
            h_j_kg: value[0],
            s_j_kg_k: value[1],
            rho_kg_m3: libm::exp(value[2]),
            cp_j_kg_k,
            quality: 1.0,
        };
        if over_k == 0.0 {
            return (state, slope);
        }
        let ratio = t_k / (t_k - over_k);
        state.h_j_kg += cp_j_kg_k * over_k;
        state.s_j_kg_k += cp_j_kg_k * libm::log(ratio);
        state.rho_kg_m3 /= ratio;
        (state, [cp_j_kg_k, cp_j_kg_k / t_k, -1.0 / t_k])
    }

    /// The vapour at which `read`, which gives a rising deviation and its slope, vanishes, by Newton's method.
    ///
    /// Errors: `NoConvergence` with the last step.
    fn find(&self, superheat_k: f64, read: impl Fn(&State, [f64; 3]) -> (f64, f64)) -> Result<State, Error> {
        let mut at_k = superheat_k;
        let mut step_k = f64::INFINITY;
        for _ in 0..MOST_STEPS {
            let (state, slopes) = self.with_slopes(at_k);
            let (off, slope) = read(&state, slopes);
            step_k = off / slope;
            at_k = (at_k - step_k).max(0.0);
            // Quadratic: what is left after this step is below rounding.
            if libm::fabs(step_k) < 1e-6 {
                return Ok(self.at(at_k));
            }
        }
        Err(Error::no_convergence(libm::fabs(step_k), 1e-6))
    }
}

/// The superheat of a place between -1 and 1 in the coordinate of superheat, K.
pub(in crate::vehicle) fn superheat_k(z: f64) -> f64 {
    let v = 0.5 * (z + 1.0);
    HOTTEST_K * CLOSE * v / (1.0 + CLOSE - v)
}

/// Chebyshev series of which `rows` holds the coefficients.
fn series<const N: usize>(rows: &[[f64; N]; ROWS], y: f64) -> [f64; N] {
    let (mut b, mut c) = ([0.0; N], [0.0; N]);
    for row in rows[1..].iter().rev() {
        for j in 0..N {
            (b[j], c[j]) = (row[j] + 2.0 * y * b[j] - c[j], b[j]);
        }
    }
    core::array::from_fn(|j| rows[0][j] + y * b[j] - c[j])
}
