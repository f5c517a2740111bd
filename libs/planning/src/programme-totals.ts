import { type Cents, cents, type Hours, hours, type IsoDate, type Litres, litres } from '@drumline/units';
import { plannedByProgramme } from './planned-by-programme.js';
import type { Programme, Scenario } from './scenario.js';

/** Fuel that went into an aircraft for a programme. */
export interface DrawnFor {
  readonly programme: string;
  /** Helicopter or aeroplane that took it. */
  readonly into: string;
  readonly litres: Litres;
  /** What a litre cost where it was drawn, in cents, by the flight that brought its drum; null: not known. */
  readonly deliveredPerLitre: number | null;
}

/** What a programme asked for, what it took, and what is charged on for that. */
export interface ProgrammeTotal {
  readonly programme: string;
  readonly name: string;
  readonly recharge: Programme['recharge'];
  readonly plannedHours: Hours;
  readonly plannedLitres: Litres;
  /** By the litres drawn into helicopters, at what each burns an hour: nobody reports the hours themselves. */
  readonly flownHours: Hours;
  readonly drawnLitres: Litres;
  readonly charged: Cents;
  /** Drawn at delivered cost from drums that no known flight brought: not in what is charged. */
  readonly litresWithoutCost: Litres;
}

type Asked = Pick<Scenario, 'programmes' | 'helicopterTasks' | 'helicopters'> & {
  readonly from: IsoDate;
  readonly until: IsoDate;
};

/**
 * Planned and drawn of every programme between two days, both included, in the order of the programmes. Charged: at an
 * agreed price, litres by price; at delivered cost, litres by the cost of their drum's flight with the margin on it;
 * not recharged, nothing. To the nearest cent a programme.
 */
export function programmeTotals(asked: Asked, drawn: readonly DrawnFor[]): readonly ProgrammeTotal[] {
  const { programmes, helicopters, from, until } = asked;
  const perHour = new Map(helicopters.map(({ id, fuelLitresPerHour }) => [id, fuelLitresPerHour]));
  const helicopterTasks = asked.helicopterTasks.filter(({ date }) => date >= from && date <= until);
  const planned = plannedByProgramme({ programmes, helicopterTasks });
  return programmes.map(({ code, name, recharge }, index) => {
    const own = drawn.filter(({ programme }) => programme === code);
    return {
      ...{ programme: code, name, recharge },
      plannedHours: planned[index]!.hours,
      plannedLitres: planned[index]!.litres,
      flownHours: hours(sum(own.map((draw) => hoursOf(draw, perHour)))),
      drawnLitres: litres(sum(own.map((draw) => draw.litres))),
      ...chargedFor(recharge, own),
    };
  });
}

const hoursOf = ({ into, litres }: DrawnFor, perHour: ReadonlyMap<string, number>): number => {
  const burns = perHour.get(into);
  return burns === undefined ? 0 : litres / burns;
};

function chargedFor(
  recharge: Programme['recharge'],
  drawn: readonly DrawnFor[],
): Pick<ProgrammeTotal, 'charged' | 'litresWithoutCost'> {
  const all = litres(sum(drawn.map((draw) => draw.litres)));
  if (recharge.kind === 'not recharged') return { charged: cents(0), litresWithoutCost: litres(0) };
  if (recharge.kind === 'fixed price')
    return { charged: cents(Math.round(all * recharge.centsPerLitre)), litresWithoutCost: litres(0) };
  const cost = sum(drawn.map((draw) => draw.litres * (draw.deliveredPerLitre ?? 0)));
  const unknown = drawn.filter(({ deliveredPerLitre }) => deliveredPerLitre === null);
  return {
    charged: cents(Math.round(cost * (1 + recharge.marginPercent / 100))),
    litresWithoutCost: litres(sum(unknown.map((draw) => draw.litres))),
  };
}

const sum = (figures: readonly number[]): number => figures.reduce((all, each) => all + each, 0);
