//! How accurate radials and DME are, by each published figure.

use crate::value::units::{
    Angle, Length, degree, degrees, meter, metres, nautical_mile, nautical_miles, radian,
};
use crate::value::{AngularError, DistanceError, RouteDistance, SlantRange, choice};

/// How many standard deviations a published tolerance stands for: 95 percent.
///
/// Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 2, 2.3.2, and Part II Section 3 Chapter 1, Appendix B, 2.1: 2 SD.
pub const DEVIATIONS_TO_A_TOLERANCE: f64 = 2.0;

/// The parts of a radial's error, independent of each other, each a tolerance.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RadialErrors {
    /// Of the signal: the ground system.
    pub ground: AngularError,
    /// Of the airborne receiver and its indicator.
    pub receiver: AngularError,
    /// Of the monitor that watches the signal.
    pub monitor: AngularError,
    /// Of flying by the needle: pilotage, or flight technical tolerance.
    pub flight_technical: AngularError,
}

impl RadialErrors {
    fn from_degrees(ground: f64, receiver: f64, monitor: f64, flight_technical: f64) -> Self {
        let error = |value| AngularError::derived(degrees(value));
        Self {
            ground: error(ground),
            receiver: error(receiver),
            monitor: error(monitor),
            flight_technical: error(flight_technical),
        }
    }

    /// Where a radial is: ground, receiver and monitor, `sqrt(Eg² + Ea² + Em²)`.
    ///
    /// # Source
    /// ICAO Annex 10 Vol I, Attachment C, 3.7.3.2 (VOR aggregate error); ICAO Doc 8168 adds the monitor.
    pub fn aggregate(&self) -> Angle {
        root_sum_square([self.ground.value(), self.receiver.value(), self.monitor.value()])
    }

    /// Where an aircraft flying along a radial is: the aggregate and the flight technical part, `sqrt(Eg² + Ea² + Em² + Ep²)`.
    ///
    /// # Source
    /// ICAO Annex 10 Vol I, Attachment C, 3.7.3.2 (VOR system use error).
    pub fn system_use(&self) -> Angle {
        root_sum_square([self.aggregate(), self.flight_technical.value()])
    }
}

/// The root of the sum of squares: how independent errors combine.
fn root_sum_square<const N: usize>(parts: [Angle; N]) -> Angle {
    let degrees_of_parts = parts.map(|part| part.get::<degree>());
    degrees(degrees_of_parts.iter().map(|part| part * part).sum::<f64>().sqrt())
}

choice! {
    /// A published figure for the error of a radial or a bearing.
    RadialAccuracy {
        /// VOR flown along, en route: 3.5° ground, 2.7° receiver, 1° monitor, 3.5° flight technical; 5.7° in all. Doc 8168 Vol II (5th ed. 2006), Part II Section 3 Chapter 1, App. B.
        VorEnRoute = 0: "vor_en_route",
        /// VOR flown along, terminal: the same with 2.5° flight technical; 5.2° in all. Doc 8168 Vol II, Table I-2-2-1 (from memory).
        VorTracking = 1: "vor_tracking",
        /// VOR that intersects: no flight technical part; 4.5° in all. Doc 8168 Vol II, Part II Section 3 Chapter 1, 1.4.3.2.
        VorIntersecting = 2: "vor_intersecting",
        /// NDB that intersects: 3° ground, 5.4° receiver; 6.2° in all. Doc 8168 Vol II, Part II Section 3 Chapter 1, 1.4.3.2.
        NdbIntersecting = 3: "ndb_intersecting",
        /// VOR course alignment, "generally within 1°". FAA AIM 1-1-3, edition not shown.
        VorAlignment = 4: "vor_alignment",
    }
}

impl RadialAccuracy {
    /// The parts it is made of.
    pub fn errors(self) -> RadialErrors {
        match self {
            Self::VorEnRoute => RadialErrors::from_degrees(3.5, 2.7, 1.0, 3.5),
            Self::VorTracking => RadialErrors::from_degrees(3.5, 2.7, 1.0, 2.5),
            Self::VorIntersecting => RadialErrors::from_degrees(3.5, 2.7, 1.0, 0.0),
            Self::NdbIntersecting => RadialErrors::from_degrees(3.0, 5.4, 0.0, 0.0),
            Self::VorAlignment => RadialErrors::from_degrees(1.0, 0.0, 0.0, 0.0),
        }
    }

