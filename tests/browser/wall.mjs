// A screen that is propped up: letters in millimeters, meats that fit and the rest counted, kept choices, the first touch that
// lets it ring, what stays while it is patched, what it costs while nothing happens, and what stands when the home post is away.
import { readFile } from "node:fs/promises";
import { check, hold } from "./kit.mjs";
import { form, meat, press, start } from "./cook.mjs";

const text = (page, selector) => page.locator(selector).first().textContent();
// How many millimeters the capitals of an element are high, for a screen of `mm` pixels a millimeter.
const capital = (page, selector, mm) => page.locator(selector).first().evaluate((one, mm) => {
  const style = getComputedStyle(one);
  const pen = document.createElement("canvas").getContext("2d");
  // Large, for a small letter is measured in whole pixels.
  pen.font = `${style.fontWeight} 1000px ${style.fontFamily}`;
  return ((pen.measureText("H").actualBoundingBoxAscent / 1000) * parseFloat(style.fontSize)) / mm;
}, mm);

export async function wall({ open, pid }, { now }) {
  await propped({ open }, now);
  await setUp({ open }, now);
  await patched({ open }, now);
  await idle({ open, pid }, now);
  await outOfReach({ open });
}

async function propped({ open }, now) {
  const page = await open();
  await page.goto(now);
  await check("propped up at 390 × 844 what comes next has 72 px or more, and the rest of the page is gone", async () => {
    await page.click("#prop");
    await page.locator(".propped .headline").waitFor();
    const largest = await page.locator(".headline > :is(.verb, .when)").evaluateAll((all) => Math.max(...all.map((one) => parseFloat(getComputedStyle(one).fontSize))));
    hold(largest >= 72, `the largest is ${largest} px`);
    hold(!(await page.locator(".foot").isVisible()) && !(await page.locator(".bar nav").isVisible()), "no foot and no links");
  });
  await check("with a card held to it letters are 12 mm and 9.3 mm, and what does not fit is counted", async () => {
    for (const [width, height, mm] of [[390, 844, 6.02], [820, 1180, 5.2], [1440, 900, 3.6]]) {
      await page.setViewportSize({ width, height });
      await page.evaluate((mm) => localStorage.setItem("slowbend-mm", mm), mm);
      await page.reload();
      await page.locator(".propped[data-card]").waitFor();
      const next = Math.max(...(await Promise.all([".headline > .verb", ".headline > .when"].map((one) => page.locator(one).count().then((is) => (is ? capital(page, one, mm) : 0))))));
      hold(Math.abs(next - 12) < 0.3, `${width}: what comes next has ${next.toFixed(2)} mm`);
      const seen = await page.locator(".lanes > .line:visible").count();
      const all = await page.locator(".lanes > .line").count();
      if (seen) {
        const meat = await capital(page, ".lanes > .line:not([hidden]) .state", mm);
        hold(Math.abs(meat - 9.3) < 0.3, `${width}: meats have ${meat.toFixed(2)} mm`);
      }
      const rest = await page.locator("[data-rest]:visible").evaluateAll((all) => all.map((one) => Number(one.dataset.rest)));
      hold(seen === all ? rest.length === 0 : rest[0] === all - seen, `${width}: ${seen} of ${all} seen, told ${rest}`);
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      hold(over <= 0, `${width} is ${over} px too wide`);
    }
  });
  await page.context().close();
}

async function setUp({ open }, now) {
  const page = await open();
  await check("this screen's size and light are set by hand and kept", async () => {
    await page.goto("/wall");
    await page.locator("#card-size").evaluate((one) => {
      one.value = 325;
      one.dispatchEvent(new Event("input", { bubbles: true }));
    });
    await page.getByRole("button", { name: "Wider" }).click();
    const width = await page.locator(".card-outline").evaluate((one) => one.getBoundingClientRect().width);
    hold(Math.abs(width - 326) < 0.5, `the outline is ${width} px wide`);
    await page.getByLabel("Dark, for the night").check();
    await page.goto(now);
    hold((await page.evaluate(() => document.documentElement.dataset.inks)) === "dark", "it stays dark");
    const mm = await page.evaluate(() => Number(localStorage.getItem("slowbend-mm")));
    hold(Math.abs(mm - 326 / 53.98) < 0.01, `a millimeter is ${mm} px`);
  });
  await check("the first touch anywhere lets the page ring, and the ring can be tested", async () => {
    await page.goto("/wall");
    hold(!(await page.locator("#sound.on").count()), "silent at first");
    await page.locator("h1").click();
    await page.locator("#sound.on").waitFor();
    await page.click("#ring-test");
    await page.locator("#rang:visible").waitFor();
  });
  await check("it says whether it keeps the screen on", async () => {
    hold((await page.locator("[data-if]:visible").count()) === 1, "one sentence of four");
  });
  await page.context().close();
}

