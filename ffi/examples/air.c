/* In the air: what the instruments show, what it means in thin and warm air, and how high that is above a station. */
#include <stdio.h>
#include "lubberline.h"

int main(void)
{
    /* 280 kt on the airspeed indicator at flight level 350, 7 degrees warmer than standard. */
    const double cas_kt = 280.0, pressure_altitude_ft = 35000.0, isa_deviation_k = 7.0;

    double tas_kt, mach, crossover_ft;
    lubber_tas_from_cas_kt(cas_kt, pressure_altitude_ft, isa_deviation_k, &tas_kt);
    lubber_mach_from_cas(cas_kt, pressure_altitude_ft, &mach);
    lubber_crossover_altitude_ft(cas_kt, 0.78, &crossover_ft);
    printf("%.0f KCAS is %.0f KTAS, Mach %.3f\n", cas_kt, tas_kt, mach);
    printf("it is Mach 0.78 at FL%03.0f\n", crossover_ft / 100.0);

    double temperature_degc, pressure_hpa;
    lubber_standard_atmosphere(pressure_altitude_ft, isa_deviation_k, &temperature_degc, &pressure_hpa, NULL, NULL);
    printf("outside: %.1f degrees Celsius, %.1f hPa\n", temperature_degc, pressure_hpa);

    /* The DME of a station at 420 ft, whose altimeter setting is 1004 hPa, measures from this height. */
    double true_altitude_ft, height_ft;
    lubber_true_altitude_ft(pressure_altitude_ft, 1004.0, 420.0, isa_deviation_k, &true_altitude_ft);
    lubber_height_above_station_ft(pressure_altitude_ft, 1004.0, 420.0, isa_deviation_k, &height_ft);
    printf("true altitude %.0f ft, %.0f ft above Ostvik\n", true_altitude_ft, height_ft);
    return 0;
}

/* Prints
 * 280 KCAS is 481 KTAS, Mach 0.821
 * it is Mach 0.78 at FL325
 * outside: -47.3 degrees Celsius, 238.4 hPa
 * true altitude 35764 ft, 35344 ft above Ostvik
 */
