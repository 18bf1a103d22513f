//! Plain functions of altimetry, of [`crate::air`].

use super::any_nan;
use crate::Error;
use crate::air::{self, Air};
use crate::value::units::{foot, hectopascal};
use crate::value::{
    AltimeterSetting, Elevation, HeightAboveSource, IndicatedAltitude, IsaDeviation, LevelStep,
    PressureAltitude, StaticPressure, Temperature, TransitionLayer, TrueAltitude,
};

/// The altitude that a perfect altimeter shows with its setting.
///
/// Pressure altitude less the pressure altitude of the setting: the setting turns the scale of the standard
/// atmosphere as a whole.
///
/// # Arguments
/// - `pressure_altitude_ft`: pressure altitude, -16 420 to 262 467.2
/// - `altimeter_setting_hpa`: what the altimeter is set to, 400 to 1200
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// With 1013.25 hPa it is the pressure altitude; with the pressure itself, zero.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The construction of the instrument; ICAO Doc 7488/3 (3rd edition 1993) for the scale.
///
/// # Example
/// ```
/// # use lubberline::plain::indicated_altitude_ft;
/// assert_eq!(format!("{:.1}", indicated_altitude_ft(5_000.0, 1_000.0)?), "4636.2");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn indicated_altitude_ft(pressure_altitude_ft: f64, altimeter_setting_hpa: f64) -> Result<f64, Error> {
    if any_nan(&[pressure_altitude_ft, altimeter_setting_hpa]) {
        return Ok(f64::NAN);
    }
    let altitude = PressureAltitude::named("pressure_altitude_ft", pressure_altitude_ft)?;
    let setting = AltimeterSetting::named("altimeter_setting_hpa", altimeter_setting_hpa)?;
    Ok(air::indicated_altitude(altitude, setting).value().get::<foot>())
}

/// Pressure altitude from what an altimeter shows with its setting: the inverse of [`indicated_altitude_ft`].
///
/// Indicated altitude plus the pressure altitude of the setting.
///
/// # Arguments
/// - `indicated_altitude_ft`: altitude shown, -50 000 to 300 000
/// - `altimeter_setting_hpa`: what the altimeter is set to, 400 to 1200
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// With 1013.25 hPa it is the indicated altitude.
///
/// # Errors
/// A value outside its range, or a pressure altitude outside -5 to 80 km.
///
/// # Source
/// The construction of the instrument; ICAO Doc 7488/3 (3rd edition 1993) for the scale.
///
/// # Example
/// ```
/// # use lubberline::plain::pressure_altitude_ft;
/// assert_eq!(format!("{:.1}", pressure_altitude_ft(5_000.0, 1_000.0)?), "5363.8");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn pressure_altitude_ft(indicated_altitude_ft: f64, altimeter_setting_hpa: f64) -> Result<f64, Error> {
    if any_nan(&[indicated_altitude_ft, altimeter_setting_hpa]) {
        return Ok(f64::NAN);
    }
    let altitude = IndicatedAltitude::named("indicated_altitude_ft", indicated_altitude_ft)?;
    let setting = AltimeterSetting::named("altimeter_setting_hpa", altimeter_setting_hpa)?;
    Ok(air::pressure_altitude_from_indicated(altitude, setting)?.value().get::<foot>())
}

