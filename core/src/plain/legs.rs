//! Path-and-terminator legs in plain numbers, bound by hand: a list of legs in, a list of segments out.

use super::lead::wind;
use super::outputs;
use super::station::station;
use super::turn::turn_limits;
use super::wind_levels::{WindLevelInput, winds_aloft};
use crate::Error;
use crate::air::standard_pressure_altitude;
use crate::lead::ArcSense;
pub use crate::procedure::LegCode;
use crate::procedure::legs::{
    Conditions, Fix, GroundPath, Hold, HoldLength, Leg, Passage, Place, ReversalForm, Segment,
};
use crate::procedure::{HoldingSide, TimedLeg};
use crate::value::units::{
    degree, degrees, feet_per_minute, foot, knot, nautical_mile, nautical_miles, second,
};
use crate::value::{
    Bearing, Declination, GroundDistance, HoldTime, InterceptAngle, Latitude, Longitude, MagneticBearing,
    Position, PressureAltitude, Quantity, Radial, SlantRange, TrueAirspeed, TrueAltitude, TrueBearing,
    TrueNorth, WindSpeed,
};
use crate::wind::{Wind, WindLevel, WindsAloft};

const CENTER: [&str; 4] =
    ["center_latitude_deg", "center_longitude_deg", "center_elevation_ft", "center_declination_deg"];

outputs! {
    /// What the two letters of a leg say: what [`leg_meaning`] gives.
    LegMeaning {
        /// How its path is flown: a code of [`crate::procedure::legs::LegPath`].
        path,
        /// What ends it: a code of [`crate::procedure::legs::LegEnd`].
        end,
    }
}

/// What the two letters of a leg say: how the path is flown, and what ends it.
///
/// Most codes are one letter for the path and one for the end; IF, AF, RF and PI name their path by both.
///
/// # Arguments
/// - `leg`: the leg's code
///
/// # Accuracy
/// Exact.
///
/// # Degenerate cases
/// None.
///
/// # Errors
/// A code that is none.
///
/// # Source
/// ARINC 424 path-and-terminator concept, as listed in AIXM 5.1, CodeSegmentPathBaseType; FAA Aeronautical Information Manual 1-2-1, edition
/// not shown in the copy read.
///
/// # Example
/// ```
/// # use lubberline::plain::leg_meaning;
/// # use lubberline::procedure::LegCode;
/// assert_eq!(format!("{:.0}", leg_meaning(LegCode::CourseToDme)?.path), "2");
/// assert_eq!(format!("{:.0}", leg_meaning(LegCode::CourseToDme)?.end), "3");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn leg_meaning(leg: LegCode) -> Result<LegMeaning, Error> {
    Ok(LegMeaning { path: f64::from(leg.path().code()), end: f64::from(leg.end().code()) })
}

/// One leg. Which numbers it needs follows from its code; those it does not need may be NaN.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LegInput {
    /// Which leg it is.
    pub code: LegCode,
    /// The fix: latitude. All but C and V legs.
    pub fix_latitude_deg: f64,
    /// The fix: longitude.
    pub fix_longitude_deg: f64,
    /// How the fix that ends the leg is passed.
    pub passage: Passage,
    /// Course or heading flown, true or, with a magnetic variation ([`ConditionsInput`]), magnetic; of a racetrack the inbound, of a
    /// procedure turn the outbound course.
    pub course_deg: f64,
    /// Altitude that ends it: FA, CA, VA, HA.
    pub altitude_ft: f64,
    /// Distance: of FC along the track, of FD, CD, VD the DME reading, of PI before turning off.
    pub distance_nm: f64,
    /// The station of FD, CD, CR, VD, VR, AF and of a racetrack by DME, or the centre of RF: latitude.
    pub center_latitude_deg: f64,
    /// The station or centre: longitude.
    pub center_longitude_deg: f64,
    /// The station's elevation.
    pub center_elevation_ft: f64,
    /// The station's declination.
    pub center_declination_deg: f64,
    /// The radial of CR and VR, from the station's north.
    pub radial_deg: f64,
    /// Time of a racetrack's timed leg.
    pub outbound_time_s: f64,
    /// Whether an arc goes clockwise, a racetrack turns right, a procedure turn first turns right.
    pub to_right: bool,
    /// The leg of a racetrack that is timed, or whose length is given, and where its clock starts.
    pub timed: TimedLeg,
    /// Which procedure turn a PI is.
    pub reversal: ReversalForm,
    /// Length of a racetrack's leg over the ground; NaN where it is given by time or by DME.
    pub hold_distance_nm: f64,
    /// DME reading of the station at which a racetrack's turn inbound begins; NaN where there is none.
    pub hold_dme_nm: f64,
    /// Time of a 45/180 procedure turn from the start of its first turn to that of its second.
    pub off_time_s: f64,
}

