/** A text in quotes; a quote or a backslash in it stands behind a backslash. */
export const quotedText = (text: string): string => `"${text.replace(/["\\]/g, "\\$&")}"`;
