import { describe, expect, it } from 'vitest';
import { upright } from '../../counting/example-dip-table.js';
import { dipWords, foundInOpen } from './dips.js';

const draft = { open: 2, openLitres: '', dipTable: 'upright drum' };

describe('what is found in the open drums', () => {
  it('is the litres that were written, or the stick in every one of them', () => {
    expect(foundInOpen({ open: 1, openLitres: '80' }, [upright])).toEqual({ litres: 80 });
    expect(foundInOpen({ ...draft, dips: ['34', '51.5'] }, [upright])).toEqual({
      litres: 220,
      words: 'By stick, upright drum: 34 cm, 51.5 cm.',
    });
  });

  it('waits for the second drum, and for a stick that is not longer than the drum', () => {
    expect(foundInOpen({ ...draft, dips: ['34'] }, [upright]).litres).toBeNull();
    expect(foundInOpen({ ...draft, dips: ['34', '90'] }, [upright]).litres).toBeNull();
    expect(dipWords(upright, '90')).toBe('no upright drum is deeper than 84.1 cm');
  });

  it('one drum less counts one stick less', () => {
    expect(foundInOpen({ ...draft, open: 1, dips: ['34', '51.5'] }, [upright]).litres).toBe(87);
  });
});
