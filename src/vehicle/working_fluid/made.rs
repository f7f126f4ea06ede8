//! A mixture for the circuit, made from the mixture model in about half a millisecond.

use super::film;
use super::mixed::{COLUMNS, FIGURES, HOTTEST_K, LINES, Mixed, ROWS, superheat_k};
use crate::error::Error;
use crate::mixture::{self, Fixed, Incipient, MOST_COMPONENTS, Mixture, Side};
use crate::names::{ErrorKind, Quantity, Refrigerant};
use crate::saturation;

/// The coldest dew point and the coldest bubble point that are modelled, K.
const COLDEST_K: (f64, f64) = (208.15, 194.0);
/// The highest pressure per the critical one, the factor on it at each further try, and the number of tries: the critical
/// pressure of a charge that is not in the tables is only estimated.
const HIGHEST: f64 = 0.9;
const LOWER: f64 = 0.94;
const TRIES: usize = 8;
/// Pressure at which the root in the coordinate of pressure vanishes, per the critical pressure.
const TURN: f64 = 1.02;
/// The least share of the mass that counts.
const LEAST: f64 = 1e-6;

/// What a charge is made of.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Composition {
    parts: [(Refrigerant, f64); MOST_COMPONENTS],
    count: usize,
    /// The blend that it is, where it is one.
    listed: Option<Refrigerant>,
}

impl Composition {
    /// The refrigerant, with the mass fraction `share` of another in it.
    ///
    /// Errors: `OutOfRange` for more components than a mixture may have.
    pub(in crate::vehicle) fn of(own: Refrigerant, other: Option<(Refrigerant, f64)>) -> Result<Self, Error> {
        let mut made = Self {
            parts: [(own, 0.0); MOST_COMPONENTS],
            count: 0,
            listed: None,
        };
        match other {
            Some((other, share)) if share > LEAST && other != own => {
                if share < 1.0 - LEAST {
                    made.pour(own, 1.0 - share)?;
                } else {
                    made.listed = Some(other);
                }
                made.pour(other, share)?;
            }
            Some(_) | None => {
                made.listed = Some(own);
                made.pour(own, 1.0)?;
            }
        }
        Ok(made)
    }

    fn pour(&mut self, refrigerant: Refrigerant, mass: f64) -> Result<(), Error> {
        match saturation::blend(refrigerant) {
            Some(blend) => blend
                .parts
                .iter()
                .try_for_each(|part| self.add(part.refrigerant, mass * part.mass_fraction)),
            None => self.add(refrigerant, mass),
        }
    }

    fn add(&mut self, refrigerant: Refrigerant, mass: f64) -> Result<(), Error> {
        if let Some(part) = self.parts[..self.count].iter_mut().find(|part| part.0 == refrigerant) {
            part.1 += mass;
            return Ok(());
        }
        let Some(part) = self.parts.get_mut(self.count) else {
            return Err(Error::of(ErrorKind::NotAvailable, Quantity::Name));
        };
        *part = (refrigerant, mass);
        self.count += 1;
        Ok(())
    }

    /// The refrigerant of the list that it is, pure or blend; `None` for a mixture of two of them.
    pub(in crate::vehicle) fn listed(&self) -> Option<Refrigerant> {
        self.listed
    }

    fn parts(&self) -> &[(Refrigerant, f64)] {
        &self.parts[..self.count]
    }

    /// Whether it holds this refrigerant.
    pub(in crate::vehicle) fn holds(&self, refrigerant: Refrigerant) -> bool {
        self.parts().iter().any(|part| part.0 == refrigerant)
    }
}

/// The mixture model of a composition.
struct Model {
    mixture: Mixture<f64>,
    z: [f64; MOST_COMPONENTS],
    count: usize,
}

impl Model {
    fn of(composition: &Composition) -> Result<Self, Error> {
        let parts = composition.parts();
        let mut components = [mixture::component_of(Refrigerant::R134a)?; MOST_COMPONENTS];
        let mut z = [0.0; MOST_COMPONENTS];
        let mut moles = 0.0;
        for ((component, z), (refrigerant, mass)) in components.iter_mut().zip(&mut z).zip(parts) {
            *component = mixture::component_of(*refrigerant)?;
            *z = mass / component.fluid.equation.molar_mass;
            moles += *z;
        }
        z.iter_mut().for_each(|z| *z /= moles);
        Ok(Self {
            mixture: Mixture::new(&components[..parts.len()])?,
            z,
            count: parts.len(),
        })
    }

