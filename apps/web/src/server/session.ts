import { keepLasting, lasting } from "../device/deviceStore.ts";
import { useBench, type Visitor } from "../store/benchStore.ts";
import { server } from "./serverApi.ts";

/**
 * The token the server printed with the address is traded for a cookie once and wiped from the address bar.
 *
 * @returns null when this device may work; else what to do, in words.
 */
export async function beginSession(): Promise<string | null> {
  const token = /[#&]token=([A-Za-z0-9_-]+)/.exec(location.hash)?.[1];
  if (token !== undefined) {
    history.replaceState(null, "", "#/jobs");
    const traded = await server("POST", "/session", { token });
    if (traded.kind === "refused") return traded.refusal.message;
  }
  const answer = await server<Visitor>("GET", "/session");
  if (answer.kind === "ok") {
    useBench.setState({ visitor: answer.value });
    await keepLasting("session", answer.value);
    return null;
  }
  if (answer.kind === "refused") return answer.refusal.message;
  const kept = await lasting<Visitor>("session");
  if (kept === null)
    return "The bench's server cannot be reached. Start it with copperwright open.";
  useBench.setState({ visitor: kept, saved: { mark: "offline", at: null } });
  return null;
}
