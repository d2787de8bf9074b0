// Begins, once the page stands.

// The viewer's zone, once: the machine that serves may stand elsewhere.
function zone() {
  const asked = $("main").dataset.zone;
  const own = Intl.DateTimeFormat().resolvedOptions().timeZone;
  if (!asked || !own || own === asked) return;
  const body = new URLSearchParams({ zone: own, back: location.pathname });
  fetch("/settings/viewer", { method: "POST", body, redirect: "manual" }).then(refresh);
}

// A page to be shown while the home post cannot be reached, where the browser lets one be kept.
const keepAwayPage = () => navigator.serviceWorker?.register("/away.js").catch(() => {});

root.dataset.script = "on";
window.speechSynthesis?.addEventListener?.("voiceschanged", setUp);
inks();
letters();
zone();
soundLine();
dressed();
listen();
ring();
keepAwayPage();
