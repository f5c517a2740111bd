import { hasFuel } from './drum-life.js';
import { type Meeting, say } from './meeting.js';
import { litresOf, type Millilitres } from './millilitres.js';
import type { Raised } from './raised.js';

/** Two figures of one drum may differ by so much. Common practice, no source. */
const slackMillilitres = 5_000;

/** What the movement says of the fuel in the drum, and the book does not. */
export function fuelContradictions(meeting: Meeting): Raised[] {
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
    case 'received':
    case 'dipped':
    case 'counted':
    case 'held':
    case 'released':
    case 'condemned':
    case 'emptied':
    case 'slung':
    case 'weighed':
    case 'retest passed':
    case 'lost':
    case 'found':
    case 'joined':
    case 'corrected':
      return [];
  }
}

/** An empty drum goes out, or one that was filled later. */
export function loadedTooEarly(meeting: Meeting): Raised[] {
  return say(
    meeting,
    'loaded before filled',
    'takes a drum out before the book has it filled',
    'Enter the time of filling, or find out what is in the drum.',
  );
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

const words = (amount: Millilitres): string => `${litresOf(amount)} L`;
