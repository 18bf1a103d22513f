//! Plain functions of [`crate::timing`].

use super::earth::position;
use super::{any_nan, outputs};
use crate::Error;
use crate::timing;
use crate::value::units::{knot, nautical_mile, second};
use crate::value::{
    AngleOffBow, BearingDrift, ElapsedTime, GroundDistance, Groundspeed, GroundspeedMadeGood,
};

/// The time that a distance takes at a groundspeed.
///
/// `d/V`.
///
/// # Arguments
/// - `distance_nm`: distance along the surface, 0 to 10 900
/// - `groundspeed_kt`: groundspeed, above 0 to 10 000
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// No distance takes no time.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The definition of speed.
///
/// # Example
/// ```
/// # use lubberline::plain::time_to_fly_s;
/// assert_eq!(format!("{:.1}", time_to_fly_s(55.0, 220.0)?), "900.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn time_to_fly_s(distance_nm: f64, groundspeed_kt: f64) -> Result<f64, Error> {
    if any_nan(&[distance_nm, groundspeed_kt]) {
        return Ok(f64::NAN);
    }
    let distance = GroundDistance::named("distance_nm", distance_nm)?;
    let groundspeed = GroundspeedMadeGood::named("groundspeed_kt", groundspeed_kt)?;
    Ok(timing::time_to_fly(distance, groundspeed).get::<second>())
}

/// The distance flown in a time at a groundspeed.
///
/// `V t`.
///
/// # Arguments
/// - `groundspeed_kt`: groundspeed, 0 to 10 000
/// - `elapsed_s`: time flown, above 0 to 1 000 000
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range, or a distance above 10 900 NM.
///
/// # Source
/// The definition of speed.
///
/// # Example
/// ```
/// # use lubberline::plain::distance_flown_nm;
/// assert_eq!(format!("{:.1}", distance_flown_nm(220.0, 900.0)?), "55.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn distance_flown_nm(groundspeed_kt: f64, elapsed_s: f64) -> Result<f64, Error> {
    if any_nan(&[groundspeed_kt, elapsed_s]) {
        return Ok(f64::NAN);
    }
    let groundspeed = Groundspeed::named("groundspeed_kt", groundspeed_kt)?;
    let elapsed = ElapsedTime::named("elapsed_s", elapsed_s)?;
    Ok(timing::distance_flown(groundspeed, elapsed)?.value().get::<nautical_mile>())
}

/// The groundspeed that a distance flown in a time tells.
///
/// `d/t`.
///
/// # Arguments
/// - `distance_nm`: distance along the surface, 0 to 10 900
/// - `elapsed_s`: time flown, above 0 to 1 000 000
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// No distance is no speed.
///
/// # Errors
/// A value outside its range, or a groundspeed above 10 000 kt.
///
/// # Source
/// The definition of speed.
///
/// # Example
/// ```
/// # use lubberline::plain::groundspeed_from_time_kt;
/// assert_eq!(format!("{:.1}", groundspeed_from_time_kt(55.0, 900.0)?), "220.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn groundspeed_from_time_kt(distance_nm: f64, elapsed_s: f64) -> Result<f64, Error> {
    if any_nan(&[distance_nm, elapsed_s]) {
        return Ok(f64::NAN);
    }
    let distance = GroundDistance::named("distance_nm", distance_nm)?;
    let elapsed = ElapsedTime::named("elapsed_s", elapsed_s)?;
    Ok(timing::groundspeed_over(distance, elapsed)?.value().get::<knot>())
}

/// The time between two fixes at a groundspeed, along the geodesic of the WGS-84 ellipsoid.
///
/// The distance of `geodesic_inverse` over the groundspeed.
///
/// # Arguments
/// - `lat1_deg`: latitude of the first fix, -90 to 90
/// - `lon1_deg`: longitude of the first fix, any finite number
/// - `lat2_deg`: latitude of the second fix, -90 to 90
/// - `lon2_deg`: longitude of the second fix, any finite number
/// - `groundspeed_kt`: groundspeed, above 0 to 10 000
///
/// # Accuracy
/// 15 nanometres of distance.
///
/// # Degenerate cases
/// Coincident fixes take no time.
///
/// # Errors
/// A latitude beyond a pole, an infinite number, or a groundspeed outside its range.
///
/// # Source
/// C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013) 43-55, doi
/// 10.1007/s00190-012-0578-z.
///
/// # Example
/// ```
/// # use lubberline::plain::time_between_fixes_s;
/// assert_eq!(format!("{:.1}", time_between_fixes_s(51.0, 0.0, 52.0, 1.0, 420.0)?), "607.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn time_between_fixes_s(
    lat1_deg: f64,
    lon1_deg: f64,
    lat2_deg: f64,
    lon2_deg: f64,
    groundspeed_kt: f64,
) -> Result<f64, Error> {
    if any_nan(&[lat1_deg, lon1_deg, lat2_deg, lon2_deg, groundspeed_kt]) {
        return Ok(f64::NAN);
    }
    let from = position("lat1_deg", lat1_deg, "lon1_deg", lon1_deg)?;
    let to = position("lat2_deg", lat2_deg, "lon2_deg", lon2_deg)?;
    let groundspeed = GroundspeedMadeGood::named("groundspeed_kt", groundspeed_kt)?;
    Ok(timing::time_between_fixes(from, to, groundspeed).get::<second>())
}