impl LegInput {
    /// A leg of which nothing is known but its code: numbers NaN, the station at sea level without declination, flown by,
    /// to the right, a minute outbound from wings level, a 45/180 procedure turn with a minute off.
    pub const fn new(code: LegCode) -> Self {
        Self {
            code,
            fix_latitude_deg: f64::NAN,
            fix_longitude_deg: f64::NAN,
            passage: Passage::FlyBy,
            course_deg: f64::NAN,
            altitude_ft: f64::NAN,
            distance_nm: f64::NAN,
            center_latitude_deg: f64::NAN,
            center_longitude_deg: f64::NAN,
            center_elevation_ft: 0.0,
            center_declination_deg: 0.0,
            radial_deg: f64::NAN,
            outbound_time_s: 60.0,
            to_right: true,
            timed: TimedLeg::OutboundFromLevel,
            reversal: ReversalForm::Off45,
            hold_distance_nm: f64::NAN,
            hold_dme_nm: f64::NAN,
            off_time_s: 60.0,
        }
    }
}

/// What a sequence of legs is flown with.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ConditionsInput {
    /// True airspeed, above 0 to 5000.
    pub true_airspeed_kt: f64,
    /// Where the wind blows from, true.
    pub wind_from_deg: f64,
    /// Speed of the wind, 0 to 1000.
    pub wind_speed_kt: f64,
    /// Greatest bank, above 0 below 90.
    pub bank_limit_deg: f64,
    /// Greatest rate of turn, above 0.
    pub turn_rate_limit_deg_per_s: f64,
    /// Rate of roll, above 0.
    pub roll_rate_deg_per_s: f64,
    /// Altitude at the first fix.
    pub altitude_ft: f64,
    /// Rate of climb, negative to descend, -30 000 to 30 000.
    pub climb_fpm: f64,
    /// The angle at which a course is intercepted from beside it, above 0 to 90.
    pub intercept_angle_deg: f64,
    /// How far a leg is drawn that is ended by hand.
    pub manual_distance_nm: f64,
    /// Pressure altitude of that wind, where another one is given above it; NaN for one wind at every altitude.
    pub wind_altitude_ft: f64,
    /// Pressure altitude of the upper wind, or NaN.
    pub upper_wind_altitude_ft: f64,
    /// Where the upper wind blows from, true, or NaN.
    pub upper_wind_from_deg: f64,
    /// Speed of the upper wind, or NaN.
    pub upper_wind_speed_kt: f64,
    /// Magnetic variation that the legs' courses and headings are given with, positive east, -180 to 180: they are magnetic then. NaN
    /// where they are true. Winds are true all the same, and radials counted from their station's north.
    pub magnetic_variation_deg: f64,
}

impl ConditionsInput {
    /// Calm air, level flight at an altitude, 25 degrees of bank, 3 degrees per second, a roll of 5, an intercept of 30 degrees,
    /// ten miles for what is ended by hand, courses that are true.
    pub const fn new(true_airspeed_kt: f64, altitude_ft: f64) -> Self {
        Self {
            true_airspeed_kt,
            wind_from_deg: 0.0,
            wind_speed_kt: 0.0,
            bank_limit_deg: 25.0,
            turn_rate_limit_deg_per_s: 3.0,
            roll_rate_deg_per_s: 5.0,
            altitude_ft,
            climb_fpm: 0.0,
            intercept_angle_deg: 30.0,
            manual_distance_nm: 10.0,
            wind_altitude_ft: f64::NAN,
            upper_wind_altitude_ft: f64::NAN,
            upper_wind_from_deg: f64::NAN,
            upper_wind_speed_kt: f64::NAN,
            magnetic_variation_deg: f64::NAN,
        }
    }
}

