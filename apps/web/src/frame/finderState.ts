import { create } from "zustand";

export const useFinder = create<{ readonly isOpen: boolean }>()(() => ({ isOpen: false }));

export function openFinder(): void {
  useFinder.setState({ isOpen: true });
}

export function closeFinder(): void {
  useFinder.setState({ isOpen: false });
}
