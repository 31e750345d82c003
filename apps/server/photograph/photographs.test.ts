import { readFileSync } from "node:fs";
import sharp from "sharp";
import { expect, test } from "vitest";
import { type ApiBench, EDITOR, LEARNER, onBothStorages } from "../api/apiBench.fixture.ts";

const text = readFileSync("demos/accessory-five-wires.json", "utf8");
const base64 = (bytes: Uint8Array | string): string => Buffer.from(bytes).toString("base64");

/** Left half red, right half blue, so that turning shows. */
async function twoHalves(widthPx: number, heightPx: number) {
  const half = { width: Math.floor(widthPx / 2), height: heightPx, channels: 3 as const };
  const blue = await sharp({ create: { ...half, background: "blue" } })
    .png()
    .toBuffer();
  return sharp({
    create: { width: widthPx, height: heightPx, channels: 3, background: "red" },
  }).composite([{ input: blue, left: half.width, top: 0 }]);
}

async function sendTo(bench: ApiBench, bytes: Uint8Array | string) {
  const { key } = (await bench.post("/jobs", { from: "text", text })).body;
  const sent = await bench.post(
    `/jobs/${key}/photographs`,
    { name: "head.jpg", base64: base64(bytes) },
    EDITOR,
  );
  return { key, sent };
}

