import type { IsoInstant } from '@drumline/units';
import type { Hold } from '../drum.js';
import { type DrumLife, hasFuel, type TransferPart } from './drum-life.js';
import type { Where } from './ledger-state.js';
import { litresOf, type Millilitres } from './millilitres.js';
import type { Movement } from './movement.js';
import { compareInstants } from './order.js';
import { raise } from './raise.js';
import type { Raised, RaisedKind } from './raised.js';

/** A movement as it meets the book: the drum before it, and what else is known of the drum. */
export interface Meeting {
  readonly number: string;
  readonly life: DrumLife;
  readonly movement: Movement;
  readonly part: TransferPart;
  /** It was received or filled at some time, before or after. */
  readonly hasOrigin: boolean;
  readonly batchHold: (batch: string, at: IsoInstant) => Hold | null;
}

/** Clocks of phones may be off by so much; two figures of one drum may differ by so much. Common practice, no source. */
const clockSlackMs = 10 * 60_000;
const slackMillilitres = 5_000;

/** Whatever the movement says that the book does not: to be looked at, never a reason to refuse it. */
export function contradictions(meeting: Meeting): Raised[] {
  return [...ofTime(meeting), ...ofPlace(meeting), ...ofFuel(meeting), ...ofFitness(meeting)];
}

function ofTime(meeting: Meeting): Raised[] {
  const { happenedAt, receivedAt } = meeting.movement;
  if (compareInstants(happenedAt, receivedAt) <= 0) return [];
  if (Date.parse(happenedAt) - Date.parse(receivedAt) <= clockSlackMs) return [];
  return say(
    meeting,
    'clock ahead',
    `is said to have happened at ${happenedAt} but was received at ${receivedAt}`,
    'Ask for the time and look at the clock of the phone it came from.',
  );
}

function ofPlace(meeting: Meeting): Raised[] {
  const { life, movement, hasOrigin } = meeting;
  if (movement.kind === 'received') return life.known ? receivedAgain(meeting) : [];
  if (movement.kind === 'filled' && !life.known) return [];
  const place = placeBefore(movement);
  if (place === null) return [];
  if (!life.known) {
    if (hasOrigin && movement.kind === 'loaded') return loadedTooEarly(meeting);
    return say(
      meeting,
      'not in the book',
      'is the first that the book hears of this drum',
      'Read the number again on the drum, and enter where it came from.',
    );
  }
  if (movement.kind === 'left at' || movement.kind === 'brought home') return offAFlight(meeting);
  if (life.where.kind === 'aboard' && movement.kind === 'loaded') return loadedAgain(meeting);
  if (movement.kind === 'found' && life.where.kind === 'unknown') return [];
  if (life.where.kind === 'at' && life.where.place === place) return [];
  return say(
    meeting,
    'not there',
    `is at ${place}, where the book has the drum ${whereWords(life.where)}`,
    'Ask both places to read the number; correct the report that is wrong.',
  );
}

function receivedAgain(meeting: Meeting): Raised[] {
  return say(
    meeting,
    'already in the book',
    `brings in a drum that the book already has ${whereWords(meeting.life.where)}`,
    'Read the number again: two drums may carry one number.',
  );
}

function offAFlight(meeting: Meeting): Raised[] {
  const { where } = meeting.life;
  const { flight } = meeting.movement as Movement & { kind: 'left at' };
  if (where.kind === 'aboard' && where.flight === flight) return [];
  return say(
    meeting,
    'not aboard',
    `comes off ${flight}, where the book has the drum ${whereWords(where)}`,
    'Enter the loading that is missing, or correct the number.',
  );
}

function loadedAgain(meeting: Meeting): Raised[] {
  const { where } = meeting.life;
  const { flight } = meeting.movement as Movement & { kind: 'loaded' };
  if (where.kind !== 'aboard' || where.flight === flight) return [];
  return say(
    meeting,
    'aboard two flights',
    `is on ${flight}, where the book has the drum aboard ${where.flight}`,
    'Ask both crews to read the number; correct the loading that is wrong.',
  );
}

function loadedTooEarly(meeting: Meeting): Raised[] {
  return say(
    meeting,
    'loaded before filled',
    'takes a drum out before the book has it filled',
    'Enter the time of filling, or find out what is in the drum.',
  );
}

