/* Many points in one call: the values may lie inside structures, be shared by all points, or run backwards. */
#include <stdio.h>
#include "lubberline.h"

struct fix {
    char name[8];
    double ground_distance_nm;
    double dme_nm;
};

int main(void)
{
    struct fix fixes[] = {{"ALDER", 5.0, 0.0}, {"BIRCH", -1.0, 0.0}, {"CEDAR", 40.0, 0.0}, {"ELDER", 120.0, 0.0}};
    const double height_ft = 30000.0;
    int32_t status[4];

    /* A stride is the distance in bytes from one value to the next: a structure for the fixes, 0 for the one height. */
    size_t failed = lubber_slant_range_nm_n(4, &fixes[0].ground_distance_nm, sizeof fixes[0], &height_ft, 0, &fixes[0].dme_nm,
                                            sizeof fixes[0], status);
    printf("%zu failed\n", failed);
    for (int index = 0; index < 4; index++)
        if (status[index] == LUBBER_OK)
            printf("%s: %.2f DME\n", fixes[index].name, fixes[index].dme_nm);
        else
            printf("%s: %s\n", fixes[index].name, lubber_status_text(status[index]));

    /* Backwards and in place: the courses of the way out become those of the way home. */
    double out_deg[] = {114.0, 167.0, 146.0}, home_deg[3], half_turn_deg = 180.0;
    lubber_magnetic_from_true_deg_n(3, &out_deg[2], -(ptrdiff_t)sizeof(double), &half_turn_deg, 0, home_deg, sizeof(double),
                                    NULL);
    printf("home on %.0f, %.0f, %.0f\n", home_deg[0], home_deg[1], home_deg[2]);
    lubber_magnetic_from_true_deg_n(3, home_deg, sizeof(double), &(double){-6.0}, 0, home_deg, sizeof(double), NULL);
    printf("by a compass with 6 degrees west: %.0f, %.0f, %.0f\n", home_deg[0], home_deg[1], home_deg[2]);
    return 0;
}

/* Prints
 * 1 failed
 * ALDER: 7.03 DME
 * BIRCH: ground distance out of range; allowed: from 0.0 to 10900.0 NM
 * CEDAR: 40.33 DME
 * ELDER: 120.18 DME
 * home on 326, 347, 294
 * by a compass with 6 degrees west: 332, 353, 300
 */
