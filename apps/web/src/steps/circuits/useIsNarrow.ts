import { useEffect, useState } from "react";

const PHONE = "(max-width: 719px)";

/** Whether the phone's frame is in use. */
export function useIsNarrow(): boolean {
  const [isNarrow, setNarrow] = useState(() => matchMedia(PHONE).matches);
  useEffect(() => {
    const query = matchMedia(PHONE);
    const put = (): void => setNarrow(query.matches);
    query.addEventListener("change", put);
    return () => query.removeEventListener("change", put);
  }, []);
  return isNarrow;
}
