//! Cuts a function's documentation at its headings, in the form that `DEVELOPERS.md` fixes.

use anyhow::{Result, bail, ensure};

/// The sections, in the order they must have.
const HEADINGS: [&str; 6] = ["Arguments", "Accuracy", "Degenerate cases", "Errors", "Source", "Example"];

/// A doc comment cut at its headings.
pub struct Sections {
    pub summary: String,
    /// What stands between the summary and the first heading.
    pub text: String,
    named: Vec<(String, Vec<String>)>,
}

impl Sections {
    pub fn read(lines: Vec<String>) -> Result<Self> {
        let mut opening = Vec::new();
        let mut named: Vec<(String, Vec<String>)> = Vec::new();
        let mut in_code = false;
        for line in lines {
            in_code ^= line.starts_with("```");
            if let Some(heading) = line.strip_prefix("# ").filter(|_| !in_code) {
                named.push((heading.trim().to_string(), Vec::new()));
            } else if let Some((_, section)) = named.last_mut() {
                section.push(line);
            } else {
                opening.push(line);
            }
        }
        ensure!(
            named.iter().map(|(heading, _)| heading.as_str()).eq(HEADINGS),
            "the documentation has the sections `{}`, not `{}` in this order",
            named.iter().map(|(heading, _)| heading.as_str()).collect::<Vec<_>>().join("`, `"),
            HEADINGS.join("`, `")
        );
        let opening = opening.join("\n");
        let (summary, text) = opening.trim().split_once("\n\n").unwrap_or((opening.trim(), ""));
        ensure!(
            summary.ends_with('.') && !summary.contains('\n'),
            "the documentation must begin with a summary of one line that ends with a full stop, then an empty line"
        );
        Ok(Self { summary: summary.to_string(), text: text.trim().to_string(), named })
    }

    /// The lines below a heading.
    pub fn lines(&self, heading: &str) -> &[String] {
        let found = self.named.iter().find(|(name, _)| name == heading);
        found.map(|(_, lines)| lines.as_slice()).unwrap_or_default()
    }

    /// The text below a heading.
    pub fn get(&self, heading: &str) -> Result<String> {
        let text = self.lines(heading).join("\n").trim().to_string();
        ensure!(!text.is_empty(), "the section `# {heading}` is empty");
        Ok(text)
    }

    /// Lines ``- `name`: meaning``; an indented line continues the one before.
    pub fn arguments(&self) -> Result<Vec<(String, String)>> {
        let mut arguments: Vec<(String, String)> = Vec::new();
        for line in self.lines("Arguments").iter().filter(|line| !line.trim().is_empty()) {
            if let Some((name, text)) = line.strip_prefix("- `").and_then(|rest| rest.split_once("`: ")) {
                arguments.push((name.to_string(), text.to_string()));
            } else if let (true, Some((_, text))) = (line.starts_with(' '), arguments.last_mut()) {
                text.push(' ');
                text.push_str(line.trim());
            } else {
                bail!("the line `{line}` of `# Arguments` must be like: - `name_unit`: meaning, range");
            }
        }
        Ok(arguments)
    }
}
