//! A turn that mental arithmetic begins, flown: where it really rolls out.

use super::{LeadComparison, least_dme, third_of_a_mile};
use crate::Error;
use crate::earth::{Course, direct, ground_distance, slant_range};
use crate::flight::{Begin, Flight, PlannedTurn, Reference, Start, Steering, WindField};
use crate::lead::CourseChange;
use crate::station::{Ident, Station, cone_radius};
use crate::value::units::{
    Length, degrees, meter, meter_per_second, metres, nautical_miles, second, seconds,
};
use crate::value::{
    ConeHalfAngle, Declination, DirectionChange, Elevation, GroundDistance, HeightAboveStation, Latitude,
    Longitude, Position, SlantRange, TrueAirspeed, TrueAltitude, TrueNorth, choice,
};

choice! {
    /// What a turn is begun by.
    TurnCue {
        /// The DME reading of the rule: its lead and the height in miles, added.
        Reading = 0: "reading",
        /// The rule's lead as a distance along the ground, as a map shows it.
        Distance = 1: "distance",
        /// The exact DME reading.
        Exact = 2: "exact",
    }
}

choice! {
    /// What a turn comes to, by where its wings are level again.
    TurnVerdict {
        /// Farther inside the outbound course than is allowed: the turn began too early and cuts the corner.
        Early = -1: "early",
        /// Within what is allowed.
        Safe = 0: "safe",
        /// Farther beyond the outbound course than is allowed: the turn began too late and overshoots.
        Late = 1: "late",
    }
}

/// How far from the outbound course a turn may end and be called safe.
///
/// # Source
/// The usual ones are this library's, with their reasons: half a nautical mile beyond the course is what a DME reading itself may be off
/// (FAA Aeronautical Information Manual 1-1-7: half a mile or 3 percent), so that no lead by DME is sure to end nearer; on the near side
/// half a mile of margin, which the trade adds by intention, comes on top of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RollOutAllowed {
    /// Beyond the outbound course, on the outer side of the turn.
    pub beyond: GroundDistance,
    /// Short of it, on the inner side.
    pub short: GroundDistance,
}

impl Default for RollOutAllowed {
    /// Half a mile beyond, a mile short.
    fn default() -> Self {
        Self {
            beyond: GroundDistance::derived(nautical_miles(0.5)),
            short: GroundDistance::derived(nautical_miles(1.0)),
        }
    }
}

/// Where a turn that was begun by a cue began and ended.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FlownTurn {
    /// The DME reading at which it began.
    pub reading: SlantRange,
    /// How far before the station that was, along the ground; negative past it.
    pub before_station: Length,
    /// How far beyond the outbound course the wings were level again, on the outer side of the turn; negative short of it.
    pub overshoot: Length,
    /// How far past the station that was, along the outbound course; negative before it.
    pub past_station: Length,
    /// Whether the turn began in the cone of confusion.
    pub began_in_cone: bool,
    /// Whether it ended there.
    pub ended_in_cone: bool,
}

/// One row of turns flown over a range.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FlownTurnRow {
    /// The true airspeed.
    pub true_airspeed: TrueAirspeed,
    /// The height above the station.
    pub height: HeightAboveStation,
    /// The change of course.
    pub change: DirectionChange,
    /// The turn flown there, or why there is none.
    pub flown: Result<FlownTurn, Error>,
}

impl FlownTurn {
    /// What the turn comes to.
    pub fn verdict(&self, allowed: RollOutAllowed) -> TurnVerdict {
        if self.overshoot > allowed.beyond.value() {
            TurnVerdict::Late
        } else if self.overshoot < -allowed.short.value() {
            TurnVerdict::Early
        } else {
            TurnVerdict::Safe
        }
    }
}

/// The flight begins this long before the turn, and this far.
const RUN_IN_S: f64 = 10.0;
const RUN_IN_M: f64 = 20.0;
/// Steps of the way to the turn.
const RUN_IN_STEPS: u32 = 4;
/// Steps of the turn at most; they are of a second where that is enough of them.
const MOST_TURN_STEPS: u32 = 60;

