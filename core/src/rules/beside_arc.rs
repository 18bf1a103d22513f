//! The rules of arcs and intercepts set beside the exact answers, term by term.

use super::intercept::share;
use super::{
    ArcEntryRule, RuleError, arc_correction, arc_entry_lead, intercept_angle, intercept_lead,
    radials_per_mile,
};
use crate::Error;
use crate::lead::{RadialFlown, arc_entry};
use crate::procedure::least_correction;
use crate::value::units::{Angle, Length, Ratio, degree, degrees, nautical_mile, radian, ratio};
use crate::value::{ArcRadius, DirectionChange, GroundDistance, InterceptAngle};

/// [`radials_per_mile`] beside the degrees of an arc of a mile. The term: 60 for 57.3.
///
/// # Example
/// ```
/// use lubberline::rules::radials_per_mile_error;
/// use lubberline::value::{ArcRadius, units::*};
/// assert_eq!(format!("{:.2}", radials_per_mile_error(ArcRadius::new(nautical_miles(12.0))?).error().get::<ratio>()), "0.23");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn radials_per_mile_error(arc: ArcRadius) -> RuleError<Ratio, 1> {
    let rule = radials_per_mile(arc);
    let exact = Ratio::new::<ratio>(1.0_f64.to_degrees() / arc.value().get::<nautical_mile>());
    RuleError { rule, exact, terms: [rule - exact] }
}

/// [`arc_entry_lead`] beside the exact lead in still air with an instant roll, `sqrt(D² + 2 D r) - D` inbound and `D - sqrt(D² - 2 D r)` outbound. The
/// terms: what the rule makes of the radius; and the radius itself for the lead, as if the arc were a straight line.
///
/// # Errors
/// As [`arc_entry`].
///
/// # Example
/// ```
/// use lubberline::lead::RadialFlown;
/// use lubberline::rules::{ArcEntryRule, arc_entry_lead_error};
/// use lubberline::value::{ArcRadius, units::*};
/// assert_eq!(format!("{:.2}", arc_entry_lead_error(ArcRadius::new(nautical_miles(10.0))?, ArcRadius::new(nautical_miles(2.5))?, RadialFlown::Outbound, ArcEntryRule::RadiusAndHalf)?.error().get::<nautical_mile>()), "0.07");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn arc_entry_lead_error(
    arc: ArcRadius,
    turn_radius: ArcRadius,
    flown: RadialFlown,
    rule: ArcEntryRule,
) -> Result<RuleError<Length, 2>, Error> {
    let by_rule = arc_entry_lead(arc, turn_radius, flown, rule);
    let begin = arc_entry(arc, turn_radius, flown)?.value();
    let exact = match flown {
        RadialFlown::Inbound => begin - arc.value(),
        RadialFlown::Outbound => arc.value() - begin,
    };
    let radius = turn_radius.value();
    Ok(RuleError { rule: by_rule, exact, terms: [by_rule - radius, radius - exact] })
}

/// [`arc_correction`] beside the least correction that meets the arc at all, which is nothing from inside. The term: a proportion for the tangent to a circle. Below zero
/// from outside the arc is passed.
///
/// # Example
/// ```
/// use lubberline::rules::arc_correction_error;
/// use lubberline::value::{ArcRadius, GroundDistance, units::*};
/// assert_eq!(format!("{:.1}", arc_correction_error(GroundDistance::new(nautical_miles(10.5))?, ArcRadius::new(nautical_miles(10.0))?).error().get::<degree>()), "-7.8");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn arc_correction_error(distance: GroundDistance, arc: ArcRadius) -> RuleError<Angle, 1> {
    let (rule, exact) = (arc_correction(distance, arc), least_correction(distance, arc));
    RuleError { rule, exact, terms: [rule - exact] }
}

/// [`intercept_angle`] beside the angle that meets the radial halfway to the station, which is what doubling the degrees means: `atan2(sin θ, cos θ - 1/2)`. The terms: the
/// limits of 20 and 90 degrees; and twice the angle for that of the triangle.
///
/// # Degenerate cases
/// On the radial the exact angle is zero. From 60 degrees on halfway is abeam or behind: the exact angle is 90 degrees and more.
///
/// # Source
/// Derived: the triangle of station, aircraft and meeting point.
///
/// # Example
/// ```
/// use lubberline::rules::intercept_angle_error;
/// use lubberline::value::{DirectionChange, units::*};
/// assert_eq!(format!("{:.1}", intercept_angle_error(DirectionChange::new(degrees(10.0))?).error().get::<degree>()), "0.3");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn intercept_angle_error(off_radial: DirectionChange) -> RuleError<Angle, 2> {
    let rule = intercept_angle(off_radial);
    let off = off_radial.angle().abs();
    let doubled = off * 2.0;
    let (sine, cosine) = off.get::<radian>().sin_cos();
    let exact = degrees(sine.atan2(cosine - 0.5).to_degrees());
    RuleError { rule, exact, terms: [rule - doubled, doubled - exact] }
}

