//! What many aircraft make of one station.

mod sight;
#[cfg(test)]
mod tests;

use super::arithmetic::sum;
use super::bounds::{Beyond, either, only_if};
use super::functions::{
    Direction, sin_cos_of_half_deg, sin_cos_of_quarter_deg, sin_cos_of_turn_deg, slope_deg,
};
use super::geodesic::{AXIS_M, Ends, Middle, Near, Series, normal, reduced_from};
use super::{Column, Kernel, ROOM, pass};
use sight::{Antenna, FOOT, Sight};

const MILE_M: f64 = 1852.0;
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
    /// Room to work in, which is cleared once and not for each station.
    pub columns: &'a mut Columns,
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
pub struct Columns {
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
    turned: Column,
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
        while !self.latitude_deg.is_empty() {
            self.split_off().part::<FMA>(&mut known);
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
            columns: self.columns,
        }
    }

    /// No more points than a column has room for.
    #[inline(always)]
    fn part<const FMA: bool>(self, known: &mut Known) {
        let (count, columns) = (self.latitude_deg.len(), self.columns);
        let wants_ground = self.radial_deg.is_some() || self.ground_distance_nm.is_some();
        // Where an answer goes, or a column for what would be computed with it anyway.
        let (mut spare_dme, mut spare_ground): (Column, Column);
        let dme_nm = match self.dme_nm {
            Some(column) => column,
            None => {
                spare_dme = Column::of(0.0);
                spare_dme.as_mut_slice()
            }
        };
        let ordinary_places = columns.places::<FMA>(&known.station, self.latitude_deg, self.longitude_deg);
        let ordinary_sights = columns.sights::<FMA>(
            &known.antenna,
            self.altitude_ft,
            dme_nm,
            self.elevation_angle_deg.is_some(),
        );
        let all_near = ordinary_places && ordinary_sights;
        if !all_near {
            *self.asks = true;
            columns.refuse::<FMA>(
                &known.antenna,
                self.latitude_deg,
                self.longitude_deg,
                self.altitude_ft,
                dme_nm,
            );
        }
        if let Some(angles_deg) = self.elevation_angle_deg {
            pass!(angle_deg in angles_deg, up in &columns.ups, level in &columns.levels, => {
                *angle_deg = slope_deg::<FMA>(*up, *level);
            });
        }
        if !wants_ground {
            return;
        }
        let ground_nm = match self.ground_distance_nm {
            Some(column) => column,
            None => {
                spare_ground = Column::of(0.0);
                spare_ground.as_mut_slice()
            }
        };
        let chords = columns.chords.get(..count).unwrap_or_default();
        let any_middle = !all_near && beyond(chords, NEAR_MOST) > 0;
        let any_far = any_middle && beyond(chords, MIDDLE_MOST) > 0;
        if any_middle && known.middle.is_none() {
            known.middle = Some(Middle::at::<FMA>(known.antenna.sine));
        }
        let middle = known.middle.as_ref().filter(|_| any_middle);
        columns.series::<FMA>(known.antenna.cosine, &known.near, middle, any_far, ground_nm);
        let mut radial_deg = self.radial_deg;
        if let Some(radials_deg) = radial_deg.as_deref_mut() {
            columns.radials::<FMA>(known.station.declination_deg, radials_deg);
        }
        if any_far {
            columns.far::<FMA>(known, ground_nm, radial_deg);
        }
    }
}

impl Columns {
    pub fn new() -> Self {
        let zero = Column::of(0.0);
        Self {
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
            turned: zero,
        }
    }

    /// Sines and cosines of latitudes, and of longitudes from the station's; whether the first series answers for all of them.
    #[inline(always)]
    fn places<const FMA: bool>(
        &mut self,
        station: &Station,
        latitudes_deg: &[f64],
        longitudes_deg: &[f64],
    ) -> bool {
        let (mut latitudes, mut longitudes) = (Beyond::default(), Beyond::default());
        pass!(sine in &mut self.sines, cosine in &mut self.cosines, normal_2 in &mut self.normals,
            latitude_deg in latitudes_deg, => {
            (*sine, *cosine) = sin_cos_of_quarter_deg::<FMA>(*latitude_deg);
            *normal_2 = normal::<FMA>(*sine);
            latitudes.look_at_size(*latitude_deg, 90.0);
        });
        // Most longitudes are near the station's, which takes less. What is near it is no longitude beyond a full circle, unless the
        // station's is next to that.
        let near_deg =
            if station.longitude_deg.abs() + NEAR_LONGITUDE_DEG <= 360.0 { NEAR_LONGITUDE_DEG } else { 0.0 };
        pass!(sine in &mut self.longitude_sines, cosine in &mut self.longitude_cosines, longitude_deg in longitudes_deg, => {
            let turned_deg = *longitude_deg - station.longitude_deg;
            (*sine, *cosine) = sin_cos_of_half_deg::<FMA>(turned_deg + turned_deg);
            longitudes.look_at_size(turned_deg, near_deg);
        });
        if longitudes.any() {
            longitudes = Beyond::default();
            pass!(sine in &mut self.longitude_sines, cosine in &mut self.longitude_cosines,
                longitude_deg in longitudes_deg, => {
                let turned_deg = *longitude_deg - station.longitude_deg;
                let (other_sine, other_cosine) = sin_cos_of_turn_deg::<FMA>(turned_deg);
                let is_near = turned_deg.abs() <= near_deg;
                (*sine, *cosine) = (either(is_near, *sine, other_sine), either(is_near, *cosine, other_cosine));
                longitudes.look_at_size(*longitude_deg, 360.0);
            });
        }
        !latitudes.any() && !longitudes.any()
    }

