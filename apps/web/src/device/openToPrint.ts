const KEPT_MS = 600_000;

/**
 * Opens a PDF in a page of its own, where the reader's own print command keeps the scale at 100 %.
 *
 * @returns false where the browser would not open a page
 */
export function openToPrint(bytes: Uint8Array): boolean {
  const address = URL.createObjectURL(
    new Blob([bytes as Uint8Array<ArrayBuffer>], { type: "application/pdf" }),
  );
  const isOpen = open(address, "_blank") !== null;
  setTimeout(() => URL.revokeObjectURL(address), isOpen ? KEPT_MS : 0);
  return isOpen;
}
