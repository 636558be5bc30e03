// The bytes of a file as base64, a piece at a time, so that a large one does not hold up the page.

/** A whole number of threes, so that the pieces join without padding between them. */
const PIECE = 3 * 2 ** 20;

const pieceOf = (bytes: Blob) =>
  new Promise<string>((done, failed) => {
    const reader = new FileReader();
    reader.addEventListener("load", () => done(String(reader.result).replace(/^[^,]*,/, "")));
    reader.addEventListener("error", () => failed(reader.error));
    reader.readAsDataURL(bytes);
  });

/** The base64 of a file as a blob; fails where the file cannot be read, as a folder cannot. */
export async function base64Of(file: Blob): Promise<Blob> {
  const pieces: Blob[] = [];
  for (let at = 0; at < file.size; at += PIECE) pieces.push(new Blob([await pieceOf(file.slice(at, at + PIECE))]));
  // An empty file has no piece that would show whether it can be read.
  if (file.size === 0) await pieceOf(file);
  return new Blob(pieces);
}
