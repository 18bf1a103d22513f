//! The tutorials for C: their programs are built and run by their own commands, and print what is shown.

use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::OnceLock;

use super::{folder, present, root, run};

/// The flags of [`super::strict_compiler`], which a tutorial shows too.
const STRICT: &str = "-std=c11 -Wall -Wextra -Wpedantic -Werror";

/// A block of a page: its language and its text.
fn blocks(page: &str) -> Vec<(String, String)> {
    let text = std::fs::read_to_string(root().join("docs/tutorials").join(page)).unwrap();
    let parts = text.split("```").skip(1).step_by(2);
    parts.map(|part| part.split_once('\n').unwrap()).map(|(kind, body)| (kind.into(), body.into())).collect()
}

/// What the page on linking says of installing: where the library then is, as a home folder, and the settings to use it.
fn installed() -> &'static (PathBuf, String) {
    static INSTALLED: OnceLock<(PathBuf, String)> = OnceLock::new();
    INSTALLED.get_or_init(|| {
        let home = folder("tutorials").join("home");
        let _ = std::fs::remove_dir_all(&home);
        std::fs::create_dir_all(&home).unwrap();
        let shell: Vec<String> = blocks("linking-from-c.md")
            .into_iter()
            .filter(|(kind, _)| kind == "sh")
            .map(|(_, body)| body)
            .collect();
        assert!(shell[0].contains("ffi/install.sh") && shell[1].starts_with("export "), "{shell:?}");
        // From the top of a clone, as a newcomer who has no settings of ours.
        run(Command::new("sh")
            .args(["-ec", &shell[0]])
            .current_dir(root())
            .env_remove("CARGO_TARGET_DIR")
            .env("CARGO_HOME", cargo_home())
            .env("RUSTUP_HOME", rustup_home())
            .env("HOME", &home));
        (home, shell[1].clone())
    })
}

/// Where the toolchain is, which is found by the home folder if nothing is set.
fn under_home(variable: &str, name: &str) -> PathBuf {
    std::env::var_os(variable)
        .map_or_else(|| PathBuf::from(std::env::var_os("HOME").unwrap_or_default()).join(name), PathBuf::from)
}

fn cargo_home() -> PathBuf {
    under_home("CARGO_HOME", ".cargo")
}

fn rustup_home() -> PathBuf {
    under_home("RUSTUP_HOME", ".rustup")
}

fn shell(commands: &str, folder: &Path) -> String {
    let (home, settings) = installed();
    run(Command::new("sh")
        .args(["-ec", &format!("{settings}{commands}")])
        .current_dir(folder)
        .env("HOME", home))
}

/// Follows a page and gives how many outputs it shows.
fn followed(page: &str) -> usize {
    if !present("pkg-config") {
        println!("not tried: there is no pkg-config");
        return usize::MAX;
    }
    let folder = folder("tutorials").join(page.trim_end_matches(".md"));
    std::fs::create_dir_all(&folder).unwrap();
    let (mut printed, mut shown) = (String::new(), 0);
    for (kind, body) in blocks(page) {
        match kind.as_str() {
            "c" => {
                let name = body.strip_prefix("/* ").and_then(|rest| rest.split_once(" */")).unwrap().0;
                std::fs::write(folder.join(name), &body).unwrap();
            }
            "sh" if body.contains("ffi/install.sh") || body.starts_with("export ") => {}
            "sh" => {
                assert!(
                    body.lines().filter(|line| line.starts_with("cc ")).all(|line| line.contains(STRICT)),
                    "{body}"
                );
                printed = shell(&body, &folder);
            }
            "text" => {
                assert_eq!(printed, body, "{page}");
                shown += 1;
            }
            "cmake" if present("cmake") => {
                std::fs::write(folder.join("CMakeLists.txt"), &body).unwrap();
                shell(
                    "cmake -S . -B build -DCMAKE_PREFIX_PATH=$HOME/lubberline && cmake --build build",
                    &folder,
                );
                assert_eq!(shell("build/first", &folder), shell("./first", &folder));
            }
            _ => assert_eq!(kind, "cmake", "{page}: a block of no known kind"),
        }
    }
    shown
}

#[test]
fn linking() {
    assert!(followed("linking-from-c.md") >= 5);
}

#[test]
fn the_loop_of_a_simulator() {
    assert!(followed("simulator-loop.md") >= 1);
}
