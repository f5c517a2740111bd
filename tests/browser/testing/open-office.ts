import type { Role } from '@drumline/contract';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject } from 'vitest';
import { Client } from '../../../apps/server/src/testing/client.js';
import { launchChromium } from './chromium.js';
import { password, startOffice } from './start-office.js';

interface Options {
  /** A server of one's own, for tests that change something; otherwise the run's. */
  readonly own?: boolean;
  /** `no`: an empty database. Only with a server of one's own. */
  readonly demo?: 'yes' | 'no';
  /** The test cuts the line or has the server fail: what the browser says of that is no fault. */
  readonly breaksTheLine?: boolean;
}

interface Office {
  readonly url: string;
  /** The demo's person of this role at a browser of their own, on the first page. */
  readonly signIn: (role: Role, at?: { readonly width: number; readonly height: number }) => Promise<Page>;
  /** A browser in which nobody has signed in. */
  readonly stranger: () => Promise<Page>;
  /** The same person without a browser, to bring about what a test starts from. */
  readonly api: (role: Role) => Promise<Client>;
  /** Where a server of one's own keeps its database. */
  readonly dataDir: string;
  /** What a server of one's own has printed. */
  readonly said: () => string;
  /** Ends a server of one's own for a while. */
  readonly halt: () => Promise<void>;
  readonly startAgain: () => Promise<void>;
}

/** The sign-in name of a role's demo account. */
export const nameOf = (role: Role): string => role.replace(' ', '-');

/**
 * Call it at the top of a test file. Whatever a page says on the console as an error, and every request to another host, fails
 * the test in which it happens.
 */
export const openOffice = ({ own = false, demo = 'yes', breaksTheLine = false }: Options = {}): Office => {
  let url = '';
  let dataDir = '';
  let said = (): string => '';
  let halt = async (): Promise<void> => {};
  let startAgain = halt;
  let stop = halt;
  let browser: Browser;
  const contexts: BrowserContext[] = [];
  const faults: string[] = [];

  beforeAll(async () => {
    if (own) ({ url, dataDir, said, halt, startAgain, stop } = await startOffice({ DEMO: demo }));
    else url = inject('officeUrl');
    browser = await launchChromium();
  });
  afterEach(async () => {
    await Promise.all(contexts.splice(0).map((context) => context.close()));
    expect(faults.splice(0)).toEqual([]);
  });
  afterAll(async () => {
    await browser.close();
    await stop();
  });

  const openPage = async (viewport = { width: 1440, height: 900 }): Promise<Page> => {
    const context = await browser.newContext({ viewport, baseURL: url, reducedMotion: 'reduce' });
    contexts.push(context);
    context.on('request', (request) => {
      if (!isFromHere(request.url(), url)) faults.push(`asked another host: ${request.url()}`);
    });
    context.on('console', (line) => {
      const isExpected = isAnswer(line.text()) || (breaksTheLine && isBroken(line.text()));
      if (line.type() === 'error' && !isExpected) faults.push(`console: ${line.text()}`);
    });
    context.on('weberror', (error) => faults.push(`thrown: ${error.error().message}`));
    const page = await context.newPage();
    page.setDefaultTimeout(10_000);
    return page;
  };

  return {
    get url() {
      return url;
    },
    said: () => said(),
    halt: () => halt(),
    startAgain: () => startAgain(),
    get dataDir() {
      return dataDir;
    },
    stranger: async () => {
      const page = await openPage();
      await page.goto('/');
      return page;
    },
    signIn: async (role, viewport) => {
      const page = await openPage(viewport);
      await signInAt(page, nameOf(role));
      return page;
    },
    api: async (role) => {
      const client = new Client(url);
      await client.signIn(nameOf(role), password);
      return client;
    },
  };
};

/** As a person does it. */
export const signInAt = async (page: Page, name: string): Promise<void> => {
  await page.goto('/');
  await page.getByLabel('Name').fill(name);
  await page.getByLabel('Password').fill(password);
  await page.getByRole('button', { name: 'Sign in' }).click();
  await page.getByRole('navigation', { name: 'Pages' }).waitFor();
};

const isFromHere = (address: string, url: string): boolean =>
  /^(data|blob):/.test(address) || new URL(address).origin === new URL(url).origin;

// Chromium reports every refusal of the API as an error; those are answers, which the page puts into words. So is a
// line that a test has cut.
const isAnswer = (line: string): boolean =>
  /^Failed to load resource: (the server responded with a status of 4\d\d|net::ERR_INTERNET_DISCONNECTED)/.test(
    line,
  );

const isBroken = (line: string): boolean =>
  /^Failed to load resource: (the server responded with a status of 5\d\d|net::ERR_CONNECTION_REFUSED)/.test(
    line,
  );
