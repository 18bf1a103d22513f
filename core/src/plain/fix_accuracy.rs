//! How far an error moves a line of position, and two of them a fix, in plain numbers.

use super::{any_nan, outputs};
use crate::Error;
use crate::station::{self, LineOfPosition};
use crate::value::units::{degree, nautical_mile, ratio};
use crate::value::{
    AngularError, Bearing, Confidence, DistanceError, HeightAboveStation, StationDistance, TrueBearing,
    TrueNorth,
};

/// How far a radial's error leads aside at a distance from the station.
///
/// `R sin(d / R) error` on a sphere of the mean radius, with the error in radians; in the plane `d error`.
///
/// # Arguments
/// - `distance_nm`: distance from the station along the ground, above 0 to 5000
/// - `radial_error_deg`: error of the radial, 0 to 90
///
/// # Accuracy
/// Exact on the sphere along the arc; the ellipsoid moves it by less than 0.6 percent.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Derived.
///
/// # Example
/// ```
/// # use lubberline::plain::radial_error_across_nm;
/// assert_eq!(format!("{:.2}", radial_error_across_nm(40.0, 4.5)?), "3.14");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn radial_error_across_nm(distance_nm: f64, radial_error_deg: f64) -> Result<f64, Error> {
    if any_nan(&[distance_nm, radial_error_deg]) {
        return Ok(f64::NAN);
    }
    let line = radial_line(
        ("radial_deg", 0.0),
        ("distance_nm", distance_nm),
        ("radial_error_deg", radial_error_deg),
    )?;
    Ok(line.deviation().get::<nautical_mile>())
}

/// How far a DME's error leads along the ground at a distance from the station.
///
/// `error slant / ((R + h) sin(d / R))` on a sphere of the mean radius, in the plane `error slant / d`.
///
/// # Arguments
/// - `distance_nm`: distance from the station along the ground, above 0 to 5000
/// - `dme_error_nm`: error of the slant range, 0 to 1000
/// - `height_ft`: height above the station's antenna, -60 000 to 400 000 (default 0.0)
///
/// # Accuracy
/// Exact on the sphere for small errors; the ellipsoid moves it by less than 0.6 percent.
///
/// # Degenerate cases
/// It grows without bound toward the station: overhead DME tells nothing of the place.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Derived from the slant range of `slant_range_nm`.
///
/// # Example
/// ```
/// # use lubberline::plain::dme_error_along_nm;
/// assert_eq!(format!("{:.2}", dme_error_along_nm(3.0, 0.2, 36_000.0)?), "0.44");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn dme_error_along_nm(distance_nm: f64, dme_error_nm: f64, height_ft: f64) -> Result<f64, Error> {
    if any_nan(&[distance_nm, dme_error_nm, height_ft]) {
        return Ok(f64::NAN);
    }
    let line = dme_line(
        ("bearing_deg", 0.0),
        ("distance_nm", distance_nm),
        ("dme_error_nm", dme_error_nm),
        ("height_ft", height_ft),
    )?;
    Ok(line.deviation().get::<nautical_mile>())
}

outputs! {
    /// The error of a fix, in standard deviations: what [`fix_of_two_radials`], [`fix_of_radial_and_dme`] and [`fix_of_two_dme`] give.
    FixError {
        /// Standard deviation along the long axis of the error ellipse.
        semi_major_nm,
        /// Standard deviation along its short axis.
        semi_minor_nm,
        /// Direction of the long axis, 0 to 180.
        major_axis_deg,
        /// Standard deviation by north.
        north_nm,
        /// Standard deviation by east.
        east_nm,
        /// Correlation of the errors by north and by east, -1 to 1: with the two deviations the whole covariance.
        correlation,
        /// Standard deviation along the track.
        along_track_nm,
        /// Standard deviation across the track.
        across_track_nm,
        /// Root mean square distance of the fix from the place; twice of it holds 95 to 98 percent.
        root_mean_square_nm,
    }
}

