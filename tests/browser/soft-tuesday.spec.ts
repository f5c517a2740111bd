import { type PlanDifferencesAnswer, parseScenario } from '@drumline/contract';
import { type EndTarget, type FlightPlan, planByHand } from '@drumline/planning';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import type { Client } from '../../apps/server/src/testing/client.js';
import { softReplan } from '../scenarios/hollowtarn/hand-plan.js';
import { expectAccessible } from './testing/expect-accessible.js';
import { flownMonday } from './testing/flown-monday.js';
import { openOffice } from './testing/open-office.js';

const office = openOffice({ own: true });

interface SolvedRun {
  readonly request: { readonly endTarget: EndTarget };
  readonly outcome: { readonly plan: FlightPlan };
}

// The first moment of truth: product.md, section 6, T1, with section 2, W11, M10 and M11.
it('LOR goes soft on Tuesday: from the first key to the list of differences, and into force', async () => {
  const [manager, dispatcher, setUp] = await Promise.all([
    office.api('operations manager'),
    office.api('dispatcher'),
    office.api('set-up'),
  ]);
  await flownMonday({ manager, dispatcher, setUp, dataDir: office.dataDir });
  const flown = () =>
    Promise.all(
      ['F01', 'F02', 'F03', 'F04'].map(
        async (id) => (await manager.get<{ state: string }>(`/api/flights/${id}`)).body,
      ),
    );
  const before = await flown();
  expect(before.map(({ state }) => state)).toEqual(Array(4).fill('reported'));

  const page = await office.signIn('dispatcher');
  await page.getByRole('heading', { level: 1, name: 'Morning' }).waitFor();
  const person = countActions(page);

  await person.press('r');
  await person.write('LOR soft 0652 helper until Thu, HAS soft 0640 helper until Thu');
  await page.getByRole('list', { name: 'What was understood' }).getByText(/XHAS/).first().waitFor();
  await person.press('Enter');
  await page.getByText(/Kept: XLOR/).waitFor();
  await person.press('Escape');
  await person.press('Alt+2');
  await page.getByRole('heading', { level: 1, name: 'Week' }).waitFor();
  await page.getByText('Needs a decision').first().waitFor();
  await person.press('p');
  const options = page.getByRole('dialog', { name: /Re-plan from now, Tue 15/ });
  await options.getByRole('checkbox', { name: /Let go F05 given, .*needs a decision/ }).waitFor();
  await expectAccessible(page);
  await person.click(options.getByRole('button', { name: 'Tick all 3' }));
  await options
    .getByText(/^Let go first\. Before the plan is made, at this press: F05, F06, F07 are offered again/)
    .waitFor();
  await person.click(options.getByRole('button', { name: 'Let go F05, F06, F07 and plan' }));

  await page.getByRole('heading', { level: 1, name: 'Plan under way' }).waitFor();
  await page.getByRole('img', { name: /After \d+ s: best [\d,]+ cr/ }).waitFor({ timeout: 60_000 });
  await expectAccessible(page);
  // A run belongs to the server: the page finds it again.
  await page.reload();
  await page.getByText('Seconds gone').waitFor();
  await page.getByRole('heading', { level: 1, name: 'Differences' }).waitFor({ timeout: 90_000 });
  const list = page.getByRole('table', { name: 'Differences, line by line' });
  await list.waitFor();
  expect(person.count()).toBeLessThan(12);

  const id = new URL(page.url()).pathname.split('/').at(-1)!;
  const { body: differences } = await manager.get<PlanDifferencesAnswer>(`/api/plans/${id}/differences`);
  await expectNoWorseThanReference(manager, id, differences);
  await expectListed(page, differences);
  await expectAccessible(page);

  await page.getByRole('button', { name: /^Accept lines 1 to/ }).click();
  await page.getByText('Accepted by Demo dispatcher').waitFor();
  expect(await flown()).toEqual(before);
  await page.goto('/week/plans');
  await page.getByRole('row', { name: /accepted, plan 2/ }).waitFor();
  await expectAccessible(page);
}, 240_000);

/**
 * "An optimiser may do better, not worse" (product.md, T1) than the reference re-plan (hand-plan.ts: F05 and F08 out, F06 and
 * F07 to A2, XLOR 4, 2 and 4 from XMER). Both are costed here by the same rules on the facts of this very run: the stock
 * after Monday, the soft strips, the end targets. That the reference is read rightly shows in its bill: 406 cr above what
 * stood, from rounded distances, and 400 L less landed (55,218 > 55,624 cr, 73 > 71 drums).
 *
 * Two things make the comparison less than plain. The reference takes 15 drums from XMER on Tuesday, where 10 stand filled:
 * it is cheaper than anything that can be flown. And the plans land different litres. What one lands beyond the other
 * stands in a cache at the end, paid for: it is taken off the bill at what it cost, at the cheapest of the bases that the
 * plan takes drums from. Flight cost has to be no higher without any such sum.
 */
