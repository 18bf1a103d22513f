/* Generated from core/src/plain; do not edit. To renew: cargo run -p lubberline-generate */

#ifndef GENERATED_DISPATCH_H
#define GENERATED_DISPATCH_H

#include <math.h>

#include "lubberline.h"

enum { MOST_OPERANDS = 24 };

/* A function of the library; numbers and codes of choices alike are given as doubles. */
struct dispatch {
    const char *name;
    int inputs;
    int outputs;
    /* One letter for each input: n for a number, c for a choice. */
    const char *kinds;
    const char *output_names[MOST_OPERANDS];
    /* Whether arrays have a loop of their own, which may round otherwise than a single call. */
    int own_loop;
    /* The arguments of the first example of its documentation. */
    double example[MOST_OPERANDS];
    int32_t (*call)(const double *in, double *out);
    /* Arrays with their strides in bytes; of a choice the first value counts. */
    size_t (*many)(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                   const ptrdiff_t *out_stride, int32_t *status);
};

static int32_t call_radial_tolerance_deg(const double *in, double *out)
{
    return lubber_radial_tolerance_deg((int32_t)in[0], &out[0]);
}

static size_t many_radial_tolerance_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_radial_tolerance_deg_n(count, (int32_t)in[0][0], out[0], out_stride[0], status);
}

static int32_t call_radial_error(const double *in, double *out)
{
    return lubber_radial_error(in[0], in[1], in[2], in[3], &out[0], &out[1]);
}

static size_t many_radial_error(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_radial_error_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], out[0], out_stride[0], out[1], out_stride[1], status);
}

static int32_t call_dme_tolerance_nm(const double *in, double *out)
{
    return lubber_dme_tolerance_nm(in[0], (int32_t)in[1], &out[0]);
}

static size_t many_dme_tolerance_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_dme_tolerance_nm_n(count, in[0], in_stride[0], (int32_t)in[1][0], out[0], out_stride[0], status);
}

static int32_t call_receiver_check_limit_deg(const double *in, double *out)
{
    return lubber_receiver_check_limit_deg((int32_t)in[0], &out[0]);
}

static size_t many_receiver_check_limit_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_receiver_check_limit_deg_n(count, (int32_t)in[0][0], out[0], out_stride[0], status);
}

static int32_t call_dme_dme_tolerances(const double *in, double *out)
{
    return lubber_dme_dme_tolerances(in[0], in[1], in[2], (int32_t)in[3], in[4], &out[0], &out[1], &out[2]);
}

static size_t many_dme_dme_tolerances(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_dme_dme_tolerances_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], (int32_t)in[3][0], in[4], in_stride[4], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], status);
}

static int32_t call_standard_atmosphere(const double *in, double *out)
{
    return lubber_standard_atmosphere(in[0], in[1], &out[0], &out[1], &out[2], &out[3]);
}

static size_t many_standard_atmosphere(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_standard_atmosphere_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], status);
}

static int32_t call_pressure_ratio(const double *in, double *out)
{
    return lubber_pressure_ratio(in[0], &out[0]);
}

static size_t many_pressure_ratio(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_pressure_ratio_n(count, in[0], in_stride[0], out[0], out_stride[0], status);
}

static int32_t call_density_ratio(const double *in, double *out)
{
    return lubber_density_ratio(in[0], in[1], &out[0]);
}

static size_t many_density_ratio(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_density_ratio_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_temperature_ratio(const double *in, double *out)
{
    return lubber_temperature_ratio(in[0], in[1], &out[0]);
}

static size_t many_temperature_ratio(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_temperature_ratio_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_isa_deviation_k(const double *in, double *out)
{
    return lubber_isa_deviation_k(in[0], in[1], &out[0]);
}

static size_t many_isa_deviation_k(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_isa_deviation_k_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_speed_of_sound_kt(const double *in, double *out)
{
    return lubber_speed_of_sound_kt(in[0], &out[0]);
}

static size_t many_speed_of_sound_kt(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_speed_of_sound_kt_n(count, in[0], in_stride[0], out[0], out_stride[0], status);
}

static int32_t call_pressure_altitude_from_pressure_ft(const double *in, double *out)
{
    return lubber_pressure_altitude_from_pressure_ft(in[0], &out[0]);
}

static size_t many_pressure_altitude_from_pressure_ft(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_pressure_altitude_from_pressure_ft_n(count, in[0], in_stride[0], out[0], out_stride[0], status);
}

static int32_t call_geopotential_altitude_ft(const double *in, double *out)
{
    return lubber_geopotential_altitude_ft(in[0], &out[0]);
}

static size_t many_geopotential_altitude_ft(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_geopotential_altitude_ft_n(count, in[0], in_stride[0], out[0], out_stride[0], status);
}

static int32_t call_geometric_altitude_ft(const double *in, double *out)
{
    return lubber_geometric_altitude_ft(in[0], &out[0]);
}

static size_t many_geometric_altitude_ft(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_geometric_altitude_ft_n(count, in[0], in_stride[0], out[0], out_stride[0], status);
}

static int32_t call_tas_from_cas_kt(const double *in, double *out)
{
    return lubber_tas_from_cas_kt(in[0], in[1], in[2], &out[0]);
}

static size_t many_tas_from_cas_kt(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_tas_from_cas_kt_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], status);
}

static int32_t call_cas_from_tas_kt(const double *in, double *out)
{
    return lubber_cas_from_tas_kt(in[0], in[1], in[2], &out[0]);
}

static size_t many_cas_from_tas_kt(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_cas_from_tas_kt_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], status);
}

static int32_t call_indicated_altitude_ft(const double *in, double *out)
{
    return lubber_indicated_altitude_ft(in[0], in[1], &out[0]);
}

static size_t many_indicated_altitude_ft(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_indicated_altitude_ft_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_pressure_altitude_ft(const double *in, double *out)
{
    return lubber_pressure_altitude_ft(in[0], in[1], &out[0]);
}

static size_t many_pressure_altitude_ft(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_pressure_altitude_ft_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_pressure_altitude_rule_ft(const double *in, double *out)
{
    return lubber_pressure_altitude_rule_ft(in[0], in[1], &out[0]);
}

static size_t many_pressure_altitude_rule_ft(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_pressure_altitude_rule_ft_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_altimeter_setting_hpa(const double *in, double *out)
{
    return lubber_altimeter_setting_hpa(in[0], in[1], &out[0]);
}

static size_t many_altimeter_setting_hpa(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_altimeter_setting_hpa_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_altimeter_setting_smithsonian_hpa(const double *in, double *out)
{
    return lubber_altimeter_setting_smithsonian_hpa(in[0], in[1], &out[0]);
}

static size_t many_altimeter_setting_smithsonian_hpa(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_altimeter_setting_smithsonian_hpa_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_station_pressure_hpa(const double *in, double *out)
{
    return lubber_station_pressure_hpa(in[0], in[1], &out[0]);
}

static size_t many_station_pressure_hpa(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_station_pressure_hpa_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_arc_entry(const double *in, double *out)
{
    return lubber_arc_entry(in[0], (int32_t)in[1], in[2], (int32_t)in[3], in[4], in[5], in[6], in[7], in[8], in[9], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5], &out[6]);
}

static size_t many_arc_entry(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_arc_entry_n(count, in[0], in_stride[0], (int32_t)in[1][0], in[2], in_stride[2], (int32_t)in[3][0], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], in[8], in_stride[8], in[9], in_stride[9], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], out[6], out_stride[6], status);
}

static int32_t call_arc_exit(const double *in, double *out)
{
    return lubber_arc_exit(in[0], (int32_t)in[1], in[2], (int32_t)in[3], in[4], in[5], in[6], in[7], in[8], in[9], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5], &out[6]);
}

static size_t many_arc_exit(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_arc_exit_n(count, in[0], in_stride[0], (int32_t)in[1][0], in[2], in_stride[2], (int32_t)in[3][0], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], in[8], in_stride[8], in[9], in_stride[9], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], out[6], out_stride[6], status);
}

static int32_t call_design_base_turn_offset_deg(const double *in, double *out)
{
    return lubber_design_base_turn_offset_deg(in[0], in[1], (int32_t)in[2], &out[0]);
}

static size_t many_design_base_turn_offset_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_design_base_turn_offset_deg_n(count, in[0], in_stride[0], in[1], in_stride[1], (int32_t)in[2][0], out[0], out_stride[0], status);
}

static int32_t call_base_turn_offset_exact_deg(const double *in, double *out)
{
    return lubber_base_turn_offset_exact_deg(in[0], in[1], &out[0]);
}

static size_t many_base_turn_offset_exact_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_base_turn_offset_exact_deg_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_base_turn(const double *in, double *out)
{
    return lubber_base_turn(in[0], (int32_t)in[1], in[2], in[3], in[4], in[5], in[6], in[7], in[8], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5], &out[6]);
}

static size_t many_base_turn(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_base_turn_n(count, in[0], in_stride[0], (int32_t)in[1][0], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], in[8], in_stride[8], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], out[6], out_stride[6], status);
}

static int32_t call_base_turn_on_track(const double *in, double *out)
{
    return lubber_base_turn_on_track(in[0], in[1], in[2], in[3], in[4], in[5], in[6], in[7], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5], &out[6]);
}

static size_t many_base_turn_on_track(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_base_turn_on_track_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], out[6], out_stride[6], status);
}

static int32_t call_course_arc_crossing(const double *in, double *out)
{
    return lubber_course_arc_crossing(in[0], in[1], in[2], in[3], in[4], in[5], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5]);
}

static size_t many_course_arc_crossing(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_course_arc_crossing_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], status);
}

static int32_t call_arc_arc_crossing(const double *in, double *out)
{
    return lubber_arc_arc_crossing(in[0], in[1], in[2], in[3], in[4], in[5], &out[0], &out[1], &out[2], &out[3]);
}

static size_t many_arc_arc_crossing(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_arc_arc_crossing_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], status);
}

static int32_t call_arc_tangents(const double *in, double *out)
{
    return lubber_arc_tangents(in[0], in[1], in[2], in[3], in[4], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5]);
}

static size_t many_arc_tangents(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_arc_tangents_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], status);
}

static int32_t call_arc_length_nm(const double *in, double *out)
{
    return lubber_arc_length_nm(in[0], in[1], in[2], in[3], in[4], &out[0]);
}

static size_t many_arc_length_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_arc_length_nm_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], out[0], out_stride[0], status);
}

static int32_t call_on_arc(const double *in, double *out)
{
    return lubber_on_arc(in[0], in[1], in[2], in[3], in[4], (int32_t)in[5], in[6], in[7], in[8], &out[0]);
}

static size_t many_on_arc(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_on_arc_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], (int32_t)in[5][0], in[6], in_stride[6], in[7], in_stride[7], in[8], in_stride[8], out[0], out_stride[0], status);
}

static int32_t call_arc_extent(const double *in, double *out)
{
    return lubber_arc_extent(in[0], in[1], in[2], in[3], in[4], in[5], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5], &out[6], &out[7]);
}

static size_t many_arc_extent(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_arc_extent_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], out[6], out_stride[6], out[7], out_stride[7], status);
}

static int32_t call_cold_temperature_correction_ft(const double *in, double *out)
{
    return lubber_cold_temperature_correction_ft(in[0], in[1], in[2], &out[0]);
}

static size_t many_cold_temperature_correction_ft(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_cold_temperature_correction_ft_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], status);
}

static int32_t call_cold_temperature_correction_tabulated_ft(const double *in, double *out)
{
    return lubber_cold_temperature_correction_tabulated_ft(in[0], in[1], &out[0]);
}

static size_t many_cold_temperature_correction_tabulated_ft(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_cold_temperature_correction_tabulated_ft_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_cold_temperature_correction_rule_ft(const double *in, double *out)
{
    return lubber_cold_temperature_correction_rule_ft(in[0], in[1], in[2], &out[0]);
}

static size_t many_cold_temperature_correction_rule_ft(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_cold_temperature_correction_rule_ft_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], status);
}

static int32_t call_cold_temperature_correction_exact_ft(const double *in, double *out)
{
    return lubber_cold_temperature_correction_exact_ft(in[0], in[1], in[2], &out[0]);
}

static size_t many_cold_temperature_correction_exact_ft(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_cold_temperature_correction_exact_ft_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], status);
}

static int32_t call_cross_track(const double *in, double *out)
{
    return lubber_cross_track(in[0], in[1], in[2], in[3], in[4], &out[0], &out[1], &out[2], &out[3], &out[4]);
}

static size_t many_cross_track(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_cross_track_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], status);
}

static int32_t call_course_crossing(const double *in, double *out)
{
    return lubber_course_crossing(in[0], in[1], in[2], in[3], in[4], in[5], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5]);
}

static size_t many_course_crossing(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_course_crossing_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], status);
}

static int32_t call_on_course(const double *in, double *out)
{
    return lubber_on_course(in[0], in[1], in[2], (int32_t)in[3], in[4], in[5], in[6], &out[0]);
}

static size_t many_on_course(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_on_course_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], (int32_t)in[3][0], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], out[0], out_stride[0], status);
}

static int32_t call_on_leg(const double *in, double *out)
{
    return lubber_on_leg(in[0], in[1], in[2], in[3], in[4], in[5], in[6], &out[0]);
}

static size_t many_on_leg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_on_leg_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], out[0], out_stride[0], status);
}

static int32_t call_crossover_altitude_ft(const double *in, double *out)
{
    return lubber_crossover_altitude_ft(in[0], in[1], &out[0]);
}

static size_t many_crossover_altitude_ft(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_crossover_altitude_ft_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_density_altitude_ft(const double *in, double *out)
{
    return lubber_density_altitude_ft(in[0], in[1], &out[0]);
}

static size_t many_density_altitude_ft(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_density_altitude_ft_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_density_altitude_rule_ft(const double *in, double *out)
{
    return lubber_density_altitude_rule_ft(in[0], in[1], &out[0]);
}

static size_t many_density_altitude_rule_ft(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_density_altitude_rule_ft_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_arc_heading(const double *in, double *out)
{
    return lubber_arc_heading(in[0], in[1], (int32_t)in[2], in[3], in[4], in[5], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5], &out[6]);
}

static size_t many_arc_heading(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_arc_heading_n(count, in[0], in_stride[0], in[1], in_stride[1], (int32_t)in[2][0], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], out[6], out_stride[6], status);
}

static int32_t call_arc_flown(const double *in, double *out)
{
    return lubber_arc_flown(in[0], in[1], in[2], (int32_t)in[3], in[4], in[5], in[6], &out[0], &out[1], &out[2]);
}

static size_t many_arc_flown(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_arc_flown_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], (int32_t)in[3][0], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], status);
}

static int32_t call_arc_chords(const double *in, double *out)
{
    return lubber_arc_chords(in[0], in[1], in[2], (int32_t)in[3], (int32_t)in[4], in[5], &out[0], &out[1], &out[2], &out[3], &out[4]);
}

static size_t many_arc_chords(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_arc_chords_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], (int32_t)in[3][0], (int32_t)in[4][0], in[5], in_stride[5], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], status);
}

static int32_t call_arc_chord_leg(const double *in, double *out)
{
    return lubber_arc_chord_leg(in[0], in[1], in[2], (int32_t)in[3], (int32_t)in[4], in[5], in[6], in[7], in[8], in[9], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5]);
}

static size_t many_arc_chord_leg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_arc_chord_leg_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], (int32_t)in[3][0], (int32_t)in[4][0], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], in[8], in_stride[8], in[9], in_stride[9], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], status);
}

static int32_t call_arc_regained(const double *in, double *out)
{
    return lubber_arc_regained(in[0], in[1], in[2], (int32_t)in[3], in[4], in[5], in[6], in[7], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5]);
}

static size_t many_arc_regained(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_arc_regained_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], (int32_t)in[3][0], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], status);
}

static int32_t call_arc_least_correction_deg(const double *in, double *out)
{
    return lubber_arc_least_correction_deg(in[0], in[1], &out[0]);
}

