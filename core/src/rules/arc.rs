//! DME arcs by the sixty-to-one rule.

use crate::lead::RadialFlown;
use crate::value::units::{Angle, Length, Ratio, degrees, nautical_mile, nautical_miles, ratio};
use crate::value::{ArcRadius, GroundDistance, choice};

choice! {
    /// How the lead for a turn off an arc is corrected for the direction of the radial.
    ArcLeadRule {
        /// Not at all: radials per mile times the radius. CNATRA P-871 chapter 4.
        Plain = 0: "plain",
        /// The radius times (90 ± lead) / 90. CNATRA P-1204 p. 76 (4-01), printed formula.
        Proportion = 1: "proportion",
        /// A third more inbound, a third less outbound, inside 10 NM. CNATRA P-1265 p. 2-10 (5-99).
        Third = 2: "third",
        /// The miles of the proportion, added to the lead inbound and taken from it outbound as if they were radials: (60 / D) r ± r (90 ± lead) / 90. The
        /// worked example of CNATRA P-1204 p. 76 (4-01), which contradicts the text beside it.
        AddedMiles = 3: "added_miles",
    }
}

choice! {
    /// How far before an arc, along a radial, the turn onto it begins.
    ArcEntryRule {
        /// The radius of the turn. CNATRA P-871 chapter 4.
        Radius = 0: "radius",
        /// The radius, and on an arc inside 12 NM half a mile more outbound, half a mile less inbound. CNATRA P-1265 p. 2-11 (5-99).
        RadiusAndHalf = 1: "radius_and_half",
        /// Half a mile, for groundspeeds to 150 kt. FAA-H-8083-15 (Instrument Flying Handbook).
        HalfMile = 2: "half_mile",
    }
}

/// Radials to the mile along an arc, `60 / D` (degrees per nautical mile, as a ratio).
///
/// The exact divisor is 180/π = 57.3: the rule overstates the degrees by 4.7 percent.
///
/// # Source
/// CNATRA P-871 chapter 4, Radial Interception from an Arc.
///
/// # Example
/// ```
/// use lubberline::rules::radials_per_mile;
/// use lubberline::value::{ArcRadius, units::*};
/// assert_eq!(format!("{:.0}", radials_per_mile(ArcRadius::new(nautical_miles(12.0))?).get::<ratio>()), "5");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn radials_per_mile(arc: ArcRadius) -> Ratio {
    Ratio::new::<ratio>(60.0 / arc.value().get::<nautical_mile>())
}

/// The lead in radials for the turn off an arc onto a radial, `(60 / D) r`, corrected by a rule.
///
/// # Degenerate cases
/// Where the exact turn toward the station no longer fits (an arc below twice the radius), the rules still give a number.
///
/// # Source
/// Named at [`ArcLeadRule`]. The page of P-1204 contradicts itself: its table follows the proportion (for 2.5 NM 18 and 13 radials at 10 NM, 27
/// and 16 at 7 NM, 40 and 20 at 5 NM; the first from 17.5 and 12.5), its worked example adds and comes to 17.9 and 12.9.
///
/// # Example
/// ```
/// use lubberline::lead::RadialFlown;
/// use lubberline::rules::{ArcLeadRule, lead_radials};
/// use lubberline::value::{ArcRadius, units::*};
/// assert_eq!(format!("{:.1}", lead_radials(ArcRadius::new(nautical_miles(10.0))?, ArcRadius::new(nautical_miles(2.5))?, RadialFlown::Inbound, ArcLeadRule::Proportion).get::<degree>()), "17.5");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn lead_radials(arc: ArcRadius, turn_radius: ArcRadius, flown: RadialFlown, rule: ArcLeadRule) -> Angle {
    let per_mile = radials_per_mile(arc).get::<ratio>();
    let plain_deg = per_mile * turn_radius.value().get::<nautical_mile>();
    let sign = match flown {
        RadialFlown::Inbound => 1.0,
        RadialFlown::Outbound => -1.0,
    };
    let share = (90.0 + sign * plain_deg) / 90.0;
    degrees(match rule {
        ArcLeadRule::Plain => plain_deg,
        ArcLeadRule::AddedMiles => plain_deg + sign * turn_radius.value().get::<nautical_mile>() * share,
        ArcLeadRule::Proportion => plain_deg * share,
        ArcLeadRule::Third if arc.value().get::<nautical_mile>() <= 10.0 => plain_deg * (1.0 + sign / 3.0),
        ArcLeadRule::Third => plain_deg,
    })
}

/// The distance before an arc, along a radial, at which the turn onto it begins, by a rule.
///
/// # Degenerate cases
/// Inbound the radius less half a mile is no lead for a turn of half a mile: it is zero there.
///
/// # Source
/// Named at [`ArcEntryRule`].
///
/// # Example
/// ```
/// use lubberline::lead::RadialFlown;
/// use lubberline::rules::{ArcEntryRule, arc_entry_lead};
/// use lubberline::value::{ArcRadius, units::*};
/// assert_eq!(format!("{:.1}", arc_entry_lead(ArcRadius::new(nautical_miles(10.0))?, ArcRadius::new(nautical_miles(2.5))?, RadialFlown::Outbound, ArcEntryRule::RadiusAndHalf).get::<nautical_mile>()), "3.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn arc_entry_lead(
    arc: ArcRadius,
    turn_radius: ArcRadius,
    flown: RadialFlown,
    rule: ArcEntryRule,
) -> Length {
    let radius = turn_radius.value();
    let half = nautical_miles(0.5);
    match rule {
        ArcEntryRule::HalfMile => half,
        ArcEntryRule::RadiusAndHalf if arc.value() <= nautical_miles(12.0) => match flown {
            RadialFlown::Outbound => radius + half,
            RadialFlown::Inbound if radius > half => radius - half,
            RadialFlown::Inbound => nautical_miles(0.0),
        },
        ArcEntryRule::Radius | ArcEntryRule::RadiusAndHalf => radius,
    }
}

/// By how much to displace the bearing pointer from the wing tip to get back onto an arc, positive toward the station: 5 degrees away from it
/// for each half mile inside, 10 degrees toward it for each half mile outside.
///
/// # Degenerate cases
/// On the arc there is nothing to displace. From outside the least that meets the arc at all is
/// [`crate::procedure::least_correction`]: the rule is short of it by up to half a mile off a 10 NM arc (10 of 18 degrees).
///
/// # Source
/// CNATRA P-871 chapter 4, To adjust to/from the arc.
///
/// # Example
/// ```
/// use lubberline::rules::arc_correction;
/// use lubberline::value::{ArcRadius, GroundDistance, units::*};
/// assert_eq!(format!("{:.0}", arc_correction(GroundDistance::new(nautical_miles(10.5))?, ArcRadius::new(nautical_miles(10.0))?).get::<degree>()), "10");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn arc_correction(distance: GroundDistance, arc: ArcRadius) -> Angle {
    let off_nm = (distance.value() - arc.value()).get::<nautical_mile>();
    degrees(if off_nm > 0.0 { 20.0 * off_nm } else { 10.0 * off_nm })
}
