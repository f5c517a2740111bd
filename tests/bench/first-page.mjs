// How soon the first page can be used on this machine: `node tests/bench/first-page.mjs`. Build first (`npm run prestart`).
// The morning, signed in, from the address to the first row of it and a key that works; and its program, compressed.
import { gzipSync } from 'node:zlib';
import { chromium } from 'playwright-core';
import { signIn, startDemo } from './start-demo.mjs';

const times = 7;
const limits = { seconds: 2, bytes: 350_000 };

/** A browser that has never been here, with the session of somebody who is signed in; gives seconds and bytes. */
const openOnce = async (browser, url, storageState) => {
  const context = await browser.newContext({
    baseURL: url,
    storageState,
    viewport: { width: 1440, height: 900 },
  });
  const page = await context.newPage();
  const programs = [];
  page.on('response', (answer) => {
    if (/\.js$/.test(new URL(answer.url()).pathname))
      programs.push(answer.body().then((body) => gzipSync(body).length));
  });
  const from = performance.now();
  await page.goto('/morning', { waitUntil: 'commit' });
  await page.getByRole('table', { name: /strip/i }).getByRole('columnheader').first().waitFor();
  const seen = performance.now();
  await page.keyboard.press('?');
  await page.getByRole('dialog').waitFor();
  const used = performance.now();
  const bytes = (await Promise.all(programs)).reduce((sum, size) => sum + size, 0);
  await context.close();
  return { seen: (seen - from) / 1000, used: (used - from) / 1000, bytes };
};

const middle = (figures) => figures.toSorted((one, other) => one - other)[Math.floor(figures.length / 2)];

const { url, stop } = await startDemo();
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic'],
});
try {
  const context = await browser.newContext({ baseURL: url });
  await signIn(await context.newPage(), 'dispatcher');
  const storageState = await context.storageState();
  const opened = [];
  for (let time = 0; time < times; time++) opened.push(await openOnce(browser, url, storageState));
  const used = opened.map((each) => each.used);
  const [bytes] = opened.map((each) => each.bytes);
  const row = (what, figure, limit) => console.log(`${what.padEnd(62)}${figure.padStart(10)}  ${limit}`);
  console.log(`First page, Morning, a browser that was never here, ${times} times\n`);
  row('its first content, middle of all', `${middle(opened.map((each) => each.seen)).toFixed(2)} s`, '');
  row('it answers a key, middle of all', `${middle(used).toFixed(2)} s`, `at most ${limits.seconds} s`);
  row('it answers a key, slowest', `${Math.max(...used).toFixed(2)} s`, '');
  row('its program, gzip', `${(bytes / 1000).toFixed(0)} kB`, `at most ${limits.bytes / 1000} kB`);
  if (middle(used) > limits.seconds || bytes > limits.bytes) process.exitCode = 1;
} finally {
  await browser.close();
  await stop();
}
