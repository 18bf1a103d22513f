//! Courses, arcs and lines beside courses on the ellipsoid: what is built to meet is found to meet, at poles, across the date line, far away
//! and at the smallest angles too.

use lubberline::earth::CourseReach;
use lubberline::plain::{
    arc_arc_crossing, arc_tangents, course_arc_crossing, course_crossing, cross_track, geodesic_direct,
    geodesic_inverse, offset_arc_crossing, offset_course_crossing, offset_cross_track,
    offset_offset_crossing, offset_point, offset_tangent_turn, on_offset, tangent_turn,
};
use proptest::prelude::*;

use crate::config;

const MILLIMETRE_NM: f64 = 0.001 / 1852.0;

/// Any point, and often a pole, the date line, the equator, or close to a pole.
fn anywhere() -> impl Strategy<Value = (f64, f64)> {
    prop_oneof![
        3 => (-1.0..1.0_f64, -180.0..180.0).prop_map(|(sine, longitude)| (sine.asin().to_degrees(), longitude)),
        1 => (prop_oneof![Just(90.0), Just(-90.0)], -180.0..180.0),
        1 => (-90.0..90.0, Just(180.0)),
        1 => (Just(0.0), -180.0..180.0),
        1 => (89.0..90.0, -180.0..180.0),
    ]
}

/// A length from a metre to `most_nm`, as often short as long.
fn length_nm(most_nm: f64) -> impl Strategy<Value = f64> {
    (-3.3..most_nm.log10()).prop_map(|log| 10_f64.powf(log))
}

/// An angle that is often next to nothing.
fn angle_deg() -> impl Strategy<Value = f64> {
    prop_oneof![0.1..179.9, (-4.0..0.0_f64).prop_map(|log| 10_f64.powf(log))]
}

fn distance_nm(one: (f64, f64), other: (f64, f64)) -> f64 {
    geodesic_inverse(one.0, one.1, other.0, other.1).unwrap().distance_nm
}

