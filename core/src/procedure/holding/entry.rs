//! How a holding pattern is entered: by the sector in which the heading lies.

use crate::value::units::{Angle, degrees};
use crate::value::{Bearing, DirectionChange, North, choice};

choice! {
    /// Which way the turns of a holding pattern go.
    HoldingSide {
        /// To the right, which is standard.
        Right = 1: "right",
        /// To the left.
        Left = -1: "left",
    }
}

choice! {
    /// How a holding pattern is entered; the codes are the numbers of the sectors.
    HoldingEntry {
        /// Sector 1: outbound along the inbound course, then back through the holding side.
        Parallel = 1: "parallel",
        /// Sector 2, the teardrop: outbound at 30 degrees into the holding side, then onto the inbound course.
        Offset = 2: "offset",
        /// Sector 3: round the pattern.
        Direct = 3: "direct",
    }
}

/// The angle at which an offset entry leaves the outbound course into the holding side, in degrees.
///
/// Source: CNATRA P-801; P-1215 figure 30; ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 4
/// Chapter 3 Appendix C, 3.3.4.1.2.5.
pub const OFFSET_ENTRY_DEG: f64 = 30.0;

/// Half the width of the zone about a boundary in which either entry may be flown, in degrees.
///
/// Source: ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 6 Chapter 1 (from memory); CNATRA P-821 figure 3-8 shows it.
pub const FLEXIBILITY_DEG: f64 = 5.0;

/// Rounding that two bearings leave in their difference, in degrees.
const ROUNDING_DEG: f64 = 1e-9;

/// The sectors' boundaries as the angle from the heading to the outbound course, positive to the holding side, with the
/// entries that meet there.
const BOUNDARIES: [(f64, HoldingEntry, HoldingEntry); 3] = [
    (0.0, HoldingEntry::Parallel, HoldingEntry::Offset),
    (70.0, HoldingEntry::Offset, HoldingEntry::Direct),
    (-110.0, HoldingEntry::Direct, HoldingEntry::Parallel),
];

/// The entry for a heading, and what else the sectors say.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EntrySector<N: North> {
    /// The entry of the sector in which the heading lies.
    pub entry: HoldingEntry,
    /// The entry across the boundary, if the heading lies in the zone of flexibility about it.
    pub also: Option<HoldingEntry>,
    /// From the heading to the outbound course, right positive.
    pub to_outbound: DirectionChange,
    /// Angle between the heading and the nearest boundary, without its side.
    pub to_boundary: Angle,
    /// The first course flown from the fix: the outbound course, 30 degrees off it into the holding side for an offset entry.
    pub first_course: Bearing<N>,
}

/// The entry into a holding pattern for the heading at which its fix is reached.
///
/// With the angle from the heading to the outbound course counted positive to the side of the turns: from 0 to 70 degrees
/// offset, from 0 to -110 parallel, else direct. Within 5 degrees of a boundary the entry across it may be flown too.
///
/// # Degenerate cases
/// On a boundary the heading lies in the zone, so both entries are given: at 0 offset is named first, at 70 offset, at -110
/// parallel. Where a station's radials or arcs are all that may be followed to the fix, there are no sectors.
///
/// # Source
/// CNATRA P-821 figure 3-8; P-801 figures 17A and 17B. The zone of 5 degrees: FAA Aeronautical Information Manual (3 April 2014), 5-3-8 j 6 (d);
/// ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 6 Chapter 1 (from memory).
///
/// # Example
/// ```
/// use lubberline::procedure::{HoldingEntry, HoldingSide, entry_sector};
/// use lubberline::value::{MagneticBearing, units::degrees};
/// let magnetic = |value| MagneticBearing::new(degrees(value));
/// let sector = entry_sector(magnetic(15.0)?, magnetic(270.0)?, HoldingSide::Right);
/// assert_eq!((sector.entry, sector.also), (HoldingEntry::Direct, Some(HoldingEntry::Offset)));
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn entry_sector<N: North>(heading: Bearing<N>, inbound: Bearing<N>, side: HoldingSide) -> EntrySector<N> {
    let sign = f64::from(side.code());
    let outbound = inbound.reciprocal();
    let to_outbound = heading.change_to(outbound);
    let angle_deg = sign * to_outbound.degrees();
    let entry = if (0.0..=70.0).contains(&angle_deg) {
        HoldingEntry::Offset
    } else if (-110.0..=0.0).contains(&angle_deg) {
        HoldingEntry::Parallel
    } else {
        HoldingEntry::Direct
    };
    let mut nearest_deg = f64::INFINITY;
    let mut also = None;
    for (boundary_deg, below, above) in BOUNDARIES {
        let off_deg = DirectionChange::from_degrees(angle_deg - boundary_deg).degrees().abs();
        nearest_deg = nearest_deg.min(off_deg);
        if off_deg <= FLEXIBILITY_DEG + ROUNDING_DEG {
            also = Some(if entry == below { above } else { below });
        }
    }
    let into_side_deg = if entry == HoldingEntry::Offset { -sign * OFFSET_ENTRY_DEG } else { 0.0 };
    EntrySector {
        entry,
        also,
        to_outbound,
        to_boundary: degrees(nearest_deg),
        first_course: outbound.turned_by(DirectionChange::from_degrees(into_side_deg)),
    }
}

#[cfg(test)]
mod tests {
    use super::HoldingEntry::{Direct, Offset, Parallel};
    use super::*;
    use crate::value::TrueBearing;

    fn sector(outbound_deg: f64, side: HoldingSide) -> (HoldingEntry, Option<HoldingEntry>) {
        let inbound = TrueBearing::from_degrees(outbound_deg + 180.0);
        let found = entry_sector(TrueBearing::from_degrees(0.0), inbound, side);
        (found.entry, found.also)
    }

    /// From a heading of north: CNATRA P-821 figure 3-8 and its boundary example, an outbound course 75 degrees to the right.
    #[test]
    fn the_sectors_are_as_published() {
        for (outbound_deg, expected) in [
            (35.0, (Offset, None)),
            (70.0, (Offset, Some(Direct))),
            (75.0, (Direct, Some(Offset))),
            (75.1, (Direct, None)),
            (64.9, (Offset, None)),
            (90.0, (Direct, None)),
            (180.0, (Direct, None)),
            (244.0, (Direct, None)),
            (246.0, (Direct, Some(Parallel))),
            (250.0, (Parallel, Some(Direct))),
            (260.0, (Parallel, None)),
            (300.0, (Parallel, None)),
            (357.0, (Parallel, Some(Offset))),
            (0.0, (Offset, Some(Parallel))),
        ] {
            assert_eq!(sector(outbound_deg, HoldingSide::Right), expected, "right, {outbound_deg}");
            assert_eq!(sector(-outbound_deg, HoldingSide::Left), expected, "left, {outbound_deg}");
        }
    }

    #[test]
    fn the_offset_goes_into_the_holding_side() {
        // Inbound north with right turns, the pattern lies to the east: an offset outbound goes south-south-east.
        let north = TrueBearing::from_degrees(0.0);
        let right = entry_sector(TrueBearing::from_degrees(150.0), north, HoldingSide::Right);
        assert_eq!((right.entry, right.first_course.degrees()), (Offset, 150.0));
        let left = entry_sector(TrueBearing::from_degrees(210.0), north, HoldingSide::Left);
        assert_eq!((left.entry, left.first_course.degrees()), (Offset, 210.0));
        let direct = entry_sector(north, north, HoldingSide::Right);
        assert_eq!((direct.entry, direct.first_course.degrees()), (Direct, 180.0));
    }
}
