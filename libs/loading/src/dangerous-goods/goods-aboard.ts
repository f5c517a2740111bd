import { type Litres, litres } from '@drumline/units';

/** What of turbine fuel a drum aboard still is. A clean empty is no dangerous good. */
export type GoodsContent = 'fuel' | 'uncleaned empty' | 'clean empty';

/** One drum aboard, whenever it came aboard. */
export interface GoodsDrum {
  readonly number: string;
  readonly content: GoodsContent;
  /** 0 for an empty. */
  readonly litres: Litres;
  readonly position: string;
  /** Legs on which it is aboard, the first being 0. */
  readonly fromLeg: number;
  readonly lastLeg: number;
  /** Where it leaves the aeroplane. */
  readonly unloadAt: string;
}

/** The dangerous goods of one leg: drums loaded for it and those still aboard from stops before, empties not cleaned included. */
export interface GoodsOnLeg {
  readonly filled: readonly GoodsDrum[];
  readonly uncleanedEmpties: readonly GoodsDrum[];
  readonly litres: Litres;
}

/** What of turbine fuel is aboard on a leg. */
export function goodsOnLeg(drums: readonly GoodsDrum[], leg: number): GoodsOnLeg {
  const aboard = drums.filter(({ fromLeg, lastLeg }) => fromLeg <= leg && leg <= lastLeg);
  const filled = aboard.filter(({ content }) => content === 'fuel');
  return {
    filled,
    uncleanedEmpties: aboard.filter(({ content }) => content === 'uncleaned empty'),
    litres: litres(filled.reduce((sum, drum) => sum + drum.litres, 0)),
  };
}

/** Drums that count as dangerous goods on a leg. */
export const dangerousDrums = ({ filled, uncleanedEmpties }: GoodsOnLeg): number =>
  filled.length + uncleanedEmpties.length;
