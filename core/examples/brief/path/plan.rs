//! A plan of legs in the library's values, or an error that says which key is wrong, its value and what is allowed.

use lubberline::air::{Air, true_altitude};
use lubberline::lead::ArcSense;
use lubberline::procedure::legs::{Conditions, Fix, Hold, HoldLength, Leg, LegCode, Passage, ReversalForm};
use lubberline::procedure::{HoldingSide, HoldingSpeedRule, OFF_LEG_SLOW_S, TimedLeg};
use lubberline::station::Station;
use lubberline::value::units::{degrees, feet, feet_per_minute, nautical_miles, seconds};
use lubberline::value::{
    AltimeterSetting, Declination, Elevation, GroundDistance, HoldTime, InterceptAngle, IsaDeviation,
    Latitude, Longitude, MagneticBearing, Position, PressureAltitude, Quantity, Radial, SlantRange,
    TrueAltitude, TrueBearing, TrueNorth,
};
use lubberline::wind::{Wind, WindsAloft};

use super::written::{Written, WrittenFix, WrittenLeg};
use crate::plan::{Site, aloft, at, in_words, stations_of, wind, written_degrees};

/// A plan of legs, ready to be briefed.
pub struct Plan {
    pub title: String,
    pub pressure_altitude: PressureAltitude,
    pub deviation: IsaDeviation,
    pub setting: AltimeterSetting,
    pub holding_rule: HoldingSpeedRule,
    pub conditions: Conditions,
    /// Of the legs' courses and headings, none if they are true.
    pub variation: Option<Declination>,
    /// By level, if they are given so.
    pub winds: Option<WindsAloft<TrueNorth>>,
    pub stations: Vec<Site>,
    pub fixes: Vec<Named>,
    pub legs: Vec<Planned>,
}

/// A place with its ident.
pub struct Named {
    pub ident: String,
    pub position: Position,
}

/// A leg with the fix it is flown to or from.
pub struct Planned {
    pub fix: Option<String>,
    pub leg: Leg,
}

impl Plan {
    /// Reads a plan of legs.
    pub fn read(text: &str) -> Result<Self, String> {
        let written: Written = toml::from_str(text).map_err(|error| in_words(&error))?;
        let altitude = written.aircraft.altitude()?;
        let deviation = written.air.deviation(altitude)?;
        let setting = written.air.setting()?;
        let stations = stations_of(&written.station)?;
        let fixes = written.fix.iter().map(|fix| fix.named(&stations)).collect::<Result<Vec<_>, _>>()?;
        for (index, fix) in fixes.iter().enumerate() {
            if fixes.iter().take(index).any(|other| other.ident == fix.ident) {
                return Err(format!(
                    "fix {}: the ident is given twice; allowed: once for each place",
                    fix.ident
                ));
            }
        }
        let sea = at("air", Elevation::new(feet(0.0)))?;
        let conditions =
            written.conditions(altitude, true_altitude(altitude, setting, sea, deviation), deviation)?;
        let variation = written.path.magnetic_variation_deg.map(variation).transpose()?;
        let places = Places { stations: &stations, fixes: &fixes, variation };
        let legs = written.leg.iter().enumerate();
        let legs = legs.map(|(index, leg)| places.leg(index, leg)).collect::<Result<Vec<_>, _>>()?;
        let rule = written.path.holding_rule.as_deref().unwrap_or("icao");
        Ok(Self {
            title: written.title.unwrap_or_else(|| "Untitled plan".into()),
            pressure_altitude: altitude,
            deviation,
            setting,
            holding_rule: word("path.holding_rule", rule, HoldingSpeedRule::ALL, HoldingSpeedRule::word)?,
            conditions,
            variation,
            winds: aloft("air.", &written.air.wind_level)?,
            stations,
            fixes,
            legs,
        })
    }
}

/// The alternative of a word.
fn word<T: Copy>(key: &str, given: &str, all: &[T], word_of: fn(T) -> &'static str) -> Result<T, String> {
    all.iter().copied().find(|known| word_of(*known) == given).ok_or_else(|| {
        let words: Vec<&str> = all.iter().copied().map(word_of).collect();
        format!("{key} is {given:?}; allowed: {}", words.join(", "))
    })
}

/// The magnetic variation of the legs' courses.
fn variation(variation_deg: f64) -> Result<Declination, String> {
    let key = "path.magnetic_variation_deg";
    at(key, Declination::new(degrees(written_degrees(key, variation_deg, -180.0, 180.0)?)))
}

