//! A DME arc flown in a wind: what to fly at each bearing, how long it takes, and how to get back onto it.

use crate::Error;
use crate::lead::ArcSense;
use crate::numeric::quadrature;
use crate::plane::Plane;
use crate::turn::STANDARD_GRAVITY_M_S2;
use crate::value::units::{Angle, Time, degree, degrees, meter, meter_per_second, metres, radian, seconds};
use crate::value::{ArcRadius, Bearing, DirectionChange, GroundDistance, North, TrueAirspeed};
use crate::wind::{Crabbed, Wind, hold_course};

/// What is flown at one bearing of an arc.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OnArc<N: North> {
    /// Direction over the ground: square to the radial.
    pub track: Bearing<N>,
    /// Heading, groundspeed and wind correction.
    pub crab: Crabbed<N>,
    /// Where the station is from the nose, right positive: 90 or -90 degrees in calm air.
    pub station_off_nose: DirectionChange,
    /// By how much the bearing pointer is kept ahead of the wing tip; behind it when negative.
    pub ahead_of_wing_tip: Angle,
    /// The bank that bends the path over the ground along the arc, positive toward the station.
    pub bank: Angle,
}

/// The heading at one bearing of an arc, and the bank that keeps to it.
///
/// The track is square to the radial; the wind correction moves the station off the wing tip by as much. Along the arc the
/// track turns at `GS / D`, and the heading with it but for the change of the wind correction `c`: at
/// `(GS / D)(1 - (Vw / V) cos w / cos c)`, with `w` the angle from the track to where the wind comes from. That rate takes the bank
/// `atan(rate V / g)`.
///
/// # Accuracy
/// Rounding on a plane. The arc counts along the ground: a DME reading has to be made one by [`crate::earth::ground_distance`].
///
/// # Degenerate cases
/// In a wind near the airspeed the heading may have to turn away from the station for a while: the bank is negative there.
///
/// # Errors
/// [`Error::WindTooStrong`] if the track cannot be held.
///
/// # Source
/// The triangle of velocities, differentiated along the arc.
///
/// # Example
/// ```
/// use lubberline::lead::ArcSense;
/// use lubberline::procedure::on_arc;
/// use lubberline::value::{ArcRadius, Radial, TrueAirspeed, WindSpeed, units::*};
/// use lubberline::wind::Wind;
/// let here = on_arc(
///     Radial::new(degrees(130.0))?,
///     ArcRadius::new(nautical_miles(12.0))?,
///     ArcSense::Clockwise,
///     TrueAirspeed::new(knots(160.0))?,
///     Wind { from: Radial::new(degrees(310.0))?, speed: WindSpeed::new(knots(30.0))? },
/// )?;
/// // The wind comes from the station, so its pointer is kept ahead of the wing tip.
/// assert_eq!(format!("{:.1}", here.ahead_of_wing_tip.get::<degree>()), "10.8");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn on_arc<N: North>(
    radial: Bearing<N>,
    arc: ArcRadius,
    sense: ArcSense,
    true_airspeed: TrueAirspeed,
    wind: Wind<N>,
) -> Result<OnArc<N>, Error> {
    let sign = f64::from(sense.code());
    let track = square_to(radial, sign);
    let crab = hold_course(track, true_airspeed, wind)?;
    let airspeed_m_s = true_airspeed.value().get::<meter_per_second>();
    let upwind_m_s =
        Plane::along_deg(track.change_to(wind.from).degrees()) * wind.speed.value().get::<meter_per_second>();
    let track_rate_rad_s = crab.groundspeed.value().get::<meter_per_second>() / arc.value().get::<meter>();
    let correction_cosine = crab.wind_correction.get::<radian>().cos();
    let rate_rad_s = track_rate_rad_s * (1.0 - upwind_m_s.north / (airspeed_m_s * correction_cosine));
    let correction_deg = crab.wind_correction.get::<degree>();
    Ok(OnArc {
        track,
        crab,
        station_off_nose: DirectionChange::from_degrees(sign * 90.0 - correction_deg),
        ahead_of_wing_tip: degrees(sign * correction_deg),
        bank: degrees((rate_rad_s * airspeed_m_s / STANDARD_GRAVITY_M_S2).atan().to_degrees()),
    })
}

/// An arc from one radial to another.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ArcFlown {
    /// The angle at the station, in the sense of the arc.
    pub angle: Angle,
    /// Length of the arc.
    pub distance: GroundDistance,
    /// Time along it.
    pub time: Time,
}

/// Panels of quadrature to the degree of an arc.
const PANELS_PER_DEGREE: f64 = 0.1;

