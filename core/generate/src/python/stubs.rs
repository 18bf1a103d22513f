//! Writes the types of the named functions and of the NumPy functions.

use std::fmt::Write;

use super::{first_default, list, listed, undeclared, words};
use crate::model::{Function, Kind, Model};

/// `python/package/lubberline/_functions.pyi`.
pub fn stubs(model: &Model, banner: &str) -> String {
    let mut text = format!(
        "# {banner}

# A plain number is an `ArrayLike` too: the first of two overloads that fits is meant.
# mypy: disable-error-code=\"overload-overlap\"

from typing import Any, Generic, Literal, NamedTuple, TypeAlias, TypeVar, overload

import numpy as np
from numpy.typing import ArrayLike, NDArray

from ._call import Number

_T = TypeVar(\"_T\", float, NDArray[np.float64])
_Codes: TypeAlias = list[int] | list[str] | tuple[int, ...] | tuple[str, ...] | NDArray[Any]

"
    );
    listed(&mut text, model);
    let mut declared = Vec::new();
    for function in &model.functions {
        if let Some(result) = undeclared(function, &mut declared) {
            let _ = write!(text, "\nclass {}(NamedTuple, Generic[_T]):\n", result.name);
            for output in &function.outputs {
                let _ = writeln!(text, "    {}: _T", output.name);
            }
        }
        for (argument, answer) in [("Number", "float"), ("ArrayLike", "NDArray[np.float64]")] {
            let returned = function
                .result
                .as_ref()
                .map_or(answer.to_string(), |result| format!("{}[{answer}]", result.name));
            // The options are those of NumPy functions; plain numbers take none.
            let options = if answer == "float" { "" } else { ", **kwargs: Any" };
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
    let from = first_default(function);
    let parts = function.parameters.iter().enumerate().map(|(index, parameter)| {
        let kind = match &parameter.kind {
            Kind::Number => number.to_string(),
            Kind::Choice(name) => {
                let arrays = if number == "ArrayLike" { " | _Codes" } else { "" };
                format!("Literal[{}] | int{arrays}", words(name, model))
            }
        };
        let default = match &parameter.default {
            Some(_) if function.is_half_a_wind(parameter) => " | None = None",
            Some(_) if index >= from => " = ...",
            _ => "",
        };
        format!("{}: {kind}{default}", parameter.name)
    });
    parts.collect::<Vec<_>>().join(", ")
}

/// `python/package/lubberline/ufunc.pyi`.
pub fn ufunc_stubs(model: &Model, banner: &str) -> String {
    let mut names: Vec<String> = Vec::new();
    for function in &model.functions {
        names.extend(function.outputs.iter().map(|output| function.output_name(output)));
    }
    let mut text = format!("# {banner}\n\nimport numpy as np\n\n");
    let declarations: String = names.iter().map(|name| format!("{name}: np.ufunc\n")).collect();
    names.sort_unstable();
    list(&mut text, &names);
    text.push('\n');
    text + &declarations + "\ndef some(function: str, *outputs: str) -> np.ufunc: ...\n"
}
