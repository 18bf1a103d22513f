//! The brief of path-and-terminator legs in plain numbers, bound by hand: legs in, what is flown on each out.

use super::legs::{
    ConditionsInput, LegInput, SegmentOutput, fly_legs, fly_legs_aloft, segment_output, typed_legs, variation,
};
use super::station::{SITE, station};
use super::wind_levels::WindLevelInput;
use crate::Error;
use crate::procedure::HoldingSpeedRule;
use crate::procedure::legs::{LegCode, Place};
use crate::route::{
    PathBrief, PathCheck, PathCheckKind, PathLeg, PathStation, PathSurroundings, PathTurn, StationReading,
};
use crate::station::Flag;
use crate::turn::Governor;
use crate::value::units::{degree, foot, knot, nautical_mile, nautical_miles, ratio, second};
use crate::value::{AltimeterSetting, ConeHalfAngle, Declination, IsaDeviation, TrueBearing};

/// A station that is received along a path.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PathStationInput {
    /// Its latitude.
    pub latitude_deg: f64,
    /// Its longitude.
    pub longitude_deg: f64,
    /// Elevation of its antenna above mean sea level.
    pub elevation_ft: f64,
    /// From true north to its own, positive east.
    pub declination_deg: f64,
    /// Half-angle of its cone of confusion from the vertical, above 0 below 90.
    pub cone_half_angle_deg: f64,
}

impl PathStationInput {
    /// A station at sea level without declination, with a cone of 50 degrees.
    pub const fn new(latitude_deg: f64, longitude_deg: f64) -> Self {
        Self {
            latitude_deg,
            longitude_deg,
            elevation_ft: 0.0,
            declination_deg: 0.0,
            cone_half_angle_deg: 50.0,
        }
    }
}

/// What a path is briefed in, beside the stations.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PathSurroundingsInput {
    /// Altimeter setting of the region, reduced to sea level.
    pub altimeter_setting_hpa: f64,
    /// Deviation of the temperature from the standard atmosphere.
    pub isa_deviation_k: f64,
    /// Whose speed limit a racetrack is checked against.
    pub holding_rule: HoldingSpeedRule,
}

impl PathSurroundingsInput {
    /// The standard atmosphere, and the holding speeds of [`HoldingSpeedRule::Icao`].
    pub const USUAL: Self =
        Self { altimeter_setting_hpa: 1013.25, isa_deviation_k: 0.0, holding_rule: HoldingSpeedRule::Icao };
}

/// A leg as it is flown: see [`PathLeg`]. Directions are true where nothing else is said.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PathLegOutput {
    /// Which leg it is.
    pub code: LegCode,
    /// Where the turn onto it begins, or it itself, if it has none: latitude.
    pub start_latitude_deg: f64,
    /// Where it begins: longitude.
    pub start_longitude_deg: f64,
    /// Course where it begins.
    pub start_course_deg: f64,
    /// Altitude where it begins.
    pub start_altitude_ft: f64,
    /// Time at its beginning since the first fix.
    pub start_time_s: f64,
    /// Where it ends, or the turn onto the next leg begins: latitude.
    pub end_latitude_deg: f64,
    /// Where it ends: longitude.
    pub end_longitude_deg: f64,
    /// Course where it ends.
    pub end_course_deg: f64,
    /// Altitude where it ends.
    pub end_altitude_ft: f64,
    /// Time at its end since the first fix.
    pub end_time_s: f64,
    /// Its course where it is first flown straight or round its arc; where it ends, if it is all turn.
    pub course_deg: f64,
    /// The heading that holds that course.
    pub heading_deg: f64,
    /// Heading less course, right positive.
    pub wind_correction_deg: f64,
    /// Speed made good along that course.
    pub groundspeed_kt: f64,
    /// Where the wind it is flown in blows from.
    pub wind_from_deg: f64,
    /// Speed of that wind.
    pub wind_speed_kt: f64,
    /// The wind against that course; a tailwind is negative.
    pub headwind_kt: f64,
    /// The wind from the right of that course; from the left is negative.
    pub crosswind_kt: f64,
    /// Over the ground, with its turns.
    pub distance_nm: f64,
    /// From its start to its end.
    pub time_s: f64,
    /// The shortest straight between its turns, NaN if it is all turn and arc.
    pub shortest_straight_nm: f64,
    /// The greatest bank that keeps to its arc, NaN if it has none.
    pub arc_bank_deg: f64,
    /// Whether that is within the limit of bank; so it is where there is no arc.
    pub keeps_its_arc: bool,
    /// How many turns it has.
    pub turns: usize,
    /// How many checks have found something.
    pub checks: usize,
    /// `course_deg` from magnetic north; NaN without a variation.
    pub magnetic_course_deg: f64,
    /// `heading_deg` from magnetic north; NaN without a variation.
    pub magnetic_heading_deg: f64,
}

