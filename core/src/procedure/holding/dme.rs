//! The DME readings of a holding pattern whose fix is a distance on a radial.

use crate::Error;
use crate::earth::{ground_distance, slant_range};
use crate::lead::RadialFlown;
use crate::value::units::{Length, foot, meter, metres, nautical_mile, nautical_miles};
use crate::value::{ArcRadius, Elevation, GroundDistance, HeightAboveStation, SlantRange, TrueAltitude};

/// The reading at the end of the outbound leg.
///
/// The fix lies on a radial along which the inbound leg is flown, toward the station or away from it; the leg ends `before` the fix
/// along that course and `across` from it, as [`super::HoldingPattern::outbound_end`] gives them in any wind. Slant
/// range is turned into ground distance at the fix and back at the end.
///
/// # Accuracy
/// That of [`slant_range`]; the pattern is laid out on a plane.
///
/// # Errors
/// [`Error::SlantRangeBelowHeight`] for a fix that cannot be seen at its distance.
///
/// # Source
/// The right triangle on the ground.
///
/// # Example
/// ```
/// use lubberline::lead::RadialFlown;
/// use lubberline::procedure::outbound_end_reading;
/// use lubberline::value::{HeightAboveStation, SlantRange, units::*};
/// let (fix, height) = (SlantRange::new(nautical_miles(12.0))?, HeightAboveStation::new(feet(12_000.0))?);
/// // Held toward the station, with the outbound leg ending 5 NM before the fix and 2 NM beside its course.
/// assert_eq!(format!("{:.1}", outbound_end_reading(fix, RadialFlown::Inbound, nautical_miles(5.0), nautical_miles(2.0), height)?.value().get::<nautical_mile>()), "17.1");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn outbound_end_reading(
    fix: SlantRange,
    inbound: RadialFlown,
    before: Length,
    across: Length,
    height: HeightAboveStation,
) -> Result<SlantRange, Error> {
    let fix_m = ground_distance(fix, height)?.value().get::<meter>();
    let along_m = match inbound {
        RadialFlown::Inbound => fix_m + before.get::<meter>(),
        RadialFlown::Outbound => fix_m - before.get::<meter>(),
    };
    let ground = GroundDistance::new(metres(along_m.hypot(across.get::<meter>())))?;
    Ok(slant_range(ground, height))
}

/// The limiting outbound distance of a holding pattern on a DME.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LimitingDme {
    /// What DME shows at the end of the outbound leg.
    pub exact: SlantRange,
    /// To a whole nautical mile by the published rule; none for a pattern held away from the station, whose rule was not read.
    pub rounded: Option<SlantRange>,
}

/// The altitude up to which a decimal below a quarter is rounded down; above it, a decimal below a half. In feet.
const QUARTER_TO_FT: f64 = 14_000.0;

