//! What the screens say, in the language and the units of who looks.
