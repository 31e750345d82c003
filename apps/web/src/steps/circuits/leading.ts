import { create } from "zustand";

/** A wire being led over a place between its ends. */
interface Leading {
  readonly wire: string | null;
  /** Where it is led over; empty: not said yet. */
  readonly pin: string;
}

export const useLeading = create<Leading>()(() => ({ wire: null, pin: "" }));

export function leadOver(wire: string, pin = ""): void {
  useLeading.setState({ wire, pin });
}

export function stopLeading(): void {
  useLeading.setState({ wire: null, pin: "" });
}
