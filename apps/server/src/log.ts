import { AsyncLocalStorage } from 'node:async_hooks';
import type { LoggerService } from '@nestjs/common';
import type { LogLevel } from './config.js';

/** What every line of a request carries. */
export interface RequestContext {
  readonly requestId: string;
}

export const requestContext = new AsyncLocalStorage<RequestContext>();

type Fields = Readonly<Record<string, unknown>>;

export interface Log {
  readonly error: (message: string, fields?: Fields) => void;
  readonly warn: (message: string, fields?: Fields) => void;
  readonly info: (message: string, fields?: Fields) => void;
  readonly debug: (message: string, fields?: Fields) => void;
}

const levels: readonly LogLevel[] = ['error', 'warn', 'info', 'debug'];

/** One JSON object a line. Bodies, cookies and headers are never given to it, so no secret can be in it. */
export const createLog = (
  level: LogLevel,
  write: (line: string) => void = (line) => process.stdout.write(`${line}\n`),
): Log => {
  const at =
    (of: LogLevel) =>
    (message: string, fields: Fields = {}): void => {
      if (levels.indexOf(of) > levels.indexOf(level)) return;
      const line = {
        at: new Date().toISOString(),
        level: of,
        message,
        ...requestContext.getStore(),
        ...fields,
      };
      write(JSON.stringify(line));
    };
  return { error: at('error'), warn: at('warn'), info: at('info'), debug: at('debug') };
};

/** Fields of an error for the log. */
export const errorFields = (error: unknown): Fields =>
  error instanceof Error ? { error: error.message, stack: error.stack } : { error: String(error) };

/** Nest's own lines, in the same form; its start-up chatter is for debugging only. */
export const nestLogger = (log: Log): LoggerService => ({
  log: (message: unknown, ...rest: unknown[]) => log.debug(String(message), from(rest)),
  error: (message: unknown, ...rest: unknown[]) => log.error(String(message), from(rest)),
  warn: (message: unknown, ...rest: unknown[]) => log.warn(String(message), from(rest)),
});

const from = (rest: readonly unknown[]): Fields => {
  const context = rest.at(-1);
  return typeof context === 'string' ? { context } : {};
};
