//! How accurate VOR and DME are by the published tolerances, in plain numbers.

use super::{any_nan, outputs};
use crate::Error;
use crate::station::{self, DmeAccuracy, DmeCoverage, RadialAccuracy, RadialErrors, ReceiverCheck};
use crate::value::units::{degree, nautical_mile};
use crate::value::{AngularError, DistanceError, SlantRange};

/// The published tolerance of a radial or a bearing, by its source.
///
/// The root of the sum of squares of its parts: VOR 3.5 degrees ground, 2.7 receiver, 1.0 monitor and 3.5 (en route) or 2.5 (terminal) flight technical;
/// NDB 3 degrees ground and 5.4 receiver.
///
/// # Arguments
/// - `accuracy`: which figure
///
/// # Accuracy
/// Not rounded, where the sources print 5.7, 5.2, 4.5 and 6.2 degrees.
///
/// # Degenerate cases
/// None. A tolerance is two standard deviations.
///
/// # Errors
/// A choice that is none of its alternatives.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Part II Section 3 Chapter 1, 1.4.3.2 and Appendix B 2.2, and Part I Section 2 Chapter 2, Table I-2-2-1 (from memory);
/// FAA Aeronautical Information Manual 1-1-3, edition not shown in the copy read.
///
/// # Example
/// ```
/// # use lubberline::plain::radial_tolerance_deg;
/// # use lubberline::station::RadialAccuracy;
/// assert_eq!(format!("{:.2}", radial_tolerance_deg(RadialAccuracy::VorIntersecting)?), "4.53");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn radial_tolerance_deg(accuracy: RadialAccuracy) -> Result<f64, Error> {
    Ok(accuracy.tolerance().value().get::<degree>())
}

outputs! {
    /// How the parts of a radial's error combine: what [`radial_error`] gives.
    RadialError {
        /// Where the radial is: ground, receiver and monitor.
        aggregate_deg,
        /// Where an aircraft flying along it is: the aggregate and the flight technical part.
        system_use_deg,
    }
}

/// How the independent parts of a radial's error combine.
///
/// `sqrt(Eg^2 + Ea^2 + Em^2)` for the radial, and with `Ep^2` for the aircraft that flies along it.
///
/// # Arguments
/// - `ground_deg`: error of the signal, 0 to 90
/// - `receiver_deg`: error of the airborne receiver, 0 to 90
/// - `flight_technical_deg`: error of flying by the needle, 0 to 90 (default 0.0)
/// - `monitor_deg`: error that the monitor lets pass, 0 to 90 (default 0.0)
///
/// # Accuracy
/// Rounding error.
///
/// # Degenerate cases
/// Tolerances give a tolerance, standard deviations a standard deviation.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Annex 10 Vol I, Attachment C, 3.7.3.2; ICAO Doc 8168 Vol II (5th ed. 2006), Part II Section 3 Chapter 1, Appendix B, adds the monitor.
///
/// # Example
/// ```
/// # use lubberline::plain::radial_error;
/// assert_eq!(format!("{:.2}", radial_error(3.5, 2.7, 3.5, 1.0)?.system_use_deg), "5.73");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn radial_error(
    ground_deg: f64,
    receiver_deg: f64,
    flight_technical_deg: f64,
    monitor_deg: f64,
) -> Result<RadialError, Error> {
    if any_nan(&[ground_deg, receiver_deg, flight_technical_deg, monitor_deg]) {
        return Ok(RadialError::NAN);
    }
    let errors = RadialErrors {
        ground: AngularError::named("ground_deg", ground_deg)?,
        receiver: AngularError::named("receiver_deg", receiver_deg)?,
        flight_technical: AngularError::named("flight_technical_deg", flight_technical_deg)?,
        monitor: AngularError::named("monitor_deg", monitor_deg)?,
    };
    Ok(RadialError {
        aggregate_deg: errors.aggregate().get::<degree>(),
        system_use_deg: errors.system_use().get::<degree>(),
    })
}

