import { batteryOf, presentParts } from "../../job/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Judge } from "../judge.ts";
import { carrying, reachOver } from "../reachOver.ts";

/** A fuse between the earthed post and the frame guards nothing: a live wire that touches the frame goes round it. */
export const fuseInEarthedPole: Judge = (design) => {
  const posts = batteryOf(design.job);
  if (posts === null) return [];
  const live = reachOver(design, [posts.livePost], carrying(design.job));
  const earthed = reachOver(design, [posts.earthedPost], (kind) => kind !== "fuse" && isWire(kind));
  return presentParts(design.job)
    .filter((part) => part.kind === "fuse")
    .filter(({ id, pins }) => {
      const refs = pins.map((pin) => `${id}.${pin.id}`);
      return refs.some((pin) => earthed.has(pin)) && !refs.some((pin) => live.has(pin));
    })
    .map(({ id }) =>
      findingOf({
        code: "fuse-in-earthed-pole",
        severity: "stop",
        subject: { kind: "fuse", id },
        numbers: { post: posts.earthedPost, livePost: posts.livePost },
      }),
    );
};

const isWire = (kind: string): boolean => kind === "wire" || kind === "joint" || kind === "bond";
