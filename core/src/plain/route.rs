//! The brief of a route in plain numbers, bound by hand: stations in, legs and turns out.

use super::any_nan;
use super::course_change::{FlyOverOutput, fly_over_output};
use super::flight::{ErrorModelInput, SurenessOutput, sureness_output};
use super::lead::wind;
use super::station::{SITE, station};
use super::turn::turn_limits;
use super::wind_levels::{WindLevelInput, winds_aloft};
use crate::Error;
use crate::lead::TurnSide;
use crate::route::{RouteBrief, RouteError, RouteFix, RouteLeg, RoutePlace, RoutePlan, RouteTurn};
use crate::turn::Governor;
use crate::value::units::{Length, degree, foot, knot, nautical_mile, nautical_miles, ratio, second};
use crate::value::{
    AltimeterSetting, ConeHalfAngle, InterceptAngle, IsaDeviation, Position, PressureAltitude, Quantity,
    TrueAirspeed, TrueNorth,
};
use crate::wind::Wind;

/// In how many parts a turn is drawn.
pub const ROUTE_TURN_PARTS: u32 = 40;

/// A station of a route, which way to turn there, and the wind there and on the leg to it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RouteFixInput<'a> {
    /// The station: latitude.
    pub latitude_deg: f64,
    /// The station: longitude.
    pub longitude_deg: f64,
    /// Elevation of its antenna above mean sea level.
    pub elevation_ft: f64,
    /// From true north to its own, positive east.
    pub declination_deg: f64,
    /// Half-angle of its cone of confusion from the vertical, above 0 below 90.
    pub cone_half_angle_deg: f64,
    /// Where the wind blows from, true; NaN, with the speed, for that of the route.
    pub wind_from_deg: f64,
    /// Speed of the wind, 0 to 1000; NaN, with the direction, for that of the route.
    pub wind_speed_kt: f64,
    /// Winds by level in place of that wind, of which the one at the altitude flown counts; empty for none.
    pub wind_levels: &'a [WindLevelInput],
    /// Which way to turn: -1 left, 0 the short way, 1 right. Nothing is turned at the first station and the last.
    pub turn: i32,
}

impl RouteFixInput<'_> {
    /// A station at sea level without declination, with a cone of 50 degrees, the wind of the route, and the short way to turn.
    pub const fn new(latitude_deg: f64, longitude_deg: f64) -> Self {
        Self {
            latitude_deg,
            longitude_deg,
            elevation_ft: 0.0,
            declination_deg: 0.0,
            cone_half_angle_deg: 50.0,
            wind_from_deg: f64::NAN,
            wind_speed_kt: f64::NAN,
            wind_levels: &[],
            turn: 0,
        }
    }
}

/// What a route is flown with, and the air it lies in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RouteConditionsInput<'a> {
    /// True airspeed, above 0 to 5000.
    pub true_airspeed_kt: f64,
    /// Pressure altitude, held all the way.
    pub pressure_altitude_ft: f64,
    /// Altimeter setting of the region.
    pub altimeter_setting_hpa: f64,
    /// Deviation of the temperature from the standard atmosphere.
    pub isa_deviation_k: f64,
    /// Where the wind blows from, true, at stations without one of their own.
    pub wind_from_deg: f64,
    /// Speed of that wind, 0 to 1000.
    pub wind_speed_kt: f64,
    /// Winds by level in place of that wind, of which the one at the altitude flown counts; empty for none.
    pub wind_levels: &'a [WindLevelInput],
    /// Greatest bank, above 0 below 90.
    pub bank_limit_deg: f64,
    /// Greatest rate of turn, above 0.
    pub turn_rate_limit_deg_per_s: f64,
    /// Rate of roll, above 0, infinite for an instant roll.
    pub roll_rate_deg_per_s: f64,
    /// The angle at which an outbound course would be intercepted after flying over a station, above 0 to 90.
    pub intercept_angle_deg: f64,
}

impl RouteConditionsInput<'_> {
    /// Standard air, calm, 25 degrees of bank, 3 degrees per second, a roll of 5, an intercept of 30 degrees.
    pub const fn new(true_airspeed_kt: f64, pressure_altitude_ft: f64) -> Self {
        Self {
            true_airspeed_kt,
            pressure_altitude_ft,
            altimeter_setting_hpa: 1013.25,
            isa_deviation_k: 0.0,
            wind_from_deg: 0.0,
            wind_speed_kt: 0.0,
            wind_levels: &[],
            bank_limit_deg: 25.0,
            turn_rate_limit_deg_per_s: 3.0,
            roll_rate_deg_per_s: 5.0,
            intercept_angle_deg: 30.0,
        }
    }
}