    fn z(&self) -> &[f64] {
        &self.z[..self.count]
    }

    /// Critical temperature (K) and pressure (Pa) by Kay's rule, the means by moles.
    ///
    /// Source: Kay 1936, Ind. Eng. Chem. 28, 1014.
    fn about_critical(&self) -> (f64, f64) {
        let parts = self.mixture.components().iter().zip(self.z());
        parts.fold((0.0, 0.0), |(t, p), (component, z)| {
            (t + z * component.critical_t_k, p + z * component.critical_p_pa)
        })
    }

    /// The point of one line at a pressure, from its neighbour where that leads there.
    fn point(&self, side: Side, p_pa: f64, near: &Incipient<f64>) -> Result<Incipient<f64>, Error> {
        let fixed = Fixed::Pressure(p_pa);
        let followed = self.mixture.incipient(self.z(), fixed, near).ok().filter(|found| {
            let is_liquid = found.rho_mol_m3 > found.new_rho_mol_m3(&self.mixture);
            is_liquid == (side == Side::Bubble)
        });
        followed.map_or_else(|| self.mixture.point(self.z(), side, fixed), Ok)
    }

    /// Temperature, enthalpy, entropy and logarithm of density (kg/m3) of the phase of the charge's composition.
    fn figures(&self, t_k: f64, rho_mol_m3: f64) -> [f64; 4] {
        let mut rho = [1.0; MOST_COMPONENTS];
        for (rho, z) in rho.iter_mut().zip(self.z()) {
            *rho = z * rho_mol_m3;
        }
        let found = self.mixture.properties(t_k, &rho);
        let molar_kg = self.mixture.molar_mass(&rho);
        [t_k, found.h_j_kg, found.s_j_kg_k, libm::log(rho_mol_m3 * molar_kg)]
    }
}

impl Mixed {
    /// The mixture of a composition.
    ///
    /// Errors: `NotAvailable` for a component that no mixture holds; those of the mixture model where it has no line up to
    /// pressures of use.
    pub(in crate::vehicle) fn of(composition: &Composition) -> Result<Self, Error> {
        let model = Model::of(composition)?;
        let critical = match composition.listed().and_then(saturation::blend) {
            Some(blend) => (blend.critical_t_k, blend.critical_p_pa),
            None => model.about_critical(),
        };
        let coldest = |side, t_k| model.mixture.point(model.z(), side, Fixed::Temperature(t_k));
        let (dew, bubble) = (coldest(Side::Dew, COLDEST_K.0)?, coldest(Side::Bubble, COLDEST_K.1)?);
        let weigh = |of: fn(Refrigerant) -> f64| composition.parts().iter().map(|(r, mass)| mass * of(*r)).sum();
        let mut mixed = Self {
            critical,
            ratios: (weigh(film::condensing_ratio), weigh(film::boiling_ratio)),
            pressures: (dew.p_pa.max(bubble.p_pa), HIGHEST * critical.1),
            turn_pa: TURN * critical.1,
            lines: [[0.0; LINES]; ROWS],
            vapour: [[0.0; FIGURES]; ROWS],
        };
        let mut outcome = mixed.fit(&model, (bubble, dew));
        for _ in 0..TRIES {
            if outcome.is_ok() {
                break;
            }
            mixed.pressures.1 *= LOWER;
            outcome = mixed.fit(&model, (bubble, dew));
        }
        outcome.map(|()| mixed)
    }

