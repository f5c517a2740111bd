import type { Progress, Proof } from '@drumline/routing';

/** What a child is asked to plan. */
export interface NetworkTask {
  readonly file: string;
  readonly seconds: number;
  readonly seed: number;
  readonly threads: number;
}

/** The plan that was found. Money in the network's own units; seconds since the solving thread began to read the file. */
export interface FoundPlan {
  readonly name: string;
  readonly caches: number;
  readonly aircraft: number;
  readonly days: number;
  readonly firstPlan: { readonly cost: number; readonly seconds: number };
  readonly cost: number;
  readonly bound: number | null;
  readonly gap: number | null;
  readonly faults: readonly string[];
  readonly proof: Proof;
}

/** What the solving thread tells the child that started it. */
export type NetworkMessage =
  | { readonly kind: 'progress'; readonly progress: Progress }
  | { readonly kind: 'solved'; readonly found: FoundPlan };

/** What the child answers; seconds since it was given its task. */
export interface NetworkRun extends FoundPlan {
  /** Best cost known at each mark that was reached. */
  readonly bestAt: readonly { readonly seconds: number; readonly cost: number }[];
  readonly seconds: number;
  readonly memoryMegabytes: number;
  /** Of all cores together. */
  readonly coreSeconds: number;
  /** Longest time in which nothing was told of the solve, not even its last figures again. */
  readonly longestSilenceSeconds: number;
}

export const marks = [5, 15, 25, 30, 60, 90, 140, 170] as const;
