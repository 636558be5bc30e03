import type { Problem } from "../../core/base/index.ts";

/** Problems as sentences, each with its place and, where there is one, what may have been meant. */
export const ProblemView = ({ problems }: { readonly problems: readonly Problem[] }) => (
  <ul class="problem-view">
    {problems.map((problem) => (
      <li key={`${problem.line}:${problem.column}:${problem.code}`} data-code={problem.code}>
        {problem.sentence}
        {problem.suggestion === undefined ? null : (
          <>
            {" "}
            Did you mean <code>{problem.suggestion}</code>?
          </>
        )}
        <small>
          {" "}
          {problem.file === undefined ? "" : `${problem.file}, `}line {problem.line}, column {problem.column}
        </small>
      </li>
    ))}
  </ul>
);
