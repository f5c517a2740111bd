import { type ComponentType, useContext } from 'react';
import { Button } from '../../../ui/index.js';
import type { FieldSpec } from './field-spec.js';
import { FaultLine, type FieldProps, FormAround } from './form-around.js';
import { type Typed, typedOf } from './typed.js';

type Of<Kind extends FieldSpec['kind']> = FieldSpec & { readonly kind: Kind };

interface PartProps<Kind extends FieldSpec['kind']> extends FieldProps<Of<Kind>> {
  /** What shows the fields inside. */
  readonly Inner: ComponentType<FieldProps>;
}

const empty = (spec: FieldSpec): Typed => typedOf({ ...spec, whenEmpty: 'missing' }, undefined);

/** Fields that belong together; where they may be absent as a whole, a press puts them there and takes them out. */
export const GroupField = ({ spec, typed, path, onChange, Inner }: PartProps<'group'>) => {
  const { faultAt } = useContext(FormAround);
  const mayBeAbsent = spec.whenEmpty !== 'missing';
  return (
    <fieldset className="set-up-group">
      <legend>{spec.label}</legend>
      <FaultLine words={faultAt(path)} />
      {typed === undefined ? (
        <p>
          <Button small onPress={() => onChange(empty(spec))}>
            Give it
          </Button>{' '}
          <small>{spec.note === '' ? 'May be left out.' : `${spec.note}.`}</small>
        </p>
      ) : (
        <>
          <Inner spec={spec} typed={typed} path={path} onChange={onChange} />
          {mayBeAbsent && (
            <Button small onPress={() => onChange(undefined)}>
              Leave it out
            </Button>
          )}
        </>
      )}
    </fieldset>
  );
};

/** Several of the same form, one below the other. */
export const LinesField = ({ spec, typed, path, onChange, Inner }: PartProps<'lines'>) => {
  const { faultAt } = useContext(FormAround);
  const lines = (typed ?? []) as readonly Typed[];
  const up = (at: number) =>
    onChange(
      lines.map((line, index) => (index === at - 1 ? lines[at] : index === at ? lines[at - 1] : line)),
    );
  return (
    <fieldset className="set-up-group">
      <legend>{spec.label}</legend>
      <FaultLine words={faultAt(path)} />
      {lines.map((line, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: lines have no name but their place
        <fieldset key={at} className="set-up-line">
          <legend>
            {spec.of.label === '' ? 'Line' : `${spec.of.label}, line`} {at + 1}
          </legend>
          <Inner
            spec={spec.of}
            typed={line}
            path={`${path}[${at}]`}
            onChange={(value) => onChange(lines.map((old, index) => (index === at ? value : old)))}
          />
          <div className="set-up-line-acts">
            {at > 0 && (
              <Button small onPress={() => up(at)}>
                Move line {at + 1} up
              </Button>
            )}
            <Button small onPress={() => onChange(lines.filter((_, index) => index !== at))}>
              Take line {at + 1} out
            </Button>
          </div>
        </fieldset>
      ))}
      <Button small onPress={() => onChange([...lines, empty(spec.of)])}>
        Add a line
      </Button>
      {lines.length === 0 && <small> None.</small>}
    </fieldset>
  );
};
