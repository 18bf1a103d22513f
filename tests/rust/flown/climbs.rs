//! Flights at changing altitude, and in a wind that is counted from each place's own north.

use lubberline::earth::inverse;
use lubberline::flight::{Flight, Reference, Start, Steering, WindField};
use lubberline::turn::TurnLimits;
use lubberline::value::units::*;
use lubberline::value::*;
use lubberline::wind::{Wind, WindLevel, make_good};

use super::{Draw, airspeed, bearing};

fn position(latitude_deg: f64, longitude_deg: f64) -> Position {
    Position::new(
        Latitude::new(degrees(latitude_deg)).unwrap(),
        Longitude::new(degrees(longitude_deg)).unwrap(),
    )
}

fn altitude(value_ft: f64) -> TrueAltitude {
    TrueAltitude::new(feet(value_ft)).unwrap()
}

fn wind(from_deg: f64, speed_kt: f64) -> Wind<TrueNorth> {
    Wind { from: bearing(from_deg), speed: WindSpeed::new(knots(speed_kt)).unwrap() }
}

fn flight(from: Position, heading_deg: f64, altitude_ft: f64, airspeed_kt: f64, wind: WindField) -> Flight {
    Flight::new(&Start {
        position: from,
        altitude: altitude(altitude_ft),
        heading: bearing(heading_deg),
        north_of: None,
        true_airspeed: airspeed(airspeed_kt),
        wind,
        limits: TurnLimits::default(),
        reaction: seconds(0.0),
    })
}

fn rate(climb_fpm: f64) -> Velocity {
    feet(climb_fpm) / seconds(60.0)
}

#[test]
fn a_climb_or_descent_levels_off_at_its_altitude_when_its_time_is_up() {
    for (from_ft, to_ft, climb_fpm) in [(2_000.0, 14_000.0, 1_800.0), (38_000.0, 9_000.0, 2_500.0)] {
        for step_s in [1.0 / 60.0, 0.7, 5.0] {
            let calm = WindField::uniform(Wind::calm(), Reference::Carried);
            let mut flight = flight(position(52.0, 8.0), 70.0, from_ft, 420.0, calm);
            flight.climb_to(altitude(to_ft), rate(climb_fpm));
            let climbing_s = (to_ft - from_ft).abs() / climb_fpm * 60.0;
            let height_ft = |flight: &Flight| flight.altitude().value().get::<foot>();
            let steps = (climbing_s / step_s) as u32;
            for _ in 0..steps {
                flight.step(seconds(step_s));
            }
            let flown_ft = f64::from(steps) * step_s / 60.0 * climb_fpm * (to_ft - from_ft).signum();
            assert!(
                (height_ft(&flight) - from_ft - flown_ft).abs() < 1e-6,
                "{step_s}: {}",
                height_ft(&flight)
            );
            flight.step(seconds(5.0));
            assert!((height_ft(&flight) - to_ft).abs() < 1e-9, "{step_s}: {}", height_ft(&flight));
            let before = flight.position();
            flight.step(seconds(5.0));
            assert!((height_ft(&flight) - to_ft).abs() < 1e-9 && flight.position() != before);
        }
    }
}

/// On a slope the airspeed lies along the slope, and what is flown high up is less below.
#[test]
fn a_climb_covers_the_ground_that_its_slope_and_its_height_leave() {
    let calm = WindField::uniform(Wind::calm(), Reference::Carried);
    let start = position(0.0, 20.0);
    let mut flight = flight(start, 90.0, 0.0, 240.0, calm);
    flight.climb_to(altitude(30_000.0), rate(3_000.0));
    for _ in 0..600 {
        flight.step(seconds(1.0));
    }
    // Along the equator, whose radius is that of the ellipsoid: the slope's ground speed by the mean of R / (R + h).
    let (radius_m, top_m) = (6_378_137.0, feet(30_000.0).get::<meter>());
    let along_m_s = knots(240.0).get::<meter_per_second>();
    let climb_m_s = rate(3_000.0).get::<meter_per_second>();
    let level_m_s = (along_m_s * along_m_s - climb_m_s * climb_m_s).sqrt();
    let expected_m = level_m_s * 600.0 * radius_m / top_m * (top_m / radius_m).ln_1p();
    let flown_m = inverse(start, flight.position()).distance.value().get::<meter>();
    assert!((flown_m - expected_m).abs() < 0.01, "{flown_m} {expected_m}");
}

