//! Criterion over the hot paths: `cargo bench --bench hot_paths`, or with a part of a name behind `--`.

#[allow(dead_code)] // other programs use the rest
mod paths;

use coldloop::Refrigerant;
use criterion::{Criterion, Throughput, criterion_group, criterion_main};

fn hot_paths(criterion: &mut Criterion) {
    let pure = [Refrigerant::R134a, Refrigerant::R1234yf, Refrigerant::R744].map(|r| (r, paths::of(r)));
    let blends = paths::BLENDS.map(|blend| (blend, paths::of_blend(blend)));
    let charge = (Refrigerant::R407C, paths::of_charge(Refrigerant::R407C));
    for (refrigerant, paths) in pure.into_iter().chain(blends).chain([charge]) {
        let mut group = criterion.benchmark_group(refrigerant.id());
        group.throughput(Throughput::Elements(paths::INPUTS as u64));
        for mut path in paths {
            group.bench_function(path.what, |bencher| bencher.iter(&mut path.pass));
        }
        group.finish();
    }
}

criterion_group!(benches, hot_paths);
criterion_main!(benches);
