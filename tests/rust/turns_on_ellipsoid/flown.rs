//! An aircraft flown in small steps over the WGS-84 ellipsoid. It shares nothing with the library: its own earth, roll and wind.

use geographiclib_rs::{DirectGeodesic, Geodesic, InverseGeodesic};

const EQUATOR_M: f64 = 6_378_137.0;
const FLATTENING: f64 = 1.0 / 298.257_223_563;
const ECCENTRICITY_SQUARED: f64 = FLATTENING * (2.0 - FLATTENING);
const GRAVITY_M_S2: f64 = 9.80665;
const KNOT_M_S: f64 = 1852.0 / 3600.0;
const STEP_S: f64 = 0.25;

/// A fix about which turns are flown.
#[derive(Debug, Clone, Copy)]
pub struct Fix {
    pub latitude_deg: f64,
    pub longitude_deg: f64,
}

/// How fast, through what air and within which limits is flown.
#[derive(Debug, Clone, Copy)]
pub struct Aircraft {
    pub airspeed_kt: f64,
    pub wind_from_deg: f64,
    pub wind_kt: f64,
    pub bank_limit_deg: f64,
    pub rate_limit_deg_s: f64,
    pub roll_deg_s: f64,
}

/// Latitude, longitude, the angle from the frame carried along to local north, heading in that frame; in radians.
type State = [f64; 4];

/// Where a point lies about a fix: its bearing from there, its distance, and the direction of the line to it in the
/// frame carried along to it.
#[derive(Debug, Clone, Copy)]
pub struct Place {
    pub bearing_deg: f64,
    pub distance_nm: f64,
    pub line_deg: f64,
}

/// A turn that was flown: where it ended, with which track in the frame, after how long, how close to the fix it came, and
/// its path.
#[derive(Debug, Clone)]
pub struct Flown {
    pub end: Place,
    pub track_deg: f64,
    pub duration_s: f64,
    pub closest_nm: f64,
    /// Length over the ground, and every step of the way, north and east of the fix.
    pub length_nm: f64,
    pub path_nm: Vec<Pair>,
}

/// North and east.
pub type Pair = (f64, f64);

impl Fix {
    /// A point on a bearing from the fix. A geodesic keeps its direction in a frame carried along it, so that a frame
    /// brought there from the fix has its north where the line's bearing says.
    fn point(&self, bearing_deg: f64, distance_nm: f64) -> (f64, f64, f64) {
        let Self { latitude_deg, longitude_deg } = *self;
        let (latitude, longitude, onward_deg): (f64, f64, f64) =
            Geodesic::wgs84().direct(latitude_deg, longitude_deg, bearing_deg, distance_nm * 1852.0);
        (latitude.to_radians(), longitude.to_radians(), (onward_deg - bearing_deg).to_radians())
    }

    fn place(&self, [latitude, longitude, frame, _]: State) -> Place {
        let (distance_m, bearing_deg, onward_deg, _): (f64, f64, f64, f64) = Geodesic::wgs84().inverse(
            self.latitude_deg,
            self.longitude_deg,
            latitude.to_degrees(),
            longitude.to_degrees(),
        );
        Place { bearing_deg, distance_nm: distance_m / 1852.0, line_deg: onward_deg - frame.to_degrees() }
    }
}

impl Aircraft {
    fn airspeed_m_s(&self) -> f64 {
        self.airspeed_kt * KNOT_M_S
    }

    /// The heading that holds a course, by the law of sines in the triangle of velocities.
    pub fn heading_deg(&self, course_deg: f64) -> f64 {
        let angle = (self.wind_from_deg - course_deg).to_radians();
        course_deg + (self.wind_kt / self.airspeed_kt * angle.sin()).asin().to_degrees()
    }

    /// What is made good along a course: the parts of airspeed and wind along it.
    pub fn groundspeed_kt(&self, course_deg: f64) -> f64 {
        let crab_rad = (self.heading_deg(course_deg) - course_deg).to_radians();
        let wind_rad = (self.wind_from_deg - course_deg).to_radians();
        self.airspeed_kt * crab_rad.cos() - self.wind_kt * wind_rad.cos()
    }

