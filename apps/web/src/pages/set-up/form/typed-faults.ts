import type { FieldFault } from '../../../api/index.js';
import { pathWords } from '../../../ui/index.js';
import type { FieldSpec } from './field-spec.js';
import { asTyped } from './typed.js';

/** What is wrong, in the figures that were typed: 120 %, not the 1.2 that is kept. The same words at the field and in the list. */
export const typedFault = (spec: FieldSpec, fault: FieldFault): FieldFault => {
  const field = fieldAt(spec, fault.path);
  if (field !== undefined && ['this field is missing.', 'this is empty.'].includes(fault.problem))
    return { ...fault, problem: 'Nothing is given here.', remedy: whatToGive(field) };
  if (field?.kind !== 'number' || field.perUnit === 1) return fault;
  const typed = (words: string) =>
    words.replace(/-?\d+(\.\d+)?(?!\w)/g, (kept) => `${asTyped(field, Number(kept))} ${field.unit}`.trim());
  return /^-?\d/.test(fault.problem)
    ? { ...fault, problem: typed(fault.problem), remedy: typed(fault.remedy) }
    : fault;
};

const whatToGive = (field: FieldSpec): string => {
  if (field.kind === 'choice') return `Choose ${field.values.join(' or ')}.`;
  if (field.kind === 'number') return `Type a figure${field.unit === '' ? '' : `, in ${field.unit}`}.`;
  return field.kind === 'lines' ? 'Add a line.' : 'Fill it in.';
};

/** "Absences 2, From": the labels of the form on the way to a field. A field that the form has not keeps its own name. */
export const labelsAt = (spec: FieldSpec, path: string): string => {
  const steps = stepsOf(path);
  const labels: string[] = [];
  let at: FieldSpec | undefined = spec;
  for (const step of steps) {
    at = at === undefined ? undefined : inside(at, step);
    if (/^\d+$/.test(step)) labels.push(`${labels.pop() ?? ''} ${Number(step) + 1}`.trim());
    else labels.push(at === undefined || at.label === '' ? pathWords(step) : at.label);
  }
  return labels.join(', ');
};

/** Faults of what still stands in the form as it was refused. */
export const unmended = (
  faults: readonly FieldFault[],
  refused: unknown,
  now: unknown,
): readonly FieldFault[] =>
  faults.filter(({ path }) => JSON.stringify(valueAt(refused, path)) === JSON.stringify(valueAt(now, path)));

const valueAt = (data: unknown, path: string): unknown =>
  stepsOf(path).reduce<unknown>(
    (at, step) => (typeof at === 'object' && at !== null ? Reflect.get(at, step) : undefined),
    data,
  );

const stepsOf = (path: string): readonly string[] => path.match(/[^.[\]]+/g) ?? [];

/** The field of a path like "recharge.marginPercent" or "absences[0].from". */
const fieldAt = (spec: FieldSpec, path: string): FieldSpec | undefined => {
  const steps = stepsOf(path);
  return steps.reduce<FieldSpec | undefined>((at, step) => (at === undefined ? at : inside(at, step)), spec);
};

const inside = (spec: FieldSpec, step: string): FieldSpec | undefined => {
  switch (spec.kind) {
    case 'group':
      return spec.fields.find(({ key }) => key === step);
    case 'either':
      return spec.options.map((option) => inside(option, step)).find((field) => field !== undefined);
    case 'lines':
    case 'words':
      return spec.of;
    case 'pair':
      return spec.items[Number(step)];
    default:
      return undefined;
  }
};
