// Generated from core/src/plain; do not edit. To renew: cargo run -p lubberline-generate

//! Every plain function as data, for what treats them alike: the bindings and the tests.

use crate::Error;

/// A plain function as data: its name, the names of its arguments and outputs, and itself.
#[derive(Debug, Clone, Copy)]
pub struct Function {
    /// Its name.
    pub name: &'static str,
    /// The names of its arguments, which end in their units.
    pub inputs: &'static [&'static str],
    /// The names of its outputs, which end in their units.
    pub outputs: &'static [&'static str],
    /// Computes one point: arguments in, outputs out, in the order of their names. Choices are given by their codes. On an
    /// error every output is NaN. Slices of another length give NaN too.
    pub run: fn(&[f64], &mut [f64]) -> Result<(), Error>,
}

impl Function {
    /// The function of a name.
    pub fn named(name: &str) -> Option<&'static Self> {
        FUNCTIONS.iter().find(|function| function.name == name)
    }
}

/// Every plain function, in the order of `docs/functions.md`.
pub const FUNCTIONS: &[Function] = &[
    Function {
        name: "standard_atmosphere",
        inputs: &["pressure_altitude_ft", "isa_deviation_k"],
        outputs: &["temperature_degc", "pressure_hpa", "density_kg_per_m3", "speed_of_sound_kt"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[pressure_altitude_ft, isa_deviation_k], [output_1, output_2, output_3, output_4]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::standard_atmosphere(pressure_altitude_ft, isa_deviation_k)?;
            [*output_1, *output_2, *output_3, *output_4] = [answer.temperature_degc, answer.pressure_hpa, answer.density_kg_per_m3, answer.speed_of_sound_kt];
            Ok(())
        },
    },
    Function {
        name: "pressure_ratio",
        inputs: &["pressure_altitude_ft"],
        outputs: &["pressure_ratio"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[pressure_altitude_ft], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::pressure_ratio(pressure_altitude_ft)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "density_ratio",
        inputs: &["pressure_altitude_ft", "isa_deviation_k"],
        outputs: &["density_ratio"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[pressure_altitude_ft, isa_deviation_k], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::density_ratio(pressure_altitude_ft, isa_deviation_k)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "temperature_ratio",
        inputs: &["pressure_altitude_ft", "isa_deviation_k"],
        outputs: &["temperature_ratio"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[pressure_altitude_ft, isa_deviation_k], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::temperature_ratio(pressure_altitude_ft, isa_deviation_k)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "isa_deviation_k",
        inputs: &["temperature_degc", "pressure_altitude_ft"],
        outputs: &["isa_deviation_k"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[temperature_degc, pressure_altitude_ft], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::isa_deviation_k(temperature_degc, pressure_altitude_ft)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "speed_of_sound_kt",
        inputs: &["temperature_degc"],
        outputs: &["speed_of_sound_kt"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[temperature_degc], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::speed_of_sound_kt(temperature_degc)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "pressure_altitude_from_pressure_ft",
        inputs: &["pressure_hpa"],
        outputs: &["pressure_altitude_from_pressure_ft"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[pressure_hpa], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::pressure_altitude_from_pressure_ft(pressure_hpa)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "geopotential_altitude_ft",
        inputs: &["geometric_altitude_ft"],
        outputs: &["geopotential_altitude_ft"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[geometric_altitude_ft], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::geopotential_altitude_ft(geometric_altitude_ft)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "geometric_altitude_ft",
        inputs: &["geopotential_altitude_ft"],
        outputs: &["geometric_altitude_ft"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[geopotential_altitude_ft], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::geometric_altitude_ft(geopotential_altitude_ft)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "tas_from_cas_kt",
        inputs: &["cas_kt", "pressure_altitude_ft", "isa_deviation_k"],
        outputs: &["tas_from_cas_kt"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[cas_kt, pressure_altitude_ft, isa_deviation_k], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::tas_from_cas_kt(cas_kt, pressure_altitude_ft, isa_deviation_k)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "cas_from_tas_kt",
        inputs: &["tas_kt", "pressure_altitude_ft", "isa_deviation_k"],
        outputs: &["cas_from_tas_kt"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[tas_kt, pressure_altitude_ft, isa_deviation_k], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::cas_from_tas_kt(tas_kt, pressure_altitude_ft, isa_deviation_k)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "mach_from_cas",
        inputs: &["cas_kt", "pressure_altitude_ft"],
        outputs: &["mach_from_cas"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[cas_kt, pressure_altitude_ft], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::mach_from_cas(cas_kt, pressure_altitude_ft)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "cas_from_mach_kt",
        inputs: &["mach", "pressure_altitude_ft"],
        outputs: &["cas_from_mach_kt"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[mach, pressure_altitude_ft], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::cas_from_mach_kt(mach, pressure_altitude_ft)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "tas_from_mach_kt",
        inputs: &["mach", "pressure_altitude_ft", "isa_deviation_k"],
        outputs: &["tas_from_mach_kt"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[mach, pressure_altitude_ft, isa_deviation_k], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::tas_from_mach_kt(mach, pressure_altitude_ft, isa_deviation_k)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "mach_from_tas",
        inputs: &["tas_kt", "pressure_altitude_ft", "isa_deviation_k"],
        outputs: &["mach_from_tas"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[tas_kt, pressure_altitude_ft, isa_deviation_k], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::mach_from_tas(tas_kt, pressure_altitude_ft, isa_deviation_k)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "eas_from_tas_kt",
        inputs: &["tas_kt", "pressure_altitude_ft", "isa_deviation_k"],
        outputs: &["eas_from_tas_kt"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[tas_kt, pressure_altitude_ft, isa_deviation_k], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::eas_from_tas_kt(tas_kt, pressure_altitude_ft, isa_deviation_k)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "tas_from_eas_kt",
        inputs: &["eas_kt", "pressure_altitude_ft", "isa_deviation_k"],
        outputs: &["tas_from_eas_kt"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[eas_kt, pressure_altitude_ft, isa_deviation_k], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::tas_from_eas_kt(eas_kt, pressure_altitude_ft, isa_deviation_k)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "eas_from_cas_kt",
        inputs: &["cas_kt", "pressure_altitude_ft"],
        outputs: &["eas_from_cas_kt"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[cas_kt, pressure_altitude_ft], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::eas_from_cas_kt(cas_kt, pressure_altitude_ft)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "cas_from_eas_kt",
        inputs: &["eas_kt", "pressure_altitude_ft"],
        outputs: &["cas_from_eas_kt"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[eas_kt, pressure_altitude_ft], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::cas_from_eas_kt(eas_kt, pressure_altitude_ft)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "eas_from_mach_kt",
        inputs: &["mach", "pressure_altitude_ft"],
        outputs: &["eas_from_mach_kt"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[mach, pressure_altitude_ft], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::eas_from_mach_kt(mach, pressure_altitude_ft)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "mach_from_eas",
        inputs: &["eas_kt", "pressure_altitude_ft"],
        outputs: &["mach_from_eas"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[eas_kt, pressure_altitude_ft], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::mach_from_eas(eas_kt, pressure_altitude_ft)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "isentropic_pressure_ratio",
        inputs: &["mach"],
        outputs: &["isentropic_pressure_ratio"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[mach], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::isentropic_pressure_ratio(mach)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "pitot_pressure_ratio",
        inputs: &["mach"],
        outputs: &["pitot_pressure_ratio"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[mach], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::pitot_pressure_ratio(mach)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "impact_pressure_hpa",
        inputs: &["cas_kt"],
        outputs: &["impact_pressure_hpa"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[cas_kt], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::impact_pressure_hpa(cas_kt)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "cas_from_impact_pressure_kt",
        inputs: &["impact_pressure_hpa"],
        outputs: &["cas_from_impact_pressure_kt"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[impact_pressure_hpa], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::cas_from_impact_pressure_kt(impact_pressure_hpa)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "procedure_tas_factor",
        inputs: &["altitude_ft", "isa_deviation_k"],
        outputs: &["procedure_tas_factor"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[altitude_ft, isa_deviation_k], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::procedure_tas_factor(altitude_ft, isa_deviation_k)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "crossover_altitude_ft",
        inputs: &["cas_kt", "mach"],
        outputs: &["crossover_altitude_ft"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[cas_kt, mach], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::crossover_altitude_ft(cas_kt, mach)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "total_temperature_degc",
        inputs: &["temperature_degc", "mach", "recovery_factor"],
        outputs: &["total_temperature_degc"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[temperature_degc, mach, recovery_factor], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::total_temperature_degc(temperature_degc, mach, recovery_factor)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "static_temperature_degc",
        inputs: &["total_temperature_degc", "mach", "recovery_factor"],
        outputs: &["static_temperature_degc"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[total_temperature_degc, mach, recovery_factor], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::static_temperature_degc(total_temperature_degc, mach, recovery_factor)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "indicated_altitude_ft",
        inputs: &["pressure_altitude_ft", "altimeter_setting_hpa"],
        outputs: &["indicated_altitude_ft"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[pressure_altitude_ft, altimeter_setting_hpa], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::indicated_altitude_ft(pressure_altitude_ft, altimeter_setting_hpa)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "pressure_altitude_ft",
        inputs: &["indicated_altitude_ft", "altimeter_setting_hpa"],
        outputs: &["pressure_altitude_ft"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[indicated_altitude_ft, altimeter_setting_hpa], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::pressure_altitude_ft(indicated_altitude_ft, altimeter_setting_hpa)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "pressure_altitude_rule_ft",
        inputs: &["indicated_altitude_ft", "altimeter_setting_hpa"],
        outputs: &["pressure_altitude_rule_ft"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[indicated_altitude_ft, altimeter_setting_hpa], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::pressure_altitude_rule_ft(indicated_altitude_ft, altimeter_setting_hpa)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "altimeter_setting_hpa",
        inputs: &["station_pressure_hpa", "elevation_ft"],
        outputs: &["altimeter_setting_hpa"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[station_pressure_hpa, elevation_ft], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::altimeter_setting_hpa(station_pressure_hpa, elevation_ft)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "altimeter_setting_smithsonian_hpa",
        inputs: &["station_pressure_hpa", "elevation_ft"],
        outputs: &["altimeter_setting_smithsonian_hpa"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[station_pressure_hpa, elevation_ft], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::altimeter_setting_smithsonian_hpa(station_pressure_hpa, elevation_ft)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "station_pressure_hpa",
        inputs: &["altimeter_setting_hpa", "elevation_ft"],
        outputs: &["station_pressure_hpa"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[altimeter_setting_hpa, elevation_ft], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::station_pressure_hpa(altimeter_setting_hpa, elevation_ft)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "density_altitude_ft",
        inputs: &["pressure_altitude_ft", "temperature_degc"],
        outputs: &["density_altitude_ft"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[pressure_altitude_ft, temperature_degc], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::density_altitude_ft(pressure_altitude_ft, temperature_degc)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "density_altitude_rule_ft",
        inputs: &["pressure_altitude_ft", "temperature_degc"],
        outputs: &["density_altitude_rule_ft"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[pressure_altitude_ft, temperature_degc], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::density_altitude_rule_ft(pressure_altitude_ft, temperature_degc)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "true_altitude_ft",
        inputs: &["pressure_altitude_ft", "altimeter_setting_hpa", "elevation_ft", "isa_deviation_k"],
        outputs: &["true_altitude_ft"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[pressure_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::true_altitude_ft(pressure_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "height_above_station_ft",
        inputs: &["pressure_altitude_ft", "altimeter_setting_hpa", "elevation_ft", "isa_deviation_k"],
        outputs: &["height_above_station_ft"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[pressure_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::height_above_station_ft(pressure_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "pressure_altitude_at_true_altitude_ft",
        inputs: &["true_altitude_ft", "altimeter_setting_hpa", "elevation_ft", "isa_deviation_k"],
        outputs: &["pressure_altitude_at_true_altitude_ft"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[true_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::pressure_altitude_at_true_altitude_ft(true_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "transition_level_ft",
        inputs: &["transition_altitude_ft", "altimeter_setting_hpa", "least_layer_ft", "step_ft"],
        outputs: &["transition_level_ft"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[transition_altitude_ft, altimeter_setting_hpa, least_layer_ft, step_ft], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::transition_level_ft(transition_altitude_ft, altimeter_setting_hpa, least_layer_ft, step_ft)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "cold_temperature_correction_ft",
        inputs: &["height_ft", "temperature_degc", "elevation_ft"],
        outputs: &["cold_temperature_correction_ft"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[height_ft, temperature_degc, elevation_ft], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::cold_temperature_correction_ft(height_ft, temperature_degc, elevation_ft)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "cold_temperature_correction_tabulated_ft",
        inputs: &["height_ft", "temperature_degc"],
        outputs: &["cold_temperature_correction_tabulated_ft"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[height_ft, temperature_degc], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::cold_temperature_correction_tabulated_ft(height_ft, temperature_degc)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "cold_temperature_correction_rule_ft",
        inputs: &["height_ft", "temperature_degc", "elevation_ft"],
        outputs: &["cold_temperature_correction_rule_ft"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[height_ft, temperature_degc, elevation_ft], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::cold_temperature_correction_rule_ft(height_ft, temperature_degc, elevation_ft)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "cold_temperature_correction_exact_ft",
        inputs: &["height_ft", "temperature_degc", "elevation_ft"],
        outputs: &["cold_temperature_correction_exact_ft"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[height_ft, temperature_degc, elevation_ft], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::cold_temperature_correction_exact_ft(height_ft, temperature_degc, elevation_ft)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "arc_entry",
        inputs: &["radial_deg", "flown", "arc_radius_nm", "sense", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt", "bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s"],
        outputs: &["radial_at_roll_in_deg", "distance_at_roll_in_nm", "radial_at_roll_out_deg", "distance_at_roll_out_nm", "angle_at_station_deg", "heading_change_deg", "duration_s"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[radial_deg, flown, arc_radius_nm, sense, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s], [output_1, output_2, output_3, output_4, output_5, output_6, output_7]) = (inputs, outputs) else { return Ok(()) };
            if inputs.iter().any(|input| input.is_nan()) { return Ok(()) }
            let answer = super::arc_entry(radial_deg, crate::lead::RadialFlown::from_code("flown", flown)?, arc_radius_nm, crate::lead::ArcSense::from_code("sense", sense)?, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?;
            [*output_1, *output_2, *output_3, *output_4, *output_5, *output_6, *output_7] = [answer.radial_at_roll_in_deg, answer.distance_at_roll_in_nm, answer.radial_at_roll_out_deg, answer.distance_at_roll_out_nm, answer.angle_at_station_deg, answer.heading_change_deg, answer.duration_s];
            Ok(())
        },
    },
    Function {
        name: "arc_exit",
        inputs: &["radial_deg", "flown", "arc_radius_nm", "sense", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt", "bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s"],
        outputs: &["radial_at_roll_in_deg", "distance_at_roll_in_nm", "radial_at_roll_out_deg", "distance_at_roll_out_nm", "angle_at_station_deg", "heading_change_deg", "duration_s"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[radial_deg, flown, arc_radius_nm, sense, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s], [output_1, output_2, output_3, output_4, output_5, output_6, output_7]) = (inputs, outputs) else { return Ok(()) };
            if inputs.iter().any(|input| input.is_nan()) { return Ok(()) }
            let answer = super::arc_exit(radial_deg, crate::lead::RadialFlown::from_code("flown", flown)?, arc_radius_nm, crate::lead::ArcSense::from_code("sense", sense)?, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?;
            [*output_1, *output_2, *output_3, *output_4, *output_5, *output_6, *output_7] = [answer.radial_at_roll_in_deg, answer.distance_at_roll_in_nm, answer.radial_at_roll_out_deg, answer.distance_at_roll_out_nm, answer.angle_at_station_deg, answer.heading_change_deg, answer.duration_s];
            Ok(())
        },
    },
    Function {
        name: "geodesic_inverse",
        inputs: &["lat1_deg", "lon1_deg", "lat2_deg", "lon2_deg"],
        outputs: &["distance_nm", "initial_bearing_deg", "final_bearing_deg"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[lat1_deg, lon1_deg, lat2_deg, lon2_deg], [output_1, output_2, output_3]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::geodesic_inverse(lat1_deg, lon1_deg, lat2_deg, lon2_deg)?;
            [*output_1, *output_2, *output_3] = [answer.distance_nm, answer.initial_bearing_deg, answer.final_bearing_deg];
            Ok(())
        },
    },
    Function {
        name: "slant_range_nm",
        inputs: &["ground_distance_nm", "height_ft"],
        outputs: &["slant_range_nm"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[ground_distance_nm, height_ft], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::slant_range_nm(ground_distance_nm, height_ft)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "geodesic_direct",
        inputs: &["lat_deg", "lon_deg", "bearing_deg", "distance_nm"],
        outputs: &["latitude_deg", "longitude_deg", "final_bearing_deg"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[lat_deg, lon_deg, bearing_deg, distance_nm], [output_1, output_2, output_3]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::geodesic_direct(lat_deg, lon_deg, bearing_deg, distance_nm)?;
            [*output_1, *output_2, *output_3] = [answer.latitude_deg, answer.longitude_deg, answer.final_bearing_deg];
            Ok(())
        },
    },
    Function {
        name: "ground_distance_nm",
        inputs: &["slant_range_nm", "height_ft"],
        outputs: &["ground_distance_nm"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[slant_range_nm, height_ft], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::ground_distance_nm(slant_range_nm, height_ft)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "least_dme_nm",
        inputs: &["height_ft"],
        outputs: &["least_dme_nm"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[height_ft], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::least_dme_nm(height_ft)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "great_circle_inverse",
        inputs: &["lat1_deg", "lon1_deg", "lat2_deg", "lon2_deg", "sphere_radius_nm"],
        outputs: &["distance_nm", "initial_bearing_deg", "final_bearing_deg"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[lat1_deg, lon1_deg, lat2_deg, lon2_deg, sphere_radius_nm], [output_1, output_2, output_3]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::great_circle_inverse(lat1_deg, lon1_deg, lat2_deg, lon2_deg, sphere_radius_nm)?;
            [*output_1, *output_2, *output_3] = [answer.distance_nm, answer.initial_bearing_deg, answer.final_bearing_deg];
            Ok(())
        },
    },
    Function {
        name: "great_circle_direct",
        inputs: &["lat_deg", "lon_deg", "bearing_deg", "distance_nm", "sphere_radius_nm"],
        outputs: &["latitude_deg", "longitude_deg", "final_bearing_deg"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[lat_deg, lon_deg, bearing_deg, distance_nm, sphere_radius_nm], [output_1, output_2, output_3]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::great_circle_direct(lat_deg, lon_deg, bearing_deg, distance_nm, sphere_radius_nm)?;
            [*output_1, *output_2, *output_3] = [answer.latitude_deg, answer.longitude_deg, answer.final_bearing_deg];
            Ok(())
        },
    },
    Function {
        name: "lead_nm",
        inputs: &["inbound_course_deg", "outbound_course_deg", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt", "bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s"],
        outputs: &["lead_nm"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[inbound_course_deg, outbound_course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::lead_nm(inbound_course_deg, outbound_course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "dme_at_roll_in_nm",
        inputs: &["inbound_course_deg", "outbound_course_deg", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt", "bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s", "height_above_station_ft"],
        outputs: &["dme_at_roll_in_nm"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[inbound_course_deg, outbound_course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, height_above_station_ft], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::dme_at_roll_in_nm(inbound_course_deg, outbound_course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, height_above_station_ft)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "turn_anticipation_nm",
        inputs: &["turn_radius_nm", "course_change_deg"],
        outputs: &["turn_anticipation_nm"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[turn_radius_nm, course_change_deg], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::turn_anticipation_nm(turn_radius_nm, course_change_deg)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "arc_entry_inbound_nm",
        inputs: &["arc_radius_nm", "turn_radius_nm"],
        outputs: &["arc_entry_inbound_nm"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[arc_radius_nm, turn_radius_nm], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::arc_entry_inbound_nm(arc_radius_nm, turn_radius_nm)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "arc_entry_outbound_nm",
        inputs: &["arc_radius_nm", "turn_radius_nm"],
        outputs: &["arc_entry_outbound_nm"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[arc_radius_nm, turn_radius_nm], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::arc_entry_outbound_nm(arc_radius_nm, turn_radius_nm)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "lead_radial_inbound_deg",
        inputs: &["arc_radius_nm", "turn_radius_nm"],
        outputs: &["lead_radial_inbound_deg"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[arc_radius_nm, turn_radius_nm], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::lead_radial_inbound_deg(arc_radius_nm, turn_radius_nm)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "lead_radial_outbound_deg",
        inputs: &["arc_radius_nm", "turn_radius_nm"],
        outputs: &["lead_radial_outbound_deg"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[arc_radius_nm, turn_radius_nm], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::lead_radial_outbound_deg(arc_radius_nm, turn_radius_nm)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "rule_lead_nm",
        inputs: &["groundspeed_kt", "course_change_deg", "height_above_station_ft"],
        outputs: &["rule_lead_nm"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[groundspeed_kt, course_change_deg, height_above_station_ft], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::rule_lead_nm(groundspeed_kt, course_change_deg, height_above_station_ft)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "rule_reading_nm",
        inputs: &["groundspeed_kt", "course_change_deg", "height_above_station_ft"],
        outputs: &["rule_reading_nm"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[groundspeed_kt, course_change_deg, height_above_station_ft], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::rule_reading_nm(groundspeed_kt, course_change_deg, height_above_station_ft)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "rule_least_dme_nm",
        inputs: &["height_ft"],
        outputs: &["rule_least_dme_nm"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[height_ft], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::rule_least_dme_nm(height_ft)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "rule_cone_radius_nm",
        inputs: &["height_ft"],
        outputs: &["rule_cone_radius_nm"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[height_ft], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::rule_cone_radius_nm(height_ft)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "rule_bank_deg",
        inputs: &["true_airspeed_kt", "rule"],
        outputs: &["rule_bank_deg"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[true_airspeed_kt, rule], [output_1]) = (inputs, outputs) else { return Ok(()) };
            if inputs.iter().any(|input| input.is_nan()) { return Ok(()) }
            let answer = super::rule_bank_deg(true_airspeed_kt, crate::rules::BankRule::from_code("rule", rule)?)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "rule_turn_radius_nm",
        inputs: &["speed_kt", "rule"],
        outputs: &["rule_turn_radius_nm"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[speed_kt, rule], [output_1]) = (inputs, outputs) else { return Ok(()) };
            if inputs.iter().any(|input| input.is_nan()) { return Ok(()) }
            let answer = super::rule_turn_radius_nm(speed_kt, crate::rules::RadiusRule::from_code("rule", rule)?)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "rule_radials_per_mile",
        inputs: &["arc_radius_nm"],
        outputs: &["rule_radials_per_mile"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[arc_radius_nm], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::rule_radials_per_mile(arc_radius_nm)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "rule_lead_radials_deg",
        inputs: &["arc_radius_nm", "turn_radius_nm", "flown", "rule"],
        outputs: &["rule_lead_radials_deg"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[arc_radius_nm, turn_radius_nm, flown, rule], [output_1]) = (inputs, outputs) else { return Ok(()) };
            if inputs.iter().any(|input| input.is_nan()) { return Ok(()) }
            let answer = super::rule_lead_radials_deg(arc_radius_nm, turn_radius_nm, crate::lead::RadialFlown::from_code("flown", flown)?, crate::rules::ArcLeadRule::from_code("rule", rule)?)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "observe",
        inputs: &["station_latitude_deg", "station_longitude_deg", "station_elevation_ft", "station_declination_deg", "latitude_deg", "longitude_deg", "altitude_ft"],
        outputs: &["radial_deg", "dme_nm", "ground_distance_nm", "elevation_angle_deg"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[station_latitude_deg, station_longitude_deg, station_elevation_ft, station_declination_deg, latitude_deg, longitude_deg, altitude_ft], [output_1, output_2, output_3, output_4]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::observe(station_latitude_deg, station_longitude_deg, station_elevation_ft, station_declination_deg, latitude_deg, longitude_deg, altitude_ft)?;
            [*output_1, *output_2, *output_3, *output_4] = [answer.radial_deg, answer.dme_nm, answer.ground_distance_nm, answer.elevation_angle_deg];
            Ok(())
        },
    },
    Function {
        name: "cone_radius_nm",
        inputs: &["height_ft", "cone_half_angle_deg"],
        outputs: &["cone_radius_nm"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[height_ft, cone_half_angle_deg], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::cone_radius_nm(height_ft, cone_half_angle_deg)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "time_to_fly_s",
        inputs: &["distance_nm", "groundspeed_kt"],
        outputs: &["time_to_fly_s"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[distance_nm, groundspeed_kt], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::time_to_fly_s(distance_nm, groundspeed_kt)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "distance_flown_nm",
        inputs: &["groundspeed_kt", "elapsed_s"],
        outputs: &["distance_flown_nm"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[groundspeed_kt, elapsed_s], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::distance_flown_nm(groundspeed_kt, elapsed_s)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "groundspeed_from_time_kt",
        inputs: &["distance_nm", "elapsed_s"],
        outputs: &["groundspeed_from_time_kt"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[distance_nm, elapsed_s], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::groundspeed_from_time_kt(distance_nm, elapsed_s)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "time_between_fixes_s",
        inputs: &["lat1_deg", "lon1_deg", "lat2_deg", "lon2_deg", "groundspeed_kt"],
        outputs: &["time_between_fixes_s"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[lat1_deg, lon1_deg, lat2_deg, lon2_deg, groundspeed_kt], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::time_between_fixes_s(lat1_deg, lon1_deg, lat2_deg, lon2_deg, groundspeed_kt)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "station_by_bearing_change",
        inputs: &["elapsed_s", "bearing_change_deg", "groundspeed_kt", "angle_off_bow_deg"],
        outputs: &["distance_nm", "time_s", "distance_before_nm"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[elapsed_s, bearing_change_deg, groundspeed_kt, angle_off_bow_deg], [output_1, output_2, output_3]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::station_by_bearing_change(elapsed_s, bearing_change_deg, groundspeed_kt, angle_off_bow_deg)?;
            [*output_1, *output_2, *output_3] = [answer.distance_nm, answer.time_s, answer.distance_before_nm];
            Ok(())
        },
    },
    Function {
        name: "time_to_station_rule_s",
        inputs: &["elapsed_s", "bearing_change_deg"],
        outputs: &["time_to_station_rule_s"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[elapsed_s, bearing_change_deg], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::time_to_station_rule_s(elapsed_s, bearing_change_deg)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "turn_radius_nm",
        inputs: &["true_airspeed_kt", "bank_deg"],
        outputs: &["turn_radius_nm"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[true_airspeed_kt, bank_deg], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::turn_radius_nm(true_airspeed_kt, bank_deg)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "turn_rate_deg_per_s",
        inputs: &["true_airspeed_kt", "bank_deg"],
        outputs: &["turn_rate_deg_per_s"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[true_airspeed_kt, bank_deg], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::turn_rate_deg_per_s(true_airspeed_kt, bank_deg)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "bank_for_rate_deg",
        inputs: &["true_airspeed_kt", "turn_rate_deg_per_s"],
        outputs: &["bank_for_rate_deg"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[true_airspeed_kt, turn_rate_deg_per_s], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::bank_for_rate_deg(true_airspeed_kt, turn_rate_deg_per_s)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "bank_for_radius_deg",
        inputs: &["true_airspeed_kt", "turn_radius_nm"],
        outputs: &["bank_for_radius_deg"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[true_airspeed_kt, turn_radius_nm], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::bank_for_radius_deg(true_airspeed_kt, turn_radius_nm)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "radius_at_rate_nm",
        inputs: &["true_airspeed_kt", "turn_rate_deg_per_s"],
        outputs: &["radius_at_rate_nm"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[true_airspeed_kt, turn_rate_deg_per_s], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::radius_at_rate_nm(true_airspeed_kt, turn_rate_deg_per_s)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "load_factor",
        inputs: &["bank_deg"],
        outputs: &["load_factor"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[bank_deg], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::load_factor(bank_deg)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "bank_for_load_factor_deg",
        inputs: &["load_factor"],
        outputs: &["bank_for_load_factor_deg"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[load_factor], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::bank_for_load_factor_deg(load_factor)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "limited_turn",
        inputs: &["true_airspeed_kt", "bank_limit_deg", "turn_rate_limit_deg_per_s"],
        outputs: &["bank_deg", "turn_rate_deg_per_s", "radius_nm", "governed_by"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[true_airspeed_kt, bank_limit_deg, turn_rate_limit_deg_per_s], [output_1, output_2, output_3, output_4]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::limited_turn(true_airspeed_kt, bank_limit_deg, turn_rate_limit_deg_per_s)?;
            [*output_1, *output_2, *output_3, *output_4] = [answer.bank_deg, answer.turn_rate_deg_per_s, answer.radius_nm, answer.governed_by];
            Ok(())
        },
    },
    Function {
        name: "rolled_turn",
        inputs: &["true_airspeed_kt", "heading_change_deg", "bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s"],
        outputs: &["bank_deg", "duration_s", "roll_duration_s", "advance_nm", "transfer_nm", "governed_by"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[true_airspeed_kt, heading_change_deg, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s], [output_1, output_2, output_3, output_4, output_5, output_6]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::rolled_turn(true_airspeed_kt, heading_change_deg, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?;
            [*output_1, *output_2, *output_3, *output_4, *output_5, *output_6] = [answer.bank_deg, answer.duration_s, answer.roll_duration_s, answer.advance_nm, answer.transfer_nm, answer.governed_by];
            Ok(())
        },
    },
    Function {
        name: "wind_triangle",
        inputs: &["course_deg", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt"],
        outputs: &["heading_deg", "groundspeed_kt"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt], [output_1, output_2]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::wind_triangle(course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt)?;
            [*output_1, *output_2] = [answer.heading_deg, answer.groundspeed_kt];
            Ok(())
        },
    },
    Function {
        name: "wind_correction_deg",
        inputs: &["course_deg", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt"],
        outputs: &["wind_correction_deg"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt], [output_1]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::wind_correction_deg(course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt)?;
            [*output_1] = [answer];
            Ok(())
        },
    },
    Function {
        name: "track_and_groundspeed",
        inputs: &["heading_deg", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt"],
        outputs: &["track_deg", "groundspeed_kt", "drift_deg"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[heading_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt], [output_1, output_2, output_3]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::track_and_groundspeed(heading_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt)?;
            [*output_1, *output_2, *output_3] = [answer.track_deg, answer.groundspeed_kt, answer.drift_deg];
            Ok(())
        },
    },
    Function {
        name: "wind_from_track",
        inputs: &["heading_deg", "true_airspeed_kt", "track_deg", "groundspeed_kt"],
        outputs: &["wind_from_deg", "wind_speed_kt"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[heading_deg, true_airspeed_kt, track_deg, groundspeed_kt], [output_1, output_2]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::wind_from_track(heading_deg, true_airspeed_kt, track_deg, groundspeed_kt)?;
            [*output_1, *output_2] = [answer.wind_from_deg, answer.wind_speed_kt];
            Ok(())
        },
    },
    Function {
        name: "wind_components",
        inputs: &["course_deg", "wind_from_deg", "wind_speed_kt"],
        outputs: &["headwind_kt", "crosswind_kt"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[course_deg, wind_from_deg, wind_speed_kt], [output_1, output_2]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::wind_components(course_deg, wind_from_deg, wind_speed_kt)?;
            [*output_1, *output_2] = [answer.headwind_kt, answer.crosswind_kt];
            Ok(())
        },
    },
    Function {
        name: "wind_from_components",
        inputs: &["course_deg", "headwind_kt", "crosswind_kt"],
        outputs: &["wind_from_deg", "wind_speed_kt"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[course_deg, headwind_kt, crosswind_kt], [output_1, output_2]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::wind_from_components(course_deg, headwind_kt, crosswind_kt)?;
            [*output_1, *output_2] = [answer.wind_from_deg, answer.wind_speed_kt];
            Ok(())
        },
    },
    Function {
        name: "airspeed_for_groundspeed",
        inputs: &["course_deg", "groundspeed_kt", "wind_from_deg", "wind_speed_kt"],
        outputs: &["heading_deg", "true_airspeed_kt"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[course_deg, groundspeed_kt, wind_from_deg, wind_speed_kt], [output_1, output_2]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::airspeed_for_groundspeed(course_deg, groundspeed_kt, wind_from_deg, wind_speed_kt)?;
            [*output_1, *output_2] = [answer.heading_deg, answer.true_airspeed_kt];
            Ok(())
        },
    },
    Function {
        name: "wind_between_levels",
        inputs: &["pressure_altitude_ft", "lower_altitude_ft", "lower_wind_from_deg", "lower_wind_speed_kt", "upper_altitude_ft", "upper_wind_from_deg", "upper_wind_speed_kt"],
        outputs: &["wind_from_deg", "wind_speed_kt"],
        run: |inputs, outputs| {
            outputs.fill(f64::NAN);
            let (&[pressure_altitude_ft, lower_altitude_ft, lower_wind_from_deg, lower_wind_speed_kt, upper_altitude_ft, upper_wind_from_deg, upper_wind_speed_kt], [output_1, output_2]) = (inputs, outputs) else { return Ok(()) };
            let answer = super::wind_between_levels(pressure_altitude_ft, lower_altitude_ft, lower_wind_from_deg, lower_wind_speed_kt, upper_altitude_ft, upper_wind_from_deg, upper_wind_speed_kt)?;
            [*output_1, *output_2] = [answer.wind_from_deg, answer.wind_speed_kt];
            Ok(())
        },
    },
];
