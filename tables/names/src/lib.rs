//! The vocabularies of `tables/names.toml` for Rust, C and Python, the C header, and the texts of the page.
//!
//! Nothing here needs coldloop, so that a new word can be written before anything is built with it.

mod c;
mod names;
mod output;
mod python;
mod texts;

pub use names::{Vocabulary, read};
pub use output::Output;

use std::path::Path;

/// Reads the vocabularies and writes what is made of them.
///
/// Errors: a sentence that names the file and what is wrong with it.
pub fn write(root: &Path, out: &mut Output) -> Result<Vec<Vocabulary>, String> {
    let vocabularies = names::read(root)?;
    names::compile(&vocabularies, out)?;
    c::compile(root, &vocabularies, out)?;
    python::compile(&vocabularies, out)?;
    texts::compile(root, &vocabularies, out)?;
    Ok(vocabularies)
}
