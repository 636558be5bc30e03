// An invented table of a shop's records: ids, species, measured columns, dates, grades, notes, and one cell in a hundred untidy.
const SPECIES = ["alpine spruce", "western cedar", "cypress"];
const NOTES = ["", "dull", "rings long", "tight grain", "a little dry", "set aside for a parlour"];
const MEASURED = [
  "length (mm)",
  "width (mm)",
  "thickness (mm)",
  "mass (g)",
  "tap (Hz)",
  "stiff (GPa)",
  "wet (%)",
  "cut (mm)",
];
const MESSY = ["n/a", "~", "<", "?", " mm", "#DIV/0!", "lost", "3/32"];

/** A seeded source of whole numbers (Numerical Recipes' congruence). */
function dice(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

const two = (number: number) => String(number).padStart(2, "0");

function untidy(value: string, below: (most: number) => number): string {
  const mess = MESSY[below(MESSY.length)] ?? "";
  if (mess === "~" || mess === "<") return mess + value;
  return mess === "?" || mess === " mm" ? value + mess : mess;
}

/** Rows of thirteen columns as comma-separated text. */
export function untidyTable(rows: number): string {
  const below = dice(20260314);
  const lines = [["board", "species", ...MEASURED, "split", "stiffness grade", "remarks"].join(",")];
  for (let row = 0; row < rows; row++) {
    const cells = [`TW-${String(row + 1).padStart(6, "0")}`, SPECIES[below(SPECIES.length)] ?? ""];
    for (let at = 0; at < MEASURED.length; at++) {
      const value = (2 + at * 30 + below(10_000) / 100).toFixed(at % 3);
      cells.push(below(100) === 0 ? untidy(value, below) : value);
    }
    cells.push(`20${10 + below(15)}-${two(1 + below(12))}-${two(1 + below(28))}`);
    cells.push(`${1 + below(5)}/5`, NOTES[below(NOTES.length)] ?? "");
    lines.push(cells.join(","));
  }
  return `${lines.join("\n")}\n`;
}
