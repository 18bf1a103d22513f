//! Plain functions of holding: entry, timing, limits of speed and bank, the pattern in a wind, DME, and the rules of the trade.

use super::lead::wind;
use super::turn::turn_limits;
use super::{any_nan, outputs};
use crate::Error;
use crate::lead::RadialFlown;
use crate::procedure::{self, HoldingBankRule, HoldingSide, HoldingSpeedRule, TimedLeg, TimingAuthority};
use crate::rules::{self, DriftRule};
use crate::value::units::{
    degree, degree_per_second, degrees, knot, nautical_mile, nautical_miles, ratio, second, seconds,
};
use crate::value::{
    ArcRadius, Bearing, DirectionChange, Elevation, GroundDistance, HeightAboveStation, HoldTime,
    IndicatedAltitude, PressureAltitude, Quantity, RollRate, SlantRange, TrueAirspeed, TrueAltitude,
    TrueNorth, WindComponent,
};

outputs! {
    /// How a holding pattern is entered: what [`holding_entry`] gives.
    EntrySector {
        /// The entry of the sector in which the heading lies: its number, [`procedure::HoldingEntry`].
        entry,
        /// The entry across the boundary, [`procedure::HoldingEntry`], if the heading lies in the zone about it; else
        /// NaN.
        also,
        /// From the heading to the outbound course, right positive.
        to_outbound_deg,
        /// Angle between the heading and the nearest boundary of two sectors, without its side.
        to_boundary_deg,
        /// The first course flown from the fix: the outbound course, 30 degrees off it into the holding side for an
        /// offset entry.
        first_course_deg,
    }
}

/// How to enter a holding pattern, by the sector in which the heading lies.
///
/// With the angle from the heading to the outbound course counted positive to the side of the turns: from 0 to 70
/// degrees offset (sector 2, the teardrop), from 0 to -110 parallel (sector 1), else direct (sector 3). Within 5
/// degrees of a boundary the entry across it may be flown too.
///
/// # Arguments
/// - `heading_deg`: heading at which the fix is reached, any finite number
/// - `inbound_course_deg`: course flown to the fix in the pattern, against the same north
/// - `side`: which way the turns go
///
/// # Accuracy
/// Rounding error.
///
/// # Degenerate cases
/// On a boundary both entries are given: at 0 offset is named first, at 70 offset, at -110 parallel.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// CNATRA P-821 figure 3-8, P-801 figures 17A and 17B; the zone: FAA Aeronautical Information Manual (3 April 2014), 5-3-8 j 6 (d), CNATRA P-821
/// and ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 6 Chapter 1, from memory.
///
/// # Example
/// ```
/// # use lubberline::plain::holding_entry;
/// # use lubberline::procedure::HoldingSide;
/// assert_eq!(format!("{:.0}", holding_entry(15.0, 270.0, HoldingSide::Right)?.entry), "3");
/// assert_eq!(format!("{:.0}", holding_entry(15.0, 270.0, HoldingSide::Right)?.also), "2");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn holding_entry(
    heading_deg: f64,
    inbound_course_deg: f64,
    side: HoldingSide,
) -> Result<EntrySector, Error> {
    if any_nan(&[heading_deg, inbound_course_deg]) {
        return Ok(EntrySector::NAN);
    }
    let sector = procedure::entry_sector::<TrueNorth>(
        Bearing::named("heading_deg", heading_deg)?,
        Bearing::named("inbound_course_deg", inbound_course_deg)?,
        side,
    );
    Ok(EntrySector {
        entry: f64::from(sector.entry.code()),
        also: sector.also.map_or(f64::NAN, |entry| f64::from(entry.code())),
        to_outbound_deg: sector.to_outbound.angle().get::<degree>(),
        to_boundary_deg: sector.to_boundary.get::<degree>(),
        first_course_deg: sector.first_course.angle().get::<degree>(),
    })
}

outputs! {
    /// What is timed in a holding pattern: what [`holding_timing`] gives.
    HoldingTiming {
        /// The leg that is timed, [`TimedLeg`].
        timed,
        /// Its time.
        time_s,
    }
}

