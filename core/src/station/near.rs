//! What an aircraft within 305 NM makes of a station, from the straight line between them.

use crate::many::functions::{atan2_deg, sin_cos_deg};
use crate::many::geodesic::{AXIS_M, ECCENTRICITY_SQUARED, Near, Series, normal};
use crate::value::Position;

/// The longest chord on the surface that is answered, a margin below what the series was fitted to, and the shortest, next to which
/// the coordinates have no digits left; of the semi-major axis, squared.
const MOST: f64 = squared((Near::REACH_NM - 5.0) * 1852.0);
const LEAST: f64 = squared(100.0);

const fn squared(chord_m: f64) -> f64 {
    (chord_m / AXIS_M) * (chord_m / AXIS_M)
}

/// What is seen, directions against true north.
pub struct Seen {
    pub bearing_deg: f64,
    pub ground_m: f64,
    pub slant_m: f64,
    pub elevation_angle_deg: f64,
}

/// Earth-centred coordinates as seen from the station's meridian, of the semi-major axis.
#[derive(Clone, Copy)]
struct Centred {
    outward: f64,
    east: f64,
    poleward: f64,
}

impl Centred {
    fn less(self, other: Self) -> Self {
        Self {
            outward: self.outward - other.outward,
            east: self.east - other.east,
            poleward: self.poleward - other.poleward,
        }
    }

    fn plus(self, other: Self) -> Self {
        Self {
            outward: self.outward + other.outward,
            east: self.east + other.east,
            poleward: self.poleward + other.poleward,
        }
    }

    fn times(self, factor: f64) -> Self {
        Self { outward: self.outward * factor, east: self.east * factor, poleward: self.poleward * factor }
    }
}

/// What an aircraft makes of an antenna, from heights in metres; none beyond the reach, or within a hundred metres over the ground.
///
/// The series is that of arrays: the squared distance and the azimuth from the straight line on the surface. Its coefficients are
/// polynomials in the sine of the station's latitude, for the whole earth.
///
/// # Accuracy
/// Against Karney's solution 15 nanometres along the ground and across it; 5 nanometres of slant.
pub fn observe(antenna: Position, antenna_m: f64, aircraft: Position, aircraft_m: f64) -> Option<Seen> {
    let (sine, cosine) = sin_cos_deg::<false>(antenna.latitude_deg());
    let (sine_2, cosine_2) = sin_cos_deg::<false>(aircraft.latitude_deg());
    let (east, outward) = sin_cos_deg::<false>(aircraft.longitude_deg() - antenna.longitude_deg());
    // Unit vectors straight up, and the points of the surface.
    let up_1 = Centred { outward: cosine, east: 0.0, poleward: sine };
    let up_2 = Centred { outward: cosine_2 * outward, east: cosine_2 * east, poleward: sine_2 };
    let place = |up: Centred| {
        let normal = normal::<false>(up.poleward);
        let surface = up.times(normal);
        Centred { poleward: surface.poleward * (1.0 - ECCENTRICITY_SQUARED), ..surface }
    };
    let line = place(up_2).less(place(up_1));
    let chord = line.outward * line.outward + line.east * line.east + line.poleward * line.poleward;
    if !(LEAST..=MOST).contains(&chord) {
        return None;
    }
    let north = line.poleward * cosine - line.outward * sine;
    let z = north * cosine;
    let near = Near::at::<false>(sine);
    let square = chord + near.square::<false>(chord, z);
    let bearing_deg = atan2_deg::<false>(line.east, cosine * near.north::<false>(chord, z) + north);

    let high = line.plus(up_2.times(aircraft_m / AXIS_M)).less(up_1.times(antenna_m / AXIS_M));
    let up = high.poleward * sine + high.outward * cosine;
    let north = high.poleward * cosine - high.outward * sine;
    let level = (north * north + high.east * high.east).sqrt();
    Some(Seen {
        bearing_deg,
        ground_m: AXIS_M * square.sqrt(),
        slant_m: AXIS_M * (level * level + up * up).sqrt(),
        elevation_angle_deg: atan2_deg::<false>(up, level),
    })
}
