/** Why a workbook is not read: the code of a warning about the file, whose sentence stands in the catalogue. */
export type WorkbookTrouble =
  | "not-a-table"
  | "broken-workbook"
  | "locked-workbook"
  | "unsafe-workbook"
  | "workbook-too-large"
  | "too-many-parts"
  | "too-many-rows"
  | "too-many-cells"
  | "cell-too-long";
