//! Writes the C programs that are generated for the tests.

use std::fmt::Write;

use super::{c_arguments, c_call};
use crate::model::{Function, Kind, Model};

/// A C program that asserts every documentation example.
pub fn examples(model: &Model, banner: &str) -> String {
    let mut text = format!(
        "/* {banner} */

#include <math.h>
#include <stdio.h>
#include <string.h>

#include \"lubberline.h\"

static int failures = 0;
static int checks = 0;

static void expect(const char *call, int32_t status, double value, int decimals, const char *printed)
{{
    char text[64];
    snprintf(text, sizeof text, \"%.*f\", decimals, value);
    checks++;
    if (status != LUBBER_OK || strcmp(text, printed) != 0) {{
        failures++;
        printf(\"%s: status %d (%s), got %s, documented %s\\n\", call, (int)status, lubber_status_text(status), text, printed);
    }}
}}

int main(void)
{{
    double value;
    int32_t status;

"
    );
    for function in &model.functions {
        for example in &function.doc.examples {
            let call = c_call(function, example, model);
            let _ = write!(
                text,
                "    value = NAN;\n    status = {call};\n    expect(\"{call}\", status, value, {}, \"{}\");\n",
                example.decimals, example.printed
            );
        }
    }
    text.push_str("\n    printf(\"%d passed, %d failed\\n\", checks - failures, failures);\n    return failures != 0;\n}\n");
    text
}

/// A C table from names to functions, for tests that treat them all alike or read them from data.
pub fn dispatch(model: &Model, banner: &str) -> String {
    let mut text = format!(
        "/* {banner} */

#ifndef GENERATED_DISPATCH_H
#define GENERATED_DISPATCH_H

#include <math.h>

#include \"lubberline.h\"

enum {{ MOST_OPERANDS = 24 }};

/* A function of the library; numbers and codes of choices alike are given as doubles. */
struct dispatch {{
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
}};

"
    );
    for function in &model.functions {
        calls(&mut text, function);
    }
    text.push_str("static const struct dispatch DISPATCH[] = {\n");
    for function in &model.functions {
        row(&mut text, function, model);
    }
    text.push_str("};\n\n#define DISPATCH_COUNT (sizeof DISPATCH / sizeof DISPATCH[0])\n\n#endif\n");
    text
}

/// The two calls of a function, by arrays of its operands.
fn calls(text: &mut String, function: &Function) {
    let name = &function.name;
    let outputs = 0..function.outputs.len();
    let kinds = function.parameters.iter().map(|parameter| &parameter.kind).enumerate();
    let single = kinds.clone().map(|(index, kind)| match kind {
        Kind::Number => format!("in[{index}]"),
        Kind::Choice(_) => format!("(int32_t)in[{index}]"),
    });
    let single = single.chain(outputs.clone().map(|index| format!("&out[{index}]")));
    let many = kinds.map(|(index, kind)| match kind {
        Kind::Number => format!("in[{index}], in_stride[{index}]"),
        Kind::Choice(_) => format!("(int32_t)in[{index}][0]"),
    });
    let many = many.chain(outputs.map(|index| format!("out[{index}], out_stride[{index}]")));
    let _ = write!(
        text,
        "static int32_t call_{name}(const double *in, double *out)
{{
    return lubber_{name}({});
}}

static size_t many_{name}(size_t count, const double *const *in, const ptrdiff_t *in_stride, double *const *out,
                          const ptrdiff_t *out_stride, int32_t *status)
{{
    (void)in_stride; /* a function of choices alone has no use for it */
    return lubber_{name}_n(count, {}, status);
}}

",
        single.collect::<Vec<_>>().join(", "),
        many.collect::<Vec<_>>().join(", ")
    );
}

fn row(text: &mut String, function: &Function, model: &Model) {
    let names = function.outputs.iter().map(|output| format!("\"{}\"", output.name)).collect::<Vec<_>>();
    let kinds = function.parameters.iter().map(|parameter| match parameter.kind {
        Kind::Number => 'n',
        Kind::Choice(_) => 'c',
    });
    let example = function.doc.examples.first();
    let arguments = example.map(|example| c_arguments(function, example, model)).unwrap_or_default();
    let _ = writeln!(
        text,
        "    {{\"{0}\", {1}, {2}, \"{3}\", {{{4}}}, {6}, {{{5}}}, call_{0}, many_{0}}},",
        function.name,
        function.parameters.len(),
        function.outputs.len(),
        kinds.collect::<String>(),
        names.join(", "),
        arguments.join(", "),
        i32::from(function.block)
    );
}
