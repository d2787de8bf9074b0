// Ringing and speech: three rising tones for what is due, six for what cannot wait. Browsers keep a page silent until it was
// touched, so the first touch anywhere lets it ring, unless its sound was switched off. Start at ring().
let sound = null;

const canSound = () => sound !== null && sound.state === "running";

function soundOn() {
  const Context = window.AudioContext || window.webkitAudioContext;
  if (!Context) return;
  sound = sound || new Context();
  sound.resume().then(() => {
    soundLine();
    ring();
  });
}

function soundLine() {
  const button = $("sound");
  if (!button) return;
  button.hidden = false;
  button.classList.toggle("on", canSound());
  button.setAttribute("aria-pressed", canSound());
  button.textContent = canSound() ? button.dataset.on : button.dataset.off;
}

for (const kind of ["pointerdown", "keydown"]) {
  document.addEventListener(kind, (event) => !event.target.closest?.("#sound") && kept.get("sound") !== "off" && !canSound() && soundOn(), { passive: true });
}

document.addEventListener("click", (event) => {
  if (!event.target.closest("#sound")) return;
  kept.set("sound", canSound() ? "off" : null);
  if (canSound()) sound.suspend().then(soundLine);
  else soundOn();
});

// What this page rang. The home post is told a little later: other screens that are open hear of the same thing at the same
// moment, and each is to ring.
const rung = new Set();

async function ring() {
  let due;
  try {
    due = await (await fetch(`${base}/rings`)).json();
  } catch {
    return;
  }
  if (!Array.isArray(due) || !$("ringing")) return;
  due = due.filter((one) => !one.covers.every((id) => rung.has(id)));
  if (due.length === 0) return;
  const first = due[0];
  if (!play(first.urgency === "wake" ? 6 : 3)) return;
  say(first.title);
  const box = $("ringing");
  box.querySelector("strong").textContent = first.title;
  box.querySelector("span").textContent = first.body;
  box.querySelector("a").href = base + (first.place || first.cook || "/");
  // The page of the cook itself shows it larger.
  box.hidden = base + first.cook === location.pathname;
  const body = new URLSearchParams();
  for (const id of due.flatMap((one) => one.covers)) {
    rung.add(id);
    body.append("id", id);
  }
  setTimeout(() => fetch(`${base}/rang`, { method: "POST", body }), 2_000);
}

function play(times) {
  if (!canSound()) return false;
  for (let i = 0; i < times; i++) {
    const start = sound.currentTime + i * 0.45;
    const tone = sound.createOscillator();
    const level = sound.createGain();
    tone.frequency.value = [660, 880, 990][i % 3];
    level.gain.setValueAtTime(0, start);
    level.gain.linearRampToValueAtTime(0.5, start + 0.02);
    level.gain.linearRampToValueAtTime(0, start + 0.35);
    tone.connect(level).connect(sound.destination);
    tone.start(start);
    tone.stop(start + 0.4);
  }
  return true;
}

// A voice of this device that speaks the page's language; none that would send words elsewhere.
const voice = () => window.speechSynthesis?.getVoices().find((one) => one.localService && one.lang.slice(0, 2) === root.lang.slice(0, 2));

function say(text) {
  const one = voice();
  if (!one || !text || !canSound() || kept.get("speech") === "off") return false;
  const said = new SpeechSynthesisUtterance(text);
  Object.assign(said, { voice: one, lang: root.lang });
  speechSynthesis.speak(said);
  return true;
}

// What comes next, told to who hears the page, once each time it changes, from a place that is never patched; aloud too once
// it is due.
function announce() {
  const next = $("main").querySelector("[data-speech]");
  const speech = next?.dataset.speech || "";
  const what = speech.replace(/\d+/g, "");
  const box = $("speech");
  if (!box) return;
  const first = box.dataset.what === undefined;
  if (!first && speech && what !== box.dataset.what) {
    box.textContent = speech;
    if ("due" in next.dataset) say(speech);
  }
  box.dataset.what = what;
}
