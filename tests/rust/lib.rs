//! The checks of lubberline against the outside are the test targets beside this file.
