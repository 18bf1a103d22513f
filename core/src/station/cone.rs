//! The cone of confusion above a station, in which its signal cannot be used.

use crate::value::units::{Length, meter, metres, radian};
use crate::value::{ConeHalfAngle, GroundDistance, HeightAboveStation};

/// Half-angle of the cone over a VOR, from the vertical, in degrees.
///
/// Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 2, 2.5.1: 50 degrees, or less where flight tests show it.
pub const VOR_CONE_HALF_ANGLE_DEG: f64 = 50.0;

/// Half-angle of the cone over an NDB, from the vertical, in degrees.
///
/// Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 2, 2.5.2.
pub const NDB_CONE_HALF_ANGLE_DEG: f64 = 40.0;

/// Radius of the cone at a height above the station, `h tan(half-angle)`.
///
/// # Accuracy
/// Over a flat earth: the curve of the earth makes it 0.3 percent less at 35 000 ft and 0.5 percent at 60 000 ft, nearer than any cone is
/// known.
///
/// # Degenerate cases
/// At the station's height and below it there is no cone: the radius is zero.
///
/// # Source
/// The definition of the half-angle, at the constants above.
///
/// # Example
/// ```
/// use lubberline::station::cone_radius;
/// use lubberline::value::{ConeHalfAngle, HeightAboveStation, units::*};
/// assert_eq!(format!("{:.1}", cone_radius(HeightAboveStation::new(feet(30_000.0))?, ConeHalfAngle::new(degrees(50.0))?).value().get::<nautical_mile>()), "5.9");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cone_radius(height: HeightAboveStation, half_angle: ConeHalfAngle) -> GroundDistance {
    let height: Length = height.value();
    let radius_m = height.get::<meter>().max(0.0) * half_angle.value().get::<radian>().tan();
    // A half-angle next to a right angle would reach past the earth.
    GroundDistance::derived(metres(radius_m.min(std::f64::consts::PI * crate::earth::MEAN_RADIUS_M)))
}
