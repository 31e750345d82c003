import * as z from "zod";

/** Colours as whole words (a row of tables/colours); letters are chosen when printing. */
export const colourWordSchema = z
  .string()
  .regex(/^[a-z][a-z -]{0,30}$/, "a colour is an English word, such as light blue");

export const colourSchema = z.strictObject({
  main: colourWordSchema,
  tracer: colourWordSchema.optional(),
  secondTracer: colourWordSchema.optional(),
});
