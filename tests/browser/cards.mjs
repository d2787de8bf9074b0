// Starting a cook in under a minute, three ways, with scripts off on a phone: each tap and each field is counted.
import { check, hold } from "./kit.mjs";
import { at } from "./cook.mjs";

/** A hand that counts. */
function hand(page) {
  const count = { taps: 0, fields: 0 };
  return {
    count,
    tap: async (what) => { count.taps += 1; await what.click(); },
    type: async (name, text) => { count.fields += 1; await page.locator(`[name="${name}"]`).fill(text); },
    choose: async (name, value) => { count.fields += 1; await page.locator(`[name="${name}"]`).selectOption(value); },
  };
}

const button = (page, label) => page.locator("main button", { hasText: label });

async function begun(page, name) {
  await page.waitForURL(/\/cook\/[^/]+\?told=/);
  const title = await page.locator("h1").textContent();
  hold(title === name, `the cook is called ${title}`);
}

export async function cards({ open }, { now }) {
  const page = await open({ script: false });
  await check("a cook is started from scratch by one tap and two fields", async () => {
    await page.goto("/");
    const { count, choose, type, tap } = hand(page);
    await choose("cut-0", "pork_butt");
    await type("serve", "2 p.m. tomorrow");
    await tap(button(page, "Start the cook"));
    await begun(page, "Pork butt");
    hold(count.taps === 1 && count.fields === 2, JSON.stringify(count));
  });
  await check("a cook is started as last time by two taps and nothing typed", async () => {
    await page.goto("/");
    const { count, tap } = hand(page);
    await tap(page.locator(".ways a", { hasText: "As last time" }));
    await tap(button(page, "Start the cook"));
    await page.waitForURL(/\/cook\/[^/]+\?told=/);
    hold(count.taps === 2 && count.fields === 0, JSON.stringify(count));
  });
  await check("a cook is started from a card by three taps and one field, its weights filled in", async () => {
    await page.goto(`${now}/card`);
    const text = await page.locator("textarea").last().evaluate((area) => area.value);
    await page.goto("/");
    const { count, type, tap } = hand(page);
    await tap(page.locator(".ways a", { hasText: "From a card" }));
    await type("card", text);
    await tap(button(page, "Read the card"));
    hold((await page.locator("[name=weight-0]").inputValue()) !== "", "the weight of the card stands there");
    await tap(button(page, "Start the cook"));
    await begun(page, "By hand");
    hold(count.taps === 3 && count.fields === 1, JSON.stringify(count));
  });
  await check("a card is chosen as a file with scripts off", async () => {
    await page.goto("/card");
    const card = { slowbend_card: 1, name: "From a file", meats: [{ cut: "spare_ribs" }] };
    const buffer = Buffer.from(JSON.stringify(card));
    await page.locator("[name=file]").setInputFiles({ name: "lunch.json", mimeType: "application/json", buffer });
    await button(page, "Read the card").click();
    await button(page, "Start the cook").click();
    await begun(page, "From a file");
  });
  await check("a card is begun from what happened in a cook", async () => {
    await page.goto(`${now}/timeline`);
    await page.locator("main a", { hasText: "Cook card" }).click();
    hold(at(page) === `${now}/card` && (await page.locator(".slate").count()) === 1, "its card is shown");
  });
  await page.context().close();
}
