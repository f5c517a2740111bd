import { useState } from 'react';
import { useList, useMay, useRead } from '../../../api/index.js';
import { Choice, Entry } from '../../../ui/index.js';
import { baseSchema, batchSchema, checkedBy, policySchema, standingHoldSchema } from '../drums-read.js';
import { CheckLines } from './check-lines.js';
import { EntryForm } from './entry-form.js';
import { checkFill } from './fill-check.js';
import { type FillFields, fillEntry, measuredIn } from './fill-entry.js';

interface FillFormProps {
  /** The base of the list from which it was opened; empty: the first. */
  readonly place: string;
  readonly onClose: () => void;
}

/** Batches that nobody may use now, and so nobody fills from. */
const useHeldBatches = (): ReadonlySet<string> => {
  const mayView = useMay()('hold', 'view');
  const holds = useList(mayView ? '/api/holds' : null, standingHoldSchema).value ?? [];
  return new Set(holds.flatMap(({ of }) => ('batch' in of ? [of.batch] : [])));
};

/** Fill one drum: what the scale says is compared with what it should say while it is typed. */
export const FillForm = ({ place, onClose }: FillFormProps) => {
  const bases = useList('/api/bases', baseSchema).value?.map(({ data }) => data.place) ?? [];
  const batches = useList('/api/batches', batchSchema).value?.map(({ data }) => data) ?? [];
  const held = useHeldBatches();
  const policy = useRead('/api/policy/current', policySchema).value?.data;
  const [fields, setFields] = useState<FillFields>(emptyFields);
  const set = (changed: Partial<FillFields>) => setFields({ ...fields, ...changed });
  const base = fields.place || place || bases[0] || '';
  const of = batches.filter(({ filledAt }) => filledAt.includes(base)).toReversed();
  const batch = of.find(({ id }) => id === fields.batch) ?? of.find(({ id }) => !held.has(id)) ?? of[0];
  const measured = measuredIn(fields, batch?.densityAt15KgPerLitre, checkedBy(policy));
  const check = measured === null ? null : checkFill(measured);
  return (
    <EntryForm
      title="Fill a drum"
      press="Enter the drum as filled"
      entry={fillEntry({ fields, base, batch: batch?.id, check })}
      onClose={onClose}
    >
      <div className="drums-row">
        <Entry label="Number on the drum" value={fields.drum} onChange={(number) => set({ drum: number })} />
        <Choice
          label="Base"
          value={base}
          options={bases.map((each) => [each, each] as const)}
          onChange={(chosen) => set({ place: chosen, batch: '' })}
        />
        <Choice
          label="Batch"
          value={batch?.id ?? ''}
          options={of.map(({ id }) => [id, held.has(id) ? `${id}, HOLD` : id] as const)}
          onChange={(chosen) => set({ batch: chosen })}
        />
      </div>
      {batch !== undefined && held.has(batch.id) && (
        <p className="plum" role="status">
          HOLD: batch {batch.id} is held. A drum filled from it is held as soon as it is entered, and no
          flight takes it.
        </p>
      )}
      <div className="drums-row">
        <Choice
          label="Measured by"
          value={fields.by}
          options={[
            ['litres', 'litres'],
            ['net', 'net weight'],
          ]}
          onChange={(by) => set({ by })}
        />
        {fields.by === 'litres' ? (
          <Weight label="Filled" unit="L" value={fields.litres} onChange={(litres) => set({ litres })} />
        ) : (
          <Weight label="Net" unit="kg" value={fields.netKg} onChange={(netKg) => set({ netKg })} />
        )}
        <Weight
          label="Temperature of the fuel"
          unit="°C"
          value={fields.temperature}
          onChange={(temperature) => set({ temperature })}
        />
      </div>
      <div className="drums-row">
        <Weight label="Tare" unit="kg" value={fields.tareKg} onChange={(tareKg) => set({ tareKg })} />
        <Weight
          label="Gross, by the scale"
          unit="kg"
          value={fields.grossKg}
          onChange={(grossKg) => set({ grossKg })}
        />
      </div>
      <CheckLines check={check} />
    </EntryForm>
  );
};

const Weight = (props: {
  readonly label: string;
  readonly unit: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
}) => <Entry {...props} input={{ inputMode: 'decimal', autoComplete: 'off' }} />;

const emptyFields: FillFields = {
  drum: '',
  place: '',
  batch: '',
  by: 'litres',
  litres: '',
  netKg: '',
  temperature: '',
  tareKg: '',
  grossKg: '',
};
