//! The steady turn: what bank, airspeed, radius and rate have to do with each other.

use crate::Error;
use crate::value::units::{
    AngularVelocity, STANDARD_GRAVITY_M_S2, degree_per_second, degrees, degrees_per_second, meter,
    meter_per_second, metres, radian, radian_per_second, ratio,
};
use crate::value::units::{Ratio, degree};
use crate::value::{ArcRadius, Bank, LoadFactor, TrueAirspeed, TurnRate};

/// The standard rate of turn in degrees per second: a full circle in two minutes.
pub const STANDARD_RATE_DEG_PER_S: f64 = 3.0;

/// Radius of a level turn in still air, `V² / (g tan bank)`.
///
/// # Accuracy
/// Rounding error. With standard gravity; local gravity differs by up to 0.3 percent at the surface and
/// 0.4 percent more at 45 000 ft.
///
/// # Degenerate cases
/// Infinite at a bank whose tangent is less than any number.
///
/// # Source
/// Equilibrium of lift, weight and centripetal force; ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 3,
/// prints it with g = 68 625 NM/h².
///
/// # Example
/// ```
/// use lubberline::turn::radius;
/// use lubberline::value::{Bank, TrueAirspeed, units::*};
/// let radius = radius(TrueAirspeed::new(knots(450.0))?, Bank::new(degrees(25.0))?);
/// assert_eq!(format!("{:.2}", radius.get::<nautical_mile>()), "6.33");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn radius(true_airspeed: TrueAirspeed, bank: Bank) -> crate::value::units::Length {
    let airspeed_m_s = true_airspeed.value().get::<meter_per_second>();
    // The square of a speed that all but vanishes would be nothing.
    metres(airspeed_m_s * (airspeed_m_s / (STANDARD_GRAVITY_M_S2 * bank.value().get::<radian>().tan())))
}

/// Rate of turn at a bank, `g tan(bank) / V`.
///
/// # Source
/// As [`radius`].
///
/// # Example
/// ```
/// use lubberline::turn::rate;
/// use lubberline::value::{Bank, TrueAirspeed, units::*};
/// // A steep turn of a slow aircraft: 5 degrees a second.
/// assert_eq!(format!("{:.2}", rate(TrueAirspeed::new(knots(120.0))?, Bank::new(degrees(30.0))?).get::<degree_per_second>()), "5.25");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rate(true_airspeed: TrueAirspeed, bank: Bank) -> AngularVelocity {
    let airspeed_m_s = true_airspeed.value().get::<meter_per_second>();
    degrees_per_second(
        (STANDARD_GRAVITY_M_S2 * bank.value().get::<radian>().tan() / airspeed_m_s).to_degrees(),
    )
}

/// The bank that turns at a rate, `atan(rate V / g)`.
///
/// # Degenerate cases
/// An infinite rate takes a bank of 90 degrees, which is no bank: it is refused.
///
/// # Errors
/// [`Error::OutOfRange`] for a rate that needs 90 degrees to rounding.
///
/// # Source
/// As [`radius`].
///
/// # Example
/// ```
/// use lubberline::turn::bank_for_rate;
/// use lubberline::value::{TrueAirspeed, TurnRate, units::*};
/// assert_eq!(format!("{:.1}", bank_for_rate(TrueAirspeed::new(knots(180.0))?, TurnRate::new(degrees_per_second(3.0))?)?.value().get::<degree>()), "26.3");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn bank_for_rate(true_airspeed: TrueAirspeed, turn_rate: TurnRate) -> Result<Bank, Error> {
    Bank::new(degrees(bank_for_rate_rad(true_airspeed, turn_rate).to_degrees()))
}

/// [`bank_for_rate`] in radians, up to a right angle.
pub(super) fn bank_for_rate_rad(true_airspeed: TrueAirspeed, turn_rate: TurnRate) -> f64 {
    let airspeed_m_s = true_airspeed.value().get::<meter_per_second>();
    (turn_rate.value().get::<radian_per_second>() * airspeed_m_s / STANDARD_GRAVITY_M_S2).atan()
}

/// The bank that turns on a radius in still air, `atan(V² / (g r))`.
///
/// # Errors
/// [`Error::OutOfRange`] for a radius so small that it needs 90 degrees to rounding.
///
/// # Source
/// As [`radius`].
///
/// # Example
/// ```
/// use lubberline::turn::bank_for_radius;
/// use lubberline::value::{ArcRadius, TrueAirspeed, units::*};
/// assert_eq!(format!("{:.1}", bank_for_radius(TrueAirspeed::new(knots(250.0))?, ArcRadius::new(nautical_miles(3.0))?)?.value().get::<degree>()), "16.9");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn bank_for_radius(true_airspeed: TrueAirspeed, radius: ArcRadius) -> Result<Bank, Error> {
    let airspeed_m_s = true_airspeed.value().get::<meter_per_second>();
    let bank_rad =
        (airspeed_m_s * airspeed_m_s / (STANDARD_GRAVITY_M_S2 * radius.value().get::<meter>())).atan();
    Bank::new(degrees(bank_rad.to_degrees()))
}

/// Radius of a turn at a rate in still air, `V / rate`, whatever bank it takes.
///
/// # Source
/// The definition of angular velocity.
///
/// # Example
/// ```
/// use lubberline::turn::radius_at_rate;
/// use lubberline::value::{TrueAirspeed, TurnRate, units::*};
/// // The third-of-a-mile rule makes it 1 NM.
/// assert_eq!(format!("{:.3}", radius_at_rate(TrueAirspeed::new(knots(180.0))?, TurnRate::new(degrees_per_second(3.0))?).get::<nautical_mile>()), "0.955");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn radius_at_rate(true_airspeed: TrueAirspeed, turn_rate: TurnRate) -> crate::value::units::Length {
    let rate_rad_s = turn_rate.value().get::<degree_per_second>().to_radians();
    metres(true_airspeed.value().get::<meter_per_second>() / rate_rad_s)
}

/// Lift over weight in a level turn, `1 / cos(bank)`.
///
/// # Source
/// Equilibrium of lift and weight.
///
/// # Example
/// ```
/// use lubberline::turn::load_factor;
/// use lubberline::value::{Bank, units::*};
/// assert_eq!(format!("{:.1}", load_factor(Bank::new(degrees(60.0))?).get::<ratio>()), "2.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn load_factor(bank: Bank) -> Ratio {
    Ratio::new::<ratio>(1.0 / bank.value().get::<radian>().cos())
}

/// The bank of a level turn at a load factor, `acos(1 / n)`.
///
/// # Errors
/// [`Error::OutOfRange`] for a load factor so close to 1 that no bank is left.
///
/// # Source
/// Equilibrium of lift and weight.
///
/// # Example
/// ```
/// use lubberline::turn::bank_for_load_factor;
/// use lubberline::value::{LoadFactor, units::*};
/// assert_eq!(format!("{:.1}", bank_for_load_factor(LoadFactor::new(Ratio::new::<ratio>(1.3))?)?.value().get::<degree>()), "39.7");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn bank_for_load_factor(load_factor: LoadFactor) -> Result<Bank, Error> {
    let factor = load_factor.value().get::<ratio>();
    // The tangent keeps its digits near a load factor of one, where the arccosine loses half of them.
    let bank_rad = ((factor - 1.0) * (factor + 1.0)).sqrt().atan();
    Bank::new(crate::value::units::Angle::new::<degree>(bank_rad.to_degrees()))
}
