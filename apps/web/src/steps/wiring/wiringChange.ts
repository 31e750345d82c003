import type { Bond, Job } from "@copperwright/engine";

/** A place along the loom. */
export type Where =
  | { readonly kind: "station"; readonly station: string }
  /** So many mm from the run's `from` station. */
  | { readonly kind: "run"; readonly run: string; readonly mm: number };

export type JointKind = Job["joints"][number]["kind"];
export type Covering = NonNullable<Job["looms"][number]["covering"]>;

/** What is changed about the places where wires meet, are earthed and are bundled. */
export type WiringChange =
  | {
      readonly does: "joint";
      /** Null: a joint by itself, for wires to come. */
      readonly wire: string | null;
      readonly kind: JointKind;
      readonly name: string;
      readonly where: Where | null;
    }
  | {
      readonly does: "connector";
      readonly wires: readonly string[];
      readonly into: string | null;
      readonly kind: string;
      readonly name: string;
      readonly station: string | null;
    }
  | { readonly does: "through"; readonly wire: string; readonly pin: string }
  | { readonly does: "place-joint"; readonly id: string; readonly where: Where | null }
  | {
      readonly does: "bond";
      readonly from: string;
      readonly to: string;
      readonly kind: Bond["kind"];
    }
  | {
      readonly does: "point";
      readonly body: string;
      readonly station?: string;
      readonly name?: string;
    }
  | {
      readonly does: "loom";
      readonly name: string;
      readonly covering?: Covering;
      readonly wires: readonly string[];
    }
  | {
      readonly does: "put-in-loom";
      readonly loom: string | null;
      readonly wires: readonly string[];
    }
  | { readonly does: "remove-whole"; readonly list: "joints" | "connectors"; readonly id: string };
