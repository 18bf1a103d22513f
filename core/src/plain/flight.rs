//! A flight in plain numbers, bound by hand: a state that is stepped, and how sure a course change is.

use super::any_nan;
use super::course_change::{CourseChangeInput, typed};
use super::lead::wind;
use super::station::{STATION, station};
use super::turn::turn_limits;
use super::wind_levels::{WindLevelInput, winds_aloft};
use crate::Error;
use crate::flight::{
    ArcTracking, ERROR_SOURCES, ErrorModel, Flight, Interception, NeedleTracking, OutboundEnd, PlannedTurn,
    Racetrack, Reference, Start, Steering, Sureness, Tuned, WindField, overshoots, sureness,
};
use crate::lead::{ArcSense, CourseChange};
use crate::procedure::{HoldingEntry, HoldingSide};
use crate::station::{Flag, Receiver};
use crate::value::units::{
    degree, degrees, feet, feet_per_minute, foot, knot, knots, nautical_mile, nautical_miles, second, seconds,
};
use crate::value::{
    ArcRadius, Bearing, ConeHalfAngle, HeightAboveStation, InterceptAngle, Latitude, Longitude, Position,
    PressureAltitude, Quantity, Radial, SlantRange, TrueAirspeed, TrueAltitude, TrueNorth, WindSpeed,
};
use crate::wind::{Wind, WindLevel};

/// How a flight begins, and the station its receiver is tuned to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FlightInput {
    /// Where it begins: latitude.
    pub latitude_deg: f64,
    /// Where it begins: longitude.
    pub longitude_deg: f64,
    /// Altitude.
    pub altitude_ft: f64,
    /// Heading at first, from the carried north.
    pub heading_deg: f64,
    /// True airspeed.
    pub true_airspeed_kt: f64,
    /// Where the wind blows from, from the carried north.
    pub wind_from_deg: f64,
    /// Speed of the wind.
    pub wind_speed_kt: f64,
    /// Greatest bank.
    pub bank_limit_deg: f64,
    /// Greatest rate of turn.
    pub turn_rate_limit_deg_per_s: f64,
    /// Rate of roll.
    pub roll_rate_deg_per_s: f64,
    /// How long after an indication the crew acts on it, 0 to 3600.
    pub reaction_s: f64,
    /// The station: latitude. Its true north is the north that is carried.
    pub station_latitude_deg: f64,
    /// The station: longitude.
    pub station_longitude_deg: f64,
    /// The station's elevation.
    pub station_elevation_ft: f64,
    /// The station's declination, positive east.
    pub station_declination_deg: f64,
    /// The course selected on the receiver, from the station's north.
    pub course_deg: f64,
    /// Half-angle of the cone of confusion.
    pub cone_half_angle_deg: f64,
}

impl FlightInput {
    /// What is usual: calm air, 25 degrees of bank, standard rate, a roll of 5 degrees per second, no time to react, a station at sea
    /// level without declination, its north selected, a cone of 50 degrees; place, heading and speed NaN, to be set.
    pub const USUAL: Self = Self {
        latitude_deg: f64::NAN,
        longitude_deg: f64::NAN,
        altitude_ft: f64::NAN,
        heading_deg: f64::NAN,
        true_airspeed_kt: f64::NAN,
        wind_from_deg: 0.0,
        wind_speed_kt: 0.0,
        bank_limit_deg: 25.0,
        turn_rate_limit_deg_per_s: 3.0,
        roll_rate_deg_per_s: 5.0,
        reaction_s: 0.0,
        station_latitude_deg: f64::NAN,
        station_longitude_deg: f64::NAN,
        station_elevation_ft: 0.0,
        station_declination_deg: 0.0,
        course_deg: 0.0,
        cone_half_angle_deg: 50.0,
    };
}

