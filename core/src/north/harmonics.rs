//! The sums of spherical harmonics that the magnetic models are.

/// Degree and order of the models.
pub(crate) const DEGREE: u8 = 12;

/// Radius of the models' reference sphere in metres.
pub(crate) const REFERENCE_RADIUS_M: f64 = 6_371_200.0;

/// Degree, order, g, h, and the yearly changes of g and h; by degree, then by order.
pub(crate) type Coefficients = [(u8, u8, f64, f64, f64, f64); 90];

/// A part of the field in nanotesla, and its change in a year.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub(super) struct Part {
    pub now: f64,
    pub change: f64,
}

impl Part {
    fn add(&mut self, factor: f64, now: f64, change: f64) {
        self.now += factor * now;
        self.change += factor * change;
    }
}

/// Where the field is looked for: the geocentric latitude by its sine and cosine, the longitude, the distance from the
/// earth's centre, and the years since the model's epoch.
pub(super) struct Place {
    pub sine: f64,
    pub cosine: f64,
    pub longitude_rad: f64,
    pub radius_m: f64,
    pub years: f64,
}

/// The field's parts to the north, to the east and down, in the geocentric frame.
///
/// Schmidt semi-normalised Legendre functions, order after order, by their recursions in degree. East, where they are divided
/// by the cosine of the latitude, the functions of order one and more are carried so divided: nothing divides at the poles.
///
/// Source: The US/UK World Magnetic Model for 2025-2030: Technical Report, equations 4 to 17; the recursions of the
/// functions and their slopes derived from those.
pub(super) fn field(model: &Coefficients, place: &Place) -> [Part; 3] {
    let Place { sine, cosine, longitude_rad, radius_m, years } = *place;
    let [mut north, mut east, mut down] = [Part::default(); 3];
    let ratio = REFERENCE_RADIUS_M / radius_m;
    let (sine_1, cosine_1) = longitude_rad.sin_cos();
    let (mut sine_m, mut cosine_m) = (0.0, 1.0);
    // The function whose degree is its order, divided by the cosine of the latitude from order one on.
    let mut sectoral = 1.0;
    let mut power_m = ratio * ratio;
    for order in 0..=DEGREE {
        let m = f64::from(order);
        if order > 0 {
            (sine_m, cosine_m) =
                (sine_m * cosine_1 + cosine_m * sine_1, cosine_m * cosine_1 - sine_m * sine_1);
            power_m *= ratio;
        }
        if order > 1 {
            sectoral *= cosine * ((2.0 * m - 1.0) / (2.0 * m)).sqrt();
        }
        // The function, divided as said, and the slope of the whole function toward the south: of this degree and the one before.
        let whole = if order == 0 { 1.0 } else { cosine };
        let (mut function, mut function_before) = (sectoral, 0.0);
        let (mut slope, mut slope_before) = (m * sectoral * sine, 0.0);
        let mut power = power_m;
        for degree in order..=DEGREE {
            let n = f64::from(degree);
            if degree > order {
                let (back, over) = (((n - 1.0).powi(2) - m * m).max(0.0).sqrt(), (n * n - m * m).sqrt());
                let twice = 2.0 * n - 1.0;
                let next = (twice * sine * function - back * function_before) / over;
                let next_slope =
                    (twice * (sine * slope - cosine * whole * function) - back * slope_before) / over;
                (function_before, function, slope_before, slope) = (function, next, slope, next_slope);
                power *= ratio;
            }
            // Degree zero has no row: the field has no such part.
            let row = usize::from(degree) * (usize::from(degree) + 1) / 2 + usize::from(order);
            let Some(&(_, _, g, h, g_change, h_change)) = row.checked_sub(1).and_then(|row| model.get(row))
            else {
                continue;
            };
            let (g, h) = (g + years * g_change, h + years * h_change);
            let (even, even_change) = (g * cosine_m + h * sine_m, g_change * cosine_m + h_change * sine_m);
            let (odd, odd_change) = (g * sine_m - h * cosine_m, g_change * sine_m - h_change * cosine_m);
            north.add(power * slope, even, even_change);
            east.add(power * m * function, odd, odd_change);
            down.add(-power * (n + 1.0) * whole * function, even, even_change);
        }
    }
    [north, east, down]
}

#[cfg(test)]
mod tests {
    use super::super::{wmm2020, wmm2025};
    use super::*;

    #[test]
    fn rows_stand_where_they_are_looked_for() {
        for model in [&wmm2020::COEFFICIENTS, &wmm2025::COEFFICIENTS] {
            let mut row = 0;
            for degree in 1..=DEGREE {
                for order in 0..=degree {
                    assert_eq!((model[row].0, model[row].1), (degree, order));
                    row += 1;
                }
            }
        }
    }

    /// Outside its sources the field is the slope of a potential: its circulation around a small loop vanishes.
    #[test]
    fn the_field_has_no_circulation() {
        let at = |latitude_rad: f64, radius_m: f64| {
            let (sine, cosine) = latitude_rad.sin_cos();
            let place = Place { sine, cosine, longitude_rad: 1.1, radius_m, years: 2.0 };
            field(&wmm2025::COEFFICIENTS, &place)
        };
        let (latitude_rad, radius_m, step) = (0.7, 6_400_000.0, 1e-4);
        let north = |r: f64| r * at(latitude_rad, r)[0].now;
        let down = |rad: f64| at(rad, radius_m)[2].now;
        let north_slope =
            (north(radius_m * (1.0 + step)) - north(radius_m * (1.0 - step))) / (2.0 * step * radius_m);
        let down_slope = (down(latitude_rad + step) - down(latitude_rad - step)) / (2.0 * step);
        assert!((north_slope + down_slope).abs() < 0.01, "{north_slope} {down_slope}");
    }
}