    /// The straight lines to those places, and what they make of DME; whether the first series answers for all of them.
    #[inline(always)]
    fn sights<const FMA: bool>(
        &mut self,
        antenna: &Antenna,
        altitudes_ft: &[f64],
        dmes_nm: &mut [f64],
        with_angle: bool,
    ) -> bool {
        let mut sights = Beyond::default();
        let mut bound = |altitude_ft: f64, chord: f64| {
            sights.look(chord, LEAST, NEAR_MOST);
            sights.look(altitude_ft - LOWEST_FT, 0.0, ORDINARY_FT);
        };
        // With the elevation angle or without: its parts are the more.
        if with_angle {
            pass!(sine in &self.sines, cosine in &self.cosines, normal_2 in &self.normals,
                longitude_sine in &self.longitude_sines, longitude_cosine in &self.longitude_cosines,
                altitude_ft in altitudes_ft, dme_nm in &mut *dmes_nm, level in &mut self.levels, up in &mut self.ups,
                north in &mut self.norths, east in &mut self.easts, chord in &mut self.chords, => {
                let sight = Sight::of::<FMA>(antenna, [*sine, *cosine, *normal_2],
                    [*longitude_sine, *longitude_cosine], *altitude_ft * FOOT);
                *dme_nm = (AXIS_M / MILE_M) * sight.slant.sqrt();
                (*level, *up) = (sight.level.sqrt(), sight.up);
                (*north, *east, *chord) = (sight.north, sight.east, sight.chord);
                bound(*altitude_ft, *chord);
            });
        } else {
            pass!(sine in &self.sines, cosine in &self.cosines, normal_2 in &self.normals,
                longitude_sine in &self.longitude_sines, longitude_cosine in &self.longitude_cosines,
                altitude_ft in altitudes_ft, dme_nm in &mut *dmes_nm, north in &mut self.norths, east in &mut self.easts,
                chord in &mut self.chords, => {
                let sight = Sight::of::<FMA>(antenna, [*sine, *cosine, *normal_2],
                    [*longitude_sine, *longitude_cosine], *altitude_ft * FOOT);
                *dme_nm = (AXIS_M / MILE_M) * sight.slant.sqrt();
                (*north, *east, *chord) = (sight.north, sight.east, sight.chord);
                bound(*altitude_ft, *chord);
            });
        }
        !sights.any()
    }

    /// Makes no number of the chord, DME and level part of points that no loop here answers for.
    #[inline(always)]
    fn refuse<const FMA: bool>(
        &mut self,
        antenna: &Antenna,
        latitudes_deg: &[f64],
        longitudes_deg: &[f64],
        altitudes_ft: &[f64],
        dmes_nm: &mut [f64],
    ) {
        let Antenna { sine: t, cosine: c, .. } = *antenna;
        // Column after column: a pass over all of them the compiler does not vectorise.
        let chords = self.chords.get_mut(..altitudes_ft.len()).unwrap_or_default();
        pass!(chord in chords, sine in &self.sines, cosine in &self.cosines,
            longitude_cosine in &self.longitude_cosines, => {
            let arc_cosine = sum::<FMA>(*sine, t, *cosine * *longitude_cosine * c);
            *chord = only_if((*chord >= LEAST) & (arc_cosine > LEAST_COSINE), *chord);
        });
        pass!(chord in &mut self.chords, latitude_deg in latitudes_deg, => {
            *chord = only_if(latitude_deg.abs() <= 90.0, *chord);
        });
        pass!(chord in &mut self.chords, longitude_deg in longitudes_deg, => {
            *chord = only_if(longitude_deg.abs() <= 360.0, *chord);
        });
        pass!(chord in &mut self.chords, altitude_ft in altitudes_ft, => {
            *chord = only_if((*altitude_ft >= LOWEST_FT) & (*altitude_ft <= HIGHEST_FT), *chord);
        });
        pass!(chord in &self.chords, dme_nm in dmes_nm, level in &mut self.levels, => {
            (*dme_nm, *level) = (only_if(!chord.is_nan(), *dme_nm), only_if(!chord.is_nan(), *level));
        });
    }