super::outputs! {
    /// Where a flight is and what its receiver shows.
    FlightState {
        /// Time since the start.
        time_s,
        /// Latitude.
        latitude_deg,
        /// Longitude.
        longitude_deg,
        /// Altitude.
        altitude_ft,
        /// Heading, from the true north of the place.
        true_heading_deg,
        /// Bank, right positive.
        bank_deg,
        /// Track over the ground, from the true north of the place.
        true_track_deg,
        /// Speed over the ground.
        groundspeed_kt,
        /// The radial received, from the station's north; NaN in the cone and where the station is not received.
        radial_deg,
        /// The DME distance received, with all its digits; NaN where the station is not received.
        dme_nm,
        /// How far the selected course lies to the right, in degrees of the radial, -90 to 90; NaN where the needle is not to be used.
        deviation_deg,
        /// The code of [`crate::station::ToFrom`]: 1 to the station, 2 from it, 0 neither.
        to_from,
        /// The code of [`Flag`]: 0 none, 1 abeam, 2 in the cone, 3 below the horizon, 4 out of range.
        flag,
        /// 1 in the cone of confusion, else 0.
        in_cone,
        /// The least altitude at which the station is received here, over a smooth earth at its elevation; infinite if none.
        least_altitude_ft,
        /// 1 when the turn is turned or the course captured, else 0.
        done,
    }
}

impl FlightState {
    /// Its numbers in the order of its fields, as a table has them for columns.
    pub const fn columns(&self) -> [f64; 16] {
        [
            self.time_s,
            self.latitude_deg,
            self.longitude_deg,
            self.altitude_ft,
            self.true_heading_deg,
            self.bank_deg,
            self.true_track_deg,
            self.groundspeed_kt,
            self.radial_deg,
            self.dme_nm,
            self.deviation_deg,
            self.to_from,
            self.flag,
            self.in_cone,
            self.least_altitude_ft,
            self.done,
        ]
    }
}

/// A flight with its receiver: plain data that is stepped. Its steering believes in the wind there is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FlightAndReceiver {
    flight: Flight,
    receiver: Tuned,
}

impl FlightAndReceiver {
    /// A flight that holds its heading.
    ///
    /// # Errors
    /// A value outside its range; a NaN is refused too, since no flight begins without a number.
    pub fn new(input: &FlightInput) -> Result<Self, Error> {
        let station = station(
            STATION,
            [
                input.station_latitude_deg,
                input.station_longitude_deg,
                input.station_elevation_ft,
                input.station_declination_deg,
            ],
        )?;
        let start = Start {
            position: Position::new(
                Latitude::named("latitude_deg", input.latitude_deg)?,
                Longitude::named("longitude_deg", input.longitude_deg)?,
            ),
            altitude: TrueAltitude::named("altitude_ft", input.altitude_ft)?,
            heading: Bearing::named("heading_deg", input.heading_deg)?,
            north_of: Some(station.position),
            true_airspeed: TrueAirspeed::named("true_airspeed_kt", input.true_airspeed_kt)?,
            wind: WindField::uniform(wind(input.wind_from_deg, input.wind_speed_kt)?, Reference::Carried),
            limits: turn_limits(
                input.bank_limit_deg,
                input.turn_rate_limit_deg_per_s,
                input.roll_rate_deg_per_s,
            )?,
            reaction: seconds(Quantity::HoldTime.check("reaction_s", input.reaction_s)?),
        };
        let receiver = Tuned {
            receiver: Receiver {
                cone: ConeHalfAngle::named("cone_half_angle_deg", input.cone_half_angle_deg)?,
                ..Receiver::default()
            },
            station,
            course: Radial::named("course_deg", input.course_deg)?,
        };
        Ok(Self { flight: Flight::new(&start), receiver })
    }

    /// Flies on for a time; zero, a negative time, one beyond 1 000 000 s and NaN do nothing.
    pub fn step(&mut self, time_s: f64) {
        self.flight.step(seconds(time_s));
    }