outputs! {
    /// Where a station is: what [`station_by_bearing_change`] gives.
    StationByBearingChange {
        /// Distance to the station at the second bearing.
        distance_nm,
        /// Time to the station from there, at the same groundspeed.
        time_s,
        /// Distance to the station at the first bearing.
        distance_before_nm,
    }
}

/// The distance and time to a station from the change of its bearing while a straight track is flown: exact.
///
/// With the angle off the bow `b` at the first bearing and the change `c`: `V t sin(b)/sin(c)` at the second
/// bearing and `V t sin(b + c)/sin(c)` at the first. Where the angle off the bow doubles, the time to the
/// station is the time flown. The rule is [`time_to_station_rule_s`].
///
/// # Arguments
/// - `elapsed_s`: time flown, above 0 to 1 000 000
/// - `bearing_change_deg`: change of the bearing, without its side, above 0 below 180
/// - `groundspeed_kt`: groundspeed, above 0 to 10 000
/// - `angle_off_bow_deg`: between the track and the first bearing, without its side, above 0 below 180 (default
///   90.0)
///
/// # Accuracy
/// Rounding on a plane. The bearings govern: with a change of 10 degrees, half a degree of error is 5 percent.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range, two angles that sum to 180 degrees or more, or a distance above 10 900 NM.
///
/// # Source
/// The law of sines.
///
/// # Example
/// ```
/// # use lubberline::plain::station_by_bearing_change;
/// assert_eq!(format!("{:.2}", station_by_bearing_change(75.0, 10.0, 120.0, 90.0)?.distance_nm), "14.40");
/// assert_eq!(format!("{:.1}", station_by_bearing_change(75.0, 10.0, 120.0, 90.0)?.time_s), "431.9");
/// assert_eq!(format!("{:.2}", station_by_bearing_change(75.0, 10.0, 120.0, 90.0)?.distance_before_nm), "14.18");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn station_by_bearing_change(
    elapsed_s: f64,
    bearing_change_deg: f64,
    groundspeed_kt: f64,
    angle_off_bow_deg: f64,
) -> Result<StationByBearingChange, Error> {
    if any_nan(&[elapsed_s, bearing_change_deg, groundspeed_kt, angle_off_bow_deg]) {
        return Ok(StationByBearingChange::NAN);
    }
    let station = timing::station_by_bearing_change(
        ElapsedTime::named("elapsed_s", elapsed_s)?,
        BearingDrift::named("bearing_change_deg", bearing_change_deg)?,
        AngleOffBow::named("angle_off_bow_deg", angle_off_bow_deg)?,
        GroundspeedMadeGood::named("groundspeed_kt", groundspeed_kt)?,
    )?;
    Ok(StationByBearingChange {
        distance_nm: station.distance.value().get::<nautical_mile>(),
        time_s: station.time.get::<second>(),
        distance_before_nm: station.distance_before.value().get::<nautical_mile>(),
    })
}

/// The time to a station abeam by the rule: minutes are seconds flown over degrees of change.
///
/// `60 t/c` with the change `c` in degrees. [`station_by_bearing_change`] is exact.
///
/// # Arguments
/// - `elapsed_s`: time flown, above 0 to 1 000 000
/// - `bearing_change_deg`: change of the bearing, without its side, above 0 below 180
///
/// # Accuracy
/// Too long by 4.6 percent at 5 degrees of change, 4.2 at 10 and 2.6 at 20; right at 30.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// FAA-H-8083-15, Instrument Flying Handbook, time and distance check, read in a quotation.
///
/// # Example
/// ```
/// # use lubberline::plain::time_to_station_rule_s;
/// assert_eq!(format!("{:.1}", time_to_station_rule_s(75.0, 10.0)?), "450.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn time_to_station_rule_s(elapsed_s: f64, bearing_change_deg: f64) -> Result<f64, Error> {
    if any_nan(&[elapsed_s, bearing_change_deg]) {
        return Ok(f64::NAN);
    }
    let elapsed = ElapsedTime::named("elapsed_s", elapsed_s)?;
    let change = BearingDrift::named("bearing_change_deg", bearing_change_deg)?;
    Ok(timing::time_to_station_by_rule(elapsed, change).get::<second>())
}
