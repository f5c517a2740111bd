import { Field, Fields, MessageLine } from '../../../ui/index.js';
import { figure } from '../../../ui/qty.js';
import type { FillCheck } from './fill-check.js';

/** Expected against the scale, as soon as both are there. */
export const CheckLines = ({ check }: { readonly check: FillCheck | string | null }) => {
  if (check === null) return null;
  if (typeof check === 'string') return <MessageLine what="Cannot be compared" why={check} />;
  return (
    <div className="drums-check" role="status">
      <Fields>
        <Field label="Expected gross">{figure(check.expectedGrossKg, 1)} kg</Field>
        <Field label="Difference" state={check.isSuspect ? 'grave' : 'plain'}>
          {check.differenceWords}
        </Field>
        <Field label="At 15 °C">{figure(check.litresAt15, 1)} L</Field>
      </Fields>
      <p className={check.isSuspect ? 'plum' : undefined}>
        {check.densityWords}
        {check.isSuspect && ' Find out why before the drum is used.'}
      </p>
      {check.ullageWords !== null && <p className={check.fits ? undefined : 'plum'}>{check.ullageWords}</p>}
    </div>
  );
};
