//! Rhumb lines of WGS-84: lines of constant true course, straight on a Mercator chart.
//!
//! Along one, the way made north is an arc of the meridian, and the way made in longitude is that in isometric latitude by the
//! tangent of the course. Both are taken as differences in forms that lose no digit when the latitudes are close, so that
//! courses close to east and west need no case of their own.

use super::straight::{ECCENTRICITY_SQUARED, SEMI_MAJOR_M, sin_cos_deg};
use super::{inverse, meridian};
use crate::Error;
use crate::value::units::{Length, meter, metres, nautical_mile};
use crate::value::{DirectionChange, GroundDistance, Position, TrueBearing};

/// A line that ends so near to a pole ends at it: the rounding of a distance that was computed to lead there.
const AT_POLE_M: f64 = 1e-6;

/// The line of constant course between two points.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RhumbLine {
    /// Its length along the surface.
    pub distance: GroundDistance,
    /// Its course; none between coincident points.
    pub course: Option<TrueBearing>,
}

/// How a rhumb line departs from the geodesic between the same points.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RhumbExcess {
    /// By how much it is longer.
    pub length: Length,
    /// What turns its course into the bearing of the geodesic at the first point; none between coincident points.
    pub conversion_angle: Option<DirectionChange>,
}

/// The rhumb line between two points of WGS-84, the short way round.
///
/// `tan C = l / q`, `d = hypot(m, l m / q)` with the differences of longitude `l`, of isometric latitude `q`, and of the arc of
/// the meridian `m`. On a parallel `m / q` is its radius.
///
/// # Accuracy
/// 20 nanometres along the line and, for the course, 40 across its far end, which is what rounding leaves of a number of degrees.
///
/// # Degenerate cases
/// Coincident points have no course. A line to or from a pole runs along the meridian of the other point. Points half the
/// world apart in longitude have two such lines; the eastward one is given.
///
/// # Source
/// C. F. F. Karney, The area of rhumb polygons, Studia Geophysica et Geodaetica 68 (2024) 99-120, doi 10.1007/s11200-024-0709-z,
/// which says why differences are to be divided so; the forms used here are derived beside the code.
///
/// # Example
/// ```
/// use lubberline::earth::{inverse, rhumb_inverse};
/// use lubberline::value::{Latitude, Longitude, Position, units::*};
/// let at = |latitude, longitude| -> Result<Position, lubberline::Error> {
///     Ok(Position::new(Latitude::new(degrees(latitude))?, Longitude::new(degrees(longitude))?))
/// };
/// // Along a parallel the rhumb line is longer than the geodesic.
/// let (from, to) = (at(60.0, -30.0)?, at(60.0, 30.0)?);
/// let line = rhumb_inverse(from, to);
/// assert!(line.distance.value() > inverse(from, to).distance.value());
/// assert_eq!(line.course.map(|course| course.angle().get::<degree>()), Some(90.0));
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rhumb_inverse(from: Position, to: Position) -> RhumbLine {
    let latitude_rad = (to.latitude_deg() - from.latitude_deg()).to_radians();
    let longitude_rad = way_east_deg(from.longitude_deg(), to.longitude_deg()).to_radians();
    let north_m = meridian::arc_m(from.latitude_deg(), latitude_rad);
    let isometric_rad = isometric_difference(from.latitude_deg(), to.latitude_deg(), latitude_rad);
    let east_m = longitude_rad * mean_parallel_m(from.latitude_deg(), north_m, isometric_rad);
    let distance_m = north_m.hypot(east_m);
    RhumbLine {
        distance: GroundDistance::derived(metres(distance_m)),
        course: (distance_m != 0.0).then(|| TrueBearing::from_radians(longitude_rad.atan2(isometric_rad))),
    }
}