/// Which leg of a holding pattern is timed, and for how long.
///
/// One minute at or below 14 000 ft, a minute and a half above: of the outbound leg in still air by ICAO, of the
/// inbound leg by the FAA.
///
/// # Arguments
/// - `altitude_ft`: altitude or flight level, -50 000 to 300 000
/// - `authority`: whose timing
///
/// # Accuracy
/// As published.
///
/// # Degenerate cases
/// 14 000 ft belong to the lower band. Outbound the clock starts over or abeam the fix, whichever is later; where
/// abeam cannot be told, with wings level.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 6 Chapter 1, as quoted; FAA Aeronautical Information Manual 5-3-8, edition not shown in the copy
/// read, and CNATRA T-6B FTI chapter 7.
///
/// # Example
/// ```
/// # use lubberline::plain::holding_timing;
/// # use lubberline::procedure::TimingAuthority;
/// assert_eq!(format!("{:.0}", holding_timing(14_001.0, TimingAuthority::Icao)?.time_s), "90");
/// assert_eq!(format!("{:.0}", holding_timing(14_001.0, TimingAuthority::Icao)?.timed), "1");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn holding_timing(altitude_ft: f64, authority: TimingAuthority) -> Result<HoldingTiming, Error> {
    if any_nan(&[altitude_ft]) {
        return Ok(HoldingTiming::NAN);
    }
    let timing = procedure::leg_timing(authority, IndicatedAltitude::named("altitude_ft", altitude_ft)?);
    Ok(HoldingTiming { timed: f64::from(timing.leg.code()), time_s: timing.time.get::<second>() })
}

outputs! {
    /// The greatest speeds of a holding pattern: what [`holding_speed`] gives.
    HoldingSpeed {
        /// The greatest indicated airspeed; NaN where only a Mach number or nothing limits.
        indicated_kt,
        /// The greatest Mach number; NaN where only an airspeed or nothing limits.
        mach,
        /// The greatest calibrated airspeed that both leave, with the altitude taken for pressure altitude; NaN where
        /// nothing limits.
        calibrated_kt,
    }
}

/// The greatest speed at which a holding pattern may be flown.
///
/// By authority and altitude, as published; a limit of both airspeed and Mach number means the lesser of the two.
///
/// # Arguments
/// - `altitude_ft`: altitude or flight level, -16 420 to 262 467
/// - `rule`: whose limit, with its edition
///
/// # Accuracy
/// As published. Limits change: each alternative of the rule names its edition.
///
/// # Degenerate cases
/// An altitude that bounds a band belongs to the band below it. Where nothing limits the speed, every output is NaN.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// FAA Aeronautical Information Manual (20 April 2023), 5-3-8 j 2; AFMAN 11-217V1 (3 January 2005), tables 10.1 and 18.4, the latter
/// after ICAO Doc 8168; Transport Canada Aeronautical Information Manual, RAC 10.7, before and since October 2018, quoted; the
/// FAA's of before 1998 and the first edition of ICAO Doc 8168, from memory.
///
/// # Example
/// ```
/// # use lubberline::plain::holding_speed;
/// # use lubberline::procedure::HoldingSpeedRule;
/// assert_eq!(format!("{:.0}", holding_speed(14_000.0, HoldingSpeedRule::Faa)?.indicated_kt), "230");
/// assert_eq!(format!("{:.1}", holding_speed(33_900.0, HoldingSpeedRule::IcaoTurbulence)?.calibrated_kt), "278.8");
/// assert_eq!(format!("{:.2}", holding_speed(34_001.0, HoldingSpeedRule::Icao)?.mach), "0.83");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn holding_speed(altitude_ft: f64, rule: HoldingSpeedRule) -> Result<HoldingSpeed, Error> {
    if any_nan(&[altitude_ft]) {
        return Ok(HoldingSpeed::NAN);
    }
    // The altitude is taken for both; the narrower range is that of a pressure altitude.
    let pressure_altitude = PressureAltitude::named("altitude_ft", altitude_ft)?;
    let limit = procedure::holding_speed(rule, IndicatedAltitude::named("altitude_ft", altitude_ft)?);
    let calibrated = limit.calibrated_at(pressure_altitude)?;
    Ok(HoldingSpeed {
        indicated_kt: limit.indicated.map_or(f64::NAN, |speed| speed.value().get::<knot>()),
        mach: limit.mach.map_or(f64::NAN, |mach| mach.value().get::<ratio>()),
        calibrated_kt: calibrated.map_or(f64::NAN, |speed| speed.value().get::<knot>()),
    })
}

