//! What a sound system shows: one model of the whole feature vector, and the bands of every reading that follow from it.

pub(crate) mod atlas_weather;
mod bands;
mod constants;
mod known;
mod known_table;
mod model;
mod own_vehicle;
mod sound_table;
mod sources;
mod weather;

pub use bands::Bands;
pub(crate) use model::AT_REST;
pub use model::{Band, SoundModel};
pub(crate) use model::{Component, View, settled, stroke_limit};
pub use own_vehicle::{OwnVehicle, PressureTable, TableError, TableRow};
pub use sources::Source;
pub use weather::Weather;