/// Pressure altitude by the rule of 1000 ft for each inch of mercury below 29.92.
///
/// `indicated altitude + 1000 (29.92 - setting in inches)`, an inch of mercury being 33.86389 hPa.
/// [`pressure_altitude_ft`] is exact.
///
/// # Arguments
/// - `indicated_altitude_ft`: altitude shown, -50 000 to 300 000
/// - `altimeter_setting_hpa`: what the altimeter is set to, 400 to 1200
///
/// # Accuracy
/// An inch is 924 ft at sea level, so the rule is 8 percent of the correction too much.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range, or a pressure altitude outside -5 to 80 km.
///
/// # Source
/// CNATRA P-203, Student Guide for Preflight Navigation.
///
/// # Example
/// ```
/// # use lubberline::plain::pressure_altitude_rule_ft;
/// assert_eq!(format!("{:.1}", pressure_altitude_rule_ft(5_000.0, 1_000.0)?), "5390.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn pressure_altitude_rule_ft(
    indicated_altitude_ft: f64,
    altimeter_setting_hpa: f64,
) -> Result<f64, Error> {
    if any_nan(&[indicated_altitude_ft, altimeter_setting_hpa]) {
        return Ok(f64::NAN);
    }
    let altitude = IndicatedAltitude::named("indicated_altitude_ft", indicated_altitude_ft)?;
    let setting = AltimeterSetting::named("altimeter_setting_hpa", altimeter_setting_hpa)?;
    Ok(air::pressure_altitude_by_rule(altitude, setting)?.value().get::<foot>())
}

/// The altimeter setting of a station, QNH: with it an altimeter at the station shows the elevation.
///
/// The standard pressure at the station's pressure altitude less its elevation.
///
/// # Arguments
/// - `station_pressure_hpa`: pressure at the station, its QFE, above 0 to 2000
/// - `elevation_ft`: elevation of the station, -16 500 to 60 000
///
/// # Accuracy
/// Rounding. A station reports it rounded down to a whole hectopascal, which is 27 ft.
///
/// # Degenerate cases
/// At no elevation it is the pressure.
///
/// # Errors
/// A value outside its range, or a setting outside 400 to 1200 hPa.
///
/// # Source
/// The definition of QNH, ICAO Annex 3 and Doc 8896 (from memory). [`altimeter_setting_smithsonian_hpa`] is the
/// American one.
///
/// # Example
/// ```
/// # use lubberline::plain::altimeter_setting_hpa;
/// assert_eq!(format!("{:.2}", altimeter_setting_hpa(832.0, 5_430.0)?), "1016.08");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn altimeter_setting_hpa(station_pressure_hpa: f64, elevation_ft: f64) -> Result<f64, Error> {
    if any_nan(&[station_pressure_hpa, elevation_ft]) {
        return Ok(f64::NAN);
    }
    let station = StaticPressure::named("station_pressure_hpa", station_pressure_hpa)?;
    let elevation = Elevation::named("elevation_ft", elevation_ft)?;
    Ok(air::altimeter_setting(station, elevation)?.value().get::<hectopascal>())
}

/// The altimeter setting of a station by the American formula, for a cockpit about 10 ft above it.
///
/// `(p - 0.3) (1 + 1013.25^n 0.0065/288 h/(p - 0.3)^n)^(1/n)` with n = 0.190284, p in hectopascals, h in
/// metres.
///
/// # Arguments
/// - `station_pressure_hpa`: pressure at the station, its QFE, above 0 to 2000
/// - `elevation_ft`: elevation of the station, -16 500 to 60 000
///
/// # Accuracy
/// As published; 0.3 to 0.4 hPa less than [`altimeter_setting_hpa`], which is the height of the cockpit.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range, or a setting outside 400 to 1200 hPa.
///
/// # Source
/// Smithsonian Meteorological Tables, 6th edition 1951, p. 269, read in a quotation.
///
/// # Example
/// ```
/// # use lubberline::plain::altimeter_setting_smithsonian_hpa;
/// assert_eq!(format!("{:.2}", altimeter_setting_smithsonian_hpa(832.0, 5_430.0)?), "1015.81");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn altimeter_setting_smithsonian_hpa(station_pressure_hpa: f64, elevation_ft: f64) -> Result<f64, Error> {
    if any_nan(&[station_pressure_hpa, elevation_ft]) {
        return Ok(f64::NAN);
    }
    let station = StaticPressure::named("station_pressure_hpa", station_pressure_hpa)?;
    let elevation = Elevation::named("elevation_ft", elevation_ft)?;
    Ok(air::altimeter_setting_smithsonian(station, elevation)?.value().get::<hectopascal>())
}

