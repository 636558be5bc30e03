// Blanks, dittos, the kind of a column, text, aliases, yes and no: every sentence of the rules with its reading, stated by hand.
import { expect, it } from "vitest";
import type { ReadOptions } from "../../../src/core/records/index.ts";
import { columnReading } from "../../support/column-reading.ts";

type Case = readonly [title: string, lines: readonly string[], options?: ReadOptions];

const MISSING =
  "n/a N/A na NA n.a. N.A. n.d. nd ND nan NaN null NULL - – — -- --- ? ?? . … ... tbd TBD t.b.d. todo TODO".split(" ");
const MORE = [
  "not measured",
  "Not Measured",
  "not recorded",
  "missing",
  "k.A.",
  "keine Angabe",
  "Nicht gemessen",
  "s/d",
  "sin dato",
  "no medido",
  "non mesuré",
  "NON MESURE\u0301",
  "",
  "  ",
  "\u00a0",
  "\u2009 ",
];
const SOMETIMES = ["none", "None", "nil", "unknown", "UNKNOWN"];
const DITTO = ["〃", "''", "do.", "dto.", "idem", "ditto", "Idem", "Ditto"];

/** Columns of every kind: a header and cells that make it that kind. */
const KINDS: readonly (readonly [kind: string, header: string, cells: readonly string[]])[] = [
  ["quantity", "mass (g) => mass quantity g", ["2.5 => 2.5 g", "2.7 => 2.7 g"]],
  ["text", "finish => finish text", ['oil => "oil"', 'wax => "wax"']],
  ["date", "split => split date", ["2024-05-03 => 2024-05-03", "2024-05-04 => 2024-05-04"]],
  ["pitch", "tap pitch => tap pitch pitch", ["G#2 => G#2", "A2 => A2"]],
  ["grade", "rating => rating grade", ["4/5 => 4 /5", "3/5 => 3 /5"]],
  ["yes-no", "glued => glued yes-no", ['yes => "yes"', 'no => "no"']],
  ["id", "board no => board no text", ['101 => "101"', '102 => "102"']],
];
it.each(KINDS)("missing words are blank and dittos unread in a column of kind %s", (kind, header, cells) => {
  const blanks = [...MISSING, ...MORE, ...(kind === "text" || kind === "id" ? [] : SOMETIMES)];
  const lines = [
    header,
    ...cells,
    ...blanks.map((one) => `${one} => blank`),
    ...DITTO.map((one) => `${one} => !ditto`),
    "#N/A => !sheet-error",
  ];
  expect(columnReading(lines)).toEqual(lines);
});

const blanks: Case[] = [
  [
    "none and unknown are words among words",
    ["finish => finish text", 'oil => "oil"', 'none => "none"', 'unknown => "unknown"', 'nil => "nil"', "n/a => blank"],
  ],
  ["0 is never blank", ["mass (g) => mass quantity g", "0 => 0 g", "3 => 3 g"]],
  ["n is no among yes and no", ["ok => ok yes-no", 'n => "no"', 'y => "yes"', "na => blank"]],
  [
    "- is a grade among signs",
    ["sustain => sustain grade", "- => -", "-- => --", "+ => +", "++ => ++", "o => o", "n/a => blank"],
  ],
];

const kinds: Case[] = [
  ["nothing but blanks is text", ["a => a text", "n/a => blank", "- => blank"]],
  ["with a unit it is a quantity", ["a (mm) => a quantity mm", "n/a => blank", "- => blank"]],
  [
    "three of five are enough",
    ["a => a quantity", "1.5 => 1.5", "2.5 => 2.5", "3.5 => 3.5", "x => !unreadable-number", "y => !unreadable-number"],
  ],
  [
    "three of six are not",
    ["a => a text", '1.5 => "1.5"', '2.5 => "2.5"', '3.5 => "3.5"', 'x => "x"', 'w => "w"', 'v => "v"'],
  ],
  [
    "errors, dittos and blanks don't count",
    ["a => a quantity", "1.5 => 1.5", "ditto => !ditto", "#N/A => !sheet-error", "n/a => blank"],
  ],
  [
    "a unit and one number make a quantity",
    ["a (mm) => a quantity mm", "1.5 => 1.5 mm", "lost => !unreadable-number", "gone => !unreadable-number"],
  ],
  ["a unit and no number don't", ["remarks (g) => remarks text g", 'lost => "lost"', 'gone => "gone"']],
  [
    "ambiguous numbers count as numbers",
    ["a => a quantity", "1,234 => !ambiguous-number", "2,345 => !ambiguous-number"],
  ],
  ["ambiguous dates count as dates", ["a => a date", "3/4/2024 => !ambiguous-date", "5/6/2024 => !ambiguous-date"]],
  ["a leading zero makes names", ["stamp => stamp text", '007 => "007"', '114 => "114"']],
  ["so does an integer beyond 2^53", ["stamp => stamp text", '9007199254740993 => "9007199254740993"', '114 => "114"']],
  ["2^53 itself is a number", ["stamp => stamp quantity", "9007199254740992 => 9007199254740000", "114 => 114"]],
  ["not among decimals", ["a => a quantity", "007 => 7", "1.5 => 1.5"]],
  ["nor among signed decimals", ["a => a quantity", "007 => 7", "-1.5 => -1.5", "-2.5 => -2.5"]],
  ["nor with a unit", ["a (g) => a quantity g", "007 => 7 g", "12 => 12 g"]],
  [
    "an id ruined into scientific notation",
    [
      "stamp => stamp text",
      '007 => "007"',
      '1.23457E+11 => "1.23457E+11" !id-as-scientific',
      '1E+11 => "1E+11" !id-as-scientific',
    ],
  ],
  [
    "under an id name as well",
    [
      "lot => lot text",
      '12 => "12"',
      '1.23457E+11 => "1.23457E+11" !id-as-scientific',
      '9,00720E+16 => "9,00720E+16" !id-as-scientific',
    ],
  ],
  ["elsewhere it is a number", ["a => a quantity", "1.5 => 1.5", "1.23457E+11 => 123457000000"]],
];
const ID_WORDS =
  "id ids piece board code no nr num number serial lot batch sku ref instrument top stück pieza pièce tabla".split(" ");
