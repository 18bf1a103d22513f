//! A plan in the library's values, or an error that says which key is wrong, its value and what is allowed.

use std::fmt::Display;

use lubberline::Error;
use lubberline::air::{Air, isa_deviation};
use lubberline::flight::ErrorModel;
use lubberline::lead::TurnSide;
use lubberline::route::{RouteError, RouteFix, RoutePlace, RoutePlan};
use lubberline::station::{Ident, Station, VOR_CONE_HALF_ANGLE_DEG};
use lubberline::turn::TurnLimits;
use lubberline::value::units::{
    Ratio, degrees, degrees_celsius, degrees_per_second, feet, hectopascals, kelvins, knots, nautical_miles,
    ratio, seconds,
};
use lubberline::value::{
    AltimeterSetting, Bank, CalibratedAirspeed, ConeHalfAngle, Declination, Elevation, InterceptAngle,
    IsaDeviation, Latitude, Longitude, Mach, Position, PressureAltitude, RollRate, Temperature, TrueAirspeed,
    TrueBearing, TrueNorth, TurnRate, WindSpeed,
};
use lubberline::wind::{Wind, WindLevel, WindsAloft};

use crate::sure::Errors;
use crate::written::{
    Written, WrittenAir, WrittenAircraft, WrittenErrors, WrittenFix, WrittenLevel, WrittenStation,
};

/// The angle at which the outbound course would be intercepted after flying over a fix; common practice.
const INTERCEPT_DEG: f64 = 30.0;

/// What is asked of the errors where nothing is said. The overshoot that matters is common practice, without a source; so many trials
/// leave a chance of 5 percent uncertain by 0.15 percent.
const LIMIT_NM: f64 = 1.0;
const CONFIDENCE: f64 = 0.95;
const TRIALS: u64 = 20_000;
const MOST_TRIALS: u64 = 10_000_000;
const SEED: u64 = 1;

/// A plan ready to be briefed.
pub struct Plan {
    pub title: String,
    pub true_airspeed: TrueAirspeed,
    pub pressure_altitude: PressureAltitude,
    pub deviation: IsaDeviation,
    pub setting: AltimeterSetting,
    pub limits: TurnLimits,
    pub errors: Errors,
    pub route: Vec<Fix>,
}

/// A station with its ident and its cone of confusion.
pub struct Site {
    pub ident: String,
    pub station: Station,
    pub cone: ConeHalfAngle,
}

/// A station on the route.
#[derive(Clone)]
pub struct Fix {
    pub ident: String,
    pub name: String,
    pub on_route: RouteFix,
}

/// Puts the place of a value before the words of its error.
pub fn at<T, E: Display>(place: &str, value: Result<T, E>) -> Result<T, String> {
    value.map_err(|error| format!("{place}: {error}"))
}

/// A direction as a person writes it. The library reduces any angle to the circle; here 2550 is a slip of the finger.
pub fn written_degrees(place: &str, value: f64, low: f64, high: f64) -> Result<f64, String> {
    if (low..=high).contains(&value) {
        Ok(value)
    } else {
        Err(format!("{place} is {value} deg; allowed: from {low} to {high} deg"))
    }
}

/// What the reader of TOML says, with the place and the line it quotes, in words of plans instead of types.
pub fn in_words(error: &toml::de::Error) -> String {
    let mut said = error.to_string().trim_end().to_string();
    for (type_word, word) in [
        ("expected f64", "allowed: a number"),
        ("expected a string", "allowed: words in quotes"),
        ("expected a sequence", "allowed: tables in double brackets, [[...]]"),
    ] {
        said = said.replace(type_word, word);
    }
    said
}

impl Plan {
    /// Reads a plan.
    pub fn read(text: &str) -> Result<Self, String> {
        let written: Written = toml::from_str(text).map_err(|error| in_words(&error))?;
        let altitude = written.aircraft.altitude()?;
        let deviation = written.air.deviation(altitude)?;
        let route = written.fixes(altitude)?;
        Ok(Self {
            true_airspeed: written.aircraft.true_airspeed(Air::new(altitude, deviation))?,
            limits: written.aircraft.limits()?,
            errors: written.errors.read()?,
            title: written.title.unwrap_or_else(|| "Untitled plan".into()),
            pressure_altitude: altitude,
            deviation,
            setting: written.air.setting()?,
            route,
        })
    }
}

