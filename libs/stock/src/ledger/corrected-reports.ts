import { isReport, legOf, type Report } from './leg-report.js';
import type { Movement } from './movement.js';
import { byWritten, compareInstants } from './order.js';
import { raise } from './raise.js';
import type { Raised } from './raised.js';

/** A report that was taken back. */
export interface CorrectedReport {
  readonly wrong: Report;
  /** Ids of its standing corrections. */
  readonly corrections: readonly string[];
  /** What its author says of the drum instead, of the same flight; null: nothing. */
  readonly said: Report | null;
  /** Reports by others of what was taken back, which nobody has corrected. */
  readonly others: readonly Report[];
}

/** The corrected reports of one drum, each with what was said in its place and who else reported it. */
export function correctedReports(
  movements: readonly Movement[],
  corrections: (id: string) => readonly string[],
): readonly CorrectedReport[] {
  const reports = movements.filter(isReport);
  const standing = reports.filter(({ id }) => corrections(id).length === 0);
  return reports
    .filter(({ id }) => corrections(id).length > 0)
    .sort(byWritten)
    .map((wrong) => {
      const said = saidInstead(wrong, standing);
      const others = standing.filter((report) => report !== said && legOf(report) === legOf(wrong));
      return { wrong, corrections: corrections(wrong.id), said, others };
    });
}

/** The last that its author has written since, or of the same event, of the drum on that flight: off it, where the wrong one took it off. */
function saidInstead(wrong: Report, standing: readonly Report[]): Report | null {
  const since = standing.filter(
    (report) =>
      report.flight === wrong.flight &&
      report.by === wrong.by &&
      (report.kind === 'loaded') === (wrong.kind === 'loaded') &&
      (legOf(report) === legOf(wrong) || compareInstants(report.writtenAt, wrong.writtenAt) >= 0),
  );
  return since.sort(byWritten).at(-1) ?? null;
}

/**
 * By id the reports that a correction reverses beside the one that it names: its author says something else of the drum,
 * and the other is not of that event. Two who have both corrected themselves overrule nobody: both stand.
 */
export function overruledReports(
  corrected: readonly CorrectedReport[],
): ReadonlyMap<string, Pick<CorrectedReport, 'corrections'>> {
  const instead = new Set(corrected.flatMap(({ said }) => said?.id ?? []));
  return new Map(
    corrected.flatMap(({ said, others, corrections }) =>
      said === null
        ? []
        : others
            .filter((other) => legOf(other) !== legOf(said) && !instead.has(other.id))
            .map((other) => [other.id, { corrections }] as const),
    ),
  );
}

/** One thing to look at for each two people who part ways after a correction; nobody is told twice of two reports. */
export function correctedDifferences(number: string, corrected: readonly CorrectedReport[]): Raised[] {
  return corrected.flatMap(({ wrong, said, others }) =>
    others
      .filter((other) => other.by !== wrong.by && (said === null || legOf(said) !== legOf(other)))
      .map((other) =>
        raise('reports differ', [said ?? wrong, other], {
          drum: number,
          place: other.place,
          flight: other.flight,
          what: `Drum ${number}, ${other.flight}: two reports differ: ${saysWords(wrong, said)}; ${other.by} says ${words(other)}. ${
            said === null
              ? `What ${other.by} says stands.`
              : 'The ledger follows the correction, which is later and deliberate.'
          }`,
          whatNext: 'Ask both; correct the report that is wrong.',
        }),
      ),
  );
}

const saysWords = (wrong: Report, said: Report | null): string =>
  said === null
    ? `${wrong.by} has taken back ${words(wrong)}`
    : `${wrong.by} has corrected ${words(wrong)} and says ${words(said)}`;

const words = ({ kind, place, condition }: Report): string =>
  `"${kind}" ${place}${condition === 'sound' ? '' : `, ${condition}`}`;
