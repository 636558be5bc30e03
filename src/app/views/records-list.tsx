import type { RecordsListing } from "../../core/records/index.ts";
import { recordsAddress } from "../state/records-address.ts";

/** The tables of the folder, each leading to its records. */
export const RecordsList = ({ tables }: { readonly tables: readonly RecordsListing[] }) =>
  tables.length === 0 ? null : (
    <>
      <h2 id="tables">Tables of records</h2>
      <ul aria-labelledby="tables">
        {tables.map(({ file, tables: count, rows }) => (
          <li key={file}>
            <a href={recordsAddress({ file, table: 1 })}>
              <bdi>{file}</bdi>
            </a>
            <small>
              {rows} {rows === 1 ? "record" : "records"}
              {count > 1 ? ` in ${count} tables` : ""}
            </small>
          </li>
        ))}
      </ul>
    </>
  );
