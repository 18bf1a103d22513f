// Generated from core/src/plain; do not edit. To renew: cargo run -p lubberline-generate

//! The C functions of the plain layer, its choices and its status codes.

#![allow(clippy::too_many_arguments, reason = "the C interface takes plain numbers")]

use std::ffi::c_char;

use lubberline::plain;
use lubberline::plain::table::Function;

use crate::call::{Array, many, one};

/// Success.
pub const LUBBER_OK: i32 = 0;
/// A failure inside the library that none should meet; the outputs are NaN.
pub const LUBBER_ERROR_INTERNAL: i32 = -1000;
/// A pointer is null, or a structure has a size or a setting that this library does not know.
pub const LUBBER_ERROR_STRUCT: i32 = -1001;
/// Latitude out of range; allowed: from -90.0 to 90.0 deg.
pub const LUBBER_ERROR_LATITUDE: i32 = -1;
/// Longitude out of range; allowed: any finite number of deg.
pub const LUBBER_ERROR_LONGITUDE: i32 = -2;
/// Bearing out of range; allowed: any finite number of deg.
pub const LUBBER_ERROR_BEARING: i32 = -3;
/// Change of direction out of range; allowed: any finite number of deg.
pub const LUBBER_ERROR_DIRECTION_CHANGE: i32 = -4;
/// Declination out of range; allowed: from -180.0 to 180.0 deg.
pub const LUBBER_ERROR_DECLINATION: i32 = -5;
/// Bank out of range; allowed: above 0.0 below 90.0 deg.
pub const LUBBER_ERROR_BANK: i32 = -6;
/// Turn rate out of range; allowed: above 0 deg/s, or infinite.
pub const LUBBER_ERROR_TURN_RATE: i32 = -7;
/// Roll rate out of range; allowed: above 0 deg/s, or infinite.
pub const LUBBER_ERROR_ROLL_RATE: i32 = -8;
/// Ground distance out of range; allowed: from 0.0 to 10900.0 NM.
pub const LUBBER_ERROR_GROUND_DISTANCE: i32 = -9;
/// Slant range out of range; allowed: from 0.0 to 10900.0 NM.
pub const LUBBER_ERROR_SLANT_RANGE: i32 = -10;
/// Pressure altitude out of range; allowed: from -16420.0 to 262467.2 ft.
pub const LUBBER_ERROR_PRESSURE_ALTITUDE: i32 = -11;
/// True altitude out of range; allowed: from -16500.0 to 400000.0 ft.
pub const LUBBER_ERROR_TRUE_ALTITUDE: i32 = -12;
/// Height above the station out of range; allowed: from -60000.0 to 400000.0 ft.
pub const LUBBER_ERROR_HEIGHT_ABOVE_STATION: i32 = -13;
/// Elevation out of range; allowed: from -16500.0 to 60000.0 ft.
pub const LUBBER_ERROR_ELEVATION: i32 = -14;
/// Calibrated airspeed out of range; allowed: from 0.0 to 5000.0 kt.
pub const LUBBER_ERROR_CALIBRATED_AIRSPEED: i32 = -15;
/// Equivalent airspeed out of range; allowed: from 0.0 to 5000.0 kt.
pub const LUBBER_ERROR_EQUIVALENT_AIRSPEED: i32 = -16;
/// True airspeed out of range; allowed: above 0.0 to 5000.0 kt.
pub const LUBBER_ERROR_TRUE_AIRSPEED: i32 = -17;
/// Groundspeed out of range; allowed: from 0.0 to 10000.0 kt.
pub const LUBBER_ERROR_GROUNDSPEED: i32 = -18;
/// Wind speed out of range; allowed: from 0.0 to 1000.0 kt.
pub const LUBBER_ERROR_WIND_SPEED: i32 = -19;
/// Mach number out of range; allowed: from 0.0 to 10.0.
pub const LUBBER_ERROR_MACH: i32 = -20;
/// ISA deviation out of range; allowed: from -150.0 to 150.0 K.
pub const LUBBER_ERROR_ISA_DEVIATION: i32 = -21;
/// Temperature out of range; allowed: from -200.0 to 200.0 degC.
pub const LUBBER_ERROR_TEMPERATURE: i32 = -22;
/// Static pressure out of range; allowed: above 0.0 to 2000.0 hPa.
pub const LUBBER_ERROR_STATIC_PRESSURE: i32 = -23;
/// Cone half-angle out of range; allowed: above 0.0 below 90.0 deg.
pub const LUBBER_ERROR_CONE_HALF_ANGLE: i32 = -24;
/// Radius out of range; allowed: above 0.0 to 5000.0 NM.
pub const LUBBER_ERROR_ARC_RADIUS: i32 = -25;
/// Intercept angle out of range; allowed: above 0.0 to 90.0 deg.
pub const LUBBER_ERROR_INTERCEPT_ANGLE: i32 = -26;
/// Load factor out of range; allowed: above 1.0 to 100.0.
pub const LUBBER_ERROR_LOAD_FACTOR: i32 = -27;
/// Geopotential altitude out of range; allowed: from -16513.1 to 392472.6 ft.
pub const LUBBER_ERROR_GEOPOTENTIAL_ALTITUDE: i32 = -28;
/// Impact pressure out of range; allowed: from 0.0 to 80000.0 hPa.
pub const LUBBER_ERROR_IMPACT_PRESSURE: i32 = -29;
/// True airspeed out of range; allowed: from 0.0 to 5000.0 kt.
pub const LUBBER_ERROR_AIRSPEED_OR_REST: i32 = -30;
/// Change of heading out of range; allowed: from -360.0 to 360.0 deg.
pub const LUBBER_ERROR_HEADING_CHANGE: i32 = -31;
/// Time in the turn out of range; allowed: from -1000000.0 to 1000000.0 s.
pub const LUBBER_ERROR_TURN_TIME: i32 = -32;
/// Altitude of a procedure out of range; allowed: from -2000.0 to 50000.0 ft.
pub const LUBBER_ERROR_PROCEDURE_ALTITUDE: i32 = -33;
/// Wind component out of range; allowed: from -1000.0 to 1000.0 kt.
pub const LUBBER_ERROR_WIND_COMPONENT: i32 = -34;
/// Altimeter setting out of range; allowed: from 400.0 to 1200.0 hPa.
pub const LUBBER_ERROR_ALTIMETER_SETTING: i32 = -35;
/// Indicated altitude out of range; allowed: from -50000.0 to 300000.0 ft.
pub const LUBBER_ERROR_INDICATED_ALTITUDE: i32 = -36;
/// Density altitude out of range; allowed: from -16420.0 to 262467.2 ft.
pub const LUBBER_ERROR_DENSITY_ALTITUDE: i32 = -37;
/// Height above the altimeter setting source out of range; allowed: from 0.0 to 20000.0 ft.
pub const LUBBER_ERROR_HEIGHT_ABOVE_SOURCE: i32 = -38;
/// Step of flight levels out of range; allowed: from 100.0 to 10000.0 ft.
pub const LUBBER_ERROR_LEVEL_STEP: i32 = -39;
/// Height of the transition layer out of range; allowed: from 0.0 to 10000.0 ft.
pub const LUBBER_ERROR_TRANSITION_LAYER: i32 = -40;
/// Total temperature out of range; allowed: from -270.0 to 10000.0 degC.
pub const LUBBER_ERROR_TOTAL_TEMPERATURE: i32 = -41;
/// Recovery factor out of range; allowed: from 0.0 to 1.0.
pub const LUBBER_ERROR_RECOVERY_FACTOR: i32 = -42;
/// Elapsed time out of range; allowed: above 0.0 to 1000000.0 s.
pub const LUBBER_ERROR_ELAPSED_TIME: i32 = -43;
/// Groundspeed out of range; allowed: above 0.0 to 10000.0 kt.
pub const LUBBER_ERROR_GROUNDSPEED_MADE_GOOD: i32 = -44;
/// Change of the bearing out of range; allowed: above 0.0 below 180.0 deg.
pub const LUBBER_ERROR_BEARING_DRIFT: i32 = -45;
/// Angle off the bow out of range; allowed: above 0.0 below 180.0 deg.
pub const LUBBER_ERROR_ANGLE_OFF_BOW: i32 = -46;
/// Radius of the sphere out of range; allowed: from 1.0 to 100000.0 NM.
pub const LUBBER_ERROR_SPHERE_RADIUS: i32 = -47;
/// Vertical speed out of range; allowed: from -30000.0 to 30000.0 ft/min.
pub const LUBBER_ERROR_VERTICAL_SPEED: i32 = -48;
/// Time of a leg of a hold out of range; allowed: from 0.0 to 3600.0 s.
pub const LUBBER_ERROR_HOLD_TIME: i32 = -49;
/// Cross-track distance out of range; allowed: from -5000.0 to 5000.0 NM.
pub const LUBBER_ERROR_CROSS_TRACK: i32 = -50;
/// Along-track distance out of range; allowed: from -10000.0 to 10000.0 NM.
pub const LUBBER_ERROR_ALONG_TRACK: i32 = -51;
/// Date out of range; allowed: from 2020.0 to 2035.0 yr.
pub const LUBBER_ERROR_DECIMAL_YEAR: i32 = -52;
/// Height above the surface out of range; allowed: from 0.0 to 400000.0 ft.
pub const LUBBER_ERROR_SURFACE_HEIGHT: i32 = -53;
/// Full-scale deviation out of range; allowed: above 0.0 below 90.0 deg.
pub const LUBBER_ERROR_FULL_SCALE: i32 = -54;
/// Deflection out of range; allowed: from -1.0 to 1.0.
pub const LUBBER_ERROR_DEFLECTION: i32 = -55;
/// Course deviation out of range; allowed: from -90.0 to 90.0 deg.
pub const LUBBER_ERROR_COURSE_DEVIATION: i32 = -56;
/// Half-width of the zone abeam out of range; allowed: from 0.0 to 45.0 deg.
pub const LUBBER_ERROR_ABEAM_ZONE: i32 = -57;
/// Step of the display out of range; allowed: above 0.0 to 10.0 NM.
pub const LUBBER_ERROR_DISPLAY_STEP: i32 = -58;
/// Distance from the station out of range; allowed: above 0.0 to 5000.0 NM.
pub const LUBBER_ERROR_STATION_DISTANCE: i32 = -59;
/// Deflection in dots out of range; allowed: from -20.0 to 20.0.
pub const LUBBER_ERROR_DOTS: i32 = -60;
/// Confidence out of range; allowed: above 0.0 below 1.0.
pub const LUBBER_ERROR_CONFIDENCE: i32 = -61;
/// Number of trials out of range; allowed: from 1.0 to 10000000.0.
pub const LUBBER_ERROR_TRIALS: i32 = -62;
/// Gain out of range; allowed: above 0.0 to 100.0.
pub const LUBBER_ERROR_GAIN: i32 = -63;
/// Standard deviation out of range; allowed: from 0.0 to 1000000.0.
pub const LUBBER_ERROR_STANDARD_DEVIATION: i32 = -64;
/// Error of a direction out of range; allowed: from 0.0 to 90.0 deg.
pub const LUBBER_ERROR_ANGULAR_ERROR: i32 = -65;
/// Error of a distance out of range; allowed: from 0.0 to 1000.0 NM.
pub const LUBBER_ERROR_DISTANCE_ERROR: i32 = -66;
/// Distance from the VOR along the route out of range; allowed: from 0.0 to 75.0 NM.
pub const LUBBER_ERROR_ROUTE_DISTANCE: i32 = -67;
/// Number of the leg out of range; allowed: from 1.0 to 1000000.0.
pub const LUBBER_ERROR_LEG_NUMBER: i32 = -68;
/// Longitude from the grid's meridian out of range; allowed: from -60.0 to 60.0 deg.
pub const LUBBER_ERROR_GRID_LONGITUDE: i32 = -69;
/// Year out of range; allowed: from 2020.0 to 2034.0.
pub const LUBBER_ERROR_CALENDAR_YEAR: i32 = -70;
/// Month out of range; allowed: from 1.0 to 12.0.
pub const LUBBER_ERROR_MONTH: i32 = -71;
/// Day of the month out of range; allowed: from 1.0 below 32.0.
pub const LUBBER_ERROR_DAY_OF_MONTH: i32 = -72;
/// Number of wind levels out of range; allowed: from 1.0 to 1000.0.
pub const LUBBER_ERROR_WIND_LEVELS: i32 = -73;
/// Number of a flight's wind levels out of range; allowed: from 1.0 to 16.0.
pub const LUBBER_ERROR_FLIGHT_WIND_LEVELS: i32 = -74;
/// Spacing of points out of range; allowed: above 0 NM, or infinite.
pub const LUBBER_ERROR_POINT_SPACING: i32 = -75;
/// Magnetic variation out of range; allowed: from -180.0 to 180.0 deg.
pub const LUBBER_ERROR_MAGNETIC_VARIATION: i32 = -76;
/// The course change is a reversal and has no lead.
pub const LUBBER_ERROR_COURSE_REVERSAL: i32 = -101;
/// The airspeed cannot hold the course against the wind.
pub const LUBBER_ERROR_WIND_TOO_STRONG: i32 = -102;
/// The turn does not fit between the radial and the arc.
pub const LUBBER_ERROR_ARC_TOO_TIGHT: i32 = -103;
/// The slant range is shorter than the height, or longer than through the earth.
pub const LUBBER_ERROR_SLANT_RANGE_BELOW_HEIGHT: i32 = -104;
/// The turn would begin or end impossibly far from the fix.
pub const LUBBER_ERROR_LEAD_TOO_LONG: i32 = -105;
/// A choice is none of its alternatives.
pub const LUBBER_ERROR_UNKNOWN_CHOICE: i32 = -106;
/// The levels of a wind profile do not ascend.
pub const LUBBER_ERROR_LEVELS_NOT_ASCENDING: i32 = -107;
/// The calibrated airspeed is that Mach number at no pressure altitude.
pub const LUBBER_ERROR_NO_CROSSOVER: i32 = -108;
/// The two bearings to the station do not meet.
pub const LUBBER_ERROR_BEARINGS_DO_NOT_MEET: i32 = -109;
/// A leg of a procedure cannot be flown.
pub const LUBBER_ERROR_LEG_NOT_FLOWN: i32 = -110;
/// The lines do not meet.
pub const LUBBER_ERROR_NO_MEETING: i32 = -111;
/// No outbound heading closes the holding pattern.
pub const LUBBER_ERROR_PATTERN_OPEN: i32 = -112;
/// Two points between which a line is to run are one.
pub const LUBBER_ERROR_SAME_PLACE: i32 = -113;
/// No height receives the station at that distance.
pub const LUBBER_ERROR_BEYOND_HORIZON: i32 = -114;
/// The distance off course is more than that from the station.
pub const LUBBER_ERROR_OFF_COURSE_BEYOND_DISTANCE: i32 = -115;
/// An ident is longer than 16 bytes.
pub const LUBBER_ERROR_IDENT_TOO_LONG: i32 = -116;
/// The lines of position do not cross and give no fix.
pub const LUBBER_ERROR_NO_FIX: i32 = -117;
/// The calendar has no such date.
pub const LUBBER_ERROR_NO_SUCH_DATE: i32 = -118;
/// The aircraft is below the station.
pub const LUBBER_ERROR_BELOW_STATION: i32 = -119;
/// The rhumb line meets a pole before its end.
pub const LUBBER_ERROR_POLE_ON_RHUMB_LINE: i32 = -120;
/// The formula with the elevation of the source, ICAO Doc 8168 Vol I (5th ed. 2006), Part III Section 1 Chapter 4, from memory.
pub const LUBBER_COLD_TEMPERATURE_METHOD_FORMULA: i32 = 0;
/// The formula at sea level, rounded up to 10 ft as the cells of the table are: Doc 8168 Vol I, Table III-1-4-1 b), reproduced as FAA Aeronautical Information Manual (AIM) of 2023, TBL 7-3-1.
pub const LUBBER_COLD_TEMPERATURE_METHOD_TABLE: i32 = 1;
/// Read off evenly between the cells; the 5 000 ft column above it. AIM of 20 April 2023, 7-3-6 ("interpolation"), and the paragraph on acceptable use of the table.
pub const LUBBER_COLD_TEMPERATURE_METHOD_INTERPOLATED: i32 = 2;
/// That, rounded to the nearest 100 ft, which the same paragraph allows except for a minimum. It can come out too small.
pub const LUBBER_COLD_TEMPERATURE_METHOD_INTERPOLATED_NEAREST_HUNDRED: i32 = 3;
/// That, rounded up to 100 ft, which the same paragraph allows for a minimum too.
pub const LUBBER_COLD_TEMPERATURE_METHOD_INTERPOLATED_UP_TO_HUNDRED: i32 = 4;
/// 4 percent of the height for each 10 °C below standard, Doc 8168 Vol I, Part III Section 1 Chapter 4, 4.3.1, read in a quotation.
pub const LUBBER_COLD_TEMPERATURE_METHOD_FOUR_PERCENT: i32 = 5;
/// Hydrostatic balance in a column as much colder than standard as the air at the source. Derived.
pub const LUBBER_COLD_TEMPERATURE_METHOD_EXACT: i32 = 6;
/// ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993: R = 287.05287 J/(kg K). What the rest of the library takes.
pub const LUBBER_ATMOSPHERE_EDITION_ICAO1993: i32 = 0;
/// U.S. Standard Atmosphere, 1976, NOAA-S/T 76-1562, Table 2 (from memory): R = 8314.32 / 28.9644 = 287.05307 J/(kg K).
pub const LUBBER_ATMOSPHERE_EDITION_UNITED_STATES1976: i32 = 1;
/// The formula.
pub const LUBBER_TAS_FACTOR_METHOD_FORMULA: i32 = 0;
/// Read off evenly between the entries of the table in metres, every 500 m, and rounded to four decimals: its example in SI units does so.
pub const LUBBER_TAS_FACTOR_METHOD_TABLE_METRES: i32 = 1;
/// Read off evenly between the entries of the table in feet, every 1 000 ft (the step from memory), and rounded to four decimals.
pub const LUBBER_TAS_FACTOR_METHOD_TABLE_FEET: i32 = 2;
/// From its point onward.
pub const LUBBER_COURSE_REACH_ONWARD: i32 = 0;
/// Both ways.
pub const LUBBER_COURSE_REACH_BOTH_WAYS: i32 = 1;
/// The bearing of the station's signal.
pub const LUBBER_ERROR_SOURCE_STATION_BEARING: i32 = 0;
/// The DME reading.
pub const LUBBER_ERROR_SOURCE_DME: i32 = 1;
/// The wind's speed.
pub const LUBBER_ERROR_SOURCE_WIND_SPEED: i32 = 2;
/// The wind's direction.
pub const LUBBER_ERROR_SOURCE_WIND_DIRECTION: i32 = 3;
/// The true airspeed.
pub const LUBBER_ERROR_SOURCE_AIRSPEED: i32 = 4;
/// The bank.
pub const LUBBER_ERROR_SOURCE_BANK: i32 = 5;
/// The moment of roll-in.
pub const LUBBER_ERROR_SOURCE_ROLL_IN_DELAY: i32 = 6;
/// The height.
pub const LUBBER_ERROR_SOURCE_HEIGHT: i32 = 7;
/// With the station on the right.
pub const LUBBER_ARC_SENSE_CLOCKWISE: i32 = 1;
/// With the station on the left.
pub const LUBBER_ARC_SENSE_COUNTERCLOCKWISE: i32 = -1;
/// Toward the station.
pub const LUBBER_RADIAL_FLOWN_INBOUND: i32 = 0;
/// Away from it.
pub const LUBBER_RADIAL_FLOWN_OUTBOUND: i32 = 1;
/// The short way from course to course.
pub const LUBBER_TURN_SIDE_SHORTEST: i32 = 0;
/// To the left, the long way round if need be.
pub const LUBBER_TURN_SIDE_LEFT: i32 = -1;
/// To the right, the long way round if need be.
pub const LUBBER_TURN_SIDE_RIGHT: i32 = 1;
/// At least 6 000 nT: usable.
pub const LUBBER_MAGNETIC_ZONE_CLEAR: i32 = 0;
/// Below 6 000 nT, about the magnetic poles: caution, the compass grows unreliable.
pub const LUBBER_MAGNETIC_ZONE_CAUTION: i32 = 1;
/// Below 2 000 nT: declination is not to be used.
pub const LUBBER_MAGNETIC_ZONE_BLACKOUT: i32 = 2;
/// Knots, nautical miles, feet.
pub const LUBBER_DESIGN_UNITS_NON_SI: i32 = 0;
/// Kilometres per hour, kilometres, metres.
pub const LUBBER_DESIGN_UNITS_SI: i32 = 1;
/// Inside: they begin and end on the arc, and are nearest to the station halfway.
pub const LUBBER_CHORD_PLACEMENT_INSIDE: i32 = 0;
/// Outside: they touch the arc halfway, and begin and end farthest from the station.
pub const LUBBER_CHORD_PLACEMENT_OUTSIDE: i32 = 1;
/// On both sides: as far inside halfway as they are outside at their ends.
pub const LUBBER_CHORD_PLACEMENT_BALANCED: i32 = 2;
/// 3 degrees per second or 25 degrees. ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 6 Chapter 1.
pub const LUBBER_HOLDING_BANK_RULE_ICAO: i32 = 0;
/// 3 degrees per second or 30 degrees. FAA Aeronautical Information Manual (3 April 2014), 5-3-8 j 6 (b), and (20 April 2023), 5-3-8 j.
pub const LUBBER_HOLDING_BANK_RULE_FAA: i32 = 1;
/// 3 degrees per second or, with a flight director, 25 degrees. The same.
pub const LUBBER_HOLDING_BANK_RULE_FAA_FLIGHT_DIRECTOR: i32 = 2;
/// To the right, which is standard.
pub const LUBBER_HOLDING_SIDE_RIGHT: i32 = 1;
/// To the left.
pub const LUBBER_HOLDING_SIDE_LEFT: i32 = -1;
/// Sector 1: outbound along the inbound course, then back through the holding side.
pub const LUBBER_HOLDING_ENTRY_PARALLEL: i32 = 1;
/// Sector 2, the teardrop: outbound at 30 degrees into the holding side, then onto the inbound course.
pub const LUBBER_HOLDING_ENTRY_OFFSET: i32 = 2;
/// Sector 3: round the pattern.
pub const LUBBER_HOLDING_ENTRY_DIRECT: i32 = 3;
/// FAA Aeronautical Information Manual, edition of 20 April 2023, 5-3-8 j 2 (a); the same in AFMAN 11-217V1 (3 January 2005), table 10.1: 200 kt to 6 000 ft, 230 kt to 14 000 ft, 265 kt above.
pub const LUBBER_HOLDING_SPEED_RULE_FAA: i32 = 0;
/// At fields of the US Air Force unless charted otherwise, AIM of 20 April 2023, 5-3-8 j 2 (b)(3); AFMAN 11-217V1 (2005), 10.2.4.1: 310 kt.
pub const LUBBER_HOLDING_SPEED_RULE_FAA_AIR_FORCE: i32 = 1;
/// At fields of the US Navy unless charted otherwise, AIM of 20 April 2023, 5-3-8 j 2 (b)(4); AFMAN 11-217V1 (2005), 10.2.4.1: 230 kt.
pub const LUBBER_HOLDING_SPEED_RULE_FAA_NAVY: i32 = 2;
/// ICAO Doc 8168 by AFMAN 11-217V1 (3 January 2005), table 18.4, and by an AIP, ENR 1.5: 230 kt to 14 000 ft, 240 kt to 20 000 ft, 265 kt to 34 000 ft, Mach 0.83 above.
pub const LUBBER_HOLDING_SPEED_RULE_ICAO: i32 = 3;
/// The same in turbulence, with clearance: 280 kt or Mach 0.8, whichever is less, to 34 000 ft, Mach 0.83 above. To 14 000 ft the AFMAN prints 280 kt alone, which is the lesser there.
pub const LUBBER_HOLDING_SPEED_RULE_ICAO_TURBULENCE: i32 = 4;
/// The same where only categories A and B hold: 170 kt to 14 000 ft, turbulence or not; as `Icao` above.
pub const LUBBER_HOLDING_SPEED_RULE_ICAO_CATEGORIES_A_B: i32 = 5;
/// Transport Canada Aeronautical Information Manual, RAC 10.7, since October 2018, quoted: 200 kt to 6 000 ft, 230 kt to 14 000 ft, 265 kt above.
pub const LUBBER_HOLDING_SPEED_RULE_CANADA: i32 = 6;
/// The same before October 2018, propeller aircraft, quoted: 175 kt to 30 000 ft.
pub const LUBBER_HOLDING_SPEED_RULE_CANADA_PROPELLER: i32 = 7;
/// The same before October 2018, civil jets, quoted: 230 kt to 14 000 ft, 265 kt above.
pub const LUBBER_HOLDING_SPEED_RULE_CANADA_JET: i32 = 8;
/// Patterns charted with the icon of 210 kt, AIM of 20 April 2023, 5-3-8 j 2 (b)(1): 210 kt above 6 000 to 14 000 ft, else as `Faa`.
pub const LUBBER_HOLDING_SPEED_RULE_FAA_ICON: i32 = 9;
/// A climb in the pattern that a procedure prescribes, AIM of 20 April 2023, 5-3-8 j 2 (b)(6), the figure from memory: 310 kt.
pub const LUBBER_HOLDING_SPEED_RULE_FAA_CLIMB_IN: i32 = 10;
/// AIM before 1998, propeller aircraft, from memory: 175 kt.
pub const LUBBER_HOLDING_SPEED_RULE_FAA_PROPELLER_NINETIES: i32 = 11;
/// AIM before 1998, civil jets, from memory: 200 kt to 6 000 ft, 210 kt to 14 000 ft, 230 kt above.
pub const LUBBER_HOLDING_SPEED_RULE_FAA_JET_NINETIES: i32 = 12;
/// ICAO Doc 8168, first edition, propeller aircraft, from memory: 170 kt.
pub const LUBBER_HOLDING_SPEED_RULE_ICAO_FIRST_EDITION_PROPELLER: i32 = 13;
/// ICAO Doc 8168, first edition, jets, from memory: 210 kt to 6 000 ft, 220 kt to 14 000 ft, 240 kt above.
pub const LUBBER_HOLDING_SPEED_RULE_ICAO_FIRST_EDITION_JET: i32 = 14;
/// At Canadian military fields unless noted otherwise, RAC 10.7 since October 2018, quoted: 310 kt.
pub const LUBBER_HOLDING_SPEED_RULE_CANADA_MILITARY: i32 = 15;
/// A climb in the pattern, Canada since October 2018, and civil jets before, quoted: 310 kt.
pub const LUBBER_HOLDING_SPEED_RULE_CANADA_CLIMB: i32 = 16;
/// ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 6 Chapter 1: the outbound leg, in still air.
pub const LUBBER_TIMING_AUTHORITY_ICAO: i32 = 0;
/// FAA Aeronautical Information Manual 5-3-8, edition not shown in the copy read: the inbound leg.
pub const LUBBER_TIMING_AUTHORITY_FAA: i32 = 1;
/// The inbound leg, from wings level to the fix.
pub const LUBBER_TIMED_LEG_INBOUND: i32 = 0;
/// The outbound leg, from abeam the fix, or from wings level where the fix is passed abeam in the turn.
pub const LUBBER_TIMED_LEG_OUTBOUND: i32 = 1;
/// The outbound leg from wings level, for a fix whose passage abeam cannot be told.
pub const LUBBER_TIMED_LEG_OUTBOUND_FROM_LEVEL: i32 = 2;
/// Initial fix.
pub const LUBBER_LEG_CODE_INITIAL_FIX: i32 = 1;
/// Track to a fix.
pub const LUBBER_LEG_CODE_TRACK_TO_FIX: i32 = 2;
/// Course to a fix.
pub const LUBBER_LEG_CODE_COURSE_TO_FIX: i32 = 3;
/// Direct to a fix.
pub const LUBBER_LEG_CODE_DIRECT_TO_FIX: i32 = 4;
/// DME arc to a fix.
pub const LUBBER_LEG_CODE_ARC_TO_FIX: i32 = 5;
/// Radius to a fix.
pub const LUBBER_LEG_CODE_RADIUS_TO_FIX: i32 = 6;
/// Fix to an altitude.
pub const LUBBER_LEG_CODE_FIX_TO_ALTITUDE: i32 = 7;
/// Fix to a distance.
pub const LUBBER_LEG_CODE_FIX_TO_DISTANCE: i32 = 8;
/// Fix to a DME reading.
pub const LUBBER_LEG_CODE_FIX_TO_DME: i32 = 9;
/// Fix until ended by hand.
pub const LUBBER_LEG_CODE_FIX_TO_MANUAL: i32 = 10;
/// Course to an altitude.
pub const LUBBER_LEG_CODE_COURSE_TO_ALTITUDE: i32 = 11;
/// Course to a DME reading.
pub const LUBBER_LEG_CODE_COURSE_TO_DME: i32 = 12;
/// Course until it meets the next leg.
pub const LUBBER_LEG_CODE_COURSE_TO_INTERCEPT: i32 = 13;
/// Course to a radial.
pub const LUBBER_LEG_CODE_COURSE_TO_RADIAL: i32 = 14;
/// Heading to an altitude.
pub const LUBBER_LEG_CODE_HEADING_TO_ALTITUDE: i32 = 15;
/// Heading to a DME reading.
pub const LUBBER_LEG_CODE_HEADING_TO_DME: i32 = 16;
/// Heading until it meets the next leg.
pub const LUBBER_LEG_CODE_HEADING_TO_INTERCEPT: i32 = 17;
/// Heading until ended by hand.
pub const LUBBER_LEG_CODE_HEADING_TO_MANUAL: i32 = 18;
/// Heading to a radial.
pub const LUBBER_LEG_CODE_HEADING_TO_RADIAL: i32 = 19;
/// Racetrack to an altitude.
pub const LUBBER_LEG_CODE_HOLD_TO_ALTITUDE: i32 = 20;
/// One racetrack.
pub const LUBBER_LEG_CODE_HOLD_TO_FIX: i32 = 21;
/// Racetrack until ended by hand.
pub const LUBBER_LEG_CODE_HOLD_TO_MANUAL: i32 = 22;
/// Procedure turn until it meets the next leg.
pub const LUBBER_LEG_CODE_PROCEDURE_TURN: i32 = 23;
/// No path: where a sequence begins.
pub const LUBBER_LEG_PATH_INITIAL: i32 = 0;
/// The geodesic between two fixes.
pub const LUBBER_LEG_PATH_TRACK: i32 = 1;
/// A course over the ground.
pub const LUBBER_LEG_PATH_COURSE: i32 = 2;
/// Straight to a fix from wherever the aircraft is.
pub const LUBBER_LEG_PATH_DIRECT: i32 = 3;
/// An arc about a DME station.
pub const LUBBER_LEG_PATH_DME_ARC: i32 = 4;
/// An arc of a given radius, tangent to what comes before and after.
pub const LUBBER_LEG_PATH_RADIUS: i32 = 5;
/// A course from a fix.
pub const LUBBER_LEG_PATH_COURSE_FROM_FIX: i32 = 6;
/// A heading, off which the wind carries.
pub const LUBBER_LEG_PATH_HEADING: i32 = 7;
/// A racetrack.
pub const LUBBER_LEG_PATH_HOLD: i32 = 8;
/// A course reversal by a procedure turn.
pub const LUBBER_LEG_PATH_PROCEDURE_TURN: i32 = 9;
/// A fix.
pub const LUBBER_LEG_END_FIX: i32 = 0;
/// An altitude.
pub const LUBBER_LEG_END_ALTITUDE: i32 = 1;
/// A distance along the track.
pub const LUBBER_LEG_END_DISTANCE: i32 = 2;
/// A DME reading.
pub const LUBBER_LEG_END_DME: i32 = 3;
/// The crew or the controller.
pub const LUBBER_LEG_END_MANUAL: i32 = 4;
/// Where it meets the next leg.
pub const LUBBER_LEG_END_INTERCEPT: i32 = 5;
/// A radial.
pub const LUBBER_LEG_END_RADIAL: i32 = 6;
/// A geodesic.
pub const LUBBER_SEGMENT_KIND_STRAIGHT: i32 = 0;
/// A turn with its roll, in wind.
pub const LUBBER_SEGMENT_KIND_TURN: i32 = 1;
/// A circle about a centre.
pub const LUBBER_SEGMENT_KIND_ARC: i32 = 2;
/// The turn begins before it, and rolls out on the next course.
pub const LUBBER_PASSAGE_FLY_BY: i32 = 0;
/// The turn begins over it.
pub const LUBBER_PASSAGE_FLY_OVER: i32 = 1;
/// Off by 45 degrees for a time, and half a circle back.
pub const LUBBER_REVERSAL_FORM_OFF45: i32 = 0;
/// Off by 80 degrees and at once back the other way.
pub const LUBBER_REVERSAL_FORM_OFF80: i32 = 1;
/// Keeping to its arc takes more bank than the limit.
pub const LUBBER_PATH_CHECK_KIND_ARC_BANK: i32 = 1;
/// A turn begins in the cone of a station, where radials are of no use.
pub const LUBBER_PATH_CHECK_KIND_CONE: i32 = 2;
/// A racetrack is flown at a higher calibrated airspeed than the rule allows where it ends.
pub const LUBBER_PATH_CHECK_KIND_HOLDING_AIRSPEED: i32 = 3;
/// A racetrack is flown at a higher Mach number than the rule allows where it ends.
pub const LUBBER_PATH_CHECK_KIND_HOLDING_MACH: i32 = 4;
/// A station is not received where a turn begins or rolls out, or where a leg ends that is ended by it.
pub const LUBBER_PATH_CHECK_KIND_NOT_RECEIVED: i32 = 5;
/// A leg that an altitude ends (CA, FA, HA, VA) begins past it: it ends at once, or after one racetrack.
pub const LUBBER_PATH_CHECK_KIND_ALTITUDE_PASSED: i32 = 6;
/// Not at all: radials per mile times the radius. CNATRA P-871 chapter 4.
pub const LUBBER_ARC_LEAD_RULE_PLAIN: i32 = 0;
/// The radius times (90 ± lead) / 90. CNATRA P-1204 p. 76 (4-01), printed formula.
pub const LUBBER_ARC_LEAD_RULE_PROPORTION: i32 = 1;
/// A third more inbound, a third less outbound, inside 10 NM. CNATRA P-1265 p. 2-10 (5-99).
pub const LUBBER_ARC_LEAD_RULE_THIRD: i32 = 2;
/// The miles of the proportion, added to the lead inbound and taken from it outbound as if they were radials: (60 / D) r ± r (90 ± lead) / 90. The worked example of CNATRA P-1204 p. 76 (4-01), which contradicts the text beside it.
pub const LUBBER_ARC_LEAD_RULE_ADDED_MILES: i32 = 3;
/// The radius of the turn. CNATRA P-871 chapter 4.
pub const LUBBER_ARC_ENTRY_RULE_RADIUS: i32 = 0;
/// The radius, and on an arc inside 12 NM half a mile more outbound, half a mile less inbound. CNATRA P-1265 p. 2-11 (5-99).
pub const LUBBER_ARC_ENTRY_RULE_RADIUS_AND_HALF: i32 = 1;
/// Half a mile, for groundspeeds to 150 kt. FAA-H-8083-15 (Instrument Flying Handbook).
pub const LUBBER_ARC_ENTRY_RULE_HALF_MILE: i32 = 2;
/// Twice. The lower end of CNATRA P-1244 p. 5-17, which says two to three times.
pub const LUBBER_DRIFT_RULE_DOUBLE: i32 = 2;
/// Three times. FAA Aeronautical Information Manual (3 April 2014), 5-3-8 j 6 (c), and (20 April 2023), 5-3-8 j; CNATRA P-871 chapter 4; the upper end of P-1244.
pub const LUBBER_DRIFT_RULE_TRIPLE: i32 = 3;
/// A third of a mile for each 60 kt and 90 degrees: [`third_of_a_mile`].
pub const LUBBER_LEAD_RULE_THIRD: i32 = 0;
/// That and half a mile for each 10 000 ft above 5 000 ft: [`height_allowance`].
pub const LUBBER_LEAD_RULE_THIRD_AND_ALLOWANCE: i32 = 1;
/// A third of a mile and half a mile more, the greater of [`margin_for_fast_aircraft`].
pub const LUBBER_LEAD_RULE_THIRD_AND_MARGIN: i32 = 2;
/// The DME reading of the rule: its lead and the height in miles, added.
pub const LUBBER_TURN_CUE_READING: i32 = 0;
/// The rule's lead as a distance along the ground, as a map shows it.
pub const LUBBER_TURN_CUE_DISTANCE: i32 = 1;
/// The exact DME reading.
pub const LUBBER_TURN_CUE_EXACT: i32 = 2;
/// Farther inside the outbound course than is allowed: the turn began too early and cuts the corner.
pub const LUBBER_TURN_VERDICT_EARLY: i32 = -1;
/// Within what is allowed.
pub const LUBBER_TURN_VERDICT_SAFE: i32 = 0;
/// Farther beyond the outbound course than is allowed: the turn began too late and overshoots.
pub const LUBBER_TURN_VERDICT_LATE: i32 = 1;
/// A third of the bank. CNATRA P-1215, timed turns.
pub const LUBBER_ROLL_OUT_RULE_THIRD: i32 = 0;
/// Half of the bank. Common practice.
pub const LUBBER_ROLL_OUT_RULE_HALF: i32 = 1;
/// 15 percent of the true airspeed in knots. Common practice.
pub const LUBBER_BANK_RULE_FIFTEEN_PERCENT: i32 = 0;
/// A tenth of the true airspeed and 7. Common practice.
pub const LUBBER_BANK_RULE_TENTH_AND_SEVEN: i32 = 1;
/// A tenth of the true airspeed and 5. Common practice, rarely.
pub const LUBBER_BANK_RULE_TENTH_AND_FIVE: i32 = 2;
/// 20 percent of the airspeed, said of the indicated airspeed of a jet. CNATRA P-1215, timed turns.
pub const LUBBER_BANK_RULE_TWENTY_PERCENT: i32 = 3;
/// 0.5 percent of the speed, for standard rate. CNATRA P-340, arc and radial intercepts, p. 6-98.
pub const LUBBER_RADIUS_RULE_HALF_PERCENT: i32 = 0;
/// 1 percent of the speed, for half standard rate. CNATRA P-1282 and P-1265.
pub const LUBBER_RADIUS_RULE_ONE_PERCENT: i32 = 1;
/// Miles a minute less two, for 30 degrees of bank. AFMAN 11-217 (rescinded), as quoted.
pub const LUBBER_RADIUS_RULE_MILES_A_MINUTE_LESS_TWO: i32 = 2;
/// A tenth of the square of the miles a minute, for 30 degrees of bank. AFMAN 11-217 Vol 3 p. 65 (rescinded), as quoted.
pub const LUBBER_RADIUS_RULE_TENTH_OF_SQUARE: i32 = 3;
/// VOR flown along, en route: 3.5° ground, 2.7° receiver, 1° monitor, 3.5° flight technical; 5.7° in all. Doc 8168 Vol II (5th ed. 2006), Part II Section 3 Chapter 1, App. B.
pub const LUBBER_RADIAL_ACCURACY_VOR_EN_ROUTE: i32 = 0;
/// VOR flown along, terminal: the same with 2.5° flight technical; 5.2° in all. Doc 8168 Vol II, Table I-2-2-1 (from memory).
pub const LUBBER_RADIAL_ACCURACY_VOR_TRACKING: i32 = 1;
/// VOR that intersects: no flight technical part; 4.5° in all. Doc 8168 Vol II, Part II Section 3 Chapter 1, 1.4.3.2.
pub const LUBBER_RADIAL_ACCURACY_VOR_INTERSECTING: i32 = 2;
/// NDB that intersects: 3° ground, 5.4° receiver; 6.2° in all. Doc 8168 Vol II, Part II Section 3 Chapter 1, 1.4.3.2.
pub const LUBBER_RADIAL_ACCURACY_NDB_INTERSECTING: i32 = 3;
/// VOR course alignment, "generally within 1°". FAA AIM 1-1-3, edition not shown.
pub const LUBBER_RADIAL_ACCURACY_VOR_ALIGNMENT: i32 = 4;
/// 0.25 NM and 1.25 percent of the distance. Doc 8168 Vol I (5th ed. 2006), Part I Section 2 Chapter 2, 2.4.2; a recommendation of Annex 10.
pub const LUBBER_DME_ACCURACY_PANS_OPS: i32 = 0;
/// 0.2 NM, the total system error. Annex 10 Vol I, 3.5.3.1.3.3.
pub const LUBBER_DME_ACCURACY_ANNEX10: i32 = 1;
/// Half a mile or 3 percent of the distance, whichever is greater. FAA AIM 1-1-7, edition not shown.
pub const LUBBER_DME_ACCURACY_AIM: i32 = 2;
/// The root of 0.1 NM on the ground and 0.17 NM in the air, for DME since 1989. Doc 8168 Vol II, Part III Section 1 Chapter 3, App. 3, 2.1.
pub const LUBBER_DME_ACCURACY_SINCE1989: i32 = 3;
/// A test signal: a VOT, or one radiated by a repair station.
pub const LUBBER_RECEIVER_CHECK_TEST_SIGNAL: i32 = 0;
/// A designated checkpoint on the ground.
pub const LUBBER_RECEIVER_CHECK_GROUND_CHECKPOINT: i32 = 1;
/// A designated checkpoint in the air.
pub const LUBBER_RECEIVER_CHECK_AIRBORNE_CHECKPOINT: i32 = 2;
/// A ground point on the centreline of an airway, preferably more than 20 NM from the station.
pub const LUBBER_RECEIVER_CHECK_AIRWAY_CENTERLINE: i32 = 3;
/// Two receivers tuned to one station.
pub const LUBBER_RECEIVER_CHECK_DUAL_RECEIVERS: i32 = 4;
/// Two: their geometry multiplies the tolerance by 1.29.
pub const LUBBER_DME_COVERAGE_TWO_STATIONS: i32 = 0;
/// More than two: the tolerance of one.
pub const LUBBER_DME_COVERAGE_MORE_STATIONS: i32 = 1;
/// 95 percent: 4.0 NM near the VOR, 6.0 NM at 75 NM.
pub const LUBBER_CONTAINMENT_PERCENT95: i32 = 0;
/// 96 percent: 4.0 and 6.0 NM.
pub const LUBBER_CONTAINMENT_PERCENT96: i32 = 1;
/// 97 percent: 4.5 and 6.5 NM.
pub const LUBBER_CONTAINMENT_PERCENT97: i32 = 2;
/// 98 percent: 5.0 and 6.5 NM.
pub const LUBBER_CONTAINMENT_PERCENT98: i32 = 3;
/// 99 percent: 5.5 and 7.0 NM.
pub const LUBBER_CONTAINMENT_PERCENT99: i32 = 4;
/// 99.5 percent: 6.0 and 8.5 NM.
pub const LUBBER_CONTAINMENT_PERCENT99_AND_A_HALF: i32 = 5;
/// The tangent to a sphere of 4/3 of the earth's mean radius.
pub const LUBBER_HORIZON_RULE_FOUR_THIRDS: i32 = 0;
/// 1.23 times the square root of the feet, in nautical miles. ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 1 Chapter 3, Appendix.
pub const LUBBER_HORIZON_RULE_FEET_MILES: i32 = 1;
/// 4.11 times the square root of the metres, in kilometres: 0.4 percent less than the rule in feet. The same appendix.
pub const LUBBER_HORIZON_RULE_METRES_KILOMETRES: i32 = 2;
/// 1.25 times the square root of the feet, in nautical miles. Common practice.
pub const LUBBER_HORIZON_RULE_FIVE_QUARTERS: i32 = 3;
/// Neither: abeam the station, or no use is to be made of the needle.
pub const LUBBER_TO_FROM_OFF: i32 = 0;
/// The selected course leads to the station.
pub const LUBBER_TO_FROM_TO: i32 = 1;
/// The selected course leads from the station.
pub const LUBBER_TO_FROM_FROM: i32 = 2;
/// It shows one of them.
pub const LUBBER_FLAG_CLEAR: i32 = 0;
/// Abeam the station for the course selected; the needle is good.
pub const LUBBER_FLAG_ABEAM: i32 = 1;
/// In the cone of confusion; DME is good.
pub const LUBBER_FLAG_CONE: i32 = 2;
/// Below the radio horizon of a smooth earth.
pub const LUBBER_FLAG_BELOW_HORIZON: i32 = 3;
/// Farther off than the station reaches.
pub const LUBBER_FLAG_OUT_OF_RANGE: i32 = 4;
/// T, AIM of 2023: 25 NM from 1 000 to 12 000 ft above the transmitter.
pub const LUBBER_SERVICE_CLASS_TERMINAL: i32 = 0;
/// L, AIM of 2023: 40 NM from 1 000 to 18 000 ft above the transmitter.
pub const LUBBER_SERVICE_CLASS_LOW: i32 = 1;
/// H, AIM of 2023: 40 NM from 1 000 ft, 100 NM from 14 500 to 60 000 ft, 130 NM from 18 000 to 45 000 ft above the transmitter.
pub const LUBBER_SERVICE_CLASS_HIGH: i32 = 2;
/// VL, AIM of 2023: 40 NM from 1 000 ft, 70 NM from 5 000 to below 18 000 ft.
pub const LUBBER_SERVICE_CLASS_VOR_LOW: i32 = 3;
/// VH, AIM of 2023: 40 NM from 1 000 ft, 70 NM from 5 000 ft, then as H from 14 500 ft.
pub const LUBBER_SERVICE_CLASS_VOR_HIGH: i32 = 4;
/// DL, AIM of 2023, figures from memory: to the radio horizon below 12 900 ft, 130 NM to below 18 000 ft.
pub const LUBBER_SERVICE_CLASS_DME_LOW: i32 = 5;
/// DH, AIM of 2023, figures from memory: to the radio horizon below 12 900 ft, 130 NM to 45 000 ft, 100 NM to 60 000 ft.
pub const LUBBER_SERVICE_CLASS_DME_HIGH: i32 = 6;
/// T, AIM of 2004 to 2016: the same figures above the ground.
pub const LUBBER_SERVICE_CLASS_TERMINAL_ABOVE_GROUND: i32 = 7;
/// L, AIM of 2004 to 2016: the same figures above the ground.
pub const LUBBER_SERVICE_CLASS_LOW_ABOVE_GROUND: i32 = 8;
/// H, AIM of 2004 to 2016: the same figures above the ground.
pub const LUBBER_SERVICE_CLASS_HIGH_ABOVE_GROUND: i32 = 9;
/// NDB that is a compass locator, AIM of 2004 to 2023: 15 NM at all heights.
pub const LUBBER_SERVICE_CLASS_COMPASS_LOCATOR: i32 = 10;
/// NDB of class MH, the same: 25 NM at all heights.
pub const LUBBER_SERVICE_CLASS_NDB_MEDIUM_HIGH: i32 = 11;
/// NDB of class H, the same: 50 NM at all heights; that of a single station may be less.
pub const LUBBER_SERVICE_CLASS_NDB_HIGH: i32 = 12;
/// NDB of class HH, the same: 75 NM at all heights.
pub const LUBBER_SERVICE_CLASS_NDB_VERY_HIGH: i32 = 13;
/// The bank limit.
pub const LUBBER_GOVERNOR_BANK_LIMIT: i32 = 0;
/// The limit of the rate of turn.
pub const LUBBER_GOVERNOR_TURN_RATE_LIMIT: i32 = 1;
/// The roll: so small a change that rolling in and out alone would make it.
pub const LUBBER_GOVERNOR_ROLL_RATE: i32 = 2;
/// Nothing: there is no turn.
pub const LUBBER_GOVERNOR_NO_TURN: i32 = 3;
/// From g = 9.80665 m/s² (ICAO Doc 7488/3, 3rd edition 1993) and the exact units.
pub const LUBBER_TURN_CONSTANTS_EXACT: i32 = 0;
/// R = 3 431 tan b / (π V) degrees per second, V in knots, and r = V / (20 π R) miles. ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 3, 3.1.2.2 b) and c).
pub const LUBBER_TURN_CONSTANTS_PANS_OPS: i32 = 1;
/// R = 6 355 tan b / (π V), V in km/h, and r = V / (20 π R) kilometres. The same.
pub const LUBBER_TURN_CONSTANTS_PANS_OPS_METRIC: i32 = 2;
/// R = V² / (68 625 tan b) miles, from the gravity that the same document prints, 3.1.2.2 e).
pub const LUBBER_TURN_CONSTANTS_PANS_OPS_GRAVITY: i32 = 3;
/// R = V² / (68 625.4 tan b) miles. FAA Order 8260.58, Chapters 1 and 2, from memory.
pub const LUBBER_TURN_CONSTANTS_FAA_ORDER: i32 = 4;
/// R = 1 091 tan b / V degrees per second, r = V² / (11.26 tan b) feet, V in knots. FAA-H-8083-25, chapter 5, from memory: 0.3 percent wide.
pub const LUBBER_TURN_CONSTANTS_HANDBOOK: i32 = 5;
/// The components to north and east, as where two streams of air mix. Common practice in forecasting; what the rest of the library takes.
pub const LUBBER_WIND_INTERPOLATION_COMPONENTS: i32 = 0;
/// Direction and speed, each by itself, the direction by the shorter way. Taught for flight planning, as in the worked answer of a Transport Canada practice examination for private pilots.
pub const LUBBER_WIND_INTERPOLATION_DIRECTION_AND_SPEED: i32 = 1;

/// What a status means: a text that lives forever; for a number that is no status, a text that says so. Never null.
#[unsafe(no_mangle)]
pub extern "C" fn lubber_status_text(status: i32) -> *const c_char {
    let text = match status {
        LUBBER_OK => c"ok",
        LUBBER_ERROR_INTERNAL => c"internal error",
        LUBBER_ERROR_STRUCT => c"a pointer is null, or a structure has a size or a setting that this library does not know",
        -1 => c"latitude out of range; allowed: from -90.0 to 90.0 deg",
        -2 => c"longitude out of range; allowed: any finite number of deg",
        -3 => c"bearing out of range; allowed: any finite number of deg",
        -4 => c"change of direction out of range; allowed: any finite number of deg",
        -5 => c"declination out of range; allowed: from -180.0 to 180.0 deg",
        -6 => c"bank out of range; allowed: above 0.0 below 90.0 deg",
        -7 => c"turn rate out of range; allowed: above 0 deg/s, or infinite",
        -8 => c"roll rate out of range; allowed: above 0 deg/s, or infinite",
        -9 => c"ground distance out of range; allowed: from 0.0 to 10900.0 NM",
        -10 => c"slant range out of range; allowed: from 0.0 to 10900.0 NM",
        -11 => c"pressure altitude out of range; allowed: from -16420.0 to 262467.2 ft",
        -12 => c"true altitude out of range; allowed: from -16500.0 to 400000.0 ft",
        -13 => c"height above the station out of range; allowed: from -60000.0 to 400000.0 ft",
        -14 => c"elevation out of range; allowed: from -16500.0 to 60000.0 ft",
        -15 => c"calibrated airspeed out of range; allowed: from 0.0 to 5000.0 kt",
        -16 => c"equivalent airspeed out of range; allowed: from 0.0 to 5000.0 kt",
        -17 => c"true airspeed out of range; allowed: above 0.0 to 5000.0 kt",
        -18 => c"groundspeed out of range; allowed: from 0.0 to 10000.0 kt",
        -19 => c"wind speed out of range; allowed: from 0.0 to 1000.0 kt",
        -20 => c"Mach number out of range; allowed: from 0.0 to 10.0",
        -21 => c"ISA deviation out of range; allowed: from -150.0 to 150.0 K",
        -22 => c"temperature out of range; allowed: from -200.0 to 200.0 degC",
        -23 => c"static pressure out of range; allowed: above 0.0 to 2000.0 hPa",
        -24 => c"cone half-angle out of range; allowed: above 0.0 below 90.0 deg",
        -25 => c"radius out of range; allowed: above 0.0 to 5000.0 NM",
        -26 => c"intercept angle out of range; allowed: above 0.0 to 90.0 deg",
        -27 => c"load factor out of range; allowed: above 1.0 to 100.0",
        -28 => c"geopotential altitude out of range; allowed: from -16513.1 to 392472.6 ft",
        -29 => c"impact pressure out of range; allowed: from 0.0 to 80000.0 hPa",
        -30 => c"true airspeed out of range; allowed: from 0.0 to 5000.0 kt",
        -31 => c"change of heading out of range; allowed: from -360.0 to 360.0 deg",
        -32 => c"time in the turn out of range; allowed: from -1000000.0 to 1000000.0 s",
        -33 => c"altitude of a procedure out of range; allowed: from -2000.0 to 50000.0 ft",
        -34 => c"wind component out of range; allowed: from -1000.0 to 1000.0 kt",
        -35 => c"altimeter setting out of range; allowed: from 400.0 to 1200.0 hPa",
        -36 => c"indicated altitude out of range; allowed: from -50000.0 to 300000.0 ft",
        -37 => c"density altitude out of range; allowed: from -16420.0 to 262467.2 ft",
        -38 => c"height above the altimeter setting source out of range; allowed: from 0.0 to 20000.0 ft",
        -39 => c"step of flight levels out of range; allowed: from 100.0 to 10000.0 ft",
        -40 => c"height of the transition layer out of range; allowed: from 0.0 to 10000.0 ft",
        -41 => c"total temperature out of range; allowed: from -270.0 to 10000.0 degC",
        -42 => c"recovery factor out of range; allowed: from 0.0 to 1.0",
        -43 => c"elapsed time out of range; allowed: above 0.0 to 1000000.0 s",
        -44 => c"groundspeed out of range; allowed: above 0.0 to 10000.0 kt",
        -45 => c"change of the bearing out of range; allowed: above 0.0 below 180.0 deg",
        -46 => c"angle off the bow out of range; allowed: above 0.0 below 180.0 deg",
        -47 => c"radius of the sphere out of range; allowed: from 1.0 to 100000.0 NM",
        -48 => c"vertical speed out of range; allowed: from -30000.0 to 30000.0 ft/min",
        -49 => c"time of a leg of a hold out of range; allowed: from 0.0 to 3600.0 s",
        -50 => c"cross-track distance out of range; allowed: from -5000.0 to 5000.0 NM",
        -51 => c"along-track distance out of range; allowed: from -10000.0 to 10000.0 NM",
        -52 => c"date out of range; allowed: from 2020.0 to 2035.0 yr",
        -53 => c"height above the surface out of range; allowed: from 0.0 to 400000.0 ft",
        -54 => c"full-scale deviation out of range; allowed: above 0.0 below 90.0 deg",
        -55 => c"deflection out of range; allowed: from -1.0 to 1.0",
        -56 => c"course deviation out of range; allowed: from -90.0 to 90.0 deg",
        -57 => c"half-width of the zone abeam out of range; allowed: from 0.0 to 45.0 deg",
        -58 => c"step of the display out of range; allowed: above 0.0 to 10.0 NM",
        -59 => c"distance from the station out of range; allowed: above 0.0 to 5000.0 NM",
        -60 => c"deflection in dots out of range; allowed: from -20.0 to 20.0",
        -61 => c"confidence out of range; allowed: above 0.0 below 1.0",
        -62 => c"number of trials out of range; allowed: from 1.0 to 10000000.0",
        -63 => c"gain out of range; allowed: above 0.0 to 100.0",
        -64 => c"standard deviation out of range; allowed: from 0.0 to 1000000.0",
        -65 => c"error of a direction out of range; allowed: from 0.0 to 90.0 deg",
        -66 => c"error of a distance out of range; allowed: from 0.0 to 1000.0 NM",
        -67 => c"distance from the VOR along the route out of range; allowed: from 0.0 to 75.0 NM",
        -68 => c"number of the leg out of range; allowed: from 1.0 to 1000000.0",
        -69 => c"longitude from the grid's meridian out of range; allowed: from -60.0 to 60.0 deg",
        -70 => c"year out of range; allowed: from 2020.0 to 2034.0",
        -71 => c"month out of range; allowed: from 1.0 to 12.0",
        -72 => c"day of the month out of range; allowed: from 1.0 below 32.0",
        -73 => c"number of wind levels out of range; allowed: from 1.0 to 1000.0",
        -74 => c"number of a flight's wind levels out of range; allowed: from 1.0 to 16.0",
        -75 => c"spacing of points out of range; allowed: above 0 NM, or infinite",
        -76 => c"magnetic variation out of range; allowed: from -180.0 to 180.0 deg",
        -101 => c"the course change is a reversal and has no lead",
        -102 => c"the airspeed cannot hold the course against the wind",
        -103 => c"the turn does not fit between the radial and the arc",
        -104 => c"the slant range is shorter than the height, or longer than through the earth",
        -105 => c"the turn would begin or end impossibly far from the fix",
        -106 => c"a choice is none of its alternatives",
        -107 => c"the levels of a wind profile do not ascend",
        -108 => c"the calibrated airspeed is that Mach number at no pressure altitude",
        -109 => c"the two bearings to the station do not meet",
        -110 => c"a leg of a procedure cannot be flown",
        -111 => c"the lines do not meet",
        -112 => c"no outbound heading closes the holding pattern",
        -113 => c"two points between which a line is to run are one",
        -114 => c"no height receives the station at that distance",
        -115 => c"the distance off course is more than that from the station",
        -116 => c"an ident is longer than 16 bytes",
        -117 => c"the lines of position do not cross and give no fix",
        -118 => c"the calendar has no such date",
        -119 => c"the aircraft is below the station",
        -120 => c"the rhumb line meets a pole before its end",
        _ => c"unknown status",
    };
    text.as_ptr()
}

/// The published tolerance of a radial or a bearing, by its source.
///
/// The root of the sum of squares of its parts: VOR 3.5 degrees ground, 2.7 receiver, 1.0 monitor and 3.5 (en route) or 2.5 (terminal) flight technical;
/// NDB 3 degrees ground and 5.4 receiver.
///
/// @param accuracy which figure: LUBBER_RADIAL_ACCURACY_VOR_EN_ROUTE, LUBBER_RADIAL_ACCURACY_VOR_TRACKING, LUBBER_RADIAL_ACCURACY_VOR_INTERSECTING, LUBBER_RADIAL_ACCURACY_NDB_INTERSECTING, LUBBER_RADIAL_ACCURACY_VOR_ALIGNMENT
/// @param[out] radial_tolerance_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Not rounded, where the sources print 5.7, 5.2, 4.5 and 6.2 degrees.
/// Degenerate cases: None. A tolerance is two standard deviations.
/// Errors: A choice that is none of its alternatives.
/// Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part II Section 3 Chapter 1, 1.4.3.2 and Appendix B 2.2, and Part I Section 2 Chapter 2, Table I-2-2-1 (from memory);
/// FAA Aeronautical Information Manual 1-1-3, edition not shown in the copy read.
///
/// Example: lubber_radial_tolerance_deg(LUBBER_RADIAL_ACCURACY_VOR_INTERSECTING, &value) gives 4.53
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_radial_tolerance_deg(
    accuracy: i32,
    radial_tolerance_deg: *mut f64,
) -> i32 {
    let answer = || {
        if [].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 1]) }
        plain::radial_tolerance_deg(lubberline::station::RadialAccuracy::from_code("accuracy", f64::from(accuracy))?).map(|answer| [answer])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [radial_tolerance_deg]) }
}

/// `lubber_radial_tolerance_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `accuracy` is one code for all points: which figure: LUBBER_RADIAL_ACCURACY_VOR_EN_ROUTE, LUBBER_RADIAL_ACCURACY_VOR_TRACKING, LUBBER_RADIAL_ACCURACY_VOR_INTERSECTING, LUBBER_RADIAL_ACCURACY_NDB_INTERSECTING, LUBBER_RADIAL_ACCURACY_VOR_ALIGNMENT
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_radial_tolerance_deg_n(
    count: usize,
    accuracy: i32,
    radial_tolerance_deg: *mut f64,
    radial_tolerance_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let accuracy = f64::from(accuracy);
    let (inputs, outputs) = ([Array::input(&raw const accuracy, 0)], [Array::output(radial_tolerance_deg, radial_tolerance_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("radial_tolerance_deg") }, count, &inputs, &outputs, status) }
}

/// How the independent parts of a radial's error combine.
///
/// `sqrt(Eg^2 + Ea^2 + Em^2)` for the radial, and with `Ep^2` for the aircraft that flies along it.
///
/// @param ground_deg error of the signal, 0 to 90
/// @param receiver_deg error of the airborne receiver, 0 to 90
/// @param flight_technical_deg error of flying by the needle, 0 to 90
/// @param monitor_deg error that the monitor lets pass, 0 to 90
/// @param[out] aggregate_deg Where the radial is: ground, receiver and monitor; may be NULL
/// @param[out] system_use_deg Where an aircraft flying along it is: the aggregate and the flight technical part; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error.
/// Degenerate cases: Tolerances give a tolerance, standard deviations a standard deviation.
/// Errors: A value outside its range.
/// Source: ICAO Annex 10 Vol I, Attachment C, 3.7.3.2; ICAO Doc 8168 Vol II (5th ed. 2006), Part II Section 3 Chapter 1, Appendix B, adds the monitor.
///
/// Example: lubber_radial_error(3.5, 2.7, 3.5, 1.0, NULL, &value) gives 5.73
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_radial_error(
    ground_deg: f64,
    receiver_deg: f64,
    flight_technical_deg: f64,
    monitor_deg: f64,
    aggregate_deg: *mut f64,
    system_use_deg: *mut f64,
) -> i32 {
    let answer = || plain::radial_error(ground_deg, receiver_deg, flight_technical_deg, monitor_deg).map(|answer| [answer.aggregate_deg, answer.system_use_deg]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [aggregate_deg, system_use_deg]) }
}

/// `lubber_radial_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_radial_error_n(
    count: usize,
    ground_deg: *const f64,
    ground_deg_stride: isize,
    receiver_deg: *const f64,
    receiver_deg_stride: isize,
    flight_technical_deg: *const f64,
    flight_technical_deg_stride: isize,
    monitor_deg: *const f64,
    monitor_deg_stride: isize,
    aggregate_deg: *mut f64,
    aggregate_deg_stride: isize,
    system_use_deg: *mut f64,
    system_use_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(ground_deg, ground_deg_stride), Array::input(receiver_deg, receiver_deg_stride), Array::input(flight_technical_deg, flight_technical_deg_stride), Array::input(monitor_deg, monitor_deg_stride)], [Array::output(aggregate_deg, aggregate_deg_stride), Array::output(system_use_deg, system_use_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("radial_error") }, count, &inputs, &outputs, status) }
}

/// The published tolerance of a DME at a slant range, by its source.
///
/// `0.25 + 0.0125 d` (`pans_ops`), 0.2 (`annex_10`), the greater of 0.5 and `0.03 d` (`aim`), `sqrt(0.1^2 + 0.17^2)` (`since_1989`), in nautical miles.
///
/// @param dme_nm slant range, 0 to 10 900
/// @param accuracy which figure: LUBBER_DME_ACCURACY_PANS_OPS, LUBBER_DME_ACCURACY_ANNEX10, LUBBER_DME_ACCURACY_AIM, LUBBER_DME_ACCURACY_SINCE1989
/// @param[out] dme_tolerance_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As published.
/// Degenerate cases: None. A tolerance is two standard deviations.
/// Errors: A value outside its range.
/// Source: ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 2 Chapter 2, 2.4.2; ICAO Annex 10 Vol I, 3.5.3.1.3.3; FAA Aeronautical Information Manual 1-1-7, edition not shown in the copy read; ICAO
/// Doc 8168 Vol II, Part III Section 1 Chapter 3, Appendix 3, 2.1.
///
/// Example: lubber_dme_tolerance_nm(40.0, LUBBER_DME_ACCURACY_PANS_OPS, &value) gives 0.75
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_dme_tolerance_nm(
    dme_nm: f64,
    accuracy: i32,
    dme_tolerance_nm: *mut f64,
) -> i32 {
    let answer = || {
        if [dme_nm].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 1]) }
        plain::dme_tolerance_nm(dme_nm, lubberline::station::DmeAccuracy::from_code("accuracy", f64::from(accuracy))?).map(|answer| [answer])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [dme_tolerance_nm]) }
}

/// `lubber_dme_tolerance_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `accuracy` is one code for all points: which figure: LUBBER_DME_ACCURACY_PANS_OPS, LUBBER_DME_ACCURACY_ANNEX10, LUBBER_DME_ACCURACY_AIM, LUBBER_DME_ACCURACY_SINCE1989
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_dme_tolerance_nm_n(
    count: usize,
    dme_nm: *const f64,
    dme_nm_stride: isize,
    accuracy: i32,
    dme_tolerance_nm: *mut f64,
    dme_tolerance_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let accuracy = f64::from(accuracy);
    let (inputs, outputs) = ([Array::input(dme_nm, dme_nm_stride), Array::input(&raw const accuracy, 0)], [Array::output(dme_tolerance_nm, dme_tolerance_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("dme_tolerance_nm") }, count, &inputs, &outputs, status) }
}

/// The greatest error with which a VOR receiver passes a check within the preceding 30 days.
///
/// 4 degrees for a test signal, a checkpoint on the ground and between two receivers; 6 degrees in the air.
///
/// @param check which check: LUBBER_RECEIVER_CHECK_TEST_SIGNAL, LUBBER_RECEIVER_CHECK_GROUND_CHECKPOINT, LUBBER_RECEIVER_CHECK_AIRBORNE_CHECKPOINT, LUBBER_RECEIVER_CHECK_AIRWAY_CENTERLINE, LUBBER_RECEIVER_CHECK_DUAL_RECEIVERS
/// @param[out] receiver_check_limit_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As published.
/// Degenerate cases: None.
/// Errors: A choice that is none of its alternatives.
/// Source: 14 CFR 91.171 (b) and (c).
///
/// Example: lubber_receiver_check_limit_deg(LUBBER_RECEIVER_CHECK_AIRBORNE_CHECKPOINT, &value) gives 6
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_receiver_check_limit_deg(
    check: i32,
    receiver_check_limit_deg: *mut f64,
) -> i32 {
    let answer = || {
        if [].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 1]) }
        plain::receiver_check_limit_deg(lubberline::station::ReceiverCheck::from_code("check", f64::from(check))?).map(|answer| [answer])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [receiver_check_limit_deg]) }
}

/// `lubber_receiver_check_limit_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `check` is one code for all points: which check: LUBBER_RECEIVER_CHECK_TEST_SIGNAL, LUBBER_RECEIVER_CHECK_GROUND_CHECKPOINT, LUBBER_RECEIVER_CHECK_AIRBORNE_CHECKPOINT, LUBBER_RECEIVER_CHECK_AIRWAY_CENTERLINE, LUBBER_RECEIVER_CHECK_DUAL_RECEIVERS
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_receiver_check_limit_deg_n(
    count: usize,
    check: i32,
    receiver_check_limit_deg: *mut f64,
    receiver_check_limit_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let check = f64::from(check);
    let (inputs, outputs) = ([Array::input(&raw const check, 0)], [Array::output(receiver_check_limit_deg, receiver_check_limit_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("receiver_check_limit_deg") }, count, &inputs, &outputs, status) }
}

/// Tolerances of area navigation by DME/DME, for procedure design.
///
/// Along `sqrt((k d)^2 + st^2)`, across `sqrt((k d)^2 + ftt^2 + st^2)`, half-width `1.5 across + bv`, with `k` 1.29 for two stations and 1 for more.
///
/// @param dme_tolerance_nm tolerance of one DME, as `dme_tolerance_nm` gives it, 0 to 1000
/// @param flight_technical_nm flight technical tolerance, 0 to 1000
/// @param buffer_nm buffer value, 0 to 1000
/// @param coverage from how many stations the position is taken: LUBBER_DME_COVERAGE_TWO_STATIONS, LUBBER_DME_COVERAGE_MORE_STATIONS
/// @param system_nm system computation tolerance, 0 to 1000
/// @param[out] along_track_nm Along the track; may be NULL
/// @param[out] across_track_nm Across the track; may be NULL
/// @param[out] half_width_nm Half the width of the area; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Not rounded between steps, where the printed examples are.
/// Degenerate cases: None.
/// Errors: A value outside its range.
/// Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 1 Chapter 3, Appendices 1 and 3; the factor of 1 is inferred from the examples.
///
/// Example: lubber_dme_dme_tolerances(1.34, 1.0, 1.0, LUBBER_DME_COVERAGE_TWO_STATIONS, 0.25, NULL, NULL, &value) gives 4.02
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_dme_dme_tolerances(
    dme_tolerance_nm: f64,
    flight_technical_nm: f64,
    buffer_nm: f64,
    coverage: i32,
    system_nm: f64,
    along_track_nm: *mut f64,
    across_track_nm: *mut f64,
    half_width_nm: *mut f64,
) -> i32 {
    let answer = || {
        if [dme_tolerance_nm, flight_technical_nm, buffer_nm, system_nm].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 3]) }
        plain::dme_dme_tolerances(dme_tolerance_nm, flight_technical_nm, buffer_nm, lubberline::station::DmeCoverage::from_code("coverage", f64::from(coverage))?, system_nm).map(|answer| [answer.along_track_nm, answer.across_track_nm, answer.half_width_nm])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [along_track_nm, across_track_nm, half_width_nm]) }
}

/// `lubber_dme_dme_tolerances` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `coverage` is one code for all points: from how many stations the position is taken: LUBBER_DME_COVERAGE_TWO_STATIONS, LUBBER_DME_COVERAGE_MORE_STATIONS
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_dme_dme_tolerances_n(
    count: usize,
    dme_tolerance_nm: *const f64,
    dme_tolerance_nm_stride: isize,
    flight_technical_nm: *const f64,
    flight_technical_nm_stride: isize,
    buffer_nm: *const f64,
    buffer_nm_stride: isize,
    coverage: i32,
    system_nm: *const f64,
    system_nm_stride: isize,
    along_track_nm: *mut f64,
    along_track_nm_stride: isize,
    across_track_nm: *mut f64,
    across_track_nm_stride: isize,
    half_width_nm: *mut f64,
    half_width_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let coverage = f64::from(coverage);
    let (inputs, outputs) = ([Array::input(dme_tolerance_nm, dme_tolerance_nm_stride), Array::input(flight_technical_nm, flight_technical_nm_stride), Array::input(buffer_nm, buffer_nm_stride), Array::input(&raw const coverage, 0), Array::input(system_nm, system_nm_stride)], [Array::output(along_track_nm, along_track_nm_stride), Array::output(across_track_nm, across_track_nm_stride), Array::output(half_width_nm, half_width_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("dme_dme_tolerances") }, count, &inputs, &outputs, status) }
}

/// The ICAO standard atmosphere at a pressure altitude, with an ISA deviation of the temperature.
///
/// Layers of even temperature change from 15 degC at sea level: -6.5 K/km to 11 km, none to 20 km, +1 to 32 km,
/// +2.8 to 47 km, none to 51 km, -2.8 to 71 km, -2 to 80 km, geopotential. Pressure by hydrostatic balance;
/// density `p/(R T)`, speed of sound `sqrt(1.4 R T)`, R = 287.05287 J/(kg K). The deviation moves temperature,
/// density and speed of sound and leaves the pressure. For a geometric altitude in the standard atmosphere give
/// `lubber_geopotential_altitude_ft` of it.
///
/// @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
/// @param isa_deviation_k warmer than standard by this, -150 to 150
/// @param[out] temperature_degc Static temperature; may be NULL
/// @param[out] pressure_hpa Static pressure; may be NULL
/// @param[out] density_kg_per_m3 Density; may be NULL
/// @param[out] speed_of_sound_kt Speed of sound; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding; in arrays 1e-14 of the value. The pressures printed in the source above 20 km differ by up to 4e-6 of themselves, having been
/// worked out from rounded ones.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range.
/// Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
///
/// Example: lubber_standard_atmosphere(35000.0, 0.0, &value, NULL, NULL, NULL) gives -54.3
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_standard_atmosphere(
    pressure_altitude_ft: f64,
    isa_deviation_k: f64,
    temperature_degc: *mut f64,
    pressure_hpa: *mut f64,
    density_kg_per_m3: *mut f64,
    speed_of_sound_kt: *mut f64,
) -> i32 {
    let answer = || plain::standard_atmosphere(pressure_altitude_ft, isa_deviation_k).map(|answer| [answer.temperature_degc, answer.pressure_hpa, answer.density_kg_per_m3, answer.speed_of_sound_kt]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [temperature_degc, pressure_hpa, density_kg_per_m3, speed_of_sound_kt]) }
}

/// `lubber_standard_atmosphere` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_standard_atmosphere_n(
    count: usize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    isa_deviation_k: *const f64,
    isa_deviation_k_stride: isize,
    temperature_degc: *mut f64,
    temperature_degc_stride: isize,
    pressure_hpa: *mut f64,
    pressure_hpa_stride: isize,
    density_kg_per_m3: *mut f64,
    density_kg_per_m3_stride: isize,
    speed_of_sound_kt: *mut f64,
    speed_of_sound_kt_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(pressure_altitude_ft, pressure_altitude_ft_stride), Array::input(isa_deviation_k, isa_deviation_k_stride)], [Array::output(temperature_degc, temperature_degc_stride), Array::output(pressure_hpa, pressure_hpa_stride), Array::output(density_kg_per_m3, density_kg_per_m3_stride), Array::output(speed_of_sound_kt, speed_of_sound_kt_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("standard_atmosphere") }, count, &inputs, &outputs, status) }
}

/// Pressure over standard sea-level pressure, the ratio called delta.
///
/// The pressure of `lubber_standard_atmosphere` over 1013.25 hPa.
///
/// @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
/// @param[out] pressure_ratio the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: 1 at zero altitude, exactly.
/// Errors: A value outside its range.
/// Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
///
/// Example: lubber_pressure_ratio(35000.0, &value) gives 0.2353
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_pressure_ratio(
    pressure_altitude_ft: f64,
    pressure_ratio: *mut f64,
) -> i32 {
    let answer = || plain::pressure_ratio(pressure_altitude_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [pressure_ratio]) }
}

/// `lubber_pressure_ratio` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_pressure_ratio_n(
    count: usize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    pressure_ratio: *mut f64,
    pressure_ratio_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(pressure_altitude_ft, pressure_altitude_ft_stride)], [Array::output(pressure_ratio, pressure_ratio_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("pressure_ratio") }, count, &inputs, &outputs, status) }
}

/// Density over standard sea-level density, the ratio called sigma.
///
/// Pressure ratio over temperature ratio.
///
/// @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
/// @param isa_deviation_k warmer than standard by this, -150 to 150
/// @param[out] density_ratio the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding. The sea-level density meant is `p0/(R T0)`, which is 1.225 kg/m3 to 1.5e-8.
/// Degenerate cases: 1 at zero altitude and deviation, exactly.
/// Errors: A value outside its range.
/// Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
///
/// Example: lubber_density_ratio(35000.0, 0.0, &value) gives 0.3099
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_density_ratio(
    pressure_altitude_ft: f64,
    isa_deviation_k: f64,
    density_ratio: *mut f64,
) -> i32 {
    let answer = || plain::density_ratio(pressure_altitude_ft, isa_deviation_k).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [density_ratio]) }
}

/// `lubber_density_ratio` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_density_ratio_n(
    count: usize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    isa_deviation_k: *const f64,
    isa_deviation_k_stride: isize,
    density_ratio: *mut f64,
    density_ratio_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(pressure_altitude_ft, pressure_altitude_ft_stride), Array::input(isa_deviation_k, isa_deviation_k_stride)], [Array::output(density_ratio, density_ratio_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("density_ratio") }, count, &inputs, &outputs, status) }
}

/// Temperature over standard sea-level temperature, in kelvins, the ratio called theta.
///
/// The temperature of `lubber_standard_atmosphere` over 288.15 K.
///
/// @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
/// @param isa_deviation_k warmer than standard by this, -150 to 150
/// @param[out] temperature_ratio the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: 1 at zero altitude and deviation, exactly.
/// Errors: A value outside its range.
/// Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
///
/// Example: lubber_temperature_ratio(35000.0, 0.0, &value) gives 0.7594
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_temperature_ratio(
    pressure_altitude_ft: f64,
    isa_deviation_k: f64,
    temperature_ratio: *mut f64,
) -> i32 {
    let answer = || plain::temperature_ratio(pressure_altitude_ft, isa_deviation_k).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [temperature_ratio]) }
}

/// `lubber_temperature_ratio` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_temperature_ratio_n(
    count: usize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    isa_deviation_k: *const f64,
    isa_deviation_k_stride: isize,
    temperature_ratio: *mut f64,
    temperature_ratio_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(pressure_altitude_ft, pressure_altitude_ft_stride), Array::input(isa_deviation_k, isa_deviation_k_stride)], [Array::output(temperature_ratio, temperature_ratio_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("temperature_ratio") }, count, &inputs, &outputs, status) }
}

/// How much warmer than the standard atmosphere the air is: the ISA deviation of a temperature.
///
/// The temperature less the standard one at that pressure altitude.
///
/// @param temperature_degc static air temperature, -200 to 200
/// @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
/// @param[out] isa_deviation_k the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range, or a deviation beyond 150 K.
/// Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
///
/// Example: lubber_isa_deviation_k(-45.0, 35000.0, &value) gives 9.34
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_isa_deviation_k(
    temperature_degc: f64,
    pressure_altitude_ft: f64,
    isa_deviation_k: *mut f64,
) -> i32 {
    let answer = || plain::isa_deviation_k(temperature_degc, pressure_altitude_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [isa_deviation_k]) }
}

/// `lubber_isa_deviation_k` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_isa_deviation_k_n(
    count: usize,
    temperature_degc: *const f64,
    temperature_degc_stride: isize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    isa_deviation_k: *mut f64,
    isa_deviation_k_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(temperature_degc, temperature_degc_stride), Array::input(pressure_altitude_ft, pressure_altitude_ft_stride)], [Array::output(isa_deviation_k, isa_deviation_k_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("isa_deviation_k") }, count, &inputs, &outputs, status) }
}

/// The speed of sound in air of a temperature.
///
/// `sqrt(1.4 R T)` with R = 287.05287 J/(kg K).
///
/// @param temperature_degc static air temperature, -200 to 200
/// @param[out] speed_of_sound_kt the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding, for a gas of constant heat ratio: real air at 50 degC differs by less than 0.1 percent.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range.
/// Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
///
/// Example: lubber_speed_of_sound_kt(15.0, &value) gives 661.48
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_speed_of_sound_kt(
    temperature_degc: f64,
    speed_of_sound_kt: *mut f64,
) -> i32 {
    let answer = || plain::speed_of_sound_kt(temperature_degc).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [speed_of_sound_kt]) }
}

/// `lubber_speed_of_sound_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_speed_of_sound_kt_n(
    count: usize,
    temperature_degc: *const f64,
    temperature_degc_stride: isize,
    speed_of_sound_kt: *mut f64,
    speed_of_sound_kt_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(temperature_degc, temperature_degc_stride)], [Array::output(speed_of_sound_kt, speed_of_sound_kt_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("speed_of_sound_kt") }, count, &inputs, &outputs, status) }
}

/// Pressure altitude from static pressure: where the standard atmosphere has that pressure.
///
/// The inverse of the pressure of `lubber_standard_atmosphere`.
///
/// @param pressure_hpa static pressure, above 0 to 2000
/// @param[out] pressure_altitude_from_pressure_ft the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding (1e-9 ft).
/// Degenerate cases: None in the range.
/// Errors: A value outside its range, or a pressure above that of -5 km (1777 hPa) or below that of 80 km (0.00886
/// hPa).
/// Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
///
/// Example: lubber_pressure_altitude_from_pressure_ft(500.0, &value) gives 18288.8
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_pressure_altitude_from_pressure_ft(
    pressure_hpa: f64,
    pressure_altitude_from_pressure_ft: *mut f64,
) -> i32 {
    let answer = || plain::pressure_altitude_from_pressure_ft(pressure_hpa).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [pressure_altitude_from_pressure_ft]) }
}

/// `lubber_pressure_altitude_from_pressure_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_pressure_altitude_from_pressure_ft_n(
    count: usize,
    pressure_hpa: *const f64,
    pressure_hpa_stride: isize,
    pressure_altitude_from_pressure_ft: *mut f64,
    pressure_altitude_from_pressure_ft_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(pressure_hpa, pressure_hpa_stride)], [Array::output(pressure_altitude_from_pressure_ft, pressure_altitude_from_pressure_ft_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("pressure_altitude_from_pressure_ft") }, count, &inputs, &outputs, status) }
}

/// Geopotential altitude, in which the standard atmosphere is laid out, from geometric altitude.
///
/// `r h/(r + h)` with r = 6 356 766 m.
///
/// @param geometric_altitude_ft height above mean sea level as a length, -16 500 to 400 000
/// @param[out] geopotential_altitude_ft the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding, in the gravity of the standard atmosphere; real gravity changes with latitude by up to 0.3
/// percent.
/// Degenerate cases: Zero gives zero.
/// Errors: A value outside its range.
/// Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
///
/// Example: lubber_geopotential_altitude_ft(60000.0, &value) gives 59827.9
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_geopotential_altitude_ft(
    geometric_altitude_ft: f64,
    geopotential_altitude_ft: *mut f64,
) -> i32 {
    let answer = || plain::geopotential_altitude_ft(geometric_altitude_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [geopotential_altitude_ft]) }
}

/// `lubber_geopotential_altitude_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_geopotential_altitude_ft_n(
    count: usize,
    geometric_altitude_ft: *const f64,
    geometric_altitude_ft_stride: isize,
    geopotential_altitude_ft: *mut f64,
    geopotential_altitude_ft_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(geometric_altitude_ft, geometric_altitude_ft_stride)], [Array::output(geopotential_altitude_ft, geopotential_altitude_ft_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("geopotential_altitude_ft") }, count, &inputs, &outputs, status) }
}

/// Geometric altitude from geopotential altitude: the inverse of `lubber_geopotential_altitude_ft`.
///
/// `r H/(r - H)` with r = 6 356 766 m.
///
/// @param geopotential_altitude_ft altitude in units of work against standard gravity, -16 513.1 to 392 472.6
/// @param[out] geometric_altitude_ft the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding, in the gravity of the standard atmosphere; real gravity changes with latitude by up to 0.3
/// percent.
/// Degenerate cases: Zero gives zero.
/// Errors: A value outside its range.
/// Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
///
/// Example: lubber_geometric_altitude_ft(60000.0, &value) gives 60173.1
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_geometric_altitude_ft(
    geopotential_altitude_ft: f64,
    geometric_altitude_ft: *mut f64,
) -> i32 {
    let answer = || plain::geometric_altitude_ft(geopotential_altitude_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [geometric_altitude_ft]) }
}

/// `lubber_geometric_altitude_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_geometric_altitude_ft_n(
    count: usize,
    geopotential_altitude_ft: *const f64,
    geopotential_altitude_ft_stride: isize,
    geometric_altitude_ft: *mut f64,
    geometric_altitude_ft_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(geopotential_altitude_ft, geopotential_altitude_ft_stride)], [Array::output(geometric_altitude_ft, geometric_altitude_ft_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("geometric_altitude_ft") }, count, &inputs, &outputs, status) }
}

/// True airspeed from calibrated airspeed, compressible.
///
/// The impact pressure `q` of the calibrated airspeed at standard sea level, over the static pressure `p`,
/// gives the Mach number by `q/p = (1 + 0.2 M^2)^3.5 - 1`, above Mach 1 by Rayleigh's pitot formula; times the
/// speed of sound.
///
/// @param cas_kt calibrated airspeed, 0 to 5000
/// @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
/// @param isa_deviation_k warmer than standard by this, -150 to 150
/// @param[out] tas_from_cas_kt the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding (1e-14 of the result, as much again between arrays and single calls), for air of constant heat ratio: good to about Mach 5.
/// Degenerate cases: Zero gives zero.
/// Errors: A value outside its range, or a result beyond 5000 kt or Mach 10.
/// Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
/// for the pitot pressure above Mach 1.
///
/// Example: lubber_tas_from_cas_kt(280.0, 35000.0, 0.0, &value) gives 473.44
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_tas_from_cas_kt(
    cas_kt: f64,
    pressure_altitude_ft: f64,
    isa_deviation_k: f64,
    tas_from_cas_kt: *mut f64,
) -> i32 {
    let answer = || plain::tas_from_cas_kt(cas_kt, pressure_altitude_ft, isa_deviation_k).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [tas_from_cas_kt]) }
}

/// `lubber_tas_from_cas_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_tas_from_cas_kt_n(
    count: usize,
    cas_kt: *const f64,
    cas_kt_stride: isize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    isa_deviation_k: *const f64,
    isa_deviation_k_stride: isize,
    tas_from_cas_kt: *mut f64,
    tas_from_cas_kt_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(cas_kt, cas_kt_stride), Array::input(pressure_altitude_ft, pressure_altitude_ft_stride), Array::input(isa_deviation_k, isa_deviation_k_stride)], [Array::output(tas_from_cas_kt, tas_from_cas_kt_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("tas_from_cas_kt") }, count, &inputs, &outputs, status) }
}

/// Calibrated airspeed from true airspeed, compressible: the inverse of `lubber_tas_from_cas_kt`.
///
/// The impact pressure at Mach `V/a` is what the calibrated airspeed is read from, as if at standard sea level.
///
/// @param tas_kt true airspeed, 0 to 5000
/// @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
/// @param isa_deviation_k warmer than standard by this, -150 to 150
/// @param[out] cas_from_tas_kt the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding (1e-14 of the result, as much again between arrays and single calls), for air of constant heat ratio: good to about Mach 5.
/// Degenerate cases: Zero gives zero.
/// Errors: A value outside its range, or a result beyond 5000 kt or Mach 10.
/// Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
/// for the pitot pressure above Mach 1.
///
/// Example: lubber_cas_from_tas_kt(450.0, 35000.0, 0.0, &value) gives 264.68
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_cas_from_tas_kt(
    tas_kt: f64,
    pressure_altitude_ft: f64,
    isa_deviation_k: f64,
    cas_from_tas_kt: *mut f64,
) -> i32 {
    let answer = || plain::cas_from_tas_kt(tas_kt, pressure_altitude_ft, isa_deviation_k).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [cas_from_tas_kt]) }
}

/// `lubber_cas_from_tas_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_cas_from_tas_kt_n(
    count: usize,
    tas_kt: *const f64,
    tas_kt_stride: isize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    isa_deviation_k: *const f64,
    isa_deviation_k_stride: isize,
    cas_from_tas_kt: *mut f64,
    cas_from_tas_kt_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(tas_kt, tas_kt_stride), Array::input(pressure_altitude_ft, pressure_altitude_ft_stride), Array::input(isa_deviation_k, isa_deviation_k_stride)], [Array::output(cas_from_tas_kt, cas_from_tas_kt_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("cas_from_tas_kt") }, count, &inputs, &outputs, status) }
}

/// The altitude that a perfect altimeter shows with its setting.
///
/// Pressure altitude less the pressure altitude of the setting: the setting turns the scale of the standard
/// atmosphere as a whole.
///
/// @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
/// @param altimeter_setting_hpa what the altimeter is set to, 400 to 1200
/// @param[out] indicated_altitude_ft the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: With 1013.25 hPa it is the pressure altitude; with the pressure itself, zero.
/// Errors: A value outside its range.
/// Source: The construction of the instrument; ICAO Doc 7488/3 (3rd edition 1993) for the scale.
///
/// Example: lubber_indicated_altitude_ft(5000.0, 1000.0, &value) gives 4636.2
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_indicated_altitude_ft(
    pressure_altitude_ft: f64,
    altimeter_setting_hpa: f64,
    indicated_altitude_ft: *mut f64,
) -> i32 {
    let answer = || plain::indicated_altitude_ft(pressure_altitude_ft, altimeter_setting_hpa).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [indicated_altitude_ft]) }
}

/// `lubber_indicated_altitude_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_indicated_altitude_ft_n(
    count: usize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    altimeter_setting_hpa: *const f64,
    altimeter_setting_hpa_stride: isize,
    indicated_altitude_ft: *mut f64,
    indicated_altitude_ft_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(pressure_altitude_ft, pressure_altitude_ft_stride), Array::input(altimeter_setting_hpa, altimeter_setting_hpa_stride)], [Array::output(indicated_altitude_ft, indicated_altitude_ft_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("indicated_altitude_ft") }, count, &inputs, &outputs, status) }
}

/// Pressure altitude from what an altimeter shows with its setting: the inverse of `lubber_indicated_altitude_ft`.
///
/// Indicated altitude plus the pressure altitude of the setting.
///
/// @param indicated_altitude_ft altitude shown, -50 000 to 300 000
/// @param altimeter_setting_hpa what the altimeter is set to, 400 to 1200
/// @param[out] pressure_altitude_ft the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: With 1013.25 hPa it is the indicated altitude.
/// Errors: A value outside its range, or a pressure altitude outside -5 to 80 km.
/// Source: The construction of the instrument; ICAO Doc 7488/3 (3rd edition 1993) for the scale.
///
/// Example: lubber_pressure_altitude_ft(5000.0, 1000.0, &value) gives 5363.8
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_pressure_altitude_ft(
    indicated_altitude_ft: f64,
    altimeter_setting_hpa: f64,
    pressure_altitude_ft: *mut f64,
) -> i32 {
    let answer = || plain::pressure_altitude_ft(indicated_altitude_ft, altimeter_setting_hpa).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [pressure_altitude_ft]) }
}

/// `lubber_pressure_altitude_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_pressure_altitude_ft_n(
    count: usize,
    indicated_altitude_ft: *const f64,
    indicated_altitude_ft_stride: isize,
    altimeter_setting_hpa: *const f64,
    altimeter_setting_hpa_stride: isize,
    pressure_altitude_ft: *mut f64,
    pressure_altitude_ft_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(indicated_altitude_ft, indicated_altitude_ft_stride), Array::input(altimeter_setting_hpa, altimeter_setting_hpa_stride)], [Array::output(pressure_altitude_ft, pressure_altitude_ft_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("pressure_altitude_ft") }, count, &inputs, &outputs, status) }
}

/// Pressure altitude by the rule of 1000 ft for each inch of mercury below 29.92.
///
/// `indicated altitude + 1000 (29.92 - setting in inches)`, an inch of mercury being 33.86389 hPa.
/// `lubber_pressure_altitude_ft` is exact.
///
/// @param indicated_altitude_ft altitude shown, -50 000 to 300 000
/// @param altimeter_setting_hpa what the altimeter is set to, 400 to 1200
/// @param[out] pressure_altitude_rule_ft the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: An inch is 924 ft at sea level, so the rule is 8 percent of the correction too much.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range, or a pressure altitude outside -5 to 80 km.
/// Source: CNATRA P-203, Student Guide for Preflight Navigation.
///
/// Example: lubber_pressure_altitude_rule_ft(5000.0, 1000.0, &value) gives 5390.0
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_pressure_altitude_rule_ft(
    indicated_altitude_ft: f64,
    altimeter_setting_hpa: f64,
    pressure_altitude_rule_ft: *mut f64,
) -> i32 {
    let answer = || plain::pressure_altitude_rule_ft(indicated_altitude_ft, altimeter_setting_hpa).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [pressure_altitude_rule_ft]) }
}

/// `lubber_pressure_altitude_rule_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_pressure_altitude_rule_ft_n(
    count: usize,
    indicated_altitude_ft: *const f64,
    indicated_altitude_ft_stride: isize,
    altimeter_setting_hpa: *const f64,
    altimeter_setting_hpa_stride: isize,
    pressure_altitude_rule_ft: *mut f64,
    pressure_altitude_rule_ft_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(indicated_altitude_ft, indicated_altitude_ft_stride), Array::input(altimeter_setting_hpa, altimeter_setting_hpa_stride)], [Array::output(pressure_altitude_rule_ft, pressure_altitude_rule_ft_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("pressure_altitude_rule_ft") }, count, &inputs, &outputs, status) }
}

/// The altimeter setting of a station, QNH: with it an altimeter at the station shows the elevation.
///
/// The standard pressure at the station's pressure altitude less its elevation.
///
/// @param station_pressure_hpa pressure at the station, its QFE, above 0 to 2000
/// @param elevation_ft elevation of the station, -16 500 to 60 000
/// @param[out] altimeter_setting_hpa the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding. A station reports it rounded down to a whole hectopascal, which is 27 ft.
/// Degenerate cases: At no elevation it is the pressure.
/// Errors: A value outside its range, or a setting outside 400 to 1200 hPa.
/// Source: The definition of QNH, ICAO Annex 3 and Doc 8896 (from memory). `lubber_altimeter_setting_smithsonian_hpa` is the
/// American one.
///
/// Example: lubber_altimeter_setting_hpa(832.0, 5430.0, &value) gives 1016.08
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_altimeter_setting_hpa(
    station_pressure_hpa: f64,
    elevation_ft: f64,
    altimeter_setting_hpa: *mut f64,
) -> i32 {
    let answer = || plain::altimeter_setting_hpa(station_pressure_hpa, elevation_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [altimeter_setting_hpa]) }
}

/// `lubber_altimeter_setting_hpa` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_altimeter_setting_hpa_n(
    count: usize,
    station_pressure_hpa: *const f64,
    station_pressure_hpa_stride: isize,
    elevation_ft: *const f64,
    elevation_ft_stride: isize,
    altimeter_setting_hpa: *mut f64,
    altimeter_setting_hpa_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(station_pressure_hpa, station_pressure_hpa_stride), Array::input(elevation_ft, elevation_ft_stride)], [Array::output(altimeter_setting_hpa, altimeter_setting_hpa_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("altimeter_setting_hpa") }, count, &inputs, &outputs, status) }
}

/// The altimeter setting of a station by the American formula, for a cockpit about 10 ft above it.
///
/// `(p - 0.3) (1 + 1013.25^n 0.0065/288 h/(p - 0.3)^n)^(1/n)` with n = 0.190284, p in hectopascals, h in
/// metres.
///
/// @param station_pressure_hpa pressure at the station, its QFE, above 0 to 2000
/// @param elevation_ft elevation of the station, -16 500 to 60 000
/// @param[out] altimeter_setting_smithsonian_hpa the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As published; 0.3 to 0.4 hPa less than `lubber_altimeter_setting_hpa`, which is the height of the cockpit.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range, or a setting outside 400 to 1200 hPa.
/// Source: Smithsonian Meteorological Tables, 6th edition 1951, p. 269, read in a quotation.
///
/// Example: lubber_altimeter_setting_smithsonian_hpa(832.0, 5430.0, &value) gives 1015.81
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_altimeter_setting_smithsonian_hpa(
    station_pressure_hpa: f64,
    elevation_ft: f64,
    altimeter_setting_smithsonian_hpa: *mut f64,
) -> i32 {
    let answer = || plain::altimeter_setting_smithsonian_hpa(station_pressure_hpa, elevation_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [altimeter_setting_smithsonian_hpa]) }
}

/// `lubber_altimeter_setting_smithsonian_hpa` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_altimeter_setting_smithsonian_hpa_n(
    count: usize,
    station_pressure_hpa: *const f64,
    station_pressure_hpa_stride: isize,
    elevation_ft: *const f64,
    elevation_ft_stride: isize,
    altimeter_setting_smithsonian_hpa: *mut f64,
    altimeter_setting_smithsonian_hpa_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(station_pressure_hpa, station_pressure_hpa_stride), Array::input(elevation_ft, elevation_ft_stride)], [Array::output(altimeter_setting_smithsonian_hpa, altimeter_setting_smithsonian_hpa_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("altimeter_setting_smithsonian_hpa") }, count, &inputs, &outputs, status) }
}

/// The pressure at a station, its QFE, from its altimeter setting: the inverse of `lubber_altimeter_setting_hpa`.
///
/// The standard pressure at the elevation plus the pressure altitude of the setting.
///
/// @param altimeter_setting_hpa what the altimeter is set to, 400 to 1200
/// @param elevation_ft elevation of the station, -16 500 to 60 000
/// @param[out] station_pressure_hpa the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: At no elevation it is the setting.
/// Errors: A value outside its range, or a pressure outside 0 to 2000 hPa.
/// Source: As `lubber_altimeter_setting_hpa`.
///
/// Example: lubber_station_pressure_hpa(1013.25, 5430.0, &value) gives 829.59
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_station_pressure_hpa(
    altimeter_setting_hpa: f64,
    elevation_ft: f64,
    station_pressure_hpa: *mut f64,
) -> i32 {
    let answer = || plain::station_pressure_hpa(altimeter_setting_hpa, elevation_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [station_pressure_hpa]) }
}

/// `lubber_station_pressure_hpa` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_station_pressure_hpa_n(
    count: usize,
    altimeter_setting_hpa: *const f64,
    altimeter_setting_hpa_stride: isize,
    elevation_ft: *const f64,
    elevation_ft_stride: isize,
    station_pressure_hpa: *mut f64,
    station_pressure_hpa_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(altimeter_setting_hpa, altimeter_setting_hpa_stride), Array::input(elevation_ft, elevation_ft_stride)], [Array::output(station_pressure_hpa, station_pressure_hpa_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("station_pressure_hpa") }, count, &inputs, &outputs, status) }
}

/// Where on a radial to begin the turn onto a DME arc, in wind and with roll.
///
/// The end of the turn lies on the arc with the track along it; the bearing of the end is the one for which the beginning lies on the
/// radial. In still air with an instant roll the distance is `sqrt(D^2 + 2 D r)` inbound and `sqrt(D^2 - 2 D r)` outbound.
///
/// @param radial_deg the radial, any finite number
/// @param flown whether the radial is flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
/// @param arc_radius_nm ground distance of the arc from the station, above 0 to 5000
/// @param sense which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param wind_from_deg where the wind blows from, against the radial's north
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param bank_limit_deg greatest bank, above 0 below 90
/// @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
/// @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
/// @param[out] radial_at_roll_in_deg Radial at which roll-in begins; may be NULL
/// @param[out] distance_at_roll_in_nm Ground distance from the station at which roll-in begins; may be NULL
/// @param[out] radial_at_roll_out_deg Radial at which the wings are level again; may be NULL
/// @param[out] distance_at_roll_out_nm Ground distance from the station at which the wings are level again; may be NULL
/// @param[out] angle_at_station_deg Angle at the station between the two, positive in the sense of the arc: the lead radials when leaving the arc; may be NULL
/// @param[out] heading_change_deg Change of heading, right positive; may be NULL
/// @param[out] duration_s From roll-in to wings level; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error in the plane; 2e-4 NM on the ellipsoid within 20 NM of the station.
/// Degenerate cases: An arc counts along the ground; `ground_distance_nm` turns the DME reading that is flown into it.
/// Errors: A value outside its range, a turn that does not fit (outbound in still air: an arc below twice the turn radius), a wind that the airspeed cannot hold.
/// Source: Derived from the geometry of tangent curves and the equilibrium of a coordinated turn.
///
/// Example: lubber_arc_entry(300.0, LUBBER_RADIAL_FLOWN_INBOUND, 12.0, LUBBER_ARC_SENSE_CLOCKWISE, 210.0, 250.0, 40.0, 25.0, 3.0, 5.0, NULL, &value, NULL, NULL, NULL, NULL, NULL) gives 13.92
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_entry(
    radial_deg: f64,
    flown: i32,
    arc_radius_nm: f64,
    sense: i32,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
    radial_at_roll_in_deg: *mut f64,
    distance_at_roll_in_nm: *mut f64,
    radial_at_roll_out_deg: *mut f64,
    distance_at_roll_out_nm: *mut f64,
    angle_at_station_deg: *mut f64,
    heading_change_deg: *mut f64,
    duration_s: *mut f64,
) -> i32 {
    let answer = || {
        if [radial_deg, arc_radius_nm, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 7]) }
        plain::arc_entry(radial_deg, lubberline::lead::RadialFlown::from_code("flown", f64::from(flown))?, arc_radius_nm, lubberline::lead::ArcSense::from_code("sense", f64::from(sense))?, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.radial_at_roll_in_deg, answer.distance_at_roll_in_nm, answer.radial_at_roll_out_deg, answer.distance_at_roll_out_nm, answer.angle_at_station_deg, answer.heading_change_deg, answer.duration_s])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [radial_at_roll_in_deg, distance_at_roll_in_nm, radial_at_roll_out_deg, distance_at_roll_out_nm, angle_at_station_deg, heading_change_deg, duration_s]) }
}

/// `lubber_arc_entry` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `flown` is one code for all points: whether the radial is flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
///
/// `sense` is one code for all points: which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_entry_n(
    count: usize,
    radial_deg: *const f64,
    radial_deg_stride: isize,
    flown: i32,
    arc_radius_nm: *const f64,
    arc_radius_nm_stride: isize,
    sense: i32,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    bank_limit_deg: *const f64,
    bank_limit_deg_stride: isize,
    turn_rate_limit_deg_per_s: *const f64,
    turn_rate_limit_deg_per_s_stride: isize,
    roll_rate_deg_per_s: *const f64,
    roll_rate_deg_per_s_stride: isize,
    radial_at_roll_in_deg: *mut f64,
    radial_at_roll_in_deg_stride: isize,
    distance_at_roll_in_nm: *mut f64,
    distance_at_roll_in_nm_stride: isize,
    radial_at_roll_out_deg: *mut f64,
    radial_at_roll_out_deg_stride: isize,
    distance_at_roll_out_nm: *mut f64,
    distance_at_roll_out_nm_stride: isize,
    angle_at_station_deg: *mut f64,
    angle_at_station_deg_stride: isize,
    heading_change_deg: *mut f64,
    heading_change_deg_stride: isize,
    duration_s: *mut f64,
    duration_s_stride: isize,
    status: *mut i32,
) -> usize {
    let flown = f64::from(flown);
    let sense = f64::from(sense);
    let (inputs, outputs) = ([Array::input(radial_deg, radial_deg_stride), Array::input(&raw const flown, 0), Array::input(arc_radius_nm, arc_radius_nm_stride), Array::input(&raw const sense, 0), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride), Array::input(bank_limit_deg, bank_limit_deg_stride), Array::input(turn_rate_limit_deg_per_s, turn_rate_limit_deg_per_s_stride), Array::input(roll_rate_deg_per_s, roll_rate_deg_per_s_stride)], [Array::output(radial_at_roll_in_deg, radial_at_roll_in_deg_stride), Array::output(distance_at_roll_in_nm, distance_at_roll_in_nm_stride), Array::output(radial_at_roll_out_deg, radial_at_roll_out_deg_stride), Array::output(distance_at_roll_out_nm, distance_at_roll_out_nm_stride), Array::output(angle_at_station_deg, angle_at_station_deg_stride), Array::output(heading_change_deg, heading_change_deg_stride), Array::output(duration_s, duration_s_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("arc_entry") }, count, &inputs, &outputs, status) }
}

/// Where on a DME arc to begin the turn onto a radial, in wind and with roll: the lead radial.
///
/// The turn begins on the arc along it and ends on the radial. In still air with an instant roll the lead is
/// `asin(r / (D - r))` toward the station and `asin(r / (D + r))` away from it.
///
/// @param radial_deg the radial, any finite number
/// @param flown whether the radial is flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
/// @param arc_radius_nm ground distance of the arc from the station, above 0 to 5000
/// @param sense which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param wind_from_deg where the wind blows from, against the radial's north
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param bank_limit_deg greatest bank, above 0 below 90
/// @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
/// @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
/// @param[out] radial_at_roll_in_deg Radial at which roll-in begins; may be NULL
/// @param[out] distance_at_roll_in_nm Ground distance from the station at which roll-in begins; may be NULL
/// @param[out] radial_at_roll_out_deg Radial at which the wings are level again; may be NULL
/// @param[out] distance_at_roll_out_nm Ground distance from the station at which the wings are level again; may be NULL
/// @param[out] angle_at_station_deg Angle at the station between the two, positive in the sense of the arc: the lead radials when leaving the arc; may be NULL
/// @param[out] heading_change_deg Change of heading, right positive; may be NULL
/// @param[out] duration_s From roll-in to wings level; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error in the plane; 2e-4 NM on the ellipsoid within 20 NM of the station.
/// Degenerate cases: An arc counts along the ground; `ground_distance_nm` turns the DME reading that is flown into it.
/// Errors: A value outside its range, a turn that does not fit (toward the station in still air: an arc below twice the turn radius), a wind that the airspeed cannot hold.
/// Source: Derived from the geometry of tangent curves and the equilibrium of a coordinated turn.
///
/// Example: lubber_arc_exit(300.0, LUBBER_RADIAL_FLOWN_INBOUND, 12.0, LUBBER_ARC_SENSE_CLOCKWISE, 210.0, 250.0, 40.0, 25.0, 3.0, 5.0, NULL, NULL, NULL, NULL, &value, NULL, NULL) gives 11.65
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_exit(
    radial_deg: f64,
    flown: i32,
    arc_radius_nm: f64,
    sense: i32,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
    radial_at_roll_in_deg: *mut f64,
    distance_at_roll_in_nm: *mut f64,
    radial_at_roll_out_deg: *mut f64,
    distance_at_roll_out_nm: *mut f64,
    angle_at_station_deg: *mut f64,
    heading_change_deg: *mut f64,
    duration_s: *mut f64,
) -> i32 {
    let answer = || {
        if [radial_deg, arc_radius_nm, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 7]) }
        plain::arc_exit(radial_deg, lubberline::lead::RadialFlown::from_code("flown", f64::from(flown))?, arc_radius_nm, lubberline::lead::ArcSense::from_code("sense", f64::from(sense))?, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.radial_at_roll_in_deg, answer.distance_at_roll_in_nm, answer.radial_at_roll_out_deg, answer.distance_at_roll_out_nm, answer.angle_at_station_deg, answer.heading_change_deg, answer.duration_s])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [radial_at_roll_in_deg, distance_at_roll_in_nm, radial_at_roll_out_deg, distance_at_roll_out_nm, angle_at_station_deg, heading_change_deg, duration_s]) }
}

/// `lubber_arc_exit` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `flown` is one code for all points: whether the radial is flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
///
/// `sense` is one code for all points: which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_exit_n(
    count: usize,
    radial_deg: *const f64,
    radial_deg_stride: isize,
    flown: i32,
    arc_radius_nm: *const f64,
    arc_radius_nm_stride: isize,
    sense: i32,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    bank_limit_deg: *const f64,
    bank_limit_deg_stride: isize,
    turn_rate_limit_deg_per_s: *const f64,
    turn_rate_limit_deg_per_s_stride: isize,
    roll_rate_deg_per_s: *const f64,
    roll_rate_deg_per_s_stride: isize,
    radial_at_roll_in_deg: *mut f64,
    radial_at_roll_in_deg_stride: isize,
    distance_at_roll_in_nm: *mut f64,
    distance_at_roll_in_nm_stride: isize,
    radial_at_roll_out_deg: *mut f64,
    radial_at_roll_out_deg_stride: isize,
    distance_at_roll_out_nm: *mut f64,
    distance_at_roll_out_nm_stride: isize,
    angle_at_station_deg: *mut f64,
    angle_at_station_deg_stride: isize,
    heading_change_deg: *mut f64,
    heading_change_deg_stride: isize,
    duration_s: *mut f64,
    duration_s_stride: isize,
    status: *mut i32,
) -> usize {
    let flown = f64::from(flown);
    let sense = f64::from(sense);
    let (inputs, outputs) = ([Array::input(radial_deg, radial_deg_stride), Array::input(&raw const flown, 0), Array::input(arc_radius_nm, arc_radius_nm_stride), Array::input(&raw const sense, 0), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride), Array::input(bank_limit_deg, bank_limit_deg_stride), Array::input(turn_rate_limit_deg_per_s, turn_rate_limit_deg_per_s_stride), Array::input(roll_rate_deg_per_s, roll_rate_deg_per_s_stride)], [Array::output(radial_at_roll_in_deg, radial_at_roll_in_deg_stride), Array::output(distance_at_roll_in_nm, distance_at_roll_in_nm_stride), Array::output(radial_at_roll_out_deg, radial_at_roll_out_deg_stride), Array::output(distance_at_roll_out_nm, distance_at_roll_out_nm_stride), Array::output(angle_at_station_deg, angle_at_station_deg_stride), Array::output(heading_change_deg, heading_change_deg_stride), Array::output(duration_s, duration_s_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("arc_exit") }, count, &inputs, &outputs, status) }
}

/// The angle between outbound track and inbound course of a base turn, as published.
///
/// `36 / T` up to 170 kt, `0.215 V / T` above, with T in minutes; SI: up to 315 km/h, `0.116 V / T` above.
///
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param outbound_time_s time outbound, above 0 to 1 000 000
/// @param units in which units the formula is printed: LUBBER_DESIGN_UNITS_NON_SI, LUBBER_DESIGN_UNITS_SI
/// @param[out] design_base_turn_offset_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As published: within 2 percent of `base_turn_offset_exact_deg` for two minutes, 7 percent high at 250 kt for one.
/// Degenerate cases: At 170 kt the two formulas differ by 1.5 percent.
/// Errors: A value outside its range.
/// Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 4 Chapter 3, base turns.
///
/// Example: lubber_design_base_turn_offset_deg(157.23, 120.0, LUBBER_DESIGN_UNITS_NON_SI, &value) gives 18.0
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_design_base_turn_offset_deg(
    true_airspeed_kt: f64,
    outbound_time_s: f64,
    units: i32,
    design_base_turn_offset_deg: *mut f64,
) -> i32 {
    let answer = || {
        if [true_airspeed_kt, outbound_time_s].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 1]) }
        plain::design_base_turn_offset_deg(true_airspeed_kt, outbound_time_s, lubberline::procedure::DesignUnits::from_code("units", f64::from(units))?).map(|answer| [answer])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [design_base_turn_offset_deg]) }
}

/// `lubber_design_base_turn_offset_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `units` is one code for all points: in which units the formula is printed: LUBBER_DESIGN_UNITS_NON_SI, LUBBER_DESIGN_UNITS_SI
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_design_base_turn_offset_deg_n(
    count: usize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    outbound_time_s: *const f64,
    outbound_time_s_stride: isize,
    units: i32,
    design_base_turn_offset_deg: *mut f64,
    design_base_turn_offset_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let units = f64::from(units);
    let (inputs, outputs) = ([Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(outbound_time_s, outbound_time_s_stride), Array::input(&raw const units, 0)], [Array::output(design_base_turn_offset_deg, design_base_turn_offset_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("design_base_turn_offset_deg") }, count, &inputs, &outputs, status) }
}

/// The angle of a base turn for which, in still air with an instant roll, the turn ends on the inbound course.
///
/// `2 atan(r / L)`.
///
/// @param turn_radius_nm radius of the turn, above 0 to 1000
/// @param outbound_leg_nm length of the outbound leg, 0 to 10 900
/// @param[out] base_turn_offset_exact_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error.
/// Degenerate cases: Without an outbound leg it is 180 degrees.
/// Errors: A value outside its range.
/// Source: Derived: a circle tangent to two lines that cross at the fix.
///
/// Example: lubber_base_turn_offset_exact_deg(0.834, 5.241, &value) gives 18.08
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_base_turn_offset_exact_deg(
    turn_radius_nm: f64,
    outbound_leg_nm: f64,
    base_turn_offset_exact_deg: *mut f64,
) -> i32 {
    let answer = || plain::base_turn_offset_exact_deg(turn_radius_nm, outbound_leg_nm).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [base_turn_offset_exact_deg]) }
}

/// `lubber_base_turn_offset_exact_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_base_turn_offset_exact_deg_n(
    count: usize,
    turn_radius_nm: *const f64,
    turn_radius_nm_stride: isize,
    outbound_leg_nm: *const f64,
    outbound_leg_nm_stride: isize,
    base_turn_offset_exact_deg: *mut f64,
    base_turn_offset_exact_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(turn_radius_nm, turn_radius_nm_stride), Array::input(outbound_leg_nm, outbound_leg_nm_stride)], [Array::output(base_turn_offset_exact_deg, base_turn_offset_exact_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("base_turn_offset_exact_deg") }, count, &inputs, &outputs, status) }
}

/// The base turn of a time outbound in a steady wind, exactly: the track and heading from which the turn ends on the inbound course.
///
/// The turn runs with its roll between the wind-corrected headings; over the ground wind times duration is added. Its
/// end has no part across the inbound course.
///
/// @param inbound_course_deg course flown to the fix, any finite number
/// @param turn_side which way the turn inbound goes: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
/// @param outbound_time_s time outbound, above 0 to 1 000 000
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param wind_from_deg where the wind blows from, against the same north
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param bank_limit_deg greatest bank, above 0 below 90
/// @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
/// @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
/// @param[out] track_deg Direction over the ground outbound; may be NULL
/// @param[out] heading_deg Heading that holds it; may be NULL
/// @param[out] offset_deg From the reciprocal of the inbound course to the outbound track, right positive; may be NULL
/// @param[out] outbound_time_s_out Time from the fix to the beginning of the turn; may be NULL
/// @param[out] heading_change_deg Heading to turn through, right positive; may be NULL
/// @param[out] established_nm Distance from the fix at which the wings are level on the inbound course; may be NULL
/// @param[out] duration_s Time from the fix until then; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: 1e-9 of its size in the plane of the fix. The aircraft is taken to be on the outbound track over the fix.
/// Degenerate cases: In calm air with an instant roll the angle is that of `base_turn_offset_exact_deg`.
/// Errors: A value outside its range, an inbound course that the airspeed cannot hold, a turn that ends past the fix whatever
/// the heading.
/// Source: Derived from the equilibrium of a coordinated turn and the triangle of velocities.
///
/// Example: lubber_base_turn(100.0, LUBBER_HOLDING_SIDE_RIGHT, 120.0, 180.0, 40.0, 25.0, 25.0, 3.0, 5.0, NULL, &value, NULL, NULL, NULL, NULL, NULL) gives 271.7
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_base_turn(
    inbound_course_deg: f64,
    turn_side: i32,
    outbound_time_s: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
    track_deg: *mut f64,
    heading_deg: *mut f64,
    offset_deg: *mut f64,
    outbound_time_s_out: *mut f64,
    heading_change_deg: *mut f64,
    established_nm: *mut f64,
    duration_s: *mut f64,
) -> i32 {
    let answer = || {
        if [inbound_course_deg, outbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 7]) }
        plain::base_turn(inbound_course_deg, lubberline::procedure::HoldingSide::from_code("turn_side", f64::from(turn_side))?, outbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.track_deg, answer.heading_deg, answer.offset_deg, answer.outbound_time_s, answer.heading_change_deg, answer.established_nm, answer.duration_s])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [track_deg, heading_deg, offset_deg, outbound_time_s_out, heading_change_deg, established_nm, duration_s]) }
}

/// `lubber_base_turn` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `turn_side` is one code for all points: which way the turn inbound goes: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_base_turn_n(
    count: usize,
    inbound_course_deg: *const f64,
    inbound_course_deg_stride: isize,
    turn_side: i32,
    outbound_time_s: *const f64,
    outbound_time_s_stride: isize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    bank_limit_deg: *const f64,
    bank_limit_deg_stride: isize,
    turn_rate_limit_deg_per_s: *const f64,
    turn_rate_limit_deg_per_s_stride: isize,
    roll_rate_deg_per_s: *const f64,
    roll_rate_deg_per_s_stride: isize,
    track_deg: *mut f64,
    track_deg_stride: isize,
    heading_deg: *mut f64,
    heading_deg_stride: isize,
    offset_deg: *mut f64,
    offset_deg_stride: isize,
    outbound_time_s_out: *mut f64,
    outbound_time_s_out_stride: isize,
    heading_change_deg: *mut f64,
    heading_change_deg_stride: isize,
    established_nm: *mut f64,
    established_nm_stride: isize,
    duration_s: *mut f64,
    duration_s_stride: isize,
    status: *mut i32,
) -> usize {
    let turn_side = f64::from(turn_side);
    let (inputs, outputs) = ([Array::input(inbound_course_deg, inbound_course_deg_stride), Array::input(&raw const turn_side, 0), Array::input(outbound_time_s, outbound_time_s_stride), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride), Array::input(bank_limit_deg, bank_limit_deg_stride), Array::input(turn_rate_limit_deg_per_s, turn_rate_limit_deg_per_s_stride), Array::input(roll_rate_deg_per_s, roll_rate_deg_per_s_stride)], [Array::output(track_deg, track_deg_stride), Array::output(heading_deg, heading_deg_stride), Array::output(offset_deg, offset_deg_stride), Array::output(outbound_time_s_out, outbound_time_s_out_stride), Array::output(heading_change_deg, heading_change_deg_stride), Array::output(established_nm, established_nm_stride), Array::output(duration_s, duration_s_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("base_turn") }, count, &inputs, &outputs, status) }
}

/// The base turn on a published outbound track in a steady wind, exactly: the heading, and the time after which the turn ends on the inbound course.
///
/// As `base_turn`; for a given track the condition is linear in the time.
///
/// @param inbound_course_deg course flown to the fix, any finite number
/// @param outbound_track_deg direction over the ground outbound, against the same north
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param wind_from_deg where the wind blows from, against the same north
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param bank_limit_deg greatest bank, above 0 below 90
/// @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
/// @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
/// @param[out] track_deg Direction over the ground outbound; may be NULL
/// @param[out] heading_deg Heading that holds it; may be NULL
/// @param[out] offset_deg From the reciprocal of the inbound course to the outbound track, right positive; may be NULL
/// @param[out] outbound_time_s Time from the fix to the beginning of the turn; may be NULL
/// @param[out] heading_change_deg Heading to turn through, right positive; may be NULL
/// @param[out] established_nm Distance from the fix at which the wings are level on the inbound course; may be NULL
/// @param[out] duration_s Time from the fix until then; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: 1e-9 of its size in the plane of the fix. The aircraft is taken to be on the outbound track over the fix.
/// Degenerate cases: The turn goes to the side of the inbound course.
/// Errors: A value outside its range, a track along the inbound course, a course that the airspeed cannot hold, a wind in
/// which the turn does not end on the course before the fix.
/// Source: Derived from the equilibrium of a coordinated turn and the triangle of velocities.
///
/// Example: lubber_base_turn_on_track(100.0, 262.0, 180.0, 40.0, 25.0, 25.0, 3.0, 5.0, NULL, NULL, NULL, &value, NULL, NULL, NULL) gives 91.8
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_base_turn_on_track(
    inbound_course_deg: f64,
    outbound_track_deg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
    track_deg: *mut f64,
    heading_deg: *mut f64,
    offset_deg: *mut f64,
    outbound_time_s: *mut f64,
    heading_change_deg: *mut f64,
    established_nm: *mut f64,
    duration_s: *mut f64,
) -> i32 {
    let answer = || plain::base_turn_on_track(inbound_course_deg, outbound_track_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.track_deg, answer.heading_deg, answer.offset_deg, answer.outbound_time_s, answer.heading_change_deg, answer.established_nm, answer.duration_s]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [track_deg, heading_deg, offset_deg, outbound_time_s, heading_change_deg, established_nm, duration_s]) }
}

/// `lubber_base_turn_on_track` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_base_turn_on_track_n(
    count: usize,
    inbound_course_deg: *const f64,
    inbound_course_deg_stride: isize,
    outbound_track_deg: *const f64,
    outbound_track_deg_stride: isize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    bank_limit_deg: *const f64,
    bank_limit_deg_stride: isize,
    turn_rate_limit_deg_per_s: *const f64,
    turn_rate_limit_deg_per_s_stride: isize,
    roll_rate_deg_per_s: *const f64,
    roll_rate_deg_per_s_stride: isize,
    track_deg: *mut f64,
    track_deg_stride: isize,
    heading_deg: *mut f64,
    heading_deg_stride: isize,
    offset_deg: *mut f64,
    offset_deg_stride: isize,
    outbound_time_s: *mut f64,
    outbound_time_s_stride: isize,
    heading_change_deg: *mut f64,
    heading_change_deg_stride: isize,
    established_nm: *mut f64,
    established_nm_stride: isize,
    duration_s: *mut f64,
    duration_s_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(inbound_course_deg, inbound_course_deg_stride), Array::input(outbound_track_deg, outbound_track_deg_stride), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride), Array::input(bank_limit_deg, bank_limit_deg_stride), Array::input(turn_rate_limit_deg_per_s, turn_rate_limit_deg_per_s_stride), Array::input(roll_rate_deg_per_s, roll_rate_deg_per_s_stride)], [Array::output(track_deg, track_deg_stride), Array::output(heading_deg, heading_deg_stride), Array::output(offset_deg, offset_deg_stride), Array::output(outbound_time_s, outbound_time_s_stride), Array::output(heading_change_deg, heading_change_deg_stride), Array::output(established_nm, established_nm_stride), Array::output(duration_s, duration_s_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("base_turn_on_track") }, count, &inputs, &outputs, status) }
}

/// Where a course (a radial) meets a circle (a DME arc) on the WGS-84 ellipsoid: both points.
///
/// The course is extended both ways; the arc is the geodesic circle about its centre.
///
/// @param lat_deg latitude of a point of the course, -90 to 90
/// @param lon_deg longitude of that point, any finite number
/// @param course_deg true course there, any finite number
/// @param center_lat_deg latitude of the centre, -90 to 90
/// @param center_lon_deg longitude of the centre, any finite number
/// @param radius_nm radius of the circle, above 0 to 5000
/// @param[out] latitude1_deg Latitude of the point farther back along the course; may be NULL
/// @param[out] longitude1_deg Its longitude; may be NULL
/// @param[out] along1_nm Its distance along the course, negative behind its point; may be NULL
/// @param[out] latitude2_deg Latitude of the point farther on along the course; may be NULL
/// @param[out] longitude2_deg Its longitude; may be NULL
/// @param[out] along2_nm Its distance along the course, negative behind its point; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: A micrometre across; along, soft where the course only just cuts the circle.
/// Degenerate cases: A course that touches the circle gives its point twice; a miss below a millimetre counts as touching.
/// Errors: A value outside its range, or a course that misses the circle.
/// Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
/// Appendix 2 Attachment C.
///
/// Example: lubber_course_arc_crossing(60.0, -10.0, 90.0, 60.0, -9.0, 12.0, NULL, NULL, &value, NULL, NULL, NULL) gives 18.131
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_course_arc_crossing(
    lat_deg: f64,
    lon_deg: f64,
    course_deg: f64,
    center_lat_deg: f64,
    center_lon_deg: f64,
    radius_nm: f64,
    latitude1_deg: *mut f64,
    longitude1_deg: *mut f64,
    along1_nm: *mut f64,
    latitude2_deg: *mut f64,
    longitude2_deg: *mut f64,
    along2_nm: *mut f64,
) -> i32 {
    let answer = || plain::course_arc_crossing(lat_deg, lon_deg, course_deg, center_lat_deg, center_lon_deg, radius_nm).map(|answer| [answer.latitude1_deg, answer.longitude1_deg, answer.along1_nm, answer.latitude2_deg, answer.longitude2_deg, answer.along2_nm]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [latitude1_deg, longitude1_deg, along1_nm, latitude2_deg, longitude2_deg, along2_nm]) }
}

/// `lubber_course_arc_crossing` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_course_arc_crossing_n(
    count: usize,
    lat_deg: *const f64,
    lat_deg_stride: isize,
    lon_deg: *const f64,
    lon_deg_stride: isize,
    course_deg: *const f64,
    course_deg_stride: isize,
    center_lat_deg: *const f64,
    center_lat_deg_stride: isize,
    center_lon_deg: *const f64,
    center_lon_deg_stride: isize,
    radius_nm: *const f64,
    radius_nm_stride: isize,
    latitude1_deg: *mut f64,
    latitude1_deg_stride: isize,
    longitude1_deg: *mut f64,
    longitude1_deg_stride: isize,
    along1_nm: *mut f64,
    along1_nm_stride: isize,
    latitude2_deg: *mut f64,
    latitude2_deg_stride: isize,
    longitude2_deg: *mut f64,
    longitude2_deg_stride: isize,
    along2_nm: *mut f64,
    along2_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat_deg, lat_deg_stride), Array::input(lon_deg, lon_deg_stride), Array::input(course_deg, course_deg_stride), Array::input(center_lat_deg, center_lat_deg_stride), Array::input(center_lon_deg, center_lon_deg_stride), Array::input(radius_nm, radius_nm_stride)], [Array::output(latitude1_deg, latitude1_deg_stride), Array::output(longitude1_deg, longitude1_deg_stride), Array::output(along1_nm, along1_nm_stride), Array::output(latitude2_deg, latitude2_deg_stride), Array::output(longitude2_deg, longitude2_deg_stride), Array::output(along2_nm, along2_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("course_arc_crossing") }, count, &inputs, &outputs, status) }
}

/// Where two circles (two DME arcs) meet on the WGS-84 ellipsoid: both points.
///
/// Geodesic circles about their centres; the points lie left and right of the line from the first centre to the second.
///
/// @param center1_lat_deg latitude of the first centre, -90 to 90
/// @param center1_lon_deg longitude of the first centre, any finite number
/// @param radius1_nm radius of the first circle, above 0 to 5000
/// @param center2_lat_deg latitude of the second centre, -90 to 90
/// @param center2_lon_deg longitude of the second centre, any finite number
/// @param radius2_nm radius of the second circle, above 0 to 5000
/// @param[out] latitude1_deg Latitude of the point left of the line from the first centre to the second; may be NULL
/// @param[out] longitude1_deg Its longitude; may be NULL
/// @param[out] latitude2_deg Latitude of the point right of that line; may be NULL
/// @param[out] longitude2_deg Its longitude; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: A micrometre across the circles; along, soft where they only just meet.
/// Degenerate cases: Circles that touch give their point twice; a miss below a millimetre counts as touching.
/// Errors: A value outside its range, circles that do not meet, or circles about one centre.
/// Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
/// Appendix 2 Attachment C.
///
/// Example: lubber_arc_arc_crossing(0.0, 0.0, 150.0, 0.0, -4.991, 150.0, NULL, &value, NULL, NULL) gives -2.4955
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_arc_crossing(
    center1_lat_deg: f64,
    center1_lon_deg: f64,
    radius1_nm: f64,
    center2_lat_deg: f64,
    center2_lon_deg: f64,
    radius2_nm: f64,
    latitude1_deg: *mut f64,
    longitude1_deg: *mut f64,
    latitude2_deg: *mut f64,
    longitude2_deg: *mut f64,
) -> i32 {
    let answer = || plain::arc_arc_crossing(center1_lat_deg, center1_lon_deg, radius1_nm, center2_lat_deg, center2_lon_deg, radius2_nm).map(|answer| [answer.latitude1_deg, answer.longitude1_deg, answer.latitude2_deg, answer.longitude2_deg]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [latitude1_deg, longitude1_deg, latitude2_deg, longitude2_deg]) }
}

/// `lubber_arc_arc_crossing` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_arc_crossing_n(
    count: usize,
    center1_lat_deg: *const f64,
    center1_lat_deg_stride: isize,
    center1_lon_deg: *const f64,
    center1_lon_deg_stride: isize,
    radius1_nm: *const f64,
    radius1_nm_stride: isize,
    center2_lat_deg: *const f64,
    center2_lat_deg_stride: isize,
    center2_lon_deg: *const f64,
    center2_lon_deg_stride: isize,
    radius2_nm: *const f64,
    radius2_nm_stride: isize,
    latitude1_deg: *mut f64,
    latitude1_deg_stride: isize,
    longitude1_deg: *mut f64,
    longitude1_deg_stride: isize,
    latitude2_deg: *mut f64,
    latitude2_deg_stride: isize,
    longitude2_deg: *mut f64,
    longitude2_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(center1_lat_deg, center1_lat_deg_stride), Array::input(center1_lon_deg, center1_lon_deg_stride), Array::input(radius1_nm, radius1_nm_stride), Array::input(center2_lat_deg, center2_lat_deg_stride), Array::input(center2_lon_deg, center2_lon_deg_stride), Array::input(radius2_nm, radius2_nm_stride)], [Array::output(latitude1_deg, latitude1_deg_stride), Array::output(longitude1_deg, longitude1_deg_stride), Array::output(latitude2_deg, latitude2_deg_stride), Array::output(longitude2_deg, longitude2_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("arc_arc_crossing") }, count, &inputs, &outputs, status) }
}

/// The tangents from a point to a circle (a DME arc) on the WGS-84 ellipsoid: both contacts.
///
/// At the contact the geodesic from the point stands square to the radius.
///
/// @param point_lat_deg latitude of the point, -90 to 90
/// @param point_lon_deg longitude of the point, any finite number
/// @param center_lat_deg latitude of the centre, -90 to 90
/// @param center_lon_deg longitude of the centre, any finite number
/// @param radius_nm radius of the circle, above 0 to 5000
/// @param[out] latitude1_deg Latitude of the contact left of the line to the centre; may be NULL
/// @param[out] longitude1_deg Its longitude; may be NULL
/// @param[out] course1_deg True course of the tangent there, onward, 0 to 360; may be NULL
/// @param[out] latitude2_deg Latitude of the contact right of the line to the centre; may be NULL
/// @param[out] longitude2_deg Its longitude; may be NULL
/// @param[out] course2_deg True course of the tangent there, onward, 0 to 360; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: A micrometre off the circle; the contact is soft along it.
/// Degenerate cases: A point on the circle is its own contact, twice.
/// Errors: A value outside its range, a point inside the circle, or one whose antipode is inside.
/// Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
/// Appendix 2 Attachment C.
///
/// Example: lubber_arc_tangents(40.0766111111, -67.2096388889, 40.1734722222, -70.2126666667, 100.0, &value, NULL, NULL, NULL, NULL, NULL) gives 38.9808
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_tangents(
    point_lat_deg: f64,
    point_lon_deg: f64,
    center_lat_deg: f64,
    center_lon_deg: f64,
    radius_nm: f64,
    latitude1_deg: *mut f64,
    longitude1_deg: *mut f64,
    course1_deg: *mut f64,
    latitude2_deg: *mut f64,
    longitude2_deg: *mut f64,
    course2_deg: *mut f64,
) -> i32 {
    let answer = || plain::arc_tangents(point_lat_deg, point_lon_deg, center_lat_deg, center_lon_deg, radius_nm).map(|answer| [answer.latitude1_deg, answer.longitude1_deg, answer.course1_deg, answer.latitude2_deg, answer.longitude2_deg, answer.course2_deg]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [latitude1_deg, longitude1_deg, course1_deg, latitude2_deg, longitude2_deg, course2_deg]) }
}

/// `lubber_arc_tangents` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_tangents_n(
    count: usize,
    point_lat_deg: *const f64,
    point_lat_deg_stride: isize,
    point_lon_deg: *const f64,
    point_lon_deg_stride: isize,
    center_lat_deg: *const f64,
    center_lat_deg_stride: isize,
    center_lon_deg: *const f64,
    center_lon_deg_stride: isize,
    radius_nm: *const f64,
    radius_nm_stride: isize,
    latitude1_deg: *mut f64,
    latitude1_deg_stride: isize,
    longitude1_deg: *mut f64,
    longitude1_deg_stride: isize,
    course1_deg: *mut f64,
    course1_deg_stride: isize,
    latitude2_deg: *mut f64,
    latitude2_deg_stride: isize,
    longitude2_deg: *mut f64,
    longitude2_deg_stride: isize,
    course2_deg: *mut f64,
    course2_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(point_lat_deg, point_lat_deg_stride), Array::input(point_lon_deg, point_lon_deg_stride), Array::input(center_lat_deg, center_lat_deg_stride), Array::input(center_lon_deg, center_lon_deg_stride), Array::input(radius_nm, radius_nm_stride)], [Array::output(latitude1_deg, latitude1_deg_stride), Array::output(longitude1_deg, longitude1_deg_stride), Array::output(course1_deg, course1_deg_stride), Array::output(latitude2_deg, latitude2_deg_stride), Array::output(longitude2_deg, longitude2_deg_stride), Array::output(course2_deg, course2_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("arc_tangents") }, count, &inputs, &outputs, status) }
}

/// Length of an arc of a circle on the WGS-84 ellipsoid.
///
/// The integral of the reduced length of the geodesics from the centre over their azimuth; in the plane `r sweep`.
///
/// @param center_lat_deg latitude of the centre, -90 to 90
/// @param center_lon_deg longitude of the centre, any finite number
/// @param radius_nm radius of the circle, above 0 to 5000
/// @param start_bearing_deg bearing of the arc's beginning from the centre, any finite number
/// @param sweep_deg angle of the arc at the centre, clockwise positive, -360 to 360
/// @param[out] arc_length_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: A micrometre.
/// Degenerate cases: A sweep of zero has no length.
/// Errors: A value outside its range.
/// Source: C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013), section 3; derived. Checked against FAA Order 8260.54A (2007).
///
/// Example: lubber_arc_length_nm(38.2236388889, -77.9065, 5.0, 91.0, 135.0, &value) gives 11.780968
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_length_nm(
    center_lat_deg: f64,
    center_lon_deg: f64,
    radius_nm: f64,
    start_bearing_deg: f64,
    sweep_deg: f64,
    arc_length_nm: *mut f64,
) -> i32 {
    let answer = || plain::arc_length_nm(center_lat_deg, center_lon_deg, radius_nm, start_bearing_deg, sweep_deg).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [arc_length_nm]) }
}

/// `lubber_arc_length_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_length_nm_n(
    count: usize,
    center_lat_deg: *const f64,
    center_lat_deg_stride: isize,
    center_lon_deg: *const f64,
    center_lon_deg_stride: isize,
    radius_nm: *const f64,
    radius_nm_stride: isize,
    start_bearing_deg: *const f64,
    start_bearing_deg_stride: isize,
    sweep_deg: *const f64,
    sweep_deg_stride: isize,
    arc_length_nm: *mut f64,
    arc_length_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(center_lat_deg, center_lat_deg_stride), Array::input(center_lon_deg, center_lon_deg_stride), Array::input(radius_nm, radius_nm_stride), Array::input(start_bearing_deg, start_bearing_deg_stride), Array::input(sweep_deg, sweep_deg_stride)], [Array::output(arc_length_nm, arc_length_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("arc_length_nm") }, count, &inputs, &outputs, status) }
}

/// Whether a point lies on an arc of a circle: 1 if it does, 0 if not.
///
/// Within the tolerance off the circle, and between the bearings of the arc's ends, which belong to it.
///
/// @param center_lat_deg latitude of the centre, -90 to 90
/// @param center_lon_deg longitude of the centre, any finite number
/// @param radius_nm radius of the circle, above 0 to 5000
/// @param start_bearing_deg bearing of the arc's beginning from the centre, any finite number
/// @param end_bearing_deg bearing of the arc's end from the centre, any finite number
/// @param sense which way round the arc goes: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
/// @param point_lat_deg latitude of the point, -90 to 90
/// @param point_lon_deg longitude of the point, any finite number
/// @param tolerance_nm how far off the circle still counts, 0 to 10 900
/// @param[out] on_arc the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: 15 nanometres off the circle.
/// Degenerate cases: Equal bearings are the whole circle.
/// Errors: A value outside its range.
/// Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
/// Appendix 2 Attachment C.
///
/// Example: lubber_on_arc(0.0, 0.0, 60.0, 0.0, 180.0, LUBBER_ARC_SENSE_CLOCKWISE, 0.0, 0.998204, 0.001, &value) gives 1
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_on_arc(
    center_lat_deg: f64,
    center_lon_deg: f64,
    radius_nm: f64,
    start_bearing_deg: f64,
    end_bearing_deg: f64,
    sense: i32,
    point_lat_deg: f64,
    point_lon_deg: f64,
    tolerance_nm: f64,
    on_arc: *mut f64,
) -> i32 {
    let answer = || {
        if [center_lat_deg, center_lon_deg, radius_nm, start_bearing_deg, end_bearing_deg, point_lat_deg, point_lon_deg, tolerance_nm].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 1]) }
        plain::on_arc(center_lat_deg, center_lon_deg, radius_nm, start_bearing_deg, end_bearing_deg, lubberline::lead::ArcSense::from_code("sense", f64::from(sense))?, point_lat_deg, point_lon_deg, tolerance_nm).map(|answer| [answer])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [on_arc]) }
}

/// `lubber_on_arc` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `sense` is one code for all points: which way round the arc goes: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_on_arc_n(
    count: usize,
    center_lat_deg: *const f64,
    center_lat_deg_stride: isize,
    center_lon_deg: *const f64,
    center_lon_deg_stride: isize,
    radius_nm: *const f64,
    radius_nm_stride: isize,
    start_bearing_deg: *const f64,
    start_bearing_deg_stride: isize,
    end_bearing_deg: *const f64,
    end_bearing_deg_stride: isize,
    sense: i32,
    point_lat_deg: *const f64,
    point_lat_deg_stride: isize,
    point_lon_deg: *const f64,
    point_lon_deg_stride: isize,
    tolerance_nm: *const f64,
    tolerance_nm_stride: isize,
    on_arc: *mut f64,
    on_arc_stride: isize,
    status: *mut i32,
) -> usize {
    let sense = f64::from(sense);
    let (inputs, outputs) = ([Array::input(center_lat_deg, center_lat_deg_stride), Array::input(center_lon_deg, center_lon_deg_stride), Array::input(radius_nm, radius_nm_stride), Array::input(start_bearing_deg, start_bearing_deg_stride), Array::input(end_bearing_deg, end_bearing_deg_stride), Array::input(&raw const sense, 0), Array::input(point_lat_deg, point_lat_deg_stride), Array::input(point_lon_deg, point_lon_deg_stride), Array::input(tolerance_nm, tolerance_nm_stride)], [Array::output(on_arc, on_arc_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("on_arc") }, count, &inputs, &outputs, status) }
}

/// How far a circle reaches along a course on the WGS-84 ellipsoid: its points whose tangents stand square to the course, and the points abeam.
///
/// Farthest on along the course, then farthest back.
///
/// @param lat_deg latitude of a point of the course, -90 to 90
/// @param lon_deg longitude of that point, any finite number
/// @param course_deg true course there, any finite number
/// @param center_lat_deg latitude of the centre, -90 to 90
/// @param center_lon_deg longitude of the centre, any finite number
/// @param radius_nm radius of the circle, above 0 to 5000
/// @param[out] latitude1_deg Latitude of the point of the circle farthest on along the course; may be NULL
/// @param[out] longitude1_deg Its longitude; may be NULL
/// @param[out] abeam1_latitude_deg Latitude of the point of the course abeam of it; may be NULL
/// @param[out] abeam1_longitude_deg Its longitude; may be NULL
/// @param[out] latitude2_deg Latitude of the point of the circle farthest back along the course; may be NULL
/// @param[out] longitude2_deg Its longitude; may be NULL
/// @param[out] abeam2_latitude_deg Latitude of the point of the course abeam of it; may be NULL
/// @param[out] abeam2_longitude_deg Its longitude; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: A micrometre off the circle; soft along it.
/// Degenerate cases: The course may miss, touch or cut the circle.
/// Errors: A value outside its range.
/// Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
/// Appendix 2 Attachment C.
///
/// Example: lubber_arc_extent(40.0766111111, -65.2113055556, 350.0, 40.1734722222, -70.2126666667, 50.0, &value, NULL, NULL, NULL, NULL, NULL, NULL, NULL) gives 40.9847
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_extent(
    lat_deg: f64,
    lon_deg: f64,
    course_deg: f64,
    center_lat_deg: f64,
    center_lon_deg: f64,
    radius_nm: f64,
    latitude1_deg: *mut f64,
    longitude1_deg: *mut f64,
    abeam1_latitude_deg: *mut f64,
    abeam1_longitude_deg: *mut f64,
    latitude2_deg: *mut f64,
    longitude2_deg: *mut f64,
    abeam2_latitude_deg: *mut f64,
    abeam2_longitude_deg: *mut f64,
) -> i32 {
    let answer = || plain::arc_extent(lat_deg, lon_deg, course_deg, center_lat_deg, center_lon_deg, radius_nm).map(|answer| [answer.latitude1_deg, answer.longitude1_deg, answer.abeam1_latitude_deg, answer.abeam1_longitude_deg, answer.latitude2_deg, answer.longitude2_deg, answer.abeam2_latitude_deg, answer.abeam2_longitude_deg]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [latitude1_deg, longitude1_deg, abeam1_latitude_deg, abeam1_longitude_deg, latitude2_deg, longitude2_deg, abeam2_latitude_deg, abeam2_longitude_deg]) }
}

/// `lubber_arc_extent` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_extent_n(
    count: usize,
    lat_deg: *const f64,
    lat_deg_stride: isize,
    lon_deg: *const f64,
    lon_deg_stride: isize,
    course_deg: *const f64,
    course_deg_stride: isize,
    center_lat_deg: *const f64,
    center_lat_deg_stride: isize,
    center_lon_deg: *const f64,
    center_lon_deg_stride: isize,
    radius_nm: *const f64,
    radius_nm_stride: isize,
    latitude1_deg: *mut f64,
    latitude1_deg_stride: isize,
    longitude1_deg: *mut f64,
    longitude1_deg_stride: isize,
    abeam1_latitude_deg: *mut f64,
    abeam1_latitude_deg_stride: isize,
    abeam1_longitude_deg: *mut f64,
    abeam1_longitude_deg_stride: isize,
    latitude2_deg: *mut f64,
    latitude2_deg_stride: isize,
    longitude2_deg: *mut f64,
    longitude2_deg_stride: isize,
    abeam2_latitude_deg: *mut f64,
    abeam2_latitude_deg_stride: isize,
    abeam2_longitude_deg: *mut f64,
    abeam2_longitude_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat_deg, lat_deg_stride), Array::input(lon_deg, lon_deg_stride), Array::input(course_deg, course_deg_stride), Array::input(center_lat_deg, center_lat_deg_stride), Array::input(center_lon_deg, center_lon_deg_stride), Array::input(radius_nm, radius_nm_stride)], [Array::output(latitude1_deg, latitude1_deg_stride), Array::output(longitude1_deg, longitude1_deg_stride), Array::output(abeam1_latitude_deg, abeam1_latitude_deg_stride), Array::output(abeam1_longitude_deg, abeam1_longitude_deg_stride), Array::output(latitude2_deg, latitude2_deg_stride), Array::output(longitude2_deg, longitude2_deg_stride), Array::output(abeam2_latitude_deg, abeam2_latitude_deg_stride), Array::output(abeam2_longitude_deg, abeam2_longitude_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("arc_extent") }, count, &inputs, &outputs, status) }
}

/// Cold-temperature correction by ICAO's formula, to add to an altitude on the procedure.
///
/// `H (15 - t0)/(273 + t0 - 0.5 L (H + E))` with height `H`, elevation `E` of the source, L = 0.00198 degC/ft
/// and `t0 = t + L E`. Offered beside it: `lubber_cold_temperature_correction_tabulated_ft`,
/// `lubber_cold_temperature_correction_rule_ft` and, exact, `lubber_cold_temperature_correction_exact_ft`.
///
/// @param height_ft charted height above the altimeter setting source, 0 to 20 000
/// @param temperature_degc temperature at the altimeter setting source, -200 to 200
/// @param elevation_ft elevation of the altimeter setting source, -16 500 to 60 000
/// @param[out] cold_temperature_correction_ft the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: The document gives 5 percent, for sources to 10 000 ft and heights to 5000 ft.
/// Degenerate cases: Warmer than standard it is negative, which nobody subtracts in practice. No height, no correction.
/// Errors: A value outside its range.
/// Source: ICAO Doc 8168 (PANS-OPS) volume I, Part III Section 1 Chapter 4, from memory; it reproduces ICAO's table.
///
/// Example: lubber_cold_temperature_correction_ft(1500.0, -20.0, 0.0, &value) gives 208.7
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_cold_temperature_correction_ft(
    height_ft: f64,
    temperature_degc: f64,
    elevation_ft: f64,
    cold_temperature_correction_ft: *mut f64,
) -> i32 {
    let answer = || plain::cold_temperature_correction_ft(height_ft, temperature_degc, elevation_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [cold_temperature_correction_ft]) }
}

/// `lubber_cold_temperature_correction_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_cold_temperature_correction_ft_n(
    count: usize,
    height_ft: *const f64,
    height_ft_stride: isize,
    temperature_degc: *const f64,
    temperature_degc_stride: isize,
    elevation_ft: *const f64,
    elevation_ft_stride: isize,
    cold_temperature_correction_ft: *mut f64,
    cold_temperature_correction_ft_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(height_ft, height_ft_stride), Array::input(temperature_degc, temperature_degc_stride), Array::input(elevation_ft, elevation_ft_stride)], [Array::output(cold_temperature_correction_ft, cold_temperature_correction_ft_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("cold_temperature_correction_ft") }, count, &inputs, &outputs, status) }
}

/// Cold-temperature correction as the published table has it: rounded up to the next 10 ft.
///
/// The formula of `lubber_cold_temperature_correction_ft` for a source at sea level, rounded up; between the table's
/// own heights (200 to 5000 ft) and temperatures (10 to -50 degC) likewise. To read off between cells instead, take
/// `cold_temperature_correction_by_method_ft`.
///
/// @param height_ft charted height above the altimeter setting source, 0 to 20 000
/// @param temperature_degc temperature at the altimeter setting source, -200 to 200
/// @param[out] cold_temperature_correction_tabulated_ft the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: All 98 cells of the table.
/// Degenerate cases: Warmer than 15 degC there is no correction, and none without height.
/// Errors: A value outside its range.
/// Source: FAA Aeronautical Information Manual (20 April 2023), TBL 7-3-1, ICAO Cold Temperature Error Table, from ICAO Doc 8168 Vol I (5th ed. 2006),
/// Table III-1-4-1 b).
///
/// Example: lubber_cold_temperature_correction_tabulated_ft(1500.0, -20.0, &value) gives 210
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_cold_temperature_correction_tabulated_ft(
    height_ft: f64,
    temperature_degc: f64,
    cold_temperature_correction_tabulated_ft: *mut f64,
) -> i32 {
    let answer = || plain::cold_temperature_correction_tabulated_ft(height_ft, temperature_degc).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [cold_temperature_correction_tabulated_ft]) }
}

/// `lubber_cold_temperature_correction_tabulated_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_cold_temperature_correction_tabulated_ft_n(
    count: usize,
    height_ft: *const f64,
    height_ft_stride: isize,
    temperature_degc: *const f64,
    temperature_degc_stride: isize,
    cold_temperature_correction_tabulated_ft: *mut f64,
    cold_temperature_correction_tabulated_ft_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(height_ft, height_ft_stride), Array::input(temperature_degc, temperature_degc_stride)], [Array::output(cold_temperature_correction_tabulated_ft, cold_temperature_correction_tabulated_ft_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("cold_temperature_correction_tabulated_ft") }, count, &inputs, &outputs, status) }
}

/// Cold-temperature correction by the rule of 4 percent for each 10 degC below standard at the source.
///
/// `0.04 H (t_standard - t)/10`.
///
/// @param height_ft charted height above the altimeter setting source, 0 to 20 000
/// @param temperature_degc temperature at the altimeter setting source, -200 to 200
/// @param elevation_ft elevation of the altimeter setting source, -16 500 to 60 000
/// @param[out] cold_temperature_correction_rule_ft the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As published: on the safe side above -15 degC at the source.
/// Degenerate cases: Warmer than standard it is negative.
/// Errors: A value outside its range.
/// Source: ICAO Doc 8168 (PANS-OPS) volume I, Part III Section 1 Chapter 4, 4.3.1, read in a quotation.
///
/// Example: lubber_cold_temperature_correction_rule_ft(1500.0, -10.0, 0.0, &value) gives 150.0
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_cold_temperature_correction_rule_ft(
    height_ft: f64,
    temperature_degc: f64,
    elevation_ft: f64,
    cold_temperature_correction_rule_ft: *mut f64,
) -> i32 {
    let answer = || plain::cold_temperature_correction_rule_ft(height_ft, temperature_degc, elevation_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [cold_temperature_correction_rule_ft]) }
}

/// `lubber_cold_temperature_correction_rule_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_cold_temperature_correction_rule_ft_n(
    count: usize,
    height_ft: *const f64,
    height_ft_stride: isize,
    temperature_degc: *const f64,
    temperature_degc_stride: isize,
    elevation_ft: *const f64,
    elevation_ft_stride: isize,
    cold_temperature_correction_rule_ft: *mut f64,
    cold_temperature_correction_rule_ft_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(height_ft, height_ft_stride), Array::input(temperature_degc, temperature_degc_stride), Array::input(elevation_ft, elevation_ft_stride)], [Array::output(cold_temperature_correction_rule_ft, cold_temperature_correction_rule_ft_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("cold_temperature_correction_rule_ft") }, count, &inputs, &outputs, status) }
}

/// Cold-temperature correction, exact for air that is as cold against standard all the way up as at the source.
///
/// The indicated height at which the true height is the charted one, less that: the inverse of
/// `lubber_true_altitude_ft` for a source at standard pressure.
///
/// @param height_ft charted height above the altimeter setting source, 0 to 20 000
/// @param temperature_degc temperature at the altimeter setting source, -200 to 200
/// @param elevation_ft elevation of the altimeter setting source, -16 500 to 60 000
/// @param[out] cold_temperature_correction_exact_ft the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding for such a column.
/// Degenerate cases: Warmer than standard it is negative. No height, no correction.
/// Errors: A value outside its range.
/// Source: Hydrostatic balance with the layers of ICAO Doc 7488/3 (3rd edition 1993).
///
/// Example: lubber_cold_temperature_correction_exact_ft(1500.0, -20.0, 0.0, &value) gives 208.8
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_cold_temperature_correction_exact_ft(
    height_ft: f64,
    temperature_degc: f64,
    elevation_ft: f64,
    cold_temperature_correction_exact_ft: *mut f64,
) -> i32 {
    let answer = || plain::cold_temperature_correction_exact_ft(height_ft, temperature_degc, elevation_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [cold_temperature_correction_exact_ft]) }
}

/// `lubber_cold_temperature_correction_exact_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_cold_temperature_correction_exact_ft_n(
    count: usize,
    height_ft: *const f64,
    height_ft_stride: isize,
    temperature_degc: *const f64,
    temperature_degc_stride: isize,
    elevation_ft: *const f64,
    elevation_ft_stride: isize,
    cold_temperature_correction_exact_ft: *mut f64,
    cold_temperature_correction_exact_ft_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(height_ft, height_ft_stride), Array::input(temperature_degc, temperature_degc_stride), Array::input(elevation_ft, elevation_ft_stride)], [Array::output(cold_temperature_correction_exact_ft, cold_temperature_correction_exact_ft_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("cold_temperature_correction_exact_ft") }, count, &inputs, &outputs, status) }
}

/// Signed cross-track and along-track distance of a point from a course, and the point abeam, on the WGS-84 ellipsoid.
///
/// Abeam, the geodesic to the point stands square to the course; found by Newton's method on its direction.
///
/// @param lat_deg latitude of a point of the course, -90 to 90
/// @param lon_deg longitude of that point, any finite number
/// @param course_deg true course there, any finite number
/// @param point_lat_deg latitude of the point, -90 to 90
/// @param point_lon_deg longitude of the point, any finite number
/// @param[out] cross_track_nm Distance across the course, positive right of it; may be NULL
/// @param[out] along_track_nm Distance along the course to the point abeam, positive onward; may be NULL
/// @param[out] abeam_latitude_deg Latitude of the point of the course abeam; may be NULL
/// @param[out] abeam_longitude_deg Longitude of the point of the course abeam; may be NULL
/// @param[out] abeam_course_deg True course there, 0 to 360; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: A tenth of a micrometre within 5 000 NM.
/// Degenerate cases: A point on the course is at a cross-track of zero. A point a quarter of the earth away on both sides has no abeam point that means anything.
/// Errors: A value outside its range.
/// Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
/// Appendix 2 Attachment C.
///
/// Example: lubber_cross_track(0.0, 0.0, 90.0, 0.5, 1.0, &value, NULL, NULL, NULL, NULL) gives -29.85
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_cross_track(
    lat_deg: f64,
    lon_deg: f64,
    course_deg: f64,
    point_lat_deg: f64,
    point_lon_deg: f64,
    cross_track_nm: *mut f64,
    along_track_nm: *mut f64,
    abeam_latitude_deg: *mut f64,
    abeam_longitude_deg: *mut f64,
    abeam_course_deg: *mut f64,
) -> i32 {
    let answer = || plain::cross_track(lat_deg, lon_deg, course_deg, point_lat_deg, point_lon_deg).map(|answer| [answer.cross_track_nm, answer.along_track_nm, answer.abeam_latitude_deg, answer.abeam_longitude_deg, answer.abeam_course_deg]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [cross_track_nm, along_track_nm, abeam_latitude_deg, abeam_longitude_deg, abeam_course_deg]) }
}

/// `lubber_cross_track` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_cross_track_n(
    count: usize,
    lat_deg: *const f64,
    lat_deg_stride: isize,
    lon_deg: *const f64,
    lon_deg_stride: isize,
    course_deg: *const f64,
    course_deg_stride: isize,
    point_lat_deg: *const f64,
    point_lat_deg_stride: isize,
    point_lon_deg: *const f64,
    point_lon_deg_stride: isize,
    cross_track_nm: *mut f64,
    cross_track_nm_stride: isize,
    along_track_nm: *mut f64,
    along_track_nm_stride: isize,
    abeam_latitude_deg: *mut f64,
    abeam_latitude_deg_stride: isize,
    abeam_longitude_deg: *mut f64,
    abeam_longitude_deg_stride: isize,
    abeam_course_deg: *mut f64,
    abeam_course_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat_deg, lat_deg_stride), Array::input(lon_deg, lon_deg_stride), Array::input(course_deg, course_deg_stride), Array::input(point_lat_deg, point_lat_deg_stride), Array::input(point_lon_deg, point_lon_deg_stride)], [Array::output(cross_track_nm, cross_track_nm_stride), Array::output(along_track_nm, along_track_nm_stride), Array::output(abeam_latitude_deg, abeam_latitude_deg_stride), Array::output(abeam_longitude_deg, abeam_longitude_deg_stride), Array::output(abeam_course_deg, abeam_course_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("cross_track") }, count, &inputs, &outputs, status) }
}

/// Where two courses (two radials) meet on the WGS-84 ellipsoid.
///
/// Extended both ways; of the two meeting points, which are all but antipodal, the one nearer to both points. Its distances along the courses
/// say whether it lies ahead (positive) or behind.
///
/// @param lat1_deg latitude of a point of the first course, -90 to 90
/// @param lon1_deg longitude of that point, any finite number
/// @param course1_deg true course there, any finite number
/// @param lat2_deg latitude of a point of the second course, -90 to 90
/// @param lon2_deg longitude of that point, any finite number
/// @param course2_deg true course there, any finite number
/// @param[out] latitude_deg Latitude of the point; may be NULL
/// @param[out] longitude_deg Longitude of the point; may be NULL
/// @param[out] along_first_nm Distance along the first course, negative behind its point; may be NULL
/// @param[out] along_second_nm Distance along the second course, negative behind its point; may be NULL
/// @param[out] first_course_deg True bearing of the first course there, 0 to 360; may be NULL
/// @param[out] second_course_deg True bearing of the second course there, 0 to 360; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: A micrometre across the courses; along them that divided by the sine of their angle.
/// Degenerate cases: Courses along one line meet everywhere. At a pole the courses there are against the meridian of the longitude given.
/// Errors: A value outside its range, or courses along one line.
/// Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
/// Appendix 2 Attachment C.
///
/// Example: lubber_course_crossing(40.1734722222, -70.2126666667, 90.0, 42.0766111111, -68.2113055556, 187.0, NULL, NULL, &value, NULL, NULL, NULL) gives 77.961
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_course_crossing(
    lat1_deg: f64,
    lon1_deg: f64,
    course1_deg: f64,
    lat2_deg: f64,
    lon2_deg: f64,
    course2_deg: f64,
    latitude_deg: *mut f64,
    longitude_deg: *mut f64,
    along_first_nm: *mut f64,
    along_second_nm: *mut f64,
    first_course_deg: *mut f64,
    second_course_deg: *mut f64,
) -> i32 {
    let answer = || plain::course_crossing(lat1_deg, lon1_deg, course1_deg, lat2_deg, lon2_deg, course2_deg).map(|answer| [answer.latitude_deg, answer.longitude_deg, answer.along_first_nm, answer.along_second_nm, answer.first_course_deg, answer.second_course_deg]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [latitude_deg, longitude_deg, along_first_nm, along_second_nm, first_course_deg, second_course_deg]) }
}

/// `lubber_course_crossing` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_course_crossing_n(
    count: usize,
    lat1_deg: *const f64,
    lat1_deg_stride: isize,
    lon1_deg: *const f64,
    lon1_deg_stride: isize,
    course1_deg: *const f64,
    course1_deg_stride: isize,
    lat2_deg: *const f64,
    lat2_deg_stride: isize,
    lon2_deg: *const f64,
    lon2_deg_stride: isize,
    course2_deg: *const f64,
    course2_deg_stride: isize,
    latitude_deg: *mut f64,
    latitude_deg_stride: isize,
    longitude_deg: *mut f64,
    longitude_deg_stride: isize,
    along_first_nm: *mut f64,
    along_first_nm_stride: isize,
    along_second_nm: *mut f64,
    along_second_nm_stride: isize,
    first_course_deg: *mut f64,
    first_course_deg_stride: isize,
    second_course_deg: *mut f64,
    second_course_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat1_deg, lat1_deg_stride), Array::input(lon1_deg, lon1_deg_stride), Array::input(course1_deg, course1_deg_stride), Array::input(lat2_deg, lat2_deg_stride), Array::input(lon2_deg, lon2_deg_stride), Array::input(course2_deg, course2_deg_stride)], [Array::output(latitude_deg, latitude_deg_stride), Array::output(longitude_deg, longitude_deg_stride), Array::output(along_first_nm, along_first_nm_stride), Array::output(along_second_nm, along_second_nm_stride), Array::output(first_course_deg, first_course_deg_stride), Array::output(second_course_deg, second_course_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("course_crossing") }, count, &inputs, &outputs, status) }
}

/// Whether a point lies on a course: 1 if it does, 0 if not.
///
/// Within the tolerance across it, and for a course that reaches onward also behind its point.
///
/// @param lat_deg latitude of a point of the course, -90 to 90
/// @param lon_deg longitude of that point, any finite number
/// @param course_deg true course there, any finite number
/// @param reach how far the course reaches: LUBBER_COURSE_REACH_ONWARD, LUBBER_COURSE_REACH_BOTH_WAYS
/// @param point_lat_deg latitude of the point, -90 to 90
/// @param point_lon_deg longitude of the point, any finite number
/// @param tolerance_nm how far across the course still counts, 0 to 10 900
/// @param[out] on_course the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As `cross_track`.
/// Degenerate cases: The course's own point lies on it.
/// Errors: A value outside its range.
/// Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
/// Appendix 2 Attachment C.
///
/// Example: lubber_on_course(0.0, 0.0, 90.0, LUBBER_COURSE_REACH_ONWARD, 0.0, 5.0, 0.0001, &value) gives 1
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_on_course(
    lat_deg: f64,
    lon_deg: f64,
    course_deg: f64,
    reach: i32,
    point_lat_deg: f64,
    point_lon_deg: f64,
    tolerance_nm: f64,
    on_course: *mut f64,
) -> i32 {
    let answer = || {
        if [lat_deg, lon_deg, course_deg, point_lat_deg, point_lon_deg, tolerance_nm].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 1]) }
        plain::on_course(lat_deg, lon_deg, course_deg, lubberline::earth::CourseReach::from_code("reach", f64::from(reach))?, point_lat_deg, point_lon_deg, tolerance_nm).map(|answer| [answer])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [on_course]) }
}

/// `lubber_on_course` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `reach` is one code for all points: how far the course reaches: LUBBER_COURSE_REACH_ONWARD, LUBBER_COURSE_REACH_BOTH_WAYS
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_on_course_n(
    count: usize,
    lat_deg: *const f64,
    lat_deg_stride: isize,
    lon_deg: *const f64,
    lon_deg_stride: isize,
    course_deg: *const f64,
    course_deg_stride: isize,
    reach: i32,
    point_lat_deg: *const f64,
    point_lat_deg_stride: isize,
    point_lon_deg: *const f64,
    point_lon_deg_stride: isize,
    tolerance_nm: *const f64,
    tolerance_nm_stride: isize,
    on_course: *mut f64,
    on_course_stride: isize,
    status: *mut i32,
) -> usize {
    let reach = f64::from(reach);
    let (inputs, outputs) = ([Array::input(lat_deg, lat_deg_stride), Array::input(lon_deg, lon_deg_stride), Array::input(course_deg, course_deg_stride), Array::input(&raw const reach, 0), Array::input(point_lat_deg, point_lat_deg_stride), Array::input(point_lon_deg, point_lon_deg_stride), Array::input(tolerance_nm, tolerance_nm_stride)], [Array::output(on_course, on_course_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("on_course") }, count, &inputs, &outputs, status) }
}

/// Whether a point lies on the geodesic between two points: 1 if it does, 0 if not.
///
/// Within the tolerance across it and beyond its ends.
///
/// @param lat1_deg latitude of the beginning, -90 to 90
/// @param lon1_deg longitude of the beginning, any finite number
/// @param lat2_deg latitude of the end, -90 to 90
/// @param lon2_deg longitude of the end, any finite number
/// @param point_lat_deg latitude of the point, -90 to 90
/// @param point_lon_deg longitude of the point, any finite number
/// @param tolerance_nm how far from it still counts, 0 to 10 900
/// @param[out] on_leg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As `cross_track`.
/// Degenerate cases: Between coincident points only the point itself lies.
/// Errors: A value outside its range.
/// Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
/// Appendix 2 Attachment C.
///
/// Example: lubber_on_leg(0.0, 0.0, 0.0, 6.0, 0.0, 7.0, 0.0001, &value) gives 0
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_on_leg(
    lat1_deg: f64,
    lon1_deg: f64,
    lat2_deg: f64,
    lon2_deg: f64,
    point_lat_deg: f64,
    point_lon_deg: f64,
    tolerance_nm: f64,
    on_leg: *mut f64,
) -> i32 {
    let answer = || plain::on_leg(lat1_deg, lon1_deg, lat2_deg, lon2_deg, point_lat_deg, point_lon_deg, tolerance_nm).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [on_leg]) }
}

/// `lubber_on_leg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_on_leg_n(
    count: usize,
    lat1_deg: *const f64,
    lat1_deg_stride: isize,
    lon1_deg: *const f64,
    lon1_deg_stride: isize,
    lat2_deg: *const f64,
    lat2_deg_stride: isize,
    lon2_deg: *const f64,
    lon2_deg_stride: isize,
    point_lat_deg: *const f64,
    point_lat_deg_stride: isize,
    point_lon_deg: *const f64,
    point_lon_deg_stride: isize,
    tolerance_nm: *const f64,
    tolerance_nm_stride: isize,
    on_leg: *mut f64,
    on_leg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat1_deg, lat1_deg_stride), Array::input(lon1_deg, lon1_deg_stride), Array::input(lat2_deg, lat2_deg_stride), Array::input(lon2_deg, lon2_deg_stride), Array::input(point_lat_deg, point_lat_deg_stride), Array::input(point_lon_deg, point_lon_deg_stride), Array::input(tolerance_nm, tolerance_nm_stride)], [Array::output(on_leg, on_leg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("on_leg") }, count, &inputs, &outputs, status) }
}

/// The pressure altitude at which a calibrated airspeed and a Mach number are one speed.
///
/// Where the static pressure is the impact pressure of the calibrated airspeed over the impact ratio of the
/// Mach number; the temperature plays no part.
///
/// @param cas_kt calibrated airspeed, 0 to 5000
/// @param mach Mach number, 0 to 10
/// @param[out] crossover_altitude_ft the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: Speeds of zero cross nowhere.
/// Errors: A value outside its range, or no crossover from -5 to 80 km.
/// Source: The definitions of calibrated airspeed and Mach number, with ICAO Doc 7488/3 (3rd edition 1993).
///
/// Example: lubber_crossover_altitude_ft(300.0, 0.78, &value) gives 29314
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_crossover_altitude_ft(
    cas_kt: f64,
    mach: f64,
    crossover_altitude_ft: *mut f64,
) -> i32 {
    let answer = || plain::crossover_altitude_ft(cas_kt, mach).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [crossover_altitude_ft]) }
}

/// `lubber_crossover_altitude_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_crossover_altitude_ft_n(
    count: usize,
    cas_kt: *const f64,
    cas_kt_stride: isize,
    mach: *const f64,
    mach_stride: isize,
    crossover_altitude_ft: *mut f64,
    crossover_altitude_ft_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(cas_kt, cas_kt_stride), Array::input(mach, mach_stride)], [Array::output(crossover_altitude_ft, crossover_altitude_ft_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("crossover_altitude_ft") }, count, &inputs, &outputs, status) }
}

/// Density altitude: where the standard atmosphere has the density of the air.
///
/// In closed form within each layer, density going with `(T/T_b)^(-g/(L R) - 1)`.
///
/// @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
/// @param temperature_degc static air temperature, -200 to 200
/// @param[out] density_altitude_ft the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding, for dry air. Moisture makes air lighter: at 35 degC and saturated, 700 ft more at sea level.
/// Degenerate cases: In standard air it is the pressure altitude.
/// Errors: A value outside its range, a deviation beyond 150 K, or a density altitude outside -5 to 80 km.
/// Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
///
/// Example: lubber_density_altitude_ft(6000.0, 13.0, &value) gives 7147
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_density_altitude_ft(
    pressure_altitude_ft: f64,
    temperature_degc: f64,
    density_altitude_ft: *mut f64,
) -> i32 {
    let answer = || plain::density_altitude_ft(pressure_altitude_ft, temperature_degc).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [density_altitude_ft]) }
}

/// `lubber_density_altitude_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_density_altitude_ft_n(
    count: usize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    temperature_degc: *const f64,
    temperature_degc_stride: isize,
    density_altitude_ft: *mut f64,
    density_altitude_ft_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(pressure_altitude_ft, pressure_altitude_ft_stride), Array::input(temperature_degc, temperature_degc_stride)], [Array::output(density_altitude_ft, density_altitude_ft_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("density_altitude_ft") }, count, &inputs, &outputs, status) }
}

/// Density altitude by the rule of 120 ft for each degree above standard.
///
/// `Hp + 120 (t - (15 - 2 Hp/1000))` with the pressure altitude `Hp`. `lubber_density_altitude_ft` is exact.
///
/// @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
/// @param temperature_degc static air temperature, -200 to 200
/// @param[out] density_altitude_rule_ft the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Too much by up to 65 ft within 10 K of standard, 160 ft within 20 K and 300 ft within 30 K, to 10 000 ft.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range, or a density altitude outside -5 to 80 km.
/// Source: Common practice.
///
/// Example: lubber_density_altitude_rule_ft(6000.0, 13.0, &value) gives 7200
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_density_altitude_rule_ft(
    pressure_altitude_ft: f64,
    temperature_degc: f64,
    density_altitude_rule_ft: *mut f64,
) -> i32 {
    let answer = || plain::density_altitude_rule_ft(pressure_altitude_ft, temperature_degc).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [density_altitude_rule_ft]) }
}

/// `lubber_density_altitude_rule_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_density_altitude_rule_ft_n(
    count: usize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    temperature_degc: *const f64,
    temperature_degc_stride: isize,
    density_altitude_rule_ft: *mut f64,
    density_altitude_rule_ft_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(pressure_altitude_ft, pressure_altitude_ft_stride), Array::input(temperature_degc, temperature_degc_stride)], [Array::output(density_altitude_rule_ft, density_altitude_rule_ft_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("density_altitude_rule_ft") }, count, &inputs, &outputs, status) }
}

/// The heading at one bearing of a DME arc in a wind, where the bearing pointer then stands, and the bank that keeps to the arc.
///
/// The track is square to the radial; the wind correction moves the station off the wing tip by as much. The heading
/// turns at `(GS / D)(1 - (Vw / V) cos(w) / cos(c))`, with c the wind correction and w the angle from the track to
/// where the wind comes from.
///
/// @param radial_deg radial on which the aircraft is, any finite number
/// @param arc_radius_nm ground distance of the arc from the station, above 0 to 1000
/// @param sense which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param wind_from_deg where the wind blows from, against the radials' north
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param[out] track_deg Direction over the ground; may be NULL
/// @param[out] heading_deg Heading that holds it; may be NULL
/// @param[out] groundspeed_kt Groundspeed along the arc; may be NULL
/// @param[out] wind_correction_deg Heading less track, right positive; may be NULL
/// @param[out] station_off_nose_deg Where the station is from the nose, right positive: 90 or -90 in calm air; may be NULL
/// @param[out] ahead_of_wing_tip_deg By how much the bearing pointer is kept ahead of the wing tip; behind it when negative; may be NULL
/// @param[out] bank_deg Bank that bends the path over the ground along the arc, positive toward the station; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error on a plane.
/// Degenerate cases: In a wind near the airspeed the heading may have to turn away from the station for a while: the bank is negative
/// there. An arc counts along the ground; `ground_distance_nm` turns the DME reading that is flown into it.
/// Errors: A value outside its range, a track that the airspeed cannot hold.
/// Source: The triangle of velocities, differentiated along the arc.
///
/// Example: lubber_arc_heading(130.0, 12.0, LUBBER_ARC_SENSE_CLOCKWISE, 160.0, 310.0, 30.0, NULL, &value, NULL, NULL, NULL, NULL, NULL) gives 230.8
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_heading(
    radial_deg: f64,
    arc_radius_nm: f64,
    sense: i32,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    track_deg: *mut f64,
    heading_deg: *mut f64,
    groundspeed_kt: *mut f64,
    wind_correction_deg: *mut f64,
    station_off_nose_deg: *mut f64,
    ahead_of_wing_tip_deg: *mut f64,
    bank_deg: *mut f64,
) -> i32 {
    let answer = || {
        if [radial_deg, arc_radius_nm, true_airspeed_kt, wind_from_deg, wind_speed_kt].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 7]) }
        plain::arc_heading(radial_deg, arc_radius_nm, lubberline::lead::ArcSense::from_code("sense", f64::from(sense))?, true_airspeed_kt, wind_from_deg, wind_speed_kt).map(|answer| [answer.track_deg, answer.heading_deg, answer.groundspeed_kt, answer.wind_correction_deg, answer.station_off_nose_deg, answer.ahead_of_wing_tip_deg, answer.bank_deg])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [track_deg, heading_deg, groundspeed_kt, wind_correction_deg, station_off_nose_deg, ahead_of_wing_tip_deg, bank_deg]) }
}

/// `lubber_arc_heading` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `sense` is one code for all points: which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_heading_n(
    count: usize,
    radial_deg: *const f64,
    radial_deg_stride: isize,
    arc_radius_nm: *const f64,
    arc_radius_nm_stride: isize,
    sense: i32,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    track_deg: *mut f64,
    track_deg_stride: isize,
    heading_deg: *mut f64,
    heading_deg_stride: isize,
    groundspeed_kt: *mut f64,
    groundspeed_kt_stride: isize,
    wind_correction_deg: *mut f64,
    wind_correction_deg_stride: isize,
    station_off_nose_deg: *mut f64,
    station_off_nose_deg_stride: isize,
    ahead_of_wing_tip_deg: *mut f64,
    ahead_of_wing_tip_deg_stride: isize,
    bank_deg: *mut f64,
    bank_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let sense = f64::from(sense);
    let (inputs, outputs) = ([Array::input(radial_deg, radial_deg_stride), Array::input(arc_radius_nm, arc_radius_nm_stride), Array::input(&raw const sense, 0), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride)], [Array::output(track_deg, track_deg_stride), Array::output(heading_deg, heading_deg_stride), Array::output(groundspeed_kt, groundspeed_kt_stride), Array::output(wind_correction_deg, wind_correction_deg_stride), Array::output(station_off_nose_deg, station_off_nose_deg_stride), Array::output(ahead_of_wing_tip_deg, ahead_of_wing_tip_deg_stride), Array::output(bank_deg, bank_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("arc_heading") }, count, &inputs, &outputs, status) }
}

/// How long a DME arc from one radial to another is, and how long it takes in a wind.
///
/// `D a`, and the integral of `D / GS` over the bearing.
///
/// @param from_radial_deg radial on which the arc begins, any finite number
/// @param to_radial_deg radial on which it ends
/// @param arc_radius_nm ground distance of the arc from the station, above 0 to 1000
/// @param sense which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param wind_from_deg where the wind blows from, against the radials' north
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param[out] angle_deg Angle at the station, in the sense of the arc; may be NULL
/// @param[out] distance_nm Length of the arc; may be NULL
/// @param[out] time_s Time along it; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: 1e-10 of the time for winds to half the airspeed.
/// Degenerate cases: From a radial to itself there is no arc, not a full circle.
/// Errors: A value outside its range, a track on the way that the airspeed cannot hold.
/// Source: The triangle of velocities, integrated.
///
/// Example: lubber_arc_flown(20.0, 110.0, 10.0, LUBBER_ARC_SENSE_CLOCKWISE, 160.0, 310.0, 45.0, NULL, NULL, &value) gives 291.2
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_flown(
    from_radial_deg: f64,
    to_radial_deg: f64,
    arc_radius_nm: f64,
    sense: i32,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    angle_deg: *mut f64,
    distance_nm: *mut f64,
    time_s: *mut f64,
) -> i32 {
    let answer = || {
        if [from_radial_deg, to_radial_deg, arc_radius_nm, true_airspeed_kt, wind_from_deg, wind_speed_kt].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 3]) }
        plain::arc_flown(from_radial_deg, to_radial_deg, arc_radius_nm, lubberline::lead::ArcSense::from_code("sense", f64::from(sense))?, true_airspeed_kt, wind_from_deg, wind_speed_kt).map(|answer| [answer.angle_deg, answer.distance_nm, answer.time_s])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [angle_deg, distance_nm, time_s]) }
}

/// `lubber_arc_flown` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `sense` is one code for all points: which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_flown_n(
    count: usize,
    from_radial_deg: *const f64,
    from_radial_deg_stride: isize,
    to_radial_deg: *const f64,
    to_radial_deg_stride: isize,
    arc_radius_nm: *const f64,
    arc_radius_nm_stride: isize,
    sense: i32,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    angle_deg: *mut f64,
    angle_deg_stride: isize,
    distance_nm: *mut f64,
    distance_nm_stride: isize,
    time_s: *mut f64,
    time_s_stride: isize,
    status: *mut i32,
) -> usize {
    let sense = f64::from(sense);
    let (inputs, outputs) = ([Array::input(from_radial_deg, from_radial_deg_stride), Array::input(to_radial_deg, to_radial_deg_stride), Array::input(arc_radius_nm, arc_radius_nm_stride), Array::input(&raw const sense, 0), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride)], [Array::output(angle_deg, angle_deg_stride), Array::output(distance_nm, distance_nm_stride), Array::output(time_s, time_s_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("arc_flown") }, count, &inputs, &outputs, status) }
}

/// The straight legs of a DME arc that stay within a tolerance of it: how many, how long, and how far they depart.
///
/// Half a leg sees the station under the angle h with `cos(h) = (D - t) / D` inside, `D / (D + t)` outside and `(D -
/// t) / (D + t)` on both sides; the legs share the arc evenly.
///
/// @param from_radial_deg radial on which the arc begins, any finite number
/// @param to_radial_deg radial on which it ends
/// @param arc_radius_nm ground distance of the arc from the station, above 0 to 1000
/// @param sense which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
/// @param placement where the legs lie: LUBBER_CHORD_PLACEMENT_INSIDE, LUBBER_CHORD_PLACEMENT_OUTSIDE, LUBBER_CHORD_PLACEMENT_BALANCED
/// @param tolerance_nm greatest distance from the arc, above 0 to 1000
/// @param[out] legs How many legs there are; may be NULL
/// @param[out] angle_deg Angle of each at the station, which is also the change of course from one to the next; may be NULL
/// @param[out] length_nm Length of each; may be NULL
/// @param[out] distance_at_ends_nm Distance from the station at which each begins and ends; may be NULL
/// @param[out] distance_at_middle_nm Distance from the station in the middle of each; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error on a plane. The turns between the legs are left out.
/// Degenerate cases: From a radial to itself there is no leg. A tolerance near the radius and above still makes a leg for each 120
/// degrees.
/// Errors: A value outside its range.
/// Source: The right triangle of station, middle and end of a leg.
///
/// Example: lubber_arc_chords(350.0, 50.0, 12.0, LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_CHORD_PLACEMENT_INSIDE, 0.25, &value, NULL, NULL, NULL, NULL) gives 3
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_chords(
    from_radial_deg: f64,
    to_radial_deg: f64,
    arc_radius_nm: f64,
    sense: i32,
    placement: i32,
    tolerance_nm: f64,
    legs: *mut f64,
    angle_deg: *mut f64,
    length_nm: *mut f64,
    distance_at_ends_nm: *mut f64,
    distance_at_middle_nm: *mut f64,
) -> i32 {
    let answer = || {
        if [from_radial_deg, to_radial_deg, arc_radius_nm, tolerance_nm].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 5]) }
        plain::arc_chords(from_radial_deg, to_radial_deg, arc_radius_nm, lubberline::lead::ArcSense::from_code("sense", f64::from(sense))?, lubberline::procedure::ChordPlacement::from_code("placement", f64::from(placement))?, tolerance_nm).map(|answer| [answer.legs, answer.angle_deg, answer.length_nm, answer.distance_at_ends_nm, answer.distance_at_middle_nm])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [legs, angle_deg, length_nm, distance_at_ends_nm, distance_at_middle_nm]) }
}

/// `lubber_arc_chords` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `sense` is one code for all points: which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
///
/// `placement` is one code for all points: where the legs lie: LUBBER_CHORD_PLACEMENT_INSIDE, LUBBER_CHORD_PLACEMENT_OUTSIDE, LUBBER_CHORD_PLACEMENT_BALANCED
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_chords_n(
    count: usize,
    from_radial_deg: *const f64,
    from_radial_deg_stride: isize,
    to_radial_deg: *const f64,
    to_radial_deg_stride: isize,
    arc_radius_nm: *const f64,
    arc_radius_nm_stride: isize,
    sense: i32,
    placement: i32,
    tolerance_nm: *const f64,
    tolerance_nm_stride: isize,
    legs: *mut f64,
    legs_stride: isize,
    angle_deg: *mut f64,
    angle_deg_stride: isize,
    length_nm: *mut f64,
    length_nm_stride: isize,
    distance_at_ends_nm: *mut f64,
    distance_at_ends_nm_stride: isize,
    distance_at_middle_nm: *mut f64,
    distance_at_middle_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let sense = f64::from(sense);
    let placement = f64::from(placement);
    let (inputs, outputs) = ([Array::input(from_radial_deg, from_radial_deg_stride), Array::input(to_radial_deg, to_radial_deg_stride), Array::input(arc_radius_nm, arc_radius_nm_stride), Array::input(&raw const sense, 0), Array::input(&raw const placement, 0), Array::input(tolerance_nm, tolerance_nm_stride)], [Array::output(legs, legs_stride), Array::output(angle_deg, angle_deg_stride), Array::output(length_nm, length_nm_stride), Array::output(distance_at_ends_nm, distance_at_ends_nm_stride), Array::output(distance_at_middle_nm, distance_at_middle_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("arc_chords") }, count, &inputs, &outputs, status) }
}

/// One of the straight legs of a DME arc, flown in a wind: radials, course, heading and time.
///
/// The course is square to the radial of its middle. The legs are those of `arc_chords`.
///
/// @param from_radial_deg radial on which the arc begins, any finite number
/// @param to_radial_deg radial on which it ends
/// @param arc_radius_nm ground distance of the arc from the station, above 0 to 1000
/// @param sense which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
/// @param placement where the legs lie: LUBBER_CHORD_PLACEMENT_INSIDE, LUBBER_CHORD_PLACEMENT_OUTSIDE, LUBBER_CHORD_PLACEMENT_BALANCED
/// @param tolerance_nm greatest distance from the arc, above 0 to 1000
/// @param leg which leg, counted from 1: a whole number, 1 to 1 000 000
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param wind_from_deg where the wind blows from, against the radials' north
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param[out] from_radial_deg_out Radial of its beginning; may be NULL
/// @param[out] to_radial_deg_out Radial of its end; may be NULL
/// @param[out] course_deg Its course; may be NULL
/// @param[out] heading_deg Heading that holds it; may be NULL
/// @param[out] groundspeed_kt Groundspeed on it; may be NULL
/// @param[out] time_s Time along it; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error on a plane. The turns between the legs are left out.
/// Degenerate cases: A leg behind the last is NaN throughout.
/// Errors: A value outside its range, a course that the airspeed cannot hold.
/// Source: The right triangle of station, middle and end of a leg.
///
/// Example: lubber_arc_chord_leg(350.0, 50.0, 12.0, LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_CHORD_PLACEMENT_INSIDE, 0.25, 1.0, 150.0, 310.0, 30.0, NULL, NULL, &value, NULL, NULL, NULL) gives 90.0
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_chord_leg(
    from_radial_deg: f64,
    to_radial_deg: f64,
    arc_radius_nm: f64,
    sense: i32,
    placement: i32,
    tolerance_nm: f64,
    leg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    from_radial_deg_out: *mut f64,
    to_radial_deg_out: *mut f64,
    course_deg: *mut f64,
    heading_deg: *mut f64,
    groundspeed_kt: *mut f64,
    time_s: *mut f64,
) -> i32 {
    let answer = || {
        if [from_radial_deg, to_radial_deg, arc_radius_nm, tolerance_nm, leg, true_airspeed_kt, wind_from_deg, wind_speed_kt].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 6]) }
        plain::arc_chord_leg(from_radial_deg, to_radial_deg, arc_radius_nm, lubberline::lead::ArcSense::from_code("sense", f64::from(sense))?, lubberline::procedure::ChordPlacement::from_code("placement", f64::from(placement))?, tolerance_nm, leg, true_airspeed_kt, wind_from_deg, wind_speed_kt).map(|answer| [answer.from_radial_deg, answer.to_radial_deg, answer.course_deg, answer.heading_deg, answer.groundspeed_kt, answer.time_s])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [from_radial_deg_out, to_radial_deg_out, course_deg, heading_deg, groundspeed_kt, time_s]) }
}

/// `lubber_arc_chord_leg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `sense` is one code for all points: which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
///
/// `placement` is one code for all points: where the legs lie: LUBBER_CHORD_PLACEMENT_INSIDE, LUBBER_CHORD_PLACEMENT_OUTSIDE, LUBBER_CHORD_PLACEMENT_BALANCED
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_chord_leg_n(
    count: usize,
    from_radial_deg: *const f64,
    from_radial_deg_stride: isize,
    to_radial_deg: *const f64,
    to_radial_deg_stride: isize,
    arc_radius_nm: *const f64,
    arc_radius_nm_stride: isize,
    sense: i32,
    placement: i32,
    tolerance_nm: *const f64,
    tolerance_nm_stride: isize,
    leg: *const f64,
    leg_stride: isize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    from_radial_deg_out: *mut f64,
    from_radial_deg_out_stride: isize,
    to_radial_deg_out: *mut f64,
    to_radial_deg_out_stride: isize,
    course_deg: *mut f64,
    course_deg_stride: isize,
    heading_deg: *mut f64,
    heading_deg_stride: isize,
    groundspeed_kt: *mut f64,
    groundspeed_kt_stride: isize,
    time_s: *mut f64,
    time_s_stride: isize,
    status: *mut i32,
) -> usize {
    let sense = f64::from(sense);
    let placement = f64::from(placement);
    let (inputs, outputs) = ([Array::input(from_radial_deg, from_radial_deg_stride), Array::input(to_radial_deg, to_radial_deg_stride), Array::input(arc_radius_nm, arc_radius_nm_stride), Array::input(&raw const sense, 0), Array::input(&raw const placement, 0), Array::input(tolerance_nm, tolerance_nm_stride), Array::input(leg, leg_stride), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride)], [Array::output(from_radial_deg_out, from_radial_deg_out_stride), Array::output(to_radial_deg_out, to_radial_deg_out_stride), Array::output(course_deg, course_deg_stride), Array::output(heading_deg, heading_deg_stride), Array::output(groundspeed_kt, groundspeed_kt_stride), Array::output(time_s, time_s_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("arc_chord_leg") }, count, &inputs, &outputs, status) }
}

/// The straight way back onto a DME arc from inside or outside it: where and when the arc is met.
///
/// On a track turned from square by a correction c, the way is `d sin(c) + sqrt(D^2 - d^2 cos^2(c))` from inside,
/// with the root taken away from outside.
///
/// @param radial_deg radial on which the aircraft is, any finite number
/// @param distance_nm its ground distance from the station, 0 to 10 900
/// @param arc_radius_nm ground distance of the arc from the station, above 0 to 1000
/// @param sense which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
/// @param correction_deg angle of the track from square to the radial, positive toward the station, any finite number
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param wind_from_deg where the wind blows from, against the radials' north
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param[out] track_deg Direction over the ground; may be NULL
/// @param[out] heading_deg Heading that holds it; may be NULL
/// @param[out] distance_nm_out Distance to the arc; may be NULL
/// @param[out] time_s Time to the arc; may be NULL
/// @param[out] radial_deg_out Radial on which the arc is met; may be NULL
/// @param[out] angle_deg Angle at which the arc is met, without its side; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error on a plane.
/// Degenerate cases: On the arc the way is nothing. From outside the correction must be at least `acos(D / d)`, at which the arc is met
/// along it.
/// Errors: A value outside its range, a track from outside that passes the arc, a track that the airspeed cannot hold.
/// Source: The law of cosines.
///
/// Example: lubber_arc_regained(200.0, 11.0, 10.0, LUBBER_ARC_SENSE_CLOCKWISE, 30.0, 160.0, 310.0, 30.0, NULL, NULL, &value, NULL, NULL, NULL) gives 2.46
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_regained(
    radial_deg: f64,
    distance_nm: f64,
    arc_radius_nm: f64,
    sense: i32,
    correction_deg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    track_deg: *mut f64,
    heading_deg: *mut f64,
    distance_nm_out: *mut f64,
    time_s: *mut f64,
    radial_deg_out: *mut f64,
    angle_deg: *mut f64,
) -> i32 {
    let answer = || {
        if [radial_deg, distance_nm, arc_radius_nm, correction_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 6]) }
        plain::arc_regained(radial_deg, distance_nm, arc_radius_nm, lubberline::lead::ArcSense::from_code("sense", f64::from(sense))?, correction_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt).map(|answer| [answer.track_deg, answer.heading_deg, answer.distance_nm, answer.time_s, answer.radial_deg, answer.angle_deg])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [track_deg, heading_deg, distance_nm_out, time_s, radial_deg_out, angle_deg]) }
}

/// `lubber_arc_regained` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `sense` is one code for all points: which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_regained_n(
    count: usize,
    radial_deg: *const f64,
    radial_deg_stride: isize,
    distance_nm: *const f64,
    distance_nm_stride: isize,
    arc_radius_nm: *const f64,
    arc_radius_nm_stride: isize,
    sense: i32,
    correction_deg: *const f64,
    correction_deg_stride: isize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    track_deg: *mut f64,
    track_deg_stride: isize,
    heading_deg: *mut f64,
    heading_deg_stride: isize,
    distance_nm_out: *mut f64,
    distance_nm_out_stride: isize,
    time_s: *mut f64,
    time_s_stride: isize,
    radial_deg_out: *mut f64,
    radial_deg_out_stride: isize,
    angle_deg: *mut f64,
    angle_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let sense = f64::from(sense);
    let (inputs, outputs) = ([Array::input(radial_deg, radial_deg_stride), Array::input(distance_nm, distance_nm_stride), Array::input(arc_radius_nm, arc_radius_nm_stride), Array::input(&raw const sense, 0), Array::input(correction_deg, correction_deg_stride), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride)], [Array::output(track_deg, track_deg_stride), Array::output(heading_deg, heading_deg_stride), Array::output(distance_nm_out, distance_nm_out_stride), Array::output(time_s, time_s_stride), Array::output(radial_deg_out, radial_deg_out_stride), Array::output(angle_deg, angle_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("arc_regained") }, count, &inputs, &outputs, status) }
}

/// The least correction toward the station with which a DME arc is met from outside.
///
/// `acos(D / d)`, the tangent from a point to a circle.
///
/// @param distance_nm ground distance from the station, 0 to 10 900
/// @param arc_radius_nm ground distance of the arc from the station, above 0 to 1000
/// @param[out] arc_least_correction_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error.
/// Degenerate cases: Zero on the arc and inside it.
/// Errors: A value outside its range.
/// Source: The tangent from a point to a circle.
///
/// Example: lubber_arc_least_correction_deg(10.5, 10.0, &value) gives 17.8
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_least_correction_deg(
    distance_nm: f64,
    arc_radius_nm: f64,
    arc_least_correction_deg: *mut f64,
) -> i32 {
    let answer = || plain::arc_least_correction_deg(distance_nm, arc_radius_nm).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [arc_least_correction_deg]) }
}

/// `lubber_arc_least_correction_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_least_correction_deg_n(
    count: usize,
    distance_nm: *const f64,
    distance_nm_stride: isize,
    arc_radius_nm: *const f64,
    arc_radius_nm_stride: isize,
    arc_least_correction_deg: *mut f64,
    arc_least_correction_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(distance_nm, distance_nm_stride), Array::input(arc_radius_nm, arc_radius_nm_stride)], [Array::output(arc_least_correction_deg, arc_least_correction_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("arc_least_correction_deg") }, count, &inputs, &outputs, status) }
}

/// By how much to displace the bearing pointer from the wing tip to get back onto a DME arc, by rule.
///
/// 5 degrees away from the station for each half mile inside, 10 degrees toward it for each half mile outside;
/// positive toward the station.
///
/// @param distance_nm distance from the station, 0 to 10 900
/// @param arc_radius_nm ground distance of the arc from the station, above 0 to 1000
/// @param[out] rule_arc_correction_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: A rule. From outside it is short of `arc_least_correction_deg`, so the arc is met only as the correction is
/// renewed.
/// Degenerate cases: On the arc there is nothing to displace.
/// Errors: A value outside its range.
/// Source: CNATRA P-871 chapter 4, To adjust to/from the arc.
///
/// Example: lubber_rule_arc_correction_deg(9.5, 10.0, &value) gives -5
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_arc_correction_deg(
    distance_nm: f64,
    arc_radius_nm: f64,
    rule_arc_correction_deg: *mut f64,
) -> i32 {
    let answer = || plain::rule_arc_correction_deg(distance_nm, arc_radius_nm).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_arc_correction_deg]) }
}

/// `lubber_rule_arc_correction_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_arc_correction_deg_n(
    count: usize,
    distance_nm: *const f64,
    distance_nm_stride: isize,
    arc_radius_nm: *const f64,
    arc_radius_nm_stride: isize,
    rule_arc_correction_deg: *mut f64,
    rule_arc_correction_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(distance_nm, distance_nm_stride), Array::input(arc_radius_nm, arc_radius_nm_stride)], [Array::output(rule_arc_correction_deg, rule_arc_correction_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_arc_correction_deg") }, count, &inputs, &outputs, status) }
}

/// The shortest line between two points on the WGS-84 ellipsoid: its length and its bearings.
///
/// Karney's solution of the inverse geodesic problem.
///
/// @param lat1_deg latitude of the first point, -90 to 90
/// @param lon1_deg longitude of the first point, any finite number
/// @param lat2_deg latitude of the second point, -90 to 90
/// @param lon2_deg longitude of the second point, any finite number
/// @param[out] distance_nm Length along the surface; may be NULL
/// @param[out] initial_bearing_deg True bearing at the first point, 0 to 360; NaN between coincident points; may be NULL
/// @param[out] final_bearing_deg True bearing at the second point, onward, 0 to 360; NaN between coincident points; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: 15 nanometres for any two points. In arrays 1 micrometre of distance, and 4 of what a bearing moves the other end by; to
/// 18 000 km a tenth of that. Points within ten metres of each other, and near each other's antipode, are computed one by one there.
/// Degenerate cases: Coincident points have no bearing (NaN). Between antipodal points one of the shortest lines is given.
/// Errors: A latitude beyond a pole, or an infinite number.
/// Source: C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013) 43-55, doi 10.1007/s00190-012-0578-z.
///
/// Example: lubber_geodesic_inverse(51.0, 0.0, 52.0, 1.0, &value, NULL, NULL) gives 70.814
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_geodesic_inverse(
    lat1_deg: f64,
    lon1_deg: f64,
    lat2_deg: f64,
    lon2_deg: f64,
    distance_nm: *mut f64,
    initial_bearing_deg: *mut f64,
    final_bearing_deg: *mut f64,
) -> i32 {
    let answer = || plain::geodesic_inverse(lat1_deg, lon1_deg, lat2_deg, lon2_deg).map(|answer| [answer.distance_nm, answer.initial_bearing_deg, answer.final_bearing_deg]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [distance_nm, initial_bearing_deg, final_bearing_deg]) }
}

/// `lubber_geodesic_inverse` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_geodesic_inverse_n(
    count: usize,
    lat1_deg: *const f64,
    lat1_deg_stride: isize,
    lon1_deg: *const f64,
    lon1_deg_stride: isize,
    lat2_deg: *const f64,
    lat2_deg_stride: isize,
    lon2_deg: *const f64,
    lon2_deg_stride: isize,
    distance_nm: *mut f64,
    distance_nm_stride: isize,
    initial_bearing_deg: *mut f64,
    initial_bearing_deg_stride: isize,
    final_bearing_deg: *mut f64,
    final_bearing_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat1_deg, lat1_deg_stride), Array::input(lon1_deg, lon1_deg_stride), Array::input(lat2_deg, lat2_deg_stride), Array::input(lon2_deg, lon2_deg_stride)], [Array::output(distance_nm, distance_nm_stride), Array::output(initial_bearing_deg, initial_bearing_deg_stride), Array::output(final_bearing_deg, final_bearing_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("geodesic_inverse") }, count, &inputs, &outputs, status) }
}

/// Slant range, which DME shows, from ground distance and height above the station.
///
/// `sqrt(h^2 + 4 R (R + h) sin^2(d / 2R))`: the straight line over a sphere of the mean radius of WGS-84,
/// never the sum of distance and height.
///
/// @param ground_distance_nm along the surface from the station, 0 to 10 900
/// @param height_ft above the station's antenna, -60 000 to 400 000
/// @param[out] slant_range_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Within 1.1 m of the ellipsoid to 100 NM and 45 000 ft. Arrays and single calls agree to 1e-15 of the range.
/// Degenerate cases: Overhead the answer is the height.
/// Errors: A value outside its range.
/// Source: The law of cosines between the radii R and R + h.
///
/// Example: lubber_slant_range_nm(10.0, 30000.0, &value) gives 11.159
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_slant_range_nm(
    ground_distance_nm: f64,
    height_ft: f64,
    slant_range_nm: *mut f64,
) -> i32 {
    let answer = || plain::slant_range_nm(ground_distance_nm, height_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [slant_range_nm]) }
}

/// `lubber_slant_range_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_slant_range_nm_n(
    count: usize,
    ground_distance_nm: *const f64,
    ground_distance_nm_stride: isize,
    height_ft: *const f64,
    height_ft_stride: isize,
    slant_range_nm: *mut f64,
    slant_range_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(ground_distance_nm, ground_distance_nm_stride), Array::input(height_ft, height_ft_stride)], [Array::output(slant_range_nm, slant_range_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("slant_range_nm") }, count, &inputs, &outputs, status) }
}

/// The point reached along a geodesic of the WGS-84 ellipsoid.
///
/// Karney's solution of the direct geodesic problem.
///
/// @param lat_deg latitude of the start, -90 to 90
/// @param lon_deg longitude of the start, any finite number
/// @param bearing_deg true bearing at the start, any finite number
/// @param distance_nm length of the line, 0 to 10 900
/// @param[out] latitude_deg Latitude of the point reached, -90 to 90; may be NULL
/// @param[out] longitude_deg Longitude of the point reached, -180 to 180; may be NULL
/// @param[out] final_bearing_deg True bearing of the line there, onward, 0 to 360; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: 15 nanometres; in arrays 0.1 micrometre, but single calls within a metre and at the poles.
/// Degenerate cases: From a pole the bearing is taken against the meridian of the longitude given there.
/// Errors: A value outside its range.
/// Source: C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013) 43-55, doi 10.1007/s00190-012-0578-z.
///
/// Example: lubber_geodesic_direct(0.0, 0.0, 90.0, 60.0, NULL, &value, NULL) gives 0.9982
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_geodesic_direct(
    lat_deg: f64,
    lon_deg: f64,
    bearing_deg: f64,
    distance_nm: f64,
    latitude_deg: *mut f64,
    longitude_deg: *mut f64,
    final_bearing_deg: *mut f64,
) -> i32 {
    let answer = || plain::geodesic_direct(lat_deg, lon_deg, bearing_deg, distance_nm).map(|answer| [answer.latitude_deg, answer.longitude_deg, answer.final_bearing_deg]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [latitude_deg, longitude_deg, final_bearing_deg]) }
}

/// `lubber_geodesic_direct` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_geodesic_direct_n(
    count: usize,
    lat_deg: *const f64,
    lat_deg_stride: isize,
    lon_deg: *const f64,
    lon_deg_stride: isize,
    bearing_deg: *const f64,
    bearing_deg_stride: isize,
    distance_nm: *const f64,
    distance_nm_stride: isize,
    latitude_deg: *mut f64,
    latitude_deg_stride: isize,
    longitude_deg: *mut f64,
    longitude_deg_stride: isize,
    final_bearing_deg: *mut f64,
    final_bearing_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat_deg, lat_deg_stride), Array::input(lon_deg, lon_deg_stride), Array::input(bearing_deg, bearing_deg_stride), Array::input(distance_nm, distance_nm_stride)], [Array::output(latitude_deg, latitude_deg_stride), Array::output(longitude_deg, longitude_deg_stride), Array::output(final_bearing_deg, final_bearing_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("geodesic_direct") }, count, &inputs, &outputs, status) }
}

/// Ground distance from slant range and height above the station: the inverse of `lubber_slant_range_nm`.
///
/// `2 R asin(sqrt((s^2 - h^2) / (4 R (R + h))))` over a sphere of the mean radius of WGS-84.
///
/// @param slant_range_nm the DME reading, 0 to 10 900
/// @param height_ft above the station's antenna, -60 000 to 400 000
/// @param[out] ground_distance_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Within 1.1 m of the ellipsoid to 100 NM and 45 000 ft, beyond twice the height. Close to overhead a small change of
/// range is a large one of distance: seven times at 1.01 times the height.
/// Degenerate cases: A slant range of the height is overhead: zero.
/// Errors: A value outside its range, or a slant range shorter than the height or longer than to the far side of the earth.
/// Source: The law of cosines between the radii R and R + h; in the plane `sqrt(s^2 - h^2)`, ICAO Doc 8168 Vol II (5th ed. 2006),
/// Part I Section 4 Chapter 3 Appendix C, 3.3.4.
///
/// Example: lubber_ground_distance_nm(11.159, 30000.0, &value) gives 10.000
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_ground_distance_nm(
    slant_range_nm: f64,
    height_ft: f64,
    ground_distance_nm: *mut f64,
) -> i32 {
    let answer = || plain::ground_distance_nm(slant_range_nm, height_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [ground_distance_nm]) }
}

/// `lubber_ground_distance_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_ground_distance_nm_n(
    count: usize,
    slant_range_nm: *const f64,
    slant_range_nm_stride: isize,
    height_ft: *const f64,
    height_ft_stride: isize,
    ground_distance_nm: *mut f64,
    ground_distance_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(slant_range_nm, slant_range_nm_stride), Array::input(height_ft, height_ft_stride)], [Array::output(ground_distance_nm, ground_distance_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("ground_distance_nm") }, count, &inputs, &outputs, status) }
}

/// The least DME reading, overhead at a height above the station.
///
/// The height in nautical miles, 6 076.1 ft each.
///
/// @param height_ft above the station's antenna, -60 000 to 400 000
/// @param[out] least_dme_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error.
/// Degenerate cases: Below the station it is the depth.
/// Errors: A value outside its range.
/// Source: The definition of slant range.
///
/// Example: lubber_least_dme_nm(12000.0, &value) gives 1.975
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_least_dme_nm(
    height_ft: f64,
    least_dme_nm: *mut f64,
) -> i32 {
    let answer = || plain::least_dme_nm(height_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [least_dme_nm]) }
}

/// `lubber_least_dme_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_least_dme_nm_n(
    count: usize,
    height_ft: *const f64,
    height_ft_stride: isize,
    least_dme_nm: *mut f64,
    least_dme_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(height_ft, height_ft_stride)], [Array::output(least_dme_nm, least_dme_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("least_dme_nm") }, count, &inputs, &outputs, status) }
}

/// The great circle between two points of a sphere: its length and its bearings.
///
/// The central angle from its chords; bearings by spherical trigonometry.
///
/// @param lat1_deg latitude of the first point, -90 to 90
/// @param lon1_deg longitude of the first point, any finite number
/// @param lat2_deg latitude of the second point, -90 to 90
/// @param lon2_deg longitude of the second point, any finite number
/// @param sphere_radius_nm radius of the sphere, 1 to 100 000
/// @param[out] distance_nm Length along the surface; may be NULL
/// @param[out] initial_bearing_deg Bearing at the first point, 0 to 360; NaN between coincident points; may be NULL
/// @param[out] final_bearing_deg Bearing at the second point, onward, 0 to 360; NaN between coincident points; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding on the sphere; against the ellipsoid up to 0.56 percent. For the earth itself use `geodesic_inverse`.
/// Degenerate cases: Coincident points have no bearing (NaN).
/// Errors: A value outside its range.
/// Source: Spherical trigonometry; the default radius is the mean one of WGS-84.
///
/// Example: lubber_great_circle_inverse(51.0, 0.0, 52.0, 1.0, 3440.069531, &value, NULL, NULL) gives 70.722
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_great_circle_inverse(
    lat1_deg: f64,
    lon1_deg: f64,
    lat2_deg: f64,
    lon2_deg: f64,
    sphere_radius_nm: f64,
    distance_nm: *mut f64,
    initial_bearing_deg: *mut f64,
    final_bearing_deg: *mut f64,
) -> i32 {
    let answer = || plain::great_circle_inverse(lat1_deg, lon1_deg, lat2_deg, lon2_deg, sphere_radius_nm).map(|answer| [answer.distance_nm, answer.initial_bearing_deg, answer.final_bearing_deg]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [distance_nm, initial_bearing_deg, final_bearing_deg]) }
}

/// `lubber_great_circle_inverse` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_great_circle_inverse_n(
    count: usize,
    lat1_deg: *const f64,
    lat1_deg_stride: isize,
    lon1_deg: *const f64,
    lon1_deg_stride: isize,
    lat2_deg: *const f64,
    lat2_deg_stride: isize,
    lon2_deg: *const f64,
    lon2_deg_stride: isize,
    sphere_radius_nm: *const f64,
    sphere_radius_nm_stride: isize,
    distance_nm: *mut f64,
    distance_nm_stride: isize,
    initial_bearing_deg: *mut f64,
    initial_bearing_deg_stride: isize,
    final_bearing_deg: *mut f64,
    final_bearing_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat1_deg, lat1_deg_stride), Array::input(lon1_deg, lon1_deg_stride), Array::input(lat2_deg, lat2_deg_stride), Array::input(lon2_deg, lon2_deg_stride), Array::input(sphere_radius_nm, sphere_radius_nm_stride)], [Array::output(distance_nm, distance_nm_stride), Array::output(initial_bearing_deg, initial_bearing_deg_stride), Array::output(final_bearing_deg, final_bearing_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("great_circle_inverse") }, count, &inputs, &outputs, status) }
}

/// The point reached along a great circle of a sphere.
///
/// Spherical trigonometry.
///
/// @param lat_deg latitude of the start, -90 to 90
/// @param lon_deg longitude of the start, any finite number
/// @param bearing_deg bearing at the start, any finite number
/// @param distance_nm length of the line, 0 to 10 900
/// @param sphere_radius_nm radius of the sphere, 1 to 100 000
/// @param[out] latitude_deg Latitude of the point reached, -90 to 90; may be NULL
/// @param[out] longitude_deg Longitude of the point reached, -180 to 180; may be NULL
/// @param[out] final_bearing_deg Bearing of the circle there, onward, 0 to 360; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding on the sphere. For the earth itself use `geodesic_direct`.
/// Degenerate cases: From a pole the bearing is taken against the meridian of the longitude given there.
/// Errors: A value outside its range.
/// Source: Spherical trigonometry; the default radius is the mean one of WGS-84.
///
/// Example: lubber_great_circle_direct(0.0, 0.0, 90.0, 60.0, 3437.746771, NULL, &value, NULL) gives 1.0000
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_great_circle_direct(
    lat_deg: f64,
    lon_deg: f64,
    bearing_deg: f64,
    distance_nm: f64,
    sphere_radius_nm: f64,
    latitude_deg: *mut f64,
    longitude_deg: *mut f64,
    final_bearing_deg: *mut f64,
) -> i32 {
    let answer = || plain::great_circle_direct(lat_deg, lon_deg, bearing_deg, distance_nm, sphere_radius_nm).map(|answer| [answer.latitude_deg, answer.longitude_deg, answer.final_bearing_deg]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [latitude_deg, longitude_deg, final_bearing_deg]) }
}

/// `lubber_great_circle_direct` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_great_circle_direct_n(
    count: usize,
    lat_deg: *const f64,
    lat_deg_stride: isize,
    lon_deg: *const f64,
    lon_deg_stride: isize,
    bearing_deg: *const f64,
    bearing_deg_stride: isize,
    distance_nm: *const f64,
    distance_nm_stride: isize,
    sphere_radius_nm: *const f64,
    sphere_radius_nm_stride: isize,
    latitude_deg: *mut f64,
    latitude_deg_stride: isize,
    longitude_deg: *mut f64,
    longitude_deg_stride: isize,
    final_bearing_deg: *mut f64,
    final_bearing_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat_deg, lat_deg_stride), Array::input(lon_deg, lon_deg_stride), Array::input(bearing_deg, bearing_deg_stride), Array::input(distance_nm, distance_nm_stride), Array::input(sphere_radius_nm, sphere_radius_nm_stride)], [Array::output(latitude_deg, latitude_deg_stride), Array::output(longitude_deg, longitude_deg_stride), Array::output(final_bearing_deg, final_bearing_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("great_circle_direct") }, count, &inputs, &outputs, status) }
}

/// The straight line between two points at their heights over the WGS-84 ellipsoid: slant range and elevation angle.
///
/// The difference of the earth-centred coordinates, in the horizon of the first point.
///
/// @param lat1_deg latitude of the first point, the antenna, -90 to 90
/// @param lon1_deg longitude of the first point, any finite number
/// @param elevation_ft elevation of the first point above mean sea level, -16 500 to 60 000
/// @param lat2_deg latitude of the second point, the aircraft, -90 to 90
/// @param lon2_deg longitude of the second point, any finite number
/// @param altitude_ft altitude of the second point above mean sea level, -16 500 to 400 000
/// @param[out] slant_range_nm Its length: the slant range; may be NULL
/// @param[out] elevation_angle_deg Angle of the second point above the horizontal of the first, negative below; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: A micrometre. Mean sea level is taken for the ellipsoid.
/// Degenerate cases: Coincident points are at range zero and elevation angle zero. The line is straight through the earth too: whether the second point is in
/// sight is not asked.
/// Errors: A value outside its range.
/// Source: Earth-centred coordinates of WGS-84 (NGA.STND.0036_1.0.0_WGS84, from memory).
///
/// Example: lubber_straight_line(61.25, -11.5, 420.0, 61.5, -11.0, 31000.0, &value, NULL) gives 21.462
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_straight_line(
    lat1_deg: f64,
    lon1_deg: f64,
    elevation_ft: f64,
    lat2_deg: f64,
    lon2_deg: f64,
    altitude_ft: f64,
    slant_range_nm: *mut f64,
    elevation_angle_deg: *mut f64,
) -> i32 {
    let answer = || plain::straight_line(lat1_deg, lon1_deg, elevation_ft, lat2_deg, lon2_deg, altitude_ft).map(|answer| [answer.slant_range_nm, answer.elevation_angle_deg]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [slant_range_nm, elevation_angle_deg]) }
}

/// `lubber_straight_line` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_straight_line_n(
    count: usize,
    lat1_deg: *const f64,
    lat1_deg_stride: isize,
    lon1_deg: *const f64,
    lon1_deg_stride: isize,
    elevation_ft: *const f64,
    elevation_ft_stride: isize,
    lat2_deg: *const f64,
    lat2_deg_stride: isize,
    lon2_deg: *const f64,
    lon2_deg_stride: isize,
    altitude_ft: *const f64,
    altitude_ft_stride: isize,
    slant_range_nm: *mut f64,
    slant_range_nm_stride: isize,
    elevation_angle_deg: *mut f64,
    elevation_angle_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat1_deg, lat1_deg_stride), Array::input(lon1_deg, lon1_deg_stride), Array::input(elevation_ft, elevation_ft_stride), Array::input(lat2_deg, lat2_deg_stride), Array::input(lon2_deg, lon2_deg_stride), Array::input(altitude_ft, altitude_ft_stride)], [Array::output(slant_range_nm, slant_range_nm_stride), Array::output(elevation_angle_deg, elevation_angle_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("straight_line") }, count, &inputs, &outputs, status) }
}

/// Equivalent airspeed from true airspeed.
///
/// `Ve = V sqrt(density/density at standard sea level)`.
///
/// @param tas_kt true airspeed, 0 to 5000
/// @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
/// @param isa_deviation_k warmer than standard by this, -150 to 150
/// @param[out] eas_from_tas_kt the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.
/// Degenerate cases: Zero gives zero.
/// Errors: A value outside its range, or a result beyond 5000 kt or Mach 10.
/// Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
/// for the pitot pressure above Mach 1.
///
/// Example: lubber_eas_from_tas_kt(450.0, 35000.0, 0.0, &value) gives 250.50
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_eas_from_tas_kt(
    tas_kt: f64,
    pressure_altitude_ft: f64,
    isa_deviation_k: f64,
    eas_from_tas_kt: *mut f64,
) -> i32 {
    let answer = || plain::eas_from_tas_kt(tas_kt, pressure_altitude_ft, isa_deviation_k).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [eas_from_tas_kt]) }
}

/// `lubber_eas_from_tas_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_eas_from_tas_kt_n(
    count: usize,
    tas_kt: *const f64,
    tas_kt_stride: isize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    isa_deviation_k: *const f64,
    isa_deviation_k_stride: isize,
    eas_from_tas_kt: *mut f64,
    eas_from_tas_kt_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(tas_kt, tas_kt_stride), Array::input(pressure_altitude_ft, pressure_altitude_ft_stride), Array::input(isa_deviation_k, isa_deviation_k_stride)], [Array::output(eas_from_tas_kt, eas_from_tas_kt_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("eas_from_tas_kt") }, count, &inputs, &outputs, status) }
}

/// True airspeed from equivalent airspeed: the inverse of `lubber_eas_from_tas_kt`.
///
/// `V = Ve sqrt(density at standard sea level/density)`.
///
/// @param eas_kt equivalent airspeed, 0 to 5000
/// @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
/// @param isa_deviation_k warmer than standard by this, -150 to 150
/// @param[out] tas_from_eas_kt the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.
/// Degenerate cases: Zero gives zero.
/// Errors: A value outside its range, or a result beyond 5000 kt or Mach 10.
/// Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
/// for the pitot pressure above Mach 1.
///
/// Example: lubber_tas_from_eas_kt(250.0, 35000.0, 0.0, &value) gives 449.10
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_tas_from_eas_kt(
    eas_kt: f64,
    pressure_altitude_ft: f64,
    isa_deviation_k: f64,
    tas_from_eas_kt: *mut f64,
) -> i32 {
    let answer = || plain::tas_from_eas_kt(eas_kt, pressure_altitude_ft, isa_deviation_k).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [tas_from_eas_kt]) }
}

/// `lubber_tas_from_eas_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_tas_from_eas_kt_n(
    count: usize,
    eas_kt: *const f64,
    eas_kt_stride: isize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    isa_deviation_k: *const f64,
    isa_deviation_k_stride: isize,
    tas_from_eas_kt: *mut f64,
    tas_from_eas_kt_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(eas_kt, eas_kt_stride), Array::input(pressure_altitude_ft, pressure_altitude_ft_stride), Array::input(isa_deviation_k, isa_deviation_k_stride)], [Array::output(tas_from_eas_kt, tas_from_eas_kt_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("tas_from_eas_kt") }, count, &inputs, &outputs, status) }
}

/// Equivalent airspeed from calibrated airspeed: less by the effect of compressibility.
///
/// `Ve = M a0 sqrt(p/p0)` with the Mach number of `lubber_mach_from_cas`; the temperature plays no part.
///
/// @param cas_kt calibrated airspeed, 0 to 5000
/// @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
/// @param[out] eas_from_cas_kt the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.
/// Degenerate cases: Zero gives zero.
/// Errors: A value outside its range, or a result beyond 5000 kt or Mach 10.
/// Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
/// for the pitot pressure above Mach 1.
///
/// Example: lubber_eas_from_cas_kt(280.0, 35000.0, &value) gives 263.55
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_eas_from_cas_kt(
    cas_kt: f64,
    pressure_altitude_ft: f64,
    eas_from_cas_kt: *mut f64,
) -> i32 {
    let answer = || plain::eas_from_cas_kt(cas_kt, pressure_altitude_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [eas_from_cas_kt]) }
}

/// `lubber_eas_from_cas_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_eas_from_cas_kt_n(
    count: usize,
    cas_kt: *const f64,
    cas_kt_stride: isize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    eas_from_cas_kt: *mut f64,
    eas_from_cas_kt_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(cas_kt, cas_kt_stride), Array::input(pressure_altitude_ft, pressure_altitude_ft_stride)], [Array::output(eas_from_cas_kt, eas_from_cas_kt_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("eas_from_cas_kt") }, count, &inputs, &outputs, status) }
}

/// Calibrated airspeed from equivalent airspeed: the inverse of `lubber_eas_from_cas_kt`.
///
/// `M = Ve/(a0 sqrt(p/p0))`, and the calibrated airspeed of that Mach number.
///
/// @param eas_kt equivalent airspeed, 0 to 5000
/// @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
/// @param[out] cas_from_eas_kt the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.
/// Degenerate cases: Zero gives zero.
/// Errors: A value outside its range, or a result beyond 5000 kt or Mach 10.
/// Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
/// for the pitot pressure above Mach 1.
///
/// Example: lubber_cas_from_eas_kt(250.0, 35000.0, &value) gives 264.09
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_cas_from_eas_kt(
    eas_kt: f64,
    pressure_altitude_ft: f64,
    cas_from_eas_kt: *mut f64,
) -> i32 {
    let answer = || plain::cas_from_eas_kt(eas_kt, pressure_altitude_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [cas_from_eas_kt]) }
}

/// `lubber_cas_from_eas_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_cas_from_eas_kt_n(
    count: usize,
    eas_kt: *const f64,
    eas_kt_stride: isize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    cas_from_eas_kt: *mut f64,
    cas_from_eas_kt_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(eas_kt, eas_kt_stride), Array::input(pressure_altitude_ft, pressure_altitude_ft_stride)], [Array::output(cas_from_eas_kt, cas_from_eas_kt_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("cas_from_eas_kt") }, count, &inputs, &outputs, status) }
}

/// Equivalent airspeed from Mach number.
///
/// `Ve = M a0 sqrt(p/p0)`.
///
/// @param mach Mach number, 0 to 10
/// @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
/// @param[out] eas_from_mach_kt the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.
/// Degenerate cases: Zero gives zero.
/// Errors: A value outside its range, or a result beyond 5000 kt or Mach 10.
/// Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
/// for the pitot pressure above Mach 1.
///
/// Example: lubber_eas_from_mach_kt(0.78, 35000.0, &value) gives 250.28
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_eas_from_mach_kt(
    mach: f64,
    pressure_altitude_ft: f64,
    eas_from_mach_kt: *mut f64,
) -> i32 {
    let answer = || plain::eas_from_mach_kt(mach, pressure_altitude_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [eas_from_mach_kt]) }
}

/// `lubber_eas_from_mach_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_eas_from_mach_kt_n(
    count: usize,
    mach: *const f64,
    mach_stride: isize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    eas_from_mach_kt: *mut f64,
    eas_from_mach_kt_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(mach, mach_stride), Array::input(pressure_altitude_ft, pressure_altitude_ft_stride)], [Array::output(eas_from_mach_kt, eas_from_mach_kt_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("eas_from_mach_kt") }, count, &inputs, &outputs, status) }
}

/// Mach number from equivalent airspeed.
///
/// `M = Ve/(a0 sqrt(p/p0))`.
///
/// @param eas_kt equivalent airspeed, 0 to 5000
/// @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
/// @param[out] mach_from_eas the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.
/// Degenerate cases: Zero gives zero.
/// Errors: A value outside its range, or a result beyond Mach 10.
/// Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
/// for the pitot pressure above Mach 1.
///
/// Example: lubber_mach_from_eas(250.0, 35000.0, &value) gives 0.7791
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_mach_from_eas(
    eas_kt: f64,
    pressure_altitude_ft: f64,
    mach_from_eas: *mut f64,
) -> i32 {
    let answer = || plain::mach_from_eas(eas_kt, pressure_altitude_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [mach_from_eas]) }
}

/// `lubber_mach_from_eas` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_mach_from_eas_n(
    count: usize,
    eas_kt: *const f64,
    eas_kt_stride: isize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    mach_from_eas: *mut f64,
    mach_from_eas_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(eas_kt, eas_kt_stride), Array::input(pressure_altitude_ft, pressure_altitude_ft_stride)], [Array::output(mach_from_eas, mach_from_eas_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("mach_from_eas") }, count, &inputs, &outputs, status) }
}

/// How far a radial's error leads aside at a distance from the station.
///
/// `R sin(d / R) error` on a sphere of the mean radius, with the error in radians; in the plane `d error`.
///
/// @param distance_nm distance from the station along the ground, above 0 to 5000
/// @param radial_error_deg error of the radial, 0 to 90
/// @param[out] radial_error_across_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Exact on the sphere along the arc; the ellipsoid moves it by less than 0.6 percent.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range.
/// Source: Derived.
///
/// Example: lubber_radial_error_across_nm(40.0, 4.5, &value) gives 3.14
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_radial_error_across_nm(
    distance_nm: f64,
    radial_error_deg: f64,
    radial_error_across_nm: *mut f64,
) -> i32 {
    let answer = || plain::radial_error_across_nm(distance_nm, radial_error_deg).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [radial_error_across_nm]) }
}

/// `lubber_radial_error_across_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_radial_error_across_nm_n(
    count: usize,
    distance_nm: *const f64,
    distance_nm_stride: isize,
    radial_error_deg: *const f64,
    radial_error_deg_stride: isize,
    radial_error_across_nm: *mut f64,
    radial_error_across_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(distance_nm, distance_nm_stride), Array::input(radial_error_deg, radial_error_deg_stride)], [Array::output(radial_error_across_nm, radial_error_across_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("radial_error_across_nm") }, count, &inputs, &outputs, status) }
}

/// How far a DME's error leads along the ground at a distance from the station.
///
/// `error slant / ((R + h) sin(d / R))` on a sphere of the mean radius, in the plane `error slant / d`.
///
/// @param distance_nm distance from the station along the ground, above 0 to 5000
/// @param dme_error_nm error of the slant range, 0 to 1000
/// @param height_ft height above the station's antenna, -60 000 to 400 000
/// @param[out] dme_error_along_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Exact on the sphere for small errors; the ellipsoid moves it by less than 0.6 percent.
/// Degenerate cases: It grows without bound toward the station: overhead DME tells nothing of the place.
/// Errors: A value outside its range.
/// Source: Derived from the slant range of `slant_range_nm`.
///
/// Example: lubber_dme_error_along_nm(3.0, 0.2, 36000.0, &value) gives 0.44
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_dme_error_along_nm(
    distance_nm: f64,
    dme_error_nm: f64,
    height_ft: f64,
    dme_error_along_nm: *mut f64,
) -> i32 {
    let answer = || plain::dme_error_along_nm(distance_nm, dme_error_nm, height_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [dme_error_along_nm]) }
}

/// `lubber_dme_error_along_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_dme_error_along_nm_n(
    count: usize,
    distance_nm: *const f64,
    distance_nm_stride: isize,
    dme_error_nm: *const f64,
    dme_error_nm_stride: isize,
    height_ft: *const f64,
    height_ft_stride: isize,
    dme_error_along_nm: *mut f64,
    dme_error_along_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(distance_nm, distance_nm_stride), Array::input(dme_error_nm, dme_error_nm_stride), Array::input(height_ft, height_ft_stride)], [Array::output(dme_error_along_nm, dme_error_along_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("dme_error_along_nm") }, count, &inputs, &outputs, status) }
}

/// The error of a fix from two radials.
///
/// An error across one line moves the fix along the other: the covariance is `(s1^2 p2 p2' + s2^2 p1 p1') / sin^2(crossing angle)`, with `s` the standard
/// deviations across the lines and `p` the unit vectors along them.
///
/// @param first_radial_deg direction of the first radial at the fix, away from its station, any finite number
/// @param first_distance_nm distance from the first station along the ground, above 0 to 5000
/// @param second_radial_deg direction of the second radial at the fix, against the same north, any finite number
/// @param second_distance_nm distance from the second station along the ground, above 0 to 5000
/// @param first_error_deg standard deviation of the first radial, half a published tolerance, 0 to 90
/// @param second_error_deg standard deviation of the second radial, 0 to 90
/// @param track_deg the track, against the same north, any finite number
/// @param[out] semi_major_nm Standard deviation along the long axis of the error ellipse; may be NULL
/// @param[out] semi_minor_nm Standard deviation along its short axis; may be NULL
/// @param[out] major_axis_deg Direction of the long axis, 0 to 180; may be NULL
/// @param[out] north_nm Standard deviation by north; may be NULL
/// @param[out] east_nm Standard deviation by east; may be NULL
/// @param[out] correlation Correlation of the errors by north and by east, -1 to 1: with the two deviations the whole covariance; may be NULL
/// @param[out] along_track_nm Standard deviation along the track; may be NULL
/// @param[out] across_track_nm Standard deviation across the track; may be NULL
/// @param[out] root_mean_square_nm Root mean square distance of the fix from the place; twice of it holds 95 to 98 percent; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error for straight lines; it holds while the errors are small against the distances.
/// Degenerate cases: Without error in either line the ellipse is a point. Directions of two stations have to be brought to one north.
/// Errors: A value outside its range, or radials that do not cross.
/// Source: Derived: the covariance of the solution of two linear equations.
///
/// Example: lubber_fix_of_two_radials(70.0, 40.0, 340.0, 20.0, 2.25, 2.25, 70.0, NULL, NULL, NULL, NULL, NULL, NULL, NULL, &value, NULL) gives 1.57
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_fix_of_two_radials(
    first_radial_deg: f64,
    first_distance_nm: f64,
    second_radial_deg: f64,
    second_distance_nm: f64,
    first_error_deg: f64,
    second_error_deg: f64,
    track_deg: f64,
    semi_major_nm: *mut f64,
    semi_minor_nm: *mut f64,
    major_axis_deg: *mut f64,
    north_nm: *mut f64,
    east_nm: *mut f64,
    correlation: *mut f64,
    along_track_nm: *mut f64,
    across_track_nm: *mut f64,
    root_mean_square_nm: *mut f64,
) -> i32 {
    let answer = || plain::fix_of_two_radials(first_radial_deg, first_distance_nm, second_radial_deg, second_distance_nm, first_error_deg, second_error_deg, track_deg).map(|answer| [answer.semi_major_nm, answer.semi_minor_nm, answer.major_axis_deg, answer.north_nm, answer.east_nm, answer.correlation, answer.along_track_nm, answer.across_track_nm, answer.root_mean_square_nm]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [semi_major_nm, semi_minor_nm, major_axis_deg, north_nm, east_nm, correlation, along_track_nm, across_track_nm, root_mean_square_nm]) }
}

/// `lubber_fix_of_two_radials` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_fix_of_two_radials_n(
    count: usize,
    first_radial_deg: *const f64,
    first_radial_deg_stride: isize,
    first_distance_nm: *const f64,
    first_distance_nm_stride: isize,
    second_radial_deg: *const f64,
    second_radial_deg_stride: isize,
    second_distance_nm: *const f64,
    second_distance_nm_stride: isize,
    first_error_deg: *const f64,
    first_error_deg_stride: isize,
    second_error_deg: *const f64,
    second_error_deg_stride: isize,
    track_deg: *const f64,
    track_deg_stride: isize,
    semi_major_nm: *mut f64,
    semi_major_nm_stride: isize,
    semi_minor_nm: *mut f64,
    semi_minor_nm_stride: isize,
    major_axis_deg: *mut f64,
    major_axis_deg_stride: isize,
    north_nm: *mut f64,
    north_nm_stride: isize,
    east_nm: *mut f64,
    east_nm_stride: isize,
    correlation: *mut f64,
    correlation_stride: isize,
    along_track_nm: *mut f64,
    along_track_nm_stride: isize,
    across_track_nm: *mut f64,
    across_track_nm_stride: isize,
    root_mean_square_nm: *mut f64,
    root_mean_square_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(first_radial_deg, first_radial_deg_stride), Array::input(first_distance_nm, first_distance_nm_stride), Array::input(second_radial_deg, second_radial_deg_stride), Array::input(second_distance_nm, second_distance_nm_stride), Array::input(first_error_deg, first_error_deg_stride), Array::input(second_error_deg, second_error_deg_stride), Array::input(track_deg, track_deg_stride)], [Array::output(semi_major_nm, semi_major_nm_stride), Array::output(semi_minor_nm, semi_minor_nm_stride), Array::output(major_axis_deg, major_axis_deg_stride), Array::output(north_nm, north_nm_stride), Array::output(east_nm, east_nm_stride), Array::output(correlation, correlation_stride), Array::output(along_track_nm, along_track_nm_stride), Array::output(across_track_nm, across_track_nm_stride), Array::output(root_mean_square_nm, root_mean_square_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("fix_of_two_radials") }, count, &inputs, &outputs, status) }
}

/// The error of a fix from a radial and a DME, of one station or of two.
///
/// As `fix_of_two_radials`; the line of the DME runs across the bearing from its station, and its error along the ground is that of `dme_error_along_nm`.
///
/// @param radial_deg direction of the radial at the fix, away from its station, any finite number
/// @param radial_distance_nm distance from the radial's station along the ground, above 0 to 5000
/// @param dme_bearing_deg direction from the DME station at the fix, against the same north; the radial, if it is one station
/// @param dme_distance_nm distance from the DME station along the ground, above 0 to 5000
/// @param radial_error_deg standard deviation of the radial, half a published tolerance, 0 to 90
/// @param dme_error_nm standard deviation of the slant range, half a published tolerance, 0 to 1000
/// @param height_ft height above the DME station's antenna, -60 000 to 400 000
/// @param track_deg the track, against the same north, any finite number
/// @param[out] semi_major_nm Standard deviation along the long axis of the error ellipse; may be NULL
/// @param[out] semi_minor_nm Standard deviation along its short axis; may be NULL
/// @param[out] major_axis_deg Direction of the long axis, 0 to 180; may be NULL
/// @param[out] north_nm Standard deviation by north; may be NULL
/// @param[out] east_nm Standard deviation by east; may be NULL
/// @param[out] correlation Correlation of the errors by north and by east, -1 to 1: with the two deviations the whole covariance; may be NULL
/// @param[out] along_track_nm Standard deviation along the track; may be NULL
/// @param[out] across_track_nm Standard deviation across the track; may be NULL
/// @param[out] root_mean_square_nm Root mean square distance of the fix from the place; twice of it holds 95 to 98 percent; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As `fix_of_two_radials`.
/// Degenerate cases: Toward the DME station its error along the ground grows without bound.
/// Errors: A value outside its range, or a radial square to the bearing from the DME station, whose line runs along it.
/// Source: Derived, as `fix_of_two_radials`.
///
/// Example: lubber_fix_of_radial_and_dme(70.0, 40.0, 70.0, 40.0, 2.25, 0.1, 31000.0, 70.0, &value, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL) gives 1.57
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_fix_of_radial_and_dme(
    radial_deg: f64,
    radial_distance_nm: f64,
    dme_bearing_deg: f64,
    dme_distance_nm: f64,
    radial_error_deg: f64,
    dme_error_nm: f64,
    height_ft: f64,
    track_deg: f64,
    semi_major_nm: *mut f64,
    semi_minor_nm: *mut f64,
    major_axis_deg: *mut f64,
    north_nm: *mut f64,
    east_nm: *mut f64,
    correlation: *mut f64,
    along_track_nm: *mut f64,
    across_track_nm: *mut f64,
    root_mean_square_nm: *mut f64,
) -> i32 {
    let answer = || plain::fix_of_radial_and_dme(radial_deg, radial_distance_nm, dme_bearing_deg, dme_distance_nm, radial_error_deg, dme_error_nm, height_ft, track_deg).map(|answer| [answer.semi_major_nm, answer.semi_minor_nm, answer.major_axis_deg, answer.north_nm, answer.east_nm, answer.correlation, answer.along_track_nm, answer.across_track_nm, answer.root_mean_square_nm]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [semi_major_nm, semi_minor_nm, major_axis_deg, north_nm, east_nm, correlation, along_track_nm, across_track_nm, root_mean_square_nm]) }
}

/// `lubber_fix_of_radial_and_dme` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_fix_of_radial_and_dme_n(
    count: usize,
    radial_deg: *const f64,
    radial_deg_stride: isize,
    radial_distance_nm: *const f64,
    radial_distance_nm_stride: isize,
    dme_bearing_deg: *const f64,
    dme_bearing_deg_stride: isize,
    dme_distance_nm: *const f64,
    dme_distance_nm_stride: isize,
    radial_error_deg: *const f64,
    radial_error_deg_stride: isize,
    dme_error_nm: *const f64,
    dme_error_nm_stride: isize,
    height_ft: *const f64,
    height_ft_stride: isize,
    track_deg: *const f64,
    track_deg_stride: isize,
    semi_major_nm: *mut f64,
    semi_major_nm_stride: isize,
    semi_minor_nm: *mut f64,
    semi_minor_nm_stride: isize,
    major_axis_deg: *mut f64,
    major_axis_deg_stride: isize,
    north_nm: *mut f64,
    north_nm_stride: isize,
    east_nm: *mut f64,
    east_nm_stride: isize,
    correlation: *mut f64,
    correlation_stride: isize,
    along_track_nm: *mut f64,
    along_track_nm_stride: isize,
    across_track_nm: *mut f64,
    across_track_nm_stride: isize,
    root_mean_square_nm: *mut f64,
    root_mean_square_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(radial_deg, radial_deg_stride), Array::input(radial_distance_nm, radial_distance_nm_stride), Array::input(dme_bearing_deg, dme_bearing_deg_stride), Array::input(dme_distance_nm, dme_distance_nm_stride), Array::input(radial_error_deg, radial_error_deg_stride), Array::input(dme_error_nm, dme_error_nm_stride), Array::input(height_ft, height_ft_stride), Array::input(track_deg, track_deg_stride)], [Array::output(semi_major_nm, semi_major_nm_stride), Array::output(semi_minor_nm, semi_minor_nm_stride), Array::output(major_axis_deg, major_axis_deg_stride), Array::output(north_nm, north_nm_stride), Array::output(east_nm, east_nm_stride), Array::output(correlation, correlation_stride), Array::output(along_track_nm, along_track_nm_stride), Array::output(across_track_nm, across_track_nm_stride), Array::output(root_mean_square_nm, root_mean_square_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("fix_of_radial_and_dme") }, count, &inputs, &outputs, status) }
}

/// The error of a fix from two DME.
///
/// As `fix_of_two_radials`, with the lines across the bearings from the stations.
///
/// @param first_bearing_deg direction from the first station at the fix, any finite number
/// @param first_distance_nm distance from the first station along the ground, above 0 to 5000
/// @param second_bearing_deg direction from the second station at the fix, against the same north, any finite number
/// @param second_distance_nm distance from the second station along the ground, above 0 to 5000
/// @param first_error_nm standard deviation of the first slant range, half a published tolerance, 0 to 1000
/// @param second_error_nm standard deviation of the second slant range, 0 to 1000
/// @param first_height_ft height above the first antenna, -60 000 to 400 000
/// @param second_height_ft height above the second antenna, -60 000 to 400 000
/// @param track_deg the track, against the same north, any finite number
/// @param[out] semi_major_nm Standard deviation along the long axis of the error ellipse; may be NULL
/// @param[out] semi_minor_nm Standard deviation along its short axis; may be NULL
/// @param[out] major_axis_deg Direction of the long axis, 0 to 180; may be NULL
/// @param[out] north_nm Standard deviation by north; may be NULL
/// @param[out] east_nm Standard deviation by east; may be NULL
/// @param[out] correlation Correlation of the errors by north and by east, -1 to 1: with the two deviations the whole covariance; may be NULL
/// @param[out] along_track_nm Standard deviation along the track; may be NULL
/// @param[out] across_track_nm Standard deviation across the track; may be NULL
/// @param[out] root_mean_square_nm Root mean square distance of the fix from the place; twice of it holds 95 to 98 percent; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As `fix_of_two_radials`.
/// Degenerate cases: Two DME give two fixes, alike in their error; which one is meant is not asked here.
/// Errors: A value outside its range, or stations in line with the fix.
/// Source: Derived, as `fix_of_two_radials`.
///
/// Example: lubber_fix_of_two_dme(70.0, 40.0, 130.0, 55.0, 0.1, 0.1, 0.0, 0.0, 0.0, &value, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL) gives 0.141
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_fix_of_two_dme(
    first_bearing_deg: f64,
    first_distance_nm: f64,
    second_bearing_deg: f64,
    second_distance_nm: f64,
    first_error_nm: f64,
    second_error_nm: f64,
    first_height_ft: f64,
    second_height_ft: f64,
    track_deg: f64,
    semi_major_nm: *mut f64,
    semi_minor_nm: *mut f64,
    major_axis_deg: *mut f64,
    north_nm: *mut f64,
    east_nm: *mut f64,
    correlation: *mut f64,
    along_track_nm: *mut f64,
    across_track_nm: *mut f64,
    root_mean_square_nm: *mut f64,
) -> i32 {
    let answer = || plain::fix_of_two_dme(first_bearing_deg, first_distance_nm, second_bearing_deg, second_distance_nm, first_error_nm, second_error_nm, first_height_ft, second_height_ft, track_deg).map(|answer| [answer.semi_major_nm, answer.semi_minor_nm, answer.major_axis_deg, answer.north_nm, answer.east_nm, answer.correlation, answer.along_track_nm, answer.across_track_nm, answer.root_mean_square_nm]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [semi_major_nm, semi_minor_nm, major_axis_deg, north_nm, east_nm, correlation, along_track_nm, across_track_nm, root_mean_square_nm]) }
}

/// `lubber_fix_of_two_dme` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_fix_of_two_dme_n(
    count: usize,
    first_bearing_deg: *const f64,
    first_bearing_deg_stride: isize,
    first_distance_nm: *const f64,
    first_distance_nm_stride: isize,
    second_bearing_deg: *const f64,
    second_bearing_deg_stride: isize,
    second_distance_nm: *const f64,
    second_distance_nm_stride: isize,
    first_error_nm: *const f64,
    first_error_nm_stride: isize,
    second_error_nm: *const f64,
    second_error_nm_stride: isize,
    first_height_ft: *const f64,
    first_height_ft_stride: isize,
    second_height_ft: *const f64,
    second_height_ft_stride: isize,
    track_deg: *const f64,
    track_deg_stride: isize,
    semi_major_nm: *mut f64,
    semi_major_nm_stride: isize,
    semi_minor_nm: *mut f64,
    semi_minor_nm_stride: isize,
    major_axis_deg: *mut f64,
    major_axis_deg_stride: isize,
    north_nm: *mut f64,
    north_nm_stride: isize,
    east_nm: *mut f64,
    east_nm_stride: isize,
    correlation: *mut f64,
    correlation_stride: isize,
    along_track_nm: *mut f64,
    along_track_nm_stride: isize,
    across_track_nm: *mut f64,
    across_track_nm_stride: isize,
    root_mean_square_nm: *mut f64,
    root_mean_square_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(first_bearing_deg, first_bearing_deg_stride), Array::input(first_distance_nm, first_distance_nm_stride), Array::input(second_bearing_deg, second_bearing_deg_stride), Array::input(second_distance_nm, second_distance_nm_stride), Array::input(first_error_nm, first_error_nm_stride), Array::input(second_error_nm, second_error_nm_stride), Array::input(first_height_ft, first_height_ft_stride), Array::input(second_height_ft, second_height_ft_stride), Array::input(track_deg, track_deg_stride)], [Array::output(semi_major_nm, semi_major_nm_stride), Array::output(semi_minor_nm, semi_minor_nm_stride), Array::output(major_axis_deg, major_axis_deg_stride), Array::output(north_nm, north_nm_stride), Array::output(east_nm, east_nm_stride), Array::output(correlation, correlation_stride), Array::output(along_track_nm, along_track_nm_stride), Array::output(across_track_nm, across_track_nm_stride), Array::output(root_mean_square_nm, root_mean_square_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("fix_of_two_dme") }, count, &inputs, &outputs, status) }
}

/// The factor by which an ellipse of one standard deviation grows to hold a share of all fixes.
///
/// `sqrt(-2 ln(1 - p))`.
///
/// @param confidence the share, above 0 below 1
/// @param[out] ellipse_factor the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error, for normal errors.
/// Degenerate cases: One standard deviation holds 39 percent of the fixes, where along a line it holds 68.
/// Errors: A value outside its range.
/// Source: The distribution of the radius of two independent normal errors (Rayleigh); derived.
///
/// Example: lubber_ellipse_factor(0.95, &value) gives 2.448
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_ellipse_factor(
    confidence: f64,
    ellipse_factor: *mut f64,
) -> i32 {
    let answer = || plain::ellipse_factor(confidence).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [ellipse_factor]) }
}

/// `lubber_ellipse_factor` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_ellipse_factor_n(
    count: usize,
    confidence: *const f64,
    confidence_stride: isize,
    ellipse_factor: *mut f64,
    ellipse_factor_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(confidence, confidence_stride)], [Array::output(ellipse_factor, ellipse_factor_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("ellipse_factor") }, count, &inputs, &outputs, status) }
}

/// A true direction counted from the north of a grid.
///
/// `true - convergence`, 0 to 360.
///
/// @param true_deg true direction, any finite number
/// @param convergence_deg angle from true to grid north at the place, positive east, -180 to 180
/// @param[out] grid_from_true_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: None.
/// Errors: A value outside its range.
/// Source: The definition of convergence.
///
/// Example: lubber_grid_from_true_deg(90.0, 30.0, &value) gives 60
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_grid_from_true_deg(
    true_deg: f64,
    convergence_deg: f64,
    grid_from_true_deg: *mut f64,
) -> i32 {
    let answer = || plain::grid_from_true_deg(true_deg, convergence_deg).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [grid_from_true_deg]) }
}

/// `lubber_grid_from_true_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_grid_from_true_deg_n(
    count: usize,
    true_deg: *const f64,
    true_deg_stride: isize,
    convergence_deg: *const f64,
    convergence_deg_stride: isize,
    grid_from_true_deg: *mut f64,
    grid_from_true_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(true_deg, true_deg_stride), Array::input(convergence_deg, convergence_deg_stride)], [Array::output(grid_from_true_deg, grid_from_true_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("grid_from_true_deg") }, count, &inputs, &outputs, status) }
}

/// A direction of a grid counted from true north.
///
/// `grid + convergence`, 0 to 360.
///
/// @param grid_deg direction from the grid's north, any finite number
/// @param convergence_deg angle from true to grid north at the place, positive east, -180 to 180
/// @param[out] true_from_grid_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: None.
/// Errors: A value outside its range.
/// Source: The definition of convergence.
///
/// Example: lubber_true_from_grid_deg(60.0, 30.0, &value) gives 90
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_true_from_grid_deg(
    grid_deg: f64,
    convergence_deg: f64,
    true_from_grid_deg: *mut f64,
) -> i32 {
    let answer = || plain::true_from_grid_deg(grid_deg, convergence_deg).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [true_from_grid_deg]) }
}

/// `lubber_true_from_grid_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_true_from_grid_deg_n(
    count: usize,
    grid_deg: *const f64,
    grid_deg_stride: isize,
    convergence_deg: *const f64,
    convergence_deg_stride: isize,
    true_from_grid_deg: *mut f64,
    true_from_grid_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(grid_deg, grid_deg_stride), Array::input(convergence_deg, convergence_deg_stride)], [Array::output(true_from_grid_deg, true_from_grid_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("true_from_grid_deg") }, count, &inputs, &outputs, status) }
}

/// The angle from true north to the north of the polar grid, positive east.
///
/// The longitude in the north, its negative in the south: the grid's north is the direction in which the meridian of Greenwich runs north.
///
/// @param lat_deg latitude, -90 to 90; its sign tells the pole
/// @param lon_deg longitude, any finite number
/// @param[out] polar_grid_convergence_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: Off the polar regions the grid is not used. At a pole the convergence goes with the longitude given.
/// Errors: A value outside its range.
/// Source: The grid of the Universal Polar Stereographic projection; grid variation of the World Magnetic Model.
///
/// Example: lubber_polar_grid_convergence_deg(80.0, 30.0, &value) gives 30
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_polar_grid_convergence_deg(
    lat_deg: f64,
    lon_deg: f64,
    polar_grid_convergence_deg: *mut f64,
) -> i32 {
    let answer = || plain::polar_grid_convergence_deg(lat_deg, lon_deg).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [polar_grid_convergence_deg]) }
}

/// `lubber_polar_grid_convergence_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_polar_grid_convergence_deg_n(
    count: usize,
    lat_deg: *const f64,
    lat_deg_stride: isize,
    lon_deg: *const f64,
    lon_deg_stride: isize,
    polar_grid_convergence_deg: *mut f64,
    polar_grid_convergence_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat_deg, lat_deg_stride), Array::input(lon_deg, lon_deg_stride)], [Array::output(polar_grid_convergence_deg, polar_grid_convergence_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("polar_grid_convergence_deg") }, count, &inputs, &outputs, status) }
}

/// The angle from true north to the north of a chart on Lambert's conformal cone, positive east.
///
/// `n (longitude - meridian)`, the difference reduced to half a circle either way, with the constant of the cone n from the parallels on WGS-84.
///
/// @param lon_deg longitude, any finite number
/// @param meridian_lon_deg longitude of the meridian whose north is the chart's, any finite number
/// @param parallel1_lat_deg one standard parallel, -90 to 90
/// @param parallel2_lat_deg the other, or the same again, -90 to 90
/// @param[out] lambert_grid_convergence_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: Parallels as far north as south make a cylinder: 0. With a pole for a parallel it is the polar grid.
/// Errors: A value outside its range.
/// Source: J. P. Snyder, Map Projections: A Working Manual, US Geological Survey Professional Paper 1395 (1987), equations 14-4, 15-8.
///
/// Example: lubber_lambert_grid_convergence_deg(-86.0, -96.0, 33.0, 45.0, &value) gives 6.30
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_lambert_grid_convergence_deg(
    lon_deg: f64,
    meridian_lon_deg: f64,
    parallel1_lat_deg: f64,
    parallel2_lat_deg: f64,
    lambert_grid_convergence_deg: *mut f64,
) -> i32 {
    let answer = || plain::lambert_grid_convergence_deg(lon_deg, meridian_lon_deg, parallel1_lat_deg, parallel2_lat_deg).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [lambert_grid_convergence_deg]) }
}

/// `lubber_lambert_grid_convergence_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_lambert_grid_convergence_deg_n(
    count: usize,
    lon_deg: *const f64,
    lon_deg_stride: isize,
    meridian_lon_deg: *const f64,
    meridian_lon_deg_stride: isize,
    parallel1_lat_deg: *const f64,
    parallel1_lat_deg_stride: isize,
    parallel2_lat_deg: *const f64,
    parallel2_lat_deg_stride: isize,
    lambert_grid_convergence_deg: *mut f64,
    lambert_grid_convergence_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lon_deg, lon_deg_stride), Array::input(meridian_lon_deg, meridian_lon_deg_stride), Array::input(parallel1_lat_deg, parallel1_lat_deg_stride), Array::input(parallel2_lat_deg, parallel2_lat_deg_stride)], [Array::output(lambert_grid_convergence_deg, lambert_grid_convergence_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("lambert_grid_convergence_deg") }, count, &inputs, &outputs, status) }
}

/// The angle from true north to the north of a map on the transverse Mercator projection, positive east.
///
/// On a sphere `atan(tan(l) sin(lat))`, `l` the longitude from the meridian; on WGS-84 with the conformal latitude and Krueger's series.
///
/// @param lat_deg latitude, -90 to 90
/// @param lon_deg longitude, any finite number
/// @param meridian_lon_deg longitude of the meridian whose north is the map's, within 60 degrees of `lon_deg`
/// @param[out] transverse_grid_convergence_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: 1e-13 degrees to 35 degrees from the meridian, 1e-11 to 45, 1e-9 to 60.
/// Degenerate cases: Zero on the meridian and on the equator. At a pole it goes with the longitude given.
/// Errors: A value outside its range, a place beyond 60 degrees from the meridian.
/// Source: C. F. F. Karney, Transverse Mercator with an accuracy of a few nanometers, Journal of Geodesy 85 (2011) 475-485, equations 7 to 11, 23 to 25.
///
/// Example: lubber_transverse_grid_convergence_deg(60.0, -6.0, -9.0, &value) gives 2.5987
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_transverse_grid_convergence_deg(
    lat_deg: f64,
    lon_deg: f64,
    meridian_lon_deg: f64,
    transverse_grid_convergence_deg: *mut f64,
) -> i32 {
    let answer = || plain::transverse_grid_convergence_deg(lat_deg, lon_deg, meridian_lon_deg).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [transverse_grid_convergence_deg]) }
}

/// `lubber_transverse_grid_convergence_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_transverse_grid_convergence_deg_n(
    count: usize,
    lat_deg: *const f64,
    lat_deg_stride: isize,
    lon_deg: *const f64,
    lon_deg_stride: isize,
    meridian_lon_deg: *const f64,
    meridian_lon_deg_stride: isize,
    transverse_grid_convergence_deg: *mut f64,
    transverse_grid_convergence_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat_deg, lat_deg_stride), Array::input(lon_deg, lon_deg_stride), Array::input(meridian_lon_deg, meridian_lon_deg_stride)], [Array::output(transverse_grid_convergence_deg, transverse_grid_convergence_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("transverse_grid_convergence_deg") }, count, &inputs, &outputs, status) }
}

/// The meridian of the zone of the Universal Transverse Mercator grid in which a place lies.
///
/// Zones are 6 degrees wide, but for those that are widened about Norway and Svalbard; a place between two belongs to the eastern one.
///
/// @param lat_deg latitude, -90 to 90
/// @param lon_deg longitude, any finite number
/// @param[out] utm_meridian_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Exact.
/// Degenerate cases: The grid is laid out from 80 degrees south to 84 north; toward the poles the zones go on, and the polar grid is used.
/// Errors: A value outside its range.
/// Source: NGA.STND.0037_2.0.0_GRIDS, Universal Grids and Grid Reference Systems (2014), section 3 (from memory).
///
/// Example: lubber_utm_meridian_deg(60.0, -10.0, &value) gives -9
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_utm_meridian_deg(
    lat_deg: f64,
    lon_deg: f64,
    utm_meridian_deg: *mut f64,
) -> i32 {
    let answer = || plain::utm_meridian_deg(lat_deg, lon_deg).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [utm_meridian_deg]) }
}

/// `lubber_utm_meridian_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_utm_meridian_deg_n(
    count: usize,
    lat_deg: *const f64,
    lat_deg_stride: isize,
    lon_deg: *const f64,
    lon_deg_stride: isize,
    utm_meridian_deg: *mut f64,
    utm_meridian_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat_deg, lat_deg_stride), Array::input(lon_deg, lon_deg_stride)], [Array::output(utm_meridian_deg, utm_meridian_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("utm_meridian_deg") }, count, &inputs, &outputs, status) }
}

/// How to enter a holding pattern, by the sector in which the heading lies.
///
/// With the angle from the heading to the outbound course counted positive to the side of the turns: from 0 to 70
/// degrees offset (sector 2, the teardrop), from 0 to -110 parallel (sector 1), else direct (sector 3). Within 5
/// degrees of a boundary the entry across it may be flown too.
///
/// @param heading_deg heading at which the fix is reached, any finite number
/// @param inbound_course_deg course flown to the fix in the pattern, against the same north
/// @param side which way the turns go: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
/// @param[out] entry The entry of the sector in which the heading lies: its number, LUBBER_HOLDING_ENTRY_PARALLEL, LUBBER_HOLDING_ENTRY_OFFSET, LUBBER_HOLDING_ENTRY_DIRECT; may be NULL
/// @param[out] also The entry across the boundary, LUBBER_HOLDING_ENTRY_PARALLEL, LUBBER_HOLDING_ENTRY_OFFSET, LUBBER_HOLDING_ENTRY_DIRECT, if the heading lies in the zone about it; else NaN; may be NULL
/// @param[out] to_outbound_deg From the heading to the outbound course, right positive; may be NULL
/// @param[out] to_boundary_deg Angle between the heading and the nearest boundary of two sectors, without its side; may be NULL
/// @param[out] first_course_deg The first course flown from the fix: the outbound course, 30 degrees off it into the holding side for an offset entry; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error.
/// Degenerate cases: On a boundary both entries are given: at 0 offset is named first, at 70 offset, at -110 parallel.
/// Errors: A value outside its range.
/// Source: CNATRA P-821 figure 3-8, P-801 figures 17A and 17B; the zone: FAA Aeronautical Information Manual (3 April 2014), 5-3-8 j 6 (d), CNATRA P-821
/// and ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 6 Chapter 1, from memory.
///
/// Example: lubber_holding_entry(15.0, 270.0, LUBBER_HOLDING_SIDE_RIGHT, &value, NULL, NULL, NULL, NULL) gives 3
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_holding_entry(
    heading_deg: f64,
    inbound_course_deg: f64,
    side: i32,
    entry: *mut f64,
    also: *mut f64,
    to_outbound_deg: *mut f64,
    to_boundary_deg: *mut f64,
    first_course_deg: *mut f64,
) -> i32 {
    let answer = || {
        if [heading_deg, inbound_course_deg].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 5]) }
        plain::holding_entry(heading_deg, inbound_course_deg, lubberline::procedure::HoldingSide::from_code("side", f64::from(side))?).map(|answer| [answer.entry, answer.also, answer.to_outbound_deg, answer.to_boundary_deg, answer.first_course_deg])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [entry, also, to_outbound_deg, to_boundary_deg, first_course_deg]) }
}

/// `lubber_holding_entry` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `side` is one code for all points: which way the turns go: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_holding_entry_n(
    count: usize,
    heading_deg: *const f64,
    heading_deg_stride: isize,
    inbound_course_deg: *const f64,
    inbound_course_deg_stride: isize,
    side: i32,
    entry: *mut f64,
    entry_stride: isize,
    also: *mut f64,
    also_stride: isize,
    to_outbound_deg: *mut f64,
    to_outbound_deg_stride: isize,
    to_boundary_deg: *mut f64,
    to_boundary_deg_stride: isize,
    first_course_deg: *mut f64,
    first_course_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let side = f64::from(side);
    let (inputs, outputs) = ([Array::input(heading_deg, heading_deg_stride), Array::input(inbound_course_deg, inbound_course_deg_stride), Array::input(&raw const side, 0)], [Array::output(entry, entry_stride), Array::output(also, also_stride), Array::output(to_outbound_deg, to_outbound_deg_stride), Array::output(to_boundary_deg, to_boundary_deg_stride), Array::output(first_course_deg, first_course_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("holding_entry") }, count, &inputs, &outputs, status) }
}

/// Which leg of a holding pattern is timed, and for how long.
///
/// One minute at or below 14 000 ft, a minute and a half above: of the outbound leg in still air by ICAO, of the
/// inbound leg by the FAA.
///
/// @param altitude_ft altitude or flight level, -50 000 to 300 000
/// @param authority whose timing: LUBBER_TIMING_AUTHORITY_ICAO, LUBBER_TIMING_AUTHORITY_FAA
/// @param[out] timed The leg that is timed, LUBBER_TIMED_LEG_INBOUND, LUBBER_TIMED_LEG_OUTBOUND, LUBBER_TIMED_LEG_OUTBOUND_FROM_LEVEL; may be NULL
/// @param[out] time_s Its time; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As published.
/// Degenerate cases: 14 000 ft belong to the lower band. Outbound the clock starts over or abeam the fix, whichever is later; where
/// abeam cannot be told, with wings level.
/// Errors: A value outside its range.
/// Source: ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 6 Chapter 1, as quoted; FAA Aeronautical Information Manual 5-3-8, edition not shown in the copy
/// read, and CNATRA T-6B FTI chapter 7.
///
/// Example: lubber_holding_timing(14001.0, LUBBER_TIMING_AUTHORITY_ICAO, NULL, &value) gives 90
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_holding_timing(
    altitude_ft: f64,
    authority: i32,
    timed: *mut f64,
    time_s: *mut f64,
) -> i32 {
    let answer = || {
        if [altitude_ft].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 2]) }
        plain::holding_timing(altitude_ft, lubberline::procedure::TimingAuthority::from_code("authority", f64::from(authority))?).map(|answer| [answer.timed, answer.time_s])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [timed, time_s]) }
}

/// `lubber_holding_timing` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `authority` is one code for all points: whose timing: LUBBER_TIMING_AUTHORITY_ICAO, LUBBER_TIMING_AUTHORITY_FAA
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_holding_timing_n(
    count: usize,
    altitude_ft: *const f64,
    altitude_ft_stride: isize,
    authority: i32,
    timed: *mut f64,
    timed_stride: isize,
    time_s: *mut f64,
    time_s_stride: isize,
    status: *mut i32,
) -> usize {
    let authority = f64::from(authority);
    let (inputs, outputs) = ([Array::input(altitude_ft, altitude_ft_stride), Array::input(&raw const authority, 0)], [Array::output(timed, timed_stride), Array::output(time_s, time_s_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("holding_timing") }, count, &inputs, &outputs, status) }
}

/// The greatest speed at which a holding pattern may be flown.
///
/// By authority and altitude, as published; a limit of both airspeed and Mach number means the lesser of the two.
///
/// @param altitude_ft altitude or flight level, -16 420 to 262 467
/// @param rule whose limit, with its edition: LUBBER_HOLDING_SPEED_RULE_FAA, LUBBER_HOLDING_SPEED_RULE_FAA_AIR_FORCE, LUBBER_HOLDING_SPEED_RULE_FAA_NAVY, LUBBER_HOLDING_SPEED_RULE_ICAO, LUBBER_HOLDING_SPEED_RULE_ICAO_TURBULENCE, LUBBER_HOLDING_SPEED_RULE_ICAO_CATEGORIES_A_B, LUBBER_HOLDING_SPEED_RULE_CANADA, LUBBER_HOLDING_SPEED_RULE_CANADA_PROPELLER, LUBBER_HOLDING_SPEED_RULE_CANADA_JET, LUBBER_HOLDING_SPEED_RULE_FAA_ICON, LUBBER_HOLDING_SPEED_RULE_FAA_CLIMB_IN, LUBBER_HOLDING_SPEED_RULE_FAA_PROPELLER_NINETIES, LUBBER_HOLDING_SPEED_RULE_FAA_JET_NINETIES, LUBBER_HOLDING_SPEED_RULE_ICAO_FIRST_EDITION_PROPELLER, LUBBER_HOLDING_SPEED_RULE_ICAO_FIRST_EDITION_JET, LUBBER_HOLDING_SPEED_RULE_CANADA_MILITARY, LUBBER_HOLDING_SPEED_RULE_CANADA_CLIMB
/// @param[out] indicated_kt The greatest indicated airspeed; NaN where only a Mach number or nothing limits; may be NULL
/// @param[out] mach The greatest Mach number; NaN where only an airspeed or nothing limits; may be NULL
/// @param[out] calibrated_kt The greatest calibrated airspeed that both leave, with the altitude taken for pressure altitude; NaN where nothing limits; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As published. Limits change: each alternative of the rule names its edition.
/// Degenerate cases: An altitude that bounds a band belongs to the band below it. Where nothing limits the speed, every output is NaN.
/// Errors: A value outside its range.
/// Source: FAA Aeronautical Information Manual (20 April 2023), 5-3-8 j 2; AFMAN 11-217V1 (3 January 2005), tables 10.1 and 18.4, the latter
/// after ICAO Doc 8168; Transport Canada Aeronautical Information Manual, RAC 10.7, before and since October 2018, quoted; the
/// FAA's of before 1998 and the first edition of ICAO Doc 8168, from memory.
///
/// Example: lubber_holding_speed(14000.0, LUBBER_HOLDING_SPEED_RULE_FAA, &value, NULL, NULL) gives 230
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_holding_speed(
    altitude_ft: f64,
    rule: i32,
    indicated_kt: *mut f64,
    mach: *mut f64,
    calibrated_kt: *mut f64,
) -> i32 {
    let answer = || {
        if [altitude_ft].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 3]) }
        plain::holding_speed(altitude_ft, lubberline::procedure::HoldingSpeedRule::from_code("rule", f64::from(rule))?).map(|answer| [answer.indicated_kt, answer.mach, answer.calibrated_kt])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [indicated_kt, mach, calibrated_kt]) }
}

/// `lubber_holding_speed` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `rule` is one code for all points: whose limit, with its edition: LUBBER_HOLDING_SPEED_RULE_FAA, LUBBER_HOLDING_SPEED_RULE_FAA_AIR_FORCE, LUBBER_HOLDING_SPEED_RULE_FAA_NAVY, LUBBER_HOLDING_SPEED_RULE_ICAO, LUBBER_HOLDING_SPEED_RULE_ICAO_TURBULENCE, LUBBER_HOLDING_SPEED_RULE_ICAO_CATEGORIES_A_B, LUBBER_HOLDING_SPEED_RULE_CANADA, LUBBER_HOLDING_SPEED_RULE_CANADA_PROPELLER, LUBBER_HOLDING_SPEED_RULE_CANADA_JET, LUBBER_HOLDING_SPEED_RULE_FAA_ICON, LUBBER_HOLDING_SPEED_RULE_FAA_CLIMB_IN, LUBBER_HOLDING_SPEED_RULE_FAA_PROPELLER_NINETIES, LUBBER_HOLDING_SPEED_RULE_FAA_JET_NINETIES, LUBBER_HOLDING_SPEED_RULE_ICAO_FIRST_EDITION_PROPELLER, LUBBER_HOLDING_SPEED_RULE_ICAO_FIRST_EDITION_JET, LUBBER_HOLDING_SPEED_RULE_CANADA_MILITARY, LUBBER_HOLDING_SPEED_RULE_CANADA_CLIMB
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_holding_speed_n(
    count: usize,
    altitude_ft: *const f64,
    altitude_ft_stride: isize,
    rule: i32,
    indicated_kt: *mut f64,
    indicated_kt_stride: isize,
    mach: *mut f64,
    mach_stride: isize,
    calibrated_kt: *mut f64,
    calibrated_kt_stride: isize,
    status: *mut i32,
) -> usize {
    let rule = f64::from(rule);
    let (inputs, outputs) = ([Array::input(altitude_ft, altitude_ft_stride), Array::input(&raw const rule, 0)], [Array::output(indicated_kt, indicated_kt_stride), Array::output(mach, mach_stride), Array::output(calibrated_kt, calibrated_kt_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("holding_speed") }, count, &inputs, &outputs, status) }
}

/// The turns of a holding pattern: standard rate or a bank, whichever needs less bank.
///
/// The bank is the lesser of 25 degrees (30 by the FAA without a flight director) and `atan(rate V / g)` at 3 degrees
/// per second.
///
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param rule whose limits: LUBBER_HOLDING_BANK_RULE_ICAO, LUBBER_HOLDING_BANK_RULE_FAA, LUBBER_HOLDING_BANK_RULE_FAA_FLIGHT_DIRECTOR
/// @param[out] bank_deg The bank that is flown; may be NULL
/// @param[out] turn_rate_deg_per_s The rate of turn at it; may be NULL
/// @param[out] radius_nm The radius in still air; may be NULL
/// @param[out] governed_by What governs the bank, LUBBER_GOVERNOR_BANK_LIMIT, LUBBER_GOVERNOR_TURN_RATE_LIMIT, LUBBER_GOVERNOR_ROLL_RATE, LUBBER_GOVERNOR_NO_TURN; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range.
/// Source: ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 6 Chapter 1, as quoted; FAA Aeronautical Information Manual (3 April 2014), 5-3-8 j 6 (b), and
/// (20 April 2023), 5-3-8 j.
///
/// Example: lubber_holding_turn(220.0, LUBBER_HOLDING_BANK_RULE_ICAO, NULL, &value, NULL, NULL) gives 2.32
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_holding_turn(
    true_airspeed_kt: f64,
    rule: i32,
    bank_deg: *mut f64,
    turn_rate_deg_per_s: *mut f64,
    radius_nm: *mut f64,
    governed_by: *mut f64,
) -> i32 {
    let answer = || {
        if [true_airspeed_kt].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 4]) }
        plain::holding_turn(true_airspeed_kt, lubberline::procedure::HoldingBankRule::from_code("rule", f64::from(rule))?).map(|answer| [answer.bank_deg, answer.turn_rate_deg_per_s, answer.radius_nm, answer.governed_by])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [bank_deg, turn_rate_deg_per_s, radius_nm, governed_by]) }
}

/// `lubber_holding_turn` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `rule` is one code for all points: whose limits: LUBBER_HOLDING_BANK_RULE_ICAO, LUBBER_HOLDING_BANK_RULE_FAA, LUBBER_HOLDING_BANK_RULE_FAA_FLIGHT_DIRECTOR
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_holding_turn_n(
    count: usize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    rule: i32,
    bank_deg: *mut f64,
    bank_deg_stride: isize,
    turn_rate_deg_per_s: *mut f64,
    turn_rate_deg_per_s_stride: isize,
    radius_nm: *mut f64,
    radius_nm_stride: isize,
    governed_by: *mut f64,
    governed_by_stride: isize,
    status: *mut i32,
) -> usize {
    let rule = f64::from(rule);
    let (inputs, outputs) = ([Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(&raw const rule, 0)], [Array::output(bank_deg, bank_deg_stride), Array::output(turn_rate_deg_per_s, turn_rate_deg_per_s_stride), Array::output(radius_nm, radius_nm_stride), Array::output(governed_by, governed_by_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("holding_turn") }, count, &inputs, &outputs, status) }
}

/// The DME reading at the end of the outbound leg of a holding pattern whose fix is a distance on a radial.
///
/// The reading at the fix is turned into ground distance; the leg ends so far before the fix and so far across, as
/// `holding_pattern` gives them in any wind; the distance there is turned back into slant range.
///
/// @param fix_dme_nm DME reading at the fix, 0 to 10 900
/// @param inbound whether the inbound leg is flown toward the station (inbound) or away from it (outbound): LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
/// @param before_fix_nm where the leg ends, before the fix along the inbound course, -10 000 to 10 000
/// @param across_nm where the leg ends, across the inbound course, -5000 to 5000
/// @param height_ft height above the station's antenna, -60 000 to 400 000
/// @param[out] outbound_end_dme_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: That of `slant_range_nm`; the pattern is laid out on a plane.
/// Degenerate cases: Held away from the station, a leg that ends beyond it counts on.
/// Errors: A value outside its range, a reading below the height.
/// Source: The right triangle on the ground, and the law of cosines between the radii of the earth and of the flight.
///
/// Example: lubber_outbound_end_dme_nm(30.0, LUBBER_RADIAL_FLOWN_INBOUND, 4.7, 4.9, 14000.0, &value) gives 35.03
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_outbound_end_dme_nm(
    fix_dme_nm: f64,
    inbound: i32,
    before_fix_nm: f64,
    across_nm: f64,
    height_ft: f64,
    outbound_end_dme_nm: *mut f64,
) -> i32 {
    let answer = || {
        if [fix_dme_nm, before_fix_nm, across_nm, height_ft].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 1]) }
        plain::outbound_end_dme_nm(fix_dme_nm, lubberline::lead::RadialFlown::from_code("inbound", f64::from(inbound))?, before_fix_nm, across_nm, height_ft).map(|answer| [answer])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [outbound_end_dme_nm]) }
}

/// `lubber_outbound_end_dme_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `inbound` is one code for all points: whether the inbound leg is flown toward the station (inbound) or away from it (outbound): LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_outbound_end_dme_nm_n(
    count: usize,
    fix_dme_nm: *const f64,
    fix_dme_nm_stride: isize,
    inbound: i32,
    before_fix_nm: *const f64,
    before_fix_nm_stride: isize,
    across_nm: *const f64,
    across_nm_stride: isize,
    height_ft: *const f64,
    height_ft_stride: isize,
    outbound_end_dme_nm: *mut f64,
    outbound_end_dme_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let inbound = f64::from(inbound);
    let (inputs, outputs) = ([Array::input(fix_dme_nm, fix_dme_nm_stride), Array::input(&raw const inbound, 0), Array::input(before_fix_nm, before_fix_nm_stride), Array::input(across_nm, across_nm_stride), Array::input(height_ft, height_ft_stride)], [Array::output(outbound_end_dme_nm, outbound_end_dme_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("outbound_end_dme_nm") }, count, &inputs, &outputs, status) }
}

/// The limiting outbound DME distance of procedure design, exact and rounded as published.
///
/// `sqrt((Ds + ds)^2 + 4 r^2 + h^2)` in the published form, seen over a curved earth here. Held toward the station it
/// is rounded up to a whole mile, but down if the decimal is below 0.25 (at or below 14 000 ft) or below 0.5 (above).
///
/// @param fix_dme_nm DME reading at the fix, 0 to 10 900
/// @param inbound whether the inbound leg is flown toward the station (inbound) or away from it (outbound): LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
/// @param outbound_leg_nm length of the outbound leg, 0 to 10 900
/// @param turn_radius_nm radius of the turn, above 0 to 1000
/// @param altitude_ft altitude, -16 500 to 400 000
/// @param station_elevation_ft elevation of the station's antenna, -16 500 to 60 000
/// @param[out] limiting_dme_nm DME reading at the end of the still-air outbound leg; may be NULL
/// @param[out] rounded_nm To a whole nautical mile by the published rule; NaN for a pattern held away from the station, whose rule was not read; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: The curve of the earth adds up to 0.01 NM to the flat form within 60 NM and 14 000 ft.
/// Degenerate cases: Held away from the station the sign of the leg changes.
/// Errors: A value outside its range, a reading below the height.
/// Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 4 Chapter 3 Appendix C, 3.3.4 c) and d).
///
/// Example: lubber_limiting_dme(30.0, LUBBER_RADIAL_FLOWN_INBOUND, 4.677, 2.461, 14000.0, 0.0, NULL, &value) gives 35
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_limiting_dme(
    fix_dme_nm: f64,
    inbound: i32,
    outbound_leg_nm: f64,
    turn_radius_nm: f64,
    altitude_ft: f64,
    station_elevation_ft: f64,
    limiting_dme_nm: *mut f64,
    rounded_nm: *mut f64,
) -> i32 {
    let answer = || {
        if [fix_dme_nm, outbound_leg_nm, turn_radius_nm, altitude_ft, station_elevation_ft].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 2]) }
        plain::limiting_dme(fix_dme_nm, lubberline::lead::RadialFlown::from_code("inbound", f64::from(inbound))?, outbound_leg_nm, turn_radius_nm, altitude_ft, station_elevation_ft).map(|answer| [answer.limiting_dme_nm, answer.rounded_nm])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [limiting_dme_nm, rounded_nm]) }
}

/// `lubber_limiting_dme` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `inbound` is one code for all points: whether the inbound leg is flown toward the station (inbound) or away from it (outbound): LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_limiting_dme_n(
    count: usize,
    fix_dme_nm: *const f64,
    fix_dme_nm_stride: isize,
    inbound: i32,
    outbound_leg_nm: *const f64,
    outbound_leg_nm_stride: isize,
    turn_radius_nm: *const f64,
    turn_radius_nm_stride: isize,
    altitude_ft: *const f64,
    altitude_ft_stride: isize,
    station_elevation_ft: *const f64,
    station_elevation_ft_stride: isize,
    limiting_dme_nm: *mut f64,
    limiting_dme_nm_stride: isize,
    rounded_nm: *mut f64,
    rounded_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let inbound = f64::from(inbound);
    let (inputs, outputs) = ([Array::input(fix_dme_nm, fix_dme_nm_stride), Array::input(&raw const inbound, 0), Array::input(outbound_leg_nm, outbound_leg_nm_stride), Array::input(turn_radius_nm, turn_radius_nm_stride), Array::input(altitude_ft, altitude_ft_stride), Array::input(station_elevation_ft, station_elevation_ft_stride)], [Array::output(limiting_dme_nm, limiting_dme_nm_stride), Array::output(rounded_nm, rounded_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("limiting_dme") }, count, &inputs, &outputs, status) }
}

/// Heading, distance and time to intercept a course from beside it at an angle, in wind, and the lead of the turn onto it.
///
/// `|x| / sin(angle)` to the course and `|x| / tan(angle)` along it, flown on the heading that holds that track; the
/// turn onto the course begins its lead before, as `lead_nm` has it.
///
/// @param course_deg the course, any finite number
/// @param cross_track_nm where the aircraft is, positive right of the course, -5000 to 5000
/// @param intercept_angle_deg angle at which the course is intercepted, above 0 to 90
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param wind_from_deg where the wind blows from, against the same north
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param bank_limit_deg greatest bank, above 0 below 90
/// @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
/// @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
/// @param[out] track_deg Direction over the ground to the course; may be NULL
/// @param[out] heading_deg Heading that holds it; may be NULL
/// @param[out] groundspeed_kt Groundspeed on the way; may be NULL
/// @param[out] distance_nm Distance over the ground to the course; may be NULL
/// @param[out] time_s Time to the course; may be NULL
/// @param[out] along_nm Distance gained along the course on the way; may be NULL
/// @param[out] lead_nm Distance before the course, along the track, at which the turn onto it begins; may be NULL
/// @param[out] distance_to_roll_in_nm Distance over the ground to where the turn begins; negative where that is behind; may be NULL
/// @param[out] time_to_roll_in_s Time to where the turn begins; negative where that is behind; may be NULL
/// @param[out] cross_track_at_roll_in_nm Cross-track at which the turn begins, positive right of the course; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error on a plane; 1e-4 of the distance on the ellipsoid within 60 NM, with the cross-track measured on
/// it.
/// Degenerate cases: On the course the track is the course; distance, time and lead are zero. Closer than the turn needs, the distance
/// to roll-in is negative.
/// Errors: A value outside its range, a course or a way to it that the airspeed cannot hold.
/// Source: The right triangle of cross-track and track; the lead as `lead_nm`.
///
/// Example: lubber_intercept(90.0, -4.0, 30.0, 180.0, 40.0, 35.0, 25.0, 3.0, 5.0, NULL, &value, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL) gives 109.0
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_intercept(
    course_deg: f64,
    cross_track_nm: f64,
    intercept_angle_deg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
    track_deg: *mut f64,
    heading_deg: *mut f64,
    groundspeed_kt: *mut f64,
    distance_nm: *mut f64,
    time_s: *mut f64,
    along_nm: *mut f64,
    lead_nm: *mut f64,
    distance_to_roll_in_nm: *mut f64,
    time_to_roll_in_s: *mut f64,
    cross_track_at_roll_in_nm: *mut f64,
) -> i32 {
    let answer = || plain::intercept(course_deg, cross_track_nm, intercept_angle_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.track_deg, answer.heading_deg, answer.groundspeed_kt, answer.distance_nm, answer.time_s, answer.along_nm, answer.lead_nm, answer.distance_to_roll_in_nm, answer.time_to_roll_in_s, answer.cross_track_at_roll_in_nm]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [track_deg, heading_deg, groundspeed_kt, distance_nm, time_s, along_nm, lead_nm, distance_to_roll_in_nm, time_to_roll_in_s, cross_track_at_roll_in_nm]) }
}

/// `lubber_intercept` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_intercept_n(
    count: usize,
    course_deg: *const f64,
    course_deg_stride: isize,
    cross_track_nm: *const f64,
    cross_track_nm_stride: isize,
    intercept_angle_deg: *const f64,
    intercept_angle_deg_stride: isize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    bank_limit_deg: *const f64,
    bank_limit_deg_stride: isize,
    turn_rate_limit_deg_per_s: *const f64,
    turn_rate_limit_deg_per_s_stride: isize,
    roll_rate_deg_per_s: *const f64,
    roll_rate_deg_per_s_stride: isize,
    track_deg: *mut f64,
    track_deg_stride: isize,
    heading_deg: *mut f64,
    heading_deg_stride: isize,
    groundspeed_kt: *mut f64,
    groundspeed_kt_stride: isize,
    distance_nm: *mut f64,
    distance_nm_stride: isize,
    time_s: *mut f64,
    time_s_stride: isize,
    along_nm: *mut f64,
    along_nm_stride: isize,
    lead_nm: *mut f64,
    lead_nm_stride: isize,
    distance_to_roll_in_nm: *mut f64,
    distance_to_roll_in_nm_stride: isize,
    time_to_roll_in_s: *mut f64,
    time_to_roll_in_s_stride: isize,
    cross_track_at_roll_in_nm: *mut f64,
    cross_track_at_roll_in_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(course_deg, course_deg_stride), Array::input(cross_track_nm, cross_track_nm_stride), Array::input(intercept_angle_deg, intercept_angle_deg_stride), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride), Array::input(bank_limit_deg, bank_limit_deg_stride), Array::input(turn_rate_limit_deg_per_s, turn_rate_limit_deg_per_s_stride), Array::input(roll_rate_deg_per_s, roll_rate_deg_per_s_stride)], [Array::output(track_deg, track_deg_stride), Array::output(heading_deg, heading_deg_stride), Array::output(groundspeed_kt, groundspeed_kt_stride), Array::output(distance_nm, distance_nm_stride), Array::output(time_s, time_s_stride), Array::output(along_nm, along_nm_stride), Array::output(lead_nm, lead_nm_stride), Array::output(distance_to_roll_in_nm, distance_to_roll_in_nm_stride), Array::output(time_to_roll_in_s, time_to_roll_in_s_stride), Array::output(cross_track_at_roll_in_nm, cross_track_at_roll_in_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("intercept") }, count, &inputs, &outputs, status) }
}

/// Where the turn onto a radial begins, from another radial along any track, in wind and with roll: distance, radial and needle.
///
/// With p, t and w the aircraft, the track and the radial from the station, the track crosses the radial at `s = -(p
/// x w) / (t x w)`; the turn begins its lead L before that, as `lead_nm` has it.
///
/// @param radial_deg radial on which the aircraft is, any finite number
/// @param distance_nm its ground distance from the station, 0 to 10 900
/// @param wanted_radial_deg radial to intercept
/// @param flown whether the radial is then flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
/// @param track_deg direction flown over the ground to the radial, against the station's north
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param wind_from_deg where the wind blows from, against the same north
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param bank_limit_deg greatest bank, above 0 below 90
/// @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
/// @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
/// @param[out] heading_deg Heading that holds the track to the radial; may be NULL
/// @param[out] groundspeed_kt Groundspeed on it; may be NULL
/// @param[out] crossing_distance_nm Distance from the station at which the track crosses the radial; may be NULL
/// @param[out] distance_to_crossing_nm Distance along the track to there; may be NULL
/// @param[out] lead_nm Distance before it at which the turn begins; may be NULL
/// @param[out] time_to_roll_in_s Time to where the turn begins; negative where that is behind; may be NULL
/// @param[out] radial_at_roll_in_deg Radial on which the turn begins; may be NULL
/// @param[out] distance_at_roll_in_nm Ground distance from the station at which the turn begins; may be NULL
/// @param[out] needle_at_roll_in_deg Degrees of the needle from its centre there, with the course set that is to be flown; positive when the course lies to the right; may be NULL
/// @param[out] cross_track_at_roll_in_nm Cross-track at which the turn begins, positive right of the course; may be NULL
/// @param[out] distance_at_roll_out_nm Distance from the station at which the wings are level on the radial; negative past the station; may be NULL
/// @param[out] turn_duration_s From roll-in to wings level; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error on a plane about the station; 1e-4 of the distance within 60 NM.
/// Degenerate cases: On the radial, and closer to it than the lead, the time to roll-in is negative. Distances count along the ground.
/// Errors: A value outside its range, a track that is parallel to the radial, leads away from it or crosses its line on the
/// other side of the station, a reversal, a wind that the airspeed cannot hold.
/// Source: Derived from the crossing of two lines and the equilibrium of a coordinated turn.
///
/// Example: lubber_radial_intercept(180.0, 30.0, 200.0, LUBBER_RADIAL_FLOWN_INBOUND, 335.0, 240.0, 250.0, 40.0, 25.0, 3.0, 5.0, NULL, NULL, NULL, NULL, NULL, NULL, NULL, &value, NULL, NULL, NULL, NULL) gives 18.61
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_radial_intercept(
    radial_deg: f64,
    distance_nm: f64,
    wanted_radial_deg: f64,
    flown: i32,
    track_deg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
    heading_deg: *mut f64,
    groundspeed_kt: *mut f64,
    crossing_distance_nm: *mut f64,
    distance_to_crossing_nm: *mut f64,
    lead_nm: *mut f64,
    time_to_roll_in_s: *mut f64,
    radial_at_roll_in_deg: *mut f64,
    distance_at_roll_in_nm: *mut f64,
    needle_at_roll_in_deg: *mut f64,
    cross_track_at_roll_in_nm: *mut f64,
    distance_at_roll_out_nm: *mut f64,
    turn_duration_s: *mut f64,
) -> i32 {
    let answer = || {
        if [radial_deg, distance_nm, wanted_radial_deg, track_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 12]) }
        plain::radial_intercept(radial_deg, distance_nm, wanted_radial_deg, lubberline::lead::RadialFlown::from_code("flown", f64::from(flown))?, track_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.heading_deg, answer.groundspeed_kt, answer.crossing_distance_nm, answer.distance_to_crossing_nm, answer.lead_nm, answer.time_to_roll_in_s, answer.radial_at_roll_in_deg, answer.distance_at_roll_in_nm, answer.needle_at_roll_in_deg, answer.cross_track_at_roll_in_nm, answer.distance_at_roll_out_nm, answer.turn_duration_s])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [heading_deg, groundspeed_kt, crossing_distance_nm, distance_to_crossing_nm, lead_nm, time_to_roll_in_s, radial_at_roll_in_deg, distance_at_roll_in_nm, needle_at_roll_in_deg, cross_track_at_roll_in_nm, distance_at_roll_out_nm, turn_duration_s]) }
}

/// `lubber_radial_intercept` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `flown` is one code for all points: whether the radial is then flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_radial_intercept_n(
    count: usize,
    radial_deg: *const f64,
    radial_deg_stride: isize,
    distance_nm: *const f64,
    distance_nm_stride: isize,
    wanted_radial_deg: *const f64,
    wanted_radial_deg_stride: isize,
    flown: i32,
    track_deg: *const f64,
    track_deg_stride: isize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    bank_limit_deg: *const f64,
    bank_limit_deg_stride: isize,
    turn_rate_limit_deg_per_s: *const f64,
    turn_rate_limit_deg_per_s_stride: isize,
    roll_rate_deg_per_s: *const f64,
    roll_rate_deg_per_s_stride: isize,
    heading_deg: *mut f64,
    heading_deg_stride: isize,
    groundspeed_kt: *mut f64,
    groundspeed_kt_stride: isize,
    crossing_distance_nm: *mut f64,
    crossing_distance_nm_stride: isize,
    distance_to_crossing_nm: *mut f64,
    distance_to_crossing_nm_stride: isize,
    lead_nm: *mut f64,
    lead_nm_stride: isize,
    time_to_roll_in_s: *mut f64,
    time_to_roll_in_s_stride: isize,
    radial_at_roll_in_deg: *mut f64,
    radial_at_roll_in_deg_stride: isize,
    distance_at_roll_in_nm: *mut f64,
    distance_at_roll_in_nm_stride: isize,
    needle_at_roll_in_deg: *mut f64,
    needle_at_roll_in_deg_stride: isize,
    cross_track_at_roll_in_nm: *mut f64,
    cross_track_at_roll_in_nm_stride: isize,
    distance_at_roll_out_nm: *mut f64,
    distance_at_roll_out_nm_stride: isize,
    turn_duration_s: *mut f64,
    turn_duration_s_stride: isize,
    status: *mut i32,
) -> usize {
    let flown = f64::from(flown);
    let (inputs, outputs) = ([Array::input(radial_deg, radial_deg_stride), Array::input(distance_nm, distance_nm_stride), Array::input(wanted_radial_deg, wanted_radial_deg_stride), Array::input(&raw const flown, 0), Array::input(track_deg, track_deg_stride), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride), Array::input(bank_limit_deg, bank_limit_deg_stride), Array::input(turn_rate_limit_deg_per_s, turn_rate_limit_deg_per_s_stride), Array::input(roll_rate_deg_per_s, roll_rate_deg_per_s_stride)], [Array::output(heading_deg, heading_deg_stride), Array::output(groundspeed_kt, groundspeed_kt_stride), Array::output(crossing_distance_nm, crossing_distance_nm_stride), Array::output(distance_to_crossing_nm, distance_to_crossing_nm_stride), Array::output(lead_nm, lead_nm_stride), Array::output(time_to_roll_in_s, time_to_roll_in_s_stride), Array::output(radial_at_roll_in_deg, radial_at_roll_in_deg_stride), Array::output(distance_at_roll_in_nm, distance_at_roll_in_nm_stride), Array::output(needle_at_roll_in_deg, needle_at_roll_in_deg_stride), Array::output(cross_track_at_roll_in_nm, cross_track_at_roll_in_nm_stride), Array::output(distance_at_roll_out_nm, distance_at_roll_out_nm_stride), Array::output(turn_duration_s, turn_duration_s_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("radial_intercept") }, count, &inputs, &outputs, status) }
}

/// The intercept of a radial toward the station at twice the degrees to it, exactly.
///
/// From the distance d and a degrees off the radial, the way to it is as long as what is left to the station: `d / (2
/// cos(a))`.
///
/// @param radial_deg radial on which the aircraft is, any finite number
/// @param distance_nm its ground distance from the station, 0 to 10 900
/// @param wanted_radial_deg radial to intercept
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param wind_from_deg where the wind blows from, against the same north
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param[out] track_deg Direction over the ground to the radial; may be NULL
/// @param[out] heading_deg Heading that holds it; may be NULL
/// @param[out] distance_nm_out Distance to the radial, and from there to the station; may be NULL
/// @param[out] time_s Time to the radial; may be NULL
/// @param[out] time_to_station_s Time from there to the station; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error on a plane. Turns are left out.
/// Degenerate cases: On the radial the way is the radial, and half the distance is left.
/// Errors: A value outside its range, more than 45 degrees off the radial, a course that the airspeed cannot hold.
/// Source: The isosceles triangle; the technique: CNATRA P-340 chapter 6, 609.
///
/// Example: lubber_double_angle_intercept(150.0, 24.0, 135.0, 200.0, 20.0, 50.0, NULL, NULL, &value, NULL, NULL) gives 12.42
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_double_angle_intercept(
    radial_deg: f64,
    distance_nm: f64,
    wanted_radial_deg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    track_deg: *mut f64,
    heading_deg: *mut f64,
    distance_nm_out: *mut f64,
    time_s: *mut f64,
    time_to_station_s: *mut f64,
) -> i32 {
    let answer = || plain::double_angle_intercept(radial_deg, distance_nm, wanted_radial_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt).map(|answer| [answer.track_deg, answer.heading_deg, answer.distance_nm, answer.time_s, answer.time_to_station_s]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [track_deg, heading_deg, distance_nm_out, time_s, time_to_station_s]) }
}

/// `lubber_double_angle_intercept` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_double_angle_intercept_n(
    count: usize,
    radial_deg: *const f64,
    radial_deg_stride: isize,
    distance_nm: *const f64,
    distance_nm_stride: isize,
    wanted_radial_deg: *const f64,
    wanted_radial_deg_stride: isize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    track_deg: *mut f64,
    track_deg_stride: isize,
    heading_deg: *mut f64,
    heading_deg_stride: isize,
    distance_nm_out: *mut f64,
    distance_nm_out_stride: isize,
    time_s: *mut f64,
    time_s_stride: isize,
    time_to_station_s: *mut f64,
    time_to_station_s_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(radial_deg, radial_deg_stride), Array::input(distance_nm, distance_nm_stride), Array::input(wanted_radial_deg, wanted_radial_deg_stride), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride)], [Array::output(track_deg, track_deg_stride), Array::output(heading_deg, heading_deg_stride), Array::output(distance_nm_out, distance_nm_out_stride), Array::output(time_s, time_s_stride), Array::output(time_to_station_s, time_to_station_s_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("double_angle_intercept") }, count, &inputs, &outputs, status) }
}

/// The angle at which to intercept a radial by rule: twice the degrees to it, at least 20 and at most 90.
///
/// `2 * degrees`, within 20 and 90.
///
/// @param off_radial_deg degrees to the radial, either way, reduced to half a circle
/// @param[out] rule_intercept_angle_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: A rule.
/// Degenerate cases: On the radial it still says 20 degrees.
/// Errors: A value outside its range.
/// Source: FAA-H-8083-15 (Instrument Flying Handbook), from memory.
///
/// Example: lubber_rule_intercept_angle_deg(15.0, &value) gives 30
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_intercept_angle_deg(
    off_radial_deg: f64,
    rule_intercept_angle_deg: *mut f64,
) -> i32 {
    let answer = || plain::rule_intercept_angle_deg(off_radial_deg).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_intercept_angle_deg]) }
}

/// `lubber_rule_intercept_angle_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_intercept_angle_deg_n(
    count: usize,
    off_radial_deg: *const f64,
    off_radial_deg_stride: isize,
    rule_intercept_angle_deg: *mut f64,
    rule_intercept_angle_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(off_radial_deg, off_radial_deg_stride)], [Array::output(rule_intercept_angle_deg, rule_intercept_angle_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_intercept_angle_deg") }, count, &inputs, &outputs, status) }
}

/// The lead onto a radial in radials by the sixty-to-one rule and a share for the angle of the intercept.
///
/// `(60 / D) r`, times a third at 45 degrees, two thirds at 60, nothing up to 30; in between interpolated.
///
/// @param distance_nm distance from the station, above 0 to 5000
/// @param turn_radius_nm radius of the turn, above 0 to 5000
/// @param intercept_angle_deg angle of the intercept, above 0 to 90
/// @param[out] rule_intercept_lead_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: The exact share is `1 - cos(angle)`: 0.13 at 30 degrees, 0.29 at 45, 0.5 at 60. See `radial_intercept`.
/// Degenerate cases: Close to the station it gives more radials than there are.
/// Errors: A value outside its range.
/// Source: A third at 45 degrees: CNATRA P-1215, course intercepts. That, two thirds at 60, the whole at 90 and very little below 30: CNATRA P-1265
/// p. 2-11 (5-99), there of arcs. The library's own reading: nothing to 30 degrees, and straight lines from 30 to 45, to 60 and to the whole at 90.
///
/// Example: lubber_rule_intercept_lead_deg(15.0, 2.5, 45.0, &value) gives 3.33
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_intercept_lead_deg(
    distance_nm: f64,
    turn_radius_nm: f64,
    intercept_angle_deg: f64,
    rule_intercept_lead_deg: *mut f64,
) -> i32 {
    let answer = || plain::rule_intercept_lead_deg(distance_nm, turn_radius_nm, intercept_angle_deg).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_intercept_lead_deg]) }
}

/// `lubber_rule_intercept_lead_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_intercept_lead_deg_n(
    count: usize,
    distance_nm: *const f64,
    distance_nm_stride: isize,
    turn_radius_nm: *const f64,
    turn_radius_nm_stride: isize,
    intercept_angle_deg: *const f64,
    intercept_angle_deg_stride: isize,
    rule_intercept_lead_deg: *mut f64,
    rule_intercept_lead_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(distance_nm, distance_nm_stride), Array::input(turn_radius_nm, turn_radius_nm_stride), Array::input(intercept_angle_deg, intercept_angle_deg_stride)], [Array::output(rule_intercept_lead_deg, rule_intercept_lead_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_intercept_lead_deg") }, count, &inputs, &outputs, status) }
}

/// Distance before a fix at which to begin the turn, so as to roll out on the outbound course.
///
/// The displacement of the turn through the air (roll in at the roll rate, hold the bank, roll out wings level) plus wind times
/// duration is a vector D; with u and v the unit vectors of the inbound and outbound course the lead is `(D x v) / (u x v)`.
/// In still air with an instant roll that is `radius tan(change / 2)`.
///
/// @param inbound_course_deg course flown to the fix, any finite number
/// @param outbound_course_deg course flown from it, against the same north
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param wind_from_deg where the wind blows from, against the same north
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param bank_limit_deg greatest bank, above 0 below 90
/// @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
/// @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
/// @param[out] lead_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: 1.5e-5 NM against a fine integration over the ellipsoid for leads to 10 NM, 1.2e-4 NM to 20 NM.
/// Arrays and single calls agree to 1e-12 of the radius and the rolls of the turn, over the sine of the change of course.
/// Degenerate cases: No change of course has a lead of zero. The turn goes the short way.
/// Errors: A value outside its range, a reversal, a wind that the airspeed cannot hold.
/// Source: Derived from the equilibrium of a coordinated turn; in still air the distance of turn anticipation of ICAO Doc 8168 Vol II
/// (5th ed. 2006), Part III Section 3 Chapter 8, 8.1.5.1.1.
///
/// Example: lubber_lead_nm(40.0, 110.0, 430.0, 270.0, 60.0, 25.0, 3.0, 5.0, &value) gives 5.41
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_lead_nm(
    inbound_course_deg: f64,
    outbound_course_deg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
    lead_nm: *mut f64,
) -> i32 {
    let answer = || plain::lead_nm(inbound_course_deg, outbound_course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [lead_nm]) }
}

/// `lubber_lead_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_lead_nm_n(
    count: usize,
    inbound_course_deg: *const f64,
    inbound_course_deg_stride: isize,
    outbound_course_deg: *const f64,
    outbound_course_deg_stride: isize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    bank_limit_deg: *const f64,
    bank_limit_deg_stride: isize,
    turn_rate_limit_deg_per_s: *const f64,
    turn_rate_limit_deg_per_s_stride: isize,
    roll_rate_deg_per_s: *const f64,
    roll_rate_deg_per_s_stride: isize,
    lead_nm: *mut f64,
    lead_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(inbound_course_deg, inbound_course_deg_stride), Array::input(outbound_course_deg, outbound_course_deg_stride), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride), Array::input(bank_limit_deg, bank_limit_deg_stride), Array::input(turn_rate_limit_deg_per_s, turn_rate_limit_deg_per_s_stride), Array::input(roll_rate_deg_per_s, roll_rate_deg_per_s_stride)], [Array::output(lead_nm, lead_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("lead_nm") }, count, &inputs, &outputs, status) }
}

/// The DME reading at which to begin the turn at a station, so as to roll out on the outbound radial.
///
/// The slant range from the station to the point at the lead before it: `sqrt(h^2 + 4 R (R + h) sin^2(lead / 2R))`, with the
/// lead as `lubber_lead_nm` gives it.
///
/// @param inbound_course_deg course flown to the fix, any finite number
/// @param outbound_course_deg course flown from it, against the same north
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param wind_from_deg where the wind blows from, against the same north
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param bank_limit_deg greatest bank, above 0 below 90
/// @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
/// @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
/// @param height_above_station_ft height above the station's antenna, -60 000 to 400 000
/// @param[out] dme_at_roll_in_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: That of `lubber_lead_nm`, and within 1.1 m for the slant.
/// Degenerate cases: No change of course reads the height: it begins overhead.
/// Errors: As `lubber_lead_nm`.
/// Source: As `lubber_lead_nm`, and the law of cosines between the radii of the earth and of the flight.
///
/// Example: lubber_dme_at_roll_in_nm(40.0, 110.0, 430.0, 270.0, 60.0, 25.0, 3.0, 5.0, 33000.0, &value) gives 7.67
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_dme_at_roll_in_nm(
    inbound_course_deg: f64,
    outbound_course_deg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
    height_above_station_ft: f64,
    dme_at_roll_in_nm: *mut f64,
) -> i32 {
    let answer = || plain::dme_at_roll_in_nm(inbound_course_deg, outbound_course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, height_above_station_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [dme_at_roll_in_nm]) }
}

/// `lubber_dme_at_roll_in_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_dme_at_roll_in_nm_n(
    count: usize,
    inbound_course_deg: *const f64,
    inbound_course_deg_stride: isize,
    outbound_course_deg: *const f64,
    outbound_course_deg_stride: isize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    bank_limit_deg: *const f64,
    bank_limit_deg_stride: isize,
    turn_rate_limit_deg_per_s: *const f64,
    turn_rate_limit_deg_per_s_stride: isize,
    roll_rate_deg_per_s: *const f64,
    roll_rate_deg_per_s_stride: isize,
    height_above_station_ft: *const f64,
    height_above_station_ft_stride: isize,
    dme_at_roll_in_nm: *mut f64,
    dme_at_roll_in_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(inbound_course_deg, inbound_course_deg_stride), Array::input(outbound_course_deg, outbound_course_deg_stride), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride), Array::input(bank_limit_deg, bank_limit_deg_stride), Array::input(turn_rate_limit_deg_per_s, turn_rate_limit_deg_per_s_stride), Array::input(roll_rate_deg_per_s, roll_rate_deg_per_s_stride), Array::input(height_above_station_ft, height_above_station_ft_stride)], [Array::output(dme_at_roll_in_nm, dme_at_roll_in_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("dme_at_roll_in_nm") }, count, &inputs, &outputs, status) }
}

/// Distance of turn anticipation in still air with an instant roll.
///
/// `r tan(change / 2)`.
///
/// @param turn_radius_nm radius of the turn, above 0 to 5000
/// @param course_change_deg change of course, either way, reduced to half a circle
/// @param[out] turn_anticipation_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error.
/// Degenerate cases: It grows without bound toward a reversal.
/// Errors: A value outside its range, or a reversal.
/// Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 3 Chapter 8, 8.1.5.1.1.
///
/// Example: lubber_turn_anticipation_nm(6.33, 90.0, &value) gives 6.330
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_turn_anticipation_nm(
    turn_radius_nm: f64,
    course_change_deg: f64,
    turn_anticipation_nm: *mut f64,
) -> i32 {
    let answer = || plain::turn_anticipation_nm(turn_radius_nm, course_change_deg).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [turn_anticipation_nm]) }
}

/// `lubber_turn_anticipation_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_turn_anticipation_nm_n(
    count: usize,
    turn_radius_nm: *const f64,
    turn_radius_nm_stride: isize,
    course_change_deg: *const f64,
    course_change_deg_stride: isize,
    turn_anticipation_nm: *mut f64,
    turn_anticipation_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(turn_radius_nm, turn_radius_nm_stride), Array::input(course_change_deg, course_change_deg_stride)], [Array::output(turn_anticipation_nm, turn_anticipation_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("turn_anticipation_nm") }, count, &inputs, &outputs, status) }
}

/// Distance from the station at which a radial flown inbound is left for an arc.
///
/// `sqrt(D^2 + 2 D r)` with D the radius of the arc and r that of the turn, in still air with an instant roll.
///
/// @param arc_radius_nm ground distance of the arc from the station, above 0 to 5000
/// @param turn_radius_nm radius of the turn, above 0 to 5000
/// @param[out] arc_entry_inbound_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Exact in the plane.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range, or a turn that does not fit.
/// Source: Derived: the turn is a circle tangent to the radial and to the arc.
///
/// Example: lubber_arc_entry_inbound_nm(10.0, 2.5, &value) gives 12.25
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_entry_inbound_nm(
    arc_radius_nm: f64,
    turn_radius_nm: f64,
    arc_entry_inbound_nm: *mut f64,
) -> i32 {
    let answer = || plain::arc_entry_inbound_nm(arc_radius_nm, turn_radius_nm).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [arc_entry_inbound_nm]) }
}

/// `lubber_arc_entry_inbound_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_entry_inbound_nm_n(
    count: usize,
    arc_radius_nm: *const f64,
    arc_radius_nm_stride: isize,
    turn_radius_nm: *const f64,
    turn_radius_nm_stride: isize,
    arc_entry_inbound_nm: *mut f64,
    arc_entry_inbound_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(arc_radius_nm, arc_radius_nm_stride), Array::input(turn_radius_nm, turn_radius_nm_stride)], [Array::output(arc_entry_inbound_nm, arc_entry_inbound_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("arc_entry_inbound_nm") }, count, &inputs, &outputs, status) }
}

/// Distance from the station at which a radial flown outbound is left for an arc.
///
/// `sqrt(D^2 - 2 D r)` with D the radius of the arc and r that of the turn, in still air with an instant roll.
///
/// @param arc_radius_nm ground distance of the arc from the station, above 0 to 5000
/// @param turn_radius_nm radius of the turn, above 0 to 5000
/// @param[out] arc_entry_outbound_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Exact in the plane.
/// Degenerate cases: For an arc of twice the turn radius the turn begins over the station.
/// Errors: A value outside its range, or a turn that does not fit.
/// Source: Derived: the turn is a circle tangent to the radial and to the arc.
///
/// Example: lubber_arc_entry_outbound_nm(10.0, 2.5, &value) gives 7.07
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_entry_outbound_nm(
    arc_radius_nm: f64,
    turn_radius_nm: f64,
    arc_entry_outbound_nm: *mut f64,
) -> i32 {
    let answer = || plain::arc_entry_outbound_nm(arc_radius_nm, turn_radius_nm).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [arc_entry_outbound_nm]) }
}

/// `lubber_arc_entry_outbound_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_arc_entry_outbound_nm_n(
    count: usize,
    arc_radius_nm: *const f64,
    arc_radius_nm_stride: isize,
    turn_radius_nm: *const f64,
    turn_radius_nm_stride: isize,
    arc_entry_outbound_nm: *mut f64,
    arc_entry_outbound_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(arc_radius_nm, arc_radius_nm_stride), Array::input(turn_radius_nm, turn_radius_nm_stride)], [Array::output(arc_entry_outbound_nm, arc_entry_outbound_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("arc_entry_outbound_nm") }, count, &inputs, &outputs, status) }
}

/// Angle at the station by which the turn off an arc begins before a radial to be flown inbound.
///
/// `asin(r / (D - r))` with D the radius of the arc and r that of the turn, in still air with an instant roll.
///
/// @param arc_radius_nm ground distance of the arc from the station, above 0 to 5000
/// @param turn_radius_nm radius of the turn, above 0 to 5000
/// @param[out] lead_radial_inbound_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Exact in the plane.
/// Degenerate cases: For an arc of twice the turn radius it is 90 degrees.
/// Errors: A value outside its range, or a turn that does not fit.
/// Source: Derived: the turn is a circle tangent to the radial and to the arc.
///
/// Example: lubber_lead_radial_inbound_deg(12.0, 0.6, &value) gives 3.02
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_lead_radial_inbound_deg(
    arc_radius_nm: f64,
    turn_radius_nm: f64,
    lead_radial_inbound_deg: *mut f64,
) -> i32 {
    let answer = || plain::lead_radial_inbound_deg(arc_radius_nm, turn_radius_nm).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [lead_radial_inbound_deg]) }
}

/// `lubber_lead_radial_inbound_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_lead_radial_inbound_deg_n(
    count: usize,
    arc_radius_nm: *const f64,
    arc_radius_nm_stride: isize,
    turn_radius_nm: *const f64,
    turn_radius_nm_stride: isize,
    lead_radial_inbound_deg: *mut f64,
    lead_radial_inbound_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(arc_radius_nm, arc_radius_nm_stride), Array::input(turn_radius_nm, turn_radius_nm_stride)], [Array::output(lead_radial_inbound_deg, lead_radial_inbound_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("lead_radial_inbound_deg") }, count, &inputs, &outputs, status) }
}

/// Angle at the station by which the turn off an arc begins before a radial to be flown outbound.
///
/// `asin(r / (D + r))` with D the radius of the arc and r that of the turn, in still air with an instant roll.
///
/// @param arc_radius_nm ground distance of the arc from the station, above 0 to 5000
/// @param turn_radius_nm radius of the turn, above 0 to 5000
/// @param[out] lead_radial_outbound_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Exact in the plane.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range, or a turn that does not fit.
/// Source: Derived: the turn is a circle tangent to the radial and to the arc.
///
/// Example: lubber_lead_radial_outbound_deg(12.0, 0.6, &value) gives 2.73
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_lead_radial_outbound_deg(
    arc_radius_nm: f64,
    turn_radius_nm: f64,
    lead_radial_outbound_deg: *mut f64,
) -> i32 {
    let answer = || plain::lead_radial_outbound_deg(arc_radius_nm, turn_radius_nm).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [lead_radial_outbound_deg]) }
}

/// `lubber_lead_radial_outbound_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_lead_radial_outbound_deg_n(
    count: usize,
    arc_radius_nm: *const f64,
    arc_radius_nm_stride: isize,
    turn_radius_nm: *const f64,
    turn_radius_nm_stride: isize,
    lead_radial_outbound_deg: *mut f64,
    lead_radial_outbound_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(arc_radius_nm, arc_radius_nm_stride), Array::input(turn_radius_nm, turn_radius_nm_stride)], [Array::output(lead_radial_outbound_deg, lead_radial_outbound_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("lead_radial_outbound_deg") }, count, &inputs, &outputs, status) }
}

/// What the two letters of a leg say: how the path is flown, and what ends it.
///
/// Most codes are one letter for the path and one for the end; IF, AF, RF and PI name their path by both.
///
/// @param leg the leg's code: LUBBER_LEG_CODE_INITIAL_FIX, LUBBER_LEG_CODE_TRACK_TO_FIX, LUBBER_LEG_CODE_COURSE_TO_FIX, LUBBER_LEG_CODE_DIRECT_TO_FIX, LUBBER_LEG_CODE_ARC_TO_FIX, LUBBER_LEG_CODE_RADIUS_TO_FIX, LUBBER_LEG_CODE_FIX_TO_ALTITUDE, LUBBER_LEG_CODE_FIX_TO_DISTANCE, LUBBER_LEG_CODE_FIX_TO_DME, LUBBER_LEG_CODE_FIX_TO_MANUAL, LUBBER_LEG_CODE_COURSE_TO_ALTITUDE, LUBBER_LEG_CODE_COURSE_TO_DME, LUBBER_LEG_CODE_COURSE_TO_INTERCEPT, LUBBER_LEG_CODE_COURSE_TO_RADIAL, LUBBER_LEG_CODE_HEADING_TO_ALTITUDE, LUBBER_LEG_CODE_HEADING_TO_DME, LUBBER_LEG_CODE_HEADING_TO_INTERCEPT, LUBBER_LEG_CODE_HEADING_TO_MANUAL, LUBBER_LEG_CODE_HEADING_TO_RADIAL, LUBBER_LEG_CODE_HOLD_TO_ALTITUDE, LUBBER_LEG_CODE_HOLD_TO_FIX, LUBBER_LEG_CODE_HOLD_TO_MANUAL, LUBBER_LEG_CODE_PROCEDURE_TURN
/// @param[out] path How its path is flown: a code of LUBBER_LEG_PATH_INITIAL, LUBBER_LEG_PATH_TRACK, LUBBER_LEG_PATH_COURSE, LUBBER_LEG_PATH_DIRECT, LUBBER_LEG_PATH_DME_ARC, LUBBER_LEG_PATH_RADIUS, LUBBER_LEG_PATH_COURSE_FROM_FIX, LUBBER_LEG_PATH_HEADING, LUBBER_LEG_PATH_HOLD, LUBBER_LEG_PATH_PROCEDURE_TURN; may be NULL
/// @param[out] end What ends it: a code of LUBBER_LEG_END_FIX, LUBBER_LEG_END_ALTITUDE, LUBBER_LEG_END_DISTANCE, LUBBER_LEG_END_DME, LUBBER_LEG_END_MANUAL, LUBBER_LEG_END_INTERCEPT, LUBBER_LEG_END_RADIAL; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Exact.
/// Degenerate cases: None.
/// Errors: A code that is none.
/// Source: ARINC 424 path-and-terminator concept, as listed in AIXM 5.1, CodeSegmentPathBaseType; FAA Aeronautical Information Manual 1-2-1, edition
/// not shown in the copy read.
///
/// Example: lubber_leg_meaning(LUBBER_LEG_CODE_COURSE_TO_DME, &value, NULL) gives 2
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_leg_meaning(
    leg: i32,
    path: *mut f64,
    end: *mut f64,
) -> i32 {
    let answer = || {
        if [].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 2]) }
        plain::leg_meaning(lubberline::procedure::LegCode::from_code("leg", f64::from(leg))?).map(|answer| [answer.path, answer.end])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [path, end]) }
}

/// `lubber_leg_meaning` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `leg` is one code for all points: the leg's code: LUBBER_LEG_CODE_INITIAL_FIX, LUBBER_LEG_CODE_TRACK_TO_FIX, LUBBER_LEG_CODE_COURSE_TO_FIX, LUBBER_LEG_CODE_DIRECT_TO_FIX, LUBBER_LEG_CODE_ARC_TO_FIX, LUBBER_LEG_CODE_RADIUS_TO_FIX, LUBBER_LEG_CODE_FIX_TO_ALTITUDE, LUBBER_LEG_CODE_FIX_TO_DISTANCE, LUBBER_LEG_CODE_FIX_TO_DME, LUBBER_LEG_CODE_FIX_TO_MANUAL, LUBBER_LEG_CODE_COURSE_TO_ALTITUDE, LUBBER_LEG_CODE_COURSE_TO_DME, LUBBER_LEG_CODE_COURSE_TO_INTERCEPT, LUBBER_LEG_CODE_COURSE_TO_RADIAL, LUBBER_LEG_CODE_HEADING_TO_ALTITUDE, LUBBER_LEG_CODE_HEADING_TO_DME, LUBBER_LEG_CODE_HEADING_TO_INTERCEPT, LUBBER_LEG_CODE_HEADING_TO_MANUAL, LUBBER_LEG_CODE_HEADING_TO_RADIAL, LUBBER_LEG_CODE_HOLD_TO_ALTITUDE, LUBBER_LEG_CODE_HOLD_TO_FIX, LUBBER_LEG_CODE_HOLD_TO_MANUAL, LUBBER_LEG_CODE_PROCEDURE_TURN
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_leg_meaning_n(
    count: usize,
    leg: i32,
    path: *mut f64,
    path_stride: isize,
    end: *mut f64,
    end_stride: isize,
    status: *mut i32,
) -> usize {
    let leg = f64::from(leg);
    let (inputs, outputs) = ([Array::input(&raw const leg, 0)], [Array::output(path, path_stride), Array::output(end, end_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("leg_meaning") }, count, &inputs, &outputs, status) }
}

/// Mach number from calibrated airspeed; the temperature plays no part.
///
/// `M = sqrt(5 ((q/p + 1)^(2/7) - 1))` with `q = p0 ((1 + 0.2 (Vc/a0)^2)^3.5 - 1)`; each side above its Mach 1
/// by Rayleigh's pitot formula.
///
/// @param cas_kt calibrated airspeed, 0 to 5000
/// @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
/// @param[out] mach_from_cas the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding (1e-14 of the result, as much again between arrays and single calls), for air of constant heat ratio: good to about Mach 5.
/// Degenerate cases: Zero gives zero.
/// Errors: A value outside its range, or a result beyond Mach 10.
/// Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
/// for the pitot pressure above Mach 1.
///
/// Example: lubber_mach_from_cas(280.0, 35000.0, &value) gives 0.8213
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_mach_from_cas(
    cas_kt: f64,
    pressure_altitude_ft: f64,
    mach_from_cas: *mut f64,
) -> i32 {
    let answer = || plain::mach_from_cas(cas_kt, pressure_altitude_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [mach_from_cas]) }
}

/// `lubber_mach_from_cas` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_mach_from_cas_n(
    count: usize,
    cas_kt: *const f64,
    cas_kt_stride: isize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    mach_from_cas: *mut f64,
    mach_from_cas_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(cas_kt, cas_kt_stride), Array::input(pressure_altitude_ft, pressure_altitude_ft_stride)], [Array::output(mach_from_cas, mach_from_cas_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("mach_from_cas") }, count, &inputs, &outputs, status) }
}

/// Calibrated airspeed from Mach number: the inverse of `lubber_mach_from_cas`.
///
/// The impact pressure at that Mach number, read as if at standard sea level.
///
/// @param mach Mach number, 0 to 10
/// @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
/// @param[out] cas_from_mach_kt the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.
/// Degenerate cases: Zero gives zero.
/// Errors: A value outside its range, or a result beyond 5000 kt or Mach 10.
/// Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
/// for the pitot pressure above Mach 1.
///
/// Example: lubber_cas_from_mach_kt(0.78, 35000.0, &value) gives 264.42
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_cas_from_mach_kt(
    mach: f64,
    pressure_altitude_ft: f64,
    cas_from_mach_kt: *mut f64,
) -> i32 {
    let answer = || plain::cas_from_mach_kt(mach, pressure_altitude_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [cas_from_mach_kt]) }
}

/// `lubber_cas_from_mach_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_cas_from_mach_kt_n(
    count: usize,
    mach: *const f64,
    mach_stride: isize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    cas_from_mach_kt: *mut f64,
    cas_from_mach_kt_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(mach, mach_stride), Array::input(pressure_altitude_ft, pressure_altitude_ft_stride)], [Array::output(cas_from_mach_kt, cas_from_mach_kt_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("cas_from_mach_kt") }, count, &inputs, &outputs, status) }
}

/// True airspeed from Mach number.
///
/// `V = M a`, with the speed of sound `a = sqrt(1.4 R T)`.
///
/// @param mach Mach number, 0 to 10
/// @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
/// @param isa_deviation_k warmer than standard by this, -150 to 150
/// @param[out] tas_from_mach_kt the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.
/// Degenerate cases: Zero gives zero.
/// Errors: A value outside its range, or a result beyond 5000 kt or Mach 10.
/// Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
/// for the pitot pressure above Mach 1.
///
/// Example: lubber_tas_from_mach_kt(0.78, 35000.0, 0.0, &value) gives 449.61
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_tas_from_mach_kt(
    mach: f64,
    pressure_altitude_ft: f64,
    isa_deviation_k: f64,
    tas_from_mach_kt: *mut f64,
) -> i32 {
    let answer = || plain::tas_from_mach_kt(mach, pressure_altitude_ft, isa_deviation_k).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [tas_from_mach_kt]) }
}

/// `lubber_tas_from_mach_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_tas_from_mach_kt_n(
    count: usize,
    mach: *const f64,
    mach_stride: isize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    isa_deviation_k: *const f64,
    isa_deviation_k_stride: isize,
    tas_from_mach_kt: *mut f64,
    tas_from_mach_kt_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(mach, mach_stride), Array::input(pressure_altitude_ft, pressure_altitude_ft_stride), Array::input(isa_deviation_k, isa_deviation_k_stride)], [Array::output(tas_from_mach_kt, tas_from_mach_kt_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("tas_from_mach_kt") }, count, &inputs, &outputs, status) }
}

/// Mach number from true airspeed.
///
/// `M = V/a`, with the speed of sound `a = sqrt(1.4 R T)`.
///
/// @param tas_kt true airspeed, 0 to 5000
/// @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
/// @param isa_deviation_k warmer than standard by this, -150 to 150
/// @param[out] mach_from_tas the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.
/// Degenerate cases: Zero gives zero.
/// Errors: A value outside its range, or a result beyond Mach 10.
/// Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
/// for the pitot pressure above Mach 1.
///
/// Example: lubber_mach_from_tas(450.0, 35000.0, 0.0, &value) gives 0.7807
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_mach_from_tas(
    tas_kt: f64,
    pressure_altitude_ft: f64,
    isa_deviation_k: f64,
    mach_from_tas: *mut f64,
) -> i32 {
    let answer = || plain::mach_from_tas(tas_kt, pressure_altitude_ft, isa_deviation_k).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [mach_from_tas]) }
}

/// `lubber_mach_from_tas` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_mach_from_tas_n(
    count: usize,
    tas_kt: *const f64,
    tas_kt_stride: isize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    isa_deviation_k: *const f64,
    isa_deviation_k_stride: isize,
    mach_from_tas: *mut f64,
    mach_from_tas_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(tas_kt, tas_kt_stride), Array::input(pressure_altitude_ft, pressure_altitude_ft_stride), Array::input(isa_deviation_k, isa_deviation_k_stride)], [Array::output(mach_from_tas, mach_from_tas_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("mach_from_tas") }, count, &inputs, &outputs, status) }
}

/// The earth's magnetic field at a place and date, by the World Magnetic Model.
///
/// Schmidt semi-normalised spherical harmonics of degree and order 12, in double precision: the model of 2020 before 2025, that of 2025 from
/// then on.
///
/// @param lat_deg latitude, -90 to 90
/// @param lon_deg longitude, any finite number
/// @param altitude_ft altitude above mean sea level, -16 500 to 400 000
/// @param decimal_year date as a year and its fraction, 2020 to 2035
/// @param[out] declination_deg Angle from true to magnetic north, positive east: variation; may be NULL
/// @param[out] inclination_deg Dip below the horizontal; may be NULL
/// @param[out] horizontal_nt Horizontal field; may be NULL
/// @param[out] north_nt Field toward true north; may be NULL
/// @param[out] east_nt Field toward east; may be NULL
/// @param[out] down_nt Field downward; may be NULL
/// @param[out] total_nt The whole field; may be NULL
/// @param[out] declination_change_deg Change of the declination in a year; may be NULL
/// @param[out] inclination_change_deg Change of the inclination in a year; may be NULL
/// @param[out] horizontal_change_nt Change of the horizontal field in a year; may be NULL
/// @param[out] north_change_nt Change of the field toward true north in a year; may be NULL
/// @param[out] east_change_nt Change of the field toward east in a year; may be NULL
/// @param[out] down_change_nt Change of the field downward in a year; may be NULL
/// @param[out] total_change_nt Change of the whole field in a year; may be NULL
/// @param[out] declination_uncertainty_deg One standard deviation of the declination; may be NULL
/// @param[out] grid_variation_deg Declination from the north of the polar grid; NaN between 55 degrees of latitude, where that is not used; may be NULL
/// @param[out] zone How far a compass can be trusted: 0 clear, 1 caution, 2 blackout, as in LUBBER_MAGNETIC_ZONE_CLEAR, LUBBER_MAGNETIC_ZONE_CAUTION, LUBBER_MAGNETIC_ZONE_BLACKOUT; may be NULL
/// @param[out] in_date 1 if the date lies in the years the models are made for, 2020 to 2030, else 0; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: The arithmetic to 1e-8 nT, and so far arrays and single calls agree, angles and what follows from them as far as that turns or changes
/// them. The model: one standard deviation of 137 nT north, 89 east, 141 down.
/// Degenerate cases: Between 55 degrees of latitude there is no grid variation (NaN). At a pole the components are those of the meridian of the longitude given. About the magnetic poles, where `zone` is not 0, and out of
/// date the declination must not be relied on.
/// Errors: A value outside its range.
/// Source: The US/UK World Magnetic Model for 2025-2030: Technical Report, NOAA NCEI and BGS (2024).
///
/// Example: lubber_magnetic_field(-80.0, 240.0, 0.0, 2027.5, &value, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL) gives 68.49
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_magnetic_field(
    lat_deg: f64,
    lon_deg: f64,
    altitude_ft: f64,
    decimal_year: f64,
    declination_deg: *mut f64,
    inclination_deg: *mut f64,
    horizontal_nt: *mut f64,
    north_nt: *mut f64,
    east_nt: *mut f64,
    down_nt: *mut f64,
    total_nt: *mut f64,
    declination_change_deg: *mut f64,
    inclination_change_deg: *mut f64,
    horizontal_change_nt: *mut f64,
    north_change_nt: *mut f64,
    east_change_nt: *mut f64,
    down_change_nt: *mut f64,
    total_change_nt: *mut f64,
    declination_uncertainty_deg: *mut f64,
    grid_variation_deg: *mut f64,
    zone: *mut f64,
    in_date: *mut f64,
) -> i32 {
    let answer = || plain::magnetic_field(lat_deg, lon_deg, altitude_ft, decimal_year).map(|answer| [answer.declination_deg, answer.inclination_deg, answer.horizontal_nt, answer.north_nt, answer.east_nt, answer.down_nt, answer.total_nt, answer.declination_change_deg, answer.inclination_change_deg, answer.horizontal_change_nt, answer.north_change_nt, answer.east_change_nt, answer.down_change_nt, answer.total_change_nt, answer.declination_uncertainty_deg, answer.grid_variation_deg, answer.zone, answer.in_date]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [declination_deg, inclination_deg, horizontal_nt, north_nt, east_nt, down_nt, total_nt, declination_change_deg, inclination_change_deg, horizontal_change_nt, north_change_nt, east_change_nt, down_change_nt, total_change_nt, declination_uncertainty_deg, grid_variation_deg, zone, in_date]) }
}

/// `lubber_magnetic_field` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_magnetic_field_n(
    count: usize,
    lat_deg: *const f64,
    lat_deg_stride: isize,
    lon_deg: *const f64,
    lon_deg_stride: isize,
    altitude_ft: *const f64,
    altitude_ft_stride: isize,
    decimal_year: *const f64,
    decimal_year_stride: isize,
    declination_deg: *mut f64,
    declination_deg_stride: isize,
    inclination_deg: *mut f64,
    inclination_deg_stride: isize,
    horizontal_nt: *mut f64,
    horizontal_nt_stride: isize,
    north_nt: *mut f64,
    north_nt_stride: isize,
    east_nt: *mut f64,
    east_nt_stride: isize,
    down_nt: *mut f64,
    down_nt_stride: isize,
    total_nt: *mut f64,
    total_nt_stride: isize,
    declination_change_deg: *mut f64,
    declination_change_deg_stride: isize,
    inclination_change_deg: *mut f64,
    inclination_change_deg_stride: isize,
    horizontal_change_nt: *mut f64,
    horizontal_change_nt_stride: isize,
    north_change_nt: *mut f64,
    north_change_nt_stride: isize,
    east_change_nt: *mut f64,
    east_change_nt_stride: isize,
    down_change_nt: *mut f64,
    down_change_nt_stride: isize,
    total_change_nt: *mut f64,
    total_change_nt_stride: isize,
    declination_uncertainty_deg: *mut f64,
    declination_uncertainty_deg_stride: isize,
    grid_variation_deg: *mut f64,
    grid_variation_deg_stride: isize,
    zone: *mut f64,
    zone_stride: isize,
    in_date: *mut f64,
    in_date_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat_deg, lat_deg_stride), Array::input(lon_deg, lon_deg_stride), Array::input(altitude_ft, altitude_ft_stride), Array::input(decimal_year, decimal_year_stride)], [Array::output(declination_deg, declination_deg_stride), Array::output(inclination_deg, inclination_deg_stride), Array::output(horizontal_nt, horizontal_nt_stride), Array::output(north_nt, north_nt_stride), Array::output(east_nt, east_nt_stride), Array::output(down_nt, down_nt_stride), Array::output(total_nt, total_nt_stride), Array::output(declination_change_deg, declination_change_deg_stride), Array::output(inclination_change_deg, inclination_change_deg_stride), Array::output(horizontal_change_nt, horizontal_change_nt_stride), Array::output(north_change_nt, north_change_nt_stride), Array::output(east_change_nt, east_change_nt_stride), Array::output(down_change_nt, down_change_nt_stride), Array::output(total_change_nt, total_change_nt_stride), Array::output(declination_uncertainty_deg, declination_uncertainty_deg_stride), Array::output(grid_variation_deg, grid_variation_deg_stride), Array::output(zone, zone_stride), Array::output(in_date, in_date_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("magnetic_field") }, count, &inputs, &outputs, status) }
}

/// Magnetic variation (declination) at a place and date, positive east.
///
/// The declination of `magnetic_field`.
///
/// @param lat_deg latitude, -90 to 90
/// @param lon_deg longitude, any finite number
/// @param altitude_ft altitude above mean sea level, -16 500 to 400 000
/// @param decimal_year date as a year and its fraction, 2020 to 2035
/// @param[out] variation_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As `magnetic_field`. Arrays and single calls agree to 1e-8 nT across the horizontal field, as far as that turns the declination.
/// Degenerate cases: As `magnetic_field`. Near the magnetic poles (caution and blackout zones) and out of date it warns of nothing itself: `zone` and `in_date` of
/// `magnetic_field` say so.
/// Errors: A value outside its range.
/// Source: As `magnetic_field`.
///
/// Example: lubber_variation_deg(-80.0, 240.0, 0.0, 2027.5, &value) gives 68.49
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_variation_deg(
    lat_deg: f64,
    lon_deg: f64,
    altitude_ft: f64,
    decimal_year: f64,
    variation_deg: *mut f64,
) -> i32 {
    let answer = || plain::variation_deg(lat_deg, lon_deg, altitude_ft, decimal_year).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [variation_deg]) }
}

/// `lubber_variation_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_variation_deg_n(
    count: usize,
    lat_deg: *const f64,
    lat_deg_stride: isize,
    lon_deg: *const f64,
    lon_deg_stride: isize,
    altitude_ft: *const f64,
    altitude_ft_stride: isize,
    decimal_year: *const f64,
    decimal_year_stride: isize,
    variation_deg: *mut f64,
    variation_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat_deg, lat_deg_stride), Array::input(lon_deg, lon_deg_stride), Array::input(altitude_ft, altitude_ft_stride), Array::input(decimal_year, decimal_year_stride)], [Array::output(variation_deg, variation_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("variation_deg") }, count, &inputs, &outputs, status) }
}

/// A calendar date as a year and its elapsed fraction, as `magnetic_field` takes it.
///
/// The days elapsed since the year began, of 365, or 366 in a leap year of the Gregorian calendar.
///
/// @param year year, whole, 2020 to 2034
/// @param month month, whole, 1 to 12
/// @param day day of the month from 1, with its elapsed fraction: 2.5 is noon of the second
/// @param[out] decimal_year the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: None.
/// Errors: A value outside its range, a date that the calendar has not.
/// Source: The Gregorian calendar.
///
/// Example: lubber_decimal_year(2026.0, 7.0, 2.5, &value) gives 2026.5000
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_decimal_year(
    year: f64,
    month: f64,
    day: f64,
    decimal_year: *mut f64,
) -> i32 {
    let answer = || plain::decimal_year(year, month, day).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [decimal_year]) }
}

/// `lubber_decimal_year` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_decimal_year_n(
    count: usize,
    year: *const f64,
    year_stride: isize,
    month: *const f64,
    month_stride: isize,
    day: *const f64,
    day_stride: isize,
    decimal_year: *mut f64,
    decimal_year_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(year, year_stride), Array::input(month, month_stride), Array::input(day, day_stride)], [Array::output(decimal_year, decimal_year_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("decimal_year") }, count, &inputs, &outputs, status) }
}

/// A true direction counted from magnetic north.
///
/// `true - variation`, 0 to 360; variation is positive east.
///
/// @param true_deg true direction, any finite number
/// @param variation_deg magnetic variation, positive east, -180 to 180
/// @param[out] magnetic_from_true_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: None.
/// Errors: A value outside its range.
/// Source: The definition of variation.
///
/// Example: lubber_magnetic_from_true_deg(5.0, 12.0, &value) gives 353
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_magnetic_from_true_deg(
    true_deg: f64,
    variation_deg: f64,
    magnetic_from_true_deg: *mut f64,
) -> i32 {
    let answer = || plain::magnetic_from_true_deg(true_deg, variation_deg).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [magnetic_from_true_deg]) }
}

/// `lubber_magnetic_from_true_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_magnetic_from_true_deg_n(
    count: usize,
    true_deg: *const f64,
    true_deg_stride: isize,
    variation_deg: *const f64,
    variation_deg_stride: isize,
    magnetic_from_true_deg: *mut f64,
    magnetic_from_true_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(true_deg, true_deg_stride), Array::input(variation_deg, variation_deg_stride)], [Array::output(magnetic_from_true_deg, magnetic_from_true_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("magnetic_from_true_deg") }, count, &inputs, &outputs, status) }
}

/// A magnetic direction counted from true north.
///
/// `magnetic + variation`, 0 to 360; variation is positive east.
///
/// @param magnetic_deg magnetic direction, any finite number
/// @param variation_deg magnetic variation, positive east, -180 to 180
/// @param[out] true_from_magnetic_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: None.
/// Errors: A value outside its range.
/// Source: The definition of variation.
///
/// Example: lubber_true_from_magnetic_deg(353.0, 12.0, &value) gives 5
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_true_from_magnetic_deg(
    magnetic_deg: f64,
    variation_deg: f64,
    true_from_magnetic_deg: *mut f64,
) -> i32 {
    let answer = || plain::true_from_magnetic_deg(magnetic_deg, variation_deg).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [true_from_magnetic_deg]) }
}

/// `lubber_true_from_magnetic_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_true_from_magnetic_deg_n(
    count: usize,
    magnetic_deg: *const f64,
    magnetic_deg_stride: isize,
    variation_deg: *const f64,
    variation_deg_stride: isize,
    true_from_magnetic_deg: *mut f64,
    true_from_magnetic_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(magnetic_deg, magnetic_deg_stride), Array::input(variation_deg, variation_deg_stride)], [Array::output(true_from_magnetic_deg, true_from_magnetic_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("true_from_magnetic_deg") }, count, &inputs, &outputs, status) }
}

/// How far a station's radials read more than the magnetic bearing of the same direction, today.
///
/// `variation - declination`, reduced to half a circle either way: the station's north was set up with its declination, and the field has moved
/// on.
///
/// @param station_declination_deg the station's declination, positive east, -180 to 180
/// @param variation_deg today's magnetic variation there, positive east, -180 to 180
/// @param[out] station_misalignment_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: None.
/// Errors: A value outside its range.
/// Source: The definitions of declination and variation.
///
/// Example: lubber_station_misalignment_deg(-6.0, -3.5, &value) gives 2.5
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_station_misalignment_deg(
    station_declination_deg: f64,
    variation_deg: f64,
    station_misalignment_deg: *mut f64,
) -> i32 {
    let answer = || plain::station_misalignment_deg(station_declination_deg, variation_deg).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [station_misalignment_deg]) }
}

/// `lubber_station_misalignment_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_station_misalignment_deg_n(
    count: usize,
    station_declination_deg: *const f64,
    station_declination_deg_stride: isize,
    variation_deg: *const f64,
    variation_deg_stride: isize,
    station_misalignment_deg: *mut f64,
    station_misalignment_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(station_declination_deg, station_declination_deg_stride), Array::input(variation_deg, variation_deg_stride)], [Array::output(station_misalignment_deg, station_misalignment_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("station_misalignment_deg") }, count, &inputs, &outputs, status) }
}

/// A true direction from a station as a radial, which is counted from the station's north.
///
/// `true - declination`, 0 to 360.
///
/// @param true_deg true direction from the station, any finite number
/// @param station_declination_deg the station's declination, positive east, -180 to 180
/// @param[out] radial_from_true_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: None.
/// Errors: A value outside its range.
/// Source: The definition of a station's declination.
///
/// Example: lubber_radial_from_true_deg(49.5, -6.0, &value) gives 56
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_radial_from_true_deg(
    true_deg: f64,
    station_declination_deg: f64,
    radial_from_true_deg: *mut f64,
) -> i32 {
    let answer = || plain::radial_from_true_deg(true_deg, station_declination_deg).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [radial_from_true_deg]) }
}

/// `lubber_radial_from_true_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_radial_from_true_deg_n(
    count: usize,
    true_deg: *const f64,
    true_deg_stride: isize,
    station_declination_deg: *const f64,
    station_declination_deg_stride: isize,
    radial_from_true_deg: *mut f64,
    radial_from_true_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(true_deg, true_deg_stride), Array::input(station_declination_deg, station_declination_deg_stride)], [Array::output(radial_from_true_deg, radial_from_true_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("radial_from_true_deg") }, count, &inputs, &outputs, status) }
}

/// A radial counted from true north: the true direction from the station.
///
/// `radial + declination`, 0 to 360.
///
/// @param radial_deg radial, any finite number
/// @param station_declination_deg the station's declination, positive east, -180 to 180
/// @param[out] true_from_radial_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: None.
/// Errors: A value outside its range.
/// Source: The definition of a station's declination.
///
/// Example: lubber_true_from_radial_deg(56.0, -6.0, &value) gives 50
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_true_from_radial_deg(
    radial_deg: f64,
    station_declination_deg: f64,
    true_from_radial_deg: *mut f64,
) -> i32 {
    let answer = || plain::true_from_radial_deg(radial_deg, station_declination_deg).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [true_from_radial_deg]) }
}

/// `lubber_true_from_radial_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_true_from_radial_deg_n(
    count: usize,
    radial_deg: *const f64,
    radial_deg_stride: isize,
    station_declination_deg: *const f64,
    station_declination_deg_stride: isize,
    true_from_radial_deg: *mut f64,
    true_from_radial_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(radial_deg, radial_deg_stride), Array::input(station_declination_deg, station_declination_deg_stride)], [Array::output(true_from_radial_deg, true_from_radial_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("true_from_radial_deg") }, count, &inputs, &outputs, status) }
}

/// The point of the line at a constant distance beside a course, abeam of a place along the course.
///
/// Square to the course at that place, by the distance, on the WGS-84 ellipsoid. The line is no geodesic itself.
///
/// @param lat_deg latitude of a point of the course, -90 to 90
/// @param lon_deg longitude of that point, any finite number
/// @param course_deg true course there, any finite number
/// @param offset_nm distance of the line from the course, right positive, -5000 to 5000
/// @param along_nm distance along the course from its point, negative behind, -10 000 to 10 000
/// @param[out] latitude_deg Its latitude; may be NULL
/// @param[out] longitude_deg Its longitude; may be NULL
/// @param[out] direction_deg Direction of the offset line there, 0 to 360; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: 15 nanometres.
/// Degenerate cases: An offset of zero is the course itself.
/// Errors: A value outside its range.
/// Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55.
///
/// Example: lubber_offset_point(0.0, 0.0, 90.0, -60.0, 0.0, &value, NULL, NULL) gives 1.0049
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_offset_point(
    lat_deg: f64,
    lon_deg: f64,
    course_deg: f64,
    offset_nm: f64,
    along_nm: f64,
    latitude_deg: *mut f64,
    longitude_deg: *mut f64,
    direction_deg: *mut f64,
) -> i32 {
    let answer = || plain::offset_point(lat_deg, lon_deg, course_deg, offset_nm, along_nm).map(|answer| [answer.latitude_deg, answer.longitude_deg, answer.direction_deg]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [latitude_deg, longitude_deg, direction_deg]) }
}

/// `lubber_offset_point` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_offset_point_n(
    count: usize,
    lat_deg: *const f64,
    lat_deg_stride: isize,
    lon_deg: *const f64,
    lon_deg_stride: isize,
    course_deg: *const f64,
    course_deg_stride: isize,
    offset_nm: *const f64,
    offset_nm_stride: isize,
    along_nm: *const f64,
    along_nm_stride: isize,
    latitude_deg: *mut f64,
    latitude_deg_stride: isize,
    longitude_deg: *mut f64,
    longitude_deg_stride: isize,
    direction_deg: *mut f64,
    direction_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat_deg, lat_deg_stride), Array::input(lon_deg, lon_deg_stride), Array::input(course_deg, course_deg_stride), Array::input(offset_nm, offset_nm_stride), Array::input(along_nm, along_nm_stride)], [Array::output(latitude_deg, latitude_deg_stride), Array::output(longitude_deg, longitude_deg_stride), Array::output(direction_deg, direction_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("offset_point") }, count, &inputs, &outputs, status) }
}

/// Where a point lies relative to the line at a constant distance beside a course, on the WGS-84 ellipsoid.
///
/// What stands square to the course stands square to the line too (Gauss's lemma): the cross-track is that of the course less the offset,
/// and the place abeam is one.
///
/// @param lat_deg latitude of a point of the course, -90 to 90
/// @param lon_deg longitude of that point, any finite number
/// @param course_deg true course there, any finite number
/// @param offset_nm distance of the line from the course, right positive, -5000 to 5000
/// @param point_lat_deg latitude of the point, -90 to 90
/// @param point_lon_deg longitude of the point, any finite number
/// @param[out] cross_track_nm Distance across the line, positive right of it; may be NULL
/// @param[out] along_track_nm Distance along the course to the place abeam, positive onward; may be NULL
/// @param[out] abeam_latitude_deg Latitude of the point of the line abeam; may be NULL
/// @param[out] abeam_longitude_deg Longitude of the point of the line abeam; may be NULL
/// @param[out] abeam_direction_deg Direction of the line there, 0 to 360; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As `cross_track`.
/// Degenerate cases: With an offset of zero it is `cross_track`. A point a quarter of the earth away on both sides has no place abeam that means anything.
/// Errors: A value outside its range.
/// Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid.
///
/// Example: lubber_offset_cross_track(0.0, 0.0, 90.0, -60.0, 0.5, 1.0, &value, NULL, NULL, NULL, NULL) gives 30.15
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_offset_cross_track(
    lat_deg: f64,
    lon_deg: f64,
    course_deg: f64,
    offset_nm: f64,
    point_lat_deg: f64,
    point_lon_deg: f64,
    cross_track_nm: *mut f64,
    along_track_nm: *mut f64,
    abeam_latitude_deg: *mut f64,
    abeam_longitude_deg: *mut f64,
    abeam_direction_deg: *mut f64,
) -> i32 {
    let answer = || plain::offset_cross_track(lat_deg, lon_deg, course_deg, offset_nm, point_lat_deg, point_lon_deg).map(|answer| [answer.cross_track_nm, answer.along_track_nm, answer.abeam_latitude_deg, answer.abeam_longitude_deg, answer.abeam_direction_deg]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [cross_track_nm, along_track_nm, abeam_latitude_deg, abeam_longitude_deg, abeam_direction_deg]) }
}

/// `lubber_offset_cross_track` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_offset_cross_track_n(
    count: usize,
    lat_deg: *const f64,
    lat_deg_stride: isize,
    lon_deg: *const f64,
    lon_deg_stride: isize,
    course_deg: *const f64,
    course_deg_stride: isize,
    offset_nm: *const f64,
    offset_nm_stride: isize,
    point_lat_deg: *const f64,
    point_lat_deg_stride: isize,
    point_lon_deg: *const f64,
    point_lon_deg_stride: isize,
    cross_track_nm: *mut f64,
    cross_track_nm_stride: isize,
    along_track_nm: *mut f64,
    along_track_nm_stride: isize,
    abeam_latitude_deg: *mut f64,
    abeam_latitude_deg_stride: isize,
    abeam_longitude_deg: *mut f64,
    abeam_longitude_deg_stride: isize,
    abeam_direction_deg: *mut f64,
    abeam_direction_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat_deg, lat_deg_stride), Array::input(lon_deg, lon_deg_stride), Array::input(course_deg, course_deg_stride), Array::input(offset_nm, offset_nm_stride), Array::input(point_lat_deg, point_lat_deg_stride), Array::input(point_lon_deg, point_lon_deg_stride)], [Array::output(cross_track_nm, cross_track_nm_stride), Array::output(along_track_nm, along_track_nm_stride), Array::output(abeam_latitude_deg, abeam_latitude_deg_stride), Array::output(abeam_longitude_deg, abeam_longitude_deg_stride), Array::output(abeam_direction_deg, abeam_direction_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("offset_cross_track") }, count, &inputs, &outputs, status) }
}

/// Whether a point lies on the line at a constant distance beside a course: 1 if it does, 0 if not.
///
/// Within the tolerance across it, and for a course that reaches onward also before the place abeam of its point.
///
/// @param lat_deg latitude of a point of the course, -90 to 90
/// @param lon_deg longitude of that point, any finite number
/// @param course_deg true course there, any finite number
/// @param reach how far the course reaches: LUBBER_COURSE_REACH_ONWARD, LUBBER_COURSE_REACH_BOTH_WAYS
/// @param offset_nm distance of the line from the course, right positive, -5000 to 5000
/// @param point_lat_deg latitude of the point, -90 to 90
/// @param point_lon_deg longitude of the point, any finite number
/// @param tolerance_nm how far across the line still counts, 0 to 10 900
/// @param[out] on_offset the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As `cross_track`.
/// Degenerate cases: With an offset of zero it is `on_course`.
/// Errors: A value outside its range.
/// Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid.
///
/// Example: lubber_on_offset(0.0, 0.0, 0.0, LUBBER_COURSE_REACH_ONWARD, 60.0, 2.0, 1.0, 0.5, &value) gives 1
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_on_offset(
    lat_deg: f64,
    lon_deg: f64,
    course_deg: f64,
    reach: i32,
    offset_nm: f64,
    point_lat_deg: f64,
    point_lon_deg: f64,
    tolerance_nm: f64,
    on_offset: *mut f64,
) -> i32 {
    let answer = || {
        if [lat_deg, lon_deg, course_deg, offset_nm, point_lat_deg, point_lon_deg, tolerance_nm].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 1]) }
        plain::on_offset(lat_deg, lon_deg, course_deg, lubberline::earth::CourseReach::from_code("reach", f64::from(reach))?, offset_nm, point_lat_deg, point_lon_deg, tolerance_nm).map(|answer| [answer])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [on_offset]) }
}

/// `lubber_on_offset` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `reach` is one code for all points: how far the course reaches: LUBBER_COURSE_REACH_ONWARD, LUBBER_COURSE_REACH_BOTH_WAYS
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_on_offset_n(
    count: usize,
    lat_deg: *const f64,
    lat_deg_stride: isize,
    lon_deg: *const f64,
    lon_deg_stride: isize,
    course_deg: *const f64,
    course_deg_stride: isize,
    reach: i32,
    offset_nm: *const f64,
    offset_nm_stride: isize,
    point_lat_deg: *const f64,
    point_lat_deg_stride: isize,
    point_lon_deg: *const f64,
    point_lon_deg_stride: isize,
    tolerance_nm: *const f64,
    tolerance_nm_stride: isize,
    on_offset: *mut f64,
    on_offset_stride: isize,
    status: *mut i32,
) -> usize {
    let reach = f64::from(reach);
    let (inputs, outputs) = ([Array::input(lat_deg, lat_deg_stride), Array::input(lon_deg, lon_deg_stride), Array::input(course_deg, course_deg_stride), Array::input(&raw const reach, 0), Array::input(offset_nm, offset_nm_stride), Array::input(point_lat_deg, point_lat_deg_stride), Array::input(point_lon_deg, point_lon_deg_stride), Array::input(tolerance_nm, tolerance_nm_stride)], [Array::output(on_offset, on_offset_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("on_offset") }, count, &inputs, &outputs, status) }
}

/// Where the line at a constant distance beside a course meets another course, on the WGS-84 ellipsoid.
///
/// Looked for within 1 000 NM of the meeting of the two courses along the first; the meeting nearest to it.
///
/// @param lat1_deg latitude of a point of the first course, -90 to 90
/// @param lon1_deg longitude of that point, any finite number
/// @param course1_deg true course there, any finite number
/// @param offset_nm distance of the line from the first course, right positive, -5000 to 5000
/// @param lat2_deg latitude of a point of the second course, -90 to 90
/// @param lon2_deg longitude of that point, any finite number
/// @param course2_deg true course there, any finite number
/// @param[out] latitude_deg Latitude of the point; may be NULL
/// @param[out] longitude_deg Longitude of the point; may be NULL
/// @param[out] along_first_nm Distance along the course that the line runs beside, negative behind its point; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: A micrometre across the second course.
/// Degenerate cases: An offset of zero is the meeting of the courses themselves.
/// Errors: A value outside its range, courses along one line, or no meeting within 1 000 NM.
/// Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid.
///
/// Example: lubber_offset_course_crossing(0.0, 0.0, 90.0, -60.0, 0.0, 3.0, 0.0, &value, NULL, NULL) gives 1.0049
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_offset_course_crossing(
    lat1_deg: f64,
    lon1_deg: f64,
    course1_deg: f64,
    offset_nm: f64,
    lat2_deg: f64,
    lon2_deg: f64,
    course2_deg: f64,
    latitude_deg: *mut f64,
    longitude_deg: *mut f64,
    along_first_nm: *mut f64,
) -> i32 {
    let answer = || plain::offset_course_crossing(lat1_deg, lon1_deg, course1_deg, offset_nm, lat2_deg, lon2_deg, course2_deg).map(|answer| [answer.latitude_deg, answer.longitude_deg, answer.along_first_nm]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [latitude_deg, longitude_deg, along_first_nm]) }
}

/// `lubber_offset_course_crossing` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_offset_course_crossing_n(
    count: usize,
    lat1_deg: *const f64,
    lat1_deg_stride: isize,
    lon1_deg: *const f64,
    lon1_deg_stride: isize,
    course1_deg: *const f64,
    course1_deg_stride: isize,
    offset_nm: *const f64,
    offset_nm_stride: isize,
    lat2_deg: *const f64,
    lat2_deg_stride: isize,
    lon2_deg: *const f64,
    lon2_deg_stride: isize,
    course2_deg: *const f64,
    course2_deg_stride: isize,
    latitude_deg: *mut f64,
    latitude_deg_stride: isize,
    longitude_deg: *mut f64,
    longitude_deg_stride: isize,
    along_first_nm: *mut f64,
    along_first_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat1_deg, lat1_deg_stride), Array::input(lon1_deg, lon1_deg_stride), Array::input(course1_deg, course1_deg_stride), Array::input(offset_nm, offset_nm_stride), Array::input(lat2_deg, lat2_deg_stride), Array::input(lon2_deg, lon2_deg_stride), Array::input(course2_deg, course2_deg_stride)], [Array::output(latitude_deg, latitude_deg_stride), Array::output(longitude_deg, longitude_deg_stride), Array::output(along_first_nm, along_first_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("offset_course_crossing") }, count, &inputs, &outputs, status) }
}

/// Where the lines at constant distances beside two courses meet, on the WGS-84 ellipsoid.
///
/// Looked for within 1 000 NM of the meeting of the two courses along the first; the meeting nearest to it.
///
/// @param lat1_deg latitude of a point of the first course, -90 to 90
/// @param lon1_deg longitude of that point, any finite number
/// @param course1_deg true course there, any finite number
/// @param offset1_nm distance of the line beside the first course, right positive, -5000 to 5000
/// @param lat2_deg latitude of a point of the second course, -90 to 90
/// @param lon2_deg longitude of that point, any finite number
/// @param course2_deg true course there, any finite number
/// @param offset2_nm distance of the line beside the second course, right positive, -5000 to 5000
/// @param[out] latitude_deg Latitude of the point; may be NULL
/// @param[out] longitude_deg Longitude of the point; may be NULL
/// @param[out] along_first_nm Distance along the first course to the place abeam, negative behind its point; may be NULL
/// @param[out] along_second_nm Distance along the second course to the place abeam, negative behind its point; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: A micrometre across the second line.
/// Degenerate cases: With an offset of zero the line is the course itself.
/// Errors: A value outside its range, courses along one line, or no meeting within 1 000 NM.
/// Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid.
///
/// Example: lubber_offset_offset_crossing(0.0, 0.0, 90.0, -60.0, 0.0, 3.0, 0.0, 6.0, NULL, NULL, &value, NULL) gives 186.324
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_offset_offset_crossing(
    lat1_deg: f64,
    lon1_deg: f64,
    course1_deg: f64,
    offset1_nm: f64,
    lat2_deg: f64,
    lon2_deg: f64,
    course2_deg: f64,
    offset2_nm: f64,
    latitude_deg: *mut f64,
    longitude_deg: *mut f64,
    along_first_nm: *mut f64,
    along_second_nm: *mut f64,
) -> i32 {
    let answer = || plain::offset_offset_crossing(lat1_deg, lon1_deg, course1_deg, offset1_nm, lat2_deg, lon2_deg, course2_deg, offset2_nm).map(|answer| [answer.latitude_deg, answer.longitude_deg, answer.along_first_nm, answer.along_second_nm]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [latitude_deg, longitude_deg, along_first_nm, along_second_nm]) }
}

/// `lubber_offset_offset_crossing` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_offset_offset_crossing_n(
    count: usize,
    lat1_deg: *const f64,
    lat1_deg_stride: isize,
    lon1_deg: *const f64,
    lon1_deg_stride: isize,
    course1_deg: *const f64,
    course1_deg_stride: isize,
    offset1_nm: *const f64,
    offset1_nm_stride: isize,
    lat2_deg: *const f64,
    lat2_deg_stride: isize,
    lon2_deg: *const f64,
    lon2_deg_stride: isize,
    course2_deg: *const f64,
    course2_deg_stride: isize,
    offset2_nm: *const f64,
    offset2_nm_stride: isize,
    latitude_deg: *mut f64,
    latitude_deg_stride: isize,
    longitude_deg: *mut f64,
    longitude_deg_stride: isize,
    along_first_nm: *mut f64,
    along_first_nm_stride: isize,
    along_second_nm: *mut f64,
    along_second_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat1_deg, lat1_deg_stride), Array::input(lon1_deg, lon1_deg_stride), Array::input(course1_deg, course1_deg_stride), Array::input(offset1_nm, offset1_nm_stride), Array::input(lat2_deg, lat2_deg_stride), Array::input(lon2_deg, lon2_deg_stride), Array::input(course2_deg, course2_deg_stride), Array::input(offset2_nm, offset2_nm_stride)], [Array::output(latitude_deg, latitude_deg_stride), Array::output(longitude_deg, longitude_deg_stride), Array::output(along_first_nm, along_first_nm_stride), Array::output(along_second_nm, along_second_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("offset_offset_crossing") }, count, &inputs, &outputs, status) }
}

/// Where the line at a constant distance beside a course meets a circle (a DME arc), on the WGS-84 ellipsoid: both points.
///
/// Looked for along the line as far as the circle can reach; the arc is the geodesic circle about its centre.
///
/// @param lat_deg latitude of a point of the course, -90 to 90
/// @param lon_deg longitude of that point, any finite number
/// @param course_deg true course there, any finite number
/// @param offset_nm distance of the line beside the course, right positive, -5000 to 5000
/// @param center_lat_deg latitude of the centre, -90 to 90
/// @param center_lon_deg longitude of the centre, any finite number
/// @param radius_nm radius of the circle, above 0 to 5000
/// @param[out] latitude1_deg Latitude of the point farther back along the line; may be NULL
/// @param[out] longitude1_deg Its longitude; may be NULL
/// @param[out] along1_nm Distance along the course to the place abeam of it, negative behind its point; may be NULL
/// @param[out] latitude2_deg Latitude of the point farther on along the line; may be NULL
/// @param[out] longitude2_deg Its longitude; may be NULL
/// @param[out] along2_nm Distance along the course to the place abeam of it, negative behind its point; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: A micrometre across the circle; along, soft where the line only just cuts it.
/// Degenerate cases: A line that touches the circle gives its point twice; a miss below a millimetre counts as touching.
/// Errors: A value outside its range, or a line that misses the circle.
/// Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid.
///
/// Example: lubber_offset_arc_crossing(60.0, -10.0, 90.0, 4.0, 60.0, -9.0, 12.0, NULL, NULL, &value, NULL, NULL, NULL) gives 18.898
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_offset_arc_crossing(
    lat_deg: f64,
    lon_deg: f64,
    course_deg: f64,
    offset_nm: f64,
    center_lat_deg: f64,
    center_lon_deg: f64,
    radius_nm: f64,
    latitude1_deg: *mut f64,
    longitude1_deg: *mut f64,
    along1_nm: *mut f64,
    latitude2_deg: *mut f64,
    longitude2_deg: *mut f64,
    along2_nm: *mut f64,
) -> i32 {
    let answer = || plain::offset_arc_crossing(lat_deg, lon_deg, course_deg, offset_nm, center_lat_deg, center_lon_deg, radius_nm).map(|answer| [answer.latitude1_deg, answer.longitude1_deg, answer.along1_nm, answer.latitude2_deg, answer.longitude2_deg, answer.along2_nm]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [latitude1_deg, longitude1_deg, along1_nm, latitude2_deg, longitude2_deg, along2_nm]) }
}

/// `lubber_offset_arc_crossing` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_offset_arc_crossing_n(
    count: usize,
    lat_deg: *const f64,
    lat_deg_stride: isize,
    lon_deg: *const f64,
    lon_deg_stride: isize,
    course_deg: *const f64,
    course_deg_stride: isize,
    offset_nm: *const f64,
    offset_nm_stride: isize,
    center_lat_deg: *const f64,
    center_lat_deg_stride: isize,
    center_lon_deg: *const f64,
    center_lon_deg_stride: isize,
    radius_nm: *const f64,
    radius_nm_stride: isize,
    latitude1_deg: *mut f64,
    latitude1_deg_stride: isize,
    longitude1_deg: *mut f64,
    longitude1_deg_stride: isize,
    along1_nm: *mut f64,
    along1_nm_stride: isize,
    latitude2_deg: *mut f64,
    latitude2_deg_stride: isize,
    longitude2_deg: *mut f64,
    longitude2_deg_stride: isize,
    along2_nm: *mut f64,
    along2_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat_deg, lat_deg_stride), Array::input(lon_deg, lon_deg_stride), Array::input(course_deg, course_deg_stride), Array::input(offset_nm, offset_nm_stride), Array::input(center_lat_deg, center_lat_deg_stride), Array::input(center_lon_deg, center_lon_deg_stride), Array::input(radius_nm, radius_nm_stride)], [Array::output(latitude1_deg, latitude1_deg_stride), Array::output(longitude1_deg, longitude1_deg_stride), Array::output(along1_nm, along1_nm_stride), Array::output(latitude2_deg, latitude2_deg_stride), Array::output(longitude2_deg, longitude2_deg_stride), Array::output(along2_nm, along2_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("offset_arc_crossing") }, count, &inputs, &outputs, status) }
}

/// Static over total pressure of a flow brought to rest without loss.
///
/// `(1 + 0.2 M^2)^-3.5`. Above Mach 1 a pitot tube feels less than this total pressure: see
/// `lubber_pitot_pressure_ratio`.
///
/// @param mach Mach number, 0 to 10
/// @param[out] isentropic_pressure_ratio the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding, for air of constant heat ratio: good to about Mach 5.
/// Degenerate cases: At rest the ratio is 1.
/// Errors: A value outside its range.
/// Source: NACA Report 1135 (1953), equation 44 (number from memory), for a ratio of specific heats of 1.4.
///
/// Example: lubber_isentropic_pressure_ratio(0.84, &value) gives 0.6300
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_isentropic_pressure_ratio(
    mach: f64,
    isentropic_pressure_ratio: *mut f64,
) -> i32 {
    let answer = || plain::isentropic_pressure_ratio(mach).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [isentropic_pressure_ratio]) }
}

/// `lubber_isentropic_pressure_ratio` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_isentropic_pressure_ratio_n(
    count: usize,
    mach: *const f64,
    mach_stride: isize,
    isentropic_pressure_ratio: *mut f64,
    isentropic_pressure_ratio_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(mach, mach_stride)], [Array::output(isentropic_pressure_ratio, isentropic_pressure_ratio_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("isentropic_pressure_ratio") }, count, &inputs, &outputs, status) }
}

/// Pitot over static pressure, behind a normal shock above Mach 1.
///
/// `(1 + 0.2 M^2)^3.5`, above Mach 1 Rayleigh's `(1.2 M^2)^3.5 (6/(7 M^2 - 1))^2.5`.
///
/// @param mach Mach number, 0 to 10
/// @param[out] pitot_pressure_ratio the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding, for air of constant heat ratio: good to about Mach 5.
/// Degenerate cases: At rest the ratio is 1. The two forms meet at Mach 1 in value and slope.
/// Errors: A value outside its range.
/// Source: NACA Report 1135 (1953), equations 44 and 100 (numbers from memory), for a ratio of specific heats of 1.4.
///
/// Example: lubber_pitot_pressure_ratio(1.0, &value) gives 1.893
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_pitot_pressure_ratio(
    mach: f64,
    pitot_pressure_ratio: *mut f64,
) -> i32 {
    let answer = || plain::pitot_pressure_ratio(mach).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [pitot_pressure_ratio]) }
}

/// `lubber_pitot_pressure_ratio` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_pitot_pressure_ratio_n(
    count: usize,
    mach: *const f64,
    mach_stride: isize,
    pitot_pressure_ratio: *mut f64,
    pitot_pressure_ratio_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(mach, mach_stride)], [Array::output(pitot_pressure_ratio, pitot_pressure_ratio_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("pitot_pressure_ratio") }, count, &inputs, &outputs, status) }
}

/// Impact pressure that a calibrated airspeed stands for, the same at every altitude.
///
/// `p0 ((1 + 0.2 (Vc/a0)^2)^3.5 - 1)`, above the speed of sound at sea level by Rayleigh's pitot formula.
///
/// @param cas_kt calibrated airspeed, 0 to 5000
/// @param[out] impact_pressure_hpa the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: Zero gives zero.
/// Errors: A value outside its range.
/// Source: The definition of calibrated airspeed, with the sea level of ICAO Doc 7488/3 (3rd edition 1993).
///
/// Example: lubber_impact_pressure_hpa(280.0, &value) gives 132.88
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_impact_pressure_hpa(
    cas_kt: f64,
    impact_pressure_hpa: *mut f64,
) -> i32 {
    let answer = || plain::impact_pressure_hpa(cas_kt).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [impact_pressure_hpa]) }
}

/// `lubber_impact_pressure_hpa` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_impact_pressure_hpa_n(
    count: usize,
    cas_kt: *const f64,
    cas_kt_stride: isize,
    impact_pressure_hpa: *mut f64,
    impact_pressure_hpa_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(cas_kt, cas_kt_stride)], [Array::output(impact_pressure_hpa, impact_pressure_hpa_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("impact_pressure_hpa") }, count, &inputs, &outputs, status) }
}

/// Calibrated airspeed of an impact pressure: the inverse of `lubber_impact_pressure_hpa`.
///
/// `a0 sqrt(5 ((q/p0 + 1)^(2/7) - 1))`, above the speed of sound at sea level by Rayleigh's pitot formula.
///
/// @param impact_pressure_hpa pitot less static pressure, 0 to 80 000
/// @param[out] cas_from_impact_pressure_kt the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: Zero gives zero.
/// Errors: A value outside its range, or a result beyond 5000 kt.
/// Source: The definition of calibrated airspeed, with the sea level of ICAO Doc 7488/3 (3rd edition 1993).
///
/// Example: lubber_cas_from_impact_pressure_kt(100.0, &value) gives 244.19
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_cas_from_impact_pressure_kt(
    impact_pressure_hpa: f64,
    cas_from_impact_pressure_kt: *mut f64,
) -> i32 {
    let answer = || plain::cas_from_impact_pressure_kt(impact_pressure_hpa).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [cas_from_impact_pressure_kt]) }
}

/// `lubber_cas_from_impact_pressure_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_cas_from_impact_pressure_kt_n(
    count: usize,
    impact_pressure_hpa: *const f64,
    impact_pressure_hpa_stride: isize,
    cas_from_impact_pressure_kt: *mut f64,
    cas_from_impact_pressure_kt_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(impact_pressure_hpa, impact_pressure_hpa_stride)], [Array::output(cas_from_impact_pressure_kt, cas_from_impact_pressure_kt_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("cas_from_impact_pressure_kt") }, count, &inputs, &outputs, status) }
}

/// The factor from indicated to true airspeed of procedure design, which leaves compressibility out.
///
/// `171233 sqrt(288 + D - 0.00198 H) / (288 - 0.00198 H)^2.628` with altitude `H` in feet and ISA deviation
/// `D`. With a deviation of 15 it is also the form of the FAA's procedure design. `lubber_tas_from_cas_kt` is exact.
///
/// @param altitude_ft altitude of the procedure, -2000 to 50 000
/// @param isa_deviation_k warmer than standard by this, -150 to 150
/// @param[out] procedure_tas_factor the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As published. Against the exact conversion it overstates the true airspeed: by 0.8 percent for 250 kt at 10
/// 000 ft and ISA + 15, more with speed and altitude; above the tropopause it does not hold.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range.
/// Source: ICAO Doc 8168 (PANS-OPS) volume II, 5th edition 2006, Part I Section 4 Chapter 3 Appendix C; constants
/// read in a quotation.
///
/// Example: lubber_procedure_tas_factor(6000.0, 15.0, &value) gives 1.1231
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_procedure_tas_factor(
    altitude_ft: f64,
    isa_deviation_k: f64,
    procedure_tas_factor: *mut f64,
) -> i32 {
    let answer = || plain::procedure_tas_factor(altitude_ft, isa_deviation_k).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [procedure_tas_factor]) }
}

/// `lubber_procedure_tas_factor` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_procedure_tas_factor_n(
    count: usize,
    altitude_ft: *const f64,
    altitude_ft_stride: isize,
    isa_deviation_k: *const f64,
    isa_deviation_k_stride: isize,
    procedure_tas_factor: *mut f64,
    procedure_tas_factor_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(altitude_ft, altitude_ft_stride), Array::input(isa_deviation_k, isa_deviation_k_stride)], [Array::output(procedure_tas_factor, procedure_tas_factor_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("procedure_tas_factor") }, count, &inputs, &outputs, status) }
}

/// The geometry of a 45/180 procedure turn in a steady wind and with roll.
///
/// Off the outbound course by 45 degrees, straight on that track until a time from the start of the turn, half a
/// circle the other way onto the opposite track, straight until the lead of the turn onto the inbound course.
///
/// @param outbound_course_deg course flown outbound before the turn, any finite number
/// @param side to which side the first turn goes: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
/// @param off_time_s time from the start of the first turn to the turn back, 0 to 3600: 60 for categories A and B, 75 for C to E
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param wind_from_deg where the wind blows from, against the same north
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param bank_limit_deg greatest bank, above 0 below 90
/// @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
/// @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
/// @param[out] off_track_deg Track of the leg off the outbound course; may be NULL
/// @param[out] off_heading_deg Heading that holds it; may be NULL
/// @param[out] back_heading_deg Heading that holds the way back to the course; may be NULL
/// @param[out] straight_nm Distance straight between the half circle and the turn onto the inbound course; negative where the course is crossed; may be NULL
/// @param[out] least_off_time_s Time from the start of the first turn to the turn back that would leave just no straight part; may be NULL
/// @param[out] established_nm Distance outbound from where the first turn began at which the wings are level on the inbound course; negative before it; may be NULL
/// @param[out] farthest_nm How far outbound the path reaches; may be NULL
/// @param[out] widest_nm How far from the course it reaches, to the side of the first turn; may be NULL
/// @param[out] duration_s From the first turn to wings level inbound; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: 1e-9 of its size in the plane.
/// Degenerate cases: A leg that is too short makes the straight part before the last turn negative: the course is crossed. A time
/// shorter than the first turn leaves nothing straight off the course.
/// Errors: A value outside its range, a track that the airspeed cannot hold.
/// Source: The manoeuvre: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 4 Chapter 3, 3.5.4.1, its times as quoted; its geometry is derived.
///
/// Example: lubber_procedure_turn_45_180(250.0, LUBBER_HOLDING_SIDE_RIGHT, 60.0, 140.0, 200.0, 25.0, 25.0, 3.0, 5.0, NULL, &value, NULL, NULL, NULL, NULL, NULL, NULL, NULL) gives 284.8
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_procedure_turn_45_180(
    outbound_course_deg: f64,
    side: i32,
    off_time_s: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
    off_track_deg: *mut f64,
    off_heading_deg: *mut f64,
    back_heading_deg: *mut f64,
    straight_nm: *mut f64,
    least_off_time_s: *mut f64,
    established_nm: *mut f64,
    farthest_nm: *mut f64,
    widest_nm: *mut f64,
    duration_s: *mut f64,
) -> i32 {
    let answer = || {
        if [outbound_course_deg, off_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 9]) }
        plain::procedure_turn_45_180(outbound_course_deg, lubberline::procedure::HoldingSide::from_code("side", f64::from(side))?, off_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.off_track_deg, answer.off_heading_deg, answer.back_heading_deg, answer.straight_nm, answer.least_off_time_s, answer.established_nm, answer.farthest_nm, answer.widest_nm, answer.duration_s])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [off_track_deg, off_heading_deg, back_heading_deg, straight_nm, least_off_time_s, established_nm, farthest_nm, widest_nm, duration_s]) }
}

/// `lubber_procedure_turn_45_180` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `side` is one code for all points: to which side the first turn goes: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_procedure_turn_45_180_n(
    count: usize,
    outbound_course_deg: *const f64,
    outbound_course_deg_stride: isize,
    side: i32,
    off_time_s: *const f64,
    off_time_s_stride: isize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    bank_limit_deg: *const f64,
    bank_limit_deg_stride: isize,
    turn_rate_limit_deg_per_s: *const f64,
    turn_rate_limit_deg_per_s_stride: isize,
    roll_rate_deg_per_s: *const f64,
    roll_rate_deg_per_s_stride: isize,
    off_track_deg: *mut f64,
    off_track_deg_stride: isize,
    off_heading_deg: *mut f64,
    off_heading_deg_stride: isize,
    back_heading_deg: *mut f64,
    back_heading_deg_stride: isize,
    straight_nm: *mut f64,
    straight_nm_stride: isize,
    least_off_time_s: *mut f64,
    least_off_time_s_stride: isize,
    established_nm: *mut f64,
    established_nm_stride: isize,
    farthest_nm: *mut f64,
    farthest_nm_stride: isize,
    widest_nm: *mut f64,
    widest_nm_stride: isize,
    duration_s: *mut f64,
    duration_s_stride: isize,
    status: *mut i32,
) -> usize {
    let side = f64::from(side);
    let (inputs, outputs) = ([Array::input(outbound_course_deg, outbound_course_deg_stride), Array::input(&raw const side, 0), Array::input(off_time_s, off_time_s_stride), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride), Array::input(bank_limit_deg, bank_limit_deg_stride), Array::input(turn_rate_limit_deg_per_s, turn_rate_limit_deg_per_s_stride), Array::input(roll_rate_deg_per_s, roll_rate_deg_per_s_stride)], [Array::output(off_track_deg, off_track_deg_stride), Array::output(off_heading_deg, off_heading_deg_stride), Array::output(back_heading_deg, back_heading_deg_stride), Array::output(straight_nm, straight_nm_stride), Array::output(least_off_time_s, least_off_time_s_stride), Array::output(established_nm, established_nm_stride), Array::output(farthest_nm, farthest_nm_stride), Array::output(widest_nm, widest_nm_stride), Array::output(duration_s, duration_s_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("procedure_turn_45_180") }, count, &inputs, &outputs, status) }
}

/// The geometry of an 80/260 procedure turn in a steady wind and with roll, and the angle that would end it on the course.
///
/// Off the outbound heading by an angle, and at once back the other way onto the heading that holds the inbound
/// course. In calm air with an instant roll it ends `2 r cos(angle)` off the course, on the side away from the first
/// turn.
///
/// @param outbound_course_deg course flown outbound before the turn, any finite number
/// @param side to which side the first turn goes: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
/// @param first_turn_deg angle of the first turn, above 0 below 180: 80 as published
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param wind_from_deg where the wind blows from, against the same north
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param bank_limit_deg greatest bank, above 0 below 90
/// @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
/// @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
/// @param[out] off_heading_deg Heading at the end of the first turn; may be NULL
/// @param[out] across_nm Distance from the course at its end, positive on the side of the first turn; may be NULL
/// @param[out] established_nm Distance outbound from where the first turn began at its end; negative before it; may be NULL
/// @param[out] farthest_nm How far outbound the path reaches; may be NULL
/// @param[out] widest_nm How far from the course it reaches, to the side of the first turn; may be NULL
/// @param[out] duration_s From the first turn to wings level inbound; may be NULL
/// @param[out] exact_angle_deg The angle of the first turn for which it ends on the course; NaN where none up to 170 degrees does; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: 1e-9 of its size in the plane.
/// Degenerate cases: In calm air with an instant roll the exact angle is 90 degrees.
/// Errors: A value outside its range, a course that the airspeed cannot hold.
/// Source: The manoeuvre: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 4 Chapter 3, 3.5.4.2 (number from memory), as quoted; its geometry is derived.
///
/// Example: lubber_procedure_turn_80_260(250.0, LUBBER_HOLDING_SIDE_RIGHT, 80.0, 140.0, 200.0, 25.0, 25.0, 3.0, 5.0, NULL, &value, NULL, NULL, NULL, NULL, NULL) gives 0.30
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_procedure_turn_80_260(
    outbound_course_deg: f64,
    side: i32,
    first_turn_deg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
    off_heading_deg: *mut f64,
    across_nm: *mut f64,
    established_nm: *mut f64,
    farthest_nm: *mut f64,
    widest_nm: *mut f64,
    duration_s: *mut f64,
    exact_angle_deg: *mut f64,
) -> i32 {
    let answer = || {
        if [outbound_course_deg, first_turn_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 7]) }
        plain::procedure_turn_80_260(outbound_course_deg, lubberline::procedure::HoldingSide::from_code("side", f64::from(side))?, first_turn_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.off_heading_deg, answer.across_nm, answer.established_nm, answer.farthest_nm, answer.widest_nm, answer.duration_s, answer.exact_angle_deg])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [off_heading_deg, across_nm, established_nm, farthest_nm, widest_nm, duration_s, exact_angle_deg]) }
}

/// `lubber_procedure_turn_80_260` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `side` is one code for all points: to which side the first turn goes: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_procedure_turn_80_260_n(
    count: usize,
    outbound_course_deg: *const f64,
    outbound_course_deg_stride: isize,
    side: i32,
    first_turn_deg: *const f64,
    first_turn_deg_stride: isize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    bank_limit_deg: *const f64,
    bank_limit_deg_stride: isize,
    turn_rate_limit_deg_per_s: *const f64,
    turn_rate_limit_deg_per_s_stride: isize,
    roll_rate_deg_per_s: *const f64,
    roll_rate_deg_per_s_stride: isize,
    off_heading_deg: *mut f64,
    off_heading_deg_stride: isize,
    across_nm: *mut f64,
    across_nm_stride: isize,
    established_nm: *mut f64,
    established_nm_stride: isize,
    farthest_nm: *mut f64,
    farthest_nm_stride: isize,
    widest_nm: *mut f64,
    widest_nm_stride: isize,
    duration_s: *mut f64,
    duration_s_stride: isize,
    exact_angle_deg: *mut f64,
    exact_angle_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let side = f64::from(side);
    let (inputs, outputs) = ([Array::input(outbound_course_deg, outbound_course_deg_stride), Array::input(&raw const side, 0), Array::input(first_turn_deg, first_turn_deg_stride), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride), Array::input(bank_limit_deg, bank_limit_deg_stride), Array::input(turn_rate_limit_deg_per_s, turn_rate_limit_deg_per_s_stride), Array::input(roll_rate_deg_per_s, roll_rate_deg_per_s_stride)], [Array::output(off_heading_deg, off_heading_deg_stride), Array::output(across_nm, across_nm_stride), Array::output(established_nm, established_nm_stride), Array::output(farthest_nm, farthest_nm_stride), Array::output(widest_nm, widest_nm_stride), Array::output(duration_s, duration_s_stride), Array::output(exact_angle_deg, exact_angle_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("procedure_turn_80_260") }, count, &inputs, &outputs, status) }
}

/// Cold-temperature correction by a named method, to add to an altitude on the procedure.
///
/// The formula; the table, whose cells are the formula at sea level rounded up to 10 ft; the table read off evenly between its cells, as it is or
/// rounded to the nearest 100 ft or up to 100 ft; 4 percent of the height for each 10 degC; or the exact one. For 8 794 ft at -12 degC the
/// FAA's example says 500 ft: 534 between the cells of the 5 000 ft column, to the nearest 100.
///
/// @param height_ft charted height above the altimeter setting source, 0 to 20 000
/// @param temperature_degc temperature at the altimeter setting source, -200 to 200
/// @param elevation_ft elevation of the altimeter setting source, -16 500 to 60 000; the methods by the table leave it out
/// @param method which method: LUBBER_COLD_TEMPERATURE_METHOD_FORMULA, LUBBER_COLD_TEMPERATURE_METHOD_TABLE, LUBBER_COLD_TEMPERATURE_METHOD_INTERPOLATED, LUBBER_COLD_TEMPERATURE_METHOD_INTERPOLATED_NEAREST_HUNDRED, LUBBER_COLD_TEMPERATURE_METHOD_INTERPOLATED_UP_TO_HUNDRED, LUBBER_COLD_TEMPERATURE_METHOD_FOUR_PERCENT, LUBBER_COLD_TEMPERATURE_METHOD_EXACT
/// @param[out] cold_temperature_correction_by_method_ft the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As published. The nearest 100 ft can be 50 ft too little.
/// Degenerate cases: The methods that read off between cells have no answer below -50 degC: it is NaN. They take the 5 000 ft column for greater heights, and go
/// evenly to nothing below 200 ft and between 10 and 15 degC. The others are as their own functions say.
/// Errors: A value outside its range.
/// Source: Formula, table and 4 percent: ICAO Doc 8168 Vol I (5th ed. 2006), Part III Section 1 Chapter 4 (the formula from memory) and its Table
/// III-1-4-1 b). Reading off and rounding: FAA Aeronautical Information Manual (20 April 2023), 7-3-5 and 7-3-6, TBL 7-3-1. Exact: derived.
///
/// Example: lubber_cold_temperature_correction_by_method_ft(8794.0, -12.0, 3206.0, LUBBER_COLD_TEMPERATURE_METHOD_INTERPOLATED, &value) gives 534
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_cold_temperature_correction_by_method_ft(
    height_ft: f64,
    temperature_degc: f64,
    elevation_ft: f64,
    method: i32,
    cold_temperature_correction_by_method_ft: *mut f64,
) -> i32 {
    let answer = || {
        if [height_ft, temperature_degc, elevation_ft].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 1]) }
        plain::cold_temperature_correction_by_method_ft(height_ft, temperature_degc, elevation_ft, lubberline::air::ColdTemperatureMethod::from_code("method", f64::from(method))?).map(|answer| [answer])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [cold_temperature_correction_by_method_ft]) }
}

/// `lubber_cold_temperature_correction_by_method_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `method` is one code for all points: which method: LUBBER_COLD_TEMPERATURE_METHOD_FORMULA, LUBBER_COLD_TEMPERATURE_METHOD_TABLE, LUBBER_COLD_TEMPERATURE_METHOD_INTERPOLATED, LUBBER_COLD_TEMPERATURE_METHOD_INTERPOLATED_NEAREST_HUNDRED, LUBBER_COLD_TEMPERATURE_METHOD_INTERPOLATED_UP_TO_HUNDRED, LUBBER_COLD_TEMPERATURE_METHOD_FOUR_PERCENT, LUBBER_COLD_TEMPERATURE_METHOD_EXACT
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_cold_temperature_correction_by_method_ft_n(
    count: usize,
    height_ft: *const f64,
    height_ft_stride: isize,
    temperature_degc: *const f64,
    temperature_degc_stride: isize,
    elevation_ft: *const f64,
    elevation_ft_stride: isize,
    method: i32,
    cold_temperature_correction_by_method_ft: *mut f64,
    cold_temperature_correction_by_method_ft_stride: isize,
    status: *mut i32,
) -> usize {
    let method = f64::from(method);
    let (inputs, outputs) = ([Array::input(height_ft, height_ft_stride), Array::input(temperature_degc, temperature_degc_stride), Array::input(elevation_ft, elevation_ft_stride), Array::input(&raw const method, 0)], [Array::output(cold_temperature_correction_by_method_ft, cold_temperature_correction_by_method_ft_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("cold_temperature_correction_by_method_ft") }, count, &inputs, &outputs, status) }
}

/// The speed factor of procedure design by a named method: its formula, or read off its table.
///
/// The formula is that of `procedure_tas_factor`; the table has it to four decimals every 500 m or every 1 000 ft, and between two entries the
/// factor is taken evenly and rounded to four decimals.
///
/// @param altitude_ft altitude, -2000 to 50 000
/// @param isa_deviation_k warmer than standard by this, -150 to 150
/// @param method which method: LUBBER_TAS_FACTOR_METHOD_FORMULA, LUBBER_TAS_FACTOR_METHOD_TABLE_METRES, LUBBER_TAS_FACTOR_METHOD_TABLE_FEET
/// @param[out] procedure_tas_factor_by_method the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As published. Reading off adds up to 3e-3 to the factor, most of it above 40 000 ft, and 1e-4 at 6 000 ft.
/// Degenerate cases: On an entry of the table the methods agree to four decimals.
/// Errors: A value outside its range.
/// Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 4 Chapter 3 Appendix C, Table I-4-3-App C-1: its example in SI units (1.1244 for 1850 m) reads
/// off the entries for 1500 and 2000 m (1.1046, 1.1329); the step in feet is from memory.
///
/// Example: lubber_procedure_tas_factor_by_method(6069.553806, 15.0, LUBBER_TAS_FACTOR_METHOD_TABLE_METRES, &value) gives 1.1244
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_procedure_tas_factor_by_method(
    altitude_ft: f64,
    isa_deviation_k: f64,
    method: i32,
    procedure_tas_factor_by_method: *mut f64,
) -> i32 {
    let answer = || {
        if [altitude_ft, isa_deviation_k].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 1]) }
        plain::procedure_tas_factor_by_method(altitude_ft, isa_deviation_k, lubberline::air::TasFactorMethod::from_code("method", f64::from(method))?).map(|answer| [answer])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [procedure_tas_factor_by_method]) }
}

/// `lubber_procedure_tas_factor_by_method` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `method` is one code for all points: which method: LUBBER_TAS_FACTOR_METHOD_FORMULA, LUBBER_TAS_FACTOR_METHOD_TABLE_METRES, LUBBER_TAS_FACTOR_METHOD_TABLE_FEET
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_procedure_tas_factor_by_method_n(
    count: usize,
    altitude_ft: *const f64,
    altitude_ft_stride: isize,
    isa_deviation_k: *const f64,
    isa_deviation_k_stride: isize,
    method: i32,
    procedure_tas_factor_by_method: *mut f64,
    procedure_tas_factor_by_method_stride: isize,
    status: *mut i32,
) -> usize {
    let method = f64::from(method);
    let (inputs, outputs) = ([Array::input(altitude_ft, altitude_ft_stride), Array::input(isa_deviation_k, isa_deviation_k_stride), Array::input(&raw const method, 0)], [Array::output(procedure_tas_factor_by_method, procedure_tas_factor_by_method_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("procedure_tas_factor_by_method") }, count, &inputs, &outputs, status) }
}

/// The standard atmosphere at a pressure altitude by a named edition, with an ISA deviation of the temperature.
///
/// To 80 km both editions have the same layers; the U.S. one of 1976 has the gas constant 8314.32/28.9644 = 287.05307 J/(kg K) for ICAO's 287.05287. Its
/// pressure is `p0 (p/p0)^(287.05287/287.05307)`.
///
/// @param pressure_altitude_ft altitude, -16 420 to 262 467.2
/// @param isa_deviation_k warmer than standard by this, -150 to 150
/// @param edition whose atmosphere: LUBBER_ATMOSPHERE_EDITION_ICAO1993, LUBBER_ATMOSPHERE_EDITION_UNITED_STATES1976
/// @param[out] temperature_degc Static temperature; may be NULL
/// @param[out] pressure_hpa Static pressure; may be NULL
/// @param[out] density_kg_per_m3 Density; may be NULL
/// @param[out] speed_of_sound_kt Speed of sound; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding. The editions differ by up to 8e-6 of the pressure and the density, 0.0002 kt of the speed of sound.
/// Degenerate cases: With ICAO's edition it is `standard_atmosphere`.
/// Errors: A value outside its range.
/// Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993; U.S. Standard Atmosphere, 1976, NOAA-S/T 76-1562, Table 2 (the
/// constants from memory, the layers' pressures read in a transcription).
///
/// Example: lubber_standard_atmosphere_by_edition(104986.87664, 0.0, LUBBER_ATMOSPHERE_EDITION_ICAO1993, NULL, &value, NULL, NULL) gives 8.68016
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_standard_atmosphere_by_edition(
    pressure_altitude_ft: f64,
    isa_deviation_k: f64,
    edition: i32,
    temperature_degc: *mut f64,
    pressure_hpa: *mut f64,
    density_kg_per_m3: *mut f64,
    speed_of_sound_kt: *mut f64,
) -> i32 {
    let answer = || {
        if [pressure_altitude_ft, isa_deviation_k].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 4]) }
        plain::standard_atmosphere_by_edition(pressure_altitude_ft, isa_deviation_k, lubberline::air::AtmosphereEdition::from_code("edition", f64::from(edition))?).map(|answer| [answer.temperature_degc, answer.pressure_hpa, answer.density_kg_per_m3, answer.speed_of_sound_kt])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [temperature_degc, pressure_hpa, density_kg_per_m3, speed_of_sound_kt]) }
}

/// `lubber_standard_atmosphere_by_edition` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `edition` is one code for all points: whose atmosphere: LUBBER_ATMOSPHERE_EDITION_ICAO1993, LUBBER_ATMOSPHERE_EDITION_UNITED_STATES1976
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_standard_atmosphere_by_edition_n(
    count: usize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    isa_deviation_k: *const f64,
    isa_deviation_k_stride: isize,
    edition: i32,
    temperature_degc: *mut f64,
    temperature_degc_stride: isize,
    pressure_hpa: *mut f64,
    pressure_hpa_stride: isize,
    density_kg_per_m3: *mut f64,
    density_kg_per_m3_stride: isize,
    speed_of_sound_kt: *mut f64,
    speed_of_sound_kt_stride: isize,
    status: *mut i32,
) -> usize {
    let edition = f64::from(edition);
    let (inputs, outputs) = ([Array::input(pressure_altitude_ft, pressure_altitude_ft_stride), Array::input(isa_deviation_k, isa_deviation_k_stride), Array::input(&raw const edition, 0)], [Array::output(temperature_degc, temperature_degc_stride), Array::output(pressure_hpa, pressure_hpa_stride), Array::output(density_kg_per_m3, density_kg_per_m3_stride), Array::output(speed_of_sound_kt, speed_of_sound_kt_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("standard_atmosphere_by_edition") }, count, &inputs, &outputs, status) }
}

/// Rate and radius of a level turn in still air with the constants that a named source prints.
///
/// Sources round gravity and the units, each in its own way: 3 431 / pi for the rate in knots, 6 355 / pi in km/h, 68 625 or 68 625.4 for the radius, 1 091
/// and 11.26 in the handbook. Exact are 1 092.206 and 68 625.37.
///
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param bank_deg bank angle, above 0 to below 90
/// @param constants whose constants: LUBBER_TURN_CONSTANTS_EXACT, LUBBER_TURN_CONSTANTS_PANS_OPS, LUBBER_TURN_CONSTANTS_PANS_OPS_METRIC, LUBBER_TURN_CONSTANTS_PANS_OPS_GRAVITY, LUBBER_TURN_CONSTANTS_FAA_ORDER, LUBBER_TURN_CONSTANTS_HANDBOOK
/// @param[out] turn_rate_deg_per_s Rate of turn; may be NULL
/// @param[out] radius_nm Radius in still air; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As published: the handbook's radius is 0.3 percent wide, its rate 0.11 percent slow, the others within 0.01 percent of exact.
/// Degenerate cases: No limit of the rate is applied; see `limited_turn`.
/// Errors: A value outside its range.
/// Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 3, 3.1.2.2; FAA Order 8260.58, Chapters 1 and 2 (from memory); FAA-H-8083-25,
/// chapter 5 (from memory); exact: ICAO Doc 7488/3 (3rd edition 1993) for gravity.
///
/// Example: lubber_published_turn(100.0, 25.0, LUBBER_TURN_CONSTANTS_PANS_OPS, &value, NULL) gives 5.0926
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_published_turn(
    true_airspeed_kt: f64,
    bank_deg: f64,
    constants: i32,
    turn_rate_deg_per_s: *mut f64,
    radius_nm: *mut f64,
) -> i32 {
    let answer = || {
        if [true_airspeed_kt, bank_deg].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 2]) }
        plain::published_turn(true_airspeed_kt, bank_deg, lubberline::turn::TurnConstants::from_code("constants", f64::from(constants))?).map(|answer| [answer.turn_rate_deg_per_s, answer.radius_nm])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [turn_rate_deg_per_s, radius_nm]) }
}

/// `lubber_published_turn` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `constants` is one code for all points: whose constants: LUBBER_TURN_CONSTANTS_EXACT, LUBBER_TURN_CONSTANTS_PANS_OPS, LUBBER_TURN_CONSTANTS_PANS_OPS_METRIC, LUBBER_TURN_CONSTANTS_PANS_OPS_GRAVITY, LUBBER_TURN_CONSTANTS_FAA_ORDER, LUBBER_TURN_CONSTANTS_HANDBOOK
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_published_turn_n(
    count: usize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    bank_deg: *const f64,
    bank_deg_stride: isize,
    constants: i32,
    turn_rate_deg_per_s: *mut f64,
    turn_rate_deg_per_s_stride: isize,
    radius_nm: *mut f64,
    radius_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let constants = f64::from(constants);
    let (inputs, outputs) = ([Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(bank_deg, bank_deg_stride), Array::input(&raw const constants, 0)], [Array::output(turn_rate_deg_per_s, turn_rate_deg_per_s_stride), Array::output(radius_nm, radius_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("published_turn") }, count, &inputs, &outputs, status) }
}

/// The holding pattern that closes in a steady wind, exactly: outbound heading, times and size.
///
/// A turn with its roll over the fix onto the outbound heading, straight outbound, a turn that ends on the inbound
/// course, and that course to the fix; over the ground wind times duration is added to each. The outbound heading is
/// the one for which the sum is nothing.
///
/// @param inbound_course_deg course flown to the fix, any finite number
/// @param side which way the turns go: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
/// @param timed the leg whose time is given, and where its clock starts: LUBBER_TIMED_LEG_INBOUND, LUBBER_TIMED_LEG_OUTBOUND, LUBBER_TIMED_LEG_OUTBOUND_FROM_LEVEL
/// @param time_s time of that leg, 0 to 3600
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param wind_from_deg where the wind blows from, against the same north
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param bank_limit_deg greatest bank, above 0 below 90
/// @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
/// @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
/// @param[out] outbound_heading_deg Heading to fly outbound; may be NULL
/// @param[out] outbound_correction_deg Outbound heading less the reciprocal of the inbound course, right positive; may be NULL
/// @param[out] inbound_correction_deg Inbound heading less inbound course, right positive; may be NULL
/// @param[out] drift_factor By what the inbound correction has to be multiplied, and its side changed, to give the outbound one; NaN without an inbound correction; may be NULL
/// @param[out] outbound_time_s Time straight outbound, from wings level to the turn inbound; may be NULL
/// @param[out] outbound_clock_s Time on the outbound clock: from abeam the fix, or from wings level where the fix is passed abeam in the turn; may be NULL
/// @param[out] inbound_time_s Time straight inbound, from wings level to the fix; may be NULL
/// @param[out] duration_s From the fix to the fix; may be NULL
/// @param[out] outbound_end_before_fix_nm Where the outbound leg ends, before the fix along the inbound course; may be NULL
/// @param[out] outbound_end_across_nm Where the outbound leg ends, across the inbound course to the side of the turns; may be NULL
/// @param[out] inbound_leg_nm Distance from the fix at which the wings are level on the inbound course; may be NULL
/// @param[out] length_nm Length of the whole path over the ground, along the inbound course; may be NULL
/// @param[out] width_nm Width of the whole path over the ground, across the inbound course; may be NULL
/// @param[out] bank_deg The greatest bank; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: 1e-9 of the size of the pattern, in the plane of the fix.
/// Degenerate cases: In calm air the outbound heading is the reciprocal. Where several headings close the pattern, the one nearest to
/// the reciprocal is meant.
/// Errors: A value outside its range, an inbound course that the airspeed cannot hold, a wind in which no heading closes the
/// pattern before the fix.
/// Source: Derived from the equilibrium of a coordinated turn and the triangle of velocities.
///
/// Example: lubber_holding_pattern(270.0, LUBBER_HOLDING_SIDE_RIGHT, LUBBER_TIMED_LEG_INBOUND, 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0, &value, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL) gives 68.5
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_holding_pattern(
    inbound_course_deg: f64,
    side: i32,
    timed: i32,
    time_s: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
    outbound_heading_deg: *mut f64,
    outbound_correction_deg: *mut f64,
    inbound_correction_deg: *mut f64,
    drift_factor: *mut f64,
    outbound_time_s: *mut f64,
    outbound_clock_s: *mut f64,
    inbound_time_s: *mut f64,
    duration_s: *mut f64,
    outbound_end_before_fix_nm: *mut f64,
    outbound_end_across_nm: *mut f64,
    inbound_leg_nm: *mut f64,
    length_nm: *mut f64,
    width_nm: *mut f64,
    bank_deg: *mut f64,
) -> i32 {
    let answer = || {
        if [inbound_course_deg, time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 14]) }
        plain::holding_pattern(inbound_course_deg, lubberline::procedure::HoldingSide::from_code("side", f64::from(side))?, lubberline::procedure::TimedLeg::from_code("timed", f64::from(timed))?, time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.outbound_heading_deg, answer.outbound_correction_deg, answer.inbound_correction_deg, answer.drift_factor, answer.outbound_time_s, answer.outbound_clock_s, answer.inbound_time_s, answer.duration_s, answer.outbound_end_before_fix_nm, answer.outbound_end_across_nm, answer.inbound_leg_nm, answer.length_nm, answer.width_nm, answer.bank_deg])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [outbound_heading_deg, outbound_correction_deg, inbound_correction_deg, drift_factor, outbound_time_s, outbound_clock_s, inbound_time_s, duration_s, outbound_end_before_fix_nm, outbound_end_across_nm, inbound_leg_nm, length_nm, width_nm, bank_deg]) }
}

/// `lubber_holding_pattern` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `side` is one code for all points: which way the turns go: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
///
/// `timed` is one code for all points: the leg whose time is given, and where its clock starts: LUBBER_TIMED_LEG_INBOUND, LUBBER_TIMED_LEG_OUTBOUND, LUBBER_TIMED_LEG_OUTBOUND_FROM_LEVEL
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_holding_pattern_n(
    count: usize,
    inbound_course_deg: *const f64,
    inbound_course_deg_stride: isize,
    side: i32,
    timed: i32,
    time_s: *const f64,
    time_s_stride: isize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    bank_limit_deg: *const f64,
    bank_limit_deg_stride: isize,
    turn_rate_limit_deg_per_s: *const f64,
    turn_rate_limit_deg_per_s_stride: isize,
    roll_rate_deg_per_s: *const f64,
    roll_rate_deg_per_s_stride: isize,
    outbound_heading_deg: *mut f64,
    outbound_heading_deg_stride: isize,
    outbound_correction_deg: *mut f64,
    outbound_correction_deg_stride: isize,
    inbound_correction_deg: *mut f64,
    inbound_correction_deg_stride: isize,
    drift_factor: *mut f64,
    drift_factor_stride: isize,
    outbound_time_s: *mut f64,
    outbound_time_s_stride: isize,
    outbound_clock_s: *mut f64,
    outbound_clock_s_stride: isize,
    inbound_time_s: *mut f64,
    inbound_time_s_stride: isize,
    duration_s: *mut f64,
    duration_s_stride: isize,
    outbound_end_before_fix_nm: *mut f64,
    outbound_end_before_fix_nm_stride: isize,
    outbound_end_across_nm: *mut f64,
    outbound_end_across_nm_stride: isize,
    inbound_leg_nm: *mut f64,
    inbound_leg_nm_stride: isize,
    length_nm: *mut f64,
    length_nm_stride: isize,
    width_nm: *mut f64,
    width_nm_stride: isize,
    bank_deg: *mut f64,
    bank_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let side = f64::from(side);
    let timed = f64::from(timed);
    let (inputs, outputs) = ([Array::input(inbound_course_deg, inbound_course_deg_stride), Array::input(&raw const side, 0), Array::input(&raw const timed, 0), Array::input(time_s, time_s_stride), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride), Array::input(bank_limit_deg, bank_limit_deg_stride), Array::input(turn_rate_limit_deg_per_s, turn_rate_limit_deg_per_s_stride), Array::input(roll_rate_deg_per_s, roll_rate_deg_per_s_stride)], [Array::output(outbound_heading_deg, outbound_heading_deg_stride), Array::output(outbound_correction_deg, outbound_correction_deg_stride), Array::output(inbound_correction_deg, inbound_correction_deg_stride), Array::output(drift_factor, drift_factor_stride), Array::output(outbound_time_s, outbound_time_s_stride), Array::output(outbound_clock_s, outbound_clock_s_stride), Array::output(inbound_time_s, inbound_time_s_stride), Array::output(duration_s, duration_s_stride), Array::output(outbound_end_before_fix_nm, outbound_end_before_fix_nm_stride), Array::output(outbound_end_across_nm, outbound_end_across_nm_stride), Array::output(inbound_leg_nm, inbound_leg_nm_stride), Array::output(length_nm, length_nm_stride), Array::output(width_nm, width_nm_stride), Array::output(bank_deg, bank_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("holding_pattern") }, count, &inputs, &outputs, status) }
}

/// Where the aircraft is in the holding pattern that closes in a steady wind, a time after it passed the fix.
///
/// The turn outbound, the outbound leg, the turn inbound and the inbound leg of `holding_pattern`, one after the other, round after
/// round.
///
/// @param since_fix_s time since the fix was passed, -1 000 000 to 1 000 000
/// @param inbound_course_deg course flown to the fix, any finite number
/// @param side which way the turns go: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
/// @param timed the leg whose time is given, and where its clock starts: LUBBER_TIMED_LEG_INBOUND, LUBBER_TIMED_LEG_OUTBOUND, LUBBER_TIMED_LEG_OUTBOUND_FROM_LEVEL
/// @param time_s time of that leg, 0 to 3600
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param wind_from_deg where the wind blows from, against the same north
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param bank_limit_deg greatest bank, above 0 below 90
/// @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
/// @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
/// @param[out] bearing_from_fix_deg Bearing from the fix; NaN over it; may be NULL
/// @param[out] distance_nm Distance from the fix over the ground; may be NULL
/// @param[out] heading_deg Heading; may be NULL
/// @param[out] bank_deg Bank, right positive; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As `holding_pattern`.
/// Degenerate cases: Over the fix there is no bearing. Before the fix the last round is meant.
/// Errors: As `holding_pattern`; a time outside its range.
/// Source: As `holding_pattern`.
///
/// Example: lubber_holding_pattern_at(100.0, 270.0, LUBBER_HOLDING_SIDE_RIGHT, LUBBER_TIMED_LEG_INBOUND, 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0, NULL, NULL, &value, NULL) gives 68.5
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_holding_pattern_at(
    since_fix_s: f64,
    inbound_course_deg: f64,
    side: i32,
    timed: i32,
    time_s: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
    bearing_from_fix_deg: *mut f64,
    distance_nm: *mut f64,
    heading_deg: *mut f64,
    bank_deg: *mut f64,
) -> i32 {
    let answer = || {
        if [since_fix_s, inbound_course_deg, time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 4]) }
        plain::holding_pattern_at(since_fix_s, inbound_course_deg, lubberline::procedure::HoldingSide::from_code("side", f64::from(side))?, lubberline::procedure::TimedLeg::from_code("timed", f64::from(timed))?, time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.bearing_from_fix_deg, answer.distance_nm, answer.heading_deg, answer.bank_deg])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [bearing_from_fix_deg, distance_nm, heading_deg, bank_deg]) }
}

/// `lubber_holding_pattern_at` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `side` is one code for all points: which way the turns go: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
///
/// `timed` is one code for all points: the leg whose time is given, and where its clock starts: LUBBER_TIMED_LEG_INBOUND, LUBBER_TIMED_LEG_OUTBOUND, LUBBER_TIMED_LEG_OUTBOUND_FROM_LEVEL
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_holding_pattern_at_n(
    count: usize,
    since_fix_s: *const f64,
    since_fix_s_stride: isize,
    inbound_course_deg: *const f64,
    inbound_course_deg_stride: isize,
    side: i32,
    timed: i32,
    time_s: *const f64,
    time_s_stride: isize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    bank_limit_deg: *const f64,
    bank_limit_deg_stride: isize,
    turn_rate_limit_deg_per_s: *const f64,
    turn_rate_limit_deg_per_s_stride: isize,
    roll_rate_deg_per_s: *const f64,
    roll_rate_deg_per_s_stride: isize,
    bearing_from_fix_deg: *mut f64,
    bearing_from_fix_deg_stride: isize,
    distance_nm: *mut f64,
    distance_nm_stride: isize,
    heading_deg: *mut f64,
    heading_deg_stride: isize,
    bank_deg: *mut f64,
    bank_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let side = f64::from(side);
    let timed = f64::from(timed);
    let (inputs, outputs) = ([Array::input(since_fix_s, since_fix_s_stride), Array::input(inbound_course_deg, inbound_course_deg_stride), Array::input(&raw const side, 0), Array::input(&raw const timed, 0), Array::input(time_s, time_s_stride), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride), Array::input(bank_limit_deg, bank_limit_deg_stride), Array::input(turn_rate_limit_deg_per_s, turn_rate_limit_deg_per_s_stride), Array::input(roll_rate_deg_per_s, roll_rate_deg_per_s_stride)], [Array::output(bearing_from_fix_deg, bearing_from_fix_deg_stride), Array::output(distance_nm, distance_nm_stride), Array::output(heading_deg, heading_deg_stride), Array::output(bank_deg, bank_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("holding_pattern_at") }, count, &inputs, &outputs, status) }
}

/// The greatest ground distance at which a station is received over a smooth earth.
///
/// `Re (acos(Re / (Re + h1)) + acos(Re / (Re + h2)))` with `Re` 4/3 of the earth's radius, or a factor times `sqrt(h1) + sqrt(h2)`.
///
/// @param aircraft_height_ft height of the aircraft above the surface, 0 to 400 000
/// @param antenna_height_ft height of the antenna above the surface, 0 to 400 000
/// @param rule which rule: LUBBER_HORIZON_RULE_FOUR_THIRDS, LUBBER_HORIZON_RULE_FEET_MILES, LUBBER_HORIZON_RULE_METRES_KILOMETRES, LUBBER_HORIZON_RULE_FIVE_QUARTERS
/// @param[out] radio_horizon_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Exact for its model; the rules differ by up to 2 percent, the air of the day and terrain by more.
/// Degenerate cases: Two heights of zero see no distance.
/// Errors: A value outside its range.
/// Source: 4/3 of the radius: derived, the factor from ITU-R P.310 (from memory). 1.23 sqrt(ft) NM and 4.11 sqrt(m) km: ICAO Doc 8168 Vol II (5th ed. 2006),
/// Part III Section 1 Chapter 3, Appendix. 1.25 sqrt(ft) NM: common practice.
///
/// Example: lubber_radio_horizon_nm(31000.0, 40.0, LUBBER_HORIZON_RULE_FOUR_THIRDS, &value) gives 224.0
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_radio_horizon_nm(
    aircraft_height_ft: f64,
    antenna_height_ft: f64,
    rule: i32,
    radio_horizon_nm: *mut f64,
) -> i32 {
    let answer = || {
        if [aircraft_height_ft, antenna_height_ft].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 1]) }
        plain::radio_horizon_nm(aircraft_height_ft, antenna_height_ft, lubberline::station::HorizonRule::from_code("rule", f64::from(rule))?).map(|answer| [answer])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [radio_horizon_nm]) }
}

/// `lubber_radio_horizon_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `rule` is one code for all points: which rule: LUBBER_HORIZON_RULE_FOUR_THIRDS, LUBBER_HORIZON_RULE_FEET_MILES, LUBBER_HORIZON_RULE_METRES_KILOMETRES, LUBBER_HORIZON_RULE_FIVE_QUARTERS
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_radio_horizon_nm_n(
    count: usize,
    aircraft_height_ft: *const f64,
    aircraft_height_ft_stride: isize,
    antenna_height_ft: *const f64,
    antenna_height_ft_stride: isize,
    rule: i32,
    radio_horizon_nm: *mut f64,
    radio_horizon_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let rule = f64::from(rule);
    let (inputs, outputs) = ([Array::input(aircraft_height_ft, aircraft_height_ft_stride), Array::input(antenna_height_ft, antenna_height_ft_stride), Array::input(&raw const rule, 0)], [Array::output(radio_horizon_nm, radio_horizon_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("radio_horizon_nm") }, count, &inputs, &outputs, status) }
}

/// The least height at which a station is received at a ground distance over a smooth earth: the inverse of `radio_horizon_nm`.
///
/// `Re (sec(d / Re - acos(Re / (Re + h))) - 1)` with `Re` 4/3 of the earth's radius, or the square of `d / factor - sqrt(h)`.
///
/// @param ground_distance_nm distance along the ground, 0 to 10 900
/// @param antenna_height_ft height of the antenna above the surface, 0 to 400 000
/// @param rule which rule: LUBBER_HORIZON_RULE_FOUR_THIRDS, LUBBER_HORIZON_RULE_FEET_MILES, LUBBER_HORIZON_RULE_METRES_KILOMETRES, LUBBER_HORIZON_RULE_FIVE_QUARTERS
/// @param[out] least_reception_height_ft the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As `radio_horizon_nm`.
/// Degenerate cases: Within the antenna's own horizon it is zero.
/// Errors: A value outside its range, or a distance at which 400 000 ft are not enough.
/// Source: As `radio_horizon_nm`.
///
/// Example: lubber_least_reception_height_ft(130.0, 0.0, LUBBER_HORIZON_RULE_FOUR_THIRDS, &value) gives 11198
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_least_reception_height_ft(
    ground_distance_nm: f64,
    antenna_height_ft: f64,
    rule: i32,
    least_reception_height_ft: *mut f64,
) -> i32 {
    let answer = || {
        if [ground_distance_nm, antenna_height_ft].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 1]) }
        plain::least_reception_height_ft(ground_distance_nm, antenna_height_ft, lubberline::station::HorizonRule::from_code("rule", f64::from(rule))?).map(|answer| [answer])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [least_reception_height_ft]) }
}

/// `lubber_least_reception_height_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `rule` is one code for all points: which rule: LUBBER_HORIZON_RULE_FOUR_THIRDS, LUBBER_HORIZON_RULE_FEET_MILES, LUBBER_HORIZON_RULE_METRES_KILOMETRES, LUBBER_HORIZON_RULE_FIVE_QUARTERS
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_least_reception_height_ft_n(
    count: usize,
    ground_distance_nm: *const f64,
    ground_distance_nm_stride: isize,
    antenna_height_ft: *const f64,
    antenna_height_ft_stride: isize,
    rule: i32,
    least_reception_height_ft: *mut f64,
    least_reception_height_ft_stride: isize,
    status: *mut i32,
) -> usize {
    let rule = f64::from(rule);
    let (inputs, outputs) = ([Array::input(ground_distance_nm, ground_distance_nm_stride), Array::input(antenna_height_ft, antenna_height_ft_stride), Array::input(&raw const rule, 0)], [Array::output(least_reception_height_ft, least_reception_height_ft_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("least_reception_height_ft") }, count, &inputs, &outputs, status) }
}

/// How far the published service volume of a station's class reaches at a height.
///
/// The farthest of the published layers that hold the height. The classes named `above_ground` are those of older editions, whose heights
/// are counted from the ground at the station; all others count from the transmitter.
///
/// @param service_class the class of the station: LUBBER_SERVICE_CLASS_TERMINAL, LUBBER_SERVICE_CLASS_LOW, LUBBER_SERVICE_CLASS_HIGH, LUBBER_SERVICE_CLASS_VOR_LOW, LUBBER_SERVICE_CLASS_VOR_HIGH, LUBBER_SERVICE_CLASS_DME_LOW, LUBBER_SERVICE_CLASS_DME_HIGH, LUBBER_SERVICE_CLASS_TERMINAL_ABOVE_GROUND, LUBBER_SERVICE_CLASS_LOW_ABOVE_GROUND, LUBBER_SERVICE_CLASS_HIGH_ABOVE_GROUND, LUBBER_SERVICE_CLASS_COMPASS_LOCATOR, LUBBER_SERVICE_CLASS_NDB_MEDIUM_HIGH, LUBBER_SERVICE_CLASS_NDB_HIGH, LUBBER_SERVICE_CLASS_NDB_VERY_HIGH
/// @param height_ft height above the station's antenna, -60 000 to 400 000
/// @param antenna_height_ft height of the antenna above the ground, 0 to 400 000
/// @param[out] service_reach_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As published: a floor belongs to its layer, a ceiling where the text says "including".
/// Degenerate cases: Outside every layer the reach is zero. The lower edges below 1 000 ft that some editions print as curves, and the cone above the station
/// (`cone_radius_nm`), are not in it.
/// Errors: A value outside its range.
/// Source: FAA Aeronautical Information Manual of 2023, 1-1-8, TBL 1-1-1 and TBL 1-1-2 (DL and DH from memory of that table); for heights above the ground the
/// editions of 2004 and 2016. Below 12 900 ft the DME classes reach to the radio horizon (4/3 of the earth's radius).
///
/// Example: lubber_service_reach_nm(LUBBER_SERVICE_CLASS_HIGH, 18000.0, 0.0, &value) gives 130
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_service_reach_nm(
    service_class: i32,
    height_ft: f64,
    antenna_height_ft: f64,
    service_reach_nm: *mut f64,
) -> i32 {
    let answer = || {
        if [height_ft, antenna_height_ft].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 1]) }
        plain::service_reach_nm(lubberline::station::ServiceClass::from_code("service_class", f64::from(service_class))?, height_ft, antenna_height_ft).map(|answer| [answer])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [service_reach_nm]) }
}

/// `lubber_service_reach_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `service_class` is one code for all points: the class of the station: LUBBER_SERVICE_CLASS_TERMINAL, LUBBER_SERVICE_CLASS_LOW, LUBBER_SERVICE_CLASS_HIGH, LUBBER_SERVICE_CLASS_VOR_LOW, LUBBER_SERVICE_CLASS_VOR_HIGH, LUBBER_SERVICE_CLASS_DME_LOW, LUBBER_SERVICE_CLASS_DME_HIGH, LUBBER_SERVICE_CLASS_TERMINAL_ABOVE_GROUND, LUBBER_SERVICE_CLASS_LOW_ABOVE_GROUND, LUBBER_SERVICE_CLASS_HIGH_ABOVE_GROUND, LUBBER_SERVICE_CLASS_COMPASS_LOCATOR, LUBBER_SERVICE_CLASS_NDB_MEDIUM_HIGH, LUBBER_SERVICE_CLASS_NDB_HIGH, LUBBER_SERVICE_CLASS_NDB_VERY_HIGH
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_service_reach_nm_n(
    count: usize,
    service_class: i32,
    height_ft: *const f64,
    height_ft_stride: isize,
    antenna_height_ft: *const f64,
    antenna_height_ft_stride: isize,
    service_reach_nm: *mut f64,
    service_reach_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let service_class = f64::from(service_class);
    let (inputs, outputs) = ([Array::input(&raw const service_class, 0), Array::input(height_ft, height_ft_stride), Array::input(antenna_height_ft, antenna_height_ft_stride)], [Array::output(service_reach_nm, service_reach_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("service_reach_nm") }, count, &inputs, &outputs, status) }
}

/// What a course deviation indicator shows on a radial with a course selected.
///
/// Within 90 degrees of the selected course FROM and `course - radial`; beyond, TO and `radial + 180 - course`.
///
/// @param radial_deg radial of the aircraft, any finite number
/// @param selected_course_deg the course selected, in the station's north, any finite number
/// @param full_scale_deg deviation at which the needle stands at the end of its scale, above 0 below 90
/// @param abeam_zone_deg half-width of the zone about 90 degrees from the course in which it shows neither TO nor FROM, 0 to 45
/// @param[out] deviation_deg Angle at the station from the aircraft to the selected course, -90 to 90, positive when the course lies to the right; may be NULL
/// @param[out] deflection Where the needle stands as a part of full scale, held at its end, -1 to 1, positive right of centre; may be NULL
/// @param[out] to_from Whether the selected course leads to or from the station, LUBBER_TO_FROM_OFF, LUBBER_TO_FROM_TO, LUBBER_TO_FROM_FROM: 0 neither, 1 to, 2 from; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error.
/// Degenerate cases: Exactly abeam neither TO nor FROM is shown, whatever the zone's width.
/// Errors: A value outside its range.
/// Source: FAA-H-8083-15 (Instrument Flying Handbook), VOR indications (from memory). Full scale: five dots of 2 degrees make 10 (FAA-H-8083-25, from memory); the
/// Instrument Flying Handbook (FAA-H-8083-15A, p. 7-11) states 12 or more. The zone abeam: common practice.
///
/// Example: lubber_vor_needle(227.0, 50.0, 10.0, 1.0, NULL, &value, NULL) gives -0.3
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_vor_needle(
    radial_deg: f64,
    selected_course_deg: f64,
    full_scale_deg: f64,
    abeam_zone_deg: f64,
    deviation_deg: *mut f64,
    deflection: *mut f64,
    to_from: *mut f64,
) -> i32 {
    let answer = || plain::vor_needle(radial_deg, selected_course_deg, full_scale_deg, abeam_zone_deg).map(|answer| [answer.deviation_deg, answer.deflection, answer.to_from]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [deviation_deg, deflection, to_from]) }
}

/// `lubber_vor_needle` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_vor_needle_n(
    count: usize,
    radial_deg: *const f64,
    radial_deg_stride: isize,
    selected_course_deg: *const f64,
    selected_course_deg_stride: isize,
    full_scale_deg: *const f64,
    full_scale_deg_stride: isize,
    abeam_zone_deg: *const f64,
    abeam_zone_deg_stride: isize,
    deviation_deg: *mut f64,
    deviation_deg_stride: isize,
    deflection: *mut f64,
    deflection_stride: isize,
    to_from: *mut f64,
    to_from_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(radial_deg, radial_deg_stride), Array::input(selected_course_deg, selected_course_deg_stride), Array::input(full_scale_deg, full_scale_deg_stride), Array::input(abeam_zone_deg, abeam_zone_deg_stride)], [Array::output(deviation_deg, deviation_deg_stride), Array::output(deflection, deflection_stride), Array::output(to_from, to_from_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("vor_needle") }, count, &inputs, &outputs, status) }
}

/// What a VOR/DME receiver shows at a place, with a perfect signal and a course selected.
///
/// Radial and slant range of `observe`, the needle of `vor_needle`, the DME to the nearest step of its display. The flag is, in this order: out of range,
/// below the radio horizon (4/3 of the earth's radius, smooth), in the cone, abeam.
///
/// @param station_latitude_deg latitude of the antenna, -90 to 90
/// @param station_longitude_deg longitude of the antenna, any finite number
/// @param station_elevation_ft elevation of the antenna above mean sea level, -16 500 to 60 000
/// @param station_declination_deg angle from true north to the station's north, positive east, -180 to 180
/// @param latitude_deg latitude of the aircraft, -90 to 90
/// @param longitude_deg longitude of the aircraft, any finite number
/// @param altitude_ft altitude of the aircraft above mean sea level, -16 500 to 400 000
/// @param selected_course_deg the course selected, in the station's north, any finite number
/// @param full_scale_deg deviation at which the needle stands at the end of its scale, above 0 below 90
/// @param abeam_zone_deg half-width of the zone about 90 degrees from the course in which it shows neither TO nor FROM, 0 to 45
/// @param reach_nm ground distance to which the station is received, 0 to 10 900
/// @param cone_half_angle_deg half-angle of the cone of confusion from the vertical, above 0 below 90
/// @param antenna_height_ft height of the antenna above the smooth surface of the radio horizon, 0 to 400 000
/// @param dme_step_nm step in which the DME counts, above 0 to 10
/// @param[out] flag Why neither TO nor FROM is shown, LUBBER_FLAG_CLEAR, LUBBER_FLAG_ABEAM, LUBBER_FLAG_CONE, LUBBER_FLAG_BELOW_HORIZON, LUBBER_FLAG_OUT_OF_RANGE: 0 clear, 1 abeam, 2 in the cone, 3 below the horizon, 4 out of range; may be NULL
/// @param[out] to_from Whether the selected course leads to or from the station, LUBBER_TO_FROM_OFF, LUBBER_TO_FROM_TO, LUBBER_TO_FROM_FROM: 0 neither, 1 to, 2 from; may be NULL
/// @param[out] deviation_deg Angle at the station from the aircraft to the selected course, positive when the course lies to the right; NaN where the VOR is not to be used; may be NULL
/// @param[out] deflection Where the needle stands as a part of full scale, -1 to 1, positive right of centre; NaN where the VOR is not to be used; may be NULL
/// @param[out] radial_deg The radial, as a bearing pointer shows it; NaN where the VOR is not to be used; may be NULL
/// @param[out] dme_nm The DME as displayed; NaN out of range and below the horizon; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Radial and slant range as `observe`; the bounds of reception are models.
/// Degenerate cases: Exactly over or under the antenna there is no radial: the flag is that of the cone, unless the station is not received at all.
/// Errors: A value outside its range.
/// Source: As `observe`, `vor_needle`, `radio_horizon_nm` and `cone_radius_nm`. 199 NM: FAA Aeronautical Information Manual 1-1-7, edition not shown in the copy read; `service_reach_nm` has the reach of
/// a class. Tenths of a mile: common practice.
///
/// Example: lubber_vor_receiver(61.25, -11.5, 420.0, -6.0, 61.5, -11.0, 31000.0, 225.0, 10.0, 1.0, 199.0, 50.0, 0.0, 0.1, NULL, NULL, NULL, &value, NULL, NULL) gives 0.46
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_vor_receiver(
    station_latitude_deg: f64,
    station_longitude_deg: f64,
    station_elevation_ft: f64,
    station_declination_deg: f64,
    latitude_deg: f64,
    longitude_deg: f64,
    altitude_ft: f64,
    selected_course_deg: f64,
    full_scale_deg: f64,
    abeam_zone_deg: f64,
    reach_nm: f64,
    cone_half_angle_deg: f64,
    antenna_height_ft: f64,
    dme_step_nm: f64,
    flag: *mut f64,
    to_from: *mut f64,
    deviation_deg: *mut f64,
    deflection: *mut f64,
    radial_deg: *mut f64,
    dme_nm: *mut f64,
) -> i32 {
    let answer = || plain::vor_receiver(station_latitude_deg, station_longitude_deg, station_elevation_ft, station_declination_deg, latitude_deg, longitude_deg, altitude_ft, selected_course_deg, full_scale_deg, abeam_zone_deg, reach_nm, cone_half_angle_deg, antenna_height_ft, dme_step_nm).map(|answer| [answer.flag, answer.to_from, answer.deviation_deg, answer.deflection, answer.radial_deg, answer.dme_nm]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [flag, to_from, deviation_deg, deflection, radial_deg, dme_nm]) }
}

/// `lubber_vor_receiver` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_vor_receiver_n(
    count: usize,
    station_latitude_deg: *const f64,
    station_latitude_deg_stride: isize,
    station_longitude_deg: *const f64,
    station_longitude_deg_stride: isize,
    station_elevation_ft: *const f64,
    station_elevation_ft_stride: isize,
    station_declination_deg: *const f64,
    station_declination_deg_stride: isize,
    latitude_deg: *const f64,
    latitude_deg_stride: isize,
    longitude_deg: *const f64,
    longitude_deg_stride: isize,
    altitude_ft: *const f64,
    altitude_ft_stride: isize,
    selected_course_deg: *const f64,
    selected_course_deg_stride: isize,
    full_scale_deg: *const f64,
    full_scale_deg_stride: isize,
    abeam_zone_deg: *const f64,
    abeam_zone_deg_stride: isize,
    reach_nm: *const f64,
    reach_nm_stride: isize,
    cone_half_angle_deg: *const f64,
    cone_half_angle_deg_stride: isize,
    antenna_height_ft: *const f64,
    antenna_height_ft_stride: isize,
    dme_step_nm: *const f64,
    dme_step_nm_stride: isize,
    flag: *mut f64,
    flag_stride: isize,
    to_from: *mut f64,
    to_from_stride: isize,
    deviation_deg: *mut f64,
    deviation_deg_stride: isize,
    deflection: *mut f64,
    deflection_stride: isize,
    radial_deg: *mut f64,
    radial_deg_stride: isize,
    dme_nm: *mut f64,
    dme_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(station_latitude_deg, station_latitude_deg_stride), Array::input(station_longitude_deg, station_longitude_deg_stride), Array::input(station_elevation_ft, station_elevation_ft_stride), Array::input(station_declination_deg, station_declination_deg_stride), Array::input(latitude_deg, latitude_deg_stride), Array::input(longitude_deg, longitude_deg_stride), Array::input(altitude_ft, altitude_ft_stride), Array::input(selected_course_deg, selected_course_deg_stride), Array::input(full_scale_deg, full_scale_deg_stride), Array::input(abeam_zone_deg, abeam_zone_deg_stride), Array::input(reach_nm, reach_nm_stride), Array::input(cone_half_angle_deg, cone_half_angle_deg_stride), Array::input(antenna_height_ft, antenna_height_ft_stride), Array::input(dme_step_nm, dme_step_nm_stride)], [Array::output(flag, flag_stride), Array::output(to_from, to_from_stride), Array::output(deviation_deg, deviation_deg_stride), Array::output(deflection, deflection_stride), Array::output(radial_deg, radial_deg_stride), Array::output(dme_nm, dme_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("vor_receiver") }, count, &inputs, &outputs, status) }
}

/// A slant range as a DME display shows it: to the nearest of its steps, halves up.
///
/// `round(dme / step) step`.
///
/// @param dme_nm slant range, 0 to 10 900
/// @param dme_step_nm step in which the display counts, above 0 to 10
/// @param[out] displayed_dme_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Half a step.
/// Degenerate cases: Below half a step zero is shown.
/// Errors: A value outside its range.
/// Source: Common practice: displays count tenths of a mile.
///
/// Example: lubber_displayed_dme_nm(21.46, 0.1, &value) gives 21.50
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_displayed_dme_nm(
    dme_nm: f64,
    dme_step_nm: f64,
    displayed_dme_nm: *mut f64,
) -> i32 {
    let answer = || plain::displayed_dme_nm(dme_nm, dme_step_nm).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [displayed_dme_nm]) }
}

/// `lubber_displayed_dme_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_displayed_dme_nm_n(
    count: usize,
    dme_nm: *const f64,
    dme_nm_stride: isize,
    dme_step_nm: *const f64,
    dme_step_nm_stride: isize,
    displayed_dme_nm: *mut f64,
    displayed_dme_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(dme_nm, dme_nm_stride), Array::input(dme_step_nm, dme_step_nm_stride)], [Array::output(displayed_dme_nm, displayed_dme_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("displayed_dme_nm") }, count, &inputs, &outputs, status) }
}

/// Distance off course, right positive, for a deflection of the needle at a distance from the station.
///
/// `-R asin(sin(d / R) sin(deflection full_scale))` on a sphere of the mean radius, in the plane `-d sin(deviation)`: right of course the needle stands left.
///
/// @param deflection where the needle stands as a part of full scale, positive right of centre, -1 to 1
/// @param distance_nm distance from the station along the ground, above 0 to 5000
/// @param full_scale_deg deviation at full scale, above 0 below 90
/// @param[out] cross_track_of_deflection_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Exact on the sphere; the ellipsoid moves it by less than 0.6 percent.
/// Degenerate cases: At either end of the scale it is the least distance that it may be.
/// Errors: A value outside its range.
/// Source: The law of sines on the sphere.
///
/// Example: lubber_cross_track_of_deflection_nm(0.5, 30.0, 10.0, &value) gives -2.615
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_cross_track_of_deflection_nm(
    deflection: f64,
    distance_nm: f64,
    full_scale_deg: f64,
    cross_track_of_deflection_nm: *mut f64,
) -> i32 {
    let answer = || plain::cross_track_of_deflection_nm(deflection, distance_nm, full_scale_deg).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [cross_track_of_deflection_nm]) }
}

/// `lubber_cross_track_of_deflection_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_cross_track_of_deflection_nm_n(
    count: usize,
    deflection: *const f64,
    deflection_stride: isize,
    distance_nm: *const f64,
    distance_nm_stride: isize,
    full_scale_deg: *const f64,
    full_scale_deg_stride: isize,
    cross_track_of_deflection_nm: *mut f64,
    cross_track_of_deflection_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(deflection, deflection_stride), Array::input(distance_nm, distance_nm_stride), Array::input(full_scale_deg, full_scale_deg_stride)], [Array::output(cross_track_of_deflection_nm, cross_track_of_deflection_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("cross_track_of_deflection_nm") }, count, &inputs, &outputs, status) }
}

/// Deviation and deflection for a distance off course at a distance from the station: the inverse of `cross_track_of_deflection_nm`.
///
/// `-asin(sin(x / R) / sin(d / R))` on a sphere of the mean radius, in the plane `-asin(x / d)`.
///
/// @param cross_track_nm distance off course, right positive, -5000 to 5000
/// @param distance_nm distance from the station along the ground, above 0 to 5000
/// @param full_scale_deg deviation at full scale, above 0 below 90
/// @param[out] deviation_deg Angle at the station from the aircraft to the course, -90 to 90, positive when the course lies to the right; may be NULL
/// @param[out] deflection Where the needle stands as a part of full scale, held at its end, -1 to 1, positive right of centre; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As `cross_track_of_deflection_nm`.
/// Degenerate cases: Beyond full scale the needle is held at its end; the deviation goes on to 90 degrees.
/// Errors: A value outside its range, or an aircraft farther off course than from the station.
/// Source: The law of sines on the sphere.
///
/// Example: lubber_deflection_of_cross_track(1.0, 30.0, 10.0, NULL, &value) gives -0.191
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_deflection_of_cross_track(
    cross_track_nm: f64,
    distance_nm: f64,
    full_scale_deg: f64,
    deviation_deg: *mut f64,
    deflection: *mut f64,
) -> i32 {
    let answer = || plain::deflection_of_cross_track(cross_track_nm, distance_nm, full_scale_deg).map(|answer| [answer.deviation_deg, answer.deflection]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [deviation_deg, deflection]) }
}

/// `lubber_deflection_of_cross_track` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_deflection_of_cross_track_n(
    count: usize,
    cross_track_nm: *const f64,
    cross_track_nm_stride: isize,
    distance_nm: *const f64,
    distance_nm_stride: isize,
    full_scale_deg: *const f64,
    full_scale_deg_stride: isize,
    deviation_deg: *mut f64,
    deviation_deg_stride: isize,
    deflection: *mut f64,
    deflection_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(cross_track_nm, cross_track_nm_stride), Array::input(distance_nm, distance_nm_stride), Array::input(full_scale_deg, full_scale_deg_stride)], [Array::output(deviation_deg, deviation_deg_stride), Array::output(deflection, deflection_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("deflection_of_cross_track") }, count, &inputs, &outputs, status) }
}

/// How fast the needle moves, for a groundspeed and a distance from the station.
///
/// `-v sin(crossing) / (R sin(d / R))` on a sphere of the mean radius, in the plane `-v sin(crossing) / d`.
///
/// @param groundspeed_kt groundspeed, 0 to 10 000
/// @param distance_nm distance from the station along the ground, above 0 to 5000
/// @param crossing_angle_deg angle, right positive, to the track from the direction away from the station (FROM) or to it (TO)
/// @param full_scale_deg deviation at full scale, above 0 below 90
/// @param[out] needle_rate_deg_per_s How fast the deviation changes, positive when the needle moves to the right; may be NULL
/// @param[out] full_scale_time_s How long the needle takes from the end of its scale to the centre, at this distance and crossing; infinite along the course; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Exact on the sphere; the ellipsoid moves it by less than 0.6 percent.
/// Degenerate cases: Along the course the needle stands still, and the time is infinite.
/// Errors: A value outside its range.
/// Source: Derived: the motion across the line from the station.
///
/// Example: lubber_needle_motion(180.0, 10.0, -30.0, 10.0, &value, NULL) gives 0.143
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_needle_motion(
    groundspeed_kt: f64,
    distance_nm: f64,
    crossing_angle_deg: f64,
    full_scale_deg: f64,
    needle_rate_deg_per_s: *mut f64,
    full_scale_time_s: *mut f64,
) -> i32 {
    let answer = || plain::needle_motion(groundspeed_kt, distance_nm, crossing_angle_deg, full_scale_deg).map(|answer| [answer.needle_rate_deg_per_s, answer.full_scale_time_s]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [needle_rate_deg_per_s, full_scale_time_s]) }
}

/// `lubber_needle_motion` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_needle_motion_n(
    count: usize,
    groundspeed_kt: *const f64,
    groundspeed_kt_stride: isize,
    distance_nm: *const f64,
    distance_nm_stride: isize,
    crossing_angle_deg: *const f64,
    crossing_angle_deg_stride: isize,
    full_scale_deg: *const f64,
    full_scale_deg_stride: isize,
    needle_rate_deg_per_s: *mut f64,
    needle_rate_deg_per_s_stride: isize,
    full_scale_time_s: *mut f64,
    full_scale_time_s_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(groundspeed_kt, groundspeed_kt_stride), Array::input(distance_nm, distance_nm_stride), Array::input(crossing_angle_deg, crossing_angle_deg_stride), Array::input(full_scale_deg, full_scale_deg_stride)], [Array::output(needle_rate_deg_per_s, needle_rate_deg_per_s_stride), Array::output(full_scale_time_s, full_scale_time_s_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("needle_motion") }, count, &inputs, &outputs, status) }
}

/// The rhumb line between two points of the WGS-84 ellipsoid, the short way round: its length and its constant course.
///
/// `tan C = l / q`, `d = hypot(m, l m / q)` with the differences of longitude `l`, of isometric latitude `q` and of the arc of the
/// meridian `m`; on a parallel `m / q` is its radius. Published tables of Mercator sailing count a minute of latitude as a mile.
///
/// @param lat1_deg latitude of the first point, -90 to 90
/// @param lon1_deg longitude of the first point, any finite number
/// @param lat2_deg latitude of the second point, -90 to 90
/// @param lon2_deg longitude of the second point, any finite number
/// @param[out] distance_nm Length along the surface; may be NULL
/// @param[out] course_deg True course all along, 0 to 360; NaN between coincident points; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: 20 nanometres along the line and, for the course, 40 across its far end, which is what rounding leaves of a number of degrees.
/// Degenerate cases: Coincident points have no course (NaN). A line to or from a pole runs along the meridian of the other point. Points half the world apart
/// in longitude have two such lines; the eastward one is given.
/// Errors: A latitude beyond a pole, or an infinite number.
/// Source: C. F. F. Karney, The area of rhumb polygons, Studia Geophysica et Geodaetica 68 (2024) 99-120, doi 10.1007/s11200-024-0709-z; the
/// differences are derived beside the code.
///
/// Example: lubber_rhumb_inverse(60.0, -30.0, 60.0, 30.0, &value, NULL) gives 1807.775
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rhumb_inverse(
    lat1_deg: f64,
    lon1_deg: f64,
    lat2_deg: f64,
    lon2_deg: f64,
    distance_nm: *mut f64,
    course_deg: *mut f64,
) -> i32 {
    let answer = || plain::rhumb_inverse(lat1_deg, lon1_deg, lat2_deg, lon2_deg).map(|answer| [answer.distance_nm, answer.course_deg]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [distance_nm, course_deg]) }
}

/// `lubber_rhumb_inverse` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rhumb_inverse_n(
    count: usize,
    lat1_deg: *const f64,
    lat1_deg_stride: isize,
    lon1_deg: *const f64,
    lon1_deg_stride: isize,
    lat2_deg: *const f64,
    lat2_deg_stride: isize,
    lon2_deg: *const f64,
    lon2_deg_stride: isize,
    distance_nm: *mut f64,
    distance_nm_stride: isize,
    course_deg: *mut f64,
    course_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat1_deg, lat1_deg_stride), Array::input(lon1_deg, lon1_deg_stride), Array::input(lat2_deg, lat2_deg_stride), Array::input(lon2_deg, lon2_deg_stride)], [Array::output(distance_nm, distance_nm_stride), Array::output(course_deg, course_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rhumb_inverse") }, count, &inputs, &outputs, status) }
}

/// The point reached along a rhumb line of the WGS-84 ellipsoid.
///
/// The latitude is where the arc of the meridian is `d cos C`, by four steps of Newton's method; the longitude follows as `d sin C` over
/// the mean radius of the parallels passed.
///
/// @param lat_deg latitude of the start, -90 to 90
/// @param lon_deg longitude of the start, any finite number
/// @param course_deg true course, any finite number
/// @param distance_nm length of the line, 0 to 10 900
/// @param[out] latitude_deg Latitude of the point reached, -90 to 90; may be NULL
/// @param[out] longitude_deg Longitude of the point reached, -180 to 180; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: 30 nanometres, but around a pole: within a metre of it a nanometre of the way is more of longitude.
/// Degenerate cases: A line that ends within a micrometre of a pole ends at it, with the longitude of the start. From a pole a line runs along the meridian of
/// the longitude given there.
/// Errors: A value outside its range; a line that would pass a pole, or leave one in any direction but along a meridian, which winds about the
/// pole without end.
/// Source: As `lubber_rhumb_inverse`.
///
/// Example: lubber_rhumb_direct(60.0, -10.0, 45.0, 600.0, &value, NULL) gives 67.0489
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rhumb_direct(
    lat_deg: f64,
    lon_deg: f64,
    course_deg: f64,
    distance_nm: f64,
    latitude_deg: *mut f64,
    longitude_deg: *mut f64,
) -> i32 {
    let answer = || plain::rhumb_direct(lat_deg, lon_deg, course_deg, distance_nm).map(|answer| [answer.latitude_deg, answer.longitude_deg]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [latitude_deg, longitude_deg]) }
}

/// `lubber_rhumb_direct` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rhumb_direct_n(
    count: usize,
    lat_deg: *const f64,
    lat_deg_stride: isize,
    lon_deg: *const f64,
    lon_deg_stride: isize,
    course_deg: *const f64,
    course_deg_stride: isize,
    distance_nm: *const f64,
    distance_nm_stride: isize,
    latitude_deg: *mut f64,
    latitude_deg_stride: isize,
    longitude_deg: *mut f64,
    longitude_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat_deg, lat_deg_stride), Array::input(lon_deg, lon_deg_stride), Array::input(course_deg, course_deg_stride), Array::input(distance_nm, distance_nm_stride)], [Array::output(latitude_deg, latitude_deg_stride), Array::output(longitude_deg, longitude_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rhumb_direct") }, count, &inputs, &outputs, status) }
}

/// How much longer the rhumb line between two points is than the geodesic, and by what angle the two set out apart.
///
/// The results of `rhumb_inverse` less those of `geodesic_inverse`.
///
/// @param lat1_deg latitude of the first point, -90 to 90
/// @param lon1_deg longitude of the first point, any finite number
/// @param lat2_deg latitude of the second point, -90 to 90
/// @param lon2_deg longitude of the second point, any finite number
/// @param[out] excess_nm How much longer the rhumb line is; may be NULL
/// @param[out] conversion_angle_deg Conversion angle: what is added to the course of the rhumb line for the bearing of the geodesic at the first point, -180 to 180; NaN between coincident points; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: 40 nanometres along the line and, for the angle, 60 across its far end.
/// Degenerate cases: Coincident points have an excess of zero and no angle (NaN). Along a meridian the two are one.
/// Errors: A latitude beyond a pole, or an infinite number.
/// Source: As `lubber_rhumb_inverse` and `lubber_geodesic_inverse`.
///
/// Example: lubber_rhumb_excess(60.0, -30.0, 60.0, 30.0, &value, NULL) gives 62.97
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rhumb_excess(
    lat1_deg: f64,
    lon1_deg: f64,
    lat2_deg: f64,
    lon2_deg: f64,
    excess_nm: *mut f64,
    conversion_angle_deg: *mut f64,
) -> i32 {
    let answer = || plain::rhumb_excess(lat1_deg, lon1_deg, lat2_deg, lon2_deg).map(|answer| [answer.excess_nm, answer.conversion_angle_deg]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [excess_nm, conversion_angle_deg]) }
}

/// `lubber_rhumb_excess` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rhumb_excess_n(
    count: usize,
    lat1_deg: *const f64,
    lat1_deg_stride: isize,
    lon1_deg: *const f64,
    lon1_deg_stride: isize,
    lat2_deg: *const f64,
    lat2_deg_stride: isize,
    lon2_deg: *const f64,
    lon2_deg_stride: isize,
    excess_nm: *mut f64,
    excess_nm_stride: isize,
    conversion_angle_deg: *mut f64,
    conversion_angle_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat1_deg, lat1_deg_stride), Array::input(lon1_deg, lon1_deg_stride), Array::input(lat2_deg, lat2_deg_stride), Array::input(lon2_deg, lon2_deg_stride)], [Array::output(excess_nm, excess_nm_stride), Array::output(conversion_angle_deg, conversion_angle_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rhumb_excess") }, count, &inputs, &outputs, status) }
}

/// Distance along the course at which an angle has grown to a width: where a protected area begins to splay.
///
/// `width / tan(angle)`.
///
/// @param half_width_nm half the width of the area, 0 to 1000
/// @param angle_deg the angle, 0 to 90
/// @param[out] splay_distance_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Over a flat earth.
/// Degenerate cases: Without an angle it is infinite; without either it is NaN.
/// Errors: A value outside its range.
/// Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part II Section 3 Chapter 1, 1.4.2.3: 5 NM and 5.7 degrees for VOR, beyond 49.8 NM.
///
/// Example: lubber_splay_distance_nm(4.0, 4.5, &value) gives 50.8
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_splay_distance_nm(
    half_width_nm: f64,
    angle_deg: f64,
    splay_distance_nm: *mut f64,
) -> i32 {
    let answer = || plain::splay_distance_nm(half_width_nm, angle_deg).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [splay_distance_nm]) }
}

/// `lubber_splay_distance_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_splay_distance_nm_n(
    count: usize,
    half_width_nm: *const f64,
    half_width_nm_stride: isize,
    angle_deg: *const f64,
    angle_deg_stride: isize,
    splay_distance_nm: *mut f64,
    splay_distance_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(half_width_nm, half_width_nm_stride), Array::input(angle_deg, angle_deg_stride)], [Array::output(splay_distance_nm, splay_distance_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("splay_distance_nm") }, count, &inputs, &outputs, status) }
}

/// Half the width of the airspace that contains the traffic of a VOR route.
///
/// Constant to 25 NM from the VOR, then growing linearly to 75 NM: for 95 percent from 4 to 6 NM.
///
/// @param distance_nm distance from the VOR along the route, 0 to 75
/// @param containment the share of the flying time that is contained: LUBBER_CONTAINMENT_PERCENT95, LUBBER_CONTAINMENT_PERCENT96, LUBBER_CONTAINMENT_PERCENT97, LUBBER_CONTAINMENT_PERCENT98, LUBBER_CONTAINMENT_PERCENT99, LUBBER_CONTAINMENT_PERCENT99_AND_A_HALF
/// @param[out] route_half_width_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As published.
/// Degenerate cases: None in the range; beyond 75 NM nothing is published.
/// Errors: A value outside its range.
/// Source: ICAO Annex 11 (13th ed.), Attachment A, 3.3 and 3.4.
///
/// Example: lubber_route_half_width_nm(50.0, LUBBER_CONTAINMENT_PERCENT95, &value) gives 5.0
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_route_half_width_nm(
    distance_nm: f64,
    containment: i32,
    route_half_width_nm: *mut f64,
) -> i32 {
    let answer = || {
        if [distance_nm].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 1]) }
        plain::route_half_width_nm(distance_nm, lubberline::station::Containment::from_code("containment", f64::from(containment))?).map(|answer| [answer])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [route_half_width_nm]) }
}

/// `lubber_route_half_width_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `containment` is one code for all points: the share of the flying time that is contained: LUBBER_CONTAINMENT_PERCENT95, LUBBER_CONTAINMENT_PERCENT96, LUBBER_CONTAINMENT_PERCENT97, LUBBER_CONTAINMENT_PERCENT98, LUBBER_CONTAINMENT_PERCENT99, LUBBER_CONTAINMENT_PERCENT99_AND_A_HALF
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_route_half_width_nm_n(
    count: usize,
    distance_nm: *const f64,
    distance_nm_stride: isize,
    containment: i32,
    route_half_width_nm: *mut f64,
    route_half_width_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let containment = f64::from(containment);
    let (inputs, outputs) = ([Array::input(distance_nm, distance_nm_stride), Array::input(&raw const containment, 0)], [Array::output(route_half_width_nm, route_half_width_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("route_half_width_nm") }, count, &inputs, &outputs, status) }
}

/// The rule of density altitude beside the density altitude of dry air, term by term.
///
/// The rule of `density_altitude_rule_ft` less `density_altitude_ft`.
///
/// @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
/// @param temperature_degc temperature of the air, -200 to 200
/// @param[out] rule_ft The rule's answer; may be NULL
/// @param[out] exact_ft The exact answer; may be NULL
/// @param[out] error_ft The error: the sum of the terms; may be NULL
/// @param[out] standard_ft The standard temperature as 15 less 2 degrees for 1000 ft; may be NULL
/// @param[out] slope_ft 120 ft to the degree for 118.6; may be NULL
/// @param[out] curve_ft A straight line for a curve; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: The terms sum to the whole to rounding error.
/// Degenerate cases: In the stratosphere a degree is 96 ft, which stands in the last term.
/// Errors: A value outside its range, a temperature more than 150 K from standard, or a density altitude outside -5 to 80 km.
/// Source: The rule: common practice. The exact altitude: ICAO Doc 7488/3.
///
/// Example: lubber_rule_density_altitude_error(6000.0, 13.0, NULL, NULL, &value, NULL, NULL, NULL) gives 53
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_density_altitude_error(
    pressure_altitude_ft: f64,
    temperature_degc: f64,
    rule_ft: *mut f64,
    exact_ft: *mut f64,
    error_ft: *mut f64,
    standard_ft: *mut f64,
    slope_ft: *mut f64,
    curve_ft: *mut f64,
) -> i32 {
    let answer = || plain::rule_density_altitude_error(pressure_altitude_ft, temperature_degc).map(|answer| [answer.rule_ft, answer.exact_ft, answer.error_ft, answer.standard_ft, answer.slope_ft, answer.curve_ft]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_ft, exact_ft, error_ft, standard_ft, slope_ft, curve_ft]) }
}

/// `lubber_rule_density_altitude_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_density_altitude_error_n(
    count: usize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    temperature_degc: *const f64,
    temperature_degc_stride: isize,
    rule_ft: *mut f64,
    rule_ft_stride: isize,
    exact_ft: *mut f64,
    exact_ft_stride: isize,
    error_ft: *mut f64,
    error_ft_stride: isize,
    standard_ft: *mut f64,
    standard_ft_stride: isize,
    slope_ft: *mut f64,
    slope_ft_stride: isize,
    curve_ft: *mut f64,
    curve_ft_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(pressure_altitude_ft, pressure_altitude_ft_stride), Array::input(temperature_degc, temperature_degc_stride)], [Array::output(rule_ft, rule_ft_stride), Array::output(exact_ft, exact_ft_stride), Array::output(error_ft, error_ft_stride), Array::output(standard_ft, standard_ft_stride), Array::output(slope_ft, slope_ft_stride), Array::output(curve_ft, curve_ft_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_density_altitude_error") }, count, &inputs, &outputs, status) }
}

/// The rule of pressure altitude beside the pressure altitude, term by term.
///
/// The rule of `pressure_altitude_rule_ft` less `pressure_altitude_ft`.
///
/// @param indicated_altitude_ft altitude that the altimeter shows, -50 000 to 300 000
/// @param altimeter_setting_hpa its setting, 400 to 1200
/// @param[out] rule_ft The rule's answer; may be NULL
/// @param[out] exact_ft The exact answer; may be NULL
/// @param[out] error_ft The error: the sum of the terms; may be NULL
/// @param[out] datum_ft 29.92 for 29.9213 inches; may be NULL
/// @param[out] slope_ft 1000 ft to the inch for 924.8; may be NULL
/// @param[out] curve_ft A straight line for a curve; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: The terms sum to the whole to rounding error.
/// Degenerate cases: At the standard setting the first term is all: a foot.
/// Errors: A value outside its range, or a pressure altitude outside -5 to 80 km.
/// Source: The rule: CNATRA P-203. The exact altitude: ICAO Doc 7488/3.
///
/// Example: lubber_rule_pressure_altitude_error(5000.0, 1000.0, NULL, NULL, &value, NULL, NULL, NULL) gives 26
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_pressure_altitude_error(
    indicated_altitude_ft: f64,
    altimeter_setting_hpa: f64,
    rule_ft: *mut f64,
    exact_ft: *mut f64,
    error_ft: *mut f64,
    datum_ft: *mut f64,
    slope_ft: *mut f64,
    curve_ft: *mut f64,
) -> i32 {
    let answer = || plain::rule_pressure_altitude_error(indicated_altitude_ft, altimeter_setting_hpa).map(|answer| [answer.rule_ft, answer.exact_ft, answer.error_ft, answer.datum_ft, answer.slope_ft, answer.curve_ft]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_ft, exact_ft, error_ft, datum_ft, slope_ft, curve_ft]) }
}

/// `lubber_rule_pressure_altitude_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_pressure_altitude_error_n(
    count: usize,
    indicated_altitude_ft: *const f64,
    indicated_altitude_ft_stride: isize,
    altimeter_setting_hpa: *const f64,
    altimeter_setting_hpa_stride: isize,
    rule_ft: *mut f64,
    rule_ft_stride: isize,
    exact_ft: *mut f64,
    exact_ft_stride: isize,
    error_ft: *mut f64,
    error_ft_stride: isize,
    datum_ft: *mut f64,
    datum_ft_stride: isize,
    slope_ft: *mut f64,
    slope_ft_stride: isize,
    curve_ft: *mut f64,
    curve_ft_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(indicated_altitude_ft, indicated_altitude_ft_stride), Array::input(altimeter_setting_hpa, altimeter_setting_hpa_stride)], [Array::output(rule_ft, rule_ft_stride), Array::output(exact_ft, exact_ft_stride), Array::output(error_ft, error_ft_stride), Array::output(datum_ft, datum_ft_stride), Array::output(slope_ft, slope_ft_stride), Array::output(curve_ft, curve_ft_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_pressure_altitude_error") }, count, &inputs, &outputs, status) }
}

/// The rule of the cold-temperature correction beside the exact correction, term by term.
///
/// The rule of `cold_temperature_correction_rule_ft` less `cold_temperature_correction_exact_ft`.
///
/// @param height_ft height above the altimeter setting source, 0 to 20 000
/// @param temperature_degc temperature at the source, -200 to 200
/// @param elevation_ft elevation of the source
/// @param[out] rule_ft The rule's answer; may be NULL
/// @param[out] exact_ft The exact answer; may be NULL
/// @param[out] error_ft The error: the sum of the terms; may be NULL
/// @param[out] share_ft 4 percent for 10 degrees, where it is 10 degrees over the absolute temperature of the source; may be NULL
/// @param[out] column_ft The temperature of the source for that of the column above it; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: The terms sum to the whole to rounding error.
/// Degenerate cases: No height, no correction and no error.
/// Errors: A value outside its range.
/// Source: The rule: ICAO Doc 8168 volume I, Part III Section 1 Chapter 4, 4.3.1. The exact correction: ICAO Doc 7488/3.
///
/// Example: lubber_rule_cold_temperature_error(1500.0, -10.0, 0.0, NULL, NULL, &value, NULL, NULL) gives 6.6
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_cold_temperature_error(
    height_ft: f64,
    temperature_degc: f64,
    elevation_ft: f64,
    rule_ft: *mut f64,
    exact_ft: *mut f64,
    error_ft: *mut f64,
    share_ft: *mut f64,
    column_ft: *mut f64,
) -> i32 {
    let answer = || plain::rule_cold_temperature_error(height_ft, temperature_degc, elevation_ft).map(|answer| [answer.rule_ft, answer.exact_ft, answer.error_ft, answer.share_ft, answer.column_ft]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_ft, exact_ft, error_ft, share_ft, column_ft]) }
}

/// `lubber_rule_cold_temperature_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_cold_temperature_error_n(
    count: usize,
    height_ft: *const f64,
    height_ft_stride: isize,
    temperature_degc: *const f64,
    temperature_degc_stride: isize,
    elevation_ft: *const f64,
    elevation_ft_stride: isize,
    rule_ft: *mut f64,
    rule_ft_stride: isize,
    exact_ft: *mut f64,
    exact_ft_stride: isize,
    error_ft: *mut f64,
    error_ft_stride: isize,
    share_ft: *mut f64,
    share_ft_stride: isize,
    column_ft: *mut f64,
    column_ft_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(height_ft, height_ft_stride), Array::input(temperature_degc, temperature_degc_stride), Array::input(elevation_ft, elevation_ft_stride)], [Array::output(rule_ft, rule_ft_stride), Array::output(exact_ft, exact_ft_stride), Array::output(error_ft, error_ft_stride), Array::output(share_ft, share_ft_stride), Array::output(column_ft, column_ft_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_cold_temperature_error") }, count, &inputs, &outputs, status) }
}

/// The distance before an arc, along a radial, at which mental arithmetic begins the turn onto it.
///
/// The radius of the turn; that and, inside 12 NM, half a mile more outbound or less inbound; or half a mile.
///
/// @param arc_radius_nm distance of the arc from the station, above 0 to 5000
/// @param turn_radius_nm radius of the turn, above 0 to 5000
/// @param flown whether the radial is flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
/// @param rule which mental arithmetic: LUBBER_ARC_ENTRY_RULE_RADIUS, LUBBER_ARC_ENTRY_RULE_RADIUS_AND_HALF, LUBBER_ARC_ENTRY_RULE_HALF_MILE
/// @param[out] rule_arc_entry_lead_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: A rule. See `arc_entry_inbound_nm` and `arc_entry_outbound_nm` for the exact distance in still air, `arc_entry` in wind.
/// Degenerate cases: Inbound the radius less half a mile is zero for a turn of less than half a mile.
/// Errors: A value outside its range.
/// Source: The radius: CNATRA P-871 chapter 4. With half a mile: CNATRA P-1265 p. 2-11 (5-99). Half a mile, to 150 kt: FAA-H-8083-15.
///
/// Example: lubber_rule_arc_entry_lead_nm(10.0, 2.5, LUBBER_RADIAL_FLOWN_OUTBOUND, LUBBER_ARC_ENTRY_RULE_RADIUS_AND_HALF, &value) gives 3.0
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_arc_entry_lead_nm(
    arc_radius_nm: f64,
    turn_radius_nm: f64,
    flown: i32,
    rule: i32,
    rule_arc_entry_lead_nm: *mut f64,
) -> i32 {
    let answer = || {
        if [arc_radius_nm, turn_radius_nm].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 1]) }
        plain::rule_arc_entry_lead_nm(arc_radius_nm, turn_radius_nm, lubberline::lead::RadialFlown::from_code("flown", f64::from(flown))?, lubberline::rules::ArcEntryRule::from_code("rule", f64::from(rule))?).map(|answer| [answer])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_arc_entry_lead_nm]) }
}

/// `lubber_rule_arc_entry_lead_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `flown` is one code for all points: whether the radial is flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
///
/// `rule` is one code for all points: which mental arithmetic: LUBBER_ARC_ENTRY_RULE_RADIUS, LUBBER_ARC_ENTRY_RULE_RADIUS_AND_HALF, LUBBER_ARC_ENTRY_RULE_HALF_MILE
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_arc_entry_lead_nm_n(
    count: usize,
    arc_radius_nm: *const f64,
    arc_radius_nm_stride: isize,
    turn_radius_nm: *const f64,
    turn_radius_nm_stride: isize,
    flown: i32,
    rule: i32,
    rule_arc_entry_lead_nm: *mut f64,
    rule_arc_entry_lead_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let flown = f64::from(flown);
    let rule = f64::from(rule);
    let (inputs, outputs) = ([Array::input(arc_radius_nm, arc_radius_nm_stride), Array::input(turn_radius_nm, turn_radius_nm_stride), Array::input(&raw const flown, 0), Array::input(&raw const rule, 0)], [Array::output(rule_arc_entry_lead_nm, rule_arc_entry_lead_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_arc_entry_lead_nm") }, count, &inputs, &outputs, status) }
}

/// A rule of the lead onto an arc beside the exact lead in still air with an instant roll, term by term.
///
/// The rule of `rule_arc_entry_lead_nm` less `sqrt(D^2 + 2 D r) - D` inbound, `D - sqrt(D^2 - 2 D r)` outbound.
///
/// @param arc_radius_nm distance of the arc from the station, above 0 to 5000
/// @param turn_radius_nm radius of the turn, above 0 to 5000
/// @param flown whether the radial is flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
/// @param rule which mental arithmetic: LUBBER_ARC_ENTRY_RULE_RADIUS, LUBBER_ARC_ENTRY_RULE_RADIUS_AND_HALF, LUBBER_ARC_ENTRY_RULE_HALF_MILE
/// @param[out] rule_nm The rule's answer; may be NULL
/// @param[out] exact_nm The exact answer; may be NULL
/// @param[out] error_nm The error: the sum of the terms; may be NULL
/// @param[out] radius_nm What the rule makes of the radius; may be NULL
/// @param[out] curve_nm The radius for the lead, as if the arc were a straight line; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: The terms sum to the whole to rounding error.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range, or an arc below twice the turn radius when turning on its inside.
/// Source: Named at `rule_arc_entry_lead_nm`; the exact lead is derived from the geometry of tangent circles.
///
/// Example: lubber_rule_arc_entry_lead_error(10.0, 2.5, LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_ARC_ENTRY_RULE_RADIUS_AND_HALF, NULL, NULL, &value, NULL, NULL) gives -0.25
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_arc_entry_lead_error(
    arc_radius_nm: f64,
    turn_radius_nm: f64,
    flown: i32,
    rule: i32,
    rule_nm: *mut f64,
    exact_nm: *mut f64,
    error_nm: *mut f64,
    radius_nm: *mut f64,
    curve_nm: *mut f64,
) -> i32 {
    let answer = || {
        if [arc_radius_nm, turn_radius_nm].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 5]) }
        plain::rule_arc_entry_lead_error(arc_radius_nm, turn_radius_nm, lubberline::lead::RadialFlown::from_code("flown", f64::from(flown))?, lubberline::rules::ArcEntryRule::from_code("rule", f64::from(rule))?).map(|answer| [answer.rule_nm, answer.exact_nm, answer.error_nm, answer.radius_nm, answer.curve_nm])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_nm, exact_nm, error_nm, radius_nm, curve_nm]) }
}

/// `lubber_rule_arc_entry_lead_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `flown` is one code for all points: whether the radial is flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
///
/// `rule` is one code for all points: which mental arithmetic: LUBBER_ARC_ENTRY_RULE_RADIUS, LUBBER_ARC_ENTRY_RULE_RADIUS_AND_HALF, LUBBER_ARC_ENTRY_RULE_HALF_MILE
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_arc_entry_lead_error_n(
    count: usize,
    arc_radius_nm: *const f64,
    arc_radius_nm_stride: isize,
    turn_radius_nm: *const f64,
    turn_radius_nm_stride: isize,
    flown: i32,
    rule: i32,
    rule_nm: *mut f64,
    rule_nm_stride: isize,
    exact_nm: *mut f64,
    exact_nm_stride: isize,
    error_nm: *mut f64,
    error_nm_stride: isize,
    radius_nm: *mut f64,
    radius_nm_stride: isize,
    curve_nm: *mut f64,
    curve_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let flown = f64::from(flown);
    let rule = f64::from(rule);
    let (inputs, outputs) = ([Array::input(arc_radius_nm, arc_radius_nm_stride), Array::input(turn_radius_nm, turn_radius_nm_stride), Array::input(&raw const flown, 0), Array::input(&raw const rule, 0)], [Array::output(rule_nm, rule_nm_stride), Array::output(exact_nm, exact_nm_stride), Array::output(error_nm, error_nm_stride), Array::output(radius_nm, radius_nm_stride), Array::output(curve_nm, curve_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_arc_entry_lead_error") }, count, &inputs, &outputs, status) }
}

/// Radials to the mile along an arc by the sixty-to-one rule beside the degrees of a mile.
///
/// `60 / D` less `57.3 / D`.
///
/// @param arc_radius_nm distance of the arc from the station, above 0 to 5000
/// @param[out] rule The rule's answer, degrees for a nautical mile; may be NULL
/// @param[out] exact The exact answer; may be NULL
/// @param[out] error The error, of a single term: 60 for 57.3; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: 4.7 percent high throughout.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range.
/// Source: The rule: CNATRA P-871 chapter 4 (`rule_radials_per_mile`).
///
/// Example: lubber_rule_radials_per_mile_error(12.0, NULL, NULL, &value) gives 0.225
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_radials_per_mile_error(
    arc_radius_nm: f64,
    rule: *mut f64,
    exact: *mut f64,
    error: *mut f64,
) -> i32 {
    let answer = || plain::rule_radials_per_mile_error(arc_radius_nm).map(|answer| [answer.rule, answer.exact, answer.error]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule, exact, error]) }
}

/// `lubber_rule_radials_per_mile_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_radials_per_mile_error_n(
    count: usize,
    arc_radius_nm: *const f64,
    arc_radius_nm_stride: isize,
    rule: *mut f64,
    rule_stride: isize,
    exact: *mut f64,
    exact_stride: isize,
    error: *mut f64,
    error_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(arc_radius_nm, arc_radius_nm_stride)], [Array::output(rule, rule_stride), Array::output(exact, exact_stride), Array::output(error, error_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_radials_per_mile_error") }, count, &inputs, &outputs, status) }
}

/// The rule of the way back onto an arc beside the least correction that meets it.
///
/// The rule of `rule_arc_correction_deg` less `acos(D / d)` from outside, less nothing from inside, where the track leads onto the arc by itself.
///
/// @param distance_nm distance from the station along the ground, 0 to 10 900
/// @param arc_radius_nm distance of the arc from the station, above 0 to 5000
/// @param[out] rule_deg The rule's answer; may be NULL
/// @param[out] exact_deg The exact answer; may be NULL
/// @param[out] error_deg The error, of a single term: a proportion for the tangent to a circle; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error of the difference.
/// Degenerate cases: Below zero from outside, the arc is passed: the rule has to be renewed on the way.
/// Errors: A value outside its range.
/// Source: The rule: CNATRA P-871 chapter 4. The least correction: `arc_least_correction_deg`.
///
/// Example: lubber_rule_arc_correction_error(10.5, 10.0, NULL, NULL, &value) gives -7.8
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_arc_correction_error(
    distance_nm: f64,
    arc_radius_nm: f64,
    rule_deg: *mut f64,
    exact_deg: *mut f64,
    error_deg: *mut f64,
) -> i32 {
    let answer = || plain::rule_arc_correction_error(distance_nm, arc_radius_nm).map(|answer| [answer.rule_deg, answer.exact_deg, answer.error_deg]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_deg, exact_deg, error_deg]) }
}

/// `lubber_rule_arc_correction_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_arc_correction_error_n(
    count: usize,
    distance_nm: *const f64,
    distance_nm_stride: isize,
    arc_radius_nm: *const f64,
    arc_radius_nm_stride: isize,
    rule_deg: *mut f64,
    rule_deg_stride: isize,
    exact_deg: *mut f64,
    exact_deg_stride: isize,
    error_deg: *mut f64,
    error_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(distance_nm, distance_nm_stride), Array::input(arc_radius_nm, arc_radius_nm_stride)], [Array::output(rule_deg, rule_deg_stride), Array::output(exact_deg, exact_deg_stride), Array::output(error_deg, error_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_arc_correction_error") }, count, &inputs, &outputs, status) }
}

/// The rule of the intercept angle beside the angle that meets the radial halfway to the station, term by term.
///
/// Twice the degrees within 20 and 90, less `atan2(sin d, cos d - 1/2)`: halfway is what doubling the degrees means.
///
/// @param off_radial_deg degrees to the radial, either way, reduced to half a circle
/// @param[out] rule_deg The rule's answer; may be NULL
/// @param[out] exact_deg The exact answer; may be NULL
/// @param[out] error_deg The error: the sum of the terms; may be NULL
/// @param[out] limits_deg At least 20 and at most 90; may be NULL
/// @param[out] doubling_deg Twice the angle for that of the triangle; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: The terms sum to the whole to rounding error.
/// Degenerate cases: On the radial the exact angle is zero. From 60 degrees on halfway is abeam or behind: the exact angle is 90 degrees and more.
/// Errors: A value outside its range.
/// Source: The rule: FAA-H-8083-15 (`rule_intercept_angle_deg`). The exact angle: derived.
///
/// Example: lubber_rule_intercept_angle_error(15.0, NULL, NULL, &value, NULL, NULL) gives 0.95
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_intercept_angle_error(
    off_radial_deg: f64,
    rule_deg: *mut f64,
    exact_deg: *mut f64,
    error_deg: *mut f64,
    limits_deg: *mut f64,
    doubling_deg: *mut f64,
) -> i32 {
    let answer = || plain::rule_intercept_angle_error(off_radial_deg).map(|answer| [answer.rule_deg, answer.exact_deg, answer.error_deg, answer.limits_deg, answer.doubling_deg]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_deg, exact_deg, error_deg, limits_deg, doubling_deg]) }
}

/// `lubber_rule_intercept_angle_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_intercept_angle_error_n(
    count: usize,
    off_radial_deg: *const f64,
    off_radial_deg_stride: isize,
    rule_deg: *mut f64,
    rule_deg_stride: isize,
    exact_deg: *mut f64,
    exact_deg_stride: isize,
    error_deg: *mut f64,
    error_deg_stride: isize,
    limits_deg: *mut f64,
    limits_deg_stride: isize,
    doubling_deg: *mut f64,
    doubling_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(off_radial_deg, off_radial_deg_stride)], [Array::output(rule_deg, rule_deg_stride), Array::output(exact_deg, exact_deg_stride), Array::output(error_deg, error_deg_stride), Array::output(limits_deg, limits_deg_stride), Array::output(doubling_deg, doubling_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_intercept_angle_error") }, count, &inputs, &outputs, status) }
}

/// The lead onto a radial in radials by rule beside the exact one in still air with an instant roll, term by term.
///
/// The rule of `rule_intercept_lead_deg` less `asin(r (1 - cos i) / D)`.
///
/// @param distance_nm distance from the station where the turn begins, above 0 to 5000
/// @param turn_radius_nm radius of the turn, above 0 to 5000
/// @param intercept_angle_deg angle of the intercept, above 0 to 90
/// @param[out] rule_deg The rule's answer; may be NULL
/// @param[out] exact_deg The exact answer; may be NULL
/// @param[out] error_deg The error: the sum of the terms; may be NULL
/// @param[out] sixty_deg 60 for 57.3; may be NULL
/// @param[out] share_deg The rule's share for `1 - cos i`; may be NULL
/// @param[out] arc_deg The arc for its angle; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: The terms sum to the whole to rounding error.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range, or a turn that begins farther from the radial than from the station.
/// Source: The rule: CNATRA P-1215 and P-1265 p. 2-11 (`rule_intercept_lead_deg`). The exact lead: derived.
///
/// Example: lubber_rule_intercept_lead_error(15.0, 2.5, 60.0, NULL, NULL, &value, NULL, NULL, NULL) gives 1.89
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_intercept_lead_error(
    distance_nm: f64,
    turn_radius_nm: f64,
    intercept_angle_deg: f64,
    rule_deg: *mut f64,
    exact_deg: *mut f64,
    error_deg: *mut f64,
    sixty_deg: *mut f64,
    share_deg: *mut f64,
    arc_deg: *mut f64,
) -> i32 {
    let answer = || plain::rule_intercept_lead_error(distance_nm, turn_radius_nm, intercept_angle_deg).map(|answer| [answer.rule_deg, answer.exact_deg, answer.error_deg, answer.sixty_deg, answer.share_deg, answer.arc_deg]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_deg, exact_deg, error_deg, sixty_deg, share_deg, arc_deg]) }
}

/// `lubber_rule_intercept_lead_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_intercept_lead_error_n(
    count: usize,
    distance_nm: *const f64,
    distance_nm_stride: isize,
    turn_radius_nm: *const f64,
    turn_radius_nm_stride: isize,
    intercept_angle_deg: *const f64,
    intercept_angle_deg_stride: isize,
    rule_deg: *mut f64,
    rule_deg_stride: isize,
    exact_deg: *mut f64,
    exact_deg_stride: isize,
    error_deg: *mut f64,
    error_deg_stride: isize,
    sixty_deg: *mut f64,
    sixty_deg_stride: isize,
    share_deg: *mut f64,
    share_deg_stride: isize,
    arc_deg: *mut f64,
    arc_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(distance_nm, distance_nm_stride), Array::input(turn_radius_nm, turn_radius_nm_stride), Array::input(intercept_angle_deg, intercept_angle_deg_stride)], [Array::output(rule_deg, rule_deg_stride), Array::output(exact_deg, exact_deg_stride), Array::output(error_deg, error_deg_stride), Array::output(sixty_deg, sixty_deg_stride), Array::output(share_deg, share_deg_stride), Array::output(arc_deg, arc_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_intercept_lead_error") }, count, &inputs, &outputs, status) }
}

/// The rule of the least DME overhead beside the height itself.
///
/// `h / 6000` less `h`.
///
/// @param height_ft height above the station's antenna, -60 000 to 400 000
/// @param[out] rule_nm The rule's answer; may be NULL
/// @param[out] exact_nm The exact answer; may be NULL
/// @param[out] error_nm The error, of a single term: a nautical mile of 6 000 ft; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: 1.3 percent high throughout.
/// Degenerate cases: None.
/// Errors: A value outside its range.
/// Source: The rule: common practice (`rule_least_dme_nm`).
///
/// Example: lubber_rule_least_dme_error(36000.0, NULL, NULL, &value) gives 0.075
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_least_dme_error(
    height_ft: f64,
    rule_nm: *mut f64,
    exact_nm: *mut f64,
    error_nm: *mut f64,
) -> i32 {
    let answer = || plain::rule_least_dme_error(height_ft).map(|answer| [answer.rule_nm, answer.exact_nm, answer.error_nm]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_nm, exact_nm, error_nm]) }
}

/// `lubber_rule_least_dme_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_least_dme_error_n(
    count: usize,
    height_ft: *const f64,
    height_ft_stride: isize,
    rule_nm: *mut f64,
    rule_nm_stride: isize,
    exact_nm: *mut f64,
    exact_nm_stride: isize,
    error_nm: *mut f64,
    error_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(height_ft, height_ft_stride)], [Array::output(rule_nm, rule_nm_stride), Array::output(exact_nm, exact_nm_stride), Array::output(error_nm, error_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_least_dme_error") }, count, &inputs, &outputs, status) }
}

/// The rule of the cone of confusion beside the cone of a half-angle, term by term.
///
/// `h / 6000` less `h tan(half-angle)`.
///
/// @param height_ft height above the station's antenna, -60 000 to 400 000
/// @param cone_half_angle_deg half-angle from the vertical, above 0 below 90
/// @param[out] rule_nm The rule's answer; may be NULL
/// @param[out] exact_nm The exact answer; may be NULL
/// @param[out] error_nm The error: the sum of the terms; may be NULL
/// @param[out] mile_nm A nautical mile of 6 000 ft; may be NULL
/// @param[out] angle_nm 45 degrees for the half-angle; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: The terms sum to the whole to rounding error.
/// Degenerate cases: At the station's height and below it both are zero.
/// Errors: A value outside its range.
/// Source: The rule: common practice (`rule_cone_radius_nm`); 50 degrees: `cone_radius_nm`.
///
/// Example: lubber_rule_cone_radius_error(36000.0, 50.0, NULL, NULL, NULL, NULL, &value) gives -1.14
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_cone_radius_error(
    height_ft: f64,
    cone_half_angle_deg: f64,
    rule_nm: *mut f64,
    exact_nm: *mut f64,
    error_nm: *mut f64,
    mile_nm: *mut f64,
    angle_nm: *mut f64,
) -> i32 {
    let answer = || plain::rule_cone_radius_error(height_ft, cone_half_angle_deg).map(|answer| [answer.rule_nm, answer.exact_nm, answer.error_nm, answer.mile_nm, answer.angle_nm]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_nm, exact_nm, error_nm, mile_nm, angle_nm]) }
}

/// `lubber_rule_cone_radius_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_cone_radius_error_n(
    count: usize,
    height_ft: *const f64,
    height_ft_stride: isize,
    cone_half_angle_deg: *const f64,
    cone_half_angle_deg_stride: isize,
    rule_nm: *mut f64,
    rule_nm_stride: isize,
    exact_nm: *mut f64,
    exact_nm_stride: isize,
    error_nm: *mut f64,
    error_nm_stride: isize,
    mile_nm: *mut f64,
    mile_nm_stride: isize,
    angle_nm: *mut f64,
    angle_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(height_ft, height_ft_stride), Array::input(cone_half_angle_deg, cone_half_angle_deg_stride)], [Array::output(rule_nm, rule_nm_stride), Array::output(exact_nm, exact_nm_stride), Array::output(error_nm, error_nm_stride), Array::output(mile_nm, mile_nm_stride), Array::output(angle_nm, angle_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_cone_radius_error") }, count, &inputs, &outputs, status) }
}

/// A rule of the bank of a standard-rate turn beside the exact bank.
///
/// The rule less `atan(V / 364.07)`.
///
/// @param true_airspeed_kt true airspeed (the indicated one for `twenty_percent`), above 0 to 5000
/// @param rule which rule: LUBBER_BANK_RULE_FIFTEEN_PERCENT, LUBBER_BANK_RULE_TENTH_AND_SEVEN, LUBBER_BANK_RULE_TENTH_AND_FIVE, LUBBER_BANK_RULE_TWENTY_PERCENT
/// @param[out] rule_deg The rule's answer; may be NULL
/// @param[out] exact_deg The exact answer; may be NULL
/// @param[out] error_deg The error, of a single term: the rule's line for an arctangent; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error of the difference; the rules contradict each other.
/// Degenerate cases: At jet speeds the rules give more bank than anyone flies.
/// Errors: A value outside its range.
/// Source: Named at `rule_bank_deg`.
///
/// Example: lubber_rule_bank_error(120.0, LUBBER_BANK_RULE_TENTH_AND_SEVEN, NULL, NULL, &value) gives 0.8
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_bank_error(
    true_airspeed_kt: f64,
    rule: i32,
    rule_deg: *mut f64,
    exact_deg: *mut f64,
    error_deg: *mut f64,
) -> i32 {
    let answer = || {
        if [true_airspeed_kt].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 3]) }
        plain::rule_bank_error(true_airspeed_kt, lubberline::rules::BankRule::from_code("rule", f64::from(rule))?).map(|answer| [answer.rule_deg, answer.exact_deg, answer.error_deg])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_deg, exact_deg, error_deg]) }
}

/// `lubber_rule_bank_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `rule` is one code for all points: which rule: LUBBER_BANK_RULE_FIFTEEN_PERCENT, LUBBER_BANK_RULE_TENTH_AND_SEVEN, LUBBER_BANK_RULE_TENTH_AND_FIVE, LUBBER_BANK_RULE_TWENTY_PERCENT
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_bank_error_n(
    count: usize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    rule: i32,
    rule_deg: *mut f64,
    rule_deg_stride: isize,
    exact_deg: *mut f64,
    exact_deg_stride: isize,
    error_deg: *mut f64,
    error_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let rule = f64::from(rule);
    let (inputs, outputs) = ([Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(&raw const rule, 0)], [Array::output(rule_deg, rule_deg_stride), Array::output(exact_deg, exact_deg_stride), Array::output(error_deg, error_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_bank_error") }, count, &inputs, &outputs, status) }
}

/// A rule of the radius of a turn beside the radius of the turn that it is for.
///
/// The rule less `V / (60 pi)`, `V / (30 pi)` or `V^2 / (g tan 30)`.
///
/// @param speed_kt speed, above 0 to 5000
/// @param rule which rule: LUBBER_RADIUS_RULE_HALF_PERCENT, LUBBER_RADIUS_RULE_ONE_PERCENT, LUBBER_RADIUS_RULE_MILES_A_MINUTE_LESS_TWO, LUBBER_RADIUS_RULE_TENTH_OF_SQUARE
/// @param[out] rule_nm The rule's answer; may be NULL
/// @param[out] exact_nm The exact answer; may be NULL
/// @param[out] error_nm The error, of a single term: the rule's round number; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Standard and half standard rate: 6 percent short. A tenth of the square: 10 percent long.
/// Degenerate cases: Miles a minute less two is zero below 120 kt.
/// Errors: A value outside its range.
/// Source: Named at `rule_turn_radius_nm`.
///
/// Example: lubber_rule_turn_radius_error(250.0, LUBBER_RADIUS_RULE_ONE_PERCENT, NULL, NULL, &value) gives -0.153
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_turn_radius_error(
    speed_kt: f64,
    rule: i32,
    rule_nm: *mut f64,
    exact_nm: *mut f64,
    error_nm: *mut f64,
) -> i32 {
    let answer = || {
        if [speed_kt].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 3]) }
        plain::rule_turn_radius_error(speed_kt, lubberline::rules::RadiusRule::from_code("rule", f64::from(rule))?).map(|answer| [answer.rule_nm, answer.exact_nm, answer.error_nm])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_nm, exact_nm, error_nm]) }
}

/// `lubber_rule_turn_radius_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `rule` is one code for all points: which rule: LUBBER_RADIUS_RULE_HALF_PERCENT, LUBBER_RADIUS_RULE_ONE_PERCENT, LUBBER_RADIUS_RULE_MILES_A_MINUTE_LESS_TWO, LUBBER_RADIUS_RULE_TENTH_OF_SQUARE
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_turn_radius_error_n(
    count: usize,
    speed_kt: *const f64,
    speed_kt_stride: isize,
    rule: i32,
    rule_nm: *mut f64,
    rule_nm_stride: isize,
    exact_nm: *mut f64,
    exact_nm_stride: isize,
    error_nm: *mut f64,
    error_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let rule = f64::from(rule);
    let (inputs, outputs) = ([Array::input(speed_kt, speed_kt_stride), Array::input(&raw const rule, 0)], [Array::output(rule_nm, rule_nm_stride), Array::output(exact_nm, exact_nm_stride), Array::output(error_nm, error_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_turn_radius_error") }, count, &inputs, &outputs, status) }
}

/// The rule of the distance off course beside the exact one, term by term.
///
/// `-200 ft dots distance` less `-R asin(sin(d / R) sin(2 dots))`.
///
/// @param deflection_dots where the needle stands in dots of two degrees, positive right of centre, -20 to 20
/// @param distance_nm distance from the station along the ground, above 0 to 5000
/// @param[out] rule_nm The rule's answer; may be NULL
/// @param[out] exact_nm The exact answer; may be NULL
/// @param[out] error_nm The error: the sum of the terms; may be NULL
/// @param[out] dot_nm 200 ft for 212 to a dot and a mile; may be NULL
/// @param[out] sine_nm The angle for its sine; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: The terms sum to the whole to rounding error.
/// Degenerate cases: On course there is no error.
/// Errors: A value outside its range.
/// Source: The rule: common practice (`rule_off_course_nm`). The exact distance: `cross_track_of_deflection_nm`.
///
/// Example: lubber_rule_off_course_error(-2.0, 30.0, NULL, NULL, NULL, &value, NULL) gives -0.119
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_off_course_error(
    deflection_dots: f64,
    distance_nm: f64,
    rule_nm: *mut f64,
    exact_nm: *mut f64,
    error_nm: *mut f64,
    dot_nm: *mut f64,
    sine_nm: *mut f64,
) -> i32 {
    let answer = || plain::rule_off_course_error(deflection_dots, distance_nm).map(|answer| [answer.rule_nm, answer.exact_nm, answer.error_nm, answer.dot_nm, answer.sine_nm]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_nm, exact_nm, error_nm, dot_nm, sine_nm]) }
}

/// `lubber_rule_off_course_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_off_course_error_n(
    count: usize,
    deflection_dots: *const f64,
    deflection_dots_stride: isize,
    distance_nm: *const f64,
    distance_nm_stride: isize,
    rule_nm: *mut f64,
    rule_nm_stride: isize,
    exact_nm: *mut f64,
    exact_nm_stride: isize,
    error_nm: *mut f64,
    error_nm_stride: isize,
    dot_nm: *mut f64,
    dot_nm_stride: isize,
    sine_nm: *mut f64,
    sine_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(deflection_dots, deflection_dots_stride), Array::input(distance_nm, distance_nm_stride)], [Array::output(rule_nm, rule_nm_stride), Array::output(exact_nm, exact_nm_stride), Array::output(error_nm, error_nm_stride), Array::output(dot_nm, dot_nm_stride), Array::output(sine_nm, sine_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_off_course_error") }, count, &inputs, &outputs, status) }
}

/// The lead radials off an arc by rule beside the exact ones in still air with an instant roll, term by term.
///
/// The rule of `rule_lead_radials_deg` less `asin(r / (D - r))` inbound, `asin(r / (D + r))` outbound.
///
/// @param arc_radius_nm distance of the arc from the station, above 0 to 5000
/// @param turn_radius_nm radius of the turn, above 0 to 5000
/// @param flown whether the radial is flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
/// @param rule which correction: LUBBER_ARC_LEAD_RULE_PLAIN, LUBBER_ARC_LEAD_RULE_PROPORTION, LUBBER_ARC_LEAD_RULE_THIRD, LUBBER_ARC_LEAD_RULE_ADDED_MILES
/// @param[out] rule_deg The rule's answer; may be NULL
/// @param[out] exact_deg The exact answer; may be NULL
/// @param[out] error_deg The error: the sum of the terms; may be NULL
/// @param[out] sixty_deg 60 for 57.3; may be NULL
/// @param[out] correction_deg The rule's correction for the direction of the radial, which is there to make up for the next term; may be NULL
/// @param[out] geometry_deg `r / D` for `asin(r / (D - r))` inbound, `asin(r / (D + r))` outbound; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: The terms sum to the whole to rounding error.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range, or an arc below twice the turn radius when turning on its inside.
/// Source: Named at `rule_lead_radials_deg`; the exact lead is derived from the geometry of tangent circles.
///
/// Example: lubber_rule_lead_radials_error(10.0, 2.5, LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_ARC_LEAD_RULE_PROPORTION, NULL, NULL, &value, NULL, NULL, NULL) gives -1.97
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_lead_radials_error(
    arc_radius_nm: f64,
    turn_radius_nm: f64,
    flown: i32,
    rule: i32,
    rule_deg: *mut f64,
    exact_deg: *mut f64,
    error_deg: *mut f64,
    sixty_deg: *mut f64,
    correction_deg: *mut f64,
    geometry_deg: *mut f64,
) -> i32 {
    let answer = || {
        if [arc_radius_nm, turn_radius_nm].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 6]) }
        plain::rule_lead_radials_error(arc_radius_nm, turn_radius_nm, lubberline::lead::RadialFlown::from_code("flown", f64::from(flown))?, lubberline::rules::ArcLeadRule::from_code("rule", f64::from(rule))?).map(|answer| [answer.rule_deg, answer.exact_deg, answer.error_deg, answer.sixty_deg, answer.correction_deg, answer.geometry_deg])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_deg, exact_deg, error_deg, sixty_deg, correction_deg, geometry_deg]) }
}

/// `lubber_rule_lead_radials_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `flown` is one code for all points: whether the radial is flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
///
/// `rule` is one code for all points: which correction: LUBBER_ARC_LEAD_RULE_PLAIN, LUBBER_ARC_LEAD_RULE_PROPORTION, LUBBER_ARC_LEAD_RULE_THIRD, LUBBER_ARC_LEAD_RULE_ADDED_MILES
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_lead_radials_error_n(
    count: usize,
    arc_radius_nm: *const f64,
    arc_radius_nm_stride: isize,
    turn_radius_nm: *const f64,
    turn_radius_nm_stride: isize,
    flown: i32,
    rule: i32,
    rule_deg: *mut f64,
    rule_deg_stride: isize,
    exact_deg: *mut f64,
    exact_deg_stride: isize,
    error_deg: *mut f64,
    error_deg_stride: isize,
    sixty_deg: *mut f64,
    sixty_deg_stride: isize,
    correction_deg: *mut f64,
    correction_deg_stride: isize,
    geometry_deg: *mut f64,
    geometry_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let flown = f64::from(flown);
    let rule = f64::from(rule);
    let (inputs, outputs) = ([Array::input(arc_radius_nm, arc_radius_nm_stride), Array::input(turn_radius_nm, turn_radius_nm_stride), Array::input(&raw const flown, 0), Array::input(&raw const rule, 0)], [Array::output(rule_deg, rule_deg_stride), Array::output(exact_deg, exact_deg_stride), Array::output(error_deg, error_deg_stride), Array::output(sixty_deg, sixty_deg_stride), Array::output(correction_deg, correction_deg_stride), Array::output(geometry_deg, geometry_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_lead_radials_error") }, count, &inputs, &outputs, status) }
}

/// The rule of the time to a station abeam beside the time itself, term by term.
///
/// `60 t / c` with the change in degrees less `t / sin(c)`.
///
/// @param elapsed_s time between the two bearings, above 0 to 1 000 000
/// @param bearing_change_deg change of the bearing, above 0 below 180
/// @param[out] rule_s The rule's answer; may be NULL
/// @param[out] exact_s The exact answer; may be NULL
/// @param[out] error_s The error: the sum of the terms; may be NULL
/// @param[out] sixty_s 60 for 57.3; may be NULL
/// @param[out] sine_s The angle for its sine; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: The terms sum to the whole to rounding error.
/// Degenerate cases: The terms cancel at 30 degrees.
/// Errors: A value outside its range, or a change of 90 degrees and more, which a station abeam cannot make.
/// Source: The rule: FAA-H-8083-15 (`time_to_station_rule_s`). The exact time: the law of sines.
///
/// Example: lubber_rule_time_to_station_error(75.0, 10.0, NULL, NULL, &value, NULL, NULL) gives 18.1
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_time_to_station_error(
    elapsed_s: f64,
    bearing_change_deg: f64,
    rule_s: *mut f64,
    exact_s: *mut f64,
    error_s: *mut f64,
    sixty_s: *mut f64,
    sine_s: *mut f64,
) -> i32 {
    let answer = || plain::rule_time_to_station_error(elapsed_s, bearing_change_deg).map(|answer| [answer.rule_s, answer.exact_s, answer.error_s, answer.sixty_s, answer.sine_s]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_s, exact_s, error_s, sixty_s, sine_s]) }
}

/// `lubber_rule_time_to_station_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_time_to_station_error_n(
    count: usize,
    elapsed_s: *const f64,
    elapsed_s_stride: isize,
    bearing_change_deg: *const f64,
    bearing_change_deg_stride: isize,
    rule_s: *mut f64,
    rule_s_stride: isize,
    exact_s: *mut f64,
    exact_s_stride: isize,
    error_s: *mut f64,
    error_s_stride: isize,
    sixty_s: *mut f64,
    sixty_s_stride: isize,
    sine_s: *mut f64,
    sine_s_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(elapsed_s, elapsed_s_stride), Array::input(bearing_change_deg, bearing_change_deg_stride)], [Array::output(rule_s, rule_s_stride), Array::output(exact_s, exact_s_stride), Array::output(error_s, error_s_stride), Array::output(sixty_s, sixty_s_stride), Array::output(sine_s, sine_s_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_time_to_station_error") }, count, &inputs, &outputs, status) }
}

/// The outbound correction of a holding pattern by rule beside that of the pattern which closes.
///
/// A multiple of the inbound correction, the other way, less the outbound correction of `holding_pattern`; both right positive.
///
/// @param inbound_course_deg course flown to the fix, any finite number
/// @param side which way the turns go: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
/// @param inbound_time_s time of the inbound leg, 0 to 3600
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param wind_from_deg where the wind blows from, against the same north
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param bank_limit_deg greatest bank, above 0 below 90
/// @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
/// @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
/// @param rule by what the correction is multiplied: LUBBER_DRIFT_RULE_DOUBLE, LUBBER_DRIFT_RULE_TRIPLE
/// @param[out] rule_deg The rule's answer; may be NULL
/// @param[out] exact_deg The exact answer; may be NULL
/// @param[out] error_deg The error, of a single term: a fixed multiple for what the wind does in the two turns; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error of the difference.
/// Degenerate cases: In calm air both are zero.
/// Errors: A value outside its range, an inbound course that the airspeed cannot hold, a wind in which no heading closes the pattern before the fix.
/// Source: The rules: `rule_outbound_heading_deg`. The exact correction: `holding_pattern`.
///
/// Example: lubber_rule_outbound_correction_error(270.0, LUBBER_HOLDING_SIDE_RIGHT, 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0, LUBBER_DRIFT_RULE_TRIPLE, NULL, NULL, &value) gives -1.5
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_outbound_correction_error(
    inbound_course_deg: f64,
    side: i32,
    inbound_time_s: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
    rule: i32,
    rule_deg: *mut f64,
    exact_deg: *mut f64,
    error_deg: *mut f64,
) -> i32 {
    let answer = || {
        if [inbound_course_deg, inbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 3]) }
        plain::rule_outbound_correction_error(inbound_course_deg, lubberline::procedure::HoldingSide::from_code("side", f64::from(side))?, inbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, lubberline::rules::DriftRule::from_code("rule", f64::from(rule))?).map(|answer| [answer.rule_deg, answer.exact_deg, answer.error_deg])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_deg, exact_deg, error_deg]) }
}

/// `lubber_rule_outbound_correction_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `side` is one code for all points: which way the turns go: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
///
/// `rule` is one code for all points: by what the correction is multiplied: LUBBER_DRIFT_RULE_DOUBLE, LUBBER_DRIFT_RULE_TRIPLE
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_outbound_correction_error_n(
    count: usize,
    inbound_course_deg: *const f64,
    inbound_course_deg_stride: isize,
    side: i32,
    inbound_time_s: *const f64,
    inbound_time_s_stride: isize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    bank_limit_deg: *const f64,
    bank_limit_deg_stride: isize,
    turn_rate_limit_deg_per_s: *const f64,
    turn_rate_limit_deg_per_s_stride: isize,
    roll_rate_deg_per_s: *const f64,
    roll_rate_deg_per_s_stride: isize,
    rule: i32,
    rule_deg: *mut f64,
    rule_deg_stride: isize,
    exact_deg: *mut f64,
    exact_deg_stride: isize,
    error_deg: *mut f64,
    error_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let side = f64::from(side);
    let rule = f64::from(rule);
    let (inputs, outputs) = ([Array::input(inbound_course_deg, inbound_course_deg_stride), Array::input(&raw const side, 0), Array::input(inbound_time_s, inbound_time_s_stride), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride), Array::input(bank_limit_deg, bank_limit_deg_stride), Array::input(turn_rate_limit_deg_per_s, turn_rate_limit_deg_per_s_stride), Array::input(roll_rate_deg_per_s, roll_rate_deg_per_s_stride), Array::input(&raw const rule, 0)], [Array::output(rule_deg, rule_deg_stride), Array::output(exact_deg, exact_deg_stride), Array::output(error_deg, error_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_outbound_correction_error") }, count, &inputs, &outputs, status) }
}

/// The outbound time of a holding pattern by a second for each knot of headwind, beside that of the pattern which closes, term by term.
///
/// `t + headwind` less the outbound clock of `holding_pattern` for the same time inbound.
///
/// @param inbound_course_deg course flown to the fix, any finite number
/// @param side which way the turns go: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
/// @param inbound_time_s time of the inbound leg, 0 to 3600
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param wind_from_deg where the wind blows from, against the same north
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param bank_limit_deg greatest bank, above 0 below 90
/// @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
/// @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
/// @param[out] rule_s The rule's answer; may be NULL
/// @param[out] exact_s The exact answer; may be NULL
/// @param[out] error_s The error: the sum of the terms; may be NULL
/// @param[out] knot_s A second for each knot, where the legs go as their groundspeeds; may be NULL
/// @param[out] turns_s What the wind does in the turns; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: The terms sum to the whole to rounding error.
/// Degenerate cases: In calm air there is no error.
/// Errors: A value outside its range, an inbound course that the airspeed cannot hold, a wind in which no heading closes the pattern before the fix.
/// Source: The rule: common practice (`rule_outbound_time_by_headwind_s`). The exact time: `holding_pattern`.
///
/// Example: lubber_rule_outbound_time_by_headwind_error(270.0, LUBBER_HOLDING_SIDE_RIGHT, 60.0, 150.0, 90.0, 20.0, 25.0, 3.0, 5.0, NULL, NULL, &value, NULL, NULL) gives -8
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_outbound_time_by_headwind_error(
    inbound_course_deg: f64,
    side: i32,
    inbound_time_s: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
    rule_s: *mut f64,
    exact_s: *mut f64,
    error_s: *mut f64,
    knot_s: *mut f64,
    turns_s: *mut f64,
) -> i32 {
    let answer = || {
        if [inbound_course_deg, inbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 5]) }
        plain::rule_outbound_time_by_headwind_error(inbound_course_deg, lubberline::procedure::HoldingSide::from_code("side", f64::from(side))?, inbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.rule_s, answer.exact_s, answer.error_s, answer.knot_s, answer.turns_s])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_s, exact_s, error_s, knot_s, turns_s]) }
}

/// `lubber_rule_outbound_time_by_headwind_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `side` is one code for all points: which way the turns go: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_outbound_time_by_headwind_error_n(
    count: usize,
    inbound_course_deg: *const f64,
    inbound_course_deg_stride: isize,
    side: i32,
    inbound_time_s: *const f64,
    inbound_time_s_stride: isize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    bank_limit_deg: *const f64,
    bank_limit_deg_stride: isize,
    turn_rate_limit_deg_per_s: *const f64,
    turn_rate_limit_deg_per_s_stride: isize,
    roll_rate_deg_per_s: *const f64,
    roll_rate_deg_per_s_stride: isize,
    rule_s: *mut f64,
    rule_s_stride: isize,
    exact_s: *mut f64,
    exact_s_stride: isize,
    error_s: *mut f64,
    error_s_stride: isize,
    knot_s: *mut f64,
    knot_s_stride: isize,
    turns_s: *mut f64,
    turns_s_stride: isize,
    status: *mut i32,
) -> usize {
    let side = f64::from(side);
    let (inputs, outputs) = ([Array::input(inbound_course_deg, inbound_course_deg_stride), Array::input(&raw const side, 0), Array::input(inbound_time_s, inbound_time_s_stride), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride), Array::input(bank_limit_deg, bank_limit_deg_stride), Array::input(turn_rate_limit_deg_per_s, turn_rate_limit_deg_per_s_stride), Array::input(roll_rate_deg_per_s, roll_rate_deg_per_s_stride)], [Array::output(rule_s, rule_s_stride), Array::output(exact_s, exact_s_stride), Array::output(error_s, error_s_stride), Array::output(knot_s, knot_s_stride), Array::output(turns_s, turns_s_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_outbound_time_by_headwind_error") }, count, &inputs, &outputs, status) }
}

/// The next outbound time of a holding pattern by rule, after a round that is flown, beside that of the pattern that is wanted, term by term.
///
/// The last outbound time and what the inbound leg came out short (`rule_outbound_time_s`), less the outbound clock of `holding_pattern` for the inbound time that is wanted. The round is flown with the outbound heading that closes it.
///
/// @param inbound_course_deg course flown to the fix, any finite number
/// @param side which way the turns go: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
/// @param outbound_time_s time of the round that is flown, on its outbound clock, 0 to 3600
/// @param wanted_inbound_time_s the inbound time that is wanted, 0 to 3600
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param wind_from_deg where the wind blows from, against the same north
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param bank_limit_deg greatest bank, above 0 below 90
/// @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
/// @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
/// @param[out] rule_s The rule's answer; may be NULL
/// @param[out] exact_s The exact answer; may be NULL
/// @param[out] error_s The error: the sum of the terms; may be NULL
/// @param[out] groundspeed_s Both legs at one groundspeed; may be NULL
/// @param[out] heading_s The outbound heading, which has to change with the time; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: The terms sum to the whole to rounding error.
/// Degenerate cases: In calm air there is no error.
/// Errors: A value outside its range, an inbound course that the airspeed cannot hold, a wind in which no heading closes the pattern before the fix.
/// Source: The rule: CNATRA P-871 chapter 4, figure 4-16. The exact time: `holding_pattern`.
///
/// Example: lubber_rule_outbound_time_error(270.0, LUBBER_HOLDING_SIDE_RIGHT, 60.0, 60.0, 150.0, 90.0, 20.0, 25.0, 3.0, 5.0, NULL, NULL, &value, NULL, NULL) gives -7
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_outbound_time_error(
    inbound_course_deg: f64,
    side: i32,
    outbound_time_s: f64,
    wanted_inbound_time_s: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
    rule_s: *mut f64,
    exact_s: *mut f64,
    error_s: *mut f64,
    groundspeed_s: *mut f64,
    heading_s: *mut f64,
) -> i32 {
    let answer = || {
        if [inbound_course_deg, outbound_time_s, wanted_inbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 5]) }
        plain::rule_outbound_time_error(inbound_course_deg, lubberline::procedure::HoldingSide::from_code("side", f64::from(side))?, outbound_time_s, wanted_inbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.rule_s, answer.exact_s, answer.error_s, answer.groundspeed_s, answer.heading_s])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_s, exact_s, error_s, groundspeed_s, heading_s]) }
}

/// `lubber_rule_outbound_time_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `side` is one code for all points: which way the turns go: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_outbound_time_error_n(
    count: usize,
    inbound_course_deg: *const f64,
    inbound_course_deg_stride: isize,
    side: i32,
    outbound_time_s: *const f64,
    outbound_time_s_stride: isize,
    wanted_inbound_time_s: *const f64,
    wanted_inbound_time_s_stride: isize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    bank_limit_deg: *const f64,
    bank_limit_deg_stride: isize,
    turn_rate_limit_deg_per_s: *const f64,
    turn_rate_limit_deg_per_s_stride: isize,
    roll_rate_deg_per_s: *const f64,
    roll_rate_deg_per_s_stride: isize,
    rule_s: *mut f64,
    rule_s_stride: isize,
    exact_s: *mut f64,
    exact_s_stride: isize,
    error_s: *mut f64,
    error_s_stride: isize,
    groundspeed_s: *mut f64,
    groundspeed_s_stride: isize,
    heading_s: *mut f64,
    heading_s_stride: isize,
    status: *mut i32,
) -> usize {
    let side = f64::from(side);
    let (inputs, outputs) = ([Array::input(inbound_course_deg, inbound_course_deg_stride), Array::input(&raw const side, 0), Array::input(outbound_time_s, outbound_time_s_stride), Array::input(wanted_inbound_time_s, wanted_inbound_time_s_stride), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride), Array::input(bank_limit_deg, bank_limit_deg_stride), Array::input(turn_rate_limit_deg_per_s, turn_rate_limit_deg_per_s_stride), Array::input(roll_rate_deg_per_s, roll_rate_deg_per_s_stride)], [Array::output(rule_s, rule_s_stride), Array::output(exact_s, exact_s_stride), Array::output(error_s, error_s_stride), Array::output(groundspeed_s, groundspeed_s_stride), Array::output(heading_s, heading_s_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_outbound_time_error") }, count, &inputs, &outputs, status) }
}

/// The mental arithmetic of a lead beside the exact answer, term by term.
///
/// Each term is what one simplification adds, positive where it makes the rule begin the turn too early. With `c` the change and `gs` the groundspeed inbound the lead
/// goes in steps from `gs / 180 c / 90` by `gs / (60 pi) c / 90`, `gs / (60 pi) tan(c / 2)`, `r(gs) tan(c / 2)` and `r(V) tan(c / 2)`, with `r` the radius that the limits
/// leave, to the turn through the wind-corrected headings without its drift, with it, and with the roll; the reading adds the height as `h / 6000`, as `h`, and
/// in the slant range.
///
/// @param inbound_course_deg course flown to the station, any finite number
/// @param outbound_course_deg course flown from it, against the same north
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param height_above_station_ft height above the station's antenna, -60 000 to 400 000
/// @param wind_from_deg where the wind blows from, against the same north
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param bank_limit_deg greatest bank, above 0 below 90
/// @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
/// @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
/// @param rule which mental arithmetic: LUBBER_LEAD_RULE_THIRD, LUBBER_LEAD_RULE_THIRD_AND_ALLOWANCE, LUBBER_LEAD_RULE_THIRD_AND_MARGIN
/// @param[out] rule_lead_nm The lead by the rule; may be NULL
/// @param[out] exact_lead_nm The exact lead; may be NULL
/// @param[out] lead_error_nm The error of the lead: the sum of the eight terms from `allowance_nm` to `roll_nm`; may be NULL
/// @param[out] rule_reading_nm The DME reading by the rule: its lead and the height in miles, added; may be NULL
/// @param[out] exact_reading_nm The exact DME reading; may be NULL
/// @param[out] reading_error_nm The error of the reading: the sum of all ten terms; may be NULL
/// @param[out] allowance_nm The allowance for height or the margin, if the rule makes one; may be NULL
/// @param[out] round_radius_nm The standard-rate radius as speed over 180, where it is speed over 60 pi; may be NULL
/// @param[out] proportion_nm The lead in proportion to the change, where it goes with the tangent of half of it; may be NULL
/// @param[out] standard_rate_nm The radius of standard rate, where the bank limit makes it longer; may be NULL
/// @param[out] groundspeed_nm The groundspeed as the speed of the turn, where the airspeed is; may be NULL
/// @param[out] heading_change_nm The turn through the change of course, where that of heading has to be turned; may be NULL
/// @param[out] drift_nm No drift during the turn; may be NULL
/// @param[out] roll_nm A roll that takes no time; may be NULL
/// @param[out] mile_nm A nautical mile of 6 000 ft in the height; may be NULL
/// @param[out] sum_nm Distance and height added, where the slant is the root of their squares; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: The terms sum to the whole to rounding error. Taken back in another order they would share it out a little differently.
/// Degenerate cases: In calm air the terms of the wind are zero to rounding error. Toward a reversal the rule stays finite where the exact lead does not.
/// Errors: A value outside its range, a reversal, a wind that the airspeed cannot hold.
/// Source: The rules: common practice (`rule_lead_nm`, `rule_reading_nm`). The exact answers: `lead_nm`, `dme_at_roll_in_nm`. The terms: derived.
///
/// Example: lubber_rule_lead_error(40.0, 130.0, 450.0, 36000.0, 0.0, 0.0, 25.0, 3.0, 5.0, LUBBER_LEAD_RULE_THIRD, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, &value, NULL, NULL, NULL, NULL, NULL, NULL) gives -3.94
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_lead_error(
    inbound_course_deg: f64,
    outbound_course_deg: f64,
    true_airspeed_kt: f64,
    height_above_station_ft: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
    rule: i32,
    rule_lead_nm: *mut f64,
    exact_lead_nm: *mut f64,
    lead_error_nm: *mut f64,
    rule_reading_nm: *mut f64,
    exact_reading_nm: *mut f64,
    reading_error_nm: *mut f64,
    allowance_nm: *mut f64,
    round_radius_nm: *mut f64,
    proportion_nm: *mut f64,
    standard_rate_nm: *mut f64,
    groundspeed_nm: *mut f64,
    heading_change_nm: *mut f64,
    drift_nm: *mut f64,
    roll_nm: *mut f64,
    mile_nm: *mut f64,
    sum_nm: *mut f64,
) -> i32 {
    let answer = || {
        if [inbound_course_deg, outbound_course_deg, true_airspeed_kt, height_above_station_ft, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 16]) }
        plain::rule_lead_error(inbound_course_deg, outbound_course_deg, true_airspeed_kt, height_above_station_ft, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, lubberline::rules::LeadRule::from_code("rule", f64::from(rule))?).map(|answer| [answer.rule_lead_nm, answer.exact_lead_nm, answer.lead_error_nm, answer.rule_reading_nm, answer.exact_reading_nm, answer.reading_error_nm, answer.allowance_nm, answer.round_radius_nm, answer.proportion_nm, answer.standard_rate_nm, answer.groundspeed_nm, answer.heading_change_nm, answer.drift_nm, answer.roll_nm, answer.mile_nm, answer.sum_nm])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_lead_nm, exact_lead_nm, lead_error_nm, rule_reading_nm, exact_reading_nm, reading_error_nm, allowance_nm, round_radius_nm, proportion_nm, standard_rate_nm, groundspeed_nm, heading_change_nm, drift_nm, roll_nm, mile_nm, sum_nm]) }
}

/// `lubber_rule_lead_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `rule` is one code for all points: which mental arithmetic: LUBBER_LEAD_RULE_THIRD, LUBBER_LEAD_RULE_THIRD_AND_ALLOWANCE, LUBBER_LEAD_RULE_THIRD_AND_MARGIN
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_lead_error_n(
    count: usize,
    inbound_course_deg: *const f64,
    inbound_course_deg_stride: isize,
    outbound_course_deg: *const f64,
    outbound_course_deg_stride: isize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    height_above_station_ft: *const f64,
    height_above_station_ft_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    bank_limit_deg: *const f64,
    bank_limit_deg_stride: isize,
    turn_rate_limit_deg_per_s: *const f64,
    turn_rate_limit_deg_per_s_stride: isize,
    roll_rate_deg_per_s: *const f64,
    roll_rate_deg_per_s_stride: isize,
    rule: i32,
    rule_lead_nm: *mut f64,
    rule_lead_nm_stride: isize,
    exact_lead_nm: *mut f64,
    exact_lead_nm_stride: isize,
    lead_error_nm: *mut f64,
    lead_error_nm_stride: isize,
    rule_reading_nm: *mut f64,
    rule_reading_nm_stride: isize,
    exact_reading_nm: *mut f64,
    exact_reading_nm_stride: isize,
    reading_error_nm: *mut f64,
    reading_error_nm_stride: isize,
    allowance_nm: *mut f64,
    allowance_nm_stride: isize,
    round_radius_nm: *mut f64,
    round_radius_nm_stride: isize,
    proportion_nm: *mut f64,
    proportion_nm_stride: isize,
    standard_rate_nm: *mut f64,
    standard_rate_nm_stride: isize,
    groundspeed_nm: *mut f64,
    groundspeed_nm_stride: isize,
    heading_change_nm: *mut f64,
    heading_change_nm_stride: isize,
    drift_nm: *mut f64,
    drift_nm_stride: isize,
    roll_nm: *mut f64,
    roll_nm_stride: isize,
    mile_nm: *mut f64,
    mile_nm_stride: isize,
    sum_nm: *mut f64,
    sum_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let rule = f64::from(rule);
    let (inputs, outputs) = ([Array::input(inbound_course_deg, inbound_course_deg_stride), Array::input(outbound_course_deg, outbound_course_deg_stride), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(height_above_station_ft, height_above_station_ft_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride), Array::input(bank_limit_deg, bank_limit_deg_stride), Array::input(turn_rate_limit_deg_per_s, turn_rate_limit_deg_per_s_stride), Array::input(roll_rate_deg_per_s, roll_rate_deg_per_s_stride), Array::input(&raw const rule, 0)], [Array::output(rule_lead_nm, rule_lead_nm_stride), Array::output(exact_lead_nm, exact_lead_nm_stride), Array::output(lead_error_nm, lead_error_nm_stride), Array::output(rule_reading_nm, rule_reading_nm_stride), Array::output(exact_reading_nm, exact_reading_nm_stride), Array::output(reading_error_nm, reading_error_nm_stride), Array::output(allowance_nm, allowance_nm_stride), Array::output(round_radius_nm, round_radius_nm_stride), Array::output(proportion_nm, proportion_nm_stride), Array::output(standard_rate_nm, standard_rate_nm_stride), Array::output(groundspeed_nm, groundspeed_nm_stride), Array::output(heading_change_nm, heading_change_nm_stride), Array::output(drift_nm, drift_nm_stride), Array::output(roll_nm, roll_nm_stride), Array::output(mile_nm, mile_nm_stride), Array::output(sum_nm, sum_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_lead_error") }, count, &inputs, &outputs, status) }
}

/// The turn that mental arithmetic begins, flown: where its wings are level again.
///
/// Inbound on the heading that holds the course; from the cue on, the bank and the heading of the exact turn, over the ellipsoid. What the crew has wrong is where the turn
/// begins, and nothing else. The turn is safe if it ends at most `allowed_beyond_nm` beyond the outbound course and `allowed_short_nm` short of it.
///
/// @param inbound_course_deg course flown to the station, any finite number
/// @param outbound_course_deg course flown from it, against the same north
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param height_above_station_ft height above the station's antenna, -60 000 to 400 000
/// @param wind_from_deg where the wind blows from, against the same north
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param bank_limit_deg greatest bank, above 0 below 90
/// @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
/// @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
/// @param rule which mental arithmetic: LUBBER_LEAD_RULE_THIRD, LUBBER_LEAD_RULE_THIRD_AND_ALLOWANCE, LUBBER_LEAD_RULE_THIRD_AND_MARGIN
/// @param cue what the turn begins by: the rule's DME reading, its distance along the ground, or the exact reading: LUBBER_TURN_CUE_READING, LUBBER_TURN_CUE_DISTANCE, LUBBER_TURN_CUE_EXACT
/// @param cone_half_angle_deg half-angle of the cone of confusion from the vertical, above 0 below 90
/// @param allowed_beyond_nm how far beyond the outbound course is safe, 0 to 10 900
/// @param allowed_short_nm how far short of it is safe, 0 to 10 900
/// @param[out] reading_nm The DME reading at which the turn begins; may be NULL
/// @param[out] before_station_nm How far before the station that is, along the ground; negative past it; may be NULL
/// @param[out] overshoot_nm How far beyond the outbound course the wings are level again, on the outer side of the turn; negative short of it; may be NULL
/// @param[out] past_station_nm How far past the station that is, along the outbound course; negative before it; may be NULL
/// @param[out] began_in_cone 1 if the turn begins in the cone of confusion, else 0; may be NULL
/// @param[out] ended_in_cone 1 if it ends there, else 0; may be NULL
/// @param[out] verdict What it comes to: the code of LUBBER_TURN_VERDICT_EARLY, LUBBER_TURN_VERDICT_SAFE, LUBBER_TURN_VERDICT_LATE, -1 early, 0 safe, 1 late; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: A centimetre across the outbound course and half a metre along it for the flight itself. The station stands at 45 degrees of latitude; elsewhere it ends less than 0.001 NM away to leads of 10 NM. The exact
/// reading ends within 1e-4 NM of the course at the surface, and 0.2 percent of the lead short of it at 45 000 ft.
/// Degenerate cases: No change of course is no turn: it ends where it begins, without an overshoot. An exact turn that begins past the station begins at its place, not by a reading.
/// Errors: A value outside its range, a reversal, a wind that the airspeed cannot hold.
/// Source: The rules: common practice (`rule_lead_nm`, `rule_reading_nm`). What is allowed by default: half a mile is what DME may be off (FAA AIM 1-1-7), the other half mile is the
/// trade's margin. The flight: docs/flight.md.
///
/// Example: lubber_rule_lead_flown(40.0, 130.0, 450.0, 36000.0, 0.0, 0.0, 25.0, 3.0, 5.0, LUBBER_LEAD_RULE_THIRD, LUBBER_TURN_CUE_READING, 50.0, 0.5, 1.0, NULL, NULL, &value, NULL, NULL, NULL, NULL) gives 0.55
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_lead_flown(
    inbound_course_deg: f64,
    outbound_course_deg: f64,
    true_airspeed_kt: f64,
    height_above_station_ft: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
    rule: i32,
    cue: i32,
    cone_half_angle_deg: f64,
    allowed_beyond_nm: f64,
    allowed_short_nm: f64,
    reading_nm: *mut f64,
    before_station_nm: *mut f64,
    overshoot_nm: *mut f64,
    past_station_nm: *mut f64,
    began_in_cone: *mut f64,
    ended_in_cone: *mut f64,
    verdict: *mut f64,
) -> i32 {
    let answer = || {
        if [inbound_course_deg, outbound_course_deg, true_airspeed_kt, height_above_station_ft, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, cone_half_angle_deg, allowed_beyond_nm, allowed_short_nm].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 7]) }
        plain::rule_lead_flown(inbound_course_deg, outbound_course_deg, true_airspeed_kt, height_above_station_ft, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, lubberline::rules::LeadRule::from_code("rule", f64::from(rule))?, lubberline::rules::TurnCue::from_code("cue", f64::from(cue))?, cone_half_angle_deg, allowed_beyond_nm, allowed_short_nm).map(|answer| [answer.reading_nm, answer.before_station_nm, answer.overshoot_nm, answer.past_station_nm, answer.began_in_cone, answer.ended_in_cone, answer.verdict])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [reading_nm, before_station_nm, overshoot_nm, past_station_nm, began_in_cone, ended_in_cone, verdict]) }
}

/// `lubber_rule_lead_flown` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `rule` is one code for all points: which mental arithmetic: LUBBER_LEAD_RULE_THIRD, LUBBER_LEAD_RULE_THIRD_AND_ALLOWANCE, LUBBER_LEAD_RULE_THIRD_AND_MARGIN
///
/// `cue` is one code for all points: what the turn begins by: the rule's DME reading, its distance along the ground, or the exact reading: LUBBER_TURN_CUE_READING, LUBBER_TURN_CUE_DISTANCE, LUBBER_TURN_CUE_EXACT
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_lead_flown_n(
    count: usize,
    inbound_course_deg: *const f64,
    inbound_course_deg_stride: isize,
    outbound_course_deg: *const f64,
    outbound_course_deg_stride: isize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    height_above_station_ft: *const f64,
    height_above_station_ft_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    bank_limit_deg: *const f64,
    bank_limit_deg_stride: isize,
    turn_rate_limit_deg_per_s: *const f64,
    turn_rate_limit_deg_per_s_stride: isize,
    roll_rate_deg_per_s: *const f64,
    roll_rate_deg_per_s_stride: isize,
    rule: i32,
    cue: i32,
    cone_half_angle_deg: *const f64,
    cone_half_angle_deg_stride: isize,
    allowed_beyond_nm: *const f64,
    allowed_beyond_nm_stride: isize,
    allowed_short_nm: *const f64,
    allowed_short_nm_stride: isize,
    reading_nm: *mut f64,
    reading_nm_stride: isize,
    before_station_nm: *mut f64,
    before_station_nm_stride: isize,
    overshoot_nm: *mut f64,
    overshoot_nm_stride: isize,
    past_station_nm: *mut f64,
    past_station_nm_stride: isize,
    began_in_cone: *mut f64,
    began_in_cone_stride: isize,
    ended_in_cone: *mut f64,
    ended_in_cone_stride: isize,
    verdict: *mut f64,
    verdict_stride: isize,
    status: *mut i32,
) -> usize {
    let rule = f64::from(rule);
    let cue = f64::from(cue);
    let (inputs, outputs) = ([Array::input(inbound_course_deg, inbound_course_deg_stride), Array::input(outbound_course_deg, outbound_course_deg_stride), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(height_above_station_ft, height_above_station_ft_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride), Array::input(bank_limit_deg, bank_limit_deg_stride), Array::input(turn_rate_limit_deg_per_s, turn_rate_limit_deg_per_s_stride), Array::input(roll_rate_deg_per_s, roll_rate_deg_per_s_stride), Array::input(&raw const rule, 0), Array::input(&raw const cue, 0), Array::input(cone_half_angle_deg, cone_half_angle_deg_stride), Array::input(allowed_beyond_nm, allowed_beyond_nm_stride), Array::input(allowed_short_nm, allowed_short_nm_stride)], [Array::output(reading_nm, reading_nm_stride), Array::output(before_station_nm, before_station_nm_stride), Array::output(overshoot_nm, overshoot_nm_stride), Array::output(past_station_nm, past_station_nm_stride), Array::output(began_in_cone, began_in_cone_stride), Array::output(ended_in_cone, ended_in_cone_stride), Array::output(verdict, verdict_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_lead_flown") }, count, &inputs, &outputs, status) }
}

/// The height above the station at which the rule's DME reading is the exact one: below it the turn begins too late, above it too early.
///
/// Where `l + h / 6000 ft` is `sqrt(L^2 + h^2)`, with `l` the rule's lead and `L` the exact one; near `(L^2 - l^2) / (2 l)`.
///
/// @param inbound_course_deg course flown to the station, any finite number
/// @param outbound_course_deg course flown from it, against the same north
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param wind_from_deg where the wind blows from, against the same north
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param bank_limit_deg greatest bank, above 0 below 90
/// @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
/// @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
/// @param rule which mental arithmetic: LUBBER_LEAD_RULE_THIRD, LUBBER_LEAD_RULE_THIRD_AND_ALLOWANCE, LUBBER_LEAD_RULE_THIRD_AND_MARGIN
/// @param[out] rule_holds_at_height_ft the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding: a root in a bracket, of the readings over a curved earth.
/// Degenerate cases: NaN where the rule is early at every height, as for a slow aircraft with a quick roll, and where it is late up to 400 000 ft.
/// Errors: A value outside its range, a reversal, a wind that the airspeed cannot hold.
/// Source: Derived; the rule: `rule_reading_nm`, the exact reading: `dme_at_roll_in_nm`.
///
/// Example: lubber_rule_holds_at_height_ft(40.0, 130.0, 350.0, 0.0, 0.0, 25.0, 3.0, 5.0, LUBBER_LEAD_RULE_THIRD, &value) gives 19490
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_holds_at_height_ft(
    inbound_course_deg: f64,
    outbound_course_deg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
    rule: i32,
    rule_holds_at_height_ft: *mut f64,
) -> i32 {
    let answer = || {
        if [inbound_course_deg, outbound_course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 1]) }
        plain::rule_holds_at_height_ft(inbound_course_deg, outbound_course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, lubberline::rules::LeadRule::from_code("rule", f64::from(rule))?).map(|answer| [answer])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_holds_at_height_ft]) }
}

/// `lubber_rule_holds_at_height_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `rule` is one code for all points: which mental arithmetic: LUBBER_LEAD_RULE_THIRD, LUBBER_LEAD_RULE_THIRD_AND_ALLOWANCE, LUBBER_LEAD_RULE_THIRD_AND_MARGIN
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_holds_at_height_ft_n(
    count: usize,
    inbound_course_deg: *const f64,
    inbound_course_deg_stride: isize,
    outbound_course_deg: *const f64,
    outbound_course_deg_stride: isize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    bank_limit_deg: *const f64,
    bank_limit_deg_stride: isize,
    turn_rate_limit_deg_per_s: *const f64,
    turn_rate_limit_deg_per_s_stride: isize,
    roll_rate_deg_per_s: *const f64,
    roll_rate_deg_per_s_stride: isize,
    rule: i32,
    rule_holds_at_height_ft: *mut f64,
    rule_holds_at_height_ft_stride: isize,
    status: *mut i32,
) -> usize {
    let rule = f64::from(rule);
    let (inputs, outputs) = ([Array::input(inbound_course_deg, inbound_course_deg_stride), Array::input(outbound_course_deg, outbound_course_deg_stride), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride), Array::input(bank_limit_deg, bank_limit_deg_stride), Array::input(turn_rate_limit_deg_per_s, turn_rate_limit_deg_per_s_stride), Array::input(roll_rate_deg_per_s, roll_rate_deg_per_s_stride), Array::input(&raw const rule, 0)], [Array::output(rule_holds_at_height_ft, rule_holds_at_height_ft_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_holds_at_height_ft") }, count, &inputs, &outputs, status) }
}

/// The outbound heading of a holding pattern by rule: a multiple of the inbound wind correction, the other way.
///
/// `inbound course + 180 - k * correction`, with k = 2 or 3.
///
/// @param inbound_course_deg course flown to the fix, any finite number
/// @param inbound_correction_deg inbound heading less inbound course, right positive, any finite number
/// @param rule by what the correction is multiplied: LUBBER_DRIFT_RULE_DOUBLE, LUBBER_DRIFT_RULE_TRIPLE
/// @param[out] rule_outbound_heading_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: The rules contradict each other; see the drift factor of `holding_pattern` for the exact one.
/// Degenerate cases: No correction inbound leaves the reciprocal.
/// Errors: A value outside its range.
/// Source: Three times: FAA Aeronautical Information Manual (3 April 2014), 5-3-8 j 6 (c), and (20 April 2023), 5-3-8 j; CNATRA P-871 chapter 4. Two to three times: CNATRA
/// P-1244 p. 5-17.
///
/// Example: lubber_rule_outbound_heading_deg(270.0, 5.0, LUBBER_DRIFT_RULE_TRIPLE, &value) gives 75
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_outbound_heading_deg(
    inbound_course_deg: f64,
    inbound_correction_deg: f64,
    rule: i32,
    rule_outbound_heading_deg: *mut f64,
) -> i32 {
    let answer = || {
        if [inbound_course_deg, inbound_correction_deg].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 1]) }
        plain::rule_outbound_heading_deg(inbound_course_deg, inbound_correction_deg, lubberline::rules::DriftRule::from_code("rule", f64::from(rule))?).map(|answer| [answer])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_outbound_heading_deg]) }
}

/// `lubber_rule_outbound_heading_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `rule` is one code for all points: by what the correction is multiplied: LUBBER_DRIFT_RULE_DOUBLE, LUBBER_DRIFT_RULE_TRIPLE
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_outbound_heading_deg_n(
    count: usize,
    inbound_course_deg: *const f64,
    inbound_course_deg_stride: isize,
    inbound_correction_deg: *const f64,
    inbound_correction_deg_stride: isize,
    rule: i32,
    rule_outbound_heading_deg: *mut f64,
    rule_outbound_heading_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let rule = f64::from(rule);
    let (inputs, outputs) = ([Array::input(inbound_course_deg, inbound_course_deg_stride), Array::input(inbound_correction_deg, inbound_correction_deg_stride), Array::input(&raw const rule, 0)], [Array::output(rule_outbound_heading_deg, rule_outbound_heading_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_outbound_heading_deg") }, count, &inputs, &outputs, status) }
}

/// The next outbound time of a holding pattern by rule: the last one, and what the inbound leg came out short.
///
/// `outbound + wanted - inbound`.
///
/// @param outbound_time_s time flown outbound, 0 to 3600
/// @param inbound_time_s time the inbound leg then took, 0 to 3600
/// @param wanted_inbound_time_s time the inbound leg is to take, 0 to 3600
/// @param[out] rule_outbound_time_s the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: It leaves out that the legs are flown at different groundspeeds, so it takes several rounds to settle. See
/// `holding_pattern`.
/// Degenerate cases: Zero where the rule leaves no time.
/// Errors: A value outside its range.
/// Source: CNATRA P-871 chapter 4, figure 4-16; against a strong headwind inbound it flies the first outbound leg for no less
/// than 30 s.
///
/// Example: lubber_rule_outbound_time_s(60.0, 50.0, 60.0, &value) gives 70
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_outbound_time_s(
    outbound_time_s: f64,
    inbound_time_s: f64,
    wanted_inbound_time_s: f64,
    rule_outbound_time_s: *mut f64,
) -> i32 {
    let answer = || plain::rule_outbound_time_s(outbound_time_s, inbound_time_s, wanted_inbound_time_s).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_outbound_time_s]) }
}

/// `lubber_rule_outbound_time_s` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_outbound_time_s_n(
    count: usize,
    outbound_time_s: *const f64,
    outbound_time_s_stride: isize,
    inbound_time_s: *const f64,
    inbound_time_s_stride: isize,
    wanted_inbound_time_s: *const f64,
    wanted_inbound_time_s_stride: isize,
    rule_outbound_time_s: *mut f64,
    rule_outbound_time_s_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(outbound_time_s, outbound_time_s_stride), Array::input(inbound_time_s, inbound_time_s_stride), Array::input(wanted_inbound_time_s, wanted_inbound_time_s_stride)], [Array::output(rule_outbound_time_s, rule_outbound_time_s_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_outbound_time_s") }, count, &inputs, &outputs, status) }
}

/// The outbound time of a holding pattern by rule for a known wind: a second more for each knot of headwind.
///
/// `still air + headwind`, less for a tailwind.
///
/// @param still_air_time_s time outbound in still air, 0 to 3600
/// @param outbound_headwind_kt headwind on the outbound leg, negative for a tailwind, -1000 to 1000
/// @param[out] rule_outbound_time_by_headwind_s the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: See `holding_pattern` for the exact time.
/// Degenerate cases: Zero where the rule leaves no time.
/// Errors: A value outside its range.
/// Source: Common practice.
///
/// Example: lubber_rule_outbound_time_by_headwind_s(60.0, -15.0, &value) gives 45
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_outbound_time_by_headwind_s(
    still_air_time_s: f64,
    outbound_headwind_kt: f64,
    rule_outbound_time_by_headwind_s: *mut f64,
) -> i32 {
    let answer = || plain::rule_outbound_time_by_headwind_s(still_air_time_s, outbound_headwind_kt).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_outbound_time_by_headwind_s]) }
}

/// `lubber_rule_outbound_time_by_headwind_s` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_outbound_time_by_headwind_s_n(
    count: usize,
    still_air_time_s: *const f64,
    still_air_time_s_stride: isize,
    outbound_headwind_kt: *const f64,
    outbound_headwind_kt_stride: isize,
    rule_outbound_time_by_headwind_s: *mut f64,
    rule_outbound_time_by_headwind_s_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(still_air_time_s, still_air_time_s_stride), Array::input(outbound_headwind_kt, outbound_headwind_kt_stride)], [Array::output(rule_outbound_time_by_headwind_s, rule_outbound_time_by_headwind_s_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_outbound_time_by_headwind_s") }, count, &inputs, &outputs, status) }
}

/// The DME reading from which on the trade does not count the slant: a mile for each 1 000 ft.
///
/// `height / 1000`.
///
/// @param height_ft height above the station's antenna, -60 000 to 400 000
/// @param[out] rule_slant_negligible_from_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: There the reading is 1.35 percent more than the distance along the ground. See `rule_ground_distance_error`.
/// Degenerate cases: None.
/// Errors: A value outside its range.
/// Source: FAA-H-8083-15 (Instrument Flying Handbook), as study notes quote it.
///
/// Example: lubber_rule_slant_negligible_from_nm(30000.0, &value) gives 30
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_slant_negligible_from_nm(
    height_ft: f64,
    rule_slant_negligible_from_nm: *mut f64,
) -> i32 {
    let answer = || plain::rule_slant_negligible_from_nm(height_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_slant_negligible_from_nm]) }
}

/// `lubber_rule_slant_negligible_from_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_slant_negligible_from_nm_n(
    count: usize,
    height_ft: *const f64,
    height_ft_stride: isize,
    rule_slant_negligible_from_nm: *mut f64,
    rule_slant_negligible_from_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(height_ft, height_ft_stride)], [Array::output(rule_slant_negligible_from_nm, rule_slant_negligible_from_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_slant_negligible_from_nm") }, count, &inputs, &outputs, status) }
}

/// The DME reading taken for the distance along the ground, beside that distance, term by term.
///
/// The reading less `ground_distance_nm`.
///
/// @param slant_range_nm DME reading, 0 to 10 900
/// @param height_ft height above the station's antenna, -60 000 to 400 000
/// @param[out] rule_nm The rule's answer; may be NULL
/// @param[out] exact_nm The exact answer; may be NULL
/// @param[out] error_nm The error: the sum of the terms; may be NULL
/// @param[out] triangle_nm The slant for the side of the triangle; may be NULL
/// @param[out] curve_nm A flat earth for a round one; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: The terms sum to the whole to rounding error.
/// Degenerate cases: Overhead the whole reading is error.
/// Errors: A value outside its range, or a reading shorter than the height.
/// Source: The rule: `rule_slant_negligible_from_nm`. The exact distance: `ground_distance_nm`.
///
/// Example: lubber_rule_ground_distance_error(30.0, 30000.0, NULL, NULL, &value, NULL, NULL) gives 0.43
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_ground_distance_error(
    slant_range_nm: f64,
    height_ft: f64,
    rule_nm: *mut f64,
    exact_nm: *mut f64,
    error_nm: *mut f64,
    triangle_nm: *mut f64,
    curve_nm: *mut f64,
) -> i32 {
    let answer = || plain::rule_ground_distance_error(slant_range_nm, height_ft).map(|answer| [answer.rule_nm, answer.exact_nm, answer.error_nm, answer.triangle_nm, answer.curve_nm]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_nm, exact_nm, error_nm, triangle_nm, curve_nm]) }
}

/// `lubber_rule_ground_distance_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_ground_distance_error_n(
    count: usize,
    slant_range_nm: *const f64,
    slant_range_nm_stride: isize,
    height_ft: *const f64,
    height_ft_stride: isize,
    rule_nm: *mut f64,
    rule_nm_stride: isize,
    exact_nm: *mut f64,
    exact_nm_stride: isize,
    error_nm: *mut f64,
    error_nm_stride: isize,
    triangle_nm: *mut f64,
    triangle_nm_stride: isize,
    curve_nm: *mut f64,
    curve_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(slant_range_nm, slant_range_nm_stride), Array::input(height_ft, height_ft_stride)], [Array::output(rule_nm, rule_nm_stride), Array::output(exact_nm, exact_nm_stride), Array::output(error_nm, error_nm_stride), Array::output(triangle_nm, triangle_nm_stride), Array::output(curve_nm, curve_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_ground_distance_error") }, count, &inputs, &outputs, status) }
}

/// A rule of the radio horizon beside the tangent to a sphere of 4/3 of the earth's radius, term by term.
///
/// `radio_horizon_nm` by the rule less that of `four_thirds`.
///
/// @param aircraft_height_ft height of the aircraft above the surface, 0 to 400 000
/// @param antenna_height_ft height of the antenna above the surface, 0 to 400 000
/// @param rule which rule: LUBBER_HORIZON_RULE_FOUR_THIRDS, LUBBER_HORIZON_RULE_FEET_MILES, LUBBER_HORIZON_RULE_METRES_KILOMETRES, LUBBER_HORIZON_RULE_FIVE_QUARTERS
/// @param[out] rule_nm The rule's answer; may be NULL
/// @param[out] exact_nm The exact answer; may be NULL
/// @param[out] error_nm The error: the sum of the terms; may be NULL
/// @param[out] factor_nm The rule's factor for 1.2289; may be NULL
/// @param[out] root_nm The square roots of the heights for the tangents; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: The terms sum to the whole to rounding error.
/// Degenerate cases: The rule `four_thirds` is the exact one and has no error.
/// Errors: A value outside its range.
/// Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 1 Chapter 3, Appendix, and common practice (`radio_horizon_nm`).
///
/// Example: lubber_rule_radio_horizon_error(35000.0, 0.0, LUBBER_HORIZON_RULE_FIVE_QUARTERS, NULL, NULL, NULL, &value, NULL) gives 3.98
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_radio_horizon_error(
    aircraft_height_ft: f64,
    antenna_height_ft: f64,
    rule: i32,
    rule_nm: *mut f64,
    exact_nm: *mut f64,
    error_nm: *mut f64,
    factor_nm: *mut f64,
    root_nm: *mut f64,
) -> i32 {
    let answer = || {
        if [aircraft_height_ft, antenna_height_ft].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 5]) }
        plain::rule_radio_horizon_error(aircraft_height_ft, antenna_height_ft, lubberline::station::HorizonRule::from_code("rule", f64::from(rule))?).map(|answer| [answer.rule_nm, answer.exact_nm, answer.error_nm, answer.factor_nm, answer.root_nm])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_nm, exact_nm, error_nm, factor_nm, root_nm]) }
}

/// `lubber_rule_radio_horizon_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `rule` is one code for all points: which rule: LUBBER_HORIZON_RULE_FOUR_THIRDS, LUBBER_HORIZON_RULE_FEET_MILES, LUBBER_HORIZON_RULE_METRES_KILOMETRES, LUBBER_HORIZON_RULE_FIVE_QUARTERS
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_radio_horizon_error_n(
    count: usize,
    aircraft_height_ft: *const f64,
    aircraft_height_ft_stride: isize,
    antenna_height_ft: *const f64,
    antenna_height_ft_stride: isize,
    rule: i32,
    rule_nm: *mut f64,
    rule_nm_stride: isize,
    exact_nm: *mut f64,
    exact_nm_stride: isize,
    error_nm: *mut f64,
    error_nm_stride: isize,
    factor_nm: *mut f64,
    factor_nm_stride: isize,
    root_nm: *mut f64,
    root_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let rule = f64::from(rule);
    let (inputs, outputs) = ([Array::input(aircraft_height_ft, aircraft_height_ft_stride), Array::input(antenna_height_ft, antenna_height_ft_stride), Array::input(&raw const rule, 0)], [Array::output(rule_nm, rule_nm_stride), Array::output(exact_nm, exact_nm_stride), Array::output(error_nm, error_nm_stride), Array::output(factor_nm, factor_nm_stride), Array::output(root_nm, root_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_radio_horizon_error") }, count, &inputs, &outputs, status) }
}

/// The degrees of heading by which to begin the roll-out before the new heading, by a rule.
///
/// A third of the bank, or half of it.
///
/// @param bank_deg bank, above 0 below 90
/// @param rule which rule: LUBBER_ROLL_OUT_RULE_THIRD, LUBBER_ROLL_OUT_RULE_HALF
/// @param[out] rule_roll_out_lead_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: A rule. See `rule_roll_out_lead_error`.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range.
/// Source: A third: CNATRA P-1215, timed turns. Half: common practice.
///
/// Example: lubber_rule_roll_out_lead_deg(24.0, LUBBER_ROLL_OUT_RULE_THIRD, &value) gives 8
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_roll_out_lead_deg(
    bank_deg: f64,
    rule: i32,
    rule_roll_out_lead_deg: *mut f64,
) -> i32 {
    let answer = || {
        if [bank_deg].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 1]) }
        plain::rule_roll_out_lead_deg(bank_deg, lubberline::rules::RollOutRule::from_code("rule", f64::from(rule))?).map(|answer| [answer])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_roll_out_lead_deg]) }
}

/// `lubber_rule_roll_out_lead_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `rule` is one code for all points: which rule: LUBBER_ROLL_OUT_RULE_THIRD, LUBBER_ROLL_OUT_RULE_HALF
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_roll_out_lead_deg_n(
    count: usize,
    bank_deg: *const f64,
    bank_deg_stride: isize,
    rule: i32,
    rule_roll_out_lead_deg: *mut f64,
    rule_roll_out_lead_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let rule = f64::from(rule);
    let (inputs, outputs) = ([Array::input(bank_deg, bank_deg_stride), Array::input(&raw const rule, 0)], [Array::output(rule_roll_out_lead_deg, rule_roll_out_lead_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_roll_out_lead_deg") }, count, &inputs, &outputs, status) }
}

/// A rule of the roll-out beside the heading that is turned while the bank returns to zero, term by term.
///
/// The rule less `g / (V p) ln sec b`.
///
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param bank_deg bank, above 0 below 90
/// @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
/// @param rule which rule: LUBBER_ROLL_OUT_RULE_THIRD, LUBBER_ROLL_OUT_RULE_HALF
/// @param[out] rule_deg The rule's answer; may be NULL
/// @param[out] exact_deg The exact answer; may be NULL
/// @param[out] error_deg The error: the sum of the terms; may be NULL
/// @param[out] share_deg The share of the bank for the mean rate of turn over the time of the roll; may be NULL
/// @param[out] tangent_deg A rate in proportion to the bank for one that goes with its tangent; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: The terms sum to the whole to rounding error.
/// Degenerate cases: A roll that takes no time turns no heading: the rule is all error.
/// Errors: A value outside its range.
/// Source: Named at `rule_roll_out_lead_deg`; the exact lead is derived.
///
/// Example: lubber_rule_roll_out_lead_error(120.0, 18.0, 5.0, LUBBER_ROLL_OUT_RULE_THIRD, NULL, NULL, &value, NULL, NULL) gives 0.8
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_roll_out_lead_error(
    true_airspeed_kt: f64,
    bank_deg: f64,
    roll_rate_deg_per_s: f64,
    rule: i32,
    rule_deg: *mut f64,
    exact_deg: *mut f64,
    error_deg: *mut f64,
    share_deg: *mut f64,
    tangent_deg: *mut f64,
) -> i32 {
    let answer = || {
        if [true_airspeed_kt, bank_deg, roll_rate_deg_per_s].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 5]) }
        plain::rule_roll_out_lead_error(true_airspeed_kt, bank_deg, roll_rate_deg_per_s, lubberline::rules::RollOutRule::from_code("rule", f64::from(rule))?).map(|answer| [answer.rule_deg, answer.exact_deg, answer.error_deg, answer.share_deg, answer.tangent_deg])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_deg, exact_deg, error_deg, share_deg, tangent_deg]) }
}

/// `lubber_rule_roll_out_lead_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `rule` is one code for all points: which rule: LUBBER_ROLL_OUT_RULE_THIRD, LUBBER_ROLL_OUT_RULE_HALF
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_roll_out_lead_error_n(
    count: usize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    bank_deg: *const f64,
    bank_deg_stride: isize,
    roll_rate_deg_per_s: *const f64,
    roll_rate_deg_per_s_stride: isize,
    rule: i32,
    rule_deg: *mut f64,
    rule_deg_stride: isize,
    exact_deg: *mut f64,
    exact_deg_stride: isize,
    error_deg: *mut f64,
    error_deg_stride: isize,
    share_deg: *mut f64,
    share_deg_stride: isize,
    tangent_deg: *mut f64,
    tangent_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let rule = f64::from(rule);
    let (inputs, outputs) = ([Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(bank_deg, bank_deg_stride), Array::input(roll_rate_deg_per_s, roll_rate_deg_per_s_stride), Array::input(&raw const rule, 0)], [Array::output(rule_deg, rule_deg_stride), Array::output(exact_deg, exact_deg_stride), Array::output(error_deg, error_deg_stride), Array::output(share_deg, share_deg_stride), Array::output(tangent_deg, tangent_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_roll_out_lead_error") }, count, &inputs, &outputs, status) }
}

/// The lead of a course change by mental arithmetic: a third of a mile for each 60 kt, and more for height.
///
/// `(gs / 60) / 3 * change / 90`, and half a nautical mile for each 10 000 ft above 5 000 ft.
///
/// @param groundspeed_kt groundspeed, 0 to 10 000
/// @param course_change_deg change of course, either way, reduced to half a circle
/// @param height_above_station_ft height above the station's antenna, -60 000 to 400 000
/// @param[out] rule_lead_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: A rule: short by half at jet speeds, where no one flies the bank of standard rate. See `lead_nm` for the exact lead.
/// Degenerate cases: Beyond 90 degrees the proportion goes on, while the exact lead grows like a tangent.
/// Errors: A value outside its range.
/// Source: Common practice.
///
/// Example: lubber_rule_lead_nm(180.0, 90.0, 0.0, &value) gives 1.00
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_lead_nm(
    groundspeed_kt: f64,
    course_change_deg: f64,
    height_above_station_ft: f64,
    rule_lead_nm: *mut f64,
) -> i32 {
    let answer = || plain::rule_lead_nm(groundspeed_kt, course_change_deg, height_above_station_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_lead_nm]) }
}

/// `lubber_rule_lead_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_lead_nm_n(
    count: usize,
    groundspeed_kt: *const f64,
    groundspeed_kt_stride: isize,
    course_change_deg: *const f64,
    course_change_deg_stride: isize,
    height_above_station_ft: *const f64,
    height_above_station_ft_stride: isize,
    rule_lead_nm: *mut f64,
    rule_lead_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(groundspeed_kt, groundspeed_kt_stride), Array::input(course_change_deg, course_change_deg_stride), Array::input(height_above_station_ft, height_above_station_ft_stride)], [Array::output(rule_lead_nm, rule_lead_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_lead_nm") }, count, &inputs, &outputs, status) }
}

/// The DME reading at which mental arithmetic begins the turn: the rule's lead added to the height in miles.
///
/// `(gs / 60) / 3 * change / 90 + height / 6000`.
///
/// @param groundspeed_kt groundspeed, 0 to 10 000
/// @param course_change_deg change of course, either way, reduced to half a circle
/// @param height_above_station_ft height above the station's antenna, -60 000 to 400 000
/// @param[out] rule_reading_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: A rule whose two errors work against each other: the lead of standard rate is too short for a fast aircraft, and the sum of distance and
/// height is more than the slant. See `dme_at_roll_in_nm` for the exact reading.
/// Degenerate cases: As `rule_lead_nm`.
/// Errors: A value outside its range.
/// Source: Common practice.
///
/// Example: lubber_rule_reading_nm(450.0, 60.0, 36000.0, &value) gives 7.67
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_reading_nm(
    groundspeed_kt: f64,
    course_change_deg: f64,
    height_above_station_ft: f64,
    rule_reading_nm: *mut f64,
) -> i32 {
    let answer = || plain::rule_reading_nm(groundspeed_kt, course_change_deg, height_above_station_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_reading_nm]) }
}

/// `lubber_rule_reading_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_reading_nm_n(
    count: usize,
    groundspeed_kt: *const f64,
    groundspeed_kt_stride: isize,
    course_change_deg: *const f64,
    course_change_deg_stride: isize,
    height_above_station_ft: *const f64,
    height_above_station_ft_stride: isize,
    rule_reading_nm: *mut f64,
    rule_reading_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(groundspeed_kt, groundspeed_kt_stride), Array::input(course_change_deg, course_change_deg_stride), Array::input(height_above_station_ft, height_above_station_ft_stride)], [Array::output(rule_reading_nm, rule_reading_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_reading_nm") }, count, &inputs, &outputs, status) }
}

/// The least DME reading overhead by rule: the height in miles, 6 000 ft to the mile.
///
/// `height / 6000`.
///
/// @param height_ft height above the station's antenna, -60 000 to 400 000
/// @param[out] rule_least_dme_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: 1.3 percent high: a nautical mile is 6 076.1 ft. See `least_dme_nm`.
/// Degenerate cases: None.
/// Errors: A value outside its range.
/// Source: Common practice.
///
/// Example: lubber_rule_least_dme_nm(12000.0, &value) gives 2.00
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_least_dme_nm(
    height_ft: f64,
    rule_least_dme_nm: *mut f64,
) -> i32 {
    let answer = || plain::rule_least_dme_nm(height_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_least_dme_nm]) }
}

/// `lubber_rule_least_dme_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_least_dme_nm_n(
    count: usize,
    height_ft: *const f64,
    height_ft_stride: isize,
    rule_least_dme_nm: *mut f64,
    rule_least_dme_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(height_ft, height_ft_stride)], [Array::output(rule_least_dme_nm, rule_least_dme_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_least_dme_nm") }, count, &inputs, &outputs, status) }
}

/// The cone of confusion by rule: as wide on each side as the aircraft is high.
///
/// `height / 6000`, a half-angle of 45 degrees.
///
/// @param height_ft height above the station's antenna, -60 000 to 400 000
/// @param[out] rule_cone_radius_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: ICAO Doc 8168 takes 50 degrees, which is wider by 19 percent. See `cone_radius_nm`.
/// Degenerate cases: At the station's height and below it the radius is zero.
/// Errors: A value outside its range.
/// Source: Common practice.
///
/// Example: lubber_rule_cone_radius_nm(36000.0, &value) gives 6.00
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_cone_radius_nm(
    height_ft: f64,
    rule_cone_radius_nm: *mut f64,
) -> i32 {
    let answer = || plain::rule_cone_radius_nm(height_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_cone_radius_nm]) }
}

/// `lubber_rule_cone_radius_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_cone_radius_nm_n(
    count: usize,
    height_ft: *const f64,
    height_ft_stride: isize,
    rule_cone_radius_nm: *mut f64,
    rule_cone_radius_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(height_ft, height_ft_stride)], [Array::output(rule_cone_radius_nm, rule_cone_radius_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_cone_radius_nm") }, count, &inputs, &outputs, status) }
}

/// The bank of a standard-rate turn by a rule of thumb.
///
/// 15 percent of the speed, a tenth of it and 7, a tenth of it and 5, or 20 percent of it.
///
/// @param true_airspeed_kt true airspeed (the indicated one for `twenty_percent`), above 0 to 5000
/// @param rule which rule: LUBBER_BANK_RULE_FIFTEEN_PERCENT, LUBBER_BANK_RULE_TENTH_AND_SEVEN, LUBBER_BANK_RULE_TENTH_AND_FIVE, LUBBER_BANK_RULE_TWENTY_PERCENT
/// @param[out] rule_bank_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: They contradict each other; the exact bank is `atan(V / 364.07)`. See `bank_for_rate_deg`.
/// Degenerate cases: At jet speeds the rules give more bank than anyone flies.
/// Errors: A value outside its range.
/// Source: 15 percent, a tenth and 7, a tenth and 5: common practice. 20 percent: CNATRA P-1215.
///
/// Example: lubber_rule_bank_deg(120.0, LUBBER_BANK_RULE_TENTH_AND_SEVEN, &value) gives 19.0
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_bank_deg(
    true_airspeed_kt: f64,
    rule: i32,
    rule_bank_deg: *mut f64,
) -> i32 {
    let answer = || {
        if [true_airspeed_kt].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 1]) }
        plain::rule_bank_deg(true_airspeed_kt, lubberline::rules::BankRule::from_code("rule", f64::from(rule))?).map(|answer| [answer])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_bank_deg]) }
}

/// `lubber_rule_bank_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `rule` is one code for all points: which rule: LUBBER_BANK_RULE_FIFTEEN_PERCENT, LUBBER_BANK_RULE_TENTH_AND_SEVEN, LUBBER_BANK_RULE_TENTH_AND_FIVE, LUBBER_BANK_RULE_TWENTY_PERCENT
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_bank_deg_n(
    count: usize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    rule: i32,
    rule_bank_deg: *mut f64,
    rule_bank_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let rule = f64::from(rule);
    let (inputs, outputs) = ([Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(&raw const rule, 0)], [Array::output(rule_bank_deg, rule_bank_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_bank_deg") }, count, &inputs, &outputs, status) }
}

/// The radius of a turn by a rule of thumb.
///
/// 0.5 percent of the speed (standard rate), 1 percent (half standard rate), miles a minute less two, or a tenth of their square (30 degrees).
///
/// @param speed_kt speed, above 0 to 5000
/// @param rule which rule: LUBBER_RADIUS_RULE_HALF_PERCENT, LUBBER_RADIUS_RULE_ONE_PERCENT, LUBBER_RADIUS_RULE_MILES_A_MINUTE_LESS_TWO, LUBBER_RADIUS_RULE_TENTH_OF_SQUARE
/// @param[out] rule_turn_radius_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Within 6 percent of `V / (60 pi)` and `V / (30 pi)`; the last is 10 percent high throughout. See `turn_radius_nm`.
/// Degenerate cases: Miles a minute less two is zero below 120 kt.
/// Errors: A value outside its range.
/// Source: CNATRA P-340 p. 6-98; CNATRA P-1282; AFMAN 11-217 (rescinded), as quoted.
///
/// Example: lubber_rule_turn_radius_nm(250.0, LUBBER_RADIUS_RULE_ONE_PERCENT, &value) gives 2.50
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_turn_radius_nm(
    speed_kt: f64,
    rule: i32,
    rule_turn_radius_nm: *mut f64,
) -> i32 {
    let answer = || {
        if [speed_kt].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 1]) }
        plain::rule_turn_radius_nm(speed_kt, lubberline::rules::RadiusRule::from_code("rule", f64::from(rule))?).map(|answer| [answer])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_turn_radius_nm]) }
}

/// `lubber_rule_turn_radius_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `rule` is one code for all points: which rule: LUBBER_RADIUS_RULE_HALF_PERCENT, LUBBER_RADIUS_RULE_ONE_PERCENT, LUBBER_RADIUS_RULE_MILES_A_MINUTE_LESS_TWO, LUBBER_RADIUS_RULE_TENTH_OF_SQUARE
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_turn_radius_nm_n(
    count: usize,
    speed_kt: *const f64,
    speed_kt_stride: isize,
    rule: i32,
    rule_turn_radius_nm: *mut f64,
    rule_turn_radius_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let rule = f64::from(rule);
    let (inputs, outputs) = ([Array::input(speed_kt, speed_kt_stride), Array::input(&raw const rule, 0)], [Array::output(rule_turn_radius_nm, rule_turn_radius_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_turn_radius_nm") }, count, &inputs, &outputs, status) }
}

/// Radials to the mile along an arc by the sixty-to-one rule.
///
/// `60 / D`; the exact divisor is 57.3.
///
/// @param arc_radius_nm distance of the arc from the station, above 0 to 5000
/// @param[out] rule_radials_per_mile the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: 4.7 percent high.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range.
/// Source: CNATRA P-871 chapter 4, Radial Interception from an Arc.
///
/// Example: lubber_rule_radials_per_mile(12.0, &value) gives 5.0
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_radials_per_mile(
    arc_radius_nm: f64,
    rule_radials_per_mile: *mut f64,
) -> i32 {
    let answer = || plain::rule_radials_per_mile(arc_radius_nm).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_radials_per_mile]) }
}

/// `lubber_rule_radials_per_mile` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_radials_per_mile_n(
    count: usize,
    arc_radius_nm: *const f64,
    arc_radius_nm_stride: isize,
    rule_radials_per_mile: *mut f64,
    rule_radials_per_mile_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(arc_radius_nm, arc_radius_nm_stride)], [Array::output(rule_radials_per_mile, rule_radials_per_mile_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_radials_per_mile") }, count, &inputs, &outputs, status) }
}

/// The lead in radials for the turn off an arc, by the sixty-to-one rule and a correction.
///
/// `(60 / D) r`, times (90 ± lead) / 90 (`proportion`), or a third more inbound and less outbound inside 10 NM (`third`).
///
/// @param arc_radius_nm distance of the arc from the station, above 0 to 5000
/// @param turn_radius_nm radius of the turn, above 0 to 5000
/// @param flown whether the radial is flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
/// @param rule which correction: LUBBER_ARC_LEAD_RULE_PLAIN, LUBBER_ARC_LEAD_RULE_PROPORTION, LUBBER_ARC_LEAD_RULE_THIRD, LUBBER_ARC_LEAD_RULE_ADDED_MILES
/// @param[out] rule_lead_radials_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: A rule. See `arc_exit` for the exact lead in wind and with roll.
/// Degenerate cases: Where the exact turn toward the station no longer fits, the rules still give a number.
/// Errors: A value outside its range.
/// Source: CNATRA P-871 chapter 4; CNATRA P-1204 p. 76 (4-01), whose text multiplies by the radials per mile where its worked example adds the miles;
/// CNATRA P-1265 p. 2-10 (5-99).
///
/// Example: lubber_rule_lead_radials_deg(10.0, 2.5, LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_ARC_LEAD_RULE_PROPORTION, &value) gives 17.5
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_lead_radials_deg(
    arc_radius_nm: f64,
    turn_radius_nm: f64,
    flown: i32,
    rule: i32,
    rule_lead_radials_deg: *mut f64,
) -> i32 {
    let answer = || {
        if [arc_radius_nm, turn_radius_nm].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 1]) }
        plain::rule_lead_radials_deg(arc_radius_nm, turn_radius_nm, lubberline::lead::RadialFlown::from_code("flown", f64::from(flown))?, lubberline::rules::ArcLeadRule::from_code("rule", f64::from(rule))?).map(|answer| [answer])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_lead_radials_deg]) }
}

/// `lubber_rule_lead_radials_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `flown` is one code for all points: whether the radial is flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
///
/// `rule` is one code for all points: which correction: LUBBER_ARC_LEAD_RULE_PLAIN, LUBBER_ARC_LEAD_RULE_PROPORTION, LUBBER_ARC_LEAD_RULE_THIRD, LUBBER_ARC_LEAD_RULE_ADDED_MILES
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_lead_radials_deg_n(
    count: usize,
    arc_radius_nm: *const f64,
    arc_radius_nm_stride: isize,
    turn_radius_nm: *const f64,
    turn_radius_nm_stride: isize,
    flown: i32,
    rule: i32,
    rule_lead_radials_deg: *mut f64,
    rule_lead_radials_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let flown = f64::from(flown);
    let rule = f64::from(rule);
    let (inputs, outputs) = ([Array::input(arc_radius_nm, arc_radius_nm_stride), Array::input(turn_radius_nm, turn_radius_nm_stride), Array::input(&raw const flown, 0), Array::input(&raw const rule, 0)], [Array::output(rule_lead_radials_deg, rule_lead_radials_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_lead_radials_deg") }, count, &inputs, &outputs, status) }
}

/// Distance off course by rule, right positive: 200 ft for each dot and each nautical mile from the station.
///
/// `-200 ft dots distance`.
///
/// @param deflection_dots where the needle stands in dots of two degrees, positive right of centre, -20 to 20
/// @param distance_nm distance from the station along the ground, above 0 to 5000
/// @param[out] rule_off_course_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: 6 percent short near the centre: two degrees are 212 ft at a nautical mile. See `cross_track_of_deflection_nm`.
/// Degenerate cases: The proportion goes on past the end of the scale.
/// Errors: A value outside its range.
/// Source: Common practice, as printed on training pages for the FAA's written test.
///
/// Example: lubber_rule_off_course_nm(-2.0, 30.0, &value) gives 1.97
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_off_course_nm(
    deflection_dots: f64,
    distance_nm: f64,
    rule_off_course_nm: *mut f64,
) -> i32 {
    let answer = || plain::rule_off_course_nm(deflection_dots, distance_nm).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [rule_off_course_nm]) }
}

/// `lubber_rule_off_course_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rule_off_course_nm_n(
    count: usize,
    deflection_dots: *const f64,
    deflection_dots_stride: isize,
    distance_nm: *const f64,
    distance_nm_stride: isize,
    rule_off_course_nm: *mut f64,
    rule_off_course_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(deflection_dots, deflection_dots_stride), Array::input(distance_nm, distance_nm_stride)], [Array::output(rule_off_course_nm, rule_off_course_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rule_off_course_nm") }, count, &inputs, &outputs, status) }
}

/// Radial, DME, ground distance and elevation angle of an aircraft from a station.
///
/// The radial is the azimuth of the geodesic on WGS-84 at the station less its declination; the DME reading is the straight line
/// between antenna and aircraft at their heights, in earth-centred coordinates.
///
/// @param station_latitude_deg latitude of the antenna, -90 to 90
/// @param station_longitude_deg longitude of the antenna, any finite number
/// @param station_elevation_ft elevation of the antenna above mean sea level, -16 500 to 60 000
/// @param station_declination_deg angle from true north to the station's north, positive east, -180 to 180
/// @param latitude_deg latitude of the aircraft, -90 to 90
/// @param longitude_deg longitude of the aircraft, any finite number
/// @param altitude_ft altitude of the aircraft above mean sea level, -16 500 to 400 000
/// @param[out] radial_deg Direction of the aircraft from the station, in the station's north, 0 to 360; NaN exactly overhead; may be NULL
/// @param[out] dme_nm Straight distance from antenna to aircraft: the DME reading; may be NULL
/// @param[out] ground_distance_nm Distance along the ground; may be NULL
/// @param[out] elevation_angle_deg Angle of the aircraft above the station's horizontal; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: 30 nanometres along the ground, a micrometre along the slant. In arrays a tenth of a micrometre to 300 NM and a micrometre to
/// 18 000 km, along the ground and across; from there to 10 560 NM three micrometres, across as far as the radial moves the other end; within a
/// metre of the station and beyond 10 560 NM each point is computed as by itself.
/// Mean sea level is taken for the ellipsoid.
/// Degenerate cases: Exactly overhead the radial is NaN. Reception is not judged here.
/// Errors: A value outside its range.
/// Source: C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013) 43-55; earth-centred coordinates of WGS-84
/// (NGA.STND.0036_1.0.0_WGS84, from memory).
///
/// Example: lubber_observe(61.25, -11.5, 420.0, -6.0, 61.5, -11.0, 31000.0, NULL, &value, NULL, NULL) gives 21.46
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_observe(
    station_latitude_deg: f64,
    station_longitude_deg: f64,
    station_elevation_ft: f64,
    station_declination_deg: f64,
    latitude_deg: f64,
    longitude_deg: f64,
    altitude_ft: f64,
    radial_deg: *mut f64,
    dme_nm: *mut f64,
    ground_distance_nm: *mut f64,
    elevation_angle_deg: *mut f64,
) -> i32 {
    let answer = || plain::observe(station_latitude_deg, station_longitude_deg, station_elevation_ft, station_declination_deg, latitude_deg, longitude_deg, altitude_ft).map(|answer| [answer.radial_deg, answer.dme_nm, answer.ground_distance_nm, answer.elevation_angle_deg]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [radial_deg, dme_nm, ground_distance_nm, elevation_angle_deg]) }
}

/// `lubber_observe` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_observe_n(
    count: usize,
    station_latitude_deg: *const f64,
    station_latitude_deg_stride: isize,
    station_longitude_deg: *const f64,
    station_longitude_deg_stride: isize,
    station_elevation_ft: *const f64,
    station_elevation_ft_stride: isize,
    station_declination_deg: *const f64,
    station_declination_deg_stride: isize,
    latitude_deg: *const f64,
    latitude_deg_stride: isize,
    longitude_deg: *const f64,
    longitude_deg_stride: isize,
    altitude_ft: *const f64,
    altitude_ft_stride: isize,
    radial_deg: *mut f64,
    radial_deg_stride: isize,
    dme_nm: *mut f64,
    dme_nm_stride: isize,
    ground_distance_nm: *mut f64,
    ground_distance_nm_stride: isize,
    elevation_angle_deg: *mut f64,
    elevation_angle_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(station_latitude_deg, station_latitude_deg_stride), Array::input(station_longitude_deg, station_longitude_deg_stride), Array::input(station_elevation_ft, station_elevation_ft_stride), Array::input(station_declination_deg, station_declination_deg_stride), Array::input(latitude_deg, latitude_deg_stride), Array::input(longitude_deg, longitude_deg_stride), Array::input(altitude_ft, altitude_ft_stride)], [Array::output(radial_deg, radial_deg_stride), Array::output(dme_nm, dme_nm_stride), Array::output(ground_distance_nm, ground_distance_nm_stride), Array::output(elevation_angle_deg, elevation_angle_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("observe") }, count, &inputs, &outputs, status) }
}

/// Radius of the cone of confusion above a station.
///
/// `h tan(half-angle)`.
///
/// @param height_ft height above the station's antenna, -60 000 to 400 000
/// @param cone_half_angle_deg half-angle from the vertical, above 0 below 90
/// @param[out] cone_radius_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Over a flat earth: 0.3 percent too much at 35 000 ft, 0.5 percent at 60 000 ft.
/// Degenerate cases: At the station's height and below it the radius is zero.
/// Errors: A value outside its range.
/// Source: 50 degrees for a VOR, 40 for an NDB: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 2, 2.5.
///
/// Example: lubber_cone_radius_nm(35000.0, 50.0, &value) gives 6.86
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_cone_radius_nm(
    height_ft: f64,
    cone_half_angle_deg: f64,
    cone_radius_nm: *mut f64,
) -> i32 {
    let answer = || plain::cone_radius_nm(height_ft, cone_half_angle_deg).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [cone_radius_nm]) }
}

/// `lubber_cone_radius_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_cone_radius_nm_n(
    count: usize,
    height_ft: *const f64,
    height_ft_stride: isize,
    cone_half_angle_deg: *const f64,
    cone_half_angle_deg_stride: isize,
    cone_radius_nm: *mut f64,
    cone_radius_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(height_ft, height_ft_stride), Array::input(cone_half_angle_deg, cone_half_angle_deg_stride)], [Array::output(cone_radius_nm, cone_radius_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("cone_radius_nm") }, count, &inputs, &outputs, status) }
}

/// Whether a leg between two fixes is long enough for the turns at both, in wind and with roll, and if not, what is possible.
///
/// `length - past first - before second`: the distance past its fix at which the first turn is done, and the lead of
/// the second. The largest airspeed and the least bank are those that leave nothing to spare.
///
/// @param inbound_course_deg course flown to the first fix, any finite number
/// @param leg_course_deg course from the first fix to the second
/// @param outbound_course_deg course flown from the second fix
/// @param leg_length_nm distance between the fixes, 0 to 10 900
/// @param first_passage how the first fix is passed: LUBBER_PASSAGE_FLY_BY, LUBBER_PASSAGE_FLY_OVER
/// @param second_passage how the second fix is passed: LUBBER_PASSAGE_FLY_BY, LUBBER_PASSAGE_FLY_OVER
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param wind_from_deg where the wind blows from, against the same north
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param bank_limit_deg greatest bank, above 0 below 90
/// @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
/// @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
/// @param[out] past_first_nm Distance past the first fix, along the leg, at which its turn is done; may be NULL
/// @param[out] before_second_nm Distance before the second fix, along the leg, at which its turn begins; may be NULL
/// @param[out] spare_nm What the leg has left between the two; negative where it is too short; may be NULL
/// @param[out] straight_time_s Time flown straight between the two turns; negative where the leg is too short; may be NULL
/// @param[out] largest_true_airspeed_kt Largest true airspeed at which the leg is long enough; NaN where there is none, or no limit; may be NULL
/// @param[out] largest_groundspeed_kt Groundspeed on the leg at that airspeed; may be NULL
/// @param[out] bank_needed_deg Least bank, with no limit of the rate of turn, at which the leg is long enough; NaN where none is, or every bank; may be NULL
/// @param[out] crossing_past_first_nm Where the course to the first fix crosses the course from the second, past the first fix; NaN for parallel courses; may be NULL
/// @param[out] crossing_before_second_nm The same crossing, before the second fix along the course from it; may be NULL
/// @param[out] crossing_lead_nm Lead of the one turn there that would do for both; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: That of `lead_nm`; the largest airspeed and the least bank to rounding.
/// Degenerate cases: A first fix that is flown over is followed by an intercept of the leg at 30 degrees; a second one that is flown
/// over takes nothing of the leg. The largest airspeed is looked for from the one given: upward where the leg is long
/// enough.
/// Errors: A value outside its range, a reversal at either fix, a wind that the airspeed cannot hold.
/// Source: Derived from the leads of the two turns; the sum of two distances as in ICAO Doc 8168 Vol II (5th ed. 2006), Part
/// III Section 2 Chapter 1.
///
/// Example: lubber_successive_turns(40.0, 130.0, 60.0, 8.0, LUBBER_PASSAGE_FLY_BY, LUBBER_PASSAGE_FLY_BY, 400.0, 300.0, 40.0, 25.0, 3.0, 5.0, NULL, NULL, &value, NULL, NULL, NULL, NULL, NULL, NULL, NULL) gives -2.71
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_successive_turns(
    inbound_course_deg: f64,
    leg_course_deg: f64,
    outbound_course_deg: f64,
    leg_length_nm: f64,
    first_passage: i32,
    second_passage: i32,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
    past_first_nm: *mut f64,
    before_second_nm: *mut f64,
    spare_nm: *mut f64,
    straight_time_s: *mut f64,
    largest_true_airspeed_kt: *mut f64,
    largest_groundspeed_kt: *mut f64,
    bank_needed_deg: *mut f64,
    crossing_past_first_nm: *mut f64,
    crossing_before_second_nm: *mut f64,
    crossing_lead_nm: *mut f64,
) -> i32 {
    let answer = || {
        if [inbound_course_deg, leg_course_deg, outbound_course_deg, leg_length_nm, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 10]) }
        plain::successive_turns(inbound_course_deg, leg_course_deg, outbound_course_deg, leg_length_nm, lubberline::procedure::Passage::from_code("first_passage", f64::from(first_passage))?, lubberline::procedure::Passage::from_code("second_passage", f64::from(second_passage))?, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.past_first_nm, answer.before_second_nm, answer.spare_nm, answer.straight_time_s, answer.largest_true_airspeed_kt, answer.largest_groundspeed_kt, answer.bank_needed_deg, answer.crossing_past_first_nm, answer.crossing_before_second_nm, answer.crossing_lead_nm])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [past_first_nm, before_second_nm, spare_nm, straight_time_s, largest_true_airspeed_kt, largest_groundspeed_kt, bank_needed_deg, crossing_past_first_nm, crossing_before_second_nm, crossing_lead_nm]) }
}

/// `lubber_successive_turns` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `first_passage` is one code for all points: how the first fix is passed: LUBBER_PASSAGE_FLY_BY, LUBBER_PASSAGE_FLY_OVER
///
/// `second_passage` is one code for all points: how the second fix is passed: LUBBER_PASSAGE_FLY_BY, LUBBER_PASSAGE_FLY_OVER
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_successive_turns_n(
    count: usize,
    inbound_course_deg: *const f64,
    inbound_course_deg_stride: isize,
    leg_course_deg: *const f64,
    leg_course_deg_stride: isize,
    outbound_course_deg: *const f64,
    outbound_course_deg_stride: isize,
    leg_length_nm: *const f64,
    leg_length_nm_stride: isize,
    first_passage: i32,
    second_passage: i32,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    bank_limit_deg: *const f64,
    bank_limit_deg_stride: isize,
    turn_rate_limit_deg_per_s: *const f64,
    turn_rate_limit_deg_per_s_stride: isize,
    roll_rate_deg_per_s: *const f64,
    roll_rate_deg_per_s_stride: isize,
    past_first_nm: *mut f64,
    past_first_nm_stride: isize,
    before_second_nm: *mut f64,
    before_second_nm_stride: isize,
    spare_nm: *mut f64,
    spare_nm_stride: isize,
    straight_time_s: *mut f64,
    straight_time_s_stride: isize,
    largest_true_airspeed_kt: *mut f64,
    largest_true_airspeed_kt_stride: isize,
    largest_groundspeed_kt: *mut f64,
    largest_groundspeed_kt_stride: isize,
    bank_needed_deg: *mut f64,
    bank_needed_deg_stride: isize,
    crossing_past_first_nm: *mut f64,
    crossing_past_first_nm_stride: isize,
    crossing_before_second_nm: *mut f64,
    crossing_before_second_nm_stride: isize,
    crossing_lead_nm: *mut f64,
    crossing_lead_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let first_passage = f64::from(first_passage);
    let second_passage = f64::from(second_passage);
    let (inputs, outputs) = ([Array::input(inbound_course_deg, inbound_course_deg_stride), Array::input(leg_course_deg, leg_course_deg_stride), Array::input(outbound_course_deg, outbound_course_deg_stride), Array::input(leg_length_nm, leg_length_nm_stride), Array::input(&raw const first_passage, 0), Array::input(&raw const second_passage, 0), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride), Array::input(bank_limit_deg, bank_limit_deg_stride), Array::input(turn_rate_limit_deg_per_s, turn_rate_limit_deg_per_s_stride), Array::input(roll_rate_deg_per_s, roll_rate_deg_per_s_stride)], [Array::output(past_first_nm, past_first_nm_stride), Array::output(before_second_nm, before_second_nm_stride), Array::output(spare_nm, spare_nm_stride), Array::output(straight_time_s, straight_time_s_stride), Array::output(largest_true_airspeed_kt, largest_true_airspeed_kt_stride), Array::output(largest_groundspeed_kt, largest_groundspeed_kt_stride), Array::output(bank_needed_deg, bank_needed_deg_stride), Array::output(crossing_past_first_nm, crossing_past_first_nm_stride), Array::output(crossing_before_second_nm, crossing_before_second_nm_stride), Array::output(crossing_lead_nm, crossing_lead_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("successive_turns") }, count, &inputs, &outputs, status) }
}

/// What a turn at a waypoint takes of a leg in procedure design: the minimum stabilization distance.
///
/// Flown by: `r tan(A/2) + 5 V / 3600`. Flown over, with an intercept at 30 degrees: `r1 sin(A) + r1 cos(A) tan(30) +
/// r1 (1/sin(30) - 2 cos(A)/sin(60)) + r2 tan(15) + 10 V / 3600`. The least length of a leg is the sum of the
/// distances of its two waypoints.
///
/// @param passage how the waypoint is passed: LUBBER_PASSAGE_FLY_BY, LUBBER_PASSAGE_FLY_OVER
/// @param course_change_deg change of course, either way, reduced to half a circle
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param bank_deg bank of the turn at the waypoint, above 0 below 90
/// @param turn_rate_limit_deg_per_s greatest rate of that turn, above 0
/// @param bank_onto_leg_deg bank of the turn onto the leg after flying over, above 0 below 90
/// @param[out] stabilization_distance_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As published, without wind and roll; `successive_turns` has both.
/// Degenerate cases: Flown over with a change below 30 degrees the sum has no meaning: it does not vanish without a change.
/// Errors: A value outside its range, a reversal that is flown by.
/// Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 2 Chapter 1: sequences and banks as read, formulas from
/// memory.
///
/// Example: lubber_stabilization_distance_nm(LUBBER_PASSAGE_FLY_BY, 90.0, 250.0, 25.0, 3.0, 15.0, &value) gives 2.30
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_stabilization_distance_nm(
    passage: i32,
    course_change_deg: f64,
    true_airspeed_kt: f64,
    bank_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    bank_onto_leg_deg: f64,
    stabilization_distance_nm: *mut f64,
) -> i32 {
    let answer = || {
        if [course_change_deg, true_airspeed_kt, bank_deg, turn_rate_limit_deg_per_s, bank_onto_leg_deg].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 1]) }
        plain::stabilization_distance_nm(lubberline::procedure::Passage::from_code("passage", f64::from(passage))?, course_change_deg, true_airspeed_kt, bank_deg, turn_rate_limit_deg_per_s, bank_onto_leg_deg).map(|answer| [answer])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [stabilization_distance_nm]) }
}

/// `lubber_stabilization_distance_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `passage` is one code for all points: how the waypoint is passed: LUBBER_PASSAGE_FLY_BY, LUBBER_PASSAGE_FLY_OVER
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_stabilization_distance_nm_n(
    count: usize,
    passage: i32,
    course_change_deg: *const f64,
    course_change_deg_stride: isize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    bank_deg: *const f64,
    bank_deg_stride: isize,
    turn_rate_limit_deg_per_s: *const f64,
    turn_rate_limit_deg_per_s_stride: isize,
    bank_onto_leg_deg: *const f64,
    bank_onto_leg_deg_stride: isize,
    stabilization_distance_nm: *mut f64,
    stabilization_distance_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let passage = f64::from(passage);
    let (inputs, outputs) = ([Array::input(&raw const passage, 0), Array::input(course_change_deg, course_change_deg_stride), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(bank_deg, bank_deg_stride), Array::input(turn_rate_limit_deg_per_s, turn_rate_limit_deg_per_s_stride), Array::input(bank_onto_leg_deg, bank_onto_leg_deg_stride)], [Array::output(stabilization_distance_nm, stabilization_distance_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("stabilization_distance_nm") }, count, &inputs, &outputs, status) }
}

/// The turn of fixed radius that leads from one course onto another on the WGS-84 ellipsoid.
///
/// The short way by the directions of the courses where they meet; its centre is at the radius from both.
///
/// @param lat1_deg latitude of a point of the first course, -90 to 90
/// @param lon1_deg longitude of that point, any finite number
/// @param course1_deg true course there, any finite number
/// @param lat2_deg latitude of a point of the second course, -90 to 90
/// @param lon2_deg longitude of that point, any finite number
/// @param course2_deg true course there, any finite number
/// @param radius_nm radius of the turn, above 0 to 5000
/// @param[out] center_latitude_deg Latitude of the centre; may be NULL
/// @param[out] center_longitude_deg Longitude of the centre; may be NULL
/// @param[out] begin_latitude_deg Latitude where the turn leaves the first course; may be NULL
/// @param[out] begin_longitude_deg Its longitude; may be NULL
/// @param[out] end_latitude_deg Latitude where it joins the second course; may be NULL
/// @param[out] end_longitude_deg Its longitude; may be NULL
/// @param[out] begin_bearing_deg Bearing of its beginning from the centre, 0 to 360; may be NULL
/// @param[out] end_bearing_deg Bearing of its end from the centre, 0 to 360; may be NULL
/// @param[out] length_nm Length of the arc; may be NULL
/// @param[out] side 1 for a turn to the right, -1 to the left; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: A micrometre across the courses; the contacts are soft along them.
/// Degenerate cases: The nearer of the two meetings of the courses says which way is short; it matters where the radius is large and the courses
/// are all but reciprocal.
/// Errors: A value outside its range, courses along one line, or courses that no such turn touches.
/// Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
/// Appendix 2 Attachment C.
///
/// Example: lubber_tangent_turn(40.1734722222, -70.2126666667, 90.0, 42.0766111111, -68.2096388889, 7.0, 75.0, &value, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL) gives 41.4240
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_tangent_turn(
    lat1_deg: f64,
    lon1_deg: f64,
    course1_deg: f64,
    lat2_deg: f64,
    lon2_deg: f64,
    course2_deg: f64,
    radius_nm: f64,
    center_latitude_deg: *mut f64,
    center_longitude_deg: *mut f64,
    begin_latitude_deg: *mut f64,
    begin_longitude_deg: *mut f64,
    end_latitude_deg: *mut f64,
    end_longitude_deg: *mut f64,
    begin_bearing_deg: *mut f64,
    end_bearing_deg: *mut f64,
    length_nm: *mut f64,
    side: *mut f64,
) -> i32 {
    let answer = || plain::tangent_turn(lat1_deg, lon1_deg, course1_deg, lat2_deg, lon2_deg, course2_deg, radius_nm).map(|answer| [answer.center_latitude_deg, answer.center_longitude_deg, answer.begin_latitude_deg, answer.begin_longitude_deg, answer.end_latitude_deg, answer.end_longitude_deg, answer.begin_bearing_deg, answer.end_bearing_deg, answer.length_nm, answer.side]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [center_latitude_deg, center_longitude_deg, begin_latitude_deg, begin_longitude_deg, end_latitude_deg, end_longitude_deg, begin_bearing_deg, end_bearing_deg, length_nm, side]) }
}

/// `lubber_tangent_turn` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_tangent_turn_n(
    count: usize,
    lat1_deg: *const f64,
    lat1_deg_stride: isize,
    lon1_deg: *const f64,
    lon1_deg_stride: isize,
    course1_deg: *const f64,
    course1_deg_stride: isize,
    lat2_deg: *const f64,
    lat2_deg_stride: isize,
    lon2_deg: *const f64,
    lon2_deg_stride: isize,
    course2_deg: *const f64,
    course2_deg_stride: isize,
    radius_nm: *const f64,
    radius_nm_stride: isize,
    center_latitude_deg: *mut f64,
    center_latitude_deg_stride: isize,
    center_longitude_deg: *mut f64,
    center_longitude_deg_stride: isize,
    begin_latitude_deg: *mut f64,
    begin_latitude_deg_stride: isize,
    begin_longitude_deg: *mut f64,
    begin_longitude_deg_stride: isize,
    end_latitude_deg: *mut f64,
    end_latitude_deg_stride: isize,
    end_longitude_deg: *mut f64,
    end_longitude_deg_stride: isize,
    begin_bearing_deg: *mut f64,
    begin_bearing_deg_stride: isize,
    end_bearing_deg: *mut f64,
    end_bearing_deg_stride: isize,
    length_nm: *mut f64,
    length_nm_stride: isize,
    side: *mut f64,
    side_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat1_deg, lat1_deg_stride), Array::input(lon1_deg, lon1_deg_stride), Array::input(course1_deg, course1_deg_stride), Array::input(lat2_deg, lat2_deg_stride), Array::input(lon2_deg, lon2_deg_stride), Array::input(course2_deg, course2_deg_stride), Array::input(radius_nm, radius_nm_stride)], [Array::output(center_latitude_deg, center_latitude_deg_stride), Array::output(center_longitude_deg, center_longitude_deg_stride), Array::output(begin_latitude_deg, begin_latitude_deg_stride), Array::output(begin_longitude_deg, begin_longitude_deg_stride), Array::output(end_latitude_deg, end_latitude_deg_stride), Array::output(end_longitude_deg, end_longitude_deg_stride), Array::output(begin_bearing_deg, begin_bearing_deg_stride), Array::output(end_bearing_deg, end_bearing_deg_stride), Array::output(length_nm, length_nm_stride), Array::output(side, side_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("tangent_turn") }, count, &inputs, &outputs, status) }
}

/// The turn of fixed radius between two legs on the WGS-84 ellipsoid: from a course that begins at a point onto one that ends at another.
///
/// The turn of `tangent_turn`, if it begins on the first course after its point and ends on the second before its own.
///
/// @param lat1_deg latitude of the first leg's beginning, -90 to 90
/// @param lon1_deg longitude of it, any finite number
/// @param course1_deg true course there, any finite number
/// @param lat2_deg latitude of the second leg's end, -90 to 90
/// @param lon2_deg longitude of it, any finite number
/// @param course2_deg true course there, any finite number
/// @param radius_nm radius of the turn, above 0 to 5000
/// @param[out] center_latitude_deg Latitude of the centre; may be NULL
/// @param[out] center_longitude_deg Longitude of the centre; may be NULL
/// @param[out] begin_latitude_deg Latitude where the turn leaves the first course; may be NULL
/// @param[out] begin_longitude_deg Its longitude; may be NULL
/// @param[out] end_latitude_deg Latitude where it joins the second course; may be NULL
/// @param[out] end_longitude_deg Its longitude; may be NULL
/// @param[out] begin_bearing_deg Bearing of its beginning from the centre, 0 to 360; may be NULL
/// @param[out] end_bearing_deg Bearing of its end from the centre, 0 to 360; may be NULL
/// @param[out] length_nm Length of the arc; may be NULL
/// @param[out] side 1 for a turn to the right, -1 to the left; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As `tangent_turn`. A millimetre past an end is let pass.
/// Degenerate cases: A turn that ends at the second leg's end fits.
/// Errors: A value outside its range, courses along one line, or a turn that does not fit between the points.
/// Source: FAA Order 8260.54A (2007), Appendix 2 Attachment C, table of turns tangent to two courses: each of the 39 it answers fits so; for the
/// three that would end past the second point (tests 6, 36 and 51) it prints N/A. That this is its reason is inferred.
///
/// Example: lubber_tangent_turn_between_legs(40.1734722222, -70.2126666667, 90.0, 42.0766111111, -68.2096388889, 7.0, 75.0, NULL, NULL, NULL, NULL, &value, NULL, NULL, NULL, NULL, NULL) gives 41.2853
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_tangent_turn_between_legs(
    lat1_deg: f64,
    lon1_deg: f64,
    course1_deg: f64,
    lat2_deg: f64,
    lon2_deg: f64,
    course2_deg: f64,
    radius_nm: f64,
    center_latitude_deg: *mut f64,
    center_longitude_deg: *mut f64,
    begin_latitude_deg: *mut f64,
    begin_longitude_deg: *mut f64,
    end_latitude_deg: *mut f64,
    end_longitude_deg: *mut f64,
    begin_bearing_deg: *mut f64,
    end_bearing_deg: *mut f64,
    length_nm: *mut f64,
    side: *mut f64,
) -> i32 {
    let answer = || plain::tangent_turn_between_legs(lat1_deg, lon1_deg, course1_deg, lat2_deg, lon2_deg, course2_deg, radius_nm).map(|answer| [answer.center_latitude_deg, answer.center_longitude_deg, answer.begin_latitude_deg, answer.begin_longitude_deg, answer.end_latitude_deg, answer.end_longitude_deg, answer.begin_bearing_deg, answer.end_bearing_deg, answer.length_nm, answer.side]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [center_latitude_deg, center_longitude_deg, begin_latitude_deg, begin_longitude_deg, end_latitude_deg, end_longitude_deg, begin_bearing_deg, end_bearing_deg, length_nm, side]) }
}

/// `lubber_tangent_turn_between_legs` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_tangent_turn_between_legs_n(
    count: usize,
    lat1_deg: *const f64,
    lat1_deg_stride: isize,
    lon1_deg: *const f64,
    lon1_deg_stride: isize,
    course1_deg: *const f64,
    course1_deg_stride: isize,
    lat2_deg: *const f64,
    lat2_deg_stride: isize,
    lon2_deg: *const f64,
    lon2_deg_stride: isize,
    course2_deg: *const f64,
    course2_deg_stride: isize,
    radius_nm: *const f64,
    radius_nm_stride: isize,
    center_latitude_deg: *mut f64,
    center_latitude_deg_stride: isize,
    center_longitude_deg: *mut f64,
    center_longitude_deg_stride: isize,
    begin_latitude_deg: *mut f64,
    begin_latitude_deg_stride: isize,
    begin_longitude_deg: *mut f64,
    begin_longitude_deg_stride: isize,
    end_latitude_deg: *mut f64,
    end_latitude_deg_stride: isize,
    end_longitude_deg: *mut f64,
    end_longitude_deg_stride: isize,
    begin_bearing_deg: *mut f64,
    begin_bearing_deg_stride: isize,
    end_bearing_deg: *mut f64,
    end_bearing_deg_stride: isize,
    length_nm: *mut f64,
    length_nm_stride: isize,
    side: *mut f64,
    side_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat1_deg, lat1_deg_stride), Array::input(lon1_deg, lon1_deg_stride), Array::input(course1_deg, course1_deg_stride), Array::input(lat2_deg, lat2_deg_stride), Array::input(lon2_deg, lon2_deg_stride), Array::input(course2_deg, course2_deg_stride), Array::input(radius_nm, radius_nm_stride)], [Array::output(center_latitude_deg, center_latitude_deg_stride), Array::output(center_longitude_deg, center_longitude_deg_stride), Array::output(begin_latitude_deg, begin_latitude_deg_stride), Array::output(begin_longitude_deg, begin_longitude_deg_stride), Array::output(end_latitude_deg, end_latitude_deg_stride), Array::output(end_longitude_deg, end_longitude_deg_stride), Array::output(begin_bearing_deg, begin_bearing_deg_stride), Array::output(end_bearing_deg, end_bearing_deg_stride), Array::output(length_nm, length_nm_stride), Array::output(side, side_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("tangent_turn_between_legs") }, count, &inputs, &outputs, status) }
}

/// The turn of fixed radius that leads from a line beside one course onto a line beside another, on the WGS-84 ellipsoid.
///
/// The short way by the directions of the courses where they meet; its centre is at the radius from both lines.
///
/// @param lat1_deg latitude of a point of the first course, -90 to 90
/// @param lon1_deg longitude of that point, any finite number
/// @param course1_deg true course there, any finite number
/// @param offset1_nm distance of the line beside the first course, right positive, -5000 to 5000
/// @param lat2_deg latitude of a point of the second course, -90 to 90
/// @param lon2_deg longitude of that point, any finite number
/// @param course2_deg true course there, any finite number
/// @param offset2_nm distance of the line beside the second course, right positive, -5000 to 5000
/// @param radius_nm radius of the turn, above 0 to 5000
/// @param[out] center_latitude_deg Latitude of the centre; may be NULL
/// @param[out] center_longitude_deg Longitude of the centre; may be NULL
/// @param[out] begin_latitude_deg Latitude where the turn leaves the first course; may be NULL
/// @param[out] begin_longitude_deg Its longitude; may be NULL
/// @param[out] end_latitude_deg Latitude where it joins the second course; may be NULL
/// @param[out] end_longitude_deg Its longitude; may be NULL
/// @param[out] begin_bearing_deg Bearing of its beginning from the centre, 0 to 360; may be NULL
/// @param[out] end_bearing_deg Bearing of its end from the centre, 0 to 360; may be NULL
/// @param[out] length_nm Length of the arc; may be NULL
/// @param[out] side 1 for a turn to the right, -1 to the left; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: A micrometre across the lines; the contacts are soft along them.
/// Degenerate cases: With offsets of zero it is `tangent_turn`.
/// Errors: A value outside its range, courses along one line, or lines that no such turn touches.
/// Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid.
///
/// Example: lubber_offset_tangent_turn(60.0, -10.0, 0.0, 2.0, 60.5, -10.0, 90.0, 2.0, 3.0, NULL, NULL, &value, NULL, NULL, NULL, NULL, NULL, NULL, NULL) gives 60.417
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_offset_tangent_turn(
    lat1_deg: f64,
    lon1_deg: f64,
    course1_deg: f64,
    offset1_nm: f64,
    lat2_deg: f64,
    lon2_deg: f64,
    course2_deg: f64,
    offset2_nm: f64,
    radius_nm: f64,
    center_latitude_deg: *mut f64,
    center_longitude_deg: *mut f64,
    begin_latitude_deg: *mut f64,
    begin_longitude_deg: *mut f64,
    end_latitude_deg: *mut f64,
    end_longitude_deg: *mut f64,
    begin_bearing_deg: *mut f64,
    end_bearing_deg: *mut f64,
    length_nm: *mut f64,
    side: *mut f64,
) -> i32 {
    let answer = || plain::offset_tangent_turn(lat1_deg, lon1_deg, course1_deg, offset1_nm, lat2_deg, lon2_deg, course2_deg, offset2_nm, radius_nm).map(|answer| [answer.center_latitude_deg, answer.center_longitude_deg, answer.begin_latitude_deg, answer.begin_longitude_deg, answer.end_latitude_deg, answer.end_longitude_deg, answer.begin_bearing_deg, answer.end_bearing_deg, answer.length_nm, answer.side]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [center_latitude_deg, center_longitude_deg, begin_latitude_deg, begin_longitude_deg, end_latitude_deg, end_longitude_deg, begin_bearing_deg, end_bearing_deg, length_nm, side]) }
}

/// `lubber_offset_tangent_turn` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_offset_tangent_turn_n(
    count: usize,
    lat1_deg: *const f64,
    lat1_deg_stride: isize,
    lon1_deg: *const f64,
    lon1_deg_stride: isize,
    course1_deg: *const f64,
    course1_deg_stride: isize,
    offset1_nm: *const f64,
    offset1_nm_stride: isize,
    lat2_deg: *const f64,
    lat2_deg_stride: isize,
    lon2_deg: *const f64,
    lon2_deg_stride: isize,
    course2_deg: *const f64,
    course2_deg_stride: isize,
    offset2_nm: *const f64,
    offset2_nm_stride: isize,
    radius_nm: *const f64,
    radius_nm_stride: isize,
    center_latitude_deg: *mut f64,
    center_latitude_deg_stride: isize,
    center_longitude_deg: *mut f64,
    center_longitude_deg_stride: isize,
    begin_latitude_deg: *mut f64,
    begin_latitude_deg_stride: isize,
    begin_longitude_deg: *mut f64,
    begin_longitude_deg_stride: isize,
    end_latitude_deg: *mut f64,
    end_latitude_deg_stride: isize,
    end_longitude_deg: *mut f64,
    end_longitude_deg_stride: isize,
    begin_bearing_deg: *mut f64,
    begin_bearing_deg_stride: isize,
    end_bearing_deg: *mut f64,
    end_bearing_deg_stride: isize,
    length_nm: *mut f64,
    length_nm_stride: isize,
    side: *mut f64,
    side_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat1_deg, lat1_deg_stride), Array::input(lon1_deg, lon1_deg_stride), Array::input(course1_deg, course1_deg_stride), Array::input(offset1_nm, offset1_nm_stride), Array::input(lat2_deg, lat2_deg_stride), Array::input(lon2_deg, lon2_deg_stride), Array::input(course2_deg, course2_deg_stride), Array::input(offset2_nm, offset2_nm_stride), Array::input(radius_nm, radius_nm_stride)], [Array::output(center_latitude_deg, center_latitude_deg_stride), Array::output(center_longitude_deg, center_longitude_deg_stride), Array::output(begin_latitude_deg, begin_latitude_deg_stride), Array::output(begin_longitude_deg, begin_longitude_deg_stride), Array::output(end_latitude_deg, end_latitude_deg_stride), Array::output(end_longitude_deg, end_longitude_deg_stride), Array::output(begin_bearing_deg, begin_bearing_deg_stride), Array::output(end_bearing_deg, end_bearing_deg_stride), Array::output(length_nm, length_nm_stride), Array::output(side, side_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("offset_tangent_turn") }, count, &inputs, &outputs, status) }
}

/// The time that a distance takes at a groundspeed.
///
/// `d/V`.
///
/// @param distance_nm distance along the surface, 0 to 10 900
/// @param groundspeed_kt groundspeed, above 0 to 10 000
/// @param[out] time_to_fly_s the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: No distance takes no time.
/// Errors: A value outside its range.
/// Source: The definition of speed.
///
/// Example: lubber_time_to_fly_s(55.0, 220.0, &value) gives 900.0
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_time_to_fly_s(
    distance_nm: f64,
    groundspeed_kt: f64,
    time_to_fly_s: *mut f64,
) -> i32 {
    let answer = || plain::time_to_fly_s(distance_nm, groundspeed_kt).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [time_to_fly_s]) }
}

/// `lubber_time_to_fly_s` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_time_to_fly_s_n(
    count: usize,
    distance_nm: *const f64,
    distance_nm_stride: isize,
    groundspeed_kt: *const f64,
    groundspeed_kt_stride: isize,
    time_to_fly_s: *mut f64,
    time_to_fly_s_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(distance_nm, distance_nm_stride), Array::input(groundspeed_kt, groundspeed_kt_stride)], [Array::output(time_to_fly_s, time_to_fly_s_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("time_to_fly_s") }, count, &inputs, &outputs, status) }
}

/// The distance flown in a time at a groundspeed.
///
/// `V t`.
///
/// @param groundspeed_kt groundspeed, 0 to 10 000
/// @param elapsed_s time flown, above 0 to 1 000 000
/// @param[out] distance_flown_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range, or a distance above 10 900 NM.
/// Source: The definition of speed.
///
/// Example: lubber_distance_flown_nm(220.0, 900.0, &value) gives 55.0
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_distance_flown_nm(
    groundspeed_kt: f64,
    elapsed_s: f64,
    distance_flown_nm: *mut f64,
) -> i32 {
    let answer = || plain::distance_flown_nm(groundspeed_kt, elapsed_s).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [distance_flown_nm]) }
}

/// `lubber_distance_flown_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_distance_flown_nm_n(
    count: usize,
    groundspeed_kt: *const f64,
    groundspeed_kt_stride: isize,
    elapsed_s: *const f64,
    elapsed_s_stride: isize,
    distance_flown_nm: *mut f64,
    distance_flown_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(groundspeed_kt, groundspeed_kt_stride), Array::input(elapsed_s, elapsed_s_stride)], [Array::output(distance_flown_nm, distance_flown_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("distance_flown_nm") }, count, &inputs, &outputs, status) }
}

/// The groundspeed that a distance flown in a time tells.
///
/// `d/t`.
///
/// @param distance_nm distance along the surface, 0 to 10 900
/// @param elapsed_s time flown, above 0 to 1 000 000
/// @param[out] groundspeed_from_time_kt the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: No distance is no speed.
/// Errors: A value outside its range, or a groundspeed above 10 000 kt.
/// Source: The definition of speed.
///
/// Example: lubber_groundspeed_from_time_kt(55.0, 900.0, &value) gives 220.0
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_groundspeed_from_time_kt(
    distance_nm: f64,
    elapsed_s: f64,
    groundspeed_from_time_kt: *mut f64,
) -> i32 {
    let answer = || plain::groundspeed_from_time_kt(distance_nm, elapsed_s).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [groundspeed_from_time_kt]) }
}

/// `lubber_groundspeed_from_time_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_groundspeed_from_time_kt_n(
    count: usize,
    distance_nm: *const f64,
    distance_nm_stride: isize,
    elapsed_s: *const f64,
    elapsed_s_stride: isize,
    groundspeed_from_time_kt: *mut f64,
    groundspeed_from_time_kt_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(distance_nm, distance_nm_stride), Array::input(elapsed_s, elapsed_s_stride)], [Array::output(groundspeed_from_time_kt, groundspeed_from_time_kt_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("groundspeed_from_time_kt") }, count, &inputs, &outputs, status) }
}

/// The time between two fixes at a groundspeed, along the geodesic of the WGS-84 ellipsoid.
///
/// The distance of `geodesic_inverse` over the groundspeed.
///
/// @param lat1_deg latitude of the first fix, -90 to 90
/// @param lon1_deg longitude of the first fix, any finite number
/// @param lat2_deg latitude of the second fix, -90 to 90
/// @param lon2_deg longitude of the second fix, any finite number
/// @param groundspeed_kt groundspeed, above 0 to 10 000
/// @param[out] time_between_fixes_s the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: 15 nanometres of distance.
/// Degenerate cases: Coincident fixes take no time.
/// Errors: A latitude beyond a pole, an infinite number, or a groundspeed outside its range.
/// Source: C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013) 43-55, doi
/// 10.1007/s00190-012-0578-z.
///
/// Example: lubber_time_between_fixes_s(51.0, 0.0, 52.0, 1.0, 420.0, &value) gives 607.0
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_time_between_fixes_s(
    lat1_deg: f64,
    lon1_deg: f64,
    lat2_deg: f64,
    lon2_deg: f64,
    groundspeed_kt: f64,
    time_between_fixes_s: *mut f64,
) -> i32 {
    let answer = || plain::time_between_fixes_s(lat1_deg, lon1_deg, lat2_deg, lon2_deg, groundspeed_kt).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [time_between_fixes_s]) }
}

/// `lubber_time_between_fixes_s` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_time_between_fixes_s_n(
    count: usize,
    lat1_deg: *const f64,
    lat1_deg_stride: isize,
    lon1_deg: *const f64,
    lon1_deg_stride: isize,
    lat2_deg: *const f64,
    lat2_deg_stride: isize,
    lon2_deg: *const f64,
    lon2_deg_stride: isize,
    groundspeed_kt: *const f64,
    groundspeed_kt_stride: isize,
    time_between_fixes_s: *mut f64,
    time_between_fixes_s_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(lat1_deg, lat1_deg_stride), Array::input(lon1_deg, lon1_deg_stride), Array::input(lat2_deg, lat2_deg_stride), Array::input(lon2_deg, lon2_deg_stride), Array::input(groundspeed_kt, groundspeed_kt_stride)], [Array::output(time_between_fixes_s, time_between_fixes_s_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("time_between_fixes_s") }, count, &inputs, &outputs, status) }
}

/// The distance and time to a station from the change of its bearing while a straight track is flown: exact.
///
/// With the angle off the bow `b` at the first bearing and the change `c`: `V t sin(b)/sin(c)` at the second
/// bearing and `V t sin(b + c)/sin(c)` at the first. Where the angle off the bow doubles, the time to the
/// station is the time flown. The rule is `lubber_time_to_station_rule_s`.
///
/// @param elapsed_s time flown, above 0 to 1 000 000
/// @param bearing_change_deg change of the bearing, without its side, above 0 below 180
/// @param groundspeed_kt groundspeed, above 0 to 10 000
/// @param angle_off_bow_deg between the track and the first bearing, without its side, above 0 below 180
/// @param[out] distance_nm Distance to the station at the second bearing; may be NULL
/// @param[out] time_s Time to the station from there, at the same groundspeed; may be NULL
/// @param[out] distance_before_nm Distance to the station at the first bearing; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding on a plane. The bearings govern: with a change of 10 degrees, half a degree of error is 5 percent.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range, two angles that sum to 180 degrees or more, or a distance above 10 900 NM.
/// Source: The law of sines.
///
/// Example: lubber_station_by_bearing_change(75.0, 10.0, 120.0, 90.0, &value, NULL, NULL) gives 14.40
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_station_by_bearing_change(
    elapsed_s: f64,
    bearing_change_deg: f64,
    groundspeed_kt: f64,
    angle_off_bow_deg: f64,
    distance_nm: *mut f64,
    time_s: *mut f64,
    distance_before_nm: *mut f64,
) -> i32 {
    let answer = || plain::station_by_bearing_change(elapsed_s, bearing_change_deg, groundspeed_kt, angle_off_bow_deg).map(|answer| [answer.distance_nm, answer.time_s, answer.distance_before_nm]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [distance_nm, time_s, distance_before_nm]) }
}

/// `lubber_station_by_bearing_change` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_station_by_bearing_change_n(
    count: usize,
    elapsed_s: *const f64,
    elapsed_s_stride: isize,
    bearing_change_deg: *const f64,
    bearing_change_deg_stride: isize,
    groundspeed_kt: *const f64,
    groundspeed_kt_stride: isize,
    angle_off_bow_deg: *const f64,
    angle_off_bow_deg_stride: isize,
    distance_nm: *mut f64,
    distance_nm_stride: isize,
    time_s: *mut f64,
    time_s_stride: isize,
    distance_before_nm: *mut f64,
    distance_before_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(elapsed_s, elapsed_s_stride), Array::input(bearing_change_deg, bearing_change_deg_stride), Array::input(groundspeed_kt, groundspeed_kt_stride), Array::input(angle_off_bow_deg, angle_off_bow_deg_stride)], [Array::output(distance_nm, distance_nm_stride), Array::output(time_s, time_s_stride), Array::output(distance_before_nm, distance_before_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("station_by_bearing_change") }, count, &inputs, &outputs, status) }
}

/// The time to a station abeam by the rule: minutes are seconds flown over degrees of change.
///
/// `60 t/c` with the change `c` in degrees. `lubber_station_by_bearing_change` is exact.
///
/// @param elapsed_s time flown, above 0 to 1 000 000
/// @param bearing_change_deg change of the bearing, without its side, above 0 below 180
/// @param[out] time_to_station_rule_s the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Too long by 4.6 percent at 5 degrees of change, 4.2 at 10 and 2.6 at 20; right at 30.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range.
/// Source: FAA-H-8083-15, Instrument Flying Handbook, time and distance check, read in a quotation.
///
/// Example: lubber_time_to_station_rule_s(75.0, 10.0, &value) gives 450.0
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_time_to_station_rule_s(
    elapsed_s: f64,
    bearing_change_deg: f64,
    time_to_station_rule_s: *mut f64,
) -> i32 {
    let answer = || plain::time_to_station_rule_s(elapsed_s, bearing_change_deg).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [time_to_station_rule_s]) }
}

/// `lubber_time_to_station_rule_s` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_time_to_station_rule_s_n(
    count: usize,
    elapsed_s: *const f64,
    elapsed_s_stride: isize,
    bearing_change_deg: *const f64,
    bearing_change_deg_stride: isize,
    time_to_station_rule_s: *mut f64,
    time_to_station_rule_s_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(elapsed_s, elapsed_s_stride), Array::input(bearing_change_deg, bearing_change_deg_stride)], [Array::output(time_to_station_rule_s, time_to_station_rule_s_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("time_to_station_rule_s") }, count, &inputs, &outputs, status) }
}

/// Total air temperature, which a probe in the stream feels, from static air temperature.
///
/// `T (1 + 0.2 k M^2)` in kelvins, with the recovery factor `k` of the probe.
///
/// @param temperature_degc static air temperature, -200 to 200
/// @param mach Mach number, 0 to 10
/// @param recovery_factor share of the heat of compression that the probe feels, 0 to 1
/// @param[out] total_temperature_degc the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding, for air of constant heat ratio: good to about Mach 3.
/// Degenerate cases: At rest, or with a recovery factor of zero, the two are one.
/// Errors: A value outside its range.
/// Source: NACA Report 1135 (1953), equation 43 (number from memory), for a ratio of specific heats of 1.4.
///
/// Example: lubber_total_temperature_degc(-54.0, 0.82, 1.0, &value) gives -24.5
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_total_temperature_degc(
    temperature_degc: f64,
    mach: f64,
    recovery_factor: f64,
    total_temperature_degc: *mut f64,
) -> i32 {
    let answer = || plain::total_temperature_degc(temperature_degc, mach, recovery_factor).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [total_temperature_degc]) }
}

/// `lubber_total_temperature_degc` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_total_temperature_degc_n(
    count: usize,
    temperature_degc: *const f64,
    temperature_degc_stride: isize,
    mach: *const f64,
    mach_stride: isize,
    recovery_factor: *const f64,
    recovery_factor_stride: isize,
    total_temperature_degc: *mut f64,
    total_temperature_degc_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(temperature_degc, temperature_degc_stride), Array::input(mach, mach_stride), Array::input(recovery_factor, recovery_factor_stride)], [Array::output(total_temperature_degc, total_temperature_degc_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("total_temperature_degc") }, count, &inputs, &outputs, status) }
}

/// Static air temperature from total air temperature: the inverse of `lubber_total_temperature_degc`.
///
/// `Tt/(1 + 0.2 k M^2)` in kelvins, with the recovery factor `k` of the probe.
///
/// @param total_temperature_degc total air temperature, -270 to 10 000
/// @param mach Mach number, 0 to 10
/// @param recovery_factor share of the heat of compression that the probe feels, 0 to 1
/// @param[out] static_temperature_degc the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding, for air of constant heat ratio: good to about Mach 3.
/// Degenerate cases: At rest, or with a recovery factor of zero, the two are one.
/// Errors: A value outside its range, or a static temperature outside -200 to 200 degC.
/// Source: As `lubber_total_temperature_degc`.
///
/// Example: lubber_static_temperature_degc(-24.5, 0.82, 1.0, &value) gives -54.0
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_static_temperature_degc(
    total_temperature_degc: f64,
    mach: f64,
    recovery_factor: f64,
    static_temperature_degc: *mut f64,
) -> i32 {
    let answer = || plain::static_temperature_degc(total_temperature_degc, mach, recovery_factor).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [static_temperature_degc]) }
}

/// `lubber_static_temperature_degc` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_static_temperature_degc_n(
    count: usize,
    total_temperature_degc: *const f64,
    total_temperature_degc_stride: isize,
    mach: *const f64,
    mach_stride: isize,
    recovery_factor: *const f64,
    recovery_factor_stride: isize,
    static_temperature_degc: *mut f64,
    static_temperature_degc_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(total_temperature_degc, total_temperature_degc_stride), Array::input(mach, mach_stride), Array::input(recovery_factor, recovery_factor_stride)], [Array::output(static_temperature_degc, static_temperature_degc_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("static_temperature_degc") }, count, &inputs, &outputs, status) }
}

/// The transition level as a pressure altitude: the lowest flight level far enough above the transition altitude.
///
/// The lowest multiple of the step at or above the transition altitude plus the least layer, both measured with
/// the setting. The lowest usable flight levels of the United States are this from 18 000 ft: 14 CFR 91.121
/// (2014) in steps of 500 ft, the AIM of 2023, TBL 7-2-1, in steps of 1000 ft.
///
/// @param transition_altitude_ft transition altitude, -50 000 to 300 000
/// @param altimeter_setting_hpa what the altimeter is set to, 400 to 1200
/// @param least_layer_ft least height of the transition layer, 0 to 10 000
/// @param step_ft flight levels are multiples of this, 100 to 10 000
/// @param[out] transition_level_ft the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Exact. A setting of 29.92 inches is 1.3 ft short of standard, which costs a level where the two should
/// coincide: give 1013.25.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range, or a level beyond the range of pressure altitudes.
/// Source: ICAO Doc 8168 (PANS-OPS) volume I, Part III, and Doc 4444, from memory; states set the layer and the step.
///
/// Example: lubber_transition_level_ft(5000.0, 1003.0, 0.0, 500.0, &value) gives 5500
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_transition_level_ft(
    transition_altitude_ft: f64,
    altimeter_setting_hpa: f64,
    least_layer_ft: f64,
    step_ft: f64,
    transition_level_ft: *mut f64,
) -> i32 {
    let answer = || plain::transition_level_ft(transition_altitude_ft, altimeter_setting_hpa, least_layer_ft, step_ft).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [transition_level_ft]) }
}

/// `lubber_transition_level_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_transition_level_ft_n(
    count: usize,
    transition_altitude_ft: *const f64,
    transition_altitude_ft_stride: isize,
    altimeter_setting_hpa: *const f64,
    altimeter_setting_hpa_stride: isize,
    least_layer_ft: *const f64,
    least_layer_ft_stride: isize,
    step_ft: *const f64,
    step_ft_stride: isize,
    transition_level_ft: *mut f64,
    transition_level_ft_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(transition_altitude_ft, transition_altitude_ft_stride), Array::input(altimeter_setting_hpa, altimeter_setting_hpa_stride), Array::input(least_layer_ft, least_layer_ft_stride), Array::input(step_ft, step_ft_stride)], [Array::output(transition_level_ft, transition_level_ft_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("transition_level_ft") }, count, &inputs, &outputs, status) }
}

/// True altitude from pressure altitude, a station's altimeter setting and the ISA deviation.
///
/// From the station up the air is `Hp - Hs + D (R/g) ln(ps/p)` thick, with the ISA deviation `D` the same all
/// the way: hydrostatic balance, exact through the layers. Geopotential is turned into geometric height.
///
/// @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
/// @param altimeter_setting_hpa the station's altimeter setting, 400 to 1200
/// @param elevation_ft elevation of the station that gives the setting, -16 500 to 60 000
/// @param isa_deviation_k the air from the station up is warmer than standard by this, -150 to 150
/// @param[out] true_altitude_ft the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding for such a column; 5 K of error in its mean temperature are 2 percent of the height.
/// Degenerate cases: At the station's own pressure the answer is its elevation, whatever the temperature.
/// Errors: A value outside its range.
/// Source: Hydrostatic balance with the layers of ICAO Doc 7488/3 (3rd edition 1993).
///
/// Example: lubber_true_altitude_ft(10000.0, 1013.25, 0.0, -20.0, &value) gives 9285
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_true_altitude_ft(
    pressure_altitude_ft: f64,
    altimeter_setting_hpa: f64,
    elevation_ft: f64,
    isa_deviation_k: f64,
    true_altitude_ft: *mut f64,
) -> i32 {
    let answer = || plain::true_altitude_ft(pressure_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [true_altitude_ft]) }
}

/// `lubber_true_altitude_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_true_altitude_ft_n(
    count: usize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    altimeter_setting_hpa: *const f64,
    altimeter_setting_hpa_stride: isize,
    elevation_ft: *const f64,
    elevation_ft_stride: isize,
    isa_deviation_k: *const f64,
    isa_deviation_k_stride: isize,
    true_altitude_ft: *mut f64,
    true_altitude_ft_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(pressure_altitude_ft, pressure_altitude_ft_stride), Array::input(altimeter_setting_hpa, altimeter_setting_hpa_stride), Array::input(elevation_ft, elevation_ft_stride), Array::input(isa_deviation_k, isa_deviation_k_stride)], [Array::output(true_altitude_ft, true_altitude_ft_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("true_altitude_ft") }, count, &inputs, &outputs, status) }
}

/// Height above a station from pressure altitude, the station's altimeter setting and the ISA deviation.
///
/// `lubber_true_altitude_ft` less the elevation: the height that slant range asks for.
///
/// @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
/// @param altimeter_setting_hpa the station's altimeter setting, 400 to 1200
/// @param elevation_ft elevation of the station that gives the setting, -16 500 to 60 000
/// @param isa_deviation_k the air from the station up is warmer than standard by this, -150 to 150
/// @param[out] height_above_station_ft the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As `lubber_true_altitude_ft`.
/// Degenerate cases: Zero at the station's own pressure.
/// Errors: A value outside its range.
/// Source: As `lubber_true_altitude_ft`.
///
/// Example: lubber_height_above_station_ft(10000.0, 995.0, 2000.0, 15.0, &value) gives 7910
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_height_above_station_ft(
    pressure_altitude_ft: f64,
    altimeter_setting_hpa: f64,
    elevation_ft: f64,
    isa_deviation_k: f64,
    height_above_station_ft: *mut f64,
) -> i32 {
    let answer = || plain::height_above_station_ft(pressure_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [height_above_station_ft]) }
}

/// `lubber_height_above_station_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_height_above_station_ft_n(
    count: usize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    altimeter_setting_hpa: *const f64,
    altimeter_setting_hpa_stride: isize,
    elevation_ft: *const f64,
    elevation_ft_stride: isize,
    isa_deviation_k: *const f64,
    isa_deviation_k_stride: isize,
    height_above_station_ft: *mut f64,
    height_above_station_ft_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(pressure_altitude_ft, pressure_altitude_ft_stride), Array::input(altimeter_setting_hpa, altimeter_setting_hpa_stride), Array::input(elevation_ft, elevation_ft_stride), Array::input(isa_deviation_k, isa_deviation_k_stride)], [Array::output(height_above_station_ft, height_above_station_ft_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("height_above_station_ft") }, count, &inputs, &outputs, status) }
}

/// Pressure altitude at a true altitude: the inverse of `lubber_true_altitude_ft`.
///
/// By Newton's method on the thickness of the column.
///
/// @param true_altitude_ft altitude above mean sea level, -16 500 to 400 000
/// @param altimeter_setting_hpa the station's altimeter setting, 400 to 1200
/// @param elevation_ft elevation of the station that gives the setting, -16 500 to 60 000
/// @param isa_deviation_k the air from the station up is warmer than standard by this, -150 to 150
/// @param[out] pressure_altitude_at_true_altitude_ft the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: 1e-8 ft.
/// Degenerate cases: At the elevation it is the station's own pressure altitude, whatever the temperature.
/// Errors: A value outside its range, or a pressure altitude outside -5 to 80 km.
/// Source: As `lubber_true_altitude_ft`.
///
/// Example: lubber_pressure_altitude_at_true_altitude_ft(10000.0, 1013.25, 0.0, -20.0, &value) gives 10772
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_pressure_altitude_at_true_altitude_ft(
    true_altitude_ft: f64,
    altimeter_setting_hpa: f64,
    elevation_ft: f64,
    isa_deviation_k: f64,
    pressure_altitude_at_true_altitude_ft: *mut f64,
) -> i32 {
    let answer = || plain::pressure_altitude_at_true_altitude_ft(true_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [pressure_altitude_at_true_altitude_ft]) }
}

/// `lubber_pressure_altitude_at_true_altitude_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_pressure_altitude_at_true_altitude_ft_n(
    count: usize,
    true_altitude_ft: *const f64,
    true_altitude_ft_stride: isize,
    altimeter_setting_hpa: *const f64,
    altimeter_setting_hpa_stride: isize,
    elevation_ft: *const f64,
    elevation_ft_stride: isize,
    isa_deviation_k: *const f64,
    isa_deviation_k_stride: isize,
    pressure_altitude_at_true_altitude_ft: *mut f64,
    pressure_altitude_at_true_altitude_ft_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(true_altitude_ft, true_altitude_ft_stride), Array::input(altimeter_setting_hpa, altimeter_setting_hpa_stride), Array::input(elevation_ft, elevation_ft_stride), Array::input(isa_deviation_k, isa_deviation_k_stride)], [Array::output(pressure_altitude_at_true_altitude_ft, pressure_altitude_at_true_altitude_ft_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("pressure_altitude_at_true_altitude_ft") }, count, &inputs, &outputs, status) }
}

/// Radius of a level turn in still air.
///
/// `V^2 / (g tan(bank))` with standard gravity.
///
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param bank_deg angle of bank, above 0 below 90
/// @param[out] turn_radius_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error, in arrays 2e-15 of the radius over the cosine of the bank; standard gravity stands for the local one, which differs by up to 0.3 percent at the surface.
/// Degenerate cases: Infinite at a bank whose tangent is less than any number.
/// Errors: A value outside its range.
/// Source: Equilibrium in a coordinated turn; ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 3.
///
/// Example: lubber_turn_radius_nm(450.0, 25.0, &value) gives 6.33
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_turn_radius_nm(
    true_airspeed_kt: f64,
    bank_deg: f64,
    turn_radius_nm: *mut f64,
) -> i32 {
    let answer = || plain::turn_radius_nm(true_airspeed_kt, bank_deg).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [turn_radius_nm]) }
}

/// `lubber_turn_radius_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_turn_radius_nm_n(
    count: usize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    bank_deg: *const f64,
    bank_deg_stride: isize,
    turn_radius_nm: *mut f64,
    turn_radius_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(bank_deg, bank_deg_stride)], [Array::output(turn_radius_nm, turn_radius_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("turn_radius_nm") }, count, &inputs, &outputs, status) }
}

/// Rate of a level turn.
///
/// `g tan(bank) / V` with standard gravity.
///
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param bank_deg angle of bank, above 0 below 90
/// @param[out] turn_rate_deg_per_s the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range.
/// Source: Equilibrium in a coordinated turn; ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 3.
///
/// Example: lubber_turn_rate_deg_per_s(120.0, 30.0, &value) gives 5.25
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_turn_rate_deg_per_s(
    true_airspeed_kt: f64,
    bank_deg: f64,
    turn_rate_deg_per_s: *mut f64,
) -> i32 {
    let answer = || plain::turn_rate_deg_per_s(true_airspeed_kt, bank_deg).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [turn_rate_deg_per_s]) }
}

/// `lubber_turn_rate_deg_per_s` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_turn_rate_deg_per_s_n(
    count: usize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    bank_deg: *const f64,
    bank_deg_stride: isize,
    turn_rate_deg_per_s: *mut f64,
    turn_rate_deg_per_s_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(bank_deg, bank_deg_stride)], [Array::output(turn_rate_deg_per_s, turn_rate_deg_per_s_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("turn_rate_deg_per_s") }, count, &inputs, &outputs, status) }
}

/// The bank that turns at a rate.
///
/// `atan(rate V / g)` with standard gravity.
///
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param turn_rate_deg_per_s rate of turn, above 0
/// @param[out] bank_for_rate_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error.
/// Degenerate cases: A rate that needs a bank of 90 degrees is refused.
/// Errors: A value outside its range, or a bank of 90 degrees.
/// Source: Equilibrium in a coordinated turn; ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 3.
///
/// Example: lubber_bank_for_rate_deg(180.0, 3.0, &value) gives 26.31
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_bank_for_rate_deg(
    true_airspeed_kt: f64,
    turn_rate_deg_per_s: f64,
    bank_for_rate_deg: *mut f64,
) -> i32 {
    let answer = || plain::bank_for_rate_deg(true_airspeed_kt, turn_rate_deg_per_s).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [bank_for_rate_deg]) }
}

/// `lubber_bank_for_rate_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_bank_for_rate_deg_n(
    count: usize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    turn_rate_deg_per_s: *const f64,
    turn_rate_deg_per_s_stride: isize,
    bank_for_rate_deg: *mut f64,
    bank_for_rate_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(turn_rate_deg_per_s, turn_rate_deg_per_s_stride)], [Array::output(bank_for_rate_deg, bank_for_rate_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("bank_for_rate_deg") }, count, &inputs, &outputs, status) }
}

/// The bank that turns on a radius in still air.
///
/// `atan(V^2 / (g r))` with standard gravity.
///
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param turn_radius_nm radius of the turn, above 0 to 5000
/// @param[out] bank_for_radius_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error.
/// Degenerate cases: A radius that needs a bank of 90 degrees to rounding is refused.
/// Errors: A value outside its range.
/// Source: Equilibrium in a coordinated turn; ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 3.
///
/// Example: lubber_bank_for_radius_deg(450.0, 6.33, &value) gives 25.0
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_bank_for_radius_deg(
    true_airspeed_kt: f64,
    turn_radius_nm: f64,
    bank_for_radius_deg: *mut f64,
) -> i32 {
    let answer = || plain::bank_for_radius_deg(true_airspeed_kt, turn_radius_nm).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [bank_for_radius_deg]) }
}

/// `lubber_bank_for_radius_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_bank_for_radius_deg_n(
    count: usize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    turn_radius_nm: *const f64,
    turn_radius_nm_stride: isize,
    bank_for_radius_deg: *mut f64,
    bank_for_radius_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(turn_radius_nm, turn_radius_nm_stride)], [Array::output(bank_for_radius_deg, bank_for_radius_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("bank_for_radius_deg") }, count, &inputs, &outputs, status) }
}

/// Radius of a turn at a rate in still air, whatever bank it takes.
///
/// `V / rate`; at standard rate `V / (60 pi)` nautical miles with V in knots.
///
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param turn_rate_deg_per_s rate of turn, above 0
/// @param[out] radius_at_rate_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error.
/// Degenerate cases: An infinite rate gives a radius of zero.
/// Errors: A value outside its range.
/// Source: The definition of angular velocity.
///
/// Example: lubber_radius_at_rate_nm(180.0, 3.0, &value) gives 0.955
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_radius_at_rate_nm(
    true_airspeed_kt: f64,
    turn_rate_deg_per_s: f64,
    radius_at_rate_nm: *mut f64,
) -> i32 {
    let answer = || plain::radius_at_rate_nm(true_airspeed_kt, turn_rate_deg_per_s).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [radius_at_rate_nm]) }
}

/// `lubber_radius_at_rate_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_radius_at_rate_nm_n(
    count: usize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    turn_rate_deg_per_s: *const f64,
    turn_rate_deg_per_s_stride: isize,
    radius_at_rate_nm: *mut f64,
    radius_at_rate_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(turn_rate_deg_per_s, turn_rate_deg_per_s_stride)], [Array::output(radius_at_rate_nm, radius_at_rate_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("radius_at_rate_nm") }, count, &inputs, &outputs, status) }
}

/// Load factor of a level turn.
///
/// `1 / cos(bank)`.
///
/// @param bank_deg angle of bank, above 0 below 90
/// @param[out] load_factor the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range.
/// Source: Equilibrium of lift and weight.
///
/// Example: lubber_load_factor(60.0, &value) gives 2.000
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_load_factor(
    bank_deg: f64,
    load_factor: *mut f64,
) -> i32 {
    let answer = || plain::load_factor(bank_deg).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [load_factor]) }
}

/// `lubber_load_factor` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_load_factor_n(
    count: usize,
    bank_deg: *const f64,
    bank_deg_stride: isize,
    load_factor: *mut f64,
    load_factor_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(bank_deg, bank_deg_stride)], [Array::output(load_factor, load_factor_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("load_factor") }, count, &inputs, &outputs, status) }
}

/// The bank of a level turn at a load factor.
///
/// `acos(1 / n)`.
///
/// @param load_factor lift over weight, above 1 to 100
/// @param[out] bank_for_load_factor_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error, near a load factor of 1 too.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range.
/// Source: Equilibrium of lift and weight.
///
/// Example: lubber_bank_for_load_factor_deg(1.3, &value) gives 39.72
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_bank_for_load_factor_deg(
    load_factor: f64,
    bank_for_load_factor_deg: *mut f64,
) -> i32 {
    let answer = || plain::bank_for_load_factor_deg(load_factor).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [bank_for_load_factor_deg]) }
}

/// `lubber_bank_for_load_factor_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_bank_for_load_factor_deg_n(
    count: usize,
    load_factor: *const f64,
    load_factor_stride: isize,
    bank_for_load_factor_deg: *mut f64,
    bank_for_load_factor_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(load_factor, load_factor_stride)], [Array::output(bank_for_load_factor_deg, bank_for_load_factor_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("bank_for_load_factor_deg") }, count, &inputs, &outputs, status) }
}

/// The steady turn an aircraft makes within a bank limit and a limit of its rate of turn, and which of them governs.
///
/// The bank is the lesser of the limit and `atan(rate V / g)`: rate-limited at low speed, bank-limited above
/// `g tan(bank) / rate`.
///
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param bank_limit_deg greatest bank, above 0 below 90
/// @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
/// @param[out] bank_deg The bank that is flown; may be NULL
/// @param[out] turn_rate_deg_per_s The rate of turn at it; may be NULL
/// @param[out] radius_nm The radius in still air; may be NULL
/// @param[out] governed_by What governs the bank: 0 the bank limit, 1 the limit of the rate of turn; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error.
/// Degenerate cases: Where both limits ask for the same bank, the bank limit is named.
/// Errors: A value outside its range.
/// Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 3 and Table I-4-3-App C-1 (25 degrees, at most 3 deg/s).
///
/// Example: lubber_limited_turn(157.23, 25.0, 3.0, NULL, NULL, &value, NULL) gives 0.83
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_limited_turn(
    true_airspeed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    bank_deg: *mut f64,
    turn_rate_deg_per_s: *mut f64,
    radius_nm: *mut f64,
    governed_by: *mut f64,
) -> i32 {
    let answer = || plain::limited_turn(true_airspeed_kt, bank_limit_deg, turn_rate_limit_deg_per_s).map(|answer| [answer.bank_deg, answer.turn_rate_deg_per_s, answer.radius_nm, answer.governed_by]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [bank_deg, turn_rate_deg_per_s, radius_nm, governed_by]) }
}

/// `lubber_limited_turn` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_limited_turn_n(
    count: usize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    bank_limit_deg: *const f64,
    bank_limit_deg_stride: isize,
    turn_rate_limit_deg_per_s: *const f64,
    turn_rate_limit_deg_per_s_stride: isize,
    bank_deg: *mut f64,
    bank_deg_stride: isize,
    turn_rate_deg_per_s: *mut f64,
    turn_rate_deg_per_s_stride: isize,
    radius_nm: *mut f64,
    radius_nm_stride: isize,
    governed_by: *mut f64,
    governed_by_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(bank_limit_deg, bank_limit_deg_stride), Array::input(turn_rate_limit_deg_per_s, turn_rate_limit_deg_per_s_stride)], [Array::output(bank_deg, bank_deg_stride), Array::output(turn_rate_deg_per_s, turn_rate_deg_per_s_stride), Array::output(radius_nm, radius_nm_stride), Array::output(governed_by, governed_by_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("limited_turn") }, count, &inputs, &outputs, status) }
}

/// A level turn with its roll: bank growing at the roll rate to its target, held, and taken off again.
///
/// Heading turned while rolling to bank b at rate p: `-(g / (V p)) ln(cos(b))`; the path is integrated over it.
///
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param heading_change_deg change of heading, right positive, -360 to 360
/// @param bank_limit_deg greatest bank, above 0 below 90
/// @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
/// @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
/// @param[out] bank_deg The greatest bank; may be NULL
/// @param[out] duration_s From the first roll to wings level; may be NULL
/// @param[out] roll_duration_s The duration of one roll, in or out; may be NULL
/// @param[out] advance_nm Distance made good through the air along the first heading; may be NULL
/// @param[out] transfer_nm Distance made good through the air across the first heading, right positive; may be NULL
/// @param[out] governed_by What governs the bank: 0 the bank limit, 1 the limit of the rate of turn, 2 the roll, 3 no turn; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: 1e-10 of the size of the turn against a fine integration in time.
/// Degenerate cases: A change of zero takes no time and no distance.
/// Errors: A value outside its range.
/// Source: Equilibrium in a coordinated level turn; derived.
///
/// Example: lubber_rolled_turn(450.0, 90.0, 25.0, 3.0, 5.0, NULL, &value, NULL, NULL, NULL, NULL) gives 84.7
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rolled_turn(
    true_airspeed_kt: f64,
    heading_change_deg: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
    bank_deg: *mut f64,
    duration_s: *mut f64,
    roll_duration_s: *mut f64,
    advance_nm: *mut f64,
    transfer_nm: *mut f64,
    governed_by: *mut f64,
) -> i32 {
    let answer = || plain::rolled_turn(true_airspeed_kt, heading_change_deg, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.bank_deg, answer.duration_s, answer.roll_duration_s, answer.advance_nm, answer.transfer_nm, answer.governed_by]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [bank_deg, duration_s, roll_duration_s, advance_nm, transfer_nm, governed_by]) }
}

/// `lubber_rolled_turn` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_rolled_turn_n(
    count: usize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    heading_change_deg: *const f64,
    heading_change_deg_stride: isize,
    bank_limit_deg: *const f64,
    bank_limit_deg_stride: isize,
    turn_rate_limit_deg_per_s: *const f64,
    turn_rate_limit_deg_per_s_stride: isize,
    roll_rate_deg_per_s: *const f64,
    roll_rate_deg_per_s_stride: isize,
    bank_deg: *mut f64,
    bank_deg_stride: isize,
    duration_s: *mut f64,
    duration_s_stride: isize,
    roll_duration_s: *mut f64,
    roll_duration_s_stride: isize,
    advance_nm: *mut f64,
    advance_nm_stride: isize,
    transfer_nm: *mut f64,
    transfer_nm_stride: isize,
    governed_by: *mut f64,
    governed_by_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(heading_change_deg, heading_change_deg_stride), Array::input(bank_limit_deg, bank_limit_deg_stride), Array::input(turn_rate_limit_deg_per_s, turn_rate_limit_deg_per_s_stride), Array::input(roll_rate_deg_per_s, roll_rate_deg_per_s_stride)], [Array::output(bank_deg, bank_deg_stride), Array::output(duration_s, duration_s_stride), Array::output(roll_duration_s, roll_duration_s_stride), Array::output(advance_nm, advance_nm_stride), Array::output(transfer_nm, transfer_nm_stride), Array::output(governed_by, governed_by_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("rolled_turn") }, count, &inputs, &outputs, status) }
}

/// The wind from all sides that procedure design assumes at an altitude.
///
/// `2 h + 47` kt with h in thousands of feet; `12 h + 87` km/h with h in kilometres.
///
/// @param altitude_ft altitude, -2000 to 50 000
/// @param units in which units the formula is printed: LUBBER_DESIGN_UNITS_NON_SI, LUBBER_DESIGN_UNITS_SI
/// @param[out] icao_wind_kt the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As published. The two forms differ by up to 2.4 percent.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range.
/// Source: ICAO Doc 8168 Vol II (5th ed. 2006), Table I-2-3-1, ICAO standard wind.
///
/// Example: lubber_icao_wind_kt(6000.0, LUBBER_DESIGN_UNITS_NON_SI, &value) gives 59
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_icao_wind_kt(
    altitude_ft: f64,
    units: i32,
    icao_wind_kt: *mut f64,
) -> i32 {
    let answer = || {
        if [altitude_ft].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 1]) }
        plain::icao_wind_kt(altitude_ft, lubberline::procedure::DesignUnits::from_code("units", f64::from(units))?).map(|answer| [answer])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [icao_wind_kt]) }
}

/// `lubber_icao_wind_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `units` is one code for all points: in which units the formula is printed: LUBBER_DESIGN_UNITS_NON_SI, LUBBER_DESIGN_UNITS_SI
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_icao_wind_kt_n(
    count: usize,
    altitude_ft: *const f64,
    altitude_ft_stride: isize,
    units: i32,
    icao_wind_kt: *mut f64,
    icao_wind_kt_stride: isize,
    status: *mut i32,
) -> usize {
    let units = f64::from(units);
    let (inputs, outputs) = ([Array::input(altitude_ft, altitude_ft_stride), Array::input(&raw const units, 0)], [Array::output(icao_wind_kt, icao_wind_kt_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("icao_wind_kt") }, count, &inputs, &outputs, status) }
}

/// How far a wind carries an aircraft while it turns through an angle.
///
/// `(angle / rate) wind`.
///
/// @param angle_deg angle turned through, either way, -360 to 360
/// @param turn_rate_deg_per_s rate of the turn, above 0
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param[out] turn_wind_effect_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding error, for an instant roll.
/// Degenerate cases: An infinite rate leaves no time to be carried.
/// Errors: A value outside its range.
/// Source: ICAO Doc 8168 Vol II (5th ed. 2006), Table I-4-3-App C-1, lines 8 and 16 to 19.
///
/// Example: lubber_turn_wind_effect_nm(190.0, 3.0, 59.0, &value) gives 1.04
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_turn_wind_effect_nm(
    angle_deg: f64,
    turn_rate_deg_per_s: f64,
    wind_speed_kt: f64,
    turn_wind_effect_nm: *mut f64,
) -> i32 {
    let answer = || plain::turn_wind_effect_nm(angle_deg, turn_rate_deg_per_s, wind_speed_kt).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [turn_wind_effect_nm]) }
}

/// `lubber_turn_wind_effect_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_turn_wind_effect_nm_n(
    count: usize,
    angle_deg: *const f64,
    angle_deg_stride: isize,
    turn_rate_deg_per_s: *const f64,
    turn_rate_deg_per_s_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    turn_wind_effect_nm: *mut f64,
    turn_wind_effect_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(angle_deg, angle_deg_stride), Array::input(turn_rate_deg_per_s, turn_rate_deg_per_s_stride), Array::input(wind_speed_kt, wind_speed_kt_stride)], [Array::output(turn_wind_effect_nm, turn_wind_effect_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("turn_wind_effect_nm") }, count, &inputs, &outputs, status) }
}

/// The distances of the template of a base turn in procedure design.
///
/// `V T`, `(T - 5 s)(V - w) - z` and `(T + 21 s)(V + w) + z`.
///
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param outbound_time_s time outbound, 0 to 3600
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param fix_tolerance_nm tolerance of the fix along the track, 0 to 10 900
/// @param[out] leg_nm Length of the outbound leg in still air; may be NULL
/// @param[out] nearest_nm Nearest place of the outbound leg's end, from the fix; may be NULL
/// @param[out] farthest_nm Farthest place of the outbound leg's end, from the fix; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As published; the tables printed beside it round speeds and winds to four figures before.
/// Degenerate cases: A short time and a strong wind make the nearest place negative: past the fix.
/// Errors: A value outside its range.
/// Source: ICAO Doc 8168 Vol II (5th ed. 2006), Table I-4-3-App C-1, lines 10 to 15.
///
/// Example: lubber_base_turn_template(157.23, 120.0, 59.0, 0.83, NULL, &value, NULL) gives 2.31
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_base_turn_template(
    true_airspeed_kt: f64,
    outbound_time_s: f64,
    wind_speed_kt: f64,
    fix_tolerance_nm: f64,
    leg_nm: *mut f64,
    nearest_nm: *mut f64,
    farthest_nm: *mut f64,
) -> i32 {
    let answer = || plain::base_turn_template(true_airspeed_kt, outbound_time_s, wind_speed_kt, fix_tolerance_nm).map(|answer| [answer.leg_nm, answer.nearest_nm, answer.farthest_nm]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [leg_nm, nearest_nm, farthest_nm]) }
}

/// `lubber_base_turn_template` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_base_turn_template_n(
    count: usize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    outbound_time_s: *const f64,
    outbound_time_s_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    fix_tolerance_nm: *const f64,
    fix_tolerance_nm_stride: isize,
    leg_nm: *mut f64,
    leg_nm_stride: isize,
    nearest_nm: *mut f64,
    nearest_nm_stride: isize,
    farthest_nm: *mut f64,
    farthest_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(outbound_time_s, outbound_time_s_stride), Array::input(wind_speed_kt, wind_speed_kt_stride), Array::input(fix_tolerance_nm, fix_tolerance_nm_stride)], [Array::output(leg_nm, leg_nm_stride), Array::output(nearest_nm, nearest_nm_stride), Array::output(farthest_nm, farthest_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("base_turn_template") }, count, &inputs, &outputs, status) }
}

/// The radius of the sector that protects a base turn flown without a drawn area.
///
/// `(V / 60 + 1.0) T + 1.5` NM; `(V / 60 + 1.9) T + 2.8` km with V in km/h.
///
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param outbound_time_s time outbound, above 0 to 1 000 000
/// @param units in which units the formula is printed: LUBBER_DESIGN_UNITS_NON_SI, LUBBER_DESIGN_UNITS_SI
/// @param[out] base_turn_sector_nm the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: As published: the second form has the constants of the first, rounded after conversion.
/// Degenerate cases: None in the range.
/// Errors: A value outside its range.
/// Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part II Section 2 Chapter 5, 5.3; a margin of 2.0 NM is added on all sides
/// there.
///
/// Example: lubber_base_turn_sector_nm(180.0, 120.0, LUBBER_DESIGN_UNITS_NON_SI, &value) gives 9.5
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_base_turn_sector_nm(
    true_airspeed_kt: f64,
    outbound_time_s: f64,
    units: i32,
    base_turn_sector_nm: *mut f64,
) -> i32 {
    let answer = || {
        if [true_airspeed_kt, outbound_time_s].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 1]) }
        plain::base_turn_sector_nm(true_airspeed_kt, outbound_time_s, lubberline::procedure::DesignUnits::from_code("units", f64::from(units))?).map(|answer| [answer])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [base_turn_sector_nm]) }
}

/// `lubber_base_turn_sector_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `units` is one code for all points: in which units the formula is printed: LUBBER_DESIGN_UNITS_NON_SI, LUBBER_DESIGN_UNITS_SI
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_base_turn_sector_nm_n(
    count: usize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    outbound_time_s: *const f64,
    outbound_time_s_stride: isize,
    units: i32,
    base_turn_sector_nm: *mut f64,
    base_turn_sector_nm_stride: isize,
    status: *mut i32,
) -> usize {
    let units = f64::from(units);
    let (inputs, outputs) = ([Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(outbound_time_s, outbound_time_s_stride), Array::input(&raw const units, 0)], [Array::output(base_turn_sector_nm, base_turn_sector_nm_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("base_turn_sector_nm") }, count, &inputs, &outputs, status) }
}

/// The heading that holds a course in a wind, and the groundspeed it leaves.
///
/// With `w` the angle from the course to where the wind comes from: wind correction `asin(Vw sin(w)/V)`,
/// groundspeed `V cos(correction) - Vw cos(w)`. All directions share one north.
///
/// @param course_deg the course to hold, any finite number
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param wind_from_deg where the wind blows from, any finite number
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param[out] heading_deg The heading to fly, 0 to 360, from the north of the course; may be NULL
/// @param[out] groundspeed_kt The speed made good along the course; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding; in arrays 1e-12 degrees, times the wind's speed over the airspeed where that is more, and 1e-14 of the speeds.
/// Degenerate cases: In calm air the heading is the course. A wind faster than the aircraft leaves courses downwind that can be
/// held; of the two headings that hold such a course the one with the higher groundspeed is given.
/// Errors: A value outside its range, a crosswind above the airspeed, or no groundspeed left.
/// Source: The triangle of velocities; FAA-H-8083-25, Pilot's Handbook of Aeronautical Knowledge, chapter 16 (from
/// memory).
///
/// Example: lubber_wind_triangle(90.0, 120.0, 45.0, 40.0, &value, NULL) gives 76.4
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_wind_triangle(
    course_deg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    heading_deg: *mut f64,
    groundspeed_kt: *mut f64,
) -> i32 {
    let answer = || plain::wind_triangle(course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt).map(|answer| [answer.heading_deg, answer.groundspeed_kt]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [heading_deg, groundspeed_kt]) }
}

/// `lubber_wind_triangle` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_wind_triangle_n(
    count: usize,
    course_deg: *const f64,
    course_deg_stride: isize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    heading_deg: *mut f64,
    heading_deg_stride: isize,
    groundspeed_kt: *mut f64,
    groundspeed_kt_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(course_deg, course_deg_stride), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride)], [Array::output(heading_deg, heading_deg_stride), Array::output(groundspeed_kt, groundspeed_kt_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("wind_triangle") }, count, &inputs, &outputs, status) }
}

/// The wind correction that holds a course: heading less course, right positive.
///
/// `asin(Vw sin(w)/V)` with `w` the angle from the course to where the wind comes from.
///
/// @param course_deg the course to hold, any finite number
/// @param true_airspeed_kt true airspeed, above 0 to 5000
/// @param wind_from_deg where the wind blows from, any finite number
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param[out] wind_correction_deg the result; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: As `lubber_wind_triangle`.
/// Errors: As `lubber_wind_triangle`.
/// Source: As `lubber_wind_triangle`.
///
/// Example: lubber_wind_correction_deg(90.0, 120.0, 45.0, 40.0, &value) gives -13.6
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_wind_correction_deg(
    course_deg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    wind_correction_deg: *mut f64,
) -> i32 {
    let answer = || plain::wind_correction_deg(course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt).map(|answer| [answer]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [wind_correction_deg]) }
}

/// `lubber_wind_correction_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_wind_correction_deg_n(
    count: usize,
    course_deg: *const f64,
    course_deg_stride: isize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    wind_correction_deg: *mut f64,
    wind_correction_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(course_deg, course_deg_stride), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride)], [Array::output(wind_correction_deg, wind_correction_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("wind_correction_deg") }, count, &inputs, &outputs, status) }
}

/// The track and groundspeed that a heading makes good in a wind.
///
/// The sum of the velocity through the air and the velocity of the air. All directions share one north.
///
/// @param heading_deg the heading, any finite number
/// @param true_airspeed_kt true airspeed, 0 to 5000
/// @param wind_from_deg where the wind blows from, any finite number
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param[out] track_deg Direction of motion over the ground, 0 to 360; NaN where there is no motion; may be NULL
/// @param[out] groundspeed_kt Speed over the ground; may be NULL
/// @param[out] drift_deg Track less heading, right positive, -180 to 180; NaN where there is no motion; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: Where the wind cancels the airspeed there is no track and no drift (NaN). With no airspeed the track is
/// downwind.
/// Errors: A value outside its range.
/// Source: The triangle of velocities.
///
/// Example: lubber_track_and_groundspeed(315.0, 150.0, 45.0, 30.0, &value, NULL, NULL) gives 303.7
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_track_and_groundspeed(
    heading_deg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    track_deg: *mut f64,
    groundspeed_kt: *mut f64,
    drift_deg: *mut f64,
) -> i32 {
    let answer = || plain::track_and_groundspeed(heading_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt).map(|answer| [answer.track_deg, answer.groundspeed_kt, answer.drift_deg]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [track_deg, groundspeed_kt, drift_deg]) }
}

/// `lubber_track_and_groundspeed` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_track_and_groundspeed_n(
    count: usize,
    heading_deg: *const f64,
    heading_deg_stride: isize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    track_deg: *mut f64,
    track_deg_stride: isize,
    groundspeed_kt: *mut f64,
    groundspeed_kt_stride: isize,
    drift_deg: *mut f64,
    drift_deg_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(heading_deg, heading_deg_stride), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride)], [Array::output(track_deg, track_deg_stride), Array::output(groundspeed_kt, groundspeed_kt_stride), Array::output(drift_deg, drift_deg_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("track_and_groundspeed") }, count, &inputs, &outputs, status) }
}

/// The wind that an observed track and groundspeed tell, with the heading and true airspeed flown.
///
/// The velocity over the ground less the velocity through the air. All directions share one north.
///
/// @param heading_deg the heading, any finite number
/// @param true_airspeed_kt true airspeed, 0 to 5000
/// @param track_deg the track made good, any finite number
/// @param groundspeed_kt the groundspeed, 0 to 10 000
/// @param[out] wind_from_deg Where the wind blows from, 0 to 360; 0 in calm air; may be NULL
/// @param[out] wind_speed_kt Speed of the wind; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding; what matters is the observation. One degree of drift at 450 kt is 8 kt of wind across.
/// Degenerate cases: Calm air is 0 kt from 0 degrees, as it is reported.
/// Errors: A value outside its range, or a wind above 1000 kt.
/// Source: The triangle of velocities.
///
/// Example: lubber_wind_from_track(104.0, 165.0, 94.0, 146.0, &value, NULL) gives 154.1
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_wind_from_track(
    heading_deg: f64,
    true_airspeed_kt: f64,
    track_deg: f64,
    groundspeed_kt: f64,
    wind_from_deg: *mut f64,
    wind_speed_kt: *mut f64,
) -> i32 {
    let answer = || plain::wind_from_track(heading_deg, true_airspeed_kt, track_deg, groundspeed_kt).map(|answer| [answer.wind_from_deg, answer.wind_speed_kt]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [wind_from_deg, wind_speed_kt]) }
}

/// `lubber_wind_from_track` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_wind_from_track_n(
    count: usize,
    heading_deg: *const f64,
    heading_deg_stride: isize,
    true_airspeed_kt: *const f64,
    true_airspeed_kt_stride: isize,
    track_deg: *const f64,
    track_deg_stride: isize,
    groundspeed_kt: *const f64,
    groundspeed_kt_stride: isize,
    wind_from_deg: *mut f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *mut f64,
    wind_speed_kt_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(heading_deg, heading_deg_stride), Array::input(true_airspeed_kt, true_airspeed_kt_stride), Array::input(track_deg, track_deg_stride), Array::input(groundspeed_kt, groundspeed_kt_stride)], [Array::output(wind_from_deg, wind_from_deg_stride), Array::output(wind_speed_kt, wind_speed_kt_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("wind_from_track") }, count, &inputs, &outputs, status) }
}

/// A wind split into its parts along and across a course, positive from ahead and from the right.
///
/// `Vw cos(w)` and `Vw sin(w)` with `w` the angle from the course to where the wind comes from. A positive
/// crosswind asks for a correction to the right.
///
/// @param course_deg the course, any finite number
/// @param wind_from_deg where the wind blows from, any finite number
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param[out] headwind_kt Against the course; a tailwind is negative; may be NULL
/// @param[out] crosswind_kt From the right of the course; from the left is negative; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: Calm air has two parts of zero.
/// Errors: A value outside its range.
/// Source: The two projections of a vector.
///
/// Example: lubber_wind_components(90.0, 120.0, 20.0, &value, NULL) gives 17.3
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_wind_components(
    course_deg: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    headwind_kt: *mut f64,
    crosswind_kt: *mut f64,
) -> i32 {
    let answer = || plain::wind_components(course_deg, wind_from_deg, wind_speed_kt).map(|answer| [answer.headwind_kt, answer.crosswind_kt]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [headwind_kt, crosswind_kt]) }
}

/// `lubber_wind_components` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_wind_components_n(
    count: usize,
    course_deg: *const f64,
    course_deg_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    headwind_kt: *mut f64,
    headwind_kt_stride: isize,
    crosswind_kt: *mut f64,
    crosswind_kt_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(course_deg, course_deg_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride)], [Array::output(headwind_kt, headwind_kt_stride), Array::output(crosswind_kt, crosswind_kt_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("wind_components") }, count, &inputs, &outputs, status) }
}

/// The wind whose parts along and across a course are given: the inverse of `lubber_wind_components`.
///
/// Direction `course + atan2(crosswind, headwind)`, speed the root of the sum of the squares.
///
/// @param course_deg the course, any finite number
/// @param headwind_kt part against the course, -1000 to 1000
/// @param crosswind_kt part from the right of the course, -1000 to 1000
/// @param[out] wind_from_deg Where the wind blows from, 0 to 360; 0 in calm air; may be NULL
/// @param[out] wind_speed_kt Speed of the wind; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: Two parts of zero are calm air: 0 kt from 0 degrees.
/// Errors: A value outside its range, or a wind above 1000 kt.
/// Source: The two projections of a vector.
///
/// Example: lubber_wind_from_components(90.0, 17.32, 10.0, &value, NULL) gives 120.0
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_wind_from_components(
    course_deg: f64,
    headwind_kt: f64,
    crosswind_kt: f64,
    wind_from_deg: *mut f64,
    wind_speed_kt: *mut f64,
) -> i32 {
    let answer = || plain::wind_from_components(course_deg, headwind_kt, crosswind_kt).map(|answer| [answer.wind_from_deg, answer.wind_speed_kt]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [wind_from_deg, wind_speed_kt]) }
}

/// `lubber_wind_from_components` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_wind_from_components_n(
    count: usize,
    course_deg: *const f64,
    course_deg_stride: isize,
    headwind_kt: *const f64,
    headwind_kt_stride: isize,
    crosswind_kt: *const f64,
    crosswind_kt_stride: isize,
    wind_from_deg: *mut f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *mut f64,
    wind_speed_kt_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(course_deg, course_deg_stride), Array::input(headwind_kt, headwind_kt_stride), Array::input(crosswind_kt, crosswind_kt_stride)], [Array::output(wind_from_deg, wind_from_deg_stride), Array::output(wind_speed_kt, wind_speed_kt_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("wind_from_components") }, count, &inputs, &outputs, status) }
}

/// The heading and true airspeed that make good a course at a wanted groundspeed.
///
/// The velocity over the ground less the velocity of the air; there is always one answer.
///
/// @param course_deg the course to make good, any finite number
/// @param groundspeed_kt the groundspeed wanted, 0 to 10 000
/// @param wind_from_deg where the wind blows from, any finite number
/// @param wind_speed_kt speed of the wind, 0 to 1000
/// @param[out] heading_deg The heading to fly, 0 to 360, from the north of the course; may be NULL
/// @param[out] true_airspeed_kt The true airspeed to fly; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding.
/// Degenerate cases: A groundspeed of zero holds against the wind. A tailwind faster than the groundspeed wants the aircraft to
/// face it.
/// Errors: A value outside its range, or a true airspeed that comes out at zero (the wind alone does it) or above 5000
/// kt.
/// Source: The triangle of velocities.
///
/// Example: lubber_airspeed_for_groundspeed(351.0, 232.0, 33.0, 47.0, &value, NULL) gives 357.7
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_airspeed_for_groundspeed(
    course_deg: f64,
    groundspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    heading_deg: *mut f64,
    true_airspeed_kt: *mut f64,
) -> i32 {
    let answer = || plain::airspeed_for_groundspeed(course_deg, groundspeed_kt, wind_from_deg, wind_speed_kt).map(|answer| [answer.heading_deg, answer.true_airspeed_kt]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [heading_deg, true_airspeed_kt]) }
}

/// `lubber_airspeed_for_groundspeed` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_airspeed_for_groundspeed_n(
    count: usize,
    course_deg: *const f64,
    course_deg_stride: isize,
    groundspeed_kt: *const f64,
    groundspeed_kt_stride: isize,
    wind_from_deg: *const f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *const f64,
    wind_speed_kt_stride: isize,
    heading_deg: *mut f64,
    heading_deg_stride: isize,
    true_airspeed_kt: *mut f64,
    true_airspeed_kt_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(course_deg, course_deg_stride), Array::input(groundspeed_kt, groundspeed_kt_stride), Array::input(wind_from_deg, wind_from_deg_stride), Array::input(wind_speed_kt, wind_speed_kt_stride)], [Array::output(heading_deg, heading_deg_stride), Array::output(true_airspeed_kt, true_airspeed_kt_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("airspeed_for_groundspeed") }, count, &inputs, &outputs, status) }
}

/// The wind at an altitude between two levels: its components change evenly with altitude.
///
/// `w = w1 + (w2 - w1)(H - H1)/(H2 - H1)` for the north and for the east component.
///
/// @param pressure_altitude_ft where the wind is wanted, -16 420 to 262 467.2
/// @param lower_altitude_ft pressure altitude of the lower level, -16 420 to 262 467.2
/// @param lower_wind_from_deg where its wind blows from, any finite number
/// @param lower_wind_speed_kt speed of its wind, 0 to 1000
/// @param upper_altitude_ft pressure altitude of the upper level, above the lower one
/// @param upper_wind_from_deg where its wind blows from, any finite number
/// @param upper_wind_speed_kt speed of its wind, 0 to 1000
/// @param[out] wind_from_deg Where the wind blows from, 0 to 360; 0 in calm air; may be NULL
/// @param[out] wind_speed_kt Speed of the wind; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding, for winds that do change evenly.
/// Degenerate cases: Below the lower level its wind holds, and above the upper one that one's. A wind that reverses passes
/// through a calm.
/// Errors: A value outside its range, or levels that do not ascend.
/// Source: Common practice.
///
/// Example: lubber_wind_between_levels(21000.0, 18000.0, 270.0, 40.0, 24000.0, 300.0, 60.0, &value, NULL) gives 288.1
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_wind_between_levels(
    pressure_altitude_ft: f64,
    lower_altitude_ft: f64,
    lower_wind_from_deg: f64,
    lower_wind_speed_kt: f64,
    upper_altitude_ft: f64,
    upper_wind_from_deg: f64,
    upper_wind_speed_kt: f64,
    wind_from_deg: *mut f64,
    wind_speed_kt: *mut f64,
) -> i32 {
    let answer = || plain::wind_between_levels(pressure_altitude_ft, lower_altitude_ft, lower_wind_from_deg, lower_wind_speed_kt, upper_altitude_ft, upper_wind_from_deg, upper_wind_speed_kt).map(|answer| [answer.wind_from_deg, answer.wind_speed_kt]);
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [wind_from_deg, wind_speed_kt]) }
}

/// `lubber_wind_between_levels` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_wind_between_levels_n(
    count: usize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    lower_altitude_ft: *const f64,
    lower_altitude_ft_stride: isize,
    lower_wind_from_deg: *const f64,
    lower_wind_from_deg_stride: isize,
    lower_wind_speed_kt: *const f64,
    lower_wind_speed_kt_stride: isize,
    upper_altitude_ft: *const f64,
    upper_altitude_ft_stride: isize,
    upper_wind_from_deg: *const f64,
    upper_wind_from_deg_stride: isize,
    upper_wind_speed_kt: *const f64,
    upper_wind_speed_kt_stride: isize,
    wind_from_deg: *mut f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *mut f64,
    wind_speed_kt_stride: isize,
    status: *mut i32,
) -> usize {
    let (inputs, outputs) = ([Array::input(pressure_altitude_ft, pressure_altitude_ft_stride), Array::input(lower_altitude_ft, lower_altitude_ft_stride), Array::input(lower_wind_from_deg, lower_wind_from_deg_stride), Array::input(lower_wind_speed_kt, lower_wind_speed_kt_stride), Array::input(upper_altitude_ft, upper_altitude_ft_stride), Array::input(upper_wind_from_deg, upper_wind_from_deg_stride), Array::input(upper_wind_speed_kt, upper_wind_speed_kt_stride)], [Array::output(wind_from_deg, wind_from_deg_stride), Array::output(wind_speed_kt, wind_speed_kt_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("wind_between_levels") }, count, &inputs, &outputs, status) }
}

/// The wind at an altitude between two levels, by a named way of interpolating.
///
/// By components, as `wind_between_levels`; or direction and speed each by itself, the direction by the shorter way, as it is taught for flight planning.
/// Where the wind turns little between the levels the two are alike; where it turns by 90 degrees the former has 71 percent of the speed half-way.
///
/// @param pressure_altitude_ft where the wind is wanted, -16 420 to 262 467.2
/// @param lower_altitude_ft pressure altitude of the lower level, -16 420 to 262 467.2
/// @param lower_wind_from_deg where its wind blows from, any finite number
/// @param lower_wind_speed_kt speed of its wind, 0 to 1000
/// @param upper_altitude_ft pressure altitude of the upper level, above the lower one
/// @param upper_wind_from_deg where its wind blows from, any finite number
/// @param upper_wind_speed_kt speed of its wind, 0 to 1000
/// @param method which way: LUBBER_WIND_INTERPOLATION_COMPONENTS, LUBBER_WIND_INTERPOLATION_DIRECTION_AND_SPEED
/// @param[out] wind_from_deg Where the wind blows from, 0 to 360; 0 in calm air; may be NULL
/// @param[out] wind_speed_kt Speed of the wind; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// Accuracy: Rounding, for winds that do change so.
/// Degenerate cases: Below the lower level its wind holds, and above the upper one that one's. By direction and speed a calm counts with the direction given for it, and
/// winds straight against each other turn to the right.
/// Errors: A value outside its range, or levels that do not ascend.
/// Source: Common practice, both: components in forecasting; direction and speed in the worked answer of a Transport Canada practice examination for private
/// pilots, as a training page has it.
///
/// Example: lubber_wind_between_levels_by_method(5500.0, 3000.0, 280.0, 25.0, 6000.0, 270.0, 28.0, LUBBER_WIND_INTERPOLATION_DIRECTION_AND_SPEED, NULL, &value) gives 27.5
///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_wind_between_levels_by_method(
    pressure_altitude_ft: f64,
    lower_altitude_ft: f64,
    lower_wind_from_deg: f64,
    lower_wind_speed_kt: f64,
    upper_altitude_ft: f64,
    upper_wind_from_deg: f64,
    upper_wind_speed_kt: f64,
    method: i32,
    wind_from_deg: *mut f64,
    wind_speed_kt: *mut f64,
) -> i32 {
    let answer = || {
        if [pressure_altitude_ft, lower_altitude_ft, lower_wind_from_deg, lower_wind_speed_kt, upper_altitude_ft, upper_wind_from_deg, upper_wind_speed_kt].iter().any(|number: &f64| number.is_nan()) { return Ok([f64::NAN; 2]) }
        plain::wind_between_levels_by_method(pressure_altitude_ft, lower_altitude_ft, lower_wind_from_deg, lower_wind_speed_kt, upper_altitude_ft, upper_wind_from_deg, upper_wind_speed_kt, lubberline::wind::WindInterpolation::from_code("method", f64::from(method))?).map(|answer| [answer.wind_from_deg, answer.wind_speed_kt])
    };
    // SAFETY: the caller vouches for the outputs.
    unsafe { one(answer, [wind_from_deg, wind_speed_kt]) }
}

/// `lubber_wind_between_levels_by_method` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
///
/// `method` is one code for all points: which way: LUBBER_WIND_INTERPOLATION_COMPONENTS, LUBBER_WIND_INTERPOLATION_DIRECTION_AND_SPEED
///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_wind_between_levels_by_method_n(
    count: usize,
    pressure_altitude_ft: *const f64,
    pressure_altitude_ft_stride: isize,
    lower_altitude_ft: *const f64,
    lower_altitude_ft_stride: isize,
    lower_wind_from_deg: *const f64,
    lower_wind_from_deg_stride: isize,
    lower_wind_speed_kt: *const f64,
    lower_wind_speed_kt_stride: isize,
    upper_altitude_ft: *const f64,
    upper_altitude_ft_stride: isize,
    upper_wind_from_deg: *const f64,
    upper_wind_from_deg_stride: isize,
    upper_wind_speed_kt: *const f64,
    upper_wind_speed_kt_stride: isize,
    method: i32,
    wind_from_deg: *mut f64,
    wind_from_deg_stride: isize,
    wind_speed_kt: *mut f64,
    wind_speed_kt_stride: isize,
    status: *mut i32,
) -> usize {
    let method = f64::from(method);
    let (inputs, outputs) = ([Array::input(pressure_altitude_ft, pressure_altitude_ft_stride), Array::input(lower_altitude_ft, lower_altitude_ft_stride), Array::input(lower_wind_from_deg, lower_wind_from_deg_stride), Array::input(lower_wind_speed_kt, lower_wind_speed_kt_stride), Array::input(upper_altitude_ft, upper_altitude_ft_stride), Array::input(upper_wind_from_deg, upper_wind_from_deg_stride), Array::input(upper_wind_speed_kt, upper_wind_speed_kt_stride), Array::input(&raw const method, 0)], [Array::output(wind_from_deg, wind_from_deg_stride), Array::output(wind_speed_kt, wind_speed_kt_stride)]);
    // SAFETY: the caller vouches for the arrays.
    unsafe { many(const { Function::named("wind_between_levels_by_method") }, count, &inputs, &outputs, status) }
}
