import type { FlightReportBody } from '@drumline/contract';
import { type Kept, type Moved, type Need, type Refused, receiveReport } from '@drumline/planning';
import { print } from '@drumline/units';
import { Problem } from '../../http/problem.js';
import { roleFor } from '../office/flight-acts.service.js';
import type { Flight } from '../store/flight.table.js';
import type { FlightReport } from '../store/flight-report.table.js';
import type { SentReport } from './flight-reports.service.js';
import type { LoadBody } from './loads-aboard.js';
import type { Looked } from './look-at-report.service.js';

/** What comes of a report. Throws where it is a step that may not be entered yet. */
export const answerReport = (sent: SentReport, author: string, looked: Looked): Moved | Kept => {
  const { body } = sent;
  const received = answerTo(looked.asItStood, sent, author);
  const answer = notEntered(body, received, looked) ?? received;
  if (answer.kind === 'refused') throw new Problem('conflict', answer.words);
  if (answer.kind === 'kept' || looked.faults.length === 0) return answer;
  const detail = `${body.flight}: "${body.kind}" cannot be entered, see faults. Nothing was changed.`;
  throw new Problem('faults', detail, looked.faults);
};

/** Why a loading was not entered has been raised with it: that it flies so is the same thing to look at. */
export const raisedBy = (
  { raised }: Moved | Kept,
  { kind }: FlightReportBody,
  keptLoad: FlightReport | null,
): readonly string[] => (raised === null || (kind === 'take off' && keptLoad !== null) ? [] : [raised]);

/** A problem moves no flight: it is kept, and somebody has to look. */
const answerTo = (flight: Flight, { body, by }: SentReport, author: string): Moved | Kept | Refused => {
  if (body.kind === 'problem') {
    const words = body.words === undefined ? '' : ` "${body.words}"`;
    return { kind: 'kept', raised: `${flight.id}: ${author} has a problem: ${body.what}.${words}` };
  }
  return receiveReport(flight, {
    act: body.kind,
    by: { name: author, role: roleFor(by, flight, body.kind) },
    met: seenTo,
    ...('reason' in body ? { reason: body.reason } : {}),
  });
};

/** A loading that is a fact is kept and raised, whatever base has to say about it. Null: it is as received. */
const notEntered = (
  body: FlightReportBody,
  received: Moved | Kept | Refused,
  { faults }: Looked,
): Kept | null => {
  if (body.kind !== 'load' || !isFact(body) || received.kind === 'kept') return null;
  if (received.kind === 'moved' && faults.length === 0) return null;
  const why = received.kind === 'refused' ? ` ${received.words}` : '';
  const drums = body.drums.map(drumWords).join(', ');
  return {
    kind: 'kept',
    raised: `${body.flight}: loaded all the same with ${drums}; not entered as loaded.${why}`,
  };
};

const drumWords = ({ drum, grossKg }: LoadBody['drums'][number]): string =>
  grossKg === undefined ? drum : `${drum} (${print(grossKg, 'kg', 1)} by the crew)`;

/** It stands so in the aeroplane: its crew says so, or has said it and is not there to hear base. */
const isFact = ({ allTheSame, means }: LoadBody): boolean =>
  allTheSame === true || means === 'paper' || means === 'radio';

/** What the faults have been looked for: where there is one, a report that moves its flight is refused. */
const seenTo: readonly Need[] = [
  'totals agreed',
  'surface known',
  'no held drum',
  'every drum accounted for',
];
