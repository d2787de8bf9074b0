// With scripts on, what one page records shows on another without a reload, and what is due rings.
import { check, hold } from "./kit.mjs";
import { form, press } from "./cook.mjs";

export async function live({ open }, { now, slab }) {
  const one = await open();
  const other = await open();
  await one.goto(now);
  await other.goto(now);
  await check("with scripts a note in one page stands in another without a reload", async () => {
    await other.goto(`${now}/timeline`);
    await other.evaluate(() => (window.same = true));
    await one.goto(`${now}/write`);
    await one.locator("summary", { hasText: "A note" }).click();
    await one.fill("form[action$='/note'] input[name=text]", "Wind from the north.");
    await form(one, "/note");
    await other.locator(".timeline", { hasText: "Wind from the north." }).waitFor();
    hold(await other.evaluate(() => window.same === true), "the page was never loaded again");
  });
  await check("with scripts what is being typed stays while another page records", async () => {
    await other.goto(`${slab}/check`);
    await other.locator("fieldset", { hasText: "Bend" }).locator("label", { hasText: "Surface cracks" }).click();
    await one.goto(`${now}/write`);
    await one.locator("summary", { hasText: "Fuel" }).click();
    await one.fill("form[action$='/feed'] input[name=what]", "One split");
    await form(one, "/feed");
    await other.waitForTimeout(500);
    hold(await other.locator("fieldset", { hasText: "Bend" }).locator("input:checked").count() === 1, "the choice is still there");
  });
  await check("with scripts a file that is chosen goes as it is, and its readings are taken", async () => {
    await one.goto(`${now}/write`);
    await one.locator("summary", { hasText: "Readings from a file" }).click();
    const at = new Date(Date.now() - 300_000).toISOString().slice(0, 19) + "Z";
    await one.setInputFiles("input[type=file]", { name: "box.csv", mimeType: "text/csv", buffer: Buffer.from(`time,grate °F\n${at},251\n`) });
    await form(one, "/file");
    hold((await one.locator(".told").textContent()).includes("Readings taken: 1"), await one.locator(".told").textContent());
  });
  await check("what is due rings on a page that is open, once its sound is on", async () => {
    // A thing that rings at once: the rub of a second meat that went on two hours ago.
    await one.goto(`${now}/write`);
    await one.locator("summary", { hasText: "Another meat" }).click();
    await one.selectOption("form[action$='/meat'] select[name=cut]", "spare_ribs");
    await form(one, "/meat");
    const meats = await one.locator(".lanes a").evaluateAll((links) => links.map((link) => link.getAttribute("href")));
    const fresh = meats.map((link) => link.replace(/\/check$/, "")).find((link) => link !== slab);
    await other.goto("/settings");
    await other.click("#sound");
    await other.locator("#sound.on").waitFor();
    await one.goto(fresh);
    await one.locator(".more select[name=ago]").selectOption("60");
    await press(one, /^Put on/);
    await other.locator("#ringing:not([hidden])").waitFor();
    hold((await other.locator("#ringing strong").textContent()).length > 3, "it says what rings");
    hold((await other.locator(".foot").textContent()).includes("rings only while it is open"), "and that it rings only while open");
  });
  for (const page of [one, other]) await page.context().close();
}
