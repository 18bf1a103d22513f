//! The earth's magnetic field by the World Magnetic Model.

use super::wmm2025::COEFFICIENTS;
use crate::Error;
use crate::earth::{ECCENTRICITY_SQUARED, SEMI_MAJOR_M};
use crate::value::units::{Angle, MagneticFluxDensity, degrees, meter, nanotesla, nanoteslas};
use crate::value::{Declination, Position, Quantity, TrueAltitude, choice};

/// The date the coefficients are given for, and the last they serve.
const EPOCH_YEAR: f64 = 2025.0;
const LAST_YEAR: f64 = 2030.0;

/// Degree and order of the model, and one more, which the derivative of the last degree needs.
const DEGREE: usize = 12;
const SIZE: usize = DEGREE + 2;

/// Radius of the model's reference sphere in metres.
const REFERENCE_RADIUS_M: f64 = 6_371_200.0;

/// A date as a year and its fraction, such as 2026.5 for the middle of 2026.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct DecimalYear(f64);

impl DecimalYear {
    /// Accepts 2020 to 2035: five years about those the coefficients serve.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside, and for what is not a number.
    pub fn new(year: f64) -> Result<Self, Error> {
        Self::named("decimal year", year)
    }

    pub(crate) fn named(parameter: &'static str, year: f64) -> Result<Self, Error> {
        Ok(Self(Quantity::DecimalYear.check(parameter, year)?))
    }
}

choice! {
    /// How far a compass and the model's declination can be trusted, by the horizontal field.
    MagneticZone {
        /// At least 6 000 nT: usable.
        Clear = 0: "clear",
        /// Below 6 000 nT, about the magnetic poles: caution, the compass grows unreliable.
        Caution = 1: "caution",
        /// Below 2 000 nT: declination is not to be used.
        Blackout = 2: "blackout",
    }
}

/// The magnetic field at a place and date: north, east and down in the geodetic frame, and their changes in a year.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MagneticField {
    /// Toward true north.
    pub north: MagneticFluxDensity,
    /// Toward east.
    pub east: MagneticFluxDensity,
    /// Downward.
    pub down: MagneticFluxDensity,
    /// Change of the north component in a year.
    pub north_change: MagneticFluxDensity,
    /// Change of the east component in a year.
    pub east_change: MagneticFluxDensity,
    /// Change of the down component in a year.
    pub down_change: MagneticFluxDensity,
    /// Whether the date lies in the five years the coefficients are made for.
    pub in_date: bool,
}

/// A component of the field and its yearly change.
#[derive(Clone, Copy, Default)]
struct Sum {
    now: f64,
    change: f64,
}

impl MagneticField {
    /// The field of the World Magnetic Model 2025, degree and order 12, at a place on WGS-84, an altitude and a date.
    ///
    /// Schmidt semi-normalised harmonics in double precision. The Legendre functions of order one and more are carried divided by
    /// the cosine of the latitude, so that nothing divides at the poles; there the components are those of the meridian
    /// of the longitude given.
    ///
    /// # Accuracy
    /// The arithmetic to 1e-8 nT, as the technical report prints its worked example. The model itself: one standard deviation of
    /// 137 nT north, 89 nT east, 141 nT down; see [`MagneticField::declination_uncertainty`]. Mean sea level is taken for the
    /// ellipsoid. Local iron, aircraft and magnetic storms are not in it.
    ///
    /// # Source
    /// The US/UK World Magnetic Model for 2025-2030: Technical Report, NOAA NCEI and BGS (2024), equations 4 to 17.
    ///
    /// # Example
    /// ```
    /// use lubberline::north::{DecimalYear, MagneticField};
    /// use lubberline::value::{Latitude, Longitude, Position, TrueAltitude, units::*};
    /// let position = Position::new(Latitude::new(degrees(61.25))?, Longitude::new(degrees(-11.5))?);
    /// let field = MagneticField::at(position, TrueAltitude::new(feet(0.0))?, DecimalYear::new(2026.5)?);
    /// assert!(field.declination().angle() < degrees(0.0), "west of north");
    /// # Ok::<(), lubberline::Error>(())
    /// ```
    pub fn at(position: Position, altitude: TrueAltitude, year: DecimalYear) -> Self {
        let height_m = altitude.value().get::<meter>();
        let (sine, cosine) = position.latitude_deg().to_radians().sin_cos();
        let curvature_m = SEMI_MAJOR_M / (1.0 - ECCENTRICITY_SQUARED * sine * sine).sqrt();
        let outward_m = (curvature_m + height_m) * cosine;
        let poleward_m = (curvature_m * (1.0 - ECCENTRICITY_SQUARED) + height_m) * sine;
        let radius_m = outward_m.hypot(poleward_m);
        let (sine_c, cosine_c) = (poleward_m / radius_m, outward_m / radius_m);

        let [north, east, down] =
            sums(sine_c, cosine_c, position.longitude_deg().to_radians(), radius_m, year.0 - EPOCH_YEAR);
        // From the geocentric frame to the geodetic one: by the angle between the two verticals.
        let (sine_v, cosine_v) = (sine_c * cosine - cosine_c * sine, cosine_c * cosine + sine_c * sine);
        let turned = |n: f64, d: f64| (n * cosine_v - d * sine_v, n * sine_v + d * cosine_v);
        let (north_nt, down_nt) = turned(north.now, down.now);
        let (north_change_nt, down_change_nt) = turned(north.change, down.change);
        Self {
            north: nanoteslas(north_nt),
            east: nanoteslas(east.now),
            down: nanoteslas(down_nt),
            north_change: nanoteslas(north_change_nt),
            east_change: nanoteslas(east.change),
            down_change: nanoteslas(down_change_nt),
            in_date: (EPOCH_YEAR..=LAST_YEAR).contains(&year.0),
        }
    }

