//! The crossover altitude: where a climb changes from a calibrated airspeed to a Mach number.

use super::pitot::{impact_over_sea_level, impact_ratio};
use super::standard::{SEA_LEVEL_PA, standard_altitude_m};
use crate::Error;
use crate::value::units::{knot, metres, ratio};
use crate::value::{CalibratedAirspeed, Mach, PressureAltitude};

/// The pressure altitude at which a calibrated airspeed and a Mach number are one speed, whatever the
/// temperature.
///
/// There the static pressure is the impact pressure of the calibrated airspeed over the impact ratio of the
/// Mach number.
///
/// # Accuracy
/// Rounding.
///
/// # Errors
/// [`Error::NoCrossover`] if that pressure is not found from -5 to 80 km, as with a speed of zero.
///
/// # Source
/// The definitions of calibrated airspeed and Mach number, as [`super::Air::mach_from_calibrated`].
///
/// # Example
/// ```
/// use lubberline::air::crossover_altitude;
/// use lubberline::value::{CalibratedAirspeed, Mach, units::*};
/// let altitude = crossover_altitude(
///     CalibratedAirspeed::new(knots(300.0))?,
///     Mach::new(Ratio::new::<ratio>(0.78))?,
/// )?;
/// assert_eq!(format!("{:.0}", altitude.value().get::<foot>()), "29314");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn crossover_altitude(airspeed: CalibratedAirspeed, mach: Mach) -> Result<PressureAltitude, Error> {
    let pressure_pa =
        SEA_LEVEL_PA * impact_over_sea_level(airspeed) / impact_ratio(mach.value().get::<ratio>());
    PressureAltitude::new(metres(standard_altitude_m(pressure_pa))).map_err(|_| Error::NoCrossover {
        calibrated_airspeed_kt: airspeed.value().get::<knot>(),
        mach: mach.value().get::<ratio>(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::air::Air;
    use crate::value::units::{Ratio, foot, knots};

    fn crossover(airspeed_kt: f64, mach: f64) -> Result<PressureAltitude, Error> {
        crossover_altitude(
            CalibratedAirspeed::new(knots(airspeed_kt)).unwrap(),
            Mach::new(Ratio::new::<ratio>(mach)).unwrap(),
        )
    }

    /// Airbus, Getting to Grips with Aircraft Performance (2002), from memory: 300 kt and Mach 0.78 cross at 29
    /// 314 ft.
    #[test]
    fn a_printed_crossover() {
        assert!((crossover(300.0, 0.78).unwrap().value().get::<foot>() - 29_314.0).abs() < 0.5);
    }

    #[test]
    fn there_the_two_speeds_are_one() {
        for (airspeed_kt, mach) in [(250.0, 0.85), (320.0, 0.6), (550.0, 2.0), (680.0, 1.1)] {
            let air = Air::standard(crossover(airspeed_kt, mach).unwrap());
            let airspeed = air.calibrated_from_mach(Mach::new(Ratio::new::<ratio>(mach)).unwrap()).unwrap();
            assert!((airspeed.value().get::<knot>() / airspeed_kt - 1.0).abs() < 1e-13, "{airspeed_kt}");
        }
    }

    #[test]
    fn speeds_that_never_meet_are_refused() {
        for (airspeed_kt, mach) in [(300.0, 0.0), (0.0, 0.5), (0.0, 0.0), (900.0, 0.3)] {
            assert!(matches!(crossover(airspeed_kt, mach), Err(Error::NoCrossover { .. })), "{airspeed_kt}");
        }
    }
}
