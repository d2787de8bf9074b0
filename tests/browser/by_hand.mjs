// With scripts off, every act of a small cook works by its form alone.
import { check, hold } from "./kit.mjs";
import { at, form, meat, press, start, told } from "./cook.mjs";

export async function byHand({ open }) {
  const page = await open({ script: false });
  let now, slab;
  await check("without scripts a cook is started with its pit and its meat", async () => {
    now = await start(page, "By hand");
    slab = await meat(page, now);
    hold((await page.locator("h1").textContent()) === "By hand", "the page of the cook has its name");
  });
  await check("without scripts a pit is added", async () => {
    await page.goto("/settings");
    const form = page.locator("form[action='/settings/pit']");
    await form.locator("[name=name]").fill("The spare kettle");
    await form.locator("[name=kind]").selectOption("kettle");
    await form.locator("button").click();
    await page.waitForURL(/told=/);
    hold((await page.locator("h3", { hasText: "The spare kettle" }).count()) === 1, "the pit is listed");
  });
  await check("without scripts a meat is put on, an hour ago", async () => {
    await page.goto(slab);
    await page.locator(".more select[name=ago]").selectOption("60");
    await press(page, "Put on By hand drum");
    hold((await page.locator(".state-line").textContent()).includes("By hand drum"), "it is on that pit");
  });
  await check("without scripts the rub is answered, and then a mop is recorded", async () => {
    await page.goto(now);
    // The fire is asked about first: no probe watches it.
    await press(page, "Seen to it");
    await press(page, "Yes, it has set");
    await page.goto(`${now}/write`);
    await page.locator("summary", { hasText: "An opening" }).click();
    await page.locator("select[name^=did-]").first().selectOption("wet");
    const said = await form(page, "/opening");
    hold(/mop|wet|spritz/i.test(said), `the mop is told, not: ${said}`);
  });
  await check("without scripts that is taken back", async () => {
    await page.goto(now);
    hold(/restore|taken back|undone/i.test(await press(page, /^Undo/)), `told: ${await told(page)}`);
  });
  await check("without scripts a whole opening is confirmed once, and taken back as one", async () => {
    await page.goto(now);
    await page.locator("a[href$='/opening']").first().click();
    await page.locator(".target", { hasText: "Turn" }).first().click();
    await page.locator("summary", { hasText: "A note on it" }).first().click();
    await page.locator("input[name$='-note']").first().fill("Bone to the back.");
    const said = await press(page, "All of this is done");
    hold(/Turned/.test(said) && /Written down/.test(said), `both are told, not: ${said}`);
    hold(/restore|taken back|undone/i.test(await press(page, /^Undo/)), `told: ${await told(page)}`);
  });
  await check("without scripts a check is recorded and answered with what it means", async () => {
    await page.goto(`${slab}/check`);
    await page.locator("fieldset", { hasText: "Bend" }).locator("label", { hasText: "Bows" }).click();
    await press(page, "Record the check");
    hold(at(page) === slab && (await page.locator(".verdict").count()) === 1, "the meat says how it stands");
  });
  await check("without scripts what happened is told line by line", async () => {
    await page.goto(`${now}/timeline`);
    hold((await page.locator(".timeline > li").count()) >= 4, "each act has its line");
  });
  await check("without scripts the page says that it does not ring, and loads itself anew", async () => {
    await page.goto(now);
    hold((await page.locator("noscript p").textContent()).includes("does not ring"), "it says so");
    hold((await page.locator("meta[http-equiv=refresh]").count()) === 1, "it loads itself");
  });
  await page.context().close();
  return { now, slab };
}