static size_t many_arc_least_correction_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_arc_least_correction_deg_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_rule_arc_correction_deg(const double *in, double *out)
{
    return lubber_rule_arc_correction_deg(in[0], in[1], &out[0]);
}

static size_t many_rule_arc_correction_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_arc_correction_deg_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_geodesic_inverse(const double *in, double *out)
{
    return lubber_geodesic_inverse(in[0], in[1], in[2], in[3], &out[0], &out[1], &out[2]);
}

static size_t many_geodesic_inverse(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_geodesic_inverse_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], status);
}

static int32_t call_slant_range_nm(const double *in, double *out)
{
    return lubber_slant_range_nm(in[0], in[1], &out[0]);
}

static size_t many_slant_range_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_slant_range_nm_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_geodesic_direct(const double *in, double *out)
{
    return lubber_geodesic_direct(in[0], in[1], in[2], in[3], &out[0], &out[1], &out[2]);
}

static size_t many_geodesic_direct(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_geodesic_direct_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], status);
}

static int32_t call_ground_distance_nm(const double *in, double *out)
{
    return lubber_ground_distance_nm(in[0], in[1], &out[0]);
}

static size_t many_ground_distance_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_ground_distance_nm_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_least_dme_nm(const double *in, double *out)
{
    return lubber_least_dme_nm(in[0], &out[0]);
}

static size_t many_least_dme_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_least_dme_nm_n(count, in[0], in_stride[0], out[0], out_stride[0], status);
}

static int32_t call_great_circle_inverse(const double *in, double *out)
{
    return lubber_great_circle_inverse(in[0], in[1], in[2], in[3], in[4], &out[0], &out[1], &out[2]);
}

static size_t many_great_circle_inverse(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_great_circle_inverse_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], status);
}

static int32_t call_great_circle_direct(const double *in, double *out)
{
    return lubber_great_circle_direct(in[0], in[1], in[2], in[3], in[4], &out[0], &out[1], &out[2]);
}

static size_t many_great_circle_direct(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_great_circle_direct_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], status);
}

static int32_t call_straight_line(const double *in, double *out)
{
    return lubber_straight_line(in[0], in[1], in[2], in[3], in[4], in[5], &out[0], &out[1]);
}

static size_t many_straight_line(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_straight_line_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], out[0], out_stride[0], out[1], out_stride[1], status);
}

static int32_t call_eas_from_tas_kt(const double *in, double *out)
{
    return lubber_eas_from_tas_kt(in[0], in[1], in[2], &out[0]);
}

static size_t many_eas_from_tas_kt(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_eas_from_tas_kt_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], status);
}

static int32_t call_tas_from_eas_kt(const double *in, double *out)
{
    return lubber_tas_from_eas_kt(in[0], in[1], in[2], &out[0]);
}

static size_t many_tas_from_eas_kt(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_tas_from_eas_kt_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], status);
}

static int32_t call_eas_from_cas_kt(const double *in, double *out)
{
    return lubber_eas_from_cas_kt(in[0], in[1], &out[0]);
}

static size_t many_eas_from_cas_kt(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_eas_from_cas_kt_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_cas_from_eas_kt(const double *in, double *out)
{
    return lubber_cas_from_eas_kt(in[0], in[1], &out[0]);
}

static size_t many_cas_from_eas_kt(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_cas_from_eas_kt_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_eas_from_mach_kt(const double *in, double *out)
{
    return lubber_eas_from_mach_kt(in[0], in[1], &out[0]);
}

static size_t many_eas_from_mach_kt(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_eas_from_mach_kt_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_mach_from_eas(const double *in, double *out)
{
    return lubber_mach_from_eas(in[0], in[1], &out[0]);
}

static size_t many_mach_from_eas(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_mach_from_eas_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_radial_error_across_nm(const double *in, double *out)
{
    return lubber_radial_error_across_nm(in[0], in[1], &out[0]);
}

static size_t many_radial_error_across_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_radial_error_across_nm_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_dme_error_along_nm(const double *in, double *out)
{
    return lubber_dme_error_along_nm(in[0], in[1], in[2], &out[0]);
}

static size_t many_dme_error_along_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_dme_error_along_nm_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], status);
}

static int32_t call_fix_of_two_radials(const double *in, double *out)
{
    return lubber_fix_of_two_radials(in[0], in[1], in[2], in[3], in[4], in[5], in[6], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5], &out[6], &out[7], &out[8]);
}

static size_t many_fix_of_two_radials(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_fix_of_two_radials_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], out[6], out_stride[6], out[7], out_stride[7], out[8], out_stride[8], status);
}

static int32_t call_fix_of_radial_and_dme(const double *in, double *out)
{
    return lubber_fix_of_radial_and_dme(in[0], in[1], in[2], in[3], in[4], in[5], in[6], in[7], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5], &out[6], &out[7], &out[8]);
}

static size_t many_fix_of_radial_and_dme(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_fix_of_radial_and_dme_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], out[6], out_stride[6], out[7], out_stride[7], out[8], out_stride[8], status);
}

static int32_t call_fix_of_two_dme(const double *in, double *out)
{
    return lubber_fix_of_two_dme(in[0], in[1], in[2], in[3], in[4], in[5], in[6], in[7], in[8], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5], &out[6], &out[7], &out[8]);
}

static size_t many_fix_of_two_dme(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_fix_of_two_dme_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], in[8], in_stride[8], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], out[6], out_stride[6], out[7], out_stride[7], out[8], out_stride[8], status);
}

static int32_t call_ellipse_factor(const double *in, double *out)
{
    return lubber_ellipse_factor(in[0], &out[0]);
}

static size_t many_ellipse_factor(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_ellipse_factor_n(count, in[0], in_stride[0], out[0], out_stride[0], status);
}

static int32_t call_grid_from_true_deg(const double *in, double *out)
{
    return lubber_grid_from_true_deg(in[0], in[1], &out[0]);
}

static size_t many_grid_from_true_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_grid_from_true_deg_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_true_from_grid_deg(const double *in, double *out)
{
    return lubber_true_from_grid_deg(in[0], in[1], &out[0]);
}

static size_t many_true_from_grid_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_true_from_grid_deg_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_polar_grid_convergence_deg(const double *in, double *out)
{
    return lubber_polar_grid_convergence_deg(in[0], in[1], &out[0]);
}

static size_t many_polar_grid_convergence_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_polar_grid_convergence_deg_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_lambert_grid_convergence_deg(const double *in, double *out)
{
    return lubber_lambert_grid_convergence_deg(in[0], in[1], in[2], in[3], &out[0]);
}

static size_t many_lambert_grid_convergence_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_lambert_grid_convergence_deg_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], out[0], out_stride[0], status);
}

static int32_t call_transverse_grid_convergence_deg(const double *in, double *out)
{
    return lubber_transverse_grid_convergence_deg(in[0], in[1], in[2], &out[0]);
}

static size_t many_transverse_grid_convergence_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_transverse_grid_convergence_deg_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], status);
}

static int32_t call_utm_meridian_deg(const double *in, double *out)
{
    return lubber_utm_meridian_deg(in[0], in[1], &out[0]);
}

static size_t many_utm_meridian_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_utm_meridian_deg_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_holding_entry(const double *in, double *out)
{
    return lubber_holding_entry(in[0], in[1], (int32_t)in[2], &out[0], &out[1], &out[2], &out[3], &out[4]);
}

static size_t many_holding_entry(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_holding_entry_n(count, in[0], in_stride[0], in[1], in_stride[1], (int32_t)in[2][0], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], status);
}

static int32_t call_holding_timing(const double *in, double *out)
{
    return lubber_holding_timing(in[0], (int32_t)in[1], &out[0], &out[1]);
}

static size_t many_holding_timing(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_holding_timing_n(count, in[0], in_stride[0], (int32_t)in[1][0], out[0], out_stride[0], out[1], out_stride[1], status);
}

static int32_t call_holding_speed(const double *in, double *out)
{
    return lubber_holding_speed(in[0], (int32_t)in[1], &out[0], &out[1], &out[2]);
}

static size_t many_holding_speed(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_holding_speed_n(count, in[0], in_stride[0], (int32_t)in[1][0], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], status);
}

static int32_t call_holding_turn(const double *in, double *out)
{
    return lubber_holding_turn(in[0], (int32_t)in[1], &out[0], &out[1], &out[2], &out[3]);
}

static size_t many_holding_turn(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_holding_turn_n(count, in[0], in_stride[0], (int32_t)in[1][0], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], status);
}

static int32_t call_outbound_end_dme_nm(const double *in, double *out)
{
    return lubber_outbound_end_dme_nm(in[0], (int32_t)in[1], in[2], in[3], in[4], &out[0]);
}

static size_t many_outbound_end_dme_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_outbound_end_dme_nm_n(count, in[0], in_stride[0], (int32_t)in[1][0], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], out[0], out_stride[0], status);
}

static int32_t call_limiting_dme(const double *in, double *out)
{
    return lubber_limiting_dme(in[0], (int32_t)in[1], in[2], in[3], in[4], in[5], &out[0], &out[1]);
}

static size_t many_limiting_dme(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_limiting_dme_n(count, in[0], in_stride[0], (int32_t)in[1][0], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], out[0], out_stride[0], out[1], out_stride[1], status);
}

static int32_t call_intercept(const double *in, double *out)
{
    return lubber_intercept(in[0], in[1], in[2], in[3], in[4], in[5], in[6], in[7], in[8], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5], &out[6], &out[7], &out[8], &out[9]);
}

static size_t many_intercept(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_intercept_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], in[8], in_stride[8], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], out[6], out_stride[6], out[7], out_stride[7], out[8], out_stride[8], out[9], out_stride[9], status);
}

static int32_t call_radial_intercept(const double *in, double *out)
{
    return lubber_radial_intercept(in[0], in[1], in[2], (int32_t)in[3], in[4], in[5], in[6], in[7], in[8], in[9], in[10], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5], &out[6], &out[7], &out[8], &out[9], &out[10], &out[11]);
}

static size_t many_radial_intercept(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_radial_intercept_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], (int32_t)in[3][0], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], in[8], in_stride[8], in[9], in_stride[9], in[10], in_stride[10], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], out[6], out_stride[6], out[7], out_stride[7], out[8], out_stride[8], out[9], out_stride[9], out[10], out_stride[10], out[11], out_stride[11], status);
}

static int32_t call_double_angle_intercept(const double *in, double *out)
{
    return lubber_double_angle_intercept(in[0], in[1], in[2], in[3], in[4], in[5], &out[0], &out[1], &out[2], &out[3], &out[4]);
}

static size_t many_double_angle_intercept(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_double_angle_intercept_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], status);
}

static int32_t call_rule_intercept_angle_deg(const double *in, double *out)
{
    return lubber_rule_intercept_angle_deg(in[0], &out[0]);
}

static size_t many_rule_intercept_angle_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_intercept_angle_deg_n(count, in[0], in_stride[0], out[0], out_stride[0], status);
}

static int32_t call_rule_intercept_lead_deg(const double *in, double *out)
{
    return lubber_rule_intercept_lead_deg(in[0], in[1], in[2], &out[0]);
}

static size_t many_rule_intercept_lead_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_intercept_lead_deg_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], status);
}

static int32_t call_lead_nm(const double *in, double *out)
{
    return lubber_lead_nm(in[0], in[1], in[2], in[3], in[4], in[5], in[6], in[7], &out[0]);
}

static size_t many_lead_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_lead_nm_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], out[0], out_stride[0], status);
}

static int32_t call_dme_at_roll_in_nm(const double *in, double *out)
{
    return lubber_dme_at_roll_in_nm(in[0], in[1], in[2], in[3], in[4], in[5], in[6], in[7], in[8], &out[0]);
}

static size_t many_dme_at_roll_in_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_dme_at_roll_in_nm_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], in[8], in_stride[8], out[0], out_stride[0], status);
}

static int32_t call_turn_anticipation_nm(const double *in, double *out)
{
    return lubber_turn_anticipation_nm(in[0], in[1], &out[0]);
}

static size_t many_turn_anticipation_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_turn_anticipation_nm_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_arc_entry_inbound_nm(const double *in, double *out)
{
    return lubber_arc_entry_inbound_nm(in[0], in[1], &out[0]);
}

static size_t many_arc_entry_inbound_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_arc_entry_inbound_nm_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_arc_entry_outbound_nm(const double *in, double *out)
{
    return lubber_arc_entry_outbound_nm(in[0], in[1], &out[0]);
}

static size_t many_arc_entry_outbound_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_arc_entry_outbound_nm_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_lead_radial_inbound_deg(const double *in, double *out)
{
    return lubber_lead_radial_inbound_deg(in[0], in[1], &out[0]);
}

static size_t many_lead_radial_inbound_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_lead_radial_inbound_deg_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_lead_radial_outbound_deg(const double *in, double *out)
{
    return lubber_lead_radial_outbound_deg(in[0], in[1], &out[0]);
}

static size_t many_lead_radial_outbound_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_lead_radial_outbound_deg_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_leg_meaning(const double *in, double *out)
{
    return lubber_leg_meaning((int32_t)in[0], &out[0], &out[1]);
}

static size_t many_leg_meaning(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_leg_meaning_n(count, (int32_t)in[0][0], out[0], out_stride[0], out[1], out_stride[1], status);
}

static int32_t call_mach_from_cas(const double *in, double *out)
{
    return lubber_mach_from_cas(in[0], in[1], &out[0]);
}

static size_t many_mach_from_cas(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_mach_from_cas_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_cas_from_mach_kt(const double *in, double *out)
{
    return lubber_cas_from_mach_kt(in[0], in[1], &out[0]);
}

static size_t many_cas_from_mach_kt(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_cas_from_mach_kt_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_tas_from_mach_kt(const double *in, double *out)
{
    return lubber_tas_from_mach_kt(in[0], in[1], in[2], &out[0]);
}

static size_t many_tas_from_mach_kt(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_tas_from_mach_kt_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], status);
}

static int32_t call_mach_from_tas(const double *in, double *out)
{
    return lubber_mach_from_tas(in[0], in[1], in[2], &out[0]);
}

static size_t many_mach_from_tas(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_mach_from_tas_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], status);
}

static int32_t call_magnetic_field(const double *in, double *out)
{
    return lubber_magnetic_field(in[0], in[1], in[2], in[3], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5], &out[6], &out[7], &out[8], &out[9], &out[10], &out[11], &out[12], &out[13], &out[14], &out[15], &out[16], &out[17]);
}

static size_t many_magnetic_field(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_magnetic_field_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], out[6], out_stride[6], out[7], out_stride[7], out[8], out_stride[8], out[9], out_stride[9], out[10], out_stride[10], out[11], out_stride[11], out[12], out_stride[12], out[13], out_stride[13], out[14], out_stride[14], out[15], out_stride[15], out[16], out_stride[16], out[17], out_stride[17], status);
}

static int32_t call_variation_deg(const double *in, double *out)
{
    return lubber_variation_deg(in[0], in[1], in[2], in[3], &out[0]);
}

static size_t many_variation_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_variation_deg_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], out[0], out_stride[0], status);
}

static int32_t call_decimal_year(const double *in, double *out)
{
    return lubber_decimal_year(in[0], in[1], in[2], &out[0]);
}

static size_t many_decimal_year(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_decimal_year_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], status);
}

static int32_t call_magnetic_from_true_deg(const double *in, double *out)
{
    return lubber_magnetic_from_true_deg(in[0], in[1], &out[0]);
}

static size_t many_magnetic_from_true_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_magnetic_from_true_deg_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_true_from_magnetic_deg(const double *in, double *out)
{
    return lubber_true_from_magnetic_deg(in[0], in[1], &out[0]);
}

static size_t many_true_from_magnetic_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_true_from_magnetic_deg_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_station_misalignment_deg(const double *in, double *out)
{
    return lubber_station_misalignment_deg(in[0], in[1], &out[0]);
}

static size_t many_station_misalignment_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_station_misalignment_deg_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_radial_from_true_deg(const double *in, double *out)
{
    return lubber_radial_from_true_deg(in[0], in[1], &out[0]);
}

