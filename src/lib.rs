//! Vehicle refrigerants, and the diagnosis of vehicle air conditioning.
//!
//! Gauges and thermometers of a vehicle that does not cool go in; what comes out is judged against what this refrigerant and
//! system should read in today's weather at this altitude: superheat and subcooling with their uncertainty, the
//! likely faults with odds and reasons, the next step, and after the repair the proof of it. "Cannot tell" is an answer.
//!
//! ```
//! use coldloop::circuit::{Gauge, Reading, Readings};
//! use coldloop::diagnosis::{Case, Settings, diagnose};
//! use coldloop::units::{GaugePressure, Surroundings, fahrenheit};
//! use coldloop::vehicle::{Conditions, System};
//! use coldloop::{Compressor, Expansion, Fault, Refrigerant};
//!
//! let readings = Readings {
//!     low_side: Some(Reading::pressure(GaugePressure::from_psig(70.0), Gauge::LOW_SIDE)),
//!     high_side: Some(Reading::pressure(GaugePressure::from_psig(125.0), Gauge::HIGH_SIDE)),
//!     ..Readings::default()
//! };
//! let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
//! let conditions = Conditions::new(fahrenheit(74.0), Surroundings::at_altitude(1_600.0)?);
//! let answer = diagnose(&Case::new(system, conditions, readings), &Settings::default())?;
//! assert_eq!(answer.faults[0].fault, Fault::WornCompressor);
//! # Ok::<(), coldloop::Error>(())
//! ```
//!
//! # Where to look
//!
//! | question | module |
//! |---|---|
//! | viscosity, thermal conductivity, surface tension | [`transport`] |
//! | pressure or temperature of bubble and dew, states, blends, any charge | [`saturation`] |
//! | superheat, subcooling and what else follows from readings, with uncertainty | [`circuit`] |
//! | moist air, the standard atmosphere, boiling water under vacuum | [`air`] |
//! | what a sound system reads in these conditions | [`expected`] |
//! | what a vehicle with a fault would read | [`vehicle`] |
//! | faults, odds, reasons, next step, plan | [`diagnosis`] |
//! | was it dry, tight, rightly charged, and does it cool now | [`proof`] |
//! | readings files: text with units in, a case out | `intake` (feature `report`) |
//! | answers as text and JSON | `report` (feature `report`) |
//! | how often the answers were right, for a shop's own cases | `evaluate` (feature `report`) |
//!
//! # Conventions
//!
//! Quantities are types of [`units`]: gauge and absolute pressure are different, and so are a temperature and a difference. A plain
//! number is SI, with its unit in the name. What is out of range is an [`Error`] that names quantity, value and bounds; nothing is
//! clamped, nothing panics. All answers are values: nothing is kept between calls, and every function may be called from any thread.
//!
//! # Features
//!
//! Without features the crate is `no_std`, allocates nothing, and gives the same bits on every machine.
//!
//! | feature | adds | default |
//! |---|---|---|
//! | `std` | `std::error::Error` | yes |
//! | `report` | readings files, text, JSON; needs an allocator | yes |
//! | `serde` | serialisation of the types | no |
#![cfg_attr(not(feature = "std"), no_std)]
#![forbid(unsafe_code)]

#[cfg(feature = "report")]
extern crate alloc;
// What tests share with examples speaks of the crate by its name.
#[cfg(test)]
extern crate self as coldloop;

pub mod air;
pub mod circuit;
pub mod diagnosis;
mod eos;
pub mod error;
#[cfg(feature = "report")]
pub mod evaluate;
pub mod expected;
mod fluid;
#[cfg(feature = "report")]
pub mod intake;
pub mod log;
mod mixture;
mod names;
mod numerics;
pub mod proof;
pub mod range;
#[cfg(feature = "report")]
pub mod report;
pub mod saturation;
pub mod session;
pub mod transport;
pub mod units;
pub mod vehicle;

pub use error::Error;
pub use names::*;

/// What the generator of the tables and the tests of this project need of the inner rooms.
///
/// No part of the interface: it may change with every release. `DEVELOPERS.md` says why it is here.
#[doc(hidden)]
pub mod inner {
    pub mod eos {
        pub use crate::eos::*;
    }
    pub mod expected {
        pub use crate::expected::atlas_weather::AtlasWeather;
    }
    pub mod fluid {
        pub use crate::fluid::*;
    }
    pub mod mixture {
        pub use crate::mixture::*;
    }
    pub mod numerics {
        pub use crate::numerics::*;
    }
    pub mod transport {
        pub use crate::transport::correlation::*;
        pub use crate::transport::tables::of;
    }
    pub mod vehicle {
        pub use crate::vehicle::blend_in_the_circuit;
    }
}

/// The snippets of the pages beside the code, compiled and run.
#[cfg(all(doctest, feature = "std", feature = "report"))]
mod pages {
    #[doc = include_str!("../README.md")]
    mod readme {}
    #[doc = include_str!("../DEVELOPERS.md")]
    mod developers {}
    #[doc = include_str!("../docs/install.md")]
    mod install {}
    #[doc = include_str!("../docs/first-diagnosis.md")]
    mod first_diagnosis {}
    #[doc = include_str!("../docs/units.md")]
    mod units {}
    #[doc = include_str!("../docs/blends.md")]
    mod blends {}
    #[doc = include_str!("../docs/proof.md")]
    mod proof {}
}