/// The stated difference between steps of 1/60 s and of 5 s, in climbing turns through a wind that changes with altitude.
#[test]
fn coarse_steps_fly_the_path_of_fine_ones_in_a_climbing_turn_through_two_winds() {
    let mut draw = Draw::new(11);
    let mut worst_m: f64 = 0.0;
    for _ in 0..40 {
        let airspeed_kt = draw.between(60.0, 600.0);
        let level = |altitude_ft: f64, wind: Wind<TrueNorth>| WindLevel {
            altitude: PressureAltitude::new(feet(altitude_ft)).unwrap(),
            wind,
        };
        let (low, high) = (draw.wind(airspeed_kt, 0.3), draw.wind(airspeed_kt, 0.5));
        let field =
            WindField::between(level(5_000.0, low), level(25_000.0, high), Reference::Carried).unwrap();
        let from = draw.station().position;
        // Changes large enough for the bank that is planned.
        let (heading_deg, change_deg) = (draw.between(0.0, 360.0), draw.side() * draw.between(30.0, 170.0));
        let ends = [1.0 / 60.0, 5.0].map(|step_s| {
            let mut flight = flight(from, heading_deg, 3_000.0, airspeed_kt, field);
            flight.steer(Steering::Turn(lubberline::flight::PlannedTurn {
                begin: lubberline::flight::Begin::Now,
                heading_after: bearing(heading_deg + change_deg),
                heading_change: degrees(change_deg),
                bank: degrees(20.0),
            }));
            flight.climb_to(altitude(28_000.0), rate(6.0 * airspeed_kt));
            for _ in 0..(300.0 / step_s) as u32 {
                flight.step(seconds(step_s));
            }
            flight
        });
        let [fine, coarse] = &ends;
        assert!((fine.altitude().value() - coarse.altitude().value()).abs() < metres(1e-6));
        worst_m = worst_m.max(inverse(fine.position(), coarse.position()).distance.value().get::<meter>());
    }
    println!("5 s against 1/60 s: {worst_m} m");
    assert!(worst_m < 0.1, "{worst_m} m");
}

/// Far along a parallel in the north the meridians have turned by tens of degrees, and the wind with them.
#[test]
fn a_wind_of_each_place_blows_from_its_own_north() {
    let blowing = wind(200.0, 90.0);
    let speed_kt = 300.0;
    let mut turned_deg: f64 = 0.0;
    for reference in [Reference::Local, Reference::Carried] {
        let mut flight =
            flight(position(70.0, -30.0), 90.0, 20_000.0, speed_kt, WindField::uniform(blowing, reference));
        for minute in 0..120 {
            let expected = make_good(flight.true_heading(), airspeed(speed_kt), blowing);
            let off_deg = expected.track.unwrap().change_to(flight.track()).angle().get::<degree>().abs();
            // The speed over the ground is counted at the surface or at the height: within the height over the radius.
            let off_kt = (expected.groundspeed.value() - flight.groundspeed().value()).get::<knot>().abs();
            if reference == Reference::Local {
                assert!(off_deg < 1e-6 && off_kt < 0.5, "{minute}: {off_deg} deg, {off_kt} kt");
            } else {
                turned_deg = turned_deg.max(off_deg);
            }
            for _ in 0..60 {
                flight.step(seconds(1.0));
            }
        }
    }
    assert!(turned_deg > 3.0, "the carried wind must have parted from the local one: {turned_deg} deg");
}
