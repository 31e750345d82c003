import { isLight, wireColourValue } from "@copperwright/engine/words";
import type { CircuitPage, FusePage, TakeAwayData } from "./takeAwayData.ts";
import { TAKE_AWAY_SCRIPT } from "./takeAwayScript.ts";
import { TAKE_AWAY_STYLE } from "./takeAwayStyle.ts";

type Card = TakeAwayData["cards"][number];
type Row = TakeAwayData["sections"][number]["rows"][number];

/** One file that needs no server and no network. Its ticks and readings stay in the browser that has it open and go back as a file. */
export function takeAwayHtml(data: TakeAwayData): string {
  const { job, revision, fingerprint, machine, supply, verdict } = data;
  const facts = JSON.stringify({ job, revision, fingerprint }).replaceAll("<", "\\u003c");
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; script-src 'unsafe-inline'">
<title>${text(data.name)}</title><style>${TAKE_AWAY_STYLE}</style></head><body>
<header><h1>${text(machine)}</h1><p>${text(data.name)}</p><p>${text(job)}, revision ${revision} · ${text(supply)} · <b>${text(verdict)}</b></p>
<p class="note">Ticks and readings stay in this browser until they are saved as a file; the bench takes that file back under Papers.</p>
<p><label>done by <input id="by" maxlength="40" autocomplete="name"></label></p></header>
<nav><a href="#build">Build</a> <a href="#test">Test</a> <a href="#faults">Find a fault</a> <button id="save">save the ticks</button> <span id="count" class="note" role="status"></span></nav>
<main><section id="build"><h2>Build</h2>${data.cards.map(cardHtml).join("")}</section>
<section id="test"><h2>Test</h2><p class="caution">Never power a new loom from a charged battery without a current limit. The earthed battery lead comes off first and goes back last.</p>
${data.sections.map((section) => `<h3>${text(section.heading)}</h3><p class="note">${text(section.lead)}</p>${section.rows.map(rowHtml).join("")}`).join("")}</section>
<section id="faults"><h2>Find a fault</h2><p class="note">Begin at the fuse whose loads are all dead together; then wire by wire along its circuit.</p>
${data.fuses.map(fuseHtml).join("")}${data.circuits.map(circuitHtml).join("")}</section></main>
<script type="application/json" id="facts">${facts}</script><script>${TAKE_AWAY_SCRIPT}</script></body></html>
`;
}

function cardHtml(card: Card): string {
  const cut = card.cutMm === null ? "measure" : `${card.cutMm} mm`;
  const ends = card.ends.map((end) => {
    const [mark, letter] = end.end === "from" ? ["from-end", "A"] : ["to-end", "B"];
    const lines = [
      end.sleeveFirst === null ? "" : `<b class="first">${text(end.sleeveFirst)} on first</b>`,
      text(end.terminal),
      `strip ${end.stripMm} mm, ${text(end.tool)}${end.pullN === null ? "" : `, a sample holds ${Math.round(end.pullN)} N`}`,
      end.cavity === null
        ? ""
        : `<b>${text(end.cavity.connector)}, ${end.cavity.half} half, cavity ${text(end.cavity.cavity)}</b>`,
      end.sharedWith.length === 0 ? "" : `in one barrel with ${text(end.sharedWith.join(", "))}`,
      end.problem === "" ? "" : `<b>${text(end.problem)}</b>`,
    ].filter(Boolean);
    return `<label class="end">${tickHtml("build", card.wire, mark!)}<span><b>${letter} ${text(end.pin)}</b> <span class="note">${text(end.where)}</span><br>${lines.join("<br>")}</span></label>`;
  });
  return `<article><h3>${text(card.number)} <span class="cut">${cut}</span></h3>${bandHtml(card)}<p><b>${text(card.colourWords)}</b> ${text(card.colourCode)} · ${text(card.size)} · ${text(card.stranding)}${card.isEstimated ? " · <b>estimated: measure before cutting</b>" : ""}</p>
<label class="end">${tickHtml("build", card.wire, "cut")}<span>cut</span></label>${ends.join("")}</article>`;
}

function bandHtml({ colour }: Card): string {
  const main = (colour && wireColourValue(colour.main)) ?? "#FFFFFF";
  const tracer = colour?.tracer === undefined ? null : wireColourValue(colour.tracer);
  const thread =
    tracer === null
      ? ""
      : `<line x1="0" x2="600" y1="10" y2="10" stroke="${isLight(main) ? "#15201D" : "#FFFFFF"}" stroke-width="11" stroke-dasharray="26 16"/><line x1="0" x2="600" y1="10" y2="10" stroke="${tracer}" stroke-width="7" stroke-dasharray="26 16"/>`;
  return `<svg class="band" viewBox="0 0 600 20" preserveAspectRatio="none" aria-hidden="true"><rect width="600" height="20" fill="var(--ink)"/><rect y="2" width="600" height="16" fill="${main}"/>${thread}</svg>`;
}

function rowHtml(row: Row): string {
  const limits = `${row.least === undefined ? "" : ` data-least="${row.least}"`}${row.most === undefined ? "" : ` data-most="${row.most}"`}`;
  const field = row.isRead
    ? `<input inputmode="decimal" aria-label="read, ${text(row.what)}" placeholder="${text(row.unit)}" data-test="${text(row.test)}" data-subject="${text(row.subject)}" data-unit="${text(row.unit)}"${limits} value="${row.readValue ?? ""}"><output></output>`
    : tickHtml("build", row.subject, "tested", row.what);
  return `<div class="row"><span><b>${text(row.what)}</b><br><span class="note">${text(row.group === "" ? row.note : `${row.group}. ${row.note}`)}</span></span><span class="right"><b>${text(row.expected)}</b><br><span class="note">${text(row.limit)}</span></span><span>${field}</span></div>`;
}

const fuseHtml = ({ fuse, ratingA, dies, wires }: FusePage): string =>
  `<article><h3>Fuse ${text(fuse)}, ${ratingA} A</h3><p>Dead with it: ${text(dies.join(", ") || "nothing that this job knows of")}</p><p class="note">Wires behind it: ${text(wires.join(", "))}</p></article>`;

const circuitHtml = ({ name, wires }: CircuitPage): string =>
  `<article><h3>${text(name)}</h3><ul>${wires.map((wire) => `<li><b>${text(wire.number)}</b> ${text(wire.colour)}: ${text(wire.from)} to ${text(wire.to)}</li>`).join("")}</ul></article>`;

const tickHtml = (kind: string, subject: string, done: string, label?: string): string =>
  `<input type="checkbox"${label === undefined ? "" : ` aria-label="done: ${text(label)}"`} data-kind="${kind}" data-subject="${text(subject)}" data-done="${done}">`;

const ENTITIES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

const text = (words: string): string => words.replace(/[&<>"']/g, (sign) => ENTITIES[sign] ?? sign);
