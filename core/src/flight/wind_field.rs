//! The wind an aircraft flies through: one wind, or one that changes with altitude.

use super::place::Place;
use super::vector::Vector;
use crate::plane::Plane;
use crate::value::units::meter;
use crate::value::{TrueAltitude, TrueBearing, TrueNorth};
use crate::wind::{Wind, WindLevel};

/// What the directions of a wind or a heading are counted from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Reference {
    /// The north that the aircraft carries parallel along its path, as a free gyro does: the frame in which leads are defined.
    Carried,
    /// The true north of each place.
    Local,
}

/// A steady wind by altitude: that of the lower level up to it, that of the upper one from it on, by components between them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WindField {
    lower_m: f64,
    upper_m: f64,
    lower: Wind<TrueNorth>,
    upper: Wind<TrueNorth>,
    lower_m_s: Plane,
    upper_m_s: Plane,
    reference: Reference,
}

impl WindField {
    /// One wind everywhere.
    pub fn uniform(wind: Wind<TrueNorth>, reference: Reference) -> Self {
        let velocity = wind.velocity_m_s();
        Self {
            lower_m: 0.0,
            upper_m: 0.0,
            lower: wind,
            upper: wind,
            lower_m_s: velocity,
            upper_m_s: velocity,
            reference,
        }
    }

    /// A wind that changes evenly from one level to another; their altitudes are taken for the aircraft's.
    ///
    /// # Errors
    /// [`crate::Error::LevelsNotAscending`] if the upper level does not lie above the lower one.
    pub fn between(
        lower: WindLevel<TrueNorth>,
        upper: WindLevel<TrueNorth>,
        reference: Reference,
    ) -> Result<Self, crate::Error> {
        crate::wind::wind_between(lower, upper, lower.altitude)?;
        Ok(Self {
            lower_m: lower.altitude.value().get::<meter>(),
            upper_m: upper.altitude.value().get::<meter>(),
            lower: lower.wind,
            upper: upper.wind,
            lower_m_s: lower.wind.velocity_m_s(),
            upper_m_s: upper.wind.velocity_m_s(),
            reference,
        })
    }

    /// The wind at an altitude; that of a level itself to the last bit.
    pub fn at(&self, altitude: TrueAltitude) -> Wind<TrueNorth> {
        let altitude_m = altitude.value().get::<meter>();
        if altitude_m <= self.lower_m {
            self.lower
        } else if altitude_m >= self.upper_m {
            self.upper
        } else {
            Wind::of_velocity_m_s(self.between_m_s(altitude_m))
        }
    }

    /// The same wind in space, when the carried north is turned clockwise.
    pub(super) fn north_turned(self, by_rad: f64) -> Self {
        if self.reference == Reference::Local {
            return self;
        }
        let counted_anew = |wind: Wind<TrueNorth>| Wind {
            from: TrueBearing::from_radians(wind.from.radians() - by_rad),
            speed: wind.speed,
        };
        let (lower, upper) = (counted_anew(self.lower), counted_anew(self.upper));
        Self { lower, upper, lower_m_s: lower.velocity_m_s(), upper_m_s: upper.velocity_m_s(), ..self }
    }

    /// The altitudes between which it changes.
    pub(super) fn lower_m(&self) -> f64 {
        self.lower_m
    }

    pub(super) fn upper_m(&self) -> f64 {
        self.upper_m
    }

    fn between_m_s(&self, altitude_m: f64) -> Plane {
        let share = if altitude_m <= self.lower_m {
            0.0
        } else if altitude_m >= self.upper_m {
            1.0
        } else {
            (altitude_m - self.lower_m) / (self.upper_m - self.lower_m)
        };
        self.lower_m_s + (self.upper_m_s - self.lower_m_s) * share
    }

    /// The velocity of the air over the ground at a place.
    pub(super) fn velocity_m_s(&self, place: &Place, altitude_m: f64) -> Vector {
        let wind = self.between_m_s(altitude_m);
        match self.reference {
            Reference::Carried => place.along_carried(wind.north, wind.east),
            Reference::Local => place.along_true(wind.north, wind.east),
        }
    }
}
