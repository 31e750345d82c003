import type * as z from "zod";
import type { jobSchema } from "./jobSchema.ts";

/** Mapping keeps arrays arrays and pairs pairs, each readonly. */
type ReadonlyDeep<T> = T extends object ? { readonly [Key in keyof T]: ReadonlyDeep<T[Key]> } : T;

/** A job as read: the whole document, deeply readonly. */
export type Job = ReadonlyDeep<z.infer<typeof jobSchema>>;

export type Machine = Job["machine"];
export type Supply = Job["supply"];
export type Station = Job["stations"][number];
export type Run = Job["runs"][number];
export type Surroundings = NonNullable<Station["surroundings"]>;
export type Body = Job["bodies"][number];
export type Bond = Job["bonds"][number];
export type Part = Job["parts"][number];
export type PartKind = Part["kind"];
/** The part of one kind: `PartOf<"fuse">`. */
export type PartOf<Kind extends PartKind> = Extract<Part, { readonly kind: Kind }>;
export type Pin = Part["pins"][number];
export type FlyLead = NonNullable<Pin["flyLead"]>;
export type Joint = Job["joints"][number];
export type Connector = Job["connectors"][number];
export type Wire = Job["wires"][number];
export type WireEnd = NonNullable<Wire["fromEnd"]>;
export type Status = Wire["status"];
export type Colour = NonNullable<Wire["colour"]>;
export type Circuit = Job["circuits"][number];
export type DropClass = Circuit["dropClass"];
export type Loom = Job["looms"][number];
export type Intent = Job["intents"][number];
export type NamedState = Job["states"][number];
export type Exclusion = Job["exclusions"][number];
export type Decisions = Job["decisions"];
export type Filament = PartOf<"lamp">["filaments"][number];
export type Basis = "measured" | "estimated" | "chosen" | "stated";
export interface Valued {
  readonly value: number;
  readonly basis: Basis;
  readonly by?: string | undefined;
  readonly date?: string | undefined;
  readonly entered?: string | undefined;
}
