//! Circles about a point on WGS-84: DME arcs and turns of fixed radius. All their points are at one geodesic distance.

use geographiclib_rs::DirectGeodesic;

use super::geodesic::wgs84;
use super::{Course, direct, inverse};
use crate::numeric::{quadrature, root_between};
use crate::value::units::{Angle, Length, degree, meter, metres};
use crate::value::{ArcRadius, DirectionChange, GroundDistance, Position, TrueBearing};

/// Lines that miss each other by no more than this are taken to touch, in metres.
pub(super) const TOUCHING_M: f64 = 1e-3;

/// Rounding of a distance on the ellipsoid, in metres: what lies no deeper than this inside a circle lies on it.
pub(super) const ROUNDING_M: f64 = 1e-8;

/// A circle about a point.
///
/// # Example
/// ```
/// use lubberline::earth::{Circle, Course};
/// use lubberline::value::{ArcRadius, Latitude, Longitude, Position, TrueBearing, units::*};
/// let at = |latitude, longitude| -> Result<Position, lubberline::Error> {
///     Ok(Position::new(Latitude::new(degrees(latitude))?, Longitude::new(degrees(longitude))?))
/// };
/// let arc = Circle { center: at(60.0, -10.0)?, radius: ArcRadius::new(nautical_miles(12.0))? };
/// let course = Course { through: at(59.5, -10.0)?, bearing: TrueBearing::new(degrees(0.0))? };
/// // A meridian through the centre meets it twice, a diameter apart.
/// let meetings = course.meets_circle(&arc).map(|[near, far]| far.1 - near.1);
/// assert!(meetings.is_some_and(|apart| (apart - nautical_miles(24.0)).abs() < nautical_miles(1e-6)));
/// let quarter = arc.arc_length(TrueBearing::new(degrees(0.0))?, degrees(90.0));
/// assert!((quarter - nautical_miles(18.85)).abs() < nautical_miles(0.01));
/// # Ok::<(), lubberline::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Circle {
    /// Its centre.
    pub center: Position,
    /// The geodesic distance of its points from the centre.
    pub radius: ArcRadius,
}

/// A point on a circle, with the course of the circle's tangent through a point outside.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tangent {
    /// The point of contact.
    pub point: Position,
    /// The true bearing there, onward, of the tangent that comes from outside.
    pub bearing: TrueBearing,
    /// Its length from the point outside.
    pub distance: GroundDistance,
}

/// A point on a circle whose tangent stands square to a course, and the point of the course abeam of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Extent {
    /// The point of the circle.
    pub point: Position,
    /// The point of the course.
    pub abeam: Position,
}

impl Circle {
    /// The point of the circle in a direction from its centre, and the direction outward there.
    pub fn at(&self, bearing: TrueBearing) -> (Position, TrueBearing) {
        direct(self.center, bearing, GroundDistance::derived(self.radius.value()))
    }

    /// How far a point lies outside the circle, negative inside, in metres.
    pub(super) fn outside_m(&self, point: Position) -> f64 {
        (inverse(self.center, point).distance.value() - self.radius.value()).get::<meter>()
    }

    /// Length of the arc from a bearing of the centre through a signed angle, clockwise positive.
    ///
    /// The integral of the reduced length of the geodesics from the centre over their azimuth.
    ///
    /// # Accuracy
    /// A micrometre for radii to 1 000 NM.
    ///
    /// # Source
    /// C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013), section 3 (reduced length); derived.
    pub fn arc_length(&self, from: TrueBearing, sweep: Angle) -> Length {
        let sweep_rad = sweep.value;
        let mut length_m = 0.0;
        quadrature(0.0, sweep_rad.abs(), 4, |turned_rad, weight_rad| {
            let azimuth_deg = from.degrees() + turned_rad.copysign(sweep_rad).to_degrees();
            let (_, _, _, reduced_m): (f64, f64, f64, f64) = wgs84().direct(
                self.center.latitude_deg(),
                self.center.longitude_deg(),
                azimuth_deg,
                self.radius.value().get::<meter>(),
            );
            length_m += weight_rad * reduced_m;
        });
        metres(length_m)
    }

