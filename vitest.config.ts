import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: [
      "engine/**/*.test.ts",
      "apps/**/*.test.ts",
      "cases/**/*.test.ts",
      "tools/**/*.test.ts",
    ],
    testTimeout: 60_000,
    hookTimeout: 120_000,
    pool: "threads",
    maxWorkers: 2,
  },
});
