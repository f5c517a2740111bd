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

const figuresOnly = { inputMode: 'numeric', maxLength: 8 } as const;

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
        <Entry
          label="Look ahead"
          unit="days"
          value={form.days}
          fault={faults.days}
          onChange={(days) => set({ days })}
          input={figuresOnly}
        />
        <Entry
          label="Offer the flights of"
          unit="days"
          value={form.offeredDays}
          fault={faults.offeredDays}
          onChange={(offeredDays) => set({ offeredDays })}
          input={figuresOnly}
        />
        <Entry
          label="Price of each change"
          unit={currency}
          value={form.changePrice}
          fault={faults.changePrice}
          onChange={(changePrice) => set({ changePrice })}
          input={figuresOnly}
        />
        <Entry
          label="Search for"
          unit="s"
          value={form.seconds}
          fault={faults.seconds}
          onChange={(seconds) => set({ seconds })}
          input={figuresOnly}
        />
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
