//! The texts of the page in every language.
//!
//! Generated from tables/texts.toml by tables/names; edit the table, not this file.

use super::language::column;
use crate::names::*;

/// What the page calls a member of a vocabulary.
pub(super) trait Named {
    /// Its name.
    fn name(self, language: Language) -> &'static str;
}

/// What the page says in a few words.
pub(super) trait Short {
    /// A few words.
    fn short(self, language: Language) -> &'static str;
}

/// What the page says in a sentence.
pub(super) trait Sentence {
    /// A sentence.
    fn sentence(self, language: Language) -> &'static str;
}

/// A text of the page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Text {
    /// {figure} above normal
    AboveNormal,
    /// after the expansion device, with the enthalpy of 3
    AfterExpansion,
    /// After the repair
    AfterRepair,
    /// All together
    AllTogether,
    /// Also worth checking
    AlsoCheck,
    /// and
    And,
    /// at {rpm} rpm
    AtSpeed,
    /// bar gauge
    BarGauge,
    /// Normal here today is taken from: {basis}
    Basis,
    /// Before the repair: {result}
    BeforeRepair,
    /// {figure} below normal
    BelowNormal,
    /// When all tests are passed, evacuate, charge by weight, then run the A/C and read again.
    ChargeFirst,
    /// Charge found
    ChargeFound,
    /// Charge now
    ChargeNow,
    /// more common
    Commoner,
    /// condenser outlet
    CondenserOutlet,
    /// condensing at
    Condensing,
    /// condensing above ambient
    CondensingAboveAmbient,
    /// discharge line
    DischargeLine,
    /// Do first
    DoFirst,
    /// {figure} does not fit: measure it again.
    DoesNotFit,
    /// drawn for a compressor without losses
    DrawnIdeal,
    /// drawn as saturated
    DrawnSaturated,
    /// a dry circuit stays below {value} micron
    DryBelow,
    /// empty in {low} to {high} months
    EmptyIn,
    /// enthalpy
    Enthalpy,
    /// Evacuation
    Evacuation,
    /// evaporating at
    Evaporating,
    /// From the readings (± covers 95 %)
    Figures,
    /// fixed
    Fixed,
    /// fresh air
    FreshAir,
    /// {mass} ± {spread} g
    Grams,
    /// Change no part on suspicion: hand the vehicle over to a specialist.
    HandOver,
    /// {refrigerant}, {expansion}, {compressor}; {ambient}
    Heading,
    /// Held vacuum
    HeldVacuum,
    /// in the high part of normal
    HighInBand,
    /// hold {hours} h to see the allowed loss
    HoldForAllowed,
    /// hold {hours} h to see a loss that empties it within a year
    HoldForYear,
    /// {value} % RH
    Humidity,
    /// The instruments may mislead ({odds}): {way}
    Instruments,
    /// kPa gauge
    KpaGauge,
    /// at the end {rise} ± {spread} micron a minute
    LateRise,
    /// A leak was found.
    LeakFound,
    /// Leak search
    LeakSearch,
    /// a loss below {value} g/h would not show
    LeastSeenHour,
    /// a loss below {low} to {high} g of refrigerant a year would not show
    LeastSeenYear,
    /// What limits this result
    Limits,
    /// liquid line
    LiquidLine,
    /// logarithmic
    Logarithmic,
    /// it loses {low} to {high} g of refrigerant a year if the leak is a hole or a crack
    Loses,
    /// in the low part of normal
    LowInBand,
    /// check
    MarkCheck,
    /// hand over
    MarkHandOver,
    /// repair
    MarkRepair,
    /// measured
    Measured,
    /// micron
    Micron,
    /// {minutes} min
    Minutes,
    /// {minutes} min, parts worth {parts} min
    MinutesAndParts,
    /// {count} more in the details.
    MoreLimits,
    /// No fault stands out
    NoFaultStandsOut,
    /// The charge on the label was not given.
    NoLabel,
    /// No leak was found.
    NoLeakFound,
    /// none of these
    NoneOfThese,
    /// normal here today
    NormalHereToday,
    /// normal {low} to {high}
    NormalRange,
    /// normal here today ({share} % of vehicles)
    NormalShare,
    /// Not drawn: {reason}
    NotDrawn,
    /// Too little was measured to judge
    NotEnough,
    /// not fixed
    NotFixed,
    /// Not judged
    NotJudged,
    /// not read
    NotRead,
    /// Not settled: {faults}
    NotSettled,
    /// No single explanation fits: measure again
    NothingFits,
    /// no fault now: {odds}; {fault} still there: {still}
    NowNormal,
    /// or
    Or,
    /// Other cautions
    OtherCautions,
    /// over 99 %
    Over99,
    /// both {faults} {odds}
    Pair,
    /// Cycle: pressure and enthalpy
    PictureCycle,
    /// How likely
    PictureOdds,
    /// Plan
    PicturePlan,
    /// Readings and what is normal here today
    PictureReadings,
    /// About {minutes} min until repaired, parts as labour time.
    PlanTotal,
    /// About {minutes} min until repaired, parts as labour time ({without} without checks).
    PlanWithoutChecks,
    /// pressure
    Pressure,
    /// pressure above vacuum
    PressureAbsolute,
    /// pressure ratio
    PressureRatio,
    /// What was done since
    Proof,
    /// After the repair read all again with the same instruments, {speed}, {air}.
    ProveAfter,
    /// Also read before the repair, with the A/C running: {readings}.
    ProveBefore,
    /// Readings on file from when the vehicle worked well make the proof stronger.
    ProveOnFile,
    /// Only readings of the running system can prove the repair.
    ProveRunning,
    /// pseudo-critical at
    PseudoCritical,
    /// pseudo-critical above ambient
    PseudoCriticalAboveAmbient,
    /// Pull-down
    PullDown,
    /// {low} to {high}
    Range,
    /// less common
    Rarer,
    /// {reached} micron reached; water in the coldest part boils below {water} micron
    Reached,
    /// Readings
    Readings,
    /// Readings before the repair
    ReadingsBefore,
    /// recirculated air
    RecirculatedAir,
    /// {off} above saturation, ± {spread}
    RestingAbove,
    /// at saturation, ± {spread}
    RestingAt,
    /// {off} below saturation, ± {spread}
    RestingBelow,
    /// {off} above saturation: about {share} % gas, or parts {warmer} warmer than the ambient: wait an hour, read again
    RestingGas,
    /// {off} below saturation: {share} % of the charge is missing
    RestingMissing,
    /// {rise} ± {spread} micron in {minutes} min
    Rise,
    /// same air source
    SameAir,
    /// same A/C setting
    SameSetting,
    /// same engine speed
    SameSpeed,
    /// saturation temperature of this pressure
    SaturationAtRest,
    /// boiling liquid (left) and condensing vapour (right)
    SaturationLine,
    /// {share} % of vehicles
    ShareOfVehicles,
    /// A slight fault would read the same.
    SlightFault,
    /// {strength} against
    SpeaksAgainst,
    /// {strength} for
    SpeaksFor,
    /// High side {read}, 95 % of the cut-out {limit}.
    StopCutOut,
    /// High side {read}, limit {limit}.
    StopHighSide,
    /// subcooling
    Subcooling,
    /// suction line
    SuctionLine,
    /// superheat
    Superheat,
    /// Take care
    TakeCare,
    /// Test pressure
    TestPressure,
    /// a tight circuit would end at {value}
    TightEnd,
    /// time, min
    TimeMin,
    /// To prove the repair
    ToProve,
    /// Two faults at once: {faults}
    TwoAtOnce,
    /// under 1 %
    Under1,
    /// usual
    Usual,
    /// the vent, corrected for weather, is {value} colder
    VentColder,
    /// the vent, corrected for weather, is {value} warmer
    VentWarmer,
    /// water boils in the warmest part at {value} micron
    WaterBoils,
    /// The weakest proof: {proof}
    Weakest,
    /// What else
    WhatElse,
    /// What the outcome means, and what then
    WhatThen,
    /// Why {fault} rather than {rival}
    Why,
    /// {figure} normal
    WithinNormal,
    /// the air here lets a gauge show at most {deepest} inHg of vacuum: this gauge is off by {off} inHg or more, and counts as the deepest that it can show
    ZeroOff,
}

