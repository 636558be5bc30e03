// Which records are header, units and rows: every sentence of the rules with its reading, stated by hand.
import { expect, it } from "vitest";
import { fileReading } from "../../support/column-reading.ts";

type Case = readonly [title: string, content: string, lines: readonly string[]];

const ragged: Case[] = [
  [
    "short rows",
    "plank,a (g),b (g)\nA1,1,2\nA2,3\n",
    ["case: plank text | a quantity g | b quantity g", '"A1" | 1 g | 2 g', '"A2" | 3 g | blank', "row 2 short-row"],
  ],
  [
    "extra empty fields vanish",
    "plank,a (g)\nA1,1,,\nA2,3,\n",
    ["case: plank text | a quantity g", '"A1" | 1 g', '"A2" | 3 g'],
  ],
  [
    "extra fields get a column",
    "plank,a (g)\nA1,1\nA2,3,x,w\n",
    [
      "case: plank text | a quantity g | column 3 text | column 4 text",
      '"A1" | 1 g | blank | blank',
      '"A2" | 3 g | "x" | "w"',
      "row 2 long-row",
      "col 3 unnamed-column",
      "col 4 unnamed-column",
    ],
  ],
  [
    "columns of nothing are dropped",
    "plank,,a (g),\nA1,,1,\nA2,,3,\n",
    ["case: plank text | a quantity g", '"A1" | 1 g', '"A2" | 3 g'],
  ],
  [
    "a nameless column with values",
    "plank,,a (g)\nA1,x,1\nA2,,3\n",
    [
      "case: plank text | column 2 text | a quantity g",
      '"A1" | "x" | 1 g',
      '"A2" | blank | 3 g',
      "col 2 unnamed-column",
    ],
  ],
  [
    "the same name again",
    "plank,a (g),a (mm),a\nA1,1,2,x\n",
    [
      "case: plank text | a quantity g | a (2) quantity mm | a (3) text",
      '"A1" | 1 g | 2 mm | "x"',
      "col 3 duplicate-column",
      "col 4 duplicate-column",
    ],
  ],
  [
    "a name of several lines",
    'plank,"tap\n tone (Hz)"\nA1,110\n',
    ["case: plank text | tap tone quantity Hz", '"A1" | 110 Hz'],
  ],
];

const header: Case[] = [
  [
    "lines above it",
    "Boards of spring\nprinted,2024-03-01,\n\n// by hand\n#x,y\nplank,a (g),b (g)\nA1,1,2\nA2,3,4\n",
    [
      "case: plank text | a quantity g | b quantity g",
      '"A1" | 1 g | 2 g',
      '"A2" | 3 g | 4 g',
      "aside 1 preamble",
      "aside 2 preamble",
      "aside 4 comment",
      "aside 5 comment",
    ],
  ],
  [
    "none",
    "A1,1,2\nA2,3,4\n",
    ["case: column 1 text | column 2 quantity | column 3 quantity", '"A1" | 1 | 2', '"A2" | 3 | 4', "no-header"],
  ],
  [
    "none, though words stand further down",
    "A1,1,2\nplank,a,b\nA2,3,4\n",
    [
      "case: column 1 text | column 2 quantity | column 3 quantity",
      '"A1" | 1 | 2',
      '"plank" | !unreadable-number | !unreadable-number',
      '"A2" | 3 | 4',
      "no-header",
    ],
  ],
  [
    "a missing word is no name",
    "plank,-,c\nA1,1,2\nA2,3,4\n",
    [
      "case: column 1 text | column 2 quantity | column 3 quantity",
      '"plank" | blank | !unreadable-number',
      '"A1" | 1 | 2',
      '"A2" | 3 | 4',
      "no-header",
    ],
  ],
  ["of one column", "12\n13\n", ["case: column 1 quantity", "12", "13", "no-header"]],
  ["without rows", "plank,a (g)\n", ["case: plank text | a quantity g", "no-rows"]],
  ["with units and without rows", "plank,a\n,g\n", ["case: plank text | a quantity g", "aside 2 units-row", "no-rows"]],
];

const unitsRow: Case[] = [
  [
    "all units, brackets and dashes allowed",
    "plank,a,b,c\n-,[mm],(g),N m\nA1,1,2,3\n",
    [
      "case: plank text | a quantity mm | b quantity g | c quantity N.m",
      '"A1" | 1 mm | 2 g | 3 N.m',
      "aside 2 units-row",
    ],
  ],
  [
    "half are units",
    "plank,a,b\n,mm,blorf\nA1,1,2\n",
    ["case: plank text | a quantity mm | b quantity", '"A1" | 1 mm | 2', "aside 2 units-row", "col 3 unknown-unit"],
  ],
  [
    "fewer than half are a row",
    "plank,a,b\nA1,g,oil\nA2,h,wax\n",
    ["case: plank text | a text | b text", '"A1" | "g" | "oil"', '"A2" | "h" | "wax"'],
  ],
  [
    "digits make no units row",
    "plank,a,b\n,mm,x2\nA1,1,2\n",
    ["case: plank text | a text | b text", 'blank | "mm" | "x2"', '"A1" | "1" | "2"'],
  ],
  [
    "the header's unit beats it",
    "plank,a (cm),b\n,mm,g\nA1,1,2\n",
    ["case: plank text | a quantity cm | b quantity g", '"A1" | 1 cm | 2 g', "aside 2 units-row"],
  ],
];

const neighbours: Case[] = [
  [
    "every other column with votes agrees: that decides",
    "plank;a (mm);b (g)\nA1;1.234;2.5\nA2;2.345;3.5\n",
    [
      "case: plank text | a quantity mm | b quantity g",
      '"A1" | 1.234 mm | 2.5 g',
      '"A2" | 2.345 mm | 3.5 g',
      "col 2 decimal-from-other-columns",
    ],
  ],
  [
    "neighbours that disagree don't",
    "plank;a (mm);b (g);c (g)\nA1;1.234;2.5;2,5\n",
    ["case: plank text | a quantity mm | b quantity g | c quantity g", '"A1" | !ambiguous-number | 2.5 g | 2.5 g'],
  ],
  [
    "a neighbour at odds with itself doesn't",
    "plank;a (mm);b (g)\nA1;1.234;2.5\nA2;3;2,5\n",
    [
      "case: plank text | a quantity mm | b quantity g",
      '"A1" | !ambiguous-number | 2.5 g',
      '"A2" | 3 mm | 2.5 g',
      "col 3 mixed-decimal-marks",
    ],
  ],
];

const oneCode: Case[] = [
  [
    "a stray quote before an unreadable number",
    'plank,a (g)\nA1,"2"x\nA2,3\n',
    ["case: plank text | a quantity g", '"A1" | !stray-quote', '"A2" | 3 g'],
  ],
  [
    "a ditto before a stray quote",
    'plank,a (g)\nA1,"dit"to\nA2,3\n',
    ["case: plank text | a quantity g", '"A1" | !ditto', '"A2" | 3 g'],
  ],
  [
    "another unit before a range",
    "plank,a (g)\nA1,2-3 kg\nA2,3\n",
    ["case: plank text | a quantity g", '"A1" | 2.5 kg ±0.5 !unit-differs', '"A2" | 3 g'],
  ],
];

for (const [title, content, lines] of [...ragged, ...header, ...unitsRow, ...neighbours, ...oneCode])
  it(title, () => expect(fileReading(content)).toEqual(lines));
