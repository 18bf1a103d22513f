//! A level turn as it is flown: roll in, hold the bank, roll out wings level on the new heading.

use std::f64::consts::{FRAC_PI_2, FRAC_PI_4};

use super::{Governor, STANDARD_GRAVITY_M_S2, TurnLimits};
use crate::many::functions::sin_cos_within;
use crate::many::roll::{self, MOST_ROLLED, STEEPEST};
use crate::numeric::quadrature;
use crate::plane::Plane;
use crate::value::TrueAirspeed;
use crate::value::units::{
    Angle, Length, Time, degrees, meter_per_second, metres, radian, radian_per_second, seconds,
};

/// A coordinated level turn at constant true airspeed, in which bank grows linearly at the roll rate to a target, holds,
/// and returns to zero at the same rate, ending exactly on the new heading.
///
/// The target bank is the least of the bank limit, the bank of the rate limit, and, for a small change, the peak that rolling
/// in and out alone would need. With the heading rate `g tan(bank) / V`, the heading turned while rolling to bank `b` at rate
/// `p` is `-(g / (V p)) ln cos b`. The path while rolling is an integral, taken by Gauss-Legendre quadrature in the variable
/// `u = asinh(tan bank)`, in which it is smooth up to a right angle.
///
/// # Accuracy
/// 1e-10 of the length of the turn, against a fine integration in time.
///
/// # Degenerate cases
/// A change of zero is no turn and takes no time. An infinite roll rate makes the turn a circle in the air.
///
/// # Source
/// Equilibrium in a coordinated level turn; the integral is derived.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RolledTurn {
    airspeed_m_s: f64,
    /// Heading turned in all, right positive.
    change_rad: f64,
    bank_rad: f64,
    governor: Governor,
    roll_rad_s: f64,
    /// Heading turned in one roll, without its side, and how long it takes.
    roll_turn_rad: f64,
    roll_s: f64,
    /// Heading turned at the full bank, without its side, and how long it takes.
    steady_turn_rad: f64,
    steady_s: f64,
    /// Displacement through the air while rolling in: along the first heading, and to the turn's side.
    roll_in_m: Plane,
    /// Displacement through the air in all, in the same frame.
    total_m: Plane,
}

/// A roll slower than this takes an age for any bank, and would lose its digits.
const SLOWEST_ROLL_RAD_S: f64 = 1e-12;

impl RolledTurn {
    /// The turn through a signed change of heading, right positive, of up to any angle.
    ///
    /// A change beyond half a circle is the long way round, which is why it is an angle and not a change of direction.
    pub fn new(true_airspeed: TrueAirspeed, limits: &TurnLimits, change: Angle) -> Self {
        let airspeed_m_s = true_airspeed.value().get::<meter_per_second>();
        let change_rad = change.get::<radian>();
        let amount_rad = change_rad.abs();
        let roll_rad_s = limits.roll.value().get::<radian_per_second>().max(SLOWEST_ROLL_RAD_S);
        // Heading turned per unit of -ln cos(bank) while rolling; zero for an instant roll.
        let turn_per_roll = STANDARD_GRAVITY_M_S2 / (airspeed_m_s * roll_rad_s);

        let (mut bank_rad, mut governor) = limits.governing_bank_rad(true_airspeed);
        let peak_rad = (amount_rad / turn_per_roll).exp_m1().sqrt().atan();
        // `peak_rad` is NaN only for no change at an instant roll.
        let rolls_only = peak_rad.is_nan() || peak_rad <= bank_rad;
        if amount_rad == 0.0 {
            (bank_rad, governor) = (0.0, Governor::NoTurn);
        } else if rolls_only && peak_rad < bank_rad {
            (bank_rad, governor) = (peak_rad, Governor::RollRate);
        }

        let roll_turn_rad = if rolls_only { amount_rad / 2.0 } else { turn_per_roll * log_secant(bank_rad) };
        let roll_s = bank_rad / roll_rad_s;
        let left_rad = amount_rad - 2.0 * roll_turn_rad;
        let steady_turn_rad = if left_rad < 0.0 { 0.0 } else { left_rad };
        let rate_rad_s = STANDARD_GRAVITY_M_S2 * bank_rad.tan() / airspeed_m_s;
        let steady_s = if steady_turn_rad == 0.0 { 0.0 } else { steady_turn_rad / rate_rad_s };

        let mut turn = Self {
            airspeed_m_s,
            change_rad,
            bank_rad,
            governor,
            roll_rad_s,
            roll_turn_rad,
            roll_s,
            steady_turn_rad,
            steady_s,
            roll_in_m: Plane::ZERO,
            total_m: Plane::ZERO,
        };
        turn.roll_in_m = turn.rolling_m(bank_rad);
        turn.total_m = turn.roll_in_m
            + turn.steady_m(steady_turn_rad)
            + turn.roll_in_m.mirrored().turned(Plane::along(amount_rad));
        turn
    }

