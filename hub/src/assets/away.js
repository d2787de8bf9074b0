// Keeps one page for when the home post cannot be reached, and shows it then; everything else goes to the home post as always.
const KEPT = "slowbend-away";
const PAGE = "/away";
const keep = () => caches.open(KEPT).then((kept) => kept.addAll([PAGE, "CSS"]));

addEventListener("install", (event) => event.waitUntil(keep()));
addEventListener("activate", (event) => event.waitUntil(clients.claim()));
addEventListener("fetch", (event) => {
  const url = new URL(event.request.url);
  if (event.request.mode === "navigate") event.respondWith(fetch(event.request).catch(() => caches.match(PAGE)));
  else if (url.pathname.endsWith(".css")) event.respondWith(fetch(event.request).catch(() => caches.match(event.request)));
});
