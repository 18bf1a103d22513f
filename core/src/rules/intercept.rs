//! Intercepts of radials by mental arithmetic.

use super::radials_per_mile;
use crate::value::units::{Angle, degree, degrees, nautical_mile, ratio};
use crate::value::{ArcRadius, DirectionChange, InterceptAngle};

/// The angle at which to intercept a radial: twice the degrees to it, at least 20 and at most 90.
///
/// # Source
/// FAA-H-8083-15 (Instrument Flying Handbook), intercept of a predetermined radial, from memory. CNATRA P-1215 says no more than that
/// it is greater than the degrees to the radial and at most 90. Common practice: 30 to 35 degrees far out, up to 50
/// when well off, about 10 close in.
///
/// # Example
/// ```
/// use lubberline::rules::intercept_angle;
/// use lubberline::value::{DirectionChange, units::*};
/// assert_eq!(format!("{:.0}", intercept_angle(DirectionChange::new(degrees(10.0))?).get::<degree>()), "20");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn intercept_angle(off_radial: DirectionChange) -> Angle {
    degrees((2.0 * off_radial.angle().get::<degree>().abs()).clamp(20.0, 90.0))
}

/// The share of the lead of a 90-degree intercept that a smaller angle takes: a third at 45 degrees, two thirds at 60, very
/// little below 30, as published. In between it is interpolated here, and the little is taken for nothing.
///
/// The exact share is `1 - cos(angle)`: 0.29 at 45, 0.5 at 60 and 0.13 at 30 degrees.
pub(super) fn share(angle_deg: f64) -> f64 {
    let low = (angle_deg - 30.0) / 45.0;
    let high = 2.0 / 3.0 + (angle_deg - 60.0) / 90.0;
    if angle_deg <= 60.0 { low.max(0.0) } else { high }
}

/// The lead onto a radial in radials: radials to the mile, times the radius of the turn, times a share for the angle.
///
/// # Degenerate cases
/// Close to the station it gives more radials than there are: it is the rule of a flat scale of radials.
///
/// # Source
/// CNATRA P-1215, course intercepts (one third at 45 degrees), and P-1265 p. 2-11 (5-99) for the other angles, which it says of arcs.
/// The library's own reading: nothing to 30 degrees, and straight lines from 30 to 45, to 60 and to the whole at 90.
///
/// # Example
/// ```
/// use lubberline::rules::intercept_lead;
/// use lubberline::value::{ArcRadius, InterceptAngle, units::*};
/// assert_eq!(format!("{:.1}", intercept_lead(ArcRadius::new(nautical_miles(60.0))?, ArcRadius::new(nautical_miles(3.0))?, InterceptAngle::new(degrees(45.0))?).get::<degree>()), "1.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn intercept_lead(distance: ArcRadius, turn_radius: ArcRadius, angle: InterceptAngle) -> Angle {
    let radials = radials_per_mile(distance).get::<ratio>() * turn_radius.value().get::<nautical_mile>();
    degrees(radials * share(angle.value().get::<degree>()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::nautical_miles;

    /// CNATRA P-1265 p. 2-11: a third for 45 degrees, two thirds for 60, of what 90 takes.
    #[test]
    fn the_shares_are_as_published() {
        let lead = |angle_deg: f64| {
            let angle = InterceptAngle::new(degrees(angle_deg)).unwrap();
            let miles = |value| ArcRadius::new(nautical_miles(value)).unwrap();
            intercept_lead(miles(15.0), miles(2.5), angle).get::<degree>()
        };
        assert!((lead(90.0) - 10.0).abs() < 1e-12);
        assert!((lead(60.0) - 20.0 / 3.0).abs() < 1e-12);
        assert!((lead(45.0) - 10.0 / 3.0).abs() < 1e-12);
        assert_eq!(lead(29.0), 0.0);
    }
}
