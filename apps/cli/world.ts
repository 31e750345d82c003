/** Everything a command may touch outside itself, passed in so that tests need no disk and no process. */
export interface World {
  /** Text of a file, or the reason it could not be read. */
  readText(path: string): { ok: true; text: string } | { ok: false; why: string };
  writeText(path: string, text: string): { ok: true } | { ok: false; why: string };
  /** Names in a folder; null when there is no such folder. */
  listFolder(path: string): readonly string[] | null;
  /** Puts a whole folder in place of the former one in one step; on failure the former one stays. */
  replaceFolder(
    path: string,
    files: ReadonlyMap<string, Uint8Array>,
  ): { ok: true } | { ok: false; why: string };
  /** Bytes of a file that ships with the command (fonts, demos). */
  shipped(name: string): Uint8Array;
  /** Text of a file of the person's own settings; null where it was never written. */
  readSetting(name: string): { ok: true; text: string | null } | { ok: false; why: string };
  writeSetting(name: string, text: string): { ok: true } | { ok: false; why: string };
  /** Where such a file is, for saying so. */
  settingPath(name: string): string;
  listShipped(folder: string): readonly string[];
  out(text: string): void;
  err(text: string): void;
  readonly bench: BenchWorld;
}

/** What `open` needs of the world: the server, a screen, and a person who ends it. */
export interface BenchWorld {
  /** A variable of the environment. */
  environment(name: string): string | undefined;
  /** Where programs keep a person's work when nobody says otherwise. */
  defaultFolder(): string;
  /** Opens the bench, or says in words why it cannot be opened. */
  open(place: BenchPlace): Promise<{ ok: true; bench: OpenedBench } | { ok: false; why: string }>;
  /** Shows an address in a browser; false where there is no screen. */
  show(address: string): boolean;
  /** Until the person (Ctrl+C) or the system ends it. */
  untilStopped(): Promise<void>;
}

export interface BenchPlace {
  readonly folder: string;
  readonly postgresUrl?: string;
  readonly port: number;
}

export interface OpenedBench {
  readonly address: string;
  readonly where: string;
  launchAddress(): string;
  sharedAddress(): string | null;
  close(): Promise<void>;
}

/** What the shell is told: 0 fit, 1 must be put right or not proven, 2 refused, 3 our own fault. */
export type ExitCode = 0 | 1 | 2 | 3;
