//! A diagnosis as text for a technician and as JSON for a program.

mod json;
mod rows;
mod text;
mod words;

pub use json::json;
pub use text::{Units, text};
