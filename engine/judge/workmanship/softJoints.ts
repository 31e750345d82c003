import type { Wire } from "../../job/index.ts";
import type { Finding, Subject } from "../../messages/index.ts";
import { figure } from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";
import { jointsSeen } from "./jointsSeen.ts";

/** An end of a wire, or a joint, that is twisted or soldered. */
interface Soft {
  readonly subject: Subject;
  readonly supported: boolean;
  readonly inFlex: boolean;
  /** Built that way at the factory: a switch, an old bullet. */
  readonly asBuilt: boolean;
}

/** Strands twisted together and taped: no contact pressure, no strength, and it burns before anything opens. */
export const twistedJoint: Judge = (design) => grouped("joint-twisted", softs(design, "twisted"));

/** Solder where the wire moves: it makes the strand stiff up to where it wicked, and the wire breaks there. */
export const solderedJoint: Judge = (design) => {
  const soldered = softs(design, "soldered");
  const unheld = soldered.filter(({ supported, inFlex }) => inFlex || !supported);
  const odd = soldered.filter((one) => !unheld.includes(one) && !one.asBuilt);
  return [...grouped("joint-soldered", unheld), ...grouped("joint-soldered-new", odd)];
};

/** Strand dipped in solder and then crimped: the solder creeps and the crimp goes loose. Factory plating is something else. */
export const solderDipped: Judge = ({ job }) => {
  const ends = job.wires.flatMap((wire) =>
    endsOf(wire).flatMap(({ pin, end }) =>
      end?.solderDipped === true && end.joining !== "soldered" ? [{ wire: wire.id, pin }] : [],
    ),
  );
  const [first, ...others] = ends.sort((a, b) => (a.wire < b.wire ? -1 : 1));
  if (first === undefined) return [];
  return [
    findingOf({
      code: "solder-dipped",
      severity: "mend",
      subject: { kind: "wire", id: first.wire },
      also: others.map(({ wire }) => wire).filter((id) => id !== first.wire),
      numbers: { pin: first.pin },
      limit: null,
    }),
  ];
};

const endsOf = ({ from, to, fromEnd, toEnd }: Wire) => [
  { pin: from, end: fromEnd },
  { pin: to, end: toEnd },
];

function softs(design: Design, how: "twisted" | "soldered"): readonly Soft[] {
  const joints = jointsSeen(design)
    .filter(({ joint, wires }) => joint.kind === how && wires.length > 0)
    .map(
      ({ joint, along }): Soft => ({
        subject: { kind: "joint", id: joint.id },
        supported: joint.supported === true,
        inFlex: along?.run.flex === true,
        asBuilt: false,
      }),
    );
  const ends = [...design.job.wires]
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .flatMap((wire) =>
      endsOf(wire).flatMap(({ pin, end }): Soft[] => {
        const place = design.pins.get(pin);
        if (end?.joining !== how) return [];
        if (place?.ownerKind === "joint" && place.joint.kind === how) return [];
        const isSwitch = place?.ownerKind === "part" && place.part.kind === "switch";
        return [
          {
            subject: { kind: "wire", id: wire.id },
            supported: end.supported === true,
            inFlex: isInFlex(design, pin),
            asBuilt: isSwitch || end.terminal?.startsWith("bullet-") === true,
          },
        ];
      }),
    );
  return [...joints, ...ends];
}

function isInFlex({ job, pins }: Design, pin: string): boolean {
  const place = pins.get(pin);
  if (place?.ownerKind !== "joint") return false;
  const { offset } = place.joint;
  return job.runs.some(({ id, flex }) => id === offset?.run && flex === true);
}

const SEVERITY = {
  "joint-twisted": "stop",
  "joint-soldered": "mend",
  "joint-soldered-new": "advise",
} as const;

function grouped(code: keyof typeof SEVERITY, found: readonly Soft[]): readonly Finding[] {
  const [first, ...others] = found;
  if (first === undefined) return [];
  const inFlex = found.filter((one) => one.inFlex).map(({ subject }) => subject.id);
  return [
    findingOf({
      code,
      severity: SEVERITY[code],
      subject: first.subject,
      also: others.map(({ subject }) => subject.id),
      numbers: { inFlex: inFlex.length === 0 ? null : inFlex.join(", ") },
      limit: code === "joint-soldered" ? figure("loomRules", "solder-support", "value") : null,
    }),
  ];
}