static size_t many_radial_from_true_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_radial_from_true_deg_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_true_from_radial_deg(const double *in, double *out)
{
    return lubber_true_from_radial_deg(in[0], in[1], &out[0]);
}

static size_t many_true_from_radial_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_true_from_radial_deg_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_offset_point(const double *in, double *out)
{
    return lubber_offset_point(in[0], in[1], in[2], in[3], in[4], &out[0], &out[1], &out[2]);
}

static size_t many_offset_point(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_offset_point_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], status);
}

static int32_t call_offset_cross_track(const double *in, double *out)
{
    return lubber_offset_cross_track(in[0], in[1], in[2], in[3], in[4], in[5], &out[0], &out[1], &out[2], &out[3], &out[4]);
}

static size_t many_offset_cross_track(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_offset_cross_track_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], status);
}

static int32_t call_on_offset(const double *in, double *out)
{
    return lubber_on_offset(in[0], in[1], in[2], (int32_t)in[3], in[4], in[5], in[6], in[7], &out[0]);
}

static size_t many_on_offset(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_on_offset_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], (int32_t)in[3][0], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], out[0], out_stride[0], status);
}

static int32_t call_offset_course_crossing(const double *in, double *out)
{
    return lubber_offset_course_crossing(in[0], in[1], in[2], in[3], in[4], in[5], in[6], &out[0], &out[1], &out[2]);
}

static size_t many_offset_course_crossing(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_offset_course_crossing_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], status);
}

static int32_t call_offset_offset_crossing(const double *in, double *out)
{
    return lubber_offset_offset_crossing(in[0], in[1], in[2], in[3], in[4], in[5], in[6], in[7], &out[0], &out[1], &out[2], &out[3]);
}

static size_t many_offset_offset_crossing(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_offset_offset_crossing_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], status);
}

static int32_t call_offset_arc_crossing(const double *in, double *out)
{
    return lubber_offset_arc_crossing(in[0], in[1], in[2], in[3], in[4], in[5], in[6], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5]);
}

static size_t many_offset_arc_crossing(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_offset_arc_crossing_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], status);
}

static int32_t call_isentropic_pressure_ratio(const double *in, double *out)
{
    return lubber_isentropic_pressure_ratio(in[0], &out[0]);
}

static size_t many_isentropic_pressure_ratio(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_isentropic_pressure_ratio_n(count, in[0], in_stride[0], out[0], out_stride[0], status);
}

static int32_t call_pitot_pressure_ratio(const double *in, double *out)
{
    return lubber_pitot_pressure_ratio(in[0], &out[0]);
}

static size_t many_pitot_pressure_ratio(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_pitot_pressure_ratio_n(count, in[0], in_stride[0], out[0], out_stride[0], status);
}

static int32_t call_impact_pressure_hpa(const double *in, double *out)
{
    return lubber_impact_pressure_hpa(in[0], &out[0]);
}

static size_t many_impact_pressure_hpa(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_impact_pressure_hpa_n(count, in[0], in_stride[0], out[0], out_stride[0], status);
}

static int32_t call_cas_from_impact_pressure_kt(const double *in, double *out)
{
    return lubber_cas_from_impact_pressure_kt(in[0], &out[0]);
}

static size_t many_cas_from_impact_pressure_kt(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_cas_from_impact_pressure_kt_n(count, in[0], in_stride[0], out[0], out_stride[0], status);
}

static int32_t call_procedure_tas_factor(const double *in, double *out)
{
    return lubber_procedure_tas_factor(in[0], in[1], &out[0]);
}

static size_t many_procedure_tas_factor(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_procedure_tas_factor_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_procedure_turn_45_180(const double *in, double *out)
{
    return lubber_procedure_turn_45_180(in[0], (int32_t)in[1], in[2], in[3], in[4], in[5], in[6], in[7], in[8], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5], &out[6], &out[7], &out[8]);
}

static size_t many_procedure_turn_45_180(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_procedure_turn_45_180_n(count, in[0], in_stride[0], (int32_t)in[1][0], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], in[8], in_stride[8], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], out[6], out_stride[6], out[7], out_stride[7], out[8], out_stride[8], status);
}

static int32_t call_procedure_turn_80_260(const double *in, double *out)
{
    return lubber_procedure_turn_80_260(in[0], (int32_t)in[1], in[2], in[3], in[4], in[5], in[6], in[7], in[8], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5], &out[6]);
}

static size_t many_procedure_turn_80_260(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_procedure_turn_80_260_n(count, in[0], in_stride[0], (int32_t)in[1][0], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], in[8], in_stride[8], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], out[6], out_stride[6], status);
}

static int32_t call_cold_temperature_correction_by_method_ft(const double *in, double *out)
{
    return lubber_cold_temperature_correction_by_method_ft(in[0], in[1], in[2], (int32_t)in[3], &out[0]);
}

static size_t many_cold_temperature_correction_by_method_ft(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_cold_temperature_correction_by_method_ft_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], (int32_t)in[3][0], out[0], out_stride[0], status);
}

static int32_t call_procedure_tas_factor_by_method(const double *in, double *out)
{
    return lubber_procedure_tas_factor_by_method(in[0], in[1], (int32_t)in[2], &out[0]);
}

static size_t many_procedure_tas_factor_by_method(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_procedure_tas_factor_by_method_n(count, in[0], in_stride[0], in[1], in_stride[1], (int32_t)in[2][0], out[0], out_stride[0], status);
}

static int32_t call_standard_atmosphere_by_edition(const double *in, double *out)
{
    return lubber_standard_atmosphere_by_edition(in[0], in[1], (int32_t)in[2], &out[0], &out[1], &out[2], &out[3]);
}

static size_t many_standard_atmosphere_by_edition(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_standard_atmosphere_by_edition_n(count, in[0], in_stride[0], in[1], in_stride[1], (int32_t)in[2][0], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], status);
}

static int32_t call_published_turn(const double *in, double *out)
{
    return lubber_published_turn(in[0], in[1], (int32_t)in[2], &out[0], &out[1]);
}

static size_t many_published_turn(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_published_turn_n(count, in[0], in_stride[0], in[1], in_stride[1], (int32_t)in[2][0], out[0], out_stride[0], out[1], out_stride[1], status);
}

static int32_t call_holding_pattern(const double *in, double *out)
{
    return lubber_holding_pattern(in[0], (int32_t)in[1], (int32_t)in[2], in[3], in[4], in[5], in[6], in[7], in[8], in[9], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5], &out[6], &out[7], &out[8], &out[9], &out[10], &out[11], &out[12], &out[13]);
}

static size_t many_holding_pattern(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_holding_pattern_n(count, in[0], in_stride[0], (int32_t)in[1][0], (int32_t)in[2][0], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], in[8], in_stride[8], in[9], in_stride[9], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], out[6], out_stride[6], out[7], out_stride[7], out[8], out_stride[8], out[9], out_stride[9], out[10], out_stride[10], out[11], out_stride[11], out[12], out_stride[12], out[13], out_stride[13], status);
}

static int32_t call_holding_pattern_at(const double *in, double *out)
{
    return lubber_holding_pattern_at(in[0], in[1], (int32_t)in[2], (int32_t)in[3], in[4], in[5], in[6], in[7], in[8], in[9], in[10], &out[0], &out[1], &out[2], &out[3]);
}

static size_t many_holding_pattern_at(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_holding_pattern_at_n(count, in[0], in_stride[0], in[1], in_stride[1], (int32_t)in[2][0], (int32_t)in[3][0], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], in[8], in_stride[8], in[9], in_stride[9], in[10], in_stride[10], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], status);
}

static int32_t call_radio_horizon_nm(const double *in, double *out)
{
    return lubber_radio_horizon_nm(in[0], in[1], (int32_t)in[2], &out[0]);
}

static size_t many_radio_horizon_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_radio_horizon_nm_n(count, in[0], in_stride[0], in[1], in_stride[1], (int32_t)in[2][0], out[0], out_stride[0], status);
}

static int32_t call_least_reception_height_ft(const double *in, double *out)
{
    return lubber_least_reception_height_ft(in[0], in[1], (int32_t)in[2], &out[0]);
}

static size_t many_least_reception_height_ft(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_least_reception_height_ft_n(count, in[0], in_stride[0], in[1], in_stride[1], (int32_t)in[2][0], out[0], out_stride[0], status);
}

static int32_t call_service_reach_nm(const double *in, double *out)
{
    return lubber_service_reach_nm((int32_t)in[0], in[1], in[2], &out[0]);
}

static size_t many_service_reach_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_service_reach_nm_n(count, (int32_t)in[0][0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], status);
}

static int32_t call_vor_needle(const double *in, double *out)
{
    return lubber_vor_needle(in[0], in[1], in[2], in[3], &out[0], &out[1], &out[2]);
}

static size_t many_vor_needle(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_vor_needle_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], status);
}

static int32_t call_vor_receiver(const double *in, double *out)
{
    return lubber_vor_receiver(in[0], in[1], in[2], in[3], in[4], in[5], in[6], in[7], in[8], in[9], in[10], in[11], in[12], in[13], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5]);
}

static size_t many_vor_receiver(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_vor_receiver_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], in[8], in_stride[8], in[9], in_stride[9], in[10], in_stride[10], in[11], in_stride[11], in[12], in_stride[12], in[13], in_stride[13], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], status);
}

static int32_t call_displayed_dme_nm(const double *in, double *out)
{
    return lubber_displayed_dme_nm(in[0], in[1], &out[0]);
}

static size_t many_displayed_dme_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_displayed_dme_nm_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_cross_track_of_deflection_nm(const double *in, double *out)
{
    return lubber_cross_track_of_deflection_nm(in[0], in[1], in[2], &out[0]);
}

static size_t many_cross_track_of_deflection_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_cross_track_of_deflection_nm_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], status);
}

static int32_t call_deflection_of_cross_track(const double *in, double *out)
{
    return lubber_deflection_of_cross_track(in[0], in[1], in[2], &out[0], &out[1]);
}

static size_t many_deflection_of_cross_track(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_deflection_of_cross_track_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], out[1], out_stride[1], status);
}

static int32_t call_needle_motion(const double *in, double *out)
{
    return lubber_needle_motion(in[0], in[1], in[2], in[3], &out[0], &out[1]);
}

static size_t many_needle_motion(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_needle_motion_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], out[0], out_stride[0], out[1], out_stride[1], status);
}

static int32_t call_rhumb_inverse(const double *in, double *out)
{
    return lubber_rhumb_inverse(in[0], in[1], in[2], in[3], &out[0], &out[1]);
}

static size_t many_rhumb_inverse(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rhumb_inverse_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], out[0], out_stride[0], out[1], out_stride[1], status);
}

static int32_t call_rhumb_direct(const double *in, double *out)
{
    return lubber_rhumb_direct(in[0], in[1], in[2], in[3], &out[0], &out[1]);
}

static size_t many_rhumb_direct(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rhumb_direct_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], out[0], out_stride[0], out[1], out_stride[1], status);
}

static int32_t call_rhumb_excess(const double *in, double *out)
{
    return lubber_rhumb_excess(in[0], in[1], in[2], in[3], &out[0], &out[1]);
}

static size_t many_rhumb_excess(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rhumb_excess_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], out[0], out_stride[0], out[1], out_stride[1], status);
}

static int32_t call_splay_distance_nm(const double *in, double *out)
{
    return lubber_splay_distance_nm(in[0], in[1], &out[0]);
}

static size_t many_splay_distance_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_splay_distance_nm_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_route_half_width_nm(const double *in, double *out)
{
    return lubber_route_half_width_nm(in[0], (int32_t)in[1], &out[0]);
}

static size_t many_route_half_width_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_route_half_width_nm_n(count, in[0], in_stride[0], (int32_t)in[1][0], out[0], out_stride[0], status);
}

static int32_t call_rule_density_altitude_error(const double *in, double *out)
{
    return lubber_rule_density_altitude_error(in[0], in[1], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5]);
}

static size_t many_rule_density_altitude_error(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_density_altitude_error_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], status);
}

static int32_t call_rule_pressure_altitude_error(const double *in, double *out)
{
    return lubber_rule_pressure_altitude_error(in[0], in[1], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5]);
}

static size_t many_rule_pressure_altitude_error(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_pressure_altitude_error_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], status);
}

static int32_t call_rule_cold_temperature_error(const double *in, double *out)
{
    return lubber_rule_cold_temperature_error(in[0], in[1], in[2], &out[0], &out[1], &out[2], &out[3], &out[4]);
}

static size_t many_rule_cold_temperature_error(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_cold_temperature_error_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], status);
}

static int32_t call_rule_arc_entry_lead_nm(const double *in, double *out)
{
    return lubber_rule_arc_entry_lead_nm(in[0], in[1], (int32_t)in[2], (int32_t)in[3], &out[0]);
}

static size_t many_rule_arc_entry_lead_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_arc_entry_lead_nm_n(count, in[0], in_stride[0], in[1], in_stride[1], (int32_t)in[2][0], (int32_t)in[3][0], out[0], out_stride[0], status);
}

static int32_t call_rule_arc_entry_lead_error(const double *in, double *out)
{
    return lubber_rule_arc_entry_lead_error(in[0], in[1], (int32_t)in[2], (int32_t)in[3], &out[0], &out[1], &out[2], &out[3], &out[4]);
}

static size_t many_rule_arc_entry_lead_error(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_arc_entry_lead_error_n(count, in[0], in_stride[0], in[1], in_stride[1], (int32_t)in[2][0], (int32_t)in[3][0], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], status);
}

static int32_t call_rule_radials_per_mile_error(const double *in, double *out)
{
    return lubber_rule_radials_per_mile_error(in[0], &out[0], &out[1], &out[2]);
}

static size_t many_rule_radials_per_mile_error(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_radials_per_mile_error_n(count, in[0], in_stride[0], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], status);
}

static int32_t call_rule_arc_correction_error(const double *in, double *out)
{
    return lubber_rule_arc_correction_error(in[0], in[1], &out[0], &out[1], &out[2]);
}

static size_t many_rule_arc_correction_error(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_arc_correction_error_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], status);
}

static int32_t call_rule_intercept_angle_error(const double *in, double *out)
{
    return lubber_rule_intercept_angle_error(in[0], &out[0], &out[1], &out[2], &out[3], &out[4]);
}

static size_t many_rule_intercept_angle_error(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_intercept_angle_error_n(count, in[0], in_stride[0], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], status);
}

static int32_t call_rule_intercept_lead_error(const double *in, double *out)
{
    return lubber_rule_intercept_lead_error(in[0], in[1], in[2], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5]);
}

static size_t many_rule_intercept_lead_error(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_intercept_lead_error_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], status);
}

static int32_t call_rule_least_dme_error(const double *in, double *out)
{
    return lubber_rule_least_dme_error(in[0], &out[0], &out[1], &out[2]);
}

static size_t many_rule_least_dme_error(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_least_dme_error_n(count, in[0], in_stride[0], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], status);
}

static int32_t call_rule_cone_radius_error(const double *in, double *out)
{
    return lubber_rule_cone_radius_error(in[0], in[1], &out[0], &out[1], &out[2], &out[3], &out[4]);
}

static size_t many_rule_cone_radius_error(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_cone_radius_error_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], status);
}

static int32_t call_rule_bank_error(const double *in, double *out)
{
    return lubber_rule_bank_error(in[0], (int32_t)in[1], &out[0], &out[1], &out[2]);
}

static size_t many_rule_bank_error(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_bank_error_n(count, in[0], in_stride[0], (int32_t)in[1][0], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], status);
}

static int32_t call_rule_turn_radius_error(const double *in, double *out)
{
    return lubber_rule_turn_radius_error(in[0], (int32_t)in[1], &out[0], &out[1], &out[2]);
}

static size_t many_rule_turn_radius_error(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_turn_radius_error_n(count, in[0], in_stride[0], (int32_t)in[1][0], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], status);
}

static int32_t call_rule_off_course_error(const double *in, double *out)
{
    return lubber_rule_off_course_error(in[0], in[1], &out[0], &out[1], &out[2], &out[3], &out[4]);
}

