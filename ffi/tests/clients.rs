//! C and C++ programs built against the header and both kinds of library, and run.
#![allow(
    clippy::unwrap_used,
    clippy::panic,
    clippy::indexing_slicing,
    missing_docs,
    reason = "a test fails by panicking"
)]

#[path = "clients/path.rs"]
mod path;
#[path = "clients/route.rs"]
mod route;
#[path = "clients/tutorials.rs"]
mod tutorials;

use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::OnceLock;

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..").canonicalize().unwrap()
}

/// The folder that holds the static and the shared library, built if need be.
fn libraries() -> &'static Path {
    static BUILT: OnceLock<PathBuf> = OnceLock::new();
    BUILT.get_or_init(|| {
        let target = root().join("target");
        let mut cargo = Command::new(env!("CARGO"));
        let status = cargo
            .args(["build", "--quiet", "-p", "lubberline-ffi", "--target-dir"])
            .arg(&target)
            .current_dir(root());
        assert!(status.status().unwrap().success(), "the C library must build");
        target.join("debug")
    })
}

fn folder(name: &str) -> PathBuf {
    let folder = root().join("target/c-clients").join(name);
    std::fs::create_dir_all(&folder).unwrap();
    folder
}

fn run(command: &mut Command) -> String {
    let output = command.output().unwrap_or_else(|error| panic!("{command:?}: {error}"));
    let text = String::from_utf8_lossy(&output.stdout).to_string();
    assert!(output.status.success(), "{command:?}\n{text}{}", String::from_utf8_lossy(&output.stderr));
    text
}

fn compiler(variable: &str, usual: &str) -> Command {
    Command::new(std::env::var(variable).unwrap_or_else(|_| usual.to_string()))
}

/// Compiles a program with all warnings as errors, links it with the library, and runs it; gives back what it prints.
fn client(source: &str, linked_statically: bool, arguments: &[PathBuf]) -> String {
    let kind = if linked_statically { "static" } else { "shared" };
    let program = folder(kind).join(source.replace('/', "-")).with_extension("");
    let mut compile = strict_compiler();
    compile.arg("-O1").arg(root().join(source)).arg("-o").arg(&program);
    if source.ends_with("allocation.c") {
        compile
            .args(["malloc", "calloc", "realloc", "posix_memalign"].map(|call| format!("-Wl,--wrap={call}")));
    }
    if linked_statically {
        compile.arg(libraries().join("liblubberline.a")).args(["-lpthread", "-ldl", "-lm"]);
    } else {
        // The soname is what the program will look for.
        let soname = folder(kind).join(format!("liblubberline.so.{}", interface()));
        if !soname.exists() {
            let _ = std::os::unix::fs::symlink(libraries().join("liblubberline.so"), &soname);
        }
        compile.arg("-L").arg(libraries()).args(["-llubberline", "-lm"]);
        compile.arg(format!("-Wl,-rpath,{}", folder(kind).display()));
    }
    run(&mut compile);
    let text = run(Command::new(&program).args(arguments));
    println!("{source} ({kind}): {text}");
    text
}

fn strict_compiler() -> Command {
    let mut compile = compiler("CC", "cc");
    compile
        .args(["-std=c11", "-Wall", "-Wextra", "-Wpedantic", "-Werror", "-I"])
        .arg(root().join("ffi/include"));
    compile
}

fn interface() -> String {
    let version: Vec<&str> = env!("CARGO_PKG_VERSION").split('.').collect();
    if version[0] == "0" { format!("0.{}", version[1]) } else { version[0].to_string() }
}

fn both(name: &str) {
    client(&format!("tests/c/{name}.c"), true, &[]);
    client(&format!("tests/c/{name}.c"), false, &[]);
}

/// An example, and what the comment at its end says it prints.
fn example(name: &str) -> (String, String) {
    let text = std::fs::read_to_string(root().join(format!("ffi/examples/{name}.c"))).unwrap();
    let (program, printed) =
        text.split_once("\n/* Prints\n").unwrap_or_else(|| panic!("{name} says what it prints"));
    let lines = printed.strip_suffix(" */\n").unwrap().lines();
    (program.to_string(), lines.map(|line| line.strip_prefix(" * ").unwrap().to_string() + "\n").collect())
}

#[test]
fn examples_print_what_they_say() {
    let files = std::fs::read_dir(root().join("ffi/examples")).unwrap();
    let names: Vec<String> =
        files.map(|file| file.unwrap().path().file_stem().unwrap().to_str().unwrap().to_string()).collect();
    assert!(names.len() >= 15, "{names:?}");
    for name in names {
        let (_, printed) = example(&name);
        for linked_statically in [true, false] {
            let source = format!("ffi/examples/{name}.c");
            assert_eq!(client(&source, linked_statically, &[]), printed, "{source}");
        }
    }
}

