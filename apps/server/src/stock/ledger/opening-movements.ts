import { randomUUID } from 'node:crypto';
import type { Scenario } from '@drumline/planning';
import type { Hold } from '@drumline/stock';
import {
  type Counted,
  type Held,
  type HoldOf,
  type Movement,
  millilitresOf,
  type Received,
} from '@drumline/stock';
import type { IsoInstant } from '@drumline/units';

const dayMs = 86_400_000;

/**
 * The events that a scenario's stock opens a ledger with: every drum received, then what was held and counted. What it has of a
 * later moment is entered at that moment, not before it was written.
 */
export const openingMovements = (scenario: Scenario, receivedAt: IsoInstant): readonly Movement[] => {
  const written = (happenedAt: IsoInstant, by: string) => ({
    id: randomUUID(),
    happenedAt,
    writtenAt: happenedAt,
    receivedAt: happenedAt > receivedAt ? happenedAt : receivedAt,
    // What a territory brings with it was on no crew's paper.
    means: 'screen' as const,
    by,
    witnesses: [],
  });
  const opening = openingMoment(scenario);
  const received = scenario.drums.map(
    (drum): Received => ({
      ...written(opening, 'opening of the ledger'),
      kind: 'received',
      drum: drum.number,
      place: drum.place,
      batch: drum.batch,
      content: drum.content,
      millilitres: millilitresOf(drum.litres),
      ...(drum.openedOn === undefined ? {} : { openedAt: `${drum.openedOn}T00:00Z` }),
      tareKg: drum.tareKg,
      grossKg: drum.grossKg,
    }),
  );
  const hold = (of: HoldOf, { reason, by, at }: Hold): Held => ({
    ...written(at, by),
    kind: 'held',
    of,
    reason,
  });
  const held = [
    ...scenario.drums.flatMap((drum) => (drum.held ? [hold({ drum: drum.number }, drum.held)] : [])),
    ...scenario.batches.flatMap((batch) => (batch.held ? [hold({ batch: batch.id }, batch.held)] : [])),
  ];
  const counted = scenario.counts.map(
    ({ at, by, place, litres, openDrums, seenFrom }): Counted => ({
      ...written(at, by),
      kind: 'counted',
      place,
      method: 'dip',
      seenFrom,
      millilitres: millilitresOf(litres),
      sealedDrums: 0,
      openDrums,
      emptyDrums: 0,
    }),
  );
  return [...received, ...held, ...counted];
};

/** Before anything that the scenario says of its drums: a count is compared with the book at its own time. */
const openingMoment = ({ asOf, counts, drums, batches }: Scenario): IsoInstant => {
  const moments = [
    asOf,
    ...counts.map(({ at }) => at),
    ...[...drums, ...batches].flatMap(({ held }) => (held ? [held.at] : [])),
  ].map((moment) => Date.parse(moment));
  return `${new Date(Math.min(...moments) - dayMs).toISOString().slice(0, 16)}Z`;
};