static size_t many_rule_off_course_error(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_off_course_error_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], status);
}

static int32_t call_rule_lead_radials_error(const double *in, double *out)
{
    return lubber_rule_lead_radials_error(in[0], in[1], (int32_t)in[2], (int32_t)in[3], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5]);
}

static size_t many_rule_lead_radials_error(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_lead_radials_error_n(count, in[0], in_stride[0], in[1], in_stride[1], (int32_t)in[2][0], (int32_t)in[3][0], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], status);
}

static int32_t call_rule_time_to_station_error(const double *in, double *out)
{
    return lubber_rule_time_to_station_error(in[0], in[1], &out[0], &out[1], &out[2], &out[3], &out[4]);
}

static size_t many_rule_time_to_station_error(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_time_to_station_error_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], status);
}

static int32_t call_rule_outbound_correction_error(const double *in, double *out)
{
    return lubber_rule_outbound_correction_error(in[0], (int32_t)in[1], in[2], in[3], in[4], in[5], in[6], in[7], in[8], (int32_t)in[9], &out[0], &out[1], &out[2]);
}

static size_t many_rule_outbound_correction_error(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_outbound_correction_error_n(count, in[0], in_stride[0], (int32_t)in[1][0], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], in[8], in_stride[8], (int32_t)in[9][0], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], status);
}

static int32_t call_rule_outbound_time_by_headwind_error(const double *in, double *out)
{
    return lubber_rule_outbound_time_by_headwind_error(in[0], (int32_t)in[1], in[2], in[3], in[4], in[5], in[6], in[7], in[8], &out[0], &out[1], &out[2], &out[3], &out[4]);
}

static size_t many_rule_outbound_time_by_headwind_error(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_outbound_time_by_headwind_error_n(count, in[0], in_stride[0], (int32_t)in[1][0], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], in[8], in_stride[8], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], status);
}

static int32_t call_rule_outbound_time_error(const double *in, double *out)
{
    return lubber_rule_outbound_time_error(in[0], (int32_t)in[1], in[2], in[3], in[4], in[5], in[6], in[7], in[8], in[9], &out[0], &out[1], &out[2], &out[3], &out[4]);
}

static size_t many_rule_outbound_time_error(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_outbound_time_error_n(count, in[0], in_stride[0], (int32_t)in[1][0], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], in[8], in_stride[8], in[9], in_stride[9], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], status);
}

static int32_t call_rule_lead_error(const double *in, double *out)
{
    return lubber_rule_lead_error(in[0], in[1], in[2], in[3], in[4], in[5], in[6], in[7], in[8], (int32_t)in[9], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5], &out[6], &out[7], &out[8], &out[9], &out[10], &out[11], &out[12], &out[13], &out[14], &out[15]);
}

static size_t many_rule_lead_error(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_lead_error_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], in[8], in_stride[8], (int32_t)in[9][0], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], out[6], out_stride[6], out[7], out_stride[7], out[8], out_stride[8], out[9], out_stride[9], out[10], out_stride[10], out[11], out_stride[11], out[12], out_stride[12], out[13], out_stride[13], out[14], out_stride[14], out[15], out_stride[15], status);
}

static int32_t call_rule_lead_flown(const double *in, double *out)
{
    return lubber_rule_lead_flown(in[0], in[1], in[2], in[3], in[4], in[5], in[6], in[7], in[8], (int32_t)in[9], (int32_t)in[10], in[11], in[12], in[13], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5], &out[6]);
}

static size_t many_rule_lead_flown(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_lead_flown_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], in[8], in_stride[8], (int32_t)in[9][0], (int32_t)in[10][0], in[11], in_stride[11], in[12], in_stride[12], in[13], in_stride[13], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], out[6], out_stride[6], status);
}

static int32_t call_rule_holds_at_height_ft(const double *in, double *out)
{
    return lubber_rule_holds_at_height_ft(in[0], in[1], in[2], in[3], in[4], in[5], in[6], in[7], (int32_t)in[8], &out[0]);
}

static size_t many_rule_holds_at_height_ft(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_holds_at_height_ft_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], (int32_t)in[8][0], out[0], out_stride[0], status);
}

static int32_t call_rule_outbound_heading_deg(const double *in, double *out)
{
    return lubber_rule_outbound_heading_deg(in[0], in[1], (int32_t)in[2], &out[0]);
}

static size_t many_rule_outbound_heading_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_outbound_heading_deg_n(count, in[0], in_stride[0], in[1], in_stride[1], (int32_t)in[2][0], out[0], out_stride[0], status);
}

static int32_t call_rule_outbound_time_s(const double *in, double *out)
{
    return lubber_rule_outbound_time_s(in[0], in[1], in[2], &out[0]);
}

static size_t many_rule_outbound_time_s(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_outbound_time_s_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], status);
}

static int32_t call_rule_outbound_time_by_headwind_s(const double *in, double *out)
{
    return lubber_rule_outbound_time_by_headwind_s(in[0], in[1], &out[0]);
}

static size_t many_rule_outbound_time_by_headwind_s(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_outbound_time_by_headwind_s_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_rule_slant_negligible_from_nm(const double *in, double *out)
{
    return lubber_rule_slant_negligible_from_nm(in[0], &out[0]);
}

static size_t many_rule_slant_negligible_from_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_slant_negligible_from_nm_n(count, in[0], in_stride[0], out[0], out_stride[0], status);
}

static int32_t call_rule_ground_distance_error(const double *in, double *out)
{
    return lubber_rule_ground_distance_error(in[0], in[1], &out[0], &out[1], &out[2], &out[3], &out[4]);
}

static size_t many_rule_ground_distance_error(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_ground_distance_error_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], status);
}

static int32_t call_rule_radio_horizon_error(const double *in, double *out)
{
    return lubber_rule_radio_horizon_error(in[0], in[1], (int32_t)in[2], &out[0], &out[1], &out[2], &out[3], &out[4]);
}

static size_t many_rule_radio_horizon_error(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_radio_horizon_error_n(count, in[0], in_stride[0], in[1], in_stride[1], (int32_t)in[2][0], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], status);
}

static int32_t call_rule_roll_out_lead_deg(const double *in, double *out)
{
    return lubber_rule_roll_out_lead_deg(in[0], (int32_t)in[1], &out[0]);
}

static size_t many_rule_roll_out_lead_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_roll_out_lead_deg_n(count, in[0], in_stride[0], (int32_t)in[1][0], out[0], out_stride[0], status);
}

static int32_t call_rule_roll_out_lead_error(const double *in, double *out)
{
    return lubber_rule_roll_out_lead_error(in[0], in[1], in[2], (int32_t)in[3], &out[0], &out[1], &out[2], &out[3], &out[4]);
}

static size_t many_rule_roll_out_lead_error(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_roll_out_lead_error_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], (int32_t)in[3][0], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], status);
}

static int32_t call_rule_lead_nm(const double *in, double *out)
{
    return lubber_rule_lead_nm(in[0], in[1], in[2], &out[0]);
}

static size_t many_rule_lead_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_lead_nm_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], status);
}

static int32_t call_rule_reading_nm(const double *in, double *out)
{
    return lubber_rule_reading_nm(in[0], in[1], in[2], &out[0]);
}

static size_t many_rule_reading_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_reading_nm_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], status);
}

static int32_t call_rule_least_dme_nm(const double *in, double *out)
{
    return lubber_rule_least_dme_nm(in[0], &out[0]);
}

static size_t many_rule_least_dme_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_least_dme_nm_n(count, in[0], in_stride[0], out[0], out_stride[0], status);
}

static int32_t call_rule_cone_radius_nm(const double *in, double *out)
{
    return lubber_rule_cone_radius_nm(in[0], &out[0]);
}

static size_t many_rule_cone_radius_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_cone_radius_nm_n(count, in[0], in_stride[0], out[0], out_stride[0], status);
}

static int32_t call_rule_bank_deg(const double *in, double *out)
{
    return lubber_rule_bank_deg(in[0], (int32_t)in[1], &out[0]);
}

static size_t many_rule_bank_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_bank_deg_n(count, in[0], in_stride[0], (int32_t)in[1][0], out[0], out_stride[0], status);
}

static int32_t call_rule_turn_radius_nm(const double *in, double *out)
{
    return lubber_rule_turn_radius_nm(in[0], (int32_t)in[1], &out[0]);
}

static size_t many_rule_turn_radius_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_turn_radius_nm_n(count, in[0], in_stride[0], (int32_t)in[1][0], out[0], out_stride[0], status);
}

static int32_t call_rule_radials_per_mile(const double *in, double *out)
{
    return lubber_rule_radials_per_mile(in[0], &out[0]);
}

static size_t many_rule_radials_per_mile(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_radials_per_mile_n(count, in[0], in_stride[0], out[0], out_stride[0], status);
}

static int32_t call_rule_lead_radials_deg(const double *in, double *out)
{
    return lubber_rule_lead_radials_deg(in[0], in[1], (int32_t)in[2], (int32_t)in[3], &out[0]);
}

static size_t many_rule_lead_radials_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_lead_radials_deg_n(count, in[0], in_stride[0], in[1], in_stride[1], (int32_t)in[2][0], (int32_t)in[3][0], out[0], out_stride[0], status);
}

static int32_t call_rule_off_course_nm(const double *in, double *out)
{
    return lubber_rule_off_course_nm(in[0], in[1], &out[0]);
}

static size_t many_rule_off_course_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rule_off_course_nm_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_observe(const double *in, double *out)
{
    return lubber_observe(in[0], in[1], in[2], in[3], in[4], in[5], in[6], &out[0], &out[1], &out[2], &out[3]);
}

static size_t many_observe(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_observe_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], status);
}

static int32_t call_cone_radius_nm(const double *in, double *out)
{
    return lubber_cone_radius_nm(in[0], in[1], &out[0]);
}

static size_t many_cone_radius_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_cone_radius_nm_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_successive_turns(const double *in, double *out)
{
    return lubber_successive_turns(in[0], in[1], in[2], in[3], (int32_t)in[4], (int32_t)in[5], in[6], in[7], in[8], in[9], in[10], in[11], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5], &out[6], &out[7], &out[8], &out[9]);
}

static size_t many_successive_turns(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_successive_turns_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], (int32_t)in[4][0], (int32_t)in[5][0], in[6], in_stride[6], in[7], in_stride[7], in[8], in_stride[8], in[9], in_stride[9], in[10], in_stride[10], in[11], in_stride[11], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], out[6], out_stride[6], out[7], out_stride[7], out[8], out_stride[8], out[9], out_stride[9], status);
}

static int32_t call_stabilization_distance_nm(const double *in, double *out)
{
    return lubber_stabilization_distance_nm((int32_t)in[0], in[1], in[2], in[3], in[4], in[5], &out[0]);
}

static size_t many_stabilization_distance_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_stabilization_distance_nm_n(count, (int32_t)in[0][0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], out[0], out_stride[0], status);
}

static int32_t call_tangent_turn(const double *in, double *out)
{
    return lubber_tangent_turn(in[0], in[1], in[2], in[3], in[4], in[5], in[6], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5], &out[6], &out[7], &out[8], &out[9]);
}

static size_t many_tangent_turn(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_tangent_turn_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], out[6], out_stride[6], out[7], out_stride[7], out[8], out_stride[8], out[9], out_stride[9], status);
}

static int32_t call_tangent_turn_between_legs(const double *in, double *out)
{
    return lubber_tangent_turn_between_legs(in[0], in[1], in[2], in[3], in[4], in[5], in[6], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5], &out[6], &out[7], &out[8], &out[9]);
}

static size_t many_tangent_turn_between_legs(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_tangent_turn_between_legs_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], out[6], out_stride[6], out[7], out_stride[7], out[8], out_stride[8], out[9], out_stride[9], status);
}

static int32_t call_offset_tangent_turn(const double *in, double *out)
{
    return lubber_offset_tangent_turn(in[0], in[1], in[2], in[3], in[4], in[5], in[6], in[7], in[8], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5], &out[6], &out[7], &out[8], &out[9]);
}

static size_t many_offset_tangent_turn(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_offset_tangent_turn_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], in[7], in_stride[7], in[8], in_stride[8], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], out[6], out_stride[6], out[7], out_stride[7], out[8], out_stride[8], out[9], out_stride[9], status);
}

static int32_t call_time_to_fly_s(const double *in, double *out)
{
    return lubber_time_to_fly_s(in[0], in[1], &out[0]);
}

static size_t many_time_to_fly_s(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_time_to_fly_s_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_distance_flown_nm(const double *in, double *out)
{
    return lubber_distance_flown_nm(in[0], in[1], &out[0]);
}

static size_t many_distance_flown_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_distance_flown_nm_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_groundspeed_from_time_kt(const double *in, double *out)
{
    return lubber_groundspeed_from_time_kt(in[0], in[1], &out[0]);
}

static size_t many_groundspeed_from_time_kt(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_groundspeed_from_time_kt_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_time_between_fixes_s(const double *in, double *out)
{
    return lubber_time_between_fixes_s(in[0], in[1], in[2], in[3], in[4], &out[0]);
}

static size_t many_time_between_fixes_s(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_time_between_fixes_s_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], out[0], out_stride[0], status);
}

static int32_t call_station_by_bearing_change(const double *in, double *out)
{
    return lubber_station_by_bearing_change(in[0], in[1], in[2], in[3], &out[0], &out[1], &out[2]);
}

static size_t many_station_by_bearing_change(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_station_by_bearing_change_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], status);
}

static int32_t call_time_to_station_rule_s(const double *in, double *out)
{
    return lubber_time_to_station_rule_s(in[0], in[1], &out[0]);
}

static size_t many_time_to_station_rule_s(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_time_to_station_rule_s_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_total_temperature_degc(const double *in, double *out)
{
    return lubber_total_temperature_degc(in[0], in[1], in[2], &out[0]);
}

static size_t many_total_temperature_degc(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_total_temperature_degc_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], status);
}

static int32_t call_static_temperature_degc(const double *in, double *out)
{
    return lubber_static_temperature_degc(in[0], in[1], in[2], &out[0]);
}

static size_t many_static_temperature_degc(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_static_temperature_degc_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], status);
}

static int32_t call_transition_level_ft(const double *in, double *out)
{
    return lubber_transition_level_ft(in[0], in[1], in[2], in[3], &out[0]);
}

static size_t many_transition_level_ft(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_transition_level_ft_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], out[0], out_stride[0], status);
}

static int32_t call_true_altitude_ft(const double *in, double *out)
{
    return lubber_true_altitude_ft(in[0], in[1], in[2], in[3], &out[0]);
}

static size_t many_true_altitude_ft(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_true_altitude_ft_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], out[0], out_stride[0], status);
}

static int32_t call_height_above_station_ft(const double *in, double *out)
{
    return lubber_height_above_station_ft(in[0], in[1], in[2], in[3], &out[0]);
}

static size_t many_height_above_station_ft(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_height_above_station_ft_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], out[0], out_stride[0], status);
}

static int32_t call_pressure_altitude_at_true_altitude_ft(const double *in, double *out)
{
    return lubber_pressure_altitude_at_true_altitude_ft(in[0], in[1], in[2], in[3], &out[0]);
}

static size_t many_pressure_altitude_at_true_altitude_ft(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_pressure_altitude_at_true_altitude_ft_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], out[0], out_stride[0], status);
}

static int32_t call_turn_radius_nm(const double *in, double *out)
{
    return lubber_turn_radius_nm(in[0], in[1], &out[0]);
}

static size_t many_turn_radius_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_turn_radius_nm_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_turn_rate_deg_per_s(const double *in, double *out)
{
    return lubber_turn_rate_deg_per_s(in[0], in[1], &out[0]);
}

