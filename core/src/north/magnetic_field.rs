//! The earth's magnetic field by the World Magnetic Model.

use super::harmonics::{self, Coefficients, Place};
use super::{DecimalYear, polar_grid_convergence, wmm2020, wmm2025};
use crate::earth::{ECCENTRICITY_SQUARED, SEMI_MAJOR_M};
use crate::value::units::{Angle, MagneticFluxDensity, degree, degrees, meter, nanotesla, nanoteslas};
use crate::value::{Declination, DirectionChange, Position, TrueAltitude, choice};

/// A model: its coefficients, and what its report says of its declination.
struct Model {
    epoch_year: f64,
    coefficients: &'static Coefficients,
    /// The part of the declination's uncertainty that goes with the horizontal field, in degrees times nanotesla.
    uncertainty_deg_nt: f64,
}

/// For each model, the part of the declination's uncertainty that goes with the horizontal field, in degrees times nanotesla.
pub(crate) const UNCERTAINTIES_DEG_NT: [f64; 2] = [5625.0, 5417.0];

/// The models in the order of their years, each made for five.
const MODELS: [Model; 2] = [
    Model {
        epoch_year: 2020.0,
        coefficients: &wmm2020::COEFFICIENTS,
        uncertainty_deg_nt: UNCERTAINTIES_DEG_NT[0],
    },
    Model {
        epoch_year: 2025.0,
        coefficients: &wmm2025::COEFFICIENTS,
        uncertainty_deg_nt: UNCERTAINTIES_DEG_NT[1],
    },
];

/// The latitude from which on, to either pole, grid north is used.
pub(crate) const POLAR_GRID_LATITUDE_DEG: f64 = 55.0;

/// When the last model ends.
const LAST_YEAR: f64 = 2030.0;

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

/// A magnetic field as a vector in the geodetic frame.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FieldVector {
    /// Toward true north.
    pub north: MagneticFluxDensity,
    /// Toward east.
    pub east: MagneticFluxDensity,
    /// Downward.
    pub down: MagneticFluxDensity,
}

impl FieldVector {
    /// The horizontal part.
    pub fn horizontal(&self) -> MagneticFluxDensity {
        self.north.hypot(self.east)
    }

    /// The whole field.
    pub fn total(&self) -> MagneticFluxDensity {
        self.horizontal().hypot(self.down)
    }
}

/// The magnetic field at a place and date.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MagneticField {
    /// The field.
    pub field: FieldVector,
    /// Its change in a year.
    pub change: FieldVector,
    /// Whether the date lies in the years that a model is made for, 2020 to 2030. Out of date, the last model is
    /// carried on, and less and less to be trusted.
    pub in_date: bool,
    position: Position,
    uncertainty_deg_nt: f64,
}

