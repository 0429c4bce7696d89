/** Hands a file to the reader. */
export function saveFile(content: Blob, name: string): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser has to have read it before the address goes.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
