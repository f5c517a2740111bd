import type { DrawnLeg } from './chart-legs.js';
import type { Box, ChartScale, Point } from './chart-scale.js';
import { type Label, labelSpots, type Obstacle } from './label-spots.js';
import type { PlaceRow } from './place-rows.js';

export type Side = 'start' | 'middle' | 'end';

export interface PlaceLabel {
  readonly box: Box;
  readonly side: Side;
  readonly name: string;
  readonly words: string;
  /** Left edge of the second line, its mark included. */
  readonly wordsX: number;
}

export interface ChartLabels {
  readonly places: ReadonlyMap<string, PlaceLabel>;
  readonly legs: ReadonlyMap<string, Box>;
}

const nameSize = 14;
/** 13 on the screen, set half bold, and larger on paper. */
const captionSize = 15;
export const lineHeight = 15;
/** From the middle of a mark to its label. */
const away = 16;
/** The level's mark and the space after it. */
export const levelMarkWidth = 16;

/** About as wide as the condensed face sets it; exact enough to keep labels apart. */
const textWidth = (text: string, size: number): number => {
  const narrow = text.match(/[ ,.'-]/g)?.length ?? 0;
  return Math.ceil((0.5 * (text.length - narrow) + 0.25 * narrow) * size);
};

interface ToLabel {
  readonly rows: readonly PlaceRow[];
  readonly legs: readonly DrawnLeg[];
  /** The name beside the code. */
  readonly hasNames: boolean;
  /** The word of a level above its minimum, too; its mark is always there. */
  readonly hasWords: boolean;
  /** Of the second line, in pixels. */
  readonly wordsSize: number;
}

/** Where each label stands, so that they cover each other, the marks and the lines as little as may be. */
export const chartLabels = (scale: ChartScale, { rows, legs, ...letters }: ToLabel): ChartLabels => {
  const places = rows.map((row) => placeLabel(row, scale.at(row.place), letters));
  const captions = legs.filter(({ captions }) => captions.length > 0).map(legLabel);
  const marks = rows.map(({ place }) => boxAround(scale.at(place), 12));
  const chosen = labelSpots([...captions, ...places], {
    frame: scale.frame,
    obstacles: [
      ...marks.map((mark) => ({ ...mark, weight: 8 })),
      // A label that comes near another mark would be read as that place's.
      ...rows.map(({ place }) => ({ ...boxAround(scale.at(place), 26), weight: 0.3 })),
      ...legs.flatMap(({ points }) => alongLine(points)),
    ],
  });
  return {
    places: new Map(places.map(({ key, options }) => [key, options[chosen.get(key)!]!])),
    legs: new Map(captions.map(({ key, spots }) => [key, spots[chosen.get(key)!]!])),
  };
};

const placeLabel = (
  row: PlaceRow,
  { x, y }: Point,
  { hasNames, hasWords, wordsSize }: Omit<ToLabel, 'rows' | 'legs'>,
): Label & { readonly options: readonly PlaceLabel[] } => {
  const name = hasNames ? `${row.place.code} ${row.place.name}` : row.place.code;
  const words = hasWords ? row.words : row.short;
  const below = words === '' ? 0 : textWidth(words, wordsSize) + (row.level === null ? 0 : levelMarkWidth);
  const width = Math.max(textWidth(name, nameSize), below);
  const height = words === '' ? lineHeight : 2 * lineHeight;
  const starts: readonly (readonly [Side, left: number, top: number])[] = [
    ['start', x + away, y - height / 2],
    ['end', x - away - width, y - height / 2],
    ['start', x + away - 3, y - height - 2],
    ['start', x + away - 3, y + 4],
    ['end', x - away + 3 - width, y - height - 2],
    ['end', x - away + 3 - width, y + 4],
    ['middle', x - width / 2, y + away + 2],
    ['middle', x - width / 2, y - away - height],
  ];
  const options = starts.map(([side, left, top]) => ({
    box: { x: left, y: top, width, height },
    side,
    name,
    words,
    wordsX: side === 'start' ? left : side === 'end' ? left + width - below : left + (width - below) / 2,
  }));
  return { key: row.place.code, spots: options.map(({ box }) => box), options };
};

const shares = [0.5, 0.4, 0.6, 0.3, 0.7, 0.22, 0.78] as const;

/** On its line, or beside it. */
const legLabel = ({ key, points, captions }: DrawnLeg): Label => {
  const width = Math.max(...captions.map((text) => textWidth(text, captionSize)));
  const height = captions.length * lineHeight;
  const spots = shares.flatMap((share) => {
    const { x, y } = points[Math.round(share * (points.length - 1))]!;
    const [aside, over] = [width / 2 + 6, height / 2 + 8];
    const shifts = [
      [0, 0],
      [aside, 0],
      [-aside, 0],
      [0, -over],
      [0, over],
      [aside, -over],
      [aside, over],
      [-aside, -over],
      [-aside, over],
    ] as const;
    return shifts.map(([right, down]) => ({
      x: x - width / 2 + right,
      y: y - height / 2 + down,
      width,
      height,
    }));
  });
  return { key, spots };
};

const boxAround = ({ x, y }: Point, half: number): Box => ({
  x: x - half,
  y: y - half,
  width: 2 * half,
  height: 2 * half,
});

/** A line as small boxes, one every few pixels: to stand on it is bad, and worse the longer the words cross it. */
const alongLine = (points: readonly Point[]): readonly Obstacle[] =>
  points.slice(1).flatMap((to, index) => {
    const from = points[index]!;
    const pieces = Math.max(1, Math.round(Math.hypot(to.x - from.x, to.y - from.y) / 8));
    return Array.from({ length: pieces }, (_, piece) => {
      const share = (piece + 0.5) / pieces;
      const middle = { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
      return { ...boxAround(middle, 4), weight: 2.5 };
    });
  });