impl MagneticField {
    /// The field of the World Magnetic Model, degree and order 12, at a place on WGS-84, an altitude and a date: of the
    /// model of 2020 before 2025, of that of 2025 from then on.
    ///
    /// Schmidt semi-normalised harmonics in double precision. The poles are points like others; there the components are
    /// those of the meridian of the longitude given.
    ///
    /// # Accuracy
    /// The arithmetic to 1e-8 nT, as the technical report prints its worked example. The model itself: one standard deviation of
    /// 137 nT north, 89 nT east, 141 nT down (2025); see [`MagneticField::declination_uncertainty`]. Mean sea level is taken for the
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
    /// let magnetic = MagneticField::at(position, TrueAltitude::new(feet(0.0))?, DecimalYear::new(2026.5)?);
    /// assert!(magnetic.declination().angle() < degrees(0.0), "west of north");
    /// assert!(magnetic.field.total() > nanoteslas(50_000.0));
    /// # Ok::<(), lubberline::Error>(())
    /// ```
    pub fn at(position: Position, altitude: TrueAltitude, year: DecimalYear) -> Self {
        let [older, newer] = &MODELS;
        let model = if year.years() < newer.epoch_year { older } else { newer };
        let height_m = altitude.value().get::<meter>();
        let (sine, cosine) = position.latitude_deg().to_radians().sin_cos();
        let curvature_m = SEMI_MAJOR_M / (1.0 - ECCENTRICITY_SQUARED * sine * sine).sqrt();
        let outward_m = (curvature_m + height_m) * cosine;
        let poleward_m = (curvature_m * (1.0 - ECCENTRICITY_SQUARED) + height_m) * sine;
        let radius_m = outward_m.hypot(poleward_m);
        let (sine_c, cosine_c) = (poleward_m / radius_m, outward_m / radius_m);

        let [north, east, down] = harmonics::field(
            model.coefficients,
            &Place {
                sine: sine_c,
                cosine: cosine_c,
                longitude_rad: position.longitude_deg().to_radians(),
                radius_m,
                years: year.years() - model.epoch_year,
            },
        );
        // From the geocentric frame to the geodetic one: by the angle between the two verticals.
        let (sine_v, cosine_v) = (sine_c * cosine - cosine_c * sine, cosine_c * cosine + sine_c * sine);
        let vector = |north_nt: f64, east_nt: f64, down_nt: f64| FieldVector {
            north: nanoteslas(north_nt * cosine_v - down_nt * sine_v),
            east: nanoteslas(east_nt),
            down: nanoteslas(north_nt * sine_v + down_nt * cosine_v),
        };
        Self {
            field: vector(north.now, east.now, down.now),
            change: vector(north.change, east.change, down.change),
            in_date: (older.epoch_year..=LAST_YEAR).contains(&year.years()),
            position,
            uncertainty_deg_nt: model.uncertainty_deg_nt,
        }
    }

    /// The angle from true to magnetic north, positive east: variation.
    pub fn declination(&self) -> Declination {
        Declination::from_degrees(self.field.east.atan2(self.field.north).get::<degree>())
    }

    /// The dip below the horizontal.
    pub fn inclination(&self) -> Angle {
        self.field.down.atan2(self.field.horizontal())
    }

    /// The change of the declination in a year.
    pub fn declination_change(&self) -> Angle {
        let (field, change) = (self.field, self.change);
        let horizontal = field.horizontal();
        ((field.north * change.east - field.east * change.north) / (horizontal * horizontal)).into()
    }

    /// The change of the inclination in a year.
    pub fn inclination_change(&self) -> Angle {
        let (field, total) = (self.field, self.field.total());
        let turned = field.horizontal() * self.change.down - field.down * self.horizontal_change();
        (turned / (total * total)).into()
    }

    /// The change of the horizontal field in a year.
    pub fn horizontal_change(&self) -> MagneticFluxDensity {
        let (field, change) = (self.field, self.change);
        (field.north * change.north + field.east * change.east) / field.horizontal()
    }

    /// The change of the whole field in a year.
    pub fn total_change(&self) -> MagneticFluxDensity {
        let (field, change) = (self.field, self.change);
        (field.horizontal() * self.horizontal_change() + field.down * change.down) / field.total()
    }

    /// The declination counted from the north of the polar grid; none between 55 degrees of latitude, where that is not used.
    ///
    /// # Source
    /// The US/UK World Magnetic Model for 2025-2030: Technical Report, grid variation.
    pub fn grid_variation(&self) -> Option<Declination> {
        let convergence = polar_grid_convergence(self.position).angle();
        let variation =
            DirectionChange::from_degrees((self.declination().angle() - convergence).get::<degree>());
        (self.position.latitude_deg().abs() >= POLAR_GRID_LATITUDE_DEG)
            .then(|| Declination::from_degrees(variation.degrees()))
    }

    /// One standard deviation of the declination, `sqrt(0.26² + (5417 / H)²)` degrees with H in nanotesla, at most half a
    /// circle; 5625 for 5417 with the model of 2020.
    ///
    /// # Source
    /// The US/UK World Magnetic Model for 2025-2030: Technical Report, error model; that for 2020-2025 likewise.
    pub fn declination_uncertainty(&self) -> Angle {
        let horizontal_nt = self.field.horizontal().get::<nanotesla>();
        degrees(0.26_f64.hypot(self.uncertainty_deg_nt / horizontal_nt).min(180.0))
    }