    /// Fits the polynomials between the pressures, from a bubble and a dew point near the lowest on.
    fn fit(&mut self, model: &Model, (mut bubble, mut dew): (Incipient<f64>, Incipient<f64>)) -> Result<(), Error> {
        for row in 0..ROWS {
            let p_pa = self.pressure_pa(node(row, ROWS));
            let liquid = model.point(Side::Bubble, p_pa, &bubble)?;
            let vapour = model.point(Side::Dew, p_pa, &dew)?;
            let at_dew = model.figures(vapour.t_k, vapour.rho_mol_m3);
            self.lines[row][..4].copy_from_slice(&model.figures(liquid.t_k, liquid.rho_mol_m3));
            self.lines[row][4..].copy_from_slice(&at_dew);
            for column in 0..COLUMNS {
                let figures = if column == 0 {
                    at_dew
                } else {
                    let t_k = vapour.t_k + superheat_k(node(column, COLUMNS)).min(HOTTEST_K);
                    let found = model.mixture.one_phase(model.z(), t_k, p_pa, Side::Dew)?;
                    model.figures(t_k, found.rho_mol_m3)
                };
                for (which, figure) in figures[1..].iter().enumerate() {
                    self.vapour[row][which * COLUMNS + column] = *figure;
                }
            }
            (bubble, dew) = (liquid, vapour);
        }
        for row in &mut self.vapour {
            for which in 0..3 {
                let values: [f64; COLUMNS] = core::array::from_fn(|k| row[which * COLUMNS + k]);
                row[which * COLUMNS..(which + 1) * COLUMNS].copy_from_slice(&coefficients(&values));
            }
        }
        over_pressure(&mut self.lines);
        over_pressure(&mut self.vapour);
        Ok(())
    }
}

/// The nodes of a Chebyshev series, from -1 to 1 with both ends.
fn node(k: usize, count: usize) -> f64 {
    -cosine(k, count - 1)
}

/// `cos(k pi / 8)` for the columns and `cos(k pi / 14)` for the rows, up to `pi / 2`.
const EIGHTHS: [f64; COLUMNS / 2 + 1] = [
    1.0,
    0.9238795325112867,
    core::f64::consts::FRAC_1_SQRT_2,
    0.3826834323650898,
    0.0,
];
const FOURTEENTHS: [f64; ROWS / 2 + 1] = [
    1.0,
    0.9749279121818236,
    0.9009688679024191,
    0.7818314824680298,
    0.6234898018587335,
    0.4338837391175581,
    0.2225209339563144,
    0.0,
];

/// `cos(count pi / parts)`.
fn cosine(count: usize, parts: usize) -> f64 {
    let turned = count % (2 * parts);
    let count = turned.min(2 * parts - turned);
    let cosines = if parts == COLUMNS - 1 {
        &EIGHTHS[..]
    } else {
        &FOURTEENTHS[..]
    };
    match cosines.get(count) {
        Some(cosine) => *cosine,
        None => -cosines[parts - count],
    }
}

/// The coefficients of the series that has these values at its nodes.
fn coefficients<const N: usize>(values: &[f64; N]) -> [f64; N] {
    let last = N - 1;
    core::array::from_fn(|j| {
        let mut sum = 0.0;
        for (k, value) in values.iter().enumerate() {
            let end = if k == 0 || k == last { 0.5 } else { 1.0 };
            // The angle of the k-th node is pi - k pi / last.
            sum += end * value * cosine(j * (last - k), last);
        }
        let end = if j == 0 || j == last { 0.5 } else { 1.0 };
        2.0 * end * sum / last as f64
    })
}

