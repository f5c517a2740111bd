import { describe, expect, it } from 'vitest';
import { chartBorder, scaleBarNm } from './chart-border.js';
import { chartLabels } from './chart-labels.js';
import { drawnLegs } from './chart-legs.js';
import { type Box, chartScale, type Point } from './chart-scale.js';
import { dayInWords, movedOn } from './day-legs.js';
import { heardOf } from './heard.js';
import { labelSpots, overlap } from './label-spots.js';
import type { Cache, Flight, Place, Sling } from './map-read.js';
import { approachInWords, indexOf, placeRows, shortInWords } from './place-rows.js';

const place = (code: string, rest: Partial<Place> = {}): Place => ({
  code,
  name: code.toLowerCase(),
  kind: 'strip',
  latitudeDeg: 66,
  longitudeDeg: 0,
  elevationFt: 100,
  stripClass: 2,
  runway: {
    lengthFt: 1900,
    material: 'gravel',
    oneWay: false,
    tailwindLimitKt: 5,
    committalPoint: null,
  },
  landingCapacityDrumsPerDay: 6,
  surface: { staleAfterHours: 12, expected: 'dry' },
  ...rest,
});

const cache = (code: string, usable: readonly number[], ageHours = 5): Cache => ({
  place: code,
  minimumLitres: 1200,
  criticalLitres: 600,
  capacityDrums: 30,
  stock: { usableLitres: usable[0]!, lastCount: { countedLitres: usable[0]!, ageHours } },
  projections: { offered: { usableLitres: [...usable] } },
  deliveries: [],
  slings: [],
});

const flight = (id: string, rest: Partial<Flight> = {}): Flight => ({
  id,
  state: 'offered',
  needsDecision: null,
  aircraft: 'B1',
  fromPlace: 'XALD',
  toPlace: 'XALD',
  stops: [{ place: 'XLOR', drums: 6 }],
  ...rest,
});

const sling = (rest: Partial<Sling> = {}): Sling => ({
  ...{ date: '2027-06-15', helicopter: 'H2', from: 'XLOR', to: 'XOGR', drums: 4 },
  load: { drums: 4 },
  inQuestion: { drums: 0, litres: 0 },
  ...rest,
});

const size = { width: 900, height: 700 };

describe('chart', () => {
  const north = place('XNOR', { latitudeDeg: 67, longitudeDeg: 1 });
  const south = place('XSOU', { latitudeDeg: 65, longitudeDeg: 1 });
  const west = place('XWES', { latitudeDeg: 65, longitudeDeg: -2 });

  it('north is up, east is right, and every place stands inside the border', () => {
    const scale = chartScale([north, south, west], size);
    expect(scale.at(north).y).toBeLessThan(scale.at(south).y);
    expect(scale.at(north).x).toBeCloseTo(scale.at(south).x, 6);
    expect(scale.at(west).x).toBeLessThan(scale.at(south).x);
    for (const spot of [north, south, west]) {
      const { x, y } = scale.at(spot);
      expect(x).toBeGreaterThan(scale.frame.x);
      expect(x).toBeLessThan(scale.frame.x + scale.frame.width);
      expect(y).toBeGreaterThan(scale.frame.y);
      expect(y).toBeLessThan(scale.frame.y + scale.frame.height);
    }
  });

  it('a territory over 180 degrees is one territory, and of one place there is a chart too', () => {
    const scale = chartScale(
      [place('XEAS', { longitudeDeg: 179 }), place('XWES', { longitudeDeg: -179 })],
      size,
    );
    const [east, over] = [scale.xOf(179), scale.xOf(-179)];
    expect(east).toBeLessThan(over);
    expect(over - east).toBeLessThan(size.width);
    const alone = chartScale([north], size);
    expect(Number.isFinite(alone.at(north).x)).toBe(true);
    expect(alone.pixelsPerNm).toBeLessThan(size.height);
  });

  it('a mark of the border is 10 minutes of latitude high and 30 of longitude wide', () => {
    const scale = chartScale([north, south, west], size);
    const { marks } = chartBorder(scale);
    const upright = marks.filter(({ width }) => width === 4);
    expect(upright.some(({ y }) => Math.abs(y - scale.yOf(66.5)) < 1e-6)).toBe(true);
    const found = upright.find(({ y }) => Math.abs(y - scale.yOf(66.5)) < 1e-6)!;
    expect(found.height).toBeCloseTo(scale.yOf(66 + 2 / 6) - scale.yOf(66.5), 6);
    const level = marks.filter(({ height }) => height === 4);
    const halfDegree = scale.xOf(1) - scale.xOf(0.5);
    expect(level.some(({ width }) => Math.abs(width - halfDegree) < 1e-6)).toBe(true);
  });

  it('the scale bar is a round length that fits, as long as a minute of latitude is a mile', () => {
    expect(scaleBarNm(3.7, 180)).toBe(20);
    expect(scaleBarNm(3.6, 180)).toBe(50);
    const scale = chartScale([north, south], size);
    const middle = scale.yOf(65.9) - scale.yOf(66.1);
    expect(scale.pixelsPerNm).toBeCloseTo(middle / 12, 1);
  });
});

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

