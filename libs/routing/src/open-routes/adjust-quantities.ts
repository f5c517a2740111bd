import { Draft } from '../bound/draft.js';
import type { LinearProgram, SolveLinearProgram } from '../milp/linear-program.js';
import type { OpenPlan, OpenProblem } from './open-problem.js';

/**
 * The same routes with the quantities that cost least in holding, by a linear program, solved exactly: stops in a
 * network of flows, so that its corners are whole numbers. Stops that bring nothing are left out where that shortens the
 * route. Null where the solver has no answer.
 */
export async function adjustQuantities(
  problem: OpenProblem,
  plan: OpenPlan,
  solve: SolveLinearProgram,
): Promise<OpenPlan | null> {
  const solution = await solve(quantitiesProgram(problem, plan));
  if (solution.status !== 'optimal') return null;
  let column = 0;
  return {
    routes: plan.routes
      .map(({ day, stops }) => ({
        day,
        stops: withoutIdle(
          problem,
          stops.map(({ site }) => ({ site, quantity: Math.round(solution.values[column++]) })),
        ),
      }))
      .filter(({ stops }) => stops.length > 0),
  };
}

/** One column a stop, in the order of routes and stops; rows: vehicles, levels, base stock. */
function quantitiesProgram({ days, sites, base, fleet }: OpenProblem, { routes }: OpenPlan): LinearProgram {
  const draft = new Draft();
  const stops = routes.flatMap(({ day, stops }, route) => stops.map(({ site }) => ({ day, route, site })));
  for (const { day, site } of stops) {
    const saved = (sites[site].holdingCost - base.holdingCost) * (days - day);
    draft.column(saved, 0, fleet.capacity);
  }
  const limit = (lower: number, upper: number, counts: (stop: (typeof stops)[number]) => boolean) => {
    const row = draft.row(lower, upper);
    stops.forEach((stop, column) => {
      if (counts(stop)) draft.enter(column, row, 1);
    });
  };
  routes.forEach((_, at) => {
    limit(Number.NEGATIVE_INFINITY, fleet.capacity, ({ route }) => route === at);
  });
  sites.forEach(({ opening, demand, minimum, maximum }, at) => {
    let drawn = 0;
    for (let day = 0; day < days; day++) {
      const visited = stops.some((stop) => stop.site === at && stop.day === day);
      const most = visited ? maximum - opening + drawn : Number.POSITIVE_INFINITY;
      drawn += demand[day];
      limit(drawn + minimum - opening, most, (stop) => stop.site === at && stop.day <= day);
    }
  });
  let ready = base.opening;
  for (let day = 0; day < days; day++) {
    limit(Number.NEGATIVE_INFINITY, ready, (stop) => stop.day <= day);
    ready += base.production[day];
  }
  return draft.program();
}

function withoutIdle({ travelCost }: OpenProblem, stops: OpenPlan['routes'][number]['stops']) {
  let kept = stops;
  for (const stop of stops.filter(({ quantity }) => quantity === 0)) {
    const at = kept.indexOf(stop);
    const before = at === 0 ? 0 : kept[at - 1].site + 1;
    const after = at === kept.length - 1 ? 0 : kept[at + 1].site + 1;
    const place = stop.site + 1;
    const direct = before === after ? 0 : travelCost[before][after];
    if (travelCost[before][place] + travelCost[place][after] >= direct)
      kept = kept.filter((one) => one !== stop);
  }
  return kept;
}
