//! Time and distance to a station from how fast its bearing changes.

use crate::Error;
use crate::value::units::{Length, Time, degree, radian};
use crate::value::{AngleOffBow, BearingDrift, ElapsedTime, GroundDistance, GroundspeedMadeGood};

/// Where a station is, from two bearings to it taken on one track.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StationByBearing {
    /// Distance to the station at the second bearing.
    pub distance: GroundDistance,
    /// Time to the station from there, at the same groundspeed.
    pub time: Time,
    /// Distance to the station at the first bearing.
    pub distance_before: GroundDistance,
}

/// The distance and time to a station, from the change of its bearing while a straight track is flown: exact.
///
/// In the triangle of the two places and the station, with the angle off the bow `b` at the first bearing and
/// the change of the bearing `c`: `d = V t sin b / sin c` at the second bearing, `V t sin(b + c) / sin c` at
/// the first. With the station abeam at first, `V t / sin c` and `V t / tan c`; with `c = b`, the angle
/// doubled, the time to the station is the time flown.
///
/// # Accuracy
/// Rounding on a plane. The bearings govern: with a change of 10°, half a degree of error is 5 percent of the
/// distance. Wind acts through groundspeed and track, and the time assumes the same groundspeed on the way in.
///
/// # Errors
/// [`Error::BearingsDiverge`] if the angles leave no triangle; [`Error::OutOfRange`] of a distance beyond its
/// range.
///
/// # Source
/// The law of sines.
///
/// # Example
/// ```
/// use lubberline::timing::station_by_bearing_change;
/// use lubberline::value::{AngleOffBow, BearingDrift, ElapsedTime, GroundspeedMadeGood, units::*};
/// let station = station_by_bearing_change(
///     ElapsedTime::new(seconds(75.0))?,
///     BearingDrift::new(degrees(10.0))?,
///     AngleOffBow::new(degrees(90.0))?,
///     GroundspeedMadeGood::new(knots(120.0))?,
/// )?;
/// assert_eq!(format!("{:.2}", station.distance.value().get::<nautical_mile>()), "14.40");
/// assert_eq!(format!("{:.0}", station.time.get::<second>()), "432");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn station_by_bearing_change(
    elapsed: ElapsedTime,
    change: BearingDrift,
    off_bow: AngleOffBow,
    groundspeed: GroundspeedMadeGood,
) -> Result<StationByBearing, Error> {
    let (change_rad, off_bow_rad) = (change.value().get::<radian>(), off_bow.value().get::<radian>());
    if off_bow.value().get::<degree>() + change.value().get::<degree>() >= 180.0 {
        return Err(Error::BearingsDiverge {
            angle_off_bow_deg: off_bow.value().get::<degree>(),
            bearing_change_deg: change.value().get::<degree>(),
        });
    }
    let flown: Length = groundspeed.value() * elapsed.value();
    let distance = GroundDistance::new(flown * (off_bow_rad.sin() / change_rad.sin()))?;
    let distance_before = GroundDistance::new(flown * ((off_bow_rad + change_rad).sin() / change_rad.sin()))?;
    Ok(StationByBearing { distance, time: distance.value() / groundspeed.value(), distance_before })
}

/// The time to a station by the trade's rule, for a station abeam: minutes are seconds flown over degrees of
/// change.
///
/// `60 t / c` with the change `c` in degrees.
///
/// # Accuracy
/// It takes a radian for 60 degrees: at 5° of change 4.6 percent too long, at 10° 4.2 percent, at 20° 2.6
/// percent, at 30° even.
///
/// # Source
/// FAA-H-8083-15, Instrument Flying Handbook, time and distance check, read in a quotation.
///
/// # Example
/// ```
/// use lubberline::timing::time_to_station_by_rule;
/// use lubberline::value::{BearingDrift, ElapsedTime, units::*};
/// // The exact time is 432 s: the rule takes a radian for 60 degrees.
/// assert_eq!(format!("{:.0}", time_to_station_by_rule(ElapsedTime::new(seconds(75.0))?, BearingDrift::new(degrees(10.0))?).get::<second>()), "450");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn time_to_station_by_rule(elapsed: ElapsedTime, change: BearingDrift) -> Time {
    elapsed.value() * (60.0 / change.value().get::<degree>())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{degrees, knots, nautical_mile, second, seconds};

    fn elapsed(time_s: f64) -> ElapsedTime {
        ElapsedTime::new(seconds(time_s)).unwrap()
    }

    fn drift(change_deg: f64) -> BearingDrift {
        BearingDrift::new(degrees(change_deg)).unwrap()
    }

    fn exact(time_s: f64, change_deg: f64, off_bow_deg: f64) -> Result<StationByBearing, Error> {
        station_by_bearing_change(
            elapsed(time_s),
            drift(change_deg),
            AngleOffBow::new(degrees(off_bow_deg)).unwrap(),
            GroundspeedMadeGood::new(knots(120.0)).unwrap(),
        )
    }

    /// FAA-H-8083-15: 75 s for 10° are 7.5 minutes. AFMAN 11-217: 120 s for 10° are 12 minutes.
    #[test]
    fn printed_examples_of_the_rule() {
        for (time_s, minutes) in [(75.0, 7.5), (120.0, 12.0)] {
            let time_s = time_to_station_by_rule(elapsed(time_s), drift(10.0)).get::<second>();
            assert!((time_s - 60.0 * minutes).abs() < 1e-9, "{time_s}");
        }
    }

    #[test]
    fn the_error_of_the_rule_is_as_stated() {
        for (change_deg, percent) in [(5.0, 4.6), (10.0, 4.2), (20.0, 2.6), (30.0, 0.0)] {
            let rule_s = time_to_station_by_rule(elapsed(100.0), drift(change_deg)).get::<second>();
            let exact_s = exact(100.0, change_deg, 90.0).unwrap().time.get::<second>();
            assert!((100.0 * (rule_s / exact_s - 1.0) - percent).abs() < 0.05, "{change_deg}");
        }
    }

    #[test]
    fn a_station_set_up_on_a_plane_is_found() {
        // A station 7 NM ahead and 5 NM to the side; 120 kt for 90 s are 3 NM.
        let (before_deg, after_deg) = (5.0_f64.atan2(7.0).to_degrees(), 5.0_f64.atan2(4.0).to_degrees());
        let found = exact(90.0, after_deg - before_deg, before_deg).unwrap();
        assert!((found.distance.value().get::<nautical_mile>() - 5.0_f64.hypot(4.0)).abs() < 1e-12);
        assert!((found.distance_before.value().get::<nautical_mile>() - 5.0_f64.hypot(7.0)).abs() < 1e-12);
    }

    /// The double angle off the bow: common practice.
    #[test]
    fn with_the_angle_doubled_the_time_is_the_time_flown() {
        for off_bow_deg in [10.0, 22.5, 45.0, 80.0] {
            let station = exact(240.0, off_bow_deg, off_bow_deg).unwrap();
            assert!((station.time.get::<second>() - 240.0).abs() < 1e-9, "{off_bow_deg}");
        }
    }

    #[test]
    fn bearings_that_do_not_meet_are_refused() {
        assert!(matches!(exact(60.0, 30.0, 150.0), Err(Error::BearingsDiverge { .. })));
        assert!(exact(60.0, 29.0, 150.0).is_ok());
    }
}
