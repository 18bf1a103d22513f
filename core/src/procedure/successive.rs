//! Two turns one after the other: whether the leg between their fixes is long enough, and if not, what is possible.

use super::legs::Passage;
use crate::Error;
use crate::lead::{CourseChange, TurnSide};
use crate::numeric::root_between;
use crate::plane::Plane;
use crate::turn::TurnLimits;
use crate::value::units::{
    Length, Time, degrees, degrees_per_second, knot, knots, meter, metres, nautical_mile,
};
use crate::value::{Bank, Bearing, GroundDistance, InterceptAngle, North, TrueAirspeed, TurnRate};
use crate::wind::Wind;

/// The angle at which the leg is intercepted after flying over its first fix, in degrees.
///
/// Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 2 Chapter 1 (from memory).
const FLY_OVER_INTERCEPT_DEG: f64 = 30.0;

/// By what the airspeed grows from one trial to the next, and the bank in degrees.
const AIRSPEED_STEP: f64 = 1.04;
const BANK_STEP_DEG: f64 = 1.0;

/// What a leg lacks on which the turns cannot be flown at all, in metres.
const TOO_SHORT_M: f64 = -1e8;

/// Below this no airspeed is tried, in knots.
const LEAST_AIRSPEED_KT: f64 = 1.0;

/// A leg between two turning fixes: the course to the first, the leg, the course from the second.
///
/// The first turn ends so far past its fix, the second begins so far before its own; what the leg has left between is the
/// spare distance. At a fix that is flown over, the turn begins over it: after the first the leg is intercepted at 30 degrees,
/// and the second takes nothing of the leg.
///
/// # Degenerate cases
/// Without a change of course at a fix, its turn takes nothing of the leg. In a wind in which no way back onto the leg exists after
/// flying over the first fix, the spare distance is not a number, and the leg counts as too short.
///
/// # Source
/// Derived from [`CourseChange`] and [`crate::lead::FlyOver`]; the sum of two distances as in ICAO Doc 8168 Vol II (5th ed. 2006),
/// Part III Section 2 Chapter 1, there without wind and roll ([`super::stabilization_distance`]).
///
/// # Example
/// ```
/// use lubberline::procedure::{SuccessiveTurns, legs::Passage};
/// use lubberline::turn::TurnLimits;
/// use lubberline::value::{GroundDistance, TrueAirspeed, TrueBearing, units::*};
/// use lubberline::wind::Wind;
/// let course = |value| TrueBearing::new(degrees(value));
/// let turns = SuccessiveTurns {
///     inbound: course(40.0)?,
///     leg: course(130.0)?,
///     outbound: course(60.0)?,
///     length: GroundDistance::new(nautical_miles(8.0))?,
///     first: Passage::FlyBy,
///     second: Passage::FlyBy,
///     true_airspeed: TrueAirspeed::new(knots(400.0))?,
///     wind: Wind::calm(),
///     limits: TurnLimits::default(),
/// };
/// assert_eq!(format!("{:.2}", turns.spare()?.get::<nautical_mile>()), "-1.08");
/// assert_eq!(format!("{:.0}", turns.largest_true_airspeed().map_or(f64::NAN, |speed| speed.value().get::<knot>())), "375");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SuccessiveTurns<N: North> {
    /// Course flown to the first fix.
    pub inbound: Bearing<N>,
    /// Course from the first fix to the second.
    pub leg: Bearing<N>,
    /// Course flown from the second fix.
    pub outbound: Bearing<N>,
    /// Distance between the two.
    pub length: GroundDistance,
    /// How the first fix is passed.
    pub first: Passage,
    /// How the second fix is passed.
    pub second: Passage,
    /// True airspeed.
    pub true_airspeed: TrueAirspeed,
    /// Wind.
    pub wind: Wind<N>,
    /// Limits of both turns.
    pub limits: TurnLimits,
}

/// One turn instead of two, at the crossing of the course to the first fix with the course from the second.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SingleTurn<N: North> {
    /// Where the courses cross, past the first fix along the course to it; negative before it.
    pub past_first: Length,
    /// Where the courses cross, before the second fix along the course from it; negative past it.
    pub before_second: Length,
    /// The turn there.
    pub turn: CourseChange<N>,
}

impl<N: North> SuccessiveTurns<N> {
    /// The turn at the first fix.
    ///
    /// # Errors
    /// As [`CourseChange::new`].
    pub fn first_turn(&self) -> Result<CourseChange<N>, Error> {
        self.turn(self.inbound, self.leg)
    }

    /// The turn at the second fix.
    ///
    /// # Errors
    /// As [`CourseChange::new`].
    pub fn second_turn(&self) -> Result<CourseChange<N>, Error> {
        self.turn(self.leg, self.outbound)
    }

