import { projectCaches } from '@drumline/stock';
import { describe, expect, it } from 'vitest';
import { flagsWithoutDelivery, levelsWithoutDelivery, mondayMorning } from './stock-tables.js';

describe('the fortnight without a delivery', () => {
  const projections = projectCaches(mondayMorning);

  it.each(projections)('book projection: $place ends every day at the level worked out by hand', (cache) => {
    expect(cache.book).toEqual(levelsWithoutDelivery[cache.place]);
  });

  it.each(projections)(
    '$place falls below its minimum and critical level and runs out on the days worked out by hand',
    ({ place, belowMinimumDay, belowCriticalDay, runOutDay }) => {
      expect({ belowMinimumDay, belowCriticalDay, runOutDay }).toEqual(flagsWithoutDelivery[place]);
    },
  );
});
