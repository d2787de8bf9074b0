// Makes the page into its newer self in place: what is the same stays the same element, so that focus, typed text, scroll and
// opened folds stay without being put back. Start at morph().

// What a person did to a field and has not sent yet.
function isChanged(field) {
  if (field.matches("select")) {
    const usual = [...field.options].findIndex((option) => option.defaultSelected);
    return field.selectedIndex !== Math.max(0, usual);
  }
  if (field.matches("[type=radio], [type=checkbox]")) return field.checked !== field.defaultChecked;
  return field.value !== field.defaultValue;
}

// By what an element is the same one in both pages: its id, its form's name, or where the line leads.
function keyOf(node) {
  if (node.nodeType !== Node.ELEMENT_NODE) return `#${node.nodeType}`;
  const form = node.matches("form") && node.querySelector(":scope > [name=form]");
  const link = node.matches("li") && node.querySelector(":scope > a[href]");
  const name = node.id || (form && form.value) || (link && link.getAttribute("href")) || node.getAttribute("name") || "";
  return `${node.tagName} ${name}`;
}

// `own`: whether the reader asked for what is new; else a button that changes under a finger does not count for a moment.
function morph(old, fresh, own) {
  if (old.nodeType !== Node.ELEMENT_NODE) {
    if (old.data !== fresh.data) old.data = fresh.data;
    return;
  }
  const means = () => `${old.textContent} ${old.value}`;
  const before = old.matches("button[name=act]") && means();
  attributes(old, fresh);
  children(old, fresh, own);
  if (before !== false && before !== means() && !own) changedUnderFinger.set(old, Date.now());
}
const changedUnderFinger = new WeakMap();

function attributes(old, fresh) {
  const field = old.matches("input:not([type=hidden]), textarea, select, option");
  const touched = field && !old.matches("option") && (isChanged(old) || old === document.activeElement);
  for (const { name } of [...old.attributes]) {
    // A fold stays open once it was opened.
    if (!fresh.hasAttribute(name) && !(name === "open" && old.matches("details"))) old.removeAttribute(name);
  }
  for (const { name, value } of fresh.attributes) if (old.getAttribute(name) !== value) old.setAttribute(name, value);
  if (touched) return;
  if (old.matches("input") && old.value !== fresh.value) old.value = fresh.value;
  if (old.matches("[type=radio], [type=checkbox]")) old.checked = fresh.checked;
}

function children(old, fresh, own) {
  const touched = old.matches("select, textarea") && (isChanged(old) || old === document.activeElement);
  const chosen = touched && old.value;
  const left = [...old.childNodes];
  let at = old.firstChild;
  for (const next of [...fresh.childNodes]) {
    const key = keyOf(next);
    const found = left.findIndex((node) => keyOf(node) === key);
    const same = found < 0 ? document.importNode(next, true) : left.splice(found, 1)[0];
    if (same === at) at = at.nextSibling;
    else old.insertBefore(same, at);
    if (found >= 0) morph(same, next, own);
  }
  for (const node of left) node.remove();
  if (touched && old.value !== chosen) old.value = chosen;
}
