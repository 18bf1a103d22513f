//! A bearing is no signed change of direction.

use lubberline::value::{TrueBearing, units::degrees};

fn main() -> Result<(), lubberline::Error> {
    let course = TrueBearing::new(degrees(40.0))?;
    let onward = TrueBearing::new(degrees(110.0))?;
    let _ = course.turned_by(onward);
    Ok(())
}
