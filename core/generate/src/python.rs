//! Writes the Python binding's named functions and the type stubs.

use std::fmt::Write;

use crate::model::{Choice, Example, Function, Kind, Model, Parameter};

const LINE: usize = 100;

/// `python/package/lubberline/_functions.py`.
pub fn functions(model: &Model, banner: &str) -> String {
    let mut text = format!(
        "# {banner}
\"\"\"The plain functions by name, for numbers and for arrays.\"\"\"

from typing import NamedTuple

from . import ufunc
from ._call import chosen, many, scalars

"
    );
    let _ = writeln!(text, "__all__ = [");
    for name in exported(model) {
        let _ = writeln!(text, "    \"{name}\",");
    }
    text.push_str("]\n");
    for choice in model.parameter_choices() {
        let pairs = choice.alternatives.iter().map(|one| format!("\"{}\": {}", one.word, one.code));
        let _ = write!(text, "\n_{} = {{{}}}\n", constant(choice), pairs.collect::<Vec<_>>().join(", "));
    }
    let mut declared: Vec<&str> = Vec::new();
    for function in &model.functions {
        if let Some(result) = &function.result
            && !declared.contains(&result.name.as_str())
        {
            declared.push(&result.name);
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

fn exported(model: &Model) -> Vec<&str> {
    let mut names: Vec<&str> = model.functions.iter().map(|function| function.name.as_str()).collect();
    names.extend(
        model
            .functions
            .iter()
            .filter_map(|function| function.result.as_ref().map(|result| result.name.as_str())),
    );
    names.sort_unstable();
    names.dedup();
    names
}

fn constant(choice: &Choice) -> String {
    crate::text::screaming(&choice.name)
}

fn signature(function: &Function) -> String {
    // A parameter without a default may not follow one with a default.
    let mut from = function.parameters.len();
    while from > 0 && function.parameters[from - 1].default.is_some() {
        from -= 1;
    }
    let parts = function.parameters.iter().enumerate().map(|(index, parameter)| match &parameter.default {
        Some(default) if index >= from => match parameter.kind {
            Kind::Number => format!("{}={}", parameter.name, default.replace('_', "")),
            Kind::Choice(_) => format!("{}=\"{}\"", parameter.name, default.trim_matches('"')),
        },
        _ => parameter.name.clone(),
    });
    parts.collect::<Vec<_>>().join(", ")
}

fn function(text: &mut String, function: &Function, model: &Model) {
    let name = &function.name;
    let _ = write!(text, "\n\ndef {name}({}, **kwargs):\n", signature(function));
    docstring(text, function, model);
    for parameter in &function.parameters {
        if let Kind::Choice(choice) = &parameter.kind
            && let Some(choice) = model.choice(choice)
        {
            let _ = writeln!(text, "    {0} = chosen(_{1}, \"{0}\", {0})", parameter.name, constant(choice));
        }
    }
    let arguments =
        function.parameters.iter().map(|parameter| parameter.name.as_str()).collect::<Vec<_>>().join(", ");
    let _ = write!(
        text,
        "    if not kwargs:\n        answer = _scalar_{name}({arguments})\n        if answer is not None:\n"
    );
    match &function.result {
        None => {
            let _ =
                write!(text, "            return answer\n    return ufunc.{name}({arguments}, **kwargs)\n");
        }
        Some(result) => {
            let comma = if function.parameters.len() == 1 { "," } else { "" };
            let _ = write!(
                text,
                "            return {0}._make(answer)\n    return {0}._make(many(\"{name}\", {0}._fields, ({arguments}{comma}), kwargs))\n",
                result.name
            );
        }
    }
    let _ = write!(text, "\n\n_scalar_{name} = scalars[\"{name}\"]\n");
}

/// The documentation in the form NumPy's projects use.
fn docstring(text: &mut String, function: &Function, model: &Model) {
    let _ = writeln!(text, "    r\"\"\"{}", code(&function.doc.summary));
    if !function.doc.text.is_empty() {
        text.push('\n');
        indented(text, &code(&function.doc.text), 4);
    }
    text.push_str("\n    Parameters\n    ----------\n");
    for parameter in &function.parameters {
        let _ = writeln!(text, "    {} : {}", parameter.name, parameter_type(parameter, model));
        let default =
            parameter.default.as_ref().map(|value| format!(" (default {value})")).unwrap_or_default();
        indented(text, &format!("{}{default}", code(&parameter.doc)), 8);
    }
    text.push_str("    **kwargs\n        `out`, `where` and the other options of a NumPy function.\n");
    text.push_str("\n    Returns\n    -------\n");
    match &function.result {
        None => text.push_str("    float or numpy.ndarray\n"),
        Some(result) => {
            let _ = writeln!(text, "    {}", result.name);
            for output in &function.outputs {
                indented(text, &format!("`{}`: {}", output.name, code(&output.doc)), 8);
            }
        }
    }
    text.push_str("\n    Raises\n    ------\n    NavigationError\n");
    let errors = format!(
        "For numbers: {} In arrays such a point is NaN and NumPy's `invalid` warning.",
        code(&function.doc.errors)
    );
    indented(text, &errors, 8);
    text.push_str("\n    Notes\n    -----\n");
    for (heading, body) in [
        ("Accuracy", &function.doc.accuracy),
        ("Degenerate cases", &function.doc.degenerate),
        ("Source", &function.doc.source),
    ] {
        indented(text, &format!("{heading}: {}", code(body)), 4);
    }
    text.push_str("\n    Examples\n    --------\n    >>> import lubberline\n");
    for example in &function.doc.examples {
        let output = example.output.as_ref().map(|name| format!(".{name}")).unwrap_or_default();
        let call = format!(
            "lubberline.{}({}){output}",
            function.name,
            python_arguments(function, example, model).join(", ")
        );
        let _ = write!(
            text,
            "    >>> f\"{{{}:.{}f}}\"\n    '{}'\n",
            call.replace('"', "'"),
            example.decimals,
            example.printed
        );
    }
    if let Some(example) = function.doc.examples.first()
        && let Some(index) = function.parameters.iter().position(|parameter| parameter.kind == Kind::Number)
    {
        let mut arguments = python_arguments(function, example, model);
        arguments[index] = format!("[{0}, {0}]", arguments[index]);
        let output = example.output.as_ref().map(|name| format!(".{name}")).unwrap_or_default();
        let call = format!("lubberline.{}({}){output}", function.name, arguments.join(", "));
        let _ = write!(
            text,
            "    >>> [f\"{{value:.{}f}}\" for value in {call}]\n    ['{1}', '{1}']\n",
            example.decimals, example.printed
        );
    }
    text.push_str("    \"\"\"\n");
}

fn parameter_type(parameter: &Parameter, model: &Model) -> String {
    match &parameter.kind {
        Kind::Number => "array_like".to_string(),
        Kind::Choice(name) => model.choice(name).map_or(String::new(), |choice| {
            let words = choice.alternatives.iter().map(|one| format!("\"{}\"", one.word));
            format!("{{{}}}", words.collect::<Vec<_>>().join(", "))
        }),
    }
}

/// Rust's links and doubled quotes have no place in a docstring.
fn code(text: &str) -> String {
    text.replace("[`", "`").replace("`]", "`").replace("\"\"\"", "'''")
}

fn indented(text: &mut String, body: &str, spaces: usize) {
    let indent = " ".repeat(spaces);
    for paragraph in body.split("\n\n") {
        if paragraph
            .lines()
            .any(|line| line.starts_with("    ") || line.starts_with('|') || line.starts_with("- "))
        {
            // A table, a list or a formula on its own lines keeps them.
            for line in paragraph.lines() {
                let _ = writeln!(text, "{}", format!("{indent}{line}").trim_end());
            }
            continue;
        }
        let mut line = indent.clone();
        for word in paragraph.split_whitespace() {
            if line.len() + word.len() + 1 > LINE && line.trim() != "" {
                let _ = writeln!(text, "{}", line.trim_end());
                line = indent.clone();
            }
            line.push_str(word);
            line.push(' ');
        }
        let _ = writeln!(text, "{}", line.trim_end());
    }
}

fn python_argument(argument: &str, kind: &Kind, model: Option<&Model>) -> String {
    match kind {
        Kind::Number => argument.replace('_', "").replace("f64::INFINITY", "float('inf')"),
        Kind::Choice(name) => {
            let variant = argument.rsplit("::").next().unwrap_or(argument);
            let choice = model.and_then(|model| model.choice(name));
            let one = choice.and_then(|choice| choice.alternatives.iter().find(|one| one.variant == variant));
            format!("\"{}\"", one.map_or(variant, |one| one.word.as_str()))
        }
    }
}

fn python_arguments(function: &Function, example: &Example, model: &Model) -> Vec<String> {
    let pairs = example.arguments.iter().zip(&function.parameters);
    pairs.map(|(argument, parameter)| python_argument(argument, &parameter.kind, Some(model))).collect()
}

/// `python/package/lubberline/_functions.pyi`.
pub fn stubs(model: &Model, banner: &str) -> String {
    let mut text = format!(
        "# {banner}

from typing import Any, Generic, Literal, NamedTuple, TypeVar, overload

import numpy as np
from numpy.typing import ArrayLike, NDArray

_T = TypeVar(\"_T\", float, NDArray[np.float64])

"
    );
    let _ = writeln!(text, "__all__ = [");
    for name in exported(model) {
        let _ = writeln!(text, "    \"{name}\",");
    }
    text.push_str("]\n");
    let mut declared: Vec<&str> = Vec::new();
    for function in &model.functions {
        if let Some(result) = &function.result
            && !declared.contains(&result.name.as_str())
        {
            declared.push(&result.name);
            let _ = write!(text, "\nclass {}(NamedTuple, Generic[_T]):\n", result.name);
            for output in &function.outputs {
                let _ = writeln!(text, "    {}: _T", output.name);
            }
        }
        for (argument, answer) in [("float", "float"), ("ArrayLike", "NDArray[np.float64]")] {
            let returned = function
                .result
                .as_ref()
                .map_or(answer.to_string(), |result| format!("{}[{answer}]", result.name));
            // The scalar overload takes no options, which are those of NumPy functions.
            let options = if argument == "float" { "" } else { ", **kwargs: Any" };
            let _ = write!(
                text,
                "\n@overload\ndef {}({}{options}) -> {returned}: ...",
                function.name,
                typed(function, model, argument)
            );
        }
        text.push('\n');
    }
    text
}

fn typed(function: &Function, model: &Model, number: &str) -> String {
    let mut from = function.parameters.len();
    while from > 0 && function.parameters[from - 1].default.is_some() {
        from -= 1;
    }
    let parts = function.parameters.iter().enumerate().map(|(index, parameter)| {
        let kind = match &parameter.kind {
            Kind::Number => number.to_string(),
            Kind::Choice(name) => model.choice(name).map_or(String::new(), |choice| {
                let words = choice.alternatives.iter().map(|one| format!("\"{}\"", one.word));
                format!("Literal[{}] | int", words.collect::<Vec<_>>().join(", "))
            }),
        };
        let default = if parameter.default.is_some() && index >= from { " = ..." } else { "" };
        format!("{}: {kind}{default}", parameter.name)
    });
    parts.collect::<Vec<_>>().join(", ")
}

/// `python/package/lubberline/ufunc.pyi`.
pub fn ufunc_stubs(model: &Model, banner: &str) -> String {
    let mut text = format!("# {banner}\n\nimport numpy as np\n\n__all__: list[str]\n\n");
    for function in &model.functions {
        for output in &function.outputs {
            let _ = writeln!(text, "{}: np.ufunc", function.output_name(output));
        }
    }
    text
}
