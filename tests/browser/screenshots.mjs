// Takes every page for docs/screens: `npm run screenshots`, or `npm run screenshots -- week caches`. Build first.
import { execFileSync } from 'node:child_process';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { signIn, startDemo } from '../bench/start-demo.mjs';

const root = join(import.meta.dirname, '..', '..');
const screens = join(root, 'docs', 'screens');
const sizes = [
  { width: 1440, height: 900 },
  { width: 1024, height: 768 },
];

const openDialog = async (page, name) => {
  await page.getByRole('button', { name }).click();
  await page.getByRole('dialog').getByText('Checking...').waitFor({ state: 'detached' });
};

// A page: its path; who looks; whether it is printed too, and how; what is done before the picture is taken.
const pages = [
  { name: 'sign-in', path: '/' },
  { name: 'morning', path: '/morning', as: 'dispatcher', print: 'landscape' },
  {
    name: 'handover',
    path: '/morning',
    as: 'dispatcher',
    before: (page) => openDialog(page, 'Handover'),
  },
  {
    name: 'medevac',
    path: '/morning',
    as: 'dispatcher',
    before: (page) => openDialog(page, 'Medevac'),
  },
  { name: 'paper', path: '/morning/paper', as: 'dispatcher' },
  { name: 'week', path: '/week', as: 'operations manager', print: 'landscape' },
  { name: 'plans', path: '/week/plans', as: 'operations manager' },
  {
    name: 'compare',
    path: '/week/plans',
    as: 'operations manager',
    print: 'landscape',
    before: async (page) => {
      await page.getByRole('table', { name: 'Plans' }).getByRole('link').first().click();
      await page.getByRole('table', { name: 'Differences, line by line' }).waitFor();
    },
  },
  { name: 'caches', path: '/caches/XLOR', as: 'dispatcher', print: 'landscape' },
  { name: 'drums', path: '/drums/0514', as: 'storekeeper' },
  { name: 'drums-hold', path: '/drums?act=hold&batch=J27-041', as: 'dispatcher' },
  { name: 'drums-retest', path: '/drums?view=retest', as: 'storekeeper', print: 'portrait' },
  { name: 'load', path: '/load/F001', as: 'dispatcher', print: 'portrait' },
  { name: 'map', path: '/map/XLOR?day=2027-06-15', as: 'dispatcher', print: 'portrait' },
  { name: 'set-up', path: '/set-up/strip-limits', as: 'operations manager', print: 'portrait' },
];

// A plan is made and accepted first: a week without flights shows little.
const makePlan = async (page) => {
  const { csrfToken } = await (await page.request.get('/api/me')).json();
  const headers = { 'X-CSRF-Token': csrfToken };
  const id = crypto.randomUUID();
  await page.request.put(`/api/plans/${id}`, { headers, data: { seconds: 20, seed: 3 } });
  for (;;) {
    const run = await (await page.request.get(`/api/plans/${id}`)).json();
    if (run.state === 'solved' || run.finishedAt) break;
    await page.waitForTimeout(1_000);
  }
  const accepted = await page.request.post(`/api/plans/${id}/accept`, { headers, data: {} });
  if (!accepted.ok()) throw new Error(`the plan was not accepted: ${await accepted.text()}`);
};

// A PDF as it would come out of the printer, its first page as a picture (poppler-utils).
const takePrint = async (page, { name, print }) => {
  const pdf = join(tmpdir(), `${name}-print.pdf`);
  await page.pdf({ path: pdf, format: 'A4', landscape: print === 'landscape', printBackground: true });
  execFileSync('pdftoppm', ['-png', '-r', '80', '-singlefile', '-gray', pdf, join(screens, `${name}-print`)]);
};

const take = async (browser, url, wanted) => {
  const context = await browser.newContext({ baseURL: url, viewport: sizes[0], reducedMotion: 'reduce' });
  const page = await context.newPage();
  if (wanted.as) await signIn(page, wanted.as);
  for (const size of sizes) {
    await page.setViewportSize(size);
    await page.goto(wanted.path);
    await page.getByRole('heading', { level: 1 }).waitFor();
    await page.getByText('Checking...').first().waitFor({ state: 'detached' });
    await wanted.before?.(page);
    await page.waitForTimeout(500);
    await page.screenshot({ path: join(screens, `${wanted.name}-${size.width}.png`) });
  }
  if (wanted.print) await takePrint(page, wanted);
  await context.close();
};

const names = process.argv.slice(2);
const wanted = pages.filter(({ name }) => names.length === 0 || names.includes(name));
const { url, stop } = await startDemo();
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic'],
});
try {
  const context = await browser.newContext({ baseURL: url });
  const manager = await context.newPage();
  await signIn(manager, 'operations manager');
  await makePlan(manager);
  for (const page of wanted) await take(browser, url, page);
} finally {
  await browser.close();
  await stop();
}
