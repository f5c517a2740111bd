import { checkGauge, type DrawCheck, drawChecks, lookedAtWords } from '@drumline/stock';
import { type KilogramsPerLitre, litres, pounds, printNumber } from '@drumline/units';
import { missing } from './sheet.js';

/** What a draw slip says beside the litres: the boxes ticked before pumping, and the engine fuel gauge. */
export interface LookedAt {
  /** The line without them. */
  readonly rest: readonly string[];
  readonly checks: readonly DrawCheck['id'][];
  readonly gaugeLb: { readonly before: number; readonly after: number } | null;
}

/** "seal date clear dry gauge 640/992 lb". */
export const lookedAt = (words: readonly string[]): LookedAt => {
  const at = words.findIndex((word) => word.toLowerCase() === 'gauge');
  const read = /^(\d+)\/(\d+)(lb)?$/i.exec(words[at + 1] ?? '');
  const isApart = words[at + 2]?.toLowerCase() === 'lb';
  if (at >= 0 && (read === null || !(read[3] !== undefined || isApart)))
    missing('The gauge before and after, in lb: write gauge 640/992 lb.');
  const ofGauge = at < 0 ? 0 : isApart ? 3 : 2;
  const rest = words.filter((_, index) => index < at || index >= at + ofGauge);
  const boxOf = (word: string) => drawChecks.find(({ id }) => id === word.toLowerCase())?.id;
  return {
    rest: rest.filter((word) => boxOf(word) === undefined),
    checks: rest.flatMap((word) => boxOf(word) ?? []),
    gaugeLb: at < 0 || read === null ? null : { before: Number(read[1]), after: Number(read[2]) },
  };
};

/** What is kept of it with the draw; `why`: another drum than the first in the order of use, or whatever else was written. */
export const noteOf = ({ checks, gaugeLb }: LookedAt, why: string | null): string | null => {
  const said = [
    ...(checks.length === 0 ? [] : [lookedAtWords(checks)]),
    ...(gaugeLb === null
      ? []
      : [`Gauge ${printNumber(gaugeLb.before)} lb before, ${printNumber(gaugeLb.after)} lb after.`]),
    ...(why === null ? [] : [`Because ${why}.`]),
  ];
  return said.length === 0 ? null : said.join(' ');
};

/** The litres beside what the gauge says went in; never which is right. */
export const gaugeDoubts = (
  { gaugeLb }: LookedAt,
  drawn: number,
  density: KilogramsPerLitre,
): readonly string[] => {
  if (gaugeLb === null) return [];
  const gauge = { beforeLb: pounds(gaugeLb.before), afterLb: pounds(gaugeLb.after) };
  const { agrees, takenLb, gaugeLitres } = checkGauge(litres(drawn), gauge, density);
  if (agrees) return [];
  return [
    `${printNumber(drawn)} L is written, and the gauge took ${printNumber(takenLb)} lb, ${printNumber(gaugeLitres)} L.`,
  ];
};
