//! The turns onto and off an arc, flown over the ellipsoid in wind.

use lubberline::Error;
use lubberline::lead::{ArcSense, ArcTurn, RadialFlown, off_arc, onto_arc};
use lubberline::turn::TurnLimits;
use lubberline::value::units::{
    degree, degrees, degrees_per_second, knots, nautical_mile, nautical_miles, second,
};
use lubberline::value::{
    ArcRadius, Bank, RollRate, TrueAirspeed, TrueBearing, TrueNorth, TurnRate, WindSpeed,
};
use lubberline::wind::Wind;

use super::flown::{Case, Flown};
use super::random_case;

const CASES: usize = 4000;

/// The documented accuracy within 20 NM of the station.
const ALLOWED_NM: f64 = 2e-4;

/// A radial and an arc about a station; the case has the station, the air and the limits.
#[derive(Debug)]
struct Join {
    case: Case,
    radial_deg: f64,
    flown: RadialFlown,
    arc_nm: f64,
    sense: ArcSense,
}

impl Join {
    fn random(random: &mut fastrand::Rng) -> Self {
        let case = random_case(random);
        Self {
            radial_deg: case.inbound_deg,
            flown: if random.bool() { RadialFlown::Inbound } else { RadialFlown::Outbound },
            arc_nm: 3.0 + 17.0 * random.f64(),
            sense: if random.bool() { ArcSense::Clockwise } else { ArcSense::Counterclockwise },
            case,
        }
    }

    fn answer(&self, onto: bool) -> Result<ArcTurn<TrueNorth>, Error> {
        let case = &self.case;
        let wind = Wind {
            from: TrueBearing::new(degrees(case.wind_from_deg))?,
            speed: WindSpeed::new(knots(case.wind_kt))?,
        };
        let limits = TurnLimits {
            bank: Bank::new(degrees(case.bank_limit_deg))?,
            rate: TurnRate::new(degrees_per_second(case.rate_limit_deg_s))?,
            roll: RollRate::new(degrees_per_second(case.roll_deg_s))?,
        };
        let radial = TrueBearing::new(degrees(self.radial_deg))?;
        let arc = ArcRadius::new(nautical_miles(self.arc_nm))?;
        let airspeed = TrueAirspeed::new(knots(case.airspeed_kt))?;
        let solve = if onto { onto_arc } else { off_arc };
        solve(radial, self.flown, arc, self.sense, airspeed, wind, &limits)
    }

    fn radial_course_deg(&self) -> f64 {
        match self.flown {
            RadialFlown::Inbound => self.radial_deg + 180.0,
            RadialFlown::Outbound => self.radial_deg,
        }
    }

    /// The direction of the arc where it has this bearing from the station.
    fn arc_course_deg(&self, bearing_deg: f64) -> f64 {
        bearing_deg + if self.sense == ArcSense::Clockwise { 90.0 } else { -90.0 }
    }

    /// Flies the answer; `None` where the turn does not stay within 20 NM.
    fn fly(&self, onto: bool, answer: &ArcTurn<TrueNorth>) -> Option<Flown> {
        let begin_nm = answer.distance_at_roll_in.value().get::<nautical_mile>();
        let end_nm = answer.distance_at_roll_out.value().get::<nautical_mile>();
        let begin_deg = answer.bearing_at_roll_in.angle().get::<degree>();
        let (inbound_deg, outbound_deg) = if onto {
            let end_deg = answer.bearing_at_roll_out.angle().get::<degree>();
            (self.radial_course_deg(), self.arc_course_deg(end_deg))
        } else {
            (self.arc_course_deg(begin_deg), self.radial_course_deg())
        };
        (begin_nm.max(end_nm) <= 20.0)
            .then(|| Case { inbound_deg, outbound_deg, ..self.case }.fly_from(begin_deg, begin_nm))
    }
}

/// How far the flown end lies from the one that was answered.
fn miss_nm(flown: &Flown, answer: &ArcTurn<TrueNorth>) -> f64 {
    let end_nm = answer.distance_at_roll_out.value().get::<nautical_mile>();
    let off_rad = (flown.bearing_deg - answer.bearing_at_roll_out.angle().get::<degree>()).to_radians();
    (flown.distance_nm - end_nm).hypot(2.0 * (off_rad / 2.0).sin() * end_nm)
}

fn fly_all(onto: bool, seed: u64) {
    let mut random = fastrand::Rng::with_seed(seed);
    let (mut flown_cases, mut refused, mut worst_nm) = (0, 0, 0.0_f64);
    while flown_cases < CASES {
        let join = Join::random(&mut random);
        let answer = match join.answer(onto) {
            Ok(answer) => answer,
            Err(error) => {
                // On the outside of the arc there is always room.
                let inside = join.flown == if onto { RadialFlown::Outbound } else { RadialFlown::Inbound };
                assert!(inside && matches!(error, Error::ArcTooTight { .. }), "{error} for {join:?}");
                refused += 1;
                continue;
            }
        };
        let Some(flown) = join.fly(onto, &answer) else { continue };
        flown_cases += 1;
        let miss_nm = miss_nm(&flown, &answer);
        worst_nm = worst_nm.max(miss_nm);
        assert!(miss_nm < ALLOWED_NM, "missed by {miss_nm} NM: {flown:?}, {answer:?} for {join:?}");
        assert!((flown.duration_s - answer.duration.get::<second>()).abs() < 1e-5, "{answer:?} for {join:?}");
    }
    println!("{flown_cases} turns, {refused} refused; worst miss {worst_nm:.1e} NM");
}

#[test]
fn an_aircraft_that_begins_there_rolls_out_on_the_arc_and_along_it() {
    fly_all(true, 0xa2c);
}

#[test]
fn an_aircraft_that_begins_at_the_lead_radial_rolls_out_on_the_radial() {
    fly_all(false, 0x0ffa2c);
}