    /// The horizontal field.
    pub fn horizontal(&self) -> MagneticFluxDensity {
        self.north.hypot(self.east)
    }

    /// The whole field.
    pub fn total(&self) -> MagneticFluxDensity {
        self.horizontal().hypot(self.down)
    }

    /// The angle from true to magnetic north, positive east: variation.
    pub fn declination(&self) -> Declination {
        Declination::from_degrees(self.east.atan2(self.north).value.to_degrees())
    }

    /// The dip below the horizontal.
    pub fn inclination(&self) -> Angle {
        self.down.atan2(self.horizontal())
    }

    /// The change of the declination in a year.
    pub fn declination_change(&self) -> Angle {
        let horizontal = self.horizontal();
        let turned =
            (self.north * self.east_change - self.east * self.north_change) / (horizontal * horizontal);
        degrees(turned.value.to_degrees())
    }

    /// The change of the inclination in a year.
    pub fn inclination_change(&self) -> Angle {
        let (horizontal, total) = (self.horizontal(), self.total());
        let turned = (horizontal * self.down_change - self.down * self.horizontal_change()) / (total * total);
        degrees(turned.value.to_degrees())
    }

    /// The change of the horizontal field in a year.
    pub fn horizontal_change(&self) -> MagneticFluxDensity {
        (self.north * self.north_change + self.east * self.east_change) / self.horizontal()
    }

    /// One standard deviation of the declination, `sqrt(0.26² + (5417 / H)²)` degrees with H in nanotesla, at most half a circle.
    ///
    /// # Source
    /// The US/UK World Magnetic Model for 2025-2030: Technical Report, error model.
    pub fn declination_uncertainty(&self) -> Angle {
        degrees(0.26_f64.hypot(5417.0 / self.horizontal().get::<nanotesla>()).min(180.0))
    }

    /// How far a compass can be trusted here.
    ///
    /// # Source
    /// The US/UK World Magnetic Model for 2025-2030: Technical Report: blackout zone below 2 000 nT of horizontal field,
    /// caution zone below 6 000.
    pub fn zone(&self) -> MagneticZone {
        match self.horizontal().get::<nanotesla>() {
            strong if strong >= 6000.0 => MagneticZone::Clear,
            weak if weak >= 2000.0 => MagneticZone::Caution,
            _ => MagneticZone::Blackout,
        }
    }
}

/// North, east and down in the geocentric frame, at a geocentric latitude given by its sine and cosine.
fn sums(sine: f64, cosine: f64, longitude_rad: f64, radius_m: f64, years: f64) -> [Sum; 3] {
    let table = legendre(sine, cosine);
    let value = |n: usize, m: usize| table.get(n).and_then(|row| row.get(m)).copied().unwrap_or(0.0);
    let ratio = REFERENCE_RADIUS_M / radius_m;
    let [mut north, mut east, mut down] = [Sum::default(); 3];
    for (n, m, g, h, g_change, h_change) in COEFFICIENTS {
        let (degree, order) = (f64::from(n), f64::from(m));
        let (n, m) = (usize::from(n), usize::from(m));
        let power = ratio.powi(i32::try_from(n).unwrap_or(0) + 2);
        let (sine_m, cosine_m) = (order * longitude_rad).sin_cos();
        // For order zero the table holds the function itself, else the function over the cosine of the latitude.
        let (over_cosine, whole, slope) = if m == 0 {
            (0.0, value(n, 0), (degree * (degree + 1.0) / 2.0).sqrt() * cosine * value(n, 1))
        } else {
            let here = value(n, m);
            let next = ((degree + 1.0).powi(2) - order * order).sqrt() * value(n + 1, m);
            (here, here * cosine, (degree + 1.0) * sine * here - next)
        };
        let mut add = |g: f64, h: f64, pick: fn(&mut Sum) -> &mut f64| {
            let even = g * cosine_m + h * sine_m;
            *pick(&mut north) -= power * even * slope;
            *pick(&mut east) += power * order * (g * sine_m - h * cosine_m) * over_cosine;
            *pick(&mut down) -= power * (degree + 1.0) * even * whole;
        };
        add(g + years * g_change, h + years * h_change, |sum| &mut sum.now);
        add(g_change, h_change, |sum| &mut sum.change);
    }
    [north, east, down]
}

