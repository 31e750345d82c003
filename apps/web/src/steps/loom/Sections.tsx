import { printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { choose, showSum, useBench } from "../../store/benchStore.ts";
import type { SectionView } from "./loomAnswers.ts";

/** Every bundle cut through, all at one scale, thickest first: the one the chosen run or wire lies in stands first. */
export function Sections({ sections }: { sections: readonly SectionView[] }): ReactNode {
  const chosen = useBench((bench) => bench.chosen);
  const holds = (section: SectionView): boolean =>
    (chosen?.kind === "run" && section.runs.includes(chosen.id)) ||
    (chosen?.kind === "wire" && section.wires.includes(chosen.id));
  const shown = [...sections.filter(holds), ...sections.filter((section) => !holds(section))];
  return (
    <section aria-label="Bundles in section">
      <h2>Bundles in section</h2>
      <p className="note">
        {shown.length === 0
          ? "Nothing lies in a bundle yet: no run of the machine has wires in it. Survey has the runs."
          : "Twice life size. Full ring: the tightest packing found. Broken ring: as a hand lays it."}
      </p>
      <ul className="sections">
        {shown.map((section) => (
          <li key={section.name} className={holds(section) ? "section now" : "section"}>
            <button
              type="button"
              className="plain"
              onClick={() =>
                section.runs[0] !== undefined && choose({ kind: "run", id: section.runs[0] })
              }
            >
              <svg
                className="scene-svg"
                width={section.picture.widthMm * 4}
                height={section.picture.heightMm * 4}
                viewBox={`0 0 ${section.picture.widthMm} ${section.picture.heightMm}`}
                role="img"
                aria-label={`${section.name}, ${section.wires.length} wires`}
                dangerouslySetInnerHTML={{ __html: section.picture.svg }}
              />
            </button>
            <p className="section-places">{section.places}</p>
            <p>
              <button type="button" className="figure-link" onClick={() => showThickness(section)}>
                {printQuantity(section.asLaidMm, "mm")} as laid
              </button>{" "}
              <span className="note">
                bend at least {printQuantity(section.bend.fixed, "mm")},{" "}
                {printQuantity(section.bend.moving, "mm")} where it moves
              </span>
            </p>
            {section.sleeves[0] !== undefined && (
              <p className="note">sleeve: {section.sleeves.slice(0, 2).join(" or ")}</p>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

function showThickness({
  name,
  asLaidMm,
  tightestMm,
  asLaidFactor,
  source,
  wires,
}: SectionView): void {
  showSum({
    name: `bundle ${name}, as laid,`,
    result: printQuantity(asLaidMm, "mm"),
    equation: `${tightestMm.toFixed(2)} mm tightest × ${asLaidFactor.toFixed(2)}`,
    inputs: [
      { text: `${wires.length} wires packed`, from: "tightest packing found, counted steps" },
    ],
    note: source,
  });
}
