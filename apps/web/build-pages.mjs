// Builds the pages when something they are made of is newer than the last build; `npm start` runs this first.
import { existsSync, readdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';

const here = import.meta.dirname;
const root = join(here, '..', '..');
const madeOf = [
  'apps/web/src',
  'apps/web/index.html',
  'apps/web/office-worker.js',
  'apps/web/phone.html',
  'apps/web/vite.config.ts',
  'apps/web/vite.phone.config.ts',
  'libs',
  'package-lock.json',
];

/** The office, and the crews' phones. */
const built = ['index.html', 'phone/phone.html'];

const isPart = (path) => !/(^|\/)(dist|node_modules)(\/|$)|\.spec\.ts$/.test(path);

const changedAt = (path) => {
  const stat = statSync(path);
  if (!stat.isDirectory()) return stat.mtimeMs;
  const inside = readdirSync(path)
    .map((name) => join(path, name))
    .filter(isPart);
  return Math.max(stat.mtimeMs, ...inside.map(changedAt));
};

const builtAt = () => {
  try {
    return Math.min(...built.map((path) => statSync(join(here, 'dist', path)).mtimeMs));
  } catch {
    return 0;
  }
};

/** Parts of earlier builds go after a week: nobody has a page open that long. */
const dropOldParts = () => {
  const folder = join(here, 'dist', 'assets');
  if (!existsSync(folder)) return;
  for (const path of readdirSync(folder).map((name) => join(folder, name)))
    if (Date.now() - statSync(path).mtimeMs > 7 * 86_400_000) rmSync(path);
};

if (Math.max(...madeOf.map((path) => changedAt(join(root, path)))) > builtAt()) {
  dropOldParts();
  const { build } = await import('vite');
  for (const config of ['vite.config.ts', 'vite.phone.config.ts'])
    await build({ configFile: join(here, config), logLevel: 'warn' });
}
