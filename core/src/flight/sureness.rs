//! How sure a lead is: what the errors of its inputs make of the roll-out.

use super::random::Random;
use crate::Error;
use crate::lead::CourseChange;
use crate::numeric::root_between;
use crate::plane::Plane;
use crate::procedure::PILOT_REACTION_S;
use crate::station::{DEVIATIONS_TO_A_TOLERANCE, DmeAccuracy, RadialAccuracy};
use crate::turn::{RolledTurn, STANDARD_GRAVITY_M_S2, TurnLimits};
use crate::value::units::{
    Angle, Length, Time, Velocity, degrees, feet, knots, meter, meter_per_second, metres, metres_per_second,
    radian, second, seconds,
};
use crate::value::{Bank, HeightAboveStation, Quantity, SlantRange, TrueAirspeed, TrueNorth, choice};

/// The standard deviations of what a turn begun by DME depends on. Each error is normal, and none depends on another.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ErrorModel {
    /// Of the bearing that the station's signal and the receiver give: the inbound track is off by it.
    pub station_bearing: Angle,
    /// Of the DME reading.
    pub dme: Length,
    /// Of the wind's speed.
    pub wind_speed: Velocity,
    /// Of the wind's direction.
    pub wind_direction: Angle,
    /// Of the true airspeed.
    pub airspeed: Velocity,
    /// Of the bank held.
    pub bank: Angle,
    /// Of the moment of roll-in.
    pub roll_in_delay: Time,
    /// Of the height above the station.
    pub height: Length,
    /// By how much the crew is late on the average.
    pub mean_delay: Time,
}

impl ErrorModel {
    /// What is usual where nothing better is known.
    ///
    /// A tolerance is [`DEVIATIONS_TO_A_TOLERANCE`] standard deviations. The bearing has the tolerance of a VOR flown along en route, flying by the
    /// needle included (5.7 degrees), the DME reading the total system error of Annex 10 (0.2 NM). A crew reacts within none to [`PILOT_REACTION_S`], which is
    /// half of it late in the mean with half of it for tolerance. Wind 10 kt and 10 degrees, airspeed 5 kt, bank 2 degrees, height
    /// 150 ft: common practice, no source.
    ///
    /// # Source
    /// [`RadialAccuracy::VorEnRoute`], [`DmeAccuracy::Annex10`], [`PILOT_REACTION_S`], with their editions.
    pub fn usual() -> Self {
        let to_one = 1.0 / DEVIATIONS_TO_A_TOLERANCE;
        // That of Annex 10 is the same at every distance.
        let dme = DmeAccuracy::Annex10.tolerance(SlantRange::derived(metres(0.0)));
        let half_reaction = seconds(PILOT_REACTION_S / 2.0);
        Self {
            station_bearing: RadialAccuracy::VorEnRoute.tolerance().value() * to_one,
            dme: dme.value() * to_one,
            wind_speed: knots(10.0),
            wind_direction: degrees(10.0),
            airspeed: knots(5.0),
            bank: degrees(2.0),
            roll_in_delay: half_reaction * to_one,
            height: feet(150.0),
            mean_delay: half_reaction,
        }
    }
}

choice! {
    /// A source of error.
    ErrorSource {
        /// The bearing of the station's signal.
        StationBearing = 0: "station_bearing",
        /// The DME reading.
        Dme = 1: "dme",
        /// The wind's speed.
        WindSpeed = 2: "wind_speed",
        /// The wind's direction.
        WindDirection = 3: "wind_direction",
        /// The true airspeed.
        Airspeed = 4: "airspeed",
        /// The bank.
        Bank = 5: "bank",
        /// The moment of roll-in.
        RollInDelay = 6: "roll_in_delay",
        /// The height.
        Height = 7: "height",
    }
}

/// How many sources of error there are.
pub const ERROR_SOURCES: usize = 8;

