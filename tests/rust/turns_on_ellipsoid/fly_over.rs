//! What flying over the fix first costs, by flying it: turn over the fix, straight, and turn back.

use lubberline::value::InterceptAngle;
use lubberline::value::units::{degree, degrees, nautical_mile, second};

use super::flown::{Case, Pair};
use super::{change, random_case};

const CASES: usize = 2000;
const LONGEST_WAY_NM: f64 = 20.0;
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
    let (mut flown_cases, mut with_room, mut worst_nm) = (0, 0, 0.0_f64);
    while flown_cases < CASES {
        let case = random_case(&mut random);
        let wanted_deg = 10.0 + 35.0 * random.f64();
        let answer = change(&case).unwrap();
        let cost = answer.fly_over(InterceptAngle::new(degrees(wanted_deg)).unwrap());
        let side = (case.outbound_deg - case.inbound_deg).signum();
        let turned_deg = (case.outbound_deg - case.inbound_deg).abs() + cost.intercept_angle.get::<degree>();
        let established_nm = cost.established_past_fix.get::<nautical_mile>();
        // Beyond half a circle the short way is the other one.
        if turned_deg > 175.0 || established_nm.abs() > LONGEST_WAY_NM {
            continue;
        }
        flown_cases += 1;
        let between_deg = case.outbound_deg + side * cost.intercept_angle.get::<degree>();
        let over = Case { outbound_deg: between_deg, ..case }.fly_from(0.0, 0.0);
        let back = Case { inbound_deg: between_deg, ..case }.fly_from(0.0, 0.0);

        let (along, right) = (direction(case.outbound_deg), direction(case.outbound_deg + 90.0));
        let toward = direction(between_deg);
        let ends_nm = [*over.path_nm.last().unwrap(), *back.path_nm.last().unwrap()];
        let off_nm: f64 = ends_nm.iter().map(|end| dot(right, *end)).sum();
        let straight_nm = -off_nm / dot(right, toward);
        let forward_nm: f64 = ends_nm.iter().map(|end| dot(along, *end)).sum();
        let reached_nm = forward_nm + straight_nm * dot(along, toward);
        let overshoot_nm = over.path_nm.iter().map(|place| -side * dot(right, *place)).fold(0.0, f64::max);

        // To the point at which both ways are established on the outbound course.
        let lead_nm = answer.lead().get::<nautical_mile>();
        let rest_nm = established_nm - answer.past_fix_at_roll_out().get::<nautical_mile>();
        let by = case.fly(lead_nm);
        let hours = |distance_nm: f64, course_deg: f64| distance_nm / case.groundspeed_kt(course_deg);
        let extra_nm = lead_nm + over.length_nm + straight_nm + back.length_nm - by.length_nm - rest_nm;
        let extra_s = over.duration_s + back.duration_s - by.duration_s
            + 3600.0
                * (hours(lead_nm, case.inbound_deg) + hours(straight_nm, between_deg)
                    - hours(rest_nm, case.outbound_deg));

        let differences_nm = [
            reached_nm - established_nm,
            overshoot_nm - cost.greatest_overshoot.get::<nautical_mile>(),
            extra_nm - cost.extra_distance.get::<nautical_mile>(),
        ];
        let miss_nm = differences_nm.into_iter().fold(0.0, |most: f64, each| most.max(each.abs()));
        worst_nm = worst_nm.max(miss_nm);
        assert!(miss_nm < ALLOWED_NM, "{differences_nm:?} NM: {cost:?} for {case:?} at {wanted_deg}");
        let slow_s = 3600.0 * ALLOWED_NM
            / case.groundspeed_kt(case.outbound_deg).min(case.groundspeed_kt(between_deg));
        assert!(
            (extra_s - cost.extra_time.get::<second>()).abs() < slow_s,
            "{extra_s} s: {cost:?} for {case:?}"
        );
        // The wanted angle, or no room for it and no straight part.
        let given_way = wanted_deg - cost.intercept_angle.get::<degree>();
        with_room += usize::from(given_way < 1e-9);
        assert!(
            straight_nm > -ALLOWED_NM && (given_way < 1e-9 || straight_nm < ALLOWED_NM),
            "{straight_nm} NM: {cost:?} for {case:?}"
        );
    }
    println!(
        "{flown_cases} ways over the fix, {with_room} with a straight part; worst difference {worst_nm:.1e} NM"
    );
}
