//! Plain functions of the accuracy of radials, DME and fixes.

use super::{any_nan, outputs};
use crate::Error;
use crate::station::{
    self, Containment, DmeAccuracy, DmeCoverage, LineOfPosition, RadialAccuracy, RadialErrors, ReceiverCheck,
};
use crate::value::units::{degree, nautical_mile, ratio};
use crate::value::{
    AngularError, Bearing, Confidence, DistanceError, HeightAboveStation, RouteDistance, SlantRange,
    StationDistance, TrueBearing, TrueNorth,
};

/// The published tolerance of a radial or a bearing, by its source.
///
/// The root of the sum of squares of its parts: VOR 3.5 degrees ground, 2.7 receiver, 1.0 monitor and 3.5 (en route) or 2.5 (terminal) flight technical;
/// NDB 3 degrees ground and 5.4 receiver.
///
/// # Arguments
/// - `accuracy`: which figure
///
/// # Accuracy
/// Not rounded, where the sources print 5.7, 5.2, 4.5 and 6.2 degrees.
///
/// # Degenerate cases
/// None. A tolerance is two standard deviations.
///
/// # Errors
/// A choice that is none of its alternatives.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Part II Section 3 Chapter 1, 1.4.3.2 and Appendix B 2.2, and Part I Section 2 Chapter 2, Table I-2-2-1 (from memory);
/// FAA Aeronautical Information Manual 1-1-3, edition not shown in the copy read.
///
/// # Example
/// ```
/// # use lubberline::plain::radial_tolerance_deg;
/// # use lubberline::station::RadialAccuracy;
/// assert_eq!(format!("{:.2}", radial_tolerance_deg(RadialAccuracy::VorIntersecting)?), "4.53");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn radial_tolerance_deg(accuracy: RadialAccuracy) -> Result<f64, Error> {
    Ok(accuracy.tolerance().value().get::<degree>())
}

outputs! {
    /// How the parts of a radial's error combine: what [`radial_error`] gives.
    RadialError {
        /// Where the radial is: ground, receiver and monitor.
        aggregate_deg,
        /// Where an aircraft flying along it is: the aggregate and the flight technical part.
        system_use_deg,
    }
}

/// How the independent parts of a radial's error combine.
///
/// `sqrt(Eg^2 + Ea^2 + Em^2)` for the radial, and with `Ep^2` for the aircraft that flies along it.
///
/// # Arguments
/// - `ground_deg`: error of the signal, 0 to 90
/// - `receiver_deg`: error of the airborne receiver, 0 to 90
/// - `flight_technical_deg`: error of flying by the needle, 0 to 90 (default 0.0)
/// - `monitor_deg`: error that the monitor lets pass, 0 to 90 (default 0.0)
///
/// # Accuracy
/// Rounding error.
///
/// # Degenerate cases
/// Tolerances give a tolerance, standard deviations a standard deviation.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Annex 10 Vol I, Attachment C, 3.7.3.2; ICAO Doc 8168 Vol II (5th ed. 2006), Part II Section 3 Chapter 1, Appendix B, adds the monitor.
///
/// # Example
/// ```
/// # use lubberline::plain::radial_error;
/// assert_eq!(format!("{:.2}", radial_error(3.5, 2.7, 3.5, 1.0)?.system_use_deg), "5.73");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn radial_error(
    ground_deg: f64,
    receiver_deg: f64,
    flight_technical_deg: f64,
    monitor_deg: f64,
) -> Result<RadialError, Error> {
    if any_nan(&[ground_deg, receiver_deg, flight_technical_deg, monitor_deg]) {
        return Ok(RadialError::NAN);
    }
    let errors = RadialErrors {
        ground: AngularError::named("ground_deg", ground_deg)?,
        receiver: AngularError::named("receiver_deg", receiver_deg)?,
        flight_technical: AngularError::named("flight_technical_deg", flight_technical_deg)?,
        monitor: AngularError::named("monitor_deg", monitor_deg)?,
    };
    Ok(RadialError {
        aggregate_deg: errors.aggregate().get::<degree>(),
        system_use_deg: errors.system_use().get::<degree>(),
    })
}

