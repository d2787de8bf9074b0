// Keeps the page true: it is fetched anew when the home post says that something changed, and when its own words run out. In
// between nothing runs. Start at listen() and wait().
let timer = 0;
let touched = 0;
let lost = 0;

function later(ms) {
  clearTimeout(timer);
  timer = setTimeout(refresh, ms);
}

async function refresh() {
  // What was handed over stands on no address: fetched anew it would be gone.
  if ("stay" in $("main").dataset) return;
  if (going || isTyping()) return later(going ? 500 : 5_000);
  await show(location.pathname + location.search.replace(/[?&]told=\d+/, ""));
}

// Until the screen itself says that it is no longer true; a page that nobody sees waits until somebody does.
function wait() {
  clearTimeout(timer);
  const ms = Number($("main").dataset.wait);
  if (ms > 0 && ms < 2 ** 31 && !document.hidden) later(ms);
}

// Somebody is typing: the page waits until they are through, or have left it.
const isTyping = () => Date.now() - touched < 20_000 && document.activeElement?.matches("#main input:not([type=radio], [type=checkbox]), #main select, #main textarea");
for (const kind of ["input", "focusin"]) document.addEventListener(kind, () => (touched = Date.now()));

// Out of reach: said at the top, tried again, and after two minutes rung, for nothing else would ring any more.
function away(is) {
  if (!$("away")) return;
  $("away").hidden = !is;
  if (!is) {
    clearTimeout(lost);
    lost = 0;
    return;
  }
  lost ||= setTimeout(() => play(3) && say($("away").textContent.trim()), 120_000);
  later(5_000);
}

function listen() {
  const events = new EventSource(`${base}/live`);
  const changed = () => {
    refresh();
    ring();
  };
  events.addEventListener("changed", changed);
  events.addEventListener("hello", () => (events.before ? changed() : (events.before = true)));
  events.addEventListener("error", () => away(true));
  events.addEventListener("open", () => away(false));
}

document.addEventListener("visibilitychange", () => (document.hidden ? clearTimeout(timer) : (refresh(), ring(), stayAwake())));
addEventListener("pageshow", (event) => event.persisted && refresh());
