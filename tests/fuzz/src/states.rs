//! Any bits at the functions of properties: finite figures of one phase or of two, or a typed error.

use coldloop::air::{MoistAir, enhancement_factor, water_boiling_point_k, water_saturation_pressure_pa};
use coldloop::saturation::Side;
use coldloop::saturation::{self, State};
use coldloop::units::in_kelvins;
use coldloop::{Error, ErrorKind, Phase, Reference, Refrigerant};

/// Temperature, pressure, density, enthalpy, entropy and quality where they are sensible.
pub const T: (f64, f64) = (80.0, 700.0);
pub const P: (f64, f64) = (1.0, 1e8);
pub const RHO: (f64, f64) = (1e-6, 4e4);
pub const H: (f64, f64) = (1.0, 9e5);
pub const S: (f64, f64) = (1.0, 4e3);
pub const X: (f64, f64) = (1e-9, 1.0);

/// Panics where the result is neither a valid state nor a typed error. Of 18 bytes the first is the refrigerant and the second the function; the others are two numbers,
/// as they are or, where the second byte is above 127, as a share of what is sensible.
pub fn holds(input: &[u8]) {
    let [code, entry, numbers @ ..] = input else { return };
    let (Some(first), Some(second)) = (number(numbers, 0), number(numbers, 1)) else {
        return;
    };
    let refrigerant = Refrigerant::ALL[usize::from(*code) % Refrigerant::ALL.len()];
    let line = saturation::line_of(refrigerant);
    let within = |bits: u64, (low, high): (f64, f64)| match entry {
        128.. => low + (high - low) * ((bits >> 11) as f64 / (1_u64 << 53) as f64),
        _ => f64::from_bits(bits),
    };
    let both = |one, other| (within(first, one), within(second, other));
    let by = Reference::Iir;
    let (found, (a, b)) = match entry % 9 {
        0 => by_pair(both(T, P), |a, b| line.state_tp(a, b, by)),
        1 => by_pair(both(T, RHO), |a, b| line.state_t_rho(a, b, by)),
        2 => by_pair(both(T, X), |a, b| line.state_tq(a, b, by)),
        3 => by_pair(both(P, X), |a, b| line.state_pq(a, b, by)),
        4 => by_pair(both(P, H), |a, b| line.state_ph(a, b, by)),
        5 => by_pair(both(P, S), |a, b| line.state_ps(a, b, by)),
        6 => by_pair(both(H, S), |a, b| line.state_hs(a, b, by)),
        7 => {
            let (t_k, p_pa) = both(T, P);
            return saturated(refrigerant, t_k, p_pa);
        }
        _ => {
            let (t_k, p_pa) = both((200.0, 400.0), (1e4, 2e5));
            return humid(t_k, p_pa, f64::from(*code) / 200.0);
        }
    };
    sound(found, (refrigerant, a, b));
}

fn by_pair((a, b): (f64, f64), state: impl Fn(f64, f64) -> Result<State, Error>) -> (Result<State, Error>, (f64, f64)) {
    (state(a, b), (a, b))
}

fn number(bytes: &[u8], place: usize) -> Option<u64> {
    let eight = bytes.get(8 * place..8 * place + 8)?;
    Some(u64::from_le_bytes(eight.try_into().ok()?))
}

/// The lines of saturation.
pub fn saturated(refrigerant: Refrigerant, t_k: f64, p_pa: f64) {
    let line = saturation::line_of(refrigerant);
    let given = (refrigerant, t_k, p_pa);
    for found in [
        line.pressure_pa(Side::Bubble, t_k),
        line.pressure_pa(Side::Dew, t_k),
        line.slope_pa_k(Side::Bubble, t_k),
        line.slope_pa_k(Side::Dew, t_k),
        line.latent_heat_j_kg(t_k),
        line.temperature_k(Side::Bubble, p_pa),
        line.temperature_k(Side::Dew, p_pa),
    ] {
        match found {
            Ok(value) => assert!(value.is_finite(), "{given:?}: {value}"),
            Err(error) => typed(error, given),
        }
    }
}

/// Moist air, and water by itself.
fn humid(t_k: f64, p_pa: f64, share: f64) {
    let airs = [
        MoistAir::from_relative_humidity(t_k, p_pa, share),
        MoistAir::from_humidity_ratio(t_k, p_pa, share),
        MoistAir::from_dew_point(t_k, p_pa, 300.0 * share),
        MoistAir::from_wet_bulb(t_k, p_pa, 300.0 * share),
        MoistAir::from_enthalpy(1e3 * t_k, p_pa, share),
    ];
    for air in airs.into_iter().flatten() {
        let told = [air.t_k(), air.humidity_ratio(), air.enthalpy_j_kg(), air.volume_m3_kg()];
        assert!(told.iter().all(|figure| figure.is_finite()), "{air:?}");
        assert!(
            air.dew_point_k().is_ok_and(f64::is_finite) || air.dew_point_k().is_err(),
            "{air:?}"
        );
        assert!(
            air.wet_bulb_k().is_ok_and(f64::is_finite) || air.wet_bulb_k().is_err(),
            "{air:?}"
        );
    }
    for figure in [
        water_saturation_pressure_pa(t_k),
        water_boiling_point_k(p_pa),
        enhancement_factor(t_k, p_pa),
    ] {
        assert!(figure.is_ok_and(f64::is_finite) || figure.is_err(), "{t_k} {p_pa}");
    }
}

/// Panics unless the result is a valid state or a typed error.
pub fn sound(state: Result<State, Error>, given: (Refrigerant, f64, f64)) {
    match state {
        Ok(state) => {
            let figures = [
                in_kelvins(state.temperature()),
                state.pressure().pa(),
                state.molar_density().mol_m3(),
                state.density().kg_m3(),
                state.enthalpy().j_kg(),
                state.entropy().j_kg_k(),
            ];
            assert!(figures.iter().all(|x| x.is_finite()), "{given:?}: {state:?}");
            assert!(
                in_kelvins(state.temperature()) > 0.0
                    && state.pressure().pa() > 0.0
                    && state.molar_density().mol_m3() > 0.0,
                "{given:?}: {state:?}"
            );
            assert_eq!(state.quality.is_some(), state.phase == Phase::TwoPhase, "{given:?}");
            // A saturated side has it too, except in the critical point.
            let is_one = state.quality.is_none_or(|quality| quality == 0.0 || quality == 1.0);
            assert!(is_one || state.response.is_none(), "{given:?}: {state:?}");
            assert!(
                state.quality.is_some() || state.response.is_some(),
                "{given:?}: {state:?}"
            );
            if let Some(quality) = state.quality {
                assert!((0.0..=1.0).contains(&quality), "{given:?}: {state:?}");
            }
            if let Some(r) = state.response {
                let responses = [
                    r.cv.j_kg_k(),
                    r.cp.j_kg_k(),
                    r.speed_of_sound.m_s(),
                    r.joule_thomson_k_pa,
                    r.isobaric_expansion_1_k,
                ];
                assert!(responses.iter().all(|x| !x.is_nan()), "{given:?}: {state:?}");
            }
        }
        Err(error) => typed(error, given),
    }
}

/// Panics where a state cannot have this kind of error.
pub fn typed(error: Error, given: (Refrigerant, f64, f64)) {
    let expected = [
        ErrorKind::OutOfRange,
        ErrorKind::NotFinite,
        ErrorKind::TwoPhase,
        ErrorKind::NotAvailable,
        ErrorKind::NoConvergence,
    ];
    assert!(expected.contains(&error.kind), "{given:?}: {error:?}");
}
