import { useCallback, useEffect, useState } from "react";
import { keepLasting, lasting } from "../../device/deviceStore.ts";

const KEPT = "stock list";

/** The shop's list this device was given last; it is a shop's, not the job's, so it stays on the device. */
export function useStockText(): readonly [string | null, (text: string | null) => void] {
  const [text, setText] = useState<string | null>(null);
  useEffect(() => {
    void lasting<string>(KEPT).then(setText);
  }, []);
  const put = useCallback((next: string | null) => {
    setText(next);
    void keepLasting(KEPT, next);
  }, []);
  return [text, put];
}
