import { type Role, roles } from '@drumline/contract';
import { useState } from 'react';
import { type ApiProblem, newId, post, put, useAct } from '../../../api/index.js';
import { Button, Entry, ProblemLine, Tick } from '../../../ui/index.js';
import { OneForm } from '../form/one-form.js';
import { type Person, passwordSchema } from './people-read.js';

interface PersonFormProps {
  /** Null: a new one. */
  readonly person: Person | null;
  readonly onClose: () => void;
  readonly onDone: (name: string, oneTimePassword: string | null) => void;
}

interface Typed {
  readonly name: string;
  readonly fullName: string;
  readonly roles: readonly Role[];
  readonly crew: string;
  readonly programmes: string;
  readonly disabled: boolean;
}

const begun: Typed = { name: '', fullName: '', roles: [], crew: '', programmes: '', disabled: false };

export const PersonForm = ({ person: given, onClose, onDone }: PersonFormProps) => {
  const [person] = useState(given);
  const [id] = useState(() => person?.id ?? newId());
  const [typed, setTyped] = useState<Typed>(() => (person === null ? begun : typedOf(person)));
  const set = (part: Partial<Typed>) => setTyped({ ...typed, ...part });
  const save = useAct(
    () =>
      put(`/api/people/${id}`, bodyOf(typed), { version: person?.version ?? 'new', schema: passwordSchema }),
    '/api/people',
  );
  const reset = useAct(
    () => post(`/api/people/${id}/one-time-password`, {}, { schema: passwordSchema }),
    '/api/people',
  );
  const finish = async (act: typeof save) => {
    const done = await act.run();
    if (done !== undefined) onDone(typed.fullName, done.body.oneTimePassword);
  };
  return (
    <OneForm
      label={person === null ? 'New person' : person.fullName}
      onSubmit={() => {
        if (!save.isSending) void finish(save);
      }}
      onClose={onClose}
      problem={save.problem}
    >
      <h2>{person === null ? 'New person' : person.fullName}</h2>
      <PersonFields typed={typed} set={set} problem={save.problem} isNew={person === null} />
      <ProblemLine problem={save.problem ?? reset.problem} />
      <div className="set-up-acts">
        <Button kind="main" type="submit" busy={save.isSending}>
          Save
        </Button>
        {person !== null && (
          <Button busy={reset.isSending} onPress={() => void finish(reset)}>
            Give a one-time password
          </Button>
        )}
        <Button onPress={onClose}>Leave it</Button>
      </div>
    </OneForm>
  );
};

interface PersonFieldsProps {
  readonly typed: Typed;
  readonly set: (part: Partial<Typed>) => void;
  readonly problem: ApiProblem | undefined;
  readonly isNew: boolean;
}

const PersonFields = ({ typed, set, problem, isNew }: PersonFieldsProps) => {
  const faultAt = (path: string) => problem?.faults.find((fault) => fault.path === path);
  const words = (path: string) => {
    const fault = faultAt(path);
    return fault === undefined ? undefined : `${fault.problem} ${fault.remedy}`;
  };
  const has = (role: Role) => typed.roles.includes(role);
  const toggle = (role: Role) =>
    set({ roles: has(role) ? typed.roles.filter((each) => each !== role) : [...typed.roles, role] });
  return (
    <div className="set-up-fields">
      <Entry
        label="Sign-in name"
        note="Small letters, digits, dots, dashes"
        value={typed.name}
        fault={words('name')}
        onChange={(name) => set({ name })}
        input={{ autoComplete: 'off' }}
      />
      <Entry
        label="Full name"
        value={typed.fullName}
        fault={words('fullName')}
        onChange={(fullName) => set({ fullName })}
      />
      <fieldset className="set-up-group">
        <legend>Roles</legend>
        <div className="set-up-ticks">
          {roles.map((role) => (
            <Tick key={role} label={role} checked={has(role)} onChange={() => toggle(role)} />
          ))}
        </div>
        {words('roles') !== undefined && <p className="plum">Fault: {words('roles')}</p>}
      </fieldset>
      <Entry
        label="Crew"
        note="Pilot or helicopter whose flights are their own, like FW1; may be empty"
        value={typed.crew}
        fault={words('crew')}
        onChange={(crew) => set({ crew })}
      />
      <Entry
        label="Own programmes"
        note="Of a field leader, with commas between"
        value={typed.programmes}
        onChange={(programmes) => set({ programmes })}
      />
      {!isNew && (
        <Tick
          label="May not sign in any more"
          checked={typed.disabled}
          onChange={(disabled) => set({ disabled })}
        />
      )}
    </div>
  );
};

const typedOf = ({ crew, programmes, ...person }: Person): Typed => ({
  ...person,
  crew: crew ?? '',
  programmes: programmes.join(', '),
});

const bodyOf = ({ name, fullName, roles: chosen, crew, programmes, disabled }: Typed) => ({
  name,
  fullName,
  roles: chosen,
  crew: crew.trim() === '' ? null : crew.trim(),
  programmes: programmes
    .split(',')
    .map((code) => code.trim())
    .filter(Boolean),
  disabled,
});