impl Text {
    /// In a language.
    pub(super) const fn of(self, language: Language) -> &'static str {
        let both = match self {
            Text::AboveNormal => ["{figure} above normal", "{figure} por encima de lo normal"],
            Text::AfterExpansion => [
                "after the expansion device, with the enthalpy of 3",
                "después de la expansión, con la entalpía de 3",
            ],
            Text::AfterRepair => ["After the repair", "Después de la reparación"],
            Text::AllTogether => ["All together", "En conjunto"],
            Text::AlsoCheck => ["Also worth checking", "También conviene comprobar"],
            Text::And => ["and", "y"],
            Text::AtSpeed => ["at {rpm} rpm", "a {rpm} rpm"],
            Text::BarGauge => ["bar gauge", "bar relativos"],
            Text::Basis => [
                "Normal here today is taken from: {basis}",
                "Lo normal aquí hoy se toma de: {basis}",
            ],
            Text::BeforeRepair => ["Before the repair: {result}", "Antes de la reparación: {result}"],
            Text::BelowNormal => ["{figure} below normal", "{figure} por debajo de lo normal"],
            Text::ChargeFirst => [
                "When all tests are passed, evacuate, charge by weight, then run the A/C and read again.",
                "Cuando todas las pruebas estén superadas, hacer vacío, cargar por peso, y luego hacer funcionar el A/C y leer de nuevo.",
            ],
            Text::ChargeFound => ["Charge found", "Carga encontrada"],
            Text::ChargeNow => ["Charge now", "Carga actual"],
            Text::Commoner => ["more common", "más común"],
            Text::CondenserOutlet => ["condenser outlet", "salida del condensador"],
            Text::Condensing => ["condensing at", "condensa a"],
            Text::CondensingAboveAmbient => ["condensing above ambient", "condensación sobre el ambiente"],
            Text::DischargeLine => ["discharge line", "línea de descarga"],
            Text::DoFirst => ["Do first", "Primer paso"],
            Text::DoesNotFit => [
                "{figure} does not fit: measure it again.",
                "{figure} no concuerda: medir de nuevo.",
            ],
            Text::DrawnIdeal => [
                "drawn for a compressor without losses",
                "dibujada para un compresor sin pérdidas",
            ],
            Text::DrawnSaturated => ["drawn as saturated", "dibujada como saturada"],
            Text::DryBelow => [
                "a dry circuit stays below {value} micron",
                "un circuito seco queda por debajo de {value} micrones",
            ],
            Text::EmptyIn => ["empty in {low} to {high} months", "vacío en {low} a {high} meses"],
            Text::Enthalpy => ["enthalpy", "entalpía"],
            Text::Evacuation => ["Evacuation", "Vacío"],
            Text::Evaporating => ["evaporating at", "evapora a"],
            Text::Figures => ["From the readings (± covers 95 %)", "De las lecturas (± cubre el 95 %)"],
            Text::Fixed => ["fixed", "reparado"],
            Text::FreshAir => ["fresh air", "aire exterior"],
            Text::Grams => ["{mass} ± {spread} g", "{mass} ± {spread} g"],
            Text::HandOver => [
                "Change no part on suspicion: hand the vehicle over to a specialist.",
                "No cambiar piezas por sospecha: entregar el vehículo a un especialista.",
            ],
            Text::Heading => [
                "{refrigerant}, {expansion}, {compressor}; {ambient}",
                "{refrigerant}, {expansion}, {compressor}; {ambient}",
            ],
            Text::HeldVacuum => ["Held vacuum", "Vacío mantenido"],
            Text::HighInBand => ["in the high part of normal", "en la parte alta de lo normal"],
            Text::HoldForAllowed => [
                "hold {hours} h to see the allowed loss",
                "mantener {hours} h para ver la pérdida permitida",
            ],
            Text::HoldForYear => [
                "hold {hours} h to see a loss that empties it within a year",
                "mantener {hours} h para ver una pérdida que lo vacía en un año",
            ],
            Text::Humidity => ["{value} % RH", "{value} % HR"],
            Text::Instruments => [
                "The instruments may mislead ({odds}): {way}",
                "Los instrumentos pueden engañar ({odds}): {way}",
            ],
            Text::KpaGauge => ["kPa gauge", "kPa relativos"],
            Text::LateRise => [
                "at the end {rise} ± {spread} micron a minute",
                "al final {rise} ± {spread} micrones por minuto",
            ],
            Text::LeakFound => ["A leak was found.", "Se encontró una fuga."],
            Text::LeakSearch => ["Leak search", "Búsqueda de fugas"],
            Text::LeastSeenHour => [
                "a loss below {value} g/h would not show",
                "una pérdida menor de {value} g/h no se vería",
            ],
            Text::LeastSeenYear => [
                "a loss below {low} to {high} g of refrigerant a year would not show",
                "una pérdida menor de {low} a {high} g de refrigerante al año no se vería",
            ],
            Text::Limits => ["What limits this result", "Qué limita este resultado"],
            Text::LiquidLine => ["liquid line", "línea de líquido"],
            Text::Logarithmic => ["logarithmic", "logarítmica"],
            Text::Loses => [
                "it loses {low} to {high} g of refrigerant a year if the leak is a hole or a crack",
                "pierde de {low} a {high} g de refrigerante al año si la fuga es un orificio o una grieta",
            ],
            Text::LowInBand => ["in the low part of normal", "en la parte baja de lo normal"],
            Text::MarkCheck => ["check", "comprobación"],
            Text::MarkHandOver => ["hand over", "entregar"],
            Text::MarkRepair => ["repair", "reparación"],
            Text::Measured => ["measured", "medido"],
            Text::Micron => ["micron", "micrones"],
            Text::Minutes => ["{minutes} min", "{minutes} min"],
            Text::MinutesAndParts => [
                "{minutes} min, parts worth {parts} min",
                "{minutes} min, piezas por valor de {parts} min",
            ],
            Text::MoreLimits => ["{count} more in the details.", "{count} más en los detalles."],
            Text::NoFaultStandsOut => ["No fault stands out", "No se destaca ninguna falla"],
            Text::NoLabel => [
                "The charge on the label was not given.",
                "No se dio la carga de la etiqueta.",
            ],
            Text::NoLeakFound => ["No leak was found.", "No se encontró ninguna fuga."],
            Text::NoneOfThese => ["none of these", "ninguna de estas"],
            Text::NormalHereToday => ["normal here today", "normal aquí hoy"],
            Text::NormalRange => ["normal {low} to {high}", "normal {low} a {high}"],
            Text::NormalShare => [
                "normal here today ({share} % of vehicles)",
                "normal aquí hoy ({share} % de los vehículos)",
            ],
            Text::NotDrawn => ["Not drawn: {reason}", "Sin dibujar: {reason}"],
            Text::NotEnough => ["Too little was measured to judge", "Se midió muy poco para juzgar"],
            Text::NotFixed => ["not fixed", "no reparado"],
            Text::NotJudged => ["Not judged", "Sin juzgar"],
            Text::NotRead => ["not read", "sin leer"],
            Text::NotSettled => ["Not settled: {faults}", "Sin decidir: {faults}"],
            Text::NothingFits => [
                "No single explanation fits: measure again",
                "Ninguna explicación sola concuerda: medir de nuevo",
            ],
            Text::NowNormal => [
                "no fault now: {odds}; {fault} still there: {still}",
                "sin falla ahora: {odds}; {fault} sigue presente: {still}",
            ],
            Text::Or => ["or", "o"],
            Text::OtherCautions => ["Other cautions", "Otras precauciones"],
            Text::Over99 => ["over 99 %", "más de 99 %"],
            Text::Pair => ["both {faults} {odds}", "{faults} a la vez {odds}"],
            Text::PictureCycle => ["Cycle: pressure and enthalpy", "Ciclo: presión y entalpía"],
            Text::PictureOdds => ["How likely", "Qué tan probable"],
            Text::PicturePlan => ["Plan", "Plan"],
            Text::PictureReadings => [
                "Readings and what is normal here today",
                "Lecturas y lo normal aquí hoy",
            ],
            Text::PlanTotal => [
                "About {minutes} min until repaired, parts as labour time.",
                "Unos {minutes} min hasta repararlo, piezas como mano de obra.",
            ],
            Text::PlanWithoutChecks => [
                "About {minutes} min until repaired, parts as labour time ({without} without checks).",
                "Unos {minutes} min hasta repararlo, piezas como mano de obra ({without} sin comprobar).",
            ],
            Text::Pressure => ["pressure", "presión"],
            Text::PressureAbsolute => ["pressure above vacuum", "presión sobre el vacío"],
            Text::PressureRatio => ["pressure ratio", "relación de presiones"],
            Text::Proof => ["What was done since", "Qué se hizo desde entonces"],
            Text::ProveAfter => [
                "After the repair read all again with the same instruments, {speed}, {air}.",
                "Después de la reparación leer todo de nuevo con los mismos instrumentos, {speed}, {air}.",
            ],
            Text::ProveBefore => [
                "Also read before the repair, with the A/C running: {readings}.",
                "Leer también antes de la reparación, con el A/C en marcha: {readings}.",
            ],
            Text::ProveOnFile => [
                "Readings on file from when the vehicle worked well make the proof stronger.",
                "Lecturas guardadas de cuando el vehículo andaba bien refuerzan la prueba.",
            ],
            Text::ProveRunning => [
                "Only readings of the running system can prove the repair.",
                "Solo las lecturas del sistema en marcha pueden probar la reparación.",
            ],
            Text::PseudoCritical => ["pseudo-critical at", "pseudocrítico a"],
            Text::PseudoCriticalAboveAmbient => ["pseudo-critical above ambient", "pseudocrítico sobre el ambiente"],
            Text::PullDown => ["Pull-down", "Enfriamiento inicial"],
            Text::Range => ["{low} to {high}", "{low} a {high}"],
            Text::Rarer => ["less common", "menos común"],
            Text::Reached => [
                "{reached} micron reached; water in the coldest part boils below {water} micron",
                "se alcanzaron {reached} micrones; el agua en la parte más fría hierve por debajo de {water} micrones",
            ],
            Text::Readings => ["Readings", "Lecturas"],
            Text::ReadingsBefore => ["Readings before the repair", "Lecturas antes de la reparación"],
            Text::RecirculatedAir => ["recirculated air", "aire recirculado"],
            Text::RestingAbove => [
                "{off} above saturation, ± {spread}",
                "{off} por encima de la saturación, ± {spread}",
            ],
            Text::RestingAt => ["at saturation, ± {spread}", "en la saturación, ± {spread}"],
            Text::RestingBelow => [
                "{off} below saturation, ± {spread}",
                "{off} por debajo de la saturación, ± {spread}",
            ],
            Text::RestingGas => [
                "{off} above saturation: about {share} % gas, or parts {warmer} warmer than the ambient: wait an hour, read again",
                "{off} por encima de la saturación: cerca de {share} % de gas, o piezas {warmer} más calientes que el ambiente: esperar una hora y leer de nuevo",
            ],
            Text::RestingMissing => [
                "{off} below saturation: {share} % of the charge is missing",
                "{off} por debajo de la saturación: falta el {share} % de la carga",
            ],
            Text::Rise => [
                "{rise} ± {spread} micron in {minutes} min",
                "{rise} ± {spread} micrones en {minutes} min",
            ],
            Text::SameAir => ["same air source", "misma fuente de aire"],
            Text::SameSetting => ["same A/C setting", "mismo ajuste del A/C"],
            Text::SameSpeed => ["same engine speed", "mismo régimen"],
            Text::SaturationAtRest => [
                "saturation temperature of this pressure",
                "temperatura de saturación de esta presión",
            ],
            Text::SaturationLine => [
                "boiling liquid (left) and condensing vapour (right)",
                "líquido que hierve (izquierda) y vapor que condensa (derecha)",
            ],
            Text::ShareOfVehicles => ["{share} % of vehicles", "{share} % de los vehículos"],
            Text::SlightFault => [
                "A slight fault would read the same.",
                "Una falla leve daría las mismas lecturas.",
            ],
            Text::SpeaksAgainst => ["{strength} against", "{strength} en contra"],
            Text::SpeaksFor => ["{strength} for", "{strength} a favor"],
            Text::StopCutOut => [
                "High side {read}, 95 % of the cut-out {limit}.",
                "Lado de alta {read}, 95 % del corte {limit}.",
            ],
            Text::StopHighSide => [
                "High side {read}, limit {limit}.",
                "Lado de alta {read}, límite {limit}.",
            ],
            Text::Subcooling => ["subcooling", "subenfriamiento"],
            Text::SuctionLine => ["suction line", "línea de succión"],
            Text::Superheat => ["superheat", "sobrecalentamiento"],
            Text::TakeCare => ["Take care", "Precauciones"],
            Text::TestPressure => ["Test pressure", "Prueba de presión"],
            Text::TightEnd => [
                "a tight circuit would end at {value}",
                "un circuito hermético terminaría en {value}",
            ],
            Text::TimeMin => ["time, min", "tiempo, min"],
            Text::ToProve => ["To prove the repair", "Para probar la reparación"],
            Text::TwoAtOnce => ["Two faults at once: {faults}", "Dos fallas a la vez: {faults}"],
            Text::Under1 => ["under 1 %", "menos de 1 %"],
            Text::Usual => ["usual", "usual"],
            Text::VentColder => [
                "the vent, corrected for weather, is {value} colder",
                "la salida, corregida por el clima, está {value} más fría",
            ],
            Text::VentWarmer => [
                "the vent, corrected for weather, is {value} warmer",
                "la salida, corregida por el clima, está {value} más caliente",
            ],
            Text::WaterBoils => [
                "water boils in the warmest part at {value} micron",
                "el agua hierve en la parte más caliente a {value} micrones",
            ],
            Text::Weakest => ["The weakest proof: {proof}", "La prueba menos firme: {proof}"],
            Text::WhatElse => ["What else", "Qué más puede ser"],
            Text::WhatThen => [
                "What the outcome means, and what then",
                "Qué significa el resultado, y qué sigue",
            ],
            Text::Why => ["Why {fault} rather than {rival}", "Por qué {fault} antes que {rival}"],
            Text::WithinNormal => ["{figure} normal", "{figure} normal"],
            Text::ZeroOff => [
                "the air here lets a gauge show at most {deepest} inHg of vacuum: this gauge is off by {off} inHg or more, and counts as the deepest that it can show",
                "el aire aquí permite que un manómetro muestre a lo sumo {deepest} inHg de vacío: este se desvía {off} inHg o más, y cuenta como lo más profundo que puede mostrar",
            ],
        };
        both[column(language)]
    }
}

