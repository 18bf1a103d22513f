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