/// How long an arc from one radial to another is, and how long it takes in a wind.
///
/// `D a`, and the integral of `D / GS` over the bearing, with the groundspeed that each track leaves.
///
/// # Accuracy
/// 1e-10 of the time for winds to half the airspeed.
///
/// # Degenerate cases
/// From a radial to itself there is no arc, not a full circle.
///
/// # Errors
/// [`Error::WindTooStrong`] if a track on the way cannot be held.
///
/// # Source
/// The triangle of velocities, integrated.
///
/// # Example
/// ```
/// use lubberline::lead::ArcSense;
/// use lubberline::procedure::fly_arc;
/// use lubberline::value::{ArcRadius, TrueAirspeed, TrueBearing, WindSpeed, units::*};
/// use lubberline::wind::Wind;
/// let bearing = |value| TrueBearing::new(degrees(value));
/// let wind = Wind { from: bearing(310.0)?, speed: WindSpeed::new(knots(30.0))? };
/// let arc = ArcRadius::new(nautical_miles(12.0))?;
/// let flown = fly_arc(bearing(20.0)?, bearing(110.0)?, arc, ArcSense::Clockwise, TrueAirspeed::new(knots(160.0))?, wind)?;
/// assert_eq!(format!("{:.2}", flown.distance.value().get::<nautical_mile>()), "18.85");
/// assert!(flown.time < seconds(480.0));
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn fly_arc<N: North>(
    from: Bearing<N>,
    to: Bearing<N>,
    arc: ArcRadius,
    sense: ArcSense,
    true_airspeed: TrueAirspeed,
    wind: Wind<N>,
) -> Result<ArcFlown, Error> {
    let sign = f64::from(sense.code());
    let angle_deg = from.way_round_deg(to, sign);
    let radius_m = arc.value().get::<meter>();
    let groundspeed_m_s = |angle_deg: f64| {
        let radial = from.turned_by(DirectionChange::from_degrees(sign * angle_deg));
        let crab = hold_course(square_to(radial, sign), true_airspeed, wind)?;
        Ok(crab.groundspeed.value().get::<meter_per_second>())
    };
    // The least groundspeed is upwind; the greatest crosswind is square to it.
    for upwind_deg in [0.0, 90.0, -90.0] {
        let track = wind.from.turned_by(DirectionChange::from_degrees(upwind_deg));
        let worst_deg = from.way_round_deg(square_to(track, -sign), sign);
        if worst_deg <= angle_deg {
            groundspeed_m_s(worst_deg)?;
        }
    }
    let mut refused = None;
    let mut time_s = 0.0;
    // The conversion saturates, and an arc has no more than 360 degrees.
    let panels = (angle_deg * PANELS_PER_DEGREE).ceil().max(1.0) as u32;
    quadrature(0.0, angle_deg, panels, |at_deg, weight_deg| match groundspeed_m_s(at_deg) {
        Ok(groundspeed_m_s) => time_s += radius_m * weight_deg.to_radians() / groundspeed_m_s,
        Err(error) => refused = Some(error),
    });
    match refused {
        Some(error) => Err(error),
        None => Ok(ArcFlown {
            angle: degrees(angle_deg),
            distance: GroundDistance::derived(metres(radius_m * angle_deg.to_radians())),
            time: seconds(time_s),
        }),
    }
}

/// A straight way back onto an arc.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ArcRegained<N: North> {
    /// Direction over the ground.
    pub track: Bearing<N>,
    /// Heading, groundspeed and wind correction on the way.
    pub crab: Crabbed<N>,
    /// Distance to the arc.
    pub distance: GroundDistance,
    /// Time to the arc.
    pub time: Time,
    /// The radial on which the arc is met.
    pub radial: Bearing<N>,
    /// The angle at which the arc is met: the change of course onto it, without its side.
    pub angle: Angle,
}

