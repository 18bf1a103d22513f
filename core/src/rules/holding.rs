//! Wind in the holding pattern by mental arithmetic.

use crate::value::units::{Time, knot, seconds};
use crate::value::{Bearing, DirectionChange, HoldTime, North, WindComponent, choice};

choice! {
    /// By how much the inbound wind correction is multiplied outbound. The rules contradict each other; the exact factor
    /// depends on the times, the turns and the wind, and is [`crate::procedure::HoldingPattern::drift_factor`].
    DriftRule {
        /// Twice. The lower end of CNATRA P-1244 p. 5-17, which says two to three times.
        Double = 2: "double",
        /// Three times. FAA Aeronautical Information Manual (3 April 2014), 5-3-8 j 6 (c), and (20 April 2023), 5-3-8 j; CNATRA P-871 chapter 4; the upper end of P-1244.
        Triple = 3: "triple",
    }
}

/// The outbound heading by a rule: the reciprocal of the inbound course, corrected the other way by a multiple of the inbound
/// correction.
///
/// # Source
/// Named at [`DriftRule`].
///
/// # Example
/// ```
/// use lubberline::rules::{DriftRule, outbound_heading};
/// use lubberline::value::{DirectionChange, TrueBearing, units::*};
/// // CNATRA P-871, Figure 4-16.
/// assert_eq!(format!("{:.0}", outbound_heading(TrueBearing::new(degrees(270.0))?, DirectionChange::new(degrees(5.0))?, DriftRule::Triple).angle().get::<degree>()), "75");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn outbound_heading<N: North>(
    inbound: Bearing<N>,
    inbound_correction: DirectionChange,
    rule: DriftRule,
) -> Bearing<N> {
    let outbound_deg = -f64::from(rule.code()) * inbound_correction.degrees();
    inbound.reciprocal().turned_by(DirectionChange::from_degrees(outbound_deg))
}

/// The next outbound time: the last one, and the seconds by which the inbound leg came out short.
///
/// It leaves out that the two legs are flown at different groundspeeds, so it takes several rounds to settle. Against a strong
/// headwind inbound the first outbound leg is flown for no less than 30 s (CNATRA P-871 chapter 4).
///
/// # Degenerate cases
/// An inbound leg longer than the last outbound and the wanted one together asks for no outbound leg: the time is zero.
///
/// # Source
/// CNATRA P-871 chapter 4, figure 4-16.
///
/// # Example
/// ```
/// use lubberline::rules::next_outbound_time;
/// use lubberline::value::{HoldTime, units::*};
/// let minute = HoldTime::new(seconds(60.0))?;
/// // CNATRA P-871, Figure 4-16.
/// assert_eq!(format!("{:.0}", next_outbound_time(minute, HoldTime::new(seconds(50.0))?, minute).get::<second>()), "70");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn next_outbound_time(outbound: HoldTime, inbound: HoldTime, wanted: HoldTime) -> Time {
    let next = outbound.value() + wanted.value() - inbound.value();
    if next.value > 0.0 { next } else { seconds(0.0) }
}

/// The outbound time for a known wind: the still-air time, and a second for each knot of headwind outbound, less one for each
/// knot of tailwind.
///
/// # Degenerate cases
/// A tailwind beyond the time leaves no outbound leg: the time is zero.
///
/// # Source
/// Common practice.
///
/// # Example
/// ```
/// use lubberline::rules::outbound_time_by_headwind;
/// use lubberline::value::{HoldTime, WindComponent, units::*};
/// assert_eq!(format!("{:.0}", outbound_time_by_headwind(HoldTime::new(seconds(60.0))?, WindComponent::new(knots(20.0))?).get::<second>()), "80");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn outbound_time_by_headwind(still_air: HoldTime, outbound_headwind: WindComponent) -> Time {
    let time = still_air.value() + seconds(outbound_headwind.value().get::<knot>());
    if time.value > 0.0 { time } else { seconds(0.0) }
}
