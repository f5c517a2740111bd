import type { IsoInstant } from '@drumline/units';
import type { Hold } from '../drum.js';
import { contradictions } from './contradictions.js';
import { type DrumLife, lifeAfter, unheardOf } from './drum-life.js';
import type { DrumGroup, DrumState, DrumStep, HistoryEntry } from './ledger-state.js';
import { mergeReports } from './merge-reports.js';
import type { Joined, Movement } from './movement.js';
import { byWritten } from './order.js';
import { raise } from './raise.js';
import type { Raised } from './raised.js';
import { subjectsOf } from './subjects.js';

/** What the drums of a group are read with. */
export interface ReadingAid {
  readonly movement: (id: string) => Movement;
  readonly reversedBy: (id: string) => readonly string[];
  /** The hold of a batch that stood at a moment. */
  readonly batchHold: (batch: string, at: IsoInstant) => Hold | null;
}

/** The drums that a group of linked numbers turns out to be: one per number that no standing join leads on from. */
export function readGroup(group: DrumGroup, aid: ReadingAid): readonly DrumState[] {
  const movements = group.movements.map(aid.movement);
  const { realNumber, raised } = readJoins(movements, aid);
  const numbers = [...new Set(group.numbers.map(realNumber))];
  return numbers.map((number) => {
    const names = group.numbers.filter((each) => realNumber(each) === number);
    const own =
      numbers.length === 1
        ? movements
        : movements.filter((movement) => namesOf(movement).some((each) => names.includes(each)));
    const ofJoins = raised.filter(({ drum }) => drum === number);
    return readDrum(number, names, own, ofJoins, aid);
  });
}

interface Joins {
  readonly realNumber: (number: string) => string;
  readonly raised: readonly Raised[];
}

/** A provisional number leads to one other: the join that was written first stands. */
function readJoins(movements: readonly Movement[], { reversedBy }: ReadingAid): Joins {
  const joins = movements
    .filter((movement): movement is Joined => movement.kind === 'joined')
    .filter(({ id }) => reversedBy(id).length === 0)
    .sort(byWritten);
  const first = new Map<string, Joined>();
  for (const join of joins) if (!first.has(join.provisional)) first.set(join.provisional, join);
  const realNumber = (number: string): string => {
    const passed: string[] = [];
    let real = number;
    while (first.has(real) && !passed.includes(real)) {
      passed.push(real);
      real = first.get(real)!.drum;
    }
    // Numbers joined in a circle are one drum; it goes by the first of them.
    return passed.includes(real) ? passed.slice(passed.indexOf(real)).sort()[0]! : real;
  };
  const raised = joins
    .filter(({ provisional, drum }) => first.get(provisional)!.drum !== drum)
    .map((join) => joinedTwice(first.get(join.provisional)!, join, realNumber(join.provisional)));
  return { realNumber, raised };
}

function joinedTwice(first: Joined, other: Joined, drum: string): Raised {
  return raise('joined twice', [first, other], {
    drum,
    what: `${first.provisional} was joined to ${first.drum} by ${first.by} and to ${other.drum} by ${other.by}; the first written stands.`,
    whatNext: 'Read the drum again; correct the join that is wrong.',
  });
}

function readDrum(
  number: string,
  names: readonly string[],
  movements: readonly Movement[],
  ofJoins: readonly Raised[],
  aid: ReadingAid,
): DrumState {
  const merged = mergeReports(number, movements, aid.reversedBy);
  const told = tell(number, names, merged.history, aid);
  const { known, held, condemned, retest, ...life } = told.life;
  return {
    number,
    alsoKnownAs: names.filter((name) => name !== number),
    ...life,
    fitness: { held, condemned, retest },
    history: merged.history,
    steps: told.steps,
    raised: [...ofJoins, ...merged.raised, ...told.raised],
  };
}

interface Told {
  readonly life: DrumLife;
  readonly steps: readonly DrumStep[];
  readonly raised: readonly Raised[];
}

/** The life of a drum, movement by movement in the order in which they happened. */
function tell(
  number: string,
  names: readonly string[],
  history: readonly HistoryEntry[],
  { batchHold }: ReadingAid,
): Told {
  const standing = history.filter(({ reversedBy, sameAs }) => reversedBy.length === 0 && sameAs === null);
  const hasOrigin = standing.some(({ movement: { kind } }) => kind === 'received' || kind === 'filled');
  const steps: DrumStep[] = [];
  const raised: Raised[] = [];
  let life = unheardOf;
  for (const { movement } of standing) {
    const part = partIn(movement, names);
    raised.push(...contradictions({ number, life, movement, part, hasOrigin, batchHold }));
    life = lifeAfter(life, movement, part);
    const { where, content, millilitres } = life;
    steps.push({ movement: movement.id, from: movement.happenedAt, where, content, millilitres });
  }
  return { life, steps, raised };
}

function partIn(movement: Movement, names: readonly string[]) {
  const isTransfer = movement.kind === 'transferred';
  return {
    isSource: isTransfer && names.includes(movement.drum),
    isTarget: isTransfer && names.includes(movement.into),
  };
}

const namesOf = (movement: Movement): readonly string[] => subjectsOf(movement, () => undefined).drums;
