import { randomUUID } from 'node:crypto';
import { afterAll, afterEach, beforeAll } from 'vitest';
import { Client } from '../../../apps/server/src/testing/client.js';
import { openLoadDesk } from './load-desk.js';
import { openOffice } from './open-office.js';
import { openPhone, type Phone } from './phone.js';
import { openShakyLine, type ShakyLine } from './shaky-line.js';
import { password } from './start-office.js';

export interface Drum {
  readonly where: { readonly kind: string; readonly place: string };
  /** Null or absent: it is not held. */
  readonly held?: unknown;
}

export interface Reported {
  readonly id: string;
  readonly kind: string;
  readonly by: string;
  readonly writtenAt: string;
  readonly receivedAt: string;
  readonly corrects?: string;
  readonly note?: string;
}

interface PhoneDesk {
  readonly office: ReturnType<typeof openOffice>;
  readonly dispatcher: Client;
  readonly line: ShakyLine;
  /** A phone on which nobody has signed in. */
  readonly newPhone: (options?: PhoneKind) => Promise<Phone>;
  /** A phone of their own, signed in. */
  readonly phoneOf: (name: string, options?: PhoneKind) => Promise<Phone>;
  /** Somebody new of the crew FW1, or of another, with a one-time password. */
  readonly newcomer: (name: string, crew?: string) => Promise<string>;
  /** The same, with a password of their own. Returns the name. */
  readonly crewMember: (name: string, crew?: string) => Promise<string>;
  readonly movementsOf: (drum: string) => Promise<readonly Reported[]>;
  /** By day and by night, where SHOTS names a folder. */
  readonly shot: (phone: Phone, name: string) => Promise<void>;
}

interface PhoneKind {
  readonly clockOffHours?: number;
  readonly storage?: 'refused';
}

/** Call it at the top of a test file: F05 and F06 of the load desk are given to their pilots. */
export const openPhoneDesk = (): PhoneDesk => {
  const office = openOffice({ own: true });
  let dispatcher: Client;
  let line: ShakyLine;
  const phones: Phone[] = [];

  beforeAll(async () => {
    dispatcher = await office.api('dispatcher');
    const manager = await office.api('operations manager');
    const desk = await openLoadDesk({ manager, dispatcher, dataDir: office.dataDir });
    for (const id of ['F05', 'F06']) {
      await desk.act(id, 'approve');
      await desk.act(id, 'give');
    }
    line = await openShakyLine(() => office.url);
  }, 180_000);
  afterEach(async () => {
    line.mood = 'through';
    await Promise.all(phones.splice(0).map((phone) => phone.close()));
  });
  afterAll(() => line.close());

  const newPhone: PhoneDesk['newPhone'] = async (options = {}) => {
    const phone = await openPhone({ url: line.url, ...options });
    phones.push(phone);
    return phone;
  };
  const newcomer: PhoneDesk['newcomer'] = async (name, crew = 'FW1') => {
    const setUp = await office.api('set-up');
    const person = { name, fullName: `Crew ${name}`, roles: ['pilot'], crew, programmes: [] };
    const made = await setUp.make<{ oneTimePassword: string }>(`/api/people/${randomUUID()}`, person);
    if (made.status >= 300) throw new Error(JSON.stringify(made.body));
    return made.body.oneTimePassword;
  };
  return {
    office,
    get dispatcher() {
      return dispatcher;
    },
    get line() {
      return line;
    },
    newPhone,
    phoneOf: async (name, options) => {
      const phone = await newPhone(options);
      await phone.signIn(name);
      return phone;
    },
    newcomer,
    crewMember: async (name, crew) => {
      const current = await newcomer(name, crew);
      const client = new Client(office.url);
      await client.signIn(name, current);
      const changed = await client.put('/api/me/password', { current, next: password });
      if (changed.status >= 300) throw new Error(JSON.stringify(changed.body));
      return name;
    },
    movementsOf: async (drum) => {
      const path = `/api/movements?drum=${drum}&limit=100`;
      const { body } = await dispatcher.get<{ items: { movement: Reported }[] }>(path);
      return body.items.map(({ movement }) => movement);
    },
    shot: async ({ page }, name) => {
      const folder = process.env.SHOTS;
      if (!folder) return;
      const ground = (is: string) =>
        page.evaluate((to) => (document.documentElement.dataset.ground = to), is);
      await page.screenshot({ path: `${folder}/${name}.png` });
      await ground('dim');
      await page.screenshot({ path: `${folder}/${name}-dim.png` });
      await ground('light');
    },
  };
};

/** On the phone's own keys. */
export const typeOn = async ({ page }: Phone, figures: string): Promise<void> => {
  for (const figure of figures) await page.getByRole('button', { name: figure, exact: true }).click();
};

/** A drum number as it is read aloud. */
export const spoken = (number: string): RegExp => new RegExp(`drum ${[...number].join(' ')}`);
