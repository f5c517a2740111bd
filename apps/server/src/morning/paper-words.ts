import { printNumber } from '@drumline/units';

/** What an entry says, as the database tells it. */
export interface PaperFacts {
  readonly kind: string;
  readonly place: string | null;
  readonly drums: readonly string[];
  readonly facts: Readonly<Record<string, unknown>>;
}

/** "3 left at XGAN: 0573, 0574, 0575". */
export const paperWords = (entry: PaperFacts): string => (words[entry.kind] ?? asItIs)(entry);

const text = (value: unknown): string => (typeof value === 'string' ? value : '');
const litres = ({ facts }: PaperFacts): string => `${printNumber(Number(facts.millilitres) / 1000)} L`;
const many = ({ drums }: PaperFacts): string => `${drums.length} ${drums.length === 1 ? 'drum' : 'drums'}`;
const condition = ({ facts }: PaperFacts): string =>
  facts.condition === undefined || facts.condition === 'sound' ? '' : `, ${text(facts.condition)}`;

const words: Readonly<Record<string, (entry: PaperFacts) => string>> = {
  load: (entry) => `loaded with ${many(entry)}: ${entry.drums.join(', ')}`,
  'take off': () => 'off',
  land: ({ place }) => `down at ${place}`,
  'turn back': ({ place }) => `turned back, down at ${place}`,
  'end elsewhere': ({ place }) => `ended elsewhere, down at ${place}`,
  refuse: ({ facts }) => `refused by its crew${text(facts.reason) === '' ? '' : `: ${text(facts.reason)}`}`,
  report: () => 'every drum accounted for',
  surface: ({ place, facts }) => `${place} ${text(facts.state)}`,
  loaded: (entry) => `${many(entry)} taken aboard at ${entry.place}: ${entry.drums.join(', ')}`,
  'left at': (entry) => `${many(entry)} left at ${entry.place}: ${entry.drums.join(', ')}${condition(entry)}`,
  'brought home': (entry) =>
    `${many(entry)} brought home to ${entry.place}: ${entry.drums.join(', ')}${condition(entry)}`,
  drawn: (entry) =>
    `${litres(entry)} drawn at ${entry.place} from ${entry.drums.join(', ')} into ${text(entry.facts.into)}`,
  counted: (entry) => `${entry.place} counted, ${litres(entry)}`,
  slung: (entry) =>
    `${many(entry)} slung ${text(entry.facts.from)} to ${text(entry.facts.to)}: ${entry.drums.join(', ')}`,
  filled: (entry) => `${entry.drums.join(', ')} filled at ${entry.place}, ${litres(entry)}`,
};

const asItIs = ({ kind, place, drums }: PaperFacts): string =>
  [drums.join(', '), kind, place === null ? '' : `at ${place}`].filter((part) => part !== '').join(' ');