type Named = (&'static str, f64);

fn radial_line(radial: Named, distance: Named, error: Named) -> Result<LineOfPosition<TrueNorth>, Error> {
    Ok(LineOfPosition::radial(
        Bearing::named(radial.0, radial.1)?,
        StationDistance::named(distance.0, distance.1)?,
        AngularError::named(error.0, error.1)?,
    ))
}

fn dme_line(
    bearing: Named,
    distance: Named,
    error: Named,
    height: Named,
) -> Result<LineOfPosition<TrueNorth>, Error> {
    Ok(LineOfPosition::dme(
        Bearing::named(bearing.0, bearing.1)?,
        StationDistance::named(distance.0, distance.1)?,
        HeightAboveStation::named(height.0, height.1)?,
        DistanceError::named(error.0, error.1)?,
    ))
}

fn fix_error(
    first: LineOfPosition<TrueNorth>,
    second: LineOfPosition<TrueNorth>,
    track_deg: f64,
) -> Result<FixError, Error> {
    let track = TrueBearing::named("track_deg", track_deg)?;
    let error = station::fix_error(first, second)?;
    let (along, across) = error.along_and_across(track);
    Ok(FixError {
        semi_major_nm: error.semi_major.get::<nautical_mile>(),
        semi_minor_nm: error.semi_minor.get::<nautical_mile>(),
        major_axis_deg: error.major_axis.angle().get::<degree>(),
        north_nm: error.north.get::<nautical_mile>(),
        east_nm: error.east.get::<nautical_mile>(),
        correlation: error.correlation.get::<ratio>(),
        along_track_nm: along.get::<nautical_mile>(),
        across_track_nm: across.get::<nautical_mile>(),
        root_mean_square_nm: error.root_mean_square().get::<nautical_mile>(),
    })
}

/// The error of a fix from two radials.
///
/// An error across one line moves the fix along the other: the covariance is `(s1^2 p2 p2' + s2^2 p1 p1') / sin^2(crossing angle)`, with `s` the standard
/// deviations across the lines and `p` the unit vectors along them.
///
/// # Arguments
/// - `first_radial_deg`: direction of the first radial at the fix, away from its station, any finite number
/// - `first_distance_nm`: distance from the first station along the ground, above 0 to 5000
/// - `second_radial_deg`: direction of the second radial at the fix, against the same north, any finite number
/// - `second_distance_nm`: distance from the second station along the ground, above 0 to 5000
/// - `first_error_deg`: standard deviation of the first radial, half a published tolerance, 0 to 90
/// - `second_error_deg`: standard deviation of the second radial, 0 to 90
/// - `track_deg`: the track, against the same north, any finite number (default 0.0)
///
/// # Accuracy
/// Rounding error for straight lines; it holds while the errors are small against the distances.
///
/// # Degenerate cases
/// Without error in either line the ellipse is a point. Directions of two stations have to be brought to one north.
///
/// # Errors
/// A value outside its range, or radials that do not cross.
///
/// # Source
/// Derived: the covariance of the solution of two linear equations.
///
/// # Example
/// ```
/// # use lubberline::plain::fix_of_two_radials;
/// assert_eq!(format!("{:.2}", fix_of_two_radials(70.0, 40.0, 340.0, 20.0, 2.25, 2.25, 70.0)?.across_track_nm), "1.57");
/// assert_eq!(format!("{:.2}", fix_of_two_radials(70.0, 40.0, 340.0, 20.0, 2.25, 2.25, 70.0)?.along_track_nm), "0.79");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn fix_of_two_radials(
    first_radial_deg: f64,
    first_distance_nm: f64,
    second_radial_deg: f64,
    second_distance_nm: f64,
    first_error_deg: f64,
    second_error_deg: f64,
    track_deg: f64,
) -> Result<FixError, Error> {
    if any_nan(&[
        first_radial_deg,
        first_distance_nm,
        second_radial_deg,
        second_distance_nm,
        first_error_deg,
        second_error_deg,
        track_deg,
    ]) {
        return Ok(FixError::NAN);
    }
    let first = radial_line(
        ("first_radial_deg", first_radial_deg),
        ("first_distance_nm", first_distance_nm),
        ("first_error_deg", first_error_deg),
    )?;
    let second = radial_line(
        ("second_radial_deg", second_radial_deg),
        ("second_distance_nm", second_distance_nm),
        ("second_error_deg", second_error_deg),
    )?;
    fix_error(first, second, track_deg)
}

/// The error of a fix from a radial and a DME, of one station or of two.
///
/// As `fix_of_two_radials`; the line of the DME runs across the bearing from its station, and its error along the ground is that of `dme_error_along_nm`.
///
/// # Arguments
/// - `radial_deg`: direction of the radial at the fix, away from its station, any finite number
/// - `radial_distance_nm`: distance from the radial's station along the ground, above 0 to 5000
/// - `dme_bearing_deg`: direction from the DME station at the fix, against the same north; the radial, if it is one station
/// - `dme_distance_nm`: distance from the DME station along the ground, above 0 to 5000
/// - `radial_error_deg`: standard deviation of the radial, half a published tolerance, 0 to 90
/// - `dme_error_nm`: standard deviation of the slant range, half a published tolerance, 0 to 1000
/// - `height_ft`: height above the DME station's antenna, -60 000 to 400 000 (default 0.0)
/// - `track_deg`: the track, against the same north, any finite number (default 0.0)
///
/// # Accuracy
/// As `fix_of_two_radials`.
///
/// # Degenerate cases
/// Toward the DME station its error along the ground grows without bound.
///
/// # Errors
/// A value outside its range, or a radial square to the bearing from the DME station, whose line runs along it.
///
/// # Source
/// Derived, as `fix_of_two_radials`.
///
/// # Example
/// ```
/// # use lubberline::plain::fix_of_radial_and_dme;
/// assert_eq!(format!("{:.2}", fix_of_radial_and_dme(70.0, 40.0, 70.0, 40.0, 2.25, 0.1, 31_000.0, 70.0)?.semi_major_nm), "1.57");
/// assert_eq!(format!("{:.0}", fix_of_radial_and_dme(70.0, 40.0, 70.0, 40.0, 2.25, 0.1, 31_000.0, 70.0)?.major_axis_deg), "160");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn fix_of_radial_and_dme(
    radial_deg: f64,
    radial_distance_nm: f64,
    dme_bearing_deg: f64,
    dme_distance_nm: f64,
    radial_error_deg: f64,
    dme_error_nm: f64,
    height_ft: f64,
    track_deg: f64,
) -> Result<FixError, Error> {
    if any_nan(&[
        radial_deg,
        radial_distance_nm,
        dme_bearing_deg,
        dme_distance_nm,
        radial_error_deg,
        dme_error_nm,
        height_ft,
        track_deg,
    ]) {
        return Ok(FixError::NAN);
    }
    let radial = radial_line(
        ("radial_deg", radial_deg),
        ("radial_distance_nm", radial_distance_nm),
        ("radial_error_deg", radial_error_deg),
    )?;
    let dme = dme_line(
        ("dme_bearing_deg", dme_bearing_deg),
        ("dme_distance_nm", dme_distance_nm),
        ("dme_error_nm", dme_error_nm),
        ("height_ft", height_ft),
    )?;
    fix_error(radial, dme, track_deg)
}

