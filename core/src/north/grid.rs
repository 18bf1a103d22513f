//! Grids: a north that is one direction all over a chart.

use crate::earth::ECCENTRICITY_SQUARED;
use crate::value::units::{Angle, degree, radian};
use crate::value::{Declination, DirectionChange, Latitude, Longitude, Position};

/// The angle from true north to the north of the polar grid, positive east: the longitude of the place in the north, its
/// negative in the south.
///
/// The grid's north is the direction in which the meridian of Greenwich runs north. East of it the way to the North Pole leads
/// to the left of that, by the longitude: at 90° E it is grid west.
///
/// # Degenerate cases
/// Off the polar regions it can be computed and means nothing: the grid is used beyond 55 degrees of latitude. At a pole it
/// goes with the longitude given, as the true bearing does.
///
/// # Source
/// The grid of the Universal Polar Stereographic projection. The US/UK World Magnetic Model for 2025-2030: Technical Report has
/// grid variation as declination less longitude in the north, plus longitude in the south.
///
/// # Example
/// ```
/// use lubberline::north::polar_grid_convergence;
/// use lubberline::value::{Latitude, Longitude, Position, units::*};
/// let at = |latitude, longitude| -> Result<Position, lubberline::Error> {
///     Ok(Position::new(Latitude::new(degrees(latitude))?, Longitude::new(degrees(longitude))?))
/// };
/// assert_eq!(format!("{:.0}", polar_grid_convergence(at(85.0, 30.0)?).angle().get::<degree>()), "30");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn polar_grid_convergence(position: Position) -> Declination {
    let sign = if position.latitude_deg() < 0.0 { -1.0 } else { 1.0 };
    Declination::from_degrees(sign * position.longitude_deg())
}

/// The grid of a chart on Lambert's conformal cone, as most aeronautical charts are.
///
/// # Example
/// ```
/// use lubberline::north::LambertGrid;
/// use lubberline::value::{Latitude, Longitude, units::*};
/// let at = |angle| Latitude::new(degrees(angle));
/// let grid = LambertGrid::new(at(33.0)?, at(45.0)?, Longitude::new(degrees(-96.0))?);
/// // 10 degrees east of the chart's middle its north lies 6.3 degrees east of true north.
/// let convergence = grid.convergence(Longitude::new(degrees(-86.0))?);
/// assert!((convergence.angle() - degrees(6.3)).abs() < degrees(0.01));
/// # Ok::<(), lubberline::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LambertGrid {
    cone: f64,
    meridian: Longitude,
}

impl LambertGrid {
    /// The grid of a chart with two standard parallels, or twice the same, whose north is that of a meridian.
    ///
    /// # Degenerate cases
    /// Parallels as far north as south make a cylinder: the convergence is zero. With a pole for a parallel the cone is the
    /// plane of the polar grid.
    pub fn new(one: Latitude, other: Latitude, meridian: Longitude) -> Self {
        let angles = [one, other].map(|parallel| parallel.angle().get::<radian>());
        Self { cone: constant_of_the_cone(angles, ECCENTRICITY_SQUARED.sqrt()), meridian }
    }

    /// By how much the chart's meridians turn for a degree of longitude: the constant of the cone, negative in the south.
    pub fn constant(&self) -> f64 {
        self.cone
    }

    /// The angle from true north to the north of the grid at a longitude, positive east: `n (longitude - meridian)`.
    ///
    /// # Accuracy
    /// Rounding.
    ///
    /// # Source
    /// J. P. Snyder, Map Projections: A Working Manual, US Geological Survey Professional Paper 1395 (1987), equations 14-4, 15-8.
    pub fn convergence(&self, longitude: Longitude) -> Declination {
        let east: Angle = longitude.angle() - self.meridian.angle();
        let around = DirectionChange::from_degrees(east.get::<degree>());
        Declination::from_degrees(self.cone * around.degrees())
    }
}

/// Snyder's n, equation 15-8: the rate at which the radius of a parallel must change for two parallels to be true to scale.
fn constant_of_the_cone([one_rad, other_rad]: [f64; 2], eccentricity: f64) -> f64 {
    let farther_rad = if one_rad.abs() > other_rad.abs() { one_rad } else { other_rad };
    if (one_rad - other_rad).abs() < 1e-9 || farther_rad.abs() > std::f64::consts::FRAC_PI_2 - 1e-9 {
        return farther_rad.sin();
    }
    // The logarithms of a parallel's radius, and of the radius of its image on a cylinder (the isometric latitude, negative).
    let radius = |rad: f64| rad.cos().ln() - (1.0 - (eccentricity * rad.sin()).powi(2)).sqrt().ln();
    let isometric = |rad: f64| {
        let sine = rad.sin();
        eccentricity * (eccentricity * sine).atanh() - sine.atanh()
    };
    (radius(one_rad) - radius(other_rad)) / (isometric(one_rad) - isometric(other_rad))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::TrueBearing;
    use crate::value::units::degrees;

    fn place(latitude_deg: f64, longitude_deg: f64) -> Position {
        Position::derived(latitude_deg, longitude_deg)
    }

    /// Along the meridian of Greenwich the grid's north is true north; a quarter round, the way to the pole is across the grid.
    #[test]
    fn the_way_to_the_north_pole_is_grid_west_at_90_east() {
        let toward_pole = TrueBearing::from_degrees(0.0);
        for (latitude_deg, longitude_deg, grid_deg) in [
            (80.0, 0.0, 0.0),
            (80.0, 90.0, 270.0),
            (80.0, -90.0, 90.0),
            (-80.0, 90.0, 90.0),
            (-80.0, -30.0, 330.0),
        ] {
            let convergence = polar_grid_convergence(place(latitude_deg, longitude_deg));
            assert_eq!(
                toward_pole.to_grid(convergence).degrees(),
                grid_deg,
                "{latitude_deg} {longitude_deg}"
            );
        }
    }

    /// J. P. Snyder (1987), numerical example of the Lambert conformal conic, ellipsoid: Clarke 1866, parallels 33 and 45 degrees
    /// north, n = 0.6304965; and on the sphere, n = 0.6304777 (read in a transcription).
    #[test]
    fn the_constant_of_the_cone_is_snyders() {
        let parallels = [33.0_f64.to_radians(), 45.0_f64.to_radians()];
        let clarke = constant_of_the_cone(parallels, 0.006_768_658_0_f64.sqrt());
        assert!((clarke - 0.630_496_5).abs() < 1e-7, "{clarke}");
        let sphere = constant_of_the_cone(parallels, 0.0);
        assert!((sphere - 0.630_477_7).abs() < 1e-7, "{sphere}");
    }

    #[test]
    fn one_parallel_has_its_sine_and_a_pole_has_the_polar_grid() {
        let parallel = |angle: f64| Latitude::new(degrees(angle)).unwrap();
        let greenwich = Longitude::new(degrees(0.0)).unwrap();
        let near = LambertGrid::new(parallel(47.0), parallel(47.000_001), greenwich).constant();
        let same = LambertGrid::new(parallel(47.0), parallel(47.0), greenwich).constant();
        assert!((near - same).abs() < 1e-7 && (same - 47.0_f64.to_radians().sin()).abs() < 1e-15);
        let pole = LambertGrid::new(parallel(-90.0), parallel(-90.0), greenwich);
        assert_eq!(
            pole.convergence(Longitude::new(degrees(33.0)).unwrap()),
            polar_grid_convergence(place(-80.0, 33.0))
        );
        assert_eq!(LambertGrid::new(parallel(20.0), parallel(-20.0), greenwich).constant(), 0.0);
    }
}
