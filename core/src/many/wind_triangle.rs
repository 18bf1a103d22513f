//! The headings that hold many courses in the wind.

use super::functions::{atan2_deg, sin_cos_deg};
use super::{Column, Kernel, pass};

/// Courses, airspeeds and winds, no more than [`super::ROOM`], and where heading and groundspeed go.
///
/// A groundspeed that is NaN asks for the exact path: directions beyond a full circle, values outside their range, and winds
/// that nearly cannot be held, where the last bit decides.
pub struct WindTriangle<'a> {
    pub course_deg: &'a [f64],
    pub true_airspeed_kt: &'a [f64],
    pub wind_from_deg: &'a [f64],
    pub wind_speed_kt: &'a [f64],
    pub heading_deg: &'a mut [f64],
    pub groundspeed_kt: &'a mut [f64],
}

impl Kernel for WindTriangle<'_> {
    #[inline(always)]
    fn run<const FMA: bool>(self) {
        let (mut acrosses, mut alongs): (Column, Column) = (Column::of(0.0), Column::of(0.0));
        pass!(course_deg in self.course_deg, from_deg in self.wind_from_deg, wind_kt in self.wind_speed_kt,
            across in &mut acrosses, along in &mut alongs, => {
            let (sine, cosine) = sin_cos_deg::<FMA>(*from_deg - *course_deg);
            *across = *wind_kt * sine;
            *along = *wind_kt * cosine;
        });
        // Of the airspeed: what lies across the course against the wind, and what is left along it.
        pass!(course_deg in self.course_deg, airspeed_kt in self.true_airspeed_kt, from_deg in self.wind_from_deg,
            wind_kt in self.wind_speed_kt, across in &acrosses, along in &mut alongs,
            groundspeed_kt in self.groundspeed_kt, => {
            let left = ((*airspeed_kt - *across) * (*airspeed_kt + *across)).sqrt();
            let speed_kt = left - *along;
            *along = left;
            let vouched = (course_deg.abs() <= 360.0) & (from_deg.abs() <= 360.0) & (*airspeed_kt > 0.0)
                & (*airspeed_kt <= 5000.0) & (*wind_kt >= 0.0) & (*wind_kt <= 1000.0)
                & (across.abs() < 0.99 * *airspeed_kt) & (speed_kt > 1e-6 * (*airspeed_kt + *wind_kt));
            *groundspeed_kt = if vouched { speed_kt } else { f64::NAN };
        });
        pass!(course_deg in self.course_deg, across in &acrosses, along in &alongs, heading_deg in self.heading_deg, => {
            let positive = if *course_deg < 0.0 { *course_deg + 360.0 } else { *course_deg };
            let course = if positive >= 360.0 { positive - 360.0 } else { positive };
            let heading = course + atan2_deg::<FMA>(*across, *along);
            let positive = if heading < 0.0 { heading + 360.0 } else { heading };
            *heading_deg = if positive >= 360.0 { positive - 360.0 } else { positive };
        });
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plain::wind_triangle;

    fn compared<const FMA: bool>() -> (f64, f64) {
        let (mut degrees, mut knots, mut answered) = (0.0_f64, 0.0_f64, 0);
        for step in 0..200_000_u32 {
            let part = |factor: f64| (f64::from(step) * factor).fract();
            let course = [720.0 * part(0.618_033_988_7) - 360.0];
            let airspeed = [if step % 5 == 0 { 3.0 } else { 600.0 } * part(0.754_877_666_2)];
            let from = [360.0 * part(0.569_840_290_9)];
            let wind = [if step % 11 == 0 { 0.0 } else { 200.0 * part(0.819_172_513_4) }];
            let (mut heading, mut groundspeed) = ([0.0], [0.0]);
            WindTriangle {
                course_deg: &course,
                true_airspeed_kt: &airspeed,
                wind_from_deg: &from,
                wind_speed_kt: &wind,
                heading_deg: &mut heading,
                groundspeed_kt: &mut groundspeed,
            }
            .run::<FMA>();
            let single = wind_triangle(course[0], airspeed[0], from[0], wind[0]);
            if groundspeed[0].is_nan() {
                continue;
            }
            let single = single.unwrap();
            let turn = (heading[0] - single.heading_deg + 540.0).rem_euclid(360.0) - 180.0;
            assert!((0.0..360.0).contains(&heading[0]));
            // The last bit of an angle counts as often as the wind holds the airspeed; a single call has it no better.
            degrees = degrees.max(turn.abs() * airspeed[0] / (airspeed[0] + wind[0]));
            knots = knots.max((groundspeed[0] - single.groundspeed_kt).abs() / (airspeed[0] + wind[0]));
            answered += 1;
        }
        assert!(answered > 130_000, "{answered}");
        (degrees, knots)
    }

    #[test]
    fn as_single_calls_to_rounding() {
        let (fused, plain) = (compared::<true>(), compared::<false>());
        println!("wind triangle: {fused:?}, without fused multiplication {plain:?} deg and of the speeds");
        for (degrees, knots) in [fused, plain] {
            assert!(degrees < 1e-12 && knots < 1e-14);
        }
    }
}