/// The published tolerance of a DME at a slant range, by its source.
///
/// `0.25 + 0.0125 d` (`pans_ops`), 0.2 (`annex_10`), the greater of 0.5 and `0.03 d` (`aim`), `sqrt(0.1^2 + 0.17^2)` (`since_1989`), in nautical miles.
///
/// # Arguments
/// - `dme_nm`: slant range, 0 to 10 900
/// - `accuracy`: which figure
///
/// # Accuracy
/// As published.
///
/// # Degenerate cases
/// None. A tolerance is two standard deviations.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 2 Chapter 2, 2.4.2; ICAO Annex 10 Vol I, 3.5.3.1.3.3; FAA Aeronautical Information Manual 1-1-7, edition not shown in the copy read; ICAO
/// Doc 8168 Vol II, Part III Section 1 Chapter 3, Appendix 3, 2.1.
///
/// # Example
/// ```
/// # use lubberline::plain::dme_tolerance_nm;
/// # use lubberline::station::DmeAccuracy;
/// assert_eq!(format!("{:.2}", dme_tolerance_nm(40.0, DmeAccuracy::PansOps)?), "0.75");
/// assert_eq!(format!("{:.2}", dme_tolerance_nm(40.0, DmeAccuracy::Aim)?), "1.20");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn dme_tolerance_nm(dme_nm: f64, accuracy: DmeAccuracy) -> Result<f64, Error> {
    if any_nan(&[dme_nm]) {
        return Ok(f64::NAN);
    }
    Ok(accuracy.tolerance(SlantRange::named("dme_nm", dme_nm)?).value().get::<nautical_mile>())
}

/// The greatest error with which a VOR receiver passes a check within the preceding 30 days.
///
/// 4 degrees for a test signal, a checkpoint on the ground and between two receivers; 6 degrees in the air.
///
/// # Arguments
/// - `check`: which check
///
/// # Accuracy
/// As published.
///
/// # Degenerate cases
/// None.
///
/// # Errors
/// A choice that is none of its alternatives.
///
/// # Source
/// 14 CFR 91.171 (b) and (c).
///
/// # Example
/// ```
/// # use lubberline::plain::receiver_check_limit_deg;
/// # use lubberline::station::ReceiverCheck;
/// assert_eq!(format!("{:.0}", receiver_check_limit_deg(ReceiverCheck::AirborneCheckpoint)?), "6");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn receiver_check_limit_deg(check: ReceiverCheck) -> Result<f64, Error> {
    Ok(check.limit().get::<degree>())
}

outputs! {
    /// Tolerances of area navigation by DME: what [`dme_dme_tolerances`] gives.
    DmeDmeTolerances {
        /// Along the track.
        along_track_nm,
        /// Across the track.
        across_track_nm,
        /// Half the width of the area.
        half_width_nm,
    }
}

/// Tolerances of area navigation by DME/DME, for procedure design.
///
/// Along `sqrt((k d)^2 + st^2)`, across `sqrt((k d)^2 + ftt^2 + st^2)`, half-width `1.5 across + bv`, with `k` 1.29 for two stations and 1 for more.
///
/// # Arguments
/// - `dme_tolerance_nm`: tolerance of one DME, as `dme_tolerance_nm` gives it, 0 to 1000
/// - `flight_technical_nm`: flight technical tolerance, 0 to 1000
/// - `buffer_nm`: buffer value, 0 to 1000
/// - `coverage`: from how many stations the position is taken (default "two_stations")
/// - `system_nm`: system computation tolerance, 0 to 1000 (default 0.25)
///
/// # Accuracy
/// Not rounded between steps, where the printed examples are.
///
/// # Degenerate cases
/// None.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 1 Chapter 3, Appendices 1 and 3; the factor of 1 is inferred from the examples.
///
/// # Example
/// ```
/// # use lubberline::plain::dme_dme_tolerances;
/// # use lubberline::station::DmeCoverage;
/// assert_eq!(format!("{:.2}", dme_dme_tolerances(1.34, 1.0, 1.0, DmeCoverage::TwoStations, 0.25)?.half_width_nm), "4.02");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn dme_dme_tolerances(
    dme_tolerance_nm: f64,
    flight_technical_nm: f64,
    buffer_nm: f64,
    coverage: DmeCoverage,
    system_nm: f64,
) -> Result<DmeDmeTolerances, Error> {
    if any_nan(&[dme_tolerance_nm, flight_technical_nm, buffer_nm, system_nm]) {
        return Ok(DmeDmeTolerances::NAN);
    }
    let tolerances = station::dme_dme_tolerances(
        DistanceError::named("dme_tolerance_nm", dme_tolerance_nm)?,
        coverage,
        DistanceError::named("system_nm", system_nm)?,
        DistanceError::named("flight_technical_nm", flight_technical_nm)?,
        DistanceError::named("buffer_nm", buffer_nm)?,
    );
    Ok(DmeDmeTolerances {
        along_track_nm: tolerances.along_track.get::<nautical_mile>(),
        across_track_nm: tolerances.across_track.get::<nautical_mile>(),
        half_width_nm: tolerances.half_width.get::<nautical_mile>(),
    })
}
