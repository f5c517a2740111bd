// Writes THIRD-PARTY-NOTICES.md from the lock file: `npm run notices`.
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'));

const running = Object.entries(lock.packages)
  .filter(
    ([path, entry]) => path.includes('node_modules/') && !entry.dev && !entry.devOptional && !entry.link,
  )
  .map(([path, entry]) => ({
    name: path.split('node_modules/').pop(),
    folder: join(root, path),
    license: entry.license ?? olderField(join(root, path)),
  }));

/** Packages older than the field `license` list `licenses`; some name it in the licence's own text alone. */
function olderField(folder) {
  const { licenses } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const written = licenses?.map(({ type }) => type).join(' or ');
  return written ?? /^(?:The )?(\w+) License/im.exec(licenceText(folder))?.[1] ?? 'unknown';
}

function licenceText(folder) {
  const file = readdirSync(folder).find((name) => /^licen[cs]e/i.test(name));
  return file === undefined ? '' : readFileSync(join(folder, file), 'utf8');
}

function notice(folder) {
  if (!existsSync(folder)) return 'see the package';
  const line = licenceText(folder)
    .split('\n')
    .find((text) => /copyright (\(c\)|©|\d)|\(c\) \d/i.test(text));
  return line ? line.replace(/[|*]/g, '').trim() : 'see the package';
}

const rows = new Map(
  running.map(({ name, folder, license }) => [
    `${name} ${license}`,
    `| ${name} | ${license} | ${notice(folder)} |`,
  ]),
);
const page = `# Third-party notices

Packages that are part of what runs, written from the lock file by \`npm run notices\`. Each package carries the full text of its
licence. Tools used only to build and test are listed in \`package-lock.json\`.

| package | licence | notice |
|---|---|---|
${[...rows.values()].sort().join('\n')}
`;
writeFileSync(join(root, 'THIRD-PARTY-NOTICES.md'), page);
