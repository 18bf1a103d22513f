//! Reads the plain layer and the choices: functions by their signature, documentation by its form.

mod declaration;
mod documentation;
mod example;
mod function;
mod names;

use std::fs;
use std::path::{Path, PathBuf};

use anyhow::{Context, Result, ensure};
use syn::{Attribute, Expr, Item, Lit, Meta, Visibility};

use crate::model::{ByHand, Model};

/// Reads `core/src` below the project's root.
pub fn model(root: &Path) -> Result<Model> {
    let source = root.join("core/src");
    let mut model = Model::default();
    for path in rust_files(&source)? {
        let module = path.strip_prefix(&source)?.iter().next().map(|part| part.to_string_lossy().to_string());
        for item in parsed(&path)?.items {
            if let Item::Macro(item) = item
                && item.mac.path.is_ident("choice")
            {
                let choice = declaration::choice(&item, module.as_deref().unwrap_or_default());
                model.choices.push(choice.with_context(|| path.display().to_string())?);
            }
        }
    }
    for path in rust_files(&source.join("plain"))? {
        let module = path.file_stem().map(|stem| stem.to_string_lossy().to_string()).unwrap_or_default();
        let file = parsed(&path)?;
        plain_file(&file, &module, &mut model).with_context(|| path.display().to_string())?;
    }
    names::beside(&model)?;
    Ok(model)
}

/// Adds the public functions of one file of the plain layer.
fn plain_file(file: &syn::File, module: &str, model: &mut Model) -> Result<()> {
    let results = file.items.iter().filter_map(declaration::result).collect::<Result<Vec<_>>>()?;
    for item in &file.items {
        let Item::Fn(item) = item else { continue };
        if !matches!(item.vis, Visibility::Public(_)) {
            continue;
        }
        let name = item.sig.ident.to_string();
        let known = model.functions.iter().any(|function| function.name == name);
        ensure!(!known, "{name}: another file of the plain layer has a function of this name");
        match function::signature(item, &model.choices) {
            Some(signature) => {
                let function = function::read(item, signature, module, &results, &model.choices);
                let mut function = function.with_context(|| name.clone())?;
                let block = file.items.iter().find_map(|other| match other {
                    Item::Fn(other) if other.sig.ident == format!("{name}_block") => Some(&other.sig.inputs),
                    _ => None,
                });
                function.block = block.is_some();
                let optional =
                    |inputs: &dyn quote::ToTokens| inputs.to_token_stream().to_string().contains("Option");
                function.wanted = block.is_some_and(|inputs| optional(inputs));
                function.whole = block.is_some_and(|inputs| inputs.len() == 4);
                model.functions.push(function);
            }
            None => {
                // Its documentation has no form that is fixed: what it begins with may be longer than a line.
                let lines = doc_lines(&item.attrs);
                let summary = lines.split(|line| line.is_empty()).next().unwrap_or_default().join(" ");
                model.by_hand.push(ByHand { name, summary });
            }
        }
    }
    Ok(())
}

fn rust_files(folder: &Path) -> Result<Vec<PathBuf>> {
    let mut files = Vec::new();
    for entry in fs::read_dir(folder).with_context(|| folder.display().to_string())? {
        let path = entry?.path();
        if path.is_dir() {
            files.extend(rust_files(&path)?);
        } else if path.extension().is_some_and(|extension| extension == "rs")
            && !path.ends_with("plain/table.rs")
        {
            files.push(path);
        }
    }
    files.sort();
    Ok(files)
}

fn parsed(path: &Path) -> Result<syn::File> {
    let text = fs::read_to_string(path).with_context(|| path.display().to_string())?;
    syn::parse_file(&text).with_context(|| path.display().to_string())
}

/// The lines of a doc comment, without the space that follows its slashes.
fn doc_lines(attributes: &[Attribute]) -> Vec<String> {
    let mut lines = Vec::new();
    for attribute in attributes.iter().filter(|attribute| attribute.path().is_ident("doc")) {
        if let Meta::NameValue(pair) = &attribute.meta
            && let Expr::Lit(literal) = &pair.value
            && let Lit::Str(text) = &literal.lit
        {
            let value = text.value();
            lines.push(value.strip_prefix(' ').unwrap_or(&value).to_string());
        }
    }
    lines
}

#[cfg(test)]
mod tests {
    use super::*;

    const GOOD: &str = r##"
        outputs! {
            /// A pair.
            Pair {
                /// One.
                first_nm,
                /// Two.
                second,
            }
        }

