//! What the generator knows of the plain layer.

/// The whole plain layer, in the order of its files and functions.
#[derive(Default)]
pub struct Model {
    pub functions: Vec<Function>,
    pub choices: Vec<Choice>,
    pub by_hand: Vec<ByHand>,
}

/// A plain function that takes more than numbers and choices, which each binding binds by hand.
pub struct ByHand {
    pub name: String,
    pub summary: String,
}

/// A function that takes numbers and choices and gives numbers.
pub struct Function {
    /// The file it stands in: `earth`, `air`, ...
    pub module: String,
    pub name: String,
    pub parameters: Vec<Parameter>,
    pub outputs: Vec<Output>,
    /// The struct of the result, if it has several outputs.
    pub result: Option<ResultStruct>,
    pub doc: Doc,
    /// Whether a loop over columns stands beside it, under its name with `_block`.
    pub block: bool,
    /// Whether that loop takes its outputs as options and computes those that are wanted only.
    pub wanted: bool,
    /// Whether that takes the statuses and the function itself too and does the whole of the block.
    pub whole: bool,
}

#[derive(Clone)]
pub struct ResultStruct {
    pub name: String,
    pub doc: String,
}

pub struct Parameter {
    pub name: String,
    pub kind: Kind,
    /// Meaning and range, in words.
    pub doc: String,
    /// The default of Python's keyword, as it is written in both languages.
    pub default: Option<String>,
}

#[derive(Clone, PartialEq)]
pub enum Kind {
    Number,
    /// The name of a [`Choice`].
    Choice(String),
}

#[derive(Clone)]
pub struct Output {
    pub name: String,
    pub doc: String,
}

/// A `choice!` of the typed layer.
pub struct Choice {
    pub name: String,
    /// The public module it is reached by: `lead`.
    pub module: String,
    pub doc: String,
    pub alternatives: Vec<Alternative>,
}

pub struct Alternative {
    pub variant: String,
    pub code: i32,
    pub word: String,
    pub doc: String,
}

/// The documentation of a function, by its sections.
pub struct Doc {
    pub summary: String,
    /// What it computes, with the formula.
    pub text: String,
    pub accuracy: String,
    pub degenerate: String,
    pub errors: String,
    pub source: String,
    pub examples: Vec<Example>,
}

/// One line of a documentation example: a call, the output looked at, and what it prints.
pub struct Example {
    /// Arguments as they are written in Rust.
    pub arguments: Vec<String>,
    /// The output, for a function with several.
    pub output: Option<String>,
    pub decimals: usize,
    pub printed: String,
}

impl Function {
    /// The name of the one-output function for an output: the function's own, or with the output's after it.
    pub fn output_name(&self, output: &Output) -> String {
        if self.result.is_some() { format!("{}_{}", self.name, output.name) } else { self.name.clone() }
    }

    /// Whether Python may leave out the wind: both halves of it, as one without the other is no wind.
    pub fn may_be_calm(&self) -> bool {
        WIND.iter().all(|half| {
            self.parameters.iter().any(|parameter| parameter.name == *half && parameter.default.is_some())
        })
    }

    /// What is said of a parameter's default, if it has one.
    pub fn default_words(&self, parameter: &Parameter) -> String {
        match &parameter.default {
            Some(_) if self.is_half_a_wind(parameter) => {
                " (left out with the other half of the wind: calm air)".to_string()
            }
            Some(default) => format!(" (default {default})"),
            None => String::new(),
        }
    }

    /// Whether Python may leave out a parameter only together with the other half of the wind.
    pub fn is_half_a_wind(&self, parameter: &Parameter) -> bool {
        self.may_be_calm() && WIND.contains(&parameter.name.as_str())
    }
}

/// The two parameters that are a wind.
const WIND: [&str; 2] = ["wind_from_deg", "wind_speed_kt"];

impl Model {
    pub fn choice(&self, name: &str) -> Option<&Choice> {
        self.choices.iter().find(|choice| choice.name == name)
    }

    /// The choices that some parameter is of.
    pub fn parameter_choices(&self) -> impl Iterator<Item = &Choice> {
        self.choices.iter().filter(|choice| {
            let kinds = self.functions.iter().flat_map(|function| &function.parameters);
            kinds.map(|parameter| &parameter.kind).any(|kind| *kind == Kind::Choice(choice.name.clone()))
        })
    }
}
