/* The published check values of tests/data/published, through the C interface. Arguments: the files. */

#include <stdlib.h>
#include <string.h>

#include "expect.h"
#include "generated_dispatch.h"

enum { COLUMNS = 11, ID = 0, FUNCTION, INPUTS, OUTPUT, SCALE, OFFSET, EXPECTED, TOLERANCE, NOTE = 10 };

static int recorded = 0;

/* Cuts a line into its columns in place; a quoted column may hold commas and doubled quotes. */
static int cut(char *line, char **columns)
{
    int count = 0;
    char *from = line, *to = line;
    while (count < COLUMNS) {
        int quoted = *from == '"';
        from += quoted;
        columns[count++] = to;
        for (; *from && *from != '\n' && *from != '\r' && (quoted || *from != ','); from++) {
            if (quoted && *from == '"') {
                if (from[1] != '"') {
                    quoted = 0;
                    continue;
                }
                from++;
            }
            *to++ = *from;
        }
        int more = *from == ',';
        from += more;
        *to++ = '\0';
        if (!more)
            break;
    }
    return count;
}

static void check(char **columns, const char *file)
{
    double in[MOST_OPERANDS] = {0}, out[MOST_OPERANDS];
    int inputs = 0;
    for (char *part = strtok(columns[INPUTS], ";"); part && inputs < MOST_OPERANDS; part = strtok(NULL, ";"))
        in[inputs++] = strtod(part, NULL);
    for (size_t index = 0; index < DISPATCH_COUNT; index++) {
        const struct dispatch *function = &DISPATCH[index];
        if (strcmp(function->name, columns[FUNCTION]) != 0)
            continue;
        expect_true(function->inputs == inputs, "the number of inputs", __LINE__);
        int32_t status = function->call(in, out);
        for (int output = 0; output < function->outputs; output++) {
            if (strcmp(function->output_names[output], columns[OUTPUT]) != 0)
                continue;
            if (strcmp(columns[EXPECTED], "none") == 0) {
                /* No answer, and not for a value out of its range: those statuses end at -99. */
                expect_true(status < -99 && isnan(out[output]), columns[ID], __LINE__);
                return;
            }
            double value = out[output] * strtod(columns[SCALE], NULL) + strtod(columns[OFFSET], NULL);
            double expected = strtod(columns[EXPECTED], NULL), tolerance = strtod(columns[TOLERANCE], NULL);
            if (strncmp(columns[NOTE], "not held:", 9) == 0) {
                recorded++;
                return;
            }
            expect_checks++;
            if (status != LUBBER_OK || !(fabs(value - expected) <= tolerance)) {
                expect_failures++;
                printf("%s %s: %.15g, published %.15g within %g (%s)\n", file, columns[ID], value, expected, tolerance,
                       lubber_status_text(status));
            }
            return;
        }
        expect_true(0, columns[OUTPUT], __LINE__);
        return;
    }
    expect_true(0, columns[FUNCTION], __LINE__);
}

int main(int count, char **arguments)
{
    static char line[65536];
    for (int index = 1; index < count; index++) {
        FILE *file = fopen(arguments[index], "r");
        expect_true(file != NULL, arguments[index], __LINE__);
        if (!file)
            continue;
        int first = 1;
        while (fgets(line, sizeof line, file)) {
            char *columns[COLUMNS];
            int found = cut(line, columns);
            if (!first && columns[0][0] != '\0') {
                expect_true(found == COLUMNS, columns[0], __LINE__);
                if (found == COLUMNS)
                    check(columns, arguments[index]);
            }
            first = 0;
        }
        fclose(file);
    }
    printf("%d recorded as not held\n", recorded);
    return expect_close();
}
