import { pounds } from '@drumline/units';
import { printedLbOf } from '../printed-weights.js';
import { tieDown, tieDownCaution } from '../tie-down/tie-down.js';
import type { LoadSheetRequest, SheetTieDown } from './load-sheet.js';

/** The heaviest drum as the one that is tied: the count holds for every other too. Null: no drum. */
export function sheetTieDown({
  load: { drums, request },
  tieDown: setting,
}: Pick<LoadSheetRequest, 'load' | 'tieDown'>): SheetTieDown | null {
  if (drums.length === 0) return null;
  if (setting === null) {
    const words = `No straps are counted: the operator has given no load factors, straps, fittings and floor rings for type ${request.type.id}. Set-up, Tie-down.`;
    return { counted: null, words, brief: words, caution: tieDownCaution };
  }
  const heaviestLb = pounds(Math.max(...drums.map(({ grossKg }) => printedLbOf(grossKg))));
  const counted = tieDown(heaviestLb, setting.factors, setting.kit);
  return {
    counted,
    words: `Each drum: ${counted.words}`,
    brief: `Tie each drum: ${counted.brief}`,
    caution: counted.caution,
  };
}
