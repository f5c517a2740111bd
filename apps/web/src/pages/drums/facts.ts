import { isUnheardOf, type Where } from '@drumline/stock';
import { inWords } from '../../ui/index.js';
import type { Drum } from './drums-read.js';

/** Three separate facts of a drum, never one status. */
export interface DrumFacts {
  readonly where: string;
  readonly content: string;
  /** One word or two, and what it rests on. */
  readonly use: string;
  readonly because: string;
  readonly isHeld: boolean;
}

export const whereWords = (where: Where): string => {
  if (where.kind === 'at') return where.place;
  if (where.kind === 'aboard') return `aboard ${where.flight}`;
  return where.lastSeenAt === null ? 'unknown' : `unknown, last seen at ${where.lastSeenAt}`;
};

/** `today` and the words for a day are the territory's. */
export const factsOf = (drum: Drum, today: string, date: (day: string) => string): DrumFacts => {
  const { where, content, litres, condemned, held, retestDue } = drum;
  const [use, because] = useOf({ condemned, held, retestDue }, today, date);
  return {
    where: whereWords(where),
    content: isUnheardOf(drum) ? 'not known' : litres > 0 ? `${content}, ${inWords(litres, 'L')}` : content,
    use,
    because,
    isHeld: held !== null || condemned !== null,
  };
};

const useOf = (
  { condemned, held, retestDue }: Pick<Drum, 'condemned' | 'held' | 'retestDue'>,
  today: string,
  date: (day: string) => string,
): readonly [use: string, because: string] => {
  if (condemned !== null) return ['condemned', `${condemned.reason}, ${condemned.by}`];
  if (held !== null) return ['HOLD', `${held.reason}, ${held.by}`];
  if (retestDue === null) return ['not known', 'its batch has no retest date'];
  return retestDue < today
    ? ['past retest', `was due ${date(retestDue)}`]
    : ['fit', `retest due ${date(retestDue)}`];
};
