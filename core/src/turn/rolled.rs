//! A level turn as it is flown: roll in, hold the bank, roll out wings level on the new heading.

use std::f64::consts::{FRAC_PI_2, FRAC_PI_4};

use super::manner::{Manner, panels};
use super::{Governor, STANDARD_GRAVITY_M_S2, TurnLimits};
use crate::many::functions::sin_cos_within;
use crate::many::roll;
use crate::numeric::quadrature;
use crate::plane::Plane;
use crate::value::TrueAirspeed;
use crate::value::units::{Angle, Length, Time, degrees, metres, radian, seconds};

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
    manner: Manner,
    /// Heading turned in all, right positive.
    change_rad: f64,
    bank_rad: f64,
    tangent_of_bank: f64,
    governor: Governor,
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
    /// Unit vectors in it: of the heading half way round, and of the one on which the full bank is reached.
    middle: Plane,
    level: Plane,
}

/// Wind over airspeed below which a few nodes give the length of a quarter circle to 2e-13.
const WEAK_WIND: f64 = 0.15;

/// By how much a turn must exceed its rolls to be seen to be a long one without finding the bank of its rolls alone.
const CLEARLY: f64 = 1.0 + 1e-6;

impl RolledTurn {
    /// The turn through a signed change of heading, right positive, of up to any angle.
    ///
    /// A change beyond half a circle is the long way round, which is why it is an angle and not a change of direction.
    pub fn new(true_airspeed: TrueAirspeed, limits: &TurnLimits, change: Angle) -> Self {
        Self::flown(Manner::new(true_airspeed, limits), None, change)
    }

    /// Another turn of the same aircraft at the same airspeed within the same limits: what both share is not computed again.
    pub(crate) fn another(&self, change: Angle) -> Self {
        let roll_in_m = (self.bank_rad == self.manner.bank_rad).then_some(self.roll_in_m);
        Self::flown(self.manner, roll_in_m, change)
    }

    /// The turn flown in a manner, with the displacement while rolling in to the manner's bank if it is known.
    fn flown(manner: Manner, long_roll_in_m: Option<Plane>, change: Angle) -> Self {
        let change_rad = change.get::<radian>();
        let amount_rad = change_rad.abs();
        let Manner { mut bank_rad, mut governor, tangent: mut tangent_of_bank, .. } = manner;
        let clearly_long = amount_rad / 2.0 > CLEARLY * manner.roll_turn_rad;
        let mut rolls_only = false;
        if !clearly_long {
            let peak_rad = manner.peak_rad(amount_rad);
            // `peak_rad` is NaN only for no change at an instant roll.
            rolls_only = peak_rad.is_nan() || peak_rad <= bank_rad;
            if amount_rad == 0.0 {
                (bank_rad, tangent_of_bank, governor) = (0.0, 0.0, Governor::NoTurn);
            } else if rolls_only && peak_rad < bank_rad {
                (bank_rad, tangent_of_bank, governor) = (peak_rad, peak_rad.tan(), Governor::RollRate);
            }
        }

        let roll_turn_rad = if rolls_only { amount_rad / 2.0 } else { manner.roll_turn_rad };
        let roll_s = bank_rad / manner.roll_rad_s;
        let left_rad = amount_rad - 2.0 * roll_turn_rad;
        let steady_turn_rad = if left_rad < 0.0 { 0.0 } else { left_rad };
        let rate_rad_s = STANDARD_GRAVITY_M_S2 * tangent_of_bank / manner.airspeed_m_s;
        let steady_s = if steady_turn_rad == 0.0 { 0.0 } else { steady_turn_rad / rate_rad_s };

        let gently = Manner::rolls_gently(bank_rad, roll_turn_rad);
        let known_m = if rolls_only { None } else { long_roll_in_m };
        let roll_in_m = known_m.unwrap_or_else(|| manner.rolling_m(gently, bank_rad));
        // A turn is the same seen from its end: it leads along the heading half way round.
        let middle = Plane::along(amount_rad / 2.0);
        let half = Plane::along(steady_turn_rad / 2.0);
        let radius_m = manner.radius_m(tangent_of_bank);
        let chord_m = if steady_turn_rad == 0.0 { 0.0 } else { 2.0 * radius_m * half.east };
        Self {
            manner,
            change_rad,
            bank_rad,
            tangent_of_bank,
            governor,
            roll_turn_rad,
            roll_s,
            steady_turn_rad,
            steady_s,
            roll_in_m,
            total_m: middle * (2.0 * roll_in_m.dot(middle) + chord_m),
            middle,
            level: middle.turned(half.mirrored()),
        }
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
        metres(self.radius_m())
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
        self.displaced_m(Plane::along(heading_before_rad))
    }