describe('legs of a day', () => {
  it('the way back over the same ground is not drawn again', () => {
    const [f05] = movedOn({ flights: [flight('F05')], booked: [], slings: [] });
    expect(f05!.route).toEqual(['XALD', 'XLOR', 'XALD']);
    expect(f05!.legs).toMatchObject([{ from: 'XALD', to: 'XLOR', line: 'offered', label: 'F05, 6 drums' }]);
  });

  it('each leg says the drums that are still aboard', () => {
    const stops = [
      { place: 'XCIN', drums: 2 },
      { place: 'XLOR', drums: 4 },
    ];
    const [moved] = movedOn({ flights: [flight('F05', { stops })], booked: [], slings: [] });
    expect(moved!.load).toBe('6 drums');
    expect(moved!.legs.map(({ from, to, label }) => `${from}-${to} ${label}`)).toEqual([
      'XALD-XCIN F05, 6 drums',
      'XCIN-XLOR F05, 4 drums',
      'XLOR-XALD ',
    ]);
  });

  it('a flight that needs a decision says so in words; what was declined is not there', () => {
    const moved = movedOn({
      flights: [flight('F05', { needsDecision: 'XLOR is soft' }), flight('F06', { state: 'declined' })],
      booked: [],
      slings: [],
    });
    expect(moved.map(({ id }) => id)).toEqual(['F05']);
    expect(moved[0]!.legs[0]).toMatchObject({
      line: 'in question',
      label: 'F05, 6 drums, needs a decision',
    });
  });

  it('booked flights say what they have aboard, slings what hangs below', () => {
    const moved = movedOn({
      flights: [],
      booked: [
        { id: 'X2', aircraft: 'C1', route: ['XALD', 'XCIN', 'XALD'], passengers: 1, spareDrums: 2 },
        { id: 'X1', aircraft: 'A1', route: ['XMER', 'XISK'], passengers: 0, spareDrums: 0 },
      ],
      slings: [sling()],
    });
    expect(moved.map(({ load }) => load)).toEqual(['1 passenger, spare 2 drums', 'no drums', '4 drums']);
    expect(moved[2]!.legs).toMatchObject([{ line: 'sling', label: 'Sling, 4 drums' }]);
    expect(dayInWords(moved, 'Tue 15 June 2027')).toBe('Tue 15 June 2027: 2 flights, 0 drums; 1 sling move.');
    expect(dayInWords([], 'Sun 20 June 2027')).toBe('Sun 20 June 2027: nothing flies.');
  });

  it('a sling of drums that a flight has still to land, and somebody to decide on, says so', () => {
    const [asked] = movedOn({
      ...{ flights: [], booked: [] },
      slings: [sling({ inQuestion: { drums: 2, litres: 400 } })],
    });
    expect(asked).toMatchObject({
      load: '4 drums, 2 of a flight that needs a decision',
      legs: [{ label: 'Sling, 4 drums ?' }],
    });
  });

  it('a sling that finds less than is planned says of how many', () => {
    const [short] = movedOn({ flights: [], booked: [], slings: [sling({ load: { drums: 3 } })] });
    expect(short).toMatchObject({ load: '3 of 4 drums', legs: [{ label: 'Sling, 3 of 4 drums' }] });
  });

  it('two flights on one leg lie side by side and share the distance', () => {
    const places = [place('XALD', { latitudeDeg: 65 }), place('XLOR', { latitudeDeg: 67 })];
    const scale = chartScale(places, size);
    const moved = movedOn({ flights: [flight('F05'), flight('F08')], booked: [], slings: [] });
    const drawn = drawnLegs(
      moved.flatMap(({ legs }) => legs),
      { scale, spotOf: new Map(places.map((each) => [each.code, each])), distanceNm: () => 150.3 },
    );
    expect(Math.abs(drawn[0]!.points[3]!.x - drawn[1]!.points[3]!.x)).toBeCloseTo(6, 1);
    expect(drawn[0]!.captions).toEqual(['F05, 6 drums', 'F08, 6 drums', '150.3 NM']);
    expect(drawn[1]!.captions).toEqual([]);
  });
});

