import "@fontsource-variable/atkinson-hyperlegible-next";
import "./look/tokens.css";
import "./look/drawing.css";
import "./look/base.css";
import "./look/print.css";
import { createRoot } from "react-dom/client";
import { Bench } from "./frame/Bench.tsx";
import { installKeys } from "./frame/keys.ts";
import { beginSession } from "./server/session.ts";
import { watchServer } from "./server/watching.ts";
import { refreshPrices } from "./steps/parts/priceList.ts";
import { followAddress } from "./store/route.ts";

const root = createRoot(document.getElementById("bench")!);
const locked = await beginSession();
root.render(<Bench locked={locked} />);
if (locked === null) {
  installKeys();
  addEventListener("hashchange", () => void followAddress());
  void followAddress();
  watchServer();
  void refreshPrices();
}
if ("serviceWorker" in navigator && isSecureContext && import.meta.env.PROD) {
  void navigator.serviceWorker.register("/sw.js");
}
