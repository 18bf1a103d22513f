//! The straight line between an antenna and an aircraft over a curved earth, by distance and height alone.

use crate::Error;
use crate::value::units::{Length, meter, metres, nautical_mile};
use crate::value::{GroundDistance, HeightAboveStation, SlantRange};

/// Mean radius of WGS-84, (2a + b)/3, in metres: the sphere on which distance and height alone are related.
///
/// Source: International Union of Geodesy and Geophysics, Geodetic Reference System 1980 (mean radius R1),
/// with the axes of WGS-84.
pub const MEAN_RADIUS_M: f64 = 6_371_008.771_415;

/// What the digits of earth-centred coordinates leave of a range, in metres.
const COORDINATES_M: f64 = 1e-6;

/// Slant range from ground distance and height above the station, over a sphere of the mean radius.
///
/// `sqrt(h² + 4 R (R + h) sin²(d / 2R))`, the straight line; never the sum of distance and height.
///
/// # Accuracy
/// Exact on the sphere. The radius of curvature of WGS-84 differs from the mean by up to 0.6 percent with place
/// and direction, which moves the answer by up to 1.1 m to 100 NM and 45 000 ft; [`crate::station::Station::observe`]
/// uses the ellipsoid.
///
/// # Degenerate cases
/// Overhead the answer is the height. A height below the station counts the same way.
///
/// # Source
/// The law of cosines between the radii `R` and `R + h`, in half angles.
///
/// # Example
/// ```
/// use lubberline::earth::slant_range;
/// use lubberline::value::{GroundDistance, HeightAboveStation, units::*};
/// // Not 5.4 and the 5.4 of the height together.
/// assert_eq!(format!("{:.1}", slant_range(GroundDistance::new(nautical_miles(5.4))?, HeightAboveStation::new(feet(33_000.0))?).value().get::<nautical_mile>()), "7.7");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn slant_range(ground: GroundDistance, height: HeightAboveStation) -> SlantRange {
    let height_m = height.value().get::<meter>();
    let half_angle_rad = ground.value().get::<meter>() / (2.0 * MEAN_RADIUS_M);
    let across_m2 = 4.0 * MEAN_RADIUS_M * (MEAN_RADIUS_M + height_m) * half_angle_rad.sin().powi(2);
    SlantRange::derived(metres((height_m * height_m + across_m2).sqrt()))
}

/// Ground distance from slant range and height above the station: the inverse of [`slant_range`].
///
/// # Errors
/// [`Error::SlantRangeBelowHeight`] if the range is shorter than the height, or longer than to the far side of the earth.
///
/// # Degenerate cases
/// Close to overhead a small change of range is a large change of distance: at twice the height the ratio is
/// 1.15, at 1.01 times the height it is 7.
///
/// # Example
/// ```
/// use lubberline::earth::ground_distance;
/// use lubberline::value::{HeightAboveStation, SlantRange, units::*};
/// assert_eq!(format!("{:.2}", ground_distance(SlantRange::new(nautical_miles(7.7))?, HeightAboveStation::new(feet(33_000.0))?)?.value().get::<nautical_mile>()), "5.45");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn ground_distance(slant: SlantRange, height: HeightAboveStation) -> Result<GroundDistance, Error> {
    let slant_m = slant.value().get::<meter>();
    let height_m = height.value().get::<meter>();
    // A range a hair shorter than the height is that of an aircraft overhead, from coordinates.
    let reached_m =
        if height_m.abs() - slant_m < COORDINATES_M { slant_m.max(height_m.abs()) } else { slant_m };
    let across_m2 = reached_m * reached_m - height_m * height_m;
    let sine = (across_m2.max(0.0) / (4.0 * MEAN_RADIUS_M * (MEAN_RADIUS_M + height_m))).sqrt();
    // Beyond a sine of one the range is longer than to the far side of the earth.
    if across_m2 < 0.0 || sine > 1.0 {
        let height: Length = height.value();
        return Err(Error::SlantRangeBelowHeight {
            slant_range_nm: slant.value().get::<nautical_mile>(),
            height_nm: height.get::<nautical_mile>().abs(),
        });
    }
    Ok(GroundDistance::derived(metres(2.0 * MEAN_RADIUS_M * sine.asin())))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{feet, nautical_miles};

    /// Overhead the straight line between two points may come out a hair shorter than the height.
    #[test]
    fn a_range_that_rounding_left_below_the_height_is_overhead() {
        let height = HeightAboveStation::new(feet(30_000.0)).unwrap();
        let range = |share: f64| SlantRange::derived(height.value() * share);
        let overhead = ground_distance(range(1.0 - 1e-11), height).unwrap();
        assert_eq!(overhead.value(), metres(0.0));
        assert!(ground_distance(range(1.0 - 1e-9), height).is_err());
    }

    #[test]
    fn far_out_the_curve_of_the_earth_shows() {
        let height = HeightAboveStation::new(feet(35_000.0)).unwrap();
        let slant = slant_range(GroundDistance::new(nautical_miles(100.0)).unwrap(), height);
        let flat = (100.0_f64.powi(2) + (35_000.0_f64 * 0.3048 / 1852.0).powi(2)).sqrt();
        let excess = slant.value().get::<nautical_mile>() - flat;
        assert!((excess - 0.08).abs() < 0.002, "{excess}");
    }
}
