/** Hands a text or bytes over as a file to be saved. */
export function saveFile(fileName: string, content: BlobPart, type: string): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  link.click();
  // The browser has taken it by then.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
