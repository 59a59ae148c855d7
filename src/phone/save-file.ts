/** Puts a file into the phone's own downloads. */

/** By then the browser has begun to read it. */
const LET_GO_MS = 60_000;

export function saveFile(file: File): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = file.name;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), LET_GO_MS);
}

export const saveBytes = (bytes: Uint8Array, name: string, type: string): void =>
  saveFile(new File([new Uint8Array(bytes)], name, { type }));
