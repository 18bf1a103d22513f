//! A pressure altitude is no true altitude.

use lubberline::air::pressure_altitude_at;
use lubberline::value::{AltimeterSetting, Elevation, IsaDeviation, PressureAltitude, units::feet};

fn main() -> Result<(), lubberline::Error> {
    let altitude = PressureAltitude::new(feet(9_000.0))?;
    let elevation = Elevation::new(feet(1_200.0))?;
    pressure_altitude_at(altitude, AltimeterSetting::standard(), elevation, IsaDeviation::none())?;
    Ok(())
}
