//! Reads one public function of the plain layer.

use anyhow::{Result, anyhow, bail, ensure};
use syn::{FnArg, GenericArgument, ItemFn, Pat, PathArguments, ReturnType, Type};

use super::documentation::Sections;
use super::{doc_lines, example, names};
use crate::model::{Choice, Doc, Example, Function, Kind, Output, Parameter, ResultStruct};

/// The most arguments, and the most outputs, that the bindings have room for.
const MOST_OPERANDS: usize = 24;

/// Names and kinds of the parameters, or nothing for a function that is bound by hand: one that takes none, or takes
/// anything but numbers and choices.
pub fn signature(item: &ItemFn, choices: &[Choice]) -> Option<Vec<(String, Kind)>> {
    let mut signature = Vec::new();
    for argument in &item.sig.inputs {
        let FnArg::Typed(typed) = argument else { return None };
        let (Pat::Ident(pattern), Type::Path(path)) = (&*typed.pat, &*typed.ty) else { return None };
        let type_name = path.path.segments.last()?.ident.to_string();
        let kind = match type_name.as_str() {
            "f64" => Kind::Number,
            other if choices.iter().any(|choice| choice.name == other) => Kind::Choice(type_name),
            _ => return None,
        };
        signature.push((pattern.ident.to_string(), kind));
    }
    Some(signature).filter(|signature| !signature.is_empty())
}

/// The function of a signature, with its documentation.
pub fn read(
    item: &ItemFn,
    signature: Vec<(String, Kind)>,
    module: &str,
    results: &[(ResultStruct, Vec<Output>)],
    choices: &[Choice],
) -> Result<Function> {
    let conditional = item.attrs.iter().any(|attribute| attribute.path().is_ident("cfg"));
    ensure!(!conditional, "a plain function is there in every build; allowed: no #[cfg]");
    let name = item.sig.ident.to_string();
    let sections = Sections::read(doc_lines(&item.attrs))?;
    let documented = sections.arguments()?;
    ensure!(
        documented.iter().map(|(argument, _)| argument).eq(signature.iter().map(|(argument, _)| argument)),
        "`# Arguments` must list the parameters in their order: {}",
        signature.iter().map(|(argument, _)| argument.as_str()).collect::<Vec<_>>().join(", ")
    );
    let parameters = signature
        .into_iter()
        .zip(documented)
        .map(|((name, kind), (_, text))| parameter(name, kind, &text, choices))
        .collect::<Result<Vec<_>>>()?;
    ensure!(
        parameters.iter().map(|parameter| parameter.default.is_some()).is_sorted(),
        "a parameter without a default stands behind one with a default"
    );
    let (result, outputs) = match result_type(&item.sig.output)?.as_str() {
        "f64" => (None, vec![Output { name: name.clone(), doc: sections.summary.clone() }]),
        other => {
            let found = results.iter().find(|(result, _)| result.name == other).cloned();
            let (result, outputs) =
                found.ok_or_else(|| anyhow!("{other} must be declared with outputs! in the same file"))?;
            (Some(result), outputs)
        }
    };
    ensure!(
        parameters.len().max(outputs.len()) <= MOST_OPERANDS,
        "it has more than {MOST_OPERANDS} parameters or outputs"
    );
    let examples = examples(&name, &parameters, result.is_some().then_some(&outputs), &sections)?;
    let doc = Doc {
        summary: sections.summary.clone(),
        text: sections.text.clone(),
        accuracy: sections.get("Accuracy")?,
        degenerate: sections.get("Degenerate cases")?,
        errors: sections.get("Errors")?,
        source: sections.get("Source")?,
        examples,
    };
    let function = Function {
        module: module.to_string(),
        name,
        parameters,
        outputs,
        result,
        doc,
        block: false,
        wanted: false,
        whole: false,
    };
    names::within(&function)?;
    Ok(function)
}

/// Cuts the default from the words of a parameter, and sees that it is a number or a word of the choice.
fn parameter(name: String, kind: Kind, text: &str, choices: &[Choice]) -> Result<Parameter> {
    let (doc, default) = match text.split_once(" (default ") {
        Some((doc, rest)) => (doc, Some(rest.trim_end_matches(')').to_string())),
        None => (text, None),
    };
    if let Some(default) = &default {
        let known = match &kind {
            Kind::Number => default.parse::<f64>().is_ok_and(f64::is_finite),
            Kind::Choice(choice) => choices
                .iter()
                .filter(|known| known.name == *choice)
                .flat_map(|known| &known.alternatives)
                .any(|alternative| alternative.word == default.trim_matches('"')),
        };
        ensure!(known, "the default `{default}` of `{name}` is neither a number nor a word of its choice");
    }
    Ok(Parameter { name, kind, doc: doc.to_string(), default })
}

/// `T` of `Result<T, Error>`.
fn result_type(output: &ReturnType) -> Result<String> {
    if let ReturnType::Type(_, returned) = output
        && let Type::Path(path) = &**returned
        && let Some(last) = path.path.segments.last()
        && last.ident == "Result"
        && let PathArguments::AngleBracketed(arguments) = &last.arguments
        && let Some(GenericArgument::Type(Type::Path(inner))) = arguments.args.first()
        && let Some(inner) = inner.path.segments.last()
    {
        return Ok(inner.ident.to_string());
    }
    bail!("the result must be Result<f64, Error> or Result<a struct of outputs!, Error>")
}

/// The examples, each of which must call this very function and look at one output.
fn examples(
    name: &str,
    parameters: &[Parameter],
    fields: Option<&Vec<Output>>,
    sections: &Sections,
) -> Result<Vec<Example>> {
    let mut examples = Vec::new();
    for (called, example) in example::read(sections.lines("Example"))? {
        ensure!(called == name, "`# Example` calls {called}");
        ensure!(
            example.arguments.len() == parameters.len(),
            "`# Example` must give {} arguments",
            parameters.len()
        );
        match (fields, &example.output) {
            (None, None) => {}
            (Some(fields), Some(output)) => {
                ensure!(
                    fields.iter().any(|field| field.name == *output),
                    "`# Example` looks at {output}, which is no output"
                );
            }
            _ => bail!(
                "`# Example` looks at one output: {name}(...)?.output of several, {name}(...)? of a single one"
            ),
        }
        examples.push(example);
    }
    Ok(examples)
}
