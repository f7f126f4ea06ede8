//! The fixed flow of a printed manual: looks, then two pressures beside a chart, then the list of that pattern.
//!
//! Sources, all of the US Army. What to look at before any gauge (clutch, belt, condenser, air flow, leaks, sight glass), and
//! that a defect that is found is repaired at once: TM 9-2320-387-24-2, 14-4 and 14-5, and TM 9-2320-363-34-1, preliminary checks. Limits
//! of the high side, and the lower ones of the low side: TM 5-3805-291-23-1, table 1; the upper one of the low side, 45 psig,
//! is common practice, no source. What each pattern stands for: both low, charge; low side high and high side low, the
//! compressor, timed at rest: TM 9-2320-387-24-2, table 14-3; a restriction of the suction line, the drier, a high-side hose,
//! a valve stuck open or closed: TB 9-2320-360-13&P-1, pressures and frost. The order within a list, and all that no manual
//! names, are common practice, no source. At the end of a list the cheapest remaining repair comes next.

use crate::visit::Visit;
use crate::ways::by_price;
use crate::work::{Minutes, Work};
use coldloop::circuit::Reading;
use coldloop::diagnosis::{can_check, exists};
use coldloop::units::{Pressure, in_kelvins};
use coldloop::{Check, Fault, Observation};
use std::cmp::Ordering;

/// A look, the answer that points to a fault, and the fault.
type Sign = (Check, Observation, bool, Fault);

const AIRFLOW_FADES: Sign = (
    Check::WatchTwentyMinutes,
    Observation::AirflowFades,
    true,
    Fault::EvaporatorIcing,
);
const COMES_AND_GOES: Sign = (
    Check::WatchTwentyMinutes,
    Observation::CoolingComesAndGoes,
    true,
    Fault::MoistureIcing,
);
const DROP_ACROSS_DRIER: Sign = (
    Check::DropAcrossDrier,
    Observation::DropAcrossDrier,
    true,
    Fault::LiquidLineRestriction,
);

const FIRST_LOOKS: [Sign; 8] = [
    (
        Check::WatchClutch,
        Observation::ClutchEngaged,
        false,
        Fault::ClutchNotEngaged,
    ),
    (Check::LookForSlip, Observation::BeltSlips, true, Fault::ClutchSlipping),
    (
        Check::WatchCondenserFan,
        Observation::CondenserFanRunning,
        false,
        Fault::CondenserAirflowLoss,
    ),
    (
        Check::LookAtCondenserFace,
        Observation::CondenserFaceBlocked,
        true,
        Fault::CondenserAirflowLoss,
    ),
    (
        Check::FeelAirflow,
        Observation::AirflowWeak,
        true,
        Fault::EvaporatorAirflowLoss,
    ),
    (
        Check::LookAtSightGlass,
        Observation::SightGlassBubbles,
        true,
        Fault::Undercharge,
    ),
    (Check::LookForLeaks, Observation::OilTraces, true, Fault::Undercharge),
    (
        Check::ListenToCompressor,
        Observation::CompressorNoisy,
        true,
        Fault::WornCompressor,
    ),
];

/// What a pattern of the gauges stands for, in the order in which it is followed: first what a look can show, then what
/// is repaired on suspicion.
struct Page {
    signs: &'static [Sign],
    suspects: &'static [Fault],
}

