// The run sheet and the hand-out on paper, of the demo and of a class's big cook: a sheet is one page of A4 and of Letter, in both languages.
import { at } from "./cook.mjs";
import { check, hold } from "./kit.mjs";

export const PAPERS = ["A4", "Letter"];
const LOCALES = ["en-US", "es-MX"];
const ASKED = "go=on&hands=2&late=120&cooler=on&oven=on";

// Invented: a class that cooks all day on two pits.
const CLASS = {
  slowbend_card: 1, name: "Class of the rowing club", by: "Ann of the rowing club", serve: { after_min: 1_080 }, people: 40,
  pits: [{ name: "The long pit", kind: "stick_burner" }, { name: "The drum", kind: "drum" }],
  meats: [["Brisket of the first boat", "brisket", 6_400, 0], ["Butt, injected", "pork_butt", 3_700, 0], ["Slab in paper", "spare_ribs", 1_600, 1], ["Slab left bare", "spare_ribs", 1_600, 1], ["Turkey breast", "turkey_breast", 2_700, 1], ["Half birds", "chicken_half", 900, 0]]
    .map(([name, cut, weight_g, pit]) => ({ name, cut, form: "intact", weight_g, pit })),
  dishes: [{ name: "Beans", hot: true }, { name: "Slaw", hot: false }, { name: "Potato salad", hot: false }, { name: "Greens", hot: true }],
};

/** How many pages a PDF has, by its page objects. */
export const pages = (pdf) => pdf.toString("latin1").match(/\/Type\s*\/Page(?![a-zA-Z])/g).length;

export const print = (page, format) => page.pdf({ format, margin: { top: "10mm", bottom: "10mm", left: "10mm", right: "10mm" } });

/** Plans the cook whose page is at `now`, and accepts the first plan. */
export async function plan(page, now) {
  await page.goto(`${now}/plan?${ASKED}`);
  await page.getByRole("button", { name: /^Accept this plan/ }).first().click();
  await page.waitForURL(/\/sheet\?told=/);
}

export async function big(page) {
  await page.goto("/settings");
  for (const { name, kind } of CLASS.pits) {
    const form = page.locator("form[action='/settings/pit']");
    await page.locator("details:has(form[action='/settings/pit'])").evaluateAll((all) => all.forEach((one) => (one.open = true)));
    await form.locator("[name=name]").fill(name);
    await form.locator("[name=kind]").selectOption(kind);
    await form.locator("[name=alone]").fill("600").catch(() => {});
    await form.locator("button").click();
    await page.waitForURL(/told=/);
  }
  await page.goto("/card");
  await page.locator("[name=card]").fill(JSON.stringify(CLASS));
  await page.locator("main button", { hasText: "Read the card" }).click();
  await page.locator("main button", { hasText: "Start the cook" }).click();
  await page.waitForURL(/\/cook\/[^/]+\?told=/);
  return at(page);
}

export async function demo(page) {
  await page.goto("/");
  await page.locator("form[action$='/demo'] button").first().click();
  await page.waitForURL(/\/demo\/cook\//);
  return at(page);
}

export async function printed({ open }) {
  const page = await open();
  const cooks = {};
  await check("the demo and a class's cook of six meats are planned", async () => {
    for (const [name, begin, least] of [["the class", big, 30], ["the demo", demo, 8]]) {
      cooks[name] = await begin(page);
      await plan(page, cooks[name]);
      const jobs = await page.locator(".jobs > li").count();
      hold(jobs >= least, `the sheet of ${name} has ${jobs} jobs`);
    }
  });
  await page.context().close();
  // What contradicts is answered as a fault of the form, which a console tells.
  const hand = await open({ script: false, quiet: true });
  await check("without scripts a course is said, contradicted, and stands on the sheet of the next plan", async () => {
    const now = cooks["the demo"];
    const write = async (latest) => {
      await hand.fill("[name=course-1-name]", "Beans first");
      await hand.fill("[name=course-1-at]", "1:30 PM");
      await hand.fill("[name=course-1-latest]", latest);
      await hand.locator("label", { hasText: "Beans" }).locator("select").selectOption("1");
      await hand.locator("form[action$='/courses'] button").click();
    };
    await hand.goto(`${now}/plan`);
    await hand.locator("summary", { hasText: "Not all at one time" }).click();
    await write("1 PM");
    hold((await hand.locator(".refused, .wrong").first().textContent()).includes("may be no later than"), "it is told what contradicts");
    await write("");
    await hand.waitForURL(/\/plan\?told=/);
    await plan(hand, now);
    hold((await hand.locator(".about").allTextContents()).some((line) => /^Beans first, 1:30\sPM: Beans$/.test(line)), "the sheet says what is served when");
    hold((await hand.locator(".job", { hasText: "Serve: Beans first" }).count()) === 1, "it is a job of its own");
  });
  await hand.context().close();
  for (const locale of LOCALES) {
    const paper = await open({ locale });
    for (const format of PAPERS) {
      await check(`a run sheet is one page of ${format} in ${locale}, and a hand-out one for each student`, async () => {
        for (const [name, now] of Object.entries(cooks)) {
          await paper.goto(`${now}/sheet`);
          const sheet = pages(await print(paper, format));
          hold(sheet === 1, `the sheet of ${name} takes ${sheet} pages`);
          await paper.goto(`${now}/hand-out?students=${encodeURIComponent("Ana, 12:30 PM\nBen, 1 PM\nCleo, 1:30 PM")}`);
          const handed = pages(await print(paper, format));
          hold(handed === 3, `three sheets of ${name} take ${handed} pages`);
        }
      });
    }
    await paper.context().close();
  }
}
