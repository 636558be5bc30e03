// The boards and instruments as they really are, before anybody measures or writes.
import { seeded } from "./seeded.ts";
import type { TrueSpecies } from "./true-effects.ts";
import { trueEffects } from "./true-effects.ts";

export type TrueBoard = {
  readonly id: string;
  readonly species: TrueSpecies;
  readonly tree: string;
  readonly supplier: string;
  readonly received: string;
  readonly youngsModulus: number;
  readonly acrossModulus: number;
  readonly density: number;
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
};

export type TrueInstrument = {
  readonly id: string;
  readonly board: TrueBoard;
  readonly finished: string;
  readonly thickness: number;
  readonly sustain: number;
  readonly loudness: number;
  readonly air: number;
  readonly weight: number;
};

export const dayAfter = (start: string, days: number): string =>
  new Date(Date.parse(start) + Math.round(days) * 86_400_000).toISOString().slice(0, 10);

const SUPPLIERS = ["upper valley", "river yard", "estate sale"];

/** Boards in the order in which they came, species mixed. */
export function trueBoards(): readonly TrueBoard[] {
  const order = seeded(trueEffects.seed, "order");
  const boards = trueEffects.species.flatMap((species) => {
    const stream = seeded(trueEffects.seed, `boards ${species.name}`);
    const trees = Array.from({ length: species.trees }, (_, index) => ({
      name: `${species.name.slice(0, 2).toUpperCase()}${index + 1}`,
      shift: trueEffects.treeScatter * stream.normal(),
      supplier: stream.pick(SUPPLIERS),
    }));
    return Array.from({ length: species.boards }, (_, index) => {
      const tree = trees[index % species.trees] ?? { name: "", shift: 0, supplier: "" };
      const deviation = tree.shift + trueEffects.pieceScatter * stream.normal();
      const youngsModulus = species.youngsModulus * Math.exp(deviation);
      return {
        species,
        tree: tree.name,
        supplier: tree.supplier,
        youngsModulus,
        acrossModulus: youngsModulus * 0.075 * Math.exp(0.12 * stream.normal()),
        density:
          species.density *
          Math.exp(trueEffects.densityWithModulus * deviation + trueEffects.densityScatter * stream.normal()),
        length: 0.55 + 0.004 * stream.normal(),
        width: 0.2 + 0.003 * stream.normal(),
        thickness: 0.0041 + 0.00022 * stream.normal(),
        place: order.uniform(),
      };
    });
  });
  return boards
    .sort((a, b) => a.place - b.place)
    .map(({ place: _, ...board }, index) => ({
      ...board,
      id: `T-${String(index + 1).padStart(2, "0")}`,
      received: dayAfter("2020-09-14", index * 26 + (index % 5)),
    }));
}

/** Forty of the boards became instruments, one about every six weeks. */
export function trueInstruments(boards: readonly TrueBoard[], split: string): readonly TrueInstrument[] {
  const stream = seeded(trueEffects.seed, "instruments");
  const chosen = trueEffects.species.flatMap((species) =>
    boards.filter((board) => board.species === species && board.id !== split).slice(0, species.instruments),
  );
  return chosen
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .map((board, index) => {
      const finished = dayAfter("2021-04-06", index * 44 + 9 * stream.uniform());
      const { species } = board;
      const thickness =
        species.thickness *
        (board.youngsModulus / species.youngsModulus) ** trueEffects.thicknessExponent *
        Math.exp(trueEffects.thicknessScatter * stream.normal());
      const perMetre = finished < trueEffects.bracingChanged ? trueEffects.sustainBefore : trueEffects.sustainSince;
      return {
        id: `G${String(index + 1).padStart(2, "0")}`,
        board,
        finished,
        thickness,
        sustain:
          species.sustain + perMetre * (thickness - species.thickness) + trueEffects.sustainScatter * stream.normal(),
        loudness: Math.max(1, Math.min(5, Math.round(species.loudness + 0.6 * stream.normal()))),
        air: 101 * Math.exp(0.03 * stream.normal()),
        weight: 1.39 + 0.07 * stream.normal(),
      };
    });
}
