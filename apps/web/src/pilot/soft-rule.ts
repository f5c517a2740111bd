import type { PhoneFlight } from '@drumline/contract';
import type { SurfaceState } from '@drumline/network';
import { asPlanned } from './aboard.js';
import type { LoadedDraft } from './loaded-steps.js';
import type { OpenedFlight } from './opened-flight.js';

/** A stop to which more goes than its surface takes. */
export interface TooMany {
  readonly place: string;
  readonly aboard: number;
  /** Null: nothing may go there. */
  readonly mayGo: number | null;
  readonly words: string;
}

/** By the surface of each stop as it counts now; unknown counts as soft. Empty: the load may be marked Loaded. */
export const tooManyFor = (
  { stops }: PhoneFlight,
  surfaceOf: (place: string) => SurfaceState | null,
): readonly TooMany[] =>
  stops.flatMap(({ place, drums, drumsIfSoft }): readonly TooMany[] => {
    const surface = surfaceOf(place);
    const aboard = drums.length;
    if (surface === 'closed')
      return [{ place, aboard, mayGo: null, words: `${place} is reported closed: do not go.` }];
    if (surface !== null && surface !== 'soft') return [];
    const why = surface === null ? `No report of ${place} is fresh, so soft counts` : `${place} is soft`;
    if (drumsIfSoft === null) return [{ place, aboard, mayGo: null, words: `${why}: do not go.` }];
    if (aboard <= drumsIfSoft) return [];
    const words = `${why}: ${drumsIfSoft} drums may go, ${aboard} are aboard.`;
    return [{ place, aboard, mayGo: drumsIfSoft, words }];
  });

/** The drums that stay behind, and the draft without them: to be read and added up again. Null: nobody has worked it out. */
export const withoutTooMany = (
  flight: OpenedFlight,
  draft: LoadedDraft,
  tooMany: readonly TooMany[],
): { readonly off: readonly string[]; readonly draft: LoadedDraft } | null => {
  if (flight.request === null || tooMany.length !== 1) return null;
  const [{ place, mayGo }] = tooMany as readonly [TooMany];
  const ifSoft = flight.sheet?.legs[flight.route.indexOf(place, 1) - 1]?.goBack.ifSoft ?? null;
  if (mayGo === null || ifSoft === null || ifSoft.take === null || ifSoft.take > mayGo) return null;
  const stands = new Map(ifSoft.standing.map(({ number, position }) => [number, position]));
  const aboard = (draft.aboard.length > 0 ? draft.aboard : asPlanned(flight.request))
    .filter(({ number }) => !ifSoft.leave.includes(number))
    .map((drum) => ({ ...drum, position: stands.get(drum.number) ?? drum.position }));
  const read = draft.read.filter((number) => aboard.some((drum) => drum.number === number));
  const again = { ...draft, step: 'positions' as const, read, aboard, byHand: '', byAircraft: '' };
  return { off: ifSoft.leave, draft: again };
};
