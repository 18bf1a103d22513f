//! The lead of a course change by mental arithmetic.

use super::least_dme;
use crate::value::units::{Length, degree, foot, knot, nautical_miles};
use crate::value::{DirectionChange, Groundspeed, HeightAboveStation};

/// A third of a nautical mile for each 60 kt of groundspeed for a change of 90 degrees, in proportion for less.
///
/// It is the standard-rate radius in round numbers: 1.0 NM at 180 kt, where V / (60 π) gives 0.95. It knows nothing of bank limits:
/// at jet speeds standard rate needs more bank than anyone flies, and the rule is short there by half and more.
///
/// # Degenerate cases
/// Beyond 90 degrees the proportion goes on, while the exact lead grows like the tangent of half the change.
///
/// # Source
/// Common practice.
///
/// # Example
/// ```
/// use lubberline::rules::third_of_a_mile;
/// use lubberline::value::{DirectionChange, Groundspeed, units::*};
/// assert_eq!(format!("{:.1}", third_of_a_mile(Groundspeed::new(knots(450.0))?, DirectionChange::new(degrees(90.0))?).get::<nautical_mile>()), "2.5");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn third_of_a_mile(groundspeed: Groundspeed, change: DirectionChange) -> Length {
    let miles = groundspeed.value().get::<knot>() / 60.0 / 3.0;
    nautical_miles(miles * change.angle().get::<degree>().abs() / 90.0)
}

/// Half a nautical mile more for each 10 000 ft above 5 000 ft.
///
/// # Source
/// Common practice.
///
/// # Example
/// ```
/// use lubberline::rules::height_allowance;
/// use lubberline::value::{HeightAboveStation, units::*};
/// assert_eq!(format!("{:.1}", height_allowance(HeightAboveStation::new(feet(35_000.0))?).get::<nautical_mile>()), "1.5");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn height_allowance(height: HeightAboveStation) -> Length {
    let above_ft = (height.value().get::<foot>() - 5000.0).max(0.0);
    nautical_miles(0.5 * above_ft / 10_000.0)
}

/// The margin that fast aircraft add to their lead: a quarter to half a mile.
///
/// # Source
/// Common practice.
///
/// # Example
/// ```
/// use lubberline::rules::margin_for_fast_aircraft;
/// use lubberline::value::{units::*};
/// let (least, most) = margin_for_fast_aircraft();
/// assert_eq!(format!("{:.1}", most.get::<nautical_mile>()), "0.5");
/// assert!(least < most);
/// ```
pub fn margin_for_fast_aircraft() -> (Length, Length) {
    (nautical_miles(0.25), nautical_miles(0.5))
}

/// The lead with its allowance for height: [`third_of_a_mile`] and [`height_allowance`].
///
/// # Source
/// Common practice.
///
/// # Example
/// ```
/// use lubberline::rules::rule_lead;
/// use lubberline::value::{DirectionChange, Groundspeed, HeightAboveStation, units::*};
/// assert_eq!(format!("{:.1}", rule_lead(Groundspeed::new(knots(450.0))?, DirectionChange::new(degrees(90.0))?, HeightAboveStation::new(feet(35_000.0))?).get::<nautical_mile>()), "4.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_lead(groundspeed: Groundspeed, change: DirectionChange, height: HeightAboveStation) -> Length {
    third_of_a_mile(groundspeed, change) + height_allowance(height)
}

/// The DME reading at which the mental arithmetic begins the turn: [`third_of_a_mile`] added to the reading overhead.
///
/// Two errors meet in it. The lead is that of standard rate, too short for a fast aircraft; and distance and height are
/// added, where the slant is the root of their squares, which is always less. The second makes up for the first, more or less.
///
/// # Source
/// Common practice.
///
/// # Example
/// ```
/// use lubberline::rules::reading;
/// use lubberline::value::{DirectionChange, Groundspeed, HeightAboveStation, units::*};
/// assert_eq!(format!("{:.1}", reading(Groundspeed::new(knots(450.0))?, DirectionChange::new(degrees(90.0))?, HeightAboveStation::new(feet(36_000.0))?).get::<nautical_mile>()), "8.5");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn reading(groundspeed: Groundspeed, change: DirectionChange, height: HeightAboveStation) -> Length {
    third_of_a_mile(groundspeed, change) + least_dme(height)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{degrees, feet, knots, nautical_mile};

    fn at(
        speed_kt: f64,
        change_deg: f64,
        height_ft: f64,
    ) -> (Groundspeed, DirectionChange, HeightAboveStation) {
        (
            Groundspeed::new(knots(speed_kt)).unwrap(),
            DirectionChange::new(degrees(change_deg)).unwrap(),
            HeightAboveStation::new(feet(height_ft)).unwrap(),
        )
    }

    #[test]
    fn the_rule_is_as_it_is_said() {
        let (speed, change, height) = at(180.0, 90.0, 25_000.0);
        assert!((third_of_a_mile(speed, change) - nautical_miles(1.0)).abs() < nautical_miles(1e-12));
        assert!((height_allowance(height) - nautical_miles(1.0)).abs() < nautical_miles(1e-12));
        assert!((rule_lead(speed, change, height) - nautical_miles(2.0)).abs() < nautical_miles(1e-12));
        let (speed, change, low) = at(360.0, -45.0, 3000.0);
        assert!((rule_lead(speed, change, low) - nautical_miles(1.0)).abs() < nautical_miles(1e-12));
        assert!((reading(speed, change, low).get::<nautical_mile>() - 1.5).abs() < 1e-12);
    }
}
