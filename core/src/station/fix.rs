//! How well two lines of position fix a place: covariance, error ellipse, deviations along and across a track.

use super::Station;
use super::needle::arm_m;
use crate::Error;
use crate::earth::{MEAN_RADIUS_M, inverse, slant_range};
use crate::plane::Plane;
use crate::value::units::{Length, Ratio, meter, metres, radian, ratio};
use crate::value::{
    AngularError, Bearing, Confidence, DistanceError, GroundDistance, HeightAboveStation, North, Position,
    StationDistance, TrueAltitude, TrueNorth,
};

/// Two lines of position that cross at less than this sine are one.
const LEAST_SINE: f64 = 1e-9;

/// A line of position at a place, straight as far as its error reaches: the direction across it, and its standard deviation that way.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LineOfPosition<N: North> {
    across: Bearing<N>,
    deviation_m: f64,
}

impl<N: North> LineOfPosition<N> {
    /// The line of a radial: along the bearing from the station, off by `R sin(d / R)` times the error.
    ///
    /// `from_station` is the direction of the line at the place itself, away from the station. `error` is a standard deviation: half a
    /// published tolerance.
    pub fn radial(from_station: Bearing<N>, distance: StationDistance, error: AngularError) -> Self {
        Self {
            across: Bearing::from_degrees(from_station.degrees() + 90.0),
            deviation_m: arm_m(distance) * error.value().get::<radian>(),
        }
    }

    /// The line of a DME reading: across the bearing from the station, off by the reading's error as it falls on the ground.
    ///
    /// That is the error times `slant / ((R + h) sin(d / R))`, in the plane slant over ground distance: it grows without bound toward the
    /// station. `error` is a standard deviation: half a published tolerance.
    pub fn dme(
        from_station: Bearing<N>,
        distance: StationDistance,
        height: HeightAboveStation,
        error: DistanceError,
    ) -> Self {
        let slant = slant_range(GroundDistance::derived(distance.value()), height);
        let above = 1.0 + height.value().get::<meter>() / MEAN_RADIUS_M;
        let stretch = slant.value().get::<meter>() / (above * arm_m(distance));
        Self { across: from_station, deviation_m: stretch * error.value().get::<meter>() }
    }

    /// The standard deviation across the line.
    pub fn deviation(&self) -> Length {
        metres(self.deviation_m)
    }
}

impl LineOfPosition<TrueNorth> {
    /// The line of a station's radial at a place; none overhead and beyond 5 000 NM.
    pub fn of_radial(station: &Station, place: Position, error: AngularError) -> Option<Self> {
        let line = inverse(station.position, place);
        let distance = StationDistance::new(line.distance.value()).ok()?;
        line.final_bearing.map(|bearing| Self::radial(bearing, distance, error))
    }

    /// The line of a station's DME at a place and altitude; none overhead and beyond 5 000 NM.
    pub fn of_dme(
        station: &Station,
        place: Position,
        altitude: TrueAltitude,
        error: DistanceError,
    ) -> Option<Self> {
        let line = inverse(station.position, place);
        let distance = StationDistance::new(line.distance.value()).ok()?;
        let height = HeightAboveStation::derived(altitude.value() - station.elevation.value());
        line.final_bearing.map(|bearing| Self::dme(bearing, distance, height, error))
    }
}

/// The error of a fix: its covariance, as deviations by north and east and their correlation, and as an ellipse.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FixError<N: North> {
    /// Standard deviation along the long axis of the ellipse.
    pub semi_major: Length,
    /// Standard deviation along the short axis.
    pub semi_minor: Length,
    /// Direction of the long axis, 0 to 180 degrees.
    pub major_axis: Bearing<N>,
    /// Standard deviation by north.
    pub north: Length,
    /// Standard deviation by east.
    pub east: Length,
    /// Correlation of the errors by north and by east, -1 to 1.
    pub correlation: Ratio,
}

