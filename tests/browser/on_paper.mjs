// What is put on paper: columns of the log stand one under the other also on a narrow page, and the kitchen's sheet is one.
import { check, hold } from "./kit.mjs";
import { PAPERS, pages, print } from "./print.mjs";

export async function onPaper({ open }) {
  // As wide as an A4 page between its margins: narrower than where the screen makes a list of the table.
  const page = await open({ width: 680 });
  await page.goto("/");
  await page.getByRole("link", { name: "A demo is under way" }).click();
  await page.waitForURL(/\/demo\/cook\//);
  const now = new URL(page.url()).pathname;
  await check("on paper each cell of the log stands under the name of its column", async () => {
    await page.goto(`${now}/log`);
    await page.emulateMedia({ media: "print" });
    const off = await page.locator(".log").evaluate((log) => {
      const left = (cell) => Math.round(cell.getBoundingClientRect().left);
      const heads = [...log.querySelectorAll("th")].map(left);
      const rows = [...log.querySelectorAll("tbody tr")].map((row) => [...row.cells].map(left));
      const off = rows.filter((row) => String(row) !== String(heads));
      return { rows: rows.length, off: off.length, like: `${off[0]} under ${heads}` };
    });
    hold(off.rows > 10, `${off.rows} rows`);
    hold(off.off === 0, `${off.off} of ${off.rows} rows stand under other columns, as ${off.like}`);
    hold(!(await page.locator(".glass").isVisible()), "how to print it is not printed");
    await page.emulateMedia({ media: null });
  });
  for (const format of PAPERS) {
    await check(`the kitchen's sheet is one page of ${format}`, async () => {
      await page.goto(`${now}/kitchen/sheet`);
      const needed = pages(await print(page, format));
      hold(needed === 1, `${needed} pages`);
    });
  }
  await page.context().close();
}
