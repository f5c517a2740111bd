import { randomUUID } from 'node:crypto';
import type { Settings } from '@drumline/contract';
import type { Scenario } from '@drumline/planning';
import type { Thing } from './assemble.js';
import { kinds } from './kinds.js';

/** What the clock of a territory goes by once it is brought in: the document's own moment, as in a demo or a drill, or the time of day. */
export type ClockBy = 'document' | 'time of day';

/** What people keep of a scenario, thing by thing; the rest of the document is stock, reports and flights. */
export const thingsOf = (scenario: Scenario, clock: ClockBy): readonly Thing[] => {
  const { title, note, timeZone, days, offeredDays, currency, noFlyingDays, asOf } = scenario;
  const settings: Settings = {
    title,
    ...(note === undefined ? {} : { note }),
    timeZone,
    ...(clock === 'document' ? { clockStartsAt: asOf } : {}),
    days,
    offeredDays,
    currency,
    noFlyingDays: [...noFlyingDays],
  };
  // A hold is an event of the ledger, where it can be released.
  const batches = scenario.batches.map(({ held: _, ...batch }) => batch);
  const kept = { ...scenario, batches };
  return [
    { kind: 'settings', id: 'current', data: settings },
    { kind: 'policy', id: 'current', data: scenario.policy },
    ...(scenario.dangerousGoods === undefined
      ? []
      : [{ kind: 'dangerous-goods', id: 'current', data: scenario.dangerousGoods }]),
    ...kinds.flatMap(({ name, list, idOf }) =>
      list === null
        ? []
        : (kept[list] ?? []).map((data) => ({
            kind: name,
            id: idOf === null ? randomUUID() : idOf(data),
            data,
          })),
    ),
  ];
};
