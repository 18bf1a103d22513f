//! What flying over the fix before turning would cost.

use super::CourseChange;
use crate::numeric::root_between;
use crate::plane::Plane;
use crate::turn::RolledTurn;
use crate::value::units::{Angle, Length, Time, degrees, metres, radian, seconds};
use crate::value::{Bearing, InterceptAngle, North};
use crate::wind::{Crabbed, hold_course};

/// The smallest intercept angle that is tried, in degrees: at less, the way back is beyond any use.
const LEAST_INTERCEPT_DEG: f64 = 1e-3;

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
}

/// One way of returning to the outbound course.
struct Return {
    /// Straight distance along the intercept course between the turns; negative if there is no room for it.
    straight_m: f64,
    duration_s: f64,
    length_m: f64,
    established_m: f64,
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
        let wanted_deg = degrees_of(intercept.value());
        if self.change_deg == 0.0 {
            return FlyOver {
                intercept_angle: degrees(wanted_deg),
                greatest_overshoot: metres(0.0),
                established_past_fix: metres(0.0),
                extra_distance: metres(0.0),
                extra_time: seconds(0.0),
            };
        }
        let room_m = |angle_deg: f64| self.return_at(angle_deg).map_or(-1.0, |flown| flown.straight_m);
        let angle_deg = if room_m(wanted_deg) >= 0.0 {
            wanted_deg
        } else {
            root_between(LEAST_INTERCEPT_DEG, wanted_deg, room_m)
        };
        let flown = self.return_at(angle_deg).unwrap_or(Return {
            straight_m: f64::NAN,
            duration_s: f64::NAN,
            length_m: f64::NAN,
            established_m: f64::NAN,
        });

        let beyond_m = flown.established_m - self.past_fix_m;
        let fly_by_s = self.turn.duration_s() + beyond_m / self.groundspeed_after_m_s();
        let fly_by_m = self.turn_length().value + beyond_m;
        FlyOver {
            intercept_angle: degrees(angle_deg),
            greatest_overshoot: metres(self.greatest_overshoot_m(angle_deg)),
            established_past_fix: metres(flown.established_m),
            extra_distance: metres(self.lead_m + flown.length_m - fly_by_m),
            extra_time: seconds(self.lead_m / self.groundspeed_before_m_s() + flown.duration_s - fly_by_s),
        }
    }

    /// The intercept course beyond the outbound one, how to hold it, and the turn onto it from over the fix.
    fn over_turn(&self, angle_deg: f64) -> Option<(Bearing<N>, Crabbed<N>, RolledTurn)> {
        let signed_deg = angle_deg.copysign(self.change_deg);
        let course = Bearing::from_degrees(self.outbound.degrees() + signed_deg);
        let crabbed = hold_course(course, self.true_airspeed, self.wind).ok()?;
        let change =
            degrees(self.change_deg + signed_deg) + crabbed.wind_correction - self.before.wind_correction;
        Some((course, crabbed, RolledTurn::new(self.true_airspeed, &self.limits, change)))
    }

    fn return_at(&self, angle_deg: f64) -> Option<Return> {
        let (course, crabbed, over) = self.over_turn(angle_deg)?;
        let back_change = degrees(-angle_deg.copysign(self.change_deg)) + self.after.wind_correction
            - crabbed.wind_correction;
        let back = RolledTurn::new(self.true_airspeed, &self.limits, back_change);

        let wind_m_s = self.wind.velocity_m_s();
        let over_m = over.displacement_m(self.before.heading.radians()) + wind_m_s * over.duration_s();
        let back_m = back.displacement_m(crabbed.heading.radians()) + wind_m_s * back.duration_s();
        let (toward, onward) = (Plane::along(course.radians()), Plane::along(self.outbound.radians()));
        // The straight part takes away what the two turns leave across the outbound course.
        let across_m = onward.cross(over_m + back_m);
        let straight_m = -across_m / onward.cross(toward);
        let groundspeed_m_s = crabbed.groundspeed.value().value;
        let total_m = over_m + back_m + toward * straight_m;
        Some(Return {
            straight_m,
            duration_s: over.duration_s() + back.duration_s() + straight_m / groundspeed_m_s,
            length_m: over.ground_length_m(self.before.heading.radians(), wind_m_s)
                + straight_m
                + back.ground_length_m(crabbed.heading.radians(), wind_m_s),
            established_m: total_m.dot(onward),
        })
    }

    /// The aircraft is farthest out where its track is parallel to the outbound course: on the heading that holds it.
    fn greatest_overshoot_m(&self, angle_deg: f64) -> f64 {
        let Some((_, _, over)) = self.over_turn(angle_deg) else { return f64::NAN };
        let time_s = over.time_at_s(self.turn.heading_change().get::<radian>().abs());
        let place_m = over.displacement_after_m(time_s, self.before.heading.radians())
            + self.wind.velocity_m_s() * time_s;
        let right_m = Plane::along(self.outbound.radians()).cross(place_m);
        if self.change_deg < 0.0 { right_m } else { -right_m }
    }
}

fn degrees_of(angle: Angle) -> f64 {
    angle.get::<crate::value::units::degree>()
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
