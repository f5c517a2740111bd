import type { LedgerState } from './ledger-state.js';
import { lookAlikeDraws } from './look-alikes.js';
import type { Corrected, Drawn, Movement } from './movement.js';
import { raise } from './raise.js';
import type { Raised } from './raised.js';
import { standingCorrections } from './reversals.js';

/** Everything that the movements leave to be looked at, by id. Capacities and counts have questions of their own. */
export function raisedIn(state: LedgerState): readonly Raised[] {
  const all = [
    ...[...state.drums.values()].flatMap(({ raised }) => raised),
    ...[...state.batches.values()].flatMap(({ raised }) => raised),
    ...lookAlikeDraws(standingDraws(state)),
    ...blindCorrections(state),
  ];
  return [...new Map(all.map((each) => [each.id, each])).values()].sort((a, b) => (a.id < b.id ? -1 : 1));
}

function standingDraws(state: LedgerState): Drawn[] {
  return [...state.movements.values()].filter(
    (movement): movement is Drawn =>
      movement.kind === 'drawn' && standingCorrections(state, movement.id).length === 0,
  );
}

function blindCorrections({ movements }: LedgerState): Raised[] {
  return [...movements.values()]
    .filter((movement: Movement): movement is Corrected => movement.kind === 'corrected')
    .filter(({ corrects }) => !movements.has(corrects))
    .map((correction) =>
      raise('corrects an unknown movement', [correction], {
        what: `${correction.by} corrects ${correction.corrects}, which has not arrived.`,
        whatNext: 'Wait for the phone that wrote it; it counts as corrected when it comes.',
      }),
    );
}
