//! A function's documentation in the form that NumPy's projects use.

use std::fmt::Write;

use super::{arguments, code, words};
use crate::model::{Example, Function, Kind, Model};
use crate::text::sentence;

/// Where lines are broken.
const LINE: usize = 100;

/// The units by the suffix that stands for them; a longer suffix before the shorter one it ends in.
const UNITS: [(&str, &str); 12] = [
    ("_deg_per_s", "degrees per second"),
    ("_kg_per_m3", "kilograms per cubic metre"),
    ("_nt", "nanoteslas"),
    ("_deg", "degrees"),
    ("_nm", "nautical miles"),
    ("_ft", "feet"),
    ("_kt", "knots"),
    ("_fpm", "feet per minute"),
    ("_s", "seconds"),
    ("_hpa", "hectopascals"),
    ("_degc", "degrees Celsius"),
    ("_k", "kelvins"),
];

/// `, in nautical miles` for a name that ends in its unit.
fn in_unit(name: &str) -> String {
    let unit = UNITS.iter().find(|(suffix, _)| name.ends_with(suffix));
    unit.map_or(String::new(), |(_, unit)| format!(", in {unit}"))
}

pub fn write(text: &mut String, function: &Function, model: &Model) {
    let _ = writeln!(text, "    r\"\"\"{}", code(&function.doc.summary));
    if !function.doc.text.is_empty() {
        text.push('\n');
        indented(text, &code(&function.doc.text), 4);
    }
    parameters(text, function, model);
    returns(text, function);
    section(text, "Raises");
    text.push_str("    NavigationError\n");
    let errors = format!(
        "For numbers: {} In arrays such a point is NaN and NumPy's `invalid` warning.",
        code(&function.doc.errors)
    );
    indented(text, &errors, 8);
    section(text, "Notes");
    for (index, (heading, body)) in [
        ("Accuracy", &function.doc.accuracy),
        ("Degenerate cases", &function.doc.degenerate),
        ("Source", &function.doc.source),
    ]
    .iter()
    .enumerate()
    {
        if index > 0 {
            text.push('\n');
        }
        indented(text, &format!("{heading}: {}", code(body)), 4);
    }
    examples(text, function, model);
    text.push_str("    \"\"\"\n");
}

fn section(text: &mut String, heading: &str) {
    let _ = write!(text, "\n    {heading}\n    {}\n", "-".repeat(heading.len()));
}

fn parameters(text: &mut String, function: &Function, model: &Model) {
    section(text, "Parameters");
    for parameter in &function.parameters {
        let kind = match &parameter.kind {
            Kind::Number => format!("array_like{}", in_unit(&parameter.name)),
            Kind::Choice(name) => format!("{{{}}}", words(name, model)),
        };
        let _ = writeln!(text, "    {} : {kind}", parameter.name);
        let default = function.default_words(parameter);
        indented(text, &sentence(&format!("{}{default}.", code(&parameter.doc))), 8);
    }
    text.push_str("    **kwargs\n        `out`, `where` and the other options of a NumPy function.\n");
}

fn returns(text: &mut String, function: &Function) {
    section(text, "Returns");
    match &function.result {
        None => {
            let _ = writeln!(text, "    float or numpy.ndarray{}", in_unit(&function.name));
            text.push_str("        A float if every argument is a plain number.\n");
        }
        Some(result) => {
            let _ = writeln!(text, "    {}", result.name);
            text.push_str(
                "        A named tuple, of floats if every argument is a plain number, else of arrays:\n\n",
            );
            for output in &function.outputs {
                let doc = code(&output.doc);
                let doc = doc.trim_end_matches('.');
                indented(text, &format!("`{}`: {doc}{}.", output.name, in_unit(&output.name)), 8);
            }
        }
    }
}

/// The examples as they are, and the first once more with an array.
fn examples(text: &mut String, function: &Function, model: &Model) {
    section(text, "Examples");
    text.push_str("    >>> import lubberline\n");
    let call = |example: &Example, arguments: &[String]| {
        let output = example.output.as_ref().map_or(String::new(), |name| format!(".{name}"));
        format!("lubberline.{}({}){output}", function.name, arguments.join(", "))
    };
    for example in &function.doc.examples {
        let call = call(example, &arguments(function, example, model));
        let (decimals, printed) = (example.decimals, &example.printed);
        let _ = write!(text, "    >>> f\"{{{call}:.{decimals}f}}\"\n    '{printed}'\n");
    }
    let number = function.parameters.iter().position(|parameter| parameter.kind == Kind::Number);
    if let (Some(example), Some(index)) = (function.doc.examples.first(), number) {
        let mut arguments = arguments(function, example, model);
        if let Some(argument) = arguments.get_mut(index) {
            *argument = format!("[{argument}, {argument}]");
        }
        let (call, decimals, printed) = (call(example, &arguments), example.decimals, &example.printed);
        let _ = write!(
            text,
            "    >>> [f\"{{value:.{decimals}f}}\" for value in {call}]\n    ['{printed}', '{printed}']\n"
        );
    }
}

/// A text broken into lines; a table, a list or a formula on lines of its own keeps them.
fn indented(text: &mut String, body: &str, spaces: usize) {
    let indent = " ".repeat(spaces);
    for (index, paragraph) in body.split("\n\n").enumerate() {
        if index > 0 {
            text.push('\n');
        }
        if paragraph.lines().any(|line| ["    ", "|", "- "].iter().any(|start| line.starts_with(start))) {
            for line in paragraph.lines() {
                let _ = writeln!(text, "{}", format!("{indent}{line}").trim_end());
            }
            continue;
        }
        let mut line = indent.clone();
        for word in paragraph.split_whitespace() {
            if line.len() + word.len() > LINE && line.len() > spaces {
                let _ = writeln!(text, "{}", line.trim_end());
                line.clone_from(&indent);
            }
            line.push_str(word);
            line.push(' ');
        }
        let _ = writeln!(text, "{}", line.trim_end());
    }
}
