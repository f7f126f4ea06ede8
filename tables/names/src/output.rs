//! Where generated text goes: to the tree, or into a comparison with it.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

/// Collects generated files and writes or compares them.
///
/// Nothing is written before all is made: the crate that this program leans on is never left half new.
pub struct Output {
    root: PathBuf,
    check: bool,
    changed: Vec<(String, String)>,
}

impl Output {
    /// Output below `root`; with `check`, nothing is written and differences are reported at the end.
    pub fn new(root: &Path, check: bool) -> Self {
        Self {
            root: root.to_path_buf(),
            check,
            changed: Vec::new(),
        }
    }

    /// Formats `source` as Rust and puts it at `path` (relative to the root).
    pub fn rust(&mut self, path: &str, source: &str) -> Result<(), String> {
        let formatted = rustfmt(source).map_err(|e| format!("{path}: {e}"))?;
        self.text(path, &formatted)
    }

    /// Puts `text` at `path` (relative to the root) as it is.
    pub fn text(&mut self, path: &str, text: &str) -> Result<(), String> {
        let present = fs::read_to_string(self.root.join(path)).unwrap_or_default();
        if present != text {
            self.changed.push((path.to_string(), text.to_string()));
        }
        Ok(())
    }

    /// Writes what has changed and gives the paths; in a check, fails and names them.
    pub fn finish(self) -> Result<Vec<String>, String> {
        if self.check && !self.changed.is_empty() {
            let paths: Vec<String> = self.changed.into_iter().map(|(path, _)| path).collect();
            return Err(format!("stale, write it again without `--check`: {}", paths.join(", ")));
        }
        for (path, text) in &self.changed {
            fs::write(self.root.join(path), text).map_err(|e| format!("{path}: {e}"))?;
            println!("wrote {path}");
        }
        Ok(self.changed.into_iter().map(|(path, _)| path).collect())
    }
}

fn rustfmt(source: &str) -> Result<String, String> {
    use std::io::Write;
    let mut child = Command::new("rustfmt")
        .args(["--edition", "2024"])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .map_err(|e| format!("rustfmt: {e}"))?;
    child
        .stdin
        .take()
        .ok_or("rustfmt has no standard input")?
        .write_all(source.as_bytes())
        .map_err(|e| format!("rustfmt: {e}"))?;
    let output = child.wait_with_output().map_err(|e| format!("rustfmt: {e}"))?;
    if !output.status.success() {
        return Err("rustfmt refused the generated source".to_string());
    }
    String::from_utf8(output.stdout).map_err(|e| format!("rustfmt: {e}"))
}