/// The error of the fix that two lines of position give, their errors independent.
///
/// With `p` the unit vectors along the lines, `s` the deviations across them and `c` the sine of the angle at which they cross, the covariance is
/// `(s1² p2 p2ᵀ + s2² p1 p1ᵀ) / c²`: an error across one line moves the fix along the other.
///
/// # Accuracy
/// Rounding error for the straight lines. Those of a real fix bend: the answer holds while the errors are small against the distances.
///
/// # Degenerate cases
/// Two lines without error give a fix without error; its ellipse is a point, its long axis zero degrees.
///
/// # Errors
/// [`Error::NoFix`] for lines that do not cross (the radials of one bearing, two DME in line).
///
/// # Source
/// Derived: the covariance of the solution of two linear equations.
///
/// # Example
/// ```
/// use lubberline::station::{LineOfPosition, fix_error};
/// use lubberline::value::{AngularError, DistanceError, HeightAboveStation, StationDistance, TrueBearing, units::*};
/// // A radial of 070 at 40 NM and the DME of the same station, at 31 000 ft, with half of the published 4.5 degrees and 0.2 NM.
/// let (radial, distance) = (TrueBearing::new(degrees(70.0))?, StationDistance::new(nautical_miles(40.0))?);
/// let line = LineOfPosition::radial(radial, distance, AngularError::new(degrees(2.25))?);
/// let height = HeightAboveStation::new(feet(31_000.0))?;
/// let circle = LineOfPosition::dme(radial, distance, height, DistanceError::new(nautical_miles(0.1))?);
/// let error = fix_error(line, circle)?;
/// assert_eq!(format!("{:.2}", error.semi_major.get::<nautical_mile>()), "1.57");
/// assert_eq!(format!("{:.2}", error.semi_minor.get::<nautical_mile>()), "0.10");
/// assert_eq!(format!("{:.0}", error.major_axis.angle().get::<degree>()), "160");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn fix_error<N: North>(
    first: LineOfPosition<N>,
    second: LineOfPosition<N>,
) -> Result<FixError<N>, Error> {
    let (along_1, along_2) = (along(first), along(second));
    let sine = along_1.cross(along_2);
    if sine.abs() < LEAST_SINE {
        return Err(Error::NoFix { crossing_angle_deg: sine.abs().asin().to_degrees() });
    }
    // How far one deviation of either line moves the fix, and where to.
    let (moved_1_m, moved_2_m) =
        (along_2 * (first.deviation_m / sine), along_1 * (second.deviation_m / sine));
    let sum = |part: fn(Plane) -> f64| part(moved_1_m).powi(2) + part(moved_2_m).powi(2);
    let (north_m2, east_m2) = (sum(|moved| moved.north), sum(|moved| moved.east));
    let mixed_m2 = moved_1_m.north * moved_1_m.east + moved_2_m.north * moved_2_m.east;

    let half_difference_m2 = (north_m2 - east_m2) / 2.0;
    let major_m2 = (north_m2 + east_m2) / 2.0 + half_difference_m2.hypot(mixed_m2);
    let major_m = major_m2.sqrt();
    // The product of the axes is known exactly, where their difference would lose the digits of a thin ellipse.
    let product_m2 = (first.deviation_m * second.deviation_m / sine).abs();
    let minor_m = if major_m > 0.0 { product_m2 / major_m } else { 0.0 };
    let (north_m, east_m) = (north_m2.sqrt(), east_m2.sqrt());
    let correlation =
        if north_m > 0.0 && east_m > 0.0 { (mixed_m2 / (north_m * east_m)).clamp(-1.0, 1.0) } else { 0.0 };
    let axis_deg = mixed_m2.atan2(half_difference_m2).to_degrees() / 2.0;
    Ok(FixError {
        semi_major: metres(major_m),
        semi_minor: metres(minor_m.min(major_m)),
        major_axis: Bearing::from_degrees(axis_deg.rem_euclid(180.0) % 180.0),
        north: metres(north_m),
        east: metres(east_m),
        correlation: Ratio::new::<ratio>(correlation),
    })
}

/// The unit vector along a line of position.
fn along<N: North>(line: LineOfPosition<N>) -> Plane {
    let across = Plane::along_deg(line.across.degrees());
    Plane { north: -across.east, east: across.north }
}

impl<N: North> FixError<N> {
    /// Standard deviations along and across a track.
    pub fn along_and_across(&self, track: Bearing<N>) -> (Length, Length) {
        let off_axis = Plane::along_deg(track.degrees() - self.major_axis.degrees());
        let (major_m, minor_m) = (self.semi_major.get::<meter>(), self.semi_minor.get::<meter>());
        let along_m = (major_m * off_axis.north).hypot(minor_m * off_axis.east);
        let across_m = (major_m * off_axis.east).hypot(minor_m * off_axis.north);
        (metres(along_m), metres(across_m))
    }

