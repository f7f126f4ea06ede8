//! Hostile input at the doors in Rust: how many, the slowest one, the stack and the memory of the worst.

mod doors;
mod draw;
mod measure;

use doors::{Door, Large};
use draw::Random;
use measure::{Cost, painted};

/// What the inputs of one door cost.
#[derive(Default)]
struct Row {
    inputs: u64,
    refused: u64,
    /// Processor time of the slowest input, and which one it was.
    worst_s: (f64, u64),
    heap: usize,
    /// The most memory per byte of an input of at least a kilobyte.
    per_byte: f64,
    stack: usize,
}

impl Row {
    fn add(&mut self, input: u64, cost: &Cost, bytes: usize, answered: bool) {
        self.inputs += 1;
        self.refused += u64::from(!answered);
        if cost.seconds > self.worst_s.0 {
            self.worst_s = (cost.seconds, input);
        }
        self.heap = self.heap.max(cost.heap);
        if bytes >= 1_000 {
            self.per_byte = self.per_byte.max(cost.heap as f64 / bytes as f64);
        }
    }

    fn print(&self, name: &str) {
        let share = 100.0 * self.refused as f64 / self.inputs as f64;
        println!(
            "| {name} | {} | {share:.0} % | {:.1} ms (no. {}) | {} kB | {} kB | {:.0} |",
            self.inputs,
            1e3 * self.worst_s.0,
            self.worst_s.1,
            self.stack.div_ceil(1_000),
            self.heap.div_ceil(1_000),
            self.per_byte,
        );
    }
}

fn main() {
    let inputs = std::env::args().nth(1).map_or(2_000, |count| {
        count
            .parse()
            .unwrap_or_else(|_| panic!("{count} is not a number of inputs"))
    });
    println!("| door | inputs | refused | slowest | stack | memory | memory per byte of the text |");
    println!("|---|---|---|---|---|---|---|");
    let empty = painted(|| ()).1;
    for door in Door::ALL {
        let share = inputs / door.relative_cost();
        let (mut row, stack) = painted(|| {
            let mut row = Row::default();
            for input in 0..share {
                let given = door.drawn(&mut Random::of(input));
                let (answered, cost) = measure::cost(|| door.takes(&given));
                row.add(input, &cost, given.bytes(), answered);
            }
            row
        });
        row.stack = stack - empty;
        row.print(door.name());
    }
    let (mut row, stack) = painted(|| {
        let mut row = Row::default();
        for (input, large) in (0..).zip(Large::all()) {
            let (answered, cost) = measure::cost(|| large.refused());
            assert!(answered, "large text {input} is not refused");
            row.add(input, &cost, large.bytes(), false);
        }
        row
    });
    row.stack = stack - empty;
    row.print("Rust, texts of 4 MB");
}
