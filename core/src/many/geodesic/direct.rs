//! Where geodesics lead, anywhere on the earth.
//!
//! Karney's solution: the length becomes an arc on the sphere by the reverted series, the arc a point there, and the point's
//! longitude is corrected. Nothing is solved for, so nothing can fail; sines of multiples of an arc come of the first by
//! polynomials, so that nothing divides on the equator.

use super::karney::{
    ARC, ARC_1, ARC_2, ARC_3, ARC_4, LENGTH_1, LENGTH_2, LENGTH_3, LENGTH_4, LONGITUDE, LONGITUDE_1,
    LONGITUDE_2, LONGITUDE_3,
};
use super::long::{bearing, reduced_columns};
use super::{AXIS_M, FLATTENING};
use crate::many::arithmetic::{polynomial, sum};
use crate::many::functions::{DEGREE, Direction, rounded, sin_cos_deg, sin_cos_of_turn_deg};
use crate::many::{Column, Kernel, ROOM, pass};

const MILE: f64 = 1852.0 / AXIS_M;
/// The longest line a single call takes.
const MOST_NM: f64 = 10_900.0;
/// About a metre: of shorter lines and nearer to a pole the exact path is asked, where directions begin to mean nothing.
const LEAST: f64 = 1.6e-7;

/// Starts, bearings and distances, no more than [`ROOM`], and where the points reached and the bearings there go.
///
/// A latitude that is NaN asks for the exact path: within a metre, at the poles, for longitudes and bearings beyond a full
/// circle, and for whatever is outside its range.
pub struct Direct<'a> {
    pub lat_deg: &'a [f64],
    pub lon_deg: &'a [f64],
    pub bearing_deg: &'a [f64],
    pub distance_nm: &'a [f64],
    pub latitude_deg: &'a mut [f64],
    pub longitude_deg: &'a mut [f64],
    pub final_bearing_deg: &'a mut [f64],
}

