//! The receiver on board: what the crew would see of a station.

use crate::earth::{GeodesicLine, MEAN_RADIUS, inverse, straight_line};
use crate::station::{Station, VOR_CONE_HALF_ANGLE_DEG};
use crate::value::units::{Angle, Length, degrees, meter, metres, radian};
use crate::value::{ConeHalfAngle, Position, Radial, SlantRange, TrueAltitude};

/// The earth's radius as radio waves find it in a standard atmosphere: four thirds of the true one.
///
/// Source: ITU-R P.310 (effective earth radius, k = 4/3), from memory.
const RADIO_RADIUS_M: f64 = 4.0 / 3.0 * MEAN_RADIUS;

/// A VOR/DME receiver tuned to a station with a course selected.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Receiver {
    /// The station.
    pub station: Station,
    /// The course selected, in the station's north.
    pub course: Radial,
    /// Half-angle of the cone in which the signal is not used.
    pub cone_half_angle: ConeHalfAngle,
}

/// The side of the station on which the selected course leads to or from it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ToFrom {
    /// The selected course leads to the station.
    To,
    /// The selected course leads from the station.
    From,
}

/// What a receiver shows.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Indication {
    /// The radial; none exactly overhead.
    pub radial: Option<Radial>,
    /// The DME reading.
    pub dme: SlantRange,
    /// Angle by which the selected course lies to the right, -90 to 90 degrees; a needle shows up to ten.
    pub deflection: Angle,
    /// To or from; none on the flag.
    pub to_from: Option<ToFrom>,
    /// Whether the flag is out: no use is to be made of the needle.
    pub flag: bool,
    /// Whether the aircraft is in the cone of confusion.
    pub in_cone: bool,
    /// The least altitude over a smooth earth at which the station is heard here.
    pub least_altitude: Length,
}

/// An indication with the geometry behind it, for the steering laws.
#[derive(Debug, Clone, Copy)]
pub(super) struct Sight {
    pub indication: Indication,
    pub line: GeodesicLine,
}

impl Receiver {
    /// A receiver with the usual cone of a VOR.
    pub fn new(station: Station, course: Radial) -> Self {
        let cone_half_angle = ConeHalfAngle::derived(degrees(VOR_CONE_HALF_ANGLE_DEG));
        Self { station, course, cone_half_angle }
    }

    /// What it shows at a place, with a perfect signal.
    ///
    /// The needle shows `asin(sin(course - radial))`, positive when the course lies to the right. The flag is out in the cone and
    /// below the radio horizon of a smooth earth, `sqrt(2 k R h)` of either end with `k = 4/3`.
    ///
    /// # Accuracy
    /// As [`Station::observe`].
    ///
    /// # Source
    /// The cone: see [`crate::station::cone_radius`]. Effective earth radius: ITU-R P.310 (from memory).
    pub fn shows(&self, position: Position, altitude: TrueAltitude) -> Indication {
        self.sight(position, altitude).indication
    }

    pub(super) fn sight(&self, position: Position, altitude: TrueAltitude) -> Sight {
        let line = inverse(self.station.position, position);
        let (dme, elevation) =
            straight_line(self.station.position, self.station.elevation, position, altitude);
        let radial: Option<Radial> =
            line.initial_bearing.map(|bearing| bearing.counted_from(self.station.declination));
        let off_rad = radial.map_or(0.0, |radial| self.course.radians() - radial.radians());
        // The smooth earth is at sea level: an antenna below it sees no farther than its own foot.
        let antenna_m = self.station.elevation.value().get::<meter>().max(0.0);
        let beyond_m = line.distance.value().get::<meter>() - (2.0 * RADIO_RADIUS_M * antenna_m).sqrt();
        let least_m = beyond_m.max(0.0).powi(2) / (2.0 * RADIO_RADIUS_M);
        let upright_rad = std::f64::consts::FRAC_PI_2 - elevation.get::<radian>();
        let in_cone = upright_rad < self.cone_half_angle.value().get::<radian>();
        let flag = in_cone || altitude.value().get::<meter>() < least_m;
        let indication = Indication {
            radial,
            dme,
            deflection: degrees(off_rad.sin().asin().to_degrees()),
            to_from: (!flag).then(|| if off_rad.cos() < 0.0 { ToFrom::To } else { ToFrom::From }),
            flag,
            in_cone,
            least_altitude: metres(least_m),
        };
        Sight { indication, line }
    }
}
