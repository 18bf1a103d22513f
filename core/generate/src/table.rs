//! Writes `core/src/plain/table.rs`: every function as data, for the bindings and the tests.

use std::fmt::Write;

use crate::model::{Function, Kind, Model};

const HEAD: &str = "
/// A plain function as data: its name, the names of its arguments and outputs, and itself.
#[derive(Debug, Clone, Copy)]
pub struct Function {
    /// Its name.
    pub name: &'static str,
    /// The names of its arguments, which end in their units.
    pub inputs: &'static [&'static str],
    /// The names of its outputs, which end in their units.
    pub outputs: &'static [&'static str],
    /// Computes one point: arguments in, outputs out, in the order of their names. Choices are given by their codes. On an
    /// error every output is NaN. Slices of another length give NaN too.
    pub run: fn(&[f64], &mut [f64]) -> Result<(), Error>,
}

impl Function {
    /// The function of a name.
    pub fn named(name: &str) -> Option<&'static Self> {
        FUNCTIONS.iter().find(|function| function.name == name)
    }
}
";

pub fn emit(model: &Model, banner: &str) -> String {
    let mut text = format!(
        "// {banner}\n\n//! Every plain function as data, for what treats them alike: the bindings and the tests.\n\nuse crate::Error;\n{HEAD}"
    );
    text.push_str("\n/// Every plain function, in the order of `docs/functions.md`.\npub const FUNCTIONS: &[Function] = &[\n");
    for function in &model.functions {
        entry(&mut text, function, model);
    }
    text.push_str("];\n");
    text
}

fn entry(text: &mut String, function: &Function, model: &Model) {
    let quoted =
        |names: Vec<&str>| names.iter().map(|name| format!("\"{name}\"")).collect::<Vec<_>>().join(", ");
    let inputs: Vec<&str> = function.parameters.iter().map(|parameter| parameter.name.as_str()).collect();
    let outputs: Vec<&str> = function.outputs.iter().map(|output| output.name.as_str()).collect();
    let pattern = inputs.join(", ");
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
    let slots = (1..=outputs.len()).map(|index| format!("output_{index}")).collect::<Vec<_>>().join(", ");
    let result = if function.result.is_some() {
        let fields = outputs.iter().map(|name| format!("answer.{name}")).collect::<Vec<_>>().join(", ");
        format!("[{fields}]")
    } else {
        "[answer]".to_string()
    };
    // The function itself passes a NaN on, but it is not reached with a code that is a NaN, or wrong beside one.
    let nan_first = if function.parameters.iter().all(|parameter| parameter.kind == Kind::Number) {
        ""
    } else {
        "            if inputs.iter().any(|input| input.is_nan()) { return Ok(()) }\n"
    };
    let _ = writeln!(
        text,
        "    Function {{
        name: \"{name}\",
        inputs: &[{inputs}],
        outputs: &[{outputs}],
        run: |inputs, outputs| {{
            outputs.fill(f64::NAN);
            let (&[{pattern}], [{slots}]) = (inputs, outputs) else {{ return Ok(()) }};
{nan_first}            let answer = super::{name}({arguments})?;
            [*{slots_assign}] = {result};
            Ok(())
        }},
    }},",
        name = function.name,
        inputs = quoted(inputs.clone()),
        outputs = quoted(outputs.clone()),
        slots_assign = slots.replace(", ", ", *"),
    );
}
