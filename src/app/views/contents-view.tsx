import type { RecordsListing } from "../../core/records/index.ts";
import type { Listing } from "../state/api.ts";
import { RecordsList } from "./records-list.tsx";

/** What to do in a folder that has no notebook. */
const FirstNotebook = ({ tables }: { readonly tables: readonly RecordsListing[] }) => (
  <>
    <p>There is no notebook in this folder yet.</p>
    {tables.length === 0 ? (
      <p>
        <a href="#bring-in">Bring in a table</a> of your records, and a notebook can begin with it.
      </p>
    ) : (
      <ul>
        {tables.map(({ file }) => (
          <li key={file}>
            <a href={`#begin=${encodeURIComponent(file)}`}>
              Begin one with <bdi>{file}</bdi>
            </a>
          </li>
        ))}
      </ul>
    )}
  </>
);

/** The notebooks and tables of the folder as a contents page; of notebooks that are not known yet it says nothing. */
export const ContentsView = ({
  notebooks,
  tables,
}: {
  readonly notebooks: readonly Listing[] | null;
  readonly tables: readonly RecordsListing[];
}) => (
  <section class="contents-view" aria-labelledby="contents">
    <h1 id="contents">Contents</h1>
    {notebooks?.length === 0 ? <FirstNotebook tables={tables} /> : null}
    <ol>
      {(notebooks ?? []).map(({ file, title, written }) => (
        <li key={file}>
          <a href={`#${encodeURIComponent(file)}`}>{title}</a>
          <small>
            {file}
            {written === null ? "" : `, ${written}`}
          </small>
        </li>
      ))}
    </ol>
    <RecordsList tables={tables} />
    <p>
      <a href="#bring-in">Bring in a table</a>
    </p>
  </section>
);
