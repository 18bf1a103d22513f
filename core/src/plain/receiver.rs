//! Plain functions of reception, and of what a receiver shows.

use super::earth::position;
use super::station::{STATION, station};
use super::{any_nan, outputs};
use crate::Error;
use crate::station::{self, HorizonRule, Indicator, Receiver, ServiceClass};
use crate::value::units::{
    degree, degree_per_second, degrees, foot, nautical_mile, nautical_miles, ratio, second,
};
use crate::value::{
    AbeamZone, ConeHalfAngle, Deflection, DirectionChange, DisplayStep, FullScale, GroundDistance,
    Groundspeed, HeightAboveStation, Quantity, Radial, SlantRange, StationDistance, SurfaceHeight,
    TrueAltitude,
};

/// The greatest ground distance at which a station is received over a smooth earth.
///
/// `Re (acos(Re / (Re + h1)) + acos(Re / (Re + h2)))` with `Re` 4/3 of the earth's radius, or a factor times `sqrt(h1) + sqrt(h2)`.
///
/// # Arguments
/// - `aircraft_height_ft`: height of the aircraft above the surface, 0 to 400 000
/// - `antenna_height_ft`: height of the antenna above the surface, 0 to 400 000 (default 0.0)
/// - `rule`: which rule (default "four_thirds")
///
/// # Accuracy
/// Exact for its model; the rules differ by up to 2 percent, the air of the day and terrain by more.
///
/// # Degenerate cases
/// Two heights of zero see no distance.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// 4/3 of the radius: derived, the factor from ITU-R P.310 (from memory). 1.23 sqrt(ft) NM and 4.11 sqrt(m) km: ICAO Doc 8168 Vol II (5th ed. 2006),
/// Part III Section 1 Chapter 3, Appendix. 1.25 sqrt(ft) NM: common practice.
///
/// # Example
/// ```
/// # use lubberline::plain::radio_horizon_nm;
/// # use lubberline::station::HorizonRule;
/// assert_eq!(format!("{:.1}", radio_horizon_nm(31_000.0, 40.0, HorizonRule::FourThirds)?), "224.0");
/// assert_eq!(format!("{:.1}", radio_horizon_nm(10_000.0, 0.0, HorizonRule::FeetMiles)?), "123.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn radio_horizon_nm(
    aircraft_height_ft: f64,
    antenna_height_ft: f64,
    rule: HorizonRule,
) -> Result<f64, Error> {
    if any_nan(&[aircraft_height_ft, antenna_height_ft]) {
        return Ok(f64::NAN);
    }
    let aircraft = SurfaceHeight::named("aircraft_height_ft", aircraft_height_ft)?;
    let antenna = SurfaceHeight::named("antenna_height_ft", antenna_height_ft)?;
    Ok(station::radio_horizon(aircraft, antenna, rule).value().get::<nautical_mile>())
}

/// The least height at which a station is received at a ground distance over a smooth earth: the inverse of `radio_horizon_nm`.
///
/// `Re (sec(d / Re - acos(Re / (Re + h))) - 1)` with `Re` 4/3 of the earth's radius, or the square of `d / factor - sqrt(h)`.
///
/// # Arguments
/// - `ground_distance_nm`: distance along the ground, 0 to 10 900
/// - `antenna_height_ft`: height of the antenna above the surface, 0 to 400 000 (default 0.0)
/// - `rule`: which rule (default "four_thirds")
///
/// # Accuracy
/// As `radio_horizon_nm`.
///
/// # Degenerate cases
/// Within the antenna's own horizon it is zero.
///
/// # Errors
/// A value outside its range, or a distance at which 400 000 ft are not enough.
///
/// # Source
/// As `radio_horizon_nm`.
///
/// # Example
/// ```
/// # use lubberline::plain::least_reception_height_ft;
/// # use lubberline::station::HorizonRule;
/// assert_eq!(format!("{:.0}", least_reception_height_ft(130.0, 0.0, HorizonRule::FourThirds)?), "11198");
/// assert_eq!(format!("{:.0}", least_reception_height_ft(123.0, 0.0, HorizonRule::FeetMiles)?), "10000");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn least_reception_height_ft(
    ground_distance_nm: f64,
    antenna_height_ft: f64,
    rule: HorizonRule,
) -> Result<f64, Error> {
    if any_nan(&[ground_distance_nm, antenna_height_ft]) {
        return Ok(f64::NAN);
    }
    let distance = GroundDistance::named("ground_distance_nm", ground_distance_nm)?;
    let antenna = SurfaceHeight::named("antenna_height_ft", antenna_height_ft)?;
    Ok(station::least_height(distance, antenna, rule)?.value().get::<foot>())
}

