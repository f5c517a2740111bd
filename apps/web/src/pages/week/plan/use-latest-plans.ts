import { z } from 'zod';
import { useRead } from '../../../api/index.js';
import { type ListedPlan, listedPlanSchema } from './plan-read.js';

const latestSchema = z.object({ items: z.array(listedPlanSchema) });
const none: readonly ListedPlan[] = [];

/** The latest first. A run that is under way is among them. */
export const useLatestPlans = (): readonly ListedPlan[] =>
  useRead('/api/plans?limit=10', latestSchema).value?.items ?? none;
