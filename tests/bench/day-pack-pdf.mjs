// How long a day pack takes from the request to the whole PDF: `node tests/bench/day-pack-pdf.mjs [seconds of planning=10]`.
// Build first (`npm run prestart`). The demo is planned and the plan accepted, so that the day has flights with drums.
import { randomUUID } from 'node:crypto';
import { pageCount } from '../../apps/server/dist/paper/testing/read-pdf.js';
import { Client } from '../../apps/server/dist/testing/client.js';
import { password, startDemo } from './start-demo.mjs';

const times = 7;
const seconds = Number(process.argv[2] ?? 10);
const { url, stop } = await startDemo();
try {
  const manager = new Client(url);
  await manager.signIn('operations-manager', password);
  const date = await planTheWeek(manager);
  const taken = [];
  let pages = 0;
  for (let run = 0; run < times; run++) {
    const from = performance.now();
    const { body } = await manager.get(`/api/day-pack.pdf?date=${date}`);
    taken.push((performance.now() - from) / 1000);
    pages = pageCount(Buffer.from(body));
  }
  const later = taken.slice(1).sort((one, other) => one - other);
  process.stdout.write(
    `day pack of ${date}, ${pages} pages: first ${taken[0].toFixed(2)} s; then median ${later[later.length >> 1].toFixed(2)} s, worst ${later.at(-1).toFixed(2)} s\n`,
  );
} finally {
  await stop();
}

/** Gives the day of the plan with the most flights. */
async function planTheWeek(manager) {
  const plan = `/api/plans/${randomUUID()}`;
  await manager.put(plan, { endTarget: 'hand plan', seconds });
  for (;;) {
    const { state } = (await manager.get(plan)).body;
    if (state === 'solved') break;
    if (!['queued', 'solving'].includes(state)) throw new Error(`the plan is ${state}`);
    await new Promise((resolve) => setTimeout(resolve, 500));
  }
  await manager.post(`${plan}/accept`, {});
  const { items } = (await manager.get('/api/flights?limit=200')).body;
  const days = new Map();
  for (const { date } of items) days.set(date, (days.get(date) ?? 0) + 1);
  return [...days].sort(([, one], [, other]) => other - one)[0][0];
}
