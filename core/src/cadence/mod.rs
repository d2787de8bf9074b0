//! How often a meat is mopped or spritzed, and the fewest openings of a pit that keep every window.
