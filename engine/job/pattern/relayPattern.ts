import { insertRelay } from "../edit/insertRelay.ts";
import type { PartOf } from "../job.ts";
import type { CircuitPattern } from "./circuitPattern.ts";
import { given } from "./simplePatterns.ts";

/** The switch then carries the coil's current only; the load is fed short and thick. */
export const relayPattern: CircuitPattern = {
  id: "relay-for-load",
  name: "relay for a load",
  what: "The wire that fed the load works the coil; the load is fed through the contacts from a fused live of its own.",
  dropClass: "accessory",
  asks: [
    { id: "wire", word: "wire that feeds the load now", kind: "wire" },
    { id: "load", word: "the load's own terminal on it", kind: "pin" },
    { id: "feed", word: "fused live for the load", kind: "pin" },
    { id: "earth", word: "where the coil returns", kind: "pin" },
    { id: "relayAt", word: "relay sits at", kind: "station" },
    {
      id: "coilOhm",
      word: "coil",
      kind: "number",
      unit: "ohm",
      howTo: "ohmmeter across the two coil terminals",
    },
    {
      id: "contactA",
      word: "contacts made for",
      kind: "number",
      unit: "A",
      isOptional: true,
      howTo: "stamped on the case",
    },
  ],
  build(put, { text, figure }) {
    const answers = {
      ...given("coilOhm", figure("coilOhm")),
      ...given("contactA", figure("contactA")),
    };
    const wire = put.job().wires.find(({ id }) => id === text("wire"));
    const id = put.part("relay-make", text("relayAt"), "relay", answers);
    const relay = put.job().parts.find((part) => part.id === id) as PartOf<"relay">;
    const at = text("relayAt");
    const newWire = () => put.nextId("W");
    const inserted = insertRelay(put.job(), {
      wire: text("wire"),
      loadEnd: wire?.from === text("load") ? "from" : "to",
      relay,
      feed: { pin: put.pin(text("feed"), at), newWire: newWire() },
      load: { newWire: newWire() },
      earth: { pin: put.pin(text("earth"), at), newWire: newWire() },
    });
    // The relay itself has been put on already.
    for (const one of inserted.op === "batch" ? inserted.operations.slice(1) : []) put.put(one);
    put.put({ op: "remove", list: "circuits", id: put.circuit });
  },
};