/// The published tolerance of a DME at a slant range, by its source.
///
/// `0.25 + 0.0125 d` (`pans_ops`), 0.2 (`annex_10`), the greater of 0.5 and `0.03 d` (`aim`), `sqrt(0.1^2 + 0.17^2)` (`since_1989`), in nautical miles.
///
/// # Arguments
/// - `dme_nm`: slant range, 0 to 10 900
/// - `accuracy`: which figure
///
/// # Accuracy
/// As published.
///
/// # Degenerate cases
/// None. A tolerance is two standard deviations.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 2 Chapter 2, 2.4.2; ICAO Annex 10 Vol I, 3.5.3.1.3.3; FAA Aeronautical Information Manual 1-1-7, edition not shown in the copy read; ICAO
/// Doc 8168 Vol II, Part III Section 1 Chapter 3, Appendix 3, 2.1.
///
/// # Example
/// ```
/// # use lubberline::plain::dme_tolerance_nm;
/// # use lubberline::station::DmeAccuracy;
/// assert_eq!(format!("{:.2}", dme_tolerance_nm(40.0, DmeAccuracy::PansOps)?), "0.75");
/// assert_eq!(format!("{:.2}", dme_tolerance_nm(40.0, DmeAccuracy::Aim)?), "1.20");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn dme_tolerance_nm(dme_nm: f64, accuracy: DmeAccuracy) -> Result<f64, Error> {
    if any_nan(&[dme_nm]) {
        return Ok(f64::NAN);
    }
    Ok(accuracy.tolerance(SlantRange::named("dme_nm", dme_nm)?).value().get::<nautical_mile>())
}

/// The greatest error with which a VOR receiver passes a check within the preceding 30 days.
///
/// 4 degrees for a test signal, a checkpoint on the ground and between two receivers; 6 degrees in the air.
///
/// # Arguments
/// - `check`: which check
///
/// # Accuracy
/// As published.
///
/// # Degenerate cases
/// None.
///
/// # Errors
/// A choice that is none of its alternatives.
///
/// # Source
/// 14 CFR 91.171 (b) and (c).
///
/// # Example
/// ```
/// # use lubberline::plain::receiver_check_limit_deg;
/// # use lubberline::station::ReceiverCheck;
/// assert_eq!(format!("{:.0}", receiver_check_limit_deg(ReceiverCheck::AirborneCheckpoint)?), "6");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn receiver_check_limit_deg(check: ReceiverCheck) -> Result<f64, Error> {
    Ok(check.limit().get::<degree>())
}

outputs! {
    /// Tolerances of area navigation by DME: what [`dme_dme_tolerances`] gives.
    DmeDmeTolerances {
        /// Along the track.
        along_track_nm,
        /// Across the track.
        across_track_nm,
        /// Half the width of the area.
        half_width_nm,
    }
}