    /// The root mean square distance of the fix from the place; twice of it holds 95 to 98 percent, by the shape of the ellipse.
    pub fn root_mean_square(&self) -> Length {
        metres(self.semi_major.get::<meter>().hypot(self.semi_minor.get::<meter>()))
    }
}

/// The factor by which the axes of an ellipse of one standard deviation grow to hold a share of all fixes, `sqrt(-2 ln(1 - p))`.
///
/// 2.45 for 95 percent: one standard deviation of a fix holds 39 percent, where that of a line holds 68.
///
/// # Source
/// The distribution of the radius of two independent normal errors (Rayleigh); derived.
///
/// # Example
/// ```
/// use lubberline::station::ellipse_factor;
/// use lubberline::value::{Confidence, units::*};
/// assert_eq!(format!("{:.2}", ellipse_factor(Confidence::new(Ratio::new::<ratio>(0.95))?).get::<ratio>()), "2.45");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn ellipse_factor(confidence: Confidence) -> Ratio {
    let outside = (-confidence.value().get::<ratio>()).ln_1p();
    Ratio::new::<ratio>((-2.0 * outside).sqrt())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::earth::direct;
    use crate::station::Ident;
    use crate::value::units::{degree, degrees, nautical_mile, nautical_miles};
    use crate::value::{Declination, Elevation, TrueBearing};

    fn line(across_deg: f64, deviation_m: f64) -> LineOfPosition<TrueNorth> {
        LineOfPosition { across: TrueBearing::from_degrees(across_deg), deviation_m }
    }

    /// Solves for where each pair of errors puts the fix.
    #[test]
    fn the_covariance_is_that_of_fixes_drawn() {
        let (first, second) = (line(20.0, 300.0), line(75.0, 800.0));
        let error = fix_error(first, second).unwrap();
        // Errors of plus and minus one deviation have the variance, so that the mean of the four fixes is exact.
        let draws = [-1.0, 1.0];
        let (mut north, mut east, mut mixed) = (0.0, 0.0, 0.0);
        for one in draws {
            for other in draws {
                let (a, b) = (first.across.radians(), second.across.radians());
                let determinant = a.cos() * b.sin() - a.sin() * b.cos();
                let n = (one * 300.0 * b.sin() - other * 800.0 * a.sin()) / determinant;
                let e = (other * 800.0 * a.cos() - one * 300.0 * b.cos()) / determinant;
                (north, east, mixed) = (north + n * n / 4.0, east + e * e / 4.0, mixed + n * e / 4.0);
            }
        }
        assert!((error.north.get::<meter>() - f64::sqrt(north)).abs() < 1e-9);
        assert!((error.east.get::<meter>() - f64::sqrt(east)).abs() < 1e-9);
        let correlation = mixed / f64::sqrt(north * east);
        assert!((error.correlation.get::<ratio>() - correlation).abs() < 1e-12);
    }

    #[test]
    fn the_ellipse_is_the_covariance_in_its_own_axes() {
        for (first, second) in [
            (line(20.0, 300.0), line(75.0, 800.0)),
            (line(0.0, 100.0), line(90.0, 100.0)),
            (line(0.0, 100.0), line(90.0, 400.0)),
            (line(10.0, 50.0), line(10.001, 50.0)),
            (line(200.0, 0.0), line(75.0, 800.0)),
        ] {
            let error = fix_error(first, second).unwrap();
            let (north, east) = error.along_and_across(TrueBearing::from_degrees(0.0));
            assert!(
                (north - error.north).abs() < metres(1e-6) + error.semi_major * 1e-9,
                "{first:?} {second:?}"
            );
            assert!(
                (east - error.east).abs() < metres(1e-6) + error.semi_major * 1e-9,
                "{first:?} {second:?}"
            );
            let (along, across) = error.along_and_across(error.major_axis);
            assert!(
                (along - error.semi_major).abs() < metres(1e-6)
                    && (across - error.semi_minor).abs() < metres(1e-6)
            );
            let rms_m = north.get::<meter>().hypot(east.get::<meter>());
            assert!((error.root_mean_square().get::<meter>() - rms_m).abs() < 1e-9 * rms_m);
        }
    }

    #[test]
    fn lines_side_by_side_fix_nothing() {
        assert!(matches!(fix_error(line(30.0, 1.0), line(30.0, 2.0)), Err(Error::NoFix { .. })));
        assert!(matches!(fix_error(line(30.0, 1.0), line(210.0, 2.0)), Err(Error::NoFix { .. })));
        let point = fix_error(line(30.0, 0.0), line(120.0, 0.0)).unwrap();
        assert_eq!((point.semi_major, point.semi_minor), (metres(0.0), metres(0.0)));
    }

    #[test]
    fn a_dme_tells_less_of_the_place_the_nearer_it_is() {
        let dme = |miles: f64| {
            LineOfPosition::dme(
                TrueBearing::from_degrees(0.0),
                StationDistance::new(nautical_miles(miles)).unwrap(),
                HeightAboveStation::new(nautical_miles(6.0)).unwrap(),
                DistanceError::new(nautical_miles(0.1)).unwrap(),
            )
        };
        for miles in [0.01_f64, 1.0, 8.0] {
            let expected_nm = 0.1 * miles.hypot(6.0) / miles;
            let found_nm = dme(miles).deviation().get::<nautical_mile>();
            assert!((found_nm - expected_nm).abs() < 2e-3 * expected_nm, "{miles}: {found_nm}");
        }
        // Against the difference of the slant range itself, far out.
        let (near, far) = (
            GroundDistance::new(nautical_miles(199.9)).unwrap(),
            GroundDistance::new(nautical_miles(200.1)).unwrap(),
        );
        let height = HeightAboveStation::new(nautical_miles(6.0)).unwrap();
        let slope = (slant_range(far, height).value() - slant_range(near, height).value())
            .get::<nautical_mile>()
            / 0.2;
        assert!((dme(200.0).deviation().get::<nautical_mile>() - 0.1 / slope).abs() < 1e-8);
    }

    #[test]
    fn the_factor_of_the_ellipse() {
        let factor = |p| ellipse_factor(Confidence::new(Ratio::new::<ratio>(p)).unwrap()).get::<ratio>();
        assert!(
            (factor(0.95) - 2.447_747).abs() < 1e-6 && (factor(1.0 - f64::exp(-0.5)) - 1.0).abs() < 1e-12
        );
    }

    /// A radial that is off by its error, and a DME, lead as far from the place as their lines of position say.
    #[test]
    fn the_lines_are_those_of_the_ellipsoid() {
        let at = |latitude, longitude| Position::derived(latitude, longitude);
        let station = Station {
            position: at(61.25, -11.5),
            elevation: Elevation::new(metres(130.0)).unwrap(),
            declination: Declination::ZERO,
            ident: Ident::NONE,
        };
        let (place, altitude) = (at(61.9, -8.0), TrueAltitude::new(metres(9_500.0)).unwrap());
        let line = inverse(station.position, place);
        let radial = line.initial_bearing.unwrap();
        let (off, _) =
            direct(station.position, TrueBearing::from_degrees(radial.degrees() + 0.5), line.distance);
        let radial_line =
            LineOfPosition::of_radial(&station, place, AngularError::new(degrees(0.5)).unwrap()).unwrap();
        let apart = inverse(place, off);
        assert!(((apart.distance.value() / radial_line.deviation()).value - 1.0).abs() < 2e-3);
        let across_deg = radial_line.across.change_to(apart.initial_bearing.unwrap()).angle().get::<degree>();
        assert!(across_deg.abs() < 0.3, "{across_deg}");

        let farther = GroundDistance::new(line.distance.value() + metres(400.0)).unwrap();
        let (beyond, _) = direct(station.position, radial, farther);
        let read = |point| station.observe(point, altitude).dme.value();
        let error = DistanceError::new(read(beyond) - read(place)).unwrap();
        let dme_line = LineOfPosition::of_dme(&station, place, altitude, error).unwrap();
        assert!((dme_line.deviation() - metres(400.0)).abs() < metres(0.2), "{:?}", dme_line.deviation());
        assert!(
            LineOfPosition::of_radial(&station, station.position, AngularError::new(degrees(1.0)).unwrap())
                .is_none()
        );
    }
}
