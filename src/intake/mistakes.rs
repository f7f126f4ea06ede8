//! The mistakes of a file, collected while it is read.

use super::refusal::{Mistake, Refusal, TOLD};
use crate::error::Error;
use alloc::boxed::Box;
use alloc::vec::Vec;
use core::cell::RefCell;

/// Shows that a mistake is in the list: the caller goes on with the rest of the file, or gives up this part.
///
/// Only [`Mistakes::record`] makes it, so that no mistake is lost when it is dropped.
#[derive(Debug)]
pub(super) struct Refused(Error);

/// The first dozen mistakes in the order of the file, and how many more there are.
#[derive(Default)]
pub(super) struct Mistakes(RefCell<List>);

#[derive(Default)]
struct List {
    /// The mistakes, each with the offset by which they are sorted.
    told: Vec<(usize, Mistake)>,
    untold: usize,
}

impl Mistakes {
    /// Adds a mistake to the list, sorted by offset; its text is made only where it is among the first.
    #[cold]
    #[inline(never)]
    pub(super) fn record(&self, offset: usize, error: Error, mistake: impl FnOnce() -> Mistake) -> Refused {
        let mut list = self.0.borrow_mut();
        let place = list.told.partition_point(|(other, _)| *other <= offset);
        if place < TOLD {
            list.told.insert(place, (offset, mistake()));
        }
        if place >= TOLD || list.told.len() > TOLD {
            list.told.truncate(TOLD);
            list.untold += 1;
        }
        Refused(error)
    }

    /// The result and the mistakes, where all of them are `bearable`; otherwise a refusal.
    pub(super) fn beside<T>(
        self,
        told: Result<T, Refused>,
        bearable: impl Fn(&Mistake) -> bool,
    ) -> Result<(T, Vec<Mistake>), Refusal> {
        let list = self.0.borrow();
        // Of the mistakes beyond the first dozen it is unknown whether they are bearable.
        let all = list.untold == 0 && list.told.iter().all(|(_, mistake)| bearable(mistake));
        drop(list);
        match told {
            Ok(told) if all => Ok((
                told,
                self.0
                    .into_inner()
                    .told
                    .into_iter()
                    .map(|(_, mistake)| mistake)
                    .collect(),
            )),
            told => self.unless_any(told).map(|told| (told, Vec::new())),
        }
    }

    /// The result, unless there was a mistake.
    pub(super) fn unless_any<T>(self, told: Result<T, Refused>) -> Result<T, Refusal> {
        let List { told: all, untold } = self.0.into_inner();
        let mut mistakes = all.into_iter().map(|(_, mistake)| mistake);
        match mistakes.next() {
            None => told.map_err(|Refused(error)| error.into()),
            Some(first) => Err(Refusal {
                first: Box::new(first),
                others: mistakes.collect(),
                untold,
            }),
        }
    }
}
