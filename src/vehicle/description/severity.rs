//! A fault of a vehicle: which one, in which form, and how far it has gone.

use crate::names::{Fault, Refrigerant};

/// In which form a fault comes, where it has more than one.
///
/// ```
/// use coldloop::{Fault, vehicle::FaultCause};
/// assert_eq!(FaultCause::FanDead.fault(), Fault::CondenserAirflowLoss);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum FaultCause {
    /// Worn compressor: compressed vapour leaks back. The usual form.
    Leakage,
    /// Worn compressor: less is drawn in at each stroke.
    LostDisplacement,
    /// Condenser air: the fan turns slowly. The usual form.
    FanSlow,
    /// Condenser air: the fan does not turn; the severity does not matter.
    FanDead,
    /// Condenser air: part of the face is blocked, and with it part of the fins.
    FaceBlocked,
    /// Condenser air: hot air enters the face.
    HotAirTakenIn,
    /// High-side restriction behind the port, whatever port the vehicle has.
    BehindHighPort,
    /// High-side restriction before the port, whatever port the vehicle has.
    BeforeHighPort,
    /// Liquid-line restriction: the thermometer of the liquid line sits behind it. The usual form.
    BeforeClamp,
    /// Liquid-line restriction: the thermometer sits before it.
    BehindClamp,
    /// Valve stuck closed: a bleed hole or a leaking seat still passes a little. The usual form.
    ShutWithBleed,
    /// Valve stuck closed: nothing passes once it is shut.
    ShutWithoutBleed,
    /// Compressor control: little stroke, running time or speed is ever reached. The usual form.
    ControlStuckLow,
    /// Compressor control: the stroke, running time or speed does not fall below a part of the most.
    ControlStuckHigh,
    /// Compressor control: the low limit stops the compressor too early.
    SwitchOpensEarly,
}

impl FaultCause {
    /// The fault of which this is a form.
    pub const fn fault(self) -> Fault {
        match self {
            Self::Leakage | Self::LostDisplacement => Fault::WornCompressor,
            Self::FanSlow | Self::FanDead | Self::FaceBlocked | Self::HotAirTakenIn => Fault::CondenserAirflowLoss,
            Self::BehindHighPort | Self::BeforeHighPort => Fault::HighSideRestriction,
            Self::BeforeClamp | Self::BehindClamp => Fault::LiquidLineRestriction,
            Self::ShutWithBleed | Self::ShutWithoutBleed => Fault::ExpansionValveStuckClosed,
            Self::ControlStuckLow | Self::ControlStuckHigh | Self::SwitchOpensEarly => Fault::CompressorControlFault,
        }
    }
}

/// A fault and how far it has gone.
///
/// ```
/// use coldloop::{Fault, vehicle::FaultSeverity};
/// let short = FaultSeverity::new(Fault::Undercharge, 0.4);
/// assert!(short.cause.is_none() && short.severity == 0.4);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FaultSeverity {
    /// Which fault.
    pub fault: Fault,
    /// How far, 0 (sound) to 1; [`FaultSeverity::new`] lists what it measures.
    pub severity: f64,
    /// The other refrigerant, where the fault is a wrong one.
    pub other: Option<Refrigerant>,
    /// The form in which the fault comes; the usual one where `None`.
    pub cause: Option<FaultCause>,
}

impl FaultSeverity {
    /// A fault at a severity from 0 (sound) to 1.
    ///
    /// | fault | what the severity is |
    /// |---|---|
    /// | worn compressor | part of the compressed vapour that leaks back, or of the displacement that is lost |
    /// | undercharge | mass missing, per the right charge; 1 for an empty circuit |
    /// | overcharge | mass in excess, per the right charge |
    /// | condenser air flow | part lost of the fan's speed or of the open face; hot air taken in, per the hottest |
    /// | evaporator air flow | part of the flow lost |
    /// | non-condensables | mass of gas per twice the mass of air that the empty circuit holds at one atmosphere |
    /// | restrictions of lines | `s`: the pressure drop is `(s / (1.03 - s))²` times that of a half-severe one |
    /// | orifice restricted | part of the free area lost |
    /// | valve stuck open | least opening |
    /// | valve stuck closed, moisture icing | part of the lift out of reach; the area goes with the square of what is left |
    /// | evaporator icing | part of the face under ice, the low limit lost |
    /// | compressor control | part of the range of stroke, running time or speed out of reach, or of the shift of its limit |
    /// | clutch not engaged | any above zero: the compressor does not turn |
    /// | clutch slipping | part of the speed lost |
    /// | heater air mixing | travel of the blend door: at 1 nearly half of the air passes the heater core |
    /// | wrong refrigerant | mass fraction of the other one in the charge; 1 where it is all of it |
    /// | gauge error | nothing in the circuit: the error is in the measurement |
    pub const fn new(fault: Fault, severity: f64) -> Self {
        Self {
            fault,
            severity,
            other: None,
            cause: None,
        }
    }

    /// A form of a fault at a severity from 0 (sound) to 1.
    ///
    /// ```
    /// use coldloop::Fault;
    /// use coldloop::vehicle::{FaultCause, FaultSeverity};
    /// let blocked = FaultSeverity::caused(FaultCause::FaceBlocked, 0.4);
    /// assert_eq!(blocked.fault, Fault::CondenserAirflowLoss);
    /// ```
    pub const fn caused(cause: FaultCause, severity: f64) -> Self {
        Self {
            fault: cause.fault(),
            severity,
            other: None,
            cause: Some(cause),
        }
    }

    /// A charge that is another refrigerant than the label's.
    pub const fn wrong_refrigerant(other: Refrigerant) -> Self {
        Self::contaminated(other, 1.0)
    }

    /// A charge of which the mass fraction `share` is another refrigerant than the label's.
    ///
    /// ```
    /// use coldloop::units::{Surroundings, celsius};
    /// use coldloop::vehicle::{Conditions, FaultSeverity, System, Vehicle, simulate};
    /// use coldloop::{Compressor, Expansion, Refrigerant, VehicleClass};
    /// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    /// let bus = Vehicle::typical(system, VehicleClass::Bus)?;
    /// let day = Conditions::new(celsius(32.0), Surroundings::at_altitude(1_600.0)?);
    /// let topped_up = FaultSeverity::contaminated(Refrigerant::R22, 0.3);
    /// let (sound, mixed) = (simulate(&bus, &day, &[])?, simulate(&bus, &day, &[topped_up])?);
    /// assert!(mixed.high_side.pa() > 1.1 * sound.high_side.pa());
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub const fn contaminated(other: Refrigerant, share: f64) -> Self {
        Self {
            fault: Fault::WrongRefrigerant,
            severity: share,
            other: Some(other),
            cause: None,
        }
    }
}
