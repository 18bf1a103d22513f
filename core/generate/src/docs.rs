//! Writes `docs/functions.md`: the list of every plain function.

use std::fmt::Write;

use crate::model::{Function, Kind, Model};
use crate::python::arguments;
use crate::text::links;

const OPENING: &str = "\
Every function of numbers has the same name in Rust (`lubberline::plain`), C (with the prefix `lubber_`) and Python. Units end the \
names: `_deg` degree, `_nm` nautical mile, `_ft` foot, `_kt` knot, `_fpm` foot per minute, `_s` second, `_deg_per_s` degree \
per second, `_hpa` hectopascal, `_degc` degree Celsius, `_k` kelvin, `_kg_per_m3` kilogram per cubic metre, `_nt` nanotesla; no suffix for a \
ratio or a code. A NaN given comes back as NaN. Python takes what has a default as a keyword that may be left out; Rust and \
C are given every argument. The examples are Python's; a choice that is a word there is a variant in Rust, such as `ArcSense::Clockwise`, and a \
constant in C, such as `LUBBER_ARC_SENSE_CLOCKWISE`.
";

pub fn emit(model: &Model, banner: &str) -> String {
    let mut text = format!("<!-- {banner} -->\n\n# Functions\n\n{OPENING}");
    index(&mut text, model);
    let mut module = "";
    for function in &model.functions {
        if function.module != module {
            module = &function.module;
            let _ = write!(text, "\n## {module}\n");
        }
        self::function(&mut text, function, model);
    }
    text.push_str(
        "\n## Bound by hand\n\nWhat takes a structure of settings is written by hand in each language, and may have another name there: in C see the header \
         (`lubber_course_change`, `lubber_legs_fly`, `lubber_path_legs`, `lubber_route_brief`, `lubber_flight_new` and their like), in Python `course_change` and its methods, `fly_legs`, `brief_path`, `brief_route`, `Flight`.\n\n",
    );
    for function in &model.by_hand {
        let _ = writeln!(text, "- `{}`: {}", function.name, linked(&function.summary, model));
    }
    choices(&mut text, model);
    text
}

/// The names of the functions, module by module, each a link to its section.
fn index(text: &mut String, model: &Model) {
    let mut module = "";
    for function in &model.functions {
        if function.module == module {
            text.push_str(", ");
        } else {
            module = &function.module;
            let _ = write!(text, "\n- [{module}](#{module}): ");
        }
        let _ = write!(text, "[{0}](#{0})", function.name);
    }
    text.push_str("\n- [Bound by hand](#bound-by-hand)\n- [Choices](#choices)\n");
}

/// Links of Rust's documentation become links within the page, to a function or to a choice.
fn linked(text: &str, model: &Model) -> String {
    links(text, |name| {
        let listed =
            model.functions.iter().any(|function| function.name == name) || model.choice(name).is_some();
        // A heading's anchor is the heading in small letters.
        if listed { format!("[`{name}`](#{})", name.to_lowercase()) } else { format!("`{name}`") }
    })
}

fn choices(text: &mut String, model: &Model) {
    text.push_str("\n## Choices\n\nAs an argument a word in Python, an `int32_t` constant in C, a number in a NumPy function. As an output of a function of numbers \
         its code is a `double` in C and a float in Python, NaN where there is none; in a structure of C it is an `int32_t`, in an object of Python a word.\n");
    for choice in &model.choices {
        let _ = write!(text, "\n### {}\n\n{}\n\n", choice.name, linked(&choice.doc, model));
        for one in &choice.alternatives {
            let _ = writeln!(text, "- `{}` = {}: {}", one.word, one.code, linked(&one.doc, model));
        }
    }
}

fn function(text: &mut String, function: &Function, model: &Model) {
    let name = &function.name;
    let parameters = function.parameters.iter().map(|parameter| parameter.name.as_str()).collect::<Vec<_>>();
    let signature = format!("{name}({})", parameters.join(", "));
    let _ = write!(text, "\n### {name}\n\n    {signature}\n\n{}\n", linked(&function.doc.summary, model));
    if !function.doc.text.is_empty() {
        let _ = write!(text, "\n{}\n", linked(&function.doc.text, model));
    }
    text.push('\n');
    for parameter in &function.parameters {
        let default = function.default_words(parameter);
        let choices = match &parameter.kind {
            Kind::Number => String::new(),
            Kind::Choice(name) => model.choice(name).map_or(String::new(), |choice| {
                let words = choice.alternatives.iter().map(|one| format!("`{}` = {}", one.word, one.code));
                format!("; {}", words.collect::<Vec<_>>().join(", "))
            }),
        };
        let doc = linked(&parameter.doc, model);
        let _ = writeln!(text, "- `{}`: {doc}{choices}{default}", parameter.name);
    }
    if function.result.is_some() {
        text.push_str("\nGives:\n\n");
        for output in &function.outputs {
            let _ = writeln!(text, "- `{}`: {}", output.name, linked(&output.doc, model));
        }
    }
    for (heading, body) in [
        ("Accuracy", &function.doc.accuracy),
        ("Degenerate cases", &function.doc.degenerate),
        ("Errors", &function.doc.errors),
        ("Source", &function.doc.source),
    ] {
        let _ = write!(text, "\n*{heading}.* {}\n", linked(&body.replace('\n', " "), model));
    }
    let examples = function.doc.examples.iter().map(|example| {
        let output = example.output.as_ref().map(|output| format!(".{output}")).unwrap_or_default();
        let arguments = arguments(function, example, model).join(", ");
        format!("`{name}({arguments}){output}` is {}", example.printed)
    });
    let _ = write!(text, "\n*Example.* {}.\n", examples.collect::<Vec<_>>().join("; "));
}
