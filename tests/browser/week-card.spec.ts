import { randomUUID } from 'node:crypto';
import type { WeekFlight } from '@drumline/contract';
import { describe, expect, it } from 'vitest';
import { expectAccessible } from './testing/expect-accessible.js';
import { askToDecline, boxOf, cardOf, openWeekDesk } from './testing/week-desk.js';

const desk = openWeekDesk();

/** Below, XLOR goes soft while a flight has its five drums for it. */
const leavesXlorAlone = ({ route }: WeekFlight): boolean => !route.includes('XLOR');

describe('the card', () => {
  it('says what follows before a flight is declined, and wants a reason', async () => {
    const flight = await desk.takeOffered(leavesXlorAlone);
    const { body: consequence } = await desk.dispatcher.get<{ ifDeclined: string }>(
      `/api/flights/${flight.id}/consequence`,
    );
    const page = await desk.openCard(flight);
    const form = await askToDecline(page, flight);
    await form.getByText(consequence.ifDeclined).waitFor();
    await form.getByText('Choose a reason first').waitFor();
    await form.getByLabel('Reason').selectOption('Weather');
    await form.getByLabel('More').fill('cloud on the pass');
    await expectAccessible(page);
    await page.keyboard.press('Enter');
    await cardOf(page).getByText(`Decline of ${flight.id} is not sent yet.`).waitFor();
    await page.getByText('1 entry waiting').waitFor();
    await expectAccessible(page);
    await cardOf(page).getByRole('button', { name: 'Send now' }).click();
    await page.getByText('No entries waiting').waitFor();
    await cardOf(page).getByText('Weather: cloud on the pass').waitFor();
    await boxOf(page, flight.id).getByText('Declined').waitFor();
  });

  it('says what an amendment breaks while it is typed, and what does not', async () => {
    const flight = await desk.takeOffered(
      (each) => each.drums > 1 && each.route.length === 3 && leavesXlorAlone(each),
    );
    const page = await desk.openCard(flight);
    await page.keyboard.press('m');
    const form = page.getByRole('form', { name: `Amend ${flight.id}` });
    const drums = form.getByLabel('Drums, stop 1');
    await drums.fill('9');
    await form.getByText('Breaks:').first().waitFor();
    await form.getByText('It would break a limit: see above.').waitFor();
    await drums.fill(String(flight.drums - 1));
    await form.getByText('Nothing breaks.').waitFor();
    await expectAccessible(page);
    await drums.press('Enter');
    await boxOf(page, flight.id)
      .getByText(`${flight.drums - 1} of`)
      .waitFor();
  });

  it('is held in place, and free to move again', async () => {
    const flight = await desk.takeOffered();
    const page = await desk.openCard(flight);
    await page.keyboard.press('h');
    await cardOf(page).getByText('Held in place', { exact: true }).waitFor();
    await cardOf(page).getByRole('button', { name: 'Free to move' }).click();
    await cardOf(page).getByRole('button', { name: 'Hold in place' }).waitFor();
  });

  it('lets several flights go in one named action', async () => {
    const flights = [await desk.takeOffered(), await desk.takeOffered()];
    for (const flight of flights) expect(await desk.approve(flight)).toBe(200);
    const page = await desk.openWeek(undefined, flights[0]!.id);
    await cardOf(page)
      .getByText(/Approved$/)
      .waitFor();
    await page.keyboard.press('l');
    const form = page.getByRole('form', { name: 'Let go' });
    await form.getByText('In the name of Demo dispatcher.').waitFor();
    await form.getByLabel(new RegExp(`^${flights[1]!.id} approved`)).check();
    await form.getByLabel('Why').fill('XLOR is soft');
    await form.getByRole('button', { name: 'Let go 2 flights' }).click();
    for (const { id } of flights) await boxOf(page, id).getByText('Offered').waitFor();
  });

  it('of a strip that went soft says so, with the drums that may still go', async () => {
    const { flights, aircraft } = await desk.week();
    const typeOf = (tail: string) => aircraft.find((each) => each.tail === tail)?.type;
    const flight = flights.find(
      ({ route, aircraft: tail, drums, state }) =>
        state !== 'declined' &&
        route.includes('XLOR') &&
        typeOf(tail) === 'A' &&
        drums === 5 &&
        route.length === 3,
    );
    if (flight === undefined) throw new Error('the plan flies no five drums to XLOR with type A');
    await desk.dispatcher.put(`/api/surface-reports/${randomUUID()}`, {
      place: 'XLOR',
      state: 'soft',
      at: '2027-06-14T06:00Z',
      by: 'strip helper',
      untilDate: '2027-06-20',
    });
    const page = await desk.openWeek(undefined, flight.id);
    const card = cardOf(page);
    await card.getByText('XLOR landing, soft: binds').waitFor();
    // 5 drums of type A: 6,764 lb at 180 kg a drum, 314 lb over the soft landing limit of 6,450 lb, so 4 go (the payload check of the demo).
    await card.getByText('314 lb over').waitFor();
    await card.getByRole('button', { name: 'Amend to 4 drums' }).click();
    await boxOf(page, flight.id).getByText('4 of').waitFor();
    await page.getByText('Changed since the plan').waitFor();
  });
});

it('who only looks on sees the card without its acts', async () => {
  const page = await desk.office.signIn('storekeeper');
  await page.goto('/week');
  await cardOf(page).getByText('If declined', { exact: true }).waitFor();
  expect(await cardOf(page).getByRole('button').count()).toBe(0);
});