impl Named for Compressor {
    fn name(self, language: Language) -> &'static str {
        let both = match self {
            Compressor::FixedClutch => ["fixed clutch compressor", "compresor fijo con embrague"],
            Compressor::VariableInternal => ["variable compressor (internal)", "compresor variable (interno)"],
            Compressor::VariableExternal => ["variable compressor (external)", "compresor variable (externo)"],
            Compressor::Electric => ["electric compressor", "compresor eléctrico"],
        };
        both[column(language)]
    }
}

impl Named for Expansion {
    fn name(self, language: Language) -> &'static str {
        let both = match self {
            Expansion::Txv => ["TXV", "válvula de expansión"],
            Expansion::OrificeTube => ["orifice tube", "tubo de orificio"],
        };
        both[column(language)]
    }
}

impl Named for Fault {
    fn name(self, language: Language) -> &'static str {
        let both = match self {
            Fault::NoFault => ["no fault", "sin falla"],
            Fault::WornCompressor => ["worn compressor", "compresor desgastado"],
            Fault::Undercharge => ["undercharge", "carga insuficiente"],
            Fault::Overcharge => ["overcharge", "exceso de carga"],
            Fault::CondenserAirflowLoss => ["condenser airflow loss", "poco aire por el condensador"],
            Fault::NonCondensables => ["non-condensables (air)", "gases no condensables (aire)"],
            Fault::LiquidLineRestriction => ["liquid-line restriction", "restricción en la línea de líquido"],
            Fault::ExpansionValveStuckOpen => ["expansion valve stuck open", "válvula de expansión trabada abierta"],
            Fault::ExpansionValveStuckClosed => {
                ["expansion valve stuck closed", "válvula de expansión trabada cerrada"]
            }
            Fault::OrificeRestricted => ["restricted orifice tube", "tubo de orificio obstruido"],
            Fault::EvaporatorAirflowLoss => ["evaporator airflow loss", "poco aire por el evaporador"],
            Fault::EvaporatorIcing => ["evaporator icing", "hielo en el evaporador"],
            Fault::MoistureIcing => [
                "moisture freezing at the expansion device",
                "humedad que se congela en el dispositivo de expansión",
            ],
            Fault::CompressorControlFault => ["compressor control fault", "falla del control del compresor"],
            Fault::ClutchNotEngaged => ["clutch not engaged", "embrague sin acoplar"],
            Fault::ClutchSlipping => ["clutch or belt slipping", "embrague o correa que patina"],
            Fault::HeaterAirMixing => ["warm air from the heater", "aire caliente del calefactor"],
            Fault::HighSideRestriction => ["high-side restriction", "restricción en el lado de alta"],
            Fault::SuctionLineRestriction => ["suction-line restriction", "restricción en la línea de succión"],
            Fault::WrongRefrigerant => ["wrong refrigerant", "refrigerante equivocado"],
            Fault::GaugeError => ["gauge error", "error de manómetros"],
        };
        both[column(language)]
    }
}

impl Named for Feature {
    fn name(self, language: Language) -> &'static str {
        let both = match self {
            Feature::LowSide => ["low side", "lado de baja"],
            Feature::HighSide => ["high side", "lado de alta"],
            Feature::Vent => ["vent", "salida de aire"],
            Feature::Superheat => ["superheat", "sobrecalentamiento"],
            Feature::Subcooling => ["subcooling", "subenfriamiento"],
            Feature::DischargeSuperheat => ["discharge superheat", "sobrecal. de descarga"],
            Feature::ClutchCycles => ["clutch cycles", "ciclado del embrague"],
            Feature::RestPressure => ["pressure at rest", "presión en reposo"],
        };
        both[column(language)]
    }
}

impl Named for ReadingKind {
    fn name(self, language: Language) -> &'static str {
        let both = match self {
            ReadingKind::LowSide => ["low side", "lado de baja"],
            ReadingKind::HighSide => ["high side", "lado de alta"],
            ReadingKind::Vent => ["vent", "salida de aire"],
            ReadingKind::Cabin => ["cabin", "cabina"],
            ReadingKind::SuctionLine => ["suction line", "línea de succión"],
            ReadingKind::DischargeLine => ["discharge line", "línea de descarga"],
            ReadingKind::LiquidLine => ["liquid line", "línea de líquido"],
            ReadingKind::CondenserOutlet => ["condenser outlet", "salida del condensador"],
            ReadingKind::ClutchCycles => ["clutch cycles", "ciclado del embrague"],
            ReadingKind::HighSideTransducer => ["high-side transducer", "transductor de alta"],
            ReadingKind::EvaporatorSensor => ["evaporator sensor", "sensor del evaporador"],
        };
        both[column(language)]
    }
}

impl Named for Standing {
    fn name(self, language: Language) -> &'static str {
        let both = match self {
            Standing::FarTooLow => ["far too low", "muy por debajo"],
            Standing::TooLow => ["too low", "por debajo"],
            Standing::RatherLow => ["rather low", "algo por debajo"],
            Standing::Normal => ["normal", "normal"],
            Standing::RatherHigh => ["rather high", "algo por encima"],
            Standing::TooHigh => ["too high", "por encima"],
            Standing::FarTooHigh => ["far too high", "muy por encima"],
        };
        both[column(language)]
    }
}

impl Named for Strength {
    fn name(self, language: Language) -> &'static str {
        let both = match self {
            Strength::Hardly => ["hardly", "apenas"],
            Strength::Slightly => ["slightly", "levemente"],
            Strength::Clearly => ["clearly", "claramente"],
            Strength::Strongly => ["strongly", "fuertemente"],
        };
        both[column(language)]
    }
}

