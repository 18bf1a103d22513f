//! Values with units and meanings, validated at the door.

mod bearing;
mod choice;
mod measure;
mod position;
mod quantity;
pub mod units;

pub(crate) use choice::choice;

pub use bearing::{
    Bearing, Declination, DirectionChange, GridNorth, MagneticBearing, MagneticNorth, North, Radial,
    StationNorth, TrueBearing, TrueNorth,
};
pub use measure::{
    ArcRadius, Bank, CalibratedAirspeed, ConeHalfAngle, Elevation, EquivalentAirspeed, GeopotentialAltitude,
    GroundDistance, Groundspeed, HeightAboveStation, ImpactPressure, InterceptAngle, IsaDeviation,
    LoadFactor, Mach, PressureAltitude, ProcedureAltitude, RollRate, SlantRange, StaticPressure, Temperature,
    TrueAirspeed, TrueAltitude, TurnRate, WindComponent, WindSpeed,
};
pub use position::{Latitude, Longitude, Position};
pub use quantity::Quantity;
