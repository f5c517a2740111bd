import { useState } from 'react';
import { z } from 'zod';
import { put, useAct, useRead } from '../../../api/index.js';
import { litresTyped } from '../../../counting/typed.js';
import { useCountRules } from '../../../counting/use-book.js';
import { ActForm, Button, Entry, inWords, ProblemLine } from '../../../ui/index.js';
import type { Cache } from '../caches-read.js';
import { TouchedCaches } from './touched-caches.js';
import { useConsequence } from './use-consequence.js';

const keptSchema = z.object({
  version: z.number(),
  changedAt: z.string(),
  data: z.object({ minimumLitres: z.number(), criticalLitres: z.number() }).loose(),
});
const answerSchema = z.union([
  z.object({ proposal: z.object({ id: z.string() }).loose() }),
  z.object({ version: z.number() }).loose(),
]);

interface MinimumFormProps {
  readonly cache: Cache;
  readonly onClose: (done?: string) => void;
}

/** The operator's own levels; a change that makes the plan look fine shows what it hides. */
export const MinimumForm = ({ cache, onClose }: MinimumFormProps) => {
  // What was read when the form was opened: somebody else's change meanwhile is told, not overwritten.
  const read = useRead(`/api/caches/${cache.place}`, keptSchema).value;
  const [first, setFirst] = useState<typeof read>();
  if (first === undefined && read !== undefined) setFirst(read);
  const [minimum, setMinimum] = useState(String(cache.minimumLitres));
  const [critical, setCritical] = useState(String(cache.criticalLitres));
  const [minimumLitres, criticalLitres] = [minimum, critical].map(litresTyped);
  const data = first && { ...first.data, minimumLitres, criticalLitres };
  const isSame = minimumLitres === cache.minimumLitres && criticalLitres === cache.criticalLitres;
  const fillLitres = useCountRules()?.fillLitres;
  const off =
    offWords(minimumLitres, criticalLitres, isSame) ??
    overRoom(cache.capacityDrums, minimumLitres, fillLitres);
  const asked = useConsequence(
    data === undefined || off !== undefined ? null : { kind: 'caches', id: cache.place, data },
  );
  const forTwo = off === undefined && isForTwo(cache, minimumLitres!, criticalLitres!);
  const send = useAct(() =>
    put(`/api/caches/${cache.place}`, data, { version: first!.version, schema: answerSchema }),
  );
  const submit = async () => {
    if (off !== undefined || first === undefined || send.isSending) return;
    const done = await send.run();
    if (done === undefined) return;
    onClose(
      'proposal' in done.body
        ? `${cache.place}: proposed. The levels stay as they are until a second person agrees.`
        : `${cache.place}: minimum ${inWords(minimumLitres!, 'L')}, critical ${inWords(criticalLitres!, 'L')}.`,
    );
  };
  return (
    <ActForm
      title={`Change minimum, ${cache.place}`}
      onClose={() => onClose()}
      onSubmit={() => void submit()}
      acts={
        <Button kind="main" type="submit" busy={send.isSending} offBecause={off}>
          {forTwo ? 'Propose minimum' : 'Change minimum'}
        </Button>
      }
    >
      <div className="two">
        <Entry
          label="Minimum"
          unit="L"
          value={minimum}
          onChange={setMinimum}
          input={{ inputMode: 'numeric' }}
          note={`Suggested: ${inWords(cache.suggestedMinimum.litres, 'L')}.`}
        />
        <Entry
          label="Critical"
          unit="L"
          value={critical}
          onChange={setCritical}
          input={{ inputMode: 'numeric' }}
        />
      </div>
      {forTwo && (
        <p>
          Below the critical level of {inWords(cache.criticalLitres, 'L')}, two people have to agree: this
          proposes it.
        </p>
      )}
      <TouchedCaches asked={asked} />
      <ProblemLine problem={send.problem} />
    </ActForm>
  );
};

/** As the territory has it: a level that no flight can reach would keep every plan short. */
export const overRoom = (
  capacityDrums: number,
  minimum: number | undefined,
  fillLitres: number | undefined,
): string | undefined =>
  minimum === undefined || fillLitres === undefined || minimum <= capacityDrums * fillLitres
    ? undefined
    : `${inWords(minimum, 'L')} does not fit on a site for ${inWords(capacityDrums, 'drums')}, ${inWords(capacityDrums * fillLitres, 'L')}: lower it, or correct the capacity at Set-up.`;

/** As the server asks it. */
const isForTwo = (cache: Cache, minimum: number, critical: number): boolean =>
  minimum < cache.criticalLitres || critical < cache.criticalLitres;

const offWords = (
  minimum: number | undefined,
  critical: number | undefined,
  isSame: boolean,
): string | undefined => {
  if (minimum === undefined || critical === undefined) return 'Write both levels in litres.';
  if (minimum < critical) return 'The minimum cannot be under the critical level.';
  return isSame ? 'Nothing is changed yet.' : undefined;
};
