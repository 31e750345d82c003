import type { Run } from "@copperwright/engine";
import { printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { LengthField } from "../../entry/LengthField.tsx";
import { SelectField } from "../../entry/SelectField.tsx";
import { Slip } from "../../frame/Slip.tsx";
import { showSum, useBench } from "../../store/benchStore.ts";
import { editField } from "../../store/editField.ts";
import { SURROUNDINGS } from "./surroundings.ts";
import { surveyEdit } from "./surveyEdit.ts";

type RunSlipProps = {
  readonly run: Run;
  readonly at: { readonly x: number; readonly y: number } | undefined;
  readonly onClose: () => void;
};

/** A run between two stations: how long, whether it moves, what it passes through. */
export function RunSlip({ run, at, onClose }: RunSlipProps): ReactNode {
  const stations = useBench((bench) => bench.document!.job.stations);
  const nameOf = (id: string): string => stations.find((one) => one.id === id)?.name ?? id;
  const name = `${nameOf(run.from)} to ${nameOf(run.to)}`;
  const set = (what: string, path: string, value: unknown): void =>
    editField(`${name}: ${what}`, { list: "runs", id: run.id }, [path], value);
  const length = (value: number, basis: "measured" | "estimated", entered?: string): void =>
    set("length", "lengthMm", {
      value,
      basis,
      ...(entered ? { entered: entered.slice(0, 200) } : {}),
    });
  return (
    <Slip title={name} label={`Run ${name}`} at={at} onClose={onClose}>
      <LengthNow run={run} name={name} />
      <LengthField
        label={run.flex ? "longest, at both locks" : "measured by string"}
        valueMm={run.lengthMm?.value ?? null}
        onLength={(lengthMm, typed) => length(lengthMm, "measured", typed)}
      />
      {run.lengthMm?.basis === "estimated" && (
        <button
          type="button"
          className="act"
          onClick={() => length(run.lengthMm!.value, "measured", run.lengthMm!.entered)}
        >
          measured, and it is that long
        </button>
      )}
      {run.lengthMm !== undefined && run.lengthMm.basis !== "estimated" && (
        <button
          type="button"
          className="act"
          onClick={() => length(run.lengthMm!.value, "estimated")}
        >
          that was only a guess
        </button>
      )}
      <label className="check-row">
        <input
          type="checkbox"
          checked={run.flex ?? false}
          onChange={(event) => set("moves", "flex", event.target.checked ? true : undefined)}
        />
        moves with the steering or the suspension
      </label>
      <SelectField
        label="passes through"
        value={run.surroundings ?? ""}
        none="not said"
        choices={SURROUNDINGS}
        onChoice={(value) => set("surroundings", "surroundings", value === "" ? undefined : value)}
      />
      <div className="slip-verbs">
        <button
          type="button"
          className="act"
          onClick={() => {
            void surveyEdit(`remove run ${name}`, { does: "remove-run", id: run.id });
            onClose();
          }}
        >
          remove
        </button>
      </div>
    </Slip>
  );
}

function LengthNow({ run, name }: { run: Run; name: string }): ReactNode {
  const { lengthMm } = run;
  if (lengthMm === undefined) return <p className="note">not measured yet</p>;
  const isGuess = lengthMm.basis === "estimated";
  const text = `${isGuess ? "≈ " : ""}${printQuantity(lengthMm.value, "mm")}`;
  const by = [lengthMm.by, lengthMm.date].filter(Boolean).join(", ");
  return (
    <p>
      <button
        type="button"
        className={isGuess ? "figure-link guess" : "figure-link"}
        onClick={() =>
          showSum({
            name: `${name}:`,
            result: text,
            equation: "",
            inputs: [],
            note: `${isGuess ? "guessed" : lengthMm.basis}${by === "" ? "" : ` by ${by}`}${lengthMm.entered ? `, typed ${lengthMm.entered}` : ""}`,
          })
        }
      >
        {text}
      </button>{" "}
      <span className="note">{isGuess ? "guessed" : lengthMm.basis}</span>
    </p>
  );
}
