import fc from "fast-check";
import { expect, it } from "vitest";
import { cellsBehind, columnsFromTable, joinTables, withRoles } from "../../../src/core/columns/index.ts";
import { law } from "../../support/law.ts";
import { tableOfRows } from "./table-of-rows.ts";

const tops = columnsFromTable(
  tableOfRows(
    "tops",
    [
      ["top_id", null, "text"],
      ["mass", "g", "quantity"],
    ],
    [
      ["T-2", 150],
      ["T-1", 140],
      ["T-3", 160],
      ["T-4", 170],
      [null, 180],
    ],
  ),
  "tops.csv",
  "tops",
);
const instruments = columnsFromTable(
  tableOfRows(
    "instruments",
    [
      ["top_id", null, "text"],
      ["mass", "kg", "quantity"],
      ["sound", null, "text"],
    ],
    [
      ["T-1", 1.4, "a"],
      ["T-2", 1.5, "b"],
      ["T-2", 1.6, "a"],
      ["T-9", 1.7, "b"],
      ["T\u20113", 1.8, "a"],
      [null, 1.9, "b"],
    ],
  ),
  "instruments.csv",
  "instruments",
);
const { table, notes } = joinTables(tops, instruments, "top_id");
const mass = table.columns.get("mass_2");

it("every record of the left table stays, in its order, once for each match", () =>
  expect(table.rows.map(({ row }) => row)).toEqual([1, 1, 2, 3, 4, 5]));
it("a column that both tables have gets _2 and its own values; without a match it is missing", () =>
  expect(mass?.kind === "quantity" && [...mass.values]).toEqual([1.5, 1.6, 1.4, Number.NaN, Number.NaN, Number.NaN]));
it("a joined number traces to the right table's cell", () =>
  expect(table.cellAt("mass_2", 1)).toMatchObject({ file: "instruments.csv", row: 3, raw: "1.6", column: "mass_2" }));
it("a missing match has no cell", () => expect(table.cellAt("mass_2", 3)).toBeNull());
it("unmatched and several matches are said", () => {
  expect(notes.join("\n")).toContain("1 record of tops.csv matches several of instruments.csv");
  expect(notes.join("\n")).toContain("3 records of tops.csv have no match in instruments.csv");
  expect(notes.join("\n")).toContain("3 records of instruments.csv have no match in tops.csv");
});
it("an id with another hyphen is pointed out and not joined", () => expect(notes.at(-1)).toContain("look alike"));

const textTable = (file: string, head: readonly [string, ...string[]], rows: readonly (readonly (string | null)[])[]) =>
  columnsFromTable(
    tableOfRows(
      file,
      head.map((each) => [each, null, "text"] as const),
      rows,
    ),
    `${file}.csv`,
    file,
  );
const joined = (left: readonly (string | null)[], right: readonly (string | null)[]) => {
  const made = joinTables(
    textTable(
      "tops",
      ["id", "cut"],
      left.map((id, row) => [id, `cut ${row}`]),
    ),
    textTable(
      "guitars",
      ["id", "player"],
      right.map((id, row) => [id, `p${row}`]),
    ),
    "id",
  );
  const player = made.table.columns.get("player");
  if (player?.kind !== "label") throw new Error("a label");
  return { ...made, players: [...player.codes].map((code) => player.names[code] ?? null) };
};

