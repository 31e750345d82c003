import { sectionDrawing } from "../section/sectionDrawing.ts";
import { type Section, sectionsOf } from "../section/sectionsOf.ts";
import { framedScene, type Scene } from "./framedScene.ts";
import { type SceneAsked, sourceOf } from "./sceneSource.ts";

export interface SectionScene extends Section {
  /** Twice life size. */
  readonly scene: Scene;
}

/** Every bundle of two wires and more cut through, thickest first; those with the same wires once. */
export function sectionScenes(asked: SceneAsked): readonly SectionScene[] {
  const { input, bundleOf } = sourceOf(asked);
  return sectionsOf(input, bundleOf).map((section) => ({
    ...section,
    scene: framedScene(`${section.name}: ${section.places}`, sectionDrawing(section).marks).scene,
  }));
}
