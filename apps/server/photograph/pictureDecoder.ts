type Decoder = typeof import("sharp")["default"];

let loading: Promise<Decoder> | null = null;

/** The library that decodes pictures, loaded by the first photograph: a bench that takes none need not carry it. */
export function pictureDecoder(): Promise<Decoder> {
  loading ??= load();
  return loading;
}

async function load(): Promise<Decoder> {
  const { default: sharp } = await import("sharp");
  // Decoders are kept to the four kinds the door takes, and none keeps decoded pictures in memory.
  sharp.block({ operation: ["VipsForeignLoad"] });
  sharp.unblock({
    operation: [
      "VipsForeignLoadJpegBuffer",
      "VipsForeignLoadPngBuffer",
      "VipsForeignLoadWebpBuffer",
      "VipsForeignLoadHeifBuffer",
    ],
  });
  sharp.cache(false);
  sharp.concurrency(1);
  return sharp;
}
