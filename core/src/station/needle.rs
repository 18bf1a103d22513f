//! The needle of a course deviation indicator: what it shows for a radial and a selected course, and what that is in miles.

use crate::Error;
use crate::earth::MEAN_RADIUS_M;
use crate::value::units::{
    Angle, AngularVelocity, Length, Ratio, Time, degree, degrees, degrees_per_second, meter,
    meter_per_second, metres, nautical_mile, radian, ratio, seconds,
};
use crate::value::{
    AbeamZone, CourseDeviation, Deflection, DirectionChange, FullScale, Groundspeed, Quantity, Radial,
    StationDistance, choice,
};

/// Full scale of a VOR indicator, in degrees: five dots of two degrees each side.
///
/// Source: FAA-H-8083-25 (Pilot's Handbook of Aeronautical Knowledge), VOR section (from memory), and most texts.
pub const FULL_SCALE_FIVE_DOTS_DEG: f64 = 10.0;

/// Full scale of a VOR indicator, in degrees, as the instrument flying handbook states it: "12 degrees or more".
///
/// Source: FAA-H-8083-15A (Instrument Flying Handbook), chapter 7, p. 7-11; its own dots of two degrees make ten.
pub const FULL_SCALE_HANDBOOK_DEG: f64 = 12.0;

/// Degrees to a dot of a VOR indicator.
///
/// Source: FAA-H-8083-15A (Instrument Flying Handbook), chapter 7, p. 7-11.
pub const DEGREES_PER_DOT: f64 = 2.0;

choice! {
    /// What a receiver shows beside its needle.
    ToFrom {
        /// Neither: abeam the station, or no use is to be made of the needle.
        Off = 0: "off",
        /// The selected course leads to the station.
        To = 1: "to",
        /// The selected course leads from the station.
        From = 2: "from",
    }
}

/// An indicator: how far its needle goes, and how narrowly it tells to from from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Indicator {
    /// Deviation at which the needle stands at the end of its scale.
    pub full_scale: FullScale,
    /// Half-width of the zone about 90 degrees from the selected course in which it shows neither to nor from.
    pub abeam_zone: AbeamZone,
}

impl Default for Indicator {
    /// Ten degrees of full scale, and neither to nor from within one degree of abeam; the latter is common practice.
    fn default() -> Self {
        Self {
            full_scale: FullScale::derived(degrees(FULL_SCALE_FIVE_DOTS_DEG)),
            abeam_zone: AbeamZone::derived(degrees(1.0)),
        }
    }
}

/// What an indicator shows.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Needle {
    /// Angle at the station from the aircraft to the selected course, -90 to 90 degrees, positive when the course lies to the right.
    pub deviation: Angle,
    /// Where the needle stands: the deviation as a part of full scale, held at its end, -1 to 1, positive right of centre.
    pub deflection: Ratio,
    /// Whether the selected course leads to or from the station.
    pub to_from: ToFrom,
}

impl Indicator {
    /// What it shows on a radial with a course selected.
    ///
    /// Within 90 degrees of the selected course it shows FROM and `course - radial`; beyond, TO and `radial + 180° - course`. Heading does
    /// not enter: the needle says where the course lies for one who flies along it.
    ///
    /// # Degenerate cases
    /// Exactly abeam the needle is at the end of its scale and neither TO nor FROM is shown, whatever the zone's width.
    ///
    /// # Source
    /// FAA-H-8083-15 (Instrument Flying Handbook), VOR indications (from memory).
    ///
    /// # Example
    /// ```
    /// use lubberline::station::{Indicator, ToFrom};
    /// use lubberline::value::{Radial, units::*};
    /// let shown = Indicator::default().needle(Radial::new(degrees(227.0))?, Radial::new(degrees(50.0))?);
    /// assert_eq!(shown.to_from, ToFrom::To);
    /// assert!((shown.deviation - degrees(-3.0)).abs() < degrees(1e-9), "left of centre: the course lies to the left");
    /// # Ok::<(), lubberline::Error>(())
    /// ```
    pub fn needle(&self, radial: Radial, selected: Radial) -> Needle {
        let from_deg = radial.change_to(selected).angle().get::<degree>();
        let outbound = from_deg.abs() <= 90.0;
        let deviation_deg = if outbound { from_deg } else { 180.0_f64.copysign(from_deg) - from_deg };
        let from_abeam_deg = (from_deg.abs() - 90.0).abs();
        let to_from = if from_abeam_deg == 0.0 || from_abeam_deg < self.abeam_zone.value().get::<degree>() {
            ToFrom::Off
        } else if outbound {
            ToFrom::From
        } else {
            ToFrom::To
        };
        Needle { deviation: degrees(deviation_deg), deflection: self.deflection(deviation_deg), to_from }
    }

