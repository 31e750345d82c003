import { useEffect, useState } from "react";
import { useBench } from "../../store/benchStore.ts";

type At = { readonly x: number; readonly y: number };

/** Where the slip of the thing chosen stands: where it was tapped, else beside it on the drawing, else at the edge of the sheet. */
export function useSlipPlace(): {
  readonly at: At | undefined;
  readonly onTap: (at: At) => void;
} {
  const chosen = useBench((bench) => bench.chosen);
  const [place, setPlace] = useState<{ readonly id: string; readonly at: At } | null>(null);
  const id = chosen?.id ?? "";
  useEffect(() => {
    setPlace((now) => {
      if (id === "" || now?.id === id) return now;
      return { id, at: besideDrawn(id) };
    });
  }, [id]);
  return {
    at: place?.at,
    onTap: (at) => setPlace({ id: useBench.getState().chosen?.id ?? "", at }),
  };
}

function besideDrawn(id: string): At {
  const drawn = document.querySelector(`.scene [data-id="${CSS.escape(id)}"]`);
  const box = drawn?.getBoundingClientRect();
  if (box !== undefined && box.width + box.height > 0) return { x: box.right, y: box.top };
  const sheet = document.getElementById("sheet")?.getBoundingClientRect();
  return { x: sheet?.right ?? 0, y: (sheet?.top ?? 0) + 40 };
}
