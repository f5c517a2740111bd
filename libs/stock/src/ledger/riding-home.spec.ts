import { describe, expect, it } from 'vitest';
import { bookAt } from './book-at.js';
import { at, filled, flownOut, leftAt, loaded, written } from './example-movements.js';
import type { Movement } from './movement.js';
import { replay } from './replay.js';
import { asLanded, ridingHome, withRiding } from './riding-home.js';

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

describe('the book of base at the moment of a count', () => {
  const book = (clock: string, downAt: string | null | undefined) =>
    bookAt(
      asLanded(replay(taken), () => downAt),
      'BASE',
      at(clock),
    );

  it('has the drum from when the flight was down, not from when its crew took it', () => {
    expect(book('07:30', at('08:00'))).toBe(0);
    expect(book('08:00', at('08:00'))).toBe(200_000);
  });

  it('does not have it while the flight is out; of a flight nobody knows, the crew is believed', () => {
    expect(book('09:00', null)).toBe(0);
    expect(book('07:30', undefined)).toBe(200_000);
  });

  it('loses it where it was loaded again, though the landing came in later', () => {
    const again = loaded('0451', '07:40', { id: 'again', flight: 'F06' });
    const ledger = asLanded(replay([...taken, again]), (flight) => (flight === 'F05' ? at('08:00') : null));
    expect(bookAt(ledger, 'BASE', at('07:30'))).toBe(0);
    expect(bookAt(ledger, 'BASE', at('08:30'))).toBe(0);
  });
});

it('a drum left at a strip stands there, though its flight is still out', () => {
  const ledger = replay(flownOut('0451'));
  expect(ridingHome(ledger, () => false).size).toBe(0);
});
