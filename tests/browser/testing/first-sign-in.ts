import type { Page } from 'playwright-core';

interface NewInstallation {
  /** What it has printed. */
  readonly said: () => string;
}

const ownPassword = 'a long word of my own';

/** The administrator of a new installation, with the password printed once the first time and the own one afterwards. */
export const administratorOf = ({ said }: NewInstallation): ((page: Page) => Promise<void>) => {
  let isFirst = true;
  return async (page) => {
    const printed = /one-time password\s+(\S+)/.exec(said())![1]!;
    await page.getByLabel('Name').fill('administrator');
    await page.getByLabel('Password').fill(isFirst ? printed : ownPassword);
    await page.getByRole('button', { name: 'Sign in' }).click();
    if (isFirst) {
      await page.getByLabel('One-time password').fill(printed);
      await page.getByLabel('New password', { exact: true }).fill(ownPassword);
      await page.getByLabel('New password again').fill(ownPassword);
      await page.keyboard.press('Enter');
    }
    isFirst = false;
    await page.getByRole('navigation', { name: 'Pages' }).waitFor();
  };
};