    /// Distance past the first fix, along the leg, at which its turn is done.
    ///
    /// # Errors
    /// As [`CourseChange::new`].
    pub fn past_first(&self) -> Result<Length, Error> {
        let turn = self.first_turn()?;
        Ok(match self.first {
            Passage::FlyBy => turn.past_fix_at_roll_out(),
            Passage::FlyOver => {
                let intercept = InterceptAngle::derived(degrees(FLY_OVER_INTERCEPT_DEG));
                turn.fly_over(intercept).established_past_fix
            }
        })
    }

    /// Distance before the second fix, along the leg, at which its turn begins.
    ///
    /// # Errors
    /// As [`CourseChange::new`].
    pub fn before_second(&self) -> Result<Length, Error> {
        let turn = self.second_turn()?;
        Ok(match self.second {
            Passage::FlyBy => turn.lead(),
            Passage::FlyOver => metres(0.0),
        })
    }

    /// What the leg has left between the two turns; negative where it is too short.
    ///
    /// # Errors
    /// As [`CourseChange::new`].
    pub fn spare(&self) -> Result<Length, Error> {
        Ok(self.length.value() - self.past_first()? - self.before_second()?)
    }

    /// Time flown straight between the two turns; negative where the leg is too short.
    ///
    /// # Errors
    /// As [`CourseChange::new`].
    pub fn straight_time(&self) -> Result<Time, Error> {
        Ok(self.spare()? / self.first_turn()?.after().groundspeed.value())
    }

    /// The largest true airspeed, with the same wind and limits, at which the leg is long enough.
    ///
    /// It is looked for from the airspeed given, downward where the leg is too short and upward where it is long enough, in steps
    /// of four percent, and then refined: the nearest one in that direction. None where no airspeed up to the limit of the
    /// type is too large, or none is small enough.
    pub fn largest_true_airspeed(&self) -> Option<TrueAirspeed> {
        let spare_m = |airspeed_kt: f64| {
            Self { true_airspeed: TrueAirspeed::derived(knots(airspeed_kt)), ..*self }.spare_m()
        };
        let given_kt = self.true_airspeed.value().get::<knot>();
        let enough = spare_m(given_kt) >= 0.0;
        let step = if enough { AIRSPEED_STEP } else { 1.0 / AIRSPEED_STEP };
        let mut near_kt = given_kt;
        loop {
            let far_kt = near_kt * step;
            if !(LEAST_AIRSPEED_KT..=5000.0).contains(&far_kt) {
                return None;
            }
            if (spare_m(far_kt) >= 0.0) != enough {
                let (low_kt, high_kt) = (near_kt.min(far_kt), near_kt.max(far_kt));
                return TrueAirspeed::new(knots(root_between(low_kt, high_kt, spare_m))).ok();
            }
            near_kt = far_kt;
        }
    }

    /// The least bank, with no limit of the rate of turn, at which the leg is long enough.
    ///
    /// None where no bank suffices, and where every bank does, as with no change of course.
    pub fn bank_needed(&self) -> Option<Bank> {
        let spare_m = |bank_deg: f64| {
            let limits = TurnLimits {
                bank: Bank::derived(degrees(bank_deg)),
                rate: TurnRate::derived(degrees_per_second(f64::INFINITY)),
                ..self.limits
            };
            Self { limits, ..*self }.spare_m()
        };
        let mut low_deg = BANK_STEP_DEG / 10.0;
        if spare_m(low_deg) >= 0.0 {
            return None;
        }
        loop {
            let high_deg = if low_deg < BANK_STEP_DEG { BANK_STEP_DEG } else { low_deg + BANK_STEP_DEG };
            if high_deg >= 90.0 {
                return None;
            }
            if spare_m(high_deg) >= 0.0 {
                return Bank::new(degrees(root_between(low_deg, high_deg, spare_m))).ok();
            }
            low_deg = high_deg;
        }
    }

    /// One turn from the course to the first fix onto the course from the second, which passes neither fix.
    ///
    /// None for parallel courses, and for a turn that cannot be flown.
    pub fn single_turn(&self) -> Option<SingleTurn<N>> {
        let along = |bearing: Bearing<N>| Plane::along_deg(self.inbound.change_to(bearing).degrees());
        let (leg_m, outbound) = (along(self.leg) * self.length.value().get::<meter>(), along(self.outbound));
        let turn = self.turn(self.inbound, self.outbound).ok()?;
        // From the first fix: `past` along the first axis, then on along the outbound course to the second fix.
        let before_m = leg_m.east / outbound.east;
        let past_m = leg_m.north - outbound.north * before_m;
        (before_m.is_finite() && metres(before_m.abs()).get::<nautical_mile>() <= 5000.0)
            .then_some(SingleTurn { past_first: metres(past_m), before_second: metres(before_m), turn })
    }

    fn turn(&self, from: Bearing<N>, onto: Bearing<N>) -> Result<CourseChange<N>, Error> {
        CourseChange::new(from, onto, self.true_airspeed, self.wind, &self.limits, TurnSide::Shortest)
    }

