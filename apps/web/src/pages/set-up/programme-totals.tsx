import { useState } from 'react';
import { z } from 'zod';
import { useCalendar, useMay, useRead } from '../../api/index.js';
import { Entry, figure, inWords, Lines, MessageLine, Picture } from '../../ui/index.js';
import { useCurrency } from './kept/kept.js';

const rechargeSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('delivered cost'), marginPercent: z.number() }),
  z.object({ kind: z.literal('fixed price'), centsPerLitre: z.number() }),
  z.object({ kind: z.literal('not recharged') }),
]);
const totalSchema = z.object({
  programme: z.string(),
  name: z.string(),
  recharge: rechargeSchema,
  plannedHours: z.number(),
  plannedLitres: z.number(),
  flownHours: z.number(),
  drawnLitres: z.number(),
  charged: z.number(),
  litresWithoutCost: z.number(),
});
const totalsSchema = z.object({ from: z.string(), until: z.string(), items: z.array(totalSchema) });

type Total = z.output<typeof totalSchema>;

/** Hours, litres and recharge of the programmes over some days: this month, unless somebody says otherwise. */
export const ProgrammeTotals = () => {
  const { today } = useCalendar();
  const may = useMay();
  const [days, setDays] = useState<{ readonly from: string; readonly until: string }>();
  const { from, until } = days ?? monthOf(today);
  const isWhole = isDay(from) && isDay(until) && from <= until;
  if (!may('programme', 'view')) return null;
  return (
    <section className="set-up-totals" aria-label="Hours, litres and recharge">
      <h2>Hours, litres and recharge</h2>
      <div className="set-up-inline">
        <Entry label="From" value={from} onChange={(typed) => setDays({ from: typed, until })} />
        <Entry
          label="Until"
          value={until}
          onChange={(typed) => setDays({ from, until: typed })}
          fault={isWhole ? undefined : 'Write both days as 2027-06-30, the first before the last.'}
        />
      </div>
      {isWhole && <Between from={from} until={until} />}
    </section>
  );
};

const Between = ({ from, until }: { readonly from: string; readonly until: string }) => (
  <Picture read={useRead(`/api/programme-totals?from=${from}&until=${until}`, totalsSchema)}>
    {({ items }) => <Totals items={items} />}
  </Picture>
);

const Totals = ({ items }: { readonly items: readonly Total[] }) => {
  const currency = useCurrency();
  const unknown = items.filter(({ litresWithoutCost }) => litresWithoutCost > 0);
  return (
    <>
      <Lines<Total>
        caption="Planned by the helicopter tasks; flown by the litres drawn"
        rows={items}
        keyOf={({ programme }) => programme}
        columns={[
          { head: 'Programme', heads: true, cell: ({ programme, name }) => `${programme} ${name}` },
          { head: 'Planned', figures: true, cell: (total) => inWords(total.plannedHours, 'h', 1) },
          { head: 'Planned', figures: true, cell: (total) => inWords(total.plannedLitres, 'L') },
          { head: 'Flown', figures: true, cell: (total) => inWords(total.flownHours, 'h', 1) },
          { head: 'Drawn', figures: true, cell: (total) => inWords(total.drawnLitres, 'L', decimals(total)) },
          { head: 'Rule', cell: ({ recharge }) => ruleWords(recharge, currency) },
          {
            head: 'Recharge',
            figures: true,
            cell: ({ charged }) => `${figure(charged / 100, 2)} ${currency}`,
          },
        ]}
      />
      <p className="read">
        At delivered cost: fuel, flight and handling of the flight that brought the drum, as closed, else as
        planned; slinging is not in it. Flown hours follow from the litres, at what each helicopter burns.
      </p>
      {unknown.map(({ programme, litresWithoutCost }) => (
        <MessageLine
          key={programme}
          kind="note"
          what={`${programme}: ${inWords(litresWithoutCost, 'L')} have no known cost and are not in its recharge`}
          why="No flight of this program brought their drums."
        />
      ))}
    </>
  );
};

const ruleWords = (recharge: Total['recharge'], currency: string): string => {
  if (recharge.kind === 'not recharged') return 'not recharged';
  if (recharge.kind === 'fixed price') return `${figure(recharge.centsPerLitre / 100, 2)} ${currency}/L`;
  return recharge.marginPercent === 0 ? 'at cost' : `cost + ${figure(recharge.marginPercent)} %`;
};

/** To the litre, unless somebody has written less than one. */
const decimals = ({ drawnLitres }: Total): number => (Number.isInteger(drawnLitres) ? 0 : 1);

const isDay = (typed: string): boolean => /^\d{4}-\d\d-\d\d$/.test(typed) && !Number.isNaN(Date.parse(typed));

const monthOf = (today: string): { readonly from: string; readonly until: string } => {
  const [year, month] = today.split('-').map(Number);
  const last = new Date(Date.UTC(year!, month, 0)).getUTCDate();
  return { from: `${today.slice(0, 7)}-01`, until: `${today.slice(0, 7)}-${last}` };
};