static size_t many_turn_rate_deg_per_s(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_turn_rate_deg_per_s_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_bank_for_rate_deg(const double *in, double *out)
{
    return lubber_bank_for_rate_deg(in[0], in[1], &out[0]);
}

static size_t many_bank_for_rate_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_bank_for_rate_deg_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_bank_for_radius_deg(const double *in, double *out)
{
    return lubber_bank_for_radius_deg(in[0], in[1], &out[0]);
}

static size_t many_bank_for_radius_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_bank_for_radius_deg_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_radius_at_rate_nm(const double *in, double *out)
{
    return lubber_radius_at_rate_nm(in[0], in[1], &out[0]);
}

static size_t many_radius_at_rate_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_radius_at_rate_nm_n(count, in[0], in_stride[0], in[1], in_stride[1], out[0], out_stride[0], status);
}

static int32_t call_load_factor(const double *in, double *out)
{
    return lubber_load_factor(in[0], &out[0]);
}

static size_t many_load_factor(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_load_factor_n(count, in[0], in_stride[0], out[0], out_stride[0], status);
}

static int32_t call_bank_for_load_factor_deg(const double *in, double *out)
{
    return lubber_bank_for_load_factor_deg(in[0], &out[0]);
}

static size_t many_bank_for_load_factor_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_bank_for_load_factor_deg_n(count, in[0], in_stride[0], out[0], out_stride[0], status);
}

static int32_t call_limited_turn(const double *in, double *out)
{
    return lubber_limited_turn(in[0], in[1], in[2], &out[0], &out[1], &out[2], &out[3]);
}

static size_t many_limited_turn(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_limited_turn_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], status);
}

static int32_t call_rolled_turn(const double *in, double *out)
{
    return lubber_rolled_turn(in[0], in[1], in[2], in[3], in[4], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5]);
}

static size_t many_rolled_turn(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_rolled_turn_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], out[3], out_stride[3], out[4], out_stride[4], out[5], out_stride[5], status);
}

static int32_t call_icao_wind_kt(const double *in, double *out)
{
    return lubber_icao_wind_kt(in[0], (int32_t)in[1], &out[0]);
}

static size_t many_icao_wind_kt(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_icao_wind_kt_n(count, in[0], in_stride[0], (int32_t)in[1][0], out[0], out_stride[0], status);
}

static int32_t call_turn_wind_effect_nm(const double *in, double *out)
{
    return lubber_turn_wind_effect_nm(in[0], in[1], in[2], &out[0]);
}

static size_t many_turn_wind_effect_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_turn_wind_effect_nm_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], status);
}

static int32_t call_base_turn_template(const double *in, double *out)
{
    return lubber_base_turn_template(in[0], in[1], in[2], in[3], &out[0], &out[1], &out[2]);
}

static size_t many_base_turn_template(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_base_turn_template_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], status);
}

static int32_t call_base_turn_sector_nm(const double *in, double *out)
{
    return lubber_base_turn_sector_nm(in[0], in[1], (int32_t)in[2], &out[0]);
}

static size_t many_base_turn_sector_nm(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_base_turn_sector_nm_n(count, in[0], in_stride[0], in[1], in_stride[1], (int32_t)in[2][0], out[0], out_stride[0], status);
}

static int32_t call_wind_triangle(const double *in, double *out)
{
    return lubber_wind_triangle(in[0], in[1], in[2], in[3], &out[0], &out[1]);
}

static size_t many_wind_triangle(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_wind_triangle_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], out[0], out_stride[0], out[1], out_stride[1], status);
}

static int32_t call_wind_correction_deg(const double *in, double *out)
{
    return lubber_wind_correction_deg(in[0], in[1], in[2], in[3], &out[0]);
}

static size_t many_wind_correction_deg(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_wind_correction_deg_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], out[0], out_stride[0], status);
}

static int32_t call_track_and_groundspeed(const double *in, double *out)
{
    return lubber_track_and_groundspeed(in[0], in[1], in[2], in[3], &out[0], &out[1], &out[2]);
}

static size_t many_track_and_groundspeed(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_track_and_groundspeed_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], out[0], out_stride[0], out[1], out_stride[1], out[2], out_stride[2], status);
}

static int32_t call_wind_from_track(const double *in, double *out)
{
    return lubber_wind_from_track(in[0], in[1], in[2], in[3], &out[0], &out[1]);
}

static size_t many_wind_from_track(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_wind_from_track_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], out[0], out_stride[0], out[1], out_stride[1], status);
}

static int32_t call_wind_components(const double *in, double *out)
{
    return lubber_wind_components(in[0], in[1], in[2], &out[0], &out[1]);
}

static size_t many_wind_components(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_wind_components_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], out[1], out_stride[1], status);
}

static int32_t call_wind_from_components(const double *in, double *out)
{
    return lubber_wind_from_components(in[0], in[1], in[2], &out[0], &out[1]);
}

static size_t many_wind_from_components(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_wind_from_components_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], out[0], out_stride[0], out[1], out_stride[1], status);
}

static int32_t call_airspeed_for_groundspeed(const double *in, double *out)
{
    return lubber_airspeed_for_groundspeed(in[0], in[1], in[2], in[3], &out[0], &out[1]);
}

static size_t many_airspeed_for_groundspeed(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_airspeed_for_groundspeed_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], out[0], out_stride[0], out[1], out_stride[1], status);
}

static int32_t call_wind_between_levels(const double *in, double *out)
{
    return lubber_wind_between_levels(in[0], in[1], in[2], in[3], in[4], in[5], in[6], &out[0], &out[1]);
}

static size_t many_wind_between_levels(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_wind_between_levels_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], out[0], out_stride[0], out[1], out_stride[1], status);
}

static int32_t call_wind_between_levels_by_method(const double *in, double *out)
{
    return lubber_wind_between_levels_by_method(in[0], in[1], in[2], in[3], in[4], in[5], in[6], (int32_t)in[7], &out[0], &out[1]);
}

static size_t many_wind_between_levels_by_method(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_wind_between_levels_by_method_n(count, in[0], in_stride[0], in[1], in_stride[1], in[2], in_stride[2], in[3], in_stride[3], in[4], in_stride[4], in[5], in_stride[5], in[6], in_stride[6], (int32_t)in[7][0], out[0], out_stride[0], out[1], out_stride[1], status);
}

