// Keeps an open page true, and lets it ring. Without this script every page still works by hand.
"use strict";
(() => {
  // The demo lives under an address of its own, with a home of its own behind it.
  const baseOf = (path) => (path === "/demo" || path.startsWith("/demo/") ? "/demo" : "");
  const base = baseOf(location.pathname);
  const $ = (id) => document.getElementById(id);
  let timer = 0;
  let touched = 0;
  let turn = 0;
  let going = 0;
  let sound = null;

  // The page anew: the part that changes is swapped, and what had the focus keeps it.
  async function show(address, options) {
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
    if (!next) return location.assign(address);
    swap(page, next);
    return answer.url;
  }

  // Somewhere else because somebody said so; until it is there, the page is not fetched anew.
  async function go(address, options) {
    turn += 1;
    going += 1;
    try {
      return await show(address, options);
    } finally {
      going -= 1;
    }
  }

  function swap(page, next) {
    const main = $("main");
    const kept = nameOf(document.activeElement);
    const typed = chosen(main);
    const open = [...main.querySelectorAll("details[open] > summary")].map((summary) => summary.textContent);
    document.title = page.title;
    document.documentElement.lang = page.documentElement.lang;
    const nav = page.querySelector("header.bar nav");
    if (nav) document.querySelector("header.bar nav").replaceWith(document.importNode(nav, true));
    const fresh = document.importNode(next, true);
    main.replaceWith(fresh);
    for (const summary of fresh.querySelectorAll("details > summary")) {
      if (open.includes(summary.textContent)) summary.parentElement.open = true;
    }
    typed.forEach(({ form, name, value, checked }) => {
      for (const field of fields(fresh)) {
        if (formOf(field) !== form || field.name !== name) continue;
        if (checked === undefined) field.value = value;
        else if (field.value === value) field.checked = checked;
      }
    });
    find(kept)?.focus({ preventScroll: true });
    if ($("speech")) speak();
    wait();
  }

  // What comes next, said once each time it changes, from a place that is never swapped.
  function speak(first) {
    const speech = $("main").querySelector("[data-speech]")?.dataset.speech || "";
    const what = speech.replace(/\d+/g, "");
    if (!first && speech && what !== $("speech").dataset.what) $("speech").textContent = speech;
    $("speech").dataset.what = what;
  }

  const fields = (main) => main.querySelectorAll("input:not([type=hidden], [type=file]), select, textarea");
  const formOf = (field) => field.form && field.form.elements.namedItem("form").value;

  // What was typed or chosen and not yet sent.
  function chosen(main) {
    return [...fields(main)].filter(isChanged).map((field) => ({
      form: formOf(field),
      name: field.name,
      value: field.value,
      checked: field.matches("[type=radio], [type=checkbox]") ? field.checked : undefined,
    }));
  }

  // A name for a control that the new page has too: its form's address and its own name and value.
  function nameOf(element) {
    if (!element || !element.closest || !element.closest("#main")) return null;
    const form = element.form && element.form.elements.namedItem("form");
    return { href: element.getAttribute("href"), form: form && form.value, name: element.name, text: element.textContent };
  }

  function find(kept) {
    if (!kept) return null;
    for (const element of $("main").querySelectorAll("a, button, input, select, textarea, summary")) {
      const name = nameOf(element);
      if (name.href === kept.href && name.form === kept.form && name.name === kept.name && name.text === kept.text) return element;
    }
    return null;
  }

  // Somebody is typing: the page waits until they are through, or have left it.
  const isTyping = () => Date.now() - touched < 20_000 && document.activeElement?.matches("#main input:not([type=radio], [type=checkbox]), #main select, #main textarea");

  function isChanged(field) {
    if (field.matches("select")) return !field.options[field.selectedIndex]?.defaultSelected && field.selectedIndex !== usual(field);
    if (field.matches("[type=radio], [type=checkbox]")) return field.checked !== field.defaultChecked;
    return field.value !== field.defaultValue;
  }

  const usual = (select) => Math.max(0, [...select.options].findIndex((option) => option.defaultSelected));

  async function refresh() {
    // What was handed over stands on no address: fetched anew it would be gone.
    if ("stay" in $("main").dataset) return;
    if (going || isTyping()) {
      clearTimeout(timer);
      timer = setTimeout(refresh, going ? 500 : 5_000);
      return;
    }
    await show(location.pathname + location.search.replace(/[?&]told=\d+/, ""));
  }

  function wait() {
    clearTimeout(timer);
    const ms = Number($("main").dataset.wait);
    if (ms > 0) timer = setTimeout(refresh, Math.min(ms, 3_600_000));
    soundLine();
  }

  function away(is) {
    $("away").hidden = !is;
    if (is) {
      clearTimeout(timer);
      timer = setTimeout(refresh, 5_000);
    }
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

  // Ringing: three rising tones for what is due, six for what cannot wait.
  async function ring() {
    let due;
    try {
      due = await (await fetch(`${base}/rings`)).json();
    } catch {
      return;
    }
    if (!Array.isArray(due) || due.length === 0) return;
    const first = due[0];
    if (!play(first.urgency === "wake" ? 6 : 3)) return;
    const box = $("ringing");
    box.querySelector("strong").textContent = first.title;
    box.querySelector("span").textContent = first.body;
    box.querySelector("a").href = base + (first.cook || "/");
    // The page of the cook itself shows it larger.
    box.hidden = base + first.cook === location.pathname;
    const body = new URLSearchParams();
    for (const one of due) for (const id of one.covers) body.append("id", id);
    fetch(`${base}/rang`, { method: "POST", body });
  }

  function play(times) {
    if (!sound || sound.state !== "running") return false;
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

  // What works only with this script, and is hidden without it.
  function soundLine() {
    if ($("sound")) $("sound").hidden = false;
    for (const label of document.querySelectorAll("[data-file]")) label.hidden = false;
  }

  // A file that was chosen becomes the rows that would be pasted.
  document.addEventListener("change", async (event) => {
    const file = event.target.matches("[data-file] input") && event.target.files[0];
    if (!file) return;
    const form = event.target.form;
    form.elements.rows.value = await file.text();
    form.elements.source.value ||= file.name.replace(/\.[^.]*$/, "");
  });

  function wake() {
    const Context = window.AudioContext || window.webkitAudioContext;
    if (!Context) return;
    sound = sound || new Context();
    sound.resume().then(() => {
      $("sound").textContent = $("sound").dataset.on;
      $("sound").classList.add("on");
      play(1);
      ring();
    });
  }

  // Forms and links stay on this page, so that its sound stays on.
  document.addEventListener("submit", async (event) => {
    const form = event.target;
    if (event.defaultPrevented) return;
    event.preventDefault();
    const button = event.submitter;
    if (form.method === "get") return void follow(`${form.action}?${new URLSearchParams(new FormData(form))}`);
    if (form.dataset.sent) return;
    form.dataset.sent = "1";
    // A form that a file may come with is sent as it is.
    const sent = new FormData(form);
    const body = form.enctype === "multipart/form-data" ? sent : new URLSearchParams(sent);
    if (button && button.name) body.append(button.name, button.value);
    const to = await go(form.action, { method: "POST", body });
    delete form.dataset.sent;
    if (!to) return;
    if (new URL(to).pathname !== new URL(form.action).pathname || new URL(to).search) history.pushState(null, "", to);
    $("ringing").hidden = true;
    ($("refused") || $("main")).focus();
    scrollTo(0, 0);
  });

  document.addEventListener("click", async (event) => {
    if (event.target.closest("#sound")) return wake();
    const link = event.target.closest("a[href^='/']");
    if (!link || event.defaultPrevented || event.button !== 0 || event.metaKey || event.ctrlKey || event.shiftKey || event.altKey) return;
    if (link.hasAttribute("download") || baseOf(new URL(link.href).pathname) !== base) return;
    event.preventDefault();
    await follow(link.href);
  });

  async function follow(address) {
    const to = await go(address);
    if (!to) return;
    history.pushState(null, "", to);
    $("ringing").hidden = true;
    $("main").focus();
    scrollTo(0, 0);
  }

  addEventListener("popstate", () => go(location.href));
  addEventListener("pageshow", (event) => event.persisted && refresh());
  for (const kind of ["input", "focusin"]) document.addEventListener(kind, () => (touched = Date.now()));
  document.addEventListener("visibilitychange", () => !document.hidden && (refresh(), ring()));

  // The viewer's zone, once: the machine that serves may stand elsewhere.
  function zone() {
    const asked = $("main").dataset.zone;
    const own = Intl.DateTimeFormat().resolvedOptions().timeZone;
    if (!asked || !own || own === asked) return;
    const body = new URLSearchParams({ zone: own, back: location.pathname });
    fetch("/settings/viewer", { method: "POST", body, redirect: "manual" }).then(refresh);
  }

  document.documentElement.dataset.script = "on";
  zone();
  if ($("speech")) speak(true);
  wait();
  listen();
  ring();
})();
