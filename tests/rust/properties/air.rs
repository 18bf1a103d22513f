//! Air and airspeeds: there and back, and the order they stand in.

use lubberline::plain::*;
use proptest::prelude::*;

use crate::config;

/// Altitude, ISA deviation and a Mach number that a calibrated airspeed in its range answers to.
fn flight() -> impl Strategy<Value = (f64, f64, f64)> {
    (-2_000.0..60_000.0, -40.0..40.0, 0.01..1.8)
}

fn same(one: f64, other: f64) -> bool {
    (one - other).abs() <= 1e-11 * one.abs().max(other.abs()).max(1e-3)
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn airspeeds_there_and_back((altitude_ft, deviation_k, mach) in flight()) {
        let tas_kt = tas_from_mach_kt(mach, altitude_ft, deviation_k)?;
        let cas_kt = cas_from_tas_kt(tas_kt, altitude_ft, deviation_k)?;
        prop_assert!(same(mach_from_tas(tas_kt, altitude_ft, deviation_k)?, mach));
        prop_assert!(same(tas_from_cas_kt(cas_kt, altitude_ft, deviation_k)?, tas_kt));
        prop_assert!(same(cas_from_mach_kt(mach, altitude_ft)?, cas_kt));
        prop_assert!(same(mach_from_cas(cas_kt, altitude_ft)?, mach));
        let eas_kt = eas_from_tas_kt(tas_kt, altitude_ft, deviation_k)?;
        prop_assert!(same(tas_from_eas_kt(eas_kt, altitude_ft, deviation_k)?, tas_kt));
        prop_assert!(same(eas_from_cas_kt(cas_kt, altitude_ft)?, eas_kt));
        prop_assert!(same(cas_from_eas_kt(eas_kt, altitude_ft)?, cas_kt));
        prop_assert!(same(eas_from_mach_kt(mach, altitude_ft)?, eas_kt));
        prop_assert!(same(mach_from_eas(eas_kt, altitude_ft)?, mach));
        prop_assert!(same(cas_from_impact_pressure_kt(impact_pressure_hpa(cas_kt)?)?, cas_kt));
        // Above sea level compression lets the calibrated airspeed exceed the equivalent.
        if altitude_ft > 0.0 {
            prop_assert!(cas_kt >= eas_kt * (1.0 - 1e-12));
        }
    }

    /// At standard sea level the three airspeeds are one.
    #[test]
    fn at_sea_level_airspeeds_agree(speed_kt in 1.0..1_000.0) {
        prop_assert!(same(tas_from_cas_kt(speed_kt, 0.0, 0.0)?, speed_kt));
        prop_assert!(same(eas_from_cas_kt(speed_kt, 0.0)?, speed_kt));
    }

    #[test]
    fn the_atmosphere_there_and_back(altitude_ft in -16_000.0..262_000.0, deviation_k in -100.0..100.0) {
        let air = standard_atmosphere(altitude_ft, deviation_k)?;
        let again_ft = pressure_altitude_from_pressure_ft(air.pressure_hpa)?;
        prop_assert!((again_ft - altitude_ft).abs() < 1e-8, "{again_ft} ft for {altitude_ft} ft");
        prop_assert!((isa_deviation_k(air.temperature_degc, altitude_ft)? - deviation_k).abs() < 1e-10);
        prop_assert!(same(speed_of_sound_kt(air.temperature_degc)?, air.speed_of_sound_kt));
        // The gas law, with the constant of the ICAO atmosphere.
        let density = air.pressure_hpa * 100.0 / (287.05287 * (air.temperature_degc + 273.15));
        prop_assert!(same(air.density_kg_per_m3, density));
        let geometric_ft = geometric_altitude_ft(altitude_ft)?;
        prop_assert!((geopotential_altitude_ft(geometric_ft)? - altitude_ft).abs() < 1e-8);
    }

    /// Pressure falls by the weight of the air that is passed: `dp = -density g dh`.
    #[test]
    fn the_atmosphere_carries_its_own_weight(altitude_ft in -16_000.0..262_000.0) {
        let step_ft = 2.0;
        let [below, here, above] = [-step_ft, 0.0, step_ft].map(|by| standard_atmosphere(altitude_ft + by, 0.0));
        let fall_pa = (below?.pressure_hpa - above?.pressure_hpa) * 100.0;
        let weight_pa = here?.density_kg_per_m3 * 9.80665 * 2.0 * step_ft * 0.3048;
        prop_assert!((fall_pa / weight_pa - 1.0).abs() < 1e-6, "{fall_pa} Pa, {weight_pa} Pa");
    }

    #[test]
    fn altimetry_there_and_back(
        altitude_ft in -1_000.0..45_000.0, setting_hpa in 940.0..1060.0, elevation_ft in -500.0..8_000.0,
        deviation_k in -40.0..40.0,
    ) {
        let pressure_ft = pressure_altitude_ft(altitude_ft, setting_hpa)?;
        prop_assert!((indicated_altitude_ft(pressure_ft, setting_hpa)? - altitude_ft).abs() < 1e-7);
        let station_hpa = station_pressure_hpa(setting_hpa, elevation_ft)?;
        prop_assert!(same(altimeter_setting_hpa(station_hpa, elevation_ft)?, setting_hpa));
        let true_ft = true_altitude_ft(pressure_ft, setting_hpa, elevation_ft, deviation_k)?;
        let again_ft = pressure_altitude_at_true_altitude_ft(true_ft, setting_hpa, elevation_ft, deviation_k)?;
        prop_assert!((again_ft - pressure_ft).abs() < 1e-6, "{again_ft} ft for {pressure_ft} ft");
        let height_ft = height_above_station_ft(pressure_ft, setting_hpa, elevation_ft, deviation_k)?;
        prop_assert!((height_ft + elevation_ft - true_ft).abs() < 1e-7);
    }

    #[test]
    fn temperatures_there_and_back(degc in -80.0..50.0, mach in 0.0..2.0, recovery in 0.0..1.0) {
        let total_degc = total_temperature_degc(degc, mach, recovery)?;
        prop_assert!(total_degc >= degc - 1e-12);
        prop_assert!((static_temperature_degc(total_degc, mach, recovery)? - degc).abs() < 1e-10);
    }

    /// At the crossover altitude the calibrated airspeed is the Mach number.
    #[test]
    fn the_crossover_is_where_both_speeds_meet(cas_kt in 150.0..400.0, mach in 0.6..0.95) {
        let altitude_ft = crossover_altitude_ft(cas_kt, mach)?;
        prop_assert!(same(mach_from_cas(cas_kt, altitude_ft)?, mach));
    }
}
