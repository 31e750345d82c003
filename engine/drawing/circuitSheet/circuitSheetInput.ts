import type { ContactTableInput } from "../contactTable.ts";
import type { MarkSubject, WireColours } from "../scene.ts";
import type { SymbolName } from "../symbolName.ts";

/** A piece of wire, with what is written beside it. */
export interface WireStep {
  readonly kind: "wire";
  readonly id: string;
  /** Pins its upper and its lower end lie on. */
  readonly pinAbove?: string | undefined;
  readonly pinBelow?: string | undefined;
  readonly number: string;
  readonly colours: WireColours | null;
  readonly areaMm2: number | null;
  /** "N/U": letters of the job's letter system. */
  readonly code: string;
  /** "brown, blue". */
  readonly word: string;
  /** "1.00 mm²", or what is to be said where it is not known. */
  readonly size: string;
  /** Voltage to be read on this wire: "12.3 V". Absent: no test point. */
  readonly expected?: string | undefined;
}

/** A part in the path, at rest, drawn by its symbol. */
export interface PartStep {
  readonly kind: "part";
  readonly id: string;
  readonly symbol: SymbolName;
  readonly name: string;
  /** Rating and where it is: "15 A blade, left side panel". */
  readonly note: string;
  /** Pins of the part at the upper and lower end of the symbol. */
  readonly pinAbove?: string | undefined;
  readonly pinBelow?: string | undefined;
  /** Pins of the symbol the path uses; absent: its upper and lower one. The blade of `changeOver` rests on `left`. */
  readonly symbolPins?: readonly [above: string, below: string] | undefined;
  /** Upside down: a battery on a positive-earth machine, a diode the other way. */
  readonly isTurned?: boolean | undefined;
  /** Of a part drawn in two places, as a relay or the filaments of one lamp are. */
  readonly half?: PartHalf | undefined;
  /** Where its other half stands; worded while the sheet is drawn. */
  readonly crossNote?: string | undefined;
  /** Always beside a switch. */
  readonly contacts?: ContactTableInput | undefined;
}

/** Which half of a part a step shows, and how the other is told of. */
export interface PartHalf {
  /** "coil", "contact", or the pin of a filament. */
  readonly is: string;
  /** "contact": what the other half is called. */
  readonly other: string;
  /** Where the other half stands when it is not on these sheets: "contact on sheet headlamp". */
  readonly elsewhere: string;
}

/** One cavity of a plug and socket. The arc of the symbol stands on the live side. */
export interface ConnectorStep {
  readonly kind: "connector";
  /** Half of the cavity on the live side: "X2.4s". */
  readonly id: string;
  /** "X2". */
  readonly connector: string;
  /** Connector and cavity: "X2.4". */
  readonly name: string;
  readonly place: string;
  readonly liveSide: "above" | "below";
}

/** A place where other columns part from this one or come back to it. */
export interface JointStep {
  readonly kind: "joint";
  readonly id: string;
  /** Absent: a joint of the loom. */
  readonly of?: MarkSubject | undefined;
  /** Which side of the line its name stands at; absent: left. */
  readonly side?: "right" | undefined;
  /** Written beside the dot; empty where the place has no name, as at a terminal. */
  readonly name: string;
}

export type CircuitStep = WireStep | PartStep | ConnectorStep | JointStep;

/** A joint of another column. */
export interface JointPlace {
  readonly column: string;
  readonly joint: string;
}

export type ColumnStart =
  | { readonly kind: "feed" }
  /** Drawn across where the columns are neighbours, else told in words at both ends. */
  | ({ readonly kind: "branch" } & JointPlace)
  /** From somewhere that is not on this sheet: "from F2, sheet C5". */
  | { readonly kind: "reference"; readonly label: string };

export type ColumnEnd =
  | { readonly kind: "earth" }
  /** The frame of the machine as the return: "to frame at the headlamp bracket". */
  | { readonly kind: "frame"; readonly label: string }
  | ({ readonly kind: "join" } & JointPlace)
  | { readonly kind: "reference"; readonly label: string };

/** One current path, from the feed down to the earth. */
export interface CircuitColumn {
  readonly id: string;
  readonly start: ColumnStart;
  readonly steps: readonly CircuitStep[];
  readonly end: ColumnEnd;
}

/** One circuit: its rails and its current paths, in the order they stand. A column may branch from or join any other. */
export interface CircuitSheetInput {
  /** At the upper rail: "live −, behind F0 20 A". */
  readonly feedLabel: string;
  /** At the lower rail: "earth +, 0 V". */
  readonly earthLabel: string;
  readonly columns: readonly CircuitColumn[];
}
