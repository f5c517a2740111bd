import type { Scenario } from '@drumline/planning';
import type { Drum } from '@drumline/stock';
import { kilograms } from '@drumline/units';
import type { KnownDrum } from '../../stock/stock.service.js';
import type { Flown } from './flown.js';

/**
 * The drums that flights under way or done land in the end, by number with their base. A flight of today or later is a
 * fact of the plan with its landings, so its drums stand at its base on the morning of today: else those that it has
 * landed would count twice, and those aboard would be missing from the base.
 */
export const takenFromBase = (flown: ReadonlyMap<string, Flown>): ReadonlyMap<string, string> =>
  new Map(
    [...flown.values()].flatMap(({ fromPlace, drums }) =>
      drums.map(({ drum }) => [drum, fromPlace] as const),
    ),
  );

/** The scenario with these drums back where they stood that morning. */
export const withOpeningDrums = (
  scenario: Scenario,
  taken: ReadonlyMap<string, string>,
  known: ReadonlyMap<string, KnownDrum>,
): Scenario =>
  taken.size === 0
    ? scenario
    : {
        ...scenario,
        drums: [
          ...scenario.drums.filter(({ number }) => !taken.has(number)),
          ...asTaken(scenario, taken, known),
        ],
      };

/** The drums as flights took them from their bases: filled, and by the scale where they were on one. */
export const asTaken = (
  { policy, batches }: Scenario,
  taken: ReadonlyMap<string, string>,
  known: ReadonlyMap<string, KnownDrum>,
): readonly Drum[] => {
  const { fillLitres, grossKg } = policy.drum;
  return [...taken].flatMap(([number, place]): readonly Drum[] => {
    const drum = known.get(number);
    if (drum === undefined || !batches.some(({ id }) => id === drum.batch)) return [];
    const weights = { tareKg: drum.tareKg ?? kilograms(0), grossKg: drum.grossKg ?? grossKg };
    return [{ number, batch: drum.batch, place, content: 'filled sealed', litres: fillLitres, ...weights }];
  });
};
