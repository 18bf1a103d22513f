//! Plain functions of [`crate::turn`].

use super::{any_nan, outputs};
use crate::Error;
use crate::many::run;
use crate::many::turn_radius::TurnRadius;
use crate::turn::{self, TurnLimits};
use crate::value::units::{degree, degree_per_second, degrees, nautical_mile, ratio, second};
use crate::value::{ArcRadius, Bank, LoadFactor, Quantity, RollRate, TrueAirspeed, TurnRate};

/// The limits of a turn from plain numbers under the names every plain function gives them.
pub(super) fn turn_limits(
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
) -> Result<TurnLimits, Error> {
    Ok(TurnLimits {
        bank: Bank::named("bank_limit_deg", bank_limit_deg)?,
        rate: TurnRate::named("turn_rate_limit_deg_per_s", turn_rate_limit_deg_per_s)?,
        roll: RollRate::named("roll_rate_deg_per_s", roll_rate_deg_per_s)?,
    })
}

/// Radius of a level turn in still air.
///
/// `V^2 / (g tan(bank))` with standard gravity.
///
/// # Arguments
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `bank_deg`: angle of bank, above 0 below 90
///
/// # Accuracy
/// Rounding error, in arrays 2e-15 of the radius over the cosine of the bank; standard gravity stands for the local one, which differs by up to 0.3 percent at the surface.
///
/// # Degenerate cases
/// Infinite at a bank whose tangent is less than any number.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Equilibrium in a coordinated turn; ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 3.
///
/// # Example
/// ```
/// # use lubberline::plain::turn_radius_nm;
/// assert_eq!(format!("{:.2}", turn_radius_nm(450.0, 25.0)?), "6.33");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn turn_radius_nm(true_airspeed_kt: f64, bank_deg: f64) -> Result<f64, Error> {
    if any_nan(&[true_airspeed_kt, bank_deg]) {
        return Ok(f64::NAN);
    }
    let airspeed = TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?;
    Ok(turn::radius(airspeed, Bank::named("bank_deg", bank_deg)?).get::<nautical_mile>())
}

/// [`turn_radius_nm`] over columns.
pub(super) fn turn_radius_nm_block(inputs: [&[f64]; 2], outputs: [&mut [f64]; 1]) {
    let [true_airspeed_kt, bank_deg] = inputs;
    let [turn_radius_nm] = outputs;
    run(TurnRadius { true_airspeed_kt, bank_deg, turn_radius_nm });
}

/// Rate of a level turn.
///
/// `g tan(bank) / V` with standard gravity.
///
/// # Arguments
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `bank_deg`: angle of bank, above 0 below 90
///
/// # Accuracy
/// Rounding error.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Equilibrium in a coordinated turn; ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 3.
///
/// # Example
/// ```
/// # use lubberline::plain::turn_rate_deg_per_s;
/// assert_eq!(format!("{:.2}", turn_rate_deg_per_s(120.0, 30.0)?), "5.25");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn turn_rate_deg_per_s(true_airspeed_kt: f64, bank_deg: f64) -> Result<f64, Error> {
    if any_nan(&[true_airspeed_kt, bank_deg]) {
        return Ok(f64::NAN);
    }
    let airspeed = TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?;
    Ok(turn::rate(airspeed, Bank::named("bank_deg", bank_deg)?).get::<degree_per_second>())
}

/// The bank that turns at a rate.
///
/// `atan(rate V / g)` with standard gravity.
///
/// # Arguments
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `turn_rate_deg_per_s`: rate of turn, above 0 (default 3.0)
///
/// # Accuracy
/// Rounding error.
///
/// # Degenerate cases
/// A rate that needs a bank of 90 degrees is refused.
///
/// # Errors
/// A value outside its range, or a bank of 90 degrees.
///
/// # Source
/// Equilibrium in a coordinated turn; ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 3.
///
/// # Example
/// ```
/// # use lubberline::plain::bank_for_rate_deg;
/// assert_eq!(format!("{:.2}", bank_for_rate_deg(180.0, 3.0)?), "26.31");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn bank_for_rate_deg(true_airspeed_kt: f64, turn_rate_deg_per_s: f64) -> Result<f64, Error> {
    if any_nan(&[true_airspeed_kt, turn_rate_deg_per_s]) {
        return Ok(f64::NAN);
    }
    let airspeed = TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?;
    let rate = TurnRate::named("turn_rate_deg_per_s", turn_rate_deg_per_s)?;
    Ok(turn::bank_for_rate(airspeed, rate)?.value().get::<degree>())
}

