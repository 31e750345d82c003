import { printQuantity } from "@copperwright/engine/words";
import { type ReactNode, useEffect, useState } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { LengthField } from "../../entry/LengthField.tsx";
import { choose, say, useBench } from "../../store/benchStore.ts";
import { wiringEdit } from "../wiring/wiringEdit.ts";
import type { JointView } from "./loomAnswers.ts";

/** Every joint along its run: dragged with the thumb of its track, moved with arrow keys, or typed. */
export function Joints(): ReactNode {
  const { answer } = useAnswer("loomJoints", undefined);
  if (answer === null || answer.length === 0) return null;
  return (
    <section aria-label="Joints along the loom">
      <h2>Joints along the loom</h2>
      <ul className="loom-rows">
        {answer.map((joint) => (
          <Joint key={joint.id} joint={joint} />
        ))}
      </ul>
    </section>
  );
}

function Joint({ joint }: { joint: JointView }): ReactNode {
  const isChosen = useBench((bench) => bench.chosen?.id === joint.id);
  const run = joint.runs.find(({ id }) => id === joint.run);
  const move = (runId: string, mm: number): void => {
    const where = { kind: "run" as const, run: runId, mm: Math.round(mm) };
    void wiringEdit(`joint ${joint.name} to ${printQuantity(where.mm, "mm")}`, {
      does: "place-joint",
      id: joint.id,
      where,
    });
  };
  return (
    <li className={isChosen ? "joint now" : "joint"}>
      <button
        type="button"
        className="plain joint-name"
        onClick={() => choose({ kind: "joint", id: joint.id })}
      >
        <b>{joint.name}</b>
        <span className="note">
          {joint.kind.replaceAll("-", " ")}, {joint.wayCount} ways
          {joint.station === null ? "" : `, at ${joint.station}`}
        </span>
      </button>
      {run === undefined ? (
        <OntoRun joint={joint} move={move} />
      ) : (
        <Track joint={joint} run={run} move={move} />
      )}
    </li>
  );
}

type Move = (runId: string, mm: number) => void;

function Track({
  joint,
  run,
  move,
}: {
  joint: JointView;
  run: JointView["runs"][number];
  move: Move;
}): ReactNode {
  const [mm, setMm] = useState(joint.atMm ?? 0);
  useEffect(() => setMm(joint.atMm ?? 0), [joint.atMm]);
  const put = (): void => {
    if (mm !== joint.atMm) move(run.id, mm);
  };
  return (
    <div className="joint-track">
      <label>
        <span className="note">
          {run.name}: {printQuantity(mm, "mm")} of {printQuantity(run.lengthMm, "mm")}
        </span>
        <input
          type="range"
          min={5}
          max={run.lengthMm - 5}
          step={5}
          value={mm}
          onChange={(event) => setMm(Number(event.target.value))}
          onPointerUp={put}
          onKeyUp={put}
          onBlur={put}
        />
      </label>
      <LengthField
        label="or typed"
        valueMm={joint.atMm}
        onLength={(typedMm) => {
          if (typedMm < run.lengthMm) move(run.id, typedMm);
          else
            say(
              `${printQuantity(typedMm, "mm")} is not on that run: it is ${printQuantity(run.lengthMm, "mm")} long.`,
            );
        }}
      />
    </div>
  );
}

function OntoRun({ joint, move }: { joint: JointView; move: Move }): ReactNode {
  return (
    <div className="care-row">
      {joint.runs.map(({ id, name, lengthMm }) => (
        <button key={id} type="button" className="act small" onClick={() => move(id, lengthMm / 2)}>
          lay it on {name}
        </button>
      ))}
    </div>
  );
}
