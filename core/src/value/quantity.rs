//! The table of bounded quantities: each with its name, unit, range and status code.

use crate::Error;

/// Rounding that a conversion between units may leave on a value that stands at the end of its range.
const CONVERSION_ROUNDING: f64 = 4.0 * f64::EPSILON;

/// Turns one line's range into its words and its test.
macro_rules! range {
    (text: $low:ident $min:literal $high:ident $max:literal, "") => {
        concat!(stringify!($low), " ", $min, " ", stringify!($high), " ", $max)
    };
    (text: finite, $unit:literal) => { concat!("any finite number of ", $unit) };
    (text: positive, $unit:literal) => { concat!("above 0 ", $unit, ", or infinite") };
    (text: $low:ident $min:literal $high:ident $max:literal, $unit:literal) => {
        concat!(stringify!($low), " ", $min, " ", stringify!($high), " ", $max, " ", $unit)
    };
    (holds: $value:ident, finite) => { $value.is_finite() };
    (holds: $value:ident, positive) => { $value > 0.0 };
    (holds: $value:ident, from $min:literal $high:ident $max:literal) => {
        $value >= $min - f64::abs($min) * CONVERSION_ROUNDING && range!(below: $value, $high $max)
    };
    (holds: $value:ident, above $min:literal $high:ident $max:literal) => {
        $value > $min && range!(below: $value, $high $max)
    };
    (below: $value:ident, to $max:literal) => { $value <= $max + f64::abs($max) * CONVERSION_ROUNDING };
    (below: $value:ident, below $max:literal) => { $value < $max };
}

macro_rules! quantities {
    ($($(#[$doc:meta])* $variant:ident = $code:literal: $name:literal, $unit:tt, [$($range:tt)+];)+) => {
        /// A kind of quantity with its unit and the range in which it is accepted.
        #[non_exhaustive]
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
        pub enum Quantity {
            $($(#[$doc])* #[doc = ""] #[doc = concat!("Allowed: ", range!(text: $($range)+, $unit), ".")] $variant,)+
        }

        impl Quantity {
            /// Every quantity, in the order of the codes.
            pub const ALL: &'static [Self] = &[$(Self::$variant,)+];

            /// The quantity in words.
            pub const fn name(self) -> &'static str {
                match self { $(Self::$variant => $name,)+ }
            }

            /// The unit its plain numbers are in.
            pub const fn unit(self) -> &'static str {
                match self { $(Self::$variant => $unit,)+ }
            }

            /// The range in words, with its unit.
            pub const fn allowed(self) -> &'static str {
                match self { $(Self::$variant => range!(text: $($range)+, $unit),)+ }
            }

            /// What the C interface says of a value out of range.
            pub const fn status_text(self) -> &'static str {
                match self {
                    $(Self::$variant => concat!($name, " out of range; allowed: ", range!(text: $($range)+, $unit)),)+
                }
            }

            /// The stable number of this quantity's range error.
            pub const fn code(self) -> i32 {
                match self { $(Self::$variant => -$code,)+ }
            }

            // Where the quantity is a constant, as nearly everywhere, its range is two comparisons.
            #[inline(always)]
            fn holds(self, value: f64) -> bool {
                match self { $(Self::$variant => range!(holds: value, $($range)+),)+ }
            }
        }
    };
}