/// A segment of the ground path. Directions are true.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SegmentOutput {
    /// The leg it belongs to, counted from zero; a turn belongs to the leg it leads onto.
    pub leg: usize,
    /// 0 a straight, 1 a turn, 2 an arc: the codes of [`crate::procedure::legs::SegmentKind`].
    pub kind: i32,
    /// Where it begins: latitude.
    pub start_latitude_deg: f64,
    /// Where it begins: longitude.
    pub start_longitude_deg: f64,
    /// True course where it begins.
    pub start_course_deg: f64,
    /// Where it ends: latitude.
    pub end_latitude_deg: f64,
    /// Where it ends: longitude.
    pub end_longitude_deg: f64,
    /// True course where it ends.
    pub end_course_deg: f64,
    /// Altitude where it ends.
    pub end_altitude_ft: f64,
    /// Length over the ground.
    pub length_nm: f64,
    /// How long it takes.
    pub duration_s: f64,
    /// Time at its end since the first fix.
    pub end_time_s: f64,
    /// True heading where it begins.
    pub start_heading_deg: f64,
    /// Groundspeed where it begins.
    pub start_groundspeed_kt: f64,
    /// True heading where it ends.
    pub end_heading_deg: f64,
    /// Groundspeed where it ends.
    pub end_groundspeed_kt: f64,
    /// The greatest bank of a turn, or what keeps to an arc; 0 along a straight.
    pub bank_deg: f64,
    /// Change of heading of a turn, right positive; 0 else.
    pub heading_change_deg: f64,
}

/// Flies a sequence of legs.
///
/// With an upper wind each leg is flown in the wind at the altitude where it begins ([`GroundPath::fly_aloft`]). With a magnetic variation the
/// legs' courses and headings are magnetic: true is magnetic plus variation, positive east.
///
/// # Errors
/// A value outside its range or not a number where a leg needs it, or a leg that cannot be flown: the error says which leg, and why.
///
/// # Source
/// As [`crate::procedure::legs`].
///
/// # Example
/// ```
/// use lubberline::plain::{ConditionsInput, LegCode, LegInput, fly_legs};
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
/// let path = fly_legs(&legs, &ConditionsInput::new(250.0, 9_000.0))?;
/// assert_eq!(path.segments.len(), 3);
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn fly_legs(legs: &[LegInput], conditions: &ConditionsInput) -> Result<GroundPath, Error> {
    let legs = typed_legs(legs, variation(conditions)?)?;
    let typed = typed_conditions(conditions)?;
    match two_levels(conditions, typed.wind)? {
        Some(winds) => fly_through(&legs, typed, &winds),
        None => GroundPath::fly(&legs, &typed),
    }
}