/// How far the published service volume of a station's class reaches at a height.
///
/// The farthest of the published layers that hold the height. The classes named `above_ground` are those of older editions, whose heights
/// are counted from the ground at the station; all others count from the transmitter.
///
/// # Arguments
/// - `service_class`: the class of the station
/// - `height_ft`: height above the station's antenna, -60 000 to 400 000
/// - `antenna_height_ft`: height of the antenna above the ground, 0 to 400 000 (default 0.0)
///
/// # Accuracy
/// As published: a floor belongs to its layer, a ceiling where the text says "including".
///
/// # Degenerate cases
/// Outside every layer the reach is zero. The lower edges below 1 000 ft that some editions print as curves, and the cone above the station
/// (`cone_radius_nm`), are not in it.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// FAA Aeronautical Information Manual of 2023, 1-1-8, TBL 1-1-1 and TBL 1-1-2 (DL and DH from memory of that table); for heights above the ground the
/// editions of 2004 and 2016. Below 12 900 ft the DME classes reach to the radio horizon (4/3 of the earth's radius).
///
/// # Example
/// ```
/// # use lubberline::plain::service_reach_nm;
/// # use lubberline::station::ServiceClass;
/// assert_eq!(format!("{:.0}", service_reach_nm(ServiceClass::High, 18_000.0, 0.0)?), "130");
/// assert_eq!(format!("{:.0}", service_reach_nm(ServiceClass::VorLow, 18_000.0, 0.0)?), "0");
/// assert_eq!(format!("{:.1}", service_reach_nm(ServiceClass::DmeLow, 9_000.0, 30.0)?), "123.5");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn service_reach_nm(
    service_class: ServiceClass,
    height_ft: f64,
    antenna_height_ft: f64,
) -> Result<f64, Error> {
    if any_nan(&[height_ft, antenna_height_ft]) {
        return Ok(f64::NAN);
    }
    let height = HeightAboveStation::named("height_ft", height_ft)?;
    let antenna = SurfaceHeight::named("antenna_height_ft", antenna_height_ft)?;
    Ok(service_class.reach(height, antenna).value().get::<nautical_mile>())
}

outputs! {
    /// What an indicator shows: what [`vor_needle`] gives.
    VorNeedle {
        /// Angle at the station from the aircraft to the selected course, -90 to 90, positive when the course lies to the right.
        deviation_deg,
        /// Where the needle stands as a part of full scale, held at its end, -1 to 1, positive right of centre.
        deflection,
        /// Whether the selected course leads to or from the station, [`station::ToFrom`]: 0 neither, 1 to, 2 from.
        to_from,
    }
}

