import type { ReactNode } from "react";
import { useBench } from "../../store/benchStore.ts";
import { BodyRow } from "./BodyRow.tsx";
import { BondForm } from "./BondForm.tsx";
import { BondRow } from "./BondRow.tsx";
import { NewBody } from "./NewBody.tsx";
import "./wiring.css";

/** Everything the current returns by: masses with their earth points, and the bonds between them. */
export function Earths(): ReactNode {
  const bodies = useBench((bench) => bench.document!.job.bodies);
  const bonds = useBench((bench) => bench.document!.job.bonds);
  return (
    <div className="earths">
      <section aria-label="Bonds">
        <h3 className="unknown-head">Bonds between masses</h3>
        <BondForm />
        {bonds.length === 0 && (
          <p className="note">None yet: every mass stands by itself, whatever it is bolted to.</p>
        )}
        <ul className="bond-list">
          {bonds.map((bond) => (
            <BondRow key={bond.id} bond={bond} />
          ))}
        </ul>
      </section>
      <section aria-label="Masses and earth points">
        <h3 className="unknown-head">Masses and their earth points</h3>
        <ul className="body-list">
          {bodies.map((body) => (
            <BodyRow key={body.id} body={body} />
          ))}
        </ul>
        <NewBody />
      </section>
    </div>
  );
}