it("one record that matches several is no separate evidence on each row", () => {
  const { table, notes } = joined(["a", "b"], ["a", "a", "b"]);
  expect(table.shared).toBe("id");
  expect(notes).toEqual([
    "1 record of tops.csv matches several of guitars.csv and stands here once for each match: a.",
    'Rows with the same id are not separate evidence: answers count them together, as if "pieces share id" were written.',
  ]);
});
it("what the maker says pieces share goes first", () => {
  const left = {
    ...textTable(
      "tops",
      ["id", "tree"],
      [
        ["a", "t"],
        ["b", "t"],
      ],
    ),
    shared: "tree",
  };
  const { table, notes } = joinTables(
    left,
    textTable(
      "guitars",
      ["id", "player"],
      [
        ["a", "x"],
        ["a", "y"],
      ],
    ),
    "id",
  );
  expect(table.shared).toBe("tree");
  expect(notes.join()).not.toContain("separate evidence");
});
it("several on both sides are each set against each, counted and said", () => {
  const { players, notes, table } = joined(["a", "a", "b"], ["a", "b", "a", "a"]);
  expect(players).toEqual(["p0", "p2", "p3", "p0", "p2", "p3", "p1"]);
  expect(table.shared).toBe("id");
  expect(notes[0]).toContain("which makes 6 rows: a (2 by 3)");
});
it("several records that match one are a look-up: no remark, no doubled row", () => {
  const { players, notes, table } = joined(["a", "a", "b"], ["a", "b"]);
  expect([players, notes, table.shared]).toEqual([["p0", "p0", "p1"], [], undefined]);
});
it("a row that only repeats another does not make several", () => {
  const left = textTable("tops", ["id"], [["a"]]);
  const right = textTable(
    "guitars",
    ["id", "player"],
    [
      ["a", "x"],
      ["a", "x"],
    ],
  );
  const { table, notes } = joinTables(left, right, "id");
  expect([table.shared, notes]).toEqual([undefined, []]);
  expect([...table.leftOut]).toEqual([[1, "repeated row"]]);
});
it("blank keys match nothing, not even each other, and are said on both sides", () => {
  const { players, notes } = joined(["a", null, null], ["a", null]);
  expect(players).toEqual(["p0", null, null]);
  expect(notes).toEqual([
    "2 records of tops.csv have no match in guitars.csv and stay without its columns: row 2 without id, row 3 without id.",
    "One record of guitars.csv has no match in tops.csv and is not in this table: row 2 without id.",
  ]);
});
it.each([
  ["7", "007"],
  ["T-7", "T-007"],
  ["T-7", "t-7"],
  ["T-7", "T 7"],
  ["T-7", "T_7"],
  ["T-7", "T\u20117"],
  ["T-7", "Т-7"],
  ["T-7", "T-7\u200b"],
])("%s is not joined to %s, and pointed out from either side", (one, other) => {
  for (const [left, right] of [
    [one, other],
    [other, one],
  ] as const) {
    const { players, notes } = joined([left, "b"], [right, "b"]);
    expect(players).toEqual([null, "p1"]);
    expect(notes.at(-1)).toContain(`${left} and ${right} look alike`);
  }
});
it("a look-alike that has its own match is pointed out for the one that has none", () => {
  expect(joined(["7", "007"], ["7"]).notes.at(-1)).toContain("007 and 7 look alike");
  expect(joined(["7"], ["7", "007"]).notes.at(-1)).toContain("7 and 007 look alike");
});
it.each([
  ["T-7", "T-70"],
  ["10", "100"],
  ["1.1", "11"],
  ["B-1", "8-1"],
])("%s and %s do not look alike", (one, other) =>
  expect(joined([one], [other]).notes.join()).not.toContain("look alike"),
);
it("of many look-alikes five are named and the rest counted", () => {
  const ids = Array.from({ length: 8 }, (_, i) => `T-${i + 1}`);
  const { notes } = joined(
    ids,
    ids.map((id) => id.toLowerCase()),
  );
  expect(notes.filter((note) => note.includes("look alike"))).toHaveLength(5);
  expect(notes.at(-1)).toBe("3 more ids look like one of the other table.");
});
it("ids that a sheet stored as numbers join ids that are texts", () =>
  expect(joined(["101", "102"], ["102", "101"]).players).toEqual(["p1", "p0"]));

