export { type Fault, printFault } from './faults/fault.js';
export { type ParsedScenario, parseScenario } from './parse-scenario.js';
export type { ScenarioFitsSchema, SchemaGivesScenario } from './scenario/same-type.js';
export { scenarioSchema } from './scenario/scenario-schema.js';