static const struct dispatch DISPATCH[] = {
    {"radial_tolerance_deg", 1, 1, "c", {"radial_tolerance_deg"}, 0, {LUBBER_RADIAL_ACCURACY_VOR_INTERSECTING}, call_radial_tolerance_deg, many_radial_tolerance_deg},
    {"radial_error", 4, 2, "nnnn", {"aggregate_deg", "system_use_deg"}, 0, {3.5, 2.7, 3.5, 1.0}, call_radial_error, many_radial_error},
    {"dme_tolerance_nm", 2, 1, "nc", {"dme_tolerance_nm"}, 0, {40.0, LUBBER_DME_ACCURACY_PANS_OPS}, call_dme_tolerance_nm, many_dme_tolerance_nm},
    {"receiver_check_limit_deg", 1, 1, "c", {"receiver_check_limit_deg"}, 0, {LUBBER_RECEIVER_CHECK_AIRBORNE_CHECKPOINT}, call_receiver_check_limit_deg, many_receiver_check_limit_deg},
    {"dme_dme_tolerances", 5, 3, "nnncn", {"along_track_nm", "across_track_nm", "half_width_nm"}, 0, {1.34, 1.0, 1.0, LUBBER_DME_COVERAGE_TWO_STATIONS, 0.25}, call_dme_dme_tolerances, many_dme_dme_tolerances},
    {"standard_atmosphere", 2, 4, "nn", {"temperature_degc", "pressure_hpa", "density_kg_per_m3", "speed_of_sound_kt"}, 1, {35000.0, 0.0}, call_standard_atmosphere, many_standard_atmosphere},
    {"pressure_ratio", 1, 1, "n", {"pressure_ratio"}, 0, {35000.0}, call_pressure_ratio, many_pressure_ratio},
    {"density_ratio", 2, 1, "nn", {"density_ratio"}, 0, {35000.0, 0.0}, call_density_ratio, many_density_ratio},
    {"temperature_ratio", 2, 1, "nn", {"temperature_ratio"}, 0, {35000.0, 0.0}, call_temperature_ratio, many_temperature_ratio},
    {"isa_deviation_k", 2, 1, "nn", {"isa_deviation_k"}, 0, {-45.0, 35000.0}, call_isa_deviation_k, many_isa_deviation_k},
    {"speed_of_sound_kt", 1, 1, "n", {"speed_of_sound_kt"}, 0, {15.0}, call_speed_of_sound_kt, many_speed_of_sound_kt},
    {"pressure_altitude_from_pressure_ft", 1, 1, "n", {"pressure_altitude_from_pressure_ft"}, 0, {500.0}, call_pressure_altitude_from_pressure_ft, many_pressure_altitude_from_pressure_ft},
    {"geopotential_altitude_ft", 1, 1, "n", {"geopotential_altitude_ft"}, 0, {60000.0}, call_geopotential_altitude_ft, many_geopotential_altitude_ft},
    {"geometric_altitude_ft", 1, 1, "n", {"geometric_altitude_ft"}, 0, {60000.0}, call_geometric_altitude_ft, many_geometric_altitude_ft},
    {"tas_from_cas_kt", 3, 1, "nnn", {"tas_from_cas_kt"}, 1, {280.0, 35000.0, 0.0}, call_tas_from_cas_kt, many_tas_from_cas_kt},
    {"cas_from_tas_kt", 3, 1, "nnn", {"cas_from_tas_kt"}, 1, {450.0, 35000.0, 0.0}, call_cas_from_tas_kt, many_cas_from_tas_kt},
    {"indicated_altitude_ft", 2, 1, "nn", {"indicated_altitude_ft"}, 0, {5000.0, 1000.0}, call_indicated_altitude_ft, many_indicated_altitude_ft},
    {"pressure_altitude_ft", 2, 1, "nn", {"pressure_altitude_ft"}, 0, {5000.0, 1000.0}, call_pressure_altitude_ft, many_pressure_altitude_ft},
    {"pressure_altitude_rule_ft", 2, 1, "nn", {"pressure_altitude_rule_ft"}, 0, {5000.0, 1000.0}, call_pressure_altitude_rule_ft, many_pressure_altitude_rule_ft},
    {"altimeter_setting_hpa", 2, 1, "nn", {"altimeter_setting_hpa"}, 0, {832.0, 5430.0}, call_altimeter_setting_hpa, many_altimeter_setting_hpa},
    {"altimeter_setting_smithsonian_hpa", 2, 1, "nn", {"altimeter_setting_smithsonian_hpa"}, 0, {832.0, 5430.0}, call_altimeter_setting_smithsonian_hpa, many_altimeter_setting_smithsonian_hpa},
    {"station_pressure_hpa", 2, 1, "nn", {"station_pressure_hpa"}, 0, {1013.25, 5430.0}, call_station_pressure_hpa, many_station_pressure_hpa},
    {"arc_entry", 10, 7, "ncncnnnnnn", {"radial_at_roll_in_deg", "distance_at_roll_in_nm", "radial_at_roll_out_deg", "distance_at_roll_out_nm", "angle_at_station_deg", "heading_change_deg", "duration_s"}, 0, {300.0, LUBBER_RADIAL_FLOWN_INBOUND, 12.0, LUBBER_ARC_SENSE_CLOCKWISE, 210.0, 250.0, 40.0, 25.0, 3.0, 5.0}, call_arc_entry, many_arc_entry},
    {"arc_exit", 10, 7, "ncncnnnnnn", {"radial_at_roll_in_deg", "distance_at_roll_in_nm", "radial_at_roll_out_deg", "distance_at_roll_out_nm", "angle_at_station_deg", "heading_change_deg", "duration_s"}, 0, {300.0, LUBBER_RADIAL_FLOWN_INBOUND, 12.0, LUBBER_ARC_SENSE_CLOCKWISE, 210.0, 250.0, 40.0, 25.0, 3.0, 5.0}, call_arc_exit, many_arc_exit},
    {"design_base_turn_offset_deg", 3, 1, "nnc", {"design_base_turn_offset_deg"}, 0, {157.23, 120.0, LUBBER_DESIGN_UNITS_NON_SI}, call_design_base_turn_offset_deg, many_design_base_turn_offset_deg},
    {"base_turn_offset_exact_deg", 2, 1, "nn", {"base_turn_offset_exact_deg"}, 0, {0.834, 5.241}, call_base_turn_offset_exact_deg, many_base_turn_offset_exact_deg},
    {"base_turn", 9, 7, "ncnnnnnnn", {"track_deg", "heading_deg", "offset_deg", "outbound_time_s", "heading_change_deg", "established_nm", "duration_s"}, 0, {100.0, LUBBER_HOLDING_SIDE_RIGHT, 120.0, 180.0, 40.0, 25.0, 25.0, 3.0, 5.0}, call_base_turn, many_base_turn},
    {"base_turn_on_track", 8, 7, "nnnnnnnn", {"track_deg", "heading_deg", "offset_deg", "outbound_time_s", "heading_change_deg", "established_nm", "duration_s"}, 0, {100.0, 262.0, 180.0, 40.0, 25.0, 25.0, 3.0, 5.0}, call_base_turn_on_track, many_base_turn_on_track},
    {"course_arc_crossing", 6, 6, "nnnnnn", {"latitude1_deg", "longitude1_deg", "along1_nm", "latitude2_deg", "longitude2_deg", "along2_nm"}, 0, {60.0, -10.0, 90.0, 60.0, -9.0, 12.0}, call_course_arc_crossing, many_course_arc_crossing},
    {"arc_arc_crossing", 6, 4, "nnnnnn", {"latitude1_deg", "longitude1_deg", "latitude2_deg", "longitude2_deg"}, 0, {0.0, 0.0, 150.0, 0.0, -4.991, 150.0}, call_arc_arc_crossing, many_arc_arc_crossing},
    {"arc_tangents", 5, 6, "nnnnn", {"latitude1_deg", "longitude1_deg", "course1_deg", "latitude2_deg", "longitude2_deg", "course2_deg"}, 0, {40.0766111111, -67.2096388889, 40.1734722222, -70.2126666667, 100.0}, call_arc_tangents, many_arc_tangents},
    {"arc_length_nm", 5, 1, "nnnnn", {"arc_length_nm"}, 0, {38.2236388889, -77.9065, 5.0, 91.0, 135.0}, call_arc_length_nm, many_arc_length_nm},
    {"on_arc", 9, 1, "nnnnncnnn", {"on_arc"}, 0, {0.0, 0.0, 60.0, 0.0, 180.0, LUBBER_ARC_SENSE_CLOCKWISE, 0.0, 0.998204, 0.001}, call_on_arc, many_on_arc},
    {"arc_extent", 6, 8, "nnnnnn", {"latitude1_deg", "longitude1_deg", "abeam1_latitude_deg", "abeam1_longitude_deg", "latitude2_deg", "longitude2_deg", "abeam2_latitude_deg", "abeam2_longitude_deg"}, 0, {40.0766111111, -65.2113055556, 350.0, 40.1734722222, -70.2126666667, 50.0}, call_arc_extent, many_arc_extent},
    {"cold_temperature_correction_ft", 3, 1, "nnn", {"cold_temperature_correction_ft"}, 0, {1500.0, -20.0, 0.0}, call_cold_temperature_correction_ft, many_cold_temperature_correction_ft},
    {"cold_temperature_correction_tabulated_ft", 2, 1, "nn", {"cold_temperature_correction_tabulated_ft"}, 0, {1500.0, -20.0}, call_cold_temperature_correction_tabulated_ft, many_cold_temperature_correction_tabulated_ft},
    {"cold_temperature_correction_rule_ft", 3, 1, "nnn", {"cold_temperature_correction_rule_ft"}, 0, {1500.0, -10.0, 0.0}, call_cold_temperature_correction_rule_ft, many_cold_temperature_correction_rule_ft},
    {"cold_temperature_correction_exact_ft", 3, 1, "nnn", {"cold_temperature_correction_exact_ft"}, 0, {1500.0, -20.0, 0.0}, call_cold_temperature_correction_exact_ft, many_cold_temperature_correction_exact_ft},
    {"cross_track", 5, 5, "nnnnn", {"cross_track_nm", "along_track_nm", "abeam_latitude_deg", "abeam_longitude_deg", "abeam_course_deg"}, 0, {0.0, 0.0, 90.0, 0.5, 1.0}, call_cross_track, many_cross_track},
    {"course_crossing", 6, 6, "nnnnnn", {"latitude_deg", "longitude_deg", "along_first_nm", "along_second_nm", "first_course_deg", "second_course_deg"}, 0, {40.1734722222, -70.2126666667, 90.0, 42.0766111111, -68.2113055556, 187.0}, call_course_crossing, many_course_crossing},
    {"on_course", 7, 1, "nnncnnn", {"on_course"}, 0, {0.0, 0.0, 90.0, LUBBER_COURSE_REACH_ONWARD, 0.0, 5.0, 0.0001}, call_on_course, many_on_course},
    {"on_leg", 7, 1, "nnnnnnn", {"on_leg"}, 0, {0.0, 0.0, 0.0, 6.0, 0.0, 7.0, 0.0001}, call_on_leg, many_on_leg},
    {"crossover_altitude_ft", 2, 1, "nn", {"crossover_altitude_ft"}, 0, {300.0, 0.78}, call_crossover_altitude_ft, many_crossover_altitude_ft},
    {"density_altitude_ft", 2, 1, "nn", {"density_altitude_ft"}, 0, {6000.0, 13.0}, call_density_altitude_ft, many_density_altitude_ft},
    {"density_altitude_rule_ft", 2, 1, "nn", {"density_altitude_rule_ft"}, 0, {6000.0, 13.0}, call_density_altitude_rule_ft, many_density_altitude_rule_ft},
    {"arc_heading", 6, 7, "nncnnn", {"track_deg", "heading_deg", "groundspeed_kt", "wind_correction_deg", "station_off_nose_deg", "ahead_of_wing_tip_deg", "bank_deg"}, 0, {130.0, 12.0, LUBBER_ARC_SENSE_CLOCKWISE, 160.0, 310.0, 30.0}, call_arc_heading, many_arc_heading},
    {"arc_flown", 7, 3, "nnncnnn", {"angle_deg", "distance_nm", "time_s"}, 0, {20.0, 110.0, 10.0, LUBBER_ARC_SENSE_CLOCKWISE, 160.0, 310.0, 45.0}, call_arc_flown, many_arc_flown},
    {"arc_chords", 6, 5, "nnnccn", {"legs", "angle_deg", "length_nm", "distance_at_ends_nm", "distance_at_middle_nm"}, 0, {350.0, 50.0, 12.0, LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_CHORD_PLACEMENT_INSIDE, 0.25}, call_arc_chords, many_arc_chords},
    {"arc_chord_leg", 10, 6, "nnnccnnnnn", {"from_radial_deg", "to_radial_deg", "course_deg", "heading_deg", "groundspeed_kt", "time_s"}, 0, {350.0, 50.0, 12.0, LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_CHORD_PLACEMENT_INSIDE, 0.25, 1.0, 150.0, 310.0, 30.0}, call_arc_chord_leg, many_arc_chord_leg},
    {"arc_regained", 8, 6, "nnncnnnn", {"track_deg", "heading_deg", "distance_nm", "time_s", "radial_deg", "angle_deg"}, 0, {200.0, 11.0, 10.0, LUBBER_ARC_SENSE_CLOCKWISE, 30.0, 160.0, 310.0, 30.0}, call_arc_regained, many_arc_regained},
    {"arc_least_correction_deg", 2, 1, "nn", {"arc_least_correction_deg"}, 0, {10.5, 10.0}, call_arc_least_correction_deg, many_arc_least_correction_deg},
    {"rule_arc_correction_deg", 2, 1, "nn", {"rule_arc_correction_deg"}, 0, {9.5, 10.0}, call_rule_arc_correction_deg, many_rule_arc_correction_deg},
    {"geodesic_inverse", 4, 3, "nnnn", {"distance_nm", "initial_bearing_deg", "final_bearing_deg"}, 1, {51.0, 0.0, 52.0, 1.0}, call_geodesic_inverse, many_geodesic_inverse},
    {"slant_range_nm", 2, 1, "nn", {"slant_range_nm"}, 1, {10.0, 30000.0}, call_slant_range_nm, many_slant_range_nm},
    {"geodesic_direct", 4, 3, "nnnn", {"latitude_deg", "longitude_deg", "final_bearing_deg"}, 1, {0.0, 0.0, 90.0, 60.0}, call_geodesic_direct, many_geodesic_direct},
    {"ground_distance_nm", 2, 1, "nn", {"ground_distance_nm"}, 0, {11.159, 30000.0}, call_ground_distance_nm, many_ground_distance_nm},
    {"least_dme_nm", 1, 1, "n", {"least_dme_nm"}, 0, {12000.0}, call_least_dme_nm, many_least_dme_nm},
    {"great_circle_inverse", 5, 3, "nnnnn", {"distance_nm", "initial_bearing_deg", "final_bearing_deg"}, 0, {51.0, 0.0, 52.0, 1.0, 3440.069531}, call_great_circle_inverse, many_great_circle_inverse},
    {"great_circle_direct", 5, 3, "nnnnn", {"latitude_deg", "longitude_deg", "final_bearing_deg"}, 0, {0.0, 0.0, 90.0, 60.0, 3437.746771}, call_great_circle_direct, many_great_circle_direct},
    {"straight_line", 6, 2, "nnnnnn", {"slant_range_nm", "elevation_angle_deg"}, 0, {61.25, -11.5, 420.0, 61.5, -11.0, 31000.0}, call_straight_line, many_straight_line},
    {"eas_from_tas_kt", 3, 1, "nnn", {"eas_from_tas_kt"}, 0, {450.0, 35000.0, 0.0}, call_eas_from_tas_kt, many_eas_from_tas_kt},
    {"tas_from_eas_kt", 3, 1, "nnn", {"tas_from_eas_kt"}, 0, {250.0, 35000.0, 0.0}, call_tas_from_eas_kt, many_tas_from_eas_kt},
    {"eas_from_cas_kt", 2, 1, "nn", {"eas_from_cas_kt"}, 0, {280.0, 35000.0}, call_eas_from_cas_kt, many_eas_from_cas_kt},
    {"cas_from_eas_kt", 2, 1, "nn", {"cas_from_eas_kt"}, 0, {250.0, 35000.0}, call_cas_from_eas_kt, many_cas_from_eas_kt},
    {"eas_from_mach_kt", 2, 1, "nn", {"eas_from_mach_kt"}, 0, {0.78, 35000.0}, call_eas_from_mach_kt, many_eas_from_mach_kt},
    {"mach_from_eas", 2, 1, "nn", {"mach_from_eas"}, 0, {250.0, 35000.0}, call_mach_from_eas, many_mach_from_eas},
    {"radial_error_across_nm", 2, 1, "nn", {"radial_error_across_nm"}, 0, {40.0, 4.5}, call_radial_error_across_nm, many_radial_error_across_nm},
    {"dme_error_along_nm", 3, 1, "nnn", {"dme_error_along_nm"}, 0, {3.0, 0.2, 36000.0}, call_dme_error_along_nm, many_dme_error_along_nm},
    {"fix_of_two_radials", 7, 9, "nnnnnnn", {"semi_major_nm", "semi_minor_nm", "major_axis_deg", "north_nm", "east_nm", "correlation", "along_track_nm", "across_track_nm", "root_mean_square_nm"}, 0, {70.0, 40.0, 340.0, 20.0, 2.25, 2.25, 70.0}, call_fix_of_two_radials, many_fix_of_two_radials},
    {"fix_of_radial_and_dme", 8, 9, "nnnnnnnn", {"semi_major_nm", "semi_minor_nm", "major_axis_deg", "north_nm", "east_nm", "correlation", "along_track_nm", "across_track_nm", "root_mean_square_nm"}, 0, {70.0, 40.0, 70.0, 40.0, 2.25, 0.1, 31000.0, 70.0}, call_fix_of_radial_and_dme, many_fix_of_radial_and_dme},
    {"fix_of_two_dme", 9, 9, "nnnnnnnnn", {"semi_major_nm", "semi_minor_nm", "major_axis_deg", "north_nm", "east_nm", "correlation", "along_track_nm", "across_track_nm", "root_mean_square_nm"}, 0, {70.0, 40.0, 130.0, 55.0, 0.1, 0.1, 0.0, 0.0, 0.0}, call_fix_of_two_dme, many_fix_of_two_dme},
    {"ellipse_factor", 1, 1, "n", {"ellipse_factor"}, 0, {0.95}, call_ellipse_factor, many_ellipse_factor},
    {"grid_from_true_deg", 2, 1, "nn", {"grid_from_true_deg"}, 0, {90.0, 30.0}, call_grid_from_true_deg, many_grid_from_true_deg},
    {"true_from_grid_deg", 2, 1, "nn", {"true_from_grid_deg"}, 0, {60.0, 30.0}, call_true_from_grid_deg, many_true_from_grid_deg},
    {"polar_grid_convergence_deg", 2, 1, "nn", {"polar_grid_convergence_deg"}, 0, {80.0, 30.0}, call_polar_grid_convergence_deg, many_polar_grid_convergence_deg},
    {"lambert_grid_convergence_deg", 4, 1, "nnnn", {"lambert_grid_convergence_deg"}, 0, {-86.0, -96.0, 33.0, 45.0}, call_lambert_grid_convergence_deg, many_lambert_grid_convergence_deg},
    {"transverse_grid_convergence_deg", 3, 1, "nnn", {"transverse_grid_convergence_deg"}, 0, {60.0, -6.0, -9.0}, call_transverse_grid_convergence_deg, many_transverse_grid_convergence_deg},
    {"utm_meridian_deg", 2, 1, "nn", {"utm_meridian_deg"}, 0, {60.0, -10.0}, call_utm_meridian_deg, many_utm_meridian_deg},
    {"holding_entry", 3, 5, "nnc", {"entry", "also", "to_outbound_deg", "to_boundary_deg", "first_course_deg"}, 0, {15.0, 270.0, LUBBER_HOLDING_SIDE_RIGHT}, call_holding_entry, many_holding_entry},
    {"holding_timing", 2, 2, "nc", {"timed", "time_s"}, 0, {14001.0, LUBBER_TIMING_AUTHORITY_ICAO}, call_holding_timing, many_holding_timing},
    {"holding_speed", 2, 3, "nc", {"indicated_kt", "mach", "calibrated_kt"}, 0, {14000.0, LUBBER_HOLDING_SPEED_RULE_FAA}, call_holding_speed, many_holding_speed},
    {"holding_turn", 2, 4, "nc", {"bank_deg", "turn_rate_deg_per_s", "radius_nm", "governed_by"}, 0, {220.0, LUBBER_HOLDING_BANK_RULE_ICAO}, call_holding_turn, many_holding_turn},
    {"outbound_end_dme_nm", 5, 1, "ncnnn", {"outbound_end_dme_nm"}, 0, {30.0, LUBBER_RADIAL_FLOWN_INBOUND, 4.7, 4.9, 14000.0}, call_outbound_end_dme_nm, many_outbound_end_dme_nm},
    {"limiting_dme", 6, 2, "ncnnnn", {"limiting_dme_nm", "rounded_nm"}, 0, {30.0, LUBBER_RADIAL_FLOWN_INBOUND, 4.677, 2.461, 14000.0, 0.0}, call_limiting_dme, many_limiting_dme},
    {"intercept", 9, 10, "nnnnnnnnn", {"track_deg", "heading_deg", "groundspeed_kt", "distance_nm", "time_s", "along_nm", "lead_nm", "distance_to_roll_in_nm", "time_to_roll_in_s", "cross_track_at_roll_in_nm"}, 0, {90.0, -4.0, 30.0, 180.0, 40.0, 35.0, 25.0, 3.0, 5.0}, call_intercept, many_intercept},
    {"radial_intercept", 11, 12, "nnncnnnnnnn", {"heading_deg", "groundspeed_kt", "crossing_distance_nm", "distance_to_crossing_nm", "lead_nm", "time_to_roll_in_s", "radial_at_roll_in_deg", "distance_at_roll_in_nm", "needle_at_roll_in_deg", "cross_track_at_roll_in_nm", "distance_at_roll_out_nm", "turn_duration_s"}, 0, {180.0, 30.0, 200.0, LUBBER_RADIAL_FLOWN_INBOUND, 335.0, 240.0, 250.0, 40.0, 25.0, 3.0, 5.0}, call_radial_intercept, many_radial_intercept},
    {"double_angle_intercept", 6, 5, "nnnnnn", {"track_deg", "heading_deg", "distance_nm", "time_s", "time_to_station_s"}, 0, {150.0, 24.0, 135.0, 200.0, 20.0, 50.0}, call_double_angle_intercept, many_double_angle_intercept},
    {"rule_intercept_angle_deg", 1, 1, "n", {"rule_intercept_angle_deg"}, 0, {15.0}, call_rule_intercept_angle_deg, many_rule_intercept_angle_deg},
    {"rule_intercept_lead_deg", 3, 1, "nnn", {"rule_intercept_lead_deg"}, 0, {15.0, 2.5, 45.0}, call_rule_intercept_lead_deg, many_rule_intercept_lead_deg},
    {"lead_nm", 8, 1, "nnnnnnnn", {"lead_nm"}, 1, {40.0, 110.0, 430.0, 270.0, 60.0, 25.0, 3.0, 5.0}, call_lead_nm, many_lead_nm},
    {"dme_at_roll_in_nm", 9, 1, "nnnnnnnnn", {"dme_at_roll_in_nm"}, 0, {40.0, 110.0, 430.0, 270.0, 60.0, 25.0, 3.0, 5.0, 33000.0}, call_dme_at_roll_in_nm, many_dme_at_roll_in_nm},
    {"turn_anticipation_nm", 2, 1, "nn", {"turn_anticipation_nm"}, 0, {6.33, 90.0}, call_turn_anticipation_nm, many_turn_anticipation_nm},
    {"arc_entry_inbound_nm", 2, 1, "nn", {"arc_entry_inbound_nm"}, 0, {10.0, 2.5}, call_arc_entry_inbound_nm, many_arc_entry_inbound_nm},
    {"arc_entry_outbound_nm", 2, 1, "nn", {"arc_entry_outbound_nm"}, 0, {10.0, 2.5}, call_arc_entry_outbound_nm, many_arc_entry_outbound_nm},
    {"lead_radial_inbound_deg", 2, 1, "nn", {"lead_radial_inbound_deg"}, 0, {12.0, 0.6}, call_lead_radial_inbound_deg, many_lead_radial_inbound_deg},
    {"lead_radial_outbound_deg", 2, 1, "nn", {"lead_radial_outbound_deg"}, 0, {12.0, 0.6}, call_lead_radial_outbound_deg, many_lead_radial_outbound_deg},
    {"leg_meaning", 1, 2, "c", {"path", "end"}, 0, {LUBBER_LEG_CODE_COURSE_TO_DME}, call_leg_meaning, many_leg_meaning},
    {"mach_from_cas", 2, 1, "nn", {"mach_from_cas"}, 1, {280.0, 35000.0}, call_mach_from_cas, many_mach_from_cas},
    {"cas_from_mach_kt", 2, 1, "nn", {"cas_from_mach_kt"}, 0, {0.78, 35000.0}, call_cas_from_mach_kt, many_cas_from_mach_kt},
    {"tas_from_mach_kt", 3, 1, "nnn", {"tas_from_mach_kt"}, 0, {0.78, 35000.0, 0.0}, call_tas_from_mach_kt, many_tas_from_mach_kt},
    {"mach_from_tas", 3, 1, "nnn", {"mach_from_tas"}, 0, {450.0, 35000.0, 0.0}, call_mach_from_tas, many_mach_from_tas},
    {"magnetic_field", 4, 18, "nnnn", {"declination_deg", "inclination_deg", "horizontal_nt", "north_nt", "east_nt", "down_nt", "total_nt", "declination_change_deg", "inclination_change_deg", "horizontal_change_nt", "north_change_nt", "east_change_nt", "down_change_nt", "total_change_nt", "declination_uncertainty_deg", "grid_variation_deg", "zone", "in_date"}, 1, {-80.0, 240.0, 0.0, 2027.5}, call_magnetic_field, many_magnetic_field},
    {"variation_deg", 4, 1, "nnnn", {"variation_deg"}, 1, {-80.0, 240.0, 0.0, 2027.5}, call_variation_deg, many_variation_deg},
    {"decimal_year", 3, 1, "nnn", {"decimal_year"}, 0, {2026.0, 7.0, 2.5}, call_decimal_year, many_decimal_year},
    {"magnetic_from_true_deg", 2, 1, "nn", {"magnetic_from_true_deg"}, 0, {5.0, 12.0}, call_magnetic_from_true_deg, many_magnetic_from_true_deg},
    {"true_from_magnetic_deg", 2, 1, "nn", {"true_from_magnetic_deg"}, 0, {353.0, 12.0}, call_true_from_magnetic_deg, many_true_from_magnetic_deg},
    {"station_misalignment_deg", 2, 1, "nn", {"station_misalignment_deg"}, 0, {-6.0, -3.5}, call_station_misalignment_deg, many_station_misalignment_deg},
    {"radial_from_true_deg", 2, 1, "nn", {"radial_from_true_deg"}, 0, {49.5, -6.0}, call_radial_from_true_deg, many_radial_from_true_deg},
    {"true_from_radial_deg", 2, 1, "nn", {"true_from_radial_deg"}, 0, {56.0, -6.0}, call_true_from_radial_deg, many_true_from_radial_deg},
    {"offset_point", 5, 3, "nnnnn", {"latitude_deg", "longitude_deg", "direction_deg"}, 0, {0.0, 0.0, 90.0, -60.0, 0.0}, call_offset_point, many_offset_point},
    {"offset_cross_track", 6, 5, "nnnnnn", {"cross_track_nm", "along_track_nm", "abeam_latitude_deg", "abeam_longitude_deg", "abeam_direction_deg"}, 0, {0.0, 0.0, 90.0, -60.0, 0.5, 1.0}, call_offset_cross_track, many_offset_cross_track},
    {"on_offset", 8, 1, "nnncnnnn", {"on_offset"}, 0, {0.0, 0.0, 0.0, LUBBER_COURSE_REACH_ONWARD, 60.0, 2.0, 1.0, 0.5}, call_on_offset, many_on_offset},
    {"offset_course_crossing", 7, 3, "nnnnnnn", {"latitude_deg", "longitude_deg", "along_first_nm"}, 0, {0.0, 0.0, 90.0, -60.0, 0.0, 3.0, 0.0}, call_offset_course_crossing, many_offset_course_crossing},
    {"offset_offset_crossing", 8, 4, "nnnnnnnn", {"latitude_deg", "longitude_deg", "along_first_nm", "along_second_nm"}, 0, {0.0, 0.0, 90.0, -60.0, 0.0, 3.0, 0.0, 6.0}, call_offset_offset_crossing, many_offset_offset_crossing},
    {"offset_arc_crossing", 7, 6, "nnnnnnn", {"latitude1_deg", "longitude1_deg", "along1_nm", "latitude2_deg", "longitude2_deg", "along2_nm"}, 0, {60.0, -10.0, 90.0, 4.0, 60.0, -9.0, 12.0}, call_offset_arc_crossing, many_offset_arc_crossing},
    {"isentropic_pressure_ratio", 1, 1, "n", {"isentropic_pressure_ratio"}, 0, {0.84}, call_isentropic_pressure_ratio, many_isentropic_pressure_ratio},
    {"pitot_pressure_ratio", 1, 1, "n", {"pitot_pressure_ratio"}, 0, {1.0}, call_pitot_pressure_ratio, many_pitot_pressure_ratio},
    {"impact_pressure_hpa", 1, 1, "n", {"impact_pressure_hpa"}, 0, {280.0}, call_impact_pressure_hpa, many_impact_pressure_hpa},
    {"cas_from_impact_pressure_kt", 1, 1, "n", {"cas_from_impact_pressure_kt"}, 0, {100.0}, call_cas_from_impact_pressure_kt, many_cas_from_impact_pressure_kt},
    {"procedure_tas_factor", 2, 1, "nn", {"procedure_tas_factor"}, 0, {6000.0, 15.0}, call_procedure_tas_factor, many_procedure_tas_factor},
    {"procedure_turn_45_180", 9, 9, "ncnnnnnnn", {"off_track_deg", "off_heading_deg", "back_heading_deg", "straight_nm", "least_off_time_s", "established_nm", "farthest_nm", "widest_nm", "duration_s"}, 0, {250.0, LUBBER_HOLDING_SIDE_RIGHT, 60.0, 140.0, 200.0, 25.0, 25.0, 3.0, 5.0}, call_procedure_turn_45_180, many_procedure_turn_45_180},
    {"procedure_turn_80_260", 9, 7, "ncnnnnnnn", {"off_heading_deg", "across_nm", "established_nm", "farthest_nm", "widest_nm", "duration_s", "exact_angle_deg"}, 0, {250.0, LUBBER_HOLDING_SIDE_RIGHT, 80.0, 140.0, 200.0, 25.0, 25.0, 3.0, 5.0}, call_procedure_turn_80_260, many_procedure_turn_80_260},
    {"cold_temperature_correction_by_method_ft", 4, 1, "nnnc", {"cold_temperature_correction_by_method_ft"}, 0, {8794.0, -12.0, 3206.0, LUBBER_COLD_TEMPERATURE_METHOD_INTERPOLATED}, call_cold_temperature_correction_by_method_ft, many_cold_temperature_correction_by_method_ft},
    {"procedure_tas_factor_by_method", 3, 1, "nnc", {"procedure_tas_factor_by_method"}, 0, {6069.553806, 15.0, LUBBER_TAS_FACTOR_METHOD_TABLE_METRES}, call_procedure_tas_factor_by_method, many_procedure_tas_factor_by_method},
    {"standard_atmosphere_by_edition", 3, 4, "nnc", {"temperature_degc", "pressure_hpa", "density_kg_per_m3", "speed_of_sound_kt"}, 0, {104986.87664, 0.0, LUBBER_ATMOSPHERE_EDITION_ICAO1993}, call_standard_atmosphere_by_edition, many_standard_atmosphere_by_edition},
    {"published_turn", 3, 2, "nnc", {"turn_rate_deg_per_s", "radius_nm"}, 0, {100.0, 25.0, LUBBER_TURN_CONSTANTS_PANS_OPS}, call_published_turn, many_published_turn},
    {"holding_pattern", 10, 14, "nccnnnnnnn", {"outbound_heading_deg", "outbound_correction_deg", "inbound_correction_deg", "drift_factor", "outbound_time_s", "outbound_clock_s", "inbound_time_s", "duration_s", "outbound_end_before_fix_nm", "outbound_end_across_nm", "inbound_leg_nm", "length_nm", "width_nm", "bank_deg"}, 0, {270.0, LUBBER_HOLDING_SIDE_RIGHT, LUBBER_TIMED_LEG_INBOUND, 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0}, call_holding_pattern, many_holding_pattern},
    {"holding_pattern_at", 11, 4, "nnccnnnnnnn", {"bearing_from_fix_deg", "distance_nm", "heading_deg", "bank_deg"}, 0, {100.0, 270.0, LUBBER_HOLDING_SIDE_RIGHT, LUBBER_TIMED_LEG_INBOUND, 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0}, call_holding_pattern_at, many_holding_pattern_at},
    {"radio_horizon_nm", 3, 1, "nnc", {"radio_horizon_nm"}, 0, {31000.0, 40.0, LUBBER_HORIZON_RULE_FOUR_THIRDS}, call_radio_horizon_nm, many_radio_horizon_nm},
    {"least_reception_height_ft", 3, 1, "nnc", {"least_reception_height_ft"}, 0, {130.0, 0.0, LUBBER_HORIZON_RULE_FOUR_THIRDS}, call_least_reception_height_ft, many_least_reception_height_ft},
    {"service_reach_nm", 3, 1, "cnn", {"service_reach_nm"}, 0, {LUBBER_SERVICE_CLASS_HIGH, 18000.0, 0.0}, call_service_reach_nm, many_service_reach_nm},
    {"vor_needle", 4, 3, "nnnn", {"deviation_deg", "deflection", "to_from"}, 0, {227.0, 50.0, 10.0, 1.0}, call_vor_needle, many_vor_needle},
    {"vor_receiver", 14, 6, "nnnnnnnnnnnnnn", {"flag", "to_from", "deviation_deg", "deflection", "radial_deg", "dme_nm"}, 0, {61.25, -11.5, 420.0, -6.0, 61.5, -11.0, 31000.0, 225.0, 10.0, 1.0, 199.0, 50.0, 0.0, 0.1}, call_vor_receiver, many_vor_receiver},
    {"displayed_dme_nm", 2, 1, "nn", {"displayed_dme_nm"}, 0, {21.46, 0.1}, call_displayed_dme_nm, many_displayed_dme_nm},
    {"cross_track_of_deflection_nm", 3, 1, "nnn", {"cross_track_of_deflection_nm"}, 0, {0.5, 30.0, 10.0}, call_cross_track_of_deflection_nm, many_cross_track_of_deflection_nm},
    {"deflection_of_cross_track", 3, 2, "nnn", {"deviation_deg", "deflection"}, 0, {1.0, 30.0, 10.0}, call_deflection_of_cross_track, many_deflection_of_cross_track},
    {"needle_motion", 4, 2, "nnnn", {"needle_rate_deg_per_s", "full_scale_time_s"}, 0, {180.0, 10.0, -30.0, 10.0}, call_needle_motion, many_needle_motion},
    {"rhumb_inverse", 4, 2, "nnnn", {"distance_nm", "course_deg"}, 0, {60.0, -30.0, 60.0, 30.0}, call_rhumb_inverse, many_rhumb_inverse},
    {"rhumb_direct", 4, 2, "nnnn", {"latitude_deg", "longitude_deg"}, 0, {60.0, -10.0, 45.0, 600.0}, call_rhumb_direct, many_rhumb_direct},
    {"rhumb_excess", 4, 2, "nnnn", {"excess_nm", "conversion_angle_deg"}, 0, {60.0, -30.0, 60.0, 30.0}, call_rhumb_excess, many_rhumb_excess},
    {"splay_distance_nm", 2, 1, "nn", {"splay_distance_nm"}, 0, {4.0, 4.5}, call_splay_distance_nm, many_splay_distance_nm},
    {"route_half_width_nm", 2, 1, "nc", {"route_half_width_nm"}, 0, {50.0, LUBBER_CONTAINMENT_PERCENT95}, call_route_half_width_nm, many_route_half_width_nm},
    {"rule_density_altitude_error", 2, 6, "nn", {"rule_ft", "exact_ft", "error_ft", "standard_ft", "slope_ft", "curve_ft"}, 0, {6000.0, 13.0}, call_rule_density_altitude_error, many_rule_density_altitude_error},
    {"rule_pressure_altitude_error", 2, 6, "nn", {"rule_ft", "exact_ft", "error_ft", "datum_ft", "slope_ft", "curve_ft"}, 0, {5000.0, 1000.0}, call_rule_pressure_altitude_error, many_rule_pressure_altitude_error},
    {"rule_cold_temperature_error", 3, 5, "nnn", {"rule_ft", "exact_ft", "error_ft", "share_ft", "column_ft"}, 0, {1500.0, -10.0, 0.0}, call_rule_cold_temperature_error, many_rule_cold_temperature_error},
    {"rule_arc_entry_lead_nm", 4, 1, "nncc", {"rule_arc_entry_lead_nm"}, 0, {10.0, 2.5, LUBBER_RADIAL_FLOWN_OUTBOUND, LUBBER_ARC_ENTRY_RULE_RADIUS_AND_HALF}, call_rule_arc_entry_lead_nm, many_rule_arc_entry_lead_nm},
    {"rule_arc_entry_lead_error", 4, 5, "nncc", {"rule_nm", "exact_nm", "error_nm", "radius_nm", "curve_nm"}, 0, {10.0, 2.5, LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_ARC_ENTRY_RULE_RADIUS_AND_HALF}, call_rule_arc_entry_lead_error, many_rule_arc_entry_lead_error},
    {"rule_radials_per_mile_error", 1, 3, "n", {"rule", "exact", "error"}, 0, {12.0}, call_rule_radials_per_mile_error, many_rule_radials_per_mile_error},
    {"rule_arc_correction_error", 2, 3, "nn", {"rule_deg", "exact_deg", "error_deg"}, 0, {10.5, 10.0}, call_rule_arc_correction_error, many_rule_arc_correction_error},
    {"rule_intercept_angle_error", 1, 5, "n", {"rule_deg", "exact_deg", "error_deg", "limits_deg", "doubling_deg"}, 0, {15.0}, call_rule_intercept_angle_error, many_rule_intercept_angle_error},
    {"rule_intercept_lead_error", 3, 6, "nnn", {"rule_deg", "exact_deg", "error_deg", "sixty_deg", "share_deg", "arc_deg"}, 0, {15.0, 2.5, 60.0}, call_rule_intercept_lead_error, many_rule_intercept_lead_error},
    {"rule_least_dme_error", 1, 3, "n", {"rule_nm", "exact_nm", "error_nm"}, 0, {36000.0}, call_rule_least_dme_error, many_rule_least_dme_error},
    {"rule_cone_radius_error", 2, 5, "nn", {"rule_nm", "exact_nm", "error_nm", "mile_nm", "angle_nm"}, 0, {36000.0, 50.0}, call_rule_cone_radius_error, many_rule_cone_radius_error},
    {"rule_bank_error", 2, 3, "nc", {"rule_deg", "exact_deg", "error_deg"}, 0, {120.0, LUBBER_BANK_RULE_TENTH_AND_SEVEN}, call_rule_bank_error, many_rule_bank_error},
    {"rule_turn_radius_error", 2, 3, "nc", {"rule_nm", "exact_nm", "error_nm"}, 0, {250.0, LUBBER_RADIUS_RULE_ONE_PERCENT}, call_rule_turn_radius_error, many_rule_turn_radius_error},
    {"rule_off_course_error", 2, 5, "nn", {"rule_nm", "exact_nm", "error_nm", "dot_nm", "sine_nm"}, 0, {-2.0, 30.0}, call_rule_off_course_error, many_rule_off_course_error},
    {"rule_lead_radials_error", 4, 6, "nncc", {"rule_deg", "exact_deg", "error_deg", "sixty_deg", "correction_deg", "geometry_deg"}, 0, {10.0, 2.5, LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_ARC_LEAD_RULE_PROPORTION}, call_rule_lead_radials_error, many_rule_lead_radials_error},
    {"rule_time_to_station_error", 2, 5, "nn", {"rule_s", "exact_s", "error_s", "sixty_s", "sine_s"}, 0, {75.0, 10.0}, call_rule_time_to_station_error, many_rule_time_to_station_error},
    {"rule_outbound_correction_error", 10, 3, "ncnnnnnnnc", {"rule_deg", "exact_deg", "error_deg"}, 0, {270.0, LUBBER_HOLDING_SIDE_RIGHT, 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0, LUBBER_DRIFT_RULE_TRIPLE}, call_rule_outbound_correction_error, many_rule_outbound_correction_error},
    {"rule_outbound_time_by_headwind_error", 9, 5, "ncnnnnnnn", {"rule_s", "exact_s", "error_s", "knot_s", "turns_s"}, 0, {270.0, LUBBER_HOLDING_SIDE_RIGHT, 60.0, 150.0, 90.0, 20.0, 25.0, 3.0, 5.0}, call_rule_outbound_time_by_headwind_error, many_rule_outbound_time_by_headwind_error},
    {"rule_outbound_time_error", 10, 5, "ncnnnnnnnn", {"rule_s", "exact_s", "error_s", "groundspeed_s", "heading_s"}, 0, {270.0, LUBBER_HOLDING_SIDE_RIGHT, 60.0, 60.0, 150.0, 90.0, 20.0, 25.0, 3.0, 5.0}, call_rule_outbound_time_error, many_rule_outbound_time_error},
    {"rule_lead_error", 10, 16, "nnnnnnnnnc", {"rule_lead_nm", "exact_lead_nm", "lead_error_nm", "rule_reading_nm", "exact_reading_nm", "reading_error_nm", "allowance_nm", "round_radius_nm", "proportion_nm", "standard_rate_nm", "groundspeed_nm", "heading_change_nm", "drift_nm", "roll_nm", "mile_nm", "sum_nm"}, 0, {40.0, 130.0, 450.0, 36000.0, 0.0, 0.0, 25.0, 3.0, 5.0, LUBBER_LEAD_RULE_THIRD}, call_rule_lead_error, many_rule_lead_error},
    {"rule_lead_flown", 14, 7, "nnnnnnnnnccnnn", {"reading_nm", "before_station_nm", "overshoot_nm", "past_station_nm", "began_in_cone", "ended_in_cone", "verdict"}, 0, {40.0, 130.0, 450.0, 36000.0, 0.0, 0.0, 25.0, 3.0, 5.0, LUBBER_LEAD_RULE_THIRD, LUBBER_TURN_CUE_READING, 50.0, 0.5, 1.0}, call_rule_lead_flown, many_rule_lead_flown},
    {"rule_holds_at_height_ft", 9, 1, "nnnnnnnnc", {"rule_holds_at_height_ft"}, 0, {40.0, 130.0, 350.0, 0.0, 0.0, 25.0, 3.0, 5.0, LUBBER_LEAD_RULE_THIRD}, call_rule_holds_at_height_ft, many_rule_holds_at_height_ft},
    {"rule_outbound_heading_deg", 3, 1, "nnc", {"rule_outbound_heading_deg"}, 0, {270.0, 5.0, LUBBER_DRIFT_RULE_TRIPLE}, call_rule_outbound_heading_deg, many_rule_outbound_heading_deg},
    {"rule_outbound_time_s", 3, 1, "nnn", {"rule_outbound_time_s"}, 0, {60.0, 50.0, 60.0}, call_rule_outbound_time_s, many_rule_outbound_time_s},
    {"rule_outbound_time_by_headwind_s", 2, 1, "nn", {"rule_outbound_time_by_headwind_s"}, 0, {60.0, -15.0}, call_rule_outbound_time_by_headwind_s, many_rule_outbound_time_by_headwind_s},
    {"rule_slant_negligible_from_nm", 1, 1, "n", {"rule_slant_negligible_from_nm"}, 0, {30000.0}, call_rule_slant_negligible_from_nm, many_rule_slant_negligible_from_nm},
    {"rule_ground_distance_error", 2, 5, "nn", {"rule_nm", "exact_nm", "error_nm", "triangle_nm", "curve_nm"}, 0, {30.0, 30000.0}, call_rule_ground_distance_error, many_rule_ground_distance_error},
    {"rule_radio_horizon_error", 3, 5, "nnc", {"rule_nm", "exact_nm", "error_nm", "factor_nm", "root_nm"}, 0, {35000.0, 0.0, LUBBER_HORIZON_RULE_FIVE_QUARTERS}, call_rule_radio_horizon_error, many_rule_radio_horizon_error},
    {"rule_roll_out_lead_deg", 2, 1, "nc", {"rule_roll_out_lead_deg"}, 0, {24.0, LUBBER_ROLL_OUT_RULE_THIRD}, call_rule_roll_out_lead_deg, many_rule_roll_out_lead_deg},
    {"rule_roll_out_lead_error", 4, 5, "nnnc", {"rule_deg", "exact_deg", "error_deg", "share_deg", "tangent_deg"}, 0, {120.0, 18.0, 5.0, LUBBER_ROLL_OUT_RULE_THIRD}, call_rule_roll_out_lead_error, many_rule_roll_out_lead_error},
    {"rule_lead_nm", 3, 1, "nnn", {"rule_lead_nm"}, 0, {180.0, 90.0, 0.0}, call_rule_lead_nm, many_rule_lead_nm},
    {"rule_reading_nm", 3, 1, "nnn", {"rule_reading_nm"}, 0, {450.0, 60.0, 36000.0}, call_rule_reading_nm, many_rule_reading_nm},
    {"rule_least_dme_nm", 1, 1, "n", {"rule_least_dme_nm"}, 0, {12000.0}, call_rule_least_dme_nm, many_rule_least_dme_nm},
    {"rule_cone_radius_nm", 1, 1, "n", {"rule_cone_radius_nm"}, 0, {36000.0}, call_rule_cone_radius_nm, many_rule_cone_radius_nm},
    {"rule_bank_deg", 2, 1, "nc", {"rule_bank_deg"}, 0, {120.0, LUBBER_BANK_RULE_TENTH_AND_SEVEN}, call_rule_bank_deg, many_rule_bank_deg},
    {"rule_turn_radius_nm", 2, 1, "nc", {"rule_turn_radius_nm"}, 0, {250.0, LUBBER_RADIUS_RULE_ONE_PERCENT}, call_rule_turn_radius_nm, many_rule_turn_radius_nm},
    {"rule_radials_per_mile", 1, 1, "n", {"rule_radials_per_mile"}, 0, {12.0}, call_rule_radials_per_mile, many_rule_radials_per_mile},
    {"rule_lead_radials_deg", 4, 1, "nncc", {"rule_lead_radials_deg"}, 0, {10.0, 2.5, LUBBER_RADIAL_FLOWN_INBOUND, LUBBER_ARC_LEAD_RULE_PROPORTION}, call_rule_lead_radials_deg, many_rule_lead_radials_deg},
    {"rule_off_course_nm", 2, 1, "nn", {"rule_off_course_nm"}, 0, {-2.0, 30.0}, call_rule_off_course_nm, many_rule_off_course_nm},
    {"observe", 7, 4, "nnnnnnn", {"radial_deg", "dme_nm", "ground_distance_nm", "elevation_angle_deg"}, 1, {61.25, -11.5, 420.0, -6.0, 61.5, -11.0, 31000.0}, call_observe, many_observe},
    {"cone_radius_nm", 2, 1, "nn", {"cone_radius_nm"}, 0, {35000.0, 50.0}, call_cone_radius_nm, many_cone_radius_nm},
    {"successive_turns", 12, 10, "nnnnccnnnnnn", {"past_first_nm", "before_second_nm", "spare_nm", "straight_time_s", "largest_true_airspeed_kt", "largest_groundspeed_kt", "bank_needed_deg", "crossing_past_first_nm", "crossing_before_second_nm", "crossing_lead_nm"}, 0, {40.0, 130.0, 60.0, 8.0, LUBBER_PASSAGE_FLY_BY, LUBBER_PASSAGE_FLY_BY, 400.0, 300.0, 40.0, 25.0, 3.0, 5.0}, call_successive_turns, many_successive_turns},
    {"stabilization_distance_nm", 6, 1, "cnnnnn", {"stabilization_distance_nm"}, 0, {LUBBER_PASSAGE_FLY_BY, 90.0, 250.0, 25.0, 3.0, 15.0}, call_stabilization_distance_nm, many_stabilization_distance_nm},
    {"tangent_turn", 7, 10, "nnnnnnn", {"center_latitude_deg", "center_longitude_deg", "begin_latitude_deg", "begin_longitude_deg", "end_latitude_deg", "end_longitude_deg", "begin_bearing_deg", "end_bearing_deg", "length_nm", "side"}, 0, {40.1734722222, -70.2126666667, 90.0, 42.0766111111, -68.2096388889, 7.0, 75.0}, call_tangent_turn, many_tangent_turn},
    {"tangent_turn_between_legs", 7, 10, "nnnnnnn", {"center_latitude_deg", "center_longitude_deg", "begin_latitude_deg", "begin_longitude_deg", "end_latitude_deg", "end_longitude_deg", "begin_bearing_deg", "end_bearing_deg", "length_nm", "side"}, 0, {40.1734722222, -70.2126666667, 90.0, 42.0766111111, -68.2096388889, 7.0, 75.0}, call_tangent_turn_between_legs, many_tangent_turn_between_legs},
    {"offset_tangent_turn", 9, 10, "nnnnnnnnn", {"center_latitude_deg", "center_longitude_deg", "begin_latitude_deg", "begin_longitude_deg", "end_latitude_deg", "end_longitude_deg", "begin_bearing_deg", "end_bearing_deg", "length_nm", "side"}, 0, {60.0, -10.0, 0.0, 2.0, 60.5, -10.0, 90.0, 2.0, 3.0}, call_offset_tangent_turn, many_offset_tangent_turn},
    {"time_to_fly_s", 2, 1, "nn", {"time_to_fly_s"}, 0, {55.0, 220.0}, call_time_to_fly_s, many_time_to_fly_s},
    {"distance_flown_nm", 2, 1, "nn", {"distance_flown_nm"}, 0, {220.0, 900.0}, call_distance_flown_nm, many_distance_flown_nm},
    {"groundspeed_from_time_kt", 2, 1, "nn", {"groundspeed_from_time_kt"}, 0, {55.0, 900.0}, call_groundspeed_from_time_kt, many_groundspeed_from_time_kt},
    {"time_between_fixes_s", 5, 1, "nnnnn", {"time_between_fixes_s"}, 0, {51.0, 0.0, 52.0, 1.0, 420.0}, call_time_between_fixes_s, many_time_between_fixes_s},
    {"station_by_bearing_change", 4, 3, "nnnn", {"distance_nm", "time_s", "distance_before_nm"}, 0, {75.0, 10.0, 120.0, 90.0}, call_station_by_bearing_change, many_station_by_bearing_change},
    {"time_to_station_rule_s", 2, 1, "nn", {"time_to_station_rule_s"}, 0, {75.0, 10.0}, call_time_to_station_rule_s, many_time_to_station_rule_s},
    {"total_temperature_degc", 3, 1, "nnn", {"total_temperature_degc"}, 0, {-54.0, 0.82, 1.0}, call_total_temperature_degc, many_total_temperature_degc},
    {"static_temperature_degc", 3, 1, "nnn", {"static_temperature_degc"}, 0, {-24.5, 0.82, 1.0}, call_static_temperature_degc, many_static_temperature_degc},
    {"transition_level_ft", 4, 1, "nnnn", {"transition_level_ft"}, 0, {5000.0, 1003.0, 0.0, 500.0}, call_transition_level_ft, many_transition_level_ft},
    {"true_altitude_ft", 4, 1, "nnnn", {"true_altitude_ft"}, 0, {10000.0, 1013.25, 0.0, -20.0}, call_true_altitude_ft, many_true_altitude_ft},
    {"height_above_station_ft", 4, 1, "nnnn", {"height_above_station_ft"}, 0, {10000.0, 995.0, 2000.0, 15.0}, call_height_above_station_ft, many_height_above_station_ft},
    {"pressure_altitude_at_true_altitude_ft", 4, 1, "nnnn", {"pressure_altitude_at_true_altitude_ft"}, 0, {10000.0, 1013.25, 0.0, -20.0}, call_pressure_altitude_at_true_altitude_ft, many_pressure_altitude_at_true_altitude_ft},
    {"turn_radius_nm", 2, 1, "nn", {"turn_radius_nm"}, 1, {450.0, 25.0}, call_turn_radius_nm, many_turn_radius_nm},
    {"turn_rate_deg_per_s", 2, 1, "nn", {"turn_rate_deg_per_s"}, 0, {120.0, 30.0}, call_turn_rate_deg_per_s, many_turn_rate_deg_per_s},
    {"bank_for_rate_deg", 2, 1, "nn", {"bank_for_rate_deg"}, 0, {180.0, 3.0}, call_bank_for_rate_deg, many_bank_for_rate_deg},
    {"bank_for_radius_deg", 2, 1, "nn", {"bank_for_radius_deg"}, 0, {450.0, 6.33}, call_bank_for_radius_deg, many_bank_for_radius_deg},
    {"radius_at_rate_nm", 2, 1, "nn", {"radius_at_rate_nm"}, 0, {180.0, 3.0}, call_radius_at_rate_nm, many_radius_at_rate_nm},
    {"load_factor", 1, 1, "n", {"load_factor"}, 0, {60.0}, call_load_factor, many_load_factor},
    {"bank_for_load_factor_deg", 1, 1, "n", {"bank_for_load_factor_deg"}, 0, {1.3}, call_bank_for_load_factor_deg, many_bank_for_load_factor_deg},
    {"limited_turn", 3, 4, "nnn", {"bank_deg", "turn_rate_deg_per_s", "radius_nm", "governed_by"}, 0, {157.23, 25.0, 3.0}, call_limited_turn, many_limited_turn},
    {"rolled_turn", 5, 6, "nnnnn", {"bank_deg", "duration_s", "roll_duration_s", "advance_nm", "transfer_nm", "governed_by"}, 0, {450.0, 90.0, 25.0, 3.0, 5.0}, call_rolled_turn, many_rolled_turn},
    {"icao_wind_kt", 2, 1, "nc", {"icao_wind_kt"}, 0, {6000.0, LUBBER_DESIGN_UNITS_NON_SI}, call_icao_wind_kt, many_icao_wind_kt},
    {"turn_wind_effect_nm", 3, 1, "nnn", {"turn_wind_effect_nm"}, 0, {190.0, 3.0, 59.0}, call_turn_wind_effect_nm, many_turn_wind_effect_nm},
    {"base_turn_template", 4, 3, "nnnn", {"leg_nm", "nearest_nm", "farthest_nm"}, 0, {157.23, 120.0, 59.0, 0.83}, call_base_turn_template, many_base_turn_template},
    {"base_turn_sector_nm", 3, 1, "nnc", {"base_turn_sector_nm"}, 0, {180.0, 120.0, LUBBER_DESIGN_UNITS_NON_SI}, call_base_turn_sector_nm, many_base_turn_sector_nm},
    {"wind_triangle", 4, 2, "nnnn", {"heading_deg", "groundspeed_kt"}, 1, {90.0, 120.0, 45.0, 40.0}, call_wind_triangle, many_wind_triangle},
    {"wind_correction_deg", 4, 1, "nnnn", {"wind_correction_deg"}, 0, {90.0, 120.0, 45.0, 40.0}, call_wind_correction_deg, many_wind_correction_deg},
    {"track_and_groundspeed", 4, 3, "nnnn", {"track_deg", "groundspeed_kt", "drift_deg"}, 0, {315.0, 150.0, 45.0, 30.0}, call_track_and_groundspeed, many_track_and_groundspeed},
    {"wind_from_track", 4, 2, "nnnn", {"wind_from_deg", "wind_speed_kt"}, 0, {104.0, 165.0, 94.0, 146.0}, call_wind_from_track, many_wind_from_track},
    {"wind_components", 3, 2, "nnn", {"headwind_kt", "crosswind_kt"}, 0, {90.0, 120.0, 20.0}, call_wind_components, many_wind_components},
    {"wind_from_components", 3, 2, "nnn", {"wind_from_deg", "wind_speed_kt"}, 0, {90.0, 17.32, 10.0}, call_wind_from_components, many_wind_from_components},
    {"airspeed_for_groundspeed", 4, 2, "nnnn", {"heading_deg", "true_airspeed_kt"}, 0, {351.0, 232.0, 33.0, 47.0}, call_airspeed_for_groundspeed, many_airspeed_for_groundspeed},
    {"wind_between_levels", 7, 2, "nnnnnnn", {"wind_from_deg", "wind_speed_kt"}, 0, {21000.0, 18000.0, 270.0, 40.0, 24000.0, 300.0, 60.0}, call_wind_between_levels, many_wind_between_levels},
    {"wind_between_levels_by_method", 8, 2, "nnnnnnnc", {"wind_from_deg", "wind_speed_kt"}, 0, {5500.0, 3000.0, 280.0, 25.0, 6000.0, 270.0, 28.0, LUBBER_WIND_INTERPOLATION_DIRECTION_AND_SPEED}, call_wind_between_levels_by_method, many_wind_between_levels_by_method},
};

#define DISPATCH_COUNT (sizeof DISPATCH / sizeof DISPATCH[0])

#endif