    /// Ground distances by the two series, and what of the lines is northward, turned to the azimuths.
    #[inline(always)]
    fn series<const FMA: bool>(
        &mut self,
        c: f64,
        near: &Near,
        middle: Option<&Middle>,
        any_far: bool,
        grounds_nm: &mut [f64],
    ) {
        let chords = self.chords.get(..grounds_nm.len()).unwrap_or_default();
        // Among far points, which the series have no part in, there are few others.
        let span = if any_far { SPAN } else { ROOM };
        let spans = grounds_nm.chunks_mut(span).zip(self.turned.chunks_mut(span)).zip(chords.chunks(span));
        for (((ground, turned), chords), norths) in spans.zip(self.norths.chunks(span)) {
            if any_far && beyond(chords, MIDDLE_MOST) == chords.len() as u64 {
                continue;
            }
            pass!(ground_nm in &mut *ground, turned in &mut *turned, chord in chords, north in norths, => {
                let z = *north * c;
                *ground_nm = (AXIS_M / MILE_M) * (*chord + near.square::<FMA>(*chord, z)).sqrt();
                *turned = sum::<FMA>(c, near.north::<FMA>(*chord, z), *north);
            });
            if let Some(middle) = middle {
                pass!(ground_nm in &mut *ground, turned in &mut *turned, chord in chords, north in norths, => {
                    let z = *north * c;
                    let far = *chord > NEAR_MOST;
                    let other_nm = (AXIS_M / MILE_M) * (*chord + middle.square::<FMA>(*chord, z)).sqrt();
                    let other_turned = sum::<FMA>(c, middle.north::<FMA>(*chord, z), *north);
                    (*ground_nm, *turned) = (either(far, other_nm, *ground_nm), either(far, other_turned, *turned));
                });
            }
        }
    }

    /// Radials from what is northward, turned, and eastward.
    #[inline(always)]
    fn radials<const FMA: bool>(&mut self, declination_deg: f64, radials_deg: &mut [f64]) {
        let turned = self.turned.get_mut(..radials_deg.len()).unwrap_or_default();
        pass!(turned_or_eighths_deg in &mut *turned, east_or_over in &mut self.easts, => {
            let direction = Direction::of::<FMA>(*east_or_over, *turned_or_eighths_deg);
            (*east_or_over, *turned_or_eighths_deg) = (direction.over, direction.eighths_deg);
        });
        pass!(radial_deg in radials_deg, eighths_deg in &*turned, over in &self.easts, => {
            let direction = Direction { eighths_deg: *eighths_deg, over: *over };
            *radial_deg = counted(direction.deg::<FMA>() - declination_deg);
        });
    }

    /// Ground distances and radials of points that are far for both series.
    #[inline(always)]
    fn far<const FMA: bool>(
        &mut self,
        known: &Known,
        grounds_nm: &mut [f64],
        radials_deg: Option<&mut [f64]>,
    ) {
        let count = grounds_nm.len();
        let (mut others_nm, mut bearings_deg): (Column, Column) = (Column::of(0.0), Column::of(0.0));
        let (sine_1, cosine_1) = reduced_from::<FMA>(known.antenna.sine, known.antenna.cosine);
        pass!(sine in self.sines.get_mut(..count).unwrap_or_default(), cosine in &mut self.cosines, => {
            (*sine, *cosine) = reduced_from::<FMA>(*sine, *cosine);
        });
        Ends {
            sines_1: Column::of(sine_1),
            cosines_1: Column::of(cosine_1),
            sines_2: self.sines,
            cosines_2: self.cosines,
            sines: self.longitude_sines,
            cosines: self.longitude_cosines,
        }
        .lines::<FMA>(
            others_nm.get_mut(..count).unwrap_or_default(),
            bearings_deg.get_mut(..count).unwrap_or_default(),
            &mut [],
        );
        let declination_deg = known.station.declination_deg;
        let radials_deg = radials_deg.or(self.turned.get_mut(..count)).unwrap_or_default();
        pass!(ground_nm in grounds_nm, radial_deg in radials_deg, chord in &self.chords, other_nm in &others_nm,
            bearing_deg in &bearings_deg, => {
            let far = *chord > MIDDLE_MOST;
            // A bearing says nothing of itself where there is no distance.
            let other_deg = only_if(!other_nm.is_nan(), counted(*bearing_deg - declination_deg));
            (*ground_nm, *radial_deg) = (either(far, *other_nm, *ground_nm), either(far, other_deg, *radial_deg));
        });
    }
}

/// How many of the squared chords are longer: counted, which is vectorised, where looking for one is not.
#[inline(always)]
fn beyond(chords: &[f64], most: f64) -> u64 {
    chords.iter().map(|chord| u64::from(*chord > most)).sum()
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
