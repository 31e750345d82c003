/** Version of the engine, printed in every answer. Kept equal to package.json by a test. */
export const ENGINE_VERSION = "0.1.0";
