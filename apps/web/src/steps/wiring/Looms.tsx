import { type ReactNode, useState } from "react";
import { useBench } from "../../store/benchStore.ts";
import { LoomRow } from "./LoomRow.tsx";
import { NewLoom } from "./NewLoom.tsx";
import "./wiring.css";

/** What comes off the loom board in one piece: names, coverings, and which wires lie in which. */
export function Looms(): ReactNode {
  const looms = useBench((bench) => bench.document!.job.looms);
  const [open, setOpen] = useState<string | null>(null);
  return (
    <div className="looms">
      <NewLoom />
      {looms.length === 0 && <p className="note">No loom yet: every wire lies by itself.</p>}
      <ul className="loom-list">
        {looms.map((loom) => (
          <LoomRow
            key={loom.id}
            loom={loom}
            isOpen={open === loom.id}
            onOpen={() => setOpen(open === loom.id ? null : loom.id)}
          />
        ))}
      </ul>
    </div>
  );
}
