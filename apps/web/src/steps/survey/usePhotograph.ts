import { useEffect, useState } from "react";
import { keepPhotograph, keptPhotograph } from "../../device/photographStore.ts";
import { useBench } from "../../store/benchStore.ts";

export type PhotographShown =
  | { readonly kind: "looking" }
  | { readonly kind: "shown"; readonly address: string }
  /** Neither this device nor the server has it: it is on the device that took it. */
  | { readonly kind: "elsewhere" };

const AGAIN_MS = 4000;

/** A photograph by its id: from this device where it is kept here, else from the server and then kept; asked for again while it is nowhere. */
export function usePhotograph(id: string | null): PhotographShown {
  const key = useBench((bench) => bench.document?.key ?? "");
  const [shown, setShown] = useState<PhotographShown & { readonly of: string | null }>({
    kind: "looking",
    of: null,
  });
  useEffect(() => {
    if (id === null) return;
    let isWanted = true;
    let address: string | null = null;
    let timer: ReturnType<typeof setTimeout> | null = null;
    const look = async (): Promise<void> => {
      const picture = await pictureOf(id, key).catch(() => null);
      if (!isWanted) return;
      if (picture === null) {
        setShown({ kind: "elsewhere", of: id });
        timer = setTimeout(() => void look(), AGAIN_MS);
        return;
      }
      address = URL.createObjectURL(picture);
      setShown({ kind: "shown", address, of: id });
    };
    void look();
    return () => {
      isWanted = false;
      if (timer !== null) clearTimeout(timer);
      if (address !== null) URL.revokeObjectURL(address);
    };
  }, [id, key]);
  return shown.of === id ? shown : { kind: "looking" };
}

async function pictureOf(id: string, key: string): Promise<Blob | null> {
  const kept = await keptPhotograph(id);
  if (kept !== null) return kept.picture;
  const answer = await fetch(`/api/photographs/${encodeURIComponent(id)}`);
  if (!answer.ok) return null;
  const picture = await answer.blob();
  await keepPhotograph({ id, key, name: "", picture, isWaiting: false, keptAtMs: Date.now() });
  return picture;
}
