//! A station and what its signals tell an aircraft.

use super::Ident;
use crate::earth::{inverse, straight_line};
use crate::value::units::Angle;
use crate::value::{Declination, Elevation, GroundDistance, Position, Radial, SlantRange, TrueAltitude};

/// A VOR/DME station: where its antenna is, and which way its north points.
///
/// # Example
/// ```
/// use lubberline::station::{Ident, Station};
/// use lubberline::value::{Declination, Elevation, Latitude, Longitude, Position, TrueAltitude, units::*};
/// let at = |latitude, longitude| -> Result<Position, lubberline::Error> {
///     Ok(Position::new(Latitude::new(degrees(latitude))?, Longitude::new(degrees(longitude))?))
/// };
/// let station = Station {
///     position: at(61.25, -11.5)?,
///     elevation: Elevation::new(feet(420.0))?,
///     declination: Declination::new(degrees(-6.0))?,
///     ident: Ident::new("KVA")?,
/// };
/// let seen = station.observe(at(61.5, -11.0)?, TrueAltitude::new(feet(31_000.0))?);
/// assert_eq!(format!("{:.1}", seen.dme.value().get::<nautical_mile>()), "21.5");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Station {
    /// Where its antenna is.
    pub position: Position,
    /// How high its antenna is.
    pub elevation: Elevation,
    /// Angle from true north to the station's north as it was set up, positive east. It need not be today's variation.
    pub declination: Declination,
    /// What it is called by; it enters no computation.
    pub ident: Ident,
}

/// What an aircraft makes of a station.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Observation {
    /// Direction of the aircraft from the station, in the station's north; none exactly overhead.
    pub radial: Option<Radial>,
    /// The straight distance from antenna to aircraft, which DME shows.
    pub dme: SlantRange,
    /// Distance along the ground.
    pub ground_distance: GroundDistance,
    /// Angle of the aircraft above the station's horizontal.
    pub elevation_angle: Angle,
}

impl Station {
    /// What an aircraft at a position and altitude makes of this station.
    ///
    /// The radial is the azimuth of the geodesic at the station less its declination; the DME reading is the straight line
    /// between the two points at their heights over WGS-84, in earth-centred coordinates.
    ///
    /// # Accuracy
    /// 15 nanometres along the ground and a micrometre along the slant. Heights above mean sea level are taken for heights above the
    /// ellipsoid: the geoid departs from it by up to 106 m, alike for both ends, which moves the slant range by
    /// less than 0.02 NM beyond 5 NM.
    ///
    /// # Degenerate cases
    /// Exactly overhead there is no radial. Reception is not judged here.
    ///
    /// # Source
    /// Geodesic: [`inverse`]. Earth-centred coordinates of WGS-84: NGA.STND.0036_1.0.0_WGS84 (from memory).
    pub fn observe(&self, position: Position, altitude: TrueAltitude) -> Observation {
        let line = inverse(self.position, position);
        let (dme, elevation_angle) = straight_line(self.position, self.elevation, position, altitude);
        Observation {
            radial: line.initial_bearing.map(|bearing| bearing.counted_from(self.declination)),
            dme,
            ground_distance: line.distance,
            elevation_angle,
        }
    }
}