impl Written {
    fn conditions(
        &self,
        altitude: PressureAltitude,
        true_altitude: TrueAltitude,
        deviation: IsaDeviation,
    ) -> Result<Conditions, String> {
        let (air, path) = (&self.air, &self.path);
        let airspeed = self.aircraft.true_airspeed(Air::new(altitude, deviation))?;
        let mut conditions = Conditions::level(airspeed, true_altitude);
        conditions.limits = self.aircraft.limits()?;
        conditions.wind = wind("air.", air.wind_from_deg, air.wind_speed_kt, &air.wind_level, altitude)?
            .unwrap_or_else(Wind::calm);
        if let Some(climb_fpm) = path.climb_fpm {
            let checked = Quantity::VerticalSpeed.check("path.climb_fpm", climb_fpm);
            conditions.climb = feet_per_minute(checked.map_err(|error| error.to_string())?);
        }
        if let Some(angle_deg) = path.intercept_angle_deg {
            conditions.intercept = at("path.intercept_angle_deg", InterceptAngle::new(degrees(angle_deg)))?;
        }
        if let Some(distance_nm) = path.manual_distance_nm {
            conditions.manual_distance =
                at("path.manual_distance_nm", GroundDistance::new(nautical_miles(distance_nm)))?;
        }
        Ok(conditions)
    }
}

impl WrittenFix {
    fn named(&self, stations: &[Site]) -> Result<Named, String> {
        if self.ident.trim().is_empty() || stations.iter().any(|site| site.ident == self.ident) {
            return Err(format!("fix {:?}: allowed: an ident of its own", self.ident));
        }
        let key = |name: &str| format!("fix {}: {name}", self.ident);
        let longitude_deg = written_degrees(&key("longitude_deg"), self.longitude_deg, -180.0, 180.0)?;
        Ok(Named {
            ident: self.ident.clone(),
            position: Position::new(
                at(&key("latitude_deg"), Latitude::new(degrees(self.latitude_deg)))?,
                at(&key("longitude_deg"), Longitude::new(degrees(longitude_deg)))?,
            ),
        })
    }
}

/// What the legs call by its ident.
struct Places<'a> {
    stations: &'a [Site],
    fixes: &'a [Named],
    /// From which courses are magnetic.
    variation: Option<Declination>,
}

impl Places<'_> {
    fn position(&self, key: &str, ident: &str) -> Result<Position, String> {
        let fix = self.fixes.iter().find(|fix| fix.ident == ident).map(|fix| fix.position);
        let station =
            || self.stations.iter().find(|site| site.ident == ident).map(|site| site.station.position);
        fix.or_else(station).ok_or_else(|| {
            let stations = self.stations.iter().map(|site| site.ident.as_str());
            let known: Vec<&str> = self.fixes.iter().map(|fix| fix.ident.as_str()).chain(stations).collect();
            format!("{key} is {ident:?}; allowed: {}", known.join(", "))
        })
    }

    fn leg(&self, index: usize, written: &WrittenLeg) -> Result<Planned, String> {
        let place = format!("leg {} ({})", index + 1, written.code);
        let code = word(&format!("leg {}: code", index + 1), &written.code, LegCode::ALL, LegCode::word)?;
        let keys = Keys { place: &place, written, places: self, taken: std::cell::RefCell::new(Vec::new()) };
        let leg = keys.leg(code)?;
        keys.nothing_else()?;
        Ok(Planned { fix: written.fix.clone(), leg })
    }
}

/// The keys of one leg, of which each must be there that the leg needs, and no other.
struct Keys<'a> {
    place: &'a str,
    written: &'a WrittenLeg,
    places: &'a Places<'a>,
    taken: std::cell::RefCell<Vec<&'static str>>,
}

