/* Three norths: a station's radials, the compass and the chart's grid, and how they differ. */
#include <stdio.h>
#include "lubberline.h"

int main(void)
{
    /* Ostvik was aligned when the variation there was 6 degrees west, and the field has moved since; east is positive. */
    const double declination_deg = -6.0, year = 2026.5;

    double variation_deg, yearly_deg, uncertainty_deg;
    lubber_magnetic_field(61.25, -11.50, 420.0, year, &variation_deg, NULL, NULL, NULL, NULL, NULL, NULL, &yearly_deg, NULL,
                          NULL, NULL, NULL, NULL, NULL, &uncertainty_deg, NULL, NULL, NULL);
    printf("variation at Ostvik: %+.2f degrees, %+.2f a year, uncertain by %.2f\n", variation_deg, yearly_deg, uncertainty_deg);

    double misalignment_deg;
    lubber_station_misalignment_deg(declination_deg, variation_deg, &misalignment_deg);
    printf("a radial reads %+.2f degrees from the magnetic bearing\n", misalignment_deg);

    double true_deg, magnetic_deg, grid_deg, convergence_deg;
    lubber_true_from_radial_deg(120.0, declination_deg, &true_deg);
    lubber_magnetic_from_true_deg(true_deg, variation_deg, &magnetic_deg);
    lubber_lambert_grid_convergence_deg(-11.50, -9.0, 58.0, 63.0, &convergence_deg);
    lubber_grid_from_true_deg(true_deg, convergence_deg, &grid_deg);
    printf("radial 120: true %05.1f, magnetic %05.1f, on the chart's grid %05.1f\n", true_deg, magnetic_deg, grid_deg);
    return 0;
}

/* Prints
 * variation at Ostvik: -5.02 degrees, +0.25 a year, uncertain by 0.45
 * a radial reads +0.98 degrees from the magnetic bearing
 * radial 120: true 114.0, magnetic 119.0, on the chart's grid 116.2
 */
