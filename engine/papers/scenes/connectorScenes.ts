import { connectorView } from "../../drawing/index.ts";
import type { Connector } from "../../job/index.ts";
import { connectorViewInput } from "../connectorPaper.ts";
import { compareNumbers } from "../wireRows.ts";
import { framedScene, type Scene } from "./framedScene.ts";
import { type SceneAsked, sourceOf } from "./sceneSource.ts";

export interface ConnectorScene {
  readonly connector: Connector;
  readonly half: "socket" | "plug";
  readonly side: "wire side" | "mating side";
  readonly scene: Scene;
}

/** Both halves of every connector, each from the wire side and from the mating side. */
export function connectorScenes(asked: SceneAsked): readonly ConnectorScene[] {
  const { input } = sourceOf(asked);
  return input.job.connectors
    .filter(({ status }) => status !== "remove")
    .sort((left, right) => compareNumbers(left.id, right.id))
    .flatMap((connector) =>
      (["socket", "plug"] as const).flatMap((half) =>
        (["wire side", "mating side"] as const).map((side): ConnectorScene => {
          const { marks } = connectorView(connectorViewInput(input, connector, half, side));
          const { scene } = framedScene(`${connector.id} ${half}, ${side}`, marks);
          return { connector, half, side, scene };
        }),
      ),
    );
}
