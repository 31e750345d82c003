/** Runs in the take-away alone: keeps what is ticked and read in that browser, holds readings against their limits, hands everything back as a file. */
export const TAKE_AWAY_SCRIPT = `
const facts = JSON.parse(document.getElementById("facts").textContent);
const place = "copperwright-ticks " + facts.job + " " + facts.fingerprint;
const keyOf = (field) => [field.dataset.test || field.dataset.kind, field.dataset.subject, field.dataset.done || ""].join("|");
const fields = [...document.querySelectorAll("input[data-subject]")];
let kept = {};
try { kept = JSON.parse(localStorage.getItem(place) || "{}"); } catch { kept = {}; }
const by = document.getElementById("by");
by.value = kept.by || "";
const OTHER_NAMES = { ohm: ["ohms", "\\u03a9"], Mohm: ["Mohms", "M\\u03a9"], V: ["v"], A: ["a"], W: ["w"] };
function reading(field) {
  const unit = field.dataset.unit;
  const [, figure, letters] = /^\\s*([\\d.,+\\-\\u2212]*)\\s*(.*?)\\s*$/.exec(field.value);
  const plain = figure.replace("\\u2212", "-");
  const isOwn = letters === "" || letters === unit || (OTHER_NAMES[unit] || []).includes(letters);
  const isNumber = /^[+-]?(\\d{1,9}([.,]\\d{0,9})?|[.,]\\d{1,9})$/.test(plain) && !/^[+-]?[1-9]\\d{0,2},\\d{3}$/.test(plain);
  return isOwn && isNumber ? Number(plain.replace(",", ".")) : null;
}
const isTick = (field) => field.type === "checkbox";
function judge(field) {
  if (isTick(field)) return;
  const says = field.nextElementSibling;
  const read = reading(field);
  const isBad = field.value.trim() !== "" && read === null;
  field.setAttribute("aria-invalid", String(isBad));
  const low = field.dataset.least !== undefined && read < Number(field.dataset.least);
  const high = field.dataset.most !== undefined && read > Number(field.dataset.most);
  const hasLimit = field.dataset.least !== undefined || field.dataset.most !== undefined;
  const outside = read !== null && !isBad && (low || high);
  says.textContent = isBad ? "type a number in " + field.dataset.unit : read === null ? "" : outside ? "outside" : hasLimit ? "good" : "noted";
  says.className = outside || isBad ? "outside" : "";
}
function keep() {
  const state = { by: by.value };
  for (const field of fields) {
    if (isTick(field) ? field.checked : field.value.trim() !== "") state[keyOf(field)] = isTick(field) ? true : field.value;
  }
  kept = state;
  try { localStorage.setItem(place, JSON.stringify(state)); } catch { document.getElementById("count").textContent = "this browser keeps nothing: save the file before closing"; return; }
  document.getElementById("count").textContent = (Object.keys(state).length - 1) + " kept here";
}
for (const field of fields) {
  const old = kept[keyOf(field)];
  if (old !== undefined) { if (isTick(field)) field.checked = true; else field.value = old; }
  judge(field);
  field.addEventListener(isTick(field) ? "change" : "input", () => { judge(field); keep(); });
}
by.addEventListener("input", keep);
keep();
document.getElementById("save").addEventListener("click", () => {
  const day = new Date();
  const pad = (count) => String(count).padStart(2, "0");
  const date = day.getFullYear() + "-" + pad(day.getMonth() + 1) + "-" + pad(day.getDate());
  const ticks = fields.filter((field) => isTick(field) && field.checked).map((field) => ({ subject: field.dataset.subject, done: field.dataset.done }));
  const readings = fields.filter((field) => !isTick(field) && reading(field) !== null)
    .map((field) => ({ test: field.dataset.test, subject: field.dataset.subject, unit: field.dataset.unit, read: reading(field) }));
  const file = { copperwrightTicks: 1, ...facts, by: by.value || "somebody", date, ticks, readings };
  const link = document.createElement("a");
  link.href = "data:application/json;charset=utf-8," + encodeURIComponent(JSON.stringify(file, null, 1));
  link.download = facts.job + "-ticks.json";
  link.click();
});
`;
