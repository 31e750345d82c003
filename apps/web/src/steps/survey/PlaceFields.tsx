import type { Station } from "@copperwright/engine";
import type { ReactNode } from "react";
import { QuantityField } from "../../entry/QuantityField.tsx";
import { useBench } from "../../store/benchStore.ts";
import { surveyEdit } from "./surveyEdit.ts";

const FAR_MM = 20_000;

/** Where a station stands on the side view, for those who would rather type than drag. Lengths are not touched by it. */
export function PlaceFields({ station }: { station: Station }): ReactNode {
  const at = useBench((bench) => bench.document!.job.layout.side?.[station.id] ?? null);
  if (at === null) return null;
  const put = (xMm: number, yMm: number): void =>
    void surveyEdit(`move ${station.name}`, { does: "place", station: station.id, xMm, yMm });
  return (
    <div className="slip-pair">
      <QuantityField
        label="on the drawing, rearward"
        value={at.xMm}
        unit="mm"
        least={-FAR_MM}
        most={FAR_MM}
        onValue={(xMm) => put(xMm, at.yMm)}
      />
      <QuantityField
        label="and down"
        value={at.yMm}
        unit="mm"
        least={-FAR_MM}
        most={FAR_MM}
        onValue={(yMm) => put(at.xMm, yMm)}
      />
    </div>
  );
}