// A row: variant = code: name, unit, range. Codes are part of the C interface: add at the end, never renumber.
// `finite` is any finite number, `positive` anything above zero with infinity; else from/above MIN to/below MAX.
quantities! {
    /// Geodetic latitude on WGS-84.
    Latitude = 1: "latitude", "deg", [from -90.0 to 90.0];
    /// Longitude; values beyond a full circle are reduced.
    Longitude = 2: "longitude", "deg", [finite];
    /// A direction over the ground or through the air, clockwise from a north; reduced to [0, 360).
    Bearing = 3: "bearing", "deg", [finite];
    /// A signed change of direction, right positive; reduced to (-180, 180].
    DirectionChange = 4: "change of direction", "deg", [finite];
    /// Angle from the station's north to true north, or from magnetic to true, positive east.
    Declination = 5: "declination", "deg", [from -180.0 to 180.0];
    /// Angle of bank.
    Bank = 6: "bank", "deg", [above 0.0 below 90.0];
    /// Rate of change of heading.
    TurnRate = 7: "turn rate", "deg/s", [positive];
    /// Rate of change of bank; infinite for an instant roll.
    RollRate = 8: "roll rate", "deg/s", [positive];
    /// Distance along the surface of the earth.
    GroundDistance = 9: "ground distance", "NM", [from 0.0 to 10900.0];
    /// Straight distance between two antennas.
    SlantRange = 10: "slant range", "NM", [from 0.0 to 10900.0];
    /// Altitude in the standard atmosphere at which the pressure is found.
    PressureAltitude = 11: "pressure altitude", "ft", [from -16420.0 to 262467.2];
    /// Altitude above mean sea level.
    TrueAltitude = 12: "true altitude", "ft", [from -16500.0 to 400000.0];
    /// Height above the station's antenna.
    HeightAboveStation = 13: "height above the station", "ft", [from -60000.0 to 400000.0];
    /// Elevation of the station's antenna above mean sea level.
    Elevation = 14: "elevation", "ft", [from -16500.0 to 60000.0];
    /// Airspeed as a perfect indicator would show it.
    CalibratedAirspeed = 15: "calibrated airspeed", "kt", [from 0.0 to 5000.0];
    /// Airspeed that gives the same dynamic pressure in sea-level density.
    EquivalentAirspeed = 16: "equivalent airspeed", "kt", [from 0.0 to 5000.0];
    /// Speed through the air.
    TrueAirspeed = 17: "true airspeed", "kt", [above 0.0 to 5000.0];
    /// Speed over the ground.
    Groundspeed = 18: "groundspeed", "kt", [from 0.0 to 10000.0];
    /// Speed of the wind.
    WindSpeed = 19: "wind speed", "kt", [from 0.0 to 1000.0];
    /// Speed over speed of sound.
    Mach = 20: "Mach number", "", [from 0.0 to 10.0];
    /// Difference of temperature from the standard atmosphere.
    IsaDeviation = 21: "ISA deviation", "K", [from -150.0 to 150.0];
    /// Temperature of the air.
    Temperature = 22: "temperature", "degC", [from -200.0 to 200.0];
    /// Pressure of the undisturbed air.
    StaticPressure = 23: "static pressure", "hPa", [above 0.0 to 2000.0];
    /// Half-angle of a cone, from the vertical.
    ConeHalfAngle = 24: "cone half-angle", "deg", [above 0.0 below 90.0];
    /// Radius of an arc or of a turn.
    ArcRadius = 25: "radius", "NM", [above 0.0 to 5000.0];
    /// Angle at which a course is intercepted.
    InterceptAngle = 26: "intercept angle", "deg", [above 0.0 to 90.0];
    /// Ratio of lift to weight in a level turn.
    LoadFactor = 27: "load factor", "", [above 1.0 to 100.0];
    /// Altitude in units of work against standard gravity.
    GeopotentialAltitude = 28: "geopotential altitude", "ft", [from -16513.1 to 392472.6];
    /// Pressure above static that a pitot tube feels.
    ImpactPressure = 29: "impact pressure", "hPa", [from 0.0 to 80000.0];
    /// Speed through the air where a conversion has use for none.
    AirspeedOrRest = 30: "true airspeed", "kt", [from 0.0 to 5000.0];
    /// Heading to turn through, right positive, the long way round too.
    HeadingChange = 31: "change of heading", "deg", [from -360.0 to 360.0];
    /// Time since roll-in began.
    TurnTime = 32: "time in the turn", "s", [from -1000000.0 to 1000000.0];
    /// Altitude for which the speed factor of procedure design is laid out.
    ProcedureAltitude = 33: "altitude of a procedure", "ft", [from -2000.0 to 50000.0];
    /// Part of a wind along or across a direction, positive from ahead and from the right.
    WindComponent = 34: "wind component", "kt", [from -1000.0 to 1000.0];
    /// What an altimeter's subscale is set to.
    AltimeterSetting = 35: "altimeter setting", "hPa", [from 400.0 to 1200.0];
    /// Altitude that a perfect altimeter shows with its setting.
    IndicatedAltitude = 36: "indicated altitude", "ft", [from -50000.0 to 300000.0];
    /// Altitude in the standard atmosphere at which the density is found.
    DensityAltitude = 37: "density altitude", "ft", [from -16420.0 to 262467.2];
    /// Height above the place that gives the altimeter setting.
    HeightAboveSource = 38: "height above the altimeter setting source", "ft", [from 0.0 to 20000.0];
    /// Steps in which flight levels are available.
    LevelStep = 39: "step of flight levels", "ft", [from 100.0 to 10000.0];
    /// Least height that a transition layer must have.
    TransitionLayer = 40: "height of the transition layer", "ft", [from 0.0 to 10000.0];
    /// Temperature of air brought to rest.
    TotalTemperature = 41: "total temperature", "degC", [from -270.0 to 10000.0];
    /// Share of the heat of compression that a probe feels.
    RecoveryFactor = 42: "recovery factor", "", [from 0.0 to 1.0];
    /// Time between two observations.
    ElapsedTime = 43: "elapsed time", "s", [above 0.0 to 1000000.0];
    /// Speed over the ground of something that must move.
    GroundspeedMadeGood = 44: "groundspeed", "kt", [above 0.0 to 10000.0];
    /// Change of the bearing to a station, without its side.
    BearingDrift = 45: "change of the bearing", "deg", [above 0.0 below 180.0];
    /// Angle between the track and the bearing to a station, without its side.
    AngleOffBow = 46: "angle off the bow", "deg", [above 0.0 below 180.0];
    /// Radius of a sphere that stands for the earth.
    SphereRadius = 47: "radius of the sphere", "NM", [from 1.0 to 100000.0];
    /// Rate of climb, negative to descend.
    VerticalSpeed = 48: "vertical speed", "ft/min", [from -30000.0 to 30000.0];
    /// Time flown straight in a racetrack.
    HoldTime = 49: "time of a leg of a hold", "s", [from 0.0 to 3600.0];
    /// Distance across a course, right positive.
    CrossTrack = 50: "cross-track distance", "NM", [from -5000.0 to 5000.0];
    /// Distance along a course, onward positive.
    AlongTrack = 51: "along-track distance", "NM", [from -10000.0 to 10000.0];
    /// A date as a year and its fraction.
    DecimalYear = 52: "date", "yr", [from 2020.0 to 2035.0];
    /// Height above the surface that a radio horizon is seen over.
    SurfaceHeight = 53: "height above the surface", "ft", [from 0.0 to 400000.0];
    /// Deviation at which a needle stands at the end of its scale.
    FullScale = 54: "full-scale deviation", "deg", [above 0.0 below 90.0];
    /// Where a needle stands, as a part of full scale, positive right of centre.
    Deflection = 55: "deflection", "", [from -1.0 to 1.0];
    /// Angle at the station from the aircraft to the selected course, positive when the course lies to the right.
    CourseDeviation = 56: "course deviation", "deg", [from -90.0 to 90.0];
    /// Half-width of the zone abeam a station in which a receiver shows neither to nor from.
    AbeamZone = 57: "half-width of the zone abeam", "deg", [from 0.0 to 45.0];
    /// Step in which a display counts.
    DisplayStep = 58: "step of the display", "NM", [above 0.0 to 10.0];
    /// Distance along the ground from a station that is not overhead.
    StationDistance = 59: "distance from the station", "NM", [above 0.0 to 5000.0];
    /// Where a needle stands, in dots, positive right of centre.
    Dots = 60: "deflection in dots", "", [from -20.0 to 20.0];
    /// Chance with which something is to be kept.
    Confidence = 61: "confidence", "", [above 0.0 below 1.0];
    /// How many trials are flown.
    Trials = 62: "number of trials", "", [from 1.0 to 10000000.0];
    /// Degrees of heading for each degree of the needle.
    Gain = 63: "gain", "", [above 0.0 to 100.0];
    /// A standard deviation, in the unit of what it is of.
    StandardDeviation = 64: "standard deviation", "", [from 0.0 to 1000000.0];
    /// Error of a direction: a tolerance, or a standard deviation.
    AngularError = 65: "error of a direction", "deg", [from 0.0 to 90.0];
    /// Error of a distance: a tolerance, or a standard deviation.
    DistanceError = 66: "error of a distance", "NM", [from 0.0 to 1000.0];
    /// Distance from a VOR along a route for which its containment is published.
    RouteDistance = 67: "distance from the VOR along the route", "NM", [from 0.0 to 75.0];
    /// A leg of several, counted from one.
    LegNumber = 68: "number of the leg", "", [from 1.0 to 1000000.0];
    /// Longitude from the meridian of a transverse Mercator grid, east positive.
    GridLongitude = 69: "longitude from the grid's meridian", "deg", [from -60.0 to 60.0];
    /// A year of the calendar.
    CalendarYear = 70: "year", "", [from 2020.0 to 2034.0];
    /// A month of the year.
    Month = 71: "month", "", [from 1.0 to 12.0];
    /// A day of the month, with its elapsed fraction.
    DayOfMonth = 72: "day of the month", "", [from 1.0 below 32.0];
    /// How many levels winds are given at.
    WindLevels = 73: "number of wind levels", "", [from 1.0 to 1000.0];
    /// How many levels the winds of a flight are given at.
    FlightWindLevels = 74: "number of a flight's wind levels", "", [from 1.0 to 16.0];
    /// The most that two points of what is drawn are apart.
    PointSpacing = 75: "spacing of points", "NM", [positive];
    /// Angle from magnetic north to true north that courses are given with, positive east.
    MagneticVariation = 76: "magnetic variation", "deg", [from -180.0 to 180.0];
}

