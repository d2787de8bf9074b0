// Makes the pictures of the icon of hub/src/assets/icon.svg: node tests/browser/icons.mjs [BROWSER]. Run it when the drawing has changed.
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
const { chromium } = createRequire(new URL("../.tools/browser/", import.meta.url))("playwright-core");

const assets = new URL("../../hub/src/assets/", import.meta.url);
const drawing = await readFile(new URL("icon.svg", assets), "utf8");
// A launcher cuts a whole icon to its own shape: the drawing stays in the middle four fifths (W3C, Web Application Manifest,
// "maskable", from memory), on a ground that reaches every edge.
const whole = drawing.replace(/rx="\d+"/, "").replace('viewBox="0 0 64 64"', 'viewBox="-8 -8 80 80"').replace('<rect width="64" height="64"', '<rect x="-8" y="-8" width="80" height="80"');
const chrome = await chromium.launch({ executablePath: process.argv[2] ?? "/usr/bin/chromium", args: ["--no-sandbox"] });
for (const [name, size, svg] of [["icon-192", 192, drawing], ["icon-512", 512, drawing], ["icon-whole-512", 512, whole]]) {
  const page = await chrome.newPage({ viewport: { width: size, height: size } });
  await page.setContent(`<style>body { margin: 0 } svg { display: block; width: ${size}px; height: ${size}px }</style>${svg}`);
  await page.screenshot({ path: new URL(`${name}.png`, assets).pathname, omitBackground: true });
  await page.close();
}
await chrome.close();
