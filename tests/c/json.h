/* What the C tests that tell an answer as JSON share. */

#ifndef JSON_H
#define JSON_H

#include "expect.h"

static const char *separator = "";

static inline void open_with(const char *name, char bracket)
{
    if (name == NULL)
        printf("%s%c", separator, bracket);
    else
        printf("%s\"%s\": %c", separator, name, bracket);
    separator = "";
}

static inline void close_with(char bracket)
{
    printf("%c\n", bracket);
    separator = ", ";
}

static inline void number(const char *name, double value)
{
    printf(isfinite(value) ? "%s\"%s\": %.17g" : "%s\"%s\": null", separator, name, value);
    separator = ", ";
}

static inline void truth(const char *name, int value)
{
    EXPECT(value == 0 || value == 1);
    printf("%s\"%s\": %s", separator, name, value ? "true" : "false");
    separator = ", ";
}

static inline void word(const char *name, const char *value)
{
    printf("%s\"%s\": \"%s\"", separator, name, value);
    separator = ", ";
}

#endif