    /// The deviation of a deflection, `deflection · full scale`. At either end of the scale it is the least that it may be.
    pub fn deviation(&self, deflection: Deflection) -> CourseDeviation {
        CourseDeviation::derived(self.full_scale.value() * deflection.value().get::<ratio>())
    }

    /// The needle's place for a deviation, held at the ends of its scale.
    fn deflection(&self, deviation_deg: f64) -> Ratio {
        Ratio::new::<ratio>((deviation_deg / self.full_scale.value().get::<degree>()).clamp(-1.0, 1.0))
    }

    /// The needle's place for a distance off course, right positive, at a distance from the station.
    ///
    /// # Errors
    /// As [`deviation_of_cross_track`].
    pub fn deflection_of_cross_track(
        &self,
        cross_track: Length,
        distance: StationDistance,
    ) -> Result<Ratio, Error> {
        Ok(self.deflection(deviation_of_cross_track(cross_track, distance)?.value().get::<degree>()))
    }
}

/// `R sin(d / R)`: what an angle at the station is worth at a distance, over a sphere of the mean radius.
pub(super) fn arm_m(distance: StationDistance) -> f64 {
    MEAN_RADIUS_M * (distance.value().get::<meter>() / MEAN_RADIUS_M).sin()
}

/// Distance off course, right positive, for a deviation at a distance from the station.
///
/// `-R asin(sin(d / R) sin(deviation))`, in the plane `-d sin(deviation)`: right of course the needle stands left.
///
/// # Accuracy
/// Exact on a sphere of the mean radius; the ellipsoid moves it by less than 0.6 percent.
///
/// # Degenerate cases
/// At 90 degrees it is the whole distance.
///
/// # Source
/// The law of sines on the sphere.
///
/// # Example
/// ```
/// use lubberline::station::cross_track_of_deviation;
/// use lubberline::value::{CourseDeviation, StationDistance, units::*};
/// // A dot to the left, 30 NM out: a mile to the right of course.
/// assert_eq!(format!("{:.2}", cross_track_of_deviation(CourseDeviation::new(degrees(-2.0))?, StationDistance::new(nautical_miles(30.0))?).get::<nautical_mile>()), "1.05");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cross_track_of_deviation(deviation: CourseDeviation, distance: StationDistance) -> Length {
    // Adding zero leaves no negative zero on course.
    let sine = -deviation.value().get::<radian>().sin() * arm_m(distance) / MEAN_RADIUS_M + 0.0;
    metres(MEAN_RADIUS_M * sine.asin())
}

