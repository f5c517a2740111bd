import { useState } from 'react';
import { z } from 'zod';
import {
  type Calendar,
  type Read,
  type Settings,
  useList,
  useRead,
  useSettings,
} from '../../../api/index.js';
import { bothOf } from '../../../ui/index.js';
import { type Week, weekSchema } from '../week-read.js';
import { heardWords, type PlanForm } from './plan-form.js';

const policySchema = z.object({ data: z.object({ changePrice: z.number() }).loose() });

/** What the options are about, and what they begin with. */
export interface Standing {
  readonly week: Week;
  readonly hasHandPlan: boolean;
  readonly settings: Settings['data'];
  readonly changePrice: number;
}

/** Its first problem is the week's: where nothing is set up, that says so and what to do. */
export const useStanding = ({ today }: Calendar): Read<Standing> => {
  const settings = useSettings();
  const days = settings.value?.data.days;
  const mayBeMissing = settings.problem === undefined ? null : `/api/week?from=${today}`;
  const week = useRead(
    days === undefined ? mayBeMissing : `/api/week?from=${today}&days=${Math.min(31, days)}`,
    weekSchema,
  );
  const policy = useRead('/api/policy/current', policySchema);
  const byHand = useList('/api/hand-plan', z.object({}).loose());
  const { value, problem, ...read } = bothOf(bothOf(week, settings), bothOf(policy, byHand));
  return {
    ...read,
    problem: week.value === undefined ? week.problem : problem,
    value: value && standingOf(value),
  };
};

type AllRead = readonly [
  readonly [Week, Settings],
  readonly [z.output<typeof policySchema>, readonly unknown[]],
];

const standingOf = ([[week, { data: settings }], [policy, byHand]]: AllRead): Standing => ({
  week,
  settings,
  hasHandPlan: byHand.length > 0,
  changePrice: policy.data.changePrice,
});

const usualSeconds = '20';

/** The options as typed so far. */
export const usePlanForm = ({ week, settings, hasHandPlan, changePrice }: Standing, calendar: Calendar) => {
  const [changes, setChanges] = useState<Partial<PlanForm>>({});
  const form: PlanForm = {
    from: calendar.today,
    days: String(settings.days),
    offeredDays: String(settings.offeredDays),
    endTarget: hasHandPlan ? 'hand plan' : 'operator',
    changePrice: String(Math.round(changePrice / 100)),
    seconds: usualSeconds,
    note: heardWords(week.heardSince, calendar.time),
    letGo: new Set(),
    keep: new Set(),
    ...changes,
  };
  return {
    form,
    set: (change: Partial<PlanForm>) => setChanges((before) => ({ ...before, ...change })),
  };
};
