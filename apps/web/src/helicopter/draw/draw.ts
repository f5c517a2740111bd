import {
  checkGauge,
  type DrawCheck,
  type DrumToOpen,
  drawChecks,
  type GaugeCheck,
  lookedAtWords,
  type SplitDraw,
  splitDraw,
} from '@drumline/stock';
import { type KilogramsPerLitre, type Litres, litres, pounds, printNumber } from '@drumline/units';
import type { CacheView } from '../cache-view.js';
import { figure, shortDate } from '../words.js';
import type { DrawDraft } from './draw-draft.js';

/** A check as it is asked of one drum. */
export interface Check {
  readonly id: DrawCheck['id'];
  readonly word: string;
  readonly how: string;
}

/** The checks of a drum; one that was closed again has no tell-tale, and is tested for water again. */
export const checksOf = (row: DrumToOpen): readonly Check[] =>
  drawChecks.map(({ id }) => ({ id, ...asked[id](row) }));

const asked: Readonly<Record<DrawCheck['id'], (row: DrumToOpen) => Omit<Check, 'id'>>> = {
  seal: ({ drum: { content, openedOn } }) =>
    content === 'filled sealed'
      ? { word: 'Seal whole', how: 'tell-tale over the bung not torn' }
      : {
          word: 'Bung closed',
          how: `as it was left${openedOn === undefined ? '' : `, opened ${shortDate(openedOn)}`}`,
        },
  date: ({ batch }) => ({
    word: 'In date',
    how: `filled ${shortDate(batch.filledOn)}, retest ${shortDate(batch.retestDue)}`,
  }),
  clear: () => ({ word: 'Clear and bright', how: 'sample in a clean glass' }),
  dry: ({ drum: { content } }) => ({
    word: 'No water',
    how:
      content === 'filled sealed'
        ? 'paste or capsule test, as the manual says'
        : 'test again: it was closed and left',
  }),
};

export const rejections = [
  'seal broken',
  'past its date',
  'not clear and bright',
  'water found',
  'leaking',
] as const;

export type Rejection = (typeof rejections)[number];

/** "No water: not ticked yet". Null: all of them are. */
export const missingChecks = (checks: readonly Check[], ticked: ReadonlySet<string>): string | null => {
  const missing = checks.filter(({ id }) => !ticked.has(id)).map(({ word }) => word);
  return missing.length === 0 ? null : `${missing.join(', ')}: not ticked yet`;
};

/** A draw as it is written down, judged before it is kept. */
export interface JudgedDraw {
  readonly split: SplitDraw;
  /** Litres that would come out of the medevac reserve. */
  readonly fromReserveLitres: Litres;
  /** Null: the gauge was not written down. */
  readonly gauge: GaugeCheck | null;
}

export interface DrawWritten {
  readonly litres: number;
  readonly beforeLb: number | null;
  readonly afterLb: number | null;
}

export const judgeDraw = (
  view: CacheView,
  drums: readonly DrumToOpen[],
  { draw, density }: { readonly draw: DrawWritten; readonly density: KilogramsPerLitre },
): JudgedDraw => {
  const split = splitDraw(
    drums.map(({ drum }) => drum),
    litres(draw.litres),
  );
  const isFit = new Set(drums.filter(({ fitness }) => fitness === 'fit').map(({ drum }) => drum.number));
  const ofUsable = split.draws.reduce((sum, each) => sum + (isFit.has(each.number) ? each.litres : 0), 0);
  const { beforeLb, afterLb } = draw;
  return {
    split,
    fromReserveLitres: litres(view.levels === null ? 0 : Math.max(0, ofUsable - view.drawableLitres)),
    gauge:
      beforeLb === null || afterLb === null
        ? null
        : checkGauge(litres(draw.litres), { beforeLb: pounds(beforeLb), afterLb: pounds(afterLb) }, density),
  };
};

/** Two lines: what the gauge says in litres, and how far that is from what was written. Never which is right. */
export const gaugeWords = (
  { takenLb, gaugeLitres, apartLitres, agrees }: GaugeCheck,
  written: number,
  density: KilogramsPerLitre,
): { readonly word: string; readonly title: string; readonly rest: string } => ({
  word: agrees ? 'Agrees.' : 'Check.',
  title: `${printNumber(takenLb)} lb is ${printNumber(gaugeLitres, 1)} L at ${printNumber(density, 2)} kg/L.`,
  rest: `You wrote ${printNumber(written)} L: ${printNumber(apartLitres, 1)} L apart.${agrees ? '' : ' Read both again. Either may be the slip.'}`,
});

/** "Engine fuel gauge 410 lb before, 806 lb after.", as far as it was read. */
export const gaugeKept = ({ beforeLb, afterLb }: Pick<DrawDraft, 'beforeLb' | 'afterLb'>): string => {
  const read = [
    [beforeLb, 'before'],
    [afterLb, 'after'],
  ].flatMap(([typed, when]) => (figure(typed!) === null ? [] : [`${typed} lb ${when}`]));
  return read.length === 0 ? '' : `Engine fuel gauge ${read.join(', ')}.`;
};

/** What is kept of the looking. */
export const checkedWords = (drums: readonly DrumToOpen[]): string => {
  const fit = drums.filter(({ fitness }) => fitness === 'fit').map(({ drum }) => drum.number);
  const rest = drums.flatMap(({ drum, fitness, hold }) => {
    if (fitness === 'held')
      return [`${drum.number} was held: ${hold?.reason ?? 'no reason given'}. Drawn before it was read.`];
    return fitness === 'past retest'
      ? [`${drum.number} was past its retest date. Drawn before it was read.`]
      : [];
  });
  const looked =
    fit.length === 0
      ? []
      : [`Before pumping ${fit.join(', ')}. ${lookedAtWords(drawChecks.map(({ id }) => id))}`];
  return [...looked, ...rest].join(' ');
};
