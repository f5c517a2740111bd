import type { Scenario } from '@drumline/planning';
import { z } from 'zod';
import type { Fault } from './faults/fault.js';
import { readJson } from './faults/read-json.js';
import { shapeFaults } from './faults/shape-faults.js';
import { doubtRules } from './rules/doubts/doubt-rules.js';
import { drumRules } from './rules/drums.js';
import type { NumberedLine, Rule, SoundParts } from './rules/rule.js';
import { scenarioRules } from './rules/scenario-rules.js';
import { scenarioSchema } from './scenario/scenario-schema.js';

/** `doubts` look wrong but do not keep the document out. */
export type ParsedScenario =
  | { readonly ok: true; readonly scenario: Scenario; readonly doubts: readonly Fault[] }
  | { readonly ok: false; readonly faults: readonly Fault[]; readonly doubts: readonly Fault[] };

/**
 * `ledger`: what is in the drums was reported; however odd, people look at it and the operation goes on. So it does where
 * a line of the hand plan names what is there no more: the line is left out, for it is only compared with.
 */
export type DrumsFrom = 'document' | 'ledger';

/**
 * Reads a scenario document, given as JSON text or as the value read from it. Returns the scenario, or every
 * fault at once. A check across the document is left out only where a part that it needs has a fault of form.
 */
export const parseScenario = (document: unknown, drumsFrom: DrumsFrom = 'document'): ParsedScenario => {
  const read = typeof document === 'string' ? readJson(document) : { ok: true as const, value: document };
  if (!read.ok) return { ok: false, faults: [read.fault], doubts: [] };

  const other = otherDocument(read.value);
  if (other) return { ok: false, faults: [other], doubts: [] };
  const parts = soundParts(read.value);
  const found = (rules: readonly Rule[]) => rules.flatMap((rule) => rule(parts));
  const ofDrums = found(drumRules);
  const asReported = drumsFrom === 'ledger';
  const all = [...shapeFaults(scenarioSchema, read.value), ...found(scenarioRules)];
  const outdated = asReported ? all.filter(isOfHandPlan) : [];
  const faults = [...all.filter((fault) => !outdated.includes(fault)), ...(asReported ? [] : ofDrums)];
  const doubts = [...found(doubtRules), ...(asReported ? ofDrums : []), ...outdated];
  if (faults.length > 0) return { ok: false, faults, doubts };
  // The rules have seen that every field is there and sound.
  return { ok: true, scenario: withoutLines(parts.whole as Scenario, outdated), doubts };
};

const isOfHandPlan = ({ path }: Fault): boolean => path.startsWith('handPlan[');

const withoutLines = (scenario: Scenario, outdated: readonly Fault[]): Scenario => {
  const gone = new Set(outdated.map(({ path }) => Number(/\d+/.exec(path)?.[0])));
  return { ...scenario, handPlan: scenario.handPlan.filter((_, index) => !gone.has(index)) };
};

/** A document that does not call itself a scenario is told so once, not field by field. */
const otherDocument = (document: unknown): Fault | null => {
  if (typeof document !== 'object' || document === null || Array.isArray(document)) return null;
  if ('format' in document && document.format === scenarioSchema.shape.format.value) return null;
  const problem =
    'format' in document
      ? `${JSON.stringify(document.format)} is no scenario document.`
      : 'The document has no format.';
  return {
    path: 'format',
    problem,
    remedy: `Write "format": "${scenarioSchema.shape.format.value}". A file of changes is laid over a scenario, not read alone.`,
  };
};

const soundParts = (document: unknown): SoundParts => {
  const whole: Record<string, unknown> = {};
  const lines = new Map<string, NumberedLine[]>();
  if (typeof document !== 'object' || document === null) return { whole, lines };

  for (const [field, schema] of Object.entries(scenarioSchema.shape)) {
    const given: unknown = Reflect.get(document, field);
    const parsed = schema.safeParse(given);
    if (parsed.success && given !== undefined) whole[field] = parsed.data;
    const list: unknown = schema instanceof z.ZodExactOptional ? schema.unwrap() : schema;
    if (list instanceof z.ZodArray && Array.isArray(given)) {
      lines.set(field, soundLines(list.element as z.ZodType, given));
    }
  }
  return { whole, lines };
};

const soundLines = (schema: z.ZodType, given: readonly unknown[]): NumberedLine[] =>
  given.flatMap((line, index) => {
    const parsed = schema.safeParse(line);
    return parsed.success ? [{ index, value: parsed.data }] : [];
  });
