import type { Problem } from '../../problem.js';

const TOLERANCE = 1e-9;

/** Block and duty hours that each vehicle still has on each day, rolling limits counted. */
export class VehicleHours {
  /** At vehicle x days + day. */
  readonly freeBlock: Float64Array;
  readonly freeDuty: Float64Array;
  private readonly dayDuty: Float64Array;
  private readonly duty: Float64Array;
  private readonly days: number;
  private readonly vehicles: Problem['vehicles'];

  constructor(problem: Problem) {
    this.days = problem.days;
    this.vehicles = problem.vehicles;
    this.freeBlock = Float64Array.from(problem.vehicles.flatMap((vehicle) => vehicle.blockHours));
    this.dayDuty = Float64Array.from(problem.vehicles.flatMap((vehicle) => vehicle.dutyHours));
    this.freeDuty = new Float64Array(this.dayDuty.length);
    this.duty = new Float64Array(this.dayDuty.length);
    for (let vehicle = 0; vehicle < problem.vehicles.length; vehicle++) this.renew(vehicle, 0);
  }

  fits(vehicle: number, day: number, block: number, duty: number): boolean {
    const cell = vehicle * this.days + day;
    return block <= this.freeBlock[cell] + TOLERANCE && duty <= this.freeDuty[cell] + TOLERANCE;
  }

  /** Uses hours (negative: gives them back). */
  use(vehicle: number, day: number, block: number, duty: number): void {
    const cell = vehicle * this.days + day;
    this.freeBlock[cell] -= block;
    this.duty[cell] += duty;
    this.renew(vehicle, day);
  }

  private renew(vehicle: number, changedDay: number): void {
    const { days, duty, dayDuty, freeDuty } = this;
    const { rolling } = this.vehicles[vehicle];
    const base = vehicle * days;
    if (!rolling) {
      for (let day = changedDay; day < days; day++)
        freeDuty[base + day] = dayDuty[base + day] - duty[base + day];
      return;
    }
    for (let day = 0; day < days; day++) freeDuty[base + day] = dayDuty[base + day] - duty[base + day];
    let sum = 0;
    for (let last = 0; last < days; last++) {
      const first = last - rolling.days + 1;
      sum += duty[base + last];
      if (first > 0) sum -= duty[base + first - 1];
      if (first < 0 && last < days - 1) continue;
      const left = rolling.dutyHours - sum;
      for (let day = Math.max(0, first); day <= last; day++) {
        if (left < freeDuty[base + day]) freeDuty[base + day] = left;
      }
    }
  }
}
