import { answered, type PartTemplate, pins, type TemplateAsk } from "./partTemplate.ts";

const mark: TemplateAsk = {
  id: "ratingA",
  word: "marked",
  unit: "A",
  howTo: "read the mark on the fuse",
  isNeeded: true,
};

type FuseType =
  | "blade"
  | "mini"
  | "maxi"
  | "glass-6.3x32"
  | "glass-british"
  | "torpedo"
  | "unknown";

const fuse = (
  id: string,
  name: string,
  type: FuseType,
  marking: "continuous" | "blow" | "unknown",
): PartTemplate => ({
  id,
  name,
  words: "protection cut-out",
  group: "fuses and relays",
  stem: "F",
  asks: [mark],
  make: ({ answers }) => ({
    kind: "fuse",
    name,
    pins: pins("1", "2"),
    type,
    marking,
    ratingA: answers.ratingA!.value,
  }),
});

const coilOhm: TemplateAsk = {
  id: "coilOhm",
  word: "coil",
  unit: "ohm",
  howTo: "ohmmeter across the two coil terminals, leads off",
  isNeeded: true,
};

const contactA: TemplateAsk = {
  id: "contactA",
  word: "contacts made for",
  unit: "A",
  howTo: "stamped on the case",
  isNeeded: false,
};

export const guardTemplates: readonly PartTemplate[] = [
  fuse("fuse-blade", "fuse, blade", "blade", "continuous"),
  fuse("fuse-mini", "fuse, mini blade", "mini", "continuous"),
  fuse("fuse-maxi", "fuse, large blade", "maxi", "continuous"),
  fuse("fuse-torpedo", "fuse, ceramic torpedo", "torpedo", "continuous"),
  fuse("fuse-glass", "fuse, glass, mark not understood", "glass-6.3x32", "unknown"),
  fuse(
    "fuse-old-glass",
    "fuse, old British glass, marked with what it blows at",
    "glass-british",
    "blow",
  ),
  fuse("fuse-unknown", "fuse, make-up not known", "unknown", "unknown"),
  {
    id: "relay-make",
    name: "relay, make contact",
    words: "cube four pin",
    group: "fuses and relays",
    stem: "RLY",
    asks: [coilOhm, contactA],
    make: ({ answers }) => ({
      kind: "relay",
      name: "relay",
      pins: pins("30", "87", "85", "86"),
      coil: { pins: ["86", "85"], ohm: answers.coilOhm! },
      made: [["30", "87"]],
      rest: [],
      ...answered("contactRatingA", answers.contactA),
    }),
  },
  {
    id: "relay-change",
    name: "relay, change-over contact",
    words: "cube five pin",
    group: "fuses and relays",
    stem: "RLY",
    asks: [coilOhm, contactA],
    make: ({ answers }) => ({
      kind: "relay",
      name: "relay, change-over",
      pins: pins("30", "87", "87a", "85", "86"),
      coil: { pins: ["86", "85"], ohm: answers.coilOhm! },
      made: [["30", "87"]],
      rest: [["30", "87a"]],
      ...answered("contactRatingA", answers.contactA),
    }),
  },
  {
    id: "flasher-electronic",
    name: "flasher, electronic, any load",
    words: "indicator turn unit",
    group: "fuses and relays",
    stem: "FLS",
    asks: [],
    make: () => ({
      kind: "flasher",
      name: "flasher",
      pins: pins("B", "L", "E"),
      feed: "B",
      out: "L",
      earth: "E",
      technology: "electronic",
    }),
  },
  {
    id: "flasher-thermal",
    name: "flasher, thermal, 2 terminals",
    words: "indicator turn can unit",
    group: "fuses and relays",
    stem: "FLS",
    asks: [
      { id: "leastW", word: "least load", unit: "W", howTo: "read the can", isNeeded: false },
      { id: "mostW", word: "most load", unit: "W", howTo: "read the can", isNeeded: false },
    ],
    make: ({ answers: { leastW, mostW } }) => ({
      kind: "flasher",
      name: "flasher, thermal",
      pins: pins("B", "L"),
      feed: "B",
      out: "L",
      technology: "thermal",
      ...(leastW === undefined ? {} : { loadMinW: leastW.value }),
      ...(mostW === undefined ? {} : { loadMaxW: mostW.value }),
    }),
  },
];