/// A turn of a path: see [`PathTurn`]. Directions are true where nothing else is said.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PathTurnOutput {
    /// The leg it leads onto, counted from zero.
    pub leg: usize,
    /// Where the roll into it begins: latitude.
    pub begin_latitude_deg: f64,
    /// Where it begins: longitude.
    pub begin_longitude_deg: f64,
    /// Course where it begins.
    pub begin_course_deg: f64,
    /// Altitude where it begins.
    pub begin_altitude_ft: f64,
    /// Time at its beginning since the first fix.
    pub begin_after_start_s: f64,
    /// Where the wings are level on the new course: latitude.
    pub roll_out_latitude_deg: f64,
    /// Where it rolls out: longitude.
    pub roll_out_longitude_deg: f64,
    /// Course where it rolls out.
    pub roll_out_course_deg: f64,
    /// Altitude where it rolls out.
    pub roll_out_altitude_ft: f64,
    /// Time at its end since the first fix.
    pub roll_out_after_start_s: f64,
    /// Change of heading, right positive.
    pub heading_change_deg: f64,
    /// Its greatest bank.
    pub bank_deg: f64,
    /// What sets that bank.
    pub governed_by: Governor,
    /// Radius through the air at that bank; infinite without a turn.
    pub radius_nm: f64,
    /// From wings level to wings level.
    pub time_s: f64,
    /// `begin_course_deg` from magnetic north; NaN without a variation.
    pub begin_magnetic_course_deg: f64,
    /// `roll_out_course_deg` from magnetic north; NaN without a variation.
    pub roll_out_magnetic_course_deg: f64,
}

/// What a station is seen as where a turn begins or rolls out: see [`StationReading`].
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PathReadingOutput {
    /// The turn, counted from zero along the path.
    pub turn: usize,
    /// Where it rolls out, or else where it begins.
    pub at_roll_out: bool,
    /// The station, counted from zero.
    pub station: usize,
    /// The DME reading.
    pub dme_nm: f64,
    /// The radial, in the station's north; NaN overhead, within a metre on the ground.
    pub radial_deg: f64,
    /// Whether they can be used.
    pub flag: Flag,
}

/// What a check of a leg has found: see [`PathCheck`].
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PathCheckOutput {
    /// The leg, counted from zero.
    pub leg: usize,
    /// What is found.
    pub kind: PathCheckKind,
    /// The turn that begins in a cone, or begins or rolls out where a station is not received, counted from zero along the path.
    pub turn: Option<usize>,
    /// The station of that cone, or that is not received, counted from zero; none for a leg's own that is not among them.
    pub station: Option<usize>,
    /// What it takes: degrees of bank, knots of calibrated airspeed, Mach number, nautical miles from a station that is not received, or
    /// the altitude in feet at which a leg begins past its end; NaN for a cone.
    pub value: f64,
    /// The most there is or is allowed of that, or the altitude that ends the leg; NaN for a cone.
    pub limit: f64,
    /// Pressure altitude where a racetrack ends that is flown too fast, else NaN.
    pub pressure_altitude_ft: f64,
}

/// A path that has been briefed, to be asked for its legs, turns, readings and checks: what [`brief_path`] gives.
#[derive(Debug, Clone, PartialEq)]
pub struct BriefedPath {
    brief: PathBrief,
    stations: Vec<PathStation>,
    checks: Vec<Vec<PathCheck>>,
    variation: Option<Declination>,
}

