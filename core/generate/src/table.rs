//! Writes `core/src/plain/table.rs`: every function as data, for the bindings and the tests.

use std::fmt::Write;

use crate::model::{Function, Kind, Model};

pub fn emit(model: &Model, banner: &str) -> String {
    let mut text = format!(
        "// {banner}

//! Every plain function as data, for what treats them alike: the bindings and the tests.

use super::block::{{columns, each, wanted}};
use super::function::one;
pub use super::function::{{Block, Function}};
use crate::Error;

/// Every plain function, in the order of `docs/functions.md`.
pub const FUNCTIONS: &[Function] = &[
"
    );
    for function in &model.functions {
        entry(&mut text, function);
    }
    text.push_str("];\n");
    for function in &model.functions {
        arrays(&mut text, function, model);
    }
    text
}

fn entry(text: &mut String, function: &Function) {
    let quoted =
        |names: Vec<&String>| names.iter().map(|name| format!("\"{name}\"")).collect::<Vec<_>>().join(", ");
    let name = &function.name;
    let block = if function.whole {
        format!("super::{}::{name}_block(inputs, outputs, statuses, {name})", function.module)
    } else if function.block {
        let how = if function.wanted { "wanted" } else { "columns" };
        format!("{how}(inputs, outputs, statuses, super::{}::{name}_block, {name})", function.module)
    } else {
        format!("each(inputs, outputs, statuses, {name})")
    };
    let _ = writeln!(
        text,
        "    Function {{
        name: \"{name}\",
        inputs: &[{inputs}],
        outputs: &[{outputs}],
        run: |inputs, outputs| one(inputs, outputs, {name}),
        block: |inputs, outputs, statuses| {block},
    }},",
        inputs = quoted(function.parameters.iter().map(|parameter| &parameter.name).collect()),
        outputs = quoted(function.outputs.iter().map(|output| &output.name).collect()),
    );
}

/// The function on arrays instead of names.
fn arrays(text: &mut String, function: &Function, model: &Model) {
    let (name, inputs, outputs) = (&function.name, function.parameters.len(), function.outputs.len());
    let names = function.parameters.iter().map(|parameter| parameter.name.as_str()).collect::<Vec<_>>();
    let given = names.join(", ");
    let arguments = function
        .parameters
        .iter()
        .map(|parameter| match &parameter.kind {
            Kind::Number => parameter.name.clone(),
            Kind::Choice(choice) => {
                let module = model.choice(choice).map_or("", |choice| choice.module.as_str());
                format!("crate::{module}::{choice}::from_code(\"{0}\", {0})?", parameter.name)
            }
        })
        .collect::<Vec<_>>()
        .join(", ");
    let answer = if function.result.is_some() {
        let fields = function.outputs.iter().map(|output| format!("answer.{}", output.name));
        fields.collect::<Vec<_>>().join(", ")
    } else {
        "answer".to_string()
    };
    // The function itself passes a NaN on, but it is not reached with a code that is a NaN, or wrong beside one.
    let nan_first = if function.parameters.iter().all(|parameter| parameter.kind == Kind::Number) {
        String::new()
    } else {
        let test = format!("[{given}].iter().any(|input: &f64| input.is_nan())");
        format!("    if {test} {{\n        return Ok([f64::NAN; {outputs}]);\n    }}\n")
    };
    let _ = write!(
        text,
        "
fn {name}([{given}]: [f64; {inputs}]) -> Result<[f64; {outputs}], Error> {{
{nan_first}    super::{name}({arguments}).map(|answer| [{answer}])
}}
"
    );
}
