/** The front door: everything that computes. Papers have their own door, `paper.ts`, so that a verdict never loads the PDF library. */
export * from "./job/index.ts";
export type * from "./judge/checkResult.ts";
export { checkJob, planJob } from "./judge/index.ts";
export type * from "./messages/index.ts";
export {
  type OperateRequest,
  type OperateSolution,
  type OperateState,
  operateJob,
  spiceText,
} from "./operate/index.ts";
export { bundleAnswer } from "./route/index.ts";
export { wireAnswer } from "./size/index.ts";
export { printNumber, printQuantity } from "./units/index.ts";
export { ENGINE_VERSION } from "./version.ts";
