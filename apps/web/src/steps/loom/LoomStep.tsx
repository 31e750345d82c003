import { type ReactNode, useEffect } from "react";
import { SceneView } from "../../drawing/SceneView.tsx";
import { useAnswer } from "../../engine/useAnswer.ts";
import { noteStep } from "../../store/benchStore.ts";
import { Looms } from "../wiring/Looms.tsx";
import { Joints } from "./Joints.tsx";
import "./loom.css";
import { Sections } from "./Sections.tsx";
import { WayOver } from "./WayOver.tsx";
import { WireRoutes } from "./WireRoutes.tsx";

const KINDS = ["run", "station"] as const;

/** The loom as a thing: where it runs, how thick it is, what covers it, where its joints lie. */
export default function LoomStep(): ReactNode {
  const { answer: machine } = useAnswer("loomMachine", undefined);
  const { answer: sections, fault } = useAnswer("loomSections", undefined);
  useEffect(() => {
    const thickest = sections?.[0];
    if (thickest !== undefined) {
      noteStep("loom", { text: `${thickest.asLaidMm.toFixed(0)} mm`, box: "half" });
    }
  }, [sections]);
  return (
    <div className="loom">
      <h1 className="only-spoken">Loom</h1>
      {machine !== null && (
        <div className="loom-machine">
          <SceneView
            picture={machine.picture}
            label="The loom on the machine"
            kinds={KINDS}
            over={<WayOver rings={machine.rings} />}
          />
        </div>
      )}
      <WireRoutes />
      {fault !== null && <p role="alert">The sections could not be drawn: {fault}</p>}
      <Sections sections={sections ?? []} />
      <section aria-label="Looms and coverings">
        <h2>Looms and coverings</h2>
        <Looms />
      </section>
      <Joints />
    </div>
  );
}
