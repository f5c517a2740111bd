import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describeFlightStates } from '@drumline/planning';
import { expect, it } from 'vitest';

const page = join(fileURLToPath(new URL('../..', import.meta.url)), 'docs/flight-states.md');

it('the page of the flight states says what the state machine does', async () => {
  await expect(describeFlightStates()).toMatchFileSnapshot(page);
});
