// What is set aside among the rows, second tables, repetitions: every sentence of the rules with its reading, stated by hand.
import { expect, it } from "vitest";
import { fileReading } from "../../support/column-reading.ts";

type Case = readonly [title: string, content: string, lines: readonly string[]];

const among: Case[] = [
  [
    "blank records are skipped",
    "plank,a (g)\nA1,1\n\n,\nA2,3\n",
    ["case: plank text | a quantity g", '"A1" | 1 g', '"A2" | 3 g'],
  ],
  [
    "hash and space is a comment, hash alone a value",
    "plank,a (g)\nA1,1\n# new battery,2\n#2,3\n// x,4\n",
    ["case: plank text | a quantity g", '"A1" | 1 g', '"#2" | 3 g', '"// x" | 4 g', "aside 3 comment"],
  ],
  [
    "the header again, and its units",
    "plank,a\n,(g)\nA1,1\n PLANK ,A\n,(g)\nA2,3\n",
    [
      "case: plank text | a quantity g",
      '"A1" | 1 g',
      '"A2" | 3 g',
      "aside 2 units-row",
      "aside 4 header-repeated",
      "aside 5 units-row",
    ],
  ],
  ...[
    "total",
    "Totals",
    "subtotal:",
    "SUM",
    "average",
    "avg",
    "mean",
    "median",
    "min",
    "max",
    "std",
    "sd",
    "count",
    "Summe",
    "gesamt",
    "Mittel",
    "Mittelwert",
    "Durchschnitt :",
    "suma",
    "media",
    "promedio",
    "somme",
    "moyenne",
  ].map(
    (word): Case => [
      `${word} is a total`,
      `plank,a (g),b (g)\nA1,1,2\n${word},,12.5\nA2,3,4\n,${word},5\n`,
      [
        "case: plank text | a quantity g | b quantity g",
        '"A1" | 1 g | 2 g',
        '"A2" | 3 g | 4 g',
        "aside 3 total-row",
        "aside 5 total-row",
      ],
    ],
  ),
  [
    "a total without a number is a row",
    "plank,a (g),b\nA1,1,x\ntotal,,y\n",
    ["case: plank text | a quantity g | b text", '"A1" | 1 g | "x"', '"total" | blank | "y"'],
  ],
  [
    "a word more is no total",
    "plank,a (g)\nA1,1\nTotal A,2\n",
    ["case: plank text | a quantity g", '"A1" | 1 g', '"Total A" | 2 g'],
  ],
  [
    "footnotes",
    "plank,a (g),b (g)\nA1,1,2\n\nweighed dry\nby hand\n",
    ["case: plank text | a quantity g | b quantity g", '"A1" | 1 g | 2 g', "aside 4 footnote", "aside 5 footnote"],
  ],
  [
    "a footnote after a total",
    "plank,a (g),b (g)\nA1,1,2\n\nTotal,1,2\nweighed dry\n",
    ["case: plank text | a quantity g | b quantity g", '"A1" | 1 g | 2 g', "aside 4 total-row", "aside 5 footnote"],
  ],
  [
    "a footnote after a comment",
    "plank,a (g),b (g)\nA1,1,2\n\n# x\nweighed dry\n",
    ["case: plank text | a quantity g | b quantity g", '"A1" | 1 g | 2 g', "aside 4 comment", "aside 5 footnote"],
  ],
  [
    "no blank record, no footnote",
    "plank,a (g),b (g)\nA1,1,2\nweighed dry\n",
    [
      "case: plank text | a quantity g | b quantity g",
      '"A1" | 1 g | 2 g',
      '"weighed dry" | blank | blank',
      "row 2 short-row",
    ],
  ],
  [
    "no footnotes in two columns",
    "plank,a (g)\nA1,1\n\nweighed dry\n",
    ["case: plank text | a quantity g", '"A1" | 1 g', '"weighed dry" | blank', "row 2 short-row"],
  ],
  [
    "a second table with its title, its own evidence and units",
    'plank,a (g),b\nA1,"1,5",x\n\nStrings\ngauge,d (mm),e\nthin,0.7,y\nthick,"1.024",z\n\nnote\n',
    [
      "case: plank text | a quantity g | b text",
      '"A1" | 1.5 g | "x"',
      "case 2: gauge text | d quantity mm | e text",
      '"thin" | 0.7 mm | "y"',
      '"thick" | 1.024 mm | "z"',
      "aside 4 preamble",
      "aside 9 footnote",
    ],
  ],
  [
    "a second table over a grade",
    "plank,a (g)\nA1,1\n\ngauge,feel\nthin,4/5\nthick,3/5\n",
    [
      "case: plank text | a quantity g",
      '"A1" | 1 g',
      "case 2: gauge text | feel grade",
      '"thin" | 4 /5',
      '"thick" | 3 /5',
    ],
  ],
  [
    "a second table over a pitch",
    "plank,a (g)\nA1,1\n\ngauge,tone\nthin,E4\nthick,E2\n",
    ["case: plank text | a quantity g", '"A1" | 1 g', "case 2: gauge text | tone pitch", '"thin" | E4', '"thick" | E2'],
  ],
  [
    "a second table with a units row",
    "plank,a (g)\nA1,1\n\ngauge,d\n,mm\nthin,0.7\n",
    [
      "case: plank text | a quantity g",
      '"A1" | 1 g',
      "case 2: gauge text | d quantity mm",
      '"thin" | 0.7 mm',
      "aside 5 units-row",
    ],
  ],
  [
    "no blank record, no second table",
    "plank,a\nA1,x\ngauge,d\nthin,y\n",
    ["case: plank text | a text", '"A1" | "x"', '"gauge" | "d"', '"thin" | "y"'],
  ],
  [
    "a row twice",
    "plank,a (g)\nA1,1\nA1,1\nA1,2\n",
    ["case: plank text | a quantity g", '"A1" | 1 g', '"A1" | 1 g', '"A1" | 2 g', "row 2 duplicate-row"],
  ],
  [
    "an id twice among many",
    "board,a (g)\nA1,1\nA2,2\nA3,3\nA4,4\nA1,5\n",
    [
      "case: board text | a quantity g",
      '"A1" | 1 g',
      '"A2" | 2 g',
      '"A3" | 3 g',
      '"A4" | 4 g',
      '"A1" !repeated-id | 5 g',
    ],
  ],
  [
    "ids that repeat by plan",
    "board,a (g)\nA1,1\nA1,2\nA2,3\nA2,4\n",
    ["case: board text | a quantity g", '"A1" | 1 g', '"A1" | 2 g', '"A2" | 3 g', '"A2" | 4 g'],
  ],
  [
    "a repeated row's id is no repeated id",
    "board,a (g)\nA1,1\nA2,2\nA3,3\nA4,4\nA1,1\n",
    [
      "case: board text | a quantity g",
      '"A1" | 1 g',
      '"A2" | 2 g',
      '"A3" | 3 g',
      '"A4" | 4 g',
      '"A1" | 1 g',
      "row 5 duplicate-row",
    ],
  ],
];

for (const [title, content, lines] of among) it(title, () => expect(fileReading(content)).toEqual(lines));
