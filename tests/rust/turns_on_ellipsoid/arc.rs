//! Turns between a radial and an arc: the one ends on the arc and along it, the other on the radial and along it.

use lubberline::Error;
use lubberline::lead::{ArcSense, RadialFlown};
use lubberline::plain::{ArcTurn, arc_entry, arc_exit};

use crate::flown::Aircraft;
use crate::{FARTHEST_NM, between, change_deg, random_aircraft, random_fix};

const CASES: usize = 3000;
/// How many are tried for each of them at most.
const MOST: usize = 20;

#[derive(Debug, Clone, Copy)]
struct Join {
    radial_deg: f64,
    flown: RadialFlown,
    arc_nm: f64,
    sense: ArcSense,
}

type Solve = fn(f64, RadialFlown, f64, ArcSense, f64, f64, f64, f64, f64, f64) -> Result<ArcTurn, Error>;

impl Join {
    fn random(random: &mut fastrand::Rng) -> Self {
        Self {
            radial_deg: between(random, 0.0, 360.0),
            flown: if random.bool() { RadialFlown::Inbound } else { RadialFlown::Outbound },
            arc_nm: between(random, 2.0, FARTHEST_NM),
            sense: if random.bool() { ArcSense::Clockwise } else { ArcSense::Counterclockwise },
        }
    }

    fn solve(&self, solve: Solve, aircraft: &Aircraft) -> Result<ArcTurn, Error> {
        let Aircraft { airspeed_kt, wind_from_deg, wind_kt, bank_limit_deg, rate_limit_deg_s, roll_deg_s } =
            *aircraft;
        let Self { radial_deg, flown, arc_nm, sense } = *self;
        solve(
            radial_deg,
            flown,
            arc_nm,
            sense,
            airspeed_kt,
            wind_from_deg,
            wind_kt,
            bank_limit_deg,
            rate_limit_deg_s,
            roll_deg_s,
        )
    }

    /// The course along the radial.
    fn radial_course_deg(&self) -> f64 {
        self.radial_deg + if self.flown == RadialFlown::Inbound { 180.0 } else { 0.0 }
    }

    /// The course along the arc where a line from the station has this direction.
    fn arc_course_deg(&self, line_deg: f64) -> f64 {
        line_deg + if self.sense == ArcSense::Clockwise { 90.0 } else { -90.0 }
    }
}

/// The change of heading a turn must make; beyond half a circle the answer says which way round.
fn heading_change_deg(from_deg: f64, to_deg: f64, answered_deg: f64) -> f64 {
    answered_deg + change_deg(from_deg + answered_deg, to_deg)
}

#[test]
fn a_turn_onto_an_arc_ends_on_it_and_along_it() {
    let mut random = fastrand::Rng::with_seed(0xa2c);
    let (mut turns, mut worst_nm, mut worst_deg) = (0, 0.0_f64, 0.0_f64);
    for _ in 0..MOST * CASES {
        if turns == CASES {
            break;
        }
        let (fix, aircraft, join) =
            (random_fix(&mut random), random_aircraft(&mut random), Join::random(&mut random));
        let Ok(turn) = join.solve(arc_entry, &aircraft) else { continue };
        if turn.distance_at_roll_in_nm > FARTHEST_NM {
            continue;
        }
        turns += 1;
        let before_deg = aircraft.heading_deg(join.radial_course_deg());
        let after_deg = aircraft.heading_deg(join.arc_course_deg(turn.radial_at_roll_out_deg));
        let turned_deg = heading_change_deg(before_deg, after_deg, turn.heading_change_deg);
        let begin = (turn.radial_at_roll_in_deg, turn.distance_at_roll_in_nm);
        let flown = aircraft.fly(fix, begin, before_deg, turned_deg);
        let end = flown.end;
        let off_radial_rad = change_deg(turn.radial_at_roll_out_deg, end.bearing_deg).to_radians();
        let miss_nm =
            (end.distance_nm - join.arc_nm).abs().max((end.distance_nm * off_radial_rad.sin()).abs());
        let miss_deg = change_deg(join.arc_course_deg(end.line_deg), flown.track_deg).abs();
        (worst_nm, worst_deg) = (worst_nm.max(miss_nm), worst_deg.max(miss_deg));
        let case = format!("{fix:?} {aircraft:?} {join:?} {turn:?} {flown:?}");
        assert!(miss_nm < 2e-4 && miss_deg < 1e-3, "{miss_nm} NM, {miss_deg} degrees off: {case}");
        assert!((turned_deg - turn.heading_change_deg).abs() < 1e-6, "{turned_deg} degrees turned: {case}");
        assert!((flown.duration_s - turn.duration_s).abs() < 1e-4, "{case}");
    }
    assert_eq!(turns, CASES);
    println!("{turns} turns; worst miss {worst_nm:.1e} NM, {worst_deg:.1e} degrees");
}

#[test]
fn a_turn_off_an_arc_ends_on_the_radial_and_along_it() {
    let mut random = fastrand::Rng::with_seed(0xa2d);
    let (mut turns, mut worst_nm, mut worst_deg) = (0, 0.0_f64, 0.0_f64);
    for _ in 0..MOST * CASES {
        if turns == CASES {
            break;
        }
        let (fix, aircraft, join) =
            (random_fix(&mut random), random_aircraft(&mut random), Join::random(&mut random));
        let Ok(turn) = join.solve(arc_exit, &aircraft) else { continue };
        if turn.distance_at_roll_out_nm > FARTHEST_NM {
            continue;
        }
        turns += 1;
        let before_deg = aircraft.heading_deg(join.arc_course_deg(turn.radial_at_roll_in_deg));
        let after_deg = aircraft.heading_deg(join.radial_course_deg());
        let turned_deg = heading_change_deg(before_deg, after_deg, turn.heading_change_deg);
        let flown = aircraft.fly(fix, (turn.radial_at_roll_in_deg, join.arc_nm), before_deg, turned_deg);
        let end = flown.end;
        let off_radial_rad = change_deg(join.radial_deg, end.bearing_deg).to_radians();
        let along_nm = end.distance_nm * off_radial_rad.cos();
        let across_nm = end.distance_nm * off_radial_rad.sin();
        let passed = change_deg(turn.radial_at_roll_out_deg, join.radial_deg).abs() > 90.0;
        let expected_nm = if passed { -turn.distance_at_roll_out_nm } else { turn.distance_at_roll_out_nm };
        let miss_nm = across_nm.abs().max((along_nm - expected_nm).abs());
        let miss_deg = change_deg(join.radial_course_deg(), flown.track_deg).abs();
        (worst_nm, worst_deg) = (worst_nm.max(miss_nm), worst_deg.max(miss_deg));
        let case = format!("{fix:?} {aircraft:?} {join:?} {turn:?} {flown:?}");
        assert!(miss_nm < 2e-4 && miss_deg < 1e-3, "{miss_nm} NM, {miss_deg} degrees off: {case}");
        assert!((turned_deg - turn.heading_change_deg).abs() < 1e-6, "{turned_deg} degrees turned: {case}");
    }
    assert_eq!(turns, CASES);
    println!("{turns} turns; worst miss {worst_nm:.1e} NM, {worst_deg:.1e} degrees");
}
