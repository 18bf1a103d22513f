//! The straight line between two points at their heights over WGS-84.

use crate::value::units::{Angle, degrees, meter, metres};
use crate::value::{Elevation, Position, SlantRange, TrueAltitude};

/// Semi-major axis of WGS-84 in metres.
///
/// Source: NGA.STND.0036_1.0.0_WGS84; C. F. F. Karney (2013), table 1.
pub(crate) const SEMI_MAJOR_M: f64 = 6_378_137.0;

/// First eccentricity of WGS-84 squared, `f (2 - f)` with the flattening 1/298.257223563.
pub(crate) const ECCENTRICITY_SQUARED: f64 = {
    const FLATTENING: f64 = 1.0 / 298.257_223_563;
    FLATTENING * (2.0 - FLATTENING)
};

/// Sine and cosine of an angle in degrees, exact at the quarter circles.
pub(super) fn sin_cos_deg(degrees: f64) -> (f64, f64) {
    let quarter = (degrees / 90.0).round();
    let (sine, cosine) = (degrees - 90.0 * quarter).to_radians().sin_cos();
    match quarter.rem_euclid(4.0) {
        0.0 => (sine, cosine),
        1.0 => (cosine, -sine),
        2.0 => (-sine, -cosine),
        _ => (-cosine, sine),
    }
}

/// The straight distance from an antenna to an aircraft, and the angle of the aircraft above the antenna's horizontal.
///
/// The difference of the earth-centred coordinates, taken in the antenna's own frame (north, east, up), in a form that keeps its digits
/// for points that are close.
///
/// # Accuracy
/// A micrometre. The geoid is taken for the ellipsoid: its height enters both ends alike.
///
/// # Degenerate cases
/// Coincident points are at distance zero and elevation angle zero. On one vertical the distance is the difference of the heights, and the
/// angle 90 degrees exactly, up or down.
///
/// # Source
/// Earth-centred coordinates of WGS-84: NGA.STND.0036_1.0.0_WGS84 (from memory).
///
/// # Example
/// ```
/// use lubberline::earth::straight_line;
/// use lubberline::value::{Elevation, Latitude, Longitude, Position, TrueAltitude, units::*};
/// let at = |latitude, longitude| -> Result<Position, lubberline::Error> {
///     Ok(Position::new(Latitude::new(degrees(latitude))?, Longitude::new(degrees(longitude))?))
/// };
/// let (dme, above) = straight_line(at(60.0, -10.0)?, Elevation::new(feet(0.0))?, at(60.5, -10.0)?, TrueAltitude::new(feet(35_000.0))?);
/// assert_eq!(format!("{:.2}", dme.value().get::<nautical_mile>()), "30.65");
/// assert!(above > degrees(10.0));
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn straight_line(
    antenna: Position,
    elevation: Elevation,
    aircraft: Position,
    altitude: TrueAltitude,
) -> (SlantRange, Angle) {
    let (sine_1, cosine_1) = sin_cos_deg(antenna.latitude_deg());
    let (sine_2, cosine_2) = sin_cos_deg(aircraft.latitude_deg());
    let sine_l = sin_cos_deg(aircraft.longitude_deg() - antenna.longitude_deg()).0;
    let (height_1_m, height_2_m) = (elevation.value().get::<meter>(), altitude.value().get::<meter>());
    let normal = |sine: f64| SEMI_MAJOR_M / (1.0 - ECCENTRICITY_SQUARED * sine * sine).sqrt();
    let (normal_1_m, normal_2_m) = (normal(sine_1), normal(sine_2));

    // Distance from the axis and height above the equator's plane; the antenna's meridian is the first.
    let (axis_1_m, axis_2_m) = ((normal_1_m + height_1_m) * cosine_1, (normal_2_m + height_2_m) * cosine_2);
    let pole =
        |normal_m: f64, height_m: f64, sine: f64| (normal_m * (1.0 - ECCENTRICITY_SQUARED) + height_m) * sine;
    // One less a cosine, without the cancellation of a small difference of longitude.
    let half_l = sin_cos_deg((aircraft.longitude_deg() - antenna.longitude_deg()) / 2.0).0;
    let outward_m = axis_2_m - axis_1_m - 2.0 * axis_2_m * half_l * half_l;
    let east_m = axis_2_m * sine_l;
    let poleward_m = pole(normal_2_m, height_2_m, sine_2) - pole(normal_1_m, height_1_m, sine_1);

    let north_m = poleward_m * cosine_1 - outward_m * sine_1;
    let up_m = poleward_m * sine_1 + outward_m * cosine_1;
    // On one vertical nothing but the heights counts, and rounding leaves nothing to the side.
    let on_one_vertical = antenna.latitude_deg() == aircraft.latitude_deg() && half_l == 0.0;
    let (level_m, up_m) =
        if on_one_vertical { (0.0, height_2_m - height_1_m) } else { (north_m.hypot(east_m), up_m) };
    (SlantRange::derived(metres(level_m.hypot(up_m))), degrees(up_m.atan2(level_m).to_degrees()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{degree, feet};

    fn line(from: (f64, f64, f64), to: (f64, f64, f64)) -> (f64, f64) {
        let position = |latitude, longitude| Position::derived(latitude, longitude);
        let (range, angle) = straight_line(
            position(from.0, from.1),
            Elevation::new(feet(from.2)).unwrap(),
            position(to.0, to.1),
            TrueAltitude::new(feet(to.2)).unwrap(),
        );
        (range.value().get::<meter>(), angle.get::<degree>())
    }

    #[test]
    fn overhead_is_straight_up() {
        for (latitude, longitude) in [(48.3, 171.0), (61.0, -12.0), (-0.1, -180.0), (90.0, 5.0), (-77.7, 0.3)]
        {
            let (range_m, angle_deg) = line((latitude, longitude, 1000.0), (latitude, longitude, 31_000.0));
            assert!((range_m - 30_000.0 * 0.3048).abs() < 1e-9, "{range_m}");
            assert_eq!(angle_deg, 90.0, "{latitude}");
            assert_eq!(line((latitude, longitude, 1000.0), (latitude, longitude, -200.0)).1, -90.0);
            assert_eq!(line((latitude, longitude, 1000.0), (latitude, longitude, 1000.0)), (0.0, 0.0));
        }
        assert_eq!(line((90.0, 5.0, 0.0), (90.0, 100.0, 9000.0)).1, 90.0);
    }

    /// The axes of WGS-84: half the distance from pole to pole is the semi-minor axis, 6 356 752.314 245 m.
    #[test]
    fn the_poles_are_two_semi_minor_axes_apart() {
        let (range_m, _) = line((90.0, 0.0, 0.0), (-90.0, 77.0, 0.0));
        assert!((range_m / 2.0 - 6_356_752.314_245).abs() < 1e-6, "{range_m}");
        let (range_m, _) = line((0.0, -179.0, 0.0), (0.0, 1.0, 0.0));
        assert!((range_m / 2.0 - 6_378_137.0).abs() < 1e-8, "{range_m}");
    }

    #[test]
    fn the_horizon_lies_below_the_horizontal() {
        let (_, angle_deg) = line((10.0, 20.0, 0.0), (10.0, 21.0, 0.0));
        assert!((angle_deg + 0.49).abs() < 0.01, "{angle_deg}");
    }
}
