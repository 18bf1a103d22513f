//! The lead onto a radial from any intercept angle: where on the way to it the turn begins, and what the receiver shows there.

use super::{CourseChange, RadialFlown, TurnSide};
use crate::Error;
use crate::plane::Plane;
use crate::turn::TurnLimits;
use crate::value::units::{Angle, Length, Time, degrees, meter, metres};
use crate::value::{Bearing, DirectionChange, GroundDistance, North, TrueAirspeed};
use crate::wind::Wind;

/// Sine of the angle between a track and a radial at which they are parallel: rounding, and nothing that is flown.
const PARALLEL: f64 = 1e-12;

/// An aircraft on one radial that flies a straight track to another, and turns onto it.
///
/// With the aircraft at `p`, the track along `t` and the radial along `w`, all from the station, the two lines cross at
/// `s = -(p × w) / (t × w)` along the track and `q = (p + s t) · w` along the radial. There the turn is a [`CourseChange`], whose lead
/// `L` puts its beginning at `q w - L t`: the radial, the distance and the needle are those of that point.
///
/// # Accuracy
/// That of [`CourseChange`], and of the plane about the station: 1e-4 of the distance within 60 NM.
///
/// # Degenerate cases
/// An aircraft on the radial is at the crossing already, and past the beginning of its turn: that distance is
/// negative, as it is for anyone who is closer than the lead. A radial flown toward the station may be so close that the turn ends past
/// it: the distance at roll-out is negative then.
///
/// # Source
/// Derived; the crossing of two lines.
///
/// # Example
/// ```
/// use lubberline::lead::{RadialFlown, RadialIntercept};
/// use lubberline::turn::TurnLimits;
/// use lubberline::value::{GroundDistance, Radial, TrueAirspeed, units::*};
/// use lubberline::wind::Wind;
/// let onto = RadialIntercept::new(
///     Radial::new(degrees(180.0))?,
///     GroundDistance::new(nautical_miles(30.0))?,
///     Radial::new(degrees(200.0))?,
///     RadialFlown::Inbound,
///     Radial::new(degrees(335.0))?,
///     TrueAirspeed::new(knots(240.0))?,
///     Wind::calm(),
///     &TurnLimits::default(),
/// )?;
/// assert_eq!(format!("{:.2}", onto.distance_at_roll_in().value().get::<nautical_mile>()), "18.59");
/// assert_eq!(format!("{:.1}", onto.needle_at_roll_in().angle().get::<degree>()), "-2.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RadialIntercept<N: North> {
    radial: Bearing<N>,
    flown: RadialFlown,
    change: CourseChange<N>,
    to_crossing_m: f64,
    crossing_m: f64,
    /// Where roll-in begins, from the station.
    roll_in_m: Plane,
}

impl<N: North> RadialIntercept<N> {
    /// From a radial and a ground distance, along a track over the ground, onto another radial, flown to or from the station.
    ///
    /// # Errors
    /// [`Error::NoMeeting`] for a track along the radial, one that leads away from it, and one that crosses its line on the other
    /// side of the station; [`Error::CourseReversal`], [`Error::LeadTooLong`] and [`Error::WindTooStrong`] as
    /// [`CourseChange::new`].
    #[expect(clippy::too_many_arguments, reason = "a place, a radial, and what the other turns take")]
    pub fn new(
        from: Bearing<N>,
        distance: GroundDistance,
        radial: Bearing<N>,
        flown: RadialFlown,
        track: Bearing<N>,
        true_airspeed: TrueAirspeed,
        wind: Wind<N>,
        limits: &TurnLimits,
    ) -> Result<Self, Error> {
        // In the frame of the radial: along it, and to its right.
        let off = |bearing: Bearing<N>| Plane::along_deg(radial.change_to(bearing).degrees());
        let place_m = off(from) * distance.value().get::<meter>();
        let along = off(track);
        if along.east.abs() < PARALLEL {
            return Err(Error::NoMeeting { what: "the track is parallel to the radial" });
        }
        // Adding zero leaves no negative zero on the radial itself.
        let to_crossing_m = -place_m.east / along.east + 0.0;
        if to_crossing_m < 0.0 {
            return Err(Error::NoMeeting { what: "the track leads away from the radial" });
        }
        let crossing_m = place_m.north + along.north * to_crossing_m;
        if crossing_m < 0.0 {
            return Err(Error::NoMeeting {
                what: "the track crosses the line of the radial on the other side of the station",
            });
        }
        let course = match flown {
            RadialFlown::Inbound => radial.reciprocal(),
            RadialFlown::Outbound => radial,
        };
        let change = CourseChange::new(track, course, true_airspeed, wind, limits, TurnSide::Shortest)?;
        let roll_in_m = Plane { north: crossing_m, east: 0.0 } - along * change.lead().get::<meter>();
        Ok(Self { radial, flown, change, to_crossing_m, crossing_m, roll_in_m })
    }

