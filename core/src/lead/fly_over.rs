//! What flying over the fix before turning would cost.

use super::CourseChange;
use super::recapture::{Recapture, Recaptured};
use crate::plane::Plane;
use crate::turn::{RollHeadings, RolledTurn};
use crate::value::units::{Angle, Length, Time, degree, degrees, metres, radian, seconds};
use crate::value::{InterceptAngle, North};

/// The cost of turning only over the fix, and coming back to the outbound course at an intercept angle.
///
/// The aircraft rolls into its turn over the fix, turns through the outbound course to the intercept course, flies straight,
/// and leads its turn back onto the outbound course. It is compared with [`CourseChange`] from where that one begins its turn
/// to a common point of the outbound course.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FlyOver {
    /// The intercept angle that was flown: the chosen one, or the largest for which there is room.
    pub intercept_angle: Angle,
    /// The greatest distance from the outbound course on its outer side.
    pub greatest_overshoot: Length,
    /// Distance past the fix at which the aircraft is established on the outbound course, wings level.
    pub established_past_fix: Length,
    /// Distance over the ground flown in addition.
    pub extra_distance: Length,
    /// Time flown in addition.
    pub extra_time: Time,
    /// Time from the fix to there. [`CourseChange::fly_over_path`] gives the way.
    pub duration: Time,
}

impl FlyOver {
    /// Where no way back exists: in a wind in which no course near the outbound one can be held.
    fn unknown() -> Self {
        let length = metres(f64::NAN);
        Self {
            intercept_angle: degrees(f64::NAN),
            greatest_overshoot: length,
            established_past_fix: length,
            extra_distance: length,
            extra_time: seconds(f64::NAN),
            duration: seconds(f64::NAN),
        }
    }
}

impl<N: North> CourseChange<N> {
    /// What flying over the fix first would cost, with the way back at an intercept angle (30 degrees is common practice).
    ///
    /// Where the overshoot leaves no room for that angle, the largest that fits is flown, and given back.
    ///
    /// # Degenerate cases
    /// No change of course costs nothing. If the intercept course cannot be held in the wind, a smaller angle is flown.
    ///
    /// # Source
    /// Derived; the sequence of turns is that of the fly-over waypoint of ICAO Doc 8168 Vol II (5th ed. 2006), Part III
    /// Section 2 Chapter 1 (from memory), here with wind and roll.
    pub fn fly_over(&self, intercept: InterceptAngle) -> FlyOver {
        self.turn_length_and_fly_over(intercept).1
    }

    /// [`CourseChange::turn_length`] and [`CourseChange::fly_over`], whose turns mostly share their rolls.
    pub(crate) fn turn_length_and_fly_over(&self, intercept: InterceptAngle) -> (Length, FlyOver) {
        let rolls = self.turn.roll_headings();
        let turn_length_m = self.turn.ground_length_like_m(&rolls, self.heading, self.wind_m_s);
        (metres(turn_length_m), self.cost(intercept, turn_length_m, &rolls))
    }

    fn cost(&self, intercept: InterceptAngle, turn_length_m: f64, rolls: &RollHeadings) -> FlyOver {
        if self.change_deg == 0.0 {
            return FlyOver {
                intercept_angle: intercept.value(),
                greatest_overshoot: metres(0.0),
                established_past_fix: metres(0.0),
                extra_distance: metres(0.0),
                extra_time: seconds(0.0),
                duration: seconds(0.0),
            };
        }
        let Some(flown) = self.way_over(intercept, rolls) else { return FlyOver::unknown() };

        let beyond_m = flown.established_m - self.past_fix_m;
        let fly_by_s = self.turn.duration_s() + beyond_m / self.groundspeed_after_m_s();
        let fly_by_m = turn_length_m + beyond_m;
        FlyOver {
            intercept_angle: degrees(flown.angle_deg),
            greatest_overshoot: metres(self.greatest_overshoot_m(&flown.first)),
            established_past_fix: metres(flown.established_m),
            extra_distance: metres(self.lead_m + flown.length_m - fly_by_m),
            extra_time: seconds(self.lead_m / self.groundspeed_before_m_s() + flown.duration_s - fly_by_s),
            duration: seconds(flown.duration_s),
        }
    }

