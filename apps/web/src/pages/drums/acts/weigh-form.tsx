import { useState } from 'react';
import { useRead } from '../../../api/index.js';
import { Entry, figureIn } from '../../../ui/index.js';
import { type Batch, checkedBy, type DrumLife, policySchema } from '../drums-read.js';
import { CheckLines } from './check-lines.js';
import { EntryForm } from './entry-form.js';
import { checkFill } from './fill-check.js';

interface WeighFormProps {
  readonly drum: DrumLife;
  readonly batch: Batch | undefined;
  readonly onClose: () => void;
}

/** Put a drum on the scale again: water and theft show as kg. */
export const WeighForm = ({ drum, batch, onClose }: WeighFormProps) => {
  const [gross, setGross] = useState('');
  const [temperature, setTemperature] = useState('15');
  const policy = useRead('/api/policy/current', policySchema).value?.data;
  const [grossKg, temperatureC] = [figureIn(gross), figureIn(temperature)];
  const { tareKg, litres, where } = drum;
  const check =
    grossKg === null || temperatureC === null || tareKg === null || batch === undefined || litres === 0
      ? null
      : checkFill({
          measured: { litres },
          tareKg,
          grossKg,
          temperatureC,
          densityAt15KgPerLitre: batch.densityAt15KgPerLitre,
          ...checkedBy(policy),
        });
  const entry =
    grossKg === null || where.kind !== 'at'
      ? 'Write what the scale says.'
      : { kind: 'weighed', drum: drum.number, place: where.place, grossKg };
  return (
    <EntryForm title={`Weigh ${drum.number}`} press="Enter the weight" entry={entry} onClose={onClose}>
      <div className="drums-row">
        <Entry
          label="Gross, by the scale"
          unit="kg"
          value={gross}
          onChange={setGross}
          input={{ inputMode: 'decimal' }}
        />
        <Entry
          label="Temperature of the fuel"
          unit="°C"
          value={temperature}
          onChange={setTemperature}
          input={{ inputMode: 'decimal' }}
        />
      </div>
      <CheckLines check={check} />
    </EntryForm>
  );
};