function ofFuel(meeting: Meeting): Raised[] {
  const { life, movement, part } = meeting;
  switch (movement.kind) {
    case 'filled':
      return hasFuel(life)
        ? say(
            meeting,
            'filled over fuel',
            `fills a drum with ${words(life.millilitres)} in it`,
            'Find the draw or emptying that is missing, or correct the number.',
          )
        : [];
    case 'loaded':
      return [
        ...(life.known && movement.bound === 'out' && !hasFuel(life) ? loadedTooEarly(meeting) : []),
        ...(life.known ? figures(meeting, movement.foundMillilitres, life.millilitres) : []),
      ];
    case 'left at':
    case 'brought home':
      return life.known ? figures(meeting, movement.foundMillilitres, life.millilitres) : [];
    case 'opened':
      return opening(meeting);
    case 'drawn':
      return [
        ...taking(meeting, movement.millilitres),
        ...figures(meeting, movement.leftMillilitres, life.millilitres - movement.millilitres),
      ];
    case 'spilled':
      return taking(meeting, movement.millilitres);
    case 'transferred':
      if (part.isSource) return part.isTarget ? [] : taking(meeting, movement.millilitres);
      return mixing(meeting, movement.batch);
    default:
      return [];
  }
}

function opening(meeting: Meeting): Raised[] {
  const { life } = meeting;
  if (!life.known || life.content === 'filled sealed') return [];
  return hasFuel(life)
    ? say(
        meeting,
        'already open',
        'opens a drum that was open',
        'Use what is in it first; nothing to correct.',
      )
    : say(meeting, 'no fuel in it', 'opens a drum that the book has empty', 'Read the number again.');
}

function taking({ life, ...rest }: Meeting, amount: Millilitres): Raised[] {
  if (amount <= life.millilitres) return [];
  return say(
    { life, ...rest },
    'more than was in it',
    `takes ${words(amount)}, where the book has ${words(life.millilitres)}`,
    'Look for a second drum that was used, or correct the litres.',
  );
}

/** Beyond the content is raised by the taking itself. */
function figures(meeting: Meeting, found: Millilitres | null, book: number): Raised[] {
  if (found === null || book < 0 || Math.abs(found - book) <= slackMillilitres) return [];
  return say(
    meeting,
    'litres differ',
    `finds ${words(found)}, where the book has ${words(book as Millilitres)}`,
    'Dip the drum; enter the draw or the spill that is missing.',
  );
}

function mixing(meeting: Meeting, batch: string): Raised[] {
  const { life } = meeting;
  if (!hasFuel(life) || life.batch === batch) return [];
  return say(
    meeting,
    'batches mixed',
    `pumps fuel of ${batch} onto fuel of ${life.batch ?? 'an unknown batch'}`,
    'Fuel quality decides which retest date and which holds count for the drum.',
  );
}

function ofFitness(meeting: Meeting): Raised[] {
  const { life, movement, batchHold } = meeting;
  if (movement.kind === 'released')
    return movement.by === movement.second
      ? say(meeting, 'released by one person', 'names one person twice', 'A second person has to agree.')
      : [];
  const uses = movement.kind === 'drawn' || movement.kind === 'opened';
  if (!uses && !(movement.kind === 'loaded' && movement.bound === 'out')) return [];
  const hold =
    life.condemned ?? life.held ?? (life.batch === null ? null : batchHold(life.batch, movement.happenedAt));
  if (!hold) return [];
  return uses
    ? say(
        meeting,
        'held drum used',
        `uses fuel that is held: ${hold.reason}`,
        'Tell the aircraft that took it, and fuel quality.',
      )
    : say(
        meeting,
        'held drum loaded',
        `takes out a drum that is held: ${hold.reason}`,
        'Take it off, or tell the flight and the place it goes to.',
      );
}

/** Where a movement finds the drum; null: it says nothing of that. */
function placeBefore(movement: Movement): string | null {
  if (movement.kind === 'slung') return movement.from;
  return 'place' in movement ? movement.place : null;
}

function whereWords(where: Where): string {
  if (where.kind === 'at') return `at ${where.place}`;
  if (where.kind === 'aboard') return `aboard ${where.flight}`;
  return where.lastSeenAt === null ? 'nowhere' : `lost since ${where.lastSeenAt}`;
}

const words = (amount: Millilitres): string => `${litresOf(amount)} L`;

function say({ number, movement }: Meeting, kind: RaisedKind, what: string, whatNext: string): Raised[] {
  const place = placeBefore(movement);
  return [
    raise(kind, [movement], {
      drum: number,
      ...(place === null ? {} : { place }),
      ...('flight' in movement ? { flight: movement.flight } : {}),
      what: `Drum ${number}: "${movement.kind}" by ${movement.by} ${what}.`,
      whatNext,
    }),
  ];
}