    /// The greatest bank it reaches.
    pub fn bank(&self) -> Angle {
        degrees(self.bank_rad.to_degrees())
    }

    /// What set that bank.
    pub fn governor(&self) -> Governor {
        self.governor
    }

    /// The radius in the air at that bank; infinite if there is no turn.
    pub fn radius(&self) -> Length {
        metres(self.airspeed_m_s * self.airspeed_m_s / (STANDARD_GRAVITY_M_S2 * self.bank_rad.tan()))
    }

    /// The change of heading, right positive.
    pub fn heading_change(&self) -> Angle {
        degrees(self.change_rad.to_degrees())
    }

    /// From the first roll to wings level.
    pub fn duration(&self) -> Time {
        seconds(self.duration_s())
    }

    /// The duration of one roll, in or out.
    pub fn roll_duration(&self) -> Time {
        seconds(self.roll_s)
    }

    /// Displacement through the air in all: along the first heading, and across it, right positive.
    pub fn displacement(&self) -> (Length, Length) {
        let displacement_m = self.displacement_m(0.0);
        (metres(displacement_m.north), metres(displacement_m.east))
    }

    pub(crate) fn duration_s(&self) -> f64 {
        2.0 * self.roll_s + self.steady_s
    }

    /// Displacement through the air in all, for a turn begun on a heading.
    pub(crate) fn displacement_m(&self, heading_before_rad: f64) -> Plane {
        self.on_its_side(self.total_m).turned(Plane::along(heading_before_rad))
    }

    /// Displacement over the ground in all, in a wind, for a turn begun on a heading.
    pub(crate) fn over_ground_m(&self, heading_before_rad: f64, wind_m_s: Plane) -> Plane {
        self.displacement_m(heading_before_rad) + wind_m_s * self.duration_s()
    }

    /// Displacement over the ground after a time. Before the turn and after it the wind still carries.
    pub(crate) fn over_ground_after_m(&self, time_s: f64, heading_before_rad: f64, wind_m_s: Plane) -> Plane {
        self.displacement_after_m(time_s, heading_before_rad) + wind_m_s * time_s
    }

    /// Displacement through the air after a time, for a turn begun on a heading. Before and after the turn it is that of its ends.
    pub(crate) fn displacement_after_m(&self, time_s: f64, heading_before_rad: f64) -> Plane {
        let (time_s, left_s) = self.within_s(time_s);
        let own_frame_m = if time_s < self.roll_s {
            self.rolling_m(self.roll_rad_s * time_s)
        } else if left_s < self.roll_s {
            // Rolling out is rolling in, seen backwards from the end.
            let left_m = self.rolling_m(self.roll_rad_s * left_s);
            self.total_m - left_m.mirrored().turned(Plane::along(self.change_rad.abs()))
        } else {
            self.roll_in_m + self.steady_m(self.steady_share(time_s) * self.steady_turn_rad)
        };
        self.on_its_side(own_frame_m).turned(Plane::along(heading_before_rad))
    }

    /// Displacement, velocity and acceleration through the air after a time within the turn: along the first heading, and across it.
    pub(crate) fn motion_after(&self, time_s: f64) -> (Plane, Plane, Plane) {
        let toward = Plane::along(self.turned_after_rad(time_s));
        let aside = Plane { north: -toward.east, east: toward.north };
        let bend_m_s2 = STANDARD_GRAVITY_M_S2 * self.bank_after_rad(time_s).tan();
        (self.displacement_after_m(time_s, 0.0), toward * self.airspeed_m_s, aside * bend_m_s2)
    }