impl Short for Caution {
    fn short(self, language: Language) -> &'static str {
        let both = match self {
            Caution::Pressure => ["circuit under pressure: goggles", "circuito bajo presión: gafas"],
            Caution::Frostbite => [
                "refrigerant freezes skin: gloves",
                "el refrigerante congela la piel: guantes",
            ],
            Caution::MovingParts => [
                "belts and fans start without warning",
                "correas y ventiladores arrancan sin aviso",
            ],
            Caution::Flammable => [
                "flammable: no ignition source, ventilate, rated equipment",
                "inflamable: sin fuentes de ignición, ventilar, equipo apto",
            ],
            Caution::HighVoltage => [
                "high voltage: qualified persons only",
                "alta tensión: solo personal cualificado",
            ],
            Caution::NoVenting => ["recover, never release", "recuperar, nunca liberar"],
            Caution::LocalRules => [
                "maker's data and local rules first",
                "primero los datos del fabricante y las normas locales",
            ],
            Caution::Ventilation => [
                "ventilate at floor level, no flames",
                "ventilar a nivel del piso, sin llamas",
            ],
            Caution::Certification => ["certified persons only", "solo personal certificado"],
            Caution::TestPressure => [
                "pressure test: dry nitrogen only, within the label's limit",
                "prueba de presión: solo nitrógeno seco, dentro del límite de la etiqueta",
            ],
            Caution::CarbonDioxide => [
                "R-744: very high pressure, suffocates without warning: ventilate, rated equipment only",
                "R-744: presión muy alta, asfixia sin aviso: ventilar, solo equipo apto",
            ],
            Caution::ForeignRefrigerant => [
                "contents unknown, may be flammable: identify first",
                "contenido desconocido, puede ser inflamable: identificar antes",
            ],
            Caution::HotParts => [
                "hot discharge line, engine and exhaust",
                "línea de descarga, motor y escape calientes",
            ],
            Caution::DoNotRun => [
                "do not run the compressor: circuit empty or with air",
                "no hacer funcionar el compresor: circuito vacío o con aire",
            ],
            Caution::TestTooHigh => [
                "test pressure too high: let it down before anyone comes near",
                "presión de prueba demasiado alta: bajarla antes de que alguien se acerque",
            ],
            Caution::HighVoltageCables => [
                "keep off orange cables and the inverter",
                "no tocar los cables naranja ni el inversor",
            ],
            Caution::Exhaust => ["lead the exhaust outdoors", "llevar el escape al exterior"],
            Caution::ParkAndChock => [
                "parking brake on, wheels chocked, nobody in front",
                "freno puesto, ruedas calzadas, nadie delante",
            ],
            Caution::HotCoolant => [
                "hot coolant scalds: do not open it, hose clamp tool only",
                "el líquido caliente escalda: no abrir, solo pinza para mangueras",
            ],
            Caution::ConnectStopped => [
                "connect hoses with engine and A/C off",
                "conectar las mangueras con motor y A/C apagados",
            ],
            Caution::HandAndIce => [
                "warm by hand, cool with ice, never a flame",
                "calentar con la mano, enfriar con hielo, nunca llama",
            ],
            Caution::RightOil => ["maker's oil only", "solo el aceite del fabricante"],
            Caution::InsulatingOil => [
                "insulating oil of the maker only",
                "solo el aceite aislante del fabricante",
            ],
            Caution::ReleaseSlowly => [
                "release R-744 slowly outdoors or into an extraction, nobody near",
                "liberar el R-744 despacio al aire libre o a una extracción, nadie cerca",
            ],
            Caution::HighSideNearLimit => [
                "high side near its limit: switch the A/C off if it rises",
                "lado de alta cerca de su límite: apagar el A/C si sube",
            ],
        };
        both[column(language)]
    }
}

impl Sentence for Caution {
    fn sentence(self, language: Language) -> &'static str {
        match language {
            Language::English => self.description(),
            Language::Spanish => match self {
                Caution::Pressure => {
                    "El circuito está bajo presión aun en reposo: proteger los ojos y no abrir ninguna unión antes de sacar la carga."
                }
                Caution::Frostbite => "El refrigerante que escapa congela la piel y los ojos: usar guantes y gafas.",
                Caution::MovingParts => {
                    "Las correas y los ventiladores arrancan sin aviso, y también el motor de un híbrido: alejar manos, pelo y ropa; girar el cubo solo con el motor apagado y sin llave."
                }
                Caution::Flammable => {
                    "El refrigerante es inflamable: alejar fuentes de ignición, ventilar, y usar solo manómetros, identificadores y máquinas aptos para refrigerantes inflamables."
                }
                Caution::HighVoltage => {
                    "El compresor funciona con alta tensión: solo puede trabajar en él personal cualificado, tras el procedimiento de desconexión del vehículo y la comprobación de que no queda tensión."
                }
                Caution::NoVenting => {
                    "No liberar refrigerante: es ilegal en muchos lugares. Recuperarlo con equipo certificado."
                }
                Caution::LocalRules => {
                    "El juicio de un técnico certificado, los datos del fabricante del vehículo y las normas locales van primero."
                }
                Caution::Ventilation => {
                    "El refrigerante se acumula en fosas y locales cerrados y desplaza el aire: ventilar a nivel del piso. Alejar llamas y superficies calientes: el calor lo convierte en gases tóxicos."
                }
                Caution::Certification => {
                    "Solo personal certificado puede abrir un circuito, y en muchos lugares solo él puede comprar refrigerante."
                }
                Caution::TestPressure => {
                    "Prueba de presión: solo nitrógeno seco, por un regulador y una válvula de alivio. Nunca oxígeno, aire comprimido o mezcla con refrigerante, y nunca por encima de la presión que permiten la etiqueta y cada pieza."
                }
                Caution::CarbonDioxide => {
                    "El R-744 (dióxido de carbono) está a una presión hasta diez veces mayor que otros refrigerantes: usar solo manómetros, mangueras y piezas hechos para él. No tiene olor: por encima de 3 a 4 por ciento en el aire es peligroso, y por encima de 10 por ciento una persona pierde pronto el conocimiento. Ventilar, y salir del local si escapa mucho."
                }
                Caution::ForeignRefrigerant => {
                    "No se sabe qué hay en el circuito, y puede ser inflamable: identificarlo antes de que lo aspire una máquina, y recuperarlo en un cilindro aparte y marcado."
                }
                Caution::HotParts => "La línea de descarga, el motor y el escape queman la piel.",
                Caution::DoNotRun => {
                    "No hacer funcionar el compresor con el circuito vacío o con aire: ningún refrigerante le devuelve el aceite, y el aire comprimido con aceite o con un refrigerante inflamable puede encenderse."
                }
                Caution::TestTooHigh => {
                    "Esta presión de prueba supera la que permite la etiqueta, o 30 bar donde no se dio etiqueta: bajarla antes de que alguien se acerque, pues la pieza más débil revienta primero."
                }
                Caution::HighVoltageCables => {
                    "Alta tensión: mantener manos, pinzas, sondas y agua lejos de los cables naranja, sus conectores y el inversor del compresor; detenerse si uno está dañado."
                }
                Caution::Exhaust => {
                    "Hacer funcionar el motor al aire libre o con el escape conducido afuera: el monóxido de carbono mata sin aviso."
                }
                Caution::ParkAndChock => {
                    "Antes de subir el régimen: freno de estacionamiento puesto, ruedas calzadas, marcha en P o punto muerto, nadie delante del vehículo."
                }
                Caution::HotCoolant => {
                    "El refrigerante del motor caliente está bajo presión y escalda: no abrir el circuito de enfriamiento, usar guantes, y pinzar una manguera solo con una pinza para mangueras."
                }
                Caution::ConnectStopped => {
                    "Conectar y desconectar las mangueras con el motor y el A/C apagados y las dos válvulas del múltiple cerradas; apartarlas de correas, ventiladores y piezas calientes."
                }
                Caution::HandAndIce => {
                    "Calentar la válvula con la mano o un paño tibio y enfriarla con hielo. Nunca usar llama ni pistola de calor."
                }
                Caution::RightOil => {
                    "Medir el aceite que salió y reponer la misma cantidad, con la que queda en una pieza cambiada: solo del tipo que indica el fabricante del compresor."
                }
                Caution::InsulatingOil => {
                    "El aceite de un compresor de alta tensión debe aislar: usar solo el tipo que indica su fabricante, con mangueras e inyectores por los que no haya pasado otro aceite."
                }
                Caution::ReleaseSlowly => {
                    "El R-744 se libera y no se recupera, donde lo permiten las normas locales: al aire libre o a una extracción, despacio, por una manguera fija, sin nadie cerca de su extremo. Esperar a que desaparezca el hielo seco del circuito antes de abrir una unión."
                }
                Caution::HighSideNearLimit => {
                    "El lado de alta está cerca de su límite: vigilarlo, y apagar el A/C si sube más."
                }
            },
        }
    }
}

impl Sentence for ChargeFinding {
    fn sentence(self, language: Language) -> &'static str {
        match language {
            Language::English => self.description(),
            Language::Spanish => match self {
                ChargeFinding::Within => "La carga está con seguridad dentro de la tolerancia de la etiqueta.",
                ChargeFinding::Under => "La carga es con seguridad menor de lo que permite la etiqueta.",
                ChargeFinding::Over => "La carga es con seguridad mayor de lo que permite la etiqueta.",
                ChargeFinding::CannotTell => {
                    "Las masas son demasiado inciertas para decir si la carga está dentro de la tolerancia."
                }
            },
        }
    }
}

