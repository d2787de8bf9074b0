// The demo in a real browser: its own clock says that lunch is at two, on each of its pages and in both languages.
import { check, hold } from "./kit.mjs";

export async function demo({ open }) {
  const page = await open();
  await check("the demo says that it is invented, and its lunch is at two", async () => {
    await page.goto("/");
    await page.click("form[action='/demo'] button");
    await page.waitForURL(/\/cook\//);
    hold((await page.locator(".invented").count()) === 1, "it is called a demo");
    hold(/2:00\sPM/.test(await page.locator(".serve").textContent()), await page.locator(".serve").textContent());
    hold((await page.locator(".lanes > li").count()) === 4, "four meats");
  });
  await page.context().close();
}
