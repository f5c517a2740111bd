import type { Counted, Movement } from '@drumline/stock';
import { z } from 'zod';
import { movementBodySchema } from '../../http/movement-schema.js';
import { instant } from '../field.js';

/** What the server adds to what was sent. */
const kept = { id: z.uuid(), by: z.string(), receivedAt: instant };

const [
  received,
  filled,
  loaded,
  leftAt,
  broughtHome,
  opened,
  drawn,
  dipped,
  counted,
  held,
  released,
  ...others
] = movementBodySchema.options;
const [
  condemned,
  emptied,
  slung,
  weighed,
  retestPassed,
  transferred,
  spilled,
  lost,
  found,
  joined,
  corrected,
] = others;

const countedInLedger = counted.extend(kept);

// Told by the type of the ledger: 22 kinds, spelled out by every answer that has one in it, are slow to check.
export const countedAnswer: z.ZodType<Counted> = countedInLedger;

/** A movement as the ledger has it. */
export const movementAnswer: z.ZodType<Movement> = z.discriminatedUnion('kind', [
  received.extend(kept),
  filled.extend(kept),
  loaded.extend(kept),
  leftAt.extend(kept),
  broughtHome.extend(kept),
  opened.extend(kept),
  drawn.extend(kept),
  dipped.extend(kept),
  countedInLedger,
  held.extend(kept),
  released.extend({ ...kept, second: z.string().describe('The second person') }),
  condemned.extend(kept),
  emptied.extend(kept),
  slung.extend(kept),
  weighed.extend(kept),
  retestPassed.extend(kept),
  transferred.extend(kept),
  spilled.extend(kept),
  lost.extend(kept),
  found.extend(kept),
  joined.extend(kept),
  corrected.extend(kept),
]);
