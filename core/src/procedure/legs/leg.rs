//! The legs: how each is flown and what ends it.

use crate::procedure::holding::HoldingSide;
use crate::station::Station;
use crate::value::{
    GroundDistance, HoldTime, Position, Radial, SlantRange, TrueAltitude, TrueBearing, choice,
};

choice! {
    /// How a fix is passed.
    Passage {
        /// The turn begins before it, and rolls out on the next course.
        FlyBy = 0: "fly_by",
        /// The turn begins over it.
        FlyOver = 1: "fly_over",
    }
}

/// A fix that ends a leg.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fix {
    /// Where it is.
    pub position: Position,
    /// How it is passed.
    pub passage: Passage,
}

/// A racetrack at a fix.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hold {
    /// The fix it is flown over.
    pub fix: Position,
    /// The course flown to the fix.
    pub inbound: TrueBearing,
    /// Which way its turns go.
    pub side: HoldingSide,
    /// Time flown straight outbound, from wings level.
    pub outbound_time: HoldTime,
}

/// A leg of a procedure. Courses and headings are true; radials are in their station's north.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Leg {
    /// IF: where a sequence begins; no path is flown.
    InitialFix(Fix),
    /// TF: the geodesic from the fix before to this one.
    TrackToFix(Fix),
    /// CF: a course to a fix.
    CourseToFix(TrueBearing, Fix),
    /// DF: from wherever the aircraft is, straight to a fix.
    DirectToFix(Fix),
    /// AF: the arc about a station, at the ground distance of the fix, clockwise or not, to the fix.
    ArcToFix {
        /// The station.
        station: Position,
        /// Whether the arc goes clockwise.
        clockwise: bool,
        /// Where it ends.
        fix: Fix,
    },
    /// RF: an arc about a centre to a fix, tangent to what comes before and after.
    RadiusToFix {
        /// The centre.
        center: Position,
        /// Whether the arc goes clockwise.
        clockwise: bool,
        /// Where it ends.
        fix: Fix,
    },
    /// FA: from a fix on a course to an altitude.
    FixToAltitude(Position, TrueBearing, TrueAltitude),
    /// FC: from a fix on a course for a distance.
    FixToDistance(Position, TrueBearing, GroundDistance),
    /// FD: from a fix on a course to a DME reading.
    FixToDme(Position, TrueBearing, Station, SlantRange),
    /// FM: from a fix on a course until ended by hand.
    FixToManual(Position, TrueBearing),
    /// CA: a course to an altitude.
    CourseToAltitude(TrueBearing, TrueAltitude),
    /// CD: a course to a DME reading.
    CourseToDme(TrueBearing, Station, SlantRange),
    /// CI: a course until it meets the next leg.
    CourseToIntercept(TrueBearing),
    /// CR: a course to a radial.
    CourseToRadial(TrueBearing, Station, Radial),
    /// VA: a heading to an altitude.
    HeadingToAltitude(TrueBearing, TrueAltitude),
    /// VD: a heading to a DME reading.
    HeadingToDme(TrueBearing, Station, SlantRange),
    /// VI: a heading until it meets the next leg.
    HeadingToIntercept(TrueBearing),
    /// VM: a heading until ended by hand.
    HeadingToManual(TrueBearing),
    /// VR: a heading to a radial.
    HeadingToRadial(TrueBearing, Station, Radial),
    /// HA: a racetrack until an altitude, then on from its fix.
    HoldToAltitude(Hold, TrueAltitude),
    /// HF: one racetrack, then on from its fix.
    HoldToFix(Hold),
    /// HM: a racetrack until ended by hand; one is flown.
    HoldToManual(Hold),
    /// PI: a 45/180 procedure turn off an outbound course, until it meets the next leg.
    ProcedureTurn {
        /// The fix the outbound course is flown from.
        fix: Position,
        /// The outbound course.
        outbound: TrueBearing,
        /// Distance along it before turning off.
        outbound_distance: GroundDistance,
        /// Whether the first turn, of 45 degrees, goes to the right.
        first_right: bool,
    },
}

impl Leg {
    /// The two letters of the leg.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::InitialFix(..) => "IF",
            Self::TrackToFix(..) => "TF",
            Self::CourseToFix(..) => "CF",
            Self::DirectToFix(..) => "DF",
            Self::ArcToFix { .. } => "AF",
            Self::RadiusToFix { .. } => "RF",
            Self::FixToAltitude(..) => "FA",
            Self::FixToDistance(..) => "FC",
            Self::FixToDme(..) => "FD",
            Self::FixToManual(..) => "FM",
            Self::CourseToAltitude(..) => "CA",
            Self::CourseToDme(..) => "CD",
            Self::CourseToIntercept(..) => "CI",
            Self::CourseToRadial(..) => "CR",
            Self::HeadingToAltitude(..) => "VA",
            Self::HeadingToDme(..) => "VD",
            Self::HeadingToIntercept(..) => "VI",
            Self::HeadingToManual(..) => "VM",
            Self::HeadingToRadial(..) => "VR",
            Self::HoldToAltitude(..) => "HA",
            Self::HoldToFix(..) => "HF",
            Self::HoldToManual(..) => "HM",
            Self::ProcedureTurn { .. } => "PI",
        }
    }

    /// The fix that ends it, if one does.
    pub const fn ends_at(&self) -> Option<Fix> {
        match self {
            Self::InitialFix(fix)
            | Self::TrackToFix(fix)
            | Self::CourseToFix(_, fix)
            | Self::DirectToFix(fix)
            | Self::ArcToFix { fix, .. }
            | Self::RadiusToFix { fix, .. } => Some(*fix),
            Self::HoldToAltitude(hold, _) | Self::HoldToFix(hold) | Self::HoldToManual(hold) => {
                Some(Fix { position: hold.fix, passage: Passage::FlyOver })
            }
            _ => None,
        }
    }
}
