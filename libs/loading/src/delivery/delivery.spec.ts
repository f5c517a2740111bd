import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DeliveryReport } from './delivery-report.js';
import { deliveryTexts } from './delivery-texts.js';
import { parseDelivery } from './parse-delivery.js';

const report: DeliveryReport = {
  flight: 'F06',
  leg: 1,
  place: 'GAN',
  date: '2027-06-15',
  time: '08:05',
  left: ['0573', '0574', '0575'].map((number) => ({ number, condition: 'sound' })),
  back: [{ number: '0576', condition: 'seal broken' }],
  surface: 'dry',
  by: 'FW1',
};
const line = 'F06/1 GAN 2027-06-15 0805 LEFT 0573 0574 0575 BACK 0576 SEAL SURFACE DRY BY FW1';

const faultsOf = (text: string) => {
  const parsed = parseDelivery(text);
  return parsed.ok ? [] : parsed.faults;
};

describe('a delivery as a text message', () => {
  it('3 left and 1 brought back with a broken seal', () => {
    expect(deliveryTexts(report)).toEqual([line]);
  });

  it('is read back as it was written', () => {
    expect(parseDelivery(line)).toEqual({ ok: true, report });
  });

  it('is read as people type it', () => {
    const typed =
      'f06/1 gan 2027-06-15 08:05\nleft 0573, 0574, 0575 good\nback 0576 seal broken; surface dry by fw1';
    expect(parseDelivery(typed)).toEqual({ ok: true, report });
  });

  it('six drums, whatever is wrong with them, fit in 160 signs', () => {
    const drums = ['0447', '0448', '0449', '0450', '0451', '0452'];
    const worst = drums.map((number) => ({ number, condition: 'damaged' as const }));
    const texts = deliveryTexts({
      ...report,
      left: worst.slice(0, 3),
      back: worst.slice(3),
      surface: 'closed',
    });
    expect(texts).toHaveLength(1);
    expect(texts[0]!.length).toBeLessThanOrEqual(160);
  });

  it('more drums take more messages, each of which can be read by itself', () => {
    const left = Array.from({ length: 30 }, (_, i) => ({
      number: `${1000 + i}`,
      condition: 'sound' as const,
    }));
    const texts = deliveryTexts({ ...report, left });
    expect(texts.length).toBeGreaterThan(1);
    const read = texts.map(parseDelivery).map((parsed) => (parsed.ok ? parsed.report : null));
    expect(read.flatMap((one) => one!.left)).toEqual(left);
    expect(read.flatMap((one) => one!.back)).toEqual(report.back);
    expect(texts.every((text) => text.length <= 160)).toBe(true);
  });

  it('any delivery survives being sent', () => {
    const drum = fc.record({
      number: fc.integer({ min: 0, max: 9999 }).map((number) => String(number).padStart(4, '0')),
      condition: fc.constantFrom('sound', 'seal broken', 'damaged', 'leaking'),
    });
    const drums = fc.uniqueArray(drum, { minLength: 1, maxLength: 6, selector: ({ number }) => number });
    fc.assert(
      fc.property(drums, fc.nat(6), (list, cut) => {
        const sent = { ...report, left: list.slice(0, cut), back: list.slice(cut) } as DeliveryReport;
        const read = deliveryTexts(sent).map(parseDelivery);
        expect(read.flatMap((one) => (one.ok ? one.report.left : []))).toEqual(sent.left);
        expect(read.flatMap((one) => (one.ok ? one.report.back : []))).toEqual(sent.back);
      }),
    );
  });

  it('names that fill a message are refused, not cut', () => {
    expect(() => deliveryTexts({ ...report, by: 'x'.repeat(160) })).toThrow(/160 signs/);
  });
});

describe('faults of a typed delivery', () => {
  it.each([
    ['F06 GAN 2027-06-15 0805 LEFT 0573 BY FW1', '"F06" is no flight and leg: begin as F06/1.'],
    ['F06/1 2027-06-15 0805 LEFT 0573 BY FW1', '"2027-06-15" is no place code: write it after the flight.'],
    ['F06/1 GAN 2027-06-31 0805 LEFT 0573 BY FW1', '"2027-06-31" is no date: write it as 2027-06-15.'],
    ['F06/1 GAN 2027-06-15 2605 LEFT 0573 BY FW1', '"2605" is no local time: write it as 0805.'],
    ['F06/1 GAN 2027-06-15 0805 BY FW1', 'No drum is named: write LEFT or BACK and the drum numbers.'],
    ['F06/1 GAN 2027-06-15 0805 LEFT 0573 BACK 0573 BY FW1', 'Drum 0573 is named twice.'],
    ['F06/1 GAN 2027-06-15 0805 LEFT 0573', 'Nobody is named: end with BY and who reports.'],
    [
      'F06/1 GAN 2027-06-15 0805 LEFT SEAL 0573 BY FW1',
      '"SEAL" stands before any drum: write it after the drum\'s number.',
    ],
    [
      'F06/1 GAN 2027-06-15 0805 LEFT 0573 SURFACE WET BY FW1',
      '"WET" is no surface: use DRY, DAMP, SOFT or CLOSED.',
    ],
    [
      'F06/1 GAN 2027-06-15 0805 LEFT 0573 GONE BY FW1',
      '"GONE" is not understood: use LEFT, BACK, SURFACE or BY.',
    ],
  ])('%s', (text, fault) => {
    expect(faultsOf(text)).toContain(fault);
  });

  it('all at once', () => {
    expect(faultsOf('F06 GAN today').length).toBeGreaterThan(3);
    expect(faultsOf('')).not.toEqual([]);
  });

  it('no text crashes it', () => {
    fc.assert(fc.property(fc.string(), (text) => void parseDelivery(text)));
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...line.split(' '))),
        (words) => void parseDelivery(words.join(' ')),
      ),
    );
  });
});