    /// The turn, with headings and groundspeeds before and after; its fix is the crossing.
    pub fn change(&self) -> &CourseChange<N> {
        &self.change
    }

    /// Distance along the track from where the aircraft is to where the track crosses the radial.
    pub fn distance_to_crossing(&self) -> GroundDistance {
        GroundDistance::derived(metres(self.to_crossing_m))
    }

    /// Distance of that crossing from the station.
    pub fn crossing(&self) -> GroundDistance {
        GroundDistance::derived(metres(self.crossing_m))
    }

    /// Distance along the track to where roll-in begins; negative where that is behind.
    pub fn distance_to_roll_in(&self) -> Length {
        self.distance_to_crossing().value() - self.change.lead()
    }

    /// Time to where roll-in begins; negative where that is behind.
    pub fn time_to_roll_in(&self) -> Time {
        self.distance_to_roll_in() / self.change.before().groundspeed.value()
    }

    /// The radial on which roll-in begins.
    pub fn radial_at_roll_in(&self) -> Bearing<N> {
        self.radial.turned_by(self.off_radial())
    }

    /// Ground distance from the station at which roll-in begins.
    pub fn distance_at_roll_in(&self) -> GroundDistance {
        GroundDistance::derived(metres(self.roll_in_m.length()))
    }

    /// Degrees from the needle's centre with the course set that is to be flown, positive when the needle is right of
    /// centre, which means that the course lies to the right.
    pub fn needle_at_roll_in(&self) -> DirectionChange {
        let off_deg = self.off_radial().degrees();
        DirectionChange::from_degrees(match self.flown {
            RadialFlown::Inbound => off_deg,
            RadialFlown::Outbound => -off_deg,
        })
    }

    /// Distance from the course at which roll-in begins, positive when the aircraft is right of the course.
    pub fn cross_track_at_roll_in(&self) -> Length {
        metres(match self.flown {
            RadialFlown::Inbound => -self.roll_in_m.east,
            RadialFlown::Outbound => self.roll_in_m.east,
        })
    }

    /// Distance from the station at which the wings are level on the radial; negative past the station.
    pub fn distance_at_roll_out(&self) -> Length {
        let past_m = self.change.past_fix_at_roll_out().get::<meter>();
        metres(match self.flown {
            RadialFlown::Inbound => self.crossing_m - past_m,
            RadialFlown::Outbound => self.crossing_m + past_m,
        })
    }

    /// The angle at which the radial is intercepted, without its side.
    pub fn intercept_angle(&self) -> Angle {
        degrees(self.change.inbound().change_to(self.change.outbound()).degrees().abs())
    }

