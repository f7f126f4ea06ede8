//! The hot paths for a counter of instructions: `benches/count_instructions` runs this under valgrind.
//!
//! Without arguments it names the paths, one line each: `what|refrigerant`. With the number of one and a number of passes
//! it does so many passes and nothing else.

#[allow(dead_code)] // other programs use the rest
mod paths;

use coldloop::Refrigerant;
use std::hint::black_box;

fn main() {
    let refrigerants = [Refrigerant::R134a, Refrigerant::R1234yf, Refrigerant::R744];
    let numbers: Vec<usize> = std::env::args().filter_map(|argument| argument.parse().ok()).collect();
    let blends = paths::BLENDS.into_iter().flat_map(paths::of_blend);
    let every = refrigerants.into_iter().flat_map(paths::of).chain(blends);
    match numbers[..] {
        [place, passes] => {
            for mut path in every.skip(place).take(1) {
                for _ in 0..passes {
                    black_box((path.pass)());
                }
            }
        }
        _ => every.for_each(|path| println!("{}|{}", path.what, path.refrigerant.id())),
    }
}
