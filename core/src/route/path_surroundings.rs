//! What a path is briefed in: the stations whose readings are told, the air, whose holding speeds bind.

use crate::procedure::HoldingSpeedRule;
use crate::procedure::legs::Place;
use crate::station::{Flag, HorizonRule, Receiver, Station, radio_horizon};
use crate::value::units::{meter, metres};
use crate::value::{
    AltimeterSetting, ConeHalfAngle, GroundDistance, IsaDeviation, Radial, SlantRange, SurfaceHeight,
};

/// Within this of a station on the ground, in metres, a place is over it. A path comes over a station to within micrometres only, and the
/// direction of those says nothing; a metre is a million times as much, and less than the size of an antenna.
const OVERHEAD_M: f64 = 1.0;

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
    /// The radial, in the station's north; none overhead, within a metre on the ground.
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
    /// Overhead, within a metre on the ground, there is no radial: what a path leaves of a place over a station has a direction that means
    /// nothing. Exactly overhead the flag is that of the cone.
    pub fn seen_from(&self, place: &Place) -> StationReading {
        let seen = self.station.observe(place.position, place.altitude);
        let receiver = Receiver { cone: self.cone_half_angle, ..Receiver::default() };
        let flag = seen.radial.map_or(Flag::Cone, |radial| {
            receiver.receive(&self.station, place.position, place.altitude, radial).flag
        });
        let told = seen.ground_distance.value().get::<meter>() >= OVERHEAD_M;
        StationReading { radial: seen.radial.filter(|_| told), dme: seen.dme, flag }
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::earth::direct;
    use crate::station::Ident;
    use crate::value::units::{Time, degree, degrees, feet, second};
    use crate::value::{Declination, Elevation, Position, TrueAltitude, TrueBearing};

    /// The metre is sharp, and the flag does not change there.
    #[test]
    fn there_is_no_radial_within_a_metre_of_overhead() {
        let position = Position::derived(60.0, -10.0);
        let station = Station {
            position,
            elevation: Elevation::new(feet(95.0)).unwrap(),
            declination: Declination::new(degrees(-4.0)).unwrap(),
            ident: Ident::NONE,
        };
        let known = PathStation { station, cone_half_angle: Receiver::default().cone };
        let course = TrueBearing::from_degrees(250.0);
        let off = |distance_m: f64| {
            let there = direct(position, course, GroundDistance::new(metres(distance_m)).unwrap()).0;
            let altitude = TrueAltitude::new(feet(3_000.0)).unwrap();
            known.seen_from(&Place { position: there, altitude, course, time: Time::new::<second>(0.0) })
        };
        for over_m in [0.0, 1e-9, 1e-6, 0.01, 0.999] {
            let seen = off(over_m);
            assert_eq!((seen.radial, seen.flag), (None, Flag::Cone), "{over_m} m");
        }
        let beside = off(1.001);
        let radial_deg = beside.radial.map(|radial| radial.angle().get::<degree>());
        assert!(radial_deg.is_some_and(|told_deg| (told_deg - 254.0).abs() < 1e-4), "{radial_deg:?}");
        assert_eq!(beside.flag, Flag::Cone);
    }
}
