//! How severe a fault is, as the clouds and the tables see it.

use super::Posterior;
use crate::diagnosis::fault_table::FAULTS;
use crate::diagnosis::faults::index;
use crate::names::Fault;
use crate::numerics::sqrt;

impl Posterior {
    /// The severity of a fault after the readings: mean and standard deviation.
    pub(in crate::diagnosis) fn severity(&self, fault: Fault) -> (f64, f64) {
        let hypothesis = index(fault);
        let mut by_chart = Moments::default();
        for pattern in self.patterns.iter().filter(|pattern| pattern.fault == fault) {
            by_chart.add(
                pattern.weight,
                FAULTS[hypothesis].severity[pattern.severity],
                CHART_STEP,
            );
        }
        let mut by_cloud = Moments::default();
        for prediction in self.predictions.iter().filter(|prediction| prediction.fault == fault) {
            let (mean, sd) = prediction.severity;
            by_cloud.add(f64::from(prediction.share), f64::from(mean), f64::from(sd));
        }
        let share = match (by_cloud.weight > 0.0, by_chart.weight > 0.0) {
            (true, true) => self.by_cloud[hypothesis],
            (true, false) => 1.0,
            (false, _) => 0.0,
        };
        let mut both = Moments::default();
        both.join(share, &by_cloud);
        both.join(1.0 - share, &by_chart);
        (both.mean, sqrt(f64::max(both.square - both.mean * both.mean, 0.0)))
    }
}

/// Weight, and weighed sums of a figure and of its square.
#[derive(Clone, Copy, Default)]
struct Moments {
    weight: f64,
    mean: f64,
    square: f64,
}

impl Moments {
    fn add(&mut self, weight: f64, mean: f64, sd: f64) {
        self.weight += weight;
        self.mean += weight * mean;
        self.square += weight * (mean * mean + sd * sd);
    }

    /// Adds a share of the means of others.
    fn join(&mut self, share: f64, others: &Self) {
        if others.weight > 0.0 {
            self.weight += share;
            self.mean += share * others.mean / others.weight;
            self.square += share * others.square / others.weight;
        }
    }
}

/// Half the distance between severities of the tables: how finely those tell them apart.
const CHART_STEP: f64 = 0.08;