/// Flies a sequence of legs through winds at any number of levels: each leg in the wind at the altitude where it begins
/// ([`GroundPath::fly_aloft`]). The winds of the conditions are not looked at.
///
/// # Errors
/// As [`fly_legs`] and [`super::check_wind_levels`], whose error names the level.
///
/// # Example
/// ```
/// use lubberline::plain::{ConditionsInput, LegCode, LegInput, WindLevelInput, fly_legs_aloft};
/// use lubberline::value::units::knot;
/// let begin = LegInput { fix_latitude_deg: 60.0, fix_longitude_deg: -10.0, ..LegInput::new(LegCode::InitialFix) };
/// let climb = |altitude_ft| LegInput { course_deg: 90.0, altitude_ft, ..LegInput::new(LegCode::CourseToAltitude) };
/// let legs = [begin, climb(3_000.0), climb(6_000.0), climb(9_000.0)];
/// let level = |pressure_altitude_ft, wind_speed_kt| WindLevelInput { pressure_altitude_ft, wind_from_deg: 270.0, wind_speed_kt };
/// let levels = [level(0.0, 0.0), level(3_000.0, 10.0), level(6_000.0, 30.0)];
/// let conditions = ConditionsInput { climb_fpm: 1_000.0, ..ConditionsInput::new(200.0, 0.0) };
/// let path = fly_legs_aloft(&legs, &conditions, &levels)?;
/// let speed_kt = |leg| path.segments.iter().find(|part| part.leg == leg).map(|part| part.wind.speed.value().get::<knot>().round());
/// assert_eq!([speed_kt(1), speed_kt(2), speed_kt(3)], [Some(0.0), Some(10.0), Some(30.0)]);
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn fly_legs_aloft(
    legs: &[LegInput],
    conditions: &ConditionsInput,
    levels: &[WindLevelInput],
) -> Result<GroundPath, Error> {
    let legs = typed_legs(legs, variation(conditions)?)?;
    let calm = ConditionsInput { wind_from_deg: 0.0, wind_speed_kt: 0.0, ..*conditions };
    fly_through(&legs, typed_conditions(&calm)?, &winds_aloft(levels)?)
}

/// The wind of the conditions is that where the path begins, for what is not flown at all.
fn fly_through(
    legs: &[Leg],
    mut conditions: Conditions,
    winds: &WindsAloft<TrueNorth>,
) -> Result<GroundPath, Error> {
    conditions.wind = winds.at(standard_pressure_altitude(conditions.altitude)?);
    GroundPath::fly_aloft(legs, &conditions, winds)
}

/// The typed legs, their courses magnetic if there is a variation; an error says which.
pub(super) fn typed_legs(legs: &[LegInput], variation: Option<Declination>) -> Result<Vec<Leg>, Error> {
    let typed = |(number, given): (usize, &LegInput)| {
        leg(given, variation).map_err(|error| error.of_leg(number, given.code.word()))
    };
    (1..).zip(legs).map(typed).collect()
}

/// The magnetic variation of the courses, none if they are true.
pub(super) fn variation(input: &ConditionsInput) -> Result<Option<Declination>, Error> {
    if input.magnetic_variation_deg.is_nan() {
        return Ok(None);
    }
    // By its own name: stations have declinations too.
    let given = Quantity::MagneticVariation.check("magnetic_variation_deg", input.magnetic_variation_deg)?;
    Declination::new(degrees(given)).map(Some)
}

/// The winds of the two levels, if an upper one is given.
fn two_levels(
    input: &ConditionsInput,
    lower: Wind<TrueNorth>,
) -> Result<Option<WindsAloft<TrueNorth>>, Error> {
    let upper = [input.upper_wind_altitude_ft, input.upper_wind_from_deg, input.upper_wind_speed_kt];
    if input.wind_altitude_ft.is_nan() && upper.iter().all(|value| value.is_nan()) {
        return Ok(None);
    }
    let lower = WindLevel {
        altitude: PressureAltitude::named("wind_altitude_ft", input.wind_altitude_ft)?,
        wind: lower,
    };
    let upper = WindLevel {
        altitude: PressureAltitude::named("upper_wind_altitude_ft", input.upper_wind_altitude_ft)?,
        wind: Wind {
            from: Bearing::named("upper_wind_from_deg", input.upper_wind_from_deg)?,
            speed: WindSpeed::named("upper_wind_speed_kt", input.upper_wind_speed_kt)?,
        },
    };
    WindsAloft::new(lower, vec![upper]).map(Some)
}

