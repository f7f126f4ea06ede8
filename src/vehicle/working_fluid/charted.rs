//! The fluid where charts replace its equation of state.

use super::co2_charts::{Charted, Isobar, Side};
use super::equilibrium::{Saturation, State};
use super::pure::{SLICE_K, Single};
use crate::error::Error;

impl Single {
    /// The slice about the pseudo-critical temperature, by the charts; `None` beyond them.
    pub(in crate::vehicle) fn charted_slice(&self, p_pa: f64, t_k: f64) -> Option<Saturation> {
        let isobar = Isobar::of(p_pa, self.pure.critical_p_pa, Side::Vapour, 0.0)?;
        let read = |charted: &Charted| (charted.t_k, charted.t_per_h);
        let (liquid_j_kg, liquid) = isobar.find(-30e3 + self.critical_j_kg, t_k - SLICE_K, read)?;
        let (vapour_j_kg, vapour) = isobar.find(liquid_j_kg + 20e3, t_k + SLICE_K, read)?;
        Some(Saturation {
            p_pa,
            bubble_k: t_k - SLICE_K,
            dew_k: t_k + SLICE_K,
            liquid_j_kg,
            vapour_j_kg,
            liquid_j_kg_k: liquid.s_j_kg_k,
            vapour_j_kg_k: vapour.s_j_kg_k,
            liquid_kg_m3: libm::exp(liquid.ln_rho),
            vapour_kg_m3: libm::exp(vapour.ln_rho),
        })
    }

    /// A state next to the critical pressure, from those on the isobars at both ends of that range: the charts meet there to
    /// 0.2 K only, and a balance may have no root across a step. `None` elsewhere.
    pub(in crate::vehicle) fn across(
        &self,
        saturation: &Saturation,
        at: impl Fn(&Self, &Saturation) -> Result<State, Error>,
    ) -> Option<Result<State, Error>> {
        let [low, high] = self.bridge.as_ref()?;
        let p_pa = saturation.p_pa;
        if !(p_pa > low.p_pa && p_pa < high.p_pa) {
            return None;
        }
        let between = || {
            let (below, above) = (at(self, low)?, at(self, high)?);
            let part = (p_pa - low.p_pa) / (high.p_pa - low.p_pa);
            let mix = |below: f64, above: f64| below + part * (above - below);
            let h_j_kg = mix(below.h_j_kg, above.h_j_kg);
            let t_k = mix(below.t_k, above.t_k);
            let beyond = if t_k > self.pure.critical_t_k { 1.0 } else { 0.0 };
            let vapour = ((h_j_kg - saturation.liquid_j_kg) / saturation.latent_j_kg()).clamp(0.0, 1.0);
            Ok(State {
                t_k,
                h_j_kg,
                s_j_kg_k: mix(below.s_j_kg_k, above.s_j_kg_k),
                rho_kg_m3: 1.0 / mix(1.0 / below.rho_kg_m3, 1.0 / above.rho_kg_m3),
                cp_j_kg_k: mix(below.cp_j_kg_k, above.cp_j_kg_k),
                quality: if p_pa < self.pure.critical_p_pa { vapour } else { beyond },
            })
        };
        Some(between())
    }

    /// The isobar of `saturation` on one side of its two phases, in the charts; `None` where they have none.
    pub(in crate::vehicle) fn isobar(&self, saturation: &Saturation, side: Side) -> Option<Isobar> {
        let edge_j_kg = match side {
            Side::Liquid => saturation.liquid_j_kg,
            Side::Vapour => saturation.vapour_j_kg,
        };
        self.transcritical?;
        Isobar::of(saturation.p_pa, self.pure.critical_p_pa, side, edge_j_kg)
    }

    /// A charted state as a state of the circuit.
    pub(in crate::vehicle) fn charted(&self, charted: &Charted, h_j_kg: f64) -> State {
        State {
            t_k: charted.t_k,
            h_j_kg,
            s_j_kg_k: charted.s_j_kg_k,
            rho_kg_m3: libm::exp(charted.ln_rho),
            cp_j_kg_k: 1.0 / charted.t_per_h,
            quality: if charted.t_k > self.pure.critical_t_k { 1.0 } else { 0.0 },
        }
    }

    /// The state at an enthalpy in one phase, by the charts; `None` where they have none.
    pub(in crate::vehicle) fn charted_at(&self, saturation: &Saturation, h_j_kg: f64) -> Option<State> {
        let two_phases = saturation.p_pa < self.pure.critical_p_pa;
        let side = if h_j_kg < saturation.liquid_j_kg {
            Side::Liquid
        } else {
            Side::Vapour
        };
        let mut state = self.charted(&self.isobar(saturation, side)?.at(h_j_kg)?, h_j_kg);
        if two_phases && side == Side::Vapour {
            state.quality = 1.0;
        }
        Some(state)
    }
}

#[cfg(test)]
mod tests {
    use crate::names::{Reference, Refrigerant};
    use crate::vehicle::working_fluid::pure::Single;

    /// The charts of R-744 against its equation of state, over what a gas cooler and a compressor ask for.
    #[test]
    fn charts_follow_the_equation() {
        let fluid = Single::of(Refrigerant::R744).unwrap();
        let (shift_h, shift_s) = fluid.transcritical.unwrap();
        let critical_pa = fluid.pure.critical_p_pa;
        let (mut worst, mut near) = ([0.0f64; 3], [0.0f64; 3]);
        for step in 0..240 {
            let p_pa = 2.8e6 + (14.4e6 - 2.8e6) * f64::from(step) / 239.0;
            let saturation = fluid.saturation(p_pa).unwrap();
            for column in 0..160 {
                let h_j_kg = fluid.critical_j_kg - 150e3 + 3.1e3 * f64::from(column);
                let inside = (saturation.liquid_j_kg..saturation.vapour_j_kg).contains(&h_j_kg);
                if p_pa < critical_pa && (inside || h_j_kg < saturation.liquid_j_kg - 78e3) {
                    continue;
                }
                let Some(found) = fluid.charted_at(&saturation, h_j_kg) else {
                    continue;
                };
                let exact = fluid.pure.state_ph(p_pa, h_j_kg + shift_h, Reference::Iir).unwrap();
                let off = [
                    libm::fabs(found.t_k - exact.t_k),
                    libm::fabs(found.rho_kg_m3 / exact.rho_kg_m3 - 1.0),
                    libm::fabs(found.s_j_kg_k - (exact.s_j_kg_k - shift_s)),
                ];
                let worst = if libm::fabs(p_pa / critical_pa - 1.0) < 0.02 {
                    &mut near
                } else {
                    &mut worst
                };
                for (worst, off) in worst.iter_mut().zip(off) {
                    *worst = worst.max(off);
                }
            }
        }
        std::println!("{worst:?}, near the critical pressure {near:?}");
        assert!(worst[0] < 0.04 && worst[1] < 0.002 && worst[2] < 0.4, "{worst:?}");
        assert!(near[0] < 0.2 && near[1] < 0.003 && near[2] < 1.0, "{near:?}");
    }
}
