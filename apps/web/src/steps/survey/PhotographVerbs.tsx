import { type ChangeEvent, type ReactNode, useState } from "react";
import { dropPhotograph } from "../../device/photographStore.ts";
import { smallerPicture } from "../../device/smallerPicture.ts";
import { faultText } from "../../engine/faultText.ts";
import { LengthField } from "../../entry/LengthField.tsx";
import { QuantityField } from "../../entry/QuantityField.tsx";
import {
  forgetWaiting,
  putPhotograph,
  sendPhotographs,
  useWaitingPhotographs,
} from "../../server/photographSending.ts";
import { say, useBench } from "../../store/benchStore.ts";
import { surveyEdit } from "./surveyEdit.ts";
import { usePhotograph } from "./usePhotograph.ts";

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
      {photograph !== null && <WhereItIs id={photograph.id} />}
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
    await lay(file);
    setBusy(false);
  };
  return (
    <label className={isFirst ? "act filled file-act" : "act file-act"}>
      {isBusy
        ? "keeping the photograph"
        : isFirst
          ? "lay a photograph underneath"
          : "another photograph"}
      <input
        type="file"
        accept="image/jpeg,image/png,image/webp,image/avif"
        className="only-spoken"
        disabled={isBusy}
        onChange={(event) => void choose(event)}
      />
    </label>
  );
}

/** Says where the photograph is while not everybody can see it. */
function WhereItIs({ id }: { id: string }): ReactNode {
  const waiting = useWaitingPhotographs((state) => state.waiting[id]);
  const shown = usePhotograph(id);
  const words =
    waiting !== undefined
      ? (waiting.refusal ?? "kept on this device, not yet on the server")
      : shown.kind === "elsewhere"
        ? "not yet on the server: it is on the device that took it"
        : null;
  if (words === null) return null;
  return (
    <p className="note" role="status">
      The photograph: {words}
    </p>
  );
}

/** On the device first, shown at once, then sent: a photograph is taken where the network ends. */
async function lay(file: File): Promise<void> {
  const { document } = useBench.getState();
  if (document === null) return;
  const smaller = await smallerPicture(file);
  if (smaller === null) {
    say("That is no photograph this browser can read. Take a JPEG, PNG, WebP or AVIF picture.");
    return;
  }
  const { picture, widthPx, heightPx } = smaller;
  const id = `here-${crypto.randomUUID()}`;
  const name = file.name.slice(0, 120);
  const about = { id, key: document.key, name, picture, isWaiting: true, keptAtMs: Date.now() };
  try {
    await putPhotograph(about);
  } catch (error) {
    say(`This device has no room for the photograph: ${faultText(error)}`);
    return;
  }
  const places = Object.values(document.job.layout.side ?? {});
  const xMm = places.length === 0 ? 0 : Math.min(...places.map((at) => at.xMm)) - 100;
  const yMm = places.length === 0 ? 0 : Math.min(...places.map((at) => at.yMm)) - 100;
  const isLaid = await surveyEdit("lay a photograph underneath", {
    does: "photograph",
    photograph: { id, widthPx, heightPx, xMm, yMm, widthMm: FIRST_WIDTH_MM },
  });
  if (isLaid) {
    void sendPhotographs();
    return;
  }
  forgetWaiting(id);
  await dropPhotograph(id);
}
