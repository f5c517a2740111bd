// How the work grows with the network: processor seconds of one core for pool, hand rule, bound and 1,000 rounds of search,
// printed as a table and drawn into docs/cost-growth.svg. node tests/bench/cost-growth.mjs <folder of networks>
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { handRule, search } from '@drumline/routing';
import { lowerBound } from '@drumline/routing/milp';
import { problemOfNetwork } from '../../apps/cli/dist/bench/caches-network.js';
import { wholeHorizon } from '../../libs/routing/dist/milp/whole-horizon.js';

const folder = process.argv[2];
if (!folder) throw new Error('say the folder of the networks: node tests/bench/cost-growth.mjs <folder>');
const clock = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};
const seconds = async (work) => {
  const began = clock();
  const result = await work();
  return { result, took: (clock() - began) / 1000 };
};

async function measure(network) {
  const pool = await seconds(() => problemOfNetwork(network));
  const problem = pool.result;
  const hand = await seconds(() => handRule(problem));
  const bound = await seconds(async () => {
    const { known: inAll } = await lowerBound(wholeHorizon(problem), { clock });
    return lowerBound(problem, { clock, inAll });
  });
  const rounds = await seconds(() =>
    search(problem, hand.result, { seed: 1, budget: { iterations: 1000 }, clock }),
  );
  return {
    name: network.name,
    size: network.caches.length * network.days,
    routes: problem.routes.length,
    lines: { pool: pool.took, 'hand rule': hand.took, bound: bound.took, '1,000 rounds': rounds.took },
  };
}

const networks = readdirSync(folder)
  .filter((file) => file.endsWith('.json'))
  .map((file) => JSON.parse(readFileSync(join(folder, file), 'utf8')))
  .filter(({ caches, days }) => caches && days)
  .toSorted((a, b) => a.caches.length * a.days - b.caches.length * b.days);
const rows = [];
for (const network of networks) {
  const row = await measure(network);
  rows.push(row);
  const cells = Object.entries(row.lines).map(([line, took]) => `${line} ${took.toFixed(2)} s`);
  console.log(`${row.name}: ${row.size} caches x days, ${row.routes} routes: ${cells.join(', ')}`);
}
writeFileSync(new URL('../../docs/cost-growth.svg', import.meta.url), drawing(rows));

/** Both scales are logarithmic: a straight line that rises as the dotted one is work in proportion to size. */
function drawing(of) {
  const sizes = of.map(({ size }) => Math.log10(size));
  const x = (size) => 60 + (340 * (Math.log10(size) - sizes[0])) / (sizes.at(-1) - sizes[0] || 1) + 20;
  const y = (took) => 270 - 83 * (Math.log10(Math.max(took, 0.03)) + 1);
  const inks = { pool: '#1f5fa8', 'hand rule': '#8a5200', bound: '#8e1b5a', '1,000 rounds': '#1f6b3a' };
  const dashes = { pool: '', 'hand rule': '6 3', bound: '2 3', '1,000 rounds': '10 3 2 3' };
  const grid = [0.1, 1, 10, 100].map(
    (took) =>
      `<line x1="60" x2="450" y1="${y(took)}" y2="${y(took)}" stroke="#ddd"/><text x="54" y="${y(took) + 4}" text-anchor="end">${took} s</text>`,
  );
  const marks = of.map(
    ({ name, size }) =>
      `<line x1="${x(size)}" x2="${x(size)}" y1="20" y2="320" stroke="#eee"/><text x="${x(size)}" y="334" text-anchor="middle">${name}: ${size}</text>`,
  );
  const ends = spread(Object.keys(inks).map((line) => ({ line, at: y(of.at(-1).lines[line]) })));
  const lines = Object.keys(inks).map((line) => {
    const points = of.map(({ size, lines }) => `${x(size)},${y(lines[line])}`).join(' ');
    return `<polyline fill="none" stroke="${inks[line]}" stroke-width="2" stroke-dasharray="${dashes[line]}" points="${points}"/><text x="432" y="${ends.get(line)}" fill="${inks[line]}">${line}</text>`;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 560 362" font-family="sans-serif" font-size="12" role="img" aria-label="Seconds of one core for pool, hand rule, bound and 1,000 rounds of search against caches times days">
<rect width="100%" height="100%" fill="#fff"/>
${[...grid, ...marks, ...lines].join('\n')}
<text x="255" y="354" text-anchor="middle">caches x days; seconds of one core; both scales logarithmic</text>
</svg>
`;
}

/** Heights of the names at the ends of the lines, no two on top of each other. */
function spread(names) {
  const heights = new Map();
  let last = Number.NEGATIVE_INFINITY;
  for (const { line, at } of names.toSorted((a, b) => a.at - b.at)) {
    last = Math.max(at + 4, last + 14);
    heights.set(line, last);
  }
  return heights;
}
