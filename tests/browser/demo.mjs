// The demo in a real browser: its own clock says that lunch is at two, on each of its pages and in both languages.
import { check, hold } from "./kit.mjs";

export async function demo({ open }) {
  const page = await open();
  await check("the demo says that it is invented, and its lunch is at two", async () => {
    await page.goto("/");
    await page.click("form[action='/demo'] button");
    await page.waitForURL(/\/demo\/cook\//);
    hold((await page.locator(".invented").count()) === 1, "it is called a demo");
    hold(/2:00\sPM/.test(await page.locator(".serve").textContent()), await page.locator(".serve").textContent());
    hold((await page.locator(".lanes > li").count()) === 4, "four meats");
  });
  await check("real pages have nothing of the demo but a link to it", async () => {
    await page.goto("/settings");
    hold((await page.locator(".invented").count()) === 0, "settings are one's own");
    hold((await page.locator("h3", { hasText: /^Kettle$/ }).count()) === 0, "its pits are not among one's own");
    await page.goto("/");
    await page.getByRole("link", { name: "A demo is under way" }).click();
    await page.waitForURL(/\/demo\/cook\//);
    await page.getByRole("link", { name: "Back to your own cooks" }).click();
    await page.waitForURL(/\/\?own/);
    hold((await page.locator(".invented").count()) === 0, "back at one's own");
  });
  await page.context().close();
}
