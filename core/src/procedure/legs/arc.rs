//! Round an arc, and the turn off it.

use super::flight::{Flight, ON_THE_LINE_M, Path};
use super::ground_path::{SegmentKind, Shape};
use super::join::ALONG_THE_ARC_DEG;
use super::leg::{Fix, Leg, Passage};
use crate::earth::{Circle, direct, inverse};
use crate::lead::{ArcSense, ArcTurn, RadialFlown, off_arc};
use crate::numeric::quadrature;
use crate::turn::RolledTurn;
use crate::value::units::{degree, degrees, meter, meter_per_second, seconds};
use crate::value::{ArcRadius, GroundDistance, Position, TrueBearing, TrueNorth};
use crate::{Error, LegReason};

/// A course within this of a radial of the arc's centre is that radial, in degrees.
const ON_A_RADIAL_DEG: f64 = 1.0;

impl Flight<'_> {
    /// The course along a circle about a centre, where the aircraft is.
    pub fn tangent(&self, center: Position, sense: ArcSense) -> Result<TrueBearing, Error> {
        let outward = inverse(center, self.now.position).final_bearing;
        let outward = outward.ok_or_else(|| self.refuse("the aircraft is at the centre of the arc"))?;
        Ok(TrueBearing::from_degrees(outward.degrees() + 90.0 * f64::from(sense.code())))
    }

    /// Round an arc to its fix, and through the turn off it where that is led.
    pub fn fly_arc(
        &mut self,
        center: Position,
        radius: GroundDistance,
        sense: ArcSense,
    ) -> Result<(), Error> {
        let Some(Fix { position, passage }) = self.legs.get(self.leg).and_then(Leg::ends_at) else {
            return Err(self.refuse("an arc ends at a fix"));
        };
        let (from, to) = (inverse(center, self.now.position), inverse(center, position));
        let (Some(from), Some(to)) = (from.initial_bearing, to.initial_bearing) else {
            return Err(self.refuse("its fix is the centre of the arc"));
        };
        let sign = f64::from(sense.code());
        let mut sweep_deg = from.way_round_deg(to, sign);
        // A fix that has just been passed is not once more round.
        if sweep_deg > 359.0 {
            sweep_deg = 0.0;
        }
        let next = if self.leg + 1 < self.legs.len() && passage == Passage::FlyBy {
            Some(self.path(self.leg + 1)?)
        } else {
            None
        };
        let mut led = None;
        if let Some(Path::Line(line)) = next {
            let abeam = line.abeam(position);
            let along = TrueBearing::from_degrees(to.degrees() + 90.0 * sign);
            let square = abeam.bearing.change_to(to).degrees().abs();
            let angle_deg = along.change_to(abeam.bearing).degrees().abs();
            if abeam.cross_track.get::<meter>().abs() <= ON_THE_LINE_M && angle_deg > ALONG_THE_ARC_DEG {
                let flown = if square < ON_A_RADIAL_DEG {
                    RadialFlown::Outbound
                } else if square > 180.0 - ON_A_RADIAL_DEG {
                    RadialFlown::Inbound
                } else {
                    return Err(self.refuse(LegReason::NeitherTangentNorRadial {
                        angle_deg,
                        along_deg: ALONG_THE_ARC_DEG,
                        radial_deg: ON_A_RADIAL_DEG,
                    }));
                };
                let turn = off_arc(
                    to,
                    flown,
                    ArcRadius::new(radius.value())?,
                    sense,
                    self.conditions.true_airspeed,
                    self.conditions.wind,
                    &self.conditions.limits,
                )?;
                let lead_deg = turn.angle_at_station.get::<degree>();
                if sweep_deg < lead_deg {
                    return Err(self.refuse(LegReason::ArcTooShort { left_deg: sweep_deg, lead_deg }));
                }
                sweep_deg -= lead_deg;
                led = Some(turn);
            }
        }
        self.arc(center, radius, from, sign * sweep_deg)?;
        if let Some(turn) = led {
            let course = TrueBearing::from_degrees(turn.bearing_at_roll_in.degrees() + 90.0 * sign);
            self.arc_turn(&turn, course)?;
        }
        Ok(())
    }

    /// A turn between a radial and an arc, begun now; it was worked out with the course `course`.
    pub fn arc_turn(&mut self, turn: &ArcTurn<TrueNorth>, course: TrueBearing) -> Result<(), Error> {
        let flown =
            RolledTurn::new(self.conditions.true_airspeed, &self.conditions.limits, turn.heading_change);
        self.turn(flown, course, self.leg + 1)
    }

    /// A part of a circle from a bearing of its centre through a signed angle.
    pub fn arc(
        &mut self,
        center: Position,
        radius: GroundDistance,
        from: TrueBearing,
        sweep_deg: f64,
    ) -> Result<(), Error> {
        if sweep_deg == 0.0 {
            return Ok(());
        }
        let length =
            Circle { center, radius: ArcRadius::new(radius.value())? }.arc_length(from, degrees(sweep_deg));
        // The length to a degree hardly changes along the arc: by the flattening, and by the square of the radius.
        let length_per_degree_m = length.get::<meter>() / sweep_deg.abs();
        let right_deg = 90.0_f64.copysign(sweep_deg);
        let mut sum_s = 0.0;
        let mut failed = None;
        quadrature(0.0, sweep_deg, 4, |swept_deg, weight_deg| {
            match self.crab(TrueBearing::from_degrees(from.degrees() + swept_deg + right_deg)) {
                Ok(crab) => {
                    let length_m = length_per_degree_m * weight_deg.abs();
                    sum_s += length_m / crab.groundspeed.value().get::<meter_per_second>();
                }
                Err(error) => failed = Some(error),
            }
        });
        if let Some(error) = failed {
            return Err(error);
        }
        let end = TrueBearing::from_degrees(from.degrees() + sweep_deg);
        let (position, outward) = direct(center, end, radius);
        let course = TrueBearing::from_degrees(outward.degrees() + right_deg);
        let shape = Shape::Arc { center, radius, from, sweep_deg };
        self.add(SegmentKind::Arc, self.leg, shape, length, seconds(sum_s), position, course);
        Ok(())
    }
}
