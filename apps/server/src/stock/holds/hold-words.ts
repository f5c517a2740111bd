import type { HoldQuery } from '@drumline/contract';
import type { HeldPlace, HoldSubject } from '@drumline/stock';
import { type Litres, print, printNumber } from '@drumline/units';

interface HeldThere {
  readonly place: string;
  readonly drums: number;
}

/** To be read out to a place, with the numbers read back. */
export const radioScript = (
  { place, usableLitresAfter }: Omit<HeldPlace, 'drums'>,
  numbers: readonly string[],
  subject: HoldSubject,
): string =>
  `${place}: ${whatIsHeld(subject)}. Do not use or load ${numbers.length} drums: ${numbers.join(', ')}. Usable at ${place} is now ${printNumber(usableLitresAfter)} litres. Read back the numbers.`;

/** To be read out to a crew that has drums of it, or is to have them. */
export const flightScript = (flight: string, numbers: readonly string[], subject: HoldSubject): string =>
  `${flight}: ${whatIsHeld(subject)}. Do not use or set down for use ${numbers.length} drums of your load: ${numbers.join(', ')}. Call base. Read back the numbers.`;

/** To be read out to whoever was told of the hold; `numbers`: drums of it that are there and may be used again. */
export const releaseScript = (to: string, numbers: readonly string[], of: HoldQuery): string => {
  const what = 'batch' in of ? `Batch ${of.batch}` : `Drum ${of.drum}`;
  const drums = numbers.length === 1 ? '1 drum' : `${numbers.length} drums`;
  const may =
    numbers.length === 0
      ? 'By the book no drum of it is with you.'
      : `With you ${drums} may be used and loaded again: ${numbers.join(', ')}. Read back the numbers.`;
  return `${to}: ${what} is released, its hold is over. ${may}`;
};

/** For a text message: everybody gets the same one. */
export const message = (subject: HoldSubject, places: readonly HeldThere[], litres: Litres): string => {
  const there = places.map(({ place, drums }) => `${place} ${drums}`).join(', ');
  return `HOLD. ${whatIsHeld(subject)}, ${print(litres, 'L')}: ${there || 'nothing stands anywhere'}. Do not use or load. Set apart, answer with the numbers you hold.`;
};

const whatIsHeld = (subject: HoldSubject): string =>
  'batch' in subject ? `Batch ${subject.batch} is held` : `Drum ${subject.drums.join(', ')} is held`;
