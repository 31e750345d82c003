import { create } from "zustand";

/** Whether the keys lie open to be read and changed. */
export const useKeysShown = create<{ readonly isOpen: boolean }>()(() => ({ isOpen: false }));

export function openKeys(): void {
  useKeysShown.setState({ isOpen: true });
}

export function closeKeys(): void {
  useKeysShown.setState({ isOpen: false });
}
