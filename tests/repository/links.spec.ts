import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const pages = [
  ...readdirSync(root).filter((name) => name.endsWith('.md')),
  ...readdirSync(join(root, 'docs'), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.md'))
    .map((name) => join('docs', name)),
];

/** Relative links, and paths in back quotes that name a file or folder of the repository. */
function mentioned(page: string): string[] {
  const text = readFileSync(join(root, page), 'utf8');
  const links = [...text.matchAll(/\]\((?!https?:|#)([^)#\s]+)[^)]*\)/g)].map((match) =>
    join(dirname(page), match[1]!),
  );
  const paths = [...text.matchAll(/`((?:apps|libs|tests|seeds|docs)\/[\w./-]+)`/g)].map((match) => match[1]!);
  return [...links, ...paths];
}

describe('documentation', () => {
  it.each(pages)('%s mentions only files that exist', (page) => {
    expect(mentioned(page).filter((path) => !existsSync(join(root, path)))).toEqual([]);
  });

  it('is found at all', () => {
    expect(pages.length).toBeGreaterThan(5);
  });
});
