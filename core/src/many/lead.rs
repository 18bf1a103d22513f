//! The leads of many course changes in the wind.

use super::arithmetic::sum;
use super::functions::{atan2_deg, exp, sin_cos_deg, sin_cos_within, slope_deg};
use super::roll::{self, MOST_ROLLED, NODES, STEEPEST};
use super::turn_radius::KNOT2_NM;
use super::{Column, Kernel, pass};
use crate::turn::STANDARD_GRAVITY_M_S2;

const KNOT_M_S: f64 = 1852.0 / 3600.0;
const HOUR_S: f64 = 3600.0;
/// A knot times a degree per second, of standard gravity; and standard gravity of the same.
const KNOT_DEG_PER_S: f64 = KNOT_M_S * RADIAN / STANDARD_GRAVITY_M_S2;
const RADIAN: f64 = std::f64::consts::PI / 180.0;
/// Sine of the least change of course that is answered: a tenth of a degree, from none and from a reversal.
const LEAST_SINE: f64 = 0.001_75;
/// Course changes, no more than [`super::ROOM`], and where the leads go: the arguments of `lead_nm`.
///
/// NaN asks for the exact path: changes of course within a tenth of a degree of none and of a reversal, winds above nine tenths of the
/// airspeed, rolls to more than 45 degrees of bank or through as much heading, directions beyond a full circle, leads near the
/// longest that there is, and whatever is outside its range or near an end of it.
pub struct Lead<'a> {
    pub inbound_course_deg: &'a [f64],
    pub outbound_course_deg: &'a [f64],
    pub true_airspeed_kt: &'a [f64],
    pub wind_from_deg: &'a [f64],
    pub wind_speed_kt: &'a [f64],
    pub bank_limit_deg: &'a [f64],
    pub turn_rate_limit_deg_per_s: &'a [f64],
    pub roll_rate_deg_per_s: &'a [f64],
    pub lead_nm: &'a mut [f64],
}

