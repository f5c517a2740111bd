import type { Proof } from '@drumline/routing';

/** What a child is asked to plan. */
export interface NetworkTask {
  readonly file: string;
  readonly seconds: number;
  readonly seed: number;
  readonly threads: number;
}

/** What it answers. Money in the network's own units; seconds since the child began to read the file. */
export interface NetworkRun {
  readonly name: string;
  readonly caches: number;
  readonly aircraft: number;
  readonly days: number;
  readonly firstPlan: { readonly cost: number; readonly seconds: number };
  /** Best cost known at each mark that was reached. */
  readonly bestAt: readonly { readonly seconds: number; readonly cost: number }[];
  readonly cost: number;
  readonly bound: number | null;
  readonly gap: number | null;
  readonly seconds: number;
  readonly faults: readonly string[];
  readonly memoryMegabytes: number;
  /** Of all cores together. */
  readonly coreSeconds: number;
  /** Longest time without news of the solve, from its first news on. */
  readonly longestSilenceSeconds: number;
  readonly proof: Proof;
}

export const marks = [5, 15, 25, 30, 60, 90, 140, 170] as const;
