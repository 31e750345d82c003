import { connectorClasses } from "../../tables/index.ts";

/** Connectors a job may name, with what they are in words. */
export const connectorKinds = (): readonly { readonly id: string; readonly name: string }[] =>
  connectorClasses.map(({ id, kind, meaning }) => ({ id, name: `${meaning}, ${kind}` }));
