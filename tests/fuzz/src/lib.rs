//! What has to hold of any input from outside, each in a function that panics where it does not.

pub mod boundary;
pub mod logs;
pub mod readings;
pub mod sessions;
pub mod states;

/// The functions of the C door that `boundary` calls.
mod door {
    pub use ::door::diagnosis::*;
    pub use ::door::units::*;
}