    /// How far a compass can be trusted here.
    ///
    /// # Source
    /// The US/UK World Magnetic Model for 2025-2030: Technical Report: blackout zone below 2 000 nT of horizontal field,
    /// caution zone below 6 000.
    pub fn zone(&self) -> MagneticZone {
        match self.field.horizontal().get::<nanotesla>() {
            strong if strong >= 6000.0 => MagneticZone::Clear,
            weak if weak >= 2000.0 => MagneticZone::Caution,
            _ => MagneticZone::Blackout,
        }
    }
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
            (field.field.north, 5_983.976_049_651_8),
            (field.field.east, 14_760.135_975_786_8),
            (field.field.down, -49_317.670_615_425_5),
            (field.field.horizontal(), 15_927.007_986_013_0),
            (field.field.total(), 51_825.690_717_231_4),
            (field.change.north, 30.555_353_353_0),
            (field.change.east, -8.049_422_899_5),
            (field.change.down, 89.217_406_938_2),
        ] {
            let value_nt = value.get::<nanotesla>();
            assert!((value_nt - printed).abs() < 1e-8, "{value_nt} {printed}");
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
        let apart = FieldVector {
            north: pole.field.north - near.field.north,
            east: pole.field.east - near.field.east,
            down: pole.field.down - near.field.down,
        };
        assert!(apart.total() < nanoteslas(0.01), "{apart:?}");
        // The magnetic pole of 2025 lies near 86 N 139 E (NOAA NCEI, from memory).
        assert_eq!(at(86.0, 139.0, 2025.0).zone(), MagneticZone::Blackout);
        assert_eq!(at(86.0, 30.0, 2025.0).zone(), MagneticZone::Caution);
        assert_eq!(at(10.0, 30.0, 2025.0).zone(), MagneticZone::Clear);
        assert!(at(0.0, 0.0, 2030.0).in_date && !at(0.0, 0.0, 2031.0).in_date);
        assert_eq!(at(54.9, 30.0, 2026.0).grid_variation(), None);
    }

    /// Grid variation is declination less longitude in the north and plus longitude in the south.
    #[test]
    fn grid_variation_is_as_the_report_has_it() {
        for (latitude_deg, longitude_deg, sign) in [(80.0, 30.0, -1.0), (-80.0, -120.0, 1.0)] {
            let magnetic = MagneticField::at(
                Position::derived(latitude_deg, longitude_deg),
                TrueAltitude::derived(metres(0.0)),
                DecimalYear::new(2027.5).unwrap(),
            );
            let expected_deg = magnetic.declination().angle().get::<degree>() + sign * longitude_deg;
            let variation_deg = magnetic.grid_variation().unwrap().angle().get::<degree>();
            assert!((variation_deg - expected_deg).abs() < 1e-12, "{variation_deg} {expected_deg}");
        }
    }

    /// The US/UK World Magnetic Model for 2020-2025: Technical Report, table of test values (from memory): 2020.0, sea level.
    #[test]
    fn before_2025_the_model_of_2020_serves() {
        for (latitude_deg, longitude_deg, north_nt, east_nt, down_nt) in [
            (80.0, 0.0, 6570.4, -146.3, 54_606.0),
            (0.0, 120.0, 39_624.3, 109.9, -10_932.5),
            (-80.0, -120.0, 5940.6, 15_772.1, -52_480.8),
        ] {
            let magnetic = MagneticField::at(
                Position::derived(latitude_deg, longitude_deg),
                TrueAltitude::derived(metres(0.0)),
                DecimalYear::new(2020.0).unwrap(),
            );
            for (value, printed) in [
                (magnetic.field.north, north_nt),
                (magnetic.field.east, east_nt),
                (magnetic.field.down, down_nt),
            ] {
                assert!((value.get::<nanotesla>() - printed).abs() <= 0.051, "{value:?} {printed}");
            }
        }
    }
}