impl Plan {
    /// The route as the library takes it.
    pub fn route_plan(&self) -> Result<RoutePlan, String> {
        Ok(RoutePlan {
            true_airspeed: self.true_airspeed,
            pressure_altitude: self.pressure_altitude,
            setting: self.setting,
            deviation: self.deviation,
            limits: self.limits,
            intercept: InterceptAngle::new(degrees(INTERCEPT_DEG)).map_err(|error| error.to_string())?,
            fixes: self.route.iter().map(|fix| fix.on_route).collect(),
        })
    }

    /// What stands in the way of a route, with the idents of the place.
    pub fn placed(&self, refused: &RouteError) -> String {
        let ident = |index: usize| self.route.get(index).map_or("", |fix| fix.ident.as_str());
        match refused.place {
            RoutePlace::Plan => refused.error.to_string(),
            RoutePlace::Fix(index) => {
                format!("route fix {} ({}): {}", index + 1, ident(index), refused.error)
            }
            RoutePlace::Leg(index) => {
                format!("leg {} to {}: {}", ident(index), ident(index + 1), refused.error)
            }
        }
    }
}

/// An airspeed to turn with: not none.
fn usable(airspeed: Result<TrueAirspeed, Error>) -> Result<TrueAirspeed, Error> {
    TrueAirspeed::new(airspeed?.value())
}

impl WrittenAircraft {
    pub fn altitude(&self) -> Result<PressureAltitude, String> {
        at("aircraft.pressure_altitude_ft", PressureAltitude::new(feet(self.pressure_altitude_ft)))
    }

    pub fn true_airspeed(&self, air: Air) -> Result<TrueAirspeed, String> {
        match (self.calibrated_airspeed_kt, self.mach) {
            (Some(speed_kt), None) => {
                let key = "aircraft.calibrated_airspeed_kt";
                let calibrated = at(key, CalibratedAirspeed::new(knots(speed_kt)))?;
                let airspeed = air.true_from_calibrated(calibrated);
                usable(airspeed).map_err(|error| format!("{key} is {speed_kt} kt, by which the {error}"))
            }
            (None, Some(number)) => {
                let key = "aircraft.mach";
                let mach = at(key, Mach::new(Ratio::new::<ratio>(number)))?;
                usable(air.true_from_mach(mach))
                    .map_err(|error| format!("{key} is {number}, by which the {error}"))
            }
            (Some(speed_kt), Some(number)) => Err(format!(
                "aircraft: calibrated_airspeed_kt ({speed_kt}) and mach ({number}) are both given; allowed: one of them"
            )),
            (None, None) => {
                Err("aircraft: no speed is given; allowed: calibrated_airspeed_kt or mach".into())
            }
        }
    }

    pub fn limits(&self) -> Result<TurnLimits, String> {
        let mut limits = TurnLimits::default();
        if let Some(bank_deg) = self.bank_limit_deg {
            limits.bank = at("aircraft.bank_limit_deg", Bank::new(degrees(bank_deg)))?;
        }
        if let Some(rate) = self.turn_rate_limit_deg_per_s {
            limits.rate = at("aircraft.turn_rate_limit_deg_per_s", TurnRate::new(degrees_per_second(rate)))?;
        }
        if let Some(rate) = self.roll_rate_deg_per_s {
            limits.roll = at("aircraft.roll_rate_deg_per_s", RollRate::new(degrees_per_second(rate)))?;
        }
        Ok(limits)
    }
}

impl WrittenAir {
    pub fn setting(&self) -> Result<AltimeterSetting, String> {
        let setting_hpa = self.altimeter_setting_hpa.unwrap_or(1013.25);
        at("air.altimeter_setting_hpa", AltimeterSetting::new(hectopascals(setting_hpa)))
    }

    pub fn deviation(&self, altitude: PressureAltitude) -> Result<IsaDeviation, String> {
        match (self.isa_deviation_k, self.temperature_degc) {
            (Some(deviation_k), None) => at("air.isa_deviation_k", IsaDeviation::new(kelvins(deviation_k))),
            (None, Some(temperature_degc)) => {
                let key = "air.temperature_degc";
                let temperature = at(key, Temperature::new(degrees_celsius(temperature_degc)))?;
                at(key, isa_deviation(temperature, altitude))
            }
            (Some(deviation_k), Some(temperature_degc)) => Err(format!(
                "air: isa_deviation_k ({deviation_k}) and temperature_degc ({temperature_degc}) are both given; allowed: one of them"
            )),
            (None, None) => at("air", IsaDeviation::new(kelvins(0.0))),
        }
    }
}