    /// Whether a point lies on the arc from one bearing of the centre to another, within a tolerance.
    ///
    /// The ends belong to the arc. Equal bearings are the whole circle.
    pub fn arc_contains(
        &self,
        from: TrueBearing,
        to: TrueBearing,
        clockwise: bool,
        point: Position,
        tolerance: Length,
    ) -> bool {
        if self.outside_m(point).abs() > tolerance.get::<meter>() {
            return false;
        }
        let Some(bearing) = inverse(self.center, point).initial_bearing else { return false };
        let around = |to: TrueBearing| from.way_round_deg(to, if clockwise { 1.0 } else { -1.0 });
        let sweep_deg = if around(to) == 0.0 { 360.0 } else { around(to) };
        let slack_deg = (tolerance.get::<meter>() / self.radius.value().get::<meter>()).to_degrees();
        let reached_deg = around(bearing);
        reached_deg <= sweep_deg + slack_deg || reached_deg >= 360.0 - slack_deg
    }

    /// The tangents from a point outside: the contact left of the line to the centre, then the one right of it; one twice for a
    /// point on the circle, none for one inside and none for one whose antipode is inside.
    ///
    /// # Accuracy
    /// The point of contact is soft along the circle: a millimetre off the circle is 20 m along it at 100 NM.
    pub fn tangents_from(&self, point: Position) -> Option<[Tangent; 2]> {
        let outside_m = self.outside_m(point);
        if outside_m < -TOUCHING_M {
            return None;
        }
        let toward = inverse(self.center, point).initial_bearing?;
        let facing = |turned_deg: f64| {
            let (contact, outward) = self.at(TrueBearing::from_degrees(toward.degrees() + turned_deg));
            // The way to the point leaves the contact square to the radius.
            inverse(contact, point).initial_bearing.map_or(0.0, |way| cosine(outward.change_to(way)))
        };
        let tangent = |turned_deg: f64| {
            let (contact, outward) = self.at(TrueBearing::from_degrees(toward.degrees() + turned_deg));
            let line = inverse(point, contact);
            let side_deg = if turned_deg < 0.0 { -90.0 } else { 90.0 };
            Tangent {
                point: contact,
                bearing: line
                    .final_bearing
                    .unwrap_or(TrueBearing::from_degrees(outward.degrees() + side_deg)),
                distance: line.distance,
            }
        };
        if outside_m <= ROUNDING_M {
            return Some([tangent(-0.0), tangent(0.0)]);
        }
        // From the far side of the earth the way to the farthest point of the circle no longer comes past the centre.
        if facing(180.0) > 0.0 {
            return None;
        }
        // Seen from the point toward the centre, a contact that lies clockwise of the point from the centre is on the left.
        Some([tangent(root_between(0.0, 180.0, facing)), tangent(root_between(-180.0, 0.0, facing))])
    }

    /// The points of the circle farthest along a course and farthest back along it, with the points of the course abeam of them.
    ///
    /// # Accuracy
    /// As [`Circle::tangents_from`].
    pub fn extent_along(&self, course: Course) -> [Extent; 2] {
        let onward = course.abeam(self.center).bearing;
        // How much the radius points to the right of the course at a point of the circle.
        let rightward = |turned_deg: f64| {
            let (point, outward) = self.at(TrueBearing::from_degrees(onward.degrees() + turned_deg));
            let abeam = course.abeam(point);
            let line = inverse(abeam.point, point);
            let right = match line.final_bearing {
                Some(bearing) if abeam.cross_track.get::<meter>() < 0.0 => bearing.reciprocal(),
                Some(bearing) => bearing,
                None => TrueBearing::from_degrees(abeam.bearing.degrees() + 90.0),
            };
            cosine(outward.change_to(right))
        };
        [root_between(-90.0, 90.0, rightward), root_between(90.0, 270.0, rightward)].map(|turned_deg| {
            let (point, _) = self.at(TrueBearing::from_degrees(onward.degrees() + turned_deg));
            Extent { point, abeam: course.abeam(point).point }
        })
    }
}

fn cosine(change: DirectionChange) -> f64 {
    change.angle().get::<degree>().to_radians().cos()
}
