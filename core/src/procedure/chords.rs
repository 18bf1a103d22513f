//! A DME arc flown as straight legs.

use super::dme_arc::square_to;
use crate::Error;
use crate::lead::ArcSense;
use crate::value::units::{Angle, Length, Time, degrees, meter, metres};
use crate::value::{ArcRadius, Bearing, DirectionChange, GroundDistance, North, TrueAirspeed, choice};
use crate::wind::{Crabbed, Wind, hold_course};

choice! {
    /// Where the straight legs of an arc lie.
    ChordPlacement {
        /// Inside: they begin and end on the arc, and are nearest to the station halfway.
        Inside = 0: "inside",
        /// Outside: they touch the arc halfway, and begin and end farthest from the station.
        Outside = 1: "outside",
        /// On both sides: as far inside halfway as they are outside at their ends.
        Balanced = 2: "balanced",
    }
}

/// A leg is no longer than this half-angle at the station on either side of its middle, in degrees, whatever the tolerance.
const GREATEST_HALF_DEG: f64 = 60.0;

/// The straight legs of an arc from one radial to another that stay within a tolerance of it.
///
/// Half a leg sees the station under the angle `h` with `cos h = (D - t) / D` inside, `D / (D + t)` outside and
/// `(D - t) / (D + t)` on both sides, at the arc `D` with the tolerance `t`. As many legs as that takes, rounded up, share the
/// arc evenly.
///
/// # Accuracy
/// Rounding on a plane. The turns between the legs are left out: with their lead they cut the corners, which lies outside the legs'
/// middle in every placement.
///
/// # Degenerate cases
/// From a radial to itself there is no leg. A tolerance near the arc's radius and above still makes a leg for each 120 degrees.
///
/// # Source
/// The right triangle of station, middle and end of a leg.
///
/// # Example
/// ```
/// use lubberline::lead::ArcSense;
/// use lubberline::procedure::{ChordLegs, ChordPlacement};
/// use lubberline::value::{ArcRadius, Radial, TrueAirspeed, units::*};
/// use lubberline::wind::Wind;
/// let chords = ChordLegs::new(
///     Radial::new(degrees(350.0))?,
///     Radial::new(degrees(50.0))?,
///     ArcRadius::new(nautical_miles(12.0))?,
///     ArcSense::Clockwise,
///     ChordPlacement::Inside,
///     ArcRadius::new(nautical_miles(0.25))?,
/// );
/// let mut courses_deg = [0.0; 3];
/// let legs = chords.legs(TrueAirspeed::new(knots(150.0))?, Wind::calm());
/// for (course_deg, leg) in courses_deg.iter_mut().zip(legs) {
///     *course_deg = leg?.course.angle().get::<degree>().round();
/// }
/// assert_eq!(courses_deg, [90.0, 110.0, 130.0]);
/// # Ok::<(), lubberline::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ChordLegs<N: North> {
    from: Bearing<N>,
    sense: ArcSense,
    count: u32,
    angle_deg: f64,
    middle_m: f64,
    end_m: f64,
}

/// One of the legs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ChordLeg<N: North> {
    /// The radial of its beginning.
    pub from: Bearing<N>,
    /// The radial of its end.
    pub to: Bearing<N>,
    /// Its course.
    pub course: Bearing<N>,
    /// Heading, groundspeed and wind correction on it.
    pub crab: Crabbed<N>,
    /// Time along it.
    pub time: Time,
}

impl<N: North> ChordLegs<N> {
    /// The legs from one radial to another.
    ///
    pub fn new(
        from: Bearing<N>,
        to: Bearing<N>,
        arc: ArcRadius,
        sense: ArcSense,
        placement: ChordPlacement,
        tolerance: ArcRadius,
    ) -> Self {
        let (arc_m, tolerance_m) = (arc.value().get::<meter>(), tolerance.value().get::<meter>());
        let whole_deg = from.way_round_deg(to, f64::from(sense.code()));
        // The sine of half of it keeps its digits for a small tolerance, where the cosine loses them.
        let sine_squared = match placement {
            ChordPlacement::Inside => tolerance_m / (2.0 * arc_m),
            ChordPlacement::Outside => tolerance_m / (2.0 * (arc_m + tolerance_m)),
            ChordPlacement::Balanced => tolerance_m / (arc_m + tolerance_m),
        };
        let half_deg = (2.0 * sine_squared.min(1.0).sqrt().asin().to_degrees()).min(GREATEST_HALF_DEG);
        // A whole number of legs stays one in spite of rounding.
        let count = (whole_deg / (2.0 * half_deg) * (1.0 - 1e-12)).ceil();
        let angle_deg = if count > 0.0 { whole_deg / count } else { 0.0 };
        let cosine = (angle_deg / 2.0).to_radians().cos();
        let end_m = match placement {
            ChordPlacement::Inside => arc_m,
            ChordPlacement::Outside => arc_m / cosine,
            ChordPlacement::Balanced => 2.0 * arc_m / (1.0 + cosine),
        };
        // The conversion saturates; no one flies four thousand million legs.
        Self { from, sense, count: count as u32, angle_deg, middle_m: end_m * cosine, end_m }
    }

    /// How many legs there are.
    pub fn count(&self) -> u32 {
        self.count
    }