/// A leg of a route: see [`RouteLeg`]. Radials are in the stations' own north, all else is true.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RouteLegOutput {
    /// From station to station.
    pub length_nm: f64,
    /// Course where it begins.
    pub initial_course_deg: f64,
    /// Course where it ends.
    pub final_course_deg: f64,
    /// The radial of the first station it is flown on, away from it.
    pub radial_from_deg: f64,
    /// The radial of the second station it is flown on, toward it.
    pub radial_to_deg: f64,
    /// Where the wind on it blows from.
    pub wind_from_deg: f64,
    /// Speed of that wind.
    pub wind_speed_kt: f64,
    /// What holds the course half-way.
    pub heading_deg: f64,
    /// Heading less course half-way, right positive.
    pub wind_correction_deg: f64,
    /// Groundspeed half-way.
    pub groundspeed_kt: f64,
    /// What is left between the turns at its ends; negative if they overlap.
    pub straight_nm: f64,
    /// The time for that; NaN if they overlap.
    pub straight_time_s: f64,
    /// The least length that would be enough for the turns at its ends.
    pub least_length_nm: f64,
    /// Whether it is as long as that.
    pub long_enough: bool,
    /// Radio horizon of the first station at this altitude, over a smooth earth.
    pub horizon_from_nm: f64,
    /// Radio horizon of the second station.
    pub horizon_to_nm: f64,
    /// How much of it lies beyond both horizons; 0 if none.
    pub unreceived_nm: f64,
}

/// A turn at a station of a route: see [`RouteTurn`]. Radials are in the station's own north, all else is true.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RouteTurnOutput {
    /// Height above the station.
    pub height_above_station_ft: f64,
    /// Where the wind blows from.
    pub wind_from_deg: f64,
    /// Speed of the wind.
    pub wind_speed_kt: f64,
    /// Course to the station.
    pub inbound_course_deg: f64,
    /// Course from it.
    pub outbound_course_deg: f64,
    /// The change between them, right positive, the short way.
    pub course_change_deg: f64,
    /// The radial it is reached on.
    pub inbound_radial_deg: f64,
    /// The radial it is left on.
    pub outbound_radial_deg: f64,
    /// Heading that holds the inbound course.
    pub heading_before_deg: f64,
    /// Heading that holds the outbound course.
    pub heading_after_deg: f64,
    /// Heading to turn through, right positive, the way that is turned.
    pub heading_change_deg: f64,
    /// Groundspeed on the inbound course.
    pub groundspeed_before_kt: f64,
    /// Groundspeed on the outbound course.
    pub groundspeed_after_kt: f64,
    /// The greatest bank.
    pub bank_deg: f64,
    /// What governs the bank.
    pub governed_by: Governor,
    /// Radius through the air at that bank; infinite if there is no turn.
    pub radius_nm: f64,
    /// The DME reading at which the turn begins.
    pub begin_at_dme_nm: f64,
    /// The radial on which it begins.
    pub begin_on_radial_deg: f64,
    /// The lead: the distance before the station at which it begins; negative past it.
    pub begin_before_fix_nm: f64,
    /// Where it begins: latitude.
    pub begin_latitude_deg: f64,
    /// Where it begins: longitude.
    pub begin_longitude_deg: f64,
    /// What a tenth of a mile on the DME is along the ground there: much, close to overhead; infinite overhead.
    pub ground_per_dme_tenth_nm: f64,
    /// When it begins, after the last roll-out or the start; NaN, like all times after the start, from a leg on that is too short.
    pub begin_after_last_roll_out_s: f64,
    /// When it begins, after the start of the route.
    pub begin_after_start_s: f64,
    /// From its beginning to wings level.
    pub turn_time_s: f64,
    /// Its length over the ground.
    pub turn_length_nm: f64,
    /// When the wings are level again, after the start of the route.
    pub roll_out_after_start_s: f64,
    /// The DME reading there.
    pub roll_out_dme_nm: f64,
    /// The radial there.
    pub roll_out_radial_deg: f64,
    /// How far past the station that is, along the outbound course; negative before it.
    pub roll_out_past_fix_nm: f64,
    /// Where the wings are level again: latitude.
    pub roll_out_latitude_deg: f64,
    /// Where the wings are level again: longitude.
    pub roll_out_longitude_deg: f64,
    /// Least distance from the station over the ground.
    pub closest_approach_nm: f64,
    /// Radius of its cone of confusion at the height.
    pub cone_radius_nm: f64,
    /// The DME reading at the edge of the cone.
    pub cone_edge_dme_nm: f64,
    /// Whether the turn begins inside the cone.
    pub begins_in_cone: bool,
    /// Whether the aircraft enters it at all.
    pub enters_cone: bool,
    /// What flying over the station before turning would cost.
    pub fly_over: FlyOverOutput,
    /// The common mental arithmetic beside it.
    pub by_rule: RuleOfThumbOutput,
}