/// What a course deviation indicator shows on a radial with a course selected.
///
/// Within 90 degrees of the selected course FROM and `course - radial`; beyond, TO and `radial + 180 - course`.
///
/// # Arguments
/// - `radial_deg`: radial of the aircraft, any finite number
/// - `selected_course_deg`: the course selected, in the station's north, any finite number
/// - `full_scale_deg`: deviation at which the needle stands at the end of its scale, above 0 below 90 (default 10.0)
/// - `abeam_zone_deg`: half-width of the zone about 90 degrees from the course in which it shows neither TO nor FROM, 0 to 45 (default 1.0)
///
/// # Accuracy
/// Rounding error.
///
/// # Degenerate cases
/// Exactly abeam neither TO nor FROM is shown, whatever the zone's width.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// FAA-H-8083-15 (Instrument Flying Handbook), VOR indications (from memory). Full scale: five dots of 2 degrees make 10 (FAA-H-8083-25, from memory); the
/// Instrument Flying Handbook (FAA-H-8083-15A, p. 7-11) states 12 or more. The zone abeam: common practice.
///
/// # Example
/// ```
/// # use lubberline::plain::vor_needle;
/// assert_eq!(format!("{:.1}", vor_needle(227.0, 50.0, 10.0, 1.0)?.deflection), "-0.3");
/// assert_eq!(format!("{:.0}", vor_needle(227.0, 50.0, 10.0, 1.0)?.to_from), "1");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn vor_needle(
    radial_deg: f64,
    selected_course_deg: f64,
    full_scale_deg: f64,
    abeam_zone_deg: f64,
) -> Result<VorNeedle, Error> {
    if any_nan(&[radial_deg, selected_course_deg, full_scale_deg, abeam_zone_deg]) {
        return Ok(VorNeedle::NAN);
    }
    let radial = Radial::named("radial_deg", radial_deg)?;
    let selected = Radial::named("selected_course_deg", selected_course_deg)?;
    let needle = indicator(full_scale_deg, abeam_zone_deg)?.needle(radial, selected);
    Ok(VorNeedle {
        deviation_deg: needle.deviation.get::<degree>(),
        deflection: needle.deflection.get::<ratio>(),
        to_from: f64::from(needle.to_from.code()),
    })
}

fn indicator(full_scale_deg: f64, abeam_zone_deg: f64) -> Result<Indicator, Error> {
    Ok(Indicator {
        full_scale: FullScale::named("full_scale_deg", full_scale_deg)?,
        abeam_zone: AbeamZone::named("abeam_zone_deg", abeam_zone_deg)?,
    })
}

outputs! {
    /// What a VOR/DME receiver shows at a place: what [`vor_receiver`] gives.
    VorIndication {
        /// Why neither TO nor FROM is shown, [`station::Flag`]: 0 clear, 1 abeam, 2 in the cone, 3 below the horizon, 4 out of range.
        flag,
        /// Whether the selected course leads to or from the station, [`station::ToFrom`]: 0 neither, 1 to, 2 from.
        to_from,
        /// Angle at the station from the aircraft to the selected course, positive when the course lies to the right; NaN where the VOR is not to be used.
        deviation_deg,
        /// Where the needle stands as a part of full scale, -1 to 1, positive right of centre; NaN where the VOR is not to be used.
        deflection,
        /// The radial, as a bearing pointer shows it; NaN where the VOR is not to be used.
        radial_deg,
        /// The DME as displayed; NaN out of range and below the horizon.
        dme_nm,
    }
}

