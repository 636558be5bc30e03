/** The stated limits of what is read and computed; each error names the limit and what was found. */
export const limits = {
  tableBytes: { value: 64 * 1024 * 1024, words: "a table file, in bytes" },
  notebookBytes: { value: 8 * 1024 * 1024, words: "a notebook, in bytes" },
  rows: { value: 1_000_000, words: "rows of a table" },
  columns: { value: 4_096, words: "columns of a table" },
  cells: { value: 20_000_000, words: "cells of a table" },
  cellCharacters: { value: 1024 * 1024, words: "one cell, in characters" },
  formulaDepth: { value: 200, words: "brackets inside brackets in a formula" },
  formulaOperators: { value: 20_000, words: "operators in one formula" },
  entryCharacters: { value: 256 * 1024, words: "one entry, in characters" },
  entries: { value: 5_000, words: "entries of a notebook" },
  computedColumns: { value: 10_000, words: "columns made by formula" },
  unitExponent: { value: 99, words: "exponent of a unit" },
  requestBytes: { value: 8 * 1024 * 1024, words: "the body of a request, in bytes" },
  importBytes: { value: 64 * 1024 * 1024, words: "the body of an import, in bytes" },
  copyBytes: { value: 64 * 1024 * 1024, words: "a dated copy to verify, in bytes" },
} as const;