/// A segment of a path in plain numbers.
pub fn segment_output(path: &GroundPath, segment: &Segment) -> SegmentOutput {
    let conditions = &path.conditions;
    // The courses have been flown, so that each can be held.
    let crab = |place: &Place| -> (f64, f64) {
        segment.crab(place, conditions).map_or((f64::NAN, f64::NAN), |crab| {
            (crab.heading.angle().get::<degree>(), crab.groundspeed.value().get::<knot>())
        })
    };
    let (start_heading_deg, start_groundspeed_kt) = crab(&segment.start);
    let (end_heading_deg, end_groundspeed_kt) = crab(&segment.end);
    let turn = segment.turn();
    let arc_bank_deg = || match segment.arc_bank(conditions) {
        Ok(bank) => bank.map_or(0.0, |bank| bank.get::<degree>()),
        Err(_) => f64::NAN,
    };
    SegmentOutput {
        leg: segment.leg,
        kind: segment.kind.code(),
        start_latitude_deg: segment.start.position.latitude_deg(),
        start_longitude_deg: segment.start.position.longitude_deg(),
        start_course_deg: segment.start.course.angle().get::<degree>(),
        end_latitude_deg: segment.end.position.latitude_deg(),
        end_longitude_deg: segment.end.position.longitude_deg(),
        end_course_deg: segment.end.course.angle().get::<degree>(),
        end_altitude_ft: segment.end.altitude.value().get::<foot>(),
        length_nm: segment.length.get::<nautical_mile>(),
        duration_s: segment.duration().get::<second>(),
        end_time_s: segment.end.time.get::<second>(),
        start_heading_deg,
        start_groundspeed_kt,
        end_heading_deg,
        end_groundspeed_kt,
        bank_deg: turn.map_or_else(arc_bank_deg, |turn| turn.bank().get::<degree>()),
        heading_change_deg: turn.map_or(0.0, |turn| turn.heading_change().get::<degree>()),
    }
}

/// Points along a path no farther apart than a spacing, as latitudes and longitudes in degrees.
pub fn path_points(path: &GroundPath, spacing_nm: f64) -> Vec<(f64, f64)> {
    let points = path.points(nautical_miles(spacing_nm));
    points.iter().map(|point| (point.latitude_deg(), point.longitude_deg())).collect()
}

fn typed_conditions(input: &ConditionsInput) -> Result<Conditions, Error> {
    Ok(Conditions {
        true_airspeed: TrueAirspeed::named("true_airspeed_kt", input.true_airspeed_kt)?,
        wind: wind(input.wind_from_deg, input.wind_speed_kt)?,
        limits: turn_limits(
            input.bank_limit_deg,
            input.turn_rate_limit_deg_per_s,
            input.roll_rate_deg_per_s,
        )?,
        altitude: TrueAltitude::named("altitude_ft", input.altitude_ft)?,
        climb: feet_per_minute(Quantity::VerticalSpeed.check("climb_fpm", input.climb_fpm)?),
        intercept: InterceptAngle::named("intercept_angle_deg", input.intercept_angle_deg)?,
        manual_distance: GroundDistance::named("manual_distance_nm", input.manual_distance_nm)?,
    })
}

