//! The wind triangle from the heading: the track an aircraft makes good, and the wind that an observed track
//! tells.

use super::Wind;
use crate::Error;
use crate::plane::Plane;
use crate::value::units::{meter_per_second, metres_per_second};
use crate::value::{Bearing, DirectionChange, Groundspeed, North, TrueAirspeed, WindSpeed};

/// What a heading makes good over the ground.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MadeGood<N: North> {
    /// The direction of motion over the ground; none where there is no motion.
    pub track: Option<Bearing<N>>,
    /// The speed along it.
    pub groundspeed: Groundspeed,
    /// Track less heading, right positive; none where there is no motion.
    pub drift: Option<DirectionChange>,
}

/// The track and groundspeed of a heading in a wind: the sum of the two velocities.
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// Where the wind cancels the airspeed there is no track. With no airspeed the track is where the wind blows
/// to.
///
/// # Source
/// The triangle of velocities.
///
/// # Example
/// ```
/// use lubberline::value::{TrueAirspeed, TrueBearing, WindSpeed, units::*};
/// use lubberline::wind::{Wind, make_good};
/// let wind = Wind { from: TrueBearing::new(degrees(45.0))?, speed: WindSpeed::new(knots(30.0))? };
/// let good = make_good(TrueBearing::new(degrees(315.0))?, TrueAirspeed::new(knots(150.0))?, wind);
/// assert_eq!(format!("{:.0}", good.track.map_or(f64::NAN, |track| track.angle().get::<degree>())), "304");
/// assert_eq!(format!("{:.0}", good.groundspeed.value().get::<knot>()), "153");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn make_good<N: North>(heading: Bearing<N>, airspeed: TrueAirspeed, wind: Wind<N>) -> MadeGood<N> {
    // In the frame of the heading, so that calm air leaves it to the last bit.
    let upwind = Plane::along_deg(heading.change_to(wind.from).degrees());
    let through_air = Plane { north: airspeed.value().get::<meter_per_second>(), east: 0.0 };
    let over_ground = through_air - upwind * wind.speed.value().get::<meter_per_second>();
    let groundspeed_m_s = over_ground.length();
    let drift = (groundspeed_m_s > 0.0)
        .then(|| DirectionChange::from_degrees(over_ground.east.atan2(over_ground.north).to_degrees()));
    MadeGood {
        track: drift.map(|drift| heading.turned_by(drift)),
        groundspeed: Groundspeed::derived(metres_per_second(groundspeed_m_s)),
        drift,
    }
}

/// The wind that turns a heading and airspeed into an observed track and groundspeed.
///
/// # Accuracy
/// Rounding; what matters is the observation. An error of one degree of drift at 450 kt is 8 kt of wind across.
///
/// # Degenerate cases
/// With nothing between the two velocities the air is calm, [`Wind::calm`].
///
/// # Errors
/// [`Error::OutOfRange`] for a wind above its range.
///
/// # Source
/// The triangle of velocities.
///
/// # Example
/// ```
/// use lubberline::value::{Groundspeed, TrueAirspeed, TrueBearing, units::*};
/// use lubberline::wind::wind_from_track;
/// let bearing = |value| TrueBearing::new(degrees(value));
/// let wind = wind_from_track(bearing(90.0)?, TrueAirspeed::new(knots(250.0))?, bearing(95.0)?, Groundspeed::new(knots(270.0))?)?;
/// assert_eq!(format!("{:.1}", wind.speed.value().get::<knot>()), "30.2");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn wind_from_track<N: North>(
    heading: Bearing<N>,
    airspeed: TrueAirspeed,
    track: Bearing<N>,
    groundspeed: Groundspeed,
) -> Result<Wind<N>, Error> {
    let drift = Plane::along_deg(heading.change_to(track).degrees());
    let over_ground = drift * groundspeed.value().get::<meter_per_second>();
    let through_air = Plane { north: airspeed.value().get::<meter_per_second>(), east: 0.0 };
    let upwind = through_air - over_ground;
    if upwind.length() == 0.0 {
        return Ok(Wind::calm());
    }
    Ok(Wind {
        from: heading.turned_by(DirectionChange::from_degrees(upwind.east.atan2(upwind.north).to_degrees())),
        speed: WindSpeed::new(metres_per_second(upwind.length()))?,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::TrueBearing;
    use crate::value::units::{Velocity, degree, knot, knots};
    use uom::si::velocity::mile_per_hour;

    fn true_deg(degrees: f64) -> TrueBearing {
        TrueBearing::from_degrees(degrees)
    }

    fn airspeed(speed: Velocity) -> TrueAirspeed {
        TrueAirspeed::new(speed).unwrap()
    }

    /// US War Department, Mathematics for Air Crew Trainees, p. 45 exercise (2): course 304, ground speed 153.
    #[test]
    fn a_printed_exercise_of_track_and_groundspeed() {
        let mph = |speed| Velocity::new::<mile_per_hour>(speed);
        let wind = Wind { from: true_deg(45.0), speed: WindSpeed::new(mph(30.0)).unwrap() };
        let good = make_good(true_deg(315.0), airspeed(mph(150.0)), wind);
        assert!((good.track.unwrap().degrees() - 304.0).abs() < 1.0);
        assert!((good.groundspeed.value().get::<mile_per_hour>() - 153.0).abs() < 1.0);
        assert!(good.drift.unwrap().degrees() < 0.0, "the wind from the right drifts to the left");
    }

    /// A US air navigation computer's instruction booklet, 1940s, Example 16: wind 34 mph from 154, by slide
    /// and pencil.
    #[test]
    fn a_printed_exercise_of_the_wind() {
        let mph = |speed| Velocity::new::<mile_per_hour>(speed);
        let groundspeed = Groundspeed::new(mph(146.0)).unwrap();
        let wind =
            wind_from_track(true_deg(104.0), airspeed(mph(165.0)), true_deg(94.0), groundspeed).unwrap();
        assert!((wind.speed.value().get::<mile_per_hour>() - 34.0).abs() < 1.0);
        assert!((wind.from.degrees() - 154.0).abs() < 2.0);
    }

    #[test]
    fn the_wind_of_a_track_is_the_wind_that_made_it() {
        for from_deg in [0.0, 17.0, 133.0, 271.0] {
            for speed_kt in [3.0, 60.0, 240.0] {
                let wind = Wind { from: true_deg(from_deg), speed: WindSpeed::new(knots(speed_kt)).unwrap() };
                let good = make_good(true_deg(200.0), airspeed(knots(180.0)), wind);
                let found = wind_from_track(
                    true_deg(200.0),
                    airspeed(knots(180.0)),
                    good.track.unwrap(),
                    good.groundspeed,
                )
                .unwrap();
                assert!((found.speed.value().get::<knot>() - speed_kt).abs() < 1e-11);
                assert!(found.from.change_to(wind.from).angle().get::<degree>().abs() < 1e-11);
            }
        }
    }

    #[test]
    fn calm_air_and_a_hover_are_whole() {
        let good = make_good(true_deg(123.0), airspeed(knots(90.0)), Wind::calm());
        assert_eq!(good.track, Some(true_deg(123.0)));
        let calm = wind_from_track(true_deg(123.0), airspeed(knots(90.0)), true_deg(123.0), good.groundspeed);
        assert_eq!(calm, Ok(Wind::calm()));
        let wind = Wind { from: true_deg(123.0), speed: WindSpeed::new(knots(90.0)).unwrap() };
        assert_eq!(make_good(true_deg(123.0), airspeed(knots(90.0)), wind).track, None);
    }
}
