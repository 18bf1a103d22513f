//! Racetracks flown: rounds of a pattern as it is computed, and every kind of entry into one.

use lubberline::earth::{Course, direct, inverse, slant_range};
use lubberline::flight::{Flight, OutboundEnd, Racetrack, Steering};
use lubberline::lead::RadialFlown;
use lubberline::procedure::{HoldingPattern, HoldingSide, TimedLeg, entry_sector, outbound_end_reading};
use lubberline::station::{Ident, Station};
use lubberline::turn::TurnLimits;
use lubberline::value::units::*;
use lubberline::value::*;
use lubberline::wind::Wind;

use super::{Draw, airspeed, bearing, flight_from, ground};

const STEP_S: f64 = 1.0;

/// A pattern over a place, in a wind.
struct Case {
    what: String,
    fix: Position,
    pattern: HoldingPattern<TrueNorth>,
    wind: Wind<TrueNorth>,
    airspeed_kt: f64,
    height_ft: f64,
}

impl Case {
    /// None where the pattern does not close in the wind, which is an answer too.
    fn drawn(draw: &mut Draw) -> Option<Self> {
        let fix = draw.station().position;
        let airspeed_kt = draw.between(60.0, 600.0);
        let height_ft = draw.between(0.0, 45_000.0);
        let wind = draw.wind(airspeed_kt, 0.5);
        let inbound = bearing(draw.between(0.0, 360.0));
        let side = if draw.side() > 0.0 { HoldingSide::Right } else { HoldingSide::Left };
        let timed = match draw.between(0.0, 3.0) {
            value if value < 1.0 => TimedLeg::Inbound,
            value if value < 2.0 => TimedLeg::Outbound,
            _ => TimedLeg::OutboundFromLevel,
        };
        let time_s = draw.between(60.0, 150.0);
        let what = format!(
            "{fix:?} {airspeed_kt} kt {height_ft} ft {wind:?} {inbound:?} {side:?} {timed:?} {time_s} s"
        );
        let time = HoldTime::new(seconds(time_s)).unwrap();
        let limits = TurnLimits::default();
        let pattern =
            HoldingPattern::new(inbound, side, timed, time, airspeed(airspeed_kt), wind, &limits).ok()?;
        // Half a minute inbound is the least that a pattern is laid out for: ICAO Doc 8168 Vol II (5th ed. 2006), Part II Section 4
        // Chapter 1, 1.3.2.3.
        let laid_out = pattern.inbound_time() >= seconds(30.0);
        laid_out.then_some(Self { what, fix, pattern, wind, airspeed_kt, height_ft })
    }

    /// What rolling out inbound may be off: a mile in the air is `1 / (1 + h/R)` of a mile on the ground, and the pattern is laid out on a plane.
    fn allowed_m(&self) -> f64 {
        let (length, width) = self.pattern.size();
        let size_m = length.get::<meter>().hypot(width.get::<meter>());
        1.0 + 2.0 * size_m * self.height_ft / 20_925_000.0
    }

    fn flight(&self, over: Position, heading: TrueBearing) -> Flight {
        flight_from(
            over,
            bearing(0.0),
            metres(0.0),
            heading,
            feet(self.height_ft),
            airspeed(self.airspeed_kt),
            self.wind,
            &TurnLimits::default(),
        )
    }

    /// Along the inbound course, beyond the fix positive: by the plane, which is near enough to see the fix passed.
    fn along_m(&self, flight: &Flight) -> f64 {
        let line = inverse(self.fix, flight.position());
        let off_rad: f64 = line
            .initial_bearing
            .map_or(0.0, |from| self.pattern.inbound_course().change_to(from).angle().get::<radian>());
        line.distance.value().get::<meter>() * off_rad.cos()
    }

    /// Across the inbound course, right positive.
    fn across_m(&self, flight: &Flight) -> f64 {
        let course = Course { through: self.fix, bearing: self.pattern.inbound_course() };
        course.abeam(flight.position()).cross_track.get::<meter>()
    }

    /// Flies from the fix round to it again; across the course when the wings should have come level, and at the fix.
    fn round_m(&self, flight: &mut Flight) -> (f64, f64) {
        let pattern = &self.pattern;
        let level_s = pattern.duration().get::<second>() - pattern.inbound_time().get::<second>();
        let begun_s = flight.time().get::<second>();
        // The fix is passed again after the way out, however the entry swung about it.
        let (mut level_m, mut been_out) = (f64::NAN, false);
        loop {
            flight.step(seconds(STEP_S));
            let passed_s = flight.time().get::<second>() - begun_s;
            let along_m = self.along_m(flight);
            if passed_s >= level_s && level_m.is_nan() {
                level_m = self.across_m(flight);
            }
            been_out |= along_m < -300.0;
            if been_out && along_m >= 0.0 {
                return (level_m, self.across_m(flight));
            }
            assert!(passed_s < 4.0 * level_s + 600.0, "never back: {}", self.what);
        }
    }
}

