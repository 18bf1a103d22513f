//! A column of air that is warmer or colder than standard all the way: how high a pressure altitude truly is.

use super::altimeter::setting_altitude_m;
use super::geopotential::{geometric_m, geopotential_m};
use super::standard::{GAS_CONSTANT, GRAVITY_M_S2, standard_pressure_pa, standard_temperature_k};
use crate::Error;
use crate::value::units::{kelvin_interval, meter, metres};
use crate::value::{
    AltimeterSetting, Elevation, HeightAboveStation, IsaDeviation, PressureAltitude, TrueAltitude,
};

/// Thickness of the air between two pressure altitudes, in geopotential metres: `dH + D (R/g) ln(p1/p2)`.
///
/// Hydrostatic balance makes a step of pressure altitude as much thicker as the air is warmer, `dH =
/// (T/T_standard) dHp`, and the integral of `dHp/T_standard` is `(R/g) ln(p1/p2)`, whatever the layers.
pub(super) fn thickness_m(from_m: f64, to_m: f64, deviation_k: f64) -> f64 {
    let log_ratio = (standard_pressure_pa(from_m) / standard_pressure_pa(to_m)).ln();
    to_m - from_m + deviation_k * GAS_CONSTANT / GRAVITY_M_S2 * log_ratio
}

/// The pressure altitude a given thickness above another one: the inverse of [`thickness_m`].
///
/// Newton's method on a function whose slope, the ratio of the temperatures, changes slowly; bounded all the
/// same.
pub(super) fn altitude_above_m(from_m: f64, thickness_wanted_m: f64, deviation_k: f64) -> f64 {
    let mut to_m = from_m + thickness_wanted_m;
    for _ in 0..50 {
        // Just outside the atmosphere, where the caller's check of the range refuses it.
        to_m = to_m.clamp(-6_000.0, 81_000.0);
        let slope = 1.0 + deviation_k / standard_temperature_k(to_m);
        let step_m = (thickness_wanted_m - thickness_m(from_m, to_m, deviation_k)) / slope;
        to_m += step_m;
        if step_m.abs() < 1e-10 {
            break;
        }
    }
    to_m
}

/// Where the column stands: the pressure altitude at the foot of it, and the geopotential altitude there.
fn foot_m(setting: AltimeterSetting, elevation: Elevation) -> (f64, f64) {
    let elevation_m = elevation.value().get::<meter>();
    (elevation_m + setting_altitude_m(setting), geopotential_m(elevation_m))
}

/// The true altitude of an aircraft, from its pressure altitude, a station's altimeter setting and the ISA
/// deviation.
///
/// The column of air from the station up is taken to be warmer than standard by the same amount everywhere.
///
/// # Accuracy
/// Rounding for such a column. Real air is layered: 5 K of error in the mean temperature of the column are 2
/// percent of the height. Includes the difference between geopotential and geometric height, 77 ft at 40 000
/// ft.
///
/// # Degenerate cases
/// At the station's own pressure the answer is its elevation, whatever the temperature.
///
/// # Source
/// Hydrostatic balance with the layers of ICAO Doc 7488/3.
///
/// # Example
/// ```
/// use lubberline::air::true_altitude;
/// use lubberline::value::{AltimeterSetting, Elevation, IsaDeviation, PressureAltitude, units::*};
/// let setting = AltimeterSetting::new(hectopascals(1_013.25))?;
/// let altitude = true_altitude(
///     PressureAltitude::new(feet(10_000.0))?,
///     setting,
///     Elevation::new(feet(0.0))?,
///     IsaDeviation::new(kelvins(-20.0))?,
/// );
/// assert_eq!(format!("{:.0}", altitude.value().get::<foot>()), "9285");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn true_altitude(
    altitude: PressureAltitude,
    setting: AltimeterSetting,
    elevation: Elevation,
    deviation: IsaDeviation,
) -> TrueAltitude {
    let (foot_m, foot_geopotential_m) = foot_m(setting, elevation);
    let deviation_k = deviation.value().get::<kelvin_interval>();
    let above_m = thickness_m(foot_m, altitude.value().get::<meter>(), deviation_k);
    TrueAltitude::derived(metres(geometric_m(foot_geopotential_m + above_m)))
}

/// The height above a station, from pressure altitude, the station's altimeter setting and the ISA deviation.
///
/// [`true_altitude`] less the station's elevation.
///
/// # Accuracy
/// As [`true_altitude`].
///
/// # Source
/// As [`true_altitude`].
///
/// # Example
/// ```
/// use lubberline::air::height_above_station;
/// use lubberline::value::{AltimeterSetting, Elevation, IsaDeviation, PressureAltitude, units::*};
/// let (setting, deviation) = (AltimeterSetting::new(hectopascals(1004.0))?, IsaDeviation::new(kelvins(7.0))?);
/// // The column is warmer than standard and so taller, and begins at a lower pressure.
/// assert_eq!(format!("{:.0}", height_above_station(PressureAltitude::new(feet(35_000.0))?, setting, Elevation::new(feet(420.0))?, deviation).value().get::<foot>()), "35344");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn height_above_station(
    altitude: PressureAltitude,
    setting: AltimeterSetting,
    elevation: Elevation,
    deviation: IsaDeviation,
) -> HeightAboveStation {
    HeightAboveStation::derived(
        true_altitude(altitude, setting, elevation, deviation).value() - elevation.value(),
    )
}