    /// Where it is, and what the receiver shows.
    pub fn state(&self) -> FlightState {
        let shown = self.flight.shows(&self.receiver);
        let seen = shown.observation;
        let station_ft = self.receiver.station.elevation.value().get::<foot>();
        let least_ft =
            self.receiver.least_height(seen.ground_distance).map(|least| least.value().get::<foot>());
        let radial = seen.radial.filter(|_| matches!(shown.flag, Flag::Clear | Flag::Abeam));
        let dme = shown.dme.map(|_| seen.dme.value().get::<nautical_mile>());
        let (flight, position) = (&self.flight, self.flight.position());
        FlightState {
            time_s: flight.time().get::<second>(),
            latitude_deg: position.latitude_deg(),
            longitude_deg: position.longitude_deg(),
            altitude_ft: flight.altitude().value().get::<foot>(),
            true_heading_deg: flight.true_heading().degrees(),
            bank_deg: flight.bank().get::<degree>(),
            true_track_deg: flight.track().degrees(),
            groundspeed_kt: flight.groundspeed().value().get::<knot>(),
            radial_deg: radial.map_or(f64::NAN, Bearing::degrees),
            dme_nm: dme.unwrap_or(f64::NAN),
            deviation_deg: shown.deviation.map_or(f64::NAN, |deviation| deviation.get::<degree>()),
            to_from: f64::from(shown.to_from.code()),
            flag: f64::from(shown.flag.code()),
            in_cone: f64::from(shown.flag == Flag::Cone),
            least_altitude_ft: least_ft.map_or(f64::INFINITY, |least_ft| least_ft + station_ft),
            done: f64::from(flight.is_done()),
        }
    }

    /// Tunes the receiver to another station and selects a course, from its north. Its true north is the north that is carried from now on: the flight
    /// holds its heading, and the wind stays what it is in space. Steer anew.
    ///
    /// # Errors
    /// A value outside its range.
    pub fn tune(
        &mut self,
        station_latitude_deg: f64,
        station_longitude_deg: f64,
        station_elevation_ft: f64,
        station_declination_deg: f64,
        course_deg: f64,
    ) -> Result<(), Error> {
        let course = Radial::named("course_deg", course_deg)?;
        let station = station(
            STATION,
            [station_latitude_deg, station_longitude_deg, station_elevation_ft, station_declination_deg],
        )?;
        self.flight.carry_north_of(station.position);
        self.receiver = Tuned { station, course, ..self.receiver };
        Ok(())
    }

    /// Holds a heading, from the carried north.
    ///
    /// # Errors
    /// A heading that is no number.
    pub fn hold_heading(&mut self, heading_deg: f64) -> Result<(), Error> {
        self.flight.steer(Steering::Heading(Bearing::named("heading_deg", heading_deg)?));
        Ok(())
    }

    /// Holds the heading until the DME reading of the lead, then turns onto the outbound course, without looking at an instrument.
    /// Courses are from true north at the station; speed, wind and limits are the flight's.
    ///
    /// # Errors
    /// As [`super::course_change`].
    pub fn turn_at_station(
        &mut self,
        inbound_course_deg: f64,
        outbound_course_deg: f64,
    ) -> Result<(), Error> {
        let change = CourseChange::<TrueNorth>::new(
            Bearing::named("inbound_course_deg", inbound_course_deg)?,
            Bearing::named("outbound_course_deg", outbound_course_deg)?,
            self.flight.true_airspeed(),
            self.flight.wind_here(),
            &self.flight.limits(),
            crate::lead::TurnSide::Shortest,
        )?;
        let station = self.receiver.station;
        let height = HeightAboveStation::derived(self.flight.altitude().value() - station.elevation.value());
        self.flight.steer(Steering::Turn(PlannedTurn::at_station(&change, station, height)));
        Ok(())
    }

