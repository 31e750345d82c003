export * from "./allTables.generated.ts";
export * from "./figure.ts";
