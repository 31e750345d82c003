import { connectorClasses } from "../../tables/index.ts";

export interface ConnectorKind {
  readonly id: string;
  /** What it is in words. */
  readonly name: string;
  /** Most cavities one is made with; null where that is not said. */
  readonly mostCount: number | null;
}

/** Connectors a job may name. */
export const connectorKinds = (): readonly ConnectorKind[] =>
  connectorClasses.map(({ id, kind, meaning, ways }) => {
    const counts = `${ways}`.split(" ").map(Number).filter(Number.isFinite);
    return {
      id,
      name: `${meaning}, ${kind}`,
      mostCount: counts.length === 0 ? null : Math.max(...counts),
    };
  });
