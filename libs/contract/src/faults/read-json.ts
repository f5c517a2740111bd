import type { Fault } from './fault.js';
import { findJsonFault } from './find-json-fault.js';

export type ReadJson =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly fault: Fault };

/** The value of a JSON text, or where and why it is not JSON. */
export const readJson = (text: string): ReadJson => {
  try {
    return { ok: true, value: JSON.parse(text) };
  } catch {
    const { line, column, problem } = findJsonFault(text);
    return {
      ok: false,
      fault: {
        path: `line ${line}, column ${column}`,
        problem: `not JSON: ${problem}.`,
        remedy: 'Correct the text there.',
      },
    };
  }
};
