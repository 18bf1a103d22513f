//! Writes the Python binding's named functions; their documentation and the type stubs have files of their own.

mod docstring;
mod stubs;

use std::fmt::Write;

use crate::model::{Choice, Example, Function, Kind, Model, ResultStruct};
use crate::text::{links, screaming};

pub use stubs::{stubs, ufunc_stubs};

/// `python/package/lubberline/_functions.py`.
pub fn functions(model: &Model, banner: &str) -> String {
    let mut text = format!(
        "# {banner}
\"\"\"The plain functions by name, for numbers and for arrays.\"\"\"

from typing import NamedTuple

from . import ufunc
from ._call import calm, chosen, many, named, scalars

"
    );
    listed(&mut text, model);
    for choice in model.parameter_choices() {
        let pairs = choice.alternatives.iter().map(|one| format!("\"{}\": {}", one.word, one.code));
        let _ = write!(text, "\n_{} = {{{}}}\n", constant(choice), pairs.collect::<Vec<_>>().join(", "));
    }
    let mut declared = Vec::new();
    for function in &model.functions {
        if let Some(result) = undeclared(function, &mut declared) {
            let _ = write!(
                text,
                "\n\nclass {}(NamedTuple):\n    \"\"\"{}\"\"\"\n\n",
                result.name,
                code(&result.doc)
            );
            for output in &function.outputs {
                let _ = write!(text, "    {}: object\n    \"\"\"{}\"\"\"\n", output.name, code(&output.doc));
            }
        }
        self::function(&mut text, function, model);
    }
    text
}

/// The functions and the named tuples they give, as what the module exports.
fn listed(text: &mut String, model: &Model) {
    let results = model.functions.iter().filter_map(|function| function.result.as_ref());
    let mut names: Vec<&str> = model.functions.iter().map(|function| function.name.as_str()).collect();
    names.extend(results.map(|result| result.name.as_str()));
    names.sort_unstable();
    names.dedup();
    list(text, &names);
}

/// `__all__` of names.
fn list(text: &mut String, names: &[impl AsRef<str>]) {
    text.push_str("__all__ = [\n");
    for name in names {
        let _ = writeln!(text, "    \"{}\",", name.as_ref());
    }
    text.push_str("]\n");
}

/// The named tuple of a function, the first time one of its functions comes.
fn undeclared<'a>(function: &'a Function, declared: &mut Vec<&'a str>) -> Option<&'a ResultStruct> {
    let result = function.result.as_ref().filter(|result| !declared.contains(&result.name.as_str()))?;
    declared.push(&result.name);
    Some(result)
}

fn function(text: &mut String, function: &Function, model: &Model) {
    let name = &function.name;
    let _ = write!(text, "\n\ndef {name}({}, **kwargs):\n", signature(function));
    docstring::write(text, function, model);
    for parameter in &function.parameters {
        if let Kind::Choice(choice) = &parameter.kind
            && let Some(choice) = model.choice(choice)
        {
            let _ = writeln!(text, "    {0} = chosen(_{1}, \"{0}\", {0})", parameter.name, constant(choice));
        }
    }
    if function.may_be_calm() {
        text.push_str(
            "    if wind_from_deg is None or wind_speed_kt is None:
        wind_from_deg, wind_speed_kt = calm(wind_from_deg, wind_speed_kt)
",
        );
    }
    let names: Vec<&str> = function.parameters.iter().map(|parameter| parameter.name.as_str()).collect();
    let names = names.join(", ");
    let _ = write!(
        text,
        "    if not kwargs:\n        answer = _scalar_{name}({names})\n        if answer is not None:\n"
    );
    match &function.result {
        None => {
            let _ = write!(text, "            return answer\n    return ufunc.{name}({names}, **kwargs)\n");
        }
        Some(ResultStruct { name: result, .. }) => {
            let comma = if function.parameters.len() == 1 { "," } else { "" };
            let _ = write!(
                text,
                "            return named({result}, answer)
    return {result}._make(many(\"{name}\", {result}._fields, ({names}{comma}), kwargs))
"
            );
        }
    }
    let _ = write!(text, "\n\n_scalar_{name} = scalars[\"{name}\"]\n");
}

/// From which parameter on all have a default: one without may not follow one with it.
fn first_default(function: &Function) -> usize {
    let required = function.parameters.iter().rposition(|parameter| parameter.default.is_none());
    required.map_or(0, |last| last + 1)
}

fn signature(function: &Function) -> String {
    let from = first_default(function);
    let parts = function.parameters.iter().enumerate().map(|(index, parameter)| match &parameter.default {
        Some(_) if function.is_half_a_wind(parameter) => format!("{}=None", parameter.name),
        Some(default) if index >= from => match parameter.kind {
            Kind::Number => format!("{}={}", parameter.name, default.replace('_', "")),
            Kind::Choice(_) => format!("{}=\"{}\"", parameter.name, default.trim_matches('"')),
        },
        _ => parameter.name.clone(),
    });
    parts.collect::<Vec<_>>().join(", ")
}

/// The words of a choice, quoted.
fn words(name: &str, model: &Model) -> String {
    let alternatives = model.choice(name).map_or(&[][..], |choice| &choice.alternatives);
    alternatives.iter().map(|one| format!("\"{}\"", one.word)).collect::<Vec<_>>().join(", ")
}

/// The arguments of an example, as Python writes them.
pub fn arguments(function: &Function, example: &Example, model: &Model) -> Vec<String> {
    let pairs = example.arguments.iter().zip(&function.parameters);
    let written = pairs.map(|(argument, parameter)| match &parameter.kind {
        Kind::Number => argument.replace('_', "").replace("f64::INFINITY", "float('inf')"),
        Kind::Choice(name) => {
            let variant = argument.rsplit("::").next().unwrap_or(argument);
            let alternatives = model.choice(name).map_or(&[][..], |choice| &choice.alternatives);
            let one = alternatives.iter().find(|one| one.variant == variant);
            format!("'{}'", one.map_or(variant, |one| one.word.as_str()))
        }
    });
    written.collect()
}

fn constant(choice: &Choice) -> String {
    screaming(&choice.name)
}

/// Rust's links and tripled quotes have no place in a docstring.
fn code(text: &str) -> String {
    links(text, |name| format!("`{name}`")).replace("\"\"\"", "'''")
}
