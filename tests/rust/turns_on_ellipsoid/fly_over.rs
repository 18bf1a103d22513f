//! What flying over the fix first costs, by flying it: turn over the fix, straight, and turn back.

use lubberline::value::InterceptAngle;
use lubberline::value::units::{degree, degrees, nautical_mile, second};

use crate::course_change::{change, random_courses};
use crate::flown::Pair;
use crate::{FARTHEST_NM, between, random_aircraft, random_fix};

const CASES: usize = 2000;
/// How many are tried for each of them at most.
const MOST: usize = 20;
const ALLOWED_NM: f64 = 2e-4;

fn direction(course_deg: f64) -> Pair {
    (course_deg.to_radians().cos(), course_deg.to_radians().sin())
}

fn dot(one: Pair, other: Pair) -> f64 {
    one.0 * other.0 + one.1 * other.1
}

#[test]
fn an_aircraft_that_flies_over_the_fix_pays_what_was_said() {
    let mut random = fastrand::Rng::with_seed(0xf170);
    let (mut ways, mut with_room, mut worst_nm) = (0, 0, 0.0_f64);
    for _ in 0..MOST * CASES {
        if ways == CASES {
            break;
        }
        let (fix, aircraft, (inbound_deg, outbound_deg)) =
            (random_fix(&mut random), random_aircraft(&mut random), random_courses(&mut random));
        let wanted_deg = between(&mut random, 10.0, 45.0);
        let answer = change(&aircraft, (inbound_deg, outbound_deg)).unwrap();
        let cost = answer.fly_over(InterceptAngle::new(degrees(wanted_deg)).unwrap());
        let established_nm = cost.established_past_fix.get::<nautical_mile>();
        if established_nm.abs() > FARTHEST_NM {
            continue;
        }
        ways += 1;
        let case = format!("{cost:?} for {fix:?} {aircraft:?} {inbound_deg} {outbound_deg} at {wanted_deg}");

        let side = (outbound_deg - inbound_deg).signum();
        let between_deg = outbound_deg + side * cost.intercept_angle.get::<degree>();
        let [before_deg, between_heading_deg, after_deg] =
            [inbound_deg, between_deg, outbound_deg].map(|course| aircraft.heading_deg(course));
        let turn = |begin, from_deg: f64, to_deg: f64| aircraft.fly(fix, begin, from_deg, to_deg - from_deg);
        let over = turn((0.0, 0.0), before_deg, between_heading_deg);
        let back = turn((0.0, 0.0), between_heading_deg, after_deg);

        // The straight part takes away what the two turns leave across the outbound course.
        let (along, right) = (direction(outbound_deg), direction(outbound_deg + 90.0));
        let toward = direction(between_deg);
        let ends_nm = [*over.path_nm.last().unwrap(), *back.path_nm.last().unwrap()];
        let off_nm: f64 = ends_nm.iter().map(|end| dot(right, *end)).sum();
        let straight_nm = -off_nm / dot(right, toward);
        let forward_nm: f64 = ends_nm.iter().map(|end| dot(along, *end)).sum();
        let reached_nm = forward_nm + straight_nm * dot(along, toward);
        let overshoot_nm = over.path_nm.iter().map(|place| -side * dot(right, *place)).fold(0.0, f64::max);

        // Both ways to the point at which both are established on the outbound course.
        let lead_nm = answer.lead().get::<nautical_mile>();
        let rest_nm = established_nm - answer.past_fix_at_roll_out().get::<nautical_mile>();
        let by = turn((inbound_deg + 180.0, lead_nm), before_deg, after_deg);
        let seconds =
            |distance_nm: f64, course_deg: f64| 3600.0 * distance_nm / aircraft.groundspeed_kt(course_deg);
        let extra_nm = lead_nm + over.length_nm + straight_nm + back.length_nm - by.length_nm - rest_nm;
        let extra_s = seconds(lead_nm, inbound_deg)
            + over.duration_s
            + seconds(straight_nm, between_deg)
            + back.duration_s
            - by.duration_s
            - seconds(rest_nm, outbound_deg);

        let differences_nm = [
            reached_nm - established_nm,
            overshoot_nm - cost.greatest_overshoot.get::<nautical_mile>(),
            extra_nm - cost.extra_distance.get::<nautical_mile>(),
        ];
        let miss_nm = differences_nm.into_iter().fold(0.0, |most: f64, each| most.max(each.abs()));
        worst_nm = worst_nm.max(miss_nm);
        assert!(miss_nm < ALLOWED_NM, "{differences_nm:?} NM: {case}");
        let off_s = extra_s - cost.extra_time.get::<second>();
        assert!(
            off_s.abs() < seconds(ALLOWED_NM, outbound_deg).max(seconds(ALLOWED_NM, between_deg)),
            "{off_s} s: {case}"
        );
        // The wanted angle, or no room for it and no straight part.
        let as_wanted = (wanted_deg - cost.intercept_angle.get::<degree>()).abs() < 1e-9;
        with_room += usize::from(as_wanted);
        let room = straight_nm > -ALLOWED_NM && (as_wanted || straight_nm < ALLOWED_NM);
        assert!(room, "{straight_nm} NM: {case}");
    }
    assert_eq!(ways, CASES);
    println!(
        "{ways} ways over the fix, {with_room} with a straight part; worst difference {worst_nm:.1e} NM"
    );
}
