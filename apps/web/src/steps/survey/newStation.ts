import { ask } from "../../engine/engineClient.ts";
import { choose } from "../../store/benchStore.ts";
import { edit } from "../../store/editing.ts";

/** A station with a name to be given; it stands on the sheet as soon as it is dragged or moved there. */
export async function newStation(): Promise<void> {
  const [id = "ST1"] = await ask("surveyNewIds", ["ST"]);
  const item = { id, name: `new station ${id}` };
  if (await edit("add a station", { op: "add", list: "stations", item })) {
    choose({ kind: "station", id });
  }
}