outputs! {
    /// The turns of a holding pattern: what [`holding_turn`] gives.
    HoldingTurn {
        /// The bank that is flown.
        bank_deg,
        /// The rate of turn at it.
        turn_rate_deg_per_s,
        /// The radius in still air.
        radius_nm,
        /// What governs the bank, [`crate::turn::Governor`].
        governed_by,
    }
}

/// The turns of a holding pattern: standard rate or a bank, whichever needs less bank.
///
/// The bank is the lesser of 25 degrees (30 by the FAA without a flight director) and `atan(rate V / g)` at 3 degrees
/// per second.
///
/// # Arguments
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `rule`: whose limits
///
/// # Accuracy
/// Rounding error.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 6 Chapter 1, as quoted; FAA Aeronautical Information Manual (3 April 2014), 5-3-8 j 6 (b), and
/// (20 April 2023), 5-3-8 j.
///
/// # Example
/// ```
/// # use lubberline::plain::holding_turn;
/// # use lubberline::procedure::HoldingBankRule;
/// assert_eq!(format!("{:.2}", holding_turn(220.0, HoldingBankRule::Icao)?.turn_rate_deg_per_s), "2.32");
/// assert_eq!(format!("{:.1}", holding_turn(220.0, HoldingBankRule::Faa)?.bank_deg), "30.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn holding_turn(true_airspeed_kt: f64, rule: HoldingBankRule) -> Result<HoldingTurn, Error> {
    if any_nan(&[true_airspeed_kt]) {
        return Ok(HoldingTurn::NAN);
    }
    let airspeed = TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?;
    let limits = procedure::holding_turn_limits(rule, RollRate::instant());
    let (bank, governor) = limits.governing_bank(airspeed);
    Ok(HoldingTurn {
        bank_deg: bank.value().get::<degree>(),
        turn_rate_deg_per_s: crate::turn::rate(airspeed, bank).get::<degree_per_second>(),
        radius_nm: crate::turn::radius(airspeed, bank).get::<nautical_mile>(),
        governed_by: f64::from(governor.code()),
    })
}

outputs! {
    /// A holding pattern in a wind: what [`holding_pattern`] gives.
    HoldingPattern {
        /// Heading to fly outbound.
        outbound_heading_deg,
        /// Outbound heading less the reciprocal of the inbound course, right positive.
        outbound_correction_deg,
        /// Inbound heading less inbound course, right positive.
        inbound_correction_deg,
        /// By what the inbound correction has to be multiplied, and its side changed, to give the outbound one; NaN
        /// without an inbound correction.
        drift_factor,
        /// Time straight outbound, from wings level to the turn inbound.
        outbound_time_s,
        /// Time on the outbound clock: from abeam the fix, or from wings level where the fix is passed abeam in the
        /// turn.
        outbound_clock_s,
        /// Time straight inbound, from wings level to the fix.
        inbound_time_s,
        /// From the fix to the fix.
        duration_s,
        /// Where the outbound leg ends, before the fix along the inbound course.
        outbound_end_before_fix_nm,
        /// Where the outbound leg ends, across the inbound course to the side of the turns.
        outbound_end_across_nm,
        /// Distance from the fix at which the wings are level on the inbound course.
        inbound_leg_nm,
        /// Length of the whole path over the ground, along the inbound course.
        length_nm,
        /// Width of the whole path over the ground, across the inbound course.
        width_nm,
        /// The greatest bank.
        bank_deg,
    }
}

