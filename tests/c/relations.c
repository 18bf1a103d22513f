/* What one function says agrees with what another says, and with what can be worked out by hand. */

#include "expect.h"

static void earth(void)
{
    double distance_nm, bearing_deg, latitude_deg, longitude_deg;
    EXPECT(lubber_geodesic_inverse(61.0, -12.0, 62.5, -9.0, &distance_nm, &bearing_deg, NULL) == LUBBER_OK);
    EXPECT(lubber_geodesic_direct(61.0, -12.0, bearing_deg, distance_nm, &latitude_deg, &longitude_deg, NULL) == LUBBER_OK);
    EXPECT_NEAR(latitude_deg, 62.5, 1e-10);
    EXPECT_NEAR(longitude_deg, -9.0, 1e-10);
}

static void air(void)
{
    double tas_kt, cas_kt, mach;
    EXPECT(lubber_tas_from_cas_kt(280.0, 35000.0, 0.0, &tas_kt) == LUBBER_OK);
    EXPECT(lubber_cas_from_tas_kt(tas_kt, 35000.0, 0.0, &cas_kt) == LUBBER_OK);
    EXPECT_NEAR(cas_kt, 280.0, 1e-9);
    /* FORMULAS: 280 kt calibrated at 35 000 ft is Mach 0.8213. */
    EXPECT(lubber_mach_from_cas(280.0, 35000.0, &mach) == LUBBER_OK);
    EXPECT_NEAR(mach, 0.8213, 5e-5);
}

static void wind(void)
{
    double heading_deg, groundspeed_kt;
    double track_deg, back_kt;
    EXPECT(lubber_wind_triangle(90.0, 120.0, 45.0, 40.0, &heading_deg, &groundspeed_kt) == LUBBER_OK);
    EXPECT(lubber_track_and_groundspeed(heading_deg, 120.0, 45.0, 40.0, &track_deg, &back_kt, NULL) == LUBBER_OK);
    EXPECT_NEAR(track_deg, 90.0, 1e-9);
    EXPECT_NEAR(back_kt, groundspeed_kt, 1e-9);
    EXPECT(lubber_wind_triangle(90.0, 30.0, 0.0, 40.0, &heading_deg, &groundspeed_kt) == LUBBER_ERROR_WIND_TOO_STRONG);
    EXPECT(isnan(heading_deg) && isnan(groundspeed_kt));
}

static void turn(void)
{
    double radius_nm, bank_deg;
    /* ICAO Doc 8168 Vol II (5th ed. 2006), Table I-4-3-App C-1: 157.23 kt at 3 deg/s, 0.83 NM. */
    EXPECT(lubber_bank_for_rate_deg(157.23, 3.0, &bank_deg) == LUBBER_OK);
    EXPECT(lubber_turn_radius_nm(157.23, bank_deg, &radius_nm) == LUBBER_OK);
    EXPECT_NEAR(radius_nm, 0.83, 0.005);
}

static void altimetry(void)
{
    double indicated_ft, pressure_altitude_ft;
    /* At the standard setting an altimeter shows pressure altitude. */
    EXPECT(lubber_indicated_altitude_ft(9000.0, 1013.25, &indicated_ft) == LUBBER_OK);
    EXPECT_NEAR(indicated_ft, 9000.0, 1e-9);
    EXPECT(lubber_pressure_altitude_ft(9000.0, 990.0, &pressure_altitude_ft) == LUBBER_OK);
    EXPECT(pressure_altitude_ft > 9500.0 && pressure_altitude_ft < 9800.0);
    EXPECT(lubber_indicated_altitude_ft(9000.0, -5.0, &indicated_ft) == LUBBER_ERROR_ALTIMETER_SETTING);
}

static void timing(void)
{
    double time_s, distance_nm;
    EXPECT(lubber_time_to_fly_s(60.0, 120.0, &time_s) == LUBBER_OK);
    EXPECT_NEAR(time_s, 1800.0, 1e-9);
    EXPECT(lubber_distance_flown_nm(120.0, 1800.0, &distance_nm) == LUBBER_OK);
    EXPECT_NEAR(distance_nm, 60.0, 1e-9);
}

