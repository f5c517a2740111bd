import { existsSync } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';

const places = [
  process.env.CHROMIUM,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
];

/** The machine's own Chromium; CHROMIUM names another. As root it has no sandbox to use. */
export const launchChromium = (): Promise<Browser> => chromium.launch(chromiumOptions());

export const chromiumOptions = () => {
  const executablePath = places.find((path) => path !== undefined && existsSync(path));
  if (executablePath === undefined) {
    throw new Error('No Chromium on this machine: apt-get install chromium, or set CHROMIUM to its path.');
  }
  return {
    executablePath,
    args: [
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  };
};
