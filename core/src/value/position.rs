//! A point on the WGS-84 ellipsoid.

use super::Quantity;
use super::units::{Angle, degree, degrees};
use crate::Error;

/// Geodetic latitude, north positive, stored in degrees as given.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Latitude {
    degrees: f64,
}

impl Latitude {
    /// Accepts -90 to 90 degrees.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] beyond a pole, and for an angle that is not a number.
    pub fn new(angle: Angle) -> Result<Self, Error> {
        Self::named("latitude", angle.get::<degree>())
    }

    pub(crate) fn named(parameter: &'static str, degrees: f64) -> Result<Self, Error> {
        Ok(Self { degrees: Quantity::Latitude.check(parameter, degrees)?.clamp(-90.0, 90.0) })
    }

    /// The latitude as an angle, north positive.
    pub fn angle(self) -> Angle {
        degrees(self.degrees)
    }
}

/// Longitude, east positive, reduced to [-180, 180) degrees.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Longitude {
    degrees: f64,
}

impl Longitude {
    /// Accepts any finite angle and reduces it to [-180, 180) degrees.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] for an angle that is infinite or not a number.
    pub fn new(angle: Angle) -> Result<Self, Error> {
        Self::named("longitude", angle.get::<degree>())
    }

    pub(crate) fn named(parameter: &'static str, degrees: f64) -> Result<Self, Error> {
        Ok(Self::reduced(Quantity::Longitude.check(parameter, degrees)?))
    }

    /// A longitude known to be finite.
    pub(crate) fn reduced(degrees: f64) -> Self {
        // Each step is exact, so that no longitude loses its last bit.
        let within = degrees % 360.0;
        Self {
            degrees: if within >= 180.0 {
                within - 360.0
            } else if within < -180.0 {
                within + 360.0
            } else {
                within
            },
        }
    }

    /// The longitude as an angle, east positive.
    pub fn angle(self) -> Angle {
        degrees(self.degrees)
    }
}

/// A point on the surface of the WGS-84 ellipsoid.
///
/// # Example
/// ```
/// use lubberline::value::{Latitude, Longitude, Position, units::degrees};
/// let field = Position::new(Latitude::new(degrees(61.5))?, Longitude::new(degrees(-12.25))?);
/// assert!(field.latitude().angle() > degrees(61.0));
/// # Ok::<(), lubberline::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Position {
    latitude: Latitude,
    longitude: Longitude,
}

impl Position {
    /// The point at a latitude and a longitude, which cannot be exchanged by mistake.
    pub const fn new(latitude: Latitude, longitude: Longitude) -> Self {
        Self { latitude, longitude }
    }

    /// A point whose latitude and longitude come from a computation on the ellipsoid.
    pub(crate) fn derived(latitude_deg: f64, longitude_deg: f64) -> Self {
        Self { latitude: Latitude { degrees: latitude_deg }, longitude: Longitude::reduced(longitude_deg) }
    }

    /// Its latitude.
    pub fn latitude(self) -> Latitude {
        self.latitude
    }

    /// Its longitude.
    pub fn longitude(self) -> Longitude {
        self.longitude
    }

    pub(crate) fn latitude_deg(self) -> f64 {
        self.latitude.degrees
    }

    pub(crate) fn longitude_deg(self) -> f64 {
        self.longitude.degrees
    }
}
