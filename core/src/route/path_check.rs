//! What a crew should know of a leg before flying it.

use super::{PathBrief, PathLeg, PathStation, PathSurroundings};
use crate::Error;
use crate::air::{Air, indicated_altitude, pressure_altitude_at};
use crate::procedure::legs::{LegPath, Place};
use crate::procedure::{HoldingSpeedRule, holding_speed};
use crate::station::{Flag, Receiver};
use crate::value::units::{
    Angle, Velocity, degree, foot, knot, meter_per_second, metres, nautical_mile, ratio,
};
use crate::value::{
    CalibratedAirspeed, Elevation, GroundDistance, Mach, PressureAltitude, TrueAirspeed, TrueAltitude, choice,
};

/// An altitude is reached, and not passed, to within this, in feet: what the arithmetic of the leg before leaves.
const REACHED_FT: f64 = 1.0;

choice! {
    /// What a check of a leg has found.
    PathCheckKind {
        /// Keeping to its arc takes more bank than the limit.
        ArcBank = 1: "arc_bank",
        /// A turn begins in the cone of a station, where radials are of no use.
        Cone = 2: "cone",
        /// A racetrack is flown at a higher calibrated airspeed than the rule allows where it ends.
        HoldingAirspeed = 3: "holding_airspeed",
        /// A racetrack is flown at a higher Mach number than the rule allows where it ends.
        HoldingMach = 4: "holding_mach",
        /// A station is not received where a turn begins or rolls out, or where a leg ends that is ended by it.
        NotReceived = 5: "not_received",
        /// A leg that an altitude ends (CA, FA, HA, VA) begins past it: it ends at once, or after one racetrack.
        AltitudePassed = 6: "altitude_passed",
    }
}

impl PathCheckKind {
    /// What it says of a leg, without its numbers.
    pub const fn text(self) -> &'static str {
        match self {
            Self::ArcBank => "keeping to the arc takes more bank than the limit",
            Self::Cone => "a turn begins in the cone of a station, where radials are of no use",
            Self::HoldingAirspeed => {
                "the racetrack is flown at a higher calibrated airspeed than the rule allows"
            }
            Self::HoldingMach => "the racetrack is flown at a higher Mach number than the rule allows",
            Self::NotReceived => "a station is not received where a turn or the leg takes it",
            Self::AltitudePassed => "the altitude that ends the leg is passed already where it begins",
        }
    }
}

/// What a check of a leg has found, with its numbers.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum PathCheck {
    /// See [`PathCheckKind::ArcBank`].
    ArcBank {
        /// What keeps to the arc.
        needed: Angle,
        /// The most there is.
        limit: Angle,
    },
    /// See [`PathCheckKind::Cone`].
    Cone {
        /// The turn of the leg, counted from zero.
        turn: usize,
        /// The station of the surroundings, counted from zero.
        station: usize,
    },
    /// See [`PathCheckKind::HoldingAirspeed`].
    HoldingAirspeed {
        /// What it is flown at.
        calibrated: CalibratedAirspeed,
        /// The most that is allowed.
        limit: CalibratedAirspeed,
        /// Where it ends.
        altitude: PressureAltitude,
        /// By whose rule.
        rule: HoldingSpeedRule,
    },
    /// See [`PathCheckKind::HoldingMach`].
    HoldingMach {
        /// What it is flown at.
        mach: Mach,
        /// The same as an airspeed.
        calibrated: CalibratedAirspeed,
        /// The most that is allowed.
        limit: Mach,
        /// Where it ends.
        altitude: PressureAltitude,
        /// By whose rule.
        rule: HoldingSpeedRule,
    },
    /// See [`PathCheckKind::NotReceived`].
    NotReceived {
        /// The turn of the leg, counted from zero; none where the leg ends.
        turn: Option<usize>,
        /// Whether it is received where the turn begins, and not where it rolls out.
        at_roll_out: bool,
        /// The station of the surroundings, counted from zero; none if it is the leg's own and not among them.
        station: Option<usize>,
        /// How far off it is over the ground.
        distance: GroundDistance,
        /// How far it is received at that altitude.
        limit: GroundDistance,
    },
    /// See [`PathCheckKind::AltitudePassed`].
    AltitudePassed {
        /// Where the leg begins.
        begun: TrueAltitude,
        /// What ends it.
        end: TrueAltitude,
    },
}

