// Whether everybody can use the pages: WCAG 2.2 level AA as far as axe-core can tell, letters twice as large, no motion where
// none is wanted, and a whole cook by the keyboard alone, with its focus always in sight.
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { check, hold } from "./kit.mjs";
import { everywhere, unfold, withPit } from "./places.mjs";

// axe-core is the work of others (MPL-2.0): it is fetched for the checks and is no part of Slowbend.
const axe = await readFile(createRequire(new URL("../.tools/browser/", import.meta.url)).resolve("axe-core/axe.min.js"), "utf8");
const LEVELS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
const SIZES = { phone: [390, 844], tablet: [820, 1180], desktop: [1440, 900] };
const LANGUAGES = { English: "en-US", Spanish: "es-MX" };

const all = (places) => [...everywhere(places), "/away", "/nowhere"];

/** What axe-core finds against on the page, one line each. */
async function against(page) {
  await page.evaluate(axe);
  const found = await page.evaluate((values) => window.axe.run(document, { runOnly: { type: "tag", values }, resultTypes: ["violations"] }), LEVELS);
  return found.violations.flatMap((one) => one.nodes.map((node) => `${one.id} at ${node.target.join(" ")} (${node.any.concat(node.all)[0]?.message ?? one.help})`));
}

export async function access({ open }, found) {
  const places = await withPit(open, found);
  for (const [language, locale] of Object.entries(LANGUAGES)) {
    const page = await open({ locale, quiet: true });
    await check(`axe-core finds nothing against WCAG 2.2 AA on any page in ${language}, at three sizes, bright and dark`, async () => {
      const faults = [];
      for (const path of all(places)) {
        await page.goto(path);
        await unfold(page);
        for (const [size, [width, height]] of Object.entries(SIZES)) {
          await page.setViewportSize({ width, height });
          for (const colorScheme of ["light", "dark"]) {
            await page.emulateMedia({ colorScheme });
            for (const one of await against(page)) faults.push(`${path} ${size} ${colorScheme}: ${one}`);
          }
        }
      }
      hold(faults.length === 0, `${faults.length} faults:\n  ${faults.slice(0, 12).join("\n  ")}`);
    });
    await check(`letters twice as large lose nothing in ${language}`, async () => {
      for (const [width, height] of Object.values(SIZES)) {
        await page.setViewportSize({ width, height });
        for (const path of all(places)) {
          await page.goto(path);
          await unfold(page);
          const lost = await page.evaluate(() => {
            document.documentElement.style.fontSize = "200%";
            const over = document.documentElement.scrollWidth - innerWidth;
            const wide = [...document.querySelectorAll("body *")].filter((one) => one.getBoundingClientRect().right > innerWidth + 0.5).map((one) => `${one.tagName}.${one.className}`);
            const cut = [...document.querySelectorAll("main *, .bar *")].filter((one) => {
              const style = getComputedStyle(one);
              return style.overflow !== "visible" && !one.matches(".unseen, svg, select, input, textarea, label.ago span") && (one.scrollWidth > one.clientWidth + 1 || one.scrollHeight > one.clientHeight + 1);
            });
            return { over, wide: wide.slice(0, 4), cut: cut.map((one) => `${one.tagName}.${one.className} ${one.textContent.slice(0, 30)}`) };
          });
          hold(lost.over <= 0, `${path} at ${width} is ${lost.over} px too wide: ${lost.wide}`);
          hold(lost.cut.length === 0, `${path} at ${width} cuts ${lost.cut.join("; ")}`);
        }
      }
    });
    await page.context().close();
  }
  await still({ open }, places);
  await byKeyboard({ open });
}

async function still({ open }, places) {
  const page = await open({ motion: "reduce", quiet: true });
  await check("nothing moves where no motion is wanted", async () => {
    for (const path of all(places)) {
      await page.goto(path);
      const moving = await page.evaluate(() => document.getAnimations().length + [...document.querySelectorAll("*")].filter((one) => parseFloat(getComputedStyle(one).transitionDuration) > 0).length);
      hold(moving === 0, `${path}: ${moving} things may move`);
    }
  });
  await page.context().close();
}

/** Presses Tab until `target` has the focus; each stop on the way has its focus in sight. */
async function tabTo(page, target) {
  for (let i = 0; i < 250; i++) {
    await page.keyboard.press("Tab");
    const at = await page.evaluate(() => {
      const one = document.activeElement;
      if (!one || one === document.body) return null;
      const style = getComputedStyle(one);
      const box = one.getBoundingClientRect();
      return { name: `${one.tagName} ${one.name ?? ""} ${one.textContent.trim().slice(0, 25)} ${style.outline} ${box.top}–${box.bottom}`, ring: style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2, inSight: box.bottom > 0 && box.top < innerHeight };
    });
    if (!at) continue;
    hold(at.ring && at.inSight, `the focus on ${at.name} does not show`);
    if (await target.evaluate((one) => one === document.activeElement)) return;
  }
  throw new Error("the keyboard does not come there");
}

async function byKeyboard({ open }) {
  const page = await open({ motion: "reduce" });
  const keys = page.keyboard;
  const press = async (target, key = "Enter") => {
    await tabTo(page, target);
    await keys.press(key);
  };
  const told = async () => {
    await page.waitForFunction(() => document.querySelector(".told")?.textContent.trim().length > 3);
    return (await page.locator(".told").textContent()).trim();
  };
  await check("a whole cook goes by the keyboard alone", async () => {
    await page.goto("/");
    await keys.press("Tab");
    hold(await page.evaluate(() => document.activeElement.matches(".skip")), "the first stop skips to what is due");
    await tabTo(page, page.locator("form[action='/cook'] input[name=name]"));
    await keys.type("By keyboard");
    await tabTo(page, page.locator("select[name=cut-0]"));
    await keys.type("Spare");
    await tabTo(page, page.locator("input[name=weight-0]"));
    await keys.type("3.5");
    await press(page.locator("form[action='/cook'] button"));
    await page.waitForURL(/\/cook\//);
    await page.locator(".lanes a").first().waitFor();
    await press(page.locator(".lanes a").first());
    await page.waitForURL(/\/meat\//);
    await press(page.locator(".more button", { hasText: /^Put on/ }).first());
    hold(/pit|on/i.test(await told()), "putting on is told");
    await press(page.locator("main a[href$='/check']").first());
    await page.waitForURL(/\/check$/);
    await tabTo(page, page.locator("input[type=radio]").first());
    await keys.press("Space");
    await press(page.locator("main form button").first());
    await page.waitForURL(/told=/);
    hold((await page.locator(".verdict").count()) === 1, "the check is answered");
    await press(page.locator(".bar nav a").first());
    await page.waitForURL((url) => /^\/cook\/[^/]+$/.test(url.pathname));
    await press(page.locator("summary", { hasText: "Finish the cook" }));
    await press(page.locator("details.grave[open] button"));
    hold(/over|finish|done/i.test(await told()), `finishing is told, not: ${await told()}`);
  });
  await page.context().close();
}
