// A list of cuts narrows to what can be meant, while its name is typed beside it. The home post says which those are.
document.addEventListener("input", async (event) => {
  const typed = event.target;
  const row = typed.closest?.("[data-narrow]");
  if (!row || !typed.name.startsWith("find")) return;
  const sought = typed.value;
  let cuts;
  try {
    cuts = await (await fetch(`${base}/found?find=${encodeURIComponent(sought)}`)).json();
  } catch {
    return;
  }
  if (typed.value !== sought) return;
  const list = row.querySelector("select");
  for (const option of list.options) option.hidden = option.value !== "" && !cuts.includes(option.value);
  list.value = sought.trim() && cuts.length === 1 ? cuts[0] : "";
});

