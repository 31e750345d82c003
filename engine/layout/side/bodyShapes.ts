import {
  arc,
  crankcase,
  curve,
  line,
  plate,
  ring,
  type SideShape,
  solid,
  upright,
  wheel,
} from "./sideShape.ts";

export type SideBody =
  | "single"
  | "twin"
  | "four"
  | "enduro"
  | "big-twin"
  | "three-wheeler"
  | "other";

const fork = [
  line([276, 845], [552, 235]),
  line([308, 855], [586, 250]),
  line([404, 560], [440, 576]),
  curve([566, 240], [592, 178], [690, 158], [800, 214]),
];
const shell = [ring(430, 300, 92, true), line([372, 228], [366, 372])];
const guards = (frontMm: number): readonly SideShape[] => [
  arc(290, 850, frontMm, 195, 320),
  arc(1640, 850, 345, 208, 350),
];
const tank = solid(
  [606, 338],
  [650, 256],
  [790, 226],
  [930, 268],
  [1012, 348],
  [975, 388],
  [800, 396],
  [650, 384],
);
const bench = solid(
  [968, 338],
  [1060, 302],
  [1260, 312],
  [1470, 300],
  [1560, 332],
  [1530, 374],
  [1260, 388],
  [1030, 384],
);
const saddle = solid(
  [1010, 380],
  [1040, 330],
  [1160, 326],
  [1280, 300],
  [1310, 330],
  [1240, 378],
  [1100, 396],
);
const frame = [
  line([566, 300], [610, 400], [1160, 424], [1460, 424]),
  line([590, 380], [650, 916], [1150, 930], [1215, 700], [1160, 424]),
  line([1185, 838], [1640, 842]),
  line([1185, 868], [1640, 862]),
];
const shocks = [line([1440, 420], [1586, 808]), line([1470, 412], [1616, 800])];
const tail = [solid([1745, 430], [1795, 440], [1812, 500], [1760, 510])];
const exhaust = [
  curve([770, 470], [690, 560], [690, 800], [800, 950], [1190, 952]),
  plate([1190, 915], [1300, 905], [1770, 890], [1790, 975], [1300, 985], [1190, 968]),
];
const sidePanel = plate([1030, 410], [1230, 420], [1210, 590], [1080, 600]);
const road = [...guards(345), ...fork, ...frame, ...shell, ...tail];

const BODIES: Readonly<Record<SideBody, readonly SideShape[]>> = {
  single: [
    ...wheel(290, 310),
    ...wheel(1640, 310),
    ...road,
    ...shocks,
    ...crankcase(690, 1060),
    ...upright(800, 920),
    ...exhaust,
    sidePanel,
    tank,
    saddle,
  ],
  twin: [
    ...wheel(290, 310),
    ...wheel(1640, 310),
    ...road,
    ...shocks,
    ...crankcase(680, 1130),
    ...upright(770, 940),
    ...exhaust,
    sidePanel,
    tank,
    bench,
  ],
  four: [
    ...wheel(290, 305),
    ...wheel(1640, 305),
    ...road,
    ...shocks,
    ...crankcase(680, 1140),
    ...upright(740, 970),
    ...exhaust,
    plate([1190, 850], [1300, 842], [1740, 820], [1760, 885], [1300, 900], [1190, 888]),
    sidePanel,
    tank,
    bench,
  ],
  enduro: [
    ...wheel(290, 345),
    ...wheel(1640, 310),
    curve([60, 470], [200, 398], [380, 404], [500, 470]),
    curve([1380, 410], [1560, 404], [1740, 420], [1830, 470]),
    ...fork,
    ...frame,
    plate([360, 210], [480, 196], [500, 400], [380, 416]),
    ...tail,
    ...shocks,
    ...crankcase(700, 1060),
    ...upright(790, 910),
    curve([790, 470], [720, 560], [760, 640], [1000, 600], [1250, 500]),
    plate([1250, 455], [1640, 400], [1660, 470], [1262, 540]),
    solid([640, 350], [690, 262], [800, 244], [920, 290], [985, 356], [880, 396], [720, 392]),
    solid(
      [950, 344],
      [1060, 318],
      [1300, 320],
      [1540, 318],
      [1600, 344],
      [1500, 374],
      [1240, 384],
      [1000, 380],
    ),
  ],
  "big-twin": [
    ...wheel(290, 310),
    ...wheel(1640, 310),
    ...road,
    ...shocks,
    ...crankcase(640, 1180),
    solid([760, 690], [830, 640], [930, 650], [980, 730], [930, 810], [820, 810]),
    ring(870, 730, 62),
    curve([800, 800], [760, 900], [860, 952], [1190, 952]),
    exhaust[1]!,
    sidePanel,
    tank,
    bench,
    solid([470, 180], [560, 96], [640, 180], [600, 260], [520, 300]),
  ],
  "three-wheeler": [
    ...wheel(290, 290),
    ...wheel(1600, 290),
    ring(1690, 850, 300),
    arc(290, 850, 330, 195, 320),
    ...fork,
    ...frame,
    ...shell,
    ...tail,
    ...crankcase(680, 1060),
    ...upright(790, 930),
    tank,
    saddle,
    plate(
      [1230, 440],
      [1840, 440],
      [1860, 800],
      [1780, 560],
      [1480, 560],
      [1330, 800],
      [1220, 800],
    ),
  ],
  other: [
    ring(430, 300, 60),
    ring(290, 850, 310),
    ring(1640, 850, 310),
    line([290, 850], [566, 300], [1640, 850]),
  ],
};

/** The lines of a body at the size they were drawn; the ground under it is the last. */
export const bodyShapes = (body: SideBody): readonly SideShape[] => [
  ...BODIES[body],
  line([-120, 1160], [2040, 1160]),
];