onBothStorages((open) => {
  test("a photograph comes back turned, smaller, and without where and when it was taken", async () => {
    const bench = await open();
    const jpeg = await (await twoHalves(4000, 2000))
      .withExif({
        IFD0: { Make: "maker of the camera", Artist: "who took it" },
        IFD3: { GPSLatitudeRef: "N", GPSLatitude: "51/1 30/1 0/1" },
      })
      .withMetadata({ orientation: 6 })
      .jpeg()
      .toBuffer();
    const before = await sharp(jpeg).metadata();
    expect([before.orientation, before.exif !== undefined]).toEqual([6, true]);
    const { key, sent } = await sendTo(bench, jpeg);
    expect(sent.body).toMatchObject({ widthPx: 1280, heightPx: 2560 });
    const served = await bench.get(`/photographs/${sent.body.id}`, LEARNER);
    expect(served.headers.get("content-type")).toBe("image/jpeg");
    expect(served.headers.get("x-content-type-options")).toBe("nosniff");
    const { orientation, exif, xmp, iptc, icc, format } = await sharp(served.bytes).metadata();
    expect([orientation, exif, xmp, iptc, icc, format]).toEqual([
      ...Array(5).fill(undefined),
      "jpeg",
    ]);
    for (const word of ["GPS", "Exif", "maker", "took"]) {
      expect(Buffer.from(served.bytes).includes(word)).toBe(false);
    }
    // Orientation 6 is shown turned a quarter to the right: what was left is then above.
    const { data } = await sharp(served.bytes)
      .resize(1, 2, { fit: "fill" })
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect(data[0]! > data[2]! && data[3]! < data[5]!).toBe(true);
    const listed = (await bench.get(`/jobs/${key}/photographs`)).body.photographs;
    expect(listed).toMatchObject([{ id: sent.body.id, name: "head.jpg", addedBy: "Edith" }]);
    const again = await bench.post(`/jobs/${key}/photographs`, { name: "b", base64: base64(jpeg) });
    expect(again.body.id).toBe(sent.body.id);
  });

  test("a device may name its photograph before the server has it; sent twice it is in once, and the name stays its own", async () => {
    const bench = await open();
    const { key } = (await bench.post("/jobs", { from: "text", text })).body;
    const id = "here-0f7c1a52-9a3e-4f0e-8a35-5a6f0f4c1d2e";
    expect((await bench.get(`/photographs/${id}`)).body.code).toBe("no-such-photograph");
    const send = async (widthPx: number) => {
      const picture = await (await twoHalves(widthPx, 32)).jpeg().toBuffer();
      const body = { name: "a.jpg", base64: base64(picture), id };
      return bench.post(`/jobs/${key}/photographs`, body, EDITOR);
    };
    for (const _ of [1, 2]) expect((await send(64)).body).toMatchObject({ id, widthPx: 64 });
    const served = await bench.get(`/photographs/${id}`, LEARNER);
    expect(served.headers.get("content-type")).toBe("image/jpeg");
    expect((await sharp(served.bytes).metadata()).width).toBe(64);
    await send(48);
    expect((await sharp((await bench.get(`/photographs/${id}`)).bytes).metadata()).width).toBe(64);
    const { bytes } = await bench.get("/backup");
    const other = await bench.fresh();
    await other.post("/backup/restore", { base64: base64(bytes) });
    expect((await other.get(`/photographs/${id}`)).bytes).toEqual(served.bytes);
    const wrong = { name: "a", base64: "AAAA", id: "a".repeat(64) };
    expect((await bench.post(`/jobs/${key}/photographs`, wrong)).body.code).toBe("body-misfit");
  });

  test("PNG, WebP and AVIF are taken, and come back as JPEG", async () => {
    const bench = await open();
    for (const kind of ["png", "webp", "avif"] as const) {
      const picture = await (await twoHalves(64, 32)).toFormat(kind).toBuffer();
      const { sent } = await sendTo(bench, picture);
      expect(sent.body, kind).toMatchObject({ widthPx: 64, heightPx: 32 });
      const served = await bench.get(`/photographs/${sent.body.id}`);
      expect((await sharp(served.bytes).metadata()).format).toBe("jpeg");
    }
  });

  test("what is no photograph is refused: drawings in text, pages, scripts, other pictures, half files", async () => {
    const bench = await open();
    const svg = '<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>';
    const jpeg = await (await twoHalves(400, 200)).jpeg().toBuffer();
    const gif = await (await twoHalves(8, 8)).gif().toBuffer();
    const cases: readonly (readonly [Uint8Array | string, string])[] = [
      [svg, "photograph-not-a-picture"],
      [`<?xml version="1.0"?>${svg}`, "photograph-not-a-picture"],
      ["<!doctype html><script>1</script>", "photograph-not-a-picture"],
      ["%PDF-1.7", "photograph-not-a-picture"],
      [gif, "photograph-not-a-picture"],
      [jpeg.subarray(0, 300), "photograph-broken"],
      [
        Buffer.concat([Buffer.from([0xff, 0xd8, 0xff, 0xe0]), Buffer.from(svg)]),
        "photograph-broken",
      ],
      [`RIFF0000WEBP${svg}`, "photograph-broken"],
    ];
    for (const [bytes, code] of cases) {
      const { sent } = await sendTo(bench, bytes);
      expect(sent.body.code).toBe(code);
    }
    const polyglot = Buffer.concat([jpeg, Buffer.from(svg)]);
    const { sent } = await sendTo(bench, polyglot);
    const served = await bench.get(`/photographs/${sent.body.id}`);
    expect(Buffer.from(served.bytes).includes("<script>")).toBe(false);
  });

  test("a picture that would be gigabytes of points is refused by its header", async () => {
    const bench = await open();
    const png = await sharp({
      create: { width: 9000, height: 9000, channels: 3, background: "red" },
    })
      .png()
      .toBuffer();
    expect(png.length).toBeLessThan(2_000_000);
    expect((await sendTo(bench, png)).sent.body.code).toBe("photograph-too-large");
    // The same few bytes claiming 60,000 by 60,000 points, with the header's check sum put right.
    const claim = Buffer.from(png);
    claim.writeUInt32BE(60_000, 16);
    claim.writeUInt32BE(60_000, 20);
    const { crc32 } = await import("./crc32.fixture.ts");
    claim.writeUInt32BE(crc32(claim.subarray(12, 29)), 29);
    expect((await sendTo(bench, claim)).sent.body.code).toBe("photograph-too-large");
  });

  test("wrong base64, and ids that try to be paths, lead nowhere", async () => {
    const bench = await open();
    const { key } = (await bench.post("/jobs", { from: "text", text })).body;
    for (const wrong of ["not base64!", "AAA", "data:image/png;base64,AAAA", "====", "A=AA"]) {
      const sent = await bench.post(`/jobs/${key}/photographs`, { name: "x", base64: wrong });
      expect(sent.body.code, wrong).toBe("photograph-not-base64");
    }
    for (const id of [
      "..%2f..%2fetc%2fpasswd",
      "%00",
      "x".repeat(64),
      "A".repeat(64),
      "__proto__",
    ]) {
      expect((await bench.get(`/photographs/${id}`)).body.code, id).toBe("no-such-photograph");
    }
    const none = await bench.post(`/jobs/${"0".repeat(32)}/photographs`, {
      name: "x",
      base64: "AAAA",
    });
    expect(none.body.code).toBe("no-such-job");
  });
});