/// The pressure at a station, its QFE, from its altimeter setting: the inverse of [`altimeter_setting_hpa`].
///
/// The standard pressure at the elevation plus the pressure altitude of the setting.
///
/// # Arguments
/// - `altimeter_setting_hpa`: what the altimeter is set to, 400 to 1200
/// - `elevation_ft`: elevation of the station, -16 500 to 60 000
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// At no elevation it is the setting.
///
/// # Errors
/// A value outside its range, or a pressure outside 0 to 2000 hPa.
///
/// # Source
/// As [`altimeter_setting_hpa`].
///
/// # Example
/// ```
/// # use lubberline::plain::station_pressure_hpa;
/// assert_eq!(format!("{:.2}", station_pressure_hpa(1_013.25, 5_430.0)?), "829.59");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn station_pressure_hpa(altimeter_setting_hpa: f64, elevation_ft: f64) -> Result<f64, Error> {
    if any_nan(&[altimeter_setting_hpa, elevation_ft]) {
        return Ok(f64::NAN);
    }
    let setting = AltimeterSetting::named("altimeter_setting_hpa", altimeter_setting_hpa)?;
    let elevation = Elevation::named("elevation_ft", elevation_ft)?;
    Ok(air::station_pressure(setting, elevation)?.value().get::<hectopascal>())
}

/// Density altitude: where the standard atmosphere has the density of the air.
///
/// In closed form within each layer, density going with `(T/T_b)^(-g/(L R) - 1)`.
///
/// # Arguments
/// - `pressure_altitude_ft`: pressure altitude, -16 420 to 262 467.2
/// - `temperature_degc`: static air temperature, -200 to 200
///
/// # Accuracy
/// Rounding, for dry air. Moisture makes air lighter: at 35 degC and saturated, 700 ft more at sea level.
///
/// # Degenerate cases
/// In standard air it is the pressure altitude.
///
/// # Errors
/// A value outside its range, a deviation beyond 150 K, or a density altitude outside -5 to 80 km.
///
/// # Source
/// ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
///
/// # Example
/// ```
/// # use lubberline::plain::density_altitude_ft;
/// assert_eq!(format!("{:.0}", density_altitude_ft(6_000.0, 13.0)?), "7147");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn density_altitude_ft(pressure_altitude_ft: f64, temperature_degc: f64) -> Result<f64, Error> {
    if any_nan(&[pressure_altitude_ft, temperature_degc]) {
        return Ok(f64::NAN);
    }
    let altitude = PressureAltitude::named("pressure_altitude_ft", pressure_altitude_ft)?;
    let temperature = Temperature::named("temperature_degc", temperature_degc)?;
    let air = Air::new(altitude, air::isa_deviation(temperature, altitude)?);
    Ok(air.density_altitude()?.value().get::<foot>())
}

/// Density altitude by the rule of 120 ft for each degree above standard.
///
/// `Hp + 120 (t - (15 - 2 Hp/1000))` with the pressure altitude `Hp`. [`density_altitude_ft`] is exact.
///
/// # Arguments
/// - `pressure_altitude_ft`: pressure altitude, -16 420 to 262 467.2
/// - `temperature_degc`: static air temperature, -200 to 200
///
/// # Accuracy
/// Too much by up to 65 ft within 10 K of standard, 160 ft within 20 K and 300 ft within 30 K, to 10 000 ft.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range, or a density altitude outside -5 to 80 km.
///
/// # Source
/// Common practice.
///
/// # Example
/// ```
/// # use lubberline::plain::density_altitude_rule_ft;
/// assert_eq!(format!("{:.0}", density_altitude_rule_ft(6_000.0, 13.0)?), "7200");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn density_altitude_rule_ft(pressure_altitude_ft: f64, temperature_degc: f64) -> Result<f64, Error> {
    if any_nan(&[pressure_altitude_ft, temperature_degc]) {
        return Ok(f64::NAN);
    }
    let altitude = PressureAltitude::named("pressure_altitude_ft", pressure_altitude_ft)?;
    let temperature = Temperature::named("temperature_degc", temperature_degc)?;
    Ok(air::density_altitude_by_rule(altitude, temperature)?.value().get::<foot>())
}