/// Schmidt semi-normalised Legendre functions of the sine of the latitude, by degree and order; those of order one and more
/// divided by its cosine.
fn legendre(sine: f64, cosine: f64) -> [[f64; SIZE]; SIZE] {
    let mut table = [[0.0; SIZE]; SIZE];
    let mut sectoral = 1.0;
    for m in 0..SIZE {
        let order = m as f64;
        sectoral = match m {
            0 | 1 => 1.0,
            _ => sectoral * cosine * ((2.0 * order - 1.0) / (2.0 * order)).sqrt(),
        };
        // One column of the table: from the diagonal up in degree.
        let (mut before, mut here) = (0.0, sectoral);
        for n in m..SIZE {
            let degree = n as f64;
            if n > m {
                let next = ((2.0 * degree - 1.0) * sine * here
                    - ((degree - 1.0).powi(2) - order * order).max(0.0).sqrt() * before)
                    / (degree * degree - order * order).sqrt();
                (before, here) = (here, next);
            }
            if let Some(cell) = table.get_mut(n).and_then(|row| row.get_mut(m)) {
                *cell = here;
            }
        }
    }
    table
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{degree, metres};

    /// The US/UK World Magnetic Model for 2025-2030: Technical Report, table 3b: a worked example to ten decimals.
    #[test]
    fn the_worked_example_of_the_report_comes_out() {
        let year = DecimalYear::new(2027.5).unwrap();
        let field = MagneticField::at(
            Position::derived(-80.0, 240.0 - 360.0),
            TrueAltitude::derived(metres(100_000.0)),
            year,
        );
        for (value, printed) in [
            (field.north, 5_983.976_049_651_8),
            (field.east, 14_760.135_975_786_8),
            (field.down, -49_317.670_615_425_5),
            (field.horizontal(), 15_927.007_986_013_0),
            (field.total(), 51_825.690_717_231_4),
            (field.north_change, 30.555_353_353_0),
            (field.east_change, -8.049_422_899_5),
            (field.down_change, 89.217_406_938_2),
        ] {
            let value = value.get::<nanotesla>();
            assert!((value - printed).abs() < 1e-8, "{value} {printed}");
        }
        // Printed in radians to ten decimals: 3e-9 degrees.
        for (value_deg, printed_rad) in [
            (field.declination().angle().get::<degree>(), 1.185_630_840_7),
            (field.inclination().get::<degree>(), -1.258_422_154_1),
            (field.declination_change().get::<degree>(), -0.001_967_791_0),
            (field.inclination_change().get::<degree>(), 0.000_602_866_3),
        ] {
            assert!((value_deg.to_radians() - printed_rad).abs() < 5.1e-11, "{value_deg} {printed_rad}");
        }
    }

    #[test]
    fn the_poles_are_points_like_others() {
        let sea_level = TrueAltitude::derived(metres(0.0));
        let at = |latitude, longitude, year| {
            MagneticField::at(
                Position::derived(latitude, longitude),
                sea_level,
                DecimalYear::new(year).unwrap(),
            )
        };
        let (pole, near) = (at(90.0, 30.0, 2025.0), at(89.999_999_9, 30.0, 2025.0));
        assert!(
            (pole.north - near.north).abs() < nanoteslas(0.01)
                && (pole.east - near.east).abs() < nanoteslas(0.01)
        );
        // The magnetic pole of 2025 lies near 86 N 139 E (NOAA NCEI, from memory).
        assert_eq!(at(86.0, 139.0, 2025.0).zone(), MagneticZone::Blackout);
        assert_eq!(at(86.0, 30.0, 2025.0).zone(), MagneticZone::Caution);
        assert_eq!(at(10.0, 30.0, 2025.0).zone(), MagneticZone::Clear);
        assert!(at(0.0, 0.0, 2030.0).in_date && !at(0.0, 0.0, 2031.0).in_date);
    }
}
