// The office's service worker. The build puts two lines above: `version`, and `files`, every file of this version.
// A page is asked of the server first; where it does not answer, the kept one opens, with the last pictures that pages keep
// (src/api/kept-pictures.ts). No answer of the API and nothing of /phone/ passes through here.
/* global version, files */
const beginning = 'drumline.office.';
const shell = '/';
const patienceMs = 5_000;

self.addEventListener('install', (event) => event.waitUntil(keepVersion()));
self.addEventListener('activate', (event) => event.waitUntil(dropOlderVersions()));
self.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (origin !== self.location.origin || request.method !== 'GET') return;
  if (pathname.startsWith('/assets/')) event.respondWith(part(request));
  else if (request.mode === 'navigate' && !/^\/(api|health|phone)(\/|$)/.test(pathname))
    event.respondWith(page(request));
});

/** All of it or nothing: until then the version before is the kept one. */
const keepVersion = async () => {
  const kept = await caches.open(beginning + version);
  await kept.addAll([shell, ...files]);
  const named = (await (await kept.match(shell)).text()).match(/\/assets\/[\w.-]+/g) ?? [];
  if (!named.every((file) => files.includes(file))) throw new Error('the server has another version by now');
  await self.skipWaiting();
};

/** The one before stays for pages that are still open. */
const dropOlderVersions = async () => {
  const others = (await caches.keys()).filter(
    (name) => name.startsWith(beginning) && name !== beginning + version,
  );
  await Promise.all(others.slice(0, -1).map((name) => caches.delete(name)));
};

/** Its name holds the hash of its content. */
const part = async (request) => (await caches.match(request, { ignoreVary: true })) ?? fetch(request);

const page = async (request) => {
  const asked = fetch(request);
  const silence = new Promise((resolve) => setTimeout(resolve, patienceMs));
  const answer = await Promise.race([asked.catch(() => undefined), silence]);
  if (answer !== undefined && ![502, 503, 504].includes(answer.status)) return answer;
  const kept = await caches.open(beginning + version);
  return (await kept.match(shell, { ignoreVary: true })) ?? asked;
};