/// The end is looked for in the last step by halves, so many times: to a quarter of a millisecond of a second.
const LAST_STEP_HALVINGS: u32 = 12;

/// The latitude of the station that is flown to, at which the ellipsoid curves like the mean sphere.
const STATION_LATITUDE_DEG: f64 = 45.0;

impl LeadComparison<TrueNorth> {
    /// Flies the turn that a cue begins: inbound on the heading that holds the course, from the cue on the bank and to the heading of the exact
    /// turn, without a look at the needle. What the crew has wrong is where it begins, and nothing else.
    ///
    /// The station stands at sea level at 45 degrees of latitude, its north is true; the wind is uniform. See [`Flight`] for the model.
    ///
    /// # Accuracy
    /// A centimetre across the outbound course and half a metre along it, at steps of a second or of a 60th of a longer turn. A station elsewhere moves the roll-out by less than 0.001 NM to leads of
    /// 10 NM. The exact cue ends within 1e-4 NM of the outbound course at the surface for leads to 10 NM; at 45 000 ft 0.2 percent of the lead short of
    /// it, since a mile flown there is less of the ground's.
    ///
    /// # Degenerate cases
    /// No change of course is no turn: it ends where it begins, without an overshoot. The exact turn of a strong wind may begin past the station;
    /// it is begun at its place then, since no falling reading says so.
    ///
    /// # Errors
    /// As [`CourseChange::new`].
    ///
    /// # Source
    /// The rules: common practice. The flight: [`Flight`].
    ///
    /// # Example
    /// ```
    /// use lubberline::rules::{LeadComparison, LeadRule, RollOutAllowed, TurnCue, TurnVerdict};
    /// use lubberline::turn::TurnLimits;
    /// use lubberline::value::{ConeHalfAngle, DirectionChange, HeightAboveStation, TrueAirspeed, TrueBearing, units::*};
    /// use lubberline::wind::Wind;
    /// let comparison = LeadComparison {
    ///     inbound: TrueBearing::new(degrees(40.0))?,
    ///     wind: Wind::calm(),
    ///     limits: TurnLimits::default(),
    ///     rule: LeadRule::Third,
    /// };
    /// let flown = |cue| {
    ///     comparison.flown(
    ///         TrueAirspeed::new(knots(450.0))?,
    ///         HeightAboveStation::new(feet(36_000.0))?,
    ///         DirectionChange::new(degrees(90.0))?,
    ///         cue,
    ///         ConeHalfAngle::new(degrees(50.0))?,
    ///     )
    /// };
    /// // Height added to distance makes up for a lead that is short by four miles.
    /// assert_eq!(format!("{:.1}", flown(TurnCue::Reading)?.overshoot.get::<nautical_mile>()), "0.6");
    /// assert_eq!(format!("{:.1}", flown(TurnCue::Distance)?.overshoot.get::<nautical_mile>()), "4.1");
    /// # Ok::<(), lubberline::Error>(())
    /// ```
    pub fn flown(
        &self,
        true_airspeed: TrueAirspeed,
        height: HeightAboveStation,
        change: DirectionChange,
        cue: TurnCue,
        cone_half_angle: ConeHalfAngle,
    ) -> Result<FlownTurn, Error> {
        let exact = self.turn(true_airspeed, change, &self.limits)?;
        let (before_m, reading) = self.cue(&exact, height, cue)?;
        let station = Station {
            position: Position::new(
                Latitude::new(degrees(STATION_LATITUDE_DEG))?,
                Longitude::new(degrees(0.0))?,
            ),
            elevation: Elevation::derived(metres(0.0)),
            declination: Declination::ZERO,
            ident: Ident::NONE,
        };
        let mut flight = self.inbound_flight(&exact, station.position, height, before_m);
        let begin = if before_m > 0.0 { Begin::Dme(station, reading) } else { Begin::Now };
        flight.steer(Steering::Turn(PlannedTurn {
            begin,
            heading_after: exact.after().heading,
            heading_change: exact.turn().heading_change(),
            bank: exact.turn().bank(),
        }));
        fly_out(&mut flight, &exact);

        let outbound = Course { through: station.position, bearing: exact.outbound() };
        let abeam = outbound.abeam(flight.position());
        let cone_m = cone_radius(height, cone_half_angle).value().get::<meter>();
        let overshoot = match change.degrees() {
            0.0 => metres(0.0),
            right if right > 0.0 => -abeam.cross_track,
            _ => abeam.cross_track,
        };
        let ended_m = abeam.cross_track.get::<meter>().hypot(abeam.along_track.get::<meter>());
        Ok(FlownTurn {
            reading,
            before_station: metres(before_m),
            overshoot,
            past_station: abeam.along_track,
            began_in_cone: before_m.abs() < cone_m,
            ended_in_cone: ended_m < cone_m,
        })
    }

