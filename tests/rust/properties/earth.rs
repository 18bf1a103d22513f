//! Lines on the earth, and what a station sees.

#![allow(deprecated, reason = "geo keeps Vincenty's method under a name it will change")]

use geo::{Bearing, Destination, Distance, HaversineMeasure, Point, Rhumb, VincentyDistance};
use lubberline::plain::{
    geodesic_direct, geodesic_inverse, great_circle_direct, great_circle_inverse, ground_distance_nm,
    observe, rhumb_direct, rhumb_excess, rhumb_inverse, slant_range_nm,
};
use proptest::prelude::*;

use crate::{apart_deg, config};

/// A point away from the poles, where directions lose their meaning.
fn point() -> impl Strategy<Value = (f64, f64)> {
    (-89.0..89.0, -180.0..180.0)
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn direct_after_inverse_returns((lat1, lon1) in point(), (lat2, lon2) in point()) {
        let line = geodesic_inverse(lat1, lon1, lat2, lon2)?;
        let end = geodesic_direct(lat1, lon1, line.initial_bearing_deg, line.distance_nm)?;
        let miss_nm = geodesic_inverse(lat2, lon2, end.latitude_deg, end.longitude_deg)?.distance_nm;
        prop_assert!(miss_nm < 1e-8, "{miss_nm} NM");
        // Nearly antipodal ends leave their direction open to the last digits of where they are.
        prop_assume!(line.distance_nm < 10_700.0);
        prop_assert!(apart_deg(end.final_bearing_deg, line.final_bearing_deg) < 1e-8);
    }

    /// What makes a rhumb line: from each of its points the course to its end is the same, and the parts add up.
    #[test]
    fn a_rhumb_line_keeps_its_course((lat1, lon1) in point(), (lat2, lon2) in point(), part in 0.01..0.99) {
        let whole = rhumb_inverse(lat1, lon1, lat2, lon2)?;
        prop_assume!(whole.distance_nm < 10_900.0);
        let middle = rhumb_direct(lat1, lon1, whole.course_deg, part * whole.distance_nm)?;
        let rest = rhumb_inverse(middle.latitude_deg, middle.longitude_deg, lat2, lon2)?;
        let longer_nm: f64 = part * whole.distance_nm + rest.distance_nm - whole.distance_nm;
        prop_assert!(longer_nm.abs() < 1e-10, "{longer_nm} NM");
        let aside_nm = rest.distance_nm * apart_deg(rest.course_deg, whole.course_deg).to_radians();
        prop_assert!(aside_nm < 1e-10, "{aside_nm} NM");
        // Half the world away, another line is as short.
        prop_assume!((lon2 - lon1).rem_euclid(360.0) != 180.0);
        let back = rhumb_inverse(lat2, lon2, lat1, lon1)?;
        prop_assert!((back.distance_nm - whole.distance_nm).abs() < 1e-11);
        prop_assert!(apart_deg(back.course_deg, whole.course_deg + 180.0) < 1e-12);
        let excess = rhumb_excess(lat1, lon1, lat2, lon2)?;
        let shortest = geodesic_inverse(lat1, lon1, lat2, lon2)?;
        prop_assert!(excess.excess_nm >= 0.0);
        prop_assert!((shortest.distance_nm + excess.excess_nm - whole.distance_nm).abs() < 1e-11);
    }

    /// On a sphere it is another line, but not by more than the flattening makes of a radius and of a course.
    #[test]
    fn the_rhumb_line_of_a_sphere_is_near((lat1, lon1) in point(), (lat2, lon2) in point()) {
        let (from, to) = (Point::new(lon1, lat1), Point::new(lon2, lat2));
        prop_assume!(((lon2 - lon1).abs() - 180.0).abs() > 1e-6);
        let line = rhumb_inverse(lat1, lon1, lat2, lon2)?;
        let ratio = line.distance_nm * 1852.0 / Rhumb.distance(from, to);
        prop_assert!((ratio - 1.0).abs() < 0.01, "{ratio}");
        prop_assert!(apart_deg(line.course_deg, Rhumb.bearing(from, to)) < 0.2);
    }

    #[test]
    fn the_way_back_is_the_way((lat1, lon1) in point(), (lat2, lon2) in point()) {
        let there = geodesic_inverse(lat1, lon1, lat2, lon2)?;
        let back = geodesic_inverse(lat2, lon2, lat1, lon1)?;
        prop_assert!((there.distance_nm - back.distance_nm).abs() < 1e-11);
        prop_assume!(there.distance_nm < 10_700.0);
        prop_assert!(apart_deg(there.initial_bearing_deg, back.final_bearing_deg + 180.0) < 1e-9);
    }

    #[test]
    fn mirrored_at_the_equator_and_moved_around_the_earth(
        (lat1, lon1) in point(), (lat2, lon2) in point(), moved in -180.0..180.0,
    ) {
        let line = geodesic_inverse(lat1, lon1, lat2, lon2)?;
        let other = geodesic_inverse(-lat1, lon1 + moved, -lat2, lon2 + moved)?;
        prop_assert!((line.distance_nm - other.distance_nm).abs() < 1e-9);
        prop_assume!(line.distance_nm < 10_700.0);
        prop_assert!(apart_deg(line.initial_bearing_deg, 180.0 - other.initial_bearing_deg) < 1e-8);
    }

    /// Vincenty's formulas are another series for the same line; they are good to half a millimetre, and not near the antipode.
    #[test]
    fn vincenty_finds_the_same_distance((lat1, lon1) in point(), (lat2, lon2) in point()) {
        let distance_m = geodesic_inverse(lat1, lon1, lat2, lon2)?.distance_nm * 1852.0;
        prop_assume!(distance_m < 19.0e6);
        let vincenty_m = Point::new(lon1, lat1).vincenty_distance(&Point::new(lon2, lat2)).expect("it converges");
        prop_assert!((distance_m - vincenty_m).abs() < 5e-4, "{distance_m} m, Vincenty {vincenty_m} m");
    }

    #[test]
    fn haversines_find_the_same_great_circle(
        (lat1, lon1) in point(), (lat2, lon2) in point(), radius_nm in 3430.0..3450.0,
    ) {
        let sphere = HaversineMeasure::new(radius_nm);
        let (from, to) = (Point::new(lon1, lat1), Point::new(lon2, lat2));
        let line = great_circle_inverse(lat1, lon1, lat2, lon2, radius_nm)?;
        // Near the antipode the haversine loses half its digits.
        prop_assert!((line.distance_nm - sphere.distance(from, to)).abs() < 1e-4);
        prop_assume!(line.distance_nm < 10_700.0);
        prop_assert!((line.distance_nm - sphere.distance(from, to)).abs() < 1e-9);
        prop_assert!(apart_deg(line.initial_bearing_deg, sphere.bearing(from, to)) < 1e-8);
        let end = great_circle_direct(lat1, lon1, line.initial_bearing_deg, line.distance_nm, radius_nm)?;
        let theirs = sphere.destination(from, line.initial_bearing_deg, line.distance_nm);
        prop_assert!((end.latitude_deg - theirs.y()).abs() < 1e-8 && (end.latitude_deg - lat2).abs() < 1e-8);
        prop_assert!(apart_deg(end.longitude_deg, theirs.x()) < 1e-7 && apart_deg(end.longitude_deg, lon2) < 1e-7);
    }

    /// Farther or higher is a longer slant range, and never as long as distance and height together.
    #[test]
    fn slant_range_grows_and_stays_below_the_sum(
        distance_nm in 0.1..300.0, height_ft in 100.0..60_000.0, more in 1.001..1.5_f64
    ) {
        let slant_nm = slant_range_nm(distance_nm, height_ft)?;
        let farther_nm = slant_range_nm(more * distance_nm, height_ft)?;
        let higher_nm = slant_range_nm(distance_nm, more * height_ft)?;
        prop_assert!(farther_nm > slant_nm && higher_nm > slant_nm);
        let height_nm = height_ft * 0.3048 / 1852.0;
        prop_assert!(height_nm < slant_nm && slant_nm < distance_nm + height_nm);
    }

    #[test]
    fn ground_distance_undoes_slant_range(distance_nm in 0.0..300.0, height_ft in -1_000.0..60_000.0) {
        let slant_nm = slant_range_nm(distance_nm, height_ft)?;
        prop_assert!(slant_nm >= height_ft.abs() * 0.3048 / 1852.0 * (1.0 - 1e-12));
        let again_nm = ground_distance_nm(slant_nm, height_ft)?;
        // Overhead the slant range hardly changes with distance.
        let digits_nm = 1e-14 * slant_nm * slant_nm / distance_nm.max(1e-7);
        prop_assert!((again_nm - distance_nm).abs() < 1e-10 + digits_nm, "{again_nm} NM for {distance_nm} NM");
    }

    /// What a receiver shows is the geodesic and the chord of two earth-centred points, in the station's north.
    #[test]
    fn a_station_sees_what_earth_centred_points_say(
        (latitude, longitude) in (-85.0..85.0, -180.0..180.0), elevation_ft in -200.0..10_000.0, declination in -30.0..30.0,
        bearing_deg in 0.0..360.0, distance_nm in 0.01..250.0, altitude_ft in 0.0..60_000.0,
    ) {
        let under = geodesic_direct(latitude, longitude, bearing_deg, distance_nm)?;
        let seen = observe(
            latitude, longitude, elevation_ft, declination, under.latitude_deg, under.longitude_deg, altitude_ft,
        )?;
        prop_assert!(apart_deg(seen.radial_deg, bearing_deg - declination) < 1e-7 / distance_nm.min(1.0));
        prop_assert!((seen.ground_distance_nm - distance_nm).abs() < 1e-8);
        let station = earth_centred_m(latitude, longitude, elevation_ft);
        let aircraft = earth_centred_m(under.latitude_deg, under.longitude_deg, altitude_ft);
        let chord_m: f64 = (0..3).map(|axis| (station[axis] - aircraft[axis]).powi(2)).sum::<f64>().sqrt();
        prop_assert!((seen.dme_nm - chord_m / 1852.0).abs() < 1e-8, "{} NM, chord {chord_m} m", seen.dme_nm);
    }
}

fn earth_centred_m(latitude_deg: f64, longitude_deg: f64, height_ft: f64) -> [f64; 3] {
    let (latitude, longitude) = (latitude_deg.to_radians(), longitude_deg.to_radians());
    let flattening = 1.0 / 298.257_223_563;
    let squared = flattening * (2.0 - flattening);
    let across_m = 6_378_137.0 / (1.0 - squared * latitude.sin().powi(2)).sqrt();
    let height_m = height_ft * 0.3048;
    [
        (across_m + height_m) * latitude.cos() * longitude.cos(),
        (across_m + height_m) * latitude.cos() * longitude.sin(),
        (across_m * (1.0 - squared) + height_m) * latitude.sin(),
    ]
}