impl Sentence for Check {
    fn sentence(self, language: Language) -> &'static str {
        match language {
            Language::English => self.description(),
            Language::Spanish => match self {
                Check::ReadLowSide => "Leer el lado de baja con el sistema en marcha.",
                Check::ReadHighSide => "Leer el lado de alta con el sistema en marcha.",
                Check::ReadVent => "Leer el aire en la salida central tras diez minutos en el ajuste más frío.",
                Check::ReadSuctionLine => {
                    "Sujetar un termómetro a la línea de succión en el compresor: da el sobrecalentamiento."
                }
                Check::ReadLiquidLine => "Sujetar un termómetro a la línea de líquido: da el subenfriamiento.",
                Check::ReadDischargeLine => "Sujetar un termómetro a la línea de descarga.",
                Check::CountClutchCycles => "Contar cuántas veces se acopla el embrague en tres minutos.",
                Check::RunAndRead => "Hacer funcionar el A/C a pleno frío y leer ambos lados tras cinco minutos.",
                Check::WatchClutch => "Comprobar si el cubo y la polea giran juntos.",
                Check::MeasureClutchVoltage => "Medir la tensión en el conector del embrague con el A/C encendido.",
                Check::TurnHub => {
                    "Motor apagado, correa puesta, embrague suelto: girar el cubo a mano. Un buen compresor gira con resistencia pareja."
                }
                Check::LookForSlip => "Observar la correa y el cubo bajo carga, y escuchar si chirrían.",
                Check::ListenToCompressor => "Escuchar el compresor cuando se acopla el embrague y mientras funciona.",
                Check::WatchCondenserFan => "Comprobar si gira el ventilador del condensador.",
                Check::LookAtCondenserFace => {
                    "Revisar la cara del condensador con una lámpara, también entre él y el radiador."
                }
                Check::SprayCondenser => "Rociar agua sobre el condensador y observar el lado de alta.",
                Check::FeelCondenserPasses => {
                    "Recorrer el condensador con un termómetro de la entrada a la salida y buscar un salto."
                }
                Check::ClampCondenserMiddle => {
                    "Sujetar un termómetro a un tubo del medio del condensador y compararlo con la temperatura de saturación del lado de alta."
                }
                Check::LookAtSightGlass => "Mirar la mirilla tras cinco minutos de marcha constante.",
                Check::LookForLeaks => {
                    "Buscar una fuga: mirar si hay aceite y colorante, y revisar las uniones con un detector electrónico."
                }
                Check::ListenAtExpansion => "Escuchar en la válvula de expansión o el tubo de orificio.",
                Check::DropAcrossDrier => {
                    "Medir la temperatura de la línea de líquido antes y después del filtro deshidratador."
                }
                Check::LookAtExpansion => {
                    "Buscar escarcha a la entrada de la válvula de expansión o del tubo de orificio."
                }
                Check::LookAtSuctionLine => {
                    "Comprobar hasta dónde llega la escarcha o la condensación en la línea de succión."
                }
                Check::FollowSuctionLine => "Recorrer la línea de succión con un termómetro y buscar un salto.",
                Check::WarmAndChillBulb => {
                    "Calentar con la mano el bulbo o la cabeza de la válvula, luego enfriarlo con hielo, y observar el lado de baja."
                }
                Check::LookAtEvaporator => "Revisar el evaporador por el ventilador o por una abertura de desagüe.",
                Check::WatchTwentyMinutes => "Observar la salida y el lado de baja durante veinte minutos de marcha.",
                Check::FeelAirflow => {
                    "Comprobar con la mano el aire en las salidas con el ventilador al máximo, y revisar el filtro de cabina."
                }
                Check::CloseHeater => "Cerrar la válvula del calefactor o pinzar su manguera y observar la salida.",
                Check::RaiseEngineSpeed => "Subir el régimen del motor a unas 2000 rpm y observar ambos lados.",
                Check::DriveControl => "Mandar el compresor a más y a menos con un escáner y observar ambos lados.",
                Check::TimeEqualisation => "Apagar el A/C y medir cuánto tardan los dos lados en igualarse.",
                Check::ReadRestPressure => {
                    "Dejar el sistema apagado hasta que todo tenga una temperatura, y comparar su presión con la de saturación al ambiente."
                }
                Check::IdentifyRefrigerant => "Conectar un identificador de refrigerante al lado de baja.",
                Check::RecoverAndWeigh => "Recuperar la carga y pesarla contra la etiqueta.",
                Check::AskHistory => "Preguntar quién hizo el último servicio y qué se agregó.",
                Check::CompareGauges => {
                    "Comprobar mangueras, unidades y cero de los manómetros y el contacto de cada sonda; luego comparar con otro juego de manómetros."
                }
                Check::RoadTest => {
                    "Conducir de diez a quince minutos en el ajuste más frío y comprobar que enfría y sigue enfriando."
                }
                Check::CompareTransducer => {
                    "Comparar el lado de alta del manómetro con el transductor de presión del vehículo en un escáner."
                }
                Check::SearchWithNitrogen => {
                    "Buscar la fuga con nitrógeno seco: vaciar el circuito, llevarlo a la presión de prueba y revisar cada unión con espuma."
                }
            },
        }
    }
}

impl Sentence for ClosingFinding {
    fn sentence(self, language: Language) -> &'static str {
        match language {
            Language::English => self.description(),
            Language::Spanish => match self {
                ClosingFinding::Proven => "Todas las pruebas pasaron, y la reparación está probada.",
                ClosingFinding::Better => "Todas las pruebas pasaron, y las lecturas son mejores.",
                ClosingFinding::Open => "Todas las pruebas pasaron; aún no se ha mostrado si la reparación sirvió.",
                ClosingFinding::Fails => "Una prueba falló: el vehículo no está listo.",
            },
        }
    }
}

impl Sentence for EntryError {
    fn sentence(self, language: Language) -> &'static str {
        match language {
            Language::English => self.description(),
            Language::Spanish => match self {
                EntryError::SwappedHoses => "Las dos mangueras están intercambiadas.",
                EntryError::KpaTypedAsPsi => "Se anotaron cifras en kPa como psi.",
                EntryError::PsiTypedAsKpa => "Se anotaron cifras en psi como kPa.",
                EntryError::AbsoluteTypedAsGauge => "Se anotaron presiones absolutas como relativas.",
                EntryError::GaugeTypedAsAbsolute => "Se anotaron presiones relativas como absolutas.",
                EntryError::ZeroedAtSeaLevel => {
                    "Los manómetros se pusieron a cero al nivel del mar y no en el aire de este lugar."
                }
                EntryError::LowGaugeOff => {
                    "El manómetro de baja está desviado: con la manguera abierta no vuelve a cero."
                }
                EntryError::HighGaugeOff => {
                    "El manómetro de alta está desviado: con la manguera abierta no vuelve a cero."
                }
                EntryError::BothGaugesOff => {
                    "Los dos manómetros están desviados, como cuando se ponen a cero con presión en las mangueras."
                }
                EntryError::VentProbeAside => {
                    "El termómetro no está en la corriente de la salida y lee hacia el aire de la cabina."
                }
                EntryError::SuctionProbeLoose => {
                    "La sonda de la línea de succión está suelta o sin aislar y lee hacia el aire que la rodea."
                }
                EntryError::LiquidProbeLoose => {
                    "La sonda de la línea de líquido está suelta o sin aislar y lee hacia el aire que la rodea."
                }
                EntryError::DischargeProbeLoose => {
                    "La sonda de la línea de descarga está suelta o sin aislar y lee hacia el aire que la rodea."
                }
                EntryError::LowHoseShut => {
                    "El acople de la manguera de baja está cerrado: su manómetro muestra la presión del aire o, por el múltiple, la del otro lado."
                }
                EntryError::HighHoseShut => {
                    "El acople de la manguera de alta está cerrado: su manómetro muestra la presión del aire o, por el múltiple, la del otro lado."
                }
            },
        }
    }
}

impl Sentence for EvacuationFinding {
    fn sentence(self, language: Language) -> &'static str {
        match language {
            Language::English => self.description(),
            Language::Spanish => match self {
                EvacuationFinding::Deep => {
                    "Suficiente: muy por debajo de la presión a la que hierve el agua en la parte más fría."
                }
                EvacuationFinding::WaterBoils => {
                    "El agua hierve y sale, pero la presión aún no es la de un circuito seco: seguir."
                }
                EvacuationFinding::WaterStays => {
                    "El agua en la parte más fría no puede hervir a esta presión: se queda, por más que funcione la bomba."
                }
                EvacuationFinding::GaugeCannotTell => {
                    "La resolución del manómetro no alcanza para distinguir un vacío profundo de uno que deja el agua: usar un vacuómetro absoluto."
                }
            },
        }
    }
}

impl Sentence for ExpectedBasis {
    fn sentence(self, language: Language) -> &'static str {
        match language {
            Language::English => self.description(),
            Language::Spanish => match self {
                ExpectedBasis::OwnTable => {
                    "la tabla de presiones del propio vehículo y, para las demás lecturas, las fuentes."
                }
                ExpectedBasis::OwnReadings => {
                    "las fuentes, afinadas con lecturas del mismo vehículo cuando no tenía falla."
                }
                ExpectedBasis::VehicleModel => {
                    "los vehículos sin falla de este tipo en el modelo del vehículo, la única fuente que habla de él; cuánto difieren las fuentes se toma del R-134a."
                }
                ExpectedBasis::Sources => {
                    "varias fuentes: el modelo del vehículo, un simulador independiente y tablas publicadas, con cuánto difieren."
                }
            },
        }
    }
}

impl Sentence for HoldFinding {
    fn sentence(self, language: Language) -> &'static str {
        match language {
            Language::English => self.description(),
            Language::Spanish => match self {
                HoldFinding::Tight => {
                    "La presión se mantuvo, o su subida se detuvo dentro del límite y por debajo de la de un circuito seco: no se ve fuga con esta diferencia de presión, ni humedad."
                }
                HoldFinding::Leak => {
                    "La presión sube de forma constante, o más de lo que la haría subir el agua: entra aire."
                }
                HoldFinding::Moisture => {
                    "La subida se detiene sin pasar la presión de vapor del agua: humedad, o refrigerante que sale del aceite. Seguir con el vacío."
                }
                HoldFinding::RiseUnclear => {
                    "La presión subió, y estas lecturas no distinguen una fuga de la humedad: mantener más y leer varias veces."
                }
                HoldFinding::TooShort => "Se mantuvo muy poco tiempo para decir que es hermético.",
                HoldFinding::GaugeCannotTell => {
                    "La resolución del manómetro no alcanza para ver la subida que importa."
                }
                HoldFinding::Falling => {
                    "La presión bajó: la bomba no está aislada del circuito, o una parte se enfría. Cerrarla y leer de nuevo."
                }
                HoldFinding::NotDeep => {
                    "La presión se mantuvo, pero es demasiado alta para un circuito seco: seguir con el vacío antes de mantenerlo otra vez."
                }
            },
        }
    }
}

impl Sentence for LeakFinding {
    fn sentence(self, language: Language) -> &'static str {
        match language {
            Language::English => self.description(),
            Language::Spanish => match self {
                LeakFinding::Tight => "La pérdida es con seguridad menor que la permitida.",
                LeakFinding::Leaks => "Se perdió gas sin duda: el circuito tiene fuga.",
                LeakFinding::NoLossSeen => "No se vio pérdida; una demasiado pequeña para esta prueba no se vería.",
                LeakFinding::LiquidPresent => {
                    "Hay o puede haber líquido: su presión dice la temperatura, no cuánto se perdió."
                }
                LeakFinding::GasGained => {
                    "Más gas al final que al principio: una válvula deja pasar, o se leyó mal una temperatura o una presión."
                }
                LeakFinding::LimitUnclear => {
                    "Estas lecturas no dicen si la pérdida está por encima o por debajo de la permitida: mantener más tiempo o medir mejor."
                }
            },
        }
    }
}

