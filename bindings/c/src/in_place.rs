//! Answers that overwrite arguments, memory that is not aligned, strides of every kind: what the header allows,
//! called as C calls it. `tests/run miri` runs these under Miri, which finds errors that an ordinary run may not show.

use crate::charge::{ColdloopPhaseSplit, ColdloopRemainder, ColdloopShares};
use crate::charge::{coldloop_charge_leaked, coldloop_charge_shares, coldloop_charge_split};
use crate::circuit::{ColdloopDerived, ColdloopEstimate, ColdloopReadings, coldloop_derive, coldloop_superheats};
use crate::diagnosis::{coldloop_catalogue, coldloop_record};
use crate::error::{ColdloopError, coldloop_error_message};
use crate::expected::{ColdloopBands, ColdloopConditions, coldloop_expected};
use crate::saturation::{coldloop_dew_pressure, coldloop_dew_pressures};
use crate::state::{COLDLOOP_PAIR_TP, ColdloopState, coldloop_state_temperature_pressure, coldloop_states};
use crate::units::{COLDLOOP_DATUM_GAUGE, coldloop_read_pressure};
use crate::vocabulary::coldloop_refrigerant_from_name;
use coldloop::{Compressor, Expansion, Reference, Refrigerant};
use core::mem::{MaybeUninit, size_of};
use core::ptr::{null, null_mut};

const R134A: u32 = Refrigerant::R134a.code();
const IIR: u32 = Reference::Iir.code();

/// Bytes for values of any type, aligned for none of them.
struct Memory {
    bytes: *mut [MaybeUninit<u128>; 128],
}

impl Memory {
    fn new() -> Self {
        Self {
            bytes: Box::into_raw(Box::new([MaybeUninit::uninit(); 128])),
        }
    }

    /// The place `at` bytes from the start.
    fn at<T>(&self, at: usize) -> *mut T {
        self.bytes.cast::<u8>().wrapping_add(1 + at).cast()
    }

    /// The same with a value in it.
    fn with<T>(&self, at: usize, value: T) -> *mut T {
        let place = self.at::<T>(at);
        // SAFETY: the tests stay within the 2048 bytes.
        unsafe { place.write_unaligned(value) };
        place
    }

    /// The place for a struct that is to be answered, of which only the size is initialised.
    fn blank<T>(&self, at: usize) -> *mut T {
        let place = self.with(at, MaybeUninit::<T>::uninit()).cast::<T>();
        self.with(at, size_of::<T>());
        place
    }
}

impl Drop for Memory {
    fn drop(&mut self) {
        // SAFETY: made by a box.
        drop(unsafe { Box::from_raw(self.bytes) });
    }
}

fn get<T: Copy>(at: *const T) -> T {
    // SAFETY: written by the call before.
    unsafe { at.read_unaligned() }
}

/// The bits of a struct's figures, NaN equal to itself.
fn shown(value: &impl core::fmt::Debug) -> String {
    format!("{value:?}")
}

/// A charge with two places in use; the others are not initialised.
fn charge(memory: &Memory, at: usize) -> *mut ColdloopShares {
    let place = memory
        .with(at, MaybeUninit::<ColdloopShares>::uninit())
        .cast::<ColdloopShares>();
    // SAFETY: within the memory; only the fields in use are written.
    unsafe {
        (&raw mut (*place).count).write_unaligned(2);
        (&raw mut (*place).air).write_unaligned(0.0);
        for (n, (refrigerant, mass)) in [(Refrigerant::R134a, 0.9), (Refrigerant::R22, 0.1)]
            .into_iter()
            .enumerate()
        {
            (&raw mut (*place).refrigerants)
                .cast::<u32>()
                .add(n)
                .write_unaligned(refrigerant.code());
            (&raw mut (*place).masses).cast::<f64>().add(n).write_unaligned(mass);
        }
    }
    place
}

#[test]
fn the_composition_of_a_charge_may_overwrite_the_charge() {
    let (apart, same) = (Memory::new(), Memory::new());
    let given = charge(&apart, 0);
    let answer = apart.with(500, MaybeUninit::<ColdloopShares>::uninit()).cast();
    assert_eq!(coldloop_charge_shares(given, answer, null_mut()), 0);
    let both = charge(&same, 0);
    assert_eq!(coldloop_charge_shares(both, both, null_mut()), 0);
    assert_eq!(shown(&get(both)), shown(&get(answer)));
}