const COMPRESSOR: Page = Page {
    signs: &[
        (
            Check::TimeEqualisation,
            Observation::SidesEqualiseQuickly,
            true,
            Fault::WornCompressor,
        ),
        (
            Check::DriveControl,
            Observation::ControlSignalMovesPressures,
            true,
            Fault::CompressorControlFault,
        ),
    ],
    suspects: &[Fault::CompressorControlFault, Fault::WornCompressor],
};
const CHARGE: Page = Page {
    signs: &[(
        Check::LookAtEvaporator,
        Observation::EvaporatorFrosted,
        true,
        Fault::EvaporatorIcing,
    )],
    suspects: &[
        Fault::Undercharge,
        Fault::LiquidLineRestriction,
        Fault::EvaporatorAirflowLoss,
    ],
};
const CONDENSER: Page = Page {
    signs: &[
        (
            Check::SprayCondenser,
            Observation::WaterLowersHighSide,
            true,
            Fault::CondenserAirflowLoss,
        ),
        (Check::AskHistory, Observation::RecentlyFilled, true, Fault::Overcharge),
        (
            Check::IdentifyRefrigerant,
            Observation::IdentifierShowsAir,
            true,
            Fault::NonCondensables,
        ),
        (
            Check::IdentifyRefrigerant,
            Observation::IdentifierShowsOther,
            true,
            Fault::WrongRefrigerant,
        ),
    ],
    suspects: &[
        Fault::Overcharge,
        Fault::NonCondensables,
        Fault::CondenserAirflowLoss,
        Fault::ExpansionValveStuckOpen,
    ],
};
const FLOODED: Page = Page {
    signs: &[(
        Check::LookAtSuctionLine,
        Observation::FrostOnSuctionLine,
        true,
        Fault::ExpansionValveStuckOpen,
    )],
    suspects: &[
        Fault::CompressorControlFault,
        Fault::ExpansionValveStuckOpen,
        Fault::WornCompressor,
    ],
};
const STARVED: Page = Page {
    signs: &[
        DROP_ACROSS_DRIER,
        (
            Check::LookAtExpansion,
            Observation::FrostAtExpansion,
            true,
            Fault::ExpansionValveStuckClosed,
        ),
        (
            Check::LookAtExpansion,
            Observation::FrostAtExpansion,
            true,
            Fault::OrificeRestricted,
        ),
        (
            Check::FollowSuctionLine,
            Observation::SuctionLineStep,
            true,
            Fault::SuctionLineRestriction,
        ),
        AIRFLOW_FADES,
        COMES_AND_GOES,
    ],
    suspects: &[
        Fault::Undercharge,
        Fault::OrificeRestricted,
        Fault::ExpansionValveStuckClosed,
        Fault::LiquidLineRestriction,
    ],
};
const BLOCKED: Page = Page {
    signs: &[
        DROP_ACROSS_DRIER,
        (
            Check::FeelCondenserPasses,
            Observation::CondenserHasTemperatureStep,
            true,
            Fault::HighSideRestriction,
        ),
    ],
    suspects: &[
        Fault::LiquidLineRestriction,
        Fault::HighSideRestriction,
        Fault::ExpansionValveStuckClosed,
    ],
};
const IN_ORDER: Page = Page {
    signs: &[
        (
            Check::CloseHeater,
            Observation::ClosingHeaterCoolsVent,
            true,
            Fault::HeaterAirMixing,
        ),
        AIRFLOW_FADES,
        COMES_AND_GOES,
    ],
    suspects: &[Fault::EvaporatorAirflowLoss, Fault::HeaterAirMixing, Fault::Undercharge],
};

/// Follows the flow until the vehicle is right.
pub(crate) fn manual(visit: &Visit) -> Minutes {
    let mut flow = Flow {
        work: Work::new(visit),
        looked: Vec::new(),
        tried: Vec::new(),
    };
    flow.run(page(visit));
    flow.work.close()
}

struct Flow<'a> {
    work: Work<'a>,
    looked: Vec<Check>,
    tried: Vec<Fault>,
}

impl Flow<'_> {
    fn run(&mut self, page: &Page) {
        let rest = by_price(self.work.visit);
        let _ = self.look(&FIRST_LOOKS)
            || self.look(page.signs)
            || page.suspects.iter().any(|fault| self.mend(*fault))
            || rest.iter().any(|fault| self.mend(*fault));
    }

    /// Looks for these signs one after the other and repairs what they point to; returns whether that helped.
    fn look(&mut self, signs: &[Sign]) -> bool {
        signs.iter().any(|(check, question, shows, fault)| {
            let visit = self.work.visit;
            if !can_check(*check, &visit.case.system) || !exists(*fault, &visit.case.system) {
                return false;
            }
            if !self.looked.contains(check) {
                self.looked.push(*check);
                self.work.check(*check, false);
            }
            visit.answer(*question) == *shows && self.mend(*fault)
        })
    }

    /// Repairs a fault that was not tried before; returns whether that helped.
    fn mend(&mut self, fault: Fault) -> bool {
        if self.tried.contains(&fault) || !exists(fault, &self.work.visit.case.system) {
            return false;
        }
        self.tried.push(fault);
        self.work.mend(fault)
    }
}

/// The page of the manual for the two pressures.
fn page(visit: &Visit) -> &'static Page {
    let place = visit.case.conditions.surroundings;
    let psig = |reading: Option<Reading<Pressure>>| reading.map(|r| r.value.absolute(place).gauge(place).psig());
    let ambient_f = (in_kelvins(visit.case.conditions.ambient) - 273.15) * 1.8 + 32.0;
    // Table 1, interpolated linearly from 70 to 110 °F.
    let along = ((ambient_f - 70.0) / 40.0).clamp(0.0, 1.0);
    let side = |value: Option<f64>, least: f64, most: f64| match value {
        Some(psig) if psig < least => Ordering::Less,
        Some(psig) if psig > most => Ordering::Greater,
        Some(_) | None => Ordering::Equal,
    };
    let low = side(psig(visit.case.readings.low_side), 10.0 + 5.0 * along, 45.0);
    let high = side(
        psig(visit.case.readings.high_side),
        120.0 + 90.0 * along,
        190.0 + 110.0 * along,
    );
    match (low, high) {
        (Ordering::Greater, Ordering::Less) => &COMPRESSOR,
        (Ordering::Greater, Ordering::Equal) => &FLOODED,
        (Ordering::Equal | Ordering::Greater, Ordering::Greater) => &CONDENSER,
        (Ordering::Less, Ordering::Greater) => &BLOCKED,
        (Ordering::Less, Ordering::Equal) => &STARVED,
        (Ordering::Less | Ordering::Equal, Ordering::Less) => &CHARGE,
        (Ordering::Equal, Ordering::Equal) => &IN_ORDER,
    }
}