        /// A pair of numbers.
        ///
        /// `a + b`.
        ///
        /// # Arguments
        /// - `a_nm`: the one,
        ///   0 to 10
        /// - `b`: the other, 0 to 1 (default 0.5)
        ///
        /// # Accuracy
        /// Exact.
        ///
        /// # Degenerate cases
        /// None.
        ///
        /// # Errors
        /// None.
        ///
        /// # Source
        /// Common practice.
        ///
        /// # Example
        /// ```
        /// # use lubberline::plain::pair;
        /// assert_eq!(format!("{:.2}", pair(-1.5, 30_000.0)?.first_nm), "4.50");
        /// # Ok::<(), lubberline::Error>(())
        /// ```
        pub fn pair(a_nm: f64, b: f64) -> Result<Pair, Error> { todo }

        /// By hand, and said
        /// in two lines.
        ///
        /// More of it.
        pub fn settings(input: &Settings) -> Result<f64, Error> { todo }

        pub(super) fn inner(a: f64) -> f64 { a }
    "##;

    fn read(text: &str) -> Result<Model> {
        let mut model = Model::default();
        plain_file(&syn::parse_file(text)?, "pairs", &mut model)?;
        Ok(model)
    }

    #[test]
    fn a_function_is_read_whole() {
        let model = read(GOOD).unwrap();
        let [function] = model.functions.as_slice() else { panic!("one function is bound") };
        assert_eq!((function.module.as_str(), function.name.as_str()), ("pairs", "pair"));
        assert_eq!(function.parameters[0].doc, "the one, 0 to 10");
        assert_eq!(function.parameters[1].default.as_deref(), Some("0.5"));
        assert_eq!(function.outputs[0].name, "first_nm");
        assert_eq!(function.doc.summary, "A pair of numbers.");
        assert_eq!(function.doc.text, "`a + b`.");
        let [example] = function.doc.examples.as_slice() else { panic!("one example") };
        assert_eq!(example.arguments, ["-1.5", "30_000.0"]);
        assert_eq!((example.decimals, example.printed.as_str()), (2, "4.50"));
        assert_eq!(model.by_hand[0].name, "settings");
        assert_eq!(model.by_hand[0].summary, "By hand, and said in two lines.");
        assert_eq!(model.by_hand.len(), 1);
    }

    #[test]
    fn what_has_not_the_form_is_named() {
        let faults = [
            ("/// # Source\n", "/// # Sauce\n", "Sauce"),
            ("/// A pair of numbers.\n", "/// A pair\n        /// of numbers.\n", "summary"),
            ("/// A pair of numbers.\n", "/// A pair of numbers\n", "summary"),
            ("- `a_nm`", "- a_nm", "Arguments"),
            ("- `a_nm`", "- `a_ft`", "Arguments"),
            ("/// Exact.", "///", "Accuracy"),
            ("(default 0.5)", "(default half)", "half"),
            ("0 to 10\n", "0 to 10 (default 1.0)\n        /// - `c`: more\n", "Arguments"),
            ("assert_eq!", "assert_ne!", "assert_ne"),
            ("{:.2}", "{}", "{:.N}"),
            ("pair(-1.5,", "pear(-1.5,", "pear"),
            ("-1.5, 30_000.0", "-1.5", "2 arguments"),
            (".first_nm)", ".third)", "third"),
            ("/// Two.", "", "second"),
            ("Result<Pair, Error>", "Result<Pears, Error>", "Pears"),
            ("Result<Pair, Error>", "f64", "Result"),
            ("a_nm", "class", "`class` is a word of"),
            ("a_nm", "count", "`count` is an argument of"),
            ("a_nm", "b_stride", "C makes `b_stride` of `b`"),
            ("second,", "index,", "the output `index` is taken"),
            ("second,", "first_nm,", "two outputs are named `first_nm`"),
            ("second,", "kwargs,", "`kwargs` is an argument of"),
        ];
        for (from, to, named) in faults {
            assert!(GOOD.contains(from), "{from}");
            let fault = format!("{:#}", read(&GOOD.replace(from, to)).err().unwrap());
            assert!(fault.contains(named), "{from} -> {to}: {fault}");
        }
    }

    #[test]
    fn a_name_is_declared_once() {
        assert!(read(&format!("{GOOD}{GOOD}")).is_err());
    }

    /// `pair` has the array function `pair_n` in C, and `pair_second` in NumPy.
    #[test]
    fn names_that_are_made_do_not_meet() {
        let beside = |other: &str| {
            let renamed = GOOD
                .replace("pair(", &format!("{other}("))
                .replace("plain::pair", &format!("plain::{other}"));
            let single =
                renamed.replace("Result<Pair, Error>", "Result<f64, Error>").replace(")?.first_nm", ")?");
            let pairs = read(GOOD).unwrap();
            let mut both = read(&single).unwrap();
            both.functions.extend(pairs.functions);
            names::beside(&both)
        };
        assert!(beside("third").is_ok());
        for other in ["pair_n", "pair_second"] {
            let fault = format!("{:#}", beside(other).unwrap_err());
            assert!(fault.contains(other), "{fault}");
        }
    }
}
