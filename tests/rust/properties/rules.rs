//! The rules of thumb: the terms of an error sum to it, its two sides are the functions that stand alone, and the turn flown is off by it.

use lubberline::lead::RadialFlown;
use lubberline::plain::*;
use lubberline::procedure::{HoldingSide, TimedLeg};
use lubberline::rules::{ArcEntryRule, ArcLeadRule, DriftRule, LeadRule, RollOutRule, TurnCue};
use lubberline::station::HorizonRule;
use proptest::prelude::*;

use crate::config;

/// Equal but for the rounding of the largest of the numbers that went into them.
fn same(one: f64, other: f64, largest: f64) -> bool {
    (one - other).abs() <= 1e-12 * (1.0 + largest.abs())
}

/// The rule and the exact answer are as given, their difference is the error, and the terms sum to it.
macro_rules! holds {
    ($found:expr, ($rule:ident, $exact:ident, $error:ident), $terms:expr, $by_rule:expr, $exactly:expr) => {{
        let (found, by_rule, exactly) = ($found, $by_rule, $exactly);
        let largest = found.$rule.abs().max(found.$exact.abs());
        prop_assert!(same(found.$rule, by_rule, largest), "{found:?}: by rule {by_rule}");
        prop_assert!(same(found.$exact, exactly, largest), "{found:?}: exactly {exactly}");
        prop_assert!(same(found.$rule - found.$exact, found.$error, largest), "{found:?}");
        let terms: f64 = $terms(&found);
        prop_assert!(same(terms, found.$error, 10.0 * largest), "{found:?}");
    }};
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn the_lead(
        inbound in 0.0..360.0, change in -150.0..150.0, airspeed in 60.0..600.0, height in -500.0..45_000.0,
        from in 0.0..360.0, share in 0.0..0.5, bank in 10.0..35.0, roll in 1.0..20.0,
    ) {
        let (outbound, wind) = (inbound + change, share * airspeed);
        let error = rule_lead_error(
            inbound, outbound, airspeed, height, from, wind, bank, 3.0, roll, LeadRule::Third,
        )?;
        let groundspeed = wind_triangle(inbound, airspeed, from, wind)?.groundspeed_kt;
        let of_lead = error.allowance_nm + error.round_radius_nm + error.proportion_nm + error.standard_rate_nm
            + error.groundspeed_nm + error.heading_change_nm + error.drift_nm + error.roll_nm;
        holds!(
            error, (rule_lead_nm, exact_lead_nm, lead_error_nm), |_: &RuleLeadError| of_lead,
            rule_lead_nm(groundspeed, change, 0.0)?,
            lead_nm(inbound, outbound, airspeed, from, wind, bank, 3.0, roll)?
        );
        holds!(
            error, (rule_reading_nm, exact_reading_nm, reading_error_nm),
            |it: &RuleLeadError| of_lead + it.mile_nm + it.sum_nm,
            rule_reading_nm(groundspeed, change, height)?,
            dme_at_roll_in_nm(inbound, outbound, airspeed, from, wind, bank, 3.0, roll, height)?
        );
    }

    /// Wings level beyond the outbound course by the sine of the change of what the lead is short, and by what the height takes off the ground.
    #[test]
    fn the_turn_flown_is_off_by_the_error_of_the_lead(
        inbound in 0.0..360.0, change in 5.0..120.0, right in any::<bool>(), airspeed in 60.0..350.0,
        height in 0.0..30_000.0, from in 0.0..360.0, share in 0.0..0.3,
    ) {
        let (outbound, wind) = (if right { inbound + change } else { inbound - change }, share * airspeed);
        let error = rule_lead_error(inbound, outbound, airspeed, height, from, wind, 25.0, 3.0, 5.0, LeadRule::Third)?;
        let flown = rule_lead_flown(
            inbound, outbound, airspeed, height, from, wind, 25.0, 3.0, 5.0, LeadRule::Third, TurnCue::Distance,
            50.0, 0.5, 1.0,
        )?;
        let expected_nm = -error.lead_error_nm * f64::to_radians(change).sin();
        let room_nm = error.rule_lead_nm.abs().max(error.exact_lead_nm.abs()) + 1.0;
        let allowed_nm = 1e-4 * (room_nm / 5.0).powi(3).max(1.0) + 3.0 * room_nm * height / 20_900_000.0;
        prop_assert!((flown.overshoot_nm - expected_nm).abs() < allowed_nm, "{flown:?} {expected_nm} {allowed_nm}");
    }

    #[test]
    fn height_and_distance(height in 1.0..60_000.0, half_angle in 10.0..80.0, beyond in 0.01..200.0, antenna in 0.0..3_000.0) {
        holds!(
            rule_cone_radius_error(height, half_angle)?, (rule_nm, exact_nm, error_nm),
            |it: &RuleConeRadiusError| it.mile_nm + it.angle_nm,
            rule_cone_radius_nm(height)?, cone_radius_nm(height, half_angle)?
        );
        holds!(
            rule_least_dme_error(height)?, (rule_nm, exact_nm, error_nm), |it: &RuleLeastDmeError| it.error_nm,
            rule_least_dme_nm(height)?, least_dme_nm(height)?
        );
        let reading = height * 0.3048 / 1852.0 + beyond;
        holds!(
            rule_ground_distance_error(reading, height)?, (rule_nm, exact_nm, error_nm),
            |it: &RuleGroundDistanceError| it.triangle_nm + it.curve_nm, reading, ground_distance_nm(reading, height)?
        );
        for &rule in HorizonRule::ALL {
            holds!(
                rule_radio_horizon_error(height, antenna, rule)?, (rule_nm, exact_nm, error_nm),
                |it: &RuleRadioHorizonError| it.factor_nm + it.root_nm,
                radio_horizon_nm(height, antenna, rule)?, radio_horizon_nm(height, antenna, HorizonRule::FourThirds)?
            );
        }
    }

    #[test]
    fn arcs_and_radials(arc in 5.0..60.0, share in 0.01..0.5, angle in 1.0..90.0, off in -90.0..90.0, dots in -5.0..5.0) {
        let turn = share * arc;
        for flown in [RadialFlown::Inbound, RadialFlown::Outbound] {
            for &rule in ArcLeadRule::ALL {
                let exact = match flown {
                    RadialFlown::Inbound => lead_radial_inbound_deg(arc, turn)?,
                    RadialFlown::Outbound => lead_radial_outbound_deg(arc, turn)?,
                };
                holds!(
                    rule_lead_radials_error(arc, turn, flown, rule)?, (rule_deg, exact_deg, error_deg),
                    |it: &RuleLeadRadialsError| it.sixty_deg + it.correction_deg + it.geometry_deg,
                    rule_lead_radials_deg(arc, turn, flown, rule)?, exact
                );
            }
            for &rule in ArcEntryRule::ALL {
                let exact = match flown {
                    RadialFlown::Inbound => arc_entry_inbound_nm(arc, turn)? - arc,
                    RadialFlown::Outbound => arc - arc_entry_outbound_nm(arc, turn)?,
                };
                let error = rule_arc_entry_lead_error(arc, turn, flown, rule)?;
                prop_assert!((error.exact_nm - exact).abs() < 1e-12 * arc);
                holds!(
                    error, (rule_nm, exact_nm, error_nm), |it: &RuleArcEntryLeadError| it.radius_nm + it.curve_nm,
                    rule_arc_entry_lead_nm(arc, turn, flown, rule)?, error.exact_nm
                );
            }
        }
        let lead = rule_intercept_lead_error(arc, turn, angle)?;
        holds!(
            lead, (rule_deg, exact_deg, error_deg),
            |it: &RuleInterceptLeadError| it.sixty_deg + it.share_deg + it.arc_deg,
            rule_intercept_lead_deg(arc, turn, angle)?,
            f64::asin(share * (1.0 - f64::to_radians(angle).cos())).to_degrees()
        );
        let intercept = rule_intercept_angle_error(off)?;
        holds!(
            intercept, (rule_deg, exact_deg, error_deg), |it: &RuleInterceptAngleError| it.limits_deg + it.doubling_deg,
            rule_intercept_angle_deg(off)?, intercept.exact_deg
        );
        holds!(
            rule_arc_correction_error(arc + 1.0, arc)?, (rule_deg, exact_deg, error_deg),
            |it: &RuleArcCorrectionError| it.error_deg,
            rule_arc_correction_deg(arc + 1.0, arc)?, arc_least_correction_deg(arc + 1.0, arc)?
        );
        let deflected = rule_off_course_error(dots, arc)?;
        holds!(
            deflected, (rule_nm, exact_nm, error_nm), |it: &RuleOffCourseError| it.dot_nm + it.sine_nm,
            rule_off_course_nm(dots, arc)?, deflected.exact_nm
        );
    }

    #[test]
    fn the_roll_out(airspeed in 60.0..600.0, bank in 1.0..80.0, roll in 0.5..30.0) {
        for &rule in RollOutRule::ALL {
            let error = rule_roll_out_lead_error(airspeed, bank, roll, rule)?;
            holds!(
                error, (rule_deg, exact_deg, error_deg), |it: &RuleRollOutLeadError| it.share_deg + it.tangent_deg,
                rule_roll_out_lead_deg(bank, rule)?, error.exact_deg
            );
        }
    }

    #[test]
    fn altimetry(altitude in -1_000.0..45_000.0, temperature in -50.0..40.0, setting in 950.0..1_050.0, height in 1.0..10_000.0) {
        holds!(
            rule_density_altitude_error(altitude, temperature)?, (rule_ft, exact_ft, error_ft),
            |it: &RuleDensityAltitudeError| it.standard_ft + it.slope_ft + it.curve_ft,
            density_altitude_rule_ft(altitude, temperature)?,
            density_altitude_ft(altitude, temperature)?
        );
        holds!(
            rule_pressure_altitude_error(altitude, setting)?, (rule_ft, exact_ft, error_ft),
            |it: &RulePressureAltitudeError| it.datum_ft + it.slope_ft + it.curve_ft,
            pressure_altitude_rule_ft(altitude, setting)?, pressure_altitude_ft(altitude, setting)?
        );
        holds!(
            rule_cold_temperature_error(height, temperature, 300.0)?, (rule_ft, exact_ft, error_ft),
            |it: &RuleColdTemperatureError| it.share_ft + it.column_ft,
            cold_temperature_correction_rule_ft(height, temperature, 300.0)?,
            cold_temperature_correction_exact_ft(height, temperature, 300.0)?
        );
    }
}

