//! What a crew should know of a leg before flying it.

use super::{PathBrief, PathLeg, PathSurroundings};
use crate::Error;
use crate::air::{Air, indicated_altitude, pressure_altitude_at};
use crate::procedure::legs::LegPath;
use crate::procedure::{HoldingSpeedRule, holding_speed};
use crate::station::Flag;
use crate::value::units::{Angle, degree, foot, knot, metres, ratio};
use crate::value::{CalibratedAirspeed, Elevation, Mach, PressureAltitude, TrueAirspeed, choice};

choice! {
    /// What a check of a leg has found.
    PathCheckKind {
        /// Keeping to its arc takes more bank than the limit.
        ArcBank = 1: "arc_bank",
        /// A turn begins in the cone of a station, where radials are of no use.
        Cone = 2: "cone",
        /// A racetrack is flown at a higher calibrated airspeed than the rule allows where it ends.
        HoldingAirspeed = 3: "holding_airspeed",
        /// A racetrack is flown at a higher Mach number than the rule allows where it ends.
        HoldingMach = 4: "holding_mach",
    }
}

impl PathCheckKind {
    /// What it says of a leg, without its numbers.
    pub const fn text(self) -> &'static str {
        match self {
            Self::ArcBank => "keeping to the arc takes more bank than the limit",
            Self::Cone => "a turn begins in the cone of a station, where radials are of no use",
            Self::HoldingAirspeed => {
                "the racetrack is flown at a higher calibrated airspeed than the rule allows"
            }
            Self::HoldingMach => "the racetrack is flown at a higher Mach number than the rule allows",
        }
    }
}

/// What a check of a leg has found, with its numbers.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum PathCheck {
    /// See [`PathCheckKind::ArcBank`].
    ArcBank {
        /// What keeps to the arc.
        needed: Angle,
        /// The most there is.
        limit: Angle,
    },
    /// See [`PathCheckKind::Cone`].
    Cone {
        /// The turn of the leg, counted from zero.
        turn: usize,
        /// The station of the surroundings, counted from zero.
        station: usize,
    },
    /// See [`PathCheckKind::HoldingAirspeed`].
    HoldingAirspeed {
        /// What it is flown at.
        calibrated: CalibratedAirspeed,
        /// The most that is allowed.
        limit: CalibratedAirspeed,
        /// Where it ends.
        altitude: PressureAltitude,
        /// By whose rule.
        rule: HoldingSpeedRule,
    },
    /// See [`PathCheckKind::HoldingMach`].
    HoldingMach {
        /// What it is flown at.
        mach: Mach,
        /// The same as an airspeed.
        calibrated: CalibratedAirspeed,
        /// The most that is allowed.
        limit: Mach,
        /// Where it ends.
        altitude: PressureAltitude,
        /// By whose rule.
        rule: HoldingSpeedRule,
    },
}

impl PathCheck {
    /// Which check has found it.
    pub const fn kind(&self) -> PathCheckKind {
        match self {
            Self::ArcBank { .. } => PathCheckKind::ArcBank,
            Self::Cone { .. } => PathCheckKind::Cone,
            Self::HoldingAirspeed { .. } => PathCheckKind::HoldingAirspeed,
            Self::HoldingMach { .. } => PathCheckKind::HoldingMach,
        }
    }

    /// A sentence for a crew, with the numbers; `station` is what the station of a cone is called.
    pub fn sentence(&self, station: &str) -> String {
        let held =
            |calibrated: CalibratedAirspeed, altitude: PressureAltitude, limit, rule: HoldingSpeedRule| {
                format!(
                    "it is flown at {:.0} kt calibrated; the limit at {:.0} ft is {limit} ({})",
                    calibrated.value().get::<knot>(),
                    altitude.value().get::<foot>(),
                    rule.word()
                )
            };
        match *self {
            Self::ArcBank { needed, limit } => format!(
                "keeping to the arc takes {:.0} degrees of bank; the limit is {:.0}",
                needed.get::<degree>(),
                limit.get::<degree>()
            ),
            Self::Cone { turn, .. } => {
                format!("turn {} begins in the cone of {station}, where radials are of no use", turn + 1)
            }
            Self::HoldingAirspeed { calibrated, limit, altitude, rule } => {
                held(calibrated, altitude, format!("{:.0} kt", limit.value().get::<knot>()), rule)
            }
            Self::HoldingMach { calibrated, limit, altitude, rule, .. } => {
                held(calibrated, altitude, format!("Mach {:.2}", limit.value().get::<ratio>()), rule)
            }
        }
    }
}