/// [`intercept_lead`] beside the degrees off the radial at which the turn onto it begins in still air with an instant roll, `asin(r (1 - cos i) / D)` at the distance `D`. The
/// terms: 60 for 57.3; the rule's share for `1 - cos i`; and the arc for its angle.
///
/// # Errors
/// [`Error::OffCourseBeyondDistance`] for a turn that begins farther from the radial than from the station.
///
/// # Source
/// Derived.
///
/// # Example
/// ```
/// use lubberline::rules::intercept_lead_error;
/// use lubberline::value::{ArcRadius, InterceptAngle, units::*};
/// assert_eq!(format!("{:.1}", intercept_lead_error(ArcRadius::new(nautical_miles(30.0))?, ArcRadius::new(nautical_miles(2.5))?, InterceptAngle::new(degrees(45.0))?)?.error().get::<degree>()), "0.3");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn intercept_lead_error(
    distance: ArcRadius,
    turn_radius: ArcRadius,
    angle: InterceptAngle,
) -> Result<RuleError<Angle, 3>, Error> {
    let rule = intercept_lead(distance, turn_radius, angle);
    let turn_share = (turn_radius.value() / distance.value()).get::<ratio>();
    let versine = 2.0 * (angle.value().get::<radian>() / 2.0).sin().powi(2);
    let sine = turn_share * versine;
    if sine > 1.0 {
        let distance_nm = distance.value().get::<nautical_mile>();
        return Err(Error::OffCourseBeyondDistance { cross_track_nm: sine * distance_nm, distance_nm });
    }
    let by_share = degrees((turn_share * share(angle.value().get::<degree>())).to_degrees());
    let by_versine = degrees(sine.to_degrees());
    let exact = degrees(sine.asin().to_degrees());
    Ok(RuleError { rule, exact, terms: [rule - by_share, by_share - by_versine, by_versine - exact] })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::nautical_miles;

    fn miles(value: f64) -> ArcRadius {
        ArcRadius::new(nautical_miles(value)).unwrap()
    }

    #[test]
    fn sixty_is_4_7_percent_too_many() {
        let error = radials_per_mile_error(miles(12.0));
        assert!(((error.error() / error.exact).get::<ratio>() - 0.0472).abs() < 1e-4);
    }

    /// CNATRA P-1265 p. 2-11: at 10 NM and a radius of 2.5, 3.0 outbound and 2.0 inbound; exact 2.93 and 2.25.
    #[test]
    fn leads_onto_an_arc() {
        let at = |flown, rule| arc_entry_lead_error(miles(10.0), miles(2.5), flown, rule).unwrap();
        let out = at(RadialFlown::Outbound, ArcEntryRule::RadiusAndHalf);
        assert!((out.rule.get::<nautical_mile>() - 3.0).abs() < 1e-12);
        assert!((out.exact.get::<nautical_mile>() - 2.929).abs() < 1e-3);
        let inbound = at(RadialFlown::Inbound, ArcEntryRule::RadiusAndHalf);
        assert!((inbound.rule.get::<nautical_mile>() - 2.0).abs() < 1e-12);
        assert!((inbound.exact.get::<nautical_mile>() - 2.247).abs() < 1e-3);
        for &rule in ArcEntryRule::ALL {
            for flown in [RadialFlown::Inbound, RadialFlown::Outbound] {
                let error = at(flown, rule);
                let sum = error.terms[0] + error.terms[1] - error.error();
                assert!(sum.abs() < nautical_miles(1e-12));
            }
        }
        assert!(
            arc_entry_lead_error(miles(4.0), miles(2.5), RadialFlown::Outbound, ArcEntryRule::Radius)
                .is_err()
        );
        let tight = arc_entry_lead(miles(5.0), miles(0.4), RadialFlown::Inbound, ArcEntryRule::RadiusAndHalf);
        assert_eq!(tight, nautical_miles(0.0));
    }

    #[test]
    fn a_correction_from_outside_may_pass_the_arc() {
        let at = |distance| {
            arc_correction_error(GroundDistance::new(nautical_miles(distance)).unwrap(), miles(10.0))
        };
        // Half a mile outside a 10 NM arc: 10 degrees where the tangent takes 17.8.
        assert!((at(10.5).error().get::<degree>() + 7.75).abs() < 0.01);
        assert!((at(9.5).error().get::<degree>() + 5.0).abs() < 1e-9);
    }

    #[test]
    fn doubling_the_degrees_meets_the_radial_halfway() {
        for off_deg in [0.0, 3.0, 15.0, -30.0, 45.0, 80.0] {
            let error = intercept_angle_error(DirectionChange::from_degrees(off_deg));
            let sum = error.terms[0] + error.terms[1] - error.error();
            assert!(sum.abs() < degrees(1e-12), "{off_deg}");
            let (off_rad, angle_rad) = (f64::to_radians(off_deg).abs(), error.exact.get::<radian>());
            // Along the track at that angle, from a distance of one, the radial is met at a half.
            let met = off_rad.cos() - off_rad.sin() * angle_rad.cos() / angle_rad.sin();
            assert!(off_deg == 0.0 || (met - 0.5).abs() < 1e-12, "{off_deg}: {met}");
        }
        let small = intercept_angle_error(DirectionChange::from_degrees(15.0));
        assert!(small.terms[0].abs() < degrees(1e-12) && small.error().abs() < degrees(1.0));
    }

    #[test]
    fn leads_onto_a_radial() {
        let at = |distance, angle_deg| {
            intercept_lead_error(
                miles(distance),
                miles(2.5),
                InterceptAngle::new(degrees(angle_deg)).unwrap(),
            )
        };
        for angle_deg in [10.0, 30.0, 45.0, 60.0, 90.0] {
            let error = at(15.0, angle_deg).unwrap();
            let sum = error.terms.iter().fold(degrees(0.0), |sum, term| sum + *term);
            assert!((sum - error.error()).abs() < degrees(1e-12), "{angle_deg}");
        }
        let square = at(15.0, 90.0).unwrap();
        assert!((square.exact.get::<degree>() - (2.5_f64 / 15.0).asin().to_degrees()).abs() < 1e-12);
        assert!(square.terms[1].abs() < degrees(1e-12), "all of the radius for 90 degrees");
        assert!(at(15.0, 60.0).unwrap().terms[1] > degrees(0.0), "two thirds for a half");
        assert!(at(2.0, 90.0).is_err());
    }
}