/// The point reached along a rhumb line of WGS-84.
///
/// The latitude is where the arc of the meridian is `d cos C`, by four steps of Newton's method; the longitude follows
/// as `d sin C` over the mean radius of the parallels passed.
///
/// # Accuracy
/// 30 nanometres, but around a pole: within a metre of it a nanometre of the way is more of longitude.
///
/// # Degenerate cases
/// A line that ends within a micrometre of a pole ends at it, with the longitude of the start. From a pole a line runs along
/// the meridian of the longitude given there.
///
/// # Errors
/// [`Error::PoleOnRhumbLine`] for a line that would pass a pole, or leave one in any direction but along a meridian: it winds
/// about the pole without end.
///
/// # Source
/// As [`rhumb_inverse`].
///
/// # Example
/// ```
/// use lubberline::earth::rhumb_direct;
/// use lubberline::value::{GroundDistance, Latitude, Longitude, Position, TrueBearing, units::*};
/// let at = |latitude, longitude| -> Result<Position, lubberline::Error> {
///     Ok(Position::new(Latitude::new(degrees(latitude))?, Longitude::new(degrees(longitude))?))
/// };
/// let there = rhumb_direct(at(60.0, -10.0)?, TrueBearing::new(degrees(90.0))?, GroundDistance::new(nautical_miles(60.0))?)?;
/// // Eastward along a parallel, which a rhumb line keeps to.
/// assert_eq!(there.latitude().angle(), degrees(60.0));
/// assert_eq!(format!("{:.4}", there.longitude().angle().get::<degree>()), "-8.0086");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rhumb_direct(
    from: Position,
    course: TrueBearing,
    distance: GroundDistance,
) -> Result<Position, Error> {
    let latitude_deg = from.latitude_deg();
    let distance_m = distance.value().get::<meter>();
    let (sine, cosine) = sin_cos_deg(course.degrees());
    let (north_m, east_m) = (distance_m * cosine, distance_m * sine);
    let pole_deg = 90.0_f64.copysign(cosine);
    let to_pole_m = meridian::arc_m(latitude_deg, (pole_deg - latitude_deg).to_radians()).abs();
    let ended = |pole_m: f64| Error::PoleOnRhumbLine {
        course_deg: course.degrees(),
        pole_nm: metres(pole_m).get::<nautical_mile>(),
    };
    if north_m.abs() > to_pole_m + AT_POLE_M {
        return Err(ended(to_pole_m / cosine.abs()));
    }
    if north_m != 0.0 && north_m.abs() >= to_pole_m - AT_POLE_M {
        return Ok(Position::derived(pole_deg, from.longitude_deg()));
    }
    let way_rad = meridian::latitude_after(latitude_deg, north_m);
    let reached_deg = (latitude_deg + way_rad.to_degrees()).clamp(-90.0, 90.0);
    if east_m == 0.0 {
        return Ok(Position::derived(reached_deg, from.longitude_deg()));
    }
    let isometric_rad = isometric_difference(latitude_deg, reached_deg, way_rad);
    let parallel_m = mean_parallel_m(latitude_deg, meridian::arc_m(latitude_deg, way_rad), isometric_rad);
    if parallel_m == 0.0 {
        return Err(ended(0.0));
    }
    Ok(Position::derived(reached_deg, from.longitude_deg() + (east_m / parallel_m).to_degrees()))
}

/// How much longer the rhumb line between two points is than the geodesic, and by what angle the two set out apart.
///
/// # Accuracy
/// 40 nanometres along the line and, for the angle, 60 across its far end.
///
/// # Degenerate cases
/// Along a meridian and along the equator the two are one, as far as the latter is the shortest way: the excess is zero.
/// Coincident points have no angle.
///
/// # Source
/// [`rhumb_inverse`] and [`inverse`].
///
/// # Example
/// ```
/// use lubberline::earth::rhumb_excess;
/// use lubberline::value::{Latitude, Longitude, Position, units::*};
/// let at = |latitude, longitude| -> Result<Position, lubberline::Error> {
///     Ok(Position::new(Latitude::new(degrees(latitude))?, Longitude::new(degrees(longitude))?))
/// };
/// let excess = rhumb_excess(at(60.0, -30.0)?, at(60.0, 30.0)?);
/// // The geodesic sets out to the left, nearer to the pole.
/// assert_eq!(format!("{:.1}", excess.length.get::<nautical_mile>()), "63.0");
/// assert_eq!(excess.conversion_angle.map(|angle| angle.angle() < degrees(-26.0)), Some(true));
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rhumb_excess(from: Position, to: Position) -> RhumbExcess {
    let (rhumb, shortest) = (rhumb_inverse(from, to), inverse(from, to));
    let longer_m = (rhumb.distance.value() - shortest.distance.value()).get::<meter>();
    // No line is shorter than the shortest: what is below zero is rounding.
    let longer_m = if longer_m < 0.0 { 0.0 } else { longer_m };
    let angle = rhumb.course.zip(shortest.initial_bearing).map(|(course, bearing)| course.change_to(bearing));
    RhumbExcess { length: metres(longer_m), conversion_angle: angle }
}

/// The way in longitude from one meridian to another, from -180 to 180 degrees, 180 for half the world.
fn way_east_deg(from_deg: f64, to_deg: f64) -> f64 {
    let way_deg = to_deg - from_deg;
    if way_deg > 180.0 {
        way_deg - 360.0
    } else if way_deg <= -180.0 {
        way_deg + 360.0
    } else {
        way_deg
    }
}

