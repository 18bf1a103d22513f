//! Vectors of the plane about a fix: north and east, in metres or metres per second.

use std::ops::{Add, Mul, Sub};

use crate::many::functions::sin_cos_deg;

/// A vector with a north and an east part. In a turn's own frame: along the first heading, and to the turn's side.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Plane {
    pub north: f64,
    pub east: f64,
}

impl Plane {
    pub const ZERO: Self = Self { north: 0.0, east: 0.0 };

    /// The unit vector that points along a direction.
    #[inline]
    pub fn along(direction_rad: f64) -> Self {
        let (sine, cosine) = direction_rad.sin_cos();
        Self { north: cosine, east: sine }
    }

    /// The same of a direction in degrees, up to 1e9 either way; exact for whole quarters of a circle. What is counted in degrees comes
    /// this way, what turns are integrated in, radians, by the other.
    #[inline]
    pub fn along_deg(direction_deg: f64) -> Self {
        let (sine, cosine) = sin_cos_deg::<false>(direction_deg);
        Self { north: cosine, east: sine }
    }

    #[inline]
    pub fn dot(self, other: Self) -> f64 {
        self.north * other.north + self.east * other.east
    }

    /// Positive when `other` points to the right of `self`.
    #[inline]
    pub fn cross(self, other: Self) -> f64 {
        self.north * other.east - self.east * other.north
    }

    #[inline]
    pub fn length(self) -> f64 {
        self.north.hypot(self.east)
    }

    /// Turned clockwise by the direction of a unit vector.
    #[inline]
    pub fn turned(self, unit: Self) -> Self {
        Self {
            north: self.north * unit.north - self.east * unit.east,
            east: self.north * unit.east + self.east * unit.north,
        }
    }

    /// The mirror image across the first axis.
    #[inline]
    pub fn mirrored(self) -> Self {
        Self { north: self.north, east: -self.east }
    }
}

impl Add for Plane {
    type Output = Self;
    #[inline]
    fn add(self, other: Self) -> Self {
        Self { north: self.north + other.north, east: self.east + other.east }
    }
}

impl Sub for Plane {
    type Output = Self;
    #[inline]
    fn sub(self, other: Self) -> Self {
        Self { north: self.north - other.north, east: self.east - other.east }
    }
}

impl Mul<f64> for Plane {
    type Output = Self;
    #[inline]
    fn mul(self, factor: f64) -> Self {
        Self { north: self.north * factor, east: self.east * factor }
    }
}
