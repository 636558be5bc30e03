/** Why a workbook is not read: the code of a warning about the file, whose sentence stands in the catalogue. */
export type WorkbookTrouble =
  | "not-a-table"
  | "file-too-large"
  | "broken-workbook"
  | "locked-workbook"
  | "unsafe-workbook"
  | "workbook-too-large"
  | "part-too-large"
  | "too-many-parts"
  | "workbook-too-full"
  | "too-many-rows"
  | "too-many-columns"
  | "too-many-cells"
  | "cell-too-long";
