//! Benches only; see `functions.rs`.