/// What a VOR/DME receiver shows at a place, with a perfect signal and a course selected.
///
/// Radial and slant range of `observe`, the needle of `vor_needle`, the DME to the nearest step of its display. The flag is, in this order: out of range,
/// below the radio horizon (4/3 of the earth's radius, smooth), in the cone, abeam.
///
/// # Arguments
/// - `station_latitude_deg`: latitude of the antenna, -90 to 90
/// - `station_longitude_deg`: longitude of the antenna, any finite number
/// - `station_elevation_ft`: elevation of the antenna above mean sea level, -16 500 to 60 000
/// - `station_declination_deg`: angle from true north to the station's north, positive east, -180 to 180
/// - `latitude_deg`: latitude of the aircraft, -90 to 90
/// - `longitude_deg`: longitude of the aircraft, any finite number
/// - `altitude_ft`: altitude of the aircraft above mean sea level, -16 500 to 400 000
/// - `selected_course_deg`: the course selected, in the station's north, any finite number
/// - `full_scale_deg`: deviation at which the needle stands at the end of its scale, above 0 below 90 (default 10.0)
/// - `abeam_zone_deg`: half-width of the zone about 90 degrees from the course in which it shows neither TO nor FROM, 0 to 45 (default 1.0)
/// - `reach_nm`: ground distance to which the station is received, 0 to 10 900 (default 199.0)
/// - `cone_half_angle_deg`: half-angle of the cone of confusion from the vertical, above 0 below 90 (default 50.0)
/// - `antenna_height_ft`: height of the antenna above the smooth surface of the radio horizon, 0 to 400 000 (default 0.0)
/// - `dme_step_nm`: step in which the DME counts, above 0 to 10 (default 0.1)
///
/// # Accuracy
/// Radial and slant range as `observe`; the bounds of reception are models.
///
/// # Degenerate cases
/// Exactly over or under the antenna there is no radial: the flag is that of the cone, unless the station is not received at all.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// As `observe`, `vor_needle`, `radio_horizon_nm` and `cone_radius_nm`. 199 NM: FAA Aeronautical Information Manual 1-1-7, edition not shown in the copy read; `service_reach_nm` has the reach of
/// a class. Tenths of a mile: common practice.
///
/// # Example
/// ```
/// # use lubberline::plain::vor_receiver;
/// assert_eq!(format!("{:.2}", vor_receiver(61.25, -11.5, 420.0, -6.0, 61.5, -11.0, 31_000.0, 225.0, 10.0, 1.0, 199.0, 50.0, 0.0, 0.1)?.deflection), "0.46");
/// assert_eq!(format!("{:.1}", vor_receiver(61.25, -11.5, 420.0, -6.0, 61.5, -11.0, 31_000.0, 225.0, 10.0, 1.0, 199.0, 50.0, 0.0, 0.1)?.dme_nm), "21.5");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn vor_receiver(
    station_latitude_deg: f64,
    station_longitude_deg: f64,
    station_elevation_ft: f64,
    station_declination_deg: f64,
    latitude_deg: f64,
    longitude_deg: f64,
    altitude_ft: f64,
    selected_course_deg: f64,
    full_scale_deg: f64,
    abeam_zone_deg: f64,
    reach_nm: f64,
    cone_half_angle_deg: f64,
    antenna_height_ft: f64,
    dme_step_nm: f64,
) -> Result<VorIndication, Error> {
    if any_nan(&[
        station_latitude_deg,
        station_longitude_deg,
        station_elevation_ft,
        station_declination_deg,
        latitude_deg,
        longitude_deg,
        altitude_ft,
        selected_course_deg,
        full_scale_deg,
        abeam_zone_deg,
        reach_nm,
        cone_half_angle_deg,
        antenna_height_ft,
        dme_step_nm,
    ]) {
        return Ok(VorIndication::NAN);
    }
    let station = station(
        STATION,
        [station_latitude_deg, station_longitude_deg, station_elevation_ft, station_declination_deg],
    )?;
    let aircraft = position("latitude_deg", latitude_deg, "longitude_deg", longitude_deg)?;
    let altitude = TrueAltitude::named("altitude_ft", altitude_ft)?;
    let selected = Radial::named("selected_course_deg", selected_course_deg)?;
    let receiver = Receiver {
        indicator: indicator(full_scale_deg, abeam_zone_deg)?,
        reach: GroundDistance::named("reach_nm", reach_nm)?,
        cone: ConeHalfAngle::named("cone_half_angle_deg", cone_half_angle_deg)?,
        antenna: SurfaceHeight::named("antenna_height_ft", antenna_height_ft)?,
        dme_step: DisplayStep::named("dme_step_nm", dme_step_nm)?,
    };
    let shown = receiver.receive(&station, aircraft, altitude, selected);
    let radial = shown.observation.radial.filter(|_| shown.deviation.is_some());
    Ok(VorIndication {
        flag: f64::from(shown.flag.code()),
        to_from: f64::from(shown.to_from.code()),
        deviation_deg: shown.deviation.map_or(f64::NAN, |deviation| deviation.get::<degree>()),
        deflection: shown.deflection.map_or(f64::NAN, |deflection| deflection.get::<ratio>()),
        radial_deg: radial.map_or(f64::NAN, |radial| radial.angle().get::<degree>()),
        dme_nm: shown.dme.map_or(f64::NAN, |dme| dme.value().get::<nautical_mile>()),
    })
}

