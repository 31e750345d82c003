import type { TemplateAnswers } from "../catalogue/partTemplate.ts";
import type { Valued } from "../job.ts";
import type { CircuitPattern, PatternAsk } from "./circuitPattern.ts";

const feed: PatternAsk = {
  id: "feed",
  word: "where the live comes from",
  kind: "pin",
  howTo: "a fused live, behind the key where it should go off with the key",
};
const earth: PatternAsk = { id: "earth", word: "where it returns", kind: "pin" };
const fuseA: PatternAsk = {
  id: "fuseA",
  word: "fuse",
  kind: "number",
  unit: "A",
  howTo: "what the wires and the load bear; the check says whether it fits",
};

/** A figure as a template's answer; absent where nobody gave it. */
export const given = (id: string, figure: Valued | undefined): TemplateAnswers =>
  figure === undefined ? {} : { [id]: figure };

/** Circuits of one load. */
export const simplePatterns: readonly CircuitPattern[] = [
  {
    id: "fused-accessory",
    name: "accessory behind its own fuse",
    what: "A fuse near the live, a switch, the load and its own return.",
    dropClass: "accessory",
    asks: [
      feed,
      { id: "fuseAt", word: "fuse sits at", kind: "station" },
      { id: "switchAt", word: "switch sits at", kind: "station" },
      { id: "loadAt", word: "load sits at", kind: "station" },
      earth,
      fuseA,
      {
        id: "ohm",
        word: "load",
        kind: "number",
        unit: "ohm",
        isOptional: true,
        howTo: "volts over amps while it works; may be measured later",
      },
    ],
    build(put, { text, figure }) {
      const fuse = put.part(
        "fuse-blade",
        text("fuseAt"),
        "accessory fuse",
        given("ratingA", figure("fuseA")),
      );
      const knob = put.part("on-off", text("switchAt"), "accessory switch");
      const load = put.part("box", text("loadAt"), "accessory", given("ohm", figure("ohm")));
      put.wire(text("feed"), `${fuse}.1`, text("fuseAt"));
      put.wire(`${fuse}.2`, `${knob}.1`);
      put.wire(`${knob}.2`, `${load}.1`);
      put.wire(`${load}.2`, text("earth"), text("loadAt"));
      put.works(`${load}.1`, [{ positions: { [knob]: ["ON"] } }]);
    },
  },
  {
    id: "horn-push",
    name: "horn with a push in its return",
    what: "The horn is live whenever its feed is; the button joins it to earth.",
    dropClass: "horn",
    asks: [
      feed,
      { id: "hornAt", word: "horn sits at", kind: "station" },
      { id: "pushAt", word: "button sits at", kind: "station" },
      earth,
      {
        id: "ohm",
        word: "horn",
        kind: "number",
        unit: "ohm",
        isOptional: true,
        howTo: "volts over amps while it sounds; may be measured later",
      },
    ],
    build(put, { text, figure }) {
      const horn = put.part("horn", text("hornAt"), "horn", given("ohm", figure("ohm")));
      const push = put.part("push", text("pushAt"), "horn button");
      put.wire(text("feed"), `${horn}.1`, text("hornAt"));
      put.wire(`${horn}.2`, `${push}.1`, undefined, "horn");
      put.wire(`${push}.2`, text("earth"), text("pushAt"));
      put.works(`${horn}.1`, [{ positions: { [push]: ["PUSH"] } }]);
    },
  },
  {
    id: "headlamp-dip",
    name: "headlamp with dip switch and main-beam warning lamp",
    what: "One feed, a dip switch, both beams with their own return, a lamp beside the main beam.",
    dropClass: "headlamp",
    asks: [
      feed,
      { id: "dipAt", word: "dip switch sits at", kind: "station" },
      { id: "lampAt", word: "headlamp sits at", kind: "station" },
      { id: "warnAt", word: "warning lamp sits at", kind: "station" },
      earth,
      {
        id: "mainW",
        word: "main beam",
        kind: "number",
        unit: "W",
        howTo: "read the cap of the bulb",
      },
      {
        id: "dipW",
        word: "dip beam",
        kind: "number",
        unit: "W",
        howTo: "read the cap of the bulb",
      },
      { id: "warnW", word: "warning lamp", kind: "number", unit: "W", howTo: "read its cap" },
    ],
    build(put, { text, figure }) {
      const beams = { ...given("firstW", figure("mainW")), ...given("secondW", figure("dipW")) };
      const dip = put.part("dip", text("dipAt"), "dip switch");
      const head = put.part("headlamp", text("lampAt"), "headlamp", beams);
      const warn = put.part(
        "warning",
        text("warnAt"),
        "main-beam warning",
        given("powerW", figure("warnW")),
      );
      const main = put.joint(text("lampAt"), 3);
      const back = put.joint(text("lampAt"), 3);
      put.wire(text("feed"), `${dip}.F`, text("dipAt"));
      put.wire(`${dip}.HI`, `${main}.1`, undefined, "main-beam");
      put.wire(`${main}.2`, `${head}.HI`);
      put.wire(`${main}.3`, `${warn}.L`);
      put.wire(`${dip}.LO`, `${head}.LO`, undefined, "dipped-beam");
      put.wire(`${head}.E`, `${back}.1`);
      put.wire(`${warn}.E`, `${back}.2`);
      put.wire(`${back}.3`, text("earth"), text("lampAt"));
      put.works(`${head}.HI`, [{ positions: { [dip]: ["HI"] } }]);
      put.works(`${head}.LO`, [{ positions: { [dip]: ["LO"] } }]);
      put.works(`${warn}.L`, [{ positions: { [dip]: ["HI"] } }]);
    },
  },
  {
    id: "kill-feed",
    name: "engine stop switch in the ignition feed",
    what: "For coil ignition fed by the battery: the wire is cut and led over the switch.",
    dropClass: "ignition",
    asks: [
      { id: "wire", word: "ignition feed to be cut", kind: "wire" },
      { id: "switchAt", word: "switch sits at", kind: "station" },
    ],
    build(put, { text }) {
      const wire = put.job().wires.find(({ id }) => id === text("wire"));
      const kill = put.part("kill-break", text("switchAt"), "engine stop switch");
      const far = wire?.to ?? "";
      const set = (path: string, value?: unknown) =>
        put.put({
          op: "set",
          list: "wires",
          id: text("wire"),
          path: [path],
          ...(value === undefined ? {} : { value }),
        });
      set("to", `${kill}.1`);
      for (const path of ["toEnd", "lengthMm", "via"]) set(path);
      put.wire(`${kill}.2`, far, undefined, "kill-output");
      put.onlyWhile(kill, `${kill}.2`, ["RUN"]);
    },
  },
  {
    id: "kill-magneto",
    name: "engine stop button for a magneto",
    what: "The kill lead of a magneto is joined to earth to stop the engine; no battery may ever reach it.",
    dropClass: "kill",
    asks: [
      { id: "kill", word: "kill lead of the magneto", kind: "pin" },
      { id: "buttonAt", word: "button sits at", kind: "station" },
      earth,
    ],
    build(put, { text }) {
      const button = put.part("kill-earth", text("buttonAt"), "engine stop button");
      put.wire(text("kill"), `${button}.1`, text("buttonAt"));
      put.wire(`${button}.2`, text("earth"), text("buttonAt"));
    },
  },
];
