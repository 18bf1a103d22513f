//! Turns onto and off an arc: mirrored and turned.

use lubberline::Error;
use lubberline::lead::{ArcSense, RadialFlown};
use lubberline::plain::{ArcTurn, arc_entry, arc_exit};
use proptest::prelude::*;

use crate::config;

/// A turn between a radial and an arc in wind.
#[derive(Debug, Clone, Copy)]
struct Join {
    onto: bool,
    radial_deg: f64,
    flown: RadialFlown,
    arc_nm: f64,
    sense: ArcSense,
    airspeed_kt: f64,
    wind_from_deg: f64,
    wind_kt: f64,
}

impl Join {
    fn solve(self) -> Result<ArcTurn, Error> {
        let solve = if self.onto { arc_entry } else { arc_exit };
        let Self { radial_deg, flown, arc_nm, sense, airspeed_kt, wind_from_deg, wind_kt, .. } = self;
        solve(radial_deg, flown, arc_nm, sense, airspeed_kt, wind_from_deg, wind_kt, 25.0, 3.0, 5.0)
    }

    fn mirrored(self) -> Self {
        let sense =
            if self.sense == ArcSense::Clockwise { ArcSense::Counterclockwise } else { ArcSense::Clockwise };
        Self { radial_deg: -self.radial_deg, wind_from_deg: -self.wind_from_deg, sense, ..self }
    }

    fn turned(self, by_deg: f64) -> Self {
        Self { radial_deg: self.radial_deg + by_deg, wind_from_deg: self.wind_from_deg + by_deg, ..self }
    }
}

fn join() -> impl Strategy<Value = Join> {
    let flown = prop_oneof![Just(RadialFlown::Inbound), Just(RadialFlown::Outbound)];
    let sense = prop_oneof![Just(ArcSense::Clockwise), Just(ArcSense::Counterclockwise)];
    // Arcs with room for the turn in such a wind.
    let air = (60.0..400.0, 0.0..360.0, 0.0..0.4, 1.0..8.0);
    (any::<bool>(), 0.0..360.0, flown, sense, air).prop_map(
        |(onto, radial_deg, flown, sense, (airspeed_kt, wind_from_deg, share, wide))| Join {
            onto,
            radial_deg,
            flown,
            arc_nm: wide * 8e-5 * airspeed_kt * airspeed_kt + 3.0,
            sense,
            airspeed_kt,
            wind_from_deg,
            wind_kt: share * airspeed_kt,
        },
    )
}

fn unchanged(one: &ArcTurn, other: &ArcTurn) -> bool {
    let numbers = |turn: &ArcTurn| {
        [
            turn.distance_at_roll_in_nm,
            turn.distance_at_roll_out_nm,
            turn.angle_at_station_deg,
            turn.duration_s,
        ]
    };
    numbers(one).into_iter().zip(numbers(other)).all(|(one, other)| (one - other).abs() < 1e-6)
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn mirrored_and_turned(join in join(), by_deg in -720.0..720.0) {
        let answer = join.solve();
        for other in [join.mirrored(), join.turned(by_deg)] {
            match (answer, other.solve()) {
                (Ok(one), Ok(two)) => prop_assert!(unchanged(&one, &two), "{one:?} {two:?}"),
                (one, two) => prop_assert!(one.is_err() && two.is_err(), "{one:?} {two:?}"),
            }
        }
    }
}
