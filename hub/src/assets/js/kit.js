// Keeps an open page true, lets it ring, and props it up. Without these scripts every page still works by hand.
"use strict";

// The demo lives under an address of its own, with a home of its own behind it.
const baseOf = (path) => (path === "/demo" || path.startsWith("/demo/") ? "/demo" : "");
const base = baseOf(location.pathname);
const $ = (id) => document.getElementById(id);
const root = document.documentElement;

// What belongs to this screen alone, such as the size of its pixels: it stays in this browser, and nowhere where that is refused.
const kept = {
  get(name) {
    try {
      return localStorage.getItem(`slowbend-${name}`);
    } catch {
      return null;
    }
  },
  set(name, value) {
    try {
      if (value === null) localStorage.removeItem(`slowbend-${name}`);
      else localStorage.setItem(`slowbend-${name}`, value);
    } catch {
      // It counts until the page is closed.
    }
  },
};
