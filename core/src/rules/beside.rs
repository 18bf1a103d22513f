//! The rules of one step set beside the exact answers, term by term.

use std::ops::Sub;

use super::{
    ArcLeadRule, BankRule, RadiusRule, cone_radius, lead_radials, least_dme, off_course, standard_rate_bank,
    turn_radius,
};
use crate::Error;
use crate::lead::{RadialFlown, lead_radial};
use crate::station::{self, DEGREES_PER_DOT, cross_track_of_deviation};
use crate::timing::time_to_station_by_rule;
use crate::turn::{STANDARD_RATE_DEG_PER_S, bank_for_rate, radius, radius_at_rate};
use crate::value::units::{Angle, Length, Time, degree, degrees, degrees_per_second, metres, radian, ratio};
use crate::value::{
    ArcRadius, Bank, BearingDrift, ConeHalfAngle, CourseDeviation, Dots, ElapsedTime, HeightAboveStation,
    StationDistance, TrueAirspeed, TurnRate,
};

/// A rule's answer, the exact one, and what each simplification of the rule adds to it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RuleError<T, const TERMS: usize> {
    /// By the rule.
    pub rule: T,
    /// Exact.
    pub exact: T,
    /// What makes the difference, in the order that the function names; they sum to the whole.
    pub terms: [T; TERMS],
}

impl<T: Copy + Sub<Output = T>, const TERMS: usize> RuleError<T, TERMS> {
    /// The rule less the exact answer.
    pub fn error(&self) -> T {
        self.rule - self.exact
    }
}

/// A difference of one step.
fn whole<T: Copy + Sub<Output = T>>(rule: T, exact: T) -> RuleError<T, 1> {
    RuleError { rule, exact, terms: [rule - exact] }
}

/// [`least_dme`] beside the height itself. The term: a nautical mile of 6 000 ft.
///
/// # Example
/// ```
/// use lubberline::rules::least_dme_error;
/// use lubberline::value::{HeightAboveStation, units::*};
/// assert_eq!(format!("{:.3}", least_dme_error(HeightAboveStation::new(feet(30_000.0))?).error().get::<nautical_mile>()), "0.063");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn least_dme_error(height: HeightAboveStation) -> RuleError<Length, 1> {
    whole(least_dme(height), height.value().abs())
}

/// [`cone_radius`] of the rules beside that of a half-angle. The terms: a nautical mile of 6 000 ft, and 45 degrees for the half-angle.
///
/// # Example
/// ```
/// use lubberline::rules::cone_radius_error;
/// use lubberline::value::{ConeHalfAngle, HeightAboveStation, units::*};
/// assert_eq!(format!("{:.2}", cone_radius_error(HeightAboveStation::new(feet(30_000.0))?, ConeHalfAngle::new(degrees(50.0))?).error().get::<nautical_mile>()), "-0.88");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cone_radius_error(height: HeightAboveStation, half_angle: ConeHalfAngle) -> RuleError<Length, 2> {
    let (rule, exact) = (cone_radius(height), station::cone_radius(height, half_angle).value());
    let at_45 = height.value().max(metres(0.0));
    RuleError { rule, exact, terms: [rule - at_45, at_45 - exact] }
}

/// [`standard_rate_bank`] beside the bank that turns at standard rate. The term: the rule's line for an arctangent.
///
/// # Errors
/// As [`bank_for_rate`].
///
/// # Example
/// ```
/// use lubberline::rules::{BankRule, standard_rate_bank_error};
/// use lubberline::value::{TrueAirspeed, units::*};
/// assert_eq!(format!("{:.1}", standard_rate_bank_error(TrueAirspeed::new(knots(180.0))?, BankRule::FifteenPercent)?.error().get::<degree>()), "0.7");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn standard_rate_bank_error(
    true_airspeed: TrueAirspeed,
    rule: BankRule,
) -> Result<RuleError<Angle, 1>, Error> {
    let exact = bank_for_rate(true_airspeed, TurnRate::derived(degrees_per_second(STANDARD_RATE_DEG_PER_S)))?;
    Ok(whole(standard_rate_bank(true_airspeed, rule), exact.value()))
}