/// Isometric latitude `asinh(tan B) - e atanh(e sin B)` at the second latitude less that at the first.
///
/// Both differences are brought on the difference of the sines: by the theorems of addition, `asinh x - asinh y =
/// asinh(x sqrt(1 + y^2) - y sqrt(1 + x^2))`, in which `sqrt(1 + tan^2 B)` is `1 / cos B`, and `atanh x - atanh y =
/// atanh((x - y) / (1 - x y))`. A pole is infinitely far.
fn isometric_difference(first_deg: f64, second_deg: f64, way_rad: f64) -> f64 {
    let (sine_1, cosine_1) = sin_cos_deg(first_deg);
    let (sine_2, cosine_2) = sin_cos_deg(second_deg);
    let sines = 2.0 * sin_cos_deg(first_deg / 2.0 + second_deg / 2.0).1.abs() * (way_rad / 2.0).sin();
    if sines == 0.0 {
        return 0.0;
    }
    let eccentricity = ECCENTRICITY_SQUARED.sqrt();
    let flattened = (eccentricity * sines / (1.0 - ECCENTRICITY_SQUARED * sine_1 * sine_2)).atanh();
    (sines / (cosine_1 * cosine_2).abs()).asinh() - eccentricity * flattened
}

/// Mean radius of the parallels over a way in isometric latitude; that of the parallel itself if there is no way.
fn mean_parallel_m(latitude_deg: f64, north_m: f64, isometric_rad: f64) -> f64 {
    // So short a way has no digits left to divide, and no radius that differs.
    if isometric_rad.abs() < 1e-100 {
        let (sine, cosine) = sin_cos_deg(latitude_deg);
        return SEMI_MAJOR_M * cosine.abs() / (1.0 - ECCENTRICITY_SQUARED * sine * sine).sqrt();
    }
    north_m / isometric_rad
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(latitude_deg: f64, longitude_deg: f64) -> Position {
        Position::derived(latitude_deg, longitude_deg)
    }

    fn metres_of(distance: GroundDistance) -> f64 {
        distance.value().get::<meter>()
    }

    fn course(degrees: f64) -> TrueBearing {
        TrueBearing::from_degrees(degrees)
    }

    fn distance(m: f64) -> GroundDistance {
        GroundDistance::derived(metres(m))
    }

    /// From fifty digits, by core/fit/rhumb.py.
    #[test]
    fn it_is_what_its_definition_gives() {
        let mut lines = 0;
        for line in include_str!("rhumb_references.csv").lines() {
            let numbers: Vec<f64> = line.split(',').map(|text| text.parse().unwrap()).collect();
            let &[lat1, lon1, lat2, lon2, distance_m, course_deg] = numbers.as_slice() else {
                panic!("{line}")
            };
            let found = rhumb_inverse(at(lat1, lon1), at(lat2, lon2));
            let longer_m = metres_of(found.distance) - distance_m;
            let aside_m =
                distance_m * found.course.unwrap().change_to(course(course_deg)).degrees().to_radians();
            assert!(longer_m.abs() < 20e-9 && aside_m.abs() < 40e-9, "{line}: {longer_m} {aside_m}");
            let reached = rhumb_direct(at(lat1, lon1), course(course_deg), distance(distance_m)).unwrap();
            let missed_m = metres_of(inverse(reached, at(lat2, lon2)).distance);
            assert!(missed_m < 30e-9, "{line}: {missed_m}");
            lines += 1;
        }
        assert_eq!(lines, 240);
    }

    #[test]
    fn along_a_meridian_and_the_equator_it_is_the_geodesic() {
        for (from, to) in [
            (at(10.0, 20.0), at(11.0, 20.0)),
            (at(-80.0, 20.0), at(85.0, 20.0)),
            (at(0.0, 179.0), at(0.0, -20.0)),
            (at(0.0, -3.0), at(0.0, -3.1)),
            (at(52.0, 7.0), at(90.0, -60.0)),
            (at(-90.0, 7.0), at(-12.0, -60.0)),
        ] {
            let (rhumb, shortest) = (rhumb_inverse(from, to), inverse(from, to));
            let difference_m = metres_of(rhumb.distance) - metres_of(shortest.distance);
            assert!(difference_m.abs() < 15e-9, "{from:?} {to:?}: {difference_m}");
        }
        let excess = rhumb_excess(at(-80.0, 20.0), at(85.0, 20.0));
        assert!(
            excess.length.get::<meter>() < 15e-9 && excess.conversion_angle.unwrap().degrees().abs() < 1e-12
        );
    }

    /// The length of a parallel by its radius, the long way of adding many short geodesics.
    #[test]
    fn along_a_parallel_it_is_the_sum_of_short_geodesics() {
        let parts = 20_000;
        let whole_m = metres_of(rhumb_inverse(at(60.0, -30.0), at(60.0, 30.0)).distance);
        let part_m = metres_of(inverse(at(60.0, 0.0), at(60.0, 60.0 / f64::from(parts))).distance);
        assert!((whole_m - f64::from(parts) * part_m).abs() < 2e-3, "{whole_m}");
        assert!(whole_m > f64::from(parts) * part_m);
    }

    /// A line all but east, to within the last bits of the latitudes, is no worse than the parallel.
    #[test]
    fn courses_near_east_lose_no_digits() {
        let east_m = metres_of(rhumb_inverse(at(48.0, 10.0), at(48.0, 40.0)).distance);
        for off_deg in [1e-14, 1e-13, 1e-11, 1e-9, -1e-12] {
            let line = rhumb_inverse(at(48.0, 10.0), at(48.0 + off_deg, 40.0));
            assert!((metres_of(line.distance) - east_m).abs() < 1e-7 + east_m * off_deg.abs(), "{off_deg}");
            let off_course = 90.0 - line.course.unwrap().degrees();
            assert!(
                off_course.abs() < 6.0 * off_deg.abs() && off_course * off_deg >= 0.0,
                "{off_deg}: {off_course}"
            );
        }
        assert_eq!(rhumb_inverse(at(48.0, 10.0), at(48.0, -10.0)).course.unwrap().degrees(), 270.0);
    }

    #[test]
    fn there_and_back_over_the_date_line_and_near_the_poles() {
        for (from, to) in [
            (at(48.0, 10.0), at(-33.0, 150.0)),
            (at(5.0, 179.5), at(6.0, -179.5)),
            (at(5.0, -179.5), at(5.0, 179.5)),
            (at(89.9, 10.0), at(89.95, -160.0)),
            (at(-89.0, 10.0), at(89.0, 10.0)),
            (at(-10.0, 10.0), at(-10.0, 10.0 + 1e-9)),
            (at(70.0, -60.0), at(70.0 - 1e-12, 119.0)),
        ] {
            let line = rhumb_inverse(from, to);
            let reached = rhumb_direct(from, line.course.unwrap(), line.distance).unwrap();
            let missed_m = metres_of(inverse(reached, to).distance);
            assert!(missed_m < 3e-8, "{from:?} {to:?}: {missed_m}");
        }
    }

    #[test]
    fn at_a_pole_only_meridians_have_an_end() {
        let quarter_m = metres_of(inverse(at(0.0, 0.0), at(90.0, 0.0)).distance);
        let pole = rhumb_direct(at(0.0, 33.0), course(0.0), distance(quarter_m)).unwrap();
        assert_eq!((pole.latitude_deg(), pole.longitude_deg()), (90.0, 33.0));
        let from_pole = rhumb_direct(at(90.0, 33.0), course(180.0), distance(quarter_m)).unwrap();
        assert!(from_pole.latitude_deg().abs() < 1e-13 && from_pole.longitude_deg() == 33.0);
        for (from, course_deg, distance_m, pole_nm) in
            [(at(0.0, 33.0), 0.0, quarter_m + 1.0, quarter_m / 1852.0), (at(90.0, 33.0), 135.0, 10.0, 0.0)]
        {
            let error = rhumb_direct(from, course(course_deg), distance(distance_m)).unwrap_err();
            assert_eq!(error.code(), -120, "{error}");
            if let Error::PoleOnRhumbLine { pole_nm: found, .. } = error {
                assert!((found - pole_nm).abs() < 1e-9, "{error}");
            }
        }
        // Not to move is allowed anywhere, and at a pole all longitudes are one point.
        assert_eq!(rhumb_direct(at(90.0, 33.0), course(77.0), distance(0.0)).unwrap(), at(90.0, 33.0));
        assert_eq!(rhumb_inverse(at(-90.0, 33.0), at(-90.0, -5.0)).course, None);
        assert_eq!(rhumb_inverse(at(12.0, 33.0), at(12.0, 33.0)).course, None);
        let poles = rhumb_inverse(at(-90.0, 33.0), at(90.0, -5.0));
        assert_eq!(poles.course, Some(course(0.0)));
        assert!((metres_of(poles.distance) - 2.0 * quarter_m).abs() < 1e-8);
    }

    #[test]
    fn half_the_world_away_it_goes_east() {
        for (from_deg, to_deg) in [(-90.0, 90.0), (90.0, -90.0), (0.0, -180.0)] {
            assert_eq!(rhumb_inverse(at(40.0, from_deg), at(40.0, to_deg)).course, Some(course(90.0)));
        }
    }
}