/// True altitude from pressure altitude, a station's altimeter setting and the ISA deviation.
///
/// From the station up the air is `Hp - Hs + D (R/g) ln(ps/p)` thick, with the ISA deviation `D` the same all
/// the way: hydrostatic balance, exact through the layers. Geopotential is turned into geometric height.
///
/// # Arguments
/// - `pressure_altitude_ft`: pressure altitude, -16 420 to 262 467.2
/// - `altimeter_setting_hpa`: the station's altimeter setting, 400 to 1200 (default 1013.25)
/// - `elevation_ft`: elevation of the station that gives the setting, -16 500 to 60 000 (default 0.0)
/// - `isa_deviation_k`: the air from the station up is warmer than standard by this, -150 to 150 (default 0.0)
///
/// # Accuracy
/// Rounding for such a column; 5 K of error in its mean temperature are 2 percent of the height.
///
/// # Degenerate cases
/// At the station's own pressure the answer is its elevation, whatever the temperature.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Hydrostatic balance with the layers of ICAO Doc 7488/3 (3rd edition 1993).
///
/// # Example
/// ```
/// # use lubberline::plain::true_altitude_ft;
/// assert_eq!(format!("{:.0}", true_altitude_ft(10_000.0, 1_013.25, 0.0, -20.0)?), "9285");
/// assert_eq!(format!("{:.0}", true_altitude_ft(10_000.0, 995.0, 2_000.0, 15.0)?), "9910");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn true_altitude_ft(
    pressure_altitude_ft: f64,
    altimeter_setting_hpa: f64,
    elevation_ft: f64,
    isa_deviation_k: f64,
) -> Result<f64, Error> {
    if any_nan(&[pressure_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k]) {
        return Ok(f64::NAN);
    }
    let altitude = PressureAltitude::named("pressure_altitude_ft", pressure_altitude_ft)?;
    let setting = AltimeterSetting::named("altimeter_setting_hpa", altimeter_setting_hpa)?;
    let elevation = Elevation::named("elevation_ft", elevation_ft)?;
    let deviation = IsaDeviation::named("isa_deviation_k", isa_deviation_k)?;
    Ok(air::true_altitude(altitude, setting, elevation, deviation).value().get::<foot>())
}

/// Height above a station from pressure altitude, the station's altimeter setting and the ISA deviation.
///
/// [`true_altitude_ft`] less the elevation: the height that slant range asks for.
///
/// # Arguments
/// - `pressure_altitude_ft`: pressure altitude, -16 420 to 262 467.2
/// - `altimeter_setting_hpa`: the station's altimeter setting, 400 to 1200 (default 1013.25)
/// - `elevation_ft`: elevation of the station that gives the setting, -16 500 to 60 000 (default 0.0)
/// - `isa_deviation_k`: the air from the station up is warmer than standard by this, -150 to 150 (default 0.0)
///
/// # Accuracy
/// As [`true_altitude_ft`].
///
/// # Degenerate cases
/// Zero at the station's own pressure.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// As [`true_altitude_ft`].
///
/// # Example
/// ```
/// # use lubberline::plain::height_above_station_ft;
/// assert_eq!(format!("{:.0}", height_above_station_ft(10_000.0, 995.0, 2_000.0, 15.0)?), "7910");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn height_above_station_ft(
    pressure_altitude_ft: f64,
    altimeter_setting_hpa: f64,
    elevation_ft: f64,
    isa_deviation_k: f64,
) -> Result<f64, Error> {
    if any_nan(&[pressure_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k]) {
        return Ok(f64::NAN);
    }
    let altitude = PressureAltitude::named("pressure_altitude_ft", pressure_altitude_ft)?;
    let setting = AltimeterSetting::named("altimeter_setting_hpa", altimeter_setting_hpa)?;
    let elevation = Elevation::named("elevation_ft", elevation_ft)?;
    let deviation = IsaDeviation::named("isa_deviation_k", isa_deviation_k)?;
    Ok(air::height_above_station(altitude, setting, elevation, deviation).value().get::<foot>())
}

