//! Plain functions of [`crate::station`].

use std::mem::MaybeUninit;

use super::block::Arguments;
use super::earth::position;
use super::{any_nan, outputs};
use crate::Error;
use crate::many::{self, ROOM, observe::Observe, run};
use crate::station::{self, Ident, Station};
use crate::value::units::{degree, nautical_mile};
use crate::value::{ConeHalfAngle, Declination, Elevation, HeightAboveStation, TrueAltitude};

pub(super) const STATION: [&str; 4] =
    ["station_latitude_deg", "station_longitude_deg", "station_elevation_ft", "station_declination_deg"];
pub(super) const SITE: [&str; 4] = ["latitude_deg", "longitude_deg", "elevation_ft", "declination_deg"];

/// A station without an ident from plain numbers under the names its caller gave them.
pub(super) fn station(names: [&'static str; 4], given: [f64; 4]) -> Result<Station, Error> {
    let [latitude, longitude, elevation, declination] = names;
    let [latitude_deg, longitude_deg, elevation_ft, declination_deg] = given;
    Ok(Station {
        position: position(latitude, latitude_deg, longitude, longitude_deg)?,
        elevation: Elevation::named(elevation, elevation_ft)?,
        declination: Declination::named(declination, declination_deg)?,
        ident: Ident::NONE,
    })
}

outputs! {
    /// What an aircraft makes of a station: what [`observe`] gives.
    Observation {
        /// Direction of the aircraft from the station, in the station's north, 0 to 360; NaN exactly overhead.
        radial_deg,
        /// Straight distance from antenna to aircraft: the DME reading.
        dme_nm,
        /// Distance along the ground.
        ground_distance_nm,
        /// Angle of the aircraft above the station's horizontal.
        elevation_angle_deg,
    }
}

/// Radial, DME, ground distance and elevation angle of an aircraft from a station.
///
/// The radial is the azimuth of the geodesic on WGS-84 at the station less its declination; the DME reading is the straight line
/// between antenna and aircraft at their heights, in earth-centred coordinates.
///
/// # Arguments
/// - `station_latitude_deg`: latitude of the antenna, -90 to 90
/// - `station_longitude_deg`: longitude of the antenna, any finite number
/// - `station_elevation_ft`: elevation of the antenna above mean sea level, -16 500 to 60 000
/// - `station_declination_deg`: angle from true north to the station's north, positive east, -180 to 180
/// - `latitude_deg`: latitude of the aircraft, -90 to 90
/// - `longitude_deg`: longitude of the aircraft, any finite number
/// - `altitude_ft`: altitude of the aircraft above mean sea level, -16 500 to 400 000
///
/// # Accuracy
/// 30 nanometres along the ground, a micrometre along the slant. In arrays a tenth of a micrometre to 300 NM and a micrometre to
/// 18 000 km, along the ground and across; from there to 10 560 NM three micrometres, across as far as the radial moves the other end; within a
/// metre of the station and beyond 10 560 NM each point is computed as by itself.
/// Mean sea level is taken for the ellipsoid.
///
/// # Degenerate cases
/// Exactly overhead the radial is NaN. Reception is not judged here.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013) 43-55; earth-centred coordinates of WGS-84
/// (NGA.STND.0036_1.0.0_WGS84, from memory).
///
/// # Example
/// ```
/// # use lubberline::plain::observe;
/// assert_eq!(format!("{:.2}", observe(61.25, -11.5, 420.0, -6.0, 61.5, -11.0, 31_000.0)?.dme_nm), "21.46");
/// assert_eq!(format!("{:.2}", observe(61.25, -11.5, 420.0, -6.0, 61.5, -11.0, 31_000.0)?.radial_deg), "49.60");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn observe(
    station_latitude_deg: f64,
    station_longitude_deg: f64,
    station_elevation_ft: f64,
    station_declination_deg: f64,
    latitude_deg: f64,
    longitude_deg: f64,
    altitude_ft: f64,
) -> Result<Observation, Error> {
    if any_nan(&[
        station_latitude_deg,
        station_longitude_deg,
        station_elevation_ft,
        station_declination_deg,
        latitude_deg,
        longitude_deg,
        altitude_ft,
    ]) {
        return Ok(Observation::NAN);
    }
    let station = station(
        STATION,
        [station_latitude_deg, station_longitude_deg, station_elevation_ft, station_declination_deg],
    )?;
    let aircraft = position("latitude_deg", latitude_deg, "longitude_deg", longitude_deg)?;
    let seen = station.observe(aircraft, TrueAltitude::named("altitude_ft", altitude_ft)?);
    Ok(Observation {
        radial_deg: seen.radial.map_or(f64::NAN, |radial| radial.angle().get::<degree>()),
        dme_nm: seen.dme.value().get::<nautical_mile>(),
        ground_distance_nm: seen.ground_distance.value().get::<nautical_mile>(),
        elevation_angle_deg: seen.elevation_angle.get::<degree>(),
    })
}

