import { type FormEvent, useState } from 'react';
import { Main, Notice } from './parts.js';
import { goRound } from './round.js';
import { signIn } from './who.js';

/** Once, with a signal: afterwards the phone knows whose it is. */
export const SignIn = () => (
  <main className="page">
    <header className="head">
      <h1 className="title">Drumline phone</h1>
      <p className="meta">Sign in once with a signal. Then it works without one.</p>
    </header>
    <SignInForm name="" />
    <p className="foot">
      For use on the ground only. Planning figures: the commander's approved data decide.
    </p>
  </main>
);

/** Also when base does not know the session any more: what is on the phone stays, and waits. */
export const SignInForm = ({ name: given }: { readonly name: string }) => {
  const [name, setName] = useState(given);
  const [password, setPassword] = useState('');
  const [why, setWhy] = useState<string | null>(null);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    setWhy(null);
    const said = await signIn(name.trim(), password);
    if (said.kind === 'answer') await goRound();
    else if (said.kind === 'signed out') setWhy('Name or password is not right. Type both again.');
    else if (said.kind === 'refused') setWhy(`${said.what}. ${said.words}`);
    else setWhy('Base does not answer. Signing in needs a signal; what is on this phone stays.');
  };
  return (
    <form className="grid" onSubmit={(event) => void submit(event)}>
      <label className="field">
        Name
        <input
          value={name}
          onChange={({ target }) => setName(target.value)}
          autoComplete="username"
          autoCapitalize="none"
          required
        />
      </label>
      <label className="field">
        Password
        <input
          type="password"
          value={password}
          onChange={({ target }) => setPassword(target.value)}
          autoComplete="current-password"
          required
        />
      </label>
      {why !== null && (
        <Notice kind="stop" word="Not signed in.">
          {why}
        </Notice>
      )}
      <Main type="submit">Sign in</Main>
    </form>
  );
};