/// The holding pattern that closes in a steady wind, exactly: outbound heading, times and size.
///
/// A turn with its roll over the fix onto the outbound heading, straight outbound, a turn that ends on the inbound
/// course, and that course to the fix; over the ground wind times duration is added to each. The outbound heading is
/// the one for which the sum is nothing.
///
/// # Arguments
/// - `inbound_course_deg`: course flown to the fix, any finite number
/// - `side`: which way the turns go
/// - `timed`: the leg whose time is given, and where its clock starts
/// - `time_s`: time of that leg, 0 to 3600
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, against the same north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
/// - `bank_limit_deg`: greatest bank, above 0 below 90 (default 25.0)
/// - `turn_rate_limit_deg_per_s`: greatest rate of turn, above 0 (default 3.0)
/// - `roll_rate_deg_per_s`: rate of roll, above 0, infinite for an instant roll (default 5.0)
///
/// # Accuracy
/// 1e-9 of the size of the pattern, in the plane of the fix.
///
/// # Degenerate cases
/// In calm air the outbound heading is the reciprocal. Where several headings close the pattern, the one nearest to
/// the reciprocal is meant.
///
/// # Errors
/// A value outside its range, an inbound course that the airspeed cannot hold, a wind in which no heading closes the
/// pattern before the fix.
///
/// # Source
/// Derived from the equilibrium of a coordinated turn and the triangle of velocities.
///
/// # Example
/// ```
/// # use lubberline::plain::holding_pattern;
/// # use lubberline::procedure::{HoldingSide, TimedLeg};
/// assert_eq!(format!("{:.1}", holding_pattern(270.0, HoldingSide::Right, TimedLeg::Inbound, 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0)?.outbound_heading_deg), "68.5");
/// assert_eq!(format!("{:.2}", holding_pattern(270.0, HoldingSide::Right, TimedLeg::Inbound, 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0)?.drift_factor), "2.80");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn holding_pattern(
    inbound_course_deg: f64,
    side: HoldingSide,
    timed: TimedLeg,
    time_s: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
) -> Result<HoldingPattern, Error> {
    if any_nan(&[
        inbound_course_deg,
        time_s,
        true_airspeed_kt,
        wind_from_deg,
        wind_speed_kt,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
    ]) {
        return Ok(HoldingPattern::NAN);
    }
    let pattern = procedure::HoldingPattern::<TrueNorth>::new(
        Bearing::named("inbound_course_deg", inbound_course_deg)?,
        side,
        timed,
        HoldTime::named("time_s", time_s)?,
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        wind(wind_from_deg, wind_speed_kt)?,
        &turn_limits(bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?,
    )?;
    let (before, across) = pattern.outbound_end();
    let (length, width) = pattern.size();
    Ok(HoldingPattern {
        outbound_heading_deg: pattern.outbound_heading().angle().get::<degree>(),
        outbound_correction_deg: pattern.outbound_correction().angle().get::<degree>(),
        inbound_correction_deg: pattern.inbound().wind_correction.get::<degree>(),
        drift_factor: pattern.drift_factor().map_or(f64::NAN, |factor| factor.get::<ratio>()),
        outbound_time_s: pattern.outbound_time().get::<second>(),
        outbound_clock_s: pattern.outbound_clock().get::<second>(),
        inbound_time_s: pattern.inbound_time().get::<second>(),
        duration_s: pattern.duration().get::<second>(),
        outbound_end_before_fix_nm: before.get::<nautical_mile>(),
        outbound_end_across_nm: across.get::<nautical_mile>(),
        inbound_leg_nm: pattern.inbound_leg().get::<nautical_mile>(),
        length_nm: length.get::<nautical_mile>(),
        width_nm: width.get::<nautical_mile>(),
        bank_deg: pattern.bank().get::<degree>(),
    })
}

outputs! {
    /// A place in a holding pattern: what [`holding_pattern_at`] gives.
    HoldingPoint {
        /// Bearing from the fix; NaN over it.
        bearing_from_fix_deg,
        /// Distance from the fix over the ground.
        distance_nm,
        /// Heading.
        heading_deg,
        /// Bank, right positive.
        bank_deg,
    }
}

/// Where the aircraft is in the holding pattern that closes in a steady wind, a time after it passed the fix.
///
/// The turn outbound, the outbound leg, the turn inbound and the inbound leg of `holding_pattern`, one after the other, round after
/// round.
///
/// # Arguments
/// - `since_fix_s`: time since the fix was passed, -1 000 000 to 1 000 000
/// - `inbound_course_deg`: course flown to the fix, any finite number
/// - `side`: which way the turns go
/// - `timed`: the leg whose time is given, and where its clock starts
/// - `time_s`: time of that leg, 0 to 3600
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, against the same north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
/// - `bank_limit_deg`: greatest bank, above 0 below 90 (default 25.0)
/// - `turn_rate_limit_deg_per_s`: greatest rate of turn, above 0 (default 3.0)
/// - `roll_rate_deg_per_s`: rate of roll, above 0, infinite for an instant roll (default 5.0)
///
/// # Accuracy
/// As `holding_pattern`.
///
/// # Degenerate cases
/// Over the fix there is no bearing. Before the fix the last round is meant.
///
/// # Errors
/// As `holding_pattern`; a time outside its range.
///
/// # Source
/// As `holding_pattern`.
///
/// # Example
/// ```
/// # use lubberline::plain::holding_pattern_at;
/// # use lubberline::procedure::{HoldingSide, TimedLeg};
/// assert_eq!(format!("{:.1}", holding_pattern_at(100.0, 270.0, HoldingSide::Right, TimedLeg::Inbound, 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0)?.heading_deg), "68.5");
/// assert_eq!(format!("{:.2}", holding_pattern_at(100.0, 270.0, HoldingSide::Right, TimedLeg::Inbound, 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0)?.distance_nm), "2.32");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn holding_pattern_at(
    since_fix_s: f64,
    inbound_course_deg: f64,
    side: HoldingSide,
    timed: TimedLeg,
    time_s: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
) -> Result<HoldingPoint, Error> {
    if any_nan(&[
        since_fix_s,
        inbound_course_deg,
        time_s,
        true_airspeed_kt,
        wind_from_deg,
        wind_speed_kt,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
    ]) {
        return Ok(HoldingPoint::NAN);
    }
    let since_fix_s = Quantity::TurnTime.check("since_fix_s", since_fix_s)?;
    let point = procedure::HoldingPattern::<TrueNorth>::new(
        Bearing::named("inbound_course_deg", inbound_course_deg)?,
        side,
        timed,
        HoldTime::named("time_s", time_s)?,
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        wind(wind_from_deg, wind_speed_kt)?,
        &turn_limits(bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?,
    )?
    .at(seconds(since_fix_s));
    Ok(HoldingPoint {
        bearing_from_fix_deg: point
            .bearing_from_fix
            .map_or(f64::NAN, |bearing| bearing.angle().get::<degree>()),
        distance_nm: point.distance.value().get::<nautical_mile>(),
        heading_deg: point.heading.angle().get::<degree>(),
        bank_deg: point.bank.get::<degree>(),
    })
}

/// The DME reading at the end of the outbound leg of a holding pattern whose fix is a distance on a radial.
///
/// The reading at the fix is turned into ground distance; the leg ends so far before the fix and so far across, as
/// `holding_pattern` gives them in any wind; the distance there is turned back into slant range.
///
/// # Arguments
/// - `fix_dme_nm`: DME reading at the fix, 0 to 10 900
/// - `inbound`: whether the inbound leg is flown toward the station (inbound) or away from it (outbound)
/// - `before_fix_nm`: where the leg ends, before the fix along the inbound course, -10 000 to 10 000
/// - `across_nm`: where the leg ends, across the inbound course, -5000 to 5000
/// - `height_ft`: height above the station's antenna, -60 000 to 400 000 (default 0.0)
///
/// # Accuracy
/// That of `slant_range_nm`; the pattern is laid out on a plane.
///
/// # Degenerate cases
/// Held away from the station, a leg that ends beyond it counts on.
///
/// # Errors
/// A value outside its range, a reading below the height.
///
/// # Source
/// The right triangle on the ground, and the law of cosines between the radii of the earth and of the flight.
///
/// # Example
/// ```
/// # use lubberline::plain::outbound_end_dme_nm;
/// # use lubberline::lead::RadialFlown;
/// assert_eq!(format!("{:.2}", outbound_end_dme_nm(30.0, RadialFlown::Inbound, 4.7, 4.9, 14_000.0)?), "35.03");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn outbound_end_dme_nm(
    fix_dme_nm: f64,
    inbound: RadialFlown,
    before_fix_nm: f64,
    across_nm: f64,
    height_ft: f64,
) -> Result<f64, Error> {
    if any_nan(&[fix_dme_nm, before_fix_nm, across_nm, height_ft]) {
        return Ok(f64::NAN);
    }
    let reading = procedure::outbound_end_reading(
        SlantRange::named("fix_dme_nm", fix_dme_nm)?,
        inbound,
        nautical_miles(Quantity::AlongTrack.check("before_fix_nm", before_fix_nm)?),
        nautical_miles(Quantity::CrossTrack.check("across_nm", across_nm)?),
        HeightAboveStation::named("height_ft", height_ft)?,
    )?;
    Ok(reading.value().get::<nautical_mile>())
}

