import { parseDelivery } from '@drumline/loading';
import { instantOf, localDate, localTime } from '@drumline/units';
import { drumDoubts, placeIn } from './find.js';
import { type LineEntry, LineFault, type Sheet, type SheetFlight, type Told, type Wanted } from './sheet.js';
import type { Parted } from './tail.js';
import { toldBy } from './tail.js';

type Delivery = Extract<ReturnType<typeof parseDelivery>, { ok: true }>['report'];

/** "F06/1 GAN 2027-06-15 0805 LEFT 0573 BACK 0576 SEAL SURFACE DRY BY FW1", as it came in a message. */
export const readDelivery = (text: string, sheet: Sheet): LineEntry => {
  const parsed = parseDelivery(text);
  if (!parsed.ok) throw new LineFault(parsed.faults.join(' '));
  const { report } = parsed;
  const at = `${instantOf(report.date, report.time, sheet.timeZone).slice(0, 16)}Z`;
  if (at > sheet.now) throw new LineFault(`${report.time} of ${report.date} is still to come.`);
  return deliveryEntry(report, { happenedAt: at, writtenAt: at, means: sheet.means, by: report.by }, sheet);
};

/** "F06 left GAN 0573 0574 back 0576 seal at 0805": the same, with what the flight says of itself filled in. */
export const readLeft = (parted: Parted, sheet: Sheet, flight: SheetFlight): LineEntry => {
  const told = toldBy(parted, sheet, flight.pilot);
  const [verb, ...more] = parted.rest.slice(1);
  const isLeft = verb!.toLowerCase() === 'left';
  const place = isLeft ? placeIn(more[0], sheet) : flight.toPlace;
  const words = allOf(isLeft ? more.slice(1) : more, flight, place);
  const leg =
    Math.max(
      0,
      flight.stops.findIndex((stop) => stop.place === place),
    ) + 1;
  const text = [
    `${flight.id}/${leg}`,
    place,
    localDate(told.happenedAt, sheet.timeZone),
    localTime(told.happenedAt, sheet.timeZone),
    isLeft ? 'LEFT' : 'BACK',
    ...words,
    'BY X',
  ].join(' ');
  const parsed = parseDelivery(text);
  if (!parsed.ok) throw new LineFault(parsed.faults.join(' '));
  return deliveryEntry(parsed.report, told, sheet);
};

const allOf = (words: readonly string[], { loads }: SheetFlight, place: string): readonly string[] =>
  words[0]?.toLowerCase() !== 'all'
    ? words
    : [
        ...loads.flatMap(({ drum, place: to }) => (drum !== null && to === place ? [drum] : [])),
        ...words.slice(1),
      ];

const deliveryEntry = (report: Delivery, told: Told, sheet: Sheet): LineEntry => {
  const flight = sheet.flights.find(({ id }) => id === report.flight);
  const place = placeIn(report.place, sheet);
  if (flight === undefined && report.back.length > 0)
    throw new LineFault(`${report.flight} is no flight that base knows: where did its drums come home to?`);
  const move = (kind: string, at: string, leg: number) => (drum: Delivery['left'][number]) => ({
    to: 'movements' as const,
    body: {
      ...{ kind, flight: report.flight, leg, place: at, ...told },
      ...{ drum: drum.number, condition: drum.condition, foundMillilitres: null },
    },
  });
  const isStop = flight?.stops.some((stop) => stop.place === place) ?? true;
  return {
    kind: 'entry',
    ...told,
    words: wordsOf(report, place, flight?.toPlace),
    flight: report.flight,
    wanted: [
      ...report.left.map(move('left at', place, report.leg)),
      // What comes home rides to the end of the flight: on its last leg, as a phone has it, or it would count twice.
      ...report.back.map(move('brought home', flight?.toPlace ?? place, flight?.legs ?? report.leg)),
      ...surfaceOf(report, place, told),
    ],
    doubts: [
      ...(flight === undefined ? [`${report.flight} is no flight that base knows.`] : []),
      ...(isStop || report.left.length === 0 ? [] : [`${place} is no stop of ${report.flight}.`]),
      ...drumDoubts(
        [...report.left, ...report.back].map(({ number }) => number),
        sheet,
        flight,
      ),
    ],
  };
};

const surfaceOf = ({ surface }: Delivery, place: string, { happenedAt, by, means }: Told): Wanted[] =>
  surface === null
    ? []
    : [{ to: 'surface-reports', body: { place, state: surface, at: happenedAt, by: speaker(by, means) } }];

/** A surface report has one line for who said it and how it came. */
export const speaker = (by: string, means: Told['means']): string =>
  `${by}, ${means === 'paper' ? 'from paper' : 'by radio'}`;

const wordsOf = ({ flight, left, back, surface }: Delivery, place: string, home = 'home'): string => {
  const numbers = (drums: Delivery['left']) =>
    drums
      .map(({ number, condition }) => (condition === 'sound' ? number : `${number} ${condition}`))
      .join(', ');
  return [
    ...(left.length === 0 ? [] : [`${left.length} left at ${place}: ${numbers(left)}`]),
    ...(back.length === 0 ? [] : [`${back.length} brought home to ${home}: ${numbers(back)}`]),
    ...(surface === null ? [] : [`${place} ${surface}`]),
  ]
    .join('; ')
    .replace(/^/, `${flight}, `);
};
