//! The receiver on board: tuned to a station, with a course selected.

use crate::earth::{GeodesicLine, inverse};
use crate::station::{HorizonRule, Indication, Receiver, Station, least_height};
use crate::value::{GroundDistance, Position, Radial, SurfaceHeight, TrueAltitude};

/// A receiver as the crew has set it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tuned {
    /// The receiver.
    pub receiver: Receiver,
    /// The station it is tuned to.
    pub station: Station,
    /// The course selected, from the station's north.
    pub course: Radial,
}

/// An indication with the line behind it, for the steering laws.
#[derive(Debug, Clone, Copy)]
pub(super) struct Sight {
    pub indication: Indication,
    /// From the station to the aircraft.
    pub line: GeodesicLine,
}

impl Tuned {
    /// What it shows at a place. See [`Receiver::receive`].
    pub fn shows(&self, position: Position, altitude: TrueAltitude) -> Indication {
        self.receiver.receive(&self.station, position, altitude, self.course)
    }

    /// The least height above the antenna's surface at which the station is received at a distance; none if no height will do.
    ///
    /// # Source
    /// [`least_height`] with 4/3 of the earth's radius, as the receiver judges.
    pub fn least_height(&self, distance: GroundDistance) -> Option<SurfaceHeight> {
        least_height(distance, self.receiver.antenna, HorizonRule::FourThirds).ok()
    }

    pub(super) fn sight(&self, position: Position, altitude: TrueAltitude) -> Sight {
        Sight { indication: self.shows(position, altitude), line: inverse(self.station.position, position) }
    }
}
