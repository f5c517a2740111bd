export { type Fault, printFault } from './faults/fault.js';
export { shapeFaults } from './faults/shape-faults.js';
export { type ParsedPlan, type PlanDocument, parsePlan } from './parse-plan.js';
export { type ParsedScenario, parseScenario } from './parse-scenario.js';
export * from './people/index.js';
export type { SameTypes } from './same-type.js';
export { formatTables } from './scenario/format-tables.js';
export { scenarioJsonSchema } from './scenario/scenario-json-schema.js';
export { scenarioSchema } from './scenario/scenario-schema.js';
