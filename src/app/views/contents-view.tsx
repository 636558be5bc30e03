import type { Listing } from "../state/api.ts";

/** The notebooks of the folder as a contents page. */
export const ContentsView = ({ notebooks }: { readonly notebooks: readonly Listing[] }) => (
  <section class="contents-view" aria-labelledby="contents">
    <h1 id="contents">Contents</h1>
    {notebooks.length === 0 ? <p>There is no notebook in this folder yet.</p> : null}
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
  </section>
);
