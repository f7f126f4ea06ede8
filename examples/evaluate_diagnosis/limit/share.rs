//! Shares of cases that an answer has right, with what the chance of so many cases adds.

use crate::cases::Judged;
use coldloop::Fault;

/// How an answer does on every case.
pub(crate) struct Shares {
    first: Vec<f64>,
    three: Vec<f64>,
    loss: Vec<f64>,
}

impl Shares {
    /// Of the faults that an answer ranks, case by case.
    pub(crate) fn of(cases: &[Judged], ranked: &[Vec<(Fault, f64)>]) -> Self {
        let mut shares = Self {
            first: Vec::new(),
            three: Vec::new(),
            loss: Vec::new(),
        };
        for (case, ranked) in cases.iter().zip(ranked) {
            let truth = case.draw.fault.fault;
            let among = |few: usize| f64::from(u8::from(ranked.iter().take(few).any(|(fault, _)| *fault == truth)));
            let given = ranked
                .iter()
                .find(|(fault, _)| *fault == truth)
                .map_or(0.0, |(_, p)| *p);
            shares.first.push(among(1));
            shares.three.push(among(3));
            shares.loss.push(-given.max(1e-6).ln());
        }
        shares
    }

    /// Mean surprise at the truth, nats.
    pub(crate) fn loss(&self) -> f64 {
        mean(&self.loss).0
    }

    pub(crate) fn print(&self, name: &str) {
        let [(first, first_error), (three, three_error)] = [mean(&self.first), mean(&self.three)];
        println!(
            "  {name:<46} {:>7.1} ± {:.1} % {:>7.1} ± {:.1} % {:>7.3}",
            100.0 * first,
            100.0 * first_error,
            100.0 * three,
            100.0 * three_error,
            self.loss()
        );
    }
}

/// Prints by how much one answer is right more often than another on the same cases.
pub(crate) fn better(name: &str, one: &Shares, other: &Shares) {
    let above = |a: &[f64], b: &[f64]| a.iter().zip(b).map(|(a, b)| a - b).collect();
    let differences = Shares {
        first: above(&one.first, &other.first),
        three: above(&one.three, &other.three),
        loss: above(&one.loss, &other.loss),
    };
    differences.print(name);
}

/// Mean, and its standard error.
fn mean(values: &[f64]) -> (f64, f64) {
    let n = values.len().max(1) as f64;
    let mean = values.iter().sum::<f64>() / n;
    let spread = values.iter().map(|v| (v - mean) * (v - mean)).sum::<f64>() / n;
    (mean, (spread / n).sqrt())
}