outputs! {
    /// The limiting outbound distance of a holding pattern: what [`limiting_dme`] gives.
    LimitingDme {
        /// DME reading at the end of the still-air outbound leg.
        limiting_dme_nm,
        /// To a whole nautical mile by the published rule; NaN for a pattern held away from the station, whose rule
        /// was not read.
        rounded_nm,
    }
}

/// The limiting outbound DME distance of procedure design, exact and rounded as published.
///
/// `sqrt((Ds + ds)^2 + 4 r^2 + h^2)` in the published form, seen over a curved earth here. Held toward the station it
/// is rounded up to a whole mile, but down if the decimal is below 0.25 (at or below 14 000 ft) or below 0.5 (above).
///
/// # Arguments
/// - `fix_dme_nm`: DME reading at the fix, 0 to 10 900
/// - `inbound`: whether the inbound leg is flown toward the station (inbound) or away from it (outbound)
/// - `outbound_leg_nm`: length of the outbound leg, 0 to 10 900
/// - `turn_radius_nm`: radius of the turn, above 0 to 1000
/// - `altitude_ft`: altitude, -16 500 to 400 000
/// - `station_elevation_ft`: elevation of the station's antenna, -16 500 to 60 000 (default 0.0)
///
/// # Accuracy
/// The curve of the earth adds up to 0.01 NM to the flat form within 60 NM and 14 000 ft.
///
/// # Degenerate cases
/// Held away from the station the sign of the leg changes.
///
/// # Errors
/// A value outside its range, a reading below the height.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 4 Chapter 3 Appendix C, 3.3.4 c) and d).
///
/// # Example
/// ```
/// # use lubberline::plain::limiting_dme;
/// # use lubberline::lead::RadialFlown;
/// assert_eq!(format!("{:.0}", limiting_dme(30.0, RadialFlown::Inbound, 4.677, 2.461, 14_000.0, 0.0)?.rounded_nm), "35");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn limiting_dme(
    fix_dme_nm: f64,
    inbound: RadialFlown,
    outbound_leg_nm: f64,
    turn_radius_nm: f64,
    altitude_ft: f64,
    station_elevation_ft: f64,
) -> Result<LimitingDme, Error> {
    if any_nan(&[fix_dme_nm, outbound_leg_nm, turn_radius_nm, altitude_ft, station_elevation_ft]) {
        return Ok(LimitingDme::NAN);
    }
    let limit = procedure::limiting_dme(
        SlantRange::named("fix_dme_nm", fix_dme_nm)?,
        inbound,
        GroundDistance::named("outbound_leg_nm", outbound_leg_nm)?,
        ArcRadius::named("turn_radius_nm", turn_radius_nm)?,
        TrueAltitude::named("altitude_ft", altitude_ft)?,
        Elevation::named("station_elevation_ft", station_elevation_ft)?,
    )?;
    Ok(LimitingDme {
        limiting_dme_nm: limit.exact.value().get::<nautical_mile>(),
        rounded_nm: limit.rounded.map_or(f64::NAN, |rounded| rounded.value().get::<nautical_mile>()),
    })
}