    /// The way from the fix back onto the outbound course; none if no course near it can be held in the wind.
    pub(super) fn way_over(&self, intercept: InterceptAngle, rolls: &RollHeadings) -> Option<Recaptured<N>> {
        let way = Recapture {
            from_crab: self.before,
            from_heading: self.heading,
            onto: self.outbound,
            onto_crab: self.after,
            onto_along: self.onward,
            change_deg: self.change_deg,
            side: self.change_deg.signum(),
            place_m: Plane::ZERO,
            true_airspeed: self.true_airspeed,
            wind: self.wind,
            wind_m_s: self.wind_m_s,
            like: &self.turn,
            rolls,
        };
        if self.change_deg == 0.0 {
            Some(way.straight_on())
        } else {
            way.solve(intercept.value().get::<degree>())
        }
    }

    /// The aircraft is farthest out where its track is parallel to the outbound course: on the heading that holds it.
    fn greatest_overshoot_m(&self, over: &RolledTurn) -> f64 {
        let time_s = over.time_at_s(self.turn.heading_change().get::<radian>().abs());
        let place_m = over.displaced_after_m(time_s, self.heading) + self.wind_m_s * time_s;
        let right_m = self.onward.cross(place_m);
        if self.change_deg < 0.0 { right_m } else { -right_m }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::lead::TurnSide;
    use crate::turn::TurnLimits;
    use crate::value::units::{knots, meter};
    use crate::value::{RollRate, TrueAirspeed, TrueBearing, TrueNorth};
    use crate::wind::Wind;

    fn still(change_deg: f64) -> CourseChange<TrueNorth> {
        let limits = TurnLimits { roll: RollRate::instant(), ..TurnLimits::default() };
        CourseChange::new(
            TrueBearing::from_degrees(0.0),
            TrueBearing::from_degrees(change_deg),
            TrueAirspeed::new(knots(400.0)).unwrap(),
            Wind::calm(),
            &limits,
            TurnSide::Shortest,
        )
        .unwrap()
    }

    /// The still-air figures follow from circles and right angles alone.
    #[test]
    fn in_still_air_the_cost_is_plain_geometry() {
        let change = still(90.0);
        let radius_m = change.turn().radius().get::<meter>();
        let cost = change.fly_over(InterceptAngle::new(degrees(30.0)).unwrap());
        assert!((cost.greatest_overshoot.get::<meter>() - radius_m).abs() < 1e-6);
        // After 120 degrees: 1.5 r along the outbound course, r sin 60 outside it; the turn back covers r (1 - cos 30).
        let alpha = 30.0_f64.to_radians();
        let outside_m = radius_m * 60.0_f64.to_radians().sin() - radius_m * (1.0 - alpha.cos());
        let straight_m = outside_m / alpha.sin();
        let established_m = radius_m * 1.5 + straight_m * alpha.cos() + radius_m * alpha.sin();
        assert!((cost.established_past_fix.get::<meter>() - established_m).abs() < 1e-6);
        let flown_m = radius_m * (120.0_f64.to_radians() + alpha) + straight_m;
        let fly_by_m = radius_m * std::f64::consts::FRAC_PI_2 + established_m - radius_m;
        assert!((cost.extra_distance.get::<meter>() - (radius_m + flown_m - fly_by_m)).abs() < 1e-5);
        assert!((cost.intercept_angle - degrees(30.0)).abs() < degrees(1e-12));
    }

    #[test]
    fn a_small_overshoot_takes_a_smaller_intercept_angle() {
        let cost = still(10.0).fly_over(InterceptAngle::new(degrees(45.0)).unwrap());
        assert!(cost.intercept_angle < degrees(45.0) && cost.intercept_angle > degrees(1.0));
        assert!(cost.extra_time.value > 0.0 && cost.extra_distance.value > 0.0);
    }
}
