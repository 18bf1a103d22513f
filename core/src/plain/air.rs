//! Plain functions of the standard atmosphere of [`crate::air`].

use super::{any_nan, outputs};
use crate::Error;
use crate::air::{self, Air};
use crate::many::{atmosphere::Atmosphere, run};
use crate::value::units::{
    degree_celsius, foot, hectopascal, kelvin_interval, kilogram_per_cubic_meter, knot, ratio,
};
use crate::value::{
    GeopotentialAltitude, IsaDeviation, PressureAltitude, StaticPressure, Temperature, TrueAltitude,
};

outputs! {
    /// The air at a pressure altitude: what [`standard_atmosphere`] gives.
    StandardAtmosphere {
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

/// The ICAO standard atmosphere at a pressure altitude, with an ISA deviation of the temperature.
///
/// Layers of even temperature change from 15 degC at sea level: -6.5 K/km to 11 km, none to 20 km, +1 to 32 km,
/// +2.8 to 47 km, none to 51 km, -2.8 to 71 km, -2 to 80 km, geopotential. Pressure by hydrostatic balance;
/// density `p/(R T)`, speed of sound `sqrt(1.4 R T)`, R = 287.05287 J/(kg K). The deviation moves temperature,
/// density and speed of sound and leaves the pressure. For a geometric altitude in the standard atmosphere give
/// [`geopotential_altitude_ft`] of it.
///
/// # Arguments
/// - `pressure_altitude_ft`: pressure altitude, -16 420 to 262 467.2
/// - `isa_deviation_k`: warmer than standard by this, -150 to 150 (default 0.0)
///
/// # Accuracy
/// Rounding; in arrays 1e-14 of the value. The pressures printed in the source above 20 km differ by up to 4e-6 of themselves, having been
/// worked out from rounded ones.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
///
/// # Example
/// ```
/// # use lubberline::plain::standard_atmosphere;
/// assert_eq!(format!("{:.1}", standard_atmosphere(35_000.0, 0.0)?.temperature_degc), "-54.3");
/// assert_eq!(format!("{:.2}", standard_atmosphere(35_000.0, 0.0)?.pressure_hpa), "238.42");
/// assert_eq!(format!("{:.5}", standard_atmosphere(6_000.0, 15.0)?.density_kg_per_m3), "0.97120");
/// assert_eq!(format!("{:.2}", standard_atmosphere(0.0, 0.0)?.speed_of_sound_kt), "661.48");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn standard_atmosphere(
    pressure_altitude_ft: f64,
    isa_deviation_k: f64,
) -> Result<StandardAtmosphere, Error> {
    if any_nan(&[pressure_altitude_ft, isa_deviation_k]) {
        return Ok(StandardAtmosphere::NAN);
    }
    let altitude = PressureAltitude::named("pressure_altitude_ft", pressure_altitude_ft)?;
    let air = Air::new(altitude, IsaDeviation::named("isa_deviation_k", isa_deviation_k)?);
    Ok(StandardAtmosphere {
        temperature_degc: air.temperature().value().get::<degree_celsius>(),
        pressure_hpa: air.pressure().value().get::<hectopascal>(),
        density_kg_per_m3: air.density().get::<kilogram_per_cubic_meter>(),
        speed_of_sound_kt: air.speed_of_sound().get::<knot>(),
    })
}

/// [`standard_atmosphere`] over columns.
pub(super) fn standard_atmosphere_block(inputs: [&[f64]; 2], outputs: [&mut [f64]; 4]) {
    let [pressure_altitude_ft, isa_deviation_k] = inputs;
    let [temperature_degc, pressure_hpa, density_kg_per_m3, speed_of_sound_kt] = outputs;
    run(Atmosphere {
        pressure_altitude_ft,
        isa_deviation_k,
        temperature_degc,
        pressure_hpa,
        density_kg_per_m3,
        speed_of_sound_kt,
    });
}

/// Pressure over standard sea-level pressure, the ratio called delta.
///
/// The pressure of [`standard_atmosphere`] over 1013.25 hPa.
///
/// # Arguments
/// - `pressure_altitude_ft`: pressure altitude, -16 420 to 262 467.2
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// 1 at zero altitude, exactly.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
///
/// # Example
/// ```
/// # use lubberline::plain::pressure_ratio;
/// assert_eq!(format!("{:.4}", pressure_ratio(35_000.0)?), "0.2353");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn pressure_ratio(pressure_altitude_ft: f64) -> Result<f64, Error> {
    if any_nan(&[pressure_altitude_ft]) {
        return Ok(f64::NAN);
    }
    let altitude = PressureAltitude::named("pressure_altitude_ft", pressure_altitude_ft)?;
    Ok(Air::standard(altitude).pressure_ratio().get::<ratio>())
}

