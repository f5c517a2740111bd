import { costOf } from '../cost.js';
import type { Plan } from '../plan.js';
import type { Problem } from '../problem.js';
import type { MethodLimits, Methods } from '../solve.js';
import { type LowerBound, lowerBound } from './lower-bound.js';
import { polish } from './polish.js';

/**
 * Bound and polish by HiGHS for `solve`, for one problem: what the bound learns, the polish goes on from. Blocks its
 * thread while a linear program runs.
 */
export function highsMethods(): Pick<Methods, 'bound' | 'polish'> {
  let learnt: { readonly problem: Problem; readonly bound: LowerBound } | null = null;
  return {
    async bound(problem, limits) {
      const bound = await lowerBound(problem, {
        ...timeOf(limits),
        onProgress: (progress) => limits.onProgress({ bound: progress.bound }),
      });
      learnt = { problem, bound };
      return { bound: finite(bound.bound), routes: bound.routesKept };
    },
    async polish(problem, plan, limits) {
      const known = learnt?.problem === problem ? { known: learnt.bound.known } : {};
      const found = await polish(problem, plan, {
        ...timeOf(limits),
        ...known,
        onImproved: (_: Plan, cost: number) => limits.onProgress({ best: cost }),
      });
      const better = found.status === 'polished' && found.cost <= costOf(problem, plan).total;
      return { plan: better ? found.plan : plan, bound: finite(found.bound) };
    },
  };
}

function timeOf({ clock, shouldStop, seconds }: MethodLimits) {
  return { clock, shouldStop, ...(seconds === null ? {} : { timeLimitSeconds: seconds }) };
}

const finite = (bound: number): number | null => (Number.isFinite(bound) ? bound : null);
