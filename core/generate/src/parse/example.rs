//! Reads the examples of a function's documentation, from which those of C and Python are made.

use anyhow::{Context, Result, anyhow, bail, ensure};
use quote::quote;
use syn::parse::{ParseStream, Parser};
use syn::{Block, Expr, ExprMacro, LitStr, Member, Stmt, Token};

use crate::model::Example;

const FORM: &str = "assert_eq!(format!(\"{:.N}\", name(1.0, 2.0)?.output), \"...\");";

/// The assertions below `# Example`. Lines that rustdoc hides are left to it.
pub fn read(lines: &[String]) -> Result<Vec<(String, Example)>> {
    let shown = lines.iter().filter(|line| !line.starts_with("```") && !line.starts_with("# "));
    let code = shown.map(String::as_str).collect::<Vec<_>>().join("\n");
    let statements = Block::parse_within.parse_str(&code).context("`# Example` is not Rust")?;
    ensure!(!statements.is_empty(), "`# Example` needs a line {FORM}");
    let fault = |statement: &Stmt| format!("`# Example`: `{}` is not like {FORM}", quote!(#statement));
    statements.iter().map(|statement| assertion(statement).with_context(|| fault(statement))).collect()
}

/// The function that is called, and the example.
fn assertion(statement: &Stmt) -> Result<(String, Example)> {
    let Stmt::Macro(statement) = statement else { bail!("it is no assertion") };
    ensure!(statement.mac.path.is_ident("assert_eq"), "it is no assert_eq!");
    let (format, printed) = statement.mac.parse_body_with(|input: ParseStream| {
        let format: ExprMacro = input.parse()?;
        input.parse::<Token![,]>()?;
        let printed: LitStr = input.parse()?;
        input.parse::<Option<Token![,]>>()?;
        Ok((format, printed.value()))
    })?;
    let (pattern, value) = format.mac.parse_body_with(|input: ParseStream| {
        let pattern: LitStr = input.parse()?;
        input.parse::<Token![,]>()?;
        Ok((pattern.value(), input.parse::<Expr>()?))
    })?;
    let decimals = pattern.strip_prefix("{:.").and_then(|rest| rest.strip_suffix('}'));
    let decimals = decimals.and_then(|digits| digits.parse().ok());
    let (output, tried) = match value {
        Expr::Field(field) => {
            let Member::Named(name) = field.member else { bail!("an output has a name") };
            (Some(name.to_string()), *field.base)
        }
        other => (None, other),
    };
    let Expr::Try(tried) = tried else { bail!("it has no ?") };
    let Expr::Call(call) = *tried.expr else { bail!("it calls nothing") };
    let called = &call.func;
    let written = |argument| quote!(#argument).to_string().replace(' ', "");
    let arguments = call.args.iter().map(written).collect();
    let decimals = decimals.ok_or_else(|| anyhow!("the format is not {{:.N}}"))?;
    Ok((quote!(#called).to_string(), Example { arguments, output, decimals, printed }))
}
