import { type ColumnTable, withColumn, withRoles } from "../../../../core/columns/index.ts";
import { nearestName } from "../../../../core/formula/index.ts";
import type { NameAt } from "../../../language/index.ts";
import { type Computed, computed, failed, type Inputs, type LocalProblem, waitsFor } from "../../cell.ts";
import { cells } from "../../cells.ts";
import { correctedColumn } from "../../corrected-column.ts";
import type { FileTools } from "../../file-tools.ts";
import { sourceTable } from "../../source-table.ts";
import type { RecordsSpec } from "./records-spec.ts";

/** File, joins, roles, corrections, in that order. A line that names no column is a remark; the table still stands. */
export function runRecords(spec: RecordsSpec, inputs: Inputs, tools: FileTools["tables"]): Computed<ColumnTable> {
  const first = sourceTable(spec.from, spec.name, inputs);
  if (!first.ok) return first;
  const remarks: LocalProblem[] = [...(first.remarks ?? [])];
  let table = first.value;
  for (const join of spec.joins) {
    const right = sourceTable(join, spec.name, inputs);
    if (!right.ok) {
      remarks.push(...right.problems);
      continue;
    }
    remarks.push(...(right.remarks ?? []));
    const lacking = [table, right.value].find((side) => !side.columns.has(join.on.name));
    if (lacking) remarks.push(unknownColumn(join.on, lacking));
    else table = tools?.joinTables(table, right.value, join.on.name).table ?? table;
  }
  const role = (line: { readonly column: NameAt } | null): string | undefined => {
    if (!line) return undefined;
    if (table.columns.has(line.column.name)) return line.column.name;
    remarks.push(unknownColumn(line.column, table));
    return undefined;
  };
  const [piece, shared, finished] = [role(spec.piece), role(spec.shared), role(spec.finished)];
  table = withRoles(table, {
    ...(piece === undefined ? {} : { piece }),
    ...(shared === undefined ? {} : { shared }),
    ...(finished === undefined ? {} : { finished }),
    leaveOut: spec.leaveOut.map((line) => ({ piece: line.piece, because: line.because })),
  });
  for (const line of spec.leaveOut) {
    if (!table.rows.some((row) => row.piece === line.piece)) {
      const suggestion = nearestName(
        line.piece,
        table.rows.map((row) => row.piece),
      );
      remarks.push({
        code: "unknown-name",
        facts: { name: line.piece },
        span: line,
        ...(suggestion ? { suggestion } : {}),
      });
    }
  }
  for (const line of spec.corrections) {
    const column = table.columns.get(line.column.name);
    const rig = inputs.get(cells.rig(line.by.name));
    if (!column) remarks.push(unknownColumn(line.column, table));
    else if (!rig.ok) return failed(waitsFor(line.by.name, line.by));
    else {
      const corrected = correctedColumn(table, column, rig.value);
      if (corrected.ok) table = withColumn(table, corrected.value);
      else remarks.push({ code: "waits-for", facts: { name: line.by.name }, span: line.by });
    }
  }
  return computed(table, remarks);
}

function unknownColumn(at: NameAt, table: ColumnTable): LocalProblem {
  const suggestion = nearestName(at.name, table.columns.keys());
  return {
    code: "unknown-column",
    facts: { name: at.name, table: table.name },
    span: { from: at.from, to: at.to },
    ...(suggestion ? { suggestion } : {}),
  };
}
