//! The whole magnetic field of the World Magnetic Model at many places.

use super::bounds::only_if;
use super::declination::{NEWER_YEAR, Places, vouched};
use super::functions::{DEGREE, atan2_deg, rounded, slope_deg};
use super::{Column, Kernel, pass};
use crate::north::UNCERTAINTIES_DEG_NT;

/// Places and dates, no more than [`super::ROOM`], and where the field goes, in the order of
/// [`MagneticFieldOutput`](crate::plain::MagneticFieldOutput); the grid variation at any latitude.
///
/// A declination that is NaN asks for the exact path: longitudes beyond a full circle, horizontal fields of less than a nanotesla or
/// next to where a zone ends, and whatever is outside its range.
pub struct Field<'a> {
    pub latitude_deg: &'a [f64],
    pub longitude_deg: &'a [f64],
    pub altitude_ft: &'a [f64],
    pub decimal_year: &'a [f64],
    pub outputs: [&'a mut [f64]; 18],
}

/// A vector's parts in the geodetic frame, or their changes in a year.
struct Vectors {
    north: Column,
    east: Column,
    down: Column,
}

impl Vectors {
    #[inline(always)]
    fn of<const FMA: bool, const CHANGE: bool>(places: &Places, count: usize) -> Self {
        let mut vectors = Self { north: Column::of(0.0), east: Column::of(0.0), down: Column::of(0.0) };
        let Self { north, east, down } = &mut vectors;
        places.parts::<FMA, CHANGE>(count, [&mut *north, east, &mut *down]);
        pass!(north in north, down in down, sine_v in &places.sines_v, cosine_v in &places.cosines_v, => {
            let (along, below) = (*north, *down);
            *north = along * *cosine_v - below * *sine_v;
            *down = along * *sine_v + below * *cosine_v;
        });
        vectors
    }
}

/// Writes a column where it is to go.
#[inline(always)]
fn copy(from: &Column, to: &mut [f64]) {
    pass!(value in from, place in to, => { *place = *value; });
}