const ids = fc.array(fc.option(fc.constantFrom("a", "b", "c", "d", "e")), { maxLength: 12 });
const pairsOf = (left: readonly (string | null)[], right: readonly (string | null)[]) => {
  const { table, players } = joined(left, right);
  return table.rows.map(({ row }, index) => `${row} ${players[index]}`);
};
law(
  "every record of the left stays, and rows are the pairs that a person would make by hand",
  [ids, ids],
  (left, right) => {
    const byHand = left.flatMap((id, row) => {
      const matches = right.flatMap((other, at) => (id !== null && id === other ? [`${row + 1} p${at}`] : []));
      return matches.length > 0 ? matches : [`${row + 1} null`];
    });
    expect(pairsOf(left, right)).toEqual(byHand);
  },
);
law(
  "joining and leaving out what joining brought is the table as it was",
  [fc.uniqueArray(fc.constantFrom("a", "b", "c", "d"), { maxLength: 4 }), ids],
  (right, left) => {
    const before = textTable(
      "tops",
      ["id"],
      left.map((id) => [id]),
    );
    const after = joinTables(
      before,
      textTable(
        "guitars",
        ["id", "player"],
        right.map((id) => [id, "p"]),
      ),
      "id",
    ).table;
    expect([after.rows, after.rowCount, after.columns.get("id"), after.leftOut, after.shared]).toEqual([
      before.rows,
      before.rowCount,
      before.columns.get("id"),
      before.leftOut,
      before.shared,
    ]);
  },
);
it("a mean of readings joins under new names with its readings and their errors", () => {
  const means = (file: string) =>
    columnsFromTable(
      tableOfRows(
        file,
        [
          ["id", null, "text"],
          ["h1", "mm", "quantity"],
          ["h2", "mm", "quantity"],
        ],
        [["a", 2, 4]],
      ),
      `${file}.csv`,
      file,
      { repeats: [{ name: "h", columns: ["h1", "h2"] }], columns: { h1: { uncertainty: "0.1 mm" } } },
    );
  const mean = joinTables(means("tops"), means("backs"), "id").table.columns.get("h_2");
  expect(mean?.origin).toMatchObject({
    formula: "mean(h1_2, h2_2)",
    parents: ["h1_2", "h2_2"],
    roots: ["h1_2", "h2_2"],
  });
  expect(mean?.kind === "quantity" && [...(mean.contributions?.keys() ?? [])]).toEqual([
    "spread of mean(h1_2, h2_2)",
    "h1_2",
  ]);
});
it("a joined mean leads to all its raw cells", () => {
  const right = columnsFromTable(
    tableOfRows(
      "r",
      [
        ["id", null, "text"],
        ["h", "mm", "quantity"],
      ],
      [
        ["a", 2],
        ["a", 4],
      ],
    ),
    "r.csv",
    "r",
    { oneRowPer: "id" },
  );
  const { table } = joinTables(textTable("tops", ["id"], [["b"], ["a"]]), right, "id");
  expect(cellsBehind(table, "h", 1).map(({ file, row, raw }) => [file, row, raw])).toEqual([
    ["r.csv", 1, "2"],
    ["r.csv", 2, "4"],
  ]);
  expect(cellsBehind(table, "h", 0)).toEqual([]);
});
it("a second join keeps the rows of the file that the first began with", () => {
  const once = joinTables(
    textTable("tops", ["id"], [["a"], ["b"]]),
    textTable(
      "guitars",
      ["id", "player"],
      [
        ["a", "x"],
        ["a", "y"],
        ["b", "x"],
      ],
    ),
    "id",
  ).table;
  const twice = joinTables(
    once,
    textTable(
      "players",
      ["player", "town"],
      [
        ["x", "u"],
        ["y", "v"],
      ],
    ),
    "player",
  ).table;
  expect(twice.rows.map(({ row }) => row)).toEqual([1, 1, 2]);
  expect(twice.cellAt("town", 1)).toMatchObject({ file: "players.csv", raw: "v" });
});
it("a piece on several rows is no separate evidence on each", () => {
  const rows = textTable(
    "tops",
    ["board", "side"],
    [
      ["a", "x"],
      ["a", "y"],
      ["b", "x"],
    ],
  );
  const told = withRoles(rows, { piece: "board" });
  expect(told.shared).toBe("board");
  expect(told.notes.at(-1)).toContain("Rows with the same board are not separate evidence");
  expect(withRoles(rows, { piece: "board", shared: "side" }).shared).toBe("side");
  const once = textTable(
    "tops",
    ["board", "side"],
    [
      ["a", "x"],
      ["a", "x"],
      ["b", "x"],
    ],
  );
  expect(withRoles(once, { piece: "board" })).toMatchObject({ notes: [] });
  expect(withRoles(once, { piece: "board" }).shared).toBeUndefined();
});
it("a row without a key is named by its row in the file, also where rows became pieces", () => {
  const left = columnsFromTable(
    tableOfRows(
      "tops",
      [
        ["id", null, "text"],
        ["h", "mm", "quantity"],
      ],
      [
        ["a", 2],
        ["a", 3],
        [null, 4],
      ],
    ),
    "tops.csv",
    "tops",
    { oneRowPer: "id" },
  );
  expect(joinTables(left, textTable("guitars", ["id", "player"], [["a", "x"]]), "id").notes.join()).toContain(
    "row 3 without id",
  );
});
it("look-alikes that both have their match are two pieces", () =>
  expect(joined(["7", "007"], ["7", "007", "x"]).notes.join()).not.toContain("look alike"));
it("a new name is taken by one column only", () => {
  const left = textTable("tops", ["id", "h"], [["a", "1"]]);
  const right = textTable("backs", ["id", "h", "h_2"], [["a", "2", "3"]]);
  expect([...joinTables(left, right, "id").table.columns.keys()]).toEqual(["id", "h", "h_2", "h_2_2"]);
});
