//! What many aircraft make of one station.

use super::arithmetic::sum;
use super::bounds::{Beyond, either, only_if};
use super::functions::{
    Direction, sin_cos_deg, sin_cos_of_half_deg, sin_cos_of_quarter_deg, sin_cos_of_turn_deg, slope_deg,
};
use super::geodesic::{AXIS_M, ECCENTRICITY_SQUARED, Ends, Middle, Near, Series, normal, reduced_from};
use super::{Column, Kernel, ROOM, pass};

const FOOT_M: f64 = 0.3048;
const MILE_M: f64 = 1852.0;
const FOOT: f64 = FOOT_M / AXIS_M;
/// Squared chords: what each series answers for, a margin below what it was fitted to; and below a metre nothing does,
/// where the bearing begins to mean nothing.
const NEAR_MOST: f64 = squared_chord((Near::REACH_NM - 5.0) * MILE_M);
const MIDDLE_MOST: f64 = squared_chord((Middle::REACH_NM - 15.0) * MILE_M);
const LEAST: f64 = squared_chord(1.0);

/// How many points are looked at together for one that is not far.
const SPAN: usize = 16;

/// The cosine of 176.5 degrees between the two verticals, beyond which the longest lines need the exact path.
const LEAST_COSINE: f64 = -0.998_134_798_421_866_6;

const fn squared_chord(chord_m: f64) -> f64 {
    (chord_m / AXIS_M) * (chord_m / AXIS_M)
}

/// A station, in the arguments of `observe`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Station {
    pub latitude_deg: f64,
    pub longitude_deg: f64,
    pub elevation_ft: f64,
    pub declination_deg: f64,
}

impl Station {
    fn is_ordinary(&self) -> bool {
        self.latitude_deg.abs() <= 90.0
            && self.longitude_deg.abs() <= 360.0
            && self.declination_deg.abs() <= 180.0
            && (-16_500.0..=60_000.0).contains(&self.elevation_ft)
    }
}

/// Aircraft about a station, and where their radial, DME, ground distance and elevation angle go, if they are wanted.
///
/// An answer that is NaN asks for the exact path: within a metre of the station and near its antipode, for
/// longitudes beyond a full circle, and for whatever is outside its range.
pub struct Observe<'a> {
    pub station: Station,
    pub latitude_deg: &'a [f64],
    pub longitude_deg: &'a [f64],
    pub altitude_ft: &'a [f64],
    pub radial_deg: Option<&'a mut [f64]>,
    pub dme_nm: Option<&'a mut [f64]>,
    pub ground_distance_nm: Option<&'a mut [f64]>,
    pub elevation_angle_deg: Option<&'a mut [f64]>,
    /// Set if there may be such an answer.
    pub asks: &'a mut bool,
}

/// A station for the loops: what of it they use, in units of the semi-major axis.
#[derive(Debug, Clone, Copy)]
struct Antenna {
    sine: f64,
    cosine: f64,
    height: f64,
    /// The surface below it, from the earth's axis and along it.
    axis: f64,
    pole: f64,
}

impl Antenna {
    #[inline(always)]
    fn of<const FMA: bool>(station: &Station) -> Self {
        let (sine, cosine) = sin_cos_deg::<FMA>(station.latitude_deg);
        let normal = normal::<FMA>(sine);
        Self {
            sine,
            cosine,
            height: station.elevation_ft * FOOT,
            axis: normal * cosine,
            pole: normal * (1.0 - ECCENTRICITY_SQUARED) * sine,
        }
    }
}

/// A place seen from the station, in units of the semi-major axis: the straight line to the surface below it, squared, and its
/// parts to the north and the east; the straight line to its height, squared, and its part upwards.
struct Sight {
    chord: f64,
    north: f64,
    east: f64,
    slant: f64,
    up: f64,
    /// Squared, what of the line to the height is level.
    level: f64,
}