impl Kernel for Lead<'_> {
    // Directions are counted from the inbound course. A turn is the same seen from its end: so its way through the air points half
    // its change of heading away from the first one, and is as long as what it covers in that direction.
    #[inline(always)]
    fn run<const FMA: bool>(self) {
        let (mut sines, mut cosines): (Column, Column) = (Column::of(0.0), Column::of(0.0));
        pass!(inbound_deg in self.inbound_course_deg, outbound_deg in self.outbound_course_deg, sine in &mut sines,
            cosine in &mut cosines, => {
            (*sine, *cosine) = sin_cos_deg::<FMA>(*outbound_deg - *inbound_deg);
        });
        let (mut tails, mut drifts): (Column, Column) = (Column::of(0.0), Column::of(0.0));
        pass!(inbound_deg in self.inbound_course_deg, from_deg in self.wind_from_deg, wind_kt in self.wind_speed_kt,
            tail_kt in &mut tails, drift_kt in &mut drifts, => {
            let (sine, cosine) = sin_cos_deg::<FMA>(*from_deg - *inbound_deg);
            (*tail_kt, *drift_kt) = (-*wind_kt * cosine, -*wind_kt * sine);
        });
        // The headings as vectors of the airspeed's length: into the wind by as much as it blows across the course.
        let (mut first_norths, mut first_easts): (Column, Column) = (Column::of(0.0), Column::of(0.0));
        let (mut dots, mut crosses): (Column, Column) = (Column::of(0.0), Column::of(0.0));
        pass!(airspeed_kt in self.true_airspeed_kt, sine in &sines, cosine in &cosines, tail_kt in &tails,
            drift_kt in &drifts, first_north in &mut first_norths, first_east in &mut first_easts, dot in &mut dots,
            cross in &mut crosses, => {
            let along = |across: f64| ((*airspeed_kt - across) * (*airspeed_kt + across)).sqrt();
            let across = -*drift_kt;
            let across_after = sum::<FMA>(*tail_kt, *sine, -(*drift_kt * *cosine));
            let (north, after) = (along(across), along(across_after));
            let second_north = sum::<FMA>(after, *cosine, -(across_after * *sine));
            let second_east = sum::<FMA>(after, *sine, across_after * *cosine);
            (*first_north, *first_east) = (north, across);
            *dot = sum::<FMA>(north, second_north, across * second_east);
            *cross = sum::<FMA>(north, second_east, -(across * second_north));
        });
        // The change of heading goes the way of the change of course, and may pass half a circle.
        let mut changes: Column = Column::of(0.0);
        pass!(dot in &dots, cross in &crosses, sine in &sines, change_deg in &mut changes, => {
            let right = cross.abs().copysign(*cross * *sine);
            let turned_deg = atan2_deg::<FMA>(right, *dot);
            *change_deg = if turned_deg < 0.0 { turned_deg + 360.0 } else { turned_deg };
        });
        let (mut half_sines, mut half_cosines): (Column, Column) = (Column::of(0.0), Column::of(0.0));
        pass!(change_deg in &changes, half_sine in &mut half_sines, half_cosine in &mut half_cosines, => {
            (*half_sine, *half_cosine) = sin_cos_deg::<FMA>(0.5 * *change_deg);
        });
        // The tangent of the bank; and with an instant roll how long the way is, in miles, and how long it takes, in hours.
        let mut tangents: Column = Column::of(0.0);
        let (mut lengths, mut durations): (Column, Column) = (Column::of(0.0), Column::of(0.0));
        pass!(bank_deg in self.bank_limit_deg, rate_deg_per_s in self.turn_rate_limit_deg_per_s,
            airspeed_kt in self.true_airspeed_kt, change_deg in &changes, half_sine in &half_sines,
            tangent in &mut tangents, length_nm in &mut lengths, duration_h in &mut durations, => {
            let (sine, cosine) = sin_cos_deg::<FMA>(*bank_deg);
            let limit = sine / cosine;
            let of_rate = *rate_deg_per_s * *airspeed_kt * KNOT_DEG_PER_S;
            let vouched = (*bank_deg >= 1e-3) & (*bank_deg < 90.0) & (*rate_deg_per_s >= 1e-3);
            let least = if limit < of_rate { limit } else { of_rate };
            *tangent = if vouched { least } else { f64::NAN };
            let radius_per_kt = KNOT2_NM * *airspeed_kt / *tangent;
            *length_nm = 2.0 * radius_per_kt * *airspeed_kt * *half_sine;
            *duration_h = radius_per_kt * (*change_deg * RADIAN);
        });
        // Whatever is not instant, what is no number too.
        let rolled =
            self.roll_rate_deg_per_s.iter().map(|rate| u64::from(*rate != f64::INFINITY)).sum::<u64>();
        if rolled > 0 {
            let mut banks: Column = Column::of(0.0);
            let (mut roll_hours, mut per_logs): (Column, Column) = (Column::of(0.0), Column::of(0.0));
            pass!(airspeed_kt in self.true_airspeed_kt, roll_deg_per_s in self.roll_rate_deg_per_s,
                change_deg in &changes, tangent in &mut tangents, bank in &mut banks, hours in &mut roll_hours,
                per_log in &mut per_logs, => {
                *hours = 1.0 / (RADIAN * HOUR_S * *roll_deg_per_s);
                *per_log = *hours / (KNOT2_NM * *airspeed_kt);
                // The bank is the least of that of the limits and the peak that rolling in and out alone would need, whose tangent
                // squared is `exp(change / per_log) - 1`.
                let grown = *change_deg * RADIAN / *per_log;
                let peak = exp::<FMA>(if grown < 1.0 { grown } else { 1.0 }) - 1.0;
                let limit = if (*tangent <= STEEPEST) & (*roll_deg_per_s >= 1e-2) { *tangent } else { f64::NAN };
                *tangent = if peak < limit * limit { peak.sqrt() } else { limit };
                *bank = RADIAN * slope_deg::<FMA>(*tangent, 1.0);
            });
            // The mean of cosine and sine of the heading while rolling in.
            let (mut alongs, mut acrosses): (Column, Column) = (Column::of(0.0), Column::of(0.0));
            for (node, weight) in NODES {
                pass!(bank in &banks, per_log in &per_logs, along in &mut alongs, across in &mut acrosses, => {
                    let turned = roll::turned::<FMA>(*per_log, *bank * *bank * (node * node));
                    let (sine, cosine) = sin_cos_within::<FMA>(turned);
                    *along = sum::<FMA>(weight, cosine, *along);
                    *across = sum::<FMA>(weight, sine, *across);
                });
            }
            pass!(airspeed_kt in self.true_airspeed_kt, roll_deg_per_s in self.roll_rate_deg_per_s, change_deg in &changes,
                half_sine in &half_sines, half_cosine in &half_cosines, tangent in &tangents, bank in &banks,
                hours in &roll_hours, per_log in &per_logs, along in &alongs, across in &acrosses,
                length_nm in &mut lengths, duration_h in &mut durations, => {
                let rolled = roll::turned::<FMA>(*per_log, *bank * *bank);
                let rolled = if rolled <= MOST_ROLLED { rolled } else { f64::NAN };
                let left = *change_deg * RADIAN - 2.0 * rolled;
                let held = if left < 0.0 { 0.0 } else { left };
                let rolling_h = *hours * *bank;
                let rolling_nm =
                    *airspeed_kt * rolling_h * sum::<FMA>(*along, *half_cosine, *across * *half_sine);
                let (sine, cosine) = sin_cos_within::<FMA>(rolled);
                let held_sine = sum::<FMA>(*half_sine, cosine, -(*half_cosine * sine));
                let radius_per_kt = KNOT2_NM * *airspeed_kt / *tangent;
                let holding_nm = radius_per_kt * *airspeed_kt * (if held > 0.0 { held_sine } else { 0.0 });
                let instant = *roll_deg_per_s == f64::INFINITY;
                *length_nm = if instant { *length_nm } else { 2.0 * (rolling_nm + holding_nm) };
                let duration = sum::<FMA>(radius_per_kt, held, 2.0 * rolling_h);
                *duration_h = if instant { *duration_h } else { duration };
            });
        }
        pass!(sine in &sines, cosine in &cosines, tail_kt in &tails, drift_kt in &drifts, half_sine in &half_sines,
            half_cosine in &half_cosines, first_north in &first_norths, first_east in &first_easts,
            length_nm in &lengths, duration_h in &durations, airspeed_kt in self.true_airspeed_kt,
            lead_nm in &mut *self.lead_nm, => {
            let turned = half_sine.copysign(*sine);
            let share = *length_nm / *airspeed_kt;
            let north = share * sum::<FMA>(*first_north, *half_cosine, -(*first_east * turned));
            let east = share * sum::<FMA>(*first_north, turned, *first_east * *half_cosine);
            let north_nm = sum::<FMA>(*tail_kt, *duration_h, north);
            let east_nm = sum::<FMA>(*drift_kt, *duration_h, east);
            let past_nm = east_nm / *sine;
            let lead = north_nm - past_nm * *cosine;
            let vouched = (sine.abs() >= LEAST_SINE) & (lead.abs() <= 4990.0) & (past_nm.abs() <= 4990.0);
            *lead_nm = if vouched { lead } else { f64::NAN };
        });
        pass!(inbound_deg in self.inbound_course_deg, outbound_deg in self.outbound_course_deg,
            airspeed_kt in self.true_airspeed_kt, from_deg in self.wind_from_deg, wind_kt in self.wind_speed_kt,
            lead_nm in self.lead_nm, => {
            let vouched = (inbound_deg.abs() <= 360.0) & (outbound_deg.abs() <= 360.0) & (from_deg.abs() <= 360.0)
                & (*airspeed_kt > 0.0) & (*airspeed_kt <= 5000.0) & (*wind_kt >= 0.0) & (*wind_kt <= 1000.0)
                & (*wind_kt <= 0.9 * *airspeed_kt);
            *lead_nm = if vouched { *lead_nm } else { f64::NAN };
        });
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plain::lead_nm;

    /// The largest difference from single calls, of the size of the turn and the drift over the sine of the change of course, and how many
    /// were answered.
    fn compared<const FMA: bool>(instant: bool) -> (f64, u32) {
        let (mut worst, mut answered) = (0.0_f64, 0);
        for step in 0..40_000_u32 {
            let part = |factor: f64| (f64::from(step) * factor).fract();
            let inbound = [720.0 * part(0.618_033_988_7) - 360.0];
            let change = if step % 4 == 0 { 3.0 } else { 360.0 } * (part(0.754_877_666_2) - 0.5);
            let outbound = [(inbound[0] + change) % 360.0];
            let airspeed = [40.0 + 600.0 * part(0.569_840_290_9)];
            let from = [360.0 * part(0.819_172_513_4)];
            let wind = [if step % 11 == 0 { 0.0 } else { 100.0 * part(0.671_043_606_7) }];
            let bank = [if step % 3 == 0 { 44.9 } else { 30.0 } * part(0.549_700_477_9)];
            let rate = [if step % 5 == 0 { f64::INFINITY } else { 6.0 * part(0.450_265_011_2) }];
            let roll = [if instant { f64::INFINITY } else { 20.0 * part(0.368_823_112_5) }];
            let mut lead = [0.0];
            Lead {
                inbound_course_deg: &inbound,
                outbound_course_deg: &outbound,
                true_airspeed_kt: &airspeed,
                wind_from_deg: &from,
                wind_speed_kt: &wind,
                bank_limit_deg: &bank,
                turn_rate_limit_deg_per_s: &rate,
                roll_rate_deg_per_s: &roll,
                lead_nm: &mut lead,
            }
            .run::<FMA>();
            if lead[0].is_nan() {
                continue;
            }
            let single =
                lead_nm(inbound[0], outbound[0], airspeed[0], from[0], wind[0], bank[0], rate[0], roll[0]);
            let single = single.unwrap();
            // The last bits of two courses and of the turn's size, magnified as the lead is near a reversal and where drift is long.
            let tangent = bank[0].to_radians().tan().min(rate[0] * airspeed[0] * KNOT_DEG_PER_S);
            let radius = KNOT2_NM * airspeed[0] * airspeed[0] / tangent;
            let rolls = airspeed[0] * bank[0] / roll[0] / HOUR_S;
            let size = (radius + rolls) * (1.0 + wind[0] / airspeed[0]) / change.to_radians().sin().abs();
            let off = (lead[0] - single).abs() / size;
            assert!(off.is_finite());
            worst = worst.max(off);
            answered += 1;
        }
        (worst, answered)
    }

    #[test]
    fn as_single_calls_to_rounding() {
        for instant in [true, false] {
            let ((fused, answered), (plain, _)) = (compared::<true>(instant), compared::<false>(instant));
            println!(
                "lead, instant {instant}: {fused:e}, without fused multiplication {plain:e} of its size; {answered}"
            );
            assert!(fused < 1e-12 && plain < 1e-12);
            assert!(answered > 30_000);
        }
    }
}
