//! Cells from the center to the surface: thick inside, thin where it dries. Places are shares of the half thickness.

/// The edge before cell `i` of `n`: 1 − (1 − i/n)^1.5, so that the outermost of twelve is a fortieth of the way in.
pub fn edge(i: usize, n: usize) -> f64 {
    let left = 1.0 - i as f64 / n as f64;
    1.0 - left * libm::sqrt(left)
}

/// The middle of cell `i`.
pub fn middle(i: usize, n: usize) -> f64 {
    (edge(i, n) + edge(i + 1, n)) / 2.0
}

/// The area at a place over that of the surface: a slab's stays (shape 0), a cylinder's grows with it (1), a sphere's with
/// its square (2), and shapes between lie between.
pub fn area(x: f64, shape: f64) -> f64 {
    if x > 0.0 || shape > 0.0 {
        libm::pow(x, shape)
    } else {
        1.0
    }
}

/// What is inside cell `i`, a unit of surface and of half thickness.
pub fn volume(i: usize, n: usize, shape: f64) -> f64 {
    let within = |x| libm::pow(x, shape + 1.0) / (shape + 1.0);
    within(edge(i + 1, n)) - within(edge(i, n))
}
