import { checkLoad, type DrumAsLoaded, makeLoadSheet } from '@drumline/loading';
import type { OpenedFlight } from './opened-flight.js';

/** What the crew can do with a load that does not hold; each way is worked out, and holds. */
export interface WaysToHold {
  /** "move two drums from row 3 to row 1"; null: no standing of these drums holds. */
  readonly move: { readonly words: string; readonly aboard: readonly DrumAsLoaded[] } | null;
  /** Sets of drums without which the rest holds where it stands; empty: none was found. */
  readonly leave: readonly (readonly DrumAsLoaded[])[];
}

/** By the same program as the sheet, for a flight with its drums as loaded. Fetched by itself: few loads do not hold. */
export const waysToHold = (flight: OpenedFlight, aboard: readonly DrumAsLoaded[]): WaysToHold => {
  const { mend } = checkLoad(flight.request!.load);
  const places = new Map(mend?.moves.map(({ drum, to }) => [drum, to]));
  const moved = aboard.map((drum) => ({ ...drum, position: places.get(drum.number) ?? drum.position }));
  const isMended = places.size > 0 && holds(flight, moved);
  return {
    move: isMended ? { words: mend!.text, aboard: moved } : null,
    leave: fewestToLeave(flight, aboard),
  };
};

/** Of single drums two at most, one that was not planned first; where none will do alone, the heaviest one after the other. */
const fewestToLeave = (flight: OpenedFlight, aboard: readonly DrumAsLoaded[]): WaysToHold['leave'] => {
  const without = (off: readonly DrumAsLoaded[]) => aboard.filter((drum) => !off.includes(drum));
  const isOther = ({ planned, number }: DrumAsLoaded): number => (planned === number ? 0 : 1);
  const likeliest = [...aboard].sort((one, other) => isOther(other) - isOther(one));
  const single = likeliest.filter((drum) => holds(flight, without([drum])));
  if (single.length > 0) return single.slice(0, 2).map((drum) => [drum]);
  const heaviest = [...aboard].sort((one, other) => other.grossKg - one.grossKg);
  const sets = heaviest.slice(1, -1).map((_, at) => heaviest.slice(0, at + 2));
  const least = sets.find((off) => holds(flight, without(off)));
  return least === undefined ? [] : [least];
};

const holds = ({ request }: OpenedFlight, aboard: readonly DrumAsLoaded[]): boolean => {
  const places = new Map(aboard.map(({ number, position }) => [number, position]));
  const drums = request!.load.drums.flatMap((drum) => {
    const position = places.get(drum.number);
    return position === undefined ? [] : [{ ...drum, position }];
  });
  return drums.length > 0 && makeLoadSheet({ ...request!, load: { ...request!.load, drums } }).holds;
};
