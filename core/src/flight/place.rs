//! Where an aircraft is over the ellipsoid, and the frame of directions that it carries along.

use super::vector::Vector;
use crate::value::Position;

/// Equatorial radius and squared eccentricity of WGS-84. Source: NGA.STND.0036_1.0.0_WGS84 (from memory).
const EQUATOR_M: f64 = 6_378_137.0;
const FLATTENING: f64 = 1.0 / 298.257_223_563;
const ECCENTRICITY_SQUARED: f64 = FLATTENING * (2.0 - FLATTENING);

/// The upward normal of the ellipsoid, and a north that is carried parallel along the path.
///
/// Normals and tangents instead of latitude and longitude: nothing is singular at a pole, and a step takes no trigonometry.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Place {
    pub normal: Vector,
    /// Unit tangent from which the aircraft's headings are counted.
    pub north: Vector,
}

impl Place {
    /// At a position, with a carried north that lies clockwise of the true north there.
    pub fn new(position: Position, north_from_true_rad: f64) -> Self {
        let (sine_lat, cosine_lat) = position.latitude_deg().to_radians().sin_cos();
        let (sine_lon, cosine_lon) = position.longitude_deg().to_radians().sin_cos();
        let normal = Vector { x: cosine_lat * cosine_lon, y: cosine_lat * sine_lon, z: sine_lat };
        let true_north = Vector { x: -sine_lat * cosine_lon, y: -sine_lat * sine_lon, z: cosine_lat };
        let east = Vector { x: -sine_lon, y: cosine_lon, z: 0.0 };
        let (sine, cosine) = north_from_true_rad.sin_cos();
        Self { normal, north: true_north * cosine + east * sine }
    }

    pub fn position(&self) -> Position {
        let n = self.normal;
        Position::derived(n.z.atan2(n.x.hypot(n.y)).to_degrees(), n.y.atan2(n.x).to_degrees())
    }

    /// The unit vector to the right of the carried north.
    pub fn east(&self) -> Vector {
        self.north.cross(self.normal)
    }

    /// The same place with the carried north turned clockwise.
    pub fn north_turned(&self, by_rad: f64) -> Self {
        let (sine, cosine) = by_rad.sin_cos();
        Self { normal: self.normal, north: self.north * cosine + self.east() * sine }
    }

    /// How far clockwise of true north the carried north lies. At a pole, where there is no true north, some number.
    pub fn north_from_true_rad(&self) -> f64 {
        let true_east = Vector::POLE.cross(self.normal);
        let true_north = self.normal.cross(true_east);
        self.north.dot(true_east).atan2(self.north.dot(true_north))
    }

    /// The tangent vector of north and east parts, counted from true north.
    pub fn along_true(&self, north: f64, east: f64) -> Vector {
        let across = Vector::POLE.cross(self.normal);
        let length = across.length();
        if length == 0.0 {
            return self.north * north + self.east() * east;
        }
        let true_east = across * (1.0 / length);
        self.normal.cross(true_east) * north + true_east * east
    }

    /// The tangent vector of north and east parts, counted from the carried north.
    pub fn along_carried(&self, north: f64, east: f64) -> Vector {
        self.north * north + self.east() * east
    }

    /// In earth-centred coordinates at a height over the ellipsoid.
    pub fn in_space_m(&self, height_m: f64) -> Vector {
        let prime_m = EQUATOR_M / (1.0 - ECCENTRICITY_SQUARED * self.normal.z * self.normal.z).sqrt();
        let n = self.normal;
        let axial = prime_m * (1.0 - ECCENTRICITY_SQUARED) + height_m;
        Vector { x: (prime_m + height_m) * n.x, y: (prime_m + height_m) * n.y, z: axial * n.z }
    }

    /// How fast normal and carried north turn in space for a horizontal velocity at a height.
    ///
    /// With `N` and `M` the radii of curvature in the prime vertical and the meridian, `dn/dt = v_east / (N + h)` east
    /// `+ v_north / (M + h)` north, written so that no north is needed. Parallel transport: `da/dt = -(a . dn/dt) n`.
    fn rates(&self, velocity_m_s: Vector, height_m: f64) -> (Vector, Vector) {
        let root = (1.0 - ECCENTRICITY_SQUARED * self.normal.z * self.normal.z).sqrt();
        let cubed = root * root * root;
        let prime_m = EQUATOR_M / root + height_m;
        let meridian_m = EQUATOR_M * (1.0 - ECCENTRICITY_SQUARED) / cubed + height_m;
        let excess = EQUATOR_M * ECCENTRICITY_SQUARED / (cubed * prime_m * meridian_m);
        let poleward = Vector::POLE - self.normal * self.normal.z;
        let turning = velocity_m_s * (1.0 / prime_m) + poleward * (velocity_m_s.z * excess);
        (turning, self.normal * -self.north.dot(turning))
    }

    fn moved(&self, (normal, north): (Vector, Vector), time_s: f64) -> Self {
        Self { normal: self.normal + normal * time_s, north: self.north + north * time_s }
    }

    /// After a time, by the classical Runge-Kutta rule of order four; `velocity_m_s` is asked at parts 0, 0.5 and 1 of the time.
    pub fn after(
        &self,
        time_s: f64,
        height_m: impl Fn(f64) -> f64,
        velocity_m_s: impl Fn(&Self, f64) -> Vector,
    ) -> Self {
        let rates = |place: &Self, part| place.rates(velocity_m_s(place, part), height_m(part));
        let first = rates(self, 0.0);
        let second = rates(&self.moved(first, time_s / 2.0), 0.5);
        let third = rates(&self.moved(second, time_s / 2.0), 0.5);
        let fourth = rates(&self.moved(third, time_s), 1.0);
        let mean = |a: Vector, b: Vector, c: Vector, d: Vector| (a + (b + c) * 2.0 + d) * (1.0 / 6.0);
        let moved = self.moved(
            (mean(first.0, second.0, third.0, fourth.0), mean(first.1, second.1, third.1, fourth.1)),
            time_s,
        );
        let normal = moved.normal.unit();
        Self { normal, north: (moved.north - normal * moved.north.dot(normal)).unit() }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::earth::{direct, inverse};
    use crate::value::units::{meter, metres};
    use crate::value::{GroundDistance, TrueBearing};

    #[test]
    fn a_straight_flight_at_the_surface_is_a_geodesic_over_the_pole_too() {
        for (latitude, longitude, bearing) in
            [(61.0, -12.0, 33.0), (-40.0, 179.5, 265.0), (89.9, 30.0, 1.0), (0.0, 0.0, 90.0)]
        {
            let start = Position::derived(latitude, longitude);
            let mut place = Place::new(start, 0.0);
            let (sine, cosine) = f64::to_radians(bearing).sin_cos();
            for _ in 0..1000 {
                place = place.after(1.0, |_| 0.0, |here, _| here.along_carried(250.0 * cosine, 250.0 * sine));
            }
            let (expected, _) =
                direct(start, TrueBearing::from_degrees(bearing), GroundDistance::derived(metres(250_000.0)));
            let miss_m = inverse(place.position(), expected).distance.value().get::<meter>();
            assert!(miss_m < 1e-4, "{latitude} {bearing}: {miss_m} m");
        }
    }
}