impl Sentence for ProofKind {
    fn sentence(self, language: Language) -> &'static str {
        match language {
            Language::English => self.description(),
            Language::Spanish => match self {
                ProofKind::PressureTest => "la prueba de presión.",
                ProofKind::Evacuation => "el vacío alcanzado.",
                ProofKind::Hold => "el vacío mantenido.",
                ProofKind::Charge => "las masas.",
                ProofKind::PullDown => "la salida después del arranque.",
                ProofKind::Repair => "las lecturas antes y después.",
                ProofKind::LeakSearch => "el colorante, el detector o el gas trazador después de la reparación.",
            },
        }
    }
}

impl Sentence for PullDownFinding {
    fn sentence(self, language: Language) -> &'static str {
        match language {
            Language::English => self.description(),
            Language::Spanish => match self {
                PullDownFinding::Reached => "La salida bajó hasta lo que alcanza un sistema sin falla.",
                PullDownFinding::Falling => "La salida aún baja y puede alcanzarlo: seguir leyendo.",
                PullDownFinding::Stalled => "La salida se detiene por encima de lo que alcanza un sistema sin falla.",
                PullDownFinding::Rising => {
                    "La salida bajó y vuelve a subir: hielo en el evaporador, un embrague o ventilador que se suelta, o un motor que se calienta."
                }
                PullDownFinding::CannotTell => "Muy pocas lecturas, o demasiado tempranas, para decirlo.",
                PullDownFinding::Freezing => {
                    "La salida bajó del punto de congelación del agua: el hielo cierra el evaporador. Averiguar por qué nada detiene antes el compresor."
                }
            },
        }
    }
}

impl Sentence for QualityNote {
    fn sentence(self, language: Language) -> &'static str {
        match language {
            Language::English => self.description(),
            Language::Spanish => match self {
                QualityNote::FewReadings => "No se leyeron todos: lado de baja, lado de alta y salida de aire.",
                QualityNote::HumidityUnknown => "No se dio la humedad; los rangos son más anchos por eso.",
                QualityNote::AirSourceUnknown => {
                    "No se dio si el aire es exterior o recirculado; el rango de la salida es más ancho por eso."
                }
                QualityNote::RunningTimeUnknown => {
                    "No se dio cuánto tiempo llevaba en marcha; se toma como estabilizado."
                }
                QualityNote::NotSettled => {
                    "El sistema no llevaba en marcha lo suficiente para estabilizarse; los rangos son más anchos por eso."
                }
                QualityNote::GenericBand => {
                    "Los rangos son de vehículos en general; una tabla de presiones de este vehículo los afinaría."
                }
                QualityNote::GaugeZeroUnknown => {
                    "A esta altitud importa dónde se pusieron a cero los manómetros, y no se dio."
                }
                QualityNote::ClutchCycling => {
                    "El embrague cicla: el lado de baja oscila y una sola lectura dice menos."
                }
                QualityNote::StrokeLimit => {
                    "Aire caliente a bajo régimen: un compresor variable puede llegar al tope de su carrera, y no es una falla."
                }
                QualityNote::SidesEqual => {
                    "Los dos lados son iguales: el compresor no se acciona o no bombea, o el sistema está en reposo."
                }
                QualityNote::AtRest => "El compresor está parado: solo se puede juzgar la presión en reposo.",
                QualityNote::OffScale => {
                    "Una presión no tiene temperatura de saturación: se juzgó en el extremo de la escala."
                }
                QualityNote::ReadingOutOfLine => "Una lectura no concuerda: medirla de nuevo.",
                QualityNote::TwoFaultsPossible => "Dos fallas a la vez explicarían las lecturas mejor que una sola.",
                QualityNote::BandsOnly => {
                    "La presión en reposo de este refrigerante no es aquí la de saturación: no se nombra ninguna falla por ella."
                }
                QualityNote::OutsideFit => {
                    "Aire menos denso, motor más rápido o más lento, o ventilador más bajo que en los vehículos de los que salen las probabilidades: valen menos aquí."
                }
                QualityNote::TransducerStandsIn => {
                    "El lado de alta lo leyó solo el transductor del vehículo; reemplaza a un manómetro."
                }
                QualityNote::TransducerContradicts => {
                    "Manómetro y transductor de alta difieren más que sus incertidumbres: se juzgó el manómetro; averiguar cuál de los dos está desviado."
                }
                QualityNote::NearHighCutOut => {
                    "El lado de alta está al 95 % de su corte o por encima: el interruptor detiene ahí el compresor, y un promedio de esas lecturas dice menos."
                }
                QualityNote::EvaporatorFreezing => {
                    "El sensor del evaporador lee por debajo del punto de congelación del agua: el hielo puede cerrar las aletas."
                }
                QualityNote::VentBelowEvaporator => {
                    "La salida lee más frío que el sensor del evaporador, más que sus incertidumbres: medir ambos de nuevo."
                }
                QualityNote::DisplacementLow => {
                    "El control pide menos de la mitad del desplazamiento con aire caliente: lo que parece un compresor que bombea poco puede ser uno al que se le pide poco."
                }
                QualityNote::SecondEvaporator => {
                    "Hay un segundo evaporador: los rangos lo tienen en cuenta, salvo con R-744."
                }
                QualityNote::PortsNoted => {
                    "Se anotó dónde están las tomas: los rangos lo tienen en cuenta, salvo con R-744."
                }
                QualityNote::CompressorSpeedNoted => {
                    "Se anotó la velocidad del compresor; las probabilidades no la siguen."
                }
                QualityNote::FanCommandNoted => {
                    "Se anotó el mando del ventilador: los rangos lo tienen en cuenta, salvo con R-744."
                }
                QualityNote::DisplacementNoted => "Se anotó el desplazamiento pedido; las probabilidades no lo siguen.",
            },
        }
    }
}

impl Sentence for RepairFinding {
    fn sentence(self, language: Language) -> &'static str {
        match language {
            Language::English => self.description(),
            Language::Spanish => match self {
                RepairFinding::Proven => "Con falla antes, sin falla después: la reparación está probada.",
                RepairFinding::StillFaulty => "La falla de antes sigue ahí: es la que mejor explica las lecturas.",
                RepairFinding::AnotherFault => "La falla de antes ya no se ve; se ve otra.",
                RepairFinding::SoundBefore => {
                    "Sin falla antes y sin falla después: estas lecturas no muestran que algo anduviera mal."
                }
                RepairFinding::CannotTell => "Las lecturas después de la reparación no deciden si sirvió.",
                RepairFinding::Better => {
                    "Cambió para mejor: la falla se redujo; queda abierto si desapareció del todo."
                }
                RepairFinding::Worse => "La falla de antes sigue y ha crecido.",
            },
        }
    }
}

impl Sentence for RestFinding {
    fn sentence(self, language: Language) -> &'static str {
        match language {
            Language::English => self.description(),
            Language::Spanish => match self {
                RestFinding::Consistent => {
                    "Queda líquido y no se ve aire: la presión es la de saturación al ambiente, hasta donde alcanzan los instrumentos. No dice cuánta carga hay."
                }
                RestFinding::NearlyEmpty => {
                    "La presión está por debajo de la saturación al ambiente: no queda líquido."
                }
                RestFinding::AirPresent => {
                    "La presión está por encima de la saturación al ambiente: aire, otro refrigerante o piezas aún calientes."
                }
                RestFinding::NotEqualised => {
                    "Los dos lados aún difieren: la presión en reposo todavía no se puede juzgar."
                }
            },
        }
    }
}

impl Sentence for StopReason {
    fn sentence(self, language: Language) -> &'static str {
        match language {
            Language::English => self.description(),
            Language::Spanish => match self {
                StopReason::HighPressure => {
                    "Parar: apagar el A/C. El lado de alta está en su límite; no volver a encenderlo antes de hallar la causa."
                }
                StopReason::NearlyEmpty => {
                    "No hacer funcionar el A/C: según estas presiones el circuito está vacío o casi vacío. Si los manómetros son correctos, buscar la fuga con nitrógeno seco."
                }
                StopReason::AirPresent => {
                    "No arrancar el A/C: su presión en reposo es la de aire u otro refrigerante, o de piezas aún calientes."
                }
            },
        }
    }
}

/// The severity of a fault in its own measure; `None` where there is none.
pub(super) const fn severity(of: Fault, language: Language) -> Option<&'static str> {
    let both = match of {
        Fault::WornCompressor => [
            "{low} to {high} % of the delivery lost",
            "{low} a {high} % del caudal perdido",
        ],
        Fault::Undercharge => [
            "{low} to {high} % of the charge missing",
            "falta el {low} a {high} % de la carga",
        ],
        Fault::Overcharge => [
            "{low} to {high} % of the charge in excess",
            "{low} a {high} % de carga en exceso",
        ],
        Fault::CondenserAirflowLoss => [
            "{low} to {high} % of the airflow lost",
            "{low} a {high} % del aire perdido",
        ],
        Fault::NonCondensables => [
            "enough gas to fill the circuit {low} to {high} times at atmospheric pressure",
            "gas para llenar el circuito {low} a {high} veces a presión atmosférica",
        ],
        Fault::LiquidLineRestriction => [
            "{low} to {high} % of the flow area blocked",
            "{low} a {high} % de la sección tapada",
        ],
        Fault::ExpansionValveStuckOpen => [
            "least opening of the valve {low} to {high}",
            "apertura mínima de la válvula {low} a {high}",
        ],
        Fault::ExpansionValveStuckClosed => [
            "{low} to {high} % of the valve opening lost",
            "{low} a {high} % de la apertura de la válvula perdida",
        ],
        Fault::OrificeRestricted => [
            "{low} to {high} % of the flow area blocked",
            "{low} a {high} % de la sección tapada",
        ],
        Fault::EvaporatorAirflowLoss => [
            "{low} to {high} % of the airflow lost",
            "{low} a {high} % del aire perdido",
        ],
        Fault::EvaporatorIcing => [
            "{low} to {high} % of the face under frost",
            "{low} a {high} % de la cara con hielo",
        ],
        Fault::MoistureIcing => [
            "{low} to {high} % of the flow blocked while ice is there",
            "{low} a {high} % del flujo retenido mientras hay hielo",
        ],
        Fault::CompressorControlFault => [
            "{low} to {high} % of the control range lost",
            "{low} a {high} % del rango de control perdido",
        ],
        Fault::ClutchNotEngaged => [
            "not driven for {low} to {high} % of the time",
            "sin accionar el {low} a {high} % del tiempo",
        ],
        Fault::ClutchSlipping => [
            "{low} to {high} % of the speed lost",
            "{low} a {high} % de la velocidad perdida",
        ],
        Fault::HeaterAirMixing => [
            "{low} to {high} % of the air passes the heater",
            "{low} a {high} % del aire pasa por el calefactor",
        ],
        Fault::HighSideRestriction => [
            "{low} to {high} % of the flow area blocked",
            "{low} a {high} % de la sección tapada",
        ],
        Fault::SuctionLineRestriction => [
            "{low} to {high} % of the flow area blocked",
            "{low} a {high} % de la sección tapada",
        ],
        Fault::NoFault | Fault::WrongRefrigerant | Fault::GaugeError => return None,
    };
    Some(both[column(language)])
}

