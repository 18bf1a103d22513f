//! Writes the C binding: `ffi/src/generated.rs`, the header by cbindgen, and the generated C tests.

mod binding;
mod header;
mod programs;

pub use binding::rust;
pub use header::header;
pub use programs::{dispatch, examples};

use crate::model::{Choice, Example, Function, Kind, Model};
use crate::text::{links, screaming};

/// The constant of an alternative.
fn constant(choice: &Choice, variant: &str) -> String {
    format!("LUBBER_{}_{}", screaming(&choice.name), screaming(variant))
}

/// The constants of a choice, joined by commas.
fn constants(choice: &Choice) -> String {
    let names = choice.alternatives.iter().map(|alternative| constant(choice, &alternative.variant));
    names.collect::<Vec<_>>().join(", ")
}

/// Documentation as a C programmer reads it: a link becomes the C function, or the constants of the choice.
fn words(text: &str, model: &Model) -> String {
    links(text, |name| match model.choice(name) {
        Some(choice) => constants(choice),
        None if model.functions.iter().any(|function| function.name == name) => format!("`lubber_{name}`"),
        None if model.by_hand.iter().any(|function| function.name == name) => format!("`lubber_{name}`"),
        None => format!("`{name}`"),
    })
}

/// An output must not take the name of a parameter, nor of the function.
fn output_parameter(function: &Function, name: &str) -> String {
    if function.parameters.iter().any(|parameter| parameter.name == name) {
        format!("{name}_out")
    } else {
        name.to_string()
    }
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
