//! What a VOR/DME receiver shows at a place: needle, TO or FROM, DME, and the flag where no use is to be made of them.

use super::{HorizonRule, Indicator, Observation, Station, ToFrom, VOR_CONE_HALF_ANGLE_DEG, radio_horizon};
use crate::value::units::{Angle, Length, Ratio, degree, degrees, feet, nautical_mile, nautical_miles};
use crate::value::{
    ConeHalfAngle, DisplayStep, GroundDistance, Position, Radial, SlantRange, SurfaceHeight, TrueAltitude,
    choice,
};

choice! {
    /// Why a receiver shows neither TO nor FROM.
    Flag {
        /// It shows one of them.
        Clear = 0: "clear",
        /// Abeam the station for the course selected; the needle is good.
        Abeam = 1: "abeam",
        /// In the cone of confusion; DME is good.
        Cone = 2: "cone",
        /// Below the radio horizon of a smooth earth.
        BelowHorizon = 3: "below_horizon",
        /// Farther off than the station reaches.
        OutOfRange = 4: "out_of_range",
    }
}

/// A VOR/DME receiver, with what bounds its reception.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Receiver {
    /// Its indicator.
    pub indicator: Indicator,
    /// How far the station is received along the ground: its service volume's reach, for one.
    pub reach: GroundDistance,
    /// Half-angle of the cone of confusion.
    pub cone: ConeHalfAngle,
    /// Height of the station's antenna above the smooth surface over which the radio horizon is seen.
    pub antenna: SurfaceHeight,
    /// The step in which its DME counts.
    pub dme_step: DisplayStep,
}

impl Default for Receiver {
    /// Ten degrees of full scale, the reach that FAA AIM 1-1-7 gives DME (199 NM), a cone of 50 degrees, an antenna on the
    /// surface, and tenths of a mile, which is common practice.
    fn default() -> Self {
        Self {
            indicator: Indicator::default(),
            reach: GroundDistance::derived(nautical_miles(199.0)),
            cone: ConeHalfAngle::derived(degrees(VOR_CONE_HALF_ANGLE_DEG)),
            antenna: SurfaceHeight::derived(feet(0.0)),
            dme_step: DisplayStep::derived(nautical_miles(0.1)),
        }
    }
}

/// What a receiver shows.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Indication {
    /// Why it shows neither TO nor FROM, if so.
    pub flag: Flag,
    /// TO, FROM or neither.
    pub to_from: ToFrom,
    /// Course deviation, positive when the course lies to the right; none where the VOR is not to be used.
    pub deviation: Option<Angle>,
    /// Where the needle stands, -1 to 1, positive right of centre; none where the VOR is not to be used.
    pub deflection: Option<Ratio>,
    /// The DME as displayed; none out of range and below the horizon.
    pub dme: Option<SlantRange>,
    /// The place itself, with nothing hidden.
    pub observation: Observation,
}

impl Receiver {
    /// What it shows at a place, with a perfect signal and a course selected.
    ///
    /// The flag is, in this order: out of range, below the radio horizon (4/3 of the earth's radius, smooth), in the cone (the aircraft's
    /// angle from the station's vertical below its half-angle), abeam.
    ///
    /// # Accuracy
    /// Radial and DME as [`Station::observe`]; the bounds of reception are models.
    ///
    /// # Degenerate cases
    /// Exactly over or under the antenna there is no radial: the flag is that of the cone.
    ///
    /// # Source
    /// The parts name theirs: [`Indicator::needle`], [`super::cone_radius`], [`radio_horizon`].
    ///
    /// # Example
    /// ```
    /// use lubberline::station::{Flag, Ident, Receiver, Station, ToFrom};
    /// use lubberline::value::{Declination, Elevation, Latitude, Longitude, Position, Radial, TrueAltitude, units::*};
    /// let at = |latitude, longitude| -> Result<Position, lubberline::Error> {
    ///     Ok(Position::new(Latitude::new(degrees(latitude))?, Longitude::new(degrees(longitude))?))
    /// };
    /// let station = Station {
    ///     position: at(61.25, -11.5)?,
    ///     elevation: Elevation::new(feet(420.0))?,
    ///     declination: Declination::new(degrees(-6.0))?,
    ///     ident: Ident::NONE,
    /// };
    /// let altitude = TrueAltitude::new(feet(31_000.0))?;
    /// let shown = Receiver::default().receive(&station, at(61.5, -11.0)?, altitude, Radial::new(degrees(225.0))?);
    /// assert_eq!((shown.flag, shown.to_from), (Flag::Clear, ToFrom::To));
    /// assert!(shown.deflection.is_some_and(|deflection| deflection > Ratio::new::<ratio>(0.4)), "right of centre");
    /// # Ok::<(), lubberline::Error>(())
    /// ```
    pub fn receive(
        &self,
        station: &Station,
        position: Position,
        altitude: TrueAltitude,
        selected: Radial,
    ) -> Indication {
        let observation = station.observe(position, altitude);
        let needle = observation.radial.map(|radial| self.indicator.needle(radial, selected));
        let received = self.received(&observation, altitude.value() - station.elevation.value());
        let flag = match needle {
            _ if received != Flag::Clear => received,
            None => Flag::Cone,
            Some(needle) if needle.to_from == ToFrom::Off => Flag::Abeam,
            Some(_) => Flag::Clear,
        };
        let usable = needle.filter(|_| matches!(flag, Flag::Clear | Flag::Abeam));
        let dme_received = !matches!(flag, Flag::OutOfRange | Flag::BelowHorizon);
        Indication {
            flag,
            to_from: usable.map_or(ToFrom::Off, |needle| needle.to_from),
            deviation: usable.map(|needle| needle.deviation),
            deflection: usable.map(|needle| needle.deflection),
            dme: dme_received.then(|| displayed_dme(observation.dme, self.dme_step)),
            observation,
        }
    }

