//! Exact constants, and the units made of them; nothing here is a rounded conversion factor.

/// One pound, kg. Exact: international yard and pound agreement, 1959.
pub const POUND_KG: f64 = 0.453_592_37;
/// One inch, m. Exact: international yard and pound agreement, 1959.
pub const INCH_M: f64 = 0.025_4;
/// Standard gravity, m/s2. Exact: 3rd General Conference on Weights and Measures, 1901.
pub const STANDARD_GRAVITY_M_S2: f64 = 9.806_65;
/// Density of mercury in the definition of the inch of mercury, kg/m3: by convention 13.5951 g/cm3, its density at 0 °C.
///
/// Source: BS 350 (from memory); NIST Special Publication 811 (2008), appendix B.8, prints the units that follow from it.
pub const CONVENTIONAL_MERCURY_KG_M3: f64 = 13_595.1;

/// One pound-force per square inch, Pa: pound times standard gravity over inch squared, 6894.757 293 168...
pub const PSI_PA: f64 = POUND_KG * STANDARD_GRAVITY_M_S2 / (INCH_M * INCH_M);
/// One conventional millimetre of mercury, Pa: 133.322 387 415, exact.
pub const MMHG_PA: f64 = CONVENTIONAL_MERCURY_KG_M3 * STANDARD_GRAVITY_M_S2 / 1_000.0;
/// One conventional inch of mercury (0 °C), Pa: 3386.388 640 341, exact.
///
/// The inch of mercury at 60 °F, 3376.85 Pa, is another unit.
pub const INHG_PA: f64 = CONVENTIONAL_MERCURY_KG_M3 * STANDARD_GRAVITY_M_S2 * INCH_M;
/// One micron of mercury, Pa: a thousandth of the conventional millimetre.
pub const MICRON_PA: f64 = MMHG_PA / 1_000.0;
/// One kilogram-force per square centimetre, Pa. Exact.
pub const KGF_CM2_PA: f64 = STANDARD_GRAVITY_M_S2 * 10_000.0;
/// One standard atmosphere, Pa. Exact: 10th General Conference on Weights and Measures, 1954.
pub const ATMOSPHERE_PA: f64 = 101_325.0;
/// One international-table Btu, J: 1055.055 852 62, exact. Source: 5th International Conference on Properties of Steam, 1956.
pub const BTU_J: f64 = BTU_PER_POUND_J_KG * POUND_KG;
/// One international-table Btu per pound, J/kg. Exact: 5th International Conference on Properties of Steam, 1956.
pub const BTU_PER_POUND_J_KG: f64 = 2_326.0;
/// One foot, m. Exact: twelve inches.
pub const FOOT_M: f64 = 0.304_8;
/// One statute mile, m. Exact.
pub const MILE_M: f64 = 5_280.0 * FOOT_M;

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;

    /// NIST Special Publication 811 (2008), appendix B.8, prints the first seven digits; the further ones are the exact
    /// products, computed in rational numbers.
    #[test]
    fn units_are_those_of_nist_sp_811() {
        assert_relative_eq!(PSI_PA, 6_894.757_293_168_361, max_relative = 4e-16);
        assert_relative_eq!(MMHG_PA, 133.322_387_415, max_relative = 4e-16);
        assert_relative_eq!(INHG_PA, 3_386.388_640_341, max_relative = 4e-16);
        assert_relative_eq!(BTU_J, 1_055.055_852_62, max_relative = 4e-16);
        assert_relative_eq!(KGF_CM2_PA, 98_066.5, max_relative = 4e-16);
        assert_relative_eq!(MILE_M, 1_609.344, max_relative = 4e-16);
    }

    /// The ratios of units to each other are those that their definitions give.
    #[test]
    fn units_agree_with_each_other() {
        assert_relative_eq!(INHG_PA, 25.4 * MMHG_PA, max_relative = 4e-16);
        let kilogram_force_per_pound_force = KGF_CM2_PA / PSI_PA / (INCH_M * INCH_M * 10_000.0);
        assert_relative_eq!(kilogram_force_per_pound_force, 1.0 / POUND_KG, max_relative = 1e-15);
        // 1 Btu/(lb °F) = 1 cal(IT)/(g K) = 4186.8 J/(kg K), by the definition of the international-table calorie.
        assert_relative_eq!(BTU_PER_POUND_J_KG * 1.8, 4_186.8, max_relative = 4e-16);
        // torr and conventional mmHg differ by 1.4e-7: NIST Special Publication 811 (2008), B.8
        assert_relative_eq!(MMHG_PA / (ATMOSPHERE_PA / 760.0) - 1.0, 1.424_7e-7, max_relative = 1e-3);
    }
}