#[test]
fn a_pattern_comes_back_onto_its_course_round_after_round() {
    let mut draw = Draw::new(61_207);
    let (mut flown, mut worst, mut worst_fix_m) = (0, 0.0_f64, 0.0_f64);
    for _ in 0..120 {
        let Some(case) = Case::drawn(&mut draw) else { continue };
        let mut flight = case.flight(case.fix, case.pattern.inbound().heading);
        flight.steer(Steering::Hold(Racetrack::of(&case.pattern, case.fix, case.wind)));
        for round in 1..=3 {
            let (level_m, fix_m) = case.round_m(&mut flight);
            let allowed_m = case.allowed_m();
            worst = worst.max(level_m.abs() / allowed_m);
            worst_fix_m = worst_fix_m.max(fix_m.abs());
            assert!(level_m.abs() < allowed_m, "round {round}: {level_m} of {allowed_m} m, {}", case.what);
            assert!(fix_m.abs() < 1.0, "round {round}: {fix_m} m at the fix, {}", case.what);
        }
        flown += 1;
    }
    assert!(flown > 80, "{flown}");
    println!("holds: {flown}, {worst} of what is allowed, {worst_fix_m} m at the fix");
}

#[test]
fn a_pattern_that_turns_inbound_by_dme_comes_back_too() {
    let mut draw = Draw::new(18_004);
    let (mut flown, mut worst, mut worst_fix_m) = (0, 0.0_f64, 0.0_f64);
    for _ in 0..80 {
        let Some(case) = Case::drawn(&mut draw) else { continue };
        // A reading tells the end of a leg that runs along the radial; in a strong wind the outbound leg may run across it.
        let (track, _) = case.pattern.outbound_over_ground();
        let off = case.pattern.inbound_course().reciprocal().change_to(track).angle();
        if off.abs() > degrees(45.0) {
            continue;
        }
        // The fix lies on a radial along which the inbound leg is flown, toward the station or away from it.
        let inbound = if draw.side() > 0.0 { RadialFlown::Inbound } else { RadialFlown::Outbound };
        let distance = nautical_miles(draw.between(60.0, 90.0));
        let course = case.pattern.inbound_course();
        let toward = if inbound == RadialFlown::Inbound { course } else { course.reciprocal() };
        let (at, _) = direct(case.fix, toward, ground(distance));
        let station = Station {
            position: at,
            elevation: Elevation::new(feet(0.0)).unwrap(),
            declination: Declination::ZERO,
            ident: Ident::NONE,
        };
        let height = HeightAboveStation::new(feet(case.height_ft)).unwrap();
        let (before, across) = case.pattern.outbound_end();
        let fix_reading = slant_range(ground(distance), height);
        let reading = outbound_end_reading(fix_reading, inbound, before, across, height).unwrap();
        let outbound_end = match inbound {
            RadialFlown::Inbound => OutboundEnd::RisingDme(station, reading),
            RadialFlown::Outbound => OutboundEnd::Dme(station, reading),
        };
        let mut flight = case.flight(case.fix, case.pattern.inbound().heading);
        let timed = Racetrack::of(&case.pattern, case.fix, case.wind);
        flight.steer(Steering::Hold(Racetrack { outbound_end, ..timed }));
        for round in 1..=2 {
            let (level_m, fix_m) = case.round_m(&mut flight);
            let allowed_m = case.allowed_m();
            worst = worst.max(level_m.abs() / allowed_m);
            worst_fix_m = worst_fix_m.max(fix_m.abs());
            assert!(level_m.abs() < allowed_m, "round {round}: {level_m} of {allowed_m} m, {}", case.what);
            assert!(fix_m.abs() < 1.0, "round {round}: {fix_m} m at the fix, {}", case.what);
        }
        flown += 1;
    }
    assert!(flown > 50, "{flown}");
    println!("holds by DME: {flown}, {worst} of what is allowed, {worst_fix_m} m at the fix");
}

#[test]
fn every_entry_leads_onto_the_course() {
    // What is off at the fix, in radii of the turn, from the first passage after the entry to the third; from the fourth on in metres.
    const ALLOWED_RADII: [f64; 3] = [0.6, 0.02, 0.001];
    const ALLOWED_M: f64 = 1.0;
    let mut draw = Draw::new(83_311);
    let (mut flown, mut worst, mut settled) = ([0; 3], [[0.0_f64; 4]; 3], [0; 3]);
    for _ in 0..200 {
        let Some(case) = Case::drawn(&mut draw) else { continue };
        let heading = bearing(draw.between(0.0, 360.0));
        let sector = entry_sector(heading, case.pattern.inbound_course(), case.pattern.side());
        let mut flight = case.flight(case.fix, heading);
        let racetrack =
            Racetrack { entry: sector.entry, ..Racetrack::of(&case.pattern, case.fix, case.wind) };
        flight.steer(Steering::Hold(racetrack));
        let kind = sector.entry.code() as usize - 1;
        flown[kind] += 1;
        let radius_m = case.pattern.outbound_turn().radius().get::<meter>();
        for (passage, worst) in worst[kind].iter_mut().enumerate() {
            let (_, fix_m) = case.round_m(&mut flight);
            let allowed_m = ALLOWED_RADII.get(passage).map_or(ALLOWED_M, |radii| radii * radius_m);
            assert!(fix_m.abs() < allowed_m, "{} {:?}: {fix_m} m, {}", passage + 1, sector.entry, case.what);
            let off = if passage < 3 { fix_m.abs() / radius_m } else { fix_m.abs() };
            *worst = worst.max(off);
            settled[kind] += usize::from(passage == 0 && fix_m.abs() < 20.0);
        }
    }
    assert!(flown.iter().all(|count| *count > 25), "{flown:?}");
    // Most are on their course at the first passage already.
    for (flown, settled) in flown.iter().zip(settled) {
        assert!(settled * 2 > *flown, "{settled} of {flown}");
    }
    println!("entries: parallel, offset, direct {flown:?}, within 20 m at once {settled:?}, worst {worst:?}");
}
