import type { PartStep } from "../../drawing/index.ts";
import type { Job, Part } from "../../job/index.ts";
import type { Levels } from "./levels.ts";
import type { Link, MachineGraph } from "./machineGraph.ts";
import { sheetsOf } from "./relayHalf.ts";

/**
 * Two filaments of one lamp on one return: each path shows the whole envelope with both and goes through its own, and says where the other is. Nothing for
 * a lamp of another kind, or where the return does not stand below.
 */
export function twinFilament(
  job: Job,
  graph: MachineGraph,
  levels: Levels,
  part: Part,
  { link, pinBelow }: { readonly link: Link; readonly pinBelow: string },
): Pick<PartStep, "symbol" | "symbolPins" | "half"> | null {
  if (part.kind !== "lamp" || part.source === "led" || link.kind !== "load") return null;
  const filaments = graph.links.filter(({ of, kind }) => of === part.id && kind === "load");
  const [first, second] = filaments;
  if (filaments.length !== 2 || first === undefined || second === undefined) return null;
  const common = [first.pinA, first.pinB].find((pin) => [second.pinA, second.pinB].includes(pin));
  if (common === undefined || common !== pinBelow) return null;
  const other = link.key === first.key ? second : first;
  const [is, its] = [link, other].map((one) => bare(one.pinA === common ? one.pinB : one.pinA));
  const circuits = sheetsOf(job, graph, levels, [other]);
  return {
    symbol: "twinLamp",
    symbolPins: [link.key === first.key ? "left" : "right", "common"],
    half: {
      is: is!,
      other: `filament ${its}`,
      elsewhere: circuits.length === 0 ? "" : `filament ${its} on sheet ${circuits.join(" or ")}`,
    },
  };
}

const bare = (pin: string): string => pin.slice(pin.indexOf(".") + 1);
