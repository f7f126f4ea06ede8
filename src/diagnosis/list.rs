//! A short list without allocation.

use core::ops::Deref;

/// At most `N` items, in order; it reads as a slice.
///
/// ```
/// use coldloop::diagnosis::{Settings, diagnose};
/// use coldloop::intake;
/// let case = intake::case_from_toml(include_str!("../../examples/readings/low-charge.toml"))?;
/// let answer = diagnose(&case, &Settings::default())?;
/// assert!(answer.faults.len() > 1 && answer.faults.iter().all(|ranked| ranked.probability <= 1.0));
/// # Ok::<(), intake::Refusal>(())
/// ```
#[derive(Clone, Copy)]
pub struct List<T, const N: usize> {
    items: [T; N],
    len: usize,
}

impl<T: Copy, const N: usize> List<T, N> {
    /// An empty list; `blank` fills the places that are not in use.
    pub(crate) const fn new(blank: T) -> Self {
        Self {
            items: [blank; N],
            len: 0,
        }
    }

    /// Adds an item at the end, unless the list is full.
    pub(crate) fn push(&mut self, item: T) {
        if let Some(place) = self.items.get_mut(self.len) {
            *place = item;
            self.len += 1;
        }
    }

    /// Takes all items out.
    pub(crate) const fn clear(&mut self) {
        self.len = 0;
    }

    /// The items, to be reordered or changed in place.
    pub(crate) fn items_mut(&mut self) -> &mut [T] {
        &mut self.items[..self.len]
    }
}

impl<T, const N: usize> Deref for List<T, N> {
    type Target = [T];

    fn deref(&self) -> &[T] {
        &self.items[..self.len]
    }
}

impl<'a, T, const N: usize> IntoIterator for &'a List<T, N> {
    type Item = &'a T;
    type IntoIter = core::slice::Iter<'a, T>;

    fn into_iter(self) -> Self::IntoIter {
        self.iter()
    }
}

/// As a sequence of its items.
#[cfg(feature = "serde")]
impl<T: serde::Serialize, const N: usize> serde::Serialize for List<T, N> {
    fn serialize<S: serde::Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        to.collect_seq(self.iter())
    }
}

impl<T: PartialEq, const N: usize> PartialEq for List<T, N> {
    fn eq(&self, other: &Self) -> bool {
        **self == **other
    }
}

impl<T: core::fmt::Debug, const N: usize> core::fmt::Debug for List<T, N> {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.debug_list().entries(self.iter()).finish()
    }
}