/// The bank that turns on a radius in still air.
///
/// `atan(V^2 / (g r))` with standard gravity.
///
/// # Arguments
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `turn_radius_nm`: radius of the turn, above 0 to 5000
///
/// # Accuracy
/// Rounding error.
///
/// # Degenerate cases
/// A radius that needs a bank of 90 degrees to rounding is refused.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Equilibrium in a coordinated turn; ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 3.
///
/// # Example
/// ```
/// # use lubberline::plain::bank_for_radius_deg;
/// assert_eq!(format!("{:.1}", bank_for_radius_deg(450.0, 6.33)?), "25.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn bank_for_radius_deg(true_airspeed_kt: f64, turn_radius_nm: f64) -> Result<f64, Error> {
    if any_nan(&[true_airspeed_kt, turn_radius_nm]) {
        return Ok(f64::NAN);
    }
    let airspeed = TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?;
    let radius = ArcRadius::named("turn_radius_nm", turn_radius_nm)?;
    Ok(turn::bank_for_radius(airspeed, radius)?.value().get::<degree>())
}

/// Radius of a turn at a rate in still air, whatever bank it takes.
///
/// `V / rate`; at standard rate `V / (60 pi)` nautical miles with V in knots.
///
/// # Arguments
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `turn_rate_deg_per_s`: rate of turn, above 0 (default 3.0)
///
/// # Accuracy
/// Rounding error.
///
/// # Degenerate cases
/// An infinite rate gives a radius of zero.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The definition of angular velocity.
///
/// # Example
/// ```
/// # use lubberline::plain::radius_at_rate_nm;
/// assert_eq!(format!("{:.3}", radius_at_rate_nm(180.0, 3.0)?), "0.955");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn radius_at_rate_nm(true_airspeed_kt: f64, turn_rate_deg_per_s: f64) -> Result<f64, Error> {
    if any_nan(&[true_airspeed_kt, turn_rate_deg_per_s]) {
        return Ok(f64::NAN);
    }
    let airspeed = TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?;
    let rate = TurnRate::named("turn_rate_deg_per_s", turn_rate_deg_per_s)?;
    Ok(turn::radius_at_rate(airspeed, rate).get::<nautical_mile>())
}

/// Load factor of a level turn.
///
/// `1 / cos(bank)`.
///
/// # Arguments
/// - `bank_deg`: angle of bank, above 0 below 90
///
/// # Accuracy
/// Rounding error.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Equilibrium of lift and weight.
///
/// # Example
/// ```
/// # use lubberline::plain::load_factor;
/// assert_eq!(format!("{:.3}", load_factor(60.0)?), "2.000");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn load_factor(bank_deg: f64) -> Result<f64, Error> {
    if any_nan(&[bank_deg]) {
        return Ok(f64::NAN);
    }
    Ok(turn::load_factor(Bank::named("bank_deg", bank_deg)?).get::<ratio>())
}

/// The bank of a level turn at a load factor.
///
/// `acos(1 / n)`.
///
/// # Arguments
/// - `load_factor`: lift over weight, above 1 to 100
///
/// # Accuracy
/// Rounding error, near a load factor of 1 too.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Equilibrium of lift and weight.
///
/// # Example
/// ```
/// # use lubberline::plain::bank_for_load_factor_deg;
/// assert_eq!(format!("{:.2}", bank_for_load_factor_deg(1.3)?), "39.72");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn bank_for_load_factor_deg(load_factor: f64) -> Result<f64, Error> {
    if any_nan(&[load_factor]) {
        return Ok(f64::NAN);
    }
    Ok(turn::bank_for_load_factor(LoadFactor::named("load_factor", load_factor)?)?.value().get::<degree>())
}

outputs! {
    /// The turn that the limits leave: what [`limited_turn`] gives.
    LimitedTurn {
        /// The bank that is flown.
        bank_deg,
        /// The rate of turn at it.
        turn_rate_deg_per_s,
        /// The radius in still air.
        radius_nm,
        /// What governs the bank: 0 the bank limit, 1 the limit of the rate of turn.
        governed_by,
    }
}

