import { type Litres, litres } from '@drumline/units';
import { dipOf, tableOf } from '../dip/dips.js';
import { figure } from '../words.js';
import type { JudgedDraw } from './draw.js';
import type { DrawDraft } from './draw-draft.js';
import type { DrawStep } from './draw-page.js';

/** The drum that the pump stopped in; undefined: none is left part used. */
export const partUsed = ({ split }: Pick<JudgedDraw, 'split'>) =>
  split.draws.find(({ leftLitres }) => leftLitres > 0);

/** What the stick says is left in it; null: nobody looked, or the figure is none. */
export const leftByStick = (
  draft: Pick<DrawDraft, 'leftCm' | 'dipTable'>,
  { here }: Pick<DrawStep, 'here'>,
): Litres | null => {
  const table = tableOf(draft, here.places.dipTables ?? []);
  const read = table === null ? null : dipOf(table, draft.leftCm ?? '');
  return read === null || read === undefined ? null : litres(Math.round(read.litres));
};

/** The stick that is kept with the report: "By stick, upright drum: 20 cm in 0468." Empty: nobody looked. */
export const stickWords = (
  { draft, here }: Pick<DrawStep, 'draft' | 'here'>,
  judged: Pick<JudgedDraw, 'split'>,
): string => {
  const drum = partUsed(judged);
  const table = tableOf(draft, here.places.dipTables ?? []);
  return drum === undefined || table === null || figure(draft.leftCm ?? '') === null
    ? ''
    : `By stick, ${table.name}: ${draft.leftCm} cm in ${drum.number}.`;
};

/** A stick that was begun is finished, or taken off the page: it is never dropped unseen. */
export const stickWaits = (step: Pick<DrawStep, 'draft' | 'here'>, judged: Pick<JudgedDraw, 'split'>) => {
  const { draft, here } = step;
  const table = tableOf(draft, here.places.dipTables ?? []);
  if (table === null || partUsed(judged) === undefined || leftByStick(draft, step) !== null) return null;
  return figure(draft.leftCm ?? '') === null
    ? 'The stick in cm, or “Not looked at”'
    : 'The drum is not that deep: the stick again';
};