#[test]
#[cfg_attr(
    miri,
    ignore = "minutes in the mixture model; the composition and the structs touch memory in the same way"
)]
fn what_a_leak_leaves_may_be_leaked_again() {
    let memory = Memory::new();
    let (apart, given) = (memory.blank::<ColdloopRemainder>(400), charge(&memory, 0));
    let leak_phase = coldloop::LeakPhase::Vapour.code();
    assert_eq!(
        coldloop_charge_leaked(given, 293.15, 250.0, leak_phase, 0.2, apart, null_mut()),
        0
    );
    // The charge lies within the struct that is answered.
    let same: *mut ColdloopRemainder = memory.blank(800);
    let within = 800 + core::mem::offset_of!(ColdloopRemainder, shares);
    let given = charge(&memory, within);
    assert_eq!(
        coldloop_charge_leaked(given, 293.15, 250.0, leak_phase, 0.2, same, null_mut()),
        0
    );
    assert_eq!(shown(&get(same)), shown(&get(apart)));
}

#[test]
#[cfg_attr(
    miri,
    ignore = "minutes in the mixture model; the composition and the structs touch memory in the same way"
)]
fn a_split_may_overwrite_the_charge() {
    let memory = Memory::new();
    let (apart, given) = (memory.blank(600), charge(&memory, 0));
    assert_eq!(coldloop_charge_split(given, 293.15, 500e3, apart, null_mut()), 0);
    let same: *mut ColdloopPhaseSplit = memory.blank(1200);
    let given = charge(&memory, 1200 + core::mem::offset_of!(ColdloopPhaseSplit, liquid));
    assert_eq!(coldloop_charge_split(given, 293.15, 500e3, same, null_mut()), 0);
    assert_eq!(shown(&get(same)), shown(&get(apart)));
}

#[test]
fn structs_of_different_kinds_may_share_their_memory() {
    let none = ColdloopEstimate {
        value: f64::NAN,
        standard_uncertainty: f64::NAN,
    };
    let read = |value: f64| ColdloopEstimate {
        value,
        standard_uncertainty: 1.0,
    };
    let readings = ColdloopReadings {
        size: size_of::<ColdloopDerived>(),
        datum: COLDLOOP_DATUM_GAUGE,
        air_pa_abs: 101_325.0,
        low_side: read(200e3),
        high_side: read(1200e3),
        ambient: read(300.0),
        vent: none,
        suction_line: read(285.0),
        discharge_line: none,
        liquid_line: read(310.0),
    };
    let memory = Memory::new();
    let (given, apart) = (memory.with(0, readings), memory.blank::<ColdloopDerived>(400));
    assert_eq!(coldloop_derive(R134A, given, apart, null_mut()), 0);
    let same: *mut ColdloopDerived = given.cast();
    assert_eq!(coldloop_derive(R134A, given, same, null_mut()), 0);
    assert_eq!(shown(&get(same)), shown(&get(apart)));

    let conditions = ColdloopConditions {
        size: size_of::<ColdloopBands>(),
        air_source: 0,
        compressor_running: 0,
        ambient_k: 300.0,
        air_pa_abs: 101_325.0,
        relative_humidity: 0.5,
        engine_speed_hz: f64::NAN,
        blower: f64::NAN,
        vehicle_speed_m_s: f64::NAN,
        running_s: f64::NAN,
        compressor_speed_hz: f64::NAN,
        commanded_displacement: f64::NAN,
        fan_command: f64::NAN,
    };
    let (expansion, compressor) = (Expansion::Txv.code(), Compressor::FixedClutch.code());
    let (given, apart) = (memory.with(0, conditions), memory.blank::<ColdloopBands>(600));
    assert_eq!(
        coldloop_expected(R134A, expansion, compressor, given, apart, null_mut()),
        0
    );
    let same: *mut ColdloopBands = given.cast();
    assert_eq!(
        coldloop_expected(R134A, expansion, compressor, given, same, null_mut()),
        0
    );
    assert_eq!(shown(&get(same)), shown(&get(apart)));
}

#[test]
fn an_answer_may_overwrite_the_text_it_was_asked_with() {
    let memory = Memory::new();
    let number = memory.with(0, *b"35 psig\0").cast();
    let (mut datum, mut length) = (0, 0);
    assert_eq!(
        coldloop_read_pressure(number, &raw mut datum, number.cast(), null_mut()),
        0
    );
    assert!((get(number.cast::<f64>()) - 241_316.5).abs() < 1.0 && datum == COLDLOOP_DATUM_GAUGE);
    let name = memory.with(0, *b"R-134a\0").cast();
    assert_eq!(coldloop_refrigerant_from_name(name, name.cast(), null_mut()), 0);
    assert_eq!(get(name.cast::<u32>()), R134A);

    let system = *b"{\"system\": {\"refrigerant\": \"R-134a\", \"expansion\": \"txv\"}}\0";
    let text = memory.with(0, system).cast();
    assert_ne!(coldloop_catalogue(text, text, 1024, &raw mut length, null_mut()), 0);
    assert!(get(text.cast::<[u8; 11]>()) == *b"{\"refused\":" && length > 0);
    let counts = memory.with(0, *b"\xff\0").cast();
    assert_ne!(
        coldloop_record(counts, counts, 0, counts, 10, null_mut(), null_mut()),
        0
    );
    assert_eq!(get(counts), 0);

    let error = memory.blank::<ColdloopError>(0);
    assert_ne!(
        coldloop_dew_pressure(R134A, 1000.0, &raw mut length as *mut f64, error),
        0
    );
    assert!(coldloop_error_message(error, error.cast(), 40) > 10);
    assert_eq!(get(error.cast::<[u8; 11]>()), *b"temperature");
}

