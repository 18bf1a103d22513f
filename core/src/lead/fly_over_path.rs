//! The path over the ground of an aircraft that flies over the fix before it turns.

use super::recapture::Recaptured;
use super::{CourseChange, TurnPoint};
use crate::plane::Plane;
use crate::value::units::{Time, radian, seconds};
use crate::value::{InterceptAngle, North};

/// The way of which [`CourseChange::fly_over`] gives the cost: over the fix, through the outbound course to the intercept course,
/// straight, and back onto the outbound course.
///
/// # Accuracy
/// That of [`CourseChange`]; the end agrees with [`super::FlyOver`] to rounding error.
///
/// # Source
/// As [`super::FlyOver`].
#[derive(Debug, Clone, Copy)]
pub struct FlyOverPath<N: North> {
    change: CourseChange<N>,
    way: Recaptured<N>,
}

impl<N: North> CourseChange<N> {
    /// The path of flying over the fix first, coming back at an intercept angle; none where the wind leaves no way back.
    ///
    /// # Example
    /// ```
    /// use lubberline::lead::{CourseChange, TurnSide};
    /// use lubberline::turn::TurnLimits;
    /// use lubberline::value::{InterceptAngle, TrueAirspeed, TrueBearing, units::*};
    /// use lubberline::wind::Wind;
    /// let course = |value| TrueBearing::new(degrees(value));
    /// let speed = TrueAirspeed::new(knots(300.0))?;
    /// let (limits, side) = (TurnLimits::default(), TurnSide::Shortest);
    /// let change = CourseChange::new(course(0.0)?, course(70.0)?, speed, Wind::calm(), &limits, side)?;
    /// let path = change.fly_over_path(InterceptAngle::new(degrees(30.0))?);
    /// let established_nm = path.map(|path| path.at(path.duration()).distance.value().get::<nautical_mile>());
    /// assert_eq!(established_nm.map(|distance_nm| format!("{distance_nm:.1}")), Some("8.0".into()));
    /// # Ok::<(), lubberline::Error>(())
    /// ```
    pub fn fly_over_path(&self, intercept: InterceptAngle) -> Option<FlyOverPath<N>> {
        Some(FlyOverPath { change: *self, way: self.way_over(intercept, &self.turn.roll_headings())? })
    }
}

impl<N: North> FlyOverPath<N> {
    /// From the fix to wings level on the outbound course.
    pub fn duration(&self) -> Time {
        seconds(self.way.duration_s)
    }

    /// Where the aircraft is a time after it passed the fix; before it on the inbound, after the duration on the outbound course.
    pub fn at(&self, time: Time) -> TurnPoint<N> {
        let (change, way, time_s) = (&self.change, &self.way, time.value);
        let (first_s, back_s) = (way.first.duration_s(), way.duration_s - way.second.duration_s());
        let straight_s = back_s - first_s;
        let share = if straight_s > 0.0 { ((time_s - first_s) / straight_s).clamp(0.0, 1.0) } else { 0.0 };
        let first_rad = change.before.heading.radians();
        let second_rad = first_rad + way.first.heading_change().get::<radian>();
        let turning_s = time_s.min(first_s).max(0.0) + (time_s.min(way.duration_s) - back_s).max(0.0);
        let place_m = change.along * (change.groundspeed_before_m_s() * time_s.min(0.0))
            + way.first.displaced_after_m(time_s, change.heading)
            + way.second.displacement_after_m(time_s - back_s, second_rad)
            + change.wind_m_s * turning_s
            + Plane::along_deg(way.between.degrees()) * (way.straight_m * share)
            + change.onward * (change.groundspeed_after_m_s() * (time_s - way.duration_s).max(0.0));
        let turned_rad = way.first.turned_after_rad(time_s) + way.second.turned_after_rad(time_s - back_s);
        let bank_rad = way.first.bank_after_rad(time_s) + way.second.bank_after_rad(time_s - back_s);
        TurnPoint::of(time, place_m, first_rad + turned_rad, bank_rad)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::lead::TurnSide;
    use crate::turn::TurnLimits;
    use crate::value::units::{degrees, knots, meter};
    use crate::value::{TrueAirspeed, TrueBearing, TrueNorth, WindSpeed};
    use crate::wind::Wind;

    fn change(by_deg: f64, wind_kt: f64) -> CourseChange<TrueNorth> {
        let wind = Wind { from: TrueBearing::from_degrees(200.0), speed: WindSpeed::derived(knots(wind_kt)) };
        let (inbound, outbound) = (TrueBearing::from_degrees(10.0), TrueBearing::from_degrees(10.0 + by_deg));
        let airspeed = TrueAirspeed::derived(knots(300.0));
        CourseChange::new(inbound, outbound, airspeed, wind, &TurnLimits::default(), TurnSide::Shortest)
            .unwrap()
    }

    fn place_m(point: &TurnPoint<TrueNorth>) -> Plane {
        Plane::along_deg(point.bearing_from_fix.map_or(0.0, |bearing| bearing.degrees()))
            * point.distance.value().get::<meter>()
    }

    /// The path has the length, the greatest overshoot and the end that the cost was made of.
    #[test]
    fn the_path_is_the_one_that_was_priced() {
        for (by_deg, wind_kt, angle_deg) in [(70.0, 60.0, 30.0), (-110.0, 80.0, 45.0), (12.0, 0.0, 30.0)] {
            let (change, intercept) =
                (change(by_deg, wind_kt), InterceptAngle::new(degrees(angle_deg)).unwrap());
            let (cost, path) = (change.fly_over(intercept), change.fly_over_path(intercept).unwrap());
            assert_eq!(cost.duration, path.duration());
            let outbound = Plane::along_deg(change.outbound().degrees());
            let steps = 20_000;
            let (mut length_m, mut overshoot_m, mut last_m) = (0.0, f64::NEG_INFINITY, Plane::ZERO);
            for step in 0..=steps {
                let point = path.at(path.duration() * (f64::from(step) / f64::from(steps)));
                let here_m = place_m(&point);
                length_m += (here_m - last_m).length();
                overshoot_m = f64::max(overshoot_m, -outbound.cross(here_m) * by_deg.signum());
                last_m = here_m;
            }
            let end_m = outbound * cost.established_past_fix.get::<meter>();
            assert!((last_m - end_m).length() < 1e-6, "{by_deg}: {last_m:?} {end_m:?}");
            assert!((overshoot_m - cost.greatest_overshoot.get::<meter>()).abs() < 0.01, "{by_deg}");
            let beyond_m = cost.established_past_fix - change.past_fix_at_roll_out();
            let fly_by_m = (change.turn_length() + beyond_m - change.lead()).get::<meter>();
            assert!((length_m - fly_by_m - cost.extra_distance.get::<meter>()).abs() < 0.05, "{by_deg}");
            let end = path.at(path.duration());
            assert!(end.heading.change_to(change.after().heading).degrees().abs() < 1e-9);
            let later_m = place_m(&path.at(path.duration() + seconds(10.0)));
            assert!((outbound.cross(later_m)).abs() < 1e-6);
        }
    }

    #[test]
    fn without_a_change_it_is_the_course_itself() {
        let path = change(0.0, 40.0).fly_over_path(InterceptAngle::new(degrees(30.0)).unwrap()).unwrap();
        assert_eq!(path.duration(), seconds(0.0));
        let course = Plane::along_deg(10.0);
        for time_s in [-20.0, 20.0] {
            let here_m = place_m(&path.at(seconds(time_s)));
            assert!(course.cross(here_m).abs() < 1e-6 && course.dot(here_m) * time_s > 0.0);
        }
    }
}
