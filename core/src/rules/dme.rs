//! What is said of DME and of the cone above a station.

use crate::value::HeightAboveStation;
use crate::value::units::{Length, foot, nautical_miles};

/// The least DME reading overhead: the height in miles, at 6 000 ft to the mile.
///
/// A nautical mile is 6 076.1 ft, so the rule reads 1.3 percent high.
///
/// # Source
/// Common practice; FAA-H-8083-15 (Instrument Flying Handbook) gives 12 000 ft for about 2 NM (from memory).
///
/// # Example
/// ```
/// use lubberline::rules::least_dme;
/// use lubberline::value::{HeightAboveStation, units::*};
/// assert_eq!(format!("{:.1}", least_dme(HeightAboveStation::new(feet(30_000.0))?).get::<nautical_mile>()), "5.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn least_dme(height: HeightAboveStation) -> Length {
    nautical_miles(height.value().get::<foot>().abs() / 6000.0)
}

/// The cone of confusion as wide on each side as the aircraft is high.
///
/// That is a half-angle of 45 degrees; ICAO Doc 8168 takes 50, which is wider by 19 percent.
///
/// # Source
/// Common practice.
///
/// # Example
/// ```
/// use lubberline::rules::cone_radius;
/// use lubberline::value::{HeightAboveStation, units::*};
/// assert_eq!(format!("{:.1}", cone_radius(HeightAboveStation::new(feet(30_000.0))?).get::<nautical_mile>()), "5.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cone_radius(height: HeightAboveStation) -> Length {
    nautical_miles(height.value().get::<foot>().max(0.0) / 6000.0)
}

/// The DME reading from which on the slant is not counted: a nautical mile for each 1 000 ft.
///
/// There the reading is 1.35 percent more than the distance along the ground, and less beyond: [`super::ground_distance_error`].
///
/// # Source
/// FAA-H-8083-15 (Instrument Flying Handbook), as study notes quote it.
///
/// # Example
/// ```
/// use lubberline::rules::slant_negligible_from;
/// use lubberline::value::{HeightAboveStation, units::*};
/// assert_eq!(format!("{:.0}", slant_negligible_from(HeightAboveStation::new(feet(12_000.0))?).get::<nautical_mile>()), "12");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn slant_negligible_from(height: HeightAboveStation) -> Length {
    nautical_miles(height.value().get::<foot>().abs() / 1000.0)
}
