// Every warning of a file, counted by what it says, each with the way to its cell.
import type { ImportReading, ImportWarnings as Warnings } from "../../core/records/index.ts";
import { importPlaceId } from "./import-place-id.ts";
import { importPlaceInWords } from "./import-place-in-words.ts";

function goTo(id: string): void {
  const place = document.getElementById(id);
  place?.scrollIntoView({ block: "center", inline: "center" });
  place?.focus({ preventScroll: true });
}

const isShown = ({ tables }: ImportReading, { table, row }: { readonly table: number; readonly row?: number }) =>
  row === undefined || (tables[table - 1]?.rows.some((each) => each.row === row) ?? false);

const Group = ({ reading, group }: { readonly reading: ImportReading; readonly group: Warnings }) => {
  const shown = group.places.filter((place) => isShown(reading, place));
  const more = group.count - shown.length;
  return (
    <li>
      <details>
        <summary>
          {group.count} × {group.sentence}
        </summary>
        <ul>
          {shown.map((place) => (
            <li key={importPlaceId(place)}>
              {place.row === undefined && place.col === undefined ? (
                importPlaceInWords(reading, place)
              ) : (
                <button type="button" onClick={() => goTo(importPlaceId(place))}>
                  <bdi>{importPlaceInWords(reading, place)}</bdi>
                </button>
              )}
            </li>
          ))}
        </ul>
        {more > 0 && <p>{more} more stand further down; they are all listed with the table once it is brought in.</p>}
      </details>
    </li>
  );
};

/** The warnings of a reading. */
export const ImportWarnings = ({ reading }: { readonly reading: ImportReading }) =>
  reading.warningCount === 0 ? null : (
    <section class="import-warnings" aria-labelledby="import-warnings">
      <h2 id="import-warnings">
        {reading.warningCount} {reading.warningCount === 1 ? "warning" : "warnings"}
      </h2>
      <ul>
        {reading.warnings.map((group) => (
          <Group key={group.code} reading={reading} group={group} />
        ))}
      </ul>
    </section>
  );
