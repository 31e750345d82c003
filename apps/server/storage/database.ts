import type { Kysely, Transaction } from "kysely";
import type { BenchDatabase } from "./benchDatabase.ts";

export type Queries = Kysely<BenchDatabase>;
export type Writing = Transaction<BenchDatabase>;

/** An open database: where the queries go, and the little in which the two kinds differ. */
export interface Database {
  readonly kind: "sqlite" | "postgres";
  readonly queries: Queries;
  readonly bytesType: "blob" | "bytea";
  /** In words a person knows the place by, without a password. */
  readonly where: string;
}
