//! The C door: `tables/names.toml` into `bindings/c/src/names.rs`, and the sources there into `coldloop.h`.

use crate::names::Vocabulary;
use crate::output::Output;
use std::fs;
use std::path::Path;

/// The vocabularies that C callers pass or receive as numbers.
const EXPORTED: [&str; 5] = ["Quantity", "Refrigerant", "Fault", "VerdictKind", "ErrorKind"];

/// Status codes that only the C door has: 0, and failures that Rust's types rule out.
const STATUS: [(u32, &str, &str); 5] = [
    (0, "Ok", "The answer stands in the out-pointers."),
    (1001, "NullPointer", "A pointer that must not be null was null."),
    (
        1002,
        "StructSize",
        "The size field of a struct is not one that this library knows.",
    ),
    (1003, "NotUtf8", "A text is not UTF-8."),
    (
        1004,
        "Internal",
        "A defect of the library was caught at its boundary; please report it.",
    ),
];

/// The chapters of the header in reading order: files in `bindings/c/src`.
const CHAPTERS: [&str; 8] = [
    "names",
    "version",
    "error",
    "refrigerant",
    "saturation",
    "air",
    "circuit",
    "diagnosis",
];

/// Writes `bindings/c/src/names.rs` and `bindings/c/coldloop.h`.
pub(crate) fn compile(root: &Path, vocabularies: &[Vocabulary], out: &mut Output) -> Result<(), String> {
    let exported = exported(vocabularies)?;
    out.rust("bindings/c/src/names.rs", &names(&exported))?;
    out.text("bindings/c/coldloop.h", &header(root, &exported)?)
}

fn exported(vocabularies: &[Vocabulary]) -> Result<Vec<&Vocabulary>, String> {
    let find = |name: &&str| {
        vocabularies
            .iter()
            .find(|v| v.name == *name)
            .ok_or(format!("the C door exports {name}, which is not in the table"))
    };
    EXPORTED.iter().map(find).collect()
}

/// `ErrorKind` reaches C as `coldloop_status`, the others under their own names.
fn c_name(vocabulary: &Vocabulary) -> String {
    match vocabulary.name.as_str() {
        "ErrorKind" => "ColdloopStatus".to_string(),
        "VerdictKind" => "ColdloopVerdict".to_string(),
        name => format!("Coldloop{name}"),
    }
}

fn names(exported: &[&Vocabulary]) -> String {
    let mut source = String::from(
        "//! The vocabulary.\n//!\n//! Generated from tables/names.toml by tables/compile; edit the table, not this file.\n\n\
         use core::ffi::CStr;\n\n",
    );
    source += &version();
    for vocabulary in exported {
        let name = c_name(vocabulary);
        let status = vocabulary.name == "ErrorKind";
        let own = || {
            STATUS
                .iter()
                .filter(|_| status)
                .map(|(code, variant, doc)| (*code, *variant, *doc, *doc))
        };
        let table = vocabulary.entries.iter().map(|e| {
            let text = if status { &e.doc } else { &e.id };
            (e.code, e.variant.as_str(), e.doc.as_str(), text.as_str())
        });
        let mut entries: Vec<(u32, &str, &str, &str)> = own().chain(table).collect();
        entries.sort_by_key(|entry| entry.0);
        let (mut variants, mut texts) = (String::new(), String::new());
        for (code, variant, doc, text) in entries {
            variants += &format!("/// {doc}\n{variant} = {code},\n");
            texts += &format!("{code} => Some(c{text:?}),\n");
        }
        let doc = if status {
            "What a function returns: 0, or why it has no answer."
        } else {
            &vocabulary.doc
        };
        let what = if status { "sentence" } else { "id" };
        source += &format!(
            "/// {doc}\n#[repr(C)]\n#[derive(Clone, Copy, Debug, PartialEq, Eq)]\npub enum {name} {{\n{variants}}}\n\n\
             impl {name} {{\n/// The pinned code.\npub const fn code(self) -> u32 {{ self as u32 }}\n\n\
             /// The {what} of a code, or `None`.\npub const fn text(code: u32) -> Option<&'static CStr> {{ \
             match code {{ {texts} _ => None }} }}\n}}\n\n"
        );
    }
    source
}

/// The version of the workspace, which is also that of this program.
fn version() -> String {
    let version = env!("CARGO_PKG_VERSION");
    let parts = ["MAJOR", "MINOR", "PATCH"].into_iter().zip(version.split('.'));
    let parts = parts.map(|(part, number)| {
        let lower = part.to_lowercase();
        format!("/// The {lower} version of this header.\npub const COLDLOOP_VERSION_{part}: u32 = {number};\n")
    });
    let parts: String = parts.collect();
    format!("{parts}\n/// All three with dots between them.\npub(crate) const VERSION: &CStr = c{version:?};\n\n")
}

fn header(root: &Path, exported: &[&Vocabulary]) -> Result<String, String> {
    let folder = root.join("bindings/c");
    let mut config = cbindgen::Config::from_file(folder.join("cbindgen.toml"))?;
    for vocabulary in exported {
        config.export.include.push(c_name(vocabulary));
    }
    let mut builder = cbindgen::Builder::new().with_config(config);
    for chapter in CHAPTERS {
        builder = builder.with_src(folder.join(format!("src/{chapter}.rs")));
    }
    let mut written = Vec::new();
    builder
        .generate()
        .map_err(|e| format!("coldloop.h: {e}"))?
        .write(&mut written);
    let mut text = String::from_utf8(written).map_err(|e| format!("coldloop.h: {e}"))?;
    for chapter in CHAPTERS {
        let source =
            fs::read_to_string(folder.join(format!("src/{chapter}.rs"))).map_err(|e| format!("{chapter}: {e}"))?;
        text = headed(&text, &source)?;
    }
    Ok(text)
}

/// The header with the `//!` lines of a source file set above its first function, as the heading of a chapter.
fn headed(text: &str, source: &str) -> Result<String, String> {
    let Some(after) = source.split("extern \"C\" fn ").nth(1) else {
        return Ok(text.to_string());
    };
    let function = after.split('(').next().unwrap_or_default();
    let call = [' ', '*']
        .iter()
        .find_map(|before| text.find(&format!("{before}{function}(")));
    let call = call.ok_or(format!("coldloop.h lacks {function}"))?;
    let start = text[..call]
        .rfind("\n\n")
        .ok_or(format!("{function} is the first line of coldloop.h"))?;
    let lines = source.lines().take_while(|line| line.starts_with("//!"));
    let heading: String = lines
        .map(|line| format!(" *{}\n", line.trim_start_matches("//!")))
        .collect();
    Ok(format!(
        "{}\n\n/* ----------------------------------------------------------------------------\n{heading} */{}",
        &text[..start],
        &text[start..]
    ))
}
