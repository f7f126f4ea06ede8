//! Asks the core for a figure on a machine without std, alloc and a Rust runtime; the exit status is the answer.

#![no_std]
#![no_main]

use coldloop::units::standard_pressure_pa;
use core::panic::PanicInfo;

// The C runtime of the machine that runs the tests calls `main`; nothing else of it is used.
#[link(name = "c")]
unsafe extern "C" {}

/// 0 when the standard atmosphere at 1,000 m is 89,874.6 Pa. Source: ISO 2533:1975, table 5.
#[unsafe(no_mangle)]
pub extern "C" fn main() -> i32 {
    match standard_pressure_pa(1_000.0) {
        Ok(pa) if (pa - 89_874.6).abs() < 0.1 => 0,
        Ok(_) => 1,
        Err(_) => 2,
    }
}

#[panic_handler]
fn panic(_: &PanicInfo<'_>) -> ! {
    loop {}
}
