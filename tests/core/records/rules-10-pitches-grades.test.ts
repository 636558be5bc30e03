// Pitches and grades: every sentence of the rules with its reading, stated by hand.
import { expect, it } from "vitest";
import type { ReadOptions } from "../../../src/core/records/index.ts";
import { columnReading } from "../../support/column-reading.ts";

type Case = readonly [title: string, lines: readonly string[], options?: ReadOptions];

const pitches: Case[] = [
  [
    "letters, accidentals, octaves, cents",
    [
      "tap pitch => tap pitch pitch",
      "G#2 => G#2",
      "G♯2 => G#2",
      "Ab3 => Ab3",
      "A♭3 => Ab3",
      "g#2 => G#2",
      "b2 => B2",
      "bb2 => Bb2",
      "G sharp 2 => G#2",
      "A flat 3 => Ab3",
      "Ab3 +12c => Ab3 +12c",
      "A2 −10 cents => A2 -10c",
      "A2 –10 ct => A2 -10c",
      "A2+5c => A2 +5c",
      "A2 -10 cent => A2 -10c",
      "A2 +0c => A2",
      "B#2 => B#2",
      "Cb3 => Cb3",
      "G# => G# !octave-missing",
      "a => A !octave-missing",
      "~A2 => A2 !approximate",
      "ca. A2 => A2 !approximate",
      "A2? => A2 !doubtful",
      "~G# => G# !approximate",
      "110 Hz => 110 Hz",
      "103,8 Hz => 103.8 Hz",
      "~110 Hz => 110 Hz !approximate",
      "Gis2 => G#2",
      "Es3 => Eb3",
      "As2 => Ab2",
      "Fis2 => F#2",
      "Cis2 => C#2",
      "Des2 => Db2",
      "Ges2 => Gb2",
      "Dis2 => D#2",
      "Ais2 => A#2",
      "G#2/A2 => !unreadable-pitch",
      "110 => !unreadable-pitch",
      "between => !unreadable-pitch",
      "A2 +12 => !unreadable-pitch",
      "A10 => !unreadable-pitch",
    ],
  ],
  [
    "decimal points of frequencies",
    ["tap pitch => tap pitch pitch", "A2 => A2", "A2 => A2", "103.8 Hz => 103.8 Hz", "1,234 Hz => 1234 Hz"],
  ],
  [
    "decimal commas of frequencies",
    ["tap pitch => tap pitch pitch", "A2 => A2", "A2 => A2", "103,8 Hz => 103.8 Hz", "1,234 Hz => 1.234 Hz"],
  ],
  ["frequencies without evidence ask", ["tap pitch => tap pitch pitch", "A2 => A2", "1,234 Hz => !ambiguous-number"]],
  ...["pitch", "tone", "note", "tuned", "tap", "Ton", "tono", "nota"].map(
    (name): Case => [`a column named ${name}`, [`${name} => ${name} pitch`, "A2 => A2", "C3 => C3"]],
  ),
  ["an accidental makes pitches", ["bar => bar pitch", "A2 => A2", "F#2 => F#2"]],
  ["cents make pitches", ["bar => bar pitch", "A2 => A2", "F2 +3c => F2 +3c"]],
  ["letters alone are text", ["bar => bar text", 'A => "A"', 'C => "C"']],
  [
    "H asks, and so does every plain B",
    [
      "Ton => Ton pitch",
      "H2 => !german-note-name",
      "B2 => !german-note-name",
      "B => !german-note-name",
      "Bb2 => Bb2",
      "Gis2 => G#2",
      "A2 => A2",
      "H => !german-note-name",
    ],
  ],
  ["without an H, B is B", ["Ton => Ton pitch", "B2 => B2", "Gis2 => G#2"]],
  [
    "german names",
    [
      "Ton => Ton pitch",
      "H2 => B2",
      "B2 => Bb2",
      "B => Bb !octave-missing",
      "Bb2 => Bb2",
      "Es3 => Eb3",
      "h2 +5c => B2 +5c",
    ],
    { noteNames: "german" },
  ],
  ["german names without an H", ["Ton => Ton pitch", "B2 => Bb2", "A2 => A2"], { noteNames: "german" }],
  [
    "english names",
    ["Ton => Ton pitch", "H2 => !german-note-name", "B2 => B2", "Gis2 => G#2", "A2 => A2"],
    { noteNames: "english" },
  ],
];

const grades: Case[] = [
  [
    "out of so many, by the name",
    [
      "rating => rating grade",
      "4/5 => 4 /5",
      "4.5/5 => 4.5 /5",
      "4,5/5 => 4.5 /5",
      "3 / 5 => 3 /5",
      "3 of 5 => 3 /5",
      "2 out of 5 => 2 /5",
      "4 => 4 /5 !scale-assumed",
      "loud => !unreadable-grade",
      "n/a => blank",
    ],
  ],
  [
    "one scale under such a name is that of all bare numbers",
    [
      "rating => rating grade",
      "4/5 => 4 /5",
      "4 => 4 /5 !scale-assumed",
      "5 => 5 /5 !scale-assumed",
      "3 => 3 /5 !scale-assumed",
    ],
  ],
  ...["grade", "rating", "score", "rank", "quality", "note", "calificación", "Bewertung", "nota"].map(
    (name): Case => [`eighths are grades under ${name}`, [`${name} => ${name} grade`, "4/8 => 4 /8", "5/8 => 5 /8"]],
  ),
  ["eighths are fractions elsewhere", ["a => a quantity", "3/8 => 0.375", "5/8 => 0.625"]],
  ["equal denominators that are no power of two", ["balance => balance grade", "7 of 10 => 7 /10", "8/10 => 8 /10"]],
  [
    "different scales",
    ["score => score grade !mixed-scales", "4/5 => 4 /5", "7/10 => 7 /10", "4 => !unreadable-grade"],
  ],
  ["stars of five", ["stars => stars grade", "★★★☆☆ => 3 /5", "★★★★☆ => 4 /5", "☆☆☆☆☆ => 0 /5"]],
  ["stars alone", ["stars => stars grade", "*** => 3 *", "★★ => 2 *", "* => 1 *"]],
  [
    "signs",
    [
      "sustain => sustain grade",
      "++ => ++",
      "+ => +",
      "o => o",
      "0 => 0",
      "+/- => +/-",
      "- => -",
      "-- => --",
      "x => !unreadable-grade",
    ],
  ],
  ["no signs without a plus", ["sustain => sustain text", 'o => "o"', "- => blank", "-- => blank"]],
  ...["wood grade", "rating", "class", "quality", "score"].map(
    (name): Case => [
      `letters under ${name}`,
      [
        `${name} => ${name} grade`,
        "AAA => AAA",
        "AA => AA",
        "B+ => B+",
        "C- => C-",
        "F => F",
        "G => !unreadable-grade",
      ],
    ],
  ),
  ["letters elsewhere are text", ["shelf => shelf text", 'A => "A"', 'B => "B"', 'AA => "AA"']],
];

for (const [title, lines, options] of [...pitches, ...grades])
  it(title, () => expect(columnReading(lines, options)).toEqual(lines));
