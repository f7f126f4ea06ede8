//! The shared vocabulary: every id and every pinned code.
//!
//! The words are in `table`, which is generated from `tables/names.toml`; this file has what all vocabularies share.

/// Declares a vocabulary: an enum with the pinned code, the ids and one sentence for each member.
///
/// `Name[count] { Member = code, [id, further accepted spellings], "what it is"; ... }`, codes in sequence.
macro_rules! vocabulary {
    (
        $(#[$meta:meta])*
        $name:ident[$count:literal] {
            $($member:ident = $code:literal, [$id:literal $(, $also:literal)*], $doc:literal;)*
        }
    ) => {
        $(#[$meta])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        #[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
        #[non_exhaustive]
        #[repr(u32)]
        pub enum $name {
            $(
                #[doc = $doc]
                #[cfg_attr(feature = "serde", serde(rename = $id $(, alias = $also)*))]
                $member = $code,
            )*
        }

        impl $name {
            /// Every member, in the order of the table.
            pub const ALL: [Self; $count] = [$(Self::$member),*];

            const SPELLINGS: [(Self, &'static [&'static str]); $count] = [$((Self::$member, &[$id $(, $also)*])),*];

            /// The id used in text.
            pub const fn id(self) -> &'static str {
                // Indexed: with a `match` here, a program that joins the ids of a whole vocabulary takes minutes to compile.
                Self::SPELLINGS[(self.code() - Self::ALL[0].code()) as usize].1[0]
            }

            /// One sentence that says what it is.
            pub const fn description(self) -> &'static str {
                match self {
                    $(Self::$member => $doc,)*
                }
            }

            /// The pinned code.
            pub const fn code(self) -> u32 {
                self as u32
            }

            /// The member with this code, or `None`.
            pub const fn from_code(code: u32) -> Option<Self> {
                match code {
                    $($code => Some(Self::$member),)*
                    _ => None,
                }
            }

            /// The member with this id or accepted spelling, whatever its case, or `None`.
            pub fn from_id(id: &str) -> Option<Self> {
                super::spelled(&Self::SPELLINGS, id)
            }
        }

        impl core::fmt::Display for $name {
            fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
                f.write_str(self.id())
            }
        }
    };
}

/// Gives a vocabulary its common names, which are refused with the id as advice, and the words that may precede a name.
///
/// `Name[count], [prefixes] { Member: [names]; ... }`
macro_rules! common_names {
    (
        $(#[$meta:meta])*
        $name:ident[$count:literal], [$($prefix:literal),*] {
            $($member:ident: [$($called:literal),+];)*
        }
    ) => {
        impl $name {
            const CALLED: [(Self, &'static [&'static str]); $count] = [$((Self::$member, &[$($called),+])),*];

            $(#[$meta])*
            pub fn meant_by(text: &str) -> Option<Self> {
                super::meant(&Self::SPELLINGS, &Self::CALLED, &[$($prefix),*], text)
            }
        }
    };
}

mod table;

pub use table::*;

type Names<T> = [(T, &'static [&'static str])];

/// The member of which a text is a spelling, whatever its case.
fn spelled<T: Copy>(spellings: &Names<T>, text: &str) -> Option<T> {
    let mut all = spellings.iter();
    all.find(|(_, names)| names.iter().any(|name| name.eq_ignore_ascii_case(text)))
        .map(|(member, _)| *member)
}

/// The member of which a text is a spelling or a common name, perhaps behind a prefix; only letters and digits count.
fn meant<T: Copy>(spellings: &Names<T>, called: &Names<T>, prefixes: &[&str], text: &str) -> Option<T> {
    let mut names = called.iter().chain(spellings);
    let found = names.find(|(_, names)| {
        let mut names = names.iter();
        names.any(|name| {
            letters(text).eq(letters(name))
                || prefixes
                    .iter()
                    .any(|prefix| letters(text).eq(letters(prefix).chain(letters(name))))
        })
    });
    found.map(|(member, _)| *member)
}

fn letters(text: &str) -> impl Iterator<Item = char> {
    let letters = text.chars().filter(|letter| letter.is_alphanumeric());
    letters.flat_map(char::to_lowercase)
}