/// Briefs a sequence of path-and-terminator legs: what is flown on each, where its turns begin and end, what stations are seen as there, and what a
/// crew should know before flying it.
///
/// With `levels` the legs are flown through those winds and the winds of the conditions are not looked at ([`fly_legs_aloft`]).
///
/// # Errors
/// As [`fly_legs`] and [`super::check_wind_levels`]; a value of a station or of the surroundings outside its range: the error says which. A racetrack that ends
/// outside the atmosphere, where no speed can be checked.
///
/// # Source
/// As [`PathBrief`].
///
/// # Example
/// ```
/// use lubberline::plain::{ConditionsInput, LegCode, LegInput, PathStationInput, PathSurroundingsInput, brief_path};
/// let fix = |code, latitude_deg, longitude_deg| LegInput {
///     fix_latitude_deg: latitude_deg,
///     fix_longitude_deg: longitude_deg,
///     ..LegInput::new(code)
/// };
/// let legs = [
///     fix(LegCode::InitialFix, 60.0, -10.0),
///     fix(LegCode::TrackToFix, 60.5, -10.0),
///     fix(LegCode::TrackToFix, 60.5, -9.0),
/// ];
/// let stations = [PathStationInput::new(60.5, -10.0)];
/// let conditions = ConditionsInput::new(250.0, 9_000.0);
/// let path = brief_path(&legs, &conditions, None, &stations, &PathSurroundingsInput::USUAL)?;
/// let (leg, turn, reading) = (path.legs()[2], path.turns()[0], path.readings()[0]);
/// assert_eq!(format!("{:.0} degrees, {:.1} NM in {:.0} s", leg.course_deg, leg.distance_nm, leg.time_s), "90 degrees, 31.0 NM in 446 s");
/// assert_eq!(format!("begin at {:.1} DME, turn {:.0} s", reading.dme_nm, turn.time_s), "begin at 2.6 DME, turn 49 s");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn brief_path(
    legs: &[LegInput],
    conditions: &ConditionsInput,
    levels: Option<&[WindLevelInput]>,
    stations: &[PathStationInput],
    surroundings: &PathSurroundingsInput,
) -> Result<BriefedPath, Error> {
    let typed_stations = (1..)
        .zip(stations)
        .map(|(number, given)| typed_station(given).map_err(|error| error.at("station", number)));
    let surroundings = PathSurroundings {
        stations: typed_stations.collect::<Result<_, _>>()?,
        setting: AltimeterSetting::named("altimeter_setting_hpa", surroundings.altimeter_setting_hpa)?,
        deviation: IsaDeviation::named("isa_deviation_k", surroundings.isa_deviation_k)?,
        holding_rule: surroundings.holding_rule,
    };
    let path = match levels {
        Some(levels) => fly_legs_aloft(legs, conditions, levels)?,
        None => fly_legs(legs, conditions)?,
    };
    let variation = variation(conditions)?;
    let brief = PathBrief::of_path(&typed_legs(legs, variation)?, path)?;
    let checks = (0..brief.legs.len()).map(|leg| brief.checks(leg, &surroundings));
    let checks = checks.collect::<Result<_, _>>()?;
    Ok(BriefedPath { brief, stations: surroundings.stations, checks, variation })
}

impl BriefedPath {
    /// Its legs, as many as were given.
    pub fn legs(&self) -> Vec<PathLegOutput> {
        let legs = self.brief.legs.iter().zip(&self.checks);
        legs.map(|(leg, checks)| self.leg_output(leg, checks.len())).collect()
    }

    /// Its turns, in their order along the path.
    pub fn turns(&self) -> Vec<PathTurnOutput> {
        self.each_turn().map(|(leg, turn)| self.turn_output(leg, turn)).collect()
    }

    /// What the stations are seen as where each turn begins, and where it rolls out: of each turn every station's at its beginning, then every
    /// station's at its end.
    pub fn readings(&self) -> Vec<PathReadingOutput> {
        let mut readings = Vec::new();
        for (number, (_, turn)) in self.each_turn().enumerate() {
            for (at_roll_out, place) in [(false, &turn.begin), (true, &turn.roll_out)] {
                let seen = self.stations.iter().map(|station| station.seen_from(place)).enumerate();
                readings.extend(
                    seen.map(|(station, reading)| reading_output(number, at_roll_out, station, &reading)),
                );
            }
        }
        readings
    }