    /// Tracks a course, from the station's north, by the needle.
    ///
    /// # Errors
    /// A course that is no number, a gain outside 0 to 100.
    pub fn track(&mut self, course_deg: f64, gain: f64) -> Result<(), Error> {
        let tracking = self.tracking(course_deg, gain)?;
        self.flight.steer(Steering::Needle(tracking));
        Ok(())
    }

    /// Intercepts a course, from the station's north, at an angle, then tracks it.
    ///
    /// # Errors
    /// As [`FlightAndReceiver::track`]; an angle outside its range.
    pub fn intercept(&mut self, course_deg: f64, angle_deg: f64, gain: f64) -> Result<(), Error> {
        let tracking = self.tracking(course_deg, gain)?;
        let angle = InterceptAngle::named("intercept_angle_deg", angle_deg)?;
        self.flight.steer(Steering::Intercept(Interception { tracking, angle }));
        Ok(())
    }

    /// Keeps a distance from the station: `sense` 1 clockwise, -1 counterclockwise.
    ///
    /// # Errors
    /// A radius outside its range, a sense that is none.
    pub fn arc(&mut self, radius_nm: f64, sense: f64) -> Result<(), Error> {
        self.flight.steer(Steering::Arc(ArcTracking {
            station: self.receiver.station,
            radius: ArcRadius::named("radius_nm", radius_nm)?,
            sense: ArcSense::from_code("sense", sense)?,
            believed_wind: self.flight.wind_here(),
        }));
        Ok(())
    }

    /// Enters a racetrack at the station, from over it, and flies it round after round, its outbound leg by the clock. Course and heading are
    /// from true north there; `side` and `entry` are the codes of [`HoldingSide`] and [`HoldingEntry`].
    ///
    /// # Errors
    /// A value outside its range, a side or an entry that is none.
    pub fn hold(
        &mut self,
        inbound_course_deg: f64,
        side: f64,
        entry: f64,
        outbound_heading_deg: f64,
        outbound_time_s: f64,
    ) -> Result<(), Error> {
        let time = seconds(Quantity::HoldTime.check("outbound_time_s", outbound_time_s)?);
        let outbound_end = OutboundEnd::Time(time);
        self.hold_until(inbound_course_deg, side, entry, outbound_heading_deg, outbound_end)
    }

    /// The same with an outbound leg that ends by DME.
    ///
    /// # Errors
    /// As [`FlightAndReceiver::hold`].
    pub fn hold_by_dme(
        &mut self,
        inbound_course_deg: f64,
        side: f64,
        entry: f64,
        outbound_heading_deg: f64,
        outbound_dme_nm: f64,
    ) -> Result<(), Error> {
        let reading = SlantRange::named("outbound_dme_nm", outbound_dme_nm)?;
        let outbound_end = OutboundEnd::RisingDme(self.receiver.station, reading);
        self.hold_until(inbound_course_deg, side, entry, outbound_heading_deg, outbound_end)
    }

    fn hold_until(
        &mut self,
        inbound_course_deg: f64,
        side: f64,
        entry: f64,
        outbound_heading_deg: f64,
        outbound_end: OutboundEnd,
    ) -> Result<(), Error> {
        self.flight.steer(Steering::Hold(Racetrack {
            fix: self.receiver.station.position,
            inbound: Bearing::named("inbound_course_deg", inbound_course_deg)?,
            side: HoldingSide::from_code("side", side)?,
            outbound_heading: Bearing::named("outbound_heading_deg", outbound_heading_deg)?,
            outbound_end,
            entry: HoldingEntry::from_code("entry", entry)?,
            believed_wind: self.flight.wind_here(),
        }));
        Ok(())
    }

    /// Climbs or descends to an altitude at a rate.
    ///
    /// # Errors
    /// A value outside its range.
    pub fn climb_to(&mut self, altitude_ft: f64, climb_fpm: f64) -> Result<(), Error> {
        let altitude = TrueAltitude::named("altitude_ft", altitude_ft)?;
        let rate = feet_per_minute(Quantity::VerticalSpeed.check("climb_fpm", climb_fpm)?);
        self.flight.climb_to(altitude, rate);
        Ok(())
    }