/// Density over standard sea-level density, the ratio called sigma.
///
/// Pressure ratio over temperature ratio.
///
/// # Arguments
/// - `pressure_altitude_ft`: pressure altitude, -16 420 to 262 467.2
/// - `isa_deviation_k`: warmer than standard by this, -150 to 150 (default 0.0)
///
/// # Accuracy
/// Rounding. The sea-level density meant is `p0/(R T0)`, which is 1.225 kg/m3 to 1.5e-8.
///
/// # Degenerate cases
/// 1 at zero altitude and deviation, exactly.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
///
/// # Example
/// ```
/// # use lubberline::plain::density_ratio;
/// assert_eq!(format!("{:.4}", density_ratio(35_000.0, 0.0)?), "0.3099");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn density_ratio(pressure_altitude_ft: f64, isa_deviation_k: f64) -> Result<f64, Error> {
    if any_nan(&[pressure_altitude_ft, isa_deviation_k]) {
        return Ok(f64::NAN);
    }
    let altitude = PressureAltitude::named("pressure_altitude_ft", pressure_altitude_ft)?;
    let deviation = IsaDeviation::named("isa_deviation_k", isa_deviation_k)?;
    Ok(Air::new(altitude, deviation).density_ratio().get::<ratio>())
}

/// Temperature over standard sea-level temperature, in kelvins, the ratio called theta.
///
/// The temperature of [`standard_atmosphere`] over 288.15 K.
///
/// # Arguments
/// - `pressure_altitude_ft`: pressure altitude, -16 420 to 262 467.2
/// - `isa_deviation_k`: warmer than standard by this, -150 to 150 (default 0.0)
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// 1 at zero altitude and deviation, exactly.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
///
/// # Example
/// ```
/// # use lubberline::plain::temperature_ratio;
/// assert_eq!(format!("{:.4}", temperature_ratio(35_000.0, 0.0)?), "0.7594");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn temperature_ratio(pressure_altitude_ft: f64, isa_deviation_k: f64) -> Result<f64, Error> {
    if any_nan(&[pressure_altitude_ft, isa_deviation_k]) {
        return Ok(f64::NAN);
    }
    let altitude = PressureAltitude::named("pressure_altitude_ft", pressure_altitude_ft)?;
    let deviation = IsaDeviation::named("isa_deviation_k", isa_deviation_k)?;
    Ok(Air::new(altitude, deviation).temperature_ratio().get::<ratio>())
}

/// How much warmer than the standard atmosphere the air is: the ISA deviation of a temperature.
///
/// The temperature less the standard one at that pressure altitude.
///
/// # Arguments
/// - `temperature_degc`: static air temperature, -200 to 200
/// - `pressure_altitude_ft`: pressure altitude, -16 420 to 262 467.2
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range, or a deviation beyond 150 K.
///
/// # Source
/// ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
///
/// # Example
/// ```
/// # use lubberline::plain::isa_deviation_k;
/// assert_eq!(format!("{:.2}", isa_deviation_k(-45.0, 35_000.0)?), "9.34");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn isa_deviation_k(temperature_degc: f64, pressure_altitude_ft: f64) -> Result<f64, Error> {
    if any_nan(&[temperature_degc, pressure_altitude_ft]) {
        return Ok(f64::NAN);
    }
    let temperature = Temperature::named("temperature_degc", temperature_degc)?;
    let altitude = PressureAltitude::named("pressure_altitude_ft", pressure_altitude_ft)?;
    Ok(air::isa_deviation(temperature, altitude)?.value().get::<kelvin_interval>())
}