    /// What the checks have found, leg by leg.
    pub fn checks(&self) -> Vec<PathCheckOutput> {
        let mut found = Vec::new();
        let mut turns_before = 0;
        for (leg, (briefed, checks)) in self.brief.legs.iter().zip(&self.checks).enumerate() {
            found.extend(checks.iter().map(|check| check_output(leg, turns_before, check)));
            turns_before += briefed.turns.len();
        }
        found
    }

    /// What the checks have found as sentences, in the order of [`BriefedPath::checks`]; a station without an ident is called by its number.
    pub fn check_sentences(&self, idents: &[String]) -> Vec<String> {
        let sentence = |check: &PathCheck| match check.station() {
            Some(station) => match idents.get(station).filter(|ident| !ident.is_empty()) {
                Some(ident) => check.sentence(ident),
                None => check.sentence(&format!("station {}", station + 1)),
            },
            None => check.sentence(""),
        };
        self.checks.iter().flatten().map(sentence).collect()
    }

    /// The segments of the path over the ground.
    pub fn segments(&self) -> Vec<SegmentOutput> {
        let path = &self.brief.path;
        path.segments.iter().map(|segment| segment_output(path, segment)).collect()
    }

    /// Latitudes and longitudes of points along a segment, no farther apart than a spacing on a straight and another else: see
    /// [`PathBrief::segment_points`].
    pub fn segment_points(&self, segment: usize, straight_nm: f64, bent_nm: f64) -> Vec<(f64, f64)> {
        let (straight, bent) = (nautical_miles(straight_nm), nautical_miles(bent_nm));
        let points = self.brief.segment_points(segment, straight, bent).into_iter();
        points.map(|point| (point.latitude_deg(), point.longitude_deg())).collect()
    }

    /// Distance over the ground.
    pub fn total_distance_nm(&self) -> f64 {
        self.brief.distance().get::<nautical_mile>()
    }

    /// Time from the first fix to the end of the last leg.
    pub fn total_time_s(&self) -> f64 {
        self.brief.time().get::<second>()
    }

    fn each_turn(&self) -> impl Iterator<Item = (usize, &PathTurn)> {
        let legs = self.brief.legs.iter().enumerate();
        legs.flat_map(|(leg, briefed)| briefed.turns.iter().map(move |turn| (leg, turn)))
    }

    fn leg_output(&self, leg: &PathLeg, checks: usize) -> PathLegOutput {
        let [start_latitude_deg, start_longitude_deg, start_course_deg, start_altitude_ft, start_time_s] =
            numbers(&leg.start);
        let [end_latitude_deg, end_longitude_deg, end_course_deg, end_altitude_ft, end_time_s] =
            numbers(&leg.end);
        PathLegOutput {
            code: leg.code,
            start_latitude_deg,
            start_longitude_deg,
            start_course_deg,
            start_altitude_ft,
            start_time_s,
            end_latitude_deg,
            end_longitude_deg,
            end_course_deg,
            end_altitude_ft,
            end_time_s,
            course_deg: leg.course.angle().get::<degree>(),
            heading_deg: leg.crab.heading.angle().get::<degree>(),
            wind_correction_deg: leg.crab.wind_correction.get::<degree>(),
            groundspeed_kt: leg.crab.groundspeed.value().get::<knot>(),
            wind_from_deg: leg.flown_in.from.angle().get::<degree>(),
            wind_speed_kt: leg.flown_in.speed.value().get::<knot>(),
            headwind_kt: leg.wind.headwind.value().get::<knot>(),
            crosswind_kt: leg.wind.crosswind.value().get::<knot>(),
            distance_nm: leg.distance.get::<nautical_mile>(),
            time_s: leg.time.get::<second>(),
            shortest_straight_nm: leg
                .shortest_straight
                .map_or(f64::NAN, |length| length.get::<nautical_mile>()),
            arc_bank_deg: leg.arc_bank.map_or(f64::NAN, |bank| bank.get::<degree>()),
            keeps_its_arc: leg.keeps_its_arc(&self.brief.path.conditions),
            turns: leg.turns.len(),
            checks,
            magnetic_course_deg: self.magnetic_deg(leg.course),
            magnetic_heading_deg: self.magnetic_deg(leg.crab.heading),
        }
    }

