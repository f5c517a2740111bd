import { type FormEvent, useState } from 'react';
import { type ApiProblem, type Me, signIn } from '../../api/index.js';
import { asProblem } from '../../api/problem.js';
import { Button, Dialog, Entry, ProblemLine } from '../../ui/index.js';

/** The first thing anybody sees. */
export const SignIn = () => (
  <main className="alone">
    <h1>Drumline</h1>
    <p className="read">Fuel in drums, where it is needed. Sign in to see your territory.</p>
    <SignInForm name="" />
    <p className="read slate">
      Planning figures. The approved flight manual, the operator's limits, local rules and the pilot in
      command decide.
    </p>
  </main>
);

/** The session ended meanwhile: the page stays as it is behind this, and what was sent goes out afterwards. */
export const SignInAgain = ({ me }: { readonly me: Me }) => (
  <Dialog title="Sign in again">
    <p className="read">
      Your session has ended. The page stays as you left it, and what you last sent goes out when you are in
      again.
    </p>
    <SignInForm name={me.name} />
  </Dialog>
);

const SignInForm = ({ name: given }: { readonly name: string }) => {
  const [name, setName] = useState(given);
  const [password, setPassword] = useState('');
  const [problem, setProblem] = useState<ApiProblem>();
  const [busy, setBusy] = useState(false);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    setBusy(true);
    setProblem(undefined);
    await signIn(name.trim(), password).catch((error: unknown) => setProblem(asProblem(error)));
    setBusy(false);
  };
  return (
    <form className="sign-in" onSubmit={(event) => void submit(event)}>
      <Entry
        label="Name"
        value={name}
        onChange={setName}
        input={{ autoComplete: 'username', autoCapitalize: 'none', required: true, autoFocus: given === '' }}
      />
      <Entry
        label="Password"
        value={password}
        onChange={setPassword}
        input={{
          type: 'password',
          autoComplete: 'current-password',
          required: true,
          autoFocus: given !== '',
        }}
      />
      <ProblemLine problem={problem} />
      <Button kind="main" type="submit" busy={busy}>
        Sign in
      </Button>
    </form>
  );
};
