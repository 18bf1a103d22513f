//! Reads what the core declares by macros of its own: `choice!` and `outputs!`.

use anyhow::{Result, anyhow};
use syn::parse::ParseStream;
use syn::{Attribute, Error, Ident, Item, ItemMacro, LitInt, LitStr, Token};

use super::doc_lines;
use crate::model::{Alternative, Choice, Output, ResultStruct};

/// A choice: `Name { Variant = code: "word", ... }` with doc comments.
pub fn choice(item: &ItemMacro, module: &str) -> Result<Choice> {
    item.mac
        .parse_body_with(|input: ParseStream| {
            let doc = doc_lines(&input.call(Attribute::parse_outer)?).join(" ");
            let name: Ident = input.parse()?;
            let body;
            syn::braced!(body in input);
            let alternatives = body.parse_terminated(alternative, Token![,])?.into_iter().collect();
            Ok(Choice { name: name.to_string(), module: module.to_string(), doc, alternatives })
        })
        .map_err(|error| anyhow!("choice!: {error}"))
}

fn alternative(input: ParseStream) -> syn::Result<Alternative> {
    let doc = doc_lines(&input.call(Attribute::parse_outer)?).join(" ");
    let variant: Ident = input.parse()?;
    input.parse::<Token![=]>()?;
    let negative = input.parse::<Option<Token![-]>>()?.is_some();
    let size: i32 = input.parse::<LitInt>()?.base10_parse()?;
    input.parse::<Token![:]>()?;
    let word: LitStr = input.parse()?;
    let code = if negative { -size } else { size };
    Ok(Alternative { variant: variant.to_string(), code, word: word.value(), doc })
}

/// An `outputs!` declaration: the struct and its fields; nothing for any other item.
pub fn result(item: &Item) -> Option<Result<(ResultStruct, Vec<Output>)>> {
    let Item::Macro(item) = item else { return None };
    if !item.mac.path.is_ident("outputs") {
        return None;
    }
    let parsed = item.mac.parse_body_with(|input: ParseStream| {
        let doc = doc_lines(&input.call(Attribute::parse_outer)?).join(" ");
        let name: Ident = input.parse()?;
        let body;
        syn::braced!(body in input);
        let outputs = body.parse_terminated(output, Token![,])?.into_iter().collect();
        Ok((ResultStruct { name: name.to_string(), doc }, outputs))
    });
    Some(parsed.map_err(|error| anyhow!("outputs!: {error}")))
}

fn output(input: ParseStream) -> syn::Result<Output> {
    let doc = doc_lines(&input.call(Attribute::parse_outer)?).join(" ");
    let name: Ident = input.parse()?;
    if doc.is_empty() {
        return Err(Error::new(name.span(), format!("`{name}` has no documentation")));
    }
    Ok(Output { name: name.to_string(), doc })
}
