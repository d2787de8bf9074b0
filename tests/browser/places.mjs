// Every page that there is, by its address: a list for all checks that go over all of them. Start at `everywhere`.

/** `places` with the pit on which the meat is, as the page of the cook leads to its opening. */
export async function withPit(open, places) {
  const page = await open();
  await page.goto(places.now);
  const opening = await page.locator("a[href$='/opening']").first().getAttribute("href");
  await page.context().close();
  return { ...places, pit: opening.replace(/\/opening$/, "") };
}

/** The addresses of all pages of a cook, of one of its meats, of its pit, and of the home. */
export const everywhere = ({ now, slab, pit }) => [
  "/", now, ...["write", "timeline", "log", "pits", "dishes", "kitchen", "kitchen/sheet", "sheet", "plan", "hand-out", "watch", "readings", "card", "again"].map((one) => `${now}/${one}`),
  slab, `${slab}/check`, `${slab}/readings`, `${pit}/opening`, `${pit}/fire`, `${pit}/trouble`, `${pit}/fire-out`, `${pit}/readings`,
  "/card", "/cuts", "/cuts/spare_ribs", "/cuts?find=zzzz", "/thermometers", "/settings", "/wall", "/phones",
];

/** Opens every fold, so that what is in it is seen too. */
export async function unfold(page) {
  await page.locator("summary").evaluateAll((all) => all.forEach((summary) => (summary.parentElement.open = true)));
}
