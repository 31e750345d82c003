/** What `operate` answers, field by field as docs/reference/contract says. All volts are to the battery's earthed post. */
export type EngineMode = "stopped" | "cranking" | "running";

export interface OperateState {
  readonly positions: Readonly<Record<string, string>>;
  readonly engine: { readonly mode: EngineMode; readonly speedRpm: number };
  readonly flash: "on" | "off";
  readonly held: readonly string[];
  readonly battery: { readonly label: string; readonly emfV: number; readonly internalOhm: number };
  readonly ambientC: number;
  readonly conductorC: number;
  readonly open: readonly string[];
  readonly short: readonly { readonly a: string; readonly b: string; readonly ohm: number }[];
  readonly extraOhm: Readonly<Record<string, number>>;
  readonly lampExponent: number;
  readonly aged: boolean;
}

/** A charge by name, or the volts themselves. */
export type BatteryRequest =
  | "full"
  | "half"
  | "weak"
  | { readonly emfV: number; readonly internalOhm?: number };

/** What the caller asks for; absent fields take their defaults and are filled in in the answer's `state`. */
export interface OperateRequest {
  readonly set?: Readonly<Record<string, string>>;
  readonly engine?: { readonly mode: EngineMode; readonly speedRpm?: number };
  readonly flash?: "on" | "off";
  readonly held?: readonly string[];
  /** Wires, pins, bonds or fuses that do not conduct. */
  readonly open?: readonly string[];
  /** `b` absent or "earth": the main body. `ohm` absent: a dead short. */
  readonly short?: readonly { readonly a: string; readonly b?: string; readonly ohm?: number }[];
  readonly extraOhm?: Readonly<Record<string, number>>;
  readonly battery?: BatteryRequest;
  readonly ambientC?: number;
  /** Temperature of all copper, °C; absent: 20. */
  readonly conductorC?: number;
  readonly lampExponent?: number;
  readonly aged?: boolean;
}

export type ElementKind =
  | "wire"
  | "contact"
  | "fuse"
  | "joint"
  | "bond"
  | "filament"
  | "emf"
  | "diode"
  | "coil"
  | "resistor"
  | "curve"
  | "leak"
  | "short";

export interface ElementRow {
  readonly id: string;
  readonly kind: ElementKind;
  readonly of: string;
  readonly nodes: readonly [string, string];
  readonly law: Readonly<Record<string, unknown>>;
  readonly currentA: number;
  readonly powerW: number;
}

export interface PinRow {
  readonly pin: string;
  readonly node: string;
  /** "dc", or the alternating net the pin is on, "ac1" ... */
  readonly net: string;
  /** Null where floating, or where the net was not solved. On an ac net: rms, unsigned, against the same reference. */
  readonly v: number | null;
  readonly floating: boolean;
}

export interface WireRow {
  readonly wire: string;
  readonly from: string;
  readonly to: string;
  readonly currentA: number;
  /** Null with `why` when the length is not known. */
  readonly ohm: number | null;
  readonly dropV: number | null;
  readonly lossW: number | null;
  readonly conductorC: number;
  readonly why?: string;
  /** Absent: direct current. "ac": rms, unsigned. */
  readonly kind?: "ac";
  /** On an earth wire shared with an ac net: its alternating current, A rms, beside `currentA` (add in quadrature for heat). */
  readonly acA?: number;
}

export interface LampRow {
  readonly part: string;
  /** The two pins, A-E. */
  readonly filament: string;
  readonly v: number;
  readonly currentA: number;
  readonly powerW: number;
  readonly ratedW: number;
  /** To the flux at the anchor; `relativeLightLow` by the steeper published law, so that the two make a band. */
  readonly relativeLight: number;
  readonly relativeLightLow: number;
  /** Which point the filament's law goes through. */
  readonly anchor: "test point of the job" | "test point of the table" | "nominal";
  readonly lit: boolean;
  readonly expected: boolean | null;
  readonly kind?: "ac";
  /** Alternating net not solved: nothing is known of it. */
  readonly why?: string;
}