    fn rate_rad_s(&self, bank_rad: f64) -> f64 {
        GRAVITY_M_S2 * bank_rad.tan() / self.airspeed_m_s()
    }

    /// The heading turned in rolling in for a time, by Simpson's rule.
    fn turned_in_roll_rad(&self, roll_s: f64) -> f64 {
        if roll_s == 0.0 {
            return 0.0;
        }
        let rate = |part: f64| self.rate_rad_s(self.roll_deg_s.to_radians() * roll_s * part);
        let parts = 100;
        let width = 1.0 / f64::from(2 * parts);
        let sum: f64 = (0..parts)
            .map(|index| f64::from(2 * index) * width)
            .map(|from| rate(from) + 4.0 * rate(from + width) + rate(from + 2.0 * width))
            .sum();
        sum * width / 3.0 * roll_s
    }

    /// The times of roll-in and of steady turn, and the bank between, for a change of heading without its side.
    fn turn(&self, change_rad: f64) -> (f64, f64, f64) {
        let rate_bank_rad = (self.rate_limit_deg_s.to_radians() * self.airspeed_m_s() / GRAVITY_M_S2).atan();
        let bank_rad = self.bank_limit_deg.to_radians().min(rate_bank_rad);
        let roll_s = bank_rad.to_degrees() / self.roll_deg_s;
        let left_rad = change_rad - 2.0 * self.turned_in_roll_rad(roll_s);
        if left_rad >= 0.0 {
            return (roll_s, left_rad / self.rate_rad_s(bank_rad), bank_rad);
        }
        // Too small a change for that bank: roll out at half of it.
        let (mut low_s, mut high_s) = (0.0, roll_s);
        for _ in 0..60 {
            let middle_s = (low_s + high_s) / 2.0;
            let enough = 2.0 * self.turned_in_roll_rad(middle_s) > change_rad;
            if enough { high_s = middle_s } else { low_s = middle_s }
        }
        (high_s, 0.0, (self.roll_deg_s * high_s).to_radians())
    }

    /// Flies a turn from a point about a fix, begun on a heading.
    pub fn fly(&self, fix: Fix, from: (f64, f64), heading_deg: f64, change_deg: f64) -> Flown {
        let (latitude, longitude, frame) = fix.point(from.0, from.1);
        let mut state = [latitude, longitude, frame, heading_deg.to_radians()];
        let (roll_s, steady_s, bank_rad) = self.turn(change_deg.to_radians().abs());
        let side = change_deg.signum();
        let phases = [(roll_s, 0.0, bank_rad), (steady_s, bank_rad, bank_rad), (roll_s, bank_rad, 0.0)];
        let fix_m = place_m(fix.latitude_deg.to_radians(), fix.longitude_deg.to_radians());
        let mut from_fix_m = difference(place_m(latitude, longitude), fix_m);
        let (north, east) = axes(fix.latitude_deg.to_radians(), fix.longitude_deg.to_radians());
        let (mut closest_m, mut length_m, mut path_nm) = (f64::INFINITY, 0.0, Vec::new());
        for (duration_s, from_rad, to_rad) in phases {
            let steps = (duration_s / STEP_S).ceil();
            let step_s = duration_s / steps;
            for index in 0..steps as u32 {
                let bank = |part: f64| {
                    from_rad + (to_rad - from_rad) * (f64::from(index) + part) * step_s / duration_s
                };
                state = self.step(state, step_s, |part| side * self.rate_rad_s(bank(part)));
                let next_m = difference(place_m(state[0], state[1]), fix_m);
                closest_m = closest_m.min(least_distance_m(from_fix_m, next_m));
                let step_m = difference(next_m, from_fix_m);
                length_m += dot(step_m, step_m).sqrt();
                path_nm.push((dot(north, next_m) / 1852.0, dot(east, next_m) / 1852.0));
                from_fix_m = next_m;
            }
        }
        let (north_m_s, east_m_s) = self.velocity_m_s(state[3], 0.0);
        Flown {
            end: fix.place(state),
            track_deg: east_m_s.atan2(north_m_s).to_degrees(),
            duration_s: 2.0 * roll_s + steady_s,
            closest_nm: closest_m / 1852.0,
            length_nm: length_m / 1852.0,
            path_nm,
        }
    }

