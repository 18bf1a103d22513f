//! The wind an aircraft flies through: one wind, or one that changes with altitude.

use super::place::Place;
use super::vector::Vector;
use crate::Error;
use crate::plane::Plane;
use crate::value::units::meter;
use crate::value::{Quantity, TrueAltitude, TrueBearing, TrueNorth};
use crate::wind::{Wind, WindLevel, WindsAloft};

/// What the directions of a wind or a heading are counted from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Reference {
    /// The north that the aircraft carries parallel along its path, as a free gyro does: the frame in which leads are defined.
    Carried,
    /// The true north of each place.
    Local,
}

/// The most levels of a field: it is copied with the flight, and allocates nothing.
const MOST_LEVELS: usize = 16;

/// A steady wind by altitude: that of the lowest level up to it, that of the highest one from it on, by components between two.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WindField {
    lowest: Level,
    higher: [Level; MOST_LEVELS - 1],
    /// How many of the higher ones there are.
    count: usize,
    reference: Reference,
}

#[derive(Debug, Clone, Copy, PartialEq)]
struct Level {
    altitude_m: f64,
    wind: Wind<TrueNorth>,
    velocity_m_s: Plane,
}

impl Level {
    fn new(altitude_m: f64, wind: Wind<TrueNorth>) -> Self {
        Self { altitude_m, wind, velocity_m_s: wind.velocity_m_s() }
    }

    fn of(level: &WindLevel<TrueNorth>) -> Self {
        Self::new(level.altitude.value().get::<meter>(), level.wind)
    }
}

impl WindField {
    /// One wind everywhere.
    pub fn uniform(wind: Wind<TrueNorth>, reference: Reference) -> Self {
        let lowest = Level::new(0.0, wind);
        Self { lowest, higher: [lowest; MOST_LEVELS - 1], count: 0, reference }
    }

    /// A wind that changes evenly from one level to another; their altitudes are taken for the aircraft's.
    ///
    /// # Errors
    /// [`Error::LevelsNotAscending`] if the upper level does not lie above the lower one.
    pub fn between(
        lower: WindLevel<TrueNorth>,
        upper: WindLevel<TrueNorth>,
        reference: Reference,
    ) -> Result<Self, Error> {
        crate::wind::wind_between(lower, upper, lower.altitude)?;
        let upper = Level::of(&upper);
        Ok(Self { lowest: Level::of(&lower), higher: [upper; MOST_LEVELS - 1], count: 1, reference })
    }

    /// Winds aloft at up to sixteen levels; their altitudes are taken for the aircraft's.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] if there are more.
    pub fn aloft(winds: &WindsAloft<TrueNorth>, reference: Reference) -> Result<Self, Error> {
        let (lowest, above) = winds.levels();
        let lowest = Level::of(lowest);
        let mut field = Self { lowest, higher: [lowest; MOST_LEVELS - 1], count: above.len(), reference };
        Quantity::FlightWindLevels.check("wind_level_count", (above.len() + 1) as f64)?;
        for (place, level) in field.higher.iter_mut().zip(above) {
            *place = Level::of(level);
        }
        Ok(field)
    }

    fn higher(&self) -> impl Iterator<Item = &Level> {
        self.higher.iter().take(self.count)
    }

    /// The wind at an altitude; that of a level itself to the last bit.
    pub fn at(&self, altitude: TrueAltitude) -> Wind<TrueNorth> {
        let altitude_m = altitude.value().get::<meter>();
        match self.around(altitude_m) {
            (level, None) => level.wind,
            (below, Some(_)) if altitude_m <= below.altitude_m => below.wind,
            _ => Wind::of_velocity_m_s(self.between_m_s(altitude_m)),
        }
    }

    /// The level below an altitude, and that above if it lies between two.
    fn around(&self, altitude_m: f64) -> (&Level, Option<&Level>) {
        let mut below = &self.lowest;
        if altitude_m <= below.altitude_m {
            return (below, None);
        }
        for level in self.higher() {
            if altitude_m < level.altitude_m {
                return (below, Some(level));
            }
            below = level;
        }
        (below, None)
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
        let turned = |level: Level| Level::new(level.altitude_m, counted_anew(level.wind));
        Self { lowest: turned(self.lowest), higher: self.higher.map(turned), ..self }
    }

    /// The altitudes at which it begins to change otherwise.
    pub(super) fn altitudes_m(&self) -> impl Iterator<Item = f64> {
        std::iter::once(&self.lowest).chain(self.higher()).map(|level| level.altitude_m)
    }

    fn between_m_s(&self, altitude_m: f64) -> Plane {
        match self.around(altitude_m) {
            (level, None) => level.velocity_m_s,
            (below, Some(above)) => {
                let share = (altitude_m - below.altitude_m) / (above.altitude_m - below.altitude_m);
                below.velocity_m_s + (above.velocity_m_s - below.velocity_m_s) * share
            }
        }
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{feet, knot, knots};
    use crate::value::{PressureAltitude, WindSpeed};

    fn level(altitude_ft: f64, from_deg: f64, speed_kt: f64) -> WindLevel<TrueNorth> {
        WindLevel {
            altitude: PressureAltitude::new(feet(altitude_ft)).unwrap(),
            wind: Wind {
                from: TrueBearing::from_degrees(from_deg),
                speed: WindSpeed::new(knots(speed_kt)).unwrap(),
            },
        }
    }

    #[test]
    fn many_levels_are_the_winds_aloft_of_them() {
        let winds = WindsAloft::new(
            level(3_000.0, 200.0, 12.0),
            vec![level(6_000.0, 230.0, 20.0), level(9_000.0, 260.0, 33.0), level(18_000.0, 300.0, 70.0)],
        )
        .unwrap();
        let field = WindField::aloft(&winds, Reference::Carried).unwrap();
        for altitude_ft in [0.0, 3_000.0, 4_000.0, 6_000.0, 7_500.0, 9_000.0, 17_999.0, 18_000.0, 40_000.0] {
            let given = field.at(TrueAltitude::new(feet(altitude_ft)).unwrap());
            let expected = winds.at(PressureAltitude::new(feet(altitude_ft)).unwrap());
            let off = given.velocity_m_s() + expected.velocity_m_s() * -1.0;
            assert!(off.length() < 1e-12, "{altitude_ft}: {given:?}, not {expected:?}");
        }
        let at_level = field.at(TrueAltitude::new(feet(9_000.0)).unwrap());
        assert_eq!(at_level.speed.value().get::<knot>(), knots(33.0).get::<knot>());
        assert_eq!(field.altitudes_m().count(), 4);
    }

    #[test]
    fn there_is_room_for_sixteen_levels() {
        let winds = |count: u32| {
            let above = (1..count).map(|number| level(1_000.0 * f64::from(number), 270.0, f64::from(number)));
            WindsAloft::new(level(0.0, 270.0, 0.0), above.collect()).unwrap()
        };
        let field = WindField::aloft(&winds(16), Reference::Local).unwrap();
        let top = field.at(TrueAltitude::new(feet(50_000.0)).unwrap());
        assert_eq!(top, level(0.0, 270.0, 15.0).wind);
        let refused = WindField::aloft(&winds(17), Reference::Local).unwrap_err();
        assert_eq!(refused.to_string(), "wind_level_count is 17; allowed: from 1.0 to 16.0");
    }
}