/// A point and the direction of a line there, a signed distance on.
fn along((latitude, longitude): (f64, f64), course_deg: f64, distance_nm: f64) -> ((f64, f64), f64) {
    let back_deg = if distance_nm < 0.0 { 180.0 } else { 0.0 };
    let end = geodesic_direct(latitude, longitude, course_deg + back_deg, distance_nm.abs()).unwrap();
    ((end.latitude_deg, end.longitude_deg), end.final_bearing_deg + back_deg)
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn a_point_set_off_square_to_a_course_is_abeam_of_where_it_was(
        through in anywhere(), course in 0.0..360.0, along_nm in length_nm(4800.0), across_nm in length_nm(4300.0),
        (back, left) in (any::<bool>(), any::<bool>()),
    ) {
        let along_nm = if back { -along_nm } else { along_nm };
        let across_nm = if left { -across_nm } else { across_nm };
        let (foot, onward) = along(through, course, along_nm);
        let (point, _) = along(foot, onward + 90.0, across_nm);
        let found = cross_track(through.0, through.1, course, point.0, point.1)?;
        prop_assert!((found.cross_track_nm - across_nm).abs() < MILLIMETRE_NM, "{found:?}");
        prop_assert!((found.along_track_nm - along_nm).abs() < MILLIMETRE_NM, "{found:?}");
    }

    #[test]
    fn courses_through_a_point_meet_there(
        point in anywhere(), course in 0.0..360.0, angle in angle_deg(), first_nm in length_nm(4800.0), second_nm in length_nm(4800.0),
        (back, again) in (any::<bool>(), any::<bool>()),
    ) {
        // Beyond half the earth's girth together, the other meeting may be the nearer.
        prop_assume!(first_nm + second_nm < 10_000.0);
        let ((one, one_deg), (other, other_deg)) = (
            along(point, course, if back { -first_nm } else { first_nm }),
            along(point, course + angle, if again { -second_nm } else { second_nm }),
        );
        let found = course_crossing(one.0, one.1, one_deg, other.0, other.1, other_deg)?;
        let miss_nm = distance_nm(point, (found.latitude_deg, found.longitude_deg));
        prop_assert!(miss_nm * angle.to_radians().sin() < MILLIMETRE_NM / 10.0, "{miss_nm} NM: {found:?}");
        let turned = crate::apart_deg(found.second_course_deg, found.first_course_deg);
        // The angle of the courses stays, whichever meridian they are counted from.
        prop_assert!((turned - angle).abs() < 1e-6 + miss_nm / 3000.0, "{turned} {angle}");
    }

    #[test]
    fn a_course_through_a_point_of_an_arc_meets_it_there(
        center in anywhere(), radius_nm in length_nm(4800.0), bearing in 0.0..360.0, angle in angle_deg(), from_nm in length_nm(4800.0),
    ) {
        let (contact, outward) = along(center, bearing, radius_nm);
        let tangent_deg = outward + 90.0;
        let (from, course) = along(contact, tangent_deg + angle, -from_nm);
        let found = course_arc_crossing(from.0, from.1, course, center.0, center.1, radius_nm)?;
        let points = [(found.latitude1_deg, found.longitude1_deg), (found.latitude2_deg, found.longitude2_deg)];
        for point in points {
            prop_assert!((distance_nm(point, center) - radius_nm).abs() < 1e-3 * MILLIMETRE_NM);
        }
        let miss_nm = points.map(|point| distance_nm(point, contact)).into_iter().fold(f64::INFINITY, f64::min);
        prop_assert!(miss_nm * angle.to_radians().sin() < MILLIMETRE_NM / 10.0, "{miss_nm} NM: {found:?}");
        prop_assert!(found.along1_nm <= found.along2_nm);
    }

    #[test]
    fn arcs_through_a_point_meet_there(
        point in anywhere(), bearing in 0.0..360.0, angle in angle_deg(), first_nm in length_nm(4800.0), second_nm in length_nm(4800.0),
    ) {
        let ((one, _), (other, _)) = (along(point, bearing, first_nm), along(point, bearing + angle, second_nm));
        // All but one circle: every point is a meeting.
        prop_assume!(distance_nm(one, other) > 0.01);
        let found = arc_arc_crossing(one.0, one.1, first_nm, other.0, other.1, second_nm)?;
        let points = [(found.latitude1_deg, found.longitude1_deg), (found.latitude2_deg, found.longitude2_deg)];
        for point in points {
            prop_assert!((distance_nm(point, one) - first_nm).abs() < 1e-3 * MILLIMETRE_NM);
            prop_assert!((distance_nm(point, other) - second_nm).abs() < 1e-3 * MILLIMETRE_NM);
        }
        let miss_nm = points.map(|end| distance_nm(end, point)).into_iter().fold(f64::INFINITY, f64::min);
        prop_assert!(miss_nm * angle.to_radians().sin() < MILLIMETRE_NM, "{miss_nm} NM: {found:?}");
    }

    #[test]
    fn a_tangent_of_an_arc_is_found_from_any_point_of_it(
        center in anywhere(), radius_nm in length_nm(4800.0), bearing in 0.0..360.0, from_nm in length_nm(4800.0), right in any::<bool>(),
    ) {
        let (contact, outward) = along(center, bearing, radius_nm);
        let (from, _) = along(contact, outward + 90.0, if right { from_nm } else { -from_nm });
        let found = arc_tangents(from.0, from.1, center.0, center.1, radius_nm)?;
        let miss_nm = [(found.latitude1_deg, found.longitude1_deg), (found.latitude2_deg, found.longitude2_deg)]
            .map(|point| distance_nm(point, contact))
            .into_iter()
            .fold(f64::INFINITY, f64::min);
        // A contact is as soft along the circle as the point is close to it.
        prop_assert!(miss_nm * (from_nm / 3440.0).min(1.0) < MILLIMETRE_NM, "{miss_nm} NM: {found:?}");
    }

    #[test]
    fn a_turn_between_the_tangents_of_an_arc_is_that_arc(
        center in anywhere(), radius_nm in length_nm(80.0), bearing in 0.0..360.0, sweep in 1.0..175.0_f64, right in any::<bool>(),
        before_nm in -500.0..500.0, after_nm in -500.0..500.0,
    ) {
        let side = if right { 1.0 } else { -1.0 };
        let ((one, one_out), (other, other_out)) =
            (along(center, bearing, radius_nm), along(center, bearing + side * sweep, radius_nm));
        let (from, from_deg) = along(one, one_out + 90.0 * side, before_nm);
        let (to, to_deg) = along(other, other_out + 90.0 * side, after_nm);
        let found = tangent_turn(from.0, from.1, from_deg, to.0, to.1, to_deg, radius_nm)?;
        let miss_nm = distance_nm(center, (found.center_latitude_deg, found.center_longitude_deg));
        let soft = (sweep / 2.0).to_radians().tan().min((sweep / 2.0).to_radians().cos());
        prop_assert!(miss_nm * soft < MILLIMETRE_NM / 10.0, "{miss_nm} NM: {found:?}");
        prop_assert_eq!(found.side, side);
    }

    #[test]
    fn lines_beside_courses_meet_on_both(
        point in (-80.0..80.0, -180.0..180.0), course in 0.0..360.0, angle in 20.0..160.0,
        (one_nm, other_nm) in (-60.0..60.0, -60.0..60.0), (first_nm, second_nm) in (-400.0..400.0, -400.0..400.0), radius_nm in 65.0..200.0,
    ) {
        let (first, first_deg) = along(point, course, first_nm);
        let (second, second_deg) = along(point, course + angle, second_nm);
        let aside_nm = |through: (f64, f64), course: f64, latitude: f64, longitude: f64| {
            cross_track(through.0, through.1, course, latitude, longitude).map(|found| found.cross_track_nm)
        };
        let met = offset_offset_crossing(first.0, first.1, first_deg, one_nm, second.0, second.1, second_deg, other_nm)?;
        prop_assert!((aside_nm(first, first_deg, met.latitude_deg, met.longitude_deg)? - one_nm).abs() < MILLIMETRE_NM);
        prop_assert!((aside_nm(second, second_deg, met.latitude_deg, met.longitude_deg)? - other_nm).abs() < MILLIMETRE_NM);
        let place = offset_point(first.0, first.1, first_deg, one_nm, met.along_first_nm)?;
        prop_assert!(distance_nm((place.latitude_deg, place.longitude_deg), (met.latitude_deg, met.longitude_deg)) < MILLIMETRE_NM);

        let met = offset_course_crossing(first.0, first.1, first_deg, one_nm, second.0, second.1, second_deg)?;
        prop_assert!(aside_nm(second, second_deg, met.latitude_deg, met.longitude_deg)?.abs() < MILLIMETRE_NM);

        // The circle about a point of the course is wider than the line is far from it.
        let met = offset_arc_crossing(first.0, first.1, first_deg, one_nm, point.0, point.1, radius_nm)?;
        for place in [(met.latitude1_deg, met.longitude1_deg), (met.latitude2_deg, met.longitude2_deg)] {
            prop_assert!((distance_nm(place, point) - radius_nm).abs() < MILLIMETRE_NM);
            prop_assert!((aside_nm(first, first_deg, place.0, place.1)? - one_nm).abs() < MILLIMETRE_NM);
        }
        prop_assert!(met.along1_nm < met.along2_nm);
    }
    #[test]
    fn a_point_of_a_line_beside_a_course_lies_on_it_and_a_point_set_off_square_to_it_is_that_far_across(
        point in anywhere(), course in 0.0..360.0, offset_nm in -300.0..300.0, along_nm in -1000.0..1000.0, across_nm in -200.0..200.0_f64,
    ) {
        let place = offset_point(point.0, point.1, course, offset_nm, along_nm)?;
        let toward = place.direction_deg + 90.0_f64.copysign(across_nm);
        let (aside, _) = along((place.latitude_deg, place.longitude_deg), toward, across_nm.abs());
        let found = offset_cross_track(point.0, point.1, course, offset_nm, aside.0, aside.1)?;
        prop_assert!((found.cross_track_nm - across_nm).abs() < MILLIMETRE_NM, "{found:?}");
        prop_assert!((found.along_track_nm - along_nm).abs() < MILLIMETRE_NM, "{found:?}");
        let abeam = (found.abeam_latitude_deg, found.abeam_longitude_deg);
        prop_assert!(distance_nm(abeam, (place.latitude_deg, place.longitude_deg)) < MILLIMETRE_NM);
        let on = |tolerance_nm: f64, reach| {
            on_offset(point.0, point.1, course, reach, offset_nm, aside.0, aside.1, tolerance_nm)
        };
        prop_assert_eq!(on(across_nm.abs() + MILLIMETRE_NM, CourseReach::BothWays)?, 1.0);
        prop_assert_eq!(on((across_nm.abs() - MILLIMETRE_NM).max(0.0), CourseReach::BothWays)?, 0.0);
        let ahead = f64::from(along_nm > -across_nm.abs());
        prop_assert_eq!(on(across_nm.abs() + MILLIMETRE_NM, CourseReach::Onward)?, ahead);
    }

    #[test]
    fn a_turn_between_lines_beside_courses_touches_both(
        point in (-80.0..80.0, -180.0..180.0), course in 0.0..360.0, change in 20.0..150.0_f64, right in any::<bool>(),
        (one_nm, other_nm) in (-40.0..40.0, -40.0..40.0), (first_nm, second_nm) in (-300.0..300.0, -300.0..300.0), radius_nm in 0.5..40.0,
    ) {
        let side = if right { 1.0 } else { -1.0 };
        let (first, first_deg) = along(point, course, first_nm);
        let (second, second_deg) = along(point, course + side * change, second_nm);
        let turn =
            offset_tangent_turn(first.0, first.1, first_deg, one_nm, second.0, second.1, second_deg, other_nm, radius_nm)?;
        prop_assert_eq!(turn.side, side);
        let center = (turn.center_latitude_deg, turn.center_longitude_deg);
        let ends = [
            (first, first_deg, one_nm, (turn.begin_latitude_deg, turn.begin_longitude_deg)),
            (second, second_deg, other_nm, (turn.end_latitude_deg, turn.end_longitude_deg)),
        ];
        for (through, course, offset_nm, contact) in ends {
            let of_center = offset_cross_track(through.0, through.1, course, offset_nm, center.0, center.1)?;
            prop_assert!((of_center.cross_track_nm - side * radius_nm).abs() < MILLIMETRE_NM, "{turn:?}");
            let of_contact = offset_cross_track(through.0, through.1, course, offset_nm, contact.0, contact.1)?;
            prop_assert!(of_contact.cross_track_nm.abs() < MILLIMETRE_NM, "{turn:?}");
            prop_assert!((distance_nm(center, contact) - radius_nm).abs() < MILLIMETRE_NM, "{turn:?}");
        }
        // Set back by their offsets, the lines are the courses: the turn between those is the same without them.
        let courses = tangent_turn(first.0, first.1, first_deg, second.0, second.1, second_deg, radius_nm)?;
        let without = offset_tangent_turn(first.0, first.1, first_deg, 0.0, second.0, second.1, second_deg, 0.0, radius_nm)?;
        prop_assert_eq!(courses, without);
    }
}