/// The common mental arithmetic for a turn, and its errors: rule less exact, positive if it begins the turn early.
/// See [`crate::route::RuleOfThumb`].
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RuleOfThumbOutput {
    /// The lead: a third of a mile for each 60 kt, for 90 degrees.
    pub lead_nm: f64,
    /// By how much that is too long.
    pub lead_error_nm: f64,
    /// The same with half a mile for each 10 000 ft above 5 000 ft.
    pub lead_with_height_nm: f64,
    /// By how much that is too long.
    pub lead_with_height_error_nm: f64,
    /// The reading: the lead added to the height in miles.
    pub dme_nm: f64,
    /// By how much that is too much.
    pub dme_error_nm: f64,
}

/// A route that has been briefed, to be asked for its legs and turns: what [`brief_route`] gives.
#[derive(Debug, Clone, PartialEq)]
pub struct BriefedRoute {
    plan: RoutePlan,
    brief: RouteBrief,
}

/// Briefs a route from station to station: its legs, and the turns at the stations between, with the reading at which each begins.
///
/// # Errors
/// A value outside its range or not a number, two stations at one place, a wind that a course cannot be held in, a reversal, a turn
/// below the station: the error says at which station or on which leg.
///
/// # Source
/// As [`RouteBrief`].
///
/// # Example
/// ```
/// use lubberline::plain::{RouteConditionsInput, RouteFixInput, brief_route};
/// let fixes = [
///     RouteFixInput::new(61.82, -14.4),
///     RouteFixInput { elevation_ft: 420.0, declination_deg: -6.0, ..RouteFixInput::new(61.25, -11.5) },
///     RouteFixInput::new(59.93, -10.9),
/// ];
/// let conditions = RouteConditionsInput {
///     wind_from_deg: 250.0,
///     wind_speed_kt: 60.0,
///     ..RouteConditionsInput::new(440.0, 35_000.0)
/// };
/// let route = brief_route(&fixes, &conditions)?;
/// let turn = route.turns()[0];
/// assert_eq!(format!("{:.1} DME on radial {:.0}", turn.begin_at_dme_nm, turn.begin_on_radial_deg), "6.8 DME on radial 300");
///
/// let error = brief_route(&[fixes[0], RouteFixInput::new(95.0, -11.5)], &conditions).unwrap_err();
/// assert_eq!(error.to_string(), "route fix 2: latitude_deg is 95 deg; allowed: from -90.0 to 90.0 deg");
/// # Ok::<(), lubberline::route::RouteError>(())
/// ```
pub fn brief_route(
    fixes: &[RouteFixInput<'_>],
    conditions: &RouteConditionsInput<'_>,
) -> Result<BriefedRoute, RouteError> {
    let mut plan = without_fixes(conditions).map_err(in_plan)?;
    let altitude = plan.pressure_altitude;
    // Checked even if every station has a wind of its own.
    let everywhere =
        wind_at(altitude, conditions.wind_levels, conditions.wind_from_deg, conditions.wind_speed_kt);
    let everywhere = everywhere.map_err(in_plan)?;
    for (index, fix) in fixes.iter().enumerate() {
        let typed = typed_fix(fix, altitude, everywhere);
        plan.fixes.push(typed.map_err(|error| RouteError { place: RoutePlace::Fix(index), error })?);
    }
    let brief = RouteBrief::of(&plan)?;
    Ok(BriefedRoute { plan, brief })
}

impl BriefedRoute {
    /// Its legs, one fewer than its stations.
    pub fn legs(&self) -> Vec<RouteLegOutput> {
        self.brief.legs.iter().map(leg_output).collect()
    }

    /// The turns at its stations, without the first and the last.
    pub fn turns(&self) -> Vec<RouteTurnOutput> {
        let fixes = self.plan.fixes.iter().skip(1);
        let timed = self.brief.timed_legs();
        let turns = self.brief.turns.iter().zip(fixes).enumerate();
        turns.map(|(index, (turn, fix))| turn_output(turn, fix, index < timed)).collect()
    }

    /// Distance over the ground, with the turns; NaN if a leg is too short for its turns.
    pub fn total_distance_nm(&self) -> f64 {
        where_so(self.is_long_enough(), self.brief.distance().get::<nautical_mile>())
    }

    /// Time from the first station to the last, with the turns; NaN if a leg is too short for its turns.
    pub fn total_time_s(&self) -> f64 {
        where_so(self.is_long_enough(), self.brief.time().get::<second>())
    }

    /// Whether every leg is long enough for the turns at its ends.
    pub fn is_long_enough(&self) -> bool {
        self.brief.timed_legs() == self.brief.legs.len()
    }

    /// Latitudes and longitudes of points along what is flown straight on a leg, no farther apart than a spacing: see [`RouteBrief::leg_points`].
    pub fn leg_points(&self, leg: usize, spacing_nm: f64) -> Vec<(f64, f64)> {
        let points = self.brief.leg_points(&self.plan, leg, nautical_miles(spacing_nm));
        points.into_iter().map(degrees_of).collect()
    }

    /// Latitudes and longitudes of points of a turn at even times, in [`ROUTE_TURN_PARTS`] parts; none where there is no such turn.
    pub fn turn_points(&self, turn: usize) -> Vec<(f64, f64)> {
        let points = self.brief.turn_points(&self.plan, turn, ROUTE_TURN_PARTS);
        points.into_iter().map(degrees_of).collect()
    }

    /// How sure each turn is: see [`super::course_change_sureness`].
    ///
    /// # Errors
    /// As there. A NaN given makes every number of the answers NaN.
    pub fn sureness(
        &self,
        errors: &ErrorModelInput,
        limit_nm: f64,
        confidence: f64,
        trials: u64,
        seed: u64,
    ) -> Result<Vec<SurenessOutput>, Error> {
        if errors.holds_nan() || any_nan(&[limit_nm, confidence]) {
            return Ok(self.brief.turns.iter().map(|_| SurenessOutput::NAN).collect());
        }
        let model = errors.typed()?;
        let limit = nautical_miles(Quantity::CrossTrack.check("limit_nm", limit_nm)?);
        let each = self.brief.turns.iter().map(|turn| {
            let sure = turn.sureness(&model, limit, confidence, trials, seed)?;
            Ok(sureness_output(&sure, &turn.change, turn.height))
        });
        each.collect()
    }
}

fn in_plan(error: Error) -> RouteError {
    RouteError { place: RoutePlace::Plan, error }
}

fn without_fixes(input: &RouteConditionsInput<'_>) -> Result<RoutePlan, Error> {
    Ok(RoutePlan {
        true_airspeed: TrueAirspeed::named("true_airspeed_kt", input.true_airspeed_kt)?,
        pressure_altitude: PressureAltitude::named("pressure_altitude_ft", input.pressure_altitude_ft)?,
        setting: AltimeterSetting::named("altimeter_setting_hpa", input.altimeter_setting_hpa)?,
        deviation: IsaDeviation::named("isa_deviation_k", input.isa_deviation_k)?,
        limits: turn_limits(
            input.bank_limit_deg,
            input.turn_rate_limit_deg_per_s,
            input.roll_rate_deg_per_s,
        )?,
        intercept: InterceptAngle::named("intercept_angle_deg", input.intercept_angle_deg)?,
        fixes: Vec::new(),
    })
}

/// The wind of the levels at an altitude, or the one wind where there are none.
fn wind_at(
    altitude: PressureAltitude,
    levels: &[WindLevelInput],
    wind_from_deg: f64,
    wind_speed_kt: f64,
) -> Result<Wind<TrueNorth>, Error> {
    if levels.is_empty() {
        return wind(wind_from_deg, wind_speed_kt);
    }
    Ok(winds_aloft(levels)?.at(altitude))
}

/// A station with its wind, or that of the route where it has none.
fn typed_fix(
    input: &RouteFixInput<'_>,
    altitude: PressureAltitude,
    everywhere: Wind<TrueNorth>,
) -> Result<RouteFix, Error> {
    let has_none =
        input.wind_levels.is_empty() && input.wind_from_deg.is_nan() && input.wind_speed_kt.is_nan();
    let own = || wind_at(altitude, input.wind_levels, input.wind_from_deg, input.wind_speed_kt);
    Ok(RouteFix {
        station: station(
            SITE,
            [input.latitude_deg, input.longitude_deg, input.elevation_ft, input.declination_deg],
        )?,
        cone_half_angle: ConeHalfAngle::named("cone_half_angle_deg", input.cone_half_angle_deg)?,
        turn: TurnSide::from_code("turn", f64::from(input.turn))?,
        wind: if has_none { everywhere } else { own()? },
    })
}

fn miles(length: Length) -> f64 {
    length.get::<nautical_mile>()
}

fn degrees_of(position: Position) -> (f64, f64) {
    (position.latitude_deg(), position.longitude_deg())
}

/// A number where there is one.
fn where_so(is_so: bool, value: f64) -> f64 {
    if is_so { value } else { f64::NAN }
}

fn leg_output(leg: &RouteLeg) -> RouteLegOutput {
    RouteLegOutput {
        length_nm: miles(leg.length.value()),
        initial_course_deg: leg.initial_course.angle().get::<degree>(),
        final_course_deg: leg.final_course.angle().get::<degree>(),
        radial_from_deg: leg.radial_from.angle().get::<degree>(),
        radial_to_deg: leg.radial_to.angle().get::<degree>(),
        wind_from_deg: leg.wind.from.angle().get::<degree>(),
        wind_speed_kt: leg.wind.speed.value().get::<knot>(),
        heading_deg: leg.crab.heading.angle().get::<degree>(),
        wind_correction_deg: leg.crab.wind_correction.get::<degree>(),
        groundspeed_kt: leg.crab.groundspeed.value().get::<knot>(),
        straight_nm: miles(leg.straight),
        straight_time_s: where_so(leg.is_long_enough(), leg.straight_time.get::<second>()),
        least_length_nm: miles(leg.least_length()),
        long_enough: leg.is_long_enough(),
        horizon_from_nm: miles(leg.horizon_from.value()),
        horizon_to_nm: miles(leg.horizon_to.value()),
        unreceived_nm: miles(leg.unreceived()),
    }
}

/// A turn, with its times if no leg before it is too short.
fn turn_output(turn: &RouteTurn, fix: &RouteFix, timed: bool) -> RouteTurnOutput {
    let (change, flown) = (&turn.change, turn.change.turn());
    let (before, after) = (change.before(), change.after());
    let (begin_latitude_deg, begin_longitude_deg) = degrees_of(turn.begin_place(fix));
    let (roll_out_latitude_deg, roll_out_longitude_deg) = degrees_of(turn.roll_out_place(fix));
    RouteTurnOutput {
        height_above_station_ft: turn.height.value().get::<foot>(),
        wind_from_deg: fix.wind.from.angle().get::<degree>(),
        wind_speed_kt: fix.wind.speed.value().get::<knot>(),
        inbound_course_deg: change.inbound().angle().get::<degree>(),
        outbound_course_deg: change.outbound().angle().get::<degree>(),
        course_change_deg: change.inbound().change_to(change.outbound()).angle().get::<degree>(),
        inbound_radial_deg: turn.inbound_radial.angle().get::<degree>(),
        outbound_radial_deg: turn.outbound_radial.angle().get::<degree>(),
        heading_before_deg: before.heading.angle().get::<degree>(),
        heading_after_deg: after.heading.angle().get::<degree>(),
        heading_change_deg: flown.heading_change().get::<degree>(),
        groundspeed_before_kt: before.groundspeed.value().get::<knot>(),
        groundspeed_after_kt: after.groundspeed.value().get::<knot>(),
        bank_deg: flown.bank().get::<degree>(),
        governed_by: flown.governor(),
        radius_nm: miles(flown.radius()),
        begin_at_dme_nm: miles(turn.begin_reading().value()),
        begin_on_radial_deg: turn.begin_radial.angle().get::<degree>(),
        begin_before_fix_nm: miles(change.lead()),
        begin_latitude_deg,
        begin_longitude_deg,
        ground_per_dme_tenth_nm: 0.1 * turn.ground_per_reading().get::<ratio>(),
        begin_after_last_roll_out_s: where_so(timed, turn.straight_time.get::<second>()),
        begin_after_start_s: where_so(timed, turn.begin_time.get::<second>()),
        turn_time_s: flown.duration().get::<second>(),
        turn_length_nm: miles(change.turn_length()),
        roll_out_after_start_s: where_so(timed, turn.roll_out_time().get::<second>()),
        roll_out_dme_nm: miles(turn.roll_out_reading().value()),
        roll_out_radial_deg: turn.roll_out_radial.angle().get::<degree>(),
        roll_out_past_fix_nm: miles(change.past_fix_at_roll_out()),
        roll_out_latitude_deg,
        roll_out_longitude_deg,
        closest_approach_nm: miles(turn.closest_approach.value()),
        cone_radius_nm: miles(turn.cone_radius.value()),
        cone_edge_dme_nm: miles(turn.cone_edge_reading().value()),
        begins_in_cone: turn.begins_in_cone(),
        enters_cone: turn.enters_cone(),
        fly_over: fly_over_output(&turn.fly_over),
        by_rule: rule_output(turn),
    }
}

fn rule_output(turn: &RouteTurn) -> RuleOfThumbOutput {
    let (rule, lead_nm) = (turn.by_rule(), miles(turn.change.lead()));
    RuleOfThumbOutput {
        lead_nm: miles(rule.lead),
        lead_error_nm: miles(rule.lead) - lead_nm,
        lead_with_height_nm: miles(rule.lead_with_height),
        lead_with_height_error_nm: miles(rule.lead_with_height) - lead_nm,
        dme_nm: miles(rule.reading),
        dme_error_nm: miles(rule.reading) - miles(turn.begin_reading().value()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plain::{
        CourseChangeInput, course_change, course_change_sureness, geodesic_inverse, radio_horizon_nm,
    };
    use crate::station::HorizonRule;

    fn fixes() -> [RouteFixInput<'static>; 4] {
        [
            RouteFixInput { elevation_ft: 310.0, declination_deg: -8.0, ..RouteFixInput::new(61.82, -14.4) },
            RouteFixInput { elevation_ft: 420.0, declination_deg: -6.0, ..RouteFixInput::new(61.25, -11.5) },
            RouteFixInput { wind_from_deg: 240.0, wind_speed_kt: 105.0, ..RouteFixInput::new(59.93, -10.9) },
            RouteFixInput::new(58.72, -9.35),
        ]
    }

    fn conditions() -> RouteConditionsInput<'static> {
        RouteConditionsInput {
            wind_from_deg: 255.0,
            wind_speed_kt: 85.0,
            altimeter_setting_hpa: 1004.0,
            isa_deviation_k: 7.0,
            ..RouteConditionsInput::new(455.0, 35_000.0)
        }
    }

    fn close(one: f64, other: f64) -> bool {
        (one - other).abs() < 1e-9 * other.abs().max(1.0)
    }

    /// Each turn asked for by itself, of the function that briefs nothing.
    #[test]
    fn turns_are_the_course_changes_they_are_made_of() {
        let (fixes, conditions) = (fixes(), conditions());
        let route = brief_route(&fixes, &conditions).unwrap();
        let (legs, turns) = (route.legs(), route.turns());
        assert_eq!((legs.len(), turns.len()), (3, 2));
        let errors = ErrorModelInput::usual();
        let sure = route.sureness(&errors, 1.0, 0.95, 500, 3).unwrap();
        for (index, (turn, wind)) in turns.iter().zip([(255.0, 85.0), (240.0, 105.0)]).enumerate() {
            let (before, after) = (legs[index], legs[index + 1]);
            assert_eq!(
                (before.wind_from_deg, before.wind_speed_kt),
                (turn.wind_from_deg, turn.wind_speed_kt)
            );
            assert!(close(turn.wind_from_deg, wind.0) && close(turn.wind_speed_kt, wind.1));
            let input = CourseChangeInput {
                wind_from_deg: wind.0,
                wind_speed_kt: wind.1,
                height_above_station_ft: turn.height_above_station_ft,
                ..CourseChangeInput::new(before.final_course_deg, after.initial_course_deg, 455.0)
            };
            let change = course_change(&input).unwrap();
            for (given, expected) in [
                (turn.begin_before_fix_nm, change.lead_nm),
                (turn.begin_at_dme_nm, change.dme_at_roll_in_nm),
                (turn.roll_out_dme_nm, change.dme_at_roll_out_nm),
                (turn.roll_out_past_fix_nm, change.past_fix_at_roll_out_nm),
                (turn.turn_time_s, change.duration_s),
                (turn.bank_deg, change.bank_deg),
                (turn.heading_change_deg, change.heading_change_deg),
                (turn.closest_approach_nm, change.closest_approach_nm),
                (turn.cone_radius_nm, change.cone_radius_nm),
                (turn.fly_over.extra_time_s, change.fly_over.extra_time_s),
                (turn.begin_on_radial_deg + fixes[index + 1].declination_deg, change.radial_at_roll_in_deg),
            ] {
                assert!(close(given, expected), "{given} {expected}");
            }
            let alone = course_change_sureness(&input, &errors, 1.0, 0.95, 500, 3).unwrap();
            assert!((sure[index].margin_nm - alone.margin_nm).abs() < 1e-6);
            assert!(
                (sure[index].begin_with_margin_at_dme_nm - alone.begin_with_margin_at_dme_nm).abs() < 1e-6
            );
        }
    }

    /// The straight of a leg and the turns at its ends are laid off on the ellipsoid, and measured there again.
    #[test]
    fn points_join_and_measure_what_is_said() {
        let route = brief_route(&fixes(), &conditions()).unwrap();
        let (legs, turns) = (route.legs(), route.turns());
        for (index, leg) in legs.iter().enumerate() {
            let points = route.leg_points(index, 20.0);
            assert_eq!(points.len(), 1 + (leg.straight_nm / 20.0).ceil() as usize);
            let length_nm: f64 = points
                .windows(2)
                .map(|pair| geodesic_inverse(pair[0].0, pair[0].1, pair[1].0, pair[1].1).unwrap().distance_nm)
                .sum();
            // What the turns take is laid off along courses that are carried parallel: 1e-4 NM at these leads.
            assert!((length_nm - leg.straight_nm).abs() < 1e-3, "{length_nm} {}", leg.straight_nm);
            if let Some(turn) = turns.get(index) {
                assert_eq!(*points.last().unwrap(), (turn.begin_latitude_deg, turn.begin_longitude_deg));
                let arc = route.turn_points(index);
                assert_eq!((arc.len(), arc[0]), (41, *points.last().unwrap()));
                let onward = route.leg_points(index + 1, f64::NAN);
                assert_eq!((onward.len(), onward[0]), (2, *arc.last().unwrap()));
                assert_eq!(onward[0], (turn.roll_out_latitude_deg, turn.roll_out_longitude_deg));
            }
        }
        assert!(route.leg_points(3, 20.0).is_empty() && route.turn_points(2).is_empty());
        assert!(route.leg_points(usize::MAX, 20.0).is_empty() && route.turn_points(usize::MAX).is_empty());
        assert!(route.leg_points(0, 1e-9).len() == 10_001, "no leg gets more");
    }

    #[test]
    fn a_short_leg_says_what_would_be_enough() {
        let mut near = fixes();
        (near[2].latitude_deg, near[2].longitude_deg) = (61.17, -11.55);
        let route = brief_route(&near, &conditions()).unwrap();
        let leg = route.legs()[1];
        assert!(!leg.long_enough && leg.straight_nm < 0.0);
        let turns = route.turns();
        let taken_nm = turns[0].roll_out_past_fix_nm + turns[1].begin_before_fix_nm;
        assert!(close(leg.least_length_nm, taken_nm) && taken_nm > leg.length_nm);
        assert!(route.leg_points(1, 20.0).is_empty());
        // Times are given as far as there are any.
        assert!(route.legs()[0].straight_time_s > 0.0 && leg.straight_time_s.is_nan());
        assert!(turns[0].roll_out_after_start_s > turns[0].begin_after_start_s);
        assert!(turns[1].begin_after_start_s.is_nan() && turns[1].begin_after_last_roll_out_s.is_nan());
        assert!(turns[1].roll_out_after_start_s.is_nan() && turns[1].turn_time_s > 0.0);
        assert!(route.total_distance_nm().is_nan() && route.total_time_s().is_nan());
    }

    #[test]
    fn what_lies_beyond_both_horizons_is_told() {
        let ends = [RouteFixInput::new(50.0, -30.0), RouteFixInput::new(58.0, -30.0)];
        let leg = brief_route(&ends, &RouteConditionsInput::new(200.0, 9_000.0)).unwrap().legs()[0];
        let horizon_nm = radio_horizon_nm(9_000.0, 0.0, HorizonRule::FourThirds).unwrap();
        // Pressure altitude above sea level is geopotential: a little less than the height itself.
        assert!((leg.horizon_from_nm - horizon_nm).abs() < 0.1, "{} {horizon_nm}", leg.horizon_from_nm);
        assert!(close(leg.unreceived_nm, leg.length_nm - leg.horizon_from_nm - leg.horizon_to_nm));
        assert!(leg.unreceived_nm > 200.0);
        assert_eq!(brief_route(&fixes(), &conditions()).unwrap().legs()[0].unreceived_nm, 0.0);
    }

    #[test]
    fn errors_say_where_and_what() {
        let told = |fixes: &[RouteFixInput<'_>], conditions| {
            brief_route(fixes, &conditions).unwrap_err().to_string()
        };
        let with = |change: fn(&mut RouteFixInput)| {
            let mut fixes = fixes();
            change(&mut fixes[1]);
            told(&fixes, conditions())
        };
        assert_eq!(
            with(|fix| fix.turn = 7),
            "route fix 2: turn is 7; allowed: 0 (shortest) -1 (left) 1 (right)"
        );
        assert!(
            with(|fix| fix.elevation_ft = f64::NAN)
                .starts_with("route fix 2: elevation_ft is NaN ft; allowed: ")
        );
        // A direction needs its speed.
        assert!(
            with(|fix| fix.wind_from_deg = 10.0)
                .starts_with("route fix 2: wind_speed_kt is NaN kt; allowed: ")
        );
        let low = told(&fixes(), RouteConditionsInput { pressure_altitude_ft: 100.0, ..conditions() });
        assert!(low.starts_with("route fix 2: the aircraft is "), "{low}");
        let slow = told(&fixes(), RouteConditionsInput { true_airspeed_kt: -1.0, ..conditions() });
        assert!(slow.starts_with("true_airspeed_kt is -1 kt; allowed: "), "{slow}");
        let same = [fixes()[0], fixes()[1], fixes()[1]];
        assert!(told(&same, conditions()).starts_with("route leg 2: the two stations are at the same place"));
        let windy = RouteConditionsInput { wind_speed_kt: f64::NAN, ..conditions() };
        assert!(told(&fixes(), windy).starts_with("wind_speed_kt is NaN kt"));
    }

    /// Half-way between two levels, where only the speed differs; the one wind is not looked at then.
    #[test]
    fn winds_by_level_are_those_at_the_altitude_flown() {
        let level = |pressure_altitude_ft, wind_speed_kt| WindLevelInput {
            pressure_altitude_ft,
            wind_from_deg: 255.0,
            wind_speed_kt,
        };
        let (levels, own) = ([level(30_000.0, 70.0), level(40_000.0, 100.0)], [level(30_000.0, 40.0)]);
        let conditions =
            RouteConditionsInput { wind_levels: &levels, wind_speed_kt: f64::NAN, ..conditions() };
        let mut fixes = fixes();
        fixes[2].wind_levels = &own;
        let route = brief_route(&fixes, &conditions).unwrap();
        for (leg, speed_kt) in route.legs().iter().zip([85.0, 40.0, 85.0]) {
            assert!((leg.wind_speed_kt - speed_kt).abs() < 1e-9 && (leg.wind_from_deg - 255.0).abs() < 1e-9);
        }
        let wrong = [level(30_000.0, 40.0), level(40_000.0, -1.0)];
        fixes[2].wind_levels = &wrong;
        let told = brief_route(&fixes, &conditions).unwrap_err().to_string();
        assert_eq!(told, "route fix 3: wind level 2: wind_speed_kt is -1 kt; allowed: from 0.0 to 1000.0 kt");
    }

    #[test]
    fn few_stations_make_no_turn() {
        for count in 0..3 {
            let route = brief_route(&fixes()[..count], &conditions()).unwrap();
            assert_eq!((route.legs().len(), route.turns().len()), (count.saturating_sub(1), 0));
        }
        let nothing = brief_route(&[], &conditions()).unwrap();
        assert_eq!((nothing.total_distance_nm(), nothing.total_time_s()), (0.0, 0.0));
    }
}
