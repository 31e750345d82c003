import { shortcutOf } from "../frame/shortcuts.ts";

/** Moves and scales one layer inside a frame by hand, wheel and keys. */
export interface PanZoom {
  /** Tells the size of what lies on the layer, and fits it; with `keepsPlace` not where a hand has moved it. */
  setSize(widthMm: number, heightMm: number, fit: Fit, keepsPlace: boolean): void;
  end(): void;
}

/** All of it, its width, or all of it but never smaller than can be read. */
export type Fit = "all" | "width" | "readable";

interface Place {
  readonly x: number;
  readonly y: number;
}

/** Where the layer lies in its frame. */
class LayerView {
  x = 0;
  y = 0;
  scale = 1;
  width = 0;
  height = 0;
  how: Fit = "all";
  keepsPlace = false;
  isMoved = false;

  constructor(
    readonly frame: HTMLElement,
    readonly layer: HTMLElement,
  ) {}

  put(): void {
    this.layer.style.transform = `translate(${this.x}px, ${this.y}px) scale(${this.scale})`;
    this.frame.dataset.scale = this.scale < FAR_SCALE ? "far" : "near";
  }

  fit(): void {
    const { clientWidth, clientHeight } = this.frame;
    if (this.width === 0 || clientWidth === 0) return;
    const across = (clientWidth - 2 * MARGIN_PX) / this.width;
    const down = (clientHeight - 2 * MARGIN_PX) / this.height;
    const whole = Math.min(across, down);
    const scale = {
      all: whole,
      width: across,
      readable: Math.min(LARGE_SCALE, Math.max(whole, READABLE_SCALE)),
    }[this.how];
    this.scale = Math.min(SCALE_MOST, scale);
    this.x = Math.max((clientWidth - this.width * this.scale) / 2, this.leftmost());
    this.isMoved = false;
    this.y = Math.max(MARGIN_PX, (clientHeight - this.height * this.scale) / 2);
    this.put();
  }

  /** What is wider than the view begins at its left edge, unless it is fitted to it. */
  private leftmost(): number {
    return this.how === "readable" ? MARGIN_PX : Number.NEGATIVE_INFINITY;
  }

  refit(): void {
    if (!(this.keepsPlace && this.isMoved)) this.fit();
  }

  zoomAt({ x, y }: Place, factor: number): void {
    const scale = Math.min(SCALE_MOST, Math.max(SCALE_LEAST, this.scale * factor));
    const grown = scale / this.scale;
    this.x = x - (x - this.x) * grown;
    this.y = y - (y - this.y) * grown;
    this.scale = scale;
    this.isMoved = true;
    this.put();
  }

  shift(x: number, y: number): void {
    this.x += x;
    this.y += y;
    this.isMoved = true;
    this.put();
  }

  within({ clientX, clientY }: { clientX: number; clientY: number }): Place {
    const box = this.frame.getBoundingClientRect();
    return { x: clientX - box.left, y: clientY - box.top };
  }
}

const PX_PER_MM = 4;
const FAR_SCALE = 0.35;
const SCALE_LEAST = 0.05;
/** Lettering of a drawing is then as large as a note on the screen. */
const READABLE_SCALE = 0.8;
/** A small drawing is not blown up further than this. */
const LARGE_SCALE = 1.25;
const SCALE_MOST = 8;
const STEP_PX = 60;
const MARGIN_PX = 16;
const MOUSE_SLOP_PX = 4;
const TOUCH_SLOP_PX = 10;

interface Hooks {
  readonly tap: (x: number, y: number, target: Element | null) => void;
}

/** Elements inside that carry `data-hand` handle their own drags; the sheet leaves them alone. */
export function panZoom(frame: HTMLElement, layer: HTMLElement, hooks: Hooks): PanZoom {
  const view = new LayerView(frame, layer);
  const watch = new ResizeObserver(() => view.refit());
  watch.observe(frame);
  const ends = [
    followFingers(view, hooks),
    listen(frame, "wheel", (event) => rollWheel(view, event)),
    listen(frame, "keydown", (event) => pressKey(view, event)),
  ];
  return {
    setSize(widthMm, heightMm, how, keepsPlace) {
      const [width, height] = [widthMm * PX_PER_MM, heightMm * PX_PER_MM];
      Object.assign(view, { width, height, how, keepsPlace });
      view.refit();
    },
    end() {
      watch.disconnect();
      for (const end of ends) end();
    },
  };
}

