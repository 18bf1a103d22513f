//! Writes `ffi/src/generated.rs`: the Rust side of the C functions.

use std::fmt::Write;

use super::{c_call, constant, constants, output_parameter, words};
use crate::model::{Function, Kind, Model, Parameter};
use crate::statuses::Status;
use crate::text::sentence;

/// The Rust side of the C functions.
pub fn rust(model: &Model, statuses: &[Status], banner: &str) -> String {
    let mut text = format!(
        "// {banner}

//! The C functions of the plain layer, its choices and its status codes.

#![allow(clippy::too_many_arguments, reason = \"the C interface takes plain numbers\")]

use std::ffi::c_char;

use lubberline::plain;
use lubberline::plain::table::Function;

use crate::call::{{Array, many, one}};

/// Success.
pub const LUBBER_OK: i32 = 0;
/// A failure inside the library that none should meet; the outputs are NaN.
pub const LUBBER_ERROR_INTERNAL: i32 = -1000;
/// A pointer is null, or a structure has a size or a setting that this library does not know.
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
        LUBBER_ERROR_STRUCT => c\"a pointer is null, or a structure has a size or a setting that this library does not know\",
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

fn comment(text: &mut String, body: &str) {
    for line in body.lines() {
        let _ = writeln!(text, "/// {line}");
    }
}

/// The words of a parameter, with the constants of a choice.
fn parameter_doc(parameter: &Parameter, model: &Model) -> String {
    let doc = words(&parameter.doc, model);
    match &parameter.kind {
        Kind::Number => doc,
        Kind::Choice(name) => format!("{doc}: {}", model.choice(name).map(constants).unwrap_or_default()),
    }
}

/// The function for one point.
fn single(text: &mut String, function: &Function, model: &Model) {
    let name = &function.name;
    text.push('\n');
    comment(text, &words(&function.doc.summary, model));
    if !function.doc.text.is_empty() {
        text.push_str("///\n");
        comment(text, &words(&function.doc.text, model));
    }
    text.push_str("///\n");
    for parameter in &function.parameters {
        let _ = writeln!(text, "/// @param {} {}", parameter.name, parameter_doc(parameter, model));
    }
    for output in &function.outputs {
        let doc = words(output.doc.trim_end_matches('.'), model);
        let meaning = if function.result.is_some() { doc.as_str() } else { "the result" };
        let _ = writeln!(
            text,
            "/// @param[out] {} {meaning}; may be NULL",
            output_parameter(function, &output.name)
        );
    }
    text.push_str("/// @return LUBBER_OK, or a negative status with every output NaN\n///\n");
    for (heading, body) in [
        ("Accuracy", &function.doc.accuracy),
        ("Degenerate cases", &function.doc.degenerate),
        ("Errors", &function.doc.errors),
        ("Source", &function.doc.source),
    ] {
        comment(text, &format!("{heading}: {}", words(body, model)));
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
    // The function itself passes a NaN on, but it is not reached with a wrong code beside one.
    let numbers = function.parameters.iter().filter(|parameter| parameter.kind == Kind::Number);
    let numbers = numbers.map(|parameter| parameter.name.as_str()).collect::<Vec<_>>().join(", ");
    let (nan_first, end) = if function.parameters.iter().all(|parameter| parameter.kind == Kind::Number) {
        (String::new(), "")
    } else {
        let nothing = format!("return Ok([f64::NAN; {}])", function.outputs.len());
        (
            format!(
                "{{\n        if [{numbers}].iter().any(|number: &f64| number.is_nan()) {{ {nothing} }}\n        "
            ),
            "\n    }",
        )
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
    let answer = || {nan_first}plain::{name}({}).map(|answer| {answer}){end};
    // SAFETY: the caller vouches for the outputs.
    unsafe {{ one(answer, [{pointers}]) }}
}}
",
        parameters.collect::<String>(),
        outputs.collect::<String>(),
        arguments.collect::<Vec<_>>().join(", "),
    );
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
    unsafe {{ many(const {{ Function::named(\"{name}\") }}, count, &inputs, &outputs, status) }}
}}
",
        inputs.join(", "),
        outputs.join(", "),
    );
}
