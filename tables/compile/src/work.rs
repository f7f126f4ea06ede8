//! Work in parallel on all cores.

use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};

/// What each of the jobs gives, in their order; each core takes the next job when it has done one.
///
/// Errors: the first one of a job.
pub(crate) fn all<J: Sync, D: Send>(
    jobs: &[J],
    done: impl Fn(&J) -> Result<D, String> + Sync,
) -> Result<Vec<D>, String> {
    let (next, found) = (AtomicUsize::new(0), Mutex::new(Vec::new()));
    std::thread::scope(|scope| {
        for _ in 0..std::thread::available_parallelism().map_or(1, |n| n.get()) {
            scope.spawn(|| {
                loop {
                    let place = next.fetch_add(1, Ordering::Relaxed);
                    let Some(job) = jobs.get(place) else { break };
                    let result = done(job);
                    if let Ok(mut found) = found.lock() {
                        found.push((place, result));
                    }
                }
            });
        }
    });
    let mut found = found.into_inner().map_err(|_| "a thread died".to_string())?;
    found.sort_by_key(|(place, _)| *place);
    if found.len() != jobs.len() {
        return Err("a thread died".to_string());
    }
    found.into_iter().map(|(_, result)| result).collect()
}
