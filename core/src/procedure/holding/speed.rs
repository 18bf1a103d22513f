//! The greatest speeds at which a holding pattern may be flown, by authority and altitude.

use crate::Error;
use crate::air::Air;
use crate::value::units::{Ratio, foot, knots, ratio};
use crate::value::{CalibratedAirspeed, IndicatedAltitude, Mach, PressureAltitude, choice};

choice! {
    /// Whose limit of speed holds. The limits change: each names its edition.
    HoldingSpeedRule {
        /// FAA Aeronautical Information Manual 5-3-8 j: 200 kt to 6 000 ft, 230 kt to 14 000 ft, 265 kt above.
        Faa = 0: "faa",
        /// The same, at fields of the US Air Force unless charted otherwise: 310 kt.
        FaaAirForce = 1: "faa_air_force",
        /// The same, at fields of the US Navy unless charted otherwise: 230 kt.
        FaaNavy = 2: "faa_navy",
        /// ICAO Doc 8168 (as of AFMAN 11-217V1 of 2005, table 18.4): 230 kt to 14 000 ft, 240 kt to 20 000 ft, 265 kt to
        /// 34 000 ft, Mach 0.83 above.
        Icao = 3: "icao",
        /// The same in turbulence, with clearance: 280 kt or Mach 0.8, whichever is less, to 34 000 ft, Mach 0.83 above.
        IcaoTurbulence = 4: "icao_turbulence",
        /// The same where only categories A and B hold: 170 kt to 14 000 ft, turbulence or not; as `Icao` above.
        IcaoCategoriesAB = 5: "icao_categories_a_b",
        /// Canada since October 2018: 200 kt to 6 000 ft, 230 kt to 14 000 ft, 265 kt above.
        Canada = 6: "canada",
        /// Canada before October 2018, propeller aircraft: 175 kt to 30 000 ft.
        CanadaPropeller = 7: "canada_propeller",
        /// Canada before October 2018, civil jets: 230 kt to 14 000 ft, 265 kt above.
        CanadaJet = 8: "canada_jet",
    }
}

/// A limit of speed: an indicated airspeed, a Mach number, both of which hold, or neither.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HoldingSpeed {
    /// The greatest indicated airspeed, taken for a calibrated one.
    pub indicated: Option<CalibratedAirspeed>,
    /// The greatest Mach number.
    pub mach: Option<Mach>,
}

impl HoldingSpeed {
    fn of(indicated_kt: Option<f64>, mach: Option<f64>) -> Self {
        Self {
            indicated: indicated_kt.map(|speed_kt| CalibratedAirspeed::derived(knots(speed_kt))),
            mach: mach.map(|number| Mach::derived(Ratio::new::<ratio>(number))),
        }
    }

    /// The greatest calibrated airspeed that both limits leave at a pressure altitude; none where there is no limit.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] of an airspeed, which no published limit comes to.
    pub fn calibrated_at(self, altitude: PressureAltitude) -> Result<Option<CalibratedAirspeed>, Error> {
        let by_mach = self.mach.map(|mach| Air::standard(altitude).calibrated_from_mach(mach)).transpose()?;
        Ok(match (self.indicated, by_mach) {
            (Some(one), Some(other)) => Some(if other < one { other } else { one }),
            (one, other) => one.or(other),
        })
    }
}

/// The greatest speed of a holding pattern at an altitude or flight level.
///
/// Each altitude that bounds a band belongs to the band below it.
///
/// # Degenerate cases
/// Above 30 000 ft a propeller aircraft had no limit of its own in Canada: none is given. Holding of helicopters on COPTER
/// procedures is laid out for at least 90 kt by the FAA, which is no limit. Begin to slow within three minutes of the fix
/// (FAA Aeronautical Information Manual 5-3-8 j).
///
/// # Source
/// Named at [`HoldingSpeedRule`]. FAA and Air Force: AFMAN 11-217V1 (2005), table 10.1; ICAO between 14 000 and 34 000 ft: a State AIP,
/// ENR 1.5. Canada: Transport Canada Aeronautical Information Manual, RAC 10.7, read in quotations only.
///
/// # Example
/// ```
/// use lubberline::procedure::{HoldingSpeedRule, holding_speed};
/// use lubberline::value::{IndicatedAltitude, units::*};
/// let limit = |altitude_ft| -> Result<_, lubberline::Error> {
///     Ok(holding_speed(HoldingSpeedRule::Faa, IndicatedAltitude::new(feet(altitude_ft))?))
/// };
/// assert!(limit(6_000.0)?.indicated < limit(6_001.0)?.indicated);
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn holding_speed(rule: HoldingSpeedRule, altitude: IndicatedAltitude) -> HoldingSpeed {
    use HoldingSpeedRule::{
        Canada, CanadaJet, CanadaPropeller, Faa, FaaAirForce, FaaNavy, Icao, IcaoCategoriesAB, IcaoTurbulence,
    };
    let altitude_ft = altitude.value().get::<foot>();
    let (indicated_kt, mach) = match rule {
        FaaAirForce => (Some(310.0), None),
        FaaNavy => (Some(230.0), None),
        Faa | Canada if altitude_ft <= 6_000.0 => (Some(200.0), None),
        Faa | Canada | CanadaJet if altitude_ft <= 14_000.0 => (Some(230.0), None),
        Faa | Canada | CanadaJet => (Some(265.0), None),
        CanadaPropeller if altitude_ft <= 30_000.0 => (Some(175.0), None),
        CanadaPropeller => (None, None),
        Icao | IcaoTurbulence | IcaoCategoriesAB if altitude_ft > 34_000.0 => (None, Some(0.83)),
        IcaoTurbulence => (Some(280.0), Some(0.8)),
        IcaoCategoriesAB if altitude_ft <= 14_000.0 => (Some(170.0), None),
        Icao if altitude_ft <= 14_000.0 => (Some(230.0), None),
        Icao | IcaoCategoriesAB if altitude_ft <= 20_000.0 => (Some(240.0), None),
        Icao | IcaoCategoriesAB => (Some(265.0), None),
    };
    HoldingSpeed::of(indicated_kt, mach)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{feet, knot};

    #[test]
    fn the_lesser_of_two_limits_depends_on_the_altitude() {
        let at = |altitude_ft: f64| {
            let limit = holding_speed(
                HoldingSpeedRule::IcaoTurbulence,
                IndicatedAltitude::new(feet(altitude_ft)).unwrap(),
            );
            let altitude = PressureAltitude::new(feet(altitude_ft)).unwrap();
            limit.calibrated_at(altitude).unwrap().unwrap().value().get::<knot>()
        };
        assert!((at(20_000.0) - 280.0).abs() < 1e-9, "the airspeed, low");
        let crossover = crate::air::crossover_altitude(
            CalibratedAirspeed::new(knots(280.0)).unwrap(),
            Mach::new(Ratio::new::<ratio>(0.8)).unwrap(),
        )
        .unwrap()
        .value()
        .get::<foot>();
        assert!((33_000.0..34_000.0).contains(&crossover), "{crossover}");
        assert!(at(crossover - 10.0) == at(20_000.0) && at(crossover + 100.0) < 280.0, "Mach, high");
    }

    #[test]
    fn above_its_levels_a_propeller_has_no_limit() {
        let limit =
            holding_speed(HoldingSpeedRule::CanadaPropeller, IndicatedAltitude::new(feet(30_001.0)).unwrap());
        assert_eq!(limit.calibrated_at(PressureAltitude::new(feet(30_001.0)).unwrap()), Ok(None));
    }
}