impl WrittenErrors {
    fn read(&self) -> Result<Errors, String> {
        let given = |key: &str, unit: &str, value: Option<f64>| match value {
            Some(value) if !(0.0..=1e6).contains(&value) => {
                Err(format!("errors.{key} is {value} {unit}; allowed: from 0 to 1000000 {unit}"))
            }
            value => Ok(value),
        };
        let mut model = ErrorModel::usual();
        let mut limit = nautical_miles(LIMIT_NM);
        if let Some(value) = given("station_bearing_deg", "deg", self.station_bearing_deg)? {
            model.station_bearing = degrees(value);
        }
        if let Some(value) = given("dme_nm", "NM", self.dme_nm)? {
            model.dme = nautical_miles(value);
        }
        if let Some(value) = given("wind_speed_kt", "kt", self.wind_speed_kt)? {
            model.wind_speed = knots(value);
        }
        if let Some(value) = given("wind_direction_deg", "deg", self.wind_direction_deg)? {
            model.wind_direction = degrees(value);
        }
        if let Some(value) = given("airspeed_kt", "kt", self.airspeed_kt)? {
            model.airspeed = knots(value);
        }
        if let Some(value) = given("bank_deg", "deg", self.bank_deg)? {
            model.bank = degrees(value);
        }
        if let Some(value) = given("roll_in_delay_s", "s", self.roll_in_delay_s)? {
            model.roll_in_delay = seconds(value);
        }
        if let Some(value) = given("height_ft", "ft", self.height_ft)? {
            model.height = feet(value);
        }
        if let Some(value) = given("mean_delay_s", "s", self.mean_delay_s)? {
            model.mean_delay = seconds(value);
        }
        if let Some(value) = given("limit_nm", "NM", self.limit_nm)? {
            limit = nautical_miles(value);
        }
        let confidence = self.confidence.unwrap_or(CONFIDENCE);
        if !(confidence > 0.0 && confidence < 1.0) {
            return Err(format!("errors.confidence is {confidence}; allowed: above 0 below 1"));
        }
        let trials = self.trials.unwrap_or(TRIALS);
        if !(1..=MOST_TRIALS).contains(&trials) {
            return Err(format!("errors.trials is {trials}; allowed: from 1 to {MOST_TRIALS}"));
        }
        Ok(Errors { model, limit, confidence, trials, seed: self.seed.unwrap_or(SEED) })
    }
}

/// A wind of a direction and a speed.
fn one_wind(place: &str, from_deg: f64, speed_kt: f64) -> Result<Wind<TrueNorth>, String> {
    let key = format!("{place}wind_from_deg");
    let from_deg = written_degrees(&key, from_deg, 0.0, 360.0)?;
    Ok(Wind {
        from: at(&key, TrueBearing::new(degrees(from_deg)))?,
        speed: at(&format!("{place}wind_speed_kt"), WindSpeed::new(knots(speed_kt)))?,
    })
}

/// The wind of levels at an altitude; none without levels.
pub fn aloft(place: &str, levels: &[WrittenLevel]) -> Result<Option<WindsAloft<TrueNorth>>, String> {
    let mut read = Vec::new();
    for (index, level) in levels.iter().enumerate() {
        let place = format!("{place}wind_level {}: ", index + 1);
        let altitude = PressureAltitude::new(feet(level.pressure_altitude_ft));
        read.push(WindLevel {
            altitude: at(&format!("{place}pressure_altitude_ft"), altitude)?,
            wind: one_wind(&place, level.wind_from_deg, level.wind_speed_kt)?,
        });
    }
    let mut higher = read.into_iter();
    let Some(lowest) = higher.next() else { return Ok(None) };
    let winds = at(&format!("{place}wind_level"), WindsAloft::new(lowest, higher.collect()))?;
    Ok(Some(winds))
}

/// A wind of a direction and a speed or of levels, or none; one without the other, or both ways, is a slip.
pub fn wind(
    place: &str,
    from_deg: Option<f64>,
    speed_kt: Option<f64>,
    levels: &[WrittenLevel],
    altitude: PressureAltitude,
) -> Result<Option<Wind<TrueNorth>>, String> {
    let by_level = aloft(place, levels)?.map(|winds| winds.at(altitude));
    match (from_deg, speed_kt) {
        (None, None) => Ok(by_level),
        (Some(_), _) | (_, Some(_)) if by_level.is_some() => {
            Err(format!("{place}wind_level and a wind of one level are both given; allowed: one of them"))
        }
        (Some(from_deg), Some(speed_kt)) => one_wind(place, from_deg, speed_kt).map(Some),
        (Some(from_deg), None) => Err(format!(
            "{place}wind_from_deg is {from_deg} deg without a speed; allowed: together with wind_speed_kt"
        )),
        (None, Some(speed_kt)) => Err(format!(
            "{place}wind_speed_kt is {speed_kt} kt without a direction; allowed: together with wind_from_deg"
        )),
    }
}