#[test]
fn rows_may_be_answered_in_place_and_backwards() {
    let temperatures = [260.0, 270.0, 280.0, 290.0];
    let memory = Memory::new();
    let given = memory.with(0, temperatures).cast::<f64>();
    let dew = memory.with(100, [f64::NAN; 4]).cast::<f64>();
    let mut failed = 99;
    let failed = &raw mut failed;
    assert_eq!(
        coldloop_dew_pressures(R134A, 4, given, 8, dew, 8, failed, null_mut()),
        0
    );
    let forwards: [f64; 4] = get(dew.cast());
    // The pointer names the first row, which is the last place in memory.
    let last = given.wrapping_add(3);
    assert_eq!(
        coldloop_dew_pressures(R134A, 4, last, -8, dew, 8, failed, null_mut()),
        0
    );
    let mut backwards: [f64; 4] = get(dew.cast());
    backwards.reverse();
    assert_eq!(backwards, forwards);
    assert_eq!(
        coldloop_dew_pressures(R134A, 4, last, -8, last, -8, failed, null_mut()),
        0
    );
    assert_eq!((get(given.cast::<[f64; 4]>()), get(failed)), (forwards, 0));

    // Superheats over their own lines, with one pressure for all.
    let lines = memory.with(0, [290.0, 300.0]).cast::<f64>();
    let pressure = memory.with(100, 200e3);
    let superheats = memory.with(200, [f64::NAN; 2]).cast::<f64>();
    let call = |count, line, line_stride, out, out_stride| {
        coldloop_superheats(
            R134A,
            COLDLOOP_DATUM_GAUGE,
            101_325.0,
            count,
            line,
            line_stride,
            pressure,
            0,
            out,
            out_stride,
            null_mut(),
            null_mut(),
        )
    };
    assert_eq!(call(2, lines, 8, superheats, 8), 0);
    let forwards: [f64; 2] = get(superheats.cast());
    let last = lines.wrapping_add(1);
    assert_eq!(call(2, last, -8, last, -8), 0);
    assert_eq!(get(lines.cast::<[f64; 2]>()), forwards);
}

#[test]
fn states_may_be_answered_over_their_own_rows() {
    let size = size_of::<ColdloopState>();
    let memory = Memory::new();
    let one: *mut ColdloopState = memory.blank(1500);
    // Two structs, each with its temperature and pressure in it, from the second one backwards.
    let stride = size.cast_signed();
    for (at, t_k) in [(0, 300.0), (size, 310.0)] {
        let state: *mut ColdloopState = memory.blank(at);
        // SAFETY: within the memory.
        unsafe {
            (&raw mut (*state).temperature_k).write_unaligned(t_k);
            (&raw mut (*state).pressure_pa_abs).write_unaligned(200e3);
        }
    }
    let last = memory.at::<ColdloopState>(size);
    let field = |offset| last.cast::<u8>().wrapping_add(offset).cast::<f64>().cast_const();
    let t_k = field(core::mem::offset_of!(ColdloopState, temperature_k));
    let p_pa = field(core::mem::offset_of!(ColdloopState, pressure_pa_abs));
    let pair = COLDLOOP_PAIR_TP;
    let (failed, error) = (null_mut(), null_mut());
    assert_eq!(
        coldloop_states(
            R134A, IIR, pair, 2, t_k, -stride, p_pa, -stride, last, -stride, failed, error
        ),
        0
    );
    for (at, t_k) in [(0, 300.0), (size, 310.0)] {
        assert_eq!(
            coldloop_state_temperature_pressure(R134A, IIR, t_k, 200e3, one, null_mut()),
            0
        );
        assert_eq!(shown(&get(memory.at::<ColdloopState>(at))), shown(&get(one)));
    }
    assert_ne!(
        coldloop_state_temperature_pressure(R134A, IIR, 300.0, 200e3, null_mut(), null_mut()),
        0
    );
    assert_ne!(coldloop_charge_shares(null(), null_mut(), null_mut()), 0);
}