    /// The angle of each at the station, which is also the change of course from one to the next.
    pub fn angle(&self) -> Angle {
        degrees(self.angle_deg)
    }

    /// The length of each.
    pub fn length(&self) -> Length {
        metres(2.0 * self.end_m * (self.angle_deg / 2.0).to_radians().sin())
    }

    /// Distance from the station at which each begins and ends.
    pub fn distance_at_ends(&self) -> GroundDistance {
        GroundDistance::derived(metres(self.end_m))
    }

    /// Distance from the station in the middle of each.
    pub fn distance_at_middle(&self) -> GroundDistance {
        GroundDistance::derived(metres(self.middle_m))
    }

    /// A leg, counted from zero, flown in a wind; none behind the last.
    ///
    /// # Errors
    /// [`Error::WindTooStrong`] if its course cannot be held.
    pub fn leg(
        &self,
        index: u32,
        true_airspeed: TrueAirspeed,
        wind: Wind<N>,
    ) -> Option<Result<ChordLeg<N>, Error>> {
        (index < self.count).then(|| {
            let sign = f64::from(self.sense.code());
            let radial =
                |legs: f64| self.from.turned_by(DirectionChange::from_degrees(sign * self.angle_deg * legs));
            let course = square_to(radial(f64::from(index) + 0.5), sign);
            let crab = hold_course(course, true_airspeed, wind)?;
            Ok(ChordLeg {
                from: radial(f64::from(index)),
                to: radial(f64::from(index) + 1.0),
                course,
                crab,
                time: self.length() / crab.groundspeed.value(),
            })
        })
    }

    /// The legs in their order, flown in a wind.
    pub fn legs(
        &self,
        true_airspeed: TrueAirspeed,
        wind: Wind<N>,
    ) -> impl Iterator<Item = Result<ChordLeg<N>, Error>> {
        (0..self.count).filter_map(move |index| self.leg(index, true_airspeed, wind))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plane::Plane;
    use crate::value::units::{knots, nautical_mile, nautical_miles};
    use crate::value::{TrueBearing, TrueNorth};

    fn legs(placement: ChordPlacement, sense: ArcSense, tolerance_nm: f64) -> ChordLegs<TrueNorth> {
        ChordLegs::new(
            TrueBearing::from_degrees(350.0),
            TrueBearing::from_degrees(50.0),
            ArcRadius::new(nautical_miles(12.0)).unwrap(),
            sense,
            placement,
            ArcRadius::new(nautical_miles(tolerance_nm)).unwrap(),
        )
    }

    #[test]
    fn laid_end_to_end_they_follow_the_arc_within_the_tolerance() {
        for sense in [ArcSense::Clockwise, ArcSense::Counterclockwise] {
            for (placement, inside, outside) in [
                (ChordPlacement::Inside, 0.25, 0.0),
                (ChordPlacement::Outside, 0.0, 0.25),
                (ChordPlacement::Balanced, 0.25, 0.25),
            ] {
                let legs = legs(placement, sense, 0.25);
                let mut place =
                    Plane::along_deg(350.0) * legs.distance_at_ends().value().get::<nautical_mile>();
                let length_nm = legs.length().get::<nautical_mile>();
                let airspeed = TrueAirspeed::new(knots(150.0)).unwrap();
                let mut count = 0;
                for leg in legs.legs(airspeed, Wind::calm()) {
                    let along = Plane::along_deg(leg.unwrap().course.degrees());
                    for part in [0.0, 0.5, 1.0] {
                        let here = (place + along * (length_nm * part)).length();
                        assert!(
                            here > 12.0 - inside - 1e-9 && here < 12.0 + outside + 1e-9,
                            "{placement:?} {here}"
                        );
                    }
                    place = place + along * length_nm;
                    count += 1;
                }
                assert_eq!(count, legs.count());
                let end = TrueBearing::from_radians(place.east.atan2(place.north));
                assert!(
                    end.change_to(TrueBearing::from_degrees(50.0)).degrees().abs() < 1e-9,
                    "{placement:?}"
                );
                // One leg less would leave the tolerance.
                let whole_deg = legs.angle_deg * f64::from(count);
                let wider = (whole_deg / f64::from(count - 1) / 2.0).to_radians().cos();
                let off_nm = match placement {
                    ChordPlacement::Inside => 12.0 * (1.0 - wider),
                    ChordPlacement::Outside => 12.0 * (1.0 / wider - 1.0),
                    ChordPlacement::Balanced => 12.0 * (1.0 - wider) / (1.0 + wider),
                };
                assert!(off_nm > 0.25, "{placement:?} {off_nm}");
            }
        }
    }

    #[test]
    fn the_ends_of_the_question_have_an_answer() {
        let none = ChordLegs::new(
            TrueBearing::from_degrees(50.0),
            TrueBearing::from_degrees(50.0),
            ArcRadius::new(nautical_miles(12.0)).unwrap(),
            ArcSense::Clockwise,
            ChordPlacement::Inside,
            ArcRadius::new(nautical_miles(0.1)).unwrap(),
        );
        assert_eq!((none.count(), none.length().value), (0, 0.0));
        assert_eq!(legs(ChordPlacement::Inside, ArcSense::Counterclockwise, 40.0).count(), 3);
    }
}
