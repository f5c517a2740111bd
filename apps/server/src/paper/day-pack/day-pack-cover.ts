import { decimalsOf, printNumber } from '@drumline/units';
import { papers } from '../pdf/paper-size.js';
import { type Block, blank, box, type Cell, figure, ruled, strong } from '../pdf/parts.js';
import { longDay } from '../pdf/print-stamp.js';
import { notToLoad } from '../sheet/not-to-load.js';
import { topOfPage } from '../sheet/sheet-head.js';
import type { DayPack, PackFlight, PackPlace } from './day-pack.js';
import { notHeardLines } from './not-heard-lines.js';

/** What the day is, and what is known of strips and caches: one page, or a page for each where there is too much of both. */
export const coverPages = (pack: DayPack): readonly Block[] => {
  const isQuiet = pack.flights.length === 0;
  const flights = [
    ...coverHead(pack),
    title('Flights'),
    isQuiet ? { text: 'No flight carries drums on this day.' } : flightTable(pack),
  ];
  const places = [title('Strips and caches'), placeTable(pack), placesFoot()];
  if (fitsOnePage(pack)) return [{ stack: [...flights, ...places, boxes(pack)] }];
  return [{ stack: flights }, { stack: [top(pack, 'Strips'), ...places, boxes(pack)] }];
};

/** In points: a line of a row, what is round its lines, and all that stands on a cover beside its rows. */
const lineHeight = 12;
const roundLines = 5;
const besideRows = 178;

/** Of the two lines on which it is signed. */
const handedOverHeight = 2 * lineHeight;

/** Signs that a line holds, of what binds a flight and of what is held. */
const lineSigns = 36;

/** Of what is set larger, codes and routes: in points, and the signs of a route that a line holds. */
const largeLineHeight = 14.4;
const routeSigns = 14;

const fitsOnePage = (pack: DayPack): boolean => {
  const { flights, places, paper } = pack;
  const heights = [
    ...flights.map(flightHeight),
    ...places.map(({ code }) =>
      Math.max(largeLineHeight + lineHeight, landings(code, flights).length * lineHeight),
    ),
  ];
  const rows = heights.reduce((sum, each) => sum + each + roundLines, 0);
  const beside = Math.max(handedOverHeight, ...[heldLines(pack), notHeardLines(pack)].map(linesHigh));
  return besideRows + rows + beside <= papers[paper].bodyHeight;
};

const flightHeight = (flight: PackFlight): number =>
  Math.max(
    2 * lineHeight,
    linesOf(bindsWords(flight)) * lineHeight,
    linesOf(flight.route.join(' '), routeSigns) * largeLineHeight,
  );

const linesHigh = (lines: readonly string[]): number =>
  lines.reduce((sum, words) => sum + linesOf(words) * lineHeight, 0);

/** A word is never parted: a line ends where the next one has no room. */
const linesOf = (words: string, signs = lineSigns): number => {
  let [lines, used] = [1, 0];
  for (const { length } of words.split(' ')) {
    const goesOn = used === 0 || used + 1 + length <= signs;
    if (!goesOn) lines += 1;
    used = goesOn && used > 0 ? used + 1 + length : length;
  }
  return lines;
};

const top = ({ date, stamp }: DayPack, name: string): Block =>
  topOfPage({
    title: name,
    first: longDay(date),
    second: `Printed ${stamp.at} by ${stamp.by} · a later print replaces this one`,
    code: null,
  });

const title = (text: string): Block => ({ text, bold: true, fontSize: 11, margin: [0, 4, 0, 0] });

const coverHead = (pack: DayPack): readonly Block[] => [
  top(pack, 'Day pack'),
  {
    text: [
      { text: 'If the lights go out, this is the day. ', bold: true },
      'Write the time beside everything: it is typed in later as written at that time, from paper. Nothing is rubbed out: strike through once and sign. ',
      strong('Planning figures. The commander’s approved data decide.'),
    ],
    margin: [0, 0, 0, 5],
  },
  { text: contents(pack), margin: [0, 0, 0, 2] },
];

const contents = ({ flights, slips }: DayPack): string => {
  const sheets = flights.flatMap(({ id, sheet }) => ('why' in sheet ? [] : [id]));
  return [
    `In this pack: load sheets ${sheets.join(', ') || 'none'}`,
    'radio script',
    ...[slips.count, slips.draw].map((numbers) => `slips ${numbers[0]} to ${numbers.at(-1)}`),
    'a load sheet to fill in by hand.',
  ].join('; ');
};

