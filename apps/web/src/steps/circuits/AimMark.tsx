import type { ReactNode } from "react";

type AimMarkProps = {
  readonly aim: {
    readonly id: string;
    readonly at: { readonly xMm: number; readonly yMm: number };
  };
};

/** What a wire would be let go on: ringed and named. */
export function AimMark({ aim: { id, at } }: AimMarkProps): ReactNode {
  return (
    <>
      <circle className="pin-aim" cx={at.xMm} cy={at.yMm} r="3.4" />
      <text className="pin-name" x={at.xMm + 4.5} y={at.yMm - 3}>
        {id}
      </text>
    </>
  );
}
