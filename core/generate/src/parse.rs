//! Reads the plain layer and the choices: functions by their signature, documentation by its form.

use std::fs;
use std::path::Path;

use anyhow::{Context, Result, anyhow, bail, ensure};
use syn::{Attribute, Expr, FnArg, ItemFn, ItemMacro, Lit, Meta, Pat, ReturnType, Type, Visibility};

use crate::model::{
    Alternative, Choice, Doc, Example, Function, Kind, Model, Output, Parameter, ResultStruct,
};

/// Reads `core/src` below the project's root.
pub fn model(root: &Path) -> Result<Model> {
    let source = root.join("core/src");
    let mut choices = Vec::new();
    for path in rust_files(&source)? {
        let module = path.strip_prefix(&source)?.iter().next().map(|part| part.to_string_lossy().to_string());
        for item in parsed(&path)?.items {
            if let syn::Item::Macro(item) = item
                && item.mac.path.is_ident("choice")
            {
                choices.push(
                    choice(&item, module.clone().unwrap_or_default())
                        .with_context(|| path.display().to_string())?,
                );
            }
        }
    }
    let mut functions = Vec::new();
    for path in rust_files(&source.join("plain"))? {
        let module = path.file_stem().map(|stem| stem.to_string_lossy().to_string()).unwrap_or_default();
        let file = parsed(&path)?;
        let results = file.items.iter().filter_map(result_struct).collect::<Result<Vec<_>>>()?;
        for item in &file.items {
            if let syn::Item::Fn(item) = item
                && matches!(item.vis, Visibility::Public(_))
                && let Some(function) = function(item, &module, &results, &choices)
                    .with_context(|| format!("{}: {}", path.display(), item.sig.ident))?
            {
                functions.push(function);
            }
        }
    }
    choices.retain(|choice| {
        let used = |parameter: &Parameter| parameter.kind == Kind::Choice(choice.name.clone());
        functions.iter().any(|function: &Function| function.parameters.iter().any(used))
    });
    Ok(Model { functions, choices })
}

