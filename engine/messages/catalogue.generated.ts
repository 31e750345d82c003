// Made by tools/generate/messages.ts from engine/messages/catalogue/*.md. Change those.
import type { CatalogueEntry } from "./messageOf.ts";

export const catalogue: Readonly<Record<string, CatalogueEntry>> = {
  "accept-refused": {"severities":["mend"],"lines":[{"text":"Somebody accepted %acceptedCode% on %acceptedSubject%, but a stop cannot be accepted: it stands.","optional":false},{"text":"Put the stop right, then take the acceptance out of the decisions.","optional":false}],"remedies":{},"explanation":["Accepting means that a person answers for a known weakness. A stop is not a weakness but a danger, so nobody can answer for it."]},
};
