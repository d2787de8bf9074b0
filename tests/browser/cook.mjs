// A small cook, from its start to a check and back, as hands do it: by what is written on the page.
import { hold } from "./kit.mjs";

/** Where the page is, without what was just told. */
export const at = (page) => new URL(page.url()).pathname;

/** What was just told. */
export const told = async (page) => (await page.locator(".told").textContent()).trim();

/** Fills the form of the first page; the cook's address. */
export async function start(page, name) {
  await page.goto("/");
  await page.fill("input[name=name]", name);
  await page.fill("input[name=people]", "6");
  await page.selectOption("select[name=cut-0]", "spare_ribs");
  await page.fill("input[name=weight-0]", "3.5");
  const known = page.locator("details:has(> .row input[name=pit-name]) > summary");
  if (await known.count()) await known.click();
  await page.fill("input[name=pit-name]", `${name} drum`);
  await page.selectOption("select[name=pit-kind]", "drum");
  await page.selectOption("select[name=pit-0]", "new");
  await page.click("form[action='/cook'] button");
  await page.waitForURL(/\/cook\//);
  return at(page);
}

/** The address of the first meat. */
export async function meat(page, now) {
  await page.goto(now);
  const link = await page.locator(".lanes a").first().getAttribute("href");
  return link.replace(/\/check$/, "");
}

/** Presses the button that says so, and waits until that was told. */
export async function press(page, label) {
  return send(page, page.getByRole("button", { name: label }).first(), label);
}

/** Sends the form on the page whose address ends so. */
export const form = (page, end) => send(page, page.locator(`form[action$='${end}'] button`), end);

async function send(page, button, label) {
  const before = page.url();
  await button.click();
  await page.waitForURL((url) => url.href !== before && url.search.includes("told="));
  const said = await told(page);
  hold(said.length > 3, `after ${label} nothing was told`);
  return said;
}
