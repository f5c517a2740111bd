import { litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import type { PassengerRule } from '../aircraft-type.js';
import { type GoodsDrum, goodsOnLeg } from './goods-aboard.js';
import { type ParticularsSet, particulars, turbineFuelTexts } from './particulars.js';
import { type AuthorityApproval, type PassengerLeg, passengersAndDrums } from './passengers-and-drums.js';

const drum = (number: string, changes: Partial<GoodsDrum> = {}): GoodsDrum => ({
  number,
  content: 'fuel',
  litres: litres(200),
  position: 'R1L',
  fromLeg: 0,
  lastLeg: 0,
  unloadAt: 'NEAR',
  ...changes,
});

/** Two drums for NEAR, one for FAR; from NEAR on two empties home, one of them cleaned. */
const drums = [
  drum('0447', { position: 'R2L' }),
  drum('0448', { position: 'R2R' }),
  drum('0449', { position: 'R1L', lastLeg: 1, unloadAt: 'FAR' }),
  drum('0301', {
    content: 'uncleaned empty',
    litres: litres(0),
    position: 'R2L',
    fromLeg: 1,
    lastLeg: 2,
    unloadAt: 'BASE',
  }),
  drum('0302', {
    content: 'clean empty',
    litres: litres(0),
    position: 'R2R',
    fromLeg: 1,
    lastLeg: 2,
    unloadAt: 'BASE',
  }),
];

const set: ParticularsSet = {
  reference: 'operations manual 9.1',
  packaging: 'steel drum 1A1',
  emergencyContact: 'desk 0000, day and night',
  fields: [
    { label: 'UN number', value: { text: turbineFuelTexts.unNumber } },
    { label: 'Packages', value: { from: 'number and kind of packages' } },
    { label: 'Each', value: { from: 'quantity of each package' } },
    { label: 'In all', value: { from: 'total quantity' } },
    { label: 'Drums', value: { from: 'drum numbers' } },
    { label: 'Where', value: { from: 'positions' } },
    { label: 'Unload at', value: { from: 'place of unloading' } },
    { label: 'Empties', value: { from: 'uncleaned empties' } },
    { label: 'Passengers', value: { from: 'passengers' } },
    { label: 'Emergency contact', value: { from: 'emergency contact' } },
    { label: 'Seals looked at by', value: 'written by hand' },
  ],
};
const flight = { passengers: 0, date: '2027-06-15', approval: null };
const valuesOn = (leg: number) => particulars(set, goodsOnLeg(drums, leg), flight).map(({ value }) => value);

describe('particulars of dangerous goods for the pilot', () => {
  it('name every drum of the leg in the operator’s own fields', () => {
    expect(valuesOn(0)).toEqual([
      'UN 1863',
      '3 × steel drum 1A1',
      '200 L',
      '600 L',
      '0447 0448 0449',
      'R2L R2R R1L',
      'NEAR, FAR',
      'none',
      'no passengers aboard',
      'desk 0000, day and night',
      null,
    ]);
  });

  it('include drums still aboard from the stop before, and empties that are not cleaned', () => {
    expect(valuesOn(1).slice(1, 8)).toEqual([
      '1 × steel drum 1A1, and 1 × empty, not cleaned',
      '200 L',
      '200 L',
      '0449 0301',
      'R1L R2L',
      'FAR, BASE',
      '1 × empty, not cleaned',
    ]);
  });

  it('uncleaned empties alone are dangerous goods still; clean ones are none', () => {
    expect(valuesOn(2)[2]).toBe('residue only');
    const clean = [drum('0302', { content: 'clean empty', litres: litres(0) })];
    expect(particulars(set, goodsOnLeg(clean, 0), flight)).toEqual([]);
  });
});

describe('Passengers and drums, by leg', () => {
  const rule: PassengerRule = { drumsWithPassengers: 'refused', reference: 'manual 8.2' };
  const leg: PassengerLeg = {
    from: 'MER',
    to: 'ISK',
    date: '2027-06-14',
    aircraft: 'A1',
    passengers: 4,
    drums: 2,
  };
  const approval: AuthorityApproval = {
    number: 'EX-17',
    authority: 'the authority',
    scope: 'survey camp resupply',
    legs: [['ISK', 'MER']],
    aircraft: ['A1'],
    mostDrums: 2,
    mostPassengers: 4,
    conditions: 'drums forward, extinguisher at hand.',
    from: '2027-06-01',
    until: '2027-06-30',
    enteredBy: 'om1',
    confirmedBy: 'qa1',
  };
  const ask = (
    changes: Partial<PassengerLeg> = {},
    filed: Partial<AuthorityApproval> = {},
    number: string | null = 'EX-17',
  ) => passengersAndDrums({ ...leg, ...changes }, rule, { number, onFile: [{ ...approval, ...filed }] });

  it('refuses by default, with the rule', () => {
    expect(ask({}, {}, null)).toEqual({
      allowed: false,
      words:
        'MER-ISK: 4 passengers and 2 drums are refused (manual 8.2). Only an approval of the authority on file sets this aside.',
    });
  });

  it('has nothing to say of a leg without passengers or without drums', () => {
    expect(ask({ passengers: 0 }, {}, null).allowed).toBe(true);
    expect(ask({ drums: 0 }, {}, null).allowed).toBe(true);
  });

  it('an approval on file sets it aside, and its number and conditions go on the sheet', () => {
    const answer = ask();
    expect(answer.allowed).toBe(true);
    expect(answer.words).toBe(
      'MER-ISK: 4 passengers and 2 drums by approval EX-17 of the authority, until Wed 30 June 2027. Conditions: drums forward, extinguisher at hand.',
    );
  });

  it.each([
    ['is not on file', {}, {}, 'EX-18', 'no approval EX-18 is on file'],
    ['waits for a second person', {}, { confirmedBy: null }, 'EX-17', 'second person'],
    ['was entered and confirmed by one person', {}, { confirmedBy: 'om1' }, 'EX-17', 'second person'],
    ['does not hold yet', { date: '2027-05-31' }, {}, 'EX-17', 'from Tue 1 June 2027'],
    ['has expired', { date: '2027-07-01' }, {}, 'EX-17', 'ended on Wed 30 June 2027'],
    ['is for another leg', { to: 'CIN' }, {}, 'EX-17', 'does not cover this leg'],
    ['is for another aircraft', { aircraft: 'B1' }, {}, 'EX-17', 'does not cover B1'],
    ['is for fewer drums', { drums: 3 }, {}, 'EX-17', '2 drums at most'],
    ['is for fewer passengers', { passengers: 5 }, {}, 'EX-17', '4 passengers at most'],
  ] as const)('an approval that %s does not', (_, changes, filed, number, why) => {
    const answer = ask(changes, filed, number);
    expect(answer.allowed).toBe(false);
    expect(answer.words).toContain(why);
  });

  it('holds on its first and last day', () => {
    expect(ask({ date: '2027-06-01' }).allowed && ask({ date: '2027-06-30' }).allowed).toBe(true);
  });
});
