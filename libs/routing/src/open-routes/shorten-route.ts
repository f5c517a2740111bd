import type { OpenState } from './open-state.js';

/** Less than this (cents) is no gain, only rounding of sums. */
const GAIN = 1e-6;

/** 2-opt and or-opt on one route until neither shortens it; travel may cost differently both ways. */
export function shortenRoute(state: OpenState, slot: number): void {
  while (reverseStretch(state, slot) || moveStretch(state, slot)) {}
}

/** The first stretch whose reversal shortens the route is reversed (2-opt). */
function reverseStretch(state: OpenState, slot: number): boolean {
  const { travel, places, sites } = state.flat;
  const count = state.stopCount[slot];
  for (let from = 0; from < count - 1; from++) {
    const before = state.placeAt(slot, from - 1);
    const start = state.placeAt(slot, from);
    let forward = 0;
    let backward = 0;
    for (let to = from + 1; to < count; to++) {
      const end = state.placeAt(slot, to);
      const after = state.placeAt(slot, to + 1);
      const previous = state.placeAt(slot, to - 1);
      forward += travel[previous * places + end];
      backward += travel[end * places + previous];
      const old = travel[before * places + start] + forward + travel[end * places + after];
      const turned = travel[before * places + end] + backward + travel[start * places + after];
      if (turned >= old - GAIN) continue;
      state.stops.subarray(slot * sites + from, slot * sites + to + 1).reverse();
      state.money += turned - old;
      return true;
    }
  }
  return false;
}

/** The first stretch of one to three stops that is better off elsewhere in the route is moved (or-opt). */
function moveStretch(state: OpenState, slot: number): boolean {
  const count = state.stopCount[slot];
  for (let length = 1; length <= Math.min(3, count - 1); length++)
    for (let from = 0; from + length <= count; from++)
      for (let before = 0; before <= count; before++) {
        if (before >= from && before <= from + length) continue;
        const gain = gainOfMove(state, slot, from, length, before);
        if (gain <= GAIN) continue;
        const { sites } = state.flat;
        const stops = [...state.stops.subarray(slot * sites, slot * sites + count)];
        const moved = stops.splice(from, length);
        stops.splice(before > from ? before - length : before, 0, ...moved);
        state.stops.set(stops, slot * sites);
        state.money -= gain;
        return true;
      }
  return false;
}

/** Cents saved by moving `length` stops from `from` to stand before the stop at `before`. */
function gainOfMove(state: OpenState, slot: number, from: number, length: number, before: number): number {
  const { travel, places } = state.flat;
  const left = state.placeAt(slot, from - 1);
  const first = state.placeAt(slot, from);
  const last = state.placeAt(slot, from + length - 1);
  const right = state.placeAt(slot, from + length);
  const newLeft = state.placeAt(slot, before - 1);
  const newRight = state.placeAt(slot, before);
  const old =
    travel[left * places + first] + travel[last * places + right] + travel[newLeft * places + newRight];
  const moved =
    travel[left * places + right] + travel[newLeft * places + first] + travel[last * places + newRight];
  return old - moved;
}