#[test]
fn the_readme_shows_an_example_and_a_line_that_builds_it() {
    let readme = std::fs::read_to_string(root().join("README.md")).unwrap();
    let (_, shown) = readme.split_once("```c\n").unwrap();
    let (program, after) = shown.split_once("```\n").unwrap();
    let (expected, printed) = example("lead");
    assert_eq!(program, expected);
    let (_, line) = after.split_once("```sh\n").unwrap();
    let (line, _) = line.split_once("```").unwrap();
    // As a newcomer would type it, who has no settings of ours.
    let mut shell = Command::new("sh");
    shell.args(["-c", line]).current_dir(root()).env_remove("CARGO_TARGET_DIR");
    assert_eq!(run(&mut shell), printed, "{line}");
}

#[test]
fn course_change() {
    both("course_change");
}

#[test]
fn structures() {
    both("structures");
}

#[test]
fn flight() {
    both("flight");
}

#[test]
fn legs() {
    both("legs");
}

#[test]
fn arrays() {
    both("arrays");
}

#[test]
fn many() {
    both("many");
}

#[test]
fn relations() {
    both("relations");
}

#[test]
fn documentation_examples() {
    both("generated_examples");
}

#[test]
fn bad_input() {
    both("bad_input");
}

#[test]
fn bad_use() {
    both("bad_use");
}

/// Under the compiler's own watch for steps beyond memory and for what C leaves undefined, where it has one.
#[test]
fn what_takes_structures_and_arrays_harms_no_memory() {
    let build = |source: &str| {
        let program = folder("sanitized").join(source.replace('/', "-")).with_extension("");
        let mut compile = strict_compiler();
        compile.args(["-g", "-fsanitize=address,undefined", "-fno-sanitize-recover=all"]);
        compile.arg(root().join(source)).arg("-o").arg(&program);
        compile.arg(libraries().join("liblubberline.a")).args(["-lpthread", "-ldl", "-lm"]);
        (compile, program)
    };
    let (mut compile, program) = build("ffi/examples/lead.c");
    let watches = compile.output().is_ok_and(|output| output.status.success())
        && Command::new(program).output().is_ok_and(|output| output.status.success());
    if !watches {
        println!("not tried: the compiler has no sanitizers");
        return;
    }
    for name in
        ["bad_use", "structures", "course_change", "flight", "legs", "path", "route", "arrays", "relations"]
    {
        let (mut compile, program) = build(&format!("tests/c/{name}.c"));
        run(&mut compile);
        println!("{name}: {}", run(&mut Command::new(program)));
    }
}

#[test]
fn nothing_is_allocated() {
    client("tests/c/allocation.c", true, &[]);
}

#[test]
fn published_values() {
    let folder = root().join("tests/data/published");
    let mut files: Vec<PathBuf> =
        std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()).collect();
    files.sort();
    client("tests/c/published.c", true, &files);
    client("tests/c/published.c", false, &files);
}

#[test]
fn the_header_is_cpp_17_too() {
    let source = folder("cpp").join("header.cpp");
    std::fs::write(&source, "#include \"lubberline.h\"\nint main() { return lubber_abi_version() == 0; }\n")
        .unwrap();
    let mut compile = compiler("CXX", "c++");
    compile
        .args(["-std=c++17", "-Wall", "-Wextra", "-Wpedantic", "-Werror", "-I"])
        .arg(root().join("ffi/include"));
    compile.arg(&source).arg("-o").arg(folder("cpp").join("header"));
    compile.arg(libraries().join("liblubberline.a")).args(["-lpthread", "-ldl", "-lm"]);
    run(&mut compile);
    run(&mut Command::new(folder("cpp").join("header")));
}

#[test]
fn statuses_say_what_the_core_says() {
    let source = std::fs::read_to_string(root().join("ffi/src/generated.rs")).unwrap();
    let known = (-999..0).filter_map(|code| lubberline::status_text(code).map(|text| (code, text)));
    let mut count = 0;
    for (code, text) in known {
        assert!(source.contains(&format!("{code} => c{text:?},")), "{code}: {text}");
        count += 1;
    }
    assert!(count > 50);
}

#[test]
fn every_symbol_has_the_prefix() {
    let symbols =
        run(Command::new("nm").args(["-D", "--defined-only"]).arg(libraries().join("liblubberline.so")));
    let names: Vec<&str> = symbols.lines().filter_map(|line| line.split_whitespace().last()).collect();
    assert!(names.len() > 50, "{symbols}");
    for name in names {
        assert!(name.starts_with("lubber_"), "{name} is exported without the prefix");
    }
}

fn present(program: &str) -> bool {
    Command::new(program).arg("--version").output().is_ok_and(|output| output.status.success())
}

/// A folder with the library installed in it, moved after the installation, as a package would be.
fn installed() -> &'static Path {
    static INSTALLED: OnceLock<PathBuf> = OnceLock::new();
    INSTALLED.get_or_init(|| {
        let (first, last) = (folder("package").join("first"), folder("package").join("last"));
        let _ = std::fs::remove_dir_all(&first);
        let _ = std::fs::remove_dir_all(&last);
        run(Command::new("sh").arg(root().join("ffi/install.sh")).arg(&first).arg(libraries()));
        std::fs::rename(&first, &last).unwrap();
        last
    })
}

