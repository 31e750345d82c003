import { useEffect, useState } from "react";
import { front } from "../engine/engineClient.ts";
import { useBench } from "./benchStore.ts";

const REST_MS = 400;

/** The job's text for work that takes seconds: taken up once the hand has rested for a moment. */
export function useJobText(): string | null {
  const edit = useBench((bench) => bench.editCount);
  const [text, setText] = useState<string | null>(null);
  useEffect(() => {
    const timer = setTimeout(() => void front.text().then(setText), text === null ? 0 : REST_MS);
    return () => clearTimeout(timer);
  }, [edit]);
  return text;
}