    /// Flies through another wind, from the carried north, from now on. A law that was set goes on believing in the old one.
    ///
    /// # Errors
    /// A value outside its range.
    pub fn set_wind(&mut self, wind_from_deg: f64, wind_speed_kt: f64) -> Result<(), Error> {
        self.flight.set_wind(WindField::uniform(wind(wind_from_deg, wind_speed_kt)?, Reference::Carried));
        Ok(())
    }

    /// Flies through a wind that changes by components from one altitude to a higher one, and not beyond them, from now on; directions are from the
    /// carried north. What is steered afterwards believes in the wind at the altitude where it is then.
    ///
    /// # Errors
    /// A value outside its range; an upper altitude that is not above the lower one.
    pub fn set_wind_levels(
        &mut self,
        lower_altitude_ft: f64,
        lower_from_deg: f64,
        lower_speed_kt: f64,
        upper_altitude_ft: f64,
        upper_from_deg: f64,
        upper_speed_kt: f64,
    ) -> Result<(), Error> {
        let level = |altitude, altitude_ft, from, from_deg, speed, speed_kt| -> Result<_, Error> {
            Ok(WindLevel {
                altitude: PressureAltitude::named(altitude, altitude_ft)?,
                wind: Wind {
                    from: Bearing::named(from, from_deg)?,
                    speed: WindSpeed::named(speed, speed_kt)?,
                },
            })
        };
        let lower = level(
            "lower_altitude_ft",
            lower_altitude_ft,
            "lower_from_deg",
            lower_from_deg,
            "lower_speed_kt",
            lower_speed_kt,
        )?;
        let upper = level(
            "upper_altitude_ft",
            upper_altitude_ft,
            "upper_from_deg",
            upper_from_deg,
            "upper_speed_kt",
            upper_speed_kt,
        )?;
        self.flight.set_wind(WindField::between(lower, upper, Reference::Carried)?);
        Ok(())
    }

    /// Flies through winds at up to sixteen levels from now on, as [`FlightAndReceiver::set_wind_levels`] through two.
    ///
    /// # Errors
    /// As [`super::check_wind_levels`], which names the level; more than sixteen.
    pub fn set_winds_aloft(&mut self, levels: &[WindLevelInput]) -> Result<(), Error> {
        self.flight.set_wind(WindField::aloft(&winds_aloft(levels)?, Reference::Carried)?);
        Ok(())
    }

    /// Flies at another true airspeed from now on.
    ///
    /// # Errors
    /// A value outside its range.
    pub fn set_airspeed(&mut self, true_airspeed_kt: f64) -> Result<(), Error> {
        self.flight.set_airspeed(TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?);
        Ok(())
    }

    fn tracking(&mut self, course_deg: f64, gain: f64) -> Result<NeedleTracking, Error> {
        let course = Radial::named("course_deg", course_deg)?;
        let gain = Quantity::Gain.check("gain", gain)?;
        self.receiver.course = course;
        Ok(NeedleTracking { gain, ..NeedleTracking::new(self.receiver, self.flight.wind_here()) })
    }
}

/// The standard deviations of what a turn begun by DME depends on, none negative.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ErrorModelInput {
    /// Of the bearing of the station's signal.
    pub station_bearing_deg: f64,
    /// Of the DME reading.
    pub dme_nm: f64,
    /// Of the wind's speed.
    pub wind_speed_kt: f64,
    /// Of the wind's direction.
    pub wind_direction_deg: f64,
    /// Of the true airspeed.
    pub airspeed_kt: f64,
    /// Of the bank.
    pub bank_deg: f64,
    /// Of the moment of roll-in.
    pub roll_in_delay_s: f64,
    /// Of the height above the station.
    pub height_ft: f64,
    /// By how much the crew is late on the average.
    pub mean_delay_s: f64,
}

