//! The rules of altimetry, of DME distance and of the radio horizon beside the exact answers.

use lubberline::Error;
use lubberline::rules::{
    cold_temperature_correction_error, density_altitude_error, ground_distance_error,
    pressure_altitude_error, radio_horizon_error,
};
use lubberline::station::HorizonRule;
use lubberline::value::{
    AltimeterSetting, Elevation, HeightAboveSource, HeightAboveStation, IndicatedAltitude, PressureAltitude,
    SlantRange, SurfaceHeight, Temperature, units::*,
};

use crate::page::{signed, table, whole, words};

/// The reading taken for the distance, 30 000 ft up.
pub fn ground_distance() -> Result<String, Error> {
    let head = words(&["DME", "distance", "error", "triangle", "curve"]);
    let mut rows = Vec::new();
    for reading_nm in [6.0, 10.0, 20.0, 30.0, 60.0, 120.0] {
        let error = ground_distance_error(
            SlantRange::new(nautical_miles(reading_nm))?,
            HeightAboveStation::new(feet(30_000.0))?,
        )?;
        let mut row = vec![format!("{reading_nm:.1}"), format!("{:.2}", error.exact.get::<nautical_mile>())];
        let [triangle, curve] = error.terms;
        row.extend([error.error(), triangle, curve].map(|it| signed(it.get::<nautical_mile>(), 2)));
        rows.push(row);
    }
    Ok(table(&head, &rows))
}

/// The radio horizon of an antenna at the surface.
pub fn horizon() -> Result<String, Error> {
    let head = words(&["height", "exact", "1.23", "4.11 metric", "1.25", "root"]);
    let mut rows = Vec::new();
    for height_ft in [1_000.0, 10_000.0, 35_000.0, 60_000.0] {
        let error = |rule| -> Result<_, Error> {
            Ok(radio_horizon_error(
                SurfaceHeight::new(feet(height_ft))?,
                SurfaceHeight::new(feet(0.0))?,
                rule,
            ))
        };
        let feet_miles = error(HorizonRule::FeetMiles)?;
        let mut row = vec![
            format!("{} ft", whole(height_ft)),
            format!("{:.1} NM", feet_miles.exact.get::<nautical_mile>()),
        ];
        for rule in [HorizonRule::FeetMiles, HorizonRule::MetresKilometres, HorizonRule::FiveQuarters] {
            let it = error(rule)?;
            let (value, off) = (it.rule.get::<nautical_mile>(), it.error().get::<nautical_mile>());
            row.push(format!("{value:.1} NM ({})", signed(off, 1)));
        }
        row.push(signed(feet_miles.terms[1].get::<nautical_mile>(), 1));
        rows.push(row);
    }
    Ok(table(&head, &rows))
}

/// Density altitude.
pub fn density_altitude() -> Result<String, Error> {
    let head =
        words(&["pressure altitude", "temperature", "rule", "exact", "error", "standard", "slope", "curve"]);
    let mut rows = Vec::new();
    for (altitude_ft, temperature_degc) in
        [(0.0, 35.0), (6_000.0, 13.0), (6_000.0, 35.0), (10_000.0, -25.0), (39_000.0, -50.0)]
    {
        let error = density_altitude_error(
            PressureAltitude::new(feet(altitude_ft))?,
            Temperature::new(degrees_celsius(temperature_degc))?,
        )?;
        let mut row = vec![format!("{} ft", whole(altitude_ft)), format!("{temperature_degc} °C")];
        row.extend([error.rule, error.exact].map(|it| format!("{} ft", whole(it.get::<foot>()))));
        let [standard, slope, curve] = error.terms;
        row.extend([error.error(), standard, slope, curve].map(|it| signed(it.get::<foot>(), 0)));
        rows.push(row);
    }
    Ok(table(&head, &rows))
}

/// Pressure altitude.
pub fn pressure_altitude() -> Result<String, Error> {
    let head = words(&["setting", "rule", "exact", "error", "datum", "slope", "curve"]);
    let mut rows = Vec::new();
    for setting_hpa in [960.0, 990.0, 1013.25, 1030.0] {
        let error = pressure_altitude_error(
            IndicatedAltitude::new(feet(5_000.0))?,
            AltimeterSetting::new(hectopascals(setting_hpa))?,
        )?;
        let mut row = vec![format!("{setting_hpa} hPa")];
        row.extend([error.rule, error.exact].map(|it| format!("{} ft", whole(it.get::<foot>()))));
        let [datum, slope, curve] = error.terms;
        row.extend([error.error(), datum, slope, curve].map(|it| signed(it.get::<foot>(), 0)));
        rows.push(row);
    }
    Ok(table(&head, &rows))
}

/// The cold-temperature correction for 2 000 ft above a source at sea level.
pub fn cold() -> Result<String, Error> {
    let head = words(&["source", "rule", "exact", "error", "share", "column"]);
    let mut rows = Vec::new();
    for temperature_degc in [0.0, -10.0, -20.0, -30.0, -40.0] {
        let error = cold_temperature_correction_error(
            HeightAboveSource::new(feet(2_000.0))?,
            Temperature::new(degrees_celsius(temperature_degc))?,
            Elevation::new(feet(0.0))?,
        );
        let mut row = vec![format!("{temperature_degc} °C")];
        row.extend([error.rule, error.exact].map(|it| format!("{:.0} ft", it.get::<foot>())));
        let [share, column] = error.terms;
        row.extend([error.error(), share, column].map(|it| signed(it.get::<foot>(), 0)));
        rows.push(row);
    }
    Ok(table(&head, &rows))
}
