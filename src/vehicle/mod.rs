//! The vehicle: what it has, and the conditions it stands in.

mod conditions;
mod system;

pub use conditions::Conditions;
pub use system::System;
