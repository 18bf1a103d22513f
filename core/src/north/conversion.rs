//! The same direction counted from another north.

use crate::station::Station;
use crate::value::{Bearing, Declination, DirectionChange, GridNorth, MagneticBearing, Radial, TrueBearing};

impl TrueBearing {
    /// Counted from magnetic north: true less variation, positive east ("east is least").
    pub fn to_magnetic(self, variation: Declination) -> MagneticBearing {
        self.counted_from(variation)
    }

    /// Counted from a station's north, as its radials are.
    pub fn to_radial(self, station: &Station) -> Radial {
        self.counted_from(station.declination)
    }

    /// Counted from the north of a grid, whose convergence at the place is the angle from true to grid north, positive east.
    pub fn to_grid(self, convergence: Declination) -> Bearing<GridNorth> {
        self.counted_from(convergence)
    }
}

impl MagneticBearing {
    /// Counted from true north: magnetic plus variation, positive east.
    pub fn to_true(self, variation: Declination) -> TrueBearing {
        self.counted_from(variation.reversed())
    }
}

impl Radial {
    /// Counted from true north: the direction of the aircraft from the station.
    pub fn to_true(self, station: &Station) -> TrueBearing {
        self.counted_from(station.declination.reversed())
    }
}

impl Bearing<GridNorth> {
    /// Counted from true north.
    pub fn to_true(self, convergence: Declination) -> TrueBearing {
        self.counted_from(convergence.reversed())
    }
}

impl Station {
    /// How far the station's north lies from today's magnetic north: what a crew sees between a radial and the magnetic bearing of
    /// the same direction. Positive if the radial reads more.
    ///
    /// A station is aligned when it is set up and the field moves on; differences of several degrees are common.
    pub fn misalignment(&self, variation: Declination) -> DirectionChange {
        self.declination.change_to(variation)
    }
}
