// How pages stand on glass: nothing runs off the side, the verb is huge, and what is touched is large.
import { check, hold } from "./kit.mjs";
import { everywhere, unfold, withPit } from "./places.mjs";

// CSS pixels. Targets: 44, WCAG 2.2 success criterion 2.5.5 (from memory); on the propped phone 56 for gloves and 72 for
// the verb, our own.
const TARGET = 44;
const GLOVE = 56;
const VERB = 72;

/** What can be touched and is smaller than `least`: links in running text are let be, as the criterion does. */
const small = (page, selector, least) => page.locator(selector).evaluateAll((all, least) => {
  const target = (element) => (element.matches("input[type=radio], input[type=checkbox]") ? element.closest("label") : element);
  return all.map((element) => ({ element, box: target(element).getBoundingClientRect() }))
    .filter(({ element, box }) => box.width > 0 && !element.matches(".skip"))
    .filter(({ box }) => Math.min(box.width, box.height) < least - 0.5)
    .map(({ element, box }) => `${element.tagName} “${element.textContent.trim().slice(0, 30)}” ${box.width.toFixed()}×${box.height.toFixed()}`);
}, least);

export async function shape({ open }, found) {
  const places = await withPit(open, found);
  for (const [name, options] of [["at 320 px", { width: 320, height: 640 }], ["in Spanish at 320 px", { width: 320, height: 640, locale: "es-MX" }], ["at 200 %", { zoom: 2 }]]) {
    const page = await open(options);
    await check(`nothing runs off the side ${name}`, async () => {
      for (const path of everywhere(places)) {
        await page.goto(path);
        await unfold(page);
        const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
        hold(over <= 0, `${path} is ${over} px too wide`);
      }
    });
    await page.context().close();
  }
  const page = await open();
  await check(`what is touched is at least ${TARGET} px each way`, async () => {
    const faults = [];
    for (const path of everywhere(places)) {
      await page.goto(path);
      await unfold(page);
      const found = await small(page, "a, button, select, summary, textarea, input:not([type=hidden])", TARGET);
      if (found.length) faults.push(`${path}: ${found.join("; ")}`);
    }
    hold(faults.length === 0, faults.join("\n  "));
  });
  await check(`on the propped phone the verb is ${VERB} px or more and buttons take a glove`, async () => {
    await page.goto(places.now);
    // What is due shows its verb so large, what is ahead how long that is.
    const largest = await page.locator(".headline > :is(.verb, .when)").evaluateAll((all) => Math.max(...all.map((one) => Number.parseFloat(getComputedStyle(one).fontSize))));
    hold(largest >= VERB, `the largest is ${largest} px`);
    const found = await small(page, "main .button", GLOVE);
    hold(found.length === 0, found.join("; "));
    const state = await page.locator(".lanes .state").first().evaluate((line) => Number.parseFloat(getComputedStyle(line).fontSize));
    hold(state >= 22.4, `a meat's state is ${state} px`);
  });
  await page.context().close();
}