/// Pressure altitude at a true altitude: the inverse of [`true_altitude_ft`].
///
/// By Newton's method on the thickness of the column.
///
/// # Arguments
/// - `true_altitude_ft`: altitude above mean sea level, -16 500 to 400 000
/// - `altimeter_setting_hpa`: the station's altimeter setting, 400 to 1200 (default 1013.25)
/// - `elevation_ft`: elevation of the station that gives the setting, -16 500 to 60 000 (default 0.0)
/// - `isa_deviation_k`: the air from the station up is warmer than standard by this, -150 to 150 (default 0.0)
///
/// # Accuracy
/// 1e-8 ft.
///
/// # Degenerate cases
/// At the elevation it is the station's own pressure altitude, whatever the temperature.
///
/// # Errors
/// A value outside its range, or a pressure altitude outside -5 to 80 km.
///
/// # Source
/// As [`true_altitude_ft`].
///
/// # Example
/// ```
/// # use lubberline::plain::pressure_altitude_at_true_altitude_ft;
/// assert_eq!(format!("{:.0}", pressure_altitude_at_true_altitude_ft(10_000.0, 1_013.25, 0.0, -20.0)?), "10772");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn pressure_altitude_at_true_altitude_ft(
    true_altitude_ft: f64,
    altimeter_setting_hpa: f64,
    elevation_ft: f64,
    isa_deviation_k: f64,
) -> Result<f64, Error> {
    if any_nan(&[true_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k]) {
        return Ok(f64::NAN);
    }
    let altitude = TrueAltitude::named("true_altitude_ft", true_altitude_ft)?;
    let setting = AltimeterSetting::named("altimeter_setting_hpa", altimeter_setting_hpa)?;
    let elevation = Elevation::named("elevation_ft", elevation_ft)?;
    let deviation = IsaDeviation::named("isa_deviation_k", isa_deviation_k)?;
    Ok(air::pressure_altitude_at(altitude, setting, elevation, deviation)?.value().get::<foot>())
}

/// The transition level as a pressure altitude: the lowest flight level far enough above the transition altitude.
///
/// The lowest multiple of the step at or above the transition altitude plus the least layer, both measured with
/// the setting. The lowest usable flight levels of the United States are this from 18 000 ft: 14 CFR 91.121
/// (2014) in steps of 500 ft, the AIM of 2023, TBL 7-2-1, in steps of 1000 ft.
///
/// # Arguments
/// - `transition_altitude_ft`: transition altitude, -50 000 to 300 000
/// - `altimeter_setting_hpa`: what the altimeter is set to, 400 to 1200
/// - `least_layer_ft`: least height of the transition layer, 0 to 10 000 (default 0.0)
/// - `step_ft`: flight levels are multiples of this, 100 to 10 000 (default 500.0)
///
/// # Accuracy
/// Exact. A setting of 29.92 inches is 1.3 ft short of standard, which costs a level where the two should
/// coincide: give 1013.25.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range, or a level beyond the range of pressure altitudes.
///
/// # Source
/// ICAO Doc 8168 (PANS-OPS) volume I, Part III, and Doc 4444, from memory; states set the layer and the step.
///
/// # Example
/// ```
/// # use lubberline::plain::transition_level_ft;
/// assert_eq!(format!("{:.0}", transition_level_ft(5_000.0, 1_003.0, 0.0, 500.0)?), "5500");
/// assert_eq!(format!("{:.0}", transition_level_ft(18_000.0, 998.0, 0.0, 500.0)?), "18500");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn transition_level_ft(
    transition_altitude_ft: f64,
    altimeter_setting_hpa: f64,
    least_layer_ft: f64,
    step_ft: f64,
) -> Result<f64, Error> {
    if any_nan(&[transition_altitude_ft, altimeter_setting_hpa, least_layer_ft, step_ft]) {
        return Ok(f64::NAN);
    }
    let altitude = IndicatedAltitude::named("transition_altitude_ft", transition_altitude_ft)?;
    let setting = AltimeterSetting::named("altimeter_setting_hpa", altimeter_setting_hpa)?;
    let layer = TransitionLayer::named("least_layer_ft", least_layer_ft)?;
    let step = LevelStep::named("step_ft", step_ft)?;
    Ok(air::transition_level(altitude, setting, layer, step)?.value().get::<foot>())
}