    /// A step of the classical Runge-Kutta method; `turning` is the rate of turn by the part of the step.
    fn step(&self, state: State, step_s: f64, turning: impl Fn(f64) -> f64) -> State {
        let moved = |by: State, part: f64| -> State {
            std::array::from_fn(|index| state[index] + by[index] * step_s * part)
        };
        let first = self.motion(state, turning(0.0));
        let second = self.motion(moved(first, 0.5), turning(0.5));
        let third = self.motion(moved(second, 0.5), turning(0.5));
        let fourth = self.motion(moved(third, 1.0), turning(1.0));
        let mean = |index: usize| (first[index] + 2.0 * (second[index] + third[index]) + fourth[index]) / 6.0;
        std::array::from_fn(|index| state[index] + mean(index) * step_s)
    }

    /// North and east over the ground, in a frame turned by an angle against the one that heading and wind are counted in.
    fn velocity_m_s(&self, heading: f64, frame: f64) -> (f64, f64) {
        let part =
            |direction: f64, speed_m_s: f64| (speed_m_s * direction.cos(), speed_m_s * direction.sin());
        let air = part(heading + frame, self.airspeed_m_s());
        let wind = part(self.wind_from_deg.to_radians() + frame, -self.wind_kt * KNOT_M_S);
        (air.0 + wind.0, air.1 + wind.1)
    }

    /// How the state changes: airspeed and wind in the frame carried along, turned into local north and east.
    fn motion(&self, [latitude, _, frame, heading]: State, turning_rad_s: f64) -> State {
        let (north_m_s, east_m_s) = self.velocity_m_s(heading, frame);
        let root = (1.0 - ECCENTRICITY_SQUARED * latitude.sin().powi(2)).sqrt();
        let along_meridian_m = EQUATOR_M * (1.0 - ECCENTRICITY_SQUARED) / root.powi(3);
        let longitude_rate = east_m_s * root / (EQUATOR_M * latitude.cos());
        // Meridians converge by the sine of the latitude: what is carried parallel turns against local north by that.
        [north_m_s / along_meridian_m, longitude_rate, longitude_rate * latitude.sin(), turning_rad_s]
    }
}

/// A point on the ellipsoid in earth-centred coordinates.
fn place_m(latitude: f64, longitude: f64) -> [f64; 3] {
    let across_m = EQUATOR_M / (1.0 - ECCENTRICITY_SQUARED * latitude.sin().powi(2)).sqrt();
    [
        across_m * latitude.cos() * longitude.cos(),
        across_m * latitude.cos() * longitude.sin(),
        across_m * (1.0 - ECCENTRICITY_SQUARED) * latitude.sin(),
    ]
}

/// The directions north and east at a point, in the same coordinates.
fn axes(latitude: f64, longitude: f64) -> ([f64; 3], [f64; 3]) {
    let north = [-latitude.sin() * longitude.cos(), -latitude.sin() * longitude.sin(), latitude.cos()];
    (north, [-longitude.sin(), longitude.cos(), 0.0])
}

fn dot(one: [f64; 3], other: [f64; 3]) -> f64 {
    (0..3).map(|axis| one[axis] * other[axis]).sum()
}

fn difference(one: [f64; 3], other: [f64; 3]) -> [f64; 3] {
    std::array::from_fn(|axis| one[axis] - other[axis])
}

/// The least distance from the origin to the straight line between two points; within 20 NM of the fix as good as over the
/// surface.
fn least_distance_m(from_m: [f64; 3], to_m: [f64; 3]) -> f64 {
    let step_m = difference(to_m, from_m);
    let part = (-dot(from_m, step_m) / dot(step_m, step_m)).clamp(0.0, 1.0);
    let nearest_m: [f64; 3] = std::array::from_fn(|axis| from_m[axis] + part * step_m[axis]);
    dot(nearest_m, nearest_m).sqrt()
}
