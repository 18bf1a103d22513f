//! What must not compile. Each line that ends in a code must fail with that error of the compiler, and no other line may.

use lubberline::air::*;
use lubberline::earth::*;
use lubberline::lead::*;
use lubberline::station::*;
use lubberline::turn::*;
use lubberline::value::units::*;
use lubberline::value::*;
use lubberline::wind::*;

pub fn norths(truth: TrueBearing, magnetic: MagneticBearing, radial: Radial, airspeed: TrueAirspeed) {
    let _: TrueBearing = truth;
    let _: TrueBearing = magnetic; // E0308
    let _: MagneticBearing = radial; // E0308
    let _ = truth == magnetic; // E0308
    let _ = truth.change_to(truth);
    let _ = truth.change_to(radial); // E0308
    let wind = Wind::calm();
    let _ = hold_course(truth, airspeed, wind);
    let _ = hold_course(radial, airspeed, wind); // E0308
    let tower = Wind { from: magnetic, speed: wind.speed };
    let _ = hold_course(magnetic, airspeed, tower);
    let _ = hold_course(truth, airspeed, tower); // E0308
    let _ = CourseChange::new(truth, truth, airspeed, wind, &TurnLimits::default(), TurnSide::Shortest);
    let _ = CourseChange::new(truth, magnetic, airspeed, wind, &TurnLimits::default(), TurnSide::Shortest); // E0308
}

pub fn directions_and_changes(bearing: TrueBearing, change: DirectionChange, angle: Angle) {
    let _ = bearing.turned_by(change);
    let _ = bearing.turned_by(angle); // E0308
    let _: TrueBearing = change; // E0308
    let _: DirectionChange = bearing; // E0308
    let _ = bearing + bearing; // E0369
}

pub fn heights(
    pressure: PressureAltitude,
    altitude: TrueAltitude,
    height: HeightAboveStation,
    elevation: Elevation,
    setting: AltimeterSetting,
    isa: IsaDeviation,
) {
    let _ = Air::standard(pressure);
    let _ = Air::standard(altitude); // E0308
    let _ = pressure_altitude_at(altitude, setting, elevation, isa);
    let _ = pressure_altitude_at(pressure, setting, elevation, isa); // E0308
    let _ = pressure_altitude_at(altitude, setting, height, isa); // E0308
    let _ = altitude > altitude;
    let _ = altitude > height; // E0308
    let _ = standard_pressure(pressure);
    let _ = standard_pressure(altitude); // E0308
    let _: TrueAltitude = pressure; // E0308
    let _: HeightAboveStation = altitude; // E0308
    let _: Elevation = height; // E0308
    let _: TrueAltitude = elevation; // E0308
}

pub fn speeds(
    air: Air,
    calibrated: CalibratedAirspeed,
    equivalent: EquivalentAirspeed,
    truth: TrueAirspeed,
    over: Groundspeed,
    bank: Bank,
) {
    let _ = radius(truth, bank);
    let _ = radius(calibrated, bank); // E0308
    let _ = radius(equivalent, bank); // E0308
    let _ = radius(over, bank); // E0308
    let _ = impact_from_calibrated(calibrated);
    let _ = impact_from_calibrated(truth); // E0308
    let _ = air.true_from_calibrated(calibrated);
    let _ = air.true_from_calibrated(equivalent); // E0308
    let _ = air.true_from_calibrated(truth); // E0308
    let _ = RolledTurn::new(truth, &TurnLimits::default(), degrees(90.0));
    let _ = RolledTurn::new(over, &TurnLimits::default(), degrees(90.0)); // E0308
    let _ = RolledTurn::new(knots(300.0), &TurnLimits::default(), degrees(90.0)); // E0308
    let _: Groundspeed = truth; // E0308
    let _ = truth > calibrated; // E0308
}

pub fn distances(
    slant: SlantRange,
    ground: GroundDistance,
    height: HeightAboveStation,
    altitude: TrueAltitude,
) {
    let _ = slant_range(ground, height);
    let _ = slant_range(slant, height); // E0308
    let _ = slant_range(ground, altitude); // E0308
    let _ = ground_distance(slant, height);
    let _ = ground_distance(ground, height); // E0308
    let _: GroundDistance = slant; // E0308
    let _ = slant.value() + ground.value();
    let _ = slant + ground; // E0369
    let _ = slant.value() + knots(1.0); // E0308
}

pub fn points(
    latitude: Latitude,
    longitude: Longitude,
    position: Position,
    station: Station,
    altitude: TrueAltitude,
    distance: GroundDistance,
    course: TrueBearing,
    radial: Radial,
) {
    let _ = direct(position, course, distance);
    let _ = direct(position, radial, distance); // E0308
    let _ = Position::new(latitude, longitude);
    let _ = Position::new(longitude, latitude); // E0308
    let _ = Position::new(61.5, -12.25); // E0308
    let _ = station.observe(position, altitude);
    let _ = station.observe((61.5, -12.25), altitude); // E0308
}

pub fn units(angle: Angle) {
    let _ = Bank::new(angle);
    let _ = Bank::new(25.0); // E0308
    let _ = Bank::new(knots(25.0)); // E0308
    let _ = Elevation::new(knots(420.0)); // E0308
    let _: Length = seconds(3.0); // E0308
    let _ = feet(3.0) + seconds(3.0); // E0308
}