/** Every other load (horn, heater, coil, motor, box) in the same terms; an addition to the contract. */
export interface LoadRow {
  readonly part: string;
  readonly element: string;
  readonly v: number;
  readonly currentA: number;
  readonly powerW: number;
  /** Nominal volts squared over its resistance. */
  readonly ratedW: number;
  /** At least a quarter of that. */
  readonly works: boolean;
  readonly expected: boolean | null;
  readonly kind?: "ac";
  readonly why?: string;
}

export interface RelayRow {
  readonly part: string;
  readonly coilV: number;
  readonly pullInV: number;
  readonly dropOutV: number;
  readonly pulled: boolean;
  readonly buzzing: boolean;
}

export interface FuseRow {
  readonly part: string;
  readonly currentA: number;
  readonly ratingA: number;
  readonly opensMinS: number | null;
  readonly opensMaxS: number | null;
}

/** A charging source as it worked in this state. */
export interface SupplyRow {
  readonly part: string;
  readonly regulator: string | null;
  readonly outputV: number;
  /** Given to the machine, A; ≥ 0. */
  readonly currentA: number;
  /** What it could give at this speed into these volts without its regulator; null where its line is not known. */
  readonly availableA: number | null;
  readonly regulating: boolean;
  /** Of each alternating lead, A rms; null for a dynamo and an alternator with its own diodes. */
  readonly phaseA: number | null;
  /** Why it gave nothing, or what was assumed. */
  readonly why: string | null;
}

/** A set of pins that belong together electrically as to the kind of current. */
export interface NetRow {
  readonly net: string;
  readonly kind: "dc" | "ac";
  readonly pins: readonly string[];
  /** Generator and winding pins that feed it. */
  readonly from: string | null;
  readonly solved: boolean;
  /** Pins one after the other by which an ac net meets the battery's live side; null: they never meet. */
  readonly meetsDcThrough: readonly string[] | null;
  readonly why: string | null;
  /** The net solved apart: elements that end on it, rms and unsigned. */
  readonly elements: readonly ElementRow[];
}

export interface AfterFuse {
  /** Shortest and longest time since the state began, s; null: no longest time is promised. */
  readonly atS: readonly [number | null, number | null];
  readonly opened: readonly string[];
  readonly state: OperateState;
  readonly solution: Omit<OperateSolution, "afterFuses" | "afterFusesByMin">;
}

export interface OperateSolution {
  readonly state: OperateState;
  readonly reference: { readonly pin: string };
  readonly converged: boolean;
  readonly iterationCount: number;
  readonly kclResidualA: number;
  readonly relayRoundCount: number;
  /** Rounds of what is controlled from elsewhere: sense wire, cut-out, exciter. */
  readonly supplyRoundCount: number;
  readonly pins: readonly PinRow[];
  readonly elements: readonly ElementRow[];
  readonly wires: readonly WireRow[];
  readonly lamps: readonly LampRow[];
  readonly loads: readonly LoadRow[];
  readonly relays: readonly RelayRow[];
  readonly fuses: readonly FuseRow[];
  readonly batteries: readonly {
    readonly part: string;
    readonly currentA: number;
    readonly terminalV: number;
  }[];
  readonly supplies: readonly SupplyRow[];
  readonly nets: readonly NetRow[];
  /** part:filament of every lamp lit that should not be. */
  readonly strayLit: readonly string[];
  /** The state settled from all relays pulled came out otherwise: which relays, lamps and loads then differ. Null: the same. */
  readonly whenHeld: {
    readonly pulled: readonly string[];
    readonly lit: readonly string[];
    readonly dead: readonly string[];
  } | null;
  readonly afterFuses: readonly AfterFuse[];
  /** The same taken by the shortest times, where another fuse then goes first; empty where the order is the same. */
  readonly afterFusesByMin: readonly AfterFuse[];
}
