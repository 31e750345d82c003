import { type Rating, type RatingQuestion, ratingOf } from "./ratingOf.ts";

/** `ratingOf` that remembers: a loom asks the same question for many wires. */
export function rateKept(): (question: RatingQuestion) => Rating {
  const known = new Map<string, Rating>();
  return (question) => {
    const { makeId, ambientC, bundle, sleeved } = question;
    const key = `${makeId} ${ambientC} ${bundle.wireCount} ${bundle.loadedCount} ${sleeved === true}`;
    const rating = known.get(key) ?? ratingOf(question);
    known.set(key, rating);
    return rating;
  };
}
