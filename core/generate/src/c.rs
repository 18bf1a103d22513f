//! Writes the C binding: `ffi/src/generated.rs`, the header by cbindgen, and the generated C tests.

use std::fmt::Write;
use std::path::Path;

use anyhow::{Result, anyhow};

use crate::model::{Choice, Example, Function, Kind, Model, Parameter};
use crate::statuses::{Status, screaming};

/// The Rust side of the C functions.
pub fn rust(model: &Model, statuses: &[Status], banner: &str) -> String {
    let mut text = format!(
        "// {banner}

//! The C functions of the plain layer, its choices and its status codes.

#![allow(clippy::too_many_arguments, reason = \"the C interface takes plain numbers\")]

use std::ffi::c_char;

use lubberline::plain;

use crate::call::{{Array, many, one}};

/// Success.
pub const LUBBER_OK: i32 = 0;
/// A failure inside the library that none should meet; the outputs are NaN.
pub const LUBBER_ERROR_INTERNAL: i32 = -1000;
/// A pointer to a structure is null, or its `struct_size` is not one this library knows.
pub const LUBBER_ERROR_STRUCT: i32 = -1001;
"
    );
    for status in statuses {
        let _ = writeln!(
            text,
            "/// {}.\npub const LUBBER_ERROR_{}: i32 = {};",
            sentence(&status.text),
            status.constant,
            status.code
        );
    }
    for choice in &model.choices {
        for alternative in &choice.alternatives {
            let doc = sentence(&alternative.doc);
            let _ = writeln!(
                text,
                "/// {doc}\npub const {}: i32 = {};",
                constant(choice, &alternative.variant),
                alternative.code
            );
        }
    }
    let _ = write!(
        text,
        "
/// What a status means: a text that lives forever; for a number that is no status, a text that says so. Never null.
#[unsafe(no_mangle)]
pub extern \"C\" fn lubber_status_text(status: i32) -> *const c_char {{
    let text = match status {{
        LUBBER_OK => c\"ok\",
        LUBBER_ERROR_INTERNAL => c\"internal error\",
        LUBBER_ERROR_STRUCT => c\"a pointer to a structure is null, or its struct_size is unknown\",
"
    );
    for status in statuses {
        let _ = writeln!(text, "        {} => c{:?},", status.code, status.text);
    }
    text.push_str("        _ => c\"unknown status\",\n    };\n    text.as_ptr()\n}\n");
    for function in &model.functions {
        single(&mut text, function, model);
        array(&mut text, function, model);
    }
    text
}

fn sentence(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or(String::new(), |first| first.to_uppercase().chain(letters).collect())
}

fn constant(choice: &Choice, variant: &str) -> String {
    format!("LUBBER_{}_{}", screaming(&choice.name), screaming(variant))
}

fn comment(text: &mut String, body: &str) {
    for line in body.lines() {
        let _ = writeln!(text, "/// {line}");
    }
}

/// The words of a parameter, with the constants of a choice.
fn parameter_doc(parameter: &Parameter, model: &Model) -> String {
    match &parameter.kind {
        Kind::Number => parameter.doc.clone(),
        Kind::Choice(name) => {
            let constants = model.choice(name).map(|choice| {
                let names =
                    choice.alternatives.iter().map(|alternative| constant(choice, &alternative.variant));
                names.collect::<Vec<_>>().join(", ")
            });
            format!("{}: {}", parameter.doc, constants.unwrap_or_default())
        }
    }
}

/// The function for one point.
fn single(text: &mut String, function: &Function, model: &Model) {
    let name = &function.name;
    text.push('\n');
    comment(text, &function.doc.summary);
    if !function.doc.text.is_empty() {
        text.push_str("///\n");
        comment(text, &function.doc.text);
    }
    text.push_str("///\n");
    for parameter in &function.parameters {
        let _ = writeln!(text, "/// @param {} {}", parameter.name, parameter_doc(parameter, model));
    }
    for output in &function.outputs {
        let meaning = if function.result.is_some() { output.doc.as_str() } else { "the result" };
        let _ = writeln!(text, "/// @param[out] {} {meaning}; may be NULL", output.name);
    }
    text.push_str("/// @return LUBBER_OK, or a negative status with every output NaN\n///\n");
    for (heading, body) in [
        ("Accuracy", &function.doc.accuracy),
        ("Degenerate cases", &function.doc.degenerate),
        ("Errors", &function.doc.errors),
        ("Source", &function.doc.source),
    ] {
        comment(text, &format!("{heading}: {body}"));
    }
    if let Some(example) = function.doc.examples.first() {
        let _ = writeln!(
            text,
            "///\n/// Example: {} gives {}",
            c_call(function, example, model),
            example.printed
        );
    }
    let parameters = function.parameters.iter().map(|parameter| match &parameter.kind {
        Kind::Number => format!("    {}: f64,\n", parameter.name),
        Kind::Choice(_) => format!("    {}: i32,\n", parameter.name),
    });
    let outputs = function
        .outputs
        .iter()
        .map(|output| format!("    {}: *mut f64,\n", output_parameter(function, &output.name)));
    let arguments = function.parameters.iter().map(|parameter| match &parameter.kind {
        Kind::Number => parameter.name.clone(),
        Kind::Choice(choice) => {
            let module = model.choice(choice).map_or("", |choice| choice.module.as_str());
            format!("lubberline::{module}::{choice}::from_code(\"{0}\", f64::from({0}))?", parameter.name)
        }
    });
    let answer = if function.result.is_some() {
        let fields = function.outputs.iter().map(|output| format!("answer.{}", output.name));
        format!("[{}]", fields.collect::<Vec<_>>().join(", "))
    } else {
        "[answer]".to_string()
    };
    let pointers = function
        .outputs
        .iter()
        .map(|output| output_parameter(function, &output.name))
        .collect::<Vec<_>>()
        .join(", ");
    let _ = write!(
        text,
        "///
/// # Safety
/// Each output must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern \"C\" fn lubber_{name}(
{}{}) -> i32 {{
    let answer = || plain::{name}({}).map(|answer| {answer});
    // SAFETY: the caller vouches for the outputs.
    unsafe {{ one(answer, [{pointers}]) }}
}}
",
        parameters.collect::<String>(),
        outputs.collect::<String>(),
        arguments.collect::<Vec<_>>().join(", "),
    );
}

/// An output must not take the name of a parameter, nor of the function.
fn output_parameter(function: &Function, name: &str) -> String {
    if function.parameters.iter().any(|parameter| parameter.name == name) {
        format!("{name}_out")
    } else {
        name.to_string()
    }
}

/// The function for arrays.
fn array(text: &mut String, function: &Function, model: &Model) {
    let name = &function.name;
    let mut parameters = String::from("    count: usize,\n");
    let mut inputs = Vec::new();
    let mut kept = String::new();
    for parameter in &function.parameters {
        let name = &parameter.name;
        match parameter.kind {
            Kind::Number => {
                let _ = write!(parameters, "    {name}: *const f64,\n    {name}_stride: isize,\n");
                inputs.push(format!("Array::input({name}, {name}_stride)"));
            }
            Kind::Choice(_) => {
                let _ = writeln!(parameters, "    {name}: i32,");
                let _ = writeln!(kept, "    let {name} = f64::from({name});");
                inputs.push(format!("Array::input(&raw const {name}, 0)"));
            }
        }
    }
    let mut outputs = Vec::new();
    for output in &function.outputs {
        let output = output_parameter(function, &output.name);
        let _ = write!(parameters, "    {output}: *mut f64,\n    {output}_stride: isize,\n");
        outputs.push(format!("Array::output({output}, {output}_stride)"));
    }
    parameters.push_str("    status: *mut i32,\n");
    text.push('\n');
    let _ = writeln!(
        text,
        "/// `lubber_{name}` for arrays: `count` points, each operand with its stride in bytes (0 for one value for all)."
    );
    let choices = function.parameters.iter().filter(|parameter| parameter.kind != Kind::Number);
    for parameter in choices {
        let _ = writeln!(
            text,
            "///\n/// `{}` is one code for all points: {}",
            parameter.name,
            parameter_doc(parameter, model)
        );
    }
    let _ = write!(
        text,
        "///
/// @return how many points failed; their outputs are NaN, and `status`, if not NULL, holds the code of each point
///
/// # Safety
/// Each operand must be readable (an output that is not null: writable) at every point; they may overlap point by point.
#[unsafe(no_mangle)]
pub unsafe extern \"C\" fn lubber_{name}_n(
{parameters}) -> usize {{
{kept}    let (inputs, outputs) = ([{}], [{}]);
    // SAFETY: the caller vouches for the arrays.
    unsafe {{ many(\"{name}\", count, &inputs, &outputs, status) }}
}}
",
        inputs.join(", "),
        outputs.join(", "),
    );
}

/// A Rust argument of an example as C writes it.
fn c_argument(argument: &str, kind: &Kind, model: &Model) -> String {
    match kind {
        Kind::Number => argument.replace('_', "").replace("f64::INFINITY", "INFINITY"),
        Kind::Choice(name) => {
            let variant = argument.rsplit("::").next().unwrap_or(argument);
            model.choice(name).map_or_else(String::new, |choice| constant(choice, variant))
        }
    }
}

fn c_arguments(function: &Function, example: &Example, model: &Model) -> Vec<String> {
    let pairs = example.arguments.iter().zip(&function.parameters);
    pairs.map(|(argument, parameter)| c_argument(argument, &parameter.kind, model)).collect()
}

/// The call of an example, with the address of the output it looks at.
fn c_call(function: &Function, example: &Example, model: &Model) -> String {
    let mut arguments = c_arguments(function, example, model);
    for output in &function.outputs {
        let wanted = example.output.as_ref().is_none_or(|name| *name == output.name);
        arguments.push(if wanted { "&value".to_string() } else { "NULL".to_string() });
    }
    format!("lubber_{}({})", function.name, arguments.join(", "))
}

/// The header, by cbindgen from the committed sources.
pub fn header(root: &Path, generated: &str) -> Result<String> {
    let folder = root.join("ffi");
    let config = cbindgen::Config::from_file(folder.join("cbindgen.toml")).map_err(|error| anyhow!(error))?;
    // The header is made from what is about to be written, which may not be on the disk yet.
    let scratch = std::env::temp_dir().join(format!("lubberline-header-{}", std::process::id()));
    std::fs::create_dir_all(&scratch)?;
    let mut builder = cbindgen::Builder::new().with_config(config);
    for (name, text) in [
        ("generated.rs", generated.to_string()),
        ("course_change.rs", std::fs::read_to_string(folder.join("src/course_change.rs"))?),
        ("version.rs", std::fs::read_to_string(folder.join("src/version.rs"))?),
    ] {
        let path = scratch.join(name);
        std::fs::write(&path, text)?;
        builder = builder.with_src(path);
    }
    let bindings = builder.generate()?;
    let mut bytes = Vec::new();
    bindings.write(&mut bytes);
    std::fs::remove_dir_all(&scratch)?;
    // Rust's own section for its callers says nothing to a C programmer.
    let text = String::from_utf8(bytes)?;
    let mut kept = Vec::new();
    let mut skipping = false;
    for line in text.lines() {
        let body = line.trim_start_matches([' ', '*']);
        if body == "# Safety" {
            skipping = true;
            if kept.last().is_some_and(|last: &&str| last.trim() == "*") {
                kept.pop();
            }
        }
        skipping &= !line.trim_start().starts_with("*/");
        if !skipping {
            kept.push(line);
        }
    }
    Ok(kept.join("\n") + "\n")
}

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

/// A C table from names to functions, for tests that read them from data.
pub fn dispatch(model: &Model, banner: &str) -> String {
    let mut text = format!(
        "/* {banner} */

#ifndef GENERATED_DISPATCH_H
#define GENERATED_DISPATCH_H

#include \"lubberline.h\"

/* A function of the library on arrays of its arguments and outputs; choices are given by their codes. */
struct dispatch {{
    const char *name;
    int inputs;
    int outputs;
    const char *output_names[24];
    int32_t (*call)(const double *in, double *out);
}};

"
    );
    for function in &model.functions {
        let inputs = function.parameters.iter().enumerate().map(|(index, parameter)| match parameter.kind {
            Kind::Number => format!("in[{index}]"),
            Kind::Choice(_) => format!("(int32_t)in[{index}]"),
        });
        let outputs = (0..function.outputs.len()).map(|index| format!("&out[{index}]"));
        let arguments = inputs.chain(outputs).collect::<Vec<_>>().join(", ");
        let _ = write!(
            text,
            "static int32_t call_{0}(const double *in, double *out)\n{{\n    return lubber_{0}({arguments});\n}}\n\n",
            function.name
        );
    }
    text.push_str("static const struct dispatch DISPATCH[] = {\n");
    for function in &model.functions {
        let names = function
            .outputs
            .iter()
            .map(|output| format!("\"{}\"", output.name))
            .collect::<Vec<_>>()
            .join(", ");
        let _ = writeln!(
            text,
            "    {{\"{0}\", {1}, {2}, {{{names}}}, call_{0}}},",
            function.name,
            function.parameters.len(),
            function.outputs.len()
        );
    }
    text.push_str("};\n\n#define DISPATCH_COUNT (sizeof DISPATCH / sizeof DISPATCH[0])\n\n#endif\n");
    text
}
