//! Slowbend.
