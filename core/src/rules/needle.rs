//! How far off course the needle says one is.

use crate::value::units::{Length, feet, nautical_mile, ratio};
use crate::value::{Dots, StationDistance};

/// Distance off course, right positive: 200 ft for each dot and each nautical mile from the station.
///
/// A dot is two degrees, which is 212 ft at a nautical mile: the rule is 6 percent short near the centre.
///
/// # Degenerate cases
/// The proportion goes on past the end of the scale.
///
/// # Source
/// Common practice, as printed on training pages for the FAA's written test.
///
/// # Example
/// ```
/// use lubberline::rules::off_course;
/// use lubberline::value::{Dots, StationDistance, units::*};
/// assert_eq!(format!("{:.2}", off_course(Dots::new(Ratio::new::<ratio>(1.0))?, StationDistance::new(nautical_miles(30.0))?).get::<nautical_mile>()), "-0.99");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn off_course(deflection: Dots, distance: StationDistance) -> Length {
    feet(-200.0 * deflection.value().get::<ratio>() * distance.value().get::<nautical_mile>() + 0.0)
}
