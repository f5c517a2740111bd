import {
  type GoodsDrum,
  goodsOnLeg,
  type ParticularsField,
  particulars,
  passengersAndDrums,
  turbineFuelTexts,
} from '@drumline/loading';
import { litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';

const drum = (number: string, content: GoodsDrum['content'], fill: number, fromLeg = 0): GoodsDrum => ({
  number,
  content,
  litres: litres(fill),
  position: 'R1L',
  fromLeg,
  lastLeg: 1,
  unloadAt: 'FAR',
});
const drums = [drum('1', 'fuel', 200), drum('2', 'fuel', 205), drum('3', 'uncleaned empty', 0, 1)];
const flight = { passengers: 0, date: '2027-06-15', approval: null };
const told = (fields: readonly ParticularsField[], leg: number) =>
  particulars(
    { reference: 'the rule', packaging: 'steel drum 1A1', emergencyContact: 'not given', fields },
    goodsOnLeg(drums, leg),
    flight,
  );

describe('information to the pilot', () => {
  // DG-4: 49 CFR 175.33(a): name, class and number, including any remaining aboard from prior stops; number of packages;
  // quantity of each (total with largest and smallest); location; nothing damaged or leaking; date; monitored phone;
  // cargo aircraft only; special permit.
  const fields: readonly ParticularsField[] = [
    { label: 'Shipping name', value: { text: turbineFuelTexts.shippingName } },
    { label: 'Class', value: { text: turbineFuelTexts.hazardClass } },
    { label: 'Number', value: { text: turbineFuelTexts.unNumber } },
    { label: 'Packages', value: { from: 'number and kind of packages' } },
    { label: 'Total', value: { from: 'total quantity' } },
    { label: 'Largest and smallest', value: { from: 'largest and smallest package' } },
    { label: 'Location', value: { from: 'positions' } },
    { label: 'None damaged or leaking, checked by', value: 'written by hand' },
    { label: 'Date', value: { from: 'date of flight' } },
    { label: 'Phone of a monitored person', value: 'written by hand' },
    { label: 'Passengers', value: { from: 'passengers' } },
    { label: 'Special permit', value: { from: 'approval cited' } },
  ];

  it('DG-4: every item of 49 CFR 175.33(a) can be a field, prior stops included', () => {
    expect(told(fields, 1).map(({ value }) => value)).toEqual([
      'Fuel, aviation, turbine engine',
      '3',
      'UN 1863',
      '2 × steel drum 1A1, and 1 × empty, not cleaned',
      '405 L',
      '205 L and 200 L',
      'R1L R1L R1L',
      null,
      '2027-06-15',
      null,
      'no passengers aboard',
      'none',
    ]);
  });

  // DG-5: SOR-2001-286 section 12.9, limited access: shipping name, UN number, class and quantity; neither packing group
  // nor number of packages.
  it('DG-5: a shorter set prints its own fields and no others', () => {
    const short = fields.filter(({ label }) => ['Shipping name', 'Number', 'Class', 'Total'].includes(label));
    expect(told(short, 0).map(({ label }) => label)).toEqual(['Shipping name', 'Class', 'Number', 'Total']);
  });
});

// DG-7: 49 CFR 173.29(a), (b)(2)(ii): a residue packaging travels as if full unless cleaned and purged.
// DG-1: more than 60 L of packing group III is for cargo aircraft only: any passenger blocks the leg.
it('DG-7 and DG-1: an empty that is not cleaned blocks a leg with a passenger, a clean one does not', () => {
  const rule = { drumsWithPassengers: 'refused', reference: 'the rule' } as const;
  const ask = (content: GoodsDrum['content']) => {
    const { filled, uncleanedEmpties } = goodsOnLeg([drum('3', content, 0)], 0);
    const leg = { from: 'A', to: 'B', date: '2027-06-15', aircraft: 'A1', passengers: 1 };
    const drumsAboard = filled.length + uncleanedEmpties.length;
    return passengersAndDrums({ ...leg, drums: drumsAboard }, rule, { number: null, onFile: [] }).allowed;
  };
  expect([ask('uncleaned empty'), ask('clean empty')]).toEqual([false, true]);
});
