import { instrumentsFile } from "./instruments-file.ts";
import { otherFiles } from "./other-files.ts";
import { SPLIT_TOP, topsFile } from "./tops-file.ts";
import { trueBoards, trueInstruments } from "./true-pieces.ts";

/** Every file of notebooks/records that is generated, by name. */
export function recordFiles(): ReadonlyMap<string, string> {
  const boards = trueBoards();
  return new Map([
    [topsFile.name, topsFile.text(boards)],
    [instrumentsFile.name, instrumentsFile.text(trueInstruments(boards, SPLIT_TOP))],
    ...[...otherFiles].map(([name, text]) => [name, text()] as const),
  ]);
}
