//! What must not be mixed does not compile: each file of `mixing/` mixes two things, and the message beside it names both.
//!
//! The messages are the compiler's own. When it words them anew, or a function they quote has changed, look at what
//! `TRYBUILD=overwrite cargo test -p lubberline-tests --test mixing` writes, and commit it.
#![allow(missing_docs, reason = "a test says by its name what it holds")]

#[test]
fn mixing_two_kinds_does_not_compile() {
    let cases = trybuild::TestCases::new();
    // What is not mixed compiles: the refusals below are for the mixing alone.
    cases.pass("rust/mixing/like_with_like.rs");
    cases.compile_fail("rust/mixing/*_as_*.rs");
}