/// The spread of the cross-track at roll-out and what follows from it. Overshoot is the cross-track on the outer side, where a
/// turn begun late ends; it is negative short of the course.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sureness {
    /// Trials flown.
    pub trials: u64,
    /// Mean overshoot of the trials.
    pub mean: Length,
    /// Its standard deviation.
    pub deviation: Length,
    /// The share of trials that overshot by more than the limit.
    pub chance_beyond: f64,
    /// What to add to the lead so that the chance of overshooting the limit is the complement of the confidence; negative if there is room.
    pub margin: Length,
    /// The overshoot without any error but the mean delay.
    pub linear_mean: Length,
    /// The standard deviation by linear propagation.
    pub linear_deviation: Length,
    /// The chance of overshooting the limit, by a normal distribution of these.
    pub linear_chance_beyond: f64,
    /// The margin by it.
    pub linear_margin: Length,
    /// What one standard deviation of each source, in the order of [`ErrorSource`], moves the overshoot by.
    pub by_source: [Length; ERROR_SOURCES],
}

impl Sureness {
    /// The source that moves the overshoot most; none if nothing does.
    pub fn foremost(&self) -> Option<ErrorSource> {
        let mut best: (Option<ErrorSource>, f64) = (None, 0.0);
        for (source, moved) in ErrorSource::ALL.iter().zip(self.by_source) {
            if moved.value.abs() > best.1 {
                best = (Some(*source), moved.value.abs());
            }
        }
        best.0
    }
}

/// What errors make of a course change that is begun by its DME reading.
///
/// A trial draws the eight errors and flies: along the radial that the needle shows, on the heading that holds it in the true wind; roll-in where
/// the DME shows the planned reading, later by the delay; the turn with the true airspeed and the bank held, to the heading planned
/// for the outbound course. Its overshoot is measured where the wings are level. The plane and the closed forms of [`RolledTurn`] are those of
/// [`CourseChange`].
///
/// Beside the trials the first-order answer: each source is moved by one standard deviation either way, half the difference is
/// what it is worth, and independent sources add by squares. A margin `m` on the lead moves the roll-out across the outbound course by
/// `m sin(change)`.
///
/// # Arguments
/// `limit` is the overshoot that matters; `confidence`, between 0 and 1, the chance with which it is to be kept; the same seed gives
/// the same trials.
///
/// # Accuracy
/// A chance `p` from `n` trials is within `sqrt(p (1 - p) / n)` of its value two times of three; the mean within `deviation / sqrt(n)`.
///
/// # Degenerate cases
/// An error of the airspeed, the bank or the wind that would leave nothing to fly is cut off: an airspeed of at least a tenth of the plan's, a bank
/// of at least 1 degree and below 89, a crosswind up to the airspeed. A change of no course has neither overshoot nor margin: zero and NaN.
///
/// # Errors
/// [`Error::OutOfRange`] for a confidence outside 0 to 1, or no trials or more than ten million.
///
/// # Source
/// Derived; Monte Carlo and the law of propagation as JCGM 100:2008 and JCGM 101:2008 have them (from memory).
pub fn sureness(
    change: &CourseChange<TrueNorth>,
    height: HeightAboveStation,
    errors: &ErrorModel,
    limit: Length,
    confidence: f64,
    trials: u64,
    seed: u64,
) -> Result<Sureness, Error> {
    let confidence = Quantity::Confidence.check("confidence", confidence)?;
    Quantity::Trials.check("trials", trials as f64)?;
    let plan = Plan::new(change, height, errors);
    let limit_m = limit.get::<meter>();

    let mut random = Random::seeded(seed);
    let mut overshoots_m = Vec::new();
    let (mut sum, mut squares, mut beyond) = (0.0, 0.0, 0u64);
    for _ in 0..trials {
        let over_m = plan.trial_m(&mut random);
        sum += over_m;
        squares += over_m * over_m;
        beyond += u64::from(over_m > limit_m);
        overshoots_m.push(over_m);
    }
    let count = trials as f64;
    let mean_m = sum / count;
    let rank = ((confidence * count) as usize).min(overshoots_m.len().saturating_sub(1));
    let quantile_m = if overshoots_m.is_empty() {
        f64::NAN
    } else {
        *overshoots_m.select_nth_unstable_by(rank, f64::total_cmp).1
    };

    let mut by_source_m = [0.0; ERROR_SOURCES];
    let mut variance = 0.0;
    for (index, moved_m) in by_source_m.iter_mut().enumerate() {
        let at = |value: f64| {
            let mut drawn = [0.0; ERROR_SOURCES];
            if let Some(one) = drawn.get_mut(index) {
                *one = value;
            }
            plan.overshoot_m(&drawn)
        };
        *moved_m = (at(1.0) - at(-1.0)) / 2.0;
        variance += *moved_m * *moved_m;
    }
    let linear_mean_m = plan.overshoot_m(&[0.0; ERROR_SOURCES]);
    let linear_deviation_m = variance.sqrt();
    let linear_quantile_m = linear_mean_m + linear_deviation_m * normal_quantile(confidence);
    let margin = |quantile_m: f64| metres((quantile_m - limit_m) / plan.lead_to_overshoot);
    Ok(Sureness {
        trials,
        mean: metres(mean_m),
        deviation: metres((squares / count - mean_m * mean_m).max(0.0).sqrt()),
        chance_beyond: beyond as f64 / count,
        margin: margin(quantile_m),
        linear_mean: metres(linear_mean_m),
        linear_deviation: metres(linear_deviation_m),
        linear_chance_beyond: 1.0 - normal_share((limit_m - linear_mean_m) / linear_deviation_m),
        linear_margin: margin(linear_quantile_m),
        by_source: by_source_m.map(metres),
    })
}

