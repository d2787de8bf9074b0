// What the checks stand on: the home post on a free port with an empty folder, a Chromium with an empty profile, and a
// count. Start at `begin`.
import { spawn } from "node:child_process";
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createRequire } from "node:module";

// The driver lies where tests/run installed it, by the lock file beside this one.
const { chromium } = createRequire(new URL("../.tools/browser/", import.meta.url))("playwright-core");

// Nothing leaves this machine, and nothing of an earlier run is there.
const FLAGS = [
  "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
  "--disable-component-update", "--disable-sync", "--autoplay-policy=no-user-gesture-required",
];
// No single wait is longer, milliseconds.
const PATIENCE = 10_000;

const folder = await mkdtemp(join(tmpdir(), "slowbend-browser-"));
const faults = [];
let passed = 0;
let failed = 0;

/** Starts the program and gives its address. */
async function serve(program) {
  const server = spawn(program, ["--data", join(folder, "data"), "--port", "0"], {
    env: { ...process.env, XDG_STATE_HOME: join(folder, "state"), TZ: "America/Chicago" },
    stdio: ["ignore", "pipe", "inherit"],
  });
  const line = await new Promise((told, gone) => {
    server.stdout.once("data", (text) => told(String(text)));
    server.once("exit", (code) => gone(new Error(`${program} ended with ${code}`)));
  });
  return { server, address: line.match(/http:\/\/127\.0\.0\.1:\d+/)[0] };
}

/** Everything that the checks need, and how to let it go. */
export async function begin(program, browser) {
  const { server, address } = await serve(program);
  // The driver gives each launch a new, empty profile, and removes it.
  const chrome = await chromium.launch({ executablePath: browser, args: FLAGS });
  const end = async () => {
    await chrome.close();
    server.kill("SIGINT");
    await new Promise((gone) => server.once("exit", gone));
    await rm(folder, { recursive: true, force: true });
  };
  return { address, pid: server.pid, end, open: (options) => open(chrome, address, options) };
}

/** A page of its own, whose console and policy are listened to. */
async function open(chrome, address, { script = true, width = 390, height = 844, locale = "en-US", zoom = 1, scheme = "light", motion = "no-preference", quiet = false } = {}) {
  const context = await chrome.newContext({
    javaScriptEnabled: script, locale, timezoneId: "America/Chicago", baseURL: address,
    viewport: { width: Math.round(width / zoom), height: Math.round(height / zoom) }, deviceScaleFactor: zoom, colorScheme: scheme, reducedMotion: motion,
    serviceWorkers: process.env.FRESH ? "block" : "allow",
  });
  const page = await context.newPage();
  page.setDefaultTimeout(PATIENCE);
  // A quiet page is one whose faults are expected: it is sent where nothing is.
  page.on("console", (message) => !quiet && message.type() === "error" && faults.push(`console: ${message.text()}`));
  page.on("pageerror", (error) => faults.push(`script: ${error.message}`));
  if (process.env.FRESH) await undress(page);
  if (script) {
    await page.addInitScript(() => document.addEventListener("securitypolicyviolation", (event) => console.error(`policy: ${event.violatedDirective} ${event.blockedURI}`)));
  }
  return page;
}

/** Gives the page style and script as they lie on disk: a change is seen without a build. Not for checks. */
async function undress(page) {
  const assets = new URL("../../hub/src/assets/", import.meta.url);
  const list = await readFile(new URL("mod.rs", assets), "utf8");
  for (const kind of ["css", "js"]) {
    const files = [...list.matchAll(new RegExp(`include_str!\\("(${kind}/[a-z]+\\.${kind})"\\)`, "g"))].map((found) => found[1]);
    const body = (await Promise.all(files.map((file) => readFile(new URL(file, assets), "utf8")))).join("");
    await page.route(`**/assets/slowbend.${kind}*`, (route) => route.fulfill({ body, contentType: `text/${kind === "js" ? "javascript" : kind}` }));
  }
}

/** One check: its name says what holds. */
export async function check(name, body) {
  const before = faults.length;
  try {
    await body();
    const new_ones = faults.splice(before);
    if (new_ones.length) throw new Error(new_ones.join("; "));
    passed += 1;
    console.log(`ok: ${name}`);
  } catch (error) {
    failed += 1;
    console.log(`FAILED: ${name}\n  ${error.message}`);
  }
}

/** Holds, or says what does not. */
export function hold(is, what) {
  if (!is) throw new Error(what);
}

/** The last line, counted by tests/run, and the exit code. */
export function told() {
  console.log(`test result: ${failed ? "FAILED" : "ok"}. ${passed} passed; ${failed} failed; 0 ignored`);
  return failed ? 1 : 0;
}