/// [`turn_radius`] of the rules beside the radius of the turn that the rule is for. The term: the rule's round number.
///
/// # Example
/// ```
/// use lubberline::rules::{RadiusRule, turn_radius_error};
/// use lubberline::value::{TrueAirspeed, units::*};
/// assert_eq!(format!("{:.3}", turn_radius_error(TrueAirspeed::new(knots(180.0))?, RadiusRule::HalfPercent).error().get::<nautical_mile>()), "-0.055");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn turn_radius_error(speed: TrueAirspeed, rule: RadiusRule) -> RuleError<Length, 1> {
    let at_rate = |rate| radius_at_rate(speed, TurnRate::derived(degrees_per_second(rate)));
    let exact = match rule {
        RadiusRule::HalfPercent => at_rate(STANDARD_RATE_DEG_PER_S),
        RadiusRule::OnePercent => at_rate(STANDARD_RATE_DEG_PER_S / 2.0),
        RadiusRule::MilesAMinuteLessTwo | RadiusRule::TenthOfSquare => {
            radius(speed, Bank::derived(degrees(30.0)))
        }
    };
    whole(turn_radius(speed, rule), exact)
}

/// [`off_course`] beside the distance by the law of sines. The terms: 200 ft for 212, and the angle for its sine.
///
/// # Example
/// ```
/// use lubberline::rules::off_course_error;
/// use lubberline::value::{Dots, StationDistance, units::*};
/// assert_eq!(format!("{:.3}", off_course_error(Dots::new(Ratio::new::<ratio>(1.0))?, StationDistance::new(nautical_miles(30.0))?).error().get::<nautical_mile>()), "0.059");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn off_course_error(deflection: Dots, distance: StationDistance) -> RuleError<Length, 2> {
    let deviation = CourseDeviation::derived(degrees(DEGREES_PER_DOT * deflection.value().get::<ratio>()));
    let (rule, exact) = (off_course(deflection, distance), cross_track_of_deviation(deviation, distance));
    let by_angle = distance.value() * -deviation.value().get::<radian>();
    RuleError { rule, exact, terms: [rule - by_angle, by_angle - exact] }
}

/// [`lead_radials`] beside the exact lead in still air with an instant roll. The terms: 60 for 57.3, the rule's correction, and the arc
/// for its angle: `r / D` where the geometry has `asin(r / (D - r))` inbound and `asin(r / (D + r))` outbound. The correction is there to
/// make up for the last.
///
/// # Errors
/// As [`lead_radial`].
///
/// # Example
/// ```
/// use lubberline::lead::RadialFlown;
/// use lubberline::rules::{ArcLeadRule, lead_radials_error};
/// use lubberline::value::{ArcRadius, units::*};
/// assert_eq!(format!("{:.1}", lead_radials_error(ArcRadius::new(nautical_miles(10.0))?, ArcRadius::new(nautical_miles(2.5))?, RadialFlown::Inbound, ArcLeadRule::Plain)?.error().get::<degree>()), "-4.5");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn lead_radials_error(
    arc: ArcRadius,
    turn: ArcRadius,
    flown: RadialFlown,
    rule: ArcLeadRule,
) -> Result<RuleError<Angle, 3>, Error> {
    let by_rule = lead_radials(arc, turn, flown, rule);
    let by_sixty = lead_radials(arc, turn, flown, ArcLeadRule::Plain);
    let by_arc = degrees((turn.value() / arc.value()).get::<ratio>().to_degrees());
    let exact = lead_radial(arc, turn, flown)?;
    Ok(RuleError { rule: by_rule, exact, terms: [by_sixty - by_arc, by_rule - by_sixty, by_arc - exact] })
}