/// The straight way back onto an arc from inside or outside it, on a track that is turned from square by a correction, positive
/// toward the station.
///
/// In the triangle of station, aircraft and meeting point, at the distance `d` and with the correction `c`, the way is
/// `d sin c ± sqrt(D² - d² cos² c)`: less the root from outside, with it from inside.
///
/// # Degenerate cases
/// On the arc the way is nothing. From inside, square to the radial and even away from the station the arc is met. From outside the
/// correction must be at least `acos(D / d)` ([`least_correction`]), at which the arc is met along it.
///
/// # Errors
/// [`Error::NoMeeting`] from outside with a smaller correction, [`Error::WindTooStrong`] if the track cannot be held.
///
/// # Source
/// The law of cosines.
///
/// # Example
/// ```
/// use lubberline::lead::ArcSense;
/// use lubberline::procedure::regain_arc;
/// use lubberline::value::{ArcRadius, DirectionChange, GroundDistance, TrueAirspeed, TrueBearing, WindSpeed, units::*};
/// use lubberline::wind::Wind;
/// let bearing = |value| TrueBearing::new(degrees(value));
/// let wind = Wind { from: bearing(310.0)?, speed: WindSpeed::new(knots(30.0))? };
/// let arc = ArcRadius::new(nautical_miles(12.0))?;
/// let out = GroundDistance::new(nautical_miles(12.5))?;
/// let toward = DirectionChange::new(degrees(30.0))?;
/// let back = regain_arc(bearing(200.0)?, out, arc, ArcSense::Clockwise, toward, TrueAirspeed::new(knots(160.0))?, wind)?;
/// assert_eq!(format!("{:.2}", back.distance.value().get::<nautical_mile>()), "1.07");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn regain_arc<N: North>(
    from: Bearing<N>,
    distance: GroundDistance,
    arc: ArcRadius,
    sense: ArcSense,
    correction: DirectionChange,
    true_airspeed: TrueAirspeed,
    wind: Wind<N>,
) -> Result<ArcRegained<N>, Error> {
    let sign = f64::from(sense.code());
    let (from_m, arc_m) = (distance.value().get::<meter>(), arc.value().get::<meter>());
    let (sine, cosine) = correction.angle().get::<radian>().sin_cos();
    let root_m2 = arc_m * arc_m - (from_m * cosine).powi(2);
    let missed = Error::NoMeeting { what: "the track from outside the arc passes it" };
    let way_m = if from_m == arc_m {
        0.0
    } else if root_m2 < 0.0 {
        return Err(missed);
    } else if from_m < arc_m {
        from_m * sine + root_m2.sqrt()
    } else {
        from_m * sine - root_m2.sqrt()
    };
    if way_m < 0.0 {
        return Err(missed);
    }
    let track = square_to(from, sign).turned_by(DirectionChange::from_degrees(sign * correction.degrees()));
    let crab = hold_course(track, true_airspeed, wind)?;
    let way = GroundDistance::new(metres(way_m))?;
    // From the station: outward along the radial, and in the sense of the arc.
    let turned_rad = (way_m * cosine).atan2(from_m - way_m * sine);
    let radial = from.turned_by(DirectionChange::from_degrees(sign * turned_rad.to_degrees()));
    let angle_deg = track.change_to(square_to(radial, sign)).angle().get::<degree>().abs();
    Ok(ArcRegained {
        track,
        crab,
        distance: way,
        time: way.value() / crab.groundspeed.value(),
        radial,
        angle: degrees(angle_deg),
    })
}

/// The least correction toward the station with which an arc is met from outside: `acos(D / d)`; zero from inside.
///
/// # Source
/// The tangent from a point to a circle.
///
/// # Example
/// ```
/// use lubberline::procedure::least_correction;
/// use lubberline::value::{ArcRadius, GroundDistance, units::*};
/// assert_eq!(format!("{:.1}", least_correction(GroundDistance::new(nautical_miles(10.5))?, ArcRadius::new(nautical_miles(10.0))?).get::<degree>()), "17.8");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn least_correction(distance: GroundDistance, arc: ArcRadius) -> Angle {
    let ratio = arc.value().get::<meter>() / distance.value().get::<meter>();
    if ratio < 1.0 { degrees(ratio.acos().to_degrees()) } else { degrees(0.0) }
}

