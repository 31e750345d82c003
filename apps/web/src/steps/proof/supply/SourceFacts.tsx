import type { SupplyAnswer } from "@copperwright/engine";
import { printNumber, printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { Figure, type FigureSum } from "./Figure.tsx";
import { restsOn, rpmText } from "./supplyWords.ts";

type Source = SupplyAnswer["sources"][number];

/** What charges, in a few figures, and how well it is known. */
export function SourceFacts({ answer }: { answer: SupplyAnswer }): ReactNode {
  if (answer.sources.length === 0)
    return <p>Nothing charges the battery: it is filled from outside.</p>;
  return answer.sources.map((source) => (
    <section
      key={source.generator}
      className="supply-part"
      aria-label={`What charges: ${source.generator}`}
    >
      <h2>What charges</h2>
      <Facts source={source} answer={answer} />
      {source.note !== null && <p className="note">{source.note}</p>}
      {source.isShunt && (
        <p className="note">
          Its regulator shorts the winding: the stator carries all it can give, whatever is switched
          off.
        </p>
      )}
    </section>
  ));
}

function Facts({
  source,
  answer,
}: {
  readonly source: Source;
  readonly answer: SupplyAnswer;
}): ReactNode {
  const { generator, ceilingA, cutInRpm, emfPerThousandV, heldV, setV, ratedW, bandPercent } =
    source;
  if (ceilingA === null || cutInRpm === null || emfPerThousandV === null)
    return (
      <p>
        {generator}: {source.why}.
        {ratedW !== null &&
          ` It is rated ${printQuantity(ratedW, "W")}, which says nothing of idle.`}
      </p>
    );
  const row = (name: string, sum: Omit<FigureSum, "name">): ReactNode => (
    <>
      <dt>{name}</dt>
      <dd>
        <Figure sum={{ name: `${generator} ${name}`, ...sum }} />
      </dd>
    </>
  );
  return (
    <dl className="proof-facts">
      {row("gives nothing below", {
        result: rpmText(cutInRpm),
        equation: `(rest volts of the battery + drop of its diodes) ÷ ${printNumber(emfPerThousandV, 2)} V per 1000 rpm`,
      })}
      {row("never more than", {
        result: printQuantity(ceilingA, "A"),
        equation:
          "the ellipse through its two output points runs flat: volts and reactance both rise with speed",
      })}
      {row("known to", {
        result: `${printNumber(bandPercent, 0)}\u00a0%`,
        equation: "the worst of its output points: measured, stated or estimated",
        note: [
          restsOn(answer, "band of a stated output point"),
          restsOn(answer, "band of an estimated output point"),
        ].join(" · "),
      })}
      {heldV === null ? (
        <>
          <dt>held at</dt>
          <dd>unregulated</dd>
        </>
      ) : (
        row("held at", {
          result: printQuantity(heldV, "V"),
          equation: `set to ${printQuantity(setV ?? heldV, "V")} at its regulator, less what the way to the battery loses (${printQuantity(source.leadOhm, "ohm")})`,
          note: restsOn(answer, "set volts by temperature"),
        })
      )}
    </dl>
  );
}