impl Sight {
    /// From sine, cosine and radius of curvature of a latitude, sine and cosine of the longitude from the station's, and height.
    #[inline(always)]
    fn of<const FMA: bool>(from: &Antenna, latitude: [f64; 3], longitude: [f64; 2], high: f64) -> Self {
        let Antenna { sine: t, cosine: c, height, axis, pole } = *from;
        let ([sine, cosine, normal], [east, outward]) = (latitude, longitude);
        // Earth-centred differences: on the surface, and at the heights.
        let (across, out) = (cosine * east, cosine * outward);
        let surface_east = normal * across;
        let surface_out = sum::<FMA>(normal, out, -axis);
        let surface_pole = sum::<FMA>(normal * (1.0 - ECCENTRICITY_SQUARED), sine, -pole);
        let high_east = sum::<FMA>(high, across, surface_east);
        let high_out = surface_out + sum::<FMA>(high, out, -height * c);
        let high_pole = surface_pole + sum::<FMA>(high, sine, -height * t);
        let squared = |x: f64, y: f64, z: f64| sum::<FMA>(x, x, sum::<FMA>(y, y, z * z));
        let high_north = sum::<FMA>(high_pole, c, -(high_out * t));
        Self {
            chord: squared(surface_east, surface_out, surface_pole),
            north: sum::<FMA>(surface_pole, c, -(surface_out * t)),
            east: surface_east,
            slant: squared(high_east, high_out, high_pole),
            up: sum::<FMA>(high_pole, t, high_out * c),
            level: sum::<FMA>(high_north, high_north, high_east * high_east),
        }
    }
}

/// Altitudes that are answered for, in feet.
const LOWEST_FT: f64 = -16_500.0;
const HIGHEST_FT: f64 = 400_000.0;

/// Above the lowest altitude, heights of which rounding leaves no doubt that they are answered for.
const ORDINARY_FT: f64 = 416_000.0;

/// Longitude differences whose sine and cosine need no reduction.
const NEAR_LONGITUDE_DEG: f64 = 45.0;

/// What of a station serves all its points.
struct Known {
    station: Station,
    antenna: Antenna,
    near: Near,
    /// Found when the first point asks for it.
    middle: Option<Middle>,
}

/// What is computed of up to [`ROOM`] points on the way, in columns that serve one part of them after the other.
struct Columns {
    sines: Column,
    cosines: Column,
    normals: Column,
    longitude_sines: Column,
    longitude_cosines: Column,
    norths: Column,
    easts: Column,
    ups: Column,
    levels: Column,
    chords: Column,
    eighths_deg: Column,
}

impl Kernel for Observe<'_> {
    #[inline(always)]
    fn run<const FMA: bool>(mut self) {
        if !self.station.is_ordinary() {
            let all = [self.radial_deg, self.dme_nm, self.ground_distance_nm, self.elevation_angle_deg];
            all.into_iter().flatten().for_each(|answer| answer.fill(f64::NAN));
            *self.asks = true;
            return;
        }
        let antenna = Antenna::of::<FMA>(&self.station);
        let near = Near::at::<FMA>(antenna.sine);
        let mut known = Known { station: self.station, antenna, near, middle: None };
        let zero = Column::of(0.0);
        let mut columns = Columns {
            sines: zero,
            cosines: zero,
            normals: zero,
            longitude_sines: zero,
            longitude_cosines: zero,
            norths: zero,
            easts: zero,
            ups: zero,
            levels: zero,
            chords: zero,
            eighths_deg: zero,
        };
        while !self.latitude_deg.is_empty() {
            self.split_off().part::<FMA>(&mut known, &mut columns);
        }
    }
}