    /// Heading turned after a time, right positive.
    pub(crate) fn turned_after_rad(&self, time_s: f64) -> f64 {
        let (time_s, left_s) = self.within_s(time_s);
        let amount_rad = if time_s < self.roll_s {
            self.rolling_turn_rad(time_s)
        } else if left_s < self.roll_s {
            self.change_rad.abs() - self.rolling_turn_rad(left_s)
        } else {
            self.roll_turn_rad + self.steady_share(time_s) * self.steady_turn_rad
        };
        amount_rad.copysign(self.change_rad)
    }

    /// Bank after a time, right positive.
    pub(crate) fn bank_after_rad(&self, time_s: f64) -> f64 {
        if time_s < 0.0 || time_s > self.duration_s() {
            return 0.0;
        }
        let (time_s, left_s) = self.within_s(time_s);
        let from_end_s = time_s.min(left_s);
        let bank_rad = if from_end_s >= self.roll_s { self.bank_rad } else { self.roll_rad_s * from_end_s };
        bank_rad.copysign(self.change_rad)
    }

    /// The time at which a part of the change of heading has been turned; `amount_rad` without its side.
    pub(crate) fn time_at_s(&self, amount_rad: f64) -> f64 {
        let left_rad = self.change_rad.abs() - amount_rad;
        if amount_rad < self.roll_turn_rad {
            self.rolling_time_s(amount_rad)
        } else if left_rad < self.roll_turn_rad {
            self.duration_s() - self.rolling_time_s(left_rad)
        } else if self.steady_turn_rad > 0.0 {
            self.roll_s + self.steady_s * (amount_rad - self.roll_turn_rad) / self.steady_turn_rad
        } else {
            self.roll_s
        }
    }

    /// Length of the path over the ground in a wind, for a turn begun on a heading.
    pub(crate) fn ground_length_m(&self, heading_before_rad: f64, wind_m_s: Plane) -> f64 {
        let wind2 = wind_m_s.dot(wind_m_s);
        if wind2 == 0.0 {
            return self.airspeed_m_s * self.duration_s();
        }
        // The speed on a heading whose unit vector is given, the wind being seen from the first one and to the turn's side.
        let seen_m_s = self.on_its_side(wind_m_s.turned(Plane::along(heading_before_rad).mirrored()));
        let squares = self.airspeed_m_s * self.airspeed_m_s + wind2;
        let twice_m_s = seen_m_s * (2.0 * self.airspeed_m_s);
        let speed_m_s = |unit: Plane| (squares + twice_m_s.dot(unit)).max(0.0).sqrt();
        self.rolling_length_m(speed_m_s) + self.steady_length_m(speed_m_s, wind2.sqrt() / self.airspeed_m_s)
    }

    /// Length of both rolls, the second being the first seen backwards from the end.
    fn rolling_length_m(&self, speed_m_s: impl Fn(Plane) -> f64) -> f64 {
        let end = Plane::along(self.change_rad.abs());
        let both_m_s = |unit: Plane| speed_m_s(unit) + speed_m_s(unit.mirrored().turned(end));
        let mut mean_m_s = 0.0;
        if self.rolls_gently() {
            roll::at_nodes(self.turn_per_roll(), self.bank_rad, |cosine, sine, weight| {
                mean_m_s += weight * both_m_s(Plane { north: cosine, east: sine });
            });
        } else {
            quadrature(0.0, 1.0, panels(self.roll_turn_rad), |share, weight| {
                mean_m_s += weight * both_m_s(Plane::along(self.rolling_turn_rad(share * self.roll_s)));
            });
        }
        // In an instant roll the heading is no number, and no way is made.
        if self.roll_s > 0.0 { mean_m_s * self.roll_s } else { 0.0 }
    }