impl Kernel for Direct<'_> {
    #[inline(always)]
    fn run<const FMA: bool>(self) {
        if self.lat_deg.len() > ROOM {
            self.latitude_deg.fill(f64::NAN);
            return;
        }
        let (mut sines, mut cosines): (Column, Column) = (Column::of(0.0), Column::of(0.0));
        reduced_columns::<FMA>(self.lat_deg, &mut sines, &mut cosines);
        let (mut easts, mut norths): (Column, Column) = (Column::of(0.0), Column::of(0.0));
        pass!(east in &mut easts, north in &mut norths, bearing_deg in self.bearing_deg, => {
            (*east, *north) = sin_cos_deg::<FMA>(*bearing_deg);
        });
        // Most of the arc: the length as an angle, and the start's difference between the two.
        let mut arcs: Column = Column::of(0.0);
        pass!(arc in &mut arcs, s1 in &sines, c1 in &cosines, east in &easts, north in &norths,
            distance_nm in self.distance_nm, => {
            let along = *north * *c1;
            let m = sum::<FMA>(*north, *north, (*east * *s1) * (*east * *s1));
            let (double_sine, double_cosine) = (2.0 * *s1 * along, sum::<FMA>(along, along, -(*s1 * *s1)));
            // The sines of multiples over the first are of the doubled arc; the factors of the second and fourth hold a two.
            let waves = waves::<FMA>(m, double_sine, double_cosine,
                [polynomial::<FMA, 4>(m, LENGTH_1), polynomial::<FMA, 3>(m, LENGTH_2),
                    polynomial::<FMA, 2>(m, LENGTH_3), polynomial::<FMA, 1>(m, LENGTH_4)]);
            *arc = sum::<FMA>(MILE * *distance_nm, polynomial::<FMA, 5>(m, ARC), waves);
        });
        let (mut arc_sines, mut arc_cosines): (Column, Column) = (Column::of(0.0), Column::of(0.0));
        pass!(sine in &mut arc_sines, cosine in &mut arc_cosines, arc in &arcs, => {
            (*sine, *cosine) = sin_cos_of_turn_deg::<FMA>(DEGREE * *arc);
        });
        // The rest of it from where it ends, and the correction of the longitude.
        pass!(arc in &mut arcs, arc_sine in &mut arc_sines, arc_cosine in &mut arc_cosines, s1 in &sines,
            c1 in &cosines, east in &easts, north in &norths, => {
            let along = *north * *c1;
            let m = sum::<FMA>(*north, *north, (*east * *s1) * (*east * *s1));
            let (double_sine, double_cosine) = (2.0 * *s1 * along, sum::<FMA>(along, along, -(*s1 * *s1)));
            let twice = *arc_sine + *arc_sine;
            let (turn_sine, turn_cosine) = (twice * *arc_cosine, sum::<FMA>(-twice, *arc_sine, 1.0));
            let end_sine = sum::<FMA>(double_sine, turn_cosine, double_cosine * turn_sine);
            let end_cosine = sum::<FMA>(double_cosine, turn_cosine, -(double_sine * turn_sine));
            let rest = waves::<FMA>(m, end_sine, end_cosine,
                [polynomial::<FMA, 4>(m, ARC_1), polynomial::<FMA, 4>(m, ARC_2), polynomial::<FMA, 3>(m, ARC_3),
                    polynomial::<FMA, 2>(m, ARC_4)]);
            let z = rest * rest;
            let (rest_sine, rest_cosine) =
                (rest * sum::<FMA>(-1.0 / 6.0, z, 1.0), polynomial::<FMA, 3>(z, [1.0, -0.5, 1.0 / 24.0]));
            let sine = sum::<FMA>(*arc_sine, rest_cosine, *arc_cosine * rest_sine);
            let cosine = sum::<FMA>(*arc_cosine, rest_cosine, -(*arc_sine * rest_sine));
            let whole = *arc + rest;
            let p = sum::<FMA>(double_cosine, cosine, -(double_sine * sine));
            let (mm, pp, twice) = (m * m, p * p, cosine + cosine);
            let p2 = sum::<FMA>(pp, 2.0, -mm) * cosine;
            let p3 = p * sum::<FMA>(pp, 4.0, -3.0 * mm) * sum::<FMA>(twice, twice, -1.0);
            let far = sum::<FMA>(p, polynomial::<FMA, 3>(m, LONGITUDE_1),
                sum::<FMA>(p2, polynomial::<FMA, 2>(m, LONGITUDE_2), p3 * polynomial::<FMA, 1>(m, LONGITUDE_3)));
            let factor = polynomial::<FMA, 4>(m, LONGITUDE) * (DEGREE * *east * *c1);
            *arc = factor * sum::<FMA>(sine, far, whole);
            (*arc_sine, *arc_cosine) = (sine, cosine);
        });
        let mut overs: Column = Column::of(0.0);
        pass!(eighths_deg in &mut *self.longitude_deg, over in &mut overs, arc_sine in &arc_sines,
            arc_cosine in &arc_cosines, s1 in &sines, c1 in &cosines, east in &easts, north in &norths, => {
            let onward = sum::<FMA>(*c1, *arc_cosine, -(*s1 * *arc_sine * *north));
            Direction { eighths_deg: *eighths_deg, over: *over } = Direction::of::<FMA>(*arc_sine * *east, onward);
        });
        pass!(longitude_deg in self.longitude_deg, over in &mut overs, lon_deg in self.lon_deg,
            correction_deg in &arcs, => {
            let turned_deg = Direction { eighths_deg: *longitude_deg, over: *over }.deg::<FMA>();
            let unrolled_deg = *lon_deg + (turned_deg - *correction_deg);
            *longitude_deg = sum::<FMA>(rounded(unrolled_deg * (1.0 / 360.0)), -360.0, unrolled_deg);
        });
        // The cosine of the latitude there goes where the correction was.
        pass!(eighths_deg in &mut *self.final_bearing_deg, over in &mut overs, cosine in &mut arcs,
            arc_sine in &mut arc_sines, arc_cosine in &arc_cosines, s1 in &sines, c1 in &cosines, east in &easts,
            north in &norths, => {
            let along = *north * *c1;
            let (easterly, northerly) = (*east * *c1, sum::<FMA>(along, *arc_cosine, -(*s1 * *arc_sine)));
            Direction { eighths_deg: *eighths_deg, over: *over } = Direction::of::<FMA>(easterly, northerly);
            *arc_sine = sum::<FMA>(*s1, *arc_cosine, along * *arc_sine);
            *cosine = sum::<FMA>(easterly, easterly, northerly * northerly).sqrt();
        });
        pass!(bearing_deg in self.final_bearing_deg, over in &overs, => {
            *bearing_deg = bearing::<FMA>(Direction { eighths_deg: *bearing_deg, over: *over });
        });
        // A point at a pole is not answered for, at either end.
        pass!(eighths_deg in &mut *self.latitude_deg, over in &mut overs, sine in &arc_sines, cosine in &arcs,
            c1 in &mut cosines, => {
            Direction { eighths_deg: *eighths_deg, over: *over } =
                Direction::of_slope::<FMA>(*sine, (1.0 - FLATTENING) * *cosine);
            *c1 = if *c1 < *cosine { *c1 } else { *cosine };
        });
        pass!(latitude_deg in self.latitude_deg, over in &overs, least in &cosines, lat_deg in self.lat_deg,
            lon_deg in self.lon_deg, bearing_deg in self.bearing_deg, distance_nm in self.distance_nm, => {
            let latitude = Direction { eighths_deg: *latitude_deg, over: *over }.deg::<FMA>();
            let vouched = (lat_deg.abs() <= 90.0) & (lon_deg.abs() <= 360.0) & (bearing_deg.abs() <= 360.0)
                & (*distance_nm >= LEAST / MILE) & (*distance_nm <= MOST_NM) & (*least > LEAST);
            *latitude_deg = if vouched { latitude } else { f64::NAN };
        });
    }
}

