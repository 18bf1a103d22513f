//! The greatest speeds at which a holding pattern may be flown, by authority and altitude.

use crate::Error;
use crate::air::Air;
use crate::value::units::{Ratio, foot, knots, ratio};
use crate::value::{CalibratedAirspeed, IndicatedAltitude, Mach, PressureAltitude, choice};

choice! {
    /// Whose limit of speed holds, and by which edition. The limits change; what is said to be from memory was not read in a copy.
    HoldingSpeedRule {
        /// FAA Aeronautical Information Manual, edition of 20 April 2023, 5-3-8 j 2 (a); the same in AFMAN 11-217V1 (3 January 2005), table
        /// 10.1: 200 kt to 6 000 ft, 230 kt to 14 000 ft, 265 kt above.
        Faa = 0: "faa",
        /// At fields of the US Air Force unless charted otherwise, AIM of 20 April 2023, 5-3-8 j 2 (b)(3); AFMAN 11-217V1 (2005), 10.2.4.1: 310 kt.
        FaaAirForce = 1: "faa_air_force",
        /// At fields of the US Navy unless charted otherwise, AIM of 20 April 2023, 5-3-8 j 2 (b)(4); AFMAN 11-217V1 (2005), 10.2.4.1: 230 kt.
        FaaNavy = 2: "faa_navy",
        /// ICAO Doc 8168 by AFMAN 11-217V1 (3 January 2005), table 18.4, and by an AIP, ENR 1.5: 230 kt to 14 000 ft, 240 kt to 20 000 ft, 265 kt to
        /// 34 000 ft, Mach 0.83 above.
        Icao = 3: "icao",
        /// The same in turbulence, with clearance: 280 kt or Mach 0.8, whichever is less, to 34 000 ft, Mach 0.83 above. To 14 000 ft the AFMAN
        /// prints 280 kt alone, which is the lesser there.
        IcaoTurbulence = 4: "icao_turbulence",
        /// The same where only categories A and B hold: 170 kt to 14 000 ft, turbulence or not; as `Icao` above.
        IcaoCategoriesAB = 5: "icao_categories_a_b",
        /// Transport Canada Aeronautical Information Manual, RAC 10.7, since October 2018, quoted: 200 kt to 6 000 ft, 230 kt to 14 000 ft, 265 kt above.
        Canada = 6: "canada",
        /// The same before October 2018, propeller aircraft, quoted: 175 kt to 30 000 ft.
        CanadaPropeller = 7: "canada_propeller",
        /// The same before October 2018, civil jets, quoted: 230 kt to 14 000 ft, 265 kt above.
        CanadaJet = 8: "canada_jet",
        /// Patterns charted with the icon of 210 kt, AIM of 20 April 2023, 5-3-8 j 2 (b)(1): 210 kt above 6 000 to 14 000 ft, else as `Faa`.
        FaaIcon = 9: "faa_icon",
        /// A climb in the pattern that a procedure prescribes, AIM of 20 April 2023, 5-3-8 j 2 (b)(6), the figure from memory: 310 kt.
        FaaClimbIn = 10: "faa_climb_in",
        /// AIM before 1998, propeller aircraft, from memory: 175 kt.
        FaaPropellerNineties = 11: "faa_propeller_nineties",
        /// AIM before 1998, civil jets, from memory: 200 kt to 6 000 ft, 210 kt to 14 000 ft, 230 kt above.
        FaaJetNineties = 12: "faa_jet_nineties",
        /// ICAO Doc 8168, first edition, propeller aircraft, from memory: 170 kt.
        IcaoFirstEditionPropeller = 13: "icao_first_edition_propeller",
        /// ICAO Doc 8168, first edition, jets, from memory: 210 kt to 6 000 ft, 220 kt to 14 000 ft, 240 kt above.
        IcaoFirstEditionJet = 14: "icao_first_edition_jet",
        /// At Canadian military fields unless noted otherwise, RAC 10.7 since October 2018, quoted: 310 kt.
        CanadaMilitary = 15: "canada_military",
        /// A climb in the pattern, Canada since October 2018, and civil jets before, quoted: 310 kt.
        CanadaClimb = 16: "canada_climb",
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
/// (FAA Aeronautical Information Manual, edition of 3 April 2014, 5-3-8 j 6 (a)).
///
/// # Source
/// Edition and section of each are named at [`HoldingSpeedRule`]; a table of the figures stands in `docs/procedure.md`.
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
        Canada, CanadaClimb, CanadaJet, CanadaMilitary, CanadaPropeller, Faa, FaaAirForce, FaaClimbIn,
        FaaIcon, FaaJetNineties, FaaNavy, FaaPropellerNineties, Icao, IcaoCategoriesAB, IcaoFirstEditionJet,
        IcaoFirstEditionPropeller, IcaoTurbulence,
    };
    let altitude_ft = altitude.value().get::<foot>();
    let (low, middle) = (altitude_ft <= 6_000.0, altitude_ft <= 14_000.0);
    let (indicated_kt, mach) = match rule {
        FaaAirForce | FaaClimbIn | CanadaMilitary | CanadaClimb => (Some(310.0), None),
        FaaNavy => (Some(230.0), None),
        Faa | FaaIcon | FaaJetNineties | Canada if low => (Some(200.0), None),
        FaaIcon | FaaJetNineties if middle => (Some(210.0), None),
        FaaJetNineties => (Some(230.0), None),
        Faa | Canada | CanadaJet if middle => (Some(230.0), None),
        Faa | FaaIcon | Canada | CanadaJet => (Some(265.0), None),
        FaaPropellerNineties => (Some(175.0), None),
        CanadaPropeller if altitude_ft <= 30_000.0 => (Some(175.0), None),
        CanadaPropeller => (None, None),
        IcaoFirstEditionPropeller => (Some(170.0), None),
        IcaoFirstEditionJet if low => (Some(210.0), None),
        IcaoFirstEditionJet if middle => (Some(220.0), None),
        IcaoFirstEditionJet => (Some(240.0), None),
        Icao | IcaoTurbulence | IcaoCategoriesAB if altitude_ft > 34_000.0 => (None, Some(0.83)),
        IcaoTurbulence => (Some(280.0), Some(0.8)),
        IcaoCategoriesAB if middle => (Some(170.0), None),
        Icao if middle => (Some(230.0), None),
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
