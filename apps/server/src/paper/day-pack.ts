import type { LoadSheet, ParticularsSet } from '@drumline/loading';
import { type IsoDate, type Litres, printNumber } from '@drumline/units';
import { blankSheetPage } from './blank-sheet.js';
import { loadSheetPages } from './load-sheet-pages.js';
import type { PaperSize } from './paper-size.js';
import { type Block, blank, box, type Cell, figure, ruled, strong } from './parts.js';
import { longDay, type PrintStamp } from './print-stamp.js';
import { radioScriptPage } from './radio-script.js';
import { topOfPage } from './sheet-head.js';
import { slipsPage } from './slips.js';

/** Everything that a day needs on paper when the lights go out. */
export interface DayPack {
  readonly date: IsoDate;
  readonly stamp: PrintStamp;
  readonly paper: PaperSize;
  readonly flights: readonly PackFlight[];
  readonly places: readonly PackPlace[];
  readonly held: readonly { readonly what: string; readonly where: string }[];
  /** Names of all places by code. */
  readonly names: ReadonlyMap<string, string>;
  /** People of the field from whom nothing has come in for a day. */
  readonly notHeardFrom: readonly string[];
  readonly programmes: readonly string[];
  /** Null: the operator has given no fields for dangerous goods. */
  readonly goods: ParticularsSet | null;
  readonly slips: { readonly count: readonly string[]; readonly draw: readonly string[] };
}

export interface PackFlight {
  readonly id: string;
  readonly aircraft: string;
  readonly route: readonly string[];
  readonly departs: string;
  readonly pilot: string | null;
  readonly state: string;
  readonly stops: readonly {
    readonly place: string;
    readonly drums: number;
    readonly numbers: readonly string[];
  }[];
  /** Or why there is none. */
  readonly sheet: LoadSheet | { readonly why: string };
}

export interface PackPlace {
  readonly code: string;
  readonly name: string;
  readonly radioTime: string | null;
  /** Who helps with drums there. */
  readonly hands: string | null;
  readonly drumsADay: number | null;
  readonly tailwindLimitKt: number | null;
  readonly isOneWay: boolean;
  /** As known now and since when: "dry 14 June 05:58", or "unknown"; null: no strip. */
  readonly surface: string | null;
  readonly usableLitres: Litres;
  readonly minimumLitres: Litres | null;
  readonly level: string;
}

/** Cover with strips and caches, every load sheet of the day, radio script, blank forms. */
export const dayPackPages = (pack: DayPack): readonly Block[] => {
  const { stamp, paper, names, programmes, slips } = pack;
  return [
    coverPage(pack),
    ...pack.flights.flatMap(({ sheet }) =>
      'why' in sheet ? [] : loadSheetPages(sheet, { stamp, paper, names }),
    ),
    radioScriptPage(pack),
    slipsPage({ kind: 'count', numbers: slips.count, paper, programmes }),
    slipsPage({ kind: 'draw', numbers: slips.draw, paper, programmes }),
    blankSheetPage(paper, pack.goods),
  ];
};

const coverPage = (pack: DayPack): Block => ({
  stack: [
    topOfPage({
      title: 'Day pack',
      first: longDay(pack.date),
      second: `Printed ${pack.stamp.at} by ${pack.stamp.by} · a later print replaces this one`,
      code: null,
    }),
    {
      text: [
        { text: 'If the lights go out, this is the day. ', bold: true },
        'Write the time beside everything: it is typed in later as written at that time, from paper. Nothing is rubbed out: strike through once and sign. ',
        strong('Planning figures. The commander’s approved data decide.'),
      ],
      margin: [0, 0, 0, 5],
    },
    { text: contents(pack), margin: [0, 0, 0, 5] },
    { text: 'Flights', bold: true, fontSize: 11 },
    flightTable(pack),
    { text: 'Strips and caches', bold: true, fontSize: 11, margin: [0, 8, 0, 0] },
    placeTable(pack),
    {
      text: 'Usable is as known at the print. A surface that is not heard within its hours is unknown, and unknown counts as soft.',
      margin: [0, 4, 0, 6],
    },
    {
      columns: [
        box({ stack: [strong('Held'), ...heldLines(pack)] }),
        box({ stack: [strong('Not heard from'), pack.notHeardFrom.join(', ') || 'Nobody is silent.', ' '] }),
        box({ stack: [strong('Handed over'), `From ${blank(20)}`, `To ${blank(12)} time ${blank(8)}`] }),
      ],
      columnGap: 8,
    },
  ],
});