/// A slant range as a DME display shows it: to the nearest of its steps, halves up.
///
/// `round(dme / step) step`.
///
/// # Arguments
/// - `dme_nm`: slant range, 0 to 10 900
/// - `dme_step_nm`: step in which the display counts, above 0 to 10 (default 0.1)
///
/// # Accuracy
/// Half a step.
///
/// # Degenerate cases
/// Below half a step zero is shown.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Common practice: displays count tenths of a mile.
///
/// # Example
/// ```
/// # use lubberline::plain::displayed_dme_nm;
/// assert_eq!(format!("{:.2}", displayed_dme_nm(21.46, 0.1)?), "21.50");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn displayed_dme_nm(dme_nm: f64, dme_step_nm: f64) -> Result<f64, Error> {
    if any_nan(&[dme_nm, dme_step_nm]) {
        return Ok(f64::NAN);
    }
    let step = DisplayStep::named("dme_step_nm", dme_step_nm)?;
    Ok(station::displayed_dme(SlantRange::named("dme_nm", dme_nm)?, step).value().get::<nautical_mile>())
}

/// Distance off course, right positive, for a deflection of the needle at a distance from the station.
///
/// `-R asin(sin(d / R) sin(deflection full_scale))` on a sphere of the mean radius, in the plane `-d sin(deviation)`: right of course the needle stands left.
///
/// # Arguments
/// - `deflection`: where the needle stands as a part of full scale, positive right of centre, -1 to 1
/// - `distance_nm`: distance from the station along the ground, above 0 to 5000
/// - `full_scale_deg`: deviation at full scale, above 0 below 90 (default 10.0)
///
/// # Accuracy
/// Exact on the sphere; the ellipsoid moves it by less than 0.6 percent.
///
/// # Degenerate cases
/// At either end of the scale it is the least distance that it may be.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The law of sines on the sphere.
///
/// # Example
/// ```
/// # use lubberline::plain::cross_track_of_deflection_nm;
/// assert_eq!(format!("{:.3}", cross_track_of_deflection_nm(0.5, 30.0, 10.0)?), "-2.615");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cross_track_of_deflection_nm(
    deflection: f64,
    distance_nm: f64,
    full_scale_deg: f64,
) -> Result<f64, Error> {
    if any_nan(&[deflection, distance_nm, full_scale_deg]) {
        return Ok(f64::NAN);
    }
    let deflection = Deflection::named("deflection", deflection)?;
    let distance = StationDistance::named("distance_nm", distance_nm)?;
    let deviation = with_full_scale(full_scale_deg)?.deviation(deflection);
    Ok(station::cross_track_of_deviation(deviation, distance).get::<nautical_mile>())
}

fn with_full_scale(full_scale_deg: f64) -> Result<Indicator, Error> {
    Ok(Indicator { full_scale: FullScale::named("full_scale_deg", full_scale_deg)?, ..Indicator::default() })
}

outputs! {
    /// What a needle shows off course: what [`deflection_of_cross_track`] gives.
    OffCourse {
        /// Angle at the station from the aircraft to the course, -90 to 90, positive when the course lies to the right.
        deviation_deg,
        /// Where the needle stands as a part of full scale, held at its end, -1 to 1, positive right of centre.
        deflection,
    }
}

