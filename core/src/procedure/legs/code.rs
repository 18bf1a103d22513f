//! The codes of legs, and what their two letters say.

use crate::value::choice;

choice! {
    /// The legs of ARINC 424: how the path is flown, and what ends it. See [`super::Leg`].
    LegCode {
        /// Initial fix.
        InitialFix = 1: "IF",
        /// Track to a fix.
        TrackToFix = 2: "TF",
        /// Course to a fix.
        CourseToFix = 3: "CF",
        /// Direct to a fix.
        DirectToFix = 4: "DF",
        /// DME arc to a fix.
        ArcToFix = 5: "AF",
        /// Radius to a fix.
        RadiusToFix = 6: "RF",
        /// Fix to an altitude.
        FixToAltitude = 7: "FA",
        /// Fix to a distance.
        FixToDistance = 8: "FC",
        /// Fix to a DME reading.
        FixToDme = 9: "FD",
        /// Fix until ended by hand.
        FixToManual = 10: "FM",
        /// Course to an altitude.
        CourseToAltitude = 11: "CA",
        /// Course to a DME reading.
        CourseToDme = 12: "CD",
        /// Course until it meets the next leg.
        CourseToIntercept = 13: "CI",
        /// Course to a radial.
        CourseToRadial = 14: "CR",
        /// Heading to an altitude.
        HeadingToAltitude = 15: "VA",
        /// Heading to a DME reading.
        HeadingToDme = 16: "VD",
        /// Heading until it meets the next leg.
        HeadingToIntercept = 17: "VI",
        /// Heading until ended by hand.
        HeadingToManual = 18: "VM",
        /// Heading to a radial.
        HeadingToRadial = 19: "VR",
        /// Racetrack to an altitude.
        HoldToAltitude = 20: "HA",
        /// One racetrack.
        HoldToFix = 21: "HF",
        /// Racetrack until ended by hand.
        HoldToManual = 22: "HM",
        /// Procedure turn until it meets the next leg.
        ProcedureTurn = 23: "PI",
    }
}

choice! {
    /// How the path of a leg is flown: what the first letter of its code says, or both.
    LegPath {
        /// No path: where a sequence begins.
        Initial = 0: "initial",
        /// The geodesic between two fixes.
        Track = 1: "track",
        /// A course over the ground.
        Course = 2: "course",
        /// Straight to a fix from wherever the aircraft is.
        Direct = 3: "direct",
        /// An arc about a DME station.
        DmeArc = 4: "dme_arc",
        /// An arc of a given radius, tangent to what comes before and after.
        Radius = 5: "radius",
        /// A course from a fix.
        CourseFromFix = 6: "course_from_fix",
        /// A heading, off which the wind carries.
        Heading = 7: "heading",
        /// A racetrack.
        Hold = 8: "hold",
        /// A course reversal by a procedure turn.
        ProcedureTurn = 9: "procedure_turn",
    }
}

choice! {
    /// What ends a leg: what the second letter of its code says.
    LegEnd {
        /// A fix.
        Fix = 0: "fix",
        /// An altitude.
        Altitude = 1: "altitude",
        /// A distance along the track.
        Distance = 2: "distance",
        /// A DME reading.
        Dme = 3: "dme",
        /// The crew or the controller.
        Manual = 4: "manual",
        /// Where it meets the next leg.
        Intercept = 5: "intercept",
        /// A radial.
        Radial = 6: "radial",
    }
}

impl LegCode {
    /// How its path is flown.
    ///
    /// # Source
    /// ARINC 424 path-and-terminator concept, as listed in AIXM 5.1, `CodeSegmentPathBaseType`; FAA Aeronautical Information
    /// Manual 1-2-1.
    ///
    /// # Example
    /// ```
    /// use lubberline::procedure::LegCode;
    /// use lubberline::procedure::legs::{LegEnd, LegPath};
    /// let code = LegCode::CourseToDme;
    /// assert_eq!((code.word(), code.path(), code.end()), ("CD", LegPath::Course, LegEnd::Dme));
    /// ```
    pub const fn path(self) -> LegPath {
        match self {
            Self::InitialFix => LegPath::Initial,
            Self::TrackToFix => LegPath::Track,
            Self::CourseToFix
            | Self::CourseToAltitude
            | Self::CourseToDme
            | Self::CourseToIntercept
            | Self::CourseToRadial => LegPath::Course,
            Self::DirectToFix => LegPath::Direct,
            Self::ArcToFix => LegPath::DmeArc,
            Self::RadiusToFix => LegPath::Radius,
            Self::FixToAltitude | Self::FixToDistance | Self::FixToDme | Self::FixToManual => {
                LegPath::CourseFromFix
            }
            Self::HeadingToAltitude
            | Self::HeadingToDme
            | Self::HeadingToIntercept
            | Self::HeadingToManual
            | Self::HeadingToRadial => LegPath::Heading,
            Self::HoldToAltitude | Self::HoldToFix | Self::HoldToManual => LegPath::Hold,
            Self::ProcedureTurn => LegPath::ProcedureTurn,
        }
    }

    /// What ends it.
    ///
    /// # Source
    /// As [`Self::path`].
    pub const fn end(self) -> LegEnd {
        match self {
            Self::InitialFix
            | Self::TrackToFix
            | Self::CourseToFix
            | Self::DirectToFix
            | Self::ArcToFix
            | Self::RadiusToFix
            | Self::HoldToFix => LegEnd::Fix,
            Self::FixToAltitude | Self::CourseToAltitude | Self::HeadingToAltitude | Self::HoldToAltitude => {
                LegEnd::Altitude
            }
            Self::FixToDistance => LegEnd::Distance,
            Self::FixToDme | Self::CourseToDme | Self::HeadingToDme => LegEnd::Dme,
            Self::FixToManual | Self::HeadingToManual | Self::HoldToManual => LegEnd::Manual,
            Self::CourseToIntercept | Self::HeadingToIntercept | Self::ProcedureTurn => LegEnd::Intercept,
            Self::CourseToRadial | Self::HeadingToRadial => LegEnd::Radial,
        }
    }
}

impl LegCode {
    /// How its path is flown and what ends it, in words for a crew.
    pub const fn meaning(self) -> &'static str {
        match self {
            Self::InitialFix => "initial fix",
            Self::TrackToFix => "track to a fix",
            Self::CourseToFix => "course to a fix",
            Self::DirectToFix => "direct to a fix",
            Self::ArcToFix => "DME arc to a fix",
            Self::RadiusToFix => "arc to a fix",
            Self::FixToAltitude => "course from a fix to an altitude",
            Self::FixToDistance => "course from a fix for a distance",
            Self::FixToDme => "course from a fix to a DME reading",
            Self::FixToManual => "course from a fix until ended by hand",
            Self::CourseToAltitude => "course to an altitude",
            Self::CourseToDme => "course to a DME reading",
            Self::CourseToIntercept => "course to the next leg",
            Self::CourseToRadial => "course to a radial",
            Self::HeadingToAltitude => "heading to an altitude",
            Self::HeadingToDme => "heading to a DME reading",
            Self::HeadingToIntercept => "heading to the next leg",
            Self::HeadingToManual => "heading until ended by hand",
            Self::HeadingToRadial => "heading to a radial",
            Self::HoldToAltitude => "racetrack to an altitude",
            Self::HoldToFix => "racetrack to a fix",
            Self::HoldToManual => "racetrack until ended by hand",
            Self::ProcedureTurn => "procedure turn to the next leg",
        }
    }
}
