//! What ends a straight leg, and how far ahead that is.

use super::flight::{Flight, Path};
use super::leg::Leg;
use crate::earth::{Course, direct, inverse};
use crate::numeric::root_between;
use crate::station::Station;
use crate::value::units::{
    Length, foot, foot_per_minute, meter, meter_per_second, metres, nautical_mile, nautical_miles, second,
};
use crate::value::{GroundDistance, Position, Radial, SlantRange, TrueAltitude};
use crate::{Error, LegReason};

/// How far ahead an end is looked for.
pub(super) const FARTHEST_NM: f64 = 1000.0;
/// In steps of what length, in metres. A DME reading or a radial that is met twice within it is not met.
const STEP_M: f64 = 500.0;
/// A fix that lies no farther behind than this is reached, in metres.
pub(super) const REACHED_M: f64 = 20.0;

impl Flight<'_> {
    /// Distance along the course flown now to what ends the leg.
    pub fn distance_to_end(&self, path: Path) -> Result<Length, Error> {
        let Some(leg) = self.legs.get(self.leg) else { return Err(self.refuse("there is no such leg")) };
        match *leg {
            Leg::FixToAltitude(_, _, altitude)
            | Leg::CourseToAltitude(_, altitude)
            | Leg::HeadingToAltitude(_, altitude) => self.to_altitude(altitude),
            Leg::FixToDistance(fix, _, distance) => {
                let ahead = self.ahead(fix);
                let left = distance.value() + ahead;
                if left < metres(-REACHED_M) {
                    Err(self.distance_behind(distance, left))
                } else {
                    Ok(left.max(metres(0.0)))
                }
            }
            Leg::FixToDme(_, _, station, dme)
            | Leg::CourseToDme(_, station, dme)
            | Leg::HeadingToDme(_, station, dme) => self.to_dme(station, dme),
            Leg::CourseToRadial(_, station, radial) | Leg::HeadingToRadial(_, station, radial) => {
                self.to_radial(station, radial)
            }
            Leg::CourseToIntercept(_) | Leg::HeadingToIntercept(_) => self.to_intercept(),
            Leg::FixToManual(..) | Leg::HeadingToManual(_) => Ok(self.conditions.manual_distance.value()),
            _ => match (leg.ends_at(), path) {
                (Some(fix), _) => {
                    let ahead = self.ahead(fix.position);
                    if ahead < metres(-REACHED_M) {
                        let behind_nm = -ahead.get::<nautical_mile>();
                        return Err(self.refuse(LegReason::FixBehind { behind_nm }));
                    }
                    Ok(ahead.max(metres(0.0)))
                }
                (None, _) => Err(self.refuse("it has no end")),
            },
        }
    }

    /// Refuses a distance from a fix that ends so far ahead of the aircraft.
    pub fn distance_behind(&self, distance: GroundDistance, ahead: Length) -> Error {
        self.refuse(LegReason::DistanceBehind {
            distance_nm: distance.value().get::<nautical_mile>(),
            behind_nm: -ahead.get::<nautical_mile>(),
        })
    }

    /// How far ahead of the aircraft a point on its course is, negative behind.
    pub fn ahead(&self, point: Position) -> Length {
        let line = inverse(self.now.position, point);
        match line.initial_bearing {
            Some(bearing) if self.now.course.change_to(bearing).degrees().abs() > 90.0 => {
                -line.distance.value()
            }
            _ => line.distance.value(),
        }
    }

    fn to_altitude(&self, altitude: TrueAltitude) -> Result<Length, Error> {
        let climb_m_s = self.conditions.climb.get::<meter_per_second>();
        let left_m = (altitude.value() - self.now.altitude.value()).get::<meter>();
        if left_m == 0.0 || left_m * climb_m_s < 0.0 && self.passed(altitude) {
            return Ok(metres(0.0));
        }
        let time_s = left_m / climb_m_s;
        if !time_s.is_finite() {
            return Err(self.refuse(LegReason::AltitudeNotReached {
                altitude_ft: altitude.value().get::<foot>(),
                from_ft: self.now.altitude.value().get::<foot>(),
                climb_fpm: self.conditions.climb.get::<foot_per_minute>() + 0.0,
            }));
        }
        let groundspeed_m_s = self.crab(self.now.course)?.groundspeed.value().get::<meter_per_second>();
        let mut length_m = groundspeed_m_s * time_s;
        if metres(length_m) > nautical_miles(FARTHEST_NM) {
            return Err(self.refuse(LegReason::AltitudeTooFar {
                altitude_ft: altitude.value().get::<foot>(),
                needed_nm: metres(length_m).get::<nautical_mile>(),
                allowed_nm: FARTHEST_NM,
            }));
        }
        // The groundspeed changes a little as the geodesic turns; a few rounds take that up.
        for _ in 0..5 {
            let flown_s = self.time_along(metres(length_m))?.get::<second>();
            if flown_s > 0.0 {
                length_m *= time_s / flown_s;
            }
        }
        Ok(metres(length_m))
    }

    /// Whether an altitude has been passed already, climbing or descending.
    fn passed(&self, altitude: TrueAltitude) -> bool {
        let climb_m_s = self.conditions.climb.get::<meter_per_second>();
        let above_m = (self.now.altitude.value() - altitude.value()).get::<meter>();
        above_m * climb_m_s > 0.0
    }

    fn to_dme(&self, station: Station, dme: SlantRange) -> Result<Length, Error> {
        self.crab(self.now.course)?;
        let climb_m_s = self.conditions.climb.get::<meter_per_second>();
        let beyond_m = |along_m: f64| {
            let climbing_s = self.time_along(metres(along_m)).map_or(f64::NAN, |time| time.get::<second>());
            let altitude = TrueAltitude::derived(self.now.altitude.value() + metres(climb_m_s * climbing_s));
            let reading = station.observe(self.place_ahead(along_m), altitude).dme;
            (reading.value() - dme.value()).get::<meter>()
        };
        self.first_crossing(beyond_m, |_| true).ok_or_else(|| {
            let reading_nm = dme.value().get::<nautical_mile>();
            self.refuse(LegReason::ReadingNotMet { reading_nm, allowed_nm: FARTHEST_NM })
        })
    }

    fn to_radial(&self, station: Station, radial: Radial) -> Result<Length, Error> {
        let off_rad = |along_m: f64| {
            let seen = station.observe(self.place_ahead(along_m), self.now.altitude).radial;
            seen.map_or(0.0, |seen| radial.change_to(seen).degrees().to_radians())
        };
        // The reciprocal radial is crossed too, but there the cosine is negative.
        let crossing =
            self.first_crossing(|along_m| off_rad(along_m).sin(), |along_m| off_rad(along_m).cos() > 0.0);
        crossing.ok_or_else(|| {
            let radial_deg = radial.degrees();
            self.refuse(LegReason::RadialNotCrossed { radial_deg, allowed_nm: FARTHEST_NM })
        })
    }

    /// Distance to where the course flown now meets the line or the arc of the next leg.
    fn to_intercept(&self) -> Result<Length, Error> {
        if let Some(arc) = self.dme_arc(self.leg + 1) {
            return self.distance_to_arc(&arc).ok_or_else(|| {
                let radius_nm = arc.radius.value().get::<nautical_mile>();
                self.refuse(LegReason::NextArcNotMet { radius_nm, allowed_nm: FARTHEST_NM })
            });
        }
        let line: Course = match self.path(self.leg + 1)? {
            Path::Line(line) => line,
            _ => return Err(self.refuse("the leg after it must be a course to or from a fix, or a DME arc")),
        };
        self.crossing(line).ok_or_else(|| {
            self.refuse(LegReason::NextCourseNotMet {
                across_nm: line.abeam(self.now.position).cross_track.get::<nautical_mile>().abs(),
                course_deg: self.now.course.degrees(),
                allowed_nm: FARTHEST_NM,
            })
        })
    }

    /// Distance to where the course flown now crosses a line.
    pub fn crossing(&self, line: Course) -> Option<Length> {
        self.first_crossing(
            |along_m| line.abeam(self.place_ahead(along_m)).cross_track.get::<meter>(),
            |_| true,
        )
    }

    pub fn place_ahead(&self, along_m: f64) -> Position {
        direct(self.now.position, self.now.course, GroundDistance::derived(metres(along_m))).0
    }

    /// The first distance ahead at which a function changes its sign, where it counts.
    pub fn first_crossing(
        &self,
        function: impl Fn(f64) -> f64,
        counts: impl Fn(f64) -> bool,
    ) -> Option<Length> {
        let farthest_m = nautical_miles(FARTHEST_NM).get::<meter>();
        let (mut low_m, mut at_low) = (0.0, function(0.0));
        while low_m < farthest_m {
            let high_m = low_m + STEP_M;
            let at_high = function(high_m);
            if at_low * at_high <= 0.0 && at_low != 0.0 {
                let found_m = root_between(low_m, high_m, &function);
                if counts(found_m) {
                    return Some(metres(found_m));
                }
            }
            (low_m, at_low) = (high_m, at_high);
        }
        None
    }
}