impl Observe<'_> {
    /// Its first points, no more than a column has room for, which are its own no more.
    #[inline(always)]
    fn split_off(&mut self) -> Observe<'_> {
        let count = self.latitude_deg.len().min(ROOM);
        Observe {
            station: self.station,
            latitude_deg: self.latitude_deg.split_off(..count).unwrap_or_default(),
            longitude_deg: self.longitude_deg.split_off(..count).unwrap_or_default(),
            altitude_ft: self.altitude_ft.split_off(..count).unwrap_or_default(),
            radial_deg: self.radial_deg.as_mut().and_then(|rest| rest.split_off_mut(..count)),
            dme_nm: self.dme_nm.as_mut().and_then(|rest| rest.split_off_mut(..count)),
            ground_distance_nm: self.ground_distance_nm.as_mut().and_then(|rest| rest.split_off_mut(..count)),
            elevation_angle_deg: self
                .elevation_angle_deg
                .as_mut()
                .and_then(|rest| rest.split_off_mut(..count)),
            asks: self.asks,
        }
    }

    /// No more points than a column has room for.
    #[inline(always)]
    fn part<const FMA: bool>(self, known: &mut Known, columns: &mut Columns) {
        let Known { station, antenna, near, middle } = known;
        let Antenna { sine: t, cosine: c, .. } = *antenna;
        let Columns {
            sines,
            cosines,
            normals,
            longitude_sines,
            longitude_cosines,
            norths,
            easts,
            ups,
            levels,
            chords,
            eighths_deg,
        } = columns;
        let count = self.latitude_deg.len();
        // Whether all latitudes, longitudes, and heights and distances, are what the first series answers for.
        let (mut latitudes, mut longitudes, mut sights) =
            (Beyond::default(), Beyond::default(), Beyond::default());
        pass!(sine in &mut *sines, cosine in &mut *cosines, normal_2 in &mut *normals, latitude_deg in self.latitude_deg, => {
            (*sine, *cosine) = sin_cos_of_quarter_deg::<FMA>(*latitude_deg);
            *normal_2 = normal::<FMA>(*sine);
            latitudes.above(latitude_deg.abs(), 90.0);
        });
        // Most longitudes are near the station's, which takes less. What is near it is no longitude beyond a full circle, unless the
        // station's is next to that.
        let near_deg =
            if station.longitude_deg.abs() + NEAR_LONGITUDE_DEG <= 360.0 { NEAR_LONGITUDE_DEG } else { 0.0 };
        pass!(sine in &mut *longitude_sines, cosine in &mut *longitude_cosines, longitude_deg in self.longitude_deg, => {
            let turned_deg = *longitude_deg - station.longitude_deg;
            (*sine, *cosine) = sin_cos_of_half_deg::<FMA>(turned_deg + turned_deg);
            longitudes.above(turned_deg.abs(), near_deg);
        });
        if longitudes.any() {
            longitudes = Beyond::default();
            pass!(sine in &mut *longitude_sines, cosine in &mut *longitude_cosines, longitude_deg in self.longitude_deg, => {
                let turned_deg = *longitude_deg - station.longitude_deg;
                let (other_sine, other_cosine) = sin_cos_of_turn_deg::<FMA>(turned_deg);
                let is_near = turned_deg.abs() <= near_deg;
                (*sine, *cosine) = (either(is_near, *sine, other_sine), either(is_near, *cosine, other_cosine));
                longitudes.above(longitude_deg.abs(), 360.0);
            });
        }

        // Where an answer goes, or a column for what would be computed with it anyway.
        let wants_ground = self.radial_deg.is_some() || self.ground_distance_nm.is_some();
        let (mut spare_dme, mut spare_ground): (Column, Column);
        let dme = match self.dme_nm {
            Some(column) => column,
            None => {
                spare_dme = Column::of(0.0);
                spare_dme.as_mut_slice()
            }
        };
        // With the elevation angle or without: its parts are the more.
        if self.elevation_angle_deg.is_some() {
            pass!(sine in &*sines, cosine in &*cosines, normal_2 in &*normals, longitude_sine in &*longitude_sines,
                longitude_cosine in &*longitude_cosines, altitude_ft in self.altitude_ft, dme_nm in &mut *dme,
                level in &mut *levels, up in &mut *ups, north in &mut *norths, east in &mut *easts, chord in &mut *chords, => {
                let sight = Sight::of::<FMA>(antenna, [*sine, *cosine, *normal_2],
                    [*longitude_sine, *longitude_cosine], *altitude_ft * FOOT);
                *dme_nm = (AXIS_M / MILE_M) * sight.slant.sqrt();
                (*level, *up) = (sight.level.sqrt(), sight.up);
                (*north, *east, *chord) = (sight.north, sight.east, sight.chord);
                sights.below(*chord, LEAST);
                sights.above(*chord, NEAR_MOST);
                sights.below(*altitude_ft - LOWEST_FT, 0.0);
                sights.above(*altitude_ft - LOWEST_FT, ORDINARY_FT);
            });
        } else {
            pass!(sine in &*sines, cosine in &*cosines, normal_2 in &*normals, longitude_sine in &*longitude_sines,
                longitude_cosine in &*longitude_cosines, altitude_ft in self.altitude_ft, dme_nm in &mut *dme,
                north in &mut *norths, east in &mut *easts, chord in &mut *chords, => {
                let sight = Sight::of::<FMA>(antenna, [*sine, *cosine, *normal_2],
                    [*longitude_sine, *longitude_cosine], *altitude_ft * FOOT);
                *dme_nm = (AXIS_M / MILE_M) * sight.slant.sqrt();
                (*north, *east, *chord) = (sight.north, sight.east, sight.chord);
                sights.below(*chord, LEAST);
                sights.above(*chord, NEAR_MOST);
                sights.below(*altitude_ft - LOWEST_FT, 0.0);
                sights.above(*altitude_ft - LOWEST_FT, ORDINARY_FT);
            });
        }
        let all_near = !latitudes.any() && !longitudes.any() && !sights.any();
        if !all_near {
            *self.asks = true;
            // Column after column, each of which makes no number of the chord where it says no.
            pass!(chord in &mut *chords, sine in &*sines, cosine in &*cosines, longitude_cosine in &*longitude_cosines, => {
                let arc_cosine = sum::<FMA>(*sine, t, *cosine * *longitude_cosine * c);
                *chord = only_if((*chord >= LEAST) & (arc_cosine > LEAST_COSINE), *chord);
            });
            pass!(chord in &mut *chords, latitude_deg in self.latitude_deg, => {
                *chord = only_if(latitude_deg.abs() <= 90.0, *chord);
            });
            pass!(chord in &mut *chords, longitude_deg in self.longitude_deg, => {
                *chord = only_if(longitude_deg.abs() <= 360.0, *chord);
            });
            pass!(chord in &mut *chords, altitude_ft in self.altitude_ft, => {
                *chord = only_if((*altitude_ft >= LOWEST_FT) & (*altitude_ft <= HIGHEST_FT), *chord);
            });
            pass!(chord in &*chords, dme_nm in &mut *dme, level in &mut *levels, => {
                (*dme_nm, *level) = (only_if(!chord.is_nan(), *dme_nm), only_if(!chord.is_nan(), *level));
            });
        }
        if let Some(angles_deg) = self.elevation_angle_deg {
            pass!(angle_deg in angles_deg, up in &*ups, level in &*levels, => {
                *angle_deg = slope_deg::<FMA>(*up, *level);
            });
        }
        if !wants_ground {
            return;
        }

        let ground = match self.ground_distance_nm {
            Some(column) => column,
            None => {
                spare_ground = Column::of(0.0);
                spare_ground.as_mut_slice()
            }
        };
        // Counted, which is vectorised, where looking for one is not.
        let points_beyond =
            |chords: &[f64], most: f64| chords.iter().map(|chord| u64::from(*chord > most)).sum::<u64>();
        let known_chords = chords.get(..count).unwrap_or_default();
        let beyond = |most: f64| !all_near && points_beyond(known_chords, most) > 0;
        let (any_middle, any_far) = (beyond(NEAR_MOST), beyond(MIDDLE_MOST));
        // Among far points, which the series have no part in, there are few others.
        let span = if any_far { SPAN } else { ROOM };
        let spans = ground.chunks_mut(span).zip(eighths_deg.chunks_mut(span)).zip(known_chords.chunks(span));
        for (((ground, turned), chords), norths) in spans.zip(norths.chunks(span)) {
            if any_far && points_beyond(chords, MIDDLE_MOST) == chords.len() as u64 {
                continue;
            }
            pass!(ground_nm in &mut *ground, turned in &mut *turned, chord in chords, north in norths, => {
                let z = *north * c;
                *ground_nm = (AXIS_M / MILE_M) * (*chord + near.square::<FMA>(*chord, z)).sqrt();
                *turned = sum::<FMA>(c, near.north::<FMA>(*chord, z), *north);
            });
            if any_middle {
                let middle = middle.get_or_insert_with(|| Middle::at::<FMA>(t));
                pass!(ground_nm in &mut *ground, turned in &mut *turned, chord in chords, north in norths, => {
                    let z = *north * c;
                    let far = *chord > NEAR_MOST;
                    let other_nm = (AXIS_M / MILE_M) * (*chord + middle.square::<FMA>(*chord, z)).sqrt();
                    let other_turned = sum::<FMA>(c, middle.north::<FMA>(*chord, z), *north);
                    *ground_nm = if far { other_nm } else { *ground_nm };
                    *turned = if far { other_turned } else { *turned };
                });
            }
        }
        let mut radial = self.radial_deg;
        if let Some(radial) = radial.as_deref_mut() {
            pass!(turned_or_eighths_deg in eighths_deg.get_mut(..count).unwrap_or_default(), east in &mut *easts, => {
                let direction = Direction::of::<FMA>(*east, *turned_or_eighths_deg);
                (*east, *turned_or_eighths_deg) = (direction.over, direction.eighths_deg);
            });
            pass!(radial_deg in radial, eighths_deg in &*eighths_deg, over in &*easts, => {
                let direction = Direction { eighths_deg: *eighths_deg, over: *over };
                *radial_deg = counted(direction.deg::<FMA>() - station.declination_deg);
            });
        }
        if any_far {
            let (mut others_nm, mut bearings_deg): (Column, Column) = (Column::of(0.0), Column::of(0.0));
            let (sine_1, cosine_1) = reduced_from::<FMA>(t, c);
            pass!(sine in &mut *sines, cosine in &mut *cosines, => {
                (*sine, *cosine) = reduced_from::<FMA>(*sine, *cosine);
            });
            Ends {
                sines_1: Column::of(sine_1),
                cosines_1: Column::of(cosine_1),
                sines_2: *sines,
                cosines_2: *cosines,
                sines: *longitude_sines,
                cosines: *longitude_cosines,
            }
            .lines::<FMA>(
                others_nm.get_mut(..count).unwrap_or_default(),
                bearings_deg.get_mut(..count).unwrap_or_default(),
                &mut [],
            );
            let radial = radial.or(eighths_deg.get_mut(..count)).unwrap_or_default();
            pass!(ground_nm in &mut *ground, radial_deg in radial, chord in &*chords, other_nm in &others_nm,
                bearing_deg in &bearings_deg, => {
                let far = *chord > MIDDLE_MOST;
                let other_deg = counted(*bearing_deg - station.declination_deg);
                // A bearing says nothing of itself where there is no distance.
                let other_deg = if other_nm.is_nan() { f64::NAN } else { other_deg };
                *ground_nm = if far { *other_nm } else { *ground_nm };
                *radial_deg = if far { other_deg } else { *radial_deg };
            });
        }
    }
}