    /// From the radial to the one on which roll-in begins, clockwise positive.
    fn off_radial(&self) -> DirectionChange {
        DirectionChange::from_degrees(self.roll_in_m.east.atan2(self.roll_in_m.north).to_degrees())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{degree, knots, nautical_mile, nautical_miles};
    use crate::value::{RollRate, TrueBearing, TrueNorth, WindSpeed};

    fn onto(
        from_deg: f64,
        distance_nm: f64,
        radial_deg: f64,
        flown: RadialFlown,
        track_deg: f64,
        wind_kt: f64,
        limits: &TurnLimits,
    ) -> Result<RadialIntercept<TrueNorth>, Error> {
        RadialIntercept::new(
            TrueBearing::from_degrees(from_deg),
            GroundDistance::new(nautical_miles(distance_nm)).unwrap(),
            TrueBearing::from_degrees(radial_deg),
            flown,
            TrueBearing::from_degrees(track_deg),
            TrueAirspeed::new(knots(240.0)).unwrap(),
            Wind { from: TrueBearing::from_degrees(310.0), speed: WindSpeed::new(knots(wind_kt)).unwrap() },
            limits,
        )
    }

    #[test]
    fn in_calm_air_the_turn_begins_a_chord_s_height_off_the_radial() {
        let limits = TurnLimits { roll: RollRate::instant(), ..TurnLimits::default() };
        let airspeed = TrueAirspeed::new(knots(240.0)).unwrap();
        let radius_nm =
            crate::turn::radius(airspeed, limits.governing_bank(airspeed).0).get::<nautical_mile>();
        for angle_deg in [10.0, 30.0, 45.0, 60.0, 90.0] {
            // South of the station, west of a radial to the south that is flown north: the course lies to the right.
            let found = onto(183.0, 30.0, 180.0, RadialFlown::Inbound, angle_deg, 0.0, &limits).unwrap();
            let off_nm = radius_nm * (1.0 - angle_deg.to_radians().cos());
            let cross_nm = found.cross_track_at_roll_in().get::<nautical_mile>();
            assert!((cross_nm + off_nm).abs() < 1e-9, "{angle_deg}: {cross_nm}");
            let needle_deg = found.needle_at_roll_in().angle().get::<degree>();
            let distance_nm = found.distance_at_roll_in().value().get::<nautical_mile>();
            assert!((needle_deg - (off_nm / distance_nm).asin().to_degrees()).abs() < 1e-9);
            assert!((found.radial_at_roll_in().degrees() - 180.0 - needle_deg).abs() < 1e-9);
        }
    }

    #[test]
    fn the_needle_points_to_the_course() {
        let limits = TurnLimits::default();
        // East of north, flying west: outbound on the radial north, the course lies to the left.
        let left = onto(20.0, 20.0, 0.0, RadialFlown::Outbound, 300.0, 30.0, &limits).unwrap();
        assert!(left.needle_at_roll_in().degrees() < 0.0 && left.cross_track_at_roll_in().value > 0.0);
        let right = onto(20.0, 20.0, 0.0, RadialFlown::Inbound, 240.0, 30.0, &limits).unwrap();
        assert!(right.needle_at_roll_in().degrees() > 0.0 && right.cross_track_at_roll_in().value < 0.0);
    }

    #[test]
    fn in_wind_the_turn_ends_on_the_radial() {
        let found = onto(20.0, 20.0, 0.0, RadialFlown::Inbound, 240.0, 45.0, &TurnLimits::default()).unwrap();
        let end = found.change.at(found.change.turn().duration());
        // From the crossing, the end lies along the radial, toward the station.
        assert!((end.bearing_from_fix.unwrap().degrees() - 180.0).abs() < 1e-9);
        let along_m = found.crossing_m - end.distance.value().get::<meter>();
        assert!((found.distance_at_roll_out().get::<meter>() - along_m).abs() < 1e-6);
    }

    #[test]
    fn tracks_that_do_not_lead_to_the_radial_are_refused() {
        for (track_deg, word) in [(0.0, "parallel"), (45.0, "away"), (185.0, "other side")] {
            let refused =
                onto(20.0, 20.0, 0.0, RadialFlown::Outbound, track_deg, 0.0, &TurnLimits::default());
            let text = refused.unwrap_err().to_string();
            assert!(text.contains(word), "{track_deg}: {text}");
        }
        let on_it = onto(0.0, 20.0, 0.0, RadialFlown::Outbound, 300.0, 0.0, &TurnLimits::default()).unwrap();
        assert_eq!(on_it.to_crossing_m, 0.0);
        assert!(on_it.distance_to_roll_in().value < 0.0);
    }
}