const contents = ({ flights, slips }: DayPack): string => {
  const sheets = flights.flatMap(({ id, sheet }) => ('why' in sheet ? [] : [id]));
  return [
    `In this pack: load sheets ${sheets.join(', ') || 'none'}`,
    'radio script',
    ...[slips.count, slips.draw].map((numbers) => `slips ${numbers[0]} to ${numbers.at(-1)}`),
    'a load sheet to fill in by hand.',
  ].join('; ');
};

const heldLines = ({ held }: DayPack): readonly string[] =>
  held.length === 0 ? ['Nothing is held.'] : held.map(({ what, where }) => `${what}: ${where}.`);

const flightTable = ({ flights }: DayPack): Block => ({
  table: {
    headerRows: 1,
    dontBreakRows: true,
    widths: [36, 42, 104, 34, 36, 36, '*', 44],
    body: [
      ['No.', 'Aircraft', 'Route', 'Drums', 'Off', 'Pilot', 'Binds', 'Home'].map((title) => strong(title)),
      ...flights.map(({ id, aircraft, route, departs, pilot, stops, sheet, state }): Cell[] => [
        { text: id, fontSize: 12, bold: true },
        { text: aircraft, fontSize: 12 },
        { text: route.join(' '), fontSize: 12 },
        figure(printNumber(stops.reduce((sum, { drums }) => sum + drums, 0))),
        { text: departs, fontSize: 12, bold: true },
        pilot ?? blank(6),
        'why' in sheet
          ? `${state}; no sheet: ${sheet.why}`
          : sheet.legs[0]!.binds.replace(/^Nearest limit: /, ''),
        blank(7),
      ]),
    ],
  },
  layout: ruled({ across: (at) => (at === 0 ? 0 : at === 1 ? 1.2 : 0.6), pad: [2, 2] }),
});

const placeTable = ({ places, flights }: DayPack): Block => ({
  table: {
    headerRows: 1,
    dontBreakRows: true,
    widths: [98, 26, 32, 42, 28, 36, 40, 34, 68, '*'],
    body: [
      [
        ...['Place', 'Call', 'Drums a day', 'Tailwind, kt', 'One-way', 'Today'],
        ...['Usable, L', 'Min, L', 'Level', 'Surface, time, by'],
      ].map((title) => strong(title)),
      ...places.map((place): Cell[] => [
        { text: [{ text: `${place.code} `, bold: true, fontSize: 12 }, place.name] },
        place.radioTime ?? '−',
        figure(place.drumsADay === null ? '−' : printNumber(place.drumsADay)),
        figure(place.tailwindLimitKt === null ? '−' : printNumber(place.tailwindLimitKt)),
        place.isOneWay ? strong('yes') : '−',
        strong(landing(place.code, flights)),
        figure(printNumber(place.usableLitres)),
        figure(place.minimumLitres === null ? '−' : printNumber(place.minimumLitres)),
        place.level,
        {
          text: [
            place.hands === null ? '' : `hands ${place.hands}; `,
            place.surface === null ? '' : `was ${place.surface}`,
          ],
          margin: [0, 0, 0, 2],
        },
      ]),
    ],
  },
  layout: ruled({ across: (at) => (at === 0 ? 0 : at === 1 ? 1.2 : 0.6), pad: [2, 2] }),
});

/** "F05 6": which flight brings how many. */
const landing = (code: string, flights: readonly PackFlight[]): string =>
  flights
    .flatMap(({ id, stops }) =>
      stops.filter(({ place }) => place === code).map(({ drums }) => `${id} ${drums}`),
    )
    .join(', ');

export const packTitle = ({ date }: Pick<DayPack, 'date'>): string => `Day pack ${longDay(date)}`;
