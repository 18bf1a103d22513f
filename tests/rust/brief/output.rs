//! Output that does not arrive: it is an error where it is lost, and none where nobody reads on.

use std::fs::OpenOptions;
use std::path::Path;
use std::process::{Command, Stdio};

use super::{plans, program};

/// Each form of both kinds of plan, and the help.
fn each_form() -> Vec<Command> {
    let mut forms = Vec::new();
    for plan in ["islands.toml", "approach.toml"] {
        for options in [&[][..], &["--json"], &["--geojson"]] {
            let mut command = Command::new(program());
            command.arg(plans().join(plan)).args(options);
            forms.push(command);
        }
    }
    let mut help = Command::new(program());
    help.arg("--help");
    forms.push(help);
    forms
}

#[test]
fn output_that_is_lost_is_an_error() {
    let full = Path::new("/dev/full");
    if !full.exists() {
        println!("not tried: there is no /dev/full");
        return;
    }
    let full = || Stdio::from(OpenOptions::new().write(true).open(full).unwrap());
    for mut command in each_form() {
        let output = command.stdout(full()).stderr(Stdio::piped()).output().unwrap();
        let error = String::from_utf8(output.stderr).unwrap();
        assert_eq!(output.status.code(), Some(1), "{command:?}: {error}");
        assert!(error.starts_with("the output is lost: ") && error.lines().count() == 1, "{error}");
        // Nor does it panic where the message is lost too.
        assert_eq!(command.stdout(full()).stderr(full()).status().unwrap().code(), Some(1), "{command:?}");
    }
}

#[test]
fn a_reader_that_stops_is_no_error() {
    for mut command in each_form() {
        let (reader, writer) = std::io::pipe().unwrap();
        drop(reader);
        let output = command.stdout(writer).stderr(Stdio::piped()).output().unwrap();
        let error = String::from_utf8(output.stderr).unwrap();
        assert_eq!((output.status.code(), error.as_str()), (Some(0), ""), "{command:?}");
    }
}
