//! Turns and the lead: mirrored, turned, scaled, and undone.

use lubberline::plain::*;
use proptest::prelude::*;

use crate::{apart_deg, config};

fn input() -> impl Strategy<Value = CourseChangeInput> {
    let courses = (0.0..360.0_f64, 5.0..150.0, prop_oneof![Just(1.0), Just(-1.0)]);
    let air = (60.0..600.0, 0.0..360.0, 0.0..0.5);
    let limits = (10.0..45.0, 1.0..6.0, prop_oneof![Just(f64::INFINITY), 1.0..15.0], 0.0..40_000.0);
    (courses, air, limits).prop_map(
        |((inbound, change, side), (airspeed, from, share), (bank, rate, roll, height))| CourseChangeInput {
            wind_from_deg: from,
            wind_speed_kt: share * airspeed,
            bank_limit_deg: bank,
            turn_rate_limit_deg_per_s: rate,
            roll_rate_deg_per_s: roll,
            height_above_station_ft: height,
            ..CourseChangeInput::new(inbound, inbound + side * change, airspeed)
        },
    )
}

/// The lengths and times of an answer, which neither a mirror nor a turned map changes.
fn lengths(answer: &CourseChangeOutput) -> [f64; 12] {
    [
        answer.lead_nm,
        answer.dme_at_roll_in_nm,
        answer.past_fix_at_roll_out_nm,
        answer.dme_at_roll_out_nm,
        answer.duration_s,
        answer.turn_length_nm,
        answer.bank_deg,
        answer.radius_nm,
        answer.closest_approach_nm,
        answer.groundspeed_before_kt,
        answer.groundspeed_after_kt,
        answer.fly_over.greatest_overshoot_nm,
    ]
}

