import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { ask, cookieOf, startBench } from "./benchForTests.fixture.ts";

/** Every file below a folder, as text. */
function textsBelow(folder: string): readonly { path: string; text: string }[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? textsBelow(path) : [{ path, text: readFileSync(path, "latin1") }];
  });
}

/** Runs with everything that is printed caught. */
async function printed(action: () => Promise<void>): Promise<string> {
  let text = "";
  const streams = [process.stdout, process.stderr] as const;
  const writes = streams.map((stream) => stream.write);
  const names = ["log", "error", "warn", "info", "debug"] as const;
  const former = names.map((name) => console[name]);
  const caught = (...words: unknown[]) => {
    text += `${words.map(String).join(" ")}\n`;
    return true;
  };
  for (const stream of streams) stream.write = caught as never;
  for (const name of names) console[name] = caught;
  try {
    await action();
  } finally {
    streams.forEach((stream, i) => {
      stream.write = writes[i]!;
    });
    names.forEach((name, i) => {
      console[name] = former[i]!;
    });
  }
  return text;
}

test("no token, code or cookie is printed, kept in the clear, in a path, or sent back", async () => {
  const secrets: string[] = [];
  const answers: string[] = [];
  const bench = await startBench();
  const keep = <T extends { text: string; headers: object }>(answer: T): T => {
    answers.push(answer.text, JSON.stringify({ ...answer.headers, "set-cookie": undefined }));
    return answer;
  };
  const text = await printed(async () => {
    const owner = await bench.signIn();
    secrets.push(bench.token, owner.split("=")[1]!, bench.launchAddress().split("=")[1]!);
    const asOwner = (path: string, body: unknown) => ask(bench.base, { path, body, cookie: owner });
    const { json } = await asOwner("/api/sharing", { isOn: true });
    const base: string = json.plainAddress;
    const { code } = (await asOwner("/api/sharing/codes", { role: "edit" })).json;
    secrets.push(code, code.replace(" ", ""));
    // Wrong, torn and strange requests that hold the secrets: what is refused must not be repeated either.
    for (const body of [
      { code: `${code}1`, deviceName: "x" },
      { code, deviceName: `<${code}>` },
      `{"code":"${code}",`,
      `${code}`,
      [code],
    ]) {
      keep(await ask(base, { path: "/api/pair", body }));
    }
    for (const body of [`{"token":"${bench.token}",`, { token: `${bench.token}x` }, bench.token]) {
      keep(await ask(bench.base, { path: "/api/session", body }));
      keep(await ask(bench.base, { path: "/api/jobs", body, cookie: owner }));
    }
    const again = (await asOwner("/api/sharing/codes", { role: "edit" })).json.code;
    secrets.push(again, again.replace(" ", ""));
    const body = { code: again, deviceName: "a device" };
    const paired = keep(await ask(base, { path: "/api/pair", body }));
    expect(paired.json).toEqual({ ok: true });
    const cookie = cookieOf(paired);
    secrets.push(cookie.split("=")[1]!);
    for (const path of ["/", "/api/session", "/api/jobs", "/api/none"]) {
      keep(await ask(base, { path, cookie }));
    }
    for (const path of ["/api/devices", "/api/sharing", "/api/session", "/authority"]) {
      keep(await ask(bench.base, { path, cookie: owner }));
    }
  });
  const files = textsBelow(bench.folder);
  await bench.close();
  expect(secrets.every((secret) => secret.length >= 8)).toBe(true);
  expect(files.map(({ path }) => path.split("/").at(-1))).toEqual(
    expect.arrayContaining(["bench.sqlite", "devices.json"]),
  );
  const places = [
    { path: "printed", text },
    { path: "said", text: bench.said.join("\n") },
    { path: "answered", text: answers.join("\n") },
    ...files,
    ...files.map(({ path }) => ({ path: "a file's name", text: path })),
  ];
  const found = places.flatMap((place) =>
    secrets.filter((secret) => place.text.includes(secret)).map(() => place.path),
  );
  expect(found).toEqual([]);
});

test("no route takes a secret from a path", async () => {
  const bench = await startBench();
  try {
    for (const path of [
      `/api/session?token=${bench.token}`,
      `/api/session/${bench.token}`,
      `/?token=${bench.token}`,
      `/api/pair?code=12345678`,
    ]) {
      const answer = await ask(bench.base, { path });
      expect(answer.headers["set-cookie"]).toBeUndefined();
      const posted = await ask(bench.base, { path, body: {} });
      expect(posted.headers["set-cookie"]).toBeUndefined();
    }
  } finally {
    await bench.close();
  }
});
