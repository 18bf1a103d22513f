//! Plain functions that give a figure as one named source has it, where published sources disagree.

use super::{any_nan, outputs};
use crate::Error;
use crate::air::{self, AtmosphereEdition, ColdTemperatureMethod, TasFactorMethod};
use crate::turn::{self, TurnConstants};
use crate::value::units::{
    degree_celsius, degree_per_second, foot, hectopascal, kilogram_per_cubic_meter, knot, nautical_mile,
    ratio,
};
use crate::value::{
    Bank, Elevation, HeightAboveSource, IsaDeviation, PressureAltitude, ProcedureAltitude, Temperature,
    TrueAirspeed,
};

/// Cold-temperature correction by a named method, to add to an altitude on the procedure.
///
/// The formula; the table, whose cells are the formula at sea level rounded up to 10 ft; the table read off evenly between its cells, as it is or
/// rounded to the nearest 100 ft or up to 100 ft; 4 percent of the height for each 10 degC; or the exact one. For 8 794 ft at -12 degC the
/// FAA's example says 500 ft: 534 between the cells of the 5 000 ft column, to the nearest 100.
///
/// # Arguments
/// - `height_ft`: charted height above the altimeter setting source, 0 to 20 000
/// - `temperature_degc`: temperature at the altimeter setting source, -200 to 200
/// - `elevation_ft`: elevation of the altimeter setting source, -16 500 to 60 000; the methods by the table leave it out
/// - `method`: which method
///
/// # Accuracy
/// As published. The nearest 100 ft can be 50 ft too little.
///
/// # Degenerate cases
/// The methods that read off between cells have no answer below -50 degC: it is NaN. They take the 5 000 ft column for greater heights, and go
/// evenly to nothing below 200 ft and between 10 and 15 degC. The others are as their own functions say.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Formula, table and 4 percent: ICAO Doc 8168 Vol I (5th ed. 2006), Part III Section 1 Chapter 4 (the formula from memory) and its Table
/// III-1-4-1 b). Reading off and rounding: FAA Aeronautical Information Manual (20 April 2023), 7-3-5 and 7-3-6, TBL 7-3-1. Exact: derived.
///
/// # Example
/// ```
/// # use lubberline::plain::cold_temperature_correction_by_method_ft;
/// # use lubberline::air::ColdTemperatureMethod;
/// assert_eq!(format!("{:.0}", cold_temperature_correction_by_method_ft(8_794.0, -12.0, 3_206.0, ColdTemperatureMethod::Interpolated)?), "534");
/// assert_eq!(format!("{:.0}", cold_temperature_correction_by_method_ft(8_794.0, -12.0, 3_206.0, ColdTemperatureMethod::InterpolatedNearestHundred)?), "500");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cold_temperature_correction_by_method_ft(
    height_ft: f64,
    temperature_degc: f64,
    elevation_ft: f64,
    method: ColdTemperatureMethod,
) -> Result<f64, Error> {
    if any_nan(&[height_ft, temperature_degc, elevation_ft]) {
        return Ok(f64::NAN);
    }
    let height = HeightAboveSource::named("height_ft", height_ft)?;
    let temperature = Temperature::named("temperature_degc", temperature_degc)?;
    let elevation = Elevation::named("elevation_ft", elevation_ft)?;
    let correction = air::cold_temperature_correction_by_method(height, temperature, elevation, method);
    Ok(correction.map_or(f64::NAN, |correction| correction.get::<foot>()))
}

/// The speed factor of procedure design by a named method: its formula, or read off its table.
///
/// The formula is that of `procedure_tas_factor`; the table has it to four decimals every 500 m or every 1 000 ft, and between two entries the
/// factor is taken evenly and rounded to four decimals.
///
/// # Arguments
/// - `altitude_ft`: altitude, -2000 to 50 000
/// - `isa_deviation_k`: warmer than standard by this, -150 to 150
/// - `method`: which method
///
/// # Accuracy
/// As published. Reading off adds up to 3e-3 to the factor, most of it above 40 000 ft, and 1e-4 at 6 000 ft.
///
/// # Degenerate cases
/// On an entry of the table the methods agree to four decimals.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 4 Chapter 3 Appendix C, Table I-4-3-App C-1: its example in SI units (1.1244 for 1850 m) reads
/// off the entries for 1500 and 2000 m (1.1046, 1.1329); the step in feet is from memory.
///
/// # Example
/// ```
/// # use lubberline::plain::procedure_tas_factor_by_method;
/// # use lubberline::air::TasFactorMethod;
/// assert_eq!(format!("{:.4}", procedure_tas_factor_by_method(6_069.553_806, 15.0, TasFactorMethod::TableMetres)?), "1.1244");
/// assert_eq!(format!("{:.4}", procedure_tas_factor_by_method(6_069.553_806, 15.0, TasFactorMethod::Formula)?), "1.1243");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn procedure_tas_factor_by_method(
    altitude_ft: f64,
    isa_deviation_k: f64,
    method: TasFactorMethod,
) -> Result<f64, Error> {
    if any_nan(&[altitude_ft, isa_deviation_k]) {
        return Ok(f64::NAN);
    }
    let altitude = ProcedureAltitude::named("altitude_ft", altitude_ft)?;
    let deviation = IsaDeviation::named("isa_deviation_k", isa_deviation_k)?;
    Ok(air::procedure_tas_factor_by_method(altitude, deviation, method).get::<ratio>())
}