/// The speed of sound in air of a temperature.
///
/// `sqrt(1.4 R T)` with R = 287.05287 J/(kg K).
///
/// # Arguments
/// - `temperature_degc`: static air temperature, -200 to 200
///
/// # Accuracy
/// Rounding, for a gas of constant heat ratio: real air at 50 degC differs by less than 0.1 percent.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
///
/// # Example
/// ```
/// # use lubberline::plain::speed_of_sound_kt;
/// assert_eq!(format!("{:.2}", speed_of_sound_kt(15.0)?), "661.48");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn speed_of_sound_kt(temperature_degc: f64) -> Result<f64, Error> {
    if any_nan(&[temperature_degc]) {
        return Ok(f64::NAN);
    }
    Ok(air::speed_of_sound(Temperature::named("temperature_degc", temperature_degc)?).get::<knot>())
}

/// Pressure altitude from static pressure: where the standard atmosphere has that pressure.
///
/// The inverse of the pressure of [`standard_atmosphere`].
///
/// # Arguments
/// - `pressure_hpa`: static pressure, above 0 to 2000
///
/// # Accuracy
/// Rounding (1e-9 ft).
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range, or a pressure above that of -5 km (1777 hPa) or below that of 80 km (0.00886
/// hPa).
///
/// # Source
/// ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
///
/// # Example
/// ```
/// # use lubberline::plain::pressure_altitude_from_pressure_ft;
/// assert_eq!(format!("{:.1}", pressure_altitude_from_pressure_ft(500.0)?), "18288.8");
/// assert_eq!(format!("{:.0}", pressure_altitude_from_pressure_ft(100.0)?), "53083");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn pressure_altitude_from_pressure_ft(pressure_hpa: f64) -> Result<f64, Error> {
    if any_nan(&[pressure_hpa]) {
        return Ok(f64::NAN);
    }
    let pressure = StaticPressure::named("pressure_hpa", pressure_hpa)?;
    Ok(air::pressure_altitude(pressure)?.value().get::<foot>())
}

/// Geopotential altitude, in which the standard atmosphere is laid out, from geometric altitude.
///
/// `r h/(r + h)` with r = 6 356 766 m.
///
/// # Arguments
/// - `geometric_altitude_ft`: height above mean sea level as a length, -16 500 to 400 000
///
/// # Accuracy
/// Rounding, in the gravity of the standard atmosphere; real gravity changes with latitude by up to 0.3
/// percent.
///
/// # Degenerate cases
/// Zero gives zero.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
///
/// # Example
/// ```
/// # use lubberline::plain::geopotential_altitude_ft;
/// assert_eq!(format!("{:.1}", geopotential_altitude_ft(60_000.0)?), "59827.9");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn geopotential_altitude_ft(geometric_altitude_ft: f64) -> Result<f64, Error> {
    if any_nan(&[geometric_altitude_ft]) {
        return Ok(f64::NAN);
    }
    let altitude = TrueAltitude::named("geometric_altitude_ft", geometric_altitude_ft)?;
    Ok(air::geopotential_altitude(altitude).value().get::<foot>())
}

/// Geometric altitude from geopotential altitude: the inverse of [`geopotential_altitude_ft`].
///
/// `r H/(r - H)` with r = 6 356 766 m.
///
/// # Arguments
/// - `geopotential_altitude_ft`: altitude in units of work against standard gravity, -16 513.1 to 392 472.6
///
/// # Accuracy
/// Rounding, in the gravity of the standard atmosphere; real gravity changes with latitude by up to 0.3
/// percent.
///
/// # Degenerate cases
/// Zero gives zero.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
///
/// # Example
/// ```
/// # use lubberline::plain::geometric_altitude_ft;
/// assert_eq!(format!("{:.1}", geometric_altitude_ft(60_000.0)?), "60173.1");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn geometric_altitude_ft(geopotential_altitude_ft: f64) -> Result<f64, Error> {
    if any_nan(&[geopotential_altitude_ft]) {
        return Ok(f64::NAN);
    }
    let altitude = GeopotentialAltitude::named("geopotential_altitude_ft", geopotential_altitude_ft)?;
    Ok(air::geometric_altitude(altitude).value().get::<foot>())
}
