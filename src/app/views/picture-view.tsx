// A picture with its name, its words, and its numbers one key away.
import type { Drawing, Picture, PicturePoint } from "../../core/base/index.ts";
import { axisWords } from "../../core/pictures/index.ts";
import { DrawnPicture } from "./drawn-picture.tsx";
import { ScrollBox } from "./scroll-box.tsx";

const DAY = 86_400_000;
const shown = (value: number | string, axis: Picture["x"]) => {
  if (typeof value === "string") return value;
  return axis.kind === "date" ? new Date(value * DAY).toISOString().slice(0, 10) : String(Number(value.toPrecision(5)));
};

const PointTable = ({ picture, points }: { readonly picture: Picture; readonly points: readonly PicturePoint[] }) => (
  <ScrollBox label={`Numbers of ${picture.title}`}>
    <table>
      <caption>{picture.title}</caption>
      <thead>
        <tr>
          <th scope="col">piece</th>
          <th scope="col">{axisWords(picture.x)}</th>
          <th scope="col">{axisWords(picture.y)}</th>
          {picture.groups.length > 0 && <th scope="col">group</th>}
        </tr>
      </thead>
      <tbody>
        {points.map((point, place) => (
          <tr key={place}>
            <th scope="row">{point.row?.piece ?? point.label}</th>
            <td>{shown(point.x, picture.x)}</td>
            <td>{shown(point.y, picture.y)}</td>
            {picture.groups.length > 0 && <td>{point.group ?? "none"}</td>}
          </tr>
        ))}
      </tbody>
    </table>
  </ScrollBox>
);

/** The drawing, its text alternative, and its points as a table. */
export const PictureView = ({
  picture,
  drawing,
  said = [],
}: {
  readonly picture: Picture;
  readonly drawing: Drawing | null;
  /** What stands above the picture already: the caption does not say it again. */
  readonly said?: readonly string[];
}) => {
  const points = picture.layers.flatMap((layer) => (layer.kind === "points" ? layer.points : []));
  return (
    <figure class="picture-view">
      {drawing === null ? null : <DrawnPicture drawing={drawing} />}
      <figcaption>
        {said.reduce((text, each) => text.replace(each, "").trim().replace("  ", " "), picture.description)}
      </figcaption>
      {points.length > 0 && (
        <details>
          <summary>The picture’s numbers</summary>
          <PointTable picture={picture} points={points} />
        </details>
      )}
    </figure>
  );
};
