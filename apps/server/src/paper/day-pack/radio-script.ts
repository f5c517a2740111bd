import { type Block, blank, type Cell, ruled, strong, tickWith } from '../pdf/parts.js';
import { longDay } from '../pdf/print-stamp.js';
import { notToLoad } from '../sheet/not-to-load.js';
import { topOfPage } from '../sheet/sheet-head.js';
import type { DayPack, PackFlight, PackPlace } from './day-pack.js';
import { spoken, spokenNumbers } from './spoken.js';

/** What is read out to each place at its call, and where what it answers is written down. */
export const radioScriptPage = (pack: DayPack): Block => {
  const called = pack.places
    .filter(({ radioTime }) => radioTime !== null)
    .toSorted((one, other) => (one.radioTime! < other.radioTime! ? -1 : 1));
  const silent = pack.places.filter(({ radioTime }) => radioTime === null);
  return {
    stack: [
      topOfPage({
        title: 'Radio script',
        first: longDay(pack.date),
        second: `Printed ${pack.stamp.at} by ${pack.stamp.by} · spoken by ${blank(14)}`,
        code: null,
      }),
      {
        text: [
          'Say the place, then "base", then the line. Ask: ',
          { text: '"Say surface, wind, hands. Read back." ', bold: true },
          'Tick a box only when you hear it back.',
        ],
        margin: [0, 0, 0, 3],
      },
      callTable(called, pack),
      ...(silent.length === 0
        ? []
        : [
            {
              text: `No radio call: ${silent.map(({ name, code }) => `${name} ${code}`).join(', ')}.`,
              margin: [0, 4, 0, 0],
            } as Block,
          ]),
      ...pack.held.map(holdScript),
    ],
  };
};

const callTable = (called: readonly PackPlace[], pack: DayPack): Block => ({
  table: {
    headerRows: 1,
    dontBreakRows: true,
    widths: [34, '*', 52, 92, 44, 64],
    body: [
      ['Call', 'Place and line', 'Heard back', 'Surface', 'Wind, kt', 'Who, time'].map((title) =>
        strong(title),
      ),
      ...called.map((place): Cell[] => [
        { text: place.radioTime!, fontSize: 12, bold: true },
        {
          stack: [
            { text: place.name, fontSize: 12, bold: true },
            { text: lineFor(place, pack), fontSize: 12 },
          ],
        },
        tickWith('heard'),
        {
          stack: [
            { columns: [tickWith('dry'), tickWith('damp')] },
            { columns: [tickWith('soft'), tickWith('closed')], margin: [0, 2, 0, 0] },
          ],
        },
        '',
        '',
      ]),
    ],
  },
  layout: ruled({
    across: (at) => (at === 1 ? 1.2 : at === 0 ? 0 : 0.6),
    upright: (at) => (at === 4 || at === 5 ? 0.8 : 0),
    pad: [3, 5],
  }),
});

const lineFor = ({ code }: PackPlace, { flights }: DayPack): string => {
  const lines = flights.flatMap((flight) =>
    flight.stops.filter(({ place }) => place === code).map((stop) => stopScript(flight, stop)),
  );
  return lines.length === 0 ? 'Nothing for you today.' : lines.join(' ');
};

/**
 * "Foxtrot zero five, aircraft Bravo one, six drums: zero four four seven to ...; off zero seven one zero."; of a flight that is
 * not to be loaded, no number that somebody would make ready for.
 */
const stopScript = (flight: PackFlight, { drums, numbers }: PackFlight['stops'][number]): string => {
  const { id, aircraft, departs } = flight;
  const head = `${spoken(id)}, aircraft ${spoken(aircraft)}`;
  const not = notToLoad(flight);
  if (not !== null)
    return `${head}: ${not.what === 'HOLD' ? 'hold' : 'waits for a decision'}. Not to be loaded. Base decides and calls again.`;
  const named = numbers.length === 0 ? '' : `: ${spokenNumbers(numbers)}`;
  return `${head}, ${spoken(`${drums}`)} ${drums === 1 ? 'drum' : 'drums'}${named}; off ${spoken(departs)}.`;
};

const holdScript = ({ what, where }: DayPack['held'][number]): Block => ({
  text: [
    { text: `"Hold, hold, hold. ${what}. Do not open, do not load." `, bold: true },
    `Stands at ${where}. Read back the numbers.`,
  ],
  margin: [0, 5, 0, 0],
});
