import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { chromiumOptions } from './chromium.js';
import { password } from './start-office.js';

/** A phone of its own: what it keeps outlives a restart. */
export interface Phone {
  page: Page;
  /** The line is cut, and stays so over a restart. */
  readonly offline: (isOff: boolean) => Promise<void>;
  /** As when the battery was dead: everything is closed, then opened at the phone's first page. */
  readonly restart: () => Promise<void>;
  readonly signIn: (name: string) => Promise<void>;
  readonly close: () => Promise<void>;
}

interface PhoneOptions {
  readonly url: string;
  /** The phone's clock against the wall, hours. */
  readonly clockOffHours?: number;
  readonly storage?: 'promised' | 'refused';
}

export const openPhone = async ({
  url,
  clockOffHours = 0,
  storage = 'promised',
}: PhoneOptions): Promise<Phone> => {
  const folder = await mkdtemp(join(tmpdir(), 'drumline-phone-'));
  let context: BrowserContext;
  let isOff = false;
  const faults: string[] = [];
  const start = async (): Promise<Page> => {
    context = await chromium.launchPersistentContext(folder, {
      ...chromiumOptions(),
      viewport: { width: 360, height: 640 },
      // A phone has two dots or more for each pixel of its page.
      deviceScaleFactor: 2,
      hasTouch: true,
      baseURL: url,
      reducedMotion: 'reduce',
    });
    await context.setOffline(isOff);
    await context.addInitScript(shiftClock, clockOffHours);
    await context.addInitScript((answer) => {
      navigator.storage.persist = () => Promise.resolve(answer);
      navigator.storage.persisted = () => Promise.resolve(answer);
    }, storage === 'promised');
    const page = context.pages()[0] ?? (await context.newPage());
    page.setDefaultTimeout(15_000);
    page.on('pageerror', (error) => faults.push(error.message));
    return page;
  };
  const phone: Phone = {
    page: await start(),
    offline: async (off) => {
      isOff = off;
      await context.setOffline(off);
    },
    restart: async () => {
      await context.close();
      phone.page = await start();
      await phone.page.goto('/phone/');
    },
    signIn: async (name) => {
      const { page } = phone;
      await page.goto('/phone/');
      await page.getByLabel('Name').fill(name);
      await page.getByLabel('Password').fill(password);
      await page.getByRole('button', { name: 'Sign in' }).click();
      await page.getByText(/With base \d\d:\d\d/).waitFor();
      // From here on it opens without a line.
      await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    },
    close: async () => {
      await context.close();
      await rm(folder, { recursive: true, force: true });
      if (faults.length > 0) throw new Error(`thrown on the phone: ${faults.join('; ')}`);
    },
  };
  return phone;
};

/** Runs in the page before anything else. */
const shiftClock = (hours: number): void => {
  if (hours === 0) return;
  const Wall = Date;
  const shiftMs = hours * 3_600_000;
  globalThis.Date = class extends Wall {
    constructor(...given: ConstructorParameters<typeof Date> | []) {
      if (given.length === 0) super(Wall.now() + shiftMs);
      else super(...given);
    }
    static override now(): number {
      return Wall.now() + shiftMs;
    }
  } as DateConstructor;
};
