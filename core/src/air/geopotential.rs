//! Altitude as a length, and as work against standard gravity, in which the atmosphere is laid out.

use crate::Error;
use crate::value::units::{meter, metres};
use crate::value::{GeopotentialAltitude, PressureAltitude, TrueAltitude};

/// The earth's radius of the standard atmosphere, whose gravity falls off with the square of the distance from
/// its centre.
const RADIUS_M: f64 = 6_356_766.0;

/// Geopotential altitude of a geometric one: `r h / (r + h)` with r = 6 356 766 m.
///
/// # Accuracy
/// Rounding. The radius is that of the standard atmosphere; real gravity changes with latitude, which moves the
/// answer by up to 0.3 percent.
///
/// # Source
/// ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
///
/// # Example
/// ```
/// use lubberline::air::geopotential_altitude;
/// use lubberline::value::{TrueAltitude, units::*};
/// let altitude = geopotential_altitude(TrueAltitude::new(metres(20_000.0))?);
/// assert_eq!(format!("{:.0}", altitude.value().get::<meter>()), "19937");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn geopotential_altitude(altitude: TrueAltitude) -> GeopotentialAltitude {
    GeopotentialAltitude::derived(metres(geopotential_m(altitude.value().get::<meter>())))
}

/// Geometric altitude of a geopotential one: `r H / (r - H)`, the inverse of [`geopotential_altitude`].
///
/// # Accuracy
/// As [`geopotential_altitude`].
///
/// # Example
/// ```
/// use lubberline::air::geometric_altitude;
/// use lubberline::value::{GeopotentialAltitude, units::*};
/// assert_eq!(format!("{:.0}", geometric_altitude(GeopotentialAltitude::new(feet(65_617.0))?).value().get::<foot>()), "65824");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn geometric_altitude(altitude: GeopotentialAltitude) -> TrueAltitude {
    TrueAltitude::derived(metres(geometric_m(altitude.value().get::<meter>())))
}

/// Pressure altitude at a geometric altitude in the standard atmosphere itself, where it is the geopotential
/// altitude.
///
/// In air that is not standard the pressure there is another one: [`crate::air`] relates the two.
///
/// # Errors
/// [`Error::OutOfRange`] outside -5 to 80 km.
///
/// # Example
/// ```
/// use lubberline::air::standard_pressure_altitude;
/// use lubberline::value::{TrueAltitude, units::*};
/// assert_eq!(format!("{:.0}", standard_pressure_altitude(TrueAltitude::new(feet(35_000.0))?)?.value().get::<foot>()), "34941");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn standard_pressure_altitude(altitude: TrueAltitude) -> Result<PressureAltitude, Error> {
    PressureAltitude::new(geopotential_altitude(altitude).value())
}

pub(super) fn geopotential_m(geometric_m: f64) -> f64 {
    RADIUS_M * geometric_m / (RADIUS_M + geometric_m)
}

pub(super) fn geometric_m(geopotential_m: f64) -> f64 {
    RADIUS_M * geopotential_m / (RADIUS_M - geopotential_m)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// ICAO Doc 7488/3 Tables 1 to 3, read in a transcription; printed to the metre.
    #[test]
    fn the_printed_pairs_are_reproduced() {
        for (geometric_m, geopotential_m) in
            [(-5_000.0, -5_004.0), (-2_500.0, -2_501.0), (11_000.0, 10_981.0), (25_000.0, 24_902.0)]
        {
            let altitude = geopotential_altitude(TrueAltitude::new(metres(geometric_m)).unwrap());
            assert!((altitude.value().get::<meter>() - geopotential_m).abs() < 0.5, "{geometric_m}");
            assert!(
                (geometric_altitude(altitude).value().get::<meter>() - geometric_m).abs() < 1e-10,
                "{geometric_m}"
            );
        }
        for (geometric_m, geopotential_m) in [(47_350.0, 47_000.0), (81_020.0, 80_000.0)] {
            let altitude = geometric_altitude(GeopotentialAltitude::new(metres(geopotential_m)).unwrap());
            assert!((altitude.value().get::<meter>() - geometric_m).abs() < 0.5, "{geopotential_m}");
        }
    }

    #[test]
    fn the_whole_table_lies_in_range() {
        for (geometric_m, inside) in [(-5_000.0, true), (81_019.0, true), (81_030.0, false)] {
            let altitude = TrueAltitude::new(metres(geometric_m)).unwrap();
            assert_eq!(standard_pressure_altitude(altitude).is_ok(), inside, "{geometric_m}");
        }
    }
}
