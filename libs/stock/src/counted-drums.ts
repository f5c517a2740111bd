import { type Litres, litres, print } from '@drumline/units';
import type { CountTolerance } from './drum.js';
import { toleranceOfCount } from './opening-stock.js';

/** The litres that somebody found, and the drums that were seen with fuel in. */
export interface DrumsCounted {
  readonly litres: Litres;
  readonly sealedDrums: number;
  readonly openDrums: number;
}

/**
 * "2,150 L, and 12 sealed drums hold 2,400 L": a count whose litres its own drums cannot hold, or that leaves its sealed
 * ones short, by more than the tolerance of a count; null: they agree. `fillLitres`: in a full drum. Sealed drums are taken
 * to be full, an open one holds anything up to that.
 */
export function unlikeItsDrums(
  { litres: found, sealedDrums, openDrums }: DrumsCounted,
  { fillLitres, countTolerance }: { readonly fillLitres: Litres; readonly countTolerance: CountTolerance },
): string | null {
  const least = litres(sealedDrums * fillLitres);
  const most = litres((sealedDrums + openDrums) * fillLitres);
  const allowed = toleranceOfCount(most, openDrums, countTolerance);
  if (found >= least - allowed && found <= most + allowed) return null;
  const drums =
    openDrums === 0
      ? `${sealedDrums} sealed drums hold`
      : `${sealedDrums} sealed and ${openDrums} open drums hold${least === 0 ? ' up to' : ''}`;
  const hold =
    openDrums === 0 || least === 0 ? print(most, 'L') : `${print(least, 'L')} to ${print(most, 'L')}`;
  return `${print(found, 'L')}, and ${drums} ${hold}`;
}
