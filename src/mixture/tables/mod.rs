//! The components of mixtures and their pairs.
//!
//! Generated from tables/refrigerants and tables/pairs by tables/compile; edit the tables, not this file.

use super::component::{Component, Pair};
use crate::error::Error;
use crate::fluid::Power;
use crate::fluid::tables as fluid;
use crate::names::{ErrorKind, Quantity, Refrigerant};

/// The component of a mixture that a pure refrigerant is.
///
/// Errors: `NotAvailable` for a blend, which has several.
pub const fn component_of(refrigerant: Refrigerant) -> Result<&'static Component, Error> {
    match refrigerant {
        Refrigerant::R1132E => Ok(&COMPONENTS[0]),
        Refrigerant::R115 => Ok(&COMPONENTS[1]),
        Refrigerant::R12 => Ok(&COMPONENTS[2]),
        Refrigerant::R1234yf => Ok(&COMPONENTS[3]),
        Refrigerant::R1234zeE => Ok(&COMPONENTS[4]),
        Refrigerant::R124 => Ok(&COMPONENTS[5]),
        Refrigerant::R125 => Ok(&COMPONENTS[6]),
        Refrigerant::R1336mzzE => Ok(&COMPONENTS[7]),
        Refrigerant::R134a => Ok(&COMPONENTS[8]),
        Refrigerant::R13I1 => Ok(&COMPONENTS[9]),
        Refrigerant::R142b => Ok(&COMPONENTS[10]),
        Refrigerant::R143a => Ok(&COMPONENTS[11]),
        Refrigerant::R152a => Ok(&COMPONENTS[12]),
        Refrigerant::R218 => Ok(&COMPONENTS[13]),
        Refrigerant::R22 => Ok(&COMPONENTS[14]),
        Refrigerant::R227ea => Ok(&COMPONENTS[15]),
        Refrigerant::R290 => Ok(&COMPONENTS[16]),
        Refrigerant::R32 => Ok(&COMPONENTS[17]),
        Refrigerant::R600 => Ok(&COMPONENTS[18]),
        Refrigerant::R600a => Ok(&COMPONENTS[19]),
        Refrigerant::R601 => Ok(&COMPONENTS[20]),
        Refrigerant::R601a => Ok(&COMPONENTS[21]),
        Refrigerant::R744 => Ok(&COMPONENTS[25]),
        Refrigerant::R401C
        | Refrigerant::R404A
        | Refrigerant::R406A
        | Refrigerant::R407A
        | Refrigerant::R407C
        | Refrigerant::R407F
        | Refrigerant::R409A
        | Refrigerant::R410A
        | Refrigerant::R413A
        | Refrigerant::R414A
        | Refrigerant::R414B
        | Refrigerant::R416A
        | Refrigerant::R420A
        | Refrigerant::R422D
        | Refrigerant::R426A
        | Refrigerant::R437A
        | Refrigerant::R438A
        | Refrigerant::R444A
        | Refrigerant::R445A
        | Refrigerant::R448A
        | Refrigerant::R449A
        | Refrigerant::R450A
        | Refrigerant::R452A
        | Refrigerant::R454B
        | Refrigerant::R454C
        | Refrigerant::R455A
        | Refrigerant::R456A
        | Refrigerant::R457A
        | Refrigerant::R474A
        | Refrigerant::R500
        | Refrigerant::R502
        | Refrigerant::R507A
        | Refrigerant::R513A
        | Refrigerant::R516A => Err(Error::of(ErrorKind::NotAvailable, Quantity::Name)),
    }
}

/// Every fluid that a mixture may hold.
pub(crate) static COMPONENTS: [Component; 26] = [
    Component {
        number: 0,
        fluid: &fluid::r1132e::R1132E,
        critical_t_k: 348.8199999996045,
        critical_p_pa: 5173675.7553315265,
        steepness: 6.689586928345348,
    },
    Component {
        number: 1,
        fluid: &fluid::r115::R115,
        critical_t_k: 353.1019775386536,
        critical_p_pa: 3129170.8491093265,
        steepness: 6.707437458080475,
    },
    Component {
        number: 2,
        fluid: &fluid::r12::R12,
        critical_t_k: 385.119999768139,
        critical_p_pa: 4136165.6284383,
        steepness: 6.337018481774242,
    },
    Component {
        number: 3,
        fluid: &fluid::r1234yf::R1234YF,
        critical_t_k: 367.84999999994704,
        critical_p_pa: 3384373.6955660693,
        steepness: 6.85756252154353,
    },
    Component {
        number: 4,
        fluid: &fluid::r1234zee::R1234ZEE,
        critical_t_k: 382.5130026046493,
        critical_p_pa: 3634866.193039844,
        steepness: 7.0551268583389,
    },
    Component {
        number: 5,
        fluid: &fluid::r124::R124,
        critical_t_k: 395.4279607732089,
        critical_p_pa: 3624514.3803634983,
        steepness: 6.920510865362949,
    },
    Component {
        number: 6,
        fluid: &fluid::r125::R125,
        critical_t_k: 339.17728245610425,
        critical_p_pa: 3618276.0556196845,
        steepness: 7.012678281945876,
    },
    Component {
        number: 7,
        fluid: &fluid::r1336mzze::R1336MZZE,
        critical_t_k: 403.53000000003016,
        critical_p_pa: 2779002.2154944343,
        steepness: 7.590380320735247,
    },
    Component {
        number: 8,
        fluid: &fluid::r134a::R134A,
        critical_t_k: 374.21196658494824,
        critical_p_pa: 4059276.3737310944,
        steepness: 7.128610918242617,
    },
    Component {
        number: 9,
        fluid: &fluid::r13i1::R13I1,
        critical_t_k: 396.4396904459701,
        critical_p_pa: 3952544.5619525947,
        steepness: 6.319270418276313,
    },
    Component {
        number: 10,
        fluid: &fluid::r142b::R142B,
        critical_t_k: 410.26023265209693,
        critical_p_pa: 4054783.4201339153,
        steepness: 6.619389059274366,
    },
    Component {
        number: 11,
        fluid: &fluid::r143a::R143A,
        critical_t_k: 345.8570008678583,
        critical_p_pa: 3761818.271394684,
        steepness: 6.778111138383035,
    },
    Component {
        number: 12,
        fluid: &fluid::r152a::R152A,
        critical_t_k: 386.41100000027393,
        critical_p_pa: 4516750.000116146,
        steepness: 6.85135714262952,
    },
    Component {
        number: 13,
        fluid: &fluid::r218::R218,
        critical_t_k: 345.01996901446176,
        critical_p_pa: 2640205.956168397,
        steepness: 7.076912541305345,
    },
    Component {
        number: 14,
        fluid: &fluid::r22::R22,
        critical_t_k: 369.29500000802386,
        critical_p_pa: 4990000.000456394,
        steepness: 6.559091434038791,
    },
    Component {
        number: 15,
        fluid: &fluid::r227ea::R227EA,
        critical_t_k: 374.90010344524677,
        critical_p_pa: 2925248.665679961,
        steepness: 7.29419532760918,
    },
    Component {
        number: 16,
        fluid: &fluid::r290::R290,
        critical_t_k: 369.8900089509655,
        critical_p_pa: 4251165.328013198,
        steepness: 6.190124024408066,
    },
    Component {
        number: 17,
        fluid: &fluid::r32::R32,
        critical_t_k: 351.25500044943334,
        critical_p_pa: 5782645.077169263,
        steepness: 6.8607270822552,
    },
    Component {
        number: 18,
        fluid: &fluid::r600::R600,
        critical_t_k: 425.12500000001245,
        critical_p_pa: 3796000.017416086,
        steepness: 6.4515906654082515,
    },
    Component {
        number: 19,
        fluid: &fluid::r600a::R600A,
        critical_t_k: 407.81000000000654,
        critical_p_pa: 3629000.0166497477,
        steepness: 6.358799557593042,
    },
    Component {
        number: 20,
        fluid: &fluid::r601::R601,
        critical_t_k: 469.65895426589225,
        critical_p_pa: 3368799.7102565975,
        steepness: 6.7248807655144525,
    },
    Component {
        number: 21,
        fluid: &fluid::r601a::R601A,
        critical_t_k: 460.3497947114417,
        critical_p_pa: 3378217.224179704,
        steepness: 6.594752082508563,
    },
    Component {
        number: 22,
        fluid: &fluid::r728::R728,
        critical_t_k: 126.19199999958562,
        critical_p_pa: 3395799.9999522883,
        steepness: 5.572722075799629,
    },
    Component {
        number: 23,
        fluid: &fluid::r732::R732,
        critical_t_k: 154.59938983528562,
        critical_p_pa: 5046410.521187225,
        steepness: 5.491288646452465,
    },
    Component {
        number: 24,
        fluid: &fluid::r740::R740,
        critical_t_k: 150.6870000000105,
        critical_p_pa: 4863000.544876646,
        steepness: 5.360937353470379,
    },
    Component {
        number: 25,
        fluid: &fluid::r744::R744,
        critical_t_k: 304.1282,
        critical_p_pa: 7377298.3527167225,
        steepness: 6.58111643855707,
    },
];

