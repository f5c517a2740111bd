import { describe, expect, it } from 'vitest';
import { openToLetGo } from './open-to-let-go.js';

describe('frozen flights that a plan counts on and that cannot be flown', () => {
  const broken = { fault: { what: 'XLOR when soft accepts 7,600 lb.', mend: '' }, consequence: '' };
  const found = { needsDecision: ['F05', 'F06', 'F07'].map((id) => ({ ...broken, flight: id })) };
  const standing = (id: string, state: string, needsDecision: string | null) => ({
    id,
    state,
    needsDecision,
  });

  it('stand in the way of Accept until each is let go, kept or called off', () => {
    const open = openToLetGo(found, [
      standing('F05', 'given', 'XLOR when soft accepts 7,600 lb.'),
      standing('F06', 'approved', null),
      standing('F07', 'offered', 'XLOR when soft accepts 7,600 lb.'),
      standing('F08', 'approved', 'XHAS is closed.'),
    ]);
    expect(open.map(({ id }) => id)).toEqual(['F05']);
  });
});
