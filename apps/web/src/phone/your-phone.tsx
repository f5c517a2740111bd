import { useState } from 'react';
import { Link } from 'wouter';
import { useGround } from './ground.js';
import { Page } from './page.js';
import { Notice, Press } from './parts.js';
import { usePromised } from './storage.js';
import { signOut, useWho } from './who.js';

/** Whose phone it is, how it looks, whether it may forget. */
export const YourPhone = () => {
  const now = useWho();
  const [ground, turn] = useGround();
  const promised = usePromised();
  const [why, setWhy] = useState<string | null>(null);
  return (
    <Page
      title="This phone"
      above={now.state === 'here' ? now.person.fullName : ''}
      acts={
        <>
          <div className="two">
            <Press onPress={turn}>{ground === 'dim' ? 'Light, for sun' : 'Dim, for dark'}</Press>
            <Press onPress={() => void signOut().then(setWhy)}>Sign out</Press>
          </div>
          <Link className="btn" href="/">
            Back to the day
          </Link>
        </>
      }
    >
      {why !== null && <Notice kind="stop" word="Not signed out." title={why} />}
      <p className="said">
        {promised === 'yes'
          ? 'The browser has promised to keep what is on this phone.'
          : 'The browser has not promised to keep what is on this phone.'}
      </p>
      <Link className="btn inset" href="/storage">
        What that means
      </Link>
      <p className="foot">
        Reports stay on this phone until base has them. Signing out waits for them; a restart does not lose
        them.
      </p>
    </Page>
  );
};
