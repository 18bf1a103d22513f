//! The legs: how each is flown and what ends it.

use super::LegCode;
use crate::lead::ArcSense;
use crate::procedure::holding::{HoldingSide, TimedLeg};
use crate::station::{Ident, Station};
use crate::value::units::metres;
use crate::value::{
    Declination, Elevation, GroundDistance, HoldTime, Position, Radial, SlantRange, TrueAltitude,
    TrueBearing, choice,
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

choice! {
    /// The procedure turn that reverses a course.
    ReversalForm {
        /// Off by 45 degrees for a time, and half a circle back.
        Off45 = 0: "45_180",
        /// Off by 80 degrees and at once back the other way.
        Off80 = 1: "80_260",
    }
}

/// How long a racetrack is: by its inbound or its outbound leg, in time or distance, or by a DME reading.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum HoldLength {
    /// The time of one of its legs.
    Time(TimedLeg, HoldTime),
    /// The distance over the ground of one of its legs, counted from where its clock would start.
    Distance(TimedLeg, GroundDistance),
    /// The DME reading at which the turn inbound begins.
    Dme(Station, SlantRange),
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
    /// How long it is.
    pub length: HoldLength,
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
    /// AF: the arc about a station, at the ground distance of the fix, one way round or the other, to the fix.
    ArcToFix {
        /// The station.
        station: Position,
        /// Which way round it the arc goes.
        sense: ArcSense,
        /// Where it ends.
        fix: Fix,
    },
    /// RF: an arc about a centre to a fix, tangent to what comes before and after.
    RadiusToFix {
        /// The centre.
        center: Position,
        /// Which way round it the arc goes.
        sense: ArcSense,
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
    /// HM: a racetrack until ended by hand; one is flown after the entry.
    HoldToManual(Hold),
    /// PI: a procedure turn off an outbound course, until it meets the next leg.
    ProcedureTurn {
        /// The fix the outbound course is flown from.
        fix: Position,
        /// The outbound course.
        outbound: TrueBearing,
        /// Distance along it from the fix before turning off.
        outbound_distance: GroundDistance,
        /// Whether the first turn goes to the right.
        first_right: bool,
        /// Which turn it is.
        form: ReversalForm,
        /// Time from the start of the first turn to that of the second, of the 45/180: [`crate::procedure::OFF_LEG_SLOW_S`] for
        /// categories A and B, [`crate::procedure::OFF_LEG_FAST_S`] for C to E.
        off_time: HoldTime,
    },
}

impl Leg {
    /// Which leg it is; its [`LegCode::word`] is the two letters.
    pub const fn code(&self) -> LegCode {
        match self {
            Self::InitialFix(..) => LegCode::InitialFix,
            Self::TrackToFix(..) => LegCode::TrackToFix,
            Self::CourseToFix(..) => LegCode::CourseToFix,
            Self::DirectToFix(..) => LegCode::DirectToFix,
            Self::ArcToFix { .. } => LegCode::ArcToFix,
            Self::RadiusToFix { .. } => LegCode::RadiusToFix,
            Self::FixToAltitude(..) => LegCode::FixToAltitude,
            Self::FixToDistance(..) => LegCode::FixToDistance,
            Self::FixToDme(..) => LegCode::FixToDme,
            Self::FixToManual(..) => LegCode::FixToManual,
            Self::CourseToAltitude(..) => LegCode::CourseToAltitude,
            Self::CourseToDme(..) => LegCode::CourseToDme,
            Self::CourseToIntercept(..) => LegCode::CourseToIntercept,
            Self::CourseToRadial(..) => LegCode::CourseToRadial,
            Self::HeadingToAltitude(..) => LegCode::HeadingToAltitude,
            Self::HeadingToDme(..) => LegCode::HeadingToDme,
            Self::HeadingToIntercept(..) => LegCode::HeadingToIntercept,
            Self::HeadingToManual(..) => LegCode::HeadingToManual,
            Self::HeadingToRadial(..) => LegCode::HeadingToRadial,
            Self::HoldToAltitude(..) => LegCode::HoldToAltitude,
            Self::HoldToFix(..) => LegCode::HoldToFix,
            Self::HoldToManual(..) => LegCode::HoldToManual,
            Self::ProcedureTurn { .. } => LegCode::ProcedureTurn,
        }
    }

    /// The altitude that ends it, if one does.
    pub fn end_altitude(&self) -> Option<TrueAltitude> {
        match self {
            Self::FixToAltitude(.., altitude)
            | Self::CourseToAltitude(_, altitude)
            | Self::HeadingToAltitude(_, altitude)
            | Self::HoldToAltitude(_, altitude) => Some(*altitude),
            _ => None,
        }
    }

    /// The station that its end is told by, if one is: that of a DME reading, a radial or an arc. An arc's station is a place alone, taken
    /// here at sea level.
    pub fn station(&self) -> Option<Station> {
        match self {
            Self::FixToDme(_, _, station, _)
            | Self::CourseToDme(_, station, _)
            | Self::CourseToRadial(_, station, _)
            | Self::HeadingToDme(_, station, _)
            | Self::HeadingToRadial(_, station, _) => Some(*station),
            Self::ArcToFix { station, .. } => Some(Station {
                position: *station,
                elevation: Elevation::derived(metres(0.0)),
                declination: Declination::ZERO,
                ident: Ident::NONE,
            }),
            _ => None,
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
