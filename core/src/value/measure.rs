//! Measures that share a dimension but not a meaning, each a type of its own.

use super::Quantity;
use super::units::*;
use crate::Error;

/// Declares a measure: a `uom` quantity with a meaning, checked against its row of the table of quantities.
macro_rules! measures {
    ($($(#[$doc:meta])* $name:ident($inner:ident in $unit:ident);)+) => {$(
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
        pub struct $name($inner);

        impl $name {
            #[doc = concat!("Accepts a value in the range of [`Quantity::", stringify!($name), "`].")]
            ///
            /// # Errors
            /// [`Error::OutOfRange`] for a value outside that range, and for one that is not a number.
            #[inline]
            pub fn new(value: $inner) -> Result<Self, Error> {
                Quantity::$name.check(Quantity::$name.name(), value.get::<$unit>())?;
                Ok(Self(value))
            }

            /// A plain number in the quantity's unit, under the name its caller gave it.
            #[allow(dead_code, reason = "one macro serves every measure; not each is an input of the plain layer")]
            #[inline]
            pub(crate) fn named(parameter: &'static str, value: f64) -> Result<Self, Error> {
                Ok(Self($inner::new::<$unit>(Quantity::$name.check(parameter, value)?)))
            }

            /// A value known by its derivation to be sound.
            #[allow(dead_code, reason = "one macro serves every measure; not each is a result")]
            #[inline]
            pub(crate) fn derived(value: $inner) -> Self {
                Self(value)
            }

            /// The value with its unit.
            #[inline]
            pub fn value(self) -> $inner {
                self.0
            }
        }
    )+};
}

measures! {
    /// Distance along the surface of the earth.
    GroundDistance(Length in nautical_mile);
    /// Straight distance from a station's antenna to the aircraft: what DME shows.
    SlantRange(Length in nautical_mile);
    /// Radius of an arc about a station, or of a turn.
    ArcRadius(Length in nautical_mile);
    /// Altitude in the standard atmosphere at which the pressure is found.
    PressureAltitude(Length in foot);
    /// Altitude that a perfect altimeter shows with its setting.
    IndicatedAltitude(Length in foot);
    /// Altitude in the standard atmosphere at which the density is found.
    DensityAltitude(Length in foot);
    /// Height above the place that gives the altimeter setting.
    HeightAboveSource(Length in foot);
    /// Least height that a transition layer must have.
    TransitionLayer(Length in foot);
    /// Steps in which flight levels are available.
    LevelStep(Length in foot);
    /// Altitude of a procedure, for which the speed factor of procedure design is laid out.
    ProcedureAltitude(Length in foot);
    /// Altitude in units of work against standard gravity: what the standard atmosphere is laid out in.
    GeopotentialAltitude(Length in foot);
    /// Altitude above mean sea level; the library takes the geoid for the ellipsoid.
    TrueAltitude(Length in foot);
    /// Height above a station's antenna.
    HeightAboveStation(Length in foot);
    /// Height above the surface that a radio horizon is seen over.
    SurfaceHeight(Length in foot);
    /// Distance along the ground from a station that is not overhead.
    StationDistance(Length in nautical_mile);
    /// Step in which a display of distance counts.
    DisplayStep(Length in nautical_mile);
    /// Error of a distance: a tolerance, or a standard deviation.
    DistanceError(Length in nautical_mile);
    /// Distance from a VOR along a route for which its containment is published.
    RouteDistance(Length in nautical_mile);
    /// Elevation of a station's antenna above mean sea level.
    Elevation(Length in foot);
    /// Airspeed as a perfect indicator would show it.
    CalibratedAirspeed(Velocity in knot);
    /// Airspeed that gives the same dynamic pressure in sea-level density.
    EquivalentAirspeed(Velocity in knot);
    /// Speed through the air.
    TrueAirspeed(Velocity in knot);
    /// Speed over the ground.
    Groundspeed(Velocity in knot);
    /// Speed over the ground of something that must move.
    GroundspeedMadeGood(Velocity in knot);
    /// Speed of the wind, without its direction.
    WindSpeed(Velocity in knot);
    /// Part of a wind along or across a direction, positive from ahead and from the right.
    WindComponent(Velocity in knot);
    /// Speed over speed of sound.
    Mach(Ratio in ratio);
    /// Ratio of lift to weight in a level turn.
    LoadFactor(Ratio in ratio);
    /// Difference of the air's temperature from the standard atmosphere.
    IsaDeviation(TemperatureInterval in kelvin_interval);
    /// Pressure of the undisturbed air.
    StaticPressure(Pressure in hectopascal);
    /// What an altimeter's subscale is set to: QNH or QFE.
    AltimeterSetting(Pressure in hectopascal);
    /// Pressure above static that a pitot tube feels.
    ImpactPressure(Pressure in hectopascal);
    /// Temperature of the air.
    Temperature(ThermodynamicTemperature in degree_celsius);
    /// Temperature of air brought to rest, as a probe in the stream feels it.
    TotalTemperature(ThermodynamicTemperature in degree_celsius);
    /// Share of the heat of compression that a probe feels.
    RecoveryFactor(Ratio in ratio);
    /// Time between two observations.
    ElapsedTime(Time in second);
    /// Change of the bearing to a station, without its side.
    BearingDrift(Angle in degree);
    /// Angle between the track and the bearing to a station, without its side.
    AngleOffBow(Angle in degree);
    /// Time of a leg of a holding pattern.
    HoldTime(Time in second);
    /// Angle of bank, without its side.
    Bank(Angle in degree);
    /// Rate of change of heading, without its side.
    TurnRate(AngularVelocity in degree_per_second);
    /// Rate of change of bank; infinite for an instant roll.
    RollRate(AngularVelocity in degree_per_second);
    /// Half-angle of a cone about the vertical.
    ConeHalfAngle(Angle in degree);
    /// Deviation at which a needle stands at the end of its scale.
    FullScale(Angle in degree);
    /// Angle at the station from the aircraft to the selected course, positive when the course lies to the right.
    CourseDeviation(Angle in degree);
    /// Half-width of the zone abeam a station in which a receiver shows neither to nor from.
    AbeamZone(Angle in degree);
    /// Where a needle stands, as a part of full scale, positive right of centre.
    Deflection(Ratio in ratio);
    /// Where a needle stands, in dots, positive right of centre.
    Dots(Ratio in ratio);
    /// Error of a direction: a tolerance, or a standard deviation.
    AngularError(Angle in degree);
    /// Chance with which something lies within a bound.
    Confidence(Ratio in ratio);
    /// Angle at which a course is intercepted.
    InterceptAngle(Angle in degree);
}

impl RollRate {
    /// A roll that takes no time, which makes every turn a circle in the air.
    pub fn instant() -> Self {
        Self(degrees_per_second(f64::INFINITY))
    }
}

impl TrueAirspeed {
    /// No motion through the air. The conversions of airspeeds take and give it; what divides by the airspeed refuses it.
    pub fn at_rest() -> Self {
        Self(knots(0.0))
    }

    /// A plain number of knots that may be zero, under the name its caller gave it.
    pub(crate) fn or_rest(parameter: &'static str, value_kt: f64) -> Result<Self, Error> {
        Ok(Self(knots(Quantity::AirspeedOrRest.check(parameter, value_kt)?)))
    }
}

impl IsaDeviation {
    /// The temperature of the standard atmosphere.
    pub fn none() -> Self {
        Self(kelvins(0.0))
    }
}

impl AltimeterSetting {
    /// The standard setting, 1013.25 hPa, at which an altimeter shows pressure altitude.
    pub fn standard() -> Self {
        Self(hectopascals(1_013.25))
    }
}

impl RecoveryFactor {
    /// A probe that feels the whole heat of compression.
    pub fn full() -> Self {
        Self(Ratio::new::<ratio>(1.0))
    }
}
