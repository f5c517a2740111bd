import { type Config, ConfigError, readConfig } from './config.js';
import { createLog, errorFields, type Log } from './log.js';

export interface Running {
  readonly config: Config;
  readonly log: Log;
  /** Closed in the reverse of the order given: what was opened last is closed first. */
  readonly onStop: (close: () => Promise<unknown>) => void;
}

interface Frame {
  /** Stops when `main` is done. */
  readonly once?: boolean;
}

/** Frame of every program: reads the environment, stops in order on SIGTERM and SIGINT, says why it could not start. */
export const runEntry = async (
  main: (running: Running) => Promise<void>,
  { once = false }: Frame = {},
): Promise<void> => {
  // Whoever read the log has gone (`| head`): the program and its database go on, and stop in order.
  for (const stream of [process.stdout, process.stderr]) stream.on('error', () => {});
  const closers: (() => Promise<unknown>)[] = [];
  let stopping: Promise<void> | undefined;
  let starting: Promise<unknown> = Promise.resolve();
  const stop = async (log: Log, exitCode: number): Promise<void> => {
    setTimeout(() => process.exit(1), 30_000).unref();
    await starting.catch(() => {}); // what is half open could not be closed
    for (const close of closers.reverse()) {
      await close().catch((error: unknown) => log.error('A part did not stop cleanly.', errorFields(error)));
    }
    process.exit(exitCode);
  };
  try {
    const config = readConfig(process.env);
    const log = createLog(config.logLevel);
    // A terminal sends Ctrl-C to npm and to this program, and npm passes its own on: it comes twice.
    const onSignal = (signal: string): void => {
      if (stopping === undefined) log.info('Stopping.', { signal });
      stopping ??= stop(log, 0);
    };
    process.on('SIGTERM', onSignal);
    process.on('SIGINT', onSignal);
    const onStop = (close: () => Promise<unknown>): void => {
      closers.push(close);
    };
    starting = main({ config, log, onStop });
    await starting;
    if (!once) return;
    stopping ??= stop(log, 0);
    await stopping;
  } catch (error) {
    if (stopping !== undefined) return;
    const isPlain = error instanceof ConfigError;
    process.stderr.write(
      `${once ? 'Nothing was done' : 'Drumline did not start'}.\n${isPlain ? error.message : describe(error)}\n`,
    );
    await stop(createLog('error'), isPlain ? 2 : 1);
  }
};

const describe = (error: unknown): string =>
  error instanceof Error ? (error.stack ?? error.message) : String(error);
