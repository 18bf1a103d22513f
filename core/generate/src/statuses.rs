//! Reads the status codes of the core: a name and a text for each.

use std::fs;
use std::path::Path;

use anyhow::{Context, Result, anyhow, ensure};
use syn::{Attribute, Expr, Lit};

use crate::text::screaming;

/// A failure as C sees it.
pub struct Status {
    /// `LATITUDE`.
    pub constant: String,
    pub code: i32,
    pub text: String,
}

/// The codes of the quantities and of the other failures, in descending order.
pub fn read(root: &Path) -> Result<Vec<Status>> {
    let mut statuses = quantities(&root.join("core/src/value/quantity.rs"))?;
    statuses.extend(relations(&root.join("core/src/error.rs"))?);
    ensure!(
        statuses.is_sorted_by(|before, after| after.code < before.code),
        "status codes must descend in the order of their tables"
    );
    Ok(statuses)
}

/// Rows `Latitude = 1: "latitude", "deg", [from -90.0 to 90.0];` of the `quantities!` table.
fn quantities(path: &Path) -> Result<Vec<Status>> {
    let file = syn::parse_file(&fs::read_to_string(path)?)?;
    let table = file.items.iter().find_map(|item| match item {
        syn::Item::Macro(item) if item.mac.path.is_ident("quantities") => Some(&item.mac),
        _ => None,
    });
    let table = table.ok_or_else(|| anyhow!("{}: no quantities!", path.display()))?;
    let rows = table.parse_body_with(|input: syn::parse::ParseStream| {
        let mut rows = Vec::new();
        while !input.is_empty() {
            input.call(Attribute::parse_outer)?;
            let variant: syn::Ident = input.parse()?;
            input.parse::<syn::Token![=]>()?;
            let number: syn::LitInt = input.parse()?;
            input.parse::<syn::Token![:]>()?;
            let name: syn::LitStr = input.parse()?;
            input.parse::<syn::Token![,]>()?;
            let unit: syn::LitStr = input.parse()?;
            input.parse::<syn::Token![,]>()?;
            let range;
            syn::bracketed!(range in input);
            let range: proc_macro2::TokenStream = range.parse()?;
            input.parse::<syn::Token![;]>()?;
            let code: i32 = number.base10_parse()?;
            let range = range.to_string().replace("- ", "-");
            let text = format!("{} out of range; allowed: {}", name.value(), allowed(&range, &unit.value()));
            rows.push(Status { constant: screaming(&variant.to_string()), code: -code, text });
        }
        Ok(rows)
    });
    rows.with_context(|| path.display().to_string())
}

/// The words of a range, as the core's own macro makes them.
fn allowed(range: &str, unit: &str) -> String {
    match range {
        "finite" => format!("any finite number of {unit}"),
        "positive" => format!("above 0 {unit}, or infinite"),
        other => format!("{other} {unit}").trim_end().to_string(),
    }
}

/// Rows `(-101, "course_reversal", "...")` of `RELATION_FAILURES`.
fn relations(path: &Path) -> Result<Vec<Status>> {
    let file = syn::parse_file(&fs::read_to_string(path)?)?;
    let table = file.items.iter().find_map(|item| match item {
        syn::Item::Const(item) if item.ident == "RELATION_FAILURES" => Some(&item.expr),
        _ => None,
    });
    let Some(Expr::Reference(table)) = table.map(|table| &**table) else {
        return Err(anyhow!("no RELATION_FAILURES"));
    };
    let Expr::Array(rows) = &*table.expr else { return Err(anyhow!("RELATION_FAILURES is no array")) };
    rows.elems
        .iter()
        .map(|row| {
            if let Expr::Tuple(row) = row
                && let [Expr::Unary(code), Expr::Lit(name), Expr::Lit(text)] =
                    row.elems.iter().collect::<Vec<_>>().as_slice()
                && let Expr::Lit(code) = &*code.expr
                && let (Lit::Int(code), Lit::Str(name), Lit::Str(text)) = (&code.lit, &name.lit, &text.lit)
            {
                let size: i32 = code.base10_parse()?;
                return Ok(Status { constant: name.value().to_uppercase(), code: -size, text: text.value() });
            }
            Err(anyhow!("a row of RELATION_FAILURES is (code, name, text)"))
        })
        .collect()
}
