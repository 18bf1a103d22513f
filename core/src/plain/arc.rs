//! Plain functions of the turns between a radial and an arc, in wind and with roll.

use super::lead::wind;
use super::turn::turn_limits;
use super::{any_nan, outputs};
use crate::Error;
use crate::lead::{self, ArcSense, RadialFlown};
use crate::value::units::{degree, nautical_mile, second};
use crate::value::{ArcRadius, Bearing, TrueAirspeed, TrueNorth};

outputs! {
    /// A turn between a radial and an arc: what [`arc_entry`] and [`arc_exit`] give.
    ArcTurn {
        /// Radial at which roll-in begins.
        radial_at_roll_in_deg,
        /// Ground distance from the station at which roll-in begins.
        distance_at_roll_in_nm,
        /// Radial at which the wings are level again.
        radial_at_roll_out_deg,
        /// Ground distance from the station at which the wings are level again.
        distance_at_roll_out_nm,
        /// Angle at the station between the two, positive in the sense of the arc: the lead radials when leaving the arc.
        angle_at_station_deg,
        /// Change of heading, right positive.
        heading_change_deg,
        /// From roll-in to wings level.
        duration_s,
    }
}

fn output(turn: &lead::ArcTurn<TrueNorth>) -> ArcTurn {
    ArcTurn {
        radial_at_roll_in_deg: turn.bearing_at_roll_in.angle().get::<degree>(),
        distance_at_roll_in_nm: turn.distance_at_roll_in.value().get::<nautical_mile>(),
        radial_at_roll_out_deg: turn.bearing_at_roll_out.angle().get::<degree>(),
        distance_at_roll_out_nm: turn.distance_at_roll_out.value().get::<nautical_mile>(),
        angle_at_station_deg: turn.angle_at_station.get::<degree>(),
        heading_change_deg: turn.heading_change.get::<degree>(),
        duration_s: turn.duration.get::<second>(),
    }
}

/// Where on a radial to begin the turn onto a DME arc, in wind and with roll.
///
/// The end of the turn lies on the arc with the track along it; the bearing of the end is the one for which the beginning lies on the
/// radial. In still air with an instant roll the distance is `sqrt(D^2 + 2 D r)` inbound and `sqrt(D^2 - 2 D r)` outbound.
///
/// # Arguments
/// - `radial_deg`: the radial, any finite number
/// - `flown`: whether the radial is flown inbound or outbound
/// - `arc_radius_nm`: ground distance of the arc from the station, above 0 to 5000
/// - `sense`: which way round the station the arc is flown
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, against the radial's north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
/// - `bank_limit_deg`: greatest bank, above 0 below 90 (default 25.0)
/// - `turn_rate_limit_deg_per_s`: greatest rate of turn, above 0 (default 3.0)
/// - `roll_rate_deg_per_s`: rate of roll, above 0, infinite for an instant roll (default 5.0)
///
/// # Accuracy
/// Rounding error in the plane; 2e-4 NM on the ellipsoid within 20 NM of the station.
///
/// # Degenerate cases
/// An arc counts along the ground; `ground_distance_nm` turns the DME reading that is flown into it.
///
/// # Errors
/// A value outside its range, a turn that does not fit (outbound in still air: an arc below twice the turn radius), a wind that the airspeed cannot hold.
///
/// # Source
/// Derived from the geometry of tangent curves and the equilibrium of a coordinated turn.
///
/// # Example
/// ```
/// # use lubberline::plain::arc_entry;
/// # use lubberline::lead::{ArcSense, RadialFlown};
/// assert_eq!(format!("{:.2}", arc_entry(300.0, RadialFlown::Inbound, 12.0, ArcSense::Clockwise, 210.0, 250.0, 40.0, 25.0, 3.0, 5.0)?.distance_at_roll_in_nm), "13.92");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn arc_entry(
    radial_deg: f64,
    flown: RadialFlown,
    arc_radius_nm: f64,
    sense: ArcSense,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
) -> Result<ArcTurn, Error> {
    if any_nan(&[
        radial_deg,
        arc_radius_nm,
        true_airspeed_kt,
        wind_from_deg,
        wind_speed_kt,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
    ]) {
        return Ok(ArcTurn::NAN);
    }
    let turn = lead::onto_arc(
        Bearing::named("radial_deg", radial_deg)?,
        flown,
        ArcRadius::named("arc_radius_nm", arc_radius_nm)?,
        sense,
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        wind(wind_from_deg, wind_speed_kt)?,
        &turn_limits(bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?,
    )?;
    Ok(output(&turn))
}

/// Where on a DME arc to begin the turn onto a radial, in wind and with roll: the lead radial.
///
/// The turn begins on the arc along it and ends on the radial. In still air with an instant roll the lead is
/// `asin(r / (D - r))` toward the station and `asin(r / (D + r))` away from it.
///
/// # Arguments
/// - `radial_deg`: the radial, any finite number
/// - `flown`: whether the radial is flown inbound or outbound
/// - `arc_radius_nm`: ground distance of the arc from the station, above 0 to 5000
/// - `sense`: which way round the station the arc is flown
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, against the radial's north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
/// - `bank_limit_deg`: greatest bank, above 0 below 90 (default 25.0)
/// - `turn_rate_limit_deg_per_s`: greatest rate of turn, above 0 (default 3.0)
/// - `roll_rate_deg_per_s`: rate of roll, above 0, infinite for an instant roll (default 5.0)
///
/// # Accuracy
/// Rounding error in the plane; 2e-4 NM on the ellipsoid within 20 NM of the station.
///
/// # Degenerate cases
/// An arc counts along the ground; `ground_distance_nm` turns the DME reading that is flown into it.
///
/// # Errors
/// A value outside its range, a turn that does not fit (toward the station in still air: an arc below twice the turn radius), a wind that the airspeed cannot hold.
///
/// # Source
/// Derived from the geometry of tangent curves and the equilibrium of a coordinated turn.
///
/// # Example
/// ```
/// # use lubberline::plain::arc_exit;
/// # use lubberline::lead::{ArcSense, RadialFlown};
/// assert_eq!(format!("{:.2}", arc_exit(300.0, RadialFlown::Inbound, 12.0, ArcSense::Clockwise, 210.0, 250.0, 40.0, 25.0, 3.0, 5.0)?.angle_at_station_deg), "11.65");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn arc_exit(
    radial_deg: f64,
    flown: RadialFlown,
    arc_radius_nm: f64,
    sense: ArcSense,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
) -> Result<ArcTurn, Error> {
    if any_nan(&[
        radial_deg,
        arc_radius_nm,
        true_airspeed_kt,
        wind_from_deg,
        wind_speed_kt,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
    ]) {
        return Ok(ArcTurn::NAN);
    }
    let turn = lead::off_arc(
        Bearing::named("radial_deg", radial_deg)?,
        flown,
        ArcRadius::named("arc_radius_nm", arc_radius_nm)?,
        sense,
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        wind(wind_from_deg, wind_speed_kt)?,
        &turn_limits(bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?,
    )?;
    Ok(output(&turn))
}
