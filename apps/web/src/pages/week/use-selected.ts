import { useState } from 'react';
import { firstToDecide } from './board/board-rows.js';
import type { Week } from './week-read.js';

/**
 * The flight whose card is open: as the address has it, or the first to decide. That one stays when it is decided, here or by
 * somebody else: a card never changes under the hands of whoever is at it.
 */
export const useSelected = (week: Week, chosen: string | undefined): string | undefined => {
  const [first, setFirst] = useState<string>();
  const isThere = week.flights.some(({ id }) => id === first);
  const next = isThere ? first : firstToDecide(week);
  if (next !== first) setFirst(next);
  return chosen ?? next;
};