const expectNoWorseThanReference = async (
  manager: Client,
  id: string,
  differences: PlanDifferencesAnswer,
): Promise<void> => {
  const { before, after } = differences.totals;
  const { body: run } = await manager.get<SolvedRun>(`/api/plans/${id}`);
  const parsed = parseScenario((await manager.get(`/api/plans/${id}/scenario`)).body);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  const { scenario } = parsed;
  const handPlan = softReplan.filter(({ date }) => date >= scenario.firstDay);
  const { endTarget } = run.request;
  const reference = planByHand(
    { ...scenario, handPlan },
    { endTarget, weather: { fortnights: 1000, seed: 1 } },
  );
  const { cost } = reference.plan;
  expect(reference.faults.map(({ where }) => where)).toEqual(['XMER, Tue 15 Jun']);
  expect(Math.abs(cost.total - before.cost.total - 40_600)).toBeLessThan(200);
  expect(cost.litres - before.litres).toBe(-400);

  expect(after.cost.flight).toBeLessThanOrEqual(cost.flight);
  const { handlingCost, fillLitres } = scenario.policy.drum;
  const taken = after.drumsFromBase.filter(({ drums }) => drums > 0).map(({ place }) => place);
  const cheapest = Math.min(
    ...scenario.bases.filter(({ place }) => taken.includes(place)).map((base) => base.pricePerLitre),
  );
  const more = Math.max(0, after.litres - cost.litres);
  const standsPaidFor = more * cheapest + (more / fillLitres) * handlingCost;
  expect(after.cost.total - standsPaidFor).toBeLessThanOrEqual(cost.total);
  // The drums beyond the reference are there for the weather: XLOR falls below critical in fewer fortnights.
  expect(run.outcome.plan.risk!.belowCritical).toBeLessThanOrEqual(reference.plan.risk!.belowCritical);
  for (const { place, withIdeas, minimumLitres } of differences.lowest) {
    const { beforeLitres, afterLitres } = withIdeas;
    expect([place, afterLitres >= Math.min(beforeLitres, minimumLitres)]).toEqual([place, true]);
  }
  // The picture before, as the reference has it: XLOR lowest 1,885 L, XMAR 375 L below its minimum.
  const lowest = new Map(differences.lowest.map(({ place, beforeLitres }) => [place, beforeLitres]));
  expect([lowest.get('XLOR'), lowest.get('XMAR')]).toEqual([1885, 375]);
  const changed = [
    ...differences.removed,
    ...[...differences.moved, ...differences.drumsChanged].map((change) => change.before),
  ].map(({ id }) => id);
  for (const id of ['F01', 'F02', 'F03', 'F04']) expect(changed).not.toContain(id);
  for (const id of ['F05', 'F08']) expect(changed).toContain(id);
  expect(differences.faults.map(({ flight }) => flight)).toEqual(expect.arrayContaining(['F05', 'F08']));
};

/** Both bills stand on the page, and the five groups, whatever is in them. */
const expectListed = async (
  page: Page,
  { removed, moved, added, drumsChanged, same }: PlanDifferencesAnswer,
) => {
  const groups = { Removed: removed, Moved: moved, Added: added, 'Drums changed': drumsChanged, Same: same };
  for (const [name, { length }] of Object.entries(groups)) {
    const flights = length === 0 ? 'no flights' : length === 1 ? '1 flight' : `${length} flights`;
    await page.getByRole('rowheader', { name: `${name}, ${flights}` }).waitFor();
  }
  await page.getByText(/^The flight bill .* whole plan .*\.$/).waitFor();
  for (const row of ['Flight cost', 'Whole plan', 'From XMER', 'Left at XMER'])
    await page.getByRole('row', { name: new RegExp(`^${row} `) }).waitFor();
};

/** What a person does: a key, a line that is written, a press. */
const countActions = (page: Page) => {
  let done = 0;
  return {
    count: () => done,
    press: (key: string) => {
      done += 1;
      return page.keyboard.press(key);
    },
    write: (text: string) => {
      done += 1;
      return page.keyboard.type(text);
    },
    click: (what: ReturnType<Page['getByRole']>) => {
      done += 1;
      return what.click();
    },
  };
};