/// An angle in degrees, no more than a full circle outside of 0 to 360, as it is counted there.
#[inline(always)]
fn counted(angle_deg: f64) -> f64 {
    let positive = angle_deg + if angle_deg < 0.0 { 360.0 } else { 0.0 };
    positive - if positive >= 360.0 { 360.0 } else { 0.0 }
}

/// Bits in which values of columns differ from the column's first.
pub struct Others<'a, const N: usize> {
    pub columns: [&'a [f64]; N],
    pub firsts: [f64; N],
    pub differing: &'a mut u64,
}

impl<const N: usize> Kernel for Others<'_, N> {
    #[inline(always)]
    fn run<const FMA: bool>(self) {
        let all = |bits: u64, (column, first): (&[f64], f64)| {
            column.iter().fold(bits, |bits, value| bits | (value.to_bits() ^ first.to_bits()))
        };
        *self.differing = self.columns.into_iter().zip(self.firsts).fold(0, all);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plain::table::Function;
    use crate::station::{Ident, Station as Antenna};
    use crate::value::units::{degree, degrees, feet, nautical_mile};
    use crate::value::{Declination, Elevation, Position, TrueAltitude};

    /// Radial, DME, ground distance and elevation angle by Karney's solution alone.
    fn by_karney(station: Station, latitude_deg: f64, longitude_deg: f64, altitude_ft: f64) -> [f64; 4] {
        let antenna = Antenna {
            position: Position::derived(station.latitude_deg, station.longitude_deg),
            elevation: Elevation::new(feet(station.elevation_ft)).unwrap(),
            declination: Declination::new(degrees(station.declination_deg)).unwrap(),
            ident: Ident::NONE,
        };
        let altitude = TrueAltitude::new(feet(altitude_ft)).unwrap();
        let seen = antenna.observe_anywhere(Position::derived(latitude_deg, longitude_deg), altitude);
        [
            seen.radial.map_or(f64::NAN, |radial| radial.angle().get::<degree>()),
            seen.dme.value().get::<nautical_mile>(),
            seen.ground_distance.value().get::<nautical_mile>(),
            seen.elevation_angle.get::<degree>(),
        ]
    }

    /// The largest differences from Karney's solution: along, across, slant in metres, elevation in degrees.
    type Worst = [f64; 4];

    fn compared<const FMA: bool>(station: Station, points: &[[f64; 3]], worst: &mut Worst) -> usize {
        let mut exact = 0;
        for points in points.chunks(ROOM) {
            let column = |place: usize| points.iter().map(|point| point[place]).collect::<Vec<_>>();
            let mut answers = [Column::of(0.0); 4];
            let [radial, dme, ground, angle] = answers.each_mut().map(|answer| &mut answer[..points.len()]);
            Observe {
                station,
                latitude_deg: &column(0),
                longitude_deg: &column(1),
                altitude_ft: &column(2),
                radial_deg: Some(radial),
                dme_nm: Some(dme),
                ground_distance_nm: Some(ground),
                elevation_angle_deg: Some(angle),
                asks: &mut false,
            }
            .run::<FMA>();
            for (index, [latitude, longitude, altitude]) in points.iter().enumerate() {
                let [radial_deg, dme_nm, ground_nm, angle_deg] =
                    by_karney(station, *latitude, *longitude, *altitude);
                if answers[2][index].is_nan() {
                    let ordinary = (1.1 / 1852.0..10_560.0).contains(&ground_nm);
                    assert!(!ordinary, "{station:?} {latitude} {longitude}: not answered");
                    exact += 1;
                    continue;
                }
                let turn = (answers[0][index] - radial_deg + 540.0).rem_euclid(360.0) - 180.0;
                assert!((0.0..360.0).contains(&answers[0][index]));
                let off = [
                    (answers[2][index] - ground_nm) * 1852.0,
                    turn.to_radians() * ground_nm * 1852.0,
                    (answers[1][index] - dme_nm) * 1852.0,
                    (answers[3][index] - angle_deg).to_radians() * dme_nm * 1852.0,
                ];
                for (worst, off) in worst.iter_mut().zip(off) {
                    assert!(off.is_finite());
                    *worst = worst.max(off.abs());
                }
            }
        }
        exact
    }

    /// Points about a station at every scale, to a distance.
    fn about(station: Station, reach_nm: f64, count: usize, seed: &mut u64) -> Vec<[f64; 3]> {
        let mut next = || {
            *seed ^= *seed << 13;
            *seed ^= *seed >> 7;
            *seed ^= *seed << 17;
            (*seed >> 11) as f64 / (1_u64 << 53) as f64
        };
        (0..count)
            .map(|index| {
                let scale = if index % 3 == 0 { 10_f64.powf(-7.0 * next()) } else { next().sqrt() };
                let bearing = if index % 7 == 0 { 90.0 * (index % 4) as f64 } else { 360.0 * next() };
                let (lat, lon) = (station.latitude_deg, station.longitude_deg);
                let there = crate::plain::geodesic_direct(lat, lon, bearing, reach_nm * scale).unwrap();
                [there.latitude_deg, there.longitude_deg, 60_000.0 * next()]
            })
            .collect()
    }

    fn stations() -> Vec<Station> {
        let latitudes =
            [-90.0, -89.9999, -66.0, -45.0, -1e-9, 0.0, 0.3, 12.0, 33.0, 51.5, 61.0, 74.0, 86.0, 89.0, 90.0];
        let longitudes = [-180.0, -12.0, 0.0, 179.99];
        let all =
            latitudes.into_iter().flat_map(|latitude| longitudes.map(|longitude| (latitude, longitude)));
        all.map(|(latitude_deg, longitude_deg)| Station {
            latitude_deg,
            longitude_deg,
            elevation_ft: 420.0,
            declination_deg: 0.1 * longitude_deg,
        })
        .collect()
    }

    /// A micrometre within 300 NM, within 1000, and to 18 000 km, of Karney's solution, with and without fused multiplication.
    #[test]
    fn within_a_micrometre() {
        for (reach_nm, most) in [(300.0, 1e-7), (1000.0, 1e-6), (9719.0, 1e-6)] {
            let (mut fused, mut plain, mut seed) = ([0.0; 4], [0.0; 4], 0x2545_f491_4f6c_dd1d);
            for station in stations() {
                let points = about(station, reach_nm, 1500, &mut seed);
                compared::<true>(station, &points, &mut fused);
                compared::<false>(station, &points, &mut plain);
            }
            println!("{reach_nm} NM: {fused:?} m; without fused multiplication {plain:?} m");
            assert!(fused.iter().chain(&plain).all(|worst| *worst <= most), "{reach_nm} {fused:?} {plain:?}");
        }
    }

    /// Beyond it, next to the station, and with what is no place at all, the answer is that of a single call.
    #[test]
    fn elsewhere_it_is_the_single_call() {
        let function = Function::named("observe").unwrap();
        let hard = [
            [61.0, -12.0, 9e3],
            [61.0, 348.0, 9e3],
            [61.000_000_1, -12.0, 9e3],
            [-61.0, 168.0, 0.0],
            [-60.9, 167.9, 0.0],
            [91.0, 0.0, 0.0],
            [f64::NAN, 0.0, 0.0],
            [60.0, f64::INFINITY, 0.0],
            [60.0, 1e9, 0.0],
            [60.0, -12.0, 5e5],
            [80.0, 100.0, f64::NAN],
            [-90.0, 0.0, -2e4],
        ];
        for [latitude, longitude, altitude] in hard {
            let given = [61.0, -12.0, 100.0, -8.0, latitude, longitude, altitude];
            let (mut single, mut many, mut status) = ([0.0; 4], [0.0; 4], [7]);
            let result = (function.run)(&given, &mut single);
            let columns = given.each_ref().map(std::slice::from_ref);
            let mut places = many.each_mut().map(std::slice::from_mut);
            (function.block)(&columns, &mut places, &mut status);
            assert_eq!(status[0], result.map_or_else(|error| error.code(), |()| 0), "{given:?}");
            assert_eq!(single.map(f64::to_bits), many.map(f64::to_bits), "{given:?}");
        }
    }

    /// The same point gives the same bits wherever it stands, among whatever stations, in an array of any length.
    #[test]
    fn a_place_in_the_array_is_nothing_to_a_point() {
        let function = Function::named("observe").unwrap();
        let (stations, mut seed) = (stations(), 77);
        let points: Vec<[f64; 7]> = (0..1000)
            .map(|index| {
                let station = stations[(index / 90) % stations.len()];
                let [latitude, longitude, altitude] =
                    about(station, if index % 2 == 0 { 290.0 } else { 1300.0 }, 1, &mut seed)[0];
                let Station { latitude_deg, longitude_deg, elevation_ft, declination_deg } = station;
                [latitude_deg, longitude_deg, elevation_ft, declination_deg, latitude, longitude, altitude]
            })
            .collect();
        let all = |points: &[[f64; 7]]| {
            let columns: [Vec<f64>; 7] =
                std::array::from_fn(|place| points.iter().map(|point| point[place]).collect());
            let mut answers: [Vec<f64>; 4] = std::array::from_fn(|_| vec![0.0; points.len()]);
            let given = columns.each_ref().map(Vec::as_slice);
            let mut places = answers.each_mut().map(Vec::as_mut_slice);
            (function.block)(&given, &mut places, &mut vec![0; points.len()]);
            (0..points.len())
                .map(|index| answers.each_ref().map(|answer| answer[index].to_bits()))
                .collect::<Vec<_>>()
        };
        let together = all(&points);
        for length in [1, 7, 129, 333] {
            let parts: Vec<_> = points.chunks(length).flat_map(all).collect();
            assert!(parts == together, "{length}");
        }
    }
}
