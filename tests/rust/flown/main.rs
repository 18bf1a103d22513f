//! What the library computes, flown: by its own flight, which shares with the leads only the earth and the word "bank".
#![allow(
    clippy::unwrap_used,
    clippy::panic,
    clippy::indexing_slicing,
    missing_docs,
    reason = "a test fails by panicking"
)]

mod arcs;
mod climbs;
mod holds;
mod leads;
mod legs;
mod needle;
mod pairs;
mod radials;
mod route;

use lubberline::earth::direct;
use lubberline::flight::{Flight, Reference, Start, WindField};
use lubberline::station::{Ident, Station};
use lubberline::turn::TurnLimits;
use lubberline::value::units::*;
use lubberline::value::*;
use lubberline::wind::Wind;

/// Draws with a fixed seed.
pub struct Draw(fastrand::Rng);

impl Draw {
    pub fn new(seed: u64) -> Self {
        Self(fastrand::Rng::with_seed(seed))
    }

    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.0.f64()
    }

    pub fn side(&mut self) -> f64 {
        if self.0.bool() { 1.0 } else { -1.0 }
    }

    pub fn station(&mut self) -> Station {
        let latitude = Latitude::new(degrees(self.between(-80.0, 80.0))).unwrap();
        let longitude = Longitude::new(degrees(self.between(-180.0, 180.0))).unwrap();
        Station {
            position: Position::new(latitude, longitude),
            elevation: Elevation::new(feet(0.0)).unwrap(),
            declination: Declination::ZERO,
            ident: Ident::NONE,
        }
    }

    pub fn wind(&mut self, airspeed_kt: f64, most: f64) -> Wind<TrueNorth> {
        Wind {
            from: bearing(self.between(0.0, 360.0)),
            speed: WindSpeed::new(knots(self.between(0.0, most * airspeed_kt))).unwrap(),
        }
    }
}

pub fn bearing(value_deg: f64) -> TrueBearing {
    TrueBearing::new(degrees(value_deg)).unwrap()
}

pub fn airspeed(value_kt: f64) -> TrueAirspeed {
    TrueAirspeed::new(knots(value_kt)).unwrap()
}

pub fn ground(distance: Length) -> GroundDistance {
    GroundDistance::new(distance).unwrap()
}

/// A flight that begins on a bearing from a fix, in that fix's frame of directions.
#[allow(clippy::too_many_arguments, reason = "each is what a flight begins with")]
pub fn flight_from(
    fix: Position,
    from: TrueBearing,
    distance: Length,
    heading: TrueBearing,
    altitude: Length,
    airspeed: TrueAirspeed,
    wind: Wind<TrueNorth>,
    limits: &TurnLimits,
) -> Flight {
    Flight::new(&Start {
        position: direct(fix, from, ground(distance)).0,
        altitude: TrueAltitude::new(altitude).unwrap(),
        heading,
        north_of: Some(fix),
        true_airspeed: airspeed,
        wind: WindField::uniform(wind, Reference::Carried),
        limits: *limits,
        reaction: seconds(0.0),
    })
}
