import { describe, expect, it } from 'vitest';
import { askedWords } from './asked-words.js';

describe('flights to a cache that need a decision', () => {
  const asked = (flight: string, needsDecision: string | null) => ({ flight, needsDecision });

  it('each reason is said once, with every flight that it is of', () => {
    const deliveries = [
      asked('F03', 'XLOR is soft.'),
      asked('F04', null),
      asked('F05', 'Drum 0451 is held: seal broken.'),
      asked('F08', 'XLOR is soft.'),
    ];
    expect(askedWords(deliveries)).toBe(
      'F03, F08 need a decision: XLOR is soft. F05 needs a decision: Drum 0451 is held: seal broken.',
    );
  });

  it('a flight that stops twice is named once; nothing is said where none needs one', () => {
    expect(askedWords([asked('F03', 'XLOR is soft.'), asked('F03', 'XLOR is soft.')])).toBe(
      'F03 needs a decision: XLOR is soft.',
    );
    expect(askedWords([asked('F04', null)])).toBe('');
  });
});
