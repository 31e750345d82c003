import type { ReactNode } from "react";

type SlipProps = {
  readonly title: ReactNode;
  readonly label: string;
  readonly onClose: () => void;
  /** Where on the screen the thing stands; on a phone the slip rises from the bottom whatever this says. */
  readonly at?: { readonly x: number; readonly y: number } | undefined;
  readonly children: ReactNode;
};

const WIDTH_PX = 280;
const GAP_PX = 28;

/** A small paper slip beside the thing touched, holding its facts, its finding, the best remedy and the verbs that fit it. */
export function Slip({ title, label, onClose, at, children }: SlipProps): ReactNode {
  return (
    <section className="slip" aria-label={label} style={at === undefined ? undefined : placed(at)}>
      <header className="slip-head">
        <div className="slip-title">{title}</div>
        <button type="button" className="act small" onClick={onClose}>
          close
        </button>
      </header>
      {children}
    </section>
  );
}

/** Beside the point, on the side with more room, wholly on the sheet. */
function placed({ x, y }: { x: number; y: number }): React.CSSProperties {
  const sheet = document.getElementById("sheet")?.getBoundingClientRect();
  if (sheet === undefined) return {};
  const right = x + GAP_PX + WIDTH_PX < sheet.right;
  const left = right ? x + GAP_PX : Math.max(sheet.left + 8, x - GAP_PX - WIDTH_PX);
  const top = Math.min(
    Math.max(y - 120, sheet.top + 8),
    Math.max(sheet.top + 8, sheet.bottom - 420),
  );
  return { left, top, width: WIDTH_PX, maxHeight: sheet.bottom - 8 - top };
}

/** A row of a slip: what, how much, where from. */
export function SlipRow({
  name,
  children,
  note,
}: {
  name: string;
  children: ReactNode;
  note?: ReactNode;
}): ReactNode {
  return (
    <div className="slip-row">
      <span className="note">{name}</span>
      <span className="slip-value">{children}</span>
      <span className="note">{note}</span>
    </div>
  );
}