/// The steady turn an aircraft makes within a bank limit and a limit of its rate of turn, and which of them governs.
///
/// The bank is the lesser of the limit and `atan(rate V / g)`: rate-limited at low speed, bank-limited above
/// `g tan(bank) / rate`.
///
/// # Arguments
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `bank_limit_deg`: greatest bank, above 0 below 90 (default 25.0)
/// - `turn_rate_limit_deg_per_s`: greatest rate of turn, above 0 (default 3.0)
///
/// # Accuracy
/// Rounding error.
///
/// # Degenerate cases
/// Where both limits ask for the same bank, the bank limit is named.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 3 and Table I-4-3-App C-1 (25 degrees, at most 3 deg/s).
///
/// # Example
/// ```
/// # use lubberline::plain::limited_turn;
/// assert_eq!(format!("{:.2}", limited_turn(157.23, 25.0, 3.0)?.radius_nm), "0.83");
/// assert_eq!(format!("{:.1}", limited_turn(450.0, 25.0, 3.0)?.bank_deg), "25.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn limited_turn(
    true_airspeed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
) -> Result<LimitedTurn, Error> {
    if any_nan(&[true_airspeed_kt, bank_limit_deg, turn_rate_limit_deg_per_s]) {
        return Ok(LimitedTurn::NAN);
    }
    let airspeed = TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?;
    let limits = TurnLimits {
        bank: Bank::named("bank_limit_deg", bank_limit_deg)?,
        rate: TurnRate::named("turn_rate_limit_deg_per_s", turn_rate_limit_deg_per_s)?,
        roll: RollRate::instant(),
    };
    let (bank, governor) = limits.governing_bank(airspeed);
    Ok(LimitedTurn {
        bank_deg: bank.value().get::<degree>(),
        turn_rate_deg_per_s: turn::rate(airspeed, bank).get::<degree_per_second>(),
        radius_nm: turn::radius(airspeed, bank).get::<nautical_mile>(),
        governed_by: f64::from(governor.code()),
    })
}

outputs! {
    /// A turn flown with its roll: what [`rolled_turn`] gives.
    RolledTurn {
        /// The greatest bank.
        bank_deg,
        /// From the first roll to wings level.
        duration_s,
        /// The duration of one roll, in or out.
        roll_duration_s,
        /// Distance made good through the air along the first heading.
        advance_nm,
        /// Distance made good through the air across the first heading, right positive.
        transfer_nm,
        /// What governs the bank: 0 the bank limit, 1 the limit of the rate of turn, 2 the roll, 3 no turn.
        governed_by,
    }
}

/// A level turn with its roll: bank growing at the roll rate to its target, held, and taken off again.
///
/// Heading turned while rolling to bank b at rate p: `-(g / (V p)) ln(cos(b))`; the path is integrated over it.
///
/// # Arguments
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `heading_change_deg`: change of heading, right positive, -360 to 360
/// - `bank_limit_deg`: greatest bank, above 0 below 90 (default 25.0)
/// - `turn_rate_limit_deg_per_s`: greatest rate of turn, above 0 (default 3.0)
/// - `roll_rate_deg_per_s`: rate of roll, above 0, infinite for an instant roll (default 5.0)
///
/// # Accuracy
/// 1e-10 of the size of the turn against a fine integration in time.
///
/// # Degenerate cases
/// A change of zero takes no time and no distance.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Equilibrium in a coordinated level turn; derived.
///
/// # Example
/// ```
/// # use lubberline::plain::rolled_turn;
/// assert_eq!(format!("{:.1}", rolled_turn(450.0, 90.0, 25.0, 3.0, 5.0)?.duration_s), "84.7");
/// assert_eq!(format!("{:.2}", rolled_turn(450.0, 90.0, 25.0, 3.0, f64::INFINITY)?.advance_nm), "6.33");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rolled_turn(
    true_airspeed_kt: f64,
    heading_change_deg: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
) -> Result<RolledTurn, Error> {
    if any_nan(&[
        true_airspeed_kt,
        heading_change_deg,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
    ]) {
        return Ok(RolledTurn::NAN);
    }
    let airspeed = TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?;
    let change_deg = Quantity::HeadingChange.check("heading_change_deg", heading_change_deg)?;
    let limits = turn_limits(bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?;
    let flown = turn::RolledTurn::new(airspeed, &limits, degrees(change_deg));
    let (advance, transfer) = flown.displacement();
    Ok(RolledTurn {
        bank_deg: flown.bank().get::<degree>(),
        duration_s: flown.duration().get::<second>(),
        roll_duration_s: flown.roll_duration().get::<second>(),
        advance_nm: advance.get::<nautical_mile>(),
        transfer_nm: transfer.get::<nautical_mile>(),
        governed_by: f64::from(flown.governor().code()),
    })
}