/// What a check finds that answers none of its questions with yes; `None` where there is none.
pub(super) const fn none_of(of: Check, language: Language) -> Option<&'static str> {
    let both = match of {
        Check::TurnHub => ["hub turns with resistance", "el cubo gira con resistencia"],
        Check::WatchTwentyMinutes => ["air and cooling stay steady", "aire y frío constantes"],
        Check::ReadRestPressure => [
            "pressure at rest is saturation",
            "la presión en reposo es la de saturación",
        ],
        Check::IdentifyRefrigerant => [
            "the label's refrigerant, no air",
            "refrigerante de la etiqueta, sin aire",
        ],
        Check::RecoverAndWeigh => ["weight as on the label", "peso como en la etiqueta"],
        Check::ReadLowSide
        | Check::ReadHighSide
        | Check::ReadVent
        | Check::ReadSuctionLine
        | Check::ReadLiquidLine
        | Check::ReadDischargeLine
        | Check::CountClutchCycles
        | Check::RunAndRead
        | Check::WatchClutch
        | Check::MeasureClutchVoltage
        | Check::LookForSlip
        | Check::ListenToCompressor
        | Check::WatchCondenserFan
        | Check::LookAtCondenserFace
        | Check::SprayCondenser
        | Check::FeelCondenserPasses
        | Check::ClampCondenserMiddle
        | Check::LookAtSightGlass
        | Check::LookForLeaks
        | Check::ListenAtExpansion
        | Check::DropAcrossDrier
        | Check::LookAtExpansion
        | Check::LookAtSuctionLine
        | Check::FollowSuctionLine
        | Check::WarmAndChillBulb
        | Check::LookAtEvaporator
        | Check::FeelAirflow
        | Check::CloseHeater
        | Check::RaiseEngineSpeed
        | Check::DriveControl
        | Check::TimeEqualisation
        | Check::AskHistory
        | Check::CompareGauges
        | Check::RoadTest
        | Check::CompareTransducer
        | Check::SearchWithNitrogen => return None,
    };
    Some(both[column(language)])
}

/// What was seen.
pub(super) fn seen(question: Observation, yes: bool, language: Language) -> &'static str {
    let both = if yes {
        match question {
            Observation::ClutchEngaged => ["hub and pulley turn together", "cubo y polea giran juntos"],
            Observation::ClutchHasVoltage => ["voltage at the clutch", "hay tensión en el embrague"],
            Observation::HubTurnsFreely => ["hub turns without resistance", "el cubo gira sin resistencia"],
            Observation::HubLocked => ["hub does not turn", "el cubo no gira"],
            Observation::BeltSlips => ["belt or clutch slips", "la correa o el embrague patina"],
            Observation::CompressorNoisy => ["compressor knocks or rattles", "el compresor golpea o hace ruido"],
            Observation::CondenserFanRunning => ["condenser fan runs", "el ventilador del condensador gira"],
            Observation::CondenserFaceBlocked => ["condenser face blocked", "cara del condensador tapada"],
            Observation::WaterLowersHighSide => ["high side falls strongly", "el lado de alta baja mucho"],
            Observation::CondenserHasTemperatureStep => ["sudden step along a pass", "salto de temperatura en un paso"],
            Observation::CondenserTubeBelowSaturation => {
                ["tube colder than saturation", "tubo más frío que la saturación"]
            }
            Observation::SightGlassBubbles => ["bubbles in the sight glass", "burbujas en la mirilla"],
            Observation::OilTraces => ["oil or dye at a joint", "aceite o colorante en una unión"],
            Observation::HissingAtExpansion => ["expansion device hisses", "el dispositivo de expansión silba"],
            Observation::DropAcrossDrier => [
                "clearly colder after the drier",
                "claramente más fría después del filtro",
            ],
            Observation::FrostAtExpansion => [
                "frost at the expansion inlet",
                "escarcha a la entrada del dispositivo de expansión",
            ],
            Observation::FrostOnSuctionLine => [
                "frost or sweat up to the compressor",
                "escarcha o condensación hasta el compresor",
            ],
            Observation::SuctionLineStep => ["step at one point of the line", "salto en un punto de la línea"],
            Observation::LowSideFollowsBulb => ["low side follows", "el lado de baja responde"],
            Observation::EvaporatorFrosted => ["evaporator frosted", "evaporador con hielo"],
            Observation::AirflowFades => [
                "air weakens, returns after a pause",
                "el aire se debilita y vuelve tras una pausa",
            ],
            Observation::CoolingComesAndGoes => ["cooling comes and goes", "el frío va y viene"],
            Observation::AirflowWeak => ["little air at the vents", "poco aire en las salidas"],
            Observation::ClosingHeaterCoolsVent => ["vent becomes clearly colder", "la salida se enfría claramente"],
            Observation::SpeedLowersLowSide => ["low side falls, high side rises", "la baja desciende y la alta sube"],
            Observation::ControlSignalMovesPressures => ["pressures move apart", "las presiones se separan"],
            Observation::SidesEqualiseQuickly => ["equal in less than two minutes", "iguales en menos de dos minutos"],
            Observation::RestPressureHigh => [
                "pressure at rest above saturation",
                "presión en reposo sobre la saturación",
            ],
            Observation::RestPressureLow => [
                "pressure at rest below saturation",
                "presión en reposo bajo la saturación",
            ],
            Observation::IdentifierShowsAir => ["identifier shows air", "el identificador muestra aire"],
            Observation::IdentifierShowsOther => [
                "identifier shows another refrigerant",
                "el identificador muestra otro refrigerante",
            ],
            Observation::RecoveredBelowLabel => [
                "less recovered than on the label",
                "se recuperó menos que en la etiqueta",
            ],
            Observation::RecoveredAboveLabel => {
                ["more recovered than on the label", "se recuperó más que en la etiqueta"]
            }
            Observation::RecentlyFilled => ["refrigerant was added", "se agregó refrigerante"],
            Observation::SecondGaugesAgree => ["second gauges agree", "los otros manómetros coinciden"],
            Observation::CoolsOnTheRoad => [
                "cools on the road and keeps cooling",
                "enfría en ruta y sigue enfriando",
            ],
            Observation::TransducerAgrees => ["gauge and transducer agree", "manómetro y transductor coinciden"],
            Observation::DyeGlows => [
                "dye glows at a joint or part",
                "el colorante brilla en una unión o pieza",
            ],
            Observation::DetectorAlarms => ["detector alarms at one place", "el detector suena en un lugar"],
            Observation::TraceGasEscapes => ["trace gas escapes", "escapa gas trazador"],
            Observation::TestPressureHolds => ["test pressure holds", "la presión de prueba se mantiene"],
            Observation::VacuumHolds => ["vacuum holds", "el vacío se mantiene"],
            Observation::EvacuatedBeforeFilling => {
                ["evacuated deeply before filling", "vacío profundo antes de cargar"]
            }
        }
    } else {
        match question {
            Observation::ClutchEngaged => ["only the pulley turns", "solo gira la polea"],
            Observation::ClutchHasVoltage => ["no voltage at the clutch", "no hay tensión en el embrague"],
            Observation::HubTurnsFreely => ["hub gives resistance", "el cubo ofrece resistencia"],
            Observation::HubLocked => ["hub turns", "el cubo gira"],
            Observation::BeltSlips => ["no slip", "no patina"],
            Observation::CompressorNoisy => ["compressor runs quietly", "el compresor marcha sin ruido"],
            Observation::CondenserFanRunning => ["condenser fan stands still", "el ventilador del condensador no gira"],
            Observation::CondenserFaceBlocked => ["condenser face clean", "cara del condensador limpia"],
            Observation::WaterLowersHighSide => ["high side falls little", "el lado de alta baja poco"],
            Observation::CondenserHasTemperatureStep => {
                ["even fall from inlet to outlet", "descenso parejo de entrada a salida"]
            }
            Observation::CondenserTubeBelowSaturation => ["tube at saturation", "tubo a la saturación"],
            Observation::SightGlassBubbles => ["sight glass clear", "mirilla sin burbujas"],
            Observation::OilTraces => ["no trace of a leak", "sin rastro de fuga"],
            Observation::HissingAtExpansion => ["expansion device is quiet", "el dispositivo de expansión no suena"],
            Observation::DropAcrossDrier => ["same temperature on both sides", "igual temperatura en ambos lados"],
            Observation::FrostAtExpansion => [
                "no frost at the expansion inlet",
                "sin escarcha a la entrada del dispositivo de expansión",
            ],
            Observation::FrostOnSuctionLine => ["suction line free of frost", "línea de succión sin escarcha"],
            Observation::SuctionLineStep => ["no step along the line", "sin salto en la línea"],
            Observation::LowSideFollowsBulb => ["low side does not follow", "el lado de baja no responde"],
            Observation::EvaporatorFrosted => ["evaporator free of frost", "evaporador sin hielo"],
            Observation::AirflowFades => ["air stays strong", "el aire se mantiene"],
            Observation::CoolingComesAndGoes => ["cooling is steady", "el frío es constante"],
            Observation::AirflowWeak => ["full air at the vents", "aire pleno en las salidas"],
            Observation::ClosingHeaterCoolsVent => ["vent stays the same", "la salida queda igual"],
            Observation::SpeedLowersLowSide => ["both sides hardly move", "ambos lados casi no se mueven"],
            Observation::ControlSignalMovesPressures => ["pressures do not move", "las presiones no se mueven"],
            Observation::SidesEqualiseQuickly => [
                "equal only after two minutes or more",
                "iguales solo a los dos minutos o más",
            ],
            Observation::RestPressureHigh => [
                "pressure at rest not above saturation",
                "presión en reposo no mayor que la saturación",
            ],
            Observation::RestPressureLow => [
                "pressure at rest not below saturation",
                "presión en reposo no menor que la saturación",
            ],
            Observation::IdentifierShowsAir => ["identifier shows no air", "el identificador no muestra aire"],
            Observation::IdentifierShowsOther => [
                "identifier shows the label's refrigerant",
                "el identificador muestra el refrigerante de la etiqueta",
            ],
            Observation::RecoveredBelowLabel => [
                "no less recovered than on the label",
                "no se recuperó menos que en la etiqueta",
            ],
            Observation::RecoveredAboveLabel => [
                "no more recovered than on the label",
                "no se recuperó más que en la etiqueta",
            ],
            Observation::RecentlyFilled => ["no refrigerant was added", "no se agregó refrigerante"],
            Observation::SecondGaugesAgree => ["second gauges disagree", "los otros manómetros no coinciden"],
            Observation::CoolsOnTheRoad => ["does not keep cooling on the road", "no sigue enfriando en ruta"],
            Observation::TransducerAgrees => ["gauge and transducer disagree", "manómetro y transductor no coinciden"],
            Observation::DyeGlows => ["no dye on the outside", "no hay colorante por fuera"],
            Observation::DetectorAlarms => ["detector stays silent", "el detector no suena"],
            Observation::TraceGasEscapes => ["no trace gas escapes", "no escapa gas trazador"],
            Observation::TestPressureHolds => ["test pressure is lost", "la presión de prueba se pierde"],
            Observation::VacuumHolds => ["vacuum is lost", "el vacío se pierde"],
            Observation::EvacuatedBeforeFilling => ["filled without a deep vacuum", "cargado sin vacío profundo"],
        }
    };
    both[column(language)]
}