    /// Length at the full bank: in parts of a quarter circle at most, shorter ones in a strong wind, each looked at from its middle.
    fn steady_length_m(&self, speed_m_s: impl Fn(Plane) -> f64, wind_over_airspeed: f64) -> f64 {
        if self.steady_s == 0.0 {
            return 0.0;
        }
        let finer = if wind_over_airspeed < 0.3 { 1.0 } else { 3.0 };
        let count = (self.steady_turn_rad * finer / FRAC_PI_2).clamp(1.0, 100.0).ceil();
        let half_rad = self.steady_turn_rad / (2.0 * count);
        let nodes = roll::NODES.map(|(node, weight)| (sin_cos_part(node * half_rad), weight));
        let mut mean_m_s = 0.0;
        for part in 0..count as u32 {
            let middle = Plane::along(self.roll_turn_rad + half_rad * (2.0 * f64::from(part) + 1.0));
            for ((sine, cosine), weight) in nodes {
                let aside = Plane { north: cosine, east: sine };
                mean_m_s +=
                    weight * (speed_m_s(aside.turned(middle)) + speed_m_s(aside.mirrored().turned(middle)));
            }
        }
        mean_m_s / (2.0 * count) * self.steady_s
    }

    /// A time brought within the turn, and the time then left; what is not a number stays so.
    pub(crate) fn within_s(&self, time_s: f64) -> (f64, f64) {
        let within_s = if time_s.is_nan() { time_s } else { time_s.min(self.duration_s()).max(0.0) };
        (within_s, self.duration_s() - within_s)
    }

    fn steady_share(&self, time_s: f64) -> f64 {
        if self.steady_s > 0.0 { ((time_s - self.roll_s) / self.steady_s).clamp(0.0, 1.0) } else { 0.0 }
    }

    /// Whether the roll is of those whose way is a sum of a few terms.
    fn rolls_gently(&self) -> bool {
        self.bank_rad <= STEEPEST.atan() && self.roll_turn_rad <= MOST_ROLLED
    }

    fn turn_per_roll(&self) -> f64 {
        STANDARD_GRAVITY_M_S2 / (self.airspeed_m_s * self.roll_rad_s)
    }

    /// Heading turned while rolling in for a time.
    fn rolling_turn_rad(&self, time_s: f64) -> f64 {
        self.turn_per_roll() * log_secant(self.roll_rad_s * time_s)
    }

    /// The time into the roll at which a heading is turned.
    fn rolling_time_s(&self, amount_rad: f64) -> f64 {
        (2.0 * amount_rad.max(0.0) / self.turn_per_roll()).exp_m1().sqrt().atan() / self.roll_rad_s
    }

    /// Displacement while rolling in from level to a bank, in the turn's own frame.
    fn rolling_m(&self, bank_rad: f64) -> Plane {
        let mut sum_m = Plane::ZERO;
        let metres_per_rad = self.airspeed_m_s / self.roll_rad_s;
        if metres_per_rad == 0.0 || bank_rad == 0.0 {
            return sum_m;
        }
        let turn_per_roll = self.turn_per_roll();
        if self.rolls_gently() {
            roll::at_nodes(turn_per_roll, bank_rad, |cosine, sine, weight| {
                sum_m = sum_m + Plane { north: cosine, east: sine } * weight;
            });
            return sum_m * (metres_per_rad * bank_rad);
        }
        let end = bank_rad.tan().asinh();
        let count = panels(2.0 * end).max(panels(turn_per_roll * log_secant(bank_rad)));
        quadrature(0.0, end, count, |u, weight| {
            let half = (u / 2.0).sinh();
            let secant_less_one = 2.0 * half * half;
            let heading_rad = turn_per_roll * secant_less_one.ln_1p();
            sum_m = sum_m + Plane::along(heading_rad) * (weight * metres_per_rad / (1.0 + secant_less_one));
        });
        sum_m
    }

    /// Displacement while turning steadily through an angle after rolling in, in the turn's own frame.
    fn steady_m(&self, amount_rad: f64) -> Plane {
        if amount_rad == 0.0 {
            return Plane::ZERO;
        }
        let radius_m = self.airspeed_m_s * self.airspeed_m_s / (STANDARD_GRAVITY_M_S2 * self.bank_rad.tan());
        let chord_m = 2.0 * radius_m * (amount_rad / 2.0).sin();
        Plane::along(self.roll_turn_rad + amount_rad / 2.0) * chord_m
    }

