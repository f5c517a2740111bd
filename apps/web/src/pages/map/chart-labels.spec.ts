import { describe, expect, it } from 'vitest';
import { chartLabels } from './chart-labels.js';
import { drawnLegs } from './chart-legs.js';
import { type Box, chartScale, type Point } from './chart-scale.js';
import { movedOn } from './day-legs.js';
import { overlap } from './label-spots.js';
import { placeRows } from './place-rows.js';
import { cache, flight, place, sling } from './testing/example-map.js';

describe('the demo territory on Tuesday', () => {
  const territory = [
    ['XALD', 'Port Aldous', 65.3333, -4.5],
    ['XMER', 'Mereholt', 66.3333, -0.5608],
    ['XBIR', 'Birkskar', 64.9666, -2.5097],
    ['XCIN', 'Cinder Flat', 65.9333, -2.0121],
    ['XDUN', 'Dunnock', 65.6333, 0.0611],
    ['XESK', 'Eskerby', 65.9333, 1.5124],
    ['XFAL', 'Fallow Tarn', 66.9166, 0.4758],
    ['XGAN', 'Gannet Saddle', 67.0833, -1.3901],
    ['XHAS', 'Hask', 66.6666, -3.2561],
    ['XISK', 'Isk Shelf', 66.75, 1.7197],
    ['XJUN', 'Juniper Bench', 65.2, -0.8511],
    ['XKNA', 'Knapper', 65.6666, 2.3417],
    ['XLOR', 'Lorn Moss', 67.6666, -2.2194],
    ['XMAR', 'Marrow Pad', 66.1666, 1.3051],
    ['XNED', 'Needle Pad', 67.1333, 0.8075],
    ['XOGR', 'Ogre Pad', 67.8666, -2.5097],
  ] as const;
  const rows = placeRows(
    territory.map(([code, name, latitudeDeg, longitudeDeg]) =>
      place(code, { name, latitudeDeg, longitudeDeg }),
    ),
    {
      outlook: { dates: ['2027-06-15'], items: territory.map(([code]) => cache(code, [1_500])) },
      filled: new Map(),
      index: 0,
    },
  );
  const spotOf = new Map(rows.map((row) => [row.place.code, row.place]));
  const moved = movedOn({
    flights: [
      flight('F05'),
      flight('F06', { fromPlace: 'XMER', toPlace: 'XMER', stops: [{ place: 'XGAN', drums: 4 }] }),
      flight('F07', { fromPlace: 'XMER', toPlace: 'XMER', stops: [{ place: 'XESK', drums: 5 }] }),
    ],
    booked: [
      { id: 'X2', aircraft: 'C1', route: ['XALD', 'XCIN', 'XMER', 'XALD'], passengers: 2, spareDrums: 2 },
    ],
    slings: [sling()],
  });
  const sizes = [
    { on: 'paper', width: 690, height: 600, hasNames: true, hasWords: false, wordsSize: 13.4 },
    { on: 'a screen of 1440', width: 942, height: 760, hasNames: true, hasWords: true, wordsSize: 12 },
    { on: 'a screen of 1024', width: 612, height: 596, hasNames: false, hasWords: false, wordsSize: 12 },
  ];

  it.each(sizes)(
    'no caption of a flight touches another label or crosses a line, on $on',
    ({ on: _, width, height, ...letters }) => {
      const scale = chartScale(
        rows.map((row) => row.place),
        { width, height },
      );
      const legs = drawnLegs(
        moved.flatMap((each) => each.legs),
        { scale, spotOf, distanceNm: () => 150.3 },
      );
      const labels = chartLabels(scale, { rows, legs, ...letters });
      const captions = [...labels.legs.values()];
      expect(captions.length).toBeGreaterThan(3);
      const others = [...labels.places.values()].map(({ box }) => box);
      for (const [at, caption] of captions.entries()) {
        for (const other of [...others, ...captions.slice(at + 1)]) expect(overlap(caption, other)).toBe(0);
        for (const { key, line, points } of legs)
          if (line !== 'booked')
            expect([key, points.some((point) => isIn(caption, point))]).toEqual([key, false]);
      }
    },
  );
});

const isIn = ({ x, y, width, height }: Box, point: Point): boolean =>
  point.x > x && point.x < x + width && point.y > y && point.y < y + height;