impl ErrorModelInput {
    /// What is usual where nothing better is known: see [`ErrorModel::usual`].
    pub fn usual() -> Self {
        let model = ErrorModel::usual();
        Self {
            station_bearing_deg: model.station_bearing.get::<degree>(),
            dme_nm: model.dme.get::<nautical_mile>(),
            wind_speed_kt: model.wind_speed.get::<knot>(),
            wind_direction_deg: model.wind_direction.get::<degree>(),
            airspeed_kt: model.airspeed.get::<knot>(),
            bank_deg: model.bank.get::<degree>(),
            roll_in_delay_s: model.roll_in_delay.get::<second>(),
            height_ft: model.height.get::<foot>(),
            mean_delay_s: model.mean_delay.get::<second>(),
        }
    }
}

super::outputs! {
    /// How sure a course change is. See [`crate::flight::Sureness`].
    SurenessOutput {
        /// Mean overshoot of the trials.
        mean_nm,
        /// Its standard deviation.
        deviation_nm,
        /// The share of trials that overshot by more than the limit.
        chance_beyond,
        /// What to add to the lead for the confidence; negative if there is room.
        margin_nm,
        /// The overshoot without any error but the mean delay.
        linear_mean_nm,
        /// The standard deviation by linear propagation.
        linear_deviation_nm,
        /// The chance by linear propagation.
        linear_chance_beyond,
        /// The margin by linear propagation.
        linear_margin_nm,
        /// What one standard deviation of the station's bearing is worth.
        by_station_bearing_nm,
        /// What one of the DME reading is worth.
        by_dme_nm,
        /// What one of the wind's speed is worth.
        by_wind_speed_nm,
        /// What one of the wind's direction is worth.
        by_wind_direction_nm,
        /// What one of the true airspeed is worth.
        by_airspeed_nm,
        /// What one of the bank is worth.
        by_bank_nm,
        /// What one of the moment of roll-in is worth.
        by_roll_in_delay_nm,
        /// What one of the height is worth.
        by_height_nm,
        /// The source that is worth most, by its place among the eight from 0; -1 if none is worth anything.
        foremost,
        /// The DME reading at which the turn begins with the margin added to its lead; NaN if there is no turn.
        begin_with_margin_at_dme_nm,
        /// The lead with the margin added: how far before the station that is, negative past it.
        begin_with_margin_before_fix_nm,
    }
}

/// What errors make of a course change: see [`crate::flight::sureness`].
///
/// # Errors
/// As [`super::course_change`]; a deviation that is negative or infinite, a confidence outside 0 to 1, no trials or more than ten
/// million. A NaN given makes every number of the answer NaN.
pub fn course_change_sureness(
    input: &CourseChangeInput,
    errors: &ErrorModelInput,
    limit_nm: f64,
    confidence: f64,
    trials: u64,
    seed: u64,
) -> Result<SurenessOutput, Error> {
    let others = [limit_nm, confidence];
    if super::course_change::holds_nan(input) || errors.holds_nan() || any_nan(&others) {
        return Ok(SurenessOutput::NAN);
    }
    let model = errors.typed()?;
    let change = typed(input)?;
    let height = HeightAboveStation::named("height_above_station_ft", input.height_above_station_ft)?;
    let limit = nautical_miles(Quantity::CrossTrack.check("limit_nm", limit_nm)?);
    let sure = sureness(&change, height, &model, limit, confidence, trials, seed)?;
    Ok(sureness_output(&sure, &change, height))
}

