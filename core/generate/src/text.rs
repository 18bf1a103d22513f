//! Small changes of words between the languages.

/// With a capital first letter.
pub fn sentence(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or(String::new(), |first| first.to_uppercase().chain(letters).collect())
}

/// `TrueAirspeed` as `TRUE_AIRSPEED`.
pub fn screaming(name: &str) -> String {
    let mut text = String::new();
    for letter in name.chars() {
        if letter.is_uppercase() && !text.is_empty() {
            text.push('_');
        }
        text.extend(letter.to_uppercase());
    }
    text
}

/// Replaces each link of Rust's documentation, ``[`name`]``, by what `written` makes of the last part of its name.
pub fn links(text: &str, written: impl Fn(&str) -> String) -> String {
    let mut changed = String::new();
    let mut rest = text;
    while let Some((before, (name, after))) =
        rest.split_once("[`").and_then(|(before, from)| from.split_once("`]").map(|named| (before, named)))
    {
        changed.push_str(before);
        changed.push_str(&written(name.rsplit("::").next().unwrap_or(name)));
        rest = after;
    }
    changed + rest
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn links_are_rewritten_wherever_they_stand() {
        let written = |name: &str| format!("<{name}>");
        assert_eq!(links("see [`a::b`], [c] and [`d`]", written), "see <b>, [c] and <d>");
        assert_eq!(links("an open [`bracket", written), "an open [`bracket");
    }

    #[test]
    fn names_change_case() {
        assert_eq!(screaming("TrueAirspeed"), "TRUE_AIRSPEED");
        assert_eq!(sentence("bank out of range"), "Bank out of range");
    }
}