    /// Whether a place is received, whatever the course.
    fn received(&self, observation: &Observation, above_antenna: Length) -> Flag {
        let above_surface = above_antenna + self.antenna.value();
        let from_vertical = degrees(90.0) - observation.elevation_angle;
        let horizon =
            || radio_horizon(SurfaceHeight::derived(above_surface), self.antenna, HorizonRule::FourThirds);
        if observation.ground_distance > self.reach {
            Flag::OutOfRange
        } else if above_surface < feet(0.0) || observation.ground_distance > horizon() {
            Flag::BelowHorizon
        } else if from_vertical.get::<degree>() < self.cone.value().get::<degree>() {
            Flag::Cone
        } else {
            Flag::Clear
        }
    }
}

/// A slant range as a display shows it: to the nearest of its steps, halves up.
///
/// # Source
/// Common practice: displays count tenths of a mile.
///
/// # Example
/// ```
/// use lubberline::station::displayed_dme;
/// use lubberline::value::{DisplayStep, SlantRange, units::*};
/// assert_eq!(format!("{:.1}", displayed_dme(SlantRange::new(nautical_miles(7.66))?, DisplayStep::new(nautical_miles(0.1))?).value().get::<nautical_mile>()), "7.7");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn displayed_dme(dme: SlantRange, step: DisplayStep) -> SlantRange {
    let step_nm = step.value().get::<nautical_mile>();
    // What a conversion leaves in the last digits must not decide a half.
    let steps = (dme.value().get::<nautical_mile>() / step_nm * (1.0 + 4.0 * f64::EPSILON)).round();
    SlantRange::derived(nautical_miles(steps * step_nm))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::station::Ident;
    use crate::value::{Declination, Elevation};

    /// A station at the equator and an aircraft some way north of it, with a course selected.
    fn shown(miles: f64, altitude_ft: f64, selected_deg: f64) -> Indication {
        let station = Station {
            position: Position::derived(0.0, 0.0),
            elevation: Elevation::new(feet(1_000.0)).unwrap(),
            declination: Declination::ZERO,
            ident: Ident::NONE,
        };
        let receiver =
            Receiver { reach: GroundDistance::new(nautical_miles(130.0)).unwrap(), ..Receiver::default() };
        let aircraft = Position::derived(miles * 1852.0 / 110_574.3, 0.0);
        receiver.receive(
            &station,
            aircraft,
            TrueAltitude::new(feet(altitude_ft)).unwrap(),
            Radial::new(degrees(selected_deg)).unwrap(),
        )
    }

    #[test]
    fn the_flag_says_why() {
        for (miles, altitude_ft, selected_deg, flag, to_from, with_needle, with_dme) in [
            (40.0, 31_000.0, 0.0, Flag::Clear, ToFrom::From, true, true),
            (40.0, 31_000.0, 181.0, Flag::Clear, ToFrom::To, true, true),
            (40.0, 31_000.0, 90.5, Flag::Abeam, ToFrom::Off, true, true),
            (131.0, 31_000.0, 0.0, Flag::OutOfRange, ToFrom::Off, false, false),
            (129.0, 11_000.0, 0.0, Flag::BelowHorizon, ToFrom::Off, false, false),
            (3.0, 900.0, 0.0, Flag::BelowHorizon, ToFrom::Off, false, false),
            (5.0, 31_000.0, 0.0, Flag::Cone, ToFrom::Off, false, true),
            (6.0, 31_000.0, 0.0, Flag::Clear, ToFrom::From, true, true),
            (0.0, 31_000.0, 0.0, Flag::Cone, ToFrom::Off, false, true),
        ] {
            let shown = shown(miles, altitude_ft, selected_deg);
            assert_eq!((shown.flag, shown.to_from), (flag, to_from), "{miles} NM, {altitude_ft} ft");
            assert_eq!(shown.deflection.is_some(), with_needle, "{miles} NM, {altitude_ft} ft");
            assert_eq!(shown.dme.is_some(), with_dme, "{miles} NM, {altitude_ft} ft");
        }
    }

    #[test]
    fn a_display_counts_in_its_steps_and_halves_go_up() {
        for (given, step, shown) in
            [(21.46, 0.1, 21.5), (21.449, 0.1, 21.4), (0.35, 0.1, 0.4), (7.3, 0.25, 7.25), (0.04, 0.1, 0.0)]
        {
            let dme = SlantRange::new(nautical_miles(given)).unwrap();
            let displayed = displayed_dme(dme, DisplayStep::new(nautical_miles(step)).unwrap());
            assert!((displayed.value().get::<nautical_mile>() - shown).abs() < 1e-12, "{given}");
        }
    }
}
