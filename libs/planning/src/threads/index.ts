export { planInThread } from './plan-in-thread.js';
export type { PlanTask } from './plan-task.js';
