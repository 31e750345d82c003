import { type ReactNode, useState } from "react";
import { showSum, useBench } from "../../store/benchStore.ts";
import { FusePlot } from "./FusePlot.tsx";
import { useProofRun } from "./proofRun.ts";
import { figureText, sumOfFigure } from "./sumOf.ts";

/** Fuse by fuse: what it carries, what it guards, the window it must lie in, what dies with it; its plot. */
export function FuseList(): ReactNode {
  const check = useBench((bench) => bench.verdict.result);
  const parts = useBench((bench) => bench.document!.job.parts);
  const proved = useProofRun((run) => run.result?.fuses);
  const chosen = useBench((bench) => bench.chosen?.id);
  const fuses = check?.fuses ?? [];
  const [picked, setPicked] = useState<string | null>(null);
  const open = fuses.find(({ fuse }) => fuse === (picked ?? chosen)) ?? fuses[0];
  if (open === undefined) return <p className="waiting note">There is no fuse to show.</p>;
  const nameOf = (id: string): string => parts.find((part) => part.id === id)?.name || id;
  const proof = proved?.find(({ fuse }) => fuse === open.fuse);
  const figure = (name: string, value: number | null, unit: string): ReactNode => (
    <button
      type="button"
      className="figure-link"
      onClick={() =>
        showSum(
          sumOfFigure({
            name: `${open.fuse} ${name}`,
            value,
            unit,
            from: { kind: "part", id: open.fuse },
          }),
        )
      }
    >
      {figureText(value, unit)}
    </button>
  );
  return (
    <div className="proof-open">
      <div className="proof-picks" role="group" aria-label="Fuses">
        {fuses.map(({ fuse, ratingA }) => (
          <button
            key={fuse}
            type="button"
            className="act"
            aria-pressed={fuse === open.fuse}
            onClick={() => setPicked(fuse)}
          >
            {fuse} {figureText(ratingA, "A")}
          </button>
        ))}
      </div>
      <h1>
        {open.fuse}, {nameOf(open.fuse)}
      </h1>
      <div className="proof-body">
        <FusePlot key={open.fuse} fuse={open.fuse} wire={open.weakestWire} />
        <dl className="proof-facts">
          <dt>carries at most</dt>
          <dd>{figure("largest load", open.worstLoadA, "A")}</dd>
          <dt>must lie between</dt>
          <dd>
            {figure("least that carries the load", open.windowMinA, "A")} and{" "}
            {figure("most the weakest wire allows", open.windowMaxA, "A")}
          </dd>
          <dt>weakest wire</dt>
          <dd>{open.weakestWire ?? "none"}</dd>
          <dt>wire before it</dt>
          <dd>{figure("wire nothing guards before it", open.unfusedMm, "mm")}</dd>
          <dt>guards</dt>
          <dd>{open.protects.length === 0 ? "nothing" : open.protects.join(", ")}</dd>
          <dt>dies with it</dt>
          <dd>{open.dies.length === 0 ? "nothing" : open.dies.join(", ")}</dd>
          <dt>opens first in</dt>
          <dd>
            {proof === undefined ? "being proved" : `${proof.firstToOpenCount} shorts of the proof`}
          </dd>
          <dt>may open with</dt>
          <dd>
            {proof === undefined
              ? "being proved"
              : proof.overlapsWith.join(", ") || "no other fuse"}
          </dd>
        </dl>
      </div>
    </div>
  );
}
