// Temperatures, as shares of the travel cost of an average trip. From a good plan a hot search only undoes it (docs/model.md).
const FROM_FAR = 0.1;
const FROM_NEAR = 0.02;
const COLD = 0.003;

/** How hot to begin for each share by which the plan is above the bound: a start farther off has to be left behind. */
const HEAT_PER_GAP = 3;

/** Rounds for each store in which an anneal cools down; while the budget lasts, it then begins again from the best plan. */
const ROUNDS_PER_STORE = 1500;

/** How much of a budget is used (share), and in how many rounds. */
export interface Used {
  readonly used: number;
  readonly iterations: number;
}

/** The temperature of a search over its budget: anneals one after the other, each cold at its end, the last one when the budget is used. */
export class Anneal {
  private hot = FROM_FAR;
  private began: Used = { used: 0, iterations: 0 };
  private readonly rounds: number;

  constructor(stores: number) {
    this.rounds = ROUNDS_PER_STORE * stores;
  }

  /** Begins again, from a plan that is good already; `gap`: the share by which it is above the bound, where that is known. */
  again({ used, iterations }: Used, gap = 0): void {
    this.hot = Math.min(FROM_FAR, Math.max(FROM_NEAR, HEAT_PER_GAP * gap));
    this.began = { used, iterations };
  }

  /** Has the present one cooled down, with time for another? */
  isOver(now: Used): boolean {
    return now.used < 1 && now.used >= this.end(now);
  }

  /** Share of the travel cost of an average trip. */
  temperature(now: Used): number {
    const { used } = this.began;
    return this.hot * (COLD / this.hot) ** ((now.used - used) / (this.end(now) - used));
  }

  /** Share of the budget at which the present anneal is cold; less than half a one after it is no anneal of its own. */
  private end({ used, iterations }: Used): number {
    const rounds = iterations - this.began.iterations;
    if (rounds < 100) return 1;
    const share = (this.rounds * (used - this.began.used)) / rounds;
    const end = this.began.used + share;
    return 1 - end > share / 2 ? end : 1;
  }
}
