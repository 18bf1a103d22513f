//! A station and what its signals tell an aircraft.

use super::{Ident, near};
use crate::earth::{inverse, straight_line};
use crate::value::units::{Angle, degrees, meter, metres};
use crate::value::{
    Bearing, Declination, Elevation, GroundDistance, Position, Radial, SlantRange, TrueAltitude, TrueBearing,
};

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
    /// 30 nanometres along the ground, a micrometre across it and along the slant. Heights above mean sea level are taken for heights above the
    /// ellipsoid: the geoid departs from it by up to 106 m, alike for both ends, which moves the slant range by
    /// less than 0.02 NM beyond 5 NM.
    ///
    /// # Degenerate cases
    /// Exactly overhead there is no radial. Reception is not judged here.
    ///
    /// # Source
    /// Geodesic: [`inverse`]. Earth-centred coordinates of WGS-84: NGA.STND.0036_1.0.0_WGS84 (from memory).
    pub fn observe(&self, position: Position, altitude: TrueAltitude) -> Observation {
        let (antenna_m, aircraft_m) =
            (self.elevation.value().get::<meter>(), altitude.value().get::<meter>());
        let Some(seen) = near::observe(self.position, antenna_m, position, aircraft_m) else {
            return self.observe_anywhere(position, altitude);
        };
        let bearing: TrueBearing = Bearing::from_degrees(seen.bearing_deg);
        Observation {
            radial: Some(bearing.counted_from(self.declination)),
            dme: SlantRange::derived(metres(seen.slant_m)),
            ground_distance: GroundDistance::derived(metres(seen.ground_m)),
            elevation_angle: degrees(seen.elevation_angle_deg),
        }
    }

    /// [`Station::observe`] by Karney's solution alone, which holds at any distance.
    pub(crate) fn observe_anywhere(&self, position: Position, altitude: TrueAltitude) -> Observation {
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::earth::direct;
    use crate::value::units::{degree, feet, nautical_miles, radian};

    /// Over the whole earth and at every scale: metres along, across, of slant, and the elevation angle times the slant.
    #[test]
    fn near_a_station_it_is_the_general_solution() {
        let (mut worst, mut near_ones) = ([0.0_f64; 4], 0);
        for step in 0..60_000_u32 {
            let part = |factor: f64| (f64::from(step) * factor).fract();
            let latitude_deg = match step % 17 {
                0 => 90.0,
                1 => -90.0,
                2 => 0.0,
                _ => 180.0 * part(0.618_033_988_7) - 90.0,
            };
            let station = Station {
                position: Position::derived(latitude_deg, if step % 5 == 0 { 179.9 } else { -7.0 }),
                elevation: Elevation::new(feet(9000.0 * part(0.438_579_021_4))).unwrap(),
                declination: Declination::new(degrees(-13.0)).unwrap(),
                ident: Ident::NONE,
            };
            let scale =
                if step % 3 == 0 { 10_f64.powf(-5.0 * part(0.754_877_666_2)) } else { part(0.754_877_666_2) };
            let distance = GroundDistance::new(nautical_miles(310.0 * scale)).unwrap();
            let bearing_deg = if step % 7 == 0 { 90.0 } else { 360.0 } * part(0.569_840_290_9);
            let (point, _) = direct(station.position, Bearing::from_degrees(bearing_deg), distance);
            let altitude = TrueAltitude::new(feet(60_000.0 * part(0.819_172_513_4))).unwrap();
            let heights_m = (station.elevation.value().get::<meter>(), altitude.value().get::<meter>());
            near_ones +=
                u32::from(near::observe(station.position, heights_m.0, point, heights_m.1).is_some());
            let (seen, general) =
                (station.observe(point, altitude), station.observe_anywhere(point, altitude));
            let ground_m = general.ground_distance.value().get::<meter>();
            let slant_m = general.dme.value().get::<meter>();
            let turned = general.radial.unwrap().change_to(seen.radial.unwrap()).angle().get::<radian>();
            for (worst, off) in worst.iter_mut().zip([
                seen.ground_distance.value().get::<meter>() - ground_m,
                turned * ground_m,
                seen.dme.value().get::<meter>() - slant_m,
                (seen.elevation_angle - general.elevation_angle).get::<degree>().to_radians() * slant_m,
            ]) {
                assert!(off.is_finite());
                *worst = worst.max(off.abs());
            }
        }
        println!("{worst:?} m; {near_ones} near");
        assert!(worst.iter().all(|worst| *worst <= 2e-8), "{worst:?}");
        assert!(near_ones > 50_000);
    }
}