    /// The turns flown over a range: a row for each speed, at each height, for each change of course, in this order.
    ///
    /// # Example
    /// ```
    /// use lubberline::rules::{LeadComparison, LeadRule, RollOutAllowed, TurnCue, TurnVerdict};
    /// use lubberline::turn::TurnLimits;
    /// use lubberline::value::{ConeHalfAngle, DirectionChange, HeightAboveStation, TrueAirspeed, TrueBearing, units::*};
    /// use lubberline::wind::Wind;
    /// let comparison = LeadComparison {
    ///     inbound: TrueBearing::new(degrees(0.0))?,
    ///     wind: Wind::calm(),
    ///     limits: TurnLimits::default(),
    ///     rule: LeadRule::Third,
    /// };
    /// let speeds = [TrueAirspeed::new(knots(120.0))?, TrueAirspeed::new(knots(450.0))?];
    /// let heights = [HeightAboveStation::new(feet(3_000.0))?];
    /// let changes = [DirectionChange::new(degrees(90.0))?];
    /// let cone = ConeHalfAngle::new(degrees(50.0))?;
    /// let verdicts: Vec<_> = comparison
    ///     .flown_over(&speeds, &heights, &changes, TurnCue::Reading, cone)
    ///     .filter_map(|row| Some(row.flown.ok()?.verdict(RollOutAllowed::default())))
    ///     .collect();
    /// assert_eq!(verdicts, [TurnVerdict::Safe, TurnVerdict::Late]);
    /// # Ok::<(), lubberline::Error>(())
    /// ```
    pub fn flown_over<'a>(
        &'a self,
        speeds: &'a [TrueAirspeed],
        heights: &'a [HeightAboveStation],
        changes: &'a [DirectionChange],
        cue: TurnCue,
        cone_half_angle: ConeHalfAngle,
    ) -> impl Iterator<Item = FlownTurnRow> + 'a {
        speeds.iter().flat_map(move |&true_airspeed| {
            heights.iter().flat_map(move |&height| {
                changes.iter().map(move |&change| {
                    let flown = self.flown(true_airspeed, height, change, cue, cone_half_angle);
                    FlownTurnRow { true_airspeed, height, change, flown }
                })
            })
        })
    }

    /// How far before the station along the ground a cue begins the turn, in metres, and what DME shows there.
    fn cue(
        &self,
        exact: &CourseChange<TrueNorth>,
        height: HeightAboveStation,
        cue: TurnCue,
    ) -> Result<(f64, SlantRange), Error> {
        let change = exact.inbound().change_to(exact.outbound());
        let by_rule = third_of_a_mile(exact.before().groundspeed, change) + self.rule.allowance(height);
        let (before, reading) = match cue {
            TurnCue::Reading => {
                let reading = SlantRange::derived(by_rule + least_dme(height));
                (ground_distance(reading, height)?.value(), reading)
            }
            TurnCue::Distance => (by_rule, slant_range(GroundDistance::derived(by_rule), height)),
            TurnCue::Exact => (exact.lead(), exact.reading_at_roll_in(height)),
        };
        Ok((before.get::<meter>(), reading))
    }

    /// A flight on the inbound course, shortly before the place where the turn begins; at that place, if it is past the station.
    fn inbound_flight(
        &self,
        exact: &CourseChange<TrueNorth>,
        station: Position,
        height: HeightAboveStation,
        before_m: f64,
    ) -> Flight {
        let run_in_m = if before_m > 0.0 {
            RUN_IN_M + RUN_IN_S * exact.before().groundspeed.value().get::<meter_per_second>()
        } else {
            0.0
        };
        let from_m = before_m + run_in_m;
        let toward = if from_m < 0.0 { exact.inbound() } else { exact.inbound().reciprocal() };
        Flight::new(&Start {
            position: direct(station, toward, GroundDistance::derived(metres(from_m.abs()))).0,
            altitude: TrueAltitude::derived(height.value()),
            heading: exact.before().heading,
            north_of: Some(station),
            true_airspeed: exact.true_airspeed(),
            wind: WindField::uniform(self.wind, Reference::Carried),
            limits: self.limits,
            reaction: seconds(0.0),
        })
    }
}

