import { describe, expect, it } from 'vitest';
import { chartLabels } from './chart-labels.js';
import { chartScale } from './chart-scale.js';
import { labelSpots, overlap } from './label-spots.js';
import { placeRows } from './place-rows.js';
import { place, size } from './testing/example-map.js';

describe('labels', () => {
  const frame = { x: 0, y: 0, width: 200, height: 100 };
  const box = (x: number, y: number) => ({ x, y, width: 40, height: 10 });

  it('stand on their best side where nothing is in the way', () => {
    const spots = labelSpots([{ key: 'a', spots: [box(10, 10), box(10, 40)] }], { frame, obstacles: [] });
    expect(spots.get('a')).toBe(0);
  });

  it('give way to each other, to marks, and to the border', () => {
    const labels = [
      { key: 'a', spots: [box(10, 10), box(10, 40)] },
      { key: 'b', spots: [box(20, 12), box(20, 60)] },
      { key: 'out', spots: [box(180, 10), box(120, 80)] },
      { key: 'marked', spots: [box(100, 10), box(100, 40)] },
    ];
    const chosen = labelSpots(labels, { frame, obstacles: [{ ...box(105, 12), weight: 3 }] });
    const boxes = labels.map(({ key, spots }) => spots[chosen.get(key)!]!);
    for (const [at, one] of boxes.entries())
      for (const other of boxes.slice(at + 1)) expect(overlap(one, other)).toBe(0);
    expect(chosen.get('out')).toBe(1);
    expect(chosen.get('marked')).toBe(1);
  });

  it('stand on a line rather than on each other: words over words cannot be read', () => {
    const labels = [
      { key: 'a', spots: [box(10, 10)] },
      { key: 'b', spots: [box(10, 14), box(10, 60)] },
    ];
    const { width, height } = box(10, 60);
    const line = { x: 10, y: 60, width, height: height / 2, weight: 2.5 };
    expect(labelSpots(labels, { frame, obstacles: [line] }).get('b')).toBe(1);
  });

  it('come out the same every time', () => {
    const rows = placeRows(
      ['XA', 'XB', 'XC', 'XD'].map((code, index) =>
        place(code, { latitudeDeg: 66 + index / 100, longitudeDeg: index / 50 }),
      ),
      { outlook: { dates: [], items: [] }, filled: new Map(), index: 0 },
    );
    const scale = chartScale(
      rows.map((row) => row.place),
      size,
    );
    const draw = () => [
      ...chartLabels(scale, {
        rows,
        legs: [],
        hasNames: true,
        hasWords: true,
        wordsSize: 12,
      }).places.values(),
    ];
    expect(draw()).toEqual(draw());
  });
});
