import {
  addFromCatalogue,
  answerUnknown,
  connectPins,
  type FoundOut,
  foundTemplates,
  idMaker,
  type ListedTemplate,
  makesNamed,
  type NamedMakes,
  type NewWire,
  type Operation,
  type PartFigure,
  type PartMade,
  type Put,
  partFigures,
  placeStation,
  removeRun,
  removeStation,
  removeWhole,
  scaledPhotograph,
  setFigure,
  setPhotograph,
  stillUnknown,
  type TemplateAnswers,
  type Unknown,
} from "@copperwright/engine";
import { type SurveyScene, surveyScene } from "@copperwright/engine/scenes";
import { type Picture, pictureOf } from "../../drawing/picture.ts";
import type { Held } from "../../engine/held.ts";

export type SurveyView = Omit<SurveyScene, "outline"> & { readonly picture: Picture };

interface Room {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Everything the survey changes, as the operation that does it. */
export type SurveyChange =
  | {
      readonly does: "answer";
      readonly put: Put;
      readonly found: FoundOut;
      readonly typed?: string;
    }
  | { readonly does: "place"; readonly station: string; readonly xMm: number; readonly yMm: number }
  | { readonly does: "remove-station"; readonly id: string }
  | { readonly does: "remove-run"; readonly id: string }
  | { readonly does: "remove-part"; readonly id: string }
  | {
      readonly does: "figure";
      readonly part: string;
      readonly figure: PartFigure;
      readonly value: number;
      readonly basis: "measured" | "stated" | "estimated";
    }
  | { readonly does: "photograph"; readonly photograph: Parameters<typeof setPhotograph>[0] }
  | { readonly does: "wire"; readonly wire: NewWire };

export const surveyAnswers = {
  surveyView(held: Held, { room }: { room: Room }): SurveyView {
    const { outline, ...scene } = surveyScene(held.job, room);
    const { widthMm, heightMm, photograph } = scene;
    const marks = photograph === null ? outline : [];
    return { ...scene, picture: pictureOf({ marks, widthMm, heightMm }) };
  },

  surveyUnknown: (held: Held): readonly Unknown[] => stillUnknown(held.job),

  surveyChange(held: Held, change: SurveyChange): Operation {
    const { job } = held;
    switch (change.does) {
      case "answer":
        return answerUnknown(change.put, change.found, change.typed);
      case "place":
        return placeStation(job, change.station, { xMm: change.xMm, yMm: change.yMm });
      case "remove-station":
        return removeStation(job, change.id);
      case "remove-run":
        return removeRun(job, change.id);
      case "remove-part":
        return removeWhole(job, "parts", change.id);
      case "figure":
        return setFigure(change.part, change.figure, change.value, change.basis);
      case "photograph":
        return setPhotograph(change.photograph);
      case "wire":
        return connectPins(job, change.wire).operation;
    }
  },

  /** The photograph scaled by two points of it whose distance is known; null where they are one point. */
  surveyScale(
    held: Held,
    { a, b, apartMm }: { a: PlaceMm; b: PlaceMm; apartMm: number },
  ): Operation | null {
    const { photograph } = held.job.layout;
    const scaled = photograph === undefined ? null : scaledPhotograph(photograph, a, b, apartMm);
    return scaled === null ? null : setPhotograph(scaled);
  },

  surveyNewIds(held: Held, prefixes: readonly string[]): readonly string[] {
    return prefixes.map(idMaker(held.job));
  },

  surveyTemplates: (_held: Held, words: string): readonly ListedTemplate[] => foundTemplates(words),

  surveyAdd: (
    held: Held,
    choice: { template: string; station?: string; name?: string; answers: TemplateAnswers },
  ): PartMade => addFromCatalogue(held.job, choice),

  surveyFigures(held: Held, part: string): readonly PartFigure[] {
    const found = held.job.parts.find(({ id }) => id === part);
    return found === undefined ? [] : partFigures(found);
  },

  surveyMakes: (_held: Held, typed: string): NamedMakes => makesNamed(typed),
};

interface PlaceMm {
  readonly xMm: number;
  readonly yMm: number;
}
