import { describe, expect, it } from 'vitest';
import { askToDecline, cardOf, openWeekDesk } from './testing/week-desk.js';

const desk = openWeekDesk();

describe('the card', () => {
  it('tells who was quicker, and that nothing was sent', async () => {
    const flight = await desk.takeOffered();
    const page = await desk.openCard(flight);
    const form = await askToDecline(page, flight);
    await form.getByLabel('Reason').selectOption('Weather');
    // The page does not hear of it in the meantime.
    await page.route('**/api/changes', (route) => route.fulfill({ status: 304 }));
    expect(await desk.approve(flight)).toBe(200);
    await page.route('**/decline', async (route) => {
      await page.unroute('**/api/changes');
      await route.continue();
    });
    await form.getByRole('button', { name: `Decline ${flight.id}` }).click();
    await cardOf(page).getByRole('button', { name: 'Send now' }).click();
    const alert = cardOf(page).getByRole('alert');
    await alert.waitFor();
    await alert.getByText(`${flight.id} was approved by Demo operations manager at`).waitFor();
    await alert.getByText('Your Decline was not sent.').waitFor();
    await form.waitFor({ state: 'detached' });
    await cardOf(page).getByRole('button', { name: 'Seen' }).click();
    await alert.waitFor({ state: 'detached' });
  });

  it('whose form was open while another decided says who did, and keeps what was typed', async () => {
    const flight = await desk.takeOffered();
    const page = await desk.openCard(flight);
    const form = await askToDecline(page, flight);
    await form.getByLabel('Reason').selectOption('Weather');
    await form.getByLabel('More').fill('cloud on the pass');
    expect(await desk.approve(flight)).toBe(200);
    await cardOf(page).getByText(`${flight.id} was approved by Demo operations manager at`).waitFor();
    await cardOf(page).getByText('Your Decline was not sent.').waitFor();
    expect(await form.getByLabel('More').inputValue()).toBe('cloud on the pass');
    await page.keyboard.press('Enter');
    expect(await form.getByLabel('More').inputValue()).toBe('cloud on the pass');
    await form.getByRole('button', { name: 'Leave it' }).click();
    await cardOf(page).getByRole('button', { name: 'Let go' }).waitFor();
  });
});
