import type { Drawn } from "../drawn.ts";
import { type Mark, point } from "../scene.ts";
import { type BlockBox, blockBox, blockBoxMarks } from "./blockBox.ts";
import type { BlockDiagramInput } from "./blockDiagramInput.ts";
import { type ChannelLine, channelMarks } from "./channelMarks.ts";
import { channelTracks } from "./channelTracks.ts";
import { netStops, passKey, placedColumns } from "./placedColumns.ts";
import { type Net, type RankedBlocks, rankedBlocks } from "./rankedBlocks.ts";

const TRACK_MM = 2.5;
const PORT_MM = 2.5;
const CHANNEL_END_MM = 2.5;

/** Widths text of a block is wrapped to, the first at which the diagram fits. */
const TEXT_WIDTHS_MM = [40, 32, 26, 22, 18];

/**
 * Boxes in columns from where electricity comes from to where it is used, joined by level and upright lines that pass no box. The pole that is
 * always live is bold.
 *
 * @param widthMm  the columns are spread to this width; the drawing is wider where they need more
 */
export function blockDiagram(input: BlockDiagramInput, widthMm: number): Drawn {
  if (input.blocks.length === 0) return { marks: [], widthMm: 0, heightMm: 0 };
  const ranked = rankedBlocks(input);
  let plan = planned(input, ranked, TEXT_WIDTHS_MM[0]!);
  for (const textMaxMm of TEXT_WIDTHS_MM) {
    plan = planned(input, ranked, textMaxMm);
    if (plan.needMm <= widthMm) break;
  }
  const { boxes, middleOf, channels, columnsMm } = plan;
  const spareMm = channels.length > 0 ? Math.max(0, widthMm - plan.needMm) / channels.length : 0;
  const marks: Mark[] = [];
  let xMm = 0;
  columnsMm.forEach((columnMm, rank) => {
    for (const block of input.blocks) {
      if (ranked.rankOf.get(block.id) !== rank) continue;
      marks.push(
        blockBoxMarks(block, boxes.get(block.id)!, xMm, middleOf.get(block.id)!, columnMm),
      );
    }
    marks.push(...passMarks(ranked, rank, middleOf, xMm, columnMm));
    const leftMm = xMm + columnMm;
    const channel = channels[rank];
    xMm = leftMm + (channel ? channelNeedMm(channel) + spareMm : 0);
    if (channel) marks.push(...spreadChannel(channel, leftMm, xMm));
  });
  const bottomsMm = [...boxes].map(([id, box]) => middleOf.get(id)! + box.heightMm / 2);
  return { marks, widthMm: xMm, heightMm: Math.max(...bottomsMm, ...middleOf.values()) };
}

/** Everything about a diagram but where its columns stand. */
interface Plan {
  readonly boxes: ReadonlyMap<string, BlockBox>;
  readonly middleOf: ReadonlyMap<string, number>;
  readonly channels: readonly Channel[];
  readonly columnsMm: readonly number[];
  readonly needMm: number;
}

function planned(input: BlockDiagramInput, ranked: RankedBlocks, textMaxMm: number): Plan {
  const boxes = boxesOf(input, ranked, textMaxMm);
  const heightOf = new Map([...boxes].map(([id, box]) => [id, box.heightMm]));
  const middleOf = placedColumns(ranked, heightOf);
  const channels = tracksWithoutOverlap(ranked, middleOf);
  const columnsMm = Array.from({ length: channels.length + 1 }, (_, rank) =>
    Math.max(...[...boxes].map(([id, box]) => (ranked.rankOf.get(id) === rank ? box.widthMm : 0))),
  );
  const needMm = [...columnsMm, ...channels.map(channelNeedMm)].reduce(
    (sumMm, each) => sumMm + each,
    0,
  );
  return { boxes, middleOf, channels, columnsMm, needMm };
}

const channelNeedMm = ({ tracks }: Channel): number =>
  2 * CHANNEL_END_MM + Math.max(1, tracks.size) * TRACK_MM;

function spreadChannel(channel: Channel, leftMm: number, rightMm: number): Mark[] {
  const pitchMm = (rightMm - leftMm - 2 * CHANNEL_END_MM) / Math.max(1, channel.tracks.size);
  const trackXOf = (key: string): number =>
    leftMm + CHANNEL_END_MM + (channel.tracks.get(key)! + 0.5) * pitchMm;
  return channelMarks(channel.lines, leftMm, rightMm, trackXOf);
}