impl PathCheck {
    /// Which check has found it.
    pub const fn kind(&self) -> PathCheckKind {
        match self {
            Self::ArcBank { .. } => PathCheckKind::ArcBank,
            Self::Cone { .. } => PathCheckKind::Cone,
            Self::HoldingAirspeed { .. } => PathCheckKind::HoldingAirspeed,
            Self::HoldingMach { .. } => PathCheckKind::HoldingMach,
            Self::NotReceived { .. } => PathCheckKind::NotReceived,
            Self::AltitudePassed { .. } => PathCheckKind::AltitudePassed,
        }
    }

    /// The station of the surroundings that it is about, counted from zero, if it is about one.
    pub const fn station(&self) -> Option<usize> {
        match *self {
            Self::Cone { station, .. } => Some(station),
            Self::NotReceived { station, .. } => station,
            _ => None,
        }
    }

    /// A sentence for a crew, with the numbers; `station` is what the station of [`PathCheck::station`] is called.
    pub fn sentence(&self, station: &str) -> String {
        let held =
            |calibrated: CalibratedAirspeed, altitude: PressureAltitude, limit, rule: HoldingSpeedRule| {
                format!(
                    "it is flown at {:.0} kt calibrated; the limit at {:.0} ft is {limit} ({})",
                    calibrated.value().get::<knot>(),
                    altitude.value().get::<foot>(),
                    rule.word()
                )
            };
        match *self {
            Self::ArcBank { needed, limit } => format!(
                "keeping to the arc takes {:.0} degrees of bank; the limit is {:.0}",
                needed.get::<degree>(),
                limit.get::<degree>()
            ),
            Self::Cone { turn, .. } => {
                format!("turn {} begins in the cone of {station}, where radials are of no use", turn + 1)
            }
            Self::HoldingAirspeed { calibrated, limit, altitude, rule } => {
                held(calibrated, altitude, format!("{:.0} kt", limit.value().get::<knot>()), rule)
            }
            Self::HoldingMach { calibrated, limit, altitude, rule, .. } => {
                held(calibrated, altitude, format!("Mach {:.2}", limit.value().get::<ratio>()), rule)
            }
            Self::NotReceived { turn, at_roll_out, station: known, distance, limit } => {
                let place = match turn {
                    None => "the leg ends".to_owned(),
                    Some(turn) if at_roll_out => format!("turn {} rolls out", turn + 1),
                    Some(turn) => format!("turn {} begins", turn + 1),
                };
                format!(
                    "{place} {:.1} NM from {}, which is received to {:.1} NM at that altitude",
                    distance.value().get::<nautical_mile>(),
                    if known.is_some() { station } else { "its station" },
                    limit.value().get::<nautical_mile>()
                )
            }
            Self::AltitudePassed { begun, end } => format!(
                "its altitude of {:.0} ft is passed already where it begins, at {:.0} ft",
                end.value().get::<foot>(),
                begun.value().get::<foot>()
            ),
        }
    }
}