/// Tolerances of area navigation by DME/DME, for procedure design.
///
/// Along `sqrt((k d)^2 + st^2)`, across `sqrt((k d)^2 + ftt^2 + st^2)`, half-width `1.5 across + bv`, with `k` 1.29 for two stations and 1 for more.
///
/// # Arguments
/// - `dme_tolerance_nm`: tolerance of one DME, as `dme_tolerance_nm` gives it, 0 to 1000
/// - `flight_technical_nm`: flight technical tolerance, 0 to 1000
/// - `buffer_nm`: buffer value, 0 to 1000
/// - `coverage`: from how many stations the position is taken (default "two_stations")
/// - `system_nm`: system computation tolerance, 0 to 1000 (default 0.25)
///
/// # Accuracy
/// Not rounded between steps, where the printed examples are.
///
/// # Degenerate cases
/// None.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 1 Chapter 3, Appendices 1 and 3; the factor of 1 is inferred from the examples.
///
/// # Example
/// ```
/// # use lubberline::plain::dme_dme_tolerances;
/// # use lubberline::station::DmeCoverage;
/// assert_eq!(format!("{:.2}", dme_dme_tolerances(1.34, 1.0, 1.0, DmeCoverage::TwoStations, 0.25)?.half_width_nm), "4.02");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn dme_dme_tolerances(
    dme_tolerance_nm: f64,
    flight_technical_nm: f64,
    buffer_nm: f64,
    coverage: DmeCoverage,
    system_nm: f64,
) -> Result<DmeDmeTolerances, Error> {
    if any_nan(&[dme_tolerance_nm, flight_technical_nm, buffer_nm, system_nm]) {
        return Ok(DmeDmeTolerances::NAN);
    }
    let tolerances = station::dme_dme_tolerances(
        DistanceError::named("dme_tolerance_nm", dme_tolerance_nm)?,
        coverage,
        DistanceError::named("system_nm", system_nm)?,
        DistanceError::named("flight_technical_nm", flight_technical_nm)?,
        DistanceError::named("buffer_nm", buffer_nm)?,
    );
    Ok(DmeDmeTolerances {
        along_track_nm: tolerances.along_track.get::<nautical_mile>(),
        across_track_nm: tolerances.across_track.get::<nautical_mile>(),
        half_width_nm: tolerances.half_width.get::<nautical_mile>(),
    })
}

/// Distance along the course at which an angle has grown to a width: where a protected area begins to splay.
///
/// `width / tan(angle)`.
///
/// # Arguments
/// - `half_width_nm`: half the width of the area, 0 to 1000
/// - `angle_deg`: the angle, 0 to 90
///
/// # Accuracy
/// Over a flat earth.
///
/// # Degenerate cases
/// Without an angle it is infinite; without either it is NaN.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Part II Section 3 Chapter 1, 1.4.2.3: 5 NM and 5.7 degrees for VOR, beyond 49.8 NM.
///
/// # Example
/// ```
/// # use lubberline::plain::splay_distance_nm;
/// assert_eq!(format!("{:.1}", splay_distance_nm(4.0, 4.5)?), "50.8");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn splay_distance_nm(half_width_nm: f64, angle_deg: f64) -> Result<f64, Error> {
    if any_nan(&[half_width_nm, angle_deg]) {
        return Ok(f64::NAN);
    }
    let half_width = DistanceError::named("half_width_nm", half_width_nm)?;
    let angle = AngularError::named("angle_deg", angle_deg)?;
    Ok(station::splay_distance(half_width, angle).get::<nautical_mile>())
}

/// Half the width of the airspace that contains the traffic of a VOR route.
///
/// Constant to 25 NM from the VOR, then growing linearly to 75 NM: for 95 percent from 4 to 6 NM.
///
/// # Arguments
/// - `distance_nm`: distance from the VOR along the route, 0 to 75
/// - `containment`: the share of the flying time that is contained (default "percent_95")
///
/// # Accuracy
/// As published.
///
/// # Degenerate cases
/// None in the range; beyond 75 NM nothing is published.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Annex 11 (13th ed.), Attachment A, 3.3 and 3.4.
///
/// # Example
/// ```
/// # use lubberline::plain::route_half_width_nm;
/// # use lubberline::station::Containment;
/// assert_eq!(format!("{:.1}", route_half_width_nm(50.0, Containment::Percent95)?), "5.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn route_half_width_nm(distance_nm: f64, containment: Containment) -> Result<f64, Error> {
    if any_nan(&[distance_nm]) {
        return Ok(f64::NAN);
    }
    let distance = RouteDistance::named("distance_nm", distance_nm)?;
    Ok(station::route_half_width(distance, containment).get::<nautical_mile>())
}

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
