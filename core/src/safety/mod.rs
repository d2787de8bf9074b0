//! Published minimums and cautions, each with its source.
