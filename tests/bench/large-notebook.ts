// An invented notebook of any size: a table of many columns, formulas over them, questions on the formulas.

/** Rows × columns as comma-separated text: an id, a label of two woods, then numbers in millimetres. */
export function largeTable(rows: number, columns: number): string {
  const headings = ["piece", "wood", ...Array.from({ length: columns - 2 }, (_, at) => `m${at + 1} (mm)`)];
  const lines = [headings.join(",")];
  let state = 20260314;
  for (let row = 0; row < rows; row++) {
    const cells = [`P-${row + 1}`, row % 2 === 0 ? "spruce" : "cedar"];
    for (let at = 2; at < columns; at++) {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      cells.push((2 + at / 10 + state / 2 ** 32).toFixed(2));
    }
    lines.push(cells.join(","));
  }
  return lines.join("\n");
}

/** A notebook over `records/large.csv`: one formula for each measured column, then questions up to the wanted entries. */
export function largeNotebook(columns: number, entries: number, factor: number): string {
  const measured = columns - 2;
  const formulas = Array.from(
    { length: measured },
    (_, at) => `f${at + 1} = m${at + 1} * ${at === 0 ? factor : 2} + m${((at + 1) % measured) + 1}   in mm`,
  );
  const questions = Array.from({ length: entries - 2 }, (_, at) => {
    const [y, x] = [(at % measured) + 1, ((at * 7 + 3) % measured) + 1];
    return `\`\`\`question q${at + 1}\nf${y} against m${x}\n\`\`\`\n`;
  });
  return [
    "---\ntitle: Large\nrecords: [large]\n---\n",
    "```records large\nfrom records/large.csv\npiece is piece\n```\n",
    `\`\`\`columns large\n${formulas.join("\n")}\n\`\`\`\n`,
    ...questions,
  ].join("\n");
}