impl WrittenStation {
    fn site(&self) -> Result<(Station, ConeHalfAngle), String> {
        let key = |name: &str| format!("station {}: {name}", self.ident);
        let longitude_deg = written_degrees(&key("longitude_deg"), self.longitude_deg, -180.0, 180.0)?;
        let station = Station {
            position: Position::new(
                at(&key("latitude_deg"), Latitude::new(degrees(self.latitude_deg)))?,
                at(&key("longitude_deg"), Longitude::new(degrees(longitude_deg)))?,
            ),
            elevation: at(&key("elevation_ft"), Elevation::new(feet(self.elevation_ft)))?,
            declination: at(&key("declination_deg"), Declination::new(degrees(self.declination_deg)))?,
            ident: at(&key("ident"), Ident::new(&self.ident))?,
        };
        let half_angle_deg = self.cone_half_angle_deg.unwrap_or(VOR_CONE_HALF_ANGLE_DEG);
        Ok((station, at(&key("cone_half_angle_deg"), ConeHalfAngle::new(degrees(half_angle_deg)))?))
    }
}

/// Every station with its cone, by its ident.
pub fn stations_of(written: &[WrittenStation]) -> Result<Vec<Site>, String> {
    let sites = written.iter().enumerate().map(|(index, station)| {
        if station.ident.trim().is_empty() {
            return Err(format!("station {}: ident is empty; allowed: any word", index + 1));
        }
        if written.iter().skip(index + 1).any(|other| other.ident == station.ident) {
            return Err(format!(
                "station {}: the ident is given twice; allowed: once for each station",
                station.ident
            ));
        }
        let (site, cone) = station.site()?;
        Ok(Site { ident: station.ident.clone(), station: site, cone })
    });
    sites.collect()
}

impl Written {
    fn fixes(&self, altitude: PressureAltitude) -> Result<Vec<Fix>, String> {
        let air = &self.air;
        let everywhere = wind("air.", air.wind_from_deg, air.wind_speed_kt, &air.wind_level, altitude)?;
        let everywhere = everywhere.unwrap_or_else(Wind::calm);
        // A station that the route leaves out is read all the same.
        stations_of(&self.station)?;
        if self.route.len() < 3 {
            return Err(format!(
                "route: {} fixes are given; allowed: at least 3, for a course change lies between two legs",
                self.route.len()
            ));
        }
        self.route.iter().enumerate().map(|(index, fix)| self.fix(index, fix, everywhere, altitude)).collect()
    }

    fn fix(
        &self,
        index: usize,
        fix: &WrittenFix,
        everywhere: Wind<TrueNorth>,
        altitude: PressureAltitude,
    ) -> Result<Fix, String> {
        let place = format!("route fix {} ({}): ", index + 1, fix.fix);
        let station = self.station.iter().find(|station| station.ident == fix.fix).ok_or_else(|| {
            let known: Vec<&str> = self.station.iter().map(|station| station.ident.as_str()).collect();
            format!("{place}no station has this ident; allowed: {}", known.join(", "))
        })?;
        if index > 0 && self.route.get(index - 1).is_some_and(|before| before.fix == fix.fix) {
            return Err(format!("{place}the station follows itself; allowed: another one"));
        }
        let first = index == 0;
        if let Some(word) = &fix.turn
            && (first || index + 1 == self.route.len())
        {
            return Err(format!(
                "{place}turn is {word:?} at an end of the route; allowed: only between two legs"
            ));
        }
        let own_wind = wind(&place, fix.wind_from_deg, fix.wind_speed_kt, &fix.wind_level, altitude)?;
        if first && own_wind.is_some() {
            return Err(format!(
                "{place}a wind is given, and no leg leads here; allowed: at the fix a leg leads to"
            ));
        }
        let (site, cone_half_angle) = station.site()?;
        Ok(Fix {
            ident: station.ident.clone(),
            name: station.name.clone().unwrap_or_default(),
            on_route: RouteFix {
                station: site,
                cone_half_angle,
                turn: side(&place, fix.turn.as_deref())?,
                wind: own_wind.unwrap_or(everywhere),
            },
        })
    }
}

fn side(place: &str, word: Option<&str>) -> Result<TurnSide, String> {
    let Some(word) = word else { return Ok(TurnSide::Shortest) };
    TurnSide::ALL.iter().copied().find(|side| side.word() == word).ok_or_else(|| {
        let words: Vec<&str> = TurnSide::ALL.iter().map(|side| side.word()).collect();
        format!("{place}turn is {word:?}; allowed: {}", words.join(", "))
    })
}