function listen<K extends keyof HTMLElementEventMap>(
  frame: HTMLElement,
  name: K,
  heard: (event: HTMLElementEventMap[K]) => void,
): () => void {
  frame.addEventListener(name, heard, { passive: false });
  return () => frame.removeEventListener(name, heard);
}

/** One finger or the mouse pans and taps, two fingers pinch. */
function followFingers(view: LayerView, hooks: Hooks): () => void {
  const fingers = new Map<number, Place>();
  let began: (Place & { readonly target: Element; moved: boolean }) | null = null;
  const down = (event: PointerEvent): void => {
    const target = event.target as Element;
    if (target.closest("[data-hand]") !== null) return;
    fingers.set(event.pointerId, view.within(event));
    if (fingers.size === 1) began = { ...view.within(event), target, moved: false };
    view.frame.setPointerCapture(event.pointerId);
  };
  const move = (event: PointerEvent): void => {
    const before = fingers.get(event.pointerId);
    if (before === undefined) return;
    const now = view.within(event);
    const slop = event.pointerType === "mouse" ? MOUSE_SLOP_PX : TOUCH_SLOP_PX;
    if (began && !began.moved && Math.hypot(now.x - began.x, now.y - began.y) < slop) return;
    if (began) began.moved = true;
    const other = [...fingers].find(([id]) => id !== event.pointerId)?.[1];
    if (other === undefined) view.shift(now.x - before.x, now.y - before.y);
    else pinch(view, other, before, now);
    fingers.set(event.pointerId, now);
  };
  const up = (event: PointerEvent): void => {
    const isTap = began !== null && !began.moved && fingers.size === 1;
    if (isTap && event.type === "pointerup" && began) {
      hooks.tap(event.clientX, event.clientY, began.target);
    }
    fingers.delete(event.pointerId);
    if (fingers.size === 0) began = null;
  };
  const ends = [
    listen(view.frame, "pointerdown", down),
    listen(view.frame, "pointermove", move),
    listen(view.frame, "pointerup", up),
    listen(view.frame, "pointercancel", up),
  ];
  return () => {
    for (const end of ends) end();
  };
}

function pinch(view: LayerView, other: Place, before: Place, now: Place): void {
  const apart = (at: Place): number => Math.hypot(at.x - other.x, at.y - other.y);
  const grown = apart(now) / apart(before);
  const middle = { x: (now.x + other.x) / 2, y: (now.y + other.y) / 2 };
  if (Number.isFinite(grown)) view.zoomAt(middle, grown);
}

function rollWheel(view: LayerView, event: WheelEvent): void {
  event.preventDefault();
  if (event.ctrlKey) view.zoomAt(view.within(event), Math.exp(-event.deltaY / 300));
  else view.shift(-event.deltaX, -event.deltaY);
}

function pressKey(view: LayerView, event: KeyboardEvent): void {
  const { frame } = view;
  if (event.target !== frame || event.ctrlKey || event.metaKey) return;
  const middle = { x: frame.clientWidth / 2, y: frame.clientHeight / 2 };
  const acts: Readonly<Record<string, () => void>> = {
    "zoom-in": () => view.zoomAt(middle, 1.25),
    "zoom-out": () => view.zoomAt(middle, 0.8),
    "zoom-fit": () => view.fit(),
    ArrowLeft: () => view.shift(STEP_PX, 0),
    ArrowRight: () => view.shift(-STEP_PX, 0),
    ArrowUp: () => view.shift(0, STEP_PX),
    ArrowDown: () => view.shift(0, -STEP_PX),
  };
  const act = acts[shortcutOf(event) ?? event.key];
  if (act === undefined) return;
  event.preventDefault();
  act();
}
