import type { Client } from '../../../apps/server/src/testing/client.js';
import { acceptHandPlan } from './flown-monday.js';

interface Offices {
  readonly manager: Client;
  readonly dispatcher: Client;
  readonly dataDir: string;
}

export interface LoadDesk {
  /** An act at the flight as it is now; throws where it is refused. */
  readonly act: (id: string, act: string, body?: object) => Promise<void>;
}

/**
 * The plan made by hand is offered, with the drums of the worked load sheet on F05 (product.md, T3), and on F06 four
 * drums whose printed pounds are those of the planning weight (T7). F04 is C1 with four drums (T8).
 */
export const openLoadDesk = async ({ dispatcher, ...offices }: Offices): Promise<LoadDesk> => {
  await acceptHandPlan(offices);
  const act = async (id: string, name: string, body: object = {}) => {
    const { revision } = (await dispatcher.get<{ revision: number }>(`/api/flights/${id}`)).body;
    const headers = { 'If-Match': `"${revision}"` };
    const answer = await dispatcher.post<object>(`/api/flights/${id}/${name}`, body, { headers });
    if (answer.status !== 200) throw new Error(`${name} ${id}: ${JSON.stringify(answer.body)}`);
  };
  // They hold the drums that are named below.
  for (const id of ['F01', 'F02', 'F03', 'F07', 'F08', 'F09'])
    await act(id, 'decline', { reason: 'not for this test' });
  const withDrums = (id: string, place: string, numbers: readonly string[]) =>
    act(id, 'amend', { stops: [{ place, drums: numbers.length, numbers }] });
  await withDrums('F04', 'XESK', ['0565', '0566', '0567', '0568']);
  await withDrums('F05', 'XLOR', ['0447', '0448', '0449', '0450', '0451', '0452']);
  await withDrums('F06', 'XGAN', ['0572', '0574', '0575', '0578']);
  return { act };
};