const idCases: Case[] = ID_WORDS.flatMap((word) => [
  [`digits under ${word} are names`, [`${word} => ${word} text`, '101 => "101"', '102 => "102"']],
  [
    `and under its ${word.toUpperCase()}`,
    [`old_${word.toUpperCase()}. => old_${word.toUpperCase()}. text`, '101 => "101"'],
  ],
  [`with a unit they are numbers under ${word}`, [`${word} (mm) => ${word} quantity mm`, "101 => 101 mm"]],
]);

const texts: Case[] = [
  ["trimmed, inner spaces kept", ["a => a text", ' x  y  => "x  y"', '\u00a0z\u2009 => "z"', '\ufeffq => "q"']],
  ["composed", ["a => a text", 'cipre\u0301s => "ciprés"', 'A\u030angstrom => "Ångstrom"']],
  ["newlines as \\n", ["a => a text", 'x\r\ny => "x\\ny"', 'x\rz => "x\\nz"']],
  [
    "hidden characters go and are told",
    [
      "a => a text",
      'x\u200by => "xy" !hidden-characters',
      '\u202evw\u202c => "vw" !hidden-characters',
      'zz\u200d => "zz" !hidden-characters',
      'x\u2066z\u2069 => "xz" !hidden-characters',
      '\u061cww => "ww" !hidden-characters',
      'h\u200ei => "hi" !hidden-characters',
    ],
  ],
  ["emoji and their joiners stay", ["a => a text", '👩‍🔧 ok => "👩‍🔧 ok"', '🏳️‍🌈 => "🏳️‍🌈"', '👩🏽‍🔧 => "👩🏽‍🔧"']],
  [
    "hidden characters in a number",
    [
      "a (mm) => a quantity mm",
      "2.5\u200b => 2.5 mm !hidden-characters",
      "\ufeff2.5 => 2.5 mm",
      "~2.5\u200b => 2.5 mm !approximate",
    ],
  ],
  [
    "what a sheet would run",
    [
      "a => a text",
      '=1+1 => "=1+1" !formula-like',
      '@home => "@home" !formula-like',
      '+SUM(A1) => "+SUM(A1)" !formula-like',
      '-dry => "-dry" !formula-like',
      '-(x) => "-(x)" !formula-like',
      '- x => "- x"',
      '+1 y => "+1 y"',
    ],
  ],
  [
    "is unread among numbers",
    ["a (mm) => a quantity mm", "=1+1 => !formula-like", "-x => !formula-like", "-(3) => !formula-like", "2 => 2 mm"],
  ],
  [
    "spellings that vary",
    [
      "species => species text !spelling-varies",
      'Alpine Spruce => "Alpine Spruce"',
      'alpine spruce => "alpine spruce"',
      'oak => "oak"',
    ],
  ],
  [
    "by accents, hyphens, dots, underscores",
    [
      "species => species text !spelling-varies",
      'ciprés => "ciprés"',
      'cipres => "cipres"',
      'x-y.z => "x-y.z"',
      'x_yz => "x_yz"',
    ],
  ],
  ["the same spelling does not vary", ["species => species text", 'oak => "oak"', 'oak  => "oak"', 'ash => "ash"']],
  [
    "aliases, whatever case and spaces",
    ["species => species text", 'Alpine  SPRUCE => "spruce"', 'picea => "spruce"', 'oak => "oak"'],
    { aliases: { species: { "alpine spruce": "spruce", Picea: "spruce" } } },
  ],
  [
    "compared after aliases",
    ["species => species text !spelling-varies", 'Picea => "Spruce"', 'spruce => "spruce"', 'oak => "oak"'],
    { aliases: { species: { picea: "Spruce" } } },
  ],
  [
    "aliases of another column don't touch",
    ["species => species text", 'picea => "picea"'],
    { aliases: { wood: { picea: "spruce" } } },
  ],
];

const yesNo: Case[] = [
  ...[
    "yes no",
    "y n",
    "Y N",
    "true false",
    "TRUE FALSE",
    "ja nein",
    "JA Nein",
    "j n",
    "sí no",
    "SÍ NO",
    "si no",
    "s n",
    "oui non",
    "✓ ✗",
    "☑ ☐",
  ].map((pair): Case => {
    const [yes = "", no = ""] = pair.split(" ");
    return [
      `${yes} and ${no}`,
      ["glued => glued yes-no", `${yes} => "yes"`, `${no} => "no"`, "half => !unreadable-yes-no"],
    ];
  }),
  ["never 1 and 0", ["glued => glued quantity", "1 => 1", "0 => 0"]],
  ["never x", ["glued => glued text", 'x => "x"', "- => blank"]],
];

for (const [title, lines, options] of [...blanks, ...kinds, ...idCases, ...texts, ...yesNo])
  it(title, () => expect(columnReading(lines, options)).toEqual(lines));
