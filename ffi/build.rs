//! Gives the shared library its soname. Before 1.0 the minor version counts as the major one.

fn main() {
    let major = env!("CARGO_PKG_VERSION_MAJOR");
    let minor = env!("CARGO_PKG_VERSION_MINOR");
    let interface = if major == "0" { format!("0.{minor}") } else { major.to_string() };
    if std::env::var("CARGO_CFG_TARGET_OS").is_ok_and(|system| system == "linux") {
        println!("cargo:rustc-cdylib-link-arg=-Wl,-soname,liblubberline.so.{interface}");
    }
    println!("cargo:rerun-if-changed=build.rs");
}
