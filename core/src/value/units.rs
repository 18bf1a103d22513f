//! Short constructors for quantities with units, re-exporting what they need of `uom`.

pub use uom::si::f64::{
    Angle, AngularVelocity, Length, MagneticFluxDensity, MassDensity, Pressure, Ratio, TemperatureInterval,
    ThermodynamicTemperature, Time, Velocity,
};
pub use uom::si::{
    angle::{degree, radian},
    angular_velocity::{degree_per_second, radian_per_second},
    length::{foot, meter, nautical_mile},
    magnetic_flux_density::nanotesla,
    mass_density::kilogram_per_cubic_meter,
    pressure::{hectopascal, inch_of_mercury, pascal},
    ratio::ratio,
    temperature_interval::kelvin as kelvin_interval,
    thermodynamic_temperature::{degree_celsius, kelvin},
    time::second,
    velocity::{foot_per_minute, knot, meter_per_second},
};

/// Standard acceleration of gravity in metres per second squared, exact by definition.
///
/// Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere; used for turns by ICAO Doc 8168 Vol II (5th ed. 2006),
/// Part I Section 2 Chapter 3, 3.1.2.2 e); third General Conference on Weights and Measures (1901), from memory.
pub const STANDARD_GRAVITY_M_S2: f64 = 9.806_65;

macro_rules! constructors {
    ($($(#[$doc:meta])* $name:ident: $quantity:ident in $unit:ident;)+) => {
        $($(#[$doc])* pub fn $name(value: f64) -> $quantity { $quantity::new::<$unit>(value) })+
    };
}

constructors! {
    /// An angle in degrees.
    degrees: Angle in degree;
    /// An angular rate in degrees per second.
    degrees_per_second: AngularVelocity in degree_per_second;
    /// A length in nautical miles of 1852 m.
    nautical_miles: Length in nautical_mile;
    /// A length in feet of 0.3048 m.
    feet: Length in foot;
    /// A length in metres.
    metres: Length in meter;
    /// A speed in knots, nautical miles an hour.
    knots: Velocity in knot;
    /// A speed in metres per second.
    metres_per_second: Velocity in meter_per_second;
    /// A speed in feet per minute.
    feet_per_minute: Velocity in foot_per_minute;
    /// A magnetic field in nanotesla.
    nanoteslas: MagneticFluxDensity in nanotesla;
    /// A time in seconds.
    seconds: Time in second;
    /// A pressure in hectopascals (millibars).
    hectopascals: Pressure in hectopascal;
    /// A density in kilograms per cubic metre.
    kilograms_per_cubic_metre: MassDensity in kilogram_per_cubic_meter;
    /// A temperature in degrees Celsius.
    degrees_celsius: ThermodynamicTemperature in degree_celsius;
    /// A difference of temperature in kelvins.
    kelvins: TemperatureInterval in kelvin_interval;
}
