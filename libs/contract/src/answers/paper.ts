import { z } from 'zod';
import { type Answer } from './field.js';

export const streamableFileOptionsAnswer = z
  .strictObject({
    type: z
      .string()
      .describe('The value that will be used for the `Content-Type` response header.')
      .exactOptional(),
    disposition: z
      .union([z.string(), z.array(z.string())])
      .describe('The value that will be used for the `Content-Disposition` response header.')
      .exactOptional(),
    length: z
      .number()
      .describe('The value that will be used for the `Content-Length` response header.')
      .exactOptional(),
  })
  .meta({ id: 'StreamableFileOptions', description: 'Options for `StreamableFile`' });
export type StreamableFileOptions = Answer<typeof streamableFileOptionsAnswer>;

export const logAnswer = z.strictObject({}).meta({ id: 'log', description: "Write a 'log' level log." });
export type log = Answer<typeof logAnswer>;

export const errorAnswer = z
  .strictObject({})
  .meta({ id: 'error', description: "Write an 'error' level log." });
export type error = Answer<typeof errorAnswer>;

export const warnAnswer = z.strictObject({}).meta({ id: 'warn', description: "Write a 'warn' level log." });
export type warn = Answer<typeof warnAnswer>;

export const debugAnswer = z
  .strictObject({})
  .meta({ id: 'debug', description: "Write a 'debug' level log." });
export type debug = Answer<typeof debugAnswer>;

export const verboseAnswer = z
  .strictObject({})
  .meta({ id: 'verbose', description: "Write a 'verbose' level log." });
export type verbose = Answer<typeof verboseAnswer>;

export const fatalAnswer = z
  .strictObject({})
  .meta({ id: 'fatal', description: "Write a 'fatal' level log." });
export type fatal = Answer<typeof fatalAnswer>;

export const setLogLevelsAnswer = z
  .strictObject({})
  .meta({ id: 'setLogLevels', description: 'Set log levels.' });
export type setLogLevels = Answer<typeof setLogLevelsAnswer>;

export const loggerServiceAnswer = z
  .strictObject({
    log: logAnswer.describe("Write a 'log' level log."),
    error: errorAnswer.describe("Write an 'error' level log."),
    warn: warnAnswer.describe("Write a 'warn' level log."),
    debug: debugAnswer.describe("Write a 'debug' level log.").exactOptional(),
    verbose: verboseAnswer.describe("Write a 'verbose' level log.").exactOptional(),
    fatal: fatalAnswer.describe("Write a 'fatal' level log.").exactOptional(),
    setLogLevels: setLogLevelsAnswer.describe('Set log levels.').exactOptional(),
  })
  .meta({ id: 'LoggerService' });
export type LoggerService = Answer<typeof loggerServiceAnswer>;

export const loggerAnswer = z
  .strictObject({
    context: z.string().exactOptional(),
    options: z.strictObject({
      timestamp: z.boolean().exactOptional(),
    }),
    localInstanceRef: loggerServiceAnswer.exactOptional(),
    localInstanceLogLevels: z
      .unknown()
      .describe('The `Logger.logLevels` the local instance was last configured with.')
      .exactOptional(),
    localInstance: loggerServiceAnswer,
    error: errorAnswer.describe("Write an 'error' level log."),
    log: logAnswer.describe("Write a 'log' level log."),
    warn: warnAnswer.describe("Write a 'warn' level log."),
    debug: debugAnswer.describe("Write a 'debug' level log."),
    verbose: verboseAnswer.describe("Write a 'verbose' level log."),
    fatal: fatalAnswer.describe("Write a 'fatal' level log."),
    registerLocalInstanceRef: z.unknown(),
  })
  .meta({ id: 'Logger' });
export type Logger = Answer<typeof loggerAnswer>;

export const getStreamAnswer = z.strictObject({}).meta({ id: 'getStream' });
export type getStream = Answer<typeof getStreamAnswer>;

export const getHeadersAnswer = z.strictObject({}).meta({ id: 'getHeaders' });
export type getHeaders = Answer<typeof getHeadersAnswer>;

export const setErrorHandlerAnswer = z.strictObject({}).meta({ id: 'setErrorHandler' });
export type setErrorHandler = Answer<typeof setErrorHandlerAnswer>;

export const setErrorLoggerAnswer = z.strictObject({}).meta({ id: 'setErrorLogger' });
export type setErrorLogger = Answer<typeof setErrorLoggerAnswer>;

export const streamableFileAnswer = z
  .strictObject({
    options: streamableFileOptionsAnswer,
    stream: z.unknown(),
    logger: loggerAnswer,
    handleError: z.strictObject({}),
    logError: z.strictObject({}),
    getStream: getStreamAnswer,
    getHeaders: getHeadersAnswer,
    errorHandler: z.strictObject({}),
    setErrorHandler: setErrorHandlerAnswer,
    errorLogger: z.strictObject({}),
    setErrorLogger: setErrorLoggerAnswer,
  })
  .meta({ id: 'StreamableFile' });
export type StreamableFile = Answer<typeof streamableFileAnswer>;