    fn on_its_side(&self, own_frame_m: Plane) -> Plane {
        if self.change_rad < 0.0 { own_frame_m.mirrored() } else { own_frame_m }
    }
}

/// `-ln cos(bank)`, with all its digits for a small bank.
fn log_secant(bank_rad: f64) -> f64 {
    let tangent = bank_rad.tan();
    (tangent * tangent).ln_1p() / 2.0
}

/// Sine and cosine, quicker within an eighth of a circle.
fn sin_cos_part(angle_rad: f64) -> (f64, f64) {
    if angle_rad <= FRAC_PI_4 { sin_cos_within::<false>(angle_rad) } else { angle_rad.sin_cos() }
}

/// Panels of quadrature for a part of a path that turns through an angle: at most one radian each, at most a hundred.
fn panels(turned_rad: f64) -> u32 {
    // The conversion saturates, and the angle is bounded: a turn of a hundred radians is no turn.
    turned_rad.clamp(1.0, 100.0).ceil() as u32
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{degrees_per_second, knots};
    use crate::value::{Bank, RollRate, TurnRate};

    fn turn(tas_kt: f64, bank_deg: f64, roll_deg_per_s: f64, change_deg: f64) -> RolledTurn {
        let limits = TurnLimits {
            bank: Bank::new(degrees(bank_deg)).unwrap(),
            rate: TurnRate::new(degrees_per_second(100.0)).unwrap(),
            roll: RollRate::new(degrees_per_second(roll_deg_per_s)).unwrap(),
        };
        RolledTurn::new(TrueAirspeed::new(knots(tas_kt)).unwrap(), &limits, degrees(change_deg))
    }

    /// Small steps in time of the equations of motion themselves.
    fn flown_m(turn: &RolledTurn) -> (Plane, f64) {
        let steps = 400_000;
        let step_s = turn.duration_s() / f64::from(steps);
        let (mut place_m, mut heading_rad) = (Plane::ZERO, 0.0);
        for step in 0..steps {
            let middle_s = (f64::from(step) + 0.5) * step_s;
            let rate_rad_s = STANDARD_GRAVITY_M_S2 * turn.bank_after_rad(middle_s).tan() / turn.airspeed_m_s;
            place_m = place_m
                + Plane::along(heading_rad + rate_rad_s * step_s / 2.0) * (turn.airspeed_m_s * step_s);
            heading_rad += rate_rad_s * step_s;
        }
        (place_m, heading_rad)
    }

    #[test]
    fn the_closed_form_is_what_small_steps_fly() {
        for (tas_kt, bank_deg, roll, change) in [
            (450.0, 25.0, 5.0, 90.0),
            (450.0, 25.0, 5.0, -3.0),
            (60.0, 60.0, 0.5, 140.0),
            (600.0, 85.0, 20.0, -170.0),
            (250.0, 30.0, 0.01, 300.0),
            (300.0, 89.9, 3.0, 120.0),
        ] {
            let turn = turn(tas_kt, bank_deg, roll, change);
            let (place_m, heading_rad) = flown_m(&turn);
            let miss_m = (place_m - turn.displacement_m(0.0)).length();
            assert!(miss_m < 2e-3, "{tas_kt} kt {bank_deg} deg {roll} deg/s {change} deg: {miss_m} m");
            assert!((heading_rad - turn.change_rad).abs() < 1e-6, "{heading_rad} for {change} deg");
        }
    }

    /// The documented accuracy: the velocity integrated over time, finely enough to be exact to rounding.
    #[test]
    fn the_path_is_exact_to_its_documented_accuracy() {
        for (tas_kt, bank_deg, roll, change) in [
            (450.0, 25.0, 5.0, 90.0),
            (450.0, 25.0, 5.0, -3.0),
            (60.0, 60.0, 0.5, 140.0),
            (600.0, 85.0, 20.0, -170.0),
            (250.0, 30.0, 0.01, 300.0),
            (300.0, 89.0, 3.0, 120.0),
        ] {
            let turn = turn(tas_kt, bank_deg, roll, change);
            let (mut place_m, mut from_s) = (Plane::ZERO, 0.0);
            for to_s in [turn.roll_s, turn.roll_s + turn.steady_s, turn.duration_s()] {
                quadrature(from_s, to_s, 2000, |time_s, weight_s| {
                    let flown = Plane::along(turn.turned_after_rad(time_s));
                    place_m = place_m + flown * (turn.airspeed_m_s * weight_s);
                });
                from_s = to_s;
            }
            let miss =
                (place_m - turn.displacement_m(0.0)).length() / (turn.airspeed_m_s * turn.duration_s());
            assert!(miss < 1e-10, "{tas_kt} kt {bank_deg} deg {roll} deg/s {change} deg: {miss}");
        }
    }

    /// The speed over the ground integrated over time, finely enough to be exact to rounding.
    #[test]
    fn the_length_in_wind_is_exact_to_its_documented_accuracy() {
        for (tas_kt, bank_deg, roll, change, wind_kt, most) in [
            (450.0, 25.0, 5.0, 90.0, 120.0, 1e-12),
            (450.0, 25.0, 5.0, -3.0, 100.0, 1e-12),
            (60.0, 60.0, 0.5, 140.0, 15.0, 1e-12),
            (120.0, 30.0, 5.0, 300.0, 60.0, 1e-10),
            (250.0, 40.0, f64::INFINITY, -170.0, 170.0, 1e-8),
            (250.0, 30.0, 0.01, 300.0, 20.0, 1e-12),
        ] {
            let turn = turn(tas_kt, bank_deg, roll, change);
            let wind_m_s = Plane::along(2.0) * (wind_kt * 1852.0 / 3600.0);
            let (mut length_m, mut from_s) = (0.0, 0.0);
            for to_s in [turn.roll_s, turn.roll_s + turn.steady_s, turn.duration_s()] {
                quadrature(from_s, to_s, 2000, |time_s, weight_s| {
                    let flown_m_s = Plane::along(0.4 + turn.turned_after_rad(time_s)) * turn.airspeed_m_s;
                    length_m += weight_s * (flown_m_s + wind_m_s).length();
                });
                from_s = to_s;
            }
            let off = (turn.ground_length_m(0.4, wind_m_s) / length_m - 1.0).abs();
            assert!(off < most, "{tas_kt} kt {bank_deg} deg {roll} deg/s {change} deg {wind_kt} kt: {off:e}");
        }
    }

    #[test]
    fn parts_of_the_turn_agree_with_the_whole() {
        for (roll, change) in [(5.0, 90.0), (1.0, -20.0), (f64::INFINITY, 140.0)] {
            let turn = turn(420.0, 25.0, roll, change);
            let end_m = turn.displacement_after_m(turn.duration_s(), 0.7);
            assert!((end_m - turn.displacement_m(0.7)).length() < 1e-6);
            for share in [0.05, 0.3, 0.5, 0.77, 0.99] {
                let time_s = turn.duration_s() * share;
                let again_s = turn.time_at_s(turn.turned_after_rad(time_s).abs());
                assert!((again_s - time_s).abs() < 1e-6, "{again_s} {time_s}");
            }
            assert!(
                (turn.ground_length_m(0.3, Plane::ZERO) / (turn.airspeed_m_s * turn.duration_s()) - 1.0)
                    .abs()
                    < 1e-12
            );
        }
    }

    #[test]
    fn the_least_of_the_three_banks_governs() {
        assert_eq!(turn(450.0, 25.0, 5.0, 90.0).governor(), Governor::BankLimit);
        assert_eq!(turn(450.0, 25.0, 5.0, 1.0).governor(), Governor::RollRate);
        assert_eq!(turn(450.0, 25.0, 5.0, 0.0).governor(), Governor::NoTurn);
        assert_eq!(turn(450.0, 25.0, f64::INFINITY, 1e-9).governor(), Governor::BankLimit);
        let limits = TurnLimits::default();
        assert_eq!(
            limits.governing_bank(TrueAirspeed::new(knots(120.0)).unwrap()).1,
            Governor::TurnRateLimit
        );
    }
}
