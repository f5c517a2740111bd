import { randomUUID } from 'node:crypto';
import { once } from 'node:events';
import { Agent, request } from 'node:http';

// Twenty people at their screens and phones: so many requests a second, four reads to one event, whether or not the
// answers have come. Latency counts from the moment at which a request was due.

const [{ url, names, password, seconds, perSecond, kinds, places, drums, week }] = await once(
  process,
  'message',
);
const agent = new Agent({ keepAlive: true });

/** Plain HTTP and nothing read out of the answer: what the generator takes, the server does not get. */
const ask = ({ method = 'GET', path, headers, body }) =>
  new Promise((resolve, reject) => {
    const sent = request(url + path, { method, headers, agent }, (answer) => {
      const pieces = [];
      answer.on('data', (piece) => pieces.push(piece));
      answer.on('end', () =>
        resolve({ status: answer.statusCode, headers: answer.headers, body: Buffer.concat(pieces) }),
      );
      answer.on('error', reject);
    });
    sent.on('error', reject);
    sent.end(body);
  });

const signIn = async (name) => {
  const body = JSON.stringify({ name, password });
  const answer = await ask({ method: 'POST', path: '/api/sign-in', headers: json, body });
  const cookie = answer.headers['set-cookie'][0].split(';')[0];
  return { headers: { Cookie: cookie, 'X-CSRF-Token': JSON.parse(answer.body).csrfToken }, etag: null };
};
const json = { 'Content-Type': 'application/json' };

const event = (index) => {
  const happenedAt = new Date(Date.parse('2027-06-14T05:30:00Z') + index).toISOString();
  const place = places[index % places.length];
  const written = { happenedAt, writtenAt: happenedAt, means: 'radio' };
  if (index % 10 === 9) {
    const seen = { method: 'dip', seenFrom: 'ground', sealedDrums: 1, openDrums: 0, emptyDrums: 0 };
    return { kind: 'counted', ...written, place, ...seen, millilitres: 10_000_000 };
  }
  // One report in ten names a drum that the book has somewhere else.
  const drum = drums[(index * 13) % drums.length];
  const at = index % 10 === 4 ? place : drum.place;
  const draw = { millilitres: 1_000 + index, into: 'H1', programme: 'P1', leftMillilitres: null };
  return { kind: 'drawn', ...written, drum: drum.drum, place: at, ...draw };
};

const requests = {
  stock: () => ({ path: '/api/stock' }),
  place: (index) => ({ path: `/api/stock/${places[index % places.length]}` }),
  week: () => ({ path: `/api/week?from=${week.from}` }),
  flights: () => ({ path: `/api/flights?from=${week.from}&until=${week.until}` }),
  changes: (_, { etag }) => ({
    path: '/api/changes',
    headers: etag === null ? {} : { 'If-None-Match': etag },
  }),
  event: (index) => ({
    method: 'PUT',
    path: `/api/movements/${randomUUID()}`,
    headers: json,
    body: JSON.stringify(event(index)),
  }),
};

/** Of ten requests two are events; the others as pages ask: the caches, a cache, the week, whether anything is new. */
const mix = ['stock', 'week', 'stock', 'place', 'event', 'changes', 'stock', 'week', 'changes', 'event'];
const turns = kinds.length === 0 ? mix : kinds;

const latencies = new Map(turns.map((kind) => [kind, []]));
const errors = [];
const send = async (index, due) => {
  const kind = turns[index % turns.length];
  const person = people[(index + Math.floor(index / people.length)) % people.length];
  const wanted = requests[kind](Math.floor(index / turns.length) * 2 + (index % 2), person);
  const headers = { ...person.headers, ...wanted.headers };
  try {
    const answer = await ask({ ...wanted, headers });
    if (answer.status !== 200 && answer.status !== 304) errors.push(`${kind} ${answer.status}`);
    if (kind === 'changes') person.etag = answer.headers.etag;
  } catch (error) {
    errors.push(`${kind} ${error.code ?? error.message}`);
  }
  latencies.get(kind).push(performance.now() - due);
};

const people = [];
for (const name of names) people.push(await signIn(name));
const cpuBefore = process.cpuUsage();
const begun = performance.now();
const total = seconds * perSecond;
const running = new Set();
for (let index = 0; index < total; ) {
  const due = begun + (index * 1000) / perSecond;
  const wait = due - performance.now();
  if (wait > 1) await new Promise((resolve) => setTimeout(resolve, wait));
  const sent = send(index, due).finally(() => running.delete(sent));
  running.add(sent);
  index++;
}
await Promise.all(running);
const took = (performance.now() - begun) / 1000;
const { user, system } = process.cpuUsage(cpuBefore);
const percentile = (list, share) => Number(list[Math.floor(list.length * share)].toFixed(1));
const sorted = [...latencies].map(([kind, list]) => [kind, list.sort((a, b) => a - b)]);
process.send({
  perSecond: total / took,
  errors: errors.length,
  firstErrors: errors.slice(0, 5),
  generatorCpuMs: (user + system) / 1000,
  latencyMs: Object.fromEntries(
    sorted.map(([kind, list]) => [
      kind,
      {
        requests: list.length,
        p5: percentile(list, 0.05),
        p50: percentile(list, 0.5),
        p95: percentile(list, 0.95),
        p99: percentile(list, 0.99),
      },
    ]),
  ),
});
process.disconnect();
agent.destroy();