    /// [`Self::displacement_m`] by the unit vector of the heading.
    pub(crate) fn displaced_m(&self, before: Plane) -> Plane {
        self.on_its_side(self.total_m).turned(before)
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
        self.displaced_after_m(time_s, Plane::along(heading_before_rad))
    }

    /// [`Self::displacement_after_m`] by the unit vector of the heading.
    pub(crate) fn displaced_after_m(&self, time_s: f64, before: Plane) -> Plane {
        let (time_s, left_s) = self.within_s(time_s);
        let own_frame_m = if time_s < self.roll_s {
            self.rolling_m(self.manner.roll_rad_s * time_s)
        } else if left_s < self.roll_s {
            // Rolling out is rolling in, seen backwards from the end.
            let left_m = self.rolling_m(self.manner.roll_rad_s * left_s);
            self.total_m - left_m.mirrored().turned(self.end())
        } else {
            self.roll_in_m + self.steady(time_s).0
        };
        self.on_its_side(own_frame_m).turned(before)
    }

    /// Displacement, velocity and acceleration through the air after a time within the turn: along the first heading, and across it.
    pub(crate) fn motion_after(&self, time_s: f64) -> (Plane, Plane, Plane) {
        let (time_s, left_s) = self.within_s(time_s);
        let (place_m, toward, tangent) = if time_s < self.roll_s {
            let bank_rad = self.manner.roll_rad_s * time_s;
            (self.rolling_m(bank_rad), Plane::along(self.manner.turned_rad(time_s)), bank_rad.tan())
        } else if left_s < self.roll_s {
            let bank_rad = self.manner.roll_rad_s * left_s;
            let place_m = self.total_m - self.rolling_m(bank_rad).mirrored().turned(self.end());
            let left = Plane::along(self.manner.turned_rad(left_s));
            (place_m, self.end().turned(left.mirrored()), bank_rad.tan())
        } else {
            let (place_m, toward) = self.steady(time_s);
            (self.roll_in_m + place_m, toward, self.tangent_of_bank)
        };
        let aside = Plane { north: -toward.east, east: toward.north };
        let bend_m_s2 = aside * (STANDARD_GRAVITY_M_S2 * tangent);
        (
            self.on_its_side(place_m),
            self.on_its_side(toward * self.manner.airspeed_m_s),
            self.on_its_side(bend_m_s2),
        )
    }

