/* Arrays: strides, one value for all points, backwards, in place, and the status of each point. */

#include "expect.h"

struct fix {
    char ident[5];
    double ground_distance_nm;
    double height_ft;
};

int main(void)
{
    struct fix fixes[3] = {{"ONE", 5.0, 30000.0}, {"TWO", -1.0, 30000.0}, {"TRE", 50.0, NAN}};
    double slants[3];
    int32_t status[3];
    size_t failures = lubber_slant_range_nm_n(3, &fixes[0].ground_distance_nm, sizeof fixes[0], &fixes[0].height_ft,
                                              sizeof fixes[0], slants, sizeof slants[0], status);
    double one;
    EXPECT(failures == 1);
    EXPECT(lubber_slant_range_nm(5.0, 30000.0, &one) == LUBBER_OK);
    EXPECT_NEAR(slants[0], one, 1e-12);
    EXPECT(status[1] == LUBBER_ERROR_GROUND_DISTANCE && isnan(slants[1]));
    EXPECT(status[2] == LUBBER_OK && isnan(slants[2]));

    /* One height for all, the distances backwards, and the answer written over them. */
    double values[4] = {10.0, 20.0, 30.0, 40.0};
    double height_ft = 9000.0;
    failures = lubber_slant_range_nm_n(4, &values[3], -(ptrdiff_t)sizeof(double), &height_ft, 0, &values[3],
                                       -(ptrdiff_t)sizeof(double), NULL);
    EXPECT(failures == 0);
    EXPECT(lubber_slant_range_nm(40.0, 9000.0, &one) == LUBBER_OK);
    EXPECT_NEAR(values[3], one, 1e-12);

    /* Nothing wanted, nothing written; nothing to do, nothing read. */
    EXPECT(lubber_slant_range_nm(5.0, 30000.0, NULL) == LUBBER_OK);
    EXPECT(lubber_slant_range_nm_n(0, NULL, 8, NULL, 8, NULL, 8, NULL) == 0);

    /* Several outputs, of which two are wanted; a choice is one code for all points. */
    double entry_nm[2], radials[2] = {20.0, 300.0}, arc_nm = 12.0, speed_kt = 210.0, calm = 0.0, bank = 25.0, rate = 3.0,
                        roll = 5.0, heading_change_deg[2];
    failures = lubber_arc_entry_n(2, radials, sizeof(double), LUBBER_RADIAL_FLOWN_INBOUND, &arc_nm, 0,
                                  LUBBER_ARC_SENSE_CLOCKWISE, &speed_kt, 0, &calm, 0, &calm, 0, &bank, 0, &rate, 0, &roll, 0, NULL,
                                  0, entry_nm, sizeof(double), NULL, 0, NULL, 0, NULL, 0, heading_change_deg, sizeof(double), NULL,
                                  0, NULL);
    EXPECT(failures == 0);
    EXPECT_NEAR(entry_nm[0], entry_nm[1], 1e-9);
    EXPECT(heading_change_deg[0] < -60.0 && heading_change_deg[0] > -120.0);
    return expect_close();
}
