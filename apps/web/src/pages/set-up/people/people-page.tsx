import { useState } from 'react';
import { useList, useMay } from '../../../api/index.js';
import { Button, EmptyLine, Lines, MessageLine, Picture } from '../../../ui/index.js';
import { type Person, personSchema } from './people-read.js';
import { PersonForm } from './person-form.js';

/** Who may sign in, and as what. */
export const PeoplePage = () => {
  const mayEnter = useMay()('people', 'enter');
  const read = useList(mayEnter ? '/api/people' : null, personSchema);
  if (!mayEnter) return <EmptyLine>The operations manager and set-up keep the people.</EmptyLine>;
  return <Picture read={read}>{(people) => <People people={people} />}</Picture>;
};

interface Given {
  readonly name: string;
  readonly password: string | null;
}

const People = ({ people }: { readonly people: readonly Person[] }) => {
  const [open, setOpen] = useState<string>();
  const [given, setGiven] = useState<Given>();
  const person = people.find(({ id }) => id === open) ?? null;
  const finish = (name: string, password: string | null) => {
    setGiven({ name, password });
    setOpen(undefined);
  };
  return (
    <div className="set-up-kept">
      <div className="set-up-list">
        <Lines
          caption="People"
          rows={people}
          keyOf={({ id }) => id}
          isCurrent={({ id }) => id === open}
          columns={[
            {
              head: 'Sign-in name',
              heads: true,
              cell: ({ id, name }) => (
                <button type="button" className="plain-link" onClick={() => setOpen(id)}>
                  {name}
                </button>
              ),
            },
            { head: 'Name', cell: ({ fullName }) => fullName },
            { head: 'Roles', cell: ({ roles }) => roles.join(', ') },
            { head: 'Crew', cell: ({ crew }) => crew },
            {
              head: 'May sign in',
              cell: ({ disabled, oneTimePassword }) => signInWords(disabled, oneTimePassword),
            },
          ]}
        />
        <Button onPress={() => setOpen('new')}>New person</Button>
        <GivenLine given={given} />
      </div>
      {open !== undefined && (
        <div className="set-up-one">
          <PersonForm key={open} person={person} onClose={() => setOpen(undefined)} onDone={finish} />
        </div>
      )}
    </div>
  );
};

const signInWords = (disabled: boolean, oneTimePassword: boolean): string =>
  disabled ? 'no' : oneTimePassword ? 'with a one-time password' : 'yes';

const GivenLine = ({ given }: { readonly given: Given | undefined }) => {
  if (given === undefined) return null;
  if (given.password === null) return <MessageLine kind="note" what={`Saved: ${given.name}`} />;
  return (
    <MessageLine
      kind="note"
      what={`One-time password of ${given.name}`}
      why="It is shown this once: give it to the person."
      next="They choose their own when they sign in."
    >
      <output className="key" aria-label="One-time password">
        {given.password}
      </output>
    </MessageLine>
  );
};
