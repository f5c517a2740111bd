import { daysFrom } from '@drumline/units';
import type { Calendar } from '../../../api/index.js';
import { Choice, Entry } from '../../../ui/index.js';
import type { EndTarget, faultsOf, PlanForm } from './plan-form.js';

interface PlanFieldsProps {
  readonly form: PlanForm;
  readonly set: (change: Partial<PlanForm>) => void;
  readonly faults: ReturnType<typeof faultsOf>;
  readonly hasHandPlan: boolean;
  readonly currency: string;
  readonly calendar: Calendar;
}

const targets: readonly (readonly [EndTarget, string])[] = [
  ['hand plan', 'end as the plan made by hand'],
  ['operator', "the operator's end targets"],
  ['minimum', 'minimums only'],
];

const figures = (currency: string) =>
  [
    { field: 'days', label: 'Look ahead', unit: 'days' },
    { field: 'offeredDays', label: 'Offer the flights of', unit: 'days' },
    { field: 'changePrice', label: 'Price of each change', unit: currency },
    { field: 'seconds', label: 'Search for', unit: 's' },
  ] as const;

export const PlanFields = ({ form, set, faults, hasHandPlan, currency, calendar }: PlanFieldsProps) => {
  const week = daysFrom(calendar.today, 7);
  return (
    <>
      <div className="plan-fields">
        <Choice
          label="From"
          value={form.from}
          options={week.map((date) => [
            date,
            date === calendar.today ? `now, ${calendar.day(date)}` : calendar.day(date),
          ])}
          onChange={(from) => set({ from })}
        />
        <Choice
          label="Caches are to hold at the end"
          value={form.endTarget}
          options={targets.filter(([target]) => hasHandPlan || target !== 'hand plan')}
          onChange={(endTarget) => set({ endTarget })}
        />
        {figures(currency).map(({ field, label, unit }) => (
          <Entry
            key={field}
            {...{ label, unit }}
            value={form[field]}
            fault={faults[field]}
            onChange={(typed) => set({ [field]: typed })}
            input={{ inputMode: 'numeric', maxLength: 8 }}
          />
        ))}
      </div>
      {form.from !== calendar.today && (
        <p>
          Offered flights before {calendar.day(form.from)} stay as they are; a new one may still be added.
        </p>
      )}
      <Entry
        label={form.letGo.size > 0 ? 'Why, also of letting go' : 'Why'}
        value={form.note}
        fault={faults.note}
        onChange={(note) => set({ note })}
        input={{ maxLength: 300 }}
      />
    </>
  );
};
