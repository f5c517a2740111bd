import { describe, expect, it } from 'vitest';
import { filled, flownOut, leftAt, loaded, written } from './example-movements.js';
import type { Movement } from './movement.js';
import { replay } from './replay.js';
import { ridingHome, withRiding } from './riding-home.js';

const home: Movement = {
  ...leftAt('0451', '07:00'),
  ...written('home', '07:00'),
  kind: 'brought home',
  place: 'BASE',
};
const taken = [filled('0451', '05:00'), loaded('0451', '06:00'), home];
const asSeen = (movements: readonly Movement[], isDown: boolean) => {
  const ledger = replay(movements);
  return withRiding(
    ledger,
    ridingHome(ledger, () => isDown),
  );
};

describe('a drum that a flight brings back', () => {
  it('is aboard until the flight is down, and base has it in its book from then on', () => {
    const under = asSeen(taken, false);
    expect(under.drums.get('0451')!.where).toEqual({ kind: 'aboard', flight: 'F05', leg: 1, from: 'BASE' });
    expect(under.balances.get('BASE')).toBeUndefined();
    const down = asSeen(taken, true);
    expect(down.drums.get('0451')!.where).toEqual({ kind: 'at', place: 'BASE' });
    expect(down.balances.get('BASE')).toMatchObject({ sealedDrums: 1, bookMillilitres: 200_000 });
  });

  it('takes nothing else out of the book of base', () => {
    expect(asSeen([...taken, filled('0452', '05:00')], false).balances.get('BASE')).toMatchObject({
      sealedDrums: 1,
      bookMillilitres: 200_000,
    });
  });

  it('and is loaded again, rides no longer: what has happened since says where it is', () => {
    const again = loaded('0451', '09:00', { id: 'again', flight: 'F06' });
    expect(asSeen([...taken, again], false).drums.get('0451')!.where).toMatchObject({ flight: 'F06' });
  });
});

it('a drum left at a strip stands there, though its flight is still out', () => {
  const ledger = replay(flownOut('0451'));
  expect(ridingHome(ledger, () => false).size).toBe(0);
});
