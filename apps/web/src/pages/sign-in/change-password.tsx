import { type FormEvent, useState } from 'react';
import { type ApiProblem, changePassword, signOut } from '../../api/index.js';
import { asProblem } from '../../api/problem.js';
import { Button, Entry, ProblemLine } from '../../ui/index.js';

/** After the first sign-in with a one-time password, and before anything else. */
export const ChangePassword = ({ name }: { readonly name: string }) => {
  const [current, setCurrent] = useState('');
  const [next, setNext] = useState('');
  const [again, setAgain] = useState('');
  const [problem, setProblem] = useState<ApiProblem>();
  const differs = again !== '' && again !== next;
  const faultAt = (path: string) => {
    const fault = problem?.faults.find((each) => each.path === path);
    return fault === undefined ? undefined : `${fault.problem} ${fault.remedy}`;
  };
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (differs) return;
    setProblem(undefined);
    await changePassword(current, next).catch((error: unknown) => setProblem(asProblem(error)));
  };
  return (
    <main className="alone">
      <h1>Choose your password</h1>
      <p className="read">
        You signed in as {name} with a one-time password. Choose one that only you know, of at least 10
        letters or figures.
      </p>
      <form className="sign-in" onSubmit={(event) => void submit(event)}>
        <Entry
          label="One-time password"
          value={current}
          onChange={setCurrent}
          fault={faultAt('current')}
          input={{ type: 'password', autoComplete: 'current-password', required: true, autoFocus: true }}
        />
        <Entry
          label="New password"
          value={next}
          onChange={setNext}
          fault={faultAt('next')}
          input={{ type: 'password', autoComplete: 'new-password', required: true, minLength: 10 }}
        />
        <Entry
          label="New password again"
          value={again}
          onChange={setAgain}
          fault={differs ? 'the two differ. Type both again.' : undefined}
          input={{ type: 'password', autoComplete: 'new-password', required: true }}
        />
        {problem?.faults.length === 0 && <ProblemLine problem={problem} />}
        <Button kind="main" type="submit">
          Keep this password
        </Button>
        <Button onPress={() => void signOut()}>Sign out</Button>
      </form>
    </main>
  );
};
