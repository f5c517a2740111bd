import { type FormEvent, useState } from 'react';
import { Main, Notice, Press } from './parts.js';
import { goRound } from './round.js';
import { changePassword, type Person, signOut } from './who.js';

/** After the first sign-in with a one-time password, and before anything else: as in the office. */
export const ChoosePassword = ({ person }: { readonly person: Person }) => {
  const [current, setCurrent] = useState('');
  const [next, setNext] = useState('');
  const [again, setAgain] = useState('');
  const [why, setWhy] = useState<string | null>(null);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (again !== next) {
      setWhy('The two new ones differ. Type both again.');
      return;
    }
    setWhy(await changePassword(current, next));
    await goRound();
  };
  return (
    <main className="page">
      <header className="head">
        <h1 className="title">Choose your password</h1>
        <p className="meta">You signed in as {person.name} with a one-time password.</p>
      </header>
      <form className="grid" onSubmit={(event) => void submit(event)}>
        <p className="small">One that only you know, of at least 10 letters or figures. It needs a signal.</p>
        <PasswordField label="One-time password" value={current} kind="current" onType={setCurrent} />
        <PasswordField label="New password" value={next} kind="new" onType={setNext} />
        <PasswordField label="New password again" value={again} kind="new" onType={setAgain} />
        {why !== null && (
          <Notice kind="stop" word="Not changed.">
            {why}
          </Notice>
        )}
        <Main type="submit">Keep this password</Main>
        <Press onPress={() => void signOut().then(setWhy)}>Sign out</Press>
      </form>
    </main>
  );
};

interface PasswordFieldProps {
  readonly label: string;
  readonly value: string;
  readonly kind: 'current' | 'new';
  readonly onType: (value: string) => void;
}

const PasswordField = ({ label, value, kind, onType }: PasswordFieldProps) => (
  <label className="field">
    {label}
    <input
      type="password"
      value={value}
      onChange={({ target }) => onType(target.value)}
      autoComplete={`${kind}-password`}
      minLength={kind === 'new' ? 10 : 1}
      required
    />
  </label>
);
