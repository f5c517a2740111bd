import { describe, expect, it } from 'vitest';
import { doubtsOfOne, nameIn, sectionAt, sections, specOf } from '../sections.js';
import type { FieldSpec } from './field-spec.js';
import { documentOf, type TypedGroup, typedOf } from './typed.js';
import { labelsAt, typedFault, unmended } from './typed-faults.js';

const specFor = (list: string) => specOf(sectionAt(list), 'cr');
const fieldOf = (list: string, key: string): FieldSpec => {
  const spec = specFor(list);
  return spec.kind === 'group' ? spec.fields.find((field) => field.key === key)! : spec;
};
const through = (list: string, document: unknown) => {
  const spec = specFor(list);
  return documentOf(spec, typedOf(spec, document));
};

describe('a form read from the schema', () => {
  it('has the meaning as label and its unit beside the figure', () => {
    expect(fieldOf('stripLimits', 'takeoffLb')).toMatchObject({
      label: 'Take-off limit, dry or damp',
      unit: 'lb',
    });
    expect(fieldOf('places', 'latitudeDeg')).toMatchObject({
      label: 'Latitude, WGS84',
      note: 'north is plus',
    });
  });

  it('asks a sling from which cache to which', () => {
    expect([fieldOf('slings', 'from').label, fieldOf('slings', 'to').label]).toEqual([
      'From cache',
      'To cache',
    ]);
  });

  it('offers the names of things listed elsewhere', () => {
    expect(fieldOf('aircraft', 'type')).toMatchObject({ kind: 'text', offered: 'aircraftTypes' });
  });

  it('is made for every kind of thing, without a field that it cannot show', () => {
    for (const section of sections)
      expect([section.name, specFor(section.list).kind]).toEqual([section.name, 'group']);
  });

  it('takes money in the currency and keeps it in hundredths', () => {
    const price = fieldOf('bases', 'pricePerLitre');
    expect([price.unit, typedOf(price, 245), documentOf(price, '2.45')]).toEqual(['cr/L', '2.45', 245]);
  });

  it('takes a chance in per cent and keeps it as a share of 1', () => {
    const odds = fieldOf('weather', 'morningCancel');
    expect([odds.unit, typedOf(odds, 0.07), documentOf(odds, '7')]).toEqual(['%', '7', 0.07]);
    expect([typedOf(odds, 0.285), documentOf(odds, '28.5')]).toEqual(['28.5', 0.285]);
  });

  it('doubts the density of a batch at its field before anything is saved', () => {
    const paths = (list: string, data: object) => doubtsOfOne(sectionAt(list), data).map(({ path }) => path);
    const batch = {
      id: 'J27-041',
      grade: 'Jet A-1',
      filledOn: '2027-04-19',
      retestDue: '2028-04-19',
      filledAt: ['XALD'],
    };
    expect(paths('batches', { ...batch, densityAt15KgPerLitre: 80 })).toEqual(['densityAt15KgPerLitre']);
    expect(paths('batches', { ...batch, densityAt15KgPerLitre: 0.804 })).toEqual([]);
  });

  it('says what is wrong in the figure that was typed: 120 %, not the 1.2 that would be kept', () => {
    const fault = (list: string, path: string, problem: string, remedy: string) => {
      const said = typedFault(specFor(list), { path, problem, remedy });
      return `${said.problem} ${said.remedy}`;
    };
    expect(fault('weather', 'morningCancel', '1.2 is too large.', 'Give at most 1.')).toBe(
      '120 % is too large. Give at most 100 %.',
    );
    expect(fault('bases', 'pricePerLitre', '-245 is too small.', 'Give at least 0.')).toBe(
      '-2.45 cr/L is too small. Give at least 0 cr/L.',
    );
    const [missing, add] = ['this field is missing.', 'Add it (a number).'];
    expect(fault('bases', 'pricePerLitre', missing, add)).toBe(
      'Nothing is given here. Type a figure, in cr/L.',
    );
    expect(fault('weather', 'place', missing, 'Add it (text).')).toBe('Nothing is given here. Fill it in.');
    const name = '"free" does not fit.';
    expect(fault('weather', 'place', name, 'Use 1 of 2.')).toBe(`${name} Use 1 of 2.`);
  });

  it('says of a cache in a word or two what the figure is, and below it what it means', () => {
    expect(fieldOf('caches', 'endTargetLitres')).toMatchObject({
      label: 'End target',
      note: 'level to leave on the last day; empty: the minimum',
      unit: 'L',
    });
  });

  it('shows a word that would do where one is typed: a clock time, a time zone, a code', () => {
    const example = (list: string, key: string) => fieldOf(list, key);
    expect(example('settings', 'timeZone')).toMatchObject({ example: 'Etc/GMT' });
    expect(example('places', 'radioTime')).toMatchObject({ example: '06:50' });
    expect(example('pilots', 'id')).toMatchObject({ example: 'FW1' });
    expect(example('aircraft', 'type')).toMatchObject({ example: '' });
    expect(example('places', 'remarks')).toMatchObject({ example: '' });
  });

  it('a list that is empty is asked for where one is needed, and may be empty where none is', () => {
    expect(fieldOf('pilots', 'stripClasses')).toMatchObject({ atLeast: 1 });
    expect(fieldOf('pilots', 'daysOff')).toMatchObject({ atLeast: 0 });
    const said = typedFault(specFor('pilots'), {
      path: 'stripClasses',
      problem: 'this is empty.',
      remedy: 'Give at least 1 of them.',
    });
    expect(`${said.problem} ${said.remedy}`).toBe('Nothing is given here. Fill it in.');
  });

  it('a fault goes from its field when something else is typed there, and the others stay', () => {
    const faults = ['code', 'runway.lengthFt', 'name'].map((path) => ({ path, problem: '', remedy: '' }));
    const left = unmended(
      faults,
      { code: 'x', runway: { lengthFt: '12 m' } },
      { code: 'XNOR', runway: { lengthFt: '12 m' } },
    );
    expect(left.map(({ path }) => path)).toEqual(['runway.lengthFt', 'name']);
  });

  it('speaks of what is empty on the form, not of null', () => {
    expect(fieldOf('places', 'runway').note).toBe('empty at a pad');
  });

  it('names no zone beside an instant that ends in its own', () => {
    expect(fieldOf('settings', 'clockStartsAt').unit).toBe('');
  });
});

