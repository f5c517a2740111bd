import type { PhoneFlight } from '@drumline/contract';
import { doNotGo, type ForStop } from '@drumline/loading';
import type { SurfaceState } from '@drumline/network';
import type { OpenedFlight } from '../day/opened-flight.js';
import { asPlanned } from '../loaded/aboard.js';
import { begunAnew, type LoadedDraft } from '../loaded/loaded-steps.js';

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
  flight: PhoneFlight,
  surfaceOf: (place: string) => SurfaceState | null,
): readonly TooMany[] =>
  flight.stops.flatMap((stop): readonly TooMany[] => {
    const { place, drums } = stop;
    const surface = surfaceOf(place);
    const aboard = drums.length;
    const others = beside(flight, place);
    const stay = `${doNotGo(place, others)}.`;
    if (surface === 'closed')
      return [{ place, aboard, mayGo: null, words: `${place} is reported closed: ${stay}` }];
    if (surface !== null && surface !== 'soft') return [];
    const why = surface === null ? `No report of ${place} is fresh, so soft counts` : `${place} is soft`;
    const mayGo = fewestIfSoft(flight, stop);
    if (mayGo === null) return [{ place, aboard, mayGo, words: `${why}: ${stay}` }];
    if (aboard <= mayGo) return [];
    return [{ place, aboard, mayGo, words: `${why}: ${mayGoWords({ place, aboard, mayGo }, others)}` }];
  });

const beside = ({ stops }: PhoneFlight, place: string): readonly ForStop[] =>
  stops
    .filter((stop) => stop.place !== place && stop.drums.length > 0)
    .map((stop) => ({ place: stop.place, drums: stop.drums.length }));

/** On a flight with other stops it is said which drums are meant: those go on as planned. */
const mayGoWords = (
  { place, aboard, mayGo }: { place: string; aboard: number; mayGo: number },
  others: readonly ForStop[],
): string => {
  const may = `${mayGo === 0 ? 'no' : mayGo} drum${mayGo > 1 ? 's' : ''}`;
  const are = `${aboard} ${aboard === 1 ? 'is' : 'are'} aboard`;
  if (others.length === 0) return `${may} may go, ${are}.`;
  const onward = others.map(({ place: other, drums }) => `${drums} for ${other}`).join(', ');
  return `${may} for ${place} may go, ${are} for it. What is for other stops may go: ${onward}.`;
};

/** By the plan and by the sheet: drums that weigh more than was planned are fewer. Null: none may go. */
const fewestIfSoft = (
  flight: PhoneFlight,
  { place, drumsIfSoft }: PhoneFlight['stops'][number],
): number | null => {
  const bySheet = ifSoftAt(flight, place);
  const take = bySheet === null ? drumsIfSoft : bySheet.take;
  return drumsIfSoft === null || take === null ? null : Math.min(drumsIfSoft, take);
};

const ifSoftAt = ({ sheet, route }: PhoneFlight, place: string) =>
  sheet?.legs[route.indexOf(place, 1) - 1]?.goBack.ifSoft ?? null;

/** The drums that stay behind, and the draft without them: to be read and added up again. Null: nobody has worked it out. */
export const withoutTooMany = (
  flight: OpenedFlight,
  draft: LoadedDraft,
  tooMany: readonly TooMany[],
): { readonly off: readonly string[]; readonly draft: LoadedDraft } | null => {
  if (flight.request === null || tooMany.length !== 1) return null;
  const [{ place, mayGo }] = tooMany as readonly [TooMany];
  const ifSoft = ifSoftAt(flight, place);
  if (mayGo === null || ifSoft === null || ifSoft.take === null || ifSoft.take > mayGo) return null;
  const stands = new Map(ifSoft.standing.map(({ number, position }) => [number, position]));
  const aboard = (draft.aboard.length > 0 ? draft.aboard : asPlanned(flight.request))
    .filter(({ number }) => !ifSoft.leave.includes(number))
    .map((drum) => ({ ...drum, position: stands.get(drum.number) ?? drum.position }));
  const read = draft.read.filter((number) => aboard.some((drum) => drum.number === number));
  const again = { ...draft, ...begunAnew, read, aboard };
  return { off: ifSoft.leave, draft: again };
};
