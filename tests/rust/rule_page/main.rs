//! The page of the rules of thumb: its tables are computed anew, and what it says in words is held over a finer grid.
#![allow(
    clippy::unwrap_used,
    clippy::panic,
    clippy::indexing_slicing,
    missing_docs,
    reason = "a test fails by panicking"
)]

#[path = "../../../core/examples/rule_page/air.rs"]
mod air;
#[path = "../../../core/examples/rule_page/arcs.rs"]
mod arcs;
#[path = "../../../core/examples/rule_page/flown.rs"]
mod flown;
#[path = "../../../core/examples/rule_page/holds.rs"]
mod holds;
#[path = "../../../core/examples/rule_page/page.rs"]
mod page;
#[path = "../../../core/examples/rule_page/small.rs"]
mod small;
#[path = "../../../core/examples/rule_page/terms.rs"]
mod terms;

use lubberline::plain::{RuleLeadFlown, rule_lead_flown};
use lubberline::rules::{LeadRule, TurnCue, TurnVerdict};
use lubberline::value::units::knot;

fn printed() -> String {
    std::fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/../docs/rules.md")).unwrap()
}

#[test]
fn the_tables_of_the_page_are_what_is_computed() {
    let (printed, computed) = (printed(), page::renew(&printed()).unwrap());
    for (line, (is, should)) in printed.lines().zip(computed.lines()).enumerate() {
        assert_eq!(
            is,
            should,
            "docs/rules.md:{}; `cargo run -p lubberline --example rule_page -- --write`",
            line + 1
        );
    }
    assert_eq!(printed.len(), computed.len());
}

#[test]
fn a_page_that_is_out_of_form_is_refused() {
    for (page, why) in [
        ("<!-- table: terms", "is not ended"),
        ("<!-- table: terms -->", "is not ended"),
        ("<!-- table: tides --><!-- end -->", "is no table's name"),
        ("nothing", "the page has no table"),
    ] {
        let error = page::renew(page).unwrap_err().to_string();
        assert!(error.contains(why), "{page}: {error}");
    }
    let drifted = printed().replacen("| 450 kt | 37 000 ft |", "| 450 kt | 38 000 ft |", 1);
    assert_ne!(page::renew(&drifted).unwrap(), drifted);
}

/// The turn by the rule's reading, in calm air.
fn fly(airspeed_kt: f64, height_ft: f64, change_deg: f64) -> RuleLeadFlown {
    rule_lead_flown(
        360.0,
        change_deg,
        airspeed_kt,
        height_ft,
        0.0,
        0.0,
        25.0,
        3.0,
        5.0,
        LeadRule::Third,
        TurnCue::Reading,
        50.0,
        0.5,
        1.0,
    )
    .unwrap()
}

fn verdict(airspeed_kt: f64, height_ft: f64, change_deg: f64) -> TurnVerdict {
    TurnVerdict::from_code("verdict", fly(airspeed_kt, height_ft, change_deg).verdict).unwrap()
}

fn steps(from: f64, to: f64, count: u32) -> impl Iterator<Item = f64> {
    (0..=count).map(move |step| from + (to - from) * f64::from(step) / f64::from(count))
}

/// Every point of a box of speeds, heights and changes comes to one verdict.
fn all_are(expected: TurnVerdict, speeds_kt: (f64, f64), heights_ft: (f64, f64), changes_deg: (f64, f64)) {
    for airspeed_kt in steps(speeds_kt.0, speeds_kt.1, 12) {
        for height_ft in steps(heights_ft.0, heights_ft.1, 12) {
            for change_deg in steps(changes_deg.0, changes_deg.1, 6) {
                let is = verdict(airspeed_kt, height_ft, change_deg);
                assert_eq!(is, expected, "{airspeed_kt} kt {height_ft} ft {change_deg} deg");
            }
        }
    }
}

/// Every point of a part of the climb, for a range of changes, comes to one verdict.
fn climb_is(expected: TurnVerdict, heights_ft: (f64, f64), changes_deg: (f64, f64)) {
    for height_ft in steps(heights_ft.0, heights_ft.1, 34) {
        let airspeed_kt = flown::climb_airspeed(height_ft).unwrap().value().get::<knot>();
        for change_deg in steps(changes_deg.0, changes_deg.1, 6) {
            let is = verdict(airspeed_kt, height_ft, change_deg);
            assert_eq!(is, expected, "{airspeed_kt} kt {height_ft} ft {change_deg} deg");
        }
    }
}

#[test]
fn a_slow_aircraft_at_moderate_height_is_safe() {
    all_are(TurnVerdict::Safe, (60.0, 180.0), (0.0, 9_500.0), (5.0, 120.0));
}

#[test]
fn the_climb_of_a_jet_is_safe_for_small_changes() {
    climb_is(TurnVerdict::Safe, (3_000.0, 37_000.0), (5.0, 60.0));
}

#[test]
fn the_climb_of_a_jet_is_safe_for_a_square_turn_to_24_000_ft() {
    climb_is(TurnVerdict::Safe, (3_000.0, 24_000.0), (60.0, 90.0));
    for height_ft in steps(24_000.0, 37_000.0, 26) {
        let airspeed_kt = flown::climb_airspeed(height_ft).unwrap().value().get::<knot>();
        assert!(fly(airspeed_kt, height_ft, 90.0).overshoot_nm < 1.0, "{height_ft} ft");
    }
}

#[test]
fn a_turn_is_not_late_to_the_airspeed_of_the_lower_height_and_the_greater_change() {
    let heights_ft = [0.0, 1_000.0, 5_000.0, 10_000.0, 20_000.0, 30_000.0, 40_000.0, 45_000.0];
    let changes_deg = [5.0, 30.0, 60.0, 90.0, 120.0];
    for heights_ft in heights_ft.windows(2) {
        for changes_deg in changes_deg.windows(2) {
            let to_kt = flown::not_late_to_kt(heights_ft[0], changes_deg[1]).unwrap();
            for airspeed_kt in steps(60.0, to_kt.unwrap_or(600.0), 9) {
                for height_ft in steps(heights_ft[0], heights_ft[1], 4) {
                    for change_deg in steps(changes_deg[0], changes_deg[1], 3) {
                        let is = verdict(airspeed_kt, height_ft, change_deg);
                        assert_ne!(is, TurnVerdict::Late, "{airspeed_kt} kt {height_ft} ft {change_deg} deg");
                    }
                }
            }
        }
    }
}

#[test]
fn faster_than_that_it_is_late() {
    for height_ft in steps(0.0, 45_000.0, 11) {
        for change_deg in [30.0, 60.0, 90.0, 120.0] {
            let to_kt = flown::not_late_to_kt(height_ft, change_deg).unwrap();
            for airspeed_kt in to_kt.into_iter().flat_map(|to_kt| steps(to_kt + 10.0, 700.0, 12)) {
                let is = verdict(airspeed_kt, height_ft, change_deg);
                assert_eq!(is, TurnVerdict::Late, "{airspeed_kt} kt {height_ft} ft {change_deg} deg");
            }
        }
    }
}

#[test]
fn beyond_a_square_turn_the_climb_is_late() {
    climb_is(TurnVerdict::Late, (3_000.0, 37_000.0), (120.0, 150.0));
}

#[test]
fn slow_and_high_is_early() {
    all_are(TurnVerdict::Early, (80.0, 250.0), (20_000.0, 45_000.0), (60.0, 90.0));
}
