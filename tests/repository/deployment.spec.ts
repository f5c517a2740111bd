import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { settingNames } from '../../apps/server/src/config.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const read = (file: string): string => readFileSync(root + file, 'utf8');

interface Service {
  readonly image: string;
  readonly build?: string;
  readonly command?: readonly string[];
  readonly environment: Readonly<Record<string, string | number>>;
  readonly volumes?: readonly string[];
  readonly healthcheck: { readonly test: readonly string[] };
}
interface Compose {
  readonly services: Readonly<Record<string, Service>>;
  readonly volumes: Readonly<Record<string, null>>;
}

const text = read('docker-compose.yml');
const compose = parse(text, { merge: true }) as Compose;
const services = Object.entries(compose.services);
const ours = services.filter(([, { build }]) => build !== undefined);
const dockerfile = read('Dockerfile');

describe('docker-compose.yml', () => {
  it('runs the API, the worker, PostgreSQL and Redis, each with a health check and an image', () => {
    expect(services.map(([name]) => name)).toEqual(['api', 'worker', 'postgres', 'redis']);
    expect(services.filter(([, { image }]) => !/^[a-z]+(:[\w.-]+)?$/.test(image))).toEqual([]);
    expect(services.filter(([, { healthcheck }]) => !/^CMD(-SHELL)?$/.test(healthcheck.test[0]!))).toEqual(
      [],
    );
  });

  it('has no secret with a default: each is asked for, and what to set is said', () => {
    const variables = [...text.matchAll(/\$\{(\w+)([^}]*)\}/g)].map(([, name, rest]) => ({ name, rest }));
    const secrets = variables.filter(({ name }) => /PASSWORD|SECRET|KEY|TOKEN/.test(name!));
    expect(new Set(secrets.map(({ name }) => name))).toEqual(
      new Set(['POSTGRES_PASSWORD', 'REDIS_PASSWORD']),
    );
    expect(secrets.filter(({ name, rest }) => !rest!.startsWith(`:?set ${name} to `))).toEqual([]);
    for (const [, { environment }] of services) {
      for (const [name, value] of Object.entries(environment)) {
        if (/PASSWORD|AUTH/.test(name)) expect(value).toMatch(/^\$\{\w+:\?[^}]+\}$/);
        if (/_URL$/.test(name)) expect(value).toMatch(/:\$\{\w+:\?[^}]+\}@/);
      }
    }
  });

  it('sets no variable that the program does not know', () => {
    for (const [, { environment }] of ours)
      expect(Object.keys(environment).filter((name) => !settingNames.includes(name))).toEqual([]);
  });

  it('runs programs that the build makes', () => {
    for (const [, { command }] of ours) {
      const program = /^apps\/server\/dist\/(\w+)\.js$/.exec(command?.[1] ?? '')?.[1];
      expect([command, existsSync(`${root}apps/server/src/${program}.ts`)]).toEqual([command, true]);
    }
  });

  it('keeps what has to last in volumes that it names', () => {
    const used = services.flatMap(([, { volumes = [] }]) => volumes.map((volume) => volume.split(':')[0]));
    expect(new Set(used)).toEqual(new Set(Object.keys(compose.volumes)));
  });
});

describe('Dockerfile', () => {
  const lines = dockerfile.split('\n');

  it('copies what is there', () => {
    const copied = lines
      .filter((line) => line.startsWith('COPY ') && !line.includes('--from='))
      .flatMap((line) => line.split(' ').slice(1, -1));
    expect(copied.length).toBeGreaterThan(3);
    expect(copied.filter((path) => !existsSync(root + path))).toEqual([]);
  });

  it('has the Node version of package.json, and does not run as root', () => {
    const { engines } = JSON.parse(read('package.json')) as { engines: { node: string } };
    const major = /^>=(\d+)/.exec(engines.node)?.[1];
    const stages = lines.filter((line) => line.startsWith('FROM '));
    expect(stages).toHaveLength(2);
    for (const stage of stages) expect(stage).toContain(`node:${major}-`);
    expect(lines.findLast((line) => line.startsWith('USER '))).toBe('USER node');
  });
});

describe('docs/operate.md', () => {
  it('explains every setting', () => {
    const page = read('docs/operate.md');
    expect(settingNames.filter((name) => !page.includes(`\`${name}\``))).toEqual([]);
  });
});
