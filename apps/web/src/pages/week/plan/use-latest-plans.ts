import { z } from 'zod';
import { mayOfAll, useMe, useRead } from '../../../api/index.js';
import { type ListedPlan, listedPlanSchema } from './plan-read.js';

const latestSchema = z.object({ items: z.array(listedPlanSchema) });
const none: readonly ListedPlan[] = [];

/** The latest first. A run that is under way is among them. None for who does not see plans. */
export const useLatestPlans = (): readonly ListedPlan[] => {
  const seesPlans = mayOfAll(useMe(), 'run plan', 'view');
  return useRead(seesPlans ? '/api/plans?limit=10' : null, latestSchema).value?.items ?? none;
};
