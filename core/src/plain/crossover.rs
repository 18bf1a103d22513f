//! Where an airspeed and a Mach number are the same speed, in plain numbers.

use super::any_nan;
use crate::Error;
use crate::air;
use crate::value::units::foot;
use crate::value::{CalibratedAirspeed, Mach};

/// The pressure altitude at which a calibrated airspeed and a Mach number are one speed.
///
/// Where the static pressure is the impact pressure of the calibrated airspeed over the impact ratio of the
/// Mach number; the temperature plays no part.
///
/// # Arguments
/// - `cas_kt`: calibrated airspeed, 0 to 5000
/// - `mach`: Mach number, 0 to 10
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// Speeds of zero cross nowhere.
///
/// # Errors
/// A value outside its range, or no crossover from -5 to 80 km.
///
/// # Source
/// The definitions of calibrated airspeed and Mach number, with ICAO Doc 7488/3 (3rd edition 1993).
///
/// # Example
/// ```
/// # use lubberline::plain::crossover_altitude_ft;
/// assert_eq!(format!("{:.0}", crossover_altitude_ft(300.0, 0.78)?), "29314");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn crossover_altitude_ft(cas_kt: f64, mach: f64) -> Result<f64, Error> {
    if any_nan(&[cas_kt, mach]) {
        return Ok(f64::NAN);
    }
    let airspeed = CalibratedAirspeed::named("cas_kt", cas_kt)?;
    let altitude = air::crossover_altitude(airspeed, Mach::named("mach", mach)?)?;
    Ok(altitude.value().get::<foot>())
}
