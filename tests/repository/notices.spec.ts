import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

interface Lock {
  readonly packages: Record<
    string,
    {
      readonly dev?: boolean;
      readonly devOptional?: boolean;
      readonly link?: boolean;
      readonly license?: string;
    }
  >;
}

const read = (path: string) => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');

describe('third-party notices', () => {
  const lock = JSON.parse(read('package-lock.json')) as Lock;
  const running = Object.entries(lock.packages)
    .filter(
      ([path, entry]) => path.includes('node_modules/') && !entry.dev && !entry.devOptional && !entry.link,
    )
    .map(([path]) => path.split('node_modules/').pop() ?? '');

  it('name every package that runs, with its licence', () => {
    const notices = read('THIRD-PARTY-NOTICES.md');
    const missing = running.filter((name) => !notices.includes(`| ${name} | `));
    expect(running.length).toBeGreaterThan(0);
    expect(missing).toEqual([]);
    expect(notices).not.toContain('unknown');
  });
});