    /// The tolerance: the parts combined, not rounded as printed.
    pub fn tolerance(self) -> AngularError {
        AngularError::derived(self.errors().system_use())
    }
}

choice! {
    /// A published figure for the error of a DME.
    DmeAccuracy {
        /// 0.25 NM and 1.25 percent of the distance. Doc 8168 Vol I (5th ed. 2006), Part I Section 2 Chapter 2, 2.4.2; a recommendation of Annex 10.
        PansOps = 0: "pans_ops",
        /// 0.2 NM, the total system error. Annex 10 Vol I, 3.5.3.1.3.3.
        Annex10 = 1: "annex_10",
        /// Half a mile or 3 percent of the distance, whichever is greater. FAA AIM 1-1-7, edition not shown.
        Aim = 2: "aim",
        /// The root of 0.1 NM on the ground and 0.17 NM in the air, for DME since 1989. Doc 8168 Vol II, Part III Section 1 Chapter 3, App. 3, 2.1.
        Since1989 = 3: "since_1989",
    }
}

impl DmeAccuracy {
    /// The tolerance at a slant range.
    pub fn tolerance(self, dme: SlantRange) -> DistanceError {
        let dme_nm = dme.value().get::<nautical_mile>();
        DistanceError::derived(nautical_miles(match self {
            Self::PansOps => 0.25 + 0.0125 * dme_nm,
            Self::Annex10 => 0.2,
            Self::Aim => (0.03 * dme_nm).max(0.5),
            Self::Since1989 => 0.1_f64.hypot(0.17),
        }))
    }
}

choice! {
    /// A check of a VOR receiver, 14 CFR 91.171: made within the preceding 30 days.
    ReceiverCheck {
        /// A test signal: a VOT, or one radiated by a repair station.
        TestSignal = 0: "test_signal",
        /// A designated checkpoint on the ground.
        GroundCheckpoint = 1: "ground_checkpoint",
        /// A designated checkpoint in the air.
        AirborneCheckpoint = 2: "airborne_checkpoint",
        /// A ground point on the centreline of an airway, preferably more than 20 NM from the station.
        AirwayCenterline = 3: "airway_centerline",
        /// Two receivers tuned to one station.
        DualReceivers = 4: "dual_receivers",
    }
}

impl ReceiverCheck {
    /// The greatest error, or difference between two receivers, that passes.
    ///
    /// # Source
    /// 14 CFR 91.171 (b) and (c).
    pub fn limit(self) -> Angle {
        degrees(match self {
            Self::TestSignal | Self::GroundCheckpoint | Self::DualReceivers => 4.0,
            Self::AirborneCheckpoint | Self::AirwayCenterline => 6.0,
        })
    }
}

choice! {
    /// How many DME stations a position is taken from, where procedure design counts with their number.
    DmeCoverage {
        /// Two: their geometry multiplies the tolerance by 1.29.
        TwoStations = 0: "two_stations",
        /// More than two: the tolerance of one.
        MoreStations = 1: "more_stations",
    }
}

/// Tolerances of area navigation by DME.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DmeDmeTolerances {
    /// Along the track.
    pub along_track: Length,
    /// Across the track.
    pub across_track: Length,
    /// Half the width of the area.
    pub half_width: Length,
}

