import { printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { WireSwatch } from "../../frame/WireSwatch.tsx";
import { choose, useBench } from "../../store/benchStore.ts";
import type { CutGroup } from "./partsAnswers.ts";

/** What to cut, reel by reel, longest first. Tapping a wire chooses it everywhere. */
export function CutList(): ReactNode {
  const { answer } = useAnswer("partsCuts", undefined);
  if (answer === null) return null;
  return (
    <section aria-label="Cut list">
      <h2>Cut list</h2>
      <ul className="cuts">
        {answer.map((group) => (
          <Group key={group.key} group={group} />
        ))}
      </ul>
    </section>
  );
}

function Group({ group }: { group: CutGroup }): ReactNode {
  const chosen = useBench((bench) => bench.chosen?.id);
  return (
    <li className="cut-group">
      <h3>
        <WireSwatch colour={group.colour} /> {group.colourWords}{" "}
        <span className="note">{group.colourCode}</span>
      </h3>
      <p className="note">
        {group.size}, {group.stranding}: {group.wires.length} pieces,{" "}
        {printQuantity(group.totalMm / 1000, "m")}
        {group.unmeasuredCount > 0 && ` and ${group.unmeasuredCount} not measured`}
      </p>
      <ul className="cut-wires">
        {group.wires.map(({ wire, number, cutMm }) => (
          <li key={wire}>
            <button
              type="button"
              className={wire === chosen ? "plain cut-wire now" : "plain cut-wire"}
              onClick={() => choose({ kind: "wire", id: wire })}
            >
              <b>{number}</b> <span>{cutMm === null ? "measure" : printQuantity(cutMm, "mm")}</span>
            </button>
          </li>
        ))}
      </ul>
    </li>
  );
}
