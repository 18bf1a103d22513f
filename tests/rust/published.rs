//! The published values of `tests/data/published`, a test for each row; the columns are explained beside the data.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    missing_docs,
    reason = "a test fails by panicking"
)]

use std::collections::HashSet;
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use libtest_mimic::{Arguments, Failed, Trial};
use lubberline::plain::table::Function;

const HEADER: [&str; 11] = [
    "id",
    "function",
    "inputs",
    "output",
    "scale",
    "offset",
    "expected",
    "tolerance",
    "source",
    "provenance",
    "note",
];

struct Row {
    function: &'static Function,
    inputs: Vec<f64>,
    output: usize,
    scale: f64,
    offset: f64,
    /// None where the published answer is that there is none.
    expected: Option<f64>,
    tolerance: f64,
    source: String,
    note: String,
}

impl Row {
    fn read(record: &csv::StringRecord, at: &str) -> Self {
        let text = |column: &str| {
            let index = HEADER.iter().position(|name| *name == column).expect("a column of the header");
            record.get(index).expect("as many columns as the header").to_string()
        };
        let number = |column: &str| {
            let value: f64 = text(column)
                .parse()
                .unwrap_or_else(|error| panic!("{at}, {column}: {error}: {}", text(column)));
            assert!(value.is_finite(), "{at}: {column} is {value}");
            value
        };
        let name = text("function");
        let function = Function::named(&name).unwrap_or_else(|| panic!("{at}: no function is named {name}"));
        let output = function.outputs.iter().position(|output| *output == text("output"));
        let inputs: Vec<f64> = text("inputs")
            .split(';')
            .map(|part| part.parse().unwrap_or_else(|error| panic!("{at}: {error}: {part}")))
            .collect();
        assert_eq!(inputs.len(), function.inputs.len(), "{at}: {name} takes {:?}", function.inputs);
        assert!(!text("source").is_empty(), "{at}: a published value needs its source");
        assert!(["read", "memory"].contains(&text("provenance").as_str()), "{at}: provenance");
        assert!(number("tolerance") >= 0.0 && number("scale") != 0.0, "{at}: tolerance and scale");
        Self {
            function,
            inputs,
            output: output.unwrap_or_else(|| panic!("{at}: {name} gives {:?}", function.outputs)),
            scale: number("scale"),
            offset: number("offset"),
            expected: (text("expected") != "none").then(|| number("expected")),
            tolerance: number("tolerance"),
            source: text("source"),
            note: text("note"),
        }
    }

    /// Whether the published value is one that, for a reason the note gives, the library does not give.
    fn is_not_held(&self) -> bool {
        self.note.starts_with("not held:")
    }

    fn check(&self) -> Result<(), Failed> {
        let mut outputs = vec![f64::NAN; self.function.outputs.len()];
        let answer = (self.function.run)(&self.inputs, &mut outputs);
        let value = outputs.get(self.output).expect("the output found above") * self.scale + self.offset;
        let Self { tolerance, source, .. } = self;
        let Some(expected) = self.expected else {
            let refused = answer.is_err_and(|error| !error.is_out_of_range()) && value.is_nan();
            return if refused { Ok(()) } else { Err(format!("{value}; published: none ({source})").into()) };
        };
        answer?;
        let differs = (value - expected).abs();
        if value.is_nan() {
            Err(format!("no value; published {expected} ({source})").into())
        } else if self.is_not_held() && differs <= *tolerance {
            Err(format!("{value} holds {expected} within {tolerance} now: say so in its note").into())
        } else if !self.is_not_held() && differs > *tolerance {
            Err(format!("{value}; published {expected} within {tolerance}, off by {differs:e} ({source})")
                .into())
        } else {
            Ok(())
        }
    }
}

fn trials(file: &Path) -> Vec<Trial> {
    let topic = file.file_stem().expect("a file's name").to_string_lossy().to_string();
    let mut reader = csv::Reader::from_path(file).expect("a readable file");
    assert_eq!(reader.headers().expect("a header"), HEADER.as_slice(), "{topic}");
    let mut ids = HashSet::new();
    let rows = reader.into_records().map(|record| {
        let record = record.unwrap_or_else(|error| panic!("{topic}: {error}"));
        let name = format!("{topic} {}", record.get(0).unwrap_or_default());
        assert!(ids.insert(name.clone()), "{name} stands twice");
        let row = Row::read(&record, &name);
        let kind = if row.is_not_held() { "not held" } else { "" };
        Trial::test(name, move || row.check()).with_kind(kind)
    });
    rows.collect()
}

fn main() -> ExitCode {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("data/published");
    let mut files: Vec<PathBuf> = std::fs::read_dir(folder)
        .expect("the folder of published values")
        .map(|entry| entry.expect("an entry of it").path())
        .collect();
    files.sort();
    let trials = files.iter().flat_map(|file| trials(file)).collect();
    libtest_mimic::run(&Arguments::from_args(), trials).exit_code()
}
