import { pick, type Random } from '../../random.js';
import { Recreate } from './recreate.js';
import { refill } from './refill.js';
import { nearStores, type Ruin, ruins } from './ruin.js';
import type { SearchState } from './search-state.js';

// Measured on networks of 8 to 150 stores: smaller holes are mended faster and as well.
const MOST_REMOVED = 5;
const STORES_TOUCHED = 8;

/** Tears a few trips out of the plan and fills the hole another way; ways that helped are chosen more often. */
export class RuinAndRecreate {
  private readonly recreate: Recreate;
  private readonly near: readonly (readonly number[])[];
  private readonly weights = ruins.map(() => 1);
  private lastRuin = 0;

  constructor(
    private readonly state: SearchState,
    private readonly random: Random,
  ) {
    this.recreate = new Recreate(state, random);
    this.near = nearStores(state, 12);
  }

  /** Fills up what pays at once, without tearing anything out. */
  complete(): void {
    const stores = [...this.state.slotsAt.keys()];
    refill(this.state, stores);
    this.recreate.run(stores, { hoursPower: 1, noise: 0, blink: 0, packWorth: 0 });
    refill(this.state, stores);
  }

  /** One change of the plan, open in the state's journal: the caller commits or rolls back. */
  step(): void {
    const { state, random } = this;
    const stores = this.tear();
    emptySome(state, stores, random);
    if (random() < 0.3) refill(state, stores);
    this.recreate.run(stores, {
      hoursPower: random() < 0.5 ? 1 : random(),
      noise: random() < 0.1 ? 3 : random() < 0.5 ? 0.1 : 0.4,
      blink: random() < 0.5 ? 0 : 0.3,
      packWorth: random() < 0.1 ? (random() * state.money) / (1 + state.active.length) : 0,
    });
    refill(state, stores);
  }

  /** Says how the last step went. */
  learn(better: boolean): void {
    const weight = this.weights[this.lastRuin] + (better ? 0.05 : 0);
    this.weights[this.lastRuin] = 0.2 + (weight - 0.2) * 0.999;
  }

  /** Removes trips; returns their stores and some near them, among which new trips are looked for. */
  private tear(): number[] {
    const { state, random, near } = this;
    const touched = new Set<number>();
    for (const slot of this.chooseTrips()) {
      for (let i = 0; i < state.stopCount(slot); i++) touched.add(state.stopOf(slot, i));
      state.remove(slot);
    }
    if (touched.size === 0 || random() < 0.1) touched.add(pick(random, near.length));
    const around = near[[...touched][pick(random, touched.size)]];
    while (touched.size < STORES_TOUCHED && random() < 0.9) touched.add(around[pick(random, around.length)]);
    return [...touched];
  }

  private chooseTrips(): number[] {
    const { state, random, near } = this;
    this.lastRuin = choose(this.weights, random());
    const ruin: Ruin = ruins[this.lastRuin];
    return state.active.length > 0 ? ruin(state, 1 + pick(random, MOST_REMOVED), random, near) : [];
  }
}

/** Takes packs back from booked routes and, now and then, from all trips to one store. */
function emptySome(state: SearchState, stores: readonly number[], random: Random): void {
  const emptied = random() < 0.15 ? stores[pick(random, stores.length)] : -1;
  const withBooked = random() < 0.5;
  for (const store of stores) {
    for (const slot of state.slotsAt[store]) {
      if (store !== emptied && !(withBooked && state.vehicle[slot] < 0)) continue;
      for (let i = 0; i < state.stopCount(slot); i++) {
        if (state.stopOf(slot, i) === store) state.setDrop(slot, i, 0);
      }
    }
  }
}

function choose(weights: readonly number[], random: number): number {
  let left = random * weights.reduce((sum, one) => sum + one, 0);
  for (let i = 0; i < weights.length; i++) {
    left -= weights[i];
    if (left <= 0) return i;
  }
  return weights.length - 1;
}
