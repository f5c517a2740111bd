import { kilograms, kilogramsPerLitre } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { drumInNoBook, notInBookWords } from './drum-in-no-book.js';
import { standing } from './example-load.js';

const reckonedBy = {
  drum: { grossKg: kilograms(180), tareKg: kilograms(20) },
  bookDensityKgPerLitre: kilogramsPerLitre(0.8),
};

describe('a drum that is aboard and in no book', () => {
  const told = drumInNoBook('0913', kilograms(190), reckonedBy);
  const untold = drumInNoBook('0914', null, reckonedBy);

  it('weighs what its crew says: the steel as planned, the rest fuel', () => {
    expect(told).toMatchObject({ grossKg: 190, tareKg: 20, litres: 213, notInBook: 'weight by the crew' });
    expect(drumInNoBook('0913', kilograms(15), reckonedBy).litres).toBe(0);
  });

  it('weighs as planned where nobody has said it', () => {
    expect(untold).toMatchObject({ grossKg: 180, litres: 200, notInBook: 'planning weight' });
  });

  it('is said in words, with what its weight is by; nothing is said of drums in the book', () => {
    const inBook = standing('0447', 'R1L');
    expect(notInBookWords([{ ...told, offAfterLeg: 0 }, inBook, { ...untold, offAfterLeg: 0 }])).toBe(
      '0913 is not in the book: 190.0 kg by the crew. 0914 is not in the book: no weight was told, 180.0 kg as planned.',
    );
    expect(notInBookWords([inBook])).toBeNull();
  });
});
