import { fuelContradictions, loadedTooEarly } from './fuel-contradictions.js';
import type { Where } from './ledger-state.js';
import { type Meeting, placeBefore, say } from './meeting.js';
import type { Movement } from './movement.js';
import { compareInstants } from './order.js';
import type { Raised } from './raised.js';

/** Clocks of phones may be off by so much. Common practice, no source. */
const clockSlackMs = 10 * 60_000;

/** Whatever the movement says that the book does not: to be looked at, never a reason to refuse it. */
export function contradictions(meeting: Meeting): Raised[] {
  return [...ofTime(meeting), ...ofPlace(meeting), ...fuelContradictions(meeting), ...ofFitness(meeting)];
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
  if ((movement.kind === 'held' || movement.kind === 'condemned') && !life.known)
    return heldUnheardOf(meeting);
  const place = placeBefore(movement);
  if (place === null) return [];
  if (!life.known) {
    if (hasOrigin && movement.kind === 'loaded') return loadedTooEarly(meeting);
    return say(
      meeting,
      'not in the book',
      `is the first that the book hears of this drum: unknown drum ${meeting.number}, not counted as empty, as nobody has said what is in it`,
      'Read the number again on the drum: correct the report, or enter where the drum came from.',
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

function heldUnheardOf(meeting: Meeting): Raised[] {
  return say(
    meeting,
    'holds nothing',
    'is about a drum that the book has not heard of: it takes no fuel out of use',
    'Read the number again, now: the drum that was meant may still be in use.',
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

function whereWords(where: Where): string {
  if (where.kind === 'at') return `at ${where.place}`;
  if (where.kind === 'aboard') return `aboard ${where.flight}`;
  return where.lastSeenAt === null ? 'nowhere' : `lost since ${where.lastSeenAt}`;
}
