import { describe, expect, it } from 'vitest';
import { ConfigError, readConfig } from './config.js';

describe('the environment', () => {
  it('empty: the embedded database, the demo, this machine only', () => {
    expect(readConfig({})).toMatchObject({ host: '127.0.0.1', databaseUrl: undefined, demo: true });
  });

  it('of a production start makes no demo, and refuses to be asked for one', () => {
    expect(readConfig({ NODE_ENV: 'production' }).demo).toBe(false);
    expect(() => readConfig({ NODE_ENV: 'production', DEMO: 'yes' })).toThrow(ConfigError);
  });

  it('on a database of the operator makes no demo unless asked', () => {
    expect(readConfig({ DATABASE_URL: 'postgres://x@y/z' }).demo).toBe(false);
    expect(readConfig({ DATABASE_URL: 'postgres://x@y/z', DEMO: 'yes' }).demo).toBe(true);
  });

  it.each([
    [{ NODE_ENV: 'prod' }, /^NODE_ENV is none known here: write production/],
    [{ PORT: '80a' }, /^PORT is not a port/],
    [{ PORT: '70000' }, /^PORT is above 65535/],
    [{ DATABASE_URL: 'mysql://x' }, /^DATABASE_URL is not an address/],
    [{ REDIS_URL: 'localhost' }, /^REDIS_URL is not an address/],
    [{ TRUST_PROXY: 'maybe' }, /^TRUST_PROXY is neither yes nor no/],
    [{ HTTPS_CERT_FILE: '/nowhere/cert.pem' }, /^HTTPS_CERT_FILE names \/nowhere\/cert.pem/],
    [{ LOG_LEVEL: 'loud' }, /^LOG_LEVEL is not a level/],
  ])('%j stops the start with the name and what to do', (variables, words) => {
    expect(() => readConfig(variables)).toThrow(words);
  });

  it('says everything that is wrong at once', () => {
    expect(() => readConfig({ PORT: 'x', DEMO: 'x' })).toThrow(/PORT[\s\S]*DEMO/);
  });
});
