import type { JsonPath } from "../read/jsonPointer.ts";
import { isReservedName } from "../read/reservedNames.ts";

export type SetResult =
  | { readonly ok: true; readonly value: unknown; readonly before: Before }
  | { readonly ok: false };

/** What stood at the place before: a value, or nothing. */
export type Before =
  | { readonly isAbsent: true }
  | { readonly isAbsent: false; readonly value: unknown };

/**
 * A copy of plain data with one place set, or taken away where `after` is absent. Not ok where the path leads through something that
 * is not there, or would lengthen or shorten a list.
 */
export function setAt(holder: unknown, path: JsonPath, after: Before): SetResult {
  const [step, ...rest] = path;
  if (step === undefined || typeof holder !== "object" || holder === null) return { ok: false };
  if (typeof step === "string" && isReservedName(step)) return { ok: false };
  const isThere = Object.hasOwn(holder, step);
  if (Array.isArray(holder)) {
    if (typeof step !== "number" || !isThere) return { ok: false };
    if (rest.length === 0 && after.isAbsent) return { ok: false };
  }
  const old: unknown = isThere ? Reflect.get(holder, step) : undefined;
  const isThereNow = isThere && old !== undefined;
  if (rest.length === 0) {
    const before: Before = isThereNow ? { isAbsent: false, value: old } : { isAbsent: true };
    return { ok: true, value: withMember(holder, step, after), before };
  }
  const inner = setAt(old, rest, after);
  if (!inner.ok) return inner;
  const member: Before = { isAbsent: false, value: inner.value };
  return { ok: true, value: withMember(holder, step, member), before: inner.before };
}

function withMember(holder: object, step: string | number, member: Before): unknown {
  if (Array.isArray(holder)) {
    return member.isAbsent ? holder : holder.with(Number(step), member.value);
  }
  const { [String(step)]: _, ...others } = holder as Record<string, unknown>;
  return member.isAbsent ? others : { ...others, [step]: member.value };
}
