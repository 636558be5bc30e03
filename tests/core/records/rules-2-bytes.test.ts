// From bytes to text, and from text to fields: encodings, delimiters, quotes. Every sentence of the rules with its reading, stated by hand.
import { expect, it } from "vitest";
import type { ReadOptions } from "../../../src/core/records/index.ts";
import { fileReading } from "../../support/column-reading.ts";

type Case = readonly [title: string, content: string | Uint8Array, lines: readonly string[], options?: ReadOptions];

const utf16le = (text: string) => new Uint8Array(Buffer.from(text, "utf16le"));
const utf16be = (text: string) => new Uint8Array(Buffer.from(text, "utf16le").swap16());
const latin1 = (text: string) => new Uint8Array(Buffer.from(text, "latin1"));
const TABLE = "plank,mass (g)\nA1,2.5\nA2,3\n";
const READ = ["case: plank text | mass quantity g", '"A1" | 2.5 g', '"A2" | 3 g'];

const bytes: Case[] = [
  ["UTF-8 with a mark", `\ufeff${TABLE}`, READ],
  ["UTF-16LE with a mark", utf16le(`\ufeff${TABLE}`), READ],
  ["UTF-16BE with a mark", utf16be(`\ufeff${TABLE}`), READ],
  ["UTF-16LE without a mark", utf16le(TABLE), [...READ, "encoding-guessed"]],
  ["UTF-16BE without a mark", utf16be(TABLE), [...READ, "encoding-guessed"]],
  [
    "Windows-1252",
    latin1("plank,finish\nA1,ge\u00f6lt \u0096 fein\n"),
    ["case: plank text | finish text", '"A1" | "geölt – fein"', "encoding-guessed"],
  ],
  [
    "a byte that Windows-1252 does not define",
    latin1("plank,finish,mass (g)\nA1,d\u0081ll,2\u008d\nA2,m\u00e4h,3\n"),
    [
      "case: plank text | finish text | mass quantity g",
      '"A1" | "d\ufffdll" !bad-character | !bad-character',
      '"A2" | "mäh" | 3 g',
      "encoding-guessed",
    ],
  ],
  [
    "an encoding given",
    latin1("plank,finish\nA1,ge\u00f6lt\n"),
    ["case: plank text | finish text", '"A1" | "geölt"'],
    { encoding: "windows-1252" },
  ],
  [
    "a NUL inside UTF-8",
    "plank,mass (g),finish\nA1,2\u00005,o\u0000il\nA2,3,wax\n",
    [
      "case: plank text | mass quantity g | finish text",
      '"A1" | 25 g !nul-removed | "oil" !nul-removed',
      '"A2" | 3 g | "wax"',
    ],
  ],
  ["no bytes", "", ["empty-file"]],
  ["white space alone", " \n\t\r\n ", ["empty-file"]],
  ["a mark alone", "\ufeff", ["empty-file"]],
  ["a picture", new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 0x0d]), ["not-a-table"]],
  ["a document", "%PDF-1.7\n1 0 obj\n", ["not-a-table"]],
  ["control characters", `a,b\n${"\u0001".repeat(20)},2\n`, ["not-a-table"]],
];

const splitting: Case[] = [
  ["CRLF, LF and CR together", "plank,mass (g)\r\nA1,2.5\nA2,3\r", READ],
  [
    "a line end inside quotes belongs to the field",
    'plank,finish\nA1,"oil\r\nand wax"\nA2,"x\ry"\n',
    ["case: plank text | finish text", '"A1" | "oil\\nand wax"', '"A2" | "x\\ny"'],
  ],
  ["sep= decides", "sep=|\nplank|a;b\nA1|x;y\n", ["case: plank text | a;b text", '"A1" | "x;y"', "aside 1 sep-line"]],
  [
    "SEP= with a tab",
    "SEP=\t\nplank\ta,b\nA1\tx,y\n",
    ["case: plank text | a,b text", '"A1" | "x,y"', "aside 1 sep-line"],
  ],
  [
    "the largest share wins",
    "plank;finish\nA1;oil, wax\nA2;oil\n",
    ["case: plank text | finish text", '"A1" | "oil, wax"', '"A2" | "oil"'],
  ],
  [
    "at equal share the larger number of fields",
    "plank;f,q,r\nA1;x,w,z\n",
    ["case: plank;f text | q text | r text", '"A1;x" | "w" | "z"'],
  ],
  ["then tab before semicolon", "plank\tf;g\nA1\tx;y\n", ["case: plank text | f;g text", '"A1" | "x;y"']],
  ["semicolon before pipe and comma", "plank;f|g\nA1;x|y\n", ["case: plank text | f|g text", '"A1" | "x|y"']],
  ["pipe before comma", "plank|f,q\nA1|x,y\n", ["case: plank text | f,q text", '"A1" | "x,y"']],
  ["one column", "plank\nA one\nA two\n", ["case: plank text", '"A one"', '"A two"']],
  [
    "comments don't vote",
    "# a;b;c\n# d;e;f\nplank,finish\nA1,oil\n",
    ["case: plank text | finish text", '"A1" | "oil"', "aside 1 comment", "aside 2 comment"],
  ],
  [
    "pipes at both ends",
    "| plank | mass (g) |\n|---|:--:|\n| A1 | 2.5 |\n| A2 | |\n",
    ["case: plank text | mass quantity g", '"A1" | 2.5 g', '"A2" | blank', "aside 2 rule-line"],
  ],
  [
    "pipes at no end",
    "plank | mass (g)\n---|---\nA1 | 2.5\n",
    ["case: plank text | mass quantity g", '"A1" | 2.5 g', "aside 2 rule-line"],
  ],
  ["a delimiter given", "plank,f;q\nA1,x;w\n", ["case: plank,f text | q text", '"A1,x" | "w"'], { delimiter: ";" }],
  [
    "quotes and doubled quotes",
    'plank,finish\nA1,"a ""b"", c"\n"A2",""\n',
    ["case: plank text | finish text", '"A1" | "a \\"b\\", c"', '"A2" | blank'],
  ],
  ["spaces before a quote", 'plank,finish\nA1,  "a, b"\n', ["case: plank text | finish text", '"A1" | "a, b"']],
  [
    "text after a closing quote",
    'plank,finish\nA1,"good" but dry\n',
    ["case: plank text | finish text", '"A1" | "good but dry" !stray-quote'],
  ],
  [
    "a quote elsewhere is a character",
    'plank,width\nA1,7/64"\nA2,1/8"\n',
    ["case: plank text | width quantity [in_i]", '"A1" | 0.109375 [in_i]', '"A2" | 0.125 [in_i]'],
  ],
  [
    "a quote that never closes",
    'plank,finish,mass (g)\nA1,"never closed,2\nA2,wax,3\n',
    [
      "case: plank text | finish text | mass quantity g",
      '"A1" | "\\"never closed" !unclosed-quote | 2 g',
      '"A2" | "wax" | 3 g',
    ],
  ],
];

for (const [title, content, lines, options] of [...bytes, ...splitting])
  it(title, () => expect(fileReading(content, "case.csv", options)).toEqual(lines));