fn rust_files(folder: &Path) -> Result<Vec<std::path::PathBuf>> {
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

/// A choice: `Name { Variant = code: "word", ... }` with doc comments.
fn choice(item: &ItemMacro, module: String) -> Result<Choice> {
    item.mac
        .parse_body_with(|input: syn::parse::ParseStream| {
            let doc = doc_lines(&input.call(Attribute::parse_outer)?).join(" ");
            let name: syn::Ident = input.parse()?;
            let body;
            syn::braced!(body in input);
            let mut alternatives = Vec::new();
            while !body.is_empty() {
                let doc = doc_lines(&body.call(Attribute::parse_outer)?).join(" ");
                let variant: syn::Ident = body.parse()?;
                body.parse::<syn::Token![=]>()?;
                let negative = body.parse::<Option<syn::Token![-]>>()?.is_some();
                let number: syn::LitInt = body.parse()?;
                let size: i32 = number.base10_parse()?;
                body.parse::<syn::Token![:]>()?;
                let word: syn::LitStr = body.parse()?;
                body.parse::<Option<syn::Token![,]>>()?;
                let code = if negative { -size } else { size };
                alternatives.push(Alternative {
                    variant: variant.to_string(),
                    code,
                    word: word.value(),
                    doc,
                });
            }
            Ok(Choice { name: name.to_string(), module: module.clone(), doc, alternatives })
        })
        .map_err(|error| anyhow!("choice!: {error}"))
}

/// An `outputs!` declaration: the struct and its fields.
fn result_struct(item: &syn::Item) -> Option<Result<(ResultStruct, Vec<Output>)>> {
    let syn::Item::Macro(item) = item else { return None };
    if !item.mac.path.is_ident("outputs") {
        return None;
    }
    let parsed = item.mac.parse_body_with(|input: syn::parse::ParseStream| {
        let doc = doc_lines(&input.call(Attribute::parse_outer)?).join(" ");
        let name: syn::Ident = input.parse()?;
        let body;
        syn::braced!(body in input);
        let mut outputs = Vec::new();
        while !body.is_empty() {
            let doc = doc_lines(&body.call(Attribute::parse_outer)?).join(" ");
            let field: syn::Ident = body.parse()?;
            body.parse::<Option<syn::Token![,]>>()?;
            outputs.push(Output { name: field.to_string(), doc });
        }
        Ok((ResultStruct { name: name.to_string(), doc }, outputs))
    });
    Some(parsed.map_err(|error| anyhow!("outputs!: {error}")))
}

/// A public function of the plain layer, or nothing for one that is bound by hand: one that takes more than numbers and choices.
fn function(
    item: &ItemFn,
    module: &str,
    results: &[(ResultStruct, Vec<Output>)],
    choices: &[Choice],
) -> Result<Option<Function>> {
    let mut signature = Vec::new();
    for argument in &item.sig.inputs {
        let FnArg::Typed(typed) = argument else { return Ok(None) };
        let (Pat::Ident(pattern), Type::Path(path)) = (&*typed.pat, &*typed.ty) else { return Ok(None) };
        let Some(type_name) = path.path.segments.last().map(|segment| segment.ident.to_string()) else {
            return Ok(None);
        };
        let kind = match type_name.as_str() {
            "f64" => Kind::Number,
            other if choices.iter().any(|choice| choice.name == other) => Kind::Choice(type_name),
            _ => return Ok(None),
        };
        signature.push((pattern.ident.to_string(), kind));
    }
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
        .map(|((name, kind), (_, text))| {
            let (doc, default) = match text.split_once(" (default ") {
                Some((doc, rest)) => (doc.to_string(), Some(rest.trim_end_matches(')').to_string())),
                None => (text, None),
            };
            Parameter { name, kind, doc, default }
        })
        .collect::<Vec<_>>();

    let (result, outputs) = match result_type(&item.sig.output)?.as_str() {
        "f64" => (None, vec![Output { name: name.clone(), doc: sections.summary.clone() }]),
        other => {
            let (result, outputs) = results
                .iter()
                .find(|(result, _)| result.name == other)
                .ok_or_else(|| anyhow!("{other} must be declared with outputs! in the same file"))?;
            let copy = |output: &Output| Output { name: output.name.clone(), doc: output.doc.clone() };
            let result = ResultStruct { name: result.name.clone(), doc: result.doc.clone() };
            (Some(result), outputs.iter().map(copy).collect())
        }
    };
    let examples = sections.examples(&name, result.is_some())?;
    ensure!(
        examples.iter().all(|example| example.arguments.len() == parameters.len()),
        "an example has too few arguments"
    );
    let doc = Doc {
        summary: sections.summary.clone(),
        text: sections.text.clone(),
        accuracy: sections.get("Accuracy")?,
        degenerate: sections.get("Degenerate cases")?,
        errors: sections.get("Errors")?,
        source: sections.get("Source")?,
        examples,
    };
    Ok(Some(Function { module: module.to_string(), name, parameters, outputs, result, doc }))
}

/// `T` of `Result<T, Error>`.
fn result_type(output: &ReturnType) -> Result<String> {
    if let ReturnType::Type(_, returned) = output
        && let Type::Path(path) = &**returned
        && let Some(last) = path.path.segments.last()
        && let syn::PathArguments::AngleBracketed(arguments) = &last.arguments
        && let Some(syn::GenericArgument::Type(Type::Path(inner))) = arguments.args.first()
        && let Some(inner) = inner.path.segments.last()
    {
        return Ok(inner.ident.to_string());
    }
    bail!("the result must be Result<f64, Error> or Result<a struct of outputs!, Error>")
}

/// A doc comment cut at its headings.
struct Sections {
    summary: String,
    text: String,
    named: Vec<(String, Vec<String>)>,
}

impl Sections {
    fn read(lines: Vec<String>) -> Result<Self> {
        let mut named: Vec<(String, Vec<String>)> = vec![(String::new(), Vec::new())];
        let mut in_code = false;
        for line in lines {
            in_code ^= line.starts_with("```");
            if let Some(heading) = line.strip_prefix("# ").filter(|_| !in_code) {
                named.push((heading.trim().to_string(), Vec::new()));
            } else if let Some((_, section)) = named.last_mut() {
                section.push(line);
            }
        }
        let opening = named.remove(0).1.join("\n");
        let (summary, text) = opening.trim().split_once("\n\n").unwrap_or((opening.trim(), ""));
        ensure!(!summary.is_empty(), "a summary line is missing");
        Ok(Self { summary: summary.replace('\n', " "), text: text.trim().to_string(), named })
    }

    fn lines(&self, heading: &str) -> Result<&[String]> {
        let found = self.named.iter().find(|(name, _)| name == heading);
        found
            .map(|(_, lines)| lines.as_slice())
            .ok_or_else(|| anyhow!("the section `# {heading}` is missing"))
    }

    fn get(&self, heading: &str) -> Result<String> {
        let text = self.lines(heading)?.join("\n").trim().to_string();
        ensure!(!text.is_empty(), "the section `# {heading}` is empty");
        Ok(text)
    }

    /// Lines ``- `name`: meaning``; a line that does not begin so continues the one before.
    fn arguments(&self) -> Result<Vec<(String, String)>> {
        let mut arguments: Vec<(String, String)> = Vec::new();
        for line in self.lines("Arguments")?.iter().filter(|line| !line.trim().is_empty()) {
            if let Some((name, text)) = line.strip_prefix("- `").and_then(|rest| rest.split_once("`: ")) {
                arguments.push((name.to_string(), text.to_string()));
            } else if let Some((_, text)) = arguments.last_mut() {
                text.push(' ');
                text.push_str(line.trim());
            } else {
                bail!("`# Arguments` must begin with a line like: - `name_unit`: meaning, range");
            }
        }
        Ok(arguments)
    }

    /// Lines `assert_eq!(format!("{:.3}", name(1.0, 2.0)?.field), "1.234");`.
    fn examples(&self, function: &str, has_fields: bool) -> Result<Vec<Example>> {
        let code = self.lines("Example")?.iter().filter(|line| !line.starts_with("```"));
        let code = code.map(|line| line.strip_prefix("# ").unwrap_or(line)).collect::<Vec<_>>().join("\n");
        let block: syn::Block =
            syn::parse_str(&format!("{{ {code} }}")).context("`# Example` is not Rust")?;
        let mut examples = Vec::new();
        for statement in block.stmts {
            if let syn::Stmt::Macro(statement) = statement
                && statement.mac.path.is_ident("assert_eq")
            {
                let example = statement.mac.parse_body_with(|input: syn::parse::ParseStream| {
                    let format: syn::ExprMacro = input.parse()?;
                    input.parse::<syn::Token![,]>()?;
                    let printed: syn::LitStr = input.parse()?;
                    let (decimals, call) = format.mac.parse_body_with(|input: syn::parse::ParseStream| {
                        let pattern: syn::LitStr = input.parse()?;
                        input.parse::<syn::Token![,]>()?;
                        Ok((pattern.value(), input.parse::<Expr>()?))
                    })?;
                    Ok((decimals, call, printed.value()))
                });
                let (pattern, call, printed) = example.map_err(|error| anyhow!("`# Example`: {error}"))?;
                examples.push(self::example(function, has_fields, &pattern, &call, printed)?);
            }
        }
        ensure!(
            !examples.is_empty(),
            "`# Example` needs a line assert_eq!(format!(\"{{:.3}}\", {function}(...)?), \"...\");"
        );
        Ok(examples)
    }
}

fn example(function: &str, has_fields: bool, pattern: &str, call: &Expr, printed: String) -> Result<Example> {
    let decimals = pattern
        .trim_start_matches("{:.")
        .trim_end_matches('}')
        .parse()
        .context("the format must be {:.N}")?;
    let (output, tried) = match call {
        Expr::Field(field) => {
            let syn::Member::Named(name) = &field.member else { bail!("an output has a name") };
            (Some(name.to_string()), &*field.base)
        }
        other => (None, other),
    };
    ensure!(
        output.is_some() == has_fields,
        "an example looks at one output: {function}(...)?.output for several outputs"
    );
    let Expr::Try(tried) = tried else { bail!("an example calls {function}(...)?") };
    let Expr::Call(call) = &*tried.expr else { bail!("an example calls {function}(...)?") };
    let arguments =
        call.args.iter().map(|argument| quote::quote!(#argument).to_string().replace(' ', "")).collect();
    Ok(Example { arguments, output, decimals, printed })
}
