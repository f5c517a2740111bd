// The program with the demo, for benches and pictures: a database of its own, gone when it stops. Build first.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startProgram } from '../../apps/server/dist/testing/start-program.js';

export const password = 'a password for benches';

export const startDemo = async () => {
  const dataDir = mkdtempSync(join(tmpdir(), 'drumline-demo-'));
  const program = await startProgram({ DATA_DIR: dataDir, DEMO_PASSWORD: password, LOG_LEVEL: 'error' });
  return {
    url: program.url,
    stop: async () => {
      program.process.kill('SIGTERM');
      await program.ended;
      rmSync(dataDir, { recursive: true, force: true });
    },
  };
};

export const signIn = async (page, role) => {
  await page.goto('/');
  await page.getByLabel('Name').fill(role.replace(' ', '-'));
  await page.getByLabel('Password').fill(password);
  await page.getByRole('button', { name: 'Sign in' }).click();
  await page.getByRole('navigation', { name: 'Pages' }).waitFor();
};