/// The limiting outbound distance of procedure design: the reading where the outbound leg of a still-air pattern ends.
///
/// The published form is `sqrt((Ds + ds)² + 4 r² + h²)`, with `Ds` the ground distance of the fix, `ds` the length of the outbound
/// leg and `r` the radius of the turn: the end lies `ds` before the fix and `2 r` across. Here the same two lengths are
/// seen over a curved earth ([`outbound_end_reading`]). Held toward the station the result is rounded up to a whole mile, but
/// down if the decimal is below 0.25 (at or below 14 000 ft) or below 0.5 (above).
///
/// # Accuracy
/// The curve of the earth adds up to 0.01 NM to the flat form within 60 NM and 14 000 ft.
///
/// # Errors
/// [`Error::SlantRangeBelowHeight`] for a fix that cannot be seen at its distance, [`Error::OutOfRange`] of a height.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 4 Chapter 3 Appendix C, 3.3.4 c) and d). The outbound leg is to be worth at
/// least a minute at the true airspeed and to leave half a minute inbound: Part II Section 4 Chapter 1, 1.3.2.3.
///
/// # Example
/// ```
/// use lubberline::lead::RadialFlown;
/// use lubberline::procedure::limiting_dme;
/// use lubberline::value::{ArcRadius, Elevation, GroundDistance, SlantRange, TrueAltitude, units::*};
/// let (outbound, radius) = (GroundDistance::new(nautical_miles(4.677))?, ArcRadius::new(nautical_miles(2.461))?);
/// let limit = limiting_dme(
///     SlantRange::new(nautical_miles(30.0))?,
///     RadialFlown::Inbound,
///     outbound,
///     radius,
///     TrueAltitude::new(feet(14_000.0))?,
///     Elevation::new(feet(0.0))?,
/// )?;
/// // ICAO Doc 8168 Vol II, Diagram I-4-3-App C-15: 35 NM after rounding.
/// assert_eq!(format!("{:.2}", limit.exact.value().get::<nautical_mile>()), "35.01");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn limiting_dme(
    fix: SlantRange,
    inbound: RadialFlown,
    outbound: GroundDistance,
    turn_radius: ArcRadius,
    altitude: TrueAltitude,
    station: Elevation,
) -> Result<LimitingDme, Error> {
    let height = HeightAboveStation::new(altitude.value() - station.value())?;
    let across = turn_radius.value() * 2.0;
    let exact = outbound_end_reading(fix, inbound, outbound.value(), across, height)?;
    let miles = exact.value().get::<nautical_mile>();
    let down_below = if altitude.value().get::<foot>() <= QUARTER_TO_FT { 0.25 } else { 0.5 };
    let whole = if miles - miles.floor() < down_below { miles.floor() } else { miles.ceil() };
    let rounded = (inbound == RadialFlown::Inbound).then(|| SlantRange::derived(nautical_miles(whole)));
    Ok(LimitingDme { exact, rounded })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::feet;

    fn limit(fix_nm: f64, outbound_nm: f64, altitude_ft: f64, inbound: RadialFlown) -> LimitingDme {
        limiting_dme(
            SlantRange::new(nautical_miles(fix_nm)).unwrap(),
            inbound,
            GroundDistance::new(nautical_miles(outbound_nm)).unwrap(),
            ArcRadius::new(nautical_miles(2.461)).unwrap(),
            TrueAltitude::new(feet(altitude_ft)).unwrap(),
            Elevation::new(feet(0.0)).unwrap(),
        )
        .unwrap()
    }

    #[test]
    fn it_is_the_flat_form_but_for_the_curve_of_the_earth() {
        let height_nm = feet(14_000.0).get::<nautical_mile>();
        let ground_nm = (30.0_f64.powi(2) - height_nm * height_nm).sqrt();
        for (inbound, sign) in [(RadialFlown::Inbound, 1.0), (RadialFlown::Outbound, -1.0)] {
            let flat_nm =
                ((ground_nm + sign * 4.677).powi(2) + 4.0 * 2.461_f64.powi(2) + height_nm * height_nm).sqrt();
            let exact_nm = limit(30.0, 4.677, 14_000.0, inbound).exact.value().get::<nautical_mile>();
            assert!((exact_nm - flat_nm).abs() < 0.01, "{exact_nm} {flat_nm}");
        }
    }

    #[test]
    fn the_rounding_depends_on_the_altitude() {
        let rounded = |outbound_nm, altitude_ft| {
            let limit = limit(30.0, outbound_nm, altitude_ft, RadialFlown::Inbound);
            (
                limit.exact.value().get::<nautical_mile>(),
                limit.rounded.unwrap().value().get::<nautical_mile>(),
            )
        };
        let (exact_nm, whole_nm) = rounded(5.05, 14_000.0);
        assert!((35.25..35.5).contains(&exact_nm) && (whole_nm - 36.0).abs() < 1e-12, "{exact_nm}");
        let (exact_nm, whole_nm) = rounded(5.05, 14_001.0);
        assert!((35.25..35.5).contains(&exact_nm) && (whole_nm - 35.0).abs() < 1e-12, "{exact_nm}");
        assert_eq!(limit(30.0, 5.0, 9_000.0, RadialFlown::Outbound).rounded, None);
    }
}
