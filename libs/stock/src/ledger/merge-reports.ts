import type { HistoryEntry } from './ledger-state.js';
import type { BroughtHome, LeftAt, Loaded, Movement } from './movement.js';
import { byHappened, byWritten } from './order.js';
import { raise } from './raise.js';
import type { Raised } from './raised.js';

export interface MergedReports {
  /** In the order in which they happened. */
  readonly history: readonly HistoryEntry[];
  readonly raised: readonly Raised[];
}

type Report = Loaded | LeftAt | BroughtHome;

/**
 * The movements of one drum, with the reports of one kind on one flight leg read as one movement: the first written
 * stands, the others are its witnesses, and where they differ from it a difference is raised.
 */
export function mergeReports(
  number: string,
  movements: readonly Movement[],
  reversedBy: (id: string) => readonly string[],
): MergedReports {
  const sets = reportsOfOneLeg(movements.filter(({ id }) => reversedBy(id).length === 0));
  const setOf = new Map([...sets.values()].flatMap((set) => set.map(({ id }) => [id, set])));
  const history = [...movements].sort(byHappened).map((movement): HistoryEntry => {
    const set = setOf.get(movement.id) ?? [movement];
    const first = set[0]!.id;
    return {
      movement,
      reversedBy: reversedBy(movement.id),
      sameAs: first === movement.id ? null : first,
      witnesses: [...new Set(set.flatMap(({ by, witnesses }) => [by, ...witnesses]))],
    };
  });
  return { history, raised: [...sets.values()].flatMap((set) => differences(number, set)) };
}

function reportsOfOneLeg(movements: readonly Movement[]): ReadonlyMap<string, Report[]> {
  const sets = new Map<string, Report[]>();
  for (const movement of movements) {
    if (!isReport(movement)) continue;
    const key = `${movement.kind} ${movement.leg} ${movement.flight}`;
    const set = sets.get(key);
    if (set) set.push(movement);
    else sets.set(key, [movement]);
  }
  for (const set of sets.values()) set.sort(byWritten);
  return sets;
}

function isReport(movement: Movement): movement is Report {
  const { kind } = movement;
  return kind === 'loaded' || kind === 'left at' || kind === 'brought home';
}

function differences(number: string, [first, ...others]: readonly Report[]): Raised[] {
  return others.flatMap((other) => {
    const unlike = unlikeWords(first!, other);
    if (unlike.length === 0) return [];
    return [
      raise('reports differ', [first!, other], {
        drum: number,
        place: first!.place,
        flight: first!.flight,
        what: `Drum ${number}, "${first!.kind}" on leg ${first!.leg} of ${first!.flight}: ${first!.by} and ${other.by} differ in ${unlike.join(' and ')}; the first written stands.`,
        whatNext: 'Ask both; correct the report that is wrong.',
      }),
    ];
  });
}

function unlikeWords(first: Report, other: Report): string[] {
  const bothFound = first.foundMillilitres !== null && other.foundMillilitres !== null;
  return [
    ...(first.place === other.place ? [] : [`place (${first.place}, ${other.place})`]),
    ...(first.condition === other.condition ? [] : [`condition (${first.condition}, ${other.condition})`]),
    ...(bothFound && first.foundMillilitres !== other.foundMillilitres ? ['litres'] : []),
  ];
}