async function patched({ open }, now) {
  const one = await open();
  const other = await open();
  await check("what is typed, opened, focused and scrolled to stays while the page is patched", async () => {
    await one.goto(`${now}/write`);
    await other.goto(`${now}/write`);
    await one.locator("summary", { hasText: "A note" }).click();
    const field = one.locator("form[action$='/note'] input[name=text]");
    await field.fill("Half a sen");
    await one.locator("summary", { hasText: "Fuel" }).click();
    await one.locator("summary", { hasText: "Fuel" }).focus();
    await one.evaluate(() => {
      scrollTo(0, 120);
      window.field = document.querySelector("form[action$='/note'] input[name=text]");
    });
    await other.locator("summary", { hasText: "A note" }).click();
    await other.fill("form[action$='/note'] input[name=text]", "From another screen");
    const fetched = one.waitForResponse((answer) => answer.url().endsWith("/write"));
    await form(other, "/note");
    await fetched;
    await one.waitForTimeout(300);
    const kept = await one.evaluate(() => ({
      same: window.field.isConnected, typed: window.field.value, open: window.field.closest("details").open,
      focus: document.activeElement.textContent.trim(), y: scrollY,
    }));
    hold(kept.same && kept.typed === "Half a sen" && kept.open && /Fuel/.test(kept.focus) && kept.y === 120, JSON.stringify(kept));
  });
  await check("a button whose act changed under the finger records nothing", async () => {
    const two = await start(other, "Under a finger");
    await other.goto(await meat(other, two));
    await other.locator(".more select[name=ago]").selectOption("60");
    await press(other, /^Put on/);
    await one.goto(two);
    await one.evaluate(() => {
      const button = document.querySelector(".headline button[name=act]");
      window.button = button;
      window.was = button.textContent;
      new MutationObserver(() => requestAnimationFrame(() => button.click())).observe(button, { attributes: true, subtree: true, characterData: true, childList: true });
    });
    const sent = [];
    one.on("request", (request) => request.method() === "POST" && sent.push(request.url()));
    await other.goto(two);
    await press(other, "Seen to it");
    await one.waitForFunction(() => window.button.textContent !== window.was);
    await one.waitForTimeout(400);
    hold(await one.evaluate(() => window.button.isConnected), "the button is still that button");
    hold(!sent.some((url) => url.endsWith("/act")), "nothing was sent");
  });
  for (const page of [one, other]) await page.context().close();
}

// Clock ticks that the process has had, 100 to the second on Linux (proc(5), from memory).
const ticks = async (pid) => (await readFile(`/proc/${pid}/stat`, "utf8")).split(") ")[1].split(" ").slice(11, 13).reduce((sum, part) => sum + Number(part), 0);

async function idle({ open, pid }, now) {
  const seconds = Number(process.env.IDLE_S ?? 12);
  const page = await open();
  await check(`a page that is open for ${seconds} s while nothing happens costs nothing`, async () => {
    await page.goto(process.env.IDLE_S ? now : "/settings");
    await page.waitForTimeout(2_000);
    const asked = [];
    page.on("request", (request) => asked.push(request.url()));
    const tools = await page.context().newCDPSession(page);
    await tools.send("Performance.enable");
    const busy = async () => (await tools.send("Performance.getMetrics")).metrics.find((one) => one.name === "TaskDuration").value;
    let before, after;
    // Something may come due meanwhile, which is no idling: three tries.
    for (let tries = 0; tries < 3; tries++) {
      asked.length = 0;
      before = [await busy(), await ticks(pid)];
      await page.waitForTimeout(seconds * 1_000);
      after = [await busy(), await ticks(pid)];
      if (process.env.IDLE_S || asked.length === 0) break;
    }
    const [browser, server] = [after[0] - before[0], (after[1] - before[1]) / 100];
    console.log(`  in ${seconds} s the browser's page worked ${(browser * 1_000).toFixed(0)} ms, the home post ${(server * 1_000).toFixed(0)} ms, ${asked.length} requests`);
    if (process.env.IDLE_S) return;
    hold(asked.length === 0, `it asked for ${asked}`);
    hold(browser < 0.1 && server <= 0.02, `browser ${browser} s, home post ${server} s`);
  });
  await page.context().close();
}

async function outOfReach({ open }) {
  const page = await open({ quiet: true });
  await check("where the home post is out of reach the page says so, and a page says what to do", async () => {
    await page.goto("/settings");
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await page.context().setOffline(true);
    await page.evaluate(() => refresh());
    await page.locator("#away:visible").waitFor();
    await page.goto("/settings");
    hold(/cannot be reached/.test(await text(page, "h1")), await text(page, "h1"));
    await page.context().setOffline(false);
    await page.getByRole("link", { name: "Try again" }).click();
    await page.locator("form[action='/cook']").waitFor();
  });
  await page.context().close();
}
