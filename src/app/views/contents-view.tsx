import type { RecordsListing } from "../../core/records/index.ts";
import type { Listing } from "../state/api.ts";
import { RecordsList } from "./records-list.tsx";

const EXAMPLE = `---
title: First look
---
How thick are they?

\`\`\`records tops
from tops.csv
\`\`\`

\`\`\`question woods
thickness across species
\`\`\`
`;

/** What to do in a folder that has no notebook. */
const FirstNotebook = () => (
  <>
    <p>There is no notebook in this folder yet. A notebook is a plain text file whose name ends in .md.</p>
    <p>
      Write these lines with any text editor, with the name of your own table (CSV or tab-separated) and of its columns,
      and save them in this folder as first-look.md. It appears here as soon as it is saved.
    </p>
    <pre>{EXAMPLE}</pre>
  </>
);

/** The notebooks and tables of the folder as a contents page. */
export const ContentsView = ({
  notebooks,
  tables,
}: {
  readonly notebooks: readonly Listing[];
  readonly tables: readonly RecordsListing[];
}) => (
  <section class="contents-view" aria-labelledby="contents">
    <h1 id="contents">Contents</h1>
    {notebooks.length === 0 ? <FirstNotebook /> : null}
    <ol>
      {notebooks.map(({ file, title, written }) => (
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
  </section>
);
