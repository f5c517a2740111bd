import type { Missing } from '@drumline/contract';
import { capital } from '../../../ui/index.js';
import { labelsAt, typedFault } from '../form/typed-faults.js';
import { type Section, sections, specOf } from '../sections.js';

type Part = string | { readonly words: string; readonly section: Section };

export interface MissingWords {
  /** "XLOR, Minimum: "800" is not a number." */
  readonly what: string;
  /** Where it is entered: "Add a line to", Strip limits, ", or make it a pad." */
  readonly next: readonly Part[];
  /** The step that it stands in itself; undefined: of none. */
  readonly section: Section | undefined;
  /** Its name there; undefined: it is not there yet, or has no name. */
  readonly id: string | undefined;
}

/** Something that is missing or wrong, by the labels of the forms, with every step that it names. */
export const missingWords = ({ at, of, field, what, next }: Missing, currency: string): MissingWords => {
  const section = sections.find(({ list }) => list === at);
  if (section === undefined)
    return { what: [of, what].filter(Boolean).join(': '), next: [next], section, id: undefined };
  const spec = specOf(section, currency);
  const { problem, remedy } = typedFault(spec, { path: field, problem: what, remedy: next });
  const where = [of, labelsAt(spec, field)].filter(Boolean).join(', ');
  const isTold = field === '' && what.includes(of);
  return {
    what: isTold ? capital(problem) : `${where}: ${problem}`,
    next: inSteps(remedy.replace('Write null', 'Leave it empty')),
    section,
    id: idIn(section, of),
  };
};

/** Things without a name of their own are told by their number in the list. */
const idIn = ({ named }: Section, of: string): string | undefined => {
  if (named === null || named.length === 0 || of === '' || of.startsWith('no. ')) return undefined;
  return named.length === 1 ? of : of.split(' ').join('-');
};

/** Steps that go by a plain word are named only behind one of these: "add its bulk fuel to bases". */
const named = new RegExp(`\\b(?:(?<=(?:to|in) )(${sections.map(({ list }) => list).join('|')}))\\b`);

const inSteps = (words: string): readonly Part[] =>
  words.split(named).flatMap((part): readonly Part[] => {
    const section = sections.find(({ list }) => list === part);
    if (section !== undefined) return [{ words: section.title, section }];
    return part === '' ? [] : [part];
  });