/// The outbound heading of a holding pattern by rule: a multiple of the inbound wind correction, the other way.
///
/// `inbound course + 180 - k * correction`, with k = 2 or 3.
///
/// # Arguments
/// - `inbound_course_deg`: course flown to the fix, any finite number
/// - `inbound_correction_deg`: inbound heading less inbound course, right positive, any finite number
/// - `rule`: by what the correction is multiplied
///
/// # Accuracy
/// The rules contradict each other; see the drift factor of `holding_pattern` for the exact one.
///
/// # Degenerate cases
/// No correction inbound leaves the reciprocal.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Three times: FAA Aeronautical Information Manual (3 April 2014), 5-3-8 j 6 (c), and (20 April 2023), 5-3-8 j; CNATRA P-871 chapter 4. Two to three times: CNATRA
/// P-1244 p. 5-17.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_outbound_heading_deg;
/// # use lubberline::rules::DriftRule;
/// assert_eq!(format!("{:.0}", rule_outbound_heading_deg(270.0, 5.0, DriftRule::Triple)?), "75");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_outbound_heading_deg(
    inbound_course_deg: f64,
    inbound_correction_deg: f64,
    rule: DriftRule,
) -> Result<f64, Error> {
    if any_nan(&[inbound_course_deg, inbound_correction_deg]) {
        return Ok(f64::NAN);
    }
    let correction_deg = Quantity::DirectionChange.check("inbound_correction_deg", inbound_correction_deg)?;
    let heading = rules::outbound_heading::<TrueNorth>(
        Bearing::named("inbound_course_deg", inbound_course_deg)?,
        DirectionChange::new(degrees(correction_deg))?,
        rule,
    );
    Ok(heading.angle().get::<degree>())
}