/// Nitrogen, oxygen and argon.
pub(super) static AIR: [&Component; 3] = [&COMPONENTS[22], &COMPONENTS[23], &COMPONENTS[24]];

/// The different ways in which two of them meet.
pub(super) static PAIRS: [Pair; 143] = [
    // R-1132(E) with R-115 and all alike
    Pair {
        beta_t: 1.0,
        gamma_t: 0.94989,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.033421491959151416,
        is_estimated: true,
        source: "estimate from 19 published pairs of halocarbons with hydrogen with halocarbons without hydrogen: gamma_t: the median of the published pairs of the same two classes; beta_t = beta_v = gamma_v = 1",
    },
    // R-1132(E) with R-1234yf
    Pair {
        beta_t: 0.9835,
        gamma_t: 0.9999,
        beta_v: 0.9972,
        gamma_v: 1.0197,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "M. O. McLinden and others: NIST Interagency Report 8570; title not read, doi 10.6028/NIST.IR.8570",
    },
    // R-1132(E) with R-1234ze(E) and all alike
    Pair {
        beta_t: 1.0,
        gamma_t: 0.9957499999999999,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.012346251663111717,
        is_estimated: true,
        source: "estimate from 30 published pairs of halocarbons with hydrogen with halocarbons with hydrogen: gamma_t: the median of the published pairs of the same two classes; beta_t = beta_v = gamma_v = 1",
    },
    // R-1132(E) with R-290 and all alike
    Pair {
        beta_t: 1.0,
        gamma_t: 0.91449,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.021844478570989038,
        is_estimated: true,
        source: "estimate from 25 published pairs of halocarbons with hydrogen with hydrocarbons: gamma_t: the median of the published pairs of the same two classes; beta_t = beta_v = gamma_v = 1",
    },
    // R-1132(E) with R-32
    Pair {
        beta_t: 0.9509,
        gamma_t: 1.0281,
        beta_v: 1.0336,
        gamma_v: 1.004,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "M. O. McLinden and others: NIST Interagency Report 8570; title not read, doi 10.6028/NIST.IR.8570",
    },
    // R-1132(E) with R-728 and all alike
    Pair {
        beta_t: 1.0,
        gamma_t: 1.3073800000000002,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.15725214043586266,
        is_estimated: true,
        source: "estimate from 2 published pairs of halocarbons with hydrogen with air: gamma_t: the median of the published pairs of the same two classes; beta_t = beta_v = gamma_v = 1",
    },
    // R-1132(E) with R-744 and all alike
    Pair {
        beta_t: 1.0,
        gamma_t: 1.00235,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.0164495075587575,
        is_estimated: true,
        source: "estimate from 11 published pairs of halocarbons with hydrogen with carbon dioxide: gamma_t: the median of the published pairs of the same two classes; beta_t = beta_v = gamma_v = 1",
    },
    // R-115 with R-12 and all alike
    Pair {
        beta_t: 1.0,
        gamma_t: 1.0,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.15725214043586266,
        is_estimated: true,
        source: "estimate from 0 published pairs of halocarbons without hydrogen with halocarbons without hydrogen: gamma_t: the median of the published pairs of the same two classes; beta_t = beta_v = gamma_v = 1",
    },
    // R-115 with R-125
    Pair {
        beta_t: 0.99972,
        gamma_t: 0.96147,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-115 with R-22
    Pair {
        beta_t: 1.01422,
        gamma_t: 0.94989,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-115 with R-290
    Pair {
        beta_t: 1.0,
        gamma_t: 0.943234,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-115 with R-32
    Pair {
        beta_t: 1.0,
        gamma_t: 0.881714,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-115 with R-600 and all alike
    Pair {
        beta_t: 1.0,
        gamma_t: 0.98459,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.020365264632593288,
        is_estimated: true,
        source: "estimate from 3 published pairs of halocarbons without hydrogen with hydrocarbons: gamma_t: the median of the published pairs of the same two classes; beta_t = beta_v = gamma_v = 1",
    },
    // R-115 with R-728 and all alike
    Pair {
        beta_t: 1.0,
        gamma_t: 1.30226,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.15725214043586266,
        is_estimated: true,
        source: "estimate from 1 published pairs of halocarbons without hydrogen with air: gamma_t: the median of the published pairs of the same two classes; beta_t = beta_v = gamma_v = 1",
    },
    // R-115 with R-744 and all alike
    Pair {
        beta_t: 1.0,
        gamma_t: 0.960383,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.15725214043586266,
        is_estimated: true,
        source: "estimate from 2 published pairs of halocarbons without hydrogen with carbon dioxide: gamma_t: the median of the published pairs of the same two classes; beta_t = beta_v = gamma_v = 1",
    },
    // R-12 with R-134a
    Pair {
        beta_t: 1.0075,
        gamma_t: 0.941,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-12 with R-142b
    Pair {
        beta_t: 1.01193,
        gamma_t: 0.9765,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-12 with R-143a
    Pair {
        beta_t: 0.9859,
        gamma_t: 0.95199,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-12 with R-152a
    Pair {
        beta_t: 1.01876,
        gamma_t: 0.94387,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-12 with R-22
    Pair {
        beta_t: 0.99654,
        gamma_t: 0.96477,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-12 with R-32
    Pair {
        beta_t: 1.0,
        gamma_t: 0.906355,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-12 with R-744
    Pair {
        beta_t: 0.9822121381776036,
        gamma_t: 0.9576,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-1234yf with R-1234ze(E)
    Pair {
        beta_t: 0.998886,
        gamma_t: 0.993309,
        beta_v: 0.999302,
        gamma_v: 0.99859,
        factor: 1.0,
        departure: &R1234YF_R1234ZEE,
        gamma_t_uncertainty: 0.0015,
        is_estimated: false,
        source: "I. H. Bell: Mixture Model for Refrigerant Pairs R-1234yf/R-134a, R-1234yf/R-1234ze(E), and R-134a/R-1234ze(E). J. Phys. Chem. Ref. Data 51 (2022) 013103, doi 10.1063/5.0086060",
    },
    // R-1234yf with R-125
    Pair {
        beta_t: 1.0000310009610298,
        gamma_t: 0.998028,
        beta_v: 1.0017771526688346,
        gamma_v: 1.006068,
        factor: 1.0,
        departure: &R125_R1234YF,
        gamma_t_uncertainty: 0.0015,
        is_estimated: false,
        source: "I. H. Bell: Mixture Model for Refrigerant Pairs R-32/1234yf, R-32/1234ze(E), R-1234ze(E)/227ea, R-1234yf/152a, and R-125/1234yf. J. Phys. Chem. Ref. Data 52 (2023) 013101, doi 10.1063/5.0135368",
    },
    // R-1234yf with R-134a
    Pair {
        beta_t: 1.000026,
        gamma_t: 0.987057,
        beta_v: 1.000272,
        gamma_v: 1.003747,
        factor: 1.0,
        departure: &R1234YF_R134A,
        gamma_t_uncertainty: 0.0015,
        is_estimated: false,
        source: "I. H. Bell: Mixture Model for Refrigerant Pairs R-1234yf/R-134a, R-1234yf/R-1234ze(E), and R-134a/R-1234ze(E). J. Phys. Chem. Ref. Data 51 (2022) 013103, doi 10.1063/5.0086060",
    },
    // R-1234yf with R-143a
    Pair {
        beta_t: 1.00024,
        gamma_t: 0.99523,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-1234yf with R-152a
    Pair {
        beta_t: 0.995987,
        gamma_t: 0.978058,
        beta_v: 0.99971,
        gamma_v: 1.008608,
        factor: 1.0,
        departure: &R1234YF_R152A,
        gamma_t_uncertainty: 0.0015,
        is_estimated: false,
        source: "I. H. Bell: Mixture Model for Refrigerant Pairs R-32/1234yf, R-32/1234ze(E), R-1234ze(E)/227ea, R-1234yf/152a, and R-125/1234yf. J. Phys. Chem. Ref. Data 52 (2023) 013101, doi 10.1063/5.0135368",
    },
    // R-1234yf with R-218
    Pair {
        beta_t: 1.0,
        gamma_t: 0.957668,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-1234yf with R-227ea
    Pair {
        beta_t: 0.99938,
        gamma_t: 0.99916,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-1234yf with R-290
    Pair {
        beta_t: 0.9939992266686016,
        gamma_t: 0.937793,
        beta_v: 0.9867440800288919,
        gamma_v: 1.013195,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-1234yf with R-32
    Pair {
        beta_t: 0.9891089216635625,
        gamma_t: 0.966965,
        beta_v: 0.9922091735691352,
        gamma_v: 1.037663,
        factor: 1.0,
        departure: &R32_R1234YF,
        gamma_t_uncertainty: 0.0015,
        is_estimated: false,
        source: "I. H. Bell: Mixture Model for Refrigerant Pairs R-32/1234yf, R-32/1234ze(E), R-1234ze(E)/227ea, R-1234yf/152a, and R-125/1234yf. J. Phys. Chem. Ref. Data 52 (2023) 013101, doi 10.1063/5.0135368",
    },
    // R-1234yf with R-600
    Pair {
        beta_t: 1.0,
        gamma_t: 0.932425,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-1234yf with R-600a
    Pair {
        beta_t: 0.9927529038022436,
        gamma_t: 0.93536,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-1234yf with R-744
    Pair {
        beta_t: 0.975342369555273,
        gamma_t: 0.972965,
        beta_v: 0.9505784745306758,
        gamma_v: 1.029336,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-1234ze(E) with R-125
    Pair {
        beta_t: 1.005643672288885,
        gamma_t: 1.00124,
        beta_v: 0.9724911430369149,
        gamma_v: 0.999334,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-1234ze(E) with R-1336mzz(E)
    Pair {
        beta_t: 1.0,
        gamma_t: 0.99623,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-1234ze(E) with R-134a
    Pair {
        beta_t: 1.0014089824382908,
        gamma_t: 0.992009,
        beta_v: 1.0010060110410963,
        gamma_v: 0.998621,
        factor: 1.0,
        departure: &R134A_R1234ZEE,
        gamma_t_uncertainty: 0.0015,
        is_estimated: false,
        source: "I. H. Bell: Mixture Model for Refrigerant Pairs R-1234yf/R-134a, R-1234yf/R-1234ze(E), and R-134a/R-1234ze(E). J. Phys. Chem. Ref. Data 51 (2022) 013103, doi 10.1063/5.0086060",
    },
    // R-1234ze(E) with R-13I1
    Pair {
        beta_t: 0.996551930321089,
        gamma_t: 0.96604,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-1234ze(E) with R-143a
    Pair {
        beta_t: 1.0252708765655887,
        gamma_t: 0.997695,
        beta_v: 0.8000153602949177,
        gamma_v: 1.03652,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-1234ze(E) with R-152a
    Pair {
        beta_t: 0.9885887204004179,
        gamma_t: 1.00236,
        beta_v: 1.1156530586744255,
        gamma_v: 0.932409,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-1234ze(E) with R-227ea
    Pair {
        beta_t: 1.001247,
        gamma_t: 0.98918,
        beta_v: 0.99929,
        gamma_v: 1.001581,
        factor: 1.0,
        departure: &R1234ZEE_R227EA,
        gamma_t_uncertainty: 0.0015,
        is_estimated: false,
        source: "I. H. Bell: Mixture Model for Refrigerant Pairs R-32/1234yf, R-32/1234ze(E), R-1234ze(E)/227ea, R-1234yf/152a, and R-125/1234yf. J. Phys. Chem. Ref. Data 52 (2023) 013101, doi 10.1063/5.0135368",
    },
    // R-1234ze(E) with R-290
    Pair {
        beta_t: 0.9867090293743277,
        gamma_t: 0.932901,
        beta_v: 1.0025896891671187,
        gamma_v: 1.014015,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-1234ze(E) with R-32
    Pair {
        beta_t: 0.994878366170952,
        gamma_t: 0.946105,
        beta_v: 1.000968937931918,
        gamma_v: 1.029821,
        factor: 1.0,
        departure: &R32_R1234ZEE,
        gamma_t_uncertainty: 0.0015,
        is_estimated: false,
        source: "I. H. Bell: Mixture Model for Refrigerant Pairs R-32/1234yf, R-32/1234ze(E), R-1234ze(E)/227ea, R-1234yf/152a, and R-125/1234yf. J. Phys. Chem. Ref. Data 52 (2023) 013101, doi 10.1063/5.0135368",
    },
    // R-1234ze(E) with R-600a
    Pair {
        beta_t: 0.975553,
        gamma_t: 0.921592,
        beta_v: 1.169554,
        gamma_v: 1.076561,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-1234ze(E) with R-744
    Pair {
        beta_t: 0.9920388879244066,
        gamma_t: 0.973804,
        beta_v: 0.874953408730985,
        gamma_v: 1.076023,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-124 with R-134a
    Pair {
        beta_t: 0.99881,
        gamma_t: 0.98961,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-124 with R-142b
    Pair {
        beta_t: 0.99802,
        gamma_t: 1.0032,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-124 with R-218
    Pair {
        beta_t: 1.0,
        gamma_t: 0.959339,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-124 with R-744
    Pair {
        beta_t: 1.004853442125466,
        gamma_t: 1.01028,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-125 with R-134a
    Pair {
        beta_t: 1.0,
        gamma_t: 1.000599138705133,
        beta_v: 1.0,
        gamma_v: 0.9992977214707102,
        factor: 1.0,
        departure: &HYDROFLUOROCARBONS,
        gamma_t_uncertainty: 0.0015,
        is_estimated: false,
        source: "E. W. Lemmon, R. T Jacobsen: Equations of State for Mixtures of R-32, R-125, R-134a, R-143a, and R-152a. J. Phys. Chem. Ref. Data 33 (2004) 593-620, doi 10.1063/1.1649997",
    },
    // R-125 with R-13I1
    Pair {
        beta_t: 0.989972,
        gamma_t: 0.955147,
        beta_v: 1.009413,
        gamma_v: 1.004957,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-125 with R-143a
    Pair {
        beta_t: 1.0,
        gamma_t: 1.0081512857406922,
        beta_v: 1.0,
        gamma_v: 0.9993132130234508,
        factor: 1.1697,
        departure: &HYDROFLUOROCARBONS,
        gamma_t_uncertainty: 0.0015,
        is_estimated: false,
        source: "E. W. Lemmon, R. T Jacobsen: Equations of State for Mixtures of R-32, R-125, R-134a, R-143a, and R-152a. J. Phys. Chem. Ref. Data 33 (2004) 593-620, doi 10.1063/1.1649997",
    },
    // R-125 with R-152a
    Pair {
        beta_t: 0.99429,
        gamma_t: 1.00282,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-125 with R-227ea
    Pair {
        beta_t: 1.00101,
        gamma_t: 1.00302,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-125 with R-290
    Pair {
        beta_t: 0.9912472864605534,
        gamma_t: 0.89892,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-125 with R-32
    Pair {
        beta_t: 1.0,
        gamma_t: 1.0420900819859578,
        beta_v: 1.0,
        gamma_v: 1.0050934125776434,
        factor: 1.0,
        departure: &R32_R125,
        gamma_t_uncertainty: 0.0015,
        is_estimated: false,
        source: "E. W. Lemmon, R. T Jacobsen: Equations of State for Mixtures of R-32, R-125, R-134a, R-143a, and R-152a. J. Phys. Chem. Ref. Data 33 (2004) 593-620, doi 10.1063/1.1649997",
    },
    // R-125 with R-600
    Pair {
        beta_t: 1.0052069721155585,
        gamma_t: 0.90412,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-125 with R-600a
    Pair {
        beta_t: 1.0115519229602055,
        gamma_t: 0.90644,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-125 with R-744
    Pair {
        beta_t: 0.9886307464162135,
        gamma_t: 0.96741,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-1336mzz(E) with R-134a
    Pair {
        beta_t: 1.0,
        gamma_t: 0.980372,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-1336mzz(E) with R-152a
    Pair {
        beta_t: 1.0,
        gamma_t: 0.974439,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-1336mzz(E) with R-227ea
    Pair {
        beta_t: 1.0,
        gamma_t: 0.99773,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-1336mzz(E) with R-290
    Pair {
        beta_t: 1.0,
        gamma_t: 0.941255,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-1336mzz(E) with R-32
    Pair {
        beta_t: 1.0,
        gamma_t: 0.993183,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-134a with R-142b
    Pair {
        beta_t: 1.00176,
        gamma_t: 0.98544,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-134a with R-143a
    Pair {
        beta_t: 1.0,
        gamma_t: 1.0040046507006735,
        beta_v: 1.0,
        gamma_v: 1.0016349060793308,
        factor: 0.5557,
        departure: &HYDROFLUOROCARBONS,
        gamma_t_uncertainty: 0.0015,
        is_estimated: false,
        source: "E. W. Lemmon, R. T Jacobsen: Equations of State for Mixtures of R-32, R-125, R-134a, R-143a, and R-152a. J. Phys. Chem. Ref. Data 33 (2004) 593-620, doi 10.1063/1.1649997",
    },
    // R-134a with R-152a
    Pair {
        beta_t: 1.0,
        gamma_t: 1.0056546887021358,
        beta_v: 1.0,
        gamma_v: 1.012168712030033,
        factor: 2.0,
        departure: &HYDROFLUOROCARBONS,
        gamma_t_uncertainty: 0.0015,
        is_estimated: false,
        source: "E. W. Lemmon, R. T Jacobsen: Equations of State for Mixtures of R-32, R-125, R-134a, R-143a, and R-152a. J. Phys. Chem. Ref. Data 33 (2004) 593-620, doi 10.1063/1.1649997",
    },
    // R-134a with R-218
    Pair {
        beta_t: 0.99885,
        gamma_t: 0.9228,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-134a with R-22
    Pair {
        beta_t: 0.99975,
        gamma_t: 0.99196,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-134a with R-227ea
    Pair {
        beta_t: 1.00135,
        gamma_t: 0.98915,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-134a with R-290
    Pair {
        beta_t: 0.9886502946177879,
        gamma_t: 0.89674,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-134a with R-32
    Pair {
        beta_t: 1.0,
        gamma_t: 1.0114075810415268,
        beta_v: 1.0,
        gamma_v: 1.0137207256551402,
        factor: 1.0,
        departure: &R32_R134A,
        gamma_t_uncertainty: 0.0015,
        is_estimated: false,
        source: "E. W. Lemmon, R. T Jacobsen: Equations of State for Mixtures of R-32, R-125, R-134a, R-143a, and R-152a. J. Phys. Chem. Ref. Data 33 (2004) 593-620, doi 10.1063/1.1649997",
    },
    // R-134a with R-600
    Pair {
        beta_t: 0.9959266599607606,
        gamma_t: 0.89057,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-134a with R-600a
    Pair {
        beta_t: 0.9985520994557892,
        gamma_t: 0.89668,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-134a with R-744
    Pair {
        beta_t: 0.9897462290668674,
        gamma_t: 1.01129,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-13I1 with R-152a
    Pair {
        beta_t: 0.99875,
        gamma_t: 0.96404,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-13I1 with R-290
    Pair {
        beta_t: 0.99452,
        gamma_t: 0.98807,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-13I1 with R-32
    Pair {
        beta_t: 1.0070229782503177,
        gamma_t: 0.934839,
        beta_v: 0.9866983199487706,
        gamma_v: 0.858023,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-13I1 with R-600a
    Pair {
        beta_t: 1.002,
        gamma_t: 0.98459,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-13I1 with R-728
    Pair {
        beta_t: 1.00123,
        gamma_t: 1.30226,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-13I1 with R-744
    Pair {
        beta_t: 0.9864170373950698,
        gamma_t: 0.963166,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and M. O. McLinden: mixtures with R-13I1. Int. J. Thermophys. (2020); title not read",
    },
    // R-142b with R-152a
    Pair {
        beta_t: 1.0,
        gamma_t: 0.972651,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-142b with R-22
    Pair {
        beta_t: 1.0043,
        gamma_t: 1.00646,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-142b with R-32
    Pair {
        beta_t: 0.98803,
        gamma_t: 0.9751,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-142b with R-744
    Pair {
        beta_t: 0.9881813510415431,
        gamma_t: 1.00776,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-143a with R-152a
    Pair {
        beta_t: 0.99955,
        gamma_t: 0.99038,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-143a with R-22
    Pair {
        beta_t: 1.0,
        gamma_t: 1.000486,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-143a with R-290
    Pair {
        beta_t: 0.990226464792498,
        gamma_t: 0.91581,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-143a with R-32
    Pair {
        beta_t: 0.99734,
        gamma_t: 0.97488,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-143a with R-600
    Pair {
        beta_t: 0.9990708640963902,
        gamma_t: 0.91912,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-143a with R-600a
    Pair {
        beta_t: 0.9995302207962258,
        gamma_t: 0.9195,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-143a with R-744
    Pair {
        beta_t: 0.9801327099689298,
        gamma_t: 0.98474,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-152a with R-218
    Pair {
        beta_t: 1.0,
        gamma_t: 0.882036,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-152a with R-22
    Pair {
        beta_t: 1.00239,
        gamma_t: 1.01169,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-152a with R-227ea
    Pair {
        beta_t: 1.0088,
        gamma_t: 0.99527,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-152a with R-290
    Pair {
        beta_t: 0.9879177657251811,
        gamma_t: 0.92009,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-152a with R-32
    Pair {
        beta_t: 0.99966,
        gamma_t: 0.99709,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-152a with R-600
    Pair {
        beta_t: 0.9975758905858764,
        gamma_t: 0.91179,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-152a with R-600a
    Pair {
        beta_t: 1.006866831792827,
        gamma_t: 0.91845,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-152a with R-744
    Pair {
        beta_t: 0.997765006385696,
        gamma_t: 1.00646,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-218 with R-22
    Pair {
        beta_t: 0.98269,
        gamma_t: 0.91598,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-218 with R-32
    Pair {
        beta_t: 1.0,
        gamma_t: 0.851222,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-22 with R-290
    Pair {
        beta_t: 1.0,
        gamma_t: 0.942193,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-22 with R-32
    Pair {
        beta_t: 1.0,
        gamma_t: 0.993276,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell and others: binary interaction parameters of refrigerant mixtures. J. Chem. Eng. Data (2025); title not read, doi 10.1021/acs.jced.4c00699",
    },
    // R-22 with R-740
    Pair {
        beta_t: 1.013499817570033,
        gamma_t: 1.20531,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-22 with R-744
    Pair {
        beta_t: 0.9960754626770524,
        gamma_t: 1.01254,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-227ea with R-290
    Pair {
        beta_t: 0.9791921664626683,
        gamma_t: 0.91449,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-227ea with R-32
    Pair {
        beta_t: 0.98611,
        gamma_t: 0.97064,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-227ea with R-600
    Pair {
        beta_t: 0.985794698396112,
        gamma_t: 0.90171,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-227ea with R-600a
    Pair {
        beta_t: 0.986913526636796,
        gamma_t: 0.90916,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-227ea with R-728
    Pair {
        beta_t: 1.0295056313958038,
        gamma_t: 1.40945,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-227ea with R-744
    Pair {
        beta_t: 0.9939567430025444,
        gamma_t: 1.00235,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-290 with R-32
    Pair {
        beta_t: 1.00067,
        gamma_t: 0.86421,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-290 with R-600
    Pair {
        beta_t: 1.000310289,
        gamma_t: 1.007392782,
        beta_v: 0.999795868,
        gamma_v: 1.003264179,
        factor: 0.0312572600489,
        departure: &ALKANES,
        gamma_t_uncertainty: 0.0015,
        is_estimated: false,
        source: "O. Kunz, W. Wagner: The GERG-2008 Wide-Range Equation of State for Natural Gases and Other Mixtures: An Expansion of GERG-2004. J. Chem. Eng. Data 57 (2012) 3032-3091, doi 10.1021/je300655b",
    },
    // R-290 with R-600a
    Pair {
        beta_t: 0.998012298,
        gamma_t: 1.005250774,
        beta_v: 0.999243146,
        gamma_v: 1.001156119,
        factor: -0.0551609771024,
        departure: &ALKANES,
        gamma_t_uncertainty: 0.0015,
        is_estimated: false,
        source: "O. Kunz, W. Wagner: The GERG-2008 Wide-Range Equation of State for Natural Gases and Other Mixtures: An Expansion of GERG-2004. J. Chem. Eng. Data 57 (2012) 3032-3091, doi 10.1021/je300655b",
    },
    // R-290 with R-601
    Pair {
        beta_t: 0.996484021,
        gamma_t: 1.008344412,
        beta_v: 1.044919431,
        gamma_v: 1.019921513,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "O. Kunz, W. Wagner: The GERG-2008 Wide-Range Equation of State for Natural Gases and Other Mixtures: An Expansion of GERG-2004. J. Chem. Eng. Data 57 (2012) 3032-3091, doi 10.1021/je300655b",
    },
    // R-290 with R-601a
    Pair {
        beta_t: 0.994364425,
        gamma_t: 1.0032695,
        beta_v: 1.040459289,
        gamma_v: 0.999432118,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "O. Kunz, W. Wagner: The GERG-2008 Wide-Range Equation of State for Natural Gases and Other Mixtures: An Expansion of GERG-2004. J. Chem. Eng. Data 57 (2012) 3032-3091, doi 10.1021/je300655b",
    },
    // R-290 with R-728
    Pair {
        beta_t: 0.9973298199504819,
        gamma_t: 1.201264026,
        beta_v: 1.0262465837521206,
        gamma_v: 1.081025408,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "O. Kunz, W. Wagner: The GERG-2008 Wide-Range Equation of State for Natural Gases and Other Mixtures: An Expansion of GERG-2004. J. Chem. Eng. Data 57 (2012) 3032-3091, doi 10.1021/je300655b",
    },
    // R-290 with R-732
    Pair {
        beta_t: 1.0,
        gamma_t: 1.0,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "O. Kunz, W. Wagner: The GERG-2008 Wide-Range Equation of State for Natural Gases and Other Mixtures: An Expansion of GERG-2004. J. Chem. Eng. Data 57 (2012) 3032-3091, doi 10.1021/je300655b",
    },
    // R-290 with R-744
    Pair {
        beta_t: 0.9674730360282372,
        gamma_t: 0.908772477,
        beta_v: 1.0031116483206441,
        gamma_v: 1.047596298,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "O. Kunz, W. Wagner: The GERG-2008 Wide-Range Equation of State for Natural Gases and Other Mixtures: An Expansion of GERG-2004. J. Chem. Eng. Data 57 (2012) 3032-3091, doi 10.1021/je300655b",
    },
    // R-32 with R-600
    Pair {
        beta_t: 1.0186826396104558,
        gamma_t: 0.8699,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-32 with R-600a
    Pair {
        beta_t: 1.0240655401945724,
        gamma_t: 0.86238,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-32 with R-744
    Pair {
        beta_t: 0.9968897041231358,
        gamma_t: 0.99971,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "I. H. Bell, E. W. Lemmon: Automatic Fitting of Binary Interaction Parameters for Multi-fluid Helmholtz-Energy-Explicit Mixture Models. J. Chem. Eng. Data 61 (2016) 3752-3760, doi 10.1021/acs.jced.6b00257",
    },
    // R-600 with R-600a
    Pair {
        beta_t: 1.000077547,
        gamma_t: 1.001432824,
        beta_v: 1.000880464,
        gamma_v: 1.00041444,
        factor: -0.0551240293009,
        departure: &ALKANES,
        gamma_t_uncertainty: 0.0015,
        is_estimated: false,
        source: "O. Kunz, W. Wagner: The GERG-2008 Wide-Range Equation of State for Natural Gases and Other Mixtures: An Expansion of GERG-2004. J. Chem. Eng. Data 57 (2012) 3032-3091, doi 10.1021/je300655b",
    },
    // R-600 with R-601
    Pair {
        beta_t: 1.0,
        gamma_t: 1.00214364,
        beta_v: 1.0,
        gamma_v: 1.01815965,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "O. Kunz, W. Wagner: The GERG-2008 Wide-Range Equation of State for Natural Gases and Other Mixtures: An Expansion of GERG-2004. J. Chem. Eng. Data 57 (2012) 3032-3091, doi 10.1021/je300655b",
    },
    // R-600 with R-601a
    Pair {
        beta_t: 1.0,
        gamma_t: 1.000792201,
        beta_v: 1.0,
        gamma_v: 1.002728434,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "O. Kunz, W. Wagner: The GERG-2008 Wide-Range Equation of State for Natural Gases and Other Mixtures: An Expansion of GERG-2004. J. Chem. Eng. Data 57 (2012) 3032-3091, doi 10.1021/je300655b",
    },
    // R-600 with R-728
    Pair {
        beta_t: 1.0055150145643723,
        gamma_t: 1.304886838,
        beta_v: 1.0039327962968856,
        gamma_v: 1.146949309,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "O. Kunz, W. Wagner: The GERG-2008 Wide-Range Equation of State for Natural Gases and Other Mixtures: An Expansion of GERG-2004. J. Chem. Eng. Data 57 (2012) 3032-3091, doi 10.1021/je300655b",
    },
    // R-600 with R-740
    Pair {
        beta_t: 1.0,
        gamma_t: 1.245039498,
        beta_v: 1.0,
        gamma_v: 1.214638734,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "O. Kunz, W. Wagner: The GERG-2008 Wide-Range Equation of State for Natural Gases and Other Mixtures: An Expansion of GERG-2004. J. Chem. Eng. Data 57 (2012) 3032-3091, doi 10.1021/je300655b",
    },
    // R-600 with R-744
    Pair {
        beta_t: 0.9821532886630898,
        gamma_t: 0.911498231,
        beta_v: 0.8512370308047776,
        gamma_v: 1.222437324,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "O. Kunz, W. Wagner: The GERG-2008 Wide-Range Equation of State for Natural Gases and Other Mixtures: An Expansion of GERG-2004. J. Chem. Eng. Data 57 (2012) 3032-3091, doi 10.1021/je300655b",
    },
    // R-600a with R-601
    Pair {
        beta_t: 1.0,
        gamma_t: 1.002495889,
        beta_v: 1.0,
        gamma_v: 1.002779804,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "O. Kunz, W. Wagner: The GERG-2008 Wide-Range Equation of State for Natural Gases and Other Mixtures: An Expansion of GERG-2004. J. Chem. Eng. Data 57 (2012) 3032-3091, doi 10.1021/je300655b",
    },
    // R-600a with R-601a
    Pair {
        beta_t: 1.0,
        gamma_t: 1.001835788,
        beta_v: 1.0,
        gamma_v: 1.002284353,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "O. Kunz, W. Wagner: The GERG-2008 Wide-Range Equation of State for Natural Gases and Other Mixtures: An Expansion of GERG-2004. J. Chem. Eng. Data 57 (2012) 3032-3091, doi 10.1021/je300655b",
    },
    // R-600a with R-728
    Pair {
        beta_t: 1.00718309892775,
        gamma_t: 1.284462634,
        beta_v: 1.0137712408771866,
        gamma_v: 1.100576129,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "O. Kunz, W. Wagner: The GERG-2008 Wide-Range Equation of State for Natural Gases and Other Mixtures: An Expansion of GERG-2004. J. Chem. Eng. Data 57 (2012) 3032-3091, doi 10.1021/je300655b",
    },
    // R-600a with R-744
    Pair {
        beta_t: 0.9771924990578692,
        gamma_t: 0.929982936,
        beta_v: 0.9288915998569589,
        gamma_v: 1.081909003,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "O. Kunz, W. Wagner: The GERG-2008 Wide-Range Equation of State for Natural Gases and Other Mixtures: An Expansion of GERG-2004. J. Chem. Eng. Data 57 (2012) 3032-3091, doi 10.1021/je300655b",
    },
    // R-601 with R-601a
    Pair {
        beta_t: 1.0,
        gamma_t: 1.000050537,
        beta_v: 1.0,
        gamma_v: 1.000024335,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "O. Kunz, W. Wagner: The GERG-2008 Wide-Range Equation of State for Natural Gases and Other Mixtures: An Expansion of GERG-2004. J. Chem. Eng. Data 57 (2012) 3032-3091, doi 10.1021/je300655b",
    },
    // R-601 with R-728
    Pair {
        beta_t: 1.0,
        gamma_t: 1.419029041,
        beta_v: 1.0,
        gamma_v: 1.078877166,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "O. Kunz, W. Wagner: The GERG-2008 Wide-Range Equation of State for Natural Gases and Other Mixtures: An Expansion of GERG-2004. J. Chem. Eng. Data 57 (2012) 3032-3091, doi 10.1021/je300655b",
    },
    // R-601 with R-744
    Pair {
        beta_t: 0.9737090807217924,
        gamma_t: 0.979217302,
        beta_v: 0.9762655226974714,
        gamma_v: 1.068406078,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "O. Kunz, W. Wagner: The GERG-2008 Wide-Range Equation of State for Natural Gases and Other Mixtures: An Expansion of GERG-2004. J. Chem. Eng. Data 57 (2012) 3032-3091, doi 10.1021/je300655b",
    },
    // R-601a with R-728
    Pair {
        beta_t: 1.0,
        gamma_t: 1.38177077,
        beta_v: 1.0,
        gamma_v: 1.154135439,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "O. Kunz, W. Wagner: The GERG-2008 Wide-Range Equation of State for Natural Gases and Other Mixtures: An Expansion of GERG-2004. J. Chem. Eng. Data 57 (2012) 3032-3091, doi 10.1021/je300655b",
    },
    // R-601a with R-744
    Pair {
        beta_t: 0.9811800280722865,
        gamma_t: 0.961218039,
        beta_v: 0.9426908944159199,
        gamma_v: 1.116793198,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "O. Kunz, W. Wagner: The GERG-2008 Wide-Range Equation of State for Natural Gases and Other Mixtures: An Expansion of GERG-2004. J. Chem. Eng. Data 57 (2012) 3032-3091, doi 10.1021/je300655b",
    },
    // R-728 with R-732
    Pair {
        beta_t: 0.997190589,
        gamma_t: 0.995157044,
        beta_v: 0.99952177,
        gamma_v: 0.997082328,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "J. Gernert: A New Helmholtz Energy Model for Humid Gases and CCS Mixtures. Dissertation, Ruhr-Universitat Bochum (2013)",
    },
    // R-728 with R-740
    Pair {
        beta_t: 0.999442,
        gamma_t: 0.989311,
        beta_v: 1.006697,
        gamma_v: 1.001549,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "J. Gernert: A New Helmholtz Energy Model for Humid Gases and CCS Mixtures. Dissertation, Ruhr-Universitat Bochum (2013)",
    },
    // R-728 with R-744 and all alike
    Pair {
        beta_t: 1.0,
        gamma_t: 1.031986,
        beta_v: 1.0,
        gamma_v: 1.0,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.15725214043586266,
        is_estimated: true,
        source: "estimate from 1 published pairs of carbon dioxide with air: gamma_t: the median of the published pairs of the same two classes; beta_t = beta_v = gamma_v = 1",
    },
    // R-732 with R-740
    Pair {
        beta_t: 0.999039,
        gamma_t: 0.988822,
        beta_v: 1.006502,
        gamma_v: 1.001341,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "J. Gernert: A New Helmholtz Energy Model for Humid Gases and CCS Mixtures. Dissertation, Ruhr-Universitat Bochum (2013)",
    },
    // R-732 with R-744
    Pair {
        beta_t: 1.0,
        gamma_t: 1.031986,
        beta_v: 1.0,
        gamma_v: 1.08446,
        factor: 0.0,
        departure: &[],
        gamma_t_uncertainty: 0.003,
        is_estimated: false,
        source: "J. Gernert: A New Helmholtz Energy Model for Humid Gases and CCS Mixtures. Dissertation, Ruhr-Universitat Bochum (2013)",
    },
];

/// Where in them each pair stands: first those with component 0, then those of component 1 with the ones after it, and so on.
pub(super) static PLACES: [u8; 325] = [
    0, 0, 1, 2, 2, 2, 2, 2, 0, 2, 2, 2, 0, 2, 2, 3, 4, 3, 3, 3, 3, 5, 5, 5, 6, 7, 0, 0, 0, 8, 0, 0, 7, 0, 0, 0, 7, 9,
    0, 10, 11, 12, 12, 12, 12, 13, 13, 13, 14, 0, 0, 0, 0, 0, 15, 7, 16, 17, 18, 7, 19, 0, 12, 20, 12, 12, 12, 12, 13,
    13, 13, 21, 22, 2, 23, 2, 24, 0, 2, 25, 26, 27, 2, 28, 29, 30, 31, 32, 3, 3, 5, 5, 5, 33, 2, 34, 35, 36, 37, 2, 38,
    39, 0, 2, 40, 41, 42, 3, 43, 3, 3, 5, 5, 5, 44, 2, 2, 45, 0, 46, 2, 2, 47, 2, 2, 3, 2, 3, 3, 3, 3, 5, 5, 5, 48, 2,
    49, 50, 2, 51, 52, 0, 2, 53, 54, 55, 56, 57, 3, 3, 5, 5, 5, 58, 59, 0, 2, 2, 60, 0, 2, 61, 62, 63, 3, 3, 3, 3, 5,
    5, 5, 6, 0, 64, 65, 66, 67, 68, 69, 70, 71, 72, 73, 3, 3, 5, 5, 5, 74, 0, 0, 75, 7, 0, 0, 76, 77, 12, 78, 12, 12,
    79, 13, 13, 80, 2, 81, 0, 82, 2, 3, 83, 3, 3, 3, 3, 5, 5, 5, 84, 85, 0, 86, 2, 87, 88, 89, 90, 3, 3, 5, 5, 5, 91,
    92, 93, 94, 95, 96, 97, 98, 3, 3, 5, 5, 5, 99, 100, 0, 12, 101, 12, 12, 12, 12, 13, 13, 13, 14, 2, 102, 103, 3, 3,
    3, 3, 5, 5, 104, 105, 106, 107, 108, 109, 3, 3, 110, 5, 5, 111, 112, 113, 114, 115, 116, 117, 118, 118, 119, 120,
    121, 3, 3, 5, 5, 5, 122, 123, 124, 125, 126, 118, 127, 128, 129, 130, 131, 118, 118, 132, 133, 134, 118, 118, 135,
    136, 118, 118, 137, 138, 139, 140, 141, 142, 140,
];

/// The departure function of R-1234yf/R-134a.
static R1234YF_R134A: [Power; 2] = [
    Power {
        n: 0.0519,
        t: 2.477314,
        d: 1,
        l: 1,
    },
    Power {
        n: -0.011472,
        t: 0.070541,
        d: 2,
        l: 2,
    },
];

/// The departure function of R-134a/R-1234ze(E).
static R134A_R1234ZEE: [Power; 2] = [
    Power {
        n: 0.068889,
        t: 3.184446,
        d: 1,
        l: 1,
    },
    Power {
        n: -0.004831,
        t: 2.034344,
        d: 2,
        l: 2,
    },
];

/// The departure function of R-1234yf/R-1234ze(E).
static R1234YF_R1234ZEE: [Power; 2] = [
    Power {
        n: 0.07264,
        t: 0.012645,
        d: 1,
        l: 1,
    },
    Power {
        n: -0.024746,
        t: 3.992829,
        d: 2,
        l: 2,
    },
];

/// The departure function of R-32/R-1234yf.
static R32_R1234YF: [Power; 3] = [
    Power {
        n: 0.449487,
        t: 2.538296,
        d: 1,
        l: 1,
    },
    Power {
        n: -0.099708,
        t: 3.208604,
        d: 2,
        l: 1,
    },
    Power {
        n: 0.098897,
        t: 0.456509,
        d: 3,
        l: 1,
    },
];

/// The departure function of R-32/R-1234ze(E).
static R32_R1234ZEE: [Power; 4] = [
    Power {
        n: 0.295192,
        t: 0.500457,
        d: 1,
        l: 1,
    },
    Power {
        n: -0.737904,
        t: 3.104735,
        d: 2,
        l: 1,
    },
    Power {
        n: 0.542962,
        t: 3.20172,
        d: 3,
        l: 1,
    },
    Power {
        n: -0.201951,
        t: 2.567118,
        d: 4,
        l: 1,
    },
];

/// The departure function of R-125/R-1234yf.
static R125_R1234YF: [Power; 1] = [Power {
    n: -0.032013,
    t: 0.00803,
    d: 1,
    l: 1,
}];

/// The departure function of R-1234yf/R-152a.
static R1234YF_R152A: [Power; 3] = [
    Power {
        n: 0.009165,
        t: 3.221227,
        d: 1,
        l: 1,
    },
    Power {
        n: 0.014392,
        t: 1.007082,
        d: 2,
        l: 1,
    },
    Power {
        n: -0.014246,
        t: 3.790953,
        d: 3,
        l: 1,
    },
];

/// The departure function of R-1234ze(E)/R-227ea.
static R1234ZEE_R227EA: [Power; 3] = [
    Power {
        n: -0.057178,
        t: 1.290298,
        d: 1,
        l: 1,
    },
    Power {
        n: 0.031318,
        t: 0.038796,
        d: 2,
        l: 1,
    },
    Power {
        n: -0.027496,
        t: 2.640532,
        d: 3,
        l: 1,
    },
];

/// The departure function of alkanes.
static ALKANES: [Power; 10] = [
    Power {
        n: 2.5574776844118,
        t: 1.0,
        d: 1,
        l: 0,
    },
    Power {
        n: -7.9846357136353,
        t: 1.55,
        d: 1,
        l: 0,
    },
    Power {
        n: 4.7859131465806,
        t: 1.7,
        d: 1,
        l: 0,
    },
    Power {
        n: -0.73265392369587,
        t: 0.25,
        d: 2,
        l: 0,
    },
    Power {
        n: 1.3805471345312,
        t: 1.35,
        d: 2,
        l: 0,
    },
    Power {
        n: 0.28349603476365,
        t: 0.0,
        d: 3,
        l: 0,
    },
    Power {
        n: -0.49087385940425,
        t: 1.25,
        d: 3,
        l: 0,
    },
    Power {
        n: -0.10291888921447,
        t: 0.0,
        d: 4,
        l: 0,
    },
    Power {
        n: 0.11836314681968,
        t: 0.7,
        d: 4,
        l: 0,
    },
    Power {
        n: 5.5527385721943e-5,
        t: 5.4,
        d: 4,
        l: 0,
    },
];

/// The departure function of.
static R32_R125: [Power; 8] = [
    Power {
        n: -0.0072955,
        t: 4.5,
        d: 2,
        l: 1,
    },
    Power {
        n: 0.078035,
        t: 0.57,
        d: 5,
        l: 1,
    },
    Power {
        n: 0.61007,
        t: 1.9,
        d: 1,
        l: 2,
    },
    Power {
        n: 0.64246,
        t: 1.2,
        d: 3,
        l: 2,
    },
    Power {
        n: 0.014965,
        t: 0.5,
        d: 9,
        l: 2,
    },
    Power {
        n: -0.34049,
        t: 2.6,
        d: 2,
        l: 3,
    },
    Power {
        n: 0.085658,
        t: 11.4,
        d: 3,
        l: 3,
    },
    Power {
        n: -0.064429,
        t: 4.5,
        d: 6,
        l: 3,
    },
];

/// The departure function of R-32/R-134a.
static R32_R134A: [Power; 4] = [
    Power {
        n: 0.22909,
        t: 1.9,
        d: 1,
        l: 1,
    },
    Power {
        n: 0.094074,
        t: 0.25,
        d: 3,
        l: 1,
    },
    Power {
        n: 0.00039876,
        t: 0.07,
        d: 8,
        l: 1,
    },
    Power {
        n: 0.021113,
        t: 2.0,
        d: 1,
        l: 2,
    },
];

/// The departure function of hydrofluorocarbons.
static HYDROFLUOROCARBONS: [Power; 4] = [
    Power {
        n: -0.013073,
        t: 7.4,
        d: 1,
        l: 1,
    },
    Power {
        n: 0.018259,
        t: 0.35,
        d: 3,
        l: 1,
    },
    Power {
        n: 8.1299e-6,
        t: 10.0,
        d: 11,
        l: 2,
    },
    Power {
        n: 0.0078496,
        t: 5.3,
        d: 2,
        l: 3,
    },
];