/// The deviation for a distance off course, right positive, at a distance from the station: the inverse of [`cross_track_of_deviation`].
///
/// # Errors
/// [`Error::OffCourseBeyondDistance`] if the aircraft is farther off course than from the station; [`Error::OutOfRange`] beyond 5 000 NM.
///
/// # Source
/// As [`cross_track_of_deviation`].
///
/// # Example
/// ```
/// use lubberline::station::deviation_of_cross_track;
/// use lubberline::value::{StationDistance, units::*};
/// assert_eq!(format!("{:.2}", deviation_of_cross_track(nautical_miles(1.0), StationDistance::new(nautical_miles(30.0))?)?.value().get::<degree>()), "-1.91");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn deviation_of_cross_track(
    cross_track: Length,
    distance: StationDistance,
) -> Result<CourseDeviation, Error> {
    let cross_track_nm = cross_track.get::<nautical_mile>();
    Quantity::CrossTrack.check("cross-track distance", cross_track_nm)?;
    let sine = (cross_track.get::<meter>() / MEAN_RADIUS_M).sin() * MEAN_RADIUS_M / arm_m(distance);
    // Rounding may carry a distance off course that is the whole distance past it.
    if sine.abs() <= 1.0 + 4.0 * f64::EPSILON {
        let deviation_rad = -sine.clamp(-1.0, 1.0).asin() + 0.0;
        Ok(CourseDeviation::derived(degrees(deviation_rad.to_degrees())))
    } else {
        let distance_nm = distance.value().get::<nautical_mile>();
        Err(Error::OffCourseBeyondDistance { cross_track_nm, distance_nm })
    }
}

/// How fast the deviation changes, positive when the needle moves to the right.
///
/// `-v sin(crossing) / (R sin(d / R))`, in the plane `-v sin(crossing) / d`. `crossing` is the angle, right positive, to the track from the direction
/// along the needle's course: that away from the station while it shows FROM, that to the station while it shows TO.
///
/// # Degenerate cases
/// Along the radial the needle stands still.
///
/// # Source
/// Derived: the motion across the line from the station.
///
/// # Example
/// ```
/// use lubberline::station::needle_rate;
/// use lubberline::value::{DirectionChange, Groundspeed, StationDistance, units::*};
/// assert_eq!(format!("{:.2}", needle_rate(Groundspeed::new(knots(180.0))?, DirectionChange::new(degrees(30.0))?, StationDistance::new(nautical_miles(10.0))?).get::<degree_per_second>()), "-0.14");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn needle_rate(
    groundspeed: Groundspeed,
    crossing: DirectionChange,
    distance: StationDistance,
) -> AngularVelocity {
    degrees_per_second((-across_m_s(groundspeed, crossing) / arm_m(distance)).to_degrees() + 0.0)
}

/// How long the needle takes from the end of its scale to the centre, flying straight at a distance from the station.
///
/// The distance off course at full scale over the speed across the course.
///
/// # Degenerate cases
/// Along the course and at rest it is infinite.
///
/// # Source
/// Derived.
///
/// # Example
/// ```
/// use lubberline::station::{Indicator, needle_time};
/// use lubberline::value::{DirectionChange, Groundspeed, StationDistance, units::*};
/// let (speed, crossing) = (Groundspeed::new(knots(180.0))?, DirectionChange::new(degrees(30.0))?);
/// assert_eq!(format!("{:.0}", needle_time(&Indicator::default(), speed, crossing, StationDistance::new(nautical_miles(10.0))?).get::<second>()), "69");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn needle_time(
    indicator: &Indicator,
    groundspeed: Groundspeed,
    crossing: DirectionChange,
    distance: StationDistance,
) -> Time {
    let full_scale = CourseDeviation::derived(indicator.full_scale.value());
    let off_course_m = cross_track_of_deviation(full_scale, distance).get::<meter>().abs();
    seconds(off_course_m / across_m_s(groundspeed, crossing).abs())
}

