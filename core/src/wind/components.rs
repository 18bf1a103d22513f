//! A wind split along and across a course, and put together again.

use super::Wind;
use crate::Error;
use crate::plane::Plane;
use crate::value::units::{meter_per_second, metres_per_second};
use crate::value::{Bearing, DirectionChange, North, WindComponent, WindSpeed};

/// A wind along and across a course. Each part is positive from where the wind comes: from ahead, and from the
/// right.
///
/// A positive crosswind asks for a wind correction to the right, which is positive too.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WindComponents {
    /// Against the course; a tailwind is negative.
    pub headwind: WindComponent,
    /// From the right of the course; from the left is negative.
    pub crosswind: WindComponent,
}

impl<N: North> Wind<N> {
    /// The wind along and across a course: `Vw cos w` and `Vw sin w`, with `w` the angle from the course to
    /// where the wind comes from.
    ///
    /// # Accuracy
    /// Rounding.
    ///
    /// # Example
    /// ```
    /// use lubberline::value::{TrueBearing, WindSpeed, units::*};
    /// use lubberline::wind::Wind;
    /// let wind = Wind { from: TrueBearing::new(degrees(120.0))?, speed: WindSpeed::new(knots(20.0))? };
    /// let parts = wind.along(TrueBearing::new(degrees(90.0))?);
    /// assert_eq!(format!("{:.1}", parts.headwind.value().get::<knot>()), "17.3");
    /// assert_eq!(format!("{:.1}", parts.crosswind.value().get::<knot>()), "10.0");
    /// # Ok::<(), lubberline::Error>(())
    /// ```
    pub fn along(self, course: Bearing<N>) -> WindComponents {
        let upwind = Plane::along_deg(course.change_to(self.from).degrees())
            * self.speed.value().get::<meter_per_second>();
        // Adding zero leaves no negative zero across the wind, or in calm air.
        let part = |speed_m_s: f64| WindComponent::derived(metres_per_second(speed_m_s + 0.0));
        WindComponents { headwind: part(upwind.north), crosswind: part(upwind.east) }
    }

    /// The wind whose parts along and across a course are given: the inverse of [`Wind::along`].
    ///
    /// # Degenerate cases
    /// Two parts of zero are [`Wind::calm`].
    ///
    /// # Errors
    /// [`Error::OutOfRange`] for a wind above its range.
    pub fn from_components(course: Bearing<N>, parts: WindComponents) -> Result<Self, Error> {
        let m_s = |part: WindComponent| part.value().get::<meter_per_second>();
        let upwind = Plane { north: m_s(parts.headwind), east: m_s(parts.crosswind) };
        if upwind.length() == 0.0 {
            return Ok(Self::calm());
        }
        let turn = DirectionChange::from_degrees(upwind.east.atan2(upwind.north).to_degrees());
        Ok(Self { from: course.turned_by(turn), speed: WindSpeed::new(metres_per_second(upwind.length()))? })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::TrueBearing;
    use crate::value::units::{knot, knots};

    fn wind(from_deg: f64, speed_kt: f64) -> Wind<crate::value::TrueNorth> {
        Wind { from: TrueBearing::from_degrees(from_deg), speed: WindSpeed::new(knots(speed_kt)).unwrap() }
    }

    #[test]
    fn no_part_is_a_negative_zero() {
        for quarter in 0..4 {
            for (from_deg, speed_kt) in [(0.0, 20.0), (90.0, 20.0), (180.0, 20.0), (270.0, 20.0), (0.0, 0.0)]
            {
                let course = TrueBearing::from_degrees(90.0 * f64::from(quarter));
                let WindComponents { headwind, crosswind } = wind(from_deg, speed_kt).along(course);
                for part in [headwind, crosswind].map(|part| part.value().get::<knot>()) {
                    assert!(part != 0.0 || part.is_sign_positive());
                    let whole = [-20.0, 0.0, 20.0].into_iter().any(|whole| (part - whole).abs() < 1e-14);
                    assert!(whole, "{part}");
                }
            }
        }
    }

    #[test]
    fn the_parts_have_the_signs_of_where_the_wind_comes_from() {
        let course = TrueBearing::from_degrees(350.0);
        for (from_deg, headwind_kt, crosswind_kt) in
            [(350.0, 10.0, 0.0), (80.0, 0.0, 10.0), (170.0, -10.0, 0.0), (260.0, 0.0, -10.0)]
        {
            let parts = wind(from_deg, 10.0).along(course);
            assert!((parts.headwind.value().get::<knot>() - headwind_kt).abs() < 1e-14, "{from_deg}");
            assert!((parts.crosswind.value().get::<knot>() - crosswind_kt).abs() < 1e-14, "{from_deg}");
        }
    }

    #[test]
    fn put_together_they_are_the_wind() {
        let course = TrueBearing::from_degrees(213.0);
        for from_deg in [0.0, 90.0, 179.0, 301.0] {
            let given = wind(from_deg, 34.5);
            let back = Wind::from_components(course, given.along(course)).unwrap();
            assert!((back.from.degrees() - from_deg).abs() < 1e-12, "{back:?}");
            assert!((back.speed.value().get::<knot>() - 34.5).abs() < 1e-12, "{back:?}");
        }
        let calm = Wind::<crate::value::TrueNorth>::calm();
        assert_eq!(Wind::from_components(course, calm.along(course)), Ok(calm));
    }
}
