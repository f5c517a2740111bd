import type { PhoneFlight } from '@drumline/contract';

/** In words of the territory's time: the day of the flight, today, and "06:41". */
interface Now {
  readonly day: string;
  readonly today: string;
  readonly clock: string;
}

/** Why it is asked once more whether a flight took off now: another day, or the other half of its day. Null: it is time. */
export const oddTime = (
  { id, departs }: Pick<PhoneFlight, 'id' | 'departs'>,
  { day, today, clock }: Now,
): string | null => {
  const due = `${id} is for ${day} ${departs}`;
  if (day !== today) return `${due}; now it is ${today} ${clock}.`;
  const isMorning = (at: string): boolean => Number(at.slice(0, 2)) < 12;
  return isMorning(departs) === isMorning(clock) ? null : `${due}; now it is ${clock}.`;
};