static void station(void)
{
    double radial_deg, dme_nm, ground_distance_nm, elevation_angle_deg, slant_nm, cone_nm;
    /* Due east of a station on the equator whose north points 10 degrees west of true. */
    EXPECT(lubber_observe(0.0, 20.0, 0.0, -10.0, 0.0, 20.5, 30000.0, &radial_deg, &dme_nm, &ground_distance_nm,
                          &elevation_angle_deg) == LUBBER_OK);
    EXPECT_NEAR(radial_deg, 100.0, 1e-9);
    /* Half a degree of an equator of 6378.137 km. */
    EXPECT_NEAR(ground_distance_nm, 6378.137 / 1.852 * acos(-1.0) / 360.0, 1e-9);
    EXPECT(lubber_slant_range_nm(ground_distance_nm, 30000.0, &slant_nm) == LUBBER_OK);
    EXPECT_NEAR(dme_nm, slant_nm, 0.005);
    EXPECT(dme_nm < ground_distance_nm + 30000.0 * 0.3048 / 1852.0);
    EXPECT(elevation_angle_deg > 8.0 && elevation_angle_deg < 10.0);
    /* Overhead a nautical mile up, DME shows a mile and no radial. */
    EXPECT(lubber_observe(0.0, 20.0, 0.0, 0.0, 0.0, 20.0, 1852.0 / 0.3048, &radial_deg, &dme_nm, NULL, NULL) == LUBBER_OK);
    EXPECT_NEAR(dme_nm, 1.0, 1e-9);
    EXPECT(isnan(radial_deg));
    EXPECT(lubber_cone_radius_nm(30000.0, 50.0, &cone_nm) == LUBBER_OK);
    EXPECT_NEAR(cone_nm, 30000.0 * 0.3048 / 1852.0 * tan(50.0 * acos(-1.0) / 180.0), 0.05);
}

static void lead(void)
{
    double lead_nm, radius_nm, anticipation_nm, rule_nm, dme_nm;
    /* Still air and an instant roll: the lead is the distance of turn anticipation. */
    EXPECT(lubber_turn_radius_nm(300.0, 25.0, &radius_nm) == LUBBER_OK);
    EXPECT(lubber_turn_anticipation_nm(radius_nm, 90.0, &anticipation_nm) == LUBBER_OK);
    EXPECT(lubber_lead_nm(0.0, 90.0, 300.0, 0.0, 0.0, 25.0, 3.0, INFINITY, &lead_nm) == LUBBER_OK);
    EXPECT_NEAR(lead_nm, anticipation_nm, 1e-9);
    EXPECT_NEAR(lead_nm, radius_nm, 1e-9);
    /* The reading to turn at is the slant range there. */
    EXPECT(lubber_dme_at_roll_in_nm(0.0, 90.0, 300.0, 0.0, 0.0, 25.0, 3.0, INFINITY, 20000.0, &dme_nm) == LUBBER_OK);
    EXPECT_NEAR(dme_nm * dme_nm, lead_nm * lead_nm + pow(20000.0 * 0.3048 / 1852.0, 2.0), 0.02);
    /* Common practice: a third of a mile for each 60 kt; at 180 kt that is within 5 percent of the standard-rate radius. */
    EXPECT(lubber_rule_lead_nm(180.0, 90.0, 0.0, &rule_nm) == LUBBER_OK);
    EXPECT(lubber_radius_at_rate_nm(180.0, 3.0, &radius_nm) == LUBBER_OK);
    EXPECT_NEAR(rule_nm, 1.0, 1e-9);
    EXPECT_NEAR(radius_nm, 1.0, 0.05);
}

static void arc(void)
{
    double at_roll_in_nm, still_nm, radius_nm;
    EXPECT(lubber_turn_radius_nm(210.0, 25.0, &radius_nm) == LUBBER_OK);
    EXPECT(lubber_arc_entry_inbound_nm(12.0, radius_nm, &still_nm) == LUBBER_OK);
    EXPECT(lubber_arc_entry(200.0, LUBBER_RADIAL_FLOWN_INBOUND, 12.0, LUBBER_ARC_SENSE_CLOCKWISE, 210.0, 0.0, 0.0, 25.0, 1000.0,
                            INFINITY, NULL, &at_roll_in_nm, NULL, NULL, NULL, NULL, NULL) == LUBBER_OK);
    EXPECT_NEAR(at_roll_in_nm, still_nm, 1e-6);
}

int main(void)
{
    earth();
    air();
    altimetry();
    wind();
    timing();
    turn();
    station();
    lead();
    arc();
    return expect_close();
}