/// The overshoots of the trials that [`course_change_sureness`] makes its answer of with the same seed, one for each place.
///
/// # Errors
/// As [`course_change_sureness`]; nothing is then written. A NaN given makes all of them NaN.
pub fn course_change_overshoots(
    input: &CourseChangeInput,
    errors: &ErrorModelInput,
    seed: u64,
    overshoots_nm: &mut [f64],
) -> Result<(), Error> {
    if super::course_change::holds_nan(input) || errors.holds_nan() {
        overshoots_nm.fill(f64::NAN);
        return Ok(());
    }
    let model = errors.typed()?;
    let change = typed(input)?;
    let height = HeightAboveStation::named("height_above_station_ft", input.height_above_station_ft)?;
    for (place, overshoot) in overshoots_nm.iter_mut().zip(overshoots(&change, height, &model, seed)) {
        *place = overshoot.get::<nautical_mile>();
    }
    Ok(())
}

impl ErrorModelInput {
    pub(super) fn holds_nan(&self) -> bool {
        any_nan(&self.deviations().map(|(_, value)| value)) || self.mean_delay_s.is_nan()
    }

    fn deviations(&self) -> [(&'static str, f64); ERROR_SOURCES] {
        [
            ("station_bearing_deg", self.station_bearing_deg),
            ("dme_nm", self.dme_nm),
            ("wind_speed_kt", self.wind_speed_kt),
            ("wind_direction_deg", self.wind_direction_deg),
            ("airspeed_kt", self.airspeed_kt),
            ("bank_deg", self.bank_deg),
            ("roll_in_delay_s", self.roll_in_delay_s),
            ("height_ft", self.height_ft),
        ]
    }

    pub(super) fn typed(&self) -> Result<ErrorModel, Error> {
        for (name, value) in self.deviations() {
            Quantity::StandardDeviation.check(name, value)?;
        }
        Ok(ErrorModel {
            station_bearing: degrees(self.station_bearing_deg),
            dme: nautical_miles(self.dme_nm),
            wind_speed: knots(self.wind_speed_kt),
            wind_direction: degrees(self.wind_direction_deg),
            airspeed: knots(self.airspeed_kt),
            bank: degrees(self.bank_deg),
            roll_in_delay: seconds(self.roll_in_delay_s),
            height: feet(self.height_ft),
            mean_delay: seconds(Quantity::TurnTime.check("mean_delay_s", self.mean_delay_s)?),
        })
    }
}

pub(super) fn sureness_output(
    sure: &Sureness,
    change: &CourseChange<TrueNorth>,
    height: HeightAboveStation,
) -> SurenessOutput {
    let reading = change.reading_with_margin(sure.margin, height);
    let [station_bearing, dme, wind_speed, wind_direction, airspeed, bank, roll_in_delay, height]: [f64;
        ERROR_SOURCES] = sure.by_source.map(|worth| worth.get::<nautical_mile>());
    SurenessOutput {
        mean_nm: sure.mean.get::<nautical_mile>(),
        deviation_nm: sure.deviation.get::<nautical_mile>(),
        chance_beyond: sure.chance_beyond,
        margin_nm: sure.margin.get::<nautical_mile>(),
        linear_mean_nm: sure.linear_mean.get::<nautical_mile>(),
        linear_deviation_nm: sure.linear_deviation.get::<nautical_mile>(),
        linear_chance_beyond: sure.linear_chance_beyond,
        linear_margin_nm: sure.linear_margin.get::<nautical_mile>(),
        by_station_bearing_nm: station_bearing,
        by_dme_nm: dme,
        by_wind_speed_nm: wind_speed,
        by_wind_direction_nm: wind_direction,
        by_airspeed_nm: airspeed,
        by_bank_nm: bank,
        by_roll_in_delay_nm: roll_in_delay,
        by_height_nm: height,
        foremost: sure.foremost().map_or(-1.0, |source| f64::from(source.code())),
        begin_with_margin_at_dme_nm: reading
            .map_or(f64::NAN, |reading| reading.value().get::<nautical_mile>()),
        begin_with_margin_before_fix_nm: (change.lead() + sure.margin).get::<nautical_mile>(),
    }
}
