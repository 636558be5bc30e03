/** How many lines `text` has before an offset, plus one. Offsets are asked in rising order. */
export function lineCounter(text: string): (offset: number) => number {
  let line = 1;
  let at = 0;
  return (offset) => {
    for (; at < offset; at++) if (text.charCodeAt(at) === 10) line++;
    return line;
  };
}