/// [`observe`] over columns, each run of points of one station together; whether all are answered.
pub(super) fn observe_block(inputs: [&[f64]; 7], outputs: [Option<&mut [f64]>; 4], count: usize) -> bool {
    let [latitudes, longitudes, elevations, declinations, points @ ..] = inputs;
    let stations = [latitudes, longitudes, elevations, declinations];
    let [mut radial, mut dme, mut ground, mut angle] = outputs;
    let mut repeated = MaybeUninit::uninit();
    let points = Arguments::<3, { 4 * ROOM }>::of(points, count, &mut repeated);
    let (mut start, mut asks, mut columns) = (0, false, many::observe::Columns::new());
    // Where few points in a row have one station, few are looked at next.
    let mut ahead = ROOM;
    while start < count {
        let (station, same) = station_at(stations, start, ahead);
        let count = same.min(points.most()).min(count - start);
        ahead = (2 * count).min(ROOM);
        let [latitude_deg, longitude_deg, altitude_ft] = points.part(start, count);
        start += count;
        run(Observe {
            station,
            latitude_deg,
            longitude_deg,
            altitude_ft,
            radial_deg: radial.as_mut().and_then(|rest| rest.split_off_mut(..count)),
            dme_nm: dme.as_mut().and_then(|rest| rest.split_off_mut(..count)),
            ground_distance_nm: ground.as_mut().and_then(|rest| rest.split_off_mut(..count)),
            elevation_angle_deg: angle.as_mut().and_then(|rest| rest.split_off_mut(..count)),
            asks: &mut asks,
            columns: &mut columns,
        });
    }
    !asks
}

/// The station of a point, and how many of no more than `ahead` points from that one on have it: all, if all columns are of one number.
fn station_at(columns: [&[f64]; 4], start: usize, ahead: usize) -> (many::observe::Station, usize) {
    let rest = columns.map(|column| match column {
        [_] => column,
        _ => column.get(start..column.len().min(start + ahead)).unwrap_or_default(),
    });
    let firsts = rest.map(|column| column.first().copied().unwrap_or(f64::NAN));
    let [latitude_deg, longitude_deg, elevation_ft, declination_deg] = firsts;
    let station = many::observe::Station { latitude_deg, longitude_deg, elevation_ft, declination_deg };
    let most = if columns.iter().all(|column| column.len() == 1) { usize::MAX } else { ahead };
    let mut differing = 0;
    run(many::observe::Others { columns: rest, firsts, differing: &mut differing });
    if differing == 0 {
        return (station, most);
    }
    let differs =
        |(column, first): (&&[f64], f64)| column.iter().position(|value| value.to_bits() != first.to_bits());
    (station, rest.iter().zip(firsts).filter_map(differs).min().unwrap_or(1).max(1))
}

/// Radius of the cone of confusion above a station.
///
/// `h tan(half-angle)`.
///
/// # Arguments
/// - `height_ft`: height above the station's antenna, -60 000 to 400 000
/// - `cone_half_angle_deg`: half-angle from the vertical, above 0 below 90 (default 50.0)
///
/// # Accuracy
/// Over a flat earth: 0.3 percent too much at 35 000 ft, 0.5 percent at 60 000 ft.
///
/// # Degenerate cases
/// At the station's height and below it the radius is zero.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// 50 degrees for a VOR, 40 for an NDB: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 2, 2.5.
///
/// # Example
/// ```
/// # use lubberline::plain::cone_radius_nm;
/// assert_eq!(format!("{:.2}", cone_radius_nm(35_000.0, 50.0)?), "6.86");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cone_radius_nm(height_ft: f64, cone_half_angle_deg: f64) -> Result<f64, Error> {
    if any_nan(&[height_ft, cone_half_angle_deg]) {
        return Ok(f64::NAN);
    }
    let height = HeightAboveStation::named("height_ft", height_ft)?;
    let half_angle = ConeHalfAngle::named("cone_half_angle_deg", cone_half_angle_deg)?;
    Ok(station::cone_radius(height, half_angle).value().get::<nautical_mile>())
}