/// The pressure altitude at a true altitude: the inverse of [`true_altitude`].
///
/// # Accuracy
/// 1e-9 m, by Newton's method.
///
/// # Errors
/// [`Error::OutOfRange`] of the pressure altitude outside -5 to 80 km.
///
/// # Example
/// ```
/// use lubberline::air::pressure_altitude_at;
/// use lubberline::value::{AltimeterSetting, Elevation, IsaDeviation, TrueAltitude, units::*};
/// let (setting, deviation) = (AltimeterSetting::new(hectopascals(1004.0))?, IsaDeviation::new(kelvins(7.0))?);
/// assert_eq!(format!("{:.0}", pressure_altitude_at(TrueAltitude::new(feet(35_700.0))?, setting, Elevation::new(feet(420.0))?, deviation)?.value().get::<foot>()), "34938");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn pressure_altitude_at(
    altitude: TrueAltitude,
    setting: AltimeterSetting,
    elevation: Elevation,
    deviation: IsaDeviation,
) -> Result<PressureAltitude, Error> {
    let (foot_m, foot_geopotential_m) = foot_m(setting, elevation);
    let above_m = geopotential_m(altitude.value().get::<meter>()) - foot_geopotential_m;
    let deviation_k = deviation.value().get::<kelvin_interval>();
    PressureAltitude::new(metres(altitude_above_m(foot_m, above_m, deviation_k)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{feet, foot, hectopascals, kelvins};

    #[test]
    fn the_thickness_is_the_integral_of_the_ratio_of_temperatures() {
        // Midpoint rule over 2 m steps: an evaluation without the closed form.
        for deviation_k in [-60.0, 0.0, 35.0] {
            let sum_m: f64 = (0..10_000)
                .map(|step| {
                    let altitude_m = 2_000.0 + 2.0 * (f64::from(step) + 0.5);
                    2.0 * (1.0 + deviation_k / standard_temperature_k(altitude_m))
                })
                .sum();
            let thickness_m = thickness_m(2_000.0, 22_000.0, deviation_k);
            assert!((thickness_m - sum_m).abs() < 1e-3, "{thickness_m} {sum_m}");
        }
    }

    #[test]
    fn the_inverse_returns_over_the_whole_atmosphere() {
        let setting = AltimeterSetting::new(hectopascals(985.0)).unwrap();
        let elevation = Elevation::new(feet(1_200.0)).unwrap();
        for deviation_k in [-150.0, -70.0, -10.0, 0.0, 40.0, 150.0] {
            let deviation = IsaDeviation::new(kelvins(deviation_k)).unwrap();
            for altitude_ft in (-16..=262).map(|thousands| f64::from(thousands) * 1_000.0) {
                let altitude = PressureAltitude::new(feet(altitude_ft)).unwrap();
                let height = true_altitude(altitude, setting, elevation, deviation);
                let back = pressure_altitude_at(height, setting, elevation, deviation).unwrap();
                assert!(
                    (back.value().get::<foot>() - altitude_ft).abs() < 1e-8,
                    "{altitude_ft} ft, {deviation_k} K: {back:?}"
                );
            }
        }
    }

    #[test]
    fn at_the_station_the_height_is_nothing_whatever_the_temperature() {
        let setting = AltimeterSetting::new(hectopascals(1_031.0)).unwrap();
        let elevation = Elevation::new(feet(4_000.0)).unwrap();
        let at_station =
            PressureAltitude::new(elevation.value() + metres(setting_altitude_m(setting))).unwrap();
        for deviation_k in [-50.0, 0.0, 50.0] {
            let deviation = IsaDeviation::new(kelvins(deviation_k)).unwrap();
            let height = height_above_station(at_station, setting, elevation, deviation);
            assert!(height.value().get::<foot>().abs() < 1e-8, "{height:?}");
        }
    }

    #[test]
    fn a_height_beyond_the_atmosphere_is_refused() {
        let altitude = TrueAltitude::new(feet(399_000.0)).unwrap();
        let elevation = Elevation::new(feet(0.0)).unwrap();
        for deviation_k in [-150.0, 0.0, 50.0] {
            let deviation = IsaDeviation::new(kelvins(deviation_k)).unwrap();
            let refused = pressure_altitude_at(altitude, AltimeterSetting::standard(), elevation, deviation);
            assert!(
                matches!(refused, Err(Error::OutOfRange { value, .. }) if value > 262_467.0),
                "{refused:?}"
            );
        }
    }
}