/// Values at the nodes of pressure into coefficients over pressure, each column for itself.
fn over_pressure<const N: usize>(rows: &mut [[f64; N]; ROWS]) {
    for column in 0..N {
        let found = coefficients(&core::array::from_fn::<f64, ROWS, _>(|row| rows[row][column]));
        for (row, found) in rows.iter_mut().zip(found) {
            row[column] = found;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::mixture::Boiling;

    #[test]
    fn the_cosines_are_cosines() {
        for parts in [COLUMNS - 1, ROWS - 1] {
            for count in 0..10 * parts {
                let angle = core::f64::consts::PI * count as f64 / parts as f64;
                assert!((cosine(count, parts) - libm::cos(angle)).abs() < 1e-14);
            }
        }
    }

    /// The polynomials against the mixture model: lines and vapour over all pressures, and how even the glide is.
    fn off(composition: &Composition) -> ([f64; 3], f64) {
        let mixed = Mixed::of(composition).unwrap();
        let model = Model::of(composition).unwrap();
        let point = |side, p_pa| model.mixture.point(model.z(), side, Fixed::Pressure(p_pa)).unwrap();
        let mut worst = [0.0f64; 3];
        let mut see = |found: [f64; 4], exact: [f64; 4]| {
            worst[0] = worst[0].max((found[0] - exact[0]).abs());
            worst[1] = worst[1]
                .max((found[1] - exact[1]).abs())
                .max(300.0 * (found[2] - exact[2]).abs());
            worst[2] = worst[2].max((found[3] - exact[3]).abs());
        };
        for step in 1..96 {
            let p_pa = mixed.pressure_pa(-1.0 + f64::from(step) / 48.0);
            let sat = mixed.saturation(p_pa).unwrap();
            let (liquid, vapour) = (point(Side::Bubble, p_pa), point(Side::Dew, p_pa));
            let found = [sat.bubble_k, sat.liquid_j_kg, sat.liquid_j_kg_k, sat.liquid_kg_m3.ln()];
            see(found, model.figures(liquid.t_k, liquid.rho_mol_m3));
            let found = [sat.dew_k, sat.vapour_j_kg, sat.vapour_j_kg_k, sat.vapour_kg_m3.ln()];
            see(found, model.figures(vapour.t_k, vapour.rho_mol_m3));
            for superheat_k in [1.0, 4.0, 9.0, 17.0, 30.0, 50.0, 80.0, 110.0] {
                let state = mixed.at_coordinate(&sat, superheat_k / 200.0);
                let exact = model.mixture.one_phase(model.z(), state.t_k, p_pa, Side::Dew).unwrap();
                let exact = model.figures(state.t_k, exact.rho_mol_m3);
                see([state.t_k, state.h_j_kg, state.s_j_kg_k, state.rho_kg_m3.ln()], exact);
                // Back from enthalpy and from entropy.
                let by_h = mixed.at_enthalpy(&sat, state.h_j_kg).unwrap();
                let by_s = mixed.at_entropy(&sat, state.s_j_kg_k).unwrap();
                assert!((by_h.t_k - state.t_k).abs() < 1e-8 && (by_s.t_k - state.t_k).abs() < 1e-8);
            }
        }
        let sat = mixed.saturation(1.5e6).unwrap();
        let (liquid, vapour) = (point(Side::Bubble, sat.p_pa), point(Side::Dew, sat.p_pa));
        let start = Boiling::between(model.z(), 0.5, &liquid, &vapour);
        let half = model
            .mixture
            .boiling(model.z(), Fixed::Pressure(sat.p_pa), 0.5, &start)
            .unwrap();
        let weighed = |volume: f64, rho| {
            let found = model.mixture.properties(half.t_k, rho);
            let mass = volume * found.rho_mol_m3 * model.mixture.molar_mass(rho);
            (mass, mass * found.h_j_kg)
        };
        let below = weighed(half.two.liquid_m3_mol, &half.two.liquid);
        let above = weighed(half.two.vapour_m3_mol, &half.two.vapour);
        let uneven_k = sat.boiling_k((below.1 + above.1) / (below.0 + above.0)) - half.t_k;
        (worst, uneven_k)
    }

    #[test]
    fn the_polynomials_follow_the_mixture_model() {
        let blend = |r| Composition::of(r, None).unwrap();
        let charge = |other, share| Composition::of(Refrigerant::R134a, Some((other, share))).unwrap();
        for composition in [
            blend(Refrigerant::R407C),
            blend(Refrigerant::R513A),
            blend(Refrigerant::R404A),
            charge(Refrigerant::R1234yf, 0.3),
            charge(Refrigerant::R22, 0.3),
            charge(Refrigerant::R12, 0.5),
            charge(Refrigerant::R290, 0.3),
            charge(Refrigerant::R290, 0.02),
        ] {
            let (worst, uneven_k) = off(&composition);
            std::println!("{:?} {worst:?} {uneven_k}", composition.parts());
            assert!(
                worst[0] < 3e-4 && worst[1] < 200.0 && worst[2] < 2e-3,
                "{composition:?} {worst:?}"
            );
            assert!(uneven_k.abs() < 0.8, "{composition:?} {uneven_k}");
        }
    }

    #[test]
    fn pressure_and_temperature_come_back() {
        let mixed = Mixed::of(&Composition::of(Refrigerant::R407C, None).unwrap()).unwrap();
        for step in 0..50 {
            let t_k = 215.0 + 2.5 * f64::from(step);
            assert!((mixed.dew_k(mixed.dew_pa(t_k)) - t_k).abs() < 1e-8);
            assert!((mixed.bubble_k(mixed.bubble_pa(t_k)) - t_k).abs() < 1e-8);
            let p_pa = mixed.dew_pa(t_k);
            let blend = saturation::blend(Refrigerant::R407C).unwrap();
            assert!((p_pa / blend.pressure_pa(Side::Dew, t_k).unwrap() - 1.0).abs() < 2e-4);
        }
    }
}
