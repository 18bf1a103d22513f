//! How a holding pattern is entered, and what its time, speed and turns are, in plain numbers.

use super::{any_nan, outputs};
use crate::Error;
use crate::procedure::{self, HoldingBankRule, HoldingSide, HoldingSpeedRule, TimingAuthority};
use crate::value::units::{degree, degree_per_second, knot, nautical_mile, ratio, second};
use crate::value::{Bearing, IndicatedAltitude, PressureAltitude, RollRate, TrueAirspeed, TrueNorth};

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
        /// The leg that is timed, [`procedure::TimedLeg`].
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