impl PathBrief {
    /// What the checks find of a leg, counted from zero: whether the limit of bank keeps to its arc, whether a turn begins in the cone of
    /// a station, whether a station is received where a turn begins and rolls out and where the leg ends that is ended by it, whether the
    /// altitude that ends it is passed already where it begins, whether a racetrack is flown faster than the rule allows at the altitude where it ends.
    ///
    /// # Degenerate cases
    /// There is nothing to find of a leg that there is not. Of two limits of a racetrack that are both exceeded the airspeed is told. A station
    /// that is received neither where a turn begins nor where it rolls out is told once, where it begins. A leg's own station is that of
    /// the surroundings at its place, if there is one there. An altitude is passed by more than a foot, climbing above it or descending below
    /// it; one that is passed in the turn onto the leg is not told.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] if a racetrack ends outside the atmosphere, or its airspeed there is none.
    ///
    /// # Source
    /// Speeds: [`holding_speed`].
    ///
    /// # Example
    /// ```
    /// use lubberline::procedure::legs::{Conditions, Hold, HoldLength, Leg};
    /// use lubberline::procedure::{HoldingSide, HoldingSpeedRule, TimedLeg};
    /// use lubberline::route::{PathBrief, PathCheckKind, PathSurroundings};
    /// use lubberline::value::{*, units::*};
    /// let hold = Hold {
    ///     fix: Position::new(Latitude::new(degrees(60.0))?, Longitude::new(degrees(-10.0))?),
    ///     inbound: TrueBearing::new(degrees(90.0))?,
    ///     side: HoldingSide::Right,
    ///     length: HoldLength::Time(TimedLeg::OutboundFromLevel, HoldTime::new(seconds(60.0))?),
    /// };
    /// let surroundings = PathSurroundings {
    ///     stations: Vec::new(),
    ///     setting: AltimeterSetting::new(hectopascals(1013.25))?,
    ///     deviation: IsaDeviation::new(kelvins(0.0))?,
    ///     holding_rule: HoldingSpeedRule::Icao,
    /// };
    /// let conditions = Conditions::level(TrueAirspeed::new(knots(290.0))?, TrueAltitude::new(feet(6_000.0))?);
    /// let brief = PathBrief::of(&[Leg::HoldToFix(hold)], &conditions)?;
    /// let checks = brief.checks(0, &surroundings)?;
    /// assert_eq!(checks[0].kind(), PathCheckKind::HoldingAirspeed);
    /// assert_eq!(checks[0].sentence(""), "it is flown at 266 kt calibrated; the limit at 5998 ft is 230 kt (icao)");
    /// # Ok::<(), lubberline::Error>(())
    /// ```
    pub fn checks(&self, leg: usize, surroundings: &PathSurroundings) -> Result<Vec<PathCheck>, Error> {
        let Some(briefed) = self.legs.get(leg) else { return Ok(Vec::new()) };
        let mut found = Vec::new();
        let conditions = &self.path.conditions;
        if let Some(needed) = briefed.arc_bank
            && !briefed.keeps_its_arc(conditions)
        {
            found.push(PathCheck::ArcBank { needed, limit: conditions.limits.bank.value() });
        }
        for (turn, flown) in briefed.turns.iter().enumerate() {
            for (station, known) in surroundings.stations.iter().enumerate() {
                if known.seen_from(&flown.begin).flag == Flag::Cone {
                    found.push(PathCheck::Cone { turn, station });
                }
                let places = [(false, &flown.begin), (true, &flown.roll_out)];
                found.extend(places.into_iter().find_map(|(at_roll_out, place)| {
                    not_received(known, place, Some(turn), at_roll_out, Some(station))
                }));
            }
        }
        found.extend(ended_unreceived(briefed, surroundings));
        found.extend(passed(briefed, conditions.climb));
        if briefed.code.path() == LegPath::Hold {
            found.extend(held_too_fast(briefed, conditions.true_airspeed, surroundings)?);
        }
        Ok(found)
    }
}

/// Whether a station is not received at a place.
fn not_received(
    station: &PathStation,
    place: &Place,
    turn: Option<usize>,
    at_roll_out: bool,
    number: Option<usize>,
) -> Option<PathCheck> {
    let (distance, limit) = station.beyond_reception(place)?;
    Some(PathCheck::NotReceived { turn, at_roll_out, station: number, distance, limit })
}

/// Whether a leg that a station ends is ended where that is not received.
fn ended_unreceived(leg: &PathLeg, surroundings: &PathSurroundings) -> Option<PathCheck> {
    let station = leg.station?;
    let mut known = surroundings.stations.iter().enumerate();
    match known.find(|(_, known)| known.station.position == station.position) {
        Some((number, known)) => not_received(known, &leg.end, None, false, Some(number)),
        None => {
            let own = PathStation { station, cone_half_angle: Receiver::default().cone };
            not_received(&own, &leg.end, None, false, None)
        }
    }
}

/// Whether a leg begins past the altitude that ends it.
fn passed(leg: &PathLeg, climb: Velocity) -> Option<PathCheck> {
    let (begun, end) = (leg.start.altitude, leg.end_altitude?);
    let above_ft = (begun.value() - end.value()).get::<foot>();
    let past_ft = above_ft * climb.get::<meter_per_second>().signum();
    (climb.value != 0.0 && past_ft > REACHED_FT).then_some(PathCheck::AltitudePassed { begun, end })
}

