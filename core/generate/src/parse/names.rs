//! Sees that the names the bindings make of the plain layer's do not meet each other, nor words that are taken.

use std::collections::HashMap;

use anyhow::{Result, ensure};

use crate::model::{Function, Model};

/// Words that Rust lets a name be, and C, C++ or Python does not.
pub const TAKEN_ELSEWHERE: [&str; 48] = [
    "and",
    "assert",
    "auto",
    "case",
    "char",
    "class",
    "def",
    "default",
    "del",
    "delete",
    "double",
    "elif",
    "except",
    "explicit",
    "export",
    "finally",
    "float",
    "friend",
    "from",
    "global",
    "goto",
    "import",
    "inline",
    "int",
    "is",
    "lambda",
    "long",
    "namespace",
    "new",
    "nonlocal",
    "not",
    "operator",
    "or",
    "pass",
    "private",
    "protected",
    "public",
    "raise",
    "register",
    "short",
    "signed",
    "switch",
    "template",
    "this",
    "unsigned",
    "using",
    "void",
    "with",
];

/// What C's array functions and Python's named functions call arguments of their own.
const OWN_ARGUMENTS: [&str; 5] = ["count", "status", "kwargs", "out", "where"];

/// What a Python tuple already has.
const OF_A_TUPLE: [&str; 2] = ["count", "index"];

/// The names within one function.
pub fn within(function: &Function) -> Result<()> {
    let mut arguments: Vec<&str> =
        function.parameters.iter().map(|parameter| parameter.name.as_str()).collect();
    for name in &arguments {
        ensure!(
            !TAKEN_ELSEWHERE.contains(name),
            "`{name}` is a word of C, C++ or Python; allowed: a name that is none"
        );
    }
    if function.result.is_some() {
        for output in &function.outputs {
            let name = output.name.as_str();
            ensure!(
                !TAKEN_ELSEWHERE.contains(&name) && !OF_A_TUPLE.contains(&name) && !name.starts_with('_'),
                "the output `{name}` is taken in C, C++ or in a Python tuple; allowed: a name that is not"
            );
            ensure!(
                function.outputs.iter().filter(|other| other.name == name).count() == 1,
                "two outputs are named `{name}`"
            );
        }
    }
    arguments.extend(function.outputs.iter().map(|output| output.name.as_str()));
    for name in &arguments {
        ensure!(
            !OWN_ARGUMENTS.contains(name),
            "`{name}` is an argument of the bindings' own; allowed: a name that is none of {OWN_ARGUMENTS:?}"
        );
        for made in ["_stride", "_out"].map(|ending| format!("{name}{ending}")) {
            ensure!(
                !arguments.contains(&made.as_str()),
                "C makes `{made}` of `{name}`, and there is one already"
            );
        }
    }
    Ok(())
}

/// The names of all functions beside each other.
pub fn beside(model: &Model) -> Result<()> {
    // What C and NumPy call something, and the function it is made of.
    let mut made: HashMap<String, &str> = HashMap::new();
    let mut results: HashMap<&str, &Function> = HashMap::new();
    for function in &model.functions {
        let name = function.name.as_str();
        let mut names = vec![name.to_string(), format!("{name}_n")];
        if let Some(result) = &function.result {
            names.extend(function.outputs.iter().map(|output| function.output_name(output)));
            let first = results.entry(&result.name).or_insert(function);
            let same =
                first.outputs.iter().map(|output| &output.name).eq(function.outputs.iter().map(|o| &o.name));
            ensure!(same, "{name}: {} has other outputs for {}", result.name, first.name);
        }
        for made_of_it in names {
            if let Some(other) = made.insert(made_of_it.clone(), name) {
                anyhow::bail!("{name}: the bindings make `{made_of_it}` of it, and of {other}");
            }
        }
    }
    Ok(())
}
