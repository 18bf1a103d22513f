//! The leads that plane geometry gives in still air with an instant roll.

use super::RadialFlown;
use crate::Error;
use crate::value::units::{Angle, Length, degrees, meter, metres, nautical_mile, radian};
use crate::value::{ArcRadius, DirectionChange, GroundDistance};

/// Distance of turn anticipation, `r · tan(change / 2)`.
///
/// # Degenerate cases
/// It grows without bound toward a reversal.
///
/// # Errors
/// [`Error::LeadTooLong`] for a change of 180 degrees to rounding.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 3 Chapter 8, 8.1.5.1.1, and Part I Section 4 Chapter 2, 2.1.1.
///
/// # Example
/// ```
/// use lubberline::lead::turn_anticipation;
/// use lubberline::value::{ArcRadius, DirectionChange, units::*};
/// assert_eq!(format!("{:.3}", turn_anticipation(ArcRadius::new(nautical_miles(2.5))?, DirectionChange::new(degrees(60.0))?)?.get::<nautical_mile>()), "1.443");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn turn_anticipation(turn_radius: ArcRadius, change: DirectionChange) -> Result<Length, Error> {
    let lead = turn_radius.value() * (change.angle().get::<radian>().abs() / 2.0).tan();
    let (needed_nm, allowed_nm) = (lead.get::<nautical_mile>(), super::LONGEST_LEAD_NM);
    if needed_nm <= allowed_nm { Ok(lead) } else { Err(Error::LeadTooLong { needed_nm, allowed_nm }) }
}

/// Distance from the station at which to leave a radial for an arc: `sqrt(D² + 2 D r)` inbound, `sqrt(D² - 2 D r)` outbound.
///
/// # Errors
/// [`Error::ArcTooTight`] outbound for an arc below twice the turn radius.
///
/// # Source
/// Derived: the turn is a circle tangent to the radial and to the arc.
///
/// # Example
/// ```
/// use lubberline::lead::{RadialFlown, arc_entry};
/// use lubberline::value::{ArcRadius, units::*};
/// assert_eq!(format!("{:.2}", arc_entry(ArcRadius::new(nautical_miles(12.0))?, ArcRadius::new(nautical_miles(1.0))?, RadialFlown::Inbound)?.value().get::<nautical_mile>()), "12.96");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn arc_entry(
    arc: ArcRadius,
    turn_radius: ArcRadius,
    flown: RadialFlown,
) -> Result<GroundDistance, Error> {
    let (arc_m, turn_m) = (arc.value().get::<meter>(), turn_radius.value().get::<meter>());
    let square_m2 = match flown {
        RadialFlown::Inbound => arc_m * (arc_m + 2.0 * turn_m),
        RadialFlown::Outbound => arc_m * (arc_m - 2.0 * turn_m),
    };
    if square_m2 < 0.0 {
        return Err(too_tight(arc, turn_radius));
    }
    Ok(GroundDistance::derived(metres(square_m2.sqrt())))
}

/// Angle at the station by which the turn off an arc begins before the radial: `asin(r / (D - r))` for a radial flown
/// inbound, `asin(r / (D + r))` for one flown outbound.
///
/// # Errors
/// [`Error::ArcTooTight`] inbound for an arc below twice the turn radius.
///
/// # Source
/// As [`arc_entry`].
///
/// # Example
/// ```
/// use lubberline::lead::{RadialFlown, lead_radial};
/// use lubberline::value::{ArcRadius, units::*};
/// assert_eq!(format!("{:.1}", lead_radial(ArcRadius::new(nautical_miles(12.0))?, ArcRadius::new(nautical_miles(1.0))?, RadialFlown::Inbound)?.get::<degree>()), "5.2");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn lead_radial(arc: ArcRadius, turn_radius: ArcRadius, flown: RadialFlown) -> Result<Angle, Error> {
    let (arc_m, turn_m) = (arc.value().get::<meter>(), turn_radius.value().get::<meter>());
    let center_m = match flown {
        RadialFlown::Inbound => arc_m - turn_m,
        RadialFlown::Outbound => arc_m + turn_m,
    };
    if center_m < turn_m {
        return Err(too_tight(arc, turn_radius));
    }
    Ok(degrees((turn_m / center_m).asin().to_degrees()))
}

fn too_tight(arc: ArcRadius, turn_radius: ArcRadius) -> Error {
    Error::ArcTooTight {
        arc_radius_nm: arc.value().get::<nautical_mile>(),
        turn_radius_nm: turn_radius.value().get::<nautical_mile>(),
    }
}
