/** What kind of cable wall the person named beside the size, if any. */
export type WallWord = "thin" | "thick" | "battery";

/** A way a person named a wire, and the numbers in it. No table has been asked yet. */
export type WireName =
  | { readonly kind: "strands"; readonly strandCount: number; readonly strandDiameterMm: number }
  /** Strands given by British gauge number: `23/36`. */
  | { readonly kind: "strands-swg"; readonly strandCount: number; readonly gauge: string }
  | { readonly kind: "area"; readonly areaMm2: number }
  | { readonly kind: "awg"; readonly gaugeIndex: number; readonly isVehicleCable: boolean }
  | { readonly kind: "swg"; readonly gauge: string }
  /** "16 gauge": whose gauge was not said. */
  | { readonly kind: "gauge"; readonly gaugeIndex: number; readonly isVehicleCable: boolean }
  | { readonly kind: "auto"; readonly sizeMm: number }
  | { readonly kind: "copper"; readonly diameterMm: number }
  | { readonly kind: "insulation"; readonly diameterMm: number }
  /** A make by its letters: `GXL 16`, `AV 0.85`. No size: `size` is null. */
  | { readonly kind: "make"; readonly family: string; readonly size: string | null };

/** Why a text is not the name of a wire. */
export type WireNameRefusal =
  | "unread"
  | "too-long"
  | "area-or-diameter"
  | "bare-number"
  | "strand-unit"
  | "strand-bounds"
  | "size-bounds";

export type WireNameReading =
  | { readonly ok: true; readonly name: WireName; readonly wall: WallWord | null }
  | { readonly ok: false; readonly reason: WireNameRefusal; readonly value: number | null };
