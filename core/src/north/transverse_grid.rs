//! The grid of a transverse Mercator map, such as those of the Universal Transverse Mercator zones.

use crate::Error;
use crate::earth::ECCENTRICITY_SQUARED;
use crate::value::units::degree;
use crate::value::{Declination, DirectionChange, Longitude, Position, Quantity};

/// Krueger's coefficients of the projection on WGS-84, from its third flattening n = 0.001 679 220 386 383 7 to the sixth order:
/// the first is n/2 - 2n²/3 + 5n³/16 + 41n⁴/180 - 127n⁵/288 + 7891n⁶/37800.
///
/// Source: C. F. F. Karney, Transverse Mercator with an accuracy of a few nanometers, Journal of Geodesy 85 (2011) 475-485,
/// equation 35.
const COEFFICIENTS: [f64; 6] = [
    8.377_318_206_244_698e-4,
    7.608_527_773_572_307e-7,
    1.197_645_503_329_452_7e-9,
    2.429_170_607_201_358_7e-12,
    5.711_757_677_865_804e-15,
    1.491_117_731_258_389_5e-17,
];

/// The grid of a map on the transverse Mercator projection of WGS-84, whose north is that of one meridian.
///
/// # Example
/// ```
/// use lubberline::north::TransverseGrid;
/// use lubberline::value::{Latitude, Longitude, Position, units::*};
/// let place = Position::new(Latitude::new(degrees(60.0))?, Longitude::new(degrees(-6.0))?);
/// let grid = TransverseGrid { meridian: Longitude::new(degrees(-9.0))? };
/// // 3 degrees east of the grid's meridian its north lies 2.6 degrees east of true north.
/// let convergence = grid.convergence(place)?;
/// assert!((convergence.angle() - degrees(2.5987)).abs() < degrees(0.0001));
/// # Ok::<(), lubberline::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TransverseGrid {
    /// The meridian along which the grid's north is true north.
    pub meridian: Longitude,
}

impl TransverseGrid {
    /// The angle from true north to the north of the grid at a place, positive east.
    ///
    /// On a sphere it is `atan(tan l sin p)`, `l` the longitude from the meridian and `p` the latitude. On the ellipsoid that is taken with
    /// the conformal latitude, and Krueger's series turns it to the ellipsoid's own grid.
    ///
    /// # Accuracy
    /// 1e-13 degrees to 35 degrees from the meridian, 1e-11 to 45, 1e-9 to 60.
    ///
    /// # Degenerate cases
    /// Zero on the meridian and on the equator. At a pole it goes with the longitude given.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] beyond 60 degrees from the meridian, where the series fails and no such grid is drawn.
    ///
    /// # Source
    /// C. F. F. Karney, Transverse Mercator with an accuracy of a few nanometers, Journal of Geodesy 85 (2011) 475-485,
    /// equations 7 to 11 and 23 to 25, doi 10.1007/s00190-011-0445-3.
    pub fn convergence(&self, place: Position) -> Result<Declination, Error> {
        let east =
            DirectionChange::from_degrees(place.longitude_deg() - self.meridian.angle().get::<degree>());
        let name = "longitude from the grid's meridian";
        let east_rad = Quantity::GridLongitude.check(name, east.degrees())?.to_radians();

        let eccentricity = ECCENTRICITY_SQUARED.sqrt();
        let (sine, cosine) = place.latitude_deg().to_radians().sin_cos();
        // The conformal latitude by its sine and cosine, each but for the factor that makes them a unit vector.
        let sigma = (eccentricity * (eccentricity * sine).atanh()).sinh();
        let (north, outward) = (sine * 1.0_f64.hypot(sigma) - sigma, cosine);
        let (east_sine, east_cosine) = east_rad.sin_cos();
        let on_sphere_rad = (north * east_sine).atan2(east_cosine * north.hypot(outward));

        let along_rad = north.atan2(outward * east_cosine);
        let across = (outward * east_sine / north.hypot(outward * east_cosine)).asinh();
        let (mut stretched, mut turned) = (1.0, 0.0);
        for (order, coefficient) in (1..).map(|order: u8| 2.0 * f64::from(order)).zip(COEFFICIENTS) {
            let (sine, cosine) = (order * along_rad).sin_cos();
            stretched += order * coefficient * cosine * (order * across).cosh();
            turned += order * coefficient * sine * (order * across).sinh();
        }
        Ok(Declination::from_degrees((on_sphere_rad + f64::atan2(turned, stretched)).to_degrees()))
    }
}

