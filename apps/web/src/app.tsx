import { QueryClientProvider } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import {
  ApiProblem,
  createReads,
  findWhoIsHere,
  forgetOldPictures,
  forgetWho,
  keepWho,
  type Session,
  useSession,
} from './api/index.js';
import { AppFrame } from './frame/app-frame.js';
import { ChangePassword } from './pages/sign-in/change-password.js';
import { SignIn, SignInAgain } from './pages/sign-in/sign-in.js';
import { Button, listenForKeys, ProblemLine, singleKeys } from './ui/index.js';

const reads = createReads();

/** Who is here decides what is shown; what was on the page stays when the session ends. */
export const App = () => {
  const session = useSession();
  const person = 'me' in session ? session.me.id : '';
  useEffect(listenForKeys, []);
  useEffect(() => singleKeys.of(person), [person]);
  useEffect(() => {
    if (person !== '') void forgetOldPictures();
  }, [person]);
  useEffect(() => void keepAsTold(session), [session]);
  const asked = useWhoIsHere(session);
  if (session.state === 'unknown') return <FindWhoIsHere {...asked} />;
  if (session.state === 'signed out') return <SignIn />;
  if (session.me.mustChangePassword) return <ChangePassword name={session.me.name} />;
  return (
    <QueryClientProvider client={reads}>
      <AppFrame reads={reads} />
      {session.state === 'expired' && <SignInAgain me={session.me} />}
    </QueryClientProvider>
  );
};

const againMs = 4_000;

/** Base has not said yet who is here: nobody is known, or only who was here last. */
const isUntold = (session: Session): boolean =>
  session.state === 'unknown' || (session.state === 'signed in' && session.me.csrfToken === '');

const keepAsTold = async (session: Session): Promise<void> => {
  if (isUntold(session)) return;
  if (session.state === 'signed in' && !session.me.mustChangePassword) await keepWho(session.me);
  else await forgetWho();
};

interface Asked {
  readonly problem: ApiProblem | undefined;
  readonly find: () => void;
}

const useWhoIsHere = (session: Session): Asked => {
  const [problem, setProblem] = useState<ApiProblem>();
  const find = () => {
    findWhoIsHere().catch((error: unknown) => {
      if (!(error instanceof ApiProblem)) throw error;
      setProblem(error);
    });
  };
  useEffect(find, []);
  useEffect(() => {
    if (problem?.isOutOfReach !== true || !isUntold(session)) return;
    const timer = setTimeout(find, againMs);
    return () => clearTimeout(timer);
  });
  return { problem, find };
};

const FindWhoIsHere = ({ problem, find }: Asked) => {
  return (
    <main className="alone">
      <h1>Drumline</h1>
      {problem === undefined ? (
        <p className="checking" role="status">
          Checking...
        </p>
      ) : (
        <>
          <ProblemLine problem={problem} />
          <Button kind="main" onPress={find}>
            Try now
          </Button>
        </>
      )}
    </main>
  );
};
