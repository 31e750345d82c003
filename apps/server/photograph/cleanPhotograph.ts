import { oneAtATime } from "../api/oneAtATime.ts";
import { type Refused, refused } from "../api/refuse.ts";
import { sha256Of } from "../storage/index.ts";
import type { Photograph } from "../storage/storage.ts";
import { pictureDecoder } from "./pictureDecoder.ts";
import { pictureKind } from "./pictureKind.ts";

/** Longest side of what is kept, in points: a wiring photograph printed on A4 at 220 points an inch. */
const LONGEST_SIDE_PX = 2560;
const MEGAPIXEL = 1_000_000;
/** Most points that are decoded. A file of a few kilobytes can claim to be a picture of gigabytes. */
export const MOST_MEGAPIXELS = 60;
const QUALITY = 82;
const LONGEST_S = 20;

const inTurn = oneAtATime();

export type PhotographCleaned = { readonly ok: true; readonly photograph: Photograph } | Refused;

/**
 * What a device sent, as a picture of our own: decoded within bounds, turned as its orientation says, made no larger than needed, and
 * written anew as JPEG without anything but its points. Place, time, maker and thumbnails of the original are gone with it.
 */
export function cleanPhotograph(bytes: Uint8Array): Promise<PhotographCleaned> {
  if (pictureKind(bytes) === null) {
    return Promise.resolve(refused("photograph-not-a-picture", {}));
  }
  return inTurn("photograph", () => cleaned(bytes));
}

async function cleaned(bytes: Uint8Array): Promise<PhotographCleaned> {
  const sharp = await pictureDecoder();
  try {
    const picture = sharp(bytes, {
      limitInputPixels: MOST_MEGAPIXELS * MEGAPIXEL,
      failOn: "error",
    });
    const { width, height } = await picture.metadata();
    if (width * height > MOST_MEGAPIXELS * MEGAPIXEL) return tooLarge();
    const { data, info } = await picture
      .autoOrient()
      .resize({
        width: LONGEST_SIDE_PX,
        height: LONGEST_SIDE_PX,
        fit: "inside",
        withoutEnlargement: true,
      })
      .flatten({ background: "white" })
      .toColourspace("srgb")
      .jpeg({ quality: QUALITY })
      .timeout({ seconds: LONGEST_S })
      .toBuffer({ resolveWithObject: true });
    const photograph = {
      sha256: sha256Of(data),
      widthPx: info.width,
      heightPx: info.height,
      bytes: data,
    };
    return { ok: true, photograph };
  } catch (error) {
    const why = error instanceof Error ? error.message : "";
    return /pixel limit/i.test(why) ? tooLarge() : refused("photograph-broken", {});
  }
}

const tooLarge = (): Refused => refused("photograph-too-large", { limit: MOST_MEGAPIXELS });

/** Whether bytes are a photograph as this file makes them: a JPEG within bounds that carries nothing but points. */
export async function isCleanPhotograph(bytes: Uint8Array): Promise<boolean> {
  if (pictureKind(bytes) !== "jpeg") return false;
  return inTurn("photograph", async () => {
    const sharp = await pictureDecoder();
    try {
      const picture = sharp(bytes, { limitInputPixels: MOST_MEGAPIXELS * MEGAPIXEL });
      const { format, width, height, exif, xmp, iptc, icc } = await picture.metadata();
      const isBare = [exif, xmp, iptc, icc].every((found) => found === undefined);
      return format === "jpeg" && isBare && Math.max(width, height) <= LONGEST_SIDE_PX;
    } catch {
      return false;
    }
  });
}