proptest! {
    #![proptest_config(proptest::test_runner::Config { cases: 100, ..config() })]

    #[test]
    fn holds_in_wind(inbound in 0.0..360.0, airspeed in 90.0..250.0, from in 0.0..360.0, share in 0.01..0.15) {
        let (side, wind) = (HoldingSide::Right, share * airspeed);
        let wanted = holding_pattern(inbound, side, TimedLeg::Inbound, 60.0, airspeed, from, wind, 25.0, 3.0, 5.0)?;
        let error = rule_outbound_correction_error(
            inbound, side, 60.0, airspeed, from, wind, 25.0, 3.0, 5.0, DriftRule::Triple,
        )?;
        // Directions are reduced to a circle on the way.
        prop_assert!((error.exact_deg - wanted.outbound_correction_deg).abs() < 1e-9);
        prop_assert!((error.rule_deg + 3.0 * wanted.inbound_correction_deg).abs() < 1e-9);
        prop_assert!((error.rule_deg - error.exact_deg - error.error_deg).abs() < 1e-12);
        let by_headwind =
            rule_outbound_time_by_headwind_error(inbound, side, 60.0, airspeed, from, wind, 25.0, 3.0, 5.0)?;
        let headwind = wind * f64::to_radians(from - inbound - 180.0).cos();
        prop_assert!((by_headwind.rule_s - rule_outbound_time_by_headwind_s(60.0, headwind)?).abs() < 1e-6);
        prop_assert!((by_headwind.exact_s - wanted.outbound_clock_s).abs() < 1e-9);
        prop_assert!((by_headwind.knot_s + by_headwind.turns_s - by_headwind.error_s).abs() < 1e-9);
        let round = holding_pattern(inbound, side, TimedLeg::Outbound, 60.0, airspeed, from, wind, 25.0, 3.0, 5.0)?;
        let next = rule_outbound_time_error(inbound, side, 60.0, 60.0, airspeed, from, wind, 25.0, 3.0, 5.0)?;
        let by_rule = rule_outbound_time_s(round.outbound_clock_s, round.inbound_time_s, 60.0)?;
        prop_assert!((next.rule_s - by_rule).abs() < 1e-6 && (next.exact_s - wanted.outbound_clock_s).abs() < 1e-9);
        prop_assert!((next.groundspeed_s + next.heading_s - next.error_s).abs() < 1e-9);
    }
}
