//! The straight lines from a station to an aircraft and to the surface below it.

use super::Station;
use crate::many::arithmetic::sum;
use crate::many::functions::sin_cos_deg;
use crate::many::geodesic::{AXIS_M, ECCENTRICITY_SQUARED, normal};

pub(super) const FOOT: f64 = 0.3048 / AXIS_M;

/// A station for the loops: what of it they use, in units of the semi-major axis.
#[derive(Debug, Clone, Copy)]
pub(super) struct Antenna {
    pub(super) sine: f64,
    pub(super) cosine: f64,
    height: f64,
    /// The surface below it, from the earth's axis and along it.
    axis: f64,
    pole: f64,
}

impl Antenna {
    #[inline(always)]
    pub(super) fn of<const FMA: bool>(station: &Station) -> Self {
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
pub(super) struct Sight {
    pub(super) chord: f64,
    pub(super) north: f64,
    pub(super) east: f64,
    pub(super) slant: f64,
    pub(super) up: f64,
    /// Squared, what of the line to the height is level.
    pub(super) level: f64,
}

impl Sight {
    /// From sine, cosine and radius of curvature of a latitude, sine and cosine of the longitude from the station's, and height.
    #[inline(always)]
    pub(super) fn of<const FMA: bool>(
        from: &Antenna,
        latitude: [f64; 3],
        longitude: [f64; 2],
        high: f64,
    ) -> Self {
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
