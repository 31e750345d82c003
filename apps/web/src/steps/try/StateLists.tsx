import { printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { WireSwatch } from "../../frame/WireSwatch.tsx";
import { choose, showSum, useBench } from "../../store/benchStore.ts";
import { ampText } from "./ampText.ts";
import { Choice } from "./EngineControl.tsx";
import { useTry } from "./tryStore.ts";
import type { TryMachine, TryWire } from "./worker/tryMachine.ts";
import type { Shown } from "./worker/tryState.ts";
import type { LampView, LoadView, TryView, WireView } from "./worker/tryView.ts";

const SHOWN = ["current", "drop", "temperature"] as const;

/** The same in words and figures: lamps and loads that work, and every wire with what is chosen to be shown. */
export function StateLists({ view, machine }: { view: TryView; machine: TryMachine }): ReactNode {
  const shows = useTry((bench) => bench.shows);
  return (
    <div className="try-lists">
      <section aria-label="Lamps and loads">
        <h2>Lit and working</h2>
        <ul>
          {view.lamps.filter(isTold).map((lamp) => (
            <LampRow key={`${lamp.part} ${lamp.filament}`} lamp={lamp} />
          ))}
          {view.loads
            .filter(({ works }) => works)
            .map((load) => (
              <LoadRow key={`${load.part} ${load.element}`} load={load} />
            ))}
        </ul>
        {!view.lamps.some(isTold) && !view.loads.some(({ works }) => works) && (
          <p className="note">Nothing lights and nothing works in this state.</p>
        )}
        {view.notes.map((note) => (
          <p key={note} className="try-note">
            {note}
          </p>
        ))}
      </section>
      <section aria-label="Wires">
        <h2>Wires</h2>
        <WireRows wires={view.wires} shows={shows} machine={machine} />
      </section>
    </div>
  );
}

/** What rule, side view and list tell of every wire. */
export function ShownChoice(): ReactNode {
  const shows = useTry((bench) => bench.shows);
  return (
    <div className="try-shown">
      <h3>Wires show</h3>
      <Choice
        label="What wires show"
        words={SHOWN}
        now={shows}
        onWord={(word) => useTry.setState({ shows: word })}
      />
    </div>
  );
}

const isTold = ({ lit, expected, why }: LampView): boolean =>
  lit || expected === true || why !== null;

function LampRow({ lamp }: { lamp: LampView }): ReactNode {
  const { part, filament, name, lightPercent, lit, expected } = lamp;
  return (
    <li className="try-row">
      <button type="button" className="plain" onClick={() => choose({ kind: "part", id: part })}>
        {name} <span className="note">{`${part}:${filament}`}</span>
      </button>
      <span className="note">
        {lamp.why ??
          (expected === false && lit
            ? "not asked for"
            : expected === true && !lit
              ? "should light"
              : "")}
      </span>
      <button type="button" className="figure-link" onClick={() => explainLamp(lamp)}>
        {lit ? printQuantity(lightPercent, "%") : "dark"}
      </button>
    </li>
  );
}

function explainLamp(lamp: LampView): void {
  const { name, lightPercent, lightLowPercent, v, currentA, powerW, part } = lamp;
  showSum({
    name,
    result: `${printQuantity(lightPercent, "%")} light`,
    equation: `(volts at the lamp ÷ its test volts) to a published power, at ${printQuantity(Math.abs(v ?? 0), "V")}`,
    inputs: [
      {
        text: ampText(currentA),
        from: "solved",
        goTo: { kind: "part", id: part },
      },
      {
        text: printQuantity(Math.abs(powerW), "W"),
        from: "solved",
        goTo: { kind: "part", id: part },
      },
    ],
    note: `by the steeper of the two published laws ${printQuantity(lightLowPercent, "%")} · tables/lampLaws`,
  });
}

function LoadRow({ load }: { load: LoadView }): ReactNode {
  return (
    <li className="try-row">
      <button
        type="button"
        className="plain"
        onClick={() => choose({ kind: "part", id: load.part })}
      >
        {load.name} <span className="note">{`${load.part}:${load.element}`}</span>
      </button>
      <span className="note">works</span>
      <span>{ampText(load.currentA)}</span>
    </li>
  );
}

const NOUGHT = { current: 0.005, drop: 0.0005, temperature: -Infinity } as const;

function sizeOf({ currentA, dropV, temperature }: WireView, shows: Shown): number {
  if (shows === "current") return Math.abs(currentA);
  return shows === "drop" ? Math.abs(dropV ?? 0) : (temperature?.temperatureC ?? 1e3);
}

type WireRowsProps = {
  readonly wires: readonly WireView[];
  readonly shows: Shown;
  readonly machine: TryMachine;
};

function WireRows({ wires, shows, machine }: WireRowsProps): ReactNode {
  const known = new Map(machine.wires.map((wire) => [wire.id, wire]));
  const chosen = useBench((bench) => bench.chosen?.id);
  const busy = wires
    .filter((wire) => sizeOf(wire, shows) > NOUGHT[shows])
    .sort((a, b) => sizeOf(b, shows) - sizeOf(a, shows) || (a.wire < b.wire ? -1 : 1));
  return (
    <>
      <ul>
        {busy.map((wire) => (
          <li key={wire.wire} className={wire.wire === chosen ? "try-row chosen" : "try-row"}>
            <button
              type="button"
              className="plain"
              aria-pressed={wire.wire === chosen}
              onClick={() => choose({ kind: "wire", id: wire.wire })}
            >
              {known.has(wire.wire) && (
                <WireSwatch colour={known.get(wire.wire)?.colour} widthPx={36} />
              )}{" "}
              {wire.label} <span className="note">{waysOf(known.get(wire.wire))}</span>
            </button>
            <span className="note">{wire.why ?? ""}</span>
            <button type="button" className="figure-link" onClick={() => explainWire(wire, shows)}>
              {wireText(wire, shows)}
            </button>
          </li>
        ))}
      </ul>
      {busy.length === 0 && <p className="note">No wire carries anything in this state.</p>}
    </>
  );
}

const waysOf = (wire: TryWire | undefined): string =>
  wire === undefined ? "fly lead" : `${wire.from} to ${wire.to}`;

export function wireText(
  { currentA, dropV, temperature, isAlternating }: WireView,
  shows: Shown,
): string {
  if (shows === "current") {
    const text = ampText(currentA);
    return isAlternating ? `${text} AC` : text;
  }
  if (shows === "drop") return dropV === null ? "not known" : printQuantity(Math.abs(dropV), "V");
  if (temperature === null) return "being worked out";
  return temperature.temperatureC === null
    ? "does not settle"
    : printQuantity(temperature.temperatureC, "C");
}

function explainWire(wire: WireView, shows: Shown): void {
  const { wire: id, label, currentA, ohm, temperature } = wire;
  const goTo = { kind: "wire", id } as const;
  const current = { text: ampText(currentA), from: "solved", goTo };
  const ohms = ohm === null ? "a length nobody has measured" : printQuantity(ohm * 1000, "mohm");
  const said = { name: `wire ${label} ${shows}`, result: wireText(wire, shows) };
  if (shows === "temperature" && temperature !== null) {
    showSum({
      ...said,
      equation: `air ${printQuantity(temperature.ambientC, "C")} + its own and its neighbours' heat through the bundle`,
      inputs: [current, { text: temperature.stretch ?? "alone in air", from: "route", goTo }],
      note: `settled, where it gets warmest; without end ${printQuantity(temperature.limitC, "C")} at most (remembered rise over its class)`,
    });
    return;
  }
  showSum({
    ...said,
    equation:
      shows === "drop"
        ? `I × R = ${current.text} × ${ohms}`
        : "Kirchhoff's law over the whole network of this state",
    inputs: [current, { text: ohms, from: "length and make", goTo }],
    note: "copper at 20 °C, the published maximum resistance of its make",
  });
}