/// The rule of the time to a station beside the time itself, for a station abeam at first. The terms: 60 for 57.3, and the angle for its
/// sine. They work against each other, and cancel at 30 degrees.
///
/// # Errors
/// [`Error::BearingsDiverge`] from 90 degrees of change on.
///
/// # Example
/// ```
/// use lubberline::rules::time_to_station_error;
/// use lubberline::value::{BearingDrift, ElapsedTime, units::*};
/// assert_eq!(format!("{:.1}", time_to_station_error(ElapsedTime::new(seconds(75.0))?, BearingDrift::new(degrees(10.0))?)?.error().get::<second>()), "18.1");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn time_to_station_error(
    elapsed: ElapsedTime,
    change: BearingDrift,
) -> Result<RuleError<Time, 2>, Error> {
    let (change_rad, bearing_change_deg) = (change.value().get::<radian>(), change.value().get::<degree>());
    if bearing_change_deg >= 90.0 {
        return Err(Error::BearingsDiverge { angle_off_bow_deg: 90.0, bearing_change_deg });
    }
    let rule = time_to_station_by_rule(elapsed, change);
    let by_angle = elapsed.value() / change_rad;
    let exact = elapsed.value() / change_rad.sin();
    Ok(RuleError { rule, exact, terms: [rule - by_angle, by_angle - exact] })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{Ratio, feet, foot, knots, nautical_mile, nautical_miles, second, seconds};

    #[test]
    fn the_terms_are_those_of_the_texts() {
        let height = HeightAboveStation::new(feet(36_000.0)).unwrap();
        let least = least_dme_error(height);
        assert!((least.error().get::<nautical_mile>() - (6.0 - 36_000.0 * 0.3048 / 1852.0)).abs() < 1e-12);
        let cone = cone_radius_error(height, ConeHalfAngle::new(degrees(50.0)).unwrap());
        assert!((cone.terms[1] / cone.exact).get::<ratio>() < -0.16, "50 degrees are wider by 19 percent");
        // One dot at one mile: 200 ft for 212, the angle for its sine next to nothing.
        let dot = off_course_error(
            Dots::new(Ratio::new::<ratio>(-1.0)).unwrap(),
            StationDistance::new(nautical_miles(1.0)).unwrap(),
        );
        assert!((dot.terms[0].get::<foot>() + 12.1).abs() < 0.05 && dot.terms[1].get::<foot>().abs() < 0.05);
        // A tenth of the square at 30 degrees is 10.06 percent long at every speed.
        let radius = turn_radius_error(TrueAirspeed::new(knots(300.0)).unwrap(), RadiusRule::TenthOfSquare);
        assert!(((radius.error() / radius.exact).get::<ratio>() - 0.1006).abs() < 1e-4);
    }

    #[test]
    fn sixty_and_the_sine_cancel_at_30_degrees() {
        let at = |change_deg| {
            let elapsed = ElapsedTime::new(seconds(100.0)).unwrap();
            time_to_station_error(elapsed, BearingDrift::new(degrees(change_deg)).unwrap())
        };
        assert!(at(30.0).unwrap().error().abs() < seconds(1e-9));
        let ten = at(10.0).unwrap();
        assert!((ten.terms[0] + ten.terms[1] - ten.error()).get::<second>().abs() < 1e-9);
        assert!(((ten.error() / ten.exact).get::<ratio>() - 0.042).abs() < 5e-4, "4.2 percent at 10 degrees");
        assert!(at(90.0).is_err());
    }

    #[test]
    fn the_terms_sum_to_the_whole() {
        let arc = |miles| ArcRadius::new(nautical_miles(miles)).unwrap();
        for &rule in ArcLeadRule::ALL {
            for flown in [RadialFlown::Inbound, RadialFlown::Outbound] {
                let error = lead_radials_error(arc(8.0), arc(2.5), flown, rule).unwrap();
                let sum: f64 = error.terms.iter().map(|term| term.get::<degree>()).sum();
                assert!((sum - error.error().get::<degree>()).abs() < 1e-12);
                assert!(error.terms[0] > degrees(0.0), "60 overstates");
            }
        }
        assert!(lead_radials_error(arc(4.0), arc(2.5), RadialFlown::Inbound, ArcLeadRule::Plain).is_err());
    }
}