/// The next outbound time of a holding pattern by rule: the last one, and what the inbound leg came out short.
///
/// `outbound + wanted - inbound`.
///
/// # Arguments
/// - `outbound_time_s`: time flown outbound, 0 to 3600
/// - `inbound_time_s`: time the inbound leg then took, 0 to 3600
/// - `wanted_inbound_time_s`: time the inbound leg is to take, 0 to 3600 (default 60.0)
///
/// # Accuracy
/// It leaves out that the legs are flown at different groundspeeds, so it takes several rounds to settle. See
/// `holding_pattern`.
///
/// # Degenerate cases
/// Zero where the rule leaves no time.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// CNATRA P-871 chapter 4, figure 4-16; against a strong headwind inbound it flies the first outbound leg for no less
/// than 30 s.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_outbound_time_s;
/// assert_eq!(format!("{:.0}", rule_outbound_time_s(60.0, 50.0, 60.0)?), "70");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_outbound_time_s(
    outbound_time_s: f64,
    inbound_time_s: f64,
    wanted_inbound_time_s: f64,
) -> Result<f64, Error> {
    if any_nan(&[outbound_time_s, inbound_time_s, wanted_inbound_time_s]) {
        return Ok(f64::NAN);
    }
    let time = rules::next_outbound_time(
        HoldTime::named("outbound_time_s", outbound_time_s)?,
        HoldTime::named("inbound_time_s", inbound_time_s)?,
        HoldTime::named("wanted_inbound_time_s", wanted_inbound_time_s)?,
    );
    Ok(time.get::<second>())
}

/// The outbound time of a holding pattern by rule for a known wind: a second more for each knot of headwind.
///
/// `still air + headwind`, less for a tailwind.
///
/// # Arguments
/// - `still_air_time_s`: time outbound in still air, 0 to 3600
/// - `outbound_headwind_kt`: headwind on the outbound leg, negative for a tailwind, -1000 to 1000
///
/// # Accuracy
/// See `holding_pattern` for the exact time.
///
/// # Degenerate cases
/// Zero where the rule leaves no time.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Common practice.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_outbound_time_by_headwind_s;
/// assert_eq!(format!("{:.0}", rule_outbound_time_by_headwind_s(60.0, -15.0)?), "45");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_outbound_time_by_headwind_s(
    still_air_time_s: f64,
    outbound_headwind_kt: f64,
) -> Result<f64, Error> {
    if any_nan(&[still_air_time_s, outbound_headwind_kt]) {
        return Ok(f64::NAN);
    }
    let time = rules::outbound_time_by_headwind(
        HoldTime::named("still_air_time_s", still_air_time_s)?,
        WindComponent::named("outbound_headwind_kt", outbound_headwind_kt)?,
    );
    Ok(time.get::<second>())
}