/// The track along an arc at a radial, clockwise for a positive sign.
pub(super) fn square_to<N: North>(radial: Bearing<N>, sign: f64) -> Bearing<N> {
    radial.turned_by(DirectionChange::from_degrees(sign * 90.0))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{knots, nautical_mile, nautical_miles, second};
    use crate::value::{TrueBearing, TrueNorth, WindSpeed};

    fn wind(speed_kt: f64) -> Wind<TrueNorth> {
        Wind { from: TrueBearing::from_degrees(310.0), speed: WindSpeed::new(knots(speed_kt)).unwrap() }
    }

    fn airspeed() -> TrueAirspeed {
        TrueAirspeed::new(knots(160.0)).unwrap()
    }

    fn miles(value: f64) -> ArcRadius {
        ArcRadius::new(nautical_miles(value)).unwrap()
    }

    /// Flies an arc from the radial 20 in small steps with the bank that is said to keep to it.
    #[test]
    fn flown_with_its_bank_the_path_stays_on_the_arc() {
        for sense in [ArcSense::Clockwise, ArcSense::Counterclockwise] {
            for speed_kt in [0.0, 45.0, 120.0] {
                let radial = TrueBearing::from_degrees(20.0);
                let airspeed_m_s = airspeed().value().get::<meter_per_second>();
                let first = on_arc(radial, miles(10.0), sense, airspeed(), wind(speed_kt)).unwrap();
                let mut heading_rad = first.crab.heading.radians();
                let mut place_m = Plane::along_deg(radial.degrees()) * miles(10.0).value().get::<meter>();
                let (step_s, mut time_s) = (0.02, 0.0);
                let mut seen = radial;
                while radial.way_round_deg(seen, f64::from(sense.code())) < 100.0 {
                    let here = on_arc(seen, miles(10.0), sense, airspeed(), wind(speed_kt)).unwrap();
                    let rate_rad_s = f64::from(sense.code()) * STANDARD_GRAVITY_M_S2 * here.bank.tan().value
                        / airspeed_m_s;
                    let middle_rad = heading_rad + rate_rad_s * step_s / 2.0;
                    heading_rad += rate_rad_s * step_s;
                    place_m = place_m
                        + (Plane::along(middle_rad) * airspeed_m_s + wind(speed_kt).velocity_m_s()) * step_s;
                    time_s += step_s;
                    seen = TrueBearing::from_radians(place_m.east.atan2(place_m.north));
                }
                let off_m = place_m.length() - miles(10.0).value().get::<meter>();
                assert!(off_m.abs() < 10.0, "{sense:?} {speed_kt}: {off_m}");
                let flown = fly_arc(radial, seen, miles(10.0), sense, airspeed(), wind(speed_kt)).unwrap();
                assert!(
                    (flown.time.get::<second>() - time_s).abs() < 0.2,
                    "{sense:?} {speed_kt}: {time_s} {flown:?}"
                );
            }
        }
    }

    #[test]
    fn a_wind_from_the_station_moves_the_pointer_ahead_of_the_wing_tip() {
        for (sense, radial_deg) in [(ArcSense::Clockwise, 130.0), (ArcSense::Counterclockwise, 130.0)] {
            let here =
                on_arc(TrueBearing::from_degrees(radial_deg), miles(12.0), sense, airspeed(), wind(30.0))
                    .unwrap();
            assert!(here.ahead_of_wing_tip > degrees(10.0), "{sense:?} {here:?}");
            assert!(here.station_off_nose.degrees().abs() < 80.0);
        }
    }

    #[test]
    fn an_upwind_track_that_cannot_be_held_is_found_on_the_way() {
        let fly = |to_deg: f64| {
            fly_arc(
                TrueBearing::from_degrees(100.0),
                TrueBearing::from_degrees(to_deg),
                miles(10.0),
                ArcSense::Clockwise,
                airspeed(),
                wind(161.0),
            )
        };
        // Upwind is square to the radial 220.
        assert!(matches!(fly(230.0), Err(Error::WindTooStrong { .. })));
        assert!(matches!(fly(219.0), Err(Error::WindTooStrong { .. })));
        assert!(
            fly_arc(
                TrueBearing::from_degrees(20.0),
                TrueBearing::from_degrees(60.0),
                miles(10.0),
                ArcSense::Clockwise,
                airspeed(),
                wind(161.0),
            )
            .is_ok(),
            "downwind"
        );
    }

    #[test]
    fn the_way_back_ends_on_the_arc() {
        for (distance_nm, correction_deg) in
            [(9.0, 0.0), (9.0, -20.0), (9.5, 15.0), (11.0, 30.0), (10.5, 60.0)]
        {
            for sense in [ArcSense::Clockwise, ArcSense::Counterclockwise] {
                let from = TrueBearing::from_degrees(200.0);
                let distance = GroundDistance::new(nautical_miles(distance_nm)).unwrap();
                let correction = DirectionChange::from_degrees(correction_deg);
                let back = regain_arc(from, distance, miles(10.0), sense, correction, airspeed(), wind(30.0))
                    .unwrap();
                let end = Plane::along_deg(from.degrees()) * distance_nm
                    + Plane::along_deg(back.track.degrees()) * back.distance.value().get::<nautical_mile>();
                let expected = Plane::along_deg(back.radial.degrees()) * 10.0;
                assert!((end - expected).length() < 1e-9, "{distance_nm} {correction_deg} {sense:?}");
            }
        }
    }

    #[test]
    fn from_outside_the_least_correction_meets_the_arc_along_it() {
        let distance = GroundDistance::new(nautical_miles(11.0)).unwrap();
        let least_deg = least_correction(distance, miles(10.0)).get::<degree>();
        let at = |correction_deg: f64| {
            regain_arc(
                TrueBearing::from_degrees(0.0),
                distance,
                miles(10.0),
                ArcSense::Clockwise,
                DirectionChange::from_degrees(correction_deg),
                airspeed(),
                wind(0.0),
            )
        };
        assert!(at(least_deg + 1e-9).unwrap().angle < degrees(0.01));
        assert!(matches!(at(least_deg - 0.01), Err(Error::NoMeeting { .. })));
        assert!(matches!(at(-90.0), Err(Error::NoMeeting { .. })));
    }
}
