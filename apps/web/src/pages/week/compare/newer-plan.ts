import type { ListedPlan } from '../plan/plan-read.js';

/** Asked for after this one and found, or still being made; `latest` is as the server lists them, the latest first. */
export const newerPlan = (latest: readonly ListedPlan[], id: string): ListedPlan | undefined => {
  const at = latest.findIndex((plan) => plan.id === id);
  const newer = at < 0 ? latest : latest.slice(0, at);
  return newer.find(({ state, cost }) => cost !== null || state === 'queued' || state === 'solving');
};
