//! The winds and areas with which turns of procedures are designed, in plain numbers.

use super::{any_nan, outputs};
use crate::Error;
use crate::procedure::{self, DesignUnits};
use crate::value::units::{degrees, knot, nautical_mile};
use crate::value::{
    ElapsedTime, GroundDistance, HoldTime, ProcedureAltitude, Quantity, TrueAirspeed, TurnRate, WindSpeed,
};

/// The wind from all sides that procedure design assumes at an altitude.
///
/// `2 h + 47` kt with h in thousands of feet; `12 h + 87` km/h with h in kilometres.
///
/// # Arguments
/// - `altitude_ft`: altitude, -2000 to 50 000
/// - `units`: in which units the formula is printed
///
/// # Accuracy
/// As published. The two forms differ by up to 2.4 percent.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Table I-2-3-1, ICAO standard wind.
///
/// # Example
/// ```
/// # use lubberline::plain::icao_wind_kt;
/// # use lubberline::procedure::DesignUnits;
/// assert_eq!(format!("{:.0}", icao_wind_kt(6_000.0, DesignUnits::NonSi)?), "59");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn icao_wind_kt(altitude_ft: f64, units: DesignUnits) -> Result<f64, Error> {
    if any_nan(&[altitude_ft]) {
        return Ok(f64::NAN);
    }
    let altitude = ProcedureAltitude::named("altitude_ft", altitude_ft)?;
    Ok(procedure::icao_wind(altitude, units).value().get::<knot>())
}

/// How far a wind carries an aircraft while it turns through an angle.
///
/// `(angle / rate) wind`.
///
/// # Arguments
/// - `angle_deg`: angle turned through, either way, -360 to 360
/// - `turn_rate_deg_per_s`: rate of the turn, above 0
/// - `wind_speed_kt`: speed of the wind, 0 to 1000
///
/// # Accuracy
/// Rounding error, for an instant roll.
///
/// # Degenerate cases
/// An infinite rate leaves no time to be carried.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Table I-4-3-App C-1, lines 8 and 16 to 19.
///
/// # Example
/// ```
/// # use lubberline::plain::turn_wind_effect_nm;
/// assert_eq!(format!("{:.2}", turn_wind_effect_nm(190.0, 3.0, 59.0)?), "1.04");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn turn_wind_effect_nm(
    angle_deg: f64,
    turn_rate_deg_per_s: f64,
    wind_speed_kt: f64,
) -> Result<f64, Error> {
    if any_nan(&[angle_deg, turn_rate_deg_per_s, wind_speed_kt]) {
        return Ok(f64::NAN);
    }
    let angle = degrees(Quantity::HeadingChange.check("angle_deg", angle_deg)?);
    let rate = TurnRate::named("turn_rate_deg_per_s", turn_rate_deg_per_s)?;
    let wind = WindSpeed::named("wind_speed_kt", wind_speed_kt)?;
    Ok(procedure::wind_effect(angle, rate, wind).get::<nautical_mile>())
}

outputs! {
    /// The distances of the template of a base turn: what [`base_turn_template`] gives.
    BaseTurnTemplate {
        /// Length of the outbound leg in still air.
        leg_nm,
        /// Nearest place of the outbound leg's end, from the fix.
        nearest_nm,
        /// Farthest place of the outbound leg's end, from the fix.
        farthest_nm,
    }
}

/// The distances of the template of a base turn in procedure design.
///
/// `V T`, `(T - 5 s)(V - w) - z` and `(T + 21 s)(V + w) + z`.
///
/// # Arguments
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `outbound_time_s`: time outbound, 0 to 3600
/// - `wind_speed_kt`: speed of the wind, 0 to 1000
/// - `fix_tolerance_nm`: tolerance of the fix along the track, 0 to 10 900
///
/// # Accuracy
/// As published; the tables printed beside it round speeds and winds to four figures before.
///
/// # Degenerate cases
/// A short time and a strong wind make the nearest place negative: past the fix.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Table I-4-3-App C-1, lines 10 to 15.
///
/// # Example
/// ```
/// # use lubberline::plain::base_turn_template;
/// assert_eq!(format!("{:.2}", base_turn_template(157.23, 120.0, 59.0, 0.83)?.nearest_nm), "2.31");
/// assert_eq!(format!("{:.2}", base_turn_template(157.23, 120.0, 59.0, 0.83)?.farthest_nm), "9.30");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn base_turn_template(
    true_airspeed_kt: f64,
    outbound_time_s: f64,
    wind_speed_kt: f64,
    fix_tolerance_nm: f64,
) -> Result<BaseTurnTemplate, Error> {
    if any_nan(&[true_airspeed_kt, outbound_time_s, wind_speed_kt, fix_tolerance_nm]) {
        return Ok(BaseTurnTemplate::NAN);
    }
    let template = procedure::base_turn_template(
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        HoldTime::named("outbound_time_s", outbound_time_s)?,
        WindSpeed::named("wind_speed_kt", wind_speed_kt)?,
        GroundDistance::named("fix_tolerance_nm", fix_tolerance_nm)?,
    );
    Ok(BaseTurnTemplate {
        leg_nm: template.leg.get::<nautical_mile>(),
        nearest_nm: template.nearest.get::<nautical_mile>(),
        farthest_nm: template.farthest.get::<nautical_mile>(),
    })
}

/// The radius of the sector that protects a base turn flown without a drawn area.
///
/// `(V / 60 + 1.0) T + 1.5` NM; `(V / 60 + 1.9) T + 2.8` km with V in km/h.
///
/// # Arguments
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `outbound_time_s`: time outbound, above 0 to 1 000 000
/// - `units`: in which units the formula is printed
///
/// # Accuracy
/// As published: the second form has the constants of the first, rounded after conversion.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Part II Section 2 Chapter 5, 5.3; a margin of 2.0 NM is added on all sides
/// there.
///
/// # Example
/// ```
/// # use lubberline::plain::base_turn_sector_nm;
/// # use lubberline::procedure::DesignUnits;
/// assert_eq!(format!("{:.1}", base_turn_sector_nm(180.0, 120.0, DesignUnits::NonSi)?), "9.5");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn base_turn_sector_nm(
    true_airspeed_kt: f64,
    outbound_time_s: f64,
    units: DesignUnits,
) -> Result<f64, Error> {
    if any_nan(&[true_airspeed_kt, outbound_time_s]) {
        return Ok(f64::NAN);
    }
    let airspeed = TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?;
    let time = ElapsedTime::named("outbound_time_s", outbound_time_s)?;
    Ok(procedure::base_turn_sector(airspeed, time, units)?.value().get::<nautical_mile>())
}
