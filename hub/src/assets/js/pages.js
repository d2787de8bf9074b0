// Going from page to page and sending forms without loading anew, so that sound stays on. Start at show().
let turn = 0;
let going = 0;

// The page at `address` in the place of this one; answers where it came from.
async function show(address, options, own = false, sent = null) {
  const mine = turn;
  let answer, text;
  try {
    answer = await fetch(address, { credentials: "same-origin", ...options });
    text = await answer.text();
  } catch {
    return away(true);
  }
  away(false);
  // Somebody went elsewhere meanwhile: an older page must not come back over it.
  if (mine !== turn) return;
  if (baseOf(new URL(answer.url).pathname) !== base) return void location.assign(answer.url);
  const page = new DOMParser().parseFromString(text, "text/html");
  const next = page.getElementById("main");
  if (!next) return void location.assign(address);
  patch(page, next, own, sent);
  return answer.url;
}

// Somewhere else because somebody said so; until it is there, the page is not fetched anew.
async function go(address, options, sent) {
  turn += 1;
  going += 1;
  try {
    return await show(address, options, true, sent);
  } finally {
    going -= 1;
  }
}

// `sent` is the form that was sent, if one was: what was typed in it is through, what was typed in others stays.
function patch(page, next, own, sent) {
  document.title = page.title;
  root.lang = page.documentElement.lang;
  styled(page);
  const nav = page.querySelector("header.bar nav");
  if (nav) morph(document.querySelector("header.bar nav"), nav, true);
  sent?.reset();
  if (sent?.contains(document.activeElement)) document.activeElement.blur();
  // Another page is another thing: nothing of this one is carried into it.
  if (next.dataset.path !== $("main").dataset.path) $("main").replaceWith(document.importNode(next, true));
  else morph($("main"), next, own);
  dressed();
}

// A page with one sentence stands alone: from it the browser goes by itself.
const hasFrame = () => $("ringing") !== null;

// Pages that are printed have a style of their own: gone to from another page, they bring it along, and it stays.
function styled(page) {
  const of = (from) => [...from.querySelectorAll("head link[rel=stylesheet]")];
  const known = of(document).map((link) => link.getAttribute("href"));
  const missing = of(page).filter((link) => !known.includes(link.getAttribute("href")));
  for (const link of missing) document.head.append(document.importNode(link));
}

// What every page needs once it stands.
function dressed() {
  announce();
  propped();
  setUp();
  wait();
}

document.addEventListener("submit", async (event) => {
  const form = event.target;
  if (event.defaultPrevented || !hasFrame()) return;
  event.preventDefault();
  const button = event.submitter;
  if (form.method === "get") return void follow(`${form.action}?${new URLSearchParams(new FormData(form))}`);
  if (form.dataset.sent || Date.now() - (changedUnderFinger.get(button) || 0) < 500) return;
  form.dataset.sent = "1";
  // A form that a file may come with is sent as it is.
  const written = new FormData(form);
  const body = form.enctype === "multipart/form-data" ? written : new URLSearchParams(written);
  if (button && button.name) body.append(button.name, button.value);
  const to = await go(form.action, { method: "POST", body }, form);
  delete form.dataset.sent;
  if (to) arrived(to, new URL(to).pathname !== new URL(form.action).pathname || new URL(to).search);
});

document.addEventListener("click", (event) => {
  const link = event.target.closest("a[href^='/']");
  if (!link || !hasFrame() || event.defaultPrevented || event.button !== 0 || event.metaKey || event.ctrlKey || event.shiftKey || event.altKey) return;
  if (link.hasAttribute("download") || baseOf(new URL(link.href).pathname) !== base) return;
  event.preventDefault();
  follow(link.href);
});

async function follow(address) {
  const to = await go(address);
  if (to) arrived(to, true);
}

function arrived(to, elsewhere) {
  if (elsewhere) history.pushState(null, "", to);
  $("ringing").hidden = true;
  ($("refused") || $("main")).focus();
  scrollTo(0, 0);
}

addEventListener("popstate", () => go(location.href));
