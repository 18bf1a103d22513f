//! What a procedure is made of.

pub mod legs;
