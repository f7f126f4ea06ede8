#![no_main]

libfuzzer_sys::fuzz_target!(|input: &[u8]| coldloop_fuzz::sessions::holds(input));