/// The overshoots of the trials that [`sureness`] makes its answer of, one after the other, for as long as they are asked for.
///
/// # Degenerate cases
/// As [`sureness`].
///
/// # Source
/// As [`sureness`].
pub fn overshoots(
    change: &CourseChange<TrueNorth>,
    height: HeightAboveStation,
    errors: &ErrorModel,
    seed: u64,
) -> impl Iterator<Item = Length> + use<> {
    let plan = Plan::new(change, height, errors);
    let mut random = Random::seeded(seed);
    std::iter::repeat_with(move || metres(plan.trial_m(&mut random)))
}

/// The share of a normal distribution below a number of standard deviations.
fn normal_share(deviations: f64) -> f64 {
    // The standard library has no error function yet; this is the C library's own, in Rust.
    0.5 * libm::erfc(-deviations * std::f64::consts::FRAC_1_SQRT_2)
}

/// The number of standard deviations below which a share lies.
fn normal_quantile(share: f64) -> f64 {
    root_between(-40.0, 40.0, |deviations| normal_share(deviations) - share)
}

/// The plan in plain SI numbers, and the errors to one standard deviation.
struct Plan {
    inbound_rad: f64,
    outbound: Plane,
    /// +1 for a turn to the right.
    side: f64,
    airspeed_m_s: f64,
    wind_from_rad: f64,
    wind_m_s: f64,
    heading_after_rad: f64,
    /// The change of heading planned, to tell the long way round from the short.
    heading_change_rad: f64,
    bank_rad: f64,
    limits: TurnLimits,
    reading_m: f64,
    height_m: f64,
    past_fix: bool,
    lead_to_overshoot: f64,
    deviations: [f64; ERROR_SOURCES],
    delay_s: f64,
}

impl Plan {
    fn new(change: &CourseChange<TrueNorth>, height: HeightAboveStation, errors: &ErrorModel) -> Self {
        let turn = change.turn();
        let heading_change_rad = turn.heading_change().get::<radian>();
        let course_change = change.inbound().change_to(change.outbound()).angle().get::<radian>();
        let side = if heading_change_rad < 0.0 { -1.0 } else { 1.0 };
        let wind = change.wind();
        Self {
            inbound_rad: change.inbound().radians(),
            outbound: Plane::along_deg(change.outbound().degrees()),
            side,
            airspeed_m_s: change.true_airspeed().value().get::<meter_per_second>(),
            wind_from_rad: wind.from.radians(),
            wind_m_s: wind.speed.value().get::<meter_per_second>(),
            heading_after_rad: change.after().heading.radians(),
            heading_change_rad,
            bank_rad: turn.bank().get::<radian>(),
            limits: change.limits(),
            reading_m: change.reading_at_roll_in(height).value().get::<meter>(),
            height_m: height.value().get::<meter>(),
            past_fix: change.lead().value < 0.0,
            lead_to_overshoot: side * course_change.sin(),
            deviations: [
                errors.station_bearing.get::<radian>(),
                errors.dme.get::<meter>(),
                errors.wind_speed.get::<meter_per_second>(),
                errors.wind_direction.get::<radian>(),
                errors.airspeed.get::<meter_per_second>(),
                errors.bank.get::<radian>(),
                errors.roll_in_delay.get::<second>(),
                errors.height.get::<meter>(),
            ],
            delay_s: errors.mean_delay.get::<second>(),
        }
    }

