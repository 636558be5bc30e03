// Tables made untidy by chance, cell by cell against the reading that was stated while they were written.
// THUMBRULE_FUZZ=500 tries so many seeds with each share of mess; otherwise a sample of them, the same each time.
import { expect, it } from "vitest";
import { printedReadResult, readTable } from "../../src/core/records/index.ts";
import { cleanTable } from "./clean-table.ts";
import { pollute } from "./pollute.ts";

const seeds = Number(process.env.THUMBRULE_FUZZ ?? 60);
const inOrder = (list: readonly object[]) => list.map((one) => JSON.stringify(Object.entries(one).sort())).sort();

function isReadAsStated(seed: number, mess: number, rows?: number): void {
  const { bytes, expected } = pollute(cleanTable(seed, rows), seed, `fuzz_${seed}.csv`, mess);
  const read = JSON.parse([...printedReadResult(readTable(bytes, expected.file))].join(""));
  const about = `seed ${seed}, mess ${mess}`;
  expect(read.tables.length, about).toBe(expected.tables.length);
  for (const [at, table] of expected.tables.entries()) {
    expect(read.tables[at].columns, about).toEqual(table.columns);
    expect(read.tables[at].rows.length, about).toBe(table.rows.length);
    for (const [row, cells] of table.rows.entries())
      for (const [col, cell] of cells.entries()) {
        const { value, uncertainty, ...rest } = read.tables[at].rows[row][col];
        const place = `${about}, row ${row + 1}, column ${col + 1}, ${JSON.stringify(cell.raw)}`;
        const { value: wanted, uncertainty: wide, ...stated } = cell;
        expect(rest, place).toEqual(stated);
        if (typeof wanted === "number") expect(value, place).toBeCloseTo(wanted, 9);
        else expect(value, place).toBe(wanted);
        if (wide === undefined) expect(uncertainty, place).toBeUndefined();
        else expect(uncertainty, place).toBeCloseTo(wide, 9);
      }
  }
  expect(inOrder(read.setAside), about).toEqual(inOrder(expected.setAside));
  expect(inOrder(read.warnings), about).toEqual(inOrder(expected.warnings));
}

// More mess than that, and the evidence that a column needs may be gone.
it.each([0, 0.25, 0.4])(
  "reads every cell of untidy tables as stated, %d of them touched",
  { timeout: 600_000 },
  (mess) => {
    for (let seed = 1; seed <= seeds; seed++) isReadAsStated(seed, mess);
  },
);

it("reads every cell of a long untidy table", { timeout: 600_000 }, () => isReadAsStated(202, 0.25, 600));
