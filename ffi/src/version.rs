//! Which library this is, at compile time and at run time.

use std::ffi::c_char;

/// Major version of the header.
pub const LUBBER_VERSION_MAJOR: i32 = 0;
/// Minor version of the header.
pub const LUBBER_VERSION_MINOR: i32 = 1;
/// Patch version of the header.
pub const LUBBER_VERSION_PATCH: i32 = 0;

/// The version of the library, such as "0.1.0".
#[unsafe(no_mangle)]
pub extern "C" fn lubber_version() -> *const c_char {
    const VERSION: &str = concat!(env!("CARGO_PKG_VERSION"), "\0");
    VERSION.as_ptr().cast()
}

/// The version of the binary interface: programs built against another number must be built again.
///
/// Before 1.0 it is the minor version of the library, later the major one; it is the number at the end of the soname.
#[unsafe(no_mangle)]
pub extern "C" fn lubber_abi_version() -> i32 {
    if LUBBER_VERSION_MAJOR == 0 { LUBBER_VERSION_MINOR } else { LUBBER_VERSION_MAJOR }
}

const _: () = {
    // The numbers above are for the header, which cannot read Cargo.toml; they must say the same.
    const fn digit(text: &str) -> i32 {
        let mut value = 0;
        let mut bytes = text.as_bytes();
        while let [first, rest @ ..] = bytes {
            value = value * 10 + (*first as i32 - '0' as i32);
            bytes = rest;
        }
        value
    }
    assert!(digit(env!("CARGO_PKG_VERSION_MAJOR")) == LUBBER_VERSION_MAJOR);
    assert!(digit(env!("CARGO_PKG_VERSION_MINOR")) == LUBBER_VERSION_MINOR);
    assert!(digit(env!("CARGO_PKG_VERSION_PATCH")) == LUBBER_VERSION_PATCH);
};
