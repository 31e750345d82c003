import type { CheckResult, ProveResult } from "@copperwright/engine";
import { type ReactNode, useState } from "react";
import { WireSwatch } from "../../frame/WireSwatch.tsx";
import { choose, showSum, useBench } from "../../store/benchStore.ts";
import { FusePlot } from "./FusePlot.tsx";
import { useProofRun } from "./proofRun.ts";
import { figureText, sumOfFigure } from "./sumOf.ts";

type Wire = CheckResult["wires"][number];
type ProvedWire = ProveResult["wires"][number];

/** Wire by wire, the one with the least room to its limit first; a tap opens its fuse's plot with its curve told. */
export function WireList(): ReactNode {
  const check = useBench((bench) => bench.verdict.result);
  const proved = useProofRun((run) => run.result?.wires);
  const chosen = useBench((bench) => bench.chosen?.id);
  const [picked, setPicked] = useState<string | null>(null);
  const proofOf = new Map(proved?.map((row) => [row.wire, row]));
  const room = ({ wire }: Wire): number => proofOf.get(wire)?.margin ?? Infinity;
  const wires = [...(check?.wires ?? [])].sort(
    (a, b) => room(a) - room(b) || (a.wire < b.wire ? -1 : 1),
  );
  const open = wires.find(({ wire }) => wire === (picked ?? chosen)) ?? null;
  return (
    <div className="proof-open">
      <h1>Wire by wire</h1>
      {open !== null && <OpenWire wire={open} proof={proofOf.get(open.wire)} />}
      <div className="proof-scroll">
        <table className="proof-table">
          <thead>
            <tr>
              <th scope="col">wire</th>
              <th scope="col">size</th>
              <th scope="col">carries</th>
              <th scope="col">may carry</th>
              <th scope="col">guarded by</th>
              <th scope="col">room to its limit</th>
              <th scope="col">proved</th>
            </tr>
          </thead>
          <tbody>
            {wires.map((wire) => (
              <WireRow
                key={wire.wire}
                wire={wire}
                proof={proofOf.get(wire.wire)}
                isOpen={wire === open}
                onOpen={() => {
                  setPicked(wire.wire);
                  choose({ kind: wire.kind === "wire" ? "wire" : "pin", id: wire.wire });
                }}
              />
            ))}
          </tbody>
        </table>
      </div>
    </div>
  );
}

type RowProps = {
  readonly wire: Wire;
  readonly proof: ProvedWire | undefined;
  readonly isOpen: boolean;
  readonly onOpen: () => void;
};

function WireRow({ wire, proof, isOpen, onOpen }: RowProps): ReactNode {
  const guards = wire.feeds.map(({ cut }) => cut.join("+") || "nothing");
  return (
    <tr className={isOpen ? "now" : undefined}>
      <th scope="row">
        <button type="button" className="figure-link" onClick={onOpen} aria-pressed={isOpen}>
          <WireSwatch colour={wire.colour} widthPx={28} heightPx={12} /> {wire.wire}
        </button>
      </th>
      <td>{figureText(wire.areaMm2, "mm2")}</td>
      <td>{figureText(wire.worstA, "A")}</td>
      <td>
        <button type="button" className="figure-link" onClick={() => showSum(ratingSum(wire))}>
          {figureText(wire.ratingA, "A")}
        </button>
      </td>
      <td>{[...new Set(guards)].join(", ") || "fed by nothing"}</td>
      <td>
        {proof === undefined
          ? ""
          : proof.margin === null
            ? "none bounds it"
            : figureText(proof.margin, "K")}
      </td>
      <td>{proof?.verdict ?? "being proved"}</td>
    </tr>
  );
}

const ratingSum = ({
  wire,
  ratingA,
  ratingBasis,
  ambientC,
  bundleCount,
  loadedCount,
  worstA,
}: Wire) => ({
  ...sumOfFigure({
    name: `wire ${wire} may carry`,
    value: ratingA,
    unit: "A",
    equation: `${ratingBasis}, in air of ${figureText(ambientC, "C")}, ${bundleCount} wires of which ${loadedCount} are loaded`,
    from: { kind: "wire", id: wire },
  }),
  ...(worstA !== null &&
    ratingA > 0 && { usedRatio: worstA / ratingA, usedText: `${figureText(worstA, "A")} carried` }),
});

function OpenWire({ wire, proof }: { wire: Wire; proof: ProvedWire | undefined }): ReactNode {
  const [proved, checked] = [
    proof?.worst?.cut,
    wire.feeds.find(({ cut }) => cut.length === 1)?.cut,
  ];
  const fuse = (proved?.length === 1 ? proved : checked)?.[0] ?? null;
  const bound = proof?.bound ?? null;
  return (
    <section className="proof-body" aria-label={`Wire ${wire.wire}`}>
      {fuse === null ? (
        <p className="note">No single fuse stands before {wire.wire}.</p>
      ) : (
        <FusePlot key={fuse} fuse={fuse} wire={wire.wire} />
      )}
      <dl className="proof-facts">
        <dt>{wire.wire}</dt>
        <dd>
          {wire.from} to {wire.to}
        </dd>
        {bound !== null && (
          <>
            <dt>at worst</dt>
            <dd>
              {figureText(bound.peakC, "C")} at {figureText(bound.currentA, "A")}
              {bound.timeS !== null && ` for ${figureText(bound.timeS, "s")}`}
            </dd>
            <dt>may then have</dt>
            <dd>{figureText(bound.limitC, "C")}</dd>
          </>
        )}
        {proof?.why != null && (
          <>
            <dt>why</dt>
            <dd>{proof.why}</dd>
          </>
        )}
        {proof?.reproduce != null && (
          <>
            <dt>the same by command</dt>
            <dd>
              <code>copperwright {proof.reproduce.join(" ")}</code>
            </dd>
          </>
        )}
      </dl>
    </section>
  );
}
