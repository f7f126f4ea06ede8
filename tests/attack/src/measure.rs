//! The cost of a call: processor time, peak memory above that before the call, and the bytes of stack that it changed.

use std::alloc::{GlobalAlloc, Layout, System};
use std::mem::MaybeUninit;
use std::ptr::{null, null_mut};
use std::sync::atomic::{AtomicUsize, Ordering::Relaxed};

/// The allocator of the system with a count of the bytes in use; one thread at a time is measured.
struct Counting;

static NOW: AtomicUsize = AtomicUsize::new(0);
static MOST: AtomicUsize = AtomicUsize::new(0);

fn more(bytes: usize) {
    let now = NOW.fetch_add(bytes, Relaxed) + bytes;
    MOST.fetch_max(now, Relaxed);
}

// SAFETY: each call is passed on as it came.
unsafe impl GlobalAlloc for Counting {
    unsafe fn alloc(&self, layout: Layout) -> *mut u8 {
        more(layout.size());
        unsafe { System.alloc(layout) }
    }

    unsafe fn dealloc(&self, bytes: *mut u8, layout: Layout) {
        NOW.fetch_sub(layout.size(), Relaxed);
        unsafe { System.dealloc(bytes, layout) }
    }

    unsafe fn realloc(&self, bytes: *mut u8, layout: Layout, size: usize) -> *mut u8 {
        more(size);
        NOW.fetch_sub(layout.size(), Relaxed);
        unsafe { System.realloc(bytes, layout, size) }
    }
}

#[global_allocator]
static ALLOCATOR: Counting = Counting;

/// What one call took.
pub(crate) struct Cost {
    /// Processor time, s, without the time spent waiting for the processor.
    pub(crate) seconds: f64,
    /// The most memory at one time, bytes.
    pub(crate) heap: usize,
}

pub(crate) fn cost<T>(call: impl FnOnce() -> T) -> (T, Cost) {
    let before = NOW.load(Relaxed);
    MOST.store(before, Relaxed);
    let began = processor_s();
    let told = call();
    let seconds = processor_s() - began;
    let heap = MOST.load(Relaxed) - before;
    (told, Cost { seconds, heap })
}

fn processor_s() -> f64 {
    let mut now = libc::timespec { tv_sec: 0, tv_nsec: 0 };
    // SAFETY: `now` is written.
    let status = unsafe { libc::clock_gettime(libc::CLOCK_THREAD_CPUTIME_ID, &raw mut now) };
    assert_eq!(status, 0);
    now.tv_sec as f64 + 1e-9 * now.tv_nsec as f64
}

/// Stack of the thread that is measured, bytes.
const STACK: usize = 8 << 20;
const PATTERN: u64 = 0xa5a5_a5a5_a5a5_a5a5;

/// Runs in a thread whose stack was filled with a pattern, and tells how many bytes of it were changed.
pub(crate) fn painted<T, F: FnOnce() -> T>(work: F) -> (T, usize) {
    struct Given<T, F> {
        work: Option<F>,
        told: Option<T>,
    }
    extern "C" fn run<T, F: FnOnce() -> T>(given: *mut libc::c_void) -> *mut libc::c_void {
        // SAFETY: `painted` waits for this thread, and only looks at `given` after it.
        let given = unsafe { &mut *given.cast::<Given<T, F>>() };
        given.told = given.work.take().map(|work| work());
        null_mut()
    }
    let mut given = Given {
        work: Some(work),
        told: None,
    };
    let mut attributes = MaybeUninit::<libc::pthread_attr_t>::uninit();
    let mut thread = MaybeUninit::<libc::pthread_t>::uninit();
    // SAFETY: the stack is mapped for as long as the thread runs, `given` outlives it, and each status is looked at.
    let changed = unsafe {
        let stack = libc::mmap(
            null_mut(),
            STACK,
            libc::PROT_READ | libc::PROT_WRITE,
            libc::MAP_PRIVATE | libc::MAP_ANONYMOUS,
            -1,
            0,
        );
        assert_ne!(stack, libc::MAP_FAILED);
        let words = std::slice::from_raw_parts_mut(stack.cast::<u64>(), STACK / 8);
        words.fill(PATTERN);
        assert_eq!(libc::pthread_attr_init(attributes.as_mut_ptr()), 0);
        assert_eq!(libc::pthread_attr_setstack(attributes.as_mut_ptr(), stack, STACK), 0);
        let started = libc::pthread_create(
            thread.as_mut_ptr(),
            attributes.as_ptr(),
            run::<T, F>,
            (&raw mut given).cast(),
        );
        assert_eq!(started, 0);
        assert_eq!(
            libc::pthread_join(thread.assume_init(), null::<*mut libc::c_void>().cast_mut()),
            0
        );
        let words = std::slice::from_raw_parts(stack.cast::<u64>(), STACK / 8);
        let untouched = words.iter().take_while(|word| **word == PATTERN).count();
        assert_eq!(libc::munmap(stack, STACK), 0);
        STACK - 8 * untouched
    };
    match given.told {
        Some(told) => (told, changed),
        None => unreachable!("a thread that ends has run"),
    }
}
