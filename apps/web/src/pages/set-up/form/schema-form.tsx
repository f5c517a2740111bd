import { useContext, useId } from 'react';
import { Choice, Entry, Tick } from '../../../ui/index.js';
import type { FieldSpec } from './field-spec.js';
import { FaultLine, type FieldProps, FormAround } from './form-around.js';
import { GroupField, LinesField } from './parts.js';
import { type Chosen, documentOf, type Typed, typedOf } from './typed.js';

/** A form written from the schema of the document: a new field of the format needs nothing here. */
export const SchemaField = ({ spec, typed, path, onChange }: FieldProps) => {
  const { faultAt } = useContext(FormAround);
  switch (spec.kind) {
    case 'fixed':
      return null;
    case 'yes or no':
      return <Tick label={spec.label} checked={typed === true} onChange={onChange} />;
    case 'choice':
      return (
        <div>
          <Choice
            label={labelOf(spec)}
            value={typed as string}
            options={[
              ...(typed === '' || spec.whenEmpty !== 'missing' ? [['', ''] as const] : []),
              ...spec.values.map((value) => [String(value), String(value)] as const),
            ]}
            onChange={onChange}
            fault={faultAt(path)}
          />
        </div>
      );
    case 'either':
      return <EitherField spec={spec} typed={typed} path={path} onChange={onChange} />;
    case 'pair':
      return (
        <>
          {spec.items.map((item, at) => (
            <SchemaField
              key={item.label}
              spec={item}
              typed={(typed as readonly Typed[])[at]}
              path={`${path}[${at}]`}
              onChange={(value) =>
                onChange((typed as readonly Typed[]).map((old, index) => (index === at ? value : old)))
              }
            />
          ))}
        </>
      );
    case 'group':
      return <GroupField Inner={FormFields} spec={spec} typed={typed} path={path} onChange={onChange} />;
    case 'lines':
      return <LinesField Inner={FormFields} spec={spec} typed={typed} path={path} onChange={onChange} />;
    default:
      return <TextField spec={spec} typed={typed} path={path} onChange={onChange} />;
  }
};

/** Of words with commas between, all of them in one field. */
const firstFault = (
  typed: string,
  path: string,
  faultAt: (path: string) => string | undefined,
): string | undefined =>
  typed
    .split(',')
    .map((_, at) => faultAt(`${path}[${at}]`))
    .find((fault) => fault !== undefined);

const TextField = ({ spec, typed, path, onChange }: FieldProps) => {
  const { faultAt, doubtAt, offered } = useContext(FormAround);
  const names = useId();
  const inner = spec.kind === 'words' ? spec.of : spec;
  const list =
    inner.key === 'timeZone'
      ? Intl.supportedValuesOf('timeZone')
      : inner.kind === 'text' && inner.offered !== null
        ? offered(inner.offered)
        : [];
  return (
    <div className={inner.kind === 'text' && inner.holds === 'sentence' ? 'set-up-long' : undefined}>
      <Entry
        label={spec.label}
        value={typed as string}
        onChange={onChange}
        fault={
          faultAt(path) ?? (spec.kind === 'words' ? firstFault(typed as string, path, faultAt) : undefined)
        }
        doubt={doubtAt(path)}
        {...(spec.unit === '' ? {} : { unit: spec.unit })}
        {...noteOf(spec)}
        input={{
          inputMode: spec.kind === 'number' ? 'decimal' : 'text',
          autoComplete: 'off',
          ...(list.length === 0 ? {} : { list: names }),
        }}
      />
      {list.length > 0 && (
        <datalist id={names}>
          {list.map((name) => (
            <option key={name} value={name} />
          ))}
        </datalist>
      )}
    </div>
  );
};

/** Whether it may be empty, what it means, and what would do. */
const noteOf = (spec: FieldSpec): { readonly note?: string } => {
  const inner = spec.kind === 'words' ? spec.of : spec;
  const mayBeEmpty = spec.kind === 'words' ? spec.atLeast === 0 : spec.whenEmpty !== 'missing';
  const notes = [
    mayBeEmpty && !spec.note.includes('empty') ? 'may be empty' : '',
    spec.note,
    inner.kind === 'text' && inner.example !== '' ? `like ${inner.example}` : '',
    spec.kind === 'words' ? 'with commas between' : '',
  ].filter(Boolean);
  return notes.length === 0 ? {} : { note: notes.join('; ') };
};

const EitherField = ({ spec, typed, path, onChange }: FieldProps<FieldSpec & { kind: 'either' }>) => {
  const { faultAt } = useContext(FormAround);
  const { option, value } = typed as Chosen;
  const word = wordOf(spec.options[option]!);
  const choose = (at: number) => {
    const chosen = spec.options[at]!;
    onChange({ option: at, value: typedOf(chosen, documentOf(chosen, typedOf(chosen, {}))) });
  };
  return (
    <fieldset className="set-up-group">
      <legend>{spec.label}</legend>
      <Choice
        label="Which"
        value={String(option)}
        options={spec.options.map((each, at) => [String(at), optionWords(each)] as const)}
        onChange={(at) => choose(Number(at))}
      />
      <FaultLine words={faultAt(path) ?? (word && faultAt(`${path}.${word.key}`))} />
      <FormFields
        spec={spec.options[option]!}
        typed={value}
        path={path}
        onChange={(inner) => onChange({ option, value: inner })}
      />
    </fieldset>
  );
};

/** The fields of a group without a frame around them. */
export const FormFields = ({ spec, typed, path, onChange }: FieldProps) =>
  spec.kind !== 'group' ? (
    <SchemaField spec={spec} typed={typed} path={path} onChange={onChange} />
  ) : (
    <div className="set-up-fields">
      {spec.fields.map((field) => (
        <SchemaField
          key={field.key}
          spec={field}
          typed={(typed as Readonly<Record<string, Typed>>)[field.key]}
          path={path === '' ? field.key : `${path}.${field.key}`}
          onChange={(value) => onChange({ ...(typed as object), [field.key]: value })}
        />
      ))}
    </div>
  );

/** The fixed word that says which of several forms it is. */
const wordOf = (spec: FieldSpec) =>
  spec.kind === 'group' ? spec.fields.find((field) => field.kind === 'fixed') : undefined;

const optionWords = (spec: FieldSpec): string =>
  spec.kind === 'fixed' ? String(spec.value) : String(wordOf(spec)?.value ?? spec.label);

const labelOf = ({ label, whenEmpty }: FieldSpec): string =>
  whenEmpty === 'missing' ? label : `${label}, may be empty`;
