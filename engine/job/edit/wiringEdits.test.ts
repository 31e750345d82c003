import { describe, expect, it } from "vitest";
import type { Job, Wire } from "../job.ts";
import { applyOperation } from "./applyOperation.ts";
import { addBond, addEarthPoint } from "./bondEdits.ts";
import { connectorInWires } from "./connectorInWires.ts";
import { after, demoJob } from "./demoJobs.fixture.ts";
import { hangingOn } from "./hangingOn.ts";
import { addLoom, putInLoom } from "./loomEdits.ts";
import { takeAway } from "./takeAway.ts";
import { wireThrough } from "./wireThrough.ts";

const four = demoJob("minazuru-four");
const wire = (job: Job, id: string): Wire => job.wires.find((one) => one.id === id)!;
const [first, second, third] = four.wires
  .filter(({ from, to }) => ![from, to].some((pin) => pin.startsWith("J")))
  .map(({ id }) => id) as [string, string, string];

describe("a connector in several wires", () => {
  const made = connectorInWires(four, {
    wires: [
      { wire: first, plugSide: "from" },
      { wire: second, plugSide: "to" },
      { wire: third, plugSide: "from" },
    ],
    into: null,
    kind: "sealed-16",
    station: null,
  });
  const job = after(four, made.operation);

  it("gives each a cavity of its own, the pieces on the sides they were said to be on", () => {
    expect(wire(job, first).to).toBe(`${made.id}.1p`);
    expect(wire(job, second).to).toBe(`${made.id}.2s`);
    const far = job.wires.filter(({ from }) => from.startsWith(`${made.id}.`));
    expect(far.map(({ from }) => from).sort()).toEqual(
      ["1s", "2p", "3s"].map((pin) => `${made.id}.${pin}`),
    );
    expect(far.find(({ from }) => from.endsWith("2p"))?.to).toBe(wire(four, second).to);
  });

  it("takes the fewest cavities its kind is made with", () => {
    // tables/connectorClasses sealed-16: 2 3 4 6 8 12.
    expect(job.connectors.find(({ id }) => id === made.id)?.cavities).toHaveLength(3);
  });

  it("takes free cavities of one that is there, then gives it more", () => {
    const more = four.wires
      .map(({ id }) => id)
      .filter((id) => ![first, second, third].includes(id));
    const once = connectorInWires(job, {
      wires: more.slice(0, 2).map((id) => ({ wire: id, plugSide: "from" })),
      into: made.id,
      kind: "",
      station: null,
    });
    const grown = after(job, once.operation);
    expect(grown.connectors.find(({ id }) => id === made.id)?.cavities).toEqual([
      "1",
      "2",
      "3",
      "4",
      "5",
    ]);
  });

  it("comes out again and leaves the wires as they were", () => {
    const taken = takeAway(job, "connectors", made.id);
    if (!taken.ok) throw new Error(taken.refusals[0]?.message);
    const healed = after(job, taken.operation);
    const ends = (of: Job): string[] =>
      of.wires.map(({ from, to }) => [from, to].sort().join(" ")).sort();
    expect(ends(healed)).toEqual(ends(four));
  });
});

describe("a wire led over a place between its ends", () => {
  it("ends both pieces on a part's terminal", () => {
    const job = after(four, wireThrough(four, { wire: first, pin: "HORN.1" }));
    expect(wire(job, first).to).toBe("HORN.1");
    expect(job.wires.find(({ from }) => from === "HORN.1")?.to).toBe(wire(four, first).to);
  });

  it("takes two ways of a joint, made where none is free", () => {
    const joint = four.joints.find(({ ways }) => ways.length === 4)!;
    const job = after(four, wireThrough(four, { wire: first, pin: `${joint.id}.*` }));
    const ends = job.wires
      .flatMap(({ from, to }) => [from, to])
      .filter((pin) => pin.startsWith(`${joint.id}.`));
    expect(new Set(ends).size).toBe(ends.length);
    expect(hangingOn(job, "joints", joint.id).wires.length).toBe(
      hangingOn(four, "joints", joint.id).wires.length + 2,
    );
  });

  it("goes through the two halves of one cavity", () => {
    const [connector] = four.connectors;
    const job = after(four, wireThrough(four, { wire: first, pin: `${connector!.id}.*` }));
    const near = wire(job, first).to;
    expect(near.endsWith("p")).toBe(true);
    expect(job.wires.some(({ from }) => from === `${near.slice(0, -1)}s`)).toBe(true);
  });

  it("is refused over one of its own ends", () => {
    const { from } = wire(four, first);
    expect(applyOperation(four, wireThrough(four, { wire: first, pin: from })).ok).toBe(false);
  });
});

describe("taking away", () => {
  it("is refused while something hangs on it, and says what", () => {
    const joint = four.joints.find(({ ways }) => ways.length === 4)!;
    const wires = hangingOn(four, "joints", joint.id).wires;
    const taken = takeAway(four, "joints", joint.id);
    expect(taken.ok).toBe(false);
    const message = taken.ok ? "" : taken.refusals[0]!.message;
    expect(message).toContain(`joint ${joint.id}`);
    expect(message).toContain(wires[0]);
    expect(taken.ok ? "" : taken.refusals[0]!.code).toBe("edit-still-in-use");
  });

  it("names bonds on a body, the loom's wires, and an earth point's wires", () => {
    const text = (holder: Parameters<typeof takeAway>[1], id: string): string => {
      const taken = takeAway(four, holder, id);
      return taken.ok ? "done" : taken.refusals[0]!.message;
    };
    expect(text("bodies", "FORK")).toMatch(/bonds? .*BARS-FORK/);
    expect(text("looms", "left")).toMatch(/lies? in it/);
    expect(text("points", "ENG.MOUNT")).toMatch(/bond ENG-FR ends on it/);
  });

  it("goes through for what is free", () => {
    const withPoint = after(four, addEarthPoint(four, { body: "FR", station: "HS", name: "lug" }));
    const frame = withPoint.bodies.find(({ id }) => id === "FR")!;
    const point = frame.points.find(({ name }) => name === "lug")!;
    expect(point.station).toBe("HS");
    const taken = takeAway(withPoint, "points", `FR.${point.id}`);
    if (!taken.ok) throw new Error(taken.refusals[0]?.message);
    expect(after(withPoint, taken.operation).bodies).toEqual(four.bodies);
  });
});

describe("bonds and looms", () => {
  it("a bond between two bodies gets a point on each", () => {
    const made = addBond(four, { from: "FR.*", to: "ENG.*", kind: "strap" });
    const job = after(four, made.operation);
    const bond = job.bonds.find(({ id }) => id === made.id)!;
    expect(bond.from.startsWith("FR.")).toBe(true);
    expect(bond.kind).toBe("strap");
    expect(takeAway(job, "points", bond.from).ok).toBe(false);
  });

  it("a bond from a place to itself is refused", () => {
    const made = addBond(four, { from: "FR.BAT", to: "FR.BAT", kind: "strap" });
    expect(applyOperation(four, made.operation).ok).toBe(false);
  });

  it("a new loom takes wires out of others; put back, it is free to go", () => {
    const made = addLoom(four, { name: "tank", covering: "tape", wires: [first, second] });
    const job = after(four, made.operation);
    expect([wire(job, first).loom, wire(job, second).loom]).toEqual([made.id, made.id]);
    expect(takeAway(job, "looms", made.id).ok).toBe(false);
    const loose = after(job, putInLoom(job, null, [first, second]));
    expect(wire(loose, first).loom).toBeUndefined();
    expect(takeAway(loose, "looms", made.id).ok).toBe(true);
  });
});
