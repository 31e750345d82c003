import { type Rating, type RatingQuestion, ratingOf } from "./ratingOf.ts";

export type RateKept = (question: RatingQuestion) => Rating;

/** `ratingOf` that remembers: a loom asks the same question for many wires. */
export function rateKept(): RateKept {
  const known = new Map<string, Rating>();
  return (question) => {
    const { makeId, ambientC, bundle, sleeved } = question;
    const key = `${makeId} ${ambientC} ${bundle.wireCount} ${bundle.loadedCount} ${sleeved === true}`;
    const rating = known.get(key) ?? ratingOf(question);
    known.set(key, rating);
    return rating;
  };
}
