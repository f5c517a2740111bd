import { useState } from 'react';
import { z } from 'zod';
import { type Calendar, useList, useRead, useSettings } from '../../../api/index.js';
import { type Week, weekSchema } from '../week-read.js';
import { heardWords, type PlanForm } from './plan-form.js';

const policySchema = z.object({ data: z.object({ changePrice: z.number() }).loose() });

interface Choices {
  readonly week: Week;
  readonly hasHandPlan: boolean;
  readonly form: PlanForm;
  readonly set: (change: Partial<PlanForm>) => void;
}

const usualSeconds = '20';

/** What the options begin with, and the flights they are about; undefined until it is read. */
export const usePlanForm = (calendar: Calendar): Choices | undefined => {
  const settings = useSettings().value?.data;
  const { today } = calendar;
  const week = useRead(
    settings === undefined ? null : `/api/week?from=${today}&days=${Math.min(31, settings.days)}`,
    weekSchema,
  ).value;
  const policy = useRead('/api/policy/current', policySchema).value;
  const byHand = useList('/api/hand-plan', z.object({}).loose()).value;
  const [changes, setChanges] = useState<Partial<PlanForm>>({});
  if (settings === undefined || week === undefined || policy === undefined || byHand === undefined)
    return undefined;
  const hasHandPlan = byHand.length > 0;
  const form: PlanForm = {
    from: today,
    days: String(settings.days),
    offeredDays: String(settings.offeredDays),
    endTarget: hasHandPlan ? 'hand plan' : 'operator',
    changePrice: String(Math.round(policy.data.changePrice / 100)),
    seconds: usualSeconds,
    note: heardWords(week.heardSince, calendar.time),
    letGo: new Set(),
    keep: new Set(),
    ...changes,
  };
  return { week, hasHandPlan, form, set: (change) => setChanges((before) => ({ ...before, ...change })) };
};
