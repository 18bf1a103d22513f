//! The temperature of air brought to rest, which a probe in the stream feels.

use crate::Error;
use crate::value::units::{ThermodynamicTemperature, kelvin, ratio};
use crate::value::{Mach, RecoveryFactor, Temperature, TotalTemperature};

/// Total from static temperature: `T (1 + 0.2 k M²)`, in kelvins, with the probe's recovery factor `k`.
///
/// # Accuracy
/// Rounding, for air of constant heat ratio: good to about Mach 3.
///
/// # Degenerate cases
/// At rest, or with a recovery factor of zero, the two are one.
///
/// # Source
/// Conservation of energy in a stream of air; NACA Report 1135 (1953), equation 43, its number from memory.
///
/// # Example
/// ```
/// use lubberline::air::total_temperature;
/// use lubberline::value::{Mach, RecoveryFactor, Temperature, units::*};
/// let total = total_temperature(
///     Temperature::new(degrees_celsius(-54.0))?,
///     Mach::new(Ratio::new::<ratio>(0.82))?,
///     RecoveryFactor::full(),
/// );
/// assert_eq!(format!("{:.1}", total.value().get::<degree_celsius>()), "-24.5");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn total_temperature(temperature: Temperature, mach: Mach, recovery: RecoveryFactor) -> TotalTemperature {
    let total_k = temperature.value().get::<kelvin>() * rise(mach, recovery);
    TotalTemperature::derived(ThermodynamicTemperature::new::<kelvin>(total_k))
}

/// Static from total temperature: the inverse of [`total_temperature`].
///
/// # Errors
/// [`Error::OutOfRange`] of a static temperature beyond its range.
///
/// # Example
/// ```
/// use lubberline::air::static_temperature;
/// use lubberline::value::{Mach, RecoveryFactor, TotalTemperature, units::*};
/// assert_eq!(format!("{:.1}", static_temperature(TotalTemperature::new(degrees_celsius(-20.0))?, Mach::new(Ratio::new::<ratio>(0.8))?, RecoveryFactor::full())?.value().get::<degree_celsius>()), "-48.7");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn static_temperature(
    total: TotalTemperature,
    mach: Mach,
    recovery: RecoveryFactor,
) -> Result<Temperature, Error> {
    let static_k = total.value().get::<kelvin>() / rise(mach, recovery);
    Temperature::new(ThermodynamicTemperature::new::<kelvin>(static_k))
}

fn rise(mach: Mach, recovery: RecoveryFactor) -> f64 {
    1.0 + 0.2 * recovery.value().get::<ratio>() * mach.value().get::<ratio>().powi(2)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{Ratio, degree_celsius, degrees_celsius};

    #[test]
    fn static_from_total_is_the_inverse() {
        for (static_degc, mach, recovery) in [(-56.5, 0.85, 1.0), (15.0, 0.0, 1.0), (-40.0, 2.0, 0.95)] {
            let mach = Mach::new(Ratio::new::<ratio>(mach)).unwrap();
            let recovery = RecoveryFactor::new(Ratio::new::<ratio>(recovery)).unwrap();
            let given = Temperature::new(degrees_celsius(static_degc)).unwrap();
            let back = static_temperature(total_temperature(given, mach, recovery), mach, recovery).unwrap();
            assert!((back.value().get::<degree_celsius>() - static_degc).abs() < 1e-12);
        }
    }
}
