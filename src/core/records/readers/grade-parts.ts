// What a cell says as a grade: out of so many, stars, signs, or letters.
export type GradeParts =
  | { readonly sort: "out-of" | "hollow-stars" | "stars"; readonly value: number; readonly scale: string }
  | { readonly sort: "signs" | "letters"; readonly value: string; readonly scale: null };

const SIGNS = new Set(["++", "+", "o", "0", "+/-", "-", "--", "+++"]);
const OUT_OF = /^(\d{1,3}(?:[.,]\d{1,3})?) ?(?:\/|of|out of) ?(\d{1,3})$/i;

/** Whether the text is one of the signs from ++ to --. */
export const isSign = (text: string): boolean => SIGNS.has(text);

/** Every way to read a text as a grade; a text may be a sign and nothing else, or a letter and nothing else. */
export function gradeParts(text: string): GradeParts | null {
  if (text.length > 24 || text === "") return null;
  const outOf = OUT_OF.exec(text);
  if (outOf) {
    const scale = Number(outOf[2]);
    return scale === 0
      ? null
      : { sort: "out-of", value: Number((outOf[1] ?? "").replace(",", ".")), scale: `/${scale}` };
  }
  if (/^[★☆]+$/.test(text) && text.includes("☆"))
    return { sort: "hollow-stars", value: text.replaceAll("☆", "").length, scale: `/${text.length}` };
  if (/^(?:\*+|★+)$/.test(text)) return { sort: "stars", value: text.length, scale: "*" };
  if (isSign(text)) return { sort: "signs", value: text, scale: null };
  return /^(?:AAA|AA|[A-F])[+-]?$/.test(text) ? { sort: "letters", value: text, scale: null } : null;
}