/// The sum of the sines of one to four times an angle, whose sine and cosine come times m, each times its power of m and its
/// factor; the factors are those of [`super::karney`], which hold the doublings of sines of even multiples.
#[inline(always)]
fn waves<const FMA: bool>(m: f64, sine: f64, cosine: f64, factors: [f64; 4]) -> f64 {
    let [first, second, third, fourth] = factors;
    let mm = m * m;
    let third_wave = sum::<FMA>(4.0 * cosine, cosine, -mm);
    let fourth_wave = cosine * sum::<FMA>(2.0 * cosine, cosine, -mm);
    let even = sum::<FMA>(second, cosine, fourth * fourth_wave);
    0.5 * sine * (first + sum::<FMA>(third, third_wave, even))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plain::{geodesic_direct, geodesic_inverse};

    /// The largest distance of the point from the single call's in metres, and difference of the bearings in degrees times the
    /// cosine of the latitude there, as a bearing near a pole turns with the meridian.
    fn compared<const FMA: bool>(lines: &[[f64; 4]]) -> (f64, f64) {
        let (mut apart_m, mut turned, mut alone) = (0.0_f64, 0.0_f64, 0);
        for lines in lines.chunks(ROOM) {
            let column = |place: usize| lines.iter().map(|line| line[place]).collect::<Vec<_>>();
            let (mut latitudes, mut longitudes, mut bearings) =
                (Column::of(0.0), Column::of(0.0), Column::of(0.0));
            Direct {
                lat_deg: &column(0),
                lon_deg: &column(1),
                bearing_deg: &column(2),
                distance_nm: &column(3),
                latitude_deg: &mut latitudes[..lines.len()],
                longitude_deg: &mut longitudes[..lines.len()],
                final_bearing_deg: &mut bearings[..lines.len()],
            }
            .run::<FMA>();
            for (index, line) in lines.iter().enumerate() {
                let [lat, lon, bearing, distance] = *line;
                let single = geodesic_direct(lat, lon, bearing, distance).unwrap();
                if latitudes[index].is_nan() {
                    alone += 1;
                    assert!(
                        distance < 0.001 || single.latitude_deg.abs().max(lat.abs()) > 89.999_98,
                        "{line:?}"
                    );
                    continue;
                }
                assert!(
                    longitudes[index].abs() <= 180.0 && (0.0..360.0).contains(&bearings[index]),
                    "{line:?}"
                );
                let off = geodesic_inverse(
                    latitudes[index],
                    longitudes[index],
                    single.latitude_deg,
                    single.longitude_deg,
                );
                let turn = (bearings[index] - single.final_bearing_deg + 540.0).rem_euclid(360.0) - 180.0;
                apart_m = apart_m.max(1852.0 * off.unwrap().distance_nm);
                turned = turned.max((turn * single.latitude_deg.to_radians().cos()).abs());
                assert!(apart_m < 1e-7 && turned < 1e-12, "{line:?} {apart_m} {turned}");
            }
        }
        assert!(alone < lines.len() / 4, "{alone}");
        (apart_m, turned)
    }

    #[test]
    fn within_a_tenth_of_a_micrometre_of_single_calls() {
        let mut seed = 0x2545_f491_4f6c_dd1d_u64;
        let mut next = || {
            seed ^= seed << 13;
            seed ^= seed >> 7;
            seed ^= seed << 17;
            (seed >> 11) as f64 / (1_u64 << 53) as f64
        };
        let lines: Vec<[f64; 4]> = (0..100_000)
            .map(|index| {
                let latitude = (2.0 * next() - 1.0).asin().to_degrees();
                let latitude = match index % 7 {
                    0 => 0.0,
                    1 => 90_f64.copysign(latitude),
                    2 => (90.0 - 10_f64.powf(-7.0 * next())).copysign(latitude),
                    _ => latitude,
                };
                let bearing =
                    if index % 5 == 0 { 90.0 * f64::from(index % 4) } else { 720.0 * next() - 360.0 };
                let scale = if index % 3 == 0 { 10_f64.powf(-7.0 * next()) } else { next() };
                [latitude, 720.0 * next() - 360.0, bearing, 10_900.0 * scale]
            })
            .collect();
        let (fused, plain) = (compared::<true>(&lines), compared::<false>(&lines));
        println!("direct: {fused:?} m and degrees, without fused multiplication {plain:?}");
    }
}
