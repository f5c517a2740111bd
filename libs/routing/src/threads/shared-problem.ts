import { deserialize, serialize } from 'node:v8';
import type { Problem } from '../index.js';

/** A problem as bytes that threads read in common: written once, where each worker's own copy would hold this one up. */
export type SharedProblem = Uint8Array<SharedArrayBuffer>;

const written = new WeakMap<Problem, SharedProblem>();

export function shareProblem(problem: Problem): SharedProblem {
  const known = written.get(problem);
  if (known) return known;
  const bytes = serialize(problem);
  const shared = new Uint8Array(new SharedArrayBuffer(bytes.length));
  shared.set(bytes);
  written.set(problem, shared);
  return shared;
}

export const problemOf = (shared: SharedProblem): Problem => deserialize(shared) as Problem;
