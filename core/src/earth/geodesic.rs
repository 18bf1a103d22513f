//! The two problems of the geodesic on WGS-84: between two points, and from a point along a bearing.

use std::sync::OnceLock;

use geographiclib_rs::{DirectGeodesic, Geodesic, InverseGeodesic};

use crate::value::units::{meter, metres};
use crate::value::{GroundDistance, Position, TrueBearing};

/// The shortest line between two points.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GeodesicLine {
    /// Its length along the surface.
    pub distance: GroundDistance,
    /// Its direction where it starts; none between coincident points, where every direction serves.
    pub initial_bearing: Option<TrueBearing>,
    /// Its direction where it ends, onward; none between coincident points.
    pub final_bearing: Option<TrueBearing>,
}

/// WGS-84 with the coefficients of its series, computed once.
pub(super) fn wgs84() -> &'static Geodesic {
    static WGS84: OnceLock<Geodesic> = OnceLock::new();
    WGS84.get_or_init(Geodesic::wgs84)
}

/// The shortest line between two points on WGS-84.
///
/// # Accuracy
/// 15 nanometres, for any two points.
///
/// # Degenerate cases
/// Coincident points have no bearing. Between antipodal points several shortest lines exist; one is given.
///
/// # Source
/// C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013) 43-55, doi 10.1007/s00190-012-0578-z,
/// as implemented in GeographicLib.
///
/// # Example
/// ```
/// use lubberline::earth::inverse;
/// use lubberline::value::{Latitude, Longitude, Position, units::*};
/// let at = |latitude, longitude| -> Result<Position, lubberline::Error> {
///     Ok(Position::new(Latitude::new(degrees(latitude))?, Longitude::new(degrees(longitude))?))
/// };
/// // One minute of arc along the equator is 1855.3 m.
/// let line = inverse(at(0.0, 0.0)?, at(0.0, 1.0 / 60.0)?);
/// assert!((line.distance.value() - metres(1855.3)).abs() < metres(0.1));
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn inverse(from: Position, to: Position) -> GeodesicLine {
    let (distance_m, initial_deg, final_deg, _arc_deg): (f64, f64, f64, f64) =
        wgs84().inverse(from.latitude_deg(), from.longitude_deg(), to.latitude_deg(), to.longitude_deg());
    // A place that is none has a distance and bearings that are none.
    let bearing = |degrees| (distance_m != 0.0).then(|| TrueBearing::from_degrees(degrees));
    GeodesicLine {
        distance: GroundDistance::derived(metres(distance_m)),
        initial_bearing: bearing(initial_deg),
        final_bearing: bearing(final_deg),
    }
}

/// The point reached along a geodesic of WGS-84, and the direction of the line there.
///
/// # Accuracy
/// 15 nanometres.
///
/// # Degenerate cases
/// From a pole the bearing is taken against the meridian of the longitude given there.
///
/// # Source
/// As [`inverse`].
///
/// # Example
/// ```
/// use lubberline::earth::direct;
/// use lubberline::value::{GroundDistance, Latitude, Longitude, Position, TrueBearing, units::*};
/// let at = |latitude, longitude| -> Result<Position, lubberline::Error> {
///     Ok(Position::new(Latitude::new(degrees(latitude))?, Longitude::new(degrees(longitude))?))
/// };
/// let (there, onward) = direct(at(60.0, -10.0)?, TrueBearing::new(degrees(90.0))?, GroundDistance::new(nautical_miles(60.0))?);
/// // A geodesic that sets out eastward in the north bends to the south.
/// assert_eq!(format!("{:.2}", onward.angle().get::<degree>()), "91.72");
/// assert!(there.latitude().angle() < degrees(60.0));
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn direct(from: Position, bearing: TrueBearing, distance: GroundDistance) -> (Position, TrueBearing) {
    let (latitude_deg, longitude_deg, final_deg): (f64, f64, f64) = wgs84().direct(
        from.latitude_deg(),
        from.longitude_deg(),
        bearing.degrees(),
        distance.value().get::<meter>(),
    );
    (Position::derived(latitude_deg, longitude_deg), TrueBearing::from_degrees(final_deg))
}