    fn turn_output(&self, leg: usize, turn: &PathTurn) -> PathTurnOutput {
        let [
            begin_latitude_deg,
            begin_longitude_deg,
            begin_course_deg,
            begin_altitude_ft,
            begin_after_start_s,
        ] = numbers(&turn.begin);
        let [
            roll_out_latitude_deg,
            roll_out_longitude_deg,
            roll_out_course_deg,
            roll_out_altitude_ft,
            roll_out_after_start_s,
        ] = numbers(&turn.roll_out);
        PathTurnOutput {
            leg,
            begin_latitude_deg,
            begin_longitude_deg,
            begin_course_deg,
            begin_altitude_ft,
            begin_after_start_s,
            roll_out_latitude_deg,
            roll_out_longitude_deg,
            roll_out_course_deg,
            roll_out_altitude_ft,
            roll_out_after_start_s,
            heading_change_deg: turn.turn.heading_change().get::<degree>(),
            bank_deg: turn.turn.bank().get::<degree>(),
            governed_by: turn.turn.governor(),
            radius_nm: turn.turn.radius().get::<nautical_mile>(),
            time_s: turn.turn.duration().get::<second>(),
            begin_magnetic_course_deg: self.magnetic_deg(turn.begin.course),
            roll_out_magnetic_course_deg: self.magnetic_deg(turn.roll_out.course),
        }
    }

    fn magnetic_deg(&self, direction: TrueBearing) -> f64 {
        self.variation.map_or(f64::NAN, |variation| direction.to_magnetic(variation).angle().get::<degree>())
    }
}

fn typed_station(input: &PathStationInput) -> Result<PathStation, Error> {
    Ok(PathStation {
        station: station(
            SITE,
            [input.latitude_deg, input.longitude_deg, input.elevation_ft, input.declination_deg],
        )?,
        cone_half_angle: ConeHalfAngle::named("cone_half_angle_deg", input.cone_half_angle_deg)?,
    })
}

/// Latitude, longitude, course, altitude and time of a place.
fn numbers(place: &Place) -> [f64; 5] {
    [
        place.position.latitude_deg(),
        place.position.longitude_deg(),
        place.course.angle().get::<degree>(),
        place.altitude.value().get::<foot>(),
        place.time.get::<second>(),
    ]
}

fn reading_output(
    turn: usize,
    at_roll_out: bool,
    station: usize,
    reading: &StationReading,
) -> PathReadingOutput {
    PathReadingOutput {
        turn,
        at_roll_out,
        station,
        dme_nm: reading.dme.value().get::<nautical_mile>(),
        radial_deg: reading.radial.map_or(f64::NAN, |radial| radial.angle().get::<degree>()),
        flag: reading.flag,
    }
}

