//! Arguments for any plain function: those of its documented example, others near them, and numbers that no one should give.

use std::path::Path;

use lubberline::Error;
use lubberline::plain::table::Function;

/// Numbers at the edges of what an f64 can be, and of what a navigator would write.
pub const EXTREMES: [f64; 26] = [
    f64::INFINITY,
    f64::NEG_INFINITY,
    f64::MAX,
    f64::MIN,
    1e308,
    -1e308,
    1e154,
    -1e154,
    1e15,
    -1e15,
    f64::MIN_POSITIVE,
    -f64::MIN_POSITIVE,
    5e-324,
    -5e-324,
    1e-310,
    0.0,
    -0.0,
    1.0,
    -1.0,
    90.0,
    -90.0,
    180.0,
    -180.0,
    360.0,
    89.999_999_999_999_99,
    1e-9,
];

/// The arguments of the first example of each function's documentation, as the C tests have them.
pub struct Examples {
    dispatch: String,
    header: String,
}

impl Examples {
    pub fn read() -> Self {
        let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
        let text = |path: &str| std::fs::read_to_string(root.join(path)).unwrap();
        Self { dispatch: text("tests/c/generated_dispatch.h"), header: text("ffi/include/lubberline.h") }
    }

    /// A row reads `{"name", inputs, outputs, "kinds", {outputs}, {arguments}, ...`.
    pub fn of(&self, function: &Function) -> Vec<f64> {
        let start = format!("{{\"{}\", ", function.name);
        let row = self.dispatch.lines().find(|line| line.trim_start().starts_with(&start));
        let row = row.unwrap_or_else(|| panic!("{} is not in the dispatch of the C tests", function.name));
        let arguments = row.split(['{', '}']).nth(4).unwrap();
        let values: Vec<f64> = arguments.split(", ").map(|word| self.value(word)).collect();
        assert_eq!(values.len(), function.inputs.len(), "{}", function.name);
        values
    }

    fn value(&self, word: &str) -> f64 {
        if word == "INFINITY" {
            return f64::INFINITY;
        }
        word.parse().unwrap_or_else(|_| {
            let constant = format!("{word} ");
            let from = self.header.find(&constant).unwrap_or_else(|| panic!("{word}")) + constant.len();
            let number = self.header[from..].trim_start_matches(['=', ' ', '(']);
            let end = number.find(|letter: char| letter != '-' && !letter.is_ascii_digit()).unwrap();
            number[..end].parse().unwrap_or_else(|error| panic!("{word}: {error}"))
        })
    }
}

/// A number near one, to a part in ten or to a tenth.
pub fn near(value: f64, random: &mut fastrand::Rng) -> f64 {
    let by = 0.2 * random.f64() - 0.1;
    if value == 0.0 { by } else { value * (1.0 + by) }
}

/// Runs a function on outputs that hold something else before.
pub fn run(function: &Function, inputs: &[f64]) -> (Result<(), Error>, Vec<f64>) {
    let mut outputs = vec![4.75; function.outputs.len()];
    let result = (function.run)(inputs, &mut outputs);
    (result, outputs)
}