impl Keys<'_> {
    fn key(&self, name: &'static str) -> String {
        self.taken.borrow_mut().push(name);
        format!("{}: {name}", self.place)
    }

    /// A number the leg needs.
    fn number(&self, name: &'static str, value: Option<f64>) -> Result<(String, f64), String> {
        let key = self.key(name);
        value.map(|value| (key.clone(), value)).ok_or_else(|| format!("{key} is missing; the leg needs it"))
    }

    fn ident(&self, name: &'static str, value: Option<&String>) -> Result<(String, String), String> {
        let key = self.key(name);
        value
            .map(|ident| (key.clone(), ident.clone()))
            .ok_or_else(|| format!("{key} is missing; the leg needs it"))
    }

    fn fix(&self) -> Result<Position, String> {
        let (key, ident) = self.ident("fix", self.written.fix.as_ref())?;
        self.places.position(&key, &ident)
    }

    fn end(&self) -> Result<Fix, String> {
        self.key("fly_over");
        let over = self.written.fly_over.unwrap_or(false);
        Ok(Fix { position: self.fix()?, passage: if over { Passage::FlyOver } else { Passage::FlyBy } })
    }

    fn center(&self) -> Result<Position, String> {
        let (key, ident) = self.ident("center", self.written.center.as_ref())?;
        self.places.position(&key, &ident)
    }

    fn station(&self) -> Result<Station, String> {
        let (key, ident) = self.ident("station", self.written.station.as_ref())?;
        let stations = self.places.stations;
        stations.iter().find(|site| site.ident == ident).map(|site| site.station).ok_or_else(|| {
            let known: Vec<&str> = stations.iter().map(|site| site.ident.as_str()).collect();
            format!("{key} is {ident:?}; allowed: {}", known.join(", "))
        })
    }

    fn course(&self) -> Result<TrueBearing, String> {
        let (key, course_deg) = self.number("course_deg", self.written.course_deg)?;
        let course = degrees(written_degrees(&key, course_deg, 0.0, 360.0)?);
        match self.places.variation {
            Some(variation) => Ok(at(&key, MagneticBearing::new(course))?.to_true(variation)),
            None => at(&key, TrueBearing::new(course)),
        }
    }

    fn altitude(&self) -> Result<TrueAltitude, String> {
        let (key, altitude_ft) = self.number("altitude_ft", self.written.altitude_ft)?;
        at(&key, TrueAltitude::new(feet(altitude_ft)))
    }

    fn distance(&self) -> Result<GroundDistance, String> {
        let (key, distance_nm) = self.number("distance_nm", self.written.distance_nm)?;
        at(&key, GroundDistance::new(nautical_miles(distance_nm)))
    }

    fn dme(&self) -> Result<SlantRange, String> {
        let (key, dme_nm) = self.number("dme_nm", self.written.dme_nm)?;
        at(&key, SlantRange::new(nautical_miles(dme_nm)))
    }

    fn radial(&self) -> Result<Radial, String> {
        let (key, radial_deg) = self.number("radial_deg", self.written.radial_deg)?;
        at(&key, Radial::new(degrees(written_degrees(&key, radial_deg, 0.0, 360.0)?)))
    }

    /// Whether an arc, a racetrack or a procedure turn goes to the right.
    fn to_right(&self) -> Result<bool, String> {
        let key = self.key("turn");
        match self.written.turn.as_deref() {
            Some("left") => Ok(false),
            Some("right") => Ok(true),
            Some(other) => Err(format!("{key} is {other:?}; allowed: left, right")),
            None => Err(format!("{key} is missing; allowed: left, right")),
        }
    }

    fn sense(&self) -> Result<ArcSense, String> {
        Ok(if self.to_right()? { ArcSense::Clockwise } else { ArcSense::Counterclockwise })
    }

    /// An alternative by its word, or the usual one.
    fn choice<T: Copy>(
        &self,
        name: &'static str,
        given: Option<&String>,
        all: &[T],
        word_of: fn(T) -> &'static str,
        usual: T,
    ) -> Result<T, String> {
        let key = self.key(name);
        given.map_or(Ok(usual), |given| word(&key, given, all, word_of))
    }

    fn time(&self, name: &'static str, given: Option<f64>, usual_s: f64) -> Result<HoldTime, String> {
        at(&self.key(name), HoldTime::new(seconds(given.unwrap_or(usual_s))))
    }

    fn hold(&self) -> Result<Hold, String> {
        let written = self.written;
        let timed = || {
            let usual = TimedLeg::OutboundFromLevel;
            self.choice("timed", written.timed.as_ref(), TimedLeg::ALL, TimedLeg::word, usual)
        };
        let length = if written.dme_nm.is_some() {
            HoldLength::Dme(self.station()?, self.dme()?)
        } else if written.distance_nm.is_some() {
            HoldLength::Distance(timed()?, self.distance()?)
        } else {
            HoldLength::Time(timed()?, self.time("outbound_time_s", written.outbound_time_s, 60.0)?)
        };
        Ok(Hold {
            fix: self.fix()?,
            inbound: self.course()?,
            side: if self.to_right()? { HoldingSide::Right } else { HoldingSide::Left },
            length,
        })
    }

    fn leg(&self, code: LegCode) -> Result<Leg, String> {
        Ok(match code {
            // There is no turn at the first fix, flown by or over.
            LegCode::InitialFix => Leg::InitialFix(Fix { position: self.fix()?, passage: Passage::FlyBy }),
            LegCode::TrackToFix => Leg::TrackToFix(self.end()?),
            LegCode::CourseToFix => Leg::CourseToFix(self.course()?, self.end()?),
            LegCode::DirectToFix => Leg::DirectToFix(self.end()?),
            LegCode::ArcToFix => {
                Leg::ArcToFix { station: self.station()?.position, sense: self.sense()?, fix: self.end()? }
            }
            LegCode::RadiusToFix => {
                Leg::RadiusToFix { center: self.center()?, sense: self.sense()?, fix: self.end()? }
            }
            LegCode::FixToAltitude => Leg::FixToAltitude(self.fix()?, self.course()?, self.altitude()?),
            LegCode::FixToDistance => Leg::FixToDistance(self.fix()?, self.course()?, self.distance()?),
            LegCode::FixToDme => Leg::FixToDme(self.fix()?, self.course()?, self.station()?, self.dme()?),
            LegCode::FixToManual => Leg::FixToManual(self.fix()?, self.course()?),
            LegCode::CourseToAltitude => Leg::CourseToAltitude(self.course()?, self.altitude()?),
            LegCode::CourseToDme => Leg::CourseToDme(self.course()?, self.station()?, self.dme()?),
            LegCode::CourseToIntercept => Leg::CourseToIntercept(self.course()?),
            LegCode::CourseToRadial => Leg::CourseToRadial(self.course()?, self.station()?, self.radial()?),
            LegCode::HeadingToAltitude => Leg::HeadingToAltitude(self.course()?, self.altitude()?),
            LegCode::HeadingToDme => Leg::HeadingToDme(self.course()?, self.station()?, self.dme()?),
            LegCode::HeadingToIntercept => Leg::HeadingToIntercept(self.course()?),
            LegCode::HeadingToManual => Leg::HeadingToManual(self.course()?),
            LegCode::HeadingToRadial => Leg::HeadingToRadial(self.course()?, self.station()?, self.radial()?),
            LegCode::HoldToAltitude => Leg::HoldToAltitude(self.hold()?, self.altitude()?),
            LegCode::HoldToFix => Leg::HoldToFix(self.hold()?),
            LegCode::HoldToManual => Leg::HoldToManual(self.hold()?),
            LegCode::ProcedureTurn => self.procedure_turn()?,
        })
    }

    fn procedure_turn(&self) -> Result<Leg, String> {
        let (written, usual) = (self.written, ReversalForm::Off45);
        let form =
            self.choice("reversal", written.reversal.as_ref(), ReversalForm::ALL, ReversalForm::word, usual)?;
        Ok(Leg::ProcedureTurn {
            fix: self.fix()?,
            outbound: self.course()?,
            outbound_distance: self.distance()?,
            first_right: self.to_right()?,
            form,
            off_time: match form {
                ReversalForm::Off45 => self.time("off_time_s", written.off_time_s, OFF_LEG_SLOW_S)?,
                // Nothing of it is flown by time.
                _ => at(self.place, HoldTime::new(seconds(OFF_LEG_SLOW_S)))?,
            },
        })
    }

    /// A key that the leg has no use for is a slip.
    fn nothing_else(&self) -> Result<(), String> {
        let written = self.written;
        let given = [
            ("fix", written.fix.is_some()),
            ("fly_over", written.fly_over.is_some()),
            ("course_deg", written.course_deg.is_some()),
            ("altitude_ft", written.altitude_ft.is_some()),
            ("distance_nm", written.distance_nm.is_some()),
            ("dme_nm", written.dme_nm.is_some()),
            ("station", written.station.is_some()),
            ("radial_deg", written.radial_deg.is_some()),
            ("center", written.center.is_some()),
            ("turn", written.turn.is_some()),
            ("outbound_time_s", written.outbound_time_s.is_some()),
            ("timed", written.timed.is_some()),
            ("reversal", written.reversal.is_some()),
            ("off_time_s", written.off_time_s.is_some()),
        ];
        let taken = self.taken.borrow();
        match given.iter().find(|(name, is_given)| *is_given && !taken.contains(name)) {
            Some((name, _)) => Err(format!("{}: {name} is given; allowed: {}", self.place, taken.join(", "))),
            None => Ok(()),
        }
    }
}
