//! How wide a route is about its radial, in plain numbers.

use super::any_nan;
use crate::Error;
use crate::station::{self, Containment};
use crate::value::units::nautical_mile;
use crate::value::{AngularError, DistanceError, RouteDistance};

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
