import type { ReactNode } from "react";
import { useBench } from "../../store/benchStore.ts";
import { Backup } from "./Backup.tsx";
import { Devices } from "./Devices.tsx";

/** What concerns the bench as a whole: copies of everything, and other devices on the workshop's network. */
export function BenchCare(): ReactNode {
  const role = useBench((bench) => bench.visitor?.role ?? "view");
  if (role !== "owner") return null;
  return (
    <section className="care" aria-label="The bench itself">
      <Backup />
      <Devices />
    </section>
  );
}
