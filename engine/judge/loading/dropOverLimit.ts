import type { Finding, WorkingStep } from "../../messages/index.ts";
import type { CheckLoadRow } from "../checkResult.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";
import { loadDropLimit } from "../loadRowsOf.ts";
import { stateOf } from "../stateArguments.ts";

/** A row with a drop over its limit. */
type Over = CheckLoadRow & {
  readonly worstDropV: number;
  readonly feedV: number;
  readonly returnV: number;
  readonly contactV: number;
};

/**
 * Loads that lose more than their circuit allows, between battery posts and load and back. Where it is the contacts that
 * take more than their share copper cannot help, and the finding says what can.
 */
export const dropOverLimit: Judge = (design) => {
  const over = design.loads.filter(
    (row): row is Over => row.worstDropV !== null && row.worstDropV > row.limitV * (1 + 1e-9),
  );
  const groups = new Map<string, Over[]>();
  for (const row of over) {
    const key = `${isInContacts(design, row) ? "contacts" : "copper"} ${row.limit.row}`;
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  return [...groups.values()].map((rows) => {
    const worst = rows.reduce((most, row) =>
      row.worstDropV / row.limitV > most.worstDropV / most.limitV ? row : most,
    );
    return dropFinding(design, worst, rows);
  });
};

function dropFinding(design: Design, row: Over, rows: readonly Over[]): Finding {
  const { job, worst } = design;
  const inContacts = isInContacts(design, row);
  const seen = worst.loads.get(row.load)!;
  const [largest, largestV] = largestContact(design, row.load);
  const { nominalV } = job.supply;
  return findingOf({
    code: inContacts ? "drop-in-contacts" : "drop-over-limit",
    severity: "mend",
    subject: { kind: "load", id: row.load },
    also: rows.map(({ load }) => load).filter((load) => load !== row.load),
    state: seen.dropState && stateOf(job, seen.dropState),
    limit: row.limit,
    numbers: {
      dropV: row.worstDropV,
      feedV: row.feedV,
      returnV: row.returnV,
      contactV: row.contactV,
      wireV: row.worstDropV - row.contactV,
      dropPercent: (100 * row.worstDropV) / nominalV,
      systemV: nominalV,
      largest,
      largestV,
      loadCount: rows.length,
      contactShareV: row.limitV - loadDropLimit(job, seen.load.pins, design.wiresAt).wireShareV,
    },
    working: dropWorking(row),
    remedies: [],
    reproduce: row.state,
  });
}

/** The wires keep within their share and the contacts do not: copper is then not the remedy. */
function isInContacts({ job, worst, wiresAt }: Design, row: Over): boolean {
  const { load } = worst.loads.get(row.load)!;
  const { wireShareV } = loadDropLimit(job, load.pins, wiresAt);
  return row.contactV > row.limitV || row.worstDropV - row.contactV <= wireShareV;
}

/** The one contact, fuse, joint or bond on the way that loses most. */
function largestContact({ compiled, worst }: Design, load: string): [string | null, number | null] {
  const seen = worst.loads.get(load);
  if (seen?.drop == null || seen.dropState === null) return [null, null];
  const { elements } = compiled.jobNetwork;
  const { nodeV } = compiled.solve(seen.dropState);
  const lost = [...seen.drop.feed, ...seen.drop.back]
    .filter((k) => elements[k]!.kind !== "wire" && !elements[k]!.ofLoad)
    .map((k): [string, number] => {
      const { nodes, of } = elements[k]!;
      return [of, Math.abs(nodeV[nodes[0]]! - nodeV[nodes[1]]!)];
    })
    .sort((a, b) => b[1] - a[1]);
  return lost[0] ?? [null, null];
}

function dropWorking(row: Over): readonly WorkingStep[] {
  const from = "the network, battery post to load and back";
  return [
    {
      name: "volts lost",
      equation: "feed + return",
      inputs: [
        { name: "feed", value: row.feedV, unit: "V", from },
        { name: "return", value: row.returnV, unit: "V", from },
      ],
      value: row.worstDropV,
      unit: "V",
    },
    {
      name: "of it in wire",
      equation: "lost - contacts",
      inputs: [
        {
          name: "contacts",
          value: row.contactV,
          unit: "V",
          from: "switches, fuses, joints, bonds",
        },
      ],
      value: row.worstDropV - row.contactV,
      unit: "V",
    },
  ];
}
