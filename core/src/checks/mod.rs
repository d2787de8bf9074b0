//! What to try on a meat, what each outcome means, and whether it is done.