    /// The overshoot of a trial with the next eight errors.
    fn trial_m(&self, random: &mut Random) -> f64 {
        let [a, b, c, d] = [random.normals(), random.normals(), random.normals(), random.normals()];
        self.overshoot_m(&[a.0, a.1, b.0, b.1, c.0, c.1, d.0, d.1])
    }

    /// The overshoot for errors given in standard deviations.
    fn overshoot_m(&self, drawn: &[f64; ERROR_SOURCES]) -> f64 {
        let mut errors = *drawn;
        for (error, deviation) in errors.iter_mut().zip(self.deviations) {
            *error *= deviation;
        }
        let [bearing_rad, dme_m, wind_m_s, wind_rad, airspeed_m_s, bank_rad, delay_s, height_m] = errors;
        let airspeed_m_s = (self.airspeed_m_s + airspeed_m_s).max(0.1 * self.airspeed_m_s);
        let wind = Plane::along(self.wind_from_rad + wind_rad) * -(self.wind_m_s + wind_m_s);
        let course_rad = self.inbound_rad + bearing_rad;
        let course = Plane::along(course_rad);
        let crab_rad = -(course.cross(wind) / airspeed_m_s).clamp(-1.0, 1.0).asin();
        let heading_rad = course_rad + crab_rad;
        let groundspeed_m_s = airspeed_m_s * crab_rad.cos() + course.dot(wind);

        // The distance at which the reading with its error is the planned one, over the sphere as the reading was planned.
        let height_m = self.height_m + height_m;
        let slant_m = self.reading_m - dme_m;
        let radius_m = crate::earth::MEAN_RADIUS_M;
        let across_m2 = (slant_m * slant_m - height_m * height_m).max(0.0);
        let sine = (across_m2 / (4.0 * radius_m * (radius_m + height_m))).sqrt().min(1.0);
        let distance_m = 2.0 * radius_m * sine.asin();
        let before_m = if self.past_fix { -distance_m } else { distance_m };
        let delayed_m = (self.delay_s + delay_s) * groundspeed_m_s;
        let begin_m = course * (delayed_m - before_m);

        let to_turn_rad = self.heading_after_rad - heading_rad;
        let change_rad = to_turn_rad
            + std::f64::consts::TAU
                * ((self.heading_change_rad - to_turn_rad) / std::f64::consts::TAU).round();
        let bank_rad = (self.bank_rad + bank_rad).clamp(1f64.to_radians(), 89f64.to_radians());
        // The bank that was planned is held, with its error, whatever rate of turn that makes.
        let limits = TurnLimits {
            bank: Bank::derived(degrees(bank_rad.to_degrees())),
            rate: crate::value::TurnRate::derived(crate::value::units::degrees_per_second(
                2.0 * (STANDARD_GRAVITY_M_S2 * bank_rad.tan() / airspeed_m_s).to_degrees(),
            )),
            roll: self.limits.roll,
        };
        let turn = RolledTurn::new(
            TrueAirspeed::derived(metres_per_second(airspeed_m_s)),
            &limits,
            degrees(change_rad.to_degrees()),
        );
        let end_m = begin_m + turn.over_ground_m(heading_rad, wind);
        -self.side * self.outbound.cross(end_m)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::lead::TurnSide;
    use crate::value::units::nautical_miles;
    use crate::value::{TrueBearing, WindSpeed};
    use crate::wind::Wind;

    fn change(by_deg: f64) -> CourseChange<TrueNorth> {
        let wind = Wind { from: TrueBearing::from_degrees(250.0), speed: WindSpeed::derived(knots(50.0)) };
        CourseChange::new(
            TrueBearing::from_degrees(40.0),
            TrueBearing::from_degrees(40.0 + by_deg),
            TrueAirspeed::derived(knots(400.0)),
            wind,
            &TurnLimits::default(),
            TurnSide::Shortest,
        )
        .unwrap()
    }

    fn height() -> HeightAboveStation {
        HeightAboveStation::derived(feet(25_000.0))
    }

    fn none() -> ErrorModel {
        ErrorModel {
            station_bearing: degrees(0.0),
            dme: metres(0.0),
            wind_speed: knots(0.0),
            wind_direction: degrees(0.0),
            airspeed: knots(0.0),
            bank: degrees(0.0),
            roll_in_delay: seconds(0.0),
            height: metres(0.0),
            mean_delay: seconds(0.0),
        }
    }

    #[test]
    fn without_errors_the_turn_ends_on_its_course() {
        for by in [70.0, -70.0, 8.0, 140.0] {
            let sure = sureness(&change(by), height(), &none(), metres(1.0), 0.95, 10, 1).unwrap();
            assert!(
                sure.mean.get::<meter>().abs() < 1e-3 && sure.deviation.get::<meter>() < 1e-3,
                "{by} {sure:?}"
            );
            assert_eq!(sure.chance_beyond, 0.0);
        }
    }

    #[test]
    fn a_late_turn_overshoots_by_the_way_flown_times_the_sine_of_the_change() {
        for by in [70.0, -70.0] {
            let late = ErrorModel { mean_delay: seconds(3.0), ..none() };
            let sure = sureness(&change(by), height(), &late, metres(0.0), 0.5, 10, 1).unwrap();
            let groundspeed = change(by).before().groundspeed.value().get::<meter_per_second>();
            let expected_m = 3.0 * groundspeed * f64::to_radians(70.0).sin();
            assert!((sure.mean.get::<meter>() - expected_m).abs() < 1e-3, "{sure:?} {expected_m}");
            // The margin that takes it back is the way itself.
            assert!((sure.margin.get::<meter>() - 3.0 * groundspeed).abs() < 1e-2, "{sure:?}");
        }
    }

    #[test]
    fn trials_and_linear_propagation_agree_for_small_errors_and_the_margin_keeps_its_promise() {
        let errors = ErrorModel {
            station_bearing: degrees(0.5),
            dme: nautical_miles(0.1),
            wind_speed: knots(5.0),
            wind_direction: degrees(5.0),
            airspeed: knots(4.0),
            bank: degrees(0.7),
            roll_in_delay: seconds(1.0),
            height: feet(150.0),
            mean_delay: seconds(1.0),
        };
        let limit = nautical_miles(0.3);
        let sure = sureness(&change(70.0), height(), &errors, limit, 0.95, 200_000, 7).unwrap();
        let ratio = sure.deviation.value / sure.linear_deviation.value;
        assert!((ratio - 1.0).abs() < 0.02, "{ratio}");
        assert!((sure.chance_beyond - sure.linear_chance_beyond).abs() < 0.02, "{sure:?}");
        assert_eq!(sure, sureness(&change(70.0), height(), &errors, limit, 0.95, 200_000, 7).unwrap());
        let each = overshoots(&change(70.0), height(), &errors, 7).take(200_000);
        let beyond = each.filter(|over| *over > limit).count();
        assert_eq!(beyond as f64 / 200_000.0, sure.chance_beyond);

        // Beginning earlier by the margin, which is a negative mean delay, leaves one in twenty beyond the limit.
        let groundspeed = change(70.0).before().groundspeed.value();
        let earlier = ErrorModel { mean_delay: errors.mean_delay - sure.margin / groundspeed, ..errors };
        let again = sureness(&change(70.0), height(), &earlier, limit, 0.95, 200_000, 8).unwrap();
        assert!((again.chance_beyond - 0.05).abs() < 0.004, "{}", again.chance_beyond);
    }

    #[test]
    fn the_foremost_source_is_the_one_that_was_made_large() {
        for (index, source) in ErrorSource::ALL.iter().enumerate().take(7) {
            let mut errors = none();
            errors.height = feet(1.0);
            match index {
                0 => errors.station_bearing = degrees(2.0),
                1 => errors.dme = nautical_miles(0.3),
                2 => errors.wind_speed = knots(15.0),
                3 => errors.wind_direction = degrees(20.0),
                4 => errors.airspeed = knots(20.0),
                5 => errors.bank = degrees(4.0),
                _ => errors.roll_in_delay = seconds(5.0),
            }
            let sure = sureness(&change(60.0), height(), &errors, metres(0.0), 0.9, 1, 1).unwrap();
            assert_eq!(sure.foremost(), Some(*source));
        }
    }

    #[test]
    fn the_quantile_is_the_tabled_one() {
        // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1 (from memory): 0.975 at 1.959964.
        assert!((normal_quantile(0.975) - 1.959_964).abs() < 1e-6);
        assert!(normal_quantile(0.5).abs() < 1e-12);
    }
}
