//! Plain functions of reception, and of what a receiver shows.

use super::any_nan;
use crate::Error;
use crate::station::{self, HorizonRule, ServiceClass};
use crate::value::units::{foot, nautical_mile};
use crate::value::{GroundDistance, HeightAboveStation, SurfaceHeight};

/// The greatest ground distance at which a station is received over a smooth earth.
///
/// `Re (acos(Re / (Re + h1)) + acos(Re / (Re + h2)))` with `Re` 4/3 of the earth's radius, or a factor times `sqrt(h1) + sqrt(h2)`.
///
/// # Arguments
/// - `aircraft_height_ft`: height of the aircraft above the surface, 0 to 400 000
/// - `antenna_height_ft`: height of the antenna above the surface, 0 to 400 000 (default 0.0)
/// - `rule`: which rule (default "four_thirds")
///
/// # Accuracy
/// Exact for its model; the rules differ by up to 2 percent, the air of the day and terrain by more.
///
/// # Degenerate cases
/// Two heights of zero see no distance.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// 4/3 of the radius: derived, the factor from ITU-R P.310 (from memory). 1.23 sqrt(ft) NM and 4.11 sqrt(m) km: ICAO Doc 8168 Vol II (5th ed. 2006),
/// Part III Section 1 Chapter 3, Appendix. 1.25 sqrt(ft) NM: common practice.
///
/// # Example
/// ```
/// # use lubberline::plain::radio_horizon_nm;
/// # use lubberline::station::HorizonRule;
/// assert_eq!(format!("{:.1}", radio_horizon_nm(31_000.0, 40.0, HorizonRule::FourThirds)?), "224.0");
/// assert_eq!(format!("{:.1}", radio_horizon_nm(10_000.0, 0.0, HorizonRule::FeetMiles)?), "123.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn radio_horizon_nm(
    aircraft_height_ft: f64,
    antenna_height_ft: f64,
    rule: HorizonRule,
) -> Result<f64, Error> {
    if any_nan(&[aircraft_height_ft, antenna_height_ft]) {
        return Ok(f64::NAN);
    }
    let aircraft = SurfaceHeight::named("aircraft_height_ft", aircraft_height_ft)?;
    let antenna = SurfaceHeight::named("antenna_height_ft", antenna_height_ft)?;
    Ok(station::radio_horizon(aircraft, antenna, rule).value().get::<nautical_mile>())
}

/// The least height at which a station is received at a ground distance over a smooth earth: the inverse of `radio_horizon_nm`.
///
/// `Re (sec(d / Re - acos(Re / (Re + h))) - 1)` with `Re` 4/3 of the earth's radius, or the square of `d / factor - sqrt(h)`.
///
/// # Arguments
/// - `ground_distance_nm`: distance along the ground, 0 to 10 900
/// - `antenna_height_ft`: height of the antenna above the surface, 0 to 400 000 (default 0.0)
/// - `rule`: which rule (default "four_thirds")
///
/// # Accuracy
/// As `radio_horizon_nm`.
///
/// # Degenerate cases
/// Within the antenna's own horizon it is zero.
///
/// # Errors
/// A value outside its range, or a distance at which 400 000 ft are not enough.
///
/// # Source
/// As `radio_horizon_nm`.
///
/// # Example
/// ```
/// # use lubberline::plain::least_reception_height_ft;
/// # use lubberline::station::HorizonRule;
/// assert_eq!(format!("{:.0}", least_reception_height_ft(130.0, 0.0, HorizonRule::FourThirds)?), "11198");
/// assert_eq!(format!("{:.0}", least_reception_height_ft(123.0, 0.0, HorizonRule::FeetMiles)?), "10000");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn least_reception_height_ft(
    ground_distance_nm: f64,
    antenna_height_ft: f64,
    rule: HorizonRule,
) -> Result<f64, Error> {
    if any_nan(&[ground_distance_nm, antenna_height_ft]) {
        return Ok(f64::NAN);
    }
    let distance = GroundDistance::named("ground_distance_nm", ground_distance_nm)?;
    let antenna = SurfaceHeight::named("antenna_height_ft", antenna_height_ft)?;
    Ok(station::least_height(distance, antenna, rule)?.value().get::<foot>())
}

/// How far the published service volume of a station's class reaches at a height.
///
/// The farthest of the published layers that hold the height. The classes named `above_ground` are those of older editions, whose heights
/// are counted from the ground at the station; all others count from the transmitter.
///
/// # Arguments
/// - `class`: the class of the station
/// - `height_ft`: height above the station's antenna, -60 000 to 400 000
/// - `antenna_height_ft`: height of the antenna above the ground, 0 to 400 000 (default 0.0)
///
/// # Accuracy
/// As published: a floor belongs to its layer, a ceiling where the text says "including".
///
/// # Degenerate cases
/// Outside every layer the reach is zero. The lower edges below 1 000 ft that some editions print as curves, and the cone above the station
/// (`cone_radius_nm`), are not in it.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// FAA Aeronautical Information Manual 1-1-8, TBL 1-1-1 and TBL 1-1-2 (class DL from memory of that table); for heights above the ground the
/// editions of 2004 and 2016. Below 12 900 ft the DME classes reach to the radio horizon (4/3 of the earth's radius).
///
/// # Example
/// ```
/// # use lubberline::plain::service_reach_nm;
/// # use lubberline::station::ServiceClass;
/// assert_eq!(format!("{:.0}", service_reach_nm(ServiceClass::High, 18_000.0, 0.0)?), "130");
/// assert_eq!(format!("{:.0}", service_reach_nm(ServiceClass::VorLow, 18_000.0, 0.0)?), "0");
/// assert_eq!(format!("{:.1}", service_reach_nm(ServiceClass::DmeLow, 9_000.0, 30.0)?), "123.5");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn service_reach_nm(class: ServiceClass, height_ft: f64, antenna_height_ft: f64) -> Result<f64, Error> {
    if any_nan(&[height_ft, antenna_height_ft]) {
        return Ok(f64::NAN);
    }
    let height = HeightAboveStation::named("height_ft", height_ft)?;
    let antenna = SurfaceHeight::named("antenna_height_ft", antenna_height_ft)?;
    Ok(class.reach(height, antenna).value().get::<nautical_mile>())
}
