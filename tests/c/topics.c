/* One short use of each part of the library, as a C program would write it. */

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
    /* FAA-H-8083-25 chapter 16, The Wind Triangle (from memory): heading 076, groundspeed 88. */
    EXPECT(lubber_wind_triangle(90.0, 120.0, 45.0, 40.0, &heading_deg, &groundspeed_kt) == LUBBER_OK);
    EXPECT_NEAR(heading_deg, 76.0, 1.0);
    EXPECT_NEAR(groundspeed_kt, 88.0, 1.0);
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

int main(void)
{
    earth();
    air();
    wind();
    turn();
    return expect_close();
}