impl Quantity {
    /// `value` if it lies in the range of this quantity, else an error that names `parameter`.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside the range, and for a value that is not a number.
    #[inline(always)]
    pub fn check(self, parameter: &'static str, value: f64) -> Result<f64, Error> {
        if self.holds(value) {
            Ok(value)
        } else {
            Err(Error::OutOfRange { quantity: self, parameter, value })
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn codes_are_negative_unique_and_ordered() {
        let codes: Vec<i32> = Quantity::ALL.iter().map(|quantity| quantity.code()).collect();
        assert!(codes.windows(2).all(|pair| pair[1] < pair[0]));
        assert!(codes.iter().all(|code| (-99..=-1).contains(code)));
    }

    #[test]
    fn ranges_are_as_their_words_say() {
        assert_eq!(Quantity::Latitude.allowed(), "from -90.0 to 90.0 deg");
        assert_eq!(Quantity::Mach.allowed(), "from 0.0 to 10.0");
        let refused = Quantity::Mach.check("mach", 11.0).unwrap_err();
        assert_eq!(refused.to_string(), "mach is 11; allowed: from 0.0 to 10.0");
        assert!(Quantity::Latitude.holds(-90.0) && !Quantity::Latitude.holds(90.000001));
        assert!(Quantity::Bank.holds(89.9) && !Quantity::Bank.holds(90.0) && !Quantity::Bank.holds(0.0));
        assert!(Quantity::RollRate.holds(f64::INFINITY) && !Quantity::RollRate.holds(0.0));
        assert!(!Quantity::Bearing.holds(f64::INFINITY));
        assert!(Quantity::ALL.iter().all(|quantity| !quantity.holds(f64::NAN)));
    }
}
