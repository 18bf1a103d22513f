//! (generated)
