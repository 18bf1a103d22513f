//! The magnetic field of the earth and its date, in plain numbers.

use std::iter::repeat_n;

use super::block::columns;
use super::earth::position;
use super::{any_nan, outputs};
use crate::Error;
use crate::many::declination::Variation;
use crate::many::magnetic_field::Field;
use crate::many::run;
use crate::north::{DecimalYear, MagneticField, POLAR_GRID_LATITUDE_DEG};
use crate::value::TrueAltitude;
use crate::value::units::{degree, nanotesla};

outputs! {
    /// The magnetic field at a place and date: what [`magnetic_field`] gives.
    MagneticFieldOutput {
        /// Angle from true to magnetic north, positive east: variation.
        declination_deg,
        /// Dip below the horizontal.
        inclination_deg,
        /// Horizontal field.
        horizontal_nt,
        /// Field toward true north.
        north_nt,
        /// Field toward east.
        east_nt,
        /// Field downward.
        down_nt,
        /// The whole field.
        total_nt,
        /// Change of the declination in a year.
        declination_change_deg,
        /// Change of the inclination in a year.
        inclination_change_deg,
        /// Change of the horizontal field in a year.
        horizontal_change_nt,
        /// Change of the field toward true north in a year.
        north_change_nt,
        /// Change of the field toward east in a year.
        east_change_nt,
        /// Change of the field downward in a year.
        down_change_nt,
        /// Change of the whole field in a year.
        total_change_nt,
        /// One standard deviation of the declination.
        declination_uncertainty_deg,
        /// Declination from the north of the polar grid; NaN between 55 degrees of latitude, where that is not used.
        grid_variation_deg,
        /// How far a compass can be trusted: 0 clear, 1 caution, 2 blackout, as in [`crate::north::MagneticZone`].
        zone,
        /// 1 if the date lies in the years the models are made for, 2020 to 2030, else 0.
        in_date,
    }
}

/// The earth's magnetic field at a place and date, by the World Magnetic Model.
///
/// Schmidt semi-normalised spherical harmonics of degree and order 12, in double precision: the model of 2020 before 2025, that of 2025 from
/// then on.
///
/// # Arguments
/// - `lat_deg`: latitude, -90 to 90
/// - `lon_deg`: longitude, any finite number
/// - `altitude_ft`: altitude above mean sea level, -16 500 to 400 000
/// - `decimal_year`: date as a year and its fraction, 2020 to 2035
///
/// # Accuracy
/// The arithmetic to 1e-8 nT, and so far arrays and single calls agree, angles and what follows from them as far as that turns or changes
/// them. The model: one standard deviation of 137 nT north, 89 east, 141 down.
///
/// # Degenerate cases
/// Between 55 degrees of latitude there is no grid variation (NaN). At a pole the components are those of the meridian of the longitude given. About the magnetic poles, where `zone` is not 0, and out of
/// date the declination must not be relied on.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The US/UK World Magnetic Model for 2025-2030: Technical Report, NOAA NCEI and BGS (2024).
///
/// # Example
/// ```
/// # use lubberline::plain::magnetic_field;
/// assert_eq!(format!("{:.2}", magnetic_field(-80.0, 240.0, 0.0, 2027.5)?.declination_deg), "68.49");
/// assert_eq!(format!("{:.1}", magnetic_field(-80.0, 240.0, 0.0, 2027.5)?.down_nt), "-51783.7");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn magnetic_field(
    lat_deg: f64,
    lon_deg: f64,
    altitude_ft: f64,
    decimal_year: f64,
) -> Result<MagneticFieldOutput, Error> {
    if any_nan(&[lat_deg, lon_deg, altitude_ft, decimal_year]) {
        return Ok(MagneticFieldOutput::NAN);
    }
    let place = position("lat_deg", lat_deg, "lon_deg", lon_deg)?;
    let altitude = TrueAltitude::named("altitude_ft", altitude_ft)?;
    let magnetic = MagneticField::at(place, altitude, DecimalYear::named("decimal_year", decimal_year)?);
    Ok(MagneticFieldOutput {
        declination_deg: magnetic.declination().angle().get::<degree>(),
        inclination_deg: magnetic.inclination().get::<degree>(),
        horizontal_nt: magnetic.field.horizontal().get::<nanotesla>(),
        north_nt: magnetic.field.north.get::<nanotesla>(),
        east_nt: magnetic.field.east.get::<nanotesla>(),
        down_nt: magnetic.field.down.get::<nanotesla>(),
        total_nt: magnetic.field.total().get::<nanotesla>(),
        declination_change_deg: magnetic.declination_change().get::<degree>(),
        inclination_change_deg: magnetic.inclination_change().get::<degree>(),
        horizontal_change_nt: magnetic.horizontal_change().get::<nanotesla>(),
        north_change_nt: magnetic.change.north.get::<nanotesla>(),
        east_change_nt: magnetic.change.east.get::<nanotesla>(),
        down_change_nt: magnetic.change.down.get::<nanotesla>(),
        total_change_nt: magnetic.total_change().get::<nanotesla>(),
        declination_uncertainty_deg: magnetic.declination_uncertainty().get::<degree>(),
        grid_variation_deg: magnetic.grid_variation().map_or(f64::NAN, |angle| angle.angle().get::<degree>()),
        zone: f64::from(magnetic.zone().code()),
        in_date: f64::from(magnetic.in_date),
    })
}