/// The meridian of the zone of the Universal Transverse Mercator grid in which a place lies.
///
/// Zones are 6 degrees wide, but for those that are widened about Norway and Svalbard. A place between two belongs to the eastern one.
///
/// # Degenerate cases
/// The grid is laid out from 80° S to 84° N; toward the poles the zones go on, and [`super::polar_grid_convergence`] is used.
///
/// # Source
/// NGA.STND.0037_2.0.0_GRIDS, Universal Grids and Grid Reference Systems (2014), section 3 (from memory).
///
/// # Example
/// ```
/// use lubberline::north::utm_meridian;
/// use lubberline::value::{Latitude, Longitude, Position, units::*};
/// let at = |latitude, longitude| -> Result<Position, lubberline::Error> {
///     Ok(Position::new(Latitude::new(degrees(latitude))?, Longitude::new(degrees(longitude))?))
/// };
/// // The zone about Norway is wider: elsewhere in the world it would be that of 3 degrees.
/// assert_eq!(format!("{:.0}", utm_meridian(at(60.0, 4.0)?).angle().get::<degree>()), "9");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn utm_meridian(place: Position) -> Longitude {
    let (latitude_deg, longitude_deg) = (place.latitude_deg(), place.longitude_deg());
    let norway = (56.0..64.0).contains(&latitude_deg) && (3.0..12.0).contains(&longitude_deg);
    let svalbard = (72.0..=84.0).contains(&latitude_deg) && (0.0..42.0).contains(&longitude_deg);
    Longitude::reduced(if norway {
        9.0
    } else if svalbard {
        match longitude_deg {
            ..9.0 => 3.0,
            9.0..21.0 => 15.0,
            21.0..33.0 => 27.0,
            _ => 39.0,
        }
    } else {
        (longitude_deg / 6.0).floor() * 6.0 + 3.0
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn convergence_deg(latitude_deg: f64, east_deg: f64) -> f64 {
        let grid = TransverseGrid { meridian: Longitude::reduced(-100.0) };
        grid.convergence(Position::derived(latitude_deg, east_deg - 100.0)).unwrap().angle().get::<degree>()
    }

    /// The projection is the meridian arc continued to complex latitudes, and its convergence the argument of the radius of the parallel
    /// there: `sqrt(1 - s²) / sqrt(1 - e² s²)` with `s = tanh(w + e atanh(e s))`, `w` the isometric latitude with the longitude as its
    /// imaginary part. Evaluated to 40 digits, without Krueger's series.
    #[test]
    fn it_is_the_argument_of_the_projections_derivative() {
        for (latitude_deg, east_deg, expected_deg, within_deg) in [
            (60.0, 3.0, 2.598_672_693_801_767, 1e-13),
            (52.0, -2.5, -1.970_504_426_175_425, 1e-13),
            (-33.9, 2.2, -1.227_460_616_333_181_5, 1e-13),
            (0.5, 3.0, 0.026_204_042_387_520_583, 1e-13),
            (78.0, 15.0, 14.686_543_585_303_295, 1e-13),
            (-70.0, 30.0, -28.481_808_699_559_25, 1e-13),
            (20.0, 35.0, 13.499_669_431_151_477, 1e-13),
            (89.9, 60.0, 59.999_962_212_480_84, 1e-9),
        ] {
            let found_deg = convergence_deg(latitude_deg, east_deg);
            assert!((found_deg - expected_deg).abs() < within_deg, "{latitude_deg} {east_deg}: {found_deg}");
        }
    }

    #[test]
    fn on_the_meridian_the_equator_and_at_the_poles() {
        assert_eq!(convergence_deg(47.0, 0.0), 0.0);
        assert_eq!(convergence_deg(0.0, 20.0), 0.0);
        assert!((convergence_deg(90.0, 30.0) - 30.0).abs() < 1e-12);
        assert!((convergence_deg(-90.0, 30.0) + 30.0).abs() < 1e-12);
        let grid = TransverseGrid { meridian: Longitude::reduced(170.0) };
        assert!(grid.convergence(Position::derived(40.0, -170.0)).is_ok(), "across the date line");
        assert!(grid.convergence(Position::derived(40.0, 100.0)).is_err());
    }

    #[test]
    fn zones_are_as_laid_out() {
        for (latitude_deg, longitude_deg, meridian_deg) in [
            (40.0, 0.0, 3.0),
            (40.0, -0.1, -3.0),
            (40.0, 6.0, 9.0),
            (-40.0, 179.9, 177.0),
            (-40.0, -180.0, -177.0),
            (60.0, 2.9, 3.0),
            (60.0, 3.0, 9.0),
            (64.0, 3.0, 3.0),
            (78.0, 8.9, 3.0),
            (78.0, 9.0, 15.0),
            (78.0, 21.0, 27.0),
            (78.0, 33.0, 39.0),
            (78.0, 42.0, 45.0),
        ] {
            let meridian = utm_meridian(Position::derived(latitude_deg, longitude_deg));
            assert_eq!(meridian, Longitude::reduced(meridian_deg), "{latitude_deg} {longitude_deg}");
        }
    }
}