/// Cold-temperature correction by ICAO's formula, to add to an altitude on the procedure.
///
/// `H (15 - t0)/(273 + t0 - 0.5 L (H + E))` with height `H`, elevation `E` of the source, L = 0.00198 degC/ft
/// and `t0 = t + L E`. Offered beside it: [`cold_temperature_correction_tabulated_ft`],
/// [`cold_temperature_correction_rule_ft`] and, exact, [`cold_temperature_correction_exact_ft`].
///
/// # Arguments
/// - `height_ft`: charted height above the altimeter setting source, 0 to 20 000
/// - `temperature_degc`: temperature at the altimeter setting source, -200 to 200
/// - `elevation_ft`: elevation of the altimeter setting source, -16 500 to 60 000 (default 0.0)
///
/// # Accuracy
/// The document gives 5 percent, for sources to 10 000 ft and heights to 5000 ft.
///
/// # Degenerate cases
/// Warmer than standard it is negative, which nobody subtracts in practice. No height, no correction.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 8168 (PANS-OPS) volume I, Part III Section 1 Chapter 4, from memory; it reproduces ICAO's table.
///
/// # Example
/// ```
/// # use lubberline::plain::cold_temperature_correction_ft;
/// assert_eq!(format!("{:.1}", cold_temperature_correction_ft(1_500.0, -20.0, 0.0)?), "208.7");
/// assert_eq!(format!("{:.1}", cold_temperature_correction_ft(1_500.0, -20.0, 3_000.0)?), "171.3");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cold_temperature_correction_ft(
    height_ft: f64,
    temperature_degc: f64,
    elevation_ft: f64,
) -> Result<f64, Error> {
    if any_nan(&[height_ft, temperature_degc, elevation_ft]) {
        return Ok(f64::NAN);
    }
    let height = HeightAboveSource::named("height_ft", height_ft)?;
    let temperature = Temperature::named("temperature_degc", temperature_degc)?;
    let elevation = Elevation::named("elevation_ft", elevation_ft)?;
    Ok(air::cold_temperature_correction(height, temperature, elevation).get::<foot>())
}

/// Cold-temperature correction as the published table has it: rounded up to the next 10 ft.
///
/// The formula of [`cold_temperature_correction_ft`] for a source at sea level, rounded up; between the table's
/// own heights (200 to 5000 ft) and temperatures (10 to -50 degC) likewise. To read off between cells instead, take
/// `cold_temperature_correction_by_method_ft`.
///
/// # Arguments
/// - `height_ft`: charted height above the altimeter setting source, 0 to 20 000
/// - `temperature_degc`: temperature at the altimeter setting source, -200 to 200
///
/// # Accuracy
/// All 98 cells of the table.
///
/// # Degenerate cases
/// Warmer than 15 degC there is no correction, and none without height.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// FAA Aeronautical Information Manual (20 April 2023), TBL 7-3-1, ICAO Cold Temperature Error Table, from ICAO Doc 8168 Vol I (5th ed. 2006),
/// Table III-1-4-1 b).
///
/// # Example
/// ```
/// # use lubberline::plain::cold_temperature_correction_tabulated_ft;
/// assert_eq!(format!("{:.0}", cold_temperature_correction_tabulated_ft(1_500.0, -20.0)?), "210");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cold_temperature_correction_tabulated_ft(height_ft: f64, temperature_degc: f64) -> Result<f64, Error> {
    if any_nan(&[height_ft, temperature_degc]) {
        return Ok(f64::NAN);
    }
    let height = HeightAboveSource::named("height_ft", height_ft)?;
    let temperature = Temperature::named("temperature_degc", temperature_degc)?;
    Ok(air::cold_temperature_correction_tabulated(height, temperature).get::<foot>())
}

