import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { networkLines, runNetwork } from '../bench/bench-networks.js';
import type { CachesNetwork } from '../bench/caches-network.js';
import { compareEngines, comparisonLines, type EngineComparison } from '../bench/compare-engines.js';
import { makeNetwork } from '../bench/make-network.js';
import type { NetworkRun } from '../bench/network-run.js';
import { benchPublished, publishedLines } from '../bench/published-set.js';
import { isPublishedSet } from '../bench/read-published-set.js';
import { CommandEnd, exitCodes } from '../exit-codes.js';
import { writeAnswer } from '../output/write-answer.js';
import { writeWhole } from '../write-whole.js';

interface BenchOptions {
  readonly json?: boolean;
  readonly seconds: number;
  readonly seed: number;
  readonly only?: string;
  readonly full?: boolean;
  readonly make?: number;
  readonly lps?: boolean;
}

/** `drumline bench`: solves the networks, or the published set, of a folder and prints what was reached, and when. */
export async function bench(folder: string, options: BenchOptions): Promise<void> {
  if (options.make !== undefined) makeNetworks(folder, options.make, options.seed);
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
  if (options.lps) return lps(files, options);
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

/** Writes varied networks, the first one from the seed, the next from the seed after it. */
function makeNetworks(folder: string, count: number, seed: number): void {
  mkdirSync(folder, { recursive: true });
  for (let at = 0; at < count; at++) {
    const network = makeNetwork(seed + at);
    writeWhole(join(folder, `${network.name}.json`), `${JSON.stringify(network)}\n`);
  }
}

/** Both engines on small linear programs of every network, instead of planning. */
async function lps(files: readonly string[], options: BenchOptions): Promise<void> {
  const compared: EngineComparison[] = [];
  for (const file of files)
    compared.push(...(await compareEngines(JSON.parse(readFileSync(file, 'utf8')) as CachesNetwork)));
  writeAnswer(
    options,
    () => compared,
    () => comparisonLines(compared),
  );
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