impl Kernel for Field<'_> {
    // Each pass reads columns of the kernel's own and writes one or two others: of more the compiler will not ask whether they overlap.
    #[inline(always)]
    fn run<const FMA: bool>(self) {
        let Self { latitude_deg, longitude_deg, altitude_ft, decimal_year, outputs } = self;
        let [
            declination_deg,
            inclination_deg,
            horizontal_nt,
            north_nt,
            east_nt,
            down_nt,
            total_nt,
            declination_change_deg,
            inclination_change_deg,
            horizontal_change_nt,
            north_change_nt,
            east_change_nt,
            down_change_nt,
            total_change_nt,
            declination_uncertainty_deg,
            grid_variation_deg,
            zone,
            in_date,
        ] = outputs;
        let count = latitude_deg.len();
        let places = Places::of::<FMA>(latitude_deg, longitude_deg, altitude_ft, decimal_year);
        let field = Vectors::of::<FMA, false>(&places, count);
        let change = Vectors::of::<FMA, true>(&places, count);
        for (from, to) in [
            (&field.north, north_nt),
            (&field.east, east_nt),
            (&field.down, down_nt),
            (&change.north, north_change_nt),
            (&change.east, east_change_nt),
            (&change.down, down_change_nt),
        ] {
            copy(from, to);
        }

        let (mut horizontals, mut totals, mut horizontal_changes): (Column, Column, Column) =
            (Column::of(0.0), Column::of(0.0), Column::of(0.0));
        pass!(north in &field.north, east in &field.east, down in &field.down, north_change in &change.north,
            east_change in &change.east, horizontal in &mut horizontals, total in &mut totals,
            horizontal_change in &mut horizontal_changes, => {
            let squared = *north * *north + *east * *east;
            *horizontal = squared.sqrt();
            *total = (squared + *down * *down).sqrt();
            *horizontal_change = (*north * *north_change + *east * *east_change) / *horizontal;
        });
        copy(&horizontals, horizontal_nt);
        copy(&totals, total_nt);
        copy(&horizontal_changes, horizontal_change_nt);

        // Zero where there is an answer. On which side of a zone's end a field next to it lies the last bit decides.
        let mut marks: Column = Column::of(0.0);
        pass!(latitude_deg in latitude_deg, longitude_deg in longitude_deg, altitude_ft in altitude_ft,
            year in decimal_year, horizontal in &horizontals, mark in &mut marks, => {
            let known = vouched(*latitude_deg, *longitude_deg, *altitude_ft, *year) & (*horizontal >= 1.0)
                & ((*horizontal - 6000.0).abs() > 1e-6) & ((*horizontal - 2000.0).abs() > 1e-6);
            *mark = only_if(known, 0.0);
        });
        let mut declinations: Column = Column::of(0.0);
        pass!(north in &field.north, east in &field.east, mark in &marks, declination in &mut declinations, => {
            *declination = atan2_deg::<FMA>(*east, *north) + *mark;
        });
        copy(&declinations, declination_deg);
        pass!(declination in &declinations, latitude_deg in latitude_deg, longitude_deg in longitude_deg,
            grid_variation_deg in grid_variation_deg, => {
            let convergence = if *latitude_deg < 0.0 { -*longitude_deg } else { *longitude_deg };
            let over = *declination - convergence;
            let near = over - 360.0 * rounded(over * (1.0 / 360.0));
            *grid_variation_deg = near + if near <= -180.0 { 360.0 } else { 0.0 };
        });
        pass!(horizontal in &horizontals, down in &field.down, inclination_deg in inclination_deg, => {
            *inclination_deg = slope_deg::<FMA>(*down, *horizontal);
        });
        pass!(north in &field.north, east in &field.east, north_change in &change.north, east_change in &change.east,
            horizontal in &horizontals, declination_change_deg in declination_change_deg, => {
            let turned = *north * *east_change - *east * *north_change;
            *declination_change_deg = DEGREE * turned / (*horizontal * *horizontal);
        });
        pass!(horizontal in &horizontals, horizontal_change in &horizontal_changes, down in &field.down,
            down_change in &change.down, total in &totals, inclination_change_deg in inclination_change_deg,
            total_change_nt in total_change_nt, => {
            let turned = *horizontal * *down_change - *down * *horizontal_change;
            *inclination_change_deg = DEGREE * turned / (*total * *total);
            *total_change_nt = (*horizontal * *horizontal_change + *down * *down_change) / *total;
        });
        let [older, newer] = UNCERTAINTIES_DEG_NT;
        pass!(horizontal in &horizontals, year in &places.years,
            declination_uncertainty_deg in declination_uncertainty_deg, => {
            let turned_deg = if *year >= NEWER_YEAR { newer } else { older } / *horizontal;
            let deviation_deg = (0.26 * 0.26 + turned_deg * turned_deg).sqrt();
            *declination_uncertainty_deg = if deviation_deg < 180.0 { deviation_deg } else { 180.0 };
        });
        pass!(horizontal in &horizontals, year in &places.years, zone in zone, in_date in in_date, => {
            let one_if = |is_so: bool| if is_so { 1.0 } else { 0.0 };
            *zone = one_if(*horizontal < 6000.0) + one_if(*horizontal < 2000.0);
            *in_date = one_if((*year >= 2020.0) & (*year <= 2030.0));
        });
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::many::declination::tests::hard_points;
    use crate::plain::magnetic_field;

    /// The largest difference from single calls in nanotesla: of an angle, as far as that part of the field turns it.
    fn compared<const FMA: bool>() -> f64 {
        let (mut worst, mut answered) = (0.0_f64, 0);
        for start in (0..20_000_u32).step_by(100) {
            let points = hard_points(start..start + 100);
            let column = |place: usize| points.iter().map(|point| point[place]).collect::<Vec<_>>();
            let mut answers = vec![vec![0.0; points.len()]; 18];
            let outputs: Vec<&mut [f64]> = answers.iter_mut().map(Vec::as_mut_slice).collect();
            Field {
                latitude_deg: &column(0),
                longitude_deg: &column(1),
                altitude_ft: &column(2),
                decimal_year: &column(3),
                outputs: outputs.try_into().unwrap(),
            }
            .run::<FMA>();
            for (index, [latitude, longitude, altitude, year]) in points.into_iter().enumerate() {
                let single = magnetic_field(latitude, longitude, altitude, year).unwrap();
                let many: [f64; 18] = std::array::from_fn(|output| answers[output][index]);
                if many[0].is_nan() {
                    assert!(single.horizontal_nt < 1.0);
                    continue;
                }
                let turn = |one: f64, other: f64| (one - other + 540.0).rem_euclid(360.0) - 180.0;
                let (horizontal, total) = (single.horizontal_nt.to_radians(), single.total_nt.to_radians());
                let mut offs = vec![
                    horizontal * turn(many[0], single.declination_deg),
                    total * (many[1] - single.inclination_deg),
                    many[2] - single.horizontal_nt,
                    many[3] - single.north_nt,
                    many[4] - single.east_nt,
                    many[5] - single.down_nt,
                    many[6] - single.total_nt,
                    horizontal * (many[7] - single.declination_change_deg),
                    total * (many[8] - single.inclination_change_deg),
                    many[9] - single.horizontal_change_nt,
                    many[10] - single.north_change_nt,
                    many[11] - single.east_change_nt,
                    many[12] - single.down_change_nt,
                    many[13] - single.total_change_nt,
                    horizontal * (many[14] - single.declination_uncertainty_deg),
                ];
                if latitude.abs() >= 55.0 {
                    assert!((-180.0..=180.0).contains(&many[15]));
                    offs.push(horizontal * turn(many[15], single.grid_variation_deg));
                }
                assert_eq!([many[16], many[17]], [single.zone, single.in_date]);
                for off in offs {
                    assert!(off.is_finite());
                    worst = worst.max(off.abs());
                }
                answered += 1;
            }
        }
        assert!(answered > 19_900, "{answered}");
        worst
    }

    #[test]
    fn as_single_calls_to_a_hundred_millionth_of_a_nanotesla() {
        let (fused, plain) = (compared::<true>(), compared::<false>());
        println!("magnetic field: {fused:e} nT, without fused multiplication {plain:e} nT");
        assert!(fused < 1e-8 && plain < 1e-8);
    }
}