impl PathBrief {
    /// What the checks find of a leg, counted from zero: whether the limit of bank keeps to its arc, whether a turn begins in the cone of
    /// a station, whether a racetrack is flown faster than the rule allows at the altitude where it ends.
    ///
    /// # Degenerate cases
    /// There is nothing to find of a leg that there is not. Of two limits of a racetrack that are both exceeded the airspeed is told.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] if a racetrack ends outside the atmosphere, or its airspeed there is none.
    ///
    /// # Source
    /// Speeds: [`holding_speed`].
    ///
    /// # Example
    /// ```
    /// use lubberline::procedure::legs::{Conditions, Hold, HoldLength, Leg};
    /// use lubberline::procedure::{HoldingSide, HoldingSpeedRule, TimedLeg};
    /// use lubberline::route::{PathBrief, PathCheckKind, PathSurroundings};
    /// use lubberline::value::{*, units::*};
    /// let hold = Hold {
    ///     fix: Position::new(Latitude::new(degrees(60.0))?, Longitude::new(degrees(-10.0))?),
    ///     inbound: TrueBearing::new(degrees(90.0))?,
    ///     side: HoldingSide::Right,
    ///     length: HoldLength::Time(TimedLeg::OutboundFromLevel, HoldTime::new(seconds(60.0))?),
    /// };
    /// let surroundings = PathSurroundings {
    ///     stations: Vec::new(),
    ///     setting: AltimeterSetting::new(hectopascals(1013.25))?,
    ///     deviation: IsaDeviation::new(kelvins(0.0))?,
    ///     holding_rule: HoldingSpeedRule::Icao,
    /// };
    /// let conditions = Conditions::level(TrueAirspeed::new(knots(290.0))?, TrueAltitude::new(feet(6_000.0))?);
    /// let brief = PathBrief::of(&[Leg::HoldToFix(hold)], &conditions)?;
    /// let checks = brief.checks(0, &surroundings)?;
    /// assert_eq!(checks[0].kind(), PathCheckKind::HoldingAirspeed);
    /// assert_eq!(checks[0].sentence(""), "it is flown at 266 kt calibrated; the limit at 5998 ft is 230 kt (icao)");
    /// # Ok::<(), lubberline::Error>(())
    /// ```
    pub fn checks(&self, leg: usize, surroundings: &PathSurroundings) -> Result<Vec<PathCheck>, Error> {
        let Some(briefed) = self.legs.get(leg) else { return Ok(Vec::new()) };
        let mut found = Vec::new();
        let conditions = &self.path.conditions;
        if let Some(needed) = briefed.arc_bank
            && !briefed.keeps_its_arc(conditions)
        {
            found.push(PathCheck::ArcBank { needed, limit: conditions.limits.bank.value() });
        }
        for (turn, flown) in briefed.turns.iter().enumerate() {
            for (station, known) in surroundings.stations.iter().enumerate() {
                if known.seen_from(&flown.begin).flag == Flag::Cone {
                    found.push(PathCheck::Cone { turn, station });
                }
            }
        }
        if briefed.code.path() == LegPath::Hold {
            found.extend(held_too_fast(briefed, conditions.true_airspeed, surroundings)?);
        }
        Ok(found)
    }
}

/// Whether a racetrack is flown faster than the rule allows at the altitude where it ends.
fn held_too_fast(
    leg: &PathLeg,
    true_airspeed: TrueAirspeed,
    surroundings: &PathSurroundings,
) -> Result<Option<PathCheck>, Error> {
    let (setting, deviation) = (surroundings.setting, surroundings.deviation);
    let sea = Elevation::derived(metres(0.0));
    let altitude = pressure_altitude_at(leg.end.altitude, setting, sea, deviation)?;
    let air = Air::new(altitude, deviation);
    let rule = surroundings.holding_rule;
    let most = holding_speed(rule, indicated_altitude(altitude, setting));
    let calibrated = air.calibrated_from_true(true_airspeed)?;
    let mach = air.mach_from_true(true_airspeed)?;
    Ok(match (most.indicated, most.mach) {
        (Some(limit), _) if calibrated > limit => {
            Some(PathCheck::HoldingAirspeed { calibrated, limit, altitude, rule })
        }
        (_, Some(limit)) if mach > limit => {
            Some(PathCheck::HoldingMach { mach, calibrated, limit, altitude, rule })
        }
        _ => None,
    })
}