/// Speed across the course, right positive, exactly zero along it.
fn across_m_s(groundspeed: Groundspeed, crossing: DirectionChange) -> f64 {
    let along = crossing.angle().get::<degree>() % 180.0 == 0.0;
    let sine = if along { 0.0 } else { crossing.angle().get::<radian>().sin() };
    groundspeed.value().get::<meter_per_second>() * sine
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{degree_per_second, knots, nautical_miles};

    fn shown(radial_deg: f64, selected_deg: f64) -> (f64, f64, ToFrom) {
        let radial = |value| Radial::new(degrees(value)).unwrap();
        let needle = Indicator::default().needle(radial(radial_deg), radial(selected_deg));
        (needle.deviation.get::<degree>(), needle.deflection.get::<ratio>(), needle.to_from)
    }

    /// An aircraft about a station, the course selected to the north: where it is, and what it must see.
    #[test]
    fn the_needle_points_to_the_course() {
        for (radial_deg, deviation_deg, to_from) in [
            (0.0, 0.0, ToFrom::From),
            (5.0, -5.0, ToFrom::From),
            (355.0, 5.0, ToFrom::From),
            (180.0, 0.0, ToFrom::To),
            (185.0, 5.0, ToFrom::To),
            (175.0, -5.0, ToFrom::To),
            (80.0, -80.0, ToFrom::From),
            (100.0, -80.0, ToFrom::To),
            (260.0, 80.0, ToFrom::To),
            (90.0, -90.0, ToFrom::Off),
            (270.0, 90.0, ToFrom::Off),
            (90.9, -89.1, ToFrom::Off),
            (91.0, -89.0, ToFrom::To),
        ] {
            let (deviation, deflection, shows) = shown(radial_deg, 0.0);
            assert!((deviation - deviation_deg).abs() < 1e-9, "{radial_deg}: {deviation}");
            assert_eq!(
                (deflection, shows),
                ((deviation_deg / 10.0).clamp(-1.0, 1.0), to_from),
                "{radial_deg}"
            );
        }
    }

    #[test]
    fn the_reciprocal_course_mirrors_the_needle_and_turns_the_flag() {
        for radial in 0..360 {
            let (one, other) = (shown(f64::from(radial), 37.25), shown(f64::from(radial), 217.25));
            assert!((one.0 + other.0).abs() < 1e-9, "{radial}");
            assert_eq!(one.2 == other.2, one.2 == ToFrom::Off, "{radial}");
        }
    }

    #[test]
    fn off_course_and_back() {
        for distance_nm in [0.01, 1.0, 40.0, 1200.0] {
            let distance = StationDistance::new(nautical_miles(distance_nm)).unwrap();
            for deviation_deg in [-90.0, -33.0, -1e-6, 0.0, 2.0, 89.0] {
                let deviation = CourseDeviation::new(degrees(deviation_deg)).unwrap();
                let off = cross_track_of_deviation(deviation, distance);
                assert!(off.get::<meter>() * deviation_deg <= 0.0, "right of course the needle stands left");
                let back_deg = deviation_of_cross_track(off, distance).unwrap().value().get::<degree>();
                assert!((back_deg - deviation_deg).abs() <= 1e-5 * deviation_deg.abs(), "{back_deg}");
            }
            let beyond = nautical_miles(-distance_nm * 1.000_01);
            assert!(deviation_of_cross_track(beyond, distance).is_err());
        }
    }

    #[test]
    fn the_rate_is_the_change_of_the_deviation() {
        // Flying 030 at 180 kt from radial 000 at 10 NM: the course 000 goes left of the aircraft, the needle with it.
        let distance = StationDistance::new(nautical_miles(10.0)).unwrap();
        let speed = Groundspeed::new(knots(180.0)).unwrap();
        let crossing = |value| DirectionChange::new(degrees(value)).unwrap();
        let rate = needle_rate(speed, crossing(30.0), distance).get::<degree_per_second>();
        let (east_nm, north_nm) =
            (0.05 * 30.0_f64.to_radians().sin(), 10.0 + 0.05 * 30.0_f64.to_radians().cos());
        assert!((rate - -east_nm.atan2(north_nm).to_degrees()).abs() < 1e-3, "{rate}");
        assert_eq!(needle_rate(speed, crossing(180.0), distance).get::<degree_per_second>(), 0.0);
        assert_eq!(
            needle_time(&Indicator::default(), speed, crossing(0.0), distance),
            seconds(f64::INFINITY)
        );
    }
}
