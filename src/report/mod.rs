//! A diagnosis, a plan and the proof of a repair as text for a technician and as JSON for a program; a simulation as JSON.

mod catalogue;
mod evaluation;
mod facts;
mod finding;
mod html;
mod json;
mod language;
mod lines;
mod made;
mod page;
mod plan;
mod proof;
mod proof_text;
mod record;
mod rows;
mod simulation;
mod svg;
mod text;
mod text_readings;
mod text_result;
mod texts;
mod units;
mod visit;
mod words;

pub use catalogue::catalogue_json;
pub use evaluation::{evaluation_json, evaluation_text};
pub use facts::facts_json;
pub use finding::Finding;
pub use html::{html, html_part};
pub use json::{json, refusal_json};
pub use language::step_says;
pub use page::{
    FigureKind, Page, PageArgument, PageExpected, PageFigure, PageLimit, PageOdds, PageOutcome, PageProof, PageReading,
    PageResult, PageStep, PageWhy, Scale,
};
pub use plan::{plan_json, step_json};
pub use proof::proof_json;
pub use simulation::simulation_json;
pub use svg::svg;
pub use text::text;
pub use units::Units;
pub use visit::{visit_json, visit_text};
pub use words::Wording;
#[doc(hidden)] // for the Python door
pub use {record::Json, visit::visit_tree};
