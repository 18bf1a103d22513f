/* Generated from ffi/src by cbindgen; do not edit. To renew: cargo run -p lubberline-generate */

/**
 * @file lubberline.h
 * @brief lubberline: radio-navigation mathematics; above all, where to begin the turn at a station.
 *
 * CAUTION. This is arithmetic, not certified avionics. Follow charts, clearances, the flight manual and the local
 * authority; leave decisions to licensed crews; do not use it for real navigation unless your own approval process
 * covers it.
 *
 * Units end the names: _deg degree, _nm nautical mile (1852 m), _ft foot, _kt knot, _fpm foot per minute, _s second,
 * _deg_per_s degree per second, _hpa hectopascal, _degc degree Celsius, _k kelvin (a difference), _kg_per_m3 kilogram per
 * cubic metre, _nt nanotesla; none for a ratio or a code. Right, east and north are positive. A wind is named by where it blows from.
 *
 * Status. Every function gives LUBBER_OK (0) or a negative status; lubber_status_text puts it in words. On a failure every
 * output is NaN, and a code in a structure -1, so that ignoring the status is safe. A NaN that is given comes back as NaN with
 * LUBBER_OK.
 *
 * Arrays. Each function has a twin that ends in _n: a count, then for each operand a pointer and the distance from one value
 * to the next in bytes (sizeof(double) for a plain array, 0 for one value for all, negative to go backwards). An output may
 * be an input, or NULL if it is not wanted; an input that is NULL fails every point with LUBBER_ERROR_STRUCT. It gives back how
 * many points failed, and each point's status if that array is not NULL.
 *
 * Structures. Each begins with struct_size, its sizeof: an _init function sets it to the size it is given, where there is none the
 * caller does, and nothing else changes it. In an array all have the size of the first. Structures grow at their ends only, so that
 * a program and a library of different versions but the same lubber_abi_version go together:
 * - The program's structure is shorter. Going in, what it lacks has the usual value; coming back, it is filled as far as it reaches.
 * - The program's structure is longer. Going in, what the library does not know must be zero bytes, as an _init function and an
 *   initialiser in C leave it: a request that the library would not see is refused. Coming back, the rest is NaN, a code -1.
 * - A size that ends inside a field, or above 4096, is that of no header; it is refused and nothing is written.
 * What is refused gives LUBBER_ERROR_STRUCT.
 *
 * Threads. Every function is re-entrant: there is no global state. What flies a sequence of legs, briefs a route, takes winds by level or
 * tries a course change's sureness allocates, and frees everything before it returns; lubber_flight_new allocates what lubber_flight_free frees.
 * Nothing else does.
 */

#ifndef LUBBERLINE_H
#define LUBBERLINE_H

#include <stddef.h>
#include <stdint.h>

/**
 * Success.
 */
#define LUBBER_OK 0

/**
 * A failure inside the library that none should meet; the outputs are NaN.
 */
#define LUBBER_ERROR_INTERNAL (-1000)

/**
 * A pointer is null, or a structure has a size or a setting that this library does not know.
 */
#define LUBBER_ERROR_STRUCT (-1001)

/**
 * Latitude out of range; allowed: from -90.0 to 90.0 deg.
 */
#define LUBBER_ERROR_LATITUDE (-1)

/**
 * Longitude out of range; allowed: any finite number of deg.
 */
#define LUBBER_ERROR_LONGITUDE (-2)

/**
 * Bearing out of range; allowed: any finite number of deg.
 */
#define LUBBER_ERROR_BEARING (-3)

/**
 * Change of direction out of range; allowed: any finite number of deg.
 */
#define LUBBER_ERROR_DIRECTION_CHANGE (-4)

/**
 * Declination out of range; allowed: from -180.0 to 180.0 deg.
 */
#define LUBBER_ERROR_DECLINATION (-5)

/**
 * Bank out of range; allowed: above 0.0 below 90.0 deg.
 */
#define LUBBER_ERROR_BANK (-6)

/**
 * Turn rate out of range; allowed: above 0 deg/s, or infinite.
 */
#define LUBBER_ERROR_TURN_RATE (-7)

/**
 * Roll rate out of range; allowed: above 0 deg/s, or infinite.
 */
#define LUBBER_ERROR_ROLL_RATE (-8)

/**
 * Ground distance out of range; allowed: from 0.0 to 10900.0 NM.
 */
#define LUBBER_ERROR_GROUND_DISTANCE (-9)

/**
 * Slant range out of range; allowed: from 0.0 to 10900.0 NM.
 */
#define LUBBER_ERROR_SLANT_RANGE (-10)

/**
 * Pressure altitude out of range; allowed: from -16420.0 to 262467.2 ft.
 */
#define LUBBER_ERROR_PRESSURE_ALTITUDE (-11)

/**
 * True altitude out of range; allowed: from -16500.0 to 400000.0 ft.
 */
#define LUBBER_ERROR_TRUE_ALTITUDE (-12)

/**
 * Height above the station out of range; allowed: from -60000.0 to 400000.0 ft.
 */
#define LUBBER_ERROR_HEIGHT_ABOVE_STATION (-13)

/**
 * Elevation out of range; allowed: from -16500.0 to 60000.0 ft.
 */
#define LUBBER_ERROR_ELEVATION (-14)

/**
 * Calibrated airspeed out of range; allowed: from 0.0 to 5000.0 kt.
 */
#define LUBBER_ERROR_CALIBRATED_AIRSPEED (-15)

/**
 * Equivalent airspeed out of range; allowed: from 0.0 to 5000.0 kt.
 */
#define LUBBER_ERROR_EQUIVALENT_AIRSPEED (-16)

/**
 * True airspeed out of range; allowed: above 0.0 to 5000.0 kt.
 */
#define LUBBER_ERROR_TRUE_AIRSPEED (-17)

/**
 * Groundspeed out of range; allowed: from 0.0 to 10000.0 kt.
 */
#define LUBBER_ERROR_GROUNDSPEED (-18)

/**
 * Wind speed out of range; allowed: from 0.0 to 1000.0 kt.
 */
#define LUBBER_ERROR_WIND_SPEED (-19)

/**
 * Mach number out of range; allowed: from 0.0 to 10.0.
 */
#define LUBBER_ERROR_MACH (-20)

/**
 * ISA deviation out of range; allowed: from -150.0 to 150.0 K.
 */
#define LUBBER_ERROR_ISA_DEVIATION (-21)

/**
 * Temperature out of range; allowed: from -200.0 to 200.0 degC.
 */
#define LUBBER_ERROR_TEMPERATURE (-22)

/**
 * Static pressure out of range; allowed: above 0.0 to 2000.0 hPa.
 */
#define LUBBER_ERROR_STATIC_PRESSURE (-23)

/**
 * Cone half-angle out of range; allowed: above 0.0 below 90.0 deg.
 */
#define LUBBER_ERROR_CONE_HALF_ANGLE (-24)

/**
 * Radius out of range; allowed: above 0.0 to 5000.0 NM.
 */
#define LUBBER_ERROR_ARC_RADIUS (-25)

/**
 * Intercept angle out of range; allowed: above 0.0 to 90.0 deg.
 */
#define LUBBER_ERROR_INTERCEPT_ANGLE (-26)

/**
 * Load factor out of range; allowed: above 1.0 to 100.0.
 */
#define LUBBER_ERROR_LOAD_FACTOR (-27)

/**
 * Geopotential altitude out of range; allowed: from -16513.1 to 392472.6 ft.
 */
#define LUBBER_ERROR_GEOPOTENTIAL_ALTITUDE (-28)

/**
 * Impact pressure out of range; allowed: from 0.0 to 80000.0 hPa.
 */
#define LUBBER_ERROR_IMPACT_PRESSURE (-29)

/**
 * True airspeed out of range; allowed: from 0.0 to 5000.0 kt.
 */
#define LUBBER_ERROR_AIRSPEED_OR_REST (-30)

/**
 * Change of heading out of range; allowed: from -360.0 to 360.0 deg.
 */
#define LUBBER_ERROR_HEADING_CHANGE (-31)

/**
 * Time in the turn out of range; allowed: from -1000000.0 to 1000000.0 s.
 */
#define LUBBER_ERROR_TURN_TIME (-32)

/**
 * Altitude of a procedure out of range; allowed: from -2000.0 to 50000.0 ft.
 */
#define LUBBER_ERROR_PROCEDURE_ALTITUDE (-33)

/**
 * Wind component out of range; allowed: from -1000.0 to 1000.0 kt.
 */
#define LUBBER_ERROR_WIND_COMPONENT (-34)

/**
 * Altimeter setting out of range; allowed: from 400.0 to 1200.0 hPa.
 */
#define LUBBER_ERROR_ALTIMETER_SETTING (-35)

/**
 * Indicated altitude out of range; allowed: from -50000.0 to 300000.0 ft.
 */
#define LUBBER_ERROR_INDICATED_ALTITUDE (-36)

/**
 * Density altitude out of range; allowed: from -16420.0 to 262467.2 ft.
 */
#define LUBBER_ERROR_DENSITY_ALTITUDE (-37)

/**
 * Height above the altimeter setting source out of range; allowed: from 0.0 to 20000.0 ft.
 */
#define LUBBER_ERROR_HEIGHT_ABOVE_SOURCE (-38)

/**
 * Step of flight levels out of range; allowed: from 100.0 to 10000.0 ft.
 */
#define LUBBER_ERROR_LEVEL_STEP (-39)

/**
 * Height of the transition layer out of range; allowed: from 0.0 to 10000.0 ft.
 */
#define LUBBER_ERROR_TRANSITION_LAYER (-40)

/**
 * Total temperature out of range; allowed: from -270.0 to 10000.0 degC.
 */
#define LUBBER_ERROR_TOTAL_TEMPERATURE (-41)

/**
 * Recovery factor out of range; allowed: from 0.0 to 1.0.
 */
#define LUBBER_ERROR_RECOVERY_FACTOR (-42)

/**
 * Elapsed time out of range; allowed: above 0.0 to 1000000.0 s.
 */
#define LUBBER_ERROR_ELAPSED_TIME (-43)

/**
 * Groundspeed out of range; allowed: above 0.0 to 10000.0 kt.
 */
#define LUBBER_ERROR_GROUNDSPEED_MADE_GOOD (-44)

/**
 * Change of the bearing out of range; allowed: above 0.0 below 180.0 deg.
 */
#define LUBBER_ERROR_BEARING_DRIFT (-45)

/**
 * Angle off the bow out of range; allowed: above 0.0 below 180.0 deg.
 */
#define LUBBER_ERROR_ANGLE_OFF_BOW (-46)

/**
 * Radius of the sphere out of range; allowed: from 1.0 to 100000.0 NM.
 */
#define LUBBER_ERROR_SPHERE_RADIUS (-47)

/**
 * Vertical speed out of range; allowed: from -30000.0 to 30000.0 ft/min.
 */
#define LUBBER_ERROR_VERTICAL_SPEED (-48)

/**
 * Time of a leg of a hold out of range; allowed: from 0.0 to 3600.0 s.
 */
#define LUBBER_ERROR_HOLD_TIME (-49)

/**
 * Cross-track distance out of range; allowed: from -5000.0 to 5000.0 NM.
 */
#define LUBBER_ERROR_CROSS_TRACK (-50)

/**
 * Along-track distance out of range; allowed: from -10000.0 to 10000.0 NM.
 */
#define LUBBER_ERROR_ALONG_TRACK (-51)

/**
 * Date out of range; allowed: from 2020.0 to 2035.0 yr.
 */
#define LUBBER_ERROR_DECIMAL_YEAR (-52)

/**
 * Height above the surface out of range; allowed: from 0.0 to 400000.0 ft.
 */
#define LUBBER_ERROR_SURFACE_HEIGHT (-53)

/**
 * Full-scale deviation out of range; allowed: above 0.0 below 90.0 deg.
 */
#define LUBBER_ERROR_FULL_SCALE (-54)

/**
 * Deflection out of range; allowed: from -1.0 to 1.0.
 */
#define LUBBER_ERROR_DEFLECTION (-55)

/**
 * Course deviation out of range; allowed: from -90.0 to 90.0 deg.
 */
#define LUBBER_ERROR_COURSE_DEVIATION (-56)

/**
 * Half-width of the zone abeam out of range; allowed: from 0.0 to 45.0 deg.
 */
#define LUBBER_ERROR_ABEAM_ZONE (-57)

/**
 * Step of the display out of range; allowed: above 0.0 to 10.0 NM.
 */
#define LUBBER_ERROR_DISPLAY_STEP (-58)

/**
 * Distance from the station out of range; allowed: above 0.0 to 5000.0 NM.
 */
#define LUBBER_ERROR_STATION_DISTANCE (-59)

/**
 * Deflection in dots out of range; allowed: from -20.0 to 20.0.
 */
#define LUBBER_ERROR_DOTS (-60)

/**
 * Confidence out of range; allowed: above 0.0 below 1.0.
 */
#define LUBBER_ERROR_CONFIDENCE (-61)

/**
 * Number of trials out of range; allowed: from 1.0 to 10000000.0.
 */
#define LUBBER_ERROR_TRIALS (-62)

/**
 * Gain out of range; allowed: above 0.0 to 100.0.
 */
#define LUBBER_ERROR_GAIN (-63)

/**
 * Standard deviation out of range; allowed: from 0.0 to 1000000.0.
 */
#define LUBBER_ERROR_STANDARD_DEVIATION (-64)

/**
 * Error of a direction out of range; allowed: from 0.0 to 90.0 deg.
 */
#define LUBBER_ERROR_ANGULAR_ERROR (-65)

/**
 * Error of a distance out of range; allowed: from 0.0 to 1000.0 NM.
 */
#define LUBBER_ERROR_DISTANCE_ERROR (-66)

/**
 * Distance from the VOR along the route out of range; allowed: from 0.0 to 75.0 NM.
 */
#define LUBBER_ERROR_ROUTE_DISTANCE (-67)

/**
 * Number of the leg out of range; allowed: from 1.0 to 1000000.0.
 */
#define LUBBER_ERROR_LEG_NUMBER (-68)

/**
 * Longitude from the grid's meridian out of range; allowed: from -60.0 to 60.0 deg.
 */
#define LUBBER_ERROR_GRID_LONGITUDE (-69)

/**
 * Year out of range; allowed: from 2020.0 to 2034.0.
 */
#define LUBBER_ERROR_CALENDAR_YEAR (-70)

/**
 * Month out of range; allowed: from 1.0 to 12.0.
 */
#define LUBBER_ERROR_MONTH (-71)

/**
 * Day of the month out of range; allowed: from 1.0 below 32.0.
 */
#define LUBBER_ERROR_DAY_OF_MONTH (-72)

/**
 * Number of wind levels out of range; allowed: from 1.0 to 1000.0.
 */
#define LUBBER_ERROR_WIND_LEVELS (-73)

/**
 * Number of a flight's wind levels out of range; allowed: from 1.0 to 16.0.
 */
#define LUBBER_ERROR_FLIGHT_WIND_LEVELS (-74)

/**
 * Spacing of points out of range; allowed: above 0 NM, or infinite.
 */
#define LUBBER_ERROR_POINT_SPACING (-75)

/**
 * Magnetic variation out of range; allowed: from -180.0 to 180.0 deg.
 */
#define LUBBER_ERROR_MAGNETIC_VARIATION (-76)

/**
 * The course change is a reversal and has no lead.
 */
#define LUBBER_ERROR_COURSE_REVERSAL (-101)

/**
 * The airspeed cannot hold the course against the wind.
 */
#define LUBBER_ERROR_WIND_TOO_STRONG (-102)

/**
 * The turn does not fit between the radial and the arc.
 */
#define LUBBER_ERROR_ARC_TOO_TIGHT (-103)

/**
 * The slant range is shorter than the height, or longer than through the earth.
 */
#define LUBBER_ERROR_SLANT_RANGE_BELOW_HEIGHT (-104)

/**
 * The turn would begin or end impossibly far from the fix.
 */
#define LUBBER_ERROR_LEAD_TOO_LONG (-105)

/**
 * A choice is none of its alternatives.
 */
#define LUBBER_ERROR_UNKNOWN_CHOICE (-106)

/**
 * The levels of a wind profile do not ascend.
 */
#define LUBBER_ERROR_LEVELS_NOT_ASCENDING (-107)

/**
 * The calibrated airspeed is that Mach number at no pressure altitude.
 */
#define LUBBER_ERROR_NO_CROSSOVER (-108)

/**
 * The two bearings to the station do not meet.
 */
#define LUBBER_ERROR_BEARINGS_DO_NOT_MEET (-109)

/**
 * A leg of a procedure cannot be flown.
 */
#define LUBBER_ERROR_LEG_NOT_FLOWN (-110)

/**
 * The lines do not meet.
 */
#define LUBBER_ERROR_NO_MEETING (-111)

/**
 * No outbound heading closes the holding pattern.
 */
#define LUBBER_ERROR_PATTERN_OPEN (-112)

/**
 * Two points between which a line is to run are one.
 */
#define LUBBER_ERROR_SAME_PLACE (-113)

/**
 * No height receives the station at that distance.
 */
#define LUBBER_ERROR_BEYOND_HORIZON (-114)

/**
 * The distance off course is more than that from the station.
 */
#define LUBBER_ERROR_OFF_COURSE_BEYOND_DISTANCE (-115)

/**
 * An ident is longer than 16 bytes.
 */
#define LUBBER_ERROR_IDENT_TOO_LONG (-116)

/**
 * The lines of position do not cross and give no fix.
 */
#define LUBBER_ERROR_NO_FIX (-117)

/**
 * The calendar has no such date.
 */
#define LUBBER_ERROR_NO_SUCH_DATE (-118)

/**
 * The aircraft is below the station.
 */
#define LUBBER_ERROR_BELOW_STATION (-119)

/**
 * The rhumb line meets a pole before its end.
 */
#define LUBBER_ERROR_POLE_ON_RHUMB_LINE (-120)

/**
 * The formula with the elevation of the source, ICAO Doc 8168 Vol I (5th ed. 2006), Part III Section 1 Chapter 4, from memory.
 */
#define LUBBER_COLD_TEMPERATURE_METHOD_FORMULA 0

/**
 * The formula at sea level, rounded up to 10 ft as the cells of the table are: Doc 8168 Vol I, Table III-1-4-1 b), reproduced as FAA Aeronautical Information Manual (AIM) of 2023, TBL 7-3-1.
 */
#define LUBBER_COLD_TEMPERATURE_METHOD_TABLE 1

/**
 * Read off evenly between the cells; the 5 000 ft column above it. AIM of 20 April 2023, 7-3-6 ("interpolation"), and the paragraph on acceptable use of the table.
 */
#define LUBBER_COLD_TEMPERATURE_METHOD_INTERPOLATED 2

/**
 * That, rounded to the nearest 100 ft, which the same paragraph allows except for a minimum. It can come out too small.
 */
#define LUBBER_COLD_TEMPERATURE_METHOD_INTERPOLATED_NEAREST_HUNDRED 3

/**
 * That, rounded up to 100 ft, which the same paragraph allows for a minimum too.
 */
#define LUBBER_COLD_TEMPERATURE_METHOD_INTERPOLATED_UP_TO_HUNDRED 4

/**
 * 4 percent of the height for each 10 °C below standard, Doc 8168 Vol I, Part III Section 1 Chapter 4, 4.3.1, read in a quotation.
 */
#define LUBBER_COLD_TEMPERATURE_METHOD_FOUR_PERCENT 5

/**
 * Hydrostatic balance in a column as much colder than standard as the air at the source. Derived.
 */
#define LUBBER_COLD_TEMPERATURE_METHOD_EXACT 6

/**
 * ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993: R = 287.05287 J/(kg K). What the rest of the library takes.
 */
#define LUBBER_ATMOSPHERE_EDITION_ICAO1993 0

/**
 * U.S. Standard Atmosphere, 1976, NOAA-S/T 76-1562, Table 2 (from memory): R = 8314.32 / 28.9644 = 287.05307 J/(kg K).
 */
#define LUBBER_ATMOSPHERE_EDITION_UNITED_STATES1976 1

/**
 * The formula.
 */
#define LUBBER_TAS_FACTOR_METHOD_FORMULA 0

/**
 * Read off evenly between the entries of the table in metres, every 500 m, and rounded to four decimals: its example in SI units does so.
 */
#define LUBBER_TAS_FACTOR_METHOD_TABLE_METRES 1

/**
 * Read off evenly between the entries of the table in feet, every 1 000 ft (the step from memory), and rounded to four decimals.
 */
#define LUBBER_TAS_FACTOR_METHOD_TABLE_FEET 2

/**
 * From its point onward.
 */
#define LUBBER_COURSE_REACH_ONWARD 0

/**
 * Both ways.
 */
#define LUBBER_COURSE_REACH_BOTH_WAYS 1

/**
 * The bearing of the station's signal.
 */
#define LUBBER_ERROR_SOURCE_STATION_BEARING 0

/**
 * The DME reading.
 */
#define LUBBER_ERROR_SOURCE_DME 1

/**
 * The wind's speed.
 */
#define LUBBER_ERROR_SOURCE_WIND_SPEED 2

/**
 * The wind's direction.
 */
#define LUBBER_ERROR_SOURCE_WIND_DIRECTION 3

/**
 * The true airspeed.
 */
#define LUBBER_ERROR_SOURCE_AIRSPEED 4

/**
 * The bank.
 */
#define LUBBER_ERROR_SOURCE_BANK 5

/**
 * The moment of roll-in.
 */
#define LUBBER_ERROR_SOURCE_ROLL_IN_DELAY 6

/**
 * The height.
 */
#define LUBBER_ERROR_SOURCE_HEIGHT 7

/**
 * With the station on the right.
 */
#define LUBBER_ARC_SENSE_CLOCKWISE 1

/**
 * With the station on the left.
 */
#define LUBBER_ARC_SENSE_COUNTERCLOCKWISE (-1)

/**
 * Toward the station.
 */
#define LUBBER_RADIAL_FLOWN_INBOUND 0

/**
 * Away from it.
 */
#define LUBBER_RADIAL_FLOWN_OUTBOUND 1

/**
 * The short way from course to course.
 */
#define LUBBER_TURN_SIDE_SHORTEST 0

/**
 * To the left, the long way round if need be.
 */
#define LUBBER_TURN_SIDE_LEFT (-1)

/**
 * To the right, the long way round if need be.
 */
#define LUBBER_TURN_SIDE_RIGHT 1

/**
 * At least 6 000 nT: usable.
 */
#define LUBBER_MAGNETIC_ZONE_CLEAR 0

/**
 * Below 6 000 nT, about the magnetic poles: caution, the compass grows unreliable.
 */
#define LUBBER_MAGNETIC_ZONE_CAUTION 1

/**
 * Below 2 000 nT: declination is not to be used.
 */
#define LUBBER_MAGNETIC_ZONE_BLACKOUT 2

/**
 * Knots, nautical miles, feet.
 */
#define LUBBER_DESIGN_UNITS_NON_SI 0

/**
 * Kilometres per hour, kilometres, metres.
 */
#define LUBBER_DESIGN_UNITS_SI 1

/**
 * Inside: they begin and end on the arc, and are nearest to the station halfway.
 */
#define LUBBER_CHORD_PLACEMENT_INSIDE 0

/**
 * Outside: they touch the arc halfway, and begin and end farthest from the station.
 */
#define LUBBER_CHORD_PLACEMENT_OUTSIDE 1

/**
 * On both sides: as far inside halfway as they are outside at their ends.
 */
#define LUBBER_CHORD_PLACEMENT_BALANCED 2

/**
 * 3 degrees per second or 25 degrees. ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 6 Chapter 1.
 */
#define LUBBER_HOLDING_BANK_RULE_ICAO 0

/**
 * 3 degrees per second or 30 degrees. FAA Aeronautical Information Manual (3 April 2014), 5-3-8 j 6 (b), and (20 April 2023), 5-3-8 j.
 */
#define LUBBER_HOLDING_BANK_RULE_FAA 1

/**
 * 3 degrees per second or, with a flight director, 25 degrees. The same.
 */
#define LUBBER_HOLDING_BANK_RULE_FAA_FLIGHT_DIRECTOR 2

/**
 * To the right, which is standard.
 */
#define LUBBER_HOLDING_SIDE_RIGHT 1

/**
 * To the left.
 */
#define LUBBER_HOLDING_SIDE_LEFT (-1)

/**
 * Sector 1: outbound along the inbound course, then back through the holding side.
 */
#define LUBBER_HOLDING_ENTRY_PARALLEL 1

/**
 * Sector 2, the teardrop: outbound at 30 degrees into the holding side, then onto the inbound course.
 */
#define LUBBER_HOLDING_ENTRY_OFFSET 2

/**
 * Sector 3: round the pattern.
 */
#define LUBBER_HOLDING_ENTRY_DIRECT 3

/**
 * FAA Aeronautical Information Manual, edition of 20 April 2023, 5-3-8 j 2 (a); the same in AFMAN 11-217V1 (3 January 2005), table 10.1: 200 kt to 6 000 ft, 230 kt to 14 000 ft, 265 kt above.
 */
#define LUBBER_HOLDING_SPEED_RULE_FAA 0

/**
 * At fields of the US Air Force unless charted otherwise, AIM of 20 April 2023, 5-3-8 j 2 (b)(3); AFMAN 11-217V1 (2005), 10.2.4.1: 310 kt.
 */
#define LUBBER_HOLDING_SPEED_RULE_FAA_AIR_FORCE 1

/**
 * At fields of the US Navy unless charted otherwise, AIM of 20 April 2023, 5-3-8 j 2 (b)(4); AFMAN 11-217V1 (2005), 10.2.4.1: 230 kt.
 */
#define LUBBER_HOLDING_SPEED_RULE_FAA_NAVY 2

/**
 * ICAO Doc 8168 by AFMAN 11-217V1 (3 January 2005), table 18.4, and by an AIP, ENR 1.5: 230 kt to 14 000 ft, 240 kt to 20 000 ft, 265 kt to 34 000 ft, Mach 0.83 above.
 */
#define LUBBER_HOLDING_SPEED_RULE_ICAO 3

/**
 * The same in turbulence, with clearance: 280 kt or Mach 0.8, whichever is less, to 34 000 ft, Mach 0.83 above. To 14 000 ft the AFMAN prints 280 kt alone, which is the lesser there.
 */
#define LUBBER_HOLDING_SPEED_RULE_ICAO_TURBULENCE 4

/**
 * The same where only categories A and B hold: 170 kt to 14 000 ft, turbulence or not; as `Icao` above.
 */
#define LUBBER_HOLDING_SPEED_RULE_ICAO_CATEGORIES_A_B 5

/**
 * Transport Canada Aeronautical Information Manual, RAC 10.7, since October 2018, quoted: 200 kt to 6 000 ft, 230 kt to 14 000 ft, 265 kt above.
 */
#define LUBBER_HOLDING_SPEED_RULE_CANADA 6

/**
 * The same before October 2018, propeller aircraft, quoted: 175 kt to 30 000 ft.
 */
#define LUBBER_HOLDING_SPEED_RULE_CANADA_PROPELLER 7

/**
 * The same before October 2018, civil jets, quoted: 230 kt to 14 000 ft, 265 kt above.
 */
#define LUBBER_HOLDING_SPEED_RULE_CANADA_JET 8

/**
 * Patterns charted with the icon of 210 kt, AIM of 20 April 2023, 5-3-8 j 2 (b)(1): 210 kt above 6 000 to 14 000 ft, else as `Faa`.
 */
#define LUBBER_HOLDING_SPEED_RULE_FAA_ICON 9

/**
 * A climb in the pattern that a procedure prescribes, AIM of 20 April 2023, 5-3-8 j 2 (b)(6), the figure from memory: 310 kt.
 */
#define LUBBER_HOLDING_SPEED_RULE_FAA_CLIMB_IN 10

/**
 * AIM before 1998, propeller aircraft, from memory: 175 kt.
 */
#define LUBBER_HOLDING_SPEED_RULE_FAA_PROPELLER_NINETIES 11

/**
 * AIM before 1998, civil jets, from memory: 200 kt to 6 000 ft, 210 kt to 14 000 ft, 230 kt above.
 */
#define LUBBER_HOLDING_SPEED_RULE_FAA_JET_NINETIES 12

/**
 * ICAO Doc 8168, first edition, propeller aircraft, from memory: 170 kt.
 */
#define LUBBER_HOLDING_SPEED_RULE_ICAO_FIRST_EDITION_PROPELLER 13

/**
 * ICAO Doc 8168, first edition, jets, from memory: 210 kt to 6 000 ft, 220 kt to 14 000 ft, 240 kt above.
 */
#define LUBBER_HOLDING_SPEED_RULE_ICAO_FIRST_EDITION_JET 14

/**
 * At Canadian military fields unless noted otherwise, RAC 10.7 since October 2018, quoted: 310 kt.
 */
#define LUBBER_HOLDING_SPEED_RULE_CANADA_MILITARY 15

/**
 * A climb in the pattern, Canada since October 2018, and civil jets before, quoted: 310 kt.
 */
#define LUBBER_HOLDING_SPEED_RULE_CANADA_CLIMB 16

/**
 * ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 6 Chapter 1: the outbound leg, in still air.
 */
#define LUBBER_TIMING_AUTHORITY_ICAO 0

/**
 * FAA Aeronautical Information Manual 5-3-8, edition not shown in the copy read: the inbound leg.
 */
#define LUBBER_TIMING_AUTHORITY_FAA 1

/**
 * The inbound leg, from wings level to the fix.
 */
#define LUBBER_TIMED_LEG_INBOUND 0

/**
 * The outbound leg, from abeam the fix, or from wings level where the fix is passed abeam in the turn.
 */
#define LUBBER_TIMED_LEG_OUTBOUND 1

/**
 * The outbound leg from wings level, for a fix whose passage abeam cannot be told.
 */
#define LUBBER_TIMED_LEG_OUTBOUND_FROM_LEVEL 2

/**
 * Initial fix.
 */
#define LUBBER_LEG_CODE_INITIAL_FIX 1

/**
 * Track to a fix.
 */
#define LUBBER_LEG_CODE_TRACK_TO_FIX 2

/**
 * Course to a fix.
 */
#define LUBBER_LEG_CODE_COURSE_TO_FIX 3

/**
 * Direct to a fix.
 */
#define LUBBER_LEG_CODE_DIRECT_TO_FIX 4

/**
 * DME arc to a fix.
 */
#define LUBBER_LEG_CODE_ARC_TO_FIX 5

/**
 * Radius to a fix.
 */
#define LUBBER_LEG_CODE_RADIUS_TO_FIX 6

/**
 * Fix to an altitude.
 */
#define LUBBER_LEG_CODE_FIX_TO_ALTITUDE 7

/**
 * Fix to a distance.
 */
#define LUBBER_LEG_CODE_FIX_TO_DISTANCE 8

/**
 * Fix to a DME reading.
 */
#define LUBBER_LEG_CODE_FIX_TO_DME 9

/**
 * Fix until ended by hand.
 */
#define LUBBER_LEG_CODE_FIX_TO_MANUAL 10

/**
 * Course to an altitude.
 */
#define LUBBER_LEG_CODE_COURSE_TO_ALTITUDE 11

/**
 * Course to a DME reading.
 */
#define LUBBER_LEG_CODE_COURSE_TO_DME 12

/**
 * Course until it meets the next leg.
 */
#define LUBBER_LEG_CODE_COURSE_TO_INTERCEPT 13

/**
 * Course to a radial.
 */
#define LUBBER_LEG_CODE_COURSE_TO_RADIAL 14

/**
 * Heading to an altitude.
 */
#define LUBBER_LEG_CODE_HEADING_TO_ALTITUDE 15

/**
 * Heading to a DME reading.
 */
#define LUBBER_LEG_CODE_HEADING_TO_DME 16

/**
 * Heading until it meets the next leg.
 */
#define LUBBER_LEG_CODE_HEADING_TO_INTERCEPT 17

/**
 * Heading until ended by hand.
 */
#define LUBBER_LEG_CODE_HEADING_TO_MANUAL 18

/**
 * Heading to a radial.
 */
#define LUBBER_LEG_CODE_HEADING_TO_RADIAL 19

/**
 * Racetrack to an altitude.
 */
#define LUBBER_LEG_CODE_HOLD_TO_ALTITUDE 20

/**
 * One racetrack.
 */
#define LUBBER_LEG_CODE_HOLD_TO_FIX 21

/**
 * Racetrack until ended by hand.
 */
#define LUBBER_LEG_CODE_HOLD_TO_MANUAL 22

/**
 * Procedure turn until it meets the next leg.
 */
#define LUBBER_LEG_CODE_PROCEDURE_TURN 23

/**
 * No path: where a sequence begins.
 */
#define LUBBER_LEG_PATH_INITIAL 0

/**
 * The geodesic between two fixes.
 */
#define LUBBER_LEG_PATH_TRACK 1

/**
 * A course over the ground.
 */
#define LUBBER_LEG_PATH_COURSE 2

/**
 * Straight to a fix from wherever the aircraft is.
 */
#define LUBBER_LEG_PATH_DIRECT 3

/**
 * An arc about a DME station.
 */
#define LUBBER_LEG_PATH_DME_ARC 4

/**
 * An arc of a given radius, tangent to what comes before and after.
 */
#define LUBBER_LEG_PATH_RADIUS 5

/**
 * A course from a fix.
 */
#define LUBBER_LEG_PATH_COURSE_FROM_FIX 6

/**
 * A heading, off which the wind carries.
 */
#define LUBBER_LEG_PATH_HEADING 7

/**
 * A racetrack.
 */
#define LUBBER_LEG_PATH_HOLD 8

/**
 * A course reversal by a procedure turn.
 */
#define LUBBER_LEG_PATH_PROCEDURE_TURN 9

/**
 * A fix.
 */
#define LUBBER_LEG_END_FIX 0

/**
 * An altitude.
 */
#define LUBBER_LEG_END_ALTITUDE 1

/**
 * A distance along the track.
 */
#define LUBBER_LEG_END_DISTANCE 2

/**
 * A DME reading.
 */
#define LUBBER_LEG_END_DME 3

/**
 * The crew or the controller.
 */
#define LUBBER_LEG_END_MANUAL 4

/**
 * Where it meets the next leg.
 */
#define LUBBER_LEG_END_INTERCEPT 5

/**
 * A radial.
 */
#define LUBBER_LEG_END_RADIAL 6

/**
 * A geodesic.
 */
#define LUBBER_SEGMENT_KIND_STRAIGHT 0

/**
 * A turn with its roll, in wind.
 */
#define LUBBER_SEGMENT_KIND_TURN 1

/**
 * A circle about a centre.
 */
#define LUBBER_SEGMENT_KIND_ARC 2

/**
 * The turn begins before it, and rolls out on the next course.
 */
#define LUBBER_PASSAGE_FLY_BY 0

/**
 * The turn begins over it.
 */
#define LUBBER_PASSAGE_FLY_OVER 1

/**
 * Off by 45 degrees for a time, and half a circle back.
 */
#define LUBBER_REVERSAL_FORM_OFF45 0

/**
 * Off by 80 degrees and at once back the other way.
 */
#define LUBBER_REVERSAL_FORM_OFF80 1

/**
 * Keeping to its arc takes more bank than the limit.
 */
#define LUBBER_PATH_CHECK_KIND_ARC_BANK 1

/**
 * A turn begins in the cone of a station, where radials are of no use.
 */
#define LUBBER_PATH_CHECK_KIND_CONE 2

/**
 * A racetrack is flown at a higher calibrated airspeed than the rule allows where it ends.
 */
#define LUBBER_PATH_CHECK_KIND_HOLDING_AIRSPEED 3

/**
 * A racetrack is flown at a higher Mach number than the rule allows where it ends.
 */
#define LUBBER_PATH_CHECK_KIND_HOLDING_MACH 4

/**
 * A station is not received where a turn begins or rolls out, or where a leg ends that is ended by it.
 */
#define LUBBER_PATH_CHECK_KIND_NOT_RECEIVED 5

/**
 * A leg that an altitude ends (CA, FA, HA, VA) begins past it: it ends at once, or after one racetrack.
 */
#define LUBBER_PATH_CHECK_KIND_ALTITUDE_PASSED 6

/**
 * Not at all: radials per mile times the radius. CNATRA P-871 chapter 4.
 */
#define LUBBER_ARC_LEAD_RULE_PLAIN 0

/**
 * The radius times (90 ± lead) / 90. CNATRA P-1204 p. 76 (4-01), printed formula.
 */
#define LUBBER_ARC_LEAD_RULE_PROPORTION 1

/**
 * A third more inbound, a third less outbound, inside 10 NM. CNATRA P-1265 p. 2-10 (5-99).
 */
#define LUBBER_ARC_LEAD_RULE_THIRD 2

/**
 * The miles of the proportion, added to the lead inbound and taken from it outbound as if they were radials: (60 / D) r ± r (90 ± lead) / 90. The worked example of CNATRA P-1204 p. 76 (4-01), which contradicts the text beside it.
 */
#define LUBBER_ARC_LEAD_RULE_ADDED_MILES 3

/**
 * The radius of the turn. CNATRA P-871 chapter 4.
 */
#define LUBBER_ARC_ENTRY_RULE_RADIUS 0

/**
 * The radius, and on an arc inside 12 NM half a mile more outbound, half a mile less inbound. CNATRA P-1265 p. 2-11 (5-99).
 */
#define LUBBER_ARC_ENTRY_RULE_RADIUS_AND_HALF 1

/**
 * Half a mile, for groundspeeds to 150 kt. FAA-H-8083-15 (Instrument Flying Handbook).
 */
#define LUBBER_ARC_ENTRY_RULE_HALF_MILE 2

/**
 * Twice. The lower end of CNATRA P-1244 p. 5-17, which says two to three times.
 */
#define LUBBER_DRIFT_RULE_DOUBLE 2

/**
 * Three times. FAA Aeronautical Information Manual (3 April 2014), 5-3-8 j 6 (c), and (20 April 2023), 5-3-8 j; CNATRA P-871 chapter 4; the upper end of P-1244.
 */
#define LUBBER_DRIFT_RULE_TRIPLE 3

/**
 * A third of a mile for each 60 kt and 90 degrees: [`third_of_a_mile`].
 */
#define LUBBER_LEAD_RULE_THIRD 0

/**
 * That and half a mile for each 10 000 ft above 5 000 ft: [`height_allowance`].
 */
#define LUBBER_LEAD_RULE_THIRD_AND_ALLOWANCE 1

/**
 * A third of a mile and half a mile more, the greater of [`margin_for_fast_aircraft`].
 */
#define LUBBER_LEAD_RULE_THIRD_AND_MARGIN 2

/**
 * The DME reading of the rule: its lead and the height in miles, added.
 */
#define LUBBER_TURN_CUE_READING 0

/**
 * The rule's lead as a distance along the ground, as a map shows it.
 */
#define LUBBER_TURN_CUE_DISTANCE 1

/**
 * The exact DME reading.
 */
#define LUBBER_TURN_CUE_EXACT 2

/**
 * Farther inside the outbound course than is allowed: the turn began too early and cuts the corner.
 */
#define LUBBER_TURN_VERDICT_EARLY (-1)

/**
 * Within what is allowed.
 */
#define LUBBER_TURN_VERDICT_SAFE 0

/**
 * Farther beyond the outbound course than is allowed: the turn began too late and overshoots.
 */
#define LUBBER_TURN_VERDICT_LATE 1

/**
 * A third of the bank. CNATRA P-1215, timed turns.
 */
#define LUBBER_ROLL_OUT_RULE_THIRD 0

/**
 * Half of the bank. Common practice.
 */
#define LUBBER_ROLL_OUT_RULE_HALF 1

/**
 * 15 percent of the true airspeed in knots. Common practice.
 */
#define LUBBER_BANK_RULE_FIFTEEN_PERCENT 0

/**
 * A tenth of the true airspeed and 7. Common practice.
 */
#define LUBBER_BANK_RULE_TENTH_AND_SEVEN 1

/**
 * A tenth of the true airspeed and 5. Common practice, rarely.
 */
#define LUBBER_BANK_RULE_TENTH_AND_FIVE 2

/**
 * 20 percent of the airspeed, said of the indicated airspeed of a jet. CNATRA P-1215, timed turns.
 */
#define LUBBER_BANK_RULE_TWENTY_PERCENT 3

/**
 * 0.5 percent of the speed, for standard rate. CNATRA P-340, arc and radial intercepts, p. 6-98.
 */
#define LUBBER_RADIUS_RULE_HALF_PERCENT 0

/**
 * 1 percent of the speed, for half standard rate. CNATRA P-1282 and P-1265.
 */
#define LUBBER_RADIUS_RULE_ONE_PERCENT 1

/**
 * Miles a minute less two, for 30 degrees of bank. AFMAN 11-217 (rescinded), as quoted.
 */
#define LUBBER_RADIUS_RULE_MILES_A_MINUTE_LESS_TWO 2

/**
 * A tenth of the square of the miles a minute, for 30 degrees of bank. AFMAN 11-217 Vol 3 p. 65 (rescinded), as quoted.
 */
#define LUBBER_RADIUS_RULE_TENTH_OF_SQUARE 3

/**
 * VOR flown along, en route: 3.5° ground, 2.7° receiver, 1° monitor, 3.5° flight technical; 5.7° in all. Doc 8168 Vol II (5th ed. 2006), Part II Section 3 Chapter 1, App. B.
 */
#define LUBBER_RADIAL_ACCURACY_VOR_EN_ROUTE 0

/**
 * VOR flown along, terminal: the same with 2.5° flight technical; 5.2° in all. Doc 8168 Vol II, Table I-2-2-1 (from memory).
 */
#define LUBBER_RADIAL_ACCURACY_VOR_TRACKING 1

/**
 * VOR that intersects: no flight technical part; 4.5° in all. Doc 8168 Vol II, Part II Section 3 Chapter 1, 1.4.3.2.
 */
#define LUBBER_RADIAL_ACCURACY_VOR_INTERSECTING 2

/**
 * NDB that intersects: 3° ground, 5.4° receiver; 6.2° in all. Doc 8168 Vol II, Part II Section 3 Chapter 1, 1.4.3.2.
 */
#define LUBBER_RADIAL_ACCURACY_NDB_INTERSECTING 3

/**
 * VOR course alignment, "generally within 1°". FAA AIM 1-1-3, edition not shown.
 */
#define LUBBER_RADIAL_ACCURACY_VOR_ALIGNMENT 4

/**
 * 0.25 NM and 1.25 percent of the distance. Doc 8168 Vol I (5th ed. 2006), Part I Section 2 Chapter 2, 2.4.2; a recommendation of Annex 10.
 */
#define LUBBER_DME_ACCURACY_PANS_OPS 0

/**
 * 0.2 NM, the total system error. Annex 10 Vol I, 3.5.3.1.3.3.
 */
#define LUBBER_DME_ACCURACY_ANNEX10 1

/**
 * Half a mile or 3 percent of the distance, whichever is greater. FAA AIM 1-1-7, edition not shown.
 */
#define LUBBER_DME_ACCURACY_AIM 2

/**
 * The root of 0.1 NM on the ground and 0.17 NM in the air, for DME since 1989. Doc 8168 Vol II, Part III Section 1 Chapter 3, App. 3, 2.1.
 */
#define LUBBER_DME_ACCURACY_SINCE1989 3

/**
 * A test signal: a VOT, or one radiated by a repair station.
 */
#define LUBBER_RECEIVER_CHECK_TEST_SIGNAL 0

/**
 * A designated checkpoint on the ground.
 */
#define LUBBER_RECEIVER_CHECK_GROUND_CHECKPOINT 1

/**
 * A designated checkpoint in the air.
 */
#define LUBBER_RECEIVER_CHECK_AIRBORNE_CHECKPOINT 2

/**
 * A ground point on the centreline of an airway, preferably more than 20 NM from the station.
 */
#define LUBBER_RECEIVER_CHECK_AIRWAY_CENTERLINE 3

/**
 * Two receivers tuned to one station.
 */
#define LUBBER_RECEIVER_CHECK_DUAL_RECEIVERS 4

/**
 * Two: their geometry multiplies the tolerance by 1.29.
 */
#define LUBBER_DME_COVERAGE_TWO_STATIONS 0

/**
 * More than two: the tolerance of one.
 */
#define LUBBER_DME_COVERAGE_MORE_STATIONS 1

/**
 * 95 percent: 4.0 NM near the VOR, 6.0 NM at 75 NM.
 */
#define LUBBER_CONTAINMENT_PERCENT95 0

/**
 * 96 percent: 4.0 and 6.0 NM.
 */
#define LUBBER_CONTAINMENT_PERCENT96 1

/**
 * 97 percent: 4.5 and 6.5 NM.
 */
#define LUBBER_CONTAINMENT_PERCENT97 2

/**
 * 98 percent: 5.0 and 6.5 NM.
 */
#define LUBBER_CONTAINMENT_PERCENT98 3

/**
 * 99 percent: 5.5 and 7.0 NM.
 */
#define LUBBER_CONTAINMENT_PERCENT99 4

/**
 * 99.5 percent: 6.0 and 8.5 NM.
 */
#define LUBBER_CONTAINMENT_PERCENT99_AND_A_HALF 5

/**
 * The tangent to a sphere of 4/3 of the earth's mean radius.
 */
#define LUBBER_HORIZON_RULE_FOUR_THIRDS 0

/**
 * 1.23 times the square root of the feet, in nautical miles. ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 1 Chapter 3, Appendix.
 */
#define LUBBER_HORIZON_RULE_FEET_MILES 1

/**
 * 4.11 times the square root of the metres, in kilometres: 0.4 percent less than the rule in feet. The same appendix.
 */
#define LUBBER_HORIZON_RULE_METRES_KILOMETRES 2

/**
 * 1.25 times the square root of the feet, in nautical miles. Common practice.
 */
#define LUBBER_HORIZON_RULE_FIVE_QUARTERS 3

/**
 * Neither: abeam the station, or no use is to be made of the needle.
 */
#define LUBBER_TO_FROM_OFF 0

/**
 * The selected course leads to the station.
 */
#define LUBBER_TO_FROM_TO 1

/**
 * The selected course leads from the station.
 */
#define LUBBER_TO_FROM_FROM 2

/**
 * It shows one of them.
 */
#define LUBBER_FLAG_CLEAR 0

/**
 * Abeam the station for the course selected; the needle is good.
 */
#define LUBBER_FLAG_ABEAM 1

/**
 * In the cone of confusion; DME is good.
 */
#define LUBBER_FLAG_CONE 2

/**
 * Below the radio horizon of a smooth earth.
 */
#define LUBBER_FLAG_BELOW_HORIZON 3

/**
 * Farther off than the station reaches.
 */
#define LUBBER_FLAG_OUT_OF_RANGE 4

/**
 * T, AIM of 2023: 25 NM from 1 000 to 12 000 ft above the transmitter.
 */
#define LUBBER_SERVICE_CLASS_TERMINAL 0

/**
 * L, AIM of 2023: 40 NM from 1 000 to 18 000 ft above the transmitter.
 */
#define LUBBER_SERVICE_CLASS_LOW 1

/**
 * H, AIM of 2023: 40 NM from 1 000 ft, 100 NM from 14 500 to 60 000 ft, 130 NM from 18 000 to 45 000 ft above the transmitter.
 */
#define LUBBER_SERVICE_CLASS_HIGH 2

/**
 * VL, AIM of 2023: 40 NM from 1 000 ft, 70 NM from 5 000 to below 18 000 ft.
 */
#define LUBBER_SERVICE_CLASS_VOR_LOW 3

/**
 * VH, AIM of 2023: 40 NM from 1 000 ft, 70 NM from 5 000 ft, then as H from 14 500 ft.
 */
#define LUBBER_SERVICE_CLASS_VOR_HIGH 4

/**
 * DL, AIM of 2023, figures from memory: to the radio horizon below 12 900 ft, 130 NM to below 18 000 ft.
 */
#define LUBBER_SERVICE_CLASS_DME_LOW 5

/**
 * DH, AIM of 2023, figures from memory: to the radio horizon below 12 900 ft, 130 NM to 45 000 ft, 100 NM to 60 000 ft.
 */
#define LUBBER_SERVICE_CLASS_DME_HIGH 6

/**
 * T, AIM of 2004 to 2016: the same figures above the ground.
 */
#define LUBBER_SERVICE_CLASS_TERMINAL_ABOVE_GROUND 7

/**
 * L, AIM of 2004 to 2016: the same figures above the ground.
 */
#define LUBBER_SERVICE_CLASS_LOW_ABOVE_GROUND 8

/**
 * H, AIM of 2004 to 2016: the same figures above the ground.
 */
#define LUBBER_SERVICE_CLASS_HIGH_ABOVE_GROUND 9

/**
 * NDB that is a compass locator, AIM of 2004 to 2023: 15 NM at all heights.
 */
#define LUBBER_SERVICE_CLASS_COMPASS_LOCATOR 10

/**
 * NDB of class MH, the same: 25 NM at all heights.
 */
#define LUBBER_SERVICE_CLASS_NDB_MEDIUM_HIGH 11

/**
 * NDB of class H, the same: 50 NM at all heights; that of a single station may be less.
 */
#define LUBBER_SERVICE_CLASS_NDB_HIGH 12

/**
 * NDB of class HH, the same: 75 NM at all heights.
 */
#define LUBBER_SERVICE_CLASS_NDB_VERY_HIGH 13

/**
 * The bank limit.
 */
#define LUBBER_GOVERNOR_BANK_LIMIT 0

/**
 * The limit of the rate of turn.
 */
#define LUBBER_GOVERNOR_TURN_RATE_LIMIT 1

/**
 * The roll: so small a change that rolling in and out alone would make it.
 */
#define LUBBER_GOVERNOR_ROLL_RATE 2

/**
 * Nothing: there is no turn.
 */
#define LUBBER_GOVERNOR_NO_TURN 3

/**
 * From g = 9.80665 m/s² (ICAO Doc 7488/3, 3rd edition 1993) and the exact units.
 */
#define LUBBER_TURN_CONSTANTS_EXACT 0

/**
 * R = 3 431 tan b / (π V) degrees per second, V in knots, and r = V / (20 π R) miles. ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 3, 3.1.2.2 b) and c).
 */
#define LUBBER_TURN_CONSTANTS_PANS_OPS 1

/**
 * R = 6 355 tan b / (π V), V in km/h, and r = V / (20 π R) kilometres. The same.
 */
#define LUBBER_TURN_CONSTANTS_PANS_OPS_METRIC 2

/**
 * R = V² / (68 625 tan b) miles, from the gravity that the same document prints, 3.1.2.2 e).
 */
#define LUBBER_TURN_CONSTANTS_PANS_OPS_GRAVITY 3

/**
 * R = V² / (68 625.4 tan b) miles. FAA Order 8260.58, Chapters 1 and 2, from memory.
 */
#define LUBBER_TURN_CONSTANTS_FAA_ORDER 4

/**
 * R = 1 091 tan b / V degrees per second, r = V² / (11.26 tan b) feet, V in knots. FAA-H-8083-25, chapter 5, from memory: 0.3 percent wide.
 */
#define LUBBER_TURN_CONSTANTS_HANDBOOK 5

/**
 * The components to north and east, as where two streams of air mix. Common practice in forecasting; what the rest of the library takes.
 */
#define LUBBER_WIND_INTERPOLATION_COMPONENTS 0

/**
 * Direction and speed, each by itself, the direction by the shorter way. Taught for flight planning, as in the worked answer of a Transport Canada practice examination for private pilots.
 */
#define LUBBER_WIND_INTERPOLATION_DIRECTION_AND_SPEED 1

/**
 * Major version of the header.
 */
#define LUBBER_VERSION_MAJOR 0

/**
 * Minor version of the header.
 */
#define LUBBER_VERSION_MINOR 1

/**
 * Patch version of the header.
 */
#define LUBBER_VERSION_PATCH 0

/**
 * A flight with its receiver; made by lubber_flight_new, freed by lubber_flight_free.
 */
typedef struct lubber_flight lubber_flight;

/**
 * A course change at a station. Directions share one north, which may be the station's.
 *
 * Set it with lubber_course_change_input_init, then change what differs.
 */
typedef struct lubber_course_change_input {
  /**
   * sizeof(lubber_course_change_input).
   */
  size_t struct_size;
  /**
   * Course flown to the station, any finite number.
   */
  double inbound_course_deg;
  /**
   * Course flown from it: the outbound radial, if the north is the station's.
   */
  double outbound_course_deg;
  /**
   * True airspeed, above 0 to 5000.
   */
  double true_airspeed_kt;
  /**
   * Where the wind blows from; 0 at first, which is north: set it with the speed.
   */
  double wind_from_deg;
  /**
   * Speed of the wind, 0 to 1000; 0 at first.
   */
  double wind_speed_kt;
  /**
   * Greatest bank, above 0 below 90; 25 at first.
   */
  double bank_limit_deg;
  /**
   * Greatest rate of turn, above 0; 3 at first.
   */
  double turn_rate_limit_deg_per_s;
  /**
   * Rate of roll, above 0, INFINITY for an instant roll; 5 at first.
   */
  double roll_rate_deg_per_s;
  /**
   * Height above the station's antenna; 0 at first.
   */
  double height_above_station_ft;
  /**
   * Angle at which the outbound course would be intercepted after flying over, above 0 to 90; 30 at first.
   */
  double intercept_angle_deg;
  /**
   * Half-angle of the cone of confusion from the vertical, above 0 below 90; 50 at first.
   */
  double cone_half_angle_deg;
  /**
   * Which way to turn: LUBBER_TURN_SIDE_SHORTEST (0, at first), LUBBER_TURN_SIDE_LEFT (-1) or LUBBER_TURN_SIDE_RIGHT (1).
   */
  int32_t turn;
} lubber_course_change_input;

/**
 * Where to begin the turn, and what it does.
 */
typedef struct lubber_course_change_result {
  /**
   * sizeof(lubber_course_change_result), set by the caller.
   */
  size_t struct_size;
  /**
   * Distance before the station at which roll-in begins; negative past it.
   */
  double lead_nm;
  /**
   * The DME reading there.
   */
  double dme_at_roll_in_nm;
  /**
   * The bearing from the station there: the radial, in the station's north.
   */
  double radial_at_roll_in_deg;
  /**
   * Distance past the station, along the outbound course, at which the wings are level again.
   */
  double past_fix_at_roll_out_nm;
  /**
   * The DME reading there.
   */
  double dme_at_roll_out_nm;
  /**
   * The bearing from the station there.
   */
  double radial_at_roll_out_deg;
  /**
   * From roll-in to roll-out.
   */
  double duration_s;
  /**
   * Distance over the ground from roll-in to roll-out.
   */
  double turn_length_nm;
  /**
   * The greatest bank.
   */
  double bank_deg;
  /**
   * Radius through the air at that bank; infinite if there is no turn.
   */
  double radius_nm;
  /**
   * Heading that holds the inbound course.
   */
  double heading_before_deg;
  /**
   * Heading that holds the outbound course.
   */
  double heading_after_deg;
  /**
   * Heading to turn through, right positive.
   */
  double heading_change_deg;
  /**
   * Groundspeed on the inbound course.
   */
  double groundspeed_before_kt;
  /**
   * Groundspeed on the outbound course.
   */
  double groundspeed_after_kt;
  /**
   * Heading less course on the inbound course, right positive.
   */
  double wind_correction_before_deg;
  /**
   * Heading less course on the outbound course, right positive.
   */
  double wind_correction_after_deg;
  /**
   * Least distance from the station over the ground.
   */
  double closest_approach_nm;
  /**
   * Radius of the cone of confusion at the height.
   */
  double cone_radius_nm;
  /**
   * Flying over first: the intercept angle flown, the chosen one or the largest for which there is room.
   */
  double fly_over_intercept_angle_deg;
  /**
   * Flying over first: greatest distance from the outbound course on its outer side.
   */
  double fly_over_greatest_overshoot_nm;
  /**
   * Flying over first: distance past the station at which the outbound course is held.
   */
  double fly_over_established_past_fix_nm;
  /**
   * Flying over first: distance flown in addition.
   */
  double fly_over_extra_distance_nm;
  /**
   * Flying over first: time flown in addition.
   */
  double fly_over_extra_time_s;
  /**
   * What governs the bank: LUBBER_GOVERNOR_BANK_LIMIT (0), LUBBER_GOVERNOR_TURN_RATE_LIMIT (1), LUBBER_GOVERNOR_ROLL_RATE
   * (2) or LUBBER_GOVERNOR_NO_TURN (3); -1 if a number given is NaN.
   */
  int32_t governed_by;
  /**
   * 1 if the aircraft enters the cone of confusion, 0 if not; -1 if a number given is NaN.
   */
  int32_t enters_cone;
  /**
   * Flying over first: time from over the station until the outbound course is held; lubber_fly_over_at gives the way.
   */
  double fly_over_duration_s;
} lubber_course_change_result;

/**
 * How a flight begins, and the station its receiver is tuned to. Set it with lubber_flight_start_init, then what differs.
 */
typedef struct lubber_flight_start {
  /**
   * sizeof(lubber_flight_start).
   */
  size_t struct_size;
  /**
   * Where it begins: latitude.
   */
  double latitude_deg;
  /**
   * Where it begins: longitude.
   */
  double longitude_deg;
  /**
   * Altitude.
   */
  double altitude_ft;
  /**
   * Heading at first, from the carried north.
   */
  double heading_deg;
  /**
   * True airspeed, above 0 to 5000.
   */
  double true_airspeed_kt;
  /**
   * Where the wind blows from, from the carried north; 0 at first, which is north: set it with the speed.
   */
  double wind_from_deg;
  /**
   * Speed of the wind, 0 to 1000; 0 at first.
   */
  double wind_speed_kt;
  /**
   * Greatest bank, above 0 below 90; 25 at first.
   */
  double bank_limit_deg;
  /**
   * Greatest rate of turn, above 0; 3 at first.
   */
  double turn_rate_limit_deg_per_s;
  /**
   * Rate of roll, above 0; 5 at first.
   */
  double roll_rate_deg_per_s;
  /**
   * How long after an indication the crew acts on it, 0 to 3600; 0 at first.
   */
  double reaction_s;
  /**
   * The station: latitude. Its true north is the north that is carried along.
   */
  double station_latitude_deg;
  /**
   * The station: longitude.
   */
  double station_longitude_deg;
  /**
   * The station's elevation; 0 at first.
   */
  double station_elevation_ft;
  /**
   * The station's declination, positive east; 0 at first.
   */
  double station_declination_deg;
  /**
   * The course selected on the receiver, from the station's north; 0 at first.
   */
  double course_deg;
  /**
   * Half-angle of the cone of confusion, above 0 below 90; 50 at first.
   */
  double cone_half_angle_deg;
} lubber_flight_start;

/**
 * Where a flight is and what its receiver shows.
 */
typedef struct lubber_flight_state {
  /**
   * sizeof(lubber_flight_state), set by the caller.
   */
  size_t struct_size;
  /**
   * Time since the start.
   */
  double time_s;
  /**
   * Latitude.
   */
  double latitude_deg;
  /**
   * Longitude.
   */
  double longitude_deg;
  /**
   * Altitude.
   */
  double altitude_ft;
  /**
   * Heading, from the true north of the place.
   */
  double true_heading_deg;
  /**
   * Bank, right positive.
   */
  double bank_deg;
  /**
   * Track over the ground, from the true north of the place.
   */
  double true_track_deg;
  /**
   * Speed over the ground.
   */
  double groundspeed_kt;
  /**
   * The radial, from the station's north; NaN overhead.
   */
  double radial_deg;
  /**
   * The DME distance, with all its digits.
   */
  double dme_nm;
  /**
   * How far the selected course lies to the right, in degrees of the radial, -90 to 90; NaN where the needle is not to be used.
   */
  double deviation_deg;
  /**
   * The least altitude at which the station is received here, over a smooth earth at its elevation; infinite if none.
   */
  double least_altitude_ft;
  /**
   * LUBBER_TO_FROM_TO (1), LUBBER_TO_FROM_FROM (2) or LUBBER_TO_FROM_OFF (0).
   */
  int32_t to_from;
  /**
   * LUBBER_FLAG_CLEAR (0), or why neither is shown: LUBBER_FLAG_ABEAM (1; the needle is good), LUBBER_FLAG_CONE (2), LUBBER_FLAG_BELOW_HORIZON
   * (3), LUBBER_FLAG_OUT_OF_RANGE (4).
   */
  int32_t flag;
  /**
   * 1 in the cone of confusion, else 0.
   */
  int32_t in_cone;
  /**
   * 1 when the turn is turned or the course captured, else 0.
   */
  int32_t done;
} lubber_flight_state;

/**
 * The wind at one of several levels.
 */
typedef struct lubber_wind_level {
  /**
   * sizeof(lubber_wind_level), in each level of an array.
   */
  size_t struct_size;
  /**
   * Pressure altitude of the level, above that of the level before it.
   */
  double pressure_altitude_ft;
  /**
   * Where its wind blows from, true.
   */
  double wind_from_deg;
  /**
   * Speed of its wind, 0 to 1000.
   */
  double wind_speed_kt;
} lubber_wind_level;

/**
 * A leg of a procedure; which numbers it needs follows from its code, the others may be NaN. Set it with lubber_leg_init, then
 * what the leg needs.
 */
typedef struct lubber_leg {
  /**
   * sizeof(lubber_leg).
   */
  size_t struct_size;
  /**
   * Which leg: 1 IF, 2 TF, 3 CF, 4 DF, 5 AF, 6 RF, 7 FA, 8 FC, 9 FD, 10 FM, 11 CA, 12 CD, 13 CI, 14 CR, 15 VA, 16 VD, 17 VI,
   * 18 VM, 19 VR, 20 HA, 21 HF, 22 HM, 23 PI.
   */
  int32_t code;
  /**
   * How the fix that ends it is passed: 0 flown by, 1 flown over.
   */
  int32_t passage;
  /**
   * 1 if an arc goes clockwise, a racetrack turns right, a procedure turn first turns right; else 0.
   */
  int32_t to_right;
  /**
   * The fix: latitude.
   */
  double fix_latitude_deg;
  /**
   * The fix: longitude.
   */
  double fix_longitude_deg;
  /**
   * Course or heading, true or, with a magnetic variation in lubber_leg_conditions, magnetic; of a racetrack the inbound, of a procedure
   * turn the outbound course.
   */
  double course_deg;
  /**
   * Altitude that ends FA, CA, VA and HA.
   */
  double altitude_ft;
  /**
   * Distance of FC and PI; DME reading of FD, CD and VD.
   */
  double distance_nm;
  /**
   * Station of FD, CD, CR, VD, VR, AF and of a racetrack by DME, centre of RF: latitude.
   */
  double center_latitude_deg;
  /**
   * Station or centre: longitude.
   */
  double center_longitude_deg;
  /**
   * The station's elevation.
   */
  double center_elevation_ft;
  /**
   * The station's declination.
   */
  double center_declination_deg;
  /**
   * Radial of CR and VR, from the station's north.
   */
  double radial_deg;
  /**
   * Time of a racetrack's timed leg; 60 at first.
   */
  double outbound_time_s;
  /**
   * The leg of a racetrack that is timed, or whose length is given: LUBBER_TIMED_LEG_INBOUND, LUBBER_TIMED_LEG_OUTBOUND (from abeam
   * the fix or wings level, whichever is later), LUBBER_TIMED_LEG_OUTBOUND_FROM_LEVEL as at first.
   */
  int32_t timed;
  /**
   * Which procedure turn a PI is: 0 the 45/180, as at first, 1 the 80/260.
   */
  int32_t reversal;
  /**
   * Length of that leg of a racetrack over the ground; NaN, as at first, where it is given by time or by DME.
   */
  double hold_distance_nm;
  /**
   * DME reading of the station at which a racetrack's turn inbound begins; NaN, as at first, where there is none.
   */
  double hold_dme_nm;
  /**
   * Time of a 45/180 from the start of its first turn to that of its second; 60 at first.
   */
  double off_time_s;
} lubber_leg;

/**
 * What a sequence of legs is flown with. Set it with lubber_leg_conditions_init, then change what differs.
 */
typedef struct lubber_leg_conditions {
  /**
   * sizeof(lubber_leg_conditions).
   */
  size_t struct_size;
  /**
   * True airspeed, above 0 to 5000.
   */
  double true_airspeed_kt;
  /**
   * Where the wind blows from, true; 0 at first, which is north: set it with the speed.
   */
  double wind_from_deg;
  /**
   * Speed of the wind, 0 to 1000; 0 at first.
   */
  double wind_speed_kt;
  /**
   * Greatest bank, above 0 below 90; 25 at first.
   */
  double bank_limit_deg;
  /**
   * Greatest rate of turn, above 0; 3 at first.
   */
  double turn_rate_limit_deg_per_s;
  /**
   * Rate of roll, above 0; 5 at first.
   */
  double roll_rate_deg_per_s;
  /**
   * Altitude at the first fix.
   */
  double altitude_ft;
  /**
   * Rate of climb, negative to descend, -30 000 to 30 000; 0 at first.
   */
  double climb_fpm;
  /**
   * The angle at which a course is intercepted from beside it, above 0 to 90; 30 at first.
   */
  double intercept_angle_deg;
  /**
   * How far a leg is drawn that is ended by hand; 10 at first.
   */
  double manual_distance_nm;
  /**
   * Pressure altitude of that wind, where another one is given above it; NaN, as at first, for one wind at every altitude.
   */
  double wind_altitude_ft;
  /**
   * Pressure altitude of the upper wind, or NaN, as at first.
   */
  double upper_wind_altitude_ft;
  /**
   * Where the upper wind blows from, true, or NaN, as at first.
   */
  double upper_wind_from_deg;
  /**
   * Speed of the upper wind, or NaN, as at first.
   */
  double upper_wind_speed_kt;
  /**
   * Winds at any number of levels, in place of the winds above, which are not looked at then; NULL, as at first, for none. Each leg is
   * flown in the wind at the altitude where it begins.
   */
  const struct lubber_wind_level *wind_levels;
  /**
   * How many levels, up to 1000; 0, as at first, for none.
   */
  size_t wind_level_count;
  /**
   * Magnetic variation that the legs' courses and headings are given with, positive east, -180 to 180: they are magnetic then. NaN, as at
   * first, where they are true. Winds are true all the same, and radials counted from their station's north.
   */
  double magnetic_variation_deg;
} lubber_leg_conditions;

/**
 * A segment of the path over the ground. Directions are true.
 */
typedef struct lubber_path_segment {
  /**
   * sizeof(lubber_path_segment), set by the caller in the first one of an array.
   */
  size_t struct_size;
  /**
   * The leg it belongs to, counted from zero; a turn belongs to the leg it leads onto.
   */
  size_t leg;
  /**
   * 0 a straight, 1 a turn, 2 an arc.
   */
  int32_t kind;
  /**
   * Where it begins: latitude.
   */
  double start_latitude_deg;
  /**
   * Where it begins: longitude.
   */
  double start_longitude_deg;
  /**
   * True course where it begins.
   */
  double start_course_deg;
  /**
   * Where it ends: latitude.
   */
  double end_latitude_deg;
  /**
   * Where it ends: longitude.
   */
  double end_longitude_deg;
  /**
   * True course where it ends.
   */
  double end_course_deg;
  /**
   * Altitude where it ends.
   */
  double end_altitude_ft;
  /**
   * Length over the ground.
   */
  double length_nm;
  /**
   * How long it takes.
   */
  double duration_s;
  /**
   * Time at its end since the first fix.
   */
  double end_time_s;
  /**
   * True heading where it begins.
   */
  double start_heading_deg;
  /**
   * Groundspeed where it begins.
   */
  double start_groundspeed_kt;
  /**
   * True heading where it ends.
   */
  double end_heading_deg;
  /**
   * Groundspeed where it ends.
   */
  double end_groundspeed_kt;
  /**
   * The greatest bank of a turn, or what keeps to an arc; 0 along a straight.
   */
  double bank_deg;
  /**
   * Change of heading of a turn, right positive; 0 else.
   */
  double heading_change_deg;
} lubber_path_segment;

/**
 * A station that is received along a path. Set it with lubber_path_station_init, then change what differs.
 */
typedef struct lubber_path_station {
  /**
   * sizeof(lubber_path_station).
   */
  size_t struct_size;
  /**
   * Its latitude.
   */
  double latitude_deg;
  /**
   * Its longitude.
   */
  double longitude_deg;
  /**
   * Elevation of its antenna above mean sea level; 0 at first.
   */
  double elevation_ft;
  /**
   * From true north to its own, positive east; 0 at first.
   */
  double declination_deg;
  /**
   * Half-angle of its cone of confusion from the vertical, above 0 below 90; 50 at first.
   */
  double cone_half_angle_deg;
} lubber_path_station;

/**
 * What a path is briefed in. Set it with lubber_path_surroundings_init, then change what differs.
 */
typedef struct lubber_path_surroundings {
  /**
   * sizeof(lubber_path_surroundings).
   */
  size_t struct_size;
  /**
   * The stations that are received along it, all of one size; NULL, as at first, for none.
   */
  const struct lubber_path_station *stations;
  /**
   * How many; 0 at first.
   */
  size_t station_count;
  /**
   * Altimeter setting of the region, reduced to sea level; 1013.25 at first.
   */
  double altimeter_setting_hpa;
  /**
   * Deviation of the temperature from the standard atmosphere; 0 at first.
   */
  double isa_deviation_k;
  /**
   * Whose speed limit a racetrack is checked against, a LUBBER_HOLDING_SPEED_RULE_ code; that of ICAO at first.
   */
  int32_t holding_rule;
} lubber_path_surroundings;

/**
 * A leg as it is flown. Directions are true where nothing else is said; what a leg has not is NaN.
 */
typedef struct lubber_path_leg {
  /**
   * sizeof(lubber_path_leg), set by the caller in the first one of an array.
   */
  size_t struct_size;
  /**
   * Which leg it is, as in lubber_leg.
   */
  int32_t code;
  /**
   * 1 if the bank that its arc takes is within the limit, or it has no arc, else 0.
   */
  int32_t keeps_its_arc;
  /**
   * How many turns it has: as many of lubber_path_turns, in their order.
   */
  size_t turn_count;
  /**
   * How many checks have found something: as many of lubber_path_checks, in their order.
   */
  size_t check_count;
  /**
   * Where the turn onto it begins, or it itself, if it has none: latitude.
   */
  double start_latitude_deg;
  /**
   * Where it begins: longitude.
   */
  double start_longitude_deg;
  /**
   * Course where it begins.
   */
  double start_course_deg;
  /**
   * Altitude where it begins.
   */
  double start_altitude_ft;
  /**
   * Time at its beginning since the first fix.
   */
  double start_time_s;
  /**
   * Where it ends, or the turn onto the next leg begins: latitude.
   */
  double end_latitude_deg;
  /**
   * Where it ends: longitude.
   */
  double end_longitude_deg;
  /**
   * Course where it ends.
   */
  double end_course_deg;
  /**
   * Altitude where it ends.
   */
  double end_altitude_ft;
  /**
   * Time at its end since the first fix.
   */
  double end_time_s;
  /**
   * Its course where it is first flown straight or round its arc; where it ends, if it is all turn.
   */
  double course_deg;
  /**
   * The heading that holds that course.
   */
  double heading_deg;
  /**
   * Heading less course, right positive.
   */
  double wind_correction_deg;
  /**
   * Speed made good along that course.
   */
  double groundspeed_kt;
  /**
   * Where the wind it is flown in blows from.
   */
  double wind_from_deg;
  /**
   * Speed of that wind.
   */
  double wind_speed_kt;
  /**
   * The wind against that course; a tailwind is negative.
   */
  double headwind_kt;
  /**
   * The wind from the right of that course; from the left is negative.
   */
  double crosswind_kt;
  /**
   * Over the ground, with its turns.
   */
  double distance_nm;
  /**
   * From its start to its end.
   */
  double time_s;
  /**
   * The shortest straight between its turns; NaN if it is all turn and arc.
   */
  double shortest_straight_nm;
  /**
   * The greatest bank that keeps to its arc; NaN if it has none.
   */
  double arc_bank_deg;
  /**
   * `course_deg` from magnetic north; NaN without a variation in the conditions.
   */
  double magnetic_course_deg;
  /**
   * `heading_deg` from magnetic north; NaN without a variation in the conditions.
   */
  double magnetic_heading_deg;
} lubber_path_leg;

/**
 * A turn of a path. Directions are true where nothing else is said.
 */
typedef struct lubber_path_turn {
  /**
   * sizeof(lubber_path_turn), set by the caller in the first one of an array.
   */
  size_t struct_size;
  /**
   * The leg it leads onto, counted from zero.
   */
  size_t leg;
  /**
   * Which leg that is, as in lubber_leg.
   */
  int32_t code;
  /**
   * What sets its bank, a LUBBER_GOVERNOR_ code.
   */
  int32_t governed_by;
  /**
   * Where the roll into it begins: latitude.
   */
  double begin_latitude_deg;
  /**
   * Where it begins: longitude.
   */
  double begin_longitude_deg;
  /**
   * Course where it begins.
   */
  double begin_course_deg;
  /**
   * Altitude where it begins.
   */
  double begin_altitude_ft;
  /**
   * Time at its beginning since the first fix.
   */
  double begin_after_start_s;
  /**
   * Where the wings are level on the new course: latitude.
   */
  double roll_out_latitude_deg;
  /**
   * Where it rolls out: longitude.
   */
  double roll_out_longitude_deg;
  /**
   * Course where it rolls out.
   */
  double roll_out_course_deg;
  /**
   * Altitude where it rolls out.
   */
  double roll_out_altitude_ft;
  /**
   * Time at its end since the first fix.
   */
  double roll_out_after_start_s;
  /**
   * Change of heading, right positive.
   */
  double heading_change_deg;
  /**
   * Its greatest bank.
   */
  double bank_deg;
  /**
   * Radius through the air at that bank; infinite without a turn.
   */
  double radius_nm;
  /**
   * From wings level to wings level.
   */
  double time_s;
  /**
   * `begin_course_deg` from magnetic north; NaN without a variation in the conditions.
   */
  double begin_magnetic_course_deg;
  /**
   * `roll_out_course_deg` from magnetic north; NaN without a variation in the conditions.
   */
  double roll_out_magnetic_course_deg;
} lubber_path_turn;

/**
 * What a station is seen as where a turn begins or rolls out.
 */
typedef struct lubber_path_reading {
  /**
   * sizeof(lubber_path_reading), set by the caller in the first one of an array.
   */
  size_t struct_size;
  /**
   * The turn, counted from zero along the path.
   */
  size_t turn;
  /**
   * The station, counted from zero.
   */
  size_t station;
  /**
   * 1 where it rolls out, 0 where it begins.
   */
  int32_t at_roll_out;
  /**
   * Whether the station can be used, a LUBBER_FLAG_ code.
   */
  int32_t flag;
  /**
   * The DME reading.
   */
  double dme_nm;
  /**
   * The radial, in the station's north; NaN overhead, within a metre on the ground.
   */
  double radial_deg;
} lubber_path_reading;

/**
 * What a check of a leg has found.
 */
typedef struct lubber_path_check {
  /**
   * sizeof(lubber_path_check), set by the caller in the first one of an array.
   */
  size_t struct_size;
  /**
   * The leg, counted from zero.
   */
  size_t leg;
  /**
   * What is found, a LUBBER_PATH_CHECK_KIND_ code; lubber_path_check_text puts it in words.
   */
  int32_t kind;
  /**
   * Whose speed limit is exceeded, a LUBBER_HOLDING_SPEED_RULE_ code; -1 if it is no speed.
   */
  int32_t holding_rule;
  /**
   * The turn that begins in a cone, or begins or rolls out where a station is not received, counted from zero along the path, else -1.
   */
  ptrdiff_t turn;
  /**
   * The station of that cone, or that is not received, counted from zero, else -1: so too a leg's own that is not among them.
   */
  ptrdiff_t station;
  /**
   * What it takes: degrees of bank, knots of calibrated airspeed, Mach number, nautical miles from a station that is not received, or
   * the altitude in feet at which a leg begins past its end; NaN for a cone.
   */
  double value;
  /**
   * The most there is or is allowed of that, or the altitude that ends the leg; NaN for a cone.
   */
  double limit;
  /**
   * Pressure altitude where a racetrack ends that is flown too fast, else NaN.
   */
  double pressure_altitude_ft;
} lubber_path_check;

/**
 * A station of a route, which way to turn there, and the wind there and on the leg to it. Set it with lubber_route_fix_init, then change what
 * differs.
 */
typedef struct lubber_route_fix {
  /**
   * sizeof(lubber_route_fix).
   */
  size_t struct_size;
  /**
   * The station: latitude.
   */
  double latitude_deg;
  /**
   * The station: longitude.
   */
  double longitude_deg;
  /**
   * Elevation of its antenna above mean sea level; 0 at first.
   */
  double elevation_ft;
  /**
   * From true north to its own, positive east; 0 at first.
   */
  double declination_deg;
  /**
   * Half-angle of its cone of confusion from the vertical, above 0 below 90; 50 at first.
   */
  double cone_half_angle_deg;
  /**
   * Where the wind blows from, true; NaN with the speed, as at first, for that of the conditions.
   */
  double wind_from_deg;
  /**
   * Speed of the wind, 0 to 1000; NaN with the direction, as at first, for that of the conditions.
   */
  double wind_speed_kt;
  /**
   * Winds by level in place of that wind, of which the one at the altitude flown counts; NULL, as at first, for none.
   */
  const struct lubber_wind_level *wind_levels;
  /**
   * How many levels, up to 1000; 0, as at first, for none.
   */
  size_t wind_level_count;
  /**
   * Which way to turn: LUBBER_TURN_SIDE_SHORTEST (0, at first), LUBBER_TURN_SIDE_LEFT (-1) or LUBBER_TURN_SIDE_RIGHT (1). Nothing is turned at
   * the first station and the last.
   */
  int32_t turn;
} lubber_route_fix;

/**
 * What a route is flown with, and the air it lies in. Set it with lubber_route_conditions_init, then change what differs.
 */
typedef struct lubber_route_conditions {
  /**
   * sizeof(lubber_route_conditions).
   */
  size_t struct_size;
  /**
   * True airspeed, above 0 to 5000.
   */
  double true_airspeed_kt;
  /**
   * Pressure altitude, held all the way.
   */
  double pressure_altitude_ft;
  /**
   * Altimeter setting of the region; 1013.25 at first.
   */
  double altimeter_setting_hpa;
  /**
   * How much warmer than the standard atmosphere it is; 0 at first.
   */
  double isa_deviation_k;
  /**
   * Where the wind blows from, true, at stations without a wind of their own; 0 at first, which is north: set it with the speed.
   */
  double wind_from_deg;
  /**
   * Speed of that wind, 0 to 1000; 0 at first.
   */
  double wind_speed_kt;
  /**
   * Greatest bank, above 0 below 90; 25 at first.
   */
  double bank_limit_deg;
  /**
   * Greatest rate of turn, above 0, INFINITY for none; 3 at first.
   */
  double turn_rate_limit_deg_per_s;
  /**
   * Rate of roll, above 0, INFINITY for an instant roll; 5 at first.
   */
  double roll_rate_deg_per_s;
  /**
   * The angle at which an outbound course would be intercepted after flying over a station, above 0 to 90; 30 at first.
   */
  double intercept_angle_deg;
  /**
   * Winds by level in place of that wind, of which the one at the altitude flown counts; NULL, as at first, for none.
   */
  const struct lubber_wind_level *wind_levels;
  /**
   * How many levels, up to 1000; 0, as at first, for none.
   */
  size_t wind_level_count;
} lubber_route_conditions;

/**
 * A leg of a route. Radials are in the stations' own north, all else is true.
 */
typedef struct lubber_route_leg {
  /**
   * sizeof(lubber_route_leg), set by the caller in the first one of an array.
   */
  size_t struct_size;
  /**
   * From station to station.
   */
  double length_nm;
  /**
   * Course where it begins.
   */
  double initial_course_deg;
  /**
   * Course where it ends.
   */
  double final_course_deg;
  /**
   * The radial of the first station it is flown on, away from it.
   */
  double radial_from_deg;
  /**
   * The radial of the second station it is flown on, toward it.
   */
  double radial_to_deg;
  /**
   * Where the wind on it blows from.
   */
  double wind_from_deg;
  /**
   * Speed of that wind.
   */
  double wind_speed_kt;
  /**
   * What holds the course half-way.
   */
  double heading_deg;
  /**
   * Heading less course half-way, right positive.
   */
  double wind_correction_deg;
  /**
   * Groundspeed half-way.
   */
  double groundspeed_kt;
  /**
   * What is left between the turns at its ends; negative if they overlap.
   */
  double straight_nm;
  /**
   * The time for that; NaN if they overlap.
   */
  double straight_time_s;
  /**
   * The least length that would be enough for the turns at its ends.
   */
  double least_length_nm;
  /**
   * Radio horizon of the first station at this altitude, over a smooth earth.
   */
  double horizon_from_nm;
  /**
   * Radio horizon of the second station.
   */
  double horizon_to_nm;
  /**
   * How much of it lies beyond both horizons; 0 if none.
   */
  double unreceived_nm;
  /**
   * 1 if it is long enough for the turns at its ends, else 0.
   */
  int32_t long_enough;
  /**
   * 1 if no part of it lies beyond both horizons, else 0.
   */
  int32_t received;
} lubber_route_leg;

/**
 * A turn at a station of a route. Radials are in the station's own north, all else is true.
 */
typedef struct lubber_route_turn {
  /**
   * sizeof(lubber_route_turn), set by the caller in the first one of an array.
   */
  size_t struct_size;
  /**
   * The DME reading at which the turn begins.
   */
  double begin_at_dme_nm;
  /**
   * The radial on which it begins.
   */
  double begin_on_radial_deg;
  /**
   * The lead: the distance before the station at which it begins; negative past it.
   */
  double begin_before_fix_nm;
  /**
   * Where it begins: latitude.
   */
  double begin_latitude_deg;
  /**
   * Where it begins: longitude.
   */
  double begin_longitude_deg;
  /**
   * What a tenth of a mile on the DME is along the ground there: much, close to overhead; infinite overhead.
   */
  double ground_per_dme_tenth_nm;
  /**
   * When it begins, after the last roll-out or the start; NaN, like all times after the start, from a leg on that is too short.
   */
  double begin_after_last_roll_out_s;
  /**
   * When it begins, after the start of the route.
   */
  double begin_after_start_s;
  /**
   * From its beginning to wings level.
   */
  double turn_time_s;
  /**
   * Its length over the ground.
   */
  double turn_length_nm;
  /**
   * When the wings are level again, after the start of the route.
   */
  double roll_out_after_start_s;
  /**
   * The DME reading there.
   */
  double roll_out_dme_nm;
  /**
   * The radial there.
   */
  double roll_out_radial_deg;
  /**
   * How far past the station that is, along the outbound course; negative before it.
   */
  double roll_out_past_fix_nm;
  /**
   * Where the wings are level again: latitude.
   */
  double roll_out_latitude_deg;
  /**
   * Where the wings are level again: longitude.
   */
  double roll_out_longitude_deg;
  /**
   * Height above the station.
   */
  double height_above_station_ft;
  /**
   * Where the wind blows from.
   */
  double wind_from_deg;
  /**
   * Speed of the wind.
   */
  double wind_speed_kt;
  /**
   * Course to the station.
   */
  double inbound_course_deg;
  /**
   * Course from it.
   */
  double outbound_course_deg;
  /**
   * The change between them, right positive, the short way.
   */
  double course_change_deg;
  /**
   * The radial it is reached on.
   */
  double inbound_radial_deg;
  /**
   * The radial it is left on.
   */
  double outbound_radial_deg;
  /**
   * Heading that holds the inbound course.
   */
  double heading_before_deg;
  /**
   * Heading that holds the outbound course.
   */
  double heading_after_deg;
  /**
   * Heading to turn through, right positive, the way that is turned.
   */
  double heading_change_deg;
  /**
   * Groundspeed on the inbound course.
   */
  double groundspeed_before_kt;
  /**
   * Groundspeed on the outbound course.
   */
  double groundspeed_after_kt;
  /**
   * The greatest bank.
   */
  double bank_deg;
  /**
   * Radius through the air at that bank; infinite if there is no turn.
   */
  double radius_nm;
  /**
   * Least distance from the station over the ground.
   */
  double closest_approach_nm;
  /**
   * Radius of its cone of confusion at the height.
   */
  double cone_radius_nm;
  /**
   * The DME reading at the edge of the cone.
   */
  double cone_edge_dme_nm;
  /**
   * Flying over first: the intercept angle flown, the chosen one or the largest for which there is room.
   */
  double fly_over_intercept_angle_deg;
  /**
   * Flying over first: greatest distance from the outbound course on its outer side.
   */
  double fly_over_greatest_overshoot_nm;
  /**
   * Flying over first: distance past the station at which the outbound course is held.
   */
  double fly_over_established_past_fix_nm;
  /**
   * Flying over first: distance flown in addition.
   */
  double fly_over_extra_distance_nm;
  /**
   * Flying over first: time flown in addition.
   */
  double fly_over_extra_time_s;
  /**
   * Flying over first: time from over the station until the outbound course is held.
   */
  double fly_over_duration_s;
  /**
   * By rule, the lead: a third of a mile for each 60 kt, for 90 degrees.
   */
  double rule_lead_nm;
  /**
   * By how much that is too long.
   */
  double rule_lead_error_nm;
  /**
   * By rule, with half a mile for each 10 000 ft above 5 000 ft.
   */
  double rule_lead_with_height_nm;
  /**
   * By how much that is too long.
   */
  double rule_lead_with_height_error_nm;
  /**
   * By rule, the reading: the lead added to the height in miles.
   */
  double rule_dme_nm;
  /**
   * By how much that is too much.
   */
  double rule_dme_error_nm;
  /**
   * What governs the bank: LUBBER_GOVERNOR_BANK_LIMIT (0), LUBBER_GOVERNOR_TURN_RATE_LIMIT (1), LUBBER_GOVERNOR_ROLL_RATE
   * (2) or LUBBER_GOVERNOR_NO_TURN (3).
   */
  int32_t governed_by;
  /**
   * Which way is turned: -1 left, 1 right, 0 if there is no turn.
   */
  int32_t side;
  /**
   * 1 if the turn begins inside the cone of confusion, else 0.
   */
  int32_t begins_in_cone;
  /**
   * 1 if the aircraft enters the cone at all, else 0.
   */
  int32_t enters_cone;
} lubber_route_turn;

/**
 * What a route comes to, or where it failed.
 */
typedef struct lubber_route_summary {
  /**
   * sizeof(lubber_route_summary), set by the caller.
   */
  size_t struct_size;
  /**
   * Distance over the ground, with the turns; NaN on a failure, and if a leg is too short for its turns.
   */
  double total_distance_nm;
  /**
   * Time from the first station to the last, with the turns; NaN likewise.
   */
  double total_time_s;
  /**
   * How many legs there are, which may be more than fit; 0 on a failure.
   */
  size_t leg_count;
  /**
   * How many turns there are, which may be more than fit; 0 on a failure.
   */
  size_t turn_count;
  /**
   * The station at which it failed, counted from 1; 0 if at none.
   */
  size_t failed_fix;
  /**
   * The leg on which it failed, counted from 1; 0 if on none.
   */
  size_t failed_leg;
  /**
   * The level of winds that is wrong, counted from 1, in that station's or else in the conditions'; 0 if none.
   */
  size_t failed_wind_level;
} lubber_route_summary;

/**
 * The standard deviations of what a turn begun by DME depends on, none negative; 0 is none.
 */
typedef struct lubber_error_model {
  /**
   * sizeof(lubber_error_model), set by the caller.
   */
  size_t struct_size;
  /**
   * Of the bearing of the station's signal.
   */
  double station_bearing_deg;
  /**
   * Of the DME reading.
   */
  double dme_nm;
  /**
   * Of the wind's speed.
   */
  double wind_speed_kt;
  /**
   * Of the wind's direction.
   */
  double wind_direction_deg;
  /**
   * Of the true airspeed.
   */
  double airspeed_kt;
  /**
   * Of the bank.
   */
  double bank_deg;
  /**
   * Of the moment of roll-in.
   */
  double roll_in_delay_s;
  /**
   * Of the height above the station.
   */
  double height_ft;
  /**
   * By how much the crew is late on the average.
   */
  double mean_delay_s;
} lubber_error_model;

/**
 * How sure a course change is. Overshoot is the cross-track at roll-out on the outer side of the outbound course.
 */
typedef struct lubber_sureness {
  /**
   * sizeof(lubber_sureness), set by the caller.
   */
  size_t struct_size;
  /**
   * Mean overshoot of the trials.
   */
  double mean_nm;
  /**
   * Its standard deviation.
   */
  double deviation_nm;
  /**
   * The share of trials that overshot by more than the limit.
   */
  double chance_beyond;
  /**
   * What to add to the lead for the confidence; negative if there is room.
   */
  double margin_nm;
  /**
   * The overshoot without any error but the mean delay.
   */
  double linear_mean_nm;
  /**
   * The standard deviation by linear propagation.
   */
  double linear_deviation_nm;
  /**
   * The chance by linear propagation.
   */
  double linear_chance_beyond;
  /**
   * The margin by linear propagation.
   */
  double linear_margin_nm;
  /**
   * What one standard deviation of each source is worth, in the order of lubber_error_model.
   */
  double by_source_nm[8];
  /**
   * The source that is worth most, by its place among the eight from 0; -1 if none is worth anything.
   */
  double foremost;
  /**
   * The DME reading at which the turn begins with the margin added to its lead; NaN if there is no turn.
   */
  double begin_with_margin_at_dme_nm;
  /**
   * The lead with the margin added: how far before the station that is, negative past it.
   */
  double begin_with_margin_before_fix_nm;
} lubber_sureness;

#ifdef __cplusplus
extern "C" {
#endif // __cplusplus

/**
 * What a status means: a text that lives forever; for a number that is no status, a text that says so. Never null.
 */
const char *lubber_status_text(int32_t status);

/**
 * The published tolerance of a radial or a bearing, by its source.
 *
 * The root of the sum of squares of its parts: VOR 3.5 degrees ground, 2.7 receiver, 1.0 monitor and 3.5 (en route) or 2.5 (terminal) flight technical;
 * NDB 3 degrees ground and 5.4 receiver.
 *
 * @param accuracy which figure: LUBBER_RADIAL_ACCURACY_VOR_EN_ROUTE, LUBBER_RADIAL_ACCURACY_VOR_TRACKING, LUBBER_RADIAL_ACCURACY_VOR_INTERSECTING, LUBBER_RADIAL_ACCURACY_NDB_INTERSECTING, LUBBER_RADIAL_ACCURACY_VOR_ALIGNMENT
 * @param[out] radial_tolerance_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Not rounded, where the sources print 5.7, 5.2, 4.5 and 6.2 degrees.
 * Degenerate cases: None. A tolerance is two standard deviations.
 * Errors: A choice that is none of its alternatives.
 * Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part II Section 3 Chapter 1, 1.4.3.2 and Appendix B 2.2, and Part I Section 2 Chapter 2, Table I-2-2-1 (from memory);
 * FAA Aeronautical Information Manual 1-1-3, edition not shown in the copy read.
 *
 * Example: lubber_radial_tolerance_deg(LUBBER_RADIAL_ACCURACY_VOR_INTERSECTING, &value) gives 4.53
 */
int32_t lubber_radial_tolerance_deg(int32_t accuracy,
                                    double *radial_tolerance_deg);

/**
 * `lubber_radial_tolerance_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `accuracy` is one code for all points: which figure: LUBBER_RADIAL_ACCURACY_VOR_EN_ROUTE, LUBBER_RADIAL_ACCURACY_VOR_TRACKING, LUBBER_RADIAL_ACCURACY_VOR_INTERSECTING, LUBBER_RADIAL_ACCURACY_NDB_INTERSECTING, LUBBER_RADIAL_ACCURACY_VOR_ALIGNMENT
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_radial_tolerance_deg_n(size_t count,
                                     int32_t accuracy,
                                     double *radial_tolerance_deg,
                                     ptrdiff_t radial_tolerance_deg_stride,
                                     int32_t *status);

/**
 * How the independent parts of a radial's error combine.
 *
 * `sqrt(Eg^2 + Ea^2 + Em^2)` for the radial, and with `Ep^2` for the aircraft that flies along it.
 *
 * @param ground_deg error of the signal, 0 to 90
 * @param receiver_deg error of the airborne receiver, 0 to 90
 * @param flight_technical_deg error of flying by the needle, 0 to 90
 * @param monitor_deg error that the monitor lets pass, 0 to 90
 * @param[out] aggregate_deg Where the radial is: ground, receiver and monitor; may be NULL
 * @param[out] system_use_deg Where an aircraft flying along it is: the aggregate and the flight technical part; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error.
 * Degenerate cases: Tolerances give a tolerance, standard deviations a standard deviation.
 * Errors: A value outside its range.
 * Source: ICAO Annex 10 Vol I, Attachment C, 3.7.3.2; ICAO Doc 8168 Vol II (5th ed. 2006), Part II Section 3 Chapter 1, Appendix B, adds the monitor.
 *
 * Example: lubber_radial_error(3.5, 2.7, 3.5, 1.0, NULL, &value) gives 5.73
 */
int32_t lubber_radial_error(double ground_deg,
                            double receiver_deg,
                            double flight_technical_deg,
                            double monitor_deg,
                            double *aggregate_deg,
                            double *system_use_deg);

/**
 * `lubber_radial_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_radial_error_n(size_t count,
                             const double *ground_deg,
                             ptrdiff_t ground_deg_stride,
                             const double *receiver_deg,
                             ptrdiff_t receiver_deg_stride,
                             const double *flight_technical_deg,
                             ptrdiff_t flight_technical_deg_stride,
                             const double *monitor_deg,
                             ptrdiff_t monitor_deg_stride,
                             double *aggregate_deg,
                             ptrdiff_t aggregate_deg_stride,
                             double *system_use_deg,
                             ptrdiff_t system_use_deg_stride,
                             int32_t *status);

/**
 * The published tolerance of a DME at a slant range, by its source.
 *
 * `0.25 + 0.0125 d` (`pans_ops`), 0.2 (`annex_10`), the greater of 0.5 and `0.03 d` (`aim`), `sqrt(0.1^2 + 0.17^2)` (`since_1989`), in nautical miles.
 *
 * @param dme_nm slant range, 0 to 10 900
 * @param accuracy which figure: LUBBER_DME_ACCURACY_PANS_OPS, LUBBER_DME_ACCURACY_ANNEX10, LUBBER_DME_ACCURACY_AIM, LUBBER_DME_ACCURACY_SINCE1989
 * @param[out] dme_tolerance_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As published.
 * Degenerate cases: None. A tolerance is two standard deviations.
 * Errors: A value outside its range.
 * Source: ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 2 Chapter 2, 2.4.2; ICAO Annex 10 Vol I, 3.5.3.1.3.3; FAA Aeronautical Information Manual 1-1-7, edition not shown in the copy read; ICAO
 * Doc 8168 Vol II, Part III Section 1 Chapter 3, Appendix 3, 2.1.
 *
 * Example: lubber_dme_tolerance_nm(40.0, LUBBER_DME_ACCURACY_PANS_OPS, &value) gives 0.75
 */
int32_t lubber_dme_tolerance_nm(double dme_nm,
                                int32_t accuracy,
                                double *dme_tolerance_nm);

/**
 * `lubber_dme_tolerance_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `accuracy` is one code for all points: which figure: LUBBER_DME_ACCURACY_PANS_OPS, LUBBER_DME_ACCURACY_ANNEX10, LUBBER_DME_ACCURACY_AIM, LUBBER_DME_ACCURACY_SINCE1989
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_dme_tolerance_nm_n(size_t count,
                                 const double *dme_nm,
                                 ptrdiff_t dme_nm_stride,
                                 int32_t accuracy,
                                 double *dme_tolerance_nm,
                                 ptrdiff_t dme_tolerance_nm_stride,
                                 int32_t *status);

/**
 * The greatest error with which a VOR receiver passes a check within the preceding 30 days.
 *
 * 4 degrees for a test signal, a checkpoint on the ground and between two receivers; 6 degrees in the air.
 *
 * @param check which check: LUBBER_RECEIVER_CHECK_TEST_SIGNAL, LUBBER_RECEIVER_CHECK_GROUND_CHECKPOINT, LUBBER_RECEIVER_CHECK_AIRBORNE_CHECKPOINT, LUBBER_RECEIVER_CHECK_AIRWAY_CENTERLINE, LUBBER_RECEIVER_CHECK_DUAL_RECEIVERS
 * @param[out] receiver_check_limit_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As published.
 * Degenerate cases: None.
 * Errors: A choice that is none of its alternatives.
 * Source: 14 CFR 91.171 (b) and (c).
 *
 * Example: lubber_receiver_check_limit_deg(LUBBER_RECEIVER_CHECK_AIRBORNE_CHECKPOINT, &value) gives 6
 */
int32_t lubber_receiver_check_limit_deg(int32_t check,
                                        double *receiver_check_limit_deg);

/**
 * `lubber_receiver_check_limit_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `check` is one code for all points: which check: LUBBER_RECEIVER_CHECK_TEST_SIGNAL, LUBBER_RECEIVER_CHECK_GROUND_CHECKPOINT, LUBBER_RECEIVER_CHECK_AIRBORNE_CHECKPOINT, LUBBER_RECEIVER_CHECK_AIRWAY_CENTERLINE, LUBBER_RECEIVER_CHECK_DUAL_RECEIVERS
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_receiver_check_limit_deg_n(size_t count,
                                         int32_t check,
                                         double *receiver_check_limit_deg,
                                         ptrdiff_t receiver_check_limit_deg_stride,
                                         int32_t *status);

/**
 * Tolerances of area navigation by DME/DME, for procedure design.
 *
 * Along `sqrt((k d)^2 + st^2)`, across `sqrt((k d)^2 + ftt^2 + st^2)`, half-width `1.5 across + bv`, with `k` 1.29 for two stations and 1 for more.
 *
 * @param dme_tolerance_nm tolerance of one DME, as `dme_tolerance_nm` gives it, 0 to 1000
 * @param flight_technical_nm flight technical tolerance, 0 to 1000
 * @param buffer_nm buffer value, 0 to 1000
 * @param coverage from how many stations the position is taken: LUBBER_DME_COVERAGE_TWO_STATIONS, LUBBER_DME_COVERAGE_MORE_STATIONS
 * @param system_nm system computation tolerance, 0 to 1000
 * @param[out] along_track_nm Along the track; may be NULL
 * @param[out] across_track_nm Across the track; may be NULL
 * @param[out] half_width_nm Half the width of the area; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Not rounded between steps, where the printed examples are.
 * Degenerate cases: None.
 * Errors: A value outside its range.
 * Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 1 Chapter 3, Appendices 1 and 3; the factor of 1 is inferred from the examples.
 *
 * Example: lubber_dme_dme_tolerances(1.34, 1.0, 1.0, LUBBER_DME_COVERAGE_TWO_STATIONS, 0.25, NULL, NULL, &value) gives 4.02
 */
int32_t lubber_dme_dme_tolerances(double dme_tolerance_nm,
                                  double flight_technical_nm,
                                  double buffer_nm,
                                  int32_t coverage,
                                  double system_nm,
                                  double *along_track_nm,
                                  double *across_track_nm,
                                  double *half_width_nm);

/**
 * `lubber_dme_dme_tolerances` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `coverage` is one code for all points: from how many stations the position is taken: LUBBER_DME_COVERAGE_TWO_STATIONS, LUBBER_DME_COVERAGE_MORE_STATIONS
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_dme_dme_tolerances_n(size_t count,
                                   const double *dme_tolerance_nm,
                                   ptrdiff_t dme_tolerance_nm_stride,
                                   const double *flight_technical_nm,
                                   ptrdiff_t flight_technical_nm_stride,
                                   const double *buffer_nm,
                                   ptrdiff_t buffer_nm_stride,
                                   int32_t coverage,
                                   const double *system_nm,
                                   ptrdiff_t system_nm_stride,
                                   double *along_track_nm,
                                   ptrdiff_t along_track_nm_stride,
                                   double *across_track_nm,
                                   ptrdiff_t across_track_nm_stride,
                                   double *half_width_nm,
                                   ptrdiff_t half_width_nm_stride,
                                   int32_t *status);

/**
 * The ICAO standard atmosphere at a pressure altitude, with an ISA deviation of the temperature.
 *
 * Layers of even temperature change from 15 degC at sea level: -6.5 K/km to 11 km, none to 20 km, +1 to 32 km,
 * +2.8 to 47 km, none to 51 km, -2.8 to 71 km, -2 to 80 km, geopotential. Pressure by hydrostatic balance;
 * density `p/(R T)`, speed of sound `sqrt(1.4 R T)`, R = 287.05287 J/(kg K). The deviation moves temperature,
 * density and speed of sound and leaves the pressure. For a geometric altitude in the standard atmosphere give
 * `lubber_geopotential_altitude_ft` of it.
 *
 * @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
 * @param isa_deviation_k warmer than standard by this, -150 to 150
 * @param[out] temperature_degc Static temperature; may be NULL
 * @param[out] pressure_hpa Static pressure; may be NULL
 * @param[out] density_kg_per_m3 Density; may be NULL
 * @param[out] speed_of_sound_kt Speed of sound; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding; in arrays 1e-14 of the value. The pressures printed in the source above 20 km differ by up to 4e-6 of themselves, having been
 * worked out from rounded ones.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range.
 * Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
 *
 * Example: lubber_standard_atmosphere(35000.0, 0.0, &value, NULL, NULL, NULL) gives -54.3
 */
int32_t lubber_standard_atmosphere(double pressure_altitude_ft,
                                   double isa_deviation_k,
                                   double *temperature_degc,
                                   double *pressure_hpa,
                                   double *density_kg_per_m3,
                                   double *speed_of_sound_kt);

/**
 * `lubber_standard_atmosphere` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_standard_atmosphere_n(size_t count,
                                    const double *pressure_altitude_ft,
                                    ptrdiff_t pressure_altitude_ft_stride,
                                    const double *isa_deviation_k,
                                    ptrdiff_t isa_deviation_k_stride,
                                    double *temperature_degc,
                                    ptrdiff_t temperature_degc_stride,
                                    double *pressure_hpa,
                                    ptrdiff_t pressure_hpa_stride,
                                    double *density_kg_per_m3,
                                    ptrdiff_t density_kg_per_m3_stride,
                                    double *speed_of_sound_kt,
                                    ptrdiff_t speed_of_sound_kt_stride,
                                    int32_t *status);

/**
 * Pressure over standard sea-level pressure, the ratio called delta.
 *
 * The pressure of `lubber_standard_atmosphere` over 1013.25 hPa.
 *
 * @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
 * @param[out] pressure_ratio the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: 1 at zero altitude, exactly.
 * Errors: A value outside its range.
 * Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
 *
 * Example: lubber_pressure_ratio(35000.0, &value) gives 0.2353
 */
int32_t lubber_pressure_ratio(double pressure_altitude_ft, double *pressure_ratio);

/**
 * `lubber_pressure_ratio` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_pressure_ratio_n(size_t count,
                               const double *pressure_altitude_ft,
                               ptrdiff_t pressure_altitude_ft_stride,
                               double *pressure_ratio,
                               ptrdiff_t pressure_ratio_stride,
                               int32_t *status);

/**
 * Density over standard sea-level density, the ratio called sigma.
 *
 * Pressure ratio over temperature ratio.
 *
 * @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
 * @param isa_deviation_k warmer than standard by this, -150 to 150
 * @param[out] density_ratio the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding. The sea-level density meant is `p0/(R T0)`, which is 1.225 kg/m3 to 1.5e-8.
 * Degenerate cases: 1 at zero altitude and deviation, exactly.
 * Errors: A value outside its range.
 * Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
 *
 * Example: lubber_density_ratio(35000.0, 0.0, &value) gives 0.3099
 */
int32_t lubber_density_ratio(double pressure_altitude_ft, double isa_deviation_k, double *density_ratio);

/**
 * `lubber_density_ratio` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_density_ratio_n(size_t count,
                              const double *pressure_altitude_ft,
                              ptrdiff_t pressure_altitude_ft_stride,
                              const double *isa_deviation_k,
                              ptrdiff_t isa_deviation_k_stride,
                              double *density_ratio,
                              ptrdiff_t density_ratio_stride,
                              int32_t *status);

/**
 * Temperature over standard sea-level temperature, in kelvins, the ratio called theta.
 *
 * The temperature of `lubber_standard_atmosphere` over 288.15 K.
 *
 * @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
 * @param isa_deviation_k warmer than standard by this, -150 to 150
 * @param[out] temperature_ratio the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: 1 at zero altitude and deviation, exactly.
 * Errors: A value outside its range.
 * Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
 *
 * Example: lubber_temperature_ratio(35000.0, 0.0, &value) gives 0.7594
 */
int32_t lubber_temperature_ratio(double pressure_altitude_ft, double isa_deviation_k, double *temperature_ratio);

/**
 * `lubber_temperature_ratio` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_temperature_ratio_n(size_t count,
                                  const double *pressure_altitude_ft,
                                  ptrdiff_t pressure_altitude_ft_stride,
                                  const double *isa_deviation_k,
                                  ptrdiff_t isa_deviation_k_stride,
                                  double *temperature_ratio,
                                  ptrdiff_t temperature_ratio_stride,
                                  int32_t *status);

/**
 * How much warmer than the standard atmosphere the air is: the ISA deviation of a temperature.
 *
 * The temperature less the standard one at that pressure altitude.
 *
 * @param temperature_degc static air temperature, -200 to 200
 * @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
 * @param[out] isa_deviation_k the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range, or a deviation beyond 150 K.
 * Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
 *
 * Example: lubber_isa_deviation_k(-45.0, 35000.0, &value) gives 9.34
 */
int32_t lubber_isa_deviation_k(double temperature_degc, double pressure_altitude_ft, double *isa_deviation_k);

/**
 * `lubber_isa_deviation_k` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_isa_deviation_k_n(size_t count,
                                const double *temperature_degc,
                                ptrdiff_t temperature_degc_stride,
                                const double *pressure_altitude_ft,
                                ptrdiff_t pressure_altitude_ft_stride,
                                double *isa_deviation_k,
                                ptrdiff_t isa_deviation_k_stride,
                                int32_t *status);

/**
 * The speed of sound in air of a temperature.
 *
 * `sqrt(1.4 R T)` with R = 287.05287 J/(kg K).
 *
 * @param temperature_degc static air temperature, -200 to 200
 * @param[out] speed_of_sound_kt the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding, for a gas of constant heat ratio: real air at 50 degC differs by less than 0.1 percent.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range.
 * Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
 *
 * Example: lubber_speed_of_sound_kt(15.0, &value) gives 661.48
 */
int32_t lubber_speed_of_sound_kt(double temperature_degc, double *speed_of_sound_kt);

/**
 * `lubber_speed_of_sound_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_speed_of_sound_kt_n(size_t count,
                                  const double *temperature_degc,
                                  ptrdiff_t temperature_degc_stride,
                                  double *speed_of_sound_kt,
                                  ptrdiff_t speed_of_sound_kt_stride,
                                  int32_t *status);

/**
 * Pressure altitude from static pressure: where the standard atmosphere has that pressure.
 *
 * The inverse of the pressure of `lubber_standard_atmosphere`.
 *
 * @param pressure_hpa static pressure, above 0 to 2000
 * @param[out] pressure_altitude_from_pressure_ft the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding (1e-9 ft).
 * Degenerate cases: None in the range.
 * Errors: A value outside its range, or a pressure above that of -5 km (1777 hPa) or below that of 80 km (0.00886
 * hPa).
 * Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
 *
 * Example: lubber_pressure_altitude_from_pressure_ft(500.0, &value) gives 18288.8
 */
int32_t lubber_pressure_altitude_from_pressure_ft(double pressure_hpa, double *pressure_altitude_from_pressure_ft);

/**
 * `lubber_pressure_altitude_from_pressure_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_pressure_altitude_from_pressure_ft_n(size_t count,
                                                   const double *pressure_hpa,
                                                   ptrdiff_t pressure_hpa_stride,
                                                   double *pressure_altitude_from_pressure_ft,
                                                   ptrdiff_t pressure_altitude_from_pressure_ft_stride,
                                                   int32_t *status);

/**
 * Geopotential altitude, in which the standard atmosphere is laid out, from geometric altitude.
 *
 * `r h/(r + h)` with r = 6 356 766 m.
 *
 * @param geometric_altitude_ft height above mean sea level as a length, -16 500 to 400 000
 * @param[out] geopotential_altitude_ft the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding, in the gravity of the standard atmosphere; real gravity changes with latitude by up to 0.3
 * percent.
 * Degenerate cases: Zero gives zero.
 * Errors: A value outside its range.
 * Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
 *
 * Example: lubber_geopotential_altitude_ft(60000.0, &value) gives 59827.9
 */
int32_t lubber_geopotential_altitude_ft(double geometric_altitude_ft, double *geopotential_altitude_ft);

/**
 * `lubber_geopotential_altitude_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_geopotential_altitude_ft_n(size_t count,
                                         const double *geometric_altitude_ft,
                                         ptrdiff_t geometric_altitude_ft_stride,
                                         double *geopotential_altitude_ft,
                                         ptrdiff_t geopotential_altitude_ft_stride,
                                         int32_t *status);

/**
 * Geometric altitude from geopotential altitude: the inverse of `lubber_geopotential_altitude_ft`.
 *
 * `r H/(r - H)` with r = 6 356 766 m.
 *
 * @param geopotential_altitude_ft altitude in units of work against standard gravity, -16 513.1 to 392 472.6
 * @param[out] geometric_altitude_ft the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding, in the gravity of the standard atmosphere; real gravity changes with latitude by up to 0.3
 * percent.
 * Degenerate cases: Zero gives zero.
 * Errors: A value outside its range.
 * Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
 *
 * Example: lubber_geometric_altitude_ft(60000.0, &value) gives 60173.1
 */
int32_t lubber_geometric_altitude_ft(double geopotential_altitude_ft, double *geometric_altitude_ft);

/**
 * `lubber_geometric_altitude_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_geometric_altitude_ft_n(size_t count,
                                      const double *geopotential_altitude_ft,
                                      ptrdiff_t geopotential_altitude_ft_stride,
                                      double *geometric_altitude_ft,
                                      ptrdiff_t geometric_altitude_ft_stride,
                                      int32_t *status);

/**
 * True airspeed from calibrated airspeed, compressible.
 *
 * The impact pressure `q` of the calibrated airspeed at standard sea level, over the static pressure `p`,
 * gives the Mach number by `q/p = (1 + 0.2 M^2)^3.5 - 1`, above Mach 1 by Rayleigh's pitot formula; times the
 * speed of sound.
 *
 * @param cas_kt calibrated airspeed, 0 to 5000
 * @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
 * @param isa_deviation_k warmer than standard by this, -150 to 150
 * @param[out] tas_from_cas_kt the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding (1e-14 of the result, as much again between arrays and single calls), for air of constant heat ratio: good to about Mach 5.
 * Degenerate cases: Zero gives zero.
 * Errors: A value outside its range, or a result beyond 5000 kt or Mach 10.
 * Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
 * for the pitot pressure above Mach 1.
 *
 * Example: lubber_tas_from_cas_kt(280.0, 35000.0, 0.0, &value) gives 473.44
 */
int32_t lubber_tas_from_cas_kt(double cas_kt,
                               double pressure_altitude_ft,
                               double isa_deviation_k,
                               double *tas_from_cas_kt);

/**
 * `lubber_tas_from_cas_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_tas_from_cas_kt_n(size_t count,
                                const double *cas_kt,
                                ptrdiff_t cas_kt_stride,
                                const double *pressure_altitude_ft,
                                ptrdiff_t pressure_altitude_ft_stride,
                                const double *isa_deviation_k,
                                ptrdiff_t isa_deviation_k_stride,
                                double *tas_from_cas_kt,
                                ptrdiff_t tas_from_cas_kt_stride,
                                int32_t *status);

/**
 * Calibrated airspeed from true airspeed, compressible: the inverse of `lubber_tas_from_cas_kt`.
 *
 * The impact pressure at Mach `V/a` is what the calibrated airspeed is read from, as if at standard sea level.
 *
 * @param tas_kt true airspeed, 0 to 5000
 * @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
 * @param isa_deviation_k warmer than standard by this, -150 to 150
 * @param[out] cas_from_tas_kt the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding (1e-14 of the result, as much again between arrays and single calls), for air of constant heat ratio: good to about Mach 5.
 * Degenerate cases: Zero gives zero.
 * Errors: A value outside its range, or a result beyond 5000 kt or Mach 10.
 * Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
 * for the pitot pressure above Mach 1.
 *
 * Example: lubber_cas_from_tas_kt(450.0, 35000.0, 0.0, &value) gives 264.68
 */
int32_t lubber_cas_from_tas_kt(double tas_kt,
                               double pressure_altitude_ft,
                               double isa_deviation_k,
                               double *cas_from_tas_kt);

/**
 * `lubber_cas_from_tas_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_cas_from_tas_kt_n(size_t count,
                                const double *tas_kt,
                                ptrdiff_t tas_kt_stride,
                                const double *pressure_altitude_ft,
                                ptrdiff_t pressure_altitude_ft_stride,
                                const double *isa_deviation_k,
                                ptrdiff_t isa_deviation_k_stride,
                                double *cas_from_tas_kt,
                                ptrdiff_t cas_from_tas_kt_stride,
                                int32_t *status);

/**
 * The altitude that a perfect altimeter shows with its setting.
 *
 * Pressure altitude less the pressure altitude of the setting: the setting turns the scale of the standard
 * atmosphere as a whole.
 *
 * @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
 * @param altimeter_setting_hpa what the altimeter is set to, 400 to 1200
 * @param[out] indicated_altitude_ft the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: With 1013.25 hPa it is the pressure altitude; with the pressure itself, zero.
 * Errors: A value outside its range.
 * Source: The construction of the instrument; ICAO Doc 7488/3 (3rd edition 1993) for the scale.
 *
 * Example: lubber_indicated_altitude_ft(5000.0, 1000.0, &value) gives 4636.2
 */
int32_t lubber_indicated_altitude_ft(double pressure_altitude_ft,
                                     double altimeter_setting_hpa,
                                     double *indicated_altitude_ft);

/**
 * `lubber_indicated_altitude_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_indicated_altitude_ft_n(size_t count,
                                      const double *pressure_altitude_ft,
                                      ptrdiff_t pressure_altitude_ft_stride,
                                      const double *altimeter_setting_hpa,
                                      ptrdiff_t altimeter_setting_hpa_stride,
                                      double *indicated_altitude_ft,
                                      ptrdiff_t indicated_altitude_ft_stride,
                                      int32_t *status);

/**
 * Pressure altitude from what an altimeter shows with its setting: the inverse of `lubber_indicated_altitude_ft`.
 *
 * Indicated altitude plus the pressure altitude of the setting.
 *
 * @param indicated_altitude_ft altitude shown, -50 000 to 300 000
 * @param altimeter_setting_hpa what the altimeter is set to, 400 to 1200
 * @param[out] pressure_altitude_ft the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: With 1013.25 hPa it is the indicated altitude.
 * Errors: A value outside its range, or a pressure altitude outside -5 to 80 km.
 * Source: The construction of the instrument; ICAO Doc 7488/3 (3rd edition 1993) for the scale.
 *
 * Example: lubber_pressure_altitude_ft(5000.0, 1000.0, &value) gives 5363.8
 */
int32_t lubber_pressure_altitude_ft(double indicated_altitude_ft,
                                    double altimeter_setting_hpa,
                                    double *pressure_altitude_ft);

/**
 * `lubber_pressure_altitude_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_pressure_altitude_ft_n(size_t count,
                                     const double *indicated_altitude_ft,
                                     ptrdiff_t indicated_altitude_ft_stride,
                                     const double *altimeter_setting_hpa,
                                     ptrdiff_t altimeter_setting_hpa_stride,
                                     double *pressure_altitude_ft,
                                     ptrdiff_t pressure_altitude_ft_stride,
                                     int32_t *status);

/**
 * Pressure altitude by the rule of 1000 ft for each inch of mercury below 29.92.
 *
 * `indicated altitude + 1000 (29.92 - setting in inches)`, an inch of mercury being 33.86389 hPa.
 * `lubber_pressure_altitude_ft` is exact.
 *
 * @param indicated_altitude_ft altitude shown, -50 000 to 300 000
 * @param altimeter_setting_hpa what the altimeter is set to, 400 to 1200
 * @param[out] pressure_altitude_rule_ft the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: An inch is 924 ft at sea level, so the rule is 8 percent of the correction too much.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range, or a pressure altitude outside -5 to 80 km.
 * Source: CNATRA P-203, Student Guide for Preflight Navigation.
 *
 * Example: lubber_pressure_altitude_rule_ft(5000.0, 1000.0, &value) gives 5390.0
 */
int32_t lubber_pressure_altitude_rule_ft(double indicated_altitude_ft,
                                         double altimeter_setting_hpa,
                                         double *pressure_altitude_rule_ft);

/**
 * `lubber_pressure_altitude_rule_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_pressure_altitude_rule_ft_n(size_t count,
                                          const double *indicated_altitude_ft,
                                          ptrdiff_t indicated_altitude_ft_stride,
                                          const double *altimeter_setting_hpa,
                                          ptrdiff_t altimeter_setting_hpa_stride,
                                          double *pressure_altitude_rule_ft,
                                          ptrdiff_t pressure_altitude_rule_ft_stride,
                                          int32_t *status);

/**
 * The altimeter setting of a station, QNH: with it an altimeter at the station shows the elevation.
 *
 * The standard pressure at the station's pressure altitude less its elevation.
 *
 * @param station_pressure_hpa pressure at the station, its QFE, above 0 to 2000
 * @param elevation_ft elevation of the station, -16 500 to 60 000
 * @param[out] altimeter_setting_hpa the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding. A station reports it rounded down to a whole hectopascal, which is 27 ft.
 * Degenerate cases: At no elevation it is the pressure.
 * Errors: A value outside its range, or a setting outside 400 to 1200 hPa.
 * Source: The definition of QNH, ICAO Annex 3 and Doc 8896 (from memory). `lubber_altimeter_setting_smithsonian_hpa` is the
 * American one.
 *
 * Example: lubber_altimeter_setting_hpa(832.0, 5430.0, &value) gives 1016.08
 */
int32_t lubber_altimeter_setting_hpa(double station_pressure_hpa,
                                     double elevation_ft,
                                     double *altimeter_setting_hpa);

/**
 * `lubber_altimeter_setting_hpa` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_altimeter_setting_hpa_n(size_t count,
                                      const double *station_pressure_hpa,
                                      ptrdiff_t station_pressure_hpa_stride,
                                      const double *elevation_ft,
                                      ptrdiff_t elevation_ft_stride,
                                      double *altimeter_setting_hpa,
                                      ptrdiff_t altimeter_setting_hpa_stride,
                                      int32_t *status);

/**
 * The altimeter setting of a station by the American formula, for a cockpit about 10 ft above it.
 *
 * `(p - 0.3) (1 + 1013.25^n 0.0065/288 h/(p - 0.3)^n)^(1/n)` with n = 0.190284, p in hectopascals, h in
 * metres.
 *
 * @param station_pressure_hpa pressure at the station, its QFE, above 0 to 2000
 * @param elevation_ft elevation of the station, -16 500 to 60 000
 * @param[out] altimeter_setting_smithsonian_hpa the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As published; 0.3 to 0.4 hPa less than `lubber_altimeter_setting_hpa`, which is the height of the cockpit.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range, or a setting outside 400 to 1200 hPa.
 * Source: Smithsonian Meteorological Tables, 6th edition 1951, p. 269, read in a quotation.
 *
 * Example: lubber_altimeter_setting_smithsonian_hpa(832.0, 5430.0, &value) gives 1015.81
 */
int32_t lubber_altimeter_setting_smithsonian_hpa(double station_pressure_hpa,
                                                 double elevation_ft,
                                                 double *altimeter_setting_smithsonian_hpa);

/**
 * `lubber_altimeter_setting_smithsonian_hpa` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_altimeter_setting_smithsonian_hpa_n(size_t count,
                                                  const double *station_pressure_hpa,
                                                  ptrdiff_t station_pressure_hpa_stride,
                                                  const double *elevation_ft,
                                                  ptrdiff_t elevation_ft_stride,
                                                  double *altimeter_setting_smithsonian_hpa,
                                                  ptrdiff_t altimeter_setting_smithsonian_hpa_stride,
                                                  int32_t *status);

/**
 * The pressure at a station, its QFE, from its altimeter setting: the inverse of `lubber_altimeter_setting_hpa`.
 *
 * The standard pressure at the elevation plus the pressure altitude of the setting.
 *
 * @param altimeter_setting_hpa what the altimeter is set to, 400 to 1200
 * @param elevation_ft elevation of the station, -16 500 to 60 000
 * @param[out] station_pressure_hpa the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: At no elevation it is the setting.
 * Errors: A value outside its range, or a pressure outside 0 to 2000 hPa.
 * Source: As `lubber_altimeter_setting_hpa`.
 *
 * Example: lubber_station_pressure_hpa(1013.25, 5430.0, &value) gives 829.59
 */
int32_t lubber_station_pressure_hpa(double altimeter_setting_hpa, double elevation_ft, double *station_pressure_hpa);

/**
 * `lubber_station_pressure_hpa` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_station_pressure_hpa_n(size_t count,
                                     const double *altimeter_setting_hpa,
                                     ptrdiff_t altimeter_setting_hpa_stride,
                                     const double *elevation_ft,
                                     ptrdiff_t elevation_ft_stride,
                                     double *station_pressure_hpa,
                                     ptrdiff_t station_pressure_hpa_stride,
                                     int32_t *status);

/**
 * Where on a radial to begin the turn onto a DME arc, in wind and with roll.
 *
 * The end of the turn lies on the arc with the track along it; the bearing of the end is the one for which the beginning lies on the
 * radial. In still air with an instant roll the distance is `sqrt(D^2 + 2 D r)` inbound and `sqrt(D^2 - 2 D r)` outbound.
 *
 * @param radial_deg the radial, any finite number
 * @param flown whether the radial is flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
 * @param arc_radius_nm ground distance of the arc from the station, above 0 to 5000
 * @param sense which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param wind_from_deg where the wind blows from, against the radial's north
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param bank_limit_deg greatest bank, above 0 below 90
 * @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
 * @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
 * @param[out] radial_at_roll_in_deg Radial at which roll-in begins; may be NULL
 * @param[out] distance_at_roll_in_nm Ground distance from the station at which roll-in begins; may be NULL
 * @param[out] radial_at_roll_out_deg Radial at which the wings are level again; may be NULL
 * @param[out] distance_at_roll_out_nm Ground distance from the station at which the wings are level again; may be NULL
 * @param[out] angle_at_station_deg Angle at the station between the two, positive in the sense of the arc: the lead radials when leaving the arc; may be NULL
 * @param[out] heading_change_deg Change of heading, right positive; may be NULL
 * @param[out] duration_s From roll-in to wings level; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error in the plane; 2e-4 NM on the ellipsoid within 20 NM of the station.
 * Degenerate cases: An arc counts along the ground; `ground_distance_nm` turns the DME reading that is flown into it.
 * Errors: A value outside its range, a turn that does not fit (outbound in still air: an arc below twice the turn radius), a wind that the airspeed cannot hold.
 * Source: Derived from the geometry of tangent curves and the equilibrium of a coordinated turn.
 *
 * Example: lubber_arc_entry(300.0, LUBBER_RADIAL_FLOWN_INBOUND, 12.0, LUBBER_ARC_SENSE_CLOCKWISE, 210.0, 250.0, 40.0, 25.0, 3.0, 5.0, NULL, &value, NULL, NULL, NULL, NULL, NULL) gives 13.92
 */
int32_t lubber_arc_entry(double radial_deg,
                         int32_t flown,
                         double arc_radius_nm,
                         int32_t sense,
                         double true_airspeed_kt,
                         double wind_from_deg,
                         double wind_speed_kt,
                         double bank_limit_deg,
                         double turn_rate_limit_deg_per_s,
                         double roll_rate_deg_per_s,
                         double *radial_at_roll_in_deg,
                         double *distance_at_roll_in_nm,
                         double *radial_at_roll_out_deg,
                         double *distance_at_roll_out_nm,
                         double *angle_at_station_deg,
                         double *heading_change_deg,
                         double *duration_s);

/**
 * `lubber_arc_entry` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `flown` is one code for all points: whether the radial is flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
 *
 * `sense` is one code for all points: which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_arc_entry_n(size_t count,
                          const double *radial_deg,
                          ptrdiff_t radial_deg_stride,
                          int32_t flown,
                          const double *arc_radius_nm,
                          ptrdiff_t arc_radius_nm_stride,
                          int32_t sense,
                          const double *true_airspeed_kt,
                          ptrdiff_t true_airspeed_kt_stride,
                          const double *wind_from_deg,
                          ptrdiff_t wind_from_deg_stride,
                          const double *wind_speed_kt,
                          ptrdiff_t wind_speed_kt_stride,
                          const double *bank_limit_deg,
                          ptrdiff_t bank_limit_deg_stride,
                          const double *turn_rate_limit_deg_per_s,
                          ptrdiff_t turn_rate_limit_deg_per_s_stride,
                          const double *roll_rate_deg_per_s,
                          ptrdiff_t roll_rate_deg_per_s_stride,
                          double *radial_at_roll_in_deg,
                          ptrdiff_t radial_at_roll_in_deg_stride,
                          double *distance_at_roll_in_nm,
                          ptrdiff_t distance_at_roll_in_nm_stride,
                          double *radial_at_roll_out_deg,
                          ptrdiff_t radial_at_roll_out_deg_stride,
                          double *distance_at_roll_out_nm,
                          ptrdiff_t distance_at_roll_out_nm_stride,
                          double *angle_at_station_deg,
                          ptrdiff_t angle_at_station_deg_stride,
                          double *heading_change_deg,
                          ptrdiff_t heading_change_deg_stride,
                          double *duration_s,
                          ptrdiff_t duration_s_stride,
                          int32_t *status);

/**
 * Where on a DME arc to begin the turn onto a radial, in wind and with roll: the lead radial.
 *
 * The turn begins on the arc along it and ends on the radial. In still air with an instant roll the lead is
 * `asin(r / (D - r))` toward the station and `asin(r / (D + r))` away from it.
 *
 * @param radial_deg the radial, any finite number
 * @param flown whether the radial is flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
 * @param arc_radius_nm ground distance of the arc from the station, above 0 to 5000
 * @param sense which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param wind_from_deg where the wind blows from, against the radial's north
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param bank_limit_deg greatest bank, above 0 below 90
 * @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
 * @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
 * @param[out] radial_at_roll_in_deg Radial at which roll-in begins; may be NULL
 * @param[out] distance_at_roll_in_nm Ground distance from the station at which roll-in begins; may be NULL
 * @param[out] radial_at_roll_out_deg Radial at which the wings are level again; may be NULL
 * @param[out] distance_at_roll_out_nm Ground distance from the station at which the wings are level again; may be NULL
 * @param[out] angle_at_station_deg Angle at the station between the two, positive in the sense of the arc: the lead radials when leaving the arc; may be NULL
 * @param[out] heading_change_deg Change of heading, right positive; may be NULL
 * @param[out] duration_s From roll-in to wings level; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error in the plane; 2e-4 NM on the ellipsoid within 20 NM of the station.
 * Degenerate cases: An arc counts along the ground; `ground_distance_nm` turns the DME reading that is flown into it.
 * Errors: A value outside its range, a turn that does not fit (toward the station in still air: an arc below twice the turn radius), a wind that the airspeed cannot hold.
 * Source: Derived from the geometry of tangent curves and the equilibrium of a coordinated turn.
 *
 * Example: lubber_arc_exit(300.0, LUBBER_RADIAL_FLOWN_INBOUND, 12.0, LUBBER_ARC_SENSE_CLOCKWISE, 210.0, 250.0, 40.0, 25.0, 3.0, 5.0, NULL, NULL, NULL, NULL, &value, NULL, NULL) gives 11.65
 */
int32_t lubber_arc_exit(double radial_deg,
                        int32_t flown,
                        double arc_radius_nm,
                        int32_t sense,
                        double true_airspeed_kt,
                        double wind_from_deg,
                        double wind_speed_kt,
                        double bank_limit_deg,
                        double turn_rate_limit_deg_per_s,
                        double roll_rate_deg_per_s,
                        double *radial_at_roll_in_deg,
                        double *distance_at_roll_in_nm,
                        double *radial_at_roll_out_deg,
                        double *distance_at_roll_out_nm,
                        double *angle_at_station_deg,
                        double *heading_change_deg,
                        double *duration_s);

/**
 * `lubber_arc_exit` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `flown` is one code for all points: whether the radial is flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
 *
 * `sense` is one code for all points: which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_arc_exit_n(size_t count,
                         const double *radial_deg,
                         ptrdiff_t radial_deg_stride,
                         int32_t flown,
                         const double *arc_radius_nm,
                         ptrdiff_t arc_radius_nm_stride,
                         int32_t sense,
                         const double *true_airspeed_kt,
                         ptrdiff_t true_airspeed_kt_stride,
                         const double *wind_from_deg,
                         ptrdiff_t wind_from_deg_stride,
                         const double *wind_speed_kt,
                         ptrdiff_t wind_speed_kt_stride,
                         const double *bank_limit_deg,
                         ptrdiff_t bank_limit_deg_stride,
                         const double *turn_rate_limit_deg_per_s,
                         ptrdiff_t turn_rate_limit_deg_per_s_stride,
                         const double *roll_rate_deg_per_s,
                         ptrdiff_t roll_rate_deg_per_s_stride,
                         double *radial_at_roll_in_deg,
                         ptrdiff_t radial_at_roll_in_deg_stride,
                         double *distance_at_roll_in_nm,
                         ptrdiff_t distance_at_roll_in_nm_stride,
                         double *radial_at_roll_out_deg,
                         ptrdiff_t radial_at_roll_out_deg_stride,
                         double *distance_at_roll_out_nm,
                         ptrdiff_t distance_at_roll_out_nm_stride,
                         double *angle_at_station_deg,
                         ptrdiff_t angle_at_station_deg_stride,
                         double *heading_change_deg,
                         ptrdiff_t heading_change_deg_stride,
                         double *duration_s,
                         ptrdiff_t duration_s_stride,
                         int32_t *status);

/**
 * The angle between outbound track and inbound course of a base turn, as published.
 *
 * `36 / T` up to 170 kt, `0.215 V / T` above, with T in minutes; SI: up to 315 km/h, `0.116 V / T` above.
 *
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param outbound_time_s time outbound, above 0 to 1 000 000
 * @param units in which units the formula is printed: LUBBER_DESIGN_UNITS_NON_SI, LUBBER_DESIGN_UNITS_SI
 * @param[out] design_base_turn_offset_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As published: within 2 percent of `base_turn_offset_exact_deg` for two minutes, 7 percent high at 250 kt for one.
 * Degenerate cases: At 170 kt the two formulas differ by 1.5 percent.
 * Errors: A value outside its range.
 * Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 4 Chapter 3, base turns.
 *
 * Example: lubber_design_base_turn_offset_deg(157.23, 120.0, LUBBER_DESIGN_UNITS_NON_SI, &value) gives 18.0
 */
int32_t lubber_design_base_turn_offset_deg(double true_airspeed_kt,
                                           double outbound_time_s,
                                           int32_t units,
                                           double *design_base_turn_offset_deg);

/**
 * `lubber_design_base_turn_offset_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `units` is one code for all points: in which units the formula is printed: LUBBER_DESIGN_UNITS_NON_SI, LUBBER_DESIGN_UNITS_SI
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_design_base_turn_offset_deg_n(size_t count,
                                            const double *true_airspeed_kt,
                                            ptrdiff_t true_airspeed_kt_stride,
                                            const double *outbound_time_s,
                                            ptrdiff_t outbound_time_s_stride,
                                            int32_t units,
                                            double *design_base_turn_offset_deg,
                                            ptrdiff_t design_base_turn_offset_deg_stride,
                                            int32_t *status);

/**
 * The angle of a base turn for which, in still air with an instant roll, the turn ends on the inbound course.
 *
 * `2 atan(r / L)`.
 *
 * @param turn_radius_nm radius of the turn, above 0 to 1000
 * @param outbound_leg_nm length of the outbound leg, 0 to 10 900
 * @param[out] base_turn_offset_exact_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error.
 * Degenerate cases: Without an outbound leg it is 180 degrees.
 * Errors: A value outside its range.
 * Source: Derived: a circle tangent to two lines that cross at the fix.
 *
 * Example: lubber_base_turn_offset_exact_deg(0.834, 5.241, &value) gives 18.08
 */
int32_t lubber_base_turn_offset_exact_deg(double turn_radius_nm,
                                          double outbound_leg_nm,
                                          double *base_turn_offset_exact_deg);

/**
 * `lubber_base_turn_offset_exact_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_base_turn_offset_exact_deg_n(size_t count,
                                           const double *turn_radius_nm,
                                           ptrdiff_t turn_radius_nm_stride,
                                           const double *outbound_leg_nm,
                                           ptrdiff_t outbound_leg_nm_stride,
                                           double *base_turn_offset_exact_deg,
                                           ptrdiff_t base_turn_offset_exact_deg_stride,
                                           int32_t *status);

/**
 * The base turn of a time outbound in a steady wind, exactly: the track and heading from which the turn ends on the inbound course.
 *
 * The turn runs with its roll between the wind-corrected headings; over the ground wind times duration is added. Its
 * end has no part across the inbound course.
 *
 * @param inbound_course_deg course flown to the fix, any finite number
 * @param turn_side which way the turn inbound goes: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
 * @param outbound_time_s time outbound, above 0 to 1 000 000
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param wind_from_deg where the wind blows from, against the same north
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param bank_limit_deg greatest bank, above 0 below 90
 * @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
 * @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
 * @param[out] track_deg Direction over the ground outbound; may be NULL
 * @param[out] heading_deg Heading that holds it; may be NULL
 * @param[out] offset_deg From the reciprocal of the inbound course to the outbound track, right positive; may be NULL
 * @param[out] outbound_time_s_out Time from the fix to the beginning of the turn; may be NULL
 * @param[out] heading_change_deg Heading to turn through, right positive; may be NULL
 * @param[out] established_nm Distance from the fix at which the wings are level on the inbound course; may be NULL
 * @param[out] duration_s Time from the fix until then; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: 1e-9 of its size in the plane of the fix. The aircraft is taken to be on the outbound track over the fix.
 * Degenerate cases: In calm air with an instant roll the angle is that of `base_turn_offset_exact_deg`.
 * Errors: A value outside its range, an inbound course that the airspeed cannot hold, a turn that ends past the fix whatever
 * the heading.
 * Source: Derived from the equilibrium of a coordinated turn and the triangle of velocities.
 *
 * Example: lubber_base_turn(100.0, LUBBER_HOLDING_SIDE_RIGHT, 120.0, 180.0, 40.0, 25.0, 25.0, 3.0, 5.0, NULL, &value, NULL, NULL, NULL, NULL, NULL) gives 271.7
 */
int32_t lubber_base_turn(double inbound_course_deg,
                         int32_t turn_side,
                         double outbound_time_s,
                         double true_airspeed_kt,
                         double wind_from_deg,
                         double wind_speed_kt,
                         double bank_limit_deg,
                         double turn_rate_limit_deg_per_s,
                         double roll_rate_deg_per_s,
                         double *track_deg,
                         double *heading_deg,
                         double *offset_deg,
                         double *outbound_time_s_out,
                         double *heading_change_deg,
                         double *established_nm,
                         double *duration_s);

/**
 * `lubber_base_turn` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `turn_side` is one code for all points: which way the turn inbound goes: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_base_turn_n(size_t count,
                          const double *inbound_course_deg,
                          ptrdiff_t inbound_course_deg_stride,
                          int32_t turn_side,
                          const double *outbound_time_s,
                          ptrdiff_t outbound_time_s_stride,
                          const double *true_airspeed_kt,
                          ptrdiff_t true_airspeed_kt_stride,
                          const double *wind_from_deg,
                          ptrdiff_t wind_from_deg_stride,
                          const double *wind_speed_kt,
                          ptrdiff_t wind_speed_kt_stride,
                          const double *bank_limit_deg,
                          ptrdiff_t bank_limit_deg_stride,
                          const double *turn_rate_limit_deg_per_s,
                          ptrdiff_t turn_rate_limit_deg_per_s_stride,
                          const double *roll_rate_deg_per_s,
                          ptrdiff_t roll_rate_deg_per_s_stride,
                          double *track_deg,
                          ptrdiff_t track_deg_stride,
                          double *heading_deg,
                          ptrdiff_t heading_deg_stride,
                          double *offset_deg,
                          ptrdiff_t offset_deg_stride,
                          double *outbound_time_s_out,
                          ptrdiff_t outbound_time_s_out_stride,
                          double *heading_change_deg,
                          ptrdiff_t heading_change_deg_stride,
                          double *established_nm,
                          ptrdiff_t established_nm_stride,
                          double *duration_s,
                          ptrdiff_t duration_s_stride,
                          int32_t *status);

/**
 * The base turn on a published outbound track in a steady wind, exactly: the heading, and the time after which the turn ends on the inbound course.
 *
 * As `base_turn`; for a given track the condition is linear in the time.
 *
 * @param inbound_course_deg course flown to the fix, any finite number
 * @param outbound_track_deg direction over the ground outbound, against the same north
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param wind_from_deg where the wind blows from, against the same north
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param bank_limit_deg greatest bank, above 0 below 90
 * @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
 * @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
 * @param[out] track_deg Direction over the ground outbound; may be NULL
 * @param[out] heading_deg Heading that holds it; may be NULL
 * @param[out] offset_deg From the reciprocal of the inbound course to the outbound track, right positive; may be NULL
 * @param[out] outbound_time_s Time from the fix to the beginning of the turn; may be NULL
 * @param[out] heading_change_deg Heading to turn through, right positive; may be NULL
 * @param[out] established_nm Distance from the fix at which the wings are level on the inbound course; may be NULL
 * @param[out] duration_s Time from the fix until then; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: 1e-9 of its size in the plane of the fix. The aircraft is taken to be on the outbound track over the fix.
 * Degenerate cases: The turn goes to the side of the inbound course.
 * Errors: A value outside its range, a track along the inbound course, a course that the airspeed cannot hold, a wind in
 * which the turn does not end on the course before the fix.
 * Source: Derived from the equilibrium of a coordinated turn and the triangle of velocities.
 *
 * Example: lubber_base_turn_on_track(100.0, 262.0, 180.0, 40.0, 25.0, 25.0, 3.0, 5.0, NULL, NULL, NULL, &value, NULL, NULL, NULL) gives 91.8
 */
int32_t lubber_base_turn_on_track(double inbound_course_deg,
                                  double outbound_track_deg,
                                  double true_airspeed_kt,
                                  double wind_from_deg,
                                  double wind_speed_kt,
                                  double bank_limit_deg,
                                  double turn_rate_limit_deg_per_s,
                                  double roll_rate_deg_per_s,
                                  double *track_deg,
                                  double *heading_deg,
                                  double *offset_deg,
                                  double *outbound_time_s,
                                  double *heading_change_deg,
                                  double *established_nm,
                                  double *duration_s);

/**
 * `lubber_base_turn_on_track` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_base_turn_on_track_n(size_t count,
                                   const double *inbound_course_deg,
                                   ptrdiff_t inbound_course_deg_stride,
                                   const double *outbound_track_deg,
                                   ptrdiff_t outbound_track_deg_stride,
                                   const double *true_airspeed_kt,
                                   ptrdiff_t true_airspeed_kt_stride,
                                   const double *wind_from_deg,
                                   ptrdiff_t wind_from_deg_stride,
                                   const double *wind_speed_kt,
                                   ptrdiff_t wind_speed_kt_stride,
                                   const double *bank_limit_deg,
                                   ptrdiff_t bank_limit_deg_stride,
                                   const double *turn_rate_limit_deg_per_s,
                                   ptrdiff_t turn_rate_limit_deg_per_s_stride,
                                   const double *roll_rate_deg_per_s,
                                   ptrdiff_t roll_rate_deg_per_s_stride,
                                   double *track_deg,
                                   ptrdiff_t track_deg_stride,
                                   double *heading_deg,
                                   ptrdiff_t heading_deg_stride,
                                   double *offset_deg,
                                   ptrdiff_t offset_deg_stride,
                                   double *outbound_time_s,
                                   ptrdiff_t outbound_time_s_stride,
                                   double *heading_change_deg,
                                   ptrdiff_t heading_change_deg_stride,
                                   double *established_nm,
                                   ptrdiff_t established_nm_stride,
                                   double *duration_s,
                                   ptrdiff_t duration_s_stride,
                                   int32_t *status);

/**
 * Where a course (a radial) meets a circle (a DME arc) on the WGS-84 ellipsoid: both points.
 *
 * The course is extended both ways; the arc is the geodesic circle about its centre.
 *
 * @param lat_deg latitude of a point of the course, -90 to 90
 * @param lon_deg longitude of that point, any finite number
 * @param course_deg true course there, any finite number
 * @param center_lat_deg latitude of the centre, -90 to 90
 * @param center_lon_deg longitude of the centre, any finite number
 * @param radius_nm radius of the circle, above 0 to 5000
 * @param[out] latitude1_deg Latitude of the point farther back along the course; may be NULL
 * @param[out] longitude1_deg Its longitude; may be NULL
 * @param[out] along1_nm Its distance along the course, negative behind its point; may be NULL
 * @param[out] latitude2_deg Latitude of the point farther on along the course; may be NULL
 * @param[out] longitude2_deg Its longitude; may be NULL
 * @param[out] along2_nm Its distance along the course, negative behind its point; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: A micrometre across; along, soft where the course only just cuts the circle.
 * Degenerate cases: A course that touches the circle gives its point twice; a miss below a millimetre counts as touching.
 * Errors: A value outside its range, or a course that misses the circle.
 * Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
 * Appendix 2 Attachment C.
 *
 * Example: lubber_course_arc_crossing(60.0, -10.0, 90.0, 60.0, -9.0, 12.0, NULL, NULL, &value, NULL, NULL, NULL) gives 18.131
 */
int32_t lubber_course_arc_crossing(double lat_deg,
                                   double lon_deg,
                                   double course_deg,
                                   double center_lat_deg,
                                   double center_lon_deg,
                                   double radius_nm,
                                   double *latitude1_deg,
                                   double *longitude1_deg,
                                   double *along1_nm,
                                   double *latitude2_deg,
                                   double *longitude2_deg,
                                   double *along2_nm);

/**
 * `lubber_course_arc_crossing` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_course_arc_crossing_n(size_t count,
                                    const double *lat_deg,
                                    ptrdiff_t lat_deg_stride,
                                    const double *lon_deg,
                                    ptrdiff_t lon_deg_stride,
                                    const double *course_deg,
                                    ptrdiff_t course_deg_stride,
                                    const double *center_lat_deg,
                                    ptrdiff_t center_lat_deg_stride,
                                    const double *center_lon_deg,
                                    ptrdiff_t center_lon_deg_stride,
                                    const double *radius_nm,
                                    ptrdiff_t radius_nm_stride,
                                    double *latitude1_deg,
                                    ptrdiff_t latitude1_deg_stride,
                                    double *longitude1_deg,
                                    ptrdiff_t longitude1_deg_stride,
                                    double *along1_nm,
                                    ptrdiff_t along1_nm_stride,
                                    double *latitude2_deg,
                                    ptrdiff_t latitude2_deg_stride,
                                    double *longitude2_deg,
                                    ptrdiff_t longitude2_deg_stride,
                                    double *along2_nm,
                                    ptrdiff_t along2_nm_stride,
                                    int32_t *status);

/**
 * Where two circles (two DME arcs) meet on the WGS-84 ellipsoid: both points.
 *
 * Geodesic circles about their centres; the points lie left and right of the line from the first centre to the second.
 *
 * @param center1_lat_deg latitude of the first centre, -90 to 90
 * @param center1_lon_deg longitude of the first centre, any finite number
 * @param radius1_nm radius of the first circle, above 0 to 5000
 * @param center2_lat_deg latitude of the second centre, -90 to 90
 * @param center2_lon_deg longitude of the second centre, any finite number
 * @param radius2_nm radius of the second circle, above 0 to 5000
 * @param[out] latitude1_deg Latitude of the point left of the line from the first centre to the second; may be NULL
 * @param[out] longitude1_deg Its longitude; may be NULL
 * @param[out] latitude2_deg Latitude of the point right of that line; may be NULL
 * @param[out] longitude2_deg Its longitude; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: A micrometre across the circles; along, soft where they only just meet.
 * Degenerate cases: Circles that touch give their point twice; a miss below a millimetre counts as touching.
 * Errors: A value outside its range, circles that do not meet, or circles about one centre.
 * Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
 * Appendix 2 Attachment C.
 *
 * Example: lubber_arc_arc_crossing(0.0, 0.0, 150.0, 0.0, -4.991, 150.0, NULL, &value, NULL, NULL) gives -2.4955
 */
int32_t lubber_arc_arc_crossing(double center1_lat_deg,
                                double center1_lon_deg,
                                double radius1_nm,
                                double center2_lat_deg,
                                double center2_lon_deg,
                                double radius2_nm,
                                double *latitude1_deg,
                                double *longitude1_deg,
                                double *latitude2_deg,
                                double *longitude2_deg);

/**
 * `lubber_arc_arc_crossing` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_arc_arc_crossing_n(size_t count,
                                 const double *center1_lat_deg,
                                 ptrdiff_t center1_lat_deg_stride,
                                 const double *center1_lon_deg,
                                 ptrdiff_t center1_lon_deg_stride,
                                 const double *radius1_nm,
                                 ptrdiff_t radius1_nm_stride,
                                 const double *center2_lat_deg,
                                 ptrdiff_t center2_lat_deg_stride,
                                 const double *center2_lon_deg,
                                 ptrdiff_t center2_lon_deg_stride,
                                 const double *radius2_nm,
                                 ptrdiff_t radius2_nm_stride,
                                 double *latitude1_deg,
                                 ptrdiff_t latitude1_deg_stride,
                                 double *longitude1_deg,
                                 ptrdiff_t longitude1_deg_stride,
                                 double *latitude2_deg,
                                 ptrdiff_t latitude2_deg_stride,
                                 double *longitude2_deg,
                                 ptrdiff_t longitude2_deg_stride,
                                 int32_t *status);

/**
 * The tangents from a point to a circle (a DME arc) on the WGS-84 ellipsoid: both contacts.
 *
 * At the contact the geodesic from the point stands square to the radius.
 *
 * @param point_lat_deg latitude of the point, -90 to 90
 * @param point_lon_deg longitude of the point, any finite number
 * @param center_lat_deg latitude of the centre, -90 to 90
 * @param center_lon_deg longitude of the centre, any finite number
 * @param radius_nm radius of the circle, above 0 to 5000
 * @param[out] latitude1_deg Latitude of the contact left of the line to the centre; may be NULL
 * @param[out] longitude1_deg Its longitude; may be NULL
 * @param[out] course1_deg True course of the tangent there, onward, 0 to 360; may be NULL
 * @param[out] latitude2_deg Latitude of the contact right of the line to the centre; may be NULL
 * @param[out] longitude2_deg Its longitude; may be NULL
 * @param[out] course2_deg True course of the tangent there, onward, 0 to 360; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: A micrometre off the circle; the contact is soft along it.
 * Degenerate cases: A point on the circle is its own contact, twice.
 * Errors: A value outside its range, a point inside the circle, or one whose antipode is inside.
 * Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
 * Appendix 2 Attachment C.
 *
 * Example: lubber_arc_tangents(40.0766111111, -67.2096388889, 40.1734722222, -70.2126666667, 100.0, &value, NULL, NULL, NULL, NULL, NULL) gives 38.9808
 */
int32_t lubber_arc_tangents(double point_lat_deg,
                            double point_lon_deg,
                            double center_lat_deg,
                            double center_lon_deg,
                            double radius_nm,
                            double *latitude1_deg,
                            double *longitude1_deg,
                            double *course1_deg,
                            double *latitude2_deg,
                            double *longitude2_deg,
                            double *course2_deg);

/**
 * `lubber_arc_tangents` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_arc_tangents_n(size_t count,
                             const double *point_lat_deg,
                             ptrdiff_t point_lat_deg_stride,
                             const double *point_lon_deg,
                             ptrdiff_t point_lon_deg_stride,
                             const double *center_lat_deg,
                             ptrdiff_t center_lat_deg_stride,
                             const double *center_lon_deg,
                             ptrdiff_t center_lon_deg_stride,
                             const double *radius_nm,
                             ptrdiff_t radius_nm_stride,
                             double *latitude1_deg,
                             ptrdiff_t latitude1_deg_stride,
                             double *longitude1_deg,
                             ptrdiff_t longitude1_deg_stride,
                             double *course1_deg,
                             ptrdiff_t course1_deg_stride,
                             double *latitude2_deg,
                             ptrdiff_t latitude2_deg_stride,
                             double *longitude2_deg,
                             ptrdiff_t longitude2_deg_stride,
                             double *course2_deg,
                             ptrdiff_t course2_deg_stride,
                             int32_t *status);

/**
 * Length of an arc of a circle on the WGS-84 ellipsoid.
 *
 * The integral of the reduced length of the geodesics from the centre over their azimuth; in the plane `r sweep`.
 *
 * @param center_lat_deg latitude of the centre, -90 to 90
 * @param center_lon_deg longitude of the centre, any finite number
 * @param radius_nm radius of the circle, above 0 to 5000
 * @param start_bearing_deg bearing of the arc's beginning from the centre, any finite number
 * @param sweep_deg angle of the arc at the centre, clockwise positive, -360 to 360
 * @param[out] arc_length_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: A micrometre.
 * Degenerate cases: A sweep of zero has no length.
 * Errors: A value outside its range.
 * Source: C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013), section 3; derived. Checked against FAA Order 8260.54A (2007).
 *
 * Example: lubber_arc_length_nm(38.2236388889, -77.9065, 5.0, 91.0, 135.0, &value) gives 11.780968
 */
int32_t lubber_arc_length_nm(double center_lat_deg,
                             double center_lon_deg,
                             double radius_nm,
                             double start_bearing_deg,
                             double sweep_deg,
                             double *arc_length_nm);

/**
 * `lubber_arc_length_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_arc_length_nm_n(size_t count,
                              const double *center_lat_deg,
                              ptrdiff_t center_lat_deg_stride,
                              const double *center_lon_deg,
                              ptrdiff_t center_lon_deg_stride,
                              const double *radius_nm,
                              ptrdiff_t radius_nm_stride,
                              const double *start_bearing_deg,
                              ptrdiff_t start_bearing_deg_stride,
                              const double *sweep_deg,
                              ptrdiff_t sweep_deg_stride,
                              double *arc_length_nm,
                              ptrdiff_t arc_length_nm_stride,
                              int32_t *status);

/**
 * Whether a point lies on an arc of a circle: 1 if it does, 0 if not.
 *
 * Within the tolerance off the circle, and between the bearings of the arc's ends, which belong to it.
 *
 * @param center_lat_deg latitude of the centre, -90 to 90
 * @param center_lon_deg longitude of the centre, any finite number
 * @param radius_nm radius of the circle, above 0 to 5000
 * @param start_bearing_deg bearing of the arc's beginning from the centre, any finite number
 * @param end_bearing_deg bearing of the arc's end from the centre, any finite number
 * @param sense which way round the arc goes: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
 * @param point_lat_deg latitude of the point, -90 to 90
 * @param point_lon_deg longitude of the point, any finite number
 * @param tolerance_nm how far off the circle still counts, 0 to 10 900
 * @param[out] on_arc the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: 15 nanometres off the circle.
 * Degenerate cases: Equal bearings are the whole circle.
 * Errors: A value outside its range.
 * Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
 * Appendix 2 Attachment C.
 *
 * Example: lubber_on_arc(0.0, 0.0, 60.0, 0.0, 180.0, LUBBER_ARC_SENSE_CLOCKWISE, 0.0, 0.998204, 0.001, &value) gives 1
 */
int32_t lubber_on_arc(double center_lat_deg,
                      double center_lon_deg,
                      double radius_nm,
                      double start_bearing_deg,
                      double end_bearing_deg,
                      int32_t sense,
                      double point_lat_deg,
                      double point_lon_deg,
                      double tolerance_nm,
                      double *on_arc);

/**
 * `lubber_on_arc` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `sense` is one code for all points: which way round the arc goes: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_on_arc_n(size_t count,
                       const double *center_lat_deg,
                       ptrdiff_t center_lat_deg_stride,
                       const double *center_lon_deg,
                       ptrdiff_t center_lon_deg_stride,
                       const double *radius_nm,
                       ptrdiff_t radius_nm_stride,
                       const double *start_bearing_deg,
                       ptrdiff_t start_bearing_deg_stride,
                       const double *end_bearing_deg,
                       ptrdiff_t end_bearing_deg_stride,
                       int32_t sense,
                       const double *point_lat_deg,
                       ptrdiff_t point_lat_deg_stride,
                       const double *point_lon_deg,
                       ptrdiff_t point_lon_deg_stride,
                       const double *tolerance_nm,
                       ptrdiff_t tolerance_nm_stride,
                       double *on_arc,
                       ptrdiff_t on_arc_stride,
                       int32_t *status);

/**
 * How far a circle reaches along a course on the WGS-84 ellipsoid: its points whose tangents stand square to the course, and the points abeam.
 *
 * Farthest on along the course, then farthest back.
 *
 * @param lat_deg latitude of a point of the course, -90 to 90
 * @param lon_deg longitude of that point, any finite number
 * @param course_deg true course there, any finite number
 * @param center_lat_deg latitude of the centre, -90 to 90
 * @param center_lon_deg longitude of the centre, any finite number
 * @param radius_nm radius of the circle, above 0 to 5000
 * @param[out] latitude1_deg Latitude of the point of the circle farthest on along the course; may be NULL
 * @param[out] longitude1_deg Its longitude; may be NULL
 * @param[out] abeam1_latitude_deg Latitude of the point of the course abeam of it; may be NULL
 * @param[out] abeam1_longitude_deg Its longitude; may be NULL
 * @param[out] latitude2_deg Latitude of the point of the circle farthest back along the course; may be NULL
 * @param[out] longitude2_deg Its longitude; may be NULL
 * @param[out] abeam2_latitude_deg Latitude of the point of the course abeam of it; may be NULL
 * @param[out] abeam2_longitude_deg Its longitude; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: A micrometre off the circle; soft along it.
 * Degenerate cases: The course may miss, touch or cut the circle.
 * Errors: A value outside its range.
 * Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
 * Appendix 2 Attachment C.
 *
 * Example: lubber_arc_extent(40.0766111111, -65.2113055556, 350.0, 40.1734722222, -70.2126666667, 50.0, &value, NULL, NULL, NULL, NULL, NULL, NULL, NULL) gives 40.9847
 */
int32_t lubber_arc_extent(double lat_deg,
                          double lon_deg,
                          double course_deg,
                          double center_lat_deg,
                          double center_lon_deg,
                          double radius_nm,
                          double *latitude1_deg,
                          double *longitude1_deg,
                          double *abeam1_latitude_deg,
                          double *abeam1_longitude_deg,
                          double *latitude2_deg,
                          double *longitude2_deg,
                          double *abeam2_latitude_deg,
                          double *abeam2_longitude_deg);

/**
 * `lubber_arc_extent` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_arc_extent_n(size_t count,
                           const double *lat_deg,
                           ptrdiff_t lat_deg_stride,
                           const double *lon_deg,
                           ptrdiff_t lon_deg_stride,
                           const double *course_deg,
                           ptrdiff_t course_deg_stride,
                           const double *center_lat_deg,
                           ptrdiff_t center_lat_deg_stride,
                           const double *center_lon_deg,
                           ptrdiff_t center_lon_deg_stride,
                           const double *radius_nm,
                           ptrdiff_t radius_nm_stride,
                           double *latitude1_deg,
                           ptrdiff_t latitude1_deg_stride,
                           double *longitude1_deg,
                           ptrdiff_t longitude1_deg_stride,
                           double *abeam1_latitude_deg,
                           ptrdiff_t abeam1_latitude_deg_stride,
                           double *abeam1_longitude_deg,
                           ptrdiff_t abeam1_longitude_deg_stride,
                           double *latitude2_deg,
                           ptrdiff_t latitude2_deg_stride,
                           double *longitude2_deg,
                           ptrdiff_t longitude2_deg_stride,
                           double *abeam2_latitude_deg,
                           ptrdiff_t abeam2_latitude_deg_stride,
                           double *abeam2_longitude_deg,
                           ptrdiff_t abeam2_longitude_deg_stride,
                           int32_t *status);

/**
 * Cold-temperature correction by ICAO's formula, to add to an altitude on the procedure.
 *
 * `H (15 - t0)/(273 + t0 - 0.5 L (H + E))` with height `H`, elevation `E` of the source, L = 0.00198 degC/ft
 * and `t0 = t + L E`. Offered beside it: `lubber_cold_temperature_correction_tabulated_ft`,
 * `lubber_cold_temperature_correction_rule_ft` and, exact, `lubber_cold_temperature_correction_exact_ft`.
 *
 * @param height_ft charted height above the altimeter setting source, 0 to 20 000
 * @param temperature_degc temperature at the altimeter setting source, -200 to 200
 * @param elevation_ft elevation of the altimeter setting source, -16 500 to 60 000
 * @param[out] cold_temperature_correction_ft the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: The document gives 5 percent, for sources to 10 000 ft and heights to 5000 ft.
 * Degenerate cases: Warmer than standard it is negative, which nobody subtracts in practice. No height, no correction.
 * Errors: A value outside its range.
 * Source: ICAO Doc 8168 (PANS-OPS) volume I, Part III Section 1 Chapter 4, from memory; it reproduces ICAO's table.
 *
 * Example: lubber_cold_temperature_correction_ft(1500.0, -20.0, 0.0, &value) gives 208.7
 */
int32_t lubber_cold_temperature_correction_ft(double height_ft,
                                              double temperature_degc,
                                              double elevation_ft,
                                              double *cold_temperature_correction_ft);

/**
 * `lubber_cold_temperature_correction_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_cold_temperature_correction_ft_n(size_t count,
                                               const double *height_ft,
                                               ptrdiff_t height_ft_stride,
                                               const double *temperature_degc,
                                               ptrdiff_t temperature_degc_stride,
                                               const double *elevation_ft,
                                               ptrdiff_t elevation_ft_stride,
                                               double *cold_temperature_correction_ft,
                                               ptrdiff_t cold_temperature_correction_ft_stride,
                                               int32_t *status);

/**
 * Cold-temperature correction as the published table has it: rounded up to the next 10 ft.
 *
 * The formula of `lubber_cold_temperature_correction_ft` for a source at sea level, rounded up; between the table's
 * own heights (200 to 5000 ft) and temperatures (10 to -50 degC) likewise. To read off between cells instead, take
 * `cold_temperature_correction_by_method_ft`.
 *
 * @param height_ft charted height above the altimeter setting source, 0 to 20 000
 * @param temperature_degc temperature at the altimeter setting source, -200 to 200
 * @param[out] cold_temperature_correction_tabulated_ft the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: All 98 cells of the table.
 * Degenerate cases: Warmer than 15 degC there is no correction, and none without height.
 * Errors: A value outside its range.
 * Source: FAA Aeronautical Information Manual (20 April 2023), TBL 7-3-1, ICAO Cold Temperature Error Table, from ICAO Doc 8168 Vol I (5th ed. 2006),
 * Table III-1-4-1 b).
 *
 * Example: lubber_cold_temperature_correction_tabulated_ft(1500.0, -20.0, &value) gives 210
 */
int32_t lubber_cold_temperature_correction_tabulated_ft(double height_ft,
                                                        double temperature_degc,
                                                        double *cold_temperature_correction_tabulated_ft);

/**
 * `lubber_cold_temperature_correction_tabulated_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_cold_temperature_correction_tabulated_ft_n(size_t count,
                                                         const double *height_ft,
                                                         ptrdiff_t height_ft_stride,
                                                         const double *temperature_degc,
                                                         ptrdiff_t temperature_degc_stride,
                                                         double *cold_temperature_correction_tabulated_ft,
                                                         ptrdiff_t cold_temperature_correction_tabulated_ft_stride,
                                                         int32_t *status);

/**
 * Cold-temperature correction by the rule of 4 percent for each 10 degC below standard at the source.
 *
 * `0.04 H (t_standard - t)/10`.
 *
 * @param height_ft charted height above the altimeter setting source, 0 to 20 000
 * @param temperature_degc temperature at the altimeter setting source, -200 to 200
 * @param elevation_ft elevation of the altimeter setting source, -16 500 to 60 000
 * @param[out] cold_temperature_correction_rule_ft the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As published: on the safe side above -15 degC at the source.
 * Degenerate cases: Warmer than standard it is negative.
 * Errors: A value outside its range.
 * Source: ICAO Doc 8168 (PANS-OPS) volume I, Part III Section 1 Chapter 4, 4.3.1, read in a quotation.
 *
 * Example: lubber_cold_temperature_correction_rule_ft(1500.0, -10.0, 0.0, &value) gives 150.0
 */
int32_t lubber_cold_temperature_correction_rule_ft(double height_ft,
                                                   double temperature_degc,
                                                   double elevation_ft,
                                                   double *cold_temperature_correction_rule_ft);

/**
 * `lubber_cold_temperature_correction_rule_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_cold_temperature_correction_rule_ft_n(size_t count,
                                                    const double *height_ft,
                                                    ptrdiff_t height_ft_stride,
                                                    const double *temperature_degc,
                                                    ptrdiff_t temperature_degc_stride,
                                                    const double *elevation_ft,
                                                    ptrdiff_t elevation_ft_stride,
                                                    double *cold_temperature_correction_rule_ft,
                                                    ptrdiff_t cold_temperature_correction_rule_ft_stride,
                                                    int32_t *status);

/**
 * Cold-temperature correction, exact for air that is as cold against standard all the way up as at the source.
 *
 * The indicated height at which the true height is the charted one, less that: the inverse of
 * `lubber_true_altitude_ft` for a source at standard pressure.
 *
 * @param height_ft charted height above the altimeter setting source, 0 to 20 000
 * @param temperature_degc temperature at the altimeter setting source, -200 to 200
 * @param elevation_ft elevation of the altimeter setting source, -16 500 to 60 000
 * @param[out] cold_temperature_correction_exact_ft the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding for such a column.
 * Degenerate cases: Warmer than standard it is negative. No height, no correction.
 * Errors: A value outside its range.
 * Source: Hydrostatic balance with the layers of ICAO Doc 7488/3 (3rd edition 1993).
 *
 * Example: lubber_cold_temperature_correction_exact_ft(1500.0, -20.0, 0.0, &value) gives 208.8
 */
int32_t lubber_cold_temperature_correction_exact_ft(double height_ft,
                                                    double temperature_degc,
                                                    double elevation_ft,
                                                    double *cold_temperature_correction_exact_ft);

/**
 * `lubber_cold_temperature_correction_exact_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_cold_temperature_correction_exact_ft_n(size_t count,
                                                     const double *height_ft,
                                                     ptrdiff_t height_ft_stride,
                                                     const double *temperature_degc,
                                                     ptrdiff_t temperature_degc_stride,
                                                     const double *elevation_ft,
                                                     ptrdiff_t elevation_ft_stride,
                                                     double *cold_temperature_correction_exact_ft,
                                                     ptrdiff_t cold_temperature_correction_exact_ft_stride,
                                                     int32_t *status);

/**
 * Signed cross-track and along-track distance of a point from a course, and the point abeam, on the WGS-84 ellipsoid.
 *
 * Abeam, the geodesic to the point stands square to the course; found by Newton's method on its direction.
 *
 * @param lat_deg latitude of a point of the course, -90 to 90
 * @param lon_deg longitude of that point, any finite number
 * @param course_deg true course there, any finite number
 * @param point_lat_deg latitude of the point, -90 to 90
 * @param point_lon_deg longitude of the point, any finite number
 * @param[out] cross_track_nm Distance across the course, positive right of it; may be NULL
 * @param[out] along_track_nm Distance along the course to the point abeam, positive onward; may be NULL
 * @param[out] abeam_latitude_deg Latitude of the point of the course abeam; may be NULL
 * @param[out] abeam_longitude_deg Longitude of the point of the course abeam; may be NULL
 * @param[out] abeam_course_deg True course there, 0 to 360; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: A tenth of a micrometre within 5 000 NM.
 * Degenerate cases: A point on the course is at a cross-track of zero. A point a quarter of the earth away on both sides has no abeam point that means anything.
 * Errors: A value outside its range.
 * Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
 * Appendix 2 Attachment C.
 *
 * Example: lubber_cross_track(0.0, 0.0, 90.0, 0.5, 1.0, &value, NULL, NULL, NULL, NULL) gives -29.85
 */
int32_t lubber_cross_track(double lat_deg,
                           double lon_deg,
                           double course_deg,
                           double point_lat_deg,
                           double point_lon_deg,
                           double *cross_track_nm,
                           double *along_track_nm,
                           double *abeam_latitude_deg,
                           double *abeam_longitude_deg,
                           double *abeam_course_deg);

/**
 * `lubber_cross_track` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_cross_track_n(size_t count,
                            const double *lat_deg,
                            ptrdiff_t lat_deg_stride,
                            const double *lon_deg,
                            ptrdiff_t lon_deg_stride,
                            const double *course_deg,
                            ptrdiff_t course_deg_stride,
                            const double *point_lat_deg,
                            ptrdiff_t point_lat_deg_stride,
                            const double *point_lon_deg,
                            ptrdiff_t point_lon_deg_stride,
                            double *cross_track_nm,
                            ptrdiff_t cross_track_nm_stride,
                            double *along_track_nm,
                            ptrdiff_t along_track_nm_stride,
                            double *abeam_latitude_deg,
                            ptrdiff_t abeam_latitude_deg_stride,
                            double *abeam_longitude_deg,
                            ptrdiff_t abeam_longitude_deg_stride,
                            double *abeam_course_deg,
                            ptrdiff_t abeam_course_deg_stride,
                            int32_t *status);

/**
 * Where two courses (two radials) meet on the WGS-84 ellipsoid.
 *
 * Extended both ways; of the two meeting points, which are all but antipodal, the one nearer to both points. Its distances along the courses
 * say whether it lies ahead (positive) or behind.
 *
 * @param lat1_deg latitude of a point of the first course, -90 to 90
 * @param lon1_deg longitude of that point, any finite number
 * @param course1_deg true course there, any finite number
 * @param lat2_deg latitude of a point of the second course, -90 to 90
 * @param lon2_deg longitude of that point, any finite number
 * @param course2_deg true course there, any finite number
 * @param[out] latitude_deg Latitude of the point; may be NULL
 * @param[out] longitude_deg Longitude of the point; may be NULL
 * @param[out] along_first_nm Distance along the first course, negative behind its point; may be NULL
 * @param[out] along_second_nm Distance along the second course, negative behind its point; may be NULL
 * @param[out] first_course_deg True bearing of the first course there, 0 to 360; may be NULL
 * @param[out] second_course_deg True bearing of the second course there, 0 to 360; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: A micrometre across the courses; along them that divided by the sine of their angle.
 * Degenerate cases: Courses along one line meet everywhere. At a pole the courses there are against the meridian of the longitude given.
 * Errors: A value outside its range, or courses along one line.
 * Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
 * Appendix 2 Attachment C.
 *
 * Example: lubber_course_crossing(40.1734722222, -70.2126666667, 90.0, 42.0766111111, -68.2113055556, 187.0, NULL, NULL, &value, NULL, NULL, NULL) gives 77.961
 */
int32_t lubber_course_crossing(double lat1_deg,
                               double lon1_deg,
                               double course1_deg,
                               double lat2_deg,
                               double lon2_deg,
                               double course2_deg,
                               double *latitude_deg,
                               double *longitude_deg,
                               double *along_first_nm,
                               double *along_second_nm,
                               double *first_course_deg,
                               double *second_course_deg);

/**
 * `lubber_course_crossing` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_course_crossing_n(size_t count,
                                const double *lat1_deg,
                                ptrdiff_t lat1_deg_stride,
                                const double *lon1_deg,
                                ptrdiff_t lon1_deg_stride,
                                const double *course1_deg,
                                ptrdiff_t course1_deg_stride,
                                const double *lat2_deg,
                                ptrdiff_t lat2_deg_stride,
                                const double *lon2_deg,
                                ptrdiff_t lon2_deg_stride,
                                const double *course2_deg,
                                ptrdiff_t course2_deg_stride,
                                double *latitude_deg,
                                ptrdiff_t latitude_deg_stride,
                                double *longitude_deg,
                                ptrdiff_t longitude_deg_stride,
                                double *along_first_nm,
                                ptrdiff_t along_first_nm_stride,
                                double *along_second_nm,
                                ptrdiff_t along_second_nm_stride,
                                double *first_course_deg,
                                ptrdiff_t first_course_deg_stride,
                                double *second_course_deg,
                                ptrdiff_t second_course_deg_stride,
                                int32_t *status);

/**
 * Whether a point lies on a course: 1 if it does, 0 if not.
 *
 * Within the tolerance across it, and for a course that reaches onward also behind its point.
 *
 * @param lat_deg latitude of a point of the course, -90 to 90
 * @param lon_deg longitude of that point, any finite number
 * @param course_deg true course there, any finite number
 * @param reach how far the course reaches: LUBBER_COURSE_REACH_ONWARD, LUBBER_COURSE_REACH_BOTH_WAYS
 * @param point_lat_deg latitude of the point, -90 to 90
 * @param point_lon_deg longitude of the point, any finite number
 * @param tolerance_nm how far across the course still counts, 0 to 10 900
 * @param[out] on_course the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As `cross_track`.
 * Degenerate cases: The course's own point lies on it.
 * Errors: A value outside its range.
 * Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
 * Appendix 2 Attachment C.
 *
 * Example: lubber_on_course(0.0, 0.0, 90.0, LUBBER_COURSE_REACH_ONWARD, 0.0, 5.0, 0.0001, &value) gives 1
 */
int32_t lubber_on_course(double lat_deg,
                         double lon_deg,
                         double course_deg,
                         int32_t reach,
                         double point_lat_deg,
                         double point_lon_deg,
                         double tolerance_nm,
                         double *on_course);

/**
 * `lubber_on_course` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `reach` is one code for all points: how far the course reaches: LUBBER_COURSE_REACH_ONWARD, LUBBER_COURSE_REACH_BOTH_WAYS
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_on_course_n(size_t count,
                          const double *lat_deg,
                          ptrdiff_t lat_deg_stride,
                          const double *lon_deg,
                          ptrdiff_t lon_deg_stride,
                          const double *course_deg,
                          ptrdiff_t course_deg_stride,
                          int32_t reach,
                          const double *point_lat_deg,
                          ptrdiff_t point_lat_deg_stride,
                          const double *point_lon_deg,
                          ptrdiff_t point_lon_deg_stride,
                          const double *tolerance_nm,
                          ptrdiff_t tolerance_nm_stride,
                          double *on_course,
                          ptrdiff_t on_course_stride,
                          int32_t *status);

/**
 * Whether a point lies on the geodesic between two points: 1 if it does, 0 if not.
 *
 * Within the tolerance across it and beyond its ends.
 *
 * @param lat1_deg latitude of the beginning, -90 to 90
 * @param lon1_deg longitude of the beginning, any finite number
 * @param lat2_deg latitude of the end, -90 to 90
 * @param lon2_deg longitude of the end, any finite number
 * @param point_lat_deg latitude of the point, -90 to 90
 * @param point_lon_deg longitude of the point, any finite number
 * @param tolerance_nm how far from it still counts, 0 to 10 900
 * @param[out] on_leg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As `cross_track`.
 * Degenerate cases: Between coincident points only the point itself lies.
 * Errors: A value outside its range.
 * Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
 * Appendix 2 Attachment C.
 *
 * Example: lubber_on_leg(0.0, 0.0, 0.0, 6.0, 0.0, 7.0, 0.0001, &value) gives 0
 */
int32_t lubber_on_leg(double lat1_deg,
                      double lon1_deg,
                      double lat2_deg,
                      double lon2_deg,
                      double point_lat_deg,
                      double point_lon_deg,
                      double tolerance_nm,
                      double *on_leg);

/**
 * `lubber_on_leg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_on_leg_n(size_t count,
                       const double *lat1_deg,
                       ptrdiff_t lat1_deg_stride,
                       const double *lon1_deg,
                       ptrdiff_t lon1_deg_stride,
                       const double *lat2_deg,
                       ptrdiff_t lat2_deg_stride,
                       const double *lon2_deg,
                       ptrdiff_t lon2_deg_stride,
                       const double *point_lat_deg,
                       ptrdiff_t point_lat_deg_stride,
                       const double *point_lon_deg,
                       ptrdiff_t point_lon_deg_stride,
                       const double *tolerance_nm,
                       ptrdiff_t tolerance_nm_stride,
                       double *on_leg,
                       ptrdiff_t on_leg_stride,
                       int32_t *status);

/**
 * The pressure altitude at which a calibrated airspeed and a Mach number are one speed.
 *
 * Where the static pressure is the impact pressure of the calibrated airspeed over the impact ratio of the
 * Mach number; the temperature plays no part.
 *
 * @param cas_kt calibrated airspeed, 0 to 5000
 * @param mach Mach number, 0 to 10
 * @param[out] crossover_altitude_ft the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: Speeds of zero cross nowhere.
 * Errors: A value outside its range, or no crossover from -5 to 80 km.
 * Source: The definitions of calibrated airspeed and Mach number, with ICAO Doc 7488/3 (3rd edition 1993).
 *
 * Example: lubber_crossover_altitude_ft(300.0, 0.78, &value) gives 29314
 */
int32_t lubber_crossover_altitude_ft(double cas_kt, double mach, double *crossover_altitude_ft);

/**
 * `lubber_crossover_altitude_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_crossover_altitude_ft_n(size_t count,
                                      const double *cas_kt,
                                      ptrdiff_t cas_kt_stride,
                                      const double *mach,
                                      ptrdiff_t mach_stride,
                                      double *crossover_altitude_ft,
                                      ptrdiff_t crossover_altitude_ft_stride,
                                      int32_t *status);

/**
 * Density altitude: where the standard atmosphere has the density of the air.
 *
 * In closed form within each layer, density going with `(T/T_b)^(-g/(L R) - 1)`.
 *
 * @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
 * @param temperature_degc static air temperature, -200 to 200
 * @param[out] density_altitude_ft the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding, for dry air. Moisture makes air lighter: at 35 degC and saturated, 700 ft more at sea level.
 * Degenerate cases: In standard air it is the pressure altitude.
 * Errors: A value outside its range, a deviation beyond 150 K, or a density altitude outside -5 to 80 km.
 * Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
 *
 * Example: lubber_density_altitude_ft(6000.0, 13.0, &value) gives 7147
 */
int32_t lubber_density_altitude_ft(double pressure_altitude_ft, double temperature_degc, double *density_altitude_ft);

/**
 * `lubber_density_altitude_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_density_altitude_ft_n(size_t count,
                                    const double *pressure_altitude_ft,
                                    ptrdiff_t pressure_altitude_ft_stride,
                                    const double *temperature_degc,
                                    ptrdiff_t temperature_degc_stride,
                                    double *density_altitude_ft,
                                    ptrdiff_t density_altitude_ft_stride,
                                    int32_t *status);

/**
 * Density altitude by the rule of 120 ft for each degree above standard.
 *
 * `Hp + 120 (t - (15 - 2 Hp/1000))` with the pressure altitude `Hp`. `lubber_density_altitude_ft` is exact.
 *
 * @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
 * @param temperature_degc static air temperature, -200 to 200
 * @param[out] density_altitude_rule_ft the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Too much by up to 65 ft within 10 K of standard, 160 ft within 20 K and 300 ft within 30 K, to 10 000 ft.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range, or a density altitude outside -5 to 80 km.
 * Source: Common practice.
 *
 * Example: lubber_density_altitude_rule_ft(6000.0, 13.0, &value) gives 7200
 */
int32_t lubber_density_altitude_rule_ft(double pressure_altitude_ft,
                                        double temperature_degc,
                                        double *density_altitude_rule_ft);

/**
 * `lubber_density_altitude_rule_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_density_altitude_rule_ft_n(size_t count,
                                         const double *pressure_altitude_ft,
                                         ptrdiff_t pressure_altitude_ft_stride,
                                         const double *temperature_degc,
                                         ptrdiff_t temperature_degc_stride,
                                         double *density_altitude_rule_ft,
                                         ptrdiff_t density_altitude_rule_ft_stride,
                                         int32_t *status);

/**
 * The heading at one bearing of a DME arc in a wind, where the bearing pointer then stands, and the bank that keeps to the arc.
 *
 * The track is square to the radial; the wind correction moves the station off the wing tip by as much. The heading
 * turns at `(GS / D)(1 - (Vw / V) cos(w) / cos(c))`, with c the wind correction and w the angle from the track to
 * where the wind comes from.
 *
 * @param radial_deg radial on which the aircraft is, any finite number
 * @param arc_radius_nm ground distance of the arc from the station, above 0 to 1000
 * @param sense which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param wind_from_deg where the wind blows from, against the radials' north
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param[out] track_deg Direction over the ground; may be NULL
 * @param[out] heading_deg Heading that holds it; may be NULL
 * @param[out] groundspeed_kt Groundspeed along the arc; may be NULL
 * @param[out] wind_correction_deg Heading less track, right positive; may be NULL
 * @param[out] station_off_nose_deg Where the station is from the nose, right positive: 90 or -90 in calm air; may be NULL
 * @param[out] ahead_of_wing_tip_deg By how much the bearing pointer is kept ahead of the wing tip; behind it when negative; may be NULL
 * @param[out] bank_deg Bank that bends the path over the ground along the arc, positive toward the station; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error on a plane.
 * Degenerate cases: In a wind near the airspeed the heading may have to turn away from the station for a while: the bank is negative
 * there. An arc counts along the ground; `ground_distance_nm` turns the DME reading that is flown into it.
 * Errors: A value outside its range, a track that the airspeed cannot hold.
 * Source: The triangle of velocities, differentiated along the arc.
 *
 * Example: lubber_arc_heading(130.0, 12.0, LUBBER_ARC_SENSE_CLOCKWISE, 160.0, 310.0, 30.0, NULL, &value, NULL, NULL, NULL, NULL, NULL) gives 230.8
 */
int32_t lubber_arc_heading(double radial_deg,
                           double arc_radius_nm,
                           int32_t sense,
                           double true_airspeed_kt,
                           double wind_from_deg,
                           double wind_speed_kt,
                           double *track_deg,
                           double *heading_deg,
                           double *groundspeed_kt,
                           double *wind_correction_deg,
                           double *station_off_nose_deg,
                           double *ahead_of_wing_tip_deg,
                           double *bank_deg);

/**
 * `lubber_arc_heading` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `sense` is one code for all points: which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_arc_heading_n(size_t count,
                            const double *radial_deg,
                            ptrdiff_t radial_deg_stride,
                            const double *arc_radius_nm,
                            ptrdiff_t arc_radius_nm_stride,
                            int32_t sense,
                            const double *true_airspeed_kt,
                            ptrdiff_t true_airspeed_kt_stride,
                            const double *wind_from_deg,
                            ptrdiff_t wind_from_deg_stride,
                            const double *wind_speed_kt,
                            ptrdiff_t wind_speed_kt_stride,
                            double *track_deg,
                            ptrdiff_t track_deg_stride,
                            double *heading_deg,
                            ptrdiff_t heading_deg_stride,
                            double *groundspeed_kt,
                            ptrdiff_t groundspeed_kt_stride,
                            double *wind_correction_deg,
                            ptrdiff_t wind_correction_deg_stride,
                            double *station_off_nose_deg,
                            ptrdiff_t station_off_nose_deg_stride,
                            double *ahead_of_wing_tip_deg,
                            ptrdiff_t ahead_of_wing_tip_deg_stride,
                            double *bank_deg,
                            ptrdiff_t bank_deg_stride,
                            int32_t *status);

/**
 * How long a DME arc from one radial to another is, and how long it takes in a wind.
 *
 * `D a`, and the integral of `D / GS` over the bearing.
 *
 * @param from_radial_deg radial on which the arc begins, any finite number
 * @param to_radial_deg radial on which it ends
 * @param arc_radius_nm ground distance of the arc from the station, above 0 to 1000
 * @param sense which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param wind_from_deg where the wind blows from, against the radials' north
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param[out] angle_deg Angle at the station, in the sense of the arc; may be NULL
 * @param[out] distance_nm Length of the arc; may be NULL
 * @param[out] time_s Time along it; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: 1e-10 of the time for winds to half the airspeed.
 * Degenerate cases: From a radial to itself there is no arc, not a full circle.
 * Errors: A value outside its range, a track on the way that the airspeed cannot hold.
 * Source: The triangle of velocities, integrated.
 *
 * Example: lubber_arc_flown(20.0, 110.0, 10.0, LUBBER_ARC_SENSE_CLOCKWISE, 160.0, 310.0, 45.0, NULL, NULL, &value) gives 291.2
 */
int32_t lubber_arc_flown(double from_radial_deg,
                         double to_radial_deg,
                         double arc_radius_nm,
                         int32_t sense,
                         double true_airspeed_kt,
                         double wind_from_deg,
                         double wind_speed_kt,
                         double *angle_deg,
                         double *distance_nm,
                         double *time_s);

/**
 * `lubber_arc_flown` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `sense` is one code for all points: which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_arc_flown_n(size_t count,
                          const double *from_radial_deg,
                          ptrdiff_t from_radial_deg_stride,
                          const double *to_radial_deg,
                          ptrdiff_t to_radial_deg_stride,
                          const double *arc_radius_nm,
                          ptrdiff_t arc_radius_nm_stride,
                          int32_t sense,
                          const double *true_airspeed_kt,
                          ptrdiff_t true_airspeed_kt_stride,
                          const double *wind_from_deg,
                          ptrdiff_t wind_from_deg_stride,
                          const double *wind_speed_kt,
                          ptrdiff_t wind_speed_kt_stride,
                          double *angle_deg,
                          ptrdiff_t angle_deg_stride,
                          double *distance_nm,
                          ptrdiff_t distance_nm_stride,
                          double *time_s,
                          ptrdiff_t time_s_stride,
                          int32_t *status);

/**
 * The straight legs of a DME arc that stay within a tolerance of it: how many, how long, and how far they depart.
 *
 * Half a leg sees the station under the angle h with `cos(h) = (D - t) / D` inside, `D / (D + t)` outside and `(D -
 * t) / (D + t)` on both sides; the legs share the arc evenly.
 *
 * @param from_radial_deg radial on which the arc begins, any finite number
 * @param to_radial_deg radial on which it ends
 * @param arc_radius_nm ground distance of the arc from the station, above 0 to 1000
 * @param sense which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
 * @param placement where the legs lie: LUBBER_CHORD_PLACEMENT_INSIDE, LUBBER_CHORD_PLACEMENT_OUTSIDE, LUBBER_CHORD_PLACEMENT_BALANCED
 * @param tolerance_nm greatest distance from the arc, above 0 to 1000
 * @param[out] legs How many legs there are; may be NULL
 * @param[out] angle_deg Angle of each at the station, which is also the change of course from one to the next; may be NULL
 * @param[out] length_nm Length of each; may be NULL
 * @param[out] distance_at_ends_nm Distance from the station at which each begins and ends; may be NULL
 * @param[out] distance_at_middle_nm Distance from the station in the middle of each; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error on a plane. The turns between the legs are left out.
 * Degenerate cases: From a radial to itself there is no leg. A tolerance near the radius and above still makes a leg for each 120
 * degrees.
 * Errors: A value outside its range.
 * Source: The right triangle of station, middle and end of a leg.
 *
 * Example: lubber_arc_chords(350.0, 50.0, 12.0, LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_CHORD_PLACEMENT_INSIDE, 0.25, &value, NULL, NULL, NULL, NULL) gives 3
 */
int32_t lubber_arc_chords(double from_radial_deg,
                          double to_radial_deg,
                          double arc_radius_nm,
                          int32_t sense,
                          int32_t placement,
                          double tolerance_nm,
                          double *legs,
                          double *angle_deg,
                          double *length_nm,
                          double *distance_at_ends_nm,
                          double *distance_at_middle_nm);

/**
 * `lubber_arc_chords` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `sense` is one code for all points: which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
 *
 * `placement` is one code for all points: where the legs lie: LUBBER_CHORD_PLACEMENT_INSIDE, LUBBER_CHORD_PLACEMENT_OUTSIDE, LUBBER_CHORD_PLACEMENT_BALANCED
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_arc_chords_n(size_t count,
                           const double *from_radial_deg,
                           ptrdiff_t from_radial_deg_stride,
                           const double *to_radial_deg,
                           ptrdiff_t to_radial_deg_stride,
                           const double *arc_radius_nm,
                           ptrdiff_t arc_radius_nm_stride,
                           int32_t sense,
                           int32_t placement,
                           const double *tolerance_nm,
                           ptrdiff_t tolerance_nm_stride,
                           double *legs,
                           ptrdiff_t legs_stride,
                           double *angle_deg,
                           ptrdiff_t angle_deg_stride,
                           double *length_nm,
                           ptrdiff_t length_nm_stride,
                           double *distance_at_ends_nm,
                           ptrdiff_t distance_at_ends_nm_stride,
                           double *distance_at_middle_nm,
                           ptrdiff_t distance_at_middle_nm_stride,
                           int32_t *status);

/**
 * One of the straight legs of a DME arc, flown in a wind: radials, course, heading and time.
 *
 * The course is square to the radial of its middle. The legs are those of `arc_chords`.
 *
 * @param from_radial_deg radial on which the arc begins, any finite number
 * @param to_radial_deg radial on which it ends
 * @param arc_radius_nm ground distance of the arc from the station, above 0 to 1000
 * @param sense which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
 * @param placement where the legs lie: LUBBER_CHORD_PLACEMENT_INSIDE, LUBBER_CHORD_PLACEMENT_OUTSIDE, LUBBER_CHORD_PLACEMENT_BALANCED
 * @param tolerance_nm greatest distance from the arc, above 0 to 1000
 * @param leg which leg, counted from 1: a whole number, 1 to 1 000 000
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param wind_from_deg where the wind blows from, against the radials' north
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param[out] from_radial_deg_out Radial of its beginning; may be NULL
 * @param[out] to_radial_deg_out Radial of its end; may be NULL
 * @param[out] course_deg Its course; may be NULL
 * @param[out] heading_deg Heading that holds it; may be NULL
 * @param[out] groundspeed_kt Groundspeed on it; may be NULL
 * @param[out] time_s Time along it; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error on a plane. The turns between the legs are left out.
 * Degenerate cases: A leg behind the last is NaN throughout.
 * Errors: A value outside its range, a course that the airspeed cannot hold.
 * Source: The right triangle of station, middle and end of a leg.
 *
 * Example: lubber_arc_chord_leg(350.0, 50.0, 12.0, LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_CHORD_PLACEMENT_INSIDE, 0.25, 1.0, 150.0, 310.0, 30.0, NULL, NULL, &value, NULL, NULL, NULL) gives 90.0
 */
int32_t lubber_arc_chord_leg(double from_radial_deg,
                             double to_radial_deg,
                             double arc_radius_nm,
                             int32_t sense,
                             int32_t placement,
                             double tolerance_nm,
                             double leg,
                             double true_airspeed_kt,
                             double wind_from_deg,
                             double wind_speed_kt,
                             double *from_radial_deg_out,
                             double *to_radial_deg_out,
                             double *course_deg,
                             double *heading_deg,
                             double *groundspeed_kt,
                             double *time_s);

/**
 * `lubber_arc_chord_leg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `sense` is one code for all points: which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
 *
 * `placement` is one code for all points: where the legs lie: LUBBER_CHORD_PLACEMENT_INSIDE, LUBBER_CHORD_PLACEMENT_OUTSIDE, LUBBER_CHORD_PLACEMENT_BALANCED
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_arc_chord_leg_n(size_t count,
                              const double *from_radial_deg,
                              ptrdiff_t from_radial_deg_stride,
                              const double *to_radial_deg,
                              ptrdiff_t to_radial_deg_stride,
                              const double *arc_radius_nm,
                              ptrdiff_t arc_radius_nm_stride,
                              int32_t sense,
                              int32_t placement,
                              const double *tolerance_nm,
                              ptrdiff_t tolerance_nm_stride,
                              const double *leg,
                              ptrdiff_t leg_stride,
                              const double *true_airspeed_kt,
                              ptrdiff_t true_airspeed_kt_stride,
                              const double *wind_from_deg,
                              ptrdiff_t wind_from_deg_stride,
                              const double *wind_speed_kt,
                              ptrdiff_t wind_speed_kt_stride,
                              double *from_radial_deg_out,
                              ptrdiff_t from_radial_deg_out_stride,
                              double *to_radial_deg_out,
                              ptrdiff_t to_radial_deg_out_stride,
                              double *course_deg,
                              ptrdiff_t course_deg_stride,
                              double *heading_deg,
                              ptrdiff_t heading_deg_stride,
                              double *groundspeed_kt,
                              ptrdiff_t groundspeed_kt_stride,
                              double *time_s,
                              ptrdiff_t time_s_stride,
                              int32_t *status);

/**
 * The straight way back onto a DME arc from inside or outside it: where and when the arc is met.
 *
 * On a track turned from square by a correction c, the way is `d sin(c) + sqrt(D^2 - d^2 cos^2(c))` from inside,
 * with the root taken away from outside.
 *
 * @param radial_deg radial on which the aircraft is, any finite number
 * @param distance_nm its ground distance from the station, 0 to 10 900
 * @param arc_radius_nm ground distance of the arc from the station, above 0 to 1000
 * @param sense which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
 * @param correction_deg angle of the track from square to the radial, positive toward the station, any finite number
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param wind_from_deg where the wind blows from, against the radials' north
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param[out] track_deg Direction over the ground; may be NULL
 * @param[out] heading_deg Heading that holds it; may be NULL
 * @param[out] distance_nm_out Distance to the arc; may be NULL
 * @param[out] time_s Time to the arc; may be NULL
 * @param[out] radial_deg_out Radial on which the arc is met; may be NULL
 * @param[out] angle_deg Angle at which the arc is met, without its side; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error on a plane.
 * Degenerate cases: On the arc the way is nothing. From outside the correction must be at least `acos(D / d)`, at which the arc is met
 * along it.
 * Errors: A value outside its range, a track from outside that passes the arc, a track that the airspeed cannot hold.
 * Source: The law of cosines.
 *
 * Example: lubber_arc_regained(200.0, 11.0, 10.0, LUBBER_ARC_SENSE_CLOCKWISE, 30.0, 160.0, 310.0, 30.0, NULL, NULL, &value, NULL, NULL, NULL) gives 2.46
 */
int32_t lubber_arc_regained(double radial_deg,
                            double distance_nm,
                            double arc_radius_nm,
                            int32_t sense,
                            double correction_deg,
                            double true_airspeed_kt,
                            double wind_from_deg,
                            double wind_speed_kt,
                            double *track_deg,
                            double *heading_deg,
                            double *distance_nm_out,
                            double *time_s,
                            double *radial_deg_out,
                            double *angle_deg);

/**
 * `lubber_arc_regained` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `sense` is one code for all points: which way round the station the arc is flown: LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_ARC_SENSE_COUNTERCLOCKWISE
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_arc_regained_n(size_t count,
                             const double *radial_deg,
                             ptrdiff_t radial_deg_stride,
                             const double *distance_nm,
                             ptrdiff_t distance_nm_stride,
                             const double *arc_radius_nm,
                             ptrdiff_t arc_radius_nm_stride,
                             int32_t sense,
                             const double *correction_deg,
                             ptrdiff_t correction_deg_stride,
                             const double *true_airspeed_kt,
                             ptrdiff_t true_airspeed_kt_stride,
                             const double *wind_from_deg,
                             ptrdiff_t wind_from_deg_stride,
                             const double *wind_speed_kt,
                             ptrdiff_t wind_speed_kt_stride,
                             double *track_deg,
                             ptrdiff_t track_deg_stride,
                             double *heading_deg,
                             ptrdiff_t heading_deg_stride,
                             double *distance_nm_out,
                             ptrdiff_t distance_nm_out_stride,
                             double *time_s,
                             ptrdiff_t time_s_stride,
                             double *radial_deg_out,
                             ptrdiff_t radial_deg_out_stride,
                             double *angle_deg,
                             ptrdiff_t angle_deg_stride,
                             int32_t *status);

/**
 * The least correction toward the station with which a DME arc is met from outside.
 *
 * `acos(D / d)`, the tangent from a point to a circle.
 *
 * @param distance_nm ground distance from the station, 0 to 10 900
 * @param arc_radius_nm ground distance of the arc from the station, above 0 to 1000
 * @param[out] arc_least_correction_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error.
 * Degenerate cases: Zero on the arc and inside it.
 * Errors: A value outside its range.
 * Source: The tangent from a point to a circle.
 *
 * Example: lubber_arc_least_correction_deg(10.5, 10.0, &value) gives 17.8
 */
int32_t lubber_arc_least_correction_deg(double distance_nm, double arc_radius_nm, double *arc_least_correction_deg);

/**
 * `lubber_arc_least_correction_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_arc_least_correction_deg_n(size_t count,
                                         const double *distance_nm,
                                         ptrdiff_t distance_nm_stride,
                                         const double *arc_radius_nm,
                                         ptrdiff_t arc_radius_nm_stride,
                                         double *arc_least_correction_deg,
                                         ptrdiff_t arc_least_correction_deg_stride,
                                         int32_t *status);

/**
 * By how much to displace the bearing pointer from the wing tip to get back onto a DME arc, by rule.
 *
 * 5 degrees away from the station for each half mile inside, 10 degrees toward it for each half mile outside;
 * positive toward the station.
 *
 * @param distance_nm distance from the station, 0 to 10 900
 * @param arc_radius_nm ground distance of the arc from the station, above 0 to 1000
 * @param[out] rule_arc_correction_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: A rule. From outside it is short of `arc_least_correction_deg`, so the arc is met only as the correction is
 * renewed.
 * Degenerate cases: On the arc there is nothing to displace.
 * Errors: A value outside its range.
 * Source: CNATRA P-871 chapter 4, To adjust to/from the arc.
 *
 * Example: lubber_rule_arc_correction_deg(9.5, 10.0, &value) gives -5
 */
int32_t lubber_rule_arc_correction_deg(double distance_nm, double arc_radius_nm, double *rule_arc_correction_deg);

/**
 * `lubber_rule_arc_correction_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_arc_correction_deg_n(size_t count,
                                        const double *distance_nm,
                                        ptrdiff_t distance_nm_stride,
                                        const double *arc_radius_nm,
                                        ptrdiff_t arc_radius_nm_stride,
                                        double *rule_arc_correction_deg,
                                        ptrdiff_t rule_arc_correction_deg_stride,
                                        int32_t *status);

/**
 * The shortest line between two points on the WGS-84 ellipsoid: its length and its bearings.
 *
 * Karney's solution of the inverse geodesic problem.
 *
 * @param lat1_deg latitude of the first point, -90 to 90
 * @param lon1_deg longitude of the first point, any finite number
 * @param lat2_deg latitude of the second point, -90 to 90
 * @param lon2_deg longitude of the second point, any finite number
 * @param[out] distance_nm Length along the surface; may be NULL
 * @param[out] initial_bearing_deg True bearing at the first point, 0 to 360; NaN between coincident points; may be NULL
 * @param[out] final_bearing_deg True bearing at the second point, onward, 0 to 360; NaN between coincident points; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: 15 nanometres for any two points. In arrays 1 micrometre of distance, and 4 of what a bearing moves the other end by; to
 * 18 000 km a tenth of that. Points within ten metres of each other, and near each other's antipode, are computed one by one there.
 * Degenerate cases: Coincident points have no bearing (NaN). Between antipodal points one of the shortest lines is given.
 * Errors: A latitude beyond a pole, or an infinite number.
 * Source: C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013) 43-55, doi 10.1007/s00190-012-0578-z.
 *
 * Example: lubber_geodesic_inverse(51.0, 0.0, 52.0, 1.0, &value, NULL, NULL) gives 70.814
 */
int32_t lubber_geodesic_inverse(double lat1_deg,
                                double lon1_deg,
                                double lat2_deg,
                                double lon2_deg,
                                double *distance_nm,
                                double *initial_bearing_deg,
                                double *final_bearing_deg);

/**
 * `lubber_geodesic_inverse` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_geodesic_inverse_n(size_t count,
                                 const double *lat1_deg,
                                 ptrdiff_t lat1_deg_stride,
                                 const double *lon1_deg,
                                 ptrdiff_t lon1_deg_stride,
                                 const double *lat2_deg,
                                 ptrdiff_t lat2_deg_stride,
                                 const double *lon2_deg,
                                 ptrdiff_t lon2_deg_stride,
                                 double *distance_nm,
                                 ptrdiff_t distance_nm_stride,
                                 double *initial_bearing_deg,
                                 ptrdiff_t initial_bearing_deg_stride,
                                 double *final_bearing_deg,
                                 ptrdiff_t final_bearing_deg_stride,
                                 int32_t *status);

/**
 * Slant range, which DME shows, from ground distance and height above the station.
 *
 * `sqrt(h^2 + 4 R (R + h) sin^2(d / 2R))`: the straight line over a sphere of the mean radius of WGS-84,
 * never the sum of distance and height.
 *
 * @param ground_distance_nm along the surface from the station, 0 to 10 900
 * @param height_ft above the station's antenna, -60 000 to 400 000
 * @param[out] slant_range_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Within 1.1 m of the ellipsoid to 100 NM and 45 000 ft. Arrays and single calls agree to 1e-15 of the range.
 * Degenerate cases: Overhead the answer is the height.
 * Errors: A value outside its range.
 * Source: The law of cosines between the radii R and R + h.
 *
 * Example: lubber_slant_range_nm(10.0, 30000.0, &value) gives 11.159
 */
int32_t lubber_slant_range_nm(double ground_distance_nm, double height_ft, double *slant_range_nm);

/**
 * `lubber_slant_range_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_slant_range_nm_n(size_t count,
                               const double *ground_distance_nm,
                               ptrdiff_t ground_distance_nm_stride,
                               const double *height_ft,
                               ptrdiff_t height_ft_stride,
                               double *slant_range_nm,
                               ptrdiff_t slant_range_nm_stride,
                               int32_t *status);

/**
 * The point reached along a geodesic of the WGS-84 ellipsoid.
 *
 * Karney's solution of the direct geodesic problem.
 *
 * @param lat_deg latitude of the start, -90 to 90
 * @param lon_deg longitude of the start, any finite number
 * @param bearing_deg true bearing at the start, any finite number
 * @param distance_nm length of the line, 0 to 10 900
 * @param[out] latitude_deg Latitude of the point reached, -90 to 90; may be NULL
 * @param[out] longitude_deg Longitude of the point reached, -180 to 180; may be NULL
 * @param[out] final_bearing_deg True bearing of the line there, onward, 0 to 360; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: 15 nanometres; in arrays 0.1 micrometre, but single calls within a metre and at the poles.
 * Degenerate cases: From a pole the bearing is taken against the meridian of the longitude given there.
 * Errors: A value outside its range.
 * Source: C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013) 43-55, doi 10.1007/s00190-012-0578-z.
 *
 * Example: lubber_geodesic_direct(0.0, 0.0, 90.0, 60.0, NULL, &value, NULL) gives 0.9982
 */
int32_t lubber_geodesic_direct(double lat_deg,
                               double lon_deg,
                               double bearing_deg,
                               double distance_nm,
                               double *latitude_deg,
                               double *longitude_deg,
                               double *final_bearing_deg);

/**
 * `lubber_geodesic_direct` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_geodesic_direct_n(size_t count,
                                const double *lat_deg,
                                ptrdiff_t lat_deg_stride,
                                const double *lon_deg,
                                ptrdiff_t lon_deg_stride,
                                const double *bearing_deg,
                                ptrdiff_t bearing_deg_stride,
                                const double *distance_nm,
                                ptrdiff_t distance_nm_stride,
                                double *latitude_deg,
                                ptrdiff_t latitude_deg_stride,
                                double *longitude_deg,
                                ptrdiff_t longitude_deg_stride,
                                double *final_bearing_deg,
                                ptrdiff_t final_bearing_deg_stride,
                                int32_t *status);

/**
 * Ground distance from slant range and height above the station: the inverse of `lubber_slant_range_nm`.
 *
 * `2 R asin(sqrt((s^2 - h^2) / (4 R (R + h))))` over a sphere of the mean radius of WGS-84.
 *
 * @param slant_range_nm the DME reading, 0 to 10 900
 * @param height_ft above the station's antenna, -60 000 to 400 000
 * @param[out] ground_distance_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Within 1.1 m of the ellipsoid to 100 NM and 45 000 ft, beyond twice the height. Close to overhead a small change of
 * range is a large one of distance: seven times at 1.01 times the height.
 * Degenerate cases: A slant range of the height is overhead: zero.
 * Errors: A value outside its range, or a slant range shorter than the height or longer than to the far side of the earth.
 * Source: The law of cosines between the radii R and R + h; in the plane `sqrt(s^2 - h^2)`, ICAO Doc 8168 Vol II (5th ed. 2006),
 * Part I Section 4 Chapter 3 Appendix C, 3.3.4.
 *
 * Example: lubber_ground_distance_nm(11.159, 30000.0, &value) gives 10.000
 */
int32_t lubber_ground_distance_nm(double slant_range_nm,
                                  double height_ft,
                                  double *ground_distance_nm);

/**
 * `lubber_ground_distance_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_ground_distance_nm_n(size_t count,
                                   const double *slant_range_nm,
                                   ptrdiff_t slant_range_nm_stride,
                                   const double *height_ft,
                                   ptrdiff_t height_ft_stride,
                                   double *ground_distance_nm,
                                   ptrdiff_t ground_distance_nm_stride,
                                   int32_t *status);

/**
 * The least DME reading, overhead at a height above the station.
 *
 * The height in nautical miles, 6 076.1 ft each.
 *
 * @param height_ft above the station's antenna, -60 000 to 400 000
 * @param[out] least_dme_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error.
 * Degenerate cases: Below the station it is the depth.
 * Errors: A value outside its range.
 * Source: The definition of slant range.
 *
 * Example: lubber_least_dme_nm(12000.0, &value) gives 1.975
 */
int32_t lubber_least_dme_nm(double height_ft, double *least_dme_nm);

/**
 * `lubber_least_dme_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_least_dme_nm_n(size_t count,
                             const double *height_ft,
                             ptrdiff_t height_ft_stride,
                             double *least_dme_nm,
                             ptrdiff_t least_dme_nm_stride,
                             int32_t *status);

/**
 * The great circle between two points of a sphere: its length and its bearings.
 *
 * The central angle from its chords; bearings by spherical trigonometry.
 *
 * @param lat1_deg latitude of the first point, -90 to 90
 * @param lon1_deg longitude of the first point, any finite number
 * @param lat2_deg latitude of the second point, -90 to 90
 * @param lon2_deg longitude of the second point, any finite number
 * @param sphere_radius_nm radius of the sphere, 1 to 100 000
 * @param[out] distance_nm Length along the surface; may be NULL
 * @param[out] initial_bearing_deg Bearing at the first point, 0 to 360; NaN between coincident points; may be NULL
 * @param[out] final_bearing_deg Bearing at the second point, onward, 0 to 360; NaN between coincident points; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding on the sphere; against the ellipsoid up to 0.56 percent. For the earth itself use `geodesic_inverse`.
 * Degenerate cases: Coincident points have no bearing (NaN).
 * Errors: A value outside its range.
 * Source: Spherical trigonometry; the default radius is the mean one of WGS-84.
 *
 * Example: lubber_great_circle_inverse(51.0, 0.0, 52.0, 1.0, 3440.069531, &value, NULL, NULL) gives 70.722
 */
int32_t lubber_great_circle_inverse(double lat1_deg,
                                    double lon1_deg,
                                    double lat2_deg,
                                    double lon2_deg,
                                    double sphere_radius_nm,
                                    double *distance_nm,
                                    double *initial_bearing_deg,
                                    double *final_bearing_deg);

/**
 * `lubber_great_circle_inverse` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_great_circle_inverse_n(size_t count,
                                     const double *lat1_deg,
                                     ptrdiff_t lat1_deg_stride,
                                     const double *lon1_deg,
                                     ptrdiff_t lon1_deg_stride,
                                     const double *lat2_deg,
                                     ptrdiff_t lat2_deg_stride,
                                     const double *lon2_deg,
                                     ptrdiff_t lon2_deg_stride,
                                     const double *sphere_radius_nm,
                                     ptrdiff_t sphere_radius_nm_stride,
                                     double *distance_nm,
                                     ptrdiff_t distance_nm_stride,
                                     double *initial_bearing_deg,
                                     ptrdiff_t initial_bearing_deg_stride,
                                     double *final_bearing_deg,
                                     ptrdiff_t final_bearing_deg_stride,
                                     int32_t *status);

/**
 * The point reached along a great circle of a sphere.
 *
 * Spherical trigonometry.
 *
 * @param lat_deg latitude of the start, -90 to 90
 * @param lon_deg longitude of the start, any finite number
 * @param bearing_deg bearing at the start, any finite number
 * @param distance_nm length of the line, 0 to 10 900
 * @param sphere_radius_nm radius of the sphere, 1 to 100 000
 * @param[out] latitude_deg Latitude of the point reached, -90 to 90; may be NULL
 * @param[out] longitude_deg Longitude of the point reached, -180 to 180; may be NULL
 * @param[out] final_bearing_deg Bearing of the circle there, onward, 0 to 360; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding on the sphere. For the earth itself use `geodesic_direct`.
 * Degenerate cases: From a pole the bearing is taken against the meridian of the longitude given there.
 * Errors: A value outside its range.
 * Source: Spherical trigonometry; the default radius is the mean one of WGS-84.
 *
 * Example: lubber_great_circle_direct(0.0, 0.0, 90.0, 60.0, 3437.746771, NULL, &value, NULL) gives 1.0000
 */
int32_t lubber_great_circle_direct(double lat_deg,
                                   double lon_deg,
                                   double bearing_deg,
                                   double distance_nm,
                                   double sphere_radius_nm,
                                   double *latitude_deg,
                                   double *longitude_deg,
                                   double *final_bearing_deg);

/**
 * `lubber_great_circle_direct` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_great_circle_direct_n(size_t count,
                                    const double *lat_deg,
                                    ptrdiff_t lat_deg_stride,
                                    const double *lon_deg,
                                    ptrdiff_t lon_deg_stride,
                                    const double *bearing_deg,
                                    ptrdiff_t bearing_deg_stride,
                                    const double *distance_nm,
                                    ptrdiff_t distance_nm_stride,
                                    const double *sphere_radius_nm,
                                    ptrdiff_t sphere_radius_nm_stride,
                                    double *latitude_deg,
                                    ptrdiff_t latitude_deg_stride,
                                    double *longitude_deg,
                                    ptrdiff_t longitude_deg_stride,
                                    double *final_bearing_deg,
                                    ptrdiff_t final_bearing_deg_stride,
                                    int32_t *status);

/**
 * The straight line between two points at their heights over the WGS-84 ellipsoid: slant range and elevation angle.
 *
 * The difference of the earth-centred coordinates, in the horizon of the first point.
 *
 * @param lat1_deg latitude of the first point, the antenna, -90 to 90
 * @param lon1_deg longitude of the first point, any finite number
 * @param elevation_ft elevation of the first point above mean sea level, -16 500 to 60 000
 * @param lat2_deg latitude of the second point, the aircraft, -90 to 90
 * @param lon2_deg longitude of the second point, any finite number
 * @param altitude_ft altitude of the second point above mean sea level, -16 500 to 400 000
 * @param[out] slant_range_nm Its length: the slant range; may be NULL
 * @param[out] elevation_angle_deg Angle of the second point above the horizontal of the first, negative below; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: A micrometre. Mean sea level is taken for the ellipsoid.
 * Degenerate cases: Coincident points are at range zero and elevation angle zero. The line is straight through the earth too: whether the second point is in
 * sight is not asked.
 * Errors: A value outside its range.
 * Source: Earth-centred coordinates of WGS-84 (NGA.STND.0036_1.0.0_WGS84, from memory).
 *
 * Example: lubber_straight_line(61.25, -11.5, 420.0, 61.5, -11.0, 31000.0, &value, NULL) gives 21.462
 */
int32_t lubber_straight_line(double lat1_deg,
                             double lon1_deg,
                             double elevation_ft,
                             double lat2_deg,
                             double lon2_deg,
                             double altitude_ft,
                             double *slant_range_nm,
                             double *elevation_angle_deg);

/**
 * `lubber_straight_line` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_straight_line_n(size_t count,
                              const double *lat1_deg,
                              ptrdiff_t lat1_deg_stride,
                              const double *lon1_deg,
                              ptrdiff_t lon1_deg_stride,
                              const double *elevation_ft,
                              ptrdiff_t elevation_ft_stride,
                              const double *lat2_deg,
                              ptrdiff_t lat2_deg_stride,
                              const double *lon2_deg,
                              ptrdiff_t lon2_deg_stride,
                              const double *altitude_ft,
                              ptrdiff_t altitude_ft_stride,
                              double *slant_range_nm,
                              ptrdiff_t slant_range_nm_stride,
                              double *elevation_angle_deg,
                              ptrdiff_t elevation_angle_deg_stride,
                              int32_t *status);

/**
 * Equivalent airspeed from true airspeed.
 *
 * `Ve = V sqrt(density/density at standard sea level)`.
 *
 * @param tas_kt true airspeed, 0 to 5000
 * @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
 * @param isa_deviation_k warmer than standard by this, -150 to 150
 * @param[out] eas_from_tas_kt the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.
 * Degenerate cases: Zero gives zero.
 * Errors: A value outside its range, or a result beyond 5000 kt or Mach 10.
 * Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
 * for the pitot pressure above Mach 1.
 *
 * Example: lubber_eas_from_tas_kt(450.0, 35000.0, 0.0, &value) gives 250.50
 */
int32_t lubber_eas_from_tas_kt(double tas_kt,
                               double pressure_altitude_ft,
                               double isa_deviation_k,
                               double *eas_from_tas_kt);

/**
 * `lubber_eas_from_tas_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_eas_from_tas_kt_n(size_t count,
                                const double *tas_kt,
                                ptrdiff_t tas_kt_stride,
                                const double *pressure_altitude_ft,
                                ptrdiff_t pressure_altitude_ft_stride,
                                const double *isa_deviation_k,
                                ptrdiff_t isa_deviation_k_stride,
                                double *eas_from_tas_kt,
                                ptrdiff_t eas_from_tas_kt_stride,
                                int32_t *status);

/**
 * True airspeed from equivalent airspeed: the inverse of `lubber_eas_from_tas_kt`.
 *
 * `V = Ve sqrt(density at standard sea level/density)`.
 *
 * @param eas_kt equivalent airspeed, 0 to 5000
 * @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
 * @param isa_deviation_k warmer than standard by this, -150 to 150
 * @param[out] tas_from_eas_kt the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.
 * Degenerate cases: Zero gives zero.
 * Errors: A value outside its range, or a result beyond 5000 kt or Mach 10.
 * Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
 * for the pitot pressure above Mach 1.
 *
 * Example: lubber_tas_from_eas_kt(250.0, 35000.0, 0.0, &value) gives 449.10
 */
int32_t lubber_tas_from_eas_kt(double eas_kt,
                               double pressure_altitude_ft,
                               double isa_deviation_k,
                               double *tas_from_eas_kt);

/**
 * `lubber_tas_from_eas_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_tas_from_eas_kt_n(size_t count,
                                const double *eas_kt,
                                ptrdiff_t eas_kt_stride,
                                const double *pressure_altitude_ft,
                                ptrdiff_t pressure_altitude_ft_stride,
                                const double *isa_deviation_k,
                                ptrdiff_t isa_deviation_k_stride,
                                double *tas_from_eas_kt,
                                ptrdiff_t tas_from_eas_kt_stride,
                                int32_t *status);

/**
 * Equivalent airspeed from calibrated airspeed: less by the effect of compressibility.
 *
 * `Ve = M a0 sqrt(p/p0)` with the Mach number of `lubber_mach_from_cas`; the temperature plays no part.
 *
 * @param cas_kt calibrated airspeed, 0 to 5000
 * @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
 * @param[out] eas_from_cas_kt the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.
 * Degenerate cases: Zero gives zero.
 * Errors: A value outside its range, or a result beyond 5000 kt or Mach 10.
 * Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
 * for the pitot pressure above Mach 1.
 *
 * Example: lubber_eas_from_cas_kt(280.0, 35000.0, &value) gives 263.55
 */
int32_t lubber_eas_from_cas_kt(double cas_kt, double pressure_altitude_ft, double *eas_from_cas_kt);

/**
 * `lubber_eas_from_cas_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_eas_from_cas_kt_n(size_t count,
                                const double *cas_kt,
                                ptrdiff_t cas_kt_stride,
                                const double *pressure_altitude_ft,
                                ptrdiff_t pressure_altitude_ft_stride,
                                double *eas_from_cas_kt,
                                ptrdiff_t eas_from_cas_kt_stride,
                                int32_t *status);

/**
 * Calibrated airspeed from equivalent airspeed: the inverse of `lubber_eas_from_cas_kt`.
 *
 * `M = Ve/(a0 sqrt(p/p0))`, and the calibrated airspeed of that Mach number.
 *
 * @param eas_kt equivalent airspeed, 0 to 5000
 * @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
 * @param[out] cas_from_eas_kt the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.
 * Degenerate cases: Zero gives zero.
 * Errors: A value outside its range, or a result beyond 5000 kt or Mach 10.
 * Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
 * for the pitot pressure above Mach 1.
 *
 * Example: lubber_cas_from_eas_kt(250.0, 35000.0, &value) gives 264.09
 */
int32_t lubber_cas_from_eas_kt(double eas_kt, double pressure_altitude_ft, double *cas_from_eas_kt);

/**
 * `lubber_cas_from_eas_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_cas_from_eas_kt_n(size_t count,
                                const double *eas_kt,
                                ptrdiff_t eas_kt_stride,
                                const double *pressure_altitude_ft,
                                ptrdiff_t pressure_altitude_ft_stride,
                                double *cas_from_eas_kt,
                                ptrdiff_t cas_from_eas_kt_stride,
                                int32_t *status);

/**
 * Equivalent airspeed from Mach number.
 *
 * `Ve = M a0 sqrt(p/p0)`.
 *
 * @param mach Mach number, 0 to 10
 * @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
 * @param[out] eas_from_mach_kt the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.
 * Degenerate cases: Zero gives zero.
 * Errors: A value outside its range, or a result beyond 5000 kt or Mach 10.
 * Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
 * for the pitot pressure above Mach 1.
 *
 * Example: lubber_eas_from_mach_kt(0.78, 35000.0, &value) gives 250.28
 */
int32_t lubber_eas_from_mach_kt(double mach, double pressure_altitude_ft, double *eas_from_mach_kt);

/**
 * `lubber_eas_from_mach_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_eas_from_mach_kt_n(size_t count,
                                 const double *mach,
                                 ptrdiff_t mach_stride,
                                 const double *pressure_altitude_ft,
                                 ptrdiff_t pressure_altitude_ft_stride,
                                 double *eas_from_mach_kt,
                                 ptrdiff_t eas_from_mach_kt_stride,
                                 int32_t *status);

/**
 * Mach number from equivalent airspeed.
 *
 * `M = Ve/(a0 sqrt(p/p0))`.
 *
 * @param eas_kt equivalent airspeed, 0 to 5000
 * @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
 * @param[out] mach_from_eas the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.
 * Degenerate cases: Zero gives zero.
 * Errors: A value outside its range, or a result beyond Mach 10.
 * Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
 * for the pitot pressure above Mach 1.
 *
 * Example: lubber_mach_from_eas(250.0, 35000.0, &value) gives 0.7791
 */
int32_t lubber_mach_from_eas(double eas_kt, double pressure_altitude_ft, double *mach_from_eas);

/**
 * `lubber_mach_from_eas` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_mach_from_eas_n(size_t count,
                              const double *eas_kt,
                              ptrdiff_t eas_kt_stride,
                              const double *pressure_altitude_ft,
                              ptrdiff_t pressure_altitude_ft_stride,
                              double *mach_from_eas,
                              ptrdiff_t mach_from_eas_stride,
                              int32_t *status);

/**
 * How far a radial's error leads aside at a distance from the station.
 *
 * `R sin(d / R) error` on a sphere of the mean radius, with the error in radians; in the plane `d error`.
 *
 * @param distance_nm distance from the station along the ground, above 0 to 5000
 * @param radial_error_deg error of the radial, 0 to 90
 * @param[out] radial_error_across_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Exact on the sphere along the arc; the ellipsoid moves it by less than 0.6 percent.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range.
 * Source: Derived.
 *
 * Example: lubber_radial_error_across_nm(40.0, 4.5, &value) gives 3.14
 */
int32_t lubber_radial_error_across_nm(double distance_nm, double radial_error_deg, double *radial_error_across_nm);

/**
 * `lubber_radial_error_across_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_radial_error_across_nm_n(size_t count,
                                       const double *distance_nm,
                                       ptrdiff_t distance_nm_stride,
                                       const double *radial_error_deg,
                                       ptrdiff_t radial_error_deg_stride,
                                       double *radial_error_across_nm,
                                       ptrdiff_t radial_error_across_nm_stride,
                                       int32_t *status);

/**
 * How far a DME's error leads along the ground at a distance from the station.
 *
 * `error slant / ((R + h) sin(d / R))` on a sphere of the mean radius, in the plane `error slant / d`.
 *
 * @param distance_nm distance from the station along the ground, above 0 to 5000
 * @param dme_error_nm error of the slant range, 0 to 1000
 * @param height_ft height above the station's antenna, -60 000 to 400 000
 * @param[out] dme_error_along_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Exact on the sphere for small errors; the ellipsoid moves it by less than 0.6 percent.
 * Degenerate cases: It grows without bound toward the station: overhead DME tells nothing of the place.
 * Errors: A value outside its range.
 * Source: Derived from the slant range of `slant_range_nm`.
 *
 * Example: lubber_dme_error_along_nm(3.0, 0.2, 36000.0, &value) gives 0.44
 */
int32_t lubber_dme_error_along_nm(double distance_nm,
                                  double dme_error_nm,
                                  double height_ft,
                                  double *dme_error_along_nm);

/**
 * `lubber_dme_error_along_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_dme_error_along_nm_n(size_t count,
                                   const double *distance_nm,
                                   ptrdiff_t distance_nm_stride,
                                   const double *dme_error_nm,
                                   ptrdiff_t dme_error_nm_stride,
                                   const double *height_ft,
                                   ptrdiff_t height_ft_stride,
                                   double *dme_error_along_nm,
                                   ptrdiff_t dme_error_along_nm_stride,
                                   int32_t *status);

/**
 * The error of a fix from two radials.
 *
 * An error across one line moves the fix along the other: the covariance is `(s1^2 p2 p2' + s2^2 p1 p1') / sin^2(crossing angle)`, with `s` the standard
 * deviations across the lines and `p` the unit vectors along them.
 *
 * @param first_radial_deg direction of the first radial at the fix, away from its station, any finite number
 * @param first_distance_nm distance from the first station along the ground, above 0 to 5000
 * @param second_radial_deg direction of the second radial at the fix, against the same north, any finite number
 * @param second_distance_nm distance from the second station along the ground, above 0 to 5000
 * @param first_error_deg standard deviation of the first radial, half a published tolerance, 0 to 90
 * @param second_error_deg standard deviation of the second radial, 0 to 90
 * @param track_deg the track, against the same north, any finite number
 * @param[out] semi_major_nm Standard deviation along the long axis of the error ellipse; may be NULL
 * @param[out] semi_minor_nm Standard deviation along its short axis; may be NULL
 * @param[out] major_axis_deg Direction of the long axis, 0 to 180; may be NULL
 * @param[out] north_nm Standard deviation by north; may be NULL
 * @param[out] east_nm Standard deviation by east; may be NULL
 * @param[out] correlation Correlation of the errors by north and by east, -1 to 1: with the two deviations the whole covariance; may be NULL
 * @param[out] along_track_nm Standard deviation along the track; may be NULL
 * @param[out] across_track_nm Standard deviation across the track; may be NULL
 * @param[out] root_mean_square_nm Root mean square distance of the fix from the place; twice of it holds 95 to 98 percent; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error for straight lines; it holds while the errors are small against the distances.
 * Degenerate cases: Without error in either line the ellipse is a point. Directions of two stations have to be brought to one north.
 * Errors: A value outside its range, or radials that do not cross.
 * Source: Derived: the covariance of the solution of two linear equations.
 *
 * Example: lubber_fix_of_two_radials(70.0, 40.0, 340.0, 20.0, 2.25, 2.25, 70.0, NULL, NULL, NULL, NULL, NULL, NULL, NULL, &value, NULL) gives 1.57
 */
int32_t lubber_fix_of_two_radials(double first_radial_deg,
                                  double first_distance_nm,
                                  double second_radial_deg,
                                  double second_distance_nm,
                                  double first_error_deg,
                                  double second_error_deg,
                                  double track_deg,
                                  double *semi_major_nm,
                                  double *semi_minor_nm,
                                  double *major_axis_deg,
                                  double *north_nm,
                                  double *east_nm,
                                  double *correlation,
                                  double *along_track_nm,
                                  double *across_track_nm,
                                  double *root_mean_square_nm);

/**
 * `lubber_fix_of_two_radials` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_fix_of_two_radials_n(size_t count,
                                   const double *first_radial_deg,
                                   ptrdiff_t first_radial_deg_stride,
                                   const double *first_distance_nm,
                                   ptrdiff_t first_distance_nm_stride,
                                   const double *second_radial_deg,
                                   ptrdiff_t second_radial_deg_stride,
                                   const double *second_distance_nm,
                                   ptrdiff_t second_distance_nm_stride,
                                   const double *first_error_deg,
                                   ptrdiff_t first_error_deg_stride,
                                   const double *second_error_deg,
                                   ptrdiff_t second_error_deg_stride,
                                   const double *track_deg,
                                   ptrdiff_t track_deg_stride,
                                   double *semi_major_nm,
                                   ptrdiff_t semi_major_nm_stride,
                                   double *semi_minor_nm,
                                   ptrdiff_t semi_minor_nm_stride,
                                   double *major_axis_deg,
                                   ptrdiff_t major_axis_deg_stride,
                                   double *north_nm,
                                   ptrdiff_t north_nm_stride,
                                   double *east_nm,
                                   ptrdiff_t east_nm_stride,
                                   double *correlation,
                                   ptrdiff_t correlation_stride,
                                   double *along_track_nm,
                                   ptrdiff_t along_track_nm_stride,
                                   double *across_track_nm,
                                   ptrdiff_t across_track_nm_stride,
                                   double *root_mean_square_nm,
                                   ptrdiff_t root_mean_square_nm_stride,
                                   int32_t *status);

/**
 * The error of a fix from a radial and a DME, of one station or of two.
 *
 * As `fix_of_two_radials`; the line of the DME runs across the bearing from its station, and its error along the ground is that of `dme_error_along_nm`.
 *
 * @param radial_deg direction of the radial at the fix, away from its station, any finite number
 * @param radial_distance_nm distance from the radial's station along the ground, above 0 to 5000
 * @param dme_bearing_deg direction from the DME station at the fix, against the same north; the radial, if it is one station
 * @param dme_distance_nm distance from the DME station along the ground, above 0 to 5000
 * @param radial_error_deg standard deviation of the radial, half a published tolerance, 0 to 90
 * @param dme_error_nm standard deviation of the slant range, half a published tolerance, 0 to 1000
 * @param height_ft height above the DME station's antenna, -60 000 to 400 000
 * @param track_deg the track, against the same north, any finite number
 * @param[out] semi_major_nm Standard deviation along the long axis of the error ellipse; may be NULL
 * @param[out] semi_minor_nm Standard deviation along its short axis; may be NULL
 * @param[out] major_axis_deg Direction of the long axis, 0 to 180; may be NULL
 * @param[out] north_nm Standard deviation by north; may be NULL
 * @param[out] east_nm Standard deviation by east; may be NULL
 * @param[out] correlation Correlation of the errors by north and by east, -1 to 1: with the two deviations the whole covariance; may be NULL
 * @param[out] along_track_nm Standard deviation along the track; may be NULL
 * @param[out] across_track_nm Standard deviation across the track; may be NULL
 * @param[out] root_mean_square_nm Root mean square distance of the fix from the place; twice of it holds 95 to 98 percent; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As `fix_of_two_radials`.
 * Degenerate cases: Toward the DME station its error along the ground grows without bound.
 * Errors: A value outside its range, or a radial square to the bearing from the DME station, whose line runs along it.
 * Source: Derived, as `fix_of_two_radials`.
 *
 * Example: lubber_fix_of_radial_and_dme(70.0, 40.0, 70.0, 40.0, 2.25, 0.1, 31000.0, 70.0, &value, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL) gives 1.57
 */
int32_t lubber_fix_of_radial_and_dme(double radial_deg,
                                     double radial_distance_nm,
                                     double dme_bearing_deg,
                                     double dme_distance_nm,
                                     double radial_error_deg,
                                     double dme_error_nm,
                                     double height_ft,
                                     double track_deg,
                                     double *semi_major_nm,
                                     double *semi_minor_nm,
                                     double *major_axis_deg,
                                     double *north_nm,
                                     double *east_nm,
                                     double *correlation,
                                     double *along_track_nm,
                                     double *across_track_nm,
                                     double *root_mean_square_nm);

/**
 * `lubber_fix_of_radial_and_dme` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_fix_of_radial_and_dme_n(size_t count,
                                      const double *radial_deg,
                                      ptrdiff_t radial_deg_stride,
                                      const double *radial_distance_nm,
                                      ptrdiff_t radial_distance_nm_stride,
                                      const double *dme_bearing_deg,
                                      ptrdiff_t dme_bearing_deg_stride,
                                      const double *dme_distance_nm,
                                      ptrdiff_t dme_distance_nm_stride,
                                      const double *radial_error_deg,
                                      ptrdiff_t radial_error_deg_stride,
                                      const double *dme_error_nm,
                                      ptrdiff_t dme_error_nm_stride,
                                      const double *height_ft,
                                      ptrdiff_t height_ft_stride,
                                      const double *track_deg,
                                      ptrdiff_t track_deg_stride,
                                      double *semi_major_nm,
                                      ptrdiff_t semi_major_nm_stride,
                                      double *semi_minor_nm,
                                      ptrdiff_t semi_minor_nm_stride,
                                      double *major_axis_deg,
                                      ptrdiff_t major_axis_deg_stride,
                                      double *north_nm,
                                      ptrdiff_t north_nm_stride,
                                      double *east_nm,
                                      ptrdiff_t east_nm_stride,
                                      double *correlation,
                                      ptrdiff_t correlation_stride,
                                      double *along_track_nm,
                                      ptrdiff_t along_track_nm_stride,
                                      double *across_track_nm,
                                      ptrdiff_t across_track_nm_stride,
                                      double *root_mean_square_nm,
                                      ptrdiff_t root_mean_square_nm_stride,
                                      int32_t *status);

/**
 * The error of a fix from two DME.
 *
 * As `fix_of_two_radials`, with the lines across the bearings from the stations.
 *
 * @param first_bearing_deg direction from the first station at the fix, any finite number
 * @param first_distance_nm distance from the first station along the ground, above 0 to 5000
 * @param second_bearing_deg direction from the second station at the fix, against the same north, any finite number
 * @param second_distance_nm distance from the second station along the ground, above 0 to 5000
 * @param first_error_nm standard deviation of the first slant range, half a published tolerance, 0 to 1000
 * @param second_error_nm standard deviation of the second slant range, 0 to 1000
 * @param first_height_ft height above the first antenna, -60 000 to 400 000
 * @param second_height_ft height above the second antenna, -60 000 to 400 000
 * @param track_deg the track, against the same north, any finite number
 * @param[out] semi_major_nm Standard deviation along the long axis of the error ellipse; may be NULL
 * @param[out] semi_minor_nm Standard deviation along its short axis; may be NULL
 * @param[out] major_axis_deg Direction of the long axis, 0 to 180; may be NULL
 * @param[out] north_nm Standard deviation by north; may be NULL
 * @param[out] east_nm Standard deviation by east; may be NULL
 * @param[out] correlation Correlation of the errors by north and by east, -1 to 1: with the two deviations the whole covariance; may be NULL
 * @param[out] along_track_nm Standard deviation along the track; may be NULL
 * @param[out] across_track_nm Standard deviation across the track; may be NULL
 * @param[out] root_mean_square_nm Root mean square distance of the fix from the place; twice of it holds 95 to 98 percent; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As `fix_of_two_radials`.
 * Degenerate cases: Two DME give two fixes, alike in their error; which one is meant is not asked here.
 * Errors: A value outside its range, or stations in line with the fix.
 * Source: Derived, as `fix_of_two_radials`.
 *
 * Example: lubber_fix_of_two_dme(70.0, 40.0, 130.0, 55.0, 0.1, 0.1, 0.0, 0.0, 0.0, &value, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL) gives 0.141
 */
int32_t lubber_fix_of_two_dme(double first_bearing_deg,
                              double first_distance_nm,
                              double second_bearing_deg,
                              double second_distance_nm,
                              double first_error_nm,
                              double second_error_nm,
                              double first_height_ft,
                              double second_height_ft,
                              double track_deg,
                              double *semi_major_nm,
                              double *semi_minor_nm,
                              double *major_axis_deg,
                              double *north_nm,
                              double *east_nm,
                              double *correlation,
                              double *along_track_nm,
                              double *across_track_nm,
                              double *root_mean_square_nm);

/**
 * `lubber_fix_of_two_dme` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_fix_of_two_dme_n(size_t count,
                               const double *first_bearing_deg,
                               ptrdiff_t first_bearing_deg_stride,
                               const double *first_distance_nm,
                               ptrdiff_t first_distance_nm_stride,
                               const double *second_bearing_deg,
                               ptrdiff_t second_bearing_deg_stride,
                               const double *second_distance_nm,
                               ptrdiff_t second_distance_nm_stride,
                               const double *first_error_nm,
                               ptrdiff_t first_error_nm_stride,
                               const double *second_error_nm,
                               ptrdiff_t second_error_nm_stride,
                               const double *first_height_ft,
                               ptrdiff_t first_height_ft_stride,
                               const double *second_height_ft,
                               ptrdiff_t second_height_ft_stride,
                               const double *track_deg,
                               ptrdiff_t track_deg_stride,
                               double *semi_major_nm,
                               ptrdiff_t semi_major_nm_stride,
                               double *semi_minor_nm,
                               ptrdiff_t semi_minor_nm_stride,
                               double *major_axis_deg,
                               ptrdiff_t major_axis_deg_stride,
                               double *north_nm,
                               ptrdiff_t north_nm_stride,
                               double *east_nm,
                               ptrdiff_t east_nm_stride,
                               double *correlation,
                               ptrdiff_t correlation_stride,
                               double *along_track_nm,
                               ptrdiff_t along_track_nm_stride,
                               double *across_track_nm,
                               ptrdiff_t across_track_nm_stride,
                               double *root_mean_square_nm,
                               ptrdiff_t root_mean_square_nm_stride,
                               int32_t *status);

/**
 * The factor by which an ellipse of one standard deviation grows to hold a share of all fixes.
 *
 * `sqrt(-2 ln(1 - p))`.
 *
 * @param confidence the share, above 0 below 1
 * @param[out] ellipse_factor the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error, for normal errors.
 * Degenerate cases: One standard deviation holds 39 percent of the fixes, where along a line it holds 68.
 * Errors: A value outside its range.
 * Source: The distribution of the radius of two independent normal errors (Rayleigh); derived.
 *
 * Example: lubber_ellipse_factor(0.95, &value) gives 2.448
 */
int32_t lubber_ellipse_factor(double confidence, double *ellipse_factor);

/**
 * `lubber_ellipse_factor` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_ellipse_factor_n(size_t count,
                               const double *confidence,
                               ptrdiff_t confidence_stride,
                               double *ellipse_factor,
                               ptrdiff_t ellipse_factor_stride,
                               int32_t *status);

/**
 * A true direction counted from the north of a grid.
 *
 * `true - convergence`, 0 to 360.
 *
 * @param true_deg true direction, any finite number
 * @param convergence_deg angle from true to grid north at the place, positive east, -180 to 180
 * @param[out] grid_from_true_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: None.
 * Errors: A value outside its range.
 * Source: The definition of convergence.
 *
 * Example: lubber_grid_from_true_deg(90.0, 30.0, &value) gives 60
 */
int32_t lubber_grid_from_true_deg(double true_deg, double convergence_deg, double *grid_from_true_deg);

/**
 * `lubber_grid_from_true_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_grid_from_true_deg_n(size_t count,
                                   const double *true_deg,
                                   ptrdiff_t true_deg_stride,
                                   const double *convergence_deg,
                                   ptrdiff_t convergence_deg_stride,
                                   double *grid_from_true_deg,
                                   ptrdiff_t grid_from_true_deg_stride,
                                   int32_t *status);

/**
 * A direction of a grid counted from true north.
 *
 * `grid + convergence`, 0 to 360.
 *
 * @param grid_deg direction from the grid's north, any finite number
 * @param convergence_deg angle from true to grid north at the place, positive east, -180 to 180
 * @param[out] true_from_grid_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: None.
 * Errors: A value outside its range.
 * Source: The definition of convergence.
 *
 * Example: lubber_true_from_grid_deg(60.0, 30.0, &value) gives 90
 */
int32_t lubber_true_from_grid_deg(double grid_deg, double convergence_deg, double *true_from_grid_deg);

/**
 * `lubber_true_from_grid_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_true_from_grid_deg_n(size_t count,
                                   const double *grid_deg,
                                   ptrdiff_t grid_deg_stride,
                                   const double *convergence_deg,
                                   ptrdiff_t convergence_deg_stride,
                                   double *true_from_grid_deg,
                                   ptrdiff_t true_from_grid_deg_stride,
                                   int32_t *status);

/**
 * The angle from true north to the north of the polar grid, positive east.
 *
 * The longitude in the north, its negative in the south: the grid's north is the direction in which the meridian of Greenwich runs north.
 *
 * @param lat_deg latitude, -90 to 90; its sign tells the pole
 * @param lon_deg longitude, any finite number
 * @param[out] polar_grid_convergence_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: Off the polar regions the grid is not used. At a pole the convergence goes with the longitude given.
 * Errors: A value outside its range.
 * Source: The grid of the Universal Polar Stereographic projection; grid variation of the World Magnetic Model.
 *
 * Example: lubber_polar_grid_convergence_deg(80.0, 30.0, &value) gives 30
 */
int32_t lubber_polar_grid_convergence_deg(double lat_deg,
                                          double lon_deg,
                                          double *polar_grid_convergence_deg);

/**
 * `lubber_polar_grid_convergence_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_polar_grid_convergence_deg_n(size_t count,
                                           const double *lat_deg,
                                           ptrdiff_t lat_deg_stride,
                                           const double *lon_deg,
                                           ptrdiff_t lon_deg_stride,
                                           double *polar_grid_convergence_deg,
                                           ptrdiff_t polar_grid_convergence_deg_stride,
                                           int32_t *status);

/**
 * The angle from true north to the north of a chart on Lambert's conformal cone, positive east.
 *
 * `n (longitude - meridian)`, the difference reduced to half a circle either way, with the constant of the cone n from the parallels on WGS-84.
 *
 * @param lon_deg longitude, any finite number
 * @param meridian_lon_deg longitude of the meridian whose north is the chart's, any finite number
 * @param parallel1_lat_deg one standard parallel, -90 to 90
 * @param parallel2_lat_deg the other, or the same again, -90 to 90
 * @param[out] lambert_grid_convergence_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: Parallels as far north as south make a cylinder: 0. With a pole for a parallel it is the polar grid.
 * Errors: A value outside its range.
 * Source: J. P. Snyder, Map Projections: A Working Manual, US Geological Survey Professional Paper 1395 (1987), equations 14-4, 15-8.
 *
 * Example: lubber_lambert_grid_convergence_deg(-86.0, -96.0, 33.0, 45.0, &value) gives 6.30
 */
int32_t lubber_lambert_grid_convergence_deg(double lon_deg,
                                            double meridian_lon_deg,
                                            double parallel1_lat_deg,
                                            double parallel2_lat_deg,
                                            double *lambert_grid_convergence_deg);

/**
 * `lubber_lambert_grid_convergence_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_lambert_grid_convergence_deg_n(size_t count,
                                             const double *lon_deg,
                                             ptrdiff_t lon_deg_stride,
                                             const double *meridian_lon_deg,
                                             ptrdiff_t meridian_lon_deg_stride,
                                             const double *parallel1_lat_deg,
                                             ptrdiff_t parallel1_lat_deg_stride,
                                             const double *parallel2_lat_deg,
                                             ptrdiff_t parallel2_lat_deg_stride,
                                             double *lambert_grid_convergence_deg,
                                             ptrdiff_t lambert_grid_convergence_deg_stride,
                                             int32_t *status);

/**
 * The angle from true north to the north of a map on the transverse Mercator projection, positive east.
 *
 * On a sphere `atan(tan(l) sin(lat))`, `l` the longitude from the meridian; on WGS-84 with the conformal latitude and Krueger's series.
 *
 * @param lat_deg latitude, -90 to 90
 * @param lon_deg longitude, any finite number
 * @param meridian_lon_deg longitude of the meridian whose north is the map's, within 60 degrees of `lon_deg`
 * @param[out] transverse_grid_convergence_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: 1e-13 degrees to 35 degrees from the meridian, 1e-11 to 45, 1e-9 to 60.
 * Degenerate cases: Zero on the meridian and on the equator. At a pole it goes with the longitude given.
 * Errors: A value outside its range, a place beyond 60 degrees from the meridian.
 * Source: C. F. F. Karney, Transverse Mercator with an accuracy of a few nanometers, Journal of Geodesy 85 (2011) 475-485, equations 7 to 11, 23 to 25.
 *
 * Example: lubber_transverse_grid_convergence_deg(60.0, -6.0, -9.0, &value) gives 2.5987
 */
int32_t lubber_transverse_grid_convergence_deg(double lat_deg,
                                               double lon_deg,
                                               double meridian_lon_deg,
                                               double *transverse_grid_convergence_deg);

/**
 * `lubber_transverse_grid_convergence_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_transverse_grid_convergence_deg_n(size_t count,
                                                const double *lat_deg,
                                                ptrdiff_t lat_deg_stride,
                                                const double *lon_deg,
                                                ptrdiff_t lon_deg_stride,
                                                const double *meridian_lon_deg,
                                                ptrdiff_t meridian_lon_deg_stride,
                                                double *transverse_grid_convergence_deg,
                                                ptrdiff_t transverse_grid_convergence_deg_stride,
                                                int32_t *status);

/**
 * The meridian of the zone of the Universal Transverse Mercator grid in which a place lies.
 *
 * Zones are 6 degrees wide, but for those that are widened about Norway and Svalbard; a place between two belongs to the eastern one.
 *
 * @param lat_deg latitude, -90 to 90
 * @param lon_deg longitude, any finite number
 * @param[out] utm_meridian_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Exact.
 * Degenerate cases: The grid is laid out from 80 degrees south to 84 north; toward the poles the zones go on, and the polar grid is used.
 * Errors: A value outside its range.
 * Source: NGA.STND.0037_2.0.0_GRIDS, Universal Grids and Grid Reference Systems (2014), section 3 (from memory).
 *
 * Example: lubber_utm_meridian_deg(60.0, -10.0, &value) gives -9
 */
int32_t lubber_utm_meridian_deg(double lat_deg,
                                double lon_deg,
                                double *utm_meridian_deg);

/**
 * `lubber_utm_meridian_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_utm_meridian_deg_n(size_t count,
                                 const double *lat_deg,
                                 ptrdiff_t lat_deg_stride,
                                 const double *lon_deg,
                                 ptrdiff_t lon_deg_stride,
                                 double *utm_meridian_deg,
                                 ptrdiff_t utm_meridian_deg_stride,
                                 int32_t *status);

/**
 * How to enter a holding pattern, by the sector in which the heading lies.
 *
 * With the angle from the heading to the outbound course counted positive to the side of the turns: from 0 to 70
 * degrees offset (sector 2, the teardrop), from 0 to -110 parallel (sector 1), else direct (sector 3). Within 5
 * degrees of a boundary the entry across it may be flown too.
 *
 * @param heading_deg heading at which the fix is reached, any finite number
 * @param inbound_course_deg course flown to the fix in the pattern, against the same north
 * @param side which way the turns go: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
 * @param[out] entry The entry of the sector in which the heading lies: its number, LUBBER_HOLDING_ENTRY_PARALLEL, LUBBER_HOLDING_ENTRY_OFFSET, LUBBER_HOLDING_ENTRY_DIRECT; may be NULL
 * @param[out] also The entry across the boundary, LUBBER_HOLDING_ENTRY_PARALLEL, LUBBER_HOLDING_ENTRY_OFFSET, LUBBER_HOLDING_ENTRY_DIRECT, if the heading lies in the zone about it; else NaN; may be NULL
 * @param[out] to_outbound_deg From the heading to the outbound course, right positive; may be NULL
 * @param[out] to_boundary_deg Angle between the heading and the nearest boundary of two sectors, without its side; may be NULL
 * @param[out] first_course_deg The first course flown from the fix: the outbound course, 30 degrees off it into the holding side for an offset entry; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error.
 * Degenerate cases: On a boundary both entries are given: at 0 offset is named first, at 70 offset, at -110 parallel.
 * Errors: A value outside its range.
 * Source: CNATRA P-821 figure 3-8, P-801 figures 17A and 17B; the zone: FAA Aeronautical Information Manual (3 April 2014), 5-3-8 j 6 (d), CNATRA P-821
 * and ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 6 Chapter 1, from memory.
 *
 * Example: lubber_holding_entry(15.0, 270.0, LUBBER_HOLDING_SIDE_RIGHT, &value, NULL, NULL, NULL, NULL) gives 3
 */
int32_t lubber_holding_entry(double heading_deg,
                             double inbound_course_deg,
                             int32_t side,
                             double *entry,
                             double *also,
                             double *to_outbound_deg,
                             double *to_boundary_deg,
                             double *first_course_deg);

/**
 * `lubber_holding_entry` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `side` is one code for all points: which way the turns go: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_holding_entry_n(size_t count,
                              const double *heading_deg,
                              ptrdiff_t heading_deg_stride,
                              const double *inbound_course_deg,
                              ptrdiff_t inbound_course_deg_stride,
                              int32_t side,
                              double *entry,
                              ptrdiff_t entry_stride,
                              double *also,
                              ptrdiff_t also_stride,
                              double *to_outbound_deg,
                              ptrdiff_t to_outbound_deg_stride,
                              double *to_boundary_deg,
                              ptrdiff_t to_boundary_deg_stride,
                              double *first_course_deg,
                              ptrdiff_t first_course_deg_stride,
                              int32_t *status);

/**
 * Which leg of a holding pattern is timed, and for how long.
 *
 * One minute at or below 14 000 ft, a minute and a half above: of the outbound leg in still air by ICAO, of the
 * inbound leg by the FAA.
 *
 * @param altitude_ft altitude or flight level, -50 000 to 300 000
 * @param authority whose timing: LUBBER_TIMING_AUTHORITY_ICAO, LUBBER_TIMING_AUTHORITY_FAA
 * @param[out] timed The leg that is timed, LUBBER_TIMED_LEG_INBOUND, LUBBER_TIMED_LEG_OUTBOUND, LUBBER_TIMED_LEG_OUTBOUND_FROM_LEVEL; may be NULL
 * @param[out] time_s Its time; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As published.
 * Degenerate cases: 14 000 ft belong to the lower band. Outbound the clock starts over or abeam the fix, whichever is later; where
 * abeam cannot be told, with wings level.
 * Errors: A value outside its range.
 * Source: ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 6 Chapter 1, as quoted; FAA Aeronautical Information Manual 5-3-8, edition not shown in the copy
 * read, and CNATRA T-6B FTI chapter 7.
 *
 * Example: lubber_holding_timing(14001.0, LUBBER_TIMING_AUTHORITY_ICAO, NULL, &value) gives 90
 */
int32_t lubber_holding_timing(double altitude_ft,
                              int32_t authority,
                              double *timed,
                              double *time_s);

/**
 * `lubber_holding_timing` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `authority` is one code for all points: whose timing: LUBBER_TIMING_AUTHORITY_ICAO, LUBBER_TIMING_AUTHORITY_FAA
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_holding_timing_n(size_t count,
                               const double *altitude_ft,
                               ptrdiff_t altitude_ft_stride,
                               int32_t authority,
                               double *timed,
                               ptrdiff_t timed_stride,
                               double *time_s,
                               ptrdiff_t time_s_stride,
                               int32_t *status);

/**
 * The greatest speed at which a holding pattern may be flown.
 *
 * By authority and altitude, as published; a limit of both airspeed and Mach number means the lesser of the two.
 *
 * @param altitude_ft altitude or flight level, -16 420 to 262 467
 * @param rule whose limit, with its edition: LUBBER_HOLDING_SPEED_RULE_FAA, LUBBER_HOLDING_SPEED_RULE_FAA_AIR_FORCE, LUBBER_HOLDING_SPEED_RULE_FAA_NAVY, LUBBER_HOLDING_SPEED_RULE_ICAO, LUBBER_HOLDING_SPEED_RULE_ICAO_TURBULENCE, LUBBER_HOLDING_SPEED_RULE_ICAO_CATEGORIES_A_B, LUBBER_HOLDING_SPEED_RULE_CANADA, LUBBER_HOLDING_SPEED_RULE_CANADA_PROPELLER, LUBBER_HOLDING_SPEED_RULE_CANADA_JET, LUBBER_HOLDING_SPEED_RULE_FAA_ICON, LUBBER_HOLDING_SPEED_RULE_FAA_CLIMB_IN, LUBBER_HOLDING_SPEED_RULE_FAA_PROPELLER_NINETIES, LUBBER_HOLDING_SPEED_RULE_FAA_JET_NINETIES, LUBBER_HOLDING_SPEED_RULE_ICAO_FIRST_EDITION_PROPELLER, LUBBER_HOLDING_SPEED_RULE_ICAO_FIRST_EDITION_JET, LUBBER_HOLDING_SPEED_RULE_CANADA_MILITARY, LUBBER_HOLDING_SPEED_RULE_CANADA_CLIMB
 * @param[out] indicated_kt The greatest indicated airspeed; NaN where only a Mach number or nothing limits; may be NULL
 * @param[out] mach The greatest Mach number; NaN where only an airspeed or nothing limits; may be NULL
 * @param[out] calibrated_kt The greatest calibrated airspeed that both leave, with the altitude taken for pressure altitude; NaN where nothing limits; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As published. Limits change: each alternative of the rule names its edition.
 * Degenerate cases: An altitude that bounds a band belongs to the band below it. Where nothing limits the speed, every output is NaN.
 * Errors: A value outside its range.
 * Source: FAA Aeronautical Information Manual (20 April 2023), 5-3-8 j 2; AFMAN 11-217V1 (3 January 2005), tables 10.1 and 18.4, the latter
 * after ICAO Doc 8168; Transport Canada Aeronautical Information Manual, RAC 10.7, before and since October 2018, quoted; the
 * FAA's of before 1998 and the first edition of ICAO Doc 8168, from memory.
 *
 * Example: lubber_holding_speed(14000.0, LUBBER_HOLDING_SPEED_RULE_FAA, &value, NULL, NULL) gives 230
 */
int32_t lubber_holding_speed(double altitude_ft,
                             int32_t rule,
                             double *indicated_kt,
                             double *mach,
                             double *calibrated_kt);

/**
 * `lubber_holding_speed` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `rule` is one code for all points: whose limit, with its edition: LUBBER_HOLDING_SPEED_RULE_FAA, LUBBER_HOLDING_SPEED_RULE_FAA_AIR_FORCE, LUBBER_HOLDING_SPEED_RULE_FAA_NAVY, LUBBER_HOLDING_SPEED_RULE_ICAO, LUBBER_HOLDING_SPEED_RULE_ICAO_TURBULENCE, LUBBER_HOLDING_SPEED_RULE_ICAO_CATEGORIES_A_B, LUBBER_HOLDING_SPEED_RULE_CANADA, LUBBER_HOLDING_SPEED_RULE_CANADA_PROPELLER, LUBBER_HOLDING_SPEED_RULE_CANADA_JET, LUBBER_HOLDING_SPEED_RULE_FAA_ICON, LUBBER_HOLDING_SPEED_RULE_FAA_CLIMB_IN, LUBBER_HOLDING_SPEED_RULE_FAA_PROPELLER_NINETIES, LUBBER_HOLDING_SPEED_RULE_FAA_JET_NINETIES, LUBBER_HOLDING_SPEED_RULE_ICAO_FIRST_EDITION_PROPELLER, LUBBER_HOLDING_SPEED_RULE_ICAO_FIRST_EDITION_JET, LUBBER_HOLDING_SPEED_RULE_CANADA_MILITARY, LUBBER_HOLDING_SPEED_RULE_CANADA_CLIMB
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_holding_speed_n(size_t count,
                              const double *altitude_ft,
                              ptrdiff_t altitude_ft_stride,
                              int32_t rule,
                              double *indicated_kt,
                              ptrdiff_t indicated_kt_stride,
                              double *mach,
                              ptrdiff_t mach_stride,
                              double *calibrated_kt,
                              ptrdiff_t calibrated_kt_stride,
                              int32_t *status);

/**
 * The turns of a holding pattern: standard rate or a bank, whichever needs less bank.
 *
 * The bank is the lesser of 25 degrees (30 by the FAA without a flight director) and `atan(rate V / g)` at 3 degrees
 * per second.
 *
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param rule whose limits: LUBBER_HOLDING_BANK_RULE_ICAO, LUBBER_HOLDING_BANK_RULE_FAA, LUBBER_HOLDING_BANK_RULE_FAA_FLIGHT_DIRECTOR
 * @param[out] bank_deg The bank that is flown; may be NULL
 * @param[out] turn_rate_deg_per_s The rate of turn at it; may be NULL
 * @param[out] radius_nm The radius in still air; may be NULL
 * @param[out] governed_by What governs the bank, LUBBER_GOVERNOR_BANK_LIMIT, LUBBER_GOVERNOR_TURN_RATE_LIMIT, LUBBER_GOVERNOR_ROLL_RATE, LUBBER_GOVERNOR_NO_TURN; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range.
 * Source: ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 6 Chapter 1, as quoted; FAA Aeronautical Information Manual (3 April 2014), 5-3-8 j 6 (b), and
 * (20 April 2023), 5-3-8 j.
 *
 * Example: lubber_holding_turn(220.0, LUBBER_HOLDING_BANK_RULE_ICAO, NULL, &value, NULL, NULL) gives 2.32
 */
int32_t lubber_holding_turn(double true_airspeed_kt,
                            int32_t rule,
                            double *bank_deg,
                            double *turn_rate_deg_per_s,
                            double *radius_nm,
                            double *governed_by);

/**
 * `lubber_holding_turn` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `rule` is one code for all points: whose limits: LUBBER_HOLDING_BANK_RULE_ICAO, LUBBER_HOLDING_BANK_RULE_FAA, LUBBER_HOLDING_BANK_RULE_FAA_FLIGHT_DIRECTOR
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_holding_turn_n(size_t count,
                             const double *true_airspeed_kt,
                             ptrdiff_t true_airspeed_kt_stride,
                             int32_t rule,
                             double *bank_deg,
                             ptrdiff_t bank_deg_stride,
                             double *turn_rate_deg_per_s,
                             ptrdiff_t turn_rate_deg_per_s_stride,
                             double *radius_nm,
                             ptrdiff_t radius_nm_stride,
                             double *governed_by,
                             ptrdiff_t governed_by_stride,
                             int32_t *status);

/**
 * The DME reading at the end of the outbound leg of a holding pattern whose fix is a distance on a radial.
 *
 * The reading at the fix is turned into ground distance; the leg ends so far before the fix and so far across, as
 * `holding_pattern` gives them in any wind; the distance there is turned back into slant range.
 *
 * @param fix_dme_nm DME reading at the fix, 0 to 10 900
 * @param inbound whether the inbound leg is flown toward the station (inbound) or away from it (outbound): LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
 * @param before_fix_nm where the leg ends, before the fix along the inbound course, -10 000 to 10 000
 * @param across_nm where the leg ends, across the inbound course, -5000 to 5000
 * @param height_ft height above the station's antenna, -60 000 to 400 000
 * @param[out] outbound_end_dme_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: That of `slant_range_nm`; the pattern is laid out on a plane.
 * Degenerate cases: Held away from the station, a leg that ends beyond it counts on.
 * Errors: A value outside its range, a reading below the height.
 * Source: The right triangle on the ground, and the law of cosines between the radii of the earth and of the flight.
 *
 * Example: lubber_outbound_end_dme_nm(30.0, LUBBER_RADIAL_FLOWN_INBOUND, 4.7, 4.9, 14000.0, &value) gives 35.03
 */
int32_t lubber_outbound_end_dme_nm(double fix_dme_nm,
                                   int32_t inbound,
                                   double before_fix_nm,
                                   double across_nm,
                                   double height_ft,
                                   double *outbound_end_dme_nm);

/**
 * `lubber_outbound_end_dme_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `inbound` is one code for all points: whether the inbound leg is flown toward the station (inbound) or away from it (outbound): LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_outbound_end_dme_nm_n(size_t count,
                                    const double *fix_dme_nm,
                                    ptrdiff_t fix_dme_nm_stride,
                                    int32_t inbound,
                                    const double *before_fix_nm,
                                    ptrdiff_t before_fix_nm_stride,
                                    const double *across_nm,
                                    ptrdiff_t across_nm_stride,
                                    const double *height_ft,
                                    ptrdiff_t height_ft_stride,
                                    double *outbound_end_dme_nm,
                                    ptrdiff_t outbound_end_dme_nm_stride,
                                    int32_t *status);

/**
 * The limiting outbound DME distance of procedure design, exact and rounded as published.
 *
 * `sqrt((Ds + ds)^2 + 4 r^2 + h^2)` in the published form, seen over a curved earth here. Held toward the station it
 * is rounded up to a whole mile, but down if the decimal is below 0.25 (at or below 14 000 ft) or below 0.5 (above).
 *
 * @param fix_dme_nm DME reading at the fix, 0 to 10 900
 * @param inbound whether the inbound leg is flown toward the station (inbound) or away from it (outbound): LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
 * @param outbound_leg_nm length of the outbound leg, 0 to 10 900
 * @param turn_radius_nm radius of the turn, above 0 to 1000
 * @param altitude_ft altitude, -16 500 to 400 000
 * @param station_elevation_ft elevation of the station's antenna, -16 500 to 60 000
 * @param[out] limiting_dme_nm DME reading at the end of the still-air outbound leg; may be NULL
 * @param[out] rounded_nm To a whole nautical mile by the published rule; NaN for a pattern held away from the station, whose rule was not read; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: The curve of the earth adds up to 0.01 NM to the flat form within 60 NM and 14 000 ft.
 * Degenerate cases: Held away from the station the sign of the leg changes.
 * Errors: A value outside its range, a reading below the height.
 * Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 4 Chapter 3 Appendix C, 3.3.4 c) and d).
 *
 * Example: lubber_limiting_dme(30.0, LUBBER_RADIAL_FLOWN_INBOUND, 4.677, 2.461, 14000.0, 0.0, NULL, &value) gives 35
 */
int32_t lubber_limiting_dme(double fix_dme_nm,
                            int32_t inbound,
                            double outbound_leg_nm,
                            double turn_radius_nm,
                            double altitude_ft,
                            double station_elevation_ft,
                            double *limiting_dme_nm,
                            double *rounded_nm);

/**
 * `lubber_limiting_dme` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `inbound` is one code for all points: whether the inbound leg is flown toward the station (inbound) or away from it (outbound): LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_limiting_dme_n(size_t count,
                             const double *fix_dme_nm,
                             ptrdiff_t fix_dme_nm_stride,
                             int32_t inbound,
                             const double *outbound_leg_nm,
                             ptrdiff_t outbound_leg_nm_stride,
                             const double *turn_radius_nm,
                             ptrdiff_t turn_radius_nm_stride,
                             const double *altitude_ft,
                             ptrdiff_t altitude_ft_stride,
                             const double *station_elevation_ft,
                             ptrdiff_t station_elevation_ft_stride,
                             double *limiting_dme_nm,
                             ptrdiff_t limiting_dme_nm_stride,
                             double *rounded_nm,
                             ptrdiff_t rounded_nm_stride,
                             int32_t *status);

/**
 * Heading, distance and time to intercept a course from beside it at an angle, in wind, and the lead of the turn onto it.
 *
 * `|x| / sin(angle)` to the course and `|x| / tan(angle)` along it, flown on the heading that holds that track; the
 * turn onto the course begins its lead before, as `lead_nm` has it.
 *
 * @param course_deg the course, any finite number
 * @param cross_track_nm where the aircraft is, positive right of the course, -5000 to 5000
 * @param intercept_angle_deg angle at which the course is intercepted, above 0 to 90
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param wind_from_deg where the wind blows from, against the same north
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param bank_limit_deg greatest bank, above 0 below 90
 * @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
 * @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
 * @param[out] track_deg Direction over the ground to the course; may be NULL
 * @param[out] heading_deg Heading that holds it; may be NULL
 * @param[out] groundspeed_kt Groundspeed on the way; may be NULL
 * @param[out] distance_nm Distance over the ground to the course; may be NULL
 * @param[out] time_s Time to the course; may be NULL
 * @param[out] along_nm Distance gained along the course on the way; may be NULL
 * @param[out] lead_nm Distance before the course, along the track, at which the turn onto it begins; may be NULL
 * @param[out] distance_to_roll_in_nm Distance over the ground to where the turn begins; negative where that is behind; may be NULL
 * @param[out] time_to_roll_in_s Time to where the turn begins; negative where that is behind; may be NULL
 * @param[out] cross_track_at_roll_in_nm Cross-track at which the turn begins, positive right of the course; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error on a plane; 1e-4 of the distance on the ellipsoid within 60 NM, with the cross-track measured on
 * it.
 * Degenerate cases: On the course the track is the course; distance, time and lead are zero. Closer than the turn needs, the distance
 * to roll-in is negative.
 * Errors: A value outside its range, a course or a way to it that the airspeed cannot hold.
 * Source: The right triangle of cross-track and track; the lead as `lead_nm`.
 *
 * Example: lubber_intercept(90.0, -4.0, 30.0, 180.0, 40.0, 35.0, 25.0, 3.0, 5.0, NULL, &value, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL) gives 109.0
 */
int32_t lubber_intercept(double course_deg,
                         double cross_track_nm,
                         double intercept_angle_deg,
                         double true_airspeed_kt,
                         double wind_from_deg,
                         double wind_speed_kt,
                         double bank_limit_deg,
                         double turn_rate_limit_deg_per_s,
                         double roll_rate_deg_per_s,
                         double *track_deg,
                         double *heading_deg,
                         double *groundspeed_kt,
                         double *distance_nm,
                         double *time_s,
                         double *along_nm,
                         double *lead_nm,
                         double *distance_to_roll_in_nm,
                         double *time_to_roll_in_s,
                         double *cross_track_at_roll_in_nm);

/**
 * `lubber_intercept` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_intercept_n(size_t count,
                          const double *course_deg,
                          ptrdiff_t course_deg_stride,
                          const double *cross_track_nm,
                          ptrdiff_t cross_track_nm_stride,
                          const double *intercept_angle_deg,
                          ptrdiff_t intercept_angle_deg_stride,
                          const double *true_airspeed_kt,
                          ptrdiff_t true_airspeed_kt_stride,
                          const double *wind_from_deg,
                          ptrdiff_t wind_from_deg_stride,
                          const double *wind_speed_kt,
                          ptrdiff_t wind_speed_kt_stride,
                          const double *bank_limit_deg,
                          ptrdiff_t bank_limit_deg_stride,
                          const double *turn_rate_limit_deg_per_s,
                          ptrdiff_t turn_rate_limit_deg_per_s_stride,
                          const double *roll_rate_deg_per_s,
                          ptrdiff_t roll_rate_deg_per_s_stride,
                          double *track_deg,
                          ptrdiff_t track_deg_stride,
                          double *heading_deg,
                          ptrdiff_t heading_deg_stride,
                          double *groundspeed_kt,
                          ptrdiff_t groundspeed_kt_stride,
                          double *distance_nm,
                          ptrdiff_t distance_nm_stride,
                          double *time_s,
                          ptrdiff_t time_s_stride,
                          double *along_nm,
                          ptrdiff_t along_nm_stride,
                          double *lead_nm,
                          ptrdiff_t lead_nm_stride,
                          double *distance_to_roll_in_nm,
                          ptrdiff_t distance_to_roll_in_nm_stride,
                          double *time_to_roll_in_s,
                          ptrdiff_t time_to_roll_in_s_stride,
                          double *cross_track_at_roll_in_nm,
                          ptrdiff_t cross_track_at_roll_in_nm_stride,
                          int32_t *status);

/**
 * Where the turn onto a radial begins, from another radial along any track, in wind and with roll: distance, radial and needle.
 *
 * With p, t and w the aircraft, the track and the radial from the station, the track crosses the radial at `s = -(p
 * x w) / (t x w)`; the turn begins its lead L before that, as `lead_nm` has it.
 *
 * @param radial_deg radial on which the aircraft is, any finite number
 * @param distance_nm its ground distance from the station, 0 to 10 900
 * @param wanted_radial_deg radial to intercept
 * @param flown whether the radial is then flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
 * @param track_deg direction flown over the ground to the radial, against the station's north
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param wind_from_deg where the wind blows from, against the same north
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param bank_limit_deg greatest bank, above 0 below 90
 * @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
 * @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
 * @param[out] heading_deg Heading that holds the track to the radial; may be NULL
 * @param[out] groundspeed_kt Groundspeed on it; may be NULL
 * @param[out] crossing_distance_nm Distance from the station at which the track crosses the radial; may be NULL
 * @param[out] distance_to_crossing_nm Distance along the track to there; may be NULL
 * @param[out] lead_nm Distance before it at which the turn begins; may be NULL
 * @param[out] time_to_roll_in_s Time to where the turn begins; negative where that is behind; may be NULL
 * @param[out] radial_at_roll_in_deg Radial on which the turn begins; may be NULL
 * @param[out] distance_at_roll_in_nm Ground distance from the station at which the turn begins; may be NULL
 * @param[out] needle_at_roll_in_deg Degrees of the needle from its centre there, with the course set that is to be flown; positive when the course lies to the right; may be NULL
 * @param[out] cross_track_at_roll_in_nm Cross-track at which the turn begins, positive right of the course; may be NULL
 * @param[out] distance_at_roll_out_nm Distance from the station at which the wings are level on the radial; negative past the station; may be NULL
 * @param[out] turn_duration_s From roll-in to wings level; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error on a plane about the station; 1e-4 of the distance within 60 NM.
 * Degenerate cases: On the radial, and closer to it than the lead, the time to roll-in is negative. Distances count along the ground.
 * Errors: A value outside its range, a track that is parallel to the radial, leads away from it or crosses its line on the
 * other side of the station, a reversal, a wind that the airspeed cannot hold.
 * Source: Derived from the crossing of two lines and the equilibrium of a coordinated turn.
 *
 * Example: lubber_radial_intercept(180.0, 30.0, 200.0, LUBBER_RADIAL_FLOWN_INBOUND, 335.0, 240.0, 250.0, 40.0, 25.0, 3.0, 5.0, NULL, NULL, NULL, NULL, NULL, NULL, NULL, &value, NULL, NULL, NULL, NULL) gives 18.61
 */
int32_t lubber_radial_intercept(double radial_deg,
                                double distance_nm,
                                double wanted_radial_deg,
                                int32_t flown,
                                double track_deg,
                                double true_airspeed_kt,
                                double wind_from_deg,
                                double wind_speed_kt,
                                double bank_limit_deg,
                                double turn_rate_limit_deg_per_s,
                                double roll_rate_deg_per_s,
                                double *heading_deg,
                                double *groundspeed_kt,
                                double *crossing_distance_nm,
                                double *distance_to_crossing_nm,
                                double *lead_nm,
                                double *time_to_roll_in_s,
                                double *radial_at_roll_in_deg,
                                double *distance_at_roll_in_nm,
                                double *needle_at_roll_in_deg,
                                double *cross_track_at_roll_in_nm,
                                double *distance_at_roll_out_nm,
                                double *turn_duration_s);

/**
 * `lubber_radial_intercept` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `flown` is one code for all points: whether the radial is then flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_radial_intercept_n(size_t count,
                                 const double *radial_deg,
                                 ptrdiff_t radial_deg_stride,
                                 const double *distance_nm,
                                 ptrdiff_t distance_nm_stride,
                                 const double *wanted_radial_deg,
                                 ptrdiff_t wanted_radial_deg_stride,
                                 int32_t flown,
                                 const double *track_deg,
                                 ptrdiff_t track_deg_stride,
                                 const double *true_airspeed_kt,
                                 ptrdiff_t true_airspeed_kt_stride,
                                 const double *wind_from_deg,
                                 ptrdiff_t wind_from_deg_stride,
                                 const double *wind_speed_kt,
                                 ptrdiff_t wind_speed_kt_stride,
                                 const double *bank_limit_deg,
                                 ptrdiff_t bank_limit_deg_stride,
                                 const double *turn_rate_limit_deg_per_s,
                                 ptrdiff_t turn_rate_limit_deg_per_s_stride,
                                 const double *roll_rate_deg_per_s,
                                 ptrdiff_t roll_rate_deg_per_s_stride,
                                 double *heading_deg,
                                 ptrdiff_t heading_deg_stride,
                                 double *groundspeed_kt,
                                 ptrdiff_t groundspeed_kt_stride,
                                 double *crossing_distance_nm,
                                 ptrdiff_t crossing_distance_nm_stride,
                                 double *distance_to_crossing_nm,
                                 ptrdiff_t distance_to_crossing_nm_stride,
                                 double *lead_nm,
                                 ptrdiff_t lead_nm_stride,
                                 double *time_to_roll_in_s,
                                 ptrdiff_t time_to_roll_in_s_stride,
                                 double *radial_at_roll_in_deg,
                                 ptrdiff_t radial_at_roll_in_deg_stride,
                                 double *distance_at_roll_in_nm,
                                 ptrdiff_t distance_at_roll_in_nm_stride,
                                 double *needle_at_roll_in_deg,
                                 ptrdiff_t needle_at_roll_in_deg_stride,
                                 double *cross_track_at_roll_in_nm,
                                 ptrdiff_t cross_track_at_roll_in_nm_stride,
                                 double *distance_at_roll_out_nm,
                                 ptrdiff_t distance_at_roll_out_nm_stride,
                                 double *turn_duration_s,
                                 ptrdiff_t turn_duration_s_stride,
                                 int32_t *status);

/**
 * The intercept of a radial toward the station at twice the degrees to it, exactly.
 *
 * From the distance d and a degrees off the radial, the way to it is as long as what is left to the station: `d / (2
 * cos(a))`.
 *
 * @param radial_deg radial on which the aircraft is, any finite number
 * @param distance_nm its ground distance from the station, 0 to 10 900
 * @param wanted_radial_deg radial to intercept
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param wind_from_deg where the wind blows from, against the same north
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param[out] track_deg Direction over the ground to the radial; may be NULL
 * @param[out] heading_deg Heading that holds it; may be NULL
 * @param[out] distance_nm_out Distance to the radial, and from there to the station; may be NULL
 * @param[out] time_s Time to the radial; may be NULL
 * @param[out] time_to_station_s Time from there to the station; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error on a plane. Turns are left out.
 * Degenerate cases: On the radial the way is the radial, and half the distance is left.
 * Errors: A value outside its range, more than 45 degrees off the radial, a course that the airspeed cannot hold.
 * Source: The isosceles triangle; the technique: CNATRA P-340 chapter 6, 609.
 *
 * Example: lubber_double_angle_intercept(150.0, 24.0, 135.0, 200.0, 20.0, 50.0, NULL, NULL, &value, NULL, NULL) gives 12.42
 */
int32_t lubber_double_angle_intercept(double radial_deg,
                                      double distance_nm,
                                      double wanted_radial_deg,
                                      double true_airspeed_kt,
                                      double wind_from_deg,
                                      double wind_speed_kt,
                                      double *track_deg,
                                      double *heading_deg,
                                      double *distance_nm_out,
                                      double *time_s,
                                      double *time_to_station_s);

/**
 * `lubber_double_angle_intercept` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_double_angle_intercept_n(size_t count,
                                       const double *radial_deg,
                                       ptrdiff_t radial_deg_stride,
                                       const double *distance_nm,
                                       ptrdiff_t distance_nm_stride,
                                       const double *wanted_radial_deg,
                                       ptrdiff_t wanted_radial_deg_stride,
                                       const double *true_airspeed_kt,
                                       ptrdiff_t true_airspeed_kt_stride,
                                       const double *wind_from_deg,
                                       ptrdiff_t wind_from_deg_stride,
                                       const double *wind_speed_kt,
                                       ptrdiff_t wind_speed_kt_stride,
                                       double *track_deg,
                                       ptrdiff_t track_deg_stride,
                                       double *heading_deg,
                                       ptrdiff_t heading_deg_stride,
                                       double *distance_nm_out,
                                       ptrdiff_t distance_nm_out_stride,
                                       double *time_s,
                                       ptrdiff_t time_s_stride,
                                       double *time_to_station_s,
                                       ptrdiff_t time_to_station_s_stride,
                                       int32_t *status);

/**
 * The angle at which to intercept a radial by rule: twice the degrees to it, at least 20 and at most 90.
 *
 * `2 * degrees`, within 20 and 90.
 *
 * @param off_radial_deg degrees to the radial, either way, reduced to half a circle
 * @param[out] rule_intercept_angle_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: A rule.
 * Degenerate cases: On the radial it still says 20 degrees.
 * Errors: A value outside its range.
 * Source: FAA-H-8083-15 (Instrument Flying Handbook), from memory.
 *
 * Example: lubber_rule_intercept_angle_deg(15.0, &value) gives 30
 */
int32_t lubber_rule_intercept_angle_deg(double off_radial_deg, double *rule_intercept_angle_deg);

/**
 * `lubber_rule_intercept_angle_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_intercept_angle_deg_n(size_t count,
                                         const double *off_radial_deg,
                                         ptrdiff_t off_radial_deg_stride,
                                         double *rule_intercept_angle_deg,
                                         ptrdiff_t rule_intercept_angle_deg_stride,
                                         int32_t *status);

/**
 * The lead onto a radial in radials by the sixty-to-one rule and a share for the angle of the intercept.
 *
 * `(60 / D) r`, times a third at 45 degrees, two thirds at 60, nothing up to 30; in between interpolated.
 *
 * @param distance_nm distance from the station, above 0 to 5000
 * @param turn_radius_nm radius of the turn, above 0 to 5000
 * @param intercept_angle_deg angle of the intercept, above 0 to 90
 * @param[out] rule_intercept_lead_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: The exact share is `1 - cos(angle)`: 0.13 at 30 degrees, 0.29 at 45, 0.5 at 60. See `radial_intercept`.
 * Degenerate cases: Close to the station it gives more radials than there are.
 * Errors: A value outside its range.
 * Source: A third at 45 degrees: CNATRA P-1215, course intercepts. That, two thirds at 60, the whole at 90 and very little below 30: CNATRA P-1265
 * p. 2-11 (5-99), there of arcs. The library's own reading: nothing to 30 degrees, and straight lines from 30 to 45, to 60 and to the whole at 90.
 *
 * Example: lubber_rule_intercept_lead_deg(15.0, 2.5, 45.0, &value) gives 3.33
 */
int32_t lubber_rule_intercept_lead_deg(double distance_nm,
                                       double turn_radius_nm,
                                       double intercept_angle_deg,
                                       double *rule_intercept_lead_deg);

/**
 * `lubber_rule_intercept_lead_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_intercept_lead_deg_n(size_t count,
                                        const double *distance_nm,
                                        ptrdiff_t distance_nm_stride,
                                        const double *turn_radius_nm,
                                        ptrdiff_t turn_radius_nm_stride,
                                        const double *intercept_angle_deg,
                                        ptrdiff_t intercept_angle_deg_stride,
                                        double *rule_intercept_lead_deg,
                                        ptrdiff_t rule_intercept_lead_deg_stride,
                                        int32_t *status);

/**
 * Distance before a fix at which to begin the turn, so as to roll out on the outbound course.
 *
 * The displacement of the turn through the air (roll in at the roll rate, hold the bank, roll out wings level) plus wind times
 * duration is a vector D; with u and v the unit vectors of the inbound and outbound course the lead is `(D x v) / (u x v)`.
 * In still air with an instant roll that is `radius tan(change / 2)`.
 *
 * @param inbound_course_deg course flown to the fix, any finite number
 * @param outbound_course_deg course flown from it, against the same north
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param wind_from_deg where the wind blows from, against the same north
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param bank_limit_deg greatest bank, above 0 below 90
 * @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
 * @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
 * @param[out] lead_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: 1.5e-5 NM against a fine integration over the ellipsoid for leads to 10 NM, 1.2e-4 NM to 20 NM.
 * Arrays and single calls agree to 1e-12 of the radius and the rolls of the turn, over the sine of the change of course.
 * Degenerate cases: No change of course has a lead of zero. The turn goes the short way.
 * Errors: A value outside its range, a reversal, a wind that the airspeed cannot hold.
 * Source: Derived from the equilibrium of a coordinated turn; in still air the distance of turn anticipation of ICAO Doc 8168 Vol II
 * (5th ed. 2006), Part III Section 3 Chapter 8, 8.1.5.1.1.
 *
 * Example: lubber_lead_nm(40.0, 110.0, 430.0, 270.0, 60.0, 25.0, 3.0, 5.0, &value) gives 5.41
 */
int32_t lubber_lead_nm(double inbound_course_deg,
                       double outbound_course_deg,
                       double true_airspeed_kt,
                       double wind_from_deg,
                       double wind_speed_kt,
                       double bank_limit_deg,
                       double turn_rate_limit_deg_per_s,
                       double roll_rate_deg_per_s,
                       double *lead_nm);

/**
 * `lubber_lead_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_lead_nm_n(size_t count,
                        const double *inbound_course_deg,
                        ptrdiff_t inbound_course_deg_stride,
                        const double *outbound_course_deg,
                        ptrdiff_t outbound_course_deg_stride,
                        const double *true_airspeed_kt,
                        ptrdiff_t true_airspeed_kt_stride,
                        const double *wind_from_deg,
                        ptrdiff_t wind_from_deg_stride,
                        const double *wind_speed_kt,
                        ptrdiff_t wind_speed_kt_stride,
                        const double *bank_limit_deg,
                        ptrdiff_t bank_limit_deg_stride,
                        const double *turn_rate_limit_deg_per_s,
                        ptrdiff_t turn_rate_limit_deg_per_s_stride,
                        const double *roll_rate_deg_per_s,
                        ptrdiff_t roll_rate_deg_per_s_stride,
                        double *lead_nm,
                        ptrdiff_t lead_nm_stride,
                        int32_t *status);

/**
 * The DME reading at which to begin the turn at a station, so as to roll out on the outbound radial.
 *
 * The slant range from the station to the point at the lead before it: `sqrt(h^2 + 4 R (R + h) sin^2(lead / 2R))`, with the
 * lead as `lubber_lead_nm` gives it.
 *
 * @param inbound_course_deg course flown to the fix, any finite number
 * @param outbound_course_deg course flown from it, against the same north
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param wind_from_deg where the wind blows from, against the same north
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param bank_limit_deg greatest bank, above 0 below 90
 * @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
 * @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
 * @param height_above_station_ft height above the station's antenna, -60 000 to 400 000
 * @param[out] dme_at_roll_in_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: That of `lubber_lead_nm`, and within 1.1 m for the slant.
 * Degenerate cases: No change of course reads the height: it begins overhead.
 * Errors: As `lubber_lead_nm`.
 * Source: As `lubber_lead_nm`, and the law of cosines between the radii of the earth and of the flight.
 *
 * Example: lubber_dme_at_roll_in_nm(40.0, 110.0, 430.0, 270.0, 60.0, 25.0, 3.0, 5.0, 33000.0, &value) gives 7.67
 */
int32_t lubber_dme_at_roll_in_nm(double inbound_course_deg,
                                 double outbound_course_deg,
                                 double true_airspeed_kt,
                                 double wind_from_deg,
                                 double wind_speed_kt,
                                 double bank_limit_deg,
                                 double turn_rate_limit_deg_per_s,
                                 double roll_rate_deg_per_s,
                                 double height_above_station_ft,
                                 double *dme_at_roll_in_nm);

/**
 * `lubber_dme_at_roll_in_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_dme_at_roll_in_nm_n(size_t count,
                                  const double *inbound_course_deg,
                                  ptrdiff_t inbound_course_deg_stride,
                                  const double *outbound_course_deg,
                                  ptrdiff_t outbound_course_deg_stride,
                                  const double *true_airspeed_kt,
                                  ptrdiff_t true_airspeed_kt_stride,
                                  const double *wind_from_deg,
                                  ptrdiff_t wind_from_deg_stride,
                                  const double *wind_speed_kt,
                                  ptrdiff_t wind_speed_kt_stride,
                                  const double *bank_limit_deg,
                                  ptrdiff_t bank_limit_deg_stride,
                                  const double *turn_rate_limit_deg_per_s,
                                  ptrdiff_t turn_rate_limit_deg_per_s_stride,
                                  const double *roll_rate_deg_per_s,
                                  ptrdiff_t roll_rate_deg_per_s_stride,
                                  const double *height_above_station_ft,
                                  ptrdiff_t height_above_station_ft_stride,
                                  double *dme_at_roll_in_nm,
                                  ptrdiff_t dme_at_roll_in_nm_stride,
                                  int32_t *status);

/**
 * Distance of turn anticipation in still air with an instant roll.
 *
 * `r tan(change / 2)`.
 *
 * @param turn_radius_nm radius of the turn, above 0 to 5000
 * @param course_change_deg change of course, either way, reduced to half a circle
 * @param[out] turn_anticipation_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error.
 * Degenerate cases: It grows without bound toward a reversal.
 * Errors: A value outside its range, or a reversal.
 * Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 3 Chapter 8, 8.1.5.1.1.
 *
 * Example: lubber_turn_anticipation_nm(6.33, 90.0, &value) gives 6.330
 */
int32_t lubber_turn_anticipation_nm(double turn_radius_nm, double course_change_deg, double *turn_anticipation_nm);

/**
 * `lubber_turn_anticipation_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_turn_anticipation_nm_n(size_t count,
                                     const double *turn_radius_nm,
                                     ptrdiff_t turn_radius_nm_stride,
                                     const double *course_change_deg,
                                     ptrdiff_t course_change_deg_stride,
                                     double *turn_anticipation_nm,
                                     ptrdiff_t turn_anticipation_nm_stride,
                                     int32_t *status);

/**
 * Distance from the station at which a radial flown inbound is left for an arc.
 *
 * `sqrt(D^2 + 2 D r)` with D the radius of the arc and r that of the turn, in still air with an instant roll.
 *
 * @param arc_radius_nm ground distance of the arc from the station, above 0 to 5000
 * @param turn_radius_nm radius of the turn, above 0 to 5000
 * @param[out] arc_entry_inbound_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Exact in the plane.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range, or a turn that does not fit.
 * Source: Derived: the turn is a circle tangent to the radial and to the arc.
 *
 * Example: lubber_arc_entry_inbound_nm(10.0, 2.5, &value) gives 12.25
 */
int32_t lubber_arc_entry_inbound_nm(double arc_radius_nm, double turn_radius_nm, double *arc_entry_inbound_nm);

/**
 * `lubber_arc_entry_inbound_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_arc_entry_inbound_nm_n(size_t count,
                                     const double *arc_radius_nm,
                                     ptrdiff_t arc_radius_nm_stride,
                                     const double *turn_radius_nm,
                                     ptrdiff_t turn_radius_nm_stride,
                                     double *arc_entry_inbound_nm,
                                     ptrdiff_t arc_entry_inbound_nm_stride,
                                     int32_t *status);

/**
 * Distance from the station at which a radial flown outbound is left for an arc.
 *
 * `sqrt(D^2 - 2 D r)` with D the radius of the arc and r that of the turn, in still air with an instant roll.
 *
 * @param arc_radius_nm ground distance of the arc from the station, above 0 to 5000
 * @param turn_radius_nm radius of the turn, above 0 to 5000
 * @param[out] arc_entry_outbound_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Exact in the plane.
 * Degenerate cases: For an arc of twice the turn radius the turn begins over the station.
 * Errors: A value outside its range, or a turn that does not fit.
 * Source: Derived: the turn is a circle tangent to the radial and to the arc.
 *
 * Example: lubber_arc_entry_outbound_nm(10.0, 2.5, &value) gives 7.07
 */
int32_t lubber_arc_entry_outbound_nm(double arc_radius_nm, double turn_radius_nm, double *arc_entry_outbound_nm);

/**
 * `lubber_arc_entry_outbound_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_arc_entry_outbound_nm_n(size_t count,
                                      const double *arc_radius_nm,
                                      ptrdiff_t arc_radius_nm_stride,
                                      const double *turn_radius_nm,
                                      ptrdiff_t turn_radius_nm_stride,
                                      double *arc_entry_outbound_nm,
                                      ptrdiff_t arc_entry_outbound_nm_stride,
                                      int32_t *status);

/**
 * Angle at the station by which the turn off an arc begins before a radial to be flown inbound.
 *
 * `asin(r / (D - r))` with D the radius of the arc and r that of the turn, in still air with an instant roll.
 *
 * @param arc_radius_nm ground distance of the arc from the station, above 0 to 5000
 * @param turn_radius_nm radius of the turn, above 0 to 5000
 * @param[out] lead_radial_inbound_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Exact in the plane.
 * Degenerate cases: For an arc of twice the turn radius it is 90 degrees.
 * Errors: A value outside its range, or a turn that does not fit.
 * Source: Derived: the turn is a circle tangent to the radial and to the arc.
 *
 * Example: lubber_lead_radial_inbound_deg(12.0, 0.6, &value) gives 3.02
 */
int32_t lubber_lead_radial_inbound_deg(double arc_radius_nm, double turn_radius_nm, double *lead_radial_inbound_deg);

/**
 * `lubber_lead_radial_inbound_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_lead_radial_inbound_deg_n(size_t count,
                                        const double *arc_radius_nm,
                                        ptrdiff_t arc_radius_nm_stride,
                                        const double *turn_radius_nm,
                                        ptrdiff_t turn_radius_nm_stride,
                                        double *lead_radial_inbound_deg,
                                        ptrdiff_t lead_radial_inbound_deg_stride,
                                        int32_t *status);

/**
 * Angle at the station by which the turn off an arc begins before a radial to be flown outbound.
 *
 * `asin(r / (D + r))` with D the radius of the arc and r that of the turn, in still air with an instant roll.
 *
 * @param arc_radius_nm ground distance of the arc from the station, above 0 to 5000
 * @param turn_radius_nm radius of the turn, above 0 to 5000
 * @param[out] lead_radial_outbound_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Exact in the plane.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range, or a turn that does not fit.
 * Source: Derived: the turn is a circle tangent to the radial and to the arc.
 *
 * Example: lubber_lead_radial_outbound_deg(12.0, 0.6, &value) gives 2.73
 */
int32_t lubber_lead_radial_outbound_deg(double arc_radius_nm, double turn_radius_nm, double *lead_radial_outbound_deg);

/**
 * `lubber_lead_radial_outbound_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_lead_radial_outbound_deg_n(size_t count,
                                         const double *arc_radius_nm,
                                         ptrdiff_t arc_radius_nm_stride,
                                         const double *turn_radius_nm,
                                         ptrdiff_t turn_radius_nm_stride,
                                         double *lead_radial_outbound_deg,
                                         ptrdiff_t lead_radial_outbound_deg_stride,
                                         int32_t *status);

/**
 * What the two letters of a leg say: how the path is flown, and what ends it.
 *
 * Most codes are one letter for the path and one for the end; IF, AF, RF and PI name their path by both.
 *
 * @param leg the leg's code: LUBBER_LEG_CODE_INITIAL_FIX, LUBBER_LEG_CODE_TRACK_TO_FIX, LUBBER_LEG_CODE_COURSE_TO_FIX, LUBBER_LEG_CODE_DIRECT_TO_FIX, LUBBER_LEG_CODE_ARC_TO_FIX, LUBBER_LEG_CODE_RADIUS_TO_FIX, LUBBER_LEG_CODE_FIX_TO_ALTITUDE, LUBBER_LEG_CODE_FIX_TO_DISTANCE, LUBBER_LEG_CODE_FIX_TO_DME, LUBBER_LEG_CODE_FIX_TO_MANUAL, LUBBER_LEG_CODE_COURSE_TO_ALTITUDE, LUBBER_LEG_CODE_COURSE_TO_DME, LUBBER_LEG_CODE_COURSE_TO_INTERCEPT, LUBBER_LEG_CODE_COURSE_TO_RADIAL, LUBBER_LEG_CODE_HEADING_TO_ALTITUDE, LUBBER_LEG_CODE_HEADING_TO_DME, LUBBER_LEG_CODE_HEADING_TO_INTERCEPT, LUBBER_LEG_CODE_HEADING_TO_MANUAL, LUBBER_LEG_CODE_HEADING_TO_RADIAL, LUBBER_LEG_CODE_HOLD_TO_ALTITUDE, LUBBER_LEG_CODE_HOLD_TO_FIX, LUBBER_LEG_CODE_HOLD_TO_MANUAL, LUBBER_LEG_CODE_PROCEDURE_TURN
 * @param[out] path How its path is flown: a code of LUBBER_LEG_PATH_INITIAL, LUBBER_LEG_PATH_TRACK, LUBBER_LEG_PATH_COURSE, LUBBER_LEG_PATH_DIRECT, LUBBER_LEG_PATH_DME_ARC, LUBBER_LEG_PATH_RADIUS, LUBBER_LEG_PATH_COURSE_FROM_FIX, LUBBER_LEG_PATH_HEADING, LUBBER_LEG_PATH_HOLD, LUBBER_LEG_PATH_PROCEDURE_TURN; may be NULL
 * @param[out] end What ends it: a code of LUBBER_LEG_END_FIX, LUBBER_LEG_END_ALTITUDE, LUBBER_LEG_END_DISTANCE, LUBBER_LEG_END_DME, LUBBER_LEG_END_MANUAL, LUBBER_LEG_END_INTERCEPT, LUBBER_LEG_END_RADIAL; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Exact.
 * Degenerate cases: None.
 * Errors: A code that is none.
 * Source: ARINC 424 path-and-terminator concept, as listed in AIXM 5.1, CodeSegmentPathBaseType; FAA Aeronautical Information Manual 1-2-1, edition
 * not shown in the copy read.
 *
 * Example: lubber_leg_meaning(LUBBER_LEG_CODE_COURSE_TO_DME, &value, NULL) gives 2
 */
int32_t lubber_leg_meaning(int32_t leg,
                           double *path,
                           double *end);

/**
 * `lubber_leg_meaning` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `leg` is one code for all points: the leg's code: LUBBER_LEG_CODE_INITIAL_FIX, LUBBER_LEG_CODE_TRACK_TO_FIX, LUBBER_LEG_CODE_COURSE_TO_FIX, LUBBER_LEG_CODE_DIRECT_TO_FIX, LUBBER_LEG_CODE_ARC_TO_FIX, LUBBER_LEG_CODE_RADIUS_TO_FIX, LUBBER_LEG_CODE_FIX_TO_ALTITUDE, LUBBER_LEG_CODE_FIX_TO_DISTANCE, LUBBER_LEG_CODE_FIX_TO_DME, LUBBER_LEG_CODE_FIX_TO_MANUAL, LUBBER_LEG_CODE_COURSE_TO_ALTITUDE, LUBBER_LEG_CODE_COURSE_TO_DME, LUBBER_LEG_CODE_COURSE_TO_INTERCEPT, LUBBER_LEG_CODE_COURSE_TO_RADIAL, LUBBER_LEG_CODE_HEADING_TO_ALTITUDE, LUBBER_LEG_CODE_HEADING_TO_DME, LUBBER_LEG_CODE_HEADING_TO_INTERCEPT, LUBBER_LEG_CODE_HEADING_TO_MANUAL, LUBBER_LEG_CODE_HEADING_TO_RADIAL, LUBBER_LEG_CODE_HOLD_TO_ALTITUDE, LUBBER_LEG_CODE_HOLD_TO_FIX, LUBBER_LEG_CODE_HOLD_TO_MANUAL, LUBBER_LEG_CODE_PROCEDURE_TURN
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_leg_meaning_n(size_t count,
                            int32_t leg,
                            double *path,
                            ptrdiff_t path_stride,
                            double *end,
                            ptrdiff_t end_stride,
                            int32_t *status);

/**
 * Mach number from calibrated airspeed; the temperature plays no part.
 *
 * `M = sqrt(5 ((q/p + 1)^(2/7) - 1))` with `q = p0 ((1 + 0.2 (Vc/a0)^2)^3.5 - 1)`; each side above its Mach 1
 * by Rayleigh's pitot formula.
 *
 * @param cas_kt calibrated airspeed, 0 to 5000
 * @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
 * @param[out] mach_from_cas the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding (1e-14 of the result, as much again between arrays and single calls), for air of constant heat ratio: good to about Mach 5.
 * Degenerate cases: Zero gives zero.
 * Errors: A value outside its range, or a result beyond Mach 10.
 * Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
 * for the pitot pressure above Mach 1.
 *
 * Example: lubber_mach_from_cas(280.0, 35000.0, &value) gives 0.8213
 */
int32_t lubber_mach_from_cas(double cas_kt,
                             double pressure_altitude_ft,
                             double *mach_from_cas);

/**
 * `lubber_mach_from_cas` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_mach_from_cas_n(size_t count,
                              const double *cas_kt,
                              ptrdiff_t cas_kt_stride,
                              const double *pressure_altitude_ft,
                              ptrdiff_t pressure_altitude_ft_stride,
                              double *mach_from_cas,
                              ptrdiff_t mach_from_cas_stride,
                              int32_t *status);

/**
 * Calibrated airspeed from Mach number: the inverse of `lubber_mach_from_cas`.
 *
 * The impact pressure at that Mach number, read as if at standard sea level.
 *
 * @param mach Mach number, 0 to 10
 * @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
 * @param[out] cas_from_mach_kt the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.
 * Degenerate cases: Zero gives zero.
 * Errors: A value outside its range, or a result beyond 5000 kt or Mach 10.
 * Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
 * for the pitot pressure above Mach 1.
 *
 * Example: lubber_cas_from_mach_kt(0.78, 35000.0, &value) gives 264.42
 */
int32_t lubber_cas_from_mach_kt(double mach, double pressure_altitude_ft, double *cas_from_mach_kt);

/**
 * `lubber_cas_from_mach_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_cas_from_mach_kt_n(size_t count,
                                 const double *mach,
                                 ptrdiff_t mach_stride,
                                 const double *pressure_altitude_ft,
                                 ptrdiff_t pressure_altitude_ft_stride,
                                 double *cas_from_mach_kt,
                                 ptrdiff_t cas_from_mach_kt_stride,
                                 int32_t *status);

/**
 * True airspeed from Mach number.
 *
 * `V = M a`, with the speed of sound `a = sqrt(1.4 R T)`.
 *
 * @param mach Mach number, 0 to 10
 * @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
 * @param isa_deviation_k warmer than standard by this, -150 to 150
 * @param[out] tas_from_mach_kt the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.
 * Degenerate cases: Zero gives zero.
 * Errors: A value outside its range, or a result beyond 5000 kt or Mach 10.
 * Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
 * for the pitot pressure above Mach 1.
 *
 * Example: lubber_tas_from_mach_kt(0.78, 35000.0, 0.0, &value) gives 449.61
 */
int32_t lubber_tas_from_mach_kt(double mach,
                                double pressure_altitude_ft,
                                double isa_deviation_k,
                                double *tas_from_mach_kt);

/**
 * `lubber_tas_from_mach_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_tas_from_mach_kt_n(size_t count,
                                 const double *mach,
                                 ptrdiff_t mach_stride,
                                 const double *pressure_altitude_ft,
                                 ptrdiff_t pressure_altitude_ft_stride,
                                 const double *isa_deviation_k,
                                 ptrdiff_t isa_deviation_k_stride,
                                 double *tas_from_mach_kt,
                                 ptrdiff_t tas_from_mach_kt_stride,
                                 int32_t *status);

/**
 * Mach number from true airspeed.
 *
 * `M = V/a`, with the speed of sound `a = sqrt(1.4 R T)`.
 *
 * @param tas_kt true airspeed, 0 to 5000
 * @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
 * @param isa_deviation_k warmer than standard by this, -150 to 150
 * @param[out] mach_from_tas the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.
 * Degenerate cases: Zero gives zero.
 * Errors: A value outside its range, or a result beyond Mach 10.
 * Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
 * for the pitot pressure above Mach 1.
 *
 * Example: lubber_mach_from_tas(450.0, 35000.0, 0.0, &value) gives 0.7807
 */
int32_t lubber_mach_from_tas(double tas_kt, double pressure_altitude_ft, double isa_deviation_k, double *mach_from_tas);

/**
 * `lubber_mach_from_tas` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_mach_from_tas_n(size_t count,
                              const double *tas_kt,
                              ptrdiff_t tas_kt_stride,
                              const double *pressure_altitude_ft,
                              ptrdiff_t pressure_altitude_ft_stride,
                              const double *isa_deviation_k,
                              ptrdiff_t isa_deviation_k_stride,
                              double *mach_from_tas,
                              ptrdiff_t mach_from_tas_stride,
                              int32_t *status);

/**
 * The earth's magnetic field at a place and date, by the World Magnetic Model.
 *
 * Schmidt semi-normalised spherical harmonics of degree and order 12, in double precision: the model of 2020 before 2025, that of 2025 from
 * then on.
 *
 * @param lat_deg latitude, -90 to 90
 * @param lon_deg longitude, any finite number
 * @param altitude_ft altitude above mean sea level, -16 500 to 400 000
 * @param decimal_year date as a year and its fraction, 2020 to 2035
 * @param[out] declination_deg Angle from true to magnetic north, positive east: variation; may be NULL
 * @param[out] inclination_deg Dip below the horizontal; may be NULL
 * @param[out] horizontal_nt Horizontal field; may be NULL
 * @param[out] north_nt Field toward true north; may be NULL
 * @param[out] east_nt Field toward east; may be NULL
 * @param[out] down_nt Field downward; may be NULL
 * @param[out] total_nt The whole field; may be NULL
 * @param[out] declination_change_deg Change of the declination in a year; may be NULL
 * @param[out] inclination_change_deg Change of the inclination in a year; may be NULL
 * @param[out] horizontal_change_nt Change of the horizontal field in a year; may be NULL
 * @param[out] north_change_nt Change of the field toward true north in a year; may be NULL
 * @param[out] east_change_nt Change of the field toward east in a year; may be NULL
 * @param[out] down_change_nt Change of the field downward in a year; may be NULL
 * @param[out] total_change_nt Change of the whole field in a year; may be NULL
 * @param[out] declination_uncertainty_deg One standard deviation of the declination; may be NULL
 * @param[out] grid_variation_deg Declination from the north of the polar grid; NaN between 55 degrees of latitude, where that is not used; may be NULL
 * @param[out] zone How far a compass can be trusted: 0 clear, 1 caution, 2 blackout, as in LUBBER_MAGNETIC_ZONE_CLEAR, LUBBER_MAGNETIC_ZONE_CAUTION, LUBBER_MAGNETIC_ZONE_BLACKOUT; may be NULL
 * @param[out] in_date 1 if the date lies in the years the models are made for, 2020 to 2030, else 0; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: The arithmetic to 1e-8 nT, and so far arrays and single calls agree, angles and what follows from them as far as that turns or changes
 * them. The model: one standard deviation of 137 nT north, 89 east, 141 down.
 * Degenerate cases: Between 55 degrees of latitude there is no grid variation (NaN). At a pole the components are those of the meridian of the longitude given. About the magnetic poles, where `zone` is not 0, and out of
 * date the declination must not be relied on.
 * Errors: A value outside its range.
 * Source: The US/UK World Magnetic Model for 2025-2030: Technical Report, NOAA NCEI and BGS (2024).
 *
 * Example: lubber_magnetic_field(-80.0, 240.0, 0.0, 2027.5, &value, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL) gives 68.49
 */
int32_t lubber_magnetic_field(double lat_deg,
                              double lon_deg,
                              double altitude_ft,
                              double decimal_year,
                              double *declination_deg,
                              double *inclination_deg,
                              double *horizontal_nt,
                              double *north_nt,
                              double *east_nt,
                              double *down_nt,
                              double *total_nt,
                              double *declination_change_deg,
                              double *inclination_change_deg,
                              double *horizontal_change_nt,
                              double *north_change_nt,
                              double *east_change_nt,
                              double *down_change_nt,
                              double *total_change_nt,
                              double *declination_uncertainty_deg,
                              double *grid_variation_deg,
                              double *zone,
                              double *in_date);

/**
 * `lubber_magnetic_field` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_magnetic_field_n(size_t count,
                               const double *lat_deg,
                               ptrdiff_t lat_deg_stride,
                               const double *lon_deg,
                               ptrdiff_t lon_deg_stride,
                               const double *altitude_ft,
                               ptrdiff_t altitude_ft_stride,
                               const double *decimal_year,
                               ptrdiff_t decimal_year_stride,
                               double *declination_deg,
                               ptrdiff_t declination_deg_stride,
                               double *inclination_deg,
                               ptrdiff_t inclination_deg_stride,
                               double *horizontal_nt,
                               ptrdiff_t horizontal_nt_stride,
                               double *north_nt,
                               ptrdiff_t north_nt_stride,
                               double *east_nt,
                               ptrdiff_t east_nt_stride,
                               double *down_nt,
                               ptrdiff_t down_nt_stride,
                               double *total_nt,
                               ptrdiff_t total_nt_stride,
                               double *declination_change_deg,
                               ptrdiff_t declination_change_deg_stride,
                               double *inclination_change_deg,
                               ptrdiff_t inclination_change_deg_stride,
                               double *horizontal_change_nt,
                               ptrdiff_t horizontal_change_nt_stride,
                               double *north_change_nt,
                               ptrdiff_t north_change_nt_stride,
                               double *east_change_nt,
                               ptrdiff_t east_change_nt_stride,
                               double *down_change_nt,
                               ptrdiff_t down_change_nt_stride,
                               double *total_change_nt,
                               ptrdiff_t total_change_nt_stride,
                               double *declination_uncertainty_deg,
                               ptrdiff_t declination_uncertainty_deg_stride,
                               double *grid_variation_deg,
                               ptrdiff_t grid_variation_deg_stride,
                               double *zone,
                               ptrdiff_t zone_stride,
                               double *in_date,
                               ptrdiff_t in_date_stride,
                               int32_t *status);

/**
 * Magnetic variation (declination) at a place and date, positive east.
 *
 * The declination of `magnetic_field`.
 *
 * @param lat_deg latitude, -90 to 90
 * @param lon_deg longitude, any finite number
 * @param altitude_ft altitude above mean sea level, -16 500 to 400 000
 * @param decimal_year date as a year and its fraction, 2020 to 2035
 * @param[out] variation_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As `magnetic_field`. Arrays and single calls agree to 1e-8 nT across the horizontal field, as far as that turns the declination.
 * Degenerate cases: As `magnetic_field`. Near the magnetic poles (caution and blackout zones) and out of date it warns of nothing itself: `zone` and `in_date` of
 * `magnetic_field` say so.
 * Errors: A value outside its range.
 * Source: As `magnetic_field`.
 *
 * Example: lubber_variation_deg(-80.0, 240.0, 0.0, 2027.5, &value) gives 68.49
 */
int32_t lubber_variation_deg(double lat_deg,
                             double lon_deg,
                             double altitude_ft,
                             double decimal_year,
                             double *variation_deg);

/**
 * `lubber_variation_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_variation_deg_n(size_t count,
                              const double *lat_deg,
                              ptrdiff_t lat_deg_stride,
                              const double *lon_deg,
                              ptrdiff_t lon_deg_stride,
                              const double *altitude_ft,
                              ptrdiff_t altitude_ft_stride,
                              const double *decimal_year,
                              ptrdiff_t decimal_year_stride,
                              double *variation_deg,
                              ptrdiff_t variation_deg_stride,
                              int32_t *status);

/**
 * A calendar date as a year and its elapsed fraction, as `magnetic_field` takes it.
 *
 * The days elapsed since the year began, of 365, or 366 in a leap year of the Gregorian calendar.
 *
 * @param year year, whole, 2020 to 2034
 * @param month month, whole, 1 to 12
 * @param day day of the month from 1, with its elapsed fraction: 2.5 is noon of the second
 * @param[out] decimal_year the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: None.
 * Errors: A value outside its range, a date that the calendar has not.
 * Source: The Gregorian calendar.
 *
 * Example: lubber_decimal_year(2026.0, 7.0, 2.5, &value) gives 2026.5000
 */
int32_t lubber_decimal_year(double year, double month, double day, double *decimal_year);

/**
 * `lubber_decimal_year` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_decimal_year_n(size_t count,
                             const double *year,
                             ptrdiff_t year_stride,
                             const double *month,
                             ptrdiff_t month_stride,
                             const double *day,
                             ptrdiff_t day_stride,
                             double *decimal_year,
                             ptrdiff_t decimal_year_stride,
                             int32_t *status);

/**
 * A true direction counted from magnetic north.
 *
 * `true - variation`, 0 to 360; variation is positive east.
 *
 * @param true_deg true direction, any finite number
 * @param variation_deg magnetic variation, positive east, -180 to 180
 * @param[out] magnetic_from_true_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: None.
 * Errors: A value outside its range.
 * Source: The definition of variation.
 *
 * Example: lubber_magnetic_from_true_deg(5.0, 12.0, &value) gives 353
 */
int32_t lubber_magnetic_from_true_deg(double true_deg, double variation_deg, double *magnetic_from_true_deg);

/**
 * `lubber_magnetic_from_true_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_magnetic_from_true_deg_n(size_t count,
                                       const double *true_deg,
                                       ptrdiff_t true_deg_stride,
                                       const double *variation_deg,
                                       ptrdiff_t variation_deg_stride,
                                       double *magnetic_from_true_deg,
                                       ptrdiff_t magnetic_from_true_deg_stride,
                                       int32_t *status);

/**
 * A magnetic direction counted from true north.
 *
 * `magnetic + variation`, 0 to 360; variation is positive east.
 *
 * @param magnetic_deg magnetic direction, any finite number
 * @param variation_deg magnetic variation, positive east, -180 to 180
 * @param[out] true_from_magnetic_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: None.
 * Errors: A value outside its range.
 * Source: The definition of variation.
 *
 * Example: lubber_true_from_magnetic_deg(353.0, 12.0, &value) gives 5
 */
int32_t lubber_true_from_magnetic_deg(double magnetic_deg, double variation_deg, double *true_from_magnetic_deg);

/**
 * `lubber_true_from_magnetic_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_true_from_magnetic_deg_n(size_t count,
                                       const double *magnetic_deg,
                                       ptrdiff_t magnetic_deg_stride,
                                       const double *variation_deg,
                                       ptrdiff_t variation_deg_stride,
                                       double *true_from_magnetic_deg,
                                       ptrdiff_t true_from_magnetic_deg_stride,
                                       int32_t *status);

/**
 * How far a station's radials read more than the magnetic bearing of the same direction, today.
 *
 * `variation - declination`, reduced to half a circle either way: the station's north was set up with its declination, and the field has moved
 * on.
 *
 * @param station_declination_deg the station's declination, positive east, -180 to 180
 * @param variation_deg today's magnetic variation there, positive east, -180 to 180
 * @param[out] station_misalignment_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: None.
 * Errors: A value outside its range.
 * Source: The definitions of declination and variation.
 *
 * Example: lubber_station_misalignment_deg(-6.0, -3.5, &value) gives 2.5
 */
int32_t lubber_station_misalignment_deg(double station_declination_deg,
                                        double variation_deg,
                                        double *station_misalignment_deg);

/**
 * `lubber_station_misalignment_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_station_misalignment_deg_n(size_t count,
                                         const double *station_declination_deg,
                                         ptrdiff_t station_declination_deg_stride,
                                         const double *variation_deg,
                                         ptrdiff_t variation_deg_stride,
                                         double *station_misalignment_deg,
                                         ptrdiff_t station_misalignment_deg_stride,
                                         int32_t *status);

/**
 * A true direction from a station as a radial, which is counted from the station's north.
 *
 * `true - declination`, 0 to 360.
 *
 * @param true_deg true direction from the station, any finite number
 * @param station_declination_deg the station's declination, positive east, -180 to 180
 * @param[out] radial_from_true_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: None.
 * Errors: A value outside its range.
 * Source: The definition of a station's declination.
 *
 * Example: lubber_radial_from_true_deg(49.5, -6.0, &value) gives 56
 */
int32_t lubber_radial_from_true_deg(double true_deg, double station_declination_deg, double *radial_from_true_deg);

/**
 * `lubber_radial_from_true_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_radial_from_true_deg_n(size_t count,
                                     const double *true_deg,
                                     ptrdiff_t true_deg_stride,
                                     const double *station_declination_deg,
                                     ptrdiff_t station_declination_deg_stride,
                                     double *radial_from_true_deg,
                                     ptrdiff_t radial_from_true_deg_stride,
                                     int32_t *status);

/**
 * A radial counted from true north: the true direction from the station.
 *
 * `radial + declination`, 0 to 360.
 *
 * @param radial_deg radial, any finite number
 * @param station_declination_deg the station's declination, positive east, -180 to 180
 * @param[out] true_from_radial_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: None.
 * Errors: A value outside its range.
 * Source: The definition of a station's declination.
 *
 * Example: lubber_true_from_radial_deg(56.0, -6.0, &value) gives 50
 */
int32_t lubber_true_from_radial_deg(double radial_deg, double station_declination_deg, double *true_from_radial_deg);

/**
 * `lubber_true_from_radial_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_true_from_radial_deg_n(size_t count,
                                     const double *radial_deg,
                                     ptrdiff_t radial_deg_stride,
                                     const double *station_declination_deg,
                                     ptrdiff_t station_declination_deg_stride,
                                     double *true_from_radial_deg,
                                     ptrdiff_t true_from_radial_deg_stride,
                                     int32_t *status);

/**
 * The point of the line at a constant distance beside a course, abeam of a place along the course.
 *
 * Square to the course at that place, by the distance, on the WGS-84 ellipsoid. The line is no geodesic itself.
 *
 * @param lat_deg latitude of a point of the course, -90 to 90
 * @param lon_deg longitude of that point, any finite number
 * @param course_deg true course there, any finite number
 * @param offset_nm distance of the line from the course, right positive, -5000 to 5000
 * @param along_nm distance along the course from its point, negative behind, -10 000 to 10 000
 * @param[out] latitude_deg Its latitude; may be NULL
 * @param[out] longitude_deg Its longitude; may be NULL
 * @param[out] direction_deg Direction of the offset line there, 0 to 360; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: 15 nanometres.
 * Degenerate cases: An offset of zero is the course itself.
 * Errors: A value outside its range.
 * Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55.
 *
 * Example: lubber_offset_point(0.0, 0.0, 90.0, -60.0, 0.0, &value, NULL, NULL) gives 1.0049
 */
int32_t lubber_offset_point(double lat_deg,
                            double lon_deg,
                            double course_deg,
                            double offset_nm,
                            double along_nm,
                            double *latitude_deg,
                            double *longitude_deg,
                            double *direction_deg);

/**
 * `lubber_offset_point` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_offset_point_n(size_t count,
                             const double *lat_deg,
                             ptrdiff_t lat_deg_stride,
                             const double *lon_deg,
                             ptrdiff_t lon_deg_stride,
                             const double *course_deg,
                             ptrdiff_t course_deg_stride,
                             const double *offset_nm,
                             ptrdiff_t offset_nm_stride,
                             const double *along_nm,
                             ptrdiff_t along_nm_stride,
                             double *latitude_deg,
                             ptrdiff_t latitude_deg_stride,
                             double *longitude_deg,
                             ptrdiff_t longitude_deg_stride,
                             double *direction_deg,
                             ptrdiff_t direction_deg_stride,
                             int32_t *status);

/**
 * Where a point lies relative to the line at a constant distance beside a course, on the WGS-84 ellipsoid.
 *
 * What stands square to the course stands square to the line too (Gauss's lemma): the cross-track is that of the course less the offset,
 * and the place abeam is one.
 *
 * @param lat_deg latitude of a point of the course, -90 to 90
 * @param lon_deg longitude of that point, any finite number
 * @param course_deg true course there, any finite number
 * @param offset_nm distance of the line from the course, right positive, -5000 to 5000
 * @param point_lat_deg latitude of the point, -90 to 90
 * @param point_lon_deg longitude of the point, any finite number
 * @param[out] cross_track_nm Distance across the line, positive right of it; may be NULL
 * @param[out] along_track_nm Distance along the course to the place abeam, positive onward; may be NULL
 * @param[out] abeam_latitude_deg Latitude of the point of the line abeam; may be NULL
 * @param[out] abeam_longitude_deg Longitude of the point of the line abeam; may be NULL
 * @param[out] abeam_direction_deg Direction of the line there, 0 to 360; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As `cross_track`.
 * Degenerate cases: With an offset of zero it is `cross_track`. A point a quarter of the earth away on both sides has no place abeam that means anything.
 * Errors: A value outside its range.
 * Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid.
 *
 * Example: lubber_offset_cross_track(0.0, 0.0, 90.0, -60.0, 0.5, 1.0, &value, NULL, NULL, NULL, NULL) gives 30.15
 */
int32_t lubber_offset_cross_track(double lat_deg,
                                  double lon_deg,
                                  double course_deg,
                                  double offset_nm,
                                  double point_lat_deg,
                                  double point_lon_deg,
                                  double *cross_track_nm,
                                  double *along_track_nm,
                                  double *abeam_latitude_deg,
                                  double *abeam_longitude_deg,
                                  double *abeam_direction_deg);

/**
 * `lubber_offset_cross_track` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_offset_cross_track_n(size_t count,
                                   const double *lat_deg,
                                   ptrdiff_t lat_deg_stride,
                                   const double *lon_deg,
                                   ptrdiff_t lon_deg_stride,
                                   const double *course_deg,
                                   ptrdiff_t course_deg_stride,
                                   const double *offset_nm,
                                   ptrdiff_t offset_nm_stride,
                                   const double *point_lat_deg,
                                   ptrdiff_t point_lat_deg_stride,
                                   const double *point_lon_deg,
                                   ptrdiff_t point_lon_deg_stride,
                                   double *cross_track_nm,
                                   ptrdiff_t cross_track_nm_stride,
                                   double *along_track_nm,
                                   ptrdiff_t along_track_nm_stride,
                                   double *abeam_latitude_deg,
                                   ptrdiff_t abeam_latitude_deg_stride,
                                   double *abeam_longitude_deg,
                                   ptrdiff_t abeam_longitude_deg_stride,
                                   double *abeam_direction_deg,
                                   ptrdiff_t abeam_direction_deg_stride,
                                   int32_t *status);

/**
 * Whether a point lies on the line at a constant distance beside a course: 1 if it does, 0 if not.
 *
 * Within the tolerance across it, and for a course that reaches onward also before the place abeam of its point.
 *
 * @param lat_deg latitude of a point of the course, -90 to 90
 * @param lon_deg longitude of that point, any finite number
 * @param course_deg true course there, any finite number
 * @param reach how far the course reaches: LUBBER_COURSE_REACH_ONWARD, LUBBER_COURSE_REACH_BOTH_WAYS
 * @param offset_nm distance of the line from the course, right positive, -5000 to 5000
 * @param point_lat_deg latitude of the point, -90 to 90
 * @param point_lon_deg longitude of the point, any finite number
 * @param tolerance_nm how far across the line still counts, 0 to 10 900
 * @param[out] on_offset the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As `cross_track`.
 * Degenerate cases: With an offset of zero it is `on_course`.
 * Errors: A value outside its range.
 * Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid.
 *
 * Example: lubber_on_offset(0.0, 0.0, 0.0, LUBBER_COURSE_REACH_ONWARD, 60.0, 2.0, 1.0, 0.5, &value) gives 1
 */
int32_t lubber_on_offset(double lat_deg,
                         double lon_deg,
                         double course_deg,
                         int32_t reach,
                         double offset_nm,
                         double point_lat_deg,
                         double point_lon_deg,
                         double tolerance_nm,
                         double *on_offset);

/**
 * `lubber_on_offset` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `reach` is one code for all points: how far the course reaches: LUBBER_COURSE_REACH_ONWARD, LUBBER_COURSE_REACH_BOTH_WAYS
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_on_offset_n(size_t count,
                          const double *lat_deg,
                          ptrdiff_t lat_deg_stride,
                          const double *lon_deg,
                          ptrdiff_t lon_deg_stride,
                          const double *course_deg,
                          ptrdiff_t course_deg_stride,
                          int32_t reach,
                          const double *offset_nm,
                          ptrdiff_t offset_nm_stride,
                          const double *point_lat_deg,
                          ptrdiff_t point_lat_deg_stride,
                          const double *point_lon_deg,
                          ptrdiff_t point_lon_deg_stride,
                          const double *tolerance_nm,
                          ptrdiff_t tolerance_nm_stride,
                          double *on_offset,
                          ptrdiff_t on_offset_stride,
                          int32_t *status);

/**
 * Where the line at a constant distance beside a course meets another course, on the WGS-84 ellipsoid.
 *
 * Looked for within 1 000 NM of the meeting of the two courses along the first; the meeting nearest to it.
 *
 * @param lat1_deg latitude of a point of the first course, -90 to 90
 * @param lon1_deg longitude of that point, any finite number
 * @param course1_deg true course there, any finite number
 * @param offset_nm distance of the line from the first course, right positive, -5000 to 5000
 * @param lat2_deg latitude of a point of the second course, -90 to 90
 * @param lon2_deg longitude of that point, any finite number
 * @param course2_deg true course there, any finite number
 * @param[out] latitude_deg Latitude of the point; may be NULL
 * @param[out] longitude_deg Longitude of the point; may be NULL
 * @param[out] along_first_nm Distance along the course that the line runs beside, negative behind its point; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: A micrometre across the second course.
 * Degenerate cases: An offset of zero is the meeting of the courses themselves.
 * Errors: A value outside its range, courses along one line, or no meeting within 1 000 NM.
 * Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid.
 *
 * Example: lubber_offset_course_crossing(0.0, 0.0, 90.0, -60.0, 0.0, 3.0, 0.0, &value, NULL, NULL) gives 1.0049
 */
int32_t lubber_offset_course_crossing(double lat1_deg,
                                      double lon1_deg,
                                      double course1_deg,
                                      double offset_nm,
                                      double lat2_deg,
                                      double lon2_deg,
                                      double course2_deg,
                                      double *latitude_deg,
                                      double *longitude_deg,
                                      double *along_first_nm);

/**
 * `lubber_offset_course_crossing` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_offset_course_crossing_n(size_t count,
                                       const double *lat1_deg,
                                       ptrdiff_t lat1_deg_stride,
                                       const double *lon1_deg,
                                       ptrdiff_t lon1_deg_stride,
                                       const double *course1_deg,
                                       ptrdiff_t course1_deg_stride,
                                       const double *offset_nm,
                                       ptrdiff_t offset_nm_stride,
                                       const double *lat2_deg,
                                       ptrdiff_t lat2_deg_stride,
                                       const double *lon2_deg,
                                       ptrdiff_t lon2_deg_stride,
                                       const double *course2_deg,
                                       ptrdiff_t course2_deg_stride,
                                       double *latitude_deg,
                                       ptrdiff_t latitude_deg_stride,
                                       double *longitude_deg,
                                       ptrdiff_t longitude_deg_stride,
                                       double *along_first_nm,
                                       ptrdiff_t along_first_nm_stride,
                                       int32_t *status);

/**
 * Where the lines at constant distances beside two courses meet, on the WGS-84 ellipsoid.
 *
 * Looked for within 1 000 NM of the meeting of the two courses along the first; the meeting nearest to it.
 *
 * @param lat1_deg latitude of a point of the first course, -90 to 90
 * @param lon1_deg longitude of that point, any finite number
 * @param course1_deg true course there, any finite number
 * @param offset1_nm distance of the line beside the first course, right positive, -5000 to 5000
 * @param lat2_deg latitude of a point of the second course, -90 to 90
 * @param lon2_deg longitude of that point, any finite number
 * @param course2_deg true course there, any finite number
 * @param offset2_nm distance of the line beside the second course, right positive, -5000 to 5000
 * @param[out] latitude_deg Latitude of the point; may be NULL
 * @param[out] longitude_deg Longitude of the point; may be NULL
 * @param[out] along_first_nm Distance along the first course to the place abeam, negative behind its point; may be NULL
 * @param[out] along_second_nm Distance along the second course to the place abeam, negative behind its point; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: A micrometre across the second line.
 * Degenerate cases: With an offset of zero the line is the course itself.
 * Errors: A value outside its range, courses along one line, or no meeting within 1 000 NM.
 * Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid.
 *
 * Example: lubber_offset_offset_crossing(0.0, 0.0, 90.0, -60.0, 0.0, 3.0, 0.0, 6.0, NULL, NULL, &value, NULL) gives 186.324
 */
int32_t lubber_offset_offset_crossing(double lat1_deg,
                                      double lon1_deg,
                                      double course1_deg,
                                      double offset1_nm,
                                      double lat2_deg,
                                      double lon2_deg,
                                      double course2_deg,
                                      double offset2_nm,
                                      double *latitude_deg,
                                      double *longitude_deg,
                                      double *along_first_nm,
                                      double *along_second_nm);

/**
 * `lubber_offset_offset_crossing` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_offset_offset_crossing_n(size_t count,
                                       const double *lat1_deg,
                                       ptrdiff_t lat1_deg_stride,
                                       const double *lon1_deg,
                                       ptrdiff_t lon1_deg_stride,
                                       const double *course1_deg,
                                       ptrdiff_t course1_deg_stride,
                                       const double *offset1_nm,
                                       ptrdiff_t offset1_nm_stride,
                                       const double *lat2_deg,
                                       ptrdiff_t lat2_deg_stride,
                                       const double *lon2_deg,
                                       ptrdiff_t lon2_deg_stride,
                                       const double *course2_deg,
                                       ptrdiff_t course2_deg_stride,
                                       const double *offset2_nm,
                                       ptrdiff_t offset2_nm_stride,
                                       double *latitude_deg,
                                       ptrdiff_t latitude_deg_stride,
                                       double *longitude_deg,
                                       ptrdiff_t longitude_deg_stride,
                                       double *along_first_nm,
                                       ptrdiff_t along_first_nm_stride,
                                       double *along_second_nm,
                                       ptrdiff_t along_second_nm_stride,
                                       int32_t *status);

/**
 * Where the line at a constant distance beside a course meets a circle (a DME arc), on the WGS-84 ellipsoid: both points.
 *
 * Looked for along the line as far as the circle can reach; the arc is the geodesic circle about its centre.
 *
 * @param lat_deg latitude of a point of the course, -90 to 90
 * @param lon_deg longitude of that point, any finite number
 * @param course_deg true course there, any finite number
 * @param offset_nm distance of the line beside the course, right positive, -5000 to 5000
 * @param center_lat_deg latitude of the centre, -90 to 90
 * @param center_lon_deg longitude of the centre, any finite number
 * @param radius_nm radius of the circle, above 0 to 5000
 * @param[out] latitude1_deg Latitude of the point farther back along the line; may be NULL
 * @param[out] longitude1_deg Its longitude; may be NULL
 * @param[out] along1_nm Distance along the course to the place abeam of it, negative behind its point; may be NULL
 * @param[out] latitude2_deg Latitude of the point farther on along the line; may be NULL
 * @param[out] longitude2_deg Its longitude; may be NULL
 * @param[out] along2_nm Distance along the course to the place abeam of it, negative behind its point; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: A micrometre across the circle; along, soft where the line only just cuts it.
 * Degenerate cases: A line that touches the circle gives its point twice; a miss below a millimetre counts as touching.
 * Errors: A value outside its range, or a line that misses the circle.
 * Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid.
 *
 * Example: lubber_offset_arc_crossing(60.0, -10.0, 90.0, 4.0, 60.0, -9.0, 12.0, NULL, NULL, &value, NULL, NULL, NULL) gives 18.898
 */
int32_t lubber_offset_arc_crossing(double lat_deg,
                                   double lon_deg,
                                   double course_deg,
                                   double offset_nm,
                                   double center_lat_deg,
                                   double center_lon_deg,
                                   double radius_nm,
                                   double *latitude1_deg,
                                   double *longitude1_deg,
                                   double *along1_nm,
                                   double *latitude2_deg,
                                   double *longitude2_deg,
                                   double *along2_nm);

/**
 * `lubber_offset_arc_crossing` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_offset_arc_crossing_n(size_t count,
                                    const double *lat_deg,
                                    ptrdiff_t lat_deg_stride,
                                    const double *lon_deg,
                                    ptrdiff_t lon_deg_stride,
                                    const double *course_deg,
                                    ptrdiff_t course_deg_stride,
                                    const double *offset_nm,
                                    ptrdiff_t offset_nm_stride,
                                    const double *center_lat_deg,
                                    ptrdiff_t center_lat_deg_stride,
                                    const double *center_lon_deg,
                                    ptrdiff_t center_lon_deg_stride,
                                    const double *radius_nm,
                                    ptrdiff_t radius_nm_stride,
                                    double *latitude1_deg,
                                    ptrdiff_t latitude1_deg_stride,
                                    double *longitude1_deg,
                                    ptrdiff_t longitude1_deg_stride,
                                    double *along1_nm,
                                    ptrdiff_t along1_nm_stride,
                                    double *latitude2_deg,
                                    ptrdiff_t latitude2_deg_stride,
                                    double *longitude2_deg,
                                    ptrdiff_t longitude2_deg_stride,
                                    double *along2_nm,
                                    ptrdiff_t along2_nm_stride,
                                    int32_t *status);

/**
 * Static over total pressure of a flow brought to rest without loss.
 *
 * `(1 + 0.2 M^2)^-3.5`. Above Mach 1 a pitot tube feels less than this total pressure: see
 * `lubber_pitot_pressure_ratio`.
 *
 * @param mach Mach number, 0 to 10
 * @param[out] isentropic_pressure_ratio the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding, for air of constant heat ratio: good to about Mach 5.
 * Degenerate cases: At rest the ratio is 1.
 * Errors: A value outside its range.
 * Source: NACA Report 1135 (1953), equation 44 (number from memory), for a ratio of specific heats of 1.4.
 *
 * Example: lubber_isentropic_pressure_ratio(0.84, &value) gives 0.6300
 */
int32_t lubber_isentropic_pressure_ratio(double mach, double *isentropic_pressure_ratio);

/**
 * `lubber_isentropic_pressure_ratio` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_isentropic_pressure_ratio_n(size_t count,
                                          const double *mach,
                                          ptrdiff_t mach_stride,
                                          double *isentropic_pressure_ratio,
                                          ptrdiff_t isentropic_pressure_ratio_stride,
                                          int32_t *status);

/**
 * Pitot over static pressure, behind a normal shock above Mach 1.
 *
 * `(1 + 0.2 M^2)^3.5`, above Mach 1 Rayleigh's `(1.2 M^2)^3.5 (6/(7 M^2 - 1))^2.5`.
 *
 * @param mach Mach number, 0 to 10
 * @param[out] pitot_pressure_ratio the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding, for air of constant heat ratio: good to about Mach 5.
 * Degenerate cases: At rest the ratio is 1. The two forms meet at Mach 1 in value and slope.
 * Errors: A value outside its range.
 * Source: NACA Report 1135 (1953), equations 44 and 100 (numbers from memory), for a ratio of specific heats of 1.4.
 *
 * Example: lubber_pitot_pressure_ratio(1.0, &value) gives 1.893
 */
int32_t lubber_pitot_pressure_ratio(double mach, double *pitot_pressure_ratio);

/**
 * `lubber_pitot_pressure_ratio` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_pitot_pressure_ratio_n(size_t count,
                                     const double *mach,
                                     ptrdiff_t mach_stride,
                                     double *pitot_pressure_ratio,
                                     ptrdiff_t pitot_pressure_ratio_stride,
                                     int32_t *status);

/**
 * Impact pressure that a calibrated airspeed stands for, the same at every altitude.
 *
 * `p0 ((1 + 0.2 (Vc/a0)^2)^3.5 - 1)`, above the speed of sound at sea level by Rayleigh's pitot formula.
 *
 * @param cas_kt calibrated airspeed, 0 to 5000
 * @param[out] impact_pressure_hpa the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: Zero gives zero.
 * Errors: A value outside its range.
 * Source: The definition of calibrated airspeed, with the sea level of ICAO Doc 7488/3 (3rd edition 1993).
 *
 * Example: lubber_impact_pressure_hpa(280.0, &value) gives 132.88
 */
int32_t lubber_impact_pressure_hpa(double cas_kt, double *impact_pressure_hpa);

/**
 * `lubber_impact_pressure_hpa` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_impact_pressure_hpa_n(size_t count,
                                    const double *cas_kt,
                                    ptrdiff_t cas_kt_stride,
                                    double *impact_pressure_hpa,
                                    ptrdiff_t impact_pressure_hpa_stride,
                                    int32_t *status);

/**
 * Calibrated airspeed of an impact pressure: the inverse of `lubber_impact_pressure_hpa`.
 *
 * `a0 sqrt(5 ((q/p0 + 1)^(2/7) - 1))`, above the speed of sound at sea level by Rayleigh's pitot formula.
 *
 * @param impact_pressure_hpa pitot less static pressure, 0 to 80 000
 * @param[out] cas_from_impact_pressure_kt the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: Zero gives zero.
 * Errors: A value outside its range, or a result beyond 5000 kt.
 * Source: The definition of calibrated airspeed, with the sea level of ICAO Doc 7488/3 (3rd edition 1993).
 *
 * Example: lubber_cas_from_impact_pressure_kt(100.0, &value) gives 244.19
 */
int32_t lubber_cas_from_impact_pressure_kt(double impact_pressure_hpa, double *cas_from_impact_pressure_kt);

/**
 * `lubber_cas_from_impact_pressure_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_cas_from_impact_pressure_kt_n(size_t count,
                                            const double *impact_pressure_hpa,
                                            ptrdiff_t impact_pressure_hpa_stride,
                                            double *cas_from_impact_pressure_kt,
                                            ptrdiff_t cas_from_impact_pressure_kt_stride,
                                            int32_t *status);

/**
 * The factor from indicated to true airspeed of procedure design, which leaves compressibility out.
 *
 * `171233 sqrt(288 + D - 0.00198 H) / (288 - 0.00198 H)^2.628` with altitude `H` in feet and ISA deviation
 * `D`. With a deviation of 15 it is also the form of the FAA's procedure design. `lubber_tas_from_cas_kt` is exact.
 *
 * @param altitude_ft altitude of the procedure, -2000 to 50 000
 * @param isa_deviation_k warmer than standard by this, -150 to 150
 * @param[out] procedure_tas_factor the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As published. Against the exact conversion it overstates the true airspeed: by 0.8 percent for 250 kt at 10
 * 000 ft and ISA + 15, more with speed and altitude; above the tropopause it does not hold.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range.
 * Source: ICAO Doc 8168 (PANS-OPS) volume II, 5th edition 2006, Part I Section 4 Chapter 3 Appendix C; constants
 * read in a quotation.
 *
 * Example: lubber_procedure_tas_factor(6000.0, 15.0, &value) gives 1.1231
 */
int32_t lubber_procedure_tas_factor(double altitude_ft, double isa_deviation_k, double *procedure_tas_factor);

/**
 * `lubber_procedure_tas_factor` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_procedure_tas_factor_n(size_t count,
                                     const double *altitude_ft,
                                     ptrdiff_t altitude_ft_stride,
                                     const double *isa_deviation_k,
                                     ptrdiff_t isa_deviation_k_stride,
                                     double *procedure_tas_factor,
                                     ptrdiff_t procedure_tas_factor_stride,
                                     int32_t *status);

/**
 * The geometry of a 45/180 procedure turn in a steady wind and with roll.
 *
 * Off the outbound course by 45 degrees, straight on that track until a time from the start of the turn, half a
 * circle the other way onto the opposite track, straight until the lead of the turn onto the inbound course.
 *
 * @param outbound_course_deg course flown outbound before the turn, any finite number
 * @param side to which side the first turn goes: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
 * @param off_time_s time from the start of the first turn to the turn back, 0 to 3600: 60 for categories A and B, 75 for C to E
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param wind_from_deg where the wind blows from, against the same north
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param bank_limit_deg greatest bank, above 0 below 90
 * @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
 * @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
 * @param[out] off_track_deg Track of the leg off the outbound course; may be NULL
 * @param[out] off_heading_deg Heading that holds it; may be NULL
 * @param[out] back_heading_deg Heading that holds the way back to the course; may be NULL
 * @param[out] straight_nm Distance straight between the half circle and the turn onto the inbound course; negative where the course is crossed; may be NULL
 * @param[out] least_off_time_s Time from the start of the first turn to the turn back that would leave just no straight part; may be NULL
 * @param[out] established_nm Distance outbound from where the first turn began at which the wings are level on the inbound course; negative before it; may be NULL
 * @param[out] farthest_nm How far outbound the path reaches; may be NULL
 * @param[out] widest_nm How far from the course it reaches, to the side of the first turn; may be NULL
 * @param[out] duration_s From the first turn to wings level inbound; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: 1e-9 of its size in the plane.
 * Degenerate cases: A leg that is too short makes the straight part before the last turn negative: the course is crossed. A time
 * shorter than the first turn leaves nothing straight off the course.
 * Errors: A value outside its range, a track that the airspeed cannot hold.
 * Source: The manoeuvre: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 4 Chapter 3, 3.5.4.1, its times as quoted; its geometry is derived.
 *
 * Example: lubber_procedure_turn_45_180(250.0, LUBBER_HOLDING_SIDE_RIGHT, 60.0, 140.0, 200.0, 25.0, 25.0, 3.0, 5.0, NULL, &value, NULL, NULL, NULL, NULL, NULL, NULL, NULL) gives 284.8
 */
int32_t lubber_procedure_turn_45_180(double outbound_course_deg,
                                     int32_t side,
                                     double off_time_s,
                                     double true_airspeed_kt,
                                     double wind_from_deg,
                                     double wind_speed_kt,
                                     double bank_limit_deg,
                                     double turn_rate_limit_deg_per_s,
                                     double roll_rate_deg_per_s,
                                     double *off_track_deg,
                                     double *off_heading_deg,
                                     double *back_heading_deg,
                                     double *straight_nm,
                                     double *least_off_time_s,
                                     double *established_nm,
                                     double *farthest_nm,
                                     double *widest_nm,
                                     double *duration_s);

/**
 * `lubber_procedure_turn_45_180` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `side` is one code for all points: to which side the first turn goes: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_procedure_turn_45_180_n(size_t count,
                                      const double *outbound_course_deg,
                                      ptrdiff_t outbound_course_deg_stride,
                                      int32_t side,
                                      const double *off_time_s,
                                      ptrdiff_t off_time_s_stride,
                                      const double *true_airspeed_kt,
                                      ptrdiff_t true_airspeed_kt_stride,
                                      const double *wind_from_deg,
                                      ptrdiff_t wind_from_deg_stride,
                                      const double *wind_speed_kt,
                                      ptrdiff_t wind_speed_kt_stride,
                                      const double *bank_limit_deg,
                                      ptrdiff_t bank_limit_deg_stride,
                                      const double *turn_rate_limit_deg_per_s,
                                      ptrdiff_t turn_rate_limit_deg_per_s_stride,
                                      const double *roll_rate_deg_per_s,
                                      ptrdiff_t roll_rate_deg_per_s_stride,
                                      double *off_track_deg,
                                      ptrdiff_t off_track_deg_stride,
                                      double *off_heading_deg,
                                      ptrdiff_t off_heading_deg_stride,
                                      double *back_heading_deg,
                                      ptrdiff_t back_heading_deg_stride,
                                      double *straight_nm,
                                      ptrdiff_t straight_nm_stride,
                                      double *least_off_time_s,
                                      ptrdiff_t least_off_time_s_stride,
                                      double *established_nm,
                                      ptrdiff_t established_nm_stride,
                                      double *farthest_nm,
                                      ptrdiff_t farthest_nm_stride,
                                      double *widest_nm,
                                      ptrdiff_t widest_nm_stride,
                                      double *duration_s,
                                      ptrdiff_t duration_s_stride,
                                      int32_t *status);

/**
 * The geometry of an 80/260 procedure turn in a steady wind and with roll, and the angle that would end it on the course.
 *
 * Off the outbound heading by an angle, and at once back the other way onto the heading that holds the inbound
 * course. In calm air with an instant roll it ends `2 r cos(angle)` off the course, on the side away from the first
 * turn.
 *
 * @param outbound_course_deg course flown outbound before the turn, any finite number
 * @param side to which side the first turn goes: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
 * @param first_turn_deg angle of the first turn, above 0 below 180: 80 as published
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param wind_from_deg where the wind blows from, against the same north
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param bank_limit_deg greatest bank, above 0 below 90
 * @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
 * @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
 * @param[out] off_heading_deg Heading at the end of the first turn; may be NULL
 * @param[out] across_nm Distance from the course at its end, positive on the side of the first turn; may be NULL
 * @param[out] established_nm Distance outbound from where the first turn began at its end; negative before it; may be NULL
 * @param[out] farthest_nm How far outbound the path reaches; may be NULL
 * @param[out] widest_nm How far from the course it reaches, to the side of the first turn; may be NULL
 * @param[out] duration_s From the first turn to wings level inbound; may be NULL
 * @param[out] exact_angle_deg The angle of the first turn for which it ends on the course; NaN where none up to 170 degrees does; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: 1e-9 of its size in the plane.
 * Degenerate cases: In calm air with an instant roll the exact angle is 90 degrees.
 * Errors: A value outside its range, a course that the airspeed cannot hold.
 * Source: The manoeuvre: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 4 Chapter 3, 3.5.4.2 (number from memory), as quoted; its geometry is derived.
 *
 * Example: lubber_procedure_turn_80_260(250.0, LUBBER_HOLDING_SIDE_RIGHT, 80.0, 140.0, 200.0, 25.0, 25.0, 3.0, 5.0, NULL, &value, NULL, NULL, NULL, NULL, NULL) gives 0.30
 */
int32_t lubber_procedure_turn_80_260(double outbound_course_deg,
                                     int32_t side,
                                     double first_turn_deg,
                                     double true_airspeed_kt,
                                     double wind_from_deg,
                                     double wind_speed_kt,
                                     double bank_limit_deg,
                                     double turn_rate_limit_deg_per_s,
                                     double roll_rate_deg_per_s,
                                     double *off_heading_deg,
                                     double *across_nm,
                                     double *established_nm,
                                     double *farthest_nm,
                                     double *widest_nm,
                                     double *duration_s,
                                     double *exact_angle_deg);

/**
 * `lubber_procedure_turn_80_260` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `side` is one code for all points: to which side the first turn goes: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_procedure_turn_80_260_n(size_t count,
                                      const double *outbound_course_deg,
                                      ptrdiff_t outbound_course_deg_stride,
                                      int32_t side,
                                      const double *first_turn_deg,
                                      ptrdiff_t first_turn_deg_stride,
                                      const double *true_airspeed_kt,
                                      ptrdiff_t true_airspeed_kt_stride,
                                      const double *wind_from_deg,
                                      ptrdiff_t wind_from_deg_stride,
                                      const double *wind_speed_kt,
                                      ptrdiff_t wind_speed_kt_stride,
                                      const double *bank_limit_deg,
                                      ptrdiff_t bank_limit_deg_stride,
                                      const double *turn_rate_limit_deg_per_s,
                                      ptrdiff_t turn_rate_limit_deg_per_s_stride,
                                      const double *roll_rate_deg_per_s,
                                      ptrdiff_t roll_rate_deg_per_s_stride,
                                      double *off_heading_deg,
                                      ptrdiff_t off_heading_deg_stride,
                                      double *across_nm,
                                      ptrdiff_t across_nm_stride,
                                      double *established_nm,
                                      ptrdiff_t established_nm_stride,
                                      double *farthest_nm,
                                      ptrdiff_t farthest_nm_stride,
                                      double *widest_nm,
                                      ptrdiff_t widest_nm_stride,
                                      double *duration_s,
                                      ptrdiff_t duration_s_stride,
                                      double *exact_angle_deg,
                                      ptrdiff_t exact_angle_deg_stride,
                                      int32_t *status);

/**
 * Cold-temperature correction by a named method, to add to an altitude on the procedure.
 *
 * The formula; the table, whose cells are the formula at sea level rounded up to 10 ft; the table read off evenly between its cells, as it is or
 * rounded to the nearest 100 ft or up to 100 ft; 4 percent of the height for each 10 degC; or the exact one. For 8 794 ft at -12 degC the
 * FAA's example says 500 ft: 534 between the cells of the 5 000 ft column, to the nearest 100.
 *
 * @param height_ft charted height above the altimeter setting source, 0 to 20 000
 * @param temperature_degc temperature at the altimeter setting source, -200 to 200
 * @param elevation_ft elevation of the altimeter setting source, -16 500 to 60 000; the methods by the table leave it out
 * @param method which method: LUBBER_COLD_TEMPERATURE_METHOD_FORMULA, LUBBER_COLD_TEMPERATURE_METHOD_TABLE, LUBBER_COLD_TEMPERATURE_METHOD_INTERPOLATED, LUBBER_COLD_TEMPERATURE_METHOD_INTERPOLATED_NEAREST_HUNDRED, LUBBER_COLD_TEMPERATURE_METHOD_INTERPOLATED_UP_TO_HUNDRED, LUBBER_COLD_TEMPERATURE_METHOD_FOUR_PERCENT, LUBBER_COLD_TEMPERATURE_METHOD_EXACT
 * @param[out] cold_temperature_correction_by_method_ft the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As published. The nearest 100 ft can be 50 ft too little.
 * Degenerate cases: The methods that read off between cells have no answer below -50 degC: it is NaN. They take the 5 000 ft column for greater heights, and go
 * evenly to nothing below 200 ft and between 10 and 15 degC. The others are as their own functions say.
 * Errors: A value outside its range.
 * Source: Formula, table and 4 percent: ICAO Doc 8168 Vol I (5th ed. 2006), Part III Section 1 Chapter 4 (the formula from memory) and its Table
 * III-1-4-1 b). Reading off and rounding: FAA Aeronautical Information Manual (20 April 2023), 7-3-5 and 7-3-6, TBL 7-3-1. Exact: derived.
 *
 * Example: lubber_cold_temperature_correction_by_method_ft(8794.0, -12.0, 3206.0, LUBBER_COLD_TEMPERATURE_METHOD_INTERPOLATED, &value) gives 534
 */
int32_t lubber_cold_temperature_correction_by_method_ft(double height_ft,
                                                        double temperature_degc,
                                                        double elevation_ft,
                                                        int32_t method,
                                                        double *cold_temperature_correction_by_method_ft);

/**
 * `lubber_cold_temperature_correction_by_method_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `method` is one code for all points: which method: LUBBER_COLD_TEMPERATURE_METHOD_FORMULA, LUBBER_COLD_TEMPERATURE_METHOD_TABLE, LUBBER_COLD_TEMPERATURE_METHOD_INTERPOLATED, LUBBER_COLD_TEMPERATURE_METHOD_INTERPOLATED_NEAREST_HUNDRED, LUBBER_COLD_TEMPERATURE_METHOD_INTERPOLATED_UP_TO_HUNDRED, LUBBER_COLD_TEMPERATURE_METHOD_FOUR_PERCENT, LUBBER_COLD_TEMPERATURE_METHOD_EXACT
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_cold_temperature_correction_by_method_ft_n(size_t count,
                                                         const double *height_ft,
                                                         ptrdiff_t height_ft_stride,
                                                         const double *temperature_degc,
                                                         ptrdiff_t temperature_degc_stride,
                                                         const double *elevation_ft,
                                                         ptrdiff_t elevation_ft_stride,
                                                         int32_t method,
                                                         double *cold_temperature_correction_by_method_ft,
                                                         ptrdiff_t cold_temperature_correction_by_method_ft_stride,
                                                         int32_t *status);

/**
 * The speed factor of procedure design by a named method: its formula, or read off its table.
 *
 * The formula is that of `procedure_tas_factor`; the table has it to four decimals every 500 m or every 1 000 ft, and between two entries the
 * factor is taken evenly and rounded to four decimals.
 *
 * @param altitude_ft altitude, -2000 to 50 000
 * @param isa_deviation_k warmer than standard by this, -150 to 150
 * @param method which method: LUBBER_TAS_FACTOR_METHOD_FORMULA, LUBBER_TAS_FACTOR_METHOD_TABLE_METRES, LUBBER_TAS_FACTOR_METHOD_TABLE_FEET
 * @param[out] procedure_tas_factor_by_method the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As published. Reading off adds up to 3e-3 to the factor, most of it above 40 000 ft, and 1e-4 at 6 000 ft.
 * Degenerate cases: On an entry of the table the methods agree to four decimals.
 * Errors: A value outside its range.
 * Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 4 Chapter 3 Appendix C, Table I-4-3-App C-1: its example in SI units (1.1244 for 1850 m) reads
 * off the entries for 1500 and 2000 m (1.1046, 1.1329); the step in feet is from memory.
 *
 * Example: lubber_procedure_tas_factor_by_method(6069.553806, 15.0, LUBBER_TAS_FACTOR_METHOD_TABLE_METRES, &value) gives 1.1244
 */
int32_t lubber_procedure_tas_factor_by_method(double altitude_ft,
                                              double isa_deviation_k,
                                              int32_t method,
                                              double *procedure_tas_factor_by_method);

/**
 * `lubber_procedure_tas_factor_by_method` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `method` is one code for all points: which method: LUBBER_TAS_FACTOR_METHOD_FORMULA, LUBBER_TAS_FACTOR_METHOD_TABLE_METRES, LUBBER_TAS_FACTOR_METHOD_TABLE_FEET
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_procedure_tas_factor_by_method_n(size_t count,
                                               const double *altitude_ft,
                                               ptrdiff_t altitude_ft_stride,
                                               const double *isa_deviation_k,
                                               ptrdiff_t isa_deviation_k_stride,
                                               int32_t method,
                                               double *procedure_tas_factor_by_method,
                                               ptrdiff_t procedure_tas_factor_by_method_stride,
                                               int32_t *status);

/**
 * The standard atmosphere at a pressure altitude by a named edition, with an ISA deviation of the temperature.
 *
 * To 80 km both editions have the same layers; the U.S. one of 1976 has the gas constant 8314.32/28.9644 = 287.05307 J/(kg K) for ICAO's 287.05287. Its
 * pressure is `p0 (p/p0)^(287.05287/287.05307)`.
 *
 * @param pressure_altitude_ft altitude, -16 420 to 262 467.2
 * @param isa_deviation_k warmer than standard by this, -150 to 150
 * @param edition whose atmosphere: LUBBER_ATMOSPHERE_EDITION_ICAO1993, LUBBER_ATMOSPHERE_EDITION_UNITED_STATES1976
 * @param[out] temperature_degc Static temperature; may be NULL
 * @param[out] pressure_hpa Static pressure; may be NULL
 * @param[out] density_kg_per_m3 Density; may be NULL
 * @param[out] speed_of_sound_kt Speed of sound; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding. The editions differ by up to 8e-6 of the pressure and the density, 0.0002 kt of the speed of sound.
 * Degenerate cases: With ICAO's edition it is `standard_atmosphere`.
 * Errors: A value outside its range.
 * Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993; U.S. Standard Atmosphere, 1976, NOAA-S/T 76-1562, Table 2 (the
 * constants from memory, the layers' pressures read in a transcription).
 *
 * Example: lubber_standard_atmosphere_by_edition(104986.87664, 0.0, LUBBER_ATMOSPHERE_EDITION_ICAO1993, NULL, &value, NULL, NULL) gives 8.68016
 */
int32_t lubber_standard_atmosphere_by_edition(double pressure_altitude_ft,
                                              double isa_deviation_k,
                                              int32_t edition,
                                              double *temperature_degc,
                                              double *pressure_hpa,
                                              double *density_kg_per_m3,
                                              double *speed_of_sound_kt);

/**
 * `lubber_standard_atmosphere_by_edition` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `edition` is one code for all points: whose atmosphere: LUBBER_ATMOSPHERE_EDITION_ICAO1993, LUBBER_ATMOSPHERE_EDITION_UNITED_STATES1976
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_standard_atmosphere_by_edition_n(size_t count,
                                               const double *pressure_altitude_ft,
                                               ptrdiff_t pressure_altitude_ft_stride,
                                               const double *isa_deviation_k,
                                               ptrdiff_t isa_deviation_k_stride,
                                               int32_t edition,
                                               double *temperature_degc,
                                               ptrdiff_t temperature_degc_stride,
                                               double *pressure_hpa,
                                               ptrdiff_t pressure_hpa_stride,
                                               double *density_kg_per_m3,
                                               ptrdiff_t density_kg_per_m3_stride,
                                               double *speed_of_sound_kt,
                                               ptrdiff_t speed_of_sound_kt_stride,
                                               int32_t *status);

/**
 * Rate and radius of a level turn in still air with the constants that a named source prints.
 *
 * Sources round gravity and the units, each in its own way: 3 431 / pi for the rate in knots, 6 355 / pi in km/h, 68 625 or 68 625.4 for the radius, 1 091
 * and 11.26 in the handbook. Exact are 1 092.206 and 68 625.37.
 *
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param bank_deg bank angle, above 0 to below 90
 * @param constants whose constants: LUBBER_TURN_CONSTANTS_EXACT, LUBBER_TURN_CONSTANTS_PANS_OPS, LUBBER_TURN_CONSTANTS_PANS_OPS_METRIC, LUBBER_TURN_CONSTANTS_PANS_OPS_GRAVITY, LUBBER_TURN_CONSTANTS_FAA_ORDER, LUBBER_TURN_CONSTANTS_HANDBOOK
 * @param[out] turn_rate_deg_per_s Rate of turn; may be NULL
 * @param[out] radius_nm Radius in still air; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As published: the handbook's radius is 0.3 percent wide, its rate 0.11 percent slow, the others within 0.01 percent of exact.
 * Degenerate cases: No limit of the rate is applied; see `limited_turn`.
 * Errors: A value outside its range.
 * Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 3, 3.1.2.2; FAA Order 8260.58, Chapters 1 and 2 (from memory); FAA-H-8083-25,
 * chapter 5 (from memory); exact: ICAO Doc 7488/3 (3rd edition 1993) for gravity.
 *
 * Example: lubber_published_turn(100.0, 25.0, LUBBER_TURN_CONSTANTS_PANS_OPS, &value, NULL) gives 5.0926
 */
int32_t lubber_published_turn(double true_airspeed_kt,
                              double bank_deg,
                              int32_t constants,
                              double *turn_rate_deg_per_s,
                              double *radius_nm);

/**
 * `lubber_published_turn` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `constants` is one code for all points: whose constants: LUBBER_TURN_CONSTANTS_EXACT, LUBBER_TURN_CONSTANTS_PANS_OPS, LUBBER_TURN_CONSTANTS_PANS_OPS_METRIC, LUBBER_TURN_CONSTANTS_PANS_OPS_GRAVITY, LUBBER_TURN_CONSTANTS_FAA_ORDER, LUBBER_TURN_CONSTANTS_HANDBOOK
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_published_turn_n(size_t count,
                               const double *true_airspeed_kt,
                               ptrdiff_t true_airspeed_kt_stride,
                               const double *bank_deg,
                               ptrdiff_t bank_deg_stride,
                               int32_t constants,
                               double *turn_rate_deg_per_s,
                               ptrdiff_t turn_rate_deg_per_s_stride,
                               double *radius_nm,
                               ptrdiff_t radius_nm_stride,
                               int32_t *status);

/**
 * The holding pattern that closes in a steady wind, exactly: outbound heading, times and size.
 *
 * A turn with its roll over the fix onto the outbound heading, straight outbound, a turn that ends on the inbound
 * course, and that course to the fix; over the ground wind times duration is added to each. The outbound heading is
 * the one for which the sum is nothing.
 *
 * @param inbound_course_deg course flown to the fix, any finite number
 * @param side which way the turns go: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
 * @param timed the leg whose time is given, and where its clock starts: LUBBER_TIMED_LEG_INBOUND, LUBBER_TIMED_LEG_OUTBOUND, LUBBER_TIMED_LEG_OUTBOUND_FROM_LEVEL
 * @param time_s time of that leg, 0 to 3600
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param wind_from_deg where the wind blows from, against the same north
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param bank_limit_deg greatest bank, above 0 below 90
 * @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
 * @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
 * @param[out] outbound_heading_deg Heading to fly outbound; may be NULL
 * @param[out] outbound_correction_deg Outbound heading less the reciprocal of the inbound course, right positive; may be NULL
 * @param[out] inbound_correction_deg Inbound heading less inbound course, right positive; may be NULL
 * @param[out] drift_factor By what the inbound correction has to be multiplied, and its side changed, to give the outbound one; NaN without an inbound correction; may be NULL
 * @param[out] outbound_time_s Time straight outbound, from wings level to the turn inbound; may be NULL
 * @param[out] outbound_clock_s Time on the outbound clock: from abeam the fix, or from wings level where the fix is passed abeam in the turn; may be NULL
 * @param[out] inbound_time_s Time straight inbound, from wings level to the fix; may be NULL
 * @param[out] duration_s From the fix to the fix; may be NULL
 * @param[out] outbound_end_before_fix_nm Where the outbound leg ends, before the fix along the inbound course; may be NULL
 * @param[out] outbound_end_across_nm Where the outbound leg ends, across the inbound course to the side of the turns; may be NULL
 * @param[out] inbound_leg_nm Distance from the fix at which the wings are level on the inbound course; may be NULL
 * @param[out] length_nm Length of the whole path over the ground, along the inbound course; may be NULL
 * @param[out] width_nm Width of the whole path over the ground, across the inbound course; may be NULL
 * @param[out] bank_deg The greatest bank; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: 1e-9 of the size of the pattern, in the plane of the fix.
 * Degenerate cases: In calm air the outbound heading is the reciprocal. Where several headings close the pattern, the one nearest to
 * the reciprocal is meant.
 * Errors: A value outside its range, an inbound course that the airspeed cannot hold, a wind in which no heading closes the
 * pattern before the fix.
 * Source: Derived from the equilibrium of a coordinated turn and the triangle of velocities.
 *
 * Example: lubber_holding_pattern(270.0, LUBBER_HOLDING_SIDE_RIGHT, LUBBER_TIMED_LEG_INBOUND, 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0, &value, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL) gives 68.5
 */
int32_t lubber_holding_pattern(double inbound_course_deg,
                               int32_t side,
                               int32_t timed,
                               double time_s,
                               double true_airspeed_kt,
                               double wind_from_deg,
                               double wind_speed_kt,
                               double bank_limit_deg,
                               double turn_rate_limit_deg_per_s,
                               double roll_rate_deg_per_s,
                               double *outbound_heading_deg,
                               double *outbound_correction_deg,
                               double *inbound_correction_deg,
                               double *drift_factor,
                               double *outbound_time_s,
                               double *outbound_clock_s,
                               double *inbound_time_s,
                               double *duration_s,
                               double *outbound_end_before_fix_nm,
                               double *outbound_end_across_nm,
                               double *inbound_leg_nm,
                               double *length_nm,
                               double *width_nm,
                               double *bank_deg);

/**
 * `lubber_holding_pattern` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `side` is one code for all points: which way the turns go: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
 *
 * `timed` is one code for all points: the leg whose time is given, and where its clock starts: LUBBER_TIMED_LEG_INBOUND, LUBBER_TIMED_LEG_OUTBOUND, LUBBER_TIMED_LEG_OUTBOUND_FROM_LEVEL
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_holding_pattern_n(size_t count,
                                const double *inbound_course_deg,
                                ptrdiff_t inbound_course_deg_stride,
                                int32_t side,
                                int32_t timed,
                                const double *time_s,
                                ptrdiff_t time_s_stride,
                                const double *true_airspeed_kt,
                                ptrdiff_t true_airspeed_kt_stride,
                                const double *wind_from_deg,
                                ptrdiff_t wind_from_deg_stride,
                                const double *wind_speed_kt,
                                ptrdiff_t wind_speed_kt_stride,
                                const double *bank_limit_deg,
                                ptrdiff_t bank_limit_deg_stride,
                                const double *turn_rate_limit_deg_per_s,
                                ptrdiff_t turn_rate_limit_deg_per_s_stride,
                                const double *roll_rate_deg_per_s,
                                ptrdiff_t roll_rate_deg_per_s_stride,
                                double *outbound_heading_deg,
                                ptrdiff_t outbound_heading_deg_stride,
                                double *outbound_correction_deg,
                                ptrdiff_t outbound_correction_deg_stride,
                                double *inbound_correction_deg,
                                ptrdiff_t inbound_correction_deg_stride,
                                double *drift_factor,
                                ptrdiff_t drift_factor_stride,
                                double *outbound_time_s,
                                ptrdiff_t outbound_time_s_stride,
                                double *outbound_clock_s,
                                ptrdiff_t outbound_clock_s_stride,
                                double *inbound_time_s,
                                ptrdiff_t inbound_time_s_stride,
                                double *duration_s,
                                ptrdiff_t duration_s_stride,
                                double *outbound_end_before_fix_nm,
                                ptrdiff_t outbound_end_before_fix_nm_stride,
                                double *outbound_end_across_nm,
                                ptrdiff_t outbound_end_across_nm_stride,
                                double *inbound_leg_nm,
                                ptrdiff_t inbound_leg_nm_stride,
                                double *length_nm,
                                ptrdiff_t length_nm_stride,
                                double *width_nm,
                                ptrdiff_t width_nm_stride,
                                double *bank_deg,
                                ptrdiff_t bank_deg_stride,
                                int32_t *status);

/**
 * Where the aircraft is in the holding pattern that closes in a steady wind, a time after it passed the fix.
 *
 * The turn outbound, the outbound leg, the turn inbound and the inbound leg of `holding_pattern`, one after the other, round after
 * round.
 *
 * @param since_fix_s time since the fix was passed, -1 000 000 to 1 000 000
 * @param inbound_course_deg course flown to the fix, any finite number
 * @param side which way the turns go: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
 * @param timed the leg whose time is given, and where its clock starts: LUBBER_TIMED_LEG_INBOUND, LUBBER_TIMED_LEG_OUTBOUND, LUBBER_TIMED_LEG_OUTBOUND_FROM_LEVEL
 * @param time_s time of that leg, 0 to 3600
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param wind_from_deg where the wind blows from, against the same north
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param bank_limit_deg greatest bank, above 0 below 90
 * @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
 * @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
 * @param[out] bearing_from_fix_deg Bearing from the fix; NaN over it; may be NULL
 * @param[out] distance_nm Distance from the fix over the ground; may be NULL
 * @param[out] heading_deg Heading; may be NULL
 * @param[out] bank_deg Bank, right positive; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As `holding_pattern`.
 * Degenerate cases: Over the fix there is no bearing. Before the fix the last round is meant.
 * Errors: As `holding_pattern`; a time outside its range.
 * Source: As `holding_pattern`.
 *
 * Example: lubber_holding_pattern_at(100.0, 270.0, LUBBER_HOLDING_SIDE_RIGHT, LUBBER_TIMED_LEG_INBOUND, 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0, NULL, NULL, &value, NULL) gives 68.5
 */
int32_t lubber_holding_pattern_at(double since_fix_s,
                                  double inbound_course_deg,
                                  int32_t side,
                                  int32_t timed,
                                  double time_s,
                                  double true_airspeed_kt,
                                  double wind_from_deg,
                                  double wind_speed_kt,
                                  double bank_limit_deg,
                                  double turn_rate_limit_deg_per_s,
                                  double roll_rate_deg_per_s,
                                  double *bearing_from_fix_deg,
                                  double *distance_nm,
                                  double *heading_deg,
                                  double *bank_deg);

/**
 * `lubber_holding_pattern_at` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `side` is one code for all points: which way the turns go: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
 *
 * `timed` is one code for all points: the leg whose time is given, and where its clock starts: LUBBER_TIMED_LEG_INBOUND, LUBBER_TIMED_LEG_OUTBOUND, LUBBER_TIMED_LEG_OUTBOUND_FROM_LEVEL
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_holding_pattern_at_n(size_t count,
                                   const double *since_fix_s,
                                   ptrdiff_t since_fix_s_stride,
                                   const double *inbound_course_deg,
                                   ptrdiff_t inbound_course_deg_stride,
                                   int32_t side,
                                   int32_t timed,
                                   const double *time_s,
                                   ptrdiff_t time_s_stride,
                                   const double *true_airspeed_kt,
                                   ptrdiff_t true_airspeed_kt_stride,
                                   const double *wind_from_deg,
                                   ptrdiff_t wind_from_deg_stride,
                                   const double *wind_speed_kt,
                                   ptrdiff_t wind_speed_kt_stride,
                                   const double *bank_limit_deg,
                                   ptrdiff_t bank_limit_deg_stride,
                                   const double *turn_rate_limit_deg_per_s,
                                   ptrdiff_t turn_rate_limit_deg_per_s_stride,
                                   const double *roll_rate_deg_per_s,
                                   ptrdiff_t roll_rate_deg_per_s_stride,
                                   double *bearing_from_fix_deg,
                                   ptrdiff_t bearing_from_fix_deg_stride,
                                   double *distance_nm,
                                   ptrdiff_t distance_nm_stride,
                                   double *heading_deg,
                                   ptrdiff_t heading_deg_stride,
                                   double *bank_deg,
                                   ptrdiff_t bank_deg_stride,
                                   int32_t *status);

/**
 * The greatest ground distance at which a station is received over a smooth earth.
 *
 * `Re (acos(Re / (Re + h1)) + acos(Re / (Re + h2)))` with `Re` 4/3 of the earth's radius, or a factor times `sqrt(h1) + sqrt(h2)`.
 *
 * @param aircraft_height_ft height of the aircraft above the surface, 0 to 400 000
 * @param antenna_height_ft height of the antenna above the surface, 0 to 400 000
 * @param rule which rule: LUBBER_HORIZON_RULE_FOUR_THIRDS, LUBBER_HORIZON_RULE_FEET_MILES, LUBBER_HORIZON_RULE_METRES_KILOMETRES, LUBBER_HORIZON_RULE_FIVE_QUARTERS
 * @param[out] radio_horizon_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Exact for its model; the rules differ by up to 2 percent, the air of the day and terrain by more.
 * Degenerate cases: Two heights of zero see no distance.
 * Errors: A value outside its range.
 * Source: 4/3 of the radius: derived, the factor from ITU-R P.310 (from memory). 1.23 sqrt(ft) NM and 4.11 sqrt(m) km: ICAO Doc 8168 Vol II (5th ed. 2006),
 * Part III Section 1 Chapter 3, Appendix. 1.25 sqrt(ft) NM: common practice.
 *
 * Example: lubber_radio_horizon_nm(31000.0, 40.0, LUBBER_HORIZON_RULE_FOUR_THIRDS, &value) gives 224.0
 */
int32_t lubber_radio_horizon_nm(double aircraft_height_ft,
                                double antenna_height_ft,
                                int32_t rule,
                                double *radio_horizon_nm);

/**
 * `lubber_radio_horizon_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `rule` is one code for all points: which rule: LUBBER_HORIZON_RULE_FOUR_THIRDS, LUBBER_HORIZON_RULE_FEET_MILES, LUBBER_HORIZON_RULE_METRES_KILOMETRES, LUBBER_HORIZON_RULE_FIVE_QUARTERS
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_radio_horizon_nm_n(size_t count,
                                 const double *aircraft_height_ft,
                                 ptrdiff_t aircraft_height_ft_stride,
                                 const double *antenna_height_ft,
                                 ptrdiff_t antenna_height_ft_stride,
                                 int32_t rule,
                                 double *radio_horizon_nm,
                                 ptrdiff_t radio_horizon_nm_stride,
                                 int32_t *status);

/**
 * The least height at which a station is received at a ground distance over a smooth earth: the inverse of `radio_horizon_nm`.
 *
 * `Re (sec(d / Re - acos(Re / (Re + h))) - 1)` with `Re` 4/3 of the earth's radius, or the square of `d / factor - sqrt(h)`.
 *
 * @param ground_distance_nm distance along the ground, 0 to 10 900
 * @param antenna_height_ft height of the antenna above the surface, 0 to 400 000
 * @param rule which rule: LUBBER_HORIZON_RULE_FOUR_THIRDS, LUBBER_HORIZON_RULE_FEET_MILES, LUBBER_HORIZON_RULE_METRES_KILOMETRES, LUBBER_HORIZON_RULE_FIVE_QUARTERS
 * @param[out] least_reception_height_ft the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As `radio_horizon_nm`.
 * Degenerate cases: Within the antenna's own horizon it is zero.
 * Errors: A value outside its range, or a distance at which 400 000 ft are not enough.
 * Source: As `radio_horizon_nm`.
 *
 * Example: lubber_least_reception_height_ft(130.0, 0.0, LUBBER_HORIZON_RULE_FOUR_THIRDS, &value) gives 11198
 */
int32_t lubber_least_reception_height_ft(double ground_distance_nm,
                                         double antenna_height_ft,
                                         int32_t rule,
                                         double *least_reception_height_ft);

/**
 * `lubber_least_reception_height_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `rule` is one code for all points: which rule: LUBBER_HORIZON_RULE_FOUR_THIRDS, LUBBER_HORIZON_RULE_FEET_MILES, LUBBER_HORIZON_RULE_METRES_KILOMETRES, LUBBER_HORIZON_RULE_FIVE_QUARTERS
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_least_reception_height_ft_n(size_t count,
                                          const double *ground_distance_nm,
                                          ptrdiff_t ground_distance_nm_stride,
                                          const double *antenna_height_ft,
                                          ptrdiff_t antenna_height_ft_stride,
                                          int32_t rule,
                                          double *least_reception_height_ft,
                                          ptrdiff_t least_reception_height_ft_stride,
                                          int32_t *status);

/**
 * How far the published service volume of a station's class reaches at a height.
 *
 * The farthest of the published layers that hold the height. The classes named `above_ground` are those of older editions, whose heights
 * are counted from the ground at the station; all others count from the transmitter.
 *
 * @param service_class the class of the station: LUBBER_SERVICE_CLASS_TERMINAL, LUBBER_SERVICE_CLASS_LOW, LUBBER_SERVICE_CLASS_HIGH, LUBBER_SERVICE_CLASS_VOR_LOW, LUBBER_SERVICE_CLASS_VOR_HIGH, LUBBER_SERVICE_CLASS_DME_LOW, LUBBER_SERVICE_CLASS_DME_HIGH, LUBBER_SERVICE_CLASS_TERMINAL_ABOVE_GROUND, LUBBER_SERVICE_CLASS_LOW_ABOVE_GROUND, LUBBER_SERVICE_CLASS_HIGH_ABOVE_GROUND, LUBBER_SERVICE_CLASS_COMPASS_LOCATOR, LUBBER_SERVICE_CLASS_NDB_MEDIUM_HIGH, LUBBER_SERVICE_CLASS_NDB_HIGH, LUBBER_SERVICE_CLASS_NDB_VERY_HIGH
 * @param height_ft height above the station's antenna, -60 000 to 400 000
 * @param antenna_height_ft height of the antenna above the ground, 0 to 400 000
 * @param[out] service_reach_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As published: a floor belongs to its layer, a ceiling where the text says "including".
 * Degenerate cases: Outside every layer the reach is zero. The lower edges below 1 000 ft that some editions print as curves, and the cone above the station
 * (`cone_radius_nm`), are not in it.
 * Errors: A value outside its range.
 * Source: FAA Aeronautical Information Manual of 2023, 1-1-8, TBL 1-1-1 and TBL 1-1-2 (DL and DH from memory of that table); for heights above the ground the
 * editions of 2004 and 2016. Below 12 900 ft the DME classes reach to the radio horizon (4/3 of the earth's radius).
 *
 * Example: lubber_service_reach_nm(LUBBER_SERVICE_CLASS_HIGH, 18000.0, 0.0, &value) gives 130
 */
int32_t lubber_service_reach_nm(int32_t service_class,
                                double height_ft,
                                double antenna_height_ft,
                                double *service_reach_nm);

/**
 * `lubber_service_reach_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `service_class` is one code for all points: the class of the station: LUBBER_SERVICE_CLASS_TERMINAL, LUBBER_SERVICE_CLASS_LOW, LUBBER_SERVICE_CLASS_HIGH, LUBBER_SERVICE_CLASS_VOR_LOW, LUBBER_SERVICE_CLASS_VOR_HIGH, LUBBER_SERVICE_CLASS_DME_LOW, LUBBER_SERVICE_CLASS_DME_HIGH, LUBBER_SERVICE_CLASS_TERMINAL_ABOVE_GROUND, LUBBER_SERVICE_CLASS_LOW_ABOVE_GROUND, LUBBER_SERVICE_CLASS_HIGH_ABOVE_GROUND, LUBBER_SERVICE_CLASS_COMPASS_LOCATOR, LUBBER_SERVICE_CLASS_NDB_MEDIUM_HIGH, LUBBER_SERVICE_CLASS_NDB_HIGH, LUBBER_SERVICE_CLASS_NDB_VERY_HIGH
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_service_reach_nm_n(size_t count,
                                 int32_t service_class,
                                 const double *height_ft,
                                 ptrdiff_t height_ft_stride,
                                 const double *antenna_height_ft,
                                 ptrdiff_t antenna_height_ft_stride,
                                 double *service_reach_nm,
                                 ptrdiff_t service_reach_nm_stride,
                                 int32_t *status);

/**
 * What a course deviation indicator shows on a radial with a course selected.
 *
 * Within 90 degrees of the selected course FROM and `course - radial`; beyond, TO and `radial + 180 - course`.
 *
 * @param radial_deg radial of the aircraft, any finite number
 * @param selected_course_deg the course selected, in the station's north, any finite number
 * @param full_scale_deg deviation at which the needle stands at the end of its scale, above 0 below 90
 * @param abeam_zone_deg half-width of the zone about 90 degrees from the course in which it shows neither TO nor FROM, 0 to 45
 * @param[out] deviation_deg Angle at the station from the aircraft to the selected course, -90 to 90, positive when the course lies to the right; may be NULL
 * @param[out] deflection Where the needle stands as a part of full scale, held at its end, -1 to 1, positive right of centre; may be NULL
 * @param[out] to_from Whether the selected course leads to or from the station, LUBBER_TO_FROM_OFF, LUBBER_TO_FROM_TO, LUBBER_TO_FROM_FROM: 0 neither, 1 to, 2 from; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error.
 * Degenerate cases: Exactly abeam neither TO nor FROM is shown, whatever the zone's width.
 * Errors: A value outside its range.
 * Source: FAA-H-8083-15 (Instrument Flying Handbook), VOR indications (from memory). Full scale: five dots of 2 degrees make 10 (FAA-H-8083-25, from memory); the
 * Instrument Flying Handbook (FAA-H-8083-15A, p. 7-11) states 12 or more. The zone abeam: common practice.
 *
 * Example: lubber_vor_needle(227.0, 50.0, 10.0, 1.0, NULL, &value, NULL) gives -0.3
 */
int32_t lubber_vor_needle(double radial_deg,
                          double selected_course_deg,
                          double full_scale_deg,
                          double abeam_zone_deg,
                          double *deviation_deg,
                          double *deflection,
                          double *to_from);

/**
 * `lubber_vor_needle` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_vor_needle_n(size_t count,
                           const double *radial_deg,
                           ptrdiff_t radial_deg_stride,
                           const double *selected_course_deg,
                           ptrdiff_t selected_course_deg_stride,
                           const double *full_scale_deg,
                           ptrdiff_t full_scale_deg_stride,
                           const double *abeam_zone_deg,
                           ptrdiff_t abeam_zone_deg_stride,
                           double *deviation_deg,
                           ptrdiff_t deviation_deg_stride,
                           double *deflection,
                           ptrdiff_t deflection_stride,
                           double *to_from,
                           ptrdiff_t to_from_stride,
                           int32_t *status);

/**
 * What a VOR/DME receiver shows at a place, with a perfect signal and a course selected.
 *
 * Radial and slant range of `observe`, the needle of `vor_needle`, the DME to the nearest step of its display. The flag is, in this order: out of range,
 * below the radio horizon (4/3 of the earth's radius, smooth), in the cone, abeam.
 *
 * @param station_latitude_deg latitude of the antenna, -90 to 90
 * @param station_longitude_deg longitude of the antenna, any finite number
 * @param station_elevation_ft elevation of the antenna above mean sea level, -16 500 to 60 000
 * @param station_declination_deg angle from true north to the station's north, positive east, -180 to 180
 * @param latitude_deg latitude of the aircraft, -90 to 90
 * @param longitude_deg longitude of the aircraft, any finite number
 * @param altitude_ft altitude of the aircraft above mean sea level, -16 500 to 400 000
 * @param selected_course_deg the course selected, in the station's north, any finite number
 * @param full_scale_deg deviation at which the needle stands at the end of its scale, above 0 below 90
 * @param abeam_zone_deg half-width of the zone about 90 degrees from the course in which it shows neither TO nor FROM, 0 to 45
 * @param reach_nm ground distance to which the station is received, 0 to 10 900
 * @param cone_half_angle_deg half-angle of the cone of confusion from the vertical, above 0 below 90
 * @param antenna_height_ft height of the antenna above the smooth surface of the radio horizon, 0 to 400 000
 * @param dme_step_nm step in which the DME counts, above 0 to 10
 * @param[out] flag Why neither TO nor FROM is shown, LUBBER_FLAG_CLEAR, LUBBER_FLAG_ABEAM, LUBBER_FLAG_CONE, LUBBER_FLAG_BELOW_HORIZON, LUBBER_FLAG_OUT_OF_RANGE: 0 clear, 1 abeam, 2 in the cone, 3 below the horizon, 4 out of range; may be NULL
 * @param[out] to_from Whether the selected course leads to or from the station, LUBBER_TO_FROM_OFF, LUBBER_TO_FROM_TO, LUBBER_TO_FROM_FROM: 0 neither, 1 to, 2 from; may be NULL
 * @param[out] deviation_deg Angle at the station from the aircraft to the selected course, positive when the course lies to the right; NaN where the VOR is not to be used; may be NULL
 * @param[out] deflection Where the needle stands as a part of full scale, -1 to 1, positive right of centre; NaN where the VOR is not to be used; may be NULL
 * @param[out] radial_deg The radial, as a bearing pointer shows it; NaN where the VOR is not to be used; may be NULL
 * @param[out] dme_nm The DME as displayed; NaN out of range and below the horizon; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Radial and slant range as `observe`; the bounds of reception are models.
 * Degenerate cases: Exactly over or under the antenna there is no radial: the flag is that of the cone, unless the station is not received at all.
 * Errors: A value outside its range.
 * Source: As `observe`, `vor_needle`, `radio_horizon_nm` and `cone_radius_nm`. 199 NM: FAA Aeronautical Information Manual 1-1-7, edition not shown in the copy read; `service_reach_nm` has the reach of
 * a class. Tenths of a mile: common practice.
 *
 * Example: lubber_vor_receiver(61.25, -11.5, 420.0, -6.0, 61.5, -11.0, 31000.0, 225.0, 10.0, 1.0, 199.0, 50.0, 0.0, 0.1, NULL, NULL, NULL, &value, NULL, NULL) gives 0.46
 */
int32_t lubber_vor_receiver(double station_latitude_deg,
                            double station_longitude_deg,
                            double station_elevation_ft,
                            double station_declination_deg,
                            double latitude_deg,
                            double longitude_deg,
                            double altitude_ft,
                            double selected_course_deg,
                            double full_scale_deg,
                            double abeam_zone_deg,
                            double reach_nm,
                            double cone_half_angle_deg,
                            double antenna_height_ft,
                            double dme_step_nm,
                            double *flag,
                            double *to_from,
                            double *deviation_deg,
                            double *deflection,
                            double *radial_deg,
                            double *dme_nm);

/**
 * `lubber_vor_receiver` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_vor_receiver_n(size_t count,
                             const double *station_latitude_deg,
                             ptrdiff_t station_latitude_deg_stride,
                             const double *station_longitude_deg,
                             ptrdiff_t station_longitude_deg_stride,
                             const double *station_elevation_ft,
                             ptrdiff_t station_elevation_ft_stride,
                             const double *station_declination_deg,
                             ptrdiff_t station_declination_deg_stride,
                             const double *latitude_deg,
                             ptrdiff_t latitude_deg_stride,
                             const double *longitude_deg,
                             ptrdiff_t longitude_deg_stride,
                             const double *altitude_ft,
                             ptrdiff_t altitude_ft_stride,
                             const double *selected_course_deg,
                             ptrdiff_t selected_course_deg_stride,
                             const double *full_scale_deg,
                             ptrdiff_t full_scale_deg_stride,
                             const double *abeam_zone_deg,
                             ptrdiff_t abeam_zone_deg_stride,
                             const double *reach_nm,
                             ptrdiff_t reach_nm_stride,
                             const double *cone_half_angle_deg,
                             ptrdiff_t cone_half_angle_deg_stride,
                             const double *antenna_height_ft,
                             ptrdiff_t antenna_height_ft_stride,
                             const double *dme_step_nm,
                             ptrdiff_t dme_step_nm_stride,
                             double *flag,
                             ptrdiff_t flag_stride,
                             double *to_from,
                             ptrdiff_t to_from_stride,
                             double *deviation_deg,
                             ptrdiff_t deviation_deg_stride,
                             double *deflection,
                             ptrdiff_t deflection_stride,
                             double *radial_deg,
                             ptrdiff_t radial_deg_stride,
                             double *dme_nm,
                             ptrdiff_t dme_nm_stride,
                             int32_t *status);

/**
 * A slant range as a DME display shows it: to the nearest of its steps, halves up.
 *
 * `round(dme / step) step`.
 *
 * @param dme_nm slant range, 0 to 10 900
 * @param dme_step_nm step in which the display counts, above 0 to 10
 * @param[out] displayed_dme_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Half a step.
 * Degenerate cases: Below half a step zero is shown.
 * Errors: A value outside its range.
 * Source: Common practice: displays count tenths of a mile.
 *
 * Example: lubber_displayed_dme_nm(21.46, 0.1, &value) gives 21.50
 */
int32_t lubber_displayed_dme_nm(double dme_nm, double dme_step_nm, double *displayed_dme_nm);

/**
 * `lubber_displayed_dme_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_displayed_dme_nm_n(size_t count,
                                 const double *dme_nm,
                                 ptrdiff_t dme_nm_stride,
                                 const double *dme_step_nm,
                                 ptrdiff_t dme_step_nm_stride,
                                 double *displayed_dme_nm,
                                 ptrdiff_t displayed_dme_nm_stride,
                                 int32_t *status);

/**
 * Distance off course, right positive, for a deflection of the needle at a distance from the station.
 *
 * `-R asin(sin(d / R) sin(deflection full_scale))` on a sphere of the mean radius, in the plane `-d sin(deviation)`: right of course the needle stands left.
 *
 * @param deflection where the needle stands as a part of full scale, positive right of centre, -1 to 1
 * @param distance_nm distance from the station along the ground, above 0 to 5000
 * @param full_scale_deg deviation at full scale, above 0 below 90
 * @param[out] cross_track_of_deflection_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Exact on the sphere; the ellipsoid moves it by less than 0.6 percent.
 * Degenerate cases: At either end of the scale it is the least distance that it may be.
 * Errors: A value outside its range.
 * Source: The law of sines on the sphere.
 *
 * Example: lubber_cross_track_of_deflection_nm(0.5, 30.0, 10.0, &value) gives -2.615
 */
int32_t lubber_cross_track_of_deflection_nm(double deflection,
                                            double distance_nm,
                                            double full_scale_deg,
                                            double *cross_track_of_deflection_nm);

/**
 * `lubber_cross_track_of_deflection_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_cross_track_of_deflection_nm_n(size_t count,
                                             const double *deflection,
                                             ptrdiff_t deflection_stride,
                                             const double *distance_nm,
                                             ptrdiff_t distance_nm_stride,
                                             const double *full_scale_deg,
                                             ptrdiff_t full_scale_deg_stride,
                                             double *cross_track_of_deflection_nm,
                                             ptrdiff_t cross_track_of_deflection_nm_stride,
                                             int32_t *status);

/**
 * Deviation and deflection for a distance off course at a distance from the station: the inverse of `cross_track_of_deflection_nm`.
 *
 * `-asin(sin(x / R) / sin(d / R))` on a sphere of the mean radius, in the plane `-asin(x / d)`.
 *
 * @param cross_track_nm distance off course, right positive, -5000 to 5000
 * @param distance_nm distance from the station along the ground, above 0 to 5000
 * @param full_scale_deg deviation at full scale, above 0 below 90
 * @param[out] deviation_deg Angle at the station from the aircraft to the course, -90 to 90, positive when the course lies to the right; may be NULL
 * @param[out] deflection Where the needle stands as a part of full scale, held at its end, -1 to 1, positive right of centre; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As `cross_track_of_deflection_nm`.
 * Degenerate cases: Beyond full scale the needle is held at its end; the deviation goes on to 90 degrees.
 * Errors: A value outside its range, or an aircraft farther off course than from the station.
 * Source: The law of sines on the sphere.
 *
 * Example: lubber_deflection_of_cross_track(1.0, 30.0, 10.0, NULL, &value) gives -0.191
 */
int32_t lubber_deflection_of_cross_track(double cross_track_nm,
                                         double distance_nm,
                                         double full_scale_deg,
                                         double *deviation_deg,
                                         double *deflection);

/**
 * `lubber_deflection_of_cross_track` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_deflection_of_cross_track_n(size_t count,
                                          const double *cross_track_nm,
                                          ptrdiff_t cross_track_nm_stride,
                                          const double *distance_nm,
                                          ptrdiff_t distance_nm_stride,
                                          const double *full_scale_deg,
                                          ptrdiff_t full_scale_deg_stride,
                                          double *deviation_deg,
                                          ptrdiff_t deviation_deg_stride,
                                          double *deflection,
                                          ptrdiff_t deflection_stride,
                                          int32_t *status);

/**
 * How fast the needle moves, for a groundspeed and a distance from the station.
 *
 * `-v sin(crossing) / (R sin(d / R))` on a sphere of the mean radius, in the plane `-v sin(crossing) / d`.
 *
 * @param groundspeed_kt groundspeed, 0 to 10 000
 * @param distance_nm distance from the station along the ground, above 0 to 5000
 * @param crossing_angle_deg angle, right positive, to the track from the direction away from the station (FROM) or to it (TO)
 * @param full_scale_deg deviation at full scale, above 0 below 90
 * @param[out] needle_rate_deg_per_s How fast the deviation changes, positive when the needle moves to the right; may be NULL
 * @param[out] full_scale_time_s How long the needle takes from the end of its scale to the centre, at this distance and crossing; infinite along the course; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Exact on the sphere; the ellipsoid moves it by less than 0.6 percent.
 * Degenerate cases: Along the course the needle stands still, and the time is infinite.
 * Errors: A value outside its range.
 * Source: Derived: the motion across the line from the station.
 *
 * Example: lubber_needle_motion(180.0, 10.0, -30.0, 10.0, &value, NULL) gives 0.143
 */
int32_t lubber_needle_motion(double groundspeed_kt,
                             double distance_nm,
                             double crossing_angle_deg,
                             double full_scale_deg,
                             double *needle_rate_deg_per_s,
                             double *full_scale_time_s);

/**
 * `lubber_needle_motion` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_needle_motion_n(size_t count,
                              const double *groundspeed_kt,
                              ptrdiff_t groundspeed_kt_stride,
                              const double *distance_nm,
                              ptrdiff_t distance_nm_stride,
                              const double *crossing_angle_deg,
                              ptrdiff_t crossing_angle_deg_stride,
                              const double *full_scale_deg,
                              ptrdiff_t full_scale_deg_stride,
                              double *needle_rate_deg_per_s,
                              ptrdiff_t needle_rate_deg_per_s_stride,
                              double *full_scale_time_s,
                              ptrdiff_t full_scale_time_s_stride,
                              int32_t *status);

/**
 * The rhumb line between two points of the WGS-84 ellipsoid, the short way round: its length and its constant course.
 *
 * `tan C = l / q`, `d = hypot(m, l m / q)` with the differences of longitude `l`, of isometric latitude `q` and of the arc of the
 * meridian `m`; on a parallel `m / q` is its radius. Published tables of Mercator sailing count a minute of latitude as a mile.
 *
 * @param lat1_deg latitude of the first point, -90 to 90
 * @param lon1_deg longitude of the first point, any finite number
 * @param lat2_deg latitude of the second point, -90 to 90
 * @param lon2_deg longitude of the second point, any finite number
 * @param[out] distance_nm Length along the surface; may be NULL
 * @param[out] course_deg True course all along, 0 to 360; NaN between coincident points; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: 20 nanometres along the line and, for the course, 40 across its far end, which is what rounding leaves of a number of degrees.
 * Degenerate cases: Coincident points have no course (NaN). A line to or from a pole runs along the meridian of the other point. Points half the world apart
 * in longitude have two such lines; the eastward one is given.
 * Errors: A latitude beyond a pole, or an infinite number.
 * Source: C. F. F. Karney, The area of rhumb polygons, Studia Geophysica et Geodaetica 68 (2024) 99-120, doi 10.1007/s11200-024-0709-z; the
 * differences are derived beside the code.
 *
 * Example: lubber_rhumb_inverse(60.0, -30.0, 60.0, 30.0, &value, NULL) gives 1807.775
 */
int32_t lubber_rhumb_inverse(double lat1_deg,
                             double lon1_deg,
                             double lat2_deg,
                             double lon2_deg,
                             double *distance_nm,
                             double *course_deg);

/**
 * `lubber_rhumb_inverse` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rhumb_inverse_n(size_t count,
                              const double *lat1_deg,
                              ptrdiff_t lat1_deg_stride,
                              const double *lon1_deg,
                              ptrdiff_t lon1_deg_stride,
                              const double *lat2_deg,
                              ptrdiff_t lat2_deg_stride,
                              const double *lon2_deg,
                              ptrdiff_t lon2_deg_stride,
                              double *distance_nm,
                              ptrdiff_t distance_nm_stride,
                              double *course_deg,
                              ptrdiff_t course_deg_stride,
                              int32_t *status);

/**
 * The point reached along a rhumb line of the WGS-84 ellipsoid.
 *
 * The latitude is where the arc of the meridian is `d cos C`, by four steps of Newton's method; the longitude follows as `d sin C` over
 * the mean radius of the parallels passed.
 *
 * @param lat_deg latitude of the start, -90 to 90
 * @param lon_deg longitude of the start, any finite number
 * @param course_deg true course, any finite number
 * @param distance_nm length of the line, 0 to 10 900
 * @param[out] latitude_deg Latitude of the point reached, -90 to 90; may be NULL
 * @param[out] longitude_deg Longitude of the point reached, -180 to 180; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: 30 nanometres, but around a pole: within a metre of it a nanometre of the way is more of longitude.
 * Degenerate cases: A line that ends within a micrometre of a pole ends at it, with the longitude of the start. From a pole a line runs along the meridian of
 * the longitude given there.
 * Errors: A value outside its range; a line that would pass a pole, or leave one in any direction but along a meridian, which winds about the
 * pole without end.
 * Source: As `lubber_rhumb_inverse`.
 *
 * Example: lubber_rhumb_direct(60.0, -10.0, 45.0, 600.0, &value, NULL) gives 67.0489
 */
int32_t lubber_rhumb_direct(double lat_deg,
                            double lon_deg,
                            double course_deg,
                            double distance_nm,
                            double *latitude_deg,
                            double *longitude_deg);

/**
 * `lubber_rhumb_direct` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rhumb_direct_n(size_t count,
                             const double *lat_deg,
                             ptrdiff_t lat_deg_stride,
                             const double *lon_deg,
                             ptrdiff_t lon_deg_stride,
                             const double *course_deg,
                             ptrdiff_t course_deg_stride,
                             const double *distance_nm,
                             ptrdiff_t distance_nm_stride,
                             double *latitude_deg,
                             ptrdiff_t latitude_deg_stride,
                             double *longitude_deg,
                             ptrdiff_t longitude_deg_stride,
                             int32_t *status);

/**
 * How much longer the rhumb line between two points is than the geodesic, and by what angle the two set out apart.
 *
 * The results of `rhumb_inverse` less those of `geodesic_inverse`.
 *
 * @param lat1_deg latitude of the first point, -90 to 90
 * @param lon1_deg longitude of the first point, any finite number
 * @param lat2_deg latitude of the second point, -90 to 90
 * @param lon2_deg longitude of the second point, any finite number
 * @param[out] excess_nm How much longer the rhumb line is; may be NULL
 * @param[out] conversion_angle_deg Conversion angle: what is added to the course of the rhumb line for the bearing of the geodesic at the first point, -180 to 180; NaN between coincident points; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: 40 nanometres along the line and, for the angle, 60 across its far end.
 * Degenerate cases: Coincident points have an excess of zero and no angle (NaN). Along a meridian the two are one.
 * Errors: A latitude beyond a pole, or an infinite number.
 * Source: As `lubber_rhumb_inverse` and `lubber_geodesic_inverse`.
 *
 * Example: lubber_rhumb_excess(60.0, -30.0, 60.0, 30.0, &value, NULL) gives 62.97
 */
int32_t lubber_rhumb_excess(double lat1_deg,
                            double lon1_deg,
                            double lat2_deg,
                            double lon2_deg,
                            double *excess_nm,
                            double *conversion_angle_deg);

/**
 * `lubber_rhumb_excess` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rhumb_excess_n(size_t count,
                             const double *lat1_deg,
                             ptrdiff_t lat1_deg_stride,
                             const double *lon1_deg,
                             ptrdiff_t lon1_deg_stride,
                             const double *lat2_deg,
                             ptrdiff_t lat2_deg_stride,
                             const double *lon2_deg,
                             ptrdiff_t lon2_deg_stride,
                             double *excess_nm,
                             ptrdiff_t excess_nm_stride,
                             double *conversion_angle_deg,
                             ptrdiff_t conversion_angle_deg_stride,
                             int32_t *status);

/**
 * Distance along the course at which an angle has grown to a width: where a protected area begins to splay.
 *
 * `width / tan(angle)`.
 *
 * @param half_width_nm half the width of the area, 0 to 1000
 * @param angle_deg the angle, 0 to 90
 * @param[out] splay_distance_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Over a flat earth.
 * Degenerate cases: Without an angle it is infinite; without either it is NaN.
 * Errors: A value outside its range.
 * Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part II Section 3 Chapter 1, 1.4.2.3: 5 NM and 5.7 degrees for VOR, beyond 49.8 NM.
 *
 * Example: lubber_splay_distance_nm(4.0, 4.5, &value) gives 50.8
 */
int32_t lubber_splay_distance_nm(double half_width_nm,
                                 double angle_deg,
                                 double *splay_distance_nm);

/**
 * `lubber_splay_distance_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_splay_distance_nm_n(size_t count,
                                  const double *half_width_nm,
                                  ptrdiff_t half_width_nm_stride,
                                  const double *angle_deg,
                                  ptrdiff_t angle_deg_stride,
                                  double *splay_distance_nm,
                                  ptrdiff_t splay_distance_nm_stride,
                                  int32_t *status);

/**
 * Half the width of the airspace that contains the traffic of a VOR route.
 *
 * Constant to 25 NM from the VOR, then growing linearly to 75 NM: for 95 percent from 4 to 6 NM.
 *
 * @param distance_nm distance from the VOR along the route, 0 to 75
 * @param containment the share of the flying time that is contained: LUBBER_CONTAINMENT_PERCENT95, LUBBER_CONTAINMENT_PERCENT96, LUBBER_CONTAINMENT_PERCENT97, LUBBER_CONTAINMENT_PERCENT98, LUBBER_CONTAINMENT_PERCENT99, LUBBER_CONTAINMENT_PERCENT99_AND_A_HALF
 * @param[out] route_half_width_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As published.
 * Degenerate cases: None in the range; beyond 75 NM nothing is published.
 * Errors: A value outside its range.
 * Source: ICAO Annex 11 (13th ed.), Attachment A, 3.3 and 3.4.
 *
 * Example: lubber_route_half_width_nm(50.0, LUBBER_CONTAINMENT_PERCENT95, &value) gives 5.0
 */
int32_t lubber_route_half_width_nm(double distance_nm,
                                   int32_t containment,
                                   double *route_half_width_nm);

/**
 * `lubber_route_half_width_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `containment` is one code for all points: the share of the flying time that is contained: LUBBER_CONTAINMENT_PERCENT95, LUBBER_CONTAINMENT_PERCENT96, LUBBER_CONTAINMENT_PERCENT97, LUBBER_CONTAINMENT_PERCENT98, LUBBER_CONTAINMENT_PERCENT99, LUBBER_CONTAINMENT_PERCENT99_AND_A_HALF
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_route_half_width_nm_n(size_t count,
                                    const double *distance_nm,
                                    ptrdiff_t distance_nm_stride,
                                    int32_t containment,
                                    double *route_half_width_nm,
                                    ptrdiff_t route_half_width_nm_stride,
                                    int32_t *status);

/**
 * The rule of density altitude beside the density altitude of dry air, term by term.
 *
 * The rule of `density_altitude_rule_ft` less `density_altitude_ft`.
 *
 * @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
 * @param temperature_degc temperature of the air, -200 to 200
 * @param[out] rule_ft The rule's answer; may be NULL
 * @param[out] exact_ft The exact answer; may be NULL
 * @param[out] error_ft The error: the sum of the terms; may be NULL
 * @param[out] standard_ft The standard temperature as 15 less 2 degrees for 1000 ft; may be NULL
 * @param[out] slope_ft 120 ft to the degree for 118.6; may be NULL
 * @param[out] curve_ft A straight line for a curve; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: The terms sum to the whole to rounding error.
 * Degenerate cases: In the stratosphere a degree is 96 ft, which stands in the last term.
 * Errors: A value outside its range, a temperature more than 150 K from standard, or a density altitude outside -5 to 80 km.
 * Source: The rule: common practice. The exact altitude: ICAO Doc 7488/3.
 *
 * Example: lubber_rule_density_altitude_error(6000.0, 13.0, NULL, NULL, &value, NULL, NULL, NULL) gives 53
 */
int32_t lubber_rule_density_altitude_error(double pressure_altitude_ft,
                                           double temperature_degc,
                                           double *rule_ft,
                                           double *exact_ft,
                                           double *error_ft,
                                           double *standard_ft,
                                           double *slope_ft,
                                           double *curve_ft);

/**
 * `lubber_rule_density_altitude_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_density_altitude_error_n(size_t count,
                                            const double *pressure_altitude_ft,
                                            ptrdiff_t pressure_altitude_ft_stride,
                                            const double *temperature_degc,
                                            ptrdiff_t temperature_degc_stride,
                                            double *rule_ft,
                                            ptrdiff_t rule_ft_stride,
                                            double *exact_ft,
                                            ptrdiff_t exact_ft_stride,
                                            double *error_ft,
                                            ptrdiff_t error_ft_stride,
                                            double *standard_ft,
                                            ptrdiff_t standard_ft_stride,
                                            double *slope_ft,
                                            ptrdiff_t slope_ft_stride,
                                            double *curve_ft,
                                            ptrdiff_t curve_ft_stride,
                                            int32_t *status);

/**
 * The rule of pressure altitude beside the pressure altitude, term by term.
 *
 * The rule of `pressure_altitude_rule_ft` less `pressure_altitude_ft`.
 *
 * @param indicated_altitude_ft altitude that the altimeter shows, -50 000 to 300 000
 * @param altimeter_setting_hpa its setting, 400 to 1200
 * @param[out] rule_ft The rule's answer; may be NULL
 * @param[out] exact_ft The exact answer; may be NULL
 * @param[out] error_ft The error: the sum of the terms; may be NULL
 * @param[out] datum_ft 29.92 for 29.9213 inches; may be NULL
 * @param[out] slope_ft 1000 ft to the inch for 924.8; may be NULL
 * @param[out] curve_ft A straight line for a curve; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: The terms sum to the whole to rounding error.
 * Degenerate cases: At the standard setting the first term is all: a foot.
 * Errors: A value outside its range, or a pressure altitude outside -5 to 80 km.
 * Source: The rule: CNATRA P-203. The exact altitude: ICAO Doc 7488/3.
 *
 * Example: lubber_rule_pressure_altitude_error(5000.0, 1000.0, NULL, NULL, &value, NULL, NULL, NULL) gives 26
 */
int32_t lubber_rule_pressure_altitude_error(double indicated_altitude_ft,
                                            double altimeter_setting_hpa,
                                            double *rule_ft,
                                            double *exact_ft,
                                            double *error_ft,
                                            double *datum_ft,
                                            double *slope_ft,
                                            double *curve_ft);

/**
 * `lubber_rule_pressure_altitude_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_pressure_altitude_error_n(size_t count,
                                             const double *indicated_altitude_ft,
                                             ptrdiff_t indicated_altitude_ft_stride,
                                             const double *altimeter_setting_hpa,
                                             ptrdiff_t altimeter_setting_hpa_stride,
                                             double *rule_ft,
                                             ptrdiff_t rule_ft_stride,
                                             double *exact_ft,
                                             ptrdiff_t exact_ft_stride,
                                             double *error_ft,
                                             ptrdiff_t error_ft_stride,
                                             double *datum_ft,
                                             ptrdiff_t datum_ft_stride,
                                             double *slope_ft,
                                             ptrdiff_t slope_ft_stride,
                                             double *curve_ft,
                                             ptrdiff_t curve_ft_stride,
                                             int32_t *status);

/**
 * The rule of the cold-temperature correction beside the exact correction, term by term.
 *
 * The rule of `cold_temperature_correction_rule_ft` less `cold_temperature_correction_exact_ft`.
 *
 * @param height_ft height above the altimeter setting source, 0 to 20 000
 * @param temperature_degc temperature at the source, -200 to 200
 * @param elevation_ft elevation of the source
 * @param[out] rule_ft The rule's answer; may be NULL
 * @param[out] exact_ft The exact answer; may be NULL
 * @param[out] error_ft The error: the sum of the terms; may be NULL
 * @param[out] share_ft 4 percent for 10 degrees, where it is 10 degrees over the absolute temperature of the source; may be NULL
 * @param[out] column_ft The temperature of the source for that of the column above it; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: The terms sum to the whole to rounding error.
 * Degenerate cases: No height, no correction and no error.
 * Errors: A value outside its range.
 * Source: The rule: ICAO Doc 8168 volume I, Part III Section 1 Chapter 4, 4.3.1. The exact correction: ICAO Doc 7488/3.
 *
 * Example: lubber_rule_cold_temperature_error(1500.0, -10.0, 0.0, NULL, NULL, &value, NULL, NULL) gives 6.6
 */
int32_t lubber_rule_cold_temperature_error(double height_ft,
                                           double temperature_degc,
                                           double elevation_ft,
                                           double *rule_ft,
                                           double *exact_ft,
                                           double *error_ft,
                                           double *share_ft,
                                           double *column_ft);

/**
 * `lubber_rule_cold_temperature_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_cold_temperature_error_n(size_t count,
                                            const double *height_ft,
                                            ptrdiff_t height_ft_stride,
                                            const double *temperature_degc,
                                            ptrdiff_t temperature_degc_stride,
                                            const double *elevation_ft,
                                            ptrdiff_t elevation_ft_stride,
                                            double *rule_ft,
                                            ptrdiff_t rule_ft_stride,
                                            double *exact_ft,
                                            ptrdiff_t exact_ft_stride,
                                            double *error_ft,
                                            ptrdiff_t error_ft_stride,
                                            double *share_ft,
                                            ptrdiff_t share_ft_stride,
                                            double *column_ft,
                                            ptrdiff_t column_ft_stride,
                                            int32_t *status);

/**
 * The distance before an arc, along a radial, at which mental arithmetic begins the turn onto it.
 *
 * The radius of the turn; that and, inside 12 NM, half a mile more outbound or less inbound; or half a mile.
 *
 * @param arc_radius_nm distance of the arc from the station, above 0 to 5000
 * @param turn_radius_nm radius of the turn, above 0 to 5000
 * @param flown whether the radial is flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
 * @param rule which mental arithmetic: LUBBER_ARC_ENTRY_RULE_RADIUS, LUBBER_ARC_ENTRY_RULE_RADIUS_AND_HALF, LUBBER_ARC_ENTRY_RULE_HALF_MILE
 * @param[out] rule_arc_entry_lead_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: A rule. See `arc_entry_inbound_nm` and `arc_entry_outbound_nm` for the exact distance in still air, `arc_entry` in wind.
 * Degenerate cases: Inbound the radius less half a mile is zero for a turn of less than half a mile.
 * Errors: A value outside its range.
 * Source: The radius: CNATRA P-871 chapter 4. With half a mile: CNATRA P-1265 p. 2-11 (5-99). Half a mile, to 150 kt: FAA-H-8083-15.
 *
 * Example: lubber_rule_arc_entry_lead_nm(10.0, 2.5, LUBBER_RADIAL_FLOWN_OUTBOUND, LUBBER_ARC_ENTRY_RULE_RADIUS_AND_HALF, &value) gives 3.0
 */
int32_t lubber_rule_arc_entry_lead_nm(double arc_radius_nm,
                                      double turn_radius_nm,
                                      int32_t flown,
                                      int32_t rule,
                                      double *rule_arc_entry_lead_nm);

/**
 * `lubber_rule_arc_entry_lead_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `flown` is one code for all points: whether the radial is flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
 *
 * `rule` is one code for all points: which mental arithmetic: LUBBER_ARC_ENTRY_RULE_RADIUS, LUBBER_ARC_ENTRY_RULE_RADIUS_AND_HALF, LUBBER_ARC_ENTRY_RULE_HALF_MILE
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_arc_entry_lead_nm_n(size_t count,
                                       const double *arc_radius_nm,
                                       ptrdiff_t arc_radius_nm_stride,
                                       const double *turn_radius_nm,
                                       ptrdiff_t turn_radius_nm_stride,
                                       int32_t flown,
                                       int32_t rule,
                                       double *rule_arc_entry_lead_nm,
                                       ptrdiff_t rule_arc_entry_lead_nm_stride,
                                       int32_t *status);

/**
 * A rule of the lead onto an arc beside the exact lead in still air with an instant roll, term by term.
 *
 * The rule of `rule_arc_entry_lead_nm` less `sqrt(D^2 + 2 D r) - D` inbound, `D - sqrt(D^2 - 2 D r)` outbound.
 *
 * @param arc_radius_nm distance of the arc from the station, above 0 to 5000
 * @param turn_radius_nm radius of the turn, above 0 to 5000
 * @param flown whether the radial is flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
 * @param rule which mental arithmetic: LUBBER_ARC_ENTRY_RULE_RADIUS, LUBBER_ARC_ENTRY_RULE_RADIUS_AND_HALF, LUBBER_ARC_ENTRY_RULE_HALF_MILE
 * @param[out] rule_nm The rule's answer; may be NULL
 * @param[out] exact_nm The exact answer; may be NULL
 * @param[out] error_nm The error: the sum of the terms; may be NULL
 * @param[out] radius_nm What the rule makes of the radius; may be NULL
 * @param[out] curve_nm The radius for the lead, as if the arc were a straight line; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: The terms sum to the whole to rounding error.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range, or an arc below twice the turn radius when turning on its inside.
 * Source: Named at `rule_arc_entry_lead_nm`; the exact lead is derived from the geometry of tangent circles.
 *
 * Example: lubber_rule_arc_entry_lead_error(10.0, 2.5, LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_ARC_ENTRY_RULE_RADIUS_AND_HALF, NULL, NULL, &value, NULL, NULL) gives -0.25
 */
int32_t lubber_rule_arc_entry_lead_error(double arc_radius_nm,
                                         double turn_radius_nm,
                                         int32_t flown,
                                         int32_t rule,
                                         double *rule_nm,
                                         double *exact_nm,
                                         double *error_nm,
                                         double *radius_nm,
                                         double *curve_nm);

/**
 * `lubber_rule_arc_entry_lead_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `flown` is one code for all points: whether the radial is flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
 *
 * `rule` is one code for all points: which mental arithmetic: LUBBER_ARC_ENTRY_RULE_RADIUS, LUBBER_ARC_ENTRY_RULE_RADIUS_AND_HALF, LUBBER_ARC_ENTRY_RULE_HALF_MILE
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_arc_entry_lead_error_n(size_t count,
                                          const double *arc_radius_nm,
                                          ptrdiff_t arc_radius_nm_stride,
                                          const double *turn_radius_nm,
                                          ptrdiff_t turn_radius_nm_stride,
                                          int32_t flown,
                                          int32_t rule,
                                          double *rule_nm,
                                          ptrdiff_t rule_nm_stride,
                                          double *exact_nm,
                                          ptrdiff_t exact_nm_stride,
                                          double *error_nm,
                                          ptrdiff_t error_nm_stride,
                                          double *radius_nm,
                                          ptrdiff_t radius_nm_stride,
                                          double *curve_nm,
                                          ptrdiff_t curve_nm_stride,
                                          int32_t *status);

/**
 * Radials to the mile along an arc by the sixty-to-one rule beside the degrees of a mile.
 *
 * `60 / D` less `57.3 / D`.
 *
 * @param arc_radius_nm distance of the arc from the station, above 0 to 5000
 * @param[out] rule The rule's answer, degrees for a nautical mile; may be NULL
 * @param[out] exact The exact answer; may be NULL
 * @param[out] error The error, of a single term: 60 for 57.3; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: 4.7 percent high throughout.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range.
 * Source: The rule: CNATRA P-871 chapter 4 (`rule_radials_per_mile`).
 *
 * Example: lubber_rule_radials_per_mile_error(12.0, NULL, NULL, &value) gives 0.225
 */
int32_t lubber_rule_radials_per_mile_error(double arc_radius_nm, double *rule, double *exact, double *error);

/**
 * `lubber_rule_radials_per_mile_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_radials_per_mile_error_n(size_t count,
                                            const double *arc_radius_nm,
                                            ptrdiff_t arc_radius_nm_stride,
                                            double *rule,
                                            ptrdiff_t rule_stride,
                                            double *exact,
                                            ptrdiff_t exact_stride,
                                            double *error,
                                            ptrdiff_t error_stride,
                                            int32_t *status);

/**
 * The rule of the way back onto an arc beside the least correction that meets it.
 *
 * The rule of `rule_arc_correction_deg` less `acos(D / d)` from outside, less nothing from inside, where the track leads onto the arc by itself.
 *
 * @param distance_nm distance from the station along the ground, 0 to 10 900
 * @param arc_radius_nm distance of the arc from the station, above 0 to 5000
 * @param[out] rule_deg The rule's answer; may be NULL
 * @param[out] exact_deg The exact answer; may be NULL
 * @param[out] error_deg The error, of a single term: a proportion for the tangent to a circle; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error of the difference.
 * Degenerate cases: Below zero from outside, the arc is passed: the rule has to be renewed on the way.
 * Errors: A value outside its range.
 * Source: The rule: CNATRA P-871 chapter 4. The least correction: `arc_least_correction_deg`.
 *
 * Example: lubber_rule_arc_correction_error(10.5, 10.0, NULL, NULL, &value) gives -7.8
 */
int32_t lubber_rule_arc_correction_error(double distance_nm,
                                         double arc_radius_nm,
                                         double *rule_deg,
                                         double *exact_deg,
                                         double *error_deg);

/**
 * `lubber_rule_arc_correction_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_arc_correction_error_n(size_t count,
                                          const double *distance_nm,
                                          ptrdiff_t distance_nm_stride,
                                          const double *arc_radius_nm,
                                          ptrdiff_t arc_radius_nm_stride,
                                          double *rule_deg,
                                          ptrdiff_t rule_deg_stride,
                                          double *exact_deg,
                                          ptrdiff_t exact_deg_stride,
                                          double *error_deg,
                                          ptrdiff_t error_deg_stride,
                                          int32_t *status);

/**
 * The rule of the intercept angle beside the angle that meets the radial halfway to the station, term by term.
 *
 * Twice the degrees within 20 and 90, less `atan2(sin d, cos d - 1/2)`: halfway is what doubling the degrees means.
 *
 * @param off_radial_deg degrees to the radial, either way, reduced to half a circle
 * @param[out] rule_deg The rule's answer; may be NULL
 * @param[out] exact_deg The exact answer; may be NULL
 * @param[out] error_deg The error: the sum of the terms; may be NULL
 * @param[out] limits_deg At least 20 and at most 90; may be NULL
 * @param[out] doubling_deg Twice the angle for that of the triangle; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: The terms sum to the whole to rounding error.
 * Degenerate cases: On the radial the exact angle is zero. From 60 degrees on halfway is abeam or behind: the exact angle is 90 degrees and more.
 * Errors: A value outside its range.
 * Source: The rule: FAA-H-8083-15 (`rule_intercept_angle_deg`). The exact angle: derived.
 *
 * Example: lubber_rule_intercept_angle_error(15.0, NULL, NULL, &value, NULL, NULL) gives 0.95
 */
int32_t lubber_rule_intercept_angle_error(double off_radial_deg,
                                          double *rule_deg,
                                          double *exact_deg,
                                          double *error_deg,
                                          double *limits_deg,
                                          double *doubling_deg);

/**
 * `lubber_rule_intercept_angle_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_intercept_angle_error_n(size_t count,
                                           const double *off_radial_deg,
                                           ptrdiff_t off_radial_deg_stride,
                                           double *rule_deg,
                                           ptrdiff_t rule_deg_stride,
                                           double *exact_deg,
                                           ptrdiff_t exact_deg_stride,
                                           double *error_deg,
                                           ptrdiff_t error_deg_stride,
                                           double *limits_deg,
                                           ptrdiff_t limits_deg_stride,
                                           double *doubling_deg,
                                           ptrdiff_t doubling_deg_stride,
                                           int32_t *status);

/**
 * The lead onto a radial in radials by rule beside the exact one in still air with an instant roll, term by term.
 *
 * The rule of `rule_intercept_lead_deg` less `asin(r (1 - cos i) / D)`.
 *
 * @param distance_nm distance from the station where the turn begins, above 0 to 5000
 * @param turn_radius_nm radius of the turn, above 0 to 5000
 * @param intercept_angle_deg angle of the intercept, above 0 to 90
 * @param[out] rule_deg The rule's answer; may be NULL
 * @param[out] exact_deg The exact answer; may be NULL
 * @param[out] error_deg The error: the sum of the terms; may be NULL
 * @param[out] sixty_deg 60 for 57.3; may be NULL
 * @param[out] share_deg The rule's share for `1 - cos i`; may be NULL
 * @param[out] arc_deg The arc for its angle; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: The terms sum to the whole to rounding error.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range, or a turn that begins farther from the radial than from the station.
 * Source: The rule: CNATRA P-1215 and P-1265 p. 2-11 (`rule_intercept_lead_deg`). The exact lead: derived.
 *
 * Example: lubber_rule_intercept_lead_error(15.0, 2.5, 60.0, NULL, NULL, &value, NULL, NULL, NULL) gives 1.89
 */
int32_t lubber_rule_intercept_lead_error(double distance_nm,
                                         double turn_radius_nm,
                                         double intercept_angle_deg,
                                         double *rule_deg,
                                         double *exact_deg,
                                         double *error_deg,
                                         double *sixty_deg,
                                         double *share_deg,
                                         double *arc_deg);

/**
 * `lubber_rule_intercept_lead_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_intercept_lead_error_n(size_t count,
                                          const double *distance_nm,
                                          ptrdiff_t distance_nm_stride,
                                          const double *turn_radius_nm,
                                          ptrdiff_t turn_radius_nm_stride,
                                          const double *intercept_angle_deg,
                                          ptrdiff_t intercept_angle_deg_stride,
                                          double *rule_deg,
                                          ptrdiff_t rule_deg_stride,
                                          double *exact_deg,
                                          ptrdiff_t exact_deg_stride,
                                          double *error_deg,
                                          ptrdiff_t error_deg_stride,
                                          double *sixty_deg,
                                          ptrdiff_t sixty_deg_stride,
                                          double *share_deg,
                                          ptrdiff_t share_deg_stride,
                                          double *arc_deg,
                                          ptrdiff_t arc_deg_stride,
                                          int32_t *status);

/**
 * The rule of the least DME overhead beside the height itself.
 *
 * `h / 6000` less `h`.
 *
 * @param height_ft height above the station's antenna, -60 000 to 400 000
 * @param[out] rule_nm The rule's answer; may be NULL
 * @param[out] exact_nm The exact answer; may be NULL
 * @param[out] error_nm The error, of a single term: a nautical mile of 6 000 ft; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: 1.3 percent high throughout.
 * Degenerate cases: None.
 * Errors: A value outside its range.
 * Source: The rule: common practice (`rule_least_dme_nm`).
 *
 * Example: lubber_rule_least_dme_error(36000.0, NULL, NULL, &value) gives 0.075
 */
int32_t lubber_rule_least_dme_error(double height_ft, double *rule_nm, double *exact_nm, double *error_nm);

/**
 * `lubber_rule_least_dme_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_least_dme_error_n(size_t count,
                                     const double *height_ft,
                                     ptrdiff_t height_ft_stride,
                                     double *rule_nm,
                                     ptrdiff_t rule_nm_stride,
                                     double *exact_nm,
                                     ptrdiff_t exact_nm_stride,
                                     double *error_nm,
                                     ptrdiff_t error_nm_stride,
                                     int32_t *status);

/**
 * The rule of the cone of confusion beside the cone of a half-angle, term by term.
 *
 * `h / 6000` less `h tan(half-angle)`.
 *
 * @param height_ft height above the station's antenna, -60 000 to 400 000
 * @param cone_half_angle_deg half-angle from the vertical, above 0 below 90
 * @param[out] rule_nm The rule's answer; may be NULL
 * @param[out] exact_nm The exact answer; may be NULL
 * @param[out] error_nm The error: the sum of the terms; may be NULL
 * @param[out] mile_nm A nautical mile of 6 000 ft; may be NULL
 * @param[out] angle_nm 45 degrees for the half-angle; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: The terms sum to the whole to rounding error.
 * Degenerate cases: At the station's height and below it both are zero.
 * Errors: A value outside its range.
 * Source: The rule: common practice (`rule_cone_radius_nm`); 50 degrees: `cone_radius_nm`.
 *
 * Example: lubber_rule_cone_radius_error(36000.0, 50.0, NULL, NULL, NULL, NULL, &value) gives -1.14
 */
int32_t lubber_rule_cone_radius_error(double height_ft,
                                      double cone_half_angle_deg,
                                      double *rule_nm,
                                      double *exact_nm,
                                      double *error_nm,
                                      double *mile_nm,
                                      double *angle_nm);

/**
 * `lubber_rule_cone_radius_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_cone_radius_error_n(size_t count,
                                       const double *height_ft,
                                       ptrdiff_t height_ft_stride,
                                       const double *cone_half_angle_deg,
                                       ptrdiff_t cone_half_angle_deg_stride,
                                       double *rule_nm,
                                       ptrdiff_t rule_nm_stride,
                                       double *exact_nm,
                                       ptrdiff_t exact_nm_stride,
                                       double *error_nm,
                                       ptrdiff_t error_nm_stride,
                                       double *mile_nm,
                                       ptrdiff_t mile_nm_stride,
                                       double *angle_nm,
                                       ptrdiff_t angle_nm_stride,
                                       int32_t *status);

/**
 * A rule of the bank of a standard-rate turn beside the exact bank.
 *
 * The rule less `atan(V / 364.07)`.
 *
 * @param true_airspeed_kt true airspeed (the indicated one for `twenty_percent`), above 0 to 5000
 * @param rule which rule: LUBBER_BANK_RULE_FIFTEEN_PERCENT, LUBBER_BANK_RULE_TENTH_AND_SEVEN, LUBBER_BANK_RULE_TENTH_AND_FIVE, LUBBER_BANK_RULE_TWENTY_PERCENT
 * @param[out] rule_deg The rule's answer; may be NULL
 * @param[out] exact_deg The exact answer; may be NULL
 * @param[out] error_deg The error, of a single term: the rule's line for an arctangent; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error of the difference; the rules contradict each other.
 * Degenerate cases: At jet speeds the rules give more bank than anyone flies.
 * Errors: A value outside its range.
 * Source: Named at `rule_bank_deg`.
 *
 * Example: lubber_rule_bank_error(120.0, LUBBER_BANK_RULE_TENTH_AND_SEVEN, NULL, NULL, &value) gives 0.8
 */
int32_t lubber_rule_bank_error(double true_airspeed_kt,
                               int32_t rule,
                               double *rule_deg,
                               double *exact_deg,
                               double *error_deg);

/**
 * `lubber_rule_bank_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `rule` is one code for all points: which rule: LUBBER_BANK_RULE_FIFTEEN_PERCENT, LUBBER_BANK_RULE_TENTH_AND_SEVEN, LUBBER_BANK_RULE_TENTH_AND_FIVE, LUBBER_BANK_RULE_TWENTY_PERCENT
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_bank_error_n(size_t count,
                                const double *true_airspeed_kt,
                                ptrdiff_t true_airspeed_kt_stride,
                                int32_t rule,
                                double *rule_deg,
                                ptrdiff_t rule_deg_stride,
                                double *exact_deg,
                                ptrdiff_t exact_deg_stride,
                                double *error_deg,
                                ptrdiff_t error_deg_stride,
                                int32_t *status);

/**
 * A rule of the radius of a turn beside the radius of the turn that it is for.
 *
 * The rule less `V / (60 pi)`, `V / (30 pi)` or `V^2 / (g tan 30)`.
 *
 * @param speed_kt speed, above 0 to 5000
 * @param rule which rule: LUBBER_RADIUS_RULE_HALF_PERCENT, LUBBER_RADIUS_RULE_ONE_PERCENT, LUBBER_RADIUS_RULE_MILES_A_MINUTE_LESS_TWO, LUBBER_RADIUS_RULE_TENTH_OF_SQUARE
 * @param[out] rule_nm The rule's answer; may be NULL
 * @param[out] exact_nm The exact answer; may be NULL
 * @param[out] error_nm The error, of a single term: the rule's round number; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Standard and half standard rate: 6 percent short. A tenth of the square: 10 percent long.
 * Degenerate cases: Miles a minute less two is zero below 120 kt.
 * Errors: A value outside its range.
 * Source: Named at `rule_turn_radius_nm`.
 *
 * Example: lubber_rule_turn_radius_error(250.0, LUBBER_RADIUS_RULE_ONE_PERCENT, NULL, NULL, &value) gives -0.153
 */
int32_t lubber_rule_turn_radius_error(double speed_kt,
                                      int32_t rule,
                                      double *rule_nm,
                                      double *exact_nm,
                                      double *error_nm);

/**
 * `lubber_rule_turn_radius_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `rule` is one code for all points: which rule: LUBBER_RADIUS_RULE_HALF_PERCENT, LUBBER_RADIUS_RULE_ONE_PERCENT, LUBBER_RADIUS_RULE_MILES_A_MINUTE_LESS_TWO, LUBBER_RADIUS_RULE_TENTH_OF_SQUARE
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_turn_radius_error_n(size_t count,
                                       const double *speed_kt,
                                       ptrdiff_t speed_kt_stride,
                                       int32_t rule,
                                       double *rule_nm,
                                       ptrdiff_t rule_nm_stride,
                                       double *exact_nm,
                                       ptrdiff_t exact_nm_stride,
                                       double *error_nm,
                                       ptrdiff_t error_nm_stride,
                                       int32_t *status);

/**
 * The rule of the distance off course beside the exact one, term by term.
 *
 * `-200 ft dots distance` less `-R asin(sin(d / R) sin(2 dots))`.
 *
 * @param deflection_dots where the needle stands in dots of two degrees, positive right of centre, -20 to 20
 * @param distance_nm distance from the station along the ground, above 0 to 5000
 * @param[out] rule_nm The rule's answer; may be NULL
 * @param[out] exact_nm The exact answer; may be NULL
 * @param[out] error_nm The error: the sum of the terms; may be NULL
 * @param[out] dot_nm 200 ft for 212 to a dot and a mile; may be NULL
 * @param[out] sine_nm The angle for its sine; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: The terms sum to the whole to rounding error.
 * Degenerate cases: On course there is no error.
 * Errors: A value outside its range.
 * Source: The rule: common practice (`rule_off_course_nm`). The exact distance: `cross_track_of_deflection_nm`.
 *
 * Example: lubber_rule_off_course_error(-2.0, 30.0, NULL, NULL, NULL, &value, NULL) gives -0.119
 */
int32_t lubber_rule_off_course_error(double deflection_dots,
                                     double distance_nm,
                                     double *rule_nm,
                                     double *exact_nm,
                                     double *error_nm,
                                     double *dot_nm,
                                     double *sine_nm);

/**
 * `lubber_rule_off_course_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_off_course_error_n(size_t count,
                                      const double *deflection_dots,
                                      ptrdiff_t deflection_dots_stride,
                                      const double *distance_nm,
                                      ptrdiff_t distance_nm_stride,
                                      double *rule_nm,
                                      ptrdiff_t rule_nm_stride,
                                      double *exact_nm,
                                      ptrdiff_t exact_nm_stride,
                                      double *error_nm,
                                      ptrdiff_t error_nm_stride,
                                      double *dot_nm,
                                      ptrdiff_t dot_nm_stride,
                                      double *sine_nm,
                                      ptrdiff_t sine_nm_stride,
                                      int32_t *status);

/**
 * The lead radials off an arc by rule beside the exact ones in still air with an instant roll, term by term.
 *
 * The rule of `rule_lead_radials_deg` less `asin(r / (D - r))` inbound, `asin(r / (D + r))` outbound.
 *
 * @param arc_radius_nm distance of the arc from the station, above 0 to 5000
 * @param turn_radius_nm radius of the turn, above 0 to 5000
 * @param flown whether the radial is flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
 * @param rule which correction: LUBBER_ARC_LEAD_RULE_PLAIN, LUBBER_ARC_LEAD_RULE_PROPORTION, LUBBER_ARC_LEAD_RULE_THIRD, LUBBER_ARC_LEAD_RULE_ADDED_MILES
 * @param[out] rule_deg The rule's answer; may be NULL
 * @param[out] exact_deg The exact answer; may be NULL
 * @param[out] error_deg The error: the sum of the terms; may be NULL
 * @param[out] sixty_deg 60 for 57.3; may be NULL
 * @param[out] correction_deg The rule's correction for the direction of the radial, which is there to make up for the next term; may be NULL
 * @param[out] geometry_deg `r / D` for `asin(r / (D - r))` inbound, `asin(r / (D + r))` outbound; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: The terms sum to the whole to rounding error.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range, or an arc below twice the turn radius when turning on its inside.
 * Source: Named at `rule_lead_radials_deg`; the exact lead is derived from the geometry of tangent circles.
 *
 * Example: lubber_rule_lead_radials_error(10.0, 2.5, LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_ARC_LEAD_RULE_PROPORTION, NULL, NULL, &value, NULL, NULL, NULL) gives -1.97
 */
int32_t lubber_rule_lead_radials_error(double arc_radius_nm,
                                       double turn_radius_nm,
                                       int32_t flown,
                                       int32_t rule,
                                       double *rule_deg,
                                       double *exact_deg,
                                       double *error_deg,
                                       double *sixty_deg,
                                       double *correction_deg,
                                       double *geometry_deg);

/**
 * `lubber_rule_lead_radials_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `flown` is one code for all points: whether the radial is flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
 *
 * `rule` is one code for all points: which correction: LUBBER_ARC_LEAD_RULE_PLAIN, LUBBER_ARC_LEAD_RULE_PROPORTION, LUBBER_ARC_LEAD_RULE_THIRD, LUBBER_ARC_LEAD_RULE_ADDED_MILES
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_lead_radials_error_n(size_t count,
                                        const double *arc_radius_nm,
                                        ptrdiff_t arc_radius_nm_stride,
                                        const double *turn_radius_nm,
                                        ptrdiff_t turn_radius_nm_stride,
                                        int32_t flown,
                                        int32_t rule,
                                        double *rule_deg,
                                        ptrdiff_t rule_deg_stride,
                                        double *exact_deg,
                                        ptrdiff_t exact_deg_stride,
                                        double *error_deg,
                                        ptrdiff_t error_deg_stride,
                                        double *sixty_deg,
                                        ptrdiff_t sixty_deg_stride,
                                        double *correction_deg,
                                        ptrdiff_t correction_deg_stride,
                                        double *geometry_deg,
                                        ptrdiff_t geometry_deg_stride,
                                        int32_t *status);

/**
 * The rule of the time to a station abeam beside the time itself, term by term.
 *
 * `60 t / c` with the change in degrees less `t / sin(c)`.
 *
 * @param elapsed_s time between the two bearings, above 0 to 1 000 000
 * @param bearing_change_deg change of the bearing, above 0 below 180
 * @param[out] rule_s The rule's answer; may be NULL
 * @param[out] exact_s The exact answer; may be NULL
 * @param[out] error_s The error: the sum of the terms; may be NULL
 * @param[out] sixty_s 60 for 57.3; may be NULL
 * @param[out] sine_s The angle for its sine; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: The terms sum to the whole to rounding error.
 * Degenerate cases: The terms cancel at 30 degrees.
 * Errors: A value outside its range, or a change of 90 degrees and more, which a station abeam cannot make.
 * Source: The rule: FAA-H-8083-15 (`time_to_station_rule_s`). The exact time: the law of sines.
 *
 * Example: lubber_rule_time_to_station_error(75.0, 10.0, NULL, NULL, &value, NULL, NULL) gives 18.1
 */
int32_t lubber_rule_time_to_station_error(double elapsed_s,
                                          double bearing_change_deg,
                                          double *rule_s,
                                          double *exact_s,
                                          double *error_s,
                                          double *sixty_s,
                                          double *sine_s);

/**
 * `lubber_rule_time_to_station_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_time_to_station_error_n(size_t count,
                                           const double *elapsed_s,
                                           ptrdiff_t elapsed_s_stride,
                                           const double *bearing_change_deg,
                                           ptrdiff_t bearing_change_deg_stride,
                                           double *rule_s,
                                           ptrdiff_t rule_s_stride,
                                           double *exact_s,
                                           ptrdiff_t exact_s_stride,
                                           double *error_s,
                                           ptrdiff_t error_s_stride,
                                           double *sixty_s,
                                           ptrdiff_t sixty_s_stride,
                                           double *sine_s,
                                           ptrdiff_t sine_s_stride,
                                           int32_t *status);

/**
 * The outbound correction of a holding pattern by rule beside that of the pattern which closes.
 *
 * A multiple of the inbound correction, the other way, less the outbound correction of `holding_pattern`; both right positive.
 *
 * @param inbound_course_deg course flown to the fix, any finite number
 * @param side which way the turns go: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
 * @param inbound_time_s time of the inbound leg, 0 to 3600
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param wind_from_deg where the wind blows from, against the same north
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param bank_limit_deg greatest bank, above 0 below 90
 * @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
 * @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
 * @param rule by what the correction is multiplied: LUBBER_DRIFT_RULE_DOUBLE, LUBBER_DRIFT_RULE_TRIPLE
 * @param[out] rule_deg The rule's answer; may be NULL
 * @param[out] exact_deg The exact answer; may be NULL
 * @param[out] error_deg The error, of a single term: a fixed multiple for what the wind does in the two turns; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error of the difference.
 * Degenerate cases: In calm air both are zero.
 * Errors: A value outside its range, an inbound course that the airspeed cannot hold, a wind in which no heading closes the pattern before the fix.
 * Source: The rules: `rule_outbound_heading_deg`. The exact correction: `holding_pattern`.
 *
 * Example: lubber_rule_outbound_correction_error(270.0, LUBBER_HOLDING_SIDE_RIGHT, 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0, LUBBER_DRIFT_RULE_TRIPLE, NULL, NULL, &value) gives -1.5
 */
int32_t lubber_rule_outbound_correction_error(double inbound_course_deg,
                                              int32_t side,
                                              double inbound_time_s,
                                              double true_airspeed_kt,
                                              double wind_from_deg,
                                              double wind_speed_kt,
                                              double bank_limit_deg,
                                              double turn_rate_limit_deg_per_s,
                                              double roll_rate_deg_per_s,
                                              int32_t rule,
                                              double *rule_deg,
                                              double *exact_deg,
                                              double *error_deg);

/**
 * `lubber_rule_outbound_correction_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `side` is one code for all points: which way the turns go: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
 *
 * `rule` is one code for all points: by what the correction is multiplied: LUBBER_DRIFT_RULE_DOUBLE, LUBBER_DRIFT_RULE_TRIPLE
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_outbound_correction_error_n(size_t count,
                                               const double *inbound_course_deg,
                                               ptrdiff_t inbound_course_deg_stride,
                                               int32_t side,
                                               const double *inbound_time_s,
                                               ptrdiff_t inbound_time_s_stride,
                                               const double *true_airspeed_kt,
                                               ptrdiff_t true_airspeed_kt_stride,
                                               const double *wind_from_deg,
                                               ptrdiff_t wind_from_deg_stride,
                                               const double *wind_speed_kt,
                                               ptrdiff_t wind_speed_kt_stride,
                                               const double *bank_limit_deg,
                                               ptrdiff_t bank_limit_deg_stride,
                                               const double *turn_rate_limit_deg_per_s,
                                               ptrdiff_t turn_rate_limit_deg_per_s_stride,
                                               const double *roll_rate_deg_per_s,
                                               ptrdiff_t roll_rate_deg_per_s_stride,
                                               int32_t rule,
                                               double *rule_deg,
                                               ptrdiff_t rule_deg_stride,
                                               double *exact_deg,
                                               ptrdiff_t exact_deg_stride,
                                               double *error_deg,
                                               ptrdiff_t error_deg_stride,
                                               int32_t *status);

/**
 * The outbound time of a holding pattern by a second for each knot of headwind, beside that of the pattern which closes, term by term.
 *
 * `t + headwind` less the outbound clock of `holding_pattern` for the same time inbound.
 *
 * @param inbound_course_deg course flown to the fix, any finite number
 * @param side which way the turns go: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
 * @param inbound_time_s time of the inbound leg, 0 to 3600
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param wind_from_deg where the wind blows from, against the same north
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param bank_limit_deg greatest bank, above 0 below 90
 * @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
 * @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
 * @param[out] rule_s The rule's answer; may be NULL
 * @param[out] exact_s The exact answer; may be NULL
 * @param[out] error_s The error: the sum of the terms; may be NULL
 * @param[out] knot_s A second for each knot, where the legs go as their groundspeeds; may be NULL
 * @param[out] turns_s What the wind does in the turns; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: The terms sum to the whole to rounding error.
 * Degenerate cases: In calm air there is no error.
 * Errors: A value outside its range, an inbound course that the airspeed cannot hold, a wind in which no heading closes the pattern before the fix.
 * Source: The rule: common practice (`rule_outbound_time_by_headwind_s`). The exact time: `holding_pattern`.
 *
 * Example: lubber_rule_outbound_time_by_headwind_error(270.0, LUBBER_HOLDING_SIDE_RIGHT, 60.0, 150.0, 90.0, 20.0, 25.0, 3.0, 5.0, NULL, NULL, &value, NULL, NULL) gives -8
 */
int32_t lubber_rule_outbound_time_by_headwind_error(double inbound_course_deg,
                                                    int32_t side,
                                                    double inbound_time_s,
                                                    double true_airspeed_kt,
                                                    double wind_from_deg,
                                                    double wind_speed_kt,
                                                    double bank_limit_deg,
                                                    double turn_rate_limit_deg_per_s,
                                                    double roll_rate_deg_per_s,
                                                    double *rule_s,
                                                    double *exact_s,
                                                    double *error_s,
                                                    double *knot_s,
                                                    double *turns_s);

/**
 * `lubber_rule_outbound_time_by_headwind_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `side` is one code for all points: which way the turns go: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_outbound_time_by_headwind_error_n(size_t count,
                                                     const double *inbound_course_deg,
                                                     ptrdiff_t inbound_course_deg_stride,
                                                     int32_t side,
                                                     const double *inbound_time_s,
                                                     ptrdiff_t inbound_time_s_stride,
                                                     const double *true_airspeed_kt,
                                                     ptrdiff_t true_airspeed_kt_stride,
                                                     const double *wind_from_deg,
                                                     ptrdiff_t wind_from_deg_stride,
                                                     const double *wind_speed_kt,
                                                     ptrdiff_t wind_speed_kt_stride,
                                                     const double *bank_limit_deg,
                                                     ptrdiff_t bank_limit_deg_stride,
                                                     const double *turn_rate_limit_deg_per_s,
                                                     ptrdiff_t turn_rate_limit_deg_per_s_stride,
                                                     const double *roll_rate_deg_per_s,
                                                     ptrdiff_t roll_rate_deg_per_s_stride,
                                                     double *rule_s,
                                                     ptrdiff_t rule_s_stride,
                                                     double *exact_s,
                                                     ptrdiff_t exact_s_stride,
                                                     double *error_s,
                                                     ptrdiff_t error_s_stride,
                                                     double *knot_s,
                                                     ptrdiff_t knot_s_stride,
                                                     double *turns_s,
                                                     ptrdiff_t turns_s_stride,
                                                     int32_t *status);

/**
 * The next outbound time of a holding pattern by rule, after a round that is flown, beside that of the pattern that is wanted, term by term.
 *
 * The last outbound time and what the inbound leg came out short (`rule_outbound_time_s`), less the outbound clock of `holding_pattern` for the inbound time that is wanted. The round is flown with the outbound heading that closes it.
 *
 * @param inbound_course_deg course flown to the fix, any finite number
 * @param side which way the turns go: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
 * @param outbound_time_s time of the round that is flown, on its outbound clock, 0 to 3600
 * @param wanted_inbound_time_s the inbound time that is wanted, 0 to 3600
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param wind_from_deg where the wind blows from, against the same north
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param bank_limit_deg greatest bank, above 0 below 90
 * @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
 * @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
 * @param[out] rule_s The rule's answer; may be NULL
 * @param[out] exact_s The exact answer; may be NULL
 * @param[out] error_s The error: the sum of the terms; may be NULL
 * @param[out] groundspeed_s Both legs at one groundspeed; may be NULL
 * @param[out] heading_s The outbound heading, which has to change with the time; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: The terms sum to the whole to rounding error.
 * Degenerate cases: In calm air there is no error.
 * Errors: A value outside its range, an inbound course that the airspeed cannot hold, a wind in which no heading closes the pattern before the fix.
 * Source: The rule: CNATRA P-871 chapter 4, figure 4-16. The exact time: `holding_pattern`.
 *
 * Example: lubber_rule_outbound_time_error(270.0, LUBBER_HOLDING_SIDE_RIGHT, 60.0, 60.0, 150.0, 90.0, 20.0, 25.0, 3.0, 5.0, NULL, NULL, &value, NULL, NULL) gives -7
 */
int32_t lubber_rule_outbound_time_error(double inbound_course_deg,
                                        int32_t side,
                                        double outbound_time_s,
                                        double wanted_inbound_time_s,
                                        double true_airspeed_kt,
                                        double wind_from_deg,
                                        double wind_speed_kt,
                                        double bank_limit_deg,
                                        double turn_rate_limit_deg_per_s,
                                        double roll_rate_deg_per_s,
                                        double *rule_s,
                                        double *exact_s,
                                        double *error_s,
                                        double *groundspeed_s,
                                        double *heading_s);

/**
 * `lubber_rule_outbound_time_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `side` is one code for all points: which way the turns go: LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_SIDE_LEFT
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_outbound_time_error_n(size_t count,
                                         const double *inbound_course_deg,
                                         ptrdiff_t inbound_course_deg_stride,
                                         int32_t side,
                                         const double *outbound_time_s,
                                         ptrdiff_t outbound_time_s_stride,
                                         const double *wanted_inbound_time_s,
                                         ptrdiff_t wanted_inbound_time_s_stride,
                                         const double *true_airspeed_kt,
                                         ptrdiff_t true_airspeed_kt_stride,
                                         const double *wind_from_deg,
                                         ptrdiff_t wind_from_deg_stride,
                                         const double *wind_speed_kt,
                                         ptrdiff_t wind_speed_kt_stride,
                                         const double *bank_limit_deg,
                                         ptrdiff_t bank_limit_deg_stride,
                                         const double *turn_rate_limit_deg_per_s,
                                         ptrdiff_t turn_rate_limit_deg_per_s_stride,
                                         const double *roll_rate_deg_per_s,
                                         ptrdiff_t roll_rate_deg_per_s_stride,
                                         double *rule_s,
                                         ptrdiff_t rule_s_stride,
                                         double *exact_s,
                                         ptrdiff_t exact_s_stride,
                                         double *error_s,
                                         ptrdiff_t error_s_stride,
                                         double *groundspeed_s,
                                         ptrdiff_t groundspeed_s_stride,
                                         double *heading_s,
                                         ptrdiff_t heading_s_stride,
                                         int32_t *status);

/**
 * The mental arithmetic of a lead beside the exact answer, term by term.
 *
 * Each term is what one simplification adds, positive where it makes the rule begin the turn too early. With `c` the change and `gs` the groundspeed inbound the lead
 * goes in steps from `gs / 180 c / 90` by `gs / (60 pi) c / 90`, `gs / (60 pi) tan(c / 2)`, `r(gs) tan(c / 2)` and `r(V) tan(c / 2)`, with `r` the radius that the limits
 * leave, to the turn through the wind-corrected headings without its drift, with it, and with the roll; the reading adds the height as `h / 6000`, as `h`, and
 * in the slant range.
 *
 * @param inbound_course_deg course flown to the station, any finite number
 * @param outbound_course_deg course flown from it, against the same north
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param height_above_station_ft height above the station's antenna, -60 000 to 400 000
 * @param wind_from_deg where the wind blows from, against the same north
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param bank_limit_deg greatest bank, above 0 below 90
 * @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
 * @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
 * @param rule which mental arithmetic: LUBBER_LEAD_RULE_THIRD, LUBBER_LEAD_RULE_THIRD_AND_ALLOWANCE, LUBBER_LEAD_RULE_THIRD_AND_MARGIN
 * @param[out] rule_lead_nm The lead by the rule; may be NULL
 * @param[out] exact_lead_nm The exact lead; may be NULL
 * @param[out] lead_error_nm The error of the lead: the sum of the eight terms from `allowance_nm` to `roll_nm`; may be NULL
 * @param[out] rule_reading_nm The DME reading by the rule: its lead and the height in miles, added; may be NULL
 * @param[out] exact_reading_nm The exact DME reading; may be NULL
 * @param[out] reading_error_nm The error of the reading: the sum of all ten terms; may be NULL
 * @param[out] allowance_nm The allowance for height or the margin, if the rule makes one; may be NULL
 * @param[out] round_radius_nm The standard-rate radius as speed over 180, where it is speed over 60 pi; may be NULL
 * @param[out] proportion_nm The lead in proportion to the change, where it goes with the tangent of half of it; may be NULL
 * @param[out] standard_rate_nm The radius of standard rate, where the bank limit makes it longer; may be NULL
 * @param[out] groundspeed_nm The groundspeed as the speed of the turn, where the airspeed is; may be NULL
 * @param[out] heading_change_nm The turn through the change of course, where that of heading has to be turned; may be NULL
 * @param[out] drift_nm No drift during the turn; may be NULL
 * @param[out] roll_nm A roll that takes no time; may be NULL
 * @param[out] mile_nm A nautical mile of 6 000 ft in the height; may be NULL
 * @param[out] sum_nm Distance and height added, where the slant is the root of their squares; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: The terms sum to the whole to rounding error. Taken back in another order they would share it out a little differently.
 * Degenerate cases: In calm air the terms of the wind are zero to rounding error. Toward a reversal the rule stays finite where the exact lead does not.
 * Errors: A value outside its range, a reversal, a wind that the airspeed cannot hold.
 * Source: The rules: common practice (`rule_lead_nm`, `rule_reading_nm`). The exact answers: `lead_nm`, `dme_at_roll_in_nm`. The terms: derived.
 *
 * Example: lubber_rule_lead_error(40.0, 130.0, 450.0, 36000.0, 0.0, 0.0, 25.0, 3.0, 5.0, LUBBER_LEAD_RULE_THIRD, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, &value, NULL, NULL, NULL, NULL, NULL, NULL) gives -3.94
 */
int32_t lubber_rule_lead_error(double inbound_course_deg,
                               double outbound_course_deg,
                               double true_airspeed_kt,
                               double height_above_station_ft,
                               double wind_from_deg,
                               double wind_speed_kt,
                               double bank_limit_deg,
                               double turn_rate_limit_deg_per_s,
                               double roll_rate_deg_per_s,
                               int32_t rule,
                               double *rule_lead_nm,
                               double *exact_lead_nm,
                               double *lead_error_nm,
                               double *rule_reading_nm,
                               double *exact_reading_nm,
                               double *reading_error_nm,
                               double *allowance_nm,
                               double *round_radius_nm,
                               double *proportion_nm,
                               double *standard_rate_nm,
                               double *groundspeed_nm,
                               double *heading_change_nm,
                               double *drift_nm,
                               double *roll_nm,
                               double *mile_nm,
                               double *sum_nm);

/**
 * `lubber_rule_lead_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `rule` is one code for all points: which mental arithmetic: LUBBER_LEAD_RULE_THIRD, LUBBER_LEAD_RULE_THIRD_AND_ALLOWANCE, LUBBER_LEAD_RULE_THIRD_AND_MARGIN
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_lead_error_n(size_t count,
                                const double *inbound_course_deg,
                                ptrdiff_t inbound_course_deg_stride,
                                const double *outbound_course_deg,
                                ptrdiff_t outbound_course_deg_stride,
                                const double *true_airspeed_kt,
                                ptrdiff_t true_airspeed_kt_stride,
                                const double *height_above_station_ft,
                                ptrdiff_t height_above_station_ft_stride,
                                const double *wind_from_deg,
                                ptrdiff_t wind_from_deg_stride,
                                const double *wind_speed_kt,
                                ptrdiff_t wind_speed_kt_stride,
                                const double *bank_limit_deg,
                                ptrdiff_t bank_limit_deg_stride,
                                const double *turn_rate_limit_deg_per_s,
                                ptrdiff_t turn_rate_limit_deg_per_s_stride,
                                const double *roll_rate_deg_per_s,
                                ptrdiff_t roll_rate_deg_per_s_stride,
                                int32_t rule,
                                double *rule_lead_nm,
                                ptrdiff_t rule_lead_nm_stride,
                                double *exact_lead_nm,
                                ptrdiff_t exact_lead_nm_stride,
                                double *lead_error_nm,
                                ptrdiff_t lead_error_nm_stride,
                                double *rule_reading_nm,
                                ptrdiff_t rule_reading_nm_stride,
                                double *exact_reading_nm,
                                ptrdiff_t exact_reading_nm_stride,
                                double *reading_error_nm,
                                ptrdiff_t reading_error_nm_stride,
                                double *allowance_nm,
                                ptrdiff_t allowance_nm_stride,
                                double *round_radius_nm,
                                ptrdiff_t round_radius_nm_stride,
                                double *proportion_nm,
                                ptrdiff_t proportion_nm_stride,
                                double *standard_rate_nm,
                                ptrdiff_t standard_rate_nm_stride,
                                double *groundspeed_nm,
                                ptrdiff_t groundspeed_nm_stride,
                                double *heading_change_nm,
                                ptrdiff_t heading_change_nm_stride,
                                double *drift_nm,
                                ptrdiff_t drift_nm_stride,
                                double *roll_nm,
                                ptrdiff_t roll_nm_stride,
                                double *mile_nm,
                                ptrdiff_t mile_nm_stride,
                                double *sum_nm,
                                ptrdiff_t sum_nm_stride,
                                int32_t *status);

/**
 * The turn that mental arithmetic begins, flown: where its wings are level again.
 *
 * Inbound on the heading that holds the course; from the cue on, the bank and the heading of the exact turn, over the ellipsoid. What the crew has wrong is where the turn
 * begins, and nothing else. The turn is safe if it ends at most `allowed_beyond_nm` beyond the outbound course and `allowed_short_nm` short of it.
 *
 * @param inbound_course_deg course flown to the station, any finite number
 * @param outbound_course_deg course flown from it, against the same north
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param height_above_station_ft height above the station's antenna, -60 000 to 400 000
 * @param wind_from_deg where the wind blows from, against the same north
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param bank_limit_deg greatest bank, above 0 below 90
 * @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
 * @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
 * @param rule which mental arithmetic: LUBBER_LEAD_RULE_THIRD, LUBBER_LEAD_RULE_THIRD_AND_ALLOWANCE, LUBBER_LEAD_RULE_THIRD_AND_MARGIN
 * @param cue what the turn begins by: the rule's DME reading, its distance along the ground, or the exact reading: LUBBER_TURN_CUE_READING, LUBBER_TURN_CUE_DISTANCE, LUBBER_TURN_CUE_EXACT
 * @param cone_half_angle_deg half-angle of the cone of confusion from the vertical, above 0 below 90
 * @param allowed_beyond_nm how far beyond the outbound course is safe, 0 to 10 900
 * @param allowed_short_nm how far short of it is safe, 0 to 10 900
 * @param[out] reading_nm The DME reading at which the turn begins; may be NULL
 * @param[out] before_station_nm How far before the station that is, along the ground; negative past it; may be NULL
 * @param[out] overshoot_nm How far beyond the outbound course the wings are level again, on the outer side of the turn; negative short of it; may be NULL
 * @param[out] past_station_nm How far past the station that is, along the outbound course; negative before it; may be NULL
 * @param[out] began_in_cone 1 if the turn begins in the cone of confusion, else 0; may be NULL
 * @param[out] ended_in_cone 1 if it ends there, else 0; may be NULL
 * @param[out] verdict What it comes to: the code of LUBBER_TURN_VERDICT_EARLY, LUBBER_TURN_VERDICT_SAFE, LUBBER_TURN_VERDICT_LATE, -1 early, 0 safe, 1 late; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: A centimetre across the outbound course and half a metre along it for the flight itself. The station stands at 45 degrees of latitude; elsewhere it ends less than 0.001 NM away to leads of 10 NM. The exact
 * reading ends within 1e-4 NM of the course at the surface, and 0.2 percent of the lead short of it at 45 000 ft.
 * Degenerate cases: No change of course is no turn: it ends where it begins, without an overshoot. An exact turn that begins past the station begins at its place, not by a reading.
 * Errors: A value outside its range, a reversal, a wind that the airspeed cannot hold.
 * Source: The rules: common practice (`rule_lead_nm`, `rule_reading_nm`). What is allowed by default: half a mile is what DME may be off (FAA AIM 1-1-7), the other half mile is the
 * trade's margin. The flight: docs/flight.md.
 *
 * Example: lubber_rule_lead_flown(40.0, 130.0, 450.0, 36000.0, 0.0, 0.0, 25.0, 3.0, 5.0, LUBBER_LEAD_RULE_THIRD, LUBBER_TURN_CUE_READING, 50.0, 0.5, 1.0, NULL, NULL, &value, NULL, NULL, NULL, NULL) gives 0.55
 */
int32_t lubber_rule_lead_flown(double inbound_course_deg,
                               double outbound_course_deg,
                               double true_airspeed_kt,
                               double height_above_station_ft,
                               double wind_from_deg,
                               double wind_speed_kt,
                               double bank_limit_deg,
                               double turn_rate_limit_deg_per_s,
                               double roll_rate_deg_per_s,
                               int32_t rule,
                               int32_t cue,
                               double cone_half_angle_deg,
                               double allowed_beyond_nm,
                               double allowed_short_nm,
                               double *reading_nm,
                               double *before_station_nm,
                               double *overshoot_nm,
                               double *past_station_nm,
                               double *began_in_cone,
                               double *ended_in_cone,
                               double *verdict);

/**
 * `lubber_rule_lead_flown` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `rule` is one code for all points: which mental arithmetic: LUBBER_LEAD_RULE_THIRD, LUBBER_LEAD_RULE_THIRD_AND_ALLOWANCE, LUBBER_LEAD_RULE_THIRD_AND_MARGIN
 *
 * `cue` is one code for all points: what the turn begins by: the rule's DME reading, its distance along the ground, or the exact reading: LUBBER_TURN_CUE_READING, LUBBER_TURN_CUE_DISTANCE, LUBBER_TURN_CUE_EXACT
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_lead_flown_n(size_t count,
                                const double *inbound_course_deg,
                                ptrdiff_t inbound_course_deg_stride,
                                const double *outbound_course_deg,
                                ptrdiff_t outbound_course_deg_stride,
                                const double *true_airspeed_kt,
                                ptrdiff_t true_airspeed_kt_stride,
                                const double *height_above_station_ft,
                                ptrdiff_t height_above_station_ft_stride,
                                const double *wind_from_deg,
                                ptrdiff_t wind_from_deg_stride,
                                const double *wind_speed_kt,
                                ptrdiff_t wind_speed_kt_stride,
                                const double *bank_limit_deg,
                                ptrdiff_t bank_limit_deg_stride,
                                const double *turn_rate_limit_deg_per_s,
                                ptrdiff_t turn_rate_limit_deg_per_s_stride,
                                const double *roll_rate_deg_per_s,
                                ptrdiff_t roll_rate_deg_per_s_stride,
                                int32_t rule,
                                int32_t cue,
                                const double *cone_half_angle_deg,
                                ptrdiff_t cone_half_angle_deg_stride,
                                const double *allowed_beyond_nm,
                                ptrdiff_t allowed_beyond_nm_stride,
                                const double *allowed_short_nm,
                                ptrdiff_t allowed_short_nm_stride,
                                double *reading_nm,
                                ptrdiff_t reading_nm_stride,
                                double *before_station_nm,
                                ptrdiff_t before_station_nm_stride,
                                double *overshoot_nm,
                                ptrdiff_t overshoot_nm_stride,
                                double *past_station_nm,
                                ptrdiff_t past_station_nm_stride,
                                double *began_in_cone,
                                ptrdiff_t began_in_cone_stride,
                                double *ended_in_cone,
                                ptrdiff_t ended_in_cone_stride,
                                double *verdict,
                                ptrdiff_t verdict_stride,
                                int32_t *status);

/**
 * The height above the station at which the rule's DME reading is the exact one: below it the turn begins too late, above it too early.
 *
 * Where `l + h / 6000 ft` is `sqrt(L^2 + h^2)`, with `l` the rule's lead and `L` the exact one; near `(L^2 - l^2) / (2 l)`.
 *
 * @param inbound_course_deg course flown to the station, any finite number
 * @param outbound_course_deg course flown from it, against the same north
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param wind_from_deg where the wind blows from, against the same north
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param bank_limit_deg greatest bank, above 0 below 90
 * @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
 * @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
 * @param rule which mental arithmetic: LUBBER_LEAD_RULE_THIRD, LUBBER_LEAD_RULE_THIRD_AND_ALLOWANCE, LUBBER_LEAD_RULE_THIRD_AND_MARGIN
 * @param[out] rule_holds_at_height_ft the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding: a root in a bracket, of the readings over a curved earth.
 * Degenerate cases: NaN where the rule is early at every height, as for a slow aircraft with a quick roll, and where it is late up to 400 000 ft.
 * Errors: A value outside its range, a reversal, a wind that the airspeed cannot hold.
 * Source: Derived; the rule: `rule_reading_nm`, the exact reading: `dme_at_roll_in_nm`.
 *
 * Example: lubber_rule_holds_at_height_ft(40.0, 130.0, 350.0, 0.0, 0.0, 25.0, 3.0, 5.0, LUBBER_LEAD_RULE_THIRD, &value) gives 19490
 */
int32_t lubber_rule_holds_at_height_ft(double inbound_course_deg,
                                       double outbound_course_deg,
                                       double true_airspeed_kt,
                                       double wind_from_deg,
                                       double wind_speed_kt,
                                       double bank_limit_deg,
                                       double turn_rate_limit_deg_per_s,
                                       double roll_rate_deg_per_s,
                                       int32_t rule,
                                       double *rule_holds_at_height_ft);

/**
 * `lubber_rule_holds_at_height_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `rule` is one code for all points: which mental arithmetic: LUBBER_LEAD_RULE_THIRD, LUBBER_LEAD_RULE_THIRD_AND_ALLOWANCE, LUBBER_LEAD_RULE_THIRD_AND_MARGIN
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_holds_at_height_ft_n(size_t count,
                                        const double *inbound_course_deg,
                                        ptrdiff_t inbound_course_deg_stride,
                                        const double *outbound_course_deg,
                                        ptrdiff_t outbound_course_deg_stride,
                                        const double *true_airspeed_kt,
                                        ptrdiff_t true_airspeed_kt_stride,
                                        const double *wind_from_deg,
                                        ptrdiff_t wind_from_deg_stride,
                                        const double *wind_speed_kt,
                                        ptrdiff_t wind_speed_kt_stride,
                                        const double *bank_limit_deg,
                                        ptrdiff_t bank_limit_deg_stride,
                                        const double *turn_rate_limit_deg_per_s,
                                        ptrdiff_t turn_rate_limit_deg_per_s_stride,
                                        const double *roll_rate_deg_per_s,
                                        ptrdiff_t roll_rate_deg_per_s_stride,
                                        int32_t rule,
                                        double *rule_holds_at_height_ft,
                                        ptrdiff_t rule_holds_at_height_ft_stride,
                                        int32_t *status);

/**
 * The outbound heading of a holding pattern by rule: a multiple of the inbound wind correction, the other way.
 *
 * `inbound course + 180 - k * correction`, with k = 2 or 3.
 *
 * @param inbound_course_deg course flown to the fix, any finite number
 * @param inbound_correction_deg inbound heading less inbound course, right positive, any finite number
 * @param rule by what the correction is multiplied: LUBBER_DRIFT_RULE_DOUBLE, LUBBER_DRIFT_RULE_TRIPLE
 * @param[out] rule_outbound_heading_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: The rules contradict each other; see the drift factor of `holding_pattern` for the exact one.
 * Degenerate cases: No correction inbound leaves the reciprocal.
 * Errors: A value outside its range.
 * Source: Three times: FAA Aeronautical Information Manual (3 April 2014), 5-3-8 j 6 (c), and (20 April 2023), 5-3-8 j; CNATRA P-871 chapter 4. Two to three times: CNATRA
 * P-1244 p. 5-17.
 *
 * Example: lubber_rule_outbound_heading_deg(270.0, 5.0, LUBBER_DRIFT_RULE_TRIPLE, &value) gives 75
 */
int32_t lubber_rule_outbound_heading_deg(double inbound_course_deg,
                                         double inbound_correction_deg,
                                         int32_t rule,
                                         double *rule_outbound_heading_deg);

/**
 * `lubber_rule_outbound_heading_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `rule` is one code for all points: by what the correction is multiplied: LUBBER_DRIFT_RULE_DOUBLE, LUBBER_DRIFT_RULE_TRIPLE
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_outbound_heading_deg_n(size_t count,
                                          const double *inbound_course_deg,
                                          ptrdiff_t inbound_course_deg_stride,
                                          const double *inbound_correction_deg,
                                          ptrdiff_t inbound_correction_deg_stride,
                                          int32_t rule,
                                          double *rule_outbound_heading_deg,
                                          ptrdiff_t rule_outbound_heading_deg_stride,
                                          int32_t *status);

/**
 * The next outbound time of a holding pattern by rule: the last one, and what the inbound leg came out short.
 *
 * `outbound + wanted - inbound`.
 *
 * @param outbound_time_s time flown outbound, 0 to 3600
 * @param inbound_time_s time the inbound leg then took, 0 to 3600
 * @param wanted_inbound_time_s time the inbound leg is to take, 0 to 3600
 * @param[out] rule_outbound_time_s the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: It leaves out that the legs are flown at different groundspeeds, so it takes several rounds to settle. See
 * `holding_pattern`.
 * Degenerate cases: Zero where the rule leaves no time.
 * Errors: A value outside its range.
 * Source: CNATRA P-871 chapter 4, figure 4-16; against a strong headwind inbound it flies the first outbound leg for no less
 * than 30 s.
 *
 * Example: lubber_rule_outbound_time_s(60.0, 50.0, 60.0, &value) gives 70
 */
int32_t lubber_rule_outbound_time_s(double outbound_time_s,
                                    double inbound_time_s,
                                    double wanted_inbound_time_s,
                                    double *rule_outbound_time_s);

/**
 * `lubber_rule_outbound_time_s` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_outbound_time_s_n(size_t count,
                                     const double *outbound_time_s,
                                     ptrdiff_t outbound_time_s_stride,
                                     const double *inbound_time_s,
                                     ptrdiff_t inbound_time_s_stride,
                                     const double *wanted_inbound_time_s,
                                     ptrdiff_t wanted_inbound_time_s_stride,
                                     double *rule_outbound_time_s,
                                     ptrdiff_t rule_outbound_time_s_stride,
                                     int32_t *status);

/**
 * The outbound time of a holding pattern by rule for a known wind: a second more for each knot of headwind.
 *
 * `still air + headwind`, less for a tailwind.
 *
 * @param still_air_time_s time outbound in still air, 0 to 3600
 * @param outbound_headwind_kt headwind on the outbound leg, negative for a tailwind, -1000 to 1000
 * @param[out] rule_outbound_time_by_headwind_s the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: See `holding_pattern` for the exact time.
 * Degenerate cases: Zero where the rule leaves no time.
 * Errors: A value outside its range.
 * Source: Common practice.
 *
 * Example: lubber_rule_outbound_time_by_headwind_s(60.0, -15.0, &value) gives 45
 */
int32_t lubber_rule_outbound_time_by_headwind_s(double still_air_time_s,
                                                double outbound_headwind_kt,
                                                double *rule_outbound_time_by_headwind_s);

/**
 * `lubber_rule_outbound_time_by_headwind_s` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_outbound_time_by_headwind_s_n(size_t count,
                                                 const double *still_air_time_s,
                                                 ptrdiff_t still_air_time_s_stride,
                                                 const double *outbound_headwind_kt,
                                                 ptrdiff_t outbound_headwind_kt_stride,
                                                 double *rule_outbound_time_by_headwind_s,
                                                 ptrdiff_t rule_outbound_time_by_headwind_s_stride,
                                                 int32_t *status);

/**
 * The DME reading from which on the trade does not count the slant: a mile for each 1 000 ft.
 *
 * `height / 1000`.
 *
 * @param height_ft height above the station's antenna, -60 000 to 400 000
 * @param[out] rule_slant_negligible_from_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: There the reading is 1.35 percent more than the distance along the ground. See `rule_ground_distance_error`.
 * Degenerate cases: None.
 * Errors: A value outside its range.
 * Source: FAA-H-8083-15 (Instrument Flying Handbook), as study notes quote it.
 *
 * Example: lubber_rule_slant_negligible_from_nm(30000.0, &value) gives 30
 */
int32_t lubber_rule_slant_negligible_from_nm(double height_ft,
                                             double *rule_slant_negligible_from_nm);

/**
 * `lubber_rule_slant_negligible_from_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_slant_negligible_from_nm_n(size_t count,
                                              const double *height_ft,
                                              ptrdiff_t height_ft_stride,
                                              double *rule_slant_negligible_from_nm,
                                              ptrdiff_t rule_slant_negligible_from_nm_stride,
                                              int32_t *status);

/**
 * The DME reading taken for the distance along the ground, beside that distance, term by term.
 *
 * The reading less `ground_distance_nm`.
 *
 * @param slant_range_nm DME reading, 0 to 10 900
 * @param height_ft height above the station's antenna, -60 000 to 400 000
 * @param[out] rule_nm The rule's answer; may be NULL
 * @param[out] exact_nm The exact answer; may be NULL
 * @param[out] error_nm The error: the sum of the terms; may be NULL
 * @param[out] triangle_nm The slant for the side of the triangle; may be NULL
 * @param[out] curve_nm A flat earth for a round one; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: The terms sum to the whole to rounding error.
 * Degenerate cases: Overhead the whole reading is error.
 * Errors: A value outside its range, or a reading shorter than the height.
 * Source: The rule: `rule_slant_negligible_from_nm`. The exact distance: `ground_distance_nm`.
 *
 * Example: lubber_rule_ground_distance_error(30.0, 30000.0, NULL, NULL, &value, NULL, NULL) gives 0.43
 */
int32_t lubber_rule_ground_distance_error(double slant_range_nm,
                                          double height_ft,
                                          double *rule_nm,
                                          double *exact_nm,
                                          double *error_nm,
                                          double *triangle_nm,
                                          double *curve_nm);

/**
 * `lubber_rule_ground_distance_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_ground_distance_error_n(size_t count,
                                           const double *slant_range_nm,
                                           ptrdiff_t slant_range_nm_stride,
                                           const double *height_ft,
                                           ptrdiff_t height_ft_stride,
                                           double *rule_nm,
                                           ptrdiff_t rule_nm_stride,
                                           double *exact_nm,
                                           ptrdiff_t exact_nm_stride,
                                           double *error_nm,
                                           ptrdiff_t error_nm_stride,
                                           double *triangle_nm,
                                           ptrdiff_t triangle_nm_stride,
                                           double *curve_nm,
                                           ptrdiff_t curve_nm_stride,
                                           int32_t *status);

/**
 * A rule of the radio horizon beside the tangent to a sphere of 4/3 of the earth's radius, term by term.
 *
 * `radio_horizon_nm` by the rule less that of `four_thirds`.
 *
 * @param aircraft_height_ft height of the aircraft above the surface, 0 to 400 000
 * @param antenna_height_ft height of the antenna above the surface, 0 to 400 000
 * @param rule which rule: LUBBER_HORIZON_RULE_FOUR_THIRDS, LUBBER_HORIZON_RULE_FEET_MILES, LUBBER_HORIZON_RULE_METRES_KILOMETRES, LUBBER_HORIZON_RULE_FIVE_QUARTERS
 * @param[out] rule_nm The rule's answer; may be NULL
 * @param[out] exact_nm The exact answer; may be NULL
 * @param[out] error_nm The error: the sum of the terms; may be NULL
 * @param[out] factor_nm The rule's factor for 1.2289; may be NULL
 * @param[out] root_nm The square roots of the heights for the tangents; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: The terms sum to the whole to rounding error.
 * Degenerate cases: The rule `four_thirds` is the exact one and has no error.
 * Errors: A value outside its range.
 * Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 1 Chapter 3, Appendix, and common practice (`radio_horizon_nm`).
 *
 * Example: lubber_rule_radio_horizon_error(35000.0, 0.0, LUBBER_HORIZON_RULE_FIVE_QUARTERS, NULL, NULL, NULL, &value, NULL) gives 3.98
 */
int32_t lubber_rule_radio_horizon_error(double aircraft_height_ft,
                                        double antenna_height_ft,
                                        int32_t rule,
                                        double *rule_nm,
                                        double *exact_nm,
                                        double *error_nm,
                                        double *factor_nm,
                                        double *root_nm);

/**
 * `lubber_rule_radio_horizon_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `rule` is one code for all points: which rule: LUBBER_HORIZON_RULE_FOUR_THIRDS, LUBBER_HORIZON_RULE_FEET_MILES, LUBBER_HORIZON_RULE_METRES_KILOMETRES, LUBBER_HORIZON_RULE_FIVE_QUARTERS
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_radio_horizon_error_n(size_t count,
                                         const double *aircraft_height_ft,
                                         ptrdiff_t aircraft_height_ft_stride,
                                         const double *antenna_height_ft,
                                         ptrdiff_t antenna_height_ft_stride,
                                         int32_t rule,
                                         double *rule_nm,
                                         ptrdiff_t rule_nm_stride,
                                         double *exact_nm,
                                         ptrdiff_t exact_nm_stride,
                                         double *error_nm,
                                         ptrdiff_t error_nm_stride,
                                         double *factor_nm,
                                         ptrdiff_t factor_nm_stride,
                                         double *root_nm,
                                         ptrdiff_t root_nm_stride,
                                         int32_t *status);

/**
 * The degrees of heading by which to begin the roll-out before the new heading, by a rule.
 *
 * A third of the bank, or half of it.
 *
 * @param bank_deg bank, above 0 below 90
 * @param rule which rule: LUBBER_ROLL_OUT_RULE_THIRD, LUBBER_ROLL_OUT_RULE_HALF
 * @param[out] rule_roll_out_lead_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: A rule. See `rule_roll_out_lead_error`.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range.
 * Source: A third: CNATRA P-1215, timed turns. Half: common practice.
 *
 * Example: lubber_rule_roll_out_lead_deg(24.0, LUBBER_ROLL_OUT_RULE_THIRD, &value) gives 8
 */
int32_t lubber_rule_roll_out_lead_deg(double bank_deg, int32_t rule, double *rule_roll_out_lead_deg);

/**
 * `lubber_rule_roll_out_lead_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `rule` is one code for all points: which rule: LUBBER_ROLL_OUT_RULE_THIRD, LUBBER_ROLL_OUT_RULE_HALF
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_roll_out_lead_deg_n(size_t count,
                                       const double *bank_deg,
                                       ptrdiff_t bank_deg_stride,
                                       int32_t rule,
                                       double *rule_roll_out_lead_deg,
                                       ptrdiff_t rule_roll_out_lead_deg_stride,
                                       int32_t *status);

/**
 * A rule of the roll-out beside the heading that is turned while the bank returns to zero, term by term.
 *
 * The rule less `g / (V p) ln sec b`.
 *
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param bank_deg bank, above 0 below 90
 * @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
 * @param rule which rule: LUBBER_ROLL_OUT_RULE_THIRD, LUBBER_ROLL_OUT_RULE_HALF
 * @param[out] rule_deg The rule's answer; may be NULL
 * @param[out] exact_deg The exact answer; may be NULL
 * @param[out] error_deg The error: the sum of the terms; may be NULL
 * @param[out] share_deg The share of the bank for the mean rate of turn over the time of the roll; may be NULL
 * @param[out] tangent_deg A rate in proportion to the bank for one that goes with its tangent; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: The terms sum to the whole to rounding error.
 * Degenerate cases: A roll that takes no time turns no heading: the rule is all error.
 * Errors: A value outside its range.
 * Source: Named at `rule_roll_out_lead_deg`; the exact lead is derived.
 *
 * Example: lubber_rule_roll_out_lead_error(120.0, 18.0, 5.0, LUBBER_ROLL_OUT_RULE_THIRD, NULL, NULL, &value, NULL, NULL) gives 0.8
 */
int32_t lubber_rule_roll_out_lead_error(double true_airspeed_kt,
                                        double bank_deg,
                                        double roll_rate_deg_per_s,
                                        int32_t rule,
                                        double *rule_deg,
                                        double *exact_deg,
                                        double *error_deg,
                                        double *share_deg,
                                        double *tangent_deg);

/**
 * `lubber_rule_roll_out_lead_error` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `rule` is one code for all points: which rule: LUBBER_ROLL_OUT_RULE_THIRD, LUBBER_ROLL_OUT_RULE_HALF
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_roll_out_lead_error_n(size_t count,
                                         const double *true_airspeed_kt,
                                         ptrdiff_t true_airspeed_kt_stride,
                                         const double *bank_deg,
                                         ptrdiff_t bank_deg_stride,
                                         const double *roll_rate_deg_per_s,
                                         ptrdiff_t roll_rate_deg_per_s_stride,
                                         int32_t rule,
                                         double *rule_deg,
                                         ptrdiff_t rule_deg_stride,
                                         double *exact_deg,
                                         ptrdiff_t exact_deg_stride,
                                         double *error_deg,
                                         ptrdiff_t error_deg_stride,
                                         double *share_deg,
                                         ptrdiff_t share_deg_stride,
                                         double *tangent_deg,
                                         ptrdiff_t tangent_deg_stride,
                                         int32_t *status);

/**
 * The lead of a course change by mental arithmetic: a third of a mile for each 60 kt, and more for height.
 *
 * `(gs / 60) / 3 * change / 90`, and half a nautical mile for each 10 000 ft above 5 000 ft.
 *
 * @param groundspeed_kt groundspeed, 0 to 10 000
 * @param course_change_deg change of course, either way, reduced to half a circle
 * @param height_above_station_ft height above the station's antenna, -60 000 to 400 000
 * @param[out] rule_lead_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: A rule: short by half at jet speeds, where no one flies the bank of standard rate. See `lead_nm` for the exact lead.
 * Degenerate cases: Beyond 90 degrees the proportion goes on, while the exact lead grows like a tangent.
 * Errors: A value outside its range.
 * Source: Common practice.
 *
 * Example: lubber_rule_lead_nm(180.0, 90.0, 0.0, &value) gives 1.00
 */
int32_t lubber_rule_lead_nm(double groundspeed_kt,
                            double course_change_deg,
                            double height_above_station_ft,
                            double *rule_lead_nm);

/**
 * `lubber_rule_lead_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_lead_nm_n(size_t count,
                             const double *groundspeed_kt,
                             ptrdiff_t groundspeed_kt_stride,
                             const double *course_change_deg,
                             ptrdiff_t course_change_deg_stride,
                             const double *height_above_station_ft,
                             ptrdiff_t height_above_station_ft_stride,
                             double *rule_lead_nm,
                             ptrdiff_t rule_lead_nm_stride,
                             int32_t *status);

/**
 * The DME reading at which mental arithmetic begins the turn: the rule's lead added to the height in miles.
 *
 * `(gs / 60) / 3 * change / 90 + height / 6000`.
 *
 * @param groundspeed_kt groundspeed, 0 to 10 000
 * @param course_change_deg change of course, either way, reduced to half a circle
 * @param height_above_station_ft height above the station's antenna, -60 000 to 400 000
 * @param[out] rule_reading_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: A rule whose two errors work against each other: the lead of standard rate is too short for a fast aircraft, and the sum of distance and
 * height is more than the slant. See `dme_at_roll_in_nm` for the exact reading.
 * Degenerate cases: As `rule_lead_nm`.
 * Errors: A value outside its range.
 * Source: Common practice.
 *
 * Example: lubber_rule_reading_nm(450.0, 60.0, 36000.0, &value) gives 7.67
 */
int32_t lubber_rule_reading_nm(double groundspeed_kt,
                               double course_change_deg,
                               double height_above_station_ft,
                               double *rule_reading_nm);

/**
 * `lubber_rule_reading_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_reading_nm_n(size_t count,
                                const double *groundspeed_kt,
                                ptrdiff_t groundspeed_kt_stride,
                                const double *course_change_deg,
                                ptrdiff_t course_change_deg_stride,
                                const double *height_above_station_ft,
                                ptrdiff_t height_above_station_ft_stride,
                                double *rule_reading_nm,
                                ptrdiff_t rule_reading_nm_stride,
                                int32_t *status);

/**
 * The least DME reading overhead by rule: the height in miles, 6 000 ft to the mile.
 *
 * `height / 6000`.
 *
 * @param height_ft height above the station's antenna, -60 000 to 400 000
 * @param[out] rule_least_dme_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: 1.3 percent high: a nautical mile is 6 076.1 ft. See `least_dme_nm`.
 * Degenerate cases: None.
 * Errors: A value outside its range.
 * Source: Common practice.
 *
 * Example: lubber_rule_least_dme_nm(12000.0, &value) gives 2.00
 */
int32_t lubber_rule_least_dme_nm(double height_ft, double *rule_least_dme_nm);

/**
 * `lubber_rule_least_dme_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_least_dme_nm_n(size_t count,
                                  const double *height_ft,
                                  ptrdiff_t height_ft_stride,
                                  double *rule_least_dme_nm,
                                  ptrdiff_t rule_least_dme_nm_stride,
                                  int32_t *status);

/**
 * The cone of confusion by rule: as wide on each side as the aircraft is high.
 *
 * `height / 6000`, a half-angle of 45 degrees.
 *
 * @param height_ft height above the station's antenna, -60 000 to 400 000
 * @param[out] rule_cone_radius_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: ICAO Doc 8168 takes 50 degrees, which is wider by 19 percent. See `cone_radius_nm`.
 * Degenerate cases: At the station's height and below it the radius is zero.
 * Errors: A value outside its range.
 * Source: Common practice.
 *
 * Example: lubber_rule_cone_radius_nm(36000.0, &value) gives 6.00
 */
int32_t lubber_rule_cone_radius_nm(double height_ft, double *rule_cone_radius_nm);

/**
 * `lubber_rule_cone_radius_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_cone_radius_nm_n(size_t count,
                                    const double *height_ft,
                                    ptrdiff_t height_ft_stride,
                                    double *rule_cone_radius_nm,
                                    ptrdiff_t rule_cone_radius_nm_stride,
                                    int32_t *status);

/**
 * The bank of a standard-rate turn by a rule of thumb.
 *
 * 15 percent of the speed, a tenth of it and 7, a tenth of it and 5, or 20 percent of it.
 *
 * @param true_airspeed_kt true airspeed (the indicated one for `twenty_percent`), above 0 to 5000
 * @param rule which rule: LUBBER_BANK_RULE_FIFTEEN_PERCENT, LUBBER_BANK_RULE_TENTH_AND_SEVEN, LUBBER_BANK_RULE_TENTH_AND_FIVE, LUBBER_BANK_RULE_TWENTY_PERCENT
 * @param[out] rule_bank_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: They contradict each other; the exact bank is `atan(V / 364.07)`. See `bank_for_rate_deg`.
 * Degenerate cases: At jet speeds the rules give more bank than anyone flies.
 * Errors: A value outside its range.
 * Source: 15 percent, a tenth and 7, a tenth and 5: common practice. 20 percent: CNATRA P-1215.
 *
 * Example: lubber_rule_bank_deg(120.0, LUBBER_BANK_RULE_TENTH_AND_SEVEN, &value) gives 19.0
 */
int32_t lubber_rule_bank_deg(double true_airspeed_kt,
                             int32_t rule,
                             double *rule_bank_deg);

/**
 * `lubber_rule_bank_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `rule` is one code for all points: which rule: LUBBER_BANK_RULE_FIFTEEN_PERCENT, LUBBER_BANK_RULE_TENTH_AND_SEVEN, LUBBER_BANK_RULE_TENTH_AND_FIVE, LUBBER_BANK_RULE_TWENTY_PERCENT
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_bank_deg_n(size_t count,
                              const double *true_airspeed_kt,
                              ptrdiff_t true_airspeed_kt_stride,
                              int32_t rule,
                              double *rule_bank_deg,
                              ptrdiff_t rule_bank_deg_stride,
                              int32_t *status);

/**
 * The radius of a turn by a rule of thumb.
 *
 * 0.5 percent of the speed (standard rate), 1 percent (half standard rate), miles a minute less two, or a tenth of their square (30 degrees).
 *
 * @param speed_kt speed, above 0 to 5000
 * @param rule which rule: LUBBER_RADIUS_RULE_HALF_PERCENT, LUBBER_RADIUS_RULE_ONE_PERCENT, LUBBER_RADIUS_RULE_MILES_A_MINUTE_LESS_TWO, LUBBER_RADIUS_RULE_TENTH_OF_SQUARE
 * @param[out] rule_turn_radius_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Within 6 percent of `V / (60 pi)` and `V / (30 pi)`; the last is 10 percent high throughout. See `turn_radius_nm`.
 * Degenerate cases: Miles a minute less two is zero below 120 kt.
 * Errors: A value outside its range.
 * Source: CNATRA P-340 p. 6-98; CNATRA P-1282; AFMAN 11-217 (rescinded), as quoted.
 *
 * Example: lubber_rule_turn_radius_nm(250.0, LUBBER_RADIUS_RULE_ONE_PERCENT, &value) gives 2.50
 */
int32_t lubber_rule_turn_radius_nm(double speed_kt,
                                   int32_t rule,
                                   double *rule_turn_radius_nm);

/**
 * `lubber_rule_turn_radius_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `rule` is one code for all points: which rule: LUBBER_RADIUS_RULE_HALF_PERCENT, LUBBER_RADIUS_RULE_ONE_PERCENT, LUBBER_RADIUS_RULE_MILES_A_MINUTE_LESS_TWO, LUBBER_RADIUS_RULE_TENTH_OF_SQUARE
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_turn_radius_nm_n(size_t count,
                                    const double *speed_kt,
                                    ptrdiff_t speed_kt_stride,
                                    int32_t rule,
                                    double *rule_turn_radius_nm,
                                    ptrdiff_t rule_turn_radius_nm_stride,
                                    int32_t *status);

/**
 * Radials to the mile along an arc by the sixty-to-one rule.
 *
 * `60 / D`; the exact divisor is 57.3.
 *
 * @param arc_radius_nm distance of the arc from the station, above 0 to 5000
 * @param[out] rule_radials_per_mile the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: 4.7 percent high.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range.
 * Source: CNATRA P-871 chapter 4, Radial Interception from an Arc.
 *
 * Example: lubber_rule_radials_per_mile(12.0, &value) gives 5.0
 */
int32_t lubber_rule_radials_per_mile(double arc_radius_nm, double *rule_radials_per_mile);

/**
 * `lubber_rule_radials_per_mile` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_radials_per_mile_n(size_t count,
                                      const double *arc_radius_nm,
                                      ptrdiff_t arc_radius_nm_stride,
                                      double *rule_radials_per_mile,
                                      ptrdiff_t rule_radials_per_mile_stride,
                                      int32_t *status);

/**
 * The lead in radials for the turn off an arc, by the sixty-to-one rule and a correction.
 *
 * `(60 / D) r`, times (90 ± lead) / 90 (`proportion`), or a third more inbound and less outbound inside 10 NM (`third`).
 *
 * @param arc_radius_nm distance of the arc from the station, above 0 to 5000
 * @param turn_radius_nm radius of the turn, above 0 to 5000
 * @param flown whether the radial is flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
 * @param rule which correction: LUBBER_ARC_LEAD_RULE_PLAIN, LUBBER_ARC_LEAD_RULE_PROPORTION, LUBBER_ARC_LEAD_RULE_THIRD, LUBBER_ARC_LEAD_RULE_ADDED_MILES
 * @param[out] rule_lead_radials_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: A rule. See `arc_exit` for the exact lead in wind and with roll.
 * Degenerate cases: Where the exact turn toward the station no longer fits, the rules still give a number.
 * Errors: A value outside its range.
 * Source: CNATRA P-871 chapter 4; CNATRA P-1204 p. 76 (4-01), whose text multiplies by the radials per mile where its worked example adds the miles;
 * CNATRA P-1265 p. 2-10 (5-99).
 *
 * Example: lubber_rule_lead_radials_deg(10.0, 2.5, LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_ARC_LEAD_RULE_PROPORTION, &value) gives 17.5
 */
int32_t lubber_rule_lead_radials_deg(double arc_radius_nm,
                                     double turn_radius_nm,
                                     int32_t flown,
                                     int32_t rule,
                                     double *rule_lead_radials_deg);

/**
 * `lubber_rule_lead_radials_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `flown` is one code for all points: whether the radial is flown inbound or outbound: LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_RADIAL_FLOWN_OUTBOUND
 *
 * `rule` is one code for all points: which correction: LUBBER_ARC_LEAD_RULE_PLAIN, LUBBER_ARC_LEAD_RULE_PROPORTION, LUBBER_ARC_LEAD_RULE_THIRD, LUBBER_ARC_LEAD_RULE_ADDED_MILES
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_lead_radials_deg_n(size_t count,
                                      const double *arc_radius_nm,
                                      ptrdiff_t arc_radius_nm_stride,
                                      const double *turn_radius_nm,
                                      ptrdiff_t turn_radius_nm_stride,
                                      int32_t flown,
                                      int32_t rule,
                                      double *rule_lead_radials_deg,
                                      ptrdiff_t rule_lead_radials_deg_stride,
                                      int32_t *status);

/**
 * Distance off course by rule, right positive: 200 ft for each dot and each nautical mile from the station.
 *
 * `-200 ft dots distance`.
 *
 * @param deflection_dots where the needle stands in dots of two degrees, positive right of centre, -20 to 20
 * @param distance_nm distance from the station along the ground, above 0 to 5000
 * @param[out] rule_off_course_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: 6 percent short near the centre: two degrees are 212 ft at a nautical mile. See `cross_track_of_deflection_nm`.
 * Degenerate cases: The proportion goes on past the end of the scale.
 * Errors: A value outside its range.
 * Source: Common practice, as printed on training pages for the FAA's written test.
 *
 * Example: lubber_rule_off_course_nm(-2.0, 30.0, &value) gives 1.97
 */
int32_t lubber_rule_off_course_nm(double deflection_dots,
                                  double distance_nm,
                                  double *rule_off_course_nm);

/**
 * `lubber_rule_off_course_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rule_off_course_nm_n(size_t count,
                                   const double *deflection_dots,
                                   ptrdiff_t deflection_dots_stride,
                                   const double *distance_nm,
                                   ptrdiff_t distance_nm_stride,
                                   double *rule_off_course_nm,
                                   ptrdiff_t rule_off_course_nm_stride,
                                   int32_t *status);

/**
 * Radial, DME, ground distance and elevation angle of an aircraft from a station.
 *
 * The radial is the azimuth of the geodesic on WGS-84 at the station less its declination; the DME reading is the straight line
 * between antenna and aircraft at their heights, in earth-centred coordinates.
 *
 * @param station_latitude_deg latitude of the antenna, -90 to 90
 * @param station_longitude_deg longitude of the antenna, any finite number
 * @param station_elevation_ft elevation of the antenna above mean sea level, -16 500 to 60 000
 * @param station_declination_deg angle from true north to the station's north, positive east, -180 to 180
 * @param latitude_deg latitude of the aircraft, -90 to 90
 * @param longitude_deg longitude of the aircraft, any finite number
 * @param altitude_ft altitude of the aircraft above mean sea level, -16 500 to 400 000
 * @param[out] radial_deg Direction of the aircraft from the station, in the station's north, 0 to 360; NaN exactly overhead; may be NULL
 * @param[out] dme_nm Straight distance from antenna to aircraft: the DME reading; may be NULL
 * @param[out] ground_distance_nm Distance along the ground; may be NULL
 * @param[out] elevation_angle_deg Angle of the aircraft above the station's horizontal; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: 30 nanometres along the ground, a micrometre along the slant. In arrays a tenth of a micrometre to 300 NM and a micrometre to
 * 18 000 km, along the ground and across; from there to 10 560 NM three micrometres, across as far as the radial moves the other end; within a
 * metre of the station and beyond 10 560 NM each point is computed as by itself.
 * Mean sea level is taken for the ellipsoid.
 * Degenerate cases: Exactly overhead the radial is NaN. Reception is not judged here.
 * Errors: A value outside its range.
 * Source: C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013) 43-55; earth-centred coordinates of WGS-84
 * (NGA.STND.0036_1.0.0_WGS84, from memory).
 *
 * Example: lubber_observe(61.25, -11.5, 420.0, -6.0, 61.5, -11.0, 31000.0, NULL, &value, NULL, NULL) gives 21.46
 */
int32_t lubber_observe(double station_latitude_deg,
                       double station_longitude_deg,
                       double station_elevation_ft,
                       double station_declination_deg,
                       double latitude_deg,
                       double longitude_deg,
                       double altitude_ft,
                       double *radial_deg,
                       double *dme_nm,
                       double *ground_distance_nm,
                       double *elevation_angle_deg);

/**
 * `lubber_observe` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_observe_n(size_t count,
                        const double *station_latitude_deg,
                        ptrdiff_t station_latitude_deg_stride,
                        const double *station_longitude_deg,
                        ptrdiff_t station_longitude_deg_stride,
                        const double *station_elevation_ft,
                        ptrdiff_t station_elevation_ft_stride,
                        const double *station_declination_deg,
                        ptrdiff_t station_declination_deg_stride,
                        const double *latitude_deg,
                        ptrdiff_t latitude_deg_stride,
                        const double *longitude_deg,
                        ptrdiff_t longitude_deg_stride,
                        const double *altitude_ft,
                        ptrdiff_t altitude_ft_stride,
                        double *radial_deg,
                        ptrdiff_t radial_deg_stride,
                        double *dme_nm,
                        ptrdiff_t dme_nm_stride,
                        double *ground_distance_nm,
                        ptrdiff_t ground_distance_nm_stride,
                        double *elevation_angle_deg,
                        ptrdiff_t elevation_angle_deg_stride,
                        int32_t *status);

/**
 * Radius of the cone of confusion above a station.
 *
 * `h tan(half-angle)`.
 *
 * @param height_ft height above the station's antenna, -60 000 to 400 000
 * @param cone_half_angle_deg half-angle from the vertical, above 0 below 90
 * @param[out] cone_radius_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Over a flat earth: 0.3 percent too much at 35 000 ft, 0.5 percent at 60 000 ft.
 * Degenerate cases: At the station's height and below it the radius is zero.
 * Errors: A value outside its range.
 * Source: 50 degrees for a VOR, 40 for an NDB: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 2, 2.5.
 *
 * Example: lubber_cone_radius_nm(35000.0, 50.0, &value) gives 6.86
 */
int32_t lubber_cone_radius_nm(double height_ft, double cone_half_angle_deg, double *cone_radius_nm);

/**
 * `lubber_cone_radius_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_cone_radius_nm_n(size_t count,
                               const double *height_ft,
                               ptrdiff_t height_ft_stride,
                               const double *cone_half_angle_deg,
                               ptrdiff_t cone_half_angle_deg_stride,
                               double *cone_radius_nm,
                               ptrdiff_t cone_radius_nm_stride,
                               int32_t *status);

/**
 * Whether a leg between two fixes is long enough for the turns at both, in wind and with roll, and if not, what is possible.
 *
 * `length - past first - before second`: the distance past its fix at which the first turn is done, and the lead of
 * the second. The largest airspeed and the least bank are those that leave nothing to spare.
 *
 * @param inbound_course_deg course flown to the first fix, any finite number
 * @param leg_course_deg course from the first fix to the second
 * @param outbound_course_deg course flown from the second fix
 * @param leg_length_nm distance between the fixes, 0 to 10 900
 * @param first_passage how the first fix is passed: LUBBER_PASSAGE_FLY_BY, LUBBER_PASSAGE_FLY_OVER
 * @param second_passage how the second fix is passed: LUBBER_PASSAGE_FLY_BY, LUBBER_PASSAGE_FLY_OVER
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param wind_from_deg where the wind blows from, against the same north
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param bank_limit_deg greatest bank, above 0 below 90
 * @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
 * @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
 * @param[out] past_first_nm Distance past the first fix, along the leg, at which its turn is done; may be NULL
 * @param[out] before_second_nm Distance before the second fix, along the leg, at which its turn begins; may be NULL
 * @param[out] spare_nm What the leg has left between the two; negative where it is too short; may be NULL
 * @param[out] straight_time_s Time flown straight between the two turns; negative where the leg is too short; may be NULL
 * @param[out] largest_true_airspeed_kt Largest true airspeed at which the leg is long enough; NaN where there is none, or no limit; may be NULL
 * @param[out] largest_groundspeed_kt Groundspeed on the leg at that airspeed; may be NULL
 * @param[out] bank_needed_deg Least bank, with no limit of the rate of turn, at which the leg is long enough; NaN where none is, or every bank; may be NULL
 * @param[out] crossing_past_first_nm Where the course to the first fix crosses the course from the second, past the first fix; NaN for parallel courses; may be NULL
 * @param[out] crossing_before_second_nm The same crossing, before the second fix along the course from it; may be NULL
 * @param[out] crossing_lead_nm Lead of the one turn there that would do for both; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: That of `lead_nm`; the largest airspeed and the least bank to rounding.
 * Degenerate cases: A first fix that is flown over is followed by an intercept of the leg at 30 degrees; a second one that is flown
 * over takes nothing of the leg. The largest airspeed is looked for from the one given: upward where the leg is long
 * enough.
 * Errors: A value outside its range, a reversal at either fix, a wind that the airspeed cannot hold.
 * Source: Derived from the leads of the two turns; the sum of two distances as in ICAO Doc 8168 Vol II (5th ed. 2006), Part
 * III Section 2 Chapter 1.
 *
 * Example: lubber_successive_turns(40.0, 130.0, 60.0, 8.0, LUBBER_PASSAGE_FLY_BY, LUBBER_PASSAGE_FLY_BY, 400.0, 300.0, 40.0, 25.0, 3.0, 5.0, NULL, NULL, &value, NULL, NULL, NULL, NULL, NULL, NULL, NULL) gives -2.71
 */
int32_t lubber_successive_turns(double inbound_course_deg,
                                double leg_course_deg,
                                double outbound_course_deg,
                                double leg_length_nm,
                                int32_t first_passage,
                                int32_t second_passage,
                                double true_airspeed_kt,
                                double wind_from_deg,
                                double wind_speed_kt,
                                double bank_limit_deg,
                                double turn_rate_limit_deg_per_s,
                                double roll_rate_deg_per_s,
                                double *past_first_nm,
                                double *before_second_nm,
                                double *spare_nm,
                                double *straight_time_s,
                                double *largest_true_airspeed_kt,
                                double *largest_groundspeed_kt,
                                double *bank_needed_deg,
                                double *crossing_past_first_nm,
                                double *crossing_before_second_nm,
                                double *crossing_lead_nm);

/**
 * `lubber_successive_turns` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `first_passage` is one code for all points: how the first fix is passed: LUBBER_PASSAGE_FLY_BY, LUBBER_PASSAGE_FLY_OVER
 *
 * `second_passage` is one code for all points: how the second fix is passed: LUBBER_PASSAGE_FLY_BY, LUBBER_PASSAGE_FLY_OVER
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_successive_turns_n(size_t count,
                                 const double *inbound_course_deg,
                                 ptrdiff_t inbound_course_deg_stride,
                                 const double *leg_course_deg,
                                 ptrdiff_t leg_course_deg_stride,
                                 const double *outbound_course_deg,
                                 ptrdiff_t outbound_course_deg_stride,
                                 const double *leg_length_nm,
                                 ptrdiff_t leg_length_nm_stride,
                                 int32_t first_passage,
                                 int32_t second_passage,
                                 const double *true_airspeed_kt,
                                 ptrdiff_t true_airspeed_kt_stride,
                                 const double *wind_from_deg,
                                 ptrdiff_t wind_from_deg_stride,
                                 const double *wind_speed_kt,
                                 ptrdiff_t wind_speed_kt_stride,
                                 const double *bank_limit_deg,
                                 ptrdiff_t bank_limit_deg_stride,
                                 const double *turn_rate_limit_deg_per_s,
                                 ptrdiff_t turn_rate_limit_deg_per_s_stride,
                                 const double *roll_rate_deg_per_s,
                                 ptrdiff_t roll_rate_deg_per_s_stride,
                                 double *past_first_nm,
                                 ptrdiff_t past_first_nm_stride,
                                 double *before_second_nm,
                                 ptrdiff_t before_second_nm_stride,
                                 double *spare_nm,
                                 ptrdiff_t spare_nm_stride,
                                 double *straight_time_s,
                                 ptrdiff_t straight_time_s_stride,
                                 double *largest_true_airspeed_kt,
                                 ptrdiff_t largest_true_airspeed_kt_stride,
                                 double *largest_groundspeed_kt,
                                 ptrdiff_t largest_groundspeed_kt_stride,
                                 double *bank_needed_deg,
                                 ptrdiff_t bank_needed_deg_stride,
                                 double *crossing_past_first_nm,
                                 ptrdiff_t crossing_past_first_nm_stride,
                                 double *crossing_before_second_nm,
                                 ptrdiff_t crossing_before_second_nm_stride,
                                 double *crossing_lead_nm,
                                 ptrdiff_t crossing_lead_nm_stride,
                                 int32_t *status);

/**
 * What a turn at a waypoint takes of a leg in procedure design: the minimum stabilization distance.
 *
 * Flown by: `r tan(A/2) + 5 V / 3600`. Flown over, with an intercept at 30 degrees: `r1 sin(A) + r1 cos(A) tan(30) +
 * r1 (1/sin(30) - 2 cos(A)/sin(60)) + r2 tan(15) + 10 V / 3600`. The least length of a leg is the sum of the
 * distances of its two waypoints.
 *
 * @param passage how the waypoint is passed: LUBBER_PASSAGE_FLY_BY, LUBBER_PASSAGE_FLY_OVER
 * @param course_change_deg change of course, either way, reduced to half a circle
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param bank_deg bank of the turn at the waypoint, above 0 below 90
 * @param turn_rate_limit_deg_per_s greatest rate of that turn, above 0
 * @param bank_onto_leg_deg bank of the turn onto the leg after flying over, above 0 below 90
 * @param[out] stabilization_distance_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As published, without wind and roll; `successive_turns` has both.
 * Degenerate cases: Flown over with a change below 30 degrees the sum has no meaning: it does not vanish without a change.
 * Errors: A value outside its range, a reversal that is flown by.
 * Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 2 Chapter 1: sequences and banks as read, formulas from
 * memory.
 *
 * Example: lubber_stabilization_distance_nm(LUBBER_PASSAGE_FLY_BY, 90.0, 250.0, 25.0, 3.0, 15.0, &value) gives 2.30
 */
int32_t lubber_stabilization_distance_nm(int32_t passage,
                                         double course_change_deg,
                                         double true_airspeed_kt,
                                         double bank_deg,
                                         double turn_rate_limit_deg_per_s,
                                         double bank_onto_leg_deg,
                                         double *stabilization_distance_nm);

/**
 * `lubber_stabilization_distance_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `passage` is one code for all points: how the waypoint is passed: LUBBER_PASSAGE_FLY_BY, LUBBER_PASSAGE_FLY_OVER
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_stabilization_distance_nm_n(size_t count,
                                          int32_t passage,
                                          const double *course_change_deg,
                                          ptrdiff_t course_change_deg_stride,
                                          const double *true_airspeed_kt,
                                          ptrdiff_t true_airspeed_kt_stride,
                                          const double *bank_deg,
                                          ptrdiff_t bank_deg_stride,
                                          const double *turn_rate_limit_deg_per_s,
                                          ptrdiff_t turn_rate_limit_deg_per_s_stride,
                                          const double *bank_onto_leg_deg,
                                          ptrdiff_t bank_onto_leg_deg_stride,
                                          double *stabilization_distance_nm,
                                          ptrdiff_t stabilization_distance_nm_stride,
                                          int32_t *status);

/**
 * The turn of fixed radius that leads from one course onto another on the WGS-84 ellipsoid.
 *
 * The short way by the directions of the courses where they meet; its centre is at the radius from both.
 *
 * @param lat1_deg latitude of a point of the first course, -90 to 90
 * @param lon1_deg longitude of that point, any finite number
 * @param course1_deg true course there, any finite number
 * @param lat2_deg latitude of a point of the second course, -90 to 90
 * @param lon2_deg longitude of that point, any finite number
 * @param course2_deg true course there, any finite number
 * @param radius_nm radius of the turn, above 0 to 5000
 * @param[out] center_latitude_deg Latitude of the centre; may be NULL
 * @param[out] center_longitude_deg Longitude of the centre; may be NULL
 * @param[out] begin_latitude_deg Latitude where the turn leaves the first course; may be NULL
 * @param[out] begin_longitude_deg Its longitude; may be NULL
 * @param[out] end_latitude_deg Latitude where it joins the second course; may be NULL
 * @param[out] end_longitude_deg Its longitude; may be NULL
 * @param[out] begin_bearing_deg Bearing of its beginning from the centre, 0 to 360; may be NULL
 * @param[out] end_bearing_deg Bearing of its end from the centre, 0 to 360; may be NULL
 * @param[out] length_nm Length of the arc; may be NULL
 * @param[out] side 1 for a turn to the right, -1 to the left; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: A micrometre across the courses; the contacts are soft along them.
 * Degenerate cases: The nearer of the two meetings of the courses says which way is short; it matters where the radius is large and the courses
 * are all but reciprocal.
 * Errors: A value outside its range, courses along one line, or courses that no such turn touches.
 * Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
 * Appendix 2 Attachment C.
 *
 * Example: lubber_tangent_turn(40.1734722222, -70.2126666667, 90.0, 42.0766111111, -68.2096388889, 7.0, 75.0, &value, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL) gives 41.4240
 */
int32_t lubber_tangent_turn(double lat1_deg,
                            double lon1_deg,
                            double course1_deg,
                            double lat2_deg,
                            double lon2_deg,
                            double course2_deg,
                            double radius_nm,
                            double *center_latitude_deg,
                            double *center_longitude_deg,
                            double *begin_latitude_deg,
                            double *begin_longitude_deg,
                            double *end_latitude_deg,
                            double *end_longitude_deg,
                            double *begin_bearing_deg,
                            double *end_bearing_deg,
                            double *length_nm,
                            double *side);

/**
 * `lubber_tangent_turn` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_tangent_turn_n(size_t count,
                             const double *lat1_deg,
                             ptrdiff_t lat1_deg_stride,
                             const double *lon1_deg,
                             ptrdiff_t lon1_deg_stride,
                             const double *course1_deg,
                             ptrdiff_t course1_deg_stride,
                             const double *lat2_deg,
                             ptrdiff_t lat2_deg_stride,
                             const double *lon2_deg,
                             ptrdiff_t lon2_deg_stride,
                             const double *course2_deg,
                             ptrdiff_t course2_deg_stride,
                             const double *radius_nm,
                             ptrdiff_t radius_nm_stride,
                             double *center_latitude_deg,
                             ptrdiff_t center_latitude_deg_stride,
                             double *center_longitude_deg,
                             ptrdiff_t center_longitude_deg_stride,
                             double *begin_latitude_deg,
                             ptrdiff_t begin_latitude_deg_stride,
                             double *begin_longitude_deg,
                             ptrdiff_t begin_longitude_deg_stride,
                             double *end_latitude_deg,
                             ptrdiff_t end_latitude_deg_stride,
                             double *end_longitude_deg,
                             ptrdiff_t end_longitude_deg_stride,
                             double *begin_bearing_deg,
                             ptrdiff_t begin_bearing_deg_stride,
                             double *end_bearing_deg,
                             ptrdiff_t end_bearing_deg_stride,
                             double *length_nm,
                             ptrdiff_t length_nm_stride,
                             double *side,
                             ptrdiff_t side_stride,
                             int32_t *status);

/**
 * The turn of fixed radius between two legs on the WGS-84 ellipsoid: from a course that begins at a point onto one that ends at another.
 *
 * The turn of `tangent_turn`, if it begins on the first course after its point and ends on the second before its own.
 *
 * @param lat1_deg latitude of the first leg's beginning, -90 to 90
 * @param lon1_deg longitude of it, any finite number
 * @param course1_deg true course there, any finite number
 * @param lat2_deg latitude of the second leg's end, -90 to 90
 * @param lon2_deg longitude of it, any finite number
 * @param course2_deg true course there, any finite number
 * @param radius_nm radius of the turn, above 0 to 5000
 * @param[out] center_latitude_deg Latitude of the centre; may be NULL
 * @param[out] center_longitude_deg Longitude of the centre; may be NULL
 * @param[out] begin_latitude_deg Latitude where the turn leaves the first course; may be NULL
 * @param[out] begin_longitude_deg Its longitude; may be NULL
 * @param[out] end_latitude_deg Latitude where it joins the second course; may be NULL
 * @param[out] end_longitude_deg Its longitude; may be NULL
 * @param[out] begin_bearing_deg Bearing of its beginning from the centre, 0 to 360; may be NULL
 * @param[out] end_bearing_deg Bearing of its end from the centre, 0 to 360; may be NULL
 * @param[out] length_nm Length of the arc; may be NULL
 * @param[out] side 1 for a turn to the right, -1 to the left; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As `tangent_turn`. A millimetre past an end is let pass.
 * Degenerate cases: A turn that ends at the second leg's end fits.
 * Errors: A value outside its range, courses along one line, or a turn that does not fit between the points.
 * Source: FAA Order 8260.54A (2007), Appendix 2 Attachment C, table of turns tangent to two courses: each of the 39 it answers fits so; for the
 * three that would end past the second point (tests 6, 36 and 51) it prints N/A. That this is its reason is inferred.
 *
 * Example: lubber_tangent_turn_between_legs(40.1734722222, -70.2126666667, 90.0, 42.0766111111, -68.2096388889, 7.0, 75.0, NULL, NULL, NULL, NULL, &value, NULL, NULL, NULL, NULL, NULL) gives 41.2853
 */
int32_t lubber_tangent_turn_between_legs(double lat1_deg,
                                         double lon1_deg,
                                         double course1_deg,
                                         double lat2_deg,
                                         double lon2_deg,
                                         double course2_deg,
                                         double radius_nm,
                                         double *center_latitude_deg,
                                         double *center_longitude_deg,
                                         double *begin_latitude_deg,
                                         double *begin_longitude_deg,
                                         double *end_latitude_deg,
                                         double *end_longitude_deg,
                                         double *begin_bearing_deg,
                                         double *end_bearing_deg,
                                         double *length_nm,
                                         double *side);

/**
 * `lubber_tangent_turn_between_legs` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_tangent_turn_between_legs_n(size_t count,
                                          const double *lat1_deg,
                                          ptrdiff_t lat1_deg_stride,
                                          const double *lon1_deg,
                                          ptrdiff_t lon1_deg_stride,
                                          const double *course1_deg,
                                          ptrdiff_t course1_deg_stride,
                                          const double *lat2_deg,
                                          ptrdiff_t lat2_deg_stride,
                                          const double *lon2_deg,
                                          ptrdiff_t lon2_deg_stride,
                                          const double *course2_deg,
                                          ptrdiff_t course2_deg_stride,
                                          const double *radius_nm,
                                          ptrdiff_t radius_nm_stride,
                                          double *center_latitude_deg,
                                          ptrdiff_t center_latitude_deg_stride,
                                          double *center_longitude_deg,
                                          ptrdiff_t center_longitude_deg_stride,
                                          double *begin_latitude_deg,
                                          ptrdiff_t begin_latitude_deg_stride,
                                          double *begin_longitude_deg,
                                          ptrdiff_t begin_longitude_deg_stride,
                                          double *end_latitude_deg,
                                          ptrdiff_t end_latitude_deg_stride,
                                          double *end_longitude_deg,
                                          ptrdiff_t end_longitude_deg_stride,
                                          double *begin_bearing_deg,
                                          ptrdiff_t begin_bearing_deg_stride,
                                          double *end_bearing_deg,
                                          ptrdiff_t end_bearing_deg_stride,
                                          double *length_nm,
                                          ptrdiff_t length_nm_stride,
                                          double *side,
                                          ptrdiff_t side_stride,
                                          int32_t *status);

/**
 * The turn of fixed radius that leads from a line beside one course onto a line beside another, on the WGS-84 ellipsoid.
 *
 * The short way by the directions of the courses where they meet; its centre is at the radius from both lines.
 *
 * @param lat1_deg latitude of a point of the first course, -90 to 90
 * @param lon1_deg longitude of that point, any finite number
 * @param course1_deg true course there, any finite number
 * @param offset1_nm distance of the line beside the first course, right positive, -5000 to 5000
 * @param lat2_deg latitude of a point of the second course, -90 to 90
 * @param lon2_deg longitude of that point, any finite number
 * @param course2_deg true course there, any finite number
 * @param offset2_nm distance of the line beside the second course, right positive, -5000 to 5000
 * @param radius_nm radius of the turn, above 0 to 5000
 * @param[out] center_latitude_deg Latitude of the centre; may be NULL
 * @param[out] center_longitude_deg Longitude of the centre; may be NULL
 * @param[out] begin_latitude_deg Latitude where the turn leaves the first course; may be NULL
 * @param[out] begin_longitude_deg Its longitude; may be NULL
 * @param[out] end_latitude_deg Latitude where it joins the second course; may be NULL
 * @param[out] end_longitude_deg Its longitude; may be NULL
 * @param[out] begin_bearing_deg Bearing of its beginning from the centre, 0 to 360; may be NULL
 * @param[out] end_bearing_deg Bearing of its end from the centre, 0 to 360; may be NULL
 * @param[out] length_nm Length of the arc; may be NULL
 * @param[out] side 1 for a turn to the right, -1 to the left; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: A micrometre across the lines; the contacts are soft along them.
 * Degenerate cases: With offsets of zero it is `tangent_turn`.
 * Errors: A value outside its range, courses along one line, or lines that no such turn touches.
 * Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid.
 *
 * Example: lubber_offset_tangent_turn(60.0, -10.0, 0.0, 2.0, 60.5, -10.0, 90.0, 2.0, 3.0, NULL, NULL, &value, NULL, NULL, NULL, NULL, NULL, NULL, NULL) gives 60.417
 */
int32_t lubber_offset_tangent_turn(double lat1_deg,
                                   double lon1_deg,
                                   double course1_deg,
                                   double offset1_nm,
                                   double lat2_deg,
                                   double lon2_deg,
                                   double course2_deg,
                                   double offset2_nm,
                                   double radius_nm,
                                   double *center_latitude_deg,
                                   double *center_longitude_deg,
                                   double *begin_latitude_deg,
                                   double *begin_longitude_deg,
                                   double *end_latitude_deg,
                                   double *end_longitude_deg,
                                   double *begin_bearing_deg,
                                   double *end_bearing_deg,
                                   double *length_nm,
                                   double *side);

/**
 * `lubber_offset_tangent_turn` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_offset_tangent_turn_n(size_t count,
                                    const double *lat1_deg,
                                    ptrdiff_t lat1_deg_stride,
                                    const double *lon1_deg,
                                    ptrdiff_t lon1_deg_stride,
                                    const double *course1_deg,
                                    ptrdiff_t course1_deg_stride,
                                    const double *offset1_nm,
                                    ptrdiff_t offset1_nm_stride,
                                    const double *lat2_deg,
                                    ptrdiff_t lat2_deg_stride,
                                    const double *lon2_deg,
                                    ptrdiff_t lon2_deg_stride,
                                    const double *course2_deg,
                                    ptrdiff_t course2_deg_stride,
                                    const double *offset2_nm,
                                    ptrdiff_t offset2_nm_stride,
                                    const double *radius_nm,
                                    ptrdiff_t radius_nm_stride,
                                    double *center_latitude_deg,
                                    ptrdiff_t center_latitude_deg_stride,
                                    double *center_longitude_deg,
                                    ptrdiff_t center_longitude_deg_stride,
                                    double *begin_latitude_deg,
                                    ptrdiff_t begin_latitude_deg_stride,
                                    double *begin_longitude_deg,
                                    ptrdiff_t begin_longitude_deg_stride,
                                    double *end_latitude_deg,
                                    ptrdiff_t end_latitude_deg_stride,
                                    double *end_longitude_deg,
                                    ptrdiff_t end_longitude_deg_stride,
                                    double *begin_bearing_deg,
                                    ptrdiff_t begin_bearing_deg_stride,
                                    double *end_bearing_deg,
                                    ptrdiff_t end_bearing_deg_stride,
                                    double *length_nm,
                                    ptrdiff_t length_nm_stride,
                                    double *side,
                                    ptrdiff_t side_stride,
                                    int32_t *status);

/**
 * The time that a distance takes at a groundspeed.
 *
 * `d/V`.
 *
 * @param distance_nm distance along the surface, 0 to 10 900
 * @param groundspeed_kt groundspeed, above 0 to 10 000
 * @param[out] time_to_fly_s the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: No distance takes no time.
 * Errors: A value outside its range.
 * Source: The definition of speed.
 *
 * Example: lubber_time_to_fly_s(55.0, 220.0, &value) gives 900.0
 */
int32_t lubber_time_to_fly_s(double distance_nm, double groundspeed_kt, double *time_to_fly_s);

/**
 * `lubber_time_to_fly_s` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_time_to_fly_s_n(size_t count,
                              const double *distance_nm,
                              ptrdiff_t distance_nm_stride,
                              const double *groundspeed_kt,
                              ptrdiff_t groundspeed_kt_stride,
                              double *time_to_fly_s,
                              ptrdiff_t time_to_fly_s_stride,
                              int32_t *status);

/**
 * The distance flown in a time at a groundspeed.
 *
 * `V t`.
 *
 * @param groundspeed_kt groundspeed, 0 to 10 000
 * @param elapsed_s time flown, above 0 to 1 000 000
 * @param[out] distance_flown_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range, or a distance above 10 900 NM.
 * Source: The definition of speed.
 *
 * Example: lubber_distance_flown_nm(220.0, 900.0, &value) gives 55.0
 */
int32_t lubber_distance_flown_nm(double groundspeed_kt, double elapsed_s, double *distance_flown_nm);

/**
 * `lubber_distance_flown_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_distance_flown_nm_n(size_t count,
                                  const double *groundspeed_kt,
                                  ptrdiff_t groundspeed_kt_stride,
                                  const double *elapsed_s,
                                  ptrdiff_t elapsed_s_stride,
                                  double *distance_flown_nm,
                                  ptrdiff_t distance_flown_nm_stride,
                                  int32_t *status);

/**
 * The groundspeed that a distance flown in a time tells.
 *
 * `d/t`.
 *
 * @param distance_nm distance along the surface, 0 to 10 900
 * @param elapsed_s time flown, above 0 to 1 000 000
 * @param[out] groundspeed_from_time_kt the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: No distance is no speed.
 * Errors: A value outside its range, or a groundspeed above 10 000 kt.
 * Source: The definition of speed.
 *
 * Example: lubber_groundspeed_from_time_kt(55.0, 900.0, &value) gives 220.0
 */
int32_t lubber_groundspeed_from_time_kt(double distance_nm, double elapsed_s, double *groundspeed_from_time_kt);

/**
 * `lubber_groundspeed_from_time_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_groundspeed_from_time_kt_n(size_t count,
                                         const double *distance_nm,
                                         ptrdiff_t distance_nm_stride,
                                         const double *elapsed_s,
                                         ptrdiff_t elapsed_s_stride,
                                         double *groundspeed_from_time_kt,
                                         ptrdiff_t groundspeed_from_time_kt_stride,
                                         int32_t *status);

/**
 * The time between two fixes at a groundspeed, along the geodesic of the WGS-84 ellipsoid.
 *
 * The distance of `geodesic_inverse` over the groundspeed.
 *
 * @param lat1_deg latitude of the first fix, -90 to 90
 * @param lon1_deg longitude of the first fix, any finite number
 * @param lat2_deg latitude of the second fix, -90 to 90
 * @param lon2_deg longitude of the second fix, any finite number
 * @param groundspeed_kt groundspeed, above 0 to 10 000
 * @param[out] time_between_fixes_s the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: 15 nanometres of distance.
 * Degenerate cases: Coincident fixes take no time.
 * Errors: A latitude beyond a pole, an infinite number, or a groundspeed outside its range.
 * Source: C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013) 43-55, doi
 * 10.1007/s00190-012-0578-z.
 *
 * Example: lubber_time_between_fixes_s(51.0, 0.0, 52.0, 1.0, 420.0, &value) gives 607.0
 */
int32_t lubber_time_between_fixes_s(double lat1_deg,
                                    double lon1_deg,
                                    double lat2_deg,
                                    double lon2_deg,
                                    double groundspeed_kt,
                                    double *time_between_fixes_s);

/**
 * `lubber_time_between_fixes_s` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_time_between_fixes_s_n(size_t count,
                                     const double *lat1_deg,
                                     ptrdiff_t lat1_deg_stride,
                                     const double *lon1_deg,
                                     ptrdiff_t lon1_deg_stride,
                                     const double *lat2_deg,
                                     ptrdiff_t lat2_deg_stride,
                                     const double *lon2_deg,
                                     ptrdiff_t lon2_deg_stride,
                                     const double *groundspeed_kt,
                                     ptrdiff_t groundspeed_kt_stride,
                                     double *time_between_fixes_s,
                                     ptrdiff_t time_between_fixes_s_stride,
                                     int32_t *status);

/**
 * The distance and time to a station from the change of its bearing while a straight track is flown: exact.
 *
 * With the angle off the bow `b` at the first bearing and the change `c`: `V t sin(b)/sin(c)` at the second
 * bearing and `V t sin(b + c)/sin(c)` at the first. Where the angle off the bow doubles, the time to the
 * station is the time flown. The rule is `lubber_time_to_station_rule_s`.
 *
 * @param elapsed_s time flown, above 0 to 1 000 000
 * @param bearing_change_deg change of the bearing, without its side, above 0 below 180
 * @param groundspeed_kt groundspeed, above 0 to 10 000
 * @param angle_off_bow_deg between the track and the first bearing, without its side, above 0 below 180
 * @param[out] distance_nm Distance to the station at the second bearing; may be NULL
 * @param[out] time_s Time to the station from there, at the same groundspeed; may be NULL
 * @param[out] distance_before_nm Distance to the station at the first bearing; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding on a plane. The bearings govern: with a change of 10 degrees, half a degree of error is 5 percent.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range, two angles that sum to 180 degrees or more, or a distance above 10 900 NM.
 * Source: The law of sines.
 *
 * Example: lubber_station_by_bearing_change(75.0, 10.0, 120.0, 90.0, &value, NULL, NULL) gives 14.40
 */
int32_t lubber_station_by_bearing_change(double elapsed_s,
                                         double bearing_change_deg,
                                         double groundspeed_kt,
                                         double angle_off_bow_deg,
                                         double *distance_nm,
                                         double *time_s,
                                         double *distance_before_nm);

/**
 * `lubber_station_by_bearing_change` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_station_by_bearing_change_n(size_t count,
                                          const double *elapsed_s,
                                          ptrdiff_t elapsed_s_stride,
                                          const double *bearing_change_deg,
                                          ptrdiff_t bearing_change_deg_stride,
                                          const double *groundspeed_kt,
                                          ptrdiff_t groundspeed_kt_stride,
                                          const double *angle_off_bow_deg,
                                          ptrdiff_t angle_off_bow_deg_stride,
                                          double *distance_nm,
                                          ptrdiff_t distance_nm_stride,
                                          double *time_s,
                                          ptrdiff_t time_s_stride,
                                          double *distance_before_nm,
                                          ptrdiff_t distance_before_nm_stride,
                                          int32_t *status);

/**
 * The time to a station abeam by the rule: minutes are seconds flown over degrees of change.
 *
 * `60 t/c` with the change `c` in degrees. `lubber_station_by_bearing_change` is exact.
 *
 * @param elapsed_s time flown, above 0 to 1 000 000
 * @param bearing_change_deg change of the bearing, without its side, above 0 below 180
 * @param[out] time_to_station_rule_s the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Too long by 4.6 percent at 5 degrees of change, 4.2 at 10 and 2.6 at 20; right at 30.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range.
 * Source: FAA-H-8083-15, Instrument Flying Handbook, time and distance check, read in a quotation.
 *
 * Example: lubber_time_to_station_rule_s(75.0, 10.0, &value) gives 450.0
 */
int32_t lubber_time_to_station_rule_s(double elapsed_s, double bearing_change_deg, double *time_to_station_rule_s);

/**
 * `lubber_time_to_station_rule_s` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_time_to_station_rule_s_n(size_t count,
                                       const double *elapsed_s,
                                       ptrdiff_t elapsed_s_stride,
                                       const double *bearing_change_deg,
                                       ptrdiff_t bearing_change_deg_stride,
                                       double *time_to_station_rule_s,
                                       ptrdiff_t time_to_station_rule_s_stride,
                                       int32_t *status);

/**
 * Total air temperature, which a probe in the stream feels, from static air temperature.
 *
 * `T (1 + 0.2 k M^2)` in kelvins, with the recovery factor `k` of the probe.
 *
 * @param temperature_degc static air temperature, -200 to 200
 * @param mach Mach number, 0 to 10
 * @param recovery_factor share of the heat of compression that the probe feels, 0 to 1
 * @param[out] total_temperature_degc the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding, for air of constant heat ratio: good to about Mach 3.
 * Degenerate cases: At rest, or with a recovery factor of zero, the two are one.
 * Errors: A value outside its range.
 * Source: NACA Report 1135 (1953), equation 43 (number from memory), for a ratio of specific heats of 1.4.
 *
 * Example: lubber_total_temperature_degc(-54.0, 0.82, 1.0, &value) gives -24.5
 */
int32_t lubber_total_temperature_degc(double temperature_degc,
                                      double mach,
                                      double recovery_factor,
                                      double *total_temperature_degc);

/**
 * `lubber_total_temperature_degc` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_total_temperature_degc_n(size_t count,
                                       const double *temperature_degc,
                                       ptrdiff_t temperature_degc_stride,
                                       const double *mach,
                                       ptrdiff_t mach_stride,
                                       const double *recovery_factor,
                                       ptrdiff_t recovery_factor_stride,
                                       double *total_temperature_degc,
                                       ptrdiff_t total_temperature_degc_stride,
                                       int32_t *status);

/**
 * Static air temperature from total air temperature: the inverse of `lubber_total_temperature_degc`.
 *
 * `Tt/(1 + 0.2 k M^2)` in kelvins, with the recovery factor `k` of the probe.
 *
 * @param total_temperature_degc total air temperature, -270 to 10 000
 * @param mach Mach number, 0 to 10
 * @param recovery_factor share of the heat of compression that the probe feels, 0 to 1
 * @param[out] static_temperature_degc the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding, for air of constant heat ratio: good to about Mach 3.
 * Degenerate cases: At rest, or with a recovery factor of zero, the two are one.
 * Errors: A value outside its range, or a static temperature outside -200 to 200 degC.
 * Source: As `lubber_total_temperature_degc`.
 *
 * Example: lubber_static_temperature_degc(-24.5, 0.82, 1.0, &value) gives -54.0
 */
int32_t lubber_static_temperature_degc(double total_temperature_degc,
                                       double mach,
                                       double recovery_factor,
                                       double *static_temperature_degc);

/**
 * `lubber_static_temperature_degc` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_static_temperature_degc_n(size_t count,
                                        const double *total_temperature_degc,
                                        ptrdiff_t total_temperature_degc_stride,
                                        const double *mach,
                                        ptrdiff_t mach_stride,
                                        const double *recovery_factor,
                                        ptrdiff_t recovery_factor_stride,
                                        double *static_temperature_degc,
                                        ptrdiff_t static_temperature_degc_stride,
                                        int32_t *status);

/**
 * The transition level as a pressure altitude: the lowest flight level far enough above the transition altitude.
 *
 * The lowest multiple of the step at or above the transition altitude plus the least layer, both measured with
 * the setting. The lowest usable flight levels of the United States are this from 18 000 ft: 14 CFR 91.121
 * (2014) in steps of 500 ft, the AIM of 2023, TBL 7-2-1, in steps of 1000 ft.
 *
 * @param transition_altitude_ft transition altitude, -50 000 to 300 000
 * @param altimeter_setting_hpa what the altimeter is set to, 400 to 1200
 * @param least_layer_ft least height of the transition layer, 0 to 10 000
 * @param step_ft flight levels are multiples of this, 100 to 10 000
 * @param[out] transition_level_ft the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Exact. A setting of 29.92 inches is 1.3 ft short of standard, which costs a level where the two should
 * coincide: give 1013.25.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range, or a level beyond the range of pressure altitudes.
 * Source: ICAO Doc 8168 (PANS-OPS) volume I, Part III, and Doc 4444, from memory; states set the layer and the step.
 *
 * Example: lubber_transition_level_ft(5000.0, 1003.0, 0.0, 500.0, &value) gives 5500
 */
int32_t lubber_transition_level_ft(double transition_altitude_ft,
                                   double altimeter_setting_hpa,
                                   double least_layer_ft,
                                   double step_ft,
                                   double *transition_level_ft);

/**
 * `lubber_transition_level_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_transition_level_ft_n(size_t count,
                                    const double *transition_altitude_ft,
                                    ptrdiff_t transition_altitude_ft_stride,
                                    const double *altimeter_setting_hpa,
                                    ptrdiff_t altimeter_setting_hpa_stride,
                                    const double *least_layer_ft,
                                    ptrdiff_t least_layer_ft_stride,
                                    const double *step_ft,
                                    ptrdiff_t step_ft_stride,
                                    double *transition_level_ft,
                                    ptrdiff_t transition_level_ft_stride,
                                    int32_t *status);

/**
 * True altitude from pressure altitude, a station's altimeter setting and the ISA deviation.
 *
 * From the station up the air is `Hp - Hs + D (R/g) ln(ps/p)` thick, with the ISA deviation `D` the same all
 * the way: hydrostatic balance, exact through the layers. Geopotential is turned into geometric height.
 *
 * @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
 * @param altimeter_setting_hpa the station's altimeter setting, 400 to 1200
 * @param elevation_ft elevation of the station that gives the setting, -16 500 to 60 000
 * @param isa_deviation_k the air from the station up is warmer than standard by this, -150 to 150
 * @param[out] true_altitude_ft the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding for such a column; 5 K of error in its mean temperature are 2 percent of the height.
 * Degenerate cases: At the station's own pressure the answer is its elevation, whatever the temperature.
 * Errors: A value outside its range.
 * Source: Hydrostatic balance with the layers of ICAO Doc 7488/3 (3rd edition 1993).
 *
 * Example: lubber_true_altitude_ft(10000.0, 1013.25, 0.0, -20.0, &value) gives 9285
 */
int32_t lubber_true_altitude_ft(double pressure_altitude_ft,
                                double altimeter_setting_hpa,
                                double elevation_ft,
                                double isa_deviation_k,
                                double *true_altitude_ft);

/**
 * `lubber_true_altitude_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_true_altitude_ft_n(size_t count,
                                 const double *pressure_altitude_ft,
                                 ptrdiff_t pressure_altitude_ft_stride,
                                 const double *altimeter_setting_hpa,
                                 ptrdiff_t altimeter_setting_hpa_stride,
                                 const double *elevation_ft,
                                 ptrdiff_t elevation_ft_stride,
                                 const double *isa_deviation_k,
                                 ptrdiff_t isa_deviation_k_stride,
                                 double *true_altitude_ft,
                                 ptrdiff_t true_altitude_ft_stride,
                                 int32_t *status);

/**
 * Height above a station from pressure altitude, the station's altimeter setting and the ISA deviation.
 *
 * `lubber_true_altitude_ft` less the elevation: the height that slant range asks for.
 *
 * @param pressure_altitude_ft pressure altitude, -16 420 to 262 467.2
 * @param altimeter_setting_hpa the station's altimeter setting, 400 to 1200
 * @param elevation_ft elevation of the station that gives the setting, -16 500 to 60 000
 * @param isa_deviation_k the air from the station up is warmer than standard by this, -150 to 150
 * @param[out] height_above_station_ft the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As `lubber_true_altitude_ft`.
 * Degenerate cases: Zero at the station's own pressure.
 * Errors: A value outside its range.
 * Source: As `lubber_true_altitude_ft`.
 *
 * Example: lubber_height_above_station_ft(10000.0, 995.0, 2000.0, 15.0, &value) gives 7910
 */
int32_t lubber_height_above_station_ft(double pressure_altitude_ft,
                                       double altimeter_setting_hpa,
                                       double elevation_ft,
                                       double isa_deviation_k,
                                       double *height_above_station_ft);

/**
 * `lubber_height_above_station_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_height_above_station_ft_n(size_t count,
                                        const double *pressure_altitude_ft,
                                        ptrdiff_t pressure_altitude_ft_stride,
                                        const double *altimeter_setting_hpa,
                                        ptrdiff_t altimeter_setting_hpa_stride,
                                        const double *elevation_ft,
                                        ptrdiff_t elevation_ft_stride,
                                        const double *isa_deviation_k,
                                        ptrdiff_t isa_deviation_k_stride,
                                        double *height_above_station_ft,
                                        ptrdiff_t height_above_station_ft_stride,
                                        int32_t *status);

/**
 * Pressure altitude at a true altitude: the inverse of `lubber_true_altitude_ft`.
 *
 * By Newton's method on the thickness of the column.
 *
 * @param true_altitude_ft altitude above mean sea level, -16 500 to 400 000
 * @param altimeter_setting_hpa the station's altimeter setting, 400 to 1200
 * @param elevation_ft elevation of the station that gives the setting, -16 500 to 60 000
 * @param isa_deviation_k the air from the station up is warmer than standard by this, -150 to 150
 * @param[out] pressure_altitude_at_true_altitude_ft the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: 1e-8 ft.
 * Degenerate cases: At the elevation it is the station's own pressure altitude, whatever the temperature.
 * Errors: A value outside its range, or a pressure altitude outside -5 to 80 km.
 * Source: As `lubber_true_altitude_ft`.
 *
 * Example: lubber_pressure_altitude_at_true_altitude_ft(10000.0, 1013.25, 0.0, -20.0, &value) gives 10772
 */
int32_t lubber_pressure_altitude_at_true_altitude_ft(double true_altitude_ft,
                                                     double altimeter_setting_hpa,
                                                     double elevation_ft,
                                                     double isa_deviation_k,
                                                     double *pressure_altitude_at_true_altitude_ft);

/**
 * `lubber_pressure_altitude_at_true_altitude_ft` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_pressure_altitude_at_true_altitude_ft_n(size_t count,
                                                      const double *true_altitude_ft,
                                                      ptrdiff_t true_altitude_ft_stride,
                                                      const double *altimeter_setting_hpa,
                                                      ptrdiff_t altimeter_setting_hpa_stride,
                                                      const double *elevation_ft,
                                                      ptrdiff_t elevation_ft_stride,
                                                      const double *isa_deviation_k,
                                                      ptrdiff_t isa_deviation_k_stride,
                                                      double *pressure_altitude_at_true_altitude_ft,
                                                      ptrdiff_t pressure_altitude_at_true_altitude_ft_stride,
                                                      int32_t *status);

/**
 * Radius of a level turn in still air.
 *
 * `V^2 / (g tan(bank))` with standard gravity.
 *
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param bank_deg angle of bank, above 0 below 90
 * @param[out] turn_radius_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error, in arrays 2e-15 of the radius over the cosine of the bank; standard gravity stands for the local one, which differs by up to 0.3 percent at the surface.
 * Degenerate cases: Infinite at a bank whose tangent is less than any number.
 * Errors: A value outside its range.
 * Source: Equilibrium in a coordinated turn; ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 3.
 *
 * Example: lubber_turn_radius_nm(450.0, 25.0, &value) gives 6.33
 */
int32_t lubber_turn_radius_nm(double true_airspeed_kt,
                              double bank_deg,
                              double *turn_radius_nm);

/**
 * `lubber_turn_radius_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_turn_radius_nm_n(size_t count,
                               const double *true_airspeed_kt,
                               ptrdiff_t true_airspeed_kt_stride,
                               const double *bank_deg,
                               ptrdiff_t bank_deg_stride,
                               double *turn_radius_nm,
                               ptrdiff_t turn_radius_nm_stride,
                               int32_t *status);

/**
 * Rate of a level turn.
 *
 * `g tan(bank) / V` with standard gravity.
 *
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param bank_deg angle of bank, above 0 below 90
 * @param[out] turn_rate_deg_per_s the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range.
 * Source: Equilibrium in a coordinated turn; ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 3.
 *
 * Example: lubber_turn_rate_deg_per_s(120.0, 30.0, &value) gives 5.25
 */
int32_t lubber_turn_rate_deg_per_s(double true_airspeed_kt, double bank_deg, double *turn_rate_deg_per_s);

/**
 * `lubber_turn_rate_deg_per_s` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_turn_rate_deg_per_s_n(size_t count,
                                    const double *true_airspeed_kt,
                                    ptrdiff_t true_airspeed_kt_stride,
                                    const double *bank_deg,
                                    ptrdiff_t bank_deg_stride,
                                    double *turn_rate_deg_per_s,
                                    ptrdiff_t turn_rate_deg_per_s_stride,
                                    int32_t *status);

/**
 * The bank that turns at a rate.
 *
 * `atan(rate V / g)` with standard gravity.
 *
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param turn_rate_deg_per_s rate of turn, above 0
 * @param[out] bank_for_rate_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error.
 * Degenerate cases: A rate that needs a bank of 90 degrees is refused.
 * Errors: A value outside its range, or a bank of 90 degrees.
 * Source: Equilibrium in a coordinated turn; ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 3.
 *
 * Example: lubber_bank_for_rate_deg(180.0, 3.0, &value) gives 26.31
 */
int32_t lubber_bank_for_rate_deg(double true_airspeed_kt, double turn_rate_deg_per_s, double *bank_for_rate_deg);

/**
 * `lubber_bank_for_rate_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_bank_for_rate_deg_n(size_t count,
                                  const double *true_airspeed_kt,
                                  ptrdiff_t true_airspeed_kt_stride,
                                  const double *turn_rate_deg_per_s,
                                  ptrdiff_t turn_rate_deg_per_s_stride,
                                  double *bank_for_rate_deg,
                                  ptrdiff_t bank_for_rate_deg_stride,
                                  int32_t *status);

/**
 * The bank that turns on a radius in still air.
 *
 * `atan(V^2 / (g r))` with standard gravity.
 *
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param turn_radius_nm radius of the turn, above 0 to 5000
 * @param[out] bank_for_radius_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error.
 * Degenerate cases: A radius that needs a bank of 90 degrees to rounding is refused.
 * Errors: A value outside its range.
 * Source: Equilibrium in a coordinated turn; ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 3.
 *
 * Example: lubber_bank_for_radius_deg(450.0, 6.33, &value) gives 25.0
 */
int32_t lubber_bank_for_radius_deg(double true_airspeed_kt, double turn_radius_nm, double *bank_for_radius_deg);

/**
 * `lubber_bank_for_radius_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_bank_for_radius_deg_n(size_t count,
                                    const double *true_airspeed_kt,
                                    ptrdiff_t true_airspeed_kt_stride,
                                    const double *turn_radius_nm,
                                    ptrdiff_t turn_radius_nm_stride,
                                    double *bank_for_radius_deg,
                                    ptrdiff_t bank_for_radius_deg_stride,
                                    int32_t *status);

/**
 * Radius of a turn at a rate in still air, whatever bank it takes.
 *
 * `V / rate`; at standard rate `V / (60 pi)` nautical miles with V in knots.
 *
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param turn_rate_deg_per_s rate of turn, above 0
 * @param[out] radius_at_rate_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error.
 * Degenerate cases: An infinite rate gives a radius of zero.
 * Errors: A value outside its range.
 * Source: The definition of angular velocity.
 *
 * Example: lubber_radius_at_rate_nm(180.0, 3.0, &value) gives 0.955
 */
int32_t lubber_radius_at_rate_nm(double true_airspeed_kt, double turn_rate_deg_per_s, double *radius_at_rate_nm);

/**
 * `lubber_radius_at_rate_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_radius_at_rate_nm_n(size_t count,
                                  const double *true_airspeed_kt,
                                  ptrdiff_t true_airspeed_kt_stride,
                                  const double *turn_rate_deg_per_s,
                                  ptrdiff_t turn_rate_deg_per_s_stride,
                                  double *radius_at_rate_nm,
                                  ptrdiff_t radius_at_rate_nm_stride,
                                  int32_t *status);

/**
 * Load factor of a level turn.
 *
 * `1 / cos(bank)`.
 *
 * @param bank_deg angle of bank, above 0 below 90
 * @param[out] load_factor the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range.
 * Source: Equilibrium of lift and weight.
 *
 * Example: lubber_load_factor(60.0, &value) gives 2.000
 */
int32_t lubber_load_factor(double bank_deg, double *load_factor);

/**
 * `lubber_load_factor` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_load_factor_n(size_t count,
                            const double *bank_deg,
                            ptrdiff_t bank_deg_stride,
                            double *load_factor,
                            ptrdiff_t load_factor_stride,
                            int32_t *status);

/**
 * The bank of a level turn at a load factor.
 *
 * `acos(1 / n)`.
 *
 * @param load_factor lift over weight, above 1 to 100
 * @param[out] bank_for_load_factor_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error, near a load factor of 1 too.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range.
 * Source: Equilibrium of lift and weight.
 *
 * Example: lubber_bank_for_load_factor_deg(1.3, &value) gives 39.72
 */
int32_t lubber_bank_for_load_factor_deg(double load_factor, double *bank_for_load_factor_deg);

/**
 * `lubber_bank_for_load_factor_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_bank_for_load_factor_deg_n(size_t count,
                                         const double *load_factor,
                                         ptrdiff_t load_factor_stride,
                                         double *bank_for_load_factor_deg,
                                         ptrdiff_t bank_for_load_factor_deg_stride,
                                         int32_t *status);

/**
 * The steady turn an aircraft makes within a bank limit and a limit of its rate of turn, and which of them governs.
 *
 * The bank is the lesser of the limit and `atan(rate V / g)`: rate-limited at low speed, bank-limited above
 * `g tan(bank) / rate`.
 *
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param bank_limit_deg greatest bank, above 0 below 90
 * @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
 * @param[out] bank_deg The bank that is flown; may be NULL
 * @param[out] turn_rate_deg_per_s The rate of turn at it; may be NULL
 * @param[out] radius_nm The radius in still air; may be NULL
 * @param[out] governed_by What governs the bank: 0 the bank limit, 1 the limit of the rate of turn; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error.
 * Degenerate cases: Where both limits ask for the same bank, the bank limit is named.
 * Errors: A value outside its range.
 * Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 3 and Table I-4-3-App C-1 (25 degrees, at most 3 deg/s).
 *
 * Example: lubber_limited_turn(157.23, 25.0, 3.0, NULL, NULL, &value, NULL) gives 0.83
 */
int32_t lubber_limited_turn(double true_airspeed_kt,
                            double bank_limit_deg,
                            double turn_rate_limit_deg_per_s,
                            double *bank_deg,
                            double *turn_rate_deg_per_s,
                            double *radius_nm,
                            double *governed_by);

/**
 * `lubber_limited_turn` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_limited_turn_n(size_t count,
                             const double *true_airspeed_kt,
                             ptrdiff_t true_airspeed_kt_stride,
                             const double *bank_limit_deg,
                             ptrdiff_t bank_limit_deg_stride,
                             const double *turn_rate_limit_deg_per_s,
                             ptrdiff_t turn_rate_limit_deg_per_s_stride,
                             double *bank_deg,
                             ptrdiff_t bank_deg_stride,
                             double *turn_rate_deg_per_s,
                             ptrdiff_t turn_rate_deg_per_s_stride,
                             double *radius_nm,
                             ptrdiff_t radius_nm_stride,
                             double *governed_by,
                             ptrdiff_t governed_by_stride,
                             int32_t *status);

/**
 * A level turn with its roll: bank growing at the roll rate to its target, held, and taken off again.
 *
 * Heading turned while rolling to bank b at rate p: `-(g / (V p)) ln(cos(b))`; the path is integrated over it.
 *
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param heading_change_deg change of heading, right positive, -360 to 360
 * @param bank_limit_deg greatest bank, above 0 below 90
 * @param turn_rate_limit_deg_per_s greatest rate of turn, above 0
 * @param roll_rate_deg_per_s rate of roll, above 0, infinite for an instant roll
 * @param[out] bank_deg The greatest bank; may be NULL
 * @param[out] duration_s From the first roll to wings level; may be NULL
 * @param[out] roll_duration_s The duration of one roll, in or out; may be NULL
 * @param[out] advance_nm Distance made good through the air along the first heading; may be NULL
 * @param[out] transfer_nm Distance made good through the air across the first heading, right positive; may be NULL
 * @param[out] governed_by What governs the bank: 0 the bank limit, 1 the limit of the rate of turn, 2 the roll, 3 no turn; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: 1e-10 of the size of the turn against a fine integration in time.
 * Degenerate cases: A change of zero takes no time and no distance.
 * Errors: A value outside its range.
 * Source: Equilibrium in a coordinated level turn; derived.
 *
 * Example: lubber_rolled_turn(450.0, 90.0, 25.0, 3.0, 5.0, NULL, &value, NULL, NULL, NULL, NULL) gives 84.7
 */
int32_t lubber_rolled_turn(double true_airspeed_kt,
                           double heading_change_deg,
                           double bank_limit_deg,
                           double turn_rate_limit_deg_per_s,
                           double roll_rate_deg_per_s,
                           double *bank_deg,
                           double *duration_s,
                           double *roll_duration_s,
                           double *advance_nm,
                           double *transfer_nm,
                           double *governed_by);

/**
 * `lubber_rolled_turn` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_rolled_turn_n(size_t count,
                            const double *true_airspeed_kt,
                            ptrdiff_t true_airspeed_kt_stride,
                            const double *heading_change_deg,
                            ptrdiff_t heading_change_deg_stride,
                            const double *bank_limit_deg,
                            ptrdiff_t bank_limit_deg_stride,
                            const double *turn_rate_limit_deg_per_s,
                            ptrdiff_t turn_rate_limit_deg_per_s_stride,
                            const double *roll_rate_deg_per_s,
                            ptrdiff_t roll_rate_deg_per_s_stride,
                            double *bank_deg,
                            ptrdiff_t bank_deg_stride,
                            double *duration_s,
                            ptrdiff_t duration_s_stride,
                            double *roll_duration_s,
                            ptrdiff_t roll_duration_s_stride,
                            double *advance_nm,
                            ptrdiff_t advance_nm_stride,
                            double *transfer_nm,
                            ptrdiff_t transfer_nm_stride,
                            double *governed_by,
                            ptrdiff_t governed_by_stride,
                            int32_t *status);

/**
 * The wind from all sides that procedure design assumes at an altitude.
 *
 * `2 h + 47` kt with h in thousands of feet; `12 h + 87` km/h with h in kilometres.
 *
 * @param altitude_ft altitude, -2000 to 50 000
 * @param units in which units the formula is printed: LUBBER_DESIGN_UNITS_NON_SI, LUBBER_DESIGN_UNITS_SI
 * @param[out] icao_wind_kt the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As published. The two forms differ by up to 2.4 percent.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range.
 * Source: ICAO Doc 8168 Vol II (5th ed. 2006), Table I-2-3-1, ICAO standard wind.
 *
 * Example: lubber_icao_wind_kt(6000.0, LUBBER_DESIGN_UNITS_NON_SI, &value) gives 59
 */
int32_t lubber_icao_wind_kt(double altitude_ft, int32_t units, double *icao_wind_kt);

/**
 * `lubber_icao_wind_kt` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `units` is one code for all points: in which units the formula is printed: LUBBER_DESIGN_UNITS_NON_SI, LUBBER_DESIGN_UNITS_SI
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_icao_wind_kt_n(size_t count,
                             const double *altitude_ft,
                             ptrdiff_t altitude_ft_stride,
                             int32_t units,
                             double *icao_wind_kt,
                             ptrdiff_t icao_wind_kt_stride,
                             int32_t *status);

/**
 * How far a wind carries an aircraft while it turns through an angle.
 *
 * `(angle / rate) wind`.
 *
 * @param angle_deg angle turned through, either way, -360 to 360
 * @param turn_rate_deg_per_s rate of the turn, above 0
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param[out] turn_wind_effect_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding error, for an instant roll.
 * Degenerate cases: An infinite rate leaves no time to be carried.
 * Errors: A value outside its range.
 * Source: ICAO Doc 8168 Vol II (5th ed. 2006), Table I-4-3-App C-1, lines 8 and 16 to 19.
 *
 * Example: lubber_turn_wind_effect_nm(190.0, 3.0, 59.0, &value) gives 1.04
 */
int32_t lubber_turn_wind_effect_nm(double angle_deg,
                                   double turn_rate_deg_per_s,
                                   double wind_speed_kt,
                                   double *turn_wind_effect_nm);

/**
 * `lubber_turn_wind_effect_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_turn_wind_effect_nm_n(size_t count,
                                    const double *angle_deg,
                                    ptrdiff_t angle_deg_stride,
                                    const double *turn_rate_deg_per_s,
                                    ptrdiff_t turn_rate_deg_per_s_stride,
                                    const double *wind_speed_kt,
                                    ptrdiff_t wind_speed_kt_stride,
                                    double *turn_wind_effect_nm,
                                    ptrdiff_t turn_wind_effect_nm_stride,
                                    int32_t *status);

/**
 * The distances of the template of a base turn in procedure design.
 *
 * `V T`, `(T - 5 s)(V - w) - z` and `(T + 21 s)(V + w) + z`.
 *
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param outbound_time_s time outbound, 0 to 3600
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param fix_tolerance_nm tolerance of the fix along the track, 0 to 10 900
 * @param[out] leg_nm Length of the outbound leg in still air; may be NULL
 * @param[out] nearest_nm Nearest place of the outbound leg's end, from the fix; may be NULL
 * @param[out] farthest_nm Farthest place of the outbound leg's end, from the fix; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As published; the tables printed beside it round speeds and winds to four figures before.
 * Degenerate cases: A short time and a strong wind make the nearest place negative: past the fix.
 * Errors: A value outside its range.
 * Source: ICAO Doc 8168 Vol II (5th ed. 2006), Table I-4-3-App C-1, lines 10 to 15.
 *
 * Example: lubber_base_turn_template(157.23, 120.0, 59.0, 0.83, NULL, &value, NULL) gives 2.31
 */
int32_t lubber_base_turn_template(double true_airspeed_kt,
                                  double outbound_time_s,
                                  double wind_speed_kt,
                                  double fix_tolerance_nm,
                                  double *leg_nm,
                                  double *nearest_nm,
                                  double *farthest_nm);

/**
 * `lubber_base_turn_template` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_base_turn_template_n(size_t count,
                                   const double *true_airspeed_kt,
                                   ptrdiff_t true_airspeed_kt_stride,
                                   const double *outbound_time_s,
                                   ptrdiff_t outbound_time_s_stride,
                                   const double *wind_speed_kt,
                                   ptrdiff_t wind_speed_kt_stride,
                                   const double *fix_tolerance_nm,
                                   ptrdiff_t fix_tolerance_nm_stride,
                                   double *leg_nm,
                                   ptrdiff_t leg_nm_stride,
                                   double *nearest_nm,
                                   ptrdiff_t nearest_nm_stride,
                                   double *farthest_nm,
                                   ptrdiff_t farthest_nm_stride,
                                   int32_t *status);

/**
 * The radius of the sector that protects a base turn flown without a drawn area.
 *
 * `(V / 60 + 1.0) T + 1.5` NM; `(V / 60 + 1.9) T + 2.8` km with V in km/h.
 *
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param outbound_time_s time outbound, above 0 to 1 000 000
 * @param units in which units the formula is printed: LUBBER_DESIGN_UNITS_NON_SI, LUBBER_DESIGN_UNITS_SI
 * @param[out] base_turn_sector_nm the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: As published: the second form has the constants of the first, rounded after conversion.
 * Degenerate cases: None in the range.
 * Errors: A value outside its range.
 * Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part II Section 2 Chapter 5, 5.3; a margin of 2.0 NM is added on all sides
 * there.
 *
 * Example: lubber_base_turn_sector_nm(180.0, 120.0, LUBBER_DESIGN_UNITS_NON_SI, &value) gives 9.5
 */
int32_t lubber_base_turn_sector_nm(double true_airspeed_kt,
                                   double outbound_time_s,
                                   int32_t units,
                                   double *base_turn_sector_nm);

/**
 * `lubber_base_turn_sector_nm` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `units` is one code for all points: in which units the formula is printed: LUBBER_DESIGN_UNITS_NON_SI, LUBBER_DESIGN_UNITS_SI
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_base_turn_sector_nm_n(size_t count,
                                    const double *true_airspeed_kt,
                                    ptrdiff_t true_airspeed_kt_stride,
                                    const double *outbound_time_s,
                                    ptrdiff_t outbound_time_s_stride,
                                    int32_t units,
                                    double *base_turn_sector_nm,
                                    ptrdiff_t base_turn_sector_nm_stride,
                                    int32_t *status);

/**
 * The heading that holds a course in a wind, and the groundspeed it leaves.
 *
 * With `w` the angle from the course to where the wind comes from: wind correction `asin(Vw sin(w)/V)`,
 * groundspeed `V cos(correction) - Vw cos(w)`. All directions share one north.
 *
 * @param course_deg the course to hold, any finite number
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param wind_from_deg where the wind blows from, any finite number
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param[out] heading_deg The heading to fly, 0 to 360, from the north of the course; may be NULL
 * @param[out] groundspeed_kt The speed made good along the course; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding; in arrays 1e-12 degrees, times the wind's speed over the airspeed where that is more, and 1e-14 of the speeds.
 * Degenerate cases: In calm air the heading is the course. A wind faster than the aircraft leaves courses downwind that can be
 * held; of the two headings that hold such a course the one with the higher groundspeed is given.
 * Errors: A value outside its range, a crosswind above the airspeed, or no groundspeed left.
 * Source: The triangle of velocities; FAA-H-8083-25, Pilot's Handbook of Aeronautical Knowledge, chapter 16 (from
 * memory).
 *
 * Example: lubber_wind_triangle(90.0, 120.0, 45.0, 40.0, &value, NULL) gives 76.4
 */
int32_t lubber_wind_triangle(double course_deg,
                             double true_airspeed_kt,
                             double wind_from_deg,
                             double wind_speed_kt,
                             double *heading_deg,
                             double *groundspeed_kt);

/**
 * `lubber_wind_triangle` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_wind_triangle_n(size_t count,
                              const double *course_deg,
                              ptrdiff_t course_deg_stride,
                              const double *true_airspeed_kt,
                              ptrdiff_t true_airspeed_kt_stride,
                              const double *wind_from_deg,
                              ptrdiff_t wind_from_deg_stride,
                              const double *wind_speed_kt,
                              ptrdiff_t wind_speed_kt_stride,
                              double *heading_deg,
                              ptrdiff_t heading_deg_stride,
                              double *groundspeed_kt,
                              ptrdiff_t groundspeed_kt_stride,
                              int32_t *status);

/**
 * The wind correction that holds a course: heading less course, right positive.
 *
 * `asin(Vw sin(w)/V)` with `w` the angle from the course to where the wind comes from.
 *
 * @param course_deg the course to hold, any finite number
 * @param true_airspeed_kt true airspeed, above 0 to 5000
 * @param wind_from_deg where the wind blows from, any finite number
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param[out] wind_correction_deg the result; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: As `lubber_wind_triangle`.
 * Errors: As `lubber_wind_triangle`.
 * Source: As `lubber_wind_triangle`.
 *
 * Example: lubber_wind_correction_deg(90.0, 120.0, 45.0, 40.0, &value) gives -13.6
 */
int32_t lubber_wind_correction_deg(double course_deg,
                                   double true_airspeed_kt,
                                   double wind_from_deg,
                                   double wind_speed_kt,
                                   double *wind_correction_deg);

/**
 * `lubber_wind_correction_deg` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_wind_correction_deg_n(size_t count,
                                    const double *course_deg,
                                    ptrdiff_t course_deg_stride,
                                    const double *true_airspeed_kt,
                                    ptrdiff_t true_airspeed_kt_stride,
                                    const double *wind_from_deg,
                                    ptrdiff_t wind_from_deg_stride,
                                    const double *wind_speed_kt,
                                    ptrdiff_t wind_speed_kt_stride,
                                    double *wind_correction_deg,
                                    ptrdiff_t wind_correction_deg_stride,
                                    int32_t *status);

/**
 * The track and groundspeed that a heading makes good in a wind.
 *
 * The sum of the velocity through the air and the velocity of the air. All directions share one north.
 *
 * @param heading_deg the heading, any finite number
 * @param true_airspeed_kt true airspeed, 0 to 5000
 * @param wind_from_deg where the wind blows from, any finite number
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param[out] track_deg Direction of motion over the ground, 0 to 360; NaN where there is no motion; may be NULL
 * @param[out] groundspeed_kt Speed over the ground; may be NULL
 * @param[out] drift_deg Track less heading, right positive, -180 to 180; NaN where there is no motion; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: Where the wind cancels the airspeed there is no track and no drift (NaN). With no airspeed the track is
 * downwind.
 * Errors: A value outside its range.
 * Source: The triangle of velocities.
 *
 * Example: lubber_track_and_groundspeed(315.0, 150.0, 45.0, 30.0, &value, NULL, NULL) gives 303.7
 */
int32_t lubber_track_and_groundspeed(double heading_deg,
                                     double true_airspeed_kt,
                                     double wind_from_deg,
                                     double wind_speed_kt,
                                     double *track_deg,
                                     double *groundspeed_kt,
                                     double *drift_deg);

/**
 * `lubber_track_and_groundspeed` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_track_and_groundspeed_n(size_t count,
                                      const double *heading_deg,
                                      ptrdiff_t heading_deg_stride,
                                      const double *true_airspeed_kt,
                                      ptrdiff_t true_airspeed_kt_stride,
                                      const double *wind_from_deg,
                                      ptrdiff_t wind_from_deg_stride,
                                      const double *wind_speed_kt,
                                      ptrdiff_t wind_speed_kt_stride,
                                      double *track_deg,
                                      ptrdiff_t track_deg_stride,
                                      double *groundspeed_kt,
                                      ptrdiff_t groundspeed_kt_stride,
                                      double *drift_deg,
                                      ptrdiff_t drift_deg_stride,
                                      int32_t *status);

/**
 * The wind that an observed track and groundspeed tell, with the heading and true airspeed flown.
 *
 * The velocity over the ground less the velocity through the air. All directions share one north.
 *
 * @param heading_deg the heading, any finite number
 * @param true_airspeed_kt true airspeed, 0 to 5000
 * @param track_deg the track made good, any finite number
 * @param groundspeed_kt the groundspeed, 0 to 10 000
 * @param[out] wind_from_deg Where the wind blows from, 0 to 360; 0 in calm air; may be NULL
 * @param[out] wind_speed_kt Speed of the wind; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding; what matters is the observation. One degree of drift at 450 kt is 8 kt of wind across.
 * Degenerate cases: Calm air is 0 kt from 0 degrees, as it is reported.
 * Errors: A value outside its range, or a wind above 1000 kt.
 * Source: The triangle of velocities.
 *
 * Example: lubber_wind_from_track(104.0, 165.0, 94.0, 146.0, &value, NULL) gives 154.1
 */
int32_t lubber_wind_from_track(double heading_deg,
                               double true_airspeed_kt,
                               double track_deg,
                               double groundspeed_kt,
                               double *wind_from_deg,
                               double *wind_speed_kt);

/**
 * `lubber_wind_from_track` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_wind_from_track_n(size_t count,
                                const double *heading_deg,
                                ptrdiff_t heading_deg_stride,
                                const double *true_airspeed_kt,
                                ptrdiff_t true_airspeed_kt_stride,
                                const double *track_deg,
                                ptrdiff_t track_deg_stride,
                                const double *groundspeed_kt,
                                ptrdiff_t groundspeed_kt_stride,
                                double *wind_from_deg,
                                ptrdiff_t wind_from_deg_stride,
                                double *wind_speed_kt,
                                ptrdiff_t wind_speed_kt_stride,
                                int32_t *status);

/**
 * A wind split into its parts along and across a course, positive from ahead and from the right.
 *
 * `Vw cos(w)` and `Vw sin(w)` with `w` the angle from the course to where the wind comes from. A positive
 * crosswind asks for a correction to the right.
 *
 * @param course_deg the course, any finite number
 * @param wind_from_deg where the wind blows from, any finite number
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param[out] headwind_kt Against the course; a tailwind is negative; may be NULL
 * @param[out] crosswind_kt From the right of the course; from the left is negative; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: Calm air has two parts of zero.
 * Errors: A value outside its range.
 * Source: The two projections of a vector.
 *
 * Example: lubber_wind_components(90.0, 120.0, 20.0, &value, NULL) gives 17.3
 */
int32_t lubber_wind_components(double course_deg,
                               double wind_from_deg,
                               double wind_speed_kt,
                               double *headwind_kt,
                               double *crosswind_kt);

/**
 * `lubber_wind_components` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_wind_components_n(size_t count,
                                const double *course_deg,
                                ptrdiff_t course_deg_stride,
                                const double *wind_from_deg,
                                ptrdiff_t wind_from_deg_stride,
                                const double *wind_speed_kt,
                                ptrdiff_t wind_speed_kt_stride,
                                double *headwind_kt,
                                ptrdiff_t headwind_kt_stride,
                                double *crosswind_kt,
                                ptrdiff_t crosswind_kt_stride,
                                int32_t *status);

/**
 * The wind whose parts along and across a course are given: the inverse of `lubber_wind_components`.
 *
 * Direction `course + atan2(crosswind, headwind)`, speed the root of the sum of the squares.
 *
 * @param course_deg the course, any finite number
 * @param headwind_kt part against the course, -1000 to 1000
 * @param crosswind_kt part from the right of the course, -1000 to 1000
 * @param[out] wind_from_deg Where the wind blows from, 0 to 360; 0 in calm air; may be NULL
 * @param[out] wind_speed_kt Speed of the wind; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: Two parts of zero are calm air: 0 kt from 0 degrees.
 * Errors: A value outside its range, or a wind above 1000 kt.
 * Source: The two projections of a vector.
 *
 * Example: lubber_wind_from_components(90.0, 17.32, 10.0, &value, NULL) gives 120.0
 */
int32_t lubber_wind_from_components(double course_deg,
                                    double headwind_kt,
                                    double crosswind_kt,
                                    double *wind_from_deg,
                                    double *wind_speed_kt);

/**
 * `lubber_wind_from_components` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_wind_from_components_n(size_t count,
                                     const double *course_deg,
                                     ptrdiff_t course_deg_stride,
                                     const double *headwind_kt,
                                     ptrdiff_t headwind_kt_stride,
                                     const double *crosswind_kt,
                                     ptrdiff_t crosswind_kt_stride,
                                     double *wind_from_deg,
                                     ptrdiff_t wind_from_deg_stride,
                                     double *wind_speed_kt,
                                     ptrdiff_t wind_speed_kt_stride,
                                     int32_t *status);

/**
 * The heading and true airspeed that make good a course at a wanted groundspeed.
 *
 * The velocity over the ground less the velocity of the air; there is always one answer.
 *
 * @param course_deg the course to make good, any finite number
 * @param groundspeed_kt the groundspeed wanted, 0 to 10 000
 * @param wind_from_deg where the wind blows from, any finite number
 * @param wind_speed_kt speed of the wind, 0 to 1000
 * @param[out] heading_deg The heading to fly, 0 to 360, from the north of the course; may be NULL
 * @param[out] true_airspeed_kt The true airspeed to fly; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding.
 * Degenerate cases: A groundspeed of zero holds against the wind. A tailwind faster than the groundspeed wants the aircraft to
 * face it.
 * Errors: A value outside its range, or a true airspeed that comes out at zero (the wind alone does it) or above 5000
 * kt.
 * Source: The triangle of velocities.
 *
 * Example: lubber_airspeed_for_groundspeed(351.0, 232.0, 33.0, 47.0, &value, NULL) gives 357.7
 */
int32_t lubber_airspeed_for_groundspeed(double course_deg,
                                        double groundspeed_kt,
                                        double wind_from_deg,
                                        double wind_speed_kt,
                                        double *heading_deg,
                                        double *true_airspeed_kt);

/**
 * `lubber_airspeed_for_groundspeed` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_airspeed_for_groundspeed_n(size_t count,
                                         const double *course_deg,
                                         ptrdiff_t course_deg_stride,
                                         const double *groundspeed_kt,
                                         ptrdiff_t groundspeed_kt_stride,
                                         const double *wind_from_deg,
                                         ptrdiff_t wind_from_deg_stride,
                                         const double *wind_speed_kt,
                                         ptrdiff_t wind_speed_kt_stride,
                                         double *heading_deg,
                                         ptrdiff_t heading_deg_stride,
                                         double *true_airspeed_kt,
                                         ptrdiff_t true_airspeed_kt_stride,
                                         int32_t *status);

/**
 * The wind at an altitude between two levels: its components change evenly with altitude.
 *
 * `w = w1 + (w2 - w1)(H - H1)/(H2 - H1)` for the north and for the east component.
 *
 * @param pressure_altitude_ft where the wind is wanted, -16 420 to 262 467.2
 * @param lower_altitude_ft pressure altitude of the lower level, -16 420 to 262 467.2
 * @param lower_wind_from_deg where its wind blows from, any finite number
 * @param lower_wind_speed_kt speed of its wind, 0 to 1000
 * @param upper_altitude_ft pressure altitude of the upper level, above the lower one
 * @param upper_wind_from_deg where its wind blows from, any finite number
 * @param upper_wind_speed_kt speed of its wind, 0 to 1000
 * @param[out] wind_from_deg Where the wind blows from, 0 to 360; 0 in calm air; may be NULL
 * @param[out] wind_speed_kt Speed of the wind; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding, for winds that do change evenly.
 * Degenerate cases: Below the lower level its wind holds, and above the upper one that one's. A wind that reverses passes
 * through a calm.
 * Errors: A value outside its range, or levels that do not ascend.
 * Source: Common practice.
 *
 * Example: lubber_wind_between_levels(21000.0, 18000.0, 270.0, 40.0, 24000.0, 300.0, 60.0, &value, NULL) gives 288.1
 */
int32_t lubber_wind_between_levels(double pressure_altitude_ft,
                                   double lower_altitude_ft,
                                   double lower_wind_from_deg,
                                   double lower_wind_speed_kt,
                                   double upper_altitude_ft,
                                   double upper_wind_from_deg,
                                   double upper_wind_speed_kt,
                                   double *wind_from_deg,
                                   double *wind_speed_kt);

/**
 * `lubber_wind_between_levels` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_wind_between_levels_n(size_t count,
                                    const double *pressure_altitude_ft,
                                    ptrdiff_t pressure_altitude_ft_stride,
                                    const double *lower_altitude_ft,
                                    ptrdiff_t lower_altitude_ft_stride,
                                    const double *lower_wind_from_deg,
                                    ptrdiff_t lower_wind_from_deg_stride,
                                    const double *lower_wind_speed_kt,
                                    ptrdiff_t lower_wind_speed_kt_stride,
                                    const double *upper_altitude_ft,
                                    ptrdiff_t upper_altitude_ft_stride,
                                    const double *upper_wind_from_deg,
                                    ptrdiff_t upper_wind_from_deg_stride,
                                    const double *upper_wind_speed_kt,
                                    ptrdiff_t upper_wind_speed_kt_stride,
                                    double *wind_from_deg,
                                    ptrdiff_t wind_from_deg_stride,
                                    double *wind_speed_kt,
                                    ptrdiff_t wind_speed_kt_stride,
                                    int32_t *status);

/**
 * The wind at an altitude between two levels, by a named way of interpolating.
 *
 * By components, as `wind_between_levels`; or direction and speed each by itself, the direction by the shorter way, as it is taught for flight planning.
 * Where the wind turns little between the levels the two are alike; where it turns by 90 degrees the former has 71 percent of the speed half-way.
 *
 * @param pressure_altitude_ft where the wind is wanted, -16 420 to 262 467.2
 * @param lower_altitude_ft pressure altitude of the lower level, -16 420 to 262 467.2
 * @param lower_wind_from_deg where its wind blows from, any finite number
 * @param lower_wind_speed_kt speed of its wind, 0 to 1000
 * @param upper_altitude_ft pressure altitude of the upper level, above the lower one
 * @param upper_wind_from_deg where its wind blows from, any finite number
 * @param upper_wind_speed_kt speed of its wind, 0 to 1000
 * @param method which way: LUBBER_WIND_INTERPOLATION_COMPONENTS, LUBBER_WIND_INTERPOLATION_DIRECTION_AND_SPEED
 * @param[out] wind_from_deg Where the wind blows from, 0 to 360; 0 in calm air; may be NULL
 * @param[out] wind_speed_kt Speed of the wind; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 *
 * Accuracy: Rounding, for winds that do change so.
 * Degenerate cases: Below the lower level its wind holds, and above the upper one that one's. By direction and speed a calm counts with the direction given for it, and
 * winds straight against each other turn to the right.
 * Errors: A value outside its range, or levels that do not ascend.
 * Source: Common practice, both: components in forecasting; direction and speed in the worked answer of a Transport Canada practice examination for private
 * pilots, as a training page has it.
 *
 * Example: lubber_wind_between_levels_by_method(5500.0, 3000.0, 280.0, 25.0, 6000.0, 270.0, 28.0, LUBBER_WIND_INTERPOLATION_DIRECTION_AND_SPEED, NULL, &value) gives 27.5
 */
int32_t lubber_wind_between_levels_by_method(double pressure_altitude_ft,
                                             double lower_altitude_ft,
                                             double lower_wind_from_deg,
                                             double lower_wind_speed_kt,
                                             double upper_altitude_ft,
                                             double upper_wind_from_deg,
                                             double upper_wind_speed_kt,
                                             int32_t method,
                                             double *wind_from_deg,
                                             double *wind_speed_kt);

/**
 * `lubber_wind_between_levels_by_method` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all).
 *
 * `method` is one code for all points: which way: LUBBER_WIND_INTERPOLATION_COMPONENTS, LUBBER_WIND_INTERPOLATION_DIRECTION_AND_SPEED
 *
 * @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
 */
size_t lubber_wind_between_levels_by_method_n(size_t count,
                                              const double *pressure_altitude_ft,
                                              ptrdiff_t pressure_altitude_ft_stride,
                                              const double *lower_altitude_ft,
                                              ptrdiff_t lower_altitude_ft_stride,
                                              const double *lower_wind_from_deg,
                                              ptrdiff_t lower_wind_from_deg_stride,
                                              const double *lower_wind_speed_kt,
                                              ptrdiff_t lower_wind_speed_kt_stride,
                                              const double *upper_altitude_ft,
                                              ptrdiff_t upper_altitude_ft_stride,
                                              const double *upper_wind_from_deg,
                                              ptrdiff_t upper_wind_from_deg_stride,
                                              const double *upper_wind_speed_kt,
                                              ptrdiff_t upper_wind_speed_kt_stride,
                                              int32_t method,
                                              double *wind_from_deg,
                                              ptrdiff_t wind_from_deg_stride,
                                              double *wind_speed_kt,
                                              ptrdiff_t wind_speed_kt_stride,
                                              int32_t *status);

/**
 * Sets the usual values: calm air, 25 degrees of bank, 3 degrees per second, a roll of 5 degrees per second, at the station's
 * height, an intercept of 30 degrees, a cone of 50 degrees, the short way; courses and airspeed NaN, to be set.
 *
 * @param[out] input the structure
 * @param struct_size sizeof(lubber_course_change_input)
 * @return LUBBER_OK, or LUBBER_ERROR_STRUCT
 */
int32_t lubber_course_change_input_init(struct lubber_course_change_input *input,
                                        size_t struct_size);

/**
 * Where to begin the turn at a station so as to roll out on the outbound course, and what that turn does.
 *
 * @param input the course change
 * @param[out] result the answer, its `struct_size` set by the caller; on a failure every number is NaN and every code -1
 * @return LUBBER_OK, or a negative status
 */
int32_t lubber_course_change(const struct lubber_course_change_input *input,
                             struct lubber_course_change_result *result);

/**
 * Where the aircraft is a time after roll-in began; negative times lie on the inbound course, times beyond the duration on
 * the outbound one.
 *
 * @param input the course change, its `struct_size` set
 * @param time_s time from the beginning of roll-in, -1 000 000 to 1 000 000
 * @param[out] bearing_from_fix_deg bearing from the station, NaN over it; may be NULL
 * @param[out] distance_nm distance from the station over the ground; may be NULL
 * @param[out] heading_deg heading; may be NULL
 * @param[out] bank_deg bank, right positive; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN
 */
int32_t lubber_course_change_at(const struct lubber_course_change_input *input,
                                double time_s,
                                double *bearing_from_fix_deg,
                                double *distance_nm,
                                double *heading_deg,
                                double *bank_deg);

/**
 * Where the aircraft is a time after it passed the station, if it flies over it before turning; negative times lie on the inbound
 * course, times beyond the duration of flying over on the outbound one.
 *
 * @param input the course change, its `struct_size` set
 * @param time_s time since the station was passed, -1 000 000 to 1 000 000
 * @param[out] bearing_from_fix_deg bearing from the station, NaN over it; may be NULL
 * @param[out] distance_nm distance from the station over the ground; may be NULL
 * @param[out] heading_deg heading; may be NULL
 * @param[out] bank_deg bank, right positive; may be NULL
 * @return LUBBER_OK, or a negative status with every output NaN; where the wind leaves no way back, LUBBER_OK and NaN
 */
int32_t lubber_fly_over_at(const struct lubber_course_change_input *input,
                           double time_s,
                           double *bearing_from_fix_deg,
                           double *distance_nm,
                           double *heading_deg,
                           double *bank_deg);

/**
 * Sets the usual values; place, altitude, heading, speed and station NaN, to be set.
 *
 * @param[out] start the structure
 * @param struct_size sizeof(lubber_flight_start)
 * @return LUBBER_OK, or LUBBER_ERROR_STRUCT
 */
int32_t lubber_flight_start_init(struct lubber_flight_start *start, size_t struct_size);

/**
 * Makes a flight that holds its heading. This allocates; steering and stepping do not.
 *
 * @param start how it begins
 * @param[out] flight the flight, NULL on a failure; to be freed with lubber_flight_free
 * @return LUBBER_OK, or a negative status; a NaN is out of range here
 */
int32_t lubber_flight_new(const struct lubber_flight_start *start, struct lubber_flight **flight);

/**
 * Frees a flight.
 */
void lubber_flight_free(struct lubber_flight *flight);

/**
 * Flies on for a time, such as a sixtieth of a second; zero, a negative time, one beyond 1 000 000 s and NaN do nothing.
 *
 * @return LUBBER_OK, or a negative status
 */
int32_t lubber_flight_step(struct lubber_flight *flight,
                           double time_s);

/**
 * Where a flight is and what its receiver shows.
 *
 * @param flight the flight
 * @param[out] state the answer, its `struct_size` set by the caller; on a failure every number is NaN and every code -1
 * @return LUBBER_OK, or a negative status
 */
int32_t lubber_flight_look(const struct lubber_flight *flight,
                           struct lubber_flight_state *state);

/**
 * Tunes the receiver to another station and selects a course, from its north.
 *
 * The station's true north is the north that is carried from now on: the flight holds its heading, and the wind stays what it is in space. Steer anew.
 *
 * @return LUBBER_OK, or a negative status
 */
int32_t lubber_flight_tune(struct lubber_flight *flight,
                           double station_latitude_deg,
                           double station_longitude_deg,
                           double station_elevation_ft,
                           double station_declination_deg,
                           double course_deg);

/**
 * Holds a heading, from the carried north.
 *
 * @return LUBBER_OK, or a negative status
 */
int32_t lubber_flight_hold_heading(struct lubber_flight *flight, double heading_deg);

/**
 * Holds the heading until the DME reading of the lead, then turns onto the outbound course without looking at an instrument.
 * The reading is that of the height and the wind of this moment: ask again after a climb or in another wind.
 *
 * @param flight the flight
 * @param inbound_course_deg course flown to the station, from true north there
 * @param outbound_course_deg course flown from it, from true north there
 * @return LUBBER_OK, or a negative status
 */
int32_t lubber_flight_turn_at_station(struct lubber_flight *flight,
                                      double inbound_course_deg,
                                      double outbound_course_deg);

/**
 * Tracks a course by the needle.
 *
 * @param flight the flight
 * @param course_deg the course, from the station's north
 * @param gain degrees of heading for each degree of the needle, above 0 to 100; 4 is usual
 * @return LUBBER_OK, or a negative status
 */
int32_t lubber_flight_track(struct lubber_flight *flight, double course_deg, double gain);

/**
 * Intercepts a course, turns onto it with the right lead, then tracks it by the needle.
 *
 * @param flight the flight
 * @param course_deg the course, from the station's north
 * @param intercept_angle_deg the angle between track and course, above 0 to 90
 * @param gain as for lubber_flight_track
 * @return LUBBER_OK, or a negative status
 */
int32_t lubber_flight_intercept(struct lubber_flight *flight,
                                double course_deg,
                                double intercept_angle_deg,
                                double gain);

/**
 * Keeps a distance from the station.
 *
 * @param flight the flight
 * @param radius_nm the distance along the ground
 * @param sense LUBBER_ARC_SENSE_CLOCKWISE (1) or LUBBER_ARC_SENSE_COUNTERCLOCKWISE (-1)
 * @return LUBBER_OK, or a negative status
 */
int32_t lubber_flight_arc(struct lubber_flight *flight, double radius_nm, int32_t sense);

/**
 * Enters a racetrack at the station, from over it, and flies it round after round, its outbound leg by the clock.
 *
 * @param flight the flight
 * @param inbound_course_deg the inbound course, from true north at the station
 * @param side LUBBER_HOLDING_SIDE_RIGHT (1) or LUBBER_HOLDING_SIDE_LEFT (-1)
 * @param entry LUBBER_HOLDING_ENTRY_DIRECT (3; on the inbound course too), LUBBER_HOLDING_ENTRY_PARALLEL (1) or LUBBER_HOLDING_ENTRY_OFFSET (2), as
 * lubber_holding_entry gives it
 * @param outbound_heading_deg the heading flown outbound, from true north at the station, as lubber_holding_pattern gives it
 * @param outbound_time_s the time flown outbound with the wings level, 0 to 3600
 * @return LUBBER_OK, or a negative status
 */
int32_t lubber_flight_hold(struct lubber_flight *flight,
                           double inbound_course_deg,
                           int32_t side,
                           int32_t entry,
                           double outbound_heading_deg,
                           double outbound_time_s);

/**
 * Enters a racetrack at the station, as lubber_flight_hold, with an outbound leg that ends where the DME reading has risen to a value.
 *
 * @param outbound_dme_nm the reading, 0 to 1000
 * @return LUBBER_OK, or a negative status
 */
int32_t lubber_flight_hold_by_dme(struct lubber_flight *flight,
                                  double inbound_course_deg,
                                  int32_t side,
                                  int32_t entry,
                                  double outbound_heading_deg,
                                  double outbound_dme_nm);

/**
 * Climbs or descends to an altitude at a rate, whose sign does not matter, and levels off there.
 *
 * @return LUBBER_OK, or a negative status
 */
int32_t lubber_flight_climb_to(struct lubber_flight *flight, double altitude_ft, double climb_fpm);

/**
 * Flies through another wind from now on, from the carried north; what is steered goes on believing in the old one.
 *
 * @return LUBBER_OK, or a negative status
 */
int32_t lubber_flight_set_wind(struct lubber_flight *flight, double wind_from_deg, double wind_speed_kt);

/**
 * Flies through a wind that changes by components from one altitude to a higher one, and not beyond them, from now on.
 *
 * Directions are from the carried north. What is steered goes on believing in the old wind; what is steered afterwards believes in the wind at the
 * altitude where the flight is then.
 *
 * @return LUBBER_OK, or a negative status
 */
int32_t lubber_flight_set_wind_levels(struct lubber_flight *flight,
                                      double lower_altitude_ft,
                                      double lower_from_deg,
                                      double lower_speed_kt,
                                      double upper_altitude_ft,
                                      double upper_from_deg,
                                      double upper_speed_kt);

/**
 * Flies through winds at several levels from now on, as lubber_flight_set_wind_levels through two: they change by components from one level to
 * the next, and not beyond the lowest and the highest.
 *
 * @param flight the flight
 * @param levels the levels in ascending order, `level_count` of them, all of one size; directions are from the carried north
 * @param level_count 1 to 16
 * @return LUBBER_OK, or a negative status; lubber_wind_levels_check says which level is wrong
 */
int32_t lubber_flight_set_winds_aloft(struct lubber_flight *flight,
                                      const struct lubber_wind_level *levels,
                                      size_t level_count);

/**
 * Flies at another true airspeed from now on, above 0 to 5000.
 *
 * @return LUBBER_OK, or a negative status
 */
int32_t lubber_flight_set_airspeed(struct lubber_flight *flight, double true_airspeed_kt);

/**
 * Sets a leg of a code: numbers NaN, a station at sea level without declination, flown by, to the right, a minute outbound from wings
 * level, a 45/180 procedure turn with a minute off.
 *
 * @param[out] leg the leg
 * @param struct_size sizeof(lubber_leg)
 * @param code which leg, as in the structure
 * @return LUBBER_OK, LUBBER_ERROR_STRUCT, or LUBBER_ERROR_UNKNOWN_CHOICE for a code that is none
 */
int32_t lubber_leg_init(struct lubber_leg *leg,
                        size_t struct_size,
                        int32_t code);

/**
 * Sets the usual conditions for a speed and an altitude: calm air, level flight, 25 degrees of bank, 3 degrees per second, a roll
 * of 5, an intercept of 30 degrees, ten miles for what is ended by hand, courses that are true.
 *
 * @param[out] conditions the structure
 * @param struct_size sizeof(lubber_leg_conditions)
 * @param true_airspeed_kt true airspeed
 * @param altitude_ft altitude at the first fix
 * @return LUBBER_OK, or LUBBER_ERROR_STRUCT
 */
int32_t lubber_leg_conditions_init(struct lubber_leg_conditions *conditions,
                                   size_t struct_size,
                                   double true_airspeed_kt,
                                   double altitude_ft);

/**
 * Flies a sequence of legs and gives the segments of its path.
 *
 * @param legs the legs, `leg_count` of them, all of one size
 * @param conditions what they are flown with
 * @param[out] segments room for `capacity` segments, the `struct_size` of the first set by the caller and taken for all; may be
 * NULL if that is 0
 * @param[out] segment_count how many segments there are, which may be more than fit: call again with more room
 * @param[out] failed_leg the leg that could not be flown, is none or has a number out of range, counted from 1, 0 if none; may be NULL
 * @return LUBBER_OK, or a negative status; segment_count is then 0
 */
int32_t lubber_legs_fly(const struct lubber_leg *legs,
                        size_t leg_count,
                        const struct lubber_leg_conditions *conditions,
                        struct lubber_path_segment *segments,
                        size_t capacity,
                        size_t *segment_count,
                        size_t *failed_leg);

/**
 * Flies a sequence of legs and gives points along its path, no farther apart than a spacing.
 *
 * @param legs the legs, `leg_count` of them, all of one size
 * @param conditions what they are flown with
 * @param spacing_nm the spacing, above 0; zero, less or NaN gives the ends of the segments only. No segment gets more than 10 000
 * points
 * @param[out] latitudes_deg room for `capacity` latitudes; may be NULL if that is 0
 * @param[out] longitudes_deg room for as many longitudes
 * @param[out] point_count how many points there are, which may be more than fit: call again with more room
 * @return LUBBER_OK, or a negative status; point_count is then 0
 */
int32_t lubber_legs_points(const struct lubber_leg *legs,
                           size_t leg_count,
                           const struct lubber_leg_conditions *conditions,
                           double spacing_nm,
                           double *latitudes_deg,
                           double *longitudes_deg,
                           size_t capacity,
                           size_t *point_count);

/**
 * Sets a station at a place: at sea level without declination, with a cone of 50 degrees.
 *
 * @param[out] station the station
 * @param struct_size sizeof(lubber_path_station)
 * @param latitude_deg its latitude
 * @param longitude_deg its longitude
 * @return LUBBER_OK, or LUBBER_ERROR_STRUCT
 */
int32_t lubber_path_station_init(struct lubber_path_station *station,
                                 size_t struct_size,
                                 double latitude_deg,
                                 double longitude_deg);

/**
 * Sets the usual surroundings: no station, the standard atmosphere, the holding speeds of ICAO.
 *
 * @param[out] surroundings the structure
 * @param struct_size sizeof(lubber_path_surroundings)
 * @return LUBBER_OK, or LUBBER_ERROR_STRUCT
 */
int32_t lubber_path_surroundings_init(struct lubber_path_surroundings *surroundings, size_t struct_size);

/**
 * Briefs a sequence of legs and gives what is flown on each.
 *
 * @param legs the legs, `leg_count` of them, all of one size
 * @param conditions what they are flown with
 * @param surroundings what they are briefed in; NULL for the usual
 * @param[out] path_legs room for `capacity` legs, the `struct_size` of the first set by the caller and taken for all; may be NULL if that
 * is 0
 * @param[out] path_leg_count how many there are: as many as were given; if they do not fit, call again with more room
 * @param[out] failed_leg the leg that could not be flown, is none or has a number out of range, counted from 1, 0 if none; may be NULL
 * @return LUBBER_OK, or a negative status; path_leg_count is then 0
 */
int32_t lubber_path_legs(const struct lubber_leg *legs,
                         size_t leg_count,
                         const struct lubber_leg_conditions *conditions,
                         const struct lubber_path_surroundings *surroundings,
                         struct lubber_path_leg *path_legs,
                         size_t capacity,
                         size_t *path_leg_count,
                         size_t *failed_leg);

/**
 * Briefs a sequence of legs and gives its turns, in their order along the path.
 *
 * @param legs the legs, `leg_count` of them, all of one size
 * @param conditions what they are flown with
 * @param surroundings what they are briefed in; NULL for the usual
 * @param[out] turns room for `capacity` turns, as in lubber_path_legs; may be NULL if that is 0
 * @param[out] turn_count how many there are, which may be more than fit: call again with more room
 * @param[out] failed_leg as in lubber_path_legs
 * @return LUBBER_OK, or a negative status; turn_count is then 0
 */
int32_t lubber_path_turns(const struct lubber_leg *legs,
                          size_t leg_count,
                          const struct lubber_leg_conditions *conditions,
                          const struct lubber_path_surroundings *surroundings,
                          struct lubber_path_turn *turns,
                          size_t capacity,
                          size_t *turn_count,
                          size_t *failed_leg);

/**
 * Briefs a sequence of legs and gives what the stations are seen as: of each turn every station's reading where it begins, then
 * every station's where it rolls out.
 *
 * @param legs the legs, `leg_count` of them, all of one size
 * @param conditions what they are flown with
 * @param surroundings what they are briefed in; NULL for the usual, which has no station
 * @param[out] readings room for `capacity` readings, as in lubber_path_legs; may be NULL if that is 0
 * @param[out] reading_count how many there are, which may be more than fit: call again with more room
 * @param[out] failed_leg as in lubber_path_legs
 * @return LUBBER_OK, or a negative status; reading_count is then 0
 */
int32_t lubber_path_readings(const struct lubber_leg *legs,
                             size_t leg_count,
                             const struct lubber_leg_conditions *conditions,
                             const struct lubber_path_surroundings *surroundings,
                             struct lubber_path_reading *readings,
                             size_t capacity,
                             size_t *reading_count,
                             size_t *failed_leg);

/**
 * Briefs a sequence of legs and gives what a crew should know before flying it: an arc that takes more bank than the limit, a turn that
 * begins in a station's cone, a station that is not received where a turn begins or rolls out or where the leg ends that it ends, a
 * racetrack flown faster than the rule allows.
 *
 * @param legs the legs, `leg_count` of them, all of one size
 * @param conditions what they are flown with
 * @param surroundings what they are briefed in; NULL for the usual
 * @param[out] checks room for `capacity` checks, as in lubber_path_legs; may be NULL if that is 0
 * @param[out] check_count how many have found something, which may be more than fit: call again with more room
 * @param[out] failed_leg as in lubber_path_legs
 * @return LUBBER_OK, or a negative status; check_count is then 0
 */
int32_t lubber_path_checks(const struct lubber_leg *legs,
                           size_t leg_count,
                           const struct lubber_leg_conditions *conditions,
                           const struct lubber_path_surroundings *surroundings,
                           struct lubber_path_check *checks,
                           size_t capacity,
                           size_t *check_count,
                           size_t *failed_leg);

/**
 * What a check says of a leg, without its numbers: English, valid for ever, "unknown check" for no LUBBER_PATH_CHECK_KIND_ code.
 */
const char *lubber_path_check_text(int32_t kind);

/**
 * Sets a station: at sea level without declination, with a cone of 50 degrees, the wind of the conditions, and the short way to turn.
 *
 * @param[out] fix the structure
 * @param struct_size sizeof(lubber_route_fix)
 * @param latitude_deg latitude of the station
 * @param longitude_deg longitude of the station
 * @return LUBBER_OK, or LUBBER_ERROR_STRUCT
 */
int32_t lubber_route_fix_init(struct lubber_route_fix *fix,
                              size_t struct_size,
                              double latitude_deg,
                              double longitude_deg);

/**
 * Sets the usual conditions for a speed and an altitude: standard air, calm, 25 degrees of bank, 3 degrees per second, a roll of 5, an
 * intercept of 30 degrees.
 *
 * @param[out] conditions the structure
 * @param struct_size sizeof(lubber_route_conditions)
 * @param true_airspeed_kt true airspeed
 * @param pressure_altitude_ft pressure altitude, held all the way
 * @return LUBBER_OK, or LUBBER_ERROR_STRUCT
 */
int32_t lubber_route_conditions_init(struct lubber_route_conditions *conditions,
                                     size_t struct_size,
                                     double true_airspeed_kt,
                                     double pressure_altitude_ft);

/**
 * Briefs a route from station to station: its legs, and the turns at the stations between, with the reading at which each begins.
 *
 * @param fixes the stations in the order flown, `fix_count` of them, all of one size
 * @param fix_count how many; fewer than two make no leg, fewer than three no turn
 * @param conditions what the route is flown with
 * @param[out] legs room for `leg_capacity` legs, one fewer than the stations, the `struct_size` of the first set by the caller and taken for
 * all; may be NULL if that is 0
 * @param leg_capacity for how many legs there is room
 * @param[out] turns room for `turn_capacity` turns, two fewer than the stations, likewise
 * @param turn_capacity for how many turns there is room
 * @param[out] summary the whole, its `struct_size` set by the caller: how many legs and turns there are, which may be more than fit, and on a
 * failure where it lies
 * @return LUBBER_OK, or a negative status; no leg and no turn is then written
 */
int32_t lubber_route_brief(const struct lubber_route_fix *fixes,
                           size_t fix_count,
                           const struct lubber_route_conditions *conditions,
                           struct lubber_route_leg *legs,
                           size_t leg_capacity,
                           struct lubber_route_turn *turns,
                           size_t turn_capacity,
                           struct lubber_route_summary *summary);

/**
 * How sure each turn of a route is: what lubber_course_change_sureness says of it.
 *
 * @param fixes the stations, as of lubber_route_brief
 * @param fix_count how many
 * @param conditions what the route is flown with
 * @param errors the errors
 * @param limit_nm the overshoot that matters
 * @param confidence the chance with which it is to be kept, between 0 and 1
 * @param trials how many of each turn are flown, 1 to 10 000 000
 * @param seed the same seed gives the same trials
 * @param[out] sureness room for `capacity` turns, the `struct_size` of the first set by the caller and taken for all; may be NULL if that is 0
 * @param capacity for how many turns there is room
 * @param[out] turn_count how many turns there are, which may be more than fit
 * @return LUBBER_OK, or a negative status; turn_count is then 0
 */
int32_t lubber_route_sureness(const struct lubber_route_fix *fixes,
                              size_t fix_count,
                              const struct lubber_route_conditions *conditions,
                              const struct lubber_error_model *errors,
                              double limit_nm,
                              double confidence,
                              uint64_t trials,
                              uint64_t seed,
                              struct lubber_sureness *sureness,
                              size_t capacity,
                              size_t *turn_count);

/**
 * Points along what is flown straight on a leg of a route, no farther apart than a spacing, its ends among them.
 *
 * @param fixes the stations, as of lubber_route_brief
 * @param fix_count how many
 * @param conditions what the route is flown with
 * @param leg which leg, counted from 0
 * @param spacing_nm the spacing, above 0; zero, less or NaN gives the ends only. No leg gets more than 10 001 points
 * @param[out] latitudes_deg room for `capacity` latitudes; may be NULL if that is 0
 * @param[out] longitudes_deg room for as many longitudes
 * @param capacity for how many points there is room
 * @param[out] point_count how many points there are, which may be more than fit: call again with more room; 0 for a leg that is too short for
 * its turns, and for one that is none
 * @return LUBBER_OK, or a negative status; point_count is then 0
 */
int32_t lubber_route_leg_points(const struct lubber_route_fix *fixes,
                                size_t fix_count,
                                const struct lubber_route_conditions *conditions,
                                size_t leg,
                                double spacing_nm,
                                double *latitudes_deg,
                                double *longitudes_deg,
                                size_t capacity,
                                size_t *point_count);

/**
 * Points of a turn of a route as it is flown, at even times: 41 of them.
 *
 * @param fixes the stations, as of lubber_route_brief
 * @param fix_count how many
 * @param conditions what the route is flown with
 * @param turn which turn, counted from 0
 * @param[out] latitudes_deg room for `capacity` latitudes; may be NULL if that is 0
 * @param[out] longitudes_deg room for as many longitudes
 * @param capacity for how many points there is room
 * @param[out] point_count how many points there are, which may be more than fit; 0 for a turn that is none
 * @return LUBBER_OK, or a negative status; point_count is then 0
 */
int32_t lubber_route_turn_points(const struct lubber_route_fix *fixes,
                                 size_t fix_count,
                                 const struct lubber_route_conditions *conditions,
                                 size_t turn,
                                 double *latitudes_deg,
                                 double *longitudes_deg,
                                 size_t capacity,
                                 size_t *point_count);

/**
 * Sets the errors that are usual where nothing better is known: half a VOR's tolerance en route with flying by the needle, half the total system error of a DME by
 * Annex 10, a crew's reaction of 0 to 6 s by ICAO Doc 8168, and for wind, airspeed, bank and height common practice.
 *
 * @param[out] errors the structure
 * @param struct_size sizeof(lubber_error_model)
 * @return LUBBER_OK, or LUBBER_ERROR_STRUCT
 */
int32_t lubber_error_model_init(struct lubber_error_model *errors,
                                size_t struct_size);

/**
 * How sure a course change is that is begun by its DME reading: by trials, and by linear propagation beside them.
 *
 * @param input the course change
 * @param errors the errors
 * @param limit_nm the overshoot that matters
 * @param confidence the chance with which it is to be kept, between 0 and 1
 * @param trials how many are flown, 1 to 10 000 000; a million takes about a second, and eight bytes each while it runs
 * @param seed the same seed gives the same trials
 * @param[out] result the answer, its `struct_size` set by the caller; on a failure every number is NaN
 * @return LUBBER_OK, or a negative status
 */
int32_t lubber_course_change_sureness(const struct lubber_course_change_input *input,
                                      const struct lubber_error_model *errors,
                                      double limit_nm,
                                      double confidence,
                                      uint64_t trials,
                                      uint64_t seed,
                                      struct lubber_sureness *result);

/**
 * The overshoots of the trials that lubber_course_change_sureness makes its answer of with the same seed, as to draw them.
 *
 * @param input the course change
 * @param errors the errors
 * @param seed the same seed gives the same trials
 * @param trials how many are flown
 * @param[out] overshoots_nm room for as many numbers; on a failure every one is NaN
 * @return LUBBER_OK, or a negative status
 */
int32_t lubber_course_change_overshoots(const struct lubber_course_change_input *input,
                                        const struct lubber_error_model *errors,
                                        uint64_t seed,
                                        size_t trials,
                                        double *overshoots_nm);

/**
 * The version of the library, such as "0.1.0".
 */
const char *lubber_version(void);

/**
 * The version of the binary interface: programs built against another number must be built again.
 *
 * Before 1.0 it is the minor version of the library, later the major one; it is the number at the end of the soname.
 */
int32_t lubber_abi_version(void);

/**
 * Checks winds by level as what flies through them does, and says which level is wrong.
 *
 * @param levels the levels in ascending order, `level_count` of them, all of one size
 * @param level_count 1 to 1000
 * @param[out] failed_level the first level that is wrong, counted from 1, 0 if none; may be NULL
 * @return LUBBER_OK, LUBBER_ERROR_WIND_LEVELS for a count out of range, LUBBER_ERROR_LEVELS_NOT_ASCENDING, the status of a value out
 * of its range, or LUBBER_ERROR_STRUCT
 */
int32_t lubber_wind_levels_check(const struct lubber_wind_level *levels,
                                 size_t level_count,
                                 size_t *failed_level);

#ifdef __cplusplus
}  // extern "C"
#endif  // __cplusplus

#endif  /* LUBBERLINE_H */
