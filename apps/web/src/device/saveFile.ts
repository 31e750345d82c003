const KEPT_MS = 60_000;

/** Hands a file to the browser to be saved under a name. */
export function saveFile(name: string, content: Uint8Array | string, type: string): void {
  const address = URL.createObjectURL(new Blob([content as BlobPart], { type }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), KEPT_MS);
}
