//! What an altimeter shows with its setting, and the setting that a station gives.

use super::standard::{standard_altitude_m, standard_pressure_pa};
use crate::Error;
use crate::value::units::{Pressure, feet, inch_of_mercury, meter, metres, pascal};
use crate::value::{AltimeterSetting, Elevation, IndicatedAltitude, PressureAltitude, StaticPressure};

/// The altitude in the standard atmosphere of the pressure on the subscale: what the setting takes off the
/// dial.
pub(super) fn setting_altitude_m(setting: AltimeterSetting) -> f64 {
    standard_altitude_m(setting.value().get::<pascal>())
}

/// The altitude that a perfect altimeter shows: pressure altitude less that of its setting.
///
/// An altimeter is a gauge of pressure with the scale of the standard atmosphere, which its setting turns as a
/// whole.
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// With the standard setting it is the pressure altitude.
///
/// # Source
/// The construction of the instrument; ICAO Doc 7488/3 for the scale.
///
/// # Example
/// ```
/// use lubberline::air::indicated_altitude;
/// use lubberline::value::{AltimeterSetting, PressureAltitude, units::*};
/// assert_eq!(format!("{:.0}", indicated_altitude(PressureAltitude::new(feet(35_000.0))?, AltimeterSetting::new(hectopascals(1004.0))?).value().get::<foot>()), "34746");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn indicated_altitude(altitude: PressureAltitude, setting: AltimeterSetting) -> IndicatedAltitude {
    IndicatedAltitude::derived(altitude.value() - metres(setting_altitude_m(setting)))
}

/// The pressure altitude at which a perfect altimeter shows an altitude: the inverse of [`indicated_altitude`].
///
/// # Errors
/// [`Error::OutOfRange`] of the pressure altitude outside -5 to 80 km.
///
/// # Example
/// ```
/// use lubberline::air::pressure_altitude_from_indicated;
/// use lubberline::value::{AltimeterSetting, IndicatedAltitude, units::*};
/// let shown = IndicatedAltitude::new(feet(5_000.0))?;
/// let altitude = pressure_altitude_from_indicated(shown, AltimeterSetting::new(hectopascals(1_000.0))?)?;
/// assert_eq!(format!("{:.0}", altitude.value().get::<foot>()), "5364");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn pressure_altitude_from_indicated(
    altitude: IndicatedAltitude,
    setting: AltimeterSetting,
) -> Result<PressureAltitude, Error> {
    PressureAltitude::new(altitude.value() + metres(setting_altitude_m(setting)))
}

/// Pressure altitude by the trade's rule: 1000 ft for each inch of mercury that the setting is below 29.92.
///
/// # Accuracy
/// At sea level an inch of mercury is 924 ft, so the rule is 8 percent of the correction too much, more than
/// 100 ft for a setting of 31.12.
///
/// # Errors
/// As [`pressure_altitude_from_indicated`].
///
/// # Source
/// CNATRA P-203, Student Guide for Preflight Navigation.
///
/// # Example
/// ```
/// use lubberline::air::pressure_altitude_by_rule;
/// use lubberline::value::{AltimeterSetting, IndicatedAltitude, units::*};
/// assert_eq!(format!("{:.0}", pressure_altitude_by_rule(IndicatedAltitude::new(feet(5_000.0))?, AltimeterSetting::new(hectopascals(1004.0))?)?.value().get::<foot>()), "5272");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn pressure_altitude_by_rule(
    altitude: IndicatedAltitude,
    setting: AltimeterSetting,
) -> Result<PressureAltitude, Error> {
    let setting_inches = setting.value().get::<inch_of_mercury>();
    PressureAltitude::new(altitude.value() + feet(1_000.0 * (29.92 - setting_inches)))
}

/// The altimeter setting of a station, QNH: with it an altimeter at the station shows the station's elevation.
///
/// `p_standard(pressure altitude of the station - elevation)`.
///
/// # Accuracy
/// Rounding. A station reports it rounded down to a whole hectopascal, 27 ft, or to a hundredth of an inch, 9
/// ft.
///
/// # Errors
/// [`Error::OutOfRange`] of a setting beyond its range.
///
/// # Source
/// The definition of QNH, ICAO Annex 3 and Doc 8896 (from memory); [`altimeter_setting_smithsonian`] is the
/// American one.
///
/// # Example
/// ```
/// use lubberline::air::altimeter_setting;
/// use lubberline::value::{Elevation, StaticPressure, units::*};
/// assert_eq!(format!("{:.1}", altimeter_setting(StaticPressure::new(hectopascals(954.6))?, Elevation::new(feet(1_650.0))?)?.value().get::<hectopascal>()), "1013.6");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn altimeter_setting(station: StaticPressure, elevation: Elevation) -> Result<AltimeterSetting, Error> {
    let altitude_m = standard_altitude_m(station.value().get::<pascal>()) - elevation.value().get::<meter>();
    AltimeterSetting::new(Pressure::new::<pascal>(standard_pressure_pa(altitude_m)))
}

/// The pressure at a station from its altimeter setting: the inverse of [`altimeter_setting`].
///
/// Set on an altimeter it is the station's QFE, with which the altimeter shows zero there.
///
/// # Errors
/// [`Error::OutOfRange`] of a pressure beyond its range.
///
/// # Example
/// ```
/// use lubberline::air::station_pressure;
/// use lubberline::value::{AltimeterSetting, Elevation, units::*};
/// assert_eq!(format!("{:.1}", station_pressure(AltimeterSetting::new(hectopascals(1013.25))?, Elevation::new(feet(1_650.0))?)?.value().get::<hectopascal>()), "954.3");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn station_pressure(setting: AltimeterSetting, elevation: Elevation) -> Result<StaticPressure, Error> {
    let altitude_m = setting_altitude_m(setting) + elevation.value().get::<meter>();
    StaticPressure::new(Pressure::new::<pascal>(standard_pressure_pa(altitude_m)))
}

