import { readdirSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { networkLines, runNetwork } from '../bench/bench-networks.js';
import type { NetworkRun } from '../bench/network-run.js';
import { benchPublished, publishedLines } from '../bench/published-set.js';
import { isPublishedSet } from '../bench/read-published-set.js';
import { CommandEnd, exitCodes } from '../exit-codes.js';
import { writeAnswer } from '../output/write-answer.js';

interface BenchOptions {
  readonly json?: boolean;
  readonly seconds: number;
  readonly seed: number;
  readonly only?: string;
  readonly full?: boolean;
}

/** `drumline bench`: solves the networks, or the published set, of a folder and prints what was reached, and when. */
export async function bench(folder: string, options: BenchOptions): Promise<void> {
  if (isPublishedSet(folder)) await benchSet(folder, options);
  else await benchNetworks(folder, options);
}

async function benchSet(folder: string, options: BenchOptions): Promise<void> {
  const { seconds, seed, full = false } = options;
  const only = options.only?.split(',');
  const rows = await benchPublished(folder, {
    seconds,
    seed,
    full,
    ...(only && { only }),
    onRow: ({ instance, gapPercent }) => process.stderr.write(`${instance}: gap ${gapPercent ?? '-'} %\n`),
  });
  writeAnswer(
    options,
    () => rows,
    () => publishedLines(rows),
  );
}

async function benchNetworks(folder: string, options: BenchOptions): Promise<void> {
  const files = networkFiles(folder, options.only);
  const runs: NetworkRun[] = [];
  for (const file of files) {
    process.stderr.write(`${file}: planning for ${options.seconds} s\n`);
    runs.push(
      await runNetwork({
        file,
        seconds: options.seconds,
        seed: options.seed,
        threads: availableParallelism(),
      }),
    );
  }
  writeAnswer(
    options,
    () => runs,
    () => networkLines(runs),
  );
  if (runs.some(({ faults }) => faults.length > 0)) throw new CommandEnd(exitCodes.faults, '');
}

function networkFiles(folder: string, only: string | undefined): string[] {
  const wanted = only?.split(',');
  const names = read(folder)
    .filter((name) => name.endsWith('.json'))
    .map((name) => name.slice(0, -'.json'.length))
    .filter((name) => wanted === undefined || wanted.includes(name));
  if (names.length === 0)
    throw new CommandEnd(
      exitCodes.badInput,
      `${folder} holds no such network file. Give a folder of .json networks.`,
    );
  return names.map((name) => join(folder, `${name}.json`));
}

function read(folder: string): string[] {
  try {
    return readdirSync(folder);
  } catch (error) {
    throw new CommandEnd(
      exitCodes.badInput,
      `${folder}: ${(error as Error).message}. Give a folder of networks.`,
    );
  }
}
