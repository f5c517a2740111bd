import type { SearchState } from './search-state.js';

const WORTH = 1e-6;

/** Betters the drops of the trips and booked routes through the stores, a pack at a time, until nothing helps. */
export function refill(state: SearchState, stores: readonly number[]): void {
  const slots = new Set<number>();
  for (const store of stores) for (const slot of state.slotsAt[store]) slots.add(slot);
  let better = true;
  for (let round = 0; better && round < 4; round++) {
    better = false;
    for (const slot of slots) while (improve(state, slot)) better = true;
  }
}

/** The best single change of the slot's drops: a pack more, a pack less, or a pack moved; false: none pays. */
function improve(state: SearchState, slot: number): boolean {
  const { flat, levels } = state;
  levels.refresh();
  const count = state.stopCount(slot);
  const day = state.day[slot];
  const packCost = flat.packCost[state.route[slot]];
  const row = flat.maxPacks + 1;
  const drops = (i: number) => state.drops[slot * flat.maxStops + i];
  let bestValue = WORTH;
  let from = -1;
  let to = -1;

  for (let less = -1; less < count; less++) {
    if (less >= 0 && drops(less) === 0) continue;
    const lost = less < 0 ? -packCost : levels.gainOfOneLess(state.stopOf(slot, less), day);
    if (less >= 0 && lost + packCost > bestValue) {
      bestValue = lost + packCost;
      from = less;
      to = -1;
    }
    for (let more = 0; more < count; more++) {
      if (more === less) continue;
      const gain = row > 1 ? levels.gains[(state.stopOf(slot, more) * flat.days + day) * row + 1] : 0;
      if (gain + lost <= bestValue || !hasRoom(state, slot, less, more)) continue;
      bestValue = gain + lost;
      from = less;
      to = more;
    }
  }
  if (from < 0 && to < 0) return false;
  if (from >= 0) state.setDrop(slot, from, drops(from) - 1);
  if (to >= 0) state.setDrop(slot, to, drops(to) + 1);
  return true;
}

/** May the slot set down one pack more at a stop, with one less at `less` (-1: nowhere)? */
function hasRoom(state: SearchState, slot: number, less: number, more: number): boolean {
  const { flat } = state;
  if (less < 0 && state.supply.packsFor(flat.source[state.route[slot]], state.day[slot], 0) < 1) return false;
  const legs = flat.legsAt[state.conditionOf(slot)];
  let aboard = 0;
  for (let leg = state.stopCount(slot) - 1; leg >= 0; leg--) {
    aboard += state.drops[slot * flat.maxStops + leg];
    if (leg === more) aboard++;
    if (leg === less) aboard--;
    if (leg <= more && aboard > flat.legPacks[legs + leg]) return false;
  }
  return true;
}
