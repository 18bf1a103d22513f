//! Writes `docs/functions.md`: the list of every plain function.

use std::fmt::Write;

use crate::model::{Function, Kind, Model};

pub fn emit(model: &Model, banner: &str) -> String {
    let mut text = format!("<!-- {banner} -->\n\n# Functions\n\n");
    text.push_str(
        "Every function has the same name in Rust (`lubberline::plain`), C (with the prefix `lubber_`) and Python. Units end the names: \
         `_deg` degree, `_nm` nautical mile, `_ft` foot, `_kt` knot, `_fpm` foot per minute, `_s` second, `_deg_per_s` degree per second, \
         `_hpa` hectopascal, `_degc` degree Celsius, `_k` kelvin, `_kg_per_m3` kilogram per cubic metre; no suffix for a ratio or a code. \
         A NaN given comes back as NaN.\n",
    );
    let mut module = "";
    for function in &model.functions {
        if function.module != module {
            module = &function.module;
            let _ = write!(text, "\n## {module}\n");
        }
        self::function(&mut text, function, model);
    }
    choices(&mut text, model);
    text
}

fn choices(text: &mut String, model: &Model) {
    text.push_str("\n## Choices\n\nA word in Python, a constant in C, a number in a NumPy function.\n");
    for choice in &model.choices {
        let _ = write!(text, "\n### `{}`\n\n{}\n\n", choice.name, choice.doc);
        for one in &choice.alternatives {
            let _ = writeln!(text, "- `{}` = {}: {}", one.word, one.code, one.doc);
        }
    }
}

fn function(text: &mut String, function: &Function, model: &Model) {
    let names =
        function.parameters.iter().map(|parameter| parameter.name.as_str()).collect::<Vec<_>>().join(", ");
    let _ = write!(text, "\n### `{}({names})`\n\n{}\n", function.name, function.doc.summary);
    if !function.doc.text.is_empty() {
        let _ = write!(text, "\n{}\n", function.doc.text);
    }
    text.push('\n');
    for parameter in &function.parameters {
        let default =
            parameter.default.as_ref().map(|value| format!(" (default {value})")).unwrap_or_default();
        let choices = match &parameter.kind {
            Kind::Number => String::new(),
            Kind::Choice(name) => model.choice(name).map_or(String::new(), |choice| {
                let words = choice.alternatives.iter().map(|one| format!("`{}` = {}", one.word, one.code));
                format!("; {}", words.collect::<Vec<_>>().join(", "))
            }),
        };
        let _ = writeln!(text, "- `{}`: {}{choices}{default}", parameter.name, parameter.doc);
    }
    if function.result.is_some() {
        text.push_str("\nGives:\n\n");
        for output in &function.outputs {
            let _ = writeln!(text, "- `{}`: {}", output.name, output.doc);
        }
    }
    for (heading, body) in [
        ("Accuracy", &function.doc.accuracy),
        ("Degenerate cases", &function.doc.degenerate),
        ("Errors", &function.doc.errors),
        ("Source", &function.doc.source),
    ] {
        let _ = write!(text, "\n*{heading}.* {}\n", body.replace('\n', " "));
    }
}
