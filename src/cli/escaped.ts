// Text from files on its way to a terminal: what could move the cursor or turn the direction is shown as a mark.

const DANGEROUS = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069\ufeff]/g;
const mark = (character: string): string => `\\u${character.charCodeAt(0).toString(16).padStart(4, "0")}`;

/** Control and direction characters as \uXXXX; line ends and tabs stay. */
export const escaped = (text: string): string => text.replace(DANGEROUS, mark);
