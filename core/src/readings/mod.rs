//! Probe readings: series, chunks, and files from other instruments.