/// The altimeter setting by the American formula, for an altimeter in a cockpit 10 ft above the station.
///
/// `(p - 0.3) (1 + 1013.25^n 0.0065 / 288 h / (p - 0.3)^n)^(1/n)` with n = 0.190284, p in hectopascals and h in
/// metres.
///
/// # Accuracy
/// As published. At 1000 m it gives 0.3 hPa less than [`altimeter_setting`], which is the cockpit's height.
///
/// # Errors
/// [`Error::OutOfRange`] of a setting beyond its range.
///
/// # Source
/// Smithsonian Meteorological Tables, 6th edition 1951, p. 269, read in a quotation.
///
/// # Example
/// ```
/// use lubberline::air::altimeter_setting_smithsonian;
/// use lubberline::value::{Elevation, StaticPressure, units::*};
/// assert_eq!(format!("{:.1}", altimeter_setting_smithsonian(StaticPressure::new(hectopascals(954.6))?, Elevation::new(feet(1_650.0))?)?.value().get::<hectopascal>()), "1013.3");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn altimeter_setting_smithsonian(
    station: StaticPressure,
    elevation: Elevation,
) -> Result<AltimeterSetting, Error> {
    const N: f64 = 0.190_284;
    // One cockpit's height above the station is 0.3 hPa.
    let cockpit_hpa = station.value().get::<pascal>() / 100.0 - 0.3;
    let per_m = 1_013.25_f64.powf(N) * 0.006_5 / 288.0 / cockpit_hpa.powf(N);
    let setting_hpa = cockpit_hpa * (1.0 + per_m * elevation.value().get::<meter>()).powf(1.0 / N);
    AltimeterSetting::new(Pressure::new::<pascal>(setting_hpa * 100.0))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{foot, hectopascal, hectopascals};

    fn shown_ft(altitude: PressureAltitude) -> f64 {
        altitude.value().get::<foot>()
    }

    fn inches(setting: f64) -> AltimeterSetting {
        AltimeterSetting::new(Pressure::new::<inch_of_mercury>(setting)).unwrap()
    }

    fn indicated(altitude_ft: f64) -> IndicatedAltitude {
        IndicatedAltitude::new(feet(altitude_ft)).unwrap()
    }

    /// FAA density altitude chart, column of pressure altitude conversion factors, from memory. It counts from
    /// a setting of 29.92, which is 1.3 ft from the standard atmosphere's own 29.92126: that is the tolerance.
    #[test]
    fn printed_conversions_of_the_setting() {
        for (setting, printed_ft) in
            [(28.0, 1_824.0), (28.5, 1_340.0), (29.92, 0.0), (30.5, -531.0), (31.0, -983.0)]
        {
            let altitude = pressure_altitude_from_indicated(indicated(0.0), inches(setting)).unwrap();
            assert!((shown_ft(altitude) - printed_ft).abs() < 1.3, "{setting}");
        }
    }

    /// CNATRA P-203: 10 000 ft with 31.12 inches is a pressure altitude of 8800 ft by the rule.
    #[test]
    fn the_printed_rule() {
        let altitude = pressure_altitude_by_rule(indicated(10_000.0), inches(31.12)).unwrap();
        assert!((shown_ft(altitude) - 8_800.0).abs() < 1e-6);
        let exact = pressure_altitude_from_indicated(indicated(10_000.0), inches(31.12)).unwrap();
        assert!((shown_ft(exact) - 8_909.0).abs() < 0.5);
    }

    #[test]
    fn with_its_setting_an_altimeter_at_the_station_shows_the_elevation() {
        let elevation = Elevation::new(feet(5_430.0)).unwrap();
        let pressure = StaticPressure::new(hectopascals(832.0)).unwrap();
        let setting = altimeter_setting(pressure, elevation).unwrap();
        let altitude = super::super::pressure_altitude(pressure).unwrap();
        assert!((indicated_altitude(altitude, setting).value().get::<foot>() - 5_430.0).abs() < 1e-9);
        let back = station_pressure(setting, elevation).unwrap();
        assert!((back.value().get::<hectopascal>() - 832.0).abs() < 1e-11);
        let qfe = AltimeterSetting::new(pressure.value()).unwrap();
        assert!(indicated_altitude(altitude, qfe).value().get::<foot>().abs() < 1e-9);
    }

    /// The American formula takes 288 K at sea level for 288.15, which is all that is left when the 0.3 hPa are
    /// taken off.
    #[test]
    fn the_american_setting_is_that_of_an_altimeter_a_little_higher() {
        for (pressure_hpa, elevation_ft) in [(1_010.0, 0.0), (900.0, 3_281.0), (832.0, 5_430.0)] {
            let elevation = Elevation::new(feet(elevation_ft)).unwrap();
            let american = altimeter_setting_smithsonian(
                StaticPressure::new(hectopascals(pressure_hpa)).unwrap(),
                elevation,
            );
            let higher = StaticPressure::new(hectopascals(pressure_hpa - 0.3)).unwrap();
            let ours = altimeter_setting(higher, elevation);
            let difference = american.unwrap().value() - ours.unwrap().value();
            assert!((-1e-9..0.1).contains(&difference.get::<hectopascal>()), "{difference:?}");
        }
    }
}