/// Deviation and deflection for a distance off course at a distance from the station: the inverse of `cross_track_of_deflection_nm`.
///
/// `-asin(sin(x / R) / sin(d / R))` on a sphere of the mean radius, in the plane `-asin(x / d)`.
///
/// # Arguments
/// - `cross_track_nm`: distance off course, right positive, -5000 to 5000
/// - `distance_nm`: distance from the station along the ground, above 0 to 5000
/// - `full_scale_deg`: deviation at full scale, above 0 below 90 (default 10.0)
///
/// # Accuracy
/// As `cross_track_of_deflection_nm`.
///
/// # Degenerate cases
/// Beyond full scale the needle is held at its end; the deviation goes on to 90 degrees.
///
/// # Errors
/// A value outside its range, or an aircraft farther off course than from the station.
///
/// # Source
/// The law of sines on the sphere.
///
/// # Example
/// ```
/// # use lubberline::plain::deflection_of_cross_track;
/// assert_eq!(format!("{:.3}", deflection_of_cross_track(1.0, 30.0, 10.0)?.deflection), "-0.191");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn deflection_of_cross_track(
    cross_track_nm: f64,
    distance_nm: f64,
    full_scale_deg: f64,
) -> Result<OffCourse, Error> {
    if any_nan(&[cross_track_nm, distance_nm, full_scale_deg]) {
        return Ok(OffCourse::NAN);
    }
    let cross_track = nautical_miles(Quantity::CrossTrack.check("cross_track_nm", cross_track_nm)?);
    let distance = StationDistance::named("distance_nm", distance_nm)?;
    let indicator = with_full_scale(full_scale_deg)?;
    let deviation = station::deviation_of_cross_track(cross_track, distance)?;
    let deflection = indicator.deflection_of_cross_track(cross_track, distance)?;
    Ok(OffCourse { deviation_deg: deviation.value().get::<degree>(), deflection: deflection.get::<ratio>() })
}

outputs! {
    /// How a needle moves: what [`needle_motion`] gives.
    NeedleMotion {
        /// How fast the deviation changes, positive when the needle moves to the right.
        needle_rate_deg_per_s,
        /// How long the needle takes from the end of its scale to the centre, at this distance and crossing; infinite along the course.
        full_scale_time_s,
    }
}

/// How fast the needle moves, for a groundspeed and a distance from the station.
///
/// `-v sin(crossing) / (R sin(d / R))` on a sphere of the mean radius, in the plane `-v sin(crossing) / d`.
///
/// # Arguments
/// - `groundspeed_kt`: groundspeed, 0 to 10 000
/// - `distance_nm`: distance from the station along the ground, above 0 to 5000
/// - `crossing_angle_deg`: angle, right positive, to the track from the direction away from the station (FROM) or to it (TO) (default 90.0)
/// - `full_scale_deg`: deviation at full scale, above 0 below 90 (default 10.0)
///
/// # Accuracy
/// Exact on the sphere; the ellipsoid moves it by less than 0.6 percent.
///
/// # Degenerate cases
/// Along the course the needle stands still, and the time is infinite.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Derived: the motion across the line from the station.
///
/// # Example
/// ```
/// # use lubberline::plain::needle_motion;
/// assert_eq!(format!("{:.3}", needle_motion(180.0, 10.0, -30.0, 10.0)?.needle_rate_deg_per_s), "0.143");
/// assert_eq!(format!("{:.1}", needle_motion(180.0, 10.0, -30.0, 10.0)?.full_scale_time_s), "69.5");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn needle_motion(
    groundspeed_kt: f64,
    distance_nm: f64,
    crossing_angle_deg: f64,
    full_scale_deg: f64,
) -> Result<NeedleMotion, Error> {
    if any_nan(&[groundspeed_kt, distance_nm, crossing_angle_deg, full_scale_deg]) {
        return Ok(NeedleMotion::NAN);
    }
    let speed = Groundspeed::named("groundspeed_kt", groundspeed_kt)?;
    let distance = StationDistance::named("distance_nm", distance_nm)?;
    let crossing_deg = Quantity::DirectionChange.check("crossing_angle_deg", crossing_angle_deg)?;
    let crossing = DirectionChange::new(degrees(crossing_deg))?;
    let indicator = with_full_scale(full_scale_deg)?;
    Ok(NeedleMotion {
        needle_rate_deg_per_s: station::needle_rate(speed, crossing, distance).get::<degree_per_second>(),
        full_scale_time_s: station::needle_time(&indicator, speed, crossing, distance).get::<second>(),
    })
}
