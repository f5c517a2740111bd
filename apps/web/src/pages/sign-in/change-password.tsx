import { type FormEvent, useState } from 'react';
import { type ApiProblem, changePassword, signOut } from '../../api/index.js';
import { asProblem } from '../../api/problem.js';
import { Button, Entry, ProblemLine } from '../../ui/index.js';

/** As the server asks it. */
const shortest = 10;

/** After the first sign-in with a one-time password, and before anything else. */
export const ChangePassword = ({ name }: { readonly name: string }) => {
  const [current, setCurrent] = useState('');
  const [next, setNext] = useState('');
  const [again, setAgain] = useState('');
  const [problem, setProblem] = useState<ApiProblem>();
  const [sent, setSent] = useState(false);
  const differs = again !== '' && again !== next;
  const isShort = next.length < shortest;
  const faultAt = (path: string) => {
    const fault = problem?.faults.find((each) => each.path === path);
    return fault === undefined ? undefined : `${fault.problem} ${fault.remedy}`;
  };
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    setSent(true);
    setProblem(undefined);
    if (current === '' || isShort || again !== next) return;
    await changePassword(current, next).catch((error: unknown) => setProblem(asProblem(error)));
  };
  return (
    <main className="alone">
      <h1>Choose your password</h1>
      <p className="read">You signed in as {name} with a one-time password. Choose one that only you know.</p>
      <form className="sign-in" onSubmit={(event) => void submit(event)}>
        <Entry
          label="One-time password"
          value={current}
          onChange={setCurrent}
          fault={sent && current === '' ? 'nothing is typed here.' : faultAt('current')}
          input={{ type: 'password', autoComplete: 'current-password', autoFocus: true }}
        />
        <Entry
          label="New password"
          value={next}
          onChange={setNext}
          fault={
            sent && isShort
              ? `${shortest} letters or figures at least; these are ${next.length}.`
              : faultAt('next')
          }
          note={`At least ${shortest} letters or figures.`}
          input={{ type: 'password', autoComplete: 'new-password' }}
        />
        <Entry
          label="New password again"
          value={again}
          onChange={setAgain}
          fault={
            differs
              ? 'the two differ. Type both again.'
              : sent && again === ''
                ? 'nothing is typed here.'
                : undefined
          }
          input={{ type: 'password', autoComplete: 'new-password' }}
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
