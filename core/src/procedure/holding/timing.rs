//! How long a leg of a holding pattern is timed, and which leg.

use crate::value::units::{Time, foot, seconds};
use crate::value::{IndicatedAltitude, choice};

choice! {
    /// Whose timing a holding pattern has. The two differ in the leg that is timed.
    TimingAuthority {
        /// ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 6 Chapter 1: the outbound leg, in still air.
        Icao = 0: "icao",
        /// FAA Aeronautical Information Manual 5-3-8, edition not shown in the copy read: the inbound leg.
        Faa = 1: "faa",
    }
}

choice! {
    /// The leg of a holding pattern that the clock is for, and where the clock is started.
    TimedLeg {
        /// The inbound leg, from wings level to the fix.
        Inbound = 0: "inbound",
        /// The outbound leg, from abeam the fix, or from wings level where the fix is passed abeam in the turn.
        Outbound = 1: "outbound",
        /// The outbound leg from wings level, for a fix whose passage abeam cannot be told.
        OutboundFromLevel = 2: "outbound_from_level",
    }
}

/// What is timed, and for how long.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LegTiming {
    /// The leg.
    pub leg: TimedLeg,
    /// Its time.
    pub time: Time,
}

/// The altitude up to which a leg is one minute, in feet; it belongs to the lower band.
const ONE_MINUTE_TO_FT: f64 = 14_000.0;

/// The leg that is timed in a holding pattern without a distance, and its time.
///
/// One minute at or below 14 000 ft, a minute and a half above: of the outbound leg in still air by ICAO, of the inbound leg
/// by the FAA. Outbound the clock starts over or abeam the fix, whichever is later; where abeam cannot be told, when the turn
/// outbound is complete ([`TimedLeg::OutboundFromLevel`]).
///
/// # Source
/// Named at [`TimingAuthority`]; the start of the outbound clock: FAA Aeronautical Information Manual 5-3-8, edition not shown in
/// the copy read.
///
/// # Example
/// ```
/// use lubberline::procedure::{TimedLeg, TimingAuthority, leg_timing};
/// use lubberline::value::{IndicatedAltitude, units::*};
/// let timing = leg_timing(TimingAuthority::Faa, IndicatedAltitude::new(feet(15_000.0))?);
/// assert_eq!(format!("{:.0}", timing.time.get::<second>()), "90");
/// assert_eq!(timing.leg, TimedLeg::Inbound);
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn leg_timing(authority: TimingAuthority, altitude: IndicatedAltitude) -> LegTiming {
    let low = altitude.value().get::<foot>() <= ONE_MINUTE_TO_FT;
    LegTiming {
        leg: match authority {
            TimingAuthority::Icao => TimedLeg::Outbound,
            TimingAuthority::Faa => TimedLeg::Inbound,
        },
        time: seconds(if low { 60.0 } else { 90.0 }),
    }
}
