import fc from "fast-check";
import type { Job } from "../job.ts";
import { EDITED_LISTS, type Operation } from "./operation.ts";

/** Operations that are often, not always, possible: sets of one scalar or field, removals, additions, batches of them. */
export function operationsOn(job: Job): fc.Arbitrary<Operation> {
  const items = EDITED_LISTS.flatMap((list) => job[list].map((item) => ({ list, item })));
  const any = fc.constantFrom(...items);
  const removal = any.map(({ list, item }): Operation => ({ op: "remove", list, id: item.id }));
  const copy = fc
    .tuple(any, fc.stringMatching(/^[A-Z]{1,6}[0-9]{1,3}$/))
    .map(([{ list, item }, id]): Operation => ({ op: "add", list, item: { ...item, id } }));
  const field = any.chain(({ list, item }) => {
    const old = fc.constantFrom(...Object.keys(item));
    const name = fc.oneof(old, fc.constantFrom("note", "name", "status", "station", "number"));
    const words = fc.constantFrom(undefined, "new", "keep", "a name", 5, true, "W1", {
      main: "red",
    });
    const others = job[list].map((other) => other as unknown as Readonly<Record<string, unknown>>);
    return fc.tuple(name, words, fc.constantFrom(...others), fc.boolean()).map(
      ([step, word, other, isOther]): Operation => ({
        op: "set",
        list,
        id: item.id,
        path: [step],
        value: isOther ? other[step] : word,
      }),
    );
  });
  const ofJob = fc
    .tuple(
      fc.constantFrom(
        ["name"],
        ["note"],
        ["revision"],
        ["machine", "year"],
        ["machine", "note"],
        ["decisions", "lengthMode"],
        ["layout", "diagram"],
      ),
      fc.constantFrom<unknown>(undefined, "repeat", 1967, "text", {}),
    )
    .map(([path, value]): Operation => ({ op: "set", list: "job", path, value }));
  const one = fc.oneof(removal, copy, field, field, ofJob);
  const batch = fc
    .array(one, { maxLength: 4 })
    .map((operations): Operation => ({ op: "batch", name: "several", operations }));
  return fc.oneof(one, one, batch);
}
