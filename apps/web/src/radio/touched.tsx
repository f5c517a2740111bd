import { z } from 'zod';
import { type Calendar, useCalendar, useRead } from '../api/index.js';
import { inWords, ProblemLine, SurfaceWord } from '../ui/index.js';
import type { SaidSurface } from './read-line.js';

const surface = z.enum(['dry', 'damp', 'soft', 'closed']);

const touchedSchema = z.object({
  place: z.string(),
  before: surface,
  after: surface,
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
});

type Touched = z.output<typeof touchedSchema>;

/** What a report would change, by the server's own check, before it is kept. */
export const WhatItTouches = ({ report }: { readonly report: SaidSurface }) => {
  const calendar = useCalendar();
  // Who said it changes nothing: the server is not asked at every letter of a name.
  const asked = new URLSearchParams({ ...report, by: 'radio' });
  const { value, problem } = useRead(`/api/surface-reports/touches?${asked}`, touchedSchema);
  if (problem !== undefined) return <ProblemLine problem={problem} />;
  if (value === undefined) return <p className="checking">Checking what it touches...</p>;
  return (
    <div className="touched">
      <p>
        Counts today: <SurfaceWord state={value.before} /> now, <SurfaceWord state={value.after} /> with it.
      </p>
      {value.flights.length === 0 ? (
        <p>No flight is touched.</p>
      ) : (
        <ul>
          {value.flights.map((each) => (
            <li key={each.flight}>
              <b>
                {each.flight}, {each.aircraft} {each.route.join('-')}
              </b>
              , {calendar.day(each.date)}, {each.state}: {touchedWords(each)}
            </li>
          ))}
        </ul>
      )}
    </div>
  );
};

const touchedWords = ({ drums, drumsThatGo, breaks }: Touched['flights'][number]): string => {
  if (breaks === null) return `stands as it is, ${inWords(drums, 'drums')}.`;
  const go = drumsThatGo === null ? '' : ` ${drumsThatGo} of ${inWords(drums, 'drums')} may go.`;
  return `needs a decision.${go} ${breaks}`;
};

/** "XLOR soft, 06:52, strip helper, by radio, to Thu 17". */
export const reportWords = (
  { place, state, at, by, untilDate }: SaidSurface,
  { when, day }: Calendar,
): string =>
  `${place} ${state}, ${when(at)}, ${by}${untilDate === undefined ? '' : `, to the end of ${day(untilDate)}`}`;
