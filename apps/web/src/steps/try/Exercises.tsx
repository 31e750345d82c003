import { type ReactNode, useCallback, useEffect, useState } from "react";
import { say, useBench } from "../../store/benchStore.ts";
import { beginHunt, type Exercise, hideFault, listExercises } from "./hunt/huntApi.ts";
import { useTry } from "./tryStore.ts";

/** Faults hidden for a learner: one made of what is set on the bench, and the list of those to hunt. */
export function Exercises(): ReactNode {
  const key = useBench((bench) => bench.document?.key ?? "");
  const hasFault = useTry((bench) => bench.faults.length > 0);
  const mayEdit = useBench((bench) => bench.visitor?.role !== "view");
  const [list, setList] = useState<readonly Exercise[] | string | null>(null);
  const look = useCallback(() => {
    void listExercises(key).then(setList);
  }, [key]);
  useEffect(look, [look]);
  return (
    <section className="try-exercises" aria-label="Exercises">
      <h2>Exercises</h2>
      {hasFault && mayEdit && <HideFault jobKey={key} onHidden={look} />}
      {typeof list === "string" && <p className="note">{list}</p>}
      {Array.isArray(list) && list.length === 0 && (
        <p className="note">None yet. Set a fault above and hide it: a learner then hunts it.</p>
      )}
      <ul>
        {Array.isArray(list) &&
          list.map((exercise: Exercise) => (
            <li key={exercise.id} className="try-exercise">
              <span>
                {exercise.title}
                {exercise.limitMinutes !== null && (
                  <span className="note"> {exercise.limitMinutes} min</span>
                )}
              </span>
              <button type="button" className="act" onClick={() => void beginHunt(exercise)}>
                hunt it
              </button>
            </li>
          ))}
      </ul>
    </section>
  );
}

const MINUTES = 20;

function HideFault({ jobKey, onHidden }: { jobKey: string; onHidden: () => void }): ReactNode {
  const [title, setTitle] = useState("");
  const [minutes, setMinutes] = useState(MINUTES);
  const hide = async (): Promise<void> => {
    const refused = await hideFault(jobKey, title.trim(), minutes);
    say(refused ?? `"${title.trim()}" is hidden. The bench is clear again.`);
    if (refused !== null) return;
    setTitle("");
    onHidden();
  };
  return (
    <div className="try-hide">
      <label className="entry">
        <span className="note">what the rider says is wrong</span>
        <input
          className="field"
          value={title}
          maxLength={200}
          placeholder="the tail lamp goes out when I brake"
          onChange={(event) => setTitle(event.target.value)}
        />
      </label>
      <label className="entry">
        <span className="note">minutes allowed</span>
        <input
          className="field"
          type="number"
          min={1}
          max={240}
          value={minutes}
          onChange={(event) => setMinutes(Math.max(1, Math.round(Number(event.target.value))))}
        />
      </label>
      <button
        type="button"
        className="act"
        disabled={title.trim() === ""}
        onClick={() => void hide()}
      >
        hide the fault
      </button>
    </div>
  );
}