outputs! {
    /// The air at a pressure altitude by a named edition: what [`standard_atmosphere_by_edition`] gives.
    EditionAtmosphere {
        /// Static temperature.
        temperature_degc,
        /// Static pressure.
        pressure_hpa,
        /// Density.
        density_kg_per_m3,
        /// Speed of sound.
        speed_of_sound_kt,
    }
}

/// The standard atmosphere at a pressure altitude by a named edition, with an ISA deviation of the temperature.
///
/// To 80 km both editions have the same layers; the U.S. one of 1976 has the gas constant 8314.32/28.9644 = 287.05307 J/(kg K) for ICAO's 287.05287. Its
/// pressure is `p0 (p/p0)^(287.05287/287.05307)`.
///
/// # Arguments
/// - `pressure_altitude_ft`: altitude, -16 420 to 262 467.2
/// - `isa_deviation_k`: warmer than standard by this, -150 to 150
/// - `edition`: whose atmosphere
///
/// # Accuracy
/// Rounding. The editions differ by up to 8e-6 of the pressure and the density, 0.0002 kt of the speed of sound.
///
/// # Degenerate cases
/// With ICAO's edition it is `standard_atmosphere`.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993; U.S. Standard Atmosphere, 1976, NOAA-S/T 76-1562, Table 2 (the
/// constants from memory, the layers' pressures read in a transcription).
///
/// # Example
/// ```
/// # use lubberline::plain::standard_atmosphere_by_edition;
/// # use lubberline::air::AtmosphereEdition;
/// assert_eq!(format!("{:.5}", standard_atmosphere_by_edition(104_986.876_64, 0.0, AtmosphereEdition::Icao1993)?.pressure_hpa), "8.68016");
/// assert_eq!(format!("{:.5}", standard_atmosphere_by_edition(104_986.876_64, 0.0, AtmosphereEdition::UnitedStates1976)?.pressure_hpa), "8.68019");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn standard_atmosphere_by_edition(
    pressure_altitude_ft: f64,
    isa_deviation_k: f64,
    edition: AtmosphereEdition,
) -> Result<EditionAtmosphere, Error> {
    if any_nan(&[pressure_altitude_ft, isa_deviation_k]) {
        return Ok(EditionAtmosphere::NAN);
    }
    let altitude = PressureAltitude::named("pressure_altitude_ft", pressure_altitude_ft)?;
    let deviation = IsaDeviation::named("isa_deviation_k", isa_deviation_k)?;
    let found = air::standard_air_by_edition(altitude, deviation, edition);
    Ok(EditionAtmosphere {
        temperature_degc: found.temperature.value().get::<degree_celsius>(),
        pressure_hpa: found.pressure.value().get::<hectopascal>(),
        density_kg_per_m3: found.density.get::<kilogram_per_cubic_meter>(),
        speed_of_sound_kt: found.speed_of_sound.get::<knot>(),
    })
}

outputs! {
    /// A steady turn with the constants of a named source: what [`published_turn`] gives.
    PublishedTurn {
        /// Rate of turn.
        turn_rate_deg_per_s,
        /// Radius in still air.
        radius_nm,
    }
}

/// Rate and radius of a level turn in still air with the constants that a named source prints.
///
/// Sources round gravity and the units, each in its own way: 3 431 / pi for the rate in knots, 6 355 / pi in km/h, 68 625 or 68 625.4 for the radius, 1 091
/// and 11.26 in the handbook. Exact are 1 092.206 and 68 625.37.
///
/// # Arguments
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `bank_deg`: bank angle, above 0 to below 90
/// - `constants`: whose constants
///
/// # Accuracy
/// As published: the handbook's radius is 0.3 percent wide, its rate 0.11 percent slow, the others within 0.01 percent of exact.
///
/// # Degenerate cases
/// No limit of the rate is applied; see `limited_turn`.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 3, 3.1.2.2; FAA Order 8260.58, Chapters 1 and 2 (from memory); FAA-H-8083-25,
/// chapter 5 (from memory); exact: ICAO Doc 7488/3 (3rd edition 1993) for gravity.
///
/// # Example
/// ```
/// # use lubberline::plain::published_turn;
/// # use lubberline::turn::TurnConstants;
/// assert_eq!(format!("{:.4}", published_turn(100.0, 25.0, TurnConstants::PansOps)?.turn_rate_deg_per_s), "5.0926");
/// assert_eq!(format!("{:.4}", published_turn(100.0, 25.0, TurnConstants::Exact)?.turn_rate_deg_per_s), "5.0930");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn published_turn(
    true_airspeed_kt: f64,
    bank_deg: f64,
    constants: TurnConstants,
) -> Result<PublishedTurn, Error> {
    if any_nan(&[true_airspeed_kt, bank_deg]) {
        return Ok(PublishedTurn::NAN);
    }
    let airspeed = TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?;
    let bank = Bank::named("bank_deg", bank_deg)?;
    let (rate, radius) = turn::published_turn(airspeed, bank, constants);
    Ok(PublishedTurn {
        turn_rate_deg_per_s: rate.get::<degree_per_second>(),
        radius_nm: radius.get::<nautical_mile>(),
    })
}
