import { centimetres, kilograms, kilogramsPerLitre, litres } from '@drumline/units';
import { readLine } from '../read-line.js';
import type { LineEntry, Sheet, SheetDrum } from '../sheet.js';

export const inBook = (number: string, inIt: number, place: string): SheetDrum => ({
  ...{ number, litres: litres(inIt), place, sealed: true, held: false, retestDue: '2028-04-19' },
});

export const sheet: Sheet = {
  day: '2027-06-16',
  means: 'paper',
  by: '',
  now: '2027-06-16T14:00:00Z',
  timeZone: 'Etc/GMT',
  places: ['XLOR', 'XESK', 'XMAR', 'XGAN', 'XALD', 'XMER', 'YGAN'].map((code) => ({ code, name: code })),
  flights: [
    {
      id: 'F08',
      ...{ state: 'given', version: 2, date: '2027-06-16', departs: '08:00', pilot: 'FW3' },
      ...{ fromPlace: 'XALD', toPlace: 'XALD', stops: [{ place: 'XLOR' }], legs: 2 },
      loads: ['0490', '0491', '0492'].map((drum) => ({ place: 'XLOR', drum })),
    },
  ],
  drums: [
    inBook('0447', 200, 'XESK'),
    inBook('0448', 80, 'XESK'),
    ...['0490', '0491', '0492'].map((number) => inBook(number, 200, 'XALD')),
  ],
  programmes: ['P1', 'P3'],
  fillLitres: 200,
  countTolerance: { percentOfBook: 2, litresPerOpenDrum: litres(10), reference: 'stock manual 4.2' },
  batches: [{ id: 'J27-041', densityAt15KgPerLitre: kilogramsPerLitre(0.804) }],
  densityTolerance: {
    ...{ percent: 1, reference: 'fuel manual 6.3' },
    ...{ scaleErrorKg: kilograms(0.5), dipErrorLitres: litres(2) },
  },
  mayFill: true,
  bookDensityKgPerLitre: kilogramsPerLitre(0.8),
  notGiven: [
    { id: 'F04', state: 'offered' },
    { id: 'F01', state: 'closed' },
  ],
  dipTables: [
    {
      ...{ name: 'upright drum', kind: 'upright drum', stickMarksCm: centimetres(1), reference: 'test' },
      ...{ innerDiameterCm: centimetres(57.2), innerHeightCm: centimetres(84.1) },
    },
    {
      ...{ name: 'lying drum', kind: 'lying drum', stickMarksCm: centimetres(1), reference: 'test' },
      ...{ innerDiameterCm: centimetres(57.2), innerLengthCm: centimetres(84.1) },
    },
  ],
};
export const entryOf = (line: string, on: Partial<Sheet> = {}): LineEntry => {
  const read = readLine(line, { ...sheet, ...on });
  if (read?.kind !== 'entry') throw new Error(read?.words ?? 'nothing');
  return read;
};
export const faultOf = (line: string): string => {
  const read = readLine(line, sheet);
  return read?.kind === 'fault' ? read.words : 'no fault';
};
