//! A signed change of direction is no bearing.

use lubberline::value::{DirectionChange, TrueBearing, units::degrees};

fn main() -> Result<(), lubberline::Error> {
    let course = TrueBearing::new(degrees(40.0))?;
    let change = DirectionChange::new(degrees(70.0))?;
    let _ = course.change_to(change);
    Ok(())
}
