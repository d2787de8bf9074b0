// A screen that hangs or stands somewhere: propped up so that it is read from two meters away, kept awake, as bright as was
// chosen, with letters in millimeters. Start at propped() and setUp().

// The short side of a bank card, millimeters (ISO/IEC 7810, ID-1: 85.60 × 53.98; from memory).
const CARD_MM = 53.98;

let lock = null;
let lockRefused = false;

function inks() {
  const chosen = kept.get("inks");
  if (chosen) root.dataset.inks = chosen;
  else delete root.dataset.inks;
}

// How many pixels a millimeter has, where a card was held to the screen, and how much of its size a capital takes.
function letters(mm = Number(kept.get("mm"))) {
  if (!(mm > 0)) {
    root.style.removeProperty("--mm");
    return void delete root.dataset.card;
  }
  root.dataset.card = "";
  root.style.setProperty("--mm", mm);
  const pen = document.createElement("canvas").getContext("2d");
  pen.font = `800 100px ${getComputedStyle(root).getPropertyValue("--afar")}`;
  const cap = pen.measureText("H").actualBoundingBoxAscent / 100;
  root.style.setProperty("--cap", cap > 0.4 && cap < 1 ? cap : 0.7);
}

// Whether this page is propped up. Only what fits is shown: of the meats the worst first, poultry always, and the rest are
// counted.
function propped() {
  const button = $("prop");
  if (!button) return;
  const can = $("main").dataset.page === "now";
  const is = can && kept.get("propped") === "yes";
  button.hidden = !can;
  button.textContent = is ? button.dataset.leave : button.dataset.prop;
  button.setAttribute("aria-pressed", is);
  root.classList.toggle("propped", is);
  fit(is);
  stayAwake();
}

function fit(is) {
  const lanes = [...document.querySelectorAll(".lanes > .line")];
  const counts = [...document.querySelectorAll("[data-rest]")];
  delete root.dataset.tight;
  for (const one of [...lanes, ...counts]) one.hidden = false;
  for (const one of counts) one.hidden = true;
  if (!is || lanes.length < 2) return;
  const others = Number(counts[0]?.dataset.others || 0);
  const side = document.querySelector(".side");
  const isOver = () => side.getBoundingClientRect().bottom + scrollY > innerHeight;
  for (let tight = 1; tight <= 2 && isOver(); tight++) root.dataset.tight = tight;
  const last = lanes.reverse();
  const going = last.filter((one) => !("keep" in one.dataset));
  for (let gone = 1; gone <= going.length && isOver(); gone++) {
    going[gone - 1].hidden = true;
    for (const one of counts) one.hidden = Number(one.dataset.rest) !== gone + others;
  }
}

// Browsers keep the screen on only for pages from a secure address; where not, the page of this screen says what to set.
async function stayAwake() {
  const wanted = root.classList.contains("propped") && !document.hidden;
  if (wanted && !lock && navigator.wakeLock) {
    lock = navigator.wakeLock.request("screen").then((held) => {
      lockRefused = false;
      held.addEventListener("release", () => (lock = null));
      return held;
    }, () => {
      lockRefused = true;
      lock = null;
    });
  } else if (!wanted && lock) {
    const held = await lock;
    lock = null;
    held?.release();
  }
}

document.addEventListener("click", (event) => {
  if (!event.target.closest("#prop")) return;
  const now = kept.get("propped") !== "yes";
  kept.set("propped", now ? "yes" : null);
  if (now && document.fullscreenEnabled) root.requestFullscreen().catch(() => {});
  if (!now && document.fullscreenElement) document.exitFullscreen();
  propped();
  scrollTo(0, 0);
});
addEventListener("resize", propped);

// The page where this screen is set up.
function setUp() {
  const slider = $("card-size");
  if (!slider) return;
  const mm = Number(kept.get("mm"));
  slider.max = Math.max(Number(slider.min) + 1, Math.min(700, innerWidth - 40));
  slider.value = mm > 0 ? mm * CARD_MM : slider.dataset.usual;
  if (!(mm > 0)) root.style.setProperty("--mm", slider.value / CARD_MM);
  for (const part of document.querySelectorAll("[data-if]")) part.hidden = part.dataset.if !== howAwake();
  const silent = $("voice");
  if (silent) silent.hidden = Boolean(voice());
  $("say-aloud").checked = kept.get("speech") !== "off";
  for (const one of document.querySelectorAll("[name=inks]")) one.checked = one.value === (kept.get("inks") || "");
  $("set-up").hidden = false;
}
const howAwake = () => (lockRefused ? "refused" : navigator.wakeLock ? "awake" : window.isSecureContext ? "unknown" : "insecure");

document.addEventListener("input", (event) => {
  if (event.target.id === "card-size") measure(Number(event.target.value));
  if (event.target.id === "say-aloud") kept.set("speech", event.target.checked ? null : "off");
  if (event.target.name === "inks") {
    kept.set("inks", event.target.value || null);
    inks();
  }
});
document.addEventListener("click", (event) => {
  const step = event.target.closest("[data-step]");
  if (step) {
    const slider = $("card-size");
    slider.value = Number(slider.value) + Number(step.dataset.step);
    measure(Number(slider.value));
  }
  if (event.target.closest("#card-forget")) {
    kept.set("mm", null);
    letters();
    setUp();
  }
  if (event.target.closest("#ring-test")) test(event.target.closest("#ring-test").dataset.speech);
});

function measure(pixels) {
  kept.set("mm", pixels / CARD_MM);
  letters();
}

function test(speech) {
  soundOn();
  setTimeout(() => {
    const rang = play(3);
    $("rang").hidden = !rang;
    $("silent").hidden = rang;
    if (rang) say(speech);
  }, 300);
}