    /// Heading turned after a time, right positive.
    pub(crate) fn turned_after_rad(&self, time_s: f64) -> f64 {
        let (time_s, left_s) = self.within_s(time_s);
        let amount_rad = if time_s < self.roll_s {
            self.manner.turned_rad(time_s)
        } else if left_s < self.roll_s {
            self.change_rad.abs() - self.manner.turned_rad(left_s)
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
        let bank_rad =
            if from_end_s >= self.roll_s { self.bank_rad } else { self.manner.roll_rad_s * from_end_s };
        bank_rad.copysign(self.change_rad)
    }

    /// The time at which a part of the change of heading has been turned; `amount_rad` without its side.
    pub(crate) fn time_at_s(&self, amount_rad: f64) -> f64 {
        let left_rad = self.change_rad.abs() - amount_rad;
        if amount_rad < self.roll_turn_rad {
            self.manner.time_s(amount_rad)
        } else if left_rad < self.roll_turn_rad {
            self.duration_s() - self.manner.time_s(left_rad)
        } else if self.steady_turn_rad > 0.0 {
            self.roll_s + self.steady_s * (amount_rad - self.roll_turn_rad) / self.steady_turn_rad
        } else {
            self.roll_s
        }
    }

    /// Length of the path over the ground in a wind, for a turn begun on a heading whose unit vector is given.
    pub(crate) fn ground_length_m(&self, before: Plane, wind_m_s: Plane) -> f64 {
        self.ground_length_like_m(&self.roll_headings(), before, wind_m_s)
    }

    /// [`Self::ground_length_m`] with the headings while rolling of a turn that may have the same roll.
    pub(crate) fn ground_length_like_m(&self, like: &RollHeadings, before: Plane, wind_m_s: Plane) -> f64 {
        let wind2 = wind_m_s.dot(wind_m_s);
        if wind2 == 0.0 {
            return self.manner.airspeed_m_s * self.duration_s();
        }
        let airspeed_m_s = self.manner.airspeed_m_s;
        let speeds = Speeds {
            squares_m2_s2: airspeed_m_s * airspeed_m_s + wind2,
            // The wind is seen from the first heading and to the turn's side.
            twice_m2_s2: self.on_its_side(wind_m_s.turned(before.mirrored())) * (2.0 * airspeed_m_s),
        };
        self.rolling_length_m(like, speeds) + self.steady_length_m(speeds, wind2.sqrt() / airspeed_m_s)
    }

    /// Length of both rolls, the second being the first seen backwards from the end.
    fn rolling_length_m(&self, like: &RollHeadings, first: Speeds) -> f64 {
        // In an instant roll no way is made.
        if self.roll_s == 0.0 {
            return 0.0;
        }
        let second = first.seen_from(self.end()).mirrored();
        let mut mean_m_s = 0.0;
        let mut add = |heading: Plane, weight: f64| {
            mean_m_s += weight * (first.on_m_s(heading) + second.on_m_s(heading));
        };
        if self.rolls_gently() {
            let own = if like.bank_rad == self.bank_rad { like } else { &self.roll_headings() };
            own.headings.each(|cosine, sine, weight| add(Plane { north: cosine, east: sine }, weight));
        } else {
            quadrature(0.0, 1.0, panels(self.roll_turn_rad), |share, weight| {
                add(Plane::along(self.manner.turned_rad(share * self.roll_s)), weight);
            });
        }
        mean_m_s * self.roll_s
    }

    /// The headings while rolling in, as lengths over the ground are summed from them.
    pub(crate) fn roll_headings(&self) -> RollHeadings {
        let bank_rad = self.bank_rad;
        RollHeadings { bank_rad, headings: roll::Headings::of(self.manner.turn_per_roll, bank_rad) }
    }

    /// Length at the full bank: in parts of a quarter circle at most, shorter ones in a strong wind, each looked at from its middle.
    fn steady_length_m(&self, speeds: Speeds, wind_over_airspeed: f64) -> f64 {
        if self.steady_s == 0.0 {
            return 0.0;
        }
        let finer = if wind_over_airspeed < 0.3 { 1.0 } else { 3.0 };
        let nodes: &[(f64, f64)] =
            if wind_over_airspeed < WEAK_WIND { &roll::FEW_NODES } else { &roll::NODES };
        let count = (self.steady_turn_rad * finer / FRAC_PI_2).clamp(1.0, 100.0).ceil();
        let half_rad = self.steady_turn_rad / (2.0 * count);
        let mut mean_m_s = 0.0;
        for part in 0..count as u32 {
            let from_level_rad = half_rad * (2.0 * f64::from(part) + 1.0);
            let middle =
                if count == 1.0 { self.middle } else { self.level.turned(Plane::along(from_level_rad)) };
            let right = speeds.seen_from(middle);
            let left = right.mirrored();
            for (node, weight) in nodes {
                let (sine, cosine) = sin_cos_part(node * half_rad);
                let aside = Plane { north: cosine, east: sine };
                mean_m_s += weight * (right.on_m_s(aside) + left.on_m_s(aside));
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
        Manner::rolls_gently(self.bank_rad, self.roll_turn_rad)
    }

    /// Displacement while rolling in from level to a bank, in the turn's own frame.
    fn rolling_m(&self, bank_rad: f64) -> Plane {
        self.manner.rolling_m(self.rolls_gently(), bank_rad)
    }

    fn radius_m(&self) -> f64 {
        self.manner.radius_m(self.tangent_of_bank)
    }

    /// Displacement since the full bank was reached, and the unit vector of the heading, in the turn's own frame.
    fn steady(&self, time_s: f64) -> (Plane, Plane) {
        let turned_rad = self.steady_share(time_s) * self.steady_turn_rad;
        if turned_rad == 0.0 {
            return (Plane::ZERO, self.level);
        }
        let half = Plane::along(turned_rad / 2.0);
        let along = self.level.turned(half);
        (along * (2.0 * self.radius_m() * half.east), along.turned(half))
    }

    /// The unit vector of the last heading, in the turn's own frame.
    fn end(&self) -> Plane {
        self.middle.turned(self.middle)
    }

    fn on_its_side(&self, own_frame_m: Plane) -> Plane {
        if self.change_rad < 0.0 { own_frame_m.mirrored() } else { own_frame_m }
    }
}

/// The headings while rolling in to a bank, which are the same in every gentle roll of an aircraft to that bank.
#[derive(Debug, Clone, Copy)]
pub(crate) struct RollHeadings {
    bank_rad: f64,
    headings: roll::Headings,
}

/// The speed over the ground by heading: the root of two squares and of what wind and heading have in common.
#[derive(Clone, Copy)]
struct Speeds {
    squares_m2_s2: f64,
    twice_m2_s2: Plane,
}

impl Speeds {
    /// The speed on a heading whose unit vector is given.
    #[inline]
    fn on_m_s(self, heading: Plane) -> f64 {
        let square_m2_s2 = self.squares_m2_s2 + self.twice_m2_s2.dot(heading);
        // In a wind of the airspeed rounding may leave less than nothing.
        if square_m2_s2 > 0.0 { square_m2_s2.sqrt() } else { 0.0 }
    }

    /// The same by headings counted from one whose unit vector is given.
    fn seen_from(self, heading: Plane) -> Self {
        Self { twice_m2_s2: self.twice_m2_s2.turned(heading.mirrored()), ..self }
    }

    /// The same by headings counted the other way round.
    fn mirrored(self) -> Self {
        Self { twice_m2_s2: self.twice_m2_s2.mirrored(), ..self }
    }
}

/// Sine and cosine, quicker within an eighth of a circle.
fn sin_cos_part(angle_rad: f64) -> (f64, f64) {
    if angle_rad <= FRAC_PI_4 { sin_cos_within::<false>(angle_rad) } else { angle_rad.sin_cos() }
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
            let rate_rad_s =
                STANDARD_GRAVITY_M_S2 * turn.bank_after_rad(middle_s).tan() / turn.manner.airspeed_m_s;
            place_m = place_m
                + Plane::along(heading_rad + rate_rad_s * step_s / 2.0) * (turn.manner.airspeed_m_s * step_s);
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
                    place_m = place_m + flown * (turn.manner.airspeed_m_s * weight_s);
                });
                from_s = to_s;
            }
            let miss = (place_m - turn.displacement_m(0.0)).length()
                / (turn.manner.airspeed_m_s * turn.duration_s());
            assert!(miss < 1e-10, "{tas_kt} kt {bank_deg} deg {roll} deg/s {change} deg: {miss}");
        }
    }

    /// The speed over the ground integrated over time, finely enough to be exact to rounding.
    #[test]
    fn the_length_in_wind_is_exact_to_its_documented_accuracy() {
        for (tas_kt, bank_deg, roll, change, wind_kt, most) in [
            (450.0, 25.0, 5.0, 90.0, 120.0, 1e-12),
            (450.0, 25.0, 5.0, -3.0, 100.0, 1e-12),
            (450.0, 25.0, 5.0, 100.0, 67.0, 1e-12),
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
                    let flown_m_s =
                        Plane::along(0.4 + turn.turned_after_rad(time_s)) * turn.manner.airspeed_m_s;
                    length_m += weight_s * (flown_m_s + wind_m_s).length();
                });
                from_s = to_s;
            }
            let off = (turn.ground_length_m(Plane::along(0.4), wind_m_s) / length_m - 1.0).abs();
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
                (turn.ground_length_m(Plane::along(0.3), Plane::ZERO)
                    / (turn.manner.airspeed_m_s * turn.duration_s())
                    - 1.0)
                    .abs()
                    < 1e-12
            );
        }
    }

    /// What turns share is shared to the last bit, and a turn just longer than its rolls is found to be one.
    #[test]
    fn another_turn_of_the_same_aircraft_is_the_turn_by_itself() {
        for (tas_kt, bank_deg, roll) in [(450.0, 25.0, 5.0), (250.0, 60.0, 0.5), (120.0, 30.0, f64::INFINITY)]
        {
            let first = turn(tas_kt, bank_deg, roll, 70.0);
            let rolls_deg = 2.0 * first.manner.roll_turn_rad.to_degrees();
            let near = [1.0 - 1e-5, 1.0 - 1e-9, 1.0, 1.0 + 1e-9, 1.0 + 1e-5].map(|share| share * rolls_deg);
            for change_deg in near.into_iter().chain([-1.0, 0.0, 30.0, -150.0, 300.0]) {
                let alone = turn(tas_kt, bank_deg, roll, change_deg);
                assert_eq!(first.another(degrees(change_deg)), alone, "{tas_kt} kt {change_deg} deg");
                let turned_rad =
                    2.0 * alone.roll_turn_rad + alone.steady_turn_rad - change_deg.abs().to_radians();
                assert!(turned_rad.abs() < 1e-14, "{tas_kt} kt {change_deg} deg: {turned_rad}");
                let wind_m_s = Plane { north: 10.0, east: -7.0 };
                let (own_m, like_m) = (
                    alone.ground_length_m(Plane::along(0.3), wind_m_s),
                    alone.ground_length_like_m(&first.roll_headings(), Plane::along(0.3), wind_m_s),
                );
                assert_eq!(own_m, like_m, "{tas_kt} kt {change_deg} deg");
            }
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