/// [`magnetic_field`] over columns.
// Whole, as a grid variation that there is none of is no number, which else asks for the single call: it is taken away at the end.
pub(super) fn magnetic_field_block(
    inputs: &[&[f64]],
    outputs: &mut [&mut [f64]],
    statuses: &mut [i32],
    single: impl Fn([f64; 4]) -> Result<[f64; 18], Error>,
) {
    let loops = |inputs: [&[f64]; 4], outputs: [&mut [f64]; 18]| {
        let [latitude_deg, longitude_deg, altitude_ft, decimal_year] = inputs;
        run(Field { latitude_deg, longitude_deg, altitude_ft, decimal_year, outputs });
    };
    columns(inputs, outputs, statuses, loops, single);
    if let (Some(latitude_deg), Some(grid_variation_deg)) = (inputs.first(), outputs.get_mut(15)) {
        // One number stands for all points.
        let most = if latitude_deg.len() == 1 { statuses.len() } else { 1 };
        let latitudes_deg = latitude_deg.iter().flat_map(|latitude_deg| repeat_n(*latitude_deg, most));
        for (variation_deg, latitude_deg) in
            grid_variation_deg.iter_mut().zip(latitudes_deg).take(statuses.len())
        {
            if latitude_deg.abs() < POLAR_GRID_LATITUDE_DEG {
                *variation_deg = f64::NAN;
            }
        }
    }
}

/// Magnetic variation (declination) at a place and date, positive east.
///
/// The declination of `magnetic_field`.
///
/// # Arguments
/// - `lat_deg`: latitude, -90 to 90
/// - `lon_deg`: longitude, any finite number
/// - `altitude_ft`: altitude above mean sea level, -16 500 to 400 000
/// - `decimal_year`: date as a year and its fraction, 2020 to 2035
///
/// # Accuracy
/// As `magnetic_field`. Arrays and single calls agree to 1e-8 nT across the horizontal field, as far as that turns the declination.
///
/// # Degenerate cases
/// As `magnetic_field`. Near the magnetic poles (caution and blackout zones) and out of date it warns of nothing itself: `zone` and `in_date` of
/// `magnetic_field` say so.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// As `magnetic_field`.
///
/// # Example
/// ```
/// # use lubberline::plain::variation_deg;
/// assert_eq!(format!("{:.2}", variation_deg(-80.0, 240.0, 0.0, 2027.5)?), "68.49");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn variation_deg(lat_deg: f64, lon_deg: f64, altitude_ft: f64, decimal_year: f64) -> Result<f64, Error> {
    if any_nan(&[lat_deg, lon_deg, altitude_ft, decimal_year]) {
        return Ok(f64::NAN);
    }
    let place = position("lat_deg", lat_deg, "lon_deg", lon_deg)?;
    let altitude = TrueAltitude::named("altitude_ft", altitude_ft)?;
    let magnetic = MagneticField::at(place, altitude, DecimalYear::named("decimal_year", decimal_year)?);
    Ok(magnetic.declination().angle().get::<degree>())
}

/// [`variation_deg`] over columns.
pub(super) fn variation_deg_block(inputs: [&[f64]; 4], outputs: [&mut [f64]; 1]) {
    let [latitude_deg, longitude_deg, altitude_ft, decimal_year] = inputs;
    let [variation_deg] = outputs;
    run(Variation { latitude_deg, longitude_deg, altitude_ft, decimal_year, variation_deg });
}

/// A calendar date as a year and its elapsed fraction, as `magnetic_field` takes it.
///
/// The days elapsed since the year began, of 365, or 366 in a leap year of the Gregorian calendar.
///
/// # Arguments
/// - `year`: year, whole, 2020 to 2034
/// - `month`: month, whole, 1 to 12
/// - `day`: day of the month from 1, with its elapsed fraction: 2.5 is noon of the second
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// None.
///
/// # Errors
/// A value outside its range, a date that the calendar has not.
///
/// # Source
/// The Gregorian calendar.
///
/// # Example
/// ```
/// # use lubberline::plain::decimal_year;
/// assert_eq!(format!("{:.4}", decimal_year(2026.0, 7.0, 2.5)?), "2026.5000");
/// assert_eq!(format!("{:.4}", decimal_year(2028.0, 3.0, 1.0)?), "2028.1639");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn decimal_year(year: f64, month: f64, day: f64) -> Result<f64, Error> {
    if any_nan(&[year, month, day]) {
        return Ok(f64::NAN);
    }
    Ok(DecimalYear::of_numbers(year, month, day)?.years())
}
