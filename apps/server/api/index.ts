/** The interface of the bench over HTTP. */
export { benchApi } from "./benchApi.ts";
