import type { LoadSheet, SheetFigures } from '@drumline/loading';
import type { Board } from '../board/board.service.js';
import type { Flight } from '../store/flight.table.js';

/** The sheet by which a flight is loaded, on one leg, with the drums at its base that are not on it; null: no such leg. */
export const figuresOf = (
  { scenario }: Board,
  { fromPlace }: Flight,
  { drums, legs }: LoadSheet,
  leg = 0,
): SheetFigures | null => {
  const totals = legs[leg]?.totals;
  if (totals === undefined) return null;
  const named = new Set(drums.map(({ number }) => number));
  const otherDrums = scenario.drums
    .filter(({ number, place }) => place === fromPlace && !named.has(number))
    .map(({ number, grossKg, tareKg }) => ({ name: number, kg: grossKg, tareKg }));
  return { totals, otherDrums };
};
