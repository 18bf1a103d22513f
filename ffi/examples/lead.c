#include <stdio.h>
#include "lubberline.h"

int main(void)
{
    double dme_nm;
    int32_t status = lubber_dme_at_roll_in_nm(40.0, 110.0, 430.0, 270.0, 60.0, 25.0, 3.0, 5.0, 33000.0, &dme_nm);
    if (status == LUBBER_OK)
        printf("begin at %.1f DME\n", dme_nm);
    return status;
}

/* Prints
 * begin at 7.7 DME
 */
