import { randomUUID } from 'node:crypto';
import { once } from 'node:events';

// Twenty people at their screens and phones: so many requests a second, four reads to one event, whether or not the
// answers have come. Latency counts from the moment at which a request was due.

const [{ url, names, password, seconds, perSecond, places, drums }] = await once(process, 'message');

const signIn = async (name) => {
  const answer = await fetch(`${url}/api/sign-in`, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify({ name, password }),
  });
  const { csrfToken } = await answer.json();
  const cookie = answer.headers.getSetCookie()[0].split(';')[0];
  return { Cookie: cookie, 'X-CSRF-Token': csrfToken, 'Content-Type': 'application/json' };
};

const event = (index) => {
  const at = new Date(Date.parse('2027-06-14T05:30:00Z') + index).toISOString();
  const place = places[index % places.length];
  const written = { happenedAt: at, writtenAt: at, means: 'phone' };
  if (index % 10 === 9) {
    const seen = { method: 'dip', seenFrom: 'ground', sealedDrums: 1, openDrums: 0, emptyDrums: 0 };
    return { kind: 'counted', ...written, place, ...seen, millilitres: 10_000_000 };
  }
  const drum = drums[(index * 13) % drums.length];
  const draw = { millilitres: 10_000 + index, into: 'H1', programme: 'P1', leftMillilitres: null };
  return { kind: 'drawn', ...written, drum, place, ...draw };
};

const reads = (index) => {
  if (index % 4 !== 3) return ['stock', '/api/stock'];
  return ['place', `/api/stock/${places[index % places.length]}`];
};

const kinds = new Map();
const errors = [];
const send = async (headers, index, due) => {
  const isEvent = index % 5 === 4;
  const [kind, path] = isEvent ? ['event', `/api/movements/${randomUUID()}`] : reads(index);
  const options = isEvent ? { method: 'PUT', headers, body: JSON.stringify(event(index)) } : { headers };
  try {
    const answer = await fetch(url + path, options);
    await answer.arrayBuffer();
    if (answer.status !== 200) errors.push(`${kind} ${answer.status}`);
  } catch (error) {
    errors.push(`${kind} ${error.cause?.code ?? error.message}`);
  }
  const list = kinds.get(kind) ?? [];
  list.push(performance.now() - due);
  kinds.set(kind, list);
};

const people = [];
for (const name of names) people.push(await signIn(name));
const begun = performance.now();
const total = seconds * perSecond;
const running = new Set();
for (let index = 0; index < total; ) {
  const due = begun + (index * 1000) / perSecond;
  const wait = due - performance.now();
  if (wait > 1) await new Promise((resolve) => setTimeout(resolve, wait));
  const request = send(people[index % people.length], index, due).finally(() => running.delete(request));
  running.add(request);
  index++;
}
await Promise.all(running);
const took = (performance.now() - begun) / 1000;
const percentile = (list, share) => list.sort((a, b) => a - b)[Math.floor(list.length * share)];
process.send({
  perSecond: total / took,
  errors: errors.length,
  firstErrors: errors.slice(0, 5),
  latencyMs: Object.fromEntries(
    [...kinds].map(([kind, list]) => [
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
