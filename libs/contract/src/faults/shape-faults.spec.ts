import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { afterSpoiling } from '../tiny-document.js';
import { printFault } from './fault.js';
import { shapeFaults } from './shape-faults.js';

/** What is said after one field of the tiny document was given another value. */
const said = (list: string, field: string, value: unknown) =>
  afterSpoiling((document) => {
    document[list][0][field] = value;
  }).faults;

describe('faults of form say what stands there and what belongs there', () => {
  it.each([
    ['drums', 'litres', '200', '"200" is not a number. Write the figure without quotes or unit.'],
    ['drums', 'litres', -1, '-1 is too small. Give at least 0.'],
    [
      'drums',
      'content',
      'full',
      '"full" is not a word known here. Use "filled sealed", "part used", "clean empty", "empty with residue", "drained".',
    ],
    [
      'drums',
      'content',
      'part usd',
      '"part usd" is not a word known here. Use "part used", or another of "filled sealed", "clean empty", "empty with residue", "drained".',
    ],
    ['weather', 'morningCancel', 1.2, '1.2 is too large. Give at most 1.'],
    ['places', 'code', 'LOR', '"LOR" does not fit: a place code is four capital letters, like XLOR.'],
    ['places', 'name', '', 'this is empty. Give at least 1 letter.'],
    ['places', 'elevationFt', '20,5', '"20,5" is not a number. Write decimals with a point: 20.5.'],
    ['places', 'elevationFt', '1,250', '"1,250" is not a number. Write the figure without quotes or unit.'],
    ['places', 'elevationFt', null, 'null is not a number. Correct it.'],
    ['caches', 'capacityDrums', 2.5, '2.5 is not a whole number. Correct it.'],
    [
      'helicopterTasks',
      'date',
      '2031-02-30',
      '"2031-02-30" does not fit: a day is written YYYY-MM-DD, like 2027-06-14.',
    ],
    [
      'counts',
      'at',
      '2031-03-02 18:00',
      '"2031-03-02 18:00" does not fit: give the day and the time in UTC, with T between and Z behind, like 2027-06-14T06:00Z.',
    ],
    [
      'flights',
      'departs',
      '7:00',
      '"7:00" does not fit: a clock time is written HH:MM, from 00:00 to 23:59.',
    ],
    ['flights', 'stops', [], 'this is empty. Give at least 1 of them.'],
    [
      'stripLimits',
      'whenSoft',
      'shut',
      '"shut" does not fit: give "closed", or { "takeoffLessLb": ..., "landingLessLb": ... } in lb.',
    ],
    ['pilots', 'types', [], 'this is empty. Give at least 1 of them.'],
    [
      'programmes',
      'recharge',
      { kind: 'free' },
      '"free" does not fit: kind is "delivered cost" (with marginPercent), "fixed price" (with centsPerLitre) or "not recharged".',
    ],
  ])('%s[0].%s = %j', (list, field, value, words) => {
    const path = field === 'recharge' ? 'programmes[0].recharge.kind' : `${list}[0].${field}`;
    expect(said(list, field, value)).toContain(`${path}: ${words}`);
  });

  it('percentages lie between 0 and 100', () => {
    const { faults } = afterSpoiling((document) => {
      document.policy.fuel.contingencyPercent = 110;
    });
    expect(faults).toEqual(['policy.fuel.contingencyPercent: 110 is too large. Give at most 100.']);
  });

  it('where one of several forms fits from outside, the fields inside it are named', () => {
    expect(said('stripLimits', 'whenSoft', { takeoffLessLb: 500, landngLessLb: -1 })).toEqual([
      'stripLimits[0].whenSoft.landingLessLb: this field is missing. Add it (a number).',
      'stripLimits[0].whenSoft.landngLessLb: this field is not known. Did you mean landingLessLb?',
    ]);
  });

  it('a missing field is named, with what belongs there', () => {
    const { faults } = afterSpoiling((document) => {
      delete document.drums[1].grossKg;
      delete document.policy;
    });
    expect(faults).toEqual([
      'policy: this field is missing. Add it (an object).',
      'drums[1].grossKg: this field is missing. Add it (a number).',
    ]);
  });

  it('an unknown field is refused, and the name it may be a slip of is suggested', () => {
    const { faults } = afterSpoiling((document) => {
      document.stripLimits[1].landngLb = 6900;
      document.programmes[0].recharge.margin = 8;
      document.colour = 'red';
    });
    expect(faults).toContain('stripLimits[1].landngLb: this field is not known. Did you mean landingLb?');
    expect(faults).toContain(
      'programmes[0].recharge.margin: this field is not known. Remove it; known here: kind, marginPercent, centsPerLitre.',
    );
    expect(faults.find((fault) => fault.startsWith('colour'))).toMatch(
      /^colour: this field is not known\. Remove it/,
    );
  });
});

describe('the words of a body that cannot be read', () => {
  const reportSchema = z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('left'), means: z.enum(['radio', 'phone']) }),
    z.strictObject({ kind: z.literal('drawn'), drum: z.string().min(3).max(4) }),
  ]);
  const words = (value: unknown) => shapeFaults(reportSchema, value).map(printFault);

  it.each([
    [{ kind: 'laft' }, 'kind: "laft" is not a word known here. Use "left", or another of "drawn".'],
    [{}, 'kind: this field is missing. Add it, one of "left", "drawn".'],
    [{ kind: 'left' }, 'means: this field is missing. Add it, one of "radio", "phone".'],
    [3, 'document: 3 is not an object. Give an object with the fields kind, means, drum.'],
    [{ kind: 'drawn', drum: '04' }, 'drum: "04" is too short. Give at least 3 letters.'],
    [{ kind: 'drawn', drum: '04311' }, 'drum: "04311" is too long. Give at most 4 letters.'],
  ])('%j', (value, said) => {
    expect(words(value)).toEqual([said]);
  });

  it('an id that is none says what one looks like', () => {
    expect(shapeFaults(z.uuid(), 'F01').map(printFault)).toEqual([
      'document: "F01" does not fit: an id is a UUID, like 3f0c2b1e-8d54-4c6a-9b7e-2a1d5e6f7081.',
    ]);
  });

  it('a password is never repeated', () => {
    const schema = z.strictObject({ next: z.string().min(10).meta({ format: 'password' }) });
    expect(shapeFaults(schema, { next: 'secret' }).map(printFault)).toEqual([
      'next: this password is too short. Give at least 10 letters.',
    ]);
    expect(shapeFaults(schema, { next: 7_777_777 }).map(printFault)).toEqual([
      'next: this password is not text. Correct it.',
    ]);
  });
});
