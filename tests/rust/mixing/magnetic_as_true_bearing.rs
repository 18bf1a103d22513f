//! A magnetic bearing is no true one.

use lubberline::value::{MagneticBearing, TrueBearing, units::degrees};

fn main() -> Result<(), lubberline::Error> {
    let course = TrueBearing::new(degrees(40.0))?;
    let magnetic = MagneticBearing::new(degrees(43.0))?;
    let _ = course.change_to(magnetic);
    Ok(())
}