/// Whether a racetrack is flown faster than the rule allows at the altitude where it ends.
fn held_too_fast(
    leg: &PathLeg,
    true_airspeed: TrueAirspeed,
    surroundings: &PathSurroundings,
) -> Result<Option<PathCheck>, Error> {
    let (setting, deviation) = (surroundings.setting, surroundings.deviation);
    let sea = Elevation::derived(metres(0.0));
    let altitude = pressure_altitude_at(leg.end.altitude, setting, sea, deviation)?;
    let air = Air::new(altitude, deviation);
    let rule = surroundings.holding_rule;
    let most = holding_speed(rule, indicated_altitude(altitude, setting));
    let calibrated = air.calibrated_from_true(true_airspeed)?;
    let mach = air.mach_from_true(true_airspeed)?;
    Ok(match (most.indicated, most.mach) {
        (Some(limit), _) if calibrated > limit => {
            Some(PathCheck::HoldingAirspeed { calibrated, limit, altitude, rule })
        }
        (_, Some(limit)) if mach > limit => {
            Some(PathCheck::HoldingMach { mach, calibrated, limit, altitude, rule })
        }
        _ => None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::procedure::legs::{Conditions, Fix, Hold, HoldLength, Leg, Passage};
    use crate::procedure::{HoldingSide, TimedLeg};
    use crate::station::{Ident, Station};
    use crate::value::units::{feet, feet_per_minute, hectopascals, kelvins, knots, nautical_miles, seconds};
    use crate::value::{
        AltimeterSetting, Declination, HoldTime, IsaDeviation, Position, SlantRange, TrueBearing,
    };

    fn station(longitude: f64) -> Station {
        Station {
            position: Position::derived(60.5, longitude),
            elevation: Elevation::new(feet(0.0)).unwrap(),
            declination: Declination::ZERO,
            ident: Ident::NONE,
        }
    }

    /// North, then east past a corner at 60.5 N 10 W to the end of the leg, with what each leg is checked for.
    fn checked(last: Leg, altitude_ft: f64, stations: &[Station]) -> Vec<Vec<PathCheck>> {
        let by = |latitude| Fix { position: Position::derived(latitude, -10.0), passage: Passage::FlyBy };
        let legs = [Leg::InitialFix(by(60.0)), Leg::TrackToFix(by(60.5)), last];
        let (speed, altitude) = (TrueAirspeed::new(knots(200.0)), TrueAltitude::new(feet(altitude_ft)));
        let conditions = Conditions::level(speed.unwrap(), altitude.unwrap());
        let brief = PathBrief::of(&legs, &conditions).unwrap();
        let cone_half_angle = Receiver::default().cone;
        let surroundings = PathSurroundings {
            stations: stations.iter().map(|&station| PathStation { station, cone_half_angle }).collect(),
            setting: AltimeterSetting::new(hectopascals(1013.25)).unwrap(),
            deviation: IsaDeviation::new(kelvins(0.0)).unwrap(),
            holding_rule: HoldingSpeedRule::Icao,
        };
        (0..legs.len()).map(|leg| brief.checks(leg, &surroundings).unwrap()).collect()
    }

    fn east() -> Leg {
        Leg::TrackToFix(Fix { position: Position::derived(60.5, -9.0), passage: Passage::FlyBy })
    }

    /// Common practice: 1.23 times the root of the feet, in nautical miles.
    fn horizon_nm(altitude_ft: f64) -> f64 {
        1.23 * altitude_ft.sqrt()
    }

    #[test]
    fn a_turn_low_and_far_from_a_station_does_not_receive_it() {
        // A degree of longitude is 29.6 NM there.
        let (far, near) = (station(-7.0), station(-9.5));
        let found = checked(east(), 2_000.0, &[near, far]);
        assert!(found[0].is_empty() && found[1].is_empty());
        let [PathCheck::NotReceived { turn: Some(0), at_roll_out: false, station: Some(1), distance, limit }] =
            found[2][..]
        else {
            panic!("{found:?}")
        };
        assert!((distance.value().get::<nautical_mile>() - 89.0).abs() < 1.5, "{distance:?}");
        assert!((limit.value().get::<nautical_mile>() - horizon_nm(2_000.0)).abs() < 0.5, "{limit:?}");
        let told = found[2][0].sentence("FAR");
        assert!(told.starts_with("turn 1 begins ") && told.contains(" NM from FAR, which is received to 5"));
        assert!(checked(east(), 9_000.0, &[near, far]).iter().all(Vec::is_empty), "higher it is received");
    }

    #[test]
    fn a_station_lost_in_the_turn_is_told_where_it_rolls_out() {
        // To the west of the corner: the turn to the east goes away from it, by a mile or two.
        let lost = |longitude| {
            let found = checked(east(), 2_000.0, &[station(longitude)]);
            found[2].iter().any(|check| matches!(check, PathCheck::NotReceived { at_roll_out: true, .. }))
        };
        assert!((0..40).any(|step| lost(-11.0 - f64::from(step) * 0.025)));
        assert!(!lost(-11.0) && !lost(-13.0));
    }

    /// What is found of each leg of a climb or descent from 4000 ft.
    fn climbed(last: Leg, climb_fpm: f64) -> Vec<PathCheck> {
        let by = |latitude| Fix { position: Position::derived(latitude, -10.0), passage: Passage::FlyBy };
        let legs = [Leg::InitialFix(by(60.0)), Leg::TrackToFix(by(60.5)), last];
        let altitude = TrueAltitude::new(feet(4_000.0)).unwrap();
        let conditions = Conditions {
            climb: feet_per_minute(climb_fpm),
            ..Conditions::level(TrueAirspeed::new(knots(200.0)).unwrap(), altitude)
        };
        let brief = PathBrief::of(&legs, &conditions).unwrap();
        let surroundings = PathSurroundings {
            stations: Vec::new(),
            setting: AltimeterSetting::new(hectopascals(1013.25)).unwrap(),
            deviation: IsaDeviation::new(kelvins(0.0)).unwrap(),
            holding_rule: HoldingSpeedRule::Icao,
        };
        brief.checks(2, &surroundings).unwrap()
    }

    /// Thirty miles at 200 kt are nine minutes: 4500 ft at 500 ft a minute.
    #[test]
    fn an_altitude_that_is_passed_where_a_leg_begins_is_told() {
        let to = |altitude_ft| TrueAltitude::new(feet(altitude_ft)).unwrap();
        let (north, fix) = (TrueBearing::from_degrees(0.0), Position::derived(60.5, -10.0));
        let length = HoldLength::Time(TimedLeg::OutboundFromLevel, HoldTime::new(seconds(60.0)).unwrap());
        let hold = Hold { fix, inbound: north, side: HoldingSide::Right, length };
        let legs = |altitude_ft| {
            [
                Leg::CourseToAltitude(north, to(altitude_ft)),
                Leg::FixToAltitude(fix, north, to(altitude_ft)),
                Leg::HeadingToAltitude(north, to(altitude_ft)),
                Leg::HoldToAltitude(hold, to(altitude_ft)),
            ]
        };
        for (climb_fpm, passed_ft, ahead_ft) in
            [(500.0, 5_000.0, 9_500.0), (-500.0, 3_000.0, -1_500.0), (500.0, 3_000.0, 9_000.0)]
        {
            for (passed, ahead) in legs(passed_ft).into_iter().zip(legs(ahead_ft)) {
                let found = climbed(passed, climb_fpm);
                let [check @ PathCheck::AltitudePassed { begun, end }] = found[..] else {
                    panic!("{found:?}")
                };
                let begun_ft = begun.value().get::<foot>();
                assert!((begun_ft - (4_000.0 + 9.03 * climb_fpm)).abs() < 20.0, "{begun_ft}");
                assert_eq!((end, check.kind()), (to(passed_ft), PathCheckKind::AltitudePassed));
                let told = format!(
                    "its altitude of {passed_ft} ft is passed already where it begins, at {begun_ft:.0} ft"
                );
                assert_eq!(check.sentence(""), told);
                assert_eq!(climbed(ahead, climb_fpm), []);
            }
        }
        // Reached there and then, or with no climb at all, it is not passed.
        let Some(PathCheck::AltitudePassed { begun, .. }) = climbed(legs(5_000.0)[0], 500.0).pop() else {
            panic!()
        };
        let exactly = Leg::CourseToAltitude(north, begun);
        assert_eq!(climbed(exactly, 500.0), []);
        assert_eq!(climbed(legs(4_000.0)[0], 0.0), []);
    }

    #[test]
    fn far_off_it_is_out_of_reach_however_high() {
        let found = checked(east(), 45_000.0, &[station(-2.0)]);
        let PathCheck::NotReceived { distance, limit, .. } = found[2][0] else { panic!("{found:?}") };
        assert_eq!(limit, Receiver::default().reach);
        assert!(distance > limit);
    }

    #[test]
    fn a_leg_ends_by_a_station_that_is_received_there() {
        let bearing = TrueBearing::from_degrees(90.0);
        let dme = |longitude, read_nm| {
            Leg::CourseToDme(bearing, station(longitude), SlantRange::new(nautical_miles(read_nm)).unwrap())
        };
        let ends = |leg, altitude_ft, known: &[Station]| {
            let found = checked(leg, altitude_ft, known);
            let ended = |check: &&PathCheck| matches!(check, PathCheck::NotReceived { turn: None, .. });
            let told = found[2].iter().find(ended).copied();
            told.map(|check| (check.station(), check.sentence("FAR")))
        };
        let (known, told) = ends(dme(-7.0, 70.0), 2_000.0, &[]).unwrap();
        assert_eq!(known, None);
        assert!(told.starts_with("the leg ends 70.0 NM from its station, which is received to 5"), "{told}");
        let (known, told) = ends(dme(-7.0, 70.0), 2_000.0, &[station(-9.5), station(-7.0)]).unwrap();
        assert_eq!(known, Some(1));
        assert!(told.starts_with("the leg ends 70.0 NM from FAR"), "{told}");
        assert_eq!(ends(dme(-7.0, 40.0), 2_000.0, &[]), None);
        assert_eq!(ends(dme(-7.0, 70.0), 5_000.0, &[]), None);
    }
}