function boxesOf(
  input: BlockDiagramInput,
  ranked: RankedBlocks,
  textMaxMm: number,
): Map<string, BlockBox> {
  const nameOf = new Map(input.blocks.map(({ id, name }) => [id, name]));
  return new Map(
    input.blocks.map((block) => {
      const also = ranked.back
        .filter(({ from }) => from === block.id)
        .map(({ to }) => nameOf.get(to)!);
      const outCount = ranked.nets.filter(({ from }) => from === block.id).length;
      const inCount = ranked.nets.filter(({ to }) => to.includes(block.id)).length;
      return [block.id, blockBox(block, also, Math.max(outCount, inCount), textMaxMm)];
    }),
  );
}

interface Channel {
  readonly lines: readonly ChannelLine[];
  readonly tracks: ReadonlyMap<string, number>;
}

/** Tracks of every channel. Where nets would lie on each other the ports on the feeding side are shifted a little and all is tried again. */
function tracksWithoutOverlap(
  ranked: RankedBlocks,
  middleOf: ReadonlyMap<string, number>,
): Channel[] {
  const channelCount = Math.max(...ranked.rankOf.values());
  return Array.from({ length: channelCount }, (_, rank) => {
    for (const shiftMm of [0, 0.7, -0.7, 1.2, -1.2]) {
      const lines = channelLines(ranked, middleOf, rank, shiftMm);
      const tracks = channelTracks(lines);
      if (tracks) return { lines, tracks };
    }
    throw new Error(
      `the lines right of column ${rank + 1} of the block diagram cannot be laid apart`,
    );
  });
}

function channelLines(
  ranked: RankedBlocks,
  middleOf: ReadonlyMap<string, number>,
  rank: number,
  shiftMm: number,
): ChannelLine[] {
  return ranked.nets.flatMap((net) => {
    const keys = netStops(net, ranked).get(rank + 1);
    if (!keys) return [];
    const starts = ranked.rankOf.get(net.from) === rank;
    const leftYMm = starts
      ? outPortMm(net, ranked, middleOf) + shiftMm
      : middleOf.get(passKey(net, rank))!;
    const rightYsMm = keys.map((key) =>
      ranked.rankOf.has(key) ? inPortMm(net, key, ranked, middleOf) : middleOf.get(key)!,
    );
    return [{ key: net.key, leftYMm, rightYsMm, alwaysLive: net.alwaysLive }];
  });
}

/** Ports of a side are spread evenly about the middle of the box. */
const spreadMm = (index: number, count: number): number => (index - (count - 1) / 2) * PORT_MM;

function outPortMm(net: Net, ranked: RankedBlocks, middleOf: ReadonlyMap<string, number>): number {
  const side = ranked.nets.filter(({ from }) => from === net.from);
  return middleOf.get(net.from)! + spreadMm(side.indexOf(net), side.length);
}

function inPortMm(
  net: Net,
  to: string,
  ranked: RankedBlocks,
  middleOf: ReadonlyMap<string, number>,
): number {
  const rank = ranked.rankOf.get(to)!;
  const heightOf = (each: Net): number =>
    middleOf.get(ranked.rankOf.get(each.from) === rank - 1 ? each.from : passKey(each, rank - 1))!;
  const side = ranked.nets
    .filter((each) => each.to.includes(to))
    .toSorted((a, b) => heightOf(a) - heightOf(b));
  return middleOf.get(to)! + spreadMm(side.indexOf(net), side.length);
}

/** Lines that go through the gaps of a column to a later one. */
function passMarks(
  ranked: RankedBlocks,
  rank: number,
  middleOf: ReadonlyMap<string, number>,
  leftMm: number,
  widthMm: number,
): Mark[] {
  return ranked.nets.flatMap((net): Mark[] => {
    const yMm = middleOf.get(passKey(net, rank));
    if (yMm === undefined) return [];
    return [
      {
        kind: "line",
        from: point(leftMm, yMm),
        to: point(leftMm + widthMm, yMm),
        stroke: { widthMm: net.alwaysLive ? 1 : 0.5, colour: "ink", cap: "round" },
      },
    ];
  });
}