/// The error of a fix from two DME.
///
/// As `fix_of_two_radials`, with the lines across the bearings from the stations.
///
/// # Arguments
/// - `first_bearing_deg`: direction from the first station at the fix, any finite number
/// - `first_distance_nm`: distance from the first station along the ground, above 0 to 5000
/// - `second_bearing_deg`: direction from the second station at the fix, against the same north, any finite number
/// - `second_distance_nm`: distance from the second station along the ground, above 0 to 5000
/// - `first_error_nm`: standard deviation of the first slant range, half a published tolerance, 0 to 1000
/// - `second_error_nm`: standard deviation of the second slant range, 0 to 1000
/// - `first_height_ft`: height above the first antenna, -60 000 to 400 000 (default 0.0)
/// - `second_height_ft`: height above the second antenna, -60 000 to 400 000 (default 0.0)
/// - `track_deg`: the track, against the same north, any finite number (default 0.0)
///
/// # Accuracy
/// As `fix_of_two_radials`.
///
/// # Degenerate cases
/// Two DME give two fixes, alike in their error; which one is meant is not asked here.
///
/// # Errors
/// A value outside its range, or stations in line with the fix.
///
/// # Source
/// Derived, as `fix_of_two_radials`.
///
/// # Example
/// ```
/// # use lubberline::plain::fix_of_two_dme;
/// assert_eq!(format!("{:.3}", fix_of_two_dme(70.0, 40.0, 130.0, 55.0, 0.1, 0.1, 0.0, 0.0, 0.0)?.semi_major_nm), "0.141");
/// assert_eq!(format!("{:.0}", fix_of_two_dme(70.0, 40.0, 130.0, 55.0, 0.1, 0.1, 0.0, 0.0, 0.0)?.major_axis_deg), "10");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn fix_of_two_dme(
    first_bearing_deg: f64,
    first_distance_nm: f64,
    second_bearing_deg: f64,
    second_distance_nm: f64,
    first_error_nm: f64,
    second_error_nm: f64,
    first_height_ft: f64,
    second_height_ft: f64,
    track_deg: f64,
) -> Result<FixError, Error> {
    if any_nan(&[
        first_bearing_deg,
        first_distance_nm,
        second_bearing_deg,
        second_distance_nm,
        first_error_nm,
        second_error_nm,
        first_height_ft,
        second_height_ft,
        track_deg,
    ]) {
        return Ok(FixError::NAN);
    }
    let first = dme_line(
        ("first_bearing_deg", first_bearing_deg),
        ("first_distance_nm", first_distance_nm),
        ("first_error_nm", first_error_nm),
        ("first_height_ft", first_height_ft),
    )?;
    let second = dme_line(
        ("second_bearing_deg", second_bearing_deg),
        ("second_distance_nm", second_distance_nm),
        ("second_error_nm", second_error_nm),
        ("second_height_ft", second_height_ft),
    )?;
    fix_error(first, second, track_deg)
}

/// The factor by which an ellipse of one standard deviation grows to hold a share of all fixes.
///
/// `sqrt(-2 ln(1 - p))`.
///
/// # Arguments
/// - `confidence`: the share, above 0 below 1
///
/// # Accuracy
/// Rounding error, for normal errors.
///
/// # Degenerate cases
/// One standard deviation holds 39 percent of the fixes, where along a line it holds 68.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The distribution of the radius of two independent normal errors (Rayleigh); derived.
///
/// # Example
/// ```
/// # use lubberline::plain::ellipse_factor;
/// assert_eq!(format!("{:.3}", ellipse_factor(0.95)?), "2.448");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn ellipse_factor(confidence: f64) -> Result<f64, Error> {
    if any_nan(&[confidence]) {
        return Ok(f64::NAN);
    }
    Ok(station::ellipse_factor(Confidence::named("confidence", confidence)?).get::<ratio>())
}
