import { expect, test } from "vitest";
import { faultOfKey, nameOfKey, readShortcuts, SHORTCUTS } from "./shortcuts.ts";

const first = readShortcuts("{}");

test("no two shortcuts begin on one key, and each is one character", () => {
  const keys = SHORTCUTS.map(({ key }) => key);
  expect(new Set(keys).size).toBe(keys.length);
  for (const { name, key } of SHORTCUTS) {
    expect([...key]).toHaveLength(1);
    expect(nameOfKey(first, key)).toBe(name);
  }
  expect(nameOfKey(first, "=")).toBe("zoom-in");
  expect(nameOfKey(first, "W")).toBe("read");
});

test("what was kept comes back; what cannot be read is as at first; off stays off", () => {
  const kept = { isOn: false, keys: { ...first.keys, read: "h", find: "" } };
  expect(readShortcuts(JSON.stringify(kept))).toEqual(kept);
  expect(readShortcuts("off")).toEqual({ isOn: false, keys: first.keys });
  expect(readShortcuts("{{")).toEqual(first);
  expect(readShortcuts('{"keys":{"read":"long","find":7}}')).toEqual(first);
  expect(nameOfKey(kept, "h")).toBeNull();
  expect(nameOfKey({ ...kept, isOn: true }, "h")).toBe("read");
  expect(nameOfKey({ ...kept, isOn: true }, "/")).toBeNull();
});

test("a key that is taken, no character or the space bar is refused with the reason", () => {
  expect(faultOfKey(first, "find", "w")).toMatch(/taken: read the working aloud/);
  expect(faultOfKey(first, "read", "w")).toBeNull();
  expect(faultOfKey(first, "find", "ab")).toMatch(/not one character/);
  expect(faultOfKey(first, "find", " ")).toMatch(/space bar/);
  expect(faultOfKey(first, "find", "")).toBeNull();
});
