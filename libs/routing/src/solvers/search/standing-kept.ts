import type { FlatProblem } from './flat-problem.js';

/** Which visits of the standing plan are kept: each asks for a trip of its own, same vehicle, day and stops. */
export class StandingKept {
  /** Standing visits that nothing keeps yet. */
  dropped: number;
  private readonly wanted = new Map<number, number>();
  private readonly flown = new Map<number, number>();

  constructor(private readonly flat: FlatProblem) {
    const { problem } = flat;
    const sequenceOf = new Map(problem.routes.map((route, r) => [route.stops.join(), flat.sequence[r]]));
    for (const visit of problem.standing) {
      const sequence = sequenceOf.get(visit.stops.join());
      if (sequence === undefined) continue;
      const key = this.key(sequence, visit.vehicle, visit.day);
      this.wanted.set(key, (this.wanted.get(key) ?? 0) + 1);
    }
    this.dropped = problem.standing.length;
  }

  /** Is there a standing visit like this that no trip keeps? */
  wants(route: number, vehicle: number, day: number): boolean {
    if (this.wanted.size === 0) return false;
    const key = this.key(this.flat.sequence[route], vehicle, day);
    return (this.wanted.get(key) ?? 0) > (this.flown.get(key) ?? 0);
  }

  /** Adds a trip (`sign` -1: takes it out); returns the change in money (cents). */
  count(route: number, vehicle: number, day: number, sign: 1 | -1): number {
    if (this.wanted.size === 0) return 0;
    const key = this.key(this.flat.sequence[route], vehicle, day);
    const wanted = this.wanted.get(key);
    if (wanted === undefined) return 0;
    const before = this.flown.get(key) ?? 0;
    this.flown.set(key, before + sign);
    const kept = Math.min(wanted, before + sign) - Math.min(wanted, before);
    this.dropped -= kept;
    return -kept * this.flat.problem.changePrice;
  }

  private key(sequence: number, vehicle: number, day: number): number {
    const { vehicles, days } = this.flat.problem;
    return (sequence * vehicles.length + vehicle) * days + day;
  }
}
