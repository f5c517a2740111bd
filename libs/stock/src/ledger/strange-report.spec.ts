import { celsius, kilograms, kilogramsPerLitre, litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { counted, drawn, filled, leftAt, received, written } from './example-movements.js';
import type { Movement } from './movement.js';
import { type KnownHere, strangeIn } from './strange-report.js';

const known: KnownHere = {
  places: new Set(['BASE', 'STRIP']),
  aircraft: new Set(['H1', 'A2']),
  programmes: new Set(['P1']),
  batches: new Set(['J27']),
  batchesInDrums: new Set(['J27', 'J26']),
  brimLitres: litres(216),
  fillLitres: litres(200),
  countTolerance: { percentOfBook: 2, litresPerOpenDrum: litres(10), reference: 'stock manual 4.2' },
  densityAt15: new Map([['J27', kilogramsPerLitre(0.8)]]),
  densityTolerance: null,
};

const told = (movement: Movement) => strangeIn(movement, known).map(({ kind, what }) => `${kind}: ${what}`);
const byRadio = { means: 'radio', by: 'W. Crew' } as const;
const hold = (batch: string): Movement => ({
  ...written('hold', '07:00', byRadio),
  kind: 'held',
  of: { batch },
  reason: 'water',
});

describe('a report of what is set up, with figures of a drum', () => {
  it('leaves nothing to look at', () => {
    for (const movement of [filled('0451', '06:00'), received('0452', '06:00'), drawn('0451', '07:00', 200)])
      expect(
        told({ ...movement, ...(movement.kind === 'drawn' && { into: 'H1', programme: 'P1' }) }),
      ).toEqual([]);
  });
});

describe('names that nobody has set up', () => {
  it('an aircraft and a programme are raised together, with who said so and what to do', () => {
    const [raised, ...others] = strangeIn(
      { ...drawn('0451', '07:00', 80), ...byRadio, into: 'H9', programme: 'P7', place: 'STRIP' },
      known,
    );
    expect(others).toEqual([]);
    expect(raised).toMatchObject({
      kind: 'not in the territory',
      drum: '0451',
      place: 'STRIP',
      what: 'Drum 0451: "drawn" by W. Crew, by radio, names aircraft H9 and programme P7, which are not in the territory.',
      whatNext: 'Ask what was meant and correct the report, or have it added at Set-up.',
    });
  });

  it('a place that nobody knows is raised, wherever the drum was set down', () => {
    expect(told(leftAt('0451', '07:00', { place: 'XNEW', ...byRadio }))).toEqual([
      'not in the territory: Drum 0451: "left at" by W. Crew, by radio, names place XNEW, which is not in the territory.',
    ]);
  });

  it('fuel filled into an unknown batch has no retest date: not to be used', () => {
    const [raised] = strangeIn(filled('0451', '06:00', { batch: 'J72', ...byRadio }), known);
    expect(raised).toMatchObject({ kind: 'unknown batch' });
    expect(raised!.what).toContain('names batch J72, which is not set up: its drums have no retest date');
    expect(raised!.whatNext).toContain('Do not use the drum before.');
  });

  it('a hold of a batch that no drum has holds nothing, and says so at once; one of the ledger is known', () => {
    const [raised] = strangeIn(hold('J72'), known);
    expect(raised).toMatchObject({ kind: 'holds nothing', drum: null, place: null });
    expect(raised!.what).toBe(
      '"held" by W. Crew, by radio, is about batch J72, which no drum has: it holds nothing.',
    );
    expect(told(hold('J26'))).toEqual([]);
  });
});

describe('figures that no drum can have', () => {
  it('a count of more than its drums hold, or of less than its sealed ones; none seen says nothing', () => {
    const seen = (litres: number, sealedDrums: number) =>
      told(counted('STRIP', '07:00', litres, { sealedDrums }));
    expect(seen(2400, 12)).toEqual([]);
    expect(seen(2150, 0)).toEqual([]);
    expect(seen(2150, 12)).toEqual([
      'impossible figures: STRIP count by helper, by phone, cannot be so: it found 2,150 L, and 12 sealed drums hold 2,400 L.',
    ]);
  });

  const weighed = (grossKg: number): Movement => ({
    ...written('weigh', '07:00', byRadio),
    kind: 'weighed',
    drum: '0451',
    place: 'STRIP',
    grossKg: kilograms(grossKg),
  });
  const fill = (tareKg: number, grossKg: number, amount = 200) =>
    told(
      filled('0451', '06:00', {
        tareKg: kilograms(tareKg),
        grossKg: kilograms(grossKg),
        millilitres: (amount * 1000) as never,
      }),
    );

  it('a drum of 0 kg', () => {
    expect(told(weighed(0))).toEqual([
      'impossible figures: Drum 0451: "weighed" by W. Crew, by radio, cannot be so: it weighs 0 kg.',
    ]);
    expect(told(weighed(179))).toEqual([]);
    expect(fill(0, 179)[0]).toContain('it weighs 0 kg empty');
    expect(fill(20, 0)[0]).toContain('it weighs 0 kg.');
  });

  it('more litres than a drum holds to the brim, drawn, found or filled', () => {
    expect(told({ ...drawn('0451', '07:00', 217), into: 'H1', programme: 'P1' })[0]).toContain(
      '217 L in one drum, which holds 216 L to the brim',
    );
    expect(told({ ...drawn('0451', '07:00', 216), into: 'H1', programme: 'P1' })).toEqual([]);
    expect(told(leftAt('0451', '07:00', { foundMillilitres: 2_000_000 as never }))[0]).toContain('2,000 L');
  });

  it('a density that no jet fuel has; half a kilogram is the scale', () => {
    // 200 L at 775 kg/m3 weigh 155.0 kg, at 840 kg/m3 168.0 kg.
    expect(fill(20, 20 + 155)).toEqual([]);
    expect(fill(20, 20 + 154.5)).toEqual([]);
    expect(fill(20, 20 + 154.4)[0]).toContain('200 L that weigh 154.4 kg have 772 kg/m3');
    expect(fill(20, 20 + 168.5)).toEqual([]);
    expect(fill(20, 20 + 168.6)[0]).toContain('jet fuel has 775 to 840 kg/m3');
    expect(fill(20, 19)[0]).toContain('200 L that weigh −1.0 kg');
  });

  it('a clean empty drum that is received weighs what it weighs', () => {
    const empty = { content: 'clean empty', millilitres: 0 as never, grossKg: kilograms(20) } as const;
    expect(told(received('0451', '06:00', empty))).toEqual([]);
  });
});

describe('a fill that weighs other than its batch', () => {
  const comparing: KnownHere = {
    ...known,
    densityTolerance: {
      percent: 1,
      scaleErrorKg: kilograms(0.5),
      dipErrorLitres: litres(2),
      reference: 'invented manual 9',
    },
  };
  const toldOf = (movement: Movement) =>
    strangeIn(movement, comparing).map(({ kind, what }) => `${kind}: ${what}`);

  // 200 L at 0.8 kg/L are 160 kg; the drum empty 20 kg.
  const weighing = (grossKg: number, temperatureC?: number): Movement => ({
    ...filled('0451', '06:00'),
    ...{
      millilitres: 200_000 as Extract<Movement, { kind: 'filled' }>['millilitres'],
      tareKg: kilograms(20),
    },
    grossKg: kilograms(grossKg),
    ...(temperatureC === undefined ? {} : { temperatureC: celsius(temperatureC) }),
  });

  it('by more than the operator’s tolerance is raised, with both densities and what to do', () => {
    expect(toldOf(weighing(181.5, 15))).toEqual([]);
    const [raised, ...others] = strangeIn(weighing(164.6 + 20, 15), comparing);
    expect(others).toEqual([]);
    expect(raised).toMatchObject({ kind: 'unlike its batch', drum: '0451' });
    expect(raised!.what).toMatch(
      /does not weigh as its batch: .*0\.823 kg\/L at 15 °C against 0\.800.*2\.9 %/,
    );
    expect(raised!.whatNext).toContain('hold the drum');
  });

  it('is held against it at the temperature of the day; without one 15 °C is taken, and that is said', () => {
    // About 1.8 % heavier at -10 °C: what the cold alone does to it.
    expect(toldOf(weighing(182.9, -10))).toEqual([]);
    expect(toldOf(weighing(182.9))).toEqual([
      expect.stringContaining('No temperature was said: taken as 15 °C'),
    ]);
  });

  it('is raised once where it is no jet fuel at all, and not without a tolerance or a registered batch', () => {
    expect(toldOf(weighing(220, 15))).toEqual([expect.stringMatching(/^impossible figures/)]);
    for (const lacking of [{ densityTolerance: null }, { densityAt15: new Map() }])
      expect(strangeIn(weighing(184.6, 15), { ...comparing, ...lacking })).toEqual([]);
  });
});
