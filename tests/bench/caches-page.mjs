// The caches page with 150 caches: its longest task while it opens, scrolls, sorts and filters. Build the pages first:
// `npm run build && npm run build-pages`, then `node tests/bench/caches-page.mjs`. Nothing is passed or failed here but the bar.
import { chromium } from 'playwright-core';
import { signIn, startDemo } from './start-demo.mjs';

const caches = Number(process.argv[2] ?? 150);
const barMs = 200;

// The demo's own caches many times over, each a little different, so that every graph is drawn.
const many = (answer) => ({
  ...answer,
  items: Array.from({ length: caches }, (_, index) => {
    const cache = answer.items[index % answer.items.length];
    const raised = (index % 37) * 20;
    const raise = (levels) => ({
      ...levels,
      usableLitres: levels.usableLitres.map((litres) => litres + raised),
    });
    const { offered, noDeliveries, approved } = cache.projections;
    return {
      ...cache,
      place: `X${String(index).padStart(3, '0')}`,
      daysOfCover: (index * 7) % 60,
      projections: { offered: raise(offered), noDeliveries: raise(noDeliveries), approved: raise(approved) },
    };
  }),
});

const watchLongTasks = () => {
  window.longTasks = [];
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) window.longTasks.push(Math.round(duration));
  }).observe({ type: 'longtask', buffered: true });
};

const { url, stop } = await startDemo();
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic'],
});
const results = [];
try {
  const context = await browser.newContext({ baseURL: url, viewport: { width: 1440, height: 900 } });
  await context.addInitScript(watchLongTasks);
  const page = await context.newPage();
  await signIn(page, 'dispatcher');
  await page.route('**/api/projections?*', async (route) => {
    const answer = await route.fetch();
    await route.fulfill({ response: answer, json: many(await answer.json()) });
  });
  const frames = () =>
    page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(done, 300))));
  const measure = async (name, act) => {
    await page.evaluate(() => {
      window.longTasks = [];
    });
    const begun = performance.now();
    await act();
    await frames();
    const tasks = await page.evaluate(() => window.longTasks);
    results.push({
      name,
      tookMs: Math.round(performance.now() - begun),
      longTasks: tasks.length,
      longestMs: Math.max(0, ...tasks),
    });
  };
  const cells = page.locator('[data-place]');
  await measure('open', async () => {
    await page.keyboard.press('Alt+3');
    await cells.nth(caches - 1).waitFor({ state: 'attached' });
  });
  await measure('scroll to the end', async () => {
    await page.mouse.move(500, 500);
    for (let step = 0; step < 60; step++) await page.mouse.wheel(0, 150);
    await cells.last().scrollIntoViewIfNeeded();
  });
  await measure('type three letters', () =>
    page.getByLabel('Find', { exact: true }).pressSequentially('X01', { delay: 40 }),
  );
  await measure('all of them again', () => page.getByRole('button', { name: 'Show all' }).click());
  await measure('order by code', () => page.getByLabel('Order', { exact: true }).selectOption('code'));
  await measure('below minimum ahead', () =>
    page.getByLabel('Only', { exact: true }).selectOption('below minimum ahead'),
  );
  await measure('any level', () => page.getByLabel('Only', { exact: true }).selectOption('any level'));
  await measure('another cache', () => cells.nth(5).click());
  await measure('smaller window', () => page.setViewportSize({ width: 1024, height: 768 }));
  await measure('all as tables', () => page.keyboard.press('t'));
} finally {
  await browser.close();
  await stop();
}
console.table(results);
const over = results.filter(({ longestMs }) => longestMs > barMs);
console.log(
  over.length === 0
    ? `no task over ${barMs} ms`
    : `over ${barMs} ms: ${over.map(({ name }) => name).join(', ')}`,
);