/// Tolerances of area navigation by DME/DME for procedure design.
///
/// With `k` of the coverage: along `sqrt((k d)² + st²)`, across `sqrt((k d)² + ftt² + st²)`, half-width `1.5 across + bv`.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 1 Chapter 3, Appendices 1 and 3; the factor of 1 for more than two stations is
/// inferred from its examples.
///
/// # Example
/// ```
/// use lubberline::station::{DmeCoverage, dme_dme_tolerances};
/// use lubberline::value::{DistanceError, units::*};
/// let miles = |value| DistanceError::new(nautical_miles(value));
/// let none = miles(0.0)?;
/// let area = dme_dme_tolerances(miles(1.34)?, DmeCoverage::MoreStations, miles(1.0)?, none, none);
/// assert!(area.along_track < nautical_miles(1.7), "the root of 1.34² and 1²");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn dme_dme_tolerances(
    dme: DistanceError,
    coverage: DmeCoverage,
    system: DistanceError,
    flight_technical: DistanceError,
    buffer: DistanceError,
) -> DmeDmeTolerances {
    let factor = match coverage {
        DmeCoverage::TwoStations => 1.29,
        DmeCoverage::MoreStations => 1.0,
    };
    let [dme_m, system_m, flight_m, buffer_m] =
        [dme, system, flight_technical, buffer].map(|error| error.value().get::<meter>());
    let along_m = (factor * dme_m).hypot(system_m);
    let across_m = along_m.hypot(flight_m);
    DmeDmeTolerances {
        along_track: metres(along_m),
        across_track: metres(across_m),
        half_width: metres(1.5 * across_m + buffer_m),
    }
}

/// Distance along the course at which an angle has grown to a width, `width / tan(angle)`: where a protected area begins to splay.
///
/// # Degenerate cases
/// Without an angle it is infinite.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Part II Section 3 Chapter 1, 1.4.2.3: 5 NM and 5.7 degrees.
///
/// # Example
/// ```
/// use lubberline::station::splay_distance;
/// use lubberline::value::{AngularError, DistanceError, units::*};
/// assert_eq!(format!("{:.1}", splay_distance(DistanceError::new(nautical_miles(5.0))?, AngularError::new(degrees(5.7))?).get::<nautical_mile>()), "50.1");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn splay_distance(half_width: DistanceError, angle: AngularError) -> Length {
    half_width.value() / angle.value().get::<radian>().tan()
}

choice! {
    /// The share of the flying time for which a VOR route contains the traffic.
    Containment {
        /// 95 percent: 4.0 NM near the VOR, 6.0 NM at 75 NM.
        Percent95 = 0: "percent_95",
        /// 96 percent: 4.0 and 6.0 NM.
        Percent96 = 1: "percent_96",
        /// 97 percent: 4.5 and 6.5 NM.
        Percent97 = 2: "percent_97",
        /// 98 percent: 5.0 and 6.5 NM.
        Percent98 = 3: "percent_98",
        /// 99 percent: 5.5 and 7.0 NM.
        Percent99 = 4: "percent_99",
        /// 99.5 percent: 6.0 and 8.5 NM.
        Percent99AndAHalf = 5: "percent_99_5",
    }
}

/// Half the width of the airspace that contains the traffic of a VOR route, by the distance from the VOR.
///
/// The first figure of the containment to 25 NM, then growing linearly to the second at 75 NM.
///
/// # Source
/// ICAO Annex 11 (13th ed.), Attachment A, 3.3 and 3.4.
///
/// # Example
/// ```
/// use lubberline::station::{Containment, route_half_width};
/// use lubberline::value::{RouteDistance, units::*};
/// // Half-way between 4 NM at 25 NM and 6 NM at 75 NM.
/// assert_eq!(format!("{:.1}", route_half_width(RouteDistance::new(nautical_miles(50.0))?, Containment::Percent95).get::<nautical_mile>()), "5.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn route_half_width(distance: RouteDistance, containment: Containment) -> Length {
    let (near_nm, far_nm) = match containment {
        Containment::Percent95 | Containment::Percent96 => (4.0, 6.0),
        Containment::Percent97 => (4.5, 6.5),
        Containment::Percent98 => (5.0, 6.5),
        Containment::Percent99 => (5.5, 7.0),
        Containment::Percent99AndAHalf => (6.0, 8.5),
    };
    let grown = ((distance.value().get::<nautical_mile>() - 25.0) / 50.0).max(0.0);
    nautical_miles(near_nm + (far_nm - near_nm) * grown)
}