/// Cold-temperature correction by the rule of 4 percent for each 10 degC below standard at the source.
///
/// `0.04 H (t_standard - t)/10`.
///
/// # Arguments
/// - `height_ft`: charted height above the altimeter setting source, 0 to 20 000
/// - `temperature_degc`: temperature at the altimeter setting source, -200 to 200
/// - `elevation_ft`: elevation of the altimeter setting source, -16 500 to 60 000 (default 0.0)
///
/// # Accuracy
/// As published: on the safe side above -15 degC at the source.
///
/// # Degenerate cases
/// Warmer than standard it is negative.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 8168 (PANS-OPS) volume I, Part III Section 1 Chapter 4, 4.3.1, read in a quotation.
///
/// # Example
/// ```
/// # use lubberline::plain::cold_temperature_correction_rule_ft;
/// assert_eq!(format!("{:.1}", cold_temperature_correction_rule_ft(1_500.0, -10.0, 0.0)?), "150.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cold_temperature_correction_rule_ft(
    height_ft: f64,
    temperature_degc: f64,
    elevation_ft: f64,
) -> Result<f64, Error> {
    if any_nan(&[height_ft, temperature_degc, elevation_ft]) {
        return Ok(f64::NAN);
    }
    let height = HeightAboveSource::named("height_ft", height_ft)?;
    let temperature = Temperature::named("temperature_degc", temperature_degc)?;
    let elevation = Elevation::named("elevation_ft", elevation_ft)?;
    Ok(air::cold_temperature_correction_by_rule(height, temperature, elevation).get::<foot>())
}

/// Cold-temperature correction, exact for air that is as cold against standard all the way up as at the source.
///
/// The indicated height at which the true height is the charted one, less that: the inverse of
/// [`true_altitude_ft`] for a source at standard pressure.
///
/// # Arguments
/// - `height_ft`: charted height above the altimeter setting source, 0 to 20 000
/// - `temperature_degc`: temperature at the altimeter setting source, -200 to 200
/// - `elevation_ft`: elevation of the altimeter setting source, -16 500 to 60 000 (default 0.0)
///
/// # Accuracy
/// Rounding for such a column.
///
/// # Degenerate cases
/// Warmer than standard it is negative. No height, no correction.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Hydrostatic balance with the layers of ICAO Doc 7488/3 (3rd edition 1993).
///
/// # Example
/// ```
/// # use lubberline::plain::cold_temperature_correction_exact_ft;
/// assert_eq!(format!("{:.1}", cold_temperature_correction_exact_ft(1_500.0, -20.0, 0.0)?), "208.8");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cold_temperature_correction_exact_ft(
    height_ft: f64,
    temperature_degc: f64,
    elevation_ft: f64,
) -> Result<f64, Error> {
    if any_nan(&[height_ft, temperature_degc, elevation_ft]) {
        return Ok(f64::NAN);
    }
    let height = HeightAboveSource::named("height_ft", height_ft)?;
    let temperature = Temperature::named("temperature_degc", temperature_degc)?;
    let elevation = Elevation::named("elevation_ft", elevation_ft)?;
    Ok(air::cold_temperature_correction_exact(height, temperature, elevation).get::<foot>())
}
