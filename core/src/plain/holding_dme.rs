//! The DME of a holding pattern, in plain numbers.

use super::{any_nan, outputs};
use crate::Error;
use crate::lead::RadialFlown;
use crate::procedure;
use crate::value::units::{nautical_mile, nautical_miles};
use crate::value::{
    ArcRadius, Elevation, GroundDistance, HeightAboveStation, Quantity, SlantRange, TrueAltitude,
};

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