/// The typed leg, with an error for a number that it needs and that is missing.
fn leg(input: &LegInput, variation: Option<Declination>) -> Result<Leg, Error> {
    let fix = || -> Result<Position, Error> {
        Ok(Position::new(
            Latitude::named("fix_latitude_deg", input.fix_latitude_deg)?,
            Longitude::named("fix_longitude_deg", input.fix_longitude_deg)?,
        ))
    };
    let end = || -> Result<Fix, Error> { Ok(Fix { position: fix()?, passage: input.passage }) };
    let course = || -> Result<TrueBearing, Error> {
        match variation {
            Some(variation) => Ok(MagneticBearing::named("course_deg", input.course_deg)?.to_true(variation)),
            None => Bearing::named("course_deg", input.course_deg),
        }
    };
    let altitude = || TrueAltitude::named("altitude_ft", input.altitude_ft);
    let distance = || GroundDistance::named("distance_nm", input.distance_nm);
    let dme = || SlantRange::named("distance_nm", input.distance_nm);
    let center = || -> Result<Position, Error> {
        Ok(Position::new(
            Latitude::named("center_latitude_deg", input.center_latitude_deg)?,
            Longitude::named("center_longitude_deg", input.center_longitude_deg)?,
        ))
    };
    let station = || {
        let given = [
            input.center_latitude_deg,
            input.center_longitude_deg,
            input.center_elevation_ft,
            input.center_declination_deg,
        ];
        station(CENTER, given)
    };
    let radial = || -> Result<Radial, Error> { Bearing::named("radial_deg", input.radial_deg) };
    let sense = || if input.to_right { ArcSense::Clockwise } else { ArcSense::Counterclockwise };
    let hold = || -> Result<Hold, Error> {
        Ok(Hold {
            fix: fix()?,
            inbound: course()?,
            side: if input.to_right { HoldingSide::Right } else { HoldingSide::Left },
            length: if !input.hold_dme_nm.is_nan() {
                HoldLength::Dme(station()?, SlantRange::named("hold_dme_nm", input.hold_dme_nm)?)
            } else if !input.hold_distance_nm.is_nan() {
                let distance = GroundDistance::named("hold_distance_nm", input.hold_distance_nm)?;
                HoldLength::Distance(input.timed, distance)
            } else {
                HoldLength::Time(input.timed, HoldTime::named("outbound_time_s", input.outbound_time_s)?)
            },
        })
    };
    Ok(match input.code {
        LegCode::InitialFix => Leg::InitialFix(end()?),
        LegCode::TrackToFix => Leg::TrackToFix(end()?),
        LegCode::CourseToFix => Leg::CourseToFix(course()?, end()?),
        LegCode::DirectToFix => Leg::DirectToFix(end()?),
        LegCode::ArcToFix => Leg::ArcToFix { station: center()?, sense: sense(), fix: end()? },
        LegCode::RadiusToFix => Leg::RadiusToFix { center: center()?, sense: sense(), fix: end()? },
        LegCode::FixToAltitude => Leg::FixToAltitude(fix()?, course()?, altitude()?),
        LegCode::FixToDistance => Leg::FixToDistance(fix()?, course()?, distance()?),
        LegCode::FixToDme => Leg::FixToDme(fix()?, course()?, station()?, dme()?),
        LegCode::FixToManual => Leg::FixToManual(fix()?, course()?),
        LegCode::CourseToAltitude => Leg::CourseToAltitude(course()?, altitude()?),
        LegCode::CourseToDme => Leg::CourseToDme(course()?, station()?, dme()?),
        LegCode::CourseToIntercept => Leg::CourseToIntercept(course()?),
        LegCode::CourseToRadial => Leg::CourseToRadial(course()?, station()?, radial()?),
        LegCode::HeadingToAltitude => Leg::HeadingToAltitude(course()?, altitude()?),
        LegCode::HeadingToDme => Leg::HeadingToDme(course()?, station()?, dme()?),
        LegCode::HeadingToIntercept => Leg::HeadingToIntercept(course()?),
        LegCode::HeadingToManual => Leg::HeadingToManual(course()?),
        LegCode::HeadingToRadial => Leg::HeadingToRadial(course()?, station()?, radial()?),
        LegCode::HoldToAltitude => Leg::HoldToAltitude(hold()?, altitude()?),
        LegCode::HoldToFix => Leg::HoldToFix(hold()?),
        LegCode::HoldToManual => Leg::HoldToManual(hold()?),
        LegCode::ProcedureTurn => Leg::ProcedureTurn {
            fix: fix()?,
            outbound: course()?,
            outbound_distance: distance()?,
            first_right: input.to_right,
            form: input.reversal,
            off_time: HoldTime::named("off_time_s", input.off_time_s)?,
        },
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// What any leg needs, on a course.
    fn on_course(code: LegCode, course_deg: f64) -> LegInput {
        LegInput {
            fix_latitude_deg: 60.0,
            fix_longitude_deg: -10.0,
            course_deg,
            altitude_ft: 9000.0,
            distance_nm: 10.0,
            center_latitude_deg: 60.1,
            center_longitude_deg: -10.1,
            radial_deg: 45.0,
            ..LegInput::new(code)
        }
    }

    #[test]
    fn every_code_has_the_letters_of_its_leg() {
        for code in LegCode::ALL {
            assert_eq!(leg(&on_course(*code, 90.0), None).unwrap().code(), *code);
            // Without its numbers it is refused, and the error says which is missing.
            for variation in [None, Some(Declination::ZERO)] {
                let legs = [on_course(*code, 90.0), LegInput::new(*code)];
                let refused = typed_legs(&legs, variation).unwrap_err();
                let (parameter, told) = (refused.parameter().unwrap(), refused.to_string());
                let begins = format!("leg 2 ({}): {parameter} is missing; allowed: ", code.word());
                assert!(told.starts_with(&begins) && !told.contains("NaN"), "{told}");
                assert_eq!((refused.leg(), refused.is_out_of_range()), (Some(2), true));
            }
        }
    }

    /// True is magnetic plus variation, positive east, and only courses and headings are magnetic: of CR and VR not the radial.
    #[test]
    fn a_magnetic_course_is_the_true_one_less_the_variation() {
        let without_course = ["IF", "TF", "DF", "AF", "RF"];
        for code in LegCode::ALL {
            let of = |course_deg: f64, variation_deg: f64| {
                let given = ConditionsInput {
                    magnetic_variation_deg: variation_deg,
                    ..ConditionsInput::new(250.0, 9_000.0)
                };
                leg(&on_course(*code, course_deg), variation(&given).unwrap()).unwrap()
            };
            for (magnetic_deg, variation_deg, true_deg) in [
                (90.0, -6.5, 83.5),
                (3.0, -10.0, 353.0),
                (355.0, 12.0, 7.0),
                (90.0, 0.0, 90.0),
                (0.0, 180.0, 180.0),
                (0.0, -180.0, 180.0),
            ] {
                assert_eq!(of(magnetic_deg, variation_deg), of(true_deg, f64::NAN), "{}", code.word());
            }
            let has_none = without_course.contains(&code.word());
            assert_eq!(of(90.0, -6.5) == of(90.0, f64::NAN), has_none, "{}", code.word());
        }
    }

    #[test]
    fn a_number_that_is_given_is_not_missing() {
        let far = LegInput {
            course_deg: 90.0,
            altitude_ft: f64::INFINITY,
            ..LegInput::new(LegCode::CourseToAltitude)
        };
        let told = typed_legs(&[far], None).unwrap_err().to_string();
        assert!(told.starts_with("leg 1: altitude_ft is inf ft; allowed: "), "{told}");
        let hold = LegInput {
            fix_latitude_deg: 60.0,
            fix_longitude_deg: -10.0,
            course_deg: 90.0,
            ..LegInput::new(LegCode::HoldToFix)
        };
        assert!(typed_legs(&[hold], None).is_ok(), "the other lengths of a racetrack are not missed");
        for (name, without) in [
            ("outbound_time_s", LegInput { outbound_time_s: f64::NAN, ..hold }),
            ("center_latitude_deg", LegInput { hold_dme_nm: 12.0, ..hold }),
        ] {
            let told = typed_legs(&[without], None).unwrap_err().to_string();
            assert!(told.starts_with(&format!("leg 1 (HF): {name} is missing; allowed: ")), "{told}");
        }
    }

    #[test]
    fn a_variation_beyond_half_a_circle_is_refused_by_name() {
        let legs = [on_course(LegCode::FixToManual, 90.0)];
        for variation_deg in [200.0, -180.5, f64::INFINITY] {
            let conditions = ConditionsInput {
                magnetic_variation_deg: variation_deg,
                ..ConditionsInput::new(250.0, 9_000.0)
            };
            let level = WindLevelInput { pressure_altitude_ft: 0.0, wind_from_deg: 0.0, wind_speed_kt: 0.0 };
            let aloft = fly_legs_aloft(&legs, &conditions, &[level]);
            for refused in [fly_legs(&legs, &conditions).unwrap_err(), aloft.unwrap_err()] {
                assert_eq!(refused.parameter(), Some("magnetic_variation_deg"));
                assert_eq!(refused.code(), Quantity::MagneticVariation.code());
                let words = format!(
                    "magnetic_variation_deg is {variation_deg} deg; allowed: from -180.0 to 180.0 deg"
                );
                assert_eq!(refused.to_string(), words);
            }
        }
    }
}
