//! What a path is briefed in: the stations whose readings are told, the air, whose holding speeds bind.

use crate::procedure::HoldingSpeedRule;
use crate::procedure::legs::Place;
use crate::station::{Flag, HorizonRule, Receiver, Station, radio_horizon};
use crate::value::units::metres;
use crate::value::{
    AltimeterSetting, ConeHalfAngle, GroundDistance, IsaDeviation, Radial, SlantRange, SurfaceHeight,
};

/// What a path is briefed in.
#[derive(Debug, Clone, PartialEq)]
pub struct PathSurroundings {
    /// The stations that are received along it.
    pub stations: Vec<PathStation>,
    /// Altimeter setting of the region, reduced to sea level.
    pub setting: AltimeterSetting,
    /// Deviation of the temperature from the standard atmosphere.
    pub deviation: IsaDeviation,
    /// Whose speed limit holds for racetracks.
    pub holding_rule: HoldingSpeedRule,
}

/// A station that is received along a path.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PathStation {
    /// The station.
    pub station: Station,
    /// Half-angle of its cone of confusion.
    pub cone_half_angle: ConeHalfAngle,
}

/// What a station is seen as from a place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StationReading {
    /// The radial, in the station's north; none exactly overhead.
    pub radial: Option<Radial>,
    /// The DME reading.
    pub dme: SlantRange,
    /// Whether it can be used, with the radial itself selected: the flag is that of the place alone.
    pub flag: Flag,
}

impl PathStation {
    /// What the station is seen as from a place of a path, by a [`Receiver`] as is usual.
    ///
    /// # Degenerate cases
    /// Exactly overhead there is no radial; the flag is that of the cone.
    pub fn seen_from(&self, place: &Place) -> StationReading {
        let seen = self.station.observe(place.position, place.altitude);
        let receiver = Receiver { cone: self.cone_half_angle, ..Receiver::default() };
        let flag = seen.radial.map_or(Flag::Cone, |radial| {
            receiver.receive(&self.station, place.position, place.altitude, radial).flag
        });
        StationReading { radial: seen.radial, dme: seen.dme, flag }
    }

    /// How far off the station is where it is not received, and how far it is received at that altitude: to the radio horizon of a
    /// smooth earth or to the reach of the [`Receiver`] that is usual, whichever is nearer; none where it is received.
    ///
    /// # Degenerate cases
    /// Below the antenna it is received nowhere: to a distance of zero.
    pub fn beyond_reception(&self, place: &Place) -> Option<(GroundDistance, GroundDistance)> {
        if !matches!(self.seen_from(place).flag, Flag::BelowHorizon | Flag::OutOfRange) {
            return None;
        }
        let receiver = Receiver::default();
        let above = place.altitude.value() - self.station.elevation.value() + receiver.antenna.value();
        let above = SurfaceHeight::derived(above.max(metres(0.0)));
        let horizon = radio_horizon(above, receiver.antenna, HorizonRule::FourThirds);
        let distance = self.station.observe(place.position, place.altitude).ground_distance;
        Some((distance, GroundDistance::derived(horizon.value().min(receiver.reach.value()))))
    }
}
