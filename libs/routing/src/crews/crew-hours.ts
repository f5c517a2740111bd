import type { Problem } from '../problem.js';

const TOLERANCE = 1e-9;

/** A trip or booked route that needs somebody. */
export interface Duty {
  readonly day: number;
  readonly group: number;
  readonly blockHours: number;
  readonly dutyHours: number;
}

/** Hours that each crew works on each day, and who may still take on a duty. */
export class CrewHours {
  private readonly block: Float64Array;
  private readonly duty: Float64Array;
  private readonly serves: readonly ReadonlySet<number>[];
  private readonly crews: Problem['crews'];
  private readonly days: number;

  constructor(problem: Problem) {
    this.crews = problem.crews;
    this.days = problem.days;
    this.block = new Float64Array(problem.crews.length * problem.days);
    this.duty = new Float64Array(problem.crews.length * problem.days);
    this.serves = problem.crews.flatMap((crew) => crew.groupsByDay.map((groups) => new Set(groups)));
  }

  /** Adds the duty to the crew's hours (`sign` -1: takes it off). */
  work(crew: number, duty: Duty, sign: 1 | -1): void {
    const cell = crew * this.days + duty.day;
    this.block[cell] += sign * duty.blockHours;
    this.duty[cell] += sign * duty.dutyHours;
  }

  fits(crew: number, { day, group, blockHours, dutyHours }: Duty): boolean {
    const cell = crew * this.days + day;
    const limits = this.crews[crew];
    return (
      this.serves[cell].has(group) &&
      this.block[cell] + blockHours <= limits.blockHours[day] + TOLERANCE &&
      this.duty[cell] + dutyHours <= limits.dutyHours[day] + TOLERANCE &&
      this.rollingLeft(crew, day) >= blockHours - TOLERANCE
    );
  }

  /** First crew that can take the duty as it is; -1: none. */
  find(duty: Duty): number {
    return this.crews.findIndex((_, crew) => this.fits(crew, duty));
  }

  /** Crews for all the duties of one day, by exhaustive matching; null: there is no such matching. */
  match(duties: readonly Duty[]): number[] | null {
    const crews = new Array<number>(duties.length).fill(-1);
    const choices = duties.map((duty) => this.crews.filter((_, crew) => this.fits(crew, duty)).length);
    const order = [...duties.keys()].sort((a, b) => choices[a] - choices[b] || a - b);
    const place = (at: number): boolean => {
      if (at === order.length) return true;
      const duty = duties[order[at]];
      for (let crew = 0; crew < this.crews.length; crew++) {
        if (!this.fits(crew, duty)) continue;
        crews[order[at]] = crew;
        this.work(crew, duty, 1);
        const placed = place(at + 1);
        this.work(crew, duty, -1);
        if (placed) return true;
      }
      return false;
    };
    return place(0) ? crews : null;
  }

  /** Least block hours left in any run of days that holds the day. */
  private rollingLeft(crew: number, day: number): number {
    const { rolling } = this.crews[crew];
    if (!rolling) return Number.POSITIVE_INFINITY;
    let most = 0;
    for (let first = day - rolling.days + 1; first <= day; first++) {
      let sum = 0;
      for (let at = first; at < first + rolling.days && at < this.days; at++) {
        sum += at >= 0 ? this.block[crew * this.days + at] : (rolling.flownBefore.at(at) ?? 0);
      }
      most = Math.max(most, sum);
    }
    return rolling.blockHours - most;
  }
}