fn unchanged(one: &CourseChangeOutput, other: &CourseChangeOutput) -> bool {
    let pairs = lengths(one).into_iter().zip(lengths(other));
    pairs.into_iter().all(|(one, other)| (one - other).abs() <= 1e-7 * one.abs().max(1.0))
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn a_mirror_turns_the_other_way_and_changes_nothing_else(input in input()) {
        let answer = course_change(&input)?;
        let mirrored = course_change(&CourseChangeInput {
            inbound_course_deg: -input.inbound_course_deg,
            outbound_course_deg: -input.outbound_course_deg,
            wind_from_deg: -input.wind_from_deg,
            ..input
        })?;
        prop_assert!(unchanged(&answer, &mirrored), "{answer:?} {mirrored:?}");
        prop_assert!((answer.heading_change_deg + mirrored.heading_change_deg).abs() < 1e-9);
        prop_assert!(apart_deg(answer.radial_at_roll_in_deg, -mirrored.radial_at_roll_in_deg) < 1e-9);
    }

    #[test]
    fn a_turned_map_changes_nothing(input in input(), turned in -720.0..720.0) {
        let answer = course_change(&input)?;
        let other = course_change(&CourseChangeInput {
            inbound_course_deg: input.inbound_course_deg + turned,
            outbound_course_deg: input.outbound_course_deg + turned,
            wind_from_deg: input.wind_from_deg + turned,
            ..input
        })?;
        prop_assert!(unchanged(&answer, &other), "{answer:?} {other:?}");
        prop_assert!(apart_deg(answer.heading_before_deg + turned, other.heading_before_deg) < 1e-9);
    }

    /// Flown backwards in the opposite wind, the roll-out is the roll-in.
    #[test]
    fn backwards_the_roll_out_is_the_roll_in(input in input()) {
        let answer = course_change(&input)?;
        let backwards = course_change(&CourseChangeInput {
            inbound_course_deg: input.outbound_course_deg + 180.0,
            outbound_course_deg: input.inbound_course_deg + 180.0,
            wind_from_deg: input.wind_from_deg + 180.0,
            ..input
        })?;
        prop_assert!((answer.lead_nm - backwards.past_fix_at_roll_out_nm).abs() < 1e-8);
        prop_assert!((answer.past_fix_at_roll_out_nm - backwards.lead_nm).abs() < 1e-8);
        prop_assert!((answer.turn_length_nm - backwards.turn_length_nm).abs() < 1e-7);
        prop_assert!((answer.closest_approach_nm - backwards.closest_approach_nm).abs() < 1e-7);
    }

    /// The shorter functions are parts of the whole answer.
    #[test]
    fn the_short_answers_are_those_of_the_long_one(input in input()) {
        let answer = course_change(&input)?;
        let CourseChangeInput { inbound_course_deg, outbound_course_deg, true_airspeed_kt, .. } = input;
        let lead = lead_nm(
            inbound_course_deg, outbound_course_deg, true_airspeed_kt, input.wind_from_deg, input.wind_speed_kt,
            input.bank_limit_deg, input.turn_rate_limit_deg_per_s, input.roll_rate_deg_per_s,
        )?;
        prop_assert_eq!(lead, answer.lead_nm);
        let slant_nm = slant_range_nm(lead.abs(), input.height_above_station_ft)?;
        prop_assert!((slant_nm - answer.dme_at_roll_in_nm).abs() < 1e-10);
        let rolled = rolled_turn(
            true_airspeed_kt, answer.heading_change_deg, input.bank_limit_deg, input.turn_rate_limit_deg_per_s,
            input.roll_rate_deg_per_s,
        )?;
        prop_assert!((rolled.duration_s - answer.duration_s).abs() < 1e-8);
        prop_assert!(answer.bank_deg <= input.bank_limit_deg * (1.0 + 1e-12));
        let rate = turn_rate_deg_per_s(true_airspeed_kt, answer.bank_deg)?;
        prop_assert!(rate <= input.turn_rate_limit_deg_per_s * (1.0 + 1e-12));
    }

    /// Rolling takes room: a slower roll begins earlier in still air.
    #[test]
    fn a_slower_roll_begins_earlier(input in input(), roll in 1.0..10.0, slower in 0.1..0.9) {
        let calm = CourseChangeInput { wind_speed_kt: 0.0, ..input };
        let quick = course_change(&CourseChangeInput { roll_rate_deg_per_s: roll, ..calm })?;
        let slow = course_change(&CourseChangeInput { roll_rate_deg_per_s: roll * slower, ..calm })?;
        prop_assert!(slow.lead_nm > quick.lead_nm, "{} NM, {} NM", slow.lead_nm, quick.lead_nm);
    }

    /// The fly-by is the shorter way, and the quicker, whatever the wind.
    #[test]
    fn flying_over_the_fix_never_costs_less_than_nothing(input in input()) {
        let cost = course_change(&input)?.fly_over;
        prop_assert!(cost.extra_distance_nm > 0.0 && cost.extra_time_s > 0.0, "{cost:?}");
        prop_assert!(cost.greatest_overshoot_nm > 0.0, "{cost:?}");
        prop_assert!(cost.intercept_angle_deg <= input.intercept_angle_deg, "{cost:?}");
    }

    /// In still air the lead grows with the speed and with the change, and shrinks with the bank.
    #[test]
    fn in_still_air_the_lead_grows_with_speed_and_change_and_shrinks_with_bank(
        input in input(), more in 1.001..1.2_f64
    ) {
        let calm = CourseChangeInput { wind_speed_kt: 0.0, ..input };
        let lead_nm = |input: CourseChangeInput| course_change(&input).map(|answer| answer.lead_nm);
        let usual_nm = lead_nm(calm)?;
        let change_deg = more * (calm.outbound_course_deg - calm.inbound_course_deg);
        let outbound_course_deg = calm.inbound_course_deg + change_deg;
        if change_deg.abs() < 175.0 {
            let wider_nm = lead_nm(CourseChangeInput { outbound_course_deg, ..calm })?;
            prop_assert!(wider_nm > usual_nm);
        }
        let faster_nm = lead_nm(CourseChangeInput { true_airspeed_kt: more * calm.true_airspeed_kt, ..calm })?;
        prop_assert!(faster_nm > usual_nm);
        // Where another limit governs, the bank limit changes nothing.
        let banked_nm = lead_nm(CourseChangeInput { bank_limit_deg: more * calm.bank_limit_deg, ..calm })?;
        prop_assert!(banked_nm <= usual_nm * (1.0 + 1e-12));
    }

    /// For a right angle, what the air carries onward while turning is added to the lead.
    #[test]
    fn a_tailwind_begins_the_turn_earlier_and_a_headwind_later(
        airspeed in 90.0..500.0, share in 0.01..0.4, side in prop_oneof![Just(1.0), Just(-1.0)]
    ) {
        let calm = CourseChangeInput::new(0.0, 90.0 * side, airspeed);
        let tail = CourseChangeInput { wind_from_deg: 180.0, wind_speed_kt: share * airspeed, ..calm };
        let head = CourseChangeInput { wind_from_deg: 0.0, ..tail };
        let (calm, tail, head) = (course_change(&calm)?, course_change(&tail)?, course_change(&head)?);
        prop_assert!(tail.lead_nm > calm.lead_nm && calm.lead_nm > head.lead_nm);
    }

    #[test]
    fn banks_there_and_back(airspeed_kt in 40.0..700.0, bank_deg in 1.0..80.0) {
        let radius_nm = turn_radius_nm(airspeed_kt, bank_deg)?;
        prop_assert!((bank_for_radius_deg(airspeed_kt, radius_nm)? - bank_deg).abs() < 1e-9);
        let rate = turn_rate_deg_per_s(airspeed_kt, bank_deg)?;
        prop_assert!((bank_for_rate_deg(airspeed_kt, rate)? - bank_deg).abs() < 1e-9);
        prop_assert!((radius_at_rate_nm(airspeed_kt, rate)? / radius_nm - 1.0).abs() < 1e-12);
        prop_assert!((bank_for_load_factor_deg(load_factor(bank_deg)?)? - bank_deg).abs() < 1e-7);
    }
}
