import { correctedDifferences, correctedReports, overruledReports } from './corrected-reports.js';
import type { HistoryEntry } from './ledger-state.js';
import { isReport, legOf, type Report } from './leg-report.js';
import type { Movement } from './movement.js';
import { byHappened, byWritten } from './order.js';
import { raise } from './raise.js';
import type { Raised } from './raised.js';

export interface MergedReports {
  /** In the order in which they happened. */
  readonly history: readonly HistoryEntry[];
  readonly raised: readonly Raised[];
}

/**
 * The movements of one drum, with the reports of one kind on one flight leg read as one movement: the first written
 * stands, the others are its witnesses, and where they differ from it a difference is raised. Who has corrected a report
 * has looked twice: what that person says instead stands, and reverses every other report of what was corrected.
 */
export function mergeReports(
  number: string,
  movements: readonly Movement[],
  corrections: (id: string) => readonly string[],
): MergedReports {
  const corrected = correctedReports(movements, corrections);
  const overruled = overruledReports(corrected);
  const reversedBy = (id: string) => overruled.get(id)?.corrections ?? corrections(id);
  const instead = new Set(corrected.flatMap(({ said }) => said?.id ?? []));
  const sets = reportsOfOneLeg(
    movements.filter(({ id }) => reversedBy(id).length === 0),
    instead,
  );
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
  const raised = [
    ...[...sets.values()].flatMap((set) => differences(number, set, instead)),
    ...correctedDifferences(number, corrected),
  ];
  return { history, raised };
}

/** The first of each leads; a report that stands in place of a corrected one comes before it. */
function reportsOfOneLeg(
  movements: readonly Movement[],
  instead: ReadonlySet<string>,
): ReadonlyMap<string, Report[]> {
  const sets = new Map<string, Report[]>();
  for (const movement of movements) {
    if (!isReport(movement)) continue;
    const key = legOf(movement);
    const set = sets.get(key);
    if (set) set.push(movement);
    else sets.set(key, [movement]);
  }
  const rank = ({ id }: Report) => (instead.has(id) ? 0 : 1);
  for (const set of sets.values()) set.sort((a, b) => rank(a) - rank(b) || byWritten(a, b));
  return sets;
}

function differences(
  number: string,
  [first, ...others]: readonly Report[],
  instead: ReadonlySet<string>,
): Raised[] {
  const why = instead.has(first!.id)
    ? `${first!.by} has corrected it, and that stands`
    : 'the first written stands';
  return others.flatMap((other) => {
    const unlike = unlikeWords(first!, other);
    if (unlike.length === 0) return [];
    return [
      raise('reports differ', [first!, other], {
        drum: number,
        place: first!.place,
        flight: first!.flight,
        what: `Drum ${number}, "${first!.kind}" on leg ${first!.leg} of ${first!.flight}: ${first!.by} and ${other.by} differ in ${unlike.join(' and ')}; ${why}.`,
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