/// Flies to where the wings are level again, in a number of steps that is known before.
fn fly_out(flight: &mut Flight, exact: &CourseChange<TrueNorth>) {
    let groundspeed_m_s = exact.before().groundspeed.value().get::<meter_per_second>();
    let run_in_s = (RUN_IN_S + RUN_IN_M / groundspeed_m_s) / f64::from(RUN_IN_STEPS);
    let turn_s = (exact.turn().duration().get::<second>() / f64::from(MOST_TURN_STEPS)).max(1.0);
    let mut step_s = run_in_s;
    for _ in 0..2 * RUN_IN_STEPS + MOST_TURN_STEPS {
        let mut next = *flight;
        next.step(seconds(step_s));
        if next.is_done() {
            break;
        }
        *flight = next;
        step_s = if flight.bank() == degrees(0.0) { run_in_s } else { turn_s };
    }
    // The wings are level within the next step: when, to a small part of it.
    for _ in 0..LAST_STEP_HALVINGS {
        step_s /= 2.0;
        let mut next = *flight;
        next.step(seconds(step_s));
        if !next.is_done() {
            *flight = next;
        }
    }
    flight.step(seconds(step_s));
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::rules::LeadRule;
    use crate::turn::TurnLimits;
    use crate::value::units::{feet, knots, nautical_mile};
    use crate::value::{RollRate, TrueBearing, WindSpeed};
    use crate::wind::Wind;

    fn comparison(wind_from_deg: f64, wind_kt: f64) -> LeadComparison<TrueNorth> {
        let from = TrueBearing::from_degrees(wind_from_deg);
        let wind = Wind { from, speed: WindSpeed::new(knots(wind_kt)).unwrap() };
        let (inbound, limits) = (TrueBearing::from_degrees(33.0), TurnLimits::default());
        LeadComparison { inbound, wind, limits, rule: LeadRule::Third }
    }

    fn fly(
        comparison: &LeadComparison<TrueNorth>,
        (airspeed_kt, height_ft, change_deg): (f64, f64, f64),
        cue: TurnCue,
    ) -> Result<FlownTurn, Error> {
        comparison.flown(
            TrueAirspeed::new(knots(airspeed_kt)).unwrap(),
            HeightAboveStation::new(feet(height_ft)).unwrap(),
            DirectionChange::from_degrees(change_deg),
            cue,
            ConeHalfAngle::new(degrees(50.0)).unwrap(),
        )
    }

    const CASES: [(f64, f64, f64); 8] = [
        (90.0, 3_000.0, 90.0),
        (120.0, 0.0, -30.0),
        (180.0, 10_000.0, 60.0),
        (250.0, 18_000.0, -120.0),
        (300.0, -150.0, 45.0),
        (450.0, 36_000.0, 90.0),
        (450.0, 36_000.0, -20.0),
        (480.0, 45_000.0, 5.0),
    ];

    #[test]
    fn the_exact_cue_ends_on_the_outbound_course() {
        for comparison in [comparison(0.0, 0.0), comparison(260.0, 40.0), comparison(40.0, 55.0)] {
            for case in CASES {
                let flown = fly(&comparison, case, TurnCue::Exact).unwrap();
                // What the height takes off the ground: h/R of the lead and as much of the way out.
                let room_nm = 1.0 + flown.before_station.get::<nautical_mile>().abs();
                let allowed = nautical_miles(1e-4 + 2.0 * room_nm * case.1.abs() / 20_900_000.0);
                assert!(flown.overshoot.abs() < allowed, "{case:?}: {flown:?}");
                assert_eq!(flown.verdict(RollOutAllowed::default()), TurnVerdict::Safe);
                let change = comparison
                    .turn(
                        TrueAirspeed::new(knots(case.0)).unwrap(),
                        DirectionChange::from_degrees(case.2),
                        &comparison.limits,
                    )
                    .unwrap();
                let off = flown.past_station - change.past_fix_at_roll_out();
                assert!(off.abs() < allowed + nautical_miles(1e-3), "{case:?}: {off:?}");
            }
        }
    }

    /// A turn that begins elsewhere on the inbound course ends as far off the outbound course as the sine of the change makes of it.
    #[test]
    fn a_wrong_lead_overshoots_by_its_error_times_the_sine_of_the_change() {
        for comparison in [comparison(0.0, 0.0), comparison(250.0, 50.0)] {
            for case in CASES {
                for cue in [TurnCue::Reading, TurnCue::Distance] {
                    let flown = fly(&comparison, case, cue).unwrap();
                    let exact = fly(&comparison, case, TurnCue::Exact).unwrap();
                    let short = exact.before_station - flown.before_station;
                    let expected = short * case.2.to_radians().sin().abs();
                    let off = (flown.overshoot - expected).get::<nautical_mile>();
                    assert!(off.abs() < 0.015, "{case:?} {cue:?}: {off}");
                }
            }
        }
    }

    #[test]
    fn a_turn_to_the_left_is_the_mirror_of_one_to_the_right() {
        for cue in [TurnCue::Reading, TurnCue::Distance] {
            let right = fly(&comparison(0.0, 0.0), (300.0, 20_000.0, 70.0), cue).unwrap();
            let left = fly(&comparison(0.0, 0.0), (300.0, 20_000.0, -70.0), cue).unwrap();
            assert!((right.overshoot - left.overshoot).abs() < nautical_miles(0.01));
        }
    }

    #[test]
    fn the_verdict_is_by_the_side() {
        let allowed = RollOutAllowed::default();
        let at = |overshoot_nm: f64| {
            let overshoot = nautical_miles(overshoot_nm);
            let flown = fly(&comparison(0.0, 0.0), CASES[0], TurnCue::Exact).unwrap();
            FlownTurn { overshoot, ..flown }.verdict(allowed)
        };
        assert_eq!([-1.01, -0.99].map(at), [TurnVerdict::Early, TurnVerdict::Safe]);
        assert_eq!([0.49, 0.51].map(at), [TurnVerdict::Safe, TurnVerdict::Late]);
    }

    #[test]
    fn every_flight_ends() {
        let mut slow_roll = comparison(0.0, 0.0);
        slow_roll.limits.roll = RollRate::new(crate::value::units::degrees_per_second(1e-3)).unwrap();
        for (case, comparison) in [
            ((0.001, 0.0, 90.0), comparison(0.0, 0.0)),
            ((0.001, 400_000.0, 0.0), comparison(0.0, 0.0)),
            ((5_000.0, 60_000.0, 150.0), comparison(90.0, 1_000.0)),
            ((300.0, -60_000.0, 90.0), comparison(33.0, 299.999)),
            ((300.0, 20_000.0, 90.0), slow_roll),
        ] {
            for &cue in TurnCue::ALL {
                if let Ok(flown) = fly(&comparison, case, cue) {
                    assert!(flown.overshoot.get::<meter>().is_finite(), "{case:?} {cue:?}: {flown:?}");
                }
            }
        }
        let nothing = fly(&comparison(0.0, 0.0), (200.0, 9_000.0, 0.0), TurnCue::Reading).unwrap();
        assert_eq!(nothing.overshoot, metres(0.0));
    }
}
