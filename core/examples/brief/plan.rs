//! A plan as it is written: read from TOML, and turned into the library's values or an error that says where and why.

use std::fmt::Display;

use lubberline::air::{Air, isa_deviation};
use lubberline::lead::TurnSide;
use lubberline::station::{Station, VOR_CONE_HALF_ANGLE_DEG};
use lubberline::turn::TurnLimits;
use lubberline::value::units::{
    degrees, degrees_celsius, degrees_per_second, feet, hectopascals, kelvins, knots,
};
use lubberline::value::{
    AltimeterSetting, Bank, CalibratedAirspeed, ConeHalfAngle, Declination, Elevation, IsaDeviation,
    Latitude, Longitude, Mach, Position, PressureAltitude, RollRate, Temperature, TrueAirspeed, TrueBearing,
    TrueNorth, TurnRate, WindSpeed,
};
use lubberline::wind::Wind;
use serde::Deserialize;

/// The words of the file.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Written {
    title: String,
    aircraft: WrittenAircraft,
    air: WrittenAir,
    station: Vec<WrittenStation>,
    route: Vec<WrittenFix>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct WrittenAircraft {
    calibrated_airspeed_kt: Option<f64>,
    mach: Option<f64>,
    pressure_altitude_ft: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct WrittenAir {
    isa_deviation_k: Option<f64>,
    temperature_degc: Option<f64>,
    #[serde(default = "standard_setting_hpa")]
    altimeter_setting_hpa: f64,
    #[serde(default)]
    wind_from_deg: f64,
    #[serde(default)]
    wind_speed_kt: f64,
}

fn standard_setting_hpa() -> f64 {
    1013.25
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct WrittenStation {
    ident: String,
    #[serde(default)]
    name: String,
    latitude_deg: f64,
    longitude_deg: f64,
    #[serde(default)]
    elevation_ft: f64,
    #[serde(default)]
    declination_deg: f64,
    cone_half_angle_deg: Option<f64>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct WrittenFix {
    fix: String,
    turn: Option<String>,
    wind_from_deg: Option<f64>,
    wind_speed_kt: Option<f64>,
}

/// A plan ready to be briefed.
pub struct Plan {
    pub title: String,
    pub true_airspeed: TrueAirspeed,
    pub pressure_altitude: PressureAltitude,
    pub deviation: IsaDeviation,
    pub setting: AltimeterSetting,
    pub limits: TurnLimits,
    pub route: Vec<Fix>,
}

/// A station on the route.
#[derive(Clone)]
pub struct Fix {
    pub ident: String,
    pub name: String,
    pub station: Station,
    pub cone_half_angle: ConeHalfAngle,
    pub turn: TurnSide,
    pub wind: Wind<TrueNorth>,
}

/// Puts the place of a value before the words of its error.
fn at<T, E: Display>(place: &str, value: Result<T, E>) -> Result<T, String> {
    value.map_err(|error| format!("{place}: {error}"))
}

impl Plan {
    /// Reads a plan; the error names the line or the key, the value and what is allowed.
    pub fn read(text: &str) -> Result<Self, String> {
        let written: Written =
            toml::from_str(text).map_err(|error| error.to_string().trim_end().to_string())?;
        let pressure_altitude = at(
            "aircraft.pressure_altitude_ft",
            PressureAltitude::new(feet(written.aircraft.pressure_altitude_ft)),
        )?;
        let deviation = written.air.deviation(pressure_altitude)?;
        let setting = at(
            "air.altimeter_setting_hpa",
            AltimeterSetting::new(hectopascals(written.air.altimeter_setting_hpa)),
        )?;
        let route = written.fixes()?;
        Ok(Self {
            true_airspeed: written.aircraft.true_airspeed(Air::new(pressure_altitude, deviation))?,
            limits: written.aircraft.limits()?,
            title: written.title,
            pressure_altitude,
            deviation,
            setting,
            route,
        })
    }
}

impl WrittenAircraft {
    fn true_airspeed(&self, air: Air) -> Result<TrueAirspeed, String> {
        let airspeed = match (self.calibrated_airspeed_kt, self.mach) {
            (Some(speed_kt), None) => {
                let calibrated =
                    at("aircraft.calibrated_airspeed_kt", CalibratedAirspeed::new(knots(speed_kt)))?;
                at("aircraft.calibrated_airspeed_kt", air.true_from_calibrated(calibrated))?
            }
            (None, Some(number)) => {
                let ratio = lubberline::value::units::Ratio::new::<lubberline::value::units::ratio>(number);
                at("aircraft.mach", air.true_from_mach(at("aircraft.mach", Mach::new(ratio))?))?
            }
            (Some(_), Some(_)) => {
                return Err(
                    "aircraft: calibrated_airspeed_kt and mach are both given; allowed: one of them".into()
                );
            }
            (None, None) => {
                return Err("aircraft: no speed is given; allowed: calibrated_airspeed_kt or mach".into());
            }
        };
        at("aircraft", TrueAirspeed::new(airspeed.value()))
    }

    fn limits(&self) -> Result<TurnLimits, String> {
        Ok(TurnLimits {
            bank: at("aircraft.bank_limit_deg", Bank::new(degrees(self.bank_limit_deg)))?,
            rate: at(
                "aircraft.turn_rate_limit_deg_per_s",
                TurnRate::new(degrees_per_second(self.turn_rate_limit_deg_per_s)),
            )?,
            roll: at(
                "aircraft.roll_rate_deg_per_s",
                RollRate::new(degrees_per_second(self.roll_rate_deg_per_s)),
            )?,
        })
    }
}

impl WrittenAir {
    fn deviation(&self, altitude: PressureAltitude) -> Result<IsaDeviation, String> {
        match (self.isa_deviation_k, self.temperature_degc) {
            (Some(deviation_k), None) => at("air.isa_deviation_k", IsaDeviation::new(kelvins(deviation_k))),
            (None, Some(temperature_degc)) => {
                let temperature =
                    at("air.temperature_degc", Temperature::new(degrees_celsius(temperature_degc)))?;
                at("air.temperature_degc", isa_deviation(temperature, altitude))
            }
            (Some(_), Some(_)) => {
                Err("air: isa_deviation_k and temperature_degc are both given; allowed: one of them".into())
            }
            (None, None) => at("air", IsaDeviation::new(kelvins(0.0))),
        }
    }
}

impl WrittenStation {
    fn station(&self) -> Result<(Station, ConeHalfAngle), String> {
        let place = |key: &str| format!("station {}: {key}", self.ident);
        let latitude = at(&place("latitude_deg"), Latitude::new(degrees(self.latitude_deg)))?;
        let longitude = at(&place("longitude_deg"), Longitude::new(degrees(self.longitude_deg)))?;
        let station = Station {
            position: Position::new(latitude, longitude),
            elevation: at(&place("elevation_ft"), Elevation::new(feet(self.elevation_ft)))?,
            declination: at(&place("declination_deg"), Declination::new(degrees(self.declination_deg)))?,
        };
        let half_angle_deg = self.cone_half_angle_deg.unwrap_or(VOR_CONE_HALF_ANGLE_DEG);
        Ok((station, at(&place("cone_half_angle_deg"), ConeHalfAngle::new(degrees(half_angle_deg)))?))
    }
}

impl Written {
    fn fixes(&self) -> Result<Vec<Fix>, String> {
        for (index, station) in self.station.iter().enumerate() {
            if self.station.iter().skip(index + 1).any(|other| other.ident == station.ident) {
                return Err(format!(
                    "station {}: the ident is given twice; allowed: one station an ident",
                    station.ident
                ));
            }
        }
        if self.route.len() < 3 {
            return Err(format!(
                "route: {} fixes are given; allowed: at least 3, for a course change lies between two legs",
                self.route.len()
            ));
        }
        self.route.iter().enumerate().map(|(index, fix)| self.fix(index, fix)).collect()
    }

    fn fix(&self, index: usize, fix: &WrittenFix) -> Result<Fix, String> {
        let place = |key: &str| format!("route fix {} ({}): {key}", index + 1, fix.fix);
        let station = self.station.iter().find(|station| station.ident == fix.fix).ok_or_else(|| {
            let known: Vec<&str> = self.station.iter().map(|station| station.ident.as_str()).collect();
            format!(
                "route fix {}: {:?} is no station of the plan; allowed: {}",
                index + 1,
                fix.fix,
                known.join(", ")
            )
        })?;
        if index > 0 && self.route.get(index - 1).is_some_and(|before| before.fix == fix.fix) {
            return Err(place("the same station follows itself; allowed: another one"));
        }
        let word = fix.turn.as_deref().unwrap_or(TurnSide::Shortest.word());
        let turn = TurnSide::ALL.iter().copied().find(|side| side.word() == word).ok_or_else(|| {
            let words: Vec<&str> = TurnSide::ALL.iter().map(|side| side.word()).collect();
            format!("{} is {word:?}; allowed: {}", place("turn"), words.join(", "))
        })?;
        let from_deg = fix.wind_from_deg.unwrap_or(self.air.wind_from_deg);
        let speed_kt = fix.wind_speed_kt.unwrap_or(self.air.wind_speed_kt);
        let wind = Wind {
            from: at(&place("wind_from_deg"), TrueBearing::new(degrees(from_deg)))?,
            speed: at(&place("wind_speed_kt"), WindSpeed::new(knots(speed_kt)))?,
        };
        let (site, cone_half_angle) = station.station()?;
        let name = if station.name.is_empty() { station.ident.clone() } else { station.name.clone() };
        Ok(Fix { ident: station.ident.clone(), name, station: site, cone_half_angle, turn, wind })
    }
}
