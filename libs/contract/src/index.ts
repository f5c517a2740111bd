export { type Fault, printFault } from './faults/fault.js';
export { type ParsedScenario, parseScenario } from './parse-scenario.js';
export { formatTables } from './scenario/format-tables.js';
export type { ScenarioFitsSchema, SchemaGivesScenario } from './scenario/same-type.js';
export { scenarioJsonSchema } from './scenario/scenario-json-schema.js';
export { scenarioSchema } from './scenario/scenario-schema.js';
