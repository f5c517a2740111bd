import { z } from 'zod';
import { type Calendar, useCalendar, useRead } from '../api/index.js';
import { isWaiting, useLines } from '../paper/kept-lines.js';
import { Button, inWords, ProblemLine, SurfaceWord } from '../ui/index.js';
import type { SaidSurface } from './read-line.js';

const surface = z.enum(['dry', 'damp', 'soft', 'closed']);

const touchedSchema = z.object({
  place: z.string(),
  before: surface,
  after: surface,
  outrankedBy: z.object({ place: z.string(), state: surface, at: z.string(), by: z.string() }).nullable(),
  flights: z.array(
    z.object({
      flight: z.string(),
      state: z.string(),
      date: z.string(),
      aircraft: z.string(),
      route: z.array(z.string()),
      drums: z.number(),
      drumsThatGo: z.number().nullable(),
      breaks: z.string().nullable(),
    }),
  ),
  ifItLasts: z.array(z.object({ flight: z.string(), date: z.string() })),
  booked: z.array(
    z.object({
      flight: z.string(),
      date: z.string(),
      aircraft: z.string(),
      route: z.array(z.string()),
      passengers: z.number(),
      breaks: z.string().nullable(),
    }),
  ),
});

type Touched = z.output<typeof touchedSchema>;

interface OfReport {
  readonly report: SaidSurface;
}

const useTouched = (report: SaidSurface) => {
  // Who said it changes nothing: the server is not asked at every letter of a name.
  const asked = new URLSearchParams({ ...report, by: 'radio' });
  return useRead(`/api/surface-reports/touches?${asked}`, touchedSchema);
};

/** What a report would change, by the server's own check, before it is kept. */
export const WhatItTouches = ({
  report,
  onUntil,
}: OfReport & { readonly onUntil: (day: string) => void }) => {
  const calendar = useCalendar();
  const { value, problem } = useTouched(report);
  if (problem !== undefined) return <ProblemLine problem={problem} />;
  if (value === undefined) return <p className="checking">Checking what it touches...</p>;
  if (value.outrankedBy !== null)
    return <p className="ochre">{outrankedWords(value.outrankedBy, report, calendar)}</p>;
  return (
    <div className="touched">
      <p>
        Counts today: <SurfaceWord state={value.before} /> now, <SurfaceWord state={value.after} /> with it.
      </p>
      {value.flights.length + value.booked.length === 0 ? (
        <p>No flight is touched.</p>
      ) : (
        <ul>
          {value.flights.map((each) => (
            <TouchedLine key={each.flight} of={each} state={each.state} words={touchedWords(each)} />
          ))}
          {value.booked.map((each) => (
            <TouchedLine key={each.flight} of={each} state="booked" words={bookedTouchedWords(each)} />
          ))}
        </ul>
      )}
      <IfItLasts flights={value.ifItLasts} state={report.state} onUntil={onUntil} />
    </div>
  );
};

interface TouchedLineProps {
  readonly of: Pick<Touched['booked'][number], 'flight' | 'aircraft' | 'route' | 'date'>;
  readonly state: string;
  readonly words: string;
}

const TouchedLine = ({ of: { flight, aircraft, route, date }, state, words }: TouchedLineProps) => (
  <li>
    <b>
      {flight}, {aircraft} {route.join('-')}
    </b>
    , {useCalendar().day(date)}, {state}: {words}
  </li>
);

interface IfItLastsProps {
  readonly flights: Touched['ifItLasts'];
  readonly state: string;
  readonly onUntil: (day: string) => void;
}

/** A report without a last day reaches today: whether it lasts, the one who speaks knows, and one press says it. */
const IfItLasts = ({ flights, state, onUntil }: IfItLastsProps) => {
  const { day } = useCalendar();
  if (flights.length === 0) return null;
  const days = [...new Set(flights.map(({ date }) => date))];
  const words = flights.map(({ flight, date }) => `${flight} on ${day(date)}`).join(', ');
  return (
    <div className="if-it-lasts">
      <p className="ochre">
        Does it last? Not counted as {state}: {words}.
      </p>
      <div className="acts">
        {days.map((date) => (
          <Button key={date} small onPress={() => onUntil(day(date).slice(0, 3))}>
            until {day(date)}
          </Button>
        ))}
      </div>
    </div>
  );
};

/** After it was kept: where, and whether it is another one that counts. */
export const KeptReport = ({ id, report }: OfReport & { readonly id: string }) => {
  const calendar = useCalendar();
  const isHere = useLines().some((line) => line.id === id && isWaiting(line));
  const later = useTouched(report).value?.outrankedBy ?? null;
  return (
    <span>
      {isHere ? 'Kept on this machine until base has it' : 'Kept'}: {reportWords(report, calendar)}
      {later !== null && `; what counts is ${later.state} of ${calendar.when(later.at)}`}.{' '}
    </span>
  );
};

/** "XLOR: dry 06:52, J. Holm, by radio; your report of 06:40 will be kept, but the later one stands." */
const outrankedWords = (
  { place, state, at, by }: NonNullable<Touched['outrankedBy']>,
  report: SaidSurface,
  { when }: Calendar,
): string =>
  `${place}: ${state} ${when(at)}, ${by}; your report of ${when(report.at)} will be kept, but the later one stands.`;

const touchedWords = ({ drums, drumsThatGo, breaks }: Touched['flights'][number]): string => {
  if (breaks === null) return `stands as it is, ${inWords(drums, 'drums')}.`;
  const go = drumsThatGo === null ? '' : ` ${drumsThatGo} of ${inWords(drums, 'drums')} may go.`;
  return `needs a decision.${go} ${breaks}`;
};

/** Nobody marks it: it needs a decision for as long as this stands. */
const bookedTouchedWords = ({ passengers, breaks }: Omit<Touched['booked'][number], 'flight'>): string => {
  const people = inWords(passengers, 'passengers');
  return breaks === null
    ? `stands as it is booked, ${people}.`
    : `needs a decision, ${people}. ${breaks} Tell whoever booked it.`;
};

/** "XLOR soft, 06:52, strip helper, by radio, to Thu 17". */
export const reportWords = (
  { place, state, at, by, untilDate }: SaidSurface,
  { when, day }: Calendar,
): string =>
  `${place} ${state}, ${when(at)}, ${by}${untilDate === undefined ? '' : `, to the end of ${day(untilDate)}`}`;
