//! What procedure design assumes: a wind by altitude, its effect on a turn, and the distances drawn from them.

use super::DesignUnits;
use crate::Error;
use crate::value::units::{
    Angle, Length, degree, degree_per_second, foot, knot, knots, nautical_miles, second, seconds,
};
use crate::value::{
    ElapsedTime, GroundDistance, HoldTime, ProcedureAltitude, TrueAirspeed, TurnRate, WindSpeed,
};

const METRES_PER_FOOT: f64 = 0.3048;
const KM_PER_MILE: f64 = 1.852;

/// Times of procedure design for holding, in seconds, and the tolerance of a heading in degrees.
///
/// Source: ICAO Doc 8168 Vol II (5th ed. 2006), Table I-2-3-1, holding and initial approach.
pub const BANK_ESTABLISHMENT_S: f64 = 5.0;
/// Reaction of the pilot.
pub const PILOT_REACTION_S: f64 = 6.0;
/// Tolerance of the outbound time.
pub const OUTBOUND_TIMING_S: f64 = 10.0;
/// Tolerance of the heading.
pub const HEADING_TOLERANCE_DEG: f64 = 5.0;

/// The wind from all sides that procedure design assumes at an altitude: `2 h + 47` kt with `h` in thousands of feet, `12 h + 87` km/h with
/// `h` in kilometres.
///
/// # Degenerate cases
/// The two forms differ by up to 2.4 percent.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Table I-2-3-1, ICAO standard wind; Part II Section 3 Chapter 1, 1.4.3.3.
///
/// # Example
/// ```
/// use lubberline::procedure::{DesignUnits, icao_wind};
/// use lubberline::value::{ProcedureAltitude, units::*};
/// // 2 h + 47 kt.
/// assert_eq!(format!("{:.0}", icao_wind(ProcedureAltitude::new(feet(10_000.0))?, DesignUnits::NonSi).value().get::<knot>()), "67");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn icao_wind(altitude: ProcedureAltitude, units: DesignUnits) -> WindSpeed {
    let altitude_ft = altitude.value().get::<foot>();
    WindSpeed::derived(knots(match units {
        DesignUnits::NonSi => 2.0 * altitude_ft / 1000.0 + 47.0,
        DesignUnits::Si => (12.0 * altitude_ft * METRES_PER_FOOT / 1000.0 + 87.0) / KM_PER_MILE,
    }))
}

/// How far a wind carries an aircraft while it turns through an angle at a rate: `(angle / rate) wind`.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Table I-4-3-App C-1, lines 8 and 16 to 19.
///
/// # Example
/// ```
/// use lubberline::procedure::wind_effect;
/// use lubberline::value::{TurnRate, WindSpeed, units::*};
/// assert_eq!(format!("{:.2}", wind_effect(degrees(50.0), TurnRate::new(degrees_per_second(2.0))?, WindSpeed::new(knots(60.0))?).get::<nautical_mile>()), "0.42");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn wind_effect(angle: Angle, rate: TurnRate, wind: WindSpeed) -> Length {
    let time = seconds(angle.get::<degree>().abs() / rate.value().get::<degree_per_second>());
    wind.value() * time
}

/// The distances of the template of a base turn.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BaseTurnTemplate {
    /// Length of the outbound leg in still air.
    pub leg: Length,
    /// Nearest place of the outbound leg's end, from the fix.
    pub nearest: Length,
    /// Farthest place of the outbound leg's end, from the fix.
    pub farthest: Length,
}

/// The distances of the template of a base turn: `V T`, `(T - 5 s)(V - w) - z`, and `(T + 21 s)(V + w) + z`.
///
/// The times are the tolerance of the clock, ten seconds, less the bank's five, and with the pilot's six and the bank's five; `z` is the tolerance of the fix.
///
/// # Accuracy
/// As published; the tables printed beside it round speeds and winds to four figures before.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Table I-4-3-App C-1, lines 10 to 15.
///
/// # Example
/// ```
/// use lubberline::procedure::base_turn_template;
/// use lubberline::value::{GroundDistance, HoldTime, TrueAirspeed, WindSpeed, units::*};
/// let template = base_turn_template(
///     TrueAirspeed::new(knots(157.23))?,
///     HoldTime::new(seconds(120.0))?,
///     WindSpeed::new(knots(59.0))?,
///     GroundDistance::new(nautical_miles(0.83))?,
/// );
/// // ICAO Doc 8168 Vol II, Table I-4-3-App C-1 line 10.
/// assert_eq!(format!("{:.2}", template.leg.get::<nautical_mile>()), "5.24");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn base_turn_template(
    true_airspeed: TrueAirspeed,
    outbound: HoldTime,
    wind: WindSpeed,
    fix_tolerance: GroundDistance,
) -> BaseTurnTemplate {
    let (speed, wind, time) = (true_airspeed.value(), wind.value(), outbound.value());
    let early = time - seconds(OUTBOUND_TIMING_S - BANK_ESTABLISHMENT_S);
    let late = time + seconds(OUTBOUND_TIMING_S + BANK_ESTABLISHMENT_S + PILOT_REACTION_S);
    BaseTurnTemplate {
        leg: speed * time,
        nearest: early * (speed - wind) - fix_tolerance.value(),
        farthest: late * (speed + wind) + fix_tolerance.value(),
    }
}

/// The radius of the sector that protects a base turn flown without a drawn area: `(V / 60 + 1.0) T + 1.5` NM, or
/// `(V / 60 + 1.9) T + 2.8` km, with `V` in knots or kilometres per hour and `T` in minutes.
///
/// # Accuracy
/// The constants of the second form are those of the first, rounded after conversion.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Part II Section 2 Chapter 5, 5.3; a margin of 2.0 NM is added on all sides there.
///
/// # Errors
/// [`Error::OutOfRange`] of a distance beyond half around the earth.
///
/// # Example
/// ```
/// use lubberline::procedure::{DesignUnits, base_turn_sector};
/// use lubberline::value::{ElapsedTime, TrueAirspeed, units::*};
/// let sector = base_turn_sector(
///     TrueAirspeed::new(knots(180.0))?,
///     ElapsedTime::new(seconds(120.0))?,
///     DesignUnits::NonSi,
/// )?;
/// assert!((sector.value() - nautical_miles(9.5)).abs() < nautical_miles(1e-9));
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn base_turn_sector(
    true_airspeed: TrueAirspeed,
    outbound: ElapsedTime,
    units: DesignUnits,
) -> Result<GroundDistance, Error> {
    let minutes = outbound.value().get::<second>() / 60.0;
    let speed_kt = true_airspeed.value().get::<knot>();
    GroundDistance::new(nautical_miles(match units {
        DesignUnits::NonSi => (speed_kt / 60.0 + 1.0) * minutes + 1.5,
        DesignUnits::Si => ((speed_kt * KM_PER_MILE / 60.0 + 1.9) * minutes + 2.8) / KM_PER_MILE,
    }))
}
