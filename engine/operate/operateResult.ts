/** What `operate` answers, field by field as docs/reference/contract says. All volts are to the battery's earthed post. */
export interface OperateState {
  readonly positions: Readonly<Record<string, string>>;
  readonly engine: { readonly mode: "stopped" | "cranking" | "running"; readonly speedRpm: number };
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

/** What the caller asks for; absent fields take their defaults and are filled in in the answer's `state`. */
export interface OperateRequest {
  readonly set?: Readonly<Record<string, string>>;
  readonly engine?: {
    readonly mode: "stopped" | "cranking" | "running";
    readonly speedRpm?: number;
  };
  readonly flash?: "on" | "off";
  readonly held?: readonly string[];
  readonly open?: readonly string[];
  readonly short?: readonly { readonly a: string; readonly b?: string; readonly ohm?: number }[];
  readonly extraOhm?: Readonly<Record<string, number>>;
  readonly battery?: "full" | "half" | "weak" | { readonly emfV: number };
  readonly ambientC?: number;
  readonly lampExponent?: number;
  readonly aged?: boolean;
}

export interface ElementRow {
  readonly id: string;
  readonly kind:
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
  readonly of: string;
  readonly nodes: readonly [string, string];
  readonly law: Readonly<Record<string, unknown>>;
  readonly currentA: number;
  readonly powerW: number;
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
}

export interface LampRow {
  readonly part: string;
  /** The two pins, A-E. */
  readonly filament: string;
  readonly v: number;
  readonly currentA: number;
  readonly powerW: number;
  readonly ratedW: number;
  readonly relativeLight: number;
  readonly lit: boolean;
  readonly expected: boolean | null;
}

/** Every other load (horn, heater, coil, motor, box) in the same terms; an addition to the contract. */
export interface LoadRow {
  readonly part: string;
  readonly element: string;
  readonly v: number;
  readonly currentA: number;
  readonly powerW: number;
  readonly ratedW: number;
  readonly works: boolean;
  readonly expected: boolean | null;
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

export interface OperateSolution {
  readonly state: OperateState;
  readonly reference: { readonly pin: string };
  readonly converged: boolean;
  readonly iterationCount: number;
  readonly kclResidualA: number;
  readonly relayRoundCount: number;
  readonly pins: readonly {
    readonly pin: string;
    readonly node: string;
    readonly net: string;
    readonly v: number | null;
    readonly floating: boolean;
  }[];
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
  /** part:filament of every lamp lit that should not be. */
  readonly strayLit: readonly string[];
  readonly afterFuses: readonly {
    readonly atS: readonly [number | null, number | null];
    readonly opened: readonly string[];
    readonly state: OperateState;
  }[];
}