describe('places', () => {
  const outlook = {
    dates: ['2027-06-14', '2027-06-15'],
    items: [cache('XLOR', [2200, 1000, 500]), cache('XKNA', [1520, 1520, 1520], 12 * 24)],
  };
  const places = [
    place('XKNA', { latitudeDeg: 65 }),
    place('XLOR', { latitudeDeg: 67 }),
    place('XMER', { kind: 'base', latitudeDeg: 66 }),
  ];
  const at = (day: string) =>
    placeRows(places, {
      outlook,
      filled: new Map([['XMER', { usable: 14, held: 10, pastRetest: 0 }]]),
      index: indexOf(outlook, day),
    });

  it('stand from north to south with their level at the end of the day', () => {
    expect(at('2027-06-14').map(({ place: { code }, words }) => `${code}: ${words}`)).toEqual([
      'XLOR: 1,000 L, below minimum',
      'XMER: 14 drums fit, 10 held',
      'XKNA: 1,520 L, count 12 days old',
    ]);
    expect(at('2027-06-15')[0]).toMatchObject({ level: 'critical', short: '500 L, critical' });
  });

  it('litres of a flight that needs a decision are marked from its day on, where it lands any', () => {
    const levelWith = (litres: number, day: string) => {
      const deliveries = [{ date: '2027-06-15', litres, needsDecision: 'strip soft' }];
      const items = outlook.items.map((each) => ({ ...each, deliveries }));
      const index = indexOf(outlook, day);
      return placeRows(places, { outlook: { ...outlook, items }, filled: new Map(), index })[0]!.words;
    };
    expect(levelWith(400, '2027-06-14')).toBe('1,000 L, below minimum');
    expect(levelWith(400, '2027-06-15')).toBe('500 L ?, below critical');
    expect(levelWith(0, '2027-06-15')).toBe('500 L, below critical');
  });

  it('so are litres slung on from there to a pad, from the day of the sling on', () => {
    const levelWith = (rest: Partial<Sling>) => {
      const pad = { ...outlook.items[0]!, slings: [sling({ from: 'XGAN', to: 'XLOR', ...rest })] };
      const index = indexOf(outlook, '2027-06-15');
      return placeRows(places, { outlook: { ...outlook, items: [pad] }, filled: new Map(), index })[0]!.words;
    };
    const inQuestion = { drums: 2, litres: 400 };
    expect(levelWith({ inQuestion })).toBe('500 L ?, below critical');
    expect(levelWith({})).toBe('500 L, below critical');
    expect(levelWith({ inQuestion, date: '2027-06-16' })).toBe('500 L, below critical');
    // What leaves is in question where it goes.
    expect(levelWith({ inQuestion, from: 'XLOR', to: 'XGAN' })).toBe('500 L, below critical');
  });

  it('where more is asked for than there is, the level says how much is short, never a negative stock', () => {
    const [cache] = outlook.items;
    const short = { ...cache!, projections: { offered: { usableLitres: [2200, -120, -120] } } };
    const [row] = placeRows(places, {
      outlook: { ...outlook, items: [short] },
      filled: new Map(),
      index: indexOf(outlook, '2027-06-14'),
    });
    expect([row!.words, row!.short]).toEqual(['short 120 L, below critical', 'short 120 L, critical']);
  });

  it('a day that the figures do not reach shows what is there now', () => {
    expect(at('2027-06-01')[0]!.words).toBe('2,200 L, above minimum');
    expect(shortInWords(at('2027-06-01'))).toBe('No cache is below its minimum.');
    expect(shortInWords(at('2027-06-14'))).toBe('XLOR 1,000 L, below minimum.');
  });

  it('a one-way strip says from which side, or that nobody has written it down', () => {
    const runway = { ...places[0]!.runway!, oneWay: true };
    expect(approachInWords(place('XGAN', { runway: { ...runway, approachFromDeg: 20 } }))).toBe(
      'one way, from 020° true',
    );
    expect(approachInWords(place('XGAN', { runway }))).toBe('one way; the side is not written down');
    expect(approachInWords(places[0]!)).toBeNull();
  });

  it('a surface report that is stale counts as unknown', () => {
    const report = { place: 'XLOR', state: 'dry', at: '2027-06-14T05:50Z', by: 'strip helper' } as const;
    const of = (time: string) =>
      heardOf([report], { at: new Date(time), timeZone: 'UTC' })(place('XLOR')).surface;
    expect(of('2027-06-14T17:00Z')).toBe('dry');
    expect(of('2027-06-14T18:00Z')).toBe('unknown');
  });
});
