//! Directions, the norths they are counted from, and the signed changes between them.

use std::fmt::{self, Debug};
use std::marker::PhantomData;

use super::Quantity;
use super::units::{Angle, degree, degrees};
use crate::Error;

mod sealed {
    pub trait Sealed {}
}

/// A north that directions are counted from. Two directions meet in one formula only if they share it.
pub trait North: sealed::Sealed + Copy + Debug + PartialEq + 'static {
    /// The north in words.
    const NAME: &'static str;
}

macro_rules! norths {
    ($($(#[$doc:meta])* $name:ident: $word:literal;)+) => {$(
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq)]
        pub struct $name;
        impl sealed::Sealed for $name {}
        impl North for $name { const NAME: &'static str = $word; }
    )+};
}

norths! {
    /// The direction of the geographic pole.
    TrueNorth: "true";
    /// The direction of the compass, undisturbed.
    MagneticNorth: "magnetic";
    /// The direction of the north of a chart's grid.
    GridNorth: "grid";
    /// The north of one station, as its antenna was set up; its radials are counted from it.
    StationNorth: "station";
}

/// A direction clockwise from a north, in [0, 360) degrees.
///
/// It is stored in degrees as given (reduced to the circle exactly), so that whole degrees stay whole.
///
/// # Example
/// ```
/// use lubberline::value::{TrueBearing, units::degrees};
/// let course = TrueBearing::new(degrees(-90.0))?;
/// assert_eq!(course, TrueBearing::new(degrees(270.0))?);
/// assert!((course.reciprocal().angle() - degrees(90.0)).abs() < degrees(1e-9));
/// # Ok::<(), lubberline::Error>(())
/// ```
#[derive(Clone, Copy, PartialEq)]
pub struct Bearing<N: North> {
    degrees: f64,
    north: PhantomData<N>,
}

/// A direction from true north.
pub type TrueBearing = Bearing<TrueNorth>;
/// A direction from magnetic north.
pub type MagneticBearing = Bearing<MagneticNorth>;
/// A direction from a station's own north.
pub type Radial = Bearing<StationNorth>;

impl<N: North> Bearing<N> {
    /// Accepts any finite angle and reduces it to [0, 360) degrees.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] for an angle that is infinite or not a number.
    pub fn new(angle: Angle) -> Result<Self, Error> {
        Self::named("bearing", angle.get::<degree>())
    }

    #[inline]
    pub(crate) fn named(parameter: &'static str, degrees: f64) -> Result<Self, Error> {
        Ok(Self::from_degrees(Quantity::Bearing.check(parameter, degrees)?))
    }

    /// A direction known to be finite.
    #[inline]
    pub(crate) fn from_degrees(degrees: f64) -> Self {
        if (0.0..360.0).contains(&degrees) {
            return Self { degrees, north: PhantomData };
        }
        let reduced = degrees.rem_euclid(360.0);
        // A tiny negative angle rounds up to the full circle; what is not a number stays so.
        Self { degrees: if reduced >= 360.0 { 0.0 } else { reduced }, north: PhantomData }
    }

    #[inline]
    pub(crate) fn from_radians(radians: f64) -> Self {
        Self::from_degrees(radians.to_degrees())
    }

    /// The direction as an angle.
    pub fn angle(self) -> Angle {
        degrees(self.degrees)
    }

    #[inline]
    pub(crate) fn degrees(self) -> f64 {
        self.degrees
    }

    #[inline]
    pub(crate) fn radians(self) -> f64 {
        self.degrees.to_radians()
    }

    /// The opposite direction.
    #[must_use]
    pub fn reciprocal(self) -> Self {
        Self::from_degrees(self.degrees + 180.0)
    }

    /// This direction turned by a signed change, right positive.
    #[must_use]
    pub fn turned_by(self, change: DirectionChange) -> Self {
        Self::from_degrees(self.degrees + change.degrees)
    }

    /// The shortest signed change from this direction to another, right positive.
    pub fn change_to(self, other: Self) -> DirectionChange {
        DirectionChange::from_degrees(other.degrees - self.degrees)
    }