describe('what was typed', () => {
  it.each([
    [
      'places',
      {
        code: 'XPAD',
        name: 'Pad',
        kind: 'pad',
        latitudeDeg: 61.2,
        longitudeDeg: -10,
        elevationFt: 1300,
        stripClass: null,
        runway: null,
        landingCapacityDrumsPerDay: null,
        surface: { staleAfterHours: 12, expected: 'dry' },
      },
    ],
    [
      'stripLimits',
      { place: 'XLOR', type: 'C', takeoffLb: 11_600, landingLb: 11_500, whenSoft: 'closed', reference: 'r' },
    ],
    [
      'stripLimits',
      {
        place: 'XLOR',
        type: 'A',
        takeoffLb: 6900,
        landingLb: 6900,
        whenSoft: { takeoffLessLb: 500, landingLessLb: 450 },
        reference: 'r',
      },
    ],
    ['programmes', { code: 'P1', name: 'survey', recharge: { kind: 'delivered cost', marginPercent: 8 } }],
    ['distances', { between: ['XMER', 'XLOR'], distanceNm: 89 }],
    [
      'pilots',
      { id: 'FW1', types: ['A'], stripClasses: [1, 2], lastLandings: [], daysOff: ['2027-06-19'], flown: [] },
    ],
    [
      'tieDown',
      {
        type: 'every type',
        factors: { forward: 9, aft: 2, sideways: 2, up: 4, reference: 'r' },
        kit: {
          strap: { figure: 'ultimate load in an aircraft', ultimateLb: 5000, reference: 'r' },
          fitting: { figure: 'ultimate load in an aircraft', ultimateLb: 4000, reference: 'r' },
          floorRing: { figure: 'working load for the road', workingLoadLb: 2000 },
          angles: { aboveFloorDeg: 30, offAxisDeg: 30 },
        },
      },
    ],
    [
      'dangerousGoods',
      {
        reference: 'r',
        packaging: 'steel drum',
        emergencyContact: 'desk',
        fields: [
          { label: 'UN number', value: { text: 'UN 1863' } },
          { label: 'Drums', value: { from: 'drum numbers' } },
          { label: 'Checked by', value: 'written by hand' },
        ],
      },
    ],
  ])('of %s comes back as the document that it was', (list, document) => {
    expect(through(list, document)).toEqual(document);
  });

  it('and is no figure stays as typed, so that the server says what is wrong', () => {
    expect(documentOf(fieldOf('caches', 'minimumLitres'), '0.8k')).toBe('0.8k');
    expect(documentOf(fieldOf('caches', 'minimumLitres'), '1,200')).toBe(1200);
  });

  it('and is empty is left out, null or missing, as the field says', () => {
    const spec = specFor('caches');
    const typed = { ...(typedOf(spec, {}) as TypedGroup), place: 'XLOR' };
    expect(documentOf(spec, typed)).toEqual({ place: 'XLOR' });
  });
});

describe('the name of a thing', () => {
  it('is made of its own fields, and there is none without them', () => {
    expect(nameIn(sectionAt('stripLimits'), { place: 'XLOR', type: 'B' })).toBe('XLOR-B');
    expect(nameIn(sectionAt('distances'), { between: ['XMER', 'XALD'] })).toBe('XALD-XMER');
    expect(nameIn(sectionAt('places'), { name: 'no code yet' })).toBeNull();
  });
});

describe('a rating of a strap', () => {
  it('is asked as a road figure until somebody says that it is one for aircraft', () => {
    const blank = through('tieDown', {}) as { kit: { strap: object } };
    expect(blank.kit.strap).toEqual({ figure: 'working load for the road' });
  });
});

it('a fault goes by the labels of the form, down to the line of a list', () => {
  const settings = specFor('settings');
  expect([
    labelsAt(settings, 'days'),
    labelsAt(settings, 'offeredDays'),
    labelsAt(settings, 'currency'),
  ]).toEqual(['Days looked ahead', 'Days offered to the dispatcher, from day 1', 'What money is printed in']);
  expect(labelsAt(specFor('aircraft'), 'absences[1].until')).toMatch(/^[A-Z].* 2, \S.*/);
  expect(labelsAt(settings, 'notKnown')).toBe('not known');
});