const flightTable = ({ flights }: DayPack): Block => ({
  table: {
    headerRows: 1,
    dontBreakRows: true,
    widths: [36, 42, 104, 34, 36, 36, '*', 44],
    body: [
      ['No.', 'Aircraft', 'Route', 'Drums', 'Off', 'Pilot', 'Binds', 'Home'].map((each) => strong(each)),
      ...flights.map((flight): Cell[] => [
        { text: flight.id, fontSize: 12, bold: true },
        { text: flight.aircraft, fontSize: 12 },
        { text: flight.route.join(' '), fontSize: 12 },
        figure(printNumber(flight.stops.reduce((sum, { drums }) => sum + drums, 0))),
        { text: flight.departs, fontSize: 12, bold: true },
        flight.pilot ?? blank(6),
        bindsCell(flight),
        blank(7),
      ]),
    ],
  },
  layout: rowsOnly(),
});

const bindsCell = (flight: PackFlight): Cell =>
  notToLoad(flight) === null ? bindsWords(flight) : strong(bindsWords(flight));

const bindsWords = (flight: PackFlight): string => {
  const [not, { sheet, state }] = [notToLoad(flight), flight];
  if (not !== null) {
    const inShort = `${not.what}, do not load: ${firstSentence(not.why)}`;
    return linesOf(inShort) > 2 && !('why' in sheet) ? `${not.what}, do not load: see its sheet.` : inShort;
  }
  return 'why' in sheet
    ? `${state}; no sheet: ${sheet.why}`
    : sheet.legs[0]!.binds.replace(/^Nearest limit: /, '');
};

/** The rest of it stands on the sheet of the flight, all of it where two lines do not hold it: a cover is one page. */
const firstSentence = (words: string): string => /^.*?\.(?= |$)/.exec(words)?.[0] ?? words;

/** As known at the print, and at the right the room in which today's surface is written. */
const placeTable = ({ places, flights }: DayPack): Block => ({
  table: {
    headerRows: 1,
    dontBreakRows: true,
    widths: [98, 28, 48, 30, 43, 24, 36, 38, 33, 46, '*'],
    body: [
      [
        ...['Place, last heard', 'Call', 'Hands', 'Drums a day', 'Tailwind, kt', 'One-way', 'Today'],
        ...['Usable, L', 'Min, L', 'Level', 'Write in: surface, time, by'],
      ].map((each) => strong(each)),
      ...places.map((place) => placeRow(place, landings(place.code, flights))),
    ],
  },
  layout: rowsOnly((at, columns) => (at >= columns - 1 ? 0.6 : 0)),
});

const placeRow = (place: PackPlace, landing: readonly string[]): Cell[] => [
  {
    stack: [
      { text: [{ text: `${place.code} `, bold: true, fontSize: 12 }, place.name] },
      ...(place.surface === null ? [] : [place.surface]),
    ],
  },
  place.radioTime ?? '−',
  place.hands ?? '−',
  numberOrNone(place.drumsADay),
  numberOrNone(place.tailwindLimitKt),
  place.isOneWay ? strong('yes') : '−',
  strong(landing.join(', ')),
  figure(printNumber(place.usableLitres)),
  numberOrNone(place.minimumLitres),
  place.level,
  '',
];

const numberOrNone = (value: number | null): Cell =>
  figure(value === null ? '−' : printNumber(value, decimalsOf(value)));

const placesFoot = (): Block => ({
  text: 'Usable is as known at the print. Surface unknown: the plan counts on the expected one, loading and alternates on soft.',
  margin: [0, 4, 0, 6],
});

const boxes = (pack: DayPack): Block => ({
  columns: [
    box({ stack: [strong('Held'), ...heldLines(pack)] }),
    box({ stack: [strong('Not heard from'), ...notHeardLines(pack), ' '] }),
    box({ stack: [strong('Handed over'), `From ${blank(20)}`, `To ${blank(12)} time ${blank(8)}`] }),
  ],
  columnGap: 8,
  margin: [0, 4, 0, 0],
});

const heldLines = ({ held }: DayPack): readonly string[] =>
  held.length === 0 ? ['Nothing is held.'] : held.map(({ what, where }) => `${what}: ${where}.`);

const rowsOnly = (upright: (at: number, columns: number) => number = () => 0) =>
  ruled({ across: (at) => (at === 0 ? 0 : at === 1 ? 1.2 : 0.6), upright, pad: [2, 2] });

/** "F05 6": which flight brings how many. */
const landings = (code: string, flights: readonly PackFlight[]): readonly string[] =>
  flights.flatMap(({ id, stops }) =>
    stops.filter(({ place }) => place === code).map(({ drums }) => `${id} ${drums}`),
  );
