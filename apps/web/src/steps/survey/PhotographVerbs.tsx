import { type ChangeEvent, type ReactNode, useState } from "react";
import { base64Of } from "../../device/base64Of.ts";
import { LengthField } from "../../entry/LengthField.tsx";
import { QuantityField } from "../../entry/QuantityField.tsx";
import { server } from "../../server/serverApi.ts";
import { say, useBench } from "../../store/benchStore.ts";
import { surveyEdit } from "./surveyEdit.ts";

interface Sent {
  readonly id: string;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** About the length of a machine: where a photograph begins before it is scaled. */
const FIRST_WIDTH_MM = 2000;
const FAR_MM = 20_000;

/** The photograph under the side view: taken from a file or the camera, scaled by two points or by its width, moved, taken away. */
export function PhotographVerbs({
  isScaling,
  onScaling,
}: {
  isScaling: boolean;
  onScaling: (isScaling: boolean) => void;
}): ReactNode {
  const photograph = useBench((bench) => bench.document!.job.layout.photograph ?? null);
  const set = (what: string, next: typeof photograph): void =>
    void surveyEdit(what, { does: "photograph", photograph: next ?? undefined });
  return (
    <div className="photo-verbs">
      <Chooser isFirst={photograph === null} />
      {photograph !== null && (
        <>
          <button
            type="button"
            className={isScaling ? "act" : "act filled"}
            aria-pressed={isScaling}
            onClick={() => {
              onScaling(!isScaling);
              say(isScaling ? null : "Tap the first of two points whose distance you know.");
            }}
          >
            {isScaling ? "leave it as it is" : "scale it by two points"}
          </button>
          <LengthField
            label="or: its whole width"
            valueMm={photograph.widthMm}
            onLength={(widthMm) => set("scale the photograph", { ...photograph, widthMm })}
          />
          <QuantityField
            label="its left edge behind the drawing's nought"
            unit="mm"
            least={-FAR_MM}
            most={FAR_MM}
            value={photograph.xMm}
            onValue={(xMm) => set("move the photograph", { ...photograph, xMm })}
          />
          <QuantityField
            label="its upper edge below nought"
            unit="mm"
            least={-FAR_MM}
            most={FAR_MM}
            value={photograph.yMm}
            onValue={(yMm) => set("move the photograph", { ...photograph, yMm })}
          />
          <button
            type="button"
            className="act"
            onClick={() => set("take the photograph away", null)}
          >
            take it away
          </button>
        </>
      )}
    </div>
  );
}

function Chooser({ isFirst }: { isFirst: boolean }): ReactNode {
  const [isBusy, setBusy] = useState(false);
  const choose = async (event: ChangeEvent<HTMLInputElement>): Promise<void> => {
    const file = event.target.files?.[0];
    event.target.value = "";
    if (file === undefined) return;
    setBusy(true);
    await send(file);
    setBusy(false);
  };
  return (
    <label className={isFirst ? "act filled file-act" : "act file-act"}>
      {isBusy
        ? "sending the photograph"
        : isFirst
          ? "lay a photograph underneath"
          : "another photograph"}
      <input
        type="file"
        accept="image/jpeg,image/png,image/webp"
        className="only-spoken"
        disabled={isBusy}
        onChange={(event) => void choose(event)}
      />
    </label>
  );
}

async function send(file: File): Promise<void> {
  const { document } = useBench.getState();
  if (document === null) return;
  const answer = await server<Sent>("POST", `/jobs/${document.key}/photographs`, {
    name: file.name.slice(0, 120),
    base64: await base64Of(file),
  });
  if (answer.kind === "away")
    return say("A photograph needs the server; it cannot be reached now.");
  if (answer.kind === "refused") return say(answer.refusal.message);
  const { id, widthPx, heightPx } = answer.value;
  const places = Object.values(document.job.layout.side ?? {});
  const xMm = places.length === 0 ? 0 : Math.min(...places.map((at) => at.xMm)) - 100;
  const yMm = places.length === 0 ? 0 : Math.min(...places.map((at) => at.yMm)) - 100;
  await surveyEdit("lay a photograph underneath", {
    does: "photograph",
    photograph: { id, widthPx, heightPx, xMm, yMm, widthMm: FIRST_WIDTH_MM },
  });
}