/// What to do to repair a fault, in Spanish.
pub(super) const fn repair_in_spanish(fault: Fault, r744: bool) -> &'static str {
    if r744 {
        match fault {
            Fault::NoFault => "Nada que reparar: guardar estas lecturas como normales de este vehículo.",
            Fault::WornCompressor => {
                "Liberar la carga despacio, cambiar el compresor y el filtro deshidratador, lavar las líneas o montar un filtro, probar a presión, hacer vacío y cargar por peso."
            }
            Fault::Undercharge => {
                "Liberar despacio lo que queda, hallar y reparar la fuga con piezas hechas para R-744, probar a presión, hacer vacío y cargar por peso."
            }
            Fault::Overcharge => "Liberar la carga despacio, hacer vacío y cargar por peso lo que indica la etiqueta.",
            Fault::CondenserAirflowLoss => {
                "Limpiar el condensador y el radiador detrás de él, y reparar el ventilador o su carcasa."
            }
            Fault::NonCondensables => {
                "Liberar la carga despacio, hacer vacío el tiempo suficiente y cargar refrigerante limpio por peso."
            }
            Fault::LiquidLineRestriction => {
                "Liberar la carga despacio, cambiar el filtro deshidratador o la pieza tapada, probar a presión, hacer vacío y cargar por peso."
            }
            Fault::ExpansionValveStuckOpen => {
                "Primero comprobar cómo está sujeto y aislado el bulbo. Luego liberar la carga despacio, cambiar la válvula y el filtro deshidratador, probar a presión, hacer vacío y cargar por peso."
            }
            Fault::ExpansionValveStuckClosed => {
                "Liberar la carga despacio, cambiar la válvula y el filtro deshidratador, buscar residuos, probar a presión, hacer vacío y cargar por peso."
            }
            Fault::OrificeRestricted => {
                "Liberar la carga despacio, cambiar el tubo de orificio y el acumulador, averiguar de dónde vienen los residuos, probar a presión, hacer vacío y cargar por peso."
            }
            Fault::EvaporatorAirflowLoss => {
                "Cambiar el filtro de cabina, limpiar el evaporador y reparar el ventilador."
            }
            Fault::EvaporatorIcing => {
                "Reparar el sensor del evaporador, el termostato o el interruptor de baja que debía evitar el hielo."
            }
            Fault::MoistureIcing => {
                "Liberar la carga despacio, cambiar el filtro deshidratador, hacer un vacío profundo, mantenerlo y cargar por peso."
            }
            Fault::CompressorControlFault => {
                "Comprobar primero el cableado y la señal del control. Si están bien, liberar la carga despacio, cambiar la válvula de control, probar a presión, hacer vacío y cargar por peso."
            }
            Fault::ClutchNotEngaged => {
                "Seguir la tensión hasta el embrague: interruptores de presión, relé, bobina y entrehierro. Con poca carga tampoco acopla."
            }
            Fault::ClutchSlipping => {
                "Tensar o cambiar la correa, ajustar el entrehierro del embrague y comprobar que el compresor gira con facilidad."
            }
            Fault::HeaterAirMixing => "Reparar o ajustar la compuerta de mezcla o la válvula del calefactor.",
            Fault::HighSideRestriction => {
                "Liberar la carga despacio, cambiar el condensador o la línea tapada y el filtro deshidratador, probar a presión, hacer vacío y cargar por peso."
            }
            Fault::SuctionLineRestriction => {
                "Liberar la carga despacio, cambiar la línea de succión doblada o tapada, probar a presión, hacer vacío y cargar por peso."
            }
            Fault::WrongRefrigerant => {
                "No liberar lo que hay en el circuito, pues no se conoce: hacerlo retirar, luego hacer vacío y cargar R-744 por peso."
            }
            Fault::GaugeError => {
                "Corregir mangueras, unidades y cero de los manómetros y el contacto de las sondas, y leer de nuevo."
            }
        }
    } else {
        match fault {
            Fault::NoFault => "Nada que reparar: guardar estas lecturas como normales de este vehículo.",
            Fault::WornCompressor => {
                "Recuperar la carga, cambiar el compresor y el filtro deshidratador, lavar las líneas o montar un filtro, probar a presión, hacer vacío y cargar por peso."
            }
            Fault::Undercharge => {
                "Recuperar lo que queda, hallar y reparar la fuga, probar a presión, hacer vacío y cargar por peso."
            }
            Fault::Overcharge => "Recuperar la carga, hacer vacío y cargar por peso lo que indica la etiqueta.",
            Fault::CondenserAirflowLoss => {
                "Limpiar el condensador y el radiador detrás de él, y reparar el ventilador o su carcasa."
            }
            Fault::NonCondensables => {
                "Recuperar la carga, hacer vacío el tiempo suficiente y cargar refrigerante limpio por peso."
            }
            Fault::LiquidLineRestriction => {
                "Recuperar la carga, cambiar el filtro deshidratador o la pieza tapada, probar a presión, hacer vacío y cargar por peso."
            }
            Fault::ExpansionValveStuckOpen => {
                "Primero comprobar cómo está sujeto y aislado el bulbo. Luego recuperar la carga, cambiar la válvula y el filtro deshidratador, probar a presión, hacer vacío y cargar por peso."
            }
            Fault::ExpansionValveStuckClosed => {
                "Recuperar la carga, cambiar la válvula y el filtro deshidratador, buscar residuos, probar a presión, hacer vacío y cargar por peso."
            }
            Fault::OrificeRestricted => {
                "Recuperar la carga, cambiar el tubo de orificio y el acumulador, averiguar de dónde vienen los residuos, probar a presión, hacer vacío y cargar por peso."
            }
            Fault::EvaporatorAirflowLoss => {
                "Cambiar el filtro de cabina, limpiar el evaporador y reparar el ventilador."
            }
            Fault::EvaporatorIcing => {
                "Reparar el sensor del evaporador, el termostato o el interruptor de baja que debía evitar el hielo."
            }
            Fault::MoistureIcing => {
                "Recuperar la carga, cambiar el filtro deshidratador, hacer un vacío profundo, mantenerlo y cargar por peso."
            }
            Fault::CompressorControlFault => {
                "Comprobar primero el cableado y la señal del control. Si están bien, recuperar la carga, cambiar la válvula de control, probar a presión, hacer vacío y cargar por peso."
            }
            Fault::ClutchNotEngaged => {
                "Seguir la tensión hasta el embrague: interruptores de presión, relé, bobina y entrehierro. Con poca carga tampoco acopla."
            }
            Fault::ClutchSlipping => {
                "Tensar o cambiar la correa, ajustar el entrehierro del embrague y comprobar que el compresor gira con facilidad."
            }
            Fault::HeaterAirMixing => "Reparar o ajustar la compuerta de mezcla o la válvula del calefactor.",
            Fault::HighSideRestriction => {
                "Recuperar la carga, cambiar el condensador o la línea tapada y el filtro deshidratador, probar a presión, hacer vacío y cargar por peso."
            }
            Fault::SuctionLineRestriction => {
                "Recuperar la carga, cambiar la línea de succión doblada o tapada, probar a presión, hacer vacío y cargar por peso."
            }
            Fault::WrongRefrigerant => {
                "Recuperar la carga en un cilindro para refrigerante mezclado, hacer vacío y cargar por peso el refrigerante de la etiqueta."
            }
            Fault::GaugeError => {
                "Corregir mangueras, unidades y cero de los manómetros y el contacto de las sondas, y leer de nuevo."
            }
        }
    }
}