    /// From this direction to another, to the right for a positive sign, to the left for a negative one: in [0, 360) degrees.
    pub(crate) fn way_round_deg(self, other: Self, sign: f64) -> f64 {
        let round_deg = (sign * (other.degrees - self.degrees)).rem_euclid(360.0);
        // A tiny negative angle rounds up to the full circle.
        if round_deg >= 360.0 { 0.0 } else { round_deg }
    }

    /// The same direction counted from a north that lies `declination` east of this one.
    ///
    /// It is a change of north by a known angle, which is why it has to be named.
    #[must_use]
    pub(crate) fn counted_from<M: North>(self, declination: Declination) -> Bearing<M> {
        Bearing::from_degrees(self.degrees - declination.degrees)
    }
}

impl<N: North> Debug for Bearing<N> {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(formatter, "{} deg {}", self.degrees, N::NAME)
    }
}

/// A signed change of direction in (-180, 180] degrees, right positive.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct DirectionChange {
    degrees: f64,
}

impl DirectionChange {
    /// Accepts any finite angle and reduces it to (-180, 180] degrees.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] for an angle that is infinite or not a number.
    pub fn new(angle: Angle) -> Result<Self, Error> {
        Ok(Self::from_degrees(Quantity::DirectionChange.check("change of direction", angle.get::<degree>())?))
    }

    pub(crate) fn from_degrees(degrees: f64) -> Self {
        let reduced = degrees % 360.0;
        Self {
            degrees: if reduced > 180.0 {
                reduced - 360.0
            } else if reduced <= -180.0 {
                reduced + 360.0
            } else {
                reduced
            },
        }
    }

    /// The change as an angle, right positive.
    pub fn angle(self) -> Angle {
        degrees(self.degrees)
    }

    pub(crate) fn degrees(self) -> f64 {
        self.degrees
    }
}

/// The angle from one north to another, positive east: a station's declination, or magnetic variation.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Declination {
    degrees: f64,
}

impl Declination {
    /// No difference between the norths.
    pub const ZERO: Self = Self { degrees: 0.0 };

    /// Accepts an angle from -180 to 180 degrees, positive east.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] beyond half a circle, and for an angle that is not a number.
    pub fn new(angle: Angle) -> Result<Self, Error> {
        Self::named("declination", angle.get::<degree>())
    }

    pub(crate) fn named(parameter: &'static str, degrees: f64) -> Result<Self, Error> {
        Ok(Self { degrees: Quantity::Declination.check(parameter, degrees)? })
    }

    /// A declination known by its derivation to be sound.
    pub(crate) fn from_degrees(degrees: f64) -> Self {
        Self { degrees }
    }

    /// The declination as an angle, positive east.
    pub fn angle(self) -> Angle {
        degrees(self.degrees)
    }

    /// How far the north of another declination lies to the right of the north of this one.
    pub fn change_to(self, other: Self) -> DirectionChange {
        DirectionChange::from_degrees(other.degrees - self.degrees)
    }

    /// The same angle the other way.
    pub(crate) fn reversed(self) -> Self {
        Self { degrees: -self.degrees }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_bearing_is_reduced_to_the_circle() {
        for (given, expected) in [(360.0, 0.0), (-1e-20, 0.0), (725.0, 5.0), (-90.0, 270.0), (30.0, 30.0)] {
            assert_eq!(TrueBearing::from_degrees(given).degrees(), expected, "{given}");
        }
    }

    #[test]
    fn a_change_takes_the_short_way_and_half_a_circle_is_positive() {
        for (from, to, expected) in
            [(350.0, 10.0, 20.0), (10.0, 350.0, -20.0), (0.0, 180.0, 180.0), (180.0, 0.0, 180.0)]
        {
            let change = TrueBearing::from_degrees(from).change_to(TrueBearing::from_degrees(to));
            assert_eq!(change.degrees(), expected, "{from} to {to}");
        }
    }
}
