// Takes a picture of every page as it stands on glass: node tests/browser/pictures.mjs [FOLDER] [PROGRAM] [BROWSER]. The cook in them
// is the demo's. To be seen by a designer, and by whoever imagines to stand two meters away.
import { mkdir } from "node:fs/promises";
import { form, press, start } from "./cook.mjs";
import { begin } from "./kit.mjs";

const [folder = "target/pictures", program = `${process.env.CARGO_TARGET_DIR ?? "target"}/debug/slowbend`, browser = "/usr/bin/chromium"] = process.argv.slice(2);

const SIZES = { phone: [390, 844], tablet: [820, 1180], desktop: [1440, 900] };
const LOOKS = [
  ...Object.entries(SIZES).flatMap(([size, [width, height]]) =>
    ["light", "dark"].map((scheme) => ({ name: `${size}-${scheme}`, width, height, scheme }))),
  { name: "phone-spanish", width: 390, height: 844, locale: "es-MX" },
  { name: "tablet-spanish", width: 820, height: 1180, locale: "es-MX" },
  { name: "phone-200", width: 390, height: 844, text: 2 },
  { name: "phone-small", width: 360, height: 640 },
  { name: "phone-propped", width: 390, height: 844, propped: true },
  { name: "phone-propped-card", width: 390, height: 844, propped: true, mm: 6.02, scheme: "dark" },
  { name: "phone-propped-side", width: 844, height: 390, propped: true, mm: 6.02 },
  { name: "tablet-propped-card", width: 820, height: 1180, propped: true, mm: 5.2, scheme: "dark" },
  { name: "desktop-propped", width: 1440, height: 900, propped: true },
];

/** The demo's pages, by their names. */
export async function pagesOf(page) {
  await page.goto("/");
  await page.click("form[action$='/demo'] button >> nth=0");
  await page.waitForURL(/\/demo\/cook\//);
  const now = new URL(page.url()).pathname;
  const meats = await page.locator("a[href*='/meat/']").evaluateAll((all) => all.map((one) => one.getAttribute("href").replace(/\/check$/, "")));
  const opening = await page.locator("a[href$='/opening']").first().getAttribute("href");
  const pit = opening.replace(/\/opening$/, "");
  return {
    start: "/", now, write: `${now}/write`, timeline: `${now}/timeline`, pits: `${now}/pits`, dishes: `${now}/dishes`, kitchen: `${now}/kitchen`, "kitchen-sheet": `${now}/kitchen/sheet`, sheet: `${now}/sheet`, plan: `${now}/plan`, "plan-made": `${now}/plan?go=on&hands=2&late=120&cooler=on`, "hand-out": `${now}/hand-out?students=Ana%2C+12%3A30+PM%0ABen%2C+1+PM`, watch: `${now}/watch`, readings: `${now}/readings`, opening, fire: `${pit}/fire`, trouble: `${pit}/trouble`, "fire-out": `${pit}/fire-out`, log: `${now}/log`,
    card: `${now}/card`, again: `${now}/again`, take: "/card", meat: meats[0], check: `${meats[0]}/check`, "meat-readings": `${meats[0]}/readings`,
    cuts: "/demo/cuts", cut: "/demo/cuts/spare_ribs", thermometers: "/demo/thermometers", phones: "/phones", settings: "/demo/settings", wall: "/demo/wall", missing: "/nowhere",
  };
}

// Some are taken of a cook in which something is due: its fire was not seen to for an hour.
const DUE = [
  { name: "phone-small-due", width: 360, height: 640 },
  { name: "phone-due", width: 390, height: 844 },
  { name: "phone-propped-due", width: 390, height: 844, propped: true, scheme: "dark" },
  { name: "desktop-due", width: 1440, height: 900 },
  { name: "tablet-spanish-due", width: 820, height: 1180, locale: "es-MX", propped: true },
];

const wanted = process.env.ONLY?.split(",");
const house = await begin(program, browser);
await mkdir(folder, { recursive: true });
for (const look of LOOKS.filter((look) => !wanted || wanted.some((part) => look.name.includes(part)))) {
  await picture(look);
}
const due = DUE.filter((look) => !wanted || wanted.some((part) => look.name.includes(part)));
const now = due.length ? await somethingDue() : null;
for (const look of due) await picture(look, { now });
await house.end();

async function somethingDue() {
  const page = await house.open();
  const now = await start(page, "Regatta lunch");
  for (const cut of ["spare_ribs", "turkey_breast", "pork_butt"]) {
    await page.goto(`${now}/write`);
    await page.locator("summary", { hasText: "Another meat" }).click();
    await page.selectOption("form[action$='/meat'] select[name=cut]", cut);
    await form(page, "/meat");
  }
  await page.goto(now);
  const meats = await page.locator(".lanes a").evaluateAll((all) => all.map((one) => one.getAttribute("href").replace(/\/check$/, "")));
  for (const meat of meats) {
    await page.goto(meat);
    await page.locator(".more select[name=ago]").selectOption("60");
    await press(page, /^Put on/);
  }
  return now;
}

async function picture(look, known) {
  const page = await house.open(look);
  await page.addInitScript(({ propped, mm }) => {
    if (propped) localStorage.setItem("slowbend-propped", "yes");
    if (mm) localStorage.setItem("slowbend-mm", mm);
  }, look);
  const pages = known ?? (await pagesOf(page));
  for (const [name, path] of Object.entries(pages).filter(([name]) => !look.propped || name === "now")) {
    await page.goto(path);
    // Letters twice as large, as browsers do that have a size of text apart from their zoom.
    if (look.text) await page.evaluate((text) => (document.documentElement.style.fontSize = `${text * 100}%`), look.text);
    await page.screenshot({ path: `${folder}/${name}-${look.name}.png` });
    await page.screenshot({ path: `${folder}/${name}-${look.name}-whole.png`, fullPage: true });
  }
  await page.context().close();
  return pages;
}
