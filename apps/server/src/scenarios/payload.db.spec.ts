import type { Scenario } from '@drumline/planning';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createTestServer, type TestServer } from '../testing/create-test-server.js';

let server: TestServer;
beforeAll(async () => {
  server = await createTestServer();
});
afterAll(() => server.close());

interface Checked {
  readonly drums: readonly {
    base: string;
    strip: string;
    type: string;
    dry: number | null;
    soft: number | null;
  }[];
  readonly faults: readonly { place: string; type: string; path: string }[];
}

const limitOf = async (id: string) => {
  const setUp = await server.as('set-up');
  return (await setUp.get<{ data: Scenario['stripLimits'][number] }>(`/api/strip-limits/${id}`)).body.data;
};

const check = async (stripLimits: readonly object[]) => {
  const setUp = await server.as('set-up');
  return (await setUp.post<Checked>('/api/payload', { stripLimits })).body;
};

// product.md, M5: type A from MER to GAN 4 drums; type B from ALD to LOR 6 dry, 4 soft; C closed there when soft.
describe('drums beside the strip limits', () => {
  it('in force: GAN takes 4 drums of type A, LOR 6 of type B and 4 when it is soft', async () => {
    const { drums, faults } = await check([]);
    expect(faults).toEqual([]);
    expect(drums).toContainEqual(expect.objectContaining({ base: 'XMER', strip: 'XGAN', type: 'A', dry: 4 }));
    expect(drums).toContainEqual({ base: 'XALD', strip: 'XLOR', type: 'B', dry: 6, soft: 4 });
  });

  it('a digit left out of a landing limit shows at once: no drum goes, or fewer', async () => {
    const { drums } = await check([{ ...(await limitOf('XLOR-B')), landingLb: 7300 }]);
    const row = drums.find(({ base, strip, type }) => base === 'XALD' && strip === 'XLOR' && type === 'B');
    expect(row!.dry ?? 0).toBeLessThan(6);
  });

  it("above the aircraft's own limit is a fault of that very limit", async () => {
    const { faults } = await check([{ ...(await limitOf('XLOR-B')), landingLb: 18_300 }]);
    expect(faults).toContainEqual(expect.objectContaining({ place: 'XLOR', type: 'B', path: 'landingLb' }));
  });
});
