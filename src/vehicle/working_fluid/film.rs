//! How refrigerants condense and boil in the same tubes, relative to R-134a.

use crate::names::Refrigerant;

/// Condensing conductance of a refrigerant per that of R-134a in the same tubes at the same flow; 1 where no figure is at
/// hand.
///
/// Source: Del Col, Torresin & Cavallini 2010, Int. J. Refrigeration 33, 1307 (R-1234yf 15 to 30 % below R-134a
/// in a small channel).
pub(in crate::vehicle) fn condensing_ratio(refrigerant: Refrigerant) -> f64 {
    // Dang & Hihara 2004 (Int. J. Refrigeration 27, 736): cooling supercritical R-744 in small tubes, 4 to 12
    // kW/(m2 K) about the pseudo-critical temperature; from memory.
    if refrigerant == Refrigerant::R744 {
        1.5
    } else if refrigerant == Refrigerant::R1234yf {
        0.80
    } else {
        1.0
    }
}

/// Boiling conductance of a refrigerant per that of R-134a in the same tubes at the same flow; 1 where no figure is at
/// hand.
///
/// Source: Saitoh, Dang, Nakamura & Hihara 2011, Int. J. Refrigeration 34, 2024 (R-1234yf almost as R-134a).
pub(in crate::vehicle) fn boiling_ratio(refrigerant: Refrigerant) -> f64 {
    // R-744 boils better than R-134a at the same temperature; judgement.
    if refrigerant == Refrigerant::R744 {
        1.6
    } else if refrigerant == Refrigerant::R1234yf {
        0.95
    } else {
        1.0
    }
}