fn check_output(leg: usize, turns_before: usize, check: &PathCheck) -> PathCheckOutput {
    let none = PathCheckOutput {
        leg,
        kind: check.kind(),
        turn: None,
        station: None,
        value: f64::NAN,
        limit: f64::NAN,
        pressure_altitude_ft: f64::NAN,
    };
    match *check {
        PathCheck::ArcBank { needed, limit } => {
            PathCheckOutput { value: needed.get::<degree>(), limit: limit.get::<degree>(), ..none }
        }
        PathCheck::Cone { turn, station } => {
            PathCheckOutput { turn: Some(turns_before + turn), station: Some(station), ..none }
        }
        PathCheck::NotReceived { turn, station, distance, limit, .. } => PathCheckOutput {
            turn: turn.map(|turn| turns_before + turn),
            station,
            value: distance.value().get::<nautical_mile>(),
            limit: limit.value().get::<nautical_mile>(),
            ..none
        },
        PathCheck::AltitudePassed { begun, end } => {
            PathCheckOutput { value: begun.value().get::<foot>(), limit: end.value().get::<foot>(), ..none }
        }
        PathCheck::HoldingAirspeed { calibrated, limit, altitude, .. } => PathCheckOutput {
            value: calibrated.value().get::<knot>(),
            limit: limit.value().get::<knot>(),
            pressure_altitude_ft: altitude.value().get::<foot>(),
            ..none
        },
        PathCheck::HoldingMach { mach, limit, altitude, .. } => PathCheckOutput {
            value: mach.value().get::<ratio>(),
            limit: limit.value().get::<ratio>(),
            pressure_altitude_ft: altitude.value().get::<foot>(),
            ..none
        },
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// An approach with the courses that a chart would give, 6.5 degrees of variation west of true: a heading to a course, a radial, a hold.
    fn approach(variation_deg: f64) -> (Vec<LegInput>, ConditionsInput) {
        let to = |code, course_deg: f64, latitude_deg, longitude_deg| LegInput {
            fix_latitude_deg: latitude_deg,
            fix_longitude_deg: longitude_deg,
            course_deg: if variation_deg.is_nan() { course_deg } else { course_deg - variation_deg },
            center_latitude_deg: 60.2,
            center_longitude_deg: -9.7,
            center_declination_deg: -4.0,
            radial_deg: 350.0,
            ..LegInput::new(code)
        };
        let legs = vec![
            to(LegCode::InitialFix, f64::NAN, 60.0, -10.0),
            to(LegCode::CourseToRadial, 5.0, f64::NAN, f64::NAN),
            to(LegCode::HeadingToIntercept, 20.0, f64::NAN, f64::NAN),
            to(LegCode::CourseToFix, 95.0, 60.8, -8.6),
            to(LegCode::HoldToFix, 130.0, 60.8, -8.6),
        ];
        let conditions = ConditionsInput {
            wind_from_deg: 280.0,
            wind_speed_kt: 30.0,
            magnetic_variation_deg: variation_deg,
            ..ConditionsInput::new(220.0, 4_000.0)
        };
        (legs, conditions)
    }

    #[test]
    fn magnetic_courses_are_flown_as_the_true_ones_they_stand_for_and_told_beside_them() {
        let levels = [(0.0, 250.0, 10.0), (6_000.0, 280.0, 40.0)].map(
            |(pressure_altitude_ft, wind_from_deg, wind_speed_kt)| WindLevelInput {
                pressure_altitude_ft,
                wind_from_deg,
                wind_speed_kt,
            },
        );
        let stations = [PathStationInput { declination_deg: -4.0, ..PathStationInput::new(60.2, -9.7) }];
        for (variation_deg, levels) in [(-6.5, None), (12.0, None), (0.0, None), (-6.5, Some(&levels[..]))] {
            let brief = |variation_deg: f64| {
                let (legs, conditions) = approach(variation_deg);
                brief_path(&legs, &conditions, levels, &stations, &PathSurroundingsInput::USUAL).unwrap()
            };
            let (magnetic, straight) = (brief(variation_deg), brief(f64::NAN));
            assert_eq!(magnetic.segments(), straight.segments());
            assert_eq!(magnetic.readings(), straight.readings());
            // To rounding: the angles are kept in radians.
            let is_less = |magnetic_deg: f64, true_deg: f64| {
                (0.0..360.0).contains(&magnetic_deg)
                    && (magnetic_deg - (true_deg - variation_deg).rem_euclid(360.0)).abs() < 1e-12
            };
            let (mut north, mut count) = (0, 0);
            for (leg, same) in magnetic.legs().iter().zip(straight.legs()) {
                assert_eq!((leg.course_deg, leg.heading_deg), (same.course_deg, same.heading_deg));
                assert!(is_less(leg.magnetic_course_deg, leg.course_deg), "{leg:?}");
                assert!(is_less(leg.magnetic_heading_deg, leg.heading_deg), "{leg:?}");
                assert!(same.magnetic_course_deg.is_nan() && same.magnetic_heading_deg.is_nan());
                north += usize::from((leg.course_deg < 180.0) != (leg.magnetic_course_deg < 180.0));
            }
            for (turn, same) in magnetic.turns().iter().zip(straight.turns()) {
                assert!(is_less(turn.begin_magnetic_course_deg, turn.begin_course_deg), "{turn:?}");
                assert!(is_less(turn.roll_out_magnetic_course_deg, turn.roll_out_course_deg), "{turn:?}");
                assert!(
                    same.begin_magnetic_course_deg.is_nan() && same.roll_out_magnetic_course_deg.is_nan()
                );
                count += 1;
            }
            assert!(count > 3 && (variation_deg < 12.0 || north > 0), "{count} turns, {north} past north");
        }
    }
}