    /// Where the turns cannot be flown, the leg counts as too short by more than any.
    fn spare_m(&self) -> f64 {
        let spare_m = self.spare().map_or(f64::NAN, |spare| spare.get::<meter>());
        if spare_m.is_nan() { TOO_SHORT_M } else { spare_m }
    }

    /// Whether the leg is long enough for both turns.
    pub fn fits(&self) -> bool {
        self.spare_m() >= 0.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::turn::radius;
    use crate::value::units::nautical_miles;
    use crate::value::{RollRate, TrueBearing, TrueNorth, WindSpeed};

    fn turns(length_nm: f64, wind_kt: f64, roll: RollRate) -> SuccessiveTurns<TrueNorth> {
        SuccessiveTurns {
            inbound: TrueBearing::from_degrees(350.0),
            leg: TrueBearing::from_degrees(70.0),
            outbound: TrueBearing::from_degrees(10.0),
            length: GroundDistance::new(nautical_miles(length_nm)).unwrap(),
            first: Passage::FlyBy,
            second: Passage::FlyBy,
            true_airspeed: TrueAirspeed::new(knots(420.0)).unwrap(),
            wind: Wind {
                from: TrueBearing::from_degrees(250.0),
                speed: WindSpeed::new(knots(wind_kt)).unwrap(),
            },
            limits: TurnLimits { roll, ..TurnLimits::default() },
        }
    }

    #[test]
    fn in_calm_air_with_an_instant_roll_the_leads_are_those_of_turn_anticipation() {
        let turns = turns(9.0, 0.0, RollRate::instant());
        let (first_deg, second_deg) = (80.0_f64, -60.0_f64);
        let radius_m = radius(turns.true_airspeed, turns.limits.bank).get::<meter>();
        let leads_m = radius_m
            * ((first_deg.abs() / 2.0).to_radians().tan() + (second_deg.abs() / 2.0).to_radians().tan());
        let expected_m = nautical_miles(9.0).get::<meter>() - leads_m;
        assert!((turns.spare().unwrap().get::<meter>() - expected_m).abs() < 1e-6);
        // The leads go with the square of the airspeed.
        let largest = turns.largest_true_airspeed().unwrap().value().get::<knot>();
        let expected_kt = 420.0 * (nautical_miles(9.0).get::<meter>() / leads_m).sqrt();
        assert!((largest - expected_kt).abs() < 1e-6, "{largest} {expected_kt}");
        let tangent = turns.bank_needed().unwrap().value().tan().value;
        let expected = turns.limits.bank.value().tan().value * leads_m / nautical_miles(9.0).get::<meter>();
        assert!((tangent - expected).abs() < 1e-9);
    }

    #[test]
    fn at_what_is_possible_nothing_is_to_spare() {
        for length_nm in [7.0, 20.0] {
            for (first, second) in [
                (Passage::FlyBy, Passage::FlyBy),
                (Passage::FlyOver, Passage::FlyBy),
                (Passage::FlyOver, Passage::FlyOver),
            ] {
                let given =
                    SuccessiveTurns { first, second, ..turns(length_nm, 60.0, TurnLimits::default().roll) };
                let airspeed = given.largest_true_airspeed().unwrap();
                assert_eq!(airspeed > given.true_airspeed, given.fits(), "{length_nm}");
                let spare_m = SuccessiveTurns { true_airspeed: airspeed, ..given }.spare_m();
                assert!(spare_m.abs() < 1e-3, "{length_nm} {first:?} {second:?}: {spare_m}");
            }
        }
    }

    #[test]
    fn the_single_turn_is_where_the_courses_cross() {
        let turns = turns(6.0, 0.0, RollRate::instant());
        let single = turns.single_turn().unwrap();
        let nm = |length: Length| length.get::<nautical_mile>();
        let crossing = Plane::along_deg(turns.inbound.degrees()) * nm(single.past_first);
        let second = Plane::along_deg(turns.leg.degrees()) * 6.0;
        let back = second - Plane::along_deg(turns.outbound.degrees()) * nm(single.before_second);
        assert!((crossing - back).length() < 1e-12);
        let parallel = SuccessiveTurns { outbound: turns.inbound, ..turns };
        assert_eq!(parallel.single_turn(), None);
    }

    #[test]
    fn where_no_airspeed_is_slow_enough_none_is_given() {
        let turns = SuccessiveTurns { first: Passage::FlyOver, ..turns(1.0, 60.0, RollRate::instant()) };
        assert_eq!((turns.fits(), turns.largest_true_airspeed()), (false, None));
    }

    #[test]
    fn without_a_change_of_course_every_bank_suffices() {
        let straight = TrueBearing::from_degrees(70.0);
        let turns = SuccessiveTurns {
            inbound: straight,
            outbound: straight,
            ..turns(6.0, 30.0, RollRate::instant())
        };
        assert_eq!((turns.bank_needed(), turns.largest_true_airspeed()), (None, None));
        assert!((turns.spare().unwrap().get::<nautical_mile>() - 6.0).abs() < 1e-12);
    }
}
