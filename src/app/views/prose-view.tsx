// Prose from its tree. Headings step down so that the notebook's title stays the only first one; links to notebooks stay in the page.
import type { ComponentChildren, JSX } from "preact";
import { createElement } from "preact";
import type { ProseNode } from "../../core/base/index.ts";

type Of<I extends ProseNode["is"], N = ProseNode> = N extends { readonly is: infer J }
  ? I extends J
    ? N
    : never
  : never;
const inside = (nodes: readonly ProseNode[]): ComponentChildren =>
  nodes.map((node, key) => <Node key={key} node={node} />);
const place = (url: string) => (/^[^:/?#]+\.md$/.test(url) ? `#${url}` : url);

const SHOW: { readonly [I in ProseNode["is"]]: (node: Of<I>) => JSX.Element } = {
  text: (node) => <>{node.text}</>,
  code: (node) => <code>{node.text}</code>,
  "code-block": (node) => <pre>{node.text}</pre>,
  paragraph: (node) => <p>{inside(node.children)}</p>,
  emphasis: (node) => <em>{inside(node.children)}</em>,
  strong: (node) => <strong>{inside(node.children)}</strong>,
  quote: (node) => <blockquote>{inside(node.children)}</blockquote>,
  item: (node) => <li>{inside(node.children)}</li>,
  heading: (node) => createElement(`h${Math.min(6, Math.max(2, node.depth))}`, null, inside(node.children)),
  list: (node) =>
    node.ordered ? <ol start={node.start}>{inside(node.children)}</ol> : <ul>{inside(node.children)}</ul>,
  link: (node) => (
    <a href={place(node.url)} rel="noopener noreferrer">
      {inside(node.children)}
    </a>
  ),
  table: (node) => (
    <table>
      <thead>
        {node.rows.slice(0, 1).map((row, key) => (
          <tr key={key}>
            {row.map((cell, at) => (
              <th key={at} scope="col">
                {inside(cell)}
              </th>
            ))}
          </tr>
        ))}
      </thead>
      <tbody>
        {node.rows.slice(1).map((row, key) => (
          <tr key={key}>
            {row.map((cell, at) => (
              <td key={at}>{inside(cell)}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  ),
  rule: () => <hr />,
  break: () => <br />,
};
const Node = ({ node }: { readonly node: ProseNode }) => (SHOW[node.is] as (node: ProseNode) => JSX.Element)(node);

/** Prose as read. */
export const ProseView = ({ prose }: { readonly prose: readonly ProseNode[] }) => (
  <div class="prose-view">{inside(prose)}</div>
);
