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
    AbeamZone, AltimeterSetting, AngleOffBow, AngularError, ArcRadius, Bank, BearingDrift,
    CalibratedAirspeed, ConeHalfAngle, Confidence, CourseDeviation, Deflection, DensityAltitude, DisplayStep,
    DistanceError, Dots, ElapsedTime, Elevation, EquivalentAirspeed, FullScale, GeopotentialAltitude,
    GroundDistance, Groundspeed, GroundspeedMadeGood, HeightAboveSource, HeightAboveStation, HoldTime,
    ImpactPressure, IndicatedAltitude, InterceptAngle, IsaDeviation, LevelStep, LoadFactor, Mach,
    PressureAltitude, ProcedureAltitude, RecoveryFactor, RollRate, RouteDistance, SlantRange, StaticPressure,
    StationDistance, SurfaceHeight, Temperature, TotalTemperature, TransitionLayer, TrueAirspeed,
    TrueAltitude, TurnRate, WindComponent, WindSpeed,
};
pub use position::{Latitude, Longitude, Position};
pub use quantity::Quantity;
