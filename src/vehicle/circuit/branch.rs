//! One evaporator with its expansion device: the heat from its stream, and the flow that the device would pass.

use super::plant::{Branch, Metering, Plant, Warmth};
use super::unknowns::Point;
use super::upper::Upper;
use crate::error::Error;
use crate::vehicle::parts::co2_metering::{best_pa, given_up, orifice_kg_s};
use crate::vehicle::parts::evaporator::{Evaporation, Feed, Stream};
use crate::vehicle::parts::expansion::{Bulb, Metered, Upstream};
use crate::vehicle::working_fluid::equilibrium::Saturation;

impl Plant<'_> {
    fn stream(&self, branch: &Branch, point: &Point) -> Stream {
        match branch.warmth {
            Warmth::Air { flow_kg_s, flow_ratio } => Stream {
                t_k: point.intake_k,
                humidity: point.intake_humidity,
                flow_kg_s,
                flow_ratio,
                cp_j_kg_k: self.air_cp_j_kg_k,
                humid: true,
                p_pa: self.air_pa,
            },
            Warmth::Coolant {
                t_k,
                flow_kg_s,
                cp_j_kg_k,
            } => Stream {
                t_k,
                humidity: 0.0,
                flow_kg_s,
                flow_ratio: 1.0,
                cp_j_kg_k,
                humid: false,
                p_pa: self.air_pa,
            },
        }
    }

    pub(in crate::vehicle) fn evaporate(
        &self,
        branch: &Branch,
        point: &Point,
        feed: &Feed,
        evaporating: &Saturation,
        cp: f64,
    ) -> Result<Evaporation, Error> {
        branch
            .coil
            .evaporate(&self.fluid, feed, evaporating, cp, &self.stream(branch, point))
    }

    pub(in crate::vehicle) fn outlet_k(&self, outlet: &Saturation, h_j_kg: f64, cp: f64) -> f64 {
        if h_j_kg > outlet.vapour_j_kg {
            outlet.dew_k + (h_j_kg - outlet.vapour_j_kg) / cp
        } else {
            outlet.boiling_k(h_j_kg)
        }
    }

    /// Residual and opening of an expansion device at this flow.
    pub(in crate::vehicle) fn passes(
        &self,
        branch: &Branch,
        upper: &Upper,
        downstream_pa: f64,
        outlet_k: f64,
        flow_kg_s: f64,
    ) -> Result<Metered, Error> {
        let upstream = Upstream {
            saturation: &upper.liquid,
            t_k: upper.liquid_k,
            rho_kg_m3: upper.liquid_kg_m3,
            downstream_pa,
        };
        match &branch.metering {
            Metering::Valve(valve) => {
                let opening = valve.opening(&Bulb {
                    p_pa: upper.outlet.p_pa,
                    t_k: outlet_k,
                })?;
                Ok(Metered {
                    residual: libm::log(valve.flow_kg_s(&upstream, opening) / flow_kg_s),
                    opening,
                })
            }
            Metering::Orifice(orifice) => {
                let metered = if self.fluid.is_transcritical() {
                    orifice_kg_s(orifice, &self.fluid, &upstream)?
                } else {
                    orifice.flow_kg_s(&self.fluid, &upstream)?
                };
                Ok(Metered {
                    residual: libm::log(metered / flow_kg_s),
                    opening: orifice.free,
                })
            }
            Metering::Electronic(valve) => {
                let set_pa =
                    best_pa(&self.fluid, upper.cooled_k, upper.outlet.dew_k)? * given_up(outlet_k - upper.outlet.dew_k);
                let full_kg_s = valve.full_kg_s(&upstream, upper.liquid.p_pa);
                Ok(valve.residual(upper.condenser_pa, set_pa, flow_kg_s, full_kg_s))
            }
        }
    }
}
