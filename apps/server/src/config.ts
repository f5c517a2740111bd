import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { z } from 'zod';

const yesOrNo = z
  .enum(['yes', 'no'], 'is neither yes nor no: write one of the two')
  .transform((word) => word === 'yes');
const urlOf = (...protocols: readonly string[]) =>
  z.string().refine((text) => URL.canParse(text) && protocols.includes(new URL(text).protocol), {
    message: `is not an address: write it like ${protocols[0]}//person:password@host:port/name`,
  });
const portNumber = z
  .string()
  .regex(/^\d{1,5}$/, 'is not a port: write a whole number from 0 (any free port) to 65535')
  .transform(Number)
  .refine((port) => port <= 65_535, 'is above 65535: write a port from 0 to 65535');
const readableFile = z.string().transform((path, context) => {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    context.addIssue({ code: 'custom', message: `names ${path}, which cannot be read: correct the path` });
    return z.NEVER;
  }
});

const environmentSchema = z.object({
  NODE_ENV: z
    .enum(
      ['production', 'development', 'test'],
      'is none known here: write production, development or test, or leave it out',
    )
    .default('development'),
  HOST: z.string().min(1, 'is empty: write an address to listen on, or leave it out').default('127.0.0.1'),
  PORT: portNumber.default(8420),
  DATABASE_URL: urlOf('postgres:', 'postgresql:').optional(),
  REDIS_URL: urlOf('redis:', 'rediss:').optional(),
  DATA_DIR: z.string().min(1).optional(),
  HEARTBEAT_FILE: z.string().min(1).optional(),
  HTTPS_CERT_FILE: readableFile.optional(),
  HTTPS_KEY_FILE: readableFile.optional(),
  TRUST_PROXY: yesOrNo.default(false),
  DEMO: yesOrNo.optional(),
  DEMO_PASSWORD: z.string().min(10, 'is too short: write at least 10 characters').optional(),
  LOG_LEVEL: z
    .enum(['error', 'warn', 'info', 'debug'], 'is not a level: write error, warn, info or debug')
    .default('info'),
});

/** Every setting there is. */
export const settingNames: readonly string[] = Object.keys(environmentSchema.shape);

export interface Config {
  readonly production: boolean;
  readonly host: string;
  readonly port: number;
  /** Absent: the embedded database. */
  readonly databaseUrl: string | undefined;
  /** Absent: the queue lives in the database. */
  readonly redisUrl: string | undefined;
  /** Absent: chosen by where the program may write. */
  readonly dataDir: string | undefined;
  /** Touched by a worker while all is well with it. */
  readonly heartbeatFile: string | undefined;
  readonly https: { readonly cert: string; readonly key: string } | undefined;
  readonly trustProxy: boolean;
  readonly demo: boolean;
  readonly demoPassword: string | undefined;
  readonly logLevel: LogLevel;
}

export type LogLevel = 'error' | 'warn' | 'info' | 'debug';

/** The start is stopped by what a person can put right: says what, and what to do about it. */
export class ConfigError extends Error {}

/** Reads the environment once; an empty variable counts as absent. */
export const readConfig = (environment: Readonly<Record<string, string | undefined>>): Config => {
  const given = Object.fromEntries(Object.entries(environment).filter(([, value]) => value !== ''));
  const read = environmentSchema.safeParse(given);
  if (!read.success) {
    throw new ConfigError(
      read.error.issues.map((issue) => `${issue.path.join('.')} ${issue.message}.`).join('\n'),
    );
  }
  const variables = read.data;
  const production = variables.NODE_ENV === 'production';
  const { HTTPS_CERT_FILE: cert, HTTPS_KEY_FILE: key } = variables;
  if ((cert === undefined) !== (key === undefined)) {
    throw new ConfigError('HTTPS_CERT_FILE and HTTPS_KEY_FILE go together: give both, or neither.');
  }
  if (production && variables.DEMO === true) {
    throw new ConfigError(
      'DEMO is yes with NODE_ENV=production: demo accounts are never made there. Leave one out.',
    );
  }
  return {
    production,
    host: variables.HOST,
    port: variables.PORT,
    databaseUrl: variables.DATABASE_URL,
    redisUrl: variables.REDIS_URL,
    dataDir: variables.DATA_DIR,
    heartbeatFile: variables.HEARTBEAT_FILE,
    https: cert !== undefined && key !== undefined ? { cert, key } : undefined,
    trustProxy: variables.TRUST_PROXY,
    demo: variables.DEMO ?? (!production && variables.DATABASE_URL === undefined),
    demoPassword: variables.DEMO_PASSWORD,
    logLevel: variables.LOG_LEVEL,
  };
};

/** The folder of the checkout: the default data directory and the demo territory are found from it. */
export const rootFolder = fileURLToPath(new URL('../../..', import.meta.url));
