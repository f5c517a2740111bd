import { describe, expect, it } from 'vitest';
import { expectAccessible } from './testing/expect-accessible.js';
import { askToDecline, boxOf, cardOf, openWeekDesk } from './testing/week-desk.js';

const desk = openWeekDesk();

describe('the board', () => {
  it('is walked with the arrows as one stop of Tab; Enter goes into the card, Esc comes back', async () => {
    const page = await desk.openWeek();
    const { flights } = await desk.week();
    const [first] = flights;
    await boxOf(page, first!.id).focus();
    await page.keyboard.press('Home');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowLeft');
    expect(await page.locator('[role=grid] [tabindex="0"]').count()).toBe(1);
    await boxOf(page, first!.id).focus();
    await page.keyboard.press('Enter');
    await cardOf(page)
      .getByRole('heading', { level: 2, name: new RegExp(first!.id) })
      .waitFor();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('week-card');
    expect(page.url()).toContain(`/week/${first!.id}`);
    await page.keyboard.press('Escape');
    expect(await page.evaluate(() => document.activeElement?.getAttribute('data-flight'))).toBe(first!.id);
  });
});

describe('the card', () => {
  it('is approved and given by key', async () => {
    const flight = await desk.takeOffered();
    const page = await desk.openWeek(undefined, flight.id);
    const card = cardOf(page);
    for (const label of [
      'For',
      'Heard',
      'Load',
      'Limits',
      'Unload or stay',
      'Crew',
      'If declined',
      'Go back if',
      'Instead',
    ])
      await card
        .getByRole('term')
        .filter({ hasText: new RegExp(`^${label}`) })
        .waitFor();
    await page.keyboard.press('a');
    await card.getByText(/Approved$/).waitFor();
    await boxOf(page, flight.id)
      .getByText(/Approved$/)
      .waitFor();
    await page.keyboard.press('g');
    await card.getByText(/Given$/).waitFor();
    await expectAccessible(page);
  });

  it('takes a decline back until it is sent: base never hears of it', async () => {
    const flight = await desk.takeOffered();
    const page = await desk.openCard(flight);
    const form = await askToDecline(page, flight);
    await form.getByLabel('Reason').selectOption('No pilot');
    await form.getByRole('button', { name: `Decline ${flight.id}` }).click();
    await cardOf(page).getByText(`Decline of ${flight.id} is not sent yet.`).waitFor();
    await page.keyboard.press('Control+z');
    await cardOf(page).getByText(`Decline of ${flight.id} was taken back.`).waitFor();
    await page.getByText('No entries waiting').waitFor();
    const now = (await desk.week()).flights.find(({ id }) => id === flight.id)!;
    expect([now.state, now.revision]).toEqual(['offered', flight.revision]);
  });

  it('sends a decline that waits when the page is left', async () => {
    const flight = await desk.takeOffered();
    const page = await desk.openCard(flight);
    const form = await askToDecline(page, flight);
    await form.getByLabel('Reason').selectOption('Weather');
    await form.getByRole('button', { name: `Decline ${flight.id}` }).click();
    await cardOf(page).getByText(`Decline of ${flight.id} is not sent yet.`).waitFor();
    const sent = page.waitForResponse((response) => response.url().endsWith(`/${flight.id}/decline`));
    await page.keyboard.press('Alt+3');
    expect((await sent).status()).toBe(200);
  });

  it('asked to undo an approval that base has, opens the act that takes it back', async () => {
    const flight = await desk.takeOffered();
    const page = await desk.openCard(flight);
    await page.keyboard.press('a');
    await cardOf(page)
      .getByText(/Approved$/)
      .waitFor();
    await page.keyboard.press('Control+z');
    await cardOf(page).getByText(`${flight.id} was approved; base has it. Let go takes it back`).waitFor();
    const form = page.getByRole('form', { name: 'Let go' });
    await form.getByLabel(new RegExp(`^${flight.id} approved`)).waitFor();
    await expectAccessible(page);
  });
});