/// The script by itself, from a folder of the caller's.
fn install(caller: &Path, arguments: &[&str]) -> Command {
    let mut install = Command::new("sh");
    install.arg(root().join("ffi/install.sh")).args(arguments).current_dir(caller);
    install.env_remove("DESTDIR").env_remove("CARGO_TARGET_DIR");
    install
}

#[test]
fn installing_says_what_it_does_and_refuses_what_it_cannot_mean() {
    let caller = folder("install-words");
    for word in ["--help", "-h"] {
        let help = run(&mut install(&caller, &[word]));
        assert!(help.starts_with("Installs the C interface: ffi/install.sh [PREFIX] [BUILT]\n"), "{help}");
        assert!(help.contains("/usr/local") && !help.contains("set -eu"), "{help}");
    }
    for (arguments, told) in [
        (&[""][..], "PREFIX is empty; allowed: a folder"),
        (&["", "built"], "PREFIX is empty"),
        (&["--prefix=here"], "--prefix=here is no option; allowed: --help"),
        (&["one", "two", "three"], "3 arguments are given; allowed: PREFIX and BUILT"),
    ] {
        // Were it to install, then here.
        let output = install(&caller, arguments).env("DESTDIR", caller.join("stray")).output().unwrap();
        let error = String::from_utf8_lossy(&output.stderr).to_string();
        assert!(!output.status.success() && error.starts_with(told), "{arguments:?}: {error}");
        assert!(output.stdout.is_empty() && std::fs::read_dir(&caller).unwrap().next().is_none());
    }
}

/// Cargo runs in the clone's folder; a relative folder for what it builds is the caller's all the same. In its place stands a
/// program that takes that folder as cargo does, and puts there what has been built.
#[test]
fn installing_builds_where_the_caller_says() {
    let caller = folder("install-built");
    std::fs::remove_dir_all(&caller).unwrap();
    let programs = folder("install-built/programs");
    let cargo = programs.join("cargo");
    let text = format!(
        "#!/bin/sh\ntarget=${{CARGO_TARGET_DIR:-target}}\nwhile [ $# -gt 0 ]; do\n    [ \"$1\" != --target-dir ] || target=$2\n    shift\ndone\n\
         mkdir -p \"$target/release\" && cp '{0}/liblubberline.so' '{0}/liblubberline.a' \"$target/release/\"\n",
        libraries().display()
    );
    std::fs::write(&cargo, text).unwrap();
    run(Command::new("chmod").arg("+x").arg(&cargo));
    let path = format!("{}:{}", programs.display(), std::env::var("PATH").unwrap());
    for target in ["built", "deep/er", caller.join("absolute").to_str().unwrap()] {
        let told = run(install(&caller, &["into"]).env("PATH", &path).env("CARGO_TARGET_DIR", target));
        assert!(told.ends_with(" is in into\n"), "{told}");
        assert!(caller.join(target).join("release/liblubberline.a").exists(), "{target}");
        assert!(caller.join("into/lib/liblubberline.so").exists());
        std::fs::remove_dir_all(caller.join("into")).unwrap();
    }
}

#[test]
fn an_installed_library_is_found_by_pkg_config() {
    if !present("pkg-config") {
        println!("not tried: there is no pkg-config");
        return;
    }
    let flags = run(Command::new("pkg-config")
        .env("PKG_CONFIG_PATH", installed().join("lib/pkgconfig"))
        .args(["--cflags", "--libs", "lubberline"]));
    let program = folder("package").join("course_change");
    run(strict_compiler()
        .arg(root().join("ffi/examples/course_change.c"))
        .args(flags.split_whitespace())
        .arg(format!("-Wl,-rpath,{}", installed().join("lib").display()))
        .arg("-lm")
        .arg("-o")
        .arg(&program));
    assert_eq!(run(&mut Command::new(&program)), example("course_change").1);
}

#[test]
fn an_installed_library_is_found_by_cmake() {
    if !present("cmake") {
        println!("not tried: there is no cmake");
        return;
    }
    let (source, build) = (folder("cmake"), folder("cmake").join("build"));
    let source_file = root().join("ffi/examples/course_change.c");
    let project = format!(
        "cmake_minimum_required(VERSION 3.13)\nproject(client C)\nfind_package(lubberline {version} REQUIRED)\n\
         add_executable(shared {example})\ntarget_link_libraries(shared lubberline::lubberline m)\n\
         add_executable(static {example})\ntarget_link_libraries(static lubberline::static)\n",
        version = interface(),
        example = source_file.display(),
    );
    std::fs::write(source.join("CMakeLists.txt"), project).unwrap();
    let prefix = format!("-DCMAKE_PREFIX_PATH={}", installed().display());
    run(Command::new("cmake").arg("-S").arg(&source).arg("-B").arg(&build).arg(prefix));
    run(Command::new("cmake").arg("--build").arg(&build));
    for kind in ["shared", "static"] {
        assert_eq!(run(&mut Command::new(build.join(kind))), example("course_change").1);
    }
}
