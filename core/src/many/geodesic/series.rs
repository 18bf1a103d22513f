//! What two near points' geodesic has over the straight line between them.

/// Corrections, as `core/fit/near_geodesic.py` defines them: in units of the semi-major axis, q the squared chord, z its
/// northward part times the cosine of the first point's latitude, t the sine of that latitude.
pub trait Series: Copy {
    /// How far it was fitted.
    const REACH_NM: f64;
    /// The coefficients at a first point.
    fn at<const FMA: bool>(t: f64) -> Self;
    /// Squared distance less squared chord.
    fn square<const FMA: bool>(&self, q: f64, z: f64) -> f64;
    /// What turns the northward part to the geodesic's azimuth, over the cosine of the latitude.
    fn north<const FMA: bool>(&self, q: f64, z: f64) -> f64;
}
