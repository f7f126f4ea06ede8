//! The C door: `tables/names.toml` into `bindings/c/src/names.rs`, and the sources there into `coldloop.h`.

use crate::names::Vocabulary;
use crate::output::Output;
use std::fs;
use std::path::Path;

/// The vocabularies that C callers pass or receive as numbers.
const EXPORTED: [&str; 26] = [
    "Quantity",
    "Refrigerant",
    "SafetyGroup",
    "Phase",
    "Reference",
    "Expansion",
    "Compressor",
    "AirSource",
    "GaugeClass",
    "Thermometer",
    "Fault",
    "VerdictKind",
    "PressureMatch",
    "LeakPhase",
    "LowPort",
    "HighPort",
    "ReadingKind",
    "Observation",
    "Check",
    "ResultKind",
    "Caution",
    "Channel",
    "LogPhase",
    "LogNote",
    "Picture",
    "ErrorKind",
];

/// Status codes that only the C door has: 0, and failures that Rust's types rule out.
const STATUS: [(u32, &str, &str); 6] = [
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
    (
        1005,
        "NotInitialised",
        "The memory holds no recorder or session of this library: initialise it first.",
    ),
];

/// The chapters of the header in reading order: files in `bindings/c/src`.
const CHAPTERS: [&str; 18] = [
    "names",
    "version",
    "error",
    "refrigerant",
    "saturation",
    "state",
    "transport",
    "charge",
    "air",
    "moist_air",
    "circuit",
    "expected",
    "diagnosis",
    "log",
    "session",
    "log_verdict",
    "units",
    "vocabulary",
];

/// Writes `bindings/c/src/names.rs` and `bindings/c/coldloop.h`.
pub(crate) fn compile(root: &Path, vocabularies: &[Vocabulary], out: &mut Output) -> Result<(), String> {
    let exported = exported(vocabularies)?;
    let generated = [("names", names(&exported)), ("vocabulary", functions(&exported))];
    for (chapter, source) in &generated {
        out.rust(&format!("bindings/c/src/{chapter}.rs"), source)?;
    }
    out.text("bindings/c/coldloop.h", &header(root, &exported, &generated)?)
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
        "//! The vocabulary.\n//!\n//! Generated from tables/names.toml by tables/names; edit the table, not this file.\n\n\
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
    format!("{parts}\n/// All three with dots between them.\npub const VERSION: &CStr = c{version:?};\n\n")
}

/// Two functions for every vocabulary but the statuses: from the number to the id, and back.
fn functions(exported: &[&Vocabulary]) -> String {
    let mut source = String::from(
        "//! Names of the numbers\n//!\n\
         //! Each vocabulary of this header has its ids, which are those of readings files and answers. Back from an id,\n\
         //! case does not matter.\n//!\n\
         //! Generated from tables/names.toml.\n\n\
         use crate::boundary::{code, named};\nuse crate::error::ColdloopError;\nuse crate::memory::text;\nuse crate::names as n;\n\
         use core::ffi::{CStr, c_char};\n\n",
    );
    for vocabulary in exported.iter().filter(|v| v.name != "ErrorKind") {
        let (enumeration, member) = (c_name(vocabulary), &vocabulary.name);
        let name = snake(enumeration.trim_start_matches("Coldloop"));
        let example = vocabulary.entries.first().map_or("", |entry| entry.id.as_str());
        source += &format!(
            "/// The id of a coldloop_{name}, such as \"{example}\"; NULL for a number that is none.\n\
             #[unsafe(no_mangle)]\npub extern \"C\" fn coldloop_{name}_name({name}: u32) -> *const c_char {{\n\
             n::{enumeration}::text({name}).map_or(core::ptr::null(), CStr::as_ptr)\n}}\n\n\
             /// The coldloop_{name} of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.\n\
             #[unsafe(no_mangle)]\npub extern \"C\" fn coldloop_{name}_from_name(name: *const c_char, \
             {name}: *mut u32, error: *mut ColdloopError) -> u32 {{\n\
             code({name}, error, || Ok(named(coldloop::{member}::from_id(&text(name)?))?.code()))\n}}\n\n"
        );
    }
    source
}

/// `SafetyGroup` as `safety_group`.
fn snake(name: &str) -> String {
    let mut snake = String::new();
    for letter in name.chars() {
        if letter.is_uppercase() && !snake.is_empty() {
            snake.push('_');
        }
        snake.extend(letter.to_lowercase());
    }
    snake
}

/// The header from its chapters; those just generated are given as text, because they are not on disk yet.
fn header(root: &Path, exported: &[&Vocabulary], generated: &[(&str, String)]) -> Result<String, String> {
    let folder = root.join("bindings/c");
    let scratch = root.join("target/tables-compile");
    fs::create_dir_all(&scratch).map_err(|e| format!("{}: {e}", scratch.display()))?;
    let mut config = cbindgen::Config::from_file(folder.join("cbindgen.toml"))?;
    for vocabulary in exported {
        let name = c_name(vocabulary);
        let renamed = format!("coldloop_{}", snake(name.trim_start_matches("Coldloop")));
        config.export.rename.insert(name.clone(), renamed);
        config.export.include.push(name);
    }
    let mut builder = cbindgen::Builder::new().with_config(config);
    let mut sources = Vec::new();
    for chapter in CHAPTERS {
        let mut path = folder.join(format!("src/{chapter}.rs"));
        if let Some((_, source)) = generated.iter().find(|(name, _)| *name == chapter) {
            path = scratch.join(format!("{chapter}.rs"));
            fs::write(&path, source).map_err(|e| format!("{}: {e}", path.display()))?;
        }
        sources.push(fs::read_to_string(&path).map_err(|e| format!("{chapter}: {e}"))?);
        builder = builder.with_src(path);
    }
    let mut written = Vec::new();
    builder
        .generate()
        .map_err(|e| format!("coldloop.h: {e}"))?
        .write(&mut written);
    let text = String::from_utf8(written).map_err(|e| format!("coldloop.h: {e}"))?;
    sources.iter().try_fold(text, |text, source| headed(&text, source))
}

/// The header with the `//!` lines of a source file set above its first function, as the heading of a chapter.
fn headed(text: &str, source: &str) -> Result<String, String> {
    let Some(after) = source.split("extern \"C\" fn ").nth(1) else {
        return Ok(text.to_string());
    };
    let function = after.split('(').next().unwrap_or_default();
    // The declaration, not a comment or an example that calls it.
    let declares = |at: &usize| {
        let line = text[..*at].rfind('\n').map_or(0, |end| end + 1);
        text[line..*at].starts_with(char::is_alphabetic) && text[..*at].ends_with([' ', '*'])
    };
    let call = text
        .match_indices(&format!("{function}("))
        .map(|(at, _)| at)
        .find(declares);
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
